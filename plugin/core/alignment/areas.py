"""Areas between two surfaces in cross-sections."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from .sections import SectionCut, Sections

Part = Tuple[np.ndarray, np.ndarray]


@dataclass(frozen=True)
class SectionAreas:
    """Of s sections, square metres: ``cut`` (s,) where the second surface is below the first, ``fill`` where above.

    ``covered``: (s,) metres of width where both surfaces are.
    """

    cut: np.ndarray
    fill: np.ndarray
    covered: np.ndarray


def section_areas(sections: Sections, existing: int = 0, design: int = 1) -> SectionAreas:
    """Areas between two of the surfaces that ``sections`` cut, exact between their vertices."""
    rows = [
        _areas(sections.cuts[existing], sections.cuts[design], number) for number in range(len(sections))
    ]  # a section has some tens of vertices: the loop costs little beside the cutting
    cut, fill, covered = np.array(rows, float).reshape(-1, 3).T
    return SectionAreas(cut, fill, covered)


def _areas(existing: SectionCut, design: SectionCut, number: int) -> Tuple[float, float, float]:
    total = np.zeros(3)
    for one in existing.parts(number):
        for other in design.parts(number):
            total += _between(one, other)
    return float(total[0]), float(total[1]), float(total[2])


def _between(one: Part, other: Part) -> np.ndarray:
    """Cut, fill and width where both parts are. A vertical face counts with neither side wrong: it has no width."""
    low, high = max(one[0][0], other[0][0]), min(one[0][-1], other[0][-1])
    if high <= low:
        return np.zeros(3)
    offset = np.unique(np.concatenate([one[0], other[0], [low, high]]))
    offset = offset[(offset >= low) & (offset <= high)]
    depth = np.interp(offset, *other) - np.interp(offset, *one)
    width, a, b = np.diff(offset), depth[:-1], depth[1:]
    whole = (a + b) / 2 * width
    with np.errstate(divide="ignore", invalid="ignore"):
        # where the difference changes sign, the part above 0 is a triangle
        above = np.where(a * b < 0, np.maximum(a, b) ** 2 / (2 * np.abs(a - b)) * width, np.maximum(whole, 0.0))
    fill = float(above.sum())
    return np.array([fill - float(whole.sum()), fill, high - low])
