"""Breaklines that stop where another of the same code goes on, with triangles across the gap.

A line that was coded as two, or whose last point has a wrong number, leaves a gap that the surface
bridges: a kerb is cut through there, a ditch dammed.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import List, Set

import numpy as np
from scipy.spatial import cKDTree

from ..linework.constraints import Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, Text
from .cells import candidate_pairs
from .findings import Facts, Finding, FindingKind, FindingOptions

GAP = Text(
    "findings.gap",
    QT_TRANSLATE_NOOP(
        "core",
        "{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and "
        "{count} triangles bridge the gap. If it is one line, join it there.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{first} ends and {second} begins {value:.2f} m further at E {easting:.3f} N {northing:.3f}, and a "
        "triangle bridges the gap. If it is one line, join it there.",
    ),
)
GAP_IN_RING = Text(
    "findings.gap_in_ring",
    QT_TRANSLATE_NOOP(
        "core",
        "{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and {count} triangles "
        "bridge the gap. If it is a ring, close it.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{first} stops {value:.2f} m before its own start at E {easting:.3f} N {northing:.3f}, and a triangle"
        " bridges the gap. If it is a ring, close it.",
    ),
)


@dataclass(frozen=True)
class _Ends:
    """Both ends of open breaklines; all (k,) or (k, 2). ``outward``: unit vector in which the line ends."""

    line: np.ndarray
    vertex: np.ndarray
    outward: np.ndarray
    last: np.ndarray
    code: np.ndarray


def code_of(label: str) -> str:
    """The code in a line's label: without line number and count of repetition, so ``KT 1 (2)`` gives ``KT``."""
    found = re.match(r"^(.*?)[\s_-]*\d*(?:\s*\(\d+\))?\s*$", label)
    return (found.group(1) if found else label).casefold()


def find_gaps(facts: Facts, constraints: Constraints, options: FindingOptions) -> List[Finding]:
    """A finding for each gap between ends of open breaklines of one code; the nearest partner of each end counts."""
    ends = _open_ends(facts, constraints)
    if len(ends.line) < 2:
        return []
    pairs = _partners(facts, ends, options)
    crossed = _triangles_across(facts, ends.vertex[pairs])
    found = []
    for (i, j), triangles in zip(pairs, crossed):
        if not triangles:  # an edge joins them
            continue
        a, b = facts.tin.vertices[ends.vertex[i]], facts.tin.vertices[ends.vertex[j]]
        first, second = sorted((int(ends.line[i]), int(ends.line[j])))
        labels = {"first": _label(constraints, first), "second": _label(constraints, second)}
        text = GAP_IN_RING if first == second else GAP
        found.append(
            facts.finding(
                FindingKind.GAP, (a + b) / 2, float(np.hypot(*(b - a)[:2])), "m", ends.vertex[[i, j]],
                np.array(sorted(triangles)), text, count=len(triangles), **labels,
            )
        )  # fmt: skip
    return found


def _label(constraints: Constraints, line: int) -> str:
    return constraints.lines[line].label or f"#{line + 1}"


def _open_ends(facts: Facts, constraints: Constraints) -> _Ends:
    rows = []
    for number, line in enumerate(constraints.lines):
        if not line.kind & LineKind.BREAKLINE or line.closed or len(line.xyz) < 2 or not line.label:
            continue
        xy = line.xyz[:, :2]
        if np.array_equal(xy[0], xy[-1]):
            continue
        for end, inner in ((xy[0], xy[1]), (xy[-1], xy[-2])):
            rows.append((number, end, end - inner, code_of(line.label)))
    place = np.array([row[1] for row in rows], float).reshape(-1, 2)
    step = np.array([row[2] for row in rows], float).reshape(-1, 2)
    last = np.hypot(step[:, 0], step[:, 1])
    vertex = facts.vertices_at(place)
    known = (vertex >= 0) & (last > 0)
    code = np.unique(np.array([row[3] for row in rows], dtype=str), return_inverse=True)[1].ravel()
    line_number = np.array([row[0] for row in rows], np.int64)
    outward = step[known] / last[known][:, None]
    return _Ends(line_number[known], vertex[known], outward, last[known], code[known])


def _partners(facts: Facts, ends: _Ends, options: FindingOptions) -> np.ndarray:
    """Pairs (k, 2) of ends that look like one line with a gap, each the other's or its own nearest."""
    place = facts.tin.vertices[ends.vertex, :2]
    pairs = cKDTree(place).query_pairs(options.gap_distance, output_type="ndarray")
    i, j = pairs.T
    across = place[j] - place[i]
    width = np.hypot(across[:, 0], across[:, 1])
    apart = width > 0
    across[apart] /= width[apart][:, None]
    straight = np.cos(np.radians(options.gap_turn))
    fits = apart & (ends.code[i] == ends.code[j])
    fits &= width <= options.gap_factor * np.maximum(ends.last[i], ends.last[j])
    fits &= np.sum(ends.outward[i] * across, axis=1) >= straight
    fits &= np.sum(ends.outward[j] * across, axis=1) <= -straight
    pairs, width = pairs[fits], width[fits]
    nearest = np.full(len(place), np.inf)
    np.minimum.at(nearest, pairs.ravel(), np.repeat(width, 2))
    mutual: np.ndarray = pairs[(width == nearest[pairs[:, 0]]) & (width == nearest[pairs[:, 1]])]
    return mutual


def _triangles_across(facts: Facts, pairs: np.ndarray) -> List[Set[int]]:
    """Triangles that each segment between two vertices, (k, 2), cuts; none if it is an edge. Exact."""
    found: List[Set[int]] = [set() for _ in pairs]
    if len(pairs) == 0:
        return found
    tin = facts.tin
    grid = tin.grid
    corner = grid[tin.triangles]
    length = np.hypot(*(grid[pairs[:, 1]] - grid[pairs[:, 0]]).T)
    for i, t in candidate_pairs(
        grid[pairs][:, :, 0], grid[pairs][:, :, 1], corner[:, :, 0], corner[:, :, 1], float(max(length.max(), 1.0))
    ):
        a, b = grid[pairs[i, 0]], grid[pairs[i, 1]]
        for k in range(3):
            c, d = corner[t, k], corner[t, (k + 1) % 3]
            side = [np.sign(_turn(*each)) for each in ((a, b, c), (a, b, d), (c, d, a), (c, d, b))]
            for hit in np.flatnonzero((side[0] * side[1] < 0) & (side[2] * side[3] < 0)):
                found[i[hit]].add(int(t[hit]))
    return found


def _turn(a: np.ndarray, b: np.ndarray, c: np.ndarray) -> np.ndarray:
    turn: np.ndarray = (b[:, 0] - a[:, 0]) * (c[:, 1] - a[:, 1]) - (b[:, 1] - a[:, 1]) * (c[:, 0] - a[:, 0])
    return turn
