"""From points and lines to a TIN, through ``build_surface``."""

from __future__ import annotations

from typing import List, Optional, Sequence, Set, Tuple

import numpy as np
import pytest
import shapely
from scipy.interpolate import LinearNDInterpolator
from scipy.spatial import Delaunay

from plugin.core.linework.constraints import ConstraintLine, Constraints, LineKind, make_line
from plugin.core.messages import SurveyError
from plugin.core.points.pointset import PointSet, Status, make_points
from plugin.core.surface.build import Surface, SurfaceOptions, build_surface
from plugin.core.surface.crossings import CrossingRule
from plugin.core.surface.locate import heights_at, locate
from plugin.core.surface.tin import GRID, Tin
from tests.core.exact_check import Checked, as_points, as_triangles, circle, turn

# A site in UTM zone 32, and its size in metres.
SITE = np.array([432_000.0, 5_765_000.0])
SIZE = 50.0


def ground(xy: np.ndarray) -> np.ndarray:
    """Rolling ground of some metres, with no slope over 1 in 1."""
    x, y = xy[:, 0] - SITE[0], xy[:, 1] - SITE[1]
    return 100 + 2 * np.sin(x / 5) + 1.5 * np.cos(y / 4)


def places(n: int, rng: np.random.Generator) -> np.ndarray:
    """Different places (n, 2) on the site, in whole millimetres."""
    xy = np.unique(rng.integers(0, int(SIZE * 1000) + 1, (n, 2)), axis=0)
    rng.shuffle(xy)
    return xy / 1000 + SITE


def survey(xy: np.ndarray, z: Optional[np.ndarray] = None, **columns: object) -> PointSet:
    xy = np.asarray(xy, float)
    columns.setdefault("source_line", np.arange(len(xy)) + 2)
    return make_points(xy[:, 0], xy[:, 1], ground(xy) if z is None else z, source="field.csv", **columns)


def square_grid(n: int = 11, step: float = 1.0) -> np.ndarray:
    return np.stack(np.meshgrid(np.arange(n), np.arange(n)), -1).reshape(-1, 2) * step + SITE


def line(kind: LineKind, xy: Sequence[Sequence[float]], z: object = None, label: str = "") -> ConstraintLine:
    """A line by places in metres from ``SITE``; ``z``: nothing, a height or heights."""
    xy = np.asarray(xy, float) + SITE
    if z is None:
        return make_line(kind, xy, label)
    return make_line(kind, np.column_stack([xy, np.broadcast_to(np.asarray(z, float), len(xy))]), label)


def lines(*given: ConstraintLine) -> Constraints:
    return Constraints(given)


def check_tin(tin: Tin) -> None:
    """What every TIN promises."""
    m = len(tin.triangles)
    assert tin.triangles.dtype == np.int32
    assert tin.neighbours.dtype == np.int32
    assert tin.edge_kind.dtype == np.uint8
    assert tin.neighbours.shape == tin.edge_kind.shape == (m, 3)
    assert set(np.unique(tin.triangles)) == set(range(len(tin.vertices))), "a vertex is in no triangle"
    np.testing.assert_allclose(tin.vertices[:, :2], tin.grid * GRID, rtol=0, atol=1e-12)
    assert np.all(np.isfinite(tin.vertices))
    assert len(np.unique(tin.grid, axis=0)) == len(tin.grid)
    assert np.all(tin.origin == np.floor(tin.origin))
    points = as_points(*tin.grid.T)
    sides = {}
    for t, corner in enumerate(as_triangles(tin.triangles)):
        assert turn(*(points[v] for v in corner)) > 0
        for i in range(3):
            edge = corner[i], corner[(i + 1) % 3]
            assert edge not in sides
            sides[edge] = t, i
    for (a, b), (t, i) in sides.items():
        beyond = sides.get((b, a))
        assert tin.neighbours[t, i] == (beyond[0] if beyond else -1)
        if beyond:
            assert tin.edge_kind[beyond] == tin.edge_kind[t, i]
    assert int(tin.edge_kind.max(initial=0)) <= LineKind.BREAKLINE | LineKind.BOUNDARY | LineKind.VOID


def shapes(tin: Tin, about: np.ndarray = SITE) -> Set[Tuple[Tuple[float, ...], ...]]:
    """Triangles as sorted corners in 0.1 mm from ``about`` with heights: the same however things are numbered."""
    shift = np.rint((tin.origin - about) / GRID).astype(np.int64)
    corner = np.column_stack([tin.grid + shift, tin.vertices[:, 2]])[tin.triangles]
    return {tuple(sorted(map(tuple, t))) for t in corner.tolist()}


def edges_of(tin: Tin, kind: LineKind) -> Set[Tuple[Tuple[float, float], ...]]:
    """Edges with a kind, as sorted pairs of places in metres from ``SITE``."""
    t, i = np.nonzero(tin.edge_kind & int(kind))
    ends = np.stack([tin.triangles[t, i], tin.triangles[t, (i + 1) % 3]], axis=1)
    xy = np.round(tin.grid * GRID + tin.origin - SITE, 4)
    return {tuple(sorted(map(tuple, pair))) for pair in xy[ends].tolist()}


def across(u: np.ndarray, v: np.ndarray) -> np.ndarray:
    """The cross product in plan: how far ``v`` points to the left of ``u``, times the length of both."""
    return np.asarray(u[..., 0] * v[..., 1] - u[..., 1] * v[..., 0])


def steepest(tin: Tin) -> float:
    a, b, c = np.moveaxis(tin.corners(), 1, 0)
    normal = np.cross(b - a, c - a)
    return float(np.max(np.hypot(normal[:, 0], normal[:, 1]) / normal[:, 2]))


def samples(n: int, rng: np.random.Generator) -> np.ndarray:
    return rng.uniform(0, SIZE, (n, 2)) + SITE


# ---------------------------------------------------------------------------------------------- points alone


def test_plain_points_as_scipy_triangulates_them() -> None:
    rng = np.random.default_rng(1)
    xy = places(2000, rng)
    surface = build_surface(survey(xy))
    tin = surface.tin
    check_tin(tin)
    assert {tuple(sorted(t)) for t in tin.vertex_source[tin.triangles].tolist()} == {
        tuple(sorted(t)) for t in Delaunay(xy - SITE).simplices.tolist()
    }
    np.testing.assert_array_equal(tin.vertices[:, 2], ground(xy)[tin.vertex_source])
    report = surface.report
    assert (report.points_used, report.points_rejected, report.vertices) == (len(xy), 0, len(xy))
    assert report.triangles == len(tin.triangles)
    assert (report.outside, report.trimmed, report.unused_vertices) == (0, 0, 0)
    assert report.messages == report.duplicates == report.conflicts == ()


def test_order_of_points_does_not_matter() -> None:
    rng = np.random.default_rng(2)
    xy = np.vstack([square_grid(), places(200, rng), places(200, np.random.default_rng(2))[:50]])  # some places twice
    z = rng.normal(100, 1, len(xy))
    given = lines(line(LineKind.BREAKLINE, [[1, 1], [9.5, 7], [30, 31]]), line(LineKind.VOID, [[3, 3], [6, 3], [5, 6]]))
    expected = shapes(build_surface(survey(xy, z), given).tin)
    for seed in range(4):
        order = np.random.default_rng(seed).permutation(len(xy))
        assert shapes(build_surface(survey(xy[order], z[order]), given).tin) == expected


@pytest.mark.parametrize("shift", [(0, 0), (-432_000, -5_765_000), (3_000_000, 9_000_000), (-900_000, -12_000_000)])
def test_moving_the_site_changes_nothing(shift: Tuple[float, float]) -> None:
    """Whole metres: then the same whole-millimetre places come out, however many digits stand before them."""
    rng = np.random.default_rng(3)
    xy, z = places(300, rng), rng.normal(100, 1, 300)
    ring = np.array([[5, 5], [45, 4], [44, 46], [4, 44]]) + SITE
    soft = np.array([[1.5, 2.5], [30.25, 41.125]]) + SITE
    options = SurfaceOptions(max_rim_edge=6.0)

    def moved(by: np.ndarray) -> Tin:
        given = lines(make_line(LineKind.BOUNDARY, ring + by), make_line(LineKind.BREAKLINE, soft + by))
        return build_surface(survey(xy + by, z), given, options).tin

    here, there = moved(np.zeros(2)), moved(np.array(shift, float))
    a, b = shapes(here), shapes(there, SITE + shift)
    assert {tuple(p[:2] for p in t) for t in a} == {tuple(p[:2] for p in t) for t in b}
    np.testing.assert_allclose(
        np.array(sorted(p for t in a for p in t)), np.array(sorted(p for t in b for p in t)), rtol=0, atol=1e-6
    )


def test_recorded_twice() -> None:
    xy = np.vstack([square_grid(4), SITE + np.array([[1, 1], [1.00004, 1], [2, 2]])])
    z = np.zeros(len(xy))
    z[[5, 16, 17]] = 1.0, 2.0, 6.0  # the grid's (1, 1) is its sixth point
    z[[10, 18]] = 7.0, 7.5
    surface = build_surface(survey(xy, z))
    first, second = surface.report.duplicates
    assert (first.count, first.lowest, first.highest, first.height) == (3, 1.0, 6.0, 3.0)
    assert first.source_lines == (7, 18, 19)
    assert (second.count, second.height, second.source_lines) == (2, 7.25, (12, 20))
    np.testing.assert_allclose((first.easting, first.northing), SITE + 1, rtol=0, atol=GRID)
    assert surface.report.vertices == 16
    np.testing.assert_allclose(heights_at(surface.tin, np.array([[1, 1], [2, 2]]) + SITE), [3.0, 7.25], atol=1e-9)
    (said,) = surface.report.messages
    assert said.text.code == "duplicate_positions"
    assert said.values["count"] == 2
    assert said.values["spread"] == 5.0


def test_line_through_points_is_not_a_duplicate() -> None:
    xy = square_grid(4)
    number = np.array([0, 5, 10])
    breakline = ConstraintLine(LineKind.BREAKLINE, np.column_stack([xy, ground(xy)])[number], number)
    report = build_surface(survey(xy), lines(breakline)).report
    assert report.duplicates == ()
    assert report.edges[LineKind.BREAKLINE] == 2


def test_rejected_points_stay_out() -> None:
    rng = np.random.default_rng(5)
    xy = places(300, rng)
    status = np.where(rng.random(300) < 0.2, Status.REJECTED, Status.USED)
    status[:10] = Status.FLAGGED
    z = np.where(status == Status.REJECTED, 1e6, ground(xy))
    surface = build_surface(survey(xy, z, status=status.astype(np.uint8)))
    stays = np.flatnonzero(status != Status.REJECTED)
    assert set(surface.tin.vertex_source.tolist()) == set(stays.tolist())
    assert surface.tin.height_range[1] < 110
    assert (surface.report.points_used, surface.report.points_rejected) == (len(stays), 300 - len(stays))
    assert shapes(surface.tin) == shapes(build_surface(survey(xy[stays], z[stays])).tin)


def test_heights_that_are_no_numbers_count_as_none() -> None:
    """Such a point shapes nothing, and a line at it takes the surface's height; nothing hangs."""
    xy = np.vstack([square_grid(6), SITE + np.array([[2.5, 2.5], [3.5, 2.5]])])
    z = ground(xy)
    z[-2:] = np.nan, np.inf
    plain = shapes(build_surface(survey(xy[:-2])).tin)
    assert shapes(build_surface(survey(xy, z)).tin) == plain
    here = np.array([[2.5, 2.5], [3.5, 2.5], [1.2, 1.1], [4.4, 4.3]]) + SITE
    for bad in (np.nan, np.inf, -np.inf):
        heights = np.array([50.0, bad, bad, bad])
        breakline = ConstraintLine(LineKind.BREAKLINE, np.column_stack([here, heights]), np.array([36, 37, -1, -1]))
        tin = build_surface(survey(xy, z), lines(breakline)).tin
        check_tin(tin)
        assert tin.height_range[1] < 110
        assert tin.height_range[0] > 90


# -------------------------------------------------------------------------------------- lines with heights


def test_breaklines_with_heights_add_their_vertices_only() -> None:
    rng = np.random.default_rng(7)
    xy = places(200, rng)
    corner = [[5, 5], [40, 11], [44, 40]]
    surface = build_surface(survey(xy), lines(line(LineKind.BREAKLINE, corner, [90, 91, 92])))
    tin = surface.tin
    check_tin(tin)
    assert len(tin.vertices) == len(xy) + 3
    assert np.count_nonzero(tin.vertex_source < 0) == 3
    assert surface.report.edges == {LineKind.BREAKLINE: 2, LineKind.BOUNDARY: 0, LineKind.VOID: 0}
    assert edges_of(tin, LineKind.BREAKLINE) == {((5, 5), (40, 11)), ((40, 11), (44, 40))}
    points = as_points(*tin.grid.T)
    checked = Checked(points, as_triangles(tin.triangles))
    marked = {tuple(sorted(e)) for e in checked.apex if _kind_of(tin, e)}
    checked.check_delaunay(marked)
    middle = np.array([[22.5, 8.0]]) + SITE
    np.testing.assert_allclose(heights_at(tin, middle), [90.5], rtol=0, atol=1e-8)


def _kind_of(tin: Tin, edge: Tuple[int, int]) -> int:
    for t, i in zip(*np.nonzero(tin.triangles == edge[0])):
        if tin.triangles[t, (i + 1) % 3] == edge[1]:
            return int(tin.edge_kind[t, i])
    raise AssertionError("no such edge")


def test_kerb_of_one_millimetre() -> None:
    """Two lines 1 mm apart and 12 cm in height, between points on both sides."""
    xy = places(400, np.random.default_rng(8))
    xy = xy[np.abs(xy[:, 1] - SITE[1] - 25) > 0.5]
    z = np.where(xy[:, 1] > SITE[1] + 25, 100.12, 100.0)
    along = np.linspace(0, 50, 101)
    foot = np.column_stack([along, np.full(101, 24.9995)])
    kerb = lines(line(LineKind.BREAKLINE, foot, 100.0), line(LineKind.BREAKLINE, foot + np.array([0, 0.001]), 100.12))
    tin = build_surface(survey(xy, z), kerb).tin
    check_tin(tin)
    rng = np.random.default_rng(9)
    q = samples(4000, rng)
    q = q[np.abs(q[:, 1] - SITE[1] - 25) > 0.0006]
    h = heights_at(tin, q)
    inside = np.isfinite(h)
    assert np.mean(inside) > 0.9
    np.testing.assert_allclose(h[inside], np.where(q[inside, 1] > SITE[1] + 25, 100.12, 100.0), rtol=0, atol=1e-6)


def test_t_junction_joins() -> None:
    """A line that ends on another, and a line through points: split there, no crossing."""
    xy = np.vstack([square_grid(11), SITE + np.array([[4.5, 5.0]])])
    main, side = (
        line(LineKind.BREAKLINE, [[0, 5], [10, 5]], 100.0),
        line(LineKind.BREAKLINE, [[7.5, 5], [7.5, 9.5]], 100.0),
    )
    z = np.full(len(xy), 100.0)
    z[-1] = 100.3
    surface = build_surface(survey(xy, z), lines(main, side))
    assert surface.report.conflicts == ()
    (over,) = surface.report.on_points  # the point keeps its height, and that is told
    assert (over.first, over.second, over.first_height, over.second_height) == ("#1", "field.csv:123", 100.0, 100.3)
    assert [said.text.code for said in surface.report.messages] == ["lines_over_points"]
    check_tin(surface.tin)
    marked = edges_of(surface.tin, LineKind.BREAKLINE)
    assert {((4, 5), (4.5, 5)), ((4.5, 5), (5, 5)), ((7, 5), (7.5, 5)), ((7.5, 5), (7.5, 9.5))} <= marked
    assert len(marked) == 13


# ------------------------------------------------------------------------------------------------ crossings


def crossing(first: float, second: float) -> Constraints:
    return lines(
        line(LineKind.BREAKLINE, [[10, 20], [30, 20]], first, "kerb 1"),
        line(LineKind.BREAKLINE, [[20, 10], [20, 30]], second, "kerb 2"),
    )


def height_of_crossing(rule: CrossingRule, constraints: Constraints, tolerance: float = 0.05) -> Tuple[float, Surface]:
    xy = places(200, np.random.default_rng(10))
    surface = build_surface(survey(xy), constraints, SurfaceOptions(crossing=rule, crossing_tolerance=tolerance))
    check_tin(surface.tin)
    return float(heights_at(surface.tin, np.array([[20.0, 20.0]]) + SITE)[0]), surface


def test_crossing_is_refused() -> None:
    with pytest.raises(SurveyError) as caught:
        height_of_crossing(CrossingRule.REFUSE, crossing(100.0, 101.0))
    assert caught.value.code == "crossing_lines"
    text = str(caught.value)
    for part in ("field.csv", "kerb 1", "kerb 2", "100.000", "101.000", "432020.000", "5765020.000"):
        assert part in text
    assert "\n" not in text


@pytest.mark.parametrize(
    ("rule", "heights", "expected"),
    [
        (CrossingRule.REFUSE, (100.0, 100.04), 100.02),
        (CrossingRule.MEAN, (100.0, 101.0), 100.5),
        (CrossingRule.FIRST, (100.0, 101.0), 100.0),
    ],
)
def test_crossing_is_split(rule: CrossingRule, heights: Tuple[float, float], expected: float) -> None:
    height, surface = height_of_crossing(rule, crossing(*heights))
    assert height == pytest.approx(expected, abs=1e-9)
    (conflict,) = surface.report.conflicts
    assert (conflict.first, conflict.second) == ("kerb 1", "kerb 2")
    assert (conflict.first_height, conflict.second_height) == pytest.approx(heights)
    np.testing.assert_allclose((conflict.easting, conflict.northing), SITE + 20, rtol=0, atol=GRID)
    assert surface.report.edges[LineKind.BREAKLINE] == 4
    assert [said.text.code for said in surface.report.messages] == ["crossings_split"]


def test_crossing_tolerance_is_the_limit() -> None:
    assert height_of_crossing(CrossingRule.REFUSE, crossing(100.0, 101.0), tolerance=1.0)[0] == pytest.approx(100.5)
    with pytest.raises(SurveyError):
        height_of_crossing(CrossingRule.REFUSE, crossing(100.0, 101.0), tolerance=0.999)


def test_bundle_of_lines_that_cross_everywhere() -> None:
    """Forty lines across each other, at awkward places: all split, every line a chain of edges."""
    rng = np.random.default_rng(12)
    ends = rng.uniform(1, 49, (40, 2, 2)).round(3)
    given = lines(*(line(LineKind.BREAKLINE, e, 100.0) for e in ends))
    surface = build_surface(survey(places(300, rng)), given)
    check_tin(surface.tin)
    assert len(surface.report.conflicts) > 100
    xy = np.round(surface.tin.grid * GRID + surface.tin.origin - SITE, 4)
    graph: dict = {}
    for a, b in edges_of(surface.tin, LineKind.BREAKLINE):
        graph.setdefault(a, []).append(b)
        graph.setdefault(b, []).append(a)
    for a, b in ends.tolist():  # walk along marked edges close to the line
        at, to = np.array(a), np.array(b)
        unit = (to - at) / np.hypot(*(to - at))
        while tuple(at) != tuple(to):
            ahead = [np.array(v) for v in graph[tuple(at)]]
            ahead = [v for v in ahead if abs(across(unit, v - a)) < 3e-4 and unit @ (v - at) > 0]
            assert ahead, f"the line from {a} to {b} is broken at {at}"
            at = min(ahead, key=lambda v: unit @ (v - at))
    assert len(xy) == len(np.unique(xy, axis=0))


# ------------------------------------------------------------------------------------- lines without heights


def assert_same_heights(a: Tin, b: Tin, rng: np.random.Generator, count: int = 3000) -> None:
    """Equal within 0.2 mm x the steepest slope, at random places and where ``b`` has vertices."""
    q = np.vstack([samples(count, rng), b.grid[:, :2] * GRID + b.origin])
    first, second = heights_at(a, q), heights_at(b, q)
    both = np.isfinite(first) & np.isfinite(second)
    assert np.mean(both) > 0.7
    assert np.max(np.abs(first - second)[both]) <= 2e-4 * max(steepest(a), steepest(b))


@pytest.mark.parametrize("seed", range(12))
def test_soft_line_leaves_the_surface_as_it_is(seed: int) -> None:
    rng = np.random.default_rng(seed)
    xy = square_grid(8, 7.0) if seed % 4 == 3 else places(80, rng)
    hard = [line(LineKind.BREAKLINE, [[6, 8], [41, 38]], [99, 103])] if seed % 2 else []
    soft = [line(LineKind.BREAKLINE, rng.uniform(-5, 55, (6, 2)).round(3 if seed % 3 else 0)) for _ in range(2)]
    plain = build_surface(survey(xy), lines(*hard)).tin
    laid = build_surface(survey(xy), lines(*hard, *soft)).tin
    check_tin(laid)
    assert np.count_nonzero(laid.edge_kind) > np.count_nonzero(plain.edge_kind)
    assert laid.plan_area == pytest.approx(plain.plan_area, abs=0.02)
    assert_same_heights(plain, laid, rng)
    if seed % 4 == 3:  # the grid's squares stay cut as they were
        assert len(laid.vertices) > len(plain.vertices)


def test_soft_line_becomes_edges_with_the_heights_of_the_surface() -> None:
    xy = places(300, np.random.default_rng(20))
    plain = build_surface(survey(xy)).tin
    tin = build_surface(survey(xy), lines(line(LineKind.BREAKLINE, [[10.5, 10.5], [40.25, 33.125]]))).tin
    ends = np.array([[10.5, 10.5], [40.25, 33.125]])
    marked = np.array(sorted(edges_of(tin, LineKind.BREAKLINE)))
    unit = (ends[1] - ends[0]) / np.hypot(*(ends[1] - ends[0]))
    assert np.max(np.abs(across(unit, marked - ends[0]))) < 1.5e-4  # on the line but for rounding to the grid
    assert np.sum(np.hypot(*np.moveaxis(marked[:, 1] - marked[:, 0], -1, 0))) == pytest.approx(
        np.hypot(*(ends[1] - ends[0])), abs=1e-3
    )
    q = marked.reshape(-1, 2) + SITE
    np.testing.assert_allclose(heights_at(tin, q), heights_at(plain, q), rtol=0, atol=2e-4 * steepest(plain))


def test_soft_line_through_points_of_the_survey() -> None:
    """Its vertices snapped to points, its middle through others: their heights stand."""
    xy = square_grid(11)
    plain = build_surface(survey(xy)).tin
    surface = build_surface(
        survey(xy), lines(line(LineKind.BREAKLINE, [[0, 3], [10, 3]]), line(LineKind.BREAKLINE, [[-4, -4], [14, 14]]))
    )
    assert len(surface.tin.vertices) == 121
    assert surface.report.edges[LineKind.BREAKLINE] == 20
    assert shapes(surface.tin) == shapes(plain)


def test_line_with_heights_at_some_vertices_only() -> None:
    xy = places(300, np.random.default_rng(21))
    tin = build_surface(
        survey(xy), lines(line(LineKind.BREAKLINE, [[10, 10], [20, 12], [30, 10]], [95.0, np.nan, 96.0]))
    ).tin
    check_tin(tin)
    q = np.array([[10, 10], [30, 10]]) + SITE
    np.testing.assert_allclose(heights_at(tin, q), [95, 96], rtol=0, atol=1e-8)


@pytest.mark.parametrize("off", [0.0, 0.0001, 0.001])
def test_line_given_twice_once_without_heights(off: float) -> None:
    """A line that crosses itself is bent there by rounding; its twin without heights winds about it, and joins it."""
    for seed in range(12, 30):
        rng = np.random.default_rng(seed)
        corner = rng.uniform(0, 30, (7, 2)).round(3)
        given = lines(line(LineKind.BREAKLINE, corner, 5.0), line(LineKind.BREAKLINE, corner + off))
        tin = build_surface(survey(rng.uniform(0, 30, (40, 2)).round(3) + SITE), given).tin
        check_tin(tin)
        ends = np.array(sorted(edges_of(tin, LineKind.BREAKLINE)))
        length = np.sum(np.hypot(*np.diff(corner, axis=0).T))
        covered = np.sum(np.hypot(*np.moveaxis(ends[:, 1] - ends[:, 0], -1, 0)))
        assert length - 0.01 < covered < 2 * length + 0.01


# ------------------------------------------------------------------------------------- boundaries and voids


def area_of(xy: Sequence[Sequence[float]]) -> float:
    x, y = np.asarray(xy, float).T
    return 0.5 * abs(float(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1))))


OUTER = [[5, 6], [45, 4], [46, 44], [25, 30], [4, 46]]
HOLE = [[15, 12], [30, 12], [28, 22], [16, 24]]
ISLAND = [[19, 15], [24, 15], [22, 20]]


@pytest.mark.parametrize("height", [None, 100.0], ids=["without heights", "with heights"])
def test_boundary_holes_and_islands(height: Optional[float]) -> None:
    xy = places(500, np.random.default_rng(30))
    outer, hole, island = (line(LineKind.BOUNDARY, ring, height) for ring in (OUTER, HOLE, ISLAND))
    a, b, c = area_of(OUTER), area_of(HOLE), area_of(ISLAND)
    for given, area in (
        ([outer], a),
        ([outer, hole], a - b),
        ([island, outer, hole], a - b + c),
        ([outer, line(LineKind.VOID, HOLE, height)], a - b),
        ([outer, line(LineKind.VOID, HOLE, height), line(LineKind.VOID, ISLAND, height)], a - b + c),
        (
            [line(LineKind.BOUNDARY, HOLE, height), line(LineKind.BOUNDARY, [[40, 10], [44, 10], [44, 14]], height)],
            b + 8,
        ),
    ):
        surface = build_surface(survey(xy), lines(*given))
        check_tin(surface.tin)
        assert surface.tin.plan_area == pytest.approx(area, abs=0.02)
        assert surface.report.outside > 0
        rim = surface.tin.neighbours < 0
        assert np.all(surface.tin.edge_kind[rim] & int(LineKind.BOUNDARY | LineKind.VOID))
        assert surface.report.unused_vertices > 0
        assert "points_outside_surface" in [said.text.code for said in surface.report.messages]


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize("repeated", [False, True])
def test_rings_may_be_drawn_either_way(turned: bool, repeated: bool) -> None:
    ring = OUTER[::-1] if turned else OUTER
    ring = [*ring, ring[0]] if repeated else ring
    surface = build_surface(survey(places(300, np.random.default_rng(31))), lines(line(LineKind.BOUNDARY, ring)))
    assert surface.tin.plan_area == pytest.approx(area_of(OUTER), abs=0.02)


@pytest.mark.parametrize(
    ("ring", "area"),
    [
        ([[-5, -5], [15, 15], [15, -5]], 50.0),  # along the diagonal of the survey's square, through its corners
        ([[-5, -5.5], [15, 14.5], [15, -5]], 45.125),
        ([[-5, 2], [15, 2], [15, 5], [-5, 5]], 30.0),  # through points of opposite sides
        ([[0, -5], [0, 15], [3, 15], [3, -5]], 30.0),  # along the rim and beyond it at both ends
        ([[5, 5], [25, 5], [25, 25], [5, 25]], 25.0),  # partly outside
        ([[-5, 4], [4, 5], [-5, 6]], 16 / 9),  # a spike in from outside
        ([[-9, -9], [19, -9], [19, 19], [-9, 19]], 100.0),  # all around
        ([[0, 0], [10, 0], [10, 10], [0, 10]], 100.0),  # on the rim itself
    ],
)
@pytest.mark.parametrize("steps", [1, 3])
def test_boundary_across_the_rim(ring: List[List[float]], area: float, steps: int) -> None:
    """A drawn boundary may leave the surface, through corners of it as well: it cuts where it is inside."""
    z = np.random.default_rng(1).normal(0, 1, (10 * steps + 1) ** 2)
    surface = build_surface(survey(square_grid(10 * steps + 1, 1 / steps), z), lines(line(LineKind.BOUNDARY, ring)))
    check_tin(surface.tin)
    assert surface.tin.plan_area == pytest.approx(area, abs=0.01)


@pytest.mark.parametrize("seed", range(12))
def test_boundary_across_a_rim_in_any_direction(seed: int) -> None:
    """Against GEOS: where it ends on the rim, rounded to the grid, nothing leads around its end."""
    rng = np.random.default_rng(seed)
    xy = places(60, rng)
    angle = np.sort(rng.uniform(0, 2 * np.pi, 5))
    angle[-1] = angle[0] + np.pi  # around the middle in any case
    ring = SITE + SIZE * (0.5 + np.column_stack([np.cos(angle), np.sin(angle)]) * rng.uniform(0.3, 0.9, (5, 1)))
    ring = ring[np.argsort(np.arctan2(*(ring - ring.mean(axis=0)).T))]
    soft = line(LineKind.BREAKLINE, (ring[[0, 2]] - SITE).tolist())
    surface = build_surface(survey(xy), lines(line(LineKind.BOUNDARY, (ring - SITE).tolist()), soft))
    check_tin(surface.tin)
    covered = shapely.Polygon(ring).intersection(shapely.convex_hull(shapely.multipoints(xy)))
    assert surface.tin.plan_area == pytest.approx(covered.area, abs=0.02)
    assert covered.area < shapely.Polygon(ring).area
    tin = surface.tin
    corners = shapely.points(tin.vertices[np.unique(tin.triangles), :2] + tin.origin)
    assert shapely.distance(corners, covered).max() < 2 * GRID


# -------------------------------------------------------------------------------------------------- the rim


def peeled(tin: Tin, longest: float) -> Set[int]:
    """Triangles left after peeling one at a time, by the rule's words."""
    corner = tin.vertices[tin.triangles][:, :, :2]
    length = np.hypot(*np.moveaxis(np.roll(corner, -1, axis=1) - corner, -1, 0))
    left = set(range(len(tin.triangles)))
    while True:
        gone = [
            t
            for t in left
            for i in range(3)
            if tin.neighbours[t, i] not in left and length[t, i] > longest and tin.edge_kind[t, i] == 0
        ]
        if not gone:
            return left
        left.discard(gone[0])


@pytest.mark.parametrize("longest", [4.0, 6.0, 9.0])
def test_rim_is_peeled_while_edges_are_long(longest: float) -> None:
    rng = np.random.default_rng(40)
    xy = places(250, rng)
    xy = xy[np.hypot(*(xy - SITE - [25, 50]).T) > 12]  # a bay
    given = lines(
        line(LineKind.BREAKLINE, [[0.5, 20], [0.25, 45]], 100.0), line(LineKind.VOID, [[20, 20], [30, 20], [25, 28]])
    )
    whole = build_surface(survey(xy), given).tin
    surface = build_surface(survey(xy), given, SurfaceOptions(max_rim_edge=longest))
    left = peeled(whole, longest)
    assert 0 < len(left) < len(whole.triangles)
    assert shapes(surface.tin) == {
        tuple(sorted(map(tuple, t)))
        for t in np.column_stack(
            [whole.grid + np.rint((whole.origin - SITE) / GRID).astype(int), whole.vertices[:, 2]]
        )[whole.triangles[sorted(left)]].tolist()
    }
    assert surface.report.trimmed == len(whole.triangles) - len(left)
    check_tin(surface.tin)


# ---------------------------------------------------------------------------------------------------- errors


def failing(points: PointSet, constraints: Constraints = lines(), **options: object) -> SurveyError:  # noqa: B008
    with pytest.raises(SurveyError) as caught:
        build_surface(points, constraints, SurfaceOptions(**options))  # type: ignore[arg-type]
    text = str(caught.value)
    assert "field.csv" in text
    assert "\n" not in text
    assert "{" not in text
    return caught.value


@pytest.mark.parametrize("n", [0, 1, 2])
def test_too_few_points(n: int) -> None:
    assert failing(survey(square_grid(3)[:n])).code == "too_few_points"


def test_three_points_at_two_places() -> None:
    assert failing(survey(np.array([[0, 0], [1, 1], [1, 1.00001]]) + SITE)).code == "too_few_points"


def test_points_without_heights() -> None:
    assert failing(survey(square_grid(4), np.full(16, np.nan))).code == "too_few_points"


@pytest.mark.parametrize("step", [(1, 0), (0, 1), (3, 7)])
def test_points_on_one_line(step: Tuple[int, int]) -> None:
    error = failing(survey(np.arange(20)[:, None] * step + SITE))
    assert error.code == "points_on_a_line"
    assert error.values["count"] == 20


def test_points_too_far_apart() -> None:
    xy = square_grid(3)
    xy[4] = 0.0  # a point at the zero of the coordinates
    assert failing(survey(xy)).code == "too_far_apart"


@pytest.mark.parametrize("bad", [np.nan, np.inf])
def test_places_that_are_no_numbers(bad: float) -> None:
    xy = square_grid(4)
    xy[5, 0] = bad
    error = failing(survey(xy, np.zeros(16)))
    assert error.code == "no_plan_position"
    assert error.values["line"] == 7
    error = failing(survey(square_grid(4)), lines(line(LineKind.BREAKLINE, [[0, 0], [1, bad]], 5.0, "wall 3")))
    assert error.code == "line_without_plan_position"
    assert "wall 3" in str(error)


def test_nothing_left() -> None:
    points = survey(square_grid(4))
    far = [[30, 30], [40, 30], [40, 40]]
    assert failing(points, lines(line(LineKind.BOUNDARY, far))).code == "no_triangle_left"
    assert failing(points, max_rim_edge=0.5).code == "no_triangle_left"
    whole = [[-1, -1], [9, -1], [9, 9], [-1, 9]]
    assert failing(points, lines(line(LineKind.VOID, whole))).code == "no_triangle_left"


def test_the_least_surface_there_is() -> None:
    tin = build_surface(survey(np.array([[0, 0], [0.0001, 0], [0, 0.0001]]) + SITE, np.zeros(3))).tin
    check_tin(tin)
    assert len(tin.triangles) == 1


def test_lines_alone_make_a_surface() -> None:
    tin = build_surface(survey(np.empty((0, 2))), lines(line(LineKind.BREAKLINE, [[0, 0], [9, 0], [9, 9]], 5.0))).tin
    check_tin(tin)
    assert len(tin.triangles) == 1


# ------------------------------------------------------------------------------------ questions to the surface


def test_heights_as_scipy_interpolates_them() -> None:
    rng = np.random.default_rng(50)
    xy = places(3000, rng)
    tin = build_surface(survey(xy)).tin
    q = samples(20_000, rng) + rng.choice([-3, 0, 0, 0, 3], (20_000, 1))
    theirs = LinearNDInterpolator(Delaunay(xy - SITE), ground(xy))(q - SITE)
    ours = heights_at(tin, q)
    np.testing.assert_array_equal(np.isnan(ours), np.isnan(theirs))
    assert np.count_nonzero(np.isnan(ours)) > 500
    np.testing.assert_allclose(ours, theirs, rtol=0, atol=1e-7)


def test_the_triangle_under_a_place_on_a_surface_with_holes() -> None:
    """Brute force over all triangles, on a trimmed surface with a void."""
    rng = np.random.default_rng(51)
    xy = places(200, rng)
    xy = xy[np.hypot(*(xy - SITE - [25, 50]).T) > 12]
    void = line(LineKind.VOID, [[20, 20], [31, 20], [25, 28]])
    tin = build_surface(survey(xy), lines(void), SurfaceOptions(max_rim_edge=7.0)).tin
    q = np.vstack([samples(1500, rng), samples(50, rng) + 1e5, np.full((1, 2), np.nan)])
    a, b, c = np.moveaxis(tin.corners()[:, :, :2], 1, 0)
    p = (q - tin.origin)[:, None]

    def left(u: np.ndarray, v: np.ndarray) -> np.ndarray:
        return (v - u)[:, 0] * (p[..., 1] - u[:, 1]) - (v - u)[:, 1] * (p[..., 0] - u[:, 0]) >= 0

    under = left(a, b) & left(b, c) & left(c, a)
    expected = np.where(under.any(axis=1), under.argmax(axis=1), -1)
    assert np.count_nonzero(expected < 0) > 150
    np.testing.assert_array_equal(locate(tin, q), expected)


@pytest.mark.parametrize("seed", range(6))
def test_heights_at_the_points_of_the_survey(seed: int) -> None:
    """The surface goes through its points, those of the rim too, though millions of metres cost digits."""
    rng = np.random.default_rng(seed)
    xy = np.vstack([places(300, rng), square_grid(4, 10 / 3)]) + np.array([0.0377, 3_000_000.0123]) * seed
    z = np.round(rng.normal(100, 1, len(xy)), 3)
    tin = build_surface(survey(xy, z)).tin
    heights = heights_at(tin, xy)
    assert not np.any(np.isnan(heights))
    np.testing.assert_allclose(heights, z, rtol=0, atol=1.5e-4 * steepest(tin))
    edge = (xy + np.roll(xy, 1, axis=0)) / 2
    np.testing.assert_array_equal(np.isnan(heights_at(tin, edge)), False)


def test_a_place_on_an_edge_has_one_triangle() -> None:
    tin = build_surface(survey(square_grid(5))).tin
    q = np.array([[1.0, 1.0], [2.0, 2.5], [1.5, 1.5], [0.0, 0.0], [4.0, 4.0], [0.0, 3.5]]) + SITE
    found = locate(tin, q)
    for place, triangle in zip(q - tin.origin, found):
        touching = [
            t for t, corner in enumerate(tin.corners()[:, :, :2])
            if all(across(corner[(i + 1) % 3] - corner[i], place - corner[i]) >= 0 for i in range(3))
        ]  # fmt: skip
        assert triangle == min(touching)


def test_no_places_asked() -> None:
    tin = build_surface(survey(square_grid(3))).tin
    assert len(locate(tin, np.empty((0, 2)))) == len(heights_at(tin, np.empty((0, 2)))) == 0


def test_circle_rule_on_a_built_grid() -> None:
    """A grid survey is cut from the south-west corners of its squares."""
    tin = build_surface(survey(square_grid(6))).tin
    points = as_points(*tin.grid.T)
    checked = Checked(points, as_triangles(tin.triangles))
    assert checked.check_delaunay() == 25
    a, b, c, d = (0, 0), (10_000, 0), (10_000, 10_000), (0, 10_000)
    assert circle(a, b, c, d) == 0
    assert checked.is_edge(points.index(a), points.index(c))
    assert not checked.is_edge(points.index(b), points.index(d))


def test_a_line_passes_by_its_rejected_points():
    place = np.array([[0, 0], [10, 0], [10, 10], [0, 10], [2, 5], [5, 6], [8, 5]], float)
    points = make_points(place[:, 0], place[:, 1], np.array([1, 1, 1, 1, 2, 900, 2], float))
    status = np.zeros(7, np.uint8)
    status[5] = Status.REJECTED
    points = points.with_status(status, np.zeros(7, np.uint32))
    line = ConstraintLine(LineKind.BREAKLINE, np.column_stack([place, points.height])[4:], np.array([4, 5, 6]), "BL 1")
    surface = build_surface(points, Constraints((line,)))
    assert len(surface.tin.vertices) == 6
    assert surface.tin.height_range == (1.0, 2.0)
    assert surface.report.edges[LineKind.BREAKLINE] == 1


def test_lines_without_any_point_that_share_a_place_at_two_heights_follow_the_rule():
    none = make_points([], [], [])
    lines = [[[0, 0, 1], [10, 0, 1]], [[0, 0, 2], [0, 10, 1]]]
    constraints = Constraints(tuple(make_line(LineKind.BREAKLINE, np.array(line, float), "BL") for line in lines))
    with pytest.raises(SurveyError, match=r"E 0\.000 N 0\.000: BL at 1\.000 m and BL at 2\.000 m"):
        build_surface(none, constraints)
    for rule, height in ((CrossingRule.MEAN, 1.5), (CrossingRule.FIRST, 1.0)):
        surface = build_surface(none, constraints, SurfaceOptions(crossing=rule))
        assert surface.report.duplicates == ()
        (met,) = surface.report.conflicts
        assert (met.first_height, met.second_height) == (1.0, 2.0)
        assert heights_at(surface.tin, np.zeros((1, 2))) == [height]
