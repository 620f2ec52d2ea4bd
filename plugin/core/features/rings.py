"""Small closed lines: islands, roundabouts and basins, of which a chain has followed a part only.

A chain of passes that cross a tight curve ever more obliquely breaks off there, or goes straight on. Where a part of a
course turns evenly, all candidates about the middle of its circle that have the higher ground on the same side are
asked whether they make a round with it.
"""

from __future__ import annotations

from typing import List, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .courses import Course, listed
from .nodes import Nodes

#: Turnings (radian) of a part that may be round, radii (m) of its circle, and how far it turns at least.
LEAST_TURN, MOST_TURN, SMALLEST, LARGEST, ROUND = 0.12, 1.5, 1.5, 15.0, 0.9
#: Candidates asked lie between these shares of the radius; least sine of the angle between a pass and the round.
NEAREST, FARTHEST, LEAST_SINE = 0.5, 1.6, 0.25
#: Nodes of a round, passes that share it, widest gap in it (radian), and how far off it (m) they lie at most.
LEAST_NODES, LEAST_PASSES, WIDEST, OFF = 7, 4, 1.5, 0.5
#: Share of a course's nodes that the round must take in its place; and how its sizes may differ.
TAKEN, UNLIKE = 0.5, 0.5
_FITS = 6


def close_rounds(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """The courses, with rounds in the place of those that are parts of them."""
    parts = _turning(nodes, courses)
    if not parts:
        return courses
    free = np.flatnonzero(~nodes.along)
    xy = np.column_stack([nodes.x, nodes.y])
    tree = cKDTree(xy[free])
    taken = np.zeros(len(nodes), bool)
    every = listed(courses)
    owner = np.full(len(nodes), -1)
    owner[every.k] = every.of
    rounds: List[Course] = []
    for part in parts:
        if taken[part].mean() > TAKEN:
            continue
        circle = _circle(xy[part])
        if circle is None:
            continue
        middle, radius = circle
        near = free[tree.query_ball_point(middle, FARTHEST * radius)]
        near = near[~taken[near] & ~_of_long_lines(owner[near], every.counts)]
        ring = _round(nodes, near, part, middle, radius)
        if ring is not None:
            taken[ring] = True
            rounds.append(Course(ring, True))
    if not rounds:
        return courses
    # What goes into a round goes out of all else.
    rest = [course for course in courses if taken[course.nodes].mean() <= TAKEN]
    kept = [Course(c.nodes[~taken[c.nodes]], c.closed and not taken[c.nodes].any()) for c in rest]
    return [course for course in kept if len(course.nodes) >= 3] + rounds


def _of_long_lines(owner: np.ndarray, counts: np.ndarray) -> np.ndarray:
    """Mask (n,) of nodes of courses of ``counts`` nodes that lie elsewhere for the most part."""
    here = np.bincount(owner[owner >= 0], minlength=len(counts))
    result: np.ndarray = (owner >= 0) & (here <= TAKEN * counts)[owner]
    return result


def _turning(nodes: Nodes, courses: List[Course]) -> List[np.ndarray]:
    """Nodes of the parts of open courses that turn evenly one way, those that turn most first."""
    some = [course for course in courses if not course.closed and len(course.nodes) >= 4]
    if not some:
        return []
    every = listed(some)
    k = every.k
    dx, dy = np.diff(nodes.x[k]), np.diff(nodes.y[k])
    turn = np.zeros(len(k))
    turn[1:-1] = np.arctan2(dx[:-1] * dy[1:] - dy[:-1] * dx[1:], dx[:-1] * dx[1:] + dy[:-1] * dy[1:])
    long = np.hypot(dx, dy)
    reach = np.ones(len(k))
    reach[1:-1] = np.maximum((long[:-1] + long[1:]) / 2, 0.05)
    inner = np.append(False, every.of[1:] == every.of[:-1]) & np.append(every.of[1:] == every.of[:-1], False)
    inner &= ~nodes.along[k]
    size = np.abs(turn)
    even = inner & (size > LEAST_TURN) & (size < MOST_TURN) & (size * LARGEST > reach) & (size * SMALLEST < reach)
    way = np.where(even, np.sign(turn), 0)
    starts = np.flatnonzero(np.append(True, (np.diff(way) != 0) | (np.diff(every.of) != 0)))
    ends = np.append(starts[1:], len(k))
    whole = np.add.reduceat(turn, starts)
    good = (way[starts] != 0) & (ends - starts >= 2) & (np.abs(whole) > ROUND)
    order = np.flatnonzero(good)[np.argsort(-np.abs(whole[good]), kind="stable")]
    return [k[starts[i] - 1 : ends[i] + 1] for i in order.tolist()]


def _circle(xy: np.ndarray) -> Optional[Tuple[np.ndarray, float]]:
    """Middle and radius of the circle nearest to places (n, 2), by least squares of x² + y² (Kåsa 1976)."""
    mean = xy.mean(axis=0)
    local = xy - mean
    a = np.column_stack([2 * local, np.ones(len(local))])
    (cx, cy, c), *_ = np.linalg.lstsq(a, (local**2).sum(axis=1), rcond=None)
    radius = float(np.sqrt(max(c + cx**2 + cy**2, 0.0)))
    return (mean + np.array([cx, cy]), radius) if SMALLEST <= radius <= LARGEST else None


def _round(nodes: Nodes, near: np.ndarray, part: np.ndarray, middle: np.ndarray, radius: float) -> Optional[np.ndarray]:
    """The nodes among ``near`` that make a round with ``part``, in order; None where they do not."""
    usual = np.median(nodes.size[part])
    rx, ry, r = _about(nodes, part, middle)
    sided = nodes.sided[part]
    outward = np.sign(np.median((nodes.ex[part] * rx + nodes.ey[part] * ry)[sided])) if sided.any() else 0.0
    rx, ry, r = _about(nodes, near, middle)
    along = nodes.ex[near] * rx + nodes.ey[near] * ry
    same = np.abs(along) > LEAST_SINE
    same &= ~nodes.sided[near] | (outward * along >= 0)
    same &= (nodes.kind[near] == nodes.kind[part[0]]) & (r > NEAREST * radius)
    same &= np.abs(nodes.size[near] - usual) <= 2.5 * nodes.size[near] / nodes.t[near] + UNLIKE * usual
    k, angle, r = near[same], np.arctan2(ry[same], rx[same]), r[same]
    if len(k) < LEAST_NODES:
        return None
    fitted, off = _fitted(angle, r, nodes.sigma[k], radius)
    good = np.abs(off) <= OFF
    k, angle, fitted = k[good], angle[good], fitted[good]
    order = np.argsort(angle, kind="stable")
    k, angle = k[order], angle[order]
    if len(k) < LEAST_NODES or len(np.unique(nodes.leg[k])) < LEAST_PASSES or fitted.min() < 0.3 * radius:
        return None
    gaps = np.diff(np.append(angle, angle[0] + 2 * np.pi))
    return _apart(nodes, k) if gaps.max() <= WIDEST else None


def _about(nodes: Nodes, k: np.ndarray, middle: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Unit vectors from ``middle`` to nodes, and distances."""
    dx, dy = nodes.x[k] - middle[0], nodes.y[k] - middle[1]
    r = np.maximum(np.hypot(dx, dy), 1e-6)
    return dx / r, dy / r, r


def _fitted(angle: np.ndarray, r: np.ndarray, sigma: np.ndarray, radius: float) -> Tuple[np.ndarray, np.ndarray]:
    """Radii (n,) of the oval nearest to most places, and how far each lies off it: by reweighting from the circle."""
    a = np.column_stack([np.ones(len(r)), *(f(n * angle) for n in (1, 2) for f in (np.cos, np.sin))])
    # An oval, but no more of one than the places ask for.
    stiff = np.diag([0.0, 0.3, 0.3, 0.6, 0.6])
    fitted = np.full(len(r), radius)
    wide = 0.35 * radius
    for _ in range(_FITS):
        weight = 1 / (1 + ((r - fitted) / np.hypot(wide, 2 * sigma)) ** 2) ** 2
        normal = (a * weight[:, None]).T @ a + stiff
        target = (a * weight[:, None]).T @ r
        fitted = a @ np.linalg.solve(normal, target)
        wide = max(0.6 * wide, 0.15)
    return fitted, r - fitted


def _apart(nodes: Nodes, k: np.ndarray) -> np.ndarray:
    """The nodes of a round without those that stand on the place of a surer one before."""
    kept: List[int] = []
    for i in k.tolist():
        if kept and np.hypot(nodes.x[i] - nodes.x[kept[-1]], nodes.y[i] - nodes.y[kept[-1]]) < 0.5:
            if nodes.sigma[i] < nodes.sigma[kept[-1]]:
                kept[-1] = i
            continue
        kept.append(i)
    return np.array(kept)
