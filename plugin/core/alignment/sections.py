"""Cross-sections of surfaces: at an interval and at given stations, square to the line.

A section runs at right angles to the line's direction, at a vertex to the bisector (see :mod:`.line`), from ``left``
metres on the left to ``right`` metres on the right.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, List, Sequence, Tuple

import numpy as np

from ..messages import Figure, Message, SurveyError, message
from ..progress import Progress, part, silent
from ..surface.along import lay_lines
from ..surface.cells import candidate_pairs
from ..surface.corridor import corridor
from ..surface.line_cuts import SAME_PLACE
from ..surface.tin import Tin
from .line import Alignment, meetings
from .texts import BAD_INTERVAL, BAD_WIDTHS, LEFT, NO_SECTION_ON_SURFACE, RIGHT, SECTIONS_CROSS

_MOST = 100_000  # sections of one line


@dataclass(frozen=True)
class SectionCut:
    """Where one surface cuts s sections.

    ``offset``, ``height``: (p,) float64 metres, offset right positive. Part i is ``[start[i]:start[i + 1]]`` and
    belongs to section ``section[i]``; a section that leaves the surface has several parts or none.
    """

    surface: str
    offset: np.ndarray
    height: np.ndarray
    start: np.ndarray
    section: np.ndarray

    def parts(self, section: int) -> List[Tuple[np.ndarray, np.ndarray]]:
        """(offset, height) of each part of a section, from left to right."""
        first, last = np.searchsorted(self.section, [section, section + 1])
        ends = zip(self.start[first:last], self.start[first + 1 : last + 1])
        return [(self.offset[i:j], self.height[i:j]) for i, j in ends]


@dataclass(frozen=True)
class SectionCrossing:
    """Sections ``first`` and ``second`` cross at (2,) ``xy``, at these offsets (m) of each."""

    first: int
    second: int
    first_offset: float
    second_offset: float
    xy: np.ndarray


@dataclass(frozen=True)
class Sections:
    """s cross-sections of ``line``.

    ``distance``: (s,) metres, rising. ``left``, ``right``: (s,) widths, metres, not negative. ``ends``: (s, 2, 2)
    coordinates of the left and right end. ``cuts``: of each surface. ``crossings``: sections that cross each other.
    """

    line: Alignment
    distance: np.ndarray
    left: np.ndarray
    right: np.ndarray
    ends: np.ndarray
    cuts: Tuple[SectionCut, ...]
    crossings: Tuple[SectionCrossing, ...]
    messages: Tuple[Message, ...]

    def __len__(self) -> int:
        return len(self.distance)


def section_distances(
    line: Alignment, interval: float, stations: Sequence[float] = (), vertices: bool = False, ends: bool = True
) -> np.ndarray:
    """Distances (s,) in metres, rising, of sections at all stations that are whole multiples of ``interval``.

    Besides at the given ``stations``, at the line's ``vertices`` and ``ends``. Interval and stations in the line's
    unit; interval 0 for none. Raises SurveyError for an interval that is negative or makes more than 100,000, and for
    stations that are not on the line or stand for several places.
    """
    if not np.isfinite(interval) or interval < 0 or (interval and line.length / line.unit.metres / interval > _MOST):
        raise SurveyError(BAD_INTERVAL, interval=Figure(f"{interval:g} {line.unit.symbol}"), most=_MOST)
    found = [np.array([line.numbering.distance(station) for station in stations])]
    if interval:
        found.append(line.numbering.multiples(interval))
    if vertices:
        found.append(line.at[1:-1])
    if ends:
        found.append(line.at[[0, -1]])
    distance = np.sort(np.concatenate(found))
    return distance[np.append(True, np.diff(distance) > 1e-6)] if len(distance) else distance


def cut_sections(
    line: Alignment,
    distance: np.ndarray,
    left: Any,
    right: Any,
    surfaces: Sequence[Tuple[str, Tin]],
    progress: Progress = silent,
) -> Sections:
    """Cut named surfaces by sections at ``distance`` (s,), ``left`` and ``right`` metres wide (one value or (s,)).

    Heights equal the TIN's everywhere; a vertex wherever a section crosses an edge. Raises SurveyError for widths
    that are negative or both 0, and when no section meets a surface.
    """
    distance = np.asarray(distance, float)
    left, right = (np.broadcast_to(np.asarray(v, float), distance.shape).copy() for v in (left, right))
    bad = ~(np.isfinite(left) & np.isfinite(right) & (left >= 0) & (right >= 0) & (left + right > SAME_PLACE))
    if np.any(bad):
        first = int(np.argmax(bad))
        raise SurveyError(BAD_WIDTHS, left=Figure(f"{left[first]:g} m"), right=Figure(f"{right[first]:g} m"))
    ends = np.stack([line.places(distance, -left), line.places(distance, right)], axis=1)
    cuts = []
    for k, (name, tin) in enumerate(surfaces):
        cuts.append(_cut(name, tin, ends, left, part(progress, k / len(surfaces), (k + 1) / len(surfaces))))
    crossings = _crossings(ends, left, right)
    notes = (_said(line, distance, crossings),) if crossings else ()
    return Sections(line, distance, left, right, ends, tuple(cuts), crossings, notes)


def _cut(name: str, tin: Tin, ends: np.ndarray, left: np.ndarray, progress: Progress) -> SectionCut:
    lines = list(ends)
    laid = lay_lines(corridor(tin, lines), lines, progress)
    if len(laid) == 0 and len(ends):
        raise SurveyError(NO_SECTION_ON_SURFACE, count=len(ends), surface=name)
    own = np.repeat(laid.line, np.diff(laid.start))
    return SectionCut(name, laid.distance - left[own], laid.xyz[:, 2], laid.start, laid.line)


def _crossings(ends: np.ndarray, left: np.ndarray, right: np.ndarray) -> Tuple[SectionCrossing, ...]:
    """Pairs of sections that meet, in order."""
    if len(ends) < 2:
        return ()
    a, b = ends[:, 0], ends[:, 1]
    local = ends - ends.reshape(-1, 2).min(axis=0)
    cell = max(float(np.median(left + right)) / 2, 1e-3)
    pairs = [np.empty(0, np.int64)]
    for i, j in candidate_pairs(local[..., 0], local[..., 1], local[..., 0], local[..., 1], cell):
        pairs.append(np.unique(i[i < j] * len(ends) + j[i < j]))
    pair = np.unique(np.concatenate(pairs))
    i, j = pair // len(ends), pair % len(ends)
    meet, share_i, share_j = meetings(a[i], b[i], a[j], b[j])
    i, j, share_i, share_j = i[meet], j[meet], share_i[meet], share_j[meet]
    width = left + right
    places = a[i] + share_i[:, None] * (b[i] - a[i])
    rows = zip(i, j, share_i * width[i] - left[i], share_j * width[j] - left[j], places)
    return tuple(SectionCrossing(int(p), int(q), float(u), float(v), xy) for p, q, u, v, xy in rows)


def _said(line: Alignment, distance: np.ndarray, crossings: Tuple[SectionCrossing, ...]) -> Message:
    one = crossings[0]
    return message(
        SECTIONS_CROSS,
        count=len(crossings),
        first=line.label(float(distance[one.first])),
        second=line.label(float(distance[one.second])),
        offset=abs(one.first_offset),
        side=LEFT if one.first_offset < 0 else RIGHT,
    )
