"""Levels along time: found, sized and placed; told, claimed against, and shifted on the user's word.

The surveys and what they hold: tests/core/simulated.
"""

from __future__ import annotations

import numpy as np
import pytest

from plugin.core.georeference.level_shift import LevelShift, parse_level_shifts, shift_levels
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.quality.check import check_survey
from plugin.core.quality.check_points import CheckPoints
from plugin.core.quality.claims import rejected_runs, state_claims
from tests.core.simulated import simulate


def to_and_fro(noise: float = 0.01, seed: int = 1):
    """Passes to and fro 2 m apart over 40 m by 30 m, then five across; heights of a plane."""
    rng = np.random.default_rng(seed)
    x, y = np.meshgrid(np.arange(0, 40.1, 0.5), np.arange(0, 30.1, 2.0))
    x[1::2] = x[1::2, ::-1]
    v, u = np.meshgrid(np.arange(0, 30.1, 0.5), np.arange(3.2, 40, 8.0))
    v[1::2] = v[1::2, ::-1]
    x, y = np.append(x.ravel(), u.ravel()), np.append(y.ravel(), v.ravel())
    x, y = x + rng.normal(0, 0.02, len(x)), y + rng.normal(0, 0.02, len(x))
    z = 100 + 0.02 * x + 0.01 * y + rng.normal(0, noise, len(x))
    lines = np.arange(2, len(x) + 2)
    return make_points(5e5 + x, 5.7e6 + y, z, source_line=lines, source="walk.csv", time=1.7e9 + 0.5 * lines)


def raised(points, first: int, last: int, by: float):
    height = points.height.copy()
    height[first:last] += by
    return make_points(
        points.easting, points.northing, height, source_line=points.source_line, source=points.source, time=points.time
    )


def test_an_even_survey_has_one_level():
    check = check_survey(to_and_fro())
    assert check.levels == ()
    assert state_claims(check.points, check).against == ()


@pytest.mark.parametrize("by", [0.1, -0.25, 1.2])
def test_a_change_for_the_rest_of_the_file_is_told_and_nothing_rejected(by):
    points = raised(to_and_fro(), 700, 10_000, by)
    check = check_survey(points)
    (change,) = check.levels
    assert abs(change.index - 700) <= 3
    assert abs(change.offset - by) < 2.5 * change.sigma + 0.002
    assert change.sigma < 0.015
    assert not change.settled
    assert not np.any(check.points.status == Status.REJECTED)
    assert np.any(check.points.reasons & np.uint32(Reason.LEVEL))
    claims = state_claims(check.points, check)
    assert len(claims.changes) == 1
    assert f"line {change.first_line}" in str(claims.against[0])


def test_a_change_for_a_while_is_rejected_between_parts_that_agree():
    check = check_survey(raised(to_and_fro(), 400, 600, 0.3))
    rejected = np.flatnonzero(check.points.status == Status.REJECTED)
    assert rejected.min() >= 397
    assert rejected.max() <= 602
    assert len(rejected) >= 195
    assert all(each.settled for each in check.levels)


def test_check_points_say_which_part_is_right():
    points = raised(to_and_fro(), 700, 10_000, 0.3)
    at = np.arange(20, 680, 60)
    count = len(at)
    nan, words = np.full(count, np.nan), np.full(count, "", object)
    truth = points.height[at]
    checks = CheckPoints(
        words, points.easting[at], points.northing[at], truth, nan, nan, np.zeros(count, np.uint8), words,
        np.arange(count), "checks.csv", True,
    )  # fmt: skip
    check = check_survey(points)
    said = str(state_claims(check.points, check, checks).against[0])
    assert "the part before it is right" in said
    line = check.levels[0].first_line
    shifts = parse_level_shifts(f"{line}:{-check.levels[0].offset:+.3f}")
    assert str(f"{line}:{-check.levels[0].offset:+.3f}") in said
    mended = shift_levels(points, shifts)
    again = check_survey(mended.points)
    assert again.levels == ()
    assert state_claims(again.points, again, checks).against == ()
    assert len(mended.record.statements) == 1


def test_a_part_rejected_by_hand_settles_the_change():
    points = raised(to_and_fro(), 700, 10_000, 0.3)
    check = check_survey(points)
    status = check.points.status.copy()
    status[check.levels[0].index :] = Status.REJECTED
    reasons = np.where(status == Status.REJECTED, np.uint32(Reason.BY_HAND), check.points.reasons)
    assert state_claims(check.points.with_status(status, reasons), check).changes == ()


def test_long_runs_that_only_the_checks_keep_out_stand_against_a_claim():
    points = to_and_fro()
    status, reasons = points.status.copy(), points.reasons.copy()
    status[100:150] = Status.REJECTED
    reasons[100:150] = Reason.POLE_HEIGHT
    (run,) = rejected_runs(points.with_status(status, reasons))
    assert (run.first_line, run.last_line) == (102, 151)
    assert run.length == pytest.approx(24.5, abs=0.5)
    reasons[100:150] = Reason.NO_FIX
    assert rejected_runs(points.with_status(status, reasons)) == ()


def test_shifts_are_read_and_wrong_ones_refused():
    assert parse_level_shifts("1153:+0.234, 20:-1") == (LevelShift(20, -1.0), LevelShift(1153, 0.234))
    assert parse_level_shifts(" ") == ()
    for wrong in ("1153", "1153:", "x:0.1", "0:0.1", "5:nan"):
        with pytest.raises(SurveyError, match="no shift of heights"):
            parse_level_shifts(wrong)
    with pytest.raises(SurveyError, match="from line 99999 on"):
        shift_levels(to_and_fro(), parse_level_shifts("99999:0.1"))


def test_levels_of_simulated_surveys():
    """Told, with a standard deviation that holds; none in clean ones, kerbs walked along among them."""
    told = surveys = inside = changes = 0
    for seed in range(300, 312):
        survey = simulate("levels", seed)
        found = check_survey(survey.points).levels
        surveys += len(survey.levels)
        for true in survey.levels:
            near = [each for each in found if abs(each.index - true.first) < 30]
            told += len(near)
            changes += len(near)
            inside += sum(abs(each.offset - true.offset) < 2.5 * each.sigma for each in near)
    assert told >= 0.8 * surveys
    assert inside >= 0.85 * changes
    for family in ("street", "field", "heaps"):
        for seed in range(300, 304):
            assert check_survey(simulate(family, seed).points).levels == (), (family, seed)
