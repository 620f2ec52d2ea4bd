"""What other visits say of the height of points of the walk where the tracks cross.

A pass that crosses a kerb or a ditch has no one height there. So the walk is held against the whole range of heights
that the other pass may have at the crossing: what lies within the range is ground as that pass saw it.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple, Union

import numpy as np

from .crossings import Track, range_at
from .walk import Walk

#: Of a height's noise: what two visits differ by at a crossing.
MET_NOISE = 1.6
_BESIDE = 0.5  # of a step: how far from a group's last point tracks may cross


@dataclass(frozen=True)
class Met:
    """m crossings, each told from one side: that of the step from ``point`` (m,), which crosses the one from ``other``.

    ``least``, ``most``: (m,) range (m) of how much higher the walk may be there than the other visit may be.
    """

    point: np.ndarray
    other: np.ndarray
    least: np.ndarray
    most: np.ndarray

    def __len__(self) -> int:
        return len(self.point)

    def take(self, which: Union[slice, np.ndarray]) -> Met:
        return Met(self.point[which], self.other[which], self.least[which], self.most[which])

    @property
    def width(self) -> np.ndarray:
        """What both visits may have there, together (m)."""
        return self.most - self.least

    def beyond(self, level: Union[float, np.ndarray] = 0.0) -> np.ndarray:
        """How far (m) the walk, taken as off by ``level`` (m), lies over (negative: under) the other visit; 0 where
        the two overlap."""
        return np.maximum(self.least - level, 0.0) + np.minimum(self.most - level, 0.0)


def find_met(walk: Walk, group: np.ndarray, track: Optional[Track] = None) -> Met:
    """The crossings of the steps within groups of points with other visits.

    ``group``: (q,) number of each point's group, negative for none; heights are not carried over its ends. ``track``:
    of the walk, where it is known.
    """
    last = len(walk) - 1
    near = (group >= 0) | np.append(group[1:] >= 0, False)
    a, b, share_a, share_b = (Track(walk) if track is None else track).crossings(near)
    step, other = np.append(a, b), np.append(b, a)
    own, at = np.append(share_a, share_b), np.append(share_b, share_a)
    first, second = group[step], group[np.minimum(step + 1, last)]
    # A step out of a group counts where the tracks cross beside its last point.
    inside = (first >= 0) & ((first == second) | (own <= _BESIDE)) | (second >= 0) & (own >= 1 - _BESIDE)
    step, other, own, at = step[inside], other[inside], own[inside], at[inside]
    low, high = range_at(walk, other, at)
    own_low, own_high = _own_range(walk, step, own, group)
    return Met(step + (group[step] < 0), other, own_low - high, own_high - low)


def _own_range(walk: Walk, step: np.ndarray, share: np.ndarray, group: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The same as :func:`.crossings.range_at` for a group's own steps.

    Beyond its ends the height of its last point is carried on.
    """
    low, high = range_at(walk, step, share, group)
    out = group[step] != group[np.minimum(step + 1, len(walk) - 1)]
    point = step + (group[step] < 0)
    flat = walk.z[point]
    alone = out & ~np.isfinite(low)
    return np.where(alone, flat, low), np.where(alone, flat, high)
