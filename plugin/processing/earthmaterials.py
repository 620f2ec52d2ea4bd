"""What the earthwork algorithms ask about the earth itself: shrink and swell, topsoil, waste and truck loads."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.materials import EarthFactors
from .algorithm import HummockAlgorithm
from .parameters import number, optional_number

translate = QCoreApplication.translate


@dataclass(frozen=True)
class EarthChoice:
    """The factors, the depth of ``topsoil`` stripped first (m), and the load of a ``truck`` (m³ loose), if given."""

    factors: EarthFactors
    topsoil: float
    truck: Optional[float]


def add_earth_parameters(algorithm: HummockAlgorithm) -> None:
    """LOOSE, COMPACTED, UNUSABLE, TOPSOIL and TRUCK."""
    algorithm.add(
        number("COMPACTED", translate("hummock", "Fill from one cubic metre of cut (m³ compacted)"), 1.0, 0.1, 5.0),
        translate(
            "hummock",
            "Shrinkage: 0.9 where ten cubic metres in the ground make nine of fill. It depends on the material; take "
            "it from tests or the contract.",
        ),
        advanced=True,
    )
    algorithm.add(
        number("LOOSE", translate("hummock", "Loose from one cubic metre in the ground (m³)"), 1.0, 0.1, 5.0),
        translate("hummock", "Swell: how much room dug earth takes on a truck, such as 1.25."),
        advanced=True,
    )
    algorithm.add(
        number("UNUSABLE", translate("hummock", "Share of cut that cannot be used as fill (%)"), 0.0, 0.0, 100.0),
        translate("hummock", "It is taken away, whatever the balance."),
        advanced=True,
    )
    algorithm.add(
        number("TOPSOIL", translate("hummock", "Topsoil stripped first (m)"), 0.0, 0.0, 100.0),
        translate("hummock", "Even depth, wherever earth is moved; cut and fill are then told from the bared ground."),
        advanced=True,
    )
    algorithm.add(
        number("TRUCK", translate("hummock", "Load of a truck (m³ loose)"), None, 0.01, 10_000.0),
        translate("hummock", "For the number of loads of waste and borrow; empty: none are told."),
        advanced=True,
    )


def chosen_earth(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> EarthChoice:
    """What was chosen. Raises SurveyError for values that make no sense."""
    loose, compacted, unusable, topsoil = (
        algorithm.parameterAsDouble(parameters, name, context) for name in ("LOOSE", "COMPACTED", "UNUSABLE", "TOPSOIL")
    )
    factors = EarthFactors(loose, compacted, unusable / 100)
    return EarthChoice(factors, topsoil, optional_number(algorithm, parameters, "TRUCK", context))
