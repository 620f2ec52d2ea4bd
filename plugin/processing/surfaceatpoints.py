"""What a surface is like at points: height, slope, aspect and triangle."""

from __future__ import annotations

from math import isfinite
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np
from qgis.core import (
    QgsCoordinateTransform,
    QgsCsException,
    QgsFeatureSource,
    QgsGeometry,
    QgsPoint,
    QgsPointXY,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.points.layout import new_name
from ..core.progress import Progress, part
from ..core.surface.ask import PlaceAnswers, ask_surface
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, metres_per_unit
from .algorithm import progress_of
from .parameters import chosen_source, qgis_crs
from .sinks import add_feature, counted
from .surfaceinput import SurfaceAlgorithm
from .versions import NEW_KEYS, POINT, POINT_SOURCE, POINT_Z, field

translate = QCoreApplication.translate

#: The columns that are added; OVER only for points with heights of their own.
ANSWERS: Tuple[Tuple[str, str], ...] = (
    ("tin_height", "real"),
    ("slope_pct", "real"),
    ("slope_deg", "real"),
    ("aspect_deg", "real"),
    ("triangle", "whole"),
)
OVER = ("over_tin", "real")


class SurfaceAtPoints(SurfaceAlgorithm):
    """``hummock:surfaceatpoints``"""

    NAME = "surfaceatpoints"
    ICON = "surfaceatpoints.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Heights and slopes at points")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Adds the surface's height, slope, aspect and triangle to points.")

    def words(self) -> str:
        return translate("hummock", "height,elevation,slope,aspect,sample,query,check points,triangle,tin")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Asks the surface at each point and adds columns: <b>tin_height</b>, the height on the surface in the "
            "unit of its CRS; <b>slope_pct</b> and <b>slope_deg</b>, the slope of the triangle; <b>aspect_deg</b>, the "
            "way down in degrees clockwise from grid north; <b>triangle</b>, its number. Points with heights of their "
            "own also get <b>over_tin</b>: their height less the surface's, in the same unit.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Points in another CRS are asked at "
            "their place in the surface's CRS and stay as they are; their heights are taken to be in the surface's "
            "unit.</p><p><b>On an edge</b> the triangle of lower number answers. A level triangle has no aspect.</p>"
            "<p><b>What can go wrong:</b> points off the surface get empty columns and are counted in the log. Between "
            "the survey's points the height is interpolated: it is no measurement.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterFeatureSource("POINTS", translate("hummock", "Points to ask at"), [POINT_SOURCE]),
            translate("hummock", "Any points; a multipoint counts as its points."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Points with heights"), POINT_SOURCE),
            translate("hummock", "The points as they are, with the answers as columns."),
        )
        self.addOutput(QgsProcessingOutputNumber("ON_SURFACE", translate("hummock", "Points on the surface")))
        self.addOutput(QgsProcessingOutputNumber("OFF_SURFACE", translate("hummock", "Points off the surface")))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        source = chosen_source(self, parameters, "POINTS", context)
        asked = _collect(source, part(progress, 0.3, 0.5))
        answers = ask_surface(tin, _places_on(tin, asked.places, source, context) * metres_per_unit(tin.crs))
        has_z = QgsWkbTypes.hasZ(source.wkbType())
        place = self._write(tin, source, asked, answers, has_z, parameters, context, part(progress, 0.6, 1.0))
        on = int(np.count_nonzero(answers.triangle >= 0))
        off = len(asked.rows) - on + asked.without
        if off:
            feedback.pushWarning(
                translate("hummock", "Points off the surface or without a place, left empty: {count}.").format(
                    count=off
                )
            )
        feedback.pushInfo(translate("hummock", "Points on the surface: {count}.").format(count=on))
        return {"OUTPUT": place, "ON_SURFACE": on, "OFF_SURFACE": off}

    def _write(
        self,
        tin: Tin,
        source: QgsFeatureSource,
        asked: _Asked,
        answers: PlaceAnswers,
        has_z: bool,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> str:
        fields = source.fields()
        for name, kind in (*ANSWERS, OVER) if has_z else ANSWERS:
            fields.append(field(new_name(name, fields.names()), kind))
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, fields, POINT_Z if has_z else POINT, source.sourceCrs(), NEW_KEYS
        )
        height = heights_to_crs_units(answers.height, tin.crs)
        columns = [height, answers.slope_percent, answers.slope_degrees, answers.aspect]
        rows = zip(asked.rows, asked.points, np.column_stack(columns).tolist(), answers.triangle.tolist())
        for attributes, point, values, triangle in counted(rows, len(asked.rows), progress):
            added: List[Any] = [value if isfinite(value) else None for value in values]
            added.append(triangle if triangle >= 0 else None)
            if has_z:
                over = point.z() - values[0]
                added.append(over if isfinite(over) else None)
            add_feature(sink, QgsGeometry(point), [*attributes, *added])
        for attributes in asked.bare:
            add_feature(sink, QgsGeometry(), [*attributes, *[None] * (len(fields) - len(attributes))])
        return str(place)


class _Asked:
    """Points in the order of their features: ``rows`` of attributes, ``points``; ``bare``: rows without a place."""

    def __init__(self) -> None:
        self.rows: List[List[Any]] = []
        self.points: List[QgsPoint] = []
        self.bare: List[List[Any]] = []

    @property
    def without(self) -> int:
        return len(self.bare)

    @property
    def places(self) -> List[Tuple[float, float]]:
        return [(point.x(), point.y()) for point in self.points]


def _collect(source: QgsFeatureSource, progress: Progress) -> _Asked:
    asked = _Asked()
    for feature in counted(source.getFeatures(), source.featureCount(), progress):
        attributes = feature.attributes()
        found = False
        for vertex in feature.geometry().vertices():
            if isfinite(vertex.x()) and isfinite(vertex.y()):
                asked.rows.append(attributes)
                asked.points.append(vertex.clone())
                found = True
        if not found:
            asked.bare.append(attributes)
    return asked


def _places_on(
    tin: Tin, places: Sequence[Tuple[float, float]], source: QgsFeatureSource, context: QgsProcessingContext
) -> np.ndarray:
    """The places (q, 2) in the surface's CRS; nan where they cannot be brought there."""
    transform = QgsCoordinateTransform(source.sourceCrs(), qgis_crs(tin.crs), context.transformContext())
    there = np.full((len(places), 2), np.nan)
    for i, (x, y) in enumerate(places):
        try:
            moved = transform.transform(QgsPointXY(x, y))
        except QgsCsException:
            continue
        if isfinite(moved.x()) and isfinite(moved.y()):
            there[i] = moved.x(), moved.y()
    return there
