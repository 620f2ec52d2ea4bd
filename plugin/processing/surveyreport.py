"""The report of the whole job: from the survey file to every product, told in one document."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path
from typing import Any, Dict, List, Optional

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsJsonExporter,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputFile,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterMeshLayer,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
    QgsProcessingUtils,
    QgsSettings,
)
from qgis.PyQt.QtCore import QCoreApplication, QLocale

from ..core.arguments.parser import make_parser
from ..core.arguments.settings import job_settings
from ..core.contours.geojson import crs_member
from ..core.job.run import run_job
from ..core.job.settings import JobSettings
from ..core.points.decisions import Decisions
from ..core.points.given import parse_answers
from ..core.points.pointset import Status
from ..core.points.table import write_points
from ..core.progress import part, silent
from ..core.quality.overrides import write_decisions
from ..core.report.results import JobResult
from ..core.report.summary import summary
from .algorithm import HummockAlgorithm, progress_of
from .checksource import checks_file
from .contours import add_interval
from .drawnsource import request_in
from .flaggedoption import KEEP_FLAGGED, add_flagged_choice
from .importoptions import chosen_files
from .importsources import add_layer_of_points, add_more_files, add_survey_file, add_wanted_crs, decisions_file
from .pages import write_pages
from .parameters import (
    chosen_unit,
    code_table_file,
    code_table_help,
    core_crs,
    crs_text,
    given_file,
    number,
    optional_number,
    optional_source,
    tables,
    unit_choice,
)
from .pointlayer import read_points_layer
from .pointsource import chosen_columns
from .tiltoption import add_tilt_choice, tilt_compensated
from .versions import FILE_SOURCE, LINE_SOURCE, POINT_SOURCE, POLYGON_SOURCE

translate = QCoreApplication.translate


class SurveyReport(HummockAlgorithm):
    """``hummock:surveyreport``"""

    NAME = "surveyreport"
    ICON = "surveyreport.svg"
    GROUP_ID = "handover"

    def title(self) -> str:
        return translate("hummock", "Report of the survey")

    def group(self) -> str:
        return translate("hummock", "Hand-over")

    def summary(self) -> str:
        return translate("hummock", "Does the whole job from the survey file and tells it in HTML and PDF.")

    def words(self) -> str:
        return translate(
            "hummock", "report,documentation,pdf,html,sha-256,checksums,hand over,accuracy,rejects,whole job"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Reads the survey file, checks it, builds the surface and its contours, and writes one report of it "
            "all: what came in and what was rejected and why, coordinates, how far the survey can be trusted, the "
            "surface, the contours, water, volumes, a road’s grades and a pad’s earthwork where you ask for them, and "
            "the files handed over, each with its SHA-256. HTML and PDF say the same.</p>"
            "<p>It starts from the <b>file</b>, so that each number can be traced to a line of it. Decisions that you "
            "took in QGIS come in by their file: “Survey desk” keeps it for you. A layer in place of the file comes "
            "with the statuses that its points have.</p>"
            "<p><b>More files</b>, such as a plan or a drawing, are listed with the others and their SHA-256.</p>"
            "<p><b>It assumes</b> what “Import survey points”, “Check the survey” and “Build the surface” assume, with "
            "their usual options. Where the file needs more to be read, say the columns and units here.</p>"
            "<p><b>What can go wrong:</b> the report tells of this run, not of layers you changed by hand since. It "
            "is no certificate: licensed practice and local codes decide what a survey may be used for.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self._add_survey_parameters()
        self._add_product_parameters()
        self.add(
            QgsProcessingParameterFolderDestination("FOLDER", translate("hummock", "Folder of the products")),
            translate("hummock", "Report, surface, contours and tables; files of these names there are replaced."),
        )
        self.addOutput(QgsProcessingOutputFile("HTML", translate("hummock", "Report (HTML)")))
        self.addOutput(QgsProcessingOutputFile("PDF", translate("hummock", "Report (PDF)")))
        self.add_numbers(
            ("POINTS", translate("hummock", "Points")),
            ("REJECTS", translate("hummock", "Lines rejected")),
            ("FILES", translate("hummock", "Files written")),
        )

    def _add_survey_parameters(self) -> None:
        add_survey_file(self, translate("hummock", "Delimited text or a receiver log. It is only read."))
        add_layer_of_points(self)
        add_more_files(self, translate("hummock", "Other days or rovers."))
        add_wanted_crs(self, translate("hummock", "A projected CRS, or a compound one with heights."))
        self.add(
            QgsProcessingParameterString(
                "COLUMNS", translate("hummock", "Columns (empty: as recognised)"), optional=True
            ),
            translate("hummock", "As in “Import survey points”."),
            advanced=True,
        )
        self.add(
            unit_choice("FILE_UNIT", translate("hummock", "Unit of easting and northing"), None, True, of_files=True),
            translate("hummock", "The unit in the file. Empty: as its header says, else that of the CRS."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString(
                "ANSWERS", translate("hummock", "Answers to what the file leaves open"), optional=True
            ),
            translate(
                "hummock",
                "As the refusal names them, such as --pole-height 2.000 for a receiver log, or --no-value none.",
            ),
            advanced=True,
        )
        self.add(decisions_file(), translate("hummock", "Points to use, flag or reject, by their line."))
        self.add(checks_file(), translate("hummock", "Independent check points in the CRS of the points."))
        self.add(
            QgsProcessingParameterBoolean("CHECK", translate("hummock", "Check the points automatically"), True),
            translate("hummock", "As “Check the survey” does."),
        )
        add_tilt_choice(self)
        add_flagged_choice(self)
        self.add(
            QgsProcessingParameterBoolean("FIND_LINES", translate("hummock", "Find lines of the ground"), True),
            translate("hummock", "As “Find lines of the ground” does; those with strong evidence are breaklines."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "FOUND_LINES", translate("hummock", "Lines with your decisions"), [LINE_SOURCE], optional=True
            ),
            translate("hummock", "The output of “Find lines of the ground”, with what you decided in it."),
        )
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)

    def _add_product_parameters(self) -> None:
        add_interval(self, advanced=True)
        self.add(
            number("MAX_RIM_EDGE", translate("hummock", "Longest edge at the rim (m; empty: no limit)"), None, 0.0),
            translate("hummock", "Triangles with a longer edge are taken off the rim of the surface."),
            advanced=True,
        )
        self._add_questions()
        self.add(
            QgsProcessingParameterMultipleLayers(
                "ALSO", translate("hummock", "More files that are handed over"), FILE_SOURCE, optional=True
            ),
            translate("hummock", "Such as a plan; the report lists them with their SHA-256."),
        )
        self.add(
            QgsProcessingParameterBoolean("PAPER", translate("hummock", "Also as PDF"), True),
            translate("hummock", "report.pdf beside report.html."),
        )

    def _add_questions(self) -> None:
        """What else the report shall tell of the surface."""
        self.add(
            QgsProcessingParameterBoolean("WATER", translate("hummock", "Tell where the water runs"), False),
            translate("hummock", "Paths, ponds and catchments."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "INLETS", translate("hummock", "Inlets"), [POINT_SOURCE], optional=True
            ),
            translate("hummock", "Gullies and the like, where water leaves the surface."),
        )
        for name, label, help_text in (
            (
                "AGAINST",
                translate("hummock", "Design surface (2DM mesh)"),
                translate("hummock", "Cut and fill from the survey to it."),
            ),
            (
                "SINCE",
                translate("hummock", "Earlier surface (2DM mesh)"),
                translate("hummock", "Cut and fill from it to the survey. Give a design or an earlier surface."),
            ),
        ):
            self.add(QgsProcessingParameterMeshLayer(name, label, optional=True), help_text)
        self.add(
            QgsProcessingParameterFeatureSource(
                "REGIONS", translate("hummock", "Regions of the volumes"), [POLYGON_SOURCE], optional=True
            ),
            translate("hummock", "Parcels or phases whose volumes are told apart; the field name names them."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "ROAD", translate("hummock", "Line of a road"), [LINE_SOURCE], optional=True
            ),
            translate("hummock", "Profile, sections and grades along it, checked against limits."),
        )
        self.add(
            given_file(
                "RULES",
                translate("hummock", "Limits of the road (CSV; empty: those that come with Hummock)"),
                tables(),
            ),
            translate("hummock", "As in the check of a road against limits."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "PAD", translate("hummock", "Pads to be graded"), [POLYGON_SOURCE], optional=True
            ),
            translate("hummock", "Cut and fill of level pads, with slopes to the ground."),
        )
        self.add(
            QgsProcessingParameterString(
                "PAD_LEVEL", translate("hummock", "Height of the pads (a number, or balance)"), optional=True
            ),
            translate("hummock", "balance: the height where cut makes up for fill."),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        folder = Path(self.parameterAsString(parameters, "FOLDER", context))
        language = language_code()
        result = run_job(
            self._settings(folder, parameters, context, feedback),
            part(progress, 0.0, 0.85),
            lambda text: translate("core", text),
            language,
        )
        html = folder / "report.html"
        found: Dict[str, Any] = {"FOLDER": str(folder), "HTML": str(html), **_counts(result)}
        if self.parameterAsBool(parameters, "PAPER", context):
            paper = folder / "report.pdf"
            title = translate("hummock", "Report of the survey {file}").format(
                file=Path(result.survey.points.source).name
            )
            pages = write_pages(html.read_text(encoding="utf-8"), str(paper), title, part(progress, 0.85, 1.0))
            feedback.pushInfo(translate("hummock", "report.pdf: {pages} pages.").format(pages=pages))
            found["PDF"] = str(paper)
        for line in summary(result, folder):
            feedback.pushInfo(line)
        return found

    def _settings(
        self,
        folder: Path,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> JobSettings:
        """What the parameters ask of the main job, in the words of its command line."""
        crs = self.parameterAsCrs(parameters, "CRS", context)
        words = self._survey(parameters, context, feedback)
        words += [f"--out={folder}", f"--crs={crs_text(crs)}"]
        words += [f"--interval={self.parameterAsDouble(parameters, 'INTERVAL', context):.12g}"]
        words += [f"--index-every={self.parameterAsInt(parameters, 'INDEX_EVERY', context)}", "--smooth=0.25"]
        words += ["--calm=0.015"]
        for option, name in (("interval-unit", "UNIT"), ("unit", "FILE_UNIT")):
            unit = chosen_unit(self, parameters, name, context)
            words += [] if unit is None else [f"--{option}={unit.value}"]
        words += parse_answers(self.parameterAsString(parameters, "ANSWERS", context))
        for option, name in (("decisions", "DECISIONS"), ("check-points", "CHECKS_FILE"), ("codes", "CODES"),
                             ("columns", "COLUMNS"), ("rules", "RULES"), ("pad-level", "PAD_LEVEL")):  # fmt: skip
            given = self.parameterAsString(parameters, name, context).strip()
            given = "" if any(word.startswith(f"--{option}=") for word in words) else given
            words += [f"--{option}={given}"] if given else []
        for option, name in (
            ("found-lines", "FOUND_LINES"),
            ("line", "ROAD"),
            ("pad", "PAD"),
            ("inlets", "INLETS"),
            ("regions", "REGIONS"),
        ):
            path = self._as_geojson(parameters, name, crs, context, feedback)
            words += [f"--{option}={path}"] if path else []
        for option, name in (("against", "AGAINST"), ("since", "SINCE")):
            mesh = self.parameterAsMeshLayer(parameters, name, context)
            words += [] if mesh is None else [f"--{option}={mesh.source()}"]
        find = self.parameterAsBool(parameters, "FIND_LINES", context)
        words += [] if find else ["--found-lines=no"]  # the last one counts
        words += ["--water"] if self.parameterAsBool(parameters, "WATER", context) else []
        edge = optional_number(self, parameters, "MAX_RIM_EDGE", context)
        words += [] if edge is None else [f"--rim-edge={edge:.12g}"]
        words += [] if self.parameterAsBool(parameters, "CHECK", context) else ["--no-check"]
        said = tilt_compensated(self, parameters, context)
        words += [] if said is None else [f"--tilt-compensated={'yes' if said else 'no'}"]
        words += ["--keep-flagged"] if self.parameterAsBool(parameters, KEEP_FLAGGED, context) else []
        also = tuple(Path(one) for one in chosen_files(self, parameters, "ALSO", context))
        return replace(job_settings(make_parser().parse_args(words)), others=also)

    def _survey(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> List[str]:
        """The files of the survey; for a layer a table of its points, its CRS and the statuses that it holds."""
        path = self.parameterAsFile(parameters, "INPUT", context)
        source = optional_source(self, parameters, "LAYER", context)
        if bool(path) == (source is not None):
            raise QgsProcessingException(
                translate("hummock", "Choose a survey file or a layer of points, one of both.")
            )
        if source is None:
            return [path, *chosen_files(self, parameters, "MORE", context)]
        label = source.sourceName() or "LAYER"
        columns = chosen_columns(self, parameters, context, source)
        points = read_points_layer(source, columns, label, feedback, silent)
        table = QgsProcessingUtils.generateTempFilename(f"{Path(label).name}.csv")
        write_points(points, table)
        words = [table, f"--source-crs={crs_text(source.sourceCrs())}"]
        decided = np.flatnonzero(points.status != Status.USED)
        if len(decided) and not self.parameterAsFile(parameters, "DECISIONS", context):
            lines = decided + 2  # of the table, below its header
            kept = Decisions(lines, points.status[decided], points.reasons[decided], lines)
            decisions = QgsProcessingUtils.generateTempFilename("decisions.csv")
            write_decisions(kept, decisions)
            words.append(f"--decisions={decisions}")
        return words

    def _as_geojson(
        self,
        parameters: Dict[str, Any],
        name: str,
        crs: QgsCoordinateReferenceSystem,
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> str:
        """The features of a layer as a GeoJSON file in ``crs``, as the job reads them; "" where no layer is given."""
        source = optional_source(self, parameters, name, context)
        if source is None:
            return ""
        exporter = QgsJsonExporter()
        exporter.setTransformGeometries(False)
        exporter.setPrecision(6)
        request = request_in(crs, source, context, feedback)
        path = QgsProcessingUtils.generateTempFilename(f"{name.lower()}.geojson")
        told = json.loads(exporter.exportFeatures(list(source.getFeatures(request))))
        told["crs"] = crs_member(core_crs(crs, source.sourceName()))
        Path(path).write_text(json.dumps(told), encoding="utf-8")
        return str(path)


def _counts(result: JobResult) -> Dict[str, Any]:
    account = result.survey.account
    return {"POINTS": account.points, "REJECTS": account.rejects, "FILES": len(result.files)}


def language_code() -> str:
    """The language that QGIS speaks, as HTML names it."""
    settings = QgsSettings()
    name = QLocale.system().name()
    if settings.value("locale/overrideFlag", False, type=bool):
        name = str(settings.value("locale/userLocale", name))
    return name.replace("_", "-") if name and name != "C" else "en"
