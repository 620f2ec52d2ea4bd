"""Segments as edges: against the ``triangle`` package (Shewchuk's Triangle) and proved in Python's whole numbers.

``KINDS`` x ``CASES`` cases, each made from its seed. Where no four points are cocircular across a free edge the
constrained Delaunay triangulation is unique, and must be Triangle's.
"""

from __future__ import annotations

from typing import Callable, Dict, List, Set, Tuple

import numpy as np
import pytest
from test_delaunay import (
    check_twins,
    clusters_of_least_step,
    corners_of_the_range,
    distinct,
    grid,
    near_collinear,
    on_one_line,
    random_points,
    rings_of_a_circle,
    small_numbers,
    wheel,
)  # fmt: skip

from plugin.core.surface.crossings import crossing_pairs
from plugin.core.surface.delaunay import triangulate
from plugin.core.surface.insert import insert_segments
from plugin.core.surface.mesh import Mesh
from plugin.core.surface.network import Network
from plugin.core.surface.predicates import LIMIT
from tests.core.exact_check import Checked, as_points, as_triangles, place_set, proper_crossings, triangle_set

triangle = pytest.importorskip(
    "triangle", reason="there is no such package for this Python (see tests/requirements.txt)"
)

CASES = 102
Case = Tuple[np.ndarray, np.ndarray]  # places (n, 2) that are distinct, segments (k, 2) that do not cross


def from_lines(lines: List[np.ndarray], points: np.ndarray, rng: np.random.Generator) -> Case:
    """Places and segments of polylines (k, 2) and loose points, in scrambled order."""
    lines = [np.asarray(np.rint(line), np.int64) for line in lines]
    xy, number = np.unique(np.vstack([*lines, np.asarray(np.rint(points), np.int64)]), axis=0, return_inverse=True)
    number, pairs, start = number.ravel(), [], 0
    for line in lines:
        chain = number[start : start + len(line)]
        pairs.append(np.column_stack([chain[:-1], chain[1:]]))
        start += len(line)
    segments = np.vstack(pairs)
    order = rng.permutation(len(xy))
    place = np.empty(len(xy), np.int64)
    place[order] = np.arange(len(xy))
    return xy[order], without_crossings(xy[order], place[segments])


def without_crossings(xy: np.ndarray, segments: np.ndarray) -> np.ndarray:
    """The segments that cross none kept before them (exact: coordinates are below 2**30)."""

    def side(a: np.ndarray, b: np.ndarray, c: np.ndarray) -> np.ndarray:
        u, v = xy[b] - xy[a], xy[c] - xy[a]
        return np.sign(u[..., 0] * v[..., 1] - u[..., 1] * v[..., 0])

    kept = np.empty((0, 2), np.int64)
    for a, b in segments[segments[:, 0] != segments[:, 1]]:
        c, d = kept.T
        if not np.any((side(a, b, c) * side(a, b, d) < 0) & (side(c, d, a) * side(c, d, b) < 0)):
            kept = np.vstack([kept, [a, b]])
    return kept


def random_pairs(xy: np.ndarray, rng: np.random.Generator) -> Case:
    xy = distinct(xy, rng)
    return xy, without_crossings(xy, rng.integers(0, len(xy), (int(rng.integers(1, 40)), 2)))


def ground(rng: np.random.Generator, lines: List[np.ndarray], most: int = 60) -> np.ndarray:
    corner = np.vstack(lines)
    low, high = corner.min(axis=0), corner.max(axis=0)
    return rng.uniform(low, high + 1, (int(rng.integers(1, most)), 2))


def street(rng: np.random.Generator) -> Case:
    """A bent lane whose kerbs are pairs of lines 1 mm apart, points between."""
    n = int(rng.integers(3, 14))
    axis = np.column_stack([np.arange(n) * 50000, np.cumsum(rng.integers(-20000, 20000, n)) + 10**6])
    lines = [axis + np.array([0, off]) for off in (0, 10, 70000, 70010)]
    return from_lines(lines, ground(rng, lines), rng)


def street_block(rng: np.random.Generator) -> Case:
    """Level kerbs 1 mm apart with points exactly on them, and cross streets that end on the kerb."""
    length = int(rng.integers(4, 15)) * 5000
    along = [np.array([[0, y], [length, y]]) for y in (1000, 1010, 41000, 41010)]
    x = rng.integers(0, length, 4)
    across = [np.array([[v, 1010], [v + int(rng.integers(-9, 9)), 41000]]) for v in x.tolist()]
    on_kerb = np.column_stack([rng.integers(0, length, 8), rng.choice([1000, 1010, 41010], 8)])
    return from_lines([*along, *across], np.vstack([on_kerb, ground(rng, along, 30)]), rng)


def spiral(rng: np.random.Generator) -> Case:
    a = np.linspace(0, float(rng.uniform(6, 30)), int(rng.integers(20, 80)))
    arm = np.column_stack([a * np.cos(a), a * np.sin(a)]) * 10**5 + 4 * 10**6
    return from_lines([arm], ground(rng, [arm], 30), rng)


def star(rng: np.random.Generator) -> Case:
    """Rays from one centre, some through points, some hidden behind each other."""
    arms = int(rng.integers(3, 40))
    a = rng.uniform(0, 2 * np.pi, arms)
    far = np.rint(np.column_stack([np.cos(a), np.sin(a)]) * 1000) * rng.integers(1, 1000, (arms, 1)) + 2 * 10**6
    centre = np.array([2 * 10**6, 2 * 10**6])
    rays = [np.array([centre, f]) for f in far]
    half = [(centre + f) // 2 for f in far[::3]]
    return from_lines(rays, np.vstack([*half, ground(rng, rays, 30)]), rng)


def chain_nearly_straight(rng: np.random.Generator) -> Case:
    xy = distinct(near_collinear(rng), rng)
    order = np.lexsort((xy[:, 1], xy[:, 0]))
    chain = order[:: int(rng.integers(1, 4))]
    skips = np.column_stack([chain[:-1], chain[1:]])
    longer = rng.integers(0, len(xy), (10, 2))
    return xy, without_crossings(xy, np.vstack([skips, longer]))


def national_grid(rng: np.random.Generator) -> Case:
    """A site of some hundred metres at the far end of the range, in millimetres."""
    xy = LIMIT - 1 - rng.integers(0, 300_000, (int(rng.integers(5, 80)), 2)) * 10
    return random_pairs(xy, rng)


def t_junctions(rng: np.random.Generator) -> Case:
    """Lines that end on the inside of others, and points on lines."""
    step = rng.integers(-4000, 4000, 2)
    base = np.array([10**6, 10**6]) + np.arange(0, 21)[:, None] * step
    feet = base[rng.choice(np.arange(1, 20), int(rng.integers(1, 8)), replace=False)]
    arms = [np.array([f, f + rng.integers(-30000, 30000, 2)]) for f in feet]
    return from_lines([base[[0, -1]], *arms], ground(rng, arms, 30), rng)


def overlaps(rng: np.random.Generator) -> Case:
    """Segments that lie on each other in part or whole, some given twice or backwards."""
    run = np.column_stack([np.arange(12) * 30, np.arange(12) * 20 + 100])
    pick = rng.integers(0, 12, (8, 2))
    lines = [run[p] for p in pick if p[0] != p[1]] + [run[[0, 7]], run[[7, 0]], run[[0, 7]]]
    return from_lines(lines, ground(rng, [run], 40), rng)


def random_walks(rng: np.random.Generator) -> Case:
    xy = distinct(rng.integers(0, 10**6, (100, 2)), rng)
    walks = []
    for _ in range(int(rng.integers(1, 6))):
        at = int(rng.integers(0, len(xy)))
        for _ in range(20):
            near = np.argsort(np.hypot(*(xy - xy[at]).T))[1:20]
            after = int(rng.choice(near))
            walks.append([at, after])
            at = after
    return xy, without_crossings(xy, np.array(walks))


def long_lines(rng: np.random.Generator) -> Case:
    """Few segments through very many triangles."""
    xy = distinct(rng.integers(0, 10**8, (200, 2)), rng)
    far = np.argsort(xy[:, 0])
    return xy, without_crossings(xy, np.column_stack([rng.choice(far[:40], 12), rng.choice(far[-40:], 12)]))


def comb(rng: np.random.Generator) -> Case:
    """Teeth from both sides between each other, a few tenths of a millimetre apart."""
    n, gap = int(rng.integers(2, 15)), int(rng.integers(1, 6))
    up = [np.array([[4 * gap * i, 100], [4 * gap * i, 90000 - int(rng.integers(0, 9))]]) for i in range(n)]
    foot = [np.array([[0, 100000], [0, 9000 + int(rng.integers(0, 9))]]) for _ in range(n)]
    down = [place + np.array([4 * gap * i + gap, 0]) for i, place in enumerate(foot)]
    return from_lines(up + down, ground(rng, up, 20), rng)


def hatch(rng: np.random.Generator) -> Case:
    """Long slanted lines side by side, all through the same triangles."""
    n = int(rng.integers(2, 25))
    lines = [np.array([[100 * i, 0], [100 * i + 10**5, 3 * 10**6 + int(rng.integers(0, 50))]]) for i in range(n)]
    return from_lines(lines, rng.integers(0, 3 * 10**6, (5, 2)), rng)


def ring(rng: np.random.Generator) -> Case:
    """A closed boundary full of bays, with points inside and outside."""
    n = int(rng.integers(5, 50))
    a, r = np.linspace(0, 2 * np.pi, n, endpoint=False), rng.uniform(10**5, 10**6, n)
    shore = np.column_stack([r * np.cos(a), r * np.sin(a)]) + 10**6
    return from_lines([np.vstack([shore, shore[:1]])], ground(rng, [shore]), rng)


def of_points(make: Callable[[np.random.Generator], np.ndarray]) -> Callable[[np.random.Generator], Case]:
    return lambda rng: random_pairs(make(rng), rng)


KINDS: Dict[str, Callable[[np.random.Generator], Case]] = {
    **{
        f.__name__: f
        for f in (
            street, street_block, spiral, star, chain_nearly_straight, national_grid, t_junctions, overlaps,
            random_walks, long_lines, comb, hatch, ring,
        )
    },
    **{
        f.__name__: of_points(f)
        for f in (
            grid, small_numbers, random_points, clusters_of_least_step, corners_of_the_range, rings_of_a_circle, wheel,
        )
    },
}  # fmt: skip


def with_segments(xy: np.ndarray, segments: np.ndarray, kind: np.ndarray) -> Mesh:
    mesh = triangulate(*xy.T.copy())
    assert insert_segments(mesh, segments, kind) == []
    return mesh


def marked(mesh: Mesh) -> Dict[Tuple[int, int], int]:
    """Kind of each marked edge (lower, higher); both sides must agree."""
    corner = mesh.vertex.reshape(-1, 3)
    kinds: Dict[Tuple[int, int], Set[int]] = {}
    ends = np.column_stack([mesh.vertex, corner[:, [1, 2, 0]].ravel()])
    for (a, b), kind in zip(np.sort(ends, axis=1).tolist(), mesh.kind.tolist()):
        kinds.setdefault((a, b), set()).add(kind)
    assert all(len(both) == 1 for both in kinds.values()), "the two sides of an edge differ in kind"
    return {edge: kind for edge, (kind,) in kinds.items() if kind}


def by_triangle(xy: np.ndarray, segments: np.ndarray) -> Set[Tuple[int, ...]]:
    """Triangle's own constrained Delaunay triangulation of the convex hull (its arithmetic is exact)."""
    low = xy - xy.min(axis=0)  # below 2**30, so that no float rounds
    found = triangle.triangulate({"vertices": low.astype(float), "segments": segments}, "pc")
    assert len(found["vertices"]) == len(xy)
    return triangle_set(found["triangles"])


def check_case(xy: np.ndarray, segments: np.ndarray, rng: np.random.Generator) -> bool:
    """Everything there is to say of one case; whether it was compared with Triangle."""
    kind = rng.integers(1, 8, len(segments)).astype(np.uint8)
    mesh = with_segments(xy, segments, kind)
    check_twins(mesh)
    checked = Checked(as_points(*xy.T), as_triangles(mesh.vertex))
    expected: Dict[Tuple[int, int], int] = {}
    for (a, b), bits in zip(segments.tolist(), kind.tolist()):
        for edge in checked.chain(a, b):
            expected[edge] = expected.get(edge, 0) | bits
    assert marked(mesh) == expected
    ties = checked.check_delaunay(set(expected))
    if ties == 0 and len(segments):
        assert triangle_set(mesh.vertex) == by_triangle(xy, segments)
    order, turned = rng.permutation(len(xy)), rng.permutation(len(segments))
    place = np.empty(len(xy), np.int64)
    place[order] = np.arange(len(xy))
    other = place[np.where(rng.random((len(segments), 1)) < 0.5, segments, segments[:, ::-1])][turned]
    again = with_segments(xy[order], other, kind[turned])
    assert place_set(*xy[order].T, again.vertex) == place_set(*xy.T, mesh.vertex), "depends on the order"
    return ties == 0


@pytest.mark.parametrize("kind", KINDS)
def test_constrained(kind: str) -> None:
    compared = 0
    for seed in range(CASES):
        rng = np.random.default_rng([seed, sum(map(ord, kind))])
        xy, segments = KINDS[kind](rng)
        if on_one_line(xy):
            continue
        try:
            compared += check_case(xy, segments, rng)
        except Exception as error:
            raise AssertionError(f"{kind}, seed {seed}: {len(xy)} points, {len(segments)} segments") from error
    if kind in ("street", "national_grid", "random_walks", "long_lines", "random_points", "ring"):
        assert compared > CASES // 2, f"only {compared} cases were comparable"


def test_number_of_cases() -> None:
    assert CASES * len(KINDS) >= 2000


def across(points: int, lines: int, rng: np.random.Generator) -> Case:
    """Random points, and lines through all of them from west to east that do not meet."""
    xy = distinct(rng.integers(0, 10**7, (points, 2)), rng)
    order = np.argsort(xy[:, 0])
    west, east = (side[np.argsort(xy[side, 1])] for side in (order[:lines], order[-lines:]))
    return xy, without_crossings(xy, np.column_stack([west, east]))


def test_long_lines_side_by_side(monkeypatch: pytest.MonkeyPatch) -> None:
    """A line through hundreds of triangles is carved by many flips at once, not one after another."""
    from plugin.core.surface import insert

    xy, segments = across(20_000, 60, np.random.default_rng(4))
    flip_rounds = []
    plain = insert._edges_to_flip
    monkeypatch.setattr(insert, "_edges_to_flip", lambda *given: flip_rounds.append(1) or plain(*given))
    mesh = with_segments(xy, segments, np.ones(len(segments), np.uint8))
    assert triangle_set(mesh.vertex) == by_triangle(xy, segments)
    assert len(segments) > 50
    assert len(flip_rounds) < 300


def test_many_lines_in_a_large_mesh() -> None:
    """A town of streets on 20,000 points: parallel kerbs 1 mm apart between others, against Triangle."""
    rng = np.random.default_rng(8)
    lines = []
    for row in range(12):
        axis = np.column_stack([np.arange(0, 41) * 25_000, 80_000 * row + rng.integers(0, 9_000, 41)])
        lines += [axis + np.array([0, off]) for off in (0, 10, 35_000, 35_010)]
    xy, segments = from_lines(lines, ground(rng, lines, 2) + rng.uniform(-4e5, 4e5, (20_000, 2)), rng)
    xy -= xy.min(axis=0)
    mesh = with_segments(xy, segments, np.ones(len(segments), np.uint8))
    assert len(segments) == 12 * 4 * 40
    assert set(marked(mesh)) >= {tuple(sorted(pair)) for pair in segments.tolist()}
    assert triangle_set(mesh.vertex) == by_triangle(xy, segments)


def test_star_of_many_rays() -> None:
    """All corridors meet in one vertex."""
    rng = np.random.default_rng(6)
    a = np.linspace(0, 2 * np.pi, 300, endpoint=False)
    far = np.rint(np.column_stack([np.cos(a), np.sin(a)]) * 10**6) + 10**6
    xy, segments = from_lines([np.array([[10**6, 10**6], p]) for p in far], rng.integers(0, 2 * 10**6, (5000, 2)), rng)
    check = with_segments(xy, segments, np.ones(len(segments), np.uint8))
    assert len(segments) == 300
    centre = np.bincount(segments.ravel()).argmax()
    assert np.count_nonzero((check.vertex == centre) & (check.kind != 0)) == 300
    assert triangle_set(check.vertex) == by_triangle(xy, segments)


# ------------------------------------------------------------------------------------------ segments that cross


def network_of(xy: np.ndarray, segments: np.ndarray) -> Network:
    k, n = len(segments), len(xy)
    return Network(
        x=xy[:, 0].copy(), y=xy[:, 1].copy(), z=np.zeros(n), source=np.arange(n), segments=segments,
        kind=np.ones(k, np.uint8), line=np.arange(k), soft=np.zeros(k, bool), rings=(), origin=np.zeros(2),
    )  # fmt: skip


def mixed_lengths(rng: np.random.Generator) -> np.ndarray:
    """Places in clusters of very different size, so that short and very long segments meet."""
    size = 10 ** rng.uniform(1, 8, 6)
    xy = rng.uniform(0, 1, (60, 2)) * rng.choice(size, (60, 1)) + rng.choice(size, (60, 1))
    return np.minimum(xy, LIMIT - 1)


def level_and_upright(rng: np.random.Generator) -> np.ndarray:
    return rng.integers(0, 12, (60, 2)) * int(10 ** rng.uniform(0, 7.9))


@pytest.mark.parametrize(
    "make", [random_points, small_numbers, grid, clusters_of_least_step, corners_of_the_range, near_collinear,
             mixed_lengths, level_and_upright], ids=lambda f: f.__name__,
)  # fmt: skip
def test_crossings_are_found(make: Callable[[np.random.Generator], np.ndarray]) -> None:
    """All proper crossings and nothing else: not shared ends, not T-junctions, not overlaps."""
    some = 0
    for seed in range(40):
        rng = np.random.default_rng(seed)
        xy = distinct(make(rng), rng)
        segments = rng.integers(0, len(xy), (int(rng.integers(0, 40)), 2))
        segments = segments[segments[:, 0] != segments[:, 1]]
        first, second = crossing_pairs(network_of(xy, segments))
        pairs = list(zip(first.tolist(), second.tolist()))
        assert pairs == sorted(set(pairs))
        expected = proper_crossings(as_points(*xy.T), segments.tolist())
        assert set(pairs) == expected
        some += len(expected)
    assert some > 100


def test_segments_that_cross_are_returned() -> None:
    """Given crossing segments all the same, the mesh stays right and says which were left out, and why."""
    left_out = 0
    for seed in range(60):
        rng = np.random.default_rng(seed)
        xy = distinct(random_points(rng) if seed % 2 else small_numbers(rng), rng)
        if on_one_line(xy):
            continue
        segments = rng.integers(0, len(xy), (12, 2))
        mesh = triangulate(*xy.T.copy())
        crossings = insert_segments(mesh, segments, np.ones(12, np.uint8))
        points = as_points(*xy.T)
        checked = Checked(points, as_triangles(mesh.vertex))
        checked.check_delaunay(set(marked(mesh)))
        for crossing in crossings:
            left_out += 1
            assert tuple(sorted(crossing.edge)) in marked(mesh)
            assert proper_crossings(points, [crossing.segment, crossing.edge])
    assert left_out > 50


@pytest.mark.parametrize("segments", [np.empty((0, 2), np.int64), np.array([[2, 2]]), np.array([[1, 1], [0, 2]])])
def test_nothing_to_insert(segments: np.ndarray) -> None:
    mesh = triangulate(np.array([0, 10, 0], np.int64), np.array([0, 0, 10], np.int64))
    assert insert_segments(mesh, segments, np.ones(len(segments), np.uint8)) == []
    assert mesh.triangle_count == 1
