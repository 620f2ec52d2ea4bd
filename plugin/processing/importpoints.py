"""Survey files, or a layer, to a layer of points in the CRS wanted; every line accounted for."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputString,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.intake import Intake
from ..core.linework.join import join_lines
from ..core.messages import worst_first
from ..core.points.decisions import apply_decisions, read_decisions
from ..core.points.pointset import PointSet, Status
from ..core.progress import part
from .algorithm import HummockAlgorithm, progress_of, report, say, tell
from .codeoptions import add_convention_parameters, read_convention
from .importoptions import add_format_parameters, add_georeference_parameters, add_value_parameters
from .importsources import (
    add_layer_of_points,
    add_more_files,
    add_survey_file,
    add_wanted_crs,
    decisions_file,
    take_in_chosen,
)
from .mergelayers import clash_fields, difference_fields, write_clashes, write_differences
from .parameters import chosen_code_table, code_table_file, code_table_help, qgis_crs, unit_choice
from .pointlayer import point_fields, reject_fields, write_points, write_rejects
from .styles import POINTS, dress_vector
from .versions import NO_GEOMETRY, POINT_SOURCE, POINT_Z, TABLE_SOURCE

translate = QCoreApplication.translate

#: The widget that shows the file and assigns its columns; by its path, so that qgis_process needs no window.
COLUMNS_WIDGET = __name__.rsplit(".", 2)[0] + ".gui.columns.ColumnsWrapper"


class ImportPoints(HummockAlgorithm):
    """``hummock:importpoints``"""

    NAME = "importpoints"
    ICON = "points.svg"
    GROUP_ID = "points"

    def title(self) -> str:
        return translate("hummock", "Import survey points")

    def group(self) -> str:
        return translate("hummock", "Points")

    def summary(self) -> str:
        return translate("hummock", "Reads a survey file into a point layer and accounts for every line of it.")

    def words(self) -> str:
        return translate("hummock", "survey,gnss,gps,rtk,rover,csv,text,coordinates,read,load")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Reads what a rover wrote, delimited text (comma, semicolon, tab, blanks or columns at fixed places; "
            "point or comma as decimal sign; with or without a header; eastings and northings, or latitudes and "
            "longitudes), a receiver log (NMEA 0183), or GPX, KML, GeoJSON, GeoPackage, Shapefile, XLSX and ODS, "
            "zipped or not, into a layer of points with heights. Several files of one site become one layer that keeps "
            "the source of each point. A layer of points that is loaded already can take the place of a file, alone or "
            "merged with files and other layers.</p>"
            "<p><b>Columns</b> are recognised from header words in many languages, from the values, and from the area "
            "in which the CRS may be used; units that a header says are obeyed, and numbers that stand for no value, "
            "such as -9999, are named and are no points. What stays open is asked, not guessed: “Preview” shows the "
            "first lines, the role of each column, the lines that would be rejected, and where the points would "
            "land.</p>"
            "<p>Points, rejected lines, comments and blank lines add up to the lines of the file; each rejected line "
            "is in the second output with its reason.</p>"
            "<p><b>Strays are put aside</b> as rejected points, with their lines and the likely cause where it can be "
            "told: coordinates swapped, zero or not finite, and points farther off than the walk could have gone, by "
            "the times or by the spacing of the points. The area of use and the transformation are worked out from the "
            "other points. A control point, a base or another part of the site stays; where nothing tells it from a "
            "stray, it is flagged as far off and no surface is drawn to it. A decision, or the status used in the "
            "layer, takes any point back.</p>"
            "<p><b>It assumes</b> that the coordinates are in the CRS wanted unless another one is given for the file; "
            "then they are transformed by one operation that is named with its accuracy. Degrees without a CRS are "
            "taken as WGS 84. Heights are taken as they are unless a geoid separation is given, or they are those of "
            "the antenna: then the pole height and the antenna offset bring them down to the ground, and the report "
            "says so.</p>"
            "<p><b>The status</b> of a point is used, flagged or rejected. Only rejected points stay out of the "
            "surface. You can change it in the layer; later steps read it there. Plan and height are read from the "
            "geometry, so the columns easting, northing and height only inform.</p>"
            "<p><b>What can go wrong:</b> easting and northing can be swapped, and a wrong unit makes a surface of the "
            "right form and the wrong size. Points outside the area of use of the CRS are reported with the likely "
            "cause; nothing is corrected without your word. A ballpark operation, or one that lacks its grid file, is "
            "refused until you accept it by its name.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self._add_file_parameters()
        add_georeference_parameters(self)
        self._add_unit_parameters()
        add_value_parameters(self)
        self._add_layer_parameters()
        self._add_decision_parameters()
        add_format_parameters(self)
        self._add_outputs()

    def _add_file_parameters(self) -> None:
        add_survey_file(
            self,
            translate(
                "hummock", "Delimited text or a receiver log, as the rover or its software wrote it. It is only read."
            ),
        )
        add_more_files(
            self,
            translate(
                "hummock",
                "Other days or rovers. All points are kept with their file; names that occur twice and same places "
                "with different heights are reported.",
            ),
        )
        add_wanted_crs(
            self,
            translate(
                "hummock",
                "A projected CRS, or a compound one with heights; usually the one that the rover was set to. The file "
                "does not say it.",
            ),
            optional=True,
        )
        columns = QgsProcessingParameterString(
            "COLUMNS", translate("hummock", "Columns (empty: as recognised)"), optional=True
        )
        columns.setMetadata({"widget_wrapper": {"class": COLUMNS_WIDGET}})
        self.add(
            columns,
            translate(
                "hummock",
                "In file order, such as name,easting,northing,height,code with - for a column to skip and +word to "
                "keep one as it is; or by header or number, such as easting=X,northing=Y,height=3. “Preview” fills it.",
            ),
        )

    def _add_unit_parameters(self) -> None:
        self.add(
            unit_choice(
                "UNIT",
                translate("hummock", "Unit of easting and northing"),
                None,
                True,
                of_files=True,
            ),
            translate(
                "hummock", "The unit in the file. Empty: as its header says or its numbers show, else that of the CRS."
            ),
        )
        self.add(
            unit_choice(
                "HEIGHT_UNIT",
                translate("hummock", "Unit of the heights, if another"),
                None,
                True,
                of_files=True,
            ),
            translate("hummock", "Only where heights are in another unit than easting and northing."),
            advanced=True,
        )

    def _add_layer_parameters(self) -> None:
        add_layer_of_points(self)
        self.add(
            QgsProcessingParameterMultipleLayers(
                "MORE_LAYERS",
                translate("hummock", "More layers of points of the same site"),
                POINT_SOURCE,
                optional=True,
            ),
            translate(
                "hummock",
                "They are merged with the files and the layer above. Heights are their Z, or their field height where "
                "the points have none; name and code are taken from fields called so.",
            ),
            advanced=True,
        )

    def _add_decision_parameters(self) -> None:
        self.add(
            decisions_file(),
            translate(
                "hummock",
                "A table of lines of the file to use, flag or reject: columns line, status and reason; of several "
                "files also source, the name of the file as in the field source of the points.",
            ),
            advanced=True,
        )
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)
        add_convention_parameters(self, "", arcs=False)

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Survey points"), POINT_SOURCE),
            translate("hummock", "Points with heights in the unit of the CRS, all columns of the file, and a status."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "REJECTS", translate("hummock", "Rejected lines"), TABLE_SOURCE, optional=True, createByDefault=True
            ),
            translate("hummock", "A table of the lines that are no points: line number, reason and text."),
        )
        for name, label, kind, help_text in (
            (
                "DIFFERENCES",
                translate("hummock", "Same places with different heights"),
                POINT_SOURCE,
                translate("hummock", "Of several files: pairs of points at one place whose heights differ."),
            ),
            (
                "NAMES_TWICE",
                translate("hummock", "Names in more than one file"),
                TABLE_SOURCE,
                translate(
                    "hummock", "Of several files: a table of the points that share a name. All of them are kept."
                ),
            ),
        ):
            self.add(
                QgsProcessingParameterFeatureSink(name, label, kind, optional=True, createByDefault=False), help_text
            )
        self.add_numbers(
            ("LINES", translate("hummock", "Lines in the file")),
            ("POINTS", translate("hummock", "Points")),
            ("REJECTED_LINES", translate("hummock", "Rejected lines")),
            ("POINTS_USED", translate("hummock", "Points that may shape the surface")),
            ("POINTS_OUTSIDE", translate("hummock", "Points outside the area of use of the CRS")),
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
        came = take_in_chosen(self, parameters, context, feedback, part(progress, 0.0, 0.5))
        read = came.survey
        feedback.pushInfo(tell(came.where))
        report((*came.aside, *worst_first((*read.messages, *came.messages))), feedback)
        for one in came.statements:
            feedback.pushInfo(tell(one))
        points = self._decide(read.points, parameters, context, feedback)
        crs = qgis_crs(points.crs)
        sink, destination = self.parameterAsSink(parameters, "OUTPUT", context, point_fields(points), POINT_Z, crs)
        write_points(points, sink, part(progress, 0.6, 1.0))
        dress_vector(context, destination, POINTS)
        results = {
            "OUTPUT": destination,
            "LINES": read.account.lines,
            "POINTS": len(points),
            "REJECTED_LINES": len(read.rejects),
            "POINTS_USED": int(points.used.sum()),
            "POINTS_OUTSIDE": sum(int(area.outside.sum()) for area in came.areas),
            "STATEMENTS": "\n".join(say(one) for one in came.statements),
            "WHERE": say(came.where.values["place"]),
        }
        fields = reject_fields(read.rejects)
        sink, destination = self.parameterAsSink(parameters, "REJECTS", context, fields, NO_GEOMETRY, crs)
        if sink is not None:
            write_rejects(read.rejects, say, sink)
            results["REJECTS"] = destination
        results.update(self._write_merged(came, parameters, context))
        self._tell(came, points, feedback)
        return results

    def _write_merged(self, came: Intake, parameters: Dict[str, Any], context: QgsProcessingContext) -> Dict[str, Any]:
        """What merging found, for as far as it was asked for; nothing for a single file."""
        crs, results = qgis_crs(came.survey.points.crs), {}
        sink, place = self.parameterAsSink(parameters, "DIFFERENCES", context, difference_fields(), POINT_Z, crs)
        if sink is not None:
            write_differences(came.merged, sink)
            results["DIFFERENCES"] = place
        sink, place = self.parameterAsSink(parameters, "NAMES_TWICE", context, clash_fields(), NO_GEOMETRY, crs)
        if sink is not None:
            write_clashes(came.merged, sink)
            results["NAMES_TWICE"] = place
        return results

    def _decide(
        self,
        points: PointSet,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> PointSet:
        """The points with the statuses that the user's decisions and the codes give them."""
        path = self.parameterAsFile(parameters, "DECISIONS", context)
        if path:
            points, messages = apply_decisions(points, read_decisions(path))
            report(messages, feedback)
        table = chosen_code_table(self, parameters, "CODES", context)
        joined = join_lines(points, table, read_convention(self, parameters, context))
        report(joined.messages, feedback)
        return joined.points

    def _tell(self, came: Intake, points: PointSet, feedback: QgsProcessingFeedback) -> None:
        read = came.survey
        statuses: List[int] = [int((points.status == status).sum()) for status in Status]
        feedback.pushInfo(
            translate(
                "hummock",
                "{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks, header and "
                "other sentences of a log.",
            ).format(
                lines=read.account.lines,
                points=len(points),
                rejected=len(read.rejects),
                others=read.account.lines - len(points) - len(read.rejects),
            )
        )
        feedback.pushInfo(
            translate("hummock", "Points used: {used}, flagged: {flagged}, rejected: {rejected}.").format(
                used=statuses[0], flagged=statuses[1], rejected=statuses[2]
            )
        )
