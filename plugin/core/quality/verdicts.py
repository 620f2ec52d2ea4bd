"""What is decided of each stretch that seems off the ground: rejected, flagged, or let be.

A search of the walk finds stretches that stand off their surroundings. So do ditches, kerb feet, walls, heaps and beds.
What decides is told here, in this order:

- Meetings. Where other visits cross the stretch at its own height it is ground, however low or high it lies beside its
  surroundings; where they say that it is off by what it seems to be, and the ground beside does not deny it, it is
  rejected. The like nearby, which other visits have, speaks for ground: the top of a wall is off all who step over it.
- A line of the ground that several passes share (:mod:`..features`) explains what departs beside it. What is far less
  than its own step may be flagged all the same.
- Steps. A stretch of few points that steps off the ground and back, within one step of the walk at either end, by the
  same amount, where no other pass has such steps, is rejected: ground that passes on both sides do not share does not
  do so. A longer one may be a boulder or a bed, unless it is longer than the passes lie apart and even all along.
- What rises and falls within is a heap or a hollow.
- All else is at most flagged, if it is off by four standard deviations of a height; also what stands next to a flagged
  or rejected stretch, or between two, and is off by the like.
- Where the ground decides, it is looked at again without the large stretch: a lift on a bed is one within another.
- Last, long stretches between two jumps of one size that crossings confirm (:mod:`.long_excursions`).
"""

from __future__ import annotations

from typing import Sequence, Tuple

import numpy as np

from ..progress import Progress, part, silent
from ..surface.cells import runs
from .beside import Beside
from .crossings import Track
from .excursions import Edges, Excursions, best_apart, find_excursions
from .fits import Sums
from .ground import GroundNet
from .levels import Level
from .long_excursions import find_long
from .meeting_points import find_met
from .parted import part_by_meetings
from .stretch_evidence import Parts, bounds_of, count_meetings, join_parts, no_parts, parts_of
from .stretches import Scale
from .suspects import Suspects
from .walk import Walk

#: Standard deviations of a height from which a stretch counts.
COUNTS = 4.0
_CONFIRMED = 3.0  # the same where meetings confirm what the stretch is off by in the mean
_WANDERS = 1.06  # of the noise new at every point: a height's, before it is known how far heights wander
_HUGE = 8.0  # standard deviations of a height: a jump of that size needs no step fitted to more points
_SHORT = 30  # points of a stretch that meetings alone may reject
_FEW = 5  # points of a stretch that its steps alone may reject: a longer one may be a boulder or a bed
_ENDS = 4  # points of a stretch that has two ends
#: Of the level: how much it differs within a stretch; and within one that both the search and the jumps found.
_EVEN, _EVEN_ENOUGH = 0.25, 0.72
_LONGER = 1.4  # times the distance of the passes
_DENIES = 2.0  # of the meetings that say off, for each that says ground
_OTHERS = 2.0  # meetings that say off for each stretch alike, and one more, where the like is there
_EXPLAINED = 0.5  # of the points of a stretch
_MORE, _LESS = 1.5, 0.5  # times what a line explains, at most; at least, lest it be flagged
_NOISY = 2.5  # standard deviations of a height that lie between a tenth and nine tenths of what does not vary
_SHAPED = 0.75  # of the level: what differs by more within a stretch is a heap or a hollow
_MANY = 2  # other visits that have the like: it is ground
_COMMON = 6  # sharp stretches of a survey that other visits share
#: Logarithms of the likelihood that the ground beside gives the level, over that it gives none: from which it does not
#: deny, which is no more than a hint, which counts as evidence, which settles it.
_TELLS, _HINTS, _AGAINST, _SURE = 0.0, 0.5, 2.0, 4.0
_NEXT = 2  # points between stretches that are next to each other
_LIKELY = 0.15  # of a level: how well another one agrees with it
_LARGER = 1.35  # times as large, at most, is what stands on either side of a gap
_ROUNDS = 4  # of what lies within a stretch that is ground


def decide(
    walk: Walk, suspects: Suspects, edges: Edges, scale: Scale, explained: np.ndarray, net: GroundNet,
    beside: Beside, track: Track, levels: Sequence[Level] = (), progress: Progress = silent,
) -> Suspects:  # fmt: skip
    """The suspects as decided.

    ``explained``: (q,) how far (m) a line of the ground makes each point depart from its surroundings. ``net``,
    ``beside``, ``track``: of all points of the walk. ``levels``: parts of the walk on another level, whose heights are
    brought to one.
    """
    off, doubtful = np.zeros(len(walk), bool), np.zeros(len(walk), bool)
    level, group = np.zeros(len(walk)), np.full(len(walk), -1)
    pairs, marked, before = find_excursions(walk, edges, scale.total), suspects.marked, no_parts()
    sums = Sums(walk)
    for turn in range(_ROUNDS):
        ahead = part(progress, turn / (_ROUNDS + 1), (turn + 1) / (_ROUNDS + 1))
        bounds = bounds_of(walk, suspects.level, marked, best_apart(pairs, group >= 0), edges)
        bounds = part_by_meetings(walk, bounds, suspects.level, scale, track, beside, sums)
        parts = parts_of(walk, bounds, suspects.off, before, scale, net, beside, track, sums, ahead)
        rejected, flagged = _judged(parts, before, explained, scale, walk.spacing)
        for k in np.flatnonzero(rejected | flagged).tolist():
            some = slice(parts.start[k], parts.end[k])
            off[some], doubtful[some] = rejected[k], flagged[k]
            level[some], group[some] = parts.level[k], len(before) + k
        before = join_parts(before, parts)
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
    doubtful |= _between(walk, track, before, group, off, level, scale)
    progress(_ROUNDS / (_ROUNDS + 1), "quality")
    long = find_long(walk, edges, scale.total, track)
    for k in range(len(long)):
        rest = np.arange(long.start[k], long.end[k])
        rest = rest[~off[rest]]
        off[rest], doubtful[rest] = long.sure[k], not long.sure[k]
        level[rest], group[rest] = long.level[k], len(before) + k
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
    for places, beside in ((parts.start, end), (parts.end, start)):
        order = np.argsort(places, kind="stable")
        low = np.searchsorted(places, beside - _NEXT, "left", order)
        count = np.searchsorted(places, beside + _NEXT, "right", order) - low
        own, near = np.repeat(level, count), order[runs(low, count)]
        found[near[np.abs(parts.level[near] - own) <= _LIKELY * np.abs(own) + 2 * scale.total]] = True
    found &= (parts.ground - parts.off <= 1) & (np.abs(parts.level) >= COUNTS * _WANDERS * scale.noise)
    free = np.append(0, np.cumsum(group >= 0))
    found &= free[parts.end] == free[parts.start]
    return np.flatnonzero(found)


def _between(
    walk: Walk, track: Track, parts: Parts, group: np.ndarray, off: np.ndarray, level: np.ndarray, scale: Scale
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
    like = (parts.level[a] * parts.level[b] > 0) & (high < _LARGER * low + 2 * scale.total)
    like &= (gap > 0) & (gap <= size[a] + size[b]) & (size[a] + size[b] >= _ENDS)
    like &= walk.piece[parts.end[a] - 1] == walk.piece[parts.start[b]]
    own, mean = np.full(len(walk), -1), (parts.level[a] + parts.level[b]) / 2
    for k in np.flatnonzero(like).tolist():
        own[parts.end[a[k]] : parts.start[b[k]]] = k
    said_off, said_ground = (
        count_meetings(mean, own, find_met(walk, own, track), scale) if len(mean) else (np.zeros(0), np.zeros(0))
    )
    mask = np.zeros(len(walk), bool)
    for k in np.flatnonzero(like & (said_off >= said_ground)).tolist():
        some = slice(parts.end[a[k]], parts.start[b[k]])
        mask[some], level[some], group[some] = True, mean[k], group[parts.start[b[k]]]
    return mask & ~off


def _others(pairs: Excursions, parts: Parts) -> np.ndarray:
    """Which of the pairs have not been looked at."""
    seen = set(zip(parts.start.tolist(), parts.end.tolist()))
    return np.array([each not in seen for each in zip(pairs.start.tolist(), pairs.end.tolist())], bool)


def _judged(
    parts: Parts, before: Parts, explained: np.ndarray, scale: Scale, spacing: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Which of the stretches are rejected, and which flagged (p,)."""
    size = parts.end - parts.start
    # Nothing is told of less than the ground itself does between two points of a pass.
    unit = float(np.hypot(_WANDERS * scale.noise, scale.rough.at(np.array([spacing]))[0]))
    confirmed = (parts.off >= 2) & (parts.ground == 0)
    large = np.abs(parts.level) >= np.where(confirmed, _CONFIRMED, COUNTS) * unit
    kept, told = _explained(parts, explained, scale)
    sharp = parts.sharp & ((parts.steep >= 1) | (np.abs(parts.level) > _HUGE * scale.total))
    # A long stretch that does not step at either end may run along a kerb, which all meetings see.
    agreed = (parts.ground == 0) & (parts.beside > _AGAINST)
    told_off = (parts.off >= 2) & ((size <= _SHORT) | (parts.steep >= 1) | agreed)
    # The top of a wall that others step over lies off them all: other stretches like it are there.
    told_off &= (parts.beside > -_AGAINST) | (parts.off > 2)
    told_off &= (parts.shared == 0) | (parts.off > _OTHERS * (parts.shared + 1))
    once = (parts.off == 1) & (sharp | (parts.steep >= 1)) & (parts.beside > _TELLS) & (parts.shared == 0)
    seen = told_off | once
    denied = (parts.ground > 0) & (parts.off <= _DENIES * parts.ground)
    stepped = (sharp | (parts.searched & (parts.steep == 2))) & (size <= _FEW)
    # A boulder or a bed that is longer than the passes lie apart would show in those beside it; a heap is not even.
    share = np.where(parts.sharp & parts.searched, _EVEN_ENOUGH, _EVEN)
    even = parts.varies <= share * np.abs(parts.level) + 2 * scale.total
    stepped |= (parts.steep == 2) & (parts.beside >= _SURE) & even & (size * spacing > _LONGER * scale.passes)
    rejected = large & ~denied & (seen | (stepped & ~kept & (parts.shared == 0) & (parts.beside > _TELLS)))
    # One meeting against all else is not enough to let it be.
    doubted = (sharp | (parts.off >= parts.ground)) & (parts.ground - parts.off <= 1) & (parts.beside > _AGAINST)
    doubted |= sharp & (parts.off >= parts.ground) & (np.abs(parts.level) > _HUGE * scale.total)
    doubted |= (parts.steep == 2) & (parts.ground - parts.off <= 1) & (parts.beside >= _SURE)
    plain = (parts.steep == 2) & (parts.beside > _TELLS) & (parts.shared == 0) | (parts.off > parts.ground)
    plain |= (parts.steep >= 1) & (parts.beside > _AGAINST) & (parts.shared <= 1)
    huge = np.abs(parts.level) > _HUGE * scale.total
    plain |= (parts.beside > _HINTS) | ((parts.steep >= 1) & (parts.beside > -_HINTS))
    unsure = (sharp & (parts.beside > np.where(huge, -2 * _AGAINST, -_AGAINST))) | parts.searched | plain
    # Where many such things are seen twice the ground is like that.
    seen_twice = np.count_nonzero(large & sharp & (parts.shared > 0)) + np.count_nonzero(
        before.sharp & (before.shared > 0)
    )
    common = (parts.shared > 0) & ((seen_twice > _COMMON) | (parts.shared >= _MANY)) & (parts.off <= parts.ground)
    common &= (parts.shared > 1) | (parts.beside < _SURE)
    # A line keeps all that is less than its own step from being rejected, what is about as large from being flagged.
    told &= (parts.beside < _AGAINST) | (parts.ground > 0)
    told &= parts.off <= parts.ground  # what other visits see off is not what a line explains
    # A lift is the same all along it; what rises and falls within is a heap or a hollow.
    same = _SHAPED * np.abs(parts.level) + _NOISY * scale.total
    shaped = (size >= _ENDS) & np.isfinite(parts.varies) & (parts.varies > same)
    unsure &= ~shaped | (parts.off > parts.ground)
    # What the ground beside settles may be off by less: the level that the search gives is often too small.
    known = np.abs(parts.level) >= np.where(parts.beside >= _SURE, _CONFIRMED, COUNTS) * unit
    flagged = (large | known) & ~rejected & ~told & unsure & ~common & (~denied | doubted)
    return rejected, flagged


def _explained(parts: Parts, explained: np.ndarray, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Masks (p,) of the stretches more than half of which, or both ends, lines of the ground explain: by a step that
    is not smaller than they are off, and by one of about that size."""
    n, size, slack = len(explained), np.abs(parts.level), 3 * scale.total
    large, alike = np.zeros(len(parts), bool), np.zeros(len(parts), bool)
    for k, (a, b) in enumerate(zip(parts.start.tolist(), parts.end.tolist())):
        first = max(a - 2, 0)
        by = explained[first : min(b + 2, n)]
        fits = (by > 0) & (_MORE * by + slack >= size[k])
        large[k] = _holds(fits, a - first, b - a)
        alike[k] = large[k] and _holds(fits & (_LESS * (by - slack) <= size[k]), a - first, b - a)
    return large, alike


def _holds(fits: np.ndarray, first: int, size: int) -> bool:
    """Whether more than half of ``size`` points from ``first`` on are marked, or some at both ends."""
    inner = np.count_nonzero(fits[first : first + size])
    return bool(inner > _EXPLAINED * size or (size >= _ENDS and fits[:4].any() and fits[-4:].any()))
