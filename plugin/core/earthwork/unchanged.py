"""What two surveys say where the ground did not change: the height offset between them, and their noise.

Most ground between two surveys is as it was, and there they differ by noise and by one offset (other base, other
geoid, other pole). The offset is where the differences lie densest: the place at which Tukey's biweight of the
differences, in standard deviations of their noise, is largest (a redescending M-estimate, which real change does
not move; Huber and Ronchetti, Robust Statistics, 2nd ed. 2009, ch. 4; from memory). How much larger or smaller noise
is than stated follows from the differences within two standard deviations of it (an "empirical null": Efron 2004,
J. Amer. Statist. Assoc. 99, 96-104; from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from scipy.special import ndtr

from .places import Places

LARGEST_OFFSET = 0.1  # metres: what differs by more over most of the ground is not taken for an offset
LEAST_SHARE = 0.2  # of the ground compared that must be unchanged
LEAST_AREA = 25.0  # square metres of it

_REACH = 4.685  # standard deviations where the biweight ends: 95 % efficiency for normal noise
_MIDDLE = 3.0  # standard deviations within which the size of noise is judged
_CALM = 3.0  # standard deviations up to which ground may be unchanged
_SCALES = (0.2, 5.0)  # least and largest size of noise over what is stated
_ROUNDS = 60

#: Mean square of a standard normal variable within _MIDDLE, and how fast that follows a wrong scale.
_DENSITY = np.exp(-(_MIDDLE**2) / 2) / np.sqrt(2 * np.pi)
_INSIDE = 2 * ndtr(_MIDDLE) - 1
_SQUARE = 1 - 2 * _MIDDLE * _DENSITY / _INSIDE
_GAIN = _MIDDLE * _DENSITY / _INSIDE * (_MIDDLE**2 - _SQUARE) / _SQUARE


@dataclass(frozen=True)
class Unchanged:
    """``offset``: by how much the later survey is higher (m). ``scale``: of the noise over what was stated.
    ``area``: of the ground that may be unchanged, m². ``given``: whether the offset was given, not found. ``rim``: by
    how much (m) the offset moves with the ground around what changed, whose rim nobody sees."""

    offset: float
    scale: float
    area: float
    given: bool = False
    rim: float = 0.0


def find_unchanged(places: Places, compared: float, offset: Optional[float] = None) -> Optional[Unchanged]:
    """The unchanged ground among places, None where there is too little of it.

    ``compared``: square metres of all ground compared; ``offset``: one that is known (m).
    """
    some = places.sd > 0
    if not np.any(some):
        return None
    area, depth, sd = places.area[some], places.depth[some], places.sd[some]
    middle = _densest(area, depth, sd) if offset is None else offset
    scale = 1.0
    for _ in range(_ROUNDS):
        if offset is None:
            middle = float(next_offset(area, depth[:, None], sd, np.array([middle]), np.array([scale]))[0])
        new = float(next_scale(area, (depth - middle)[:, None], sd, np.array([scale]))[0])
        new = float(np.clip(new, *_SCALES))
        done = abs(new - scale) < 1e-6
        scale = new
        if done:
            break
    quiet = calm(depth - middle, scale * sd)
    agrees = float(area[quiet].sum())
    if agrees < max(LEAST_AREA, LEAST_SHARE * compared) or scale * float(np.median(sd[quiet])) > LARGEST_OFFSET:
        return None
    if offset is None and abs(middle) > LARGEST_OFFSET:
        return None
    return Unchanged(middle, scale, agrees, offset is not None)


def _densest(area: np.ndarray, depth: np.ndarray, sd: np.ndarray) -> float:
    """The offset at which most ground agrees, by steps of half a usual standard deviation."""
    step = max(0.5 * float(np.median(sd)), LARGEST_OFFSET / 500)
    tried = np.arange(-LARGEST_OFFSET - 2 * step, LARGEST_OFFSET + 2.5 * step, step)
    best: List[Tuple[float, float]] = []
    for middle in tried.tolist():
        z = np.minimum(np.abs(depth - middle) / (_REACH * sd), 1.0)
        best.append((float(np.sum(area * (1 - z**2) ** 3)), -abs(middle)))
    return float(tried[max(range(len(tried)), key=lambda k: best[k])])


def next_offset(
    area: np.ndarray, depth: np.ndarray, sd: np.ndarray, offset: np.ndarray, scale: np.ndarray
) -> np.ndarray:
    """One step of the offsets (k,) of k sets of depths (q, k)."""
    z = np.minimum(np.abs(depth - offset) / (_REACH * sd[:, None] * scale), 1.0)
    weight = area[:, None] * (1 - z**2) ** 2
    total = weight.sum(axis=0)
    result: np.ndarray = np.where(total > 0, (weight * depth).sum(axis=0) / np.maximum(total, 1e-300), offset)
    return result


def next_scale(area: np.ndarray, depth: np.ndarray, sd: np.ndarray, scale: np.ndarray) -> np.ndarray:
    """One step (Newton's, for normal noise) of the sizes of noise (k,) of k sets of depths (q, k) about the offset."""
    z = np.abs(depth) / (sd[:, None] * scale)
    weight = area[:, None] * (z < _MIDDLE)
    total = weight.sum(axis=0)
    square = (weight * z**2).sum(axis=0) / np.maximum(total, 1e-300)
    step = (np.sqrt(square / _SQUARE) - 1) / (1 - _GAIN)
    result: np.ndarray = np.where(total > 0, scale * (1 + np.clip(step, -0.3, 0.3)), scale)
    return result


def calm(depth: np.ndarray, sd: np.ndarray) -> np.ndarray:
    """Whether (q,) ground may be unchanged, by its depth less the offset."""
    result: np.ndarray = np.abs(depth) < _CALM * sd
    return result
