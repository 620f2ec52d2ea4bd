"""A ditch goes on beyond the ends of its bottom as long as the next pass shows its section."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Optional, Tuple

import numpy as np

from .courses import Course, listed
from .ditch_passes import Crossings, crossings_at, heights_about, joined, moved, shown
from .ditch_section import Section, fit_section
from .nodes import Nodes
from .passes import Passes
from .plane import segments_cross
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
        new = _one_more(passes, noise, blocks, nodes, others, at, edges, section.depth)
        while new is not None:
            at = joined(at, new)
            new = _one_more(passes, noise, blocks, nodes, others, at, edges, section.depth)
        at = at.take(np.arange(len(at.s))[::-1])
        at = replace(at, left=-at.left)
    if len(at.s) == len(given.s):
        return given, section
    heights = heights_about(passes, noise, at, edges)
    return at, fit_section(heights, edges)


def _one_more(
    passes: Passes, noise: np.ndarray, blocks: Blocks, nodes: Nodes, others: np.ndarray, at: Crossings,
    edges: np.ndarray, depth: float,
) -> Optional[Crossings]:  # fmt: skip
    """The next pass beyond the last of ``at`` that shows the ditch as those before it do; None where it ends."""
    few = at.take(np.arange(max(len(at.s) - FEW, 0), len(at.s)))
    for new in _next(passes, blocks, nodes, few):
        if _over(few, new, others):
            return None
        heights = heights_about(passes, noise, joined(few, new), edges)
        if not shown(heights, edges)[0][-1] or (at.point == new.point).any():
            continue
        own = fit_section(heights, edges)
        if own.own[-1, 3] >= SHOWN * depth and own.off[-1] <= WORST:
            return moved(new, own.own[-1:, 4])
    return None


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
    other = passes.leg[gate] != passes.leg[at.point[-1]]
    gate, share = gate[other], share[other]
    order = np.argsort(share, kind="stable")[:LOOKED_AT]
    result = []
    for k in order.tolist():
        x, y = (where.a + share[k] * (where.b - where.a)).T
        result.append(crossings_at(passes, gate[k : k + 1], x, y, way[:1], way[1:]))
    return result


def bottoms_of(nodes: Nodes, courses: List[Course], bottom: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Stretches (m, 4) of the courses marked in ``bottom`` (lines,), x and y of both ends, and whose each is (m,)."""
    every = listed(courses)
    one = np.flatnonzero((every.of[1:] == every.of[:-1]) & bottom[every.of[1:]])
    a, b = every.k[one], every.k[one + 1]
    return np.column_stack([nodes.x[a], nodes.y[a], nodes.x[b], nodes.y[b]]), every.of[one]


def _over(at: Crossings, new: Crossings, others: np.ndarray) -> bool:
    """Whether the way from the last of ``at`` to ``new`` crosses one of the stretches ``others`` (m, 4)."""
    last, then = np.array([[at.x[-1], at.y[-1]]]), np.column_stack([new.x, new.y])
    return bool(segments_cross(last, then, others[:, :2], others[:, 2:]).any())
