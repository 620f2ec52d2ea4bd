"""What speaks for a stretch of the walk being off the ground: steps, meetings, the ground beside, the like nearby."""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import Tuple

import numpy as np

from ..progress import Progress, part
from ..surface.cells import runs
from .beside import Beside
from .crossings import Track
from .departure import depart, range_within
from .excursions import Edges, Excursions
from .fits import Sums, offset_of
from .ground import GroundNet
from .meeting_points import MET_NOISE, Met, find_met
from .stretches import Scale
from .walk import Walk, plain_tree
from .weigh import likelihood

#: First point, end and level (m) of stretches, each (p,), and which of them are excursions.
Bounds = Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]
#: Points stored fewer places apart than this belong to one visit.
APART = 20
_NEAR = 2.5  # standard deviations within which a meeting agrees with a height
_SHARE = 0.4  # of the offset: how close a meeting must come to it
_STEEP = 4.0  # standard deviations of a step
_WINDOW = 6  # points on either side of a step
_NEARBY = 1.6  # distances of the passes
_LIKE = 2.0  # times as large, at most, is the like
_CUT = 4.0  # standard deviations of a jump at which what was found together may part


@dataclass(frozen=True)
class Parts:
    """p stretches: points [start, end) of the walk, the ``level`` (p,) they seem off by (m), and what speaks for it.

    ``sharp``: (p,) bool, the profile jumps off the ground and back (:mod:`.excursions`). ``searched``: (p,) bool, the
    search of the walk is sure. ``steep``: (p,) how many of the two ends step by the level. ``off``, ``ground``: (p,)
    meetings that say off, and ground. ``beside``: (p,) logarithm of the likelihood that the ground around gives the
    level, over that it gives none. ``shared``: (p,) how many other visits have the like nearby. ``varies``: (p,) how
    much (m) what it is off by differs within it, against the line across it or the ground beside, whichever is less.
    """

    start: np.ndarray
    end: np.ndarray
    level: np.ndarray
    sharp: np.ndarray
    searched: np.ndarray
    steep: np.ndarray
    off: np.ndarray
    ground: np.ndarray
    beside: np.ndarray
    shared: np.ndarray
    varies: np.ndarray

    def __len__(self) -> int:
        return len(self.start)


def no_parts() -> Parts:
    whole, number, yes = np.zeros(0, np.int64), np.zeros(0), np.zeros(0, bool)
    return Parts(whole, whole, number, yes, yes, whole, whole, whole, number, whole, number)


def join_parts(first: Parts, second: Parts) -> Parts:
    return Parts(*(np.append(getattr(first, each.name), getattr(second, each.name)) for each in fields(Parts)))


def parts_of(
    walk: Walk, bounds: Bounds, sure: np.ndarray, before: Parts,
    scale: Scale, net: GroundNet, beside: Beside, track: Track, sums: Sums, progress: Progress,
) -> Parts:  # fmt: skip
    start, end, level, sharp = bounds
    group, count = np.full(len(walk), -1), len(start)
    for k, (a, b) in enumerate(zip(start.tolist(), end.tolist())):
        group[a:b] = k
    progress(0.1, "quality")
    searched = np.bincount(group[sure & (group >= 0)], minlength=count) > 0
    met = find_met(walk, group, track)
    into, in_sigma, out, out_sigma = _steps(walk, sums, start, end, scale.noise)
    level = _levels(level, sharp, group, met, into, in_sigma, out, out_sigma, scale)
    off, ground = count_meetings(level, group, met, scale)
    steep = _steep(into, in_sigma, level).astype(int) + _steep(out, out_sigma, level)
    said = depart(walk, group, count, group < 0, net, scale, beside, progress=part(progress, 0.5, 1.0))
    ratio = likelihood(said.offset, said.sigma, level)
    first, last = np.append(start, before.start), np.append(end, before.end)
    shared = _shared(walk, first, last, np.append(level, before.level), scale)[:count]
    varies = np.minimum(said.varies, _across(walk, start, end))
    return Parts(start, end, level, sharp, searched, steep, off, ground, ratio, shared, varies)


def _across(walk: Walk, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """How much (m) the heights of each stretch differ from the line across it, from before its start to behind it."""
    before, behind = walk.z[np.maximum(start - 1, 0)], walk.z[np.minimum(end, len(walk) - 1)]
    point, group = runs(start, end - start), np.repeat(np.arange(len(start)), end - start)
    share = (point - start[group] + 1) / (end - start + 1)[group]
    return range_within(walk.z[point] - before[group] - share * (behind - before)[group], group, len(start))


def bounds_of(walk: Walk, level: np.ndarray, marked: np.ndarray, excursions: Excursions, edges: Edges) -> Bounds:
    """All stretches in order.

    What the search ``marked`` (q,) that follows each other and is off the same way is one stretch, but for excursions
    in it, and where the profile jumps. ``level``: (q,) what each point is off by (m).
    """
    taken = np.zeros(len(walk), bool)
    for a, b in zip(excursions.start.tolist(), excursions.end.tolist()):
        taken[a:b] = True
    some = np.flatnonzero(marked & ~taken)
    way = np.sign(level[some])
    apart = (np.diff(some) > 1) | (np.diff(way) != 0) | (np.diff(walk.piece[some]) != 0)
    cuts = np.zeros(len(walk) + 1, bool)
    cuts[edges.after[edges.clear > _CUT]] = True
    apart |= cuts[some[1:]]
    first, last = some[np.append(True, apart)[: len(some)]], some[np.append(apart, True)[: len(some)]] + 1
    middle = np.array([np.median(level[a:b]) for a, b in zip(first.tolist(), last.tolist())])
    start, end = np.append(excursions.start, first), np.append(excursions.end, last)
    order = np.argsort(start, kind="stable")
    sharp = np.append(np.ones(len(excursions), bool), np.zeros(len(first), bool))
    return start[order], end[order], np.append(excursions.level, middle)[order], sharp[order]


def _shared(walk: Walk, start: np.ndarray, end: np.ndarray, level: np.ndarray, scale: Scale) -> np.ndarray:
    """How many stretches (p,) of other visits lie nearby and are off by the like."""
    count = np.zeros(len(start), np.int64)
    middle = (start + end - 1) // 2
    if len(start) < 2 or not np.isfinite(scale.passes):
        return count
    xy = np.column_stack([walk.x[middle], walk.y[middle]])
    pairs = plain_tree(xy).query_pairs(_NEARBY * scale.passes + walk.spacing, output_type="ndarray")
    a, b = pairs.T
    low, high = np.minimum(np.abs(level[a]), np.abs(level[b])), np.maximum(np.abs(level[a]), np.abs(level[b]))
    other = np.maximum(start[a], start[b]) - np.minimum(end[a], end[b]) > APART
    like = (level[a] * level[b] > 0) & (high < _LIKE * low + 3 * scale.total) & other
    np.add.at(count, a[like], 1)
    np.add.at(count, b[like], 1)
    return count


def _steps(
    walk: Walk, sums: Sums, start: np.ndarray, end: np.ndarray, noise: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Steps (m) onto each stretch from before it and from behind it, and their standard deviations; nan for none."""
    n = len(walk)
    low, high = np.maximum(start - _WINDOW, walk.first[start]), np.minimum(end + _WINDOW, walk.last[end - 1])
    inner_high, inner_low = np.minimum(start + _WINDOW, end), np.maximum(end - _WINDOW, start)
    result = []
    for outside, inside, at in (
        ((low, start), (start, inner_high), start),
        ((end, high), (inner_low, end), np.minimum(end, n - 1)),
    ):
        step, variance = offset_of(sums.over(*inside), sums.over(*outside), noise, sums.trend(at))
        known = outside[1] - outside[0] >= 2
        result += [np.where(known, step, np.nan), np.where(known, np.sqrt(variance), np.nan)]
    return result[0], result[1], result[2], result[3]


def _steep(step: np.ndarray, sigma: np.ndarray, level: np.ndarray) -> np.ndarray:
    """Mask of the steps that are clear and come to half to twice the level."""
    with np.errstate(invalid="ignore"):
        result: np.ndarray = (
            (step * level > 0)
            & (np.abs(step) > 0.5 * np.abs(level))
            & (np.abs(step) < 2 * np.abs(level))
            & (np.abs(step) > _STEEP * sigma)
        )
    return result


def _levels(
    level: np.ndarray, sharp: np.ndarray, group: np.ndarray, met: Met, into: np.ndarray, in_sigma: np.ndarray,
    out: np.ndarray, out_sigma: np.ndarray, scale: Scale,
) -> np.ndarray:  # fmt: skip
    """What each stretch is off by: as meetings say that see it off, else its steps where both agree, else as found."""
    result = level.copy()
    with np.errstate(invalid="ignore"):
        both = (np.abs(into) > _STEEP * in_sigma) & (np.abs(out) > _STEEP * out_sigma) & (into * out > 0)
        both &= np.maximum(np.abs(into), np.abs(out)) < 2 * np.minimum(np.abs(into), np.abs(out))
    both &= ~sharp
    result[both] = ((into + out) / 2)[both]
    spread = MET_NOISE * scale.total
    beyond = met.beyond()
    away = np.abs(beyond) > 3 * spread
    of, beyond = group[met.point][away], beyond[away]
    order = np.lexsort((beyond, of))
    of, beyond = of[order], beyond[order]
    for k in np.unique(of).tolist():
        own = beyond[slice(*np.searchsorted(of, [k, k + 1]))]
        middle = float(np.median(own))
        near = np.abs(own - middle) < max(3 * spread, _SHARE * abs(middle))
        if len(own) >= 2 and np.count_nonzero(near) > len(own) / 2 and not sharp[k]:
            result[k] = middle
    return result


def count_meetings(level: np.ndarray, group: np.ndarray, met: Met, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Meetings of each stretch that say it is off by its level, and that say it is ground."""
    off, ground = tell(level, group, met, scale)
    of, count = group[met.point], len(level)
    return np.bincount(of[off], minlength=count), np.bincount(of[ground], minlength=count)


def tell(level: np.ndarray, group: np.ndarray, met: Met, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Which meetings (m,) say that the stretch is off by its level, and which that it is ground."""
    own, spread = level[group[met.point]], MET_NOISE * scale.total
    slack = np.maximum(_NEAR * spread, _SHARE * np.abs(own))
    plain, shifted = np.abs(met.beyond()), np.abs(met.beyond(own))
    # A meeting tells where it fits one of the two and not the other: where the heights step it may fit both.
    near = np.minimum(_NEAR * spread, 0.5 * np.abs(own))
    ground = (plain <= near) & (shifted > near)
    return (plain > near) & (shifted <= slack), ground
