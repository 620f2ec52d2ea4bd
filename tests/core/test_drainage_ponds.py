"""Ponds against closed forms, Qhull, GEOS and a plain search; nesting, noise, invariances."""

import numpy as np
import pytest
from scipy.spatial import ConvexHull, HalfspaceIntersection
from shapely.geometry import Polygon, box

from plugin.core.contours.spots import SpotKind, find_spots
from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.inlets import inlet_triangles
from plugin.core.drainage.ponds import PondOptions, find_ponds, noise_chance
from plugin.core.drainage.shores import pond_shores
from plugin.core.drainage.steps import PathEnd
from plugin.core.messages import SurveyError
from plugin.core.surface.tin import Tin
from tests.core.drainage_grounds import cone, faceted, gridded, gutter, shuffled, turn, turned
from tests.core.surfaces import delaunay_tin, random_tin


def ponds_of(tin, sink=None, **options):
    return find_ponds(build_flow(tin, sink), PondOptions(**options))


def with_heights(tin: Tin, z: np.ndarray) -> Tin:
    return Tin(**{**vars(tin), "vertices": np.column_stack([tin.vertices[:, :2], z])})


def basins(x, y):
    """Two square basins 2 and 1 deep with a saddle at 3 between them, in a level brim at 4."""
    deep = np.maximum(np.abs(x - 4), np.abs(y - 4)) + 1
    flat = np.maximum(np.abs(x - 8), np.abs(y - 4)) + 2
    return np.minimum(np.minimum(deep, flat), 4.0)


def test_a_pyramid_of_water():
    ponds = ponds_of(cone(-4.0))
    np.testing.assert_allclose([ponds.depth[0], ponds.area[0], ponds.volume[0]], [4, 192, 256], rtol=1e-12)
    assert (len(ponds), ponds.spill_end[0], ponds.spills_to[0], ponds.parent[0]) == (1, PathEnd.RIM, -1, -1)


def sink_on_tilted_plane():
    """A square pyramid hollow in a plane that falls eastward, its brim in the plane, with plain ground around."""

    def plane(x):
        return 10 - 0.05 * x

    ring = [(8.0, 8.0), (16.0, 8.0), (16.0, 16.0), (8.0, 16.0)]
    outer = [(0.0, 0.0), (24.0, 0.0), (24.0, 24.0), (0.0, 24.0)]
    corners = [(12.8, 11.2, 8.0)] + [(x, y, plane(x)) for x, y in ring + outer]
    faces = [(0, 1 + i, 1 + (i + 1) % 4) for i in range(4)]
    for i in range(4):
        j = (i + 1) % 4
        faces += [(1 + i, 5 + i, 5 + j), (1 + i, 5 + j, 1 + j)]
    return faceted(corners, faces, 8), np.array(corners[:5])


def test_a_sink_on_a_tilted_plane():
    """Level, spill point and volume in closed form; the volume by Qhull: the body over the faces, under the level."""
    tin, (pit, *brim) = sink_on_tilted_plane()
    ponds = ponds_of(tin)
    level = 10 - 0.05 * 16
    assert len(ponds) == 1
    np.testing.assert_allclose([ponds.level[0], ponds.depth[0]], [level, level - 8], rtol=1e-12)
    assert ponds.spill_xyz[0, 0] == pytest.approx(16)
    halves = [[0, 0, 1, -level]]
    for i in range(4):
        normal = np.cross(brim[i] - pit, brim[(i + 1) % 4] - pit)
        halves.append([*-normal, normal @ pit])
    body = HalfspaceIntersection(np.array(halves), np.array([*pit[:2], 8.5]))
    np.testing.assert_allclose(ponds.volume[0], ConvexHull(body.intersections).volume, rtol=1e-9)
    shore = pond_shores(build_flow(tin), ponds)[0]
    assert len(shore) == 1
    assert Polygon(shore[0]).exterior.is_ccw
    np.testing.assert_allclose(Polygon(shore[0]).area, ponds.area[0], rtol=1e-9)


def test_two_basins_nest_in_a_third():
    tin = gridded(basins, np.arange(13.0), np.arange(9.0))
    ponds = ponds_of(tin)
    np.testing.assert_allclose(ponds.level, [4, 3, 3])
    np.testing.assert_allclose(ponds.depth, [3, 2, 1])
    np.testing.assert_array_equal(ponds.parent, [-1, 0, 0])
    np.testing.assert_array_equal(ponds.spills_to, [-1, 2, 1])
    np.testing.assert_array_equal(ponds.spill[1], ponds.spill[2])
    # No triangle is cut by a level, so the volume is that of prisms over whole triangles.
    corner = tin.vertices[tin.triangles]
    west = corner[:, :, 0].mean(axis=1) < 6.5
    for pond, level, where in ((0, 4, west | ~west), (1, 3, west), (2, 3, ~west)):
        prisms = 0.5 * np.clip(level - corner[:, :, 2], 0, None).mean(axis=1)
        np.testing.assert_allclose(ponds.volume[pond], prisms[where].sum(), rtol=1e-12)
    assert ponds.vertices[2] == 1


def test_a_pond_spills_into_the_next_lower_one():
    """Three hollows down a slope, each spilling into the next, the last off the rim."""
    x = np.arange(0.0, 25.0)
    floor = 10 - 0.2 * x - np.isin(x, (6.0, 12.0, 18.0)) * 1.5

    def height(u, v):
        return np.where(np.abs(v - 4) < 0.5, np.interp(u, x, floor), 20 + np.abs(v - 4) - u / 10)

    ponds = ponds_of(gridded(height, x, np.arange(9.0)))
    order = np.argsort(ponds.pit_xyz[:, 0])
    assert len(ponds) == 3
    np.testing.assert_array_equal(ponds.spills_to[order], [order[1], order[2], -1])
    np.testing.assert_array_equal(ponds.spill_end[order], [PathEnd.PIT, PathEnd.PIT, PathEnd.RIM])
    np.testing.assert_allclose(ponds.spill_xyz[order, 0], [7, 13, 19])


def test_an_inlet_drains_the_pond_it_is_in():
    tin = gridded(basins, np.arange(13.0), np.arange(9.0))
    sink = inlet_triangles(tin, np.array([[8.0, 4.0]]) + tin.origin)
    ponds = ponds_of(tin, sink)
    assert len(ponds) == 1  # the deep basin; the other has its inlet at the bottom
    assert (ponds.level[0], ponds.spill_end[0], ponds.inlet[0]) == (3, PathEnd.INLET, 0)


def reference(tin, pit, level):
    """Area and volume of water at ``level`` around ``pit``: a flood over vertices, triangles clipped by GEOS."""
    z, near = tin.vertices[:, 2], {}
    for t in tin.triangles.tolist():
        for a in t:
            near.setdefault(a, set()).update(t)
    seen, todo = {pit}, [pit]
    while todo:
        for v in near[todo.pop()]:
            if z[v] < level and v not in seen:
                seen.add(v)
                todo.append(v)
    area = volume = 0.0
    for t in tin.triangles.tolist():
        if not seen & set(t):
            continue
        corner = tin.vertices[t]
        gx, gy, g0 = np.linalg.solve(np.column_stack([corner[:, :2], np.ones(3)]), corner[:, 2])
        # The half-plane of lower ground as a large rectangle.
        slope = np.hypot(gx, gy)
        down, along = -np.array([gx, gy]) / slope, np.array([-gy, gx]) / slope
        middle = corner[:, :2].mean(axis=0)
        foot = middle + down * (gx * middle[0] + gy * middle[1] + g0 - level) / slope
        half = Polygon(
            [foot + 500 * along, foot - 500 * along, foot - 500 * along + 500 * down, foot + 500 * along + 500 * down]
        )
        wet = Polygon(corner[:, :2])
        if corner[:, 2].max() > level:
            wet = wet.intersection(half)
        area += wet.area
        if wet.area > 0:
            volume += wet.area * (level - (gx * wet.centroid.x + gy * wet.centroid.y + g0))
    return area, volume


def test_all_ponds_of_rough_ground_against_a_flood():
    tin = random_tin(800, 5)
    ponds = ponds_of(tin)
    assert len(ponds) > 40
    assert np.sum(ponds.parent >= 0) > 10
    for i in range(len(ponds)):
        area, volume = reference(tin, int(ponds.pit[i]), ponds.level[i])
        np.testing.assert_allclose([ponds.area[i], ponds.volume[i]], [area, volume], rtol=1e-7, atol=1e-9)


def test_ponds_are_as_deep_as_pits_stand_out():
    """The deepest pond of a pit is its prominence, which spot heights find another way."""
    tin = random_tin(5000, 6)
    ponds, spots = ponds_of(tin), find_spots(tin)
    deepest = np.zeros(len(tin.vertices))
    np.maximum.at(deepest, ponds.pit, ponds.depth)
    pits = spots.kind == SpotKind.PIT
    np.testing.assert_allclose(deepest[spots.vertex[pits]], spots.prominence[pits], atol=1e-12)
    assert np.count_nonzero(deepest) == np.sum(pits)


def test_a_parent_holds_its_parts():
    ponds = ponds_of(random_tin(5000, 6))
    part = np.flatnonzero(ponds.parent >= 0)
    assert np.all(ponds.level[part] < ponds.level[ponds.parent[part]])
    inner = np.bincount(ponds.parent[part], ponds.volume[part], len(ponds))
    assert np.all(inner <= ponds.volume)


def test_shores_enclose_the_area():
    tin = random_tin(3000, 8)
    flow = build_flow(tin)
    ponds = find_ponds(flow, PondOptions(min_depth=0.15))
    assert len(ponds) > 50
    west, south, east, north = tin.bounds
    for i, rings in enumerate(pond_shores(flow, ponds)):
        signed = [Polygon(ring).area * (1 if Polygon(ring).exterior.is_ccw else -1) for ring in rings]
        assert sum(signed) == pytest.approx(ponds.area[i], rel=1e-7, abs=1e-7)
        assert all(box(west, south, east, north).covers(Polygon(ring)) for ring in rings)


def level_noise(seed, count=20_000):
    rng = np.random.default_rng(seed)
    tin = delaunay_tin(rng.uniform(0, 100, (count, 2)), np.zeros(count))
    return with_heights(tin, 50 + rng.normal(0, 0.015, len(tin.vertices)))


def test_hollows_that_noise_makes_are_not_reported():
    """Level ground with 15 mm of noise has thousands of pits; a false pond in at most 1 of 20 surveys."""
    found = [len(ponds_of(level_noise(seed), sigma=0.015)) for seed in range(12)]
    assert sum(n > 0 for n in found) <= 2  # 3 or more of 12 has a probability of 2 % at 5 % each
    assert len(ponds_of(level_noise(0, 3000), sigma=0.0)) > 300


@pytest.mark.parametrize(("cross", "fall"), [(0.05, 0.01), (0.02, 0.005), (0.05, 0.002)])
def test_dams_of_noise_in_a_gutter_are_no_ponds(cross, fall):
    """The gutter falls all the way but for 10 mm of noise, which dams it many times."""
    grounds = [build_flow(gutter(seed, cross, fall)) for seed in range(8)]
    assert all(find_ponds(flow).depth.max() > 0.02 for flow in grounds)
    assert sum(len(find_ponds(flow, PondOptions(sigma=0.01))) > 0 for flow in grounds) <= 2


def test_a_real_hollow_stands_out_from_the_noise():
    tin = level_noise(3)
    x, y = tin.vertices[:, :2].T
    hollow = 0.04 * np.clip(1 - np.hypot(x - 50, y - 50) / 8, 0, None)
    ponds = ponds_of(with_heights(tin, tin.vertices[:, 2] - hollow), sigma=0.015)
    assert len(ponds.outermost) == 1
    assert np.hypot(*(ponds.pit_xyz[ponds.outermost[0], :2] - 50)) < 8
    assert ponds.chance[0] < 1e-4
    assert ponds.depth_sigma[0] == pytest.approx(0.015 * np.sqrt(2))
    # Not the noise pits on its floor, which would be parts of it.
    assert len(ponds) <= 2


def test_order_and_turning_do_not_matter():
    tin = random_tin(3000, 9)
    one = ponds_of(tin, min_depth=0.05)
    mixed, number = shuffled(tin, 1)
    two, three = ponds_of(mixed, min_depth=0.05), ponds_of(turned(tin), min_depth=0.05)
    for name in ("depth", "level", "area", "volume", "parent", "spills_to", "spill_end"):
        np.testing.assert_allclose(getattr(one, name), getattr(two, name), rtol=1e-9, atol=1e-12)
        np.testing.assert_allclose(getattr(one, name), getattr(three, name), rtol=1e-9, atol=1e-12)
    np.testing.assert_array_equal(number[one.pit], two.pit)
    np.testing.assert_allclose(turn(one.spill_xyz[:, :2]), three.spill_xyz[:, :2], atol=1e-9)


def test_level_ground_is_no_pond():
    tin = gridded(
        lambda x, y: np.where((np.abs(x - 5) <= 2) & (np.abs(y - 5) <= 2), 1.0, 2.0), np.arange(11.0), np.arange(11.0)
    )
    ponds = ponds_of(tin)  # a box with a level floor of 4 x 4
    np.testing.assert_allclose(ponds.depth, [1.0])
    assert len(ponds_of(with_heights(tin, np.full(len(tin.vertices), 7.0)))) == 0


@pytest.mark.parametrize("options", [{"sigma": -0.01}, {"min_depth": np.nan}, {"max_chance": 1.5}])
def test_wrong_options_are_refused(options):
    with pytest.raises(SurveyError) as caught:
        ponds_of(cone(-4.0), **options)
    assert caught.value.code == "bad_pond_options"
    assert "Correct it" in str(caught.value)


def test_the_chance_of_a_dam_is_that_of_one_height_above_a_mean():
    """One height of the brim stands out from the mean of nine under water: counted in draws."""
    draws = np.random.default_rng(4).normal(size=(400_000, 10))
    counted = np.mean(draws[:, 0] - draws[:, 1:].mean(axis=1) > 1.5)
    one = np.ones(1)
    chance = noise_chance(0.015 * one, 0.016 * one, np.array([9]), one, 0.01 * one)
    assert chance[0] == pytest.approx(counted, rel=0.03)
