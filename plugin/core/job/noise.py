"""What the survey says of its own points."""

from __future__ import annotations

from dataclasses import replace
from typing import Optional

import numpy as np

from ..alignment.noise import vertex_times
from ..earthwork.study import Certainty
from ..handover.mesh_noise import MeshNoise, node_times, noise_of
from ..points.pointset import PointSet
from ..quality.check import SurveyCheck
from ..quality.noise import USUAL_DRIFT, USUAL_SIGMA
from ..report.results import JobResult
from ..surface.tin import Tin


def point_noise(result: JobResult) -> float:
    """Noise of a point's height (m, one standard deviation) as repeated points tell it; the usual one where none do."""
    return checked_noise(result.check)


def checked_noise(check: Optional[SurveyCheck]) -> float:
    """As :func:`point_noise`, from the checks alone."""
    noise = None if check is None else check.noise
    return noise.total if noise is not None and noise.total > 0 else USUAL_SIGMA


def survey_certainty(result: JobResult) -> Certainty:
    """How sure the surface of the survey is: noise new at every point, drift and times, as the survey tells them.

    What it does not tell is the usual one.
    """
    return certainty_of(result.check, result.surface.tin, result.edited.points)


def certainty_of(check: Optional[SurveyCheck], tin: Tin, points: PointSet) -> Certainty:
    """The same of the surface ``tin`` of some ``points``."""
    found = None if check is None else noise_of(check.noise)
    noise = found or MeshNoise(float(np.sqrt(USUAL_SIGMA**2 - USUAL_DRIFT**2)), USUAL_DRIFT)
    return Certainty(noise.sigma, noise.drift, ground=True, time=vertex_times(tin, points.time))


def mesh_noise(check: Optional[SurveyCheck], tin: Tin, points: PointSet) -> Optional[MeshNoise]:
    """What is kept beside the mesh of a survey: how its heights repeat; None where the survey does not tell."""
    found = None if check is None else noise_of(check.noise)
    return None if found is None else replace(found, time=node_times(tin, points.time))


def thinned_noise(noise: MeshNoise, result: JobResult) -> MeshNoise:
    """The ``noise`` of the mesh of the survey for that of its thinned surface."""
    assert result.thinned is not None
    number = np.searchsorted(np.unique(result.surface.tin.triangles), result.thinned.kept)
    return noise.of_nodes(number)
