"""Pads out of a GeoJSON file.

Polygons in the survey's own system, named in the ``crs`` member of the GeoJSON specification of 2008 as GDAL writes it;
without that member they are longitude and latitude in WGS 84 (RFC 7946), unless the survey is on a local grid.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np
from pyproj import CRS, Transformer
from pyproj.exceptions import CRSError, ProjError

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import metres_per_unit

CANNOT_READ = Text(
    "pads.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the pads cannot be read ({reason}); give a GeoJSON file of polygons."),
)
NOT_GEOJSON = Text(
    "pads.not_geojson",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is no GeoJSON ({reason}); give a GeoJSON file of polygons."),
)
NO_POLYGONS = Text(
    "pads.no_polygons", QT_TRANSLATE_NOOP("core", "{file}: there are no polygons in it; a pad is a polygon.")
)
BAD_POLYGON = Text(
    "pads.bad_polygon",
    QT_TRANSLATE_NOOP("core", "{file}, feature {number}: {kind} is no polygon of coordinates; a pad is a polygon."),
)
BAD_PROPERTY = Text(
    "pads.bad_property",
    QT_TRANSLATE_NOOP("core", "{file}, feature {number}: {name} is “{value}”, which is no number; mend it."),
)
STRANGE_CRS = Text(
    "pads.crs",
    QT_TRANSLATE_NOOP("core", "{file}: its coordinate system “{crs}” is not understood here; write it anew."),
)
ON_LOCAL_GRID = Text(
    "pads.local",
    QT_TRANSLATE_NOOP(
        "core", "{file} is in {crs}, the survey on a local grid: nothing says how they lie to each other."
    ),
)

#: Properties of a feature that are numbers, each with the name it has there.
NUMBERS = ("level", "fall", "towards", "cut_slope", "fill_slope")


@dataclass(frozen=True)
class PadShape:
    """A polygon: ``name``, ``rings`` (k, 2) in metres of the survey's CRS, and its properties that are numbers."""

    name: str
    rings: Tuple[np.ndarray, ...]
    numbers: Dict[str, float]


def read_pads(path: PathLike, crs: Optional[Any]) -> Tuple[PadShape, ...]:
    """The polygons of a GeoJSON file, brought into ``crs`` (None: a local grid). Raises SurveyError."""
    file = str(path)
    data = _parsed(path)
    kind = data.get("type") if isinstance(data, dict) else None
    if kind == "FeatureCollection":
        features = data.get("features")
    else:
        features = [data] if kind == "Feature" else [{"type": "Feature", "geometry": data, "properties": {}}]
    place = _transformer(file, data, crs)
    found: List[PadShape] = []
    for number, feature in enumerate(features if isinstance(features, list) else [], 1):
        found += _shapes(file, number, feature, place)
    if not found:
        raise SurveyError(NO_POLYGONS, file=file)
    return tuple(found)


def _parsed(path: PathLike) -> Any:
    try:
        text = Path(path).read_text(encoding="utf-8-sig")
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or str(error)
        raise SurveyError(CANNOT_READ, file=str(path), reason=reason) from None
    try:
        return json.loads(text)
    except ValueError as error:
        line = getattr(error, "lineno", 1)
        reason = getattr(error, "msg", str(error))
        raise SurveyError(NOT_GEOJSON, file=str(path), line=line, reason=reason) from None


class _Place:
    """Coordinates of the file in metres of the survey's CRS."""

    def __init__(self, transformer: Optional[Transformer], metres: float) -> None:
        self.transformer, self.metres = transformer, metres

    def __call__(self, xy: np.ndarray) -> np.ndarray:
        if self.transformer is not None:
            xy = np.column_stack(self.transformer.transform(xy[:, 0], xy[:, 1]))
        return xy * self.metres


def _transformer(file: str, data: Any, crs: Optional[Any]) -> _Place:
    member = data.get("crs") if isinstance(data, dict) else None
    if crs is None:
        named = _crs(file, member) if member else None
        if named is not None and (named.is_geographic or named.is_projected):
            raise SurveyError(ON_LOCAL_GRID, file=file, crs=named.name)
        return _Place(None, 1.0)
    own = _crs(file, member) if member else CRS("OGC:CRS84")
    plan = crs.sub_crs_list[0] if crs.is_compound else crs
    if own.equals(plan, ignore_axis_order=True):
        return _Place(None, metres_per_unit(crs))
    try:
        return _Place(Transformer.from_crs(own, plan, always_xy=True), metres_per_unit(crs))
    except ProjError:
        raise SurveyError(STRANGE_CRS, file=file, crs=own.name[:60]) from None


def _crs(file: str, member: Any) -> CRS:
    properties = member.get("properties") if isinstance(member, dict) else None
    name = properties.get("name") if isinstance(properties, dict) else member
    try:
        return CRS.from_user_input(name)
    except (CRSError, TypeError):
        raise SurveyError(STRANGE_CRS, file=file, crs=str(name)[:60]) from None


def _shapes(file: str, number: int, feature: Any, place: _Place) -> List[PadShape]:
    geometry = feature.get("geometry") if isinstance(feature, dict) else None
    kind = geometry.get("type") if isinstance(geometry, dict) else None
    parts = {"Polygon": lambda c: [c], "MultiPolygon": list}.get(str(kind))
    properties = feature.get("properties") if isinstance(feature, dict) else None
    properties = properties if isinstance(properties, dict) else {}
    if parts is None or not isinstance(geometry, dict):
        raise SurveyError(BAD_POLYGON, file=file, number=number, kind=str(kind))
    try:
        polygons = [
            tuple(place(_ring(ring)) for ring in polygon) for polygon in parts(geometry.get("coordinates")) if polygon
        ]
    except (TypeError, ValueError):
        raise SurveyError(BAD_POLYGON, file=file, number=number, kind=str(kind)) from None
    name = str(properties.get("name") or "")
    numbers = _numbers(file, number, properties)
    several = len(polygons) > 1
    return [PadShape(f"{name} {k}".strip() if several else name, rings, numbers) for k, rings in enumerate(polygons, 1)]


def _ring(places: Sequence[Sequence[float]]) -> np.ndarray:
    xy = np.array([place[:2] for place in places], float).reshape(-1, 2)
    if not np.all(np.isfinite(xy)):
        raise ValueError("a coordinate is not finite")
    return xy


def _numbers(file: str, number: int, properties: Dict[str, Any]) -> Dict[str, float]:
    found = {}
    for name in NUMBERS:
        value = properties.get(name)
        if value is None:
            continue
        try:
            found[name] = float(value)
        except (TypeError, ValueError):
            raise SurveyError(BAD_PROPERTY, file=file, number=number, name=name, value=value) from None
    return found
