"""Heights, slopes and aspects at places."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.tri import LinearTriInterpolator, Triangulation

from plugin.core.surface.ask import ask_surface, slope_in_degrees, triangle_slopes
from tests.core.surfaces import ORIGIN, random_tin, ring, tin_of


def plane_tin(east: float, north: float):
    tin = random_tin(60, 1)
    x, y = tin.vertices[:, :2].T
    return replace(tin, vertices=np.column_stack([x, y, 10 + east * x + north * y]))


@pytest.mark.parametrize(
    ("east", "north", "aspect"),
    [(0, -1, 0), (-1, -1, 45), (-1, 0, 90), (-1, 1, 135), (0, 1, 180), (1, 1, 225), (1, 0, 270), (1, -1, 315)],
)
def test_aspect_is_the_way_down_clockwise_from_north(east, north, aspect):
    slope, found = triangle_slopes(plane_tin(0.05 * east, 0.05 * north))
    np.testing.assert_allclose(slope, 0.05 * np.hypot(east, north), atol=1e-9)
    turned = (found - aspect + 180) % 360 - 180
    np.testing.assert_allclose(turned, 0, atol=1e-5)
    assert np.all((found >= 0) & (found < 360))


def test_one_in_one_is_forty_five_degrees_and_a_hundred_percent():
    answers = ask_surface(plane_tin(0, 1), ORIGIN[None] + 50)
    assert answers.slope[0] == pytest.approx(1)
    assert answers.slope_percent[0] == pytest.approx(100)
    assert answers.slope_degrees[0] == pytest.approx(45)
    np.testing.assert_allclose(slope_in_degrees(np.array([0, 1 / np.sqrt(3)])), [0, 30])


def test_level_ground_has_no_aspect():
    tin = plane_tin(0, 0)
    slope, aspect = triangle_slopes(tin)
    assert np.all(slope == 0)
    assert np.all(np.isnan(aspect))


@settings(max_examples=60, deadline=None)
@given(st.floats(-1e-12, 1e-12), st.floats(-3, -1e-3))
def test_an_aspect_of_nearly_north_is_below_360(east, north):
    _, aspect = triangle_slopes(tin_of([[0, 0], [10**4, 0], [0, 10**4]], [0, east, north], [[0, 1, 2]]))
    assert 0 <= aspect[0] < 360


def test_heights_and_slopes_agree_with_matplotlib():
    tin = random_tin(500, 2, keep=ring)
    xy = np.random.default_rng(2).uniform(-5, 105, (4000, 2))
    answers = ask_surface(tin, xy + ORIGIN)
    theirs = LinearTriInterpolator(Triangulation(*tin.vertices[:, :2].T, tin.triangles), tin.vertices[:, 2])
    height = theirs(*xy.T)
    np.testing.assert_array_equal(answers.triangle >= 0, ~height.mask)
    on = answers.triangle >= 0
    assert 1000 < on.sum() < 3900
    np.testing.assert_allclose(answers.height[on], height[on].data, atol=1e-8)
    east, north = (np.asarray(part[on].data) for part in theirs.gradient(*xy.T))
    np.testing.assert_allclose(answers.slope[on], np.hypot(east, north), rtol=1e-6, atol=1e-9)
    radians = np.radians(answers.aspect[on])
    np.testing.assert_allclose(answers.slope[on] * np.sin(radians), -east, rtol=1e-6, atol=1e-7)
    np.testing.assert_allclose(answers.slope[on] * np.cos(radians), -north, rtol=1e-6, atol=1e-7)
    for column in (answers.height, answers.slope, answers.aspect):
        assert np.all(np.isnan(column[~on]))


def test_no_place_and_a_place_that_is_no_number():
    tin = random_tin(20, 3)
    assert len(ask_surface(tin, np.empty((0, 2))).height) == 0
    answers = ask_surface(tin, np.array([[np.nan, 1.0]]))
    assert answers.triangle.tolist() == [-1]
    assert np.isnan(answers.height[0])


def test_a_vertex_has_its_own_height():
    tin = replace(random_tin(200, 4), origin=np.zeros(2))
    answers = ask_surface(tin, tin.vertices[:, :2])
    np.testing.assert_allclose(answers.height, tin.vertices[:, 2], atol=1e-9)
