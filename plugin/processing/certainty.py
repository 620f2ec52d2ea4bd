"""What the volume algorithms ask about how sure the surfaces are."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterBoolean
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.study import Certainty
from ..core.handover.mesh_noise import MeshNoise
from ..core.surface.tin import Tin
from .algorithm import HummockAlgorithm
from .parameters import number, optional_number
from .surfaceinput import SurfaceAlgorithm
from .surfacenoise import add_drift, add_noise, add_second_noise, second_noise, surface_noise

translate = QCoreApplication.translate


def add_certainty(algorithm: HummockAlgorithm, second: bool, offset: bool = True) -> None:
    """SIGMA, DRIFT, DRIFT_LENGTH, GROUND and OFFSET_SIGMA; with a ``second`` surface SECOND_SIGMA, SECOND_DRIFT,
    OFFSET.
    """
    add_noise(algorithm)
    if second:
        add_second_noise(algorithm)
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
            number("OFFSET_SIGMA", translate("hummock", "Doubt of the height offset (m, 1 sigma)"), 0.01, 0.0, 100.0),
            translate(
                "hummock",
                "How sure it is that the survey and what it is compared with have the same height datum, or the offset "
                "given: other base, other geoid, other pole. It moves the volume by itself times the area, and is "
                "mostly the largest part. An offset that was found from unchanged ground brings its own doubt in place "
                "of this. Nothing beside a mesh tells it.",
            ),
        )
    add_drift(algorithm)
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
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    mesh: str = "INPUT",
) -> Certainty:
    """How sure the existing surface ``tin`` of the parameter ``mesh`` is. Raises SurveyError."""
    noise = surface_noise(algorithm, tin, parameters, context, feedback, mesh)
    return _certainty(algorithm, noise, parameters, context)


def second_certainty(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> Certainty:
    """How sure the second surface ``tin`` of DESIGN is; its ground adds doubt where it is a survey."""
    noise = second_noise(algorithm, tin, parameters, context, feedback)
    found = _certainty(algorithm, noise, parameters, context)
    return replace(found, ground=found.ground and found.is_survey)


def _certainty(
    algorithm: SurfaceAlgorithm, noise: MeshNoise, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Certainty:
    length = float(algorithm.parameterAsDouble(parameters, "DRIFT_LENGTH", context))
    ground = algorithm.parameterAsBoolean(parameters, "GROUND", context)
    return Certainty(noise.sigma, noise.drift, length, ground, noise.time)


def offset_sigma(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> float:
    return float(algorithm.parameterAsDouble(parameters, "OFFSET_SIGMA", context))


def given_offset(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[float]:
    """Metres by which the second surface is too high; None where that is to be found."""
    return optional_number(algorithm, parameters, "OFFSET", context)
