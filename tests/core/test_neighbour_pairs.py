"""Triangles of two surfaces that meet, from neighbour to neighbour, against all pairs of their boxes."""

import numpy as np
import pytest

from plugin.core.earthwork.neighbour_pairs import boxes_say_little, neighbour_pairs
from plugin.core.earthwork.overlay import common_pieces
from plugin.core.earthwork.polygons import areas, clip
from plugin.core.earthwork.triangles import Triangles, side_of
from plugin.core.surface.boxes import box_pairs
from tests.core.surfaces import delaunay_tin

SIDE = 10.0


def star(n, middle, shift=0.0, radius=0.5):
    angle = np.linspace(0, 2 * np.pi, n, endpoint=False) + shift
    return np.vstack([SIDE / 2 + radius * SIDE * np.column_stack([np.cos(angle), np.sin(angle)]), [middle]])


def places(rng):
    n, kind = int(rng.integers(4, 60)), rng.integers(4)
    if kind == 0:
        return rng.integers(0, int(SIDE) + 1, (n, 2)).astype(float)
    if kind == 1:
        return rng.uniform(0, SIDE, (n, 2))
    if kind == 2:
        return star(n, [SIDE / 2, SIDE / 2])
    x = np.linspace(0, SIDE, n)
    return np.vstack([np.column_stack([x, 0 * x]), np.column_stack([x, 0 * x + SIDE])])


def mesh(rng):
    """Points on a round grid, anywhere, on a circle or in two rows, with holes or in several parts."""
    holes = rng.uniform(0, SIDE, (int(rng.integers(0, 4)), 3))
    xy = places(rng)
    return delaunay_tin(
        xy,
        rng.uniform(0, 1, len(xy)),
        keep=lambda x, y: np.all([np.hypot(x - u, y - v) > r / 4 for u, v, r in holes], axis=0) | (x < -1),
    )


def shared(a, b, pairs):
    """Area of each pair's common part, for pairs of some."""
    found = {}
    for i, j in pairs:
        x, y = a.x[i], a.y[i]
        for edge in range(3):
            x, y = clip(side_of(b, j, edge, x, y), x, y)
        for one, other, area in zip(i.tolist(), j.tolist(), areas(x, y).tolist()):
            assert (one, other) not in found
            found[one, other] = area
    return found


@pytest.mark.parametrize("seed", range(150))
def test_none_is_missed(seed):
    rng = np.random.default_rng(seed)
    one = mesh(rng)
    other = one if rng.random() < 0.2 else mesh(rng)
    if min(len(one.triangles), len(other.triangles)) == 0:
        return
    a, b = (Triangles(tin, one.origin) for tin in (one, other))
    found = shared(a, b, neighbour_pairs(one, other, a, b, int(rng.choice([7, 1000]))))
    wanted = shared(a, b, box_pairs(a.low, a.high, b.low, b.high))
    assert {pair for pair, area in wanted.items() if area > 1e-10} <= set(found)


def test_slivers_around_one_place_cost_what_they_find():
    """Two fans of 4,000 slivers around one place: a few thousand pieces, not millions of pairs of boxes."""
    middle = [SIDE / 2 + 0.001, SIDE / 2 + 0.002]
    one, other = (
        delaunay_tin(star(4000, middle, shift, radius), np.arange(4001.0) % 7)
        for shift, radius in ((0.0, 0.5), (0.0004, 0.49))
    )
    a, b = (Triangles(tin, one.origin) for tin in (one, other))
    assert boxes_say_little(one, other, a, b)
    pairs = sum(len(i) for i, _ in neighbour_pairs(one, other, a, b, 100_000))
    pieces = list(common_pieces(one, other))
    assert pairs < 2 * sum(len(part) for part in pieces)
    area = sum(float(areas(part.x, part.y).sum()) for part in pieces)
    assert area == pytest.approx(other.plan_area, rel=1e-6)


def test_ordinary_surfaces_go_by_boxes():
    rng = np.random.default_rng(1)
    one, other = (delaunay_tin(rng.uniform(0, SIDE, (2000, 2)), np.zeros(2000)) for _ in range(2))
    a, b = (Triangles(tin, one.origin) for tin in (one, other))
    assert not boxes_say_little(one, other, a, b)
