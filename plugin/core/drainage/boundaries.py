"""Catchments as polygons, and the watersheds between them as lines.

Both follow the exact strips of :mod:`.fates`. On each edge of the TIN the ends of the strips of both sides are put in
order once, so that neighbours share their boundary point by point.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Tuple

import numpy as np

from ..surface.cells import runs
from ..surface.mesh import following
from .fates import Fates

_SAME = 1e-9  # share of an edge within which two ends of strips are one place


@dataclass(frozen=True)
class Outline:
    """``label`` of a part and its closed rings (q, 2), metres from the TIN's origin: counter-clockwise outer rings and
    clockwise holes, in no order."""

    label: int
    rings: Tuple[np.ndarray, ...]


@dataclass(frozen=True)
class _Sides:
    """s pieces of the boundary of parts with the part on their left: from node ``a`` to ``b`` (s,), ``label`` (s,) of
    the part and ``across`` (s,), -1 off the surface. ``xyz``: (nodes, 3)."""

    a: np.ndarray
    b: np.ndarray
    label: np.ndarray
    across: np.ndarray
    xyz: np.ndarray


def outlines(fates: Fates, label: np.ndarray) -> Tuple[Outline, ...]:
    """The outline of all strips with the same ``label`` (p,) int, a part for each label, in their order."""
    sides = _sides(fates, np.asarray(label, np.int64))
    rings: Dict[int, List[np.ndarray]] = {int(name): [] for name in np.unique(label)}
    for name, ring in _rings(sides):
        rings[name].append(sides.xyz[ring, :2])
    return tuple(Outline(name, tuple(found)) for name, found in rings.items())


def watersheds(fates: Fates, label: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The boundary between parts of different ``label`` (p,), not negative: labels of both sides (s,), (s,), the
    greater one second, and segments (s, 2, 3), metres from the TIN's origin, and heights."""
    sides = _sides(fates, np.asarray(label, np.int64))
    once = np.flatnonzero(sides.across > sides.label)
    ends = np.stack([sides.xyz[sides.a[once]], sides.xyz[sides.b[once]]], axis=1)
    return sides.label[once], sides.across[once], ends


@dataclass(frozen=True)
class _Marks:
    """Places on edges of the TIN: ``edge`` (k,) its lower half-edge, ``share`` (k,) along it; ``node`` (k,)."""

    edge: np.ndarray
    share: np.ndarray
    node: np.ndarray


def _sides(fates: Fates, label: np.ndarray) -> _Sides:
    inner = np.flatnonzero((fates.triangle[1:] == fates.triangle[:-1]) & (label[1:] != label[:-1]))
    half, share = _breaks(fates, inner)
    edge, along = _canonical(fates, half.ravel(), share.ravel())
    marks, node, xyz = _nodes(fates, edge, along)
    chords = node.reshape(2, -1)  # where the boundary between two strips leaves and where it enters
    low, high = label[inner], label[inner + 1]
    parts = [
        (chords[0], chords[1], low, high),  # lower values are on the right of the way down
        (chords[1], chords[0], high, low),
        _along_edges(fates, label, marks),
    ]
    a, b, own, across = (np.concatenate([part[i] for part in parts]) for i in range(4))
    real = a != b
    return _Sides(a[real], b[real], own[real], across[real], xyz)


def _breaks(fates: Fates, strip: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Half-edges (2, k) and shares (2, k) where the upper boundary of each ``strip`` (k,) meets its triangle.

    First where water leaves, then where it enters.
    """
    triangle, value = fates.triangle[strip], fates.high[strip]
    stream = fates.flow.stream[triangle]
    follow = stream[:, [1, 2, 0]]
    rows = np.arange(len(strip))
    half, share = [], []
    for rising in (True, False):
        low, high = (stream, follow) if rising else (follow, stream)
        off = np.where(high > low, np.maximum(low - value[:, None], value[:, None] - high), np.inf)
        side = np.argmin(off, axis=1)
        begin, end = stream[rows, side], follow[rows, side]
        half.append(3 * triangle + side)
        share.append(((value - begin) / (end - begin)).clip(0.0, 1.0))
    return np.stack(half), np.stack(share)


def _canonical(fates: Fates, half: np.ndarray, share: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The same places on the half-edge of lower number of both sides."""
    twin = fates.flow.twin[half]
    turn = (twin >= 0) & (twin < half)
    return np.where(turn, twin, half).astype(np.int64), np.where(turn, 1 - share, share)


def _nodes(fates: Fates, edge: np.ndarray, share: np.ndarray) -> Tuple[_Marks, np.ndarray, np.ndarray]:
    """Marks in order, the node (k,) of each place given and the places (nodes, 3): vertices first, then marks."""
    tin = fates.flow.tin
    n, vertex = len(tin.vertices), tin.triangles.ravel()
    order = np.lexsort((share, edge))
    edge_in, share_in = edge[order], share[order]
    new = np.append(True, (edge_in[1:] != edge_in[:-1]) | (share_in[1:] - share_in[:-1] > _SAME))[: len(order)]
    node = np.empty(len(order), np.int64)
    node[order] = n + np.cumsum(new) - 1
    edge_in, share_in = edge_in[new], share_in[new]
    start, end = vertex[edge_in], vertex[following(edge_in)]
    a, b = tin.vertices[start], tin.vertices[end]
    xyz = np.concatenate([tin.vertices, a + share_in[:, None] * (b - a)])
    at_start, at_end = share_in <= _SAME, share_in >= 1 - _SAME
    own = np.where(at_start, start, np.where(at_end, end, n + np.arange(len(edge_in))))
    inside = ~at_start & ~at_end
    marks = _Marks(edge_in[inside], share_in[inside], own[inside])
    return marks, own[node - n], xyz


def _along_edges(fates: Fates, label: np.ndarray, marks: _Marks) -> Tuple[np.ndarray, ...]:
    """Boundary along edges of the TIN: nodes a, b, the label on the left and the one across."""
    flow = fates.flow
    vertex = flow.tin.triangles.ravel()
    lower = np.flatnonzero((flow.twin < 0) | (flow.twin > np.arange(len(flow.twin))))
    many = fates.start[1:] - fates.start[:-1]
    first_label = label[fates.start[:-1]]
    twin = flow.twin[lower]
    plain = (many[lower // 3] == 1) & ((twin < 0) | (many[twin // 3] == 1))
    different = (twin < 0) | (first_label[lower // 3] != first_label[twin // 3])
    wanted = lower[~plain | different]
    # Every wanted edge is cut at its marks.
    number = np.searchsorted(marks.edge, wanted, "right") - np.searchsorted(marks.edge, wanted, "left")
    first = np.searchsorted(marks.edge, wanted, "left")
    pieces = number + 1
    of = np.repeat(np.arange(len(wanted)), pieces)
    place = runs(np.zeros_like(pieces), pieces)
    mark = first[of] + place
    node, share = np.append(marks.node, -1), np.append(marks.share, 1.0)
    last = place == number[of]
    edge = wanted[of]
    a = np.where(place == 0, vertex[edge], node[mark - 1])
    b = np.where(last, vertex[following(edge)], node[np.minimum(mark, len(marks.node))])
    begin = np.where(place == 0, 0.0, share[mark - 1])
    finish = np.where(last, 1.0, share[np.minimum(mark, len(marks.node))])
    middle = (begin + finish) / 2
    left = _label_at(fates, label, edge, middle)
    twin = flow.twin[edge].astype(np.int64)
    right = np.full(len(edge), -1, np.int64)
    some = np.flatnonzero(twin >= 0)
    right[some] = _label_at(fates, label, twin[some], 1 - middle[some])
    apart = left != right
    inner = apart & (right >= 0)
    parts = ((a[apart], b[apart], left[apart], right[apart]), (b[inner], a[inner], right[inner], left[inner]))
    return tuple(np.concatenate([part[i] for part in parts]) for i in range(4))


def _label_at(fates: Fates, label: np.ndarray, edge: np.ndarray, along: np.ndarray) -> np.ndarray:
    """Label (k,) of the strip at the share ``along`` of half-edges (k,), in their own triangle."""
    triangle, side = edge // 3, edge % 3
    begin, end = fates.flow.stream[triangle, side], fates.flow.stream[triangle, (side + 1) % 3]
    return label[strip_at(fates, triangle, begin + along * (end - begin))]


def strip_at(fates: Fates, triangle: np.ndarray, stream: np.ndarray) -> np.ndarray:
    """The strip (k,) of each ``triangle`` (k,) that holds a ``stream`` value (k,)."""
    row, last = fates.start[triangle].copy(), fates.start[triangle + 1] - 1
    while True:
        on = (row < last) & (fates.high[row] < stream)
        if not np.any(on):
            return row
        row[on] += 1


def _rings(sides: _Sides):  # type: ignore[no-untyped-def]
    """Closed rings of nodes with their labels; a ring that would touch itself is two."""
    order = np.lexsort((sides.a, sides.label))
    a, b, label = sides.a[order], sides.b[order], sides.label[order]
    width = np.int64(len(sides.xyz))
    key = label * width + a
    goes = label * width + b
    first, last = np.searchsorted(key, goes, "left"), np.searchsorted(key, goes, "right")
    after = first.copy()
    for i in np.flatnonzero(last - first > 1):
        after[i] = _sharpest_left(sides.xyz, a[i], b[i], b, first[i], last[i])
    step, start, name = after.tolist(), a.tolist(), label.tolist()
    left = [True] * len(step)
    for begin in range(len(step)):
        if not left[begin]:
            continue
        ring: List[int] = []
        place: Dict[int, int] = {}
        at = begin
        while left[at]:
            left[at] = False
            if start[at] in place:
                yield name[begin], _cut_off(ring, place, start[at])
            place[start[at]] = len(ring)
            ring.append(start[at])
            at = step[at]
        yield name[begin], [*ring, ring[0]]


def _cut_off(ring: List[int], place: Dict[int, int], node: int) -> List[int]:
    """The closed part of ``ring`` since it was at ``node`` before, taken out of it."""
    first = place[node]
    loop = ring[first:]
    for passed in loop:
        del place[passed]
    del ring[first:]
    return [*loop, node]


def _sharpest_left(xy: np.ndarray, start: int, at: int, b: np.ndarray, first: int, last: int) -> int:
    """Of the sides first..last that go on from node ``at`` the first one clockwise from the way back to ``start``."""
    back = xy[start] - xy[at]
    ways = xy[b[first:last]] - xy[at]
    turn = (np.arctan2(back[1], back[0]) - np.arctan2(ways[:, 1], ways[:, 0])) % (2 * np.pi)
    turn[turn <= 1e-12] = 2 * np.pi
    return int(first + np.argmin(turn))
