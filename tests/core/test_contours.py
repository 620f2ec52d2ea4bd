"""Contours against closed forms, matplotlib's and contourpy's contour generators, and their own rules.

matplotlib's ``tricontour`` has the same rule for a vertex at exactly a level (z >= level is above), so
the lines must agree there too.
"""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Callable, List, Tuple

import contourpy
import matplotlib._tri as _tri
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from matplotlib.cbook import get_sample_data
from matplotlib.tri import LinearTriInterpolator, Triangulation
from scipy.spatial import Delaunay

from plugin.core.contours.levels import MOST_LEVELS, levels_between, rank_heights
from plugin.core.contours.lines import ContourOptions, Contours
from plugin.core.contours.trace import trace_contours
from plugin.core.messages import SurveyError
from plugin.core.progress import Cancelled
from plugin.core.surface.tin import Tin
from plugin.core.units import LengthUnit
from tests.core.terrains import HALF_FOOT

# ---------------------------------------------------------------------------------------- helpers


def neighbours_of(triangles: np.ndarray) -> np.ndarray:
    """Triangle across each edge (corner i to i + 1), -1 at the rim: the one with the same edge turned about."""
    a = np.asarray(triangles, dtype=np.int64)
    if len(a) == 0:
        return np.empty((0, 3), dtype=np.int32)
    b, n = np.roll(a, -1, axis=1), a.max() + 1
    edge, turned = (a * n + b).ravel(), (b * n + a).ravel()
    order = np.argsort(edge)
    place = order[np.minimum(np.searchsorted(edge, turned, sorter=order), len(edge) - 1)]
    return np.where(edge[place] == turned, place // 3, -1).reshape(-1, 3).astype(np.int32)


def make_tin(xyz: np.ndarray, triangles: np.ndarray, neighbours: np.ndarray) -> Tin:
    return Tin(
        vertices=np.array(xyz, dtype=float),
        triangles=np.array(triangles, dtype=np.int32),
        neighbours=np.array(neighbours, dtype=np.int32),
        edge_kind=np.zeros((len(triangles), 3), dtype=np.uint8),
        grid=np.rint(np.asarray(xyz)[:, :2] * 1e4).astype(np.int64),
        origin=np.array([432_000.0, 5_765_000.0]),
        vertex_source=np.arange(len(xyz)),
    )


def delaunay_tin(xy: np.ndarray, z: np.ndarray) -> Tin:
    mesh = Delaunay(xy)
    # scipy's neighbour i lies opposite to corner i, which is across edge i + 1.
    return make_tin(np.column_stack([xy, z]), mesh.simplices, mesh.neighbors[:, [2, 0, 1]])


def grid_tin(z: np.ndarray, swap: np.ndarray) -> Tin:
    """Unit squares, each cut by one diagonal or (``swap``) the other."""
    rows, columns = z.shape
    y, x = np.mgrid[:rows, :columns]
    number = np.arange(z.size).reshape(z.shape)
    a, b, c, d = number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1]
    one = np.where(swap[..., None], np.stack([a, b, d], -1), np.stack([a, b, c], -1))
    two = np.where(swap[..., None], np.stack([b, c, d], -1), np.stack([a, c, d], -1))
    triangles = np.concatenate([one.reshape(-1, 3), two.reshape(-1, 3)])
    return make_tin(np.column_stack([x.ravel(), y.ravel(), z.ravel()]), triangles, neighbours_of(triangles))


def shuffled(tin: Tin, seed: int) -> Tin:
    """The same surface with triangles, corners and vertices in another order."""
    rng = np.random.default_rng(seed)
    names = rng.permutation(len(tin.vertices))
    vertices = np.empty_like(tin.vertices)
    vertices[names] = tin.vertices
    turn = (np.arange(3) + rng.integers(0, 3, (len(tin.triangles), 1))) % 3
    turned = np.take_along_axis(names[tin.triangles], turn, axis=1)
    triangles = turned[rng.permutation(len(turned))]
    return make_tin(vertices, triangles, neighbours_of(triangles))


def length(line: np.ndarray) -> float:
    return float(np.hypot(*np.diff(line, axis=0).T).sum())


def local_lines(contours: Contours) -> List[np.ndarray]:
    return [contours.xy[a:b] for a, b in zip(contours.start[:-1], contours.start[1:])]


def matplotlib_generator(tin: Tin) -> Callable[[float], List[np.ndarray]]:
    """Gives matplotlib's lines of a level without those of no length."""
    x, y, z = (np.ascontiguousarray(column) for column in tin.vertices.T)
    generator = _tri.TriContourGenerator(Triangulation(x, y, tin.triangles).get_cpp_triangulation(), z)

    def lines(level: float) -> List[np.ndarray]:
        made = generator.create_contour(level)
        made = made[0] if isinstance(made, tuple) else made  # matplotlib < 3.5 gives the lines alone
        return [line for line in map(np.asarray, made) if length(line) > 0]

    return lines


def assert_same_as_matplotlib(tin: Tin, contours: Contours, levels: np.ndarray) -> None:
    """Same levels, and of each the same total length, number of lines and number of rings."""
    reference = matplotlib_generator(tin)
    ours = local_lines(contours)
    assert set(contours.level) <= set(levels)
    for level in levels:
        mine = [line for line, own in zip(ours, contours.level) if own == level]
        theirs = reference(level)
        assert sum(map(length, mine)) == pytest.approx(sum(map(length, theirs)), rel=1e-9)
        assert len(mine) == len(theirs)
        closed = sum(np.array_equal(line[0], line[-1]) for line in theirs)
        assert np.sum(contours.closed[contours.level == level]) == closed


def assert_sound(tin: Tin, contours: Contours) -> None:
    """The rules every set of contours keeps."""
    rim = {
        (int(t[i]), int(t[(i + 1) % 3])) for t, n in zip(tin.triangles, tin.neighbours) for i in range(3) if n[i] < 0
    }
    edges = np.array([[tin.vertices[a, :2], tin.vertices[b, :2]] for a, b in rim])
    for i, line in enumerate(local_lines(contours)):
        assert len(line) >= 2
        assert np.all(np.any(np.diff(line, axis=0) != 0, axis=1))
        assert contours.closed[i] == np.array_equal(line[0], line[-1])
        if contours.closed[i]:
            assert tuple(line[0]) == min(map(tuple, line))
        else:
            assert not contours.depression[i]
            for end in (line[0], line[-1]):
                span = edges[:, 1] - edges[:, 0]
                share = np.clip(np.sum((end - edges[:, 0]) * span, 1) / np.sum(span**2, 1), 0, 1)
                assert np.hypot(*(edges[:, 0] + share[:, None] * span - end).T).min() < 1e-9
    first = contours.xy[contours.start[:-1]]
    keys = list(zip(contours.step.tolist(), *first.T.tolist()))
    assert keys == sorted(keys)


def assert_equal(one: Contours, two: Contours) -> None:
    for name in ("xy", "start", "level", "level_in_unit", "step", "index", "closed", "depression"):
        np.testing.assert_array_equal(getattr(one, name), getattr(two, name), err_msg=name)


def random_terrain(seed: int, n: int = 400) -> Tin:
    rng = np.random.default_rng(seed)
    xy = np.unique(rng.integers(0, 1_000_000, (n, 2)), axis=0) * 1e-4
    x, y = xy.T
    return delaunay_tin(xy, 50 + 3 * np.sin(x / 9) * np.cos(y / 13) + rng.normal(0, 0.4, len(x)))


# ------------------------------------------------------------------------------------ closed forms


@pytest.mark.parametrize("sides", [3, 7, 360])
def test_cone_with_polygon_base(sides: int) -> None:
    """Rings of a pyramid over a regular polygon: n chords of 2 r sin(pi / n), r = R (1 - level / H)."""
    radius, height = 40.0, 10.0
    angle = 2 * math.pi * np.arange(sides) / sides
    base = np.column_stack([radius * np.cos(angle), radius * np.sin(angle), np.zeros(sides)])
    corner = np.arange(sides)
    triangles = np.column_stack([corner, (corner + 1) % sides, np.full(sides, sides)])
    tin = make_tin(np.vstack([base, [0, 0, height]]), triangles, neighbours_of(triangles))
    contours = trace_contours(tin, ContourOptions(interval=0.5))
    # 0 at the rim has nothing below it and 10 is the summit itself.
    np.testing.assert_allclose(contours.level, np.arange(0.5, 10, 0.5), rtol=0, atol=0)
    assert contours.closed.all()
    assert not contours.depression.any()
    expected = sides * 2 * radius * (1 - contours.level / height) * math.sin(math.pi / sides)
    np.testing.assert_allclose([length(line) for line in contours], expected, rtol=1e-9)

    pit = replace(tin, vertices=tin.vertices * [1, 1, -1])
    below = trace_contours(pit, ContourOptions(interval=0.5))
    assert below.depression.all()
    assert below.closed.all()
    # From the rim at 0, which is above by the rule, down to 9.5.
    assert below.level[-1] == 0.0
    assert length(below.line(len(below) - 1)) == pytest.approx(sides * 2 * radius * math.sin(math.pi / sides))


def test_plane_gives_parallel_straight_lines() -> None:
    """z = x + y over a unit square: chords of sqrt(2) min(c, 2 - c), c the level."""
    rng = np.random.default_rng(3)
    xy = np.vstack([rng.uniform(0, 1, (500, 2)), [[0, 0], [1, 0], [1, 1], [0, 1]]])
    contours = trace_contours(delaunay_tin(xy, xy.sum(axis=1)), ContourOptions(interval=0.01, base=0.005))
    assert len(contours) == 200
    assert not contours.closed.any()
    for line, level in zip(local_lines(contours), contours.level):
        np.testing.assert_allclose(line.sum(axis=1), level, atol=1e-12)
        assert length(line) == pytest.approx(math.sqrt(2) * min(level, 2 - level), rel=1e-9)
        # Higher ground to the north-east and on the left: the line runs to the south-east.
        assert np.all(np.diff(line, axis=0) * [1, -1] > 0)


# ------------------------------------------------------------------------------- outside references


@pytest.mark.parametrize("seed", range(12))
def test_same_as_matplotlib_on_random_tins(seed: int) -> None:
    tin = random_terrain(seed)
    options = ContourOptions(interval=0.25, base=0.1)
    contours = trace_contours(tin, options)
    levels = levels_between(options, *tin.height_range).metres
    assert len(levels) > 20
    assert set(contours.level) == set(levels)
    assert_same_as_matplotlib(tin, contours, levels)
    assert_sound(tin, contours)


@pytest.fixture(scope="module")
def elevation() -> np.ndarray:
    """The real elevation grid in matplotlib's sample data, whole metres."""
    with np.load(get_sample_data("jacksboro_fault_dem.npz", asfileobj=False)) as dem:
        return dem["elevation"].astype(float)


def test_same_as_matplotlib_on_a_real_elevation_grid(elevation: np.ndarray) -> None:
    """Whole metres and levels of whole metres: thousands of vertices lie exactly on a level."""
    tin = grid_tin(elevation, np.indices((elevation.shape[0] - 1, elevation.shape[1] - 1)).sum(axis=0) % 2 == 1)
    options = ContourOptions(interval=20.0)
    contours = trace_contours(tin, options)
    levels = levels_between(options, *tin.height_range).metres
    assert len(levels) > 15
    assert np.isin(elevation, levels).sum() > 5_000
    assert set(contours.level) == set(levels)
    assert contours.depression.any()
    assert_same_as_matplotlib(tin, contours, levels)
    assert_equal(contours, trace_contours(shuffled(tin, 5), options))


def test_same_length_as_contourpy_on_a_real_elevation_grid(elevation: np.ndarray) -> None:
    """contourpy cuts each square into four triangles at its mean height; so do we here."""
    z = elevation[:120, :150]
    rows, columns = z.shape
    y, x = np.mgrid[:rows, :columns]
    middle = (z[:-1, :-1] + z[:-1, 1:] + z[1:, 1:] + z[1:, :-1]) / 4
    corners = np.column_stack([x.ravel(), y.ravel(), z.ravel()])
    centres = np.column_stack([x[:-1, :-1].ravel() + 0.5, y[:-1, :-1].ravel() + 0.5, middle.ravel()])
    number = np.arange(z.size).reshape(z.shape)
    around = [number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1]]
    centre = z.size + np.arange(middle.size)
    triangles = np.concatenate([np.column_stack([around[i].ravel(), around[i - 3].ravel(), centre]) for i in range(4)])
    tin = make_tin(np.vstack([corners, centres]), triangles, neighbours_of(triangles))
    # Off the quarter metres that the heights are made of: contourpy counts a vertex at a level as below.
    contours = trace_contours(tin, ContourOptions(interval=10.0, base=0.1))
    reference = contourpy.contour_generator(x, y, z, name="serial", quad_as_tri=True)
    for level in np.unique(contours.level):
        mine = sum(length(line) for line, own in zip(local_lines(contours), contours.level) if own == level)
        theirs = sum(map(length, reference.lines(level)))
        assert mine == pytest.approx(theirs, rel=1e-9)


# ------------------------------------------------------------------------------------- own rules


small_grids = st.tuples(st.integers(2, 6), st.integers(2, 6)).flatmap(
    lambda shape: st.tuples(
        st.lists(st.integers(0, 3), min_size=shape[0] * shape[1], max_size=shape[0] * shape[1]).map(
            lambda heights: np.array(heights, dtype=float).reshape(shape)
        ),
        st.lists(st.booleans(), min_size=(shape[0] - 1) * (shape[1] - 1), max_size=(shape[0] - 1) * (shape[1] - 1)).map(
            lambda swaps: np.array(swaps).reshape(shape[0] - 1, shape[1] - 1)
        ),
    )
)


@settings(max_examples=300, deadline=None)
@given(small_grids, st.sampled_from([1.0, 0.5, 0.7]), st.integers(0, 2**20))
def test_levels_through_vertices_flats_ridges_and_pits(
    grid: Tuple[np.ndarray, np.ndarray], interval: float, seed: int
) -> None:
    tin = grid_tin(*grid)
    options = ContourOptions(interval=interval)
    contours = trace_contours(tin, options)
    assert_sound(tin, contours)
    assert_same_as_matplotlib(tin, contours, levels_between(options, *tin.height_range).metres)
    assert_equal(contours, trace_contours(shuffled(tin, seed), options))


def test_higher_ground_is_on_the_left() -> None:
    tin = random_terrain(21)
    height = LinearTriInterpolator(Triangulation(*tin.vertices[:, :2].T, tin.triangles), tin.vertices[:, 2])
    contours = trace_contours(tin, ContourOptions(interval=0.5, base=0.03))
    for line, level in zip(local_lines(contours), contours.level):
        step = np.diff(line, axis=0)
        middle = line[:-1] + step / 2
        left = 1e-7 * np.column_stack([-step[:, 1], step[:, 0]]) / np.hypot(*step.T)[:, None]
        assert np.ma.allclose(height(*middle.T), level, atol=1e-9)
        assert np.all(height(*(middle + left).T) > level)
        assert np.all(height(*(middle - left).T) < level)


def single_vertex(centre: float, around: float) -> Tin:
    z = np.full((3, 3), around)
    z[1, 1] = centre
    return grid_tin(z, np.zeros((2, 2), dtype=bool))


def test_summit_and_pit_exactly_at_a_level() -> None:
    one = ContourOptions(interval=1.0)
    assert len(trace_contours(single_vertex(1.0, 0.5), one)) == 0  # a summit at the level: a point, no line
    assert len(trace_contours(single_vertex(1.0, 1.5), one)) == 0  # a pit at the level: nothing is below
    ring = trace_contours(single_vertex(0.5, 1.0), one)  # a pit in a plain at the level: the plain's edge
    assert ring.closed.tolist() == [True]
    assert ring.depression.tolist() == [True]
    assert length(ring.line(0)) == pytest.approx(4 * 1 + 2 * math.sqrt(2))
    assert len(trace_contours(single_vertex(1.0, 1.0), one)) == 0  # level ground at the level


def test_ridge_exactly_at_a_level_is_walked_both_ways_and_is_no_depression() -> None:
    z = np.zeros((3, 6))
    z[1, 1:5] = 1.0
    ridge = trace_contours(grid_tin(z, np.zeros((2, 5), dtype=bool)), ContourOptions(interval=1.0))
    assert ridge.xy.tolist() == [[1, 1], [2, 1], [3, 1], [4, 1], [3, 1], [2, 1], [1, 1]]
    assert ridge.closed.all()
    assert not ridge.depression.any()


def test_a_bent_ridge_exactly_at_a_level_is_no_depression() -> None:
    """An L of vertices at the level, walked out and back: its area is 0, whatever rounding makes of the sums."""
    z = np.zeros((5, 5))
    z[1, 1:4] = z[2:4, 3] = 1.0
    swap = np.zeros((4, 4), dtype=bool)
    swap[1, 2] = False
    ridge = trace_contours(grid_tin(z, ~swap), ContourOptions(interval=1.0))
    assert len(ridge) == 1
    assert ridge.closed.all()
    assert not ridge.depression.any()


def test_void_ends_lines_at_its_rim() -> None:
    """Lines that meet a hole in the surface stop there."""
    tin = random_terrain(4)
    centre = tin.corners()[:, :, :2].mean(axis=1)
    kept = tin.triangles[np.hypot(*(centre - 50).T) > 20]
    holed = make_tin(tin.vertices, kept, neighbours_of(kept))
    options = ContourOptions(interval=0.3, base=0.07)
    contours = trace_contours(holed, options)
    assert_sound(holed, contours)
    assert_same_as_matplotlib(holed, contours, levels_between(options, *holed.height_range).metres)


# ------------------------------------------------------------------------------- levels and units


def slope(top: float) -> Tin:
    """A ramp of one square from height 0 to ``top``."""
    return grid_tin(np.array([[0.0, top], [0.0, top]]), np.zeros((1, 1), dtype=bool))


@pytest.mark.parametrize(
    ("unit", "half"),
    [(LengthUnit.FOOT, 0.1524), (LengthUnit.US_SURVEY_FOOT, 600 / 3937)],  # NIST SP 811
)
def test_half_foot_contours(unit: LengthUnit, half: float) -> None:
    """Half a foot is 0.1524 m: the interval of a small street survey (common practice, no source)."""
    contours = trace_contours(slope(1.0), replace(HALF_FOOT, unit=unit))
    assert contours.level_in_unit.tolist() == [0.5, 1.0, 1.5, 2.0, 2.5, 3.0]
    np.testing.assert_allclose(contours.level, half * np.arange(1, 7), rtol=1e-15)
    assert contours.index.tolist() == [False, True, False, True, False, True]
    np.testing.assert_allclose([line[:, 0] for line in local_lines(contours)], np.repeat(contours.level[:, None], 3, 1))


def test_levels_are_the_decimal_numbers_meant() -> None:
    levels = levels_between(ContourOptions(interval=0.1, base=0.05), -0.21, 0.66)
    assert levels.in_unit.tolist() == [-0.15, -0.05, 0.05, 0.15, 0.25, 0.35, 0.45, 0.55, 0.65]
    assert levels.step.tolist() == list(range(-2, 7))
    # low < level <= high: nothing is below the lowest vertex, and the highest reaches its own level.
    assert levels_between(ContourOptions(interval=1.0), 2.0, 4.0).in_unit.tolist() == [3.0, 4.0]


def test_a_height_read_in_feet_meets_its_level() -> None:
    """A vertex read as 100.3 ft is at the level 100.3 ft, not a rounding above or below it."""
    for tenth in range(1001, 1200):
        feet = tenth / 10
        levels = levels_between(ContourOptions(interval=0.1, unit=LengthUnit.FOOT), 30.0, feet * 0.3048)
        assert levels.metres[-1] == feet * 0.3048


@given(st.lists(st.floats(-60, 60), min_size=1), st.sampled_from([0.1, 0.25, 1.0, 7.0]), st.floats(-3, 3))
def test_rank_is_that_of_searchsorted(heights: List[float], interval: float, base: float) -> None:
    levels = levels_between(ContourOptions(interval=interval, base=base), -50.0, 50.0).metres
    z = np.concatenate([heights, levels, np.nextafter(levels, -np.inf), np.nextafter(levels, np.inf)])
    np.testing.assert_array_equal(rank_heights(z, levels), np.searchsorted(levels, z, side="right"))


def test_no_levels_and_no_triangles_give_no_lines() -> None:
    assert len(trace_contours(slope(1.0), ContourOptions(interval=5.0))) == 0
    nothing = make_tin(np.zeros((3, 3)), np.empty((0, 3)), np.empty((0, 3)))
    contours = trace_contours(nothing, ContourOptions(interval=1.0))
    assert len(contours) == 0
    assert contours.start.tolist() == [0]
    assert contours.xy.shape == (0, 2)


def test_carries_origin_crs_and_options() -> None:
    tin = replace(slope(1.0), crs="kept as it is")
    options = ContourOptions(interval=0.5)
    contours = trace_contours(tin, options)
    assert contours.crs == "kept as it is"
    assert contours.options is options
    np.testing.assert_array_equal(contours.line(0)[:, 0], np.full(3, 432_000.5))


@pytest.mark.parametrize(
    ("options", "code"),
    [
        (ContourOptions(interval=0.0), "contours.interval"),
        (ContourOptions(interval=-1.0), "contours.interval"),
        (ContourOptions(interval=math.nan), "contours.interval"),
        (ContourOptions(interval=math.inf), "contours.interval"),
        (ContourOptions(interval=1.0, base=math.nan), "contours.base"),
        (ContourOptions(interval=1.0, index_every=0), "contours.index_every"),
        (ContourOptions(interval=1.0 / (2 * MOST_LEVELS)), "contours.too_many_levels"),
        (ContourOptions(interval=5e-324), "contours.too_many_levels"),
        (ContourOptions(interval=0.01, base=1e300), "contours.base"),
    ],
)
def test_settings_that_cannot_be_drawn_are_refused(options: ContourOptions, code: str) -> None:
    with pytest.raises(SurveyError) as caught:
        trace_contours(slope(1.0), options)
    assert caught.value.code == code
    assert "\n" not in str(caught.value)


def test_levels_that_floating_point_cannot_tell_apart_are_refused() -> None:
    with pytest.raises(SurveyError) as caught:
        levels_between(ContourOptions(interval=1e-7), 1e9, 1e9 + 1e-5)
    assert caught.value.code == "contours.levels_coincide"


def test_a_far_base_keeps_the_levels_exact() -> None:
    far = levels_between(ContourOptions(interval=0.25, base=1e12 + 0.125), 0.0, 1.0)
    assert far.in_unit.tolist() == [0.125, 0.375, 0.625, 0.875]
    assert far.step[0] == -4 * 10**12


def test_a_wild_vertex_that_no_triangle_uses_does_not_matter() -> None:
    tin = slope(1.0)
    wild = replace(tin, vertices=np.vstack([tin.vertices, [0.5, 0.5, 1e9]]))
    assert_equal(trace_contours(tin, ContourOptions(0.1)), trace_contours(wild, ContourOptions(0.1)))


def test_progress_rises_and_cancels() -> None:
    seen: List[float] = []
    trace_contours(random_terrain(1), ContourOptions(0.5), lambda fraction, stage: seen.append(fraction))
    assert seen == sorted(seen)
    assert seen[-1] == 1.0

    def stop(fraction: float, stage: str) -> None:
        if fraction > 0.5:
            raise Cancelled

    with pytest.raises(Cancelled):
        trace_contours(random_terrain(1), ContourOptions(0.5), stop)
