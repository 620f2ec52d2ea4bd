"""A stretch of which only a piece is off is parted where meetings turn, and that piece is found."""

from __future__ import annotations

import numpy as np
import pytest

from plugin.core.linework.codes import default_code_table
from plugin.core.points.pointset import Status
from plugin.core.quality.beside import look_beside
from plugin.core.quality.check import check_survey
from plugin.core.quality.crossings import Track
from plugin.core.quality.fits import Sums
from plugin.core.quality.ground import ground_net
from plugin.core.quality.noise import Roughness
from plugin.core.quality.parted import part_by_meetings
from plugin.core.quality.stretches import Scale
from plugin.core.quality.walk import make_walk
from tests.core.survey_simulator import simulate

LEVEL, NOISE = 0.07, 0.011


def walked(low: int, high: int):
    """A walk of passes 3 m apart and five across them, the points [low, high) too high; the walk and its scale."""
    random = np.random.default_rng(8)
    u, v = np.meshgrid(np.arange(0, 60.1, 0.6), np.arange(0, 30.1, 3.0))
    u[1::2] = u[1::2, ::-1]
    w, t = np.meshgrid(np.arange(0, 30.1, 0.6), np.array([5.3, 17.3, 29.3, 41.3, 53.3]))
    w[1::2] = w[1::2, ::-1]
    x, y = np.append(u.ravel(), t.ravel()), np.append(v.ravel(), w.ravel())
    z = 0.05 * x - 0.02 * y + random.normal(0, NOISE, len(x))
    z[low:high] += LEVEL
    rough = Roughness(np.array([1.0, 2.0]), np.array([0.005, 0.005]))
    return make_walk(np.arange(len(x)), x, y, z), Scale(NOISE, 0.6 * NOISE, 3.0, rough)


def parted(low: int, high: int, first: int, last: int):
    """Starts, ends and levels of what becomes of a stretch [first, last) of which [low, high) is off."""
    walk, scale = walked(low, high)
    coded, lines = np.empty((0, 3)), np.empty((0, 2), np.int64)
    beside = look_beside(walk, ground_net(walk, coded, lines), coded)
    level = np.where((np.arange(len(walk)) >= low) & (np.arange(len(walk)) < high), LEVEL, 0.04)
    bounds = np.array([first]), np.array([last]), np.array([0.055]), np.zeros(1, bool)
    start, end, size, sharp = part_by_meetings(walk, bounds, level, scale, Track(walk), beside, Sums(walk))
    assert not sharp.any()
    return start, end, size


@pytest.mark.parametrize(("first", "last"), [(260, 560), (330, 600), (200, 440)])
def test_a_stretch_is_parted_where_meetings_turn(first: int, last: int) -> None:
    start, end, size = parted(330, 440, first, last)
    assert start[0] == first
    assert end[-1] == last
    np.testing.assert_array_equal(start[1:], end[:-1])
    off = int(np.argmin(np.abs(start - 330)))
    assert abs(start[off] - 330) < 6
    assert abs(end[off] - 440) < 6
    assert size[off] == pytest.approx(LEVEL)
    assert len(start) == 1 + (first < 330) + (last > 440)


def test_what_meetings_agree_on_stays_whole() -> None:
    start, end, _ = parted(330, 440, 330, 440)
    assert (start.tolist(), end.tolist()) == ([330], [440])
    start, end, _ = parted(0, 0, 330, 560)
    assert (start.tolist(), end.tolist()) == ([330], [560])


@pytest.mark.parametrize("seed", [587525, 587530])
def test_a_pole_height_that_the_search_sees_too_long_is_found(seed: int) -> None:
    survey = simulate(seed)
    status = check_survey(survey.points, default_code_table()).points.status
    wrong = (survey.fault == "pole_height") & (np.abs(survey.error) >= 4 * survey.sigma)
    assert np.mean(status[wrong] != Status.USED) > 0.9
    assert np.count_nonzero((survey.fault == "") & (status == Status.REJECTED)) <= 10
