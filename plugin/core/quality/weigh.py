"""Evidence for and against each stretch that the network calls off the ground, from what does not depend on it."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..progress import Progress, part, silent
from .confirm import Steps, seen_by_others
from .departure import depart
from .stretches import Scale, Stretches
from .walk import Walk

_ROUNDS = 2
_CLEAR = 2.0  # logarithm of the likelihood ratio from which one side has it
_TRUSTED = 6  # points of a stretch that is asked about others
_STEEP = 5.0  # standard deviations of the steps at both ends of a spike
_SPIKE = 15  # points of a spike whose steps speak for themselves
_ALONG = 20  # points of a stretch that could run along a kerb
_KERB = 0.2  # m, what a kerb can make of it
_EVEN = 1.6  # a fault is so many times that much
_PLAIN = 3.0  # a spike is so many times what the ground around departs by
_LINE = 24  # points across a ditch or bank
_LINE_RATIO = 4.0


def weigh(
    walk: Walk, stretches: Stretches, off: np.ndarray, scale: Scale, progress: Progress = silent
) -> Tuple[np.ndarray, np.ndarray]:
    """Masks (t,) of the stretches surely off and of those in doubt, of the stretches ``off`` (t,).

    Each offset is held against the ground that trusted points and coded lines around make, and against trusted
    passes that meet it: likelihood of the offset over that of none. Where these disagree with the network the
    stretch is ground; where they cannot tell it is in doubt, unless steep steps at both ends make it a spike. What ends
    as ground does is in doubt at most.
    """
    off = off.copy()
    for turn in range(_ROUNDS):
        evidence, uneven = _evidence(walk, stretches, off, scale, part(progress, turn / 4, (turn + 1) / 4))
        back = off & (evidence < -_CLEAR)
        off &= ~back
        if not back.any():
            break
    sure = off & ((evidence > _CLEAR) | (_spikes(walk, stretches, off) & (np.abs(stretches.offset) > _PLAIN * uneven)))
    sure &= np.abs(stretches.offset) > _EVEN * uneven
    beside = np.where(off, _beside_all(walk, stretches, off, scale, part(progress, 0.5, 1.0)), 0.0)
    sure &= (beside > -_CLEAR) & ~_like_ground(walk, stretches, off)
    return sure, off & ~sure


def _evidence(
    walk: Walk, stretches: Stretches, off: np.ndarray, scale: Scale, progress: Progress
) -> Tuple[np.ndarray, np.ndarray]:
    """Logarithm (t,) of the likelihood ratio for the offsets of the stretches ``off``, from all others, and how uneven
    (m) the ground is there; 0 elsewhere.
    """
    number, count = _numbered(off)
    said = depart(
        walk, number[stretches.of], count, ~off[stretches.of], stretches.net, scale, stretches.beside, together=True,
        progress=progress,
    )  # fmt: skip
    ratio = np.zeros(len(stretches))
    ratio[off] = likelihood(said.offset, said.sigma, stretches.offset[off])
    # A pass along a gutter lies below its neighbours all the way: only those that cross it can tell.
    along = (stretches.end - stretches.start >= _ALONG) & (np.abs(stretches.offset) < _KERB)
    ratio = np.where(along, np.minimum(ratio, 0.75 * _CLEAR), ratio)
    seen, sigma = _met(stretches, off, scale)
    ratio[off] += likelihood(seen, sigma, stretches.offset)[off]
    uneven = np.zeros(len(stretches))
    uneven[off] = said.uneven
    return ratio, uneven


def _beside_all(walk: Walk, stretches: Stretches, off: np.ndarray, scale: Scale, progress: Progress) -> np.ndarray:
    """The same from the ground with every other stretch in it: a ditch is known by the crossings of its neighbours."""
    number, count = _groups(walk, stretches, off)
    every = np.ones(len(walk), bool)
    said = depart(walk, number[stretches.of], count, every, stretches.net, scale, stretches.beside, progress=progress)
    at = np.maximum(number, 0)
    if not count:
        return np.zeros(len(stretches))
    size = stretches.end - stretches.start
    mean = np.bincount(number[off], (stretches.offset * size)[off], count) / np.bincount(number[off], size[off], count)
    ratio: np.ndarray = likelihood(said.offset, said.sigma, mean)[at]
    return ratio


def likelihood(seen: np.ndarray, sigma: np.ndarray, offset: np.ndarray) -> np.ndarray:
    """Logarithm of the likelihood ratio of ``offset`` against none for what was seen, at most 8 either way."""
    with np.errstate(invalid="ignore", divide="ignore"):
        ratio = (seen**2 - (seen - offset) ** 2) / (2 * sigma**2)
    return np.clip(np.where(np.isfinite(sigma), ratio, 0.0), -8.0, 8.0)


def steps_by(step: np.ndarray, level: np.ndarray) -> np.ndarray:
    """Mask of the steps (k,) that go the way of ``level`` (k,) and come to half to twice as much."""
    result: np.ndarray = (step * level > 0) & (np.abs(step) > 0.5 * np.abs(level)) & (np.abs(step) < 2 * np.abs(level))
    return result


def _numbered(mask: np.ndarray) -> Tuple[np.ndarray, int]:
    return np.where(mask, np.cumsum(mask) - 1, -1), int(np.count_nonzero(mask))


def _groups(walk: Walk, stretches: Stretches, off: np.ndarray) -> Tuple[np.ndarray, int]:
    """Number (t,) of the unbroken row of stretches each one of ``off`` belongs to, -1 for the others; their count."""
    joined = np.append(False, walk.piece[stretches.start[1:]] == walk.piece[stretches.start[:-1]])
    opens = off & ~(np.append(False, off[:-1]) & joined)
    return np.where(off, np.cumsum(opens) - 1, -1), int(np.count_nonzero(opens))


def _met(stretches: Stretches, off: np.ndarray, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Offset (t,) of each stretch from the trusted ones that meet it, and its standard deviation (inf for none)."""
    met, trusted = stretches.meetings, (stretches.end - stretches.start >= _TRUSTED) & ~off
    count = len(stretches)
    total, weight = np.zeros(count), np.zeros(count)
    for own, other, sign in ((met.first, met.second, -1.0), (met.second, met.first, 1.0)):
        some = trusted[stretches.of[other]]
        share = 1 / (met.variance[some] + 2 * scale.drift**2)
        total += np.bincount(stretches.of[own[some]], sign * met.difference[some] * share, count)
        weight += np.bincount(stretches.of[own[some]], share, count)
    with np.errstate(divide="ignore", invalid="ignore"):
        return np.where(weight > 0, total / weight, 0.0), np.where(weight > 0, 1 / np.sqrt(weight), np.inf)


def _spikes(walk: Walk, stretches: Stretches, off: np.ndarray) -> np.ndarray:
    """Mask (t,) of the stretches in short rows that step off the ground and back by about their offset."""
    number, count = _groups(walk, stretches, off)
    if not count:
        return off
    inside = np.flatnonzero(off)
    first, last = _ends(number, off)
    after = np.minimum(last + 1, len(stretches) - 1)
    size = np.bincount(number[inside], (stretches.end - stretches.start)[inside], count)
    up, down = stretches.step[first] / stretches.step_sigma[first], stretches.step[after] / stretches.step_sigma[after]
    sign_in, sign_out = np.sign(stretches.offset[first]), np.sign(stretches.offset[last])
    steep = (up * sign_in > _STEEP) & (down * sign_out < -_STEEP) & (after > last) & (size <= _SPIKE)
    steep &= steps_by(stretches.step[first], stretches.offset[first])
    steep &= steps_by(-stretches.step[after], stretches.offset[last])
    result: np.ndarray = off & steep[np.maximum(number, 0)]
    return result


def _like_ground(walk: Walk, stretches: Stretches, off: np.ndarray) -> np.ndarray:
    """Mask (t,) of the stretches in rows whose ends are those of ground: they step off and back by about their offset
    where other passes do so too (between two kerbs), or long and low ones do not step at all (along a gutter).
    """
    number, count = _groups(walk, stretches, off)
    if not count:
        return off
    first, last = _ends(number, off)
    step, seen = np.append(np.where(stretches.step_sigma < np.inf, stretches.step, 0.0), 0.0), stretches.seen
    into, out = steps_by(step[first], stretches.offset[first]), steps_by(-step[last + 1], stretches.offset[last])
    between = into & seen[first] & out & np.append(seen, False)[last + 1]
    low = np.maximum(np.abs(stretches.offset[first]), np.abs(stretches.offset[last])) < _KERB
    along = ~into & ~out & (stretches.end[last] - stretches.start[first] >= _ALONG) & low
    result: np.ndarray = off & (between | along)[np.maximum(number, 0)]
    return result


def _ends(number: np.ndarray, off: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """First and last stretch (g,) of each row of ``off``, which are numbered in order."""
    inside = np.flatnonzero(off)
    changes = np.diff(number[inside]) != 0
    return inside[np.append(True, changes)], inside[np.append(changes, True)]


def on_lines(walk: Walk, group: np.ndarray, count: int, offset: np.ndarray, scale: Scale) -> np.ndarray:
    """Mask (g,) of short groups of points that lie on one line with like groups of other passes: a ditch, not a fault.

    ``group``: (q,) numbers, -1 for none; ``offset``: (q,) metres.
    """
    inside = group >= 0
    size = np.maximum(np.bincount(group[inside], minlength=count), 1)
    mean, x, y = (np.bincount(group[inside], c[inside], count) / size for c in (offset, walk.x, walk.y))
    order = np.flatnonzero(inside & (np.append(-1, group[:-1]) != group))
    rise = np.column_stack([mean, np.zeros(count)])
    steps = Steps(x, y, order, rise, mean, np.full(count, scale.total), np.zeros(count, bool))
    told = seen_by_others(steps, scale.passes, 0.6 + walk.spacing, _LINE_RATIO)
    result: np.ndarray = np.isfinite(told) & (size <= _LINE)
    return result
