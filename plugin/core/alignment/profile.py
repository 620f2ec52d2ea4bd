"""Heights of one or several surfaces along a line, exact between their triangles' edges."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence, Tuple

import numpy as np

from ..messages import Message, SurveyError, message
from ..surface.along import lay_line
from ..surface.corridor import corridor
from ..surface.line_cuts import SAME_PLACE
from ..surface.tin import Tin
from .line import Alignment
from .texts import OFF_SURFACE, PARTLY_OFF


@dataclass(frozen=True)
class HeightLine:
    """Heights of a surface along a line; straight between neighbours of one part.

    ``distance``, ``height``: (p,) float64 metres; part i is ``[start[i]:start[i + 1]]``. ``gaps``: (g, 2) distances
    between which the line is outside the surface.
    """

    surface: str
    distance: np.ndarray
    height: np.ndarray
    start: np.ndarray
    gaps: np.ndarray

    def parts(self) -> List[Tuple[np.ndarray, np.ndarray]]:
        """(distance, height) of each part."""
        return [(self.distance[i:j], self.height[i:j]) for i, j in zip(self.start[:-1], self.start[1:])]

    def heights(self, distance: np.ndarray) -> np.ndarray:
        """Heights (q,) at distances (q,); nan off the surface. At a vertical step the height of either side."""
        distance = np.asarray(distance, float)
        result = np.full(distance.shape, np.nan)
        for own, height in self.parts():
            inside = (distance >= own[0] - SAME_PLACE) & (distance <= own[-1] + SAME_PLACE)
            result[inside] = np.interp(distance[inside], own, height)
        return result

    @property
    def height_range(self) -> Tuple[float, float]:
        return float(self.height.min()), float(self.height.max())


@dataclass(frozen=True)
class Profile:
    """Heights of surfaces along ``line``. ``messages``: what is off a surface."""

    line: Alignment
    surfaces: Tuple[HeightLine, ...]
    messages: Tuple[Message, ...]


def make_profile(line: Alignment, surfaces: Sequence[Tuple[str, Tin]], offset: float = 0.0) -> Profile:
    """The profile of named surfaces along ``line``, or along its parallel at ``offset`` (m, right positive).

    Heights equal the TIN's everywhere; a vertex wherever the line crosses an edge. Along a parallel, distances are
    those of the line itself. Raises SurveyError where the line is nowhere on a surface (another site or CRS).
    """
    found, notes = [], []
    for name, tin in surfaces:
        own, note = _height_line(line, name, tin, offset)
        found.append(own)
        notes.extend(note)
    return Profile(line, tuple(found), tuple(notes))


def _height_line(line: Alignment, name: str, tin: Tin, offset: float) -> Tuple[HeightLine, List[Message]]:
    path = line.between(0.0, line.length, offset)
    laid = lay_line(corridor(tin, [path]), path)
    if len(laid) == 0:
        west, south, east, north = tin.bounds
        raise SurveyError(
            OFF_SURFACE, name=line.name, surface=name, easting=float(path[0, 0]), northing=float(path[0, 1]),
            west=west, south=south, east=east, north=north,
        )  # fmt: skip
    distance, gaps = laid.distance, np.array([(g.start, g.end) for g in laid.gaps]).reshape(-1, 2)
    if offset != 0.0:
        along = np.append(0.0, np.cumsum(np.hypot(*np.diff(path, axis=0).T)))
        distance, gaps = np.interp(distance, along, line.at), np.interp(gaps, along, line.at)
    notes = []
    if len(gaps):
        first, last = (line.label(float(d)) for d in gaps[0])
        length = float(np.sum(gaps[:, 1] - gaps[:, 0]))
        notes.append(
            message(PARTLY_OFF, length=length, name=line.name, surface=name, count=len(gaps), first=first, last=last)
        )
    return HeightLine(name, distance, laid.xyz[:, 2], laid.start, gaps), notes
