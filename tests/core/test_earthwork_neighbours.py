"""Pads beside, at and over each other, on a raster; ``HUMMOCK_PAIRS`` says how many pairs."""

import os

import numpy as np
import pytest

from plugin.core.earthwork.pads import PadDesign, grade_pads
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.side_slopes import SideSlopes
from tests.core.graded_raster import Wanted, cells, check_sound, graded, heights
from tests.core.surfaces import ORIGIN, delaunay_tin, hills

COUNT = int(os.environ.get("HUMMOCK_PAIRS", "20"))
PARTS = 4
SIDE, CELL = 80.0, 0.2


def site(rng):
    """Rolling or even ground, some of it on a round grid so that lines fall on vertices."""
    kind = rng.integers(3)
    if kind == 0:
        s = np.arange(0, SIDE + 1, 8.0)
        x, y = (v.ravel() for v in np.meshgrid(s, s))
        return delaunay_tin(np.column_stack([x, y]), 100 + rng.choice([0.0, 0.02]) * x)
    xy = np.vstack([rng.uniform(0, SIDE, (400, 2)), [[0, 0], [SIDE, 0], [SIDE, SIDE], [0, SIDE]]])
    z = hills(*xy.T) if kind == 1 else 100 + 0.03 * xy[:, 0] - 0.02 * xy[:, 1]
    return delaunay_tin(xy, z)


def outline(rng, width):
    shape = np.array([[0, 0], [width, 0], [width, 10], [0, 10]], float)
    if rng.random() < 0.3:
        shape = np.array([[0, 0], [width, 0], [width, 5], [width / 2, 5], [width / 2, 10], [0, 10]], float)
    return shape


def pair(rng):
    """Two pads side by side, turned and shifted as one, with a gap of 0 to 6 m between, or overlapping a little."""
    width = rng.uniform(6, 14)
    gap = rng.choice([0.0, float(rng.integers(0, 7)), rng.uniform(0, 6), rng.uniform(-2, 0)], p=[0.15, 0.25, 0.5, 0.1])
    one, other = outline(rng, width), outline(rng, rng.uniform(6, 14))
    other += np.array([width + gap, rng.choice([0.0, 3.0])])
    turn = rng.choice([0.0, rng.uniform(0, 2 * np.pi)])
    matrix = np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
    middle = np.vstack([one, other]).mean(axis=0)
    made = []
    for ring in (one, other):
        ring = np.round((ring - middle) @ matrix + SIDE / 2, 3)
        level = 100 + 2 + float(rng.choice([rng.integers(-3, 4), rng.uniform(-3, 3)]))
        made.append(Wanted(ring, (level, 0.0, 0.0), *rng.choice([1.0, 1.5, 2.0, 2.5], 2)))
    return made


def check_pair(seed):
    rng = np.random.default_rng(seed)
    check_pads(site(rng), pair(rng))


def check_pads(ground, pads):
    designs = [
        PadDesign(str(k), (p.ring + ORIGIN,), Plane(p.plane[0]), SideSlopes(p.cut_run, p.fill_run))
        for k, p in enumerate(pads)
    ]
    found = grade_pads(ground, designs)
    check_sound(found.finished, ground.plan_area)
    x, y = cells(SIDE, CELL)
    before, after = heights(ground, x, y), heights(found.finished, x, y)
    wanted = graded(before, x, y, pads)
    moved = np.abs(wanted - before).sum() * CELL**2
    # corners are rounded by facets of 10 degrees, 0.4 % off at most
    assert np.abs(after - wanted).sum() * CELL**2 <= 0.01 * moved + 1.0
    for exact, sign in ((found.volume.cut, -1), (found.volume.fill, 1)):
        assert exact == pytest.approx(np.maximum(sign * (wanted - before), 0).sum() * CELL**2, rel=0.01, abs=1.0)


@pytest.mark.parametrize("part", range(PARTS))
def test_pairs_of_pads(part):
    for seed in range(part, COUNT, PARTS):
        check_pair(seed)


def test_a_row_of_pads_that_touch_and_overlap():
    """Five pads in a row and one across them all: the later counts."""
    rng = np.random.default_rng(7)
    square = np.array([[0, 0], [8, 0], [8, 8], [0, 8]], float)
    row = [Wanted(square + np.array([16 + 9.0 * k, 30.0]), (101.0 + k % 3, 0.0, 0.0), 1.5, 2.0) for k in range(5)]
    across = Wanted(np.array([[20, 36], [60, 36], [60, 42], [20, 42.0]]), (102.5, 0.0, 0.0), 1.5, 1.5)
    check_pads(site(rng), [*row, across])
