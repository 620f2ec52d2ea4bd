"""Volumes between two surveys: share of noise, offset and intervals, against closed forms and known truth."""

from dataclasses import replace

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.stats import binom, norm

from plugin.core.earthwork.changed import Changed
from plugin.core.earthwork.changed import _spread as spread_of
from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.drift_field import DriftField, walked_times
from plugin.core.earthwork.noise_share import noise_share, part_of_fill, settled
from plugin.core.earthwork.partition import Region
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.side import _SAME_WAY, NoiseModel, SurfaceDoubt
from plugin.core.earthwork.small_depths import _STEPS
from plugin.core.earthwork.study import Certainty, StudyOptions, study
from plugin.core.earthwork.unchanged import next_offset, next_scale
from tests.core.earthworks import square
from tests.core.surfaces import random_tin
from tests.core.survey_pairs import Pairs, score


def excess(depth, sd):
    """Mean of max(0, D) less max(0, d), by scipy's own integral of the normal distribution."""
    mean = norm(depth, sd).expect(lambda value: value, lb=0.0, ub=np.inf)
    return mean - max(0.0, depth)


def mean_share(depth, sd):
    """Mean of what is taken off where the depth is ``depth``."""
    value, _ = quad(
        lambda z: float(noise_share(np.array([depth + sd * z]), np.array([sd]))[0]) * norm.pdf(z), -9, 9, limit=200
    )
    return value


def test_the_share_of_noise_is_right_where_nothing_changed_and_where_much_did():
    for sd in (0.01, 0.03):
        assert mean_share(0.0, sd) == pytest.approx(excess(0.0, sd), rel=1e-6)
        assert excess(0.0, sd) == pytest.approx(sd / np.sqrt(2 * np.pi), rel=1e-6)  # E|N(0, s)| / 2
        assert mean_share(8 * sd, sd) < 1e-4 * sd


def test_the_share_of_noise_between_is_as_near_as_it_says():
    off = np.array([mean_share(r, 1.0) - excess(r, 1.0) for r in np.arange(0, 6, 0.25)])
    assert -0.09 < off.min() < -0.05
    assert 0.1 < off.max() < 0.16


def test_the_share_of_noise_is_right_on_a_slope_from_cut_to_fill():
    """Means over depths that are all alike likely; the integral of the excess is s²/4 on each side of no depth."""
    value, _ = quad(lambda d: float(noise_share(np.array([d]), np.array([1.0]))[0]), -12, 12, limit=200)
    assert value == pytest.approx(0.5, rel=1e-6)


def test_small_depths_are_settled_and_clear_ones_stay():
    depth, sd = np.array([-0.1, -0.019, 0.0, 0.019, 0.03, 0.1]), np.full(6, 0.01)
    assert settled(depth, sd).tolist() == pytest.approx([-0.1, 0, 0, 0, 0.015, 0.1])
    assert part_of_fill(depth, sd)[[0, 1, 2, 5]].tolist() == pytest.approx([0, 0.5, 0.5, 1], abs=1e-9)


# Drift


def test_drift_of_a_walk_is_a_gauss_markov_process():
    """Variance of any sum: the double sum of exp(-|t - t'| / T), to the width of the bins."""
    tin = random_tin(60, 3)
    rng = np.random.default_rng(1)
    time, weights = np.sort(rng.uniform(0, 900, 60)), rng.normal(0, 1, 60)
    field = DriftField(tin, 0.008, 30.0, time)
    plain = 0.008**2 * weights @ np.exp(-np.abs(time[:, None] - time) / 90.0) @ weights
    assert field.variance(weights) == pytest.approx(plain, rel=0.1)
    drawn = weights @ field.draws(np.random.default_rng(2), 20_000)
    assert drawn.var() == pytest.approx(field.variance(weights), rel=0.05)


def test_a_walk_is_told_by_the_order_of_its_points():
    walked = Pairs("flat", 20.0).study(1).comparison.existing
    time = walked_times(walked)
    assert time[-1] == pytest.approx(5 * 20 / 1.2 + 5 * 4 / 1.2, rel=0.2)
    shuffled = np.random.default_rng(0).permutation(len(walked.vertices))
    place = np.argsort(shuffled)
    other = replace(walked, vertices=walked.vertices[shuffled], triangles=place[walked.triangles].astype(np.int32))
    assert walked_times(other) is None


# Pairs of surveys


def test_offset_and_size_of_drawn_noise_are_as_settled_as_those_of_the_surveys():
    """The offset of draws in which patches drift together departs from their mean as much as one that is found by many
    steps does, to a hundredth."""
    random = np.random.default_rng(1)
    depth = 0.7 * np.repeat(random.normal(0, 1, (40, 200)), 100, axis=0) + random.normal(0, 0.7, (4000, 200))
    one = np.ones(len(depth))

    def beyond_the_mean(steps):
        offset, size = depth.mean(axis=0), np.ones(depth.shape[1])
        for _ in range(steps):
            offset = next_offset(one, depth, one, offset, size)
            size = next_scale(one, depth - offset, one, size)
        return offset - depth.mean(axis=0)

    assert beyond_the_mean(_STEPS).std() == pytest.approx(beyond_the_mean(40).std(), rel=0.01)


def test_ground_bends_alike_in_part_only_where_two_surveys_bridge_it():
    """Surveys walked in directions at right angles bridge bends that agree by a third alone: the second derivatives of
    an isotropic random field, here many waves in all directions. Along one direction they agree fully."""
    random = np.random.default_rng(3)
    angle, phase = random.uniform(0, np.pi, 4000), random.uniform(0, 2 * np.pi, 4000)
    along, across = np.cos(angle) ** 2 * np.cos(phase), np.sin(angle) ** 2 * np.cos(phase)
    third = np.sum(along * across) / np.sqrt(np.sum(along**2) * np.sum(across**2))
    assert third == pytest.approx(1 / 3, abs=0.04)
    assert third < _SAME_WAY < 1
    tin = random_tin(60, 4)
    doubt = SurfaceDoubt(0.01, lambda half: np.full(np.shape(half), 0.004))
    model = NoiseModel(tin, tin, doubt, doubt)
    triangle = np.arange(len(tin.triangles))
    share = np.full((len(triangle), 3), 1 / 3)
    ground = model.ground_at([triangle, triangle], [share, share], model.sides)
    own = model.sides[0].departures(triangle, share)
    assert ground == pytest.approx(np.sqrt(2 * (1 - _SAME_WAY)) * own)


def likely(count, share=0.95, chance=0.998):
    """Fewest of ``count`` intervals that hold the truth, as likely as ``chance`` if each does with ``share``."""
    return binom.ppf(1 - chance, count, share) / count


@pytest.mark.parametrize("drift", [0.0, 0.008])
def test_unchanged_ground_is_told_unchanged(drift):
    """An unknown offset of 20 mm: no bias, intervals hold, and are not too wide (1.5 times the spread, which 80 pairs
    tell to a twelfth)."""
    count = 80
    found = score(Pairs("rolling", 18.0, gaps=(3.0, 2.5), drift=drift), count)
    spread = found.errors.std(axis=0, ddof=1)
    assert found.measured[:, 1].mean() > 8 * spread[1]  # what the triangles say is far off
    assert np.all(np.abs(found.errors.mean(axis=0)) < 0.8 * spread)
    assert np.all(found.inside >= likely(count))
    assert np.all(found.width < 1.5 * 1.17)


def test_a_pit_is_told_with_its_interval():
    count = 16
    found = score(Pairs("rolling", 45.0, pit=True), count, first=100)
    assert np.all(found.inside[[0, 2]] >= likely(count))
    assert np.all(found.width[[0, 2]] < 2.0)
    assert np.abs(found.errors[:, 0]).max() < 0.05 * Pairs(pit=True).truth(0)[0]


def test_a_low_heap_over_much_ground_is_no_noise():
    """60 to 120 mm of change under noise of 20 mm a depth: the means of squares tell it."""
    count = 10
    found = score(Pairs("rolling", 60.0, drift=0.008, heap=(0.06, 0.12)), count, first=40)
    assert np.all(found.inside[[0, 2]] >= likely(count))
    assert found.inside[1] >= 0.7
    assert abs(found.errors[:, 1].mean()) < 5.0
    assert np.median(found.sigmas[:, 1]) < 10.0


def test_squares_that_changed_grow_the_same_way_and_have_their_rim():
    row = 1 << 32
    key = np.sort(np.concatenate([np.arange(8) + k * row for k in (-1, 0, 1)]))
    score_of = dict.fromkeys(key.tolist(), 0.5)
    score_of.update({2: 6.0, 3: 2.5, row + 4: 2.5, 5: 2.0, row + 1: -2.5, row + 7: 3.5})
    mask = spread_of(key, np.array([score_of[one] for one in key.tolist()]))
    assert sorted(key[mask].tolist()) == [2, 3, row + 4]  # not what is too low, goes the other way, or lies apart
    changed = Changed(2.0, key[mask], np.array([0.02, np.nan, 0.03]))
    xy = np.array([[4.1, 1.0], [6.5, 0.5], [8.5, 3.9], [4.1, 2.1], [1.9, 1.0], [-30.0, 1.0]])
    assert changed.holds(xy).tolist() == [True, True, True, False, False, False]
    assert changed.depth_at(xy)[[0, 2]].tolist() == [0.02, 0.03]
    assert np.isnan(changed.depth_at(xy)[[1, 3]]).all()
    assert changed.wider().holds(xy).tolist() == [True, True, True, True, False, False]


def test_where_the_change_is_known_noise_makes_what_the_normal_distribution_says():
    for depth in (0.0, 0.007, 0.02, -0.03):
        told = float(noise_share(np.array([0.011]), np.array([0.015]), np.array([depth]))[0])
        assert told == pytest.approx(excess(abs(depth), 0.015), abs=1e-9)
        assert settled(np.array([0.011]), np.array([0.015]), np.array([depth]))[0] == depth


def test_the_offset_is_found_taken_off_and_said():
    found = Pairs("flat", 30.0).study(5)
    unchanged = found.settling.unchanged
    assert abs(unchanged.offset - 0.02) < 4 * found.settling.offset_sigma
    assert 0 < found.settling.offset_sigma < 0.002
    assert found.measured.net == pytest.approx(found.volume.net + unchanged.offset * found.volume.common_area, rel=1e-6)
    assert "lies +0.0" in str(found.messages[0])
    assert "agree" in str(found.messages[0])


def test_an_offset_that_is_given_is_taken_as_it_is():
    found = Pairs("flat", 30.0, known=True).study(5)
    assert found.settling.unchanged.given
    assert found.settling.unchanged.offset == 0.02
    assert "as given" in str(found.messages[0])


def test_ground_that_all_changed_tells_no_offset():
    """A surface half a metre higher all over: no offset is made of that, and it is said."""
    found = Pairs("flat", 30.0, offset=0.5).study(3)
    assert found.settling is None
    assert found.volume == found.measured
    assert found.doubt.fill.value == pytest.approx(0.5 * found.volume.common_area, rel=0.02)
    assert "Too little ground agrees" in str(found.messages[0])


def test_noise_that_was_stated_wrong_is_told_by_the_ground():
    pairs = Pairs("flat", 40.0)
    right = pairs.study(2)
    tins = right.comparison.existing, right.comparison.design
    wrong = study(Comparison(*tins), StudyOptions(existing=Certainty(0.006), design=Certainty(0.006), drawn=False))
    assert wrong.settling.size == pytest.approx(2.0, rel=0.1)
    assert wrong.doubt.noise_excess == pytest.approx(right.doubt.noise_excess, rel=0.03)
    assert any("2.0 times as much" in str(said) for said in wrong.messages)


def test_regions_add_up_and_share_the_offset():
    pairs = Pairs("flat", 30.0)
    whole = pairs.study(4)
    tins = (
        whole.comparison.existing,
        replace(
            whole.comparison.design,
            vertices=whole.comparison.design.vertices + np.array([0, 0, whole.settling.unchanged.offset]),
        ),
    )
    halves = [
        Region(name, (square(20, 0, at)[:, :2] * [1, 3],)) for name, at in (("west", (-5, -5)), ("east", (15, -5)))
    ]
    found = study(Comparison(*tins), replace(whole.options), halves)
    for kind in ("cut", "fill", "net"):
        parts = sum(getattr(each.doubt, kind).value for each in found.regions)
        assert parts == pytest.approx(getattr(found.doubt, kind).value, abs=1e-6 if kind == "net" else 0.02)
    assert sum(each.measured.net for each in found.regions) == pytest.approx(found.measured.net, abs=1e-6)


def test_a_design_is_compared_as_it_is():
    """Against a design nothing is taken off; the excess is told."""
    ground = Pairs("flat", 30.0).study(1).comparison.existing
    found = study(Comparison(ground, Plane(100.0, 0.01)), StudyOptions(existing=Certainty(0.012), drawn=False))
    assert not found.two_surveys
    assert found.doubt.cut.value == found.volume.cut
    assert found.doubt.noise_excess > 1
    assert any("Much of the ground" in str(said) for said in found.messages)
