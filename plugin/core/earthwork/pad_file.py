"""Pads out of a GeoJSON file, whose coordinates are as :mod:`..linework.geojson_file` says."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..linework.geojson_file import bring_in, features_of, geometry_of, parsed, positions, properties_of
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text

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


class PadFile(NamedTuple):
    """The polygons of a file, and what is to be told of how they came into the survey's CRS."""

    shapes: Tuple[PadShape, ...]
    messages: Tuple[Message, ...]


def read_pads(path: PathLike, crs: Optional[Any], accept: Sequence[str] = ()) -> PadFile:
    """The polygons of a GeoJSON file, brought into ``crs`` (None: a local grid).

    ``accept``: names of coordinate operations that the user takes. Raises SurveyError.
    """
    file = str(path)
    data = parsed(path)
    shapes = [shape for number, one in enumerate(features_of(data), 1) for shape in _shapes(file, number, one)]
    places, said = bring_in(file, data, [ring for shape in shapes for ring in shape.rings], crs, accept)
    if not shapes:
        raise SurveyError(NO_POLYGONS, file=file)
    rings = iter(places)
    return PadFile(tuple(replace(one, rings=tuple(next(rings) for _ in one.rings)) for one in shapes), said)


def _shapes(file: str, number: int, feature: Any) -> List[PadShape]:
    """The polygons of a feature in the file's own coordinates."""
    kind, coordinates = geometry_of(feature)
    parts = {"Polygon": lambda c: [c], "MultiPolygon": list}.get(str(kind))
    if parts is None:
        raise SurveyError(BAD_POLYGON, file=file, number=number, kind=kind or "null")
    try:
        polygons = [tuple(positions(ring) for ring in polygon) for polygon in parts(coordinates) if polygon]
        if not all(len(ring) for polygon in polygons for ring in polygon):
            raise ValueError("a ring has no places")
    except (TypeError, ValueError):
        raise SurveyError(BAD_POLYGON, file=file, number=number, kind=str(kind)) from None
    properties = properties_of(feature)
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
            if isinstance(value, bool):
                raise TypeError
            found[name] = float(value)
        except (TypeError, ValueError):
            raise SurveyError(BAD_PROPERTY, file=file, number=number, name=name, value=value) from None
    return found
