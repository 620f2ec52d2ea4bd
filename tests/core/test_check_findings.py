"""What the checks found, as a table for programs and as figures of the report."""

from __future__ import annotations

import csv

import numpy as np
import pytest

from plugin.core.handover.check_findings import write_check_findings
from plugin.core.points.pointset import make_points
from plugin.core.quality.check import SurveyCheck, _runs, check_survey
from plugin.core.quality.repeatability import Repeatability, RunRepeatability
from plugin.core.quality.walk import make_walk
from plugin.core.report.labels import Words
from plugin.core.report.run_figures import runs_figure


def checked(crs: object = None) -> SurveyCheck:
    """A walk to and fro, 2 m apart, with a pole lifted by 0.4 m over eight points and one line stored twice."""
    x, y = np.meshgrid(np.arange(0, 20.1, 0.5), np.arange(0, 20.1, 2.0))
    x[1::2] = x[1::2, ::-1]
    height = np.random.default_rng(5).normal(0, 0.01, x.size)
    height[200:208] += 0.4
    columns = [np.append(c.ravel(), c.ravel()[-1]) for c in (500000 + x, 5700000 + y, height)]
    return check_survey(
        make_points(*columns, crs=crs, source="walk.csv", source_line=np.arange(2, len(columns[0]) + 2))
    )


def test_every_finding_is_a_row(tmp_path) -> None:
    check = checked()
    write_check_findings(check, tmp_path / "survey_findings.csv")
    with open(tmp_path / "survey_findings.csv", encoding="utf-8", newline="") as stream:
        rows = list(csv.DictReader(stream))
    assert len(rows) == len(check.findings)
    (lifted,) = (row for row in rows if row["reason"] == "pole_height" and row["first_line"] == "202")
    assert (lifted["status"], lifted["points"], lifted["last_line"], lifted["file"]) == (
        "rejected", "8", "209", "walk.csv",
    )  # fmt: skip
    assert float(lifted["size_m"]) == pytest.approx(0.4, abs=0.03)
    assert float(lifted["significance"]) > 4
    assert (float(lifted["easting"]), float(lifted["northing"])) == (
        check.points.easting[200], check.points.northing[200],
    )  # fmt: skip
    assert float(lifted["last_easting"]) == check.points.easting[207]
    assert f"lie {float(lifted['size_m']):+.3f} m" in lifted["text"]
    (twice,) = (row for row in rows if row["reason"] == "duplicate")
    assert (twice["size_m"], twice["significance"], twice["run"]) == ("", "", "")


def test_the_table_tells_the_file_of_a_point_where_there_are_several(tmp_path) -> None:
    check = checked()
    names = np.full(len(check.points), "monday.csv", object)
    names[150:] = "tuesday.csv"
    check.points.extra["source"] = names
    write_check_findings(check, tmp_path / "survey_findings.csv")
    with open(tmp_path / "survey_findings.csv", encoding="utf-8", newline="") as stream:
        assert {row["file"] for row in csv.DictReader(stream)} == {"tuesday.csv"}


def test_the_runs_are_drawn_row_by_row() -> None:
    whole = Repeatability(0.01, 900.0, 0.008, 0.0128, 300.0, 0.0119, 0.0139, 40)
    nan = float("nan")
    runs = [
        RunRepeatability(0, 0.012, 20, 0.009, 0.018, 0.010, True),
        RunRepeatability(1, 0.015, 3, 0.008, 0.5, nan, False),  # an interval beyond the axis, no claim
    ]
    one = runs_figure(runs[:1], ["2–90"], whole, Words(str))
    two = runs_figure(runs, ["2–90", "91–130"], whole, Words(str))
    assert one.uri.startswith("data:image/svg+xml")
    assert len(two.uri) > len(one.uri)
    assert two.uri == runs_figure(runs, ["2–90", "91–130"], whole, Words(str)).uri


def test_a_pause_ends_a_run():
    """Runs are told one by one: standing still for 61 seconds ends one, 59 seconds do not."""
    x = np.arange(30.0)
    for pause, count in ((59.0, 1), (61.0, 2)):
        time = x + np.where(x >= 15, pause - 1, 0.0)
        points = make_points(x, np.zeros(30), np.full(30, 100.0), time=time)
        walk = make_walk(np.arange(30), x, np.zeros(30), points.height)
        assert len(set(_runs(points, walk).tolist())) == count
