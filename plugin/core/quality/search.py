"""Which auto-recorded points are off the ground: the network's answer, held against the ground around."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Optional, Tuple

import numpy as np

from ..progress import Progress, silent
from .beside import Beside
from .departure import Departure, depart
from .extents import go_on
from .fits import Sums
from .ground import GroundNet
from .segments import cut
from .stretches import Fixed, Scale, Stretches, lay_out
from .walk import Walk
from .weigh import on_lines, steps_by, weigh

#: An offset counts from so many standard deviations of a height.
WORTH = 2.5
#: From so many it is surely a fault; between the two a person should look.
SURE = 4.0
_CUT = 2.8  # standard deviations of a step worth a closer look
_BRIEF = 40  # points of a stretch between two steps that may have been missed
_EDGE = 3.6  # standard deviations of a step that makes a stretch doubtful


@dataclass(frozen=True)
class Found:
    """What the search says of a walk of q points.

    ``off``: (q,) bool, off the ground. ``doubtful``: (q,) bool, perhaps; look there. ``offset``: (q,) by how much
    (m), 0 on the ground. ``sigma``: (q,) standard deviation of it (m). ``group``: (q,) number of the unbroken
    group of points off or doubtful, -1 for the others. ``cuts``: (c,) points before which the heights may step;
    ``beside``: neighbours of every step.
    """

    off: np.ndarray
    doubtful: np.ndarray
    offset: np.ndarray
    sigma: np.ndarray
    group: np.ndarray
    cuts: np.ndarray
    beside: Beside


def search(
    walk: Walk,
    fixed: Fixed,
    net: Callable[[], GroundNet],
    scale: Scale,
    sure: float = SURE,
    where: Optional[np.ndarray] = None,
    progress: Progress = silent,
) -> Found:
    """Find the points of the walk that are off the ground by more than the noise explains.

    ``net``: gives the walk and the ``fixed`` points triangulated; asked once the walk is cut. ``sure``: standard
    deviations of a height from which an offset is no longer doubtful. ``where``: the points (k,) to look for steps
    at, rising; all by default.
    """
    sums = Sums(walk)
    segments = cut(walk, sums, scale.noise, _CUT, where)
    progress(0.4, "quality")
    stretches = lay_out(walk, sums, segments, fixed, net(), scale)
    progress(0.75, "quality")
    big = np.abs(stretches.offset) > WORTH * scale.total
    certain, unsure = weigh(walk, stretches, big, scale)
    off, doubtful = certain[stretches.of], unsure[stretches.of]
    more, level = go_on(walk, stretches, certain | unsure, scale)
    doubtful |= more[stretches.of]
    missed, perhaps, told = _overlooked(walk, stretches, off | doubtful, scale)
    seen = missed | perhaps
    offset = np.where(more, level, stretches.offset)[stretches.of]
    offset = np.where(seen, told.offset, offset)
    sigma = np.where(seen, told.sigma, stretches.sigma[stretches.of])
    off, doubtful = off | missed, doubtful | perhaps
    # Crossings of a ditch that went back to the ground still show that there is one.
    group, count = groups(off | doubtful | big[stretches.of], walk.piece)
    lined = on_lines(walk, group, count, offset, scale)[group] & (group >= 0) if count else np.zeros(len(walk), bool)
    certain = off & ~lined & (np.abs(offset) > sure * scale.total)
    off, doubtful = certain, (off | doubtful) & ~certain
    marked = off | doubtful
    progress(1.0, "quality")
    return Found(
        off, doubtful & ~off, np.where(marked, offset, 0.0), sigma, groups(marked, walk.piece)[0], segments.start,
        stretches.beside,
    )  # fmt: skip


def groups(mask: np.ndarray, piece: np.ndarray) -> Tuple[np.ndarray, int]:
    """Number (q,) of the unbroken group of each point of ``mask``, -1 for the others; how many there are."""
    before = np.append(False, mask[:-1]) & (np.append(-1, piece[:-1]) == piece)
    opens = mask & ~before
    return np.where(mask, np.cumsum(opens) - 1, -1), int(np.count_nonzero(opens))


def _overlooked(
    walk: Walk, stretches: Stretches, taken: np.ndarray, scale: Scale
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
    said = depart(walk, number, count, ~taken, stretches.net, scale, stretches.beside)
    r = said.offset
    one, other = steps_by(into[asked], r), steps_by(out[asked], r)
    clearly = (np.abs(r) > WORTH * scale.total) & (np.abs(r) > 5 * said.sigma) & one & other
    # A step that other passes have is the ground's, and what lies behind it may be ground too.
    off = clearly & ~(stretches.seen | np.append(stretches.seen[1:], False))[asked]
    bump = (into[asked] * out[asked] > 0) & (np.minimum(clear[asked], clear_out[asked]) > _EDGE)
    perhaps = (np.abs(r) > 2 * scale.total) & (np.abs(r) > 2.5 * said.sigma) & (one | other) & bump
    perhaps |= clearly
    inside = number >= 0
    at = np.where(inside, number, 0)
    pick = (lambda v: np.where(inside, v[at], 0)) if count else (lambda v: np.zeros(len(walk)))
    each = Departure(pick(r), pick(said.sigma), pick(said.uneven))
    return pick(off).astype(bool), pick(perhaps & ~off).astype(bool), each
