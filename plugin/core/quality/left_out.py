"""Which flagged stretches are left out of the surface: one rule.

A flagged stretch is left out if it is long, if other visits meet it at least twice and along at least half of it, if
every one of them says that it is off by its size, and if its size is more than its doubt, which is twice the standard
deviation of what these meetings say. All other flagged points are in the surface. What nobody met, or what one meeting
takes for ground, may be ground as well as a fault: of such stretches about half are (simulated surveys,
tests/core/simulated), and they stay.

The user puts all such stretches back with one word, and single points by giving them another status.
"""

from __future__ import annotations

from typing import Optional, Tuple

import numpy as np

from .crossings import Track
from .meeting_points import MET_NOISE, find_met
from .stretch_evidence import count_meetings
from .stretches import Scale
from .suspects import Suspects
from .walk import Walk

#: Metres along the walk from which on a stretch is long.
LONG = 5.0
_FEWEST = 2  # meetings that say off
_ALONG = 0.5  # of the stretch: from the first of them to the last
_DOUBT = 2.0  # standard deviations


def left_out(walk: Walk, suspects: Suspects, scale: Scale, track: Optional[Track] = None) -> np.ndarray:
    """Mask (q,) of the points in doubt that are left out.

    ``suspects``: as decided; ``scale``: noise of heights; ``track``: of the walk, where it is known.
    """
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
    met = find_met(walk, group, track)
    off, _ = count_meetings(level, group, met, scale)
    every, along = _spanned(group[met.point], met.point, len(start))
    doubt = _DOUBT * MET_NOISE * scale.total / np.sqrt(np.maximum(off, 1))
    out = (off >= _FEWEST) & (off == every) & (along >= _ALONG * (end - start)) & (np.abs(level) > doubt)
    return np.append(out, False)[group] & (group >= 0)


def _spanned(of: np.ndarray, point: np.ndarray, count: int) -> Tuple[np.ndarray, np.ndarray]:
    """Meetings of each of ``count`` stretches, at ``point`` (m,) of ``of`` (m,), and how many points they span."""
    first, last = np.full(count, np.iinfo(np.int64).max), np.full(count, -1)
    np.minimum.at(first, of, point)
    np.maximum.at(last, of, point)
    every = np.bincount(of, minlength=count)
    return every, np.where(every > 0, last - first + 1, 0)
