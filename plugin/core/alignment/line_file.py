"""A centreline from a GeoJSON file, for the main job; QGIS reads lines from its layers.

RFC 7946 (2016) knows only longitude and latitude of WGS 84. Lines of a survey are in its projected system, which the
``crs`` member of the GeoJSON specification of 2008 names, as GDAL writes it. A file without that member is taken to be
in the survey's system, unless its coordinates could be degrees: then it is refused, as is one in another system. A
line that is a metre beside the lane would be judged as if it were the lane's.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any, Iterator, Optional, Tuple

import numpy as np

from ..files import PathLike
from ..linework.geojson_file import features_of, geometry_of, named_crs, parsed, positions, properties_of
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import metres_per_unit
from .line import check_same_crs

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


def read_line(path: PathLike, crs: Optional[Any]) -> Tuple[np.ndarray, str]:
    """Vertices (k, 2) in metres of ``crs`` (pyproj, None for a local grid) and name of the one line in the file.

    The name is the feature's property ``name``, or the file's. Raises SurveyError for a file that cannot be read, is
    no GeoJSON, holds no line or several, or is in another CRS.
    """
    data, file = parsed(path), str(path)
    lines = [found for feature in features_of(data) for found in _lines(feature, file)]
    if not lines:
        raise SurveyError(NO_LINE, file=file)
    if len(lines) > 1:
        names = ", ".join(name or "?" for _, name in lines[:5])
        raise SurveyError(MANY_LINES, file=file, count=len(lines), names=names)
    xy, name = lines[0]
    _check_crs(data, xy, file, crs)
    return xy * metres_per_unit(crs), name or Path(path).stem


def _lines(feature: Any, file: str) -> Iterator[Tuple[np.ndarray, str]]:
    """Every line of a feature, with the feature's name."""
    kind, coordinates = geometry_of(feature)
    if kind not in ("LineString", "MultiLineString"):
        return
    name = str(properties_of(feature).get("name") or "")
    try:
        for part in [coordinates] if kind == "LineString" else coordinates:
            yield positions(part), name
    except (TypeError, ValueError, IndexError, KeyError):
        raise SurveyError(BAD_SHAPE, file=file, what=name or kind) from None


def _check_crs(data: Any, xy: np.ndarray, file: str, crs: Optional[Any]) -> None:
    if crs is None:
        return  # a local grid has no name by which to tell
    named = named_crs(file, data)
    if named is not None:
        check_same_crs(named, crs)
    elif len(xy) and np.all(np.abs(xy) <= [180.0, 90.0]):
        raise SurveyError(DEGREES, file=file)
