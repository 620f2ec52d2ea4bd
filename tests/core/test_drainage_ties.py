"""Water on ground full of ties, against a plain search in whole numbers; ``HUMMOCK_TIES`` says how many grounds."""

import os

import numpy as np
import pytest

from plugin.core.drainage.catchments import Outlet, find_catchments
from plugin.core.drainage.fates import find_fates
from plugin.core.drainage.flow import build_flow
from plugin.core.drainage.ponds import find_ponds
from plugin.core.drainage.steps import PathEnd
from plugin.core.earthwork.storage import basin_storage
from plugin.core.messages import SurveyError
from tests.core.drainage_grounds import gridded
from tests.core.surfaces import delaunay_tin
from tests.core.tied_water import hollows, leaving, neighbours_of, part_of, tied_ground, water

COUNT = int(os.environ.get("HUMMOCK_TIES", "300"))
PARTS = 10


def grounds(part):
    return (tied_ground(seed) for seed in range(part, COUNT, PARTS))


def check_ponds(tin, sink):
    flow = build_flow(tin, sink)
    ponds, rank = find_ponds(flow), flow.rank
    wanted = {(h.vertices, h.level): h for h in hollows(tin, sink)}
    near, z = neighbours_of(tin), tin.vertices[:, 2]
    found = []
    for pit, level in zip(ponds.pit.tolist(), ponds.level.tolist()):
        found.append((part_of(pit, near, {v for v in near if z[v] < level}), level))
    assert sorted(map(key, found)) == sorted(map(key, wanted))
    out = leaving(tin, sink)
    for i, (vertices, level) in enumerate(found):
        hollow = wanted[vertices, level]
        assert ponds.depth[i] == level - min(z[list(vertices)])
        assert ponds.vertices[i] == len(vertices)
        np.testing.assert_allclose(ponds.area[i], float(hollow.area), rtol=1e-12)
        np.testing.assert_allclose(ponds.volume[i], float(hollow.volume), rtol=1e-12)
        around = [k for k, (other, _) in enumerate(found) if vertices < other]
        assert ponds.parent[i] == (min(around, key=lambda k: len(found[k][0])) if around else -1)
        # water leaves over a vertex of the brim, at the level, and none goes round in a circle
        spill = int(ponds.spill[i])
        flooded = part_of(min(vertices), near, {v for v in near if z[v] <= level})
        assert z[spill] == level
        assert spill in flooded
        way = [i]
        while True:
            to = int(ponds.spills_to[way[-1]])
            while to >= 0 and ponds.parent[to] >= 0 and not vertices <= found[ponds.parent[to]][0]:
                to = int(ponds.parent[to])  # once full, it rises as a part of that
            if to < 0 or to in way:
                break
            way.append(to)
        if hollow.open:
            assert to < 0
            assert ponds.spill_end[way[-1]] == (PathEnd.RIM if ponds.inlet[way[-1]] < 0 else PathEnd.INLET)
            assert flooded & out
        else:  # to the deepest of those that meet; the deepest to another of them
            whole = found[ponds.parent[i]][0]
            parts = [k for k in range(len(found)) if ponds.parent[k] == ponds.parent[i]]
            deepest = min(parts, key=lambda k: rank[ponds.pit[k]])
            assert to >= 0
            assert deepest in way
            assert all(found[k][0] < whole for k in way)
    return ponds


def key(hollow):
    return sorted(hollow[0]), hollow[1]


@pytest.mark.parametrize("part", range(PARTS))
def test_ponds(part):
    assert sum(len(check_ponds(tin, sink)) for tin, sink in grounds(part)) >= 5


def check_storage(tin):
    """The basin at every pit is the outermost pond there, at each level as a plain search has it."""
    flow = build_flow(tin)
    ponds = find_ponds(flow)
    near, z = neighbours_of(tin), tin.vertices[:, 2]
    outermost = [h for h in hollows(tin, None) if h.open]
    for pit in flow.pits.tolist():
        around = [h for h in outermost if pit in h.vertices]
        place = tin.vertices[pit, :2] + tin.origin
        if not around:
            with pytest.raises(SurveyError) as caught:
                basin_storage(tin, place)
            assert caught.value.code == "earthwork.holds_nothing"
            continue
        (hollow,) = around
        low = int(min(z[list(hollow.vertices)]))
        found = basin_storage(tin, place, steps=hollow.level - low)
        (same,) = (k for k in ponds.outermost if ponds.pit[k] in hollow.vertices)
        assert found.capacity == pytest.approx(ponds.volume[same], rel=1e-12)
        np.testing.assert_array_equal(found.pit, ponds.pit_xyz[same] + np.append(tin.origin, 0))
        np.testing.assert_array_equal(found.spill, ponds.spill_xyz[same] + np.append(tin.origin, 0))
        lowest = int(ponds.pit[same])
        for stage in found.curve[1:]:
            below = {v for v in near if z[v] < stage.level}
            area, volume = water(tin, part_of(lowest, near, below), int(stage.level))
            assert (stage.area, stage.volume) == pytest.approx((float(area), float(volume)), rel=1e-12)
    return len(outermost)


@pytest.mark.parametrize("part", range(PARTS))
def test_storage_is_that_of_the_outermost_pond(part):
    assert sum(check_storage(tin) for tin, _ in grounds(part)) >= 5


def check_catchments(tin, sink):
    """All water of a pit in an outermost pond is that pond's; with overflow none stays; nothing is counted twice."""
    flow = build_flow(tin, sink)
    ponds, fates = find_ponds(flow), find_fates(flow)
    outermost = [h for h in hollows(tin, sink) if h.open]
    each = find_catchments(fates)
    assert each.area.sum() == pytest.approx(tin.plan_area, rel=1e-12)
    own = dict(zip(each.number[each.outlet == Outlet.PIT].tolist(), each.area[each.outlet == Outlet.PIT]))
    held = find_catchments(fates, ponds)
    assert held.area.sum() == pytest.approx(tin.plan_area, rel=1e-12)
    assert not np.any(held.outlet == Outlet.PIT)  # hollows of no depth are none
    areas = {int(held.number[k]): held.area[k] for k in np.flatnonzero(held.outlet == Outlet.POND)}
    for pond in ponds.outermost.tolist():
        (hollow,) = (h for h in outermost if int(ponds.pit[pond]) in h.vertices)
        least = sum(area for pit, area in own.items() if pit in hollow.vertices)
        more = sum(area for pit, area in own.items() if not any(pit in h.vertices for h in outermost))
        assert least * (1 - 1e-12) <= areas.get(pond, 0.0) <= least + more + 1e-9
    over = find_catchments(fates, ponds, overflow=True)
    assert over.area.sum() == pytest.approx(tin.plan_area, rel=1e-12)
    assert not np.any(over.drains_nowhere | (over.outlet == Outlet.UNDECIDED))
    return len(outermost)


@pytest.mark.parametrize("part", range(PARTS))
def test_catchments_of_ponds(part):
    assert sum(check_catchments(tin, sink) for tin, sink in grounds(part)) >= 5


def three_basins(wall, height=13.0):
    """Three basins 3 m deep in a row behind walls at 11 and at ``wall``, in a brim at ``height``."""

    def ground(x, y):
        bed = np.choose(np.searchsorted([7.0, 13.0], x), [8.0, 7.5, 8.5])
        bed = np.where(x == 7, 11.0, np.where(x == 13, wall, bed))
        return np.where((np.abs(x - 10) >= 9) | (np.abs(y - 5) >= 4), height, bed)

    return gridded(ground, np.arange(21.0), np.arange(11.0))


def test_three_basins_behind_walls_of_one_height():
    """A wall 1 mm higher changes little; with walls of one height all three join at once, in a fourth."""
    even, odd = (find_ponds(build_flow(three_basins(wall))) for wall in (11.0, 11.001))
    assert (len(even), len(odd)) == (4, 5)
    np.testing.assert_array_equal(even.parent[1:], 0)
    assert even.volume[0] == pytest.approx(odd.volume[0], abs=0.1)
    assert even.volume[0] > even.volume[1:].sum() + 2 * even.area[1:].sum() * 0.9
    assert basin_storage(three_basins(11.0)).capacity == pytest.approx(even.volume[0], rel=1e-12)


@pytest.mark.parametrize("step", [0.01, 0.001])
def test_surveys_of_rounded_heights(step):
    """Bumpy surveys with heights in whole centimetres and millimetres: every outermost pond is what the basin holds."""
    for seed in range(max(3, COUNT // 300)):
        rng = np.random.default_rng(seed)
        xy = rng.uniform(0, 60, (1500, 2))
        z = 10 + 0.4 * np.sin(xy[:, 0] / 4) * np.cos(xy[:, 1] / 5) + rng.normal(0, 0.03, len(xy))
        tin = delaunay_tin(xy, np.round(z / step) * step)
        ponds = find_ponds(build_flow(tin))
        big = ponds.outermost[np.argsort(-ponds.volume[ponds.outermost])[:8]]
        for k in big.tolist():
            found = basin_storage(tin, ponds.pit_xyz[k, :2] + tin.origin, steps=1)
            assert found.capacity == pytest.approx(ponds.volume[k], rel=1e-9)
            children = np.flatnonzero(ponds.parent == k)
            assert np.all(ponds.level[children] < ponds.level[k])
