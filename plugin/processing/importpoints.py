"""Survey files, or a layer, to a layer of points in the CRS wanted; every line accounted for."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingOutputString,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFile,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.intake import Intake, take_in, take_in_read
from ..core.linework.join import join_lines
from ..core.points.decisions import apply_decisions, read_decisions
from ..core.points.pointset import PointSet, Status
from ..core.progress import Progress, part
from .algorithm import HummockAlgorithm, progress_of, report, say
from .importoptions import add_format_parameters, add_georeference_parameters, chosen_options
from .parameters import chosen_code_table, chosen_unit, code_table_file, code_table_help, qgis_crs, unit_choice
from .pointlayer import point_fields, read_survey_layer, reject_fields, write_points, write_rejects
from .pointsource import add_field_parameters, chosen_columns
from .styles import POINTS, dress_vector
from .versions import FILE_SOURCE, NO_GEOMETRY, ONE_FILE, POINT_SOURCE, POINT_Z, TABLE_SOURCE

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
            "<p>Reads delimited text (comma, semicolon, tab or blanks; point or comma as decimal sign; with or without "
            "a header) into a layer of points with heights. Points, rejected lines, comments and blank lines add up "
            "to the lines of the file; each rejected line is in the second output with its reason.</p>"
            "<p><b>It assumes</b> that the coordinates are easting, northing and height in the CRS that you give; "
            "nothing is reprojected. A CRS in degrees is refused. Heights are taken as they are: no geoid is applied."
            "</p>"
            "<p><b>The status</b> of a point is used, flagged or rejected. Only rejected points stay out of the "
            "surface. You can change it in the layer; later steps read it there. Plan and height are read from the "
            "geometry, so the columns easting, northing and height only inform.</p>"
            "<p><b>What can go wrong:</b> without a header the columns have to be named, and easting and northing can "
            "be swapped: look at the map. A wrong unit makes a surface of the right form and the wrong size. "
            "Where the file leaves a doubt about separator or decimal sign, choose it.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self._add_file_parameters()
        self._add_format_parameters()
        self._add_outputs()

    def _add_file_parameters(self) -> None:
        self.add(
            QgsProcessingParameterFile(
                "INPUT",
                translate("hummock", "Survey file"),
                behavior=ONE_FILE,
                fileFilter=translate("hummock", "Text files (*.csv *.txt *.asc *.xyz *.pts *.dat);;All files (*)"),
            ),
            translate("hummock", "Delimited text as the rover or its software wrote it. The file is only read."),
        )
        self.add(
            QgsProcessingParameterCrs("CRS", translate("hummock", "CRS of the coordinates")),
            translate("hummock", "A projected CRS; the one that the rover was set to. The file does not say it."),
        )
        self.add(
            QgsProcessingParameterString(
                "COLUMNS", translate("hummock", "Columns (empty: as the header names them)"), optional=True
            ),
            translate(
                "hummock",
                "In file order, such as name,easting,northing,height,code with - for a column to skip and +word to "
                "keep one as it is; or by header, such as easting=X,northing=Y,height=Z.",
            ),
        )
        self.add(
            unit_choice(
                "UNIT", translate("hummock", "Unit of easting and northing (empty: that of the CRS)"), None, True
            ),
            translate("hummock", "The unit in the file, where it is not that of the CRS."),
        )
        self.add(
            unit_choice(
                "HEIGHT_UNIT",
                translate("hummock", "Unit of the heights (empty: that of the CRS, or as above)"),
                None,
                True,
            ),
            translate("hummock", "Only where heights are in another unit than easting and northing."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFile(
                "DECISIONS",
                translate("hummock", "Decisions on points (CSV)"),
                behavior=ONE_FILE,
                optional=True,
                fileFilter=translate("hummock", "Tables (*.csv *.txt);;All files (*)"),
            ),
            translate("hummock", "A table of points or lines of the file to use, flag or reject, with reasons."),
            advanced=True,
        )
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)

    def _add_format_parameters(self) -> None:
        found = translate("hummock", "found from the file")
        separators = [
            found,
            translate("hummock", "comma"),
            translate("hummock", "semicolon"),
            translate("hummock", "tab"),
            translate("hummock", "blanks"),
        ]
        decimals = [found, translate("hummock", "point"), translate("hummock", "comma")]
        headers = [found, translate("hummock", "yes"), translate("hummock", "no")]
        for name, label, choices, help_text in (
            (
                "DELIMITER",
                translate("hummock", "Separator"),
                separators,
                translate("hummock", "What parts the columns."),
            ),
            ("DECIMAL", translate("hummock", "Decimal sign"), decimals, translate("hummock", "As in 1.5 or 1,5.")),
            (
                "HEADER",
                translate("hummock", "First line names the columns"),
                headers,
                translate("hummock", "Whether the first line that is no comment is a header."),
            ),
        ):
            self.add(QgsProcessingParameterEnum(name, label, choices, defaultValue=0), help_text, advanced=True)
        self.add(
            QgsProcessingParameterString(
                "ENCODING", translate("hummock", "Text encoding (empty: found from the file)"), optional=True
            ),
            translate("hummock", "Such as utf-8 or latin-1."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString(
                "COMMENT", translate("hummock", "Comment lines start with"), defaultValue="#", optional=True
            ),
            translate("hummock", "Such lines are counted, not read."),
            advanced=True,
        )

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
        for name, label in (
            ("LINES", translate("hummock", "Lines in the file")),
            ("POINTS", translate("hummock", "Points")),
            ("REJECTED_LINES", translate("hummock", "Rejected lines")),
            ("POINTS_USED", translate("hummock", "Points that may shape the surface")),
        ):
            self.addOutput(QgsProcessingOutputNumber(name, label))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        read = self._read(parameters, context, part(progress, 0.0, 0.5))
        report(read.messages, feedback)
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
        }
        sink, destination = self.parameterAsSink(parameters, "REJECTS", context, reject_fields(), NO_GEOMETRY, crs)
        if sink is not None:
            write_rejects(read.rejects, say, sink)
            results["REJECTS"] = destination
        self._tell(read, points, feedback)
        return results

    def _read(self, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress) -> PointFile:
        columns = self.parameterAsString(parameters, "COLUMNS", context).strip()
        path = self.parameterAsFile(parameters, "INPUT", context)
        return read_points(
            path,
            columns=parse_columns(columns) if columns else None,
            delimiter=DELIMITERS[self.parameterAsEnum(parameters, "DELIMITER", context)],
            decimal=DECIMALS[self.parameterAsEnum(parameters, "DECIMAL", context)],
            encoding=self.parameterAsString(parameters, "ENCODING", context).strip() or None,
            unit=chosen_unit(self, parameters, "UNIT", context),
            height_unit=chosen_unit(self, parameters, "HEIGHT_UNIT", context),
            crs=core_crs(self.parameterAsCrs(parameters, "CRS", context), path),
            comment=self.parameterAsString(parameters, "COMMENT", context),
            header=HEADERS[self.parameterAsEnum(parameters, "HEADER", context)],
            progress=progress,
        )

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
        joined = join_lines(points, chosen_code_table(self, parameters, "CODES", context))
        report(joined.messages, feedback)
        return joined.points

    def _tell(self, read: PointFile, points: PointSet, feedback: QgsProcessingFeedback) -> None:
        statuses: List[int] = [int((points.status == status).sum()) for status in Status]
        feedback.pushInfo(
            translate(
                "hummock",
                "{lines} lines: {points} points, {rejected} rejected lines, {others} comments, blanks and header.",
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
