"""What the volume algorithms ask about how sure the surfaces are."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

from qgis.core import QgsProcessingContext, QgsProcessingParameterBoolean
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.study import Certainty
from .algorithm import HummockAlgorithm
from .parameters import number, optional_number

translate = QCoreApplication.translate


def add_certainty(algorithm: HummockAlgorithm, second: bool, offset: bool = True) -> None:
    """SIGMA, DRIFT, DRIFT_LENGTH, GROUND and OFFSET_SIGMA; with a ``second`` surface SECOND_SIGMA, SECOND_DRIFT,
    OFFSET.
    """
    algorithm.add(
        number("SIGMA", translate("hummock", "Noise of a surveyed height (m, 1 sigma)"), 0.015, 0.0, 100.0),
        translate(
            "hummock",
            "Standard deviation of the height of one point of the existing surface, as repeated points or check points "
            "tell it. A mesh file does not hold it, so it is asked for.",
        ),
    )
    if second:
        algorithm.add(
            number(
                "SECOND_SIGMA", translate("hummock", "The same of the second surface (m; 0: a design)"), 0.0, 0.0, 100.0
            ),
            translate("hummock", "0 for a design, which is exact; for a second survey the noise of its points."),
        )
    if second:
        algorithm.add(
            number("OFFSET", translate("hummock", "The second surface is too high by (m; empty: found)"), None),
            translate(
                "hummock",
                "Where nothing changed: other base, other geoid, other pole. It is taken off. Left empty, it is found"
                " between two surveys (both with noise) from the ground on which they agree best; none against a "
                "design.",
            ),
        )
    if offset:
        algorithm.add(
            number("OFFSET_SIGMA", translate("hummock", "Height offset between both (m, 1 sigma)"), 0.01, 0.0, 100.0),
            translate(
                "hummock",
                "How sure it is that both have the same height datum, or the offset given: other base, other geoid, "
                "other pole. It moves the volume by itself times the area, and is mostly the largest part. An offset "
                "that was found from unchanged ground brings its own doubt in place of this.",
            ),
        )
    algorithm.add(
        number("DRIFT", translate("hummock", "Drift shared by neighbouring points (m, 1 sigma)"), 0.0, 0.0, 100.0),
        translate("hummock", "Slow errors of the receiver that points recorded near each other have in common."),
        advanced=True,
    )
    if second:
        algorithm.add(
            number("SECOND_DRIFT", translate("hummock", "The same of the second surface (m)"), 0.0, 0.0, 100.0),
            translate("hummock", "0 for a design."),
            advanced=True,
        )
    algorithm.add(
        number("DRIFT_LENGTH", translate("hummock", "Neighbours share drift within (m)"), 30.0, 0.01),
        translate(
            "hummock",
            "Where the points of the mesh are in the order of the walk, drift goes by that. Otherwise this is the side "
            "of a square of ground in which drift is one and the same.",
        ),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterBoolean(
            "GROUND", translate("hummock", "Doubt of the ground between the points"), defaultValue=True
        ),
        translate(
            "hummock",
            "Adds how far the ground departs from the straight lines between points, judged from the surface's own "
            "roughness. Switch it off where the existing surface is a design.",
        ),
        advanced=True,
    )


def first_certainty(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Certainty:
    """What is said of the existing surface."""
    ground = algorithm.parameterAsBoolean(parameters, "GROUND", context)
    sigma, drift, length = _values(algorithm, parameters, context, "SIGMA", "DRIFT")
    return Certainty(sigma, drift, length, ground)


def second_certainty(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Certainty:
    """What is said of the second surface; its ground adds doubt where it is a survey."""
    ground = algorithm.parameterAsBoolean(parameters, "GROUND", context)
    sigma, drift, length = _values(algorithm, parameters, context, "SECOND_SIGMA", "SECOND_DRIFT")
    return Certainty(sigma, drift, length, ground and max(sigma, drift) > 0)


def offset_sigma(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> float:
    return float(algorithm.parameterAsDouble(parameters, "OFFSET_SIGMA", context))


def given_offset(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[float]:
    """Metres by which the second surface is too high; None where that is to be found."""
    return optional_number(algorithm, parameters, "OFFSET", context)


def _values(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext, *names: str
) -> Tuple[float, float, float]:
    sigma, drift, length = (
        float(algorithm.parameterAsDouble(parameters, name, context)) for name in (*names, "DRIFT_LENGTH")
    )
    return sigma, drift, length
