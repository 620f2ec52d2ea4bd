"""What is said of a whole survey: judgement, and the places shown along the passes."""

import math

import numpy as np
import pytest

from plugin.core.messages import SurveyError
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.quality.accuracy import NONE_ON_SURFACE
from plugin.core.quality.check_points import checks_from_points
from plugin.core.quality.interval import FROM_CHECKS, FROM_CLAIMS, FROM_REPEATS
from plugin.core.quality.judgement import judge
from plugin.core.report.pass_figures import most_telling, places_along
from plugin.core.surface.build import build_surface


def walked(passes=8, steps=60, apart=3.0, sigma=0.01, seed=None):
    """A level field walked to and fro, a point every half metre."""
    rng = np.random.default_rng(seed)
    x = np.concatenate([np.arange(steps)[:: 1 if k % 2 == 0 else -1] * 0.5 for k in range(passes)])
    y = np.repeat(np.arange(passes) * apart, steps)
    z = 40 + rng.normal(0, sigma, len(x))
    lines = np.arange(2, len(x) + 2)
    return make_points(x, y, z, sigma_v=np.full(len(x), sigma), source_line=lines, source="field.csv")


def with_status(points, which, status, reason):
    statuses, reasons = points.status.copy(), points.reasons.copy()
    statuses[which], reasons[which] = status, reason
    return points.with_status(statuses, reasons)


def shots(count, off, at=(1.0, 1.0)):
    """Check points 0.9 m apart whose heights are off by ``off``."""
    x = at[0] + 0.9 * np.arange(count)
    return checks_from_points(make_points(x, np.full(count, at[1]), np.full(count, 40.0 + off)), ["hard"] * count)


def test_the_interval_rests_on_the_best_that_is_known():
    points = walked(seed=1)
    tin = build_surface(points).tin
    claimed, repeated = judge(tin, points).interval, judge(tin, points, repeat_sigma=0.02).interval
    checked = judge(tin, points, checks=shots(25, 0.1)).interval
    assert (claimed.basis, repeated.basis, checked.basis) == (FROM_CLAIMS, FROM_REPEATS, FROM_CHECKS)
    # RMSEz = interval / 3 (ASPRS 2014, annex B); the field is level, so noise is nearly all.
    assert claimed.interval == pytest.approx(3 * math.sqrt(2 / 3) * 0.01, rel=0.25)
    assert repeated.interval == pytest.approx(3 * math.sqrt(2 / 3) * 0.02, rel=0.1)
    assert checked.interval == pytest.approx(3 * 0.1, rel=0.1)


def test_own_check_shots_make_an_internal_check_only():
    points = walked(seed=2)
    tin = build_surface(points).tin
    assert judge(tin, points).accuracy is None
    own = with_status(points, np.arange(100, 130), Status.REJECTED, Reason.CHECK_SHOT)
    found = judge(build_surface(own).tin, own)
    assert found.accuracy.together.count == 30
    assert not found.accuracy.comparison.checks.independent
    assert found.interval.basis is FROM_CLAIMS, "shots of the same receiver vouch for no interval"


def test_check_points_beside_the_surface_are_an_error_but_own_shots_are_not():
    points = walked(seed=3)
    tin = build_surface(points).tin
    with pytest.raises(SurveyError) as raised:
        judge(tin, points, checks=shots(5, 0.0, at=(500.0, 500.0)))
    assert raised.value.code == NONE_ON_SURFACE.code
    beside = make_points(
        np.append(points.easting, 500.0), np.append(points.northing, 500.0), np.append(points.height, 40.0)
    )
    beside = with_status(beside, [len(points)], Status.REJECTED, Reason.CHECK_SHOT)
    assert judge(build_surface(beside).tin, beside).accuracy is None


def test_places_along_hold_every_fault_once_and_no_check_shot():
    points = walked(seed=4)
    lifted, tilted = np.arange(70, 80), np.array([300, 303])
    points = with_status(points, lifted, Status.REJECTED, Reason.POLE_HEIGHT)
    points = with_status(points, tilted, Status.FLAGGED, Reason.TILT)
    points = with_status(points, [200, 201], Status.REJECTED, Reason.CHECK_SHOT)
    places = places_along(points)
    assert [place.faults.tolist() for place in places] == [lifted.tolist(), tilted.tolist()]
    assert [place.reasons for place in places] == [Reason.POLE_HEIGHT, Reason.TILT]
    for place in places:
        assert set(place.faults) < set(place.shown)
        assert np.all(np.diff(place.shown) == 1)
        step = np.hypot(np.diff(points.easting[place.shown]), np.diff(points.northing[place.shown]))
        assert step.max() < 3.5, "a figure follows one unbroken walk"
    assert places_along(walked(seed=4)) == []


def test_each_kind_of_fault_is_shown_before_a_second_of_one_kind():
    points = walked(passes=12, seed=5)
    for k in range(6):
        points = with_status(points, np.arange(20, 32 + k) + 60 * k, Status.REJECTED, Reason.POLE_HEIGHT)
    points = with_status(points, [500], Status.FLAGGED, Reason.TILT)
    places = places_along(points)
    assert len(places) == 7
    chosen = most_telling(places, 3)
    assert [place.faults[0] for place in chosen] == [20 + 60 * 4, 20 + 60 * 5, 500]
