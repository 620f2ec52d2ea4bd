"""Pads out of a GeoJSON file, whose coordinates are as :mod:`..linework.geojson_file` says."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, List, Optional, Tuple

import numpy as np

from ..files import PathLike
from ..linework.geojson_file import Place, features_of, parsed, place_in, positions
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

NO_POLYGONS = Text(
    "pads.no_polygons", QT_TRANSLATE_NOOP("core", "{file}: there are no polygons in it; give a file of polygons.")
)
BAD_POLYGON = Text(
    "pads.bad_polygon",
    QT_TRANSLATE_NOOP("core", "{file}, feature {number}: {kind} is no polygon of coordinates; give polygons only."),
)
BAD_PROPERTY = Text(
    "pads.bad_property",
    QT_TRANSLATE_NOOP("core", "{file}, feature {number}: {name} is “{value}”, which is no number; mend it."),
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
    data = parsed(path)
    place = place_in(file, data, crs)
    found: List[PadShape] = []
    for number, feature in enumerate(features_of(data), 1):
        found += _shapes(file, number, feature, place)
    if not found:
        raise SurveyError(NO_POLYGONS, file=file)
    return tuple(found)


def _shapes(file: str, number: int, feature: Any, place: Place) -> List[PadShape]:
    geometry = feature.get("geometry") if isinstance(feature, dict) else None
    kind = geometry.get("type") if isinstance(geometry, dict) else None
    parts = {"Polygon": lambda c: [c], "MultiPolygon": list}.get(str(kind))
    properties = feature.get("properties") if isinstance(feature, dict) else None
    properties = properties if isinstance(properties, dict) else {}
    if parts is None or not isinstance(geometry, dict):
        raise SurveyError(BAD_POLYGON, file=file, number=number, kind=str(kind))
    try:
        polygons = [
            tuple(place(positions(ring)) for ring in polygon)
            for polygon in parts(geometry.get("coordinates"))
            if polygon
        ]
    except (TypeError, ValueError):
        raise SurveyError(BAD_POLYGON, file=file, number=number, kind=str(kind)) from None
    name = str(properties.get("name") or "")
    numbers = _numbers(file, number, properties)
    several = len(polygons) > 1
    return [PadShape(f"{name} {k}".strip() if several else name, rings, numbers) for k, rings in enumerate(polygons, 1)]


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
