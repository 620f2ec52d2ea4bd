"""What a change of the ground does to its water."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, NamedTuple, Optional, Sequence

import numpy as np
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterMeshLayer,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.analysis import Drainage, DrainageChange, Moved, analyse, compare
from ..core.drainage.catchments import Outlet, find_catchments
from ..core.drainage.destinations import Destination, destination_polygons
from ..core.drainage.inlet_list import Inlet, inlets_on
from ..core.drainage.paths import trace_paths
from ..core.drainage.ponds import PondOptions
from ..core.drainage.rings import polygons_of
from ..core.drainage.shores import pond_shores
from ..core.drainage.steps import PathEnd
from ..core.drainage.study import Hollows, grid_places, suiting_spacing
from ..core.handover.water import OUTLET_WORDS
from ..core.progress import Progress, part
from ..core.surface.locate import locate
from ..core.surface.tin import Tin
from ..core.units import metres_per_unit
from .algorithm import page_language, progress_of, report
from .localnumbers import shown_of_water
from .parameters import number, optional_number, qgis_crs
from .sinks import add_feature, counted, fields_of
from .versions import (
    LINE_SOURCE,
    LINE_Z,
    MULTIPOLYGON,
    NO_GEOMETRY,
    POLYGON_GEOMETRY,
    POLYGON_SOURCE,
    TABLE_SOURCE,
)
from .waterinput import WaterAlgorithm
from .waterlayers import line_z, multipolygon, path_fields, path_values
from .waterstyles import CHANGED_PATHS, CHANGED_PONDS, MOVED_GROUND, dress_water

translate = QCoreApplication.translate


class _Piece(NamedTuple):
    """Ground whose water goes elsewhere."""

    moved: Moved
    shape: QgsGeometry


class CompareWater(WaterAlgorithm):
    """``hummock:waterchange``"""

    NAME = "waterchange"
    ICON = "waterchange.svg"

    def title(self) -> str:
        return translate("hummock", "What a change does to the water")

    def summary(self) -> str:
        return translate("hummock", "Compares ponds, catchments and paths on the ground and on a design.")

    def words(self) -> str:
        return translate(
            "hummock", "water,change,design,difference,compare,before,after,ponds,catchments,diversion,drainage,impact"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Does the same on two surfaces, such as the ground and a design, and says what differs: ponds that are "
            "new, gone, deeper or shallower, ground whose water goes elsewhere, and paths before and after from the "
            "same places.</p>"
            "<p><b>It assumes</b> two 2DM meshes in one CRS that cover much the same ground, and the same inlets on "
            "both. A pond is the same one where the pit of one lies under the water of the other. All places of the "
            "rim are taken for one, and so are all ponds, when it is asked whether water goes elsewhere.</p>"
            "<p><b>Columns:</b> of ponds: change (new, gone, deeper, shallower, unchanged), before and after (their "
            "numbers on each surface), and the change in depth_m, area_m2 and volume_m3; of moved ground: from_what, "
            "to_what, area_m2; of paths: when (before, after) and those of “Paths of water”.</p>"
            "<p><b>What can go wrong:</b> where only one surface reaches, nothing is compared; a design that ends "
            "in the middle of the site has its rim there. Put the design into the ground first. The noise given holds "
            "for both surfaces: a design has none of its own.</p>"
            "<p>This is an indication and no drainage design. Water turned onto a neighbour's ground is a legal matter "
            "in most places: local codes and licensed practice decide.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterMeshLayer("DESIGN", translate("hummock", "Changed surface (2DM mesh)")),
            translate("hummock", "The design, or a later survey, in the same CRS."),
        )
        self.add_inlets()
        self.add_noise()
        self.add_hollows()
        self.add(
            number("SPACING", translate("hummock", "Spacing of the starts of paths (m)"), None, 1e-3),
            translate("hummock", "Empty: one that suits the size of the site."),
        )
        self.add(
            number("MIN_MOVED", translate("hummock", "Least piece of moved ground (m²)"), 1.0, 0.0),
            translate("hummock", "Smaller pieces, as along edges that are drawn twice, are left out."),
            advanced=True,
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Ponds compared"), POLYGON_SOURCE),
            translate("hummock", "The outermost ponds of both surfaces; those gone as they were."),
        )
        for name, label, kind, text in (
            (
                "MOVED", translate("hummock", "Ground whose water goes elsewhere"), POLYGON_SOURCE,
                translate("hummock", "With where its water went and where it goes."),
            ),
            (
                "PATHS", translate("hummock", "Paths before and after"), LINE_SOURCE,
                translate("hummock", "From places that have a path on both surfaces and another one after the change."),
            ),
        ):  # fmt: skip
            self.add(QgsProcessingParameterFeatureSink(name, label, kind, optional=True), text)
        self.add(
            QgsProcessingParameterFeatureSink(
                "AREAS", translate("hummock", "Catchments before and after"), TABLE_SOURCE, optional=True,
                createByDefault=False,
            ),
            translate("hummock", "A table of the ground that drains to each inlet, the rim and hollows, in m²."),
        )  # fmt: skip
        self.add_page(
            "HTML",
            translate("hummock", "Report of the change (HTML)"),
            translate("hummock", "Maps before and after, tables of ponds and of moved ground, with limits."),
        )
        self.add_numbers(
            ("NEW", translate("hummock", "Ponds that are new")),
            ("GONE", translate("hummock", "Ponds that are gone")),
            ("CHANGED", translate("hummock", "Ponds that are deeper or shallower")),
            ("VOLUME", translate("hummock", "Change of the water in full ponds (m³)")),
            ("MOVED_AREA", translate("hummock", "Ground whose water goes elsewhere (m²)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tins = (self.read_surface(parameters, context), self.read_surface(parameters, context, "DESIGN"))
        _refuse_other_crs(*tins)
        inlets = self.read_inlets(tins[0], parameters, context, feedback, part(progress, 0.05, 0.1))
        options, hollows = self.pond_options(tins[0], parameters, context, feedback), self.hollows(parameters, context)
        reach = self.parameterAsDouble(parameters, "REACH", context)
        found = []
        for tin, start in zip(tins, (0.1, 0.35)):
            taken, said = inlets_on(tin, inlets, reach)
            report(said, feedback)
            found.append(_analysed(tin, taken, options, hollows, part(progress, start, start + 0.25)))
        before, after = found
        least = self.parameterAsDouble(parameters, "MIN_MOVED", context)
        pieces = _moved_pieces(before, after, least, part(progress, 0.6, 0.8))
        change = compare(before, after, suiting_spacing(tins[0], 100))
        change = replace(change, moved=tuple(piece.moved for piece in pieces))
        results = self._write_ponds(before, after, change, parameters, context)
        results.update(self._write_moved(pieces, inlets, tins[0], parameters, context))
        results.update(self._write_areas(change, inlets, parameters, context))
        results.update(self._write_paths(before, after, hollows, inlets, parameters, context))
        path = self.parameterAsFileOutput(parameters, "HTML", context)
        if path:
            from ..core.report.water_page import write_change_page  # brings matplotlib, for which QGIS need not wait

            write_change_page(before, after, change, inlets, options, path, *page_language())
            results["HTML"] = path
        feedback.pushInfo(
            shown_of_water(
                translate(
                    "hummock",
                    "Ponds new: {NEW}, gone: {GONE}, deeper or shallower: {CHANGED}; {VOLUME:+.2f} m³ in full ponds; "
                    "{MOVED_AREA:.1f} m² whose water goes elsewhere.",
                ),
                **results,
            )
        )
        progress(1.0, "layers")
        return results

    def _write_ponds(
        self,
        before: Drainage,
        after: Drainage,
        change: DrainageChange,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> Dict[str, Any]:
        tin = before.flow.tin
        names = ("depth_m", "area_m2", "volume_m3")
        fields = fields_of(
            [("change", "text"), ("before", "text"), ("after", "text"), *((name, "real") for name in names)]
        )
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, fields, MULTIPOLYGON, qgis_crs(tin.crs))
        shores = [pond_shores(each.flow, each.ponds) for each in (before, after)]
        words = []
        for pond in change.ponds:
            words.append(pond.word)
            rings = shores[1][pond.after] if pond.after >= 0 else shores[0][pond.before]
            numbers = [f"P{which + 1}" if which >= 0 else None for which in (pond.before, pond.after)]
            attributes = [words[-1], *numbers, pond.depth, pond.area, pond.volume]
            add_feature(sink, multipolygon(polygons_of(rings), tin.crs), attributes)
        dress_water(context, place, CHANGED_PONDS)
        return {
            "OUTPUT": place,
            "NEW": words.count("new"),
            "GONE": words.count("gone"),
            "CHANGED": words.count("deeper") + words.count("shallower"),
            "VOLUME": change.standing_after - change.standing_before,
        }

    def _write_moved(
        self,
        pieces: Sequence[_Piece],
        inlets: Sequence[Inlet],
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> Dict[str, Any]:
        results: Dict[str, Any] = {"MOVED_AREA": float(sum(piece.moved.area for piece in pieces))}
        fields = fields_of((("from_what", "text"), ("to_what", "text"), ("area_m2", "real")))
        sink, place = self.parameterAsSink(parameters, "MOVED", context, fields, MULTIPOLYGON, qgis_crs(tin.crs))
        if sink is not None:
            for moved, shape in pieces:
                told = [_destination_word(end, inlets) for end in (moved.before, moved.after)]
                add_feature(sink, shape, [*told, moved.area])
            dress_water(context, place, MOVED_GROUND)
            results["MOVED"] = place
        return results

    def _write_areas(
        self,
        change: DrainageChange,
        inlets: Sequence[Inlet],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> Dict[str, Any]:
        columns = (("drains_to", "text"), ("before_m2", "real"), ("after_m2", "real"), ("change_m2", "real"))
        nowhere = QgsCoordinateReferenceSystem()
        sink, place = self.parameterAsSink(parameters, "AREAS", context, fields_of(columns), NO_GEOMETRY, nowhere)
        if sink is None:
            return {}
        for row in change.areas:
            numbers = [row.before, row.after, row.after - row.before]
            add_feature(sink, QgsGeometry(), [_destination_word(row.destination, inlets), *numbers])
        return {"AREAS": place}

    def _write_paths(
        self,
        before: Drainage,
        after: Drainage,
        hollows: Hollows,
        inlets: Sequence[Inlet],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> Dict[str, Any]:
        tin = before.flow.tin
        fields = path_fields((("when", "text"), ("start", "whole")))
        sink, place = self.parameterAsSink(parameters, "PATHS", context, fields, LINE_Z, qgis_crs(tin.crs))
        if sink is None:
            return {}
        spacing = optional_number(self, parameters, "SPACING", context) or suiting_spacing(tin)
        xy = grid_places(tin, spacing)
        xy = xy[(locate(tin, xy) >= 0) & (locate(after.flow.tin, xy) >= 0)]
        both = [trace_paths(each.flow, xy, hollows.passages(each.flow, each.ponds)) for each in (before, after)]
        values = [path_values(paths, each.ponds, inlets) for paths, each in zip(both, (before, after))]
        for i in range(len(xy)):
            lines = [paths.path(i) for paths in both]
            if lines[0].shape == lines[1].shape and np.allclose(lines[0], lines[1], atol=1e-6):
                continue
            for when, line, value, paths in zip(("before", "after"), lines, values, both):
                if len(line) > 1 and paths.end[i] != PathEnd.OUTSIDE:
                    add_feature(sink, line_z(line, tin.crs), [when, i, *value[i]])
        dress_water(context, place, CHANGED_PATHS)
        return {"PATHS": place}


def _refuse_other_crs(ground: Tin, design: Tin) -> None:
    one, other = qgis_crs(ground.crs), qgis_crs(design.crs)
    if one != other:
        raise QgsProcessingException(
            translate("hummock", "The changed surface is in {other}, the other in {crs}; bring both into one.").format(
                other=other.authid() or "?", crs=one.authid() or "?"
            )
        )
    west, south, east, north = ground.bounds
    left, low, right, high = design.bounds
    if right < west or left > east or high < south or low > north:
        raise QgsProcessingException(
            translate("hummock", "The two surfaces do not overlap; check that both belong to one site.")
        )


def _analysed(tin: Tin, taken: np.ndarray, options: PondOptions, hollows: Hollows, progress: Progress) -> Drainage:
    found = analyse(tin, taken, options, hollows is Hollows.ALL_FULL, progress)
    if hollows is Hollows.PITS_KEEP:
        found = replace(found, catchments=find_catchments(found.fates))
    return found


def _moved_pieces(before: Drainage, after: Drainage, least: float, progress: Progress) -> List[_Piece]:
    """What goes elsewhere, by the overlay of both divisions, the largest first."""
    crs = before.flow.tin.crs
    square = metres_per_unit(crs) ** 2
    shapes: List[Dict[Destination, QgsGeometry]] = [
        {end: multipolygon(polygons, crs).makeValid() for end, polygons in destination_polygons(d.catchments).items()}
        for d in (before, after)
    ]
    pairs = [(a, b) for a in shapes[0] for b in shapes[1] if a != b and Outlet.UNDECIDED not in (a[0], b[0])]
    pieces = []
    for a, b in counted(pairs, len(pairs), progress):
        found = shapes[0][a].intersection(shapes[1][b])
        kept = [
            each for each in found.asGeometryCollection()
            if each.type() == POLYGON_GEOMETRY and each.area() * square >= max(least, 1e-9)
        ]  # fmt: skip
        if kept:
            shape = QgsGeometry.unaryUnion(kept)
            shape.convertToMultiType()
            pieces.append(_Piece(Moved(a, b, shape.area() * square), shape))
    return sorted(pieces, key=lambda piece: -piece.moved.area)


def _destination_word(end: Destination, inlets: Sequence[Inlet]) -> str:
    return inlets[end[1]].name if end[0] is Outlet.INLET else OUTLET_WORDS[end[0]]
