"""What quality finds as QGIS features: empty circles, long triangles, places to walk, check points, walking lines.

Coordinates are in the unit of the CRS, heights too; columns are in metres where their name ends in ``_m``.
"""

from __future__ import annotations

from math import isfinite
from typing import Any, List, Optional

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCoordinateTransformContext,
    QgsFeature,
    QgsFeatureSink,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsPoint,
    QgsPolygon,
    QgsProcessingException,
    QgsVectorFileWriter,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.files import replace_file
from ..core.points.pointset import PointSet
from ..core.progress import Progress
from ..core.quality.check_points import Comparison, Cover
from ..core.quality.coverage import Coverage
from ..core.quality.empty_circles import EmptyCircles
from ..core.quality.plan import LineUse, WalkPlan
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, to_crs_units
from .parameters import qgis_crs
from .sinks import add_feature, counted, fields_of
from .versions import field

translate = QCoreApplication.translate

_CORNERS = 72  # of a circle's polygon


# Coverage


def circle_fields() -> QgsFields:
    return fields_of((("rank", "whole"), ("radius_m", "real")))


def write_circles(circles: EmptyCircles, crs: Any, sink: QgsFeatureSink) -> None:
    """Put the circles into ``sink`` as polygons of so many corners, the widest first."""
    turn = np.linspace(0.0, 2 * np.pi, _CORNERS + 1)
    ring = np.column_stack([np.cos(turn), np.sin(turn)])
    rows = zip(circles.easting.tolist(), circles.northing.tolist(), circles.radius.tolist())
    for rank, (east, north, radius) in enumerate(rows, 1):
        x, y = to_crs_units(ring * radius + (east, north), crs).T.tolist()
        add_feature(sink, QgsGeometry(QgsPolygon(QgsLineString(x, y))), [rank, radius])


def long_fields() -> QgsFields:
    return fields_of((("triangle", "whole"), ("longest_m", "real"), ("area_m2", "real")))


def write_long_triangles(tin: Tin, found: Coverage, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put the triangles with a long edge into ``sink``."""
    which = np.flatnonzero(found.long)
    corner = tin.vertices[tin.triangles[which]][:, :, :2]
    step = np.roll(corner, -1, axis=1) - corner
    longest = np.hypot(step[:, :, 0], step[:, :, 1]).max(axis=1)
    area = (step[:, 0, 0] * step[:, 1, 1] - step[:, 0, 1] * step[:, 1, 0]) / 2
    world = to_crs_units(corner + tin.origin, tin.crs).tolist()
    rows = zip(world, which.tolist(), longest.tolist(), area.tolist())
    for ring, *attributes in counted(rows, len(which), progress):
        line = QgsLineString([QgsPoint(*place) for place in (*ring, ring[0])])
        add_feature(sink, QgsGeometry(QgsPolygon(line)), attributes)


def place_fields() -> QgsFields:
    return fields_of((("order", "whole"), ("name", "text"), ("radius_m", "real"), ("line", "text")))


def write_places(places: PointSet, sink: QgsFeatureSink) -> None:
    """Put places to walk again into ``sink``, in walking order."""
    columns = places.name.tolist(), places.extra["radius"].tolist(), places.extra["line"].tolist()
    for order, (place, name, radius, line) in enumerate(zip(_places(places), *columns), 1):
        add_feature(sink, QgsGeometry(place), [order, name, radius, line])


def write_places_gpx(places: PointSet, path: str, transforms: QgsCoordinateTransformContext) -> None:
    """Places to walk again as way points in a GPX file, in WGS 84. Raises QgsProcessingException when it can't be."""
    layer = QgsVectorLayer("PointZ", "places", "memory")
    layer.setCrs(qgis_crs(places.crs))
    layer.dataProvider().addAttributes([field("name", "text"), field("desc", "text")])
    layer.updateFields()
    for place, name, line in zip(_places(places), places.name.tolist(), places.extra["line"].tolist()):
        feature = QgsFeature(layer.fields())
        feature.setGeometry(QgsGeometry(place))
        feature.setAttributes([name, line])
        layer.dataProvider().addFeature(feature)
    options = QgsVectorFileWriter.SaveVectorOptions()
    options.driverName = "GPX"
    options.layerName = "waypoints"
    options.ct = QgsCoordinateTransform(layer.crs(), QgsCoordinateReferenceSystem("EPSG:4326"), transforms)
    with replace_file(path) as temporary:
        code, reason, *_ = QgsVectorFileWriter.writeAsVectorFormatV3(layer, str(temporary), transforms, options)
        if code != QgsVectorFileWriter.WriterError.NoError:
            raise QgsProcessingException(
                translate("hummock", "{file}: cannot be written ({reason}); choose another file.").format(
                    file=path, reason=" ".join(str(reason).split()) or translate("hummock", "no reason given")
                )
            )


def _places(points: PointSet) -> List[QgsPoint]:
    plan = [to_crs_units(each, points.crs) for each in (points.easting, points.northing)]
    height = heights_to_crs_units(points.height, points.crs)
    return [QgsPoint(*place) for place in np.column_stack([*plan, height]).tolist()]


# Check points


def comparison_fields() -> QgsFields:
    return fields_of(
        (
            ("name", "text"),
            ("line", "whole"),
            ("cover", "text"),
            ("group", "text"),
            ("height", "real"),
            ("surface", "real"),
            ("off_m", "real"),
            ("sigma_v_m", "real"),
            ("slope_pct", "real"),
        )
    )


def write_comparison(found: Comparison, crs: Any, sink: QgsFeatureSink) -> None:
    """Put check points into ``sink`` with the surface's height there; ``off_m`` is the surface less the check."""
    checks = found.checks
    groups = {Cover.NON_VEGETATED: "non-vegetated", Cover.VEGETATED: "vegetated"}
    plan = [to_crs_units(each, crs) for each in (checks.easting, checks.northing)]
    height, surface = (heights_to_crs_units(each, crs) for each in (checks.height, found.surface_height))
    for i, place in enumerate(np.column_stack([*plan, height]).tolist()):
        attributes = [
            str(checks.name[i]),
            int(checks.line[i]),
            str(checks.cover_word[i]),
            groups[Cover(int(checks.cover[i]))],
            *(_or_null(each[i]) for each in (height, surface, found.difference, checks.sigma_v, 100 * found.slope)),
        ]
        add_feature(sink, QgsGeometry(QgsPoint(*place)), attributes)


def _or_null(value: float) -> Optional[float]:
    return float(value) if isfinite(value) else None


# Walking plan


def walk_fields() -> QgsFields:
    return fields_of(
        (
            ("order", "whole"),
            ("use", "text"),
            ("name", "text"),
            ("length_m", "real"),
            ("from_start_m", "real"),
            ("minutes", "real"),
        )
    )


def write_walk(plan: WalkPlan, crs: Any, speed: float, sink: QgsFeatureSink) -> None:
    """Put the lines into ``sink`` in walking order; ``minutes`` of walking each at ``speed`` m/s, without turns."""
    gone = 0.0
    for order, line in enumerate(plan.lines, 1):
        gone += line.length
        x, y = to_crs_units(line.xy, crs).T.tolist()
        attributes = [order, line.use.value, line.name or None, line.length, gone, line.length / speed / 60]
        add_feature(sink, QgsGeometry(QgsLineString(x, y)), attributes)


def walk_counts(plan: WalkPlan) -> List[str]:
    """What the plan consists of, a text for each use there is."""
    texts = {
        LineUse.PERIMETER: translate("hummock", "Perimeter: {length:.0f} m (lines: {count})"),
        LineUse.PASS: translate("hummock", "Passes: {length:.0f} m (lines: {count})"),
        LineUse.CROSS: translate("hummock", "Cross passes: {length:.0f} m (lines: {count})"),
        LineUse.LINK: translate("hummock", "Links between them: {length:.0f} m (lines: {count})"),
    }
    used = {use: text for use, text in texts.items() if plan.count_of(use)}
    return [text.format(count=plan.count_of(use), length=plan.length_of(use)) for use, text in used.items()]
