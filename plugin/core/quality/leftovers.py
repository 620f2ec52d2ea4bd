"""What a search leaves behind: ends of faults that were not cut where they begin."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from .fits import Sums, offset_of
from .stretches import Scale
from .walk import Walk

_REACH = 8  # points beside a fault that may belong to it
_BEYOND = 8  # points of ground they are held against
_LEAST = 4  # of these there must be
_BEND = 0.5  # of the departure from straight lines: what curved ground does to a step seen from both sides
_CLEAR = 3.0  # standard deviations of the step between the two
_SHARE = 0.4  # of the fault: what the step must come to


def beside_faults(walk: Walk, found: np.ndarray, level: np.ndarray, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Points (k,) right beside groups of ``found`` (q,) that step off the ground the same way, and by how much (m).

    ``level``: (q,) how far the found points are off (m). Up to eight points on either side of a group are held against
    the next eight; as many belong to it as make the step clearest.
    """
    index, size = [np.empty(0, np.int64)], [np.empty(0)]
    sums, run = Sums(walk), np.append(0, np.cumsum(found))
    joined = walk.piece[1:] == walk.piece[:-1]
    for ahead in (True, False):
        changes = (found[:-1] & ~found[1:]) if ahead else (~found[:-1] & found[1:])
        edge = np.flatnonzero(changes & joined) + 1  # the first point after the change
        fault = level[edge - 1] if ahead else level[edge]
        count, step = _clearest(walk, sums, run, edge, ahead, fault, scale)
        for k in np.flatnonzero(count):
            low = edge[k] if ahead else edge[k] - count[k]
            index.append(np.arange(low, low + count[k]))
            size.append(np.full(count[k], step[k]))
    return np.concatenate(index), np.concatenate(size)


def _clearest(
    walk: Walk, sums: Sums, run: np.ndarray, edge: np.ndarray, ahead: bool, fault: np.ndarray, scale: Scale
) -> Tuple[np.ndarray, np.ndarray]:
    """How many points before or after ``edge`` (k,) seem to belong to the fault there, and their step off the ground.

    ``run``: (q + 1,) running count of the points found; ``fault``: (k,) how far these are off (m). 0 for none.
    """
    best, clear, size = np.zeros(len(edge), np.int64), np.full(len(edge), _CLEAR), np.zeros(len(edge))
    if not len(edge):
        return best, size
    trend = sums.trend(edge)
    for count in range(1, _REACH + 1):
        if ahead:
            middle = np.minimum(edge + count, walk.last[edge])
            near, far = (edge, middle), (middle, np.minimum(middle + _BEYOND, walk.last[edge]))
        else:
            middle = np.maximum(edge - count, walk.first[edge])
            near, far = (middle, edge), (np.maximum(middle - _BEYOND, walk.first[edge]), middle)
        fits = (far[1] - far[0] >= _LEAST) & (near[1] - near[0] == count)
        fits &= run[np.maximum(near[1], far[1])] == run[np.minimum(near[0], far[0])]
        step, variance = offset_of(sums.over(*near), sums.over(*far), scale.noise, trend)
        apart = walk.spacing * (count + _BEYOND) / 2
        variance = variance + (_BEND * scale.rough.at(np.array([apart / 2]))[0]) ** 2
        score = np.where(fits, step * np.sign(fault) / np.sqrt(variance), 0.0)
        better = (score > clear) & (np.abs(step) > _SHARE * np.abs(fault))
        best[better], clear[better], size[better] = count, score[better], step[better]
    return best, size
