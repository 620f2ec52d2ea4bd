"""A survey in US survey feet through the whole job: nothing that people read is in metres unless they chose so.

The demo, put to a made-up place of EPSG:2263 (see feet_demo.py), with water, a road, a pad, volumes and a basin. Its
areas and volumes are those of the demo in metres times the factors of NIST SP 811 (1 ftUS = 1200/3937 m, 1 yd = 3 ft).
"""

from __future__ import annotations

import base64
import csv
import html
import json
import re
from pathlib import Path
from typing import Dict, Iterator, List, Tuple

import feet_demo
import numpy as np
import pytest

from plugin.core.__main__ import main

FOOT = feet_demo.FOOT
METRIC = re.compile(r"(?<![\w.])(m|mm|cm|km|m²|m³|l/s|mm/h|ha|metres?|millimetres?|kilometres?)(?![\w])")
#: What may be metric, and why.
EXCEPTIONS = (
    (r"for a \d+(\.\d+)?-cm RMSEV Vertical Positional Accuracy Class", "the standard names its classes in centimetres"),
    (r"RMSEV = \d+\.\d cm", "as the standard's sentence has it"),
    (r"finest class met \(cm\)", "the standard names its classes in centimetres"),
    (r"they differ by 2 mm in a kilometre", "a ratio of two units"),
    (r"whole tenths of a millimetre", "the grid of the program, not of the survey"),
    (r"Feet: 0\.3048 m \(international\) and 1200/3937 m", "what a foot is"),
)


@pytest.fixture(scope="module")
def job(tmp_path_factory: pytest.TempPathFactory) -> Tuple[Path, str]:
    """The folder of results, and what the terminal said."""
    from contextlib import redirect_stdout
    from io import StringIO

    folder = feet_demo.make(tmp_path_factory.mktemp("feet"))
    said = StringIO()
    with redirect_stdout(said):
        assert main(feet_demo.words(folder, folder / "out")) == 0
    return folder / "out", said.getvalue()


def names_of(path: Path) -> List[str]:
    """Columns of a table, or names of the properties of a drawing."""
    if path.suffix == ".csv":
        with open(path, encoding="utf-8", newline="") as file:
            return next(csv.reader(file))
    told = json.loads(path.read_text(encoding="utf-8"))
    return list(dict.fromkeys(name for feature in told["features"] for name in feature["properties"]))


def test_no_table_has_a_metric_column_but_where_it_says_both(job: Tuple[Path, str]) -> None:
    both = {"level_m": {"level", "unit"}, "height_m": {"height", "unit"}}  # also in the unit that is named
    out, _ = job
    looked = [path for path in sorted(out.iterdir()) if path.suffix in (".csv", ".geojson")]
    assert len(looked) >= 18
    for path in looked:
        names = names_of(path)
        metric = [name for name in names if re.search(r"_(m|mm|cm|km)[23]?$", name)]
        assert [name for name in metric if not both.get(name, {"?"}) <= set(names)] == [], path.name
    assert "volume_yd3" in names_of(out / "volumes_since.csv")
    assert "volume_ftUS3" in names_of(out / "ponds.geojson")
    units = {row["unit"] for name in ("profile", "sections") for row in rows(out / f"{name}.csv")}
    assert units == {"us-ft"}


def rows(path: Path) -> List[Dict[str, str]]:
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def test_tables_say_what_the_terminal_and_the_drawing_say(job: Tuple[Path, str]) -> None:
    """1 yd = 3 ft; a metre is 3937/1200 ftUS (NIST SP 811)."""
    out, said = job
    whole = {row["quantity"]: row for row in rows(out / "volumes_since.csv") if row["region"] == "all"}
    told = re.search(r"before.2dm to survey.csv: cut (\S+) ± (\S+) yd³", said)
    assert told is not None
    assert float(whole["cut"]["volume_yd3"]) == pytest.approx(float(told.group(1)), abs=0.06)
    assert float(whole["cut"]["half_95_yd3"]) == pytest.approx(float(told.group(2)), abs=0.06)
    depth = float(whole["cut"]["volume_yd3"]) * 27 / float(whole["cut"]["area_ftUS2"])
    assert float(whole["cut"]["mean_depth_ftUS"]) == pytest.approx(depth, abs=2e-3)
    curve = rows(out / "storage.csv")
    pit, full = curve[0], curve[-1]
    assert float(full["above_pit_ftUS"]) == pytest.approx(float(full["level"]) - float(pit["level"]), abs=1e-3)
    held = re.search(r"Basin +holds (\S+) ± ", said)
    assert held is not None
    assert float(full["volume_ftUS3"]) == pytest.approx(float(held.group(1)), rel=1e-3)
    for feature in json.loads((out / "daylight.geojson").read_text(encoding="utf-8"))["features"]:
        xy = np.array(feature["geometry"]["coordinates"])[:, :2]
        drawn = np.hypot(*np.diff(xy, axis=0).T).sum()
        assert feature["properties"]["length_ftUS"] == pytest.approx(drawn, rel=1e-3)
    checks = rows(out / "checks.csv")
    assert float(checks[1]["from_ftUS"]) == pytest.approx(float(checks[1]["from_station"].replace("+", "")), abs=0.01)


def lines_of(page: str) -> List[str]:
    """The text of a page, a line each for rows, paragraphs and captions, without its pictures."""
    text = re.sub(r"<style>.*?</style>", "", page, flags=re.S)
    text = re.sub(r' src="data:[^"]*"', "", text)
    alts = re.findall(r' alt="([^"]*)"', text)
    text = re.sub(r"</(tr|p|li|h\d|caption|figcaption|title)>", "\n", text)
    text = re.sub(r"</t[dh]>", " | ", text)
    told = [" ".join(html.unescape(re.sub(r"<[^>]+>", " ", line)).split()) for line in text.split("\n")]
    return [line for line in (*told, *map(html.unescape, alts)) if line]


def charts_of(page: str) -> Iterator[str]:
    """What is written in the charts: the SVG keeps it in comments beside its outlines."""
    for data in re.findall(r'src="data:image/svg\+xml;base64,([^"]*)"', page):
        yield from (text.strip() for text in re.findall(r"<!--(.*?)-->", base64.b64decode(data).decode("utf-8")))


def metric(lines: List[str]) -> List[str]:
    """The lines with metric units in them that no exception explains."""
    found = []
    for line in lines:
        rest = line
        for pattern, _ in EXCEPTIONS:
            rest = re.sub(pattern, "", rest)
        if METRIC.search(rest):
            found.append(line)
    return found


def test_the_test_sees_metric_units() -> None:
    assert metric(["Size (mm) | 3", "holds 3.1 m³ of it", "peak (l/s)", "0.5 m", "1 of 2 m², ", "a metre of height"])
    assert metric(["12.3 ftUS", "yd³ | 3", "M1", "Gully m1", "0.3 km/h"]) == ["0.3 km/h"]


def test_no_metre_in_the_report(job: Tuple[Path, str]) -> None:
    page = (job[0] / "report.html").read_text(encoding="utf-8")
    lines = lines_of(page)
    assert len(lines) > 500
    for title in ("Where the water runs", "Road: Perry Lane", "Grading", "Volumes: before.2dm to survey.csv"):
        assert title in lines
    assert metric(lines) == []
    charts = list(charts_of(page))
    assert "Volume (yd³)" in charts
    assert metric(charts) == []


def test_every_exception_is_needed(job: Tuple[Path, str]) -> None:
    text = "\n".join(lines_of((job[0] / "report.html").read_text(encoding="utf-8")))
    assert [why for pattern, why in EXCEPTIONS if not re.search(pattern, text)] == []


def test_no_metre_in_the_terminal(job: Tuple[Path, str]) -> None:
    told = job[1].split("Written to ")[0].splitlines()
    assert metric(told) == []
    text = "\n".join(told)
    for needed in ("ftUS² drain nowhere", "ftUS³ when full", "yd³ (95 %)", "every 1 ftUS", "heights repeat to 0.04"):
        assert needed in text


def test_no_metre_in_sentences_of_the_tables(job: Tuple[Path, str]) -> None:
    for name in ("findings.csv", "survey_findings.csv"):
        rows = list(csv.DictReader((job[0] / name).read_text(encoding="utf-8").splitlines()))
        assert rows
        assert metric([row["text"] for row in rows]) == []
        for row in rows:
            assert 984000 < float(row["easting"]) < 986000
    rows = list(csv.DictReader((job[0] / "findings.csv").read_text(encoding="utf-8").splitlines()))
    assert {row["unit"] for row in rows} <= {"ftUS", "ftUS²"}


def test_numbers_are_those_of_the_demo_in_metres(job: Tuple[Path, str], tmp_path: Path) -> None:
    """Areas and volumes of the same site in metres, through the factors of NIST SP 811."""
    demo = feet_demo.DEMO
    words = [str(demo / "survey.csv"), "--crs", "EPSG:25832", "--interval", "0.25", "--rim-edge", "10", "--water"]
    words += ["--inlets", str(demo / "inlets.csv"), "--since", str(demo / "before.2dm"), "--out", str(tmp_path)]
    from contextlib import redirect_stdout
    from io import StringIO

    said = StringIO()
    with redirect_stdout(said):
        assert main(words) == 0
    text = said.getvalue()

    def both(pattern: str, unit: str, other: str) -> Tuple[float, float]:
        found = [re.search(pattern.replace("UNIT", each), told) for each, told in ((unit, text), (other, job[1]))]
        assert all(found), pattern
        return tuple(float(each.group(1)) for each in found if each)  # type: ignore[return-value]

    metres, feet = both(r"triangles, ([\d.]+) UNIT", "m²", "ftUS²")
    assert feet == pytest.approx(metres / FOOT**2, rel=1e-4)
    metres, feet = both(r"([\d.]+) UNIT when full", "m³", "ftUS³")
    assert feet == pytest.approx(metres / FOOT**3, rel=0.01)
    metres, feet = both(r"triangles as they are: cut ([\d.]+) UNIT", "m³", "yd³")
    assert feet == pytest.approx(metres / (3 * FOOT) ** 3, rel=0.005)
    metres, feet = both(r"passes ([\d.]+) UNIT apart", "m", "ftUS")
    assert feet == pytest.approx(metres / FOOT, rel=0.02)


def test_rain_without_a_unit_is_in_inches_or_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = feet_demo.make(tmp_path)
    words = [str(folder / "survey.csv"), "--crs", feet_demo.CRS, "--interval", "1", "--out", str(tmp_path / "out")]
    assert main([*words, "--water", "--rain", "60"]) == 2
    assert "60 would be inches an hour" in capsys.readouterr().err
    from plugin.core.arguments.parser import make_parser
    from plugin.core.arguments.settings import job_settings
    from plugin.core.drainage.rational import FlowUnits

    def units(*more: str) -> FlowUnits:
        (question,) = job_settings(make_parser().parse_args([*words, "--water", *more])).questions
        return question.rain.units  # type: ignore[attr-defined]

    assert units("--rain", "2") is FlowUnits.US
    assert units("--rain", "60", "--rain-unit", "mm/h") is FlowUnits.SI
