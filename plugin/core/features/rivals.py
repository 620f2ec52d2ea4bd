"""Steps that all passes together put elsewhere: beside a kerb a wrong one is seen where few points lie on its far side.

The lines before and behind a gate two points from a kerb take in points beyond the kerb, and show a jump that is none.
A single pass with points far apart cannot tell; the heights of all passes across a line, each with its own level and
slope, can.
"""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from .candidates import STEP
from .courses import Course
from .ditch_passes import Crossings, crossings_of, met_along, points_about
from .nodes import Nodes
from .passes import Passes
from .readings import Blocks

#: Points on either side of a line that are looked at, passes that it takes, and how far its rivals are apart and
#: lie from it, in points of a pass.
REACH, LEAST_PASSES, APART, OWN, RIVAL, FARTHEST = 5, 4, 0.25, 0.75, 1.5, 4.0
#: Beside its best rival a step keeps so much (share) of its height.
KEPT = 0.5
#: Of a long line so many passes, spread evenly, tell enough.
ENOUGH = 64
#: A step is sure where its own place is better than any other by so much (squared standard deviations of a height).
MARGIN = 12.0
_LEAST = 1e-6


def doubtful(
    passes: Passes, noise: np.ndarray, blocks: Blocks, nodes: Nodes, courses: List[Course], asked: np.ndarray
) -> np.ndarray:
    """Mask (lines,) of the ``asked`` courses (lines,) of steps that the heights could as well put elsewhere."""
    result = np.zeros(len(courses), bool)
    for number, course, at in _crossed(passes, blocks, nodes, courses, asked):
        if len(at.s) > ENOUGH:
            at = at.take(np.linspace(0, len(at.s) - 1, ENOUGH).astype(np.int64))
        margin = MARGIN * float(np.median(noise[at.point])) ** 2
        size = float(np.median(nodes.size[course.nodes]))
        result[number] = _elsewhere(passes, at, size, margin)
    return result


def _crossed(
    passes: Passes, blocks: Blocks, nodes: Nodes, courses: List[Course], asked: np.ndarray
) -> List[Tuple[int, Course, Crossings]]:
    """Number, crossed nodes and crossing passes (all, or enough) of the ``asked`` courses of steps that are crossed for
    the most part."""
    result: List[Tuple[int, Course]] = []
    many: List[Tuple[int, Course]] = []
    for number in np.flatnonzero(asked).tolist():
        k = courses[number].nodes
        k = k[~nodes.along[k] & np.isnan(nodes.height[k])]
        if nodes.kind[courses[number].nodes[0]] == STEP and len(k) >= max(LEAST_PASSES, len(courses[number].nodes) / 2):
            (many if len(k) > ENOUGH else result).append((number, Course(k, courses[number].closed)))
    met = met_along(passes, blocks, nodes, [course for _, course in result])
    met += [crossings_of(passes, nodes, course) for _, course in many]
    return [(number, course, at) for (number, course), at in zip(result + many, met)]


def _elsewhere(passes: Passes, at: Crossings, size: float, margin: float) -> bool:
    """Whether the heights about a step of about ``size`` (m) put one elsewhere: another place leaves no more than
    ``margin`` more squares (m²), and beside that one the step's height is gone."""
    v, z, of, far = _heights(passes, at)
    if len(v) < 8:
        return False
    places = np.arange(-FARTHEST, FARTHEST + APART, APART) * far
    columns = _alone(np.column_stack([z, *_columns(v, places)]), v, of)
    squares = columns.T @ columns
    left, bend = _left(squares, len(places))
    own = np.abs(places) <= OWN * far
    rival = int(np.argmin(np.where(np.abs(places) < RIVAL * far, np.inf, left)))
    if left[rival] >= left[own].min() + margin:
        return False
    best = int(np.argmin(np.where(own, left, np.inf)))
    n = len(places)
    both = np.array([best, rival, n + rival, n + bend[rival]]) + 1
    told = np.linalg.lstsq(squares[np.ix_(both, both)], squares[both, 0], rcond=None)[0]
    return bool(told[0] < KEPT * size <= abs(told[1]))


def _heights(passes: Passes, at: Crossings) -> Tuple[np.ndarray, np.ndarray, np.ndarray, float]:
    """Metres left of the line, heights and number of the pass of the points about it; metres between points across."""
    j, v, inside = points_about(passes, at, REACH - 1, REACH)
    of = np.broadcast_to(np.arange(len(j))[:, None], j.shape)
    return v[inside], passes.z[j][inside], of[inside], passes.spacing * float(np.median(np.abs(at.left)))


def _columns(v: np.ndarray, places: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """A step of one metre and a bend of one metre a metre at each of the places (p,): (n, p)."""
    beyond = v[:, None] - places
    return (beyond > 0).astype(float), np.maximum(beyond, 0.0)


def _alone(table: np.ndarray, v: np.ndarray, of: np.ndarray) -> np.ndarray:
    """The columns of ``table`` (n, p) less the straight line through those of each pass; ``of`` rises."""
    start = np.flatnonzero(np.diff(of, prepend=-1))
    own = np.repeat(np.arange(len(start)), np.diff(start, append=len(of)))
    count = np.bincount(own)[:, None]
    off = v[:, None] - (np.add.reduceat(v, start)[:, None] / count)[own]
    rest = table - (np.add.reduceat(table, start, axis=0) / count)[own]
    spread = np.maximum(np.add.reduceat(off * off, start), 1e-9)
    slope = np.add.reduceat(rest * off, start, axis=0) / spread
    result: np.ndarray = rest - slope[own] * off
    return result


def _left(squares: np.ndarray, many: int) -> Tuple[np.ndarray, np.ndarray]:
    """Sum of squares that a step and a bend at each of ``many`` places leave together with the best second bend, and
    where that is, from the products ``squares`` of heights, steps and bends."""
    one, other = np.meshgrid(np.arange(many), np.arange(many), indexing="ij")
    three = np.stack([1 + one, 1 + many + one, 1 + many + other], axis=-1).reshape(-1, 3)
    matrix = squares[three[:, :, None], three[:, None, :]] + _LEAST * np.eye(3)
    side = squares[three, 0]
    left = squares[0, 0] - (np.linalg.solve(matrix, side[:, :, None])[:, :, 0] * side).sum(axis=1)
    table = left.reshape(many, many)
    best = table.argmin(axis=1)
    return table[np.arange(many), best], best
