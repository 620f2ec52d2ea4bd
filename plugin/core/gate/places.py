"""Where the points of a file lie, in metres about their middle, whatever they are given in."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional

import numpy as np

from ..points.geographic import GeographicPoints
from ..points.pointset import PointSet

#: Metres of a degree of latitude on a sphere; a gate needs no better.
DEGREE = np.radians(1.0) * 6_371_000.0
#: Of more points some spread evenly tell where the middle is.
_MANY = 100_000


@dataclass(frozen=True)
class Places:
    """n places.

    ``first``, ``second``, ``height``: (n,) as given, easting and northing in metres, or longitude and latitude in
    degrees; heights in metres. ``degrees``: which of both. ``middle``: (2,) the median place as given, of very
    many points about. ``real``: the
    coordinates are of a coordinate system of the Earth, no local grid.
    """

    first: np.ndarray
    second: np.ndarray
    height: np.ndarray
    degrees: bool
    middle: np.ndarray
    real: bool

    def finite(self) -> np.ndarray:
        """Mask (n,) of the points with a place and a height."""
        return np.asarray(np.isfinite(self.first) & np.isfinite(self.second) & np.isfinite(self.height))

    def plan(self, first: np.ndarray, second: np.ndarray) -> np.ndarray:
        """Metres east and north of the middle (k, 2) of coordinates (k,) as given."""
        if not self.degrees:
            return np.column_stack([first - self.middle[0], second - self.middle[1]])
        east = (first - self.middle[0] + 180.0) % 360.0 - 180.0
        shrunk = DEGREE * float(np.cos(np.radians(self.middle[1])))
        return np.column_stack([east * shrunk, (second - self.middle[1]) * DEGREE])


def places_of(points: PointSet, geographic: Optional[GeographicPoints], used: np.ndarray) -> Places:
    """The places of ``points``, in degrees where ``geographic`` has them; the middle is that of mask ``used`` (n,)."""
    if geographic is None:
        first, second, height = points.easting, points.northing, points.height
    else:
        first, second, height = geographic.longitude, geographic.latitude, geographic.height
    some = np.flatnonzero(used & np.isfinite(first) & np.isfinite(second))
    some = some[:: max(1, len(some) // _MANY)]
    middle = np.array([np.median(each[some]) if len(some) else 0.0 for each in (first, second)])
    real = geographic is not None or points.crs is not None
    return Places(first, second, height, geographic is not None, middle, real)
