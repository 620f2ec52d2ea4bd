"""The desk with real clicks: from an empty project to plan and report, and again after an edit."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pypdf
import pytest
from in_qgis import DEMO


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
    plugin.desk_action = plugin._make_desk_action()
    window.tools.addAction(plugin.desk_action)
    yield plugin, window, Hand()
    if plugin.desk is not None:
        plugin.desk.stop_listening()
    window.window.close()


def start_job(opened: Any, folder: Path) -> Any:
    """The panel opened and the job described; nothing run."""
    plugin, window, hand = opened
    survey = folder / "survey.csv"
    survey.write_bytes((DEMO / "survey.csv").read_bytes())
    hand.click(window.tools.widgetForAction(plugin.desk_action))
    desk = plugin.desk
    assert desk.isVisible()
    assert not desk.run_all.isEnabled()
    assert "survey file" in desk.run_all.toolTip()
    hand.type(desk.form.files.lineEdit(), str(survey))
    assert desk.form.folder.filePath() == str(folder / "survey_job")
    hand.type(desk.form.crs, "EPSG:25832")
    assert "UTM" in desk.form.crs_name.text()
    return desk


def states(desk: Any) -> Any:
    return {key: desk.book.state(key).value for key in desk.book.steps}


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("desk")


def test_from_an_empty_project_to_plan_and_report_in_few_actions(opened: Any, project: Any, folder: Path) -> None:
    _, _, hand = opened
    desk = start_job(opened, folder)
    hand.type(desk.form.checks.lineEdit(), str(DEMO / "check_points.csv"))
    hand.click(desk.run_all)
    assert set(states(desk).values()) == {"done"}, (states(desk), desk.said.text())
    assert hand.actions <= 12
    assert hand.actions == 5
    out = folder / "survey_job"
    assert len(pypdf.PdfReader(out / "plan.pdf").pages) == 1
    assert len(pypdf.PdfReader(out / "report" / "report.pdf").pages) > 5
    assert "elsewhere" not in (out / "report" / "checksums.sha256").read_text()
    assert "plan.pdf" in (out / "report" / "checksums.sha256").read_text()
    assert not desk.run_all.isEnabled()  # nothing is left to do
    # surfaces lie below all else on the map
    order = [node.layer().type() for node in project.layerTreeRoot().findLayers()]
    from qgis.core import QgsMeshLayer

    assert isinstance(project.layerTreeRoot().findLayers()[-1].layer(), QgsMeshLayer), order

    # the project remembers the job
    assert project.write(str(folder / "job.qgz"))
    project.clear()
    assert desk.book.settings["files"] == []
    assert project.read(str(folder / "job.qgz"))
    assert set(states(desk).values()) == {"done"}
    assert desk.form.crs.text() == "EPSG:25832"

    # a status changed by hand: what is made from it is out of date, and only that
    layer = next(one for one in project.mapLayers().values() if "checked_points" in one.source())
    plain = [f for f in layer.getFeatures() if (f["status"], f["code"]) == ("used", "GR") and not f["check_reason"]]
    chosen = plain[len(plain) // 2]
    line, vertices = chosen["line"], _vertices(out)
    layer.startEditing()
    assert layer.changeAttributeValue(chosen.id(), layer.fields().indexOf("status"), "rejected")
    assert layer.commitChanges()
    told = states(desk)
    assert told["points"] == told["check"] == "done"
    assert told["surface"] == told["plan"] == told["report"] == told["contours"] == "stale"
    assert desk.run_all.text() == "Run what is out of date"
    hand.click(desk.run_all)
    assert set(states(desk).values()) == {"done"}, desk.said.text()
    assert _vertices(out) == vertices - 1
    decisions = (out / "decisions.csv").read_text().splitlines()
    assert decisions[1:] == [f"{line},rejected,by_hand"]
    points = (out / "report" / "points.csv").read_text().splitlines()
    assert any(row.startswith(f"{line},") and "rejected" in row for row in points) or any(
        f",{line}," in row and "rejected" in row for row in points
    )

    # read again from the file: the decision stays
    hand.click(desk.rows["points"].run)
    assert states(desk)["check"] == "stale"
    hand.click(desk.run_all)
    assert set(states(desk).values()) == {"done"}, desk.said.text()
    assert _vertices(out) == vertices - 1
    # layers of former runs made room
    sources = [
        layer.source().split("|")[0] for layer in project.mapLayers().values() if "plan.gpkg" not in layer.source()
    ]
    assert len(sources) == len(set(sources))


def _vertices(out: Path) -> int:
    return sum(line.startswith("ND ") for line in (out / "surface.2dm").read_text().splitlines())


def test_a_failure_says_why_and_stops(opened: Any, tmp_path: Path) -> None:
    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    (tmp_path / "survey.csv").write_text("nothing here\n")
    hand.click(desk.run_all)
    told = states(desk)
    assert told["points"] == "failed"
    assert told["check"] == "empty"
    assert "survey.csv" in desk.said.text()
    assert "Traceback" not in desk.said.text()
    assert not desk.rows["check"].run.isEnabled()
    assert desk.rows["points"].run.isEnabled()


def test_a_crs_that_is_none_is_told_at_once(opened: Any, tmp_path: Path) -> None:
    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    hand.type(desk.form.crs, "EPSG:999999")
    assert "no CRS" in desk.form.crs_name.text()
    assert not desk.run_all.isEnabled()


def test_options_chosen_in_the_dialog_are_remembered(opened: Any, tmp_path: Path) -> None:
    """The dialog is the algorithm's own; what was changed there is used when the step runs again."""
    desk = start_job(opened, tmp_path)

    class Dialog:
        def createProcessingParameters(self) -> Any:
            return {**desk.book.parameters("surface"), "MAX_RIM_EDGE": 6.5}

    desk._from_dialog(desk.book.steps["surface"], Dialog(), True, {"OUTPUT": str(tmp_path / "surface.2dm")})
    assert desk.book.parameters("surface")["MAX_RIM_EDGE"] == 6.5
    assert desk.book.entries["surface"].options == {"MAX_RIM_EDGE": 6.5}
    desk._from_dialog(desk.book.steps["surface"], Dialog(), False, {})
    assert desk.book.entries["surface"].run == 1


def test_another_algorithm_becomes_a_step_that_is_run_again(
    opened: Any, project: Any, chain: Any, tmp_path: Path
) -> None:
    """As its dialog reports it: kept in the project, out of date with the surface, taken away again."""
    _, _, hand = opened
    desk = start_job(opened, tmp_path)
    out = tmp_path / "survey_job"
    out.mkdir()
    for key in ("points", "check", "lines", "surface"):  # done elsewhere
        results = {name: value for name, value in desk.book.parameters(key).items() if name in ("OUTPUT", "LINES")}
        for path in results.values():
            source = chain["surface"]["OUTPUT"] if path.endswith(".2dm") else chain["points"]["OUTPUT"]
            Path(path).write_bytes(Path(source).read_bytes())
        desk.book.record(key, {}, results)
    Path(out / "surface.prj").write_bytes(Path(chain["surface"]["OUTPUT"]).with_suffix(".prj").read_bytes())
    names = [desk.more.itemData(i) for i in range(desk.more.count())]
    assert "slopemap" in names
    assert "buildsurface" not in names
    step = desk_step(desk, "slopemap")
    import processing

    parameters = step.parameters(desk.book)
    assert parameters["INPUT"] == str(out / "surface.2dm")

    class Dialog:
        def createProcessingParameters(self) -> Any:
            return parameters

    desk._from_dialog(step, Dialog(), True, processing.run("hummock:slopemap", parameters))
    assert states(desk)[step.key] == "done"
    assert project.write(str(tmp_path / "job.qgz"))
    project.clear()
    assert step.key not in desk.rows
    assert project.read(str(tmp_path / "job.qgz"))
    assert states(desk)[step.key] == "done"
    desk.book.record("surface", {}, desk.book.entries["surface"].results)  # built anew
    desk.show_states()
    assert states(desk)[step.key] == "stale"
    hand.click(desk.rows[step.key].run)
    assert states(desk)[step.key] == "done", desk.said.text()
    hand.click(desk.rows[step.key].gone)
    assert step.key not in desk.book.steps
    assert step.key not in desk.rows


def desk_step(desk: Any, name: str) -> Any:
    from plugin.gui.steps import added_step

    return added_step(desk._new_step(name))
