"""Where lines that are laid on a surface are cut: at the edges and vertices of triangles that they meet."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, NamedTuple, Sequence, Tuple

import numpy as np

from .cells import candidate_pairs
from .locate import RIM
from .tin import Tin

#: Closer than this (m) counts as one place of a line: a thousandth of the plan grid, and a hundred times the rounding
#: of coordinates of millions of metres. It settles which places of a result are one; in which triangle a piece lies is
#: decided exactly.
SAME_PLACE = 1e-7

UNKNOWN = -2  #: triangle of a piece that has to be looked up
_MOST_CELLS = 2_000_000  # cells that all lines together may pass when their meetings with edges are sought


@dataclass(frozen=True)
class Segments:
    """s segments: ``a``, ``b`` (s, 2) ends, metres from the TIN's origin; ``line`` (s,); ``at`` (s,) distance of a."""

    a: np.ndarray
    b: np.ndarray
    line: np.ndarray
    at: np.ndarray

    @property
    def length(self) -> np.ndarray:
        length: np.ndarray = np.hypot(*(self.b - self.a).T)
        return length

    def place(self, segment: np.ndarray, along: np.ndarray) -> np.ndarray:
        """Places (q, 2) at a distance ``along`` from the beginning of ``segment``."""
        share = (along / self.length[segment])[:, None]
        return self.a[segment] + share * (self.b[segment] - self.a[segment])


@dataclass(frozen=True)
class Cuts:
    """q places where segments are cut.

    ``segment``: (q,); ``along``: (q,) metres from its beginning; ``height``: (q,), nan where not yet known;
    ``before``, ``after``: (q,) triangle the segment leaves and enters there: -1 outside, ``UNKNOWN`` where
    not known. ``own``: (q,) bool, a vertex of the line; ``corner``: (q,) bool, a vertex of the surface.
    """

    segment: np.ndarray
    along: np.ndarray
    height: np.ndarray
    before: np.ndarray
    after: np.ndarray
    own: np.ndarray
    corner: np.ndarray

    @staticmethod
    def plain(segment: np.ndarray, along: np.ndarray, height: np.ndarray, own: bool, corner: bool) -> Cuts:
        unknown = np.full(len(segment), UNKNOWN, np.int64)
        flags = (np.full(len(segment), flag) for flag in (own, corner))
        return Cuts(segment, along, height, unknown, unknown, *flags)

    @staticmethod
    def joined(parts: Sequence[Cuts]) -> Cuts:
        return Cuts(*(np.concatenate([vars(part)[name] for part in parts]) for name in vars(parts[0])))


@dataclass(frozen=True)
class Runs:
    """r pieces of segments that run along an edge: numbers of the ``first`` and ``last`` cut, and a ``triangle``."""

    first: np.ndarray
    last: np.ndarray
    triangle: np.ndarray


@dataclass(frozen=True)
class _Edges:
    """Edges of the TIN once each: ``a``, ``b`` (e,) vertices, ``left``, ``right`` (e,) triangles, -1 for none."""

    a: np.ndarray
    b: np.ndarray
    left: np.ndarray
    right: np.ndarray

    def take(self, which: np.ndarray) -> _Edges:
        return _Edges(self.a[which], self.b[which], self.left[which], self.right[which])


class _Pairs(NamedTuple):
    """Segments and edges that meet: (p,) numbers of segments, their edges, and of both ends of each edge the distance
    to the left of the segment's line and along it, metres."""

    segment: np.ndarray
    edges: _Edges
    left_a: np.ndarray
    left_b: np.ndarray
    along_a: np.ndarray
    along_b: np.ndarray

    def take(self, which: np.ndarray) -> _Pairs:
        segment, edges, *rest = self
        return _Pairs(segment[which], edges.take(which), *(each[which] for each in rest))


def plan_segments(lines: Sequence[np.ndarray], origin: np.ndarray) -> Segments:
    """All segments of nonzero length of all lines."""
    plan = [np.asarray(line, float).reshape(len(line), -1)[:, :2] for line in lines]
    if not plan:
        return Segments(np.empty((0, 2)), np.empty((0, 2)), np.empty(0, np.int64), np.empty(0))
    count = np.array([len(line) for line in plan])
    xy, of = np.concatenate(plan) - origin, np.repeat(np.arange(len(plan)), count)
    if not np.all(np.isfinite(xy)):
        raise ValueError("lines to lay on a surface need finite coordinates")
    step = np.hypot(*np.diff(xy, axis=0).T) * (of[:-1] == of[1:])
    total = np.append(0.0, np.cumsum(step))
    begin = (np.cumsum(count) - count).clip(max=max(0, len(xy) - 1))
    some = np.flatnonzero(step > 0)
    return Segments(xy[some], xy[some + 1], of[some], total[some] - total[begin][of[some]])


def near_part(tin: Tin, segments: Segments) -> Tin:
    """The triangles of ``tin`` that may meet the extent of all segments."""
    ends = np.concatenate([segments.a, segments.b])
    low, high = ends.min(axis=0) - 3 * RIM, ends.max(axis=0) + 3 * RIM
    meets = np.ones(len(tin.triangles), bool)
    for axis in (0, 1):
        value = np.ascontiguousarray(tin.vertices[:, axis])
        below, above = np.take(value < low[axis], tin.triangles), np.take(value > high[axis], tin.triangles)
        meets &= ~(np.all(below, axis=1) | np.all(above, axis=1))
    keep = np.flatnonzero(meets)
    number = np.full(len(tin.triangles) + 1, -1, np.int32)  # the last entry answers for "no neighbour"
    number[keep] = np.arange(len(keep), dtype=np.int32)
    neighbours = number[tin.neighbours[keep]]
    return replace(tin, triangles=tin.triangles[keep], neighbours=neighbours, edge_kind=tin.edge_kind[keep])


def cut_segments(tin: Tin, segments: Segments) -> Tuple[Cuts, Runs]:
    """Every place where a segment begins, ends, meets an edge or passes a vertex of the rim; runs along edges."""
    edges = _edges(tin)
    segment, edge = _meetings(tin, segments, edges)
    edges = edges.take(edge)
    (left_a, along_a), (left_b, along_b) = (_offsets(segments, segment, tin.vertices[v]) for v in (edges.a, edges.b))
    pairs = _Pairs(segment, edges, left_a, left_b, along_a, along_b)
    on_a, on_b = np.abs(left_a) <= SAME_PLACE, np.abs(left_b) <= SAME_PLACE
    parts = _own_vertices(segments)
    for vertex, on, along in ((edges.a, on_a, along_a), (edges.b, on_b, along_b)):
        inside = on & _within(along, segments.length[segment])
        parts.append(_at_vertices(tin, segments, segment[inside], vertex[inside], along[inside]))
    parts.append(_at_edges(tin, segments, pairs.take(~on_a & ~on_b & (left_a * left_b < 0))))
    parts += _beside_rim(segments, pairs.take(edges.right < 0))
    along_edges, runs = _along_edges(tin, segments, pairs.take(on_a & on_b), sum(len(p.own) for p in parts))
    return Cuts.joined([*parts, along_edges]), runs


def _edges(tin: Tin) -> _Edges:
    triangle, side = np.nonzero((tin.neighbours < 0) | (tin.neighbours > np.arange(len(tin.triangles))[:, None]))
    ends = tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]
    return _Edges(*ends, triangle, tin.neighbours[triangle, side].astype(np.int64))


def _meetings(tin: Tin, segments: Segments, edges: _Edges) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs (segment, edge) that meet or nearly do, each once; edges of the rim with the strip beside them."""
    if len(edges.a) == 0:
        return np.empty(0, np.int64), np.empty(0, np.int64)
    low = np.minimum(np.minimum(segments.a, segments.b).min(axis=0), tin.vertices[:, :2].min(axis=0)) - 3 * RIM
    a, b = segments.a - low, segments.b - low
    p, q = tin.vertices[edges.a, :2] - low, tin.vertices[edges.b, :2] - low
    length = np.hypot(*(q - p).T)
    cell = max(2 * float(np.median(length)), float(segments.length.sum()) / _MOST_CELLS, 1e-3)
    along = (q - p) * (2 * RIM / length)[:, None]
    out = np.column_stack([along[:, 1], -along[:, 0]])
    lines = np.stack([a, b], axis=1)
    found = [np.empty(0, np.int64)]
    for rim, figure in ((False, (p, q)), (True, (p - along, q + along, q + along + out, p - along + out))):
        some = np.flatnonzero((edges.right < 0) == rim)
        corner = np.stack(figure, axis=1)[some]
        for i, j in candidate_pairs(lines[:, :, 0], lines[:, :, 1], corner[:, :, 0], corner[:, :, 1], cell):
            j = some[j]
            left = [_offsets(segments, i, tin.vertices[v[j]])[0] for v in (edges.a, edges.b)]
            meets = (np.minimum(*left) <= 2 * RIM) & (np.maximum(*left) >= -2 * RIM)
            found.append(np.unique(i[meets] * len(edges.a) + j[meets]))
    pairs = np.unique(np.concatenate(found))
    return pairs // len(edges.a), pairs % len(edges.a)


def _offsets(segments: Segments, segment: np.ndarray, vertices: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Distance of each vertex to the left of its segment's line, and along it from the beginning, metres."""
    start = segments.a[segment]
    along = (segments.b[segment] - start) / segments.length[segment][:, None]
    to = vertices[:, :2] - start
    return along[:, 0] * to[:, 1] - along[:, 1] * to[:, 0], along[:, 0] * to[:, 0] + along[:, 1] * to[:, 1]


def _within(along: np.ndarray, length: np.ndarray) -> np.ndarray:
    mask: np.ndarray = (along >= -SAME_PLACE) & (along <= length + SAME_PLACE)
    return mask


def _own_vertices(segments: Segments) -> List[Cuts]:
    number, unknown = np.arange(len(segments.line)), np.full(len(segments.line), np.nan)
    return [Cuts.plain(number, along, unknown, True, False) for along in (np.zeros(len(number)), segments.length)]


def _at_vertices(tin: Tin, segments: Segments, segment: np.ndarray, vertex: np.ndarray, along: np.ndarray) -> Cuts:
    along = np.minimum(np.maximum(along, 0), segments.length[segment])
    return Cuts.plain(segment, along, tin.vertices[vertex, 2], False, True)


def _at_edges(tin: Tin, segments: Segments, pairs: _Pairs) -> Cuts:
    """Cuts where segments cross the inside of edges; ``pairs`` are those that cross."""
    share = pairs.left_a / (pairs.left_a - pairs.left_b)
    along = pairs.along_a + share * (pairs.along_b - pairs.along_a)
    some = np.flatnonzero(_within(along, segments.length[pairs.segment]))
    pairs, share = pairs.take(some), share[some]
    segment, edges, from_right = pairs.segment, pairs.edges, pairs.left_a < 0
    length = segments.length[segment]
    along = np.minimum(np.maximum(along[some], 0), length)
    z0, z1 = tin.vertices[edges.a, 2], tin.vertices[edges.b, 2]
    # An edge that goes from the segment's right to its left has the triangle on its own left behind it.
    before, after = np.where(from_right, edges.left, edges.right), np.where(from_right, edges.right, edges.left)
    before[along <= SAME_PLACE] = UNKNOWN  # there the segment before counts, and it comes from elsewhere
    after[along >= length - SAME_PLACE] = UNKNOWN
    no = np.zeros(len(some), bool)
    return Cuts(segment, along, z0 + share * (z1 - z0), before, after, no, no)


def _beside_rim(segments: Segments, pairs: _Pairs) -> List[Cuts]:
    """Cuts where segments pass vertices of the rim; ``pairs``: those with its edges.

    Within twice ``RIM``: then a piece outside whose middle is within ``RIM`` of the rim is beside one edge only.
    """
    segment, length = pairs.segment, segments.length[pairs.segment]
    found = []
    for left, along in ((pairs.left_a, pairs.along_a), (pairs.left_b, pairs.along_b)):
        passed = (np.abs(left) <= 2 * RIM) & _within(along, length)
        at = np.clip(along[passed], 0, length[passed])
        found.append(Cuts.plain(segment[passed], at, np.full(len(at), np.nan), False, False))
    return found


def _along_edges(tin: Tin, segments: Segments, pairs: _Pairs, number: int) -> Tuple[Cuts, Runs]:
    """Cuts at both ends of what segments share with edges they run along; ``number``: of the first of these cuts."""
    begin = np.maximum(np.minimum(pairs.along_a, pairs.along_b), 0)
    end = np.minimum(np.maximum(pairs.along_a, pairs.along_b), segments.length[pairs.segment])
    some = end - begin > SAME_PLACE
    segment, edges, _, _, along_a, along_b = pairs.take(some)
    begin, end = begin[some], end[some]
    z0, z1 = tin.vertices[edges.a, 2], tin.vertices[edges.b, 2]
    cuts = [
        Cuts.plain(segment, along, z0 + (along - along_a) / (along_b - along_a) * (z1 - z0), False, False)
        for along in (begin, end)
    ]
    first = number + np.arange(len(segment))
    return Cuts.joined(cuts), Runs(first, first + len(segment), np.maximum(edges.left, edges.right))
