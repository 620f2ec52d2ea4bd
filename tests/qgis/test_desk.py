"""The desk with real clicks: from an empty project to plan and report, and again after an edit."""

from __future__ import annotations

import re
import time
from dataclasses import replace
from pathlib import Path
from typing import Any

import pypdf
import pytest
from in_qgis import DEMO, close_for_good


class Hand:
    """Clicks and types as a user does, and counts it."""

    def __init__(self) -> None:
        self.actions = 0

    def click(self, widget: Any) -> None:
        from qgis.PyQt.QtCore import Qt
        from qgis.PyQt.QtTest import QTest

        assert widget.isEnabled(), widget.text()
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton)
        self.actions += 1

    def type(self, widget: Any, text: str) -> None:
        from qgis.PyQt.QtTest import QTest

        widget.setFocus()
        widget.selectAll()
        QTest.keyClicks(widget, text)
        self.actions += 1

    def run(self, desk: Any) -> None:
        """Everything that is out of date, and wait for it."""
        self.click(desk.run_all)
        wait(desk)


def wait(desk: Any, most: float = 300.0) -> None:
    from qgis.PyQt.QtWidgets import QApplication

    until = time.monotonic() + most
    while desk.busy:
        assert time.monotonic() < until, desk.said.text()
        QApplication.processEvents()
        time.sleep(0.01)


class Window:
    """What the plugin wants of QGIS's window."""

    def __init__(self) -> None:
        from qgis.PyQt.QtWidgets import QMainWindow

        self.window = QMainWindow()
        self.tools = self.window.addToolBar("plugins")
        self.window.resize(1200, 900)
        self.window.show()

    def mainWindow(self) -> Any:
        return self.window

    def addDockWidget(self, area: Any, dock: Any) -> None:
        self.window.addDockWidget(area, dock)


@pytest.fixture
def opened(project: Any) -> Any:
    """The plugin with its panel's button in a window, and a hand."""
    from plugin.hummock import HummockPlugin

    window = Window()
    plugin = HummockPlugin(window)
    plugin.listen()
    plugin.desk_action = plugin._make_desk_action()
    window.tools.addAction(plugin.desk_action)
    yield plugin, window, Hand()
    plugin.edits.stop()
    if plugin.desk is not None:
        plugin.desk.stop_listening()
    close_for_good(window.window)


def come_back(window: Window) -> None:
    """From another program to QGIS's window."""
    from qgis.PyQt.QtCore import QEvent
    from qgis.PyQt.QtWidgets import QApplication

    QApplication.sendEvent(window.window, QEvent(QEvent.Type.WindowActivate))


def start_job(opened: Any, folder: Path, crs: str = "25832") -> Any:
    """The panel opened and the job described; nothing run."""
    plugin, window, hand = opened
    survey = folder / "survey.csv"
    survey.write_bytes((DEMO / "survey.csv").read_bytes())
    hand.click(window.tools.widgetForAction(plugin.desk_action))
    desk = plugin.desk
    assert desk.isVisible()
    assert desk.said.text() == "Choose the survey file.", "a first view says what to do"
    assert not desk.run_all.isEnabled()
    assert "survey file" in desk.run_all.toolTip()
    hand.type(desk.form.files.lineEdit(), str(survey))
    assert desk.form.folder.filePath() == str(folder / "survey_job")
    assert "CRS" in desk.said.text()
    hand.type(desk.form.crs, crs)
    assert not desk.said.text()
    assert "UTM" in desk.form.crs_name.text()
    return desk


def states(desk: Any) -> Any:
    return {key: state.value for key, state in desk.states().items()}


def layer_of(project: Any, table: str) -> Any:
    (found,) = [one for one in project.mapLayers().values() if f"job.gpkg|layername={table}" in one.source()]
    return found


def reject(layer: Any, feature: Any) -> None:
    layer.startEditing()
    assert layer.changeAttributeValue(feature.id(), layer.fields().indexOf("status"), "rejected")
    assert layer.commitChanges()


def _vertices(out: Path) -> int:
    return sum(line.startswith("ND ") for line in (out / "surface.2dm").read_text().splitlines())


def test_from_an_empty_project_to_plan_and_report_and_again_after_an_edit(
    opened: Any, project: Any, tmp_path: Path
) -> None:
    from qgis.core import QgsMeshLayer

    from plugin.core.job.job_file import read_job
    from plugin.core.job.run import compute

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.type(desk.form.checks.lineEdit(), str(DEMO / "check_points.csv"))
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, (states(desk), desk.said.text())
    assert hand.actions == 5
    out = tmp_path / "survey_job"
    assert len(pypdf.PdfReader(out / "plan.pdf").pages) == 1
    assert len(pypdf.PdfReader(out / "report.pdf").pages) > 5
    assert "plan.pdf" in (out / "checksums.sha256").read_text()
    assert not desk.run_all.isEnabled()  # nothing is left to do
    # one group, the surface below all else in it, points and findings switched off
    (group,) = [one for one in project.layerTreeRoot().findGroups() if one.customProperty("hummock/job")]
    nodes = group.findLayers()
    assert isinstance(nodes[-1].layer(), QgsMeshLayer)
    shown = {node.layer().source().rpartition("=")[2]: node.itemVisibilityChecked() for node in nodes[:-1]}
    assert shown["contours"]
    assert not shown["points"]
    assert not shown["check_findings"]
    # what is drawn on the map is drawn once; the plan's layers are for its layout
    drawn = [node.layer().name() for node in project.layerTreeRoot().findLayers() if node.isVisible()]
    assert len(drawn) == len(set(drawn))
    (layout,) = project.layoutManager().layouts()
    assert all(len(one.layers()) > 3 for one in layout.items() if one.type() == layout.referenceMap().type())

    # the project remembers the job, and what the user did to its layers
    contours = layer_of(project, "contours")
    contours.setName("mine")
    contours.setOpacity(0.5)
    assert project.write(str(tmp_path / "job.qgz"))
    project.clear()
    assert desk.form.settings()["files"] == []
    assert project.read(str(tmp_path / "job.qgz"))
    assert set(states(desk).values()) == {"done"}, states(desk)
    assert desk.form.crs.text() == "EPSG:25832"

    # a status changed by hand: what is made from it is out of date, and only that
    layer = layer_of(project, "points")
    plain = [f for f in layer.getFeatures() if (f["status"], f["code"]) == ("used", "GR") and not f["check_reason"]]
    chosen = plain[len(plain) // 2]
    line, vertices = chosen["line"], _vertices(out)
    reject(layer, chosen)
    told = states(desk)
    assert told["points"] == "done"
    assert {key for key, state in told.items() if state == "stale"} == {*told} - {"points"}, told
    assert desk.run_all.text() == "Run what is out of date"
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, desk.said.text()
    assert _vertices(out) == vertices - 1
    (decision,) = read_job(out).settings.decided
    assert (decision.line, decision.status, decision.name) == (line, "rejected", chosen["name"])
    # the same layers show it, with the name and the look that they were given
    assert layer_of(project, "contours").name() == "mine"
    assert layer_of(project, "contours").opacity() == 0.5
    again = next(f for f in layer_of(project, "points").getFeatures() if f["line"] == line)
    assert (again["status"], again["check_status"]) == ("rejected", "used")
    sources = [one.source() for one in project.mapLayers().values()]
    assert len(sources) == len(set(sources))
    # what the desk shows is what the job is
    alone = compute(read_job(out).settings)
    assert len(alone.surface.tin.vertices) == _vertices(out)

    # taken back: as before
    layer = layer_of(project, "points")
    layer.startEditing()
    layer.changeAttributeValue(again.id(), layer.fields().indexOf("status"), "used")
    assert layer.commitChanges()
    assert read_job(out).settings.decided == ()
    hand.run(desk)
    assert _vertices(out) == vertices


def test_decisions_are_kept_while_the_desk_is_closed(opened: Any, project: Any, tmp_path: Path) -> None:
    from plugin.core.job.job_file import read_job
    from plugin.gui.jobedits import take_up_all

    plugin, window, hand = opened
    desk = start_job(opened, tmp_path)
    hand.run(desk)
    out = tmp_path / "survey_job"
    hand.click(window.tools.widgetForAction(plugin.desk_action))
    assert not desk.isVisible()
    used = [f for f in layer_of(project, "points").getFeatures() if f["status"] == "used"]
    reject(layer_of(project, "points"), used[100])
    assert [one.line for one in read_job(out).settings.decided] == [used[100]["line"]]
    # edited by whatever else while QGIS was closed
    project.clear()
    from qgis.core import QgsVectorLayer

    other = QgsVectorLayer(f"{out / 'job.gpkg'}|layername=points", "elsewhere", "ogr")
    reject(other, used[200])
    assert take_up_all(out)
    assert [one.line for one in read_job(out).settings.decided] == [used[100]["line"], used[200]["line"]]
    assert not take_up_all(out)


def test_what_was_run_beside_qgis_is_told_and_the_map_follows(opened: Any, project: Any, tmp_path: Path) -> None:
    from plugin.core.job.job_file import read_job, save_choices
    from plugin.core.job.run import continue_job
    from plugin.processing.geopackage import description_of

    _, window, hand = opened
    desk = start_job(opened, tmp_path)
    hand.run(desk)
    out = tmp_path / "survey_job"
    come_back(window)
    assert set(states(desk).values()) == {"done"}, states(desk)

    def levels() -> Any:
        return {round(f["level"], 3) for f in layer_of(project, "contours").getFeatures()}

    assert {round(4 * one, 6) % 1 for one in levels()} == {0.0}
    settings = read_job(out).settings
    save_choices(replace(settings, contours=replace(settings.contours, interval=0.2)))
    continue_job(out)
    come_back(window)
    assert desk.form.interval.value() == 0.2
    told = states(desk)
    assert told["contours"] == "stale", "the layers are of an earlier run"
    assert {told[key] for key in ("points", "check", "lines", "surface", "quality")} == {"done"}
    kept = {path.name: path.read_bytes() for path in (out / "stages").iterdir()}
    times = {path.name: path.stat().st_mtime_ns for path in (out / "stages").iterdir()}
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, desk.said.text()
    assert {round(5 * one, 6) % 1 for one in levels()} == {0.0}
    assert {path.name: path.read_bytes() for path in (out / "stages").iterdir()} == kept
    assert {path.name: path.stat().st_mtime_ns for path in (out / "stages").iterdir()} == times, "nothing made anew"
    # also where the layers are gone, and while the project is closed
    assert "surface" in description_of(out / "job.gpkg", "points")
    assert project.write(str(tmp_path / "job.qgz"))
    project.clear()
    save_choices(replace(read_job(out).settings, max_gap=3.0))
    continue_job(out)
    assert project.read(str(tmp_path / "job.qgz"))
    assert states(desk)["quality"] == "stale"
    assert desk.run_all.isEnabled()


def test_the_interval_suits_the_crs_until_the_user_chooses_one(opened: Any, tmp_path: Path) -> None:
    from plugin.core.job.job_file import read_job
    from plugin.core.units import WORKING_UNITS, LengthUnit

    plugin, window, hand = opened
    survey = _in_feet(tmp_path)
    hand.click(window.tools.widgetForAction(plugin.desk_action))
    form = plugin.desk.form

    def chosen() -> Any:
        return form.interval.value(), WORKING_UNITS[form.unit.currentIndex()]

    feet = (0.5, LengthUnit.US_SURVEY_FOOT)
    assert chosen() == (0.25, LengthUnit.METRE)
    hand.type(form.files.lineEdit(), str(survey))
    hand.type(form.crs, "2229")
    assert chosen() == feet
    contours = read_job(tmp_path / "survey_job").settings.contours
    assert (contours.interval, contours.unit) == feet
    hand.type(form.crs, "25832")
    assert chosen() == (0.25, LengthUnit.METRE)
    plugin.desk.forget()
    (tmp_path / "other").mkdir()
    hand.type(form.crs, "2229")  # the CRS first
    hand.type(form.files.lineEdit(), str(_in_feet(tmp_path / "other")))
    assert chosen() == feet
    plugin.desk.forget()
    hand.type(form.crs, "25832")
    form.interval.setValue(0.3)  # by the user, and stays
    hand.type(form.crs, "2229")
    assert chosen() == (0.3, LengthUnit.METRE)
    plugin.desk.forget()
    form.unit.setCurrentIndex(WORKING_UNITS.index(LengthUnit.FOOT))
    hand.type(form.crs, "25832")
    assert chosen() == (0.25, LengthUnit.FOOT)
    # a job that is taken up with an interval of its own keeps it
    form.fill({**form.settings(), "crs": "EPSG:2229", "interval": 0.25, "unit": 0})
    hand.type(form.crs, "2228")
    assert chosen() == (0.25, LengthUnit.METRE)


def _in_feet(folder: Path) -> Path:
    """A small hill of EPSG:2229, whose heights are in feet, with a spike and a hole."""
    rows = ["name,easting,northing,height,code"]
    for i in range(15):
        for j in range(15):
            if 7 < i < 14 and 7 < j < 14:
                continue
            spike = 6.0 * (i == j == 4)
            rows.append(f"p{15 * i + j},{6480000 + 5 * i:.3f},{1880000 + 5 * j:.3f},{130 + 0.3 * i + spike:.3f},GR")
    (folder / "survey.csv").write_text("\n".join(rows) + "\n", encoding="utf-8")
    return folder / "survey.csv"


def test_a_survey_in_feet_with_nothing_chosen_is_told_in_feet(opened: Any, project: Any, tmp_path: Path) -> None:
    from plugin.core.job.job_file import read_job

    plugin, window, hand = opened
    survey = _in_feet(tmp_path)
    hand.click(window.tools.widgetForAction(plugin.desk_action))
    hand.type(plugin.desk.form.files.lineEdit(), str(survey))
    hand.type(plugin.desk.form.crs, "2229")
    hand.run(plugin.desk)
    assert set(states(plugin.desk).values()) == {"done"}, plugin.desk.said.text()
    out = tmp_path / "survey_job"
    levels = {f["level"] for f in layer_of(project, "contours").getFeatures()}
    assert 131.5 in levels, levels
    texts = [f["text"] for f in layer_of(project, "surface_findings").getFeatures()]
    assert any("at E 64800" in text for text in texts), texts
    texts += [f["text"] for f in layer_of(project, "check_findings").getFeatures()]
    assert not [text for text in texts if re.search(r"\d m[m²³]?\b|E 197|N 57", text)], texts
    assert any("ft" in text for text in texts), texts
    plan = pypdf.PdfReader(out / "plan.pdf").pages[0].extract_text()
    assert "interval 0.25 m" not in plan
    assert "131.5" in plan or "132" in plan, plan
    report = (out / "report.html").read_text(encoding="utf-8")
    assert "Level (m)" not in report
    # the place of a decision is kept in metres
    used = [f for f in layer_of(project, "points").getFeatures() if f["status"] == "used"]
    reject(layer_of(project, "points"), used[20])
    decision = read_job(out).settings.decided[-1]
    assert decision.easting == pytest.approx(used[20]["easting"] * 1200 / 3937, abs=0.001)
    assert decision.northing == pytest.approx(used[20]["northing"] * 1200 / 3937, abs=0.001)


def test_a_layer_taken_away_or_renamed_does_no_harm(opened: Any, project: Any, tmp_path: Path) -> None:
    from plugin.core.job.job_file import read_job

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.run(desk)
    project.removeMapLayer(layer_of(project, "spot_heights").id())
    layer_of(project, "lines_found").setName("x")
    project.layerTreeRoot().removeChildNode(project.layerTreeRoot().findGroups()[0])
    desk.choose(replace(read_job(tmp_path / "survey_job").settings, max_gap=3.0))
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, desk.said.text()
    assert layer_of(project, "spot_heights").isValid()
    assert len([one for one in project.layerTreeRoot().findGroups() if one.customProperty("hummock/job")]) == 1


def test_unsaved_edits_stop_a_run(opened: Any, project: Any, tmp_path: Path) -> None:
    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.run(desk)
    layer = layer_of(project, "points")
    layer.startEditing()
    layer.changeAttributeValue(next(layer.getFeatures()).id(), layer.fields().indexOf("status"), "flagged")
    hand.type(desk.form.checks.lineEdit(), str(DEMO / "check_points.csv"))
    hand.click(desk.run_all)
    assert not desk.busy
    assert "edits that are not saved" in desk.said.text()
    layer.rollBack()


def test_a_failure_says_why_and_goes_when_it_is_mended(opened: Any, tmp_path: Path) -> None:
    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    good = (tmp_path / "survey.csv").read_bytes()
    (tmp_path / "survey.csv").write_text("nothing here\n")
    hand.run(desk)
    told = states(desk)
    assert told["points"] == "failed"
    assert told["check"] == "empty"
    assert "survey.csv" in desk.said.text()
    assert "Traceback" not in desk.said.text()
    assert "survey.csv" in desk.rows["points"].name.toolTip()
    (tmp_path / "survey.csv").write_bytes(good)
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, desk.said.text()


def test_a_run_can_be_cancelled_and_goes_on(opened: Any, project: Any, tmp_path: Path) -> None:
    from qgis.PyQt.QtWidgets import QApplication

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.click(desk.run_all)
    until = time.monotonic() + 60
    while "read" not in desk.said.text() and time.monotonic() < until:
        QApplication.processEvents()
    began = time.monotonic()
    hand.click(desk.cancel)
    wait(desk)
    assert time.monotonic() - began < 10.0
    assert "Cancelled" in desk.said.text()
    assert not project.mapLayers()
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, desk.said.text()


def test_a_new_project_gets_nothing_of_the_old_one(opened: Any, project: Any, tmp_path: Path) -> None:
    from qgis.PyQt.QtWidgets import QApplication

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.click(desk.run_all)
    project.clear()
    assert not desk.busy
    until = time.monotonic() + 5
    while time.monotonic() < until:
        QApplication.processEvents()
    assert not project.mapLayers()
    assert desk.form.settings()["files"] == []


def test_a_new_project_does_not_remember_the_job_of_the_old_one(opened: Any, project: Any, tmp_path: Path) -> None:
    from plugin.gui.desk import ENTRY, SCOPE

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.run(desk)
    assert desk.form.parcels.count() > 1, "layers that go with the old project"
    assert project.readEntry(SCOPE, ENTRY)[0]
    project.clear()
    assert project.readEntry(SCOPE, ENTRY)[0] == ""
    assert not project.isDirty()


def test_the_demo_is_offered_in_a_first_view(opened: Any, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """One click, one folder, and the survey can be run; a file of that name that is there is not written over."""
    from plugin.gui import desk as module

    plugin, window, hand = opened
    hand.click(window.tools.widgetForAction(plugin.desk_action))
    desk = plugin.desk
    assert desk.demo.isVisible()
    monkeypatch.setattr(module.QFileDialog, "getExistingDirectory", lambda *_: "")
    hand.click(desk.demo)
    assert desk.demo.isVisible(), "nothing was chosen"
    monkeypatch.setattr(module.QFileDialog, "getExistingDirectory", lambda *_: str(tmp_path))
    hand.click(desk.demo)
    assert not desk.demo.isVisible()
    survey = tmp_path / "hummock_demo" / "survey.csv"
    assert survey.read_bytes() == (DEMO / "survey.csv").read_bytes()
    told = desk.form.settings()
    assert told["files"] == [str(survey)]
    assert told["folder"] == str(survey.with_name("survey_job"))
    assert told["checks_file"] == str(survey.with_name("check_points.csv"))
    assert desk.run_all.isEnabled(), desk.said.text()
    survey.write_text("mine")
    desk.forget()
    hand.click(desk.demo)
    assert survey.read_text() == "mine"


def test_a_crs_that_is_none_is_told_at_once(opened: Any, tmp_path: Path) -> None:
    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.type(desk.form.crs, "EPSG:999999")
    assert "no CRS" in desk.form.crs_name.text()
    assert not desk.run_all.isEnabled()


def test_the_folder_of_a_job_brings_its_choices(opened: Any, tmp_path: Path) -> None:
    from plugin.core.job.run import continue_job

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.type(desk.form.interval.lineEdit() if hasattr(desk.form.interval, "lineEdit") else desk.form.interval, "0.5")
    continue_job(tmp_path / "survey_job")  # by the command line
    desk.forget()
    hand.type(desk.form.folder.lineEdit(), str(tmp_path / "survey_job"))
    assert desk.form.crs.text() == "EPSG:25832"
    assert desk.form.files.filePath().strip('"') == str(tmp_path / "survey.csv")
    told = states(desk)
    assert told["report"] == "done"
    assert {told[key] for key in ("points", "check", "surface", "contours")} == {"stale"}, "there are no layers yet"
    hand.run(desk)
    assert set(states(desk).values()) == {"done"}, desk.said.text()


# Choices


CHANGED = {
    "points": {
        "COLUMNS": "name,easting,northing,height,code", "SOURCE_CRS": "EPSG:25833", "FILE_UNIT": 1, "HEIGHT_UNIT": 2,
        "UNITS_FROM": 2, "HEIGHTS_OF": 2, "POLE_HEIGHT": 2.0, "ANTENNA_OFFSET": 0.1, "HEIGHTS_ARE": 2, "HEIGHTS": 1,
        "GEOID": 47.25, "ACCEPT": "one|two", "CORRECT": "swapped", "SHIFT_HEIGHTS": "12:+0.2,30:-0.1",
        "NO_VALUE": "-99,x", "ANGLES": 3, "FILE_LAYER": "a", "DELIMITER": 2, "DECIMAL": 2, "ENCODING": "latin-1",
        "COMMENT": "#", "DECISIONS": "/tmp/d.csv",
        "CONTROL": "/tmp/k.csv", "CONTROL_FIT": 2, "CONTROL_HEIGHTS": 1, "LEAVE_OUT": "A,B", "READ_AS": "mirrored",
        "BASE_WAS": "1,2,3", "BASE_IS": "2,3,4",
    },
    "check": {"CHECK": False, "TOLERANCES": 1, "TILT_COMPENSATED": 2, "KEEP_FLAGGED": True},
    "lines": {
        "FIND_LINES": False, "USE_CODES": False, "CODES": "/tmp/c.csv", "CODE_WORDS": "B,E,C,A", "CODE_SEPARATOR": "+",
        "CODE_PATTERN": "(?P<code>.)", "ARC_TOLERANCE": 0.05,
    },
    "surface": {
        "MAX_RIM_EDGE": 7.0, "MAX_RIM_RADIUS": 5.0, "MAX_RIM_PASSES": 1.5, "MAX_RIM_ANGLE": 165.0, "CROSSINGS": 1,
        "CROSSING_TOLERANCE": 0.1, "EDITS": "/tmp/e.json",
    },
    "quality": {"WANTED": 5.0, "MAX_RADIUS": 3.0},
    "contours": {"BASE": 0.1, "INDEX_EVERY": 4, "SMOOTH": 0.1, "CALM": 0.02},
}  # fmt: skip


@pytest.mark.parametrize("step", CHANGED)
def test_each_choice_of_a_step_reaches_the_job_and_comes_back(opened: Any, tmp_path: Path, step: str) -> None:
    from plugin.core.job.job_file import read_job
    from plugin.gui.choicesdialog import ChoicesDialog
    from plugin.processing.jobchoices import choices_of

    desk = start_job(opened, tmp_path)
    before = desk.record.settings
    dialog = ChoicesDialog(step, "title", before, desk)
    assert set(dialog.wrappers) == {choice.name for choice in choices_of(step)}
    dialog.accept()
    assert not dialog.said.text()
    assert dialog.chosen == before, "a dialog that is only looked at changes nothing"
    names = set(CHANGED[step])
    assert names | {"GEOID_GRID", "BOUNDARY", "BREAKLINES", "SOFT_LINES", "VOIDS"} >= set(dialog.wrappers) >= names
    dialog = ChoicesDialog(step, "title", before, desk)
    for name, value in CHANGED[step].items():
        dialog.wrappers[name].setParameterValue(value, dialog.context)
    dialog.accept()
    assert not dialog.said.isVisibleTo(dialog), dialog.said.text()
    desk.choose(dialog.chosen)
    kept = read_job(tmp_path / "survey_job").settings
    assert kept == dialog.chosen
    for choice in choices_of(step):
        if choice.name in names:
            assert choice.shown(kept) == CHANGED[step][choice.name], choice.name
            assert choice.shown(kept) != choice.shown(before), choice.name


def test_words_that_are_not_understood_keep_the_dialog_open(opened: Any, tmp_path: Path) -> None:
    from plugin.gui.choicesdialog import ChoicesDialog

    desk = start_job(opened, tmp_path)
    dialog = ChoicesDialog("points", "title", desk.record.settings, desk)
    dialog.show()
    dialog.wrappers["SHIFT_HEIGHTS"].setParameterValue("from here on", dialog.context)
    dialog.accept()
    assert dialog.isVisible()
    assert "from here on" in dialog.said.text()
    dialog.close()


def test_a_boundary_drawn_on_the_map_is_that_of_the_job(opened: Any, project: Any, tmp_path: Path) -> None:
    """Chosen in the dialog, edited afterwards: mesh, report and the job without QGIS are of the same lines."""
    from qgis.core import QgsFeature, QgsGeometry, QgsRectangle, QgsVectorLayer

    from plugin.core.handover.mesh import read_2dm
    from plugin.core.job.run import continue_job
    from plugin.gui.choicesdialog import ChoicesDialog

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    desk.choose(replace(desk.record.settings, use_codes=False))  # its codes have a boundary already
    hand.run(desk)
    out = tmp_path / "survey_job"
    whole = read_2dm(out / "surface.2dm").plan_area
    layer = QgsVectorLayer("Polygon?crs=EPSG:25832", "drawn", "memory")
    feature = QgsFeature()
    feature.setGeometry(QgsGeometry.fromRect(QgsRectangle(548300, 5712430, 548340, 5712470)))
    layer.dataProvider().addFeatures([feature])
    project.addMapLayer(layer)
    dialog = ChoicesDialog("surface", "title", desk.record.settings, desk)
    dialog.wrappers["BOUNDARY"].setParameterValue(layer.id(), dialog.context)
    dialog.accept()
    assert not dialog.said.text()
    desk.choose(dialog.chosen)
    assert states(desk)["surface"] == "stale"
    hand.run(desk)
    assert read_2dm(out / "surface.2dm").plan_area == pytest.approx(1600.0, abs=0.5)
    assert whole > 5000
    # the dialog shows the layer again, and looking at it changes nothing
    again = ChoicesDialog("surface", "title", desk.record.settings, desk)
    again.accept()
    assert again.chosen == desk.record.settings
    # edited: out of date, and what is run is the new one, with QGIS or without
    layer.startEditing()
    layer.changeGeometry(
        next(layer.getFeatures()).id(),
        QgsGeometry.fromRect(QgsRectangle(548300, 5712430, 548320, 5712470)),
    )
    assert layer.commitChanges()
    told = states(desk)
    assert (told["check"], told["lines"], told["surface"]) == ("done", "stale", "stale")
    assert continue_job(out).surface.tin.plan_area == pytest.approx(800.0, abs=0.5)


# Tools


def test_another_algorithm_becomes_a_step_that_is_run_again(opened: Any, project: Any, tmp_path: Path) -> None:
    """As its dialog reports it: kept in the project, out of date with the surface, taken away again."""
    import processing

    from plugin.core.surface.build import SurfaceOptions
    from plugin.gui.steps import added_tool

    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.run(desk)
    out = tmp_path / "survey_job"
    names = [desk.more.itemData(i) for i in range(desk.more.count())]
    assert "slopemap" in names
    assert "buildsurface" not in names
    tool = added_tool(desk._new_tool("slopemap"))
    parameters = tool.parameters(desk.book)
    assert parameters["INPUT"] == str(out / "surface.2dm")
    mesh = next(one for one in project.mapLayers().values() if one.source() == str(out / "surface.2dm"))

    class Dialog:
        def createProcessingParameters(self) -> Any:
            return {**parameters, "INPUT": mesh.id()}  # as QGIS gives a layer of the project

    desk._from_dialog(tool, Dialog(), True, processing.run("hummock:slopemap", parameters))
    assert states(desk)[tool.key] == "done"
    assert desk.book.entries[tool.key].options.get("INPUT") in (None, str(out / "surface.2dm"))
    assert project.write(str(tmp_path / "job.qgz"))
    project.clear()
    assert tool.key not in desk.rows
    assert project.read(str(tmp_path / "job.qgz"))
    assert states(desk)[tool.key] == "done"
    contours = replace(desk.record.settings.contours, interval=0.5)
    desk.choose(replace(desk.record.settings, contours=contours))
    told = states(desk)
    assert (told["contours"], told["plan"], told[tool.key]) == ("stale", "stale", "done"), "no contours in a slope map"
    desk.choose(replace(desk.record.settings, surface=SurfaceOptions(max_rim_edge=4.0)))
    assert states(desk)[tool.key] == "stale"
    hand.run(desk)
    assert states(desk)[tool.key] == "done", desk.said.text()
    hand.click(desk.rows[tool.key].gone)
    assert tool.key not in desk.book.tools
    assert tool.key not in desk.rows
