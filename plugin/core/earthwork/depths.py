"""Volumes by class of depth."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Iterable, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import nice_length
from .overlay import Pieces
from .polygons import areas, integrals, positive_parts, rows, settled

BAD_DEPTHS = Text(
    "earthwork.depth_limits",
    QT_TRANSLATE_NOOP("core", "The depth limits {limits} (metres) must be above 0 and rise; mend their list."),
)


@dataclass(frozen=True)
class DepthClass:
    """Places where fill is ``low`` to ``high`` metres deep (cut: -high to -low, both negative or 0).

    ``volume``: all the earth moved there, from depth 0 on, in cubic metres; ``area``: square metres.
    """

    low: float
    high: float
    volume: float
    area: float

    @property
    def is_cut(self) -> bool:
        return self.low < 0


def volumes_in_depths(pieces: Iterable[Pieces], limits: Sequence[float]) -> Tuple[DepthClass, ...]:
    """Cut and fill by depth: classes from the deepest cut to the deepest fill.

    ``limits``: k rising depths above 0 (m), used for cut and for fill; they make 2 (k + 1) classes, whose volumes and
    areas add up to cut and fill. What is just as deep as a limit (but for rounding, ``polygons.FLAT``) is in the
    shallower class. Raises SurveyError for limits that don't rise.
    """
    steps = depth_steps(limits)
    sums = np.zeros((2, len(steps) - 1, 2))
    for part in pieces:
        depth = settled(part.second_height - part.first_height)
        for side, sign in enumerate((-1.0, 1.0)):
            rest = [(inner, x, y) for _, inner, (x, y) in positive_parts(sign * depth, part.x, part.y)]
            for k, limit in enumerate(steps[1:]):
                within, rest = _split(rest, limit)
                for inner, x, y in within:
                    sums[side, k] += integrals(x, y, inner).sum(), areas(x, y).sum()
    found: List[DepthClass] = []
    for k in range(len(steps) - 2, -1, -1):
        found.append(DepthClass(-steps[k + 1], -steps[k], *(float(v) for v in sums[0, k])))
    for k in range(len(steps) - 1):
        found.append(DepthClass(steps[k], steps[k + 1], *(float(v) for v in sums[1, k])))
    return tuple(found)


def depth_steps(limits: Sequence[float]) -> List[float]:
    """The limits with 0 before and infinity behind them. Raises SurveyError for limits that don't rise."""
    steps = [0.0, *(float(limit) for limit in limits), float("inf")]
    if not all(low < high for low, high in zip(steps[:-1], steps[1:])):
        raise SurveyError(BAD_DEPTHS, limits=", ".join(f"{limit:g}" for limit in limits))
    return steps


def usual_limits(pieces: Iterable[Pieces], crs: Optional[Any] = None) -> Tuple[float, ...]:
    """Depth limits (m), round in the unit of ``crs``, up to five of them, that share out what is deeper and shallower.

    The last is about the depth that one in fifty square metres of the ground exceeds.
    """
    found = [(np.abs(p.second_height - p.first_height).mean(axis=1), areas(p.x, p.y)) for p in pieces]
    depth, area = (np.concatenate(column) for column in zip(*found)) if found else (np.zeros(0), np.zeros(0))
    some = depth > 1e-6
    if not np.any(some):
        return (0.1,)
    depth, area = depth[some], area[some]
    order = np.argsort(depth)
    total = np.cumsum(area[order])
    deep = max(0.002, float(depth[order][np.searchsorted(total, 0.98 * total[-1])]))
    step = nice_length(deep / 2.5, crs)
    return tuple(round(step * k, 9) for k in range(1, max(2, int(deep / step + 1e-9)) + 1))


_Columns = Tuple[np.ndarray, np.ndarray, np.ndarray]  # depth, x and y at the corners of polygons


def _split(polygons: List[_Columns], limit: float) -> Tuple[List[_Columns], List[_Columns]]:
    """The parts of polygons up to ``limit`` deep, and those deeper."""
    if np.isinf(limit):
        return polygons, []
    within: List[_Columns] = []
    deeper: List[_Columns] = []
    for depth, x, y in polygons:
        over = settled(depth - limit)
        level = np.flatnonzero(np.all(over == 0, axis=1))
        if len(level):
            within.append((rows(depth, level), rows(x, level), rows(y, level)))
        for sign, found in ((-1.0, within), (1.0, deeper)):
            found += [
                (columns[0], columns[1], columns[2]) for _, _, columns in positive_parts(sign * over, depth, x, y)
            ]
    return within, deeper
