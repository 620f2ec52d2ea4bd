"""How heights repeat: crossings of the walk with itself, and what wanders between visits."""

from __future__ import annotations

from typing import Callable

import numpy as np
import pytest

from plugin.core.quality.crossings import breaks, find_crossings, find_meetings
from plugin.core.quality.drift import estimate_drift
from plugin.core.quality.encounters import Encounters
from plugin.core.quality.repeatability import by_run, interval, repeatability
from plugin.core.quality.walk import make_walk, walking_time

NO_LINES = np.empty((0, 2, 2))
WHITE = 0.01


def to_and_fro(side: float = 40.0, apart: float = 4.0, cross: int = 4, spacing: float = 0.5):
    """Places of passes along x, then of some along y."""
    along = np.arange(0.13, side, spacing)
    parts = []
    for rows, turned in ((np.arange(apart / 2, side, apart), False), (np.linspace(5, side - 5, cross), True)):
        for k, row in enumerate(rows):
            u = along if k % 2 == 0 else along[::-1]
            v = np.full(len(u), row)
            parts.append(np.column_stack([v, u] if turned else [u, v]))
    return np.vstack(parts)


def walk_over(xy: np.ndarray, z: np.ndarray):
    return make_walk(np.arange(len(xy)), xy[:, 0], xy[:, 1], z)


def wandering(time: np.ndarray, sigma: float, seconds: float, random: np.random.Generator) -> np.ndarray:
    apart = np.abs(time[:, None] - time)
    return np.linalg.cholesky(sigma**2 * np.exp(-apart / seconds) + 1e-12 * np.eye(len(time))) @ random.normal(
        0, 1, len(time)
    )


def test_heights_at_crossings_are_exact_on_a_paraboloid() -> None:
    xy = to_and_fro()
    z = 0.03 * xy[:, 0] - 0.1 * xy[:, 1] + 0.002 * xy[:, 0] ** 2 + 0.001 * xy[:, 0] * xy[:, 1]
    second = np.arange(len(z)) >= 10 * 80  # the passes along y
    walk = walk_over(xy, z + 0.05 * second)
    met = find_crossings(walk, breaks(walk, NO_LINES, WHITE), WHITE)
    assert len(met) == 10 * 4
    np.testing.assert_allclose(met.difference, 0.05, atol=2e-4)
    assert np.all(met.variance < WHITE**2)


def test_no_height_is_taken_across_a_coded_line() -> None:
    xy = to_and_fro()
    z = np.where(xy[:, 0] > 20.0, 0.012, 0.0)  # too low to be seen against the noise
    line = np.array([[[20.0, -1.0], [20.0, 45.0]]])
    walk = walk_over(xy, z)
    broken = breaks(walk, line, WHITE)
    over = np.flatnonzero(broken & (np.arange(len(walk)) != walk.first))
    assert len(over) == 10
    assert np.all((walk.x[over] - 20) * (walk.x[over - 1] - 20) < 0)
    assert np.max(np.abs(find_crossings(walk, broken, WHITE).difference)) < 1e-9


def test_passes_side_by_side_stand_in_where_none_cross() -> None:
    along = np.arange(0, 60, 0.5)
    xy = np.vstack([np.column_stack([along, 0.2 * np.sin(along / 3)]), np.column_stack([along[::-1], 0.1 + 0 * along])])
    walk = walk_over(xy, np.where(np.arange(len(xy)) < len(along), 0.0, 0.02))
    met = find_meetings(walk, breaks(walk, NO_LINES, WHITE), WHITE)
    assert len(met) >= 3
    np.testing.assert_allclose(met.difference, 0.02, atol=0.01)


def test_two_visits_of_known_difference() -> None:
    """Posterior of one parameter by hand: without noise of the single points the wandering is what was seen."""
    time = np.repeat([0.0, 1e5], 50)
    met = Encounters(np.zeros(5, int), np.full(5, 50), np.full(5, 0.02), np.full(5, 1e-9))
    drift = estimate_drift(met, time, WHITE)
    # Half the survey at -0.01, half at +0.01 about the mean.
    assert drift.square == pytest.approx(0.01**2, rel=0.05)


def test_realised_spread_and_its_interval() -> None:
    """Over drawn surveys: without bias, and the 95 % interval covers as it should (19 of 24: 1 in 200 by chance)."""
    xy = to_and_fro()
    ratios, inside = [], []
    for seed in range(24):
        random = np.random.default_rng(seed)
        time = np.arange(len(xy)) / 2.4
        error = wandering(time, WHITE * random.uniform(0.2, 1.2), random.uniform(50, 150), random)
        error += random.normal(0, WHITE, len(xy))
        walk = walk_over(xy, 0.02 * xy[:, 0] + error)
        broken = breaks(walk, NO_LINES, WHITE)
        said = repeatability(walk, find_meetings(walk, broken, WHITE), broken, time)
        ratios.append(said.total / error.std())
        inside.append(said.low <= error.std() <= said.high)
    assert abs(np.mean(ratios) - 1) < 0.04
    assert np.mean(np.abs(np.array(ratios) - 1) < 0.15) >= 0.9
    assert np.count_nonzero(inside) >= 19


def test_some_crossings_on_a_step_do_no_harm() -> None:
    random = np.random.default_rng(3)
    xy = to_and_fro()
    time = np.arange(len(xy)) / 2.4
    walk = walk_over(xy, random.normal(0, WHITE, len(xy)))
    met = find_meetings(walk, breaks(walk, NO_LINES, WHITE), WHITE)
    spoiled = met.difference.copy()
    spoiled[::12] += 0.15
    drift = estimate_drift(Encounters(met.first, met.second, spoiled, met.variance), time, WHITE)
    assert not drift.used[::12].any()
    assert np.sqrt(drift.square) < 0.5 * WHITE


def estimates(wander: float, spoil: Callable[[np.ndarray, np.random.Generator], np.ndarray]) -> np.ndarray:
    """Estimated over true spread of twelve walks whose error wanders by ``wander``; ``spoil`` changes differences."""
    ratio = []
    for seed in range(100, 112):
        random, xy = np.random.default_rng(seed), to_and_fro()
        time = np.arange(len(xy)) / 2.4
        error = wandering(time, wander, 90.0, random) if wander else np.zeros(len(xy))
        walk = walk_over(xy, error + random.normal(0, WHITE, len(xy)))
        met = find_meetings(walk, breaks(walk, NO_LINES, WHITE), WHITE)
        changed = Encounters(met.first, met.second, spoil(met.difference, random), met.variance)
        ratio.append(
            np.hypot(WHITE, np.sqrt(estimate_drift(changed, time, WHITE).square)) / np.hypot(WHITE, error.std())
        )
    return np.array(ratio)


def test_a_few_kerbs_that_nobody_saw_do_not_pass_for_wandering() -> None:
    def spoil(difference: np.ndarray, random: np.random.Generator) -> np.ndarray:
        spoiled = difference.copy()
        spoiled[::10] += 4.5 * WHITE * random.choice([-1, 1], len(spoiled[::10]))
        return spoiled

    ratio = estimates(0.6 * WHITE, spoil)
    assert np.mean(ratio) < 1.06
    assert np.max(np.abs(ratio - 1)) < 0.2


def test_what_is_new_at_every_place_is_no_wandering() -> None:
    ratio = estimates(0.0, lambda difference, random: difference + random.normal(0, WHITE, len(difference)))
    assert np.mean(ratio) < 1.1


def test_without_a_place_visited_twice_nothing_is_said_of_the_total() -> None:
    xy = to_and_fro(cross=0)
    random = np.random.default_rng(1)
    walk = walk_over(xy, random.normal(0, WHITE, len(xy)))
    broken = breaks(walk, NO_LINES, WHITE)
    said = repeatability(walk, find_meetings(walk, broken, WHITE), broken, np.arange(len(xy)) / 2.4)
    assert said.encounters == 0
    assert np.isnan(said.total)
    assert np.isnan(said.low)
    assert said.white == pytest.approx(WHITE, rel=0.15)


def test_runs_are_held_against_their_claims() -> None:
    random = np.random.default_rng(4)
    xy = to_and_fro(cross=8)
    walk = walk_over(xy, random.normal(0, WHITE, len(xy)))
    broken = breaks(walk, NO_LINES, WHITE)
    met = find_meetings(walk, broken, WHITE)
    whole = repeatability(walk, met, broken, np.arange(len(xy)) / 2.4)
    run = (np.arange(len(xy)) >= 800).astype(int)
    one, other = by_run(met, run, np.where(run == 0, 0.01, 0.03), whole)
    assert (one.run, other.run) == (0, 1)
    assert one.sigma == pytest.approx(WHITE, rel=0.2)
    assert one.agrees
    assert not other.agrees


def test_interval_against_a_table() -> None:
    """Chi-square for 10 degrees of freedom: 3.247 and 20.483 (tables of any handbook, from memory)."""
    low, high = interval(1.0, 10)
    assert low == pytest.approx(np.sqrt(10 / 20.483), rel=1e-4)
    assert high == pytest.approx(np.sqrt(10 / 3.247), rel=1e-4)


def test_time_from_the_way_walked_where_none_is_recorded() -> None:
    walk = walk_over(np.column_stack([np.arange(0, 12, 0.6), np.zeros(20)]), np.zeros(20))
    time = np.full(20, np.nan)
    np.testing.assert_allclose(np.diff(walking_time(walk, time)), 0.5)
    np.testing.assert_array_equal(walking_time(walk, np.arange(20.0)), np.arange(20.0))
