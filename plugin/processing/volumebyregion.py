"""Exact volumes in each polygon of a layer, by depth class and material."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional, Tuple

from qgis.core import (
    QgsFeature,
    QgsFields,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.comparison import Comparison, Target
from ..core.earthwork.layers import Layer
from ..core.earthwork.plane import Plane
from ..core.earthwork.study import RegionStudy, Study, study
from ..core.progress import part
from ..core.surface.tin import Tin
from ..core.units import metres_per_height_unit
from .algorithm import progress_of
from .certainty import add_certainty
from .depthstyles import dress_regions
from .earthmaterials import add_earth_parameters
from .parameters import chosen_source, number, optional_number, qgis_crs
from .regionsource import read_regions
from .sinks import add_feature, fields_of
from .surfaceinput import SurfaceAlgorithm
from .versions import ANY_FIELD, MESH_SOURCE, MULTIPOLYGON, NO_GEOMETRY, POLYGON_SOURCE, TABLE_SOURCE
from .volumelayers import class_fields, class_values, layer_fields, write_layers
from .volumenumbers import volume_numbers
from .volumeresults import (
    add_depth_options,
    add_depth_outputs,
    add_table_output,
    check_raster_path,
    chosen_study,
    class_texts,
    classes_of,
    tell,
    write_results,
    write_table,
)

translate = QCoreApplication.translate

_LABEL = (
    "region || '\\n' || 'cut ' || format_number(round(cut_m3{factor}) + 0, 0) || ' ± ' || "
    "format_number(cut_95_m3{factor}, 0) || "
    "' {unit}\\n' || "  # + 0: a little less than nothing is 0, not -0
    "'fill ' || format_number(round(fill_m3{factor}) + 0, 0) || ' ± ' || format_number(fill_95_m3{factor}, 0) || "
    "' {unit}'"
)


class VolumeByRegion(SurfaceAlgorithm):
    """``hummock:volumebyregion``"""

    NAME = "volumebyregion"
    ICON = "volumebyregion.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Volume by region")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "Exact cut and fill in each polygon of a layer, by depth and by material.")

    def words(self) -> str:
        return translate(
            "hummock", "volume,earthwork,cut,fill,region,parcel,phase,polygon,quantities,depth,material,rock,topsoil"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Computes cut, fill, net, areas and mean depths between two surfaces, or from a surface to a level, in "
            "each polygon of a layer: parcels, phases of work, materials on the ground. The polygons' edges cut the "
            "triangles exactly, so that the regions and what is outside add up to the whole; where polygons overlap, "
            "each counts the ground and the log names them.</p>"
            "<p><b>It assumes</b> 2DM meshes in one CRS with one height datum. The polygons are brought into that CRS. "
            "<b>Materials:</b> surfaces of the tops of layers below the ground, such as rock, from above to below; cut "
            "is then parted by them. Where a layer's surface is missing the material is “not known”.</p>"
            "<p><b>Outputs:</b> the polygons with their numbers (± columns are half of the 95 % interval), tables by "
            "quantity with the parts of the doubt, by depth class, by material, depth polygons of the whole, and a "
            "report. How sure the numbers are, and what is taken off between two surveys: see “Volume between two "
            "surfaces”. Offset and noise are found once, from all of the ground, and hold for each region.</p>"
            "<p><b>What can go wrong:</b> intervals of regions do not add up: a height offset moves all of them "
            "together, noise does not. This is no payment certificate: the contract, local codes and licensed practice "
            "say what is measured. Parcels drawn here are no legal boundaries. Locate buried services before anyone "
            "digs.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface("EXISTING", translate("hummock", "Existing surface, or the earlier survey (2DM mesh)"))
        self.add_surface(
            "DESIGN", translate("hummock", "Design, or the later survey (2DM mesh)"),
            translate("hummock", "Leave it empty to compare with a level."), optional=True,
        )  # fmt: skip
        self.add(
            number("LEVEL", translate("hummock", "Level instead of a design (in the unit of the CRS)"), None),
            translate("hummock", "A height; empty where a design is given."),
        )
        self.add(
            QgsProcessingParameterFeatureSource("REGIONS", translate("hummock", "Regions"), [POLYGON_SOURCE]),
            translate("hummock", "Each polygon feature is one region, with all its parts and holes."),
        )
        self.add(
            QgsProcessingParameterField(
                "NAME_FIELD", translate("hummock", "Field with their names (empty: numbers)"),
                parentLayerParameterName="REGIONS", type=ANY_FIELD, optional=True,
            ),
            translate("hummock", "Names that come again get a number behind them."),
        )  # fmt: skip
        add_certainty(self, second=True)
        add_depth_options(self)
        self.add(
            QgsProcessingParameterMultipleLayers(
                "LAYERS", translate("hummock", "Tops of layers below the ground, from above to below"), MESH_SOURCE,
                optional=True,
            ),
            translate("hummock", "2DM meshes, such as the surface of rock; the layer's name is the material's."),
            advanced=True,
        )  # fmt: skip
        self.add(
            QgsProcessingParameterString(
                "UPPERMOST", translate("hummock", "Material at the surface"), translate("hummock", "soil")
            ),
            translate("hummock", "What is above the first of these layers."),
            advanced=True,
        )
        add_earth_parameters(self)
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Volumes by region"), POLYGON_SOURCE),
            translate("hummock", "The polygons with cut, fill, net, their ± (95 %), areas and mean depths."),
        )
        add_table_output(self, translate("hummock", "Volumes by region and quantity"))
        for name, label, text in (
            ("CLASSES", translate("hummock", "Volumes by region and depth"), translate("hummock", "Per depth class.")),
            ("MATERIALS", translate("hummock", "Cut by region and material"), translate("hummock", "Per material.")),
        ):
            self.add(
                QgsProcessingParameterFeatureSink(name, label, TABLE_SOURCE, optional=True, createByDefault=False), text
            )
        add_depth_outputs(self)
        self.add_numbers(*volume_numbers())

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        check_raster_path(self.parameterAsOutputLayer(parameters, "RASTER", context))
        existing = self.read_surface(parameters, context, "EXISTING")
        design, name = self._design(existing, parameters, context)
        progress(0.2, "surface")
        source = chosen_source(self, parameters, "REGIONS", context)
        field = self.parameterAsString(parameters, "NAME_FIELD", context)
        regions, features = read_regions(source, existing.crs, field, context, feedback)
        names = (self.surface_name(parameters, context, "EXISTING"), name)
        comparison = Comparison(existing, design, names=names, progress=part(progress, 0.2, 0.5))
        options = replace(
            chosen_study(self, existing, parameters, context, feedback, comparison.design_tin),
            uppermost=self.parameterAsString(parameters, "UPPERMOST", context),
            layers=self._layers(parameters, context),
        )
        found = study(comparison, options, regions, part(progress, 0.2, 0.9))
        tell(found, feedback)
        results = write_results(self, found, parameters, context)
        results.update(write_table(self, found, parameters, context))
        results.update(self._write_tables(found, parameters, context))
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, region_fields(), MULTIPOLYGON, qgis_crs(existing.crs)
        )
        for each, feature in zip(found.regions, features):
            add_feature(sink, _many(feature), region_values(each))
        dress_regions(context, place, _LABEL)
        return {**results, "OUTPUT": place}

    def _design(self, existing: Tin, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[Target, str]:
        level = optional_number(self, parameters, "LEVEL", context)
        if (level is None) != self.has_surface(parameters, context, "DESIGN"):
            raise QgsProcessingException(
                translate("hummock", "Give a design or a level to compare with: one of them, not both.")
            )
        if level is None:
            return self.read_surface(parameters, context, "DESIGN"), self.surface_name(parameters, context, "DESIGN")
        name = translate("hummock", "level {level:.3f}").format(level=level)
        return Plane(level * metres_per_height_unit(existing.crs)), name

    def _layers(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[Layer, ...]:
        found: List[Layer] = []
        for mesh in self.parameterAsLayerList(parameters, "LAYERS", context) or []:
            found.append(Layer(mesh.name(), self.read_mesh(mesh, mesh.source(), parameters, context)))
        return tuple(found)

    def _write_tables(self, found: Study, parameters: Dict[str, Any], context: QgsProcessingContext) -> Dict[str, Any]:
        results: Dict[str, Any] = {}
        whole = translate("hummock", "all of the ground compared")
        sink, place = self.parameterAsSink(parameters, "CLASSES", context, class_fields(region=True), NO_GEOMETRY)
        if sink is not None:
            texts = class_texts(found)
            rows = [(each.part.name, each.depths) for each in found.regions] + [(whole, found.depths)]
            for region, depths in rows:
                for number_of, depth in zip(classes_of(found), depths):
                    add_feature(sink, QgsGeometry(), [region, *class_values(number_of, depth, texts[number_of])])
            results["CLASSES"] = place
        sink, place = self.parameterAsSink(parameters, "MATERIALS", context, layer_fields(), NO_GEOMETRY)
        if sink is not None:
            for each in found.regions:
                if each.layers is not None:
                    write_layers(each.part.name, each.layers, sink)
            if found.layers is not None:
                write_layers(whole, found.layers, sink)
            results["MATERIALS"] = place
        return results


def region_fields() -> QgsFields:
    names = (
        "cut_m3", "cut_95_m3", "fill_m3", "fill_95_m3", "net_m3", "net_95_m3", "cut_area_m2", "fill_area_m2",
        "compared_m2", "not_compared_m2", "mean_cut_m", "mean_fill_m",
    )  # fmt: skip
    return fields_of((("region", "text"), *((name, "real") for name in names)))


def region_values(each: RegionStudy) -> List[Any]:
    found, doubt = each.part, each.doubt
    told = [value for part in (doubt.cut, doubt.fill, doubt.net) for value in (part.value, part.half_95)]
    return [
        found.name, *told, found.cut_area, found.fill_area, found.common_area, max(0.0, found.uncovered_area),
        doubt.cut.value / found.cut_area if found.cut_area > 0 else None,
        doubt.fill.value / found.fill_area if found.fill_area > 0 else None,
    ]  # fmt: skip


def _many(feature: QgsFeature) -> Any:
    geometry = feature.geometry()
    geometry.convertToMultiType()
    return geometry
