"""What is the surface like at a place: triangle, height, slope and aspect."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from .locate import heights_in, locate
from .tin import Tin


@dataclass(frozen=True)
class PlaceAnswers:
    """Answers for q places, in their order.

    ``triangle``: (q,) int64, -1 outside the surface. ``height``: (q,) float64 metres. ``slope``: (q,) float64 rise
    over run of the triangle. ``aspect``: (q,) float64 degrees clockwise from grid north of the way down;
    nan where the triangle is level. All nan outside.
    """

    triangle: np.ndarray
    height: np.ndarray
    slope: np.ndarray
    aspect: np.ndarray

    @property
    def slope_percent(self) -> np.ndarray:
        """Slope (q,) in percent."""
        return self.slope * 100

    @property
    def slope_degrees(self) -> np.ndarray:
        """Slope (q,) as an angle from level, degrees."""
        return slope_in_degrees(self.slope)


def ask_surface(tin: Tin, xy: np.ndarray) -> PlaceAnswers:
    """Triangle, height, slope and aspect at places ``xy`` (q, 2) in metres of the CRS.

    On an edge, the triangle of lowest number answers; up to ``locate.RIM`` beside the rim, that of the nearest edge of
    the rim.
    """
    xy = np.asarray(xy, float).reshape(-1, 2)
    triangle = locate(tin, xy)
    on = np.flatnonzero(triangle >= 0)
    height, slope, aspect = (np.full(len(xy), np.nan) for _ in range(3))
    height[on] = heights_in(tin, triangle[on], xy[on] - tin.origin)
    slope[on], aspect[on] = slope_and_aspect(gradients(tin.vertices[tin.triangles[triangle[on]]]))
    return PlaceAnswers(triangle, height, slope, aspect)


def triangle_gradients(tin: Tin) -> np.ndarray:
    """Rise of height per metre east and per metre north of each triangle, (m, 2) float64."""
    return gradients(tin.corners())


def triangle_slopes(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """Slope (rise over run) and aspect (degrees clockwise from grid north, downhill; nan if level) of each triangle.

    Both (m,) float64.
    """
    return slope_and_aspect(triangle_gradients(tin))


def slope_and_aspect(gradient: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Slope and aspect, as in ``triangle_slopes``, of gradients (k, 2)."""
    slope = np.hypot(gradient[:, 0], gradient[:, 1])
    aspect = np.degrees(np.arctan2(-gradient[:, 0], -gradient[:, 1])) % 360.0
    aspect[aspect >= 360.0] = 0.0  # a tiny negative angle is rounded up to the full circle
    aspect[slope == 0] = np.nan
    return slope, aspect


def slope_in_degrees(slope: np.ndarray) -> np.ndarray:
    """Rise over run as an angle from level, degrees."""
    degrees: np.ndarray = np.degrees(np.arctan(slope))
    return degrees


def gradients(corner: np.ndarray) -> np.ndarray:
    """Gradients (k, 2) of triangles with corners (k, 3, 3)."""
    e, f = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area = e[:, 0] * f[:, 1] - e[:, 1] * f[:, 0]
    east, north = e[:, 2] * f[:, 1] - f[:, 2] * e[:, 1], e[:, 0] * f[:, 2] - f[:, 0] * e[:, 2]
    return np.column_stack([east, north]) / area[:, None]


def triangle_boxes(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """Least and greatest local x, y and height (m, 3) of each triangle."""
    corner = tin.vertices.T[:, tin.triangles.T]  # coordinate, corner, triangle: long rows are fast
    return corner.min(axis=1).T, corner.max(axis=1).T
