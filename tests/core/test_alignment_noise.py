"""The noise of a surface along a line: by strips, and by its points."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.alignment.grades import crossfall_forms, crossfalls, grades
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.noise import STRIP, noise_from_points, strip_noise, strip_times, survey_noise, white_part
from plugin.core.alignment.slopes import HeightNoise
from plugin.core.alignment.verdicts import Verdict, judge
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from tests.core.surfaces import ORIGIN, delaunay_tin


def lane():
    """A level lane, a point every metre, and the line along its middle."""
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 61.0), np.arange(0, 9.0)))
    tin = delaunay_tin(np.column_stack([x, y]), np.zeros(len(x)))
    return make_alignment(ORIGIN + np.array([[0.0, 4.0], [60.0, 4.0]])), tin


def points_of(tin, **columns):
    place = tin.vertices[:, :2] + tin.origin
    return make_points(easting=place[:, 0], northing=place[:, 1], height=tin.vertices[:, 2], **columns)


def test_points_of_a_strip_drift_together_and_strips_apart():
    line, tin = lane()
    time = strip_times(line, tin)
    y = tin.vertices[:, 1]
    assert np.all(np.isfinite(time))
    along = time[y == 4.0]
    assert np.ptp(along) == pytest.approx(60.0 / 1.2)
    starts = [time[y == v].min() for v in range(9)]
    assert np.min(np.diff(np.sort(starts))) > 50 * 90.0
    assert STRIP == 1.0


def test_drift_tilts_a_crossfall_and_hardly_a_grade():
    line, tin = lane()
    with_drift, without = (strip_noise(line, tin, sigma, drift) for sigma, drift in ((0.0125, 0.0075), (0.01, 0.0)))
    # both have 10 mm of the points' own
    assert with_drift.own == pytest.approx(0.01)
    one, other = (crossfalls(line, tin, noise, -3.0, 3.0, 10.0).sigma for noise in (with_drift, without))
    assert np.all(one > 1.5 * other)
    one, other = (grades(line, tin, noise, 5.0).sigma for noise in (with_drift, without))
    assert np.all(one < 1.1 * other)


def test_strip_drift_of_two_kerbs_by_hand():
    """A crossfall over one span between two long passes: drift of each, so drift sqrt(2) / width, and little else."""
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 201.0), [0.0, 8.0]))
    tin = delaunay_tin(np.column_stack([x, y]), np.zeros(len(x)))
    line = make_alignment(ORIGIN + np.array([[0.0, 4.0], [200.0, 4.0]]))
    found = crossfalls(line, tin, strip_noise(line, tin, 0.007, 0.007, drift_time=1e9), -4.0, 4.0, 20.0)
    np.testing.assert_allclose(found.sigma, 0.007 * np.sqrt(2) / 8, rtol=1e-3)


def test_times_and_claims_of_the_points_are_taken():
    line, tin = lane()
    n = len(tin.vertices)
    time = np.arange(n, dtype=float)
    claimed = np.full(n, 0.02)
    claimed[:10] = np.nan
    claimed[10:20] = 0.005  # less than the drift: nothing is left of its own
    noise, count = noise_from_points(line, tin, points_of(tin, time=time, sigma_v=claimed), 0.015, 0.007)
    assert count == n
    np.testing.assert_array_equal(noise.time, time)
    np.testing.assert_allclose(noise.own[20:], np.sqrt(0.02**2 - 0.007**2))
    np.testing.assert_allclose(noise.own[:10], np.sqrt(0.015**2 - 0.007**2))
    assert np.all(noise.own[10:20] == 0)
    untimed, _ = noise_from_points(line, tin, points_of(tin), 0.015, 0.007)
    np.testing.assert_array_equal(untimed.time, strip_times(line, tin))


def test_only_points_that_are_vertices_and_used_count():
    line, tin = lane()
    points = points_of(tin, time=np.arange(float(len(tin.vertices))))
    status = points.status.copy()
    status[7] = 2  # rejected
    moved = points.easting.copy()
    moved[9] += 0.01
    noise, count = noise_from_points(line, tin, replace(points, status=status, easting=moved), 0.015, 0.007)
    assert count == len(tin.vertices) - 2
    assert np.flatnonzero(np.isnan(noise.time)).tolist() == [7, 9]
    with pytest.raises(SurveyError, match="None of the"):
        noise_from_points(line, tin, replace(points, easting=points.easting + 0.3), 0.015, 0.007)


def test_survey_noise_follows_the_vertices_to_their_points():
    line, tin = lane()
    source = np.arange(len(tin.vertices))[::-1].copy()
    source[3] = -1
    time = np.arange(float(len(source)))
    noise = survey_noise(line, replace(tin, vertex_source=source), time, 0.015, 0.007)
    assert isinstance(noise, HeightNoise)
    assert np.isnan(noise.time[3])
    assert noise.time[5] == source[5]
    assert survey_noise(line, tin, None, 0.015, 0.007).time[0] == strip_times(line, tin)[0]


def test_a_drift_larger_than_the_whole_is_refused():
    assert white_part(0.013, 0.005) == pytest.approx(0.012)
    with pytest.raises(SurveyError, match="larger than the standard deviation"):
        white_part(0.01, 0.02)


def test_verdicts_hold_where_the_passes_drift():
    """A crossfall near the limit on surveys whose passes drift apart: by strips at most 5 % of verdicts are wrong,
    both of what keeps the limit and of what breaks it; by the points' noise alone far more."""
    rng = np.random.default_rng(12)
    line, tin = lane()
    forms = crossfall_forms(line, tin, np.array([20.0]), np.array([30.0]), -3.0, 3.0)
    white, drift, limit = 0.006, 0.009, 1 / 48
    cautious = forms.sigmas(strip_noise(line, tin, np.hypot(white, drift), drift))[0]
    naive = forms.sigmas(np.hypot(white, drift))[0]
    strip = np.rint(tin.vertices[:, 1]).astype(int)
    wrong = {"cautious": [0, 0], "naive": [0, 0]}
    counted = [0, 0]
    for _ in range(4000):
        truth = limit + rng.uniform(-3, 3) * cautious
        # within the seconds of a window a pass's drift is one offset
        height = -truth * tin.vertices[:, 1] + rng.normal(0, white, len(strip)) + rng.normal(0, drift, 9)[strip]
        value = np.abs(forms.values(replace(tin, vertices=np.column_stack([tin.vertices[:, :2], height]))))
        keeps = int(truth <= limit)
        counted[keeps] += 1
        for name, sigma in (("cautious", cautious), ("naive", naive)):
            wrong[name][keeps] += judge(value, sigma, limit, False)[0] is (Verdict.FAIL if keeps else Verdict.PASS)
    assert min(counted) > 1800
    assert max(w / n for w, n in zip(wrong["cautious"], counted)) < 0.05
    assert min(w / n for w, n in zip(wrong["naive"], counted)) > max(w / n for w, n in zip(wrong["cautious"], counted))
