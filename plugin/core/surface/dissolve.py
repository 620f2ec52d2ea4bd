"""Polygons of the parts of a surface that share a label.

The rings follow the edges between labels with the part on their left. A ring that meets itself at a
vertex is split there, so that rings are simple, and holes touch their outer ring at that point at most (OGC
06-103r4, Simple Feature Access: a valid polygon's interior is connected, its rings don't cross).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Tuple

import numpy as np

from .mesh import following
from .parts import connected_parts
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
    if len(vertex) == 0:
        return ()
    twin = _twins(tin)
    part = _parts(twin, label)
    half_edges = np.arange(len(vertex))
    rim = half_edges[(twin < 0) | (part[half_edges // 3] != part[twin // 3])]
    chains, start = _chains(_next_on_rim(rim, twin), rim)
    rings, start, of = _simple(vertex[chains], start)
    number = part[chains[of] // 3]  # of the part of each ring
    area = _areas(tin.vertices[rings, :2], start)
    closed = np.insert(rings, start[1:], rings[start[:-1]])
    lines = np.split(tin.vertices[closed, :2] + tin.origin, (start + np.arange(len(start)))[1:-1])
    outer = {int(number[i]): lines[i] for i in np.flatnonzero(area > 0)}
    holes: Dict[int, List[np.ndarray]] = {}
    for i in np.flatnonzero(area < 0):
        holes.setdefault(int(number[i]), []).append(lines[i])
    total = np.bincount(number, area)
    first = np.unique(part, return_index=True)[1]
    polygons = [
        LabelledPolygon(int(label[first[i]]), (outer[i], *holes.get(i, [])), float(total[i])) for i in sorted(outer)
    ]
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
    inner = np.flatnonzero(twin >= 0)
    inner = inner[label[inner // 3] == label[twin[inner] // 3]]
    return connected_parts(len(label), inner // 3, twin[inner] // 3)


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


def _chains(after: np.ndarray, rim: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The cycles of half-edges that ``after`` links: half-edges in order, and where each cycle starts (c + 1,)."""
    step = np.searchsorted(rim, after)  # positions in `rim`, which is sorted
    own = np.arange(len(rim))
    lead, jump = own, step
    rounds = len(rim).bit_length()
    for _ in range(rounds):  # the least position on the cycle, looking twice as far each time
        lead, jump = np.minimum(lead, lead[jump]), jump[jump]
    rest = np.where(lead == own, 0, 1)  # steps to go until that position is met again
    jump = np.where(lead == own, own, step)
    for _ in range(rounds):
        rest, jump = rest + rest[jump], jump[jump]
    order = np.lexsort((-np.where(lead == own, len(rim) + 1, rest), lead))
    start = np.flatnonzero(np.diff(lead[order], prepend=-1))
    return rim[order], np.append(start, len(rim))


def _simple(vertex: np.ndarray, start: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Split rings ``vertex[start[i]:start[i + 1]]`` where they meet themselves.

    Returns vertices and starts of the simple rings, and for each the place in ``vertex`` of one of its ring's corners.
    """
    ring = np.repeat(np.arange(len(start) - 1), np.diff(start))
    order = np.lexsort((vertex, ring))
    twice = (np.diff(vertex[order]) == 0) & (np.diff(ring[order]) == 0)
    knotted = np.unique(ring[order[1:][twice]])
    whole = np.ones(len(start) - 1, bool)
    whole[knotted] = False
    rings, of = [vertex[whole[ring]]], [start[:-1][whole]]
    count = [np.diff(start)[whole]]
    for i in knotted:
        loops = _loops(vertex[start[i] : start[i + 1]].tolist())
        rings += [np.array(loop) for loop in loops]
        count.append(np.array([len(loop) for loop in loops]))
        of.append(np.full(len(loops), start[i]))
    ends = np.append(0, np.cumsum(np.concatenate(count)))
    return np.concatenate(rings), ends, np.concatenate(of)


def _loops(ring: List[int]) -> List[List[int]]:
    """Cut a loop off at every vertex that is met again."""
    found: List[List[int]] = []
    path: List[int] = []
    place: Dict[int, int] = {}
    for v in ring:
        if v in place:
            loop = path[place[v] :]
            found.append(loop)
            del path[place[v] :]
            for gone in loop:
                del place[gone]
        place[v] = len(path)
        path.append(v)
    return [*found, path]


def _areas(xy: np.ndarray, start: np.ndarray) -> np.ndarray:
    """Signed areas of rings of corners, counted from their first corners to keep the digits."""
    count = np.diff(start)
    x, y = (xy - np.repeat(xy[start[:-1]], count, axis=0)).T
    after = np.arange(1, len(x) + 1)
    after[start[1:] - 1] = start[:-1]
    area: np.ndarray = 0.5 * np.add.reduceat(x * y[after] - x[after] * y, start[:-1])
    return area
