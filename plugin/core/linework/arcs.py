"""Arcs through three measured points, drawn as chords.

The rule: a vertex marked as arc is the middle point of a circular arc through the vertex before, itself
and the vertex after on its line. Where two neighbours are both marked, the span between them belongs to
the arc of the first. Circle through three points: elementary geometry (circumcircle).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import Dict, List, Optional, Tuple

import numpy as np

from .convention import SAME_PLACE

#: A span of more than half a circle between two measured points is taken for a mistake.
_HALF_TURN = math.pi * (1 + 1e-9)
#: From this radius (metres) on an arc is a straight line.
_STRAIGHT_RADIUS = 1e8


class ArcTrouble(Enum):
    """Why an arc is not, or not fully, drawn as marked."""

    AT_END = "at_end"
    IMPOSSIBLE = "impossible"
    DISAGREES = "disagrees"


@dataclass(frozen=True)
class Arc:
    """A circular arc from ``start`` through a middle point to an end.

    ``centre`` (2,) is relative to ``start`` (2,); ``turn`` is +1 counter-clockwise, -1 clockwise, 0 straight;
    ``sweeps`` are the angles in radians from start to middle and from middle to end.
    """

    start: np.ndarray
    centre: np.ndarray
    radius: float
    turn: int
    sweeps: Tuple[float, float]

    def chord_count(self, span: int, tolerance: float) -> int:
        """Fewest equal chords on ``span`` (0 or 1) whose sagitta is at most ``tolerance``."""
        if not self.turn:
            return 1
        # sagitta = r (1 - cos(a/2)) = 2 r sin(a/4)^2, and never coarser than a quarter turn
        step = min(4 * math.asin(math.sqrt(min(tolerance / (2 * self.radius), 0.5))), math.pi / 2)
        return max(1, math.ceil(self.sweeps[span] / step))

    def at(self, span: int, fractions: np.ndarray) -> np.ndarray:
        """Positions (m, 2) at ``fractions`` (m,) of a curved span's sweep."""
        begun = self.sweeps[0] if span else 0.0
        first = math.atan2(-self.centre[1], -self.centre[0])
        angle = first + self.turn * (begun + self.sweeps[span] * fractions)
        return self.start + self.centre + self.radius * np.column_stack([np.cos(angle), np.sin(angle)])


def arc_through(start: np.ndarray, middle: np.ndarray, end: np.ndarray) -> Optional[Arc]:
    """The arc through three positions (2,), or None when there is none or a span exceeds half a circle."""
    a, b = middle[:2] - start[:2], end[:2] - start[:2]
    lengths = [math.hypot(*a), math.hypot(*(b - a)), math.hypot(*b)]
    if min(lengths) < SAME_PLACE:
        return None
    cross = float(a[0] * b[1] - a[1] * b[0])
    if abs(cross) * 2 * _STRAIGHT_RADIUS <= math.prod(lengths):
        straight = float(a @ (b - a)) > 0
        return Arc(start[:2], np.zeros(2), math.inf, 0, (0.0, 0.0)) if straight else None
    aa, bb = float(a @ a), float(b @ b)
    centre = np.array([b[1] * aa - a[1] * bb, a[0] * bb - b[0] * aa]) / (2 * cross)
    turn = 1 if cross > 0 else -1
    sweeps = (_sweep(-centre, a - centre, turn), _sweep(a - centre, b - centre, turn))
    if max(sweeps) > _HALF_TURN:
        return None
    return Arc(start[:2], centre, math.hypot(*centre), turn, sweeps)


def _sweep(first: np.ndarray, second: np.ndarray, turn: int) -> float:
    """Angle 0..2 pi from one radius to another in the direction of ``turn``."""
    angle = math.atan2(first[0] * second[1] - first[1] * second[0], float(first @ second))
    return (turn * angle) % (2 * math.pi)


@dataclass(frozen=True)
class ShapedLine:
    """A line with its arcs chorded: ``xyz`` (m, 3); ``source`` (m,) index of the given vertex, -1 where inserted.

    ``troubles``: given vertices whose arc could not be drawn as marked, and why.
    """

    xyz: np.ndarray
    source: np.ndarray
    troubles: Tuple[Tuple[int, ArcTrouble], ...]


def shape_line(xyz: np.ndarray, marked: np.ndarray, closed: bool, tolerance: float) -> ShapedLine:
    """Chord the arcs of a line.

    ``xyz`` (k, 3) metres without repeated places; ``marked`` (k,) mask of middle points; ``closed``: the
    last vertex runs on to the first, which is not repeated. ``tolerance``: metres, greatest sagitta.
    Heights run linearly along each arc; measured vertices are kept exactly.
    """
    count = len(xyz)
    spans: Dict[int, Tuple[Arc, int]] = {}
    troubles: List[Tuple[int, ArcTrouble]] = []
    for index in np.flatnonzero(marked).tolist():
        if not closed and index in (0, count - 1):
            troubles.append((index, ArcTrouble.AT_END))
            continue
        before, after = (index - 1) % count, (index + 1) % count
        arc = arc_through(xyz[before], xyz[index], xyz[after])
        if arc is None:
            troubles.append((index, ArcTrouble.IMPOSSIBLE))
            continue
        if any(
            not _agree(spans[span], (arc, place), tolerance)
            for span, place in ((before, 0), (index, 1))
            if span in spans
        ):
            troubles.append((index, ArcTrouble.DISAGREES))
        spans.setdefault(before, (arc, 0))
        spans.setdefault(index, (arc, 1))
    return _assemble(xyz, spans, tuple(troubles), tolerance)


def _agree(first: Tuple[Arc, int], second: Tuple[Arc, int], tolerance: float) -> bool:
    """Whether two arcs over one span stand off its chord alike, within ``tolerance`` at mid-span."""
    return abs(_rise(*first) - _rise(*second)) <= tolerance


def _rise(arc: Arc, span: int) -> float:
    """Sagitta of a whole span, signed by its turn."""
    return arc.turn * arc.radius * (1 - math.cos(arc.sweeps[span] / 2)) if arc.turn else 0.0


def _assemble(
    xyz: np.ndarray, spans: Dict[int, Tuple[Arc, int]], troubles: Tuple[Tuple[int, ArcTrouble], ...], tolerance: float
) -> ShapedLine:
    pieces: List[np.ndarray] = []
    sources: List[np.ndarray] = []
    done = 0
    for index in sorted(spans):
        arc, span = spans[index]
        chords = arc.chord_count(span, tolerance)
        if chords == 1:
            continue
        fractions = np.arange(1, chords) / chords
        first, last = xyz[index, 2], xyz[(index + 1) % len(xyz), 2]
        heights = first + (last - first) * fractions
        pieces += [xyz[done : index + 1], np.column_stack([arc.at(span, fractions), heights])]
        sources += [np.arange(done, index + 1), np.full(chords - 1, -1)]
        done = index + 1
    pieces.append(xyz[done:])
    sources.append(np.arange(done, len(xyz)))
    return ShapedLine(np.concatenate(pieces), np.concatenate(sources).astype(np.int64), troubles)
