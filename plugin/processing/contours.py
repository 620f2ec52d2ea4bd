"""Contours of a surface, exact on its triangles."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, Optional, Tuple

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingOutputNumber,
    QgsProcessingParameterCrs,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterMeshLayer,
    QgsProcessingParameterNumber,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.contours.lines import ContourOptions
from ..core.contours.trace import trace_contours
from ..core.handover.mesh import read_2dm
from ..core.handover.projection import read_prj
from ..core.messages import SurveyError
from ..core.progress import part
from ..core.surface.tin import Tin
from ..core.units import LengthUnit
from .algorithm import HummockAlgorithm, progress_of, say
from .layers import contour_fields, write_contours
from .parameters import chosen_unit, core_crs, qgis_crs, unit_choice
from .styles import CONTOURS, dress_vector
from .versions import LINE_SOURCE, LINE_Z, REAL_NUMBER, WHOLE_NUMBER

translate = QCoreApplication.translate


class DrawContours(HummockAlgorithm):
    """``hummock:contours``"""

    NAME = "contours"
    ICON = "contours.svg"
    GROUP_ID = "contours"

    def title(self) -> str:
        return translate("hummock", "Contours of a surface")

    def group(self) -> str:
        return translate("hummock", "Contours")

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
        self.add(
            QgsProcessingParameterMeshLayer("INPUT", translate("hummock", "Surface (2DM mesh)")),
            translate("hummock", "A mesh layer or a mesh file, as “Build the surface” writes it."),
        )
        self.add(
            self._number("INTERVAL", translate("hummock", "Interval (in the unit below)"), REAL_NUMBER, 0.25, 1e-6),
            translate("hummock", "The difference in height between two neighbouring contours."),
        )
        self.add(
            unit_choice("UNIT", translate("hummock", "Unit of interval and base")),
            translate("hummock", "The levels of the contours are whole multiples in this unit."),
        )
        self.add(
            self._number("INDEX_EVERY", translate("hummock", "Index contour every … contours"), WHOLE_NUMBER, 5, 1),
            translate("hummock", "Every so many contours one is drawn heavier and labelled."),
        )
        self.add(
            self._number("BASE", translate("hummock", "Base (in the unit above)"), REAL_NUMBER, 0.0),
            translate("hummock", "The height from which the levels are counted."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterCrs(
                "CRS", translate("hummock", "CRS of the surface (empty: as stored with it)"), optional=True
            ),
            translate(
                "hummock",
                "A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, "
                "or taken from the mesh layer.",
            ),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Contours"), LINE_SOURCE),
            translate("hummock", "Lines with level, index and depression."),
        )
        self.addOutput(QgsProcessingOutputNumber("CONTOURS", translate("hummock", "Number of contours")))

    def _number(
        self, name: str, label: str, kind: Any, default: float, least: Optional[float] = None
    ) -> QgsProcessingParameterNumber:
        parameter = QgsProcessingParameterNumber(name, label, kind, default)
        if least is not None:
            parameter.setMinimum(least)
        return parameter

    def checkParameterValues(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[bool, str]:
        """As QGIS does it, but a mesh file that cannot be used is refused with the reason."""
        path = self.parameterAsString(parameters, "INPUT", context)
        if path and self.parameterAsMeshLayer(parameters, "INPUT", context) is None:
            try:
                read_2dm(path)
            except SurveyError as error:
                return False, say(error.message)
        return super().checkParameterValues(parameters, context)

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        options = ContourOptions(
            interval=self.parameterAsDouble(parameters, "INTERVAL", context),
            base=self.parameterAsDouble(parameters, "BASE", context),
            unit=chosen_unit(self, parameters, "UNIT", context) or LengthUnit.METRE,
            index_every=self.parameterAsInt(parameters, "INDEX_EVERY", context),
        )
        progress = progress_of(feedback)
        progress(0.0, "surface")
        tin = self._read_surface(parameters, context)
        contours = trace_contours(tin, options, part(progress, 0.2, 0.7))
        sink, destination = self.parameterAsSink(
            parameters, "OUTPUT", context, contour_fields(), LINE_Z, qgis_crs(tin.crs)
        )
        write_contours(contours, sink, part(progress, 0.7, 1.0))
        unit = options.unit.symbol
        name = translate("hummock", "Contours every {interval} {unit}").format(
            interval=f"{options.interval:g}", unit=unit
        )
        dress_vector(context, destination, CONTOURS, name)
        if len(contours) == 0:
            low, high = (height / options.unit.metres for height in tin.height_range)
            feedback.pushWarning(
                translate(
                    "hummock",
                    "No level lies between the lowest ({low:.3f} {unit}) and highest ({high:.3f} {unit}) height: there "
                    "are no contours. Choose a smaller interval.",
                ).format(low=low, high=high, unit=unit)
            )
        feedback.pushInfo(translate("hummock", "Contours: {count}.").format(count=len(contours)))
        return {"OUTPUT": destination, "CONTOURS": len(contours)}

    def _read_surface(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tin:
        """The surface of the mesh layer or file, with its CRS. Raises SurveyError."""
        layer = self.parameterAsMeshLayer(parameters, "INPUT", context)
        path = layer.source() if layer is not None else self.parameterAsString(parameters, "INPUT", context)
        given = self.parameterAsCrs(parameters, "CRS", context)
        crs = None if given.isValid() else read_prj(path)
        if crs is None:
            crs = core_crs(given if given.isValid() or layer is None else layer.crs(), path)
        return read_2dm(Path(path), crs)
