"""The outline of the surface: peeled by a rule of its own in plain Python, and against closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import SurfaceOptions, build_surface, triangulate_survey
from plugin.core.surface.rim import circumradii, radius_in_passes, without_hollow_rim, without_rim_slivers
from plugin.core.surface.spacing import pass_spacing, recorded_spacing

E0, N0 = 548_000.0, 5_712_000.0
NO_LINES = Constraints()


def survey(xy):
    x, y = np.array(xy, float).T
    return make_points(E0 + x, N0 + y, np.zeros(len(x)), source="survey.csv")


def mesh_of(xy, constraints=NO_LINES):
    return triangulate_survey(survey(xy), constraints, SurfaceOptions()).mesh


def area(mesh, keep):
    return float(mesh.double_areas()[keep].sum()) / 2 * 1e-8


def horseshoe(spacing=1.0):
    """Grid points of a 20 m square without the 10 m wide bay that opens to the north."""
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 20.001, spacing), np.arange(0, 20.001, spacing)))
    bay = (x > 5.01) & (x < 14.99) & (y > 8.01)
    return np.column_stack([x[~bay], y[~bay]])


def triangles(tin):
    at = np.rint((tin.vertices[:, :2] + tin.origin - (E0, N0)) * 1e4).astype(int)
    return {frozenset(map(tuple, at[t].tolist())) for t in tin.triangles}


def peel_one_by_one(mesh, lets_go, random):
    """The rule again, one triangle at a time in any order."""
    keep = np.ones(mesh.triangle_count, bool)
    while True:
        rim = [
            h
            for h in range(len(mesh.vertex))
            if keep[h // 3] and (mesh.twin[h] < 0 or not keep[mesh.twin[h] // 3]) and not mesh.kind[h] and lets_go(h)
        ]
        if not rim:
            return keep
        keep[random.choice(rim) // 3] = False


def corners(mesh, t):
    return [(int(mesh.x[v]), int(mesh.y[v])) for v in mesh.vertex[3 * t : 3 * t + 3]]


def radius_of(mesh, t):
    """By the centre of the circle, from its two perpendicular bisectors."""
    (ax, ay), (bx, by), (cx, cy) = corners(mesh, t)
    matrix = np.array([[bx - ax, by - ay], [cx - ax, cy - ay]], float)
    right = np.array([(bx - ax) ** 2 + (by - ay) ** 2, (cx - ax) ** 2 + (cy - ay) ** 2]) / 2
    return float(np.hypot(*np.linalg.solve(matrix, right))) * 1e-4


def angle_opposite(mesh, h):
    a, b, c = (corners(mesh, h // 3)[(h + k) % 3] for k in range(3))
    return abs(math.degrees(math.atan2(a[1] - c[1], a[0] - c[0]) - math.atan2(b[1] - c[1], b[0] - c[0])) % 360)


# --- hollow outline -------------------------------------------------------------------------------


def test_the_bay_of_a_horseshoe_is_found():
    xy = horseshoe()
    mesh = mesh_of(xy)
    everything = np.ones(mesh.triangle_count, bool)
    assert area(mesh, everything) == pytest.approx(400.0)
    # A grid of 1 m has circumradii of 0.707 m; the bay is 10 m wide and 12 m deep.
    keep = without_hollow_rim(mesh, everything, 0.75)
    # The two inner corners of the bay keep half a cell each: their three points are there.
    assert area(mesh, keep) == pytest.approx(400.0 - 120.0 + 2 * 0.5)
    assert np.all(circumradii(mesh)[keep] < 0.75)


def test_no_limit_peels_nothing_and_the_mask_stays_as_it_was():
    mesh = mesh_of(horseshoe())
    some = np.ones(mesh.triangle_count, bool)
    for peel in (without_hollow_rim, without_rim_slivers):
        kept = peel(mesh, some, None)
        assert np.all(kept)
        assert kept is not some
    without_hollow_rim(mesh, some, 0.75)
    assert np.all(some)


def test_a_hole_in_the_middle_stays_shut():
    x, y = (v.ravel() for v in np.meshgrid(np.arange(21.0), np.arange(21.0)))
    hole = np.hypot(x - 10, y - 10) < 5
    mesh = mesh_of(np.column_stack([x[~hole], y[~hole]]))
    keep = without_hollow_rim(mesh, np.ones(mesh.triangle_count, bool), 0.75)
    assert np.all(keep)


def test_a_marked_edge_is_not_peeled_across():
    line = make_line(LineKind.BREAKLINE, np.array([(E0 + 5, N0 + 20, 0.0), (E0 + 15, N0 + 20, 0.0)]), "gate")
    mesh = mesh_of(horseshoe(), Constraints((line,)))
    keep = without_hollow_rim(mesh, np.ones(mesh.triangle_count, bool), 0.75)
    assert area(mesh, keep) == pytest.approx(400.0)


def test_circumradius_of_known_triangles():
    mesh = mesh_of([(0, 0), (3, 0), (0, 4)])
    assert circumradii(mesh) == pytest.approx([2.5])
    mesh = mesh_of([(0, 0), (200, 0), (100, 0.01)])  # nearly straight: radius (half chord² + rise²) / (2 rise)
    assert circumradii(mesh) == pytest.approx([(100**2 + 0.01**2) / 0.02])


places = st.tuples(st.integers(0, 12), st.integers(0, 12))


@settings(max_examples=60, deadline=None)
@given(
    st.sets(places, min_size=4, max_size=30), st.floats(0.5, 8), st.floats(95, 175), st.randoms(use_true_random=False)
)
def test_both_rules_against_peeling_one_by_one(points, radius, angle, random):
    xy = np.array(sorted(points), float)
    if np.linalg.matrix_rank(xy - xy[0]) < 2:
        return
    mesh = mesh_of(xy)
    everything = np.ones(mesh.triangle_count, bool)
    radii = [radius_of(mesh, t) for t in range(mesh.triangle_count)]
    assert circumradii(mesh) == pytest.approx(radii)
    if min(abs(r - radius) for r in radii) > 1e-6:
        expected = peel_one_by_one(mesh, lambda h: radii[h // 3] > radius, random)
        np.testing.assert_array_equal(without_hollow_rim(mesh, everything, radius), expected)
    angles = [angle_opposite(mesh, h) for h in range(len(mesh.vertex))]
    angles = [min(a, 360 - a) for a in angles]
    if min(abs(a - angle) for a in angles) > 1e-6:
        expected = peel_one_by_one(mesh, lambda h: angles[h] > angle, random)
        np.testing.assert_array_equal(without_rim_slivers(mesh, everything, angle), expected)


# --- slivers --------------------------------------------------------------------------------------


def test_slivers_along_a_straight_edge_go_and_nothing_else():
    """A walked strip whose southern edge bends in by centimetres: the hull spans across the bends."""
    along = np.arange(0, 20.001, 0.5)
    south = np.column_stack([along, 0.05 * np.sin(along * 2.0)])
    north = np.column_stack([along, np.full(len(along), 4.4)])
    mesh = mesh_of(np.vstack([south, north]))
    everything = np.ones(mesh.triangle_count, bool)
    keep = without_rim_slivers(mesh, everything, 160.0)
    # Trapezoids between the broken southern edge and the straight northern one.
    strip = float(np.sum((4.4 - (south[1:, 1] + south[:-1, 1]) / 2) * 0.5))
    assert area(mesh, everything) > strip + 0.05
    assert area(mesh, keep) == pytest.approx(strip, abs=0.002)


def test_the_angle_bounds_how_far_the_outline_moves():
    """The point inside stands less than tan((180° - angle) / 2) of half the edge away, as the docstring says."""
    rise = math.tan(math.radians(7.5)) * 0.5
    for height, stays in ((rise * 1.02, True), (rise * 0.98, False)):
        mesh = mesh_of([(0, 0), (1, 0), (0.5, round(height, 4)), (0.5, 3)])
        keep = without_rim_slivers(mesh, np.ones(mesh.triangle_count, bool), 165.0)
        assert np.all(keep) == stays


def test_triangles_between_passes_are_no_slivers():
    rng = np.random.default_rng(3)
    x, y = (v.ravel() for v in np.meshgrid(np.arange(0, 30, 0.5), np.arange(0, 60.1, 20.0)))
    mesh = mesh_of(np.column_stack([x + rng.normal(0, 0.01, len(x)), y]))
    everything = np.ones(mesh.triangle_count, bool)
    keep = without_rim_slivers(mesh, everything, 165.0)
    assert area(mesh, keep) > 0.999 * 29.5 * 60


# --- as options of the surface --------------------------------------------------------------------


def test_the_options_do_it_whatever_the_order_of_points():
    rng = np.random.default_rng(8)
    xy = horseshoe() + rng.normal(0, 0.02, (len(horseshoe()), 2))
    options = SurfaceOptions(max_rim_radius=1.5, max_rim_angle=165.0)
    first = build_surface(survey(xy), NO_LINES, options)
    second = build_surface(survey(xy[rng.permutation(len(xy))]), NO_LINES, options)
    assert triangles(first.tin) == triangles(second.tin)
    assert first.tin.plan_area == pytest.approx(280.0, rel=0.01)
    assert first.report.trimmed == second.report.trimmed > 0


def test_a_boundary_is_not_peeled_away():
    ring = make_line(LineKind.BOUNDARY, np.array([(E0, N0), (E0 + 20, N0), (E0 + 20, N0 + 20), (E0, N0 + 20)]), "site")
    surface = build_surface(survey(horseshoe()), Constraints((ring,)), SurfaceOptions(max_rim_radius=0.75))
    assert surface.tin.plan_area == pytest.approx(400.0)


# --- spacing --------------------------------------------------------------------------------------


def walk(passes=12, apart=4.0, step=0.5, length=40.0):
    """To and fro, so that the order is that of recording."""
    along = np.arange(0, length + 1e-9, step)
    rows = [
        np.column_stack([along if k % 2 == 0 else along[::-1], np.full(len(along), k * apart)]) for k in range(passes)
    ]
    return np.vstack(rows)


def test_spacing_of_a_walk():
    points = survey(walk())
    assert recorded_spacing(points) == pytest.approx(0.5)
    tin = build_surface(points).tin
    corner = tin.corners()[..., :2]
    length = np.hypot(*np.moveaxis(np.roll(corner, -1, axis=1) - corner, -1, 0))
    assert pass_spacing(length) == pytest.approx(math.hypot(4.0, 0.5), rel=0.01)


def test_a_radius_in_passes_finds_the_outline_of_a_walk_with_a_bay():
    xy = walk(passes=20)
    bay = (xy[:, 0] > 15.01) & (xy[:, 1] > 16.01) & (xy[:, 1] < 59.99)
    mesh = mesh_of(xy[~bay])
    everything = np.ones(mesh.triangle_count, bool)
    radius = radius_in_passes(mesh, everything)
    assert radius == pytest.approx(1.5 * 4.03, rel=0.02)
    keep = without_hollow_rim(mesh, everything, radius)
    # 40 m by 76 m less 25 m by 44 m. In the two inner corners right-angled triangles stay whose hypotenuse is at
    # most twice the radius: one leg is a pass of 4 m, the other steps of 0.5 m.
    leg = math.floor(math.sqrt((2 * radius) ** 2 - 4**2) / 0.5) * 0.5
    assert area(mesh, keep) == pytest.approx(40 * 76 - 25 * 44 + 2 * (4 * leg / 2))


def test_a_surface_may_be_trimmed_by_the_distance_of_its_passes():
    xy = walk(passes=20)
    bay = (xy[:, 0] > 15.01) & (xy[:, 1] > 16.01) & (xy[:, 1] < 59.99)
    by_passes, by_radius = (
        build_surface(survey(xy[~bay]), NO_LINES, options).tin.plan_area
        for options in (SurfaceOptions(max_rim_passes=1.5), SurfaceOptions(max_rim_radius=1.5 * 4.03))
    )
    assert by_passes == by_radius < 40 * 76 - 900


def test_spacing_does_not_count_standing_still_nor_rejected_points():
    xy = np.array([(0, 0), (0.5, 0), (0.5, 0.001), (0.5, 0.002), (1, 0), (90, 90), (1.5, 0)])
    points = survey(xy)
    status = points.status.copy()
    status[5] = 2
    assert recorded_spacing(points.with_status(status, points.reasons)) == pytest.approx(0.5)
    assert math.isnan(recorded_spacing(survey([(0, 0)])))
    assert math.isnan(pass_spacing(np.empty((0, 3))))
