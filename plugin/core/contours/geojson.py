"""Contours as GeoJSON, for QGIS and everything else that reads through GDAL.

RFC 7946 (2016) allows WGS 84 longitude and latitude only. Contours are kept in the survey's own
system instead, so that the file holds the coordinates that were computed, and the system is named
in the ``crs`` member of the GeoJSON specification of 2008, which GDAL reads (and writes). What has
an authority's code is named by its URN; a system without one by its WKT, which GDAL reads too. A
local grid is named as an engineering system, because a file that names none is taken for WGS 84.
A reader that follows RFC 7946 to the letter ignores the member and would misplace the lines.
"""

from __future__ import annotations

import json
from typing import Any, Dict, Iterable, Iterator, Optional

import numpy as np

from ..files import PathLike, replace_file
from ..progress import Progress, silent
from ..units import to_crs_units
from .lines import Contours

#: A tenth of a millimetre, the grid of the surface.
DECIMALS = 4
LOCAL_GRID = (
    'ENGCRS["Local grid",EDATUM["Local grid"],CS[Cartesian,2],'
    'AXIS["easting",east,ORDER[1]],AXIS["northing",north,ORDER[2]],LENGTHUNIT["metre",1]]'
)


def write_geojson(contours: Contours, path: PathLike, progress: Progress = silent) -> None:
    """Write the contours as a FeatureCollection of LineStrings in the units of their CRS.

    Properties: ``level`` in ``unit`` ("m", "ft" or "us-ft"), ``level_m`` in metres, ``index``,
    ``depression``, ``closed``. Lines keep their order and the higher ground on their left; a closed
    line repeats its first point. Raises ``SurveyError`` when the file cannot be written.
    """
    write_features("contours", _features(contours), len(contours), contours.crs, path, progress)


def write_features(
    name: str, features: Iterable[str], count: int, crs: Optional[Any], path: PathLike, progress: Progress = silent
) -> None:
    """Write ``count`` features, each a text in JSON, as the FeatureCollection ``name`` in the system ``crs``."""
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="\n") as file:
        head = {"type": "FeatureCollection", "name": name, "crs": crs_member(crs)}
        file.write(json.dumps(head, ensure_ascii=False)[:-1] + ', "features": [\n')
        separator = ""
        for number, feature in enumerate(features):
            if number % 1000 == 0:
                progress(number / count, "contours")
            file.write(separator + feature)
            separator = ",\n"
        file.write("\n]}\n")


def crs_member(crs: Optional[Any]) -> Dict[str, Any]:
    """The ``crs`` member for the horizontal part of ``crs``."""
    name = LOCAL_GRID
    if crs is not None:
        plan = crs.sub_crs_list[0] if crs.is_compound else crs
        authority = plan.to_authority(min_confidence=100)
        name = "urn:ogc:def:crs:{}::{}".format(*authority) if authority else plan.to_wkt()
    return {"type": "name", "properties": {"name": name}}


def _features(contours: Contours) -> Iterator[str]:
    """Each line as one line of text."""
    # Adding 0 turns -0.0 into 0.0.
    coordinates = np.round(to_crs_units(contours.xy + contours.origin, contours.crs), DECIMALS) + 0.0
    point = f"[%.{DECIMALS}f, %.{DECIMALS}f]"
    unit = contours.options.unit.value
    start = contours.start.tolist()
    rows = zip(
        contours.level_in_unit.tolist(),
        np.round(contours.level, 9).tolist(),
        contours.index.tolist(),
        contours.depression.tolist(),
        contours.closed.tolist(),
        start[:-1],
        start[1:],
    )
    for level, level_m, index, depression, closed, begin, end in rows:
        properties = {
            "level": level,
            "unit": unit,
            "level_m": level_m,
            "index": index,
            "depression": depression,
            "closed": closed,
        }
        line = ", ".join([point] * (end - begin)) % tuple(coordinates[begin:end].ravel().tolist())
        yield (
            f'{{"type": "Feature", "properties": {json.dumps(properties)}, '
            f'"geometry": {{"type": "LineString", "coordinates": [{line}]}}}}'
        )
