"""Grade along a line and crossfall across it, window by window."""

from __future__ import annotations

from functools import partial
from typing import Any, Dict, Optional

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.crowns import find_lane
from ..core.alignment.grades import WindowSlopes, grades, reach
from ..core.alignment.parts import Part, part_slopes
from ..core.alignment.profile import make_profile
from ..core.progress import part
from ..core.surface.slopes import DEFAULT_LIMITS_PERCENT, checked_limits
from .algorithm import progress_of, report
from .parameters import number, optional_number, qgis_crs
from .roadinput import RoadAlgorithm, lengths_in
from .roadlayers import crossfall_fields, plain, slope_fields, write_crossfalls, write_slopes
from .roadstyles import dress_road, slope_line_renderer
from .slopemap import read_limits
from .versions import LINE, LINE_SOURCE

translate = QCoreApplication.translate


class RoadGrades(RoadAlgorithm):
    """``hummock:roadgrades``"""

    NAME = "roadgrades"
    ICON = "roadgrades.svg"

    def title(self) -> str:
        return translate("hummock", "Grades and crossfall")

    def summary(self) -> str:
        return translate("hummock", "Grade along a line and crossfall across it, with standard deviations.")

    def words(self) -> str:
        return translate("hummock", "grade,gradient,crossfall,cross slope,superelevation,camber,slope,percent,road")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Divides a line into windows and gives for each the grade along it and the crossfall across it, with "
            "the standard deviation that the noise of the points makes. Both layers are coloured by class of slope, "
            "steeper darker and wider.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it and one line in its CRS. A grade is "
            "positive where the surface rises with the stations, a crossfall where it rises to the right. A grade is "
            "the straight line that fits the heights in the window best. A crossfall is that of sections half a "
            "metre apart, from one offset to the other, which all have one slope in the window. Where the surface "
            "shows a crown, each half of the lane has a crossfall of its own; a kerb within the offsets ends the "
            "lane.</p>"
            "<p><b>Columns:</b> from_station, to_station, from_m, to_m, slope_pct, slope_sd_pct, class (from 0, the "
            "flattest, by the size of the slope), label; of crossfalls also part (lane, left, right) and crown, its "
            "offset from the line. Twice the standard deviation is the doubt at 95 %.</p>"
            "<p><b>What can go wrong:</b> crossfall over a ditch, or a kerb that the surface makes a ramp of, is no "
            "crossfall: keep the offsets in the lane. A crown that noise hides is not seen. "
            "Drift tilts a crossfall and counts only if you give it. A window that the surface does not cover has no "
            "slope. For limits use “Check a line against limits”.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add_line()
        self.add(
            number("WINDOW", translate("hummock", "Window (m)"), 5.0, 0.01),
            translate("hummock", "The length over which a slope is taken: shorter shows more, and more noise."),
        )
        self.add(
            number("STEP", translate("hummock", "From window to window (m; empty: no overlap)"), None, 0.01),
            translate("hummock", "Shorter than the window, windows overlap and neighbours share points."),
            advanced=True,
        )
        self.add_lane()
        self.add(
            number("OFFSET", translate("hummock", "Offset of the line whose grade is taken"), 0.0),
            translate("hummock", "In the unit chosen, right positive: 0 for the line itself, else its parallel."),
            advanced=True,
        )
        usual = "; ".join(f"{limit:.4g}" for limit in DEFAULT_LIMITS_PERCENT)
        self.add(
            QgsProcessingParameterString("LIMITS", translate("hummock", "Limits between the classes (%)"), usual),
            translate("hummock", "Rising numbers with semicolons or blanks between them. They are no standard."),
            advanced=True,
        )
        self.add_numbering()
        self.add_noise()
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Grades"), LINE_SOURCE),
            translate("hummock", "The line in windows, with the grade along it."),
        )
        self.add(
            QgsProcessingParameterFeatureSink(
                "CROSSFALLS", translate("hummock", "Crossfalls"), LINE_SOURCE, optional=True
            ),
            translate("hummock", "The line in windows, with the crossfall; drawn beside the grades."),
        )
        self.add_numbers(
            ("STEEPEST", translate("hummock", "Steepest grade, either way (%)")),
            ("LARGEST_CROSSFALL", translate("hummock", "Largest crossfall, either way (%)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        limits = checked_limits(read_limits(self.parameterAsString(parameters, "LIMITS", context)))
        tin = self.read_surface(parameters, context)
        line = self.read_line(tin, parameters, context, feedback)
        noise = self.read_noise(line, tin, parameters, context, feedback, part(progress, 0.3, 0.4))
        window = self.parameterAsDouble(parameters, "WINDOW", context)
        step = optional_number(self, parameters, "STEP", context)
        (offset,) = lengths_in(line.unit, self.parameterAsDouble(parameters, "OFFSET", context))
        low, high = self.read_lane(line, parameters, context)
        report(make_profile(line, [(self.surface_name(parameters, context), tin)], offset).messages, feedback)
        along = grades(line, tin, noise, window, step, offset, reach(line, tin, (offset,)))
        progress(0.6, "alignment")
        results: Dict[str, Any] = {}
        fields, crs = slope_fields(), qgis_crs(tin.crs)
        sink, place = self.parameterAsSink(parameters, "OUTPUT", context, plain(fields), LINE, crs)
        write_slopes(along, limits, tin.crs, sink)
        dress_road(context, place, fields, renderer=partial(slope_line_renderer, limits, 0.0))
        results.update({"OUTPUT": place, "STEEPEST": _largest(along)})
        _tell(along, feedback)
        if parameters.get("CROSSFALLS") is not None:
            within = reach(line, tin, (low, high))
            lane = find_lane(line, tin, noise, low, high, within)
            across = part_slopes(line, tin, noise, lane, window, step, within)
            fields = crossfall_fields(line)
            sink, place = self.parameterAsSink(parameters, "CROSSFALLS", context, plain(fields), LINE, crs)
            write_crossfalls(across, limits, tin.crs, sink)
            dress_road(context, place, fields, renderer=partial(slope_line_renderer, limits, 3.2))
            edges = [across.at_edge(part) for part in (Part.LEFT, Part.RIGHT)]
            sizes = [size for size in map(_largest, edges) if size is not None]
            results.update({"CROSSFALLS": place, "LARGEST_CROSSFALL": max(sizes, default=None)})
            _tell(edges[0], feedback)
        return {name: value for name, value in results.items() if value is not None}


def _largest(slopes: WindowSlopes) -> Optional[float]:
    known = np.abs(slopes.value[np.isfinite(slopes.value)])
    return 100 * float(known.max()) if len(known) else None


def _tell(slopes: WindowSlopes, feedback: QgsProcessingFeedback) -> None:
    """Say how many windows have no slope."""
    without = int(np.count_nonzero(~np.isfinite(slopes.value)))
    if without:
        feedback.pushWarning(
            translate("hummock", "Windows that the surface does not cover, without a slope: {count} of {all}.").format(
                count=without, all=len(slopes)
            )
        )
