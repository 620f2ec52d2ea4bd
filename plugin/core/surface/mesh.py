"""A triangulation in the making: half-edges in flat arrays, changed by flips of many edges at once.

Half-edge ``h`` of triangle ``h // 3`` runs from vertex ``vertex[h]`` to ``vertex[following(h)]``, counter-clockwise
around its triangle. ``twin[h]`` is the opposite half-edge, -1 at the rim. ``kind[h]`` is nonzero where
the edge must stay (bits of ``LineKind``); it is equal on both twins.
"""

from __future__ import annotations

from typing import List, Optional

import numpy as np
from scipy.sparse import coo_matrix

from ..progress import Progress, silent
from .predicates import in_circle, orientation
from .tin import GRID, Tin

_CHUNK = 1 << 18


def following(h: np.ndarray) -> np.ndarray:
    """The next half-edge counter-clockwise in the same triangle."""
    last: np.ndarray = 3 * (h // 3) + 2 == h  # faster than h % 3
    return h + 1 - h.dtype.type(3) * last


def preceding(h: np.ndarray) -> np.ndarray:
    """The half-edge before in the same triangle."""
    first: np.ndarray = 3 * (h // 3) == h
    return h - 1 + h.dtype.type(3) * first


def twins_of(vertex: np.ndarray) -> np.ndarray:
    """Match the half-edges of triangles ``vertex`` (3 m,): int32 twins, -1 where there is none.

    Raises ValueError when a directed edge occurs twice (triangles overlap).
    """
    twin = np.full(len(vertex), -1, np.int32)
    if len(vertex) == 0:
        return twin
    start, end = vertex, vertex.reshape(-1, 3)[:, [1, 2, 0]].ravel()
    n = int(vertex.max()) + 1
    # Half-edges as entries of a sparse matrix: a row for the lower vertex, two columns for the higher one, by
    # direction. Sorted row by row, twins follow each other; this takes a seventh of the time of one long sort.
    column = 2 * np.maximum(start, end).astype(np.int64) + (start > end)
    number = np.arange(len(vertex), dtype=np.int32)
    entries = coo_matrix((number, (np.minimum(start, end), column)), shape=(n, 2 * n))
    entries.has_canonical_format = True  # entries of one place must stay two
    rows = entries.tocsr()
    rows.has_sorted_indices = False
    rows.sort_indices()
    place, following_place = rows.indices[:-1], rows.indices[1:]
    one_row = np.ones(len(place), bool)
    breaks = rows.indptr[1:-1]
    one_row[breaks[(breaks > 0) & (breaks <= len(place))] - 1] = False
    if np.any(one_row & (place == following_place)):
        raise ValueError("an edge is used twice in the same direction")
    forward = np.flatnonzero(one_row & (place & 1 == 0) & (following_place == place + 1))
    one, other = rows.data[forward], rows.data[forward + 1]
    twin[one], twin[other] = other, one
    return twin


class Mesh:
    """Half-edge arrays over vertices with whole-number plan coordinates ``x``, ``y`` (int64)."""

    def __init__(
        self,
        x: np.ndarray,
        y: np.ndarray,
        vertex: np.ndarray,
        twin: np.ndarray,
        kind: Optional[np.ndarray] = None,
    ) -> None:
        self.x, self.y = x, y
        self.vertex = vertex
        self.twin = twin
        self.kind = np.zeros(len(vertex), np.uint8) if kind is None else kind
        self.touched: Optional[List[np.ndarray]] = None  # half-edges of flipped triangles, when somebody asks
        self._shift: Optional[np.ndarray] = None  # how far a half-edge's number moves in a flip; zero between
        self.triangle_scratch = np.zeros(len(vertex) // 3, np.int32)  # holds nothing between calls

    @property
    def triangle_count(self) -> int:
        return len(self.vertex) // 3

    def apex(self, h: np.ndarray) -> np.ndarray:
        """The vertex opposite to each half-edge in its triangle."""
        return self.vertex[preceding(h)]

    def end(self, h: np.ndarray) -> np.ndarray:
        """The vertex at which each half-edge ends."""
        return self.vertex[following(h)]

    def independent(self, h: np.ndarray) -> np.ndarray:
        """Mask of edges ``h`` no two of which share a triangle; at least one is True if there are any."""
        first, second = h // 3, self.twin[h] // 3
        number = np.arange(len(h), dtype=np.int32)
        self.triangle_scratch[first] = number
        self.triangle_scratch[second] = number
        # A triangle written twice keeps one of its edges; an edge that kept both its triangles wins.
        mask: np.ndarray = (self.triangle_scratch[first] == number) & (self.triangle_scratch[second] == number)
        if len(h) and not mask.any():  # a closed chain of edges, each of which kept just one
            mask[-1] = True
        return mask

    def flip(self, h: np.ndarray) -> np.ndarray:
        """Replace each edge ``h`` by the other diagonal of its two triangles; the edges must be independent.

        Each quadrilateral must be strictly convex. Returns the outer half-edges (4 k,) of the quadrilaterals.
        After it, ``preceding(h)`` and its twin are the new diagonal.
        """
        vertex, twin, kind = self.vertex, self.twin, self.kind
        if self._shift is None:
            self._shift = np.zeros(len(vertex), np.int32)
        shift = self._shift
        g = twin[h]
        h_previous, g_previous = preceding(h), preceding(g)
        apex_h, apex_g = vertex[h_previous], vertex[g_previous]
        moved = np.concatenate([g_previous, h_previous])
        target = np.concatenate([h, g])
        outside, moved_kind = twin[moved], kind[moved]
        shift[moved] = target - moved
        beyond = np.where(outside >= 0, outside + shift[outside], -1)
        shift[moved] = 0
        vertex[h], vertex[g] = apex_g, apex_h
        twin[target], kind[target] = beyond, moved_kind
        inner = beyond >= 0
        twin[beyond[inner]] = target[inner]
        twin[h_previous], twin[g_previous] = g_previous, h_previous
        kind[h_previous] = kind[g_previous] = 0
        if self.touched is not None:
            self.touched.append(target)
        return np.concatenate([target, following(h), following(g)])

    def one_side(self, h: np.ndarray) -> np.ndarray:
        """Each inner edge that may be flipped, of those in ``h``, once."""
        twin = self.twin[h]
        h = np.where((twin >= 0) & (twin < h), twin, h)[(twin >= 0) & (self.kind[h] == 0)]
        return np.unique(h)

    def unlawful(self, h: np.ndarray) -> np.ndarray:
        """Mask of the inner edges ``h`` that break the Delaunay property or the rule for ties.

        Rule for ties: of the two diagonals of four cocircular points the one through the westernmost
        (then southernmost) of the four is right, so a cocircular polygon becomes a fan from that point.
        This is the triangulation of points lifted to the paraboloid with that point pulled down a
        little, so it is one triangulation, whatever the order of points or flips.
        """
        g = self.twin[h]
        a, b, c, d = self.vertex[h], self.vertex[g], self.apex(h), self.apex(g)
        sign = in_circle(self.x, self.y, a, b, c, d)
        tie = np.flatnonzero(sign == 0)
        if len(tie):
            key = [(self.x[v[tie]] << 31) | self.y[v[tie]] for v in (a, b, c, d)]
            sign[tie] = np.minimum(key[2], key[3]) < np.minimum(key[0], key[1])
        mask: np.ndarray = sign > 0
        return mask

    def legalise(self, candidates: Optional[np.ndarray] = None, progress: Progress = silent) -> int:
        """Flip until every edge that may be flipped is lawful (Lawson); returns the number of flips.

        ``candidates``: half-edges to begin with; all by default. Flips only where a changed edge is near,
        many at a time.
        """
        if candidates is None:
            candidates = np.flatnonzero((self.twin > np.arange(len(self.twin))) & (self.kind == 0))
        else:
            candidates = self.one_side(candidates)
        bad = self._unlawful_of(candidates, progress)
        flips = 0
        while len(bad):
            chosen = self.independent(bad)
            now, later = bad[chosen], bad[~chosen]
            around = self.flip(now)
            flips += len(now)
            # A flip can move an edge of `later` to another half-edge: those are among `around`.
            stale = np.concatenate([around, later[self._untouched(later, now)]])
            candidates = self.one_side(stale)
            bad = candidates[self.unlawful(candidates)]
        return flips

    def _untouched(self, h: np.ndarray, flipped: np.ndarray) -> np.ndarray:
        """Mask of the half-edges ``h`` that belong to no triangle changed by flipping ``flipped``."""
        self.triangle_scratch[h // 3] = 0
        self.triangle_scratch[flipped // 3] = 1
        self.triangle_scratch[self.twin[preceding(flipped)] // 3] = 1
        mask: np.ndarray = self.triangle_scratch[h // 3] == 0
        return mask

    def _unlawful_of(self, candidates: np.ndarray, progress: Progress) -> np.ndarray:
        found = []
        for start in range(0, len(candidates), _CHUNK):
            part = candidates[start : start + _CHUNK]
            found.append(part[self.unlawful(part)])
            progress(min(1.0, (start + _CHUNK) / len(candidates)), "surface")
        return np.concatenate(found) if found else candidates

    def convex(self, h: np.ndarray) -> np.ndarray:
        """Mask of the inner edges ``h`` whose quadrilateral is strictly convex."""
        g = self.twin[h]
        a, b, c, d = self.vertex[h], self.vertex[g], self.apex(h), self.apex(g)
        mask: np.ndarray = (orientation(self.x, self.y, d, b, c) > 0) & (orientation(self.x, self.y, c, a, d) > 0)
        return mask

    def tin(self, height: np.ndarray) -> Tin:
        """Its triangles and vertices with ``height`` (n,), metres, as a surface that can be asked for heights."""
        grid = np.column_stack([self.x, self.y])
        return Tin(
            vertices=np.column_stack([grid * GRID, height]),
            triangles=self.vertex.reshape(-1, 3),
            neighbours=np.where(self.twin >= 0, self.twin // 3, np.int32(-1)).reshape(-1, 3),
            edge_kind=self.kind.reshape(-1, 3),
            grid=grid,
            origin=np.zeros(2),
            vertex_source=np.full(len(grid), -1, np.int64),
        )

    def double_areas(self) -> np.ndarray:
        """Twice the area of each triangle, exact int64 in units of ``GRID`` squared."""
        corner = self.vertex.reshape(-1, 3)
        return orientation(self.x, self.y, corner[:, 0], corner[:, 1], corner[:, 2])
