"""Which points of a walk are off the ground or may be: the search, a second look near what it found, what is left."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import partial
from typing import Optional, Tuple

import numpy as np

from ..progress import Progress, part, silent
from .beside import Beside
from .beyond import Blocks, beyond_faults
from .ground import GroundNet, ground_net
from .leftovers import beside_faults
from .meanwhile import Meanwhile
from .noise import roughness, usual_noise
from .search import SURE, search
from .segments import around
from .stretches import Fixed, Scale
from .walk import Walk

_ROUNDS = 2
_SURE = (SURE, 1.5 * SURE)  # what a second look finds is smaller and less sure
_UNEVEN = 1.03  # of the noise: what ground that no plane follows adds to it
_LEAST_NOISE = 0.002  # m; no receiver repeats better, and made-up heights without noise must not be torn apart
_DRIFT = 0.6  # of the noise, before anything is known of it
_BETWEEN = 45  # points between two groups that may be one
_LONG = 12  # points of either group
_ACROSS = 320  # points between two groups off by as much either way
_SAME = 0.35  # of their offset: how well the two agree


@dataclass(frozen=True)
class Suspects:
    """Of a walk of q points. ``off``: (q,) bool, off the ground. ``doubtful``: (q,) bool, perhaps; look there.
    ``level``: (q,) by how much (m), 0 elsewhere; ``sigma``: (q,) standard deviation of it (m), nan unknown. ``group``:
    (q,) number of what was found together, -1 for nothing.
    """

    off: np.ndarray
    doubtful: np.ndarray
    level: np.ndarray
    sigma: np.ndarray
    group: np.ndarray
    net: Optional[GroundNet] = None
    beside: Optional[Beside] = None

    @property
    def marked(self) -> np.ndarray:
        mask: np.ndarray = self.off | self.doubtful
        return mask


def find_suspects(walk: Walk, fixed: Fixed, passes: float, progress: Progress = silent) -> Suspects:
    """Search the walk. ``fixed``: coded points; ``passes``: distance of the passes (m)."""
    gathered = _Gathered(len(walk))
    cuts = np.zeros(len(walk), bool)
    whole: Optional[Tuple[GroundNet, Beside, Scale]] = None
    fresh = gone = np.zeros(len(walk), bool)
    with Meanwhile(1) as pool:  # Qhull runs without Python's lock: meanwhile the walk is cut
        net = pool.start(ground_net, walk, fixed.xyz, fixed.lines)
        for turn in range(_ROUNDS):
            kept = np.flatnonzero(~gathered.off)
            rest = walk.take(~gathered.off)
            scale = scale_of(rest, passes)
            progress(turn * 0.4, "quality")
            if scale is None:
                break
            # The second time only near what was found: a fault may have hidden a smaller one.
            where = None if turn == 0 else around(np.flatnonzero(fresh[kept]), len(rest))
            net = pool.start(net.result().without, gathered.off[~gone]) if turn else net
            gone = gathered.off.copy()
            ahead = part(progress, turn * 0.4, (turn + 1) * 0.4)
            found = search(rest, fixed, partial(pool.await_, net, ahead, 0.3), scale, _SURE[turn], where, ahead)
            gathered.put(kept, found.off, found.doubtful, found.offset, found.sigma, found.group)
            cuts[kept[found.cuts]] = True
            if turn == 0:
                whole = net.result(), found.beside, scale
            fresh = _beside(gathered.off | gathered.doubtful)
            if turn == _ROUNDS - 1:
                gathered.put_beside(walk, scale)
    gathered.put_between()
    gathered.put_across(walk)
    if whole is not None:
        gathered.put_beyond(walk, cuts, *whole, part(progress, 0.8, 1.0))
    suspects = gathered.suspects()
    return suspects if whole is None else replace(suspects, net=whole[0], beside=whole[1])


def scale_of(walk: Walk, passes: float) -> Optional[Scale]:
    noise = usual_noise(walk)
    if np.isnan(noise):
        return None
    noise = max(_UNEVEN * noise, _LEAST_NOISE)
    return Scale(noise, _DRIFT * noise, passes, roughness(walk, noise))


class _Gathered:
    """What was found so far. A point off stays so; what is found again in doubt stays with its first group."""

    def __init__(self, n: int) -> None:
        self.off, self.doubtful = np.zeros(n, bool), np.zeros(n, bool)
        self.level, self.sigma = np.zeros(n), np.full(n, np.nan)
        self.group = np.full(n, -1)
        self._groups = 0

    def put(
        self, at: np.ndarray, off: np.ndarray, doubtful: np.ndarray, level: np.ndarray, sigma: np.ndarray,
        group: np.ndarray,
    ) -> None:  # fmt: skip
        """Mark the points ``at`` (k,) by columns (k,)."""
        new = (off | (doubtful & ~self.doubtful[at])) & ~self.off[at]
        here = at[new]
        self.level[here], self.sigma[here] = level[new], sigma[new]
        self.group[here] = self._groups + group[new]
        self._groups += int(group.max(initial=-1)) + 1
        self.off[at[off]] = True
        self.doubtful[at[doubtful]] = True

    def put_beside(self, walk: Walk, scale: Scale) -> None:
        """Points beside what was found that seem to belong to it."""
        index, size = beside_faults(walk, self.off, self.level, scale)
        if len(index):
            number = np.append(0, np.cumsum((np.diff(index) != 1) | (np.diff(size) != 0)))
            self.put(
                index, np.zeros(len(index), bool), np.ones(len(index), bool), size, np.full(len(index), np.nan), number
            )

    def put_between(self) -> None:
        """What lies between two groups that are off by the same: likely one fault that the ground hid in part."""
        first, last, level, size, sure = self._blocks()
        # Between long ones smaller ones do not matter: what is found at a kerb within a fault is off by anything.
        for least, reach in ((1, _BETWEEN), (_LONG, 2 * _BETWEEN)):
            k = np.flatnonzero(size >= least)
            a, b = k[:-1], k[1:]
            large = np.maximum(np.abs(level[a]), np.abs(level[b]))
            near = (first[b] - last[a] <= reach) & (np.abs(level[a] - level[b]) < _SAME * large)
            near &= sure[a] | sure[b] | (least > 1)
            for low, high, between in zip(last[a][near] + 1, first[b][near], ((level[a] + level[b]) / 2)[near]):
                self._put_doubtful(low, high, between)

    def put_across(self, walk: Walk) -> None:
        """What lies between two long groups off by as much either way, one of them surely: it may go on with that one.

        Then the step back to the ground, after it, was taken for one off the ground.
        """
        first, last, level, size, sure = self._blocks()
        k = np.flatnonzero(size >= _LONG)
        a, b = k[:-1], k[1:]
        large = np.maximum(np.abs(level[a]), np.abs(level[b]))
        fits = (np.abs(level[a] + level[b]) < _SAME * large) & (sure[a] != sure[b])
        fits &= (first[b] - last[a] <= _ACROSS) & (walk.piece[last[a]] == walk.piece[first[b]])
        by = np.where(sure[a], level[a], level[b])
        for low, high, off in zip(last[a][fits] + 1, first[b][fits], by[fits]):
            self._put_doubtful(low, high, off)

    def put_beyond(
        self, walk: Walk, cuts: np.ndarray, net: GroundNet, beside: Beside, scale: Scale, progress: Progress
    ) -> None:
        """What goes on from a group that was found, as the ground around says. ``net``, ``beside``: of all points."""
        found = self.off | self.doubtful
        first, last, level, _, _ = self._blocks()
        ways = beyond_faults(walk, Blocks(first, last, level), found, cuts, net, beside, scale, progress)
        for low, high, size in zip(ways.low, ways.high, ways.level):
            self._put_doubtful(low, high, size)

    def _put_doubtful(self, low: int, high: int, level: float) -> None:
        """A group of the points [low, high) that were not found yet."""
        some = low + np.flatnonzero(~self.off[low:high] & ~self.doubtful[low:high])
        self.doubtful[some], self.level[some] = True, level
        self.group[some] = self._groups
        self._groups += 1

    def _blocks(self) -> Tuple[np.ndarray, ...]:
        """First and last point, level (m), number of points, and whether one is surely off, of each unbroken row of
        marked points that are off by about the same; each (b,).
        """
        marked = np.flatnonzero(self.off | self.doubtful)
        level = self.level[marked]
        apart = np.diff(marked) > 1
        apart |= np.abs(np.diff(level)) > _SAME * np.maximum(np.abs(level[1:]), np.abs(level[:-1]))
        number = np.append(0, np.cumsum(apart))[: len(marked)]
        size = np.bincount(number)
        end = np.cumsum(size)
        mean, sure = np.bincount(number, level) / size, np.bincount(number, self.off[marked]) > 0
        return marked[end - size], marked[end - 1], mean, size, sure

    def suspects(self) -> Suspects:
        return Suspects(self.off, self.doubtful & ~self.off, self.level, self.sigma, self.group)


def _beside(mask: np.ndarray) -> np.ndarray:
    """Mask of the points right before or after those of ``mask``, and these."""
    result: np.ndarray = np.append(mask[1:], False) | np.append(False, mask[:-1]) | mask
    return result
