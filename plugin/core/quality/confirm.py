"""Steps that several passes saw at one line on the ground: kerbs, walls, ditches. They are no blunders."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.spatial import cKDTree

#: Steps below so many standard deviations may be noise and confirm nothing.
LEAST = 3.9
_MATES = 24
_APART = 20  # points between two crossings of a line that count as different passes
#: Sizes of one kerb or wall agree to this factor.
RATIO = 1.25
_FAR = 25.0


@dataclass(frozen=True)
class Steps:
    """e steps of height: place ``x, y`` (m), ``order`` (place in the walk), ``rise`` (e, 2): size times
    walking direction,
    ``size`` (m) and ``sigma`` (m) of each. ``narrow``: (e,) bool, a step back of like size is at most three
    points away.
    """

    x: np.ndarray
    y: np.ndarray
    order: np.ndarray
    rise: np.ndarray
    size: np.ndarray
    sigma: np.ndarray
    narrow: np.ndarray


def seen_by_others(steps: Steps, passes: float, slack: float, ratio: float = RATIO) -> np.ndarray:
    """Size (e,) that other passes gave a step that lies on one line with theirs; nan for steps not seen so.

    ``passes``: distance of the passes (m); two others within 3.5 of it make a line, or three within 25 of it.
    ``slack``:
    how far (m) they may be off one line. Like: up towards the same side, sizes within ``ratio`` of each other
    and their noise.
    """
    n = len(steps.x)
    told = np.full(n, np.nan)
    if n < 3 or not np.isfinite(passes):
        return told
    xy = np.column_stack([steps.x, steps.y])
    distance, mate = cKDTree(xy).query(xy, k=min(n, _MATES), distance_upper_bound=_FAR * passes)
    mate, fits = _like(steps, distance, mate, ratio)
    near = fits & (distance <= 3.5 * passes + slack)
    size = np.where(fits, np.abs(steps.size[mate]), 0.0)
    for a in range(mate.shape[1]):
        some = np.flatnonzero(fits[:, a] & np.isnan(told))
        if not len(some):
            continue
        p, q = mate[some, a], mate[some]
        on_line = fits[some] & (np.abs(steps.order[p][:, None] - steps.order[q]) > _APART)
        off = _off_one_line(xy, some[:, None], p[:, None], q, passes)
        on_line &= off <= slack
        count = np.count_nonzero(on_line & (off <= slack / 2), axis=1)
        enough = (count >= 3) | (near[some, a] & np.any(on_line & near[some], axis=1))
        mean = (size[some, a] + np.sum(size[some] * on_line, axis=1)) / (1 + np.count_nonzero(on_line, axis=1))
        told[some[enough]] = (np.sign(steps.size[some]) * mean)[enough]
    return told


def _like(steps: Steps, distance: np.ndarray, mate: np.ndarray, ratio: float) -> Tuple[np.ndarray, np.ndarray]:
    """Mates (e, k) and a mask of those from other passes that rise to the same side by a like size."""
    n = len(steps.x)
    fits = np.isfinite(distance) & (mate != np.arange(n)[:, None])
    mate = np.where(fits, mate, 0)
    fits &= np.abs(steps.order[mate] - steps.order[:, None]) > _APART
    fits &= steps.narrow[mate] | ~steps.narrow[:, None]  # a spike beside a kerb is not the kerb
    own, other = np.abs(steps.size)[:, None], np.abs(steps.size[mate])
    fits &= np.einsum("ijk,ik->ij", steps.rise[mate], steps.rise) > -0.1 * own * other
    allowance = 1.5 * np.hypot(steps.sigma[mate], steps.sigma[:, None])
    fits &= np.maximum(own, other) <= ratio * np.minimum(own, other) + allowance
    return mate, fits


def _off_one_line(xy: np.ndarray, a: np.ndarray, b: np.ndarray, c: np.ndarray, passes: float) -> np.ndarray:
    """How far (m) three places are off one line; inf where they are all at one spot."""
    u, v, w = xy[b] - xy[a], xy[c] - xy[a], xy[c] - xy[b]
    area = np.abs(u[..., 0] * v[..., 1] - u[..., 1] * v[..., 0])
    longest = np.sqrt(np.maximum(np.maximum(np.sum(u**2, axis=-1), np.sum(v**2, axis=-1)), np.sum(w**2, axis=-1)))
    result: np.ndarray = np.where(longest > 0.8 * passes, area / np.maximum(longest, 1e-9), np.inf)
    return result
