"""Stretches that meetings part: along one piece other visits say that it is off, beside that piece that it is ground.

What the search marks is one stretch as long as it goes on, though only a piece of it may be off: then meetings of the
rest would speak for all of it. It is parted between the meetings that say off and those that say ground, where the
walk steps most by the level.
"""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from .beside import Beside
from .crossings import Track
from .fits import Sums
from .levels import beside_score, step_score
from .meeting_points import find_met
from .stretch_evidence import Bounds, tell
from .stretches import Scale
from .walk import Walk

_MORE = 2  # meetings that say off, beyond those that say ground, along a piece that is parted from the rest


def part_by_meetings(
    walk: Walk, bounds: Bounds, level: np.ndarray, scale: Scale, track: Track, beside: Beside, sums: Sums
) -> Bounds:
    """The stretches, those parted that meetings part. ``level``: (q,) what the search says each point is off by (m)."""
    start, end, own, sharp = bounds
    group = np.full(len(walk), -1)
    for k in np.flatnonzero(~sharp).tolist():
        group[start[k] : end[k]] = k
    met = find_met(walk, group, track)
    off, ground = tell(own, group, met, scale)
    order = np.argsort(met.point, kind="stable")
    point, vote = met.point[order], (off.astype(int) - ground)[order]
    cuts: List[np.ndarray] = []
    for k in np.flatnonzero(~sharp).tolist():
        some = slice(*np.searchsorted(point, [start[k], end[k]]))
        turns = _turns(point[some], vote[some])
        offset = _offset(len(walk), int(start[k]), int(end[k]), turns, float(own[k]))
        inner = [_place(walk, sums, beside, offset, each, float(own[k]), scale.noise) for each in turns]
        cuts.append(np.unique(np.array([start[k], *inner, end[k]], np.int64)))
    return _with_cuts(bounds, level, cuts)


def _turns(point: np.ndarray, vote: np.ndarray) -> List[Tuple[int, int, int]]:
    """Where meetings turn from one word to the other: between which points, and whether onto what is off (1) or back.

    Back is -1. ``vote``: (m,) 1 off, -1 ground, 0 neither, at ``point`` (m,), which rise.
    """
    total = np.append(0, np.cumsum(vote))
    if len(vote) < _MORE + 1 or not (vote > 0).any() or not (vote < 0).any():
        return []
    lowest = np.minimum.accumulate(total)
    last = int(np.argmax(total - lowest))
    first = int(np.flatnonzero(total[: last + 1] == lowest[last])[-1])
    if total[last] - total[first] < _MORE:
        return []
    result: List[Tuple[int, int, int]] = []
    if total[first] < 0:
        result += _turns(point[:first], vote[:first])
        before = int(np.flatnonzero(vote[:first] < 0)[-1])
        result.append((int(point[before]), int(point[first]), 1))
    if total[-1] < total[last]:
        behind = last + int(np.flatnonzero(vote[last:] < 0)[0])
        result.append((int(point[last - 1]), int(point[behind]), -1))
        result += _turns(point[last:], vote[last:])
    return result


def _offset(n: int, start: int, end: int, turns: List[Tuple[int, int, int]], level: float) -> np.ndarray:
    """What each point (n,) is off by (m): the stretch [start, end) by its level between turns onto it and back."""
    offset = np.zeros(n)
    offset[start:end] = level * (bool(turns) and turns[0][2] < 0)
    for low, high, way in turns:  # one after the other along the walk
        offset[high if way > 0 else low + 1 : end] = level * (way > 0)
    return offset


def _place(
    walk: Walk, sums: Sums, beside: Beside, offset: np.ndarray, turn: Tuple[int, int, int], level: float, noise: float
) -> int:
    """The point before which the level most likely changes at a turn, as the walk steps and as its neighbours lie."""
    low, high, way = turn[0] + 1, max(turn[1], turn[0] + 1), turn[2]
    at = np.arange(low, high + 1)
    score = step_score(walk, sums, at, way * level, noise)
    offset = offset.copy()
    offset[low:high] = np.nan
    score += beside_score(beside, offset, low, high, level * (way < 0), level * (way > 0))
    return int(at[np.argmax(score - 1e-6 * np.abs(at - (low + high) / 2))])


def _with_cuts(bounds: Bounds, level: np.ndarray, cuts: List[np.ndarray]) -> Bounds:
    """The stretches that are not sharp parted at ``cuts``, which hold both ends of each."""
    start, end, own, sharp = bounds
    again = [k for k, each in zip(np.flatnonzero(~sharp).tolist(), cuts) if len(each) > 2]
    parted = [each for each in cuts if len(each) > 2]
    if not again:
        return bounds
    kept = np.delete(np.arange(len(start)), again)
    first = np.concatenate([each[:-1] for each in parted])
    last = np.concatenate([each[1:] for each in parted])
    middle = np.array([np.median(level[a:b]) for a, b in zip(first.tolist(), last.tolist())])
    begin = np.append(start[kept], first)
    order = np.argsort(begin, kind="stable")
    return (
        begin[order],
        np.append(end[kept], last)[order],
        np.append(own[kept], middle)[order],
        np.append(sharp[kept], np.zeros(len(first), bool))[order],
    )
