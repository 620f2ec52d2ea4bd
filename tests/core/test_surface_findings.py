"""Findings: each kind where it must be found and where it must not, and on the demo survey.

Plane fits and scatter are checked against numpy and scipy, line gaps and distances against shapely.
"""

from __future__ import annotations

import csv
import math
from collections import Counter
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
import shapely
from scipy.stats import median_abs_deviation

from plugin.core.linework.codes import default_code_table
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.linework.join import join_lines
from plugin.core.messages import SurveyError
from plugin.core.points.decisions import apply_decisions, read_decisions
from plugin.core.points.delimited import read_points
from plugin.core.points.pointset import make_points
from plugin.core.progress import Cancelled
from plugin.core.surface.build import build_surface
from plugin.core.surface.find_flat import runs_of_equal
from plugin.core.surface.find_gaps import code_of
from plugin.core.surface.find_spikes import _fit, _scatter
from plugin.core.surface.findings import FindingKind, FindingOptions
from plugin.core.surface.inspection import inspect_surface

E0, N0 = 548_000.0, 5_712_000.0
DEMO = Path(__file__).parents[2] / "test_data" / "demo"
NO_LINES = Constraints()
DEFAULTS = FindingOptions()


def survey(xyz):
    x, y, z = np.array(xyz, float).T
    lines = np.arange(2, len(x) + 2)
    return make_points(E0 + x, N0 + y, z, source="survey.csv", source_line=lines)


def breakline(xyz, label, kind=LineKind.BREAKLINE):
    return make_line(kind, np.array(xyz, float) + np.array([E0, N0, 0.0]), label)


def look(points, constraints=NO_LINES, options=DEFAULTS, kinds=tuple(FindingKind)):
    tin = build_surface(points, constraints).tin
    found = inspect_surface(tin, points, constraints, options)
    for each in found:
        assert f"E {each.easting:.3f} N {each.northing:.3f}" in str(each.message)
        assert each.triangles == tuple(sorted(set(each.triangles)))
        assert not each.triangles or max(each.triangles) < len(tin.triangles)
    return tin, [each for each in found if each.kind in kinds]


def walk(passes=16, apart=4.0, step=0.5, length=60.0, noise=0.015, seed=1):
    """To and fro over a gentle slope, with noise in plan and height; the order is that of recording."""
    rng = np.random.default_rng(seed)
    along = np.arange(0, length + 1e-9, step)
    x = np.concatenate([along if k % 2 == 0 else along[::-1] for k in range(passes)])
    y = np.repeat(np.arange(passes) * apart, len(along))
    x, y = x + rng.normal(0, 0.02, len(x)), y + rng.normal(0, 0.05, len(x))
    return np.column_stack([x, y, ground(x, y) + rng.normal(0, noise, len(x))])


def ground(x, y):
    return 90 + 0.03 * x + 0.8 * np.sin(y / 25)


# --- flat spots -----------------------------------------------------------------------------------


def ring(radius, height, count):
    angle = np.arange(count) * 2 * math.pi / count
    return np.column_stack([radius * np.cos(angle), radius * np.sin(angle), np.full(count, height)])


def contour_hill():
    """Contours of a round hill as closed lines, none at the summit."""
    rings = [ring(40.0, 100.0, 63), ring(30.0, 101.0, 47), ring(20.0, 102.0, 31), ring(10.0, 103.0, 17)]
    return [np.vstack([each, each[:1]]) for each in rings]


def polygon_area(radius, count):
    return 0.5 * count * radius**2 * math.sin(2 * math.pi / count)


def test_the_summit_inside_the_highest_contour_is_flat():
    rings = contour_hill()
    lines = Constraints(tuple(breakline(each, f"contour {i}") for i, each in enumerate(rings)))
    points = survey(np.vstack([each[:-1] for each in rings]))
    _, found = look(points, lines, kinds=[FindingKind.FLAT])
    assert len(found) == 1
    assert found[0].value == pytest.approx(polygon_area(10.0, 17), rel=1e-4)
    assert found[0].unit == "m²"
    assert found[0].height == 103.0
    assert math.hypot(found[0].easting - E0, found[0].northing - N0) < 10.0
    assert len(found[0].vertices) == 17
    assert len(found[0].triangles) == 15
    summit = survey(np.vstack([*[each[:-1] for each in rings], [[0.0, 0.0, 103.6]]]))
    _, found = look(summit, lines, kinds=[FindingKind.FLAT])
    assert found == []


def test_contours_that_come_as_points_are_known_by_their_order():
    points = survey(np.vstack([each[:-1] for each in contour_hill()]))
    _, found = look(points, kinds=[FindingKind.FLAT])
    assert sum(each.value for each in found) == pytest.approx(polygon_area(10.0, 17), rel=1e-4)
    _, found = look(points, options=replace(DEFAULTS, flat_run=18), kinds=[FindingKind.FLAT])
    assert found == []


def test_level_ground_is_no_contour():
    xyz = walk()
    xyz[:, 2] = np.round(100 + np.random.default_rng(4).normal(0, 0.015, len(xyz)), 2)  # heights to the centimetre
    _, found = look(survey(xyz), kinds=[FindingKind.FLAT])
    assert found == []
    xyz[:, 2] = 100.0  # a floor: one level is no set of contours
    _, found = look(survey(xyz), kinds=[FindingKind.FLAT])
    assert found == []


def test_runs_of_equal_heights():
    height = np.array([1, 1, 1, 2, 2, 2, 2, 3, 3, 3], float)
    apart = np.zeros(10, bool)
    assert (runs_of_equal(height, apart, 1e-3, 3) >= 0).tolist() == [True] * 10
    assert (runs_of_equal(height, apart, 1e-3, 4) >= 0).tolist() == [False] * 3 + [True] * 4 + [False] * 3
    apart[5] = True
    assert (runs_of_equal(height, apart, 1e-3, 3) >= 0).tolist() == [True] * 3 + [False] * 4 + [True] * 3
    assert len(runs_of_equal(np.empty(0), np.empty(0, bool), 1e-3, 3)) == 0


# --- gaps in breaklines ---------------------------------------------------------------------------


def kerb(x0, x1, y=30.1, step=2.0):
    x = np.arange(x0, x1 + 1e-9, step)
    return np.column_stack([x, np.full(len(x), y), ground(x, y)])


@pytest.fixture(scope="module")
def gap_points():
    """A walk with points right in the gap, so that no edge joins the ends by itself."""
    beside = [(29.5, 30.5), (30.0, 29.8), (30.0, 30.4), (30.5, 29.7), (29.5, 29.6)]
    return survey(np.vstack([walk(), [(x, y, ground(x, y)) for x, y in beside]]))


@pytest.mark.parametrize("turned", [False, True])
def test_a_line_that_goes_on_under_another_number_leaves_a_gap(gap_points, turned):
    second = kerb(31, 51)[::-1] if turned else kerb(31, 51)
    lines = Constraints((breakline(kerb(9, 29), "KT 1"), breakline(second, "KT 2")))
    tin, found = look(gap_points, lines, kinds=[FindingKind.GAP])
    assert len(found) == 1
    assert found[0].value == pytest.approx(2.0)
    assert (found[0].easting, found[0].northing) == pytest.approx((E0 + 30, N0 + 30.1))
    assert "KT 1 ends and KT 2 begins" in str(found[0].message)
    # The triangles are those that the gap cuts through.
    gap = shapely.LineString([(29, 30.1), (31, 30.1)])
    shape = tin.corners()[..., :2] + tin.origin - (E0, N0)
    cut = [i for i, corner in enumerate(shape) if gap.intersection(shapely.Polygon(corner)).length > 1e-6]
    assert list(found[0].triangles) == cut


@pytest.mark.parametrize(
    ("first", "second", "options"),
    [
        (("KT 1", kerb(9, 29)), ("KF 1", kerb(31, 51)), {}),  # another code
        (("KT 1", kerb(9, 29)), ("KT 2", kerb(29, 51)), {}),  # goes on at the same point
        (("KT 1", kerb(9, 29)), ("KT 2", kerb(31, 51)), {"gap_distance": 1.9}),
        (("KT 1", kerb(9, 29)), ("KT 2", kerb(31, 51)), {"gap_factor": 0.9}),
        (("KT 1", kerb(9, 29)), ("KT 2", kerb(29, 9, y=32.6)), {}),  # beside it, not going on
        (("KT 1", kerb(9, 29)), ("KT 2", kerb(33.5, 53.5)), {}),  # more than twice the shot spacing
        (("KT 1", kerb(9, 29)), ("", kerb(31, 51)), {}),
    ],
)
def test_lines_that_leave_no_gap(gap_points, first, second, options):
    lines = Constraints(tuple(breakline(xyz, label) for label, xyz in (first, second) if len(xyz)))
    _, found = look(gap_points, lines, replace(DEFAULTS, **options), kinds=[FindingKind.GAP])
    assert found == []


def test_no_gap_where_an_edge_joins_the_ends():
    lines = Constraints((breakline(kerb(9, 29), "KT 1"), breakline(kerb(30, 50), "KT 2")))
    _, found = look(survey(walk(apart=4.0)), lines, kinds=[FindingKind.GAP])
    tin = build_surface(survey(walk(apart=4.0)), lines).tin
    ends = {tuple(np.round(v, 3)) for v in tin.vertices[:, :2] + tin.origin - (E0, N0)}
    assert {(29.0, 30.1), (30.0, 30.1)} <= ends
    assert found == []


def test_a_ring_that_nearly_closes(gap_points):
    angle = np.radians(np.arange(0, 341, 10))
    x, y = 30 + 4 * np.cos(angle), 29.3 + 4 * np.sin(angle)
    lines = Constraints((breakline(np.column_stack([x, y, ground(x, y)]), "RT 1"),))
    between = [(34.0, 28.5, 0), (33.7, 28.6, 0), (34.3, 28.7, 0), (33.9, 28.9, 0)]
    xyz = np.array([(x, y, ground(x, y)) for x, y, _ in between])
    points = survey(np.vstack([walk(), xyz]))
    _, found = look(points, lines, kinds=[FindingKind.GAP])
    assert [each.message.text.code for each in found] == ["findings.gap_in_ring"]
    assert found[0].value == pytest.approx(2 * 4 * math.sin(math.radians(10)), abs=1e-4)


def test_codes_of_labels():
    assert {code_of(text) for text in ("KT 1", "KT 12 (2)", "kt", "KT1", "KT_3")} == {"kt"}
    assert code_of("drawn wall") == "drawn wall"
    assert code_of("7") == ""


# --- long triangles -------------------------------------------------------------------------------


def test_a_pass_that_was_left_out_is_found():
    xyz = walk()
    left_out = (np.abs(xyz[:, 1] - 24) < 1) & (xyz[:, 0] > 15) & (xyz[:, 0] < 40)
    _, whole = look(survey(xyz), kinds=[FindingKind.LONG])
    assert [each.message.text.code for each in whole] in ([], ["findings.long_rim"])
    _, found = look(survey(xyz[~left_out]), kinds=[FindingKind.LONG])
    found = [each for each in found if each.message.text.code == "findings.long"]
    assert len(found) == 1
    assert found[0].value == pytest.approx(8.2, abs=0.4)
    assert 100 < found[0].message.values["area"] < 8 * 25
    assert 15 < found[0].easting - E0 < 40
    assert 20 < found[0].northing - N0 < 28
    assert found[0].message.values["spacing"] == pytest.approx(0.5, abs=0.02)
    assert found[0].message.values["passes"] == pytest.approx(4.05, abs=0.1)


def test_long_straights_of_a_line_are_warranted():
    lines = Constraints((breakline([(2, 30.1, ground(2, 30.1)), (58, 30.1, ground(58, 30.1))], "EDGE 1"),))
    _, found = look(survey(walk()), lines, kinds=[FindingKind.LONG])
    assert [each for each in found if each.message.text.code == "findings.long"] == []


def test_slivers_of_the_hull_are_one_finding():
    rng = np.random.default_rng(2)
    xyz = walk()
    xyz[:, 1] += rng.normal(0, 0.1, len(xyz))
    _, found = look(survey(xyz), kinds=[FindingKind.LONG])
    assert [each.message.text.code for each in found] == ["findings.long_rim"]
    assert found[0].message.values["count"] > 3


# --- spikes ---------------------------------------------------------------------------------------


def test_noise_alone_gives_no_spike():
    xyz = walk(passes=100, length=200, noise=0.015)
    assert len(xyz) > 40_000
    _, found = look(survey(xyz), kinds=[FindingKind.SPIKE])
    assert found == []
    noisy = xyz + np.column_stack([np.zeros((len(xyz), 2)), np.random.default_rng(1).normal(0, 0.1, len(xyz))])
    _, found = look(survey(noisy), kinds=[FindingKind.SPIKE])  # decimetres: its own scatter counts
    assert len(found) <= 1


@pytest.mark.parametrize("size", [-1.8, -0.25, 0.25, 0.6])
def test_single_spikes_are_found_and_only_they(size):
    xyz = walk(passes=30)
    inner = np.flatnonzero((xyz[:, 0] > 5) & (xyz[:, 0] < 55) & (xyz[:, 1] > 3) & (xyz[:, 1] < 110))
    wrong = inner[::97]
    xyz[wrong, 2] += size
    tin, found = look(survey(xyz), kinds=[FindingKind.SPIKE])
    assert sorted(int(tin.vertex_source[each.vertices[0]]) for each in found) == wrong.tolist()
    assert [each.source_lines for each in sorted(found, key=lambda f: f.source_lines)] == [(w + 2,) for w in wrong]
    for each in found:
        assert each.value == pytest.approx(size, abs=0.08)
        assert all(each.vertices[0] in tin.triangles[t] for t in each.triangles)


def test_of_two_spikes_side_by_side_at_least_one_is_named():
    xyz = walk(passes=30)
    for first in (700, 1500, 2400):
        xyz[[first, first + 1], 2] += 0.5
    tin, found = look(survey(xyz), kinds=[FindingKind.SPIKE])
    named = {int(tin.vertex_source[each.vertices[0]]) for each in found}
    assert all(named & {first, first + 1} for first in (700, 1500, 2400))
    assert named <= {700, 701, 1500, 1501, 2400, 2401}


def test_a_step_in_the_ground_without_lines_is_no_spike():
    """An uncoded kerb of 12 cm and a bank of 1 m in 2 m."""
    xyz = walk(passes=40)
    xyz[:, 2] += np.where(xyz[:, 0] > 20, 0.12, 0.0) + np.clip((xyz[:, 0] - 40) / 2, 0, 1)
    _, found = look(survey(xyz), kinds=[FindingKind.SPIKE])
    assert len(found) <= 2


def test_a_spike_on_a_line_and_a_change_of_grade():
    x = np.arange(2.0, 58.1, 2.0)
    height = ground(x, 30.1) + np.random.default_rng(6).normal(0, 0.01, len(x))
    bent = height + np.where(x > 40, (x - 40) * 0.3, 0.0)  # a ramp begins
    lines = Constraints((breakline(np.column_stack([x, np.full(len(x), 30.1), bent]), "KT 1"),))
    _, found = look(survey(walk()), lines, kinds=[FindingKind.SPIKE])
    assert [each for each in found if each.message.text.code == "findings.spike_on_line"] == []
    bent[8] -= 0.3
    lines = Constraints((breakline(np.column_stack([x, np.full(len(x), 30.1), bent]), "KT 1"),))
    _, found = look(survey(walk()), lines, kinds=[FindingKind.SPIKE])
    found = [each for each in found if each.message.text.code == "findings.spike_on_line"]
    assert len(found) == 1
    assert (found[0].easting, found[0].northing) == pytest.approx((E0 + x[8], N0 + 30.1))
    assert found[0].value == pytest.approx(-0.3, abs=0.05)


def test_planes_and_scatter_against_numpy_and_scipy():
    rng = np.random.default_rng(9)
    count = rng.integers(4, 12, 200)
    of = np.repeat(np.arange(200), count)
    x, y = rng.normal(0, 3, (2, len(of)))
    z = rng.normal(0, 1, len(of))
    weight = np.ones(len(of))
    planes = _fit(of, x, y, z, weight, 200)
    for i in range(200):
        mine = of == i
        design = np.column_stack([x[mine], y[mine], np.ones(mine.sum())])
        slope_x, slope_y, height = np.linalg.lstsq(design, z[mine], rcond=None)[0]
        assert planes.offset[i] == pytest.approx(-height, abs=1e-9)
        assert (planes.slope_x[i], planes.slope_y[i]) == pytest.approx((slope_x, slope_y), abs=1e-9)
        assert planes.doubt[i] == pytest.approx(np.linalg.inv(design.T @ design)[2, 2])
    residual = rng.normal(0, 0.02, 10_001)
    # scipy centres on the median; residuals are centred on zero as they are.
    assert _scatter(residual) == pytest.approx(
        median_abs_deviation(residual, center=lambda *a, **k: 0.0, scale="normal"), rel=1e-4
    )
    assert _scatter(residual) == pytest.approx(0.02, rel=0.05)


# --- points beside lines --------------------------------------------------------------------------


def test_points_over_and_under_a_breakline():
    line = [(2, 30.1, ground(2, 30.1)), (58, 30.1, ground(58, 30.1))]
    xyz = walk()
    on = ground(2, 30.1) + (ground(58, 30.1) - ground(2, 30.1)) * (np.array([10, 20, 30, 40, 50]) - 2) / 56
    beside = [(10, 30.15, on[0] + 0.3), (20, 30.05, on[1] - 0.12), (30, 30.15, on[2] + 0.09), (40, 30.22, on[3] + 0.5),
              (50, 30.0001, on[4] - 0.5)]  # fmt: skip
    tin, found = look(
        survey(np.vstack([xyz, beside])), Constraints((breakline(line, "KT 1"),)), kinds=[FindingKind.BESIDE_LINE]
    )
    assert [each.value for each in found] == pytest.approx([-0.5, 0.3, -0.12], abs=1e-6)
    assert [each.easting - E0 for each in found] == pytest.approx([50, 10, 20])
    assert [each.message.values["distance"] for each in found] == pytest.approx([0.0999, 0.05, 0.05], abs=1e-4)
    assert {int(tin.vertex_source[v]) for each in found for v in each.vertices} == {
        -1,
        len(xyz),
        len(xyz) + 1,
        len(xyz) + 4,
    }
    axis = shapely.LineString([(2, 30.1), (58, 30.1)])
    assert axis.distance(shapely.Point(50, 30.0001)) == pytest.approx(found[0].message.values["distance"])


def test_the_foot_of_a_kerb_is_not_beside_its_top():
    top, foot = kerb(5, 55), kerb(5, 55, y=30.05)
    top[:, 2] += 0.12
    _, found = look(survey(walk()), Constraints((breakline(top, "KT 1"), breakline(foot, "KF 1"))))
    assert [each for each in found if each.kind is FindingKind.BESIDE_LINE] == []


# --- all together ---------------------------------------------------------------------------------


def test_order_of_points_does_not_matter():
    xyz = walk()
    xyz[::211, 2] += 0.4
    lines = Constraints((breakline(kerb(9, 29), "KT 1"), breakline(kerb(31, 51), "KT 2")))
    order = np.random.default_rng(3).permutation(len(xyz))

    def seen(points):
        kinds = [FindingKind.SPIKE, FindingKind.GAP, FindingKind.BESIDE_LINE]
        return [
            (f.kind, round(f.easting, 4), round(f.northing, 4), round(f.value, 9))
            for f in look(points, lines, kinds=kinds)[1]
        ]

    first = seen(survey(xyz))
    assert len(first) > 5
    assert first == seen(survey(xyz[order]))


def test_limits_must_be_above_zero():
    points = survey(walk(passes=3))
    tin = build_surface(points).tin
    for name in ("spike_ratio", "gap_distance"):
        for value in (0.0, -1.0, float("nan")):
            with pytest.raises(SurveyError, match=name):
                inspect_surface(tin, points, options=replace(DEFAULTS, **{name: value}))


def test_progress_runs_to_the_end_and_can_stop_the_work():
    points = survey(walk(passes=3))
    tin = build_surface(points).tin
    seen = []
    inspect_surface(tin, points, progress=lambda fraction, stage: seen.append(fraction))
    assert seen == sorted(seen)
    assert seen[-1] == 1.0

    def stop(fraction, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        inspect_surface(tin, points, progress=stop)


def test_three_points_are_enough_to_look_at():
    _, found = look(survey([(0, 0, 1), (1, 0, 2), (0, 1, 3)]))
    assert found == []


# --- the demo survey ------------------------------------------------------------------------------


def demo(decided):
    points = read_points(DEMO / "survey.csv").points
    if decided:
        points = apply_decisions(points, read_decisions(DEMO / "decisions.csv"))[0]
    linework = join_lines(points, default_code_table())
    tin = build_surface(linework.points, linework.constraints).tin
    return inspect_surface(tin, linework.points, linework.constraints)


def rows_of(file, **wanted):
    with open(DEMO / file, encoding="utf-8") as text:
        rows = list(csv.DictReader(line for line in text if not line.startswith("#")))
    rows = [row for row in rows if all(row[key] in values for key, values in wanted.items())]
    return np.array([[float(row["easting"]), float(row["northing"])] for row in rows])


def test_demo_with_decisions_has_just_the_places_nobody_walked():
    """The pass that was not walked, and two long runs of rejected points: ambiguities not fixed, pole held up."""
    no_fix, gap, lifted = demo(decided=True)
    assert {each.message.text.code for each in (no_fix, gap, lifted)} == {"findings.long"}
    assert 8.8 < gap.value < no_fix.value < 9.5
    assert 8.0 < lifted.value < 8.6
    for each, fault in ((no_fix, "no_fix"), (lifted, "lifted_pole")):
        away = np.hypot(*(rows_of("truth.csv", fault=[fault]) - (each.easting, each.northing)).T)
        assert np.count_nonzero(away < 6.0) >= 10
    away = np.hypot(*(rows_of("truth.csv") - (gap.easting, gap.northing)).T)
    assert away.min() > 3.0


def test_demo_without_decisions_names_faults_and_good_points_only_beside_them():
    spikes = [each for each in demo(decided=False) if each.kind is FindingKind.SPIKE]
    with open(DEMO / "truth.csv", encoding="utf-8") as file:
        fault = {int(row["line"]): row["fault"] for row in csv.DictReader(file)}
    kinds = Counter(fault[line] for each in spikes for line in each.source_lines)
    assert kinds["fallen_pole"] >= 1
    assert kinds["lifted_pole"] >= 5
    assert kinds["none"] < sum(kinds.values()) / 2
    bad = rows_of("truth.csv", fault=set(fault.values()) - {"none", "duplicate_block", "standing_still"})
    for each in spikes:
        assert np.min(np.hypot(*(bad - (each.easting, each.northing)).T)) < 6.0, str(each.message)
