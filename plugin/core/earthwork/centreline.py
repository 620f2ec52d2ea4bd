"""Stations along a centreline: places, directions, and lines square to it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .corners import FAN_STEP, SideCorners, right_of, side_corners, ways_beside

SHORT_LINE = Text(
    "earthwork.centreline",
    QT_TRANSLATE_NOOP("core", "The centreline has {count} different places; it needs two or more."),
)
BAD_STEP = Text(
    "earthwork.station_step",
    QT_TRANSLATE_NOOP("core", "Stations every {step} m cannot be set along {length:.1f} m; give a step above 0."),
)
TURNS_BACK = Text(
    "earthwork.centreline_turns_back",
    QT_TRANSLATE_NOOP("core", "The centreline turns back on itself at E {easting:.3f} N {northing:.3f}; redraw it."),
)

_SAME = 1e-6
_NEAR = 0.25
_MOST_STATIONS = 200_000


@dataclass(frozen=True)
class Stations:
    """s stations of a centreline: ``station`` (s,) metres from its beginning, ``xy`` (s, 2) in the CRS, and ``right``,
    ``left`` (s, 2): where a place one metre right or left of the line is from it. They halve the angle at corners and
    turn square to the line from there, so that parallels stay parallel and sections near a corner do not cross.

    ``meet``: (s, 2) on the left and on the right, the number of the place in which the sections of several stations
    meet inside a bend, -1 for others.
    """

    station: np.ndarray
    xy: np.ndarray
    right: np.ndarray
    left: np.ndarray
    meet: np.ndarray

    def __len__(self) -> int:
        return len(self.station)

    def beside(self, offset: np.ndarray) -> np.ndarray:
        """Places (s, 2) at offsets (s,) metres to the right (left if negative)."""
        offset = np.asarray(offset, float)[:, None]
        result: np.ndarray = self.xy + np.abs(offset) * np.where(offset < 0, self.left, self.right)
        return result


def line_length(line: np.ndarray) -> float:
    """Plan length of a line (k, 2), metres."""
    return float(np.hypot(*np.diff(np.asarray(line, float)[:, :2], axis=0).T).sum())


def make_stations(
    line: np.ndarray,
    step: float,
    more: Sequence[float] = (),
    room: Tuple[float, float] = (0.0, 0.0),
    rounded: bool = False,
) -> Stations:
    """Stations every ``step`` metres, at the corners of ``line`` (k, 2), at its ends and at ``more`` stations.

    ``room``: metres to the left and to the right within which sections do not cross, or only meet. With it, and
    ``rounded``, outer corners have several stations at one place, whose sections fan out.
    Raises SurveyError for a line of one place, one that turns back on itself, a step that isn't above 0, or a bend
    without the room (:mod:`.corners`).
    """
    xy = np.asarray(line, float)[:, :2]
    xy = xy[np.append(True, np.hypot(*np.diff(xy, axis=0).T) > _SAME)]
    if len(xy) < 2:
        raise SurveyError(SHORT_LINE, count=len(xy))
    steps = np.diff(xy, axis=0)
    length = np.hypot(*steps.T)
    at = np.append(0.0, np.cumsum(length))
    if not (np.isfinite(step) and step > 0 and at[-1] / step < _MOST_STATIONS):
        raise SurveyError(BAD_STEP, step=step, length=float(at[-1]))
    fixed = np.concatenate([at, [value for value in more if 0 < value < at[-1]]])
    regular = np.arange(0, at[-1], step)
    # a regular station close to a fixed one would only make a thin piece
    free = np.abs(regular[:, None] - np.sort(fixed)[None, :]).min(axis=1) > _NEAR * step
    station = _distinct(np.concatenate([fixed, regular[free]]), at)
    along = steps / length[:, None]
    _check_turns(along, xy)
    piece = np.clip(np.searchsorted(at, station + _SAME, "right") - 1, 0, len(length) - 1)
    walked = station - at[piece]
    walked[np.abs(walked) <= _SAME] = 0.0
    place = xy[piece] + walked[:, None] * along[piece]
    sides = [side_corners(xy, along, room[k], sign, rounded) for k, sign in enumerate((-1.0, 1.0))]
    ways, meet = zip(*(ways_beside(side, xy, along, piece, walked, step) for side in sides))
    found = Stations(station, place, ways[1], ways[0], np.column_stack(meet))
    corner = np.flatnonzero((walked == 0) & (piece > 0))
    for side in sides:
        fans = corner[side.fan[piece[corner] - 1]]
        found, corner = _fanned(found, side, along, fans, piece[fans], corner)
        piece = np.searchsorted(at, found.station + _SAME, "right") - 1
        piece = np.clip(piece, 0, len(length) - 1)
    return found


def _fanned(
    stations: Stations, side: SideCorners, along: np.ndarray, fans: np.ndarray, piece: np.ndarray, corner: np.ndarray
) -> Tuple[Stations, np.ndarray]:
    """Stations with more of them at ``fans`` (f,), where ``piece`` (f,) begins, so that those turn from the normal of
    the one piece to that of the next; and the numbers that ``corner`` (c,) have then."""
    many = np.ones(len(stations), np.int64)
    before, after = (side.sign * right_of(along)[k] for k in (piece - 1, piece))
    turn = np.arctan2(before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0], np.sum(before * after, axis=1))
    count = np.maximum(1, np.ceil(np.abs(turn) / FAN_STEP - 1e-9)).astype(np.int64)
    many[fans] += count
    number = np.repeat(np.arange(len(stations)), many)
    last = np.cumsum(many) - 1
    columns = {name: getattr(stations, name)[number] for name in ("station", "xy", "right", "left", "meet")}
    way = columns["right" if side.sign > 0 else "left"]
    for k, (at, n) in enumerate(zip(last[fans].tolist(), count.tolist())):
        angle = turn[k] * np.arange(n + 1) / n
        x, y = before[k]
        way[at - n : at + 1] = np.column_stack(
            [x * np.cos(angle) - y * np.sin(angle), x * np.sin(angle) + y * np.cos(angle)]
        )
    return Stations(**columns), last[corner]


def _check_turns(along: np.ndarray, xy: np.ndarray) -> None:
    size = np.sum(((along[:-1] + along[1:]) / 2) ** 2, axis=1)
    if np.any(size < 0.01):
        place = xy[1 + int(np.argmin(size))]
        raise SurveyError(TURNS_BACK, easting=float(place[0]), northing=float(place[1]))


def _distinct(station: np.ndarray, at: np.ndarray) -> np.ndarray:
    """Stations in order, without those that repeat one to a millimetre; corners ``at`` keep their exact place."""
    away = np.abs(station[:, None] - at[None, :])
    station = np.sort(np.where(away.min(axis=1) < 1e-3, at[away.argmin(axis=1)], station))
    result: np.ndarray = station[np.append(True, np.diff(station) > _SAME)]
    return result
