"""The search for boxes that meet: against trying all pairs, and its memory where sizes are unlike."""

import tracemalloc

import numpy as np
import pytest
from shapely import STRtree
from shapely.geometry import LineString

from plugin.core.earthwork.pad import grade_pad
from plugin.core.earthwork.side_slopes import SideSlopes
from plugin.core.earthwork.strip import HalfSection, TypicalSection, grade_strip
from plugin.core.earthwork.volume import volume_between
from plugin.core.surface.boxes import box_pairs
from plugin.core.surface.cells import candidate_pairs
from tests.core.graded_raster import Wanted, cells, graded, heights
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin


def boxes(rng, count):
    """Boxes of all sizes, points and lines among them, many of which touch."""
    size = 10.0 ** rng.uniform(-4, 2, count) * (rng.random(count) > 0.2)
    low = rng.integers(-5, 6, (count, 2)) * rng.choice([1.0, 0.37, 20.0])
    return low, low + np.column_stack([size * rng.random(count).round(1), size])


@pytest.mark.parametrize("seed", range(20))
def test_every_pair_once(seed):
    rng = np.random.default_rng(seed)
    for _ in range(10):
        (a_low, a_high), (b_low, b_high) = (boxes(rng, int(n)) for n in rng.integers(1, 60, 2))
        meet = np.all((a_low[:, None] <= b_high) & (b_low <= a_high[:, None]), axis=2)
        found = [np.column_stack(part) for part in box_pairs(a_low, a_high, b_low, b_high, pairs=50)]
        pairs = np.concatenate(found) if found else np.empty((0, 2), np.int64)
        assert len(np.unique(pairs, axis=0)) == len(pairs)
        np.testing.assert_array_equal(np.argwhere(meet), pairs[np.lexsort((pairs[:, 1], pairs[:, 0]))])


def peak_of(work):
    tracemalloc.start()
    try:
        result = work()
        return result, tracemalloc.get_traced_memory()[1] / 2**20
    finally:
        tracemalloc.stop()


def test_boxes_of_unlike_sizes_stay_in_memory():
    """100,000 boxes of 1 mm and 1,000 of 1 km: cells of 1 mm would be 10 to the 15th."""
    rng = np.random.default_rng(1)
    place = rng.uniform(0, 1e4, (101_000, 2))
    size = np.where(np.arange(len(place)) < 100_000, 1e-3, 1e3)[:, None]

    def work():
        return sum(len(i) for i, _ in box_pairs(place, place + size, place, place + size, pairs=200_000))

    count, peak = peak_of(work)
    assert count > 900_000
    assert peak < 120


def unlike(rng, count, ratio=10_000):
    """A surface over 1 km, dense in one corner of it and ``ratio`` times as thin elsewhere."""
    side = 1000.0 * rng.uniform(0.005, 0.1)
    at = rng.uniform(0, 1000 - side, 2)
    thin = rng.uniform(0, 1000, (max(4, int(count * (1000 / side) ** 2 / ratio)), 2))
    corners = np.array([[0, 0], [1000, 0], [1000, 1000], [0, 1000.0]])
    xy = np.round(np.vstack([at + rng.uniform(0, side, (count, 2)), thin, corners]), 4)
    return delaunay_tin(xy, 10 + 0.01 * xy[:, 0] + 0.02 * xy[:, 1] * rng.choice([-1, 1]))


@pytest.mark.parametrize("seed", range(3))
def test_surfaces_of_unlike_density(seed):
    """Planes, so that what lies between is known whatever the triangles: the volume over a square, in closed form."""
    rng = np.random.default_rng(seed)
    one, other = unlike(rng, 20_000), unlike(rng, 20_000)
    found, peak = peak_of(lambda: volume_between(one, other))
    a, b = ((1 if tin.vertices[-1, 2] > 20 else -1) for tin in (one, other))
    # the surfaces are 10 + x / 100 +- y / 50: of opposite sign they differ by y / 25
    assert found.cut + found.fill == pytest.approx(0.0 if a == b else 1e6 * 1000 / 50, rel=1e-6, abs=1e-3)
    assert peak < 300


def lane_with_a_bend():
    """A lane of 6 m round a bend of 12 m radius in 30 vertices."""
    angle = np.linspace(0, np.pi / 2, 30)
    line = np.vstack([[5, 26], np.column_stack([50 + 12 * np.sin(angle), 38 - 12 * np.cos(angle)]), [62, 90]]) + ORIGIN
    half = HalfSection(((3.0, 0.0),))
    return line, TypicalSection(half, half, SideSlopes(2, 2))


def test_a_bend_of_many_vertices_stays_in_memory():
    line, section = lane_with_a_bend()
    profile = np.array([[0, 101.0], [500, 101.0]])
    found, peak = peak_of(lambda: grade_strip(random_tin(600, 3), line, profile, section, 5.0))
    assert found.volume.cut > 1000
    assert peak < 600


def test_a_hollow_arc_of_many_vertices():
    """A pad with an arc of 5 m radius in its side: slopes meet over its middle; against a raster, and in memory."""
    ground = random_tin(600, 3)
    angle = np.linspace(0, np.pi, 30)
    arc = np.column_stack([50 + 5 * np.cos(angle), 40 + 5 * np.sin(angle)])[::-1]
    ring = np.vstack([[35, 40], arc, [65, 40], [65, 60], [35, 60]])
    found, peak = peak_of(lambda: grade_pad(ground, ring + ORIGIN, 102.0, SideSlopes(2, 2)))
    assert peak < 600
    x, y = cells(100.0, 0.2)
    before = heights(ground, x, y)
    moved = graded(before, x, y, [Wanted(ring, (102.0, 0.0, 0.0), 2.0, 2.0)]) - before
    assert found.volume.cut == pytest.approx(-np.nansum(np.minimum(moved, 0)) * 0.04, rel=5e-3)
    assert found.volume.fill == pytest.approx(np.nansum(np.maximum(moved, 0)) * 0.04, rel=5e-3)


def test_figures_of_unlike_sizes_stay_in_memory():
    """Segments: 20,000 of a metre and 300 of 10 km over the same ground, against GEOS; cells of their usual size."""
    rng = np.random.default_rng(3)
    start = rng.uniform(0, 7000, (20_000, 2))
    short = np.stack([start, start + rng.uniform(0, 1, start.shape)], axis=1)
    long = rng.uniform(0, 7000, (300, 2, 2))
    both = np.concatenate([short, long])

    def work():
        pairs = candidate_pairs(both[:, :, 0], both[:, :, 1], long[:, :, 0], long[:, :, 1], 1.0)
        return np.unique(np.concatenate([i * len(long) + j for i, j in pairs]))

    found, peak = peak_of(work)
    assert peak < 500
    tree, lines = STRtree([LineString(each) for each in both]), [LineString(each) for each in long]
    j, i = tree.query(lines, predicate="intersects")
    assert np.all(np.isin(i * len(long) + j, found))
