"""Contours, triangles and lines of the surface as QGIS features.

Coordinates of a layer, heights included, are in the unit of its CRS; those of the core are in metres.
"""

from __future__ import annotations

from typing import Any, Sequence

import numpy as np
from qgis.core import (
    QgsFeatureSink,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsPoint,
    QgsPolygon,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import Contours
from ..core.linework.constraints import Constraints, LineKind
from ..core.progress import Progress
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, to_crs_units
from .sinks import add_feature, counted, fields_of

translate = QCoreApplication.translate

# Contours


def contour_fields() -> QgsFields:
    return fields_of(
        (
            ("level", "real"),
            ("unit", "text"),
            ("level_m", "real"),
            ("index", "truth"),
            ("depression", "truth"),
            ("closed", "truth"),
        )
    )


def write_contours(contours: Contours, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put ``contours`` into ``sink``; each line has its level as height."""
    levels = heights_to_crs_units(contours.level, contours.crs).tolist()
    unit = contours.options.unit.value
    for i, line in enumerate(counted(contours, len(contours), progress)):
        x, y = to_crs_units(line, contours.crs).T.tolist()
        geometry = QgsLineString(x, y, [levels[i]] * len(x))
        attributes = [
            float(contours.level_in_unit[i]),
            unit,
            float(contours.level[i]),
            bool(contours.index[i]),
            bool(contours.depression[i]),
            bool(contours.closed[i]),
        ]
        add_feature(sink, QgsGeometry(geometry), attributes)


# The surface and its lines


def triangle_fields() -> QgsFields:
    return fields_of((("triangle", "whole"), ("slope_pct", "real"), ("area_m2", "real")))


def write_triangles(tin: Tin, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put the triangles of ``tin`` into ``sink``: number, slope in per cent, and area in plan."""
    corners = tin.corners()
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    slope = 100.0 * np.hypot(normal[:, 0], normal[:, 1]) / normal[:, 2]
    world = _in_crs_units(corners + np.append(tin.origin, 0.0), tin.crs)
    rows = zip(world.tolist(), slope.tolist(), (0.5 * normal[:, 2]).tolist())
    for number, (ring, steepness, area) in enumerate(counted(rows, len(world), progress)):
        add_feature(sink, QgsGeometry(_ring(ring)), [number, steepness, area])


def _in_crs_units(xyz: np.ndarray, crs: Any) -> np.ndarray:
    """Easting, northing and height (..., 3) in metres, in the units of the CRS."""
    plan = to_crs_units(xyz[..., :2], crs)
    return np.concatenate([plan, heights_to_crs_units(xyz[..., 2:], crs)], axis=-1)


def _ring(places: Sequence[Sequence[float]]) -> QgsPolygon:
    return QgsPolygon(QgsLineString([QgsPoint(*place) for place in (*places, places[0])]))


def line_fields() -> QgsFields:
    return fields_of((("kind", "text"), ("label", "text"), ("points", "whole"), ("bridged_m", "real")))


def write_lines(constraints: Constraints, crs: Any, sink: QgsFeatureSink) -> None:
    """Put the lines that the surface holds to into ``sink``; rings are closed.

    ``bridged_m``: length on which a line is carried straight across rejected points.
    """
    for line in constraints.lines:
        if len(line.xyz) < 2:  # an added point
            continue
        xyz = _in_crs_units(np.asarray(line.xyz), crs)
        if line.closed and not np.array_equal(xyz[0, :2], xyz[-1, :2]):
            xyz = np.vstack([xyz, xyz[:1]])
        geometry = QgsLineString([QgsPoint(*place) for place in xyz.tolist()])
        add_feature(sink, QgsGeometry(geometry), [kind_word(line.kind), line.label, len(line.xyz), line.bridged])


def kind_word(kind: LineKind) -> str:
    return str(LineKind(kind).name).lower()


def polygon_of(rings: Sequence[np.ndarray], crs: Any) -> QgsPolygon:
    """A polygon of closed rings (k, 2) in metres, the outer one first."""
    area = QgsPolygon()
    for number, ring in enumerate(rings):
        line = QgsLineString(*to_crs_units(ring, crs).T.tolist())
        # one by one: of a list of rings the polygon would not become the owner
        (area.addInteriorRing if number else area.setExteriorRing)(line)
    return area
