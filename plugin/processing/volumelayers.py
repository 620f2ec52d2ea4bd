"""Cut and fill as QGIS features: tables of volumes with their doubt, depth polygons, lines of no cut nor fill.

Coordinates are in the unit of the CRS, heights too; columns are metric, as their names say.
"""

from __future__ import annotations

from math import isfinite
from typing import Any, Dict, List, Optional, Sequence, Tuple, Union

import numpy as np
from qgis.core import (
    QgsFeatureSink,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsMultiPolygon,
    QgsPoint,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.depths import DepthClass
from ..core.earthwork.doubt import Doubt, VolumeDoubt
from ..core.earthwork.layers import LayerVolumes
from ..core.earthwork.regions import PartVolume
from ..core.earthwork.volume import Volume
from ..core.surface.dissolve import LabelledPolygon
from ..core.units import heights_to_crs_units, to_crs_units
from .layers import polygon_of
from .sinks import add_feature, fields_of

translate = QCoreApplication.translate

# Volumes and their doubt

_DOUBTS = (
    ("volume_m3", "real"),
    ("half_95_m3", "real"),
    ("low_95_m3", "real"),
    ("high_95_m3", "real"),
    ("random_m3", "real"),
    ("drift_m3", "real"),
    ("systematic_m3", "real"),
    ("model_m3", "real"),
    ("small_m3", "real"),
    ("triangles_m3", "real"),
    ("area_m2", "real"),
    ("mean_depth_m", "real"),
)


def volume_fields() -> QgsFields:
    return fields_of((("region", "text"), ("quantity", "text"), *_DOUBTS))


def write_volumes(
    region: str,
    doubt: VolumeDoubt,
    areas: Tuple[float, float, float],
    sink: QgsFeatureSink,
    measured: Optional[Union[Volume, PartVolume]] = None,
) -> None:
    """Rows cut, fill and net of one region; ``areas`` of cut, fill and all that is compared (m²).

    ``measured``: what the triangles say as they are; None where that is what is told.
    """
    for quantity, each, area in zip(("cut", "fill", "net"), (doubt.cut, doubt.fill, doubt.net), areas):
        raw = each.value if measured is None else getattr(measured, quantity)
        values = [*doubt_values(each), raw, area, _ratio(each.value, area)]
        add_feature(sink, QgsGeometry(), [region, quantity, *values])


def doubt_values(doubt: Doubt) -> List[float]:
    """Value, half and ends of the 95 % interval, and the standard deviations by cause, cubic metres."""
    low, high = doubt.interval_95
    parts = [doubt.random, doubt.drift, doubt.systematic, doubt.model, doubt.small]
    return [doubt.value, doubt.half_95, low, high, *parts]


def _ratio(volume: float, area: float) -> Optional[float]:
    return volume / area if area > 0 else None


def class_fields(region: bool = False) -> QgsFields:
    """Columns of depth classes; with the region's name where there are several."""
    first = (("region", "text"),) if region else ()
    return fields_of(
        (
            *first,
            ("class", "whole"),
            ("kind", "text"),
            ("from_m", "real"),
            ("to_m", "real"),
            ("label", "text"),
            ("area_m2", "real"),
            ("volume_m3", "real"),
        )
    )


def class_values(number: int, each: DepthClass, label: str) -> List[Any]:
    """A row of :func:`class_fields`: depths are above 0 for both, the side is in ``kind``."""
    low, high = sorted((abs(each.low), abs(each.high)))
    return [
        number,
        "cut" if number < 0 else "fill",
        low,
        high if isfinite(high) else None,
        label,
        each.area,
        each.volume,
    ]


def write_depth_polygons(
    polygons: Sequence[LabelledPolygon],
    depths: Dict[int, DepthClass],
    labels: Dict[int, str],
    crs: Any,
    sink: QgsFeatureSink,
    kind: str = "",
) -> None:
    """A feature for each class that occurs, areas and volumes exact; ground that stays as it is has class 0.

    ``kind``: what to call all of it in place of cut and fill.
    """
    joined: Dict[int, QgsMultiPolygon] = {}
    plan: Dict[int, float] = {}
    for polygon in polygons:
        joined.setdefault(polygon.label, QgsMultiPolygon()).addGeometry(polygon_of(polygon.rings, crs))
        plan[polygon.label] = plan.get(polygon.label, 0.0) + polygon.plan_area
    for number in sorted(joined):
        if number in depths:
            values = class_values(number, depths[number], labels[number])
            values[1] = kind or values[1]
        else:
            values = [number, "unchanged", 0.0, 0.0, labels[number], plan[number], 0.0]
        add_feature(sink, QgsGeometry(joined[number]), values)


# Lines of no cut and no fill


def zero_line_fields() -> QgsFields:
    return fields_of((("line", "whole"), ("length_m", "real"), ("closed", "truth")))


def write_zero_lines(lines: Sequence[np.ndarray], crs: Any, sink: QgsFeatureSink) -> None:
    for number, line in enumerate(lines, 1):
        xyz = np.column_stack([to_crs_units(line[:, :2], crs), heights_to_crs_units(line[:, 2], crs)])
        length = float(np.hypot(*np.diff(line[:, :2], axis=0).T).sum())
        closed = bool(np.array_equal(line[0, :2], line[-1, :2]))
        geometry = QgsLineString([QgsPoint(*place) for place in xyz.tolist()])
        add_feature(sink, QgsGeometry(geometry), [number, length, closed])


# Materials


def layer_fields() -> QgsFields:
    return fields_of((("region", "text"), ("material", "text"), ("cut_m3", "real")))


def write_layers(region: str, found: LayerVolumes, sink: QgsFeatureSink) -> None:
    for layer in found.layers:
        add_feature(sink, QgsGeometry(), [region, layer.name, layer.cut])
    unknown = translate("hummock", "not known")
    add_feature(sink, QgsGeometry(), [region, unknown, found.unknown])
