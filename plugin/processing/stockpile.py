"""Stockpiles and pits: the volume between a surface and the base that a toe or rim line spans."""

from __future__ import annotations

from typing import Any, Dict, Iterator, List, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsFeature,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsPolygon,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.comparison import Comparison
from ..core.earthwork.ring import BaseKind, ring_base
from ..core.earthwork.study import Certainty, Study, StudyOptions, study
from ..core.progress import Progress, part
from ..core.surface.tin import Tin
from ..core.units import to_crs_units
from .algorithm import page_language, progress_of, report
from .certainty import add_certainty, first_certainty, offset_sigma
from .depthstyles import dress_regions
from .drawnsource import drawn_parts
from .localnumbers import shown
from .parameters import chosen_source, qgis_crs
from .sinks import add_feature, fields_of
from .surfaceinput import SurfaceAlgorithm
from .versions import ANY_FIELD, LINE_SOURCE, POLYGON, POLYGON_SOURCE, is_null
from .volumeresults import add_html_output

translate = QCoreApplication.translate

KINDS = (BaseKind.SURFACE, BaseKind.PLANE, BaseKind.LOWEST, BaseKind.HIGHEST)

_LABEL = (
    "name || '\\n' || 'above ' || format_number(round(above_m3{factor}, 1) + 0, 1) || ' ± ' || "
    "format_number(above_95_m3{factor}, 1) || ' {unit}\\n' || "  # + 0: a little less than nothing is 0, not -0
    "'below ' || format_number(round(below_m3{factor}, 1) + 0, 1) || ' ± ' || "
    "format_number(below_95_m3{factor}, 1) || ' {unit}'"
)


class StockpileVolume(SurfaceAlgorithm):
    """``hummock:stockpile``"""

    NAME = "stockpile"
    ICON = "stockpile.svg"
    GROUP_ID = "earthwork"

    def title(self) -> str:
        return translate("hummock", "Stockpile or pit volume")

    def group(self) -> str:
        return translate("hummock", "Earthwork")

    def summary(self) -> str:
        return translate("hummock", "Exact volume above and below the base that a toe or rim line spans.")

    def words(self) -> str:
        return translate(
            "hummock", "stockpile,heap,pile,pit,volume,toe,rim,base,inventory,tonnage,excavation,earthwork"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Spans a base inside each closed line (the toe of a stockpile, the rim of a pit) and computes what of "
            "the surface stands above it and what is missing below it, exactly. Bases: <b>triangles through the "
            "line</b>, which follow uneven ground around; the <b>best-fit plane</b> of the line, for a pad built "
            "even; a <b>level</b> at its lowest or highest place.</p><p><b>It assumes</b> a 2DM mesh as “Build the "
            "surface” writes it, and lines drawn at the toe or rim itself, in a polygon or line layer, one feature "
            "each. A line is laid on the surface to get its heights, or keeps its own Z where you say so. Breaklines "
            "along toe and crest make the surface right.</p><p><b>Columns:</b> above_m3 and below_m3 with their ± "
            "(half of the 95 % interval), areas, the base's lowest and highest height, not_measured_m2 (ground inside "
            "the line without surface).</p><p><b>How sure:</b> noise of the points and of the base's line, ground "
            "between the points, and, for a line with its own heights, a height offset times the area.</p><p><b>What "
            "can go wrong:</b> the base under a heap is a guess, unless the ground was surveyed before it was heaped: "
            "then use “Volume between two surfaces”. A toe drawn too wide counts ground, too narrow leaves out the "
            "foot. This is no payment certificate; for tonnage measure the density.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterFeatureSource(
                "LINES", translate("hummock", "Toe or rim lines"), [POLYGON_SOURCE, LINE_SOURCE]
            ),
            translate("hummock", "Polygons, or lines that are closed; one feature a stockpile or pit."),
        )
        self.add(
            QgsProcessingParameterField(
                "NAME_FIELD", translate("hummock", "Field with their names (empty: numbers)"),
                parentLayerParameterName="LINES", type=ANY_FIELD, optional=True,
            ),
            translate("hummock", "What the results call them."),
        )  # fmt: skip
        kinds = [
            translate("hummock", "triangles through the line"),
            translate("hummock", "best-fit plane of the line"),
            translate("hummock", "level at its lowest place"),
            translate("hummock", "level at its highest place"),
        ]
        self.add(
            QgsProcessingParameterEnum("BASE", translate("hummock", "Base"), kinds, defaultValue=0),
            translate("hummock", "What lies under the heap, or lay over the pit."),
        )
        self.add(
            QgsProcessingParameterBoolean(
                "OWN_HEIGHTS", translate("hummock", "The lines have heights of their own (Z)"), defaultValue=False
            ),
            translate("hummock", "Otherwise they are laid on the surface. Z is in the unit of the CRS of the surface."),
        )
        add_certainty(self, second=False)
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Stockpiles and pits"), POLYGON_SOURCE),
            translate("hummock", "The ground inside each line with the volumes above and below its base."),
        )
        add_html_output(self)
        self.add_numbers(
            ("COUNT", translate("hummock", "Stockpiles and pits")),
            ("ABOVE", translate("hummock", "Above the bases, all together (m³)")),
            ("BELOW", translate("hummock", "Below the bases, all together (m³)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        progress(0.2, "surface")
        found = list(self._studies(tin, parameters, context, feedback, part(progress, 0.2, 0.9)))
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, _fields(), POLYGON, qgis_crs(tin.crs))
        for name, ring, each in found:
            x, y = to_crs_units(np.vstack([ring, ring[:1]])[:, :2], tin.crs).T.tolist()
            add_feature(sink, QgsGeometry(QgsPolygon(QgsLineString(x, y))), _values(name, each))
            text = translate(
                "hummock",
                "{name}: {above:.2f} ± {above_95:.2f} m³ above its base, {below:.2f} ± {below_95:.2f} m³ below.",
            )
            cut, fill = each.doubt.cut, each.doubt.fill
            feedback.pushInfo(
                shown(text, name=name, above=fill.value, above_95=fill.half_95, below=cut.value, below_95=cut.half_95)
            )
        dress_regions(context, place, _LABEL)
        results: Dict[str, Any] = {
            "OUTPUT": place,
            "COUNT": len(found),
            "ABOVE": sum(each.volume.fill for _, _, each in found),
            "BELOW": sum(each.volume.cut for _, _, each in found),
        }
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.volume_page import write_volume_pages  # brings matplotlib, for which QGIS need not wait

            title = translate("hummock", "Stockpiles and pits on {name}").format(
                name=self.surface_name(parameters, context)
            )
            studies = [(name, each) for name, _, each in found]
            write_volume_pages(title, studies, path, *page_language())
            results["HTML"] = path
        return results

    def _studies(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Iterator[Tuple[str, np.ndarray, Study]]:
        """Name, line in metres and comparison of each feature."""
        kind = KINDS[self.parameterAsEnum(parameters, "BASE", context)]
        own = self.parameterAsBoolean(parameters, "OWN_HEIGHTS", context)
        certainty = first_certainty(self, tin, parameters, context, feedback)
        offset = offset_sigma(self, parameters, context) if own else 0.0
        lines = self._lines(tin, own, parameters, context, feedback)
        for i, (name, ring) in enumerate(lines):
            progress(i / len(lines), "earthwork")
            base, said = ring_base(tin, ring if own else ring[:, :2], kind)
            report(said, feedback)
            options = StudyOptions(
                existing=Certainty(certainty.sigma, certainty.drift, certainty.drift_length),
                design=certainty,
                offset_sigma=offset,
                two_surveys=False,  # the base is made of the surface
                drawn=bool(parameters.get("HTML")),
            )
            names = (translate("hummock", "base of {name}").format(name=name), self.surface_name(parameters, context))
            yield name, ring, study(Comparison(base, tin, names=names), options)

    def _lines(
        self,
        tin: Tin,
        own: bool,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> List[Tuple[str, np.ndarray]]:
        """Names and rings (k, 3) in metres, not closed."""
        source = chosen_source(self, parameters, "LINES", context)
        label = source.sourceName() or "LINES"
        field = self.parameterAsString(parameters, "NAME_FIELD", context)
        found: List[Tuple[str, np.ndarray]] = []
        for feature, parts in drawn_parts(source, tin.crs, context, feedback, heights=own):
            ring = self._ring(feature, parts, own, label)
            value = feature[field] if field else None
            found.append((str(len(found) + 1) if is_null(value) else str(value), ring))
        if not found:
            raise QgsProcessingException(
                translate(
                    "hummock", "{layer}: there are no lines in it; draw one around each stockpile or pit."
                ).format(layer=label)
            )
        return found

    def _ring(self, feature: QgsFeature, parts: List[np.ndarray], own: bool, label: str) -> np.ndarray:
        if len(parts) != 1 or not np.array_equal(parts[0][0, :2], parts[0][-1, :2]):
            raise QgsProcessingException(
                translate(
                    "hummock",
                    "{layer}: feature {id} is not one closed line (parts: {count}); close it, without holes.",
                ).format(layer=label, id=feature.id(), count=len(parts))
            )
        if own and np.any(np.isnan(parts[0][:, 2])):
            raise QgsProcessingException(
                translate("hummock", "{layer}: feature {id} has no heights (Z); switch their use off.").format(
                    layer=label, id=feature.id()
                )
            )
        return parts[0][:-1]


def _fields() -> QgsFields:
    names = (
        "above_m3", "above_95_m3", "below_m3", "below_95_m3", "above_m2", "below_m2", "base_m2", "base_low_m",
        "base_high_m", "highest_m", "deepest_m", "not_measured_m2",
    )  # fmt: skip
    return fields_of((("name", "text"), *((name, "real") for name in names)))


def _values(name: str, found: Study) -> List[Any]:
    volume, doubt, base = found.volume, found.doubt, found.comparison.existing
    low, high = base.height_range
    depths = np.concatenate([(p.second_height - p.first_height).ravel() for p in found.comparison.pieces()])
    return [
        name, volume.fill, doubt.fill.half_95, volume.cut, doubt.cut.half_95, volume.fill_area, volume.cut_area,
        base.plan_area, low, high, max(0.0, float(depths.max())), max(0.0, -float(depths.min())), volume.existing_only,
    ]  # fmt: skip
