"""Spot heights: summits, pits and saddles of the TIN, and how far each stands out.

A vertex is classified by its neighbours alone: its *index* is 1 less the Euler characteristic of the
part of its surroundings that is higher (T. Banchoff, "Critical points and curvature for embedded
polyhedra", Journal of Differential Geometry 1, 1967, cited from memory). It is 1 for a summit, with
nothing higher around it, and for a pit, with everything higher; 0 on a slope; and -1 for a saddle
between two higher sides (-2 between three, and so on). Over all vertices the indices sum to the Euler
characteristic of the surface: pieces less holes.

Rules. Of two vertices with the same height the one farther east, then farther north, is the higher;
so a level plateau counts as one plane barely tilted. Ground beyond the rim, in voids too, counts as
lower than everything: a vertex on the rim can be a summit or a saddle but never a pit, as water
leaves there.

Prominence. A summit's is its height above the highest saddle from which higher ground can be reached
without going lower; a pit's is its depth below the lowest saddle over which water reaches lower ground
or the rim: the depth to which it fills. A saddle's is that of the most prominent summit or pit that it
parts from higher or lower ground, 0 where it does neither.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Tuple

import numpy as np

from ..progress import Progress, part, silent
from ..surface.basins import RankedEdges, climb, height_order, joins, ranked_edges
from ..surface.parts import connected_parts
from ..surface.tin import Tin


class SpotKind(IntEnum):
    """What a spot height is of."""

    SUMMIT = 1
    PIT = 2
    SADDLE = 3


@dataclass(frozen=True)
class Spots:
    """k places, the most prominent first.

    ``vertex``: (k,) int64 vertex of the TIN. ``kind``: (k,) int8, ``SpotKind``. ``xyz``: (k, 3) float64,
    metres from ``origin``, and height. ``prominence``: (k,) metres; of the highest summit of a piece of
    the surface, its height above that piece's lowest vertex. ``index``: (k,) int64, 1 for summits and pits,
    -1 for a saddle of two sides, -2 of three. ``on_rim``: (k,) bool.
    """

    vertex: np.ndarray
    kind: np.ndarray
    xyz: np.ndarray
    prominence: np.ndarray
    index: np.ndarray
    on_rim: np.ndarray
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.vertex)


def find_spots(tin: Tin, min_prominence: float = 0.0, progress: Progress = silent) -> Spots:
    """Summits, pits and saddles of ``tin`` with at least ``min_prominence`` metres of prominence.

    With 0, every one, so that summits - saddles + pits (saddles counted by their index) is the number of
    pieces less holes. For a sheet, half the contour interval keeps the noise of the points out. Takes
    time as sorting the vertices does. ``progress`` is called with stage ``"spots"``.
    """
    if len(tin.triangles) == 0:
        none = np.empty(0, np.int64)
        return Spots(none, none.astype(np.int8), np.empty((0, 3)), np.empty(0), none, none > 0, tin.origin)
    progress(0.0, "spots")
    rank = height_order(tin)
    progress(0.1, "spots")
    edges = ranked_edges(tin, rank)
    progress(0.2, "spots")
    index, kind, on_rim = _classify(tin, rank, edges)
    progress(0.4, "spots")
    prominence = _prominence(tin.vertices[:, 2], rank, edges, kind, on_rim, part(progress, 0.4, 1.0))
    found = np.flatnonzero((kind > 0) & (prominence >= min_prominence))
    found = found[np.lexsort((rank[found], -prominence[found]))]
    progress(1.0, "spots")
    return Spots(
        vertex=found,
        kind=kind[found],
        xyz=tin.vertices[found],
        prominence=prominence[found],
        index=index[found],
        on_rim=on_rim[found],
        origin=tin.origin,
    )


# ---------------------------------------------------------------------------------- classification


def _classify(tin: Tin, rank: np.ndarray, edges: RankedEdges) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Index (n,), kind (n,) int8, 0 for none, and whether on the rim, of every vertex."""
    count = len(rank)
    to_higher = np.bincount(edges.low, minlength=count)
    to_lower = np.bincount(edges.high, minlength=count)
    on_rim = np.zeros(count, dtype=bool)
    on_rim[edges.low[edges.rim]] = True
    on_rim[edges.high[edges.rim]] = True
    # The higher surroundings of a vertex: a point for each higher neighbour, joined across each
    # triangle of which it is the lowest corner.
    lowest = np.take_along_axis(tin.triangles, np.argmin(rank[tin.triangles], axis=1)[:, None], axis=1)[:, 0]
    index = 1 - to_higher + np.bincount(lowest, minlength=count)
    used = to_higher + to_lower > 0
    kind = np.zeros(count, dtype=np.int8)
    kind[used & (to_higher == 0)] = SpotKind.SUMMIT
    kind[used & (to_lower == 0) & ~on_rim] = SpotKind.PIT
    kind[used & (index < 0)] = SpotKind.SADDLE
    return np.where(used, index, 0), kind, on_rim


# -------------------------------------------------------------------------------------- prominence


def _prominence(
    height: np.ndarray, rank: np.ndarray, edges: RankedEdges, kind: np.ndarray, on_rim: np.ndarray, progress: Progress
) -> np.ndarray:
    """Prominence (n,) of every vertex that has a kind, 0 for all others."""
    prominence = np.zeros(len(rank))
    ended, saddle = _ended(rank, edges.low, edges.high, part(progress, 0.0, 0.5))
    _note(prominence, ended, saddle, height)
    last = np.setdiff1d(np.flatnonzero(kind == SpotKind.SUMMIT), ended)
    prominence[last] = height[last] - _lowest_around(height, edges)[last]
    # Pits are summits of the surface turned over. The ground beyond the rim is one more place, the
    # highest then, and a neighbour of every vertex on the rim.
    rim = np.flatnonzero(on_rim)
    low = np.concatenate([edges.high, rim])
    high = np.concatenate([edges.low, np.full(len(rim), len(rank))])
    turned = np.append(len(rank) - 1 - rank, len(rank))
    ended, saddle = _ended(turned, low, high, part(progress, 0.5, 1.0))
    _note(prominence, ended, saddle, height)
    return prominence


def _note(prominence: np.ndarray, ended: np.ndarray, saddle: np.ndarray, height: np.ndarray) -> None:
    """Enter the prominence of summits or pits that ended at saddles, and the saddles' own."""
    rise = np.abs(height[ended] - height[saddle])
    prominence[ended] = rise
    np.maximum.at(prominence, saddle, rise)


def _ended(rank: np.ndarray, low: np.ndarray, high: np.ndarray, progress: Progress) -> Tuple[np.ndarray, np.ndarray]:
    """Summits that end and the saddles where they do, as the surface rises out of water that falls.

    Where two islands join, the lower of their summits ends.
    """
    summit = climb(rank, low, high)
    progress(0.3, "spots")
    found = joins(rank, summit, low, high)
    progress(0.8, "spots")
    names, number = np.unique(np.concatenate([found.one, found.other]), return_inverse=True)
    one, other = number.reshape(2, -1)
    return names[_elders(one, other, rank[names])], found.saddle


def _elders(one: np.ndarray, other: np.ndarray, rank: np.ndarray) -> np.ndarray:
    """Of each pair joined, in this order, the one of the two groups' highest members that is lower."""
    group = list(range(len(rank)))
    height = rank.tolist()
    ended = []
    for a, b in zip(one.tolist(), other.tolist()):
        while group[a] != a:
            group[a] = group[group[a]]
            a = group[a]
        while group[b] != b:
            group[b] = group[group[b]]
            b = group[b]
        if height[a] > height[b]:
            a, b = b, a
        group[a] = b
        ended.append(a)
    return np.array(ended, dtype=np.int64)


def _lowest_around(height: np.ndarray, edges: RankedEdges) -> np.ndarray:
    """The lowest height (n,) of the piece of the surface to which each vertex belongs."""
    piece = connected_parts(len(height), edges.low, edges.high)
    lowest = np.full(piece.max(initial=-1) + 1, np.inf)
    np.minimum.at(lowest, piece, height)
    return lowest[piece]
