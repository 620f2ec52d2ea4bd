"""Stations along a centreline: places, directions, and lines square to it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

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
    """s stations of a centreline: ``station`` (s,) metres from its beginning, ``xy`` (s, 2) in the CRS, and ``right``
    (s, 2): where a place one metre right of the line is from it. It halves the angle at corners and turns square to the
    line within a step from there, so that parallels stay parallel and sections near a corner do not cross."""

    station: np.ndarray
    xy: np.ndarray
    right: np.ndarray

    def __len__(self) -> int:
        return len(self.station)

    def beside(self, offset: np.ndarray) -> np.ndarray:
        """Places (s, 2) at offsets (s,) metres to the right (left if negative)."""
        result: np.ndarray = self.xy + np.asarray(offset, float)[:, None] * self.right
        return result


def line_length(line: np.ndarray) -> float:
    """Plan length of a line (k, 2), metres."""
    return float(np.hypot(*np.diff(np.asarray(line, float)[:, :2], axis=0).T).sum())


def make_stations(line: np.ndarray, step: float, more: Sequence[float] = ()) -> Stations:
    """Stations every ``step`` metres, at the corners of ``line`` (k, 2), at its ends and at ``more`` stations.

    Raises SurveyError for a line of one place, one that turns back on itself, or a step that isn't above 0.
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
    segment = np.clip(np.searchsorted(at, station + _SAME, "right") - 1, 0, len(length) - 1)
    walked = station - at[segment]
    place = xy[segment] + walked[:, None] * along[segment]
    lean = _lean(along, xy)
    reach = np.minimum(length, step)[segment]
    share = [np.maximum(0, 1 - way / reach) for way in (walked, length[segment] - walked)]
    skew = lean[segment, 0] * share[0] + lean[segment, 1] * share[1]
    return Stations(station, place, _right(along[segment]) + skew[:, None] * along[segment])


def _lean(along: np.ndarray, xy: np.ndarray) -> np.ndarray:
    """How far sections lean forward at the beginning and end of each segment (k - 1, 2), metres for each metre right.

    At a corner the section halves the angle; it is square at the line's ends.
    """
    lean = np.zeros((len(along), 2))
    right = _right(along)
    both = (right[:-1] + right[1:]) / 2
    size = np.sum(both * both, axis=1)
    if np.any(size < 0.01):
        place = xy[1 + int(np.argmin(size))]
        raise SurveyError(TURNS_BACK, easting=float(place[0]), northing=float(place[1]))
    middle = both / size[:, None]
    lean[:-1, 1] = np.sum(middle * along[:-1], axis=1)
    lean[1:, 0] = np.sum(middle * along[1:], axis=1)
    return lean


def _distinct(station: np.ndarray, at: np.ndarray) -> np.ndarray:
    """Stations in order, without those that repeat one to a millimetre; corners ``at`` keep their exact place."""
    away = np.abs(station[:, None] - at[None, :])
    station = np.sort(np.where(away.min(axis=1) < 1e-3, at[away.argmin(axis=1)], station))
    result: np.ndarray = station[np.append(True, np.diff(station) > _SAME)]
    return result


def _right(along: np.ndarray) -> np.ndarray:
    return np.column_stack([along[:, 1], -along[:, 0]])
