"""Passes across a ditch: where they cross its bottom, and their heights about it."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import List, Tuple

import numpy as np

from .courses import Course, listed
from .ditch_section import Heights
from .nodes import Nodes
from .passes import Passes
from .readings import Blocks, Stretches, crossings

#: Ground is taken so far (m) beyond the edges; points of it on each side.
BEYOND, LEAST_BESIDE = 1.6, 2
#: Points on either side of the bottom that may be of its section.
REACH = 14


@dataclass(frozen=True)
class Crossings:
    """p places where passes cross a bottom.

    ``point``: walk point before; ``s``: metres walked; ``x, y``: local metres; ``ex, ey``: direction of walking;
    ``left``: metres left of the bottom for each metre walked.
    """

    point: np.ndarray
    s: np.ndarray
    x: np.ndarray
    y: np.ndarray
    ex: np.ndarray
    ey: np.ndarray
    left: np.ndarray

    def take(self, which: np.ndarray) -> Crossings:
        """Some of them."""
        return Crossings(*(getattr(self, column.name)[which] for column in fields(self)))


def crossings_of(passes: Passes, nodes: Nodes, course: Course) -> Crossings:
    """Where passes cross a course, at its nodes."""
    x, y, point = nodes.x[course.nodes], nodes.y[course.nodes], nodes.point[course.nodes]
    number = np.arange(len(x))
    before, after = np.maximum(number - 1, 0), np.minimum(number + 1, len(x) - 1)
    if course.closed:
        before, after = np.roll(number, 1), np.roll(number, -1)
    return crossings_at(passes, point, x, y, x[after] - x[before], y[after] - y[before])


def crossings_at(
    passes: Passes, point: np.ndarray, x: np.ndarray, y: np.ndarray, dx: np.ndarray, dy: np.ndarray
) -> Crossings:
    """At places ``x, y`` after walk points ``point`` of a line that runs towards ``dx, dy``."""
    ex, ey = passes.ex[point], passes.ey[point]
    s = passes.s[point] + (x - passes.x[point]) * ex + (y - passes.y[point]) * ey
    return Crossings(point, s, x, y, ex, ey, (ey * dx - ex * dy) / np.maximum(np.hypot(dx, dy), 1e-9))


def met_along(passes: Passes, blocks: Blocks, nodes: Nodes, courses: List[Course]) -> List[Crossings]:
    """Where passes cross each of ``courses``, which are walked along, in the order along it."""
    if not courses:
        return []
    every = listed(courses)
    first = np.flatnonzero(every.of[1:] == every.of[:-1])
    k = np.column_stack([every.k[first], every.k[first + 1]])
    a, b = (np.column_stack([nodes.x[k[:, side]], nodes.y[k[:, side]]]) for side in (0, 1))
    one = np.ones(len(k))
    where = Stretches(a, b, every.of[first], k, first.astype(float), one, one)
    link, gate, share = crossings(passes, blocks, nodes, where)
    met = crossings_at(passes, gate, *(a[link] + share[:, None] * (b - a)[link]).T, *(b - a)[link].T)
    result, start = [], 0
    for number, course in enumerate(courses):
        across = np.flatnonzero(~nodes.along[course.nodes])
        own, between = crossings_of(passes, nodes, course).take(across), where.of[link] == number
        order = np.argsort(np.append(across, (first[link] + share)[between] - start), kind="stable")
        result.append(joined(own, met.take(between)).take(order))
        start += len(course.nodes)
    return result


def joined(one: Crossings, other: Crossings) -> Crossings:
    return Crossings(*(np.append(getattr(one, c.name), getattr(other, c.name)) for c in fields(Crossings)))


def moved(at: Crossings, left: np.ndarray) -> Crossings:
    """The places moved ``left`` (p,) metres to the left of the bottom, along their passes."""
    way = left / at.left
    return replace(at, x=at.x + way * at.ex, y=at.y + way * at.ey, s=at.s + way)


def points_about(passes: Passes, at: Crossings, before: int, behind: int) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The points from ``before`` places before that of each crossing to ``behind`` places behind it, (p, before +
    behind + 1): their places in the walk, metres left of the line, and which are of the crossing's own pass."""
    j = at.point[:, None] + np.arange(-before, behind + 1)
    own = (j >= passes.first[at.point][:, None]) & (j < passes.last[at.point][:, None])
    j = np.clip(j, 0, len(passes) - 1)
    return j, (passes.s[j] - at.s[:, None]) * at.left[:, None], own


def heights_about(passes: Passes, noise: np.ndarray, at: Crossings, edges: np.ndarray) -> Heights:
    """Heights about a bottom whose ``edges`` lie so far (m) to its left and right."""
    j, v, inside = points_about(passes, at, REACH, REACH + 1)
    inside &= (v <= edges[0] + BEYOND) & (v >= -edges[1] - BEYOND)
    return Heights(v, passes.z[j] - passes.z[at.point][:, None], np.where(inside, noise[j] ** -2.0, 0.0))


def shown(heights: Heights, edges: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Masks (p,) of the passes with two points between the edges and ground on one side at least, and on both."""
    there = heights.weight > 0
    left, right = there & (heights.v > edges[0]), there & (heights.v < -edges[1])
    between = (there & ~left & ~right).sum(axis=1) >= 2
    beside = np.array([left.sum(axis=1), right.sum(axis=1)]) >= LEAST_BESIDE
    return between & beside.any(axis=0), between & beside.all(axis=0)
