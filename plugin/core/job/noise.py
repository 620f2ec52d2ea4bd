"""What the survey says of its own points."""

from __future__ import annotations

from typing import Optional

import numpy as np

from ..earthwork.study import Certainty
from ..handover.mesh_noise import MeshNoise
from ..report.results import JobResult
from ..surface.tin import Tin

USUAL_NOISE = 0.015  # metres, where no points repeat (common practice of such receivers, no source)
USUAL_DRIFT = 0.007  # metres of it that points recorded within minutes share (the same)


def point_noise(result: JobResult) -> float:
    """Noise of a point's height (m, one standard deviation) as repeated points tell it; the usual one where none do."""
    noise = None if result.check is None else result.check.noise
    return noise.total if noise is not None and noise.total > 0 else USUAL_NOISE


def survey_certainty(result: JobResult) -> Certainty:
    """How sure the surface of the survey is: noise new at every point, drift and times, as the survey tells them.

    What it does not tell is the usual one.
    """
    noise = None if result.check is None else result.check.noise
    sigma, drift = float(np.sqrt(USUAL_NOISE**2 - USUAL_DRIFT**2)), USUAL_DRIFT
    if noise is not None and np.isfinite(noise.total) and noise.total > 0:
        drift = float(noise.drift) if np.isfinite(noise.drift) else 0.0
        sigma = float(np.sqrt(max(0.0, noise.total**2 - drift**2)))
    return Certainty(sigma, drift, ground=True, time=_times(result.surface.tin, result.edited.points.time))


def mesh_noise(result: JobResult) -> Optional[MeshNoise]:
    """What is kept beside the mesh of the survey: how its heights repeat; None where the survey does not tell."""
    noise = None if result.check is None else result.check.noise
    if noise is None or not (np.isfinite(noise.total) and noise.total > 0):
        return None
    found = survey_certainty(result)
    return MeshNoise(found.sigma, found.drift)


def _times(tin: Tin, time: Optional[np.ndarray]) -> Optional[np.ndarray]:
    """Seconds (n,) of the vertices, nan for those that are no points; None where no point has a time."""
    if time is None or not np.any(np.isfinite(time)):
        return None
    return np.where(tin.vertex_source >= 0, time[np.maximum(tin.vertex_source, 0)], np.nan)
