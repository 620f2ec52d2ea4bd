"""Boxes about slivers that lie side by side: few pairs whichever way they run, and none is missed."""

import numpy as np
import pytest

from plugin.core.earthwork.overlay import common_pieces
from plugin.core.earthwork.polygons import areas
from plugin.core.earthwork.triangles import Triangles, not_apart
from plugin.core.earthwork.turned_boxes import turned_boxes
from plugin.core.earthwork.volume import volume_between
from plugin.core.surface.boxes import box_pairs
from tests.core.surfaces import delaunay_tin, tin_of

LENGTH, STEP = 300.0, 0.01


def strip(n, angle, shift=0.0, gain=0.0):
    """2 n slivers side by side, 300 m long and 1 cm wide, on a plane."""
    x = np.arange(n + 1) * STEP + shift
    xy = np.vstack([np.column_stack([x, 0 * x]), np.column_stack([x + STEP / 2, 0 * x + LENGTH])])
    c, s = np.cos(angle), np.sin(angle)
    grid = np.rint((xy @ np.array([[c, s], [-s, c]]) + 400.0) / 1e-4).astype(np.int64)
    i = np.arange(n)
    low, high = np.column_stack([i, i + 1, n + 1 + i]), np.column_stack([n + 1 + i, i + 1, n + 2 + i])
    z = 100.0 + gain + (0.01 * grid[:, 0] + 0.02 * grid[:, 1]) * 1e-4
    return tin_of(grid, z, np.vstack([low, high]))


def both(n, angle):
    one, other = strip(n, angle), strip(n, angle, 0.003, 0.5)
    base = np.minimum(one.origin, other.origin)
    return one, other, Triangles(one, base), Triangles(other, base)


@pytest.mark.parametrize("angle", [0.0, 1e-5, 0.3, np.pi / 4, np.pi / 2, 2.0])
def test_pairs_grow_as_the_slivers_do(angle):
    for n in (1000, 4000):
        one, other, a, b = both(n, angle)
        boxes = turned_boxes(one, other, a, b)
        assert boxes is not None
        assert sum(len(i) for i, _ in box_pairs(*boxes)) <= 16 * len(one.triangles)


@pytest.mark.parametrize("angle", [0.0, 0.3, np.pi / 4, 2.0])
def test_none_is_missed(angle):
    one, other, a, b = both(150, angle)
    every = [side.ravel() for side in np.indices((len(one.triangles), len(other.triangles)))]
    wanted = set(zip(*(side.tolist() for side in not_apart(a, b, *every))))
    found = [pair for i, j in box_pairs(*turned_boxes(one, other, a, b)) for pair in zip(i.tolist(), j.tolist())]
    assert len(found) == len(set(found))
    assert wanted <= set(found)
    assert len(wanted) > 300


@pytest.mark.parametrize("angle", [0.0, 0.3, np.pi / 4])
def test_volume_of_an_even_layer_on_slivers(angle):
    """15,000 slivers: half a metre over the area that both share, which is a parallelogram."""
    one, other = strip(7500, angle), strip(7500, angle, 0.003, 0.5)
    found = volume_between(one, other)
    assert found.common_area == pytest.approx(LENGTH * (7500 * STEP - 0.003), abs=2e-4 * LENGTH)
    assert found.fill - found.cut == pytest.approx(0.5 * found.common_area, rel=1e-9)
    pieces = sum(float(areas(part.x, part.y).sum()) for part in common_pieces(one, other))
    assert pieces == pytest.approx(found.common_area, rel=1e-9)


def test_ordinary_surfaces_go_by_upright_boxes():
    rng = np.random.default_rng(1)
    one, other = (delaunay_tin(rng.uniform(0, 100, (2000, 2)), np.zeros(2000)) for _ in range(2))
    a, b = (Triangles(tin, one.origin) for tin in (one, other))
    assert turned_boxes(one, other, a, b) is None
