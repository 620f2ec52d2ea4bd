"""A centreline from a GeoJSON file, for the main job; QGIS reads lines from its layers.

RFC 7946 (2016) knows only longitude and latitude of WGS 84. Lines of a survey are in its projected system, which the
``crs`` member of the GeoJSON specification of 2008 names, as GDAL writes it. A file without that member is taken to be
in the survey's system, unless its coordinates could be degrees: then it is refused.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, Dict, Iterator, List, Optional, Tuple

import numpy as np
from pyproj import CRS
from pyproj.exceptions import CRSError

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import metres_per_unit
from .line import check_same_crs

CANNOT_READ = Text(
    "line_file.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the line cannot be read ({reason}). Check the path and the file."),
)
NOT_GEOJSON = Text(
    "line_file.not_geojson",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: this is not GeoJSON ({reason}). Save the line's layer as GeoJSON in the survey's CRS.",
    ),
)
BAD_SHAPE = Text(
    "line_file.bad_shape",
    QT_TRANSLATE_NOOP("core", "{file}: {what} has no list of coordinates as GeoJSON asks for. Save the layer again."),
)
NO_LINE = Text(
    "line_file.no_line", QT_TRANSLATE_NOOP("core", "{file}: there is no line in it. Give a file with one LineString.")
)
MANY_LINES = Text(
    "line_file.many_lines",
    QT_TRANSLATE_NOOP(
        "core", "{file}: there are {count} lines in it ({names}). Give a file with one; join the parts of a line first."
    ),
)
DEGREES = Text(
    "line_file.degrees",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: the coordinates look like degrees, and the file names no other system. Save the line in the survey's "
        "CRS (in QGIS: Export, Save Features As, with that CRS and the option RFC7946 = NO).",
    ),
)
UNKNOWN_CRS = Text(
    "line_file.unknown_crs",
    QT_TRANSLATE_NOOP("core", "{file}: the CRS it names, {name}, is not known. Save the line in the survey's CRS."),
)


def read_line(path: PathLike, crs: Optional[Any]) -> Tuple[np.ndarray, str]:
    """Vertices (k, 2) in metres of ``crs`` (pyproj, None for a local grid) and name of the one line in the file.

    The name is the feature's property ``name``, or the file's. Raises SurveyError for a file that cannot be read, is
    no GeoJSON, holds no line or several, or is in another CRS.
    """
    document = _document(path)
    lines = list(_lines(document, str(path)))
    if not lines:
        raise SurveyError(NO_LINE, file=str(path))
    if len(lines) > 1:
        names = ", ".join(name or "?" for _, name in lines[:5])
        raise SurveyError(MANY_LINES, file=str(path), count=len(lines), names=names)
    xy, name = lines[0]
    _check_crs(document, xy, str(path), crs)
    return xy * metres_per_unit(crs), name or Path(path).stem


def _document(path: PathLike) -> Dict[str, Any]:
    try:
        text = Path(path).read_text(encoding="utf-8-sig")
    except (OSError, ValueError) as error:  # ValueError: a NUL in the path, and what is not UTF-8
        reason = getattr(error, "strerror", None) or str(error)
        raise SurveyError(CANNOT_READ, file=str(path), reason=reason) from None
    try:
        found = json.loads(text)
    except (json.JSONDecodeError, RecursionError) as error:
        line = getattr(error, "lineno", 1)
        raise SurveyError(NOT_GEOJSON, file=str(path), line=line, reason=getattr(error, "msg", "too deep")) from None
    if not isinstance(found, dict) or "type" not in found:
        raise SurveyError(NOT_GEOJSON, file=str(path), line=1, reason="no object with a type")
    return found


def _lines(item: Any, file: str, name: str = "") -> Iterator[Tuple[np.ndarray, str]]:
    """Every line in a GeoJSON object, with the name of its feature."""
    if not isinstance(item, dict):
        return
    kind = item.get("type")
    if kind in ("FeatureCollection", "GeometryCollection"):
        members = item.get("features" if kind == "FeatureCollection" else "geometries")
        for each in members if isinstance(members, list) else []:
            yield from _lines(each, file, name)
    elif kind == "Feature":
        own = (item.get("properties") or {}).get("name")
        yield from _lines(item.get("geometry"), file, "" if own is None else str(own))
    elif kind == "LineString":
        yield _vertices(item.get("coordinates"), file, name), name
    elif kind == "MultiLineString":
        for each in item.get("coordinates") or []:
            yield _vertices(each, file, name), name


def _vertices(coordinates: Any, file: str, name: str) -> np.ndarray:
    try:
        rows: List[Tuple[float, float]] = [(float(each[0]), float(each[1])) for each in coordinates]
    except (TypeError, ValueError, IndexError, KeyError):
        raise SurveyError(BAD_SHAPE, file=file, what=name or "LineString") from None
    return np.array(rows, float).reshape(-1, 2)


def _check_crs(document: Dict[str, Any], xy: np.ndarray, file: str, crs: Optional[Any]) -> None:
    member = document.get("crs")
    name = ((member.get("properties") or {}).get("name")) if isinstance(member, dict) else None
    if name:
        if crs is None:
            return  # a local grid has no name by which to tell
        try:
            check_same_crs(CRS.from_user_input(str(name)), crs)
        except CRSError:
            raise SurveyError(UNKNOWN_CRS, file=file, name=str(name)) from None
    elif crs is not None and len(xy) and np.all(np.abs(xy) <= [180.0, 90.0]):
        raise SurveyError(DEGREES, file=file)
