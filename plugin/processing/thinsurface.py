"""A surface with fewer points, within a stated tolerance in height."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputMapLayer,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.handover.mesh import write_2dm
from ..core.handover.mesh_noise import write_mesh_noise
from ..core.handover.projection import write_prj
from ..core.progress import part
from ..core.surface.thin import thin_surface
from .algorithm import progress_of
from .localnumbers import shown
from .parameters import number, qgis_crs
from .styles import load_mesh
from .surfaceinput import SurfaceAlgorithm
from .surfacenoise import told_noise

translate = QCoreApplication.translate


class ThinSurface(SurfaceAlgorithm):
    """``hummock:thinsurface``"""

    NAME = "thinsurface"
    ICON = "thinsurface.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Thin a surface")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Drops vertices as long as the surface stays within a tolerance in height.")

    def words(self) -> str:
        return translate("hummock", "thin,simplify,reduce,decimate,fewer points,tolerance,tin,mesh")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Makes a lighter surface: vertices are dropped as long as every one of them stays within the tolerance "
            "of the new surface. The rim, breaklines and their heights are kept.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it, and a tolerance in metres whatever the "
            "CRS. The result is a 2DM file with its CRS beside it as .prj.</p>"
            "<p><b>What was reached</b> is measured on the finished surface at every vertex of the given one and "
            "stands in the log and the results: the largest difference with its place, and the root of the mean "
            "square.</p><p><b>What can go wrong:</b> between the vertices, where an old edge crosses a new one, the "
            "surfaces may be farther apart than the tolerance. A tolerance below the noise of the heights drops "
            "little. Volumes of a thinned surface differ: compute them from the full one.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            number("TOLERANCE", translate("hummock", "Tolerance in height (m)"), 0.02, 0.0),
            translate("hummock", "No vertex of the given surface is farther above or below the new one."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterBoolean("LOAD", translate("hummock", "Add the surface to the map when done"), True),
            translate("hummock", "Switch it off for a step inside a model."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFileDestination(
                "OUTPUT", translate("hummock", "Thinned surface (2DM mesh)"), translate("hummock", "2DM meshes (*.2dm)")
            ),
            translate(
                "hummock",
                "The mesh file; its CRS is written beside it as .prj, the noise of its survey as .noise.json.",
            ),
        )
        self.addOutput(QgsProcessingOutputMapLayer("SURFACE", translate("hummock", "Surface, for the next step")))
        self.add_numbers(
            ("VERTEX_COUNT", translate("hummock", "Vertices kept")),
            ("DROPPED", translate("hummock", "Vertices dropped")),
            ("TRIANGLE_COUNT", translate("hummock", "Number of triangles")),
            ("LARGEST_DIFFERENCE", translate("hummock", "Largest difference in height (m)")),
            ("RMS_DIFFERENCE", translate("hummock", "Root mean square difference (m)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        tolerance = self.parameterAsDouble(parameters, "TOLERANCE", context)
        thinned = thin_surface(tin, tolerance, part(progress, 0.2, 0.95))
        progress(0.95, "surface")  # nothing is written once the user cancelled
        path = self.parameterAsFileOutput(parameters, "OUTPUT", context)
        write_2dm(thinned.tin, path)
        write_prj(path, thinned.tin.crs)
        noise = told_noise(self, tin, parameters, context, feedback)
        write_mesh_noise(path, None if noise is None else noise.of_nodes(thinned.kept))
        if self.parameterAsBool(parameters, "LOAD", context):
            load_mesh(context, path, "OUTPUT", translate("hummock", "Thinned surface, height"), qgis_crs(tin.crs))
        kept, dropped = len(thinned.kept), len(tin.vertices) - len(thinned.kept)
        feedback.pushInfo(
            shown(
                translate(
                    "hummock",
                    "Vertices kept: {kept}, dropped: {dropped}. Largest difference {largest:.4f} m at E {easting:.3f} "
                    "N {northing:.3f}, root mean square {rms:.4f} m; asked for: {tolerance:g} m.",
                ),
                kept=kept,
                dropped=dropped,
                largest=thinned.largest_difference,
                easting=thinned.easting,
                northing=thinned.northing,
                rms=thinned.rms_difference,
                tolerance=tolerance,
            )
        )
        progress(1.0, "surface")
        return {
            "OUTPUT": path,
            "SURFACE": path,
            "VERTEX_COUNT": kept,
            "DROPPED": dropped,
            "TRIANGLE_COUNT": len(thinned.tin.triangles),
            "LARGEST_DIFFERENCE": thinned.largest_difference,
            "RMS_DIFFERENCE": thinned.rms_difference,
        }
