"""How much the ground bends, from the walk itself: what decides how far apart passes may be."""

from __future__ import annotations

import numpy as np

from ..points.pointset import PointSet
from .noise import roughness, usual_noise
from .walk import make_walk


def ground_curvature(points: PointSet, spacing: float) -> float:
    """Second derivative of the ground (1/m, root mean square) that matters between passes ``spacing`` m apart.

    From how far recorded heights depart from the chord of ``spacing`` along the passes, the noise taken off
    (:func:`.noise.roughness`), as if the ground bent across the passes as it does along them. A core of the departures
    is taken, so kerbs and other breaks do not count: those belong to breaklines. nan for too few points.
    """
    index = np.flatnonzero(points.used)
    if len(index) < 10 or not spacing > 0:
        return float("nan")
    x, y = points.easting[index] - points.easting[index[0]], points.northing[index] - points.northing[index[0]]
    walk = make_walk(index, x, y, points.height[index])
    sigma = usual_noise(walk)
    if not np.isfinite(sigma):
        return float("nan")
    departure = float(roughness(walk, sigma).at(np.array([spacing / 2]))[0])
    return 2 * departure / (spacing / 2) ** 2
