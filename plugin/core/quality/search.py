"""Which auto-recorded points are off the ground: the network's answer, held against the ground around."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..progress import Progress, silent
from .confirm import Steps, seen_by_others
from .departure import Departure, depart
from .segments import cut
from .stretches import Fixed, Scale, Stretches, lay_out
from .walk import Walk

#: An offset counts from so many standard deviations of a height.
WORTH = 2.5
#: From so many it is surely a fault; between the two a person should look.
SURE = 3.3
_CUT = 2.8  # standard deviations of a step worth a closer look
_TRUSTED = 6  # points of a stretch that is asked about others
_SHORT = 60  # points of a group that the ground around can tell about
_BRIEF = 40  # points of a stretch between two steps that may have been missed
_EDGE = 3.6  # standard deviations of a step that makes a stretch doubtful
_LINE = 15  # points across a ditch or bank
_LINE_RATIO = 3.0


@dataclass(frozen=True)
class Found:
    """What the search says of a walk of q points.

    ``off``: (q,) bool, off the ground. ``doubtful``: (q,) bool, perhaps; look there. ``offset``: (q,) by how much
    (m), 0 on the ground. ``sigma``: (q,) standard deviation of it (m). ``group``: (q,) number of the unbroken
    group of points off or doubtful, -1 for the others.
    """

    off: np.ndarray
    doubtful: np.ndarray
    offset: np.ndarray
    sigma: np.ndarray
    group: np.ndarray


def search(
    walk: Walk,
    fixed: Fixed,
    scale: Scale,
    sure: float = SURE,
    where: Optional[np.ndarray] = None,
    progress: Progress = silent,
) -> Found:
    """Find the points of the walk that are off the ground by more than the noise explains.

    ``sure``: standard deviations of a height from which an offset is no longer doubtful. ``where``: mask (q,) of the
    points to look for steps at; all by default.
    """
    segments = cut(walk, scale.noise, _CUT, where)
    progress(0.4, "quality")
    stretches = lay_out(walk, segments, fixed, scale)
    progress(0.75, "quality")
    big = np.abs(stretches.offset) > WORTH * scale.total
    off = big[stretches.of]
    offset, sigma = stretches.offset[stretches.of], stretches.sigma[stretches.of]
    off = _held_against_ground(walk, stretches, off, offset, fixed, scale)
    missed, perhaps, told = _overlooked(walk, stretches, off, fixed, scale)
    off = off | missed
    offset = np.where(missed | perhaps, told.offset, offset)
    sigma = np.where(missed | perhaps, told.sigma, sigma)
    lined = _on_lines(walk, off | perhaps, offset, scale)
    certain = off & ~lined & (np.abs(offset) > sure * scale.total)
    off, doubtful = certain, (off & ~certain) | (perhaps & ~certain)
    marked = off | doubtful
    progress(1.0, "quality")
    return Found(off, doubtful & ~off, np.where(marked, offset, 0.0), sigma, groups(marked, walk.piece)[0])


def groups(mask: np.ndarray, piece: np.ndarray) -> Tuple[np.ndarray, int]:
    """Number (q,) of the unbroken group of each point of ``mask``, -1 for the others; how many there are."""
    before = np.append(False, mask[:-1]) & (np.append(-1, piece[:-1]) == piece)
    opens = mask & ~before
    return np.where(mask, np.cumsum(opens) - 1, -1), int(np.count_nonzero(opens))


def _held_against_ground(
    walk: Walk, stretches: Stretches, off: np.ndarray, offset: np.ndarray, fixed: Fixed, scale: Scale
) -> np.ndarray:
    """Points off the ground, of those the network calls off.

    A short group goes back to the ground where the passes around, with or without what else is off there, say that
    it is no higher or lower, a long one where those that cross it do.
    """
    length = (stretches.end - stretches.start)[stretches.of]
    alone = np.where(length > _SHORT, stretches.of + 1, 0)  # a long stretch is looked at by itself
    group, count = groups(off, walk.piece * (len(stretches) + 1) + alone)
    if not count:
        return off
    inside = group >= 0
    size = np.bincount(group[inside], minlength=count)
    mean = np.bincount(group[inside], offset[inside], count) / size
    back = np.zeros(count, bool)
    for trusted in (np.ones(len(walk), bool), ~off):
        said = depart(walk, group, count, trusted, fixed, scale)
        back |= (np.abs(said.offset) < 0.4 * np.abs(mean)) & (said.sigma < 0.3 * np.abs(mean))
    back &= size <= _SHORT
    back |= (size > _SHORT) & _not_met(stretches, group, mean, scale)
    result: np.ndarray = inside & ~back[group]
    return result


def _on_lines(walk: Walk, off: np.ndarray, offset: np.ndarray, scale: Scale) -> np.ndarray:
    """Mask of points in short groups that lie on one line with like groups of other passes: a ditch, not a fault."""
    group, count = groups(off, walk.piece)
    if not count:
        return off
    inside = group >= 0
    size = np.bincount(group[inside], minlength=count)
    mean, x, y = (np.bincount(group[inside], c[inside], count) / size for c in (offset, walk.x, walk.y))
    order = np.flatnonzero(inside & (np.append(-1, group[:-1]) != group))
    rise = np.column_stack([mean, np.zeros(count)])
    steps = Steps(x, y, order, rise, mean, np.full(count, scale.total), np.zeros(count, bool))
    line = np.isfinite(seen_by_others(steps, scale.passes, 0.6 + walk.spacing, _LINE_RATIO)) & (size <= _LINE)
    result: np.ndarray = inside & line[group]
    return result


def _not_met(stretches: Stretches, group: np.ndarray, mean: np.ndarray, scale: Scale) -> np.ndarray:
    """Mask of groups whose offset ``mean`` (m) trusted long stretches that meet them do not see."""
    met, long = stretches.meetings, (stretches.end - stretches.start) >= _TRUSTED
    total, weight = np.zeros(len(mean)), np.zeros(len(mean))
    for own, other, sign in ((met.first, met.second, -1.0), (met.second, met.first, 1.0)):
        some = (group[own] >= 0) & (group[other] < 0) & long[stretches.of[other]]
        share = 1 / (met.variance[some] + 2 * scale.drift**2)
        total += np.bincount(group[own[some]], sign * met.difference[some] * share, len(mean))
        weight += np.bincount(group[own[some]], share, len(mean))
    seen = total / np.maximum(weight, 1e-9)
    known = weight > 1.5 / (2 * scale.drift**2 + scale.noise**2)
    result: np.ndarray = known & (seen * np.sign(mean) < 0.5 * np.abs(mean))
    return result


def _overlooked(
    walk: Walk, stretches: Stretches, taken: np.ndarray, fixed: Fixed, scale: Scale
) -> Tuple[np.ndarray, np.ndarray, Departure]:
    """Short stretches between steps that the network took for ground though the ground around disagrees.

    Masks (q,) of those off and those doubtful, and the departure at every point.
    """
    length = stretches.end - stretches.start
    known = np.isfinite(stretches.step_sigma)
    into = np.where(known, stretches.step, 0.0)
    clear = np.where(known, np.abs(stretches.step) / stretches.step_sigma, 0.0)
    out, clear_out = -np.append(into[1:], 0.0), np.append(clear[1:], 0.0)
    open_ends = np.append(known[1:], False)
    asked = (length <= _BRIEF) & ((clear > _EDGE) | (open_ends & (clear_out > _EDGE)))
    number = np.where(asked, np.cumsum(asked) - 1, -1)[stretches.of]
    number = np.where(taken, -1, number)
    count = int(np.count_nonzero(asked))
    said = depart(walk, number, count, ~taken, fixed, scale)
    r = said.offset

    def agrees(step: np.ndarray) -> np.ndarray:
        return (step * r > 0) & (np.abs(step) > 0.5 * np.abs(r)) & (np.abs(step) < 2 * np.abs(r))

    one, other = agrees(into[asked]), agrees(out[asked])
    off = (np.abs(r) > WORTH * scale.total) & (np.abs(r) > 5 * said.sigma) & one & other
    bump = (into[asked] * out[asked] > 0) & (np.minimum(clear[asked], clear_out[asked]) > _EDGE)
    perhaps = (np.abs(r) > 2 * scale.total) & (np.abs(r) > 2.5 * said.sigma) & (one | other) & bump
    inside = number >= 0
    at = np.where(inside, number, 0)
    pick = (lambda v: np.where(inside, v[at], 0)) if count else (lambda v: np.zeros(len(walk)))
    each = Departure(pick(r), pick(said.sigma))
    return pick(off).astype(bool), pick(perhaps & ~off).astype(bool), each
