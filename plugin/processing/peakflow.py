"""Peak flows of catchments by the rational method."""

from __future__ import annotations

import math
from typing import Any, Dict, List, Optional

import numpy as np
from qgis.core import (
    QgsFeature,
    QgsFeatureSource,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsSpatialIndex,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.rational import SOURCE, FlowUnits, PeakFlows, peak_flows
from ..core.points.layout import new_name
from ..core.progress import Progress, part
from ..core.units import LengthUnit, metres_per_unit, site_units
from .algorithm import HummockAlgorithm, progress_of, report
from .drawnsource import request_in
from .localnumbers import shown
from .parameters import chosen_source, core_crs, number, optional_number, optional_source
from .sinks import add_feature, counted
from .versions import NEW_KEYS, NUMERIC_FIELD, POLYGON_SOURCE, field, is_null
from .waterstyles import PEAK_FLOWS, dress_water

translate = QCoreApplication.translate

#: In the order of the choices of UNITS.
UNITS = (FlowUnits.SI, FlowUnits.US)
_SLIVER = 1e-6  # share of a catchment that lines drawn twice may leave open or cover twice


class EstimatePeakFlow(HummockAlgorithm):
    """``hummock:peakflow``"""

    NAME = "peakflow"
    ICON = "peakflow.svg"
    GROUP_ID = "water"

    def title(self) -> str:
        return translate("hummock", "Peak flow (rational method)")

    def group(self) -> str:
        return translate("hummock", "Water")

    def summary(self) -> str:
        return translate("hummock", "An indication of the peak flow of catchments, Q = C i A.")

    def words(self) -> str:
        return translate(
            "hummock", "water,peak flow,runoff,rational method,rain,intensity,coefficient,stormwater,C i A"
        )

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Multiplies the area of each catchment by its runoff coefficient and the intensity of the rain: the "
            "rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge of sewers "
            "in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889).</p>"
            "<p><b>It assumes</b> rain of constant intensity for as long as water takes from the farthest place to the "
            "outlet; find that intensity for the duration and the frequency that your code asks for. Catchments are "
            "polygons, as “Catchments” makes them. The runoff coefficient comes from polygons of ground cover, "
            "weighted by area, else from a field of the catchments, else it is one number for all.</p>"
            "<p><b>Columns added:</b> runoff, the coefficient; area and area_unit; intensity and intensity_unit; flow "
            "and flow_unit (l/s, or ft³/s).</p>"
            "<p><b>What can go wrong:</b> the method is for small areas of one kind; beyond some 80 ha (200 acres) it "
            "is commonly not used. It knows no storage: a pond upstream makes the true peak smaller. Water from "
            "beyond the surveyed ground is not counted. The flow over “the rest of the rim” is that of many places, "
            "not of one.</p>"
            "<p>This is an indication and no drainage design: coefficients, intensities and methods are set by local "
            "codes, and a licensed professional answers for a design.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add(
            QgsProcessingParameterFeatureSource("INPUT", translate("hummock", "Catchments"), [POLYGON_SOURCE]),
            translate("hummock", "Polygons in a projected CRS."),
        )
        self.add(
            QgsProcessingParameterEnum(
                "UNITS",
                translate("hummock", "Units"),
                [
                    translate("hummock", "mm/h, hectares, l/s"),
                    translate("hummock", "in/h, acres, ft³/s"),
                ],
                optional=True,
            ),
            translate(
                "hummock",
                "Of the intensity and of the results. Nothing is rounded between them. Empty: the first, or the second "
                "where the CRS is in feet.",
            ),
        )
        self.add(
            number("INTENSITY", translate("hummock", "Intensity of the rain (mm/h or in/h)"), None, 0.0),
            translate("hummock", "For the time of concentration and the frequency that your code asks for."),
        )
        self._add_field(
            "INTENSITY_FIELD", "INPUT", translate("hummock", "Field with the intensity"),
            translate("hummock", "Where catchments differ; in place of the one for all."),
        )  # fmt: skip
        self.add(
            number("RUNOFF", translate("hummock", "Runoff coefficient"), None, 0.0, 1.0),
            translate("hummock", "Above 0 and at most 1: the share of the rain that runs off."),
        )
        self._add_field(
            "RUNOFF_FIELD", "INPUT", translate("hummock", "Field with the runoff coefficient"),
            translate("hummock", "Where catchments differ; in place of the one for all."),
        )  # fmt: skip
        self.add(
            QgsProcessingParameterFeatureSource(
                "COVER", translate("hummock", "Ground cover"), [POLYGON_SOURCE], optional=True
            ),
            translate(
                "hummock",
                "Polygons, each with a runoff coefficient. Ground without one takes that of its catchment.",
            ),
        )
        self._add_field(
            "COVER_FIELD", "COVER", translate("hummock", "Field of the ground cover with its runoff coefficient"),
            translate("hummock", "Above 0 and at most 1."),
        )  # fmt: skip
        self.add(
            QgsProcessingParameterFeatureSink("OUTPUT", translate("hummock", "Peak flows"), POLYGON_SOURCE),
            translate("hummock", "The catchments with their peak flow."),
        )
        self.add_numbers(
            ("CATCHMENTS", translate("hummock", "Number of catchments")),
            ("LARGEST", translate("hummock", "Largest peak flow (l/s or ft³/s)")),
        )

    def _units(self, crs: Any, parameters: Dict[str, Any], context: QgsProcessingContext) -> FlowUnits:
        if parameters.get("UNITS") in (None, ""):
            return FlowUnits.SI if site_units(crs).plan is LengthUnit.METRE else FlowUnits.US
        return UNITS[self.parameterAsEnum(parameters, "UNITS", context)]

    def _add_field(self, name: str, layer: str, label: str, help_text: str) -> None:
        self.add(
            QgsProcessingParameterField(name, label, parentLayerParameterName=layer, type=NUMERIC_FIELD, optional=True),
            help_text,
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        source = chosen_source(self, parameters, "INPUT", context)
        crs = core_crs(source.sourceCrs(), source.sourceName())
        metres, units = metres_per_unit(crs), self._units(crs, parameters, context)
        features = list(counted(source.getFeatures(), source.featureCount(), part(progress, 0.0, 0.2)))
        area = np.array([feature.geometry().area() * metres**2 for feature in features])
        intensity = self._values(features, "INTENSITY", parameters, context)
        runoff = self._runoff(source, features, parameters, context, feedback, part(progress, 0.2, 0.7))
        self._refuse_missing(features, intensity, translate("hummock", "intensity"))
        self._refuse_missing(features, runoff, translate("hummock", "runoff coefficient"))
        peaks = [
            peak_flows(area[i : i + 1], runoff[i : i + 1], float(intensity[i]), units) for i in range(len(features))
        ]
        if len(features):
            report(peak_flows(area, runoff, float(intensity[0]), units).cautions, feedback)
        feedback.pushInfo(translate("hummock", "Method: rational, Q = C i A ({source}).").format(source=SOURCE))
        results = self._write(source, features, peaks, parameters, context, part(progress, 0.7, 1.0))
        progress(1.0, "layers")
        return results

    def _values(
        self, features: List[QgsFeature], name: str, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> np.ndarray:
        """Of each feature the value of the field, else the one for all, nan where there is neither."""
        one = optional_number(self, parameters, name, context)
        values = np.full(len(features), math.nan if one is None else one)
        chosen = self.parameterAsString(parameters, f"{name}_FIELD", context)
        for i, feature in enumerate(features):
            if chosen and not is_null(feature[chosen]):
                values[i] = float(feature[chosen])
        return values

    def _runoff(
        self,
        source: QgsFeatureSource,
        features: List[QgsFeature],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> np.ndarray:
        """The coefficient of each catchment, the mean by area where there is ground cover."""
        own = self._values(features, "RUNOFF", parameters, context)
        cover = optional_source(self, parameters, "COVER", context)
        if cover is None:
            return own
        chosen = self.parameterAsString(parameters, "COVER_FIELD", context)
        if not chosen:
            raise QgsProcessingException(
                translate("hummock", "Say which field of the ground cover holds its runoff coefficient.")
            )
        request = request_in(source.sourceCrs(), cover, context, feedback)
        grounds = {ground.id(): ground for ground in cover.getFeatures(request)}
        index = QgsSpatialIndex()
        for ground in grounds.values():
            index.addFeature(ground)
        result = own.copy()
        for i, feature in enumerate(counted(features, len(features), progress)):
            shape = feature.geometry()
            near = [grounds[k] for k in sorted(index.intersects(shape.boundingBox()))]
            result[i] = _mean(shape, near, chosen, float(own[i]))
        return result

    def _refuse_missing(self, features: List[QgsFeature], values: np.ndarray, what: str) -> None:
        missing = np.flatnonzero(~np.isfinite(values))
        if len(missing):
            raise QgsProcessingException(
                translate(
                    "hummock", "There is no {what} for {count} catchments, the first is feature {feature}; give one."
                ).format(what=what, count=len(missing), feature=features[missing[0]].id())
            )

    def _write(
        self,
        source: QgsFeatureSource,
        features: List[QgsFeature],
        peaks: List[PeakFlows],
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        progress: Progress,
    ) -> Dict[str, Any]:
        fields = source.fields()
        for name, kind in (
            ("runoff", "real"), ("area", "real"), ("area_unit", "text"), ("intensity", "real"),
            ("intensity_unit", "text"), ("flow", "real"), ("flow_unit", "text"),
        ):  # fmt: skip
            fields.append(field(new_name(name, fields.names()), kind))
        sink, place = self.parameterAsSink(
            parameters, "OUTPUT", context, fields, source.wkbType(), source.sourceCrs(), NEW_KEYS
        )
        for feature, peak in counted(zip(features, peaks), len(features), progress):
            units = peak.units
            added = [
                float(peak.coefficient[0]), float(peak.area[0]), units.area, peak.intensity, units.intensity,
                float(peak.flow[0]), units.flow,
            ]  # fmt: skip
            add_feature(sink, feature.geometry(), [*feature.attributes(), *added])
        dress_water(context, place, PEAK_FLOWS)
        largest = max((float(peak.flow[0]) for peak in peaks), default=0.0)
        return {"OUTPUT": place, "CATCHMENTS": len(features), "LARGEST": largest}


def _mean(shape: QgsGeometry, grounds: List[QgsFeature], chosen: str, own: float) -> float:
    """The mean coefficient by area of ``grounds`` within ``shape``; what they leave open has the coefficient ``own``.

    nan where something is left open and ``own`` is. Raises QgsProcessingException where grounds overlap.
    """
    whole, covered, total = shape.area(), 0.0, 0.0
    for ground in grounds:
        part_of = ground.geometry().intersection(shape).area()
        if part_of > 0 and not is_null(ground[chosen]):
            covered += part_of
            total += part_of * float(ground[chosen])
    if covered > whole * (1 + _SLIVER):
        raise QgsProcessingException(
            shown(
                translate(
                    "hummock",
                    "The ground cover overlaps within a catchment ({over:.2f} map units² twice); mend it first.",
                ),
                over=covered - whole,
            )
        )
    left = whole - covered
    if left > whole * _SLIVER:
        return (total + left * own) / whole
    return total / covered if covered > 0 else own
