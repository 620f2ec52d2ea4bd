"""How volumes follow the height of a design, and how sure the balanced height is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Sequence

import numpy as np

from ..progress import Progress, silent
from .doubt import VolumeDoubt
from .volume import Volume


@dataclass(frozen=True)
class BalanceCurve:
    """Cut, fill (s,) and what is left, cut × factor less fill less surplus (s,), m³, at shifts (s,) of a design (m)."""

    shift: np.ndarray
    cut: np.ndarray
    fill: np.ndarray
    rest: np.ndarray


def balance_curve(
    volume_at: Callable[[float], Volume],
    shifts: Sequence[float],
    factor: float = 1.0,
    surplus: float = 0.0,
    progress: Progress = silent,
) -> BalanceCurve:
    """Volumes at each shift, ``volume_at(shift)``."""
    volumes = []
    for number, shift in enumerate(shifts):
        progress(number / len(shifts), "earthwork")
        volumes.append(volume_at(float(shift)))
    cut, fill = (np.array([getattr(volume, name) for volume in volumes]) for name in ("cut", "fill"))
    return BalanceCurve(np.asarray(shifts, float), cut, fill, cut * factor - fill - surplus)


def rest_sigma(doubt: VolumeDoubt, factor: float = 1.0) -> float:
    """Standard deviation (m³) of cut × factor less fill.

    The covariance of cut and fill follows from the doubts of both and of fill less cut (law of propagation of
    uncertainty, JCGM 100:2008, 5.2.2), cause by cause. The factor is taken as exact.
    """
    variance = 0.0
    for cause in ("random", "systematic", "model"):
        cut, fill, net = (getattr(each, cause) ** 2 for each in (doubt.cut, doubt.fill, doubt.net))
        covariance = (cut + fill - net) / 2
        variance += factor**2 * cut + fill - 2 * factor * covariance
    return float(np.sqrt(max(0.0, variance)))


def height_sigma(doubt: VolumeDoubt, volume: Volume, factor: float = 1.0) -> float:
    """Standard deviation (m) of the balanced height: that of the volumes over the area that a metre of height moves.

    Cut falls by its area and fill grows by its area for each metre; nan where nothing is moved.
    """
    area = factor * volume.cut_area + volume.fill_area
    return rest_sigma(doubt, factor) / area if area > 0 else float("nan")
