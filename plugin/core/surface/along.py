"""Lay lines on a surface: a vertex wherever they meet an edge of a triangle, so that heights are exact all along.

A line keeps its own vertices and its place in plan. Each segment is cut where it crosses an edge, where it runs
through a vertex, at the ends of edges it runs along, and where it passes a vertex of the rim. The triangle of the
piece between two cuts is known from the edge crossed, if its middle is in that triangle; else the triangle under its
middle is looked up. A triangle may be so thin that the cuts on both its sides are one place to a ten-millionth of a
metre, with two heights: each piece of line then has the height of its own triangle there.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Iterator, Sequence, Tuple

import numpy as np

from ..progress import Progress, silent
from .line_cuts import SAME_PLACE, UNKNOWN, Cuts, Runs, Segments, cut_segments, near_part, plan_segments
from .locate import covers, heights_in, locate
from .tin import Tin

_SAME_HEIGHT = 1e-6  # metres: two heights at one place that differ by more are of a step there


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
class _Chain:
    """The cuts in order along the lines, one for each place; piece i runs from place i to place i + 1.

    ``xy``: (g, 2) metres from the TIN's origin; ``distance``: (g,); ``line``: (g,); ``height``: (g,), nan where not
    known; ``triangle``: (g,) of the piece that begins there, -1 outside, ``UNKNOWN``; the last place of a line
    begins no piece. ``step``: (g,) bool, cuts of several heights are one place here.
    """

    xy: np.ndarray
    distance: np.ndarray
    line: np.ndarray
    height: np.ndarray
    triangle: np.ndarray
    step: np.ndarray

    @property
    def pieces(self) -> np.ndarray:
        """Numbers of the places that begin a piece."""
        return np.flatnonzero(self.line[:-1] == self.line[1:])


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
    segments = plan_segments(lines, tin.origin)
    if len(segments.line) == 0:
        return LaidLines(np.empty((0, 3)), np.empty(0), np.zeros(1, np.int64), np.empty(0, np.int64), ())
    near = near_part(tin, segments)
    progress(0.2, "lines")
    cuts, runs = cut_segments(near, segments)
    progress(0.7, "lines")
    chain = _with_steps(near, _looked_up(near, _chained(segments, cuts, runs)))
    laid = _parts(chain, tin.origin)
    progress(1.0, "lines")
    return laid


def _chained(segments: Segments, cuts: Cuts, runs: Runs) -> _Chain:
    """Order the cuts along the lines and make one of those at the same place."""
    distance, line = segments.at[cuts.segment] + cuts.along, segments.line[cuts.segment]
    order = np.lexsort((cuts.segment, distance, line))
    new = (np.diff(line[order]) != 0) | (np.diff(distance[order]) > SAME_PLACE)
    group = np.empty(len(order), np.int64)
    group[order] = np.append(0, np.cumsum(new))
    count = int(group.max()) + 1
    chosen = _first_of(group, ~cuts.own)  # a line's own vertex keeps its place
    height = cuts.height[_first_of(group, np.isnan(cuts.height) * 2 + ~cuts.corner)]
    step = np.zeros(count, bool)
    step[group[np.abs(cuts.height - height[group]) > _SAME_HEIGHT]] = True
    height[step] = np.nan
    cornered = np.bincount(group, cuts.corner, count) > 0
    after, before = (_only(group, side, count, cornered) for side in (cuts.after, cuts.before))
    triangle = np.where(after == UNKNOWN, np.append(before[1:], UNKNOWN), after)
    pieces = group[runs.last] - group[runs.first]
    covered = np.repeat(group[runs.first], pieces) + np.arange(int(pieces.sum()))
    triangle[covered - np.repeat(np.cumsum(pieces) - pieces, pieces)] = np.repeat(runs.triangle, pieces)
    xy = segments.place(cuts.segment[chosen], cuts.along[chosen])
    return _Chain(xy, distance[chosen], line[chosen], height, triangle, step)


def _first_of(group: np.ndarray, rank: np.ndarray) -> np.ndarray:
    """Of each group the member with the least ``rank``."""
    order = np.lexsort((rank, group))
    first: np.ndarray = order[np.append(True, np.diff(group[order]) != 0)]
    return first


def _only(group: np.ndarray, value: np.ndarray, count: int, barred: np.ndarray) -> np.ndarray:
    """The value of each group where exactly one is known and the group isn't ``barred``; else ``UNKNOWN``."""
    known = np.flatnonzero(value != UNKNOWN)
    result = np.full(count, UNKNOWN, np.int64)
    result[group[known]] = value[known]
    result[(np.bincount(group[known], minlength=count) != 1) | barred] = UNKNOWN
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
    there = _longer_piece(chain, inside, triangle)[bare]
    off = np.flatnonzero(~covers(tin, there, chain.xy[bare]) & ~chain.step[bare])
    found = locate(tin, chain.xy[bare[off]] + tin.origin)
    there[off] = np.where(found >= 0, found, there[off])
    height[bare] = heights_in(tin, there, chain.xy[bare])
    return replace(chain, triangle=triangle, height=height)


def _longer_piece(chain: _Chain, inside: np.ndarray, triangle: np.ndarray) -> np.ndarray:
    """The triangle (g,) of the longer of the pieces ``inside`` (numbers) that begin or end at each place, or -1."""
    length = np.zeros(len(triangle))
    length[inside] = chain.distance[inside + 1] - chain.distance[inside]
    before = np.append(0.0, length[:-1])
    result: np.ndarray = np.where(before > length, np.append(-1, triangle[:-1]), np.where(length > 0, triangle, -1))
    return result


def _with_steps(tin: Tin, chain: _Chain) -> _Chain:
    """``chain`` with a further place on the shorter piece where its triangle has another height at a step."""
    at = np.flatnonzero(chain.step[1:-1]) + 1
    at = at[(chain.line[at - 1] == chain.line[at + 1]) & np.all(chain.triangle[[at - 1, at]] >= 0, axis=0)]
    before, after = chain.distance[at] - chain.distance[at - 1], chain.distance[at + 1] - chain.distance[at]
    piece = np.where(before > after, at, at - 1)
    height = heights_in(tin, chain.triangle[piece], chain.xy[at])
    some = np.flatnonzero(np.abs(height - chain.height[at]) > _SAME_HEIGHT)
    if len(some) == 0:
        return chain
    at, piece, height = at[some], piece[some], height[some]
    other = np.where(piece == at, at + 1, at - 1)
    share = np.minimum(SAME_PLACE, np.minimum(before, after)[some] / 2) / np.minimum(before, after)[some]
    distance = chain.distance[at] + share * (chain.distance[other] - chain.distance[at])
    xy = chain.xy[at] + share[:, None] * (chain.xy[other] - chain.xy[at])
    triangle = chain.triangle[piece]
    added = vars(_Chain(xy, distance, chain.line[at], height, triangle, np.ones(len(at), bool)))
    return _Chain(**{name: np.insert(value, piece + 1, added[name], axis=0) for name, value in vars(chain).items()})


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
