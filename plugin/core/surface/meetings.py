"""What is told of places where lines cross or meet each other or a survey point."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Iterable, List, Optional

import numpy as np

from ..linework.constraints import Constraints
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .network import Network
from .tin import GRID

CROSSING_LINES = Text(
    "crossing_lines",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines with different heights cross or meet at {count} places, the first at E {easting:.3f} N "
        "{northing:.3f}: {first} at {first_height:.3f} m and {second} at {second_height:.3f} m. "
        "Mend the lines, or choose a rule for crossings (mean, first).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: lines with different heights cross or meet at E {easting:.3f} N {northing:.3f}: {first} at "
        "{first_height:.3f} m and {second} at {second_height:.3f} m. Mend the lines, or choose a rule for "
        "crossings (mean, first).",
    ),
)
#: Heights are told in millimetres: a smaller difference (m) where lines touch could not be seen.
TOLD = 5e-4


@dataclass(frozen=True)
class Conflict:
    """Two lines that cross or meet: place in the CRS (m), the height of each there, and their labels.

    Or a line and a survey point on it, whose label is its line in the survey's file.
    """

    easting: float
    northing: float
    first: str
    second: str
    first_height: float
    second_height: float

    @property
    def difference(self) -> float:
        return abs(self.first_height - self.second_height)


@dataclass(frozen=True)
class Crossings:
    """Crossings: the place on the grid and both heights."""

    x: np.ndarray
    y: np.ndarray
    first_height: np.ndarray
    second_height: np.ndarray


@dataclass(frozen=True)
class Meetings:
    """Segments that are to be split: ``segment``, ``vertex``, ``along`` (0..1) and the segment's ``height`` there."""

    segment: np.ndarray
    vertex: np.ndarray
    along: np.ndarray
    height: np.ndarray


def owners_of(network: Network) -> np.ndarray:
    """The line (n,) that stands first of those that end at each vertex; -1 for survey points."""
    owner = np.full(len(network.x), np.iinfo(np.int64).max)
    for end in network.segments.T:
        np.minimum.at(owner, end, network.line)
    owner[network.source >= 0] = -1
    return owner


class Told:
    """What is told of places where lines meet."""

    def __init__(
        self, origin: np.ndarray, constraints: Constraints, file: str, point_lines: Optional[np.ndarray]
    ) -> None:
        self.conflicts: List[Conflict] = []
        self.on_points: List[Conflict] = []
        self._origin, self._constraints, self._file, self._point_lines = origin, constraints, file, point_lines

    def crossings(self, network: Network, first: np.ndarray, second: np.ndarray, at: Crossings) -> None:
        lines = network.line[first], network.line[second]
        self._add(
            self.conflicts,
            at.x,
            at.y,
            map(self._line, lines[0]),
            at.first_height,
            map(self._line, lines[1]),
            at.second_height,
        )

    def pairs(
        self,
        network: Network,
        vertex: np.ndarray,
        line: np.ndarray,
        height: np.ndarray,
        other: np.ndarray,
        its: np.ndarray,
    ) -> None:
        x, y = network.x[vertex], network.y[vertex]
        self._add(self.conflicts, x, y, map(self._line, line), height, map(self._line, other), its)

    def meetings(self, network: Network, meets: Meetings, there: int) -> None:
        """Segments that touch vertices numbered below ``there`` at other heights."""
        off = np.abs(meets.height - network.z[meets.vertex]) > TOLD
        some = np.flatnonzero(off & (meets.vertex < there))
        vertex, line, height = meets.vertex[some], network.line[meets.segment[some]], meets.height[some]
        of_point = network.source[vertex] >= 0
        lines = np.flatnonzero(~of_point)
        self.pairs(
            network,
            vertex[lines],
            owners_of(network)[vertex[lines]],
            network.z[vertex[lines]],
            line[lines],
            height[lines],
        )
        vertex, line, height = vertex[of_point], line[of_point], height[of_point]
        point = map(self._point, network.source[vertex])
        self._add(
            self.on_points,
            network.x[vertex],
            network.y[vertex],
            map(self._line, line),
            height,
            point,
            network.z[vertex],
        )

    def refuse(self, tolerance: float) -> None:
        worst = [c for c in self.conflicts if c.difference > tolerance]
        if worst:
            raise SurveyError(CROSSING_LINES, file=self._file, count=len(worst), **vars(worst[0]))

    def _add(
        self, to: List[Conflict], x: np.ndarray, y: np.ndarray, first: Iterable[str], height: np.ndarray,
        second: Iterable[str], its: np.ndarray,
    ) -> None:  # fmt: skip
        east, north = (x * GRID + self._origin[0]).tolist(), (y * GRID + self._origin[1]).tolist()
        to += map(Conflict, east, north, first, second, height.tolist(), its.tolist())

    def _line(self, number: int) -> str:
        known = 0 <= number < len(self._constraints.lines)
        return (self._constraints.lines[number].label or f"#{number + 1}") if known else "-"

    def _point(self, number: int) -> str:
        line = number + 1 if self._point_lines is None else int(self._point_lines[number])
        return f"{Path(self._file).name}:{line}"
