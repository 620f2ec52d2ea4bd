"""Water that stands in a gutter, against an independent flood of a fine grid of the same surface."""

from __future__ import annotations

import heapq
from typing import Optional, Tuple

import numpy as np
import pytest

from plugin.core.alignment.indications import check_gutter
from plugin.core.alignment.line import Alignment, make_alignment
from plugin.core.alignment.standing import StandingWater
from plugin.core.alignment.study import RoadOptions, study_road
from plugin.core.surface.locate import heights_at
from plugin.core.surface.tin import Tin
from tests.core.surfaces import ORIGIN, delaunay_tin

LENGTH, WIDTH, EDGE = 60.0, 12.0, 3.0
CELL = 0.1


def street(seed: int) -> Tuple[Alignment, Tin]:
    """A crowned street with kerbs along its edges, one of them lowered for 4 m, and a sag."""
    rng = np.random.default_rng(seed)
    sag, steep = rng.uniform(20, 40), rng.uniform(0.01, 0.04)
    kerb, crown, low = rng.uniform(0.06, 0.15), rng.uniform(0.01, 0.03), rng.uniform(5, 50)
    x, y = np.meshgrid(np.arange(0, LENGTH + 0.1, 0.5), np.arange(0, WIDTH + 0.01, 0.25))
    offset = y - WIDTH / 2
    lowered = np.where((np.abs(x - low) < 2.0) & (offset < 0), 0.03, kerb)
    beyond = np.maximum(np.abs(offset) - EDGE, 0.0)
    z = 50 + steep * np.abs(x - sag) - crown * np.minimum(np.abs(offset), EDGE)
    z += np.where(beyond > 0.3, lowered, lowered * beyond / 0.3) - 0.01 * beyond
    xy = np.column_stack([x.ravel(), y.ravel()])
    line = make_alignment(ORIGIN + np.array([[0.0, WIDTH / 2], [LENGTH, WIDTH / 2]]))
    return line, delaunay_tin(xy, z.ravel())


def flooded(tin: Tin, gully: Optional[np.ndarray] = None) -> Tuple[np.ndarray, np.ndarray]:
    """Levels of a priority flood (Barnes, Lehman and Mulla 2014) of a grid of ``CELL`` m, eight neighbours, and its
    heights; water leaves at the rim and at ``gully`` (2,)."""
    x, y = np.arange(CELL / 2, LENGTH, CELL), np.arange(CELL / 2, WIDTH, CELL)
    places = ORIGIN + np.column_stack([each.ravel() for each in np.meshgrid(x, y, indexing="ij")])
    z = heights_at(tin, places).reshape(len(x), len(y))
    level = np.full(z.shape, np.inf)
    queue = []
    for i in range(len(x)):
        for j in range(len(y)):
            drains = gully is not None and np.hypot(x[i] - gully[0], y[j] - gully[1]) < 0.3
            if drains or i in (0, len(x) - 1) or j in (0, len(y) - 1):
                level[i, j] = z[i, j]
                heapq.heappush(queue, (z[i, j], i, j))
    while queue:
        here, i, j = heapq.heappop(queue)
        if here > level[i, j]:
            continue
        for a in range(max(i - 1, 0), min(i + 2, len(x))):
            for b in range(max(j - 1, 0), min(j + 2, len(y))):
                new = max(z[a, b], here)
                if new < level[a, b]:
                    level[a, b] = new
                    heapq.heappush(queue, (new, a, b))
    return level, z


@pytest.mark.parametrize("seed", range(10))
def test_depth_in_the_gutter_is_that_of_a_flood(seed):
    """Kerb, lowered kerb and crown let water off; twenty such streets were tried by hand."""
    line, tin = street(seed)
    level, z = flooded(tin)
    for offset in (-2.9, 2.9):
        found = check_gutter(line, tin, 0.0005, offset).low_points
        column = int((WIDTH / 2 - offset) / CELL)  # right is south
        depth = (level - z)[:, column]
        deepest = float(depth.max())
        if deepest < 0.003:
            assert all(low.depth < 0.005 for low in found)
            continue
        (low,) = found
        assert low.depth == pytest.approx(deepest, abs=0.005)
        assert low.at == pytest.approx((int(depth.argmax()) + 0.5) * CELL, abs=0.6)
        wet = np.flatnonzero(depth > 0.001)
        assert low.begin == pytest.approx(wet[0] * CELL, abs=0.6)
        assert low.end == pytest.approx((wet[-1] + 1) * CELL, abs=0.6)


@pytest.mark.parametrize("seed", range(4))
def test_no_water_stands_over_a_gully(seed):
    line, tin = street(seed)
    before = check_gutter(line, tin, 0.0005, 2.9).low_points
    assert before
    gully = np.array([before[0].at, WIDTH / 2 - 2.9]) + ORIGIN
    water = StandingWater(tin, (gully[None],))
    assert all(low.depth < 0.006 for low in check_gutter(line, tin, 0.0005, 2.9, water=water).low_points)
    study = study_road(line, [("", tin)], 0.0005, RoadOptions(lane=(-2.9, 2.9), inlets=(gully[None],)))
    right = next(gutter for gutter in study.gutters if gutter.offset > 0)
    assert all(low.depth < 0.006 for low in right.low_points)
    level, z = flooded(tin, gully - ORIGIN)
    assert float((level - z)[:, int((WIDTH / 2 - 2.9) / CELL)].max()) < 0.01


def test_a_dam_across_the_street_does_not_stand_above_its_kerb():
    """A gutter 2 m below the road's end behind a hump: the kerb of 0.12 m lets the water off, not the hump."""
    x, y = np.meshgrid(np.arange(0, 100.1, 1.0), np.arange(0, 12.01, 0.25))
    offset = np.abs(y - 6.0)
    z = 50 + np.abs(x - 50.0) * 0.04 - 0.025 * np.minimum(offset, 3.0) + np.where(offset > 3.2, 0.12, 0.0)
    z -= 0.02 * np.maximum(offset - 3.25, 0.0)
    line = make_alignment(ORIGIN + np.array([[0.0, 6.0], [100.0, 6.0]]))
    tin = delaunay_tin(np.column_stack([x.ravel(), y.ravel()]), z.ravel())
    for offset in (-3.0, 3.0):
        (low,) = check_gutter(line, tin, 0.002, offset).low_points
        assert 0.05 < low.depth < 0.13
        assert low.end - low.begin < 8.0
        assert abs(low.sill_offset) > 3.0 or abs(low.sill_offset) < 0.5  # the kerb or the crown
