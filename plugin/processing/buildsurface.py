"""Points and lines to the triangulated surface, as a mesh."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional, Tuple

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputMapLayer,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.handover.mesh import write_2dm
from ..core.handover.mesh_noise import node_times, noise_file, noise_of, write_mesh_noise
from ..core.handover.projection import write_prj
from ..core.linework.constraints import Constraints
from ..core.linework.drawn import DRAWN, DrawnRow, constraints_from_rows, merge_constraints
from ..core.linework.join import join_lines
from ..core.points.decisions import CHECK_STATUS
from ..core.points.pointset import PointSet
from ..core.progress import Progress, part
from ..core.quality.own_noise import own_noise
from ..core.surface.build import Surface, SurfaceOptions
from ..core.surface.crossings import CrossingRule
from ..core.surface.edited import build_surface_with_edits
from ..core.surface.giving_way import found_breaklines
from ..core.surface.standing import stand_in
from ..core.surface.tin import Tin
from .algorithm import HummockAlgorithm, progress_of, report
from .buildedits import add_edit_outputs, add_edit_parameters, collect_edits, write_edit_outputs
from .buildfaces import add_face_parameters, read_faces
from .codeoptions import add_convention_parameters, read_convention
from .drawnsource import read_drawn
from .foundlayers import read_found
from .layers import line_fields, triangle_fields, write_lines, write_triangles
from .localnumbers import shown
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
from .pointsource import add_code_field, add_height_field
from .styles import LINES, TRIANGLES, dress_vector, load_mesh
from .versions import (
    LINE_SOURCE,
    LINE_Z,
    POINT_SOURCE,
    POLYGON_SOURCE,
    POLYGON_Z,
)

translate = QCoreApplication.translate

#: In the order of the choices of CROSSINGS.
CROSSING_RULES = (CrossingRule.REFUSE, CrossingRule.MEAN, CrossingRule.FIRST)


class BuildSurface(HummockAlgorithm):
    """``hummock:buildsurface``"""

    NAME = "buildsurface"
    ICON = "surface.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Build the surface")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Triangulates survey points with breaklines, boundary and voids into a mesh.")

    def words(self) -> str:
        return translate("hummock", "tin,triangulation,delaunay,terrain,dtm,mesh,breaklines,boundary,voids")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Makes a triangulated irregular network (TIN) of the points that are not rejected. Breaklines, boundary "
            "and voids become edges exactly; no points are added along lines with heights.</p>"
            "<p><b>It assumes</b> that plan and heights are in the unit of the points' CRS. Lines come from the field "
            "codes of the points, in recording order, and from layers. A line without heights takes them from the "
            "surface around it and keeps its edge.</p>"
            "<p><b>Points at the same place</b> (equal to 0.1 mm) count once, with their mean height, and are "
            "reported.</p>"
            "<p><b>Kerbs and walls</b> are drawn as one line with heights and the height of the face; each becomes two "
            "breaklines a small offset apart.</p>"
            "<p><b>Edits</b> by hand come from layers that you draw and from a file; they are replayed in their order "
            "at each run, and those that no longer apply are reported. Keep the file of edits that is written beside "
            "the survey, and give it to the next run instead of the layers.</p>"
            "<p><b>What can go wrong:</b> lines that cross at different heights are refused unless you choose a rule. "
            "Without a boundary or a longest rim edge, long flat triangles bridge the bays of the site's outline: "
            "their ground was not surveyed. A boundary drawn around nothing leaves no triangle.</p>"
            "<p><b>The mesh</b> is a 2DM file, heights in the unit of the CRS. The format cannot hold the CRS, so it "
            "stands in a .prj file of the same name beside it; when you add the mesh by hand, give QGIS the CRS.</p>"
            "<p><b>How well the heights repeat</b> is measured once more on points that “Check the survey” has been "
            "over, and kept in a file .noise.json beside the mesh: volumes rest on it. Keep the files together.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self._add_point_parameters()
        self._add_line_parameters()
        add_face_parameters(self)
        self._add_rim()
        self._add_crossings()
        add_edit_parameters(self)
        self._add_outputs()

    def _add_point_parameters(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSource("INPUT", translate("hummock", "Survey points"), [POINT_SOURCE]),
            translate("hummock", "Points with heights, such as the output of “Import survey points”."),
        )
        add_height_field(self)
        self.add(
            QgsProcessingParameterBoolean("USE_CODES", translate("hummock", "Join lines by the field codes"), True),
            translate("hummock", "Breaklines, boundary and voids from code and line number of the points."),
        )
        add_code_field(self)
        self.add(code_table_file("CODES"), code_table_help())
        add_convention_parameters(self)

    def _add_line_parameters(self) -> None:
        labels = (
            translate("hummock", "More breaklines"),
            translate("hummock", "Breaklines without heights"),
            translate("hummock", "Boundary"),
            translate("hummock", "Voids"),
        )
        helps = (
            translate("hummock", "Lines or polygon outlines that must be edges of the surface."),
            translate("hummock", "Lines that become edges and take their heights from the surface around them."),
            translate("hummock", "Polygons or closed lines: the surface ends there. A ring in a ring is a hole."),
            translate("hummock", "Polygons or closed lines that the surface leaves out, such as buildings."),
        )
        for each, label, help_text in zip(DRAWN, labels, helps):
            self.add(
                QgsProcessingParameterFeatureSource(
                    each.name.upper(), label, [LINE_SOURCE, POLYGON_SOURCE], optional=True
                ),
                help_text,
            )
        self.add(
            QgsProcessingParameterFeatureSource(
                "FOUND_LINES", translate("hummock", "Lines of the ground"), [LINE_SOURCE], optional=True
            ),
            translate(
                "hummock",
                "The output of “Find lines of the ground”: those with the status used are breaklines with their "
                "heights, and give way where they cross other lines. For points that stand in a used step and agree "
                "with it in height the line stands in the surface; a point whose status you changed stays.",
            ),
        )
        self.add(
            QgsProcessingParameterBoolean(
                "LINE_HEIGHTS", translate("hummock", "Use the heights (Z) of the lines in these layers"), True
            ),
            translate("hummock", "Switch it off when the lines were drawn with heights of 0."),
            advanced=True,
        )

    def _add_rim(self) -> None:
        for name, label, most, help_text, advanced in (
            (
                "MAX_RIM_EDGE",
                translate("hummock", "Longest edge at the rim (m; empty: no limit)"),
                None,
                translate(
                    "hummock",
                    "Triangles are taken off the rim while their outer edge is longer. In metres whatever the CRS.",
                ),
                False,
            ),
            (
                "MAX_RIM_RADIUS",
                translate("hummock", "Widest circle of triangles at the rim (radius in m; empty: no limit)"),
                None,
                translate(
                    "hummock",
                    "A hollow outline found from the points: triangles are taken off the rim while the circle through "
                    "their corners is wider. About 1.5 times the distance of the passes follows the bays of a site.",
                ),
                True,
            ),
            (
                "MAX_RIM_PASSES",
                translate("hummock", "The same radius in distances of the passes (empty: no limit)"),
                None,
                translate(
                    "hummock",
                    "The distance of the passes is measured from the triangles themselves; with 1.5, bays wider than "
                    "three passes stay open. For surveys recorded while walking to and fro.",
                ),
                True,
            ),
            (
                "MAX_RIM_ANGLE",
                translate("hummock", "Widest angle opposite to an outer edge (degrees; empty: no limit)"),
                180.0,
                translate("hummock", "Slivers at the rim are taken off while it is wider; 165 is a good value."),
                True,
            ),
        ):
            self.add(number(name, label, least=0.0, most=most), help_text, advanced=advanced)

    def _add_crossings(self) -> None:
        rules = [
            translate("hummock", "refuse when the heights differ by more than the tolerance"),
            translate("hummock", "take the mean of the heights"),
            translate("hummock", "take the height of the first line"),
        ]
        self.add(
            QgsProcessingParameterEnum(
                "CROSSINGS", translate("hummock", "Where lines cross or meet"), rules, defaultValue=0
            ),
            translate(
                "hummock",
                "Lines that cross, or end on each other, are joined there; this gives the height. Survey points that a "
                "line runs through keep theirs. What differs is told.",
            ),
            advanced=True,
        )
        self.add(
            number("CROSSING_TOLERANCE", translate("hummock", "Tolerance at crossings (m)"), 0.05, 0.0),
            translate("hummock", "Lines whose heights differ by up to this where they meet are joined at their mean."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("LOAD", translate("hummock", "Add the surface to the map when done"), True),
            translate("hummock", "Switch it off for a step inside a model."),
            advanced=True,
        )

    def _add_outputs(self) -> None:
        self.add(
            QgsProcessingParameterFileDestination(
                "OUTPUT", translate("hummock", "Surface (2DM mesh)"), translate("hummock", "2DM meshes (*.2dm)")
            ),
            translate("hummock", "The mesh file; its CRS is written beside it as .prj."),
        )
        for name, label, kind, help_text in (
            (
                "TRIANGLES",
                translate("hummock", "Triangles"),
                POLYGON_SOURCE,
                translate("hummock", "Each triangle as a polygon with its slope (%) and plan area (m²)."),
            ),
            (
                "LINES",
                translate("hummock", "Lines of the surface"),
                LINE_SOURCE,
                translate("hummock", "The lines that the surface was asked to hold to, by kind."),
            ),
        ):
            self.add(
                QgsProcessingParameterFeatureSink(name, label, kind, optional=True, createByDefault=False), help_text
            )
        add_edit_outputs(self)
        self.addOutput(QgsProcessingOutputMapLayer("SURFACE", translate("hummock", "Surface, for the next step")))
        self.add_numbers(
            ("POINTS_USED", translate("hummock", "Points used")),
            ("POINTS_IN_LINES", translate("hummock", "Points for which a found line stands")),
            ("TRIANGLE_COUNT", translate("hummock", "Number of triangles")),
            ("AREA", translate("hummock", "Plan area (m²)")),
            ("EDITS_APPLIED", translate("hummock", "Edits applied")),
            ("EDITS_MISSED", translate("hummock", "Edits that did not apply")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        points, constraints = self._collect(parameters, context, feedback, part(progress, 0.0, 0.3))
        edits = collect_edits(self, parameters, context, feedback, points.crs, part(progress, 0.3, 0.3))
        surface, told = build_surface_with_edits(
            points,
            constraints,
            self._options(parameters, context),
            edits,
            part(progress, 0.3, 0.7),
            reach=self.parameterAsDouble(parameters, "EDIT_REACH", context),
        )
        report((*surface.report.messages, *told.messages), feedback)
        results = self._write_mesh(surface, parameters, context)
        self._keep_noise(points, constraints, surface.tin, results["OUTPUT"], parameters, context, feedback)
        results["POINTS_IN_LINES"] = int(points.in_line.sum())
        results.update(self._write_layers(surface, told.constraints, parameters, context, part(progress, 0.8, 1.0)))
        results.update(write_edit_outputs(self, parameters, context, feedback, edits, told, points.crs))
        self._tell(surface, feedback)
        progress(1.0, "surface")
        return results

    def _collect(
        self,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[PointSet, Constraints]:
        """The points and all lines: those of the codes first, then those of the layers."""
        points, coded = self._read_points(parameters, context, feedback, part(progress, 0.0, 0.7))
        lines = part(progress, 0.7, 1.0)
        rows: List[DrawnRow] = []
        for each in DRAWN:
            source = optional_source(self, parameters, each.name.upper(), context)
            if source is not None:
                heights = each.heights and self.parameterAsBool(parameters, "LINE_HEIGHTS", context)
                label = source.sourceName() or each.name
                rows += read_drawn(source, each.kind, label, points.crs, heights, context, feedback, lines)
        drawn = constraints_from_rows(rows)
        report(drawn.messages, feedback)
        faces = read_faces(self, parameters, context, feedback, points.crs, lines)
        known = merge_constraints(coded, drawn.constraints, faces)
        points, found = self._found(parameters, points, known, context, feedback)
        return points, merge_constraints(known, found)

    def _found(
        self,
        parameters: Dict[str, Any],
        points: PointSet,
        known: Constraints,
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> Tuple[PointSet, Constraints]:
        """The points, marked where such a line stands for them, and what the surface holds to of the found lines."""
        source = optional_source(self, parameters, "FOUND_LINES", context)
        if source is None:
            return points, Constraints()
        given = read_found(source, source.sourceName() or "FOUND_LINES", points.crs, context, feedback)
        held = found_breaklines(given.lines, known, points)
        points, stand = stand_in(points, held.steps)
        report((*given.messages, *held.messages, *stand), feedback)
        return points, held.breaklines

    def _read_points(
        self,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[PointSet, Constraints]:
        source = chosen_source(self, parameters, "INPUT", context)
        names = [field.name() for field in source.fields()]
        code = self.parameterAsString(parameters, "CODE_FIELD", context) or ("code" if "code" in names else "")
        columns = PointColumns(self.parameterAsString(parameters, "HEIGHT_FIELD", context), code)
        points = read_points_layer(source, columns, source.sourceName() or "INPUT", feedback, progress)
        if not self.parameterAsBool(parameters, "USE_CODES", context):
            return points, Constraints()
        if not code:
            feedback.pushWarning(translate("hummock", "The points have no code field: no lines are joined by codes."))
            return points, Constraints()
        table = chosen_code_table(self, parameters, "CODES", context)
        joined = join_lines(points, table, read_convention(self, parameters, context))
        report(joined.messages, feedback)
        return joined.points, joined.constraints

    def _options(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> SurfaceOptions:
        return SurfaceOptions(
            max_rim_edge=optional_number(self, parameters, "MAX_RIM_EDGE", context),
            max_rim_radius=optional_number(self, parameters, "MAX_RIM_RADIUS", context),
            max_rim_passes=optional_number(self, parameters, "MAX_RIM_PASSES", context),
            max_rim_angle=optional_number(self, parameters, "MAX_RIM_ANGLE", context),
            crossing=CROSSING_RULES[self.parameterAsEnum(parameters, "CROSSINGS", context)],
            crossing_tolerance=self.parameterAsDouble(parameters, "CROSSING_TOLERANCE", context),
        )

    def _write_mesh(
        self, surface: Surface, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        path = self.parameterAsFileOutput(parameters, "OUTPUT", context)
        write_2dm(surface.tin, path)
        write_prj(path, surface.tin.crs)
        if self.parameterAsBool(parameters, "LOAD", context):
            load_mesh(context, path, "OUTPUT", translate("hummock", "Surface, height"), qgis_crs(surface.tin.crs))
        return {
            "OUTPUT": path,
            "SURFACE": path,
            "POINTS_USED": surface.report.points_used,
            "TRIANGLE_COUNT": surface.report.triangles,
            "AREA": surface.tin.plan_area,
        }

    def _keep_noise(
        self,
        points: PointSet,
        constraints: Constraints,
        tin: Tin,
        path: str,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> None:
        """Write how the heights repeat beside the mesh, which is written; of unchecked points nothing is known."""
        noise = None
        if CHECK_STATUS in points.extra:
            unknown = optional_source(self, parameters, "FOUND_LINES", context) is None
            noise = noise_of(own_noise(points, constraints, unknown, part(progress_of(feedback), 0.7, 0.8)))
        noise = None if noise is None else replace(noise, time=node_times(tin, points.time))
        if write_mesh_noise(path, noise) is None or noise is None:
            feedback.pushInfo(
                translate(
                    "hummock",
                    "How well the heights repeat is not known, and not kept beside the mesh: for that the points must "
                    "have been checked (“Check the survey”), and passes must cross or meet.",
                )
            )
            return
        feedback.pushInfo(
            shown(
                translate(
                    "hummock",
                    "How well the heights repeat is kept in {file} beside the mesh: {sigma:.0f} mm new at every point "
                    "and {drift:.0f} mm of drift.",
                ),
                file=noise_file(path).name,
                sigma=1000 * noise.sigma,
                drift=1000 * noise.drift,
            )
        )

    def _write_layers(
        self,
        surface: Surface,
        constraints: Constraints,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> Dict[str, Any]:
        """The optional layers that were asked for."""
        crs, results = qgis_crs(surface.tin.crs), {}
        sink, place = self.parameterAsSink(parameters, "TRIANGLES", context, triangle_fields(), POLYGON_Z, crs)
        if sink is not None:
            write_triangles(surface.tin, sink, progress)
            dress_vector(context, place, TRIANGLES)
            results["TRIANGLES"] = place
        sink, place = self.parameterAsSink(parameters, "LINES", context, line_fields(), LINE_Z, crs)
        if sink is not None:
            write_lines(constraints, surface.tin.crs, sink)
            dress_vector(context, place, LINES)
            results["LINES"] = place
        return results

    def _tell(self, surface: Surface, feedback: QgsProcessingFeedback) -> None:
        done, (low, high) = surface.report, surface.tin.height_range
        feedback.pushInfo(
            translate(
                "hummock",
                "Points used: {used}, rejected: {rejected}. Triangles: {triangles}; taken off outside the boundary or "
                "in voids: {outside}, at the rim: {trimmed}.",
            ).format(
                used=done.points_used,
                rejected=done.points_rejected,
                triangles=done.triangles,
                outside=done.outside,
                trimmed=done.trimmed,
            )
        )
        feedback.pushInfo(
            shown(
                translate("hummock", "Plan area {area:.1f} m², heights {low:.3f} m to {high:.3f} m."),
                area=surface.tin.plan_area,
                low=low,
                high=high,
            )
        )
