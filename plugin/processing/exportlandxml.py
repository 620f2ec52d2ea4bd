"""Surfaces, points, lines and alignments into a LandXML file."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

from qgis.core import (
    QgsProcessing,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.curves import fit_curves
from ..core.alignment.profile import make_profile
from ..core.handover.edges import bounded_lines, marked_lines
from ..core.handover.landxml_geometry import design_profile, from_alignment, ground_profiles
from ..core.handover.landxml_model import LandAlignment, LandProfile, LandSurface, LandXml
from ..core.handover.landxml_write import write_landxml
from ..core.linework.constraints import ConstraintLine, LineKind
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from .algorithm import progress_of, report
from .exchangeinput import (
    HandoverAlgorithm,
    drawn_lines,
    lines_with_stations,
    more_surfaces,
    points_to_hand_over,
    surface_title,
)
from .parameters import number, optional_source
from .pointsource import add_field_parameters, add_layer_parameter
from .versions import LINE_SOURCE, POLYGON_SOURCE, member

translate = QCoreApplication.translate

_FIT_SPACING = 1.0  # metres between the heights that grades are fitted to
MESH_SOURCE = member(QgsProcessing, "SourceType", "TypeMesh", "Mesh")


class ExportLandXml(HandoverAlgorithm):
    """``hummock:exportlandxml``"""

    NAME = "exportlandxml"
    ICON = "exportlandxml.svg"

    def title(self) -> str:
        return translate("hummock", "Surface to LandXML")

    def summary(self) -> str:
        return translate("hummock", "Writes surfaces, points, breaklines and alignments as LandXML 1.2.")

    def words(self) -> str:
        return translate("hummock", "landxml,xml,tin,surface,export,exchange,design,alignment,breaklines,machine")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Writes one or several surfaces in the open standard LandXML 1.2: points and faces, and as source data "
            "the breaklines and the boundary. Points of a layer, and lines with stations and the ground's profile, can "
            "go into the same file.</p>"
            "<p><b>The file</b> says its units and CRS; numbers are northing before easting, as the standard has it, "
            "plan with 4 decimals and heights with 6, all in the unit of the CRS's plan. Read again it is the same "
            "surface to the last decimal.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Breaklines, boundary and voids are "
            "those the surface was held to, unless layers are given.</p>"
            "<p><b>What can go wrong:</b> some programs ignore the faces and triangulate the source data anew: their "
            "surface differs where lines or the boundary are missing, so leave the rim in. Some ignore the CRS: "
            "tell it beside the file. In feet make sure which foot the receiver takes: international and US survey "
            "feet are 2 parts in a million apart, a metre or more at state-plane coordinates.</p>"
            "<p><b>Caution:</b> before construction or machine guidance compare heights at points measured "
            "independently; what may be used for it is for the responsible licensed professional and local rules.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterString("TITLE", translate("hummock", "Name of the surface"), "", optional=True),
            translate("hummock", "What the receiver reads; the mesh's file name where it is empty."),
        )
        self.add(
            QgsProcessingParameterMultipleLayers(
                "MORE", translate("hummock", "More surfaces"), MESH_SOURCE, optional=True
            ),
            translate("hummock", "Such as a design; named by their files, in the CRS of the first surface."),
        )
        add_layer_parameter(
            self, "POINTS", translate("hummock", "Points"), translate("hummock", "Survey or control points."), True
        )
        add_field_parameters(self, "POINTS")
        self._add_lines()
        self.add(
            QgsProcessingParameterString("PROJECT", translate("hummock", "Project"), "", optional=True),
            translate("hummock", "The project's name in the file."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("NEIGHBOURS", translate("hummock", "Faces name their neighbours"), False),
            translate("hummock", "Optional in the standard; makes the file larger."),
            advanced=True,
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFileDestination(
                "OUTPUT", translate("hummock", "LandXML file"), translate("hummock", "LandXML files (*.xml)")
            ),
            translate("hummock", "It appears only when it is whole."),
        )
        self.add_numbers(
            ("SURFACES", translate("hummock", "Surfaces written")),
            ("FACES", translate("hummock", "Faces written")),
            ("POINT_COUNT", translate("hummock", "Points written")),
            ("ALIGNMENTS", translate("hummock", "Alignments written")),
        )

    def _add_lines(self) -> None:
        both = [LINE_SOURCE, POLYGON_SOURCE]
        self.add(
            QgsProcessingParameterFeatureSource(
                "LINES", translate("hummock", "Breaklines (empty: those of the surface)"), both, optional=True
            ),
            translate("hummock", "Goes into the source data of the first surface."),
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "BOUNDARY", translate("hummock", "Boundary (empty: that of the surface)"), both, optional=True
            ),
            translate("hummock", "Goes into the source data of the first surface."),
        )
        self.add(
            QgsProcessingParameterBoolean("RIM", translate("hummock", "Rim as boundary where there is no other"), True),
            translate("hummock", "So that a program that triangulates anew ends where the surface ends."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSource(
                "ALIGNMENT", translate("hummock", "Lines with stations"), [LINE_SOURCE], optional=True
            ),
            translate("hummock", "Such as a centreline; stations grow in the way it was drawn."),
        )
        self.add(
            number("START", translate("hummock", "Station of the lines' beginning (unit of the CRS)"), 0.0),
            translate("hummock", "1250 for 1+250."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("PROFILE", translate("hummock", "With the profile of the surface"), True),
            translate("hummock", "Heights of the first surface along the lines with stations."),
            advanced=True,
        )

        self.add(
            QgsProcessingParameterBoolean("FIT", translate("hummock", "With grades and vertical curves fitted"), False),
            translate(
                "hummock",
                "Straight grades and parabolas fitted to that profile, as “Fit grades and vertical curves” does, as "
                "the alignment's profile. It describes what is there; it is no design.",
            ),
            advanced=True,
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        title = self.parameterAsString(parameters, "TITLE", context).strip()
        title = title or surface_title(self, parameters, context)
        lines = self._lines(tin, parameters, context, feedback, part(progress, 0.2, 0.3))
        surfaces = [LandSurface(title, tin, lines)]
        for name, other in more_surfaces(self, parameters, "MORE", tin, context):
            surfaces.append(LandSurface(name, other, self._own_lines(other, parameters, context)))
        points = points_to_hand_over(self, parameters, tin, context, feedback, part(progress, 0.3, 0.4))
        alignments = self._alignments(title, tin, parameters, context, feedback, part(progress, 0.4, 0.5))
        path = self.parameterAsFileOutput(parameters, "OUTPUT", context)
        project = self.parameterAsString(parameters, "PROJECT", context).strip()
        contents = LandXml(tin.crs, tuple(surfaces), points, alignments, project)
        neighbours = self.parameterAsBool(parameters, "NEIGHBOURS", context)
        write_landxml(contents, path, neighbours=neighbours, progress=part(progress, 0.5, 1.0))
        return {
            "OUTPUT": path,
            "SURFACES": len(surfaces),
            "FACES": sum(len(each.tin.triangles) for each in surfaces if each.tin is not None),
            "POINT_COUNT": 0 if points is None else len(points),
            "ALIGNMENTS": len(alignments),
        }

    def _own_lines(
        self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Tuple[ConstraintLine, ...]:
        """The lines that a surface was held to, with its rim where it has no boundary."""
        return bounded_lines(tin) if self.parameterAsBool(parameters, "RIM", context) else marked_lines(tin)

    def _lines(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[ConstraintLine, ...]:
        """Those of the surface, those of layers in place of their kind."""
        lines: List[ConstraintLine] = list(self._own_lines(tin, parameters, context))
        for name, kind in (("BOUNDARY", LineKind.BOUNDARY), ("LINES", LineKind.BREAKLINE)):
            source = optional_source(self, parameters, name, context)
            if source is not None:
                lines = [line for line in lines if not line.kind & kind]
                lines += drawn_lines(source, kind, tin, context, feedback, progress)
        return tuple(lines)

    def _alignments(
        self,
        title: str,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[LandAlignment, ...]:
        source = optional_source(self, parameters, "ALIGNMENT", context)
        if source is None:
            return ()
        start = self.parameterAsDouble(parameters, "START", context)
        found = []
        for line in lines_with_stations(source, tin, start, feedback, progress):
            profiles: Tuple[LandProfile, ...] = ()
            if self.parameterAsBool(parameters, "PROFILE", context):
                made = make_profile(line, [(title, tin)])
                report(made.messages, feedback)
                profiles = ground_profiles(made.surfaces[0])
                if self.parameterAsBool(parameters, "FIT", context):
                    fit = fit_curves(made.surfaces[0], _FIT_SPACING)
                    profiles = (design_profile(fit, translate("hummock", "fitted")), *profiles)
            found.append(from_alignment(line, profiles))
        return tuple(found)
