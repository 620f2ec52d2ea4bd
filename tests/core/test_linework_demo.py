"""The demo survey's codes: every line comes out, whole, and nothing is left over unreported."""

import csv
from collections import Counter
from pathlib import Path

import numpy as np
import pytest

from plugin.core.georeference.crs import projected_crs
from plugin.core.linework.codes import default_code_table
from plugin.core.linework.constraints import LineKind
from plugin.core.linework.join import PointRole, join_lines
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import Reason, Status

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"


@pytest.fixture(scope="module")
def points():
    return read_points(DEMO / "survey.csv", crs=projected_crs("EPSG:25832")).points


def decided(points):
    """The survey with the decisions that lie beside it."""
    status, reasons = points.status.copy(), points.reasons.copy()
    place = {int(line): index for index, line in enumerate(points.source_line)}
    with (DEMO / "decisions.csv").open(encoding="utf-8") as file:
        for row in csv.DictReader(file):
            index = place[int(row["line"])]
            status[index] = Status[row["status"].upper()]
            reasons[index] |= Reason[row["reason"].upper()]
    return points.with_status(status, reasons)


def expected_lines():
    """Codes of the file by plain counting: how many points each line has, repeated records included."""
    with (DEMO / "survey.csv").open(encoding="utf-8-sig") as file:
        rows = [row.split(",") for row in file if not row.startswith("#")]
    keys = [tuple(row[4].split()[:2]) for row in rows[1:] if len(row) > 4]
    return Counter(" ".join(key) for key in keys if len(key) == 2)


def test_all_lines_of_the_demo_come_out_whole(points):
    work = join_lines(points, default_code_table())
    lines = {line.label: line for line in work.constraints.lines}
    assert set(lines) == set(expected_lines())
    for label, count in expected_lines().items():
        own = lines[label].points[lines[label].points >= 0]
        assert len(np.unique(own)) == count
        assert np.all(np.diff(points.source_line[np.unique(own)]) > 0)
    assert Counter(line.kind for line in lines.values()) == {
        LineKind.BREAKLINE: len(lines) - 2, LineKind.BOUNDARY: 1, LineKind.VOID: 1,
    }  # fmt: skip
    assert work.open_ends == ()
    assert {each.text.code for each in work.messages} == {"linework.check_shots", "linework.not_ground"}
    assert work.counts[PointRole.NOT_JOINED] == work.counts[PointRole.REJECTED] == 0
    assert sum(work.counts.values()) == len(points)


def test_codes_reject_what_the_decisions_reject_as_not_ground(points):
    work, by_hand = join_lines(points, default_code_table()), decided(points)
    for reason in (Reason.CHECK_SHOT, Reason.NOT_GROUND):
        assert np.array_equal((work.points.reasons & reason) != 0, (by_hand.reasons & reason) != 0)


def test_decisions_leave_rejected_points_out_and_say_so(points):
    before = decided(points)
    work = join_lines(before, default_code_table())
    assert np.array_equal(work.points.status, before.status)
    lines = {line.label for line in work.constraints.lines}
    assert lines == set(expected_lines())
    skipped = {int(i) for each in work.messages for i in each.values["indices"] if "skipped" in each.text.code}
    with_line = {i for i, code in enumerate(points.code) if len(code.split()) > 1 and code.split()[1].isdigit()}
    assert skipped == with_line & set(np.flatnonzero(~before.used).tolist())
    assert work.counts[PointRole.NOT_JOINED] == 0
    assert work.open_ends == ()
