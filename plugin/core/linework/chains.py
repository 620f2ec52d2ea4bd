"""What lines from the field and drawn lines need alike: repeated places and rings without area."""

from __future__ import annotations

import numpy as np

from .convention import SAME_PLACE


def first_of_places(xy: np.ndarray) -> np.ndarray:
    """Mask (k,) of the vertices of ``xy`` (k, 2) that are not at the place of the kept one before.

    Two positions are one place when they lie less than ``SAME_PLACE`` apart in plan.
    """
    keep = np.ones(len(xy), bool)
    if len(xy) < 2:
        return keep
    near = np.hypot(*np.diff(xy, axis=0).T) < SAME_PLACE
    for index in np.flatnonzero(near) + 1:  # rare
        before = index - 1 - int(np.argmax(keep[index - 1 :: -1]))
        keep[index] = not same_place(xy[before], xy[index])
    return keep


def same_place(first: np.ndarray, second: np.ndarray) -> bool:
    """Whether two positions (2,) or (3,) are one place in plan."""
    return bool(np.hypot(first[0] - second[0], first[1] - second[1]) < SAME_PLACE)


def count_places(xy: np.ndarray) -> int:
    """Number of distinct places among ``xy`` (k, 2), judged on the ``SAME_PLACE`` grid."""
    if not len(xy):
        return 0
    return len(np.unique(np.rint((xy - xy[0]) / SAME_PLACE).astype(np.int64), axis=0))


def is_flat_ring(xy: np.ndarray) -> bool:
    """Whether all vertices of a ring (k, 2) lie on one straight line, so that it encloses nothing."""
    away = xy - xy[0]
    far = away[np.argmax(np.hypot(*away.T))]
    length = np.hypot(*far)
    if length < SAME_PLACE:
        return True
    return bool(np.max(np.abs(away[:, 0] * far[1] - away[:, 1] * far[0])) / length < SAME_PLACE)
