"""What is told of places where lines cross or meet each other or a survey point."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Iterable, List, Optional

import numpy as np
from scipy.spatial import cKDTree

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
_NO_LINE = (1 << 31) - 1  # stands after all lines


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


def own_voices(network: Network, vertex: np.ndarray) -> np.ndarray:
    """Vertex, line and height (v, 3) of the lines that have one of these vertices (q,), distinct, of their own.

    Where several do: as each has it. Survey points and vertices without a height have none.
    """
    vertex = vertex[np.isfinite(network.z[vertex]) & (network.source[vertex] < 0)]
    of_several = network.shared[np.isin(network.shared[:, 0], vertex)]
    alone = vertex[~np.isin(vertex, of_several[:, 0])]
    owner = np.minimum(owners_of(network)[alone], _NO_LINE)
    return np.vstack([of_several, np.column_stack([alone, owner, network.z[alone]])])


class Told:
    """What is told of places where lines meet."""

    def __init__(
        self, origin: np.ndarray, constraints: Constraints, file: str, point_lines: Optional[np.ndarray]
    ) -> None:
        self.on_points: List[Conflict] = []
        self._voices = np.empty((0, 3))  # vertex, line, height
        self._crossed = np.empty(0, np.int64)  # vertices where lines cross: told whatever the heights
        self._origin, self._constraints, self._file, self._point_lines = origin, constraints, file, point_lines

    def crossings(
        self, network: Network, first: np.ndarray, second: np.ndarray, vertex: np.ndarray, at: Crossings
    ) -> None:
        """Segments ``first`` and ``second`` cross at ``vertex``; ``at`` has their heights."""
        both = np.concatenate([first, second])
        vertex = np.concatenate([vertex, vertex])
        voices = np.column_stack([vertex, network.line[both], np.concatenate([at.first_height, at.second_height])])
        self.voices(voices[~self._heard(vertex, network.line[both])])
        self._crossed = np.union1d(self._crossed, vertex)

    def voices(self, more: np.ndarray) -> None:
        """Vertex, line and height (v, 3) of lines that meet there."""
        self._voices = np.vstack([self._voices, more])

    def meetings(self, network: Network, meets: Meetings, there: int) -> None:
        """Segments that touch vertices numbered below ``there``, and the lines that have these."""
        some = np.flatnonzero(meets.vertex < there)
        vertex, line, height = meets.vertex[some], network.line[meets.segment[some]], meets.height[some]
        fresh = ~np.isin(vertex, self._voices[:, 0])  # else what the vertex has is made of what is known
        self.voices(own_voices(network, np.unique(vertex[fresh])))
        new = np.column_stack([vertex, line, height])[~self._heard(vertex, line)]
        self.on_survey_points(network, new)
        self.voices(new)

    def on_survey_points(self, network: Network, voices: np.ndarray) -> None:
        """Those of vertex, line and height (v, 3) that are survey points of another height."""
        vertex, line = voices[:, :2].astype(np.int64).T
        off = (network.source[vertex] >= 0) & (np.abs(voices[:, 2] - network.z[vertex]) > TOLD)
        vertex, line, height = vertex[off], line[off], voices[off, 2]
        point = map(self._point, network.source[vertex])
        x, y = network.x[vertex], network.y[vertex]
        self._add(self.on_points, x, y, map(self._line, line), height, point, network.z[vertex])

    def conflicts(self, network: Network) -> List[Conflict]:
        """Each place where lines cross, or meet at other heights, once: the two lines that differ most."""
        voices = self._voices[np.isfinite(self._voices[:, 2])]
        voices = voices[np.lexsort((voices[:, 1], voices[:, 2], voices[:, 0]))]
        start = np.flatnonzero(np.append(True, np.diff(voices[:, 0]) != 0)[: len(voices)])
        low, high = voices[start], voices[np.append(start[1:], len(voices))[: len(start)] - 1]
        vertex = low[:, 0].astype(np.int64)
        some = (high[:, 2] - low[:, 2] > TOLD) | np.isin(vertex, self._crossed)
        turned = (low[:, 1] > high[:, 1])[:, None]
        vertex, first, second = vertex[some], np.where(turned, high, low)[some], np.where(turned, low, high)[some]
        once = _once(network.x[vertex], network.y[vertex], first, second)
        vertex, first, second = vertex[once], first[once], second[once]
        names = [map(self._line, side[:, 1].astype(np.int64)) for side in (first, second)]
        found: List[Conflict] = []
        self._add(found, network.x[vertex], network.y[vertex], names[0], first[:, 2], names[1], second[:, 2])
        return found

    def refuse(self, network: Network, tolerance: float) -> None:
        worst = [c for c in self.conflicts(network) if c.difference > tolerance]
        if worst:
            raise SurveyError(CROSSING_LINES, file=self._file, count=len(worst), **vars(worst[0]))

    def _heard(self, vertex: np.ndarray, line: np.ndarray) -> np.ndarray:
        """Mask (q,) of the lines that are known at the vertices already."""
        known = self._voices[:, :2].astype(np.int64)
        mask: np.ndarray = np.isin((vertex << 31) | line, (known[:, 0] << 31) | known[:, 1])
        return mask

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


def _once(x: np.ndarray, y: np.ndarray, first: np.ndarray, second: np.ndarray) -> np.ndarray:
    """Mask (k,) of the places to be told: of neighbours on the grid where the same two lines meet, which rounding has
    parted, the one where they differ most. ``first, second``: (k, 3) vertex, line and height of either line.
    """
    kept = np.ones(len(x), bool)
    pairs = cKDTree(np.column_stack([x, y])).query_pairs(1.5, output_type="ndarray")
    same = (first[pairs, 1] == first[pairs[:, ::-1], 1]) & (second[pairs, 1] == second[pairs[:, ::-1], 1])
    differ = np.abs(second[:, 2] - first[:, 2])
    for a, b in pairs[same.all(axis=1)].tolist():
        kept[b if (differ[a], -a) >= (differ[b], -b) else a] = False
    return kept
