"""A survey in local or assumed coordinates onto control points, with residuals and the point that does not fit."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

import numpy as np
from qgis.core import (
    QgsGeometry,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputString,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs_doubt import doubts
from ..core.georeference.intake import WHERE
from ..core.georeference.position import place_said
from ..core.georeference.site import ControlOptions, Fitted, fit_to_control
from ..core.messages import message
from ..core.progress import Progress, part
from ..core.units import LengthUnit, heights_to_crs_units, to_crs_units
from .algorithm import HummockAlgorithm, progress_of, report, say, tell
from .controlsource import HEIGHT_FITS, add_control_parameters, chosen_control
from .parameters import (
    chosen_source,
    chosen_unit,
    core_crs,
    number,
    optional_number,
    qgis_crs,
    unit_choice,
)
from .pointlayer import point_fields, read_points_layer, write_points
from .pointsource import add_field_parameters, add_layer_parameter, chosen_columns
from .projectmarks import layers_of, project_landmarks
from .sinks import add_feature, fields_of
from .styles import POINTS, dress_vector
from .versions import POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate

#: The table of residuals; millimetres as the core's statements.
RESIDUAL_FIELDS = (
    ("name", "text"),
    ("used", "truth"),
    ("does_not_fit", "truth"),
    ("surveyed", "whole"),
    ("east_mm", "real"),
    ("north_mm", "real"),
    ("plan_mm", "real"),
    ("height_mm", "real"),
    ("redundancy_east", "real"),
    ("redundancy_north", "real"),
    ("redundancy_height", "real"),
    ("normalised_east", "real"),
    ("normalised_north", "real"),
    ("normalised_height", "real"),
)


class FitControl(HummockAlgorithm):
    """``hummock:fitcontrol``"""

    NAME = "fitcontrol"
    ICON = "fitcontrol.svg"
    GROUP_ID = "points"

    def title(self) -> str:
        return translate("hummock", "Fit a survey to control points")

    def group(self) -> str:
        return translate("hummock", "Points")

    def summary(self) -> str:
        return translate("hummock", "Turns, scales and shifts a local survey onto control points by least squares.")

    def words(self) -> str:
        return translate(
            "hummock",
            "control,helmert,similarity,transformation,local,site,calibration,residuals,least squares,outlier",
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Brings a survey in local or assumed coordinates into the CRS of known control points: in plan by a "
            "turn, a scale and two shifts (four parameters), in height by a shift or a tilted plane; or in space by "
            "seven parameters. The fit is by least squares.</p>"
            "<p><b>It assumes</b> that the points of the survey carry the names of the control points that they were "
            "measured at, written alike. The coordinates of the survey layer are taken as they are in the unit you "
            "give, whatever CRS the layer says. Several measurements of one control point are averaged.</p>"
            "<p><b>The residuals</b> are fitted minus control, in millimetres. Redundancy numbers say how far an error "
            "in a point would show in its residual (0: not at all). A point that does not fit is named by a "
            "statistical test; fit again without it and see whether the rest agrees.</p>"
            "<p><b>The fit is judged</b> before it is used: its scale against that of the projection, its residuals, "
            "and whether a mirrored survey, exchanged names or other units fit better. One that does not is refused "
            "with the reading that does, and where it puts the site; nothing is read otherwise without your word.</p>"
            "<p><b>What can go wrong:</b> two points in plan, or three in height with a plane, fit exactly and check "
            "nothing; with one point more an error shows but not whose it is. Control points on one line do not hold a "
            "plane, and do not tell a mirrored survey. A scale a little off means ground distances against grid "
            "coordinates.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self._add_survey_parameters()
        add_control_parameters(self)
        self._add_crs_parameters()
        self._add_fit_parameters()
        self._add_outputs()

    def _add_survey_parameters(self) -> None:
        add_layer_parameter(
            self,
            "INPUT",
            translate("hummock", "Survey points in local coordinates"),
            translate("hummock", "Such as “Import survey points” makes them without a CRS."),
            optional=False,
        )
        self.add(
            unit_choice("UNIT", translate("hummock", "Unit of the survey's coordinates")),
            translate("hummock", "Of easting, northing and height as they stand in the layer."),
        )
        add_field_parameters(self, "INPUT")

    def _add_crs_parameters(self) -> None:
        self.add(
            QgsProcessingParameterCrs("CRS", translate("hummock", "CRS of the control points"), optional=True),
            translate("hummock", "A projected CRS, which the fitted points get. Empty: that of the control layer."),
        )
        self.add(
            unit_choice(
                "CONTROL_UNIT", translate("hummock", "Unit of the control file (empty: that of the CRS)"), None, True
            ),
            translate("hummock", "Of its easting, northing and height."),
            advanced=True,
        )

    def _add_fit_parameters(self) -> None:
        fits = [
            translate("hummock", "four parameters in plan, heights by themselves"),
            translate("hummock", "seven parameters in space"),
        ]
        self.add(
            QgsProcessingParameterEnum(
                "FIT", translate("hummock", "How the survey is fitted to control"), fits, defaultValue=0
            ),
            translate("hummock", "Seven parameters also tilt the survey; level instruments need four."),
        )
        heights = [
            translate("hummock", "shifted"),
            translate("hummock", "shifted and tilted (a plane)"),
            translate("hummock", "kept as they are"),
        ]
        self.add(
            QgsProcessingParameterEnum(
                "HEIGHTS", translate("hummock", "What the fit does to heights"), heights, defaultValue=0
            ),
            translate("hummock", "Of a fit with four parameters. A plane takes up a slope of the geoid over the site."),
        )
        self.add(
            QgsProcessingParameterString(
                "LEAVE_OUT", translate("hummock", "Control points left out of the fit"), optional=True
            ),
            translate("hummock", "Names parted by commas. Their residuals are shown all the same."),
        )
        self.add(
            QgsProcessingParameterString("READ_AS", translate("hummock", "Read survey and control as"), optional=True),
            translate(
                "hummock",
                "Only where the fit is refused: what the refusal names, such as mirrored, names:A=B,B=A or survey:ft; "
                "several are joined by +. as-read takes a fit that does not fit as it is.",
            ),
        )
        for name, label in (
            ("SIGMA_PLAN", translate("hummock", "Standard deviation of a plan coordinate (m)")),
            ("SIGMA_HEIGHT", translate("hummock", "Standard deviation of a height (m)")),
        ):
            self.add(
                number(name, label, least=0.0),
                translate(
                    "hummock",
                    "Of survey and control together. Empty: estimated from the residuals, which tells fewer errors.",
                ),
                advanced=True,
            )

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Fitted points"), POINT_SOURCE),
            translate("hummock", "All points of the survey in the CRS of the control."),
        )
        self.add(
            QgsProcessingParameterFeatureSink("RESIDUALS", translate("hummock", "Residuals at control"), POINT_SOURCE),
            translate("hummock", "One row for each control point that was surveyed, at its known place."),
        )
        self.add_numbers(
            ("SCALE", translate("hummock", "Scale")),
            ("TURN", translate("hummock", "Turn (degrees, counter-clockwise)")),
        )
        for name, label in (
            ("DOES_NOT_FIT", translate("hummock", "Control points that do not fit")),
            ("STATEMENTS", translate("hummock", "What was done to coordinates")),
            ("WHERE", translate("hummock", "Where the survey lies")),
        ):
            self.addOutput(QgsProcessingOutputString(name, label))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        source = chosen_source(self, parameters, "INPUT", context)
        unit = chosen_unit(self, parameters, "UNIT", context) or LengthUnit.METRE
        points = read_points_layer(
            source, chosen_columns(self, parameters, context, source), source.sourceName() or "INPUT", feedback,
            part(progress, 0.0, 0.4), local_unit=unit,
        )  # fmt: skip
        given = self.parameterAsCrs(parameters, "CRS", context)
        path = self.parameterAsFile(parameters, "CONTROL", context)
        wanted = core_crs(given, path) if path or given.isValid() else None
        control_unit = chosen_unit(self, parameters, "CONTROL_UNIT", context)
        reading = self.parameterAsString(parameters, "READ_AS", context).strip()
        control, crs = chosen_control(self, parameters, context, feedback, wanted, control_unit, reading)
        marks = project_landmarks(context, layers_of(self, parameters, context, "INPUT", "CONTROL_LAYER"))
        fitted = fit_to_control(points, self._options(parameters, context), crs, control, (unit, unit), marks)
        where = place_said(crs, fitted.points.easting, fitted.points.northing, marks)
        feedback.pushInfo(tell(message(WHERE, place=where)))
        report((*fitted.doubts, *doubts(crs, fitted.points.easting, fitted.points.northing, marks)), feedback)
        for one in fitted.record.statements:
            (feedback.pushWarning if fitted.fit.suspects else feedback.pushInfo)(tell(one))
        results = self._write(fitted, parameters, context, part(progress, 0.5, 1.0))
        results["DOES_NOT_FIT"] = ", ".join(fitted.fit.suspects)
        results["STATEMENTS"] = "\n".join(say(one) for one in fitted.record.statements)
        results["WHERE"] = say(where)
        return results

    def _options(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> ControlOptions:
        names = self.parameterAsString(parameters, "LEAVE_OUT", context).split(",")
        return ControlOptions(
            seven=self.parameterAsEnum(parameters, "FIT", context) == 1,
            heights=HEIGHT_FITS[self.parameterAsEnum(parameters, "HEIGHTS", context)],
            sigma_plan=optional_number(self, parameters, "SIGMA_PLAN", context),
            sigma_height=optional_number(self, parameters, "SIGMA_HEIGHT", context),
            leave_out=tuple(name.strip() for name in names if name.strip()),
            reading=self.parameterAsString(parameters, "READ_AS", context).strip(),
        )

    def _write(
        self, fitted: Fitted, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress
    ) -> Dict[str, Any]:
        points, crs = fitted.points, qgis_crs(fitted.points.crs)
        sink, destination = self.parameterAsSink(parameters, "OUTPUT", context, point_fields(points), POINT_Z, crs)
        write_points(points, sink, progress)
        dress_vector(context, destination, POINTS)
        results = {"OUTPUT": destination, "SCALE": fitted.fit.scale}
        if fitted.fit.plan is not None:
            results["TURN"] = fitted.fit.plan.turn_degrees
        fields = fields_of(RESIDUAL_FIELDS)
        sink, destination = self.parameterAsSink(parameters, "RESIDUALS", context, fields, POINT_Z, crs)
        write_residuals(fitted, sink)
        results["RESIDUALS"] = destination
        return results


def write_residuals(fitted: Fitted, sink: Any) -> None:
    """A row for each control point of the fit, in the order of the control."""
    fit, match, crs = fitted.fit, fitted.match, fitted.points.crs
    east, north = (to_crs_units(match.control[:, i], crs) for i in (0, 1))
    up = heights_to_crs_units(match.control[:, 2], crs)
    millimetres = 1000.0 * fit.residuals
    plan = np.hypot(millimetres[:, 0], millimetres[:, 1])
    for i, name in enumerate(match.names):
        row: List[Any] = [name, bool(fit.used[i]), name in fit.suspects, int(match.times[i])]
        row += _known([millimetres[i, 0], millimetres[i, 1], plan[i], millimetres[i, 2]])
        row += _known([*fit.redundancy[i], *fit.normalised[i]])
        height = float(up[i]) if np.isfinite(up[i]) else 0.0
        add_feature(sink, QgsGeometry(QgsPoint(float(east[i]), float(north[i]), height)), row)


def _known(values: Any) -> List[Optional[float]]:
    return [float(value) if np.isfinite(value) else None for value in values]
