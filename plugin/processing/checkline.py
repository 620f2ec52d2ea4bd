"""A line on a surface against a table of limits, and indications for a street."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.checks import CheckResult
from ..core.alignment.rules import DEFAULT_RULES, LeastK, Rule, read_least_k, read_rules, write_rules
from ..core.alignment.study import RoadOptions, RoadStudy, study_road
from ..core.alignment.verdicts import Verdict
from ..core.progress import part, silent
from ..core.surface.tin import Tin
from .algorithm import page_language, progress_of, report, tell
from .localnumbers import shown
from .parameters import given_file, number, optional_source, qgis_crs, tables
from .roadinput import RoadAlgorithm
from .roadlayers import (
    check_fields,
    flow_fields,
    low_point_fields,
    plain,
    write_checks,
    write_flows,
    write_low_points,
)
from .roadstyles import KERB_FLOW, LINE_CHECKS, LOW_POINTS, dress_road
from .versions import LINE, LINE_SOURCE, POINT_SOURCE, POINT_Z
from .waterinput import features_on

translate = QCoreApplication.translate


class CheckLine(RoadAlgorithm):
    """``hummock:checkline``"""

    NAME = "checkline"
    ICON = "checkline.svg"

    def title(self) -> str:
        return translate("hummock", "Check a line against limits")

    def summary(self) -> str:
        return translate("hummock", "Grades and crossfalls against a table of limits: pass, fail or too close to tell.")

    def words(self) -> str:
        return translate(
            "hummock",
            "check,limits,rules,accessible,running slope,cross slope,grade,crossfall,kerb,ponding,gutter,sight,crest",
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Compares the grades and crossfalls along a line with a table of limits. A stretch passes or fails only "
            "when the whole interval in which its true slope lies with 95 % is on that side of the limit; else it is "
            "too close to tell, and more or better points are needed. The layer shows each rule as a band of its own "
            "beside the line.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it and one line in its CRS, such as a "
            "centreline or the middle of a walk. Crossfall is taken between two offsets; keep them inside kerbs. Where "
            "the surface shows a crown, each half of the lane is judged by itself. Windows beside each other help each "
            "other, as far as the road is smooth.</p>"
            "<p><b>The table of limits</b> is a CSV file with the columns rule, quantity (grade, crossfall, crest_k, "
            "sag_k), at_least or at_most (1:20, 5% or 0.05; K in metres), window (m), applies, source, checked, note. "
            "Without one the table that comes with Hummock is used; each of its limits names the published source. "
            "Compare them with your copy, and with the code that applies where you build.</p>"
            "<p><b>Indications</b>, none of them a proof: to which edge the crossfall leads water; low points along "
            "both edges where water stands, deeper than the noise; and with a table of speeds (columns speed and "
            "least_k, m/%), the speed that each fitted crest suits.</p>"
            "<p><b>What can go wrong:</b> of many windows near a limit a few are judged wrongly. What lies off the "
            "surface is not judged. Whether a road, walk or ramp complies is a matter of "
            "local codes and of licensed practice, not of this check.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_line()
        self.add(
            given_file(
                "RULES", translate("hummock", "Table of limits (CSV; empty: the one that comes with Hummock)"), tables()
            ),
            translate("hummock", "To begin one of your own, have the table written by “Limits as a file to edit”."),
        )
        self.add_lane()
        self.add_numbering()
        self.add_noise()
        self.add(
            number("WINDOW", translate("hummock", "Window of the indications (m)"), 5.0, 0.01),
            translate("hummock", "Rules bring the window over which their slope is taken."),
            advanced=True,
        )
        self.add(
            number("LEAST_FALL", translate("hummock", "Least fall to an edge (%)"), 0.5, 0.0),
            translate("hummock", "What each half of the lane should fall to its edge; common practice, no source."),
            advanced=True,
        )
        self.add(
            given_file("SPEEDS", translate("hummock", "Speeds and least K of crests (CSV)"), tables()),
            translate("hummock", "From the standard you work to. None comes with Hummock."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "INLETS", translate("hummock", "Gullies along the edges"), [POINT_SOURCE, LINE_SOURCE], optional=True
            ),
            translate(
                "hummock",
                "Points or lines that take all water of the triangle they are in, so that none stands there.",
            ),
            advanced=True,
        )
        self.add_surface_crs()
        self._add_outputs()

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Stretches with verdicts"), LINE_SOURCE),
            translate("hummock", "Every rule along the whole line; as CSV where the file ends in .csv."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "FLOW", translate("hummock", "Crossfall to the edges"), LINE_SOURCE, optional=True
            ),
            translate("hummock", "An indication: to which edge the lane leads water."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "LOW_POINTS", translate("hummock", "Low points of the edges"), POINT_SOURCE, optional=True
            ),
            translate("hummock", "An indication: where water stands along the two offsets."),
        )
        self.add_page(
            "HTML",
            translate("hummock", "Page (HTML)"),
            translate("hummock", "Figures, verdicts, sources and cautions."),
            made=False,
        )
        self.add(
            QgsProcessingParameterFileDestination(
                "SAVE_RULES",
                translate("hummock", "Limits as a file to edit"),
                translate("hummock", "CSV files (*.csv)"),
                optional=True,
                createByDefault=False,
            ),
            translate("hummock", "Writes the table that was used. Change it and give the file back above."),
        )
        self.add_numbers(
            ("PASSED", translate("hummock", "Stretches that pass")),
            ("FAILED", translate("hummock", "Stretches that fail")),
            ("TOO_CLOSE", translate("hummock", "Stretches too close to tell")),
            ("LOW_COUNT", translate("hummock", "Low points")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        rules = self._rules(parameters, context)
        speeds = self._speeds(parameters, context)
        tin = self.read_surface(parameters, context)
        line = self.read_line(tin, parameters, context, feedback)
        noise = self.read_noise(line, tin, parameters, context, feedback, part(progress, 0.2, 0.3))
        options = RoadOptions(
            lane=self.read_lane(line, parameters, context),
            window=self.parameterAsDouble(parameters, "WINDOW", context),
            least_fall=self.parameterAsDouble(parameters, "LEAST_FALL", context) / 100,
            inlets=self._inlets(tin, parameters, context, feedback),
            rules=rules,
            speeds=speeds,
        )
        name = self.surface_name(parameters, context)
        study = study_road(line, [(name, tin)], noise, options, part(progress, 0.3, 0.8))
        report(study.messages[len(line.messages) :], feedback)
        results = self._layers(study, tin, parameters, context)
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.road_sections import write_road  # brings matplotlib, for which QGIS need not wait

            write_road(study, tin, path, *page_language())
            results["HTML"] = path
        path = self.parameterAsFileOutput(parameters, "SAVE_RULES", context)
        if path:
            write_rules(rules, path)
            results["SAVE_RULES"] = path
        _tell(study.checks, feedback)
        for caution in study.checks.messages:
            feedback.pushInfo(tell(caution))
        return {**results, **_counts(study.checks)}

    def _inlets(
        self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Tuple[np.ndarray, ...]:
        """Places (q, 2) of the gullies, metres of the CRS of the surface."""
        source = optional_source(self, parameters, "INLETS", context)
        if source is None:
            return ()
        found = [part for _, parts in features_on(source, tin, context, feedback, silent) for part in parts]
        return tuple(found)

    def _rules(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[Rule, ...]:
        return read_rules(self.parameterAsFile(parameters, "RULES", context) or DEFAULT_RULES)

    def _speeds(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[LeastK, ...]:
        path = self.parameterAsFile(parameters, "SPEEDS", context)
        return read_least_k(path) if path else ()

    def _layers(
        self, study: RoadStudy, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        line, crs = study.line, qgis_crs(tin.crs)
        fields = check_fields()
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, plain(fields), LINE, crs)
        write_checks(study.checks, tin.crs, sink)
        dress_road(context, place, fields, LINE_CHECKS)
        results: Dict[str, Any] = {"OUTPUT": place, "LOW_COUNT": sum(len(g.low_points) for g in study.gutters)}
        fields = flow_fields()
        sink, place = self.parameterAsSink(parameters, "FLOW", context, plain(fields), LINE, crs)
        if sink is not None:
            write_flows(study.flows, tin.crs, sink)
            dress_road(context, place, fields, KERB_FLOW)
            results["FLOW"] = place
        fields = low_point_fields(line)
        sink, place = self.parameterAsSink(parameters, "LOW_POINTS", context, plain(fields), POINT_Z, crs)
        if sink is not None:
            write_low_points(line, study.gutters, tin.crs, sink)
            dress_road(context, place, fields, LOW_POINTS)
            results["LOW_POINTS"] = place
        return results


def _counts(checks: CheckResult) -> Dict[str, int]:
    names = {"PASSED": Verdict.PASS, "FAILED": Verdict.FAIL, "TOO_CLOSE": Verdict.TOO_CLOSE}
    return {name: sum(each.verdict is kind for each in checks.stretches) for name, kind in names.items()}


def _tell(checks: CheckResult, feedback: QgsProcessingFeedback) -> None:
    """The lengths of each verdict, rule by rule."""
    for rule in dict.fromkeys(each.rule for each in checks.stretches):
        length = checks.lengths(rule)
        feedback.pushInfo(
            shown(
                translate("hummock", "{rule}: pass {good:.1f} m, fail {bad:.1f} m, too close to tell {close:.1f} m."),
                rule=rule.name,
                good=length[Verdict.PASS],
                bad=length[Verdict.FAIL],
                close=length[Verdict.TOO_CLOSE],
            )
        )
