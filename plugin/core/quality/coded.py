"""Coded line points against their own line: someone stood there on purpose, so only a spike along the line counts."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..linework.constraints import Constraints, LineKind

_FLAG = 5.0  # standard deviations of a spike worth a look
_REJECT = 0.25  # m; no kerb stone or gully makes such a spike at one point of a line


@dataclass(frozen=True)
class Spikes:
    """k coded points off their line: ``index`` into the points, ``size`` (m), ``sigma`` (m), ``gross`` (bool:
    reject).
    """

    index: np.ndarray
    size: np.ndarray
    sigma: np.ndarray
    gross: np.ndarray


def find_spikes(constraints: Constraints, noise: float) -> Spikes:
    """Points of breaklines that stand off their line on either side of them the same way, beyond its usual scatter.

    A boundary runs over kerbs and ditches, so its points are left alone.

    Each point is compared with both neighbours after taking off the slope that the points beyond them give; a ramp
    (a lowered kerb, a ditch's end) goes one way and is no spike.
    """
    found: List[Tuple[int, float, float]] = []
    for line in constraints.lines:
        z, xy, at = line.xyz[:, 2], line.xyz[:, :2], line.points
        if not line.kind & LineKind.BREAKLINE or len(z) < 5 or not np.isfinite(z).all():
            continue
        size = _spike_sizes(xy, z)
        usual = 1.4826 * float(np.median(np.abs(size)))
        sigma = max(usual, 1.3 * noise)
        for k in np.flatnonzero(np.abs(size) > _FLAG * sigma):
            if at[k] >= 0:
                found.append((int(at[k]), float(size[k]), sigma))
    table = np.array(found, float).reshape(-1, 3)
    return Spikes(table[:, 0].astype(np.int64), table[:, 1], table[:, 2], np.abs(table[:, 1]) > _REJECT)


def _spike_sizes(xy: np.ndarray, z: np.ndarray) -> np.ndarray:
    """The smaller of a point's departures from either neighbour, 0 where they have different signs or at the ends."""
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
    size = np.zeros(len(z))
    for k in range(1, len(z) - 1):
        a, b = max(k - 2, 0), min(k + 2, len(z) - 1)
        others = [j for j in (a, k - 1, k + 1, b) if j != k]
        width = run[b] - run[a]
        slope = (z[b] - z[a]) / width if width > 0 else 0.0
        before = z[k] - z[k - 1] - slope * (run[k] - run[k - 1])
        after = z[k] - z[k + 1] + slope * (run[k + 1] - run[k])
        if before * after > 0 and len(others) >= 2:
            size[k] = before if abs(before) < abs(after) else after
    return size
