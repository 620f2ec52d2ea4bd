"""A line with stations: numbering along a polyline, places to the left and right of it.

Distances run from the line's first vertex, in metres. Stations are what people read: a start value, the unit of the
line, and station equations where the numbering jumps. Offsets are metres across the line, positive to the right of
the way stations grow (common practice, no source).

Direction: that of the segment, and at a vertex the bisector, the direction halfway between the segments before and
after (the sum of both unit vectors). A cross-section at a vertex so halves the angle; offsets are measured along it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, List, Optional, Sequence, Tuple

import numpy as np

from ..georeference.axes import same_plan
from ..messages import Message, SurveyError, message
from ..surface.cells import candidate_pairs
from ..surface.tin import GRID
from ..units import LengthUnit
from .stations import Numbering, format_station
from .texts import (
    DOUBLES_BACK,
    LOCAL_GRID,
    NO_LENGTH,
    NOT_FINITE,
    OTHER_CRS,
    TOUCHES_ITSELF,
    VERTICES_DROPPED,
)  # fmt: skip

_HAIRPIN = np.cos(np.radians(179.5))  # a turn beyond this has no bisector to speak of
_AT_VERTEX = 1e-6  # metres within which a distance means a vertex
_PAIRS = 4_000_000  # place-segment pairs handled at once


@dataclass(frozen=True)
class Touch:
    """A place (2,) where a line meets itself, at two distances (m) along it."""

    first: float
    second: float
    xy: np.ndarray


@dataclass(frozen=True)
class Alignment:
    """A polyline with stations; immutable.

    ``xy``: (k, 2) float64 vertices in the CRS, metres, none repeated. ``at``: (k,) distance of each, metres.
    ``numbering``: of stations. ``touches``: where the line meets itself; ``messages`` say it for people.
    """

    name: str
    xy: np.ndarray
    at: np.ndarray
    numbering: Numbering
    touches: Tuple[Touch, ...] = ()
    messages: Tuple[Message, ...] = ()

    @property
    def length(self) -> float:
        """Plan length, metres."""
        return float(self.at[-1])

    @property
    def unit(self) -> LengthUnit:
        return self.numbering.unit

    def directions(self, distance: np.ndarray) -> np.ndarray:
        """Unit vectors (q, 2) along the line at ``distance`` (q,) metres; the bisector at a vertex."""
        distance = np.asarray(distance, float)
        unit = np.diff(self.xy, axis=0) / np.diff(self.at)[:, None]
        segment = self._segment(distance)
        direction: np.ndarray = unit[segment].copy()
        nearest = segment + (distance - self.at[segment] > self.at[segment + 1] - distance)
        inner = (nearest > 0) & (nearest < len(self.xy) - 1) & (np.abs(self.at[nearest] - distance) <= _AT_VERTEX)
        both = unit[nearest[inner] - 1] + unit[nearest[inner]]
        direction[inner] = both / np.hypot(*both.T)[:, None]
        return direction

    def places(self, distance: np.ndarray, offset: Any = 0.0) -> np.ndarray:
        """Coordinates (q, 2) at ``distance`` (q,) and ``offset`` (right positive), metres.

        Beyond its ends the line is taken to run on straight.
        """
        distance = np.asarray(distance, float)
        segment = self._segment(distance)
        share = (distance - self.at[segment]) / (self.at[segment + 1] - self.at[segment])
        on = self.xy[segment] + share[:, None] * (self.xy[segment + 1] - self.xy[segment])
        along = self.directions(distance)
        right = np.column_stack([along[:, 1], -along[:, 0]])
        return on + right * np.broadcast_to(np.asarray(offset, float), distance.shape)[:, None]

    def locate(self, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Distance and offset (q,), (q,) of the place of the line nearest to each ``xy`` (q, 2), the first of several.

        The offset is the distance to it, so beside the outside of a vertex it is measured to the vertex, and beyond
        the ends to the end.
        """
        xy = np.asarray(xy, float).reshape(-1, 2)
        distance, offset = np.empty(len(xy)), np.empty(len(xy))
        block = max(1, _PAIRS // (len(self.xy) - 1))
        for start in range(0, len(xy), block):
            part = slice(start, start + block)
            distance[part], offset[part] = self._nearest(xy[part])
        return distance, offset

    def between(self, begin: float, end: float, offset: float = 0.0) -> np.ndarray:
        """The line (k, 2) from distance ``begin`` to ``end``, moved sideways by ``offset``.

        Moved vertices keep the distance ``offset`` from both segments (mitre); for a bend tighter than the offset the
        result may run backwards.
        """
        inner = (self.at > begin + _AT_VERTEX) & (self.at < end - _AT_VERTEX)
        distance = np.concatenate([[begin], self.at[inner], [end]])
        if offset == 0.0:
            return self.places(distance)
        unit = np.diff(self.xy, axis=0) / np.diff(self.at)[:, None]
        segment = self._segment(distance)
        half_turn = np.sum(unit[segment] * self.directions(distance), axis=1)  # cosine; 1 away from vertices
        return self.places(distance, offset / half_turn)

    def label(self, distance: float) -> str:
        """The station at ``distance`` (m) as people write it."""
        return format_station(float(self.numbering.stations(np.array([distance]))[0]), self.unit)

    def _segment(self, distance: np.ndarray) -> np.ndarray:
        found: np.ndarray = np.clip(np.searchsorted(self.at, distance, "right") - 1, 0, len(self.at) - 2)
        return found

    def _nearest(self, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        start, length = self.xy[:-1], np.diff(self.at)
        unit = np.diff(self.xy, axis=0) / length[:, None]
        to = xy[:, None] - start
        along = np.clip(to[..., 0] * unit[:, 0] + to[..., 1] * unit[:, 1], 0.0, length)
        away = to - along[..., None] * unit
        square = away[..., 0] ** 2 + away[..., 1] ** 2
        best = np.argmin(square, axis=1)
        row = np.arange(len(xy))
        distance = self.at[best] + along[row, best]
        direction = self.directions(distance)
        off = away[row, best]
        side = off[:, 0] * direction[:, 1] - off[:, 1] * direction[:, 0]
        return distance, np.where(side < 0, -1.0, 1.0) * np.sqrt(square[row, best])


def make_alignment(
    xy: np.ndarray,
    name: str = "",
    start: float = 0.0,
    equations: Sequence[Tuple[float, float]] = (),
    unit: LengthUnit = LengthUnit.METRE,
) -> Alignment:
    """A line with stations from the vertices (k, 2 or 3) of a polyline in metres of the CRS; heights are ignored.

    ``start``: station of the first vertex; ``equations``: pairs (back, ahead): the station ``back`` of the numbering
    so far is ``ahead`` from there on; all in ``unit``. Raises SurveyError for coordinates that are not finite, no
    length, a line that doubles back (turns by more than 179.5 degrees at a vertex), and equations out of order.
    """
    plan = np.asarray(xy, float).reshape(len(xy), -1)[:, :2] if len(xy) else np.empty((0, 2))
    bad = np.flatnonzero(~np.all(np.isfinite(plan), axis=1))
    if len(bad):
        raise SurveyError(NOT_FINITE, name=name, vertex=int(bad[0]) + 1)
    kept = _without_repeats(plan)
    if len(kept) < 2:
        raise SurveyError(NO_LENGTH, name=name, vertices=len(plan))
    at = np.append(0.0, np.cumsum(np.hypot(*np.diff(kept, axis=0).T)))
    numbering = Numbering.of(float(at[-1]), start, equations, unit, name)
    line = Alignment(name, kept, at, numbering)
    _refuse_hairpins(line)
    touches = _touches(line)
    notes: List[Message] = []
    if len(kept) < len(plan):
        notes.append(message(VERTICES_DROPPED, name=name, count=len(plan) - len(kept)))
    if touches:
        first = touches[0]
        notes.append(
            message(
                TOUCHES_ITSELF, name=name, count=len(touches), first=line.label(first.first),
                second=line.label(first.second), easting=float(first.xy[0]), northing=float(first.xy[1]),
            )
        )  # fmt: skip
    return Alignment(name, kept, at, numbering, touches, tuple(notes))


def check_same_crs(line: Optional[Any], surface: Optional[Any]) -> None:
    """Raise SurveyError when the plan parts of two pyproj CRS (None for a local grid) differ."""
    if not same_plan(line, surface):
        said = [LOCAL_GRID if crs is None else crs.name for crs in (line, surface)]
        raise SurveyError(OTHER_CRS, line=said[0], surface=said[1])


def _without_repeats(xy: np.ndarray) -> np.ndarray:
    """Vertices farther than the plan grid from the one kept before; only repeats make the loop go round again."""
    while len(xy) > 1:
        near = np.hypot(*np.diff(xy, axis=0).T) < GRID
        near[1:] &= ~near[:-1]  # in a row of near ones every second goes, so that slow drift is not lost
        if not np.any(near):
            break
        xy = xy[np.append(True, ~near)]
    return xy


def _refuse_hairpins(line: Alignment) -> None:
    unit = np.diff(line.xy, axis=0) / np.diff(line.at)[:, None]
    back = np.flatnonzero(np.sum(unit[:-1] * unit[1:], axis=1) < _HAIRPIN) + 1
    if len(back):
        easting, northing = line.xy[back[0]]
        station = line.label(float(line.at[back[0]]))
        raise SurveyError(DOUBLES_BACK, name=line.name, station=station, easting=easting, northing=northing)


def _touches(line: Alignment) -> Tuple[Touch, ...]:
    """Where segments that are not neighbours meet, each place once, in order of the lower distance."""
    a, b = line.xy[:-1], line.xy[1:]
    found = [np.empty((0, 4))]
    low = line.xy.min(axis=0)
    x, y = (np.column_stack([a[:, i] - low[i], b[:, i] - low[i]]) for i in (0, 1))
    cell = max(float(np.median(np.diff(line.at))), line.length / 1e5, 1e-3)
    for i, j in candidate_pairs(x, y, x, y, cell):
        apart = np.flatnonzero(j > i + 1)
        i, j = i[apart], j[apart]
        meet, share_i, share_j = meetings(a[i], b[i], a[j], b[j])
        i, j, share_i, share_j = i[meet], j[meet], share_i[meet], share_j[meet]
        first = line.at[i] + share_i * (line.at[i + 1] - line.at[i])
        second = line.at[j] + share_j * (line.at[j + 1] - line.at[j])
        found.append(np.column_stack([first, second, line.places(first)]) if len(i) else found[0])
    rows = np.concatenate(found)
    _, one = np.unique(np.rint(rows[:, :2] / GRID).astype(np.int64), axis=0, return_index=True)
    return tuple(Touch(float(r[0]), float(r[1]), r[2:]) for r in rows[one])


def meetings(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Whether segments a-b and c-d (each (q, 2)) meet (within 0.1 mm), and where: shares (q,), (q,) of both.

    Of parallel segments that overlap the first common place, seen from a.
    """
    u, v, w = b - a, d - c, c - a
    lu, lv = np.hypot(*u.T), np.hypot(*v.T)
    cross = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    parallel = np.abs(cross) <= 1e-9 * lu * lv
    with np.errstate(divide="ignore", invalid="ignore"):
        s = (w[:, 0] * v[:, 1] - w[:, 1] * v[:, 0]) / cross
        t = (w[:, 0] * u[:, 1] - w[:, 1] * u[:, 0]) / cross
        over_u, over_v = GRID / lu, GRID / lv
        beside = np.abs(u[:, 0] * w[:, 1] - u[:, 1] * w[:, 0]) / lu
    meet = ~parallel & (s >= -over_u) & (s <= 1 + over_u) & (t >= -over_v) & (t <= 1 + over_v)
    at_c, at_d = (np.sum(u * p, axis=1) / lu**2 for p in (w, d - a))
    begin, end = np.maximum(np.minimum(at_c, at_d), 0.0), np.minimum(np.maximum(at_c, at_d), 1.0)
    overlap = parallel & (beside <= GRID) & (begin <= end + over_u)
    s = np.where(overlap, begin, s)
    with np.errstate(divide="ignore", invalid="ignore"):
        t = np.where(overlap, (begin - at_c) / (at_d - at_c), t)
    mask: np.ndarray = meet | overlap
    return mask, np.clip(np.where(mask, s, 0.0), 0, 1), np.clip(np.where(mask, t, 0.0), 0, 1)
