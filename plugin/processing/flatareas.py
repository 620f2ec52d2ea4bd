"""Areas of a surface that are flatter than a limit."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSink
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.level_ground import flat_areas
from ..core.drainage.study import WaterOptions
from .algorithm import progress_of
from .localnumbers import shown
from .parameters import number, qgis_crs
from .versions import MULTIPOLYGON, POLYGON_SOURCE
from .waterinput import WaterAlgorithm
from .waterlayers import flat_fields, write_flat
from .waterstyles import FLAT_AREAS, dress_water

translate = QCoreApplication.translate


class FindFlatAreas(WaterAlgorithm):
    """``hummock:flatareas``"""

    NAME = "flatareas"
    ICON = "flatareas.svg"

    def title(self) -> str:
        return translate("hummock", "Areas flatter than a limit")

    def summary(self) -> str:
        return translate("hummock", "Marks ground that falls too little to shed water.")

    def words(self) -> str:
        return translate("hummock", "water,flat,level,slope,fall,minimum slope,drainage,puddles")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Joins the triangles whose slope is below a limit to areas.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. The slope is that of the mean gradient, "
            "by area, of the triangles within the window around each one. The limit is yours: local codes and the kind "
            "of paving decide what is too flat.</p>"
            "<p><b>Columns:</b> number (1 is the largest), area_m2, limit_pct.</p>"
            "<p><b>What can go wrong:</b> single triangles of a survey with points every half metre are as steep as "
            "its noise, some percent: with a window of 0 flat ground goes unseen. A wide window averages a ridge or "
            "a channel to level ground.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        usual = WaterOptions()
        self.add_surface()
        self.add(
            number("LIMIT", translate("hummock", "Flatter than (%)"), 100 * usual.flat_limit, 0.0),
            translate("hummock", "Fall over run in percent."),
        )
        self.add(
            number("WINDOW", translate("hummock", "Mean gradient over (m)"), usual.flat_window, 0.0),
            translate("hummock", "The width of the window around each triangle. 0: the triangle alone."),
        )
        self.add(
            number("MIN_AREA", translate("hummock", "Least area (m²)"), usual.flat_area, 0.0),
            translate("hummock", "Smaller areas are left out."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Flat areas"), POLYGON_SOURCE),
            translate("hummock", "A feature for each connected area, the largest first."),
        )
        self.add_numbers(
            ("AREAS", translate("hummock", "Number of areas")),
            ("AREA", translate("hummock", "Flat area (m²)")),
            ("SHARE", translate("hummock", "Share of the surface (%)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        progress(0.4, "surface")
        percent, window, least = (
            self.parameterAsDouble(parameters, name, context) for name in ("LIMIT", "WINDOW", "MIN_AREA")
        )
        areas = flat_areas(tin, percent / 100, window, least)
        progress(0.8, "layers")
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, flat_fields(), MULTIPOLYGON, qgis_crs(tin.crs)
        )
        write_flat(areas, percent / 100, tin.crs, sink)
        dress_water(context, place, FLAT_AREAS)
        total = float(sum(area.plan_area for area in areas))
        share = 100 * total / tin.plan_area
        feedback.pushInfo(
            shown(
                translate(
                    "hummock",
                    "Areas flatter than {limit:g} %: {count}, together {area:.1f} m², {share:.1f} % of the surface.",
                ),
                limit=percent,
                count=len(areas),
                area=total,
                share=share,
            )
        )
        progress(1.0, "layers")
        return {"OUTPUT": place, "AREAS": len(areas), "AREA": total, "SHARE": share}
