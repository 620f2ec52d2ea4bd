"""The report of the whole job: from the survey file to every product, told in one document."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, Dict, Optional

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputFile,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterMultipleLayers,
    QgsSettings,
)
from qgis.PyQt.QtCore import QCoreApplication, QLocale

from ..core.contours.lines import ContourOptions
from ..core.files import make_folder
from ..core.job.job_file import has_job, read_job
from ..core.job.run import continue_job, run_job
from ..core.job.settings import JobSettings
from ..core.job.visits import VisitWords, with_visits
from ..core.points.decided import PointDecision
from ..core.points.decisions import WORD_OF_STATUS, words_of_reasons
from ..core.points.pointset import Status
from ..core.points.table import write_points
from ..core.progress import Progress, part, silent
from ..core.report.results import JobResult
from ..core.report.summary import summary
from .algorithm import HummockAlgorithm, progress_of, translate_core
from .checksource import checks_file
from .contours import add_interval, chosen_interval
from .drawnfiles import FIELDS, geojson_of, write_drawn
from .importoptions import chosen_files
from .importsources import add_layer_of_points, add_more_files, add_survey_file, add_wanted_crs
from .jobparameters import add_choices, read_choices, usual_settings
from .jobvisits import PARAMETERS, add_visit_parameters, read_visit_words
from .pages import write_pages
from .parameters import core_crs, crs_text, optional_source
from .pointlayer import read_points_layer
from .pointsource import chosen_columns
from .reportquestions import LAYERS, add_questions, read_questions
from .versions import FILE_SOURCE, LINE_SOURCE

translate = QCoreApplication.translate

#: The points of a layer, in the folder of the job that is made from them.
LAYER_FILE = "points_of_layer.csv"


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
            "<p>It starts from the <b>file</b>, so that each number can be traced to a line of it. A layer in place of "
            "the file comes with the statuses that its points have.</p>"
            "<p><b>The folder is a job</b>: it keeps your choices, and a later run does only what has changed. With no "
            "file and no layer the job that is in the folder goes on with its own choices, such as those of the "
            "“Survey desk”. The advanced parameters are those of the steps by hand.</p>"
            "<p><b>Files of later visits</b> are not mixed with the survey: each has its own surface, which stays, and "
            "the report tells its height offset to the ground before it and how much ground changed. Where you say so, "
            "its ground counts in place of what differs by more than noise.</p>"
            "<p><b>More files</b>, such as a plan or a drawing, are listed with the others and their SHA-256.</p>"
            "<p><b>It assumes</b> what “Import survey points”, “Check the survey” and “Build the surface” assume.</p>"
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
        add_survey_file(
            self,
            translate(
                "hummock",
                "Delimited text or a receiver log. It is only read. With no file and no layer, the job in the folder "
                "below goes on with its own choices.",
            ),
        )
        add_layer_of_points(self)
        add_more_files(self, translate("hummock", "Other days or rovers."))
        add_visit_parameters(self)
        add_wanted_crs(self, translate("hummock", "A projected CRS, or a compound one with heights."), optional=True)
        self.add(checks_file(), translate("hummock", "Independent check points in the CRS of the points."))
        self.add(
            QgsProcessingParameterBoolean("CHECK", translate("hummock", "Check the points automatically"), True),
            translate("hummock", "As “Check the survey” does."),
        )
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

    def _add_product_parameters(self) -> None:
        add_interval(self, advanced=True, default=None)
        add_questions(self)
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
        add_choices(self, usual_settings(Path(), Path(), ContourOptions(0.25)))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress, language = progress_of(feedback), language_code()
        folder = Path(self.parameterAsString(parameters, "FOLDER", context))
        steps = part(progress, 0.0, 0.85)
        if self._goes_on(folder, parameters, context):
            said = self._visit_words(read_job(folder).settings, parameters, context, feedback)
            result = continue_job(folder, steps, translate_core, language, said)
        else:
            settings = self._settings(folder, parameters, context, feedback)
            before = read_job(folder).settings.visits if has_job(folder) else ()
            settings = replace(settings, visits=before)
            settings = with_visits(settings, self._visit_words(settings, parameters, context, feedback))
            result = run_job(settings, steps, translate_core, language)
        found: Dict[str, Any] = {"FOLDER": str(folder), "HTML": str(folder / "report.html"), **_counts(result)}
        if self.parameterAsBool(parameters, "PAPER", context):
            found["PDF"] = report_pages(folder, feedback, part(progress, 0.85, 1.0))
        for line in summary(result, folder):
            feedback.pushInfo(line)
        return found

    def _goes_on(self, folder: Path, parameters: Dict[str, Any], context: QgsProcessingContext) -> bool:
        """Whether the job of the folder is meant. Raises where choices beside it would count for nothing."""
        path = self.parameterAsFile(parameters, "INPUT", context)
        layer = optional_source(self, parameters, "LAYER", context)
        if bool(path) != (layer is not None):
            return False
        if path or not has_job(folder):
            raise QgsProcessingException(
                translate("hummock", "Choose a survey file or a layer of points, one of both, or the folder of a job.")
            )
        unused = [
            one.description()
            for one in self.parameterDefinitions()
            if one.name() not in ("FOLDER", "PAPER", *PARAMETERS)
            and parameters.get(one.name(), one.defaultValue()) not in (None, "", [], one.defaultValue())
        ]
        if unused:
            raise QgsProcessingException(
                translate(
                    "hummock",
                    "The job in this folder goes on with its own choices: leave out {names}, or choose the survey "
                    "file.",
                ).format(names=", ".join(unused))
            )
        return True

    def _settings(
        self,
        folder: Path,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> JobSettings:
        """What the parameters ask of the main job; layers are written into its folder, so that it can go on."""
        make_folder(folder)
        crs = self.parameterAsCrs(parameters, "CRS", context)
        interval, unit = chosen_interval(self, core_crs(crs, "CRS") if crs.isValid() else None, parameters, context)
        every = self.parameterAsInt(parameters, "INDEX_EVERY", context)
        usual = usual_settings(Path(), folder, ContourOptions(interval, unit=unit, index_every=every))
        usual = read_choices(self, parameters, context, replace(usual, crs=crs_text(crs) if crs.isValid() else None))
        settings = self._survey(usual, parameters, context, feedback)
        lines = {
            name: self._as_geojson(parameters, name.upper(), settings, context, feedback)
            for name in (*FIELDS, "found_lines", *LAYERS)
        }
        drawn: Dict[str, Any] = {name: lines[name] for name in FIELDS}
        checks = self.parameterAsFile(parameters, "CHECKS_FILE", context)
        return replace(
            settings,
            check_points=Path(checks) if checks else None,
            found_lines=lines["found_lines"],
            others=tuple(Path(one) for one in chosen_files(self, parameters, "ALSO", context)),
            questions=tuple(read_questions(self, lines, unit, parameters, context)),
            **drawn,
        )

    def _visit_words(
        self,
        settings: JobSettings,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> VisitWords:
        """What is said of later visits to the job, polygons as a file of it."""
        return read_visit_words(
            self, parameters, context, settings,
            lambda name, file: self._as_geojson(parameters, name, settings, context, feedback, file),
        )  # fmt: skip

    def _survey(
        self,
        settings: JobSettings,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> JobSettings:
        """The files of the survey; for a layer a table of its points, its CRS and the statuses that it holds."""
        source = optional_source(self, parameters, "LAYER", context)
        if source is None:
            more = tuple(Path(one) for one in chosen_files(self, parameters, "MORE", context))
            return replace(settings, survey=Path(self.parameterAsFile(parameters, "INPUT", context)), more=more)
        label = source.sourceName() or "LAYER"
        points = read_points_layer(source, chosen_columns(self, parameters, context, source), label, feedback, silent)
        table = settings.out / LAYER_FILE
        write_points(points, table)
        decided = tuple(
            PointDecision(
                row + 2,  # the line of the table, below its header
                WORD_OF_STATUS[int(points.status[row])],
                words_of_reasons(int(points.reasons[row])) or "by_hand",
                str(points.name[row] or "").strip(),
            )
            for row in np.flatnonzero(points.status != Status.USED).tolist()
        )
        return replace(settings, survey=table, source_crs=crs_text(source.sourceCrs()), decided=decided)

    def _as_geojson(
        self,
        parameters: Dict[str, Any],
        name: str,
        settings: JobSettings,
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        file: str = "",
    ) -> Optional[Path]:
        """The features of a layer as a GeoJSON file of the job, called as the parameter where no name of the ``file``
        is given; None where no layer is."""
        source = optional_source(self, parameters, name, context)
        if source is None:
            return None
        crs = QgsCoordinateReferenceSystem(settings.crs or "")
        told = geojson_of(source, source.sourceName(), crs, context, feedback)
        return write_drawn(told, settings.out / f"{file or name.lower()}.geojson")


def report_pages(folder: Path, feedback: QgsProcessingFeedback, progress: Progress = silent) -> str:
    """Write the report of a job as pages too; their file. Raises SurveyError where it cannot be written."""
    file = read_job(folder).settings.survey.name
    paper = str(folder / "report.pdf")
    title = translate("hummock", "Report of the survey {file}").format(file=file)
    pages = write_pages((folder / "report.html").read_text(encoding="utf-8"), paper, title, progress)
    feedback.pushInfo(translate("hummock", "report.pdf: {pages} pages.").format(pages=pages))
    return paper


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
