"""The crown of a street, crossfall of its halves, and one estimate along it: an invented street of known truth."""

from __future__ import annotations

from typing import Dict, List, Tuple

import numpy as np
import pytest

from plugin.core.alignment.crowns import find_lane, kerbs_within, plain_lane
from plugin.core.alignment.grades import reach
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.noise import survey_noise
from plugin.core.alignment.parts import Part, PartSlopes, part_slopes
from plugin.core.alignment.pooling import pooled
from plugin.core.alignment.slopes import HeightNoise, LinearForms, slope_forms
from plugin.core.alignment.study import RoadOptions, study_road
from plugin.core.alignment.verdicts import Verdict, judge
from plugin.core.features.find import find_features
from plugin.core.features.ground_lines import ground_lines
from plugin.core.linework.constraints import Constraints
from plugin.core.surface.build import build_surface
from plugin.core.surface.giving_way import found_breaklines
from plugin.core.surface.tin import Tin
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin
from tests.core.village_street import FALL, Walked, left_fall, walk

WHITE, DRIFT, HALF = 0.012, 0.009, 3.0
SEEDS = range(5)


def surface(walked: Walked) -> Tin:
    """As the job builds it: with the kerbs that the points show."""
    lines = found_breaklines(ground_lines(find_features(walked.points)), Constraints(), walked.points)
    return build_surface(walked.points, lines.breaklines).tin


def across(seed: int, together: bool = True) -> PartSlopes:
    walked = walk(seed, white=WHITE, drift=DRIFT)
    tin = surface(walked)
    noise = survey_noise(walked.line, tin, walked.points.time, float(np.hypot(WHITE, DRIFT)), DRIFT)
    within = reach(walked.line, tin, (0.0, -HALF, HALF))
    lane = find_lane(walked.line, tin, noise, -HALF, HALF, within)
    return part_slopes(walked.line, tin, noise, lane, 5.0, within=within, together=together)


@pytest.fixture(scope="module")
def streets() -> List[PartSlopes]:
    return [across(seed) for seed in SEEDS]


def of_halves(found: PartSlopes) -> Dict[Part, Tuple[np.ndarray, np.ndarray, np.ndarray]]:
    """Value, sigma and truth (w,) of each half."""
    middle = found.by[Part.LANE].middle
    truth = {Part.LEFT: left_fall(middle), Part.RIGHT: np.full(len(middle), -FALL)}
    return {part: (found.at_edge(part).value, found.at_edge(part).sigma, own) for part, own in truth.items()}


def settled(found: PartSlopes) -> np.ndarray:
    """Mask (w,) of the windows in which, and beside which, the fall is constant."""
    middle = found.by[Part.LANE].middle
    return np.asarray(left_fall(middle - 5.0) == left_fall(middle + 5.0))


def test_the_crown_is_found_where_it_is(streets):
    place = np.concatenate([each.crown[left_fall(each.by[Part.LANE].middle) == FALL] for each in streets])
    assert np.isfinite(place).all()
    assert np.sqrt(np.mean(place**2)) < 0.15


def test_the_fall_of_each_half(streets):
    """In percentage points (RMS): where it is constant about 0.17, where it turns 0.29 over many seeds."""
    error = np.concatenate([(v - t)[settled(each)] for each in streets for v, _, t in of_halves(each).values()])
    assert np.sqrt(np.nanmean(error**2)) < 0.0022
    turning = np.concatenate([(v - t)[~settled(each)] for each in streets for v, _, t in of_halves(each).values()])
    assert np.sqrt(np.nanmean(turning**2)) < 0.0033


def test_intervals_hold_the_truth(streets):
    normed = np.concatenate([((v - t) / s) for each in streets for v, s, t in of_halves(each).values()])
    assert 0.90 < np.mean(np.abs(normed[np.isfinite(normed)]) < 1.96) < 0.99


def test_each_half_is_judged_by_itself(streets):
    """2.5 % either side of a crown: over 1:48, and at least 2 %; one slope over both would say the contrary."""
    wrong, count = 0, 0
    for each in streets:
        for value, sigma, truth in of_halves(each).values():
            verdict = judge(np.abs(value), sigma, 1 / 48, False)
            some = np.abs(np.abs(truth) - FALL) < 1e-9
            wrong += np.count_nonzero(verdict[some] == Verdict.PASS)
            count += np.count_nonzero(some)
            assert np.mean(verdict[some] == Verdict.FAIL) > 0.25
    assert wrong < 0.01 * count


def test_neighbours_help(streets):
    alone = across(0, together=False).at_edge(Part.RIGHT).sigma
    helped = streets[0].at_edge(Part.RIGHT).sigma
    assert np.nanmedian(helped) < 0.6 * np.nanmedian(alone)


def test_the_study_tells_of_the_halves():
    walked = walk(3, white=WHITE, drift=DRIFT)
    tin = surface(walked)
    noise = survey_noise(walked.line, tin, walked.points.time, 0.015, DRIFT)
    study = study_road(walked.line, [("", tin)], noise, RoadOptions(lane=(-HALF, HALF)))
    cross = [each for each in study.checks.stretches if each.rule.quantity.value == "crossfall"]
    assert {each.part for each in cross} >= {Part.LEFT, Part.RIGHT}
    for rule in study.rules:
        if study.checks.of(rule):
            assert sum(study.checks.lengths(rule).values()) == pytest.approx(walked.line.length, abs=0.01)
    assert "both" in {flow.value for flow in study.flows.flow}


def grid(height) -> Tuple[object, Tin]:
    x, y = np.meshgrid(np.arange(0, 100.1, 1.0), np.arange(0, 10.1, 0.5))
    xy = np.column_stack([x.ravel(), y.ravel()])
    return make_alignment(ORIGIN + np.array([[0.0, 5.0], [100.0, 5.0]])), delaunay_tin(xy, height(*xy.T))


@pytest.mark.parametrize("seed", range(8))
def test_a_lane_of_one_fall_has_no_crown(seed):
    """White noise of 15 mm: a crown stands four standard deviations out of it."""
    rng = np.random.default_rng(seed)
    line, tin = grid(lambda x, y: 50 + 0.02 * y + rng.normal(0, 0.015, len(x)))
    lane = find_lane(line, tin, 0.015, -4.0, 4.0, reach(line, tin, (-4.0, 4.0)))
    assert not np.isfinite(lane.crown).any()


def test_a_valley_parts_a_lane_too():
    line, tin = grid(lambda x, y: 50 + 0.03 * np.abs(y - 6.0))
    lane = find_lane(line, tin, 0.005, -4.0, 4.0, reach(line, tin, (-4.0, 4.0)))
    np.testing.assert_allclose(lane.crown, -1.0, atol=0.05)  # right is south: the valley at y = 6 lies to the left


def test_crossfall_ends_at_a_kerb():
    """A kerb of 0.12 m at offset 2.5: the lane asked for reaches to 4 m."""
    line, tin = grid(lambda x, y: 50 + 0.02 * y + np.where(y <= 2.5, 0.12, 0.0))
    within = reach(line, tin, (-4.0, 4.0))
    lane = find_lane(line, tin, 0.01, -4.0, 4.0, within)
    assert lane.kerbed.all()
    assert np.all((lane.high > 1.4) & (lane.high < 2.6))
    found = part_slopes(line, tin, 0.01, lane, 10.0, within=within)
    np.testing.assert_allclose(found.by[Part.LANE].value, -0.02, atol=0.002)
    assert kerbs_within(lane)
    study = study_road(line, [("", tin)], 0.01, RoadOptions(lane=(-4.0, 4.0)))
    assert any("a kerb or step lies within the lane" in str(each) for each in study.messages)


def test_a_lane_that_begins_at_the_line():
    line, tin = grid(lambda x, y: 50 - 0.025 * np.abs(y - 5.0))
    study = study_road(line, [("", tin)], 0.01, RoadOptions(lane=(0.0, 4.0)))
    np.testing.assert_allclose(study.crossfalls.by[Part.LANE].value, -0.025, atol=0.002)
    assert {flow.value for flow in study.flows.flow} == {"right"}


def test_no_lane_on_the_surface():
    line, tin = grid(lambda x, y: 50 + 0 * y)
    assert not plain_lane(-1.0, 1.0).kerbed.any()
    assert np.isnan(find_lane(line, tin, 0.01, -1.0, 1.0, None).crown).all()


def noisy_forms(seed: int) -> Tuple[LinearForms, Tin, HeightNoise]:
    tin = random_tin(400, seed)
    line = make_alignment(ORIGIN + np.array([[5.0, 50.0], [95.0, 50.0]]))
    forms = slope_forms(tin, [line.between(a, a + 5.0) for a in np.arange(0.0, 85.0, 5.0)])
    rng = np.random.default_rng(seed)
    time = np.where(rng.random(len(tin.vertices)) < 0.1, np.nan, rng.uniform(0, 3000, len(tin.vertices)))
    return forms, tin, HeightNoise(0.01, 0.008, 90.0, time)


@pytest.mark.parametrize("seed", range(4))
def test_sigmas_and_covariances_by_all_pairs(seed):
    """Against the sum over all pairs of vertices, by the definition of the noise."""
    forms, _, noise = noisy_forms(seed)
    weights = np.asarray(forms.weights.todense())
    known = np.isfinite(noise.time)
    time = np.where(known, noise.time, 1e9 * (1 + np.arange(len(known))))
    drift = noise.drift**2 * np.exp(-np.abs(time[:, None] - time) / noise.drift_time)
    exact = weights @ (0.01**2 * np.eye(len(known)) + drift) @ weights.T
    whole = forms.whole
    np.testing.assert_allclose(forms.sigmas(noise)[whole], np.sqrt(np.diag(exact))[whole], rtol=1e-9)
    np.testing.assert_allclose(forms.covariance(noise), exact, atol=0.03 * np.abs(exact).max())


def test_long_times_do_not_overflow():
    forms, _, noise = noisy_forms(1)
    long = HeightNoise(noise.own, noise.drift, noise.drift_time, noise.time * 1000)
    assert np.isfinite(forms.sigmas(long)[forms.whole]).all()


def test_pooling_follows_a_break():
    """Slopes known to 0.01 % that jump from 1 % to 5 %: each window stays with what it is."""
    x, y = np.meshgrid(np.arange(0, 100.1, 1.0), np.arange(0, 4.1, 1.0))
    xy = np.column_stack([x.ravel(), y.ravel()])
    tin = delaunay_tin(xy, 50 + 0.01 * xy[:, 0] + 0.04 * np.maximum(xy[:, 0] - 50, 0))
    line = make_alignment(ORIGIN + np.array([[0.0, 2.0], [100.0, 2.0]]))
    forms = slope_forms(tin, [line.between(a, a + 5.0) for a in np.arange(0.0, 100.0, 5.0)])
    value, sigma = pooled(forms, tin, 0.0002)
    np.testing.assert_allclose(value, np.repeat([0.01, 0.05], 10), atol=2e-4)
    assert np.all(sigma < 1e-3)
