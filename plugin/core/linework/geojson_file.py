"""GeoJSON files that others wrote, read with care.

Coordinates in the survey's own system, named in the ``crs`` member of the GeoJSON specification of 2008 as GDAL writes
it; without that member they are longitude and latitude in WGS 84 (RFC 7946), unless the survey is on a local grid.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, List, Optional, Sequence

import numpy as np
from pyproj import CRS, Transformer
from pyproj.exceptions import CRSError, ProjError

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
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


class Place:
    """Coordinates of the file in metres of the survey's CRS."""

    def __init__(self, transformer: Optional[Transformer], metres: float) -> None:
        self.transformer, self.metres = transformer, metres

    def __call__(self, xy: np.ndarray) -> np.ndarray:
        if self.transformer is not None:
            xy = np.column_stack(self.transformer.transform(xy[:, 0], xy[:, 1]))
        return xy * self.metres


def place_in(file: str, data: Any, crs: Optional[Any]) -> Place:
    """How coordinates of a parsed file come into ``crs`` (None: a local grid). Raises SurveyError."""
    member = data.get("crs") if isinstance(data, dict) else None
    if crs is None:
        named = _crs(file, member) if member else None
        if named is not None and (named.is_geographic or named.is_projected):
            raise SurveyError(ON_LOCAL_GRID, file=file, crs=named.name)
        return Place(None, 1.0)
    own = _crs(file, member) if member else CRS("OGC:CRS84")
    plan = crs.sub_crs_list[0] if crs.is_compound else crs
    if own.equals(plan, ignore_axis_order=True):
        return Place(None, metres_per_unit(crs))
    try:
        return Place(Transformer.from_crs(own, plan, always_xy=True), metres_per_unit(crs))
    except ProjError:
        raise SurveyError(STRANGE_CRS, file=file, crs=own.name[:60]) from None


def _crs(file: str, member: Any) -> CRS:
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


def positions(places: Sequence[Sequence[float]]) -> np.ndarray:
    """Positions (k, 2) of a line or ring. Raises TypeError or ValueError for what is none."""
    xy = np.array([place[:2] for place in places], float).reshape(-1, 2)
    if not np.all(np.isfinite(xy)):
        raise ValueError("a coordinate is not finite")
    return xy
