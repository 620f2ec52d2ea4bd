"""Checking a second time keeps what a hand decided and forgets what the checks said."""

import numpy as np

from plugin.core.points.decisions import apply_decisions
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.quality.overrides import with_overrides
from plugin.core.quality.rounds import before_checks

USED, FLAGGED, REJECTED = (int(status) for status in Status)


def six(status, reasons, lines=(11, 12, 13, 14, 15, 16), **extra):
    where = np.arange(6.0)
    points = make_points(where, where, where, source_line=np.array(lines), source="survey", extra=extra)
    return points.with_status(np.array(status), np.array(reasons, np.uint32))


def column(*words):
    return np.array(words, object)


def test_what_the_checks_said_is_forgotten_and_the_hand_is_kept():
    points = six(
        [USED, REJECTED, FLAGGED, USED, REJECTED, REJECTED],
        [0, Reason.TILT, Reason.NO_FIX, 0, Reason.CHECK_SHOT, 0],
        check_status=column("used", "rejected", "flagged", "rejected", "rejected", "used"),
        check_reason=column("", "tilt", "no_fix", "pole_height", "check_shot", ""),
        satellites=column(*"123456"),
    )
    fresh, decisions = before_checks(points)
    assert fresh.status.tolist() == [USED, USED, USED, USED, REJECTED, USED]
    assert fresh.reasons.tolist() == [0, 0, 0, 0, Reason.CHECK_SHOT, 0]
    assert list(fresh.extra) == ["satellites"]
    assert decisions.line.tolist() == [14, 16]
    assert decisions.status.tolist() == [USED, REJECTED]


def test_points_never_checked_bring_the_decisions_of_their_import_but_not_those_of_codes():
    points = six([USED, REJECTED, REJECTED, REJECTED, FLAGGED, USED], [0, Reason.POLE_HEIGHT, Reason.CHECK_SHOT,
                 Reason.DUPLICATE, Reason.DUPLICATE | Reason.TILT, 0])  # fmt: skip
    fresh, decisions = before_checks(points)
    assert decisions.line.tolist() == [12, 15]
    assert fresh.status.tolist() == [USED, USED, REJECTED, REJECTED, USED, USED]
    again, _ = apply_decisions(fresh, decisions)
    assert again.status.tolist() == points.status.tolist()


def test_lines_that_occur_twice_become_rows():
    points = six([USED, REJECTED, USED, USED, USED, USED], [0, Reason.BY_HAND, 0, 0, 0, 0], lines=(2, 3, 4, 2, 3, 4))
    fresh, decisions = before_checks(points)
    assert fresh.source_line.tolist() == [1, 2, 3, 4, 5, 6]
    assert decisions.line.tolist() == [2]
    assert apply_decisions(fresh, decisions)[0].status.tolist() == [USED, REJECTED, USED, USED, USED, USED]


def test_round_after_round_says_the_same():
    """A check that finds the same each time: the hand's word stays, and what the checks said stays beside it."""
    points = six([USED] * 6, [0] * 6)

    def checked(before):
        return before.with_status(np.array([0, 2, 0, 1, 0, 0]), np.array([0, Reason.TILT, 0, Reason.NO_FIX, 0, 0]))

    fresh, decisions = before_checks(points)
    first, _ = with_overrides(checked(fresh), decisions)
    edited = first.with_status(np.array([2, 0, 0, 1, 0, 0]), first.reasons)
    told = []
    for _ in range(3):
        fresh, decisions = before_checks(edited)
        assert not fresh.status.any()
        edited, report = with_overrides(checked(fresh), decisions)
        told.append((edited.status.tolist(), edited.reasons.tolist(), report.line.tolist()))
    assert told[0][0] == [2, 0, 0, 1, 0, 0]
    assert told[0][2] == [11, 12]
    assert told[1:] == told[:1] * 2
    assert edited.extra["check_status"].tolist() == ["used", "rejected", "used", "flagged", "used", "used"]


def test_moved_points_are_where_they_were_recorded_again():
    nowhere = column("", "", "", "", "", "")
    recorded = {"easting_recorded": nowhere.copy(), "northing_recorded": nowhere.copy()}
    recorded["height_recorded"] = nowhere.copy()
    for name, text in zip(recorded, ("7.25", "8.5", "9.125")):
        recorded[name][2] = text
    fresh, _ = before_checks(six([USED] * 6, [0] * 6, **recorded))
    assert fresh.easting.tolist() == [0, 1, 7.25, 3, 4, 5]
    assert fresh.northing.tolist() == [0, 1, 8.5, 3, 4, 5]
    assert fresh.height.tolist() == [0, 1, 9.125, 3, 4, 5]
    assert fresh.extra == {}
