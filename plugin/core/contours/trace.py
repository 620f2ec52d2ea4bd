"""Contours traced exactly on the TIN.

The rule: ground at exactly a level counts as above it (height >= level). So every triangle and
every level either miss each other or meet in one segment that enters over one edge and leaves over
another; a contour that touches a vertex of its own level passes through that vertex. Segments run
with the higher ground on their left, hence the segment that follows is the one of the same level in
the triangle across the exit edge, found by arithmetic alone.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.sparse import csr_matrix
from scipy.sparse.csgraph import breadth_first_order, connected_components

from ..progress import Progress, part, silent
from ..surface.tin import Tin
from .levels import MOST_LEVELS, Levels, check_options, level_count, levels_between, rank_heights
from .lines import ContourOptions, Contours

#: Triangles (and vertices) worked on at a time: small enough for the processor's cache.
BLOCK = 1 << 17

#: By which corners are above (bits 1, 2, 4): the edge that falls from above to below, over which the
#: segment enters, and the edge that rises, over which it leaves. Edge i runs corner i to i + 1.
ENTRY = np.array([0, 0, 1, 1, 2, 0, 2, 0], dtype=np.int64)
EXIT = np.array([0, 2, 0, 2, 1, 1, 0, 0], dtype=np.int64)
FOLLOWING = np.array([1, 2, 0], dtype=np.int64)


@dataclass(frozen=True)
class _Segments:
    """s segments, one for each triangle and level that meet.

    ``entry``: (s, 2) where each begins, ``edge``: (s,) on which edge, 3 * triangle + edge.
    ``level``: (s,) place in the levels. ``successor``: (s,) segment that follows, -1 at the rim.
    ``rim``: (r,) the segments that end there, rising; ``rim_exit``: (r, 2) where they end,
    ``rim_edge``: (r,) on which edge.
    """

    entry: np.ndarray
    edge: np.ndarray
    level: np.ndarray
    successor: np.ndarray
    rim: np.ndarray
    rim_exit: np.ndarray
    rim_edge: np.ndarray


@dataclass(frozen=True)
class _Lines:
    """c lines: ``xy`` (p, 2), ``edge`` (p,), ``start`` (c + 1,), ``level`` (c,) place in the levels, ``closed``."""

    xy: np.ndarray
    edge: np.ndarray
    start: np.ndarray
    level: np.ndarray
    closed: np.ndarray

    @property
    def size(self) -> np.ndarray:
        """Number of points of each line."""
        return np.diff(self.start)


def trace_contours(tin: Tin, options: ContourOptions, progress: Progress = silent) -> Contours:
    """The contours of ``tin`` at the levels of ``options``.

    Heights are linear on each triangle, so the lines are exact. They are as long as can be: rings are
    closed, all others run from rim to rim, with the higher ground on the left. A ring starts at its
    point of least x, then least y. Lines are ordered by level, then by their first points; the result
    does not depend on the order of the triangles or of their corners. A summit exactly at a level
    makes no line; a ridge exactly at a level makes a ring that runs along it and back.

    Raises ``SurveyError`` for an interval that is not a finite number above zero or makes more than
    ``levels.MOST_LEVELS`` levels; ``progress`` is called with stage ``"contours"``.
    """
    check_options(options)
    levels = levels_between(options, *_height_range(tin, options))
    segments = _cut_triangles(tin, levels.metres, part(progress, 0.0, 0.6))
    progress(0.6, "contours")
    lines = _without_repeats(_chain(segments))
    progress(0.8, "contours")
    lines = _in_order(lines)
    progress(0.9, "contours")
    contours = _describe(lines, levels, tin, options)
    progress(1.0, "contours")
    return contours


def _height_range(tin: Tin, options: ContourOptions) -> Tuple[float, float]:
    """Heights that hold those of all corners between them; (0, 0) without triangles.

    The range of all vertices is found at once and will do, unless a wild vertex that no triangle
    uses makes it too wide.
    """
    if len(tin.triangles) == 0:
        return 0.0, 0.0
    heights = tin.vertices[:, 2]
    low, high = float(heights.min()), float(heights.max())
    if level_count(options, low, high) < MOST_LEVELS:
        return low, high
    return tin.height_range


# ------------------------------------------------------------------------------------- segments


def _cut_triangles(tin: Tin, levels: np.ndarray, progress: Progress) -> _Segments:
    """The segments of all triangles that a level meets, in the order of triangle, then level."""
    rank = _rank_vertices(tin, levels)
    triangles = np.ascontiguousarray(tin.triangles)
    neighbours = np.ascontiguousarray(tin.neighbours)
    vertices = np.ascontiguousarray(tin.vertices)
    # The segment of triangle t at level j has the number first[t] + j.
    first = np.empty(len(triangles), dtype=np.int64)
    parts: List[Tuple[np.ndarray, ...]] = []
    count = 0
    for begin in range(0, len(triangles), BLOCK):
        progress(begin / len(triangles), "contours")
        end = min(begin + BLOCK, len(triangles))
        cut = _cut_block(triangles[begin:end], neighbours[begin:end], vertices, rank, levels, first[begin:end], count)
        count += len(cut[0])
        cut[1][:] += 3 * begin
        cut[5][:] += 3 * begin
        parts.append(cut)
    if count == 0:
        none = np.empty(0, dtype=np.int64)
        return _Segments(np.empty((0, 2)), none, none, none, none, np.empty((0, 2)), none)
    entry, edge, level, across, rim_exit, rim_edge = (np.concatenate(arrays) for arrays in zip(*parts))
    rim = np.flatnonzero(across < 0)
    successor = first[across] + level
    successor[rim] = -1
    return _Segments(entry, edge, level, successor, rim, rim_exit, rim_edge)


def _rank_vertices(tin: Tin, levels: np.ndarray) -> np.ndarray:
    """How many levels each vertex reaches, (n,) int16."""
    heights = tin.vertices[:, 2]
    rank = np.empty(len(heights), dtype=np.int16)
    for begin in range(0, len(heights), BLOCK):
        rank[begin : begin + BLOCK] = rank_heights(heights[begin : begin + BLOCK], levels)
    return rank


def _cut_block(
    triangles: np.ndarray,
    neighbours: np.ndarray,
    vertices: np.ndarray,
    rank: np.ndarray,
    levels: np.ndarray,
    first: np.ndarray,
    count: int,
) -> Tuple[np.ndarray, ...]:
    """Segments of one block of triangles, numbered from ``count``; fills the block's ``first``.

    Gives entry points (s, 2) and their edges (s,), numbered in the block, levels (s,), triangles across
    the exit (s,), exit points at the rim (r, 2) and their edges (r,).
    """
    reached = np.take(rank, triangles)
    met = np.flatnonzero((reached[:, 0] != reached[:, 1]) | (reached[:, 1] != reached[:, 2]))
    reached = reached[met]
    low = np.minimum(np.minimum(reached[:, 0], reached[:, 1]), reached[:, 2])
    high = np.maximum(np.maximum(reached[:, 0], reached[:, 1]), reached[:, 2])
    # A triangle meets the levels low .. high - 1, counted from 0.
    number = (high - low).astype(np.int64)
    offset = np.cumsum(number) - number - low
    first[met] = offset + count
    row = np.repeat(np.arange(len(met)), number)
    level = np.arange(len(row)) - offset[row]
    above = reached[row] > level[:, None]
    pattern = above[:, 0] + 2 * above[:, 1] + 4 * above[:, 2].astype(np.int64)
    corner = 3 * met[row]
    fall, rise = ENTRY[pattern], EXIT[pattern]
    flat = triangles.reshape(-1)
    edge = corner + fall
    entry = _crossing(vertices, flat[edge], flat[corner + FOLLOWING[fall]], levels[level])
    across = neighbours.reshape(-1)[corner + rise].astype(np.int64)
    rim = np.flatnonzero(across < 0)
    corner, rise = corner[rim], rise[rim]
    rim_exit = _crossing(vertices, flat[corner + FOLLOWING[rise]], flat[corner + rise], levels[level[rim]])
    return entry, edge, level, across, rim_exit, corner + rise


def _crossing(vertices: np.ndarray, upper: np.ndarray, lower: np.ndarray, level: np.ndarray) -> np.ndarray:
    """Where edges from ``upper`` (height >= level) to ``lower`` (height < level) pass their level, (e, 2).

    Always reckoned from the upper end, so that both triangles of an edge get the same numbers and an
    upper end exactly at the level is met exactly.
    """
    top = np.take(vertices, upper, axis=0)
    drop = top - np.take(vertices, lower, axis=0)
    share = (top[:, 2] - level) / drop[:, 2]
    return top[:, :2] - share[:, None] * drop[:, :2]


# ---------------------------------------------------------------------------------------- lines


def _chain(segments: _Segments) -> _Lines:
    """The segments joined into lines; open lines from rim to rim, rings from any of their points."""
    total = len(segments.level)
    if total == 0:
        none = np.empty(0, np.int64)
        return _Lines(np.empty((0, 2)), none, np.zeros(1, np.int64), none, np.empty(0, bool))
    order, size, is_open = _walk(segments.successor)
    start = np.concatenate([[0], np.cumsum(size + 1)])
    head = np.concatenate([[0], np.cumsum(size)])
    place = np.arange(total) + np.repeat(np.arange(len(size)), size)
    xy, edge = np.empty((start[-1], 2)), np.empty(start[-1], dtype=np.int64)
    xy[place], edge[place] = segments.entry[order], segments.edge[order]
    last = start[1:] - 1
    closed = ~is_open
    xy[last[closed]], edge[last[closed]] = xy[start[:-1][closed]], edge[start[:-1][closed]]
    tail = np.searchsorted(segments.rim, order[head[1:][is_open] - 1])
    xy[last[is_open]], edge[last[is_open]] = segments.rim_exit[tail], segments.rim_edge[tail]
    # A line that leaves the surface at the very vertex where it came in is a ring to whoever reads it.
    closed = closed | np.all(xy[start[:-1]] == xy[last], axis=1)
    return _Lines(xy, edge, start, segments.level[order[head[:-1]]], closed)


def _walk(successor: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Segments line by line in walking order (s,), number of segments of each line, whether it is open.

    All lines are linked into a single path, tail to head, which one breadth-first search then walks.
    """
    total = len(successor)
    follows = successor >= 0
    lines, line = connected_components(_graph(successor, follows), directed=True, connection="weak")
    tail, head = np.empty(lines, np.int64), np.empty(lines, np.int64)
    is_open = np.zeros(lines, dtype=bool)
    tail[line] = np.arange(total)  # any segment of a ring will do as its last
    ends = np.flatnonzero(~follows)
    is_open[line[ends]] = True
    tail[line[ends]] = ends
    preceded = np.zeros(total, dtype=bool)
    preceded[successor[follows]] = True
    begins = np.flatnonzero(~preceded)
    head[line[begins]] = begins
    head[~is_open] = successor[tail[~is_open]]
    path = successor.copy()
    path[tail[:-1]] = head[1:]
    path[tail[-1]] = -1
    order = breadth_first_order(_graph(path, path >= 0), head[0], directed=True, return_predecessors=False)
    return order, np.bincount(line, minlength=lines), is_open


def _graph(successor: np.ndarray, follows: np.ndarray) -> csr_matrix:
    """The graph with an edge from each segment to the one that follows it."""
    total = len(successor)
    target = successor[follows].astype(np.int32)
    pointer = np.concatenate([[0], np.cumsum(follows)]).astype(np.int32)
    return csr_matrix((np.ones(len(target)), target, pointer), shape=(total, total))


def _without_repeats(lines: _Lines) -> _Lines:
    """The lines without points equal to the one before, and without lines of no length."""
    moved = np.ones(len(lines.xy), dtype=bool)
    moved[1:] = (lines.xy[1:, 0] != lines.xy[:-1, 0]) | (lines.xy[1:, 1] != lines.xy[:-1, 1])
    moved[lines.start[:-1]] = True
    if moved.all():
        return lines
    size = np.add.reduceat(moved, lines.start[:-1], dtype=np.int64)
    real = size > 1
    keep = moved & np.repeat(real, lines.size)
    start = np.concatenate([[0], np.cumsum(size[real])])
    return _Lines(lines.xy[keep], lines.edge[keep], start, lines.level[real], lines.closed[real])


def _in_order(lines: _Lines) -> _Lines:
    """The lines by level and first points, each ring turned to start at its lexicographically least point."""
    if len(lines.level) == 0:
        return lines
    size = lines.size
    turn = _ring_turns(lines)
    cycle = size - lines.closed
    first = lines.xy[lines.start[:-1] + turn]
    second = lines.xy[lines.start[:-1] + (turn + 1) % cycle]
    order = np.lexsort((size, second[:, 1], second[:, 0], first[:, 1], first[:, 0], lines.level))
    size, turn, cycle = size[order], turn[order], cycle[order]
    start = np.concatenate([[0], np.cumsum(size)])
    step = np.arange(start[-1]) + np.repeat(turn - start[:-1], size)
    step -= np.where(step >= np.repeat(cycle, size), np.repeat(cycle, size), 0)
    point = np.repeat(lines.start[:-1][order], size) + step
    return _Lines(lines.xy[point], lines.edge[point], start, lines.level[order], lines.closed[order])


def _ring_turns(lines: _Lines) -> np.ndarray:
    """By how many points to turn each line: rings to their least point, 0 for open lines.

    A ring that passes its least point twice starts where the next point is the lesser.
    """
    x, y = lines.xy[:, 0], lines.xy[:, 1]
    least = np.repeat(np.minimum.reduceat(x, lines.start[:-1]), lines.size)
    candidate = x == least
    candidate[lines.start[1:] - 1] = False  # the closing point of a ring is its first again
    candidate = np.flatnonzero(candidate)
    line = np.searchsorted(lines.start, candidate, side="right") - 1
    candidate, line = candidate[lines.closed[line]], line[lines.closed[line]]
    ranked = np.lexsort((y[candidate + 1], x[candidate + 1], y[candidate], line))
    candidate, line = candidate[ranked], line[ranked]
    best = np.ones(len(line), dtype=bool)
    best[1:] = line[1:] != line[:-1]
    turn = np.zeros(len(lines.level), dtype=np.int64)
    turn[line[best]] = candidate[best] - lines.start[line[best]]
    return turn


def _describe(lines: _Lines, levels: Levels, tin: Tin, options: ContourOptions) -> Contours:
    """The lines with their attributes."""
    step = levels.step[lines.level]
    return Contours(
        xy=lines.xy,
        start=lines.start,
        level=levels.metres[lines.level],
        level_in_unit=levels.in_unit[lines.level],
        step=step,
        index=step % int(options.index_every) == 0,
        closed=lines.closed,
        depression=lines.closed & _encloses_lower(lines),
        origin=tin.origin,
        options=options,
        crs=tin.crs,
        edge=lines.edge,
    )


def _encloses_lower(lines: _Lines) -> np.ndarray:
    """Whether each line, closed by a straight line, runs clockwise: the lower ground is on its right.

    Lines that run along a ridge and back enclose nothing; rounding must not turn them.
    """
    if len(lines.level) == 0:
        return np.empty(0, dtype=bool)
    begin = lines.start[:-1]
    local = lines.xy - np.repeat(lines.xy[begin], lines.size, axis=0)
    twice = np.zeros(len(local))
    twice[:-1] = local[:-1, 0] * local[1:, 1] - local[1:, 0] * local[:-1, 1]
    twice[lines.start[1:] - 1] = 0.0
    return np.add.reduceat(twice, begin) < -1e-12 * np.add.reduceat(np.abs(twice), begin)
