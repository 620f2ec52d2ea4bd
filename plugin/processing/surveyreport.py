"""The report of the whole job: from the survey file to every product, told in one document."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputFile,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterFile,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
    QgsSettings,
)
from qgis.PyQt.QtCore import QCoreApplication, QLocale

from ..core.contours.lines import ContourOptions
from ..core.contours.sheet import SheetOptions
from ..core.job.run import run_job
from ..core.job.settings import JobSettings
from ..core.progress import part
from ..core.report.results import JobResult
from ..core.report.summary import summary
from ..core.surface.build import SurfaceOptions
from .algorithm import HummockAlgorithm, progress_of
from .importoptions import chosen_files
from .pages import write_pages
from .parameters import chosen_unit, code_table_file, code_table_help, crs_text, number, optional_number, unit_choice
from .versions import FILE_SOURCE, ONE_FILE, WHOLE_NUMBER

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
            "surface, the contours, and the files handed over, each with its SHA-256. HTML and PDF say the same.</p>"
            "<p>It starts from the <b>file</b>, so that each number can be traced to a line of it. Decisions that you "
            "took in QGIS come in by their file: “Survey desk” keeps it for you.</p>"
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
        kinds = translate("hummock", "Survey files (*.csv *.txt *.asc *.xyz *.pts *.dat *.nmea *.log);;All files (*)")
        tables = translate("hummock", "Tables (*.csv *.txt);;All files (*)")

        def file(name: str, label: str, help_text: str, kind: str, optional: bool = True) -> None:
            self.add(
                QgsProcessingParameterFile(name, label, behavior=ONE_FILE, optional=optional, fileFilter=kind),
                help_text,
            )

        file(
            "INPUT",
            translate("hummock", "Survey file"),
            translate("hummock", "Delimited text or a receiver log. It is only read."),
            kinds,
            False,
        )
        self.add(
            QgsProcessingParameterMultipleLayers(
                "MORE", translate("hummock", "More files of the same site"), FILE_SOURCE, optional=True
            ),
            translate("hummock", "Other days or rovers."),
        )
        self.add(
            QgsProcessingParameterCrs("CRS", translate("hummock", "CRS of the points wanted")),
            translate("hummock", "A projected CRS, or a compound one with heights."),
        )
        self.add(
            QgsProcessingParameterString(
                "COLUMNS", translate("hummock", "Columns (empty: as recognised)"), optional=True
            ),
            translate("hummock", "As in “Import survey points”."),
            advanced=True,
        )
        self.add(
            unit_choice("FILE_UNIT", translate("hummock", "Unit of easting and northing"), None, True),
            translate("hummock", "The unit in the file. Empty: that of the CRS."),
            advanced=True,
        )
        file(
            "DECISIONS",
            translate("hummock", "Decisions on points (CSV)"),
            translate("hummock", "Points to use, flag or reject, by their line."),
            tables,
        )
        file(
            "CHECKS_FILE",
            translate("hummock", "Check points (CSV file)"),
            translate("hummock", "Independent check points in the CRS of the points."),
            tables,
        )
        self.add(
            QgsProcessingParameterBoolean("CHECK", translate("hummock", "Check the points automatically"), True),
            translate("hummock", "As “Check the survey” does."),
        )
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)

    def _add_product_parameters(self) -> None:
        self.add(
            number("INTERVAL", translate("hummock", "Interval (in the unit below)"), 0.25, 1e-6),
            translate("hummock", "The difference in height between two neighbouring contours."),
        )
        self.add(
            unit_choice("UNIT", translate("hummock", "Unit of interval and base")),
            translate("hummock", "The levels of the contours are whole multiples in this unit."),
        )
        self.add(
            number("INDEX_EVERY", translate("hummock", "Index contour every … contours"), 5, 1, kind=WHOLE_NUMBER),
            translate("hummock", "Every so many contours one is drawn heavier and labelled."),
            advanced=True,
        )
        self.add(
            number("MAX_RIM_EDGE", translate("hummock", "Longest edge at the rim (m; empty: no limit)"), None, 0.0),
            translate("hummock", "Triangles with a longer edge are taken off the rim of the surface."),
            advanced=True,
        )
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

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        folder = Path(self.parameterAsString(parameters, "FOLDER", context))
        language = language_code()
        result = run_job(
            self._settings(folder, parameters, context),
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

    def _settings(self, folder: Path, parameters: Dict[str, Any], context: QgsProcessingContext) -> JobSettings:
        def path(name: str) -> Optional[Path]:
            given = self.parameterAsFile(parameters, name, context)
            return Path(given) if given else None

        survey = path("INPUT")
        if survey is None:
            raise QgsProcessingException(translate("hummock", "Choose a survey file."))
        unit = chosen_unit(self, parameters, "UNIT", context)
        interval = self.parameterAsDouble(parameters, "INTERVAL", context)
        every = self.parameterAsInt(parameters, "INDEX_EVERY", context)
        also: List[str] = chosen_files(self, parameters, "ALSO", context)
        return JobSettings(
            survey=survey,
            out=folder,
            more=tuple(Path(one) for one in chosen_files(self, parameters, "MORE", context)),
            crs=crs_text(self.parameterAsCrs(parameters, "CRS", context)),
            contours=ContourOptions(interval, 0.0, unit, every) if unit else ContourOptions(interval),
            columns=self.parameterAsString(parameters, "COLUMNS", context).strip() or None,
            unit=chosen_unit(self, parameters, "FILE_UNIT", context),
            decisions=path("DECISIONS"),
            check_points=path("CHECKS_FILE"),
            check=self.parameterAsBool(parameters, "CHECK", context),
            codes=path("CODES"),
            surface=SurfaceOptions(optional_number(self, parameters, "MAX_RIM_EDGE", context)),
            sheet=SheetOptions(0.25, 0.015),
            others=tuple(Path(one) for one in also),
        )


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
