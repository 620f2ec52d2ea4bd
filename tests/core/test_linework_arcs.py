"""Arcs through three points: the circle and the chords' sagitta against closed form."""

import math

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from plugin.core.linework.arcs import ArcTrouble, arc_through, shape_line

ORIGIN = np.array([3_512_345.678, 5_712_395.593])


def on_circle(radius, angles, heights, centre=ORIGIN):
    angles = np.asarray(angles, float)
    return np.column_stack(
        [centre[0] + radius * np.cos(angles), centre[1] + radius * np.sin(angles), np.asarray(heights, float)]
    )


@given(
    radius=st.floats(0.5, 5000),
    first=st.floats(0, 6.28),
    sweeps=st.tuples(st.floats(0.05, 3.1), st.floats(0.05, 3.1)),
    turn=st.sampled_from([-1, 1]),
    tolerance=st.sampled_from([0.001, 0.01, 0.05]),
    heights=st.tuples(*[st.floats(-5, 5)] * 3),
)
def test_chords_of_a_known_circle(radius, first, sweeps, turn, tolerance, heights):
    angles = first + turn * np.cumsum([0, *sweeps])
    assume(sum(sweeps) < 6.2)
    given_xyz = on_circle(radius, angles, heights)
    shaped = shape_line(given_xyz, np.array([False, True, False]), False, tolerance)
    assert shaped.troubles == ()
    # measured vertices stay as they are, and the others are nobody's
    assert np.array_equal(shaped.xyz[shaped.source >= 0], given_xyz)
    assert shaped.source[shaped.source >= 0].tolist() == [0, 1, 2]
    # every vertex on the circle, up to what plan coordinates of this size resolve
    away = shaped.xyz[:, :2] - ORIGIN
    slack = 1e-7 + 2e-8 * radius / min(sweeps)
    assert np.allclose(np.hypot(*away.T), radius, atol=slack, rtol=0)
    # sagitta of a chord c: r - sqrt(r^2 - (c/2)^2), closed form
    chords = np.hypot(*np.diff(shaped.xyz[:, :2], axis=0).T)
    sagitta = radius - np.sqrt(np.maximum(radius**2 - chords**2 / 4, 0))
    assert sagitta.max() <= tolerance * (1 + 1e-6) + slack
    # in the right direction, once round at most
    steps = np.diff(np.unwrap(np.arctan2(away[:, 1], away[:, 0])))
    assert np.all(steps * turn > 0)
    assert abs(steps.sum() * turn - sum(sweeps)) < 1e-4
    # heights linear along the arc on each span
    walked = np.concatenate([[0], np.cumsum(np.abs(steps))])
    assert np.allclose(shaped.xyz[:, 2], np.interp(walked, np.cumsum([0, *sweeps]), heights), atol=1e-4)


def test_fewest_chords_for_the_tolerance():
    # quarter circle of 10 m: a chord over angle a stands off 10 (1 - cos(a/2)); 0.01 m allows a = 0.08945 rad
    xyz = on_circle(10.0, [0, math.pi / 4, math.pi / 2], [0, 0, 0])
    shaped = shape_line(xyz, np.array([False, True, False]), False, 0.01)
    assert len(shaped.xyz) - 1 == 2 * math.ceil(math.pi / 4 / (2 * math.acos(1 - 0.01 / 10)))


def test_three_points_in_a_row_are_a_straight_line():
    xyz = np.array([[0, 0, 0], [1, 1, 1], [3, 3, 3]], float)
    shaped = shape_line(xyz, np.array([False, True, False]), False, 0.01)
    assert np.array_equal(shaped.xyz, xyz)
    assert shaped.troubles == ()


@pytest.mark.parametrize(
    "points",
    [
        [[0, 0], [2, 0], [1, 0]],  # middle point beyond the end
        [[0, 0], [2, 0.01], [1, 0]],  # the same, with noise: would be an arc of hundreds of metres
        [[0, 0], [1, 0], [0, 0]],  # there and back
        [[0, 0], [0, 0], [1, 0]],
    ],
)
def test_no_arc(points):
    points = np.array(points, float)
    assert arc_through(*points) is None


def test_ends_of_an_open_line_are_no_middles():
    xyz = on_circle(5, [0, 1, 2], [0, 0, 0])
    shaped = shape_line(xyz, np.array([True, False, True]), False, 0.01)
    assert shaped.troubles == ((0, ArcTrouble.AT_END), (2, ArcTrouble.AT_END))
    assert np.array_equal(shaped.xyz, xyz)


def test_a_closed_line_of_arcs_is_the_circle():
    radius, tolerance = 4.0, 0.002
    xyz = on_circle(radius, np.arange(4) * math.pi / 2, np.zeros(4), centre=np.zeros(2))
    shaped = shape_line(xyz, np.ones(4, bool), True, tolerance)
    assert shaped.troubles == ()
    x, y = shaped.xyz[:, 0], shaped.xyz[:, 1]
    area = 0.5 * np.sum(x * np.roll(y, -1) - y * np.roll(x, -1))
    # each chord loses less than 2/3 chord x sagitta; together less than 2/3 circumference x tolerance
    assert 0 < math.pi * radius**2 - area < 2 / 3 * 2 * math.pi * radius * tolerance


def test_neighbouring_arcs_that_differ_are_reported_and_the_first_holds():
    xyz = np.array([[0, 0, 0], [1, 0.5, 0], [2, 0, 0], [3, -0.5, 0], [4, 0, 0]], float)
    shaped = shape_line(xyz, np.array([False, True, True, False, False]), False, 0.001)
    assert shaped.troubles == ((2, ArcTrouble.DISAGREES),)
    inserted = shaped.xyz[(shaped.source < 0) & (shaped.xyz[:, 0] < 2)]
    # circle through the first three: centre (1, -0.75), radius 1.25
    assert np.allclose(np.hypot(inserted[:, 0] - 1, inserted[:, 1] + 0.75), 1.25)
