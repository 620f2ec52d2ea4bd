"""Which auto-recorded points are off the ground: the network's answer, held against the ground around."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Optional, Tuple

import numpy as np

from ..progress import Progress, part, silent
from .beside import Beside
from .extents import go_on
from .fits import Sums
from .ground import GroundNet
from .segments import cut
from .stretches import Fixed, Scale, lay_out
from .walk import Walk
from .weigh import on_lines, weigh

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
    segments = cut(walk, sums, scale.noise, _CUT, where, part(progress, 0.0, 0.3))
    progress(0.3, "quality")
    around = net()
    progress(0.4, "quality")
    stretches = lay_out(walk, sums, segments, fixed, around, scale, part(progress, 0.4, 0.6))
    big = np.abs(stretches.offset) > WORTH * scale.total
    certain, unsure = weigh(walk, stretches, big, scale, part(progress, 0.6, 0.8))
    off, doubtful = certain[stretches.of], unsure[stretches.of]
    more, level = go_on(walk, stretches, certain | unsure, scale, part(progress, 0.8, 1.0))
    doubtful |= more[stretches.of]
    offset = np.where(more, level, stretches.offset)[stretches.of]
    sigma = stretches.sigma[stretches.of]
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
