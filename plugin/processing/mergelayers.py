"""What merging several files found, as layers."""

from __future__ import annotations

from typing import Optional

from qgis.core import QgsFeatureSink, QgsFields, QgsGeometry, QgsPoint

from ..core.points.merge import Merged
from ..core.points.merge_table import CLASH_COLUMNS, DIFFERENCE_COLUMNS, clash_rows, difference_rows
from ..core.units import heights_to_crs_units, to_crs_units
from .sinks import add_feature, fields_of


def _kind(column: str) -> str:
    return "whole" if column.endswith("line") else "real" if column.endswith("_m") else "text"


def difference_fields() -> QgsFields:
    """File, line and name of both points, distance and height difference in metres."""
    return fields_of([(column, _kind(column)) for column in DIFFERENCE_COLUMNS])


def write_differences(merged: Optional[Merged], sink: QgsFeatureSink) -> None:
    """A point for each pair, where the second one lies; none without a merge."""
    if merged is None:
        return
    points = merged.points.select(merged.height_differences.second)
    east, north = (to_crs_units(values, points.crs) for values in (points.easting, points.northing))
    places = zip(east.tolist(), north.tolist(), heights_to_crs_units(points.height, points.crs).tolist())
    for place, row in zip(places, difference_rows(merged)):
        add_feature(sink, QgsGeometry(QgsPoint(*place)), row)


def clash_fields() -> QgsFields:
    """Name, file and line."""
    return fields_of([(column, _kind(column)) for column in CLASH_COLUMNS])


def write_clashes(merged: Optional[Merged], sink: QgsFeatureSink) -> None:
    """A row for each point whose name occurs in more than one file."""
    for row in () if merged is None else clash_rows(merged):
        add_feature(sink, QgsGeometry(), row)
