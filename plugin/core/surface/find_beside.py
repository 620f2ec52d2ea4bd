"""Points right beside a breakline but well over or under it: one of the two is wrong, or on the wrong side."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np

from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP, Text
from .cells import candidate_pairs
from .findings import Facts, Finding, FindingKind, FindingOptions

BESIDE_LINE = Text(
    "findings.beside_line",
    QT_TRANSLATE_NOOP(
        "core",
        "The point at E {easting:.3f} N {northing:.3f} is {distance:.3f} m beside a breakline and {value:+.3f} m off "
        "its height.",
    ),
)


def find_beside_lines(facts: Facts, options: FindingOptions) -> List[Finding]:
    """A finding for each vertex on no line within ``beside_distance`` of a breakline and ``beside_height`` off it.

    Of several edges so near, the one it differs most from counts.
    """
    tin = facts.tin
    edge = np.flatnonzero(facts.once & (facts.kind & int(LineKind.BREAKLINE) != 0))
    if len(edge) == 0:
        return []
    free = np.ones(len(tin.vertices), bool)
    free[facts.start[facts.kind != 0]] = False
    free[facts.end[facts.kind != 0]] = False
    vertex, of, distance, offset = _near(facts, np.flatnonzero(free), edge, options.beside_distance)
    off = np.abs(offset) > options.beside_height
    vertex, of, distance, offset = vertex[off], of[off], distance[off], offset[off]
    order = np.lexsort((distance, -np.abs(offset), vertex))
    first = order[np.append(True, np.diff(vertex[order]) != 0)[: len(order)]]
    found = []
    for i in first:
        h = of[i]
        sides = np.array([t for t in (h // 3, facts.beyond[h]) if t >= 0])
        involved = np.array([vertex[i], facts.start[h], facts.end[h]])
        found.append(
            facts.finding(
                FindingKind.BESIDE_LINE, tin.vertices[vertex[i]], float(offset[i]), "m", involved, sides, BESIDE_LINE,
                distance=float(distance[i]),
            )
        )  # fmt: skip
    return found


def _near(
    facts: Facts, vertex: np.ndarray, edge: np.ndarray, reach: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Vertices within ``reach`` of edges: vertex, edge, plan distance, height over the edge; all (k,)."""
    tin = facts.tin
    low = tin.vertices[:, :2].min(axis=0) - 2 * reach
    place = tin.vertices[:, :2] - low
    a, b = place[facts.start[edge]], place[facts.end[edge]]
    along = (b - a) / np.maximum(facts.length[edge], 1e-12)[:, None] * reach
    across = np.column_stack([-along[:, 1], along[:, 0]])
    corners = np.stack([a - along - across, b + along - across, b + along + across, a - along + across])
    cell = max(2 * reach, float(np.median(facts.length)))
    pairs = [np.empty((0, 2), np.int64)]
    for half in ([0, 1, 2], [0, 2, 3]):  # the strip around each edge as two triangles
        x, y = corners[half, :, 0].T, corners[half, :, 1].T
        for i, j in candidate_pairs(place[vertex, :1], place[vertex, 1:], x, y, cell):
            pairs.append(np.column_stack([i, j])[_distance(place[vertex[i]], a[j], b[j])[0] <= reach])
    i, j = np.unique(np.concatenate(pairs), axis=0).T
    distance, share = _distance(place[vertex[i]], a[j], b[j])
    height = tin.vertices[:, 2]
    start, end = height[facts.start[edge[j]]], height[facts.end[edge[j]]]
    return vertex[i], edge[j], distance, height[vertex[i]] - (start + share * (end - start))


def _distance(p: np.ndarray, a: np.ndarray, b: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Distance (k,) of places from segments, and where on the segment (0..1) it is measured."""
    ab = b - a
    share = np.clip(np.sum((p - a) * ab, axis=1) / np.maximum(np.sum(ab * ab, axis=1), 1e-24), 0.0, 1.0)
    off = p - (a + share[:, None] * ab)
    return np.hypot(off[:, 0], off[:, 1]), share
