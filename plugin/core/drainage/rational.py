"""The peak flow of a small catchment by the rational method, Q = C i A.

E. Kuichling, "The relation between the rainfall and the discharge of sewers in populous districts", Transactions of the
American Society of Civil Engineers 20, 1889: the peak comes when the whole catchment contributes, that is with rain
of constant intensity i over the time of concentration; C is the share of it that runs off.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message

SOURCE = "Kuichling 1889, Trans. ASCE 20"
#: Areas beyond which the method is commonly not used, m²: 200 acres, about 80 ha (common practice, no source).
LARGE_AREA = 200 * 4046.8564224

INDICATION = Text(
    "peak_flow_indication",
    QT_TRANSLATE_NOOP(
        "core",
        "Peak flows by the rational method (Kuichling 1889) are an indication: they hold as far as the runoff "
        "coefficients, the intensity and its duration do that were given, and do not replace a drainage design.",
    ),
)
LARGE_CATCHMENT = Text(
    "peak_flow_large",
    QT_TRANSLATE_NOOP(
        "core", "{count} catchments are larger than 80 ha; the rational method is not commonly used for such areas."
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "One catchment is larger than 80 ha; the rational method is not commonly used for such areas."
    ),
)
BAD_RUNOFF = Text(
    "bad_runoff",
    QT_TRANSLATE_NOOP(
        "core",
        "{name} is {value}: a runoff coefficient is above 0 and at most 1, an intensity is above 0. Correct it.",
    ),
)


class FlowUnits(Enum):
    """Units of intensity, area and flow."""

    SI = "si"  #: mm/h, ha, l/s
    US = "us"  #: in/h, acres, ft³/s

    @property
    def intensity(self) -> str:
        return "mm/h" if self is FlowUnits.SI else "in/h"

    @property
    def area(self) -> str:
        return "ha" if self is FlowUnits.SI else "acre"

    @property
    def flow(self) -> str:
        return "l/s" if self is FlowUnits.SI else "ft³/s"


_INTENSITY = {FlowUnits.SI: 1e-3 / 3600, FlowUnits.US: 0.0254 / 3600}  # m/s
_AREA = {FlowUnits.SI: 1e4, FlowUnits.US: 4046.8564224}  # m²; the international acre, 43,560 ft²
_FLOW = {FlowUnits.SI: 1e-3, FlowUnits.US: 0.3048**3}  # m³/s


@dataclass(frozen=True)
class PeakFlows:
    """``flow``, ``area``, ``coefficient``: (k,) in the units named; ``intensity`` likewise. ``cautions`` for people."""

    flow: np.ndarray
    area: np.ndarray
    coefficient: np.ndarray
    intensity: float
    units: FlowUnits
    cautions: Tuple[Message, ...]
    source: str = SOURCE


def peak_flows(
    area_m2: np.ndarray, coefficient: np.ndarray, intensity: float, units: FlowUnits = FlowUnits.SI
) -> PeakFlows:
    """Peak flows of catchments of ``area_m2`` (k,) with runoff ``coefficient`` (k,) or one for all.

    ``intensity`` of the rain in mm/h or in/h as ``units`` say. No factor is rounded: an acre inch an hour is
    1.0083 ft³/s.
    Raises SurveyError for a coefficient outside (0, 1] or an intensity that is not above 0.
    """
    area_m2 = np.asarray(area_m2, float)
    coefficient = np.broadcast_to(np.asarray(coefficient, float), area_m2.shape)
    wrong = coefficient[~((coefficient > 0) & (coefficient <= 1))]
    if len(wrong):
        raise SurveyError(BAD_RUNOFF, name="coefficient", value=float(wrong[0]))
    if not 0 < intensity < np.inf:
        raise SurveyError(BAD_RUNOFF, name="intensity", value=intensity)
    flow = coefficient * intensity * _INTENSITY[units] * area_m2 / _FLOW[units]
    cautions = [message(INDICATION)]
    large = int(np.count_nonzero(area_m2 > LARGE_AREA))
    if large:
        cautions.append(message(LARGE_CATCHMENT, count=large))
    return PeakFlows(flow, area_m2 / _AREA[units], coefficient, intensity, units, tuple(cautions))
