"""Steps that run along a strong one at an even distance, as the two kerbs of a street do.

Where the course of a step is known, it foretells that of another one but for their distance: no node is free to choose,
and what a line must tell against chance is less than that of one which stands for itself.
"""

from __future__ import annotations

from typing import List

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP
from .courses import Course, listed
from .evidence import unlikely
from .groups import group_median, neighbours
from .nodes import Nodes

#: Steps farther from each other (m) have nothing to do with each other; and places along a strong one, metres apart.
FARTHEST, APART = 25.0, 0.5
#: What the choice of the strong line, the side and the distance costs, decades; nothing is told by fewer nodes, or
#: where a smaller share of the passes shows a step.
CHOICE, LEAST_NODES, LEAST_SHOWN = 2.7, 5, 0.8
#: A line that tells less by itself is none; nor does one that tells less carry another.
LEAST_OWN, LEAST_BASE = 2.0, 3.0
#: So near (m) to a strong line it is not another one.
SAME = 1.0


def parallel_evidence(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], evidence: np.ndarray, needed: np.ndarray, steady: np.ndarray
) -> np.ndarray:
    """The evidence (lines,) of each course, or what it has as one beside a step that is strong if that is more.

    ``needed``: (lines,) evidence from which each is strong, where it is ``steady`` (lines,) too; what is not has no
    part in this. Two steps that have less are strong together where what one tells by itself and the other beside it is
    enough. ``crowd``: (m,) of the first m nodes, as of :func:`.evidence.crowds`; nodes after them only read.
    """
    step = steady & np.array([nodes.kind[course.nodes[0]] == STEP for course in courses], bool)
    evidence = evidence.copy()
    asked = step & (evidence >= LEAST_OWN) & (evidence < needed)
    told = _told_beside(nodes, crowd, courses, step & (evidence >= needed), asked)
    evidence = np.where(told > evidence, told, evidence)
    for base in np.argsort(-evidence, kind="stable").tolist():
        asked = step & (evidence >= LEAST_OWN) & (evidence < needed)
        if evidence[base] < LEAST_BASE or not asked[base]:
            continue
        one = np.arange(len(courses)) == base
        told = _told_beside(nodes, crowd, courses, one, asked & ~one)
        both = told + evidence[base]
        both = np.where((told >= LEAST_OWN) & (both >= needed) & (both >= needed[base]), both, -np.inf)
        evidence = np.maximum(evidence, both)
        evidence[base] = max(evidence[base], float(both.max()))
    return evidence


def _told_beside(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], base: np.ndarray, asked: np.ndarray
) -> np.ndarray:
    """What each ``asked`` course (lines,) tells as one at an even distance from the nearest ``base``; else -inf."""
    many = len(courses)
    nothing = np.full(many, -np.inf)
    if not base.any() or not asked.any():
        return nothing
    every = listed(courses)
    offset = _offsets(nodes, [course for course, good in zip(courses, base) if good], every.k, asked[every.of])
    seen = (every.k < len(crowd)) & ~nodes.along[every.k] & np.isfinite(offset)
    k, of = every.k[seen], every.of[seen]
    usual = group_median(offset[seen], of, many)
    off = np.abs(offset[seen] - usual[of])
    decades = unlikely(nodes, crowd, k, off, _reach(every.counts, every.k, nodes)[seen])
    most = np.zeros(many)
    np.maximum.at(most, of, decades)  # one node gives the distance
    told = np.bincount(of, weights=decades, minlength=many) - most - CHOICE
    told += np.bincount(every.of, weights=nodes.decades[every.k], minlength=many)
    shown = np.bincount(of, minlength=many) >= np.maximum(LEAST_NODES, LEAST_SHOWN * every.counts)
    good = shown & (np.abs(usual) > SAME)
    return np.where(good, told, nothing)


def _offsets(nodes: Nodes, strong: List[Course], k: np.ndarray, asked: np.ndarray) -> np.ndarray:
    """How far (n,) nodes ``k`` lie left of the nearest of the ``strong`` courses; nan where not ``asked``, or far."""
    place, direction = places_along(nodes, strong)
    result = np.full(len(k), np.nan)
    some = np.flatnonzero(asked)
    xy = np.column_stack([nodes.x[k[some]], nodes.y[k[some]]])
    away, at = cKDTree(place).query(xy, distance_upper_bound=FARTHEST)
    near = np.isfinite(away)
    some, xy, at = some[near], xy[near], at[near]
    aside = xy - place[at]
    result[some] = direction[at, 0] * aside[:, 1] - direction[at, 1] * aside[:, 0]
    return result


def places_along(nodes: Nodes, courses: List[Course]) -> tuple:
    """Places (p, 2) along courses and the directions there."""
    every = listed([Course(np.append(c.nodes, c.nodes[:1])) if c.closed else c for c in courses])
    _, after = neighbours(every.counts)
    a = np.column_stack([nodes.x[every.k], nodes.y[every.k]])
    link = a[after] - a
    long = np.maximum(np.hypot(link[:, 0], link[:, 1]), 1e-9)
    pieces = np.where(after != np.arange(len(after)), np.ceil(long / APART), 0).astype(np.int64)
    row = np.repeat(np.arange(len(pieces)), pieces)
    share = (np.arange(len(row)) - np.repeat(np.cumsum(pieces) - pieces, pieces) + 0.5) / pieces[row]
    return a[row] + share[:, None] * link[row], (link / long[:, None])[row]


def _reach(counts: np.ndarray, k: np.ndarray, nodes: Nodes) -> np.ndarray:
    """Metres of line (n,) that each listed node stands for."""
    before, after = neighbours(counts)
    x, y = nodes.x[k], nodes.y[k]
    both = np.hypot(x[after] - x, y[after] - y) + np.hypot(x - x[before], y - y[before])
    ends = (after == np.arange(len(k))).astype(int) + (before == np.arange(len(k)))
    result: np.ndarray = both / np.maximum(2 - ends, 1)
    return result
