"""Cut and fill areas in cross sections, and the strips of ground between them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.along import LaidLines, lay_lines
from ..surface.tin import Tin
from .centreline import Stations
from .partition import Region

BAD_WIDTH = Text(
    "earthwork.half_width",
    QT_TRANSLATE_NOOP("core", "Sections of {width} m to each side cannot be drawn; give a width above 0."),
)


@dataclass(frozen=True)
class SectionAreas:
    """Areas (s,) of cut and of fill in the section at each ``station`` (s,), square metres, where both surfaces are;
    ``width``: (s,) metres compared."""

    station: np.ndarray
    cut: np.ndarray
    fill: np.ndarray
    width: np.ndarray


def section_lines(stations: Stations, half_width: float) -> np.ndarray:
    """Lines (s, 2, 2) in the CRS across the centreline, left to right. Raises SurveyError for a width not above 0."""
    if not 0 < half_width < np.inf:
        raise SurveyError(BAD_WIDTH, width=half_width)
    half = np.full(len(stations), half_width)
    result: np.ndarray = np.stack([stations.beside(-half), stations.beside(half)], axis=1)
    return result


def section_areas(existing: Tin, design: Tin, stations: Stations, half_width: float) -> SectionAreas:
    """Exact areas between two surfaces in sections up to ``half_width`` metres to each side of a centreline."""
    lines = list(section_lines(stations, half_width))
    laid = [lay_lines(tin, lines) for tin in (existing, design)]
    rows = [_areas(*(_profile(part, i) for part in laid)) for i in range(len(lines))]
    cut, fill, width = np.array(rows).reshape(-1, 3).T
    return SectionAreas(stations.station, cut, fill, width)


def _profile(laid: LaidLines, line: int) -> List[Tuple[np.ndarray, np.ndarray]]:
    """Distances and heights of the parts of one line."""
    parts = [slice(laid.start[i], laid.start[i + 1]) for i in np.flatnonzero(laid.line == line)]
    return [(laid.distance[part], laid.xyz[part, 2]) for part in parts]


def _areas(
    existing: List[Tuple[np.ndarray, np.ndarray]], design: List[Tuple[np.ndarray, np.ndarray]]
) -> Tuple[float, float, float]:
    cut = fill = width = 0.0
    for s, z in existing:
        for t, w in design:
            low, high = max(s[0], t[0]), min(s[-1], t[-1])
            if low >= high:
                continue
            at = np.unique(np.concatenate([s, t, [low, high]]))
            at = at[(at >= low) & (at <= high)]
            depth = np.interp(at, t, w) - np.interp(at, s, z)
            fill += _positive_area(at, depth)
            cut += _positive_area(at, -depth)
            width += high - low
    return cut, fill, width


def _positive_area(at: np.ndarray, depth: np.ndarray) -> float:
    """The integral of the positive part of a line through (at, depth)."""
    a, b, step = depth[:-1], depth[1:], np.diff(at)
    mean = (np.maximum(a, 0) + np.maximum(b, 0)) / 2
    crossing = a * b < 0  # there only the share of the step on the positive side counts
    top = np.maximum(a, b)[crossing]
    mean[crossing] = top * top / (2 * np.abs(a - b)[crossing])
    return float(np.sum(mean * step))


def strips_between(stations: Stations, half_width: float) -> Tuple[Region, ...]:
    """The ground between neighbouring sections as regions, named by their stations.

    They meet along the sections; within bends tighter than ``half_width`` they overlap.
    """
    lines = section_lines(stations, half_width)
    names = [f"{a:.3f} - {b:.3f}" for a, b in zip(stations.station[:-1], stations.station[1:])]
    return tuple(
        Region(name, (np.array([one[0], one[1], other[1], other[0]]),))
        for name, one, other in zip(names, lines[:-1], lines[1:])
    )
