"""Design profiles: grades between given heights, rounded by vertical curves where asked for."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .design_table import read_rows, read_value

CURVES_OVERLAP = Text(
    "earthwork.curves_overlap",
    QT_TRANSLATE_NOOP(
        "core",
        "The vertical curve of {length:.2f} m at station {station:.2f} m runs into its neighbour or past the end of "
        "the profile; shorten it.",
    ),
)
STATIONS_FALL = Text(
    "earthwork.profile_stations",
    QT_TRANSLATE_NOOP("core", "The stations of the profile must rise; station {station:.2f} m does not."),
)
FEW_STATIONS = Text(
    "earthwork.profile_short", QT_TRANSLATE_NOOP("core", "A profile needs heights at two stations or more.")
)

_OFF = 1e-3  # metres by which a chord may be off its curve
_COLUMNS = ("station", "height", "curve")


@dataclass(frozen=True)
class ProfilePoint:
    """A place where two grades meet: ``station`` and ``height`` in metres, ``curve``: length of the vertical curve."""

    station: float
    height: float
    curve: float = 0.0


def design_profile(points: Sequence[ProfilePoint]) -> np.ndarray:
    """Stations and heights (p, 2) of the profile, curves as chords less than 1 mm off.

    A vertical curve is a parabola that touches both grades, half of its length before and half behind the place where
    they meet: on it the height departs from the grade before by (g2 - g1) d² / (2 L), d metres from its beginning
    (any text on route surveying). Raises SurveyError for stations that do not rise and curves without room.
    """
    if len(points) < 2:
        raise SurveyError(FEW_STATIONS)
    station, height, curve = np.array([(p.station, p.height, p.curve) for p in points], float).T
    falls = np.flatnonzero(~(np.diff(station) > 0))
    if len(falls):
        raise SurveyError(STATIONS_FALL, station=float(station[falls[0] + 1]))
    begin, end = station - curve / 2, station + curve / 2
    room = np.append(begin[1:], station[-1]) - end >= -1e-9
    room &= begin - np.append(station[0], end[:-1]) >= -1e-9
    if not np.all(room & (curve >= 0)):
        i = int(np.argmin(room & (curve >= 0)))
        raise SurveyError(CURVES_OVERLAP, length=float(curve[i]), station=float(station[i]))
    grade = np.diff(height) / np.diff(station)
    parts: List[np.ndarray] = [np.array([[station[0], height[0]]])]
    for i in range(1, len(points) - 1):
        parts.append(_curve(station[i], height[i], curve[i], grade[i - 1], grade[i]))
    parts.append(np.array([[station[-1], height[-1]]]))
    rows = np.vstack(parts)
    result: np.ndarray = rows[np.append(True, np.diff(rows[:, 0]) > 1e-9)]
    return result


def _curve(station: float, height: float, length: float, before: float, after: float) -> np.ndarray:
    if length <= 0:
        return np.array([[station, height]])
    bend = abs(after - before) / length  # second derivative; a chord of c is off by bend c² / 8
    count = max(1, int(np.ceil(length / np.sqrt(8 * _OFF / bend)))) if bend > 0 else 1
    along = np.linspace(0.0, length, count + 1)
    start = height - before * length / 2
    return np.column_stack(
        [station - length / 2 + along, start + before * along + (after - before) * along**2 / (2 * length)]
    )


def read_profile(path: PathLike) -> np.ndarray:
    """The profile (p, 2) of a CSV table with the columns station, height and, if wanted, curve; metres.

    ``curve`` is the length of the vertical curve about the place. Raises SurveyError naming file and line.
    """
    rows = read_rows(path, _COLUMNS, _COLUMNS[:2])
    file = str(path)
    return design_profile(
        [
            ProfilePoint(
                read_value(file, line, "station", cells),
                read_value(file, line, "height", cells),
                read_value(file, line, "curve", cells, 0.0),
            )
            for line, cells in rows
        ]
    )


def profile_of_line(xyz: np.ndarray) -> np.ndarray:
    """The profile (p, 2) that a line (k, 3) with heights has; vertices without a height (nan) are passed over."""
    step = np.hypot(*np.diff(xyz[:, :2], axis=0).T)
    rows = np.column_stack([np.append(0.0, np.cumsum(step)), xyz[:, 2]])
    rows = rows[np.isfinite(rows[:, 1])]
    result: np.ndarray = rows[np.append(True, np.diff(rows[:, 0]) > 1e-6)] if len(rows) else rows
    return result
