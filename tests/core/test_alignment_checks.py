"""Checks against limits and indications: known surfaces, and how often verdicts near the limit are right."""

from dataclasses import replace

import numpy as np
import pytest

from plugin.core.alignment.checks import check_line
from plugin.core.alignment.crowns import find_lane, plain_lane
from plugin.core.alignment.curves import fit_heights
from plugin.core.alignment.grades import crossfall_forms, grade_forms, reach
from plugin.core.alignment.indications import check_gutter, fall_to_kerb, sight_on_crests
from plugin.core.alignment.line import make_alignment
from plugin.core.alignment.parts import Part, part_slopes
from plugin.core.alignment.rules import Condition, LeastK, Quantity, Rule
from plugin.core.alignment.verdicts import Verdict, judge, only_where
from tests.core.surfaces import ORIGIN, delaunay_tin

P, F, C = Verdict.PASS, Verdict.FAIL, Verdict.TOO_CLOSE
GRADE = Rule("grade", Quantity.GRADE, 0.05, "1:20", False, 10.0, None, "test")
CROSS = Rule("cross", Quantity.CROSSFALL, 1 / 48, "1:48", False, 10.0, None, "test")


def road(height, length=100.0, half=5.0, spacing=1.0):
    """A TIN of ``height(x, y)`` on a grid, y from 0 to 2 half, and the line along its middle."""
    x, y = np.meshgrid(np.arange(0, length + 0.1, spacing), np.arange(0, 2 * half + 0.1, spacing))
    xy = np.column_stack([x.ravel(), y.ravel()])
    line = make_alignment(ORIGIN + np.array([[0.0, half], [length, half]]), "Lane")
    return line, delaunay_tin(xy, height(xy[:, 0], xy[:, 1]))


def test_judging_by_hand():
    value, sigma = [0.040, 0.0499, 0.052, 0.056, np.nan, 0.05], [0.003, 0.003, 0.003, 0.003, 0.003, 0.0]
    assert judge(value, sigma, 0.05, False).tolist() == [P, C, C, F, Verdict.NO_SURFACE, P]
    assert judge(value, sigma, 0.05, True).tolist() == [F, C, C, P, Verdict.NO_SURFACE, P]
    # 0.05 - 1.96 * 0.003 = 0.04412: on either side of it
    assert judge([0.0441, 0.0442], 0.003, 0.05, False).tolist() == [P, C]


def test_conditions():
    own = np.array([P, F, C, F, F, P], object)
    applies = np.array([P, P, P, F, C, C], object)
    assert only_where(own, applies).tolist() == [P, F, C, Verdict.NOT_APPLICABLE, C, P]


def test_a_lane_that_gets_steeper():
    """3 % for 50 m, then 7 %: with heights to 1 mm all is certain but for the window astride the change."""
    line, tin = road(lambda x, y: 50 + 0.03 * x + 0.04 * np.maximum(x - 55, 0) + 0.01 * y)
    ramp = replace(GRADE, name="ramp", limit=1 / 12, condition=Condition(True, 0.05, "grade > 1:20"))
    result = check_line(line, tin, 0.0001, [GRADE, ramp, CROSS], plain_lane(-3.0, 3.0), reach(line, tin))
    grade = result.of(GRADE)
    assert (grade[0].verdict, grade[0].begin, grade[0].end) == (P, 0, 50)
    assert grade[-1].verdict == F
    assert (grade[-1].end, grade[-1].value) == (100, pytest.approx(0.07))
    assert sum(result.lengths(GRADE).values()) == pytest.approx(100)
    assert result.of(ramp)[0].verdict == Verdict.NOT_APPLICABLE
    assert result.of(ramp)[-1].verdict == P
    (cross,) = result.of(CROSS)
    assert (cross.verdict, cross.begin, cross.end, cross.value) == (P, 0, 100, pytest.approx(0.01))
    assert result.messages


def test_no_surface_is_said():
    _, tin = road(lambda x, y: 50 + 0.03 * x, length=60.0)
    longer = make_alignment(ORIGIN + np.array([[0.0, 5.0], [100.0, 5.0]]), "Lane")
    stretches = check_line(longer, tin, 0.01, [GRADE], plain_lane(-3.0, 3.0), reach(longer, tin)).stretches
    assert stretches[-1].verdict == Verdict.NO_SURFACE
    assert (stretches[-1].begin, stretches[-1].end) == (60, 100)
    assert np.isnan(stretches[-1].value)


@pytest.mark.parametrize("kind", ["grade", "crossfall"])
def test_verdicts_near_the_limit_are_right(kind):
    """True slopes within 4 standard deviations of the limit, noisy points: at most 5 % of verdicts are wrong, both
    of what keeps the limit and of what breaks it, and well clear of it most are decided."""
    line, tin = road(lambda x, y: 0 * x, length=12.0)
    begin, end = np.array([1.0]), np.array([11.0])
    rng = np.random.default_rng(5)
    noise, limit = 0.015, 0.05 if kind == "grade" else 1 / 48
    forms = grade_forms(line, tin, begin, end) if kind == "grade" else crossfall_forms(line, tin, begin, end, -3.0, 3.0)
    sigma = forms.sigmas(noise)[0]
    x, y = tin.vertices[:, 0], tin.vertices[:, 1]
    wrong, decided, counted = {True: 0, False: 0}, 0, {True: 0, False: 0}
    for _ in range(4000):
        truth = limit + rng.uniform(-4, 4) * sigma
        height = truth * (x if kind == "grade" else -y) + rng.normal(0, noise, len(x))
        surveyed = replace(tin, vertices=np.column_stack([tin.vertices[:, :2], height]))
        verdict = judge(np.abs(forms.values(surveyed)), sigma, limit, False)[0]
        keeps = truth <= limit
        counted[keeps] += 1
        wrong[keeps] += verdict == (F if keeps else P)
        decided += verdict in (P, F) and abs(truth - limit) > 3.9 * sigma
    for keeps in (True, False):
        assert counted[keeps] > 1800
        assert wrong[keeps] / counted[keeps] < 0.05
    assert decided > 0.9 * 4000 * 0.1 / 4


def test_verdicts_at_the_limit_itself():
    """The hardest case: a truth a hair beside the limit is judged wrongly in 2.5 %."""
    rng = np.random.default_rng(6)
    for truth, bad in ((0.05 + 1e-9, P), (0.05 - 1e-9, F)):
        verdict = judge(truth + rng.normal(0, 0.002, 20_000), 0.002, 0.05, False)
        assert np.mean(verdict == bad) == pytest.approx(0.025, abs=0.005)


def test_limits_on_k():
    s = np.arange(0, 200.0)
    heights = 100 + 0.04 * s - 0.07 * np.where(s < 60, 0, np.where(s > 120, s - 90, (s - 60) ** 2 / 120))
    fit = fit_heights(s, heights + np.random.default_rng(1).normal(0, 0.005, len(s)))
    line, tin = road(lambda x, y: 0 * x)
    rules = [replace(GRADE, quantity=Quantity.CREST_K, limit=k, at_least=True, name=f"K {k}") for k in (5, 12)]
    rules.append(replace(rules[0], quantity=Quantity.SAG_K, name="sag"))
    result = check_line(line, tin, 0.01, rules, plain_lane(-1, 1), reach(line, tin), fit)
    assert [(s.rule.name, s.verdict) for s in result.stretches] == [("K 5", P), ("K 12", F)]
    # K = 60 / 7 = 8.57
    table = (LeastK(30, 2), LeastK(40, 5), LeastK(50, 8.57), LeastK(60, 15))
    sight = sight_on_crests(fit, table)
    (crest,) = sight.crests
    assert (crest.speed, crest.doubtful) == (40, 50)
    assert crest.verdicts == (P, P, C, F)
    assert "indication only" in str(sight.messages[0])


def test_fall_to_the_kerb():
    """A crown with 2.5 % to both sides, but the right side tips the wrong way from 60 m on."""

    def height(x, y):
        right = 5 - y  # the line runs east at y = 5
        return 50 - np.where(right < 0, -0.025 * right, np.where(x < 60, 0.025, -0.01) * right)

    line, tin = road(height)
    within = reach(line, tin, (-4.0, 4.0))
    across = part_slopes(line, tin, 0.001, find_lane(line, tin, 0.001, -4.0, 4.0, within), 10.0, within=within)
    left = fall_to_kerb(across, Part.LEFT, least=0.01)
    assert set(left.verdict) == {P}
    np.testing.assert_allclose(left.slopes.value, 0.025, atol=1e-9)
    right = fall_to_kerb(across, Part.RIGHT, least=0.01)
    assert right.verdict[:5].tolist() == [P] * 5
    assert right.verdict[-3:].tolist() == [F] * 3
    np.testing.assert_allclose(right.slopes.value[-3:], -0.01, atol=1e-9)


def test_low_points_in_the_gutter():
    """A gutter that falls to x = 40, rises by 60 mm to x = 60 and falls on: water stands 60 mm deep before the rise."""

    def height(x, y):
        kerb = np.where(y < 1.5, 0.3, 0.0)
        return 50 + np.interp(x, [0, 40, 60, 100], [0.4, 0.0, 0.06, -0.4]) + 0.02 * y + kerb

    line, tin = road(height)
    gutter = check_gutter(line, tin, 0.005, 3.0, least_grade=0.005, window=10.0)
    (low,) = gutter.low_points
    assert (low.at, low.sill, low.depth) == (pytest.approx(40), pytest.approx(60), pytest.approx(0.06))
    assert (low.begin, low.end) == (pytest.approx(34), pytest.approx(60))
    assert low.sigma == pytest.approx(0.005 * np.sqrt(2))  # one vertex against another
    assert gutter.verdict[0] == P
    assert gutter.verdict[4] == F  # 3 mm a metre
    assert check_gutter(line, tin, 0.03, 3.0, window=10.0).low_points == ()  # 60 mm is not 2 sigmas of 42 mm
    assert "indication" not in str(gutter.messages[0])
    assert "a gully lets it off only if it is given" in str(gutter.messages[0])


def test_noise_makes_few_low_points():
    rng = np.random.default_rng(8)
    count = 0
    for _ in range(10):
        line, tin = road(lambda x, y: 50 - 0.01 * x + rng.normal(0, 0.01, len(x)))
        count += len(check_gutter(line, tin, 0.01, 2.0).low_points)
    assert count <= 10
    rows = check_gutter(line, tin, 0.01, 2.0, least_sigmas=0.0).low_points
    assert len(rows) > 5  # without the filter there are many
