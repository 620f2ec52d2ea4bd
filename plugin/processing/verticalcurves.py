"""Grades and vertical curves fitted to the heights along a line."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSink
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.curves import FittedProfile, fit_curves
from ..core.alignment.profile import Profile, make_profile
from ..core.surface.tin import Tin
from .algorithm import progress_of, report, translate_core
from .localnumbers import shown
from .parameters import number, qgis_crs
from .roadinput import RoadAlgorithm
from .roadlayers import (
    curve_fields,
    meeting_fields,
    plain,
    residual_fields,
    write_curves,
    write_meetings,
    write_residuals,
)
from .roadstyles import MEETINGS, RESIDUALS, VERTICAL_CURVES, dress_road
from .versions import LINE, LINE_SOURCE, POINT_SOURCE, POINT_Z, WHOLE_NUMBER

translate = QCoreApplication.translate


class FitVerticalCurves(RoadAlgorithm):
    """``hummock:verticalcurves``"""

    NAME = "verticalcurves"
    ICON = "verticalcurves.svg"

    def title(self) -> str:
        return translate("hummock", "Fit grades and vertical curves")

    def summary(self) -> str:
        return translate("hummock", "Finds the grades and parabolas that an existing profile follows.")

    def words(self) -> str:
        return translate("hummock", "vertical curve,parabola,K value,crest,sag,grade,profile,fit,alignment,road")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Fits straight grades joined by parabolas to the heights along a line: where they begin and end, where "
            "two grades meet, and K, the length of curve for each percent that the grade changes. Grades, K and the "
            "heights that depart from the fit come with their standard deviations or residuals.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it and one line in its CRS. Heights are "
            "taken at equal distances; those far off, at a cover or a kerb crossed, count little. As many curves are "
            "used as the heights are worth by the Bayesian information criterion.</p>"
            "<p><b>Layers:</b> grades and curves along the line; the points where grades meet, at the height where "
            "they do, which is not on the ground; and the residuals, surface less fit.</p>"
            "<p><b>What can go wrong:</b> take about the distance of the survey's points for the spacing of heights: "
            "closer ones repeat the same points, and standard deviations come out too small. A short curve between "
            "points far apart cannot be told from a kink. This describes what is there; a design is the work of a "
            "licensed professional.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_line()
        self.add(
            number("SPACING", translate("hummock", "Distance between heights (m)"), 1.0, 0.01),
            translate("hummock", "About the distance of the survey's points along the line."),
        )
        self.add(
            number("FLOOR", translate("hummock", "Departure not worth a curve (m)"), 0.005, 0.0001),
            translate("hummock", "Larger gives fewer curves."),
        )
        self.add(
            number("MOST", translate("hummock", "Curves at most"), 12, 0, 60, WHOLE_NUMBER),
            translate("hummock", "0 fits one grade to the whole line."),
            advanced=True,
        )
        self.add_numbering()
        self.add_sheet(500.0, False)
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Grades and curves"), LINE_SOURCE),
            translate("hummock", "In the order of the line, with grade, K and their standard deviations."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "MEETINGS", translate("hummock", "Where grades meet"), POINT_SOURCE, optional=True
            ),
            translate("hummock", "A point for each curve, with the height where its grades would meet."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "RESIDUALS", translate("hummock", "Residuals"), POINT_SOURCE, optional=True, createByDefault=False
            ),
            translate("hummock", "Every height taken, and how far it is from the fit."),
        )
        self.add_page(
            "PDF",
            translate("hummock", "Sheets (PDF)"),
            translate("hummock", "The profile to scale with grades and K."),
            made=False,
        )
        self.add_numbers(
            ("CURVES", translate("hummock", "Number of vertical curves")),
            ("SPREAD", translate("hummock", "Standard deviation of the residuals, robust (m)")),
            ("WORST", translate("hummock", "Largest residual (m)")),
            ("SHEETS", translate("hummock", "Number of sheets")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        line = self.read_line(tin, parameters, context, feedback)
        profile = make_profile(line, [(self.surface_name(parameters, context), tin)])
        report(profile.messages, feedback)
        progress(0.4, "alignment")
        fit = fit_curves(
            profile.surfaces[0],
            self.parameterAsDouble(parameters, "SPACING", context),
            self.parameterAsInt(parameters, "MOST", context),
            self.parameterAsDouble(parameters, "FLOOR", context),
        )
        progress(0.8, "layers")
        results = self._layers(profile, fit, tin, parameters, context)
        path = self.parameterAsFileOutput(parameters, "PDF", context)
        if path:
            from ..core.report.profile_sheets import ProfileSheet, write_profile_sheets  # matplotlib, only when drawn

            sheet = ProfileSheet(**self.sheet_options(parameters, context))
            count = write_profile_sheets(profile, path, sheet, fit=fit, translate=translate_core)
            results.update(PDF=path, SHEETS=count)
        _tell(profile, fit, feedback)
        return {**results, "CURVES": len(fit.curves), "SPREAD": fit.spread, "WORST": fit.worst}

    def _layers(
        self, profile: Profile, fit: FittedProfile, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        line, crs, results = profile.line, qgis_crs(tin.crs), {}
        fields = curve_fields(line)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, plain(fields), LINE, crs)
        write_curves(line, fit, tin.crs, sink)
        dress_road(context, place, fields, VERTICAL_CURVES)
        results["OUTPUT"] = place
        fields = meeting_fields(line)
        sink, place = self.parameterAsSink(parameters, "MEETINGS", context, plain(fields), POINT_Z, crs)
        if sink is not None:
            write_meetings(line, fit, tin.crs, sink)
            dress_road(context, place, fields, MEETINGS)
            results["MEETINGS"] = place
        fields = residual_fields(line)
        sink, place = self.parameterAsSink(parameters, "RESIDUALS", context, plain(fields), POINT_Z, crs)
        if sink is not None:
            write_residuals(line, profile.surfaces[0], fit, tin.crs, sink)
            dress_road(context, place, fields, RESIDUALS)
            results["RESIDUALS"] = place
        return results


def _tell(profile: Profile, fit: FittedProfile, feedback: QgsProcessingFeedback) -> None:
    feedback.pushInfo(
        shown(
            translate(
                "hummock",
                "{curves} vertical curves; the surface departs from them by {spread:.1f} mm (robust standard "
                "deviation) "
                "and {worst:.1f} mm at most.",
            ),
            curves=len(fit.curves),
            spread=1000 * fit.spread,
            worst=1000 * fit.worst,
        )
    )
