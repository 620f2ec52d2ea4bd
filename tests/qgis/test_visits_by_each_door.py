"""A later visit by command line, desk and toolbox: the same products to the last byte, told or taken in."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from typing import Any, Dict

import numpy as np
import pytest
from in_qgis import Listener
from test_desk import opened, start_job  # noqa: F401  a fixture
from test_twelve_choices import _products

CRS = "EPSG:25832"
RING = [[500005.0, 5799995.0], [500030.0, 5799995.0], [500030.0, 5800030.0], [500005.0, 5800030.0]]


def _survey(file: Path, raised: float, seed: int) -> Path:
    """A lattice of points on a slope; the later one has a bank in its east, and lies 2 cm too high."""
    random, rows = np.random.default_rng(seed), ["name,easting,northing,height"]
    for k, (i, j) in enumerate((i, j) for i in range(22) for j in range(22)):
        x, y = 1.1 * i + random.uniform(-0.2, 0.2), 1.1 * j + random.uniform(-0.2, 0.2)
        height = 50 + 0.04 * x + (raised and 0.02 + 0.6 * (x > 14)) + random.normal(0, 0.004)
        rows.append(f"{file.stem}{k},{500000 + x:.3f},{5800000 + y:.3f},{height:.3f}")
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    return file


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Dict[str, Path]:
    folder = tmp_path_factory.mktemp("site")
    shape = {"type": "Polygon", "coordinates": [[*RING, RING[0]]]}
    named = {"type": "name", "properties": {"name": "urn:ogc:def:crs:EPSG::25832"}}
    feature = {"type": "Feature", "properties": {}, "geometry": shape}
    area = folder / "area.geojson"
    area.write_text(json.dumps({"type": "FeatureCollection", "crs": named, "features": [feature]}), encoding="utf-8")
    return {"first": _survey(folder / "first.csv", 0, 1), "later": _survey(folder / "later.csv", 1, 2), "area": area}


def _begun(site: Dict[str, Path], out: Path) -> Any:
    """A job with the first visit done, as QGIS begins it."""
    from plugin.core.contours.lines import ContourOptions
    from plugin.core.job.job_file import save_choices
    from plugin.core.job.run import continue_job
    from plugin.processing.jobparameters import usual_settings

    told = replace(usual_settings(site["first"], out, ContourOptions(0.25)), crs=CRS)
    save_choices(told, "en")
    continue_job(out)
    return told


@pytest.mark.parametrize("where", ["nowhere", "everywhere", "polygons"])
def test_a_visit_is_the_same_by_each_door(application: Any, site: Dict[str, Path], tmp_path: Path, where: str) -> None:
    import processing

    from plugin.core.__main__ import main
    from plugin.core.job.job_file import read_job, save_choices
    from plugin.core.job.run import continue_job
    from plugin.gui.deskjob import form_of, settings_of
    from plugin.processing.jobchoices import change

    out = {door: tmp_path / door / "job" for door in ("words", "toolbox", "desk")}
    for folder in out.values():
        _begun(site, folder)
    word = {"nowhere": [], "everywhere": ["--new-ground", "all"], "polygons": ["--new-ground", str(site["area"])]}
    assert main(["--job", str(out["words"]), "--add", str(site["later"]), *word[where]]) == 0

    values: Dict[str, Any] = {
        "nowhere": {}, "everywhere": {"NEW_GROUND": True}, "polygons": {"NEW_GROUND_AREA": str(site["area"])},
    }[where]  # fmt: skip
    asked = {"FOLDER": str(out["toolbox"]), "VISITS": [str(site["later"])], "PAPER": False, **values}
    processing.run("hummock:surveyreport", asked, feedback=Listener().feedback)

    record = read_job(out["desk"])
    form = {**form_of(record), "visits": [str(site["later"])]}
    save_choices(change(settings_of(form, record, out["desk"]), values, "visits"))
    continue_job(out["desk"])

    wanted = _without_area(out["words"])
    assert {"surface_visit_1.2dm", "surface_visit_2.2dm", "points_visit_2.csv"} <= set(wanted)
    assert (b"superseded" in wanted["points.csv"]) == (where != "nowhere")
    for door in ("desk", "toolbox"):
        found = _without_area(out[door])
        assert set(found) == set(wanted), door
        assert [name for name in wanted if found[name] != wanted[name]] == [], door
    # What is read back is shown as it was chosen, and kept where the form is saved again.
    record = read_job(out["desk"])
    assert settings_of(form_of(record), record, out["desk"]).visits == record.settings.visits


def _without_area(folder: Path) -> Dict[str, bytes]:
    """The products; the toolbox puts its polygons beside them, and so names their file in its own way."""
    names = (b"area.geojson", b"new_ground_2.geojson")
    found = {name: content for name, content in _products(folder).items() if name != "new_ground_2.geojson"}
    found = {name: content.replace(names[1], names[0]) for name, content in found.items()}
    sums = found.pop("checksums.sha256").decode().splitlines()
    assert len(sums) > 5
    return found


def test_the_toolbox_names_no_visit_twice(application: Any, site: Dict[str, Path], tmp_path: Path) -> None:
    """The same files given again add nothing; the word on the last one is taken."""
    import processing

    from plugin.core.job.job_file import read_job

    _begun(site, tmp_path / "job")
    asked = {"FOLDER": str(tmp_path / "job"), "VISITS": [str(site["later"])], "PAPER": False}
    processing.run("hummock:surveyreport", asked, feedback=Listener().feedback)
    processing.run("hummock:surveyreport", {**asked, "NEW_GROUND": True}, feedback=Listener().feedback)
    (visit,) = read_job(tmp_path / "job").settings.visits
    assert (visit.file.name, visit.new_ground) == ("later.csv", "all")
    full = {"INPUT": str(site["first"]), "CRS": CRS, "FOLDER": str(tmp_path / "job"), "PAPER": False}
    processing.run("hummock:surveyreport", full, feedback=Listener().feedback)
    assert read_job(tmp_path / "job").settings.visits == (visit,)


def test_the_desk_asks_for_visits_and_shows_them_as_a_step(
    opened: Any,  # noqa: F811
    site: Dict[str, Path],
    tmp_path: Path,
) -> None:
    from qgis.PyQt.QtCore import QPoint
    from qgis.PyQt.QtWidgets import QApplication

    from plugin.core.job.job_file import read_job

    desk = start_job(opened, tmp_path)
    assert "visits" not in desk.states()
    opened[2].type(desk.form.visits.lineEdit(), str(site["later"]))
    assert [visit.file.name for visit in read_job(tmp_path / "survey_job").settings.visits] == ["later.csv"]
    assert desk.states()["visits"].value == "empty"
    QApplication.processEvents()
    assert desk.rows["visits"].options.isVisibleTo(desk)
    tops = {key: row.name.mapTo(desk, QPoint(0, 0)).y() for key, row in desk.rows.items()}
    assert sorted(tops, key=lambda key: tops[key]) == list(desk.states()), "in the order of the work"
    desk.form.visits.setFilePath(str(tmp_path / "nothing.csv"))
    assert "there is no such file" in desk.lacking()
    desk.form.visits.setFilePath("")
    assert read_job(tmp_path / "survey_job").settings.visits == ()
    assert "visits" not in desk.states()


def test_the_words_on_the_last_visit_are_chosen_in_a_dialog(
    opened: Any,  # noqa: F811
    site: Dict[str, Path],
    tmp_path: Path,
) -> None:
    from qgis.PyQt.QtWidgets import QComboBox

    from plugin.gui.choicesdialog import ChoicesDialog

    desk = start_job(opened, tmp_path)
    opened[2].type(desk.form.visits.lineEdit(), str(site["later"]))

    def chosen(**values: Any) -> Any:
        dialog = ChoicesDialog("visits", "title", desk.record.settings, desk)
        for name, value in values.items():
            wrapper = dialog.wrappers[name]
            if value == "":  # its empty entry, as a user takes it
                wrapper.wrappedWidget().findChild(QComboBox).setCurrentIndex(0)
            else:
                wrapper.setParameterValue(value, dialog.context)
        dialog.accept()
        assert not dialog.said.text()
        desk.choose(dialog.chosen)
        (visit,) = desk.record.settings.visits
        return visit.new_ground, visit.offset

    assert chosen() == ("", None)
    assert chosen(NEW_GROUND=True) == ("all", None)
    assert chosen() == ("all", None)
    assert chosen(VISIT_OFFSET=0.02) == ("all", 0.02)
    assert chosen(VISIT_OFFSET=None, NEW_GROUND=False) == ("", None)
    where, _ = chosen(NEW_GROUND_AREA=str(site["area"]))
    assert Path(where).resolve() == site["area"].resolve()
    assert chosen()[0] == where
    assert chosen(NEW_GROUND_AREA="") == ("", None)
