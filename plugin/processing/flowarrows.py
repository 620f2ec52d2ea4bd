"""Arrows of the way down a surface."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSink
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.paths import flow_arrows
from ..core.drainage.study import suiting_spacing
from ..core.progress import part
from .algorithm import progress_of
from .localnumbers import shown
from .parameters import number, optional_number, qgis_crs
from .versions import POINT, POINT_SOURCE
from .waterinput import WaterAlgorithm
from .waterlayers import arrow_fields, write_arrows
from .waterstyles import FLOW_ARROWS, dress_water

translate = QCoreApplication.translate


class DrawArrows(WaterAlgorithm):
    """``hummock:flowarrows``"""

    NAME = "flowarrows"
    ICON = "flowarrows.svg"

    def title(self) -> str:
        return translate("hummock", "Arrows of flow")

    def summary(self) -> str:
        return translate("hummock", "Arrows down the slope at a stated spacing, larger where it is steeper.")

    def words(self) -> str:
        return translate("hummock", "water,flow,direction,arrows,slope,aspect,downhill,drainage")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Puts a point with the direction and the slope of the way down at the places of a square grid. The "
            "style turns an arrow by the direction and sizes it by the slope.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. The direction is the mean gradient, by "
            "area, of the triangles around: within the window.</p>"
            "<p><b>Columns:</b> direction, degrees clockwise from grid north, and slope_pct, the fall over run in "
            "percent.</p>"
            "<p><b>What can go wrong:</b> single triangles between points half a metre apart are as steep as their "
            "noise, some percent; with a window of 0 the arrows show that. A wide window hides kerbs and ditches. On "
            "level ground there is no arrow.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            number("SPACING", translate("hummock", "Spacing of the arrows (m)"), None, 1e-3),
            translate("hummock", "Empty: one that suits the size of the site."),
        )
        self.add(
            number("WINDOW", translate("hummock", "Mean gradient over (m)"), 3.0, 0.0),
            translate("hummock", "The width of the window around each place. 0: the triangle there alone."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Arrows of flow"), POINT_SOURCE),
            translate("hummock", "A point for each arrow."),
        )
        self.add_numbers(
            ("ARROWS", translate("hummock", "Number of arrows")),
            ("SPACING_USED", translate("hummock", "Spacing of the arrows (m)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        progress(0.4, "surface")
        spacing = optional_number(self, parameters, "SPACING", context) or suiting_spacing(tin)
        arrows = flow_arrows(tin, spacing, self.parameterAsDouble(parameters, "WINDOW", context))
        progress(0.7, "layers")
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, arrow_fields(), POINT, qgis_crs(tin.crs))
        write_arrows(arrows, tin.crs, sink, part(progress, 0.7, 1.0))
        dress_water(context, place, FLOW_ARROWS)
        feedback.pushInfo(
            shown(translate("hummock", "Arrows: {count}, {spacing:g} m apart."), count=len(arrows.xy), spacing=spacing)
        )
        return {"OUTPUT": place, "ARROWS": len(arrows.xy), "SPACING_USED": spacing}
