"""Spot heights against closed forms, Euler's relation and the plain algorithms on small surfaces."""

from __future__ import annotations

from typing import Dict, List, Tuple

import numpy as np
import pytest
from scipy.spatial import Delaunay

from plugin.core.contours.spots import SpotKind, Spots, find_spots
from plugin.core.progress import Cancelled
from plugin.core.surface.tin import Tin
from tests.core.terrains import delaunay_tin, random_terrains, tin_of


def grid_tin(z: np.ndarray) -> Tin:
    """Unit squares, each cut by the diagonal that rises to the right; row 0 is the south."""
    rows, columns = z.shape
    y, x = np.mgrid[:rows, :columns]
    number = np.arange(z.size).reshape(z.shape)
    a, b, c, d = number[:-1, :-1], number[:-1, 1:], number[1:, 1:], number[1:, :-1]
    triangles = np.concatenate([np.stack([a, b, c], -1).reshape(-1, 3), np.stack([a, c, d], -1).reshape(-1, 3)])
    return tin_of(np.column_stack([x.ravel(), y.ravel(), np.asarray(z, float).ravel()]), triangles)


def found(spots: Spots) -> List[Tuple[str, float, float, float]]:
    """Kind, height, prominence and index of each spot."""
    kinds = [SpotKind(k).name for k in spots.kind]
    rows = zip(spots.xyz[:, 2].tolist(), np.round(spots.prominence, 9).tolist(), spots.index.tolist())
    return [(kind, *map(float, row)) for kind, row in zip(kinds, rows)]


# ---------------------------------------------------------------------------------- closed forms


def test_two_hills_and_the_saddle_between():
    z = np.zeros((5, 7))
    z[1:4, 1:6] = [[1, 2, 1, 2, 1], [2, 10, 5, 8, 2], [1, 2, 1, 2, 1]]
    assert found(find_spots(grid_tin(z), 0.5)) == [
        ("SUMMIT", 10.0, 10.0, 1.0),
        ("SADDLE", 5.0, 3.0, -1.0),
        ("SUMMIT", 8.0, 3.0, 1.0),
    ]


def test_a_pit_fills_to_its_lowest_way_out():
    z = np.full((5, 5), 9.0)
    z[2, 2] = 2.0
    z[2, 3], z[2, 4] = 6.0, 5.0
    spots = find_spots(grid_tin(z), 0.5)
    pits = spots.kind == SpotKind.PIT
    np.testing.assert_allclose(spots.xyz[pits], [[2, 2, 2]])
    np.testing.assert_allclose(spots.prominence[pits], [4.0])


def test_no_pit_on_the_rim():
    """A valley that leaves the site: its lowest vertex is on the rim, where water runs off."""
    x, y = np.meshgrid(np.arange(7.0), np.arange(5.0))
    spots = find_spots(grid_tin(np.abs(x - 3) + 0.1 * y))
    assert np.all(spots.kind != SpotKind.PIT)
    assert np.sum(spots.kind == SpotKind.SUMMIT) == 2
    assert np.all(spots.on_rim)


def test_a_plateau_counts_once():
    z = np.zeros((7, 7))
    z[2:5, 2:5] = 3.0
    spots = find_spots(grid_tin(z), 0.001)
    assert found(spots) == [("SUMMIT", 3.0, 3.0, 1.0)]
    np.testing.assert_array_equal(spots.xyz[0, :2], [4, 4])  # the most north-eastern of the highest


def test_level_ground_is_one_tilted_plane():
    spots = find_spots(grid_tin(np.zeros((6, 6))))
    assert found(spots) == [("SUMMIT", 0.0, 0.0, 1.0)]


def test_monkey_saddle_has_index_two():
    """z = x³ - 3xy²: three ways up, three ways down; index -2 (Banchoff's example of the kind, from memory)."""
    turn = np.arange(12) * np.pi / 6
    xy = np.vstack([[0, 0], np.column_stack([np.cos(turn), np.sin(turn)])])
    xyz = np.column_stack([xy, xy[:, 0] ** 3 - 3 * xy[:, 0] * xy[:, 1] ** 2])
    triangles = np.array([[0, i, i % 12 + 1] for i in range(1, 13)])
    spots = find_spots(tin_of(xyz, triangles))
    saddle = spots.vertex == 0
    assert spots.kind[saddle].tolist() == [SpotKind.SADDLE]
    assert spots.index[saddle].tolist() == [-2]
    assert np.sum(spots.kind == SpotKind.SUMMIT) == 3


# ------------------------------------------------------------------------------- Euler's relation


def indices(spots: Spots) -> int:
    kinds = np.bincount(spots.kind, minlength=4)
    saddles = -int(spots.index[spots.kind == SpotKind.SADDLE].sum())
    return int(kinds[SpotKind.SUMMIT]) - saddles + int(kinds[SpotKind.PIT])


def holed(pieces: int, holes: int, seed: int) -> Tin:
    """``pieces`` squares of noise, each with ``holes`` round holes."""
    rng = np.random.default_rng(seed)
    xyz, triangles = [], []
    for piece in range(pieces):
        xy = np.rint(rng.uniform(0, 10, (600, 2)) * 1e4) / 1e4
        mesh = Delaunay(xy)
        middle = xy[mesh.simplices].mean(axis=1)
        keep = np.ones(len(middle), dtype=bool)
        for hole in range(holes):
            keep &= np.hypot(*(middle - [2.0 + 3 * hole, 5.0]).T) > 1.2
        triangles.append(mesh.simplices[keep].astype(np.int64) + sum(map(len, xyz)))
        xyz.append(np.column_stack([xy[:, 0] + 20 * piece, xy[:, 1], rng.normal(0, 1, 600)]))
    return tin_of(np.concatenate(xyz), np.concatenate(triangles))


@pytest.mark.parametrize(("pieces", "holes"), [(1, 0), (1, 1), (1, 3), (3, 2), (2, 0)])
def test_summits_less_saddles_plus_pits(pieces, holes):
    """The Euler characteristic: pieces less holes."""
    assert indices(find_spots(holed(pieces, holes, seed=pieces + 10 * holes))) == pieces * (1 - holes)


@pytest.mark.parametrize("ties", [False, True])
def test_euler_characteristic_of_ragged_surfaces(ties):
    """Rims that touch themselves included: vertices less edges plus triangles."""
    terrains = random_terrains(3000, seed=21, ties=ties)
    spots = find_spots(terrains.tin)
    triangles = terrains.tin.triangles
    edges = np.concatenate([triangles[:, [0, 1]], triangles[:, [1, 2]], triangles[:, [2, 0]]])
    edges = np.unique(np.sort(edges, axis=1), axis=0)
    parts = (np.unique(triangles), edges[:, 0], triangles[:, 0])
    counts = [np.bincount(terrains.of_vertex[part], minlength=3000) for part in parts]
    sums = np.bincount(terrains.of_vertex[spots.vertex], weights=spots.index, minlength=3000)
    np.testing.assert_array_equal(sums, counts[0] - counts[1] + counts[2])


# ---------------------------------------------------------------------- against plain algorithms


def keys_of(tin: Tin) -> List[Tuple[float, int, int]]:
    return [(z, int(x), int(y)) for z, (x, y) in zip(tin.vertices[:, 2].tolist(), tin.grid.tolist())]


def neighbours_of(tin: Tin) -> Dict[int, set]:
    near: Dict[int, set] = {}
    for a, b, c in tin.triangles.tolist():
        for one, other in ((a, b), (b, c), (c, a)):
            near.setdefault(one, set()).add(other)
            near.setdefault(other, set()).add(one)
    return near


def flood(keys: List, near: Dict[int, set]) -> Dict[int, Tuple[int, float]]:
    """By adding vertices from the highest down: each summit that ends, the vertex where, and the drop to it."""
    group: Dict[int, int] = {}
    ended = {}
    for v in sorted(near, key=lambda v: keys[v], reverse=True):
        group[v] = v
        for w in near[v]:
            if w not in group:
                continue
            a, b = find(group, v), find(group, w)
            if a == b:
                continue
            low, high = sorted((a, b), key=lambda s: keys[s])
            if low != v:
                ended[low] = (v, abs(keys[low][0] - keys[v][0]))
            group[low] = high
    return ended


def find(group: Dict[int, int], v: int) -> int:
    while group[v] != v:
        v = group[v]
    return v


@pytest.mark.parametrize("ties", [False, True])
def test_prominence_is_that_of_flooding(ties):
    terrains = random_terrains(250, seed=33, ties=ties)
    tin = terrains.tin
    keys, near = keys_of(tin), neighbours_of(tin)
    spots = find_spots(tin)
    at = {int(v): i for i, v in enumerate(spots.vertex)}
    ended = flood(keys, near)
    # The land beyond the rim: lower than all, beside every vertex of the rim.
    beyond = len(keys)
    turned = [(-z, -x, -y) for z, x, y in keys] + [(np.inf, 0, 0)]
    triangle, edge = np.nonzero(tin.neighbours < 0)
    rim = {int(v) for v in tin.triangles[triangle, edge]}
    filled = flood(turned, {**{v: near[v] | ({beyond} if v in rim else set()) for v in near}, beyond: rim})
    assert len(ended) > 100
    assert len(filled) > 100
    saddles: Dict[int, float] = {}
    for kind, events in ((SpotKind.SUMMIT, ended), (SpotKind.PIT, filled)):
        for vertex, (saddle, drop) in events.items():
            assert spots.kind[at[vertex]] == kind
            assert spots.prominence[at[vertex]] == pytest.approx(drop)
            saddles[saddle] = max(saddles.get(saddle, 0.0), drop)
    for i in np.flatnonzero(spots.kind == SpotKind.SADDLE):
        assert spots.prominence[i] == pytest.approx(saddles.get(int(spots.vertex[i]), 0.0))
    assert set(saddles) <= set(spots.vertex[spots.kind == SpotKind.SADDLE].tolist())
    pits = spots.vertex[spots.kind == SpotKind.PIT]
    assert set(pits.tolist()) == set(filled)
    for i in np.flatnonzero(spots.kind == SpotKind.SUMMIT):
        if int(spots.vertex[i]) not in ended:  # the highest of its piece
            piece = flooded_from(int(spots.vertex[i]), near)
            lowest = min(tin.vertices[v, 2] for v in piece)
            assert spots.prominence[i] == pytest.approx(spots.xyz[i, 2] - lowest)


def flooded_from(vertex: int, near: Dict[int, set]) -> set:
    piece, ahead = {vertex}, [vertex]
    while ahead:
        ahead = [w for v in ahead for w in near[v] if w not in piece and not piece.add(w)]  # type: ignore[func-returns-value]
    return piece


def test_kinds_by_the_changes_around_each_vertex():
    """Banchoff: inside, the index is 1 less half the number of changes from higher to lower around the vertex."""
    rng = np.random.default_rng(6)
    xy = np.rint(rng.uniform(0, 10, (400, 2)) * 1e4) / 1e4
    tin = delaunay_tin(np.column_stack([xy, np.rint(rng.normal(0, 3, 400))]))
    keys, near = keys_of(tin), neighbours_of(tin)
    spots = find_spots(tin)
    index = dict(zip(spots.vertex.tolist(), spots.index.tolist()))
    hull = set(Delaunay(xy).convex_hull.ravel().tolist())
    for v in set(near) - hull:
        around = sorted(near[v], key=lambda w: np.arctan2(*(xy[w] - xy[v])[::-1]))
        above = [keys[w] > keys[v] for w in around]
        changes = sum(a != b for a, b in zip(above, above[1:] + above[:1]))
        assert index.get(v, 0) == 1 - changes // 2


# ------------------------------------------------------------------------------------ behaviour


def test_order_of_points_does_not_matter():
    rng = np.random.default_rng(9)
    xy = np.rint(rng.uniform(0, 10, (500, 2)) * 1e4) / 1e4
    xyz = np.column_stack([xy, np.rint(rng.normal(0, 3, 500))])
    tin = delaunay_tin(xyz)
    names = rng.permutation(500)
    turned = np.empty_like(xyz)
    turned[names] = xyz
    again = find_spots(tin_of(turned, names[tin.triangles][rng.permutation(len(tin.triangles))]))
    spots = find_spots(tin)
    np.testing.assert_array_equal(spots.xyz, again.xyz)
    np.testing.assert_array_equal(spots.kind, again.kind)
    np.testing.assert_array_equal(spots.prominence, again.prominence)


def test_noise_is_not_labelled():
    """Four hills and their saddles in 15 mm of noise: with half the contour interval only they remain."""
    rng = np.random.default_rng(12)
    xy = np.rint(rng.uniform(0, 40, (5000, 2)) * 1e4) / 1e4
    z = 2 * np.sin(xy[:, 0] * np.pi / 20) ** 2 * np.sin(xy[:, 1] * np.pi / 20) ** 2 + rng.normal(0, 0.015, len(xy))
    tin = delaunay_tin(np.column_stack([xy, z]))
    everything, few = find_spots(tin), find_spots(tin, 0.125)
    assert len(everything) > 300
    summits = few.xyz[few.kind == SpotKind.SUMMIT]
    assert len(summits) == 4
    expected = np.array([[10.0, 10], [10, 30], [30, 10], [30, 30]])
    assert np.all(np.hypot(*(summits[:, None, :2] - expected).transpose(2, 0, 1)).min(axis=0) < 1.5)
    assert np.all(np.diff(few.prominence) <= 0)
    assert np.all(few.prominence >= 0.125)


def test_unused_vertices_are_nothing():
    tin = tin_of(np.array([[0.0, 0, 1], [1, 0, 2], [0, 1, 3], [9, 9, 99]]), np.array([[0, 1, 2]]))
    assert found(find_spots(tin)) == [("SUMMIT", 3.0, 2.0, 1.0)]


def test_no_triangles():
    assert len(find_spots(tin_of(np.zeros((1, 3)), np.empty((0, 3), int)))) == 0


def test_cancel():
    def stop(fraction: float, stage: str) -> None:
        assert stage == "spots"
        raise Cancelled

    with pytest.raises(Cancelled):
        find_spots(grid_tin(np.zeros((3, 3))), progress=stop)
