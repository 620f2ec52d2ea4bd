"""Points and lines on the plan grid: one vertex for each position, lines as segments between vertices."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Optional, Tuple

import numpy as np

from ..linework.constraints import Constraints, LineKind, Rings
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import PointSet
from .cells import runs
from .predicates import LIMIT
from .tin import GRID
from .touching import met

TOO_FAR = Text(
    "too_far_apart",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: the points lie up to {distance_km:.0f} km apart; a surface may measure 107 km. "
        "Check the column mapping, the units and single points far off.",
    ),
)
TOO_FEW = Text(
    "too_few_points",
    QT_TRANSLATE_NOOP("core", "{file}: {count} usable points at different places; a surface needs at least three."),
    one=QT_TRANSLATE_NOOP(
        "core", "{file}: all usable points are at one place; a surface needs at least three different ones."
    ),
)


NO_PLACE = Text(
    "no_plan_position",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: this point has no plan position (easting or northing is not a number), nor have {others} "
        "others. Reject such points.",
    ),
)
LINE_WITHOUT_PLACE = Text(
    "line_without_plan_position",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {label}, vertex {vertex}, has no plan position (easting or northing is not a number). Mend the line.",
    ),
)


@dataclass(frozen=True)
class Duplicate:
    """Several heights of survey points at one plan position (equal to 0.1 mm).

    The surface takes their mean. ``source_lines``: lines of the survey file.
    """

    easting: float
    northing: float
    count: int
    lowest: float
    highest: float
    height: float
    source_lines: Tuple[int, ...]


@dataclass(frozen=True)
class Network:
    """n vertices and k segments.

    ``x, y``: (n,) int64 from ``origin`` in units of ``GRID``; positions are distinct. ``z``: (n,) float64 m,
    nan where only lines without heights run. ``source``: (n,) int64 first survey point there, -1 if none.
    ``segments``: (k, 2) int64 vertices; ``kind``: (k,) uint8; ``line``: (k,) int64 number of the constraint;
    ``soft``: (k,) bool, the segment's line has no heights. ``rings``: boundary and void rings (r, 2) with kind and
    source.
    ``touches``: (t, 2) segments and vertices they met as given or whose cells they run through, None if not known.
    ``shared``: vertex, line and height (s, 3) of the vertices of lines that share a place, with others or with a survey
    point that they are not made of.
    """

    x: np.ndarray
    y: np.ndarray
    z: np.ndarray
    source: np.ndarray
    segments: np.ndarray
    kind: np.ndarray
    line: np.ndarray
    soft: np.ndarray
    rings: Rings
    origin: np.ndarray
    touches: Optional[np.ndarray] = None
    shared: np.ndarray = field(default_factory=lambda: np.empty((0, 3)))

    def part(self, which: np.ndarray) -> Network:
        """The same vertices with the segments of a mask ``which``."""
        touches = self.touches
        if touches is not None:
            touches = touches[which[touches[:, 0]]]
            touches = np.column_stack([(np.cumsum(which) - 1)[touches[:, 0]], touches[:, 1]])
        return replace(
            self,
            segments=self.segments[which],
            kind=self.kind[which],
            line=self.line[which],
            soft=self.soft[which],
            touches=touches,
        )


def local_origin(xy: np.ndarray) -> np.ndarray:
    """The local zero for coordinates ``xy`` (n, 2): the whole metre at or below the south-west corner."""
    origin: np.ndarray = np.floor([column.min() for column in xy.T])  # ten times as fast as along axis 0
    return origin


def check_extent(xy: np.ndarray, file: str) -> None:
    """Raise SurveyError where finite coordinates ``xy`` (n, 2), metres, reach farther than a surface may."""
    span = max(float(column.max()) - zero for column, zero in zip(xy.T, local_origin(xy).tolist()))
    if span >= LIMIT * GRID:
        raise SurveyError(TOO_FAR, file=file, distance_km=span / 1000)


def to_grid(xy: np.ndarray, origin: np.ndarray) -> np.ndarray:
    """Coordinates (n, 2) in metres as int64 multiples of ``GRID`` from ``origin``."""
    grid: np.ndarray = np.rint((xy - origin) / GRID).astype(np.int64)
    return grid


def build_network(points: PointSet, constraints: Constraints) -> Tuple[Network, Tuple[Duplicate, ...]]:
    """Snap the used ``points`` and the lines to the grid and join what falls on one position.

    Rule for several heights at one position: the mean of the survey points', if there are any, else of the lines'.
    A line's vertex that is a survey point counts once; a line passes by its rejected points. A height that is not
    finite counts as none. Raises SurveyError for fewer than three positions, for points over 107 km apart and for
    places that are not finite. Points that are ``alone`` or ``in_line`` take part only where a line runs to them.
    """
    constraints = _past_rejected(constraints, points.used)
    used = np.flatnonzero(_shaping(points, constraints))
    corners = np.concatenate([line.xyz for line in constraints.lines] or [np.empty((0, 3))])
    of_point = _points_of(constraints)
    plan = np.vstack([np.column_stack([points.easting[used], points.northing[used]]), corners[:, :2]])
    if len(plan) == 0:
        raise SurveyError(TOO_FEW, file=points.source, count=0)
    _check_places(points, used, constraints, plan)
    origin = local_origin(plan)
    check_extent(plan, points.source)
    grid = to_grid(plan, origin)
    own_height = np.where(of_point >= 0, np.nan, corners[:, 2])  # survey points have given theirs already
    height = np.concatenate([points.height[used], own_height])
    height[~np.isfinite(height)] = np.nan
    source = np.concatenate([used, np.full(len(corners), -1, np.int64)])
    vertex, x, y, z, first, duplicates = _join(grid, height, source, points, origin)
    if np.count_nonzero(np.isfinite(z)) < 3:
        raise SurveyError(TOO_FEW, file=points.source, count=int(np.count_nonzero(np.isfinite(z))))
    of_line = vertex[len(used) :]
    without = np.isnan(corners[:, 2])
    segments, ends, kind, line, soft, rings = _segments(constraints, of_line, grid[len(used) :], without)
    soft |= np.isnan(z[segments]).any(axis=1)
    touches = met(x, y, segments, ends + len(used), (plan - origin) / GRID, vertex)
    lengths = np.array([len(line.xyz) for line in constraints.lines], np.int64)
    shared = _shared(of_line, own_height, np.repeat(np.arange(len(lengths)), lengths), first >= 0)
    return Network(x, y, z, first, segments, kind, line, soft, rings, origin, touches, shared), duplicates


def _shaping(points: PointSet, constraints: Constraints) -> np.ndarray:
    """Mask (n,) of the points that shape the surface."""
    mask = points.shaping
    own = _points_of(constraints)
    mask[own[own >= 0]] = True
    return np.asarray(mask)


def _points_of(constraints: Constraints) -> np.ndarray:
    """The survey points (c,) at all corners of lines, one after another, -1 for none."""
    return np.concatenate([line.points for line in constraints.lines] or [np.empty(0, np.int64)])


def _check_places(points: PointSet, used: np.ndarray, constraints: Constraints, plan: np.ndarray) -> None:
    lost = used[~(np.isfinite(points.easting[used]) & np.isfinite(points.northing[used]))]
    if len(lost):
        raise SurveyError(NO_PLACE, file=points.source, line=int(points.source_line[lost[0]]), others=len(lost) - 1)
    if np.all(np.isfinite(plan)):
        return
    for i, line in enumerate(constraints.lines):
        lost = np.flatnonzero(~np.isfinite(line.xyz[:, :2]).all(axis=1))
        if len(lost):
            label = line.label or f"#{i + 1}"
            raise SurveyError(LINE_WITHOUT_PLACE, file=points.source, label=label, vertex=int(lost[0]) + 1)


def _past_rejected(constraints: Constraints, used: np.ndarray) -> Constraints:
    """The lines without their vertices at rejected points."""
    own = _points_of(constraints)
    if used[own[own >= 0]].all():
        return constraints
    lines = []
    for line in constraints.lines:
        stays = line.points < 0
        stays[~stays] = used[line.points[~stays]]
        lines.append(line if np.all(stays) else replace(line, xyz=line.xyz[stays], points=line.points[stays]))
    return Constraints(tuple(lines))


def _join(
    grid: np.ndarray, height: np.ndarray, source: np.ndarray, points: PointSet, origin: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray, np.ndarray, Tuple[Duplicate, ...]]:
    """Distinct positions in order of first appearance: the vertex of each given position, x, y, z, first point."""
    key = (grid[:, 0] << 31) | grid[:, 1]
    ranked = np.sort(key)
    repeated = np.unique(ranked[1:][ranked[1:] == ranked[:-1]])
    if len(repeated) == 0:
        return np.arange(len(grid)), grid[:, 0].copy(), grid[:, 1].copy(), height.copy(), source, ()
    group = np.searchsorted(repeated, key).clip(max=len(repeated) - 1)
    several = np.flatnonzero(repeated[group] == key)
    group = group[several]
    first = np.empty(len(repeated), np.int64)
    first[group[::-1]] = several[::-1]  # the first to appear is written last
    appears = np.ones(len(grid), bool)
    appears[several] = False
    appears[first] = True
    vertex = np.cumsum(appears) - 1  # positions keep the order in which they were given
    vertex[several] = vertex[first][group]
    x, y = grid[appears].T.copy()
    z = height[appears]
    duplicates = _merge_heights(vertex, z, grid, height, source, points, origin)
    return vertex, x, y, z, source[appears], duplicates


def _merge_heights(
    vertex: np.ndarray, z: np.ndarray, grid: np.ndarray, height: np.ndarray, source: np.ndarray,
    points: PointSet, origin: np.ndarray,
) -> Tuple[Duplicate, ...]:  # fmt: skip
    """Set ``z`` of positions with several heights to their mean, survey points before lines; a record of the former."""
    known = np.isfinite(height)
    of_points = np.zeros(len(z), bool)
    of_points[vertex[known & (source >= 0)]] = True
    known &= (source >= 0) | ~of_points[vertex]
    z[vertex[known]] = height[known]
    several = np.flatnonzero(known & (np.bincount(vertex[known], minlength=len(z))[vertex] > 1))
    if len(several) == 0:
        return ()
    several = several[np.lexsort((height[several], vertex[several]))]  # sorted heights: a sum free of order
    start = np.flatnonzero(np.append(True, np.diff(vertex[several]) != 0))
    count = np.diff(np.append(start, len(several)))
    lowest, highest = height[several[start]], height[several[start + count - 1]]
    mean = np.clip(np.add.reduceat(height[several], start) / count, lowest, highest)
    z[vertex[several[start]]] = mean
    place = grid[several[start]] * GRID + origin
    of_point = source[several] >= 0
    number = np.zeros(len(several), np.int64)
    number[of_point] = points.source_line[source[several][of_point]]
    line = number.tolist()
    lines = [tuple(sorted(line[a : a + c])) for a, c in zip(start.tolist(), count.tolist())]
    columns = (place[:, 0], place[:, 1], count, lowest, highest, mean)
    found = map(Duplicate, *(c.tolist() for c in columns), lines)
    kept = [d for d, point in zip(found, of_point[start].tolist()) if point]  # of lines: told where lines meet
    return tuple(sorted(kept, key=lambda d: d.source_lines))


def _segments(
    constraints: Constraints, vertex: np.ndarray, grid: np.ndarray, without: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray, np.ndarray, Rings]:
    """Segments, the numbers (k, 2) of the corners of lines they run between, kind, line, softness; rings.

    Of all corners one after another: ``vertex`` (c,), ``grid`` (c, 2) and the mask ``without`` (c,) of those without
    a height.
    """
    length = np.array([len(line.xyz) for line in constraints.lines], np.int64)
    kinds = np.array([int(line.kind) for line in constraints.lines], np.uint8)
    closed = ((kinds & np.uint8(LineKind.BOUNDARY | LineKind.VOID)) != 0) & (length > 0)
    first, count = np.cumsum(length) - length, length + closed  # a ring comes back to its first corner
    line = np.repeat(np.arange(len(count)), count)
    corner = (first[line] + runs(np.zeros(len(count), np.int64), count) % np.maximum(length, 1)[line]).astype(np.int64)
    step = np.flatnonzero((np.diff(line) == 0) & (np.diff(vertex[corner]) != 0))
    ends = np.column_stack([corner[step], corner[step + 1]])
    number = line[step]
    soft = np.any(without[ends], axis=1)
    rings = tuple(
        (constraints.lines[i].kind, constraints.lines[i].source, grid[first[i] : first[i] + length[i]])
        for i in np.flatnonzero(closed)
    )
    return vertex[ends], ends, kinds[number], number, soft, rings


def _shared(vertex: np.ndarray, height: np.ndarray, line: np.ndarray, at_point: np.ndarray) -> np.ndarray:
    """Vertex, line and height (s, 3) of the corners of lines that share their vertex with others or, by the mask
    ``at_point`` (n,), with a survey point; in that order."""
    known = np.flatnonzero(np.isfinite(height))
    order = known[np.lexsort((height[known], line[known], vertex[known]))]
    some = order[(np.bincount(vertex[order], minlength=1)[vertex[order]] > 1) | at_point[vertex[order]]]
    return np.column_stack([vertex[some], line[some], height[some]])
