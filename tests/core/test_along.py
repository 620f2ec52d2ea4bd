"""Lines laid on a surface, against brute force by shapely and closed forms."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.surface.along import lay_line, lay_lines
from plugin.core.surface.line_cuts import SAME_PLACE
from plugin.core.surface.locate import heights_at
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin, ring, tin_of


def at(places):
    """Places in metres from the surfaces' origin as coordinates of the CRS."""
    return np.asarray(places) + ORIGIN


def square(side: int = 10, z=(0.0, 1.0, 2.0, 5.0)):
    """A square of ``side`` metres in two triangles, the diagonal from south-west to north-east."""
    s = side * 10_000
    return tin_of([[0, 0], [s, 0], [s, s], [0, s]], z, [[0, 1, 2], [0, 2, 3]])


def check_against_shapely(tin, lines, laid):
    """Lengths inside and outside, heights, order, and no triangle edge crossed between vertices."""
    polygons = shapely.polygons(tin.vertices[tin.triangles][:, :, :2] + tin.origin)
    surface = shapely.union_all(polygons)
    edges = shapely.union_all(shapely.boundary(polygons))
    for number, line in enumerate(lines):
        mine = np.flatnonzero(laid.line == number)
        # segment by segment: a line that crosses itself is cut there too by shapely
        segments = shapely.linestrings(np.stack([line[:-1], line[1:]], axis=1))
        length = sum(laid.distance[laid.start[i + 1] - 1] - laid.distance[laid.start[i]] for i in mine)
        assert length == pytest.approx(shapely.length(shapely.intersection(segments, surface)).sum(), abs=1e-5)
        out = sum(gap.end - gap.start for gap in laid.gaps if gap.line == number)
        assert length + out == pytest.approx(shapely.length(segments).sum(), abs=1e-6)
        pieces = shapely.get_parts(shapely.difference(segments, edges))
        pieces = pieces[shapely.length(pieces) > 1e-4]
        on = shapely.distance(shapely.line_interpolate_point(pieces, 0.5, normalized=True), surface) < 1e-6
        for end in shapely.get_coordinates(pieces[on]):
            assert min(np.min(np.hypot(*(laid.part(i)[:, :2] - end).T)) for i in mine) < 1e-6
    middle = (laid.xyz[:-1] + laid.xyz[1:]) / 2
    same = np.ones(len(middle), bool)
    same[laid.start[1:-1] - 1] = False
    assert np.all(np.hypot(*np.diff(laid.xyz[:, :2], axis=0)[same].T) > SAME_PLACE / 2)
    assert np.all(np.diff(laid.distance)[same] > 0)
    # linear between vertices: the middle of each piece has the middle height
    np.testing.assert_allclose(heights_at(tin, middle[same, :2]), middle[same, 2], atol=1e-6)


@pytest.mark.parametrize("seed", range(4))
def test_random_lines_on_a_surface_with_a_hole_and_a_concave_rim(seed):
    tin = random_tin(300, seed, keep=ring)
    rng = np.random.default_rng(seed)
    lines = [rng.uniform(-20, 120, (rng.integers(2, 7), 2)) + ORIGIN for _ in range(30)]
    laid = lay_lines(tin, lines)
    assert len(laid.gaps) > 20
    check_against_shapely(tin, lines, laid)


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10**6))
def test_lines_on_whole_metres_through_vertices_and_along_edges(seed):
    """Coordinates of few values: the lines run through vertices, along edges and along the rim all the time."""
    rng = np.random.default_rng(seed)
    xy = rng.integers(0, 5, (rng.integers(6, 26), 2)).astype(float)
    if len(np.unique(xy[:, 0])) < 2 or len(np.unique(xy[:, 1])) < 2:
        return
    try:
        tin = delaunay_tin(xy, rng.normal(0, 1, len(xy)), keep=lambda x, y: rng.random(len(x)) < 0.8)
    except ValueError:
        return
    if len(tin.triangles) == 0:
        return
    lines = [at(rng.integers(-1, 6, (rng.integers(2, 5), 2))) for _ in range(8)]
    lines = [line for line in lines if np.all(np.any(np.diff(line, axis=0) != 0, axis=1))]
    if lines:
        check_against_shapely(tin, lines, lay_lines(tin, lines))


def test_a_diagonal_crossing_has_three_vertices_and_exact_heights():
    laid = lay_line(square(), at([[2.0, 8.0], [8.0, 2.0]]))
    assert len(laid) == 1
    # planes: z = x/10 + y/10 below the diagonal, z = y/2 - 3x/10 above it
    np.testing.assert_allclose(laid.xyz - [*ORIGIN, 0], [[2, 8, 4 - 0.6], [5, 5, 1], [8, 2, 1]], atol=1e-9)
    np.testing.assert_allclose(laid.distance, [0, 3 * 2**0.5, 6 * 2**0.5], atol=1e-9)


def test_a_line_along_the_rim_is_on_the_surface():
    laid = lay_line(square(), at([[-5.0, 0.0], [15.0, 0.0]]))
    assert len(laid) == 1
    np.testing.assert_allclose(laid.part(0) - [*ORIGIN, 0], [[0, 0, 0], [10, 0, 1]], atol=1e-9)
    assert [(gap.start, gap.end) for gap in laid.gaps] == [(0.0, 5.0), (15.0, 20.0)]


@pytest.mark.parametrize("seed", range(5))
def test_the_rim_itself_is_on_the_surface_though_its_places_are_rounded(seed):
    """A boundary as the user has it, before its vertices were rounded to the plan grid (0.1 mm)."""
    tin = random_tin(300, seed)
    triangle, side = np.nonzero(tin.neighbours < 0)
    after = dict(zip(tin.triangles[triangle, side].tolist(), tin.triangles[triangle, (side + 1) % 3].tolist()))
    chain = [min(after)]
    while len(chain) <= len(after):
        chain.append(after[chain[-1]])
    rng = np.random.default_rng(seed)
    line = at(tin.vertices[chain, :2]) + rng.uniform(-5e-5, 5e-5, (len(chain), 2))
    laid = lay_line(tin, line)
    assert len(laid) == 1
    assert laid.gaps == ()
    # every vertex of the rim is there with its height
    for vertex in chain:
        off = np.hypot(*(laid.xyz[:, :2] - at(tin.vertices[vertex, :2])).T)
        near = off < 1e-3
        assert np.min(np.abs(laid.xyz[near, 2] - tin.vertices[vertex, 2])) < 1e-3


def test_a_line_along_an_inner_edge_from_inside_it():
    laid = lay_line(square(), at([[2.0, 2.0], [7.0, 7.0]]))
    np.testing.assert_allclose(laid.xyz - [*ORIGIN, 0], [[2, 2, 0.4], [7, 7, 1.4]], atol=1e-9)


def test_a_line_that_touches_a_corner_is_outside():
    laid = lay_line(square(), at([[-1.0, 1.0], [1.0, -1.0]]))
    assert len(laid) == 0
    assert len(laid.gaps) == 1
    assert laid.gaps[0].end == pytest.approx(8**0.5)


def test_lines_wholly_outside_and_without_length():
    lines = [at([[500.0, 0.0], [600.0, 0.0]]), np.tile(ORIGIN + 1, (3, 1)), ORIGIN[None] + 1]
    laid = lay_lines(square(), lines)
    assert len(laid) == 0
    assert [(g.line, g.start, g.end) for g in laid.gaps] == [(0, 0.0, 100.0)]
    assert len(lay_lines(square(), [])) == 0


def test_repeated_vertices_come_once_and_lines_keep_their_numbers():
    line = at([[1.0, 2.0], [1.0, 2.0], [9.0, 8.0], [9.0, 8.0]])
    laid = lay_lines(square(), [line + 1000, line])
    assert laid.line.tolist() == [1]
    assert len(laid.xyz) == 3
    assert [gap.line for gap in laid.gaps] == [0]


def test_a_closed_line_stays_closed():
    ring_line = at([[1.0, 1.0], [9.0, 1.0], [9.0, 9.0], [1.0, 9.0], [1.0, 1.0]])
    laid = lay_line(square(), ring_line)
    np.testing.assert_array_equal(laid.part(0)[0], laid.part(0)[-1])


def test_a_kerb_face_of_a_millimetre_is_met_exactly():
    """Two rows of vertices 1 mm apart and 12 cm high: the profile across has both edges of the face."""
    y = np.arange(0, 1_000_001, 100_000)
    grid = np.concatenate([np.column_stack([np.full(len(y), x), y]) for x in (0, 500_000, 500_010, 1_000_000)])
    z = np.repeat([1.0, 1.0, 1.12, 1.12], len(y))
    n = len(y)
    quads = [[k * n + i, (k + 1) * n + i, (k + 1) * n + i + 1, k * n + i + 1] for k in range(3) for i in range(n - 1)]
    triangles = [[a, b, c] for a, b, c, d in quads] + [[a, c, d] for a, b, c, d in quads]
    tin = tin_of(grid, z, triangles)
    laid = lay_line(tin, at([[10.0, 33.0], [90.0, 33.0]]))
    x, height = laid.xyz[:, 0] - ORIGIN[0], laid.xyz[:, 2]
    assert np.interp(50.0, x, height) == pytest.approx(1.0, abs=1e-6)
    assert np.interp(50.001, x, height) == pytest.approx(1.12, abs=1e-6)
    assert np.all((height > 1 - 1e-9) & (height < 1.12 + 1e-9))


def test_many_lines_give_what_single_lines_give():
    tin = random_tin(2000, 5, keep=ring)
    rng = np.random.default_rng(5)
    lines = [rng.uniform(-5, 105, (4, 2)) + ORIGIN for _ in range(40)]
    together = lay_lines(tin, lines)
    parts = [part for line in lines for part in lay_line(tin, line)]
    assert len(parts) == len(together)
    for one, other in zip(parts, together):
        np.testing.assert_allclose(one, other, atol=1e-9)


def test_shuffled_triangles_give_the_same_places():
    tin = random_tin(300, 6)
    order = np.random.default_rng(6).permutation(len(tin.triangles))
    other = tin_of(tin.grid, tin.vertices[:, 2], tin.triangles[order])
    line = at([[-3.0, 20.0], [50.0, 55.0], [105.0, 10.0]])
    np.testing.assert_allclose(lay_line(tin, line).xyz, lay_line(other, line).xyz, atol=1e-9)


def test_a_line_with_a_place_that_is_not_finite_is_refused():
    with pytest.raises(ValueError, match="finite"):
        lay_line(square(), np.array([[0.0, 0.0], [np.nan, 1.0]]))


def test_a_far_origin_costs_no_digits():
    tin = random_tin(200, 7)
    line = [[3.0, 4.0], [96.0, 91.0]]
    near = lay_line(replace(tin, origin=np.zeros(2)), np.array(line))
    far = lay_line(tin, at(line))
    np.testing.assert_allclose(far.xyz[:, 2], near.xyz[:, 2], atol=1e-8)


@pytest.mark.parametrize("beyond", [False, True])
def test_a_triangle_thinner_than_rounding_bends_no_line(beyond):
    """A triangle of 122 m that is 8e-11 m wide, its corner 5 m over its long side, at the rim or between two others."""
    grid = [[0, 0], [1_000_003, 700_001], [272_729, 190_910], [0, 1_000_000], [1_000_000, 0]]
    triangles = [[0, 1, 2], [0, 2, 3], [2, 1, 3]] + ([[1, 0, 4]] if beyond else [])
    tin = tin_of(grid, [0.0, 0.0, 5.0, 5.0, -3.0], triangles)
    share = np.array([0.05, 0.15, 0.27, 0.4, 0.9])[:, None]
    middle, across = share * np.array([100.0003, 70.0001]), np.array([-0.7, 1.0])
    for sign in (1, -1):
        lines = [at(np.vstack([place + sign * 4 * across, place - sign * 4 * across])) for place in middle]
        laid = lay_lines(tin, lines)
        assert len(laid) == len(lines)
        for line in laid:
            assert np.all(np.hypot(*np.diff(line[:, :2], axis=0).T) > SAME_PLACE / 2)
            for begin, end in zip(line[:-1], line[1:]):
                if np.hypot(*(end - begin)[:2]) > 1e-6:
                    places = begin + np.array([0.01, 0.3, 0.99])[:, None] * (end - begin)
                    np.testing.assert_allclose(heights_at(tin, places[:, :2]), places[:, 2], atol=1e-5)
