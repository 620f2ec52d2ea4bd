"""Paths of steepest descent against ground whose paths are known in closed form, and invariances."""

import numpy as np
import pytest

from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.inlets import inlet_triangles
from plugin.core.drainage.paths import along_lines, flow_arrows, in_polygons, trace_paths
from plugin.core.drainage.ponds import PondOptions, find_ponds
from plugin.core.drainage.steps import PathEnd
from tests.core.drainage_grounds import cone, gridded, gutter, iris, plane, shuffled, turn, turned, valley
from tests.core.surfaces import random_tin


def local_paths(tin, xy, **more):
    """Paths from places in metres from the TIN's origin."""
    return trace_paths(build_flow(tin, **more), np.asarray(xy, float).reshape(-1, 2) + tin.origin)


def last(paths):
    return paths.xyz[paths.start[1:] - 1]


def test_on_a_plane_paths_are_straight_and_end_at_the_rim():
    tin = plane(east=0.03, north=0.05)
    starts = np.random.default_rng(5).uniform(20, 80, (200, 2))
    paths = local_paths(tin, starts)
    assert np.all(paths.end == PathEnd.RIM)
    for i in range(len(paths)):
        xyz = paths.xyz[paths.start[i] : paths.start[i + 1]]
        moved = xyz[:, :2] - starts[i]
        assert np.abs(moved[:, 0] * 0.05 - moved[:, 1] * 0.03).max() < 1e-9
        assert np.all(np.diff(xyz[:, 2]) < 0)
        np.testing.assert_allclose(xyz[:, 2], 10 + xyz[:, :2] @ [0.03, 0.05], atol=1e-12)


def test_a_plane_whose_slope_runs_along_edges():
    """Straight west along the rows of a grid, through vertices."""
    tin = gridded(lambda x, y: 0.1 * x, np.arange(11.0), np.arange(11.0))
    paths = local_paths(tin, [[9.3, 4.0], [7.0, 6.0], [3.25, 2.5]])
    np.testing.assert_allclose(last(paths)[:, :2], [[0, 4], [0, 6], [0, 2.5]], atol=1e-9)
    np.testing.assert_allclose(paths.length, [9.3, 7, 3.25], atol=1e-9)


def test_from_a_cone_straight_down_each_face():
    tin = cone(4.0)
    paths = local_paths(tin, [[22.0, 21.0], [18.5, 20.1]])
    # The face between (8, 0) and (6, 6) has the outer normal (6, 2); its foot is where 6 x + 2 y = 48.
    normal = np.array([6.0, 2.0])
    start = np.array([2.0, 1.0])
    foot = start + normal * (48 - normal @ start) / (normal @ normal)
    np.testing.assert_allclose(last(paths)[0, :2], foot + 20, atol=1e-9)
    normal, start = np.array([-6.0, 2.0]), np.array([-1.5, 0.1])
    foot = start + normal * (48 - normal @ start) / (normal @ normal)
    np.testing.assert_allclose(last(paths)[1], [*(foot + 20), 0.0], atol=1e-9)


def test_down_a_funnel_to_the_pit():
    """Across the face to the channel between two faces, and along it to the middle."""
    tin = cone(-4.0)
    paths = local_paths(tin, [[24.0, 21.0]])
    assert paths.end[0] == PathEnd.PIT
    np.testing.assert_allclose(last(paths)[0], [20, 20, -4], atol=1e-9)
    assert paths.vertex[0] == np.flatnonzero(tin.vertices[:, 2] == -4)[0]
    # (4, 1) moves along -(6, 2) until y = 0, the channel: (1, 0).
    assert paths.length[0] == pytest.approx(np.hypot(3, 1) + 1, abs=1e-9)


def test_down_the_sides_of_a_valley_and_along_its_bed():
    tin = valley(fall=0.1)
    starts = np.array([[2.0, 8.0], [8.5, 6.0], [5.0, 5.05], [4.0, 0.1]])
    paths = local_paths(tin, starts)
    np.testing.assert_allclose(last(paths)[:3], [[5, 0, 0]] * 3, atol=1e-9)
    across = np.abs(starts[:2, 0] - 5)
    bed = starts[:2, 1] - across / 5  # the sides fall 0.5 across for 0.1 along
    np.testing.assert_allclose(paths.length[:2], across * np.hypot(1, 0.2) + bed, atol=1e-9)
    np.testing.assert_allclose(last(paths)[3], [4.5, 0, 0.25], atol=1e-9)  # off the rim before it comes to the bed


def test_a_saddle_sends_water_to_two_sides():
    tin = gridded(lambda x, y: np.abs(x - 5) - np.abs(y - 5), np.arange(11.0), np.arange(11.0))
    paths = local_paths(tin, [[6.5, 6.25], [3.5, 4.5], [5.0, 5.0], [7.0, 5.0]])
    np.testing.assert_allclose(last(paths)[:2], [[5, 10, -5], [5, 0, -5]], atol=1e-9)
    assert paths.length[0] == pytest.approx(1.5 * np.sqrt(2) + 10 - 7.75, abs=1e-9)
    # On the saddle and on its ridge both ways are equally steep: the one farther south is taken.
    np.testing.assert_allclose(last(paths)[2:], [[5, 0, -5], [5, 0, -5]], atol=1e-9)


def test_level_ground_drains_by_the_shortest_way():
    """A terrace 4 wide between a bank above and one below: straight to the nearest vertex of its edge, then down."""
    tin = gridded(lambda x, y: np.clip(x - 6, 0, None) + np.clip(x - 2, None, 0), np.arange(9.0), np.arange(21.0))
    assert np.sum(build_flow(tin).level) == 4 * 20 * 2
    paths = local_paths(tin, [[4.4, 10.2], [7.5, 9.0], [7.5, 2.0]])
    assert np.all(paths.end == PathEnd.RIM)
    # From (4.4, 10.2) to the corner of its triangle with the shortest way, (4, 10), and along the row.
    np.testing.assert_allclose(last(paths)[0, :2], [0, 10], atol=1e-9)
    np.testing.assert_allclose(last(paths)[1, :2], [0, 9], atol=1e-9)
    np.testing.assert_allclose(last(paths)[2, :2], [6, 0], atol=1e-9)  # the rim is nearer than the bank below
    assert paths.length[0] == pytest.approx(np.hypot(0.4, 0.2) + 4, abs=1e-9)


def test_a_level_floor_is_one_pit():
    tin = gridded(
        lambda x, y: np.clip(np.maximum(abs(x - 5), abs(y - 5)) - 2, 0, None), np.arange(11.0), np.arange(11.0)
    )
    flow = build_flow(tin)
    assert len(flow.pits) == 1
    paths = local_paths(tin, np.random.default_rng(3).uniform(1, 9, (100, 2)))
    assert np.all(paths.end == PathEnd.PIT)
    np.testing.assert_array_equal(last(paths)[:, :2], [[3, 3]] * 100)  # the vertex farthest west, then south


def test_water_ends_at_a_given_inlet():
    tin = valley()
    sink = inlet_triangles(tin, np.array([[5.0, 3.03]]) + tin.origin)
    paths = local_paths(tin, [[2.0, 8.0], [8.5, 6.0], [2.0, 2.0]], sink=sink)
    assert list(paths.end) == [PathEnd.INLET, PathEnd.INLET, PathEnd.RIM]
    assert list(paths.inlet) == [0, 0, -1]
    np.testing.assert_allclose(last(paths)[:2, :2], [[5, 3.1]] * 2, atol=1e-9)


def test_places_off_the_surface_give_empty_paths():
    paths = local_paths(plane(), [[-5.0, 5.0], [50, 50]])
    assert paths.end[0] == PathEnd.OUTSIDE
    assert len(paths.path(0)) == 0
    assert paths.length[0] == 0
    assert paths.length[1] > 0


def test_paths_fall_all_the_way_on_rough_ground():
    tin = random_tin(5000, 7)
    paths = local_paths(tin, np.random.default_rng(1).uniform(0, 100, (2000, 2)))
    inner = np.setdiff1d(np.arange(len(paths.xyz) - 1), paths.start[1:] - 1)
    assert np.all(np.diff(paths.xyz[:, 2])[inner] < 0)
    assert not np.any(paths.end == PathEnd.UNDECIDED)


@pytest.mark.parametrize("decimals", [None, 0])
def test_the_order_of_points_does_not_matter(decimals):
    """Nor does it with heights to the metre, on which much ground is level."""
    tin = random_tin(3000, 11)
    if decimals is not None:
        xyz = tin.vertices.copy()
        xyz[:, 2] = np.round(xyz[:, 2], decimals)
        tin = type(tin)(**{**vars(tin), "vertices": xyz})
        assert np.sum(build_flow(tin).level) > 100
    starts = np.random.default_rng(2).uniform(0, 100, (500, 2))
    other, number = shuffled(tin, 4)
    one, two = local_paths(tin, starts), local_paths(other, starts)
    np.testing.assert_array_equal(one.start, two.start)
    np.testing.assert_allclose(one.xyz, two.xyz, rtol=0, atol=1e-9)
    np.testing.assert_array_equal(np.where(one.vertex >= 0, number[one.vertex], -1), two.vertex)


def test_turning_the_site_turns_the_paths():
    tin = random_tin(3000, 12)
    starts = np.random.default_rng(2).uniform(0, 100, (300, 2))
    one, two = local_paths(tin, starts), local_paths(turned(tin), turn(starts))
    np.testing.assert_array_equal(one.end, two.end)
    np.testing.assert_allclose(turn(last(one)[one.end > 0, :2]), last(two)[two.end > 0, :2], rtol=0, atol=1e-9)


def test_water_that_goes_around_comes_to_the_pit():
    """Over triangles that each pass water on to the next, and in the end to the middle."""
    paths = local_paths(iris(1.0), [[30.0, 20.5], [12.0, 17.0]])
    np.testing.assert_allclose(last(paths), [[20, 20, 0]] * 2, atol=1e-9)


def test_starts_along_lines_and_in_polygons():
    line = np.array([[0, 0], [3, 4], [3, 10.5]])
    np.testing.assert_allclose(along_lines([line], 5.0), [[0, 0], [3, 4], [3, 9], [3, 10.5]])
    ring = np.array([[0.5, 0.5], [4.5, 0.5], [4.5, 4.5], [0.5, 4.5]])
    hole = np.array([[1.5, 1.5], [2.5, 1.5], [2.5, 2.5], [1.5, 2.5]])
    places = in_polygons([[ring, hole]], 1.0)
    assert len(places) == 15
    assert [2.0, 2.0] not in places.tolist()


def test_paths_go_on_over_hollows_that_do_not_count():
    """Down a noisy gutter to the rim, though it has dozens of pits; over a pond only when it overflows."""
    flow = build_flow(gutter(6))
    ponds = find_ponds(flow, PondOptions(sigma=0.01))
    starts = np.column_stack([np.full(20, 25.0), np.linspace(10, 45, 20)]) + flow.tin.origin
    assert np.all(trace_paths(flow, starts).end == PathEnd.PIT)
    paths = trace_paths(flow, starts, ponds.passages(flow))
    assert np.all(paths.end == PathEnd.RIM)
    np.testing.assert_allclose(last(paths)[:, :2], [[25, 0]] * 20, atol=1)
    funnel = build_flow(cone(-4.0))
    ponds = find_ponds(funnel)
    start = np.array([[24.0, 21.0]]) + funnel.tin.origin
    assert trace_paths(funnel, start, ponds.passages(funnel)).end[0] == PathEnd.PIT
    full = trace_paths(funnel, start, ponds.passages(funnel, overflow=True))
    assert full.end[0] == PathEnd.RIM
    np.testing.assert_allclose(full.xyz[-2:], [[20, 20, -4], ponds.spill_xyz[0]], atol=1e-9)


def test_arrows_of_a_mean_gradient_are_free_of_noise():
    tin = gutter(3, cross=0.0, fall=0.02)
    alone, mean = flow_arrows(tin, 5.0), flow_arrows(tin, 5.0, window=6.0)
    assert np.median(np.abs(alone.direction - 180)) > 10
    assert np.median(np.abs(mean.direction - 180)) < 6


def test_arrows_point_down_with_the_slope():
    tin = plane(east=0.0, north=0.05)
    arrows = flow_arrows(tin, 10.0)
    assert len(arrows.slope) == 81
    np.testing.assert_allclose(arrows.slope, 0.05, atol=1e-9)
    np.testing.assert_allclose(arrows.direction, 180, atol=1e-6)
