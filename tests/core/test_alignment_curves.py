"""Grades and vertical curves fitted to profiles: known designs, noise, covers; sigma against many draws."""

import numpy as np
import pytest

from plugin.core.alignment.curves import fit_curves, fit_heights
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.profile import HeightLine, make_profile
from plugin.core.messages import SurveyError
from tests.core.surfaces import ORIGIN, delaunay_tin

S = np.arange(0, 400.1, 2.0)
GRADES, MEETINGS, LENGTHS = [0.04, -0.03, 0.015, -0.01], [90.0, 200.0, 320.0], [60.0, 80.0, 40.0]


def design(s, grades=GRADES, meetings=MEETINGS, lengths=LENGTHS, start=100.0):
    """Heights by integrating the grade, which is straight in a parabola: independent of the code's own formula."""
    knots, values = [0.0], [grades[0]]
    for p, length, before, after in zip(meetings, lengths, grades, grades[1:]):
        knots += [p - length / 2, p + length / 2]
        values += [before, after]
    fine = np.unique(np.concatenate([s, knots, [s[-1]]]))
    grade = np.interp(fine, knots, values)
    heights = start + np.append(0, np.cumsum((grade[1:] + grade[:-1]) / 2 * np.diff(fine)))
    return np.interp(s, fine, heights)


def test_an_exact_design_comes_back():
    fit = fit_heights(S, design(S))
    assert [g.grade for g in fit.grades] == pytest.approx(GRADES, abs=1e-8)
    assert [c.meeting for c in fit.curves] == pytest.approx(MEETINGS, abs=1e-4)
    assert [c.length for c in fit.curves] == pytest.approx(LENGTHS, abs=1e-3)
    # K = L / A, A in percent: 60 m / 7, 80 m / 4.5, 40 m / 2.5
    assert [c.k for c in fit.curves] == pytest.approx([60 / 7, 80 / 4.5, 16.0], rel=1e-5)
    assert [c.crest for c in fit.curves] == [True, False, True]
    # the top is where the grade is 0: g L / A beyond the curve's begin
    assert fit.curves[0].extreme == pytest.approx(60 + 0.04 / 0.07 * 60, abs=1e-3)
    assert fit.curves[0].meeting_height == pytest.approx(100 + 0.04 * 90, abs=1e-6)
    assert fit.worst < 1e-6
    np.testing.assert_allclose(fit.heights(S), design(S), atol=1e-6)


def test_sigmas_hold_in_many_draws():
    rng = np.random.default_rng(1)
    grades, found = [0.04, -0.03], []
    truth = np.array([*grades, 60 / 7])
    s = np.arange(0, 200.1, 2.0)
    for _ in range(120):
        fit = fit_heights(s, design(s, grades, [90.0], [60.0]) + rng.normal(0, 0.008, len(s)), most=1)
        found.append([*((g.grade, g.sigma) for g in fit.grades), (fit.curves[0].k, fit.curves[0].k_sigma)])
    found = np.array(found)
    ratio = found[:, :, 0].std(axis=0, ddof=1) / np.sqrt(np.mean(found[:, :, 1] ** 2, axis=0))
    np.testing.assert_allclose(ratio, 1, atol=0.2)  # 120 draws know a deviation to about 6 %, and soft-L1 costs 5 %
    inside = np.abs(found[:, :, 0] - truth) < 1.96 * found[:, :, 1]
    assert inside.mean() > 0.9


def test_sigmas_of_a_short_profile_count_what_was_fitted():
    """14 heights, five of them taken by the fit: sigmas that leave that out are a quarter too small."""
    rng = np.random.default_rng(2)
    s, grades, found = np.linspace(0, 200, 14), [0.04, -0.03], []
    for _ in range(250):
        fit = fit_heights(s, design(s, grades, [100.0], [80.0]) + rng.normal(0, 0.01, len(s)), most=1)
        found.append([*((g.grade, g.sigma) for g in fit.grades), (fit.curves[0].k, fit.curves[0].k_sigma)])
    found = np.array(found)
    ratio = found[:, :, 0].std(axis=0, ddof=1) / np.sqrt(np.mean(found[:, :, 1] ** 2, axis=0))
    np.testing.assert_allclose(ratio, 1, atol=0.15)  # 250 draws know a deviation to 4.5 %, and soft-L1 costs 5 %


def test_covers_and_kerbs_crossed_count_little():
    rng = np.random.default_rng(2)
    z = design(S) + rng.normal(0, 0.008, len(S))
    z[rng.choice(len(S), 16, replace=False)] += rng.choice([-0.2, 0.15], 16)
    fit = fit_heights(S, z)
    assert [g.grade for g in fit.grades] == pytest.approx(GRADES, abs=8e-4)
    assert [c.meeting for c in fit.curves] == pytest.approx(MEETINGS, abs=2)
    assert fit.spread == pytest.approx(0.008, rel=0.3)
    assert fit.worst > 0.12


@pytest.mark.parametrize("seed", range(6))
def test_random_designs(seed):
    """As many curves as the design has, whose heights are met within the noise."""
    rng = np.random.default_rng(seed)
    count = int(rng.integers(0, 5))
    parts = rng.uniform(40, 90, 2 * count + 1)
    ends = np.cumsum(parts)
    meetings, lengths = (ends[0:-1:2] + ends[1::2]) / 2, parts[1::2]
    change = rng.uniform(0.02, 0.06, count) * rng.choice([-1, 1], count)
    grades = rng.uniform(-0.03, 0.03) + np.append(0, np.cumsum(change))
    s = np.arange(0, ends[-1], 1.0)
    fit = fit_heights(s, design(s, grades, meetings, lengths) + rng.normal(0, 0.01, len(s)))
    assert len(fit.curves) == count
    assert np.abs(fit.heights(s) - design(s, grades, meetings, lengths)).max() < 0.012
    assert [c.meeting for c in fit.curves] == pytest.approx(list(meetings), abs=3)


def test_grades_of_correlated_heights_are_as_sure_as_told():
    """Noise that drifts along the road (first-order autoregressive, 0.8 from metre to metre): were heights taken for
    independent, grades would seem three times as sure as they are.
    """
    rng, normed = np.random.default_rng(6), []
    s = np.arange(0, 200.0)
    for _ in range(60):
        noise = np.zeros(len(s))
        kicks = rng.normal(0, 0.01 * 0.6, len(s))
        for i in range(1, len(s)):
            noise[i] = 0.8 * noise[i - 1] + kicks[i]
        fit = fit_heights(s, 100 - 0.03 * s + noise, most=0)
        normed.append((fit.grades[0].grade + 0.03) / fit.grades[0].sigma)
    assert np.mean(np.abs(normed) < 1.96) > 0.85
    assert 0.7 < np.std(normed) < 1.5


def test_a_curve_that_the_heights_do_not_tell_is_not_told():
    """Few heights about a sharp change of grade: whether there is a curve of some metres cannot be known."""
    s = np.arange(0, 200.0, 10.0)
    sharp = fit_heights(s, 100 + 0.03 * np.abs(s - 101.0) + np.random.default_rng(5).normal(0, 0.01, len(s)), most=1)
    assert not sharp.curves[0].determined
    wide = fit_heights(S, design(S) + np.random.default_rng(5).normal(0, 0.01, len(S)))
    assert all(curve.determined for curve in wide.curves)


def test_one_grade_is_one_grade():
    rng = np.random.default_rng(3)
    fit = fit_heights(S, 50 - 0.012 * S + rng.normal(0, 0.01, len(S)))
    assert fit.curves == ()
    assert fit.grades[0].grade == pytest.approx(-0.012, abs=3 * fit.grades[0].sigma)


def test_a_profile_with_a_gap():
    s = np.concatenate([np.arange(0, 150.0), np.arange(170, 400.0)])
    line = HeightLine("ground", s, design(s), np.array([0, 150, len(s)]), np.array([[149.0, 170.0]]))
    fit = fit_curves(line, 2.0)
    assert [g.grade for g in fit.grades] == pytest.approx(GRADES, abs=3e-4)
    assert not np.any((fit.distance > 149) & (fit.distance < 170))
    part = fit_curves(line, 2.0, begin=125, end=155)
    assert (part.curves, part.grades[0].grade) == ((), pytest.approx(-0.03, abs=1e-6))


def test_on_a_surface_of_noisy_points():
    """A road 8 m wide walked every half metre with 15 mm noise."""
    rng = np.random.default_rng(4)
    x = rng.uniform(0, 400, 6400)
    y = rng.uniform(0, 8, 6400)
    tin = delaunay_tin(
        np.column_stack([x, y]), design(np.sort(x))[np.argsort(np.argsort(x))] + rng.normal(0, 0.015, 6400)
    )
    line = make_alignment(ORIGIN + np.array([[2.0, 4.0], [398.0, 4.0]]))
    fit = fit_curves(make_profile(line, [("ground", tin)]).surfaces[0], 1.0)
    assert [g.grade for g in fit.grades] == pytest.approx(GRADES, abs=1e-3)
    assert [c.k for c in fit.curves] == pytest.approx([60 / 7, 80 / 4.5, 16.0], rel=0.15)


def test_too_few_heights():
    with pytest.raises(SurveyError, match=r"5 heights are too few .* at least 8"):
        fit_heights(S[:5], S[:5])
    line = HeightLine("ground", S, S, np.array([0, len(S)]), np.empty((0, 2)))
    with pytest.raises(SurveyError, match="0 heights"):
        fit_curves(line, 2.0, begin=500)
