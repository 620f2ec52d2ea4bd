"""The noise of a surface's heights along a line: from its survey points, or from two figures.

A mesh keeps no times. The receiver's drift, common to points recorded within a minute or two, then has to be laid out
by place. The rule: passes run along the line. Every strip of ``STRIP`` metres beside it is a pass of its own, walked at
``WALKING`` metres a second, and drifts by itself. So drift falls out of a grade along the line nearly all, and tilts a
crossfall: the cautious choice, as real passes are often wider apart. Where the times are known they decide.
"""

from __future__ import annotations

from typing import Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import PointSet
from ..surface.tin import GRID, Tin
from .line import Alignment
from .slopes import HeightNoise

#: Seconds over which drift forgets itself; common practice, no source.
DRIFT_TIME = 90.0
STRIP, WALKING = 1.0, 1.2
_REACH = 60.0  # metres beside the line in which vertices get a pass; farther ones drift alone

DRIFT_TOO_LARGE = Text(
    "alignment.drift_too_large",
    QT_TRANSLATE_NOOP(
        "core",
        "The drift of {drift:g} m is larger than the standard deviation of a height, {sigma:g} m, of which it is a "
        "part. Give a smaller drift or a larger standard deviation.",
    ),
    metric=True,  # as the options are
)
NO_POINTS_MATCH = Text(
    "alignment.no_points_match",
    QT_TRANSLATE_NOOP(
        "core",
        "None of the {count} points lies at a vertex of the surface, so they cannot tell its noise. Give the points "
        "that the surface was built from.",
    ),
)


def white_part(sigma: float, drift: float) -> float:
    """What is new at every point (m), of a height's standard deviation ``sigma`` with ``drift`` in it.

    Raises SurveyError for a drift that is larger.
    """
    if drift > sigma:
        raise SurveyError(DRIFT_TOO_LARGE, drift=drift, sigma=sigma)
    return float(np.sqrt(sigma**2 - drift**2))


def strip_noise(line: Alignment, tin: Tin, sigma: float, drift: float, drift_time: float = DRIFT_TIME) -> HeightNoise:
    """Noise of heights with the standard deviation ``sigma`` (m), ``drift`` (m) of it drifting, times not known.

    Raises SurveyError for a drift larger than sigma.
    """
    own = white_part(sigma, drift)
    return HeightNoise(own, drift, drift_time, strip_times(line, tin, drift_time))


def strip_times(line: Alignment, tin: Tin, drift_time: float = DRIFT_TIME) -> np.ndarray:
    """Times (n,) in seconds as if every strip beside ``line`` were a pass; nan for vertices far from it."""
    time = np.full(len(tin.vertices), np.nan)
    place = tin.vertices[:, :2] + tin.origin
    low, high = line.xy.min(axis=0) - _REACH, line.xy.max(axis=0) + _REACH
    near = np.flatnonzero(np.all((place >= low) & (place <= high), axis=1))
    if not len(near):
        return time
    distance, offset = line.locate(place[near])
    close = np.abs(offset) <= _REACH
    strip = np.floor(offset / STRIP + 0.5)
    apart = line.length / WALKING + 100 * drift_time
    time[near[close]] = (strip * apart + distance / WALKING)[close]
    return time


def noise_from_points(
    line: Alignment, tin: Tin, points: PointSet, sigma: float, drift: float, drift_time: float = DRIFT_TIME
) -> Tuple[HeightNoise, int]:
    """Noise with the times of ``points`` that are vertices of the surface, and their own ``sigma_v`` where known.

    ``sigma`` (m) is for the others; ``drift`` (m) is part of either, and where a point claims less than that all of
    its noise drifts. Vertices without a time get one by strips, see :func:`strip_times`, if no point has one. Returns
    the noise and how many vertices are points. Raises SurveyError where none is, and for a drift larger than sigma.
    """
    white_part(sigma, drift)
    nearest = _points_of(tin, points)
    found = nearest >= 0
    if not np.any(found):
        raise SurveyError(NO_POINTS_MATCH, count=len(points))
    whole = np.full(len(nearest), sigma)
    claimed = points.sigma_v[nearest[found]]
    whole[found] = np.where(np.isfinite(claimed) & (claimed > 0), claimed, sigma)
    time = np.full(len(nearest), np.nan)
    time[found] = points.time[nearest[found]]
    if not np.any(np.isfinite(time)):
        time = strip_times(line, tin, drift_time)
    own = np.sqrt(np.maximum(whole**2 - drift**2, 0.0))
    return HeightNoise(own, drift, drift_time, time), int(np.count_nonzero(found))


def survey_noise(line: Alignment, tin: Tin, time: Optional[np.ndarray], sigma: float, drift: float) -> HeightNoise:
    """Noise of a surface made from points recorded at ``time`` (p,) in seconds; None where that is not known."""
    return timed_noise(line, tin, vertex_times(tin, time), sigma, drift)


def timed_noise(line: Alignment, tin: Tin, time: Optional[np.ndarray], sigma: float, drift: float) -> HeightNoise:
    """Noise of a surface whose vertices were recorded at ``time`` (n,) in seconds, nan where unknown; None: by strips.

    Raises SurveyError for a drift larger than sigma.
    """
    if time is None:
        return strip_noise(line, tin, sigma, drift)
    return HeightNoise(white_part(sigma, drift), drift, DRIFT_TIME, time)


def vertex_times(tin: Tin, time: Optional[np.ndarray]) -> Optional[np.ndarray]:
    """Seconds (n,) of the vertices from those (p,) of the points; nan for those that are no points, None for none."""
    if time is None or not np.any(np.isfinite(time)):
        return None
    return np.where(tin.vertex_source >= 0, time[np.maximum(tin.vertex_source, 0)], np.nan)


def _points_of(tin: Tin, points: PointSet) -> np.ndarray:
    """Number (n,) of the point at each vertex, -1 for none; of several the first."""
    used = np.flatnonzero(points.used)
    if not len(used):
        return np.full(len(tin.vertices), -1)
    place = np.column_stack([points.easting, points.northing])[used] - tin.origin
    away, which = cKDTree(place).query(tin.vertices[:, :2], distance_upper_bound=GRID)
    return np.where(np.isfinite(away), used[np.minimum(which, len(used) - 1)], -1)
