"""A surface by classes of slope."""

from __future__ import annotations

import re
from math import inf
from typing import Any, Callable, Dict, List, Optional, Tuple

from qgis.core import (
    QgsFeatureSink,
    QgsFields,
    QgsGeometry,
    QgsMultiPolygon,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress, part
from ..core.surface.dissolve import LabelledPolygon
from ..core.surface.slopes import DEFAULT_LIMITS_PERCENT, SlopeMap, slope_map, slope_polygons
from ..core.surface.tin import Tin
from .algorithm import progress_of
from .layers import polygon_of
from .localnumbers import shown
from .parameters import qgis_crs
from .sinks import add_feature, counted, fields_of
from .styles import dress_slopes
from .surfaceinput import SurfaceAlgorithm
from .versions import MULTIPOLYGON, POLYGON_SOURCE

translate = QCoreApplication.translate


class MapSlopes(SurfaceAlgorithm):
    """``hummock:slopemap``"""

    NAME = "slopemap"
    ICON = "slopemap.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Slope map")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Divides a surface into areas by classes of slope.")

    def words(self) -> str:
        return translate("hummock", "slope,grade,gradient,steepness,classes,percent,areas,accessibility")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Puts each triangle of a surface into a class by its slope and joins the triangles of a class to areas. "
            "A slope equal to a limit belongs to the class below it.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Slopes are rise over run in percent, "
            "the steepest way down each triangle. Limits are written such as 1; 2; 5; 8.33; 20; 50: 5 is 1 in 20, "
            "8.33 is 1 in 12. They are no standard: set those of your site.</p>"
            "<p><b>Columns:</b> class (from 0, the flattest), from_pct and to_pct (empty for the last class), label, "
            "plan_m2 and slope_m2, the area in plan and on the slope, in square metres.</p>"
            "<p><b>What can go wrong:</b> between points half a metre apart that are good to 15 mm the slope is only "
            "good to some 4 percent: noise speckles the map of nearly level ground. Thin the surface first, or judge "
            "larger areas. This map does not replace a check against the rules that apply to your site.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        usual = "; ".join(f"{limit:.4g}" for limit in DEFAULT_LIMITS_PERCENT)
        self.add(
            QgsProcessingParameterString("LIMITS", translate("hummock", "Limits between the classes (%)"), usual),
            translate("hummock", "Rising numbers with semicolons or blanks between them."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Slope classes"), POLYGON_SOURCE),
            translate("hummock", "A feature for each class that occurs, from the flattest to the steepest."),
        )
        self.addOutput(QgsProcessingOutputNumber("CLASSES", translate("hummock", "Classes that occur")))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        limits = read_limits(self.parameterAsString(parameters, "LIMITS", context))
        tin = self.read_surface(parameters, context)
        progress(0.3, "surface")
        classes = slope_map(tin, limits)
        polygons = slope_polygons(tin, classes)
        progress(0.7, "surface")
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, slope_fields(), MULTIPOLYGON, qgis_crs(tin.crs)
        )
        _write(classes, polygons, tin, sink, part(progress, 0.7, 1.0))
        dress_slopes(context, place, [class_label(classes, i) for i in range(len(limits) + 1)])
        whole = classes.plan_area.sum()
        for i, area in enumerate(classes.plan_area.tolist()):
            feedback.pushInfo(
                shown(
                    translate("hummock", "{label}: {area:.1f} m² in plan, {share:.1f} % of the surface."),
                    label=class_label(classes, i, shown),
                    area=area,
                    share=100.0 * area / whole,
                )
            )
        return {"OUTPUT": place, "CLASSES": int((classes.plan_area > 0).sum())}


def read_limits(text: str) -> List[float]:
    """Numbers apart by semicolons or blanks, or by commas where there is neither; a comma may be the decimal sign."""
    pieces = [piece for piece in re.split(r"[;\s]+", text.strip()) if piece.strip(",")]
    if len(pieces) == 1 and "," in pieces[0]:
        pieces = pieces[0].split(",")
    elif ";" not in text:  # "1, 2, 5": the commas part, too
        pieces = [piece.rstrip(",") for piece in pieces]
    try:
        return [float(piece.replace(",", ".").rstrip("%")) for piece in pieces]
    except ValueError:
        raise QgsProcessingException(
            translate(
                "hummock", "The limits “{text}” are no list of numbers; write them such as 1; 2; 5; 8.33; 20."
            ).format(text=text)
        ) from None


def slope_fields() -> QgsFields:
    return fields_of(
        (
            ("class", "whole"),
            ("from_pct", "real"),
            ("to_pct", "real"),
            ("label", "text"),
            ("plan_m2", "real"),
            ("slope_m2", "real"),
        )
    )


def class_label(classes: SlopeMap, number: int, fill: Callable[..., str] = str.format) -> str:
    return range_label(*classes.range_percent(number), fill)


def range_label(low: float, high: float, fill: Callable[..., str] = str.format) -> str:
    """A class of slope by its ends in percent, the upper one infinite for the last class.

    ``fill`` fills the gaps of a text, for the screen :func:`..localnumbers.shown`.
    """
    if high == inf:
        return fill(translate("hummock", "over {low:.4g} %"), low=low)
    return fill(translate("hummock", "{low:.4g} to {high:.4g} %"), low=low, high=high)


def _write(
    classes: SlopeMap, polygons: Tuple[LabelledPolygon, ...], tin: Tin, sink: QgsFeatureSink, progress: Progress
) -> None:
    areas: Dict[int, QgsMultiPolygon] = {}
    for polygon in counted(polygons, len(polygons), progress):
        areas.setdefault(polygon.label, QgsMultiPolygon()).addGeometry(polygon_of(polygon.rings, tin.crs))
    for number in sorted(areas):
        low, high = classes.range_percent(number)
        attributes = [
            number,
            low,
            None if high == inf else high,
            class_label(classes, number),
            float(classes.plan_area[number]),
            float(classes.slope_area[number]),
        ]
        add_feature(sink, QgsGeometry(areas[number]), attributes)
