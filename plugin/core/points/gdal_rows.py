"""Layers that GDAL opened, as rows of text: a header, and coordinates and attributes of each feature."""

from __future__ import annotations

import re
from typing import Any, Iterator, List, NamedTuple, Sequence, Tuple

from .words import read_word

_PLAIN = ("easting", "northing", "longitude", "latitude")


class Layer(NamedTuple):
    """A layer and how many features it has; ``member``: the file within an archive."""

    name: str
    features: int
    layer: Any


def cell_of(value: str) -> str:
    value = (
        " ".join(value.split())
        if any(sign in value for sign in "\t\r\n\x0b\x0c\x1c\x1d\x1e\x85\u2028\u2029")
        else value
    )
    value = value.replace("\0", " ")
    return '"' + value.replace('"', '""') + '"' if '"' in value else value


def sheet_rows(layers: Sequence[Layer]) -> Iterator[List[str]]:
    for one in layers:
        definition = one.layer.GetLayerDefn()
        names = [definition.GetFieldDefn(i).GetName() for i in range(definition.GetFieldCount())]
        if not all(re.fullmatch("Field[0-9]+", name) for name in names):
            yield names  # GDAL took the first row for the header all the same
        for feature in one.layer:
            yield [_value(feature, i) for i in range(feature.GetFieldCount())]


def _value(feature: Any, i: int) -> str:
    if not feature.IsFieldSetAndNotNull(i):
        return ""
    if feature.GetFieldDefnRef(i).GetTypeName().startswith("Real"):
        return repr(float(feature.GetFieldAsDouble(i)))
    return str(feature.GetFieldAsString(i))


def feature_rows(layers: Sequence[Layer]) -> Iterator[List[str]]:
    """A header, then coordinates and attributes of each feature; of one without a point the coordinates stay empty."""
    columns: List[str] = []
    for one in layers:
        definition = one.layer.GetLayerDefn()
        for i in range(definition.GetFieldCount()):
            name = definition.GetFieldDefn(i).GetName()
            columns += [name] if name not in columns else []
    levels = [_levels(one.layer) for one in layers]
    high = any(levels)
    heights = [name for name in columns if read_word(name).role in ("height", "ellipsoidal_height")]
    plan = _plan_words([one.layer for one in layers])
    own = not heights or high
    yield [*plan, *(["height"] if own else []), *(_header_word(name, own) for name in columns)]
    for one in layers:
        one.layer.ResetReading()
        for feature in one.layer:
            cells = {feature.GetFieldDefnRef(i).GetName(): _value(feature, i) for i in range(feature.GetFieldCount())}
            for point in _points(feature.GetGeometryRef()):
                yield [*(point if own else point[:2]), *(cells.get(name, "") for name in columns)]


def _plan_words(layers: Sequence[Any]) -> Tuple[str, str]:
    """Header words of the coordinates; GDAL gives the one to the east first. Where no CRS says whether they are
    degrees, their size says that they are not.
    """
    crs = layers[0].GetSpatialRef()
    if crs is not None and in_its_crs(layers[0]):
        return ("longitude", "latitude") if crs.IsGeographic() else ("easting", "northing")
    west, east, south, north = layers[0].GetExtent()
    small = max(abs(west), abs(east)) <= 180.0 and max(abs(south), abs(north)) <= 90.0
    return ("x", "y") if small else ("easting", "northing")


def in_its_crs(layer: Any) -> bool:
    """Whether coordinates can be of the CRS that GDAL takes them to be in; those of a file that says none may be
    eastings and northings, though the form of the file wants degrees.
    """
    crs = layer.GetSpatialRef()
    if crs is None or not crs.IsGeographic():
        return True
    west, east, south, north = layer.GetExtent()
    return bool(max(abs(west), abs(east)) <= 360.0 and max(abs(south), abs(north)) <= 90.0)


def _levels(layer: Any) -> bool:
    """Whether any point of a layer has a height other than 0."""
    for feature in layer:
        if any(point[2] not in ("", "0.0") for point in _points(feature.GetGeometryRef())):
            layer.ResetReading()
            return True
    layer.ResetReading()
    return False


def _header_word(name: str, own: bool) -> str:
    """The name of an attribute, so that none is taken for what the geometry has."""
    taken = (*_PLAIN, "height", "ellipsoidal_height") if own else _PLAIN
    word = read_word(name)
    return f"attribute {name} kept" if word.role in taken or word.doubtful in ("x", "y", "e", "n", "h", "o") else name


def _points(geometry: Any) -> List[List[str]]:
    """Coordinates of the points of a geometry, of a line its vertices; empty ones where it is neither."""
    if geometry is None or geometry.IsEmpty():
        return [["", "", ""]]
    name = geometry.GetGeometryName()
    if name == "POINT":
        high = geometry.Is3D()
        return [[repr(geometry.GetX()), repr(geometry.GetY()), repr(geometry.GetZ()) if high else ""]]
    if name == "LINESTRING":
        high = geometry.Is3D()
        return [[*map(repr, geometry.GetPoint(i)[:2]), repr(geometry.GetZ(i)) if high else ""]
                for i in range(geometry.GetPointCount())]  # fmt: skip
    if name in ("MULTIPOINT", "MULTILINESTRING"):
        return [point for i in range(geometry.GetGeometryCount()) for point in _points(geometry.GetGeometryRef(i))]
    return [["", "", ""]]
