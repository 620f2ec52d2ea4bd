"""Volumes, depths and lines of no depth between surfaces full of ties, against fractions; ``HUMMOCK_TIES`` pairs."""

import os

import numpy as np
import pytest

from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.depth_polygons import depth_polygons
from plugin.core.earthwork.depths import volumes_in_depths
from plugin.core.earthwork.pads import PadDesign, grade_pads
from plugin.core.earthwork.plane import Plane
from plugin.core.earthwork.side_slopes import Corner, SideSlopes
from plugin.core.earthwork.volume import volume_between
from plugin.core.earthwork.zero_line import zero_line
from plugin.core.surface.tin import Tin
from tests.core.earthworks import square, surface
from tests.core.graded_raster import check_sound
from tests.core.surfaces import ORIGIN, random_tin
from tests.core.tied_earth import UNIT, between, tied_pair

COUNT = int(os.environ.get("HUMMOCK_TIES", "200"))
PARTS = 10
LIMITS = (1, 2)


def check_pair(existing, design, polygons):
    wanted = between(existing, design, LIMITS)
    found = volume_between(existing, design)

    def total(of, sign):
        return float(sum(value for k, value in of.items() if k * sign > 0))

    close = {"rel": 1e-9, "abs": 1e-9}
    assert found.cut == pytest.approx(total(wanted.volume, -1) * UNIT, **close)
    assert found.fill == pytest.approx(total(wanted.volume, 1) * UNIT, **close)
    assert found.cut_area == pytest.approx(total(wanted.area, -1), **close)
    assert found.fill_area == pytest.approx(total(wanted.area, 1), **close)
    assert found.common_area == pytest.approx(float(wanted.common), **close)
    comparison = Comparison(existing, design)
    classes = volumes_in_depths(comparison.both, [k * UNIT for k in LIMITS])
    names = [-3, -2, -1, 1, 2, 3]
    for k, each in zip(names, classes):
        assert each.volume == pytest.approx(float(wanted.volume.get(k, 0)) * UNIT, **close)
        assert each.area == pytest.approx(float(wanted.area.get(k, 0)), **close)
    length = sum(np.hypot(*np.diff(line[:, :2], axis=0).T).sum() for line in zero_line(existing, design))
    assert length == pytest.approx(wanted.crossing, rel=1e-6, abs=1e-5)
    if polygons:
        area = dict.fromkeys([0, *names], 0.0)
        for polygon in depth_polygons(comparison, [k * UNIT for k in LIMITS]):
            area[polygon.label] += polygon.plan_area
        for k in names:
            assert area[k] == pytest.approx(float(wanted.area.get(k, 0)), abs=5e-3)
    return found.common_area > 0


@pytest.mark.parametrize("part", range(PARTS))
def test_volumes_classes_and_daylight(part):
    checked = [check_pair(*tied_pair(seed), polygons=seed % 4 == 0) for seed in range(part, COUNT, PARTS)]
    assert sum(checked) > len(checked) / 2


def raised(tin, by):
    return Tin(**{**vars(tin), "vertices": tin.vertices + np.array([0, 0, by])})


def test_an_even_layer_is_of_one_class():
    """A layer of 0.10 m over rolling ground, at heights where floats do not hold it exactly."""
    ground = random_tin(3000, 4)
    classes = volumes_in_depths(Comparison(ground, raised(ground, 0.10)).both, [0.05, 0.10, 0.20])
    area = [each.area for each in classes]
    assert area[5] == pytest.approx(ground.plan_area, rel=1e-9)
    assert sum(area) == pytest.approx(area[5], rel=1e-12)
    assert sum(each.volume for each in classes) == pytest.approx(0.1 * ground.plan_area, rel=1e-9)
    (polygon,) = depth_polygons(Comparison(ground, raised(ground, 0.10)), [0.05, 0.10, 0.20])
    assert polygon.label == 2


def test_coincident_surfaces_are_neither_cut_nor_fill():
    """The same plane through other triangles: they differ by rounding alone."""
    one, other = (random_tin(800, seed) for seed in (1, 2))
    planes = []
    for tin in (one, other):
        x, y = tin.vertices[:, :2].T
        planes.append(Tin(**{**vars(tin), "vertices": np.column_stack([x, y, 100 + 0.037 * x - 0.021 * y])}))
    found = volume_between(*planes)
    assert (found.cut, found.fill, found.cut_area, found.fill_area) == (0, 0, 0, 0)
    assert found.common_area > 9000
    assert zero_line(*planes) == ()


MITRE = SideSlopes(2, 2, Corner.MITRE)


def pad_of(west, east, level=15.0):
    ring = np.array([[west, 40], [east, 40], [east, 60], [west, 60.0]]) + ORIGIN
    return PadDesign("pad", (ring,), Plane(level), MITRE)


def test_a_slope_on_ground_that_is_graded_so_already():
    """A pad graded once more moves nothing; drawn out by 10 m, what is new is a prism: its other slopes lie on the
    old ones."""
    bare = surface(square(100, 10.0))
    once = grade_pads(bare, [pad_of(40, 60)]).finished
    again = grade_pads(once, [pad_of(40, 60)])
    assert again.volume.cut + again.volume.fill == pytest.approx(0, abs=1e-4)
    assert again.volume.cut_area + again.volume.fill_area == pytest.approx(0, abs=0.1)
    check_sound(again.finished, bare.plan_area)
    wider = grade_pads(once, [pad_of(40, 70)])
    assert wider.volume.fill == pytest.approx(10 * (20 + 2 * 5) * 5, rel=1e-5)
    assert wider.volume.cut == pytest.approx(0, abs=1e-3)
    assert wider.volume.fill_area == pytest.approx(50 * 40 - (20 * 20 + 3 * 300), rel=1e-3)
    check_sound(wider.finished, bare.plan_area)
    assert wider.messages == ()


def test_slopes_beside_parallel_ground():
    """Ground that falls as steeply as the slope of fill: it never meets the ground there, which is told; one that
    falls a little less does."""
    for fall, codes in ((0.5, {"earthwork.no_daylight"}), (0.3, set())):
        x = np.array([0.0, 0, 40, 40, 100, 100])
        y = np.array([0.0, 100, 0, 100, 0, 100])
        z = 10 - fall * np.maximum(0, x - 40)
        ground = surface(np.column_stack([x, y, z]), [np.array([[40, 0, 10], [40, 100, 10.0]])])
        found = grade_pads(ground, [pad_of(30, 50, 11.0)])
        assert {m.text.code for m in found.messages} == codes
        check_sound(found.finished, ground.plan_area)
