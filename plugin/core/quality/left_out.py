"""Which flagged stretches are left out of the surface: one rule.

A flagged stretch is left out if it is long, if other visits that meet it say that it is off by its size (at least two
of them, and more than say that it is ground), and if its size is more than its doubt, which is twice the standard
deviation of what these meetings say. All other flagged points are in the surface. What nobody met may be ground as well
as a fault: of such stretches about half are ground (simulated surveys, tests/core/simulated), and they stay.

The user puts all such stretches back with one word, and single points by giving them another status.
"""

from __future__ import annotations

import numpy as np

from .meeting_points import find_met
from .stretches import Scale
from .suspects import Suspects
from .verdicts import MET_NOISE, count_meetings
from .walk import Walk

#: Metres along the walk from which on a stretch is long.
LONG = 5.0
_FEWEST = 2  # meetings that say off
_DOUBT = 2.0  # standard deviations


def left_out(walk: Walk, suspects: Suspects, scale: Scale) -> np.ndarray:
    """Mask (q,) of the points in doubt that are left out. ``suspects``: as decided; ``scale``: noise of heights."""
    result = np.zeros(len(walk), bool)
    some = np.flatnonzero(suspects.doubtful)
    if not len(some):
        return result
    begins = np.append(True, (np.diff(some) > 1) | (np.diff(suspects.group[some]) != 0))
    start = some[begins]
    end = some[np.append(begins[1:], True)] + 1
    walked = np.append(0.0, np.cumsum(np.hypot(np.diff(walk.x), np.diff(walk.y))))
    long = walked[end - 1] - walked[start] >= LONG
    start, end = start[long], end[long]
    if not len(start):
        return result
    level = np.array([np.median(suspects.level[a:b]) for a, b in zip(start.tolist(), end.tolist())])
    group = np.full(len(walk), -1)
    for k, (a, b) in enumerate(zip(start.tolist(), end.tolist())):
        group[a:b] = k
    off, ground = count_meetings(level, group, find_met(walk, group), scale)
    doubt = _DOUBT * MET_NOISE * scale.total / np.sqrt(np.maximum(off, 1))
    out = (off >= _FEWEST) & (off > ground) & (np.abs(level) > doubt)
    return np.append(out, False)[group] & (group >= 0)
