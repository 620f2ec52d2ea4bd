"""How well the heights of a surface repeat: what every tool on a surface asks about it, and where the answer is from.

What the user gives goes first, then what the survey tells (the file .noise.json beside the mesh), then the usual value.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, Optional, Tuple

from qgis.core import QgsProcessingContext, QgsProcessingFeedback
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.noise import white_part
from ..core.georeference.crs import height_datum, height_unit
from ..core.handover.mesh_noise import MeshNoise, noise_file, read_mesh_noise
from ..core.quality.noise import USUAL_DRIFT, USUAL_SIGMA
from ..core.surface.tin import Tin
from .algorithm import HummockAlgorithm, report
from .localnumbers import shown
from .parameters import number, optional_number
from .surfaceinput import SurfaceAlgorithm

translate = QCoreApplication.translate

_LARGEST = 100.0  # metres


# What is asked


def add_noise(algorithm: HummockAlgorithm, advanced: bool = False) -> None:
    """SIGMA: of one height of the surface, drift included."""
    algorithm.add(
        number("SIGMA", noise_label(), None, 0.0, _LARGEST),
        translate(
            "hummock",
            "Standard deviation of one surveyed height, drift included. Empty: as the survey tells in the file "
            ".noise.json beside the mesh; where there is none 0.015 m, usual for RTK in the open (common practice, no "
            "source). The log says which was taken.",
        ),
        advanced,
    )


def noise_label() -> str:
    return translate("hummock", "Noise of a height (m, 1 sigma; empty: as the survey tells)")


def add_drift(algorithm: HummockAlgorithm) -> None:
    """DRIFT: the part of SIGMA that neighbours share."""
    algorithm.add(
        number(
            "DRIFT", translate("hummock", "Of it drift (m, 1 sigma; empty: as the survey tells)"), None, 0.0, _LARGEST
        ),
        translate(
            "hummock",
            "The part of the noise that wanders within a minute or two, so that points recorded near each other share "
            "it: it hardly matters for a grade along a line, but tilts a crossfall and moves a volume. Empty: as the "
            "file .noise.json beside the mesh says; where there is none 0.007 m. 0 if every height has an error of its "
            "own.",
        ),
        advanced=True,
    )


def add_second_noise(algorithm: HummockAlgorithm) -> None:
    """SECOND_SIGMA and SECOND_DRIFT, of a second surface."""
    algorithm.add(
        number(
            "SECOND_SIGMA",
            translate("hummock", "The same of the second surface (m; 0: a design; empty: as its survey tells)"),
            None,
            0.0,
            _LARGEST,
        ),
        translate(
            "hummock",
            "0 for a design, which is exact; for a second survey the noise of its points. Empty: as the file "
            ".noise.json beside its mesh says; where there is none it counts as a design.",
        ),
    )
    algorithm.add(
        number("SECOND_DRIFT", translate("hummock", "Of it drift (m; second surface)"), None, 0.0, _LARGEST),
        translate("hummock", "Empty: as the file .noise.json beside its mesh says; where there is none 0."),
        advanced=True,
    )


# What is taken


def surface_noise(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    mesh: str = "INPUT",
) -> MeshNoise:
    """Noise of the surface ``tin`` of the parameter ``mesh``; the log says whose figure it is.

    Raises SurveyError for a drift larger than the noise.
    """
    told = told_noise(algorithm, tin, parameters, context, feedback, mesh)
    names, usual = ("SIGMA", "DRIFT"), (USUAL_SIGMA, USUAL_DRIFT)
    return _noise(algorithm, tin, parameters, context, feedback, mesh, names, told, usual)


def second_noise(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    mesh: str = "DESIGN",
) -> MeshNoise:
    """The same of a second surface, which is a design where nothing tells otherwise."""
    told = told_noise(algorithm, tin, parameters, context, feedback, mesh)
    names = ("SECOND_SIGMA", "SECOND_DRIFT")
    return _noise(algorithm, tin, parameters, context, feedback, mesh, names, told, (0.0, 0.0))


def known_noise(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> Optional[MeshNoise]:
    """As :func:`surface_noise` for INPUT, but None where neither the user nor the survey tells."""
    told = told_noise(algorithm, tin, parameters, context, feedback)
    if told is None and optional_number(algorithm, parameters, "SIGMA", context) is None:
        return None
    return _noise(algorithm, tin, parameters, context, feedback, "INPUT", ("SIGMA", ""), told, (0.0, 0.0))


def told_noise(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    mesh: str = "INPUT",
) -> Optional[MeshNoise]:
    """What the file beside the mesh of ``tin`` says, None where there is none that belongs to it."""
    told, said = read_mesh_noise(algorithm.mesh_path(parameters, context, mesh))
    report(said, feedback)
    if told is not None and told.time is not None and len(told.time) != len(tin.vertices):
        return replace(told, time=None)
    return told


def _noise(
    algorithm: SurfaceAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    mesh: str,
    names: Tuple[str, str],
    told: Optional[MeshNoise],
    usual: Tuple[float, float],
) -> MeshNoise:
    """What the user gives, else what is ``told``, else what is ``usual``."""
    total, drift = (optional_number(algorithm, parameters, name, context) for name in names)
    known = (told.total, told.drift) if told is not None else usual
    own_total = known[0] if total is None else total
    own_drift = min(known[1], own_total) if drift is None else drift
    file = noise_file(algorithm.mesh_path(parameters, context, mesh)).name
    source = _as_usual(usual[0]) if told is None else _as_told(file)
    _tell(
        algorithm.surface_name(parameters, context, mesh), tin, (own_total, own_drift),
        (source if total is None else _as_given(), source if drift is None else _as_given()), feedback,
    )  # fmt: skip
    return MeshNoise(white_part(own_total, own_drift), own_drift, None if told is None else told.time)


def _as_given() -> str:
    return translate("hummock", "as given")


def _as_told(file: str) -> str:
    return translate("hummock", "as {file} tells").format(file=file)


def _as_usual(usual: float) -> str:
    if usual == 0:
        return translate("hummock", "a design, as nothing tells otherwise")
    return translate("hummock", "the usual value, as nothing tells")


def _tell(
    name: str, tin: Tin, values: Tuple[float, float], sources: Tuple[str, str], feedback: QgsProcessingFeedback
) -> None:
    """Which figures were taken and from where, and the datum of the heights where it is known."""
    unit = height_unit(tin.crs)
    total, drift = (value / unit.metres for value in values)
    feedback.pushInfo(
        shown(
            translate(
                "hummock",
                "{surface}: noise of a height {total:.4f} {unit} ({source}), of it drift {drift:.4f} {unit} ({other}).",
            ),
            surface=name,
            total=total,
            drift=drift,
            unit=unit.symbol,
            source=sources[0],
            other=sources[1],
        )
    )
    datum = height_datum(tin.crs)
    if datum is not None:
        feedback.pushInfo(translate("hummock", "{surface}: heights are {datum}.").format(surface=name, datum=datum))
