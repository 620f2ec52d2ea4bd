"""Between plan coordinates in metres and longitude and latitude, whatever the axes of a CRS.

Axis order is that of ``always_xy``: easting before northing, longitude before latitude. Longitudes and
latitudes here are degrees from Greenwich on the datum of the CRS itself: no datum is changed.
"""

from __future__ import annotations

import math
from typing import Any, Optional, Tuple

import numpy as np
from pyproj import CRS, Transformer, proj_version_str
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..units import metres_per_unit

MIRRORED = Text(
    "axes.mirrored",
    QT_TRANSLATE_NOOP(
        "core",
        "{crs}: its axes ({axes}) make a mirrored plan; choose the variant of this CRS with axes to east and north.",
    ),
)
TURNED = Text(
    "axes.turned",
    QT_TRANSLATE_NOOP(
        "core",
        "{crs}: its axes run {first} and {second}; the columns easting and northing hold them as they are. Maps have "
        "south at the top, and directions count from there.",
    ),
    weight=1,
)
NOT_COMPUTED = Text(
    "axes.not_computed",
    QT_TRANSLATE_NOOP(
        "core",
        "PROJ {version} cannot compute {crs} ({method}): where the points lie on the Earth is not known, and not "
        "checked.",
    ),
    weight=2,
)

Arrays = Tuple[np.ndarray, np.ndarray]


def horizontal(crs: Any) -> Any:
    """The plan part of ``crs``: of a compound CRS its first part, of a bound one what it is bound from."""
    if crs.is_bound and crs.source_crs is not None:
        return horizontal(crs.source_crs)
    parts = crs.sub_crs_list
    return horizontal(parts[0]) if parts else crs


def has_heights(crs: Any) -> bool:
    """Whether ``crs`` says what its heights are: compound, or with an ellipsoidal height as third axis."""
    return len(crs.sub_crs_list) > 1 or len(horizontal(crs).axis_info) > 2


def flat(crs: Any) -> Any:
    """The plan part of ``crs`` with two axes."""
    plan = horizontal(crs)
    return plan if len(plan.axis_info) < 3 else _with_axes(plan, keep=2)


def same_plan(one: Optional[Any], other: Optional[Any]) -> bool:
    """Whether plan coordinates mean the same in two CRSs (None: a local grid), axis order aside."""
    if one is None or other is None:
        return one is other
    return bool(flat(one).equals(flat(other), ignore_axis_order=True))


def solid(crs: Any) -> Any:
    """The geographic ``crs`` with an ellipsoidal height in metres as third axis."""
    return crs if len(crs.axis_info) > 2 else _with_axes(crs, keep=3)


_ELLIPSOIDAL_HEIGHT = {
    "name": "Ellipsoidal height",
    "abbreviation": "h",
    "direction": "up",
    "unit": "metre",
}


def _with_axes(crs: Any, keep: int) -> Any:
    """``crs`` with two or three axes. By its JSON: pyproj learnt ``to_3d`` in 3.1 and ``to_2d`` in 3.6."""
    described = crs.to_json_dict()
    described.pop("id", None)
    axes = described["coordinate_system"]["axis"]
    described["coordinate_system"]["axis"] = [*axes, _ELLIPSOIDAL_HEIGHT][:keep]
    made = CRS.from_json_dict(described)
    # PROJ finds the operations of a CRS by its code.
    authority = made.to_authority(min_confidence=90)
    found = CRS.from_authority(*authority) if authority else None
    return found if found is not None and len(found.axis_info) == keep else made


def to_lonlat(crs: Any, easting: Any, northing: Any) -> Arrays:
    """Longitude and latitude (n,), degrees, of plan coordinates in metres; inf or nan where there is none."""
    plan = flat(crs)
    metres = metres_per_unit(plan)
    there = Transformer.from_crs(plan, plan.geodetic_crs, always_xy=True)
    lon, lat = there.transform(np.asarray(easting, float) / metres, np.asarray(northing, float) / metres)
    return _in_degrees(plan.geodetic_crs, lon, lat)


def from_lonlat(crs: Any, longitude: Any, latitude: Any) -> Arrays:
    """Plan coordinates (n,), metres, of longitude and latitude in degrees; inf where there are none."""
    plan = flat(crs)
    lon, lat = from_degrees(plan.geodetic_crs, longitude, latitude)
    there = Transformer.from_crs(plan.geodetic_crs, plan, always_xy=True)
    easting, northing = there.transform(lon, lat)
    metres = metres_per_unit(plan)
    return np.asarray(easting, float) * metres, np.asarray(northing, float) * metres


def _degrees_per_unit(geographic: Any) -> float:
    return math.degrees(geographic.axis_info[0].unit_conversion_factor)


def _prime_meridian(geographic: Any) -> float:
    meridian = geographic.prime_meridian
    return math.degrees(meridian.longitude * meridian.unit_conversion_factor) if meridian else 0.0


def _in_degrees(geographic: Any, lon: Any, lat: Any) -> Arrays:
    unit = _degrees_per_unit(geographic)
    return np.asarray(lon, float) * unit + _prime_meridian(geographic), np.asarray(lat, float) * unit


def from_degrees(geographic: Any, longitude: Any, latitude: Any, from_greenwich: bool = True) -> Arrays:
    """Degrees in the unit of ``geographic`` (gon for some), counted from its prime meridian."""
    unit = _degrees_per_unit(geographic)
    zero = _prime_meridian(geographic) if from_greenwich else 0.0
    return (np.asarray(longitude, float) - zero) / unit, np.asarray(latitude, float) / unit


def computed(crs: Any) -> bool:
    """Whether PROJ can compute the projection of ``crs``; it has no formulas for a few of the register."""
    plan = flat(crs)
    try:
        Transformer.from_crs(plan, plan.geodetic_crs, always_xy=True)
    except ProjError:
        return False
    return True


def turned(crs: Optional[Any]) -> bool:
    """Whether the axes of ``crs`` run west and south, so that a map in it has south at the top."""
    return crs is not None and [axis.direction for axis in flat(crs).axis_info[:2]] == ["west", "south"]


def mirrored(crs: Any) -> bool:
    """Whether easting and northing of ``crs`` make a mirrored plan, such as axes south and west do."""
    area = flat(crs).area_of_use
    if area is None:
        return False
    width = (area.east - area.west) % 360.0 or 360.0
    latitude = min(max((area.south + area.north) / 2.0, -89.0), 89.0)
    return _turn(crs, (area.west + width / 2.0 + 180.0) % 360.0 - 180.0, latitude) < 0


def _turn(crs: Any, longitude: float, latitude: float) -> float:
    """Positive where a turn from east to north at a place is one from the first to the second axis too."""
    step = 1e-4
    lon = longitude + np.array([0.0, step, 0.0])
    lat = latitude + np.array([0.0, 0.0, step if latitude < 89 else -step])
    x, y = from_lonlat(crs, lon, lat)
    turn = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0])
    return float(turn * (lat[2] - lat[0]))


def axes_said(crs: Any) -> Tuple[Message, ...]:
    """What to say about the axes of a CRS that coordinates stay in: turned, or beyond PROJ."""
    plan = flat(crs)
    if not computed(crs):
        method = plan.coordinate_operation.method_name if plan.coordinate_operation else ""
        return (message(NOT_COMPUTED, version=proj_version_str, crs=plan.name, method=method),)
    if not turned(crs):
        return ()
    first, second = (axis.direction for axis in plan.axis_info[:2])
    return (message(TURNED, crs=plan.name, first=first, second=second),)


def check_axes(crs: Any, longitude: float, latitude: float) -> Tuple[Message, ...]:
    """What to say about the axes of ``crs`` at a place in degrees.

    Raises SurveyError when easting and northing would make a mirrored plan (axes south and west, say).
    """
    if _turn(crs, longitude, latitude) < 0:
        plan = flat(crs)
        raise SurveyError(MIRRORED, crs=plan.name, axes=", ".join(axis.direction for axis in plan.axis_info[:2]))
    return axes_said(crs)


def lonlat_box(longitude: np.ndarray, latitude: np.ndarray) -> Optional[Tuple[float, float, float, float]]:
    """West, south, east, north (degrees) around positions; west > east across the 180th meridian.

    None where no position is finite.
    """
    good = np.isfinite(longitude) & np.isfinite(latitude)
    if not good.any():
        return None
    lon, lat = longitude[good], latitude[good]
    lon = (lon + 180.0) % 360.0 - 180.0
    if lon.max() - lon.min() > 180.0:
        lon = np.where(lon < 0, lon + 360.0, lon)
    west, east = float(lon.min()), float(lon.max())
    wrap = [value - 360.0 if value > 180.0 else value for value in (west, east)]
    return wrap[0], float(lat.min()), wrap[1], float(lat.max())
