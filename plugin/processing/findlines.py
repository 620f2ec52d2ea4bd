"""Kerbs, ditches and edges that the points show without codes, as lines to use, propose or reject."""

from __future__ import annotations

from typing import Any, Dict

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputLayerDefinition,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.features.find import find_features
from ..core.features.ground_lines import LineStatus, ground_lines, told_of_walk, without_doubles
from ..core.features.replay import replay
from ..core.linework.constraints import Constraints
from ..core.linework.join import join_lines
from ..core.progress import part
from .algorithm import HummockAlgorithm, progress_of, report
from .codeoptions import add_convention_parameters, read_convention
from .foundlayers import found_fields, layer_to_replace, read_found, write_found
from .localnumbers import shown
from .parameters import chosen_code_table, chosen_source, code_table_file, code_table_help, optional_source, qgis_crs
from .pointlayer import PointColumns, read_points_layer
from .pointsource import add_code_field, add_height_field
from .styles import FOUND_LINES, dress_vector
from .versions import LINE_SOURCE, MULTILINE_Z, POINT_SOURCE
from .wholefiles import target_file

translate = QCoreApplication.translate


class FindLines(HummockAlgorithm):
    """``hummock:findlines``"""

    NAME = "findlines"
    ICON = "findlines.svg"
    GROUP_ID = "quality"

    def title(self) -> str:
        return translate("hummock", "Find lines of the ground")

    def group(self) -> str:
        return translate("hummock", "Quality")

    def summary(self) -> str:
        return translate("hummock", "Kerbs, walls, ditches and edges of slopes, from points that carry no codes.")

    def words(self) -> str:
        return translate(
            "hummock", "breaklines,kerb,curb,ditch,bank,edge,gutter,crown,step,feature lines,without codes,linework"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Looks for what passes share: <b>steps</b> (kerb, wall, edge of paving), each with a foot and a top, "
            "and <b>changes of slope</b> (top and toe of a bank, bottom of a ditch, gutter, crown). Each line has its "
            "height of step or change of slope, its doubt in plan and height, how many passes show it, and its "
            "evidence: the decimal logarithm of how many times less than once so orderly a line is expected by "
            "chance.</p>"
            "<p>Lines with strong evidence get the status <b>used</b>: “Build the surface” holds to them when you give "
            "it this layer, and a used step stands there for the points in it that agree with its heights. A step that "
            "runs along another at an even distance, as the two kerbs of a street do, needs less evidence of its own. "
            "The others are <b>proposed</b>; give the layer to “Check the coverage”, and the places where one more "
            "pass would settle them are among the places to walk. <b>You decide:</b> change the status to used, "
            "proposed or rejected, or move and draw vertices in QGIS’s own editing; when this runs again into the same "
            "file, or with the layer as “Lines with your decisions”, your decisions are kept for the lines that lie "
            "where they lay.</p>"
            "<p><b>It assumes</b> points in the order of recording, in a projected CRS, best the output of “Check the "
            "survey”; rejected points take no part. Lines of the field codes go first: a found line within 0.3 m of "
            "one over most of its length is dropped.</p>"
            "<p><b>What it needs:</b> points every half metre; four passes or more across the line, best squarely and "
            "every 3 m; steps of about 60 mm or more, or less noise. Walking along foot and top, or along the bottom "
            "of a ditch, shows a line too.</p>"
            "<p><b>What can go wrong:</b> a lowered kerb or a gap that no pass crosses is bridged in a straight line "
            "(bridged_m says how much), and so is the way from the end of a line to another that it heads for within "
            "about one distance of passes. Between passes the place of a line is guessed from its course; a ditch is "
            "drawn with one section for all its passes, each somewhat wider or deeper, so that a rounded swale has "
            "edges too. A wall that is narrower than the distance of points shows no step. A pole whose height changes "
            "on several passes can look like a step. Look at the map before you build on it.</p>",
        )

    def picture_shows(self) -> str:
        return translate("hummock", "On a street that was crossed every 2.5 m, without a code:")

    def initAlgorithm(self, configuration: Any = None) -> None:
        self.add(
            QgsProcessingParameterFeatureSource("INPUT", translate("hummock", "Survey points"), [POINT_SOURCE]),
            translate("hummock", "In the order of recording, such as the output of “Check the survey”."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "DECIDED", translate("hummock", "Lines with your decisions"), [LINE_SOURCE], optional=True
            ),
            translate("hummock", "An earlier output. Where it is empty and the output is written over one, that one."),
        )
        add_height_field(self)
        self.add(
            QgsProcessingParameterBoolean("USE_CODES", translate("hummock", "Read the field codes"), True),
            translate("hummock", "Lines of codes go first: what doubles them is dropped."),
        )
        add_code_field(self)
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)
        add_convention_parameters(self)
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Lines of the ground"), LINE_SOURCE),
            translate("hummock", "Lines with heights by kind and status; change the status, or reshape them."),
        )
        self.add_numbers(
            ("USED", translate("hummock", "Lines used")),
            ("PROPOSED", translate("hummock", "Lines proposed")),
            ("REJECTED", translate("hummock", "Lines rejected")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        source = chosen_source(self, parameters, "INPUT", context)
        names = source.fields().names()
        code = self.parameterAsString(parameters, "CODE_FIELD", context) or ("code" if "code" in names else "")
        columns = PointColumns(self.parameterAsString(parameters, "HEIGHT_FIELD", context), code)
        points = read_points_layer(source, columns, source.sourceName() or "INPUT", feedback, part(progress, 0.0, 0.3))
        coded = Constraints()
        if code and self.parameterAsBool(parameters, "USE_CODES", context):
            table = chosen_code_table(self, parameters, "CODES", context)
            joined = join_lines(points, table, read_convention(self, parameters, context))
            points, coded = joined.points, joined.constraints
        features = find_features(points, progress=part(progress, 0.3, 0.9))
        lines, doubles = without_doubles(ground_lines(features), coded)
        given = self._decided(parameters, points.crs, context, feedback)
        if given is not None:
            lines, missed = replay(lines, given.lines)
            report((*given.messages, *missed), feedback)
        report((*told_of_walk(features), *doubles), feedback)
        crs = qgis_crs(points.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, found_fields(), MULTILINE_Z, crs)
        write_found(lines, points.crs, sink)
        dress_vector(context, place, FOUND_LINES)
        counts = {status.name: sum(line.status is status for line in lines) for status in LineStatus}
        _tell(lines, counts, feedback)
        progress(1.0, "features")
        return {"OUTPUT": place, **counts}

    def _decided(
        self, parameters: Dict[str, Any], crs: Any, context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Any:
        """The lines of an earlier run: of the layer that was given, else of the file that is written anew."""
        source = optional_source(self, parameters, "DECIDED", context)
        if source is not None:
            return read_found(source, source.sourceName() or "DECIDED", crs, context, feedback)
        value = parameters.get("OUTPUT")
        place = value.sink.staticValue() if isinstance(value, QgsProcessingOutputLayerDefinition) else value
        layer = layer_to_replace(target_file(place))
        if layer is None:
            return None
        given = read_found(layer, layer.name(), crs, context, feedback)
        count = sum(line.by_hand for line in given.lines)
        if count:
            text = translate("hummock", "Decisions kept from the layer that is replaced: {count}.")
            feedback.pushInfo(text.format(count=count))
        return given


def _tell(lines: Any, counts: Dict[str, int], feedback: QgsProcessingFeedback) -> None:
    used = [line for line in lines if line.status is LineStatus.USED]
    feedback.pushInfo(
        shown(
            translate("hummock", "Lines used: {used} ({length:.1f} m), proposed: {proposed}, rejected: {rejected}."),
            used=counts["USED"],
            length=_length(used),
            proposed=counts["PROPOSED"],
            rejected=counts["REJECTED"],
        )
    )


def _length(lines: Any) -> float:
    return float(sum(line.length for line in lines))
