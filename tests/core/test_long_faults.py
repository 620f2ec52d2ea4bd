"""Faults that last: a pole of another height over kerbs, wrong ambiguities after a turn without a fix; and ground that
looks like one.
"""

from __future__ import annotations

from typing import Tuple

import numpy as np
import pytest

from plugin.core.points.pointset import PointSet, Reason, Status, make_points
from plugin.core.quality.check import check_survey
from plugin.core.quality.confirm import Steps, seen_by_others
from plugin.core.quality.suspects import _Gathered
from plugin.core.quality.walk import make_walk

NOISE = 0.01


def walked(apart: float, passes: int = 12, length: float = 40.0) -> Tuple[np.ndarray, np.ndarray]:
    """Places (n,) half a metre apart: to and fro along x in passes ``apart`` metres apart, and once across them all."""
    corners = [(length * ((k + end) % 2), k * apart) for k in range(passes) for end in (0, 1)]
    corners += [(corners[-1][0], passes * apart), (length / 2, passes * apart), (length / 2, -1.0)]
    corner = np.array(corners, float)
    along = np.append(0, np.cumsum(np.hypot(*np.diff(corner, axis=0).T)))
    at = np.arange(0, along[-1], 0.5)
    return np.interp(at, along, corner[:, 0]), np.interp(at, along, corner[:, 1])


def recorded(x: np.ndarray, y: np.ndarray, z: np.ndarray, **columns: np.ndarray) -> PointSet:
    noise = np.random.default_rng(11).normal(0, NOISE, len(z))
    return make_points(500000 + x, 5700000 + y, 100 + z + noise, source="walk.csv", **columns)


def kerbs(x: np.ndarray) -> np.ndarray:
    """A street 10 m wide, 0.12 m below the ground on either side, that all passes cross."""
    return np.where((x > 13.2) & (x < 23.2), -0.12, 0.0) + 0.01 * x


@pytest.mark.parametrize("size", [0.15, -0.15])
def test_a_pole_of_another_height_stays_so_over_kerbs(size: float) -> None:
    x, y = walked(2.5)
    z, wrong = kerbs(x), np.arange(330, 560)
    z[wrong] += size
    check = check_survey(recorded(x, y, z))
    found = check.points.status != Status.USED
    assert found[wrong].mean() > 0.95
    assert found[np.setdiff1d(np.arange(len(x)), wrong)].mean() < 0.05


def test_wrong_ambiguities_after_a_turn_are_found() -> None:
    """The fix is lost at the end of a pass and comes back, wrong, on the next: along the walk nothing shows where."""
    x, y = walked(2.0)
    z, fix = 0.05 * y, np.full(len(x), 4, np.int8)
    turn = int(np.flatnonzero(y > 6.4)[0])  # half a metre into the way from the fourth pass to the fifth
    fix[turn - 4 : turn + 8], wrong = 5, np.arange(turn + 8, turn + 70)
    z[wrong] -= 0.5
    check = check_survey(recorded(x, y, z, fix=fix))
    assert np.all(check.points.status[wrong] == Status.REJECTED)
    assert np.all(check.points.reasons[wrong] & np.uint32(Reason.FIX_JUMP))
    good = np.setdiff1d(np.arange(len(x)), np.arange(turn - 4, turn + 70))
    assert np.mean(check.points.status[good] == Status.USED) > 0.98


def test_the_ground_between_two_walls_is_not_rejected() -> None:
    """A sunken yard that few passes cross: as deep as a fault, but its sides are those that other passes saw."""
    x, y = walked(2.0)
    z = np.where((x > 10.2) & (x < 26.2) & (y > 5) & (y < 17), -0.5, 0.0)
    check = check_survey(recorded(x, y, z))
    assert not np.any(check.points.status == Status.REJECTED)


def test_the_fix_regained_is_remembered_where_points_go() -> None:
    at = np.arange(8.0)
    walk = make_walk(np.arange(8), at, 0 * at, 0 * at, np.isin(np.arange(8), [3, 6]))
    kept = walk.take(~np.isin(np.arange(8), [3, 4, 7]))
    assert kept.index.tolist() == [0, 1, 2, 5, 6]
    assert kept.regained.tolist() == [False, False, False, True, True]


def test_the_size_other_passes_gave_a_step_is_their_mean() -> None:
    """Six crossings of a kerb, walked 2 m apart and 0.4 m off one line in turn: 0.12 m each, so 0.12 m told."""
    y = 2.0 * np.arange(6)
    x = np.tile([0.0, 0.4], 3)
    size, sigma = np.full(6, 0.12), np.full(6, 0.01)
    rise = np.column_stack([size, np.zeros(6)])
    told = seen_by_others(Steps(x, y, 100 * np.arange(6), rise, size, sigma, np.zeros(6, bool)), 2.0, 0.5)
    assert told == pytest.approx(size)


def gathered_of(*groups: Tuple[slice, float, bool]) -> _Gathered:
    """Of 120 points, groups of some, each off by a level, surely or perhaps."""
    gathered, every = _Gathered(120), np.arange(120)
    for some, level, sure in groups:
        mask, none = np.zeros(120, bool), np.zeros(120, bool)
        mask[some] = True
        group = np.where(mask, 0, -1)
        off, doubtful = (mask, none) if sure else (none, mask)
        gathered.put(every, off, doubtful, np.where(mask, level, 0.0), np.full(120, 0.01), group)
    return gathered


def test_between_long_groups_small_ones_do_not_matter() -> None:
    gathered = gathered_of((slice(10, 40), 0.10, False), (slice(50, 52), -0.30, False), (slice(80, 100), 0.09, False))
    gathered.put_between()
    suspects = gathered.suspects()
    assert suspects.doubtful[10:100].all()
    assert not suspects.doubtful[:10].any()
    assert not suspects.doubtful[100:].any()
    assert suspects.level[60] == pytest.approx(0.095)
    assert suspects.level[50] == pytest.approx(-0.30)


def test_an_end_of_a_fault_taken_for_another_is_doubted() -> None:
    """After a fault found in its first part the way back to the ground looks like a step up from it."""
    line = np.arange(120.0)
    walk = make_walk(np.arange(120), line, 0 * line, 0 * line)
    gathered = gathered_of((slice(10, 30), -0.10, True), (slice(80, 110), 0.11, False))
    gathered.put_across(walk)
    suspects = gathered.suspects()
    assert suspects.doubtful[30:110].all()
    assert not suspects.doubtful[:30].any()
    assert suspects.level[50] == pytest.approx(-0.10)


@pytest.mark.parametrize(("level", "sure"), [(0.11, True), (0.20, False), (-0.10, False)])
def test_two_faults_of_other_sizes_leave_what_lies_between_alone(level: float, sure: bool) -> None:
    line = np.arange(120.0)
    gathered = gathered_of((slice(10, 30), -0.10, True), (slice(80, 110), level, sure))
    gathered.put_across(make_walk(np.arange(120), line, 0 * line, 0 * line))
    assert not gathered.suspects().marked[30:80].any()
