"""Polygons of the parts of a surface that share a label.

The rings follow the edges between labels with the part on their left. A ring that meets itself at a
vertex is split there, so that rings are simple, and holes touch their outer ring at that point at most (OGC
06-103r4, Simple Feature Access: a valid polygon's interior is connected, its rings don't cross).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Tuple

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from .mesh import following
from .tin import Tin


@dataclass(frozen=True)
class LabelledPolygon:
    """A connected part of the surface: ``label``, and its closed rings (k, 2) in the CRS.

    The first ring is the outer one, counter-clockwise; the others are holes, clockwise. ``plan_area``: square metres.
    """

    label: int
    rings: Tuple[np.ndarray, ...]
    plan_area: float


def dissolve(tin: Tin, label: np.ndarray) -> Tuple[LabelledPolygon, ...]:
    """One polygon for each connected (across edges) part of triangles with equal ``label`` (m,), largest first."""
    vertex = tin.triangles.ravel()
    twin = _twins(tin)
    part = _parts(twin, label)
    half_edges = np.arange(len(vertex))
    rim = half_edges[(twin < 0) | (part[half_edges // 3] != part[twin // 3])]
    chains = _chains(_next_on_rim(rim, twin), rim)
    xy = tin.vertices[:, :2]
    outer: Dict[int, np.ndarray] = {}
    holes: Dict[int, List[np.ndarray]] = {}
    areas: Dict[int, float] = {}
    for chain in chains:
        for ring in _simple_rings(vertex[chain]):
            area, number = _area(xy[ring]), int(part[chain[0] // 3])
            areas[number] = areas.get(number, 0.0) + area
            closed = xy[np.append(ring, ring[0])] + tin.origin
            if area > 0:
                outer[number] = closed
            else:
                holes.setdefault(number, []).append(closed)
    first = np.unique(part, return_index=True)[1]
    polygons = [LabelledPolygon(int(label[first[i]]), (outer[i], *holes.get(i, [])), areas[i]) for i in sorted(outer)]
    return tuple(sorted(polygons, key=lambda polygon: -polygon.plan_area))


def _twins(tin: Tin) -> np.ndarray:
    """The opposite half-edge (3 m,) of each, -1 at the rim."""
    number = np.arange(tin.triangles.size)
    beyond = tin.neighbours.ravel()
    start = tin.triangles.ravel()
    end = start[following(number)]
    twin = np.full(len(number), -1, np.int64)
    for side in range(3):
        other = 3 * beyond.astype(np.int64) + side
        same = (beyond >= 0) & (start[other] == end) & (end[other] == start)
        twin[same] = other[same]
    return twin


def _parts(twin: np.ndarray, label: np.ndarray) -> np.ndarray:
    """Number (m,) of the connected part of equal label that each triangle is in."""
    m = len(label)
    inner = np.flatnonzero(twin >= 0)
    inner = inner[label[inner // 3] == label[twin[inner] // 3]]
    graph = coo_matrix((np.ones(len(inner), bool), (inner // 3, twin[inner] // 3)), shape=(m, m))
    part: np.ndarray = connected_components(graph, directed=False)[1]
    return part


def _next_on_rim(rim: np.ndarray, twin: np.ndarray) -> np.ndarray:
    """For each rim half-edge the one that goes on from its end, turning through the triangles of its part."""
    on_rim = np.zeros(len(twin), bool)
    on_rim[rim] = True
    after = following(rim)
    while True:
        turning = np.flatnonzero(~on_rim[after])
        if len(turning) == 0:
            return after
        after[turning] = following(twin[after[turning]])


def _chains(after: np.ndarray, rim: np.ndarray) -> List[np.ndarray]:
    """The cycles of half-edges that ``after`` links, each from its least half-edge."""
    if len(rim) == 0:
        return []
    step = np.searchsorted(rim, after)  # positions in `rim`, which is sorted
    lead, jump = np.arange(len(rim)), step
    rounds = max(1, len(rim).bit_length())
    for _ in range(rounds):  # the least position on the cycle, looking twice as far each time
        lead, jump = np.minimum(lead, lead[jump]), jump[jump]
    rest = np.where(lead == np.arange(len(rim)), 0, 1)  # steps to go until the leader is met
    jump = np.where(rest == 0, np.arange(len(rim)), step)
    for _ in range(rounds):
        rest, jump = rest + rest[jump], jump[jump]
    order = np.lexsort((-np.where(rest == 0, len(rim) + 1, rest), lead))
    return np.split(rim[order], np.flatnonzero(np.diff(lead[order])) + 1)


def _simple_rings(ring: np.ndarray) -> List[np.ndarray]:
    """Split a ring of vertices (k,) where it meets itself."""
    if len(np.unique(ring)) == len(ring):
        return [ring]
    found, path, place = [], [], {}  # type: List[np.ndarray], List[int], Dict[int, int]
    for v in ring.tolist():
        if v in place:
            start = place[v]
            found.append(np.array(path[start:]))
            for gone in path[start:]:
                del place[gone]
            del path[start:]
        place[v] = len(path)
        path.append(v)
    return [*found, np.array(path)]


def _area(xy: np.ndarray) -> float:
    """Signed area of a ring (k, 2), counted from its first corner to keep the digits."""
    x, y = (xy - xy[0]).T
    return 0.5 * float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y))
