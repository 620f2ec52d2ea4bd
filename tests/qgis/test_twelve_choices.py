"""Twelve choices by three doors, command line, desk and toolbox: one job, the same products to the last byte."""

from __future__ import annotations

import csv
import json
import re
from dataclasses import fields, replace
from pathlib import Path
from typing import Any, Dict, List, NamedTuple, Set

import pytest
from in_qgis import DEMO
from pyproj import Transformer

from plugin.core.surface.edits import AddPoint, write_edits

CRS, OTHER, FOOT = "EPSG:25832", "EPSG:4647", 0.3048
#: Within the demo site; a drawn boundary is met beside the coded one.
RING = [(548240, 5712390), (548320, 5712390), (548320, 5712450), (548240, 5712450), (548240, 5712390)]
GEOID = 46.0


class Doors(NamedTuple):
    """A choice: ``words`` of the command line, ``step`` and ``values`` of the desk, ``stale``: what must be made anew
    once it is changed, by the stages of the core."""

    words: List[str]
    step: str
    values: Dict[str, Any]
    stale: str


def _choices(folder: Path) -> Dict[str, Doors]:
    """The twelve, with their files in ``folder``."""
    after = "surface quality contours findings sheet thin dem files"
    all_of_it = f"read points check decisions lines {after}"
    file = {name: str(folder / name) for name in ("boundary.geojson", "codes.csv", "edits.json", "control.csv")}
    return {
        "geoid": Doors(
            [f"--geoid={GEOID:g}", "--heights-are=ellipsoidal"], "points", {"GEOID": GEOID, "HEIGHTS_ARE": 2}, all_of_it
        ),
        "columns": Doors(
            ["--columns=name,northing,easting,height,code"],
            "points",
            {"COLUMNS": "name,northing,easting,height,code"},
            all_of_it,
        ),
        "units": Doors(["--unit=ft"], "points", {"FILE_UNIT": 1}, all_of_it),
        "source CRS": Doors([f"--source-crs={OTHER}"], "points", {"SOURCE_CRS": OTHER}, all_of_it),
        "control": Doors(
            [f"--control={file['control.csv']}", "--control-fit=shift"],
            "points",
            {"CONTROL": file["control.csv"], "CONTROL_FIT": 2},
            all_of_it,
        ),
        "tolerances": Doors(["--check=control"], "check", {"TOLERANCES": 1}, f"check decisions lines {after}"),
        "decisions": Doors(
            [f"--decisions={folder / 'decisions.csv'}"],
            "points",
            {"DECISIONS": str(folder / "decisions.csv")},
            f"decisions lines {after}",
        ),
        "code table": Doors(
            [f"--codes={file['codes.csv']}"], "lines", {"CODES": file["codes.csv"]}, f"check decisions lines {after}"
        ),
        "boundary": Doors(
            [f"--boundary={file['boundary.geojson']}"], "surface", {"BOUNDARY": file["boundary.geojson"]},
            f"lines {after}",
        ),
        "edits": Doors([f"--edits={file['edits.json']}"], "surface", {"EDITS": file["edits.json"]}, f"lines {after}"),
        "rim": Doors(["--rim-edge=7.5"], "surface", {"MAX_RIM_EDGE": 7.5}, after),
        "interval": Doors(["--interval=0.2", "--interval-unit=m"], "", {"INTERVAL": 0.2, "UNIT": 0},
                          "contours sheet files"),
    }  # fmt: skip


NAMES = tuple(_choices(Path()))


def _files(folder: Path) -> Path:
    """The survey, in feet and with the zone before the easting, northing first, no header; and other files."""
    to_other = Transformer.from_crs(CRS, OTHER, always_xy=True)
    with open(DEMO / "survey.csv", encoding="utf-8", newline="") as stream:
        rows = [row for row in csv.reader(stream) if row and not row[0].startswith("#")][1:]
    lines = []
    for row in rows:
        try:
            east, north = to_other.transform(float(row[1]), float(row[2]))
            height = float(row[3]) + GEOID
        except (ValueError, IndexError):
            continue  # of no use here
        lines.append(f"{row[0]},{north / FOOT:.4f},{east / FOOT:.4f},{height / FOOT:.4f},{row[4]}")
    (folder / "survey.csv").write_text("\n".join(lines) + "\n", encoding="utf-8")
    ring = {"type": "Polygon", "coordinates": [[list(place) for place in RING]]}
    feature = {"type": "Feature", "properties": {}, "geometry": ring}
    named = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}
    told = {"type": "FeatureCollection", "crs": named, "features": [feature]}
    (folder / "boundary.geojson").write_text(json.dumps(told), encoding="utf-8")
    codes = (Path("plugin/core/linework/default_codes.csv")).read_text(encoding="utf-8")
    (folder / "codes.csv").write_text(codes, encoding="utf-8")
    write_edits([AddPoint((548270.0, 5712420.0), 88.5)], folder / "edits.json")
    known = rows[100]
    (folder / "control.csv").write_text(
        f"name,easting,northing,height\n{known[0]},{float(known[1]) + 0.02:.3f},{known[2]},{known[3]}\n"
    )
    (folder / "decisions.csv").write_text("line,status,reason\n200,rejected,by_hand\n", encoding="utf-8")
    return folder / "survey.csv"


def _by_words(survey: Path, out: Path, words: List[str]) -> Any:
    from plugin.core.arguments.parser import make_parser
    from plugin.core.arguments.settings import job_settings

    usual = [str(survey), f"--out={out}", f"--crs={CRS}", "--rim-edge=10", "--interval=0.25", "--interval-unit=m"]
    return job_settings(make_parser().parse_args([*usual, "--smooth=0.25", *words]))


def _by_desk(survey: Path, out: Path, doors: List[Doors]) -> Any:
    from plugin.core.contours.lines import ContourOptions
    from plugin.core.units import WORKING_UNITS
    from plugin.processing.jobchoices import change
    from plugin.processing.jobparameters import usual_settings

    told = replace(usual_settings(survey, out, ContourOptions(0.25)), crs=CRS)
    for door in doors:
        if door.step:
            told = change(told, door.values, door.step)
        else:  # on the form
            unit = WORKING_UNITS[door.values["UNIT"]]
            told = replace(told, contours=replace(told.contours, interval=door.values["INTERVAL"], unit=unit))
    return told


def _plain(settings: Any) -> Dict[str, Any]:
    from plugin.core.job.job_file import as_kept

    kept = as_kept(settings)
    return {one.name: getattr(kept, one.name) for one in fields(kept) if one.name != "out"}


@pytest.mark.parametrize("name", NAMES)
def test_a_choice_is_the_same_by_command_line_and_desk(application: Any, tmp_path: Path, name: str) -> None:
    survey, door = _files(tmp_path), _choices(tmp_path)[name]
    by_words = _plain(_by_words(survey, tmp_path / "out", door.words))
    by_desk = _plain(_by_desk(survey, tmp_path / "out", [door]))
    assert by_words == by_desk
    assert by_words != _plain(_by_words(survey, tmp_path / "out", []))


@pytest.fixture(scope="module")
def made(application: Any, tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Path]:
    """The same job by words, by the toolbox, and as the desk keeps it; run each."""
    import processing

    from plugin.core.job.job_file import save_choices
    from plugin.core.job.run import continue_job, run_job

    folder = tmp_path_factory.mktemp("doors")
    survey, doors = _files(folder), _choices(folder)
    out = {door: folder / door / "out" for door in ("words", "toolbox", "desk")}
    run_job(_by_words(survey, out["words"], [word for one in doors.values() for word in one.words]))
    save_choices(_by_desk(survey, out["desk"], list(doors.values())), "en")
    continue_job(out["desk"])
    values = {key: value for one in doors.values() for key, value in one.values.items()}
    asked = {"INPUT": str(survey), "CRS": CRS, "FOLDER": str(out["toolbox"]), "PAPER": False, **values}
    processing.run("hummock:surveyreport", asked)
    return out


def _products(folder: Path) -> Dict[str, bytes]:
    """The files of a job, but for the moment that some hold and the file of the job, which names paths."""
    moment = re.compile(rb"\d{4}-\d\d-\d\d[ T]\d\d:\d\d(:\d\d)?")
    return {
        path.name: moment.sub(b"", path.read_bytes())
        for path in sorted(folder.iterdir())
        if path.is_file() and path.name not in ("job.json", "boundary.geojson")
    }


def test_all_twelve_at_once_give_the_same_products_by_each_door(made: Dict[str, Path]) -> None:
    wanted = _products(made["words"])
    assert {"surface.2dm", "contours.geojson", "report.html", "points.csv"} <= set(wanted)
    for door in ("desk", "toolbox"):
        found = _products(made[door])
        assert set(found) == set(wanted), door
        different = [name for name in wanted if found[name] != wanted[name]]
        assert different == [], door


def test_each_choice_marks_what_depends_on_it_and_nothing_else(made: Dict[str, Path]) -> None:
    from plugin.core.job.job_file import read_job
    from plugin.core.job.keeping import out_of_date
    from plugin.core.job.settings import JobSettings

    folder = made["words"]
    record = read_job(folder)
    assert out_of_date(record, folder) == []
    plain = JobSettings(record.settings.survey, folder, record.settings.contours)
    back = {
        "geoid": {"geoid": "45.9"}, "columns": {"columns": "name,easting,northing,height,code"},
        "units": {"unit": None}, "source CRS": {"source_crs": CRS}, "control": {"control": None},
        "tolerances": {"tolerances": None}, "decisions": {"decisions": None}, "code table": {"codes": None},
        "boundary": {"boundary": None}, "edits": {"edits": None}, "rim": {"surface": plain.surface},
        "interval": {"contours": replace(record.settings.contours, interval=0.5)},
    }  # fmt: skip
    assert set(back) == set(NAMES)
    doors = _choices(folder)
    for name, changed in back.items():
        stale: Set[str] = set(out_of_date(replace(record, settings=replace(record.settings, **changed)), folder))
        assert stale == set(doors[name].stale.split()), name
