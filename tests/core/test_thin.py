"""Thinning: the tolerance is kept, checked by matplotlib's interpolator; few vertices stay; lines and rim stay."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.tri import LinearTriInterpolator, Triangulation

from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import make_points
from plugin.core.progress import Cancelled
from plugin.core.surface.build import build_surface
from plugin.core.surface.predicates import orientation
from plugin.core.surface.thin import thin_surface
from tests.core.surfaces import ORIGIN, delaunay_tin, hills, random_tin, real_ground, ring, tin_of


def largest_by_matplotlib(tin, thin) -> float:
    """Greatest distance in height from the vertices of ``tin`` to ``thin``; those on the rim are vertices of both."""
    mesh = Triangulation(*thin.vertices[:, :2].T, thin.triangles)
    height = LinearTriInterpolator(mesh, thin.vertices[:, 2])(*tin.vertices[:, :2].T)
    dropped = ~np.isin(np.arange(len(tin.vertices)), np.flatnonzero(np.isin(tin.vertex_source, thin.vertex_source)))
    assert not np.any(height.mask & dropped)
    return float(np.max(np.abs(height.data - tin.vertices[:, 2])[dropped], initial=0.0))


def edges_of(tin, which) -> set:
    """Undirected edges in mask ``which`` (m, 3), by the plan places of their ends."""
    triangle, side = np.nonzero(which)
    ends = tin.grid[tin.triangles[triangle, side]], tin.grid[tin.triangles[triangle, (side + 1) % 3]]
    return {frozenset([tuple(a), tuple(b)]) for a, b in zip(*(end.tolist() for end in ends))}


def check(tin, thinned):
    thin = thinned.tin
    assert np.all(orientation(*np.ascontiguousarray(thin.grid.T), *thin.triangles.T.astype(np.int64)) > 0)
    assert thin.plan_area == pytest.approx(tin.plan_area, abs=1e-6)
    assert edges_of(thin, thin.neighbours < 0) == edges_of(tin, tin.neighbours < 0)
    np.testing.assert_array_equal(thin.vertices, tin.vertices[thinned.kept])
    assert thinned.largest_difference <= thinned.tolerance + 1e-9
    assert thinned.rms_difference <= thinned.largest_difference
    assert largest_by_matplotlib(tin, thin) == pytest.approx(thinned.largest_difference, abs=1e-8)


@pytest.mark.parametrize("tolerance", [2.0, 0.3, 0.05])
@pytest.mark.parametrize("keep", [None, ring])
def test_every_vertex_is_within_the_tolerance(tolerance, keep):
    tin = random_tin(1500, 1, keep=keep)
    check(tin, thin_surface(tin, tolerance))


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10**6), st.floats(0.0, 1.5))
def test_ragged_surfaces_with_holes(seed, tolerance):
    rng = np.random.default_rng(seed)
    tin = random_tin(int(rng.integers(20, 200)), seed, keep=lambda x, y: rng.random(len(x)) < 0.97)
    check(tin, thin_surface(tin, tolerance))


def test_a_plane_needs_only_its_rim():
    tin = random_tin(2000, 2)
    x, y = tin.vertices[:, :2].T
    tin = replace(tin, vertices=np.column_stack([x, y, 0.1 * x + 0.2 * y]))
    thinned = thin_surface(tin, 0.001)
    rim = np.unique(tin.triangles[tin.neighbours < 0])
    assert set(rim) <= set(thinned.kept.tolist())
    assert len(thinned.kept) < 40
    assert thinned.largest_difference < 1e-9


def test_no_tolerance_keeps_the_ground_exactly_and_still_drops_what_is_level():
    rng = np.random.default_rng(3)
    xy = rng.uniform(0, 100, (1000, 2))
    tin = delaunay_tin(xy, np.where(xy[:, 0] < 50, 7.0, rng.normal(7, 1, len(xy))))
    thinned = thin_surface(tin, 0.0)
    assert thinned.largest_difference < 1e-9
    assert 480 < len(thinned.kept) < 700


def test_a_smaller_tolerance_keeps_more():
    tin = random_tin(3000, 4)
    counts = [len(thin_surface(tin, tolerance).kept) for tolerance in (3.0, 1.0, 0.3, 0.1)]
    assert counts == sorted(counts)
    assert counts[0] < 100
    assert counts[-1] > 1000


def test_breaklines_and_voids_stay_as_they_are():
    rng = np.random.default_rng(5)
    xy = rng.uniform(0, 60, (1500, 2))
    points = make_points(*(xy + ORIGIN).T, hills(*xy.T))
    kerb = np.column_stack([np.linspace(5, 55, 40), np.linspace(12, 17, 40)])
    height = hills(*kerb.T) + 0.12
    pond = np.array([[30.0, 35.0], [45.0, 36.0], [41.0, 50.0], [31.0, 47.0]])
    lines = Constraints(
        (
            make_line(LineKind.BREAKLINE, np.column_stack([kerb + ORIGIN, height])),
            make_line(LineKind.VOID, np.column_stack([pond + ORIGIN, hills(*pond.T)])),
        )
    )
    tin = build_surface(points, lines).tin
    thinned = thin_surface(tin, 0.1)
    thin = thinned.tin
    assert len(thinned.kept) < 0.3 * len(tin.vertices)
    for kind in (LineKind.BREAKLINE, LineKind.VOID):
        marked = edges_of(tin, tin.edge_kind & int(kind) != 0)
        assert len(marked) >= 4
        assert edges_of(thin, thin.edge_kind & int(kind) != 0) == marked
    assert thin.plan_area == pytest.approx(tin.plan_area, abs=1e-6)
    assert thinned.largest_difference <= 0.1 + 1e-9
    np.testing.assert_array_equal(thin.vertex_source, tin.vertex_source[thinned.kept])


def test_the_order_of_the_triangles_does_not_matter():
    tin = random_tin(800, 6)
    order = np.random.default_rng(6).permutation(len(tin.triangles))
    other = tin_of(tin.grid, tin.vertices[:, 2], tin.triangles[order])
    np.testing.assert_array_equal(thin_surface(tin, 0.3).kept, thin_surface(other, 0.3).kept)


def test_not_many_more_vertices_than_one_at_a_time():
    """The published method inserts the worst of all vertices each time; many at once costs some vertices more."""
    rng = np.random.default_rng(7)
    xy = rng.uniform(0, 100, (900, 2))
    tin = delaunay_tin(xy, hills(*xy.T))
    kept = np.zeros(len(tin.vertices), bool)
    kept[tin.triangles[tin.neighbours < 0]] = True
    kept[np.roll(tin.triangles, -1, 1)[tin.neighbours < 0]] = True
    while True:
        numbers = np.flatnonzero(kept)
        now = delaunay_tin(tin.vertices[numbers, :2], tin.vertices[numbers, 2])
        mesh = Triangulation(*now.vertices[:, :2].T, now.triangles)
        height = LinearTriInterpolator(mesh, now.vertices[:, 2])(*tin.vertices[:, :2].T).filled(np.nan)
        off = np.where(kept, 0, np.abs(height - tin.vertices[:, 2]))
        if np.nanmax(off) <= 0.3:
            break
        kept[np.nanargmax(off)] = True
    assert len(thin_surface(tin, 0.3).kept) <= 1.15 * kept.sum()


def test_a_real_hillside_to_ten_metres():
    xy, z, _ = real_ground()
    near = (xy[:, 0] < 4500) & (xy[:, 1] < 4500)
    tin = delaunay_tin(xy[near], z[near])
    thinned = thin_surface(tin, 10.0)
    check(tin, thinned)
    assert len(thinned.kept) < 0.5 * len(tin.vertices)


def test_where_the_largest_difference_is():
    tin = random_tin(500, 8)
    thinned = thin_surface(tin, 0.5)
    place = np.hypot(*(tin.vertices[:, :2] + ORIGIN - [thinned.easting, thinned.northing]).T)
    worst = int(np.argmin(place))
    assert place[worst] < 1e-6
    mesh = Triangulation(*thinned.tin.vertices[:, :2].T, thinned.tin.triangles)
    height = LinearTriInterpolator(mesh, thinned.tin.vertices[:, 2])(*tin.vertices[worst, :2])
    assert abs(float(height) - tin.vertices[worst, 2]) == pytest.approx(thinned.largest_difference, abs=1e-9)


@pytest.mark.parametrize("tolerance", [-0.1, float("nan"), float("inf")])
def test_a_tolerance_must_be_a_length(tolerance):
    with pytest.raises(SurveyError) as error:
        thin_surface(random_tin(20, 1), tolerance)
    assert error.value.code == "thin.tolerance"


def test_it_can_be_cancelled():
    def stop(fraction, stage):
        raise Cancelled

    with pytest.raises(Cancelled):
        thin_surface(random_tin(300, 1), 0.01, stop)
