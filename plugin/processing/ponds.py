"""Pits and ponds of a surface."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSink
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.flow import build_flow
from ..core.drainage.inlet_list import inlets_on
from ..core.drainage.ponds import find_ponds
from ..core.drainage.shores import pond_shores
from ..core.drainage.spills import spill_paths
from ..core.progress import part
from .algorithm import page_language, progress_of, report
from .localnumbers import shown_of_water
from .parameters import qgis_crs
from .versions import LINE_SOURCE, LINE_Z, MULTIPOLYGON, POINT_SOURCE, POINT_Z, POLYGON_SOURCE
from .waterinput import WaterAlgorithm
from .waterlayers import (
    pond_fields,
    pond_point_fields,
    spill_fields,
    write_pond_points,
    write_ponds,
    write_spills,
)
from .waterstyles import POND_POINTS, PONDS, SPILLS, dress_water

translate = QCoreApplication.translate


class FindPonds(WaterAlgorithm):
    """``hummock:ponds``"""

    NAME = "ponds"
    ICON = "ponds.svg"

    def title(self) -> str:
        return translate("hummock", "Pits and ponds")

    def summary(self) -> str:
        return translate("hummock", "Finds where water stands, how deep and how much, and where it spills to.")

    def words(self) -> str:
        return translate(
            "hummock", "water,pond,puddle,pit,sink,depression,hollow,ponding,standing water,volume,spill,drainage"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Fills every hollow of the surface to its brim and says which of them count: a hollow that the noise "
            "of the heights explains is no pond. Ponds that join as they rise are parts of a larger one; those whose "
            "sills are at one height join at once.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it, heights with independent normal errors "
            "of the standard deviation given, and ground that lets no water in. Water leaves over the rim of the "
            "surface and through inlets.</p>"
            "<p><b>Columns:</b> pond (P1 is the deepest) and parent, the pond it is a part of; depth_m at the pit with "
            "sigma_m, its standard deviation from those of pit and spill point; chance_pct, the probability that noise "
            "alone makes such a hollow anywhere in the survey; area_m2 and volume_m3, exact on the triangles; level, "
            "the height of the full pond in the unit of the CRS; points, how many of the survey are under water; "
            "spills_to, a pond, an inlet or the rim.</p>"
            "<p><b>What can go wrong:</b> errors that neighbours share, as from one bad fix over a minute, make wider "
            "hollows than this allows for: set a least depth. At the rim of a survey a pond can run out "
            "over ground that nobody measured. Gullies and soakaways drain ponds only when they are given.</p>"
            "<p>Ponds are an indication from the surface as surveyed, no drainage design: infiltration, pipes and "
            "local codes are matters of licensed practice.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_noise()
        self.add_inlets()
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Ponds"), POLYGON_SOURCE),
            translate("hummock", "The water of each full pond; parts lie over the pond they are parts of."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "PITS", translate("hummock", "Pits and spill points"), POINT_SOURCE, optional=True
            ),
            translate("hummock", "The lowest point of each pond and the one over which it spills."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "SPILLS", translate("hummock", "Where ponds spill to"), LINE_SOURCE, optional=True
            ),
            translate("hummock", "The way of the overflow to the next pond, an inlet or the rim."),
        )
        self.add_page(
            "HTML",
            translate("hummock", "Report of the ponds (HTML)"),
            translate("hummock", "A map and a table of the ponds, with the method, its source and its limits."),
        )
        self.add_numbers(
            ("PONDS", translate("hummock", "Number of ponds")),
            ("PIT_COUNT", translate("hummock", "Number of pits, those of noise too")),
            ("AREA", translate("hummock", "Area under water when all are full (m²)")),
            ("VOLUME", translate("hummock", "Water in all full ponds (m³)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        inlets = self.read_inlets(tin, parameters, context, feedback, part(progress, 0.2, 0.3))
        taken, said = inlets_on(tin, inlets, self.parameterAsDouble(parameters, "REACH", context))
        report(said, feedback)
        flow = build_flow(tin, taken)
        options = self.pond_options(tin, parameters, context, feedback)
        ponds = find_ponds(flow, options, part(progress, 0.3, 0.7))
        shores, crs = pond_shores(flow, ponds), qgis_crs(tin.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, pond_fields(), MULTIPOLYGON, crs)
        write_ponds(ponds, shores, inlets, tin.crs, sink)
        dress_water(context, place, PONDS)
        outer = ponds.outermost
        results: Dict[str, Any] = {
            "OUTPUT": place,
            "PONDS": len(ponds),
            "PIT_COUNT": len(flow.pits),
            "AREA": float(ponds.area[outer].sum()),
            "VOLUME": float(ponds.volume[outer].sum()),
        }
        progress(0.8, "layers")
        sink, place = self.parameterAsSink(parameters, "PITS", context, pond_point_fields(), POINT_Z, crs)
        if sink is not None:
            write_pond_points(ponds, tin.crs, sink)
            dress_water(context, place, POND_POINTS)
            results["PITS"] = place
        sink, place = self.parameterAsSink(parameters, "SPILLS", context, spill_fields(), LINE_Z, crs)
        if sink is not None:
            write_spills(ponds, spill_paths(flow, ponds), inlets, tin.crs, sink)
            dress_water(context, place, SPILLS)
            results["SPILLS"] = place
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.water_page import write_ponds_page  # brings matplotlib, for which QGIS need not wait

            write_ponds_page(flow, ponds, shores, inlets, options, path, *page_language())
            results["HTML"] = path
        feedback.pushInfo(
            shown_of_water(
                translate(
                    "hummock",
                    "Pits: {PIT_COUNT}; ponds that noise does not explain: {PONDS}, {AREA:.1f} m² and {VOLUME:.2f} m³ "
                    "when all are full.",
                ),
                **results,
            )
        )
        progress(1.0, "layers")
        return results
