"""The way of water from places on a surface."""

from __future__ import annotations

from typing import Any, Dict, List, NamedTuple, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsGeometry,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.flow import build_flow
from ..core.drainage.inlet_list import inlets_on
from ..core.drainage.paths import FlowPaths, along_lines, in_polygons, trace_paths
from ..core.drainage.ponds import find_ponds
from ..core.drainage.steps import PathEnd
from ..core.drainage.study import grid_places, suiting_spacing
from ..core.progress import Progress, part
from ..core.surface.locate import locate
from ..core.surface.tin import Tin
from ..core.units import to_crs_units
from .algorithm import progress_of, report
from .parameters import number, optional_number, optional_source, qgis_crs
from .sinks import add_feature, counted
from .versions import LINE_SOURCE, LINE_Z, POINT, POINT_GEOMETRY, POINT_SOURCE, POLYGON_GEOMETRY, TABLE_SOURCE
from .waterinput import WaterAlgorithm, features_on, warn_empty
from .waterlayers import line_z, path_fields, path_values
from .waterstyles import FLOW_PATHS, PATH_STARTS, dress_water

translate = QCoreApplication.translate


class _Starts(NamedTuple):
    """Places (k, 2), metres of the CRS, and the feature (k,) each comes from."""

    xy: np.ndarray
    feature: np.ndarray


class TracePaths(WaterAlgorithm):
    """``hummock:flowpaths``"""

    NAME = "flowpaths"
    ICON = "flowpaths.svg"

    def title(self) -> str:
        return translate("hummock", "Paths of water")

    def summary(self) -> str:
        return translate("hummock", "Follows water from points, lines or areas down a surface to where it ends.")

    def words(self) -> str:
        return translate("hummock", "water,flow,path,drainage,steepest descent,downhill,runoff,raindrop,trace,inlet")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Follows water from places down the surface itself: across each triangle the steepest way, along a "
            "channel where two triangles fall into their edge, to a pit, an inlet or the rim. Level ground drains by "
            "the shortest way along its edges to where it goes down.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Paths start at points, along lines and "
            "inside areas at the spacing given, or all over the surface where no layer is. In another CRS they are "
            "brought into that of the surface.</p>"
            "<p><b>Columns:</b> feature (of the starts), end (pit, pond, rim, inlet, or undecided where heights are "
            "equal to rounding), ends_in (the pond or inlet), length_m in plan, drop_m, and slope_pct, the mean of the "
            "path.</p>"
            "<p><b>What can go wrong:</b> noise makes pits: with its standard deviation given, paths pass hollows "
            "that noise explains, straight from the pit over the brim. Ponds are numbered from the deepest, P1, as in "
            "“Pits and ponds” with the same settings. What is not measured, such as a kerb between two passes or a "
            "pipe under a road, leads no water here.</p>"
            "<p>Paths show where water runs on the surface as surveyed. They are no drainage design.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterFeatureSource(
                "STARTS", translate("hummock", "Starts: points, lines or areas"), [TABLE_SOURCE], optional=True
            ),
            translate("hummock", "Where water starts. Empty: a square grid all over the surface."),
        )
        self.add(
            number("SPACING", translate("hummock", "Spacing along lines and in areas (m)"), None, 1e-3),
            translate("hummock", "Empty: one that suits the size of the site."),
        )
        self.add_inlets()
        self.add_noise()
        self.add_hollows()
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Paths of water"), LINE_SOURCE),
            translate("hummock", "A line for each start with a way down, in the direction of the water."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "PLACES", translate("hummock", "Starts and their ends"), POINT_SOURCE, optional=True,
                createByDefault=False,
            ),
            translate("hummock", "Every start with the same columns, also those in a pit or off the surface."),
        )  # fmt: skip
        self.add_numbers(
            ("PATHS", translate("hummock", "Number of paths")),
            ("TO_RIM", translate("hummock", "Starts whose water leaves over the rim")),
            ("TO_INLETS", translate("hummock", "Starts whose water comes to an inlet")),
            ("STAY", translate("hummock", "Starts whose water stays in a pit or pond")),
            ("OFF_SURFACE", translate("hummock", "Starts off the surface")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        inlets = self.read_inlets(tin, parameters, context, feedback, part(progress, 0.1, 0.15))
        starts = self._starts(tin, parameters, context, feedback, part(progress, 0.15, 0.3))
        taken, said = inlets_on(tin, inlets, self.parameterAsDouble(parameters, "REACH", context))
        report(said, feedback)
        flow = build_flow(tin, taken)
        ponds = find_ponds(flow, self.pond_options(tin, parameters, context, feedback), part(progress, 0.3, 0.5))
        passages = self.hollows(parameters, context).passages(flow, ponds)
        paths = trace_paths(flow, starts.xy, passages, part(progress, 0.5, 0.7))
        values = path_values(paths, ponds, inlets)
        results = self._write(tin, starts, paths, values, parameters, context, part(progress, 0.7, 1.0))
        self._tell(results, feedback)
        return results

    def _starts(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> _Starts:
        spacing = optional_number(self, parameters, "SPACING", context) or suiting_spacing(tin)
        source = optional_source(self, parameters, "STARTS", context)
        if source is None:
            xy = grid_places(tin, spacing)
            xy = xy[locate(tin, xy) >= 0]
            progress(1.0, "paths")
            return _Starts(xy, np.full(len(xy), -1, np.int64))
        kind = QgsWkbTypes.geometryType(source.wkbType())
        places: List[np.ndarray] = [np.empty((0, 2))]
        ids: List[int] = []
        empty = 0
        for feature, parts in features_on(source, tin, context, feedback, progress):
            empty += not parts
            if kind == POINT_GEOMETRY:
                found = np.concatenate(parts) if parts else places[0]
            elif kind == POLYGON_GEOMETRY:
                found = in_polygons([parts], spacing) if parts else places[0]
                if parts and not len(found):  # smaller than the grid
                    found = parts[0].mean(axis=0, keepdims=True)
            else:
                found = along_lines(parts, spacing)
            places.append(found)
            ids += [feature.id()] * len(found)
        warn_empty(source, empty, feedback)
        return _Starts(np.concatenate(places), np.array(ids, np.int64))

    def _write(
        self,
        tin: Tin,
        starts: _Starts,
        paths: FlowPaths,
        values: List[Tuple[Any, ...]],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> Dict[str, Any]:
        fields, crs = path_fields((("feature", "whole"),)), qgis_crs(tin.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, fields, LINE_Z, crs)
        ends = [PathEnd(int(end)) for end in paths.end]
        ids = [feature if feature >= 0 else None for feature in starts.feature.tolist()]
        count = 0
        for i in counted(range(len(paths)), len(paths), progress):
            if paths.start[i + 1] - paths.start[i] > 1:
                add_feature(sink, line_z(paths.path(i), tin.crs), [ids[i], *values[i]])
                count += 1
        dress_water(context, place, FLOW_PATHS)
        results: Dict[str, Any] = {
            "OUTPUT": place,
            "PATHS": count,
            "TO_RIM": ends.count(PathEnd.RIM),
            "TO_INLETS": ends.count(PathEnd.INLET),
            "STAY": ends.count(PathEnd.PIT),
            "OFF_SURFACE": ends.count(PathEnd.OUTSIDE),
        }
        sink, place = self.parameterAsSink(parameters, "PLACES", context, fields, POINT, crs)
        if sink is not None:
            for xy, feature, value in zip(to_crs_units(starts.xy, tin.crs).tolist(), ids, values):
                add_feature(sink, QgsGeometry(QgsPoint(*xy)), [feature, *value])
            dress_water(context, place, PATH_STARTS)
            results["PLACES"] = place
        return results

    def _tell(self, results: Dict[str, Any], feedback: QgsProcessingFeedback) -> None:
        feedback.pushInfo(
            translate(
                "hummock",
                "Paths: {PATHS}. Starts whose water leaves over the rim: {TO_RIM}, comes to an inlet: {TO_INLETS}, "
                "stays in a pit or pond: {STAY}.",
            ).format(**results)
        )
        if results["OFF_SURFACE"]:
            feedback.pushWarning(
                translate("hummock", "Starts off the surface, without a path: {count}.").format(
                    count=results["OFF_SURFACE"]
                )
            )
