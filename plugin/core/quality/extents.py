"""How far a long fault goes on: across kerbs and ditches, where the step of the walk is the ground's own.

A pole of another height stays so until somebody sets it right. Where a stretch ends at a step that other passes have
too, nothing says that the fault ends there; it goes on as long as the ground around does not deny it.
"""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..progress import Progress, part, silent
from .departure import depart
from .stretches import Scale, Stretches
from .walk import Walk
from .weigh import likelihood

_LONG = 15  # points of a fault that may go on
_FARTHEST = 8  # stretches it is followed over, either way
_DENIED = -2.5  # logarithm of the likelihood ratio from which the ground around denies it


def go_on(
    walk: Walk, stretches: Stretches, found: np.ndarray, scale: Scale, progress: Progress = silent
) -> Tuple[np.ndarray, np.ndarray]:
    """Mask (t,) of stretches into which a long fault goes on, and how far off (m) they are then.

    ``found``: (t,) bool, stretches off or in doubt.
    """
    level, fresh = _long_faults(walk, stretches, found), np.zeros(len(stretches), bool)
    piece = walk.piece[stretches.start]
    joined = np.append(False, (piece[1:] == piece[:-1])) & stretches.seen
    taken = found.copy()
    for turn in range(_FARTHEST):
        ahead = np.append(0.0, level[:-1]) * joined
        back = np.append((level[1:] * joined[1:]), 0.0)
        carried = np.where(ahead != 0, ahead, back)
        asked = (carried != 0) & ~taken
        if not asked.any():
            break
        number = np.where(asked, np.cumsum(asked) - 1, -1)
        count = int(np.count_nonzero(asked))
        said = depart(
            walk, number[stretches.of], count, ~(taken | asked)[stretches.of], stretches.net, scale,
            stretches.beside, progress=part(progress, turn / _FARTHEST, (turn + 1) / _FARTHEST),
        )  # fmt: skip
        goes = np.flatnonzero(asked)[likelihood(said.offset, said.sigma, carried[asked]) > _DENIED]
        taken |= asked
        fresh[goes], level[goes] = True, carried[goes]
    return fresh, np.where(fresh, level, 0.0)


def _long_faults(walk: Walk, stretches: Stretches, found: np.ndarray) -> np.ndarray:
    """Offset (t,) of the stretches of long unbroken rows of like ones, 0 elsewhere."""
    offset, piece = np.where(found, stretches.offset, 0.0), walk.piece[stretches.start]
    like = found[1:] & found[:-1] & (piece[1:] == piece[:-1])
    like &= np.abs(np.diff(offset)) < 0.35 * np.maximum(np.abs(offset[1:]), np.abs(offset[:-1]))
    row = np.append(0, np.cumsum(~like))
    size = stretches.end - stretches.start
    points = np.bincount(row, size)
    mean = np.bincount(row, offset * size) / points
    result: np.ndarray = np.where(found & (points[row] >= _LONG), mean[row], 0.0)
    return result
