"""Coverage of a site: closed forms on lattices, Voronoi diagrams of scipy, and the gap left in the demo survey."""

from __future__ import annotations

import csv
import json
from pathlib import Path

import numpy as np
import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.spatial import Voronoi, cKDTree

from plugin.core.features.found import FoundKind
from plugin.core.features.ground_lines import GroundLine, LineStatus
from plugin.core.linework.codes import default_code_table
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.linework.join import join_lines
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import apply_decisions, read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import Reason, make_points
from plugin.core.quality import interval as iv
from plugin.core.quality.coverage import (
    CoverageOptions,
    coverage,
    places_to_walk,
    write_places,
)
from plugin.core.quality.curvature import ground_curvature
from plugin.core.quality.empty_circles import Openings
from plugin.core.surface.build import build_surface
from plugin.core.surface.locate import locate
from plugin.core.units import LengthUnit
from tests.core.surfaces import ORIGIN, delaunay_tin, random_tin, ring

DEMO = Path(__file__).resolve().parents[2] / "test_data" / "demo"


def lattice(step, side, gone=None):
    """Places of a square lattice; ``gone(x, y)``: mask of those left out."""
    x, y = (
        each.ravel() for each in np.meshgrid(np.arange(0, side + step / 2, step), np.arange(0, side + step / 2, step))
    )
    keep = np.ones(len(x), bool) if gone is None else ~gone(x, y)
    return np.column_stack([x, y])[keep]


def flat_tin(xy):
    return delaunay_tin(xy, np.full(len(xy), 10.0))


def walk(step=0.5, across=4.0, side=60.0, noise=0.0, height=lambda x, y: 0.0 * x, seed=0):
    """Points of passes to and fro over a square, in recording order."""
    rng = np.random.default_rng(seed)
    x, y = [], []
    for number, north in enumerate(np.arange(0, side + across / 2, across)):
        run = np.arange(0, side + step / 2, step)
        x.append(run if number % 2 == 0 else run[::-1])
        y.append(np.full(len(run), north))
    x, y = np.concatenate(x), np.concatenate(y)
    return make_points(x + ORIGIN[0], y + ORIGIN[1], height(x, y) + rng.normal(0, noise, len(x)))


@pytest.mark.parametrize(("block", "radius"), [(1, 1.0), (2, 2.5**0.5), (3, 2.0)])
def test_a_hole_in_a_lattice_has_its_closed_form(block, radius):
    """Taking out a block of 1, 2 or 3 points square leaves a circle of 1, √(1.5² + 0.5²) or 2 steps."""
    low, high = 20.0, 20.0 + 2.0 * (block - 1)
    hole = lambda x, y: (x >= low) & (x <= high) & (y >= low) & (y <= high)  # noqa: E731
    circles = Openings(flat_tin(lattice(2.0, 60.0, hole)), 1.5).circles()
    assert len(circles) == 1
    assert circles.radius[0] == pytest.approx(2.0 * radius, abs=1e-9)
    np.testing.assert_allclose(
        [circles.easting[0] - ORIGIN[0], circles.northing[0] - ORIGIN[1]], (low + high) / 2, atol=1e-6
    )


def test_a_whole_lattice_has_circles_of_half_its_diagonal():
    tin = flat_tin(lattice(2.0, 20.0))
    circles = Openings(tin, 1.0).circles(most=5)
    np.testing.assert_allclose(circles.radius, 2**0.5, atol=1e-9)
    assert len(circles) == 5
    assert len(Openings(tin, 1.5).circles()) == 0


def median_rim_edge(tin):
    triangle, edge = np.nonzero(tin.neighbours < 0)
    side = tin.vertices[tin.triangles[triangle, edge], :2] - tin.vertices[tin.triangles[triangle, (edge + 1) % 3], :2]
    return float(np.median(np.hypot(*side.T)))


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**9), st.integers(20, 300))
def test_the_widest_circle_is_that_of_the_voronoi_diagram_of_scipy(seed, count):
    tin = random_tin(count, seed)
    circles = Openings(tin, 1.0).circles()
    site = tin.vertices[:, :2]
    corner = Voronoi(site).vertices
    corner = corner[locate(tin, corner + tin.origin) >= 0]
    expected = cKDTree(site).query(corner)[0].max() if len(corner) else 0.0
    inside = circles.radius[0]
    assert inside >= expected - 1e-6
    if inside > expected + 1e-6:  # then its centre is on the rim: nowhere on the surface is farther from all
        places = np.random.default_rng(seed).uniform(0, 100, (20_000, 2))
        places = places[locate(tin, places + tin.origin) >= 0]
        assert cKDTree(site).query(places)[0].max() <= inside + 0.125 * max(1.0, median_rim_edge(tin)) + 1e-6
        assert Openings(tin, inside / 2).circles(1).radius[0] == pytest.approx(inside, abs=inside / 4)


@settings(max_examples=15, deadline=None)
@given(st.integers(0, 10**9))
def test_circles_are_empty_on_the_surface_and_do_not_overlap(seed):
    tin = random_tin(400, seed, keep=ring)
    circles = Openings(tin, 2.0).circles(30)
    centre = np.column_stack([circles.easting, circles.northing])
    assert np.all(locate(tin, centre) >= 0)
    assert np.all(np.diff(circles.radius) <= 1e-6)
    distance = cKDTree(tin.vertices[:, :2]).query(centre - tin.origin)[0]
    np.testing.assert_allclose(distance, circles.radius, atol=1e-6)
    gap = np.hypot(*(centre[:, None] - centre[None]).transpose(2, 0, 1)) - circles.radius[:, None] - circles.radius
    assert np.all(gap[~np.eye(len(centre), dtype=bool)] >= -1e-9)


def test_a_strip_outside_the_walk_but_inside_a_drawn_boundary_is_found():
    """The boundary reaches 12 m beyond the points; nothing there is measured, though triangles fill it."""
    points = walk(side=40.0, across=2.0)
    corners = np.array([(0, 0), (52, 0), (52, 40), (0, 40)]) + ORIGIN
    beyond = make_points([ORIGIN[0] + 60, ORIGIN[0] + 60], [ORIGIN[1] - 5, ORIGIN[1] + 45], [0.0, 0.0])
    points = make_points(
        *(np.concatenate([getattr(points, key), getattr(beyond, key)]) for key in ("easting", "northing", "height"))
    )
    tin = build_surface(points, Constraints((make_line(LineKind.BOUNDARY, corners),))).tin
    circles = Openings(tin, 2.0).circles()
    # Nearest to the places on the east side at x = 52 are the ends of the passes at x = 40, 2 m apart; the two
    # points beyond are no vertices of the surface.
    assert circles.radius[0] == pytest.approx((12**2 + 1) ** 0.5, abs=0.3)
    assert circles.easting[0] - ORIGIN[0] == pytest.approx(52, abs=1e-3)


@settings(max_examples=15, deadline=None)
@given(st.integers(0, 10**9), st.sampled_from([3.0, 5.0, 8.0]))
@example(9358, 3.0)  # its rim edges are long
def test_with_the_places_to_walk_again_nothing_is_far(seed, limit):
    tin = random_tin(250, seed, keep=ring)
    again = places_to_walk(Openings(tin, limit))
    place = np.column_stack([again.easting, again.northing]) - tin.origin
    known = np.concatenate([tin.vertices[:, :2], place])
    asked = np.random.default_rng(seed).uniform(0, 100, (20_000, 2))
    asked = asked[locate(tin, asked + tin.origin) >= 0]
    assert cKDTree(known).query(asked)[0].max() <= 1.2 * limit
    assert np.all(again.extra["radius"] > limit)
    assert np.all(np.isfinite(again.height))
    if len(again) > 1:  # none is asked for that another one makes needless
        assert cKDTree(place).query(place, k=2)[0][:, 1].min() > limit
    measured = cKDTree(tin.vertices[:, :2]).query(place)[0] if len(place) else np.empty(0)
    assert np.all(measured >= again.extra["radius"] - 1e-9)


def test_where_all_is_near_it_says_so():
    points = walk()
    whole = coverage(build_surface(points, Constraints()).tin, points)
    assert not len(whole.walk_again)
    assert str(whole.messages[-1]).startswith("Nowhere to walk again: no place of the surface is farther than ")


def test_no_place_is_asked_for_where_all_is_near():
    assert len(places_to_walk(Openings(flat_tin(lattice(2.0, 20.0)), 1.5))) == 0


def test_spacing_and_share_of_long_triangles():
    gap = lambda p: (np.abs(p.easting - ORIGIN[0] - 30) < 10) & (np.abs(p.northing - ORIGIN[1] - 32) < 9)  # noqa: E731
    points = walk()
    whole = coverage(build_surface(points, Constraints()).tin, points)
    assert (whole.along, whole.across) == (pytest.approx(0.5), pytest.approx((4**2 + 0.5**2) ** 0.5))
    assert (whole.long_share, len(whole.circles), len(whole.walk_again)) == (0.0, 0, 0)
    assert whole.area == pytest.approx(60 * 60)
    points = points.select(~gap(points))
    tin = build_surface(points, Constraints()).tin
    result = coverage(tin, points)
    # Passes at 24, 28, 32, 36, 40 are missing from 20 to 40: a bay of 20 m by 24 m between the rows 20 and 44.
    assert result.circles.radius[0] == pytest.approx(10, abs=0.6)
    assert 0.8 * 20 * 24 < result.long_area < 1.3 * 20 * 24
    assert result.long_share == pytest.approx(result.long_area / 3600)
    assert [each.text.code for each in result.messages] == [
        "coverage.spacing", "coverage.long_share", "coverage.widest", "coverage.walk_again",
    ]  # fmt: skip


def test_a_line_between_two_shots_is_no_gap():
    xy = np.array([(0, 0), (40, 0), (0, 3), (40, 3)], float) + ORIGIN
    points = make_points(*xy.T, np.zeros(4))
    free = coverage(build_surface(points, Constraints()).tin, points, CoverageOptions(max_edge=5))
    assert free.long_share == 1.0
    lines = Constraints(
        tuple(make_line(LineKind.BREAKLINE, np.column_stack([xy[i], np.zeros(2)])) for i in ([0, 1], [2, 3]))
    )
    tin = build_surface(points, lines).tin
    diagonal = coverage(tin, points, CoverageOptions(max_edge=5))
    assert diagonal.long_share == 1.0  # the diagonal between the lines is free and long
    assert coverage(tin, points, CoverageOptions(max_edge=41)).long_share == 0.0


@pytest.mark.parametrize(
    "options", [{"max_edge": 0.0}, {"max_radius": -1.0}, {"most_circles": 0}, {"max_edge": np.inf}]
)
def test_limits_are_checked(options):
    points = walk(side=10)
    with pytest.raises(SurveyError) as caught:
        coverage(build_surface(points, Constraints()).tin, points, CoverageOptions(**options))
    assert caught.value.values["option"] == next(iter(options))


def test_places_for_the_data_collector(tmp_path):
    tin = flat_tin(lattice(2.0, 60.0, lambda x, y: np.hypot(x - 30, y - 30) < 9))
    again = places_to_walk(Openings(tin, 3.0))
    write_places(again, tmp_path / "again.csv")
    back = read_points(tmp_path / "again.csv").points
    assert back.name.tolist() == [f"W{i:03d}" for i in range(1, len(again) + 1)]
    np.testing.assert_allclose(back.easting, again.easting, atol=6e-4)
    np.testing.assert_allclose(back.height, 10.0)
    with open(tmp_path / "again.csv", encoding="utf-8") as file:
        assert next(csv.reader(file)) == ["name", "easting", "northing", "height", "line"]
    # In walking order: the way through the list is shorter than through a shuffled one.
    way = lambda order: np.hypot(*np.diff(np.column_stack([again.easting, again.northing])[order], axis=0).T).sum()  # noqa: E731
    assert way(np.arange(len(again))) < way(np.random.default_rng(0).permutation(len(again)))


def test_a_line_in_doubt_is_a_place_to_walk(tmp_path):
    """Only proposed lines of which it is known where a pass would tell most; a name says which line."""
    points = walk(step=2.0, across=4.0)
    tin = build_surface(points).tin
    inner = (ORIGIN[0] + 30.3, ORIGIN[1] + 30.1)
    course = (np.array([(*inner, 0.0), (inner[0] + 9, inner[1], 0.0)]),)
    lines = [
        GroundLine(FoundKind.STEP, course, cross_at=inner, status=LineStatus.USED),
        GroundLine(FoundKind.STEP, course, cross_at=inner),
        GroundLine(FoundKind.TOP, course),
    ]
    none = coverage(tin, points)
    found = coverage(tin, points, found=lines)
    assert len(found.walk_again) == len(none.walk_again) + 1
    (at,) = np.flatnonzero(found.walk_again.extra["line"] == "step 2")
    assert (found.walk_again.easting[at], found.walk_again.northing[at]) == inner
    near = cKDTree(np.column_stack([points.easting, points.northing])).query(inner)[0]
    assert found.walk_again.extra["radius"][at] == pytest.approx(near, abs=1e-3)
    assert len(found.messages) == len(none.messages) + 1
    write_places(found.walk_again, tmp_path / "again.csv")
    assert "step 2" in (tmp_path / "again.csv").read_text(encoding="utf-8")


def test_points_for_which_a_line_stands_are_measured_all_the_same():
    points = walk(step=1.0, across=2.0)
    reasons = points.reasons.copy()
    reasons[np.abs(points.easting - ORIGIN[0] - 30) < 8] = Reason.IN_LINE
    marked = points.with_status(points.status, reasons)
    tin = build_surface(marked).tin
    assert len(tin.vertices) < len(points)
    found = coverage(tin, marked, CoverageOptions(max_radius=4.0))
    assert len(found.circles) == len(found.walk_again) == 0


@pytest.fixture(scope="module")
def demo():
    raw = read_points(DEMO / "survey.csv").points
    decided, _ = apply_decisions(raw, read_decisions(DEMO / "decisions.csv"))
    lines = join_lines(decided, default_code_table())
    return lines.points, build_surface(lines.points, lines.constraints).tin


def test_the_gap_of_the_demo_survey_is_among_the_widest_circles(demo):
    points, tin = demo
    result = coverage(tin, points)
    assert result.along == pytest.approx(0.53, abs=0.03)
    assert 4.0 < result.across < 5.2  # walked about 4.4 m apart
    scenario = json.loads((DEMO / "scenario.json").read_text(encoding="utf-8"))
    gap = np.array(next(each["polygon"] for each in scenario["faults"] if each["kind"] == "gap"))
    low, high = gap.min(axis=0) - 1, gap.max(axis=0) + 1
    in_gap = [bool(np.all((low <= c) & (c <= high))) for c in zip(result.circles.easting, result.circles.northing)]
    assert any(in_gap[:3])
    again = np.column_stack([result.walk_again.easting, result.walk_again.northing])
    assert np.any(np.all((again >= low) & (again <= high), axis=1))


@pytest.mark.parametrize("seed", range(3))
def test_curvature_of_the_ground_is_recovered_under_noise(seed):
    """A sine of amplitude A and wave length W has the second derivative A k² / √2, root mean square."""
    k, amplitude = 2 * np.pi / 30, 0.5
    points = walk(side=200, noise=0.015, height=lambda x, y: amplitude * np.sin(k * x + 0.3 * y), seed=seed)
    assert ground_curvature(points, 4.0) == pytest.approx(amplitude * k**2 / 2**0.5, rel=0.3)
    plane = walk(side=200, noise=0.015, height=lambda x, y: 0.2 * x - 0.1 * y, seed=seed)
    assert iv.interpolation_error(ground_curvature(plane, 4.0), 4.0) < 0.004
    assert np.isnan(ground_curvature(plane.select(np.arange(5)), 4.0))


def test_the_interpolation_error_is_its_integral():
    c, d = 0.013, 7.0
    expected = np.sqrt(quad(lambda x: (c * x * (d - x) / 2) ** 2, 0, d)[0] / d)
    assert iv.interpolation_error(c, d) == pytest.approx(expected, rel=1e-10)
    assert pytest.approx(quad(lambda t: (1 - t) ** 2 + t**2, 0, 1)[0]) == iv.NOISE_SHARE


def test_a_simulated_surface_has_the_estimated_error():
    """Passes over parabolic ground with noise of its own at each pass: the TIN's error against the formula."""
    rng = np.random.default_rng()
    c, sigma, across = 0.01, 0.02, 6.0
    total = []
    for _ in range(40):
        north = np.arange(0, 61, across)
        height = c * north**2 / 2 + rng.normal(0, sigma, len(north))
        asked = rng.uniform(0, 60, 500)
        total.append(np.mean((np.interp(asked, north, height) - c * asked**2 / 2) ** 2))
    assert np.sqrt(np.mean(total)) == pytest.approx(iv.surface_error(sigma, c, across), rel=0.1)


@settings(max_examples=100, deadline=None)
@given(st.floats(0.001, 0.1), st.floats(1e-4, 0.5), st.floats(0.1, 50))
def test_spacing_and_error_are_inverse(sigma, curvature, spacing):
    error = iv.surface_error(sigma, curvature, spacing)
    if iv.interpolation_error(curvature, spacing) > 0.05 * sigma:
        assert iv.spacing_for(error, sigma, curvature) == pytest.approx(spacing, rel=1e-6)
    assert np.isnan(iv.spacing_for(0.8 * sigma, sigma, curvature))
    assert iv.spacing_for(error, sigma, 0.0) == np.inf


def test_the_rule_of_a_third():
    """ASPRS Positional Accuracy Standards, edition 1 (2014), annex B: RMSEz is a third of the contour interval."""
    assert iv.interval_of(0.05) == pytest.approx(0.15)
    assert iv.rmse_of(0.3048) == pytest.approx(0.1016)
    assert [iv.usual_interval(v) for v in (0.15, 0.2, 0.21, 0.3, 0.6, 1.0, 5.1)] == [
        0.2,
        0.2,
        0.25,
        0.5,
        1.0,
        1.0,
        10.0,
    ]
    assert iv.usual_interval(0.15, LengthUnit.FOOT) == 0.5


def test_supported_interval_takes_the_worse_of_what_is_known():
    assert iv.supported_interval(4.0, 0.01) is None
    claims = iv.supported_interval(4.0, 0.01, claimed=0.02)
    assert claims.rmse == pytest.approx(iv.surface_error(0.02, 0.01, 4.0))
    assert claims.basis is iv.FROM_CLAIMS
    repeats = iv.supported_interval(4.0, 0.01, claimed=0.02, repeat_sigma=0.05)
    assert (repeats.basis, repeats.interval) == (iv.FROM_REPEATS, pytest.approx(3 * iv.surface_error(0.05, 0.01, 4.0)))
    checked = iv.supported_interval(4.0, 0.01, claimed=0.02, checked_rmse=0.09)
    assert (checked.basis, checked.rmse, checked.usual) == (iv.FROM_CHECKS, 0.09, 0.5)
    lucky = iv.supported_interval(4.0, 0.01, claimed=0.02, checked_rmse=0.001)
    assert lucky.basis is iv.FROM_CLAIMS
    unknown_bend = iv.supported_interval(4.0, float("nan"), claimed=0.03)
    assert unknown_bend.rmse == pytest.approx(0.03 * (2 / 3) ** 0.5)
    assert "annex B" in claims.messages[0].say()


def test_the_demo_survey_bears_the_interval_it_is_contoured_at(demo):
    points, tin = demo
    result = coverage(tin, points)
    curvature = ground_curvature(points, result.across)
    found = iv.supported_interval(result.across, curvature, claimed=iv.claimed_sigma(points))
    assert 0.01 < found.rmse < 0.03
    assert found.usual <= 0.1
