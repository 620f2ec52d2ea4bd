"""Smoothed contours: never crossing, within their distance; geometry decided by shapely (GEOS)."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely

from plugin.core.contours.lines import ContourOptions, Contours
from plugin.core.contours.smooth import BLOCK, smooth_contours
from plugin.core.contours.trace import trace_contours
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.progress import Cancelled
from plugin.core.surface.build import build_surface
from plugin.core.surface.tin import Tin
from tests.core.terrains import HALF_FOOT, Terrains, delaunay_tin, edges_of, random_terrains, tin_of

METRE = ContourOptions(1.0, base=0.05)


def line_strings(contours: Contours) -> np.ndarray:
    return shapely.linestrings(contours.xy, indices=np.repeat(np.arange(len(contours)), np.diff(contours.start)))


def by_terrain(contours: Contours, terrains: Terrains) -> np.ndarray:
    """All lines of each terrain in one multi-line."""
    terrain = terrains.of_place(contours.xy[contours.start[:-1]])
    order = np.argsort(terrain, kind="stable")
    return shapely.multilinestrings(
        line_strings(contours)[order], indices=np.unique(terrain[order], return_inverse=True)[1]
    )


def polygons_of(contours: Contours, rings: np.ndarray) -> np.ndarray:
    return np.array(
        [shapely.Polygon(contours.xy[contours.start[i] : contours.start[i + 1]]) for i in np.flatnonzero(rings)]
    )


def straightened(contours: Contours, rounds: int = 3) -> Contours:
    """Smoothing that minds nothing: every inner point to the middle of its neighbours."""
    xy = contours.xy.copy()
    inner = np.ones(len(xy), dtype=bool)
    inner[contours.start[:-1]] = inner[contours.start[1:] - 1] = False
    inner = np.flatnonzero(inner)
    for _ in range(rounds):
        xy[inner] = 0.5 * (xy[inner - 1] + xy[inner + 1])
    return replace(contours, xy=xy)


def wavy_tin(n: int = 4000, seed: int = 3) -> Tin:
    rng = np.random.default_rng(seed)
    xy = np.rint(rng.uniform(0, 60, (n, 2)) * 1e4) / 1e4
    z = 100 + 0.02 * xy[:, 0] + 1.5 * np.sin(xy[:, 0] / 9) * np.cos(xy[:, 1] / 7) + rng.normal(0, 0.015, n)
    return delaunay_tin(np.column_stack([xy, z]))


# ---------------------------------------------------------------------------------- never crossing


@pytest.fixture(scope="module")
def many() -> tuple[Terrains, Contours, Contours, float]:
    terrains = random_terrains(10_000, seed=11, breaklines=0.1)
    exact = trace_contours(terrains.tin, METRE)
    smooth = smooth_contours(exact, terrains.tin, 0.6)
    return terrains, exact, smooth.contours, smooth.achieved_shift


def test_ten_thousand_terrains_never_cross(many):
    terrains, exact, smooth, _ = many
    assert len(np.unique(terrains.of_place(exact.xy[exact.start[:-1]]))) > 9_000
    assert len(exact) > 50_000
    assert len(smooth.xy) > 1.2 * len(exact.xy)
    assert np.all(shapely.is_simple(by_terrain(exact, terrains)))
    # Simple: no line meets itself or another anywhere, but for the closing point of rings.
    assert np.all(shapely.is_simple(by_terrain(smooth, terrains)))


def test_smoothing_that_minds_nothing_crosses(many):
    """So the check above can fail."""
    terrains, exact, _, _ = many
    assert np.sum(~shapely.is_simple(by_terrain(straightened(exact), terrains))) > 1000


def test_breaklines_are_crossed_where_the_exact_lines_do(many):
    terrains, exact, smooth, _ = many
    tin = terrains.tin
    once = tin.neighbours < np.arange(len(tin.triangles))[:, None]
    edges = shapely.linestrings(np.stack(edges_of(tin, (tin.edge_kind != 0) & once), 1))
    assert len(edges) > 10_000
    before, after = line_strings(exact), line_strings(smooth)
    edge, line = shapely.STRtree(before).query(edges, predicate="intersects")
    edge_after, line_after = shapely.STRtree(after).query(edges, predicate="intersects")
    pairs = np.unique(np.stack([edge, line]), axis=1)
    np.testing.assert_array_equal(pairs, np.unique(np.stack([edge_after, line_after]), axis=1))
    meet = shapely.intersection(edges[pairs[0]], after[pairs[1]])
    expected = shapely.intersection(edges[pairs[0]], before[pairs[1]])
    # A micrometre, for lines that meet the edge at a very small angle.
    assert np.max(shapely.hausdorff_distance(meet, expected)) < 1e-6


def test_lines_stay_within_the_shift_both_ways(many):
    _, exact, smooth, achieved = many
    some = np.arange(0, len(exact), 5)
    distance = shapely.hausdorff_distance(line_strings(smooth)[some], line_strings(exact)[some], densify=0.2)
    assert 0.3 < distance.max() <= achieved + 1e-9
    assert achieved <= 0.6 + 1e-12


def test_lines_stay_on_the_surface(many):
    terrains, _, smooth, _ = many
    rim = shapely.linestrings(np.stack(edges_of(terrains.tin, terrains.tin.neighbours < 0), 1))
    lines = line_strings(smooth)
    line, place = shapely.STRtree(rim).query(lines, predicate="intersects")
    # A line meets the rim in its first and last points alone.
    assert not np.any(smooth.closed[line])
    ends = shapely.multipoints(np.stack([smooth.xy[smooth.start[:-1]], smooth.xy[smooth.start[1:] - 1]], 1))
    meet = shapely.intersection(rim[place], lines[line])
    assert np.all(shapely.get_type_id(meet) == 0)
    # A micrometre, for lines that leave the rim at a very small angle.
    assert np.max(shapely.distance(meet, ends[line])) < 1e-6


def test_every_point_keeps_its_side_of_every_ring(many):
    terrains, exact, smooth, _ = many
    tree = shapely.STRtree(shapely.points(terrains.tin.vertices[:, :2]))
    rings = exact.closed
    inside = [
        np.unique(tree.query(polygons_of(contours, rings), predicate="contains"), axis=1)
        for contours in (exact, smooth)
    ]
    assert inside[0].shape[1] > 10_000
    np.testing.assert_array_equal(*inside)


def test_levels_that_meet_vertices():
    """Exact lines touch there; smoothed ones touch nowhere else."""
    terrains = random_terrains(1500, seed=5, ties=True)
    exact = trace_contours(terrains.tin, ContourOptions(1.0))
    smooth = smooth_contours(exact, terrains.tin, 0.6).contours
    touching = ~shapely.is_simple(by_terrain(smooth, terrains))
    assert np.sum(touching) > 100
    segment = np.ones(len(smooth.xy), dtype=bool)
    segment[smooth.start[1:] - 1] = False
    segment = np.flatnonzero(segment)
    ends = np.stack([smooth.xy[segment], smooth.xy[segment + 1]], 1)
    lines = shapely.linestrings(ends)
    one, other = shapely.STRtree(lines).query(lines, predicate="intersects")
    one, other = one[one < other], other[one < other]
    meet = shapely.intersection(lines[one], lines[other])
    points = shapely.get_type_id(meet) == 0
    # What is shared is a point of the line in both, or a whole edge of the TIN at the level.
    place = shapely.get_coordinates(meet[points])
    of_both = np.all([np.any(np.all(ends[s[points]] == place[:, None], 2), 1) for s in (one, other)], axis=0)
    assert np.all(of_both)
    vertices = {tuple(v) for v in terrains.tin.vertices[:, :2]}
    following = (segment[other[points]] == segment[one[points]] + 1) | (
        smooth.closed[np.searchsorted(smooth.start, segment[one[points]], "right") - 1]
        & np.all(place == smooth.xy[smooth.start[np.searchsorted(smooth.start, segment[one[points]], "right") - 1]], 1)
    )
    assert all(tuple(p) in vertices for p in place[~following])
    for line in shapely.get_coordinates(meet[~points]).reshape(-1, 2):
        assert tuple(line) in vertices


# ----------------------------------------------------------------------------------------- result


def test_lines_get_smoother_and_keep_their_attributes():
    tin = wavy_tin()
    exact = trace_contours(tin, ContourOptions(0.25))
    result = smooth_contours(exact, tin, 0.25)
    smooth = result.contours
    for name in ("level", "level_in_unit", "step", "index", "closed", "depression"):
        np.testing.assert_array_equal(getattr(smooth, name), getattr(exact, name))
    first, last = smooth.start[:-1], smooth.start[1:] - 1
    assert np.array_equal(smooth.xy[first][smooth.closed], smooth.xy[last][smooth.closed])
    open_ends = ~exact.closed
    np.testing.assert_array_equal(smooth.xy[first][open_ends], exact.xy[exact.start[:-1]][open_ends])
    np.testing.assert_array_equal(smooth.xy[last][open_ends], exact.xy[exact.start[1:] - 1][open_ends])
    assert sharp_turns(smooth) < 0.2 * sharp_turns(exact)
    assert 0 < result.achieved_shift <= result.max_shift == 0.25


def sharp_turns(contours: Contours) -> int:
    """Number of points where a line turns by more than 45 degrees."""
    step = np.diff(contours.xy, axis=0)
    turn = np.abs(np.angle(np.exp(1j * np.diff(np.arctan2(step[:, 1], step[:, 0])))))
    inner = np.ones(len(contours.xy), dtype=bool)
    inner[contours.start[:-1]] = inner[contours.start[1:] - 1] = False
    return int(np.sum(turn[inner[1:-1]] > math.pi / 4))


def test_circles_do_not_shrink():
    """Levels of a cone are circles (closed form): smoothed lines turn less and are off them no more."""
    rng = np.random.default_rng(8)
    xy = np.rint(rng.uniform(-20, 20, (1500, 2)) * 1e4) / 1e4
    tin = delaunay_tin(np.column_stack([xy, 20 - np.hypot(*xy.T) + rng.normal(0, 0.05, len(xy))]))
    exact = trace_contours(tin, ContourOptions(2.0))
    smooth = smooth_contours(exact, tin, 0.3).contours
    (mean, spread, turning), (smooth_mean, smooth_spread, smooth_turning) = map(off_circles, (exact, smooth))
    assert abs(smooth_mean - mean) < 0.01
    assert smooth_spread < 1.05 * spread
    assert smooth_turning < 0.6 * turning


def off_circles(contours: Contours) -> tuple[float, float, float]:
    """Mean and root mean square of the distance outside the cone's circle, by length; sum of all turns."""
    radius = np.hypot(*contours.xy.T) - np.repeat(20 - contours.level, np.diff(contours.start))
    inner = np.ones(len(radius), dtype=bool)
    inner[contours.start[1:] - 1] = False
    inner = np.flatnonzero(inner)
    step = contours.xy[inner + 1] - contours.xy[inner]
    off, weight = 0.5 * (radius[inner] + radius[inner + 1]), np.hypot(*step.T)
    turn = np.diff(np.unwrap(np.arctan2(step[:, 1], step[:, 0])))
    return np.average(off, weights=weight), np.sqrt(np.average(off**2, weights=weight)), np.sum(np.abs(turn))


def test_bends_at_breaklines_stay():
    """A roof: the ridge is a breakline, the contours' points on it stay to the last bit."""
    x, y = np.meshgrid(np.arange(21.0), np.arange(-10.0, 11.0))
    rng = np.random.default_rng(2)
    x = x + np.where((x > 0) & (x < 20) & (y != 0), rng.uniform(-0.3, 0.3, x.shape), 0)
    xyz = np.column_stack([x.ravel(), y.ravel(), (0.1 * x - np.abs(y)).ravel()])
    plain = delaunay_tin(xyz)
    ridge = np.flatnonzero(xyz[:, 1] == 0)
    tin = tin_of(xyz, plain.triangles, np.stack([ridge[:-1], ridge[1:]], 1))
    exact = trace_contours(tin, ContourOptions(0.5, base=0.03))
    smooth = smooth_contours(exact, tin, 0.5).contours
    on_ridge = exact.xy[np.abs(exact.xy[:, 1]) < 1e-12]
    assert len(on_ridge) == 4
    assert {tuple(p) for p in on_ridge} <= {tuple(p) for p in smooth.xy}


def test_blocks_do_not_show():
    tin = wavy_tin(30_000)
    exact = trace_contours(tin, ContourOptions(0.01))
    assert len(exact.xy) > 3 * BLOCK
    whole = smooth_contours(exact, tin, 0.2).contours
    for i in (0, len(exact) // 2, len(exact) - 1):
        alone = replace(
            exact,
            xy=exact.xy[exact.start[i] : exact.start[i + 1]],
            edge=exact.edge[exact.start[i] : exact.start[i + 1]],
            start=np.array([0, exact.start[i + 1] - exact.start[i]]),
            **{k: getattr(exact, k)[i : i + 1] for k in ("level", "level_in_unit", "step", "index", "closed")},
        )
        one = smooth_contours(alone, tin, 0.2).contours
        np.testing.assert_array_equal(one.xy, whole.xy[whole.start[i] : whole.start[i + 1]])


@pytest.mark.parametrize("options", [HALF_FOOT, ContourOptions(0.25), ContourOptions(1.0, base=1000.0)])
def test_intervals_in_feet_and_metres(options):
    """The corridors follow the interval in metres: half a foot is 0.1524 m."""
    tin = wavy_tin()
    exact = trace_contours(tin, options)
    smooth = smooth_contours(exact, tin, 5.0)
    if len(exact):
        assert shapely.is_simple(shapely.multilinestrings(line_strings(smooth.contours)))
        assert smooth.achieved_shift < 5.0


def test_no_shift_changes_nothing():
    tin = wavy_tin()
    exact = trace_contours(tin, ContourOptions(0.5))
    same = smooth_contours(exact, tin, 0.0)
    np.testing.assert_array_equal(same.contours.xy, exact.xy)
    np.testing.assert_array_equal(same.contours.start, exact.start)
    assert same.achieved_shift == 0.0


def test_nothing_to_smooth():
    tin = wavy_tin()
    none = trace_contours(tin, ContourOptions(1.0, base=1000.5, unit=METRE.unit, index_every=1))
    none = none if len(none) == 0 else trace_contours(tin, ContourOptions(5000.0))
    assert len(none) == 0
    assert len(smooth_contours(none, tin, 0.25).contours) == 0


@pytest.mark.parametrize("shift", [-0.1, math.nan, math.inf])
def test_a_bad_shift_is_refused(shift):
    tin = wavy_tin(100)
    with pytest.raises(SurveyError) as caught:
        smooth_contours(trace_contours(tin, ContourOptions(0.5)), tin, shift)
    assert caught.value.code == "contours.max_shift"


def test_smoothing_twice_is_refused():
    tin = wavy_tin(100)
    smooth = smooth_contours(trace_contours(tin, ContourOptions(0.5)), tin, 0.1).contours
    with pytest.raises(ValueError, match="once"):
        smooth_contours(smooth, tin, 0.1)


def test_cancel():
    def stop(fraction: float, stage: str) -> None:
        raise Cancelled

    tin = wavy_tin(100)
    with pytest.raises(Cancelled):
        smooth_contours(trace_contours(tin, ContourOptions(0.5)), tin, 0.1, stop)


def test_each_point_lies_on_its_edge():
    tin = wavy_tin()
    exact = trace_contours(tin, ContourOptions(0.25))
    triangle, edge = np.divmod(exact.edge, 3)
    one = tin.vertices[tin.triangles[triangle, edge]]
    other = tin.vertices[tin.triangles[triangle, (edge + 1) % 3]]
    level = np.repeat(exact.level, np.diff(exact.start))
    share = (level - one[:, 2]) / (other[:, 2] - one[:, 2])
    np.testing.assert_allclose(exact.xy, one[:, :2] + share[:, None] * (other - one)[:, :2], atol=1e-8)


def test_contours_end_at_voids_and_boundary():
    """A boundary and a void cut from the surface: lines end on them, traced or smoothed."""
    rng = np.random.default_rng(17)
    east, north = rng.uniform(0, 60, (2, 5000))
    height = 100 + 0.02 * east + 1.5 * np.sin(east / 9) * np.cos(north / 7) + rng.normal(0, 0.015, 5000)
    corner = np.array([432_000.0, 5_765_000.0])
    points = make_points(east + corner[0], north + corner[1], height)
    ring = np.array([[5.0, 5.0], [55.0, 8.0], [50.0, 52.0], [30.0, 40.0], [8.0, 55.0]]) + corner
    void = np.array([[25.0, 20.0], [36.0, 22.0], [34.0, 31.0], [23.0, 29.0]]) + corner
    lines = Constraints((make_line(LineKind.BOUNDARY, ring), make_line(LineKind.VOID, void)))
    tin = build_surface(points, lines).tin
    site = shapely.Polygon(ring, [void])
    assert tin.plan_area == pytest.approx(site.area, abs=0.01)
    exact = trace_contours(tin, HALF_FOOT)
    smooth = smooth_contours(exact, tin, 0.3).contours
    for contours in (exact, smooth):
        drawn = shapely.MultiLineString([contours.line(i) for i in range(len(contours))])
        # Vertices on drawn lines are rounded to 0.1 mm.
        assert drawn.difference(site.buffer(2e-4)).length == 0
        ends = np.concatenate([[contours.line(i)[0], contours.line(i)[-1]] for i in np.flatnonzero(~contours.closed)])
        away = shapely.distance(shapely.points(ends), site.boundary)
        assert len(ends) > 50
        assert away.max() < 2e-4
        assert np.sum(shapely.distance(shapely.points(ends), shapely.Polygon(void)) < 2e-4) > 10
