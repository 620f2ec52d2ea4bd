"""Groups of points against the ground around them, each looked at without itself."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List

import numpy as np
from scipy.spatial import cKDTree

from ..progress import Progress, part, silent
from .beside import Beside, unevenness
from .ground import GroundNet, Prediction
from .stretches import Scale
from .walk import Walk

_COLOURS = 4
_AROUND = 2.2  # distances of the passes


@dataclass(frozen=True)
class Departure:
    """For each of g groups of points: mean ``offset`` (m) from the ground around it and its standard deviation
    ``sigma``
    (m; inf where nobody knows). ``uneven``: how far (m) the ground around departs from straight lines between passes.
    ``varies``: how much (m) the departures within it differ, as :func:`range_within`.
    """

    offset: np.ndarray
    sigma: np.ndarray
    uneven: np.ndarray
    varies: np.ndarray


def range_within(value: np.ndarray, group: np.ndarray, count: int) -> np.ndarray:
    """From a tenth to nine tenths of the ``value`` (k,) of each of ``count`` groups (k,); inf for fewer than four."""
    order = np.lexsort((value, group))
    value, first = value[order], np.searchsorted(group[order], np.arange(count + 1))
    size = np.diff(first)
    result = np.full(count, np.inf)
    some = size >= 4
    low, last = first[:-1][some], size[some] - 1
    result[some] = value[low + np.rint(0.9 * last).astype(np.int64)] - value[low + np.rint(0.1 * last).astype(np.int64)]
    return result


def colours_of(x: np.ndarray, y: np.ndarray, reach: float) -> np.ndarray:
    """A colour (g,) for each place so that places within ``reach`` of each other mostly differ."""
    n = len(x)
    colour = np.zeros(n, np.int64)
    if n < 2 or not np.isfinite(reach):
        return colour
    pairs = cKDTree(np.column_stack([x, y])).query_pairs(reach, output_type="ndarray")
    beside: List[List[int]] = [[] for _ in range(n)]
    for a, b in np.sort(pairs, axis=1).tolist():
        beside[b].append(a)
    chosen = [0] * n
    for k in range(n):
        used = [0] * _COLOURS
        for other in beside[k]:
            used[chosen[other]] += 1
        chosen[k] = used.index(min(used))
    return np.array(chosen, np.int64)


def depart(
    walk: Walk,
    group: np.ndarray,
    count: int,
    trusted: np.ndarray,
    net: GroundNet,
    scale: Scale,
    beside: Beside,
    together: bool = False,
    progress: Progress = silent,
) -> Departure:
    """How far each group lies from the ground that the ``trusted`` points (q,) but itself and coded lines make.

    ``group``: (q,) number of each point's group, -1 for none; ``count``: how many groups. A few other groups far
    away are left out with each, so that four questions do for all; ``together``: all groups are left out at once.
    """
    point = np.flatnonzero(group >= 0)
    height, gain, reach = (np.full(len(walk), np.nan) for _ in range(3))
    if len(point):
        size = np.maximum(np.bincount(group[point], minlength=count), 1)
        x, y = (np.bincount(group[point], c[point], count) / size for c in (walk.x, walk.y))
        alone = not together and trusted[point].any()  # else all groups are left out in any case
        colour = colours_of(x, y, 3 * scale.passes)[group[point]] if alone else np.zeros(len(point), np.int64)
        for each in range(_COLOURS if alone else 1):
            ahead = part(progress, each / _COLOURS, (each + 1) / _COLOURS)
            ahead(0.0, "quality")
            asked = point[colour == each]
            if len(asked):
                known = trusted.copy()
                known[asked] = False
                said = net.ask(known, asked, np.column_stack([walk.x[asked], walk.y[asked]]), ahead)
                height[asked], gain[asked], reach[asked] = said.height, said.gain, said.reach
    plain = _mean(walk, group, count, point, Prediction(height, gain, reach), scale)
    if not len(point):
        return plain
    uneven = unevenness(walk, beside, point, trusted & (group < 0), _AROUND * scale.passes, scale.total)
    mean = np.bincount(group[point], uneven, count) / size
    return Departure(plain.offset, np.hypot(plain.sigma, mean), mean, plain.varies)


def _mean(walk: Walk, group: np.ndarray, count: int, point: np.ndarray, said: Prediction, scale: Scale) -> Departure:
    """Mean departure of each group, every place weighted by how well the ground is known there."""
    known = point[np.isfinite(said.height[point])]
    of = group[known]
    away = walk.z[known] - said.height[known]
    spread = scale.noise**2 * said.gain[known] + scale.rough.at(said.reach[known]) ** 2
    spread += scale.drift**2 * (1 + said.gain[known])
    number, weight = np.bincount(of, minlength=count), np.bincount(of, 1 / spread, count)
    some = number > 0
    offset, sigma = np.zeros(count), np.full(count, np.inf)
    np.divide(np.bincount(of, away / spread, count), weight, out=offset, where=some)
    reach = np.bincount(of, said.reach[known], count) / np.maximum(number, 1)
    independent = np.clip(number * walk.spacing / (2 * np.maximum(reach, walk.spacing)), 1, 3)
    sigma[some] = np.sqrt(
        (scale.noise**2 / np.maximum(number, 1))[some] + (number / np.maximum(weight, 1e-12) / independent)[some]
    )
    return Departure(offset, sigma, np.zeros(count), range_within(away, of, count))
