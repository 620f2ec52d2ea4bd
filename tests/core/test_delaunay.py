"""The Delaunay triangulation: against scipy (Qhull), and proved in Python's whole numbers where points are awkward."""

from __future__ import annotations

from typing import Callable, Dict

import numpy as np
import pytest
from scipy.spatial import Delaunay
from test_predicates import points_on_a_circle

from plugin.core.surface.delaunay import triangulate
from plugin.core.surface.mesh import Mesh
from plugin.core.surface.pieces import sweep, triangulate_piece
from plugin.core.surface.predicates import LIMIT
from tests.core.exact_check import Checked, as_points, as_triangles, place_set, triangle_set


def distinct(xy: np.ndarray, rng: np.random.Generator) -> np.ndarray:
    xy = np.unique(np.asarray(xy, np.int64), axis=0)
    rng.shuffle(xy)
    return xy


def grid(rng: np.random.Generator) -> np.ndarray:
    columns, rows, step = rng.integers(2, 14), rng.integers(2, 14), rng.integers(1, 10**7)
    return np.stack(np.meshgrid(np.arange(columns), np.arange(rows)), -1).reshape(-1, 2) * step


def small_numbers(rng: np.random.Generator) -> np.ndarray:
    return rng.integers(0, 8, (int(rng.integers(4, 60)), 2))


def random_points(rng: np.random.Generator) -> np.ndarray:
    return rng.integers(0, LIMIT, (int(rng.integers(3, 120)), 2))


def cocircular(rng: np.random.Generator) -> np.ndarray:
    xy = points_on_a_circle(int(rng.integers(1, 4)), int(rng.integers(1, 9)))
    xy = xy[rng.random(len(xy)) < rng.uniform(0.3, 1)] - xy.min()
    return np.vstack([xy, rng.integers(0, xy.max() + 1, (int(rng.integers(1, 6)), 2))])


def rings_of_a_circle(rng: np.random.Generator) -> np.ndarray:
    """Concentric circles with the same bearings: every ring's quadrilaterals are cocircular."""
    xy = points_on_a_circle(2, 1)
    return np.vstack([xy * k for k in range(1, int(rng.integers(2, 6)))]) + 65 * 6


def collinear_run(rng: np.random.Generator) -> np.ndarray:
    n = int(rng.integers(3, 80))
    run = np.column_stack([np.arange(n) * 7, np.arange(n) * int(rng.integers(0, 5)) + 5])
    return np.vstack([run, rng.integers(0, 7 * n, (int(rng.integers(1, 4)), 2))])


def near_collinear(rng: np.random.Generator) -> np.ndarray:
    t = rng.integers(0, int(10 ** rng.uniform(2, 8.5)), int(rng.integers(4, 100)))
    return np.column_stack([t, t // 3 + rng.integers(0, 2, len(t))])


def clusters_of_least_step(rng: np.random.Generator) -> np.ndarray:
    """Clusters of points 0.1 mm apart, kilometres from each other."""
    centre = rng.integers(0, LIMIT - 4, (4, 2))
    return centre[rng.integers(0, 4, 60)] + rng.integers(0, 4, (60, 2))


def corners_of_the_range(rng: np.random.Generator) -> np.ndarray:
    ends = np.array([0, 1, LIMIT - 2, LIMIT - 1])
    return np.vstack([rng.choice(ends, (30, 2)), rng.integers(0, LIMIT, (5, 2))])


def parallel_rows(rng: np.random.Generator) -> np.ndarray:
    """Two kerb lines 1 mm apart, a point every half metre."""
    t = np.arange(int(rng.integers(5, 60))) * 5000
    return np.vstack([np.column_stack([t, t * 0 + 90]), np.column_stack([t + int(rng.integers(0, 9)), t * 0 + 100])])


def spiral(rng: np.random.Generator) -> np.ndarray:
    a = np.linspace(0, float(rng.uniform(6, 40)), int(rng.integers(20, 120)))
    return np.rint(np.column_stack([a * np.cos(a), a * np.sin(a)]) * 10**5) + 5 * 10**6


def star(rng: np.random.Generator) -> np.ndarray:
    """A centre and rays from it."""
    arms = points_on_a_circle(1, 20)
    return np.vstack([arms * k for k in range(int(rng.integers(2, 7)))]) + 600


def wheel(rng: np.random.Generator) -> np.ndarray:
    """One centre and very many points around at nearly one distance: a vertex of high degree."""
    a = np.linspace(0, 2 * np.pi, int(rng.integers(10, 150)), endpoint=False)
    return np.vstack([np.rint(np.column_stack([np.cos(a), np.sin(a)]) * 10**8), [[0, 0]]]) + 2 * 10**8


KINDS: Dict[str, Callable[[np.random.Generator], np.ndarray]] = {
    f.__name__: f
    for f in (
        grid, small_numbers, random_points, cocircular, rings_of_a_circle, collinear_run, near_collinear,
        clusters_of_least_step, corners_of_the_range, parallel_rows, spiral, star, wheel,
    )
}  # fmt: skip


def on_one_line(xy: np.ndarray) -> bool:
    step = [(int(dx), int(dy)) for dx, dy in (xy - xy[0])[1:]]
    return all(step[0][0] * dy == step[0][1] * dx for dx, dy in step)


def check_twins(mesh: Mesh) -> None:
    """Each half-edge's twin is the same edge the other way."""
    triangle = mesh.vertex.reshape(-1, 3)
    start, end = mesh.vertex, triangle[:, [1, 2, 0]].ravel()
    inner = np.flatnonzero(mesh.twin >= 0)
    np.testing.assert_array_equal(mesh.twin[mesh.twin[inner]], inner)
    np.testing.assert_array_equal(start[mesh.twin[inner]], end[inner])
    np.testing.assert_array_equal(end[mesh.twin[inner]], start[inner])
    pairs = {(a, b) for a, b in zip(start.tolist(), end.tolist())}
    alone = [(a, b) not in pairs for b, a in zip(start.tolist(), end.tolist())]
    np.testing.assert_array_equal(mesh.twin < 0, alone)


@pytest.mark.parametrize("kind", KINDS)
def test_awkward_points(kind: str) -> None:
    """Valid, Delaunay and of the stated tie rule, in one piece and in tiles of any size, in any order of points."""
    for seed in range(25):
        rng = np.random.default_rng([seed, list(KINDS).index(kind)])
        xy = distinct(KINDS[kind](rng), rng)
        x, y = xy.T.copy()
        mesh = triangulate(x, y)
        if on_one_line(xy):
            assert mesh.triangle_count == 0
            continue
        check_twins(mesh)
        Checked(as_points(x, y), as_triangles(mesh.vertex)).check_delaunay()
        tiled = triangulate(x, y, tile_points=int(rng.integers(3, 41)))
        check_twins(tiled)
        assert triangle_set(tiled.vertex) == triangle_set(mesh.vertex), f"seed {seed}: tiles"
        order = rng.permutation(len(x))
        turned = triangulate(x[order], y[order], tile_points=int(rng.integers(3, 41)))
        assert place_set(x[order], y[order], turned.vertex) == place_set(x, y, mesh.vertex), f"seed {seed}: order"


@pytest.mark.parametrize("kind", KINDS)
def test_sweep_is_a_triangulation(kind: str) -> None:
    """The exact sweep that stands behind Qhull covers the hull once, with every point."""
    for seed in range(10):
        rng = np.random.default_rng([seed, list(KINDS).index(kind), 9])
        xy = distinct(KINDS[kind](rng), rng)
        if not on_one_line(xy):
            vertex, twin = sweep(*xy.T.copy())
            check_twins(Mesh(*xy.T.copy(), vertex, twin))
            Checked(as_points(*xy.T), as_triangles(vertex))


def test_pieces_survive_a_qhull_that_fails(monkeypatch: pytest.MonkeyPatch) -> None:
    from plugin.core.surface import pieces

    def no_qhull(points: np.ndarray, qhull_options: str) -> None:
        raise pieces.QhullError("precision")

    monkeypatch.setattr(pieces, "Delaunay", no_qhull)
    rng = np.random.default_rng(0)
    xy = distinct(random_points(rng), rng)
    vertex, _ = triangulate_piece(*xy.T.copy())
    Checked(as_points(*xy.T), as_triangles(vertex))


@pytest.mark.parametrize("damage", ["drop", "flip_over", "repeat", "hole", "leaves_out_point"])
def test_pieces_mend_a_qhull_that_errs(monkeypatch: pytest.MonkeyPatch, damage: str) -> None:
    """Whatever Qhull returns, the piece is right."""
    from plugin.core.surface import pieces

    class Damaged:
        def __init__(self, points: np.ndarray, qhull_options: str) -> None:
            whole = Delaunay(points[:-1] if damage == "leaves_out_point" else points)
            self.simplices, self.neighbors = whole.simplices.copy(), whole.neighbors.copy()
            rim = np.flatnonzero(np.any(self.neighbors < 0, axis=1))
            if damage == "drop":  # as Qhull does with thin triangles at the rim
                self._without(rim[0])
            elif damage == "hole":
                self._without(np.flatnonzero(np.all(self.neighbors >= 0, axis=1))[0])
            elif damage == "flip_over":
                self.simplices[rim[0]] = self.simplices[rim[0]][::-1]
            elif damage == "repeat":
                self.simplices[rim[0]] = self.simplices[rim[1]]

        def _without(self, gone: int) -> None:
            self.simplices = np.delete(self.simplices, gone, axis=0)
            self.neighbors = np.delete(self.neighbors, gone, axis=0)
            self.neighbors[self.neighbors == gone] = -1
            self.neighbors[self.neighbors > gone] -= 1

    monkeypatch.setattr(pieces, "Delaunay", Damaged)
    for seed in range(20):
        rng = np.random.default_rng(seed)
        xy = distinct(rng.integers(0, 10**6, (40, 2)), rng)
        vertex, twin = triangulate_piece(*xy.T.copy())
        check_twins(Mesh(*xy.T.copy(), vertex, twin))
        Checked(as_points(*xy.T), as_triangles(vertex))


@pytest.mark.parametrize("n", [3, 4, 10, 300, 5000, 20000])
def test_same_triangles_as_scipy(n: int) -> None:
    """Points in general position have one Delaunay triangulation."""
    rng = np.random.default_rng(n)
    xy = distinct(rng.integers(0, 10**6, (n, 2)), rng)
    expected = triangle_set(Delaunay(xy.astype(float)).simplices)
    x, y = xy.T.copy()
    assert triangle_set(triangulate(x, y).vertex) == expected
    assert triangle_set(triangulate(x, y, tile_points=max(3, n // 30)).vertex) == expected


def test_a_large_grid_in_tiles() -> None:
    """A grid survey is nothing but ties: every square is cut from its south-west corner, in every tile and seam."""
    columns, rows = 70, 55
    xy = np.stack(np.meshgrid(np.arange(columns), np.arange(rows)), -1).reshape(-1, 2) * 5000
    np.random.default_rng(1).shuffle(xy)
    x, y = xy.T.copy()
    for tile_points in (37, 400, 10**6):
        mesh = triangulate(x, y, tile_points)
        assert mesh.triangle_count == 2 * (columns - 1) * (rows - 1)
        lower = {((a, b), (a + 5000, b), (a + 5000, b + 5000)) for a, b in xy.tolist()}
        upper = {((a, b), (a, b + 5000), (a + 5000, b + 5000)) for a, b in xy.tolist()}
        assert place_set(x, y, mesh.vertex) <= lower | upper


def test_cocircular_polygon_is_a_fan_from_its_westernmost_corner() -> None:
    xy = points_on_a_circle(3, 1) - points_on_a_circle(3, 1).min()
    rng = np.random.default_rng(2)
    for _ in range(5):
        xy = xy[rng.permutation(len(xy))]
        x, y = xy.T.copy()
        west = int(np.lexsort((y, x))[0])
        for tile_points in (5, 10**6):
            assert np.all(np.any(triangulate(x, y, tile_points).vertex.reshape(-1, 3) == west, axis=1))


def test_southernmost_of_two_westernmost_decides() -> None:
    for order in np.array([[0, 1, 2, 3], [3, 2, 1, 0], [1, 3, 0, 2]]):
        x, y = np.array([[0, 0], [10, 0], [10, 10], [0, 10]], np.int64)[order].T.copy()
        south_west = int(np.argmin(x + y))
        assert np.all(np.any(triangulate(x, y).vertex.reshape(-1, 3) == south_west, axis=1))


@pytest.mark.parametrize("kind", ["grid", "cocircular", "near_collinear", "random_points"])
def test_moving_the_points_changes_nothing(kind: str) -> None:
    rng = np.random.default_rng(11)
    xy = distinct(KINDS[kind](rng) // 4, rng)
    reach = LIMIT - 1 - xy.max(axis=0)
    expected = triangle_set(triangulate(*xy.T.copy(), 12).vertex)
    for shift in (reach, reach // 3, np.array([reach[0], 0])):
        assert triangle_set(triangulate(*(xy + shift).T.copy(), 12).vertex) == expected


@pytest.mark.parametrize("n", [0, 1, 2, 50])
def test_points_on_one_line_span_nothing(n: int) -> None:
    x = np.arange(n, dtype=np.int64) * 31
    for y in (x * 0, x * 2 + 1):
        for tile_points in (3, 1000):
            assert triangulate(x, y, tile_points).triangle_count == 0
            assert triangulate(y, x, tile_points).triangle_count == 0


def test_from_any_triangulation_to_the_one() -> None:
    """Flips lead from any triangulation to the Delaunay one, whatever edges are bad at once."""
    for seed in range(60):
        rng = np.random.default_rng(seed)
        xy = distinct(rng.integers(0, 1000, (int(rng.integers(6, 60)), 2)), rng)
        x, y = xy.T.copy()
        mesh = Mesh(x, y, *sweep(x, y))
        for _ in range(40):
            inner = mesh.one_side(np.arange(len(mesh.vertex)))
            inner = inner[mesh.convex(inner)]
            mesh.flip(rng.choice(inner, 1))
        Checked(as_points(x, y), as_triangles(mesh.vertex))
        assert mesh.legalise() > 0
        check_twins(mesh)
        Checked(as_points(x, y), as_triangles(mesh.vertex)).check_delaunay()
        assert triangle_set(mesh.vertex) == triangle_set(triangulate(x, y).vertex)
