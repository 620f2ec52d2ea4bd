"""Coordinate systems of the EPSG register around a place: zones of one family, and others of the region."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Any, Iterator, NamedTuple, Optional, Tuple

import numpy as np
from pyproj import CRS
from pyproj.aoi import AreaOfInterest
from pyproj.database import query_crs_info
from pyproj.enums import PJType

from ..units import metres_per_unit
from .axes import horizontal
from .whereabouts import Box

#: How far around the area of a CRS its neighbouring zones are looked for, degrees.
AROUND_DEGREES = 15.0


def area_box(crs: Any) -> Optional[Box]:
    """The area of use of ``crs``: west, south, east, north in degrees, None where it has none."""
    area = crs.area_of_use
    return None if area is None else (area.west, area.south, area.east, area.north)


class _Opened(NamedTuple):
    """A CRS of the register, its area of use, what is computed on which datum, and metres in its unit."""

    crs: Any
    box: Optional[Box]
    kind: Tuple[Any, ...]
    metres: float


@lru_cache(maxsize=2048)  # opening one takes PROJ milliseconds, and a region has hundreds
def opened(authority: str, code: str) -> _Opened:
    crs = CRS.from_authority(authority, code)
    return _Opened(crs, area_box(crs), datum_and_projection(crs), metres_per_unit(crs))


@lru_cache(maxsize=32)
def registered(box: Box, around: float) -> Tuple[Any, ...]:
    """Projected CRSs of the EPSG register that touch ``box`` widened by ``around`` degrees, plain names first: it
    lists variants of one CRS with other axes, and the plain name is the shortest.
    """
    west, south, east, north = box
    width = (east - west) % 360.0 + 2 * around
    if width >= 360.0:
        west, east = -180.0, 180.0
    else:
        west, east = _wrapped(west - around), _wrapped(east + around)
    wide = AreaOfInterest(west, max(south - around, -90.0), east, min(north + around, 90.0))
    found = query_crs_info(auth_name="EPSG", pj_types=PJType.PROJECTED_CRS, area_of_interest=wide)
    return tuple(sorted(found, key=lambda info: (len(info.name), info.name)))


def _wrapped(lon: float) -> float:
    return (lon + 180.0) % 360.0 - 180.0


def family(chosen: Any, area: Box) -> Iterator[Any]:
    """CRSs around ``chosen``, whose area of use is ``area``: of its datum and unit, and its method of projection or
    kind of name."""
    base = chosen.name.split(" / ")[0]
    stem, method = stem_of(chosen.name), chosen.coordinate_operation.method_name
    seen = {_projection(chosen)}
    for info in registered(area, AROUND_DEGREES):
        name = info.name
        if name == chosen.name or name.split(" / ")[0] != base:
            continue
        if getattr(info, "projection_method_name", method) != method and stem_of(name) != stem:
            continue
        crs, _, kind, metres = opened(info.auth_name, info.code)
        if alike(metres, metres_per_unit(chosen)) and kind[1:] not in seen:
            seen.add(kind[1:])
            yield crs


def _projection(crs: Any) -> Tuple[Any, ...]:
    """What is computed, without the order of the axes."""
    operation = crs.coordinate_operation
    return (operation.method_name, *((parameter.name, parameter.value) for parameter in operation.params))


def datum_and_projection(crs: Any) -> Tuple[Any, ...]:
    return (crs.geodetic_crs.name, *_projection(crs))


def alike(metres: float, other: float) -> bool:
    return abs(metres / other - 1.0) < 1e-9


def stem_of(name: str) -> str:
    """Name of a CRS without what tells its zones apart."""
    return re.sub(r"\b(zone\s+)?[A-Z]?\d+(\.\d+)?[A-Z]?\b", "#", name)


def zone_number(name: str) -> Optional[int]:
    found = re.search(r"zone (\d+)", name)
    return int(found.group(1)) if found else None


def false_origin(crs: Any) -> Tuple[float, float]:
    """False easting and northing of the projection, metres; 0 where it has none."""
    operation = horizontal(crs).coordinate_operation
    east = north = 0.0
    for parameter in operation.params if operation else ():
        name = parameter.name.lower()
        if name.startswith(("false easting", "easting at")):
            east = parameter.value * parameter.unit_conversion_factor
        elif name.startswith(("false northing", "northing at")):
            north = parameter.value * parameter.unit_conversion_factor
    return east, north


def degrees_apart(one: Any, other: Any) -> float:
    """Degrees between the middles of two areas of use, to sort by."""
    first, second = area_box(one), area_box(other)
    if first is None or second is None:
        return 999.0
    (w1, s1, e1, n1), (w2, s2, e2, n2) = first, second
    lon = abs(_wrapped(w1 + ((e1 - w1) % 360.0) / 2 - w2 - ((e2 - w2) % 360.0) / 2))
    return round(float(np.hypot(lon, (s1 + n1 - s2 - n2) / 2)), 2)
