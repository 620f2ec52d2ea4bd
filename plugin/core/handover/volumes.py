"""Volumes with their doubt as CSV, depth polygons and lines of no cut nor fill as GeoJSON, storage curves as CSV."""

from __future__ import annotations

import json
from math import isfinite
from typing import Any, Dict, Iterable, Iterator, List, Optional, Sequence, Tuple, Union

import numpy as np

from ..contours.geojson import DECIMALS, write_features
from ..earthwork.basin import Basin
from ..earthwork.depth_polygons import UNCHANGED
from ..earthwork.doubt import VolumeDoubt
from ..earthwork.regions import PartVolume
from ..earthwork.study import Study
from ..earthwork.volume import Volume
from ..files import PathLike, TableWriter, replace_file
from ..site_columns import in_site_units, rows_in_site_units
from ..surface.dissolve import LabelledPolygon
from ..units import heights_to_crs_units, to_crs_units

HEAD = (
    "region", "quantity", "volume_m3", "half_95_m3", "low_95_m3", "high_95_m3", "random_m3", "drift_m3",
    "systematic_m3", "model_m3", "small_m3", "triangles_m3", "area_m2", "mean_depth_m",
)  # fmt: skip
WHOLE = "all"


def write_volumes(study: Study, path: PathLike) -> None:
    """Rows of cut, fill and net for each region and for all of the ground (region ``all``), cubic and square metres,
    or as :mod:`..site_columns` names them.

    random, drift, systematic, model and small are standard deviations; half, low and high the 95 % interval; triangles
    is what the triangles say as they are. Raises SurveyError when the file cannot be written.
    """
    rows: List[Tuple[Any, ...]] = []
    for each in study.regions:
        part = each.part
        rows += _rows(part.name, each.doubt, (part.cut_area, part.fill_area, part.common_area), each.measured)
    volume = study.volume
    rows += _rows(WHOLE, study.doubt, (volume.cut_area, volume.fill_area, volume.common_area), study.measured)
    _write(path, rows_in_site_units(HEAD, rows, study.comparison.existing.crs))


def _rows(
    region: str, doubt: VolumeDoubt, areas: Tuple[float, float, float], measured: Union[Volume, PartVolume]
) -> Iterator[Tuple[Any, ...]]:
    for name, each, area in zip(("cut", "fill", "net"), (doubt.cut, doubt.fill, doubt.net), areas):
        low, high = each.interval_95
        parts = (each.random, each.drift, each.systematic, each.model, each.small)
        values = (each.value, each.half_95, low, high, *parts, getattr(measured, name), area)
        mean = round(each.value / area, 4) if area > 0 else ""
        yield (region, name, *(round(value, 3) for value in values), mean)


def write_storage(basin: Basin, path: PathLike) -> None:
    """Level in the unit of the CRS, height above the pit (m), area (m²) and volume (m³) of each stage,
    or as :mod:`..site_columns` names them.

    Raises SurveyError when the file cannot be written.
    """
    curve = basin.storage.curve
    rows = [
        (
            round(float(heights_to_crs_units(stage.level, basin.tin.crs)), 4),
            round(stage.level - curve[0].level, 4),
            round(stage.area, 3),
            round(stage.volume, 3),
        )
        for stage in curve
    ]
    head = ("level", "above_pit_m", "area_m2", "volume_m3")
    _write(path, rows_in_site_units(head, rows, basin.tin.crs, water=True))


def _write(path: PathLike, rows: Iterable[Sequence[Any]]) -> None:
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = TableWriter(stream)
        writer.writerows(rows)


def write_depths(study: Study, path: PathLike) -> None:
    """A MultiPolygon for each class of depth in the units of the CRS, with its exact area and volume.

    Properties: class (cut below 0), kind, from_m, to_m (null for the deepest), area_m2, volume_m3, or as
    :mod:`..site_columns` names them. Raises SurveyError when the file cannot be written.
    """
    crs = study.comparison.existing.crs
    parts: Dict[int, List[LabelledPolygon]] = {}
    for polygon in study.polygons:
        parts.setdefault(polygon.label, []).append(polygon)
    write_features("depths", _classes(study, parts, crs), len(parts), crs, path)


def _classes(study: Study, parts: Dict[int, List[LabelledPolygon]], crs: Optional[Any]) -> Iterator[str]:
    count = len(study.limits) + 1
    exact = dict(zip([*range(-count, 0), *range(1, count + 1)], study.depths))
    for label in sorted(parts):
        said: Dict[str, Any] = {"class": label, "kind": "unchanged", "from_m": 0.0, "to_m": 0.0}
        area, volume = sum(polygon.plan_area for polygon in parts[label]), 0.0
        if label != UNCHANGED:
            each = exact[label]
            low, high = sorted((abs(each.low), abs(each.high)))
            said.update(kind="cut" if label < 0 else "fill", from_m=low, to_m=high if isfinite(high) else None)
            area, volume = each.area, each.volume
        said.update(area_m2=round(area, 3), volume_m3=round(volume, 3))
        rings = [[_places(to_crs_units(ring, crs)) for ring in polygon.rings] for polygon in parts[label]]
        yield _feature(in_site_units(said, crs, heights=("from", "to")), "MultiPolygon", rings)


def write_zero_lines(study: Study, path: PathLike) -> None:
    """The lines of no cut and no fill with their heights, in the units of the CRS.

    Raises SurveyError when the file cannot be written.
    """
    crs = study.comparison.existing.crs
    write_features("zero_line", _lines(study, crs), len(study.zero_lines), crs, path)


def _lines(study: Study, crs: Optional[Any]) -> Iterator[str]:
    for line in study.zero_lines:
        length = float(np.hypot(*np.diff(line[:, :2], axis=0).T).sum())
        xyz = np.column_stack([to_crs_units(line[:, :2], crs), heights_to_crs_units(line[:, 2], crs)])
        yield _feature(in_site_units({"length_m": round(length, 3)}, crs), "LineString", _places(xyz))


def _places(values: np.ndarray) -> List[List[float]]:
    places: List[List[float]] = (np.round(values, DECIMALS) + 0.0).tolist()
    return places


def _feature(properties: Dict[str, Any], kind: str, coordinates: Any) -> str:
    geometry = {"type": kind, "coordinates": coordinates}
    return json.dumps({"type": "Feature", "properties": properties, "geometry": geometry})
