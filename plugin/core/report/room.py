"""Finding room for text on a map, so that nothing is written over something else."""

from __future__ import annotations

from typing import Any, List, Optional, Tuple

import numpy as np

#: Sides on which text is tried, as shares of its half size: right, left, above, below, then the corners.
_SIDES = ((1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1))
_GAP = 4.5  # points between a mark and its text


class Room:
    """What of a map is taken already; places and sizes in points (1/72 inch) of the figure."""

    def __init__(self, axes: Any) -> None:
        axes.apply_aspect()
        self._axes = axes
        self._per_pixel = 72.0 / axes.figure.dpi
        low, high = axes.transAxes.transform([(0, 0), (1, 1)]) * self._per_pixel
        self._low, self._high = low, high
        self._taken: List[np.ndarray] = [np.empty((0, 3))]

    @property
    def points_per_unit(self) -> float:
        """Points on the map for one unit of its coordinates."""
        one, other = self.points(np.array([(0.0, 0.0), (1.0, 0.0)]))
        return float(other[0] - one[0])

    def points(self, xy: np.ndarray) -> np.ndarray:
        """Map coordinates (k, 2) in points of the figure."""
        there: np.ndarray = self._axes.transData.transform(xy) * self._per_pixel
        return there

    def take(self, xy: np.ndarray, radius: float) -> None:
        """Take discs around map coordinates (k, 2)."""
        at = self.points(np.asarray(xy, float).reshape(-1, 2))
        self._taken.append(np.column_stack([at, np.full(len(at), radius)]))

    def free(self, xy: np.ndarray, radius: float) -> np.ndarray:
        """Which discs (k,) around map coordinates (k, 2) touch nothing taken."""
        taken, at = np.concatenate(self._taken), self.points(np.asarray(xy, float).reshape(-1, 2))
        distance = np.hypot(*(at[:, None] - taken[None, :, :2]).transpose(2, 0, 1))
        free: np.ndarray = np.all(distance >= radius + taken[:, 2], axis=1)
        return free

    def take_text(self, xy: np.ndarray, width: float, height: float, rotation: float) -> None:
        """Take the ground of a text around ``xy`` (2,), turned by ``rotation`` degrees."""
        count = 2 + int(width / height * 1.5)
        along = np.linspace(-0.5, 0.5, count) * max(width - height, 0.0)
        turn = np.radians(rotation)
        at = self.points(xy[None])[0] + along[:, None] * [np.cos(turn), np.sin(turn)]
        self._taken.append(np.column_stack([at, np.full(count, 0.6 * height)]))

    def beside(self, xy: np.ndarray, width: float, height: float) -> Optional[Tuple[float, float]]:
        """Offset of the middle of a text from its mark at ``xy`` (2,), and take its ground; None if no side is free."""
        taken = np.concatenate(self._taken)
        here = self.points(xy[None])[0]
        half = 0.5 * np.array([width, height])
        for side in _SIDES:
            offset = (half + _GAP) * side
            middle = here + offset
            if np.any(middle - half < self._low) or np.any(middle + half > self._high):
                continue
            beyond = np.maximum(np.abs(taken[:, :2] - middle) - half, 0.0)
            if not np.any(np.hypot(beyond[:, 0], beyond[:, 1]) < taken[:, 2]):
                self.take_text(xy + offset / self.points_per_unit, width, height, 0.0)
                return float(offset[0]), float(offset[1])
        return None
