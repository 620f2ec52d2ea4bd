"""A surface looked over: what a surveyor would warn of, each with its place."""

from __future__ import annotations

from typing import Any, Dict, Optional, Sequence, Tuple

from qgis.core import (
    QgsFeatureSink,
    QgsFields,
    QgsGeometry,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.linework.constraints import Constraints, LineKind
from ..core.linework.drawn import constraints_from_rows
from ..core.messages import QT_TRANSLATE_NOOP
from ..core.points.pointset import PointSet, make_points
from ..core.progress import Progress, part
from ..core.surface.findings import Finding, FindingKind, FindingOptions
from ..core.surface.inspection import inspect_surface
from ..core.surface.sources import with_sources
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, site_units, to_crs_units
from .algorithm import progress_of, report, say
from .drawnsource import read_kept_lines
from .parameters import number, optional_source, qgis_crs
from .pointlayer import PointColumns, read_points_layer
from .sinks import add_feature, counted, fields_of
from .styles import FINDINGS, dress_vector
from .surfaceinput import SurfaceAlgorithm
from .versions import LINE_SOURCE, POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate

#: What the kinds are called in the log.
KIND_TEXTS = {
    FindingKind.FLAT: QT_TRANSLATE_NOOP("hummock", "Level spot"),
    FindingKind.GAP: QT_TRANSLATE_NOOP("hummock", "Gap in a breakline"),
    FindingKind.LONG: QT_TRANSLATE_NOOP("hummock", "Long triangles"),
    FindingKind.SPIKE: QT_TRANSLATE_NOOP("hummock", "Spike"),
    FindingKind.BESIDE_LINE: QT_TRANSLATE_NOOP("hummock", "Point beside a line"),
}
LIMITS = ("GAP_DISTANCE", "LONG_FACTOR", "SPIKE_HEIGHT", "SPIKE_RATIO", "BESIDE_DISTANCE", "BESIDE_HEIGHT")


class InspectSurface(SurfaceAlgorithm):
    """``hummock:inspectsurface``"""

    NAME = "inspectsurface"
    ICON = "inspectsurface.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Inspect a surface")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Marks what a surveyor would warn of: spikes, gaps, long and level triangles.")

    def words(self) -> str:
        return translate("hummock", "check,quality,warnings,spikes,flat triangles,long triangles,gaps,breaklines,tin")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Looks a surface over and marks each place that a surveyor would ask about: <b>level spots</b>, whose "
            "corners all lie on one level line; <b>gaps</b> in breaklines that triangles bridge; <b>long "
            "triangles</b>, over ground that nobody walked; <b>spikes</b>, points far above or below their neighbours; "
            "<b>points beside a line</b> at another height than its edge.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Give the survey's points, and the "
            "“Lines of the surface” with their labels, too: gaps are only found among lines, and file lines are only "
            "named for points.</p>"
            "<p><b>Columns:</b> kind, value and unit (an area, a width, a length or a height), text, and lines, the "
            "lines of the survey file behind the place.</p>"
            "<p><b>What can go wrong:</b> a finding is a question, no verdict: a wall is a spike to this search. A "
            "surface without findings can still be wrong, where nothing was measured or all of it is off. The limits "
            "are our own choice for points stored every half metre; no standard sets them.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterFeatureSource(
                "POINTS", translate("hummock", "Survey points"), [POINT_SOURCE], optional=True
            ),
            translate("hummock", "The points that the surface was built from, in the CRS of the surface."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "LINES", translate("hummock", "Lines of the surface"), [LINE_SOURCE], optional=True
            ),
            translate("hummock", "The layer of that name from “Build the surface”, with the columns kind and label."),
        )
        self.add_surface_crs()
        self._add_limits()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Findings"), POINT_SOURCE),
            translate("hummock", "A point for each finding, on the surface."),
        )
        self.addOutput(QgsProcessingOutputNumber("FINDINGS", translate("hummock", "Number of findings")))

    def _add_limits(self) -> None:
        usual = FindingOptions()
        for name, label, value, help_text in (
            (
                "GAP_DISTANCE",
                translate("hummock", "Widest gap in a breakline (m)"),
                usual.gap_distance,
                translate("hummock", "Ends of lines farther apart are taken for different lines."),
            ),
            (
                "LONG_FACTOR",
                translate("hummock", "Long edges: more than … times the distance of the passes"),
                usual.long_factor,
                translate("hummock", "The distance from pass to pass is found from the surface itself."),
            ),
            (
                "SPIKE_HEIGHT",
                translate("hummock", "Least height of a spike (m)"),
                usual.spike_height,
                translate(
                    "hummock", "A spike is off its neighbours by more than this, and far more than they scatter."
                ),
            ),
            (
                "SPIKE_RATIO",
                translate("hummock", "Spikes: more than … times the scatter of the neighbours"),
                usual.spike_ratio,
                translate("hummock", "Lower it to see more of them."),
            ),
            (
                "BESIDE_DISTANCE",
                translate("hummock", "Points beside a line: nearer in plan than (m)"),
                usual.beside_distance,
                translate("hummock", "Points so near to a breakline should have its height."),
            ),
            (
                "BESIDE_HEIGHT",
                translate("hummock", "Points beside a line: off in height by more than (m)"),
                usual.beside_height,
                translate("hummock", "The difference from the height of the line there."),
            ),
        ):
            self.add(number(name, label, value, 1e-6), help_text, advanced=True)

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        points = self._points(tin, parameters, context, feedback, part(progress, 0.2, 0.35))
        constraints = self._lines(tin, parameters, context, feedback, part(progress, 0.35, 0.4))
        limits = {name.lower(): self.parameterAsDouble(parameters, name, context) for name in LIMITS}
        options = FindingOptions(**limits)
        found = inspect_surface(with_sources(tin, points), points, constraints, options, part(progress, 0.4, 0.9))
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, finding_fields(), POINT_Z, qgis_crs(tin.crs))
        write_findings(found, tin.crs, sink, part(progress, 0.9, 1.0))
        dress_vector(context, place, FINDINGS)
        for kind, text in KIND_TEXTS.items():
            count = sum(finding.kind is kind for finding in found)
            feedback.pushInfo(f"{translate('hummock', text)}: {count}")
        return {"OUTPUT": place, "FINDINGS": len(found)}

    def _points(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> PointSet:
        """The survey's points; none where no layer was given."""
        source = optional_source(self, parameters, "POINTS", context)
        if source is None:
            return make_points([], [], [], crs=tin.crs, source="")
        label = source.sourceName() or "POINTS"
        if source.sourceCrs() != qgis_crs(tin.crs):
            feedback.pushWarning(
                translate(
                    "hummock", "{layer}: its CRS is not that of the surface; its points are compared as they are."
                ).format(layer=label)
            )
        return read_points_layer(source, PointColumns(), label, feedback, progress)

    def _lines(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Constraints:
        source = optional_source(self, parameters, "LINES", context)
        if source is None:
            return Constraints()
        rows = read_kept_lines(source, LineKind.BREAKLINE, tin.crs, context, feedback, progress)
        drawn = constraints_from_rows(rows)
        report(drawn.messages, feedback)
        return drawn.constraints


def finding_fields() -> QgsFields:
    columns: Tuple[Tuple[str, str], ...] = (
        ("kind", "text"), ("value", "real"), ("unit", "text"), ("text", "text"), ("lines", "text")
    )  # fmt: skip
    return fields_of(columns)


def write_findings(found: Sequence[Finding], crs: Any, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put findings into ``sink``; their places and values in the units of ``crs``."""
    units = site_units(crs)
    for finding in counted(found, len(found), progress):
        x, y = to_crs_units([finding.easting, finding.northing], crs).tolist()
        place = QgsPoint(x, y, float(heights_to_crs_units(finding.height, crs)))
        lines = ", ".join(str(line) for line in finding.source_lines)
        attributes = [finding.kind.value, *units.told(finding.value, finding.unit), say(finding.message), lines]
        add_feature(sink, QgsGeometry(place), attributes)
