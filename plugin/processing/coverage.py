"""Coverage: how densely a site was recorded, where nothing was, and where to walk again."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs import height_unit
from ..core.handover.found_lines import GivenLines
from ..core.linework.constraints import Constraints
from ..core.linework.join import join_lines
from ..core.messages import message
from ..core.points.pointset import PointSet
from ..core.progress import Progress, part
from ..core.quality.coverage import Coverage, CoverageOptions, coverage
from ..core.quality.coverage import write_places as write_places_csv
from ..core.quality.curvature import ground_curvature
from ..core.quality.interval import NO_BASIS, SupportedInterval, claimed_sigma, supported_interval
from ..core.surface.sources import with_sources
from ..core.surface.tin import Tin
from .algorithm import progress_of, report, tell
from .codeoptions import add_convention_parameters, read_convention
from .foundlayers import read_found
from .parameters import (
    chosen_code_table,
    chosen_source,
    code_table_file,
    code_table_help,
    number,
    optional_number,
    optional_source,
    qgis_crs,
)
from .pointlayer import PointColumns, read_points_layer
from .pointsource import add_code_field
from .styles import CIRCLES, LONG_TRIANGLES, PLACES, dress_vector
from .surfaceinput import SurfaceAlgorithm, same_crs
from .surfacenoise import known_noise, noise_label
from .trustlayers import (
    circle_fields,
    long_fields,
    place_fields,
    write_circles,
    write_long_triangles,
    write_places,
    write_places_gpx,
)
from .versions import LINE_SOURCE, POINT_SOURCE, POINT_Z, POLYGON, POLYGON_SOURCE, WHOLE_NUMBER

translate = QCoreApplication.translate


class CheckCoverage(SurfaceAlgorithm):
    """``hummock:coverage``"""

    NAME = "coverage"
    ICON = "coverage.svg"
    GROUP_ID = "quality"

    def title(self) -> str:
        return translate("hummock", "Check the coverage")

    def group(self) -> str:
        return translate("hummock", "Quality")

    def summary(self) -> str:
        return translate("hummock", "Shows where nothing was recorded, and lists the places to walk again.")

    def words(self) -> str:
        return translate("hummock", "gaps,density,spacing,empty circles,walk again,waypoints,gpx,contour interval")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Tells how densely a site was recorded and where not: the largest <b>circles without a measured "
            "point</b>, the <b>long triangles</b>, their share of the site, and <b>places to walk again</b> in walking "
            "order. With those places measured no ground is farther from a point than the limit. Where a line from "
            "field codes is carried across rejected points, or ends short of them, is among them. The log also names "
            "the smallest contour interval that the data support.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it and the points that it was built from, "
            "in the order of recording and in the CRS of the surface.</p>"
            "<p><b>For the data collector:</b> the places can also be written as CSV (name, easting, northing, height, "
            "line, in the units of the CRS) and as GPX way points in WGS 84.</p>"
            "<p><b>Interval:</b> three times the RMSE of the heights (ASPRS Positional Accuracy Standards, 2014, annex "
            "B). The RMSE is reasoned from the noise of a height (what “Check the survey” found, or else what the "
            "receiver states) and how the ground bends between passes; check points tell more.</p>"
            "<p><b>What can go wrong:</b> without a limit an edge is long from about twice the distance of the passes: "
            "our own choice, no standard. A mesh does not hold which edges are lines, so a long straight breakline "
            "counts as a long edge. Ground under a building stays empty unless the surface was built with a void "
            "there.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterFeatureSource("POINTS", translate("hummock", "Survey points"), [POINT_SOURCE]),
            translate("hummock", "The points that the surface was built from; rejected ones do not count."),
        )
        self.add(
            number(
                "MAX_EDGE", translate("hummock", "Long edges: longer than (m; empty: from the spacing)"), None, 1e-6
            ),
            translate("hummock", "Triangles with a longer edge count as ground that nobody walked."),
        )
        self.add(
            number(
                "MAX_RADIUS",
                translate("hummock", "Circles: wider than this radius (m; empty: half of that)"),
                None,
                1e-6,
            ),
            translate("hummock", "No place should be farther than this from a measured point."),
        )
        self.add(
            number("MOST", translate("hummock", "Circles: at most so many"), 50, 1, 100000, WHOLE_NUMBER),
            translate("hummock", "The widest ones are kept."),
            advanced=True,
        )
        self.add(
            number("SIGMA", noise_label(), None, 0.0, 100.0),
            translate(
                "hummock",
                "For the contour interval. Empty: as the survey tells in the file .noise.json beside the mesh; where "
                "there is none what the receiver claims, which may be less than there is.",
            ),
        )
        self._add_codes()
        self.add(
            QgsProcessingParameterFeatureSource(
                "FOUND_LINES", translate("hummock", "Lines of the ground"), [LINE_SOURCE], optional=True
            ),
            translate(
                "hummock",
                "The output of “Find lines of the ground”: where one more pass squarely across would settle a proposed "
                "line is a place to walk too.",
            ),
        )
        self.add_surface_crs()
        self._add_outputs()

    def _add_codes(self) -> None:
        self.add(
            QgsProcessingParameterBoolean("USE_CODES", translate("hummock", "Read the field codes"), True),
            translate(
                "hummock", "Where a line is carried across rejected points, or ends short of them, is walked again."
            ),
            advanced=True,
        )
        add_code_field(self, "POINTS")
        self.add(code_table_file("CODES"), code_table_help(), advanced=True)
        add_convention_parameters(self, "POINTS")

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Places to walk again"), POINT_SOURCE),
            translate(
                "hummock",
                "Points with a name, in walking order; radius_m is how far anything measured was, line the line to be "
                "walked again, or crossed once more, there.",
            ),
        )
        for name, label, help_text in (
            (
                "CIRCLES",
                translate("hummock", "Largest empty circles"),
                translate("hummock", "Circles without a measured point, the widest first; they do not overlap."),
            ),
            (
                "LONG",
                translate("hummock", "Long triangles"),
                translate("hummock", "Triangles with an edge over the limit."),
            ),
        ):
            self.add(
                QgsProcessingParameterFeatureSink(name, label, POLYGON_SOURCE, optional=True, createByDefault=True),
                help_text,
            )
        for name, label, kinds in (
            ("CSV", translate("hummock", "Places to walk again as CSV"), translate("hummock", "CSV files (*.csv)")),
            ("GPX", translate("hummock", "Places to walk again as GPX"), translate("hummock", "GPX files (*.gpx)")),
        ):
            self.add(
                QgsProcessingParameterFileDestination(name, label, kinds, optional=True, createByDefault=False),
                translate("hummock", "For the data collector."),
            )
        self.add_numbers(
            ("PLACES", translate("hummock", "Number of places to walk again")),
            ("LARGEST_RADIUS", translate("hummock", "Radius of the widest empty circle (m)")),
            ("LONG_SHARE", translate("hummock", "Share of the site in long triangles (%)")),
            ("ALONG", translate("hummock", "Spacing along the passes (m)")),
            ("ACROSS", translate("hummock", "Spacing of the passes (m)")),
            ("INTERVAL", translate("hummock", "Smallest contour interval supported (m)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        options = CoverageOptions(
            max_edge=optional_number(self, parameters, "MAX_EDGE", context),
            max_radius=optional_number(self, parameters, "MAX_RADIUS", context),
            most_circles=self.parameterAsInt(parameters, "MOST", context),
        )
        tin = self.read_surface(parameters, context)
        points, lines = self._points(tin, parameters, context, feedback, part(progress, 0.2, 0.4))
        tin = with_sources(tin, points)
        source = optional_source(self, parameters, "FOUND_LINES", context)
        label = "FOUND_LINES" if source is None else source.sourceName() or "FOUND_LINES"
        given = GivenLines((), ()) if source is None else read_found(source, label, points.crs, context, feedback)
        report(given.messages, feedback)
        found = coverage(tin, points, options, part(progress, 0.4, 0.8), lines, given.lines)
        progress(0.8, "layers")
        noise = known_noise(self, tin, parameters, context, feedback)
        interval = _interval(found, points, None if noise is None else noise.total)
        for told in (*found.messages, *([message(NO_BASIS)] if interval is None else interval.messages)):
            feedback.pushInfo(tell(told))
        results = self._write(tin, found, parameters, context, part(progress, 0.8, 1.0))
        circles = found.circles.radius
        numbers = {
            "PLACES": len(found.walk_again),
            "LARGEST_RADIUS": float(circles[0]) if len(circles) else 0.0,
            "LONG_SHARE": 100 * found.long_share,
            "ALONG": found.along,
            "ACROSS": found.across,
        }
        if interval is not None:
            numbers["INTERVAL"] = interval.usual * interval.unit.metres
        return {**results, **numbers}

    def _points(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[PointSet, Constraints]:
        """The survey points, and the lines that their codes make."""
        source = chosen_source(self, parameters, "POINTS", context)
        same_crs(source, tin, source.sourceName() or "POINTS")
        names = source.fields().names()
        code = self.parameterAsString(parameters, "CODE_FIELD", context) or ("code" if "code" in names else "")
        columns = PointColumns(code=code)
        points = read_points_layer(source, columns, source.sourceName() or "POINTS", feedback, progress)
        if not code or not self.parameterAsBool(parameters, "USE_CODES", context):
            return points, Constraints()
        table = chosen_code_table(self, parameters, "CODES", context)
        return points, join_lines(points, table, read_convention(self, parameters, context)).constraints

    def _write(
        self,
        tin: Tin,
        found: Coverage,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> Dict[str, Any]:
        crs = qgis_crs(tin.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, place_fields(), POINT_Z, crs)
        write_places(found.walk_again, sink)
        dress_vector(context, place, PLACES)
        results = {"OUTPUT": place}
        sink, place = self.parameterAsSink(parameters, "CIRCLES", context, circle_fields(), POLYGON, crs)
        if sink is not None:
            write_circles(found.circles, tin.crs, sink)
            dress_vector(context, place, CIRCLES)
            results["CIRCLES"] = place
        sink, place = self.parameterAsSink(parameters, "LONG", context, long_fields(), POLYGON, crs)
        if sink is not None:
            write_long_triangles(tin, found, sink, progress)
            dress_vector(context, place, LONG_TRIANGLES)
            results["LONG"] = place
        path = self.parameterAsFileOutput(parameters, "CSV", context)
        if path:
            write_places_csv(found.walk_again, path)
            results["CSV"] = path
        path = self.parameterAsFileOutput(parameters, "GPX", context)
        if path:
            write_places_gpx(found.walk_again, path, context.transformContext())
            results["GPX"] = path
        return results


def _interval(found: Coverage, points: PointSet, sigma: Optional[float]) -> Optional[SupportedInterval]:
    """The smallest contour interval by what is known without check points, in the unit of the heights."""
    bend, claimed = ground_curvature(points, found.across), claimed_sigma(points)
    return supported_interval(found.across, bend, repeat_sigma=sigma, claimed=claimed, unit=height_unit(points.crs))
