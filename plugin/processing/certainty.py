"""What the volume algorithms ask about how sure the surfaces are."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

from qgis.core import QgsProcessingContext, QgsProcessingFeedback, QgsProcessingParameterBoolean
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.study import SURVEYED, Certainty
from ..core.handover.mesh_noise import OWN_NOISE, noise_file, read_mesh_noise
from ..core.messages import message
from .algorithm import HummockAlgorithm, report
from .parameters import number, optional_number

translate = QCoreApplication.translate


def add_certainty(algorithm: HummockAlgorithm, second: bool, offset: bool = True) -> None:
    """SIGMA, DRIFT, DRIFT_LENGTH, GROUND and OFFSET_SIGMA; with a ``second`` surface SECOND_SIGMA, SECOND_DRIFT,
    OFFSET.
    """
    algorithm.add(
        number(
            "SIGMA",
            translate("hummock", "Noise of a surveyed height (m, 1 sigma; empty: its survey's)"),
            None,
            0.0,
            100.0,
        ),
        translate(
            "hummock",
            "Standard deviation of the height of one point of the existing surface, as repeated points or check points "
            "tell it. Left empty, it and the drift are what the survey itself measured, if the file .noise.json that "
            "“Report of the survey” writes is beside the mesh; else 0.015.",
        ),
    )
    if second:
        algorithm.add(
            number(
                "SECOND_SIGMA",
                translate("hummock", "The same of the second surface (m; 0: a design; empty: its survey's)"),
                None,
                0.0,
                100.0,
            ),
            translate(
                "hummock",
                "0 for a design, which is exact; for a second survey the noise of its points. Left empty, what the "
                "file .noise.json beside the mesh says, else 0.",
            ),
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
        number("DRIFT", translate("hummock", "Drift shared by neighbouring points (m, 1 sigma)"), None, 0.0, 100.0),
        translate("hummock", "Slow errors of the receiver that points recorded near each other have in common."),
        advanced=True,
    )
    if second:
        algorithm.add(
            number("SECOND_DRIFT", translate("hummock", "The same of the second surface (m)"), None, 0.0, 100.0),
            translate("hummock", "0 for a design. Left empty, what is beside its mesh, else 0."),
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
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    mesh: str = "INPUT",
    feedback: Optional[QgsProcessingFeedback] = None,
) -> Certainty:
    """What is said of the existing surface, else what is kept beside the ``mesh`` (name of its parameter)."""
    ground = algorithm.parameterAsBoolean(parameters, "GROUND", context)
    sigma, drift, length = _values(algorithm, parameters, context, ("SIGMA", "DRIFT"), mesh, SURVEYED.sigma, feedback)
    return Certainty(sigma, drift, length, ground)


def second_certainty(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    mesh: str = "DESIGN",
    feedback: Optional[QgsProcessingFeedback] = None,
) -> Certainty:
    """What is said of the second surface; its ground adds doubt where it is a survey."""
    ground = algorithm.parameterAsBoolean(parameters, "GROUND", context)
    names = ("SECOND_SIGMA", "SECOND_DRIFT")
    sigma, drift, length = _values(algorithm, parameters, context, names, mesh, 0.0, feedback)
    return Certainty(sigma, drift, length, ground and max(sigma, drift) > 0)


def offset_sigma(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> float:
    return float(algorithm.parameterAsDouble(parameters, "OFFSET_SIGMA", context))


def given_offset(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[float]:
    """Metres by which the second surface is too high; None where that is to be found."""
    return optional_number(algorithm, parameters, "OFFSET", context)


def _values(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    names: Tuple[str, str],
    mesh: str,
    usual: float,
    feedback: Optional[QgsProcessingFeedback],
) -> Tuple[float, float, float]:
    """Noise, drift and its length: as given, else as kept beside the mesh, else ``usual`` and no drift."""
    sigma, drift = (optional_number(algorithm, parameters, name, context) for name in names)
    layer = algorithm.parameterAsMeshLayer(parameters, mesh, context)
    if sigma is None and drift is None and layer is not None:
        noise, said = read_mesh_noise(layer.source())
        if noise is not None:
            sigma, drift = noise.sigma, noise.drift
            mm = {"sigma": 1000 * sigma, "drift": 1000 * drift, "file": noise_file(layer.source()).name}
            said = (*said, message(OWN_NOISE, name=layer.name(), **mm))
        if feedback is not None:
            report(said, feedback)
    length = float(algorithm.parameterAsDouble(parameters, "DRIFT_LENGTH", context))
    return usual if sigma is None else sigma, drift or 0.0, length
