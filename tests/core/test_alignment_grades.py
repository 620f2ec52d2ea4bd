"""Grades and crossfalls, against dense sampling, and their sigma against Monte Carlo."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.alignment.grades import crossfall_forms, crossfalls, grade_forms, grades, make_windows
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.slopes import HeightNoise
from plugin.core.messages import SurveyError
from plugin.core.surface.locate import heights_at
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin, ring

LINE = ORIGIN + np.array([[5.0, 12.0], [50.0, 15.0], [88.0, 45.0], [90.0, 95.0]])


def plane(slope_east, slope_north, n=400, seed=0):
    rng = np.random.default_rng(seed)
    xy = np.vstack([rng.uniform(0, 100, (n, 2)), [[0, 0], [100, 0], [100, 100], [0, 100]]]).round(3)
    return delaunay_tin(xy, 50 + xy @ [slope_east, slope_north])


def sampled_slope(tin, path, n=20_000):
    """Least squares over dense samples of the surface along a path (k, 2)."""
    at = np.append(0, np.cumsum(np.hypot(*np.diff(path, axis=0).T)))
    s = (np.arange(n) + 0.5) / n * at[-1]
    xy = np.column_stack([np.interp(s, at, path[:, k]) for k in (0, 1)])
    return np.polyfit(s - s.mean(), heights_at(tin, xy), 1)[0]


def test_slopes_of_a_plane_are_exact():
    tin = plane(0.05, -0.02)
    line = make_alignment(ORIGIN + np.array([[10.0, 20.0], [90.0, 20.0], [90.0, 90.0]]))
    found = grades(line, tin, 0.015, 10.0)
    assert len(found) == 15
    np.testing.assert_allclose(found.value, np.repeat([0.05, -0.02], [8, 7]), atol=1e-9)
    across = crossfalls(line, tin, 0.015, -3.0, 3.0, 10.0)
    # to the right is south on the first leg and east on the second
    np.testing.assert_allclose(across.value, np.repeat([0.02, 0.05], [8, 7]), atol=1e-9)
    assert np.all(found.sigma > 0)


def test_grades_and_crossfalls_against_dense_samples():
    tin = random_tin(700, 5)
    line = make_alignment(LINE)
    found = grades(line, tin, 0.02, 12.0, 5.0, offset=2.0)
    assert len(found) > 20
    for k in range(0, len(found), 4):
        path = line.between(found.begin[k], found.end[k], 2.0)
        assert found.value[k] == pytest.approx(sampled_slope(tin, path), abs=2e-6)
    across = crossfalls(line, tin, 0.02, -4.0, 1.0, 12.0, between=3.0)
    for k in (0, 3, len(across) - 1):
        count = round((across.end[k] - across.begin[k]) / 3.0)
        middles = across.begin[k] + (np.arange(count) + 0.5) * (across.end[k] - across.begin[k]) / count
        slopes = [sampled_slope(tin, np.vstack([line.places([d], -4.0), line.places([d], 1.0)])) for d in middles]
        assert across.value[k] == pytest.approx(np.mean(slopes), abs=2e-6)


@pytest.mark.parametrize("kind", ["grade", "crossfall"])
def test_sigma_against_monte_carlo(kind):
    """Noisy copies of the surface, each sampled densely and fitted by numpy; nothing of our weights in it."""
    tin = random_tin(500, 6)
    line = make_alignment(LINE)
    rng = np.random.default_rng(7)
    sigma = rng.uniform(0.005, 0.03, len(tin.vertices))
    begin, end = np.array([20.0, 60.0]), np.array([30.0, 68.0])
    forms = (
        grade_forms(line, tin, begin, end)
        if kind == "grade"
        else crossfall_forms(line, tin, begin, end, -3.0, 3.0, between=2.0)
    )
    for k in range(2):
        count = 1 if kind == "grade" else round((end[k] - begin[k]) / 2.0)
        step = (end[k] - begin[k]) / count
        middles = begin[k] + (np.arange(count) + 0.5) * step
        paths = (
            [line.between(begin[k], end[k])]
            if kind == "grade"
            else [np.vstack([line.places([d], -3.0), line.places([d], 3.0)]) for d in middles]
        )
        drawn = monte_carlo(tin, sigma, paths, rng)
        assert drawn.std(ddof=1) == pytest.approx(forms.sigmas(sigma)[k], rel=0.05)
        assert drawn.mean() == pytest.approx(forms.values(tin)[k], abs=4 * forms.sigmas(sigma)[k] / 50)


def monte_carlo(tin, sigma, paths, rng, draws=3000, n=300):
    """Mean least-squares slope of paths on ``draws`` noisy copies of the surface."""
    total = np.zeros(draws)
    noise = rng.normal(0, 1, (draws, len(sigma))) * sigma
    for path in paths:
        at = np.append(0, np.cumsum(np.hypot(*np.diff(path, axis=0).T)))
        s = (np.arange(n) + 0.5) / n * at[-1]
        xy = np.column_stack([np.interp(s, at, path[:, k]) for k in (0, 1)])
        # what a metre on each vertex does to the heights asked, by asking the surface itself
        used = np.flatnonzero(np.hypot(*(tin.vertices[:, :2] + ORIGIN - xy.mean(axis=0)).T) < 40)
        base = heights_at(tin, xy)
        gain = np.empty((n, len(used)))
        for j, v in enumerate(used):
            moved = tin.vertices.copy()
            moved[v, 2] += 1.0
            gain[:, j] = heights_at(replace(tin, vertices=moved), xy) - base
        heights = base + noise[:, used] @ gain.T
        total += np.polyfit(s - s.mean(), heights.T, 1)[0]
    return total / len(paths)


def test_sigma_with_drift_against_monte_carlo():
    """Passes up and down at different times: the drift of each pass tilts the lane."""
    rng = np.random.default_rng(11)
    y, x = (v.ravel() for v in np.meshgrid(np.arange(0, 8.0), np.arange(0, 60.0)))
    tin = delaunay_tin(np.column_stack([x, y]), 0.02 * y)
    x, y = tin.vertices[:, 0], tin.vertices[:, 1]
    time = 70 * y + np.where(y % 2, 60 - x, x)
    time[5:9] = np.nan
    line = make_alignment(ORIGIN + np.array([[5.0, 4.0], [55.0, 4.0]]))
    forms = crossfall_forms(line, tin, np.array([10.0]), np.array([25.0]), -3.0, 3.0, between=1.0)
    noise = HeightNoise(0.01, 0.007, 90.0, time)
    order = np.flatnonzero(np.isfinite(time))[np.argsort(time[np.isfinite(time)])]
    drift = rng.normal(0, 0.007, (6000, len(time)))
    for before, k in zip(order[:-1], order[1:]):  # the process step by step, not by its covariance
        keep = np.exp(-(time[k] - time[before]) / 90.0)
        drift[:, k] = keep * drift[:, before] + np.sqrt(1 - keep**2) * drift[:, k]
    heights = tin.vertices[:, 2] + drift + rng.normal(0, 0.01, drift.shape)
    slopes = np.array([forms.values(replace(tin, vertices=np.column_stack([x, y, z])))[0] for z in heights])
    assert slopes.std(ddof=1) == pytest.approx(forms.sigmas(noise)[0], rel=0.05)
    assert forms.sigmas(noise)[0] > 1.3 * forms.sigmas(np.hypot(0.01, 0.007))[0]


def test_sigma_of_one_span_by_hand():
    """A line along an edge between two vertices L apart: slope = (z2 - z1) / L, so sigma is s sqrt(2) / L."""
    tin = delaunay_tin(np.array([[0, 0], [10, 0], [10, 10], [0, 10.0]]), np.zeros(4))
    line = make_alignment(ORIGIN + np.array([[0.0, 0.0], [10.0, 0.0]]))
    found = grades(line, tin, 0.01, 10.0)
    assert found.sigma[0] == pytest.approx(0.01 * np.sqrt(2) / 10, rel=1e-9)


def test_windows_off_the_surface_have_no_value():
    tin = random_tin(900, 3, keep=ring)
    line = make_alignment(ORIGIN + np.array([[10.0, 50.0], [90.0, 50.0]]))
    found = grades(line, tin, 0.02, 5.0)
    off = np.isnan(found.value)
    assert np.array_equal(off, np.isnan(found.sigma))
    assert off[(found.begin > 30) & (found.end < 50)].all()
    assert not off[found.end < 15].any()
    across = crossfalls(line, tin, 0.02, -2.0, 2.0, 5.0)
    assert np.isnan(across.value[8])
    assert np.isfinite(across.value[0])


def test_windows():
    line = make_alignment([[0, 0], [103.0, 0]])
    begin, end = make_windows(line, 10.0)
    assert (len(begin), begin[0], end[-1]) == (10, 0, 103)
    np.testing.assert_allclose(begin[1:], end[:-1])
    begin, end = make_windows(line, 10.0, 2.0)
    assert (begin[0], end[-1]) == (0, 103)
    np.testing.assert_allclose(end - begin, 10)
    assert np.diff(begin) == pytest.approx(2.0, abs=0.05)
    for window, step in ((0, None), (104, None), (10, 0), (np.nan, None), (10, -1)):
        with pytest.raises(SurveyError, match="does not fit a line of 103"):
            make_windows(line, window, step)


def test_missing_sigma_and_offsets_in_the_wrong_order_are_refused():
    tin, line = random_tin(300, 1), make_alignment(LINE)
    with pytest.raises(SurveyError, match="1 vertices"):
        grades(line, tin, np.append(np.full(len(tin.vertices) - 1, 0.02), np.nan), 10.0)
    with pytest.raises(SurveyError, match="from offset 3"):
        crossfalls(line, tin, 0.02, 3.0, -3.0, 10.0)
