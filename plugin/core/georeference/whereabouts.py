"""Roughly where positions are, without working out a million of them where a few will do."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product
from typing import Any, Callable, Optional, Sequence, Tuple

import numpy as np

from .axes import Arrays, lonlat_box, to_lonlat

Box = Tuple[float, float, float, float]

#: Sets up to this size are worked out whole.
FEW = 4096
#: Between the nodes of a net over a region of 1000 km its edges bend by less, degrees.
BENDS = 0.02


@dataclass(frozen=True)
class Whereabouts:
    """``box``: west, south, east, north around the positions, degrees, None where none is finite. ``net``: longitudes
    and latitudes of a net over all of them, None for no such net. ``every``: works out all positions, (n,) each.
    ``file`` and ``lines`` (n,): where they stood.
    """

    box: Optional[Box]
    net: Optional[Arrays]
    every: Callable[[], Arrays]
    file: str
    lines: np.ndarray

    def __len__(self) -> int:
        return len(self.lines)

    def outside(self, area: Sequence[float]) -> int:
        """How many positions lie outside ``area`` (west, south, east, north)."""
        if self.net is not None and in_area(area, *self.net, margin=-BENDS).all():
            return 0
        return int((~in_area(area, *self.every())).sum())


def in_area(area: Sequence[float], lon: np.ndarray, lat: np.ndarray, margin: float = 0.0) -> np.ndarray:
    """Mask of positions in degrees within west, south, east, north, which may span the 180th meridian."""
    west, south, east, north = area
    width = (east - west) % 360.0 if east - west < 360.0 else 360.0
    with np.errstate(invalid="ignore"):
        along = (lon - west + margin) % 360.0
        inside = (along <= width + 2 * margin) & (lat >= south - margin) & (lat <= north + margin)
    return np.asarray(inside & np.isfinite(lon) & np.isfinite(lat))


def net_over(first: np.ndarray, second: np.ndarray) -> Arrays:
    """Nodes (81,) of a net over the rectangle around coordinates (n,), all finite."""
    x = np.linspace(first.min(), first.max(), 9)
    y = np.linspace(second.min(), second.max(), 9)
    nodes = np.array(list(product(x, y)))
    return nodes[:, 0], nodes[:, 1]


def of_degrees(lon: np.ndarray, lat: np.ndarray, file: str, lines: np.ndarray) -> Whereabouts:
    """Of positions in degrees."""
    box = lonlat_box(lon, lat)
    net = None
    if box is not None and np.isfinite(lon).all() and np.isfinite(lat).all():
        west, south, east, north = box
        net = net_over(np.array([west, east if east >= west else east + 360.0]), np.array([south, north]))
    return Whereabouts(box, net, lambda: (lon, lat), file, lines)


def of_plan(crs: Any, easting: np.ndarray, northing: np.ndarray, file: str, lines: np.ndarray) -> Whereabouts:
    """Of plan coordinates in metres."""

    def every() -> Arrays:
        return to_lonlat(crs, easting, northing)

    whole = np.isfinite(easting).all() and np.isfinite(northing).all()
    if len(easting) <= FEW or not whole:
        return of_degrees(*every(), file, lines)
    some = _rim(easting, northing)
    box = lonlat_box(*to_lonlat(crs, easting[some], northing[some]))
    return Whereabouts(box, to_lonlat(crs, *net_over(easting, northing)), every, file, lines)


def _rim(easting: np.ndarray, northing: np.ndarray) -> np.ndarray:
    """Indices of points among which are, but for metres, those farthest west, south, east and north."""
    reach = [way for one in (easting, northing, easting + northing, easting - northing) for way in (one, -one)]
    step = max(1, len(easting) // FEW)
    return np.unique(np.concatenate([[int(way.argmax()) for way in reach], np.arange(0, len(easting), step)]))
