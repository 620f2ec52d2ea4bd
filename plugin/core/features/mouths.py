"""Where a ditch joins another: the edge that its bottom runs through is cut, for there it is not."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import CONCAVE, CONVEX
from .courses import Course, ends_of, lengths_of, listed
from .groups import neighbours
from .nodes import Nodes

#: A bottom goes on beyond its end so many usual links, and at most so far (m), to the edge of another ditch; the bottom
#: of that lies so little (m) behind the edge. Of a bottom that has no edges of its own so much (m) is cut on each side.
GO_ON, FARTHEST, BEHIND, HALF = 1.8, 8.0, 4.0, 1.0
#: Least sine of the angle at which ditches join.
LEAST_SINE = 0.35


def cut_mouths(
    nodes: Nodes, courses: List[Course], evidence: np.ndarray, strong: np.ndarray
) -> Tuple[List[Course], np.ndarray, np.ndarray]:
    """Courses, evidence and which are strong, with strong edges cut where a strong bottom ends before them."""
    kind = np.array([nodes.kind[course.nodes[0]] for course in courses], np.int64)
    edge, bottom = strong & (kind == CONVEX), strong & (kind == CONCAVE)
    if not edge.any() or np.count_nonzero(bottom) < 2:
        return courses, evidence, strong
    every = listed(courses)
    _, after = neighbours(every.counts)
    linked = after != np.arange(len(after))
    xy = np.column_stack([nodes.x[every.k], nodes.y[every.k]])
    ends = ends_of(nodes, courses)
    reach = np.minimum(GO_ON * lengths_of(nodes, courses) / np.maximum(every.counts - 1, 1), FARTHEST)
    crests = cKDTree(xy[edge[every.of]])
    gone = np.zeros(len(every.k), bool)  # nodes, and the links after nodes
    cut = np.zeros(len(every.k), bool)
    tree = cKDTree(xy)
    longest = float(np.hypot(*(xy[after] - xy).T).max())
    for end in np.flatnonzero(np.repeat(bottom, 2)).tolist():
        own, start = end // 2, ends.at[end]
        if courses[own].closed:
            continue
        near = np.array(tree.query_ball_point(start, reach[own] + BEHIND + longest), np.int64)
        way, along, bent = _met(xy[near], xy[after[near]], start, ends.out[end])
        hit = linked[near] & (every.of[near] != own) & (along >= 0) & (along <= 1) & bent & (way > 0)
        through = np.flatnonzero(hit & edge[every.of[near]] & (way <= reach[own]))
        if not len(through):
            continue
        first = through[np.argmin(way[through])]
        if not (hit & bottom[every.of[near]] & (way > way[first]) & (way <= way[first] + BEHIND)).any():
            continue
        sides = crests.query(xy[every.of == own])[0]
        half = float(np.median(sides)) if np.median(sides) <= BEHIND else HALF
        place = start + way[first] * ends.out[end]
        gone[near] |= (every.of[near] == every.of[near[first]]) & (np.hypot(*(xy[near] - place).T) < half)
        cut[near[first]] = True
    return _cut(courses, every.counts, gone, cut, evidence, strong)


def _met(a: np.ndarray, b: np.ndarray, start: np.ndarray, out: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Where a ray meets links from ``a`` to ``b`` (n, 2): metres along it, share of the link, and if steeply."""
    link, gap = b - a, a - start
    cross = out[0] * link[:, 1] - out[1] * link[:, 0]
    bent = np.abs(cross) > LEAST_SINE * np.hypot(link[:, 0], link[:, 1])
    safe = np.where(bent, cross, 1.0)
    way = (gap[:, 0] * link[:, 1] - gap[:, 1] * link[:, 0]) / safe
    return way, (gap[:, 0] * out[1] - gap[:, 1] * out[0]) / safe, bent


def _cut(
    courses: List[Course], counts: np.ndarray, gone: np.ndarray, cut: np.ndarray, evidence: np.ndarray,
    strong: np.ndarray,
) -> Tuple[List[Course], np.ndarray, np.ndarray]:  # fmt: skip
    result, of = [], []
    start = np.cumsum(counts) - counts
    for number, course in enumerate(courses):
        own = slice(start[number], start[number] + counts[number])
        if not (gone[own].any() or cut[own].any()):
            result.append(course)
            of.append(number)
            continue
        piece = np.cumsum(np.append(False, cut[own][:-1]) | gone[own])
        for part in np.unique(piece):
            nodes = course.nodes[(piece == part) & ~gone[own]]
            if len(nodes) >= 2:
                result.append(Course(nodes))
                of.append(number)
    return result, evidence[of], strong[of]
