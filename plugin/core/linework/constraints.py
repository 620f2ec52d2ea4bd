"""Lines that the surface must hold to."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import IntFlag
from typing import Tuple

import numpy as np

from .bridges import Bridge


class LineKind(IntFlag):
    """What a line does to the surface; also the bit set kept on each triangle edge."""

    NONE = 0
    BREAKLINE = 1
    BOUNDARY = 2
    VOID = 4


#: Kind, source and corners (r, 2) of each of several rings.
Rings = Tuple[Tuple[LineKind, int, np.ndarray], ...]


@dataclass(frozen=True)
class ConstraintLine:
    """A chain of vertices that must become edges of the surface.

    ``xyz``: (k, 3) float64 easting, northing, height in metres; height nan where the line has none
    (it is then taken from the surface around). Boundaries and voids are rings: the last vertex is
    joined to the first whether or not it repeats it. ``points``: (k,) int64 index of the survey point
    of each vertex, -1 where there is none. ``label``: what to call it in messages. ``bridges``: where it is carried
    across rejected points, or ends short of them; their vertices are survey points. ``source``: rings of one source
    count by the even-odd rule; the surface is within the boundaries of all sources and outside the voids of each.
    """

    kind: LineKind
    xyz: np.ndarray
    points: np.ndarray
    label: str = ""
    bridges: Tuple[Bridge, ...] = ()
    source: int = 0

    @property
    def bridged(self) -> float:
        """Length in plan (m) on which the line is carried across."""
        return sum(bridge.length for bridge in self.bridges if bridge.carried)

    @property
    def closed(self) -> bool:
        return bool(self.kind & (LineKind.BOUNDARY | LineKind.VOID))


@dataclass(frozen=True)
class Constraints:
    """All lines of a survey, in their order of precedence."""

    lines: Tuple[ConstraintLine, ...] = field(default_factory=tuple)

    def __len__(self) -> int:
        return len(self.lines)


def make_line(kind: LineKind, xyz: np.ndarray, label: str = "") -> ConstraintLine:
    """A constraint from coordinates (k, 2) or (k, 3) that do not belong to survey points."""
    xyz = np.asarray(xyz, float)
    if xyz.ndim != 2 or xyz.shape[1] not in (2, 3):
        raise ValueError("a line needs coordinates of shape (k, 2) or (k, 3)")
    if xyz.shape[1] == 2:
        xyz = np.column_stack([xyz, np.full(len(xyz), np.nan)])
    return ConstraintLine(kind, xyz, np.full(len(xyz), -1, np.int64), label)
