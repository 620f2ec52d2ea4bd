"""A survey whose base was in a wrong place, shifted as a whole."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputString,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.base_shift import Shifted, correct_base, parse_base, shift_to_control
from ..core.georeference.crs_doubt import doubts
from ..core.georeference.fit_readings import AS_READ
from ..core.georeference.intake import WHERE
from ..core.georeference.position import place_said
from ..core.messages import message
from ..core.points.pointset import PointSet
from ..core.progress import part
from .algorithm import HummockAlgorithm, progress_of, report, say, tell
from .controlsource import add_control_parameters, chosen_control
from .parameters import chosen_source, qgis_crs
from .pointlayer import point_fields, read_points_layer, write_points
from .pointsource import add_field_parameters, add_layer_parameter, chosen_columns
from .projectmarks import layers_of, project_landmarks
from .styles import POINTS, dress_vector
from .versions import POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate


class CorrectBase(HummockAlgorithm):
    """``hummock:correctbase``"""

    NAME = "correctbase"
    ICON = "correctbase.svg"
    GROUP_ID = "points"

    def title(self) -> str:
        return translate("hummock", "Correct the base of a survey")

    def group(self) -> str:
        return translate("hummock", "Points")

    def summary(self) -> str:
        return translate("hummock", "Shifts a survey to the base's position worked out later, or to a known point.")

    def words(self) -> str:
        return translate("hummock", "base,reference station,shift,offset,known point,localization,autonomous,ppp")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>A rover measures from its base: a base set up at a guessed position moves the whole survey by the same "
            "vector. Give the position that the base was used with and the one worked out afterwards, or known points "
            "that were surveyed too; one will do. Every point is moved by that vector in space.</p>"
            "<p><b>It assumes</b> that all points were measured from this one base, and that both positions are in the "
            "CRS and datum of the survey. Positions are written easting,northing,height in the unit of the CRS, or in "
            "degrees with letters, as 51.4512345N,9.0012345E,146.25; both with a height or both without.</p>"
            "<p><b>What can go wrong:</b> a shift tells no rotation, scale or tilt, and an error of the position it "
            "rests on is in every point. Several known points that do not agree on one shift are refused, and so is "
            "a shift of more than 100 m, until you take it on your word. A base worked out in another datum, such as a "
            "worldwide one for a continental CRS, puts decimetres into all points.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        add_layer_parameter(
            self,
            "INPUT",
            translate("hummock", "Survey points"),
            translate("hummock", "In the CRS that they shall keep."),
            optional=False,
        )
        add_field_parameters(self, "INPUT")
        for name, label in (
            ("BASE_WAS", translate("hummock", "Position of the base as it was used")),
            ("BASE_IS", translate("hummock", "Position of the base as it is")),
        ):
            self.add(
                QgsProcessingParameterString(name, label, optional=True),
                translate("hummock", "Such as 500012.345,5700123.456,146.25 or 51.4512345N,9.0012345E,146.25."),
            )
        add_control_parameters(self)
        self.add(
            QgsProcessingParameterString(
                "LEAVE_OUT", translate("hummock", "Control points left out of the fit"), optional=True
            ),
            translate("hummock", "Names parted by commas."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString("READ_AS", translate("hummock", "Read survey and control as"), optional=True),
            translate("hummock", "as-read takes a shift that was refused on your word."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Points shifted"), POINT_SOURCE),
            translate("hummock", "All points of the survey, with their attributes."),
        )
        self.add_numbers(
            ("EAST", translate("hummock", "Shift to the east (m)")),
            ("NORTH", translate("hummock", "Shift to the north (m)")),
            ("UP", translate("hummock", "Shift upwards (m)")),
        )
        for name, label in (
            ("STATEMENTS", translate("hummock", "What was done to coordinates")),
            ("WHERE", translate("hummock", "Where the survey lies")),
        ):
            self.addOutput(QgsProcessingOutputString(name, label))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        source = chosen_source(self, parameters, "INPUT", context)
        columns = chosen_columns(self, parameters, context, source)
        points = read_points_layer(source, columns, source.sourceName() or "INPUT", feedback, part(progress, 0.0, 0.4))
        shifted = self._shift(points, parameters, context, feedback)
        moved = shifted.points
        marks = project_landmarks(context, layers_of(self, parameters, context, "INPUT"))
        where = place_said(moved.crs, moved.easting, moved.northing, marks)
        feedback.pushInfo(tell(message(WHERE, place=where)))
        report(doubts(moved.crs, moved.easting, moved.northing, marks), feedback)
        for one in shifted.record.statements:
            feedback.pushInfo(tell(one))
        crs = qgis_crs(moved.crs)
        sink, destination = self.parameterAsSink(parameters, "OUTPUT", context, point_fields(moved), POINT_Z, crs)
        write_points(moved, sink, part(progress, 0.5, 1.0))
        dress_vector(context, destination, POINTS)
        east, north, up = (float(value) for value in shifted.shift.local)
        return {
            "OUTPUT": destination,
            "EAST": east,
            "NORTH": north,
            "UP": up,
            "STATEMENTS": "\n".join(say(one) for one in shifted.record.statements),
            "WHERE": say(where),
        }

    def _shift(
        self,
        points: PointSet,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> Shifted:
        was, now = (self.parameterAsString(parameters, name, context) for name in ("BASE_WAS", "BASE_IS"))
        sure = self.parameterAsString(parameters, "READ_AS", context).strip() == AS_READ
        base = parse_base(was, now, points.crs, sure)
        given = any(parameters.get(name) for name in ("CONTROL", "CONTROL_LAYER"))
        if (base is None) != given:
            raise QgsProcessingException(
                translate("hummock", "Give the two positions of the base, or known points in their place (not both).")
            )
        if base is not None:
            return correct_base(points, base)
        control, _ = chosen_control(self, parameters, context, feedback, points.crs)
        names = self.parameterAsString(parameters, "LEAVE_OUT", context).split(",")
        return shift_to_control(points, control, tuple(name.strip() for name in names if name.strip()), sure)
