"""What is decided of each stretch that seems off the ground: rejected, flagged, or let be.

A search of the walk finds stretches that stand off their surroundings. So do ditches, kerb feet, walls, heaps and beds.
What decides is told here, in this order:

- Meetings. Where other visits cross the stretch at its own height it is ground, however low or high it lies beside its
  surroundings; where they say that it is off by what it seems to be, it is rejected.
- A line of the ground that several passes share (:mod:`..features`) explains what departs beside it.
- Steps. A short stretch that steps off the ground and back, within one step of the walk at either end, by the same
  amount, where no other pass has such steps, is rejected: ground that passes on both sides do not share does not do so.
- All else is at most flagged, if it is off by four standard deviations of a height and steps at one end at least.
"""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import Sequence, Tuple

import numpy as np

from ..surface.cells import runs
from ..progress import Progress, part, silent
from .beside import Beside
from .departure import depart, range_within
from .excursions import Edges, Excursions, best_apart, find_excursions
from .fits import Sums, offset_of
from .ground import GroundNet
from .levels import Level
from .long_excursions import find_long
from .meeting_points import Met, find_met
from .stretches import Scale
from .suspects import Suspects
from .walk import Walk, plain_tree
from .weigh import likelihood

#: Points stored fewer places apart than this belong to one visit.
APART = 20
#: Of a height's noise: what two visits differ by at a crossing.
MET_NOISE = 1.6
#: Standard deviations of a height from which a stretch counts.
COUNTS = 4.0
_CONFIRMED = 3.0  # the same where meetings confirm what the stretch is off by in the mean
_NEAR = 2.5  # standard deviations within which a meeting agrees with a height
_SHARE = 0.4  # of the offset: how close a meeting must come to either height
_STEEP = 4.0  # standard deviations of a step
_WINDOW = 6  # points on either side of a step
_SHORT = 30  # points of a stretch that meetings alone may reject
_FEW = 5  # points of a stretch that its steps alone may reject: a longer one may be a boulder or a bed
_EVEN = 0.25  # of the level: how much it differs within a stretch
_LONGER = 1.5  # times the distance of the passes
_DENIES = 2.0  # of the meetings that say off, for each that says ground
_EXPLAINED = 0.5  # of the points of a stretch
_MORE = 1.5  # times what a line explains, at most
_NEARBY = 1.6  # distances of the passes
_LIKE = 2.0  # times as large, at most, is the like
_HUGE = 8.0  # standard deviations of a height: a jump of that size needs no step fitted to more points
_AGAINST = 2.0  # logarithm of a likelihood ratio that counts as evidence
_WANDERS = 1.06  # of the noise new at every point: a height's, before it is known how far heights wander
_COMMON = 6  # sharp stretches of a survey that other visits share
_CUT = 4.0  # standard deviations of a jump at which what was found together may part
_NEXT = 2  # points between stretches that are next to each other
_LIKELY = 0.15  # of a level: how well another one agrees with it
_ENDS = 4  # points of a stretch that has two ends
_HINTS = 0.5  # the same that is no more than a hint
_SURE = 4.0  # the same that settles it
_TELLS = 0.0  # logarithm of the likelihood ratio from which the ground around does not deny
_ROUNDS = 4  # of what lies within a stretch that is ground


@dataclass(frozen=True)
class Parts:
    """p stretches: points [start, end) of the walk, the ``level`` (p,) they seem off by (m), and what speaks for it.

    ``sharp``: (p,) bool, the profile jumps off the ground and back (:mod:`.excursions`). ``searched``: (p,) bool, the
    search of the walk is sure. ``steep``: (p,) how many of the two ends step by the level. ``off``, ``ground``: (p,)
    meetings that say off, and ground. ``beside``: (p,) logarithm of the likelihood that the ground around gives the
    level, over that it gives none. ``shared``: (p,) how many other visits have the like nearby. ``varies``: (p,) how much
    (m) what it is off by differs within it, against the line across it or the ground beside, whichever is less.
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


def decide(
    walk: Walk, suspects: Suspects, edges: Edges, scale: Scale, explained: np.ndarray, net: GroundNet,
    beside: Beside, levels: Sequence[Level] = (), progress: Progress = silent,
) -> Suspects:  # fmt: skip
    """The suspects as decided.

    ``explained``: (q,) how far (m) a line of the ground makes each point depart from its surroundings. ``net``,
    ``beside``: of all points of the walk. ``levels``: parts of the walk on another level, whose heights are brought to one.
    """
    off, doubtful = np.zeros(len(walk), bool), np.zeros(len(walk), bool)
    level, group = np.zeros(len(walk)), np.full(len(walk), -1)
    pairs, marked, before = find_excursions(walk, edges, scale.total), suspects.marked, _none()
    for turn in range(_ROUNDS):
        ahead = part(progress, turn / (_ROUNDS + 1), (turn + 1) / (_ROUNDS + 1))
        bounds = _bounds(walk, suspects.level, marked, best_apart(pairs, group >= 0), edges)
        parts = _parts(walk, bounds, suspects.off, before, scale, net, beside, ahead)
        rejected, flagged = _judged(parts, before, explained, scale, walk.spacing)
        for k in np.flatnonzero(rejected | flagged).tolist():
            some = slice(parts.start[k], parts.end[k])
            off[some], doubtful[some] = rejected[k], flagged[k]
            level[some], group[some] = parts.level[k], len(before) + k
        before = _joined(before, parts)
        # A lift on a bed is an excursion within one: what is ground is looked at again without the large one.
        pairs = pairs.take(_others(pairs, parts))
        marked = marked & (group < 0)
        for a, b in zip(parts.start[~parts.sharp].tolist(), parts.end[~parts.sharp].tolist()):
            marked[a:b] = False
        if not len(pairs):
            break
    for one in _beside_known(before, group, levels, scale).tolist():
        some = slice(before.start[one], before.end[one])
        doubtful[some], level[some], group[some] = True, before.level[one], one
    doubtful |= _between(walk, before, group, off, level, scale)
    progress(_ROUNDS / (_ROUNDS + 1), "quality")
    long = find_long(walk, edges, scale.total)
    for k in range(len(long)):
        some = np.arange(long.start[k], long.end[k])
        some = some[~off[some]]
        off[some], doubtful[some] = long.sure[k], not long.sure[k]
        level[some], group[some] = long.level[k], len(before) + k
    return Suspects(off, doubtful, level, suspects.sigma, group)


def _beside_known(parts: Parts, group: np.ndarray, levels: Sequence[Level], scale: Scale) -> np.ndarray:
    """The stretches (k,) next to what is off by the like, of which none of the points is decided yet.

    Meetings may deny them once more often than they confirm them.
    """
    kept = np.unique(group[group >= 0])
    start = np.append(parts.start[kept], [each.first for each in levels])
    end = np.append(parts.end[kept], [each.last for each in levels])
    level = np.append(parts.level[kept], [each.offset for each in levels])
    found = np.zeros(len(parts), bool)
    for first, last, own in zip(start.tolist(), end.tolist(), level.tolist()):
        touches = (np.abs(parts.start - last) <= _NEXT) | (np.abs(parts.end - first) <= _NEXT)
        found |= touches & (np.abs(parts.level - own) <= _LIKELY * np.abs(own) + 2 * scale.total)
    found &= (parts.ground - parts.off <= 1) & (np.abs(parts.level) >= COUNTS * _WANDERS * scale.noise)
    free = np.append(0, np.cumsum(group >= 0))
    found &= free[parts.end] == free[parts.start]
    return np.flatnonzero(found)


def _between(
    walk: Walk, parts: Parts, group: np.ndarray, off: np.ndarray, level: np.ndarray, scale: Scale
) -> np.ndarray:
    """Mask (q,) of points between two stretches off by the like, no farther apart than both are long; ``level`` and
    ``group`` of these are set. One meeting that says ground there, and none that says off, leaves them be."""
    kept = np.unique(group[group >= 0])
    kept = kept[np.argsort(parts.start[kept])]
    a, b = kept[:-1], kept[1:]
    size, gap = parts.end - parts.start, parts.start[b] - parts.end[a]
    low, high = (
        np.minimum(np.abs(parts.level[a]), np.abs(parts.level[b])),
        np.maximum(np.abs(parts.level[a]), np.abs(parts.level[b])),
    )
    like = (parts.level[a] * parts.level[b] > 0) & (high < 1.35 * low + 2 * scale.total)
    like &= (gap > 0) & (gap <= size[a] + size[b]) & (size[a] + size[b] >= _ENDS)
    like &= walk.piece[parts.end[a] - 1] == walk.piece[parts.start[b]]
    own, mean = np.full(len(walk), -1), (parts.level[a] + parts.level[b]) / 2
    for k in np.flatnonzero(like).tolist():
        own[parts.end[a[k]] : parts.start[b[k]]] = k
    said_off, said_ground = count_meetings(mean, own, find_met(walk, own), scale) if len(mean) else (np.zeros(0), np.zeros(0))
    mask = np.zeros(len(walk), bool)
    for k in np.flatnonzero(like & (said_off >= said_ground)).tolist():
        some = slice(parts.end[a[k]], parts.start[b[k]])
        mask[some], level[some], group[some] = True, mean[k], group[parts.start[b[k]]]
    return mask & ~off


def _none() -> Parts:
    whole, number, yes = np.zeros(0, np.int64), np.zeros(0), np.zeros(0, bool)
    return Parts(whole, whole, number, yes, yes, whole, whole, whole, number, whole, number)


def _joined(first: Parts, second: Parts) -> Parts:
    return Parts(*(np.append(getattr(first, each.name), getattr(second, each.name)) for each in fields(Parts)))


def _others(pairs: Excursions, parts: Parts) -> np.ndarray:
    """Which of the pairs have not been looked at."""
    seen = set(zip(parts.start.tolist(), parts.end.tolist()))
    return np.array([each not in seen for each in zip(pairs.start.tolist(), pairs.end.tolist())], bool)


def _judged(
    parts: Parts, before: Parts, explained: np.ndarray, scale: Scale, spacing: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Which of the stretches are rejected, and which flagged (p,)."""
    size = parts.end - parts.start
    confirmed = (parts.off >= 2) & (parts.ground == 0)
    large = np.abs(parts.level) >= np.where(confirmed, _CONFIRMED, COUNTS) * _WANDERS * scale.noise
    told = _explained(parts, explained, scale)
    sharp = parts.sharp & ((parts.steep >= 1) | (np.abs(parts.level) > _HUGE * scale.total))
    # A long stretch that does not step at either end may run along a kerb, which all meetings see.
    agreed = (parts.ground == 0) & (parts.beside > _AGAINST)
    told_off = (parts.off >= 2) & ((size <= _SHORT) | (parts.steep >= 1) | agreed)
    # The top of a wall that others step over lies off them all: other stretches like it are there.
    told_off &= (parts.beside > -_AGAINST) | (parts.off > 2)
    told_off &= (parts.shared == 0) | (parts.off > _LIKE * (parts.shared + 1))
    once = (parts.off == 1) & (sharp | (parts.steep >= 1)) & (parts.beside > _TELLS) & (parts.shared == 0)
    seen = told_off | once
    denied = (parts.ground > 0) & (parts.off <= _DENIES * parts.ground)
    stepped = (sharp | (parts.searched & (parts.steep == 2))) & (size <= _FEW)
    # A boulder or a bed that is longer than the passes lie apart would show in those beside it; a heap is not even.
    even = parts.varies <= _EVEN * np.abs(parts.level) + 2 * scale.total
    stepped |= (parts.steep == 2) & (parts.beside >= _SURE) & even & (size * spacing > _LONGER * scale.passes)
    rejected = large & ~denied & (seen | (stepped & ~told & (parts.shared == 0) & (parts.beside > _TELLS)))
    # One meeting against all else is not enough to let it be.
    doubted = (sharp | (parts.off >= parts.ground)) & (parts.ground - parts.off <= 1) & (parts.beside > _AGAINST)
    doubted |= sharp & (parts.off >= parts.ground) & (np.abs(parts.level) > _HUGE * scale.total)
    plain = (parts.steep == 2) & (parts.beside > _TELLS) & (parts.shared == 0) | (parts.off > parts.ground)
    plain |= (parts.steep >= 1) & (parts.beside > _AGAINST) & (parts.shared <= 1)
    huge = np.abs(parts.level) > _HUGE * scale.total
    plain |= (parts.beside > _HINTS) | ((parts.steep >= 1) & (parts.beside > -_HINTS))
    unsure = (sharp & (parts.beside > np.where(huge, -2 * _AGAINST, -_AGAINST))) | parts.searched | plain
    # Where many such things are seen twice the ground is like that.
    seen_twice = np.count_nonzero(large & sharp & (parts.shared > 0)) + np.count_nonzero(
        before.sharp & (before.shared > 0)
    )
    common = (parts.shared > 0) & (seen_twice > _COMMON) & (parts.off <= parts.ground)
    common &= (parts.shared > 1) | (parts.beside < _SURE)
    told &= (parts.beside < _AGAINST) | (parts.ground > 0)
    told &= parts.off <= parts.ground  # what other visits see off is not what a line explains
    # A lift is the same all along it; what rises and falls within is a heap or a hollow.
    shaped = (size >= _ENDS) & np.isfinite(parts.varies) & (parts.varies > np.abs(parts.level) + scale.total)
    unsure &= ~shaped | (parts.off > parts.ground)
    flagged = large & ~rejected & ~told & unsure & ~common & (~denied | doubted)
    return rejected, flagged


def _explained(parts: Parts, explained: np.ndarray, scale: Scale) -> np.ndarray:
    """Mask (p,) of the stretches more than half of which, or both ends, lines of the ground explain."""
    result, n = np.zeros(len(parts), bool), len(explained)
    for k, (a, b) in enumerate(zip(parts.start.tolist(), parts.end.tolist())):
        by = explained[max(a - 2, 0) : min(b + 2, n)]
        fits = (by > 0) & (by * _MORE + 3 * scale.total >= abs(parts.level[k]))
        inner = fits[a - max(a - 2, 0) : len(fits) - (min(b + 2, n) - b)]
        result[k] = np.count_nonzero(inner) > _EXPLAINED * (b - a) or (
            b - a >= _ENDS and fits[:4].any() and fits[-4:].any()
        )
    return result


def _parts(
    walk: Walk, bounds: Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray], sure: np.ndarray, before: Parts,
    scale: Scale, net: GroundNet, beside: Beside, progress: Progress,
) -> Parts:  # fmt: skip
    start, end, level, sharp = bounds
    group, count = np.full(len(walk), -1), len(start)
    for k, (a, b) in enumerate(zip(start.tolist(), end.tolist())):
        group[a:b] = k
    progress(0.1, "quality")
    searched = np.bincount(group[sure & (group >= 0)], minlength=count) > 0
    met = find_met(walk, group)
    into, in_sigma, out, out_sigma = _steps(walk, start, end, scale.noise)
    level = _levels(level, sharp, group, met, into, in_sigma, out, out_sigma, scale)
    off, ground = count_meetings(level, group, met, scale)
    steep = _steep(into, in_sigma, level).astype(int) + _steep(out, out_sigma, level)
    said = depart(walk, group, count, group < 0, net, scale, beside, progress=part(progress, 0.5, 1.0))
    ratio = likelihood(said.offset, said.sigma, level)
    every = [np.append(one, other) for one, other in ((start, before.start), (end, before.end), (level, before.level))]
    shared = _shared(walk, *every, scale)[:count]
    varies = np.minimum(said.varies, _across(walk, start, end))
    return Parts(start, end, level, sharp, searched, steep, off, ground, ratio, shared, varies)


def _across(walk: Walk, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """How much (m) the heights of each stretch differ from the line across it, from before its start to behind it."""
    before, behind = walk.z[np.maximum(start - 1, 0)], walk.z[np.minimum(end, len(walk) - 1)]
    point, group = runs(start, end - start), np.repeat(np.arange(len(start)), end - start)
    share = (point - start[group] + 1) / (end - start + 1)[group]
    return range_within(walk.z[point] - before[group] - share * (behind - before)[group], group, len(start))


def _bounds(
    walk: Walk, level: np.ndarray, marked: np.ndarray, excursions: Excursions, edges: Edges
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """First point, end and level (p,) of all stretches in order, and which of them are excursions.

    What the search ``marked`` (q,) that follows each other and is off the same way is one stretch, but for excursions in
    it, and where the profile jumps. ``level``: (q,) what each point is off by (m).
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
    walk: Walk, start: np.ndarray, end: np.ndarray, noise: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Steps (m) onto each stretch from before it and from behind it, and their standard deviations; nan for none."""
    sums, n = Sums(walk), len(walk)
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
    of = group[met.point]
    own, spread = level[of], MET_NOISE * scale.total
    slack = np.maximum(_NEAR * spread, _SHARE * np.abs(own))
    plain, shifted = np.abs(met.beyond()), np.abs(met.beyond(own))
    # A meeting tells where it fits one of the two and not the other: where the heights step it may fit both.
    near = np.minimum(_NEAR * spread, 0.5 * np.abs(own))
    ground = (plain <= near) & (shifted > near)
    off = (plain > near) & (shifted <= slack)
    count = len(level)
    return np.bincount(of[off], minlength=count), np.bincount(of[ground], minlength=count)
