"""Catchments: closed forms, every place against its path, invariances, and a D8 computation of another library."""

import numpy as np
import pytest
from shapely.geometry import Polygon

from plugin.core.drainage.analysis import analyse, catchment_at
from plugin.core.drainage.boundaries import outlines, strip_at, watersheds
from plugin.core.drainage.catchments import Outlet, find_catchments
from plugin.core.drainage.fates import end_numbers, find_fates
from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.inlets import inlet_triangles, joined, line_triangles
from plugin.core.drainage.paths import trace_paths
from plugin.core.drainage.ponds import PondOptions, find_ponds
from plugin.core.drainage.steps import Ends
from plugin.core.surface.locate import locate, weights_in
from plugin.core.surface.tin import Tin
from tests.core.drainage_grounds import cone, fivefold, gridded, iris, plane, shuffled, valley
from tests.core.surfaces import delaunay_tin, random_tin, real_ground, ring


def rounded(tin, decimals):
    """Heights rounded, so that much ground is level."""
    xyz = tin.vertices.copy()
    xyz[:, 2] = np.round(xyz[:, 2], decimals)
    return Tin(**{**vars(tin), "vertices": xyz})


def places_in(tin, count, seed=0):
    rng = np.random.default_rng(seed)
    xy = rng.uniform(tin.vertices[:, :2].min(axis=0), tin.vertices[:, :2].max(axis=0), (count, 2)) + tin.origin
    return xy[locate(tin, xy) >= 0]


def ends_by_strip(fates, xy):
    tin = fates.flow.tin
    triangle = locate(tin, xy)
    weight = weights_in(tin, triangle, xy - tin.origin)
    return fates.end[strip_at(fates, triangle, np.sum(weight * fates.flow.stream[triangle], axis=1))]


SURFACES = {
    "plane": plane,
    "valley": valley,
    "funnel": lambda: cone(-4.0),
    "cone": lambda: cone(4.0),
    "rough": lambda: random_tin(3000, 3),
    "rough with a hole": lambda: random_tin(3000, 4, keep=ring),
    "whole metres": lambda: rounded(random_tin(3000, 5), 0),
    "smooth": lambda: smooth(3000),
    "circle into a pit": lambda: iris(1.0),
    "circle from a summit": lambda: iris(-1.0),
}


def smooth(count):
    xy = np.random.default_rng(1).uniform(0, 100, (count, 2))
    return delaunay_tin(xy, 3 * np.sin(xy[:, 0] / 15) * np.cos(xy[:, 1] / 18))


@pytest.mark.parametrize("make", SURFACES.values(), ids=SURFACES)
def test_every_place_ends_where_its_path_does(make):
    tin = make()
    flow = build_flow(tin)
    fates = find_fates(flow)
    xy = places_in(tin, 3000)
    paths = trace_paths(flow, xy)
    by_path = end_numbers(flow, Ends(paths.end.astype(int), paths.vertex, paths.inlet))
    assert np.mean(ends_by_strip(fates, xy) == by_path) > 0.999  # but for places within rounding of a watershed
    assert fates.area.sum() == pytest.approx(tin.plan_area, rel=1e-13)
    whole = np.bincount(fates.triangle, fates.area, len(tin.triangles))
    u, v = tin.corners()[:, 1] - tin.corners()[:, 0], tin.corners()[:, 2] - tin.corners()[:, 0]
    np.testing.assert_allclose(whole, (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2, rtol=1e-9)
    assert np.all(fates.area >= 0)


@pytest.mark.parametrize("rise", [1.0, -1.0])
def test_water_in_a_circle_is_followed(rise):
    """Each triangle of the ring waits for the next: the circle is opened once."""
    fates = find_fates(build_flow(iris(rise)))
    assert fates.cuts == 1
    assert not np.any(fates.end == fates.nowhere)


def test_a_valley_is_divided_between_its_outlet_and_the_rim():
    """z = |x - 5| / 2 + y / 10: from (x, 0) of the south rim upward by 1 across and 1/5 along."""
    fates = find_fates(build_flow(valley(0.1)))
    catchments = find_catchments(fates)
    outlet = np.flatnonzero(catchments.outlet == Outlet.RIM_VERTEX)
    assert len(outlet) == 1
    np.testing.assert_allclose(catchments.xyz[outlet[0]], [5, 0, 0], atol=1e-12)
    # Two triangles 5 wide and 1 high at the south rim run off over it beside the outlet.
    assert catchments.area[outlet[0]] == pytest.approx(100 - 2 * 5 * 1 / 2, rel=1e-9)
    assert catchments.area.sum() == pytest.approx(100, rel=1e-13)


def test_an_inlet_takes_a_strip_of_a_plane():
    """The plane falls south; all water of the strip as wide as the inlet's triangle comes to it."""
    tin = gridded(lambda x, y: 0.1 * y + 0.0 * x, np.arange(0.0, 13.0, 3.0), np.arange(0.0, 13.0, 3.0))
    sink = inlet_triangles(tin, np.array([[5.0, 0.5]]) + tin.origin)  # in the triangle (3, 0), (6, 0), (6, 3)
    catchments = find_catchments(find_fates(build_flow(tin, sink)))
    inlet = catchments.outlet == Outlet.INLET
    assert np.sum(sink >= 0) == 1
    np.testing.assert_allclose(catchments.area[inlet], 3 * 12, rtol=1e-12)


@pytest.mark.parametrize("decimals", [6, 0])
def test_neither_order_nor_rotation_of_the_points_matters(decimals):
    tin = rounded(random_tin(2500, 8), decimals)
    one = analyse(fivefold(tin, False), options=PondOptions(min_depth=0.1))
    two = analyse(shuffled(fivefold(tin, False), 3)[0], options=PondOptions(min_depth=0.1))
    np.testing.assert_array_equal(one.catchments.outlet, two.catchments.outlet)
    np.testing.assert_allclose(one.catchments.area, two.catchments.area, rtol=1e-9, atol=1e-9)
    if decimals:  # level ground has ties that are broken by the axes
        three = analyse(fivefold(tin, True), options=PondOptions(min_depth=0.1))
        np.testing.assert_array_equal(one.catchments.outlet, three.catchments.outlet)
        np.testing.assert_allclose(one.catchments.area, three.catchments.area, rtol=1e-7, atol=1e-6)


def test_full_ponds_let_all_water_go():
    for tin in (random_tin(3000, 3, keep=ring), rounded(random_tin(3000, 5), 0), rounded(random_tin(3000, 5), 1)):
        flow = build_flow(tin)
        fates, ponds = find_fates(flow), find_ponds(flow)
        catchments = find_catchments(fates, ponds, overflow=True)
        assert not np.any(catchments.drains_nowhere)
        kept = find_catchments(fates, ponds)
        raw = find_catchments(fates)
        # Every pit is in a pond here, so the ground that drains nowhere is the same.
        a, b = (c.area[c.drains_nowhere].sum() for c in (kept, raw))
        assert a == pytest.approx(b, rel=1e-12)


def test_noise_does_not_divide_catchments():
    """A basin with 15 mm of noise: one pond, which has all ground inside the crest."""
    rng = np.random.default_rng(4)
    xy = rng.uniform(0, 60, (8000, 2))
    far = np.hypot(*(xy - 30).T)
    tin = delaunay_tin(xy, np.where(far < 20, far, 40 - far) * 0.05 + rng.normal(0, 0.015, len(xy)))
    result = analyse(tin, options=PondOptions(sigma=0.015))
    assert len(build_flow(tin).pits) > 100
    stays = result.catchments.drains_nowhere
    assert np.sum(stays) == 1
    assert result.catchments.area[stays][0] == pytest.approx(np.pi * 20**2, rel=0.03)


def test_inlets_share_the_ground_and_drain_ponds():
    tin = valley(0.1)
    places = np.array([[5.0, 3.03], [5.0, 7.03]])
    sink = inlet_triangles(tin, places + tin.origin)
    result = analyse(tin, sink)
    inlets = {
        int(n): a for n, a, o in zip(*(getattr(result.catchments, k) for k in ("number", "area", "outlet"))) if o == 3
    }
    # To the channel above y comes the ground above it less 5 m² beside it; an inlet takes what crosses its triangles,
    # which reach some decimetres down the 10 m wide valley.
    assert 10 * (10 - 7.03) - 5 < inlets[1] < 10 * (10 - 6.6) - 5
    assert inlets[0] == pytest.approx(10 * 4, abs=4)
    assert result.catchments.area.sum() == pytest.approx(100, rel=1e-13)


def test_a_line_takes_water_stretch_by_stretch():
    """A slot drain along y = 5 across a plane that falls south: each metre of it has its 5 m of ground above."""
    tin = gridded(lambda x, y: 0.02 * y + 0 * x, np.arange(0.0, 10.25, 0.25), np.arange(0.0, 10.25, 0.25))
    sink = line_triangles(tin, np.array([[0.0, 5.0], [10.0, 5.0]]) + tin.origin, 2.0)
    catchments = find_catchments(find_fates(build_flow(tin, sink)))
    area = {int(n): a for n, a in zip(catchments.number, catchments.area) if n >= 0}
    np.testing.assert_allclose([area[i] for i in range(6)], [5, 10, 10, 10, 10, 5], rtol=0.15)
    both = joined([sink, inlet_triangles(tin, np.array([[1.0, 1.0]]) + tin.origin)])
    assert both.max() == 6


@pytest.mark.parametrize("overflow", [False, True])
def test_polygons_have_the_areas_and_do_not_overlap(overflow):
    tin = random_tin(3000, 3, keep=ring)
    flow = build_flow(tin)
    catchments = find_catchments(find_fates(flow), find_ponds(flow, PondOptions(sigma=0.2)), overflow)
    parts = outlines(catchments.fates, catchments.of_strip)
    assert [part.label for part in parts] == list(range(len(catchments)))
    for part in parts:
        rings = [Polygon(r) for r in part.rings]
        assert all(r.is_valid for r in rings)
        signed = sum(r.area if r.exterior.is_ccw else -r.area for r in rings)
        assert signed == pytest.approx(catchments.area[part.label], rel=1e-9, abs=1e-7)
    xy = places_in(tin, 300, 5)
    label = catchment_at(catchments, xy)
    one, other, segments = watersheds(catchments.fates, catchments.of_strip)
    assert np.all(one < other)
    # A place a millimetre either side of the middle of a watershed is in the two catchments it parts.
    ends = segments[:, :, :2]
    along = ends[:, 1] - ends[:, 0]
    length = np.hypot(*along.T)
    long = np.flatnonzero(length > 0.05)
    aside = np.column_stack([-along[:, 1], along[:, 0]])[long] / length[long, None] * 1e-4
    middle = ends.mean(axis=1)[long] + tin.origin
    sides = np.sort([catchment_at(catchments, middle + s * aside) for s in (1, -1)], axis=0)
    assert np.mean((sides[0] == one[long]) & (sides[1] == other[long])) > 0.99
    assert np.all(label >= 0)


def d8_outlets(grid):
    """The cell of the rim (rows * columns,) to which D8 of pysheds leads the water of each cell, hollows filled."""
    affine = pytest.importorskip("affine")
    grids, views = pytest.importorskip("pysheds.grid"), pytest.importorskip("pysheds.view")
    rows, columns = grid.shape
    finder = views.ViewFinder(affine=affine.Affine(30, 0, 0, 0, -30, 0), shape=grid.shape, nodata=np.float64(-9999))
    raster = views.Raster(grid, finder)
    work = grids.Grid.from_raster(raster)
    flat = work.resolve_flats(work.fill_depressions(work.fill_pits(raster)))
    direction = np.asarray(work.flowdir(flat))
    row, column = np.mgrid[:rows, :columns]
    after = np.arange(grid.size)
    steps = {64: (-1, 0), 128: (-1, 1), 1: (0, 1), 2: (1, 1), 4: (1, 0), 8: (1, -1), 16: (0, -1), 32: (-1, -1)}
    for code, (down, right) in steps.items():
        r, c = row + down, column + right
        some = (direction == code) & (r >= 0) & (r < rows) & (c >= 0) & (c < columns)
        after[np.flatnonzero(some.ravel())] = (r * columns + c)[some]
    for _ in range(20):
        after = after[after]
    return after


@pytest.mark.filterwarnings("ignore")
def test_main_catchments_of_real_ground_agree_with_d8():
    """The elevation grid of matplotlib's sample data; catchments of more than 2 % of the area against D8 (pysheds).

    D8 knows eight ways a cell, so it parts water up to a cell or two off, and its channels cross the rim elsewhere.
    """
    xy, z, grid = real_ground()
    theirs = d8_outlets(grid)
    tin = delaunay_tin(xy, z)
    catchments = analyse(tin, overflow=True).catchments
    assert catchments.area.sum() == pytest.approx(tin.plan_area, rel=1e-13)
    ours = catchment_at(catchments, xy + tin.origin)
    main = np.flatnonzero(catchments.area > 0.02 * tin.plan_area)
    assert len(main) == 7
    common = union = 0
    for i in main:
        mine = ours == i
        same = theirs == np.bincount(theirs[mine]).argmax()
        common += np.sum(mine & same)
        union += np.sum(mine | same)
        assert np.sum(mine & same) / np.sum(mine | same) > 0.94
    assert common / union >= 0.95
