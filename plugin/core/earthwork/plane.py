"""Volumes to a level and to a sloping plane."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Iterator, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import make_points
from ..surface.build import build_surface
from ..surface.tin import Tin
from .overlay import Pieces

BAD_PLANE = Text(
    "earthwork.plane",
    QT_TRANSLATE_NOOP("core", "The level or plane has a value that is no number ({values}); give numbers."),
)
NO_THREE = Text(
    "earthwork.three_points",
    QT_TRANSLATE_NOOP("core", "The three points of the plane lie on one straight line; give others."),
)
FAR_LEVEL = Text(
    "earthwork.far_level",
    QT_TRANSLATE_NOOP(
        "core", "The level or plane lies at {level:.0f} m, where no ground is; give it in the unit of the heights."
    ),
)
_FARTHEST = 1e5  # metres; the ground of the earth lies within 12 km of the sea's level
_PART = 100_000


@dataclass(frozen=True)
class Plane:
    """A plane: ``height`` (m) at ``easting``, ``northing``, rising ``east`` and ``north`` (m per m)."""

    height: float
    east: float = 0.0
    north: float = 0.0
    easting: float = 0.0
    northing: float = 0.0

    def __post_init__(self) -> None:
        values = (self.height, self.east, self.north, self.easting, self.northing)
        if not np.all(np.isfinite(values)):
            raise SurveyError(BAD_PLANE, values=", ".join(f"{value}" for value in values))
        if abs(self.height) > _FARTHEST:
            raise SurveyError(FAR_LEVEL, level=self.height)

    def at(self, xy: np.ndarray) -> np.ndarray:
        """Height at places (..., 2) in the CRS."""
        xy = np.asarray(xy, float)
        result: np.ndarray = (
            self.height + self.east * (xy[..., 0] - self.easting) + self.north * (xy[..., 1] - self.northing)
        )
        return result

    def raised(self, by: float) -> Plane:
        """The same plane ``by`` metres higher."""
        return replace(self, height=self.height + by)


def plane_through(points: np.ndarray) -> Plane:
    """The plane through three points (3, 3) easting, northing, height. Raises SurveyError if they are on one line."""
    base, first, second = np.asarray(points, float)
    one, two = first - base, second - base
    area = one[0] * two[1] - one[1] * two[0]
    if abs(area) <= 1e-9 * max(1e-300, float(np.hypot(*one[:2]) * np.hypot(*two[:2]))):
        raise SurveyError(NO_THREE)
    east = (one[2] * two[1] - two[2] * one[1]) / area
    north = (one[0] * two[2] - two[0] * one[2]) / area
    return Plane(float(base[2]), float(east), float(north), float(base[0]), float(base[1]))


def plane_falling(height: float, easting: float, northing: float, slope_percent: float, towards: float) -> Plane:
    """The plane of ``height`` at a place, falling by ``slope_percent`` towards an azimuth (degrees from north)."""
    fall = slope_percent / 100
    east, north = -fall * np.sin(np.radians(towards)), -fall * np.cos(np.radians(towards))
    return Plane(height, float(east), float(north), easting, northing)


def plane_surface(plane: Plane, bounds: Tuple[float, float, float, float], crs: Optional[Any] = None) -> Tin:
    """The plane as a surface over ``bounds`` (west, south, east, north) and a little beyond."""
    (west, south), (east, north) = np.floor(bounds[:2]) - 1, np.ceil(bounds[2:]) + 1
    corner = np.array([[west, south], [east, south], [east, north], [west, north]])
    return build_surface(make_points(corner[:, 0], corner[:, 1], plane.at(corner), crs=crs)).tin


def plane_pieces(existing: Tin, plane: Plane) -> Iterator[Pieces]:
    """The triangles of a surface as pieces whose second surface is a plane (triangle 0)."""
    for start in range(0, len(existing.triangles), _PART):
        number = np.arange(start, min(start + _PART, len(existing.triangles)))
        corner = existing.vertices[existing.triangles[number]]
        x, y, z = (np.ascontiguousarray(corner[:, :, axis]) for axis in range(3))
        local = replace(plane, easting=plane.easting - existing.origin[0], northing=plane.northing - existing.origin[1])
        height = local.at(corner[:, :, :2])
        yield Pieces(x, y, existing.origin, number, np.zeros(len(number), np.int64), z, height)
