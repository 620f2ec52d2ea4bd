"""What the algorithms share that work along a line on a surface."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsFeatureRequest,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.line import Alignment, make_alignment
from ..core.alignment.noise import noise_from_points, timed_noise
from ..core.alignment.slopes import HeightNoise
from ..core.alignment.stations import parse_equations, parse_station
from ..core.georeference.crs import plan_unit
from ..core.papers import OFFICE_PAPERS
from ..core.progress import Progress
from ..core.surface.tin import Tin
from ..core.units import LengthUnit, metres_per_unit
from .algorithm import report
from .drawnsource import parts_of
from .parameters import chosen_source, chosen_unit, number, optional_number, optional_source, unit_choice
from .pointlayer import PointColumns, read_points_layer
from .surfaceinput import SurfaceAlgorithm, same_crs
from .surfacenoise import add_drift, add_noise, surface_noise
from .versions import LINE_SOURCE, NO_CHECK, POINT_SOURCE

translate = QCoreApplication.translate

NamedSurface = Tuple[str, Tin]


class RoadAlgorithm(SurfaceAlgorithm):
    """An algorithm along the line LINE on the surface INPUT, in the group of roads and lines."""

    GROUP_ID = "roads"

    def group(self) -> str:
        return translate("hummock", "Roads and lines")

    # Parameters

    def add_line(self) -> None:
        self.add(
            QgsProcessingParameterFeatureSource("LINE", translate("hummock", "Line"), [LINE_SOURCE]),
            translate(
                "hummock",
                "One line, such as a centreline, in the CRS of the surface. Stations grow in the way it was drawn. Of "
                "a layer with several lines select one and tick “Selected features only”.",
            ),
        )

    def add_numbering(self) -> None:
        self.add(
            unit_choice("UNIT", translate("hummock", "Unit of stations, offsets and heights"), None, optional=True),
            translate(
                "hummock",
                "Of what is given and shown here. Empty: that of the CRS, in which coordinates of layers always are.",
            ),
        )
        self.add(
            QgsProcessingParameterString("START", translate("hummock", "Station of the line's beginning"), "0"),
            translate("hummock", "Such as 1+250.00 or 1250: a plus stands after kilometres, in feet after hundreds."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterString(
                "EQUATIONS", translate("hummock", "Station equations (back = ahead)"), "", optional=True
            ),
            translate(
                "hummock", "Where the numbering jumps, such as 1+200 = 1+250; 3+000 = 0+000, in the order of the line."
            ),
            advanced=True,
        )

    def add_noise(self) -> None:
        add_noise(self)
        add_drift(self)
        self.add(
            QgsProcessingParameterFeatureSource(
                "POINTS", translate("hummock", "Survey points (for times and own deviations)"), [POINT_SOURCE],
                optional=True,
            ),
            translate(
                "hummock",
                "The points that the surface was built from. Their times tell which drift together, their field "
                "sigma_v takes the place of the noise above. Without them the times are those that the file "
                ".noise.json beside the mesh holds; where it holds none each strip of 1 m along the line counts as a "
                "pass of its own, which is cautious.",
            ),
            advanced=True,
        )  # fmt: skip

    def add_sheet(self, scale: float, portrait: bool) -> None:
        """Paper and scales of the sheets in PDF."""
        self.add(
            QgsProcessingParameterEnum(
                "PAPER", translate("hummock", "Paper"), [paper.value for paper in OFFICE_PAPERS], False, 0
            ),
            translate("hummock", "Of the sheets in PDF. Print them at 100 %, without fitting to the page."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("PORTRAIT", translate("hummock", "Upright"), portrait),
            translate("hummock", "The paper's long side upright."),
            advanced=True,
        )
        self.add(
            number("SCALE", translate("hummock", "Scale of lengths (1 : N)"), scale, 1.0),
            translate("hummock", "100 is 1 : 100. Long lines take several sheets."),
            advanced=True,
        )
        self.add(
            number("HEIGHT_SCALE", translate("hummock", "Scale of heights (1 : N; empty: chosen)"), None, 1.0),
            translate(
                "hummock", "Profiles take the largest usual scale that fits, cross-sections that of the lengths."
            ),
            advanced=True,
        )

    def sheet_options(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Dict[str, Any]:
        """Paper, portrait, scale and height_scale as the drawings of the core take them."""

        return {
            "paper": OFFICE_PAPERS[self.parameterAsEnum(parameters, "PAPER", context)],
            "portrait": self.parameterAsBool(parameters, "PORTRAIT", context),
            "scale": self.parameterAsDouble(parameters, "SCALE", context),
            "height_scale": optional_number(self, parameters, "HEIGHT_SCALE", context),
        }

    def add_lane(self) -> None:
        """The offsets between which crossfall is taken."""
        self.add(
            number("LANE_LEFT", translate("hummock", "Lane to the left of the line"), 2.0),
            translate(
                "hummock",
                "Crossfall is taken from here to the right end; in the unit chosen. Keep both inside kerbs and edges.",
            ),
        )
        self.add(
            number("LANE_RIGHT", translate("hummock", "Lane to the right of the line"), 2.0),
            translate("hummock", "As left. One side may be negative for a walk that lies all on the other."),
        )

    def read_lane(
        self, line: Alignment, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Tuple[float, float]:
        """Offsets (m, right positive) of the lane's left and right edge."""
        given = (self.parameterAsDouble(parameters, name, context) for name in ("LANE_LEFT", "LANE_RIGHT"))
        left, right = lengths_in(line.unit, *given)
        return -left, right

    # What they say

    def read_line(
        self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Alignment:
        """The one line of LINE with its stations. Raises SurveyError and QgsProcessingException."""
        source = chosen_source(self, parameters, "LINE", context)
        label = source.sourceName() or "LINE"
        same_crs(source, tin, label)
        features = source.getFeatures(QgsFeatureRequest(), NO_CHECK)
        found = [feature for feature in features if not feature.geometry().isEmpty()]
        parts = [part for feature in found for part in _joined(feature)]
        if len(parts) != 1:
            raise QgsProcessingException(
                translate(
                    "hummock",
                    "{layer}: {count} lines are in it; select one and tick “Selected features only”, or join them.",
                ).format(layer=label, count=len(parts))
            )
        unit = chosen_unit(self, parameters, "UNIT", context) or plan_unit(tin.crs)
        line = make_alignment(
            parts[0][:, :2] * metres_per_unit(tin.crs),
            _name_of(found[0]) or label,
            parse_station(self.parameterAsString(parameters, "START", context) or "0", unit),
            parse_equations(self.parameterAsString(parameters, "EQUATIONS", context), unit),
            unit,
        )
        report(line.messages, feedback)
        return line

    def read_noise(
        self,
        line: Alignment,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> HeightNoise:
        """The noise of the surface's heights. Raises SurveyError."""
        own = surface_noise(self, tin, parameters, context, feedback)
        source = optional_source(self, parameters, "POINTS", context)
        if source is None:
            return timed_noise(line, tin, own.time, own.total, own.drift)
        label = source.sourceName() or "POINTS"
        same_crs(source, tin, label)
        points = read_points_layer(source, PointColumns(), label, feedback, progress)
        noise, count = noise_from_points(line, tin, points, own.total, own.drift)
        feedback.pushInfo(
            translate("hummock", "Noise: {count} of {vertices} vertices of the surface are points of {layer}.").format(
                count=count, vertices=len(tin.vertices), layer=label
            )
        )
        return noise

    def optional_surface(
        self, name: str, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Optional[NamedSurface]:
        """Name and surface of an optional mesh; None where none was given. Raises SurveyError."""
        if parameters.get(name) in (None, ""):
            return None
        return self.surface_name(parameters, context, name), self.read_surface(parameters, context, name)


def lengths_in(unit: LengthUnit, *values: float) -> List[float]:
    """Lengths given in ``unit``, in metres."""
    return [value * unit.metres for value in values]


def distinct(surfaces: List[NamedSurface]) -> List[NamedSurface]:
    """The same with numbers after names that come twice."""
    seen: Dict[str, int] = {}
    found = []
    for name, tin in surfaces:
        seen[name] = seen.get(name, 0) + 1
        found.append((name if seen[name] == 1 else f"{name} {seen[name]}", tin))
    return found


def _joined(feature: Any) -> List[np.ndarray]:
    """The parts of a line, those that follow each other joined."""
    geometry = feature.geometry()
    merged = geometry.mergeLines() if geometry.isMultipart() else geometry
    return parts_of(geometry if merged.isEmpty() else merged, False)


def _name_of(feature: Any) -> str:
    """The feature's own name, if it has a field for it."""
    fields = feature.fields().names()
    found = next((name for name in fields if name.lower() == "name"), None)
    return "" if found is None or not feature[found] else str(feature[found])
