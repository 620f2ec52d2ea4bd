"""Grids of heights against scipy's linear interpolator, closed-form planes and a real elevation grid."""

from __future__ import annotations

import tracemalloc
from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

from plugin.core.linework.constraints import LineKind
from plugin.core.messages import SurveyError
from plugin.core.progress import Cancelled
from plugin.core.surface import raster, scan
from plugin.core.surface.locate import RIM, heights_at, locate
from plugin.core.surface.raster import GridFrame, centres, grid_for, sample_grid, smooth_grid
from plugin.core.surface.scan import scan_triangles
from plugin.core.surface.smooth import CloughTocher
from tests.core.surfaces import ORIGIN, delaunay_tin, hills, random_tin, real_ground, ring, tin_of


def places(frame: GridFrame) -> np.ndarray:
    """Cell centres (rows, columns, 2) in the CRS."""
    return np.stack(np.meshgrid(*centres(frame)), -1)


def scipy_tin(n: int, seed: int):
    rng = np.random.default_rng(seed)
    xy = np.round(rng.uniform(0, 100, (n, 2)), 4)
    z = hills(*xy.T)
    mesh = Delaunay(xy)
    return mesh, z, replace(tin_of(np.rint(xy * 1e4), z, mesh.simplices), vertices=np.column_stack([xy, z]))


@pytest.mark.parametrize(("n", "cell"), [(4, 0.7), (50, 1.3), (3000, 0.41), (3000, 5.0), (20_000, 0.5)])
def test_the_same_as_scipy_on_the_same_triangles(n, cell):
    mesh, z, tin = scipy_tin(n, n)
    frame = GridFrame(-3.3, -2.1, cell, int(107 / cell), int(106 / cell))
    grid = sample_grid(replace(tin, origin=np.zeros(2)), *frame)
    theirs = LinearNDInterpolator(mesh, z)(places(frame))
    assert np.count_nonzero(np.isfinite(grid)) > 30
    assert not np.any(np.isnan(grid) & ~np.isnan(theirs))
    assert np.count_nonzero(np.isnan(theirs) & ~np.isnan(grid)) <= 2  # ours counts 0.1 mm beside the rim in
    both = ~np.isnan(theirs)
    np.testing.assert_allclose(grid[both], theirs[both], atol=1e-9, rtol=0)


@settings(max_examples=50, deadline=None)
@given(
    st.integers(0, 10**6),
    st.floats(-2, 2),
    st.floats(-2, 2),
    st.floats(0.2, 30),
    st.floats(-10, 10),
)
def test_a_plane_is_a_plane_in_every_grid(seed, east, north, cell, shift):
    rng = np.random.default_rng(seed)
    xy = rng.uniform(0, 20, (rng.integers(4, 40), 2))
    tin = delaunay_tin(xy, np.zeros(len(xy)))
    x, y = tin.vertices[:, :2].T
    tin = replace(tin, vertices=np.column_stack([x, y, 50 + east * x + north * y]))
    frame = GridFrame(ORIGIN[0] + shift, ORIGIN[1] - shift, cell, max(1, int(25 / cell)), max(1, int(25 / cell)))
    grid = sample_grid(tin, *frame)
    at = places(frame)
    local = at - ORIGIN
    plane = 50 + east * local[..., 0] + north * local[..., 1]
    on = np.isfinite(grid)
    # beside the rim the height is that of the rim
    np.testing.assert_allclose(grid[on], plane[on], atol=1e-7 + RIM * np.hypot(east, north), rtol=0)
    assert on.sum() < 100 or np.mean(np.abs(grid[on] - plane[on]) > 1e-7) < 0.01
    np.testing.assert_array_equal(on.ravel(), locate(tin, at.reshape(-1, 2)) >= 0)


@settings(max_examples=80, deadline=None)
@given(st.integers(0, 10**6))
def test_centres_on_vertices_edges_and_the_rim_get_a_value_and_inner_ones_just_one_triangle(seed):
    """Vertices at whole metres and cells of half a metre centred there: centres fall on edges everywhere."""
    rng = np.random.default_rng(seed)
    xy = rng.integers(0, 7, (rng.integers(5, 30), 2)).astype(float)
    xy = np.concatenate([xy, [[0, 0], [6, 0], [0, 6]]])
    tin = delaunay_tin(xy, rng.normal(0, 1, len(xy)), keep=lambda x, y: (x + y < 3) | (rng.random(len(x)) < 0.7))
    frame = GridFrame(ORIGIN[0] - 0.25, ORIGIN[1] - 0.25, 0.5, 13, 13)
    grid, at = sample_grid(tin, *frame), places(frame)
    height = heights_at(tin, at.reshape(-1, 2)).reshape(grid.shape)
    np.testing.assert_array_equal(np.isnan(grid), np.isnan(height))
    np.testing.assert_allclose(grid, height, atol=1e-9, rtol=0)

    times = np.zeros(grid.shape, int)
    place = (tin.vertices[:, 0] + 1j * tin.vertices[:, 1]) * 2
    for _, spans in scan_triangles(place, tin.vertices[:, 2], tin.triangles, 13, 13):
        of, column = spans.cells()
        np.add.at(times, (12 - spans.row[of], column), 1)
    surface = shapely.union_all(shapely.polygons(tin.vertices[tin.triangles][:, :, :2]))
    inside = shapely.contains_xy(surface, at[..., 0] - ORIGIN[0], at[..., 1] - ORIGIN[1])
    assert np.all(times[inside] == 1)
    assert np.all(times <= 1)


def test_holes_and_a_concave_rim_are_empty():
    tin = random_tin(800, 3, keep=ring)
    frame = grid_for(tin, 0.5)
    grid, at = sample_grid(tin, *frame), places(frame)
    surface = shapely.union_all(shapely.polygons(tin.vertices[tin.triangles][:, :, :2] + ORIGIN))
    inside = shapely.distance(surface, shapely.points(at)) <= RIM
    assert 0.1 < np.mean(~inside) < 0.9
    np.testing.assert_array_equal(np.isfinite(grid), inside)
    np.testing.assert_allclose(grid.ravel(), heights_at(tin, at.reshape(-1, 2)), atol=1e-9, rtol=0)


def test_a_real_elevation_grid_comes_back_exactly():
    xy, z, elevation = real_ground()
    tin = delaunay_tin(xy, z)
    rows, columns = elevation.shape
    frame = GridFrame(ORIGIN[0] - 15, ORIGIN[1] - 15, 30, columns, rows)
    np.testing.assert_array_equal(sample_grid(tin, *frame), elevation)
    # and between the posts: the height of the triangles, never beyond the four posts around
    between = sample_grid(tin, ORIGIN[0], ORIGIN[1], 30, columns - 1, rows - 1)
    posts = np.stack([elevation[:-1, :-1], elevation[1:, :-1], elevation[:-1, 1:], elevation[1:, 1:]])
    assert np.all((between >= posts.min(axis=0) - 1e-9) & (between <= posts.max(axis=0) + 1e-9))


def test_the_size_of_the_blocks_does_not_matter(monkeypatch):
    tin = random_tin(400, 4, keep=ring)
    frame = grid_for(tin, 0.3)
    whole = sample_grid(tin, *frame)
    monkeypatch.setattr(scan, "_TRIANGLES", 7)
    monkeypatch.setattr(scan, "_PIECES", 5)
    monkeypatch.setattr(raster, "_CELLS", 3)
    np.testing.assert_array_equal(sample_grid(tin, *frame), whole)


def test_a_grid_beside_over_and_within_the_surface():
    tin = random_tin(300, 5)
    assert np.all(np.isnan(sample_grid(tin, ORIGIN[0] + 500, ORIGIN[1], 1.0, 20, 30)))
    assert np.all(np.isnan(sample_grid(tin, ORIGIN[0], ORIGIN[1] - 50, 1.0, 20, 30)))
    whole = sample_grid(tin, ORIGIN[0] - 10, ORIGIN[1] - 20, 1.0, 130, 140)
    part = sample_grid(tin, ORIGIN[0] + 40, ORIGIN[1] + 30, 1.0, 7, 5)
    assert part.shape == (5, 7)
    np.testing.assert_allclose(part, whole[140 - 20 - 30 - 5 : 140 - 20 - 30, 50:57], atol=1e-12)


def test_one_cell():
    tin = random_tin(50, 6)
    grid = sample_grid(tin, ORIGIN[0], ORIGIN[1], 100.0, 1, 1)
    np.testing.assert_allclose(grid.ravel(), heights_at(tin, ORIGIN[None] + 50), atol=1e-9)


def test_float32_on_request():
    tin = random_tin(50, 7)
    frame = grid_for(tin, 2.0)
    grid = sample_grid(tin, *frame, dtype=np.float32)
    assert grid.dtype == np.float32
    np.testing.assert_array_equal(grid, sample_grid(tin, *frame).astype(np.float32))


def test_a_frame_lies_at_whole_multiples_of_the_cell_and_just_holds_the_surface():
    tin = random_tin(100, 8)
    frame = grid_for(tin, 2.5)
    assert frame.west / 2.5 == round(frame.west / 2.5)
    assert frame.south / 2.5 == round(frame.south / 2.5)
    west, south, east, north = tin.bounds
    assert frame.west <= west < frame.west + 2.5
    assert frame.south <= south < frame.south + 2.5
    assert 0 <= frame.west + frame.columns * 2.5 - east < 2.5
    assert 0 <= frame.south + frame.rows * 2.5 - north < 2.5


@pytest.mark.parametrize("cell", [0, -1, float("nan"), float("inf")])
def test_a_cell_must_be_above_zero(cell):
    with pytest.raises(SurveyError) as error:
        grid_for(random_tin(10, 1), cell)
    assert error.value.code == "raster.cell"
    with pytest.raises(SurveyError):
        sample_grid(random_tin(10, 1), 0, 0, cell, 3, 3)


def test_a_slip_of_the_keyboard_is_refused_before_it_fills_the_memory():
    with pytest.raises(SurveyError) as error:
        grid_for(random_tin(50, 1), 0.001)
    assert error.value.code == "raster.too_many_cells"
    assert "0.001" in str(error.value)


def test_progress_rises_and_cancels():
    seen = []
    tin = random_tin(50, 9)
    sample_grid(tin, *grid_for(tin, 5.0), progress=lambda fraction, stage: seen.append(fraction))
    assert seen[-1] == 1.0
    assert seen == sorted(seen)

    def stop(fraction, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        sample_grid(tin, *grid_for(tin, 5.0), progress=stop)


def test_sixteen_million_cells_stay_within_the_memory():
    """Two triangles over the whole grid: the worst case for the cells of one triangle."""
    tin = tin_of([[0, 0], [10**7, 0], [10**7, 10**7], [0, 10**7]], [0.0, 1.0, 2.0, 3.0], [[0, 1, 2], [0, 2, 3]])
    tracemalloc.start()
    grid = sample_grid(tin, *ORIGIN, 0.25, 4000, 4000)
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert np.all(np.isfinite(grid))
    assert peak < 0.3 * 2**30


def test_a_centre_a_tenth_of_a_millimetre_beside_the_rim_is_on_it_and_one_farther_off_is_not():
    tin = tin_of([[0, 0], [10**5, 0], [10**5, 10**5], [0, 10**5]], [0.0, 1.0, 2.0, 3.0], [[0, 1, 2], [0, 2, 3]])
    for shift, count in ((0.9e-4, 10), (1.1e-4, 9)):
        grid = sample_grid(tin, ORIGIN[0] - 0.5 - shift, ORIGIN[1] - 0.4, 1.0, 10, 10)
        assert np.isfinite(grid).sum(axis=1)[:9].tolist() == [count] * 9
        if count == 10:
            np.testing.assert_allclose(grid[:, 0], 3 * (np.arange(10)[::-1] + 0.1) / 10, atol=1e-3)


# ------------------------------------------------------------------------------------ the smooth one


def test_the_smooth_grid_of_a_plane_is_the_plane():
    tin = random_tin(200, 10)
    x, y = tin.vertices[:, :2].T
    tin = replace(tin, vertices=np.column_stack([x, y, 3 + 0.1 * x - 0.2 * y]))
    frame = grid_for(tin, 1.0)
    smooth = smooth_grid(tin, *frame)
    np.testing.assert_allclose(smooth.heights, sample_grid(tin, *frame), atol=1e-9)
    assert smooth.largest_difference < 1e-9
    assert smooth.method == "clough-tocher"


def test_the_smooth_grid_reports_its_largest_difference_and_where():
    tin = random_tin(400, 11, keep=ring)
    frame = grid_for(tin, 0.5)
    smooth, linear = smooth_grid(tin, *frame), sample_grid(tin, *frame)
    np.testing.assert_array_equal(np.isnan(smooth.heights), np.isnan(linear))
    difference = np.abs(smooth.heights - linear)
    assert smooth.largest_difference == pytest.approx(np.nanmax(difference), abs=1e-12)
    row, column = np.unravel_index(np.nanargmax(difference), difference.shape)
    np.testing.assert_allclose(places(frame)[row, column], [smooth.easting, smooth.northing], atol=1e-6)


@pytest.mark.parametrize("seed", range(6))
def test_slivers_along_the_rim_do_not_make_it_swing(seed):
    """Hulls of random points have slivers whose planes stand on edge; heights have a scatter of 0.2 m."""
    tin = random_tin(1200, seed, keep=[None, ring][seed % 2])
    assert smooth_grid(tin, *grid_for(tin, 0.5)).largest_difference < 2.0


def test_quadratics_are_met_exactly_when_their_slopes_are_given():
    """A property of the element: its slope across an edge is linear along it, as a quadratic's is."""
    tin = random_tin(60, 12)
    x, y = tin.vertices[:, :2].T

    def quadratic(x, y):
        return 1 + 0.3 * x - 0.2 * y + 0.01 * x * x - 0.02 * x * y + 0.03 * y * y

    slopes = np.column_stack([0.3 + 0.02 * x - 0.02 * y, -0.2 - 0.02 * x + 0.06 * y])
    tin = replace(tin, vertices=np.column_stack([x, y, quadratic(x, y)]))
    xy = np.random.default_rng(12).uniform(5, 95, (3000, 2))
    triangle = locate(tin, xy + ORIGIN)
    xy, triangle = xy[triangle >= 0], triangle[triangle >= 0]
    np.testing.assert_allclose(CloughTocher(tin, slopes).heights(triangle, xy), quadratic(*xy.T), atol=1e-8)


def test_it_goes_through_the_vertices_and_joins_smoothly_across_edges():
    tin = random_tin(150, 13)
    element = CloughTocher(tin)
    corners = element.heights(np.arange(len(tin.triangles)), tin.vertices[tin.triangles[:, 1], :2])
    np.testing.assert_allclose(corners, tin.vertices[tin.triangles[:, 1], 2], atol=1e-9)

    triangle, side = np.nonzero(tin.neighbours > np.arange(len(tin.triangles))[:, None])
    other = tin.neighbours[triangle, side]
    a, b = (tin.vertices[tin.triangles[triangle, k], :2] for k in (side, (side + 1) % 3))
    across = (b - a)[:, ::-1] * [-1, 1] / np.hypot(*(b - a).T)[:, None]
    narrow = shapely.minimum_clearance(shapely.polygons(tin.vertices[tin.triangles][:, :, :2]))
    narrow[np.any(element.sharp[tin.triangles], axis=1)] = 0  # not smooth, and rare
    wide = (narrow[triangle] > 0.5) & (narrow[other] > 0.5)  # elsewhere the steps below are too long
    assert np.mean(wide) > 0.75
    for share in (0.13, 0.5, 0.8):
        on = a + share * (b - a)
        np.testing.assert_allclose(element.heights(triangle, on), element.heights(other, on), atol=1e-8)
        step = 1e-5
        inner = (element.heights(triangle, on + step * across) - element.heights(triangle, on)) / step
        outer = (element.heights(other, on) - element.heights(other, on - step * across)) / step
        np.testing.assert_allclose(inner[wide], outer[wide], atol=1e-3)


def test_breaklines_stay_sharp_and_straight_and_the_surface_has_no_gaps_there():
    tin = random_tin(150, 14)
    kind = np.zeros(tin.triangles.shape, np.uint8)
    triangle, side = np.nonzero(tin.neighbours > np.arange(len(tin.triangles))[:, None])
    some = np.random.default_rng(14).random(len(triangle)) < 0.1
    triangle, side = triangle[some], side[some]
    kind[triangle, side] = int(LineKind.BREAKLINE)
    tin = replace(tin, edge_kind=kind)
    element = CloughTocher(tin)
    a, b = (tin.vertices[tin.triangles[triangle, k]] for k in (side, (side + 1) % 3))
    on = a + 0.3 * (b - a)
    np.testing.assert_allclose(element.heights(triangle, on[:, :2]), on[:, 2], atol=1e-9)
    triangle, side = np.nonzero(tin.neighbours > np.arange(len(tin.triangles))[:, None])
    a, b = (tin.vertices[tin.triangles[triangle, k], :2] for k in (side, (side + 1) % 3))
    on = a + 0.4 * (b - a)
    other = element.heights(tin.neighbours[triangle, side], on)
    np.testing.assert_allclose(element.heights(triangle, on), other, atol=1e-8)


def test_on_smooth_ground_it_is_nearer_to_the_ground_than_the_triangles_are():
    rng = np.random.default_rng(15)
    xy = rng.uniform(0, 100, (2500, 2))
    tin = delaunay_tin(xy, hills(*xy.T))
    frame = GridFrame(ORIGIN[0] + 10, ORIGIN[1] + 10, 0.5, 160, 160)
    truth = hills(*np.moveaxis(places(frame) - ORIGIN, -1, 0))
    smooth = np.sqrt(np.mean((smooth_grid(tin, *frame).heights - truth) ** 2))
    linear = np.sqrt(np.mean((sample_grid(tin, *frame) - truth) ** 2))
    assert smooth < 0.6 * linear
