"""Accuracy statements: against published numbers, scipy.stats, and the demo survey with its check points."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pyproj import CRS
from scipy import stats

from plugin.core.linework.codes import default_code_table
from plugin.core.linework.join import join_lines
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import apply_decisions, read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import make_points
from plugin.core.quality import accuracy as a
from plugin.core.quality.accuracy import accuracy_statement, vertical_class
from plugin.core.quality.check_points import (
    COVER_MISSING,
    COVER_UNKNOWN,
    NO_CHECK_SHOTS,
    PLAIN_GRASS,
    SAME_RECEIVER,
    Cover,
    check_shots,
    checks_from_points,
    pair_by_name,
)
from plugin.core.quality.check_points import (
    read_check_points as read_any_check_points,
)
from plugin.core.quality.statistics import height_statistics, nssda_radius, plan_statistics, rmse_interval
from plugin.core.surface.build import build_surface
from plugin.core.units import LengthUnit
from tests.core.surfaces import ORIGIN, delaunay_tin

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"


def read_check_points(path, **choices):
    """In metres, which a file without a coordinate system does not say."""
    return read_any_check_points(path, unit=LengthUnit.METRE, **choices)


def codes(messages):
    return [each.text.code for each in messages]


def tilted_plane(x, y):
    return 50 + 0.03 * x - 0.02 * y


@pytest.fixture(scope="module")
def plane():
    """A surface of 100 m by 80 m that is a plane, so that its height is known everywhere."""
    x, y = (each.ravel() for each in np.meshgrid(np.arange(0, 101, 5.0), np.arange(0, 81, 5.0)))
    return delaunay_tin(np.column_stack([x, y]), tilted_plane(x, y))


def check_file(folder, rows, header="name,easting,northing,height,sigma_h,sigma_v,cover"):
    path = folder / "checks.csv"
    path.write_text("\n".join([header, *rows]) + "\n", encoding="utf-8")
    return path


def row(name, x, y, off, sigma_v="", cover="hard"):
    """A check point at local x, y so that the plane lies ``off`` metres above it."""
    return f"{name},{ORIGIN[0] + x:.3f},{ORIGIN[1] + y:.3f},{tilted_plane(x, y) - off:.5f},,{sigma_v},{cover}"


def spread_places(count, seed=4):
    """Places on a jittered lattice over the plane's site."""
    rng = np.random.default_rng(seed)
    x, y = (each.ravel() for each in np.meshgrid(np.linspace(8, 92, 6), np.linspace(5, 75, 6)))
    order = rng.permutation(36)[:count]
    return np.column_stack([x, y])[order]


def checks_of(folder, offs, sigma_v="", cover="hard", seed=4):
    places = spread_places(len(offs), seed)
    rows = [row(f"T{i}", x, y, off, sigma_v, cover) for i, ((x, y), off) in enumerate(zip(places, offs))]
    return read_check_points(check_file(folder, rows))


def sample_with(count, mean, deviation, seed):
    """A sample of exactly this mean and sample standard deviation."""
    values = np.random.default_rng(seed).normal(size=count)
    values = (values - values.mean()) / values.std(ddof=1)
    return mean + deviation * values


@pytest.mark.parametrize("seed", range(5))
def test_the_numbers_of_a_published_report_agree(seed):
    """USGS, vertical accuracy report of the Barataria and Jean Lafitte elevation project, Louisiana (2013): 51
    open-ground checks. The report gives no single differences, but its four numbers hang together."""
    result = height_statistics(sample_with(51, -0.00533333349535, 0.0577205913534, seed))
    assert result.rmse == pytest.approx(0.0574002119585, rel=1e-8)
    assert result.accuracy_95 == pytest.approx(0.112504415439, rel=1e-8)
    assert result.deviation == pytest.approx(0.0577205913534, rel=1e-12)
    assert not result.biased


@pytest.mark.filterwarnings("ignore:Precision loss")
@settings(max_examples=100, deadline=None)
@given(st.lists(st.floats(-5, 5).map(lambda v: round(v, 4)), min_size=2, max_size=60))
def test_statistics_are_those_of_scipy(values):
    d = np.array(values)
    result = height_statistics(d)
    described = stats.describe(d)
    assert result.mean == pytest.approx(described.mean, abs=1e-12)
    assert result.deviation == pytest.approx(np.sqrt(described.variance), abs=1e-9)
    assert result.rmse**2 == pytest.approx(result.mean**2 + result.deviation**2 * (len(d) - 1) / len(d), abs=1e-9)
    assert result.nmad == pytest.approx(stats.median_abs_deviation(d, scale="normal"), rel=1e-4, abs=1e-12)
    assert result.percentile_95 == pytest.approx(stats.scoreatpercentile(np.abs(d), 95), abs=1e-12)
    assert (result.smallest, result.largest) == described.minmax
    if described.variance > 1e-6:
        assert result.bias_p == pytest.approx(stats.ttest_1samp(d, 0).pvalue, rel=1e-6, abs=1e-12)


def test_one_difference_has_no_spread_and_none_has_no_statistics():
    one = height_statistics(np.array([0.02]))
    assert one.count == 1
    assert np.isnan(one.deviation)
    assert not one.biased
    with pytest.raises(ValueError, match="one at least"):
        height_statistics(np.array([]))


def test_the_interval_of_the_rmse_holds_the_truth_in_95_of_100_surveys():
    rng = np.random.default_rng()
    rmse = np.sqrt(np.mean(rng.normal(0, 0.03, (4000, 24)) ** 2, axis=1))
    low, high = rmse_interval(1.0, 24)
    held = np.mean((rmse * low <= 0.03) & (rmse * high >= 0.03))
    assert abs(held - 0.95) < 0.02  # five standard errors


def test_the_chi_square_interval_agrees_with_printed_tables():
    """Chi-square for 20 degrees: 9.591 and 34.170 at 2.5 % and 97.5 % (NIST/SEMATECH e-Handbook, 1.3.6.7.4)."""
    low, high = rmse_interval(1.0, 20)
    assert low == pytest.approx((20 / 34.170) ** 0.5, abs=2e-5)
    assert high == pytest.approx((20 / 9.591) ** 0.5, abs=2e-5)


def test_radius_in_plan_by_nssda():
    """FGDC-STD-007.3-1998: 1.7308 RMSEr for like axes; for unlike ones 2.4477 × 0.5 (RMSEx + RMSEy)."""
    assert nssda_radius(0.02, 0.02) == pytest.approx(1.7308 * 0.02 * 2**0.5)
    assert nssda_radius(0.02, 0.03) == pytest.approx(2.4477 * 0.025)
    assert nssda_radius(0.02, 0.0200001) == pytest.approx(nssda_radius(0.02, 0.02), rel=1e-4)
    assert np.isnan(nssda_radius(0.01, 0.03))
    # The factors are those of the normal distribution: 95 % of a circular normal lies within 2.4477 sigma.
    assert stats.chi2.ppf(0.95, 2) ** 0.5 == pytest.approx(2.4477, abs=1e-4)
    assert stats.chi2.ppf(0.95, 2) ** 0.5 / 2**0.5 == pytest.approx(1.7308, abs=1e-4)
    assert stats.norm.ppf(0.975) == pytest.approx(1.9600, abs=1e-4)


def test_a_full_statement(plane, tmp_path):
    offs = sample_with(36, 0.002, 0.024, 1)
    result = accuracy_statement(plane, checks_of(tmp_path, offs, sigma_v="0.004"))
    rmse = np.sqrt(np.mean(offs**2))
    assert result.non_vegetated.rmse == pytest.approx(rmse, abs=1e-5)
    assert result.non_vegetated.mean == pytest.approx(0.002, abs=1e-5)  # the surface is above: positive
    assert result.rmse_v == pytest.approx(np.hypot(rmse, 0.004), abs=1e-5)
    assert result.class_cm == 3
    assert result.enough_for_nssda
    assert result.enough_for_asprs
    assert codes(result.statements) == ["accuracy.nssda_tested", "accuracy.asprs_tested"]
    first, second = (each.say() for each in result.statements)
    assert first.startswith(f"Tested {1.96 * rmse:.3f} metres vertical accuracy at 95 % confidence level")
    assert "3-cm RMSEV Vertical Positional Accuracy Class" in second
    assert codes(result.remarks) == ["accuracy.wording"]
    assert result.vegetated is None


@pytest.mark.parametrize(
    ("count", "expected"),
    [
        (19, ["accuracy.nssda_too_few", "accuracy.asprs_tested", "accuracy.asprs_too_few"]),
        (20, ["accuracy.nssda_tested", "accuracy.asprs_tested", "accuracy.asprs_too_few"]),
        (29, ["accuracy.nssda_tested", "accuracy.asprs_tested", "accuracy.asprs_too_few"]),
        (30, ["accuracy.nssda_tested", "accuracy.asprs_tested"]),
    ],
)
def test_too_few_check_points_are_said_plainly(plane, tmp_path, count, expected):
    result = accuracy_statement(plane, checks_of(tmp_path, sample_with(count, 0, 0.02, 2), sigma_v="0.003"))
    assert codes(result.statements) == expected
    if count < 20:
        assert f"asks for 20 check points and there are {count}" in result.statements[0].say()
        assert not any(each.say().startswith("Tested") for each in result.statements)


def test_the_check_points_own_error_can_cost_the_class(plane, tmp_path):
    offs = sample_with(36, 0, 0.0295, 3)
    without = accuracy_statement(plane, checks_of(tmp_path, offs), wanted_cm=3)
    assert (without.class_cm, without.met) == (3, True)
    assert "accuracy.no_sigma_at_all" in codes(without.remarks)
    given_ = accuracy_statement(plane, checks_of(tmp_path, offs, sigma_v="0.010"), wanted_cm=3)
    assert (given_.class_cm, given_.met) == (4, False)
    assert "accuracy.asprs_failed" in codes(given_.statements)
    weak = accuracy_statement(plane, checks_of(tmp_path, offs, sigma_v="0.020"), wanted_cm=3)
    assert "accuracy.checks_too_weak" in codes(weak.remarks)


def test_some_sigmas_unknown_count_as_the_others(plane, tmp_path):
    places = spread_places(36)
    rows = [row(f"T{i}", x, y, 0.01, "0.006" if i % 2 else "") for i, (x, y) in enumerate(places)]
    result = accuracy_statement(plane, read_check_points(check_file(tmp_path, rows)))
    assert result.check_error == pytest.approx(0.006)
    assert "accuracy.no_sigma" in codes(result.remarks)


def test_classes_are_whole_centimetres():
    assert [vertical_class(v) for v in (0.0, 0.004, 0.01, 0.0100001, 0.03, 0.1 + 0.2, 0.299)] == [1, 1, 1, 2, 3, 30, 30]


def test_cover_parts_the_points_and_doubts_are_told(plane, tmp_path):
    covers = ["hard"] * 10 + ["Tall grass"] * 10 + ["forest"] * 5 + ["grass"] * 5 + [""] * 3 + ["tarmac"] * 3
    places = spread_places(36)
    rows = [
        row(f"T{i}", x, y, 0.05 if cover in ("Tall grass", "forest") else 0.01, "0.003", cover)
        for i, ((x, y), cover) in enumerate(zip(places, covers))
    ]
    checks = read_check_points(check_file(tmp_path, rows))
    result = accuracy_statement(plane, checks)
    assert (result.non_vegetated.count, result.vegetated.count, result.together.count) == (21, 15, 36)
    assert result.non_vegetated.rmse == pytest.approx(0.01, abs=1e-5)
    assert result.vegetated.percentile_95 == pytest.approx(0.05, abs=1e-5)
    assert result.rmse_v_vegetated == pytest.approx(np.hypot(0.05, 0.003), abs=1e-5)
    assert "accuracy.asprs_vegetated" in codes(result.statements)
    assert {COVER_UNKNOWN.code, COVER_MISSING.code, PLAIN_GRASS.code} <= set(codes(result.remarks))
    own = read_check_points(
        check_file(tmp_path, rows), covers={"tarmac": Cover.NON_VEGETATED, "grass": Cover.VEGETATED}
    )
    assert codes(own.messages) == [COVER_MISSING.code]
    assert np.count_nonzero(own.cover == Cover.VEGETATED) == 20


def test_only_vegetated_ground_gives_no_class(plane, tmp_path):
    result = accuracy_statement(plane, checks_of(tmp_path, sample_with(30, 0, 0.05, 5), "0.005", "forest"), wanted_cm=5)
    assert (result.class_cm, result.met, result.non_vegetated) == (None, None, None)
    assert np.isnan(result.rmse_v)
    assert codes(result.statements) == ["accuracy.asprs_vegetated"]
    assert "accuracy.only_vegetated" in codes(result.remarks)


def test_a_bias_is_named(plane, tmp_path):
    biased = accuracy_statement(plane, checks_of(tmp_path, sample_with(30, 0.05, 0.02, 6), "0.005"))
    assert "accuracy.biased" in codes(biased.remarks)
    assert "+0.050 m" in next(each.say() for each in biased.remarks if each.text is a.BIASED)
    fair = accuracy_statement(plane, checks_of(tmp_path, sample_with(30, 0.001, 0.02, 6), "0.005"))
    assert "accuracy.biased" not in codes(fair.remarks)


def test_points_outside_are_named_and_not_counted(plane, tmp_path):
    rows = [row("IN", 50, 40, 0.01), row("OUT", 150, 40, 0.01), ",432500.0,5765000.0,50,,,hard"]
    result = accuracy_statement(plane, read_check_points(check_file(tmp_path, rows)))
    assert result.together.count == 1
    assert np.flatnonzero(result.comparison.inside).tolist() == [0]
    outside = next(each for each in result.remarks if each.text is a.OUTSIDE)
    assert outside.values["names"] == "OUT, (4)"
    with pytest.raises(SurveyError, match=r"the check point of line \d+ does not lie on the surface") as caught:
        accuracy_statement(plane, read_check_points(check_file(tmp_path, rows[1:2])))
    assert "checks.csv" in str(caught.value)


@pytest.mark.parametrize("wanted", [0, -3, float("nan"), float("inf")])
def test_a_class_must_be_above_zero(plane, tmp_path, wanted):
    with pytest.raises(SurveyError) as caught:
        accuracy_statement(plane, checks_of(tmp_path, [0.01] * 5), wanted_cm=wanted)
    assert caught.value.code == "accuracy.bad_class"


def test_spread_over_the_site(plane, tmp_path):
    even = accuracy_statement(plane, checks_of(tmp_path, [0.01] * 36)).distribution
    assert even.quadrants == (0.25, 0.25, 0.25, 0.25)
    assert even.even
    assert even.distance == pytest.approx(0.1 * np.hypot(100, 80))
    rows = [row(f"T{i}", 10 + i, 10, 0.01) for i in range(20)]
    result = accuracy_statement(plane, read_check_points(check_file(tmp_path, rows)))
    assert result.distribution.quadrants == (1, 0, 0, 0)
    assert result.distribution.near == 20
    assert "accuracy.uneven" in codes(result.remarks)


def test_lines_that_are_no_points_are_told(plane, tmp_path):
    rows = [row(f"T{i}", *xy, 0.01) for i, xy in enumerate(spread_places(3))] + ["T9,abc,1,2,,,hard"]
    result = accuracy_statement(plane, read_check_points(check_file(tmp_path, rows)))
    assert "points.rejected" in codes(result.remarks)


def test_marks_found_in_both_give_the_accuracy_in_plan(plane, tmp_path):
    names = ["a", "b", "c", "twice", "twice", "ours"]
    places = ORIGIN + spread_places(6)
    survey = make_points(*(places + np.array([0.02, -0.01])).T, np.zeros(6), name=np.array(names, object))
    rows = [f"{n},{e:.3f},{no:.3f},0.005,0.006,," for n, (e, no) in zip(["A", "B", "C", "twice", "theirs"], places)]
    checks = read_check_points(check_file(tmp_path, rows))
    pairs = pair_by_name(survey, checks)
    assert pairs.survey.tolist() == pairs.check.tolist() == [0, 1, 2]
    np.testing.assert_allclose(
        np.column_stack([pairs.east, pairs.north, pairs.up]), [[0.02, -0.01, -0.005]] * 3, atol=6e-4
    )
    plan = plan_statistics(np.array([0.03, -0.03]), np.array([0.04, -0.04]))
    assert (plan.rmse_h, plan.mean_east) == (pytest.approx(0.05), 0)
    assert plan.accuracy_95 == pytest.approx(2.4477 * 0.035)
    result = accuracy_statement(plane, checks, pairs=pairs)
    assert result.rmse_h == pytest.approx(np.hypot(result.plan.rmse_h, 0.006))
    assert "accuracy.asprs_horizontal" in codes(result.statements)


@pytest.fixture(scope="module")
def demo():
    """Points and surface of the demo survey with the decisions beside it."""
    raw = read_points(DEMO / "survey.csv", crs=None).points
    decided, _ = apply_decisions(raw, read_decisions(DEMO / "decisions.csv"))
    lines = join_lines(decided, default_code_table())
    return lines.points, build_surface(lines.points, lines.constraints).tin


def test_the_demo_survey_against_its_check_points(demo):
    tin = demo[1]
    result = accuracy_statement(tin, read_check_points(DEMO / "check_points.csv"))
    assert result.together.count == 24
    assert result.vegetated is None
    assert result.rmse_v == pytest.approx(np.hypot(result.non_vegetated.rmse, 0.003))
    assert 0.005 < result.rmse_v < 0.03  # the noise of one point is 15 mm
    assert result.class_cm in (1, 2, 3)
    assert codes(result.statements) == ["accuracy.nssda_tested", "accuracy.asprs_tested", "accuracy.asprs_too_few"]
    assert "using only 24 checkpoints" in result.statements[2].say()


def test_the_demo_survey_against_its_own_check_shots(demo):
    points, tin = demo
    shots = check_shots(points)
    assert len(shots) >= 10
    result = accuracy_statement(tin, shots)
    assert result.together.count == len(shots)
    assert result.together.rmse < 0.03
    assert codes(result.statements) == ["accuracy.internal"]
    assert SAME_RECEIVER.code in codes(result.remarks)


def test_a_survey_without_check_shots():
    with pytest.raises(SurveyError) as caught:
        check_shots(make_points([0.0], [0.0], [0.0], source="walk.csv"))
    assert caught.value.code == NO_CHECK_SHOTS.code
    assert "walk.csv" in str(caught.value)


def test_the_statement_is_in_the_unit_of_the_heights():
    """In feet where the coordinates are (FGDC-STD-007.3-1998, from memory); the foot: NIST SP 811."""
    foot = 1200 / 3937
    corners = np.array([(0, 0, 100.0), (200, 0, 100.0), (0, 200, 100.0), (200, 200, 100.0)])
    xyz = (corners + np.array([900000, 200000, 0])) * foot
    tin = build_surface(make_points(*xyz.T, crs=CRS.from_epsg(2263))).tin
    east, north = (axis.ravel() for axis in np.meshgrid(np.linspace(15, 185, 5), np.linspace(15, 185, 4)))
    up = np.where(np.arange(20) % 2, 100.1, 99.9)
    shots = make_points(
        (east + 900000) * foot, (north + 200000) * foot, up * foot, sigma_v=np.full(20, 0.01 * foot), crs=tin.crs
    )
    found = accuracy_statement(tin, checks_from_points(shots, ["hard"] * 20))
    assert str(found.statements[0]) == (
        "Tested 0.196 U.S. survey feet vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; 20 check "
        "points, RMSEz 0.100 ftUS)."
    )
    one = accuracy_statement(tin, checks_from_points(shots.select(np.arange(20) < 1), ["hard"]))
    assert "asks for 20 check points and there is one. What it shows is 1.9600 × RMSEz = 0.196 ftUS." in str(
        one.statements[0]
    )
