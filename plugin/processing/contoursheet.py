"""Contours finished for the sheet: calmed, smoothed, labelled, with spot heights."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSink,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.labels import Labels, place_labels
from ..core.contours.lines import ContourOptions, Contours
from ..core.contours.smooth import smooth_contours
from ..core.contours.soften import soften_heights
from ..core.contours.spots import Spots, find_spots
from ..core.contours.trace import trace_contours
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from .algorithm import progress_of
from .contours import ContourAlgorithm, contours_name, no_contours
from .layers import contour_fields, write_contours
from .localnumbers import shown
from .parameters import number, optional_number, qgis_crs
from .sheetlayers import label_fields, spot_fields, write_labels, write_spots
from .styles import CONTOURS, LABELS, SPOTS, dress_vector
from .versions import LINE_SOURCE, LINE_Z, POINT, POINT_SOURCE, POINT_Z, WHOLE_NUMBER

translate = QCoreApplication.translate


@dataclass(frozen=True)
class _Sheet:
    """What is drawn, and how far it is from the surface: ``moved`` (m, heights), ``shifted`` (m, lines in plan)."""

    contours: Contours
    moved: float
    shifted: float


class ContourSheet(ContourAlgorithm):
    """``hummock:contoursheet``"""

    NAME = "contoursheet"
    ICON = "contoursheet.svg"

    def title(self) -> str:
        return translate("hummock", "Contours for the sheet")

    def summary(self) -> str:
        return translate("hummock", "Draws calm, smooth contours with labels and spot heights for a plan.")

    def words(self) -> str:
        return translate("hummock", "contour lines,smooth,labels,spot heights,summit,pit,plan,drawing,feet,half foot")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Draws contours as a plan shows them: noise calmed, corners rounded, labels that read uphill on the "
            "straight places of the lines, and spot heights at summits, pits and saddles.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it, and the scale at which the plan will be "
            "printed: labels keep their size on the ground, so that they fit at that scale.</p>"
            "<p><b>Calming</b> moves no height by more than the tolerance you state; vertices on breaklines and on the "
            "rim stay. <b>Smoothing</b> moves no place of a line by more than the distance you state; lines never "
            "cross each other or a breakline, rings stay closed, and each survey point stays on its side. The log says "
            "how much of both was used.</p>"
            "<p><b>For half-foot contours</b> choose interval 0.5, feet, and an index contour every 2.</p>"
            "<p><b>What can go wrong:</b> these lines are for drawing. Take numbers, volumes and hand-over from the "
            "surface, or from “Contours of a surface”. Labels for another scale are too large or too small: run it "
            "again for that scale. Short or crowded lines get no label.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_level_parameters()
        self.add_drawing_parameters()
        self._add_label_parameters()
        self._add_outputs()

    def _add_label_parameters(self) -> None:
        self.add(
            number("TEXT_SIZE", translate("hummock", "Size of the labels on the plan (mm)"), 2.0, 0.1),
            translate("hummock", "The size of the typeface; figures are about 0.7 of it high."),
            advanced=True,
        )
        self.add(
            number("SPACING", translate("hummock", "Distance of labels along a line on the plan (mm)"), 120.0, 1.0),
            translate("hummock", "About so far from one label to the next; a line shorter than that has one at most."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("INDEX_ONLY", translate("hummock", "Label index contours only"), True),
            translate("hummock", "Switch it off to label every contour."),
            advanced=True,
        )
        self.add(
            number("PROMINENCE", translate("hummock", "Least prominence of spot heights (m; empty: the interval)"),
                   least=0.0),
            translate("hummock", "How far a summit stands above, or a pit below, the way to the next one."),
            advanced=True,
        )  # fmt: skip
        self.add(
            number("DECIMALS", translate("hummock", "Decimals of spot heights"), 2, 0, 4, WHOLE_NUMBER),
            translate("hummock", "In the unit of the interval."),
            advanced=True,
        )

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Contours"), LINE_SOURCE),
            translate("hummock", "Lines with level, index and depression; for drawing only."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "LABELS", translate("hummock", "Contour labels"), POINT_SOURCE, optional=True, createByDefault=True
            ),
            translate("hummock", "Points with text, rotation (degrees clockwise) and size, styled to show the text."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "SPOTS", translate("hummock", "Spot heights"), POINT_SOURCE, optional=True, createByDefault=True
            ),
            translate("hummock", "Summits, pits and saddles with height and prominence, on the surface as measured."),
        )
        self.add_numbers(
            ("CONTOURS", translate("hummock", "Number of contours")),
            ("LABEL_COUNT", translate("hummock", "Number of labels")),
            ("SPOT_COUNT", translate("hummock", "Number of spot heights")),
            ("LARGEST_CHANGE", translate("hummock", "Largest change of a height (m)")),
            ("LARGEST_SHIFT", translate("hummock", "Largest shift of a line (m)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        options = self.contour_options(tin, parameters, context)
        sheet = self._draw(tin, options, parameters, context, feedback, part(progress, 0.2, 0.6))
        results = self._write_contours(sheet, parameters, context, part(progress, 0.6, 0.8))
        results.update(self._write_labels(sheet, parameters, context, part(progress, 0.8, 0.9)))
        results.update(self._write_spots(tin, options, parameters, context, part(progress, 0.9, 1.0)))
        if len(sheet.contours) == 0:
            feedback.pushWarning(no_contours(tin, options))
        feedback.pushInfo(
            shown(
                translate(
                    "hummock",
                    "For drawing only: heights were moved by up to {moved:.3f} m, then lines by up to "
                    "{shifted:.3f} m in "
                    "plan. Contours: {count}.",
                ),
                moved=sheet.moved,
                shifted=sheet.shifted,
                count=len(sheet.contours),
            )
        )
        return results

    def _draw(
        self,
        tin: Tin,
        options: ContourOptions,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> _Sheet:
        soft = soften_heights(tin, self.calm(tin, parameters, context, feedback), part(progress, 0.0, 0.3))
        exact = trace_contours(soft.tin, options, part(progress, 0.3, 0.6))
        farthest = self.parameterAsDouble(parameters, "SMOOTH", context)
        smooth = smooth_contours(exact, soft.tin, farthest, part(progress, 0.6, 1.0))
        return _Sheet(smooth.contours, soft.achieved, smooth.achieved_shift)

    def _write_contours(
        self, sheet: _Sheet, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress
    ) -> Dict[str, Any]:
        contours = sheet.contours
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, contour_fields(), LINE_Z, qgis_crs(contours.crs)
        )
        write_contours(contours, sink, progress)
        name = contours_name(contours.options)
        dress_vector(context, place, CONTOURS, name, labels=parameters.get("LABELS") is None)
        return {
            "OUTPUT": place,
            "CONTOURS": len(contours),
            "LARGEST_CHANGE": sheet.moved,
            "LARGEST_SHIFT": sheet.shifted,
        }

    def _write_labels(
        self, sheet: _Sheet, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress
    ) -> Dict[str, Any]:
        crs = sheet.contours.crs
        sink, place = self.parameterAsSink(parameters, "LABELS", context, label_fields(), POINT, qgis_crs(crs))
        if sink is None:
            return {"LABEL_COUNT": 0}
        labels = self._place_labels(sheet.contours, parameters, context, progress)
        write_labels(labels, sheet.contours, sink)
        dress_vector(context, place, LABELS)
        return {"LABELS": place, "LABEL_COUNT": len(labels)}

    def _place_labels(
        self, contours: Contours, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress
    ) -> Labels:
        millimetre = 0.001 * self.parameterAsDouble(parameters, "SCALE", context)  # on the plan, metres on the ground
        return place_labels(
            contours,
            spacing=millimetre * self.parameterAsDouble(parameters, "SPACING", context),
            height=millimetre * self.parameterAsDouble(parameters, "TEXT_SIZE", context),
            only_index=self.parameterAsBool(parameters, "INDEX_ONLY", context),
            progress=progress,
        )

    def _write_spots(
        self,
        tin: Tin,
        options: ContourOptions,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> Dict[str, Any]:
        sink, place = self.parameterAsSink(parameters, "SPOTS", context, spot_fields(), POINT_Z, qgis_crs(tin.crs))
        if sink is None:
            return {"SPOT_COUNT": 0}
        least = optional_number(self, parameters, "PROMINENCE", context)
        if least is None:
            least = options.interval * options.unit.metres
        spots: Spots = find_spots(tin, least, progress)
        write_spots(spots, tin.crs, options.unit, self.parameterAsInt(parameters, "DECIMALS", context), sink)
        dress_vector(context, place, SPOTS)
        return {"SPOTS": place, "SPOT_COUNT": len(spots)}
