"""What lies right beyond a fault that was found and is off by the same, as the ground around it says.

A search ends a fault at the first step that looks like its end. A kerb within it, a wave of the pole or ground that
bends may have been that step. So every way on to one of the next cuts of the walk is held against the ground that all
points but those on this way make.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, NamedTuple, Tuple

import numpy as np

from ..progress import Progress, part, silent
from ..surface.cells import runs
from .beside import Beside, running
from .departure import depart
from .ground import GroundNet
from .stretches import Scale
from .walk import Walk
from .weigh import likelihood

_REACH = 64  # points that may belong to a fault on either side of what was found
_LEAST = 2.5  # standard deviations of a height that a fault is off by
_SURE = 1.0  # logarithm of the likelihood ratio from which the ground around says so
_SHARE = 0.5  # of the fault: what the height over the neighbouring passes must come to
_ADDED = 0.6  # of the fault: what the points that a longer way adds must come to
_FEW = 2  # neighbours that can tell
_LONGER = 1.4  # of two ways this much alike in length the longer is looked at


class Blocks(NamedTuple):
    """Rows of points found: ``first`` and ``last`` point (b,) of each, and ``level`` (b,), how far it is off (m)."""

    first: np.ndarray
    last: np.ndarray
    level: np.ndarray


@dataclass(frozen=True)
class Ways:
    """w ways on from a block: points [low, high) (w,), the ``side`` (w,) they lie on, a number for each end of each
    block, and by how much (m) the block is off.
    """

    low: np.ndarray
    high: np.ndarray
    side: np.ndarray
    level: np.ndarray

    def __len__(self) -> int:
        return len(self.low)

    def take(self, which: np.ndarray) -> Ways:
        return Ways(self.low[which], self.high[which], self.side[which], self.level[which])


def beyond_faults(
    walk: Walk, blocks: Blocks, found: np.ndarray, cuts: np.ndarray, net: GroundNet, beside: Beside, scale: Scale,
    progress: Progress = silent,
) -> Ways:  # fmt: skip
    """The longest way on from each end of each block on which the points are off as the block is.

    ``found``: (q,) bool, points of the walk that are off or in doubt; ``cuts``: (q,) bool, the heights may step before
    these; ``net`` and ``beside``: of all points of the walk.
    """
    ways = _ways(walk, blocks, found, np.flatnonzero(cuts))
    ways = ways.take(np.abs(ways.level) > _LEAST * scale.total)
    ways = ways.take(_likely(walk, ways, beside))
    ways = _thinned(ways.take(np.lexsort((ways.high - ways.low, ways.side))))
    says, away = np.zeros(len(ways), bool), np.zeros(len(ways))
    turn = _turns(ways.side)
    net = net.emptied(found, part(progress, 0.0, 0.2))
    turns = int(turn.max(initial=-1)) + 1
    for k in range(turns):
        some = np.flatnonzero(turn == k)
        number = np.full(len(walk), -1)
        for way, (low, high) in enumerate(zip(ways.low[some].tolist(), ways.high[some].tolist())):
            number[low:high] = way
        ahead = part(progress, 0.2 + 0.8 * k / turns, 0.2 + 0.8 * (k + 1) / turns)
        said = depart(walk, number, len(some), ~found, net, scale, beside, progress=ahead)
        says[some] = likelihood(said.offset, said.sigma, ways.level[some]) > _SURE
        away[some] = said.offset
    ways = ways.take(says)
    return ways.take(_longest(ways, away[says]))


def _longest(ways: Ways, away: np.ndarray) -> np.ndarray:
    """Of the ways (w,) of each side, which rise in length, the last one whose every part is off; their numbers.

    ``away``: (w,) how far their points are off the ground around. Half a way that is off is enough to make all of it
    look so: what a longer one adds to a shorter one is therefore looked at by itself.
    """
    best: Dict[int, int] = {}
    count = (ways.high - ways.low).tolist()
    for k, side in enumerate(ways.side.tolist()):
        points, total = count[k], count[k] * away[k]
        if side in best:
            shorter = best[side]
            points, total = points - count[shorter], total - count[shorter] * away[shorter]
        if total / ways.level[k] > _ADDED * points:
            best[side] = k
    return np.array(list(best.values()), np.int64)


def _ways(walk: Walk, blocks: Blocks, found: np.ndarray, cuts: np.ndarray) -> Ways:
    """All ways from the ends of the blocks to a cut, the end of the piece or what else was found, within reach."""
    marked = np.flatnonzero(found)
    ends = np.unique(np.concatenate([cuts, walk.first, [len(walk)], np.flatnonzero(found[1:] != found[:-1]) + 1]))
    after, before = blocks.last + 1, blocks.first
    following = np.append(marked, len(walk))[np.searchsorted(marked, after)]
    preceding = np.append(-1, marked)[np.searchsorted(marked, before)] + 1
    highest = np.minimum(np.minimum(after + _REACH, walk.last[blocks.last]), following)
    lowest = np.maximum(np.maximum(before - _REACH, walk.first[blocks.first]), preceding)
    ahead, cut_ahead = _between(ends, after + 1, highest + 1)
    back, cut_back = _between(ends, lowest, before)
    return Ways(
        np.append(after[ahead], cut_back),
        np.append(cut_ahead, before[back]),
        np.append(2 * ahead + 1, 2 * back),
        np.append(blocks.level[ahead], blocks.level[back]),
    )


def _thinned(ways: Ways) -> Ways:
    """Of ways in order of side and length, the longest of each length that is about the same."""
    about = (np.log(ways.high - ways.low) / np.log(_LONGER)).astype(np.int64)
    last = (ways.side[1:] != ways.side[:-1]) | (about[1:] != about[:-1])
    return ways.take(np.append(last, True)[: len(ways)])


def _between(places: np.ndarray, low: np.ndarray, high: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """All places, which rise, from ``low`` to before ``high`` (b,): number of the limits and the place, each (k,)."""
    start, end = np.searchsorted(places, low), np.searchsorted(places, high)
    count = np.maximum(end - start, 0)
    return np.repeat(np.arange(len(low)), count), places[runs(start, count)]


def _likely(walk: Walk, ways: Ways, beside: Beside) -> np.ndarray:
    """Mask (w,) of the ways that do not lie on one height with the neighbouring passes, as far as these tell."""
    sums = [running(walk, beside, values) for values in (np.ones(len(beside.at)), beside.away)]
    last = np.maximum(ways.high - 1, ways.low)  # the step out of the way tells nothing
    count, away = (each[last] - each[ways.low] for each in sums)
    off = away * np.sign(ways.level) > _SHARE * np.abs(ways.level) * count
    mask: np.ndarray = (count < _FEW) | off
    return mask


def _turns(side: np.ndarray) -> np.ndarray:
    """How many of the entries before each one (k,), which rise, have the same value."""
    own = np.arange(len(side))
    first = np.append(True, side[1:] != side[:-1])[: len(side)]
    result: np.ndarray = own - np.maximum.accumulate(np.where(first, own, 0))
    return result
