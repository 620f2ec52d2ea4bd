"""How volumes follow the heights of a surface: exactly where depths are clear, by halves where they may be noise."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, Iterable, List, Tuple

import numpy as np

from ..surface.tin import Tin
from .overlay import Pieces
from .places import SidePlaces
from .polygons import moments, positive_parts
from .triangles import Triangles


@dataclass(frozen=True)
class Derivatives:
    """How volumes follow heights: m³ for each metre that a vertex rises, and areas by triangle.

    ``cut``, ``fill``: (n,) by vertex of one surface; ``cut_area``, ``fill_area``: (m,) square metres by triangle, of
    pieces.
    """

    cut: np.ndarray
    fill: np.ndarray
    cut_area: np.ndarray
    fill_area: np.ndarray


class Following:
    """Sums of derivatives of cut and fill by the heights of one of the two surfaces."""

    def __init__(self, tin: Tin, is_existing: bool) -> None:
        self._tin, self._is_existing = tin, is_existing
        n, m = len(tin.vertices), len(tin.triangles)
        self._slope: Dict[float, _Sums] = {-1.0: _Sums(n), 1.0: _Sums(n)}
        self._area: Dict[float, _Sums] = {-1.0: _Sums(m), 1.0: _Sums(m)}
        self._triangles = Triangles(tin, tin.origin)

    def add_pieces(self, part: Pieces) -> None:
        """Pieces on which cut and fill are what they are; exact where no depth is 0."""
        if not np.array_equal(self._triangles.base, part.origin):
            self._triangles = Triangles(self._tin, part.origin)
        triangle = part.first if self._is_existing else part.second
        depth = part.second_height - part.first_height
        for sign in (-1.0, 1.0):
            for which, _, (x, y) in positive_parts(sign * depth, part.x, part.y):
                t = triangle[which]
                own, weights = _shares(self._triangles, t, x, y)
                self._area[sign].add(t, own)
                self._slope[sign].add(self._tin.triangles[t].ravel(), weights.ravel())

    def add_places(self, places: SidePlaces, area: np.ndarray, part_of_fill: np.ndarray) -> None:
        """Places (q,) with the ``area`` each stands for, and how much of it (0 to 1) counts as fill."""
        for sign, part in ((-1.0, 1 - part_of_fill), (1.0, part_of_fill)):
            weight = area * part
            self._slope[sign].add(places.vertex.ravel(), (weight[:, None] * places.share).ravel())

    def derivatives(self) -> Derivatives:
        rising = -1.0 if self._is_existing else 1.0  # ground that rises makes more cut and less fill
        slope, area = self._slope, self._area
        return Derivatives(
            -rising * slope[-1.0].total(), rising * slope[1.0].total(), area[-1.0].total(), area[1.0].total()
        )


def derivatives(pieces: Iterable[Pieces], tin: Tin, is_existing: bool) -> Derivatives:
    """Derivatives of cut and fill as they are measured, by the heights of one of the two surfaces."""
    found = Following(tin, is_existing)
    for part in pieces:
        found.add_pieces(part)
    return found.derivatives()


class _Sums:
    """Sums by number (0 to count), of what comes in small parts; added up when there is enough of it."""

    def __init__(self, count: int) -> None:
        self._sums = np.zeros(count)
        self._waiting: List[Tuple[np.ndarray, np.ndarray]] = []
        self._rows = 0

    def add(self, number: np.ndarray, value: np.ndarray) -> None:
        self._waiting.append((number, value))
        self._rows += len(number)
        if self._rows > 2 * len(self._sums) + 100_000:
            self.total()

    def total(self) -> np.ndarray:
        if self._waiting:
            numbers, values = (np.concatenate(column) for column in zip(*self._waiting))
            self._sums += np.bincount(numbers, values, len(self._sums))
            self._waiting, self._rows = [], 0
        return self._sums


def _shares(triangles: Triangles, t: np.ndarray, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Areas (k,) of polygons in triangles ``t`` and the integrals (k, 3) of the three corners' shares over them."""
    area, by_x, by_y = moments(x, y)
    tx, ty = triangles.x[t], triangles.y[t]
    double = (tx[:, 1] - tx[:, 0]) * (ty[:, 2] - ty[:, 0]) - (tx[:, 2] - tx[:, 0]) * (ty[:, 1] - ty[:, 0])
    weights = np.empty((len(t), 3))
    for corner in range(3):
        a, b = (corner + 1) % 3, (corner + 2) % 3
        dx, dy = tx[:, b] - tx[:, a], ty[:, b] - ty[:, a]
        at_first = dx * (y[:, 0] - ty[:, a]) - dy * (x[:, 0] - tx[:, a])
        weights[:, corner] = (area * at_first + dx * by_y - dy * by_x) / double
    return area, weights
