"""Ways of water, ponds and catchments as GeoJSON.

In the system of the survey, as contours are (see :mod:`..contours.geojson`). Properties whose name ends in ``_m``,
``_m2`` and ``_m3`` are in metres, square and cubic metres, in a survey in feet as :mod:`..site_columns` names them;
``level`` is in the unit of the heights.
"""

from __future__ import annotations

import json
import math
from typing import Any, Dict, Iterator, List, Optional, Sequence

import numpy as np

from ..contours.geojson import DECIMALS, write_features
from ..drainage.catchments import Outlet
from ..drainage.rings import Polygon, polygons_of
from ..drainage.shares import pond_name
from ..drainage.steps import PathEnd
from ..drainage.study import WaterStudy
from ..files import PathLike
from ..site_columns import in_site_units
from ..units import heights_to_crs_units, to_crs_units

END_WORDS = {
    PathEnd.OUTSIDE: "outside",
    PathEnd.PIT: "pit",
    PathEnd.RIM: "rim",
    PathEnd.INLET: "inlet",
    PathEnd.UNDECIDED: "undecided",
}
OUTLET_WORDS = {
    Outlet.PIT: "pit",
    Outlet.POND: "pond",
    Outlet.INLET: "inlet",
    Outlet.RIM_VERTEX: "outlet",
    Outlet.RIM: "rim",
    Outlet.UNDECIDED: "undecided",
}


def write_flow_paths(study: WaterStudy, path: PathLike) -> None:
    """Paths and channels as LineStrings with heights, in the direction of the water; ``kind``: path or channel.

    Raises SurveyError when the file cannot be written.
    """
    crs = study.tin.crs
    features = [*_paths(study, crs), *_channels(study, crs)]
    write_features("flow_paths", iter(features), len(features), crs, path)


def write_pond_areas(study: WaterStudy, path: PathLike) -> None:
    """Full ponds as MultiPolygons, outermost ones first. Raises SurveyError when the file cannot be written."""
    write_features("ponds", _ponds(study, study.tin.crs), len(study.ponds), study.tin.crs, path)


def write_catchment_areas(study: WaterStudy, path: PathLike) -> None:
    """Catchments as MultiPolygons, the largest first. Raises SurveyError when the file cannot be written."""
    write_features("catchments", _catchments(study, study.tin.crs), len(study.shares), study.tin.crs, path)


def _paths(study: WaterStudy, crs: Optional[Any]) -> Iterator[str]:
    paths = study.paths
    for i, length in enumerate(paths.length.tolist()):
        xyz = paths.path(i)
        if len(xyz) > 1:
            end, inlet = PathEnd(int(paths.end[i])), int(paths.inlet[i])
            told = {
                "kind": "path",
                "end": END_WORDS[end],
                "inlet": study.inlets[inlet].name if inlet >= 0 else None,
                "length_m": round(length, 3),
                "drop_m": round(float(xyz[0, 2] - xyz[-1, 2]), 4),
            }
            yield _feature("LineString", _places(xyz, crs), in_site_units(told, crs, water=True))


def _channels(study: WaterStudy, crs: Optional[Any]) -> Iterator[str]:
    for i, area in enumerate(study.channels.area.tolist()):
        xyz = study.channels.line(i)
        length = float(np.hypot(*np.diff(xyz[:, :2], axis=0).T).sum())
        drop = float(xyz[0, 2] - xyz[-1, 2])
        told = {"kind": "channel", "length_m": round(length, 3), "drop_m": round(drop, 4), "drains_m2": round(area, 2)}
        yield _feature("LineString", _places(xyz, crs), in_site_units(told, crs, water=True))


def _ponds(study: WaterStudy, crs: Optional[Any]) -> Iterator[str]:
    ponds = study.ponds
    level = heights_to_crs_units(ponds.level, crs)
    for i in np.argsort(-ponds.level, kind="stable").tolist():
        parent, next_one, inlet = int(ponds.parent[i]), int(ponds.spills_to[i]), int(ponds.inlet[i])
        rim = "rim" if ponds.spill_end[i] == PathEnd.RIM else None
        told = {
            "name": pond_name(i),
            "parent": pond_name(parent) if parent >= 0 else None,
            "depth_m": round(float(ponds.depth[i]), 4),
            "sigma_m": round(float(ponds.depth_sigma[i]), 4),
            "chance": float(f"{ponds.chance[i]:.3g}"),
            "area_m2": round(float(ponds.area[i]), 3),
            "volume_m3": round(float(ponds.volume[i]), 4),
            "level": round(float(level[i]), 4),
            "spills_to": pond_name(next_one) if next_one >= 0 else study.inlets[inlet].name if inlet >= 0 else rim,
        }
        shore = _polygons(polygons_of(study.shores[i]), crs)
        yield _feature("MultiPolygon", shore, in_site_units(told, crs, water=True))


def _catchments(study: WaterStudy, crs: Optional[Any]) -> Iterator[str]:
    shares, peaks = study.shares, study.peaks
    for i, polygons in enumerate(shares.polygons()):
        told: Dict[str, Any] = {
            "name": shares.name[i],
            "drains_to": OUTLET_WORDS[Outlet(int(shares.outlet[i]))],
            "area_m2": round(float(shares.area[i]), 3),
            "nowhere_m2": round(float(shares.nowhere[i]), 3),
        }
        if peaks is not None:
            told["runoff"] = _or_none(float(peaks.coefficient[i]))
            told["flow"] = _or_none(round(float(peaks.flow[i]), 4))
            told["flow_unit"] = peaks.units.flow
        yield _feature("MultiPolygon", _polygons(polygons, crs), in_site_units(told, crs, water=True))


def _or_none(value: float) -> Optional[float]:
    return value if math.isfinite(value) else None


def _places(xyz: np.ndarray, crs: Optional[Any]) -> List[List[float]]:
    world = np.column_stack([to_crs_units(xyz[:, :2], crs), heights_to_crs_units(xyz[:, 2], crs)])
    places: List[List[float]] = (np.round(world, DECIMALS) + 0.0).tolist()  # adding 0 turns -0.0 into 0.0
    return places


def _polygons(polygons: Sequence[Polygon], crs: Optional[Any]) -> List[Any]:
    return [[(np.round(to_crs_units(ring, crs), DECIMALS) + 0.0).tolist() for ring in polygon] for polygon in polygons]


def _feature(kind: str, places: Any, properties: Dict[str, Any]) -> str:
    geometry = {"type": kind, "coordinates": places}
    return json.dumps({"type": "Feature", "properties": properties, "geometry": geometry}, ensure_ascii=False)
