"""Contours, triangles and lines of the surface as QGIS features, and drawn lines from QGIS layers.

Coordinates of a layer, heights included, are in the unit of its CRS; those of the core are in metres.
"""

from __future__ import annotations

from typing import Any, List, Sequence

import numpy as np
from qgis.core import (
    QgsFeatureRequest,
    QgsFeatureSink,
    QgsFeatureSource,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsPoint,
    QgsPolygon,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsVertexId,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import Contours
from ..core.linework.constraints import Constraints, LineKind
from ..core.linework.drawn import DrawnRow
from ..core.progress import Progress
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, metres_per_height_unit, metres_per_unit, to_crs_units
from .parameters import qgis_crs
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
    return fields_of((("kind", "text"), ("label", "text"), ("points", "whole")))


def write_lines(constraints: Constraints, crs: Any, sink: QgsFeatureSink) -> None:
    """Put the lines that the surface holds to into ``sink``; rings are closed."""
    for line in constraints.lines:
        if len(line.xyz) < 2:  # an added point
            continue
        xyz = _in_crs_units(np.asarray(line.xyz), crs)
        if line.closed and not np.array_equal(xyz[0, :2], xyz[-1, :2]):
            xyz = np.vstack([xyz, xyz[:1]])
        geometry = QgsLineString([QgsPoint(*place) for place in xyz.tolist()])
        add_feature(sink, QgsGeometry(geometry), [kind_word(line.kind), line.label, len(line.xyz)])


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


# Lines that the user drew


def read_drawn(
    source: QgsFeatureSource,
    kind: LineKind,
    label: str,
    crs: Any,
    heights: bool,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> List[DrawnRow]:
    """The features of a line or polygon layer, brought into the CRS ``crs``, in metres.

    Curves become chords. Without ``heights``, or where the layer has none, heights are nan: the surface
    around gives them.
    """
    request = QgsFeatureRequest().setDestinationCrs(qgis_crs(crs), context.transformContext())
    plan, rise = metres_per_unit(crs), metres_per_height_unit(crs)
    rows = []
    for feature in counted(source.getFeatures(request), source.featureCount(), progress):
        parts = [] if feature.geometry().isNull() else parts_of(feature.geometry(), heights)
        rows.append(DrawnRow(kind, [part * [plan, plan, rise] for part in parts], f"{label} {feature.id()}"))
    every = np.concatenate([part for row in rows for part in row.parts] or [np.empty((0, 3))])
    if len(every) and (every[:, 2] == 0.0).all():
        feedback.pushWarning(
            translate(
                "hummock", "{layer}: all heights are 0. If the lines were drawn without heights, switch their use off."
            ).format(layer=label)
        )
    return rows


def parts_of(geometry: QgsGeometry, heights: bool) -> List[np.ndarray]:
    """Each line, or ring of a polygon, as (k, 3), height nan where there is none."""
    flat = geometry.constGet().segmentize()
    with_z = heights and QgsWkbTypes.hasZ(flat.wkbType())
    parts = []
    for part in range(flat.partCount()):
        for ring in range(flat.ringCount(part)):
            places = [flat.vertexAt(QgsVertexId(part, ring, i)) for i in range(flat.vertexCount(part, ring))]
            xyz = [(place.x(), place.y(), place.z() if with_z else np.nan) for place in places]
            parts.append(np.array(xyz, float).reshape(-1, 3))
    return parts
