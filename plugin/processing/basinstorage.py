"""How much a basin holds: stage, area and volume."""

from __future__ import annotations

from typing import Any, Dict, Optional

import numpy as np
from qgis.core import (
    QgsGeometry,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterPoint,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.basin import Basin, examine_basin
from ..core.georeference.crs import plan_unit
from ..core.progress import part
from ..core.units import heights_to_crs_units, metres_per_unit, to_crs_units
from .algorithm import page_language, progress_of, report
from .certainty import add_certainty, first_certainty
from .depthstyles import dress_depths, dress_places
from .localnumbers import shown_of_water
from .parameters import number, qgis_crs
from .sinks import add_feature, fields_of
from .surfaceinput import SurfaceAlgorithm
from .versions import MULTIPOLYGON, NO_GEOMETRY, POINT_SOURCE, POINT_Z, POLYGON_SOURCE, TABLE_SOURCE, WHOLE_NUMBER
from .volumelayers import class_fields, write_depth_polygons
from .volumeresults import add_html_output

translate = QCoreApplication.translate


class BasinStorage(SurfaceAlgorithm):
    """``hummock:basinstorage``"""

    NAME = "basinstorage"
    ICON = "basinstorage.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Storage of a basin")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "Area and volume of the water in a basin by its level, from the pit to the spill.")

    def words(self) -> str:
        return translate("hummock", "basin,pond,storage,stage,volume,capacity,spill,water level,retention,detention")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Finds the pit of a basin and the lowest place where water leaves it, and computes area and volume of "
            "the water at even levels between them, exactly. Pits inside join as the water rises: it is the outermost "
            "of the ponds that “Pits and ponds” finds without noise where the water of the place runs.</p><p><b>It "
            "assumes</b> a 2DM mesh as “Build the surface” writes it that takes in the basin's whole rim. A void in "
            "the surface, and its edge, let water out. Without a place the basin is that of the lowest place of the "
            "surface.</p><p><b>Outputs:</b> the curve as a table (level in the unit of the CRS, the rest metric), the "
            "water at the spill level by depth, pit and spill as points, and a report with the curve.</p><p><b>How "
            "sure:</b> noise of the points, ground between them, and the noise of the one height at which the basin "
            "spills, which counts over the whole water.</p><p><b>What can go wrong:</b> a wrong point on the rim sets "
            "the spill: look at it. This is the shape of the ground only, without inflow, outlets, seepage or "
            "freeboard; a licensed engineer designs storage.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterPoint(
                "PLACE", translate("hummock", "A place in the basin (empty: the lowest of the surface)"), optional=True
            ),
            translate("hummock", "From here water runs down to the pit."),
        )
        self.add(
            number("STEPS", translate("hummock", "Levels of the curve"), 50, 1, 10_000, WHOLE_NUMBER),
            translate("hummock", "So many even steps from the pit to the spill."),
        )
        add_certainty(self, second=False, offset=False)
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink(
                "TABLE", translate("hummock", "Stage, area and volume"), TABLE_SOURCE, optional=True
            ),
            translate("hummock", "Level in the unit of the CRS, above_pit_m, area_m2 and volume_m3."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "WATER", translate("hummock", "Water at the spill level"), POLYGON_SOURCE, optional=True
            ),
            translate("hummock", "By class of depth."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "PLACES", translate("hummock", "Pit and spill"), POINT_SOURCE, optional=True, createByDefault=False
            ),
            translate("hummock", "The lowest place, and the place where water leaves."),
        )
        add_html_output(self)
        self.add_numbers(
            ("CAPACITY", translate("hummock", "Volume at the spill level (m³)")),
            ("CAPACITY_95", translate("hummock", "± of it, 95 % (m³)")),
            ("WATER_AREA", translate("hummock", "Area at the spill level (m²)")),
            ("PIT_LEVEL", translate("hummock", "Height of the pit (unit of the CRS)")),
            ("SPILL_LEVEL", translate("hummock", "Spill level (unit of the CRS)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        progress(0.3, "surface")
        place = None
        if parameters.get("PLACE") not in (None, ""):
            point = self.parameterAsPoint(parameters, "PLACE", context, qgis_crs(tin.crs))
            place = np.array([point.x(), point.y()]) * metres_per_unit(tin.crs)
        steps = self.parameterAsInt(parameters, "STEPS", context)
        basin = examine_basin(tin, place, steps, first_certainty(self, tin, parameters, context, feedback))
        part(progress, 0.3, 0.8)(1.0, "earthwork")
        report(basin.storage.messages, feedback)
        curve = basin.storage.curve
        pit, spill = (float(heights_to_crs_units(stage.level, tin.crs)) for stage in (curve[0], curve[-1]))
        feedback.pushInfo(
            shown_of_water(
                translate(
                    "hummock", "It holds {volume:.2f} ± {half:.2f} m³ (95 %) on {area:.1f} m², filled to {spill:.3f}."
                ),
                volume=curve[-1].volume,
                half=basin.doubt.half_95,
                area=curve[-1].area,
                spill=spill,
            )
        )
        results: Dict[str, Any] = {
            "CAPACITY": curve[-1].volume,
            "CAPACITY_95": basin.doubt.half_95,
            "WATER_AREA": curve[-1].area,
            "PIT_LEVEL": pit,
            "SPILL_LEVEL": spill,
        }
        results.update(self._write_layers(basin, parameters, context))
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.storage_page import write_storage_page  # brings matplotlib, for which QGIS need not wait

            name = self.surface_name(parameters, context)
            write_storage_page(basin, name, path, *page_language())
            results["HTML"] = path
        return results

    def _write_layers(self, basin: Basin, parameters: Dict[str, Any], context: QgsProcessingContext) -> Dict[str, Any]:
        results: Dict[str, Any] = {}
        tin, storage = basin.tin, basin.storage
        crs = qgis_crs(tin.crs)
        columns = (("level", "real"), ("above_pit_m", "real"), ("area_m2", "real"), ("volume_m3", "real"))
        sink, place = self.parameterAsSink(parameters, "TABLE", context, fields_of(columns), NO_GEOMETRY)
        if sink is not None:
            for stage in storage.curve:
                level = float(heights_to_crs_units(stage.level, tin.crs))
                above = stage.level - storage.curve[0].level
                add_feature(sink, QgsGeometry(), [level, above, stage.area, stage.volume])
            results["TABLE"] = place
        sink, place = self.parameterAsSink(parameters, "WATER", context, class_fields(), MULTIPOLYGON, crs)
        if sink is not None:
            unit = plan_unit(tin.crs)
            steps = [limit / unit.metres for limit in (0.0, *basin.limits)]
            texts = {}
            for size in range(1, len(steps) + 1):
                text = translate("hummock", "over {low} {unit} deep")
                if size < len(steps):
                    text = translate("hummock", "{low} to {high} {unit} deep")
                high = f"{steps[size]:.4g}" if size < len(steps) else ""
                texts[size] = text.format(low=f"{steps[size - 1]:.4g}", high=high, unit=unit.symbol)
            write_depth_polygons(basin.polygons, dict(enumerate(basin.depths, 1)), texts, tin.crs, sink, "water")
            met = sorted({polygon.label for polygon in basin.polygons})
            dress_depths(context, place, [(each, texts[each]) for each in met], len(steps), water=True)
            results["WATER"] = place
        fields = fields_of((("place", "text"), ("height", "real")))
        sink, place = self.parameterAsSink(parameters, "PLACES", context, fields, POINT_Z, crs)
        if sink is not None:
            for name, xyz in (("pit", storage.pit), ("spill", storage.spill)):
                x, y = to_crs_units(xyz[:2], tin.crs).tolist()
                z = float(heights_to_crs_units(xyz[2], tin.crs))
                add_feature(sink, QgsGeometry(QgsPoint(x, y, z)), [name, z])
            dress_places(context, place, "place || ' ' || format_number(height, 3)")
            results["PLACES"] = place
        return results
