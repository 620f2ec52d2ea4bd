"""Random sequences of what people do to a job on the desk: no decision is lost, no step fails, no wrong "done".

Three sequences here; more by hand: ``HUMMOCK_SEQUENCES=50 pytest tests/qgis/test_desk_sequences.py``.
"""

from __future__ import annotations

import os
from dataclasses import replace
from pathlib import Path
from typing import Any, Dict, List

import numpy as np
import pytest
import test_desk
from test_desk import come_back, layer_of, states

SEQUENCES = int(os.environ.get("HUMMOCK_SEQUENCES", "3"))
STEPS = 9
SIDE = 13


def _lines(random: np.random.Generator) -> List[str]:
    """A small hill, walked to and fro; names that do not follow the lines."""
    names = random.permutation(SIDE * SIDE)
    made = []
    for i in range(SIDE):
        for j in range(SIDE) if i % 2 == 0 else reversed(range(SIDE)):
            x, y = 500000.0 + 1.5 * i, 5800000.0 + 1.5 * j
            made.append(f"p{names[i * SIDE + j]},{x:.3f},{y:.3f},{100 + 0.05 * i + 0.4 * np.sin(j / 3):.3f},GR")
    return made


opened = test_desk.opened  # the fixture


class Story:
    """A job on the desk, and what must be true of it. ``decided``: status by name of the points that a hand decided."""

    def __init__(self, panel: Any, project: Any, folder: Path, seed: int) -> None:
        self.plugin, self.window, self.hand = panel
        self.project, self.folder = project, folder
        self.random = np.random.default_rng(seed)
        self.rows = _lines(self.random)
        self.top = 0
        self.decided: Dict[str, str] = {}
        self.told: List[str] = []
        self.survey = folder / "survey.csv"
        self.write()
        self.hand.click(self.window.tools.widgetForAction(self.plugin.desk_action))
        self.hand.type(self.desk.form.files.lineEdit(), str(self.survey))
        assert self.desk.form.folder.filePath() == str(self.out)
        self.hand.type(self.desk.form.crs, "25832")

    @property
    def desk(self) -> Any:
        return self.plugin.desk

    @property
    def out(self) -> Path:
        return self.folder / "survey_job"

    def write(self) -> None:
        head = ["# a line above", *["# one more"] * self.top, "name,easting,northing,height,code"]
        self.survey.write_text("\n".join([*head, *self.rows]) + "\n", encoding="utf-8")

    def run(self) -> None:
        if self.desk.run_all.isEnabled():
            self.hand.run(self.desk)
        assert not self.desk.failure, (self.told, self.desk.failure)
        assert set(states(self.desk).values()) == {"done"}, (self.told, states(self.desk), self.desk.said.text())
        self.check_points()

    def check_points(self) -> None:
        """What the hand decided stands in the layer, and the surface is of the points that are not rejected."""
        from plugin.core.job.job_file import read_job

        rows = {f["name"]: f["status"] for f in layer_of(self.project, "points").getFeatures()}
        assert len(rows) == len(self.rows), self.told
        for name, status in self.decided.items():
            assert rows[name] == status, (self.told, name)
        kept = [(one.name, one.status) for one in read_job(self.out).settings.decided]
        assert sorted(kept) == sorted(self.decided.items()), self.told
        mesh = (self.out / "surface.2dm").read_text(encoding="utf-8").splitlines()
        shaping = sum(status != "rejected" for status in rows.values())
        assert sum(line.startswith("ND ") for line in mesh) == shaping, self.told

    # What people do

    def edit_points(self) -> None:
        layer = layer_of(self.project, "points")
        rows = list(layer.getFeatures())
        layer.startEditing()
        column = layer.fields().indexOf("status")
        for k in self.random.choice(len(rows), 3, replace=False).tolist():
            now = str(self.random.choice(["used", "rejected"]))
            name, by_check = rows[k]["name"], rows[k]["check_status"]
            layer.changeAttributeValue(rows[k].id(), column, now)
            if now == by_check:
                self.decided.pop(name, None)
            elif rows[k]["status"] != now:
                self.decided[name] = now
        assert layer.commitChanges()

    def grow(self) -> None:
        """The file is written anew by the device, with more points."""
        number, x = 1000 + len(self.rows), 500000.0 + 1.5 * self.random.uniform(0, SIDE - 1)
        y = 5800000.0 + 1.5 * self.random.uniform(0, SIDE - 1)
        height = 100 + 0.05 * (x - 500000) / 1.5 + 0.4 * np.sin((y - 5800000) / 4.5)
        self.rows.append(f"p{number},{x:.3f},{y:.3f},{height:.3f},GR")
        self.write()

    def move_lines(self) -> None:
        """All points stand one line further down."""
        self.top += 1
        self.write()

    def reopen(self) -> None:
        path = str(self.folder / "project.qgz")
        assert self.project.write(path)
        self.project.clear()
        assert self.project.read(path)
        assert self.desk.form.crs.text() == "EPSG:25832"

    def other_rim(self) -> None:
        self._choose(surface={"max_rim_edge": round(float(self.random.uniform(5.0, 12.0)), 2)})

    def other_interval(self) -> None:
        self._choose(contours={"interval": float(self.random.choice([0.1, 0.2, 0.25, 0.5]))})

    def other_gap(self) -> None:
        settings = self.desk.record.settings
        self.desk.choose(replace(settings, max_gap=round(float(self.random.uniform(2.0, 6.0)), 2)))

    def _choose(self, **changes: Dict[str, Any]) -> None:
        settings = self.desk.record.settings
        parts = {name: replace(getattr(settings, name), **change) for name, change in changes.items()}
        self.desk.choose(replace(settings, **parts))

    def delete_a_layer(self) -> None:
        own = [one for one in self.project.mapLayers().values() if str(self.out) in one.source()]
        own = [one for one in own if "layername=points" not in one.source()]
        if own:
            self.project.removeMapLayer(own[int(self.random.integers(len(own)))].id())

    def rename_a_layer(self) -> None:
        own = list(self.project.mapLayers().values())
        own[int(self.random.integers(len(own)))].setName(f"mine {len(self.told)}")

    def rebuild(self) -> None:
        """A product is thrown away beside QGIS."""
        (self.out / "surface.2dm").unlink(missing_ok=True)

    def on_the_command_line(self) -> None:
        """The job goes on without QGIS; the layers follow at the next run."""
        from plugin.core.__main__ import main

        assert main(["--job", str(self.out)]) == 0

    def act(self) -> None:
        ways = (
            self.edit_points, self.edit_points, self.grow, self.move_lines, self.reopen, self.other_rim,
            self.other_interval, self.other_gap, self.delete_a_layer, self.rename_a_layer, self.rebuild,
            self.on_the_command_line, self.run,
        )  # fmt: skip
        way = ways[int(self.random.integers(len(ways)))]
        self.told.append(way.__name__)
        way()
        if way in (self.grow, self.move_lines, self.rebuild, self.on_the_command_line):
            come_back(self.window)
        if way in (self.grow, self.move_lines, self.rebuild):
            assert "stale" in states(self.desk).values(), self.told


@pytest.mark.parametrize("seed", range(SEQUENCES))
def test_no_decision_is_lost_and_nothing_is_done_that_is_not(
    opened: Any,
    project: Any,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    seed: int,
) -> None:
    from plugin.core.handover.mesh import write_2dm
    from plugin.core.job.job_file import read_job
    from plugin.core.job.run import compute
    from plugin.gui import desk as module
    from plugin.gui import toolbook

    # the sheet and the pages are made in other tests; here they would take most of the time
    monkeypatch.setattr(module.DeskDock, "_run_tools", lambda self: True)
    monkeypatch.setattr(module, "report_pages", lambda *_: "")
    monkeypatch.setattr(toolbook.ToolBook, "state", lambda self, key: toolbook.State.DONE)
    story = Story(opened, project, tmp_path, seed)
    story.run()
    for _ in range(STEPS):
        story.act()
    story.told.append("end")
    story.run()
    alone = compute(read_job(story.out).settings)
    write_2dm(alone.surface.tin, tmp_path / "alone.2dm")
    assert (tmp_path / "alone.2dm").read_bytes() == (story.out / "surface.2dm").read_bytes(), story.told
