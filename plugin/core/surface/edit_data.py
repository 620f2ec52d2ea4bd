"""Edits that change what goes into the triangulation: heights, points and forced edges."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Dict, Iterable, List, Optional, Sequence, Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, Text
from ..points.pointset import MARKS, PointSet
from .edit_log import REACH, EditLog, PlaceIndex
from .edits import AddPoint, Edit, ForceEdge, MovePoint, Place
from .predicates import LIMIT
from .tin import GRID

POINT_THERE = Text(
    "edits.point_there",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: at E {easting:.3f} N {northing:.3f} there is a point already, "
        "of height {height:.3f} m. Move its height instead.",
    ),
)
NO_POINT = Text(
    "edits.no_point",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: no point with a height lies within {reach:.3f} m of "
        "E {easting:.3f} N {northing:.3f}.",
    ),
)
FAR_OFF = Text(
    "edits.far_off",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: E {easting:.3f} N {northing:.3f} is too far from the survey; "
        "a surface may measure 107 km.",
    ),
)
ONE_PLACE = Text(
    "edits.one_place",
    QT_TRANSLATE_NOOP(
        "core", "Edit {number} ({kind}) does not apply: its line stays at one point, E {easting:.3f} N {northing:.3f}."
    ),
)
CROSSES_LINE = Text(
    "edits.crosses_line",
    QT_TRANSLATE_NOOP(
        "core",
        "Edit {number} ({kind}) does not apply: the edge from E {easting:.3f} N {northing:.3f} would cross {label}.",
    ),
)


@dataclass(frozen=True)
class EditedData:
    """Points and lines after the edits; ``pending``: moves of points that only the triangulation may have."""

    points: PointSet
    constraints: Constraints
    pending: Tuple[int, ...]


def edit_data(
    points: PointSet, constraints: Constraints, edits: Sequence[Edit], log: EditLog, reach: float = REACH
) -> EditedData:
    """Replay moved heights, added points and forced edges, in their order; other edits are passed over.

    Added points and forced edges become lines after the given ones (an added point is a line of one vertex),
    so that points keep their numbers. ``reach``: metres. What does not apply is told to ``log``.
    """
    replay = _Replay(points, constraints, log, reach)
    for number, edit in enumerate(edits, start=1):
        if isinstance(edit, MovePoint):
            replay.move(number, edit)
        elif isinstance(edit, AddPoint):
            replay.add(number, edit)
        elif isinstance(edit, ForceEdge):
            replay.force(number, edit)
    return EditedData(replay.points(), replay.constraints(), tuple(replay.pending))


@dataclass
class _Forced:
    label: str
    items: List[int]


class _Replay:
    """Positions with heights, as edits change them: used points, then vertices of lines, then added points."""

    def __init__(self, points: PointSet, constraints: Constraints, log: EditLog, reach: float) -> None:
        self.given, self.lines, self.log, self.reach = points, constraints, log, reach
        self.pending: List[int] = []
        used = np.flatnonzero(points.used & np.isfinite(points.height))
        corners = np.concatenate([line.xyz for line in constraints.lines] or [np.empty((0, 3))])
        own = np.flatnonzero(np.isfinite(corners[:, 2]))
        self.point = np.concatenate([used, np.full(len(own), -1, np.int64)])  # number of the survey point
        self.corner = np.concatenate([np.full(len(used), -1, np.int64), own])  # number among all vertices of lines
        self.place = np.vstack([np.column_stack([points.easting[used], points.northing[used]]), corners[own][:, :2]])
        self.height = np.concatenate([points.height[used], corners[own, 2]])
        self.moved = np.zeros(len(self.height), bool)
        self.index = PlaceIndex(self.place[:, 0], self.place[:, 1])
        self.low, self.high = self.place.min(axis=0, initial=np.inf), self.place.max(axis=0, initial=-np.inf)
        self.added: List[Tuple[Place, float, str]] = []
        self.forced: List[_Forced] = []
        self.hard = _HardSegments(constraints)

    # Items below len(self.height) are given, those from there on were added.

    def near(self, place: Place) -> List[int]:
        """Items at the position nearest to ``place``, within reach."""
        given = self.index.near(place, self.reach).tolist()
        distance = math.dist(self.place[given[0]], place) if given else math.inf
        for i, (other, _, _) in enumerate(self.added):
            away = math.dist(other, place)
            if away <= self.reach and away < distance:
                given, distance = [len(self.height) + i], away
        return [int(item) for item in given]

    def place_of(self, item: int) -> Place:
        if item >= len(self.height):
            return self.added[item - len(self.height)][0]
        return float(self.place[item, 0]), float(self.place[item, 1])

    def height_of(self, item: int) -> float:
        return self.added[item - len(self.height)][1] if item >= len(self.height) else float(self.height[item])

    def move(self, number: int, edit: MovePoint) -> None:
        items = self.near(edit.place)
        if not items:
            self.pending.append(number)
            return
        for item in items:
            height = edit.height if edit.height is not None else self.height_of(item) + (edit.difference or 0.0)
            if item >= len(self.height):
                place, _, label = self.added[item - len(self.height)]
                self.added[item - len(self.height)] = (place, height, label)
            else:
                self.height[item] = height
                self.moved[item] = True
        self.log.done(number)

    def add(self, number: int, edit: AddPoint) -> None:
        where = {"easting": edit.place[0], "northing": edit.place[1]}
        there = self.near(edit.place)
        low, high = np.minimum(self.low, edit.place), np.maximum(self.high, edit.place)
        if there:
            self.log.tell(number, edit, POINT_THERE, height=self.height_of(there[0]), **where)
        elif not np.all(high - np.floor(low) < LIMIT * GRID):
            self.log.tell(number, edit, FAR_OFF, **where)
        else:
            self.low, self.high = low, high
            self.added.append((edit.place, edit.height, _label(number, edit)))
            self.log.done(number)

    def force(self, number: int, edit: ForceEdge) -> None:
        items: List[int] = []
        for place in edit.line:
            found = self.near(place)
            if not found:
                where = {"easting": place[0], "northing": place[1]}
                self.log.tell(number, edit, NO_POINT, reach=self.reach, **where)
                return
            if not items or items[-1] != found[0]:
                items.append(found[0])
        chain = [self.place_of(item) for item in items]
        if len(chain) < 2:
            self.log.tell(number, edit, ONE_PLACE, easting=chain[0][0], northing=chain[0][1])
            return
        crossing = self.hard.crossed_by(chain)
        if crossing is not None:
            start, label = crossing
            self.log.tell(number, edit, CROSSES_LINE, easting=start[0], northing=start[1], label=label)
            return
        self.hard.append(chain, _label(number, edit))
        self.forced.append(_Forced(_label(number, edit), items))
        self.log.done(number)

    def points(self) -> PointSet:
        """The survey with the moved heights; a moved point shapes the surface even where a found line stands for it."""
        changed = self.moved & (self.point >= 0)
        if not np.any(changed):
            return self.given
        height, reasons = self.given.height.copy(), self.given.reasons.copy()
        height[self.point[changed]] = self.height[changed]
        reasons[self.point[changed]] &= ~np.uint32(MARKS)  # who moves a point wants it
        return replace(self.given, height=height, reasons=reasons)

    def constraints(self) -> Constraints:
        """The lines with the moved heights, then the added points and forced edges."""
        lines = list(self.lines.lines)
        changed = np.flatnonzero(self.moved & (self.corner >= 0))
        starts = np.cumsum([0] + [len(line.xyz) for line in lines])
        by_line: Dict[int, List[int]] = {}
        for item in changed:
            by_line.setdefault(int(np.searchsorted(starts, self.corner[item], "right")) - 1, []).append(int(item))
        for number, items in by_line.items():
            xyz = lines[number].xyz.copy()
            xyz[self.corner[items] - starts[number], 2] = self.height[items]
            lines[number] = replace(lines[number], xyz=xyz)
        lines += [_line([(*place, height)], [-1], label) for place, height, label in self.added]
        lines += [self._forced_line(forced) for forced in self.forced]
        return Constraints(tuple(lines)) if len(lines) > len(self.lines) or by_line else self.lines

    def _forced_line(self, forced: _Forced) -> ConstraintLine:
        xyz = [(*self.place_of(item), self.height_of(item)) for item in forced.items]
        numbers = [int(self.point[item]) if item < len(self.height) else -1 for item in forced.items]
        return _line(xyz, numbers, forced.label)


def _line(xyz: Iterable[Tuple[float, ...]], numbers: Sequence[int], label: str) -> ConstraintLine:
    return ConstraintLine(LineKind.BREAKLINE, np.array(list(xyz), float), np.array(numbers, np.int64), label)


def _label(number: int, edit: Edit) -> str:
    return edit.note or f"#{number}"


class _HardSegments:
    """Segments of lines with heights, which a forced edge may not cross."""

    def __init__(self, constraints: Constraints) -> None:
        self.ends = np.empty((0, 4))
        self.labels: List[str] = []
        for number, line in enumerate(constraints.lines, start=1):
            xyz = np.vstack([line.xyz, line.xyz[:1]]) if line.closed else line.xyz
            known = np.isfinite(xyz[:, 2])
            self._append(xyz[:, :2], line.label or f"#{number}", known[:-1] & known[1:])

    def append(self, chain: Sequence[Place], label: str) -> None:
        self._append(np.array(chain, float), label, np.ones(len(chain) - 1, bool))

    def _append(self, chain: np.ndarray, label: str, which: np.ndarray) -> None:
        ends = np.column_stack([chain[:-1], chain[1:]])[which]
        self.ends = np.vstack([self.ends, ends])
        self.labels += [label] * len(ends)

    def crossed_by(self, chain: Sequence[Place]) -> Optional[Tuple[Place, str]]:
        """Start of the first segment of ``chain`` that properly crosses one of these, and the label of that."""
        origin = np.floor(np.array(chain[0]))
        ends = np.rint((self.ends - np.tile(origin, 2)) / GRID).astype(np.int64)
        places = np.rint((np.array(chain) - origin) / GRID).astype(np.int64)
        for i in range(len(places) - 1):
            a, b, c, d = places[i], places[i + 1], ends[:, :2], ends[:, 2:]
            side = [np.sign(_turn(*each)) for each in ((a, b, c), (a, b, d), (c, d, a), (c, d, b))]
            crossing = np.flatnonzero((side[0] * side[1] < 0) & (side[2] * side[3] < 0))
            if len(crossing):
                return chain[i], self.labels[crossing[0]]
        return None


def _turn(a: np.ndarray, b: np.ndarray, c: np.ndarray) -> np.ndarray:
    """Orientation of places in whole numbers of the grid; exact."""
    turn: np.ndarray = (b[..., 0] - a[..., 0]) * (c[..., 1] - a[..., 1]) - (b[..., 1] - a[..., 1]) * (
        c[..., 0] - a[..., 0]
    )
    return turn
