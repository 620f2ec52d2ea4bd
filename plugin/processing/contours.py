"""Contours of a surface, exact on its triangles."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterFeatureSink,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import ContourOptions
from ..core.contours.trace import trace_contours
from ..core.progress import part
from ..core.surface.tin import Tin
from ..core.units import LengthUnit, site_units, usual_contour_interval
from .algorithm import HummockAlgorithm, progress_of
from .layers import contour_fields, write_contours
from .localnumbers import shown
from .parameters import chosen_unit, number, optional_number, qgis_crs, unit_choice
from .styles import CONTOURS, dress_vector
from .surfaceinput import SurfaceAlgorithm
from .surfacenoise import surface_noise
from .versions import LINE_SOURCE, LINE_Z, WHOLE_NUMBER

translate = QCoreApplication.translate


def add_interval(algorithm: HummockAlgorithm, advanced: bool = False, default: Optional[float] = 0.25) -> None:
    """INTERVAL, UNIT and INDEX_EVERY, the last one perhaps ``advanced``.

    Without a ``default`` both are empty, see :func:`chosen_interval`; with one, it is in metres.
    """
    algorithm.add(
        number("INTERVAL", translate("hummock", "Interval (in the unit below)"), default, 1e-6),
        translate(
            "hummock",
            "The difference in height between two neighbouring contours. Empty: 0.25 m, or half a foot where heights "
            "are in feet.",
        ),
    )
    empty = default is None
    algorithm.add(
        unit_choice("UNIT", translate("hummock", "Unit of interval and base"), None if empty else 0, optional=empty),
        translate(
            "hummock",
            "The levels of the contours are whole multiples in this unit. Empty: the unit of the heights of the CRS.",
        ),
    )
    algorithm.add(
        number("INDEX_EVERY", translate("hummock", "Index contour every … contours"), 5, 1, kind=WHOLE_NUMBER),
        translate("hummock", "Every so many contours one is drawn heavier and labelled."),
        advanced,
    )


def chosen_interval(
    algorithm: HummockAlgorithm, crs: Optional[Any], parameters: Dict[str, Any], context: QgsProcessingContext
) -> Tuple[float, LengthUnit]:
    """The interval and its unit; where they are left empty, those that suit the heights of ``crs``."""
    unit = chosen_unit(algorithm, parameters, "UNIT", context) or site_units(crs).height
    given = optional_number(algorithm, parameters, "INTERVAL", context)
    return usual_contour_interval(unit) if given is None else given, unit


class ContourAlgorithm(SurfaceAlgorithm):
    """An algorithm that draws contours of a surface: which levels, and in which unit."""

    GROUP_ID = "contours"

    def group(self) -> str:
        return translate("hummock", "Contours")

    def add_level_parameters(self) -> None:
        self.add_surface()
        add_interval(self, default=None)
        self.add(
            number("BASE", translate("hummock", "Base (in the unit above)"), 0.0),
            translate("hummock", "The height from which the levels are counted."),
            advanced=True,
        )
        self.add_surface_crs()

    def add_drawing_parameters(self) -> None:
        """How far lines and heights may be moved for drawing, and at which scale."""
        self.add(
            number(
                "CALM",
                translate("hummock", "Calm noise: move heights by up to (m; 0: not at all; empty: by their noise)"),
                None,
                0.0,
            ),
            translate(
                "hummock",
                "Empty: by the noise of a height, as the survey tells it in the file .noise.json beside the mesh; "
                "where there is none by 0.015 m. In metres whatever the CRS.",
            ),
        )
        self.add(
            number("SMOOTH", translate("hummock", "Smooth: move lines by up to (m in plan; 0: not at all)"), 0.25, 0.0),
            translate("hummock", "No place of a line moves farther. In metres whatever the CRS."),
        )
        self.add(
            number("SCALE", translate("hummock", "Scale of the plan, 1 : …"), 500, 1),
            translate("hummock", "At this scale labels have the size and spacing they need."),
        )

    def calm(
        self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> float:
        """Metres by which heights may be moved for drawing."""
        given = optional_number(self, parameters, "CALM", context)
        return surface_noise(self, tin, parameters, context, feedback).total if given is None else given

    def contour_options(self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext) -> ContourOptions:
        interval, unit = chosen_interval(self, tin.crs, parameters, context)
        return ContourOptions(
            interval=interval,
            base=self.parameterAsDouble(parameters, "BASE", context),
            unit=unit,
            index_every=self.parameterAsInt(parameters, "INDEX_EVERY", context),
        )


class DrawContours(ContourAlgorithm):
    """``hummock:contours``"""

    NAME = "contours"
    ICON = "contours.svg"

    def title(self) -> str:
        return translate("hummock", "Contours of a surface")

    def summary(self) -> str:
        return translate("hummock", "Draws contours exactly on the triangles of a surface.")

    def words(self) -> str:
        return translate("hummock", "contour lines,isolines,levels,interval,tin,mesh,feet,metres")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Draws the lines of equal height on the triangles of a surface, at base + k × interval for whole k. "
            "Each line is as long as can be: a closed ring, or from rim to rim. The higher ground is on the left of "
            "the line.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it, with heights in the unit of its CRS. "
            "Interval and base are in the unit you choose, which need not be that of the CRS.</p>"
            "<p><b>Columns:</b> level in the chosen unit and in metres, index (drawn heavier), depression (a ring with "
            "the lower ground inside) and closed. Each line also carries its level as height.</p>"
            "<p><b>What can go wrong:</b> contours finer than the points allow show noise, not ground: with heights "
            "good to 15 mm, think twice about an interval below 5 cm. Flat ground makes ragged lines. Contours are not "
            "smoothed: their corners are where they cross the edges of triangles.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_level_parameters()
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Contours"), LINE_SOURCE),
            translate("hummock", "Lines with level, index and depression."),
        )
        self.addOutput(QgsProcessingOutputNumber("CONTOURS", translate("hummock", "Number of contours")))

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self.read_surface(parameters, context)
        options = self.contour_options(tin, parameters, context)
        contours = trace_contours(tin, options, part(progress, 0.2, 0.7))
        sink, destination = self.parameterAsSink(
            parameters, "OUTPUT", context, contour_fields(), LINE_Z, qgis_crs(tin.crs)
        )
        write_contours(contours, sink, part(progress, 0.7, 1.0))
        dress_vector(context, destination, CONTOURS, contours_name(options))
        if len(contours) == 0:
            feedback.pushWarning(no_contours(tin, options))
        feedback.pushInfo(translate("hummock", "Contours: {count}.").format(count=len(contours)))
        return {"OUTPUT": destination, "CONTOURS": len(contours)}


def contours_name(options: ContourOptions) -> str:
    """What the layer is called."""
    return translate("hummock", "Contours every {interval} {unit}").format(
        interval=f"{options.interval:g}", unit=options.unit.symbol
    )


def no_contours(tin: Tin, options: ContourOptions) -> str:
    """Why there are none."""
    low, high = (height / options.unit.metres for height in tin.height_range)
    return shown(
        translate(
            "hummock",
            "No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there "
            "are no contours. Choose a smaller interval.",
        ),
        low=low,
        high=high,
        unit=options.unit.symbol,
    )
