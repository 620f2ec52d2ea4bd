"""Ditches as one thing: edges and bottom keep their distances, and each pass tells where the whole lies."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..progress import Progress, silent
from .candidates import CONCAVE, CONVEX, STEP
from .courses import Course, listed
from .ditch_ends import SHOWN, WORST, bottoms_of, drawn_on
from .ditch_passes import Crossings, crossings_of, heights_about, met_along, moved, shown
from .ditch_section import NARROWEST, Heights, Section, fit_section
from .groups import group_median
from .nodes import Nodes, join_nodes, no_gates
from .passes import Passes
from .readings import Blocks

#: Edges are looked for so far (m) from the bottom.
FARTHEST = 4.0
#: Passes that a section needs, share of them that show an edge, least depth (m), and least bend at a bottom.
LEAST_PASSES, LEAST_SHARE, LEAST_DEPTH, LEAST_SIZE = 4, 0.4, 0.15, 0.4
#: A section is good where the heights are so near to it (in standard deviations) and its sides so well known (m).
FITS, KNOWN = 1.7, 0.15
#: Nothing is fitted where the median of the heights so near (m) to the bottom is less than so (m) below that beside.
MIDDLE, SHALLOW = 0.25, 0.06
#: What lies so little (m) beyond the edges is the ditch's still; and places along it, metres apart.
MARGIN, APART = 0.35, 0.5
#: A pass that ends so little (m) before an edge tells where it is.
SHORT = 0.3


def fit_ditches(
    passes: Passes, noise: np.ndarray, blocks: Blocks, nodes: Nodes, courses: List[Course], bridging: np.ndarray,
    evidence: np.ndarray, strong: np.ndarray, enough: np.ndarray, strong_bend: float, progress: Progress = silent,
) -> Tuple[Nodes, List[Course], np.ndarray, np.ndarray, np.ndarray]:  # fmt: skip
    """Nodes, courses, which nodes only bridge, evidence, and which courses are strong, with the lines of ditches.

    ``enough``: (lines,) bool, the evidence is enough for a breakline: such a bottom is asked whether it is a ditch's,
    and so is a strong step that could be one side of a ditch. If so, edges and bottom (or both sides of a floor) take
    the place of all courses between the edges, with the evidence of what was asked. A bottom that is walked along stays
    as it is. ``strong_bend``: least slope of the sides.
    """
    every = listed(courses)
    many = len(courses)
    size = group_median(nodes.size[every.k], every.of, many)
    along = np.bincount(every.of, weights=nodes.along[every.k], minlength=many) > 0
    kind = np.array([nodes.kind[course.nodes[0]] for course in courses], np.int64)
    side = (kind == STEP) & strong & ~along & (size >= LEAST_DEPTH)
    bottom = (kind == CONCAVE) & enough
    asked = np.flatnonzero((bottom & (along | (size >= LEAST_SIZE))) | side)
    if not len(asked):
        return nodes, courses, bridging, evidence, strong
    asked = asked[np.argsort(-evidence[asked], kind="stable")]
    met = met_along(passes, blocks, nodes, [courses[i] for i in asked.tolist() if along[i]])
    convex, (bottoms, whose) = _in_order(passes, nodes), bottoms_of(nodes, courses, bottom)
    gone, number = np.zeros(many, bool), len(nodes)
    parts, new, told = [nodes], [], []
    for done, i in enumerate(asked.tolist()):
        progress(done / len(asked), "features")
        at = met.pop(0) if along[i] else crossings_of(passes, nodes, courses[i])
        if side[i]:  # the higher ground lies on its left
            at = moved(at, np.full(len(at.s), -passes.spacing))
        found = None if gone[i] else _ditch(passes, noise, at, convex, strong_bend)
        if found is None:
            continue
        if not along[i] and not courses[i].closed:
            found = drawn_on(passes, noise, blocks, nodes, bottoms[whose != i], *found)
        at, section = found
        gone |= _within(at, section, nodes, courses) & ~along
        gone[i] = not along[i]
        for line in _lines(passes, at, section, not along[i]):
            parts.append(line)
            new.append(Course(number + np.arange(len(line)), courses[i].closed))
            told.append(evidence[i])
            number += len(line)
    kept = [course for course, out in zip(courses, gone) if not out]
    return (
        join_nodes(parts), kept + new, np.append(bridging, np.zeros(number - len(nodes), bool)),
        np.append(evidence[~gone], told), np.append(strong[~gone], np.ones(len(new), bool)),
    )  # fmt: skip


@dataclass(frozen=True)
class Convex:
    """Convex places in the order of the walk: ``s`` metres walked and ``leg`` of each, one before and one after all."""

    s: np.ndarray
    leg: np.ndarray


def _in_order(passes: Passes, nodes: Nodes) -> Convex:
    k = np.flatnonzero((nodes.kind == CONVEX) & ~nodes.along)
    at = nodes.point[k]
    s = passes.s[at] + (nodes.x[k] - passes.x[at]) * passes.ex[at] + (nodes.y[k] - passes.y[at]) * passes.ey[at]
    order = np.argsort(s, kind="stable")
    return Convex(np.concatenate([[-np.inf], s[order], [np.inf]]), np.concatenate([[-1], nodes.leg[k[order]], [-1]]))


def _ditch(
    passes: Passes, noise: np.ndarray, at: Crossings, convex: Convex, least_side: float
) -> Optional[Tuple[Crossings, Section]]:
    """Those of the passes ``at`` that show a ditch about the bottom, and its section; None where it is no ditch."""
    # Edges nearer than points are apart leave too few points between them to tell.
    edges = np.maximum(_edges(passes, at, convex), passes.spacing)
    heights = heights_about(passes, noise, at, edges)
    if _level(heights, edges):
        return None
    good, whole = shown(heights, edges)
    while np.count_nonzero(good & whole) >= LEAST_PASSES:
        at, heights, whole = at.take(good), heights.take(good), whole[good]
        section = fit_section(heights, edges)
        good = (section.own[:, 3] >= SHOWN * section.depth) & (section.off <= WORST)
        if good.all():
            return (at, section) if _is_ditch(section, least_side) else None
    return None


def _level(heights: Heights, edges: np.ndarray) -> bool:
    """Whether all passes together show no hollow, as at a kerb: a fit of them to a section would cost much."""
    there = heights.weight > 0
    parts = (np.abs(heights.v) <= MIDDLE, heights.v > edges[0], heights.v < -edges[1])
    if not all((part & there).any() for part in parts):
        return False
    middle, left, right = (float(np.median(heights.z[part & there])) for part in parts)
    return (left + right) / 2 - middle < SHALLOW


def _edges(passes: Passes, at: Crossings, convex: Convex) -> np.ndarray:
    """Usual distance (2,) of the nearest convex place left and right; 0 where too few passes show one."""
    ahead = np.searchsorted(convex.s, at.s + NARROWEST)
    behind = np.searchsorted(convex.s, at.s - NARROWEST) - 1
    away = np.full((2, len(at.s)), np.inf)
    for side, number in enumerate((ahead, behind)):
        own = convex.leg[number] == passes.leg[at.point]
        away[side][own] = np.abs((convex.s[number] - at.s) * at.left)[own]
    result = []
    for one, other in ((0, 1), (1, 0)):
        beside = np.where(at.left > 0, away[one], away[other])
        near = beside[beside <= FARTHEST]
        if len(near) < max(LEAST_PASSES - 1, LEAST_SHARE * len(beside)):
            return np.zeros(2)
        result.append(float(np.median(near)))
    return np.array(result)


def _is_ditch(section: Section, least_side: float) -> bool:
    fits = np.sqrt(np.mean(section.off**2)) <= FITS and bool((section.shape_var[1:] <= KNOWN**2).all())
    return fits and section.depth >= LEAST_DEPTH and bool((section.depth >= least_side * section.shape[1:]).all())


def _within(at: Crossings, section: Section, nodes: Nodes, courses: List[Course]) -> np.ndarray:
    """Mask of the courses that lie between the edges for the most part."""
    every = listed(courses)
    way = section.own[:, 4] / at.left
    x, y = at.x + way * at.ex, at.y + way * at.ey
    run = np.append(0.0, np.cumsum(np.hypot(np.diff(x), np.diff(y))))
    places = np.arange(0.0, run[-1] + APART, APART)
    tree = cKDTree(np.column_stack([np.interp(places, run, x), np.interp(places, run, y)]))
    half = section.shape[0] + section.shape[1:].max() + MARGIN
    away = tree.query(np.column_stack([nodes.x[every.k], nodes.y[every.k]]), distance_upper_bound=half)[0]
    near = np.bincount(every.of[np.isfinite(away)], minlength=len(courses))
    result: np.ndarray = near > 0.5 * every.counts
    return result


def _lines(passes: Passes, at: Crossings, section: Section, with_bottom: bool) -> List[Nodes]:
    """Nodes of the left and the right edge and, if asked for, of the bottom, or of the floor's left and right side."""
    floor, left_run, right_run = section.shape.tolist()
    left, right = section.depth / left_run, section.depth / right_run
    edges = [(CONVEX, floor + left_run, left, -1), (CONVEX, -floor - right_run, right, 1)]
    bottom = [(CONCAVE, floor, left, 1), (CONCAVE, -floor, right, -1)] if floor else [(CONCAVE, 0.0, left + right, 0)]
    return [_line(passes, at, section, *row) for row in edges + bottom * with_bottom]


def _line(passes: Passes, at: Crossings, section: Section, kind: int, u: float, bend: float, steeper: int) -> Nodes:
    """Nodes ``u`` metres left of the middle, where the slope changes by ``bend``; ``steeper``: 1 left, -1 right.

    None where a pass ends before it gets there.
    """
    height, height_var = section.at(u)
    off, off_var = section.place(u)
    way = off / at.left
    s = at.s + way
    there = (s >= passes.s[passes.first[at.point]] - SHORT) & (s <= passes.s[passes.last[at.point] - 1] + SHORT)
    # What is steep lies on the left of a line.
    order = np.flatnonzero(there)[:: -1 if steeper < 0 else 1]
    at, way, height, height_var = at.take(order), way[order], height[order], height_var[order]
    n = len(way)
    turn = np.where(at.left > 0, 1.0, -1.0) * (steeper if steeper else 1)
    point = np.searchsorted(passes.s, at.s + way, side="right") - 1
    point = np.clip(point, passes.first[at.point], np.maximum(passes.last[at.point] - 2, passes.first[at.point]))
    shape = section.shape_var[0] + (section.shape_var[1 if u > 0 else 2] if kind == CONVEX else 0.0)
    sigma = np.sqrt(off_var[order] + shape) / np.abs(at.left)
    edges, chance = no_gates(n)
    return Nodes(
        kind=np.full(n, kind), x=at.x + way * at.ex, y=at.y + way * at.ey, ex=at.ex * turn, ey=at.ey * turn,
        size=np.full(n, bend), t=np.full(n, 5.0), sigma=sigma, sided=np.full(n, steeper != 0), edges=edges,
        chance=chance, leg=passes.leg[point], point=point, other=np.minimum(point + 1, len(passes) - 1),
        along=np.zeros(n, bool), decades=np.zeros(n), fine=np.ones(n, bool),
        height=height + passes.z[at.point], height_var=height_var,
        rise=np.full(n, np.nan),
    )  # fmt: skip
