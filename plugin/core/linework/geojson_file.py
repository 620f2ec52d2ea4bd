"""GeoJSON files that others wrote, read with care.

Coordinates in the survey's own system, named in the ``crs`` member of the GeoJSON specification of 2008 as GDAL writes
it; without that member they are longitude and latitude in WGS 84 (RFC 7946), unless the survey is on a local grid.
"""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import CRS
from pyproj.exceptions import CRSError

from ..files import PathLike
from ..georeference.axes import flat, lonlat_box, same_plan, to_lonlat
from ..georeference.operations import NO_OPERATION, OF_FILE, Choice, choose_operation, operation_said
from ..georeference.record import crs_name
from ..georeference.whereabouts import Box
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..units import metres_per_unit

CANNOT_READ = Text(
    "geojson.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: it cannot be read ({reason}); give a GeoJSON file."),
)
NOT_GEOJSON = Text(
    "geojson.not_geojson",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is no GeoJSON ({reason}); give a GeoJSON file."),
)
STRANGE_CRS = Text(
    "geojson.crs",
    QT_TRANSLATE_NOOP("core", "{file}: its coordinate system “{crs}” is not understood here; write it anew."),
)
NOT_THERE = Text(
    "geojson.not_there",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: not all of its coordinates can be brought from {source} to {target}; write it anew in the CRS of the "
        "survey (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).",
    ),
)
ON_LOCAL_GRID = Text(
    "geojson.local",
    QT_TRANSLATE_NOOP(
        "core", "{file} is in {crs}, the survey on a local grid: nothing says how they lie to each other."
    ),
)


def parsed(path: PathLike) -> Any:
    """What is in the file. Raises SurveyError where it cannot be read or is no JSON."""
    try:
        text = Path(path).read_text(encoding="utf-8-sig")
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise SurveyError(CANNOT_READ, file=str(path), reason=reason) from None
    try:
        return json.loads(text)
    except (ValueError, RecursionError) as error:
        line = getattr(error, "lineno", 1)
        reason = getattr(error, "msg", str(error))
        raise SurveyError(NOT_GEOJSON, file=str(path), line=line, reason=reason) from None


#: RFC 7946. Not by the code OGC:CRS84, from which PROJ knows fewer operations; longitude comes first all the same.
DEGREES = "EPSG:4326"


class Brought(NamedTuple):
    """Coordinates (k, 2) in metres of the survey's CRS, and by which operation they came there, if by one."""

    places: List[np.ndarray]
    statements: Tuple[Message, ...]


def bring_in(
    file: str, data: Any, places: Sequence[np.ndarray], crs: Optional[Any], accept: Sequence[str] = ()
) -> Brought:
    """Coordinates (k, 2) of a parsed file in metres of ``crs`` (None: a local grid).

    Raises SurveyError where they cannot be brought there, and as :func:`..georeference.operations.choose_operation`,
    for which ``accept`` is.
    """
    own = system_of(file, data, crs)
    if own is None or same_plan(own, crs) or not len(places):
        return Brought([xy * metres_per_unit(crs) for xy in places], ())
    target = flat(crs)
    x, y = np.concatenate(places).T
    elsewhere = SurveyError(NOT_THERE, file=file, source=crs_name(own), target=crs_name(target))
    if own.is_geographic and np.any(np.abs(y) > 90.0):
        raise elsewhere
    choice = _choice(file, own, target, _box(own, x, y), accept)
    xy = np.column_stack(choice.operation.run(x, y))
    if not np.all(np.isfinite(xy)):
        raise elsewhere
    brought = np.split(xy * metres_per_unit(crs), np.cumsum([len(part) for part in places])[:-1])
    said = (message(OF_FILE, file=file, said=one) for one in operation_said(choice, own, target))
    return Brought(brought, tuple(said))


def _choice(file: str, own: CRS, target: CRS, box: Optional[Box], accept: Sequence[str]) -> Choice:
    """As :func:`.choose_operation`, whose errors are given the name of the file."""
    try:
        return choose_operation(own, target, box, accept)
    except SurveyError as error:
        if error.code == NO_OPERATION.code:
            raise SurveyError(STRANGE_CRS, file=file, crs=own.name[:60]) from None
        raise SurveyError(OF_FILE, file=file, said=error.message) from None


def _box(crs: CRS, x: np.ndarray, y: np.ndarray) -> Optional[Box]:
    """Around coordinates in the units of ``crs``."""
    if crs.is_geographic:
        return lonlat_box(x, y)
    metres = metres_per_unit(crs)
    return lonlat_box(*to_lonlat(crs, x * metres, y * metres))


def system_of(file: str, data: Any, crs: Optional[Any]) -> Optional[CRS]:
    """The CRS of the coordinates of a parsed file; None on a local grid, as the survey's is for ``crs`` None.

    Raises SurveyError for one that is not understood, or that does not go with a local grid.
    """
    named = named_crs(file, data)
    if crs is not None:
        degrees = CRS(DEGREES)
        return degrees if named is None or named.equals(degrees, ignore_axis_order=True) else named
    if named is not None and (named.is_geographic or named.is_projected):
        raise SurveyError(ON_LOCAL_GRID, file=file, crs=named.name)
    return None


def named_crs(file: str, data: Any) -> Optional[CRS]:
    """The CRS that a parsed file names, None where it names none. Raises SurveyError for one not understood."""
    member = data.get("crs") if isinstance(data, dict) else None
    if not member:
        return None
    properties = member.get("properties") if isinstance(member, dict) else None
    name = properties.get("name") if isinstance(properties, dict) else member
    try:
        return CRS.from_user_input(name)
    except (CRSError, TypeError):
        raise SurveyError(STRANGE_CRS, file=file, crs=str(name)[:60]) from None


def features_of(data: Any) -> List[Any]:
    """The features of a FeatureCollection, of a Feature or of a bare geometry."""
    kind = data.get("type") if isinstance(data, dict) else None
    if kind == "FeatureCollection":
        features = data.get("features")
        return features if isinstance(features, list) else []
    return [data] if kind == "Feature" else [{"type": "Feature", "geometry": data, "properties": {}}]


def properties_of(feature: Any) -> Dict[str, Any]:
    """The properties of a feature; none of what is no feature."""
    properties = feature.get("properties") if isinstance(feature, dict) else None
    return properties if isinstance(properties, dict) else {}


def geometry_of(feature: Any) -> Tuple[Optional[str], Any]:
    """Kind and coordinates of a feature's geometry; None twice where it has none, or no place (RFC 7946, 3.1)."""
    geometry = feature.get("geometry") if isinstance(feature, dict) else None
    if not isinstance(geometry, dict) or _is_empty(geometry.get("coordinates")):
        return None, None
    return str(geometry.get("type")), geometry.get("coordinates")


def _is_empty(coordinates: Any) -> bool:
    """Whether there are lists within lists, and no place in them."""
    level = [coordinates]
    while level and all(isinstance(one, list) for one in level):
        level = [part for one in level for part in one]
    return not level


def positions(places: Sequence[Sequence[float]]) -> np.ndarray:
    """Positions (k, 2) of a line or ring. Raises TypeError or ValueError for what is none."""
    xy = np.array([place[:2] for place in places], float).reshape(-1, 2)
    if not np.all(np.isfinite(xy)):
        raise ValueError("a coordinate is not finite")
    return xy


def places_with_heights(places: Sequence[Sequence[float]]) -> np.ndarray:
    """Places (k, 3) of a line or ring, height nan where there is none. Raises TypeError or ValueError."""
    xyz = np.array([[*place[:3], *[math.nan] * (3 - len(place))] for place in places], float).reshape(-1, 3)
    if not np.all(np.isfinite(xyz[:, :2])):
        raise ValueError("a coordinate is not finite")
    return xyz
