"""Lines laid on a surface, with a vertex at every edge of a triangle."""

from __future__ import annotations

from typing import Any, Dict, List, NamedTuple, Optional

import numpy as np
from qgis.core import (
    QgsFeatureSink,
    QgsFeatureSource,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.points.layout import new_name
from ..core.progress import Progress, part
from ..core.surface.along import LaidLines, lay_lines
from ..core.surface.tin import Tin
from ..core.units import heights_to_crs_units, to_crs_units
from .algorithm import progress_of
from .drawnsource import drawn_parts
from .localnumbers import shown
from .parameters import chosen_source, qgis_crs
from .sinks import add_feature, counted, fields_of
from .styles import DRAPED, dress_vector
from .surfaceinput import SurfaceAlgorithm
from .versions import LINE_SOURCE, LINE_Z, NEW_KEYS, NO_GEOMETRY, TABLE_SOURCE, field

translate = QCoreApplication.translate


class _Line(NamedTuple):
    """A part of a feature: its places (k, 2) in the surface's CRS, metres."""

    feature: int
    attributes: List[Any]
    xy: np.ndarray


class DrapeLines(SurfaceAlgorithm):
    """``hummock:drapelines``"""

    NAME = "drapelines"
    ICON = "drapelines.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Lay lines on a surface")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Gives lines the surface's heights, with a vertex at every triangle edge.")

    def words(self) -> str:
        return translate("hummock", "drape,lines,height,elevation,profile,z values,centreline,tin")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Lays lines on a surface. They keep their place and their vertices in plan and get a new vertex "
            "wherever they cross an edge of a triangle: heights are those of the surface all along the line, not only "
            "at its vertices.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Lines in another CRS are brought into "
            "the surface's; curves become chords. Heights that the lines have are not used.</p>"
            "<p><b>Columns added:</b> part, the number of the piece of its line; start_m, its distance from the line's "
            "beginning, and plan_m and slope_m, its length in plan and on the ground, in metres.</p>"
            "<p><b>What can go wrong:</b> what lies off the surface, over voids too, is left out: the line falls into "
            "several pieces. Each gap is a row of the second output. A line all off the surface gives none.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            QgsProcessingParameterFeatureSource("LINES", translate("hummock", "Lines"), [LINE_SOURCE]),
            translate("hummock", "Any lines, such as a centreline or the edges of parcels."),
        )
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Lines on the surface"), LINE_SOURCE),
            translate("hummock", "The lines with heights in the unit of the surface's CRS."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "GAPS", translate("hummock", "Gaps of the lines"), TABLE_SOURCE, optional=True, createByDefault=False
            ),
            translate(
                "hummock",
                "A table of the stretches off the surface: feature, start and end along the line and length (m), and "
                "their places in the CRS.",
            ),
        )
        self.add_numbers(
            ("PIECES", translate("hummock", "Number of pieces on the surface")),
            ("GAP_COUNT", translate("hummock", "Number of gaps")),
            ("GAP_LENGTH", translate("hummock", "Length of the gaps (m)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        source = chosen_source(self, parameters, "LINES", context)
        lines = _collect(source, tin, context, feedback, part(progress, 0.3, 0.5))
        laid = lay_lines(tin, [line.xy for line in lines], part(progress, 0.5, 0.7))
        results = self._write_lines(tin, source.fields(), lines, laid, parameters, context, part(progress, 0.7, 1.0))
        results.update(self._write_gaps(tin, lines, laid, parameters, context))
        if laid.gaps:
            feedback.pushWarning(
                shown(
                    translate(
                        "hummock", "Stretches off the surface, left out: {count}, together {length:.2f} m of line."
                    ),
                    count=len(laid.gaps),
                    length=results["GAP_LENGTH"],
                )
            )
        feedback.pushInfo(
            translate("hummock", "Lines: {lines}, pieces on the surface: {pieces}.").format(
                lines=len(lines), pieces=len(laid)
            )
        )
        return results

    def _write_lines(
        self,
        tin: Tin,
        fields: QgsFields,
        lines: List[_Line],
        laid: LaidLines,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> Dict[str, Any]:
        for name, kind in (("part", "whole"), ("start_m", "real"), ("plan_m", "real"), ("slope_m", "real")):
            fields.append(field(new_name(name, fields.names()), kind))
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, fields, LINE_Z, qgis_crs(tin.crs), NEW_KEYS)
        _put_lines(laid, lines, tin.crs, sink, progress)
        dress_vector(context, place, DRAPED)
        return {"OUTPUT": place, "PIECES": len(laid)}

    def _write_gaps(
        self,
        tin: Tin,
        lines: List[_Line],
        laid: LaidLines,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
    ) -> Dict[str, Any]:
        lengths = [gap.end - gap.start for gap in laid.gaps]
        results: Dict[str, Any] = {"GAP_COUNT": len(lengths), "GAP_LENGTH": float(sum(lengths))}
        crs = qgis_crs(tin.crs)
        sink, place = self.parameterAsSink(parameters, "GAPS", context, gap_fields(), NO_GEOMETRY, crs)
        if sink is not None:
            for gap in laid.gaps:
                ends = to_crs_units(np.concatenate([gap.start_xy, gap.end_xy]), tin.crs).tolist()
                row = [lines[gap.line].feature, gap.start, gap.end, gap.end - gap.start, *ends]
                add_feature(sink, QgsGeometry(), row)
            results["GAPS"] = place
        return results


def gap_fields() -> QgsFields:
    names = ("start_m", "end_m", "length_m", "start_e", "start_n", "end_e", "end_n")
    return fields_of([("feature", "whole"), *((name, "real") for name in names)])


def _collect(
    source: QgsFeatureSource,
    tin: Tin,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> List[_Line]:
    """Every part of every line in the surface's CRS, metres; those that have no place there are counted aloud."""
    lines, without = [], 0
    for feature, parts in drawn_parts(source, tin.crs, context, feedback, progress, heights=False):
        usable = [part for part in parts if len(part) > 1 and np.isfinite(part[:, :2]).all()]
        lines += [_Line(feature.id(), feature.attributes(), part[:, :2]) for part in usable]
        without += not usable
    if without:
        feedback.pushWarning(
            translate("hummock", "{layer}: features without a usable line left out: {count}.").format(
                layer=source.sourceName(), count=without
            )
        )
    return lines


def _put_lines(laid: LaidLines, lines: List[_Line], crs: Any, sink: QgsFeatureSink, progress: Progress) -> None:
    plan, heights = to_crs_units(laid.xyz[:, :2], crs), heights_to_crs_units(laid.xyz[:, 2], crs)
    number = 0
    for i, xyz in enumerate(counted(laid, len(laid), progress)):
        first, end = int(laid.start[i]), int(laid.start[i + 1])
        number = number + 1 if i and laid.line[i] == laid.line[i - 1] else 1
        geometry = QgsLineString(*plan[first:end].T.tolist(), heights[first:end].tolist())
        along = laid.distance[[first, end - 1]].tolist()
        sloped = float(np.sqrt((np.diff(xyz, axis=0) ** 2).sum(axis=1)).sum())
        added = [number, along[0], along[1] - along[0], sloped]
        add_feature(sink, QgsGeometry(geometry), [*lines[laid.line[i]].attributes, *added])
