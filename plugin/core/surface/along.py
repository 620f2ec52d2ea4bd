"""Lay lines on a surface: a vertex wherever they meet an edge of a triangle, so that heights are exact all along.

A line keeps its own vertices and its place in plan. Each segment is cut where it crosses an edge, where it runs
through a vertex, at the ends of edges it runs along, and where it passes a vertex of the rim. The triangle of the
piece between two cuts is known from the edge crossed, if its middle is in that triangle; else the triangle under its
middle is looked up.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Iterator, List, NamedTuple, Sequence, Tuple

import numpy as np

from ..progress import Progress, silent
from .cells import candidate_pairs
from .locate import RIM, covers, heights_in, locate
from .tin import Tin

#: Closer than this (m) counts as one place: a thousandth of the plan grid, and a hundred times the rounding of
#: coordinates of millions of metres.
SAME_PLACE = 1e-7

_MOST_CELLS = 2_000_000  # cells that all lines together may pass when their meetings with edges are sought
_UNKNOWN = -2  # triangle of a piece that has to be looked up


@dataclass(frozen=True)
class Gap:
    """A part of a line that is outside the surface.

    ``line``: number of the line. ``start``, ``end``: distance from the line's beginning in plan, metres.
    ``start_xy``, ``end_xy``: (2,) float64 easting and northing.
    """

    line: int
    start: float
    end: float
    start_xy: np.ndarray
    end_xy: np.ndarray


@dataclass(frozen=True)
class LaidLines:
    """Lines on a surface, in k parts (several for a line that leaves the surface).

    ``xyz``: (p, 3) float64 easting, northing, height, metres in the CRS. ``distance``: (p,) float64 plan metres from
    the beginning of the given line. Part i is ``xyz[start[i]:start[i + 1]]``; ``start``: (k + 1,) int64.
    ``line``: (k,) int64 number of the given line of each part. ``gaps``: what is outside, in order.
    """

    xyz: np.ndarray
    distance: np.ndarray
    start: np.ndarray
    line: np.ndarray
    gaps: Tuple[Gap, ...]

    def __len__(self) -> int:
        return len(self.line)

    def part(self, i: int) -> np.ndarray:
        """Coordinates (k, 3) of part i."""
        return self.xyz[self.start[i] : self.start[i + 1]]

    def __iter__(self) -> Iterator[np.ndarray]:
        return (self.part(i) for i in range(len(self)))


@dataclass(frozen=True)
class _Segments:
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
class _Cuts:
    """q places where segments are cut.

    ``segment``: (q,); ``along``: (q,) metres from its beginning; ``height``: (q,), nan where not yet known;
    ``before``, ``after``: (q,) triangle the segment leaves and enters there: -1 outside, ``_UNKNOWN`` where
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
    def plain(segment: np.ndarray, along: np.ndarray, height: np.ndarray, own: bool, corner: bool) -> _Cuts:
        unknown = np.full(len(segment), _UNKNOWN, np.int64)
        flags = (np.full(len(segment), flag) for flag in (own, corner))
        return _Cuts(segment, along, height, unknown, unknown, *flags)

    @staticmethod
    def joined(parts: Sequence[_Cuts]) -> _Cuts:
        return _Cuts(*(np.concatenate([vars(part)[name] for part in parts]) for name in vars(parts[0])))


@dataclass(frozen=True)
class _Runs:
    """r pieces of segments that run along an edge: numbers of the ``first`` and ``last`` cut, and a ``triangle``."""

    first: np.ndarray
    last: np.ndarray
    triangle: np.ndarray


@dataclass(frozen=True)
class _Chain:
    """The cuts in order along the lines, one for each place; piece i runs from place i to place i + 1.

    ``xy``: (g, 2) metres from the TIN's origin; ``distance``: (g,); ``line``: (g,); ``height``: (g,), nan where not
    known; ``triangle``: (g,) of the piece that begins there, -1 outside, ``_UNKNOWN``; the last place of a line
    begins no piece.
    """

    xy: np.ndarray
    distance: np.ndarray
    line: np.ndarray
    height: np.ndarray
    triangle: np.ndarray

    @property
    def pieces(self) -> np.ndarray:
        """Numbers of the places that begin a piece."""
        return np.flatnonzero(self.line[:-1] == self.line[1:])


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


def lay_line(tin: Tin, xy: np.ndarray) -> LaidLines:
    """Lay one line (k, 2) in metres of the CRS on the surface; see ``lay_lines``."""
    return lay_lines(tin, [xy])


def lay_lines(tin: Tin, lines: Sequence[np.ndarray], progress: Progress = silent) -> LaidLines:
    """Lay lines, each (k, 2) in metres of the CRS, on the surface.

    Vertices are added at every edge crossed; no two neighbouring vertices of a part are closer than
    ``SAME_PLACE`` in plan. Parts outside the surface (also over its holes) are left out and reported
    as gaps. A line along the rim, or as near to it as ``locate.RIM``, is on the surface. A line of fewer than two
    different places gives nothing.
    Raises ValueError for coordinates that are not finite.
    """
    segments = _segments(lines, tin.origin)
    if len(segments.line) == 0:
        return LaidLines(np.empty((0, 3)), np.empty(0), np.zeros(1, np.int64), np.empty(0, np.int64), ())
    near = _near(tin, segments)
    progress(0.2, "lines")
    cuts, runs = _cut(near, segments)
    progress(0.7, "lines")
    chain = _looked_up(near, _chained(segments, cuts, runs))
    laid = _parts(chain, tin.origin)
    progress(1.0, "lines")
    return laid


def _segments(lines: Sequence[np.ndarray], origin: np.ndarray) -> _Segments:
    """All segments of nonzero length of all lines."""
    plan = [np.asarray(line, float).reshape(len(line), -1)[:, :2] for line in lines]
    if not plan:
        return _Segments(np.empty((0, 2)), np.empty((0, 2)), np.empty(0, np.int64), np.empty(0))
    count = np.array([len(line) for line in plan])
    xy, of = np.concatenate(plan) - origin, np.repeat(np.arange(len(plan)), count)
    if not np.all(np.isfinite(xy)):
        raise ValueError("lines to lay on a surface need finite coordinates")
    step = np.hypot(*np.diff(xy, axis=0).T) * (of[:-1] == of[1:])
    total = np.append(0.0, np.cumsum(step))
    begin = (np.cumsum(count) - count).clip(max=max(0, len(xy) - 1))
    some = np.flatnonzero(step > 0)
    return _Segments(xy[some], xy[some + 1], of[some], total[some] - total[begin][of[some]])


def _near(tin: Tin, segments: _Segments) -> Tin:
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


def _cut(tin: Tin, segments: _Segments) -> Tuple[_Cuts, _Runs]:
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
    return _Cuts.joined([*parts, along_edges]), runs


def _edges(tin: Tin) -> _Edges:
    triangle, side = np.nonzero((tin.neighbours < 0) | (tin.neighbours > np.arange(len(tin.triangles))[:, None]))
    ends = tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]
    return _Edges(*ends, triangle, tin.neighbours[triangle, side].astype(np.int64))


def _meetings(tin: Tin, segments: _Segments, edges: _Edges) -> Tuple[np.ndarray, np.ndarray]:
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


def _offsets(segments: _Segments, segment: np.ndarray, vertices: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Distance of each vertex to the left of its segment's line, and along it from the beginning, metres."""
    start = segments.a[segment]
    along = (segments.b[segment] - start) / segments.length[segment][:, None]
    to = vertices[:, :2] - start
    return along[:, 0] * to[:, 1] - along[:, 1] * to[:, 0], along[:, 0] * to[:, 0] + along[:, 1] * to[:, 1]


def _within(along: np.ndarray, length: np.ndarray) -> np.ndarray:
    mask: np.ndarray = (along >= -SAME_PLACE) & (along <= length + SAME_PLACE)
    return mask


def _own_vertices(segments: _Segments) -> List[_Cuts]:
    number, unknown = np.arange(len(segments.line)), np.full(len(segments.line), np.nan)
    return [_Cuts.plain(number, along, unknown, True, False) for along in (np.zeros(len(number)), segments.length)]


def _at_vertices(tin: Tin, segments: _Segments, segment: np.ndarray, vertex: np.ndarray, along: np.ndarray) -> _Cuts:
    along = np.minimum(np.maximum(along, 0), segments.length[segment])
    return _Cuts.plain(segment, along, tin.vertices[vertex, 2], False, True)


def _at_edges(tin: Tin, segments: _Segments, pairs: _Pairs) -> _Cuts:
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
    before[along <= SAME_PLACE] = _UNKNOWN  # there the segment before counts, and it comes from elsewhere
    after[along >= length - SAME_PLACE] = _UNKNOWN
    no = np.zeros(len(some), bool)
    return _Cuts(segment, along, z0 + share * (z1 - z0), before, after, no, no)


def _beside_rim(segments: _Segments, pairs: _Pairs) -> List[_Cuts]:
    """Cuts where segments pass vertices of the rim; ``pairs``: those with its edges.

    Within twice ``RIM``: then a piece outside whose middle is within ``RIM`` of the rim is beside one edge only.
    """
    segment, length = pairs.segment, segments.length[pairs.segment]
    found = []
    for left, along in ((pairs.left_a, pairs.along_a), (pairs.left_b, pairs.along_b)):
        passed = (np.abs(left) <= 2 * RIM) & _within(along, length)
        at = np.clip(along[passed], 0, length[passed])
        found.append(_Cuts.plain(segment[passed], at, np.full(len(at), np.nan), False, False))
    return found


def _along_edges(tin: Tin, segments: _Segments, pairs: _Pairs, number: int) -> Tuple[_Cuts, _Runs]:
    """Cuts at both ends of what segments share with edges they run along; ``number``: of the first of these cuts."""
    begin = np.maximum(np.minimum(pairs.along_a, pairs.along_b), 0)
    end = np.minimum(np.maximum(pairs.along_a, pairs.along_b), segments.length[pairs.segment])
    some = end - begin > SAME_PLACE
    segment, edges, _, _, along_a, along_b = pairs.take(some)
    begin, end = begin[some], end[some]
    z0, z1 = tin.vertices[edges.a, 2], tin.vertices[edges.b, 2]
    cuts = [
        _Cuts.plain(segment, along, z0 + (along - along_a) / (along_b - along_a) * (z1 - z0), False, False)
        for along in (begin, end)
    ]
    first = number + np.arange(len(segment))
    return _Cuts.joined(cuts), _Runs(first, first + len(segment), np.maximum(edges.left, edges.right))


def _chained(segments: _Segments, cuts: _Cuts, runs: _Runs) -> _Chain:
    """Order the cuts along the lines and make one of those at the same place."""
    distance, line = segments.at[cuts.segment] + cuts.along, segments.line[cuts.segment]
    order = np.lexsort((cuts.segment, distance, line))
    new = (np.diff(line[order]) != 0) | (np.diff(distance[order]) > SAME_PLACE)
    group = np.empty(len(order), np.int64)
    group[order] = np.append(0, np.cumsum(new))
    count = int(group.max()) + 1
    chosen = _first_of(group, ~cuts.own)  # a line's own vertex keeps its place
    named = _first_of(group, np.isnan(cuts.height) * 2 + ~cuts.corner)
    cornered = np.bincount(group, cuts.corner, count) > 0
    after, before = (_only(group, side, count, cornered) for side in (cuts.after, cuts.before))
    triangle = np.where(after == _UNKNOWN, np.append(before[1:], _UNKNOWN), after)
    pieces = group[runs.last] - group[runs.first]
    covered = np.repeat(group[runs.first], pieces) + np.arange(int(pieces.sum()))
    triangle[covered - np.repeat(np.cumsum(pieces) - pieces, pieces)] = np.repeat(runs.triangle, pieces)
    xy = segments.place(cuts.segment[chosen], cuts.along[chosen])
    return _Chain(xy, distance[chosen], line[chosen], cuts.height[named], triangle)


def _first_of(group: np.ndarray, rank: np.ndarray) -> np.ndarray:
    """Of each group the member with the least ``rank``."""
    order = np.lexsort((rank, group))
    first: np.ndarray = order[np.append(True, np.diff(group[order]) != 0)]
    return first


def _only(group: np.ndarray, value: np.ndarray, count: int, barred: np.ndarray) -> np.ndarray:
    """The value of each group where exactly one is known and the group isn't ``barred``; else ``_UNKNOWN``."""
    known = np.flatnonzero(value != _UNKNOWN)
    result = np.full(count, _UNKNOWN, np.int64)
    result[group[known]] = value[known]
    result[(np.bincount(group[known], minlength=count) != 1) | barred] = _UNKNOWN
    return result


def _looked_up(tin: Tin, chain: _Chain) -> _Chain:
    """``chain`` with the triangle of every piece and the height of every place on the surface."""
    pieces = chain.pieces
    triangle, height = chain.triangle.copy(), chain.height.copy()
    if len(tin.triangles) == 0:
        triangle[pieces] = -1
        return replace(chain, triangle=triangle)
    middle = (chain.xy[pieces] + chain.xy[pieces + 1]) / 2
    known = triangle[pieces] >= 0
    known[known] = covers(tin, triangle[pieces[known]], middle[known])
    triangle[pieces[~known]] = locate(tin, middle[~known] + tin.origin)
    inside = pieces[triangle[pieces] >= 0]
    bare = np.unique(np.concatenate([inside, inside + 1]))
    bare = bare[np.isnan(height[bare])]
    own = np.full(len(height), -1, np.int64)
    own[inside + 1], own[inside] = triangle[inside], triangle[inside]
    there = own[bare].copy()
    off = np.flatnonzero(~covers(tin, there, chain.xy[bare]))
    found = locate(tin, chain.xy[bare[off]] + tin.origin)
    there[off] = np.where(found >= 0, found, there[off])
    height[bare] = heights_in(tin, there, chain.xy[bare])
    return replace(chain, triangle=triangle, height=height)


def _parts(chain: _Chain, origin: np.ndarray) -> LaidLines:
    pieces = chain.pieces
    inside = chain.triangle[pieces] >= 0
    change = np.append(True, (np.diff(pieces) != 1) | (inside[1:] != inside[:-1]))
    first = pieces[change]
    last = np.append(pieces[:-1][change[1:]], pieces[-1]) + 1
    kept = inside[change]
    begin, count = first[kept], last[kept] - first[kept] + 1
    start = np.append(0, np.cumsum(count))
    place = np.arange(start[-1]) + np.repeat(begin - start[:-1], count)
    xy = chain.xy + origin
    gaps = tuple(
        Gap(int(chain.line[i]), float(chain.distance[i]), float(chain.distance[j]), xy[i], xy[j])
        for i, j in zip(first[~kept], last[~kept])
    )
    xyz = np.column_stack([xy, chain.height])[place]
    return LaidLines(xyz, chain.distance[place], start, chain.line[begin], gaps)
