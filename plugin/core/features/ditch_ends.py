"""A ditch goes on beyond the ends of its bottom as long as the next pass shows its section."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Tuple

import numpy as np

from .courses import Course
from .ditch_passes import Crossings, crossings_at, heights_about, joined, moved, shown
from .ditch_section import Section, fit_section
from .nodes import Nodes
from .passes import Passes
from .readings import Blocks, Stretches, crossings

#: A ditch goes on by its last so many passes, straight by so many, to one of so many next ones within so many usual
#: distances between passes.
FEW, DIRECTION, LOOKED_AT, AHEAD = 6, 4, 2, 2.6
#: Least share of the usual depth that a pass of the ditch shows, and how far off its heights may be.
SHOWN, WORST = 0.4, 2.5


def drawn_on(
    passes: Passes, noise: np.ndarray, blocks: Blocks, nodes: Nodes, others: np.ndarray, at: Crossings, section: Section
) -> Tuple[Crossings, Section]:
    """Passes and section of a ditch with the passes beyond both ends that show it too, each by those before it.

    It does not go on over ``others``, stretches (m, 4) of other bottoms.
    """
    given, edges = at, np.maximum(section.shape[0] + section.shape[1:], passes.spacing)
    at = moved(at, section.own[:, 4])
    for _ in (0, 1):  # each end in its turn
        going = True
        while going:
            going = False
            few = at.take(np.arange(max(len(at.s) - FEW, 0), len(at.s)))
            for new in _next(passes, blocks, nodes, few):
                if _over(few, new, others):
                    break
                trial = joined(few, new)
                heights = heights_about(passes, noise, trial, edges)
                if not shown(heights, edges)[0][-1]:
                    continue
                own = fit_section(heights, edges)
                if (
                    own.own[-1, 3] >= SHOWN * section.depth
                    and own.off[-1] <= WORST
                    and not (at.point == new.point).any()
                ):
                    at = joined(at, moved(new, own.own[-1:, 4]))
                    going = True
                    break
        at = at.take(np.arange(len(at.s))[::-1])
        at = replace(at, left=-at.left)
    if len(at.s) == len(given.s):
        return given, section
    heights = heights_about(passes, noise, at, edges)
    return at, fit_section(heights, edges)


def _next(passes: Passes, blocks: Blocks, nodes: Nodes, at: Crossings) -> List[Crossings]:
    """The next passes that cross the way on beyond the last of ``at``, straight on, the nearest first."""
    xy = np.column_stack([at.x, at.y])
    link = np.hypot(*np.diff(xy, axis=0).T)
    way = xy[-1] - xy[-min(DIRECTION, len(xy))]
    way = way / max(float(np.hypot(*way)), 1e-9)
    a = xy[-1:]
    zero = np.zeros(1, np.int64)
    where = Stretches(a, a + AHEAD * float(np.median(link)) * way, zero, np.zeros((1, 2), np.int64), zero, zero, zero)
    _, gate, share = crossings(passes, blocks, nodes, where)
    gate, share = (
        gate[passes.leg[gate] != passes.leg[at.point[-1]]],
        share[passes.leg[gate] != passes.leg[at.point[-1]]],
    )
    order = np.argsort(share, kind="stable")[:LOOKED_AT]
    result = []
    for k in order.tolist():
        x, y = (where.a + share[k] * (where.b - where.a)).T
        result.append(crossings_at(passes, gate[k : k + 1], x, y, way[:1], way[1:]))
    return result


def bottoms_but(nodes: Nodes, courses: List[Course], bottom: np.ndarray, but: int) -> np.ndarray:
    """Stretches (m, 4) of the courses marked in ``bottom`` (lines,), ``but`` one: x, y of both ends."""
    xy = [
        np.column_stack([nodes.x[c.nodes], nodes.y[c.nodes]]) for k, c in enumerate(courses) if bottom[k] and k != but
    ]
    return np.vstack([np.empty((0, 4)), *(np.hstack([one[:-1], one[1:]]) for one in xy)])


def _over(at: Crossings, new: Crossings, others: np.ndarray) -> bool:
    """Whether the way from the last of ``at`` to ``new`` crosses one of the stretches ``others`` (m, 4)."""
    x, y = at.x[-1], at.y[-1]
    dx, dy = new.x[0] - x, new.y[0] - y
    ax, ay, bx, by = others.T
    apart = (dx * (ay - y) - dy * (ax - x)) * (dx * (by - y) - dy * (bx - x)) < 0
    apart &= ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) * ((bx - ax) * (y + dy - ay) - (by - ay) * (x + dx - ax)) < 0
    return bool(apart.any())
