"""Points taken out of a triangulation against the triangulation of the others: the same triangles."""

from __future__ import annotations

import numpy as np
import pytest

from plugin.core.surface.delaunay import triangulate
from plugin.core.surface.insert import insert_segments
from plugin.core.surface.mesh import Mesh, following
from plugin.core.surface.remove import without_vertices


def triangles_of(mesh: Mesh, number: np.ndarray) -> set:
    corner = number[mesh.vertex.reshape(-1, 3)]
    turn = np.argmin(corner, axis=1)
    rolled = np.take_along_axis(corner, (turn[:, None] + np.arange(3)) % 3, axis=1)
    return set(map(tuple, rolled.tolist()))


def sound(mesh: Mesh) -> None:
    half = np.flatnonzero(mesh.twin >= 0)
    assert np.array_equal(mesh.twin[mesh.twin[half]], half)
    assert np.array_equal(mesh.vertex[mesh.twin[half]], mesh.vertex[following(half)])
    assert np.array_equal(mesh.kind[mesh.twin[half]], mesh.kind[half])
    assert np.all(mesh.double_areas() > 0)


@pytest.mark.parametrize("side", [12, 40, 100_000])
@pytest.mark.parametrize("share", [0.02, 0.3, 0.9])
def test_what_is_left_is_the_triangulation_of_the_others(side: int, share: float) -> None:
    """A small ``side`` makes many cocircular and collinear points, on the hull as well."""
    rng = np.random.default_rng(side + int(100 * share))
    place = np.unique(rng.integers(0, side, (900, 2)), axis=0).astype(np.int64)
    x, y = place.T.copy()
    gone = rng.random(len(x)) < share
    left = without_vertices(triangulate(x, y), gone)
    sound(left)
    rest = np.flatnonzero(~gone)
    again = triangulate(x[rest], y[rest])
    assert triangles_of(left, np.arange(len(x))) == triangles_of(again, rest)


@pytest.mark.parametrize("share", [0.1, 0.4, 0.97])
def test_a_line_in_or_beside_a_hole_stays(share: float) -> None:
    rng = np.random.default_rng(3)
    x, y = np.unique(rng.integers(0, 1000, (400, 2)), axis=0).astype(np.int64).T.copy()
    ends = np.argsort(x)[[0, -1]]
    mesh = triangulate(x, y)
    insert_segments(mesh, ends[None, :], np.ones(1, np.uint8))
    on_line = np.zeros(len(x), bool)
    marked = mesh.kind > 0
    on_line[mesh.vertex[marked]] = True
    gone = (rng.random(len(x)) < share) & ~on_line
    left = without_vertices(mesh, gone)
    sound(left)
    rest = np.flatnonzero(~gone)
    again = triangulate(x[rest], y[rest])
    insert_segments(again, np.searchsorted(rest, ends)[None, :], np.ones(1, np.uint8))
    assert triangles_of(left, np.arange(len(x))) == triangles_of(again, rest)
    assert np.count_nonzero(left.kind) == np.count_nonzero(again.kind) == np.count_nonzero(marked)


def test_nothing_left_to_join() -> None:
    x, y = np.array([0, 10, 5, 5]), np.array([0, 0, 8, 3])
    mesh = triangulate(x, y)
    assert without_vertices(mesh, np.array([False, False, True, True])).triangle_count == 0
    assert without_vertices(mesh, np.zeros(4, bool)) is mesh
