"""Lines found without codes: parts against plain references, and a few simulated sites of each kind against the truth.

The full runs over many seeds are in ``tests/benchmarks/bench_features.py``. Heights of kerbs, depths of ditches and
slopes of banks: common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import numpy as np
import pytest

from plugin.core.features import find
from plugin.core.features.banded import make_layout, solve
from plugin.core.features.courses import Course, listed
from plugin.core.features.find import find_features
from plugin.core.features.found import FoundKind
from plugin.core.features.ground_lines import ground_lines, told_of_walk
from plugin.core.features.groups import group_median, group_quantile
from plugin.core.features.jumps import side_line
from plugin.core.features.passes import make_passes, noise_at
from plugin.core.features.placing import Places, place_lines
from plugin.core.features.readings import _with_nodes
from plugin.core.features.segments import PRICE, SLOPE_PRICE, cut_into_segments
from plugin.core.linework.constraints import Constraints
from plugin.core.points.pointset import Status, make_points
from plugin.core.progress import Cancelled
from plugin.core.surface.build import build_surface
from plugin.core.surface.giving_way import found_breaklines
from tests.core.line_surfaces import score_surface
from tests.core.simulated_lines import (
    FAMILIES,
    NATURAL,
    ORIGIN,
    Score,
    Site,
    TrueLine,
    bank,
    ditch,
    junction,
    path_points,
    record,
    score,
    street,
    to_and_fro,
)  # fmt: skip

SEEDS = range(3)


def total(sites):
    result = None
    for site in sites:
        one = score(site, find_features(site.points))
        result = one if result is None else result + one
    assert isinstance(result, Score)
    return result


def rms(squares, count):
    return np.sqrt(squares / count)


# --- parts ------------------------------------------------------------------------------------------


def straight_walk(z, spacing=0.5):
    n = len(z)
    return make_passes(make_points(5e5 + spacing * np.arange(n), np.full(n, 5.7e6), z))


def test_the_pieces_of_a_profile_are_the_cheapest():
    """Against the same recursion written plainly (Jackson et al. 2005) with lines by numpy's polyfit."""
    random = np.random.default_rng(5)
    n, sigma = 60, 0.01
    z = 0.1 * (np.arange(n) > 20) + 0.2 * np.maximum(np.arange(n) - 41, 0) + random.normal(0, sigma, n)
    passes = straight_walk(z)
    segments = cut_into_segments(passes, np.full(n, sigma))

    def price(a, b):
        if b - a == 1:
            return PRICE
        line = np.polyfit(passes.s[a:b], passes.z[a:b], 1)
        off = passes.z[a:b] - np.polyval(line, passes.s[a:b])
        return (off @ off) / sigma**2 + PRICE + SLOPE_PRICE

    best = np.zeros(n + 1)
    for b in range(1, n + 1):
        best[b] = min(best[a] + price(a, b) for a in range(max(0, b - 12), b))
    ends = np.append(segments.start[1:], n)
    assert sum(price(a, b) for a, b in zip(segments.start, ends)) == pytest.approx(best[n], rel=1e-9)
    assert 21 in segments.start[segments.breaks]
    assert segments.breaks[segments.start == 21].all()


def test_many_systems_are_solved_as_one_by_one():
    """Means and covariances against numpy's inverse of each whole matrix; long chains are cut in overlapping parts."""
    random = np.random.default_rng(6)
    counts = np.array([1, 2, 3, 40, 700])
    n = int(counts.sum())
    a, b1, b2, rhs = (random.uniform(low, high, n) for low, high in ((3, 4), (-1, 1), (-0.4, 0.4), (-1, 1)))
    start = np.cumsum(counts) - counts
    b1[start] = 0
    b2[start] = 0
    b2[start[counts > 1] + 1] = 0
    layout = make_layout(counts)
    tables = [layout.table(values, fill) for values, fill in ((a, 1.0), (b1, 0.0), (b2, 0.0), (rhs, 0.0))]
    tables[1][0] = 0
    tables[2][:2] = 0
    mean, var, one, two = (layout.answers(table) for table in solve(*tables))
    for first, count in zip(start, counts):
        some = slice(first, first + count)
        matrix = np.diag(a[some])
        for off, band in ((1, b1[some]), (2, b2[some])):
            for i in range(off, count):
                matrix[i, i - off] = matrix[i - off, i] = band[i]
        inverse = np.linalg.inv(matrix)
        np.testing.assert_allclose(mean[some], inverse @ rhs[some], atol=1e-6)
        np.testing.assert_allclose(var[some], np.diag(inverse), atol=1e-6)
        np.testing.assert_allclose(one[some][:-1], np.diag(inverse, 1), atol=1e-6)
        np.testing.assert_allclose(two[some][:-2], np.diag(inverse, 2), atol=1e-6)


def test_a_side_is_the_least_squares_line_of_the_points_that_agree():
    random = np.random.default_rng(7)
    n = 30
    passes = straight_walk(0.03 * np.arange(n) + random.normal(0, 0.005, n))
    at = np.array([passes.s[20] + 0.25])
    side = side_line(passes, np.array([1e-6]), at, np.array([13]), np.array([21]), ahead=False)
    k = int(side.count[0])
    line = np.polyfit(passes.s[21 - k : 21] - at, passes.z[21 - k : 21], 1)
    assert side.height[0] == pytest.approx(line[1], abs=1e-6)
    assert side.slope[0] == pytest.approx(line[0], abs=1e-6)
    step = passes.z.copy()
    step[:17] += 1.0  # four points from the gate the ground breaks: they do not count
    broken = replace(passes, z=step)
    side = side_line(broken, np.array([0.005]), at, np.array([13]), np.array([21]), ahead=False)
    assert side.count[0] == 4


def test_noise_is_told_by_ranks_whatever_the_steps():
    random = np.random.default_rng(8)
    n = 4000
    z = random.normal(0, 0.012, n) + 0.12 * (np.arange(n) // 9 % 2) + 0.02 * np.arange(n)
    usual, local = noise_at(straight_walk(z))
    assert usual == pytest.approx(0.012, rel=0.15)
    assert (local >= usual).all()


def test_a_straight_line_through_gates_is_placed_better_than_their_middles():
    """Forty gates of half a metre along a straight line: middles scatter by 0.5/√12 = 0.144 m (uniform law)."""
    random = np.random.default_rng(9)
    off, doubt = [], []
    for _ in range(20):
        n = 40
        x = 2.0 * np.arange(n) + random.uniform(-0.3, 0.3, n)
        middle = random.uniform(-0.25, 0.25, n)
        edges = np.tile([-0.75, -0.25, 0.25, 0.75], (n, 1))
        chance = np.tile([0.0, 1.0, 0.0], (n, 1))
        zero = np.zeros(n)
        placed = place_lines(Places(np.array([n]), x, middle, zero, zero + 1, edges, chance, zero + 0.144))
        off.append(placed.y)
        doubt.append(placed.sigma)
    assert np.sqrt(np.mean(np.square(off))) < 0.045
    assert np.sqrt(np.mean(np.square(off))) < 1.3 * np.sqrt(np.mean(np.square(doubt)))


def test_a_sharp_corner_stays_where_the_gates_have_it():
    n = 31
    x = 2.0 * np.arange(n)
    y = np.abs(x - 30.0)
    random = np.random.default_rng(10)
    middle = y + random.uniform(-0.2, 0.2, n)
    edges = np.tile([-0.75, -0.25, 0.25, 0.75], (n, 1))
    chance = np.tile([0.0, 1.0, 0.0], (n, 1))
    zero = np.zeros(n)
    placed = place_lines(Places(np.array([n]), x, middle, zero, zero + 1, edges, chance, zero + 0.144))
    assert abs(placed.y[15]) < 0.3
    assert placed.corner[15]
    assert np.count_nonzero(placed.corner) <= 3


def test_medians_of_groups_are_numpys():
    random = np.random.default_rng(11)
    group = random.integers(0, 9, 200)
    group = group[group != 4]
    values = random.normal(0, 1, len(group))
    medians = group_median(values, group, 9)
    assert np.isnan(medians[4])
    for g in (0, 3, 8):
        assert medians[g] == pytest.approx(np.median(values[group == g]))
        assert group_quantile(values, group, 9, 1.0)[g] == values[group == g].max()


# --- sites ------------------------------------------------------------------------------------------


def test_kerbs_that_are_crossed_are_found_and_placed():
    near = total([street(seed, between=2.0, height=0.10) for seed in SEEDS])
    assert near.found >= 0.95 * near.asked
    assert near.false <= 0.02 * near.drawn
    assert rms(near.squares, near.placed) <= 0.10
    assert rms(near.step_squares, near.steps) <= 0.012
    far = total([street(seed, between=5.0, height=0.12) for seed in SEEDS])
    assert far.found >= 0.95 * far.asked
    assert rms(far.squares, far.placed) <= 0.15


def test_low_kerbs_are_found_too():
    low = total([street(seed, height=0.06) for seed in SEEDS])
    assert low.found >= 0.80 * low.asked


def test_stated_doubt_of_the_place_is_about_the_true_one():
    every = total([street(seed, walk=walk) for seed in range(4) for walk in ("square", "oblique")])
    share = rms(every.squares, every.placed) / rms(every.doubt, every.placed)
    assert 0.6 < share < 1.3


@pytest.mark.parametrize("walk", ["oblique", "mixed"])
def test_kerbs_are_found_however_they_are_crossed(walk):
    every = total([street(seed, walk=walk) for seed in SEEDS])
    assert every.found >= 0.95 * every.asked
    assert every.false <= 0.02 * every.drawn


def test_foot_and_top_walked_side_by_side_are_a_kerb():
    along = total([street(seed, walk="along") for seed in SEEDS])
    assert along.found >= 0.98 * along.asked
    assert along.false == 0


def test_ditches_and_banks_are_found_with_their_kinds():
    for site, kinds in ((bank(3), {FoundKind.TOP, FoundKind.TOE}), (ditch(4), {FoundKind.TOP, FoundKind.VALLEY})):
        features = find_features(site.points)
        one = score(site, features)
        assert one.found >= 0.9 * one.asked
        assert one.false <= 0.02 * one.drawn
        assert {line.kind for line in features.strong} == kinds


def test_the_walked_bottom_of_a_ditch_is_a_line_and_no_fault():
    site = ditch(6, walk="along")
    features = find_features(site.points)
    valleys = [number for number, line in enumerate(features.lines) if line.kind == FoundKind.VALLEY and line.strong]
    assert valleys
    xy = site.points_xy()
    _, bottom = min((abs(line.xy[:, 1]).min(), line) for line in site.lines if line.kind == "valley")
    off = np.min(np.hypot(*(xy[:, None] - bottom.xy[None, ::20]).transpose(2, 0, 1)), axis=1)
    walked = (off < 0.3) & (np.arange(len(xy)) < 130)
    assert np.mean(features.explained[walked]) > 0.95
    assert np.mean(np.isin(features.on_line[walked], valleys)) > 0.95


@pytest.mark.parametrize("family", NATURAL)
def test_natural_ground_has_no_strong_line(family):
    every = total([FAMILIES[family](seed) for seed in SEEDS])
    assert every.drawn <= every.walked / 1000


def test_a_lowered_kerb_is_bridged_with_its_height_as_measured():
    site = street(14, between=2.5, height=0.12, curved=False, lowered=1)
    features = find_features(site.points)
    kerb = max(features.strong, key=lambda line: line.bridged_length)
    assert 0 < kerb.bridged_length < 0.4 * kerb.length
    rise = kerb.top[:, 2] - kerb.height
    low = np.flatnonzero(np.append(kerb.bridged, False) & np.append(False, kerb.bridged))
    assert rise[low].min() < 0.07
    assert np.median(rise) == pytest.approx(0.12, abs=0.015)
    assert kerb.step == pytest.approx(np.median(rise), abs=0.005)


def test_the_surface_gains_from_the_lines():
    every = None
    for seed in SEEDS:
        site = street(seed, between=2.5, height=0.12)
        one = score_surface(site, find_features(site.points))
        every = one if every is None else every + one
    assert every.excess <= 0.6
    assert every.contour_near >= 0.9 * every.contour


def test_small_closed_contours_at_kerbs_go_where_lines_hold_the_points_beside():
    every = None
    for seed, walk in product(SEEDS, ("oblique", "mixed", "along")):
        site = street(seed, walk=walk)
        one = score_surface(site, find_features(site.points))
        every = one if every is None else every + one
    assert every.loops_none >= 10
    assert every.loops_found <= every.loops_none / 3


def test_breaklines_keep_their_heights():
    for seed in SEEDS:
        site = street(seed, walk="mixed")
        features = find_features(site.points)
        lines = found_breaklines(ground_lines(features), Constraints(), site.points).breaklines
        assert len(lines) >= 2 * len(features.strong)
        assert all(np.isfinite(line.xyz).all() for line in lines.lines)
        build_surface(site.points, lines)  # refuses lines that cross


@pytest.mark.parametrize("seed", [0, 4, 7])
def test_an_island_is_found_as_a_ring_and_rounded_corners_are_kept(seed):
    site = junction(seed)
    features = find_features(site.points)
    rings = [line for line in features.strong if line.closed]
    assert len(rings) == 2  # kerb of the yard, island
    for ring in rings:  # it ends where it begins, in height too: one place with two heights would be told as a crossing
        np.testing.assert_array_equal(ring.foot[0], ring.foot[-1])
        np.testing.assert_array_equal(ring.top[0], ring.top[-1])
    each = [score(replace(site, lines=(line,)), features) for line in site.lines]
    assert each[0].found > 0.9 * each[0].asked
    assert each[1].found > 0.8 * each[1].asked


def test_a_kerb_too_low_to_tell_by_itself_is_told_by_the_one_across_the_street(monkeypatch):
    def found():
        scores = [two_kerbs(seed, 0.05, 0.12) for seed in range(8)]
        return sum(one.found for one in scores) / sum(one.asked for one in scores)

    together = found()
    monkeypatch.setattr(find, "parallel_evidence", lambda nodes, crowd, courses, evidence, needed, steady: evidence)
    assert together > found() + 0.2


def two_kerbs(seed, low, other):
    """Score of the kerb at y = 0, ``low`` m high, with one of the ``other`` height at y = 7."""
    random = np.random.default_rng([seed, 31])
    rows = np.arange(0, 60, 4.0)
    walk = path_points(to_and_fro(rows, -6.0, 13.0), 0.5, random)

    def ground(x, y):
        return 100 + 0.01 * x - 0.02 * np.abs(y - 3.5) + low * (y < 0) + other * (y > 7)

    points, walked, white, spike = record([walk], ground, random, white=0.015)
    x = np.linspace(2, 54, 500)
    line = TrueLine("step", np.column_stack([x, 0 * x]), np.full(500, low), np.ones(500, bool))
    return score(Site(points, ground, (line,), walked, white, "two kerbs", spike), find_features(points), least=0.0)


# --- what is asked and what is not ------------------------------------------------------------------


@pytest.fixture(scope="module")
def kerbs():
    return street(5, between=3.0, height=0.12)


def test_foot_and_top_go_together(kerbs):
    features = find_features(kerbs.points)
    assert len(features.strong) == 2
    for line in features.strong:
        assert line.kind == FoundKind.STEP
        assert len(line.top) == len(line) == len(line.sigma_plan) == len(line.sigma_height)
        assert len(line.bridged) == len(line) - 1
        step = np.diff(line.foot[:, :2], axis=0)
        across = line.top[:-1, :2] - line.foot[:-1, :2]
        assert (step[:, 0] * across[:, 1] - step[:, 1] * across[:, 0] > 0).mean() > 0.95  # the top is on the left
        wide = np.hypot(*(line.top - line.foot)[:, :2].T)
        assert wide.min() > 0.01
        assert wide.max() < 0.5
    assert np.count_nonzero(features.step_after) == pytest.approx(sum(line.passes for line in features.strong), abs=6)
    assert features.noise == pytest.approx(kerbs.white, rel=0.4)


def test_neither_time_nor_codes_nor_the_place_on_earth_matter(kerbs):
    points = kerbs.points
    features = find_features(points)
    far = make_points(points.easting + 3e5, points.northing - 1e6, points.height + 700, code=np.full(len(points), "X"))
    moved = find_features(far)
    assert len(moved.lines) == len(features.lines)
    np.testing.assert_allclose(moved.lines[0].easting - 3e5, features.lines[0].easting, atol=1e-4)
    back = find_features(points.select(np.arange(len(points))[::-1]))
    assert len(back.strong) == len(features.strong)
    assert sum(line.length for line in back.strong) == pytest.approx(
        sum(line.length for line in features.strong), rel=0.05
    )


def test_rejected_points_say_nothing(kerbs):
    points = kerbs.points
    status = points.status.copy()
    status[::40] = Status.REJECTED
    height = points.height.copy()
    height[::40] += 5.0
    spoiled = replace(points, height=height).with_status(status, points.reasons)
    features = find_features(spoiled)
    assert len(features.strong) == 2
    assert (features.on_line[::40] == -1).all()
    assert score(kerbs, features).found > 0.9 * score(kerbs, features).asked


@pytest.mark.parametrize("n", [0, 1, 2, 10, 100])
def test_few_points_tell_of_nothing(n):
    random = np.random.default_rng(n)
    points = make_points(ORIGIN[0] + 0.5 * np.arange(n), np.full(n, ORIGIN[1]), random.normal(0, 0.01, n))
    features = find_features(points)
    assert features.lines == ()
    assert len(features.on_line) == len(features.step_after) == len(features.explained) == n


def test_points_in_no_order_are_no_walk_and_it_is_said(kerbs):
    mixed = kerbs.points.select(np.random.default_rng(1).permutation(len(kerbs.points)))
    features = find_features(mixed)
    assert features.lines == ()
    (said,) = told_of_walk(features)
    assert "order" in str(said)
    assert told_of_walk(find_features(kerbs.points)) == ()
    assert told_of_walk(find_features(mixed.select(np.arange(40)))) == ()  # too few to tell anything


def test_odd_points_do_no_harm(kerbs):
    points = kerbs.points
    easting, height = points.easting.copy(), points.height.copy()
    easting[7], height[11] = np.nan, np.inf
    easting[50] = 0.0
    easting[60:70] = easting[60]
    features = find_features(replace(points, easting=easting, height=height))
    assert all(np.isfinite(line.foot).all() for line in features.lines)
    same = make_points(np.full(200, 5e5), np.full(200, 5.7e6), np.zeros(200))
    assert find_features(same).lines == ()


def test_it_is_one_result_and_can_be_stopped(kerbs):
    one, two = find_features(kerbs.points), find_features(kerbs.points)
    np.testing.assert_array_equal(one.lines[0].foot, two.lines[0].foot)
    told = []
    find_features(kerbs.points, progress=lambda share, stage: told.append((share, stage)))
    assert told[-1] == (1.0, "features")
    assert [share for share, _ in told] == sorted(share for share, _ in told)

    def stop(share, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        find_features(kerbs.points, progress=stop)


def test_what_is_met_beyond_two_ends_stays_with_its_own_line() -> None:
    """One line goes on far beyond its end, the next begins a little before its start: keys of both are in one range."""
    courses = [Course(np.array([0, 1])), Course(np.array([2, 3]))]
    every = listed(courses)
    of, key = np.array([0, 1]), np.array([1 + 0.25 + 0.4, 2 - 0.75 + 0.1])
    assert key[0] > key[1]
    first, second = _with_nodes(courses, every, of, key, 4)
    assert first.nodes.tolist() == [0, 1, 4]
    assert second.nodes.tolist() == [5, 2, 3]
