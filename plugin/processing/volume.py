"""The exact volume between two surfaces."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSource
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.comparison import Comparison
from ..core.earthwork.study import study
from ..core.progress import part
from ..core.units import metres_per_height_unit
from .algorithm import progress_of
from .certainty import add_certainty
from .earthmaterials import add_earth_parameters
from .parameters import number, optional_number
from .regionsource import chosen_regions
from .surfaceinput import SurfaceAlgorithm
from .versions import POLYGON_SOURCE
from .volumenumbers import volume_numbers
from .volumeresults import (
    add_depth_options,
    add_depth_outputs,
    add_table_output,
    check_raster_path,
    chosen_study,
    tell,
    write_results,
    write_table,
)

translate = QCoreApplication.translate


class VolumeBetween(SurfaceAlgorithm):
    """``hummock:volume``"""

    NAME = "volume"
    ICON = "volume.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Volume between two surfaces")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "Exact cut and fill from one surface to another, with how sure they are.")

    def words(self) -> str:
        return translate(
            "hummock",
            "volume,earthwork,cut,fill,cut and fill,quantities,cubic metres,difference,excavation,uncertainty",
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Computes the earth between an existing surface (or an earlier survey) and a design (or a later "
            "survey). Every triangle of the one is cut along those of the other, so that the volume is exact for the "
            "two surfaces: it depends on no cell size and no stations. <b>Cut</b> is where the existing surface is "
            "above the design, <b>fill</b> where it is below, both positive; net is fill less cut.</p>"
            "<p><b>It assumes</b> two 2DM meshes in one CRS and with one height datum. Only ground that both cover is "
            "compared, and only inside the polygons if a layer of them is given; what is left out is told in square "
            "metres. A level in place of the missing surface counts the rest as well.</p>"
            "<p><b>Two surveys</b> (both with noise): noise alone makes cut and fill where nothing changed. What it "
            "makes is taken off, so that such ground comes to 0 on average (a volume a little below 0 means none). "
            "The height offset between them is found from the ground on which they agree best, and taken off, unless "
            "you give it; how much noise there is follows from the same ground. What the triangles say as they are is"
            " told beside (triangles_m3).</p>"
            "<p><b>How sure:</b> each volume comes with its 95 % interval and five standard deviations: random (noise "
            "of single points), drift (shared by neighbours), systematic (a height offset between the surfaces, times "
            "the area), surface model (ground between the points) and small (noise where depths are no larger). They "
            "rest on what you say of the points; the log and the report name it.</p>"
            "<p><b>Tables:</b> volumes with half_95, low_95 and high_95; random, drift, systematic, model and small "
            "are standard deviations, all in m³. <b>Polygons:</b> kind, from_m and to_m (depth), area_m2, "
            "volume_m3.</p>"
            "<p><b>What can go wrong:</b> an offset of 1 cm between two surveys is 100 m³ on a hectare: check a few "
            "points that did not move. Where most of the ground rose or sank evenly by less than 0.1 m, that is taken"
            " for an offset: give the offset then. Against a design, where nothing is deeper than the noise, cut and "
            "fill are both too large. This is no payment certificate: the contract, local codes and licensed practice"
            " say what is measured. Locate buried services before anyone digs.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface("EXISTING", translate("hummock", "Existing surface, or the earlier survey (2DM mesh)"))
        self.add_surface("DESIGN", translate("hummock", "Design, or the later survey (2DM mesh)"))
        self.add(
            QgsProcessingParameterFeatureSource(
                "REGIONS", translate("hummock", "Only inside these polygons"), [POLYGON_SOURCE], optional=True
            ),
            translate(
                "hummock", "Where polygons overlap the ground counts once; for one row each see “Volume by region”."
            ),
        )
        add_certainty(self, second=True)
        add_depth_options(self)
        self.add(
            number("MISSING_LEVEL", translate("hummock", "Level in place of a surface that is missing"), None),
            translate(
                "hummock",
                "Empty: ground that only one surface covers is left out. A height, in the unit of the CRS, counts it "
                "against that level.",
            ),
            advanced=True,
        )
        add_earth_parameters(self)
        self.add_surface_crs()
        add_table_output(self)
        add_depth_outputs(self)
        self.add_numbers(*volume_numbers())

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        check_raster_path(self.parameterAsOutputLayer(parameters, "RASTER", context))
        existing = self.read_surface(parameters, context, "EXISTING")
        design = self.read_surface(parameters, context, "DESIGN")
        progress(0.2, "surface")
        within = chosen_regions(self, existing.crs, parameters, context, feedback)
        level = optional_number(self, parameters, "MISSING_LEVEL", context)
        comparison = Comparison(
            existing,
            design,
            within,
            None if level is None else level * metres_per_height_unit(existing.crs),
            (
                self.surface_name(parameters, context, "EXISTING"),
                self.surface_name(parameters, context, "DESIGN"),
            ),
            part(progress, 0.2, 0.5),
        )
        options = chosen_study(self, existing, parameters, context, feedback, design)
        found = study(comparison, options, progress=part(progress, 0.2, 0.9))
        tell(found, feedback)
        return {**write_results(self, found, parameters, context), **write_table(self, found, parameters, context)}
