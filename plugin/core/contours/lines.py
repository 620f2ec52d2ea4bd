"""Contours as data."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Iterator, Optional

import numpy as np

from ..units import LengthUnit


@dataclass(frozen=True)
class ContourOptions:
    """Which levels are drawn: ``base + k * interval`` for whole k, both in ``unit``.

    Every ``index_every``-th level (k divisible by it) is an index contour.
    """

    interval: float
    base: float = 0.0
    unit: LengthUnit = LengthUnit.METRE
    index_every: int = 5


@dataclass(frozen=True)
class Contours:
    """c contour lines with the higher ground on their left.

    ``xy``: (p, 2) float64, metres from ``origin``; line i is ``xy[start[i]:start[i + 1]]``; a closed
    line repeats its first point at the end. ``start``: (c + 1,) int64.
    ``level``: (c,) float64 metres. ``level_in_unit``: (c,) float64 in ``options.unit``.
    ``step``: (c,) int64, the k of the level. ``index``, ``closed``, ``depression``: (c,) bool;
    depression is True for a closed line with the lower ground inside.
    ``edge``: (p,) int64, the TIN edge on which each point lies, 3 * triangle + edge of the triangle;
    None where points do not lie on edges any more, as after smoothing.
    """

    xy: np.ndarray
    start: np.ndarray
    level: np.ndarray
    level_in_unit: np.ndarray
    step: np.ndarray
    index: np.ndarray
    closed: np.ndarray
    depression: np.ndarray
    origin: np.ndarray
    options: ContourOptions
    crs: Optional[Any] = None
    edge: Optional[np.ndarray] = None

    def __len__(self) -> int:
        return len(self.level)

    def line(self, i: int) -> np.ndarray:
        """Coordinates (k, 2) of line i in the CRS, metres."""
        return self.xy[self.start[i] : self.start[i + 1]] + self.origin

    def __iter__(self) -> Iterator[np.ndarray]:
        return (self.line(i) for i in range(len(self)))
