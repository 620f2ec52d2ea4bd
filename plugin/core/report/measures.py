"""Figures the report works out from results."""

from __future__ import annotations

import math

import numpy as np

from ..surface.tin import Tin
from .results import JobResult


def claimed_sigma(result: JobResult) -> float:
    """Median standard deviation of a used point's height as the receiver claims it, metres; nan if unknown."""
    sigma = result.points.sigma_v[result.points.used]
    sigma = sigma[np.isfinite(sigma)]
    return float(np.median(sigma)) if len(sigma) else math.nan


def slopes(tin: Tin) -> np.ndarray:
    """Slope of each triangle (m,) as rise over run."""
    corner = tin.corners()
    normal = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
    return np.hypot(normal[:, 0], normal[:, 1]) / normal[:, 2]


def weighted_median(values: np.ndarray, weights: np.ndarray) -> float:
    """The value below which half of the weight lies."""
    order = np.argsort(values)
    total = np.cumsum(weights[order])
    return float(values[order][np.searchsorted(total, total[-1] / 2)])


def plan_length(xy: np.ndarray, closed: bool) -> float:
    """Length of the line ``xy`` (k, 2), closed or not, in its own unit."""
    if closed:
        xy = np.vstack([xy, xy[:1]])
    return float(np.hypot(*np.diff(xy, axis=0).T).sum())
