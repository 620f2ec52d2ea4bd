"""Decisions by hand over those of the checks: kept, told, undone, and carried through a rebuild."""

from __future__ import annotations

import time
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.linework.constraints import Constraints
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import Decisions, read_decisions, words_of_reasons
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.points.table import write_points
from plugin.core.quality.overrides import changed_by_hand, with_overrides, write_decisions
from plugin.core.surface.build import build_surface
from plugin.core.surface.locate import heights_at

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"
USED, FLAGGED, REJECTED = (int(each) for each in Status)


def checked(status, reasons, lines=None):
    n = len(status)
    x = np.arange(n, dtype=float)
    lines = np.arange(2, n + 2) if lines is None else np.array(lines)
    return make_points(
        x, x**2 % 7, 0 * x, status=np.array(status, np.uint8), reasons=np.array(reasons, np.uint32), source_line=lines
    )


def decisions(*entries, source="hand.csv"):
    """Of (line, status, reasons)."""
    table = np.array([(*entry, at) for at, entry in enumerate(entries, 2)], np.int64).reshape(-1, 4)
    return Decisions(table[:, 0], table[:, 1].astype(np.uint8), table[:, 2].astype(np.uint32), table[:, 3], source)


def columns_of(points):
    """The columns of a layer of ``points``."""
    return {
        "line": points.source_line.tolist(),
        "status": [Status(each).name.lower() for each in points.status],
        "reason": [words_of_reasons(int(each)) for each in points.reasons],
        **{name: list(points.extra[name]) for name in ("check_status", "check_reason")},
    }


def test_the_hand_wins_and_the_checks_are_remembered():
    points = checked([USED, USED, FLAGGED, REJECTED, REJECTED], [0, 0, Reason.TILT, Reason.POLE_HEIGHT, Reason.NO_FIX])
    result, report = with_overrides(
        points, decisions((3, REJECTED, Reason.NOT_GROUND), (4, USED, Reason.BY_HAND), (5, USED, Reason.BY_HAND))
    )
    assert result.status.tolist() == [USED, REJECTED, USED, USED, REJECTED]
    assert result.reasons.tolist() == [
        0, Reason.NOT_GROUND | Reason.BY_HAND, Reason.BY_HAND, Reason.BY_HAND, Reason.NO_FIX,
    ]  # fmt: skip
    assert result.extra["check_status"].tolist() == ["used", "used", "flagged", "rejected", "rejected"]
    assert result.extra["check_reason"].tolist() == ["", "", "tilt", "pole_height", "no_fix"]
    assert report.line.tolist() == [3, 4, 5]
    assert report.decided_at.tolist() == [2, 3, 4]
    assert report.count(Status.REJECTED, Status.USED) == 1
    assert report.count(Status.USED, Status.REJECTED) == 1
    assert report.count(Status.FLAGGED, Status.USED) == 1
    assert report.rows()[2] == {
        "line": 5, "check_status": "rejected", "check_reason": "pole_height", "status": "used", "reason": "by_hand",
        "decided_at": 4,
    }  # fmt: skip
    assert [each.text.code for each in report.messages] == [
        "overrides.restored", "overrides.withdrawn", "overrides.flag_changed",
    ]  # fmt: skip
    assert report.messages[0].say() == (
        "By hand the point of line 5 is in the surface, which the checks rejected (pole_height)."
    )
    assert points.status.tolist() == [USED, USED, FLAGGED, REJECTED, REJECTED]  # what came in is as it was


def test_a_decision_that_agrees_overrules_nothing():
    points = checked([USED, REJECTED], [0, Reason.NO_FIX])
    result, report = with_overrides(points, decisions((2, USED, Reason.BY_HAND), (3, REJECTED, Reason.NOT_GROUND)))
    assert (len(report), report.confirmed, report.messages) == (0, 2, ())
    assert result.reasons.tolist() == [0, Reason.NO_FIX | Reason.NOT_GROUND | Reason.BY_HAND]


def test_a_decision_without_a_point_is_told():
    _, report = with_overrides(checked([USED], [0]), decisions((99, REJECTED, Reason.BY_HAND)))
    assert [each.text.code for each in report.messages] == ["decisions.no_point"]
    assert report.missed == report.messages


statuses = st.sampled_from([USED, FLAGGED, REJECTED])
reasons_ = st.integers(0, 2047).map(lambda bits: bits & ~int(Reason.BY_HAND))


@settings(max_examples=100, deadline=None)
@given(st.lists(st.tuples(statuses, reasons_), min_size=1, max_size=30), st.data())
def test_a_second_round_changes_nothing_and_a_layer_gives_the_decisions_back(rows, data):
    points = checked(*zip(*rows))
    some = data.draw(st.lists(st.sampled_from(points.source_line.tolist()), unique=True))
    hand = decisions(*((line, data.draw(statuses), data.draw(reasons_) or int(Reason.BY_HAND)) for line in some))
    result, report = with_overrides(points, hand)
    assert len(result) == len(points)
    assert len(report) + report.confirmed == len(hand)
    again, report_again = with_overrides(result, hand)
    for column in ("status", "reasons"):
        np.testing.assert_array_equal(getattr(again, column), getattr(result, column))
    assert report_again.rows() == report.rows()
    for name in ("check_status", "check_reason"):
        assert again.extra[name].tolist() == result.extra[name].tolist()
    from_layer = changed_by_hand(columns_of(result), "layer")
    assert from_layer.line.tolist() == report.line.tolist()
    assert from_layer.status.tolist() == report.by_hand.tolist()
    once_more, _ = with_overrides(points, from_layer)
    np.testing.assert_array_equal(once_more.status, result.status)
    without, none = with_overrides(result, decisions())
    np.testing.assert_array_equal(without.status, points.status)  # taken back: the checks' own again
    np.testing.assert_array_equal(without.reasons, points.reasons)
    assert len(none) == 0


def test_rows_nobody_touched_do_not_bind_a_new_check():
    """The layer of a first check is edited in one row; a stricter second check is free on all the others."""
    first, _ = with_overrides(checked([USED, REJECTED, USED], [0, Reason.TILT, 0]), decisions())
    columns = columns_of(first)
    columns["status"][1] = "used"
    hand = changed_by_hand(columns, "layer")
    assert (hand.line.tolist(), hand.reasons.tolist()) == ([3], [Reason.BY_HAND])
    second = checked([REJECTED, REJECTED, USED], [Reason.NO_FIX, Reason.TILT, 0])
    result, report = with_overrides(second, hand)
    assert result.status.tolist() == [REJECTED, USED, USED]
    assert report.line.tolist() == [3]


def test_cells_of_a_layer():
    columns = {
        "line": [2, 3, 4, 5],
        "status": ["Rejected", None, "", "flagged"],
        "reason": ["not_ground+tilt", "", None, ""],
    }
    hand = changed_by_hand(columns, "layer")
    assert hand.line.tolist() == [2, 5]
    assert hand.reasons.tolist() == [Reason.NOT_GROUND | Reason.TILT, Reason.BY_HAND]
    assert hand.at.tolist() == [1, 4]


@pytest.mark.parametrize(
    ("column", "value", "code"),
    [
        ("status", "gone", "overrides.bad_cell"),
        ("reason", "because", "overrides.bad_cell"),
        ("line", None, "overrides.no_line"),
        ("line", "x", "overrides.no_line"),
        ("line", 3, "overrides.two_rows"),
    ],
)
def test_cells_that_cannot_be_understood(column, value, code):
    columns = {"line": [2, 3], "status": ["rejected", "rejected"], "reason": ["", ""]}
    columns[column][0] = value
    with pytest.raises(SurveyError) as caught:
        changed_by_hand(columns, "points of Monday")
    assert caught.value.code == code
    assert "points of Monday" in str(caught.value)


def test_decisions_are_kept_as_a_file(tmp_path):
    hand = decisions((2, USED, Reason.BY_HAND), (7, REJECTED, Reason.TILT | Reason.NOT_GROUND))
    write_decisions(hand, tmp_path / "hand.csv")
    back = read_decisions(tmp_path / "hand.csv")
    for column in ("line", "status", "reasons", "at"):
        np.testing.assert_array_equal(getattr(back, column), getattr(hand, column))


def test_the_demo_decisions(tmp_path):
    points = read_points(DEMO / "survey.csv").points
    hand = read_decisions(DEMO / "decisions.csv")
    result, report = with_overrides(points, hand)
    assert len(result) == len(points)
    assert len(report) == len(hand)
    assert report.confirmed == 0
    assert not report.missed
    write_points(result, tmp_path / "points.csv")
    table = read_points(tmp_path / "points.csv").points
    assert {"check_status", "check_reason"} <= set(table.extra)


def test_what_follows_is_computed_anew():
    """A summit that the check took for a lifted pole: by hand it is back in the surface."""
    x, y = (each.ravel() for each in np.meshgrid(np.arange(5.0), np.arange(5.0)))
    z = np.where((x == 2) & (y == 2), 1.0, 0.0)
    status = np.where(z > 0, REJECTED, USED).astype(np.uint8)
    points = make_points(
        x, y, z, status=status, reasons=np.where(z > 0, int(Reason.POLE_HEIGHT), 0).astype(np.uint32),
        source_line=np.arange(2, 27),
    )  # fmt: skip
    summit = np.array([[2.0, 2.0]])
    assert heights_at(build_surface(points, Constraints()).tin, summit) == pytest.approx([0.0])
    result, _ = with_overrides(points, decisions((14, USED, Reason.BY_HAND)))
    assert heights_at(build_surface(result, Constraints()).tin, summit) == pytest.approx([1.0])


def test_a_million_points_take_seconds():
    n = 1_000_000
    rng = np.random.default_rng(0)
    points = checked(rng.integers(0, 3, n), rng.choice([0, 4, 32, 36], n))
    lines = rng.choice(n, 10_000, replace=False) + 2
    table = np.arange(2, 10_002)
    hand = Decisions(lines, np.zeros(10_000, np.uint8), np.ones(10_000, np.uint32), table, "hand.csv")
    begun = time.process_time()
    _, report = with_overrides(points, hand)
    assert time.process_time() - begun < 10
    assert len(report) + report.confirmed == 10_000


def test_the_table_of_checked_points_holds_only_what_a_hand_changed(tmp_path):
    """A status edited in points.csv is a decision; what the checks said and nobody touched is none."""
    points = checked([USED, REJECTED, FLAGGED, USED], [0, Reason.NO_FIX, Reason.PDOP, 0])
    told, _ = with_overrides(points, decisions())
    file = tmp_path / "points.csv"
    write_points(told, file)
    assert len(read_decisions(file)) == 0
    rows = file.read_text(encoding="utf-8").splitlines()
    rows[2] = rows[2].replace(",rejected,no_fix,", ",used,no_fix,", 1)
    rows[4] = rows[4].replace(",used,,", ",Rejected,tilt,", 1)
    for delimiter in ",;\t":
        file.write_text("\n".join(row.replace(",", delimiter) for row in rows) + "\n", encoding="utf-8-sig")
        read = read_decisions(file)
        assert read.line.tolist() == [3, 5]
        assert read.status.tolist() == [USED, REJECTED]
        assert read.reasons.tolist() == [int(Reason.BY_HAND), int(Reason.TILT)]
    again, report = with_overrides(points, read)
    assert again.status.tolist() == [USED, USED, FLAGGED, REJECTED]
    assert report.line.tolist() == [3, 5]
    rows[1] = rows[1].replace(",used,,", ",,,", 1)
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    assert read_decisions(file).line.tolist() == [3, 5], "an emptied cell decides nothing"
