"""What auto-recorded points get wrong, found and shown before the surface is built."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.points.pointset import PointSet, Status
from ..core.progress import part
from ..core.quality.check import SurveyCheck, check_survey
from ..core.quality.interval import claimed_sigma
from ..core.quality.overrides import OverrideReport, with_overrides
from ..core.quality.rounds import before_checks
from ..core.quality.tolerances import (
    SHIPPED,
    ToleranceSet,
    find_tolerances,
    read_tolerances,
    write_tolerances,
)
from .algorithm import HummockAlgorithm, progress_of, tell
from .checklayers import check_fields, run_fields, write_check, write_runs
from .codeoptions import add_convention_parameters, read_convention
from .flaggedoption import KEEP_FLAGGED, add_flagged_choice
from .localnumbers import shown
from .parameters import chosen_code_table, chosen_source, code_table_file, code_table_help, given_file, qgis_crs
from .pointlayer import PointColumns, point_fields, read_points_layer, write_points
from .pointsource import add_code_field, add_height_field
from .styles import POINTS, SURVEY_FINDINGS, dress_vector
from .tiltoption import add_tilt_choice, tilt_compensated
from .versions import MULTIPOINT_Z, NO_GEOMETRY, POINT_SOURCE, POINT_Z, TABLE_SOURCE

translate = QCoreApplication.translate

_TOLD = 50  # findings in the log
_USUAL = len(SHIPPED)  # the choice after the sets that are shipped
_LEAST_MEETINGS = 3  # for a run's standard deviation to be told


class CheckSurvey(HummockAlgorithm):
    """``hummock:checksurvey``"""

    NAME = "checksurvey"
    ICON = "checksurvey.svg"
    GROUP_ID = "quality"

    def title(self) -> str:
        return translate("hummock", "Check the survey")

    def group(self) -> str:
        return translate("hummock", "Quality")

    def summary(self) -> str:
        return translate(
            "hummock", "Finds what auto-recorded points get wrong: lifted poles, lost fixes, stops, repeats."
        )

    def words(self) -> str:
        return translate(
            "hummock", "blunders,outliers,tolerances,pole height,fix,tilt,status,reject,flag,repeatability,noise"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Gives every point a <b>status</b>: used, flagged (look at it) or rejected (kept out of the "
            "surface), with every <b>reason</b>. Nothing is deleted. The map tip of a point tells its reasons.</p>"
            "<p><b>Before all else</b> stray points are put aside, with their lines and the likely cause: coordinates "
            "swapped, zero or not finite, and points farther off than the walk could have gone, by the times or by the "
            "spacing of the points. Where nothing tells a stray from a control point, a base or another part of the "
            "site, the point is kept and flagged as far off, and no ground is drawn to it until you give it the "
            "status used.</p>"
            "<p>Single points are held to a <b>tolerance set</b>: fixes, standard deviations, tilt, PDOP, age of the "
            "correction, observations. Heights are held against the walk, the passes beside it, places walked twice "
            "and coded lines: a pole lifted, dropped or of another height, a fix regained wrongly, points stored while "
            "standing still (one point with their mean stays), lines stored twice. How much noise is usual is found in "
            "the survey itself. What crossing passes confirm is ground, however low or high it lies, and so is what "
            "lines of the ground explain: kerbs, walls, ditches. Rejected is only what meetings or sharp steps off the "
            "ground and back decide; the rest is flagged. Heights that change their <b>level</b> for long (pole, "
            "antenna, base, fix) are told with the size and its doubt; where nothing says which part is right, none is "
            "rejected.</p>"
            "<p><b>Tilt</b> is a fault only where the rover does not compensate it. You know; else the heights tell: a "
            "leaning pole without compensation gives heights that are too low by its length times 1 - cos of the tilt. "
            "<b>A limit that would reject more than a tenth of the points</b> is not applied unless you chose the set: "
            "the points are flagged, and the log says first which limit, how many points, and what to do. Points "
            "without a fix that the file itself shows to be worse are rejected, and that is said first too.</p>"
            "<p><b>Flagged points are in the surface</b>, but for one kind of stretch: 5 m or longer, met by at least "
            "two passes along at least half of it, which all say that it is off, by more than its doubt (twice the "
            "standard deviation of what they say). It is left out, told in the log and a place to walk again. "
            "<i>Keep flagged stretches in the surface</i> puts all of them back.</p>"
            "<p><b>You decide:</b> change the field status of a point in the output, and run this on that output "
            "again, or build the surface from it. Your decision stays: check_status and check_reason keep what the "
            "checks said, and the log reports where you overruled them.</p>"
            "<p><b>It assumes</b> points in the order of recording, such as the output of “Import survey points”, in a "
            "projected CRS. Statuses that points bring along without check_status count as decisions by hand.</p>"
            "<p><b>How heights repeat:</b> where passes cross or run side by side, the log gives the standard "
            "deviation of a height found there, with its degrees of freedom, and what the receiver claims.</p>"
            "<p><b>What can go wrong:</b> what no other pass and no line has seen can be a fault or a form of the "
            "ground: such points are flagged. Errors shared by the whole survey (base station, geoid, pole height) "
            "cannot show here: use check points. The tolerances are common practice, no standard.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add(
            QgsProcessingParameterFeatureSource("INPUT", translate("hummock", "Survey points"), [POINT_SOURCE]),
            translate("hummock", "In the order of recording, such as the output of “Import survey points”."),
        )
        self.add(
            QgsProcessingParameterEnum(
                "TOLERANCES",
                translate("hummock", "Tolerances"),
                [
                    translate("hummock", "topographic: single observations while walking"),
                    translate("hummock", "control: several observations, points others are built on"),
                    translate("hummock", "usual: topographic, but no limit rejects more than a tenth of the points"),
                ],
                defaultValue=_USUAL,
            ),
            translate(
                "hummock",
                "What single points are held to; a file of your own goes before. topographic, control and a file are "
                "applied as they stand. The usual choice flags points where a limit would reject more than a tenth of "
                "them; the log says so first.",
            ),
        )
        add_tilt_choice(self)
        add_flagged_choice(self)
        self._add_more_inputs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Checked points"), POINT_SOURCE),
            translate("hummock", "All points, with status, reason, check_status and check_reason."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "FINDINGS",
                translate("hummock", "Findings of the checks"),
                POINT_SOURCE,
                optional=True,
                createByDefault=True,
            ),
            translate("hummock", "A feature for each finding, at all of its points, the size in metres."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "RUNS",
                translate("hummock", "How heights repeat, run by run"),
                TABLE_SOURCE,
                optional=True,
                createByDefault=False,
            ),
            translate(
                "hummock",
                "A table: where a run met others (places_met, the degrees of freedom), the standard deviation of a "
                "height with its 95 % interval, and what the receiver claims, in millimetres.",
            ),
        )
        self.add(
            QgsProcessingParameterFileDestination(
                "SAVE_TOLERANCES",
                translate("hummock", "Tolerances as a file to edit"),
                translate("hummock", "JSON files (*.json)"),
                optional=True,
                createByDefault=False,
            ),
            translate("hummock", "Writes the set that was used. Change the numbers and give the file back above."),
        )
        self.add_numbers(
            ("USED", translate("hummock", "Points used")),
            ("FLAGGED", translate("hummock", "Points flagged")),
            ("REJECTED", translate("hummock", "Points rejected")),
            ("BY_HAND", translate("hummock", "Points decided by hand against the checks")),
            ("SIGMA", translate("hummock", "Noise of a height, found in the survey (m, 1 sigma)")),
            ("FREEDOM", translate("hummock", "Its degrees of freedom")),
        )

    def _add_more_inputs(self) -> None:
        self.add(
            given_file(
                "TOLERANCE_FILE",
                translate("hummock", "Tolerance sets of your own (JSON)"),
                translate("hummock", "JSON files (*.json);;All files (*)"),
            ),
            translate("hummock", "A list of sets, each with a name; “Tolerances as a file to edit” writes one."),
        )
        self.add(
            QgsProcessingParameterString("SET", translate("hummock", "Set of the file"), optional=True),
            translate("hummock", "Its name; may be empty where the file holds one set."),
            advanced=True,
        )
        add_height_field(self)
        self.add(
            QgsProcessingParameterBoolean("USE_CODES", translate("hummock", "Read the field codes"), True),
            translate("hummock", "Points of lines were placed on purpose: they are held against their line only."),
        )
        add_code_field(self)
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)
        add_convention_parameters(self)

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "points")
        limits = self._tolerances(parameters, context)
        source = chosen_source(self, parameters, "INPUT", context)
        names = source.fields().names()
        code = self.parameterAsString(parameters, "CODE_FIELD", context) or ("code" if "code" in names else "")
        columns = PointColumns(self.parameterAsString(parameters, "HEIGHT_FIELD", context), code)
        label = source.sourceName() or "INPUT"
        points = read_points_layer(source, columns, label, feedback, part(progress, 0.0, 0.2))
        table = None
        if code and self.parameterAsBool(parameters, "USE_CODES", context):
            table = chosen_code_table(self, parameters, "CODES", context)
        fresh, decisions = before_checks(points)
        convention = read_convention(self, parameters, context)
        check = check_survey(
            fresh,
            table,
            limits,
            convention=convention,
            progress=part(progress, 0.2, 0.8),
            tilt_compensated=tilt_compensated(self, parameters, context),
            keep_flagged=self.parameterAsBool(parameters, KEEP_FLAGGED, context),
        )
        decided, overrides = with_overrides(check.points, decisions)
        decided = replace(decided, source_line=points.source_line)
        results = self._write(decided, check, parameters, context, part(progress, 0.8, 1.0))
        _tell(check, overrides, feedback)
        path = self.parameterAsFileOutput(parameters, "SAVE_TOLERANCES", context)
        if path:
            write_tolerances([check.tolerances], path)
            results["SAVE_TOLERANCES"] = path
        return {**results, **_counts(decided), "BY_HAND": len(overrides), **_noise(check)}

    def _tolerances(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Optional[ToleranceSet]:
        """The set that the user chose; None for the usual one."""
        path = self.parameterAsFile(parameters, "TOLERANCE_FILE", context)
        if not path:
            chosen = self.parameterAsEnum(parameters, "TOLERANCES", context)
            return None if chosen == _USUAL else SHIPPED[chosen]
        sets = read_tolerances(path)
        return find_tolerances(sets, self.parameterAsString(parameters, "SET", context).strip(), path)

    def _write(
        self,
        points: PointSet,
        check: SurveyCheck,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Any,
    ) -> Dict[str, Any]:
        crs = qgis_crs(points.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, point_fields(points), POINT_Z, crs)
        write_points(points, sink, progress)
        dress_vector(context, place, POINTS)
        results = {"OUTPUT": place}
        sink, place = self.parameterAsSink(parameters, "FINDINGS", context, check_fields(), MULTIPOINT_Z, crs)
        if sink is not None:
            write_check(check, sink)
            dress_vector(context, place, SURVEY_FINDINGS)
            results["FINDINGS"] = place
        sink, place = self.parameterAsSink(parameters, "RUNS", context, run_fields(), NO_GEOMETRY, crs)
        if sink is not None:
            write_runs(check, sink)
            results["RUNS"] = place
        return results


def _counts(points: PointSet) -> Dict[str, int]:
    return {status.name: int(np.count_nonzero(points.status == status)) for status in Status}


def _noise(check: SurveyCheck) -> Dict[str, float]:
    """The noise found, as far as there is one."""
    if check.noise is None or not check.noise.total > 0:
        return {}
    return {"SIGMA": check.noise.total, "FREEDOM": check.noise.freedom}


def _tell(check: SurveyCheck, overrides: OverrideReport, feedback: QgsProcessingFeedback) -> None:
    """The log: what must be known first, what was found, how heights repeat, where a hand overruled the checks."""
    for first in check.first:
        feedback.pushWarning(tell(first))
    for found in check.findings[:_TOLD]:
        feedback.pushInfo(tell(found.message))
    if len(check.findings) > _TOLD:
        feedback.pushInfo(
            translate("hummock", "More findings, all in the layer of findings: {count}.").format(
                count=len(check.findings) - _TOLD
            )
        )
    for text in _about_noise(check):
        feedback.pushInfo(text)
    for told in (*check.messages, *overrides.messages):
        feedback.pushWarning(tell(told))


def _about_noise(check: SurveyCheck) -> List[str]:
    noise = check.noise
    if noise is None or not noise.white > 0:
        return [translate("hummock", "There is no walk long enough to tell how heights repeat.")]
    if not noise.total > 0:
        return [
            shown(
                translate(
                    "hummock", "Noise from point to point {white:.1f} mm; no place was visited twice to tell more."
                ),
                white=1000 * noise.white,
            )
        ]
    told = shown(
        translate(
            "hummock",
            "Standard deviation of a height: {total:.1f} mm ({low:.1f} to {high:.1f} mm at 95 %, {freedom:.0f} "
            "degrees of "
            "freedom, {places} places visited twice).",
        ),
        total=1000 * noise.total,
        low=1000 * noise.low,
        high=1000 * noise.high,
        freedom=noise.freedom,
        places=noise.encounters,
    )
    return [told, *_about_claims(check)]


def _about_claims(check: SurveyCheck) -> List[str]:
    """What the receiver claims over all, and of the runs that met others often enough."""
    claimed = claimed_sigma(check.points)
    if not claimed > 0:
        return []
    told = [shown(translate("hummock", "The receiver claims {claimed:.1f} mm."), claimed=1000 * claimed)]
    met = [run for run in check.runs if run.freedom >= _LEAST_MEETINGS and run.claimed > 0]
    if met:
        text = translate(
            "hummock",
            "Runs that met others at {least} places or more: {met} of {count}, standard deviations {low:.1f} to "
            "{high:.1f} mm; claims outside the 95 % interval of their run: {off}.",
        )
        sizes = [1000 * run.sigma for run in met]
        off = sum(not run.agrees for run in met)
        numbers = {"least": _LEAST_MEETINGS, "met": len(met), "count": len(check.runs), "off": off}
        told.append(shown(text, low=min(sizes), high=max(sizes), **numbers))
    return told
