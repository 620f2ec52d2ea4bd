"""Lines with rejected vertices: carried straight across from the good ones beside, and what of that is told.

For lines from field codes and for lines that were found without them alike.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np


@dataclass(frozen=True)
class Bridge:
    """A stretch of a line whose vertices are rejected.

    ``before``, ``after``: number of the good vertex on either side, -1 where the line has none there: it ends short.
    ``left_out``: (r,) numbers of the rejected vertices. ``xyz``: (m, 3) the good vertices and, where the line runs
    straight between them, the places beside the rejected ones with heights interpolated; where it ends short, the
    rejected ones' own places without heights. ``length``: m in plan, along that.
    """

    before: int
    after: int
    left_out: np.ndarray
    xyz: np.ndarray
    length: float

    @property
    def carried(self) -> bool:
        """Whether the line is carried across; else it ends short."""
        return self.before >= 0 and self.after >= 0


def bridges_of(xyz: np.ndarray, good: np.ndarray, closed: bool) -> Tuple[Bridge, ...]:
    """The stretches of a line of vertices ``xyz`` (k, 3) without a ``good`` (k,) one, in order.

    ``closed``: the last vertex runs on to the first, so that no stretch ends short. None for a line without two good
    vertices. Rejected vertices may have nan as coordinates.
    """
    kept = np.flatnonzero(good)
    if len(kept) < 2:
        return ()
    left = np.flatnonzero(~good)
    place = np.searchsorted(kept, left)  # the good vertex behind each
    if closed:
        place = place % len(kept)
    found = []
    for slot in np.unique(place).tolist():
        some = left[place == slot]
        if closed and slot == 0:  # first those behind the last good vertex
            some = np.concatenate([some[some > kept[-1]], some[some < kept[-1]]])
        before = int(kept[slot - 1]) if slot or closed else -1
        after = int(kept[slot]) if slot < len(kept) else -1
        found.append(_bridge(xyz, before, after, some))
    return tuple(sorted(found, key=lambda bridge: bridge.before))


def _bridge(xyz: np.ndarray, before: int, after: int, left: np.ndarray) -> Bridge:
    if before < 0 or after < 0:
        line = xyz[np.append(before, left) if after < 0 else np.append(left, after)]
        line[1 if after < 0 else 0 : None if after < 0 else -1, 2] = np.nan
        line = line[np.isfinite(line[:, :2]).all(axis=1)]
    else:
        a, b = xyz[before], xyz[after]
        ahead = b[:2] - a[:2]
        square = max(float(ahead @ ahead), 1e-12)
        share = (xyz[left, :2] - a[:2]) @ ahead / square
        share = np.where(np.isfinite(share), share, (np.arange(len(left)) + 1) / (len(left) + 1))
        share = np.concatenate([[0.0], np.sort(np.clip(share, 0, 1)), [1.0]])
        line = a + share[:, None] * (b - a)
    length = float(np.hypot(*np.diff(line[:, :2], axis=0).T).sum())
    return Bridge(before, after, left, line, length)
