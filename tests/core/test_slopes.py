"""Slope maps against closed forms, and their polygons against shapely."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.messages import SurveyError
from plugin.core.surface.dissolve import dissolve
from plugin.core.surface.slopes import DEFAULT_LIMITS_PERCENT, slope_map, slope_polygons
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin, real_ground, ring


def ramp(percent: float):
    tin = random_tin(80, 1)
    x, y = tin.vertices[:, :2].T
    return replace(tin, vertices=np.column_stack([x, y, 20 + percent / 100 * (0.6 * x + 0.8 * y)]))


@pytest.mark.parametrize(
    ("percent", "number"),
    [(0, 0), (0.9, 0), (1, 0), (1.1, 1), (2, 1), (5, 2), (5.1, 3), (100 / 12, 3), (19, 4), (20, 4), (50, 5), (51, 6)],
)
def test_a_ramp_is_in_one_class_and_a_limit_is_within(percent, number):
    tin = ramp(percent)
    classes = slope_map(tin)
    assert set(classes.triangle_class) == {number}
    low, high = classes.range_percent(number)
    assert low <= percent <= high
    assert classes.plan_area[number] == pytest.approx(tin.plan_area)
    assert classes.slope_area[number] == pytest.approx(tin.plan_area * np.sqrt(1 + (percent / 100) ** 2))
    (polygon,) = slope_polygons(tin, classes)
    assert polygon.plan_area == pytest.approx(tin.plan_area)


def test_the_areas_of_a_cone_by_closed_form():
    """A cone of 30 %: its area on the slope is pi r s (s the slant height), all in one class but the level ground."""
    angle = np.linspace(0, 2 * np.pi, 721)[:-1]
    rings = [(0.0, 6.0)] + [(r, 6.0 - 0.3 * r) for r in (5.0, 10.0, 15.0, 20.0)] + [(30.0, 0.0)]
    xy = np.concatenate([[[0.0, 0.0]]] + [r * np.column_stack([np.cos(angle), np.sin(angle)]) for r, _ in rings[1:]])
    z = np.concatenate([[6.0]] + [np.full(len(angle), h) for _, h in rings[1:]])
    classes = slope_map(delaunay_tin(xy + 40, z), (1, 10, 40))
    assert classes.plan_area[2] == pytest.approx(np.pi * 400, rel=2e-4)
    assert classes.slope_area[2] == pytest.approx(np.pi * 20 * np.hypot(20, 6), rel=2e-4)
    assert classes.plan_area[0] == pytest.approx(np.pi * 500, rel=2e-4)
    assert classes.slope_area[0] == pytest.approx(classes.plan_area[0], rel=1e-9)
    polygons = slope_polygons(delaunay_tin(xy + 40, z), classes)
    assert sorted((p.label, len(p.rings)) for p in polygons if p.plan_area > 1) == [(0, 2), (2, 1)]


@pytest.mark.parametrize("limits", [(5, 2), (2, 2), (-1, 5), (float("nan"),), (1, float("inf"))])
def test_limits_must_rise(limits):
    with pytest.raises(SurveyError) as error:
        slope_map(ramp(3), limits)
    assert error.value.code == "slopes.limits"


def test_no_limits_is_one_class_and_zero_parts_level_ground():
    assert slope_map(ramp(3), ()).triangle_class.max() == 0
    assert set(slope_map(ramp(0), (0,)).triangle_class) == {0}
    assert set(slope_map(ramp(0.01), (0,)).triangle_class) == {1}


def check_polygons(tin, label, polygons):
    """Valid, the same areas as the triangles' union, every triangle in a polygon of its label."""
    shapes = [shapely.Polygon(p.rings[0], p.rings[1:]) for p in polygons]
    triangles = shapely.polygons(tin.vertices[tin.triangles][:, :, :2] + tin.origin)
    for polygon, shape in zip(polygons, shapes):
        assert shapely.is_valid(shape), shapely.is_valid_reason(shape)
        assert shape.area == pytest.approx(polygon.plan_area, abs=1e-5)
        assert shape.exterior.is_ccw
        assert not any(interior.is_ccw for interior in shape.interiors)
    for value in np.unique(label):
        mine = shapely.union_all([s for s, p in zip(shapes, polygons) if p.label == value])
        theirs = shapely.union_all(triangles[label == value], grid_size=1e-4)
        assert shapely.area(shapely.symmetric_difference(mine, theirs)) < 0.02
    assert sum(p.plan_area for p in polygons) == pytest.approx(tin.plan_area)


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 10**6), st.integers(1, 4))
def test_polygons_of_random_labels(seed, labels):
    """Random labels make pinches, holes, islands in holes and rings that touch themselves."""
    rng = np.random.default_rng(seed)
    tin = random_tin(int(rng.integers(5, 120)), seed, keep=lambda x, y: rng.random(len(x)) < 0.8)
    label = rng.integers(0, labels, len(tin.triangles))
    check_polygons(tin, label, dissolve(tin, label))


def test_one_polygon_for_a_surface_of_one_label_with_its_hole():
    tin = random_tin(800, 2, keep=ring)
    polygons = dissolve(tin, np.zeros(len(tin.triangles), int))
    assert len(polygons[0].rings) == 2
    np.testing.assert_array_equal(polygons[0].rings[0][0], polygons[0].rings[0][-1])
    assert polygons[0].rings[0].min() > ORIGIN.min() - 1


def test_a_real_hillside():
    xy, z, elevation = real_ground()
    near = (xy[:, 0] < 3000) & (xy[:, 1] < 3000)
    tin = delaunay_tin(xy[near], z[near])
    classes = slope_map(tin)
    polygons = slope_polygons(tin, classes)
    assert len(classes.plan_area) == len(DEFAULT_LIMITS_PERCENT) + 1
    check_polygons(tin, classes.triangle_class, polygons)
    for number, area in enumerate(classes.plan_area):
        assert sum(p.plan_area for p in polygons if p.label == number) == pytest.approx(area, abs=1e-3)
    # the slope at the posts by numpy's gradient, a mean of the slopes around: the middle one is in the same class
    east, north = np.gradient(elevation, 30.0)
    slope = np.hypot(east, north)[-100:, :100]
    middle = np.median(np.searchsorted(np.array(DEFAULT_LIMITS_PERCENT) / 100, slope))
    assert np.median(classes.triangle_class) == middle
