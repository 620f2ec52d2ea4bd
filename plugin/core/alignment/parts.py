"""Crossfall by the parts of a lane: the whole of it where it has one fall, else each half beside its crown."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import Dict, Optional

import numpy as np

from ..surface.tin import Tin
from .crowns import Lane
from .grades import WindowSlopes, Within, crossfall_forms, make_windows, slopes_at
from .line import Alignment
from .pooling import pooled, rows_of
from .slopes import Sigma

#: Halves end so far (m) from the crown: points at their usual distance round it off.
_ROUNDED = 0.2


class Part(Enum):
    """What a crossfall is of; ``value`` is a word for programs."""

    LANE = "lane"
    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True)
class PartSlopes:
    """Crossfalls of w windows, positive where the surface rises to the right.

    ``by``: those of each :class:`Part`, nan where a window has no such part or is not on the surface. ``low``,
    ``high``: (w,) offsets (m) of the lane's edges; ``crown``: (w,) offset (m) of the crown, nan where the lane has one
    fall, and its standard deviation ``crown_sigma``.
    """

    by: Dict[Part, WindowSlopes]
    low: np.ndarray
    high: np.ndarray
    crown: np.ndarray
    crown_sigma: np.ndarray

    @property
    def line(self) -> Alignment:
        return self.by[Part.LANE].line

    @property
    def crowned(self) -> np.ndarray:
        """Mask (w,) of the windows with two halves."""
        return np.isfinite(self.crown)

    def has(self, part: Part) -> np.ndarray:
        """Mask (w,) of the windows that have a part."""
        return ~self.crowned if part is Part.LANE else self.crowned

    def at_edge(self, part: Part) -> WindowSlopes:
        """The crossfall at the left or right edge: of that half, or of the whole lane."""
        half, whole, own = self.by[part], self.by[Part.LANE], self.has(part)
        value, sigma = np.where(own, half.value, whole.value), np.where(own, half.sigma, whole.sigma)
        return WindowSlopes(whole.line, whole.begin, whole.end, value, sigma)

    def crown_at(self, distance: np.ndarray) -> np.ndarray:
        """Offset (q,) of the crown at distances (q,), metres; nan where the lane has one fall."""
        crown = replace(self.by[Part.LANE], value=self.crown, sigma=self.crown_sigma)
        return slopes_at(crown, distance)[0]

    def __len__(self) -> int:
        return len(self.low)


def part_slopes(
    line: Alignment, tin: Tin, sigma: Sigma, lane: Lane, window: float, step: Optional[float] = None,
    within: Within = None, together: bool = False,
) -> PartSlopes:  # fmt: skip
    """Crossfall by ``window`` (m) of each part of a ``lane``, see :func:`.grades.make_windows`.

    ``sigma``: noise of the vertices' heights (m). ``together``: neighbouring windows help each other
    (:mod:`.pooling`). Errors as :func:`.grades.crossfalls`.
    """
    begin, end = make_windows(line, window, step, within)
    low, high, crown, crown_sigma = lane.parts_at((begin + end) / 2)
    halves = np.isfinite(crown)
    spans = {
        Part.LANE: (~halves, low, high),
        Part.LEFT: (halves, low, np.where(halves, crown - _ROUNDED, high)),
        Part.RIGHT: (halves, np.where(halves, crown + _ROUNDED, low), high),
    }
    by = {}
    for part, (some, left, right) in spans.items():
        value, doubt = np.full(len(begin), np.nan), np.full(len(begin), np.nan)
        for first, last in rows_of(some):
            own = slice(first, last)
            forms = crossfall_forms(line, tin, begin[own], end[own], left[own], right[own])
            value[own], doubt[own] = pooled(forms, tin, sigma) if together else (forms.values(tin), forms.sigmas(sigma))
        by[part] = WindowSlopes(line, begin, end, value, doubt)
    return PartSlopes(by, low, high, crown, crown_sigma)
