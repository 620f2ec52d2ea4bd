"""Labels of contours and spot heights as QGIS features."""

from __future__ import annotations

from typing import Any

import numpy as np
from qgis.core import QgsFeatureSink, QgsFields, QgsGeometry, QgsPoint

from ..core.contours.labels import Labels
from ..core.contours.lines import Contours
from ..core.contours.spots import SpotKind, Spots
from ..core.units import LengthUnit, heights_to_crs_units, to_crs_units
from .sinks import add_feature, fields_of


def label_fields() -> QgsFields:
    return fields_of(
        (
            ("text", "text"),
            ("rotation", "real"),
            ("size", "real"),
            ("level", "real"),
            ("unit", "text"),
            ("index", "truth"),
        )
    )


def write_labels(labels: Labels, contours: Contours, sink: QgsFeatureSink) -> None:
    """Put ``labels`` of ``contours`` into ``sink``: rotation in degrees clockwise from east, size in the CRS's unit."""
    places = to_crs_units(labels.xy + labels.origin, contours.crs).tolist()
    size = float(to_crs_units(labels.height, contours.crs))
    unit = contours.options.unit.value
    for (x, y), turn, text, line in zip(places, labels.rotation.tolist(), labels.text, labels.line.tolist()):
        level, index = float(contours.level_in_unit[line]), bool(contours.index[line])
        add_feature(sink, QgsGeometry(QgsPoint(x, y)), [text, -turn, size, level, unit, index])


def spot_fields() -> QgsFields:
    return fields_of(
        (
            ("kind", "text"),
            ("text", "text"),
            ("height", "real"),
            ("prominence", "real"),
            ("unit", "text"),
            ("height_m", "real"),
            ("on_rim", "truth"),
        )
    )


def write_spots(spots: Spots, crs: Any, unit: LengthUnit, decimals: int, sink: QgsFeatureSink) -> None:
    """Put ``spots`` into ``sink``; height and prominence in ``unit``, the text with ``decimals``."""
    plan = to_crs_units(spots.xyz[:, :2] + spots.origin, crs)
    places = np.column_stack([plan, heights_to_crs_units(spots.xyz[:, 2], crs)]).tolist()
    rows = zip(places, spots.kind.tolist(), spots.xyz[:, 2].tolist(), spots.prominence.tolist(), spots.on_rim.tolist())
    for place, kind, height, prominence, on_rim in rows:
        there = height / unit.metres
        attributes = [
            SpotKind(kind).name.lower(),
            f"{there:.{decimals}f}",
            there,
            prominence / unit.metres,
            unit.value,
            height,
            on_rim,
        ]
        add_feature(sink, QgsGeometry(QgsPoint(*place)), attributes)
