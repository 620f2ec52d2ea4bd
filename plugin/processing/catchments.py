"""Catchments of inlets, ponds and outlets, with channels and ridges."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterFeatureSink
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.study import WaterOptions, WaterStudy, study_water
from ..core.progress import Progress, part
from .algorithm import page_language, progress_of, report
from .localnumbers import shown
from .parameters import number, qgis_crs
from .versions import LINE_SOURCE, LINE_Z, MULTIPOLYGON, POLYGON_SOURCE
from .waterinput import WaterAlgorithm
from .waterlayers import (
    catchment_fields,
    channel_fields,
    ridge_fields,
    write_catchments,
    write_channels,
)
from .waterstyles import CATCHMENTS, CHANNELS, RIDGES, dress_water

translate = QCoreApplication.translate


class FindCatchments(WaterAlgorithm):
    """``hummock:catchments``"""

    NAME = "catchments"
    ICON = "catchments.svg"

    def title(self) -> str:
        return translate("hummock", "Catchments")

    def summary(self) -> str:
        return translate("hummock", "Divides a surface by where its water goes: inlets, ponds, outlets, the rim.")

    def words(self) -> str:
        return translate(
            "hummock",
            "water,catchment,watershed,basin,drainage area,inlet,gully,outlet,channel,ridge,divide,contributing area",
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Divides the surface along lines of steepest descent by where its water goes: to an inlet, a pond, an "
            "outlet on the rim where a channel leaves, or over the rest of the rim. The areas add up to that of the "
            "surface. With it come the channels and, between their grounds, the ridges.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Inlets are points or lines; for the "
            "catchments of points on a line give the line and the length of its stretches: each has its own "
            "catchment.</p>"
            "<p><b>Columns:</b> name (the inlet's; P1, P2 … ponds by depth; O1, O2 … outlets and H1, H2 … pits by "
            "area), drains_to (inlet, pond, outlet, rim, pit), area_m2 in plan and share_pct of the surface, "
            "nowhere_m2 and nowhere_pct, the part of it whose water stays in a pond until that is full, and out_x and "
            "out_y, where it goes, in the CRS. Channels have area_m2, the ground that drains through their end.</p>"
            "<p><b>What can go wrong:</b> ground beyond the rim was not measured, so its water is missing. The "
            "catchments of a noisy survey are no finer than its points; the noise given keeps pits of noise from "
            "dividing them. An inlet takes all that comes near it: whether it can swallow that is not asked.</p>"
            "<p>Catchments are no drainage design: local codes and licensed practice decide.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_inlets()
        self.add(
            number("STRETCH", translate("hummock", "Stretches of line inlets (m)"), None, 0.01),
            translate(
                "hummock",
                "Each stretch of a line, around its station, is an inlet of its own. Empty: each line is one inlet.",
            ),
        )
        self.add_noise()
        self.add_hollows()
        usual = WaterOptions()
        self.add(
            number(
                "MIN_OUTLET", translate("hummock", "Outlets on the rim: least catchment (m²)"), usual.min_outlet, 0.0
            ),
            translate("hummock", "Smaller ones are counted together with the rest of the rim."),
        )
        self.add(
            number(
                "CHANNEL", translate("hummock", "Channels: least ground that drains to them (m²)"), usual.channel, 0.0
            ),
            translate("hummock", "Smaller gives more channels, and ridges between them."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Catchments"), POLYGON_SOURCE),
            translate("hummock", "A feature for each, the largest first."),
        )
        for name, label, text in (
            (
                "CHANNELS",
                translate("hummock", "Channels"),
                translate("hummock", "Lines in the direction of the water."),
            ),
            ("RIDGES", translate("hummock", "Ridges"), translate("hummock", "Where the water of two channels parts.")),
        ):
            self.add(QgsProcessingParameterFeatureSink(name, label, LINE_SOURCE, optional=True), text)
        self.add_page(
            "HTML",
            translate("hummock", "Report of the water (HTML)"),
            translate("hummock", "Maps and tables of paths, ponds and catchments, with method, sources and limits."),
        )
        self.add_numbers(
            ("CATCHMENTS", translate("hummock", "Number of catchments")),
            ("AREA", translate("hummock", "Area of the surface (m²)")),
            ("NOWHERE", translate("hummock", "Area that drains nowhere until ponds are full (m²)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        inlets = self.read_inlets(tin, parameters, context, feedback, part(progress, 0.1, 0.15))
        options = WaterOptions(
            self.pond_options(tin, parameters, context, feedback), hollows=self.hollows(parameters, context),
        )  # fmt: skip
        numbers = {
            field: self.parameterAsDouble(parameters, name, context)
            for name, field in (("REACH", "reach"), ("MIN_OUTLET", "min_outlet"), ("CHANNEL", "channel"))
        }
        study = study_water(tin, inlets, replace(options, **numbers), part(progress, 0.15, 0.7))
        report(study.messages, feedback)
        results = self._write(study, parameters, context, part(progress, 0.7, 0.9))
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.water_page import write_water_page  # brings matplotlib, for which QGIS need not wait

            write_water_page(study, path, *page_language())
            results["HTML"] = path
        feedback.pushInfo(
            shown(
                translate(
                    "hummock",
                    "Catchments: {CATCHMENTS}, together {AREA:.1f} m²; {NOWHERE:.1f} m² of it drain nowhere.",
                ),
                **results,
            )
        )
        progress(1.0, "layers")
        return results

    def _write(
        self, study: WaterStudy, parameters: Dict[str, Any], context: QgsProcessingContext, progress: Progress
    ) -> Dict[str, Any]:
        tin, crs = study.tin, qgis_crs(study.tin.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, catchment_fields(), MULTIPOLYGON, crs)
        write_catchments(study.shares, tin, sink, part(progress, 0.0, 0.6))
        dress_water(context, place, CATCHMENTS)
        results: Dict[str, Any] = {
            "OUTPUT": place,
            "CATCHMENTS": len(study.shares),
            "AREA": float(study.shares.area.sum()),
            "NOWHERE": study.nowhere,
        }
        for name, fields, lines, style in (
            ("CHANNELS", channel_fields(), study.channels, CHANNELS),
            ("RIDGES", ridge_fields(), study.ridges, RIDGES),
        ):
            sink, place = self.parameterAsSink(parameters, name, context, fields, LINE_Z, crs)
            if sink is not None:
                write_channels(lines, tin.crs, sink, part(progress, 0.6, 0.8))
                dress_water(context, place, style)
                results[name] = place
        progress(1.0, "layers")
        return results
