"""The outlines of full ponds."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..surface.mesh import following, preceding
from .flow import Flow
from .ponds import Ponds, members


def pond_shores(flow: Flow, ponds: Ponds) -> Tuple[Tuple[np.ndarray, ...], ...]:
    """For each pond its shore as closed rings (q, 2) in metres of the CRS, islands clockwise.

    Ground exactly at the pond's level is dry. A pond never comes to the rim, so every ring is closed on the surface.
    """
    part = members(flow, ponds)
    level = ponds.level[part.pond]
    some = np.flatnonzero((part.heights[:, 0] < level) & (part.heights[:, 2] >= level))
    triangle, pond = part.triangle[some], part.pond[some]
    wet = flow.tin.vertices[flow.tin.triangles[triangle], 2] < ponds.level[pond][:, None]
    one = wet.sum(axis=1) == 1
    # Water on the left: the shore comes in over the edge that falls from dry to wet of a lone wet corner ...
    lone = np.where(one, np.argmax(wet, axis=1), np.argmin(wet, axis=1))
    half = 3 * triangle.astype(np.int64) + lone
    to_lone, from_lone = preceding(half), half
    entry, leave = np.where(one, from_lone, to_lone), np.where(one, to_lone, from_lone)
    key = pond * np.int64(len(flow.twin)) + entry
    order = np.argsort(key)
    after = order[np.searchsorted(key[order], pond * np.int64(len(flow.twin)) + flow.twin[leave])]
    begin = _cut(flow, entry, ponds.level[pond]) + flow.tin.origin
    rings: Tuple[list, ...] = tuple([] for _ in range(len(ponds)))
    left = np.ones(len(some), bool)
    following_segment = after.tolist()
    for first in range(len(some)):
        if not left[first]:
            continue
        chain = [first]
        left[first] = False
        while left[following_segment[chain[-1]]]:
            chain.append(following_segment[chain[-1]])
            left[chain[-1]] = False
        ring = begin[[*chain, first]]
        ring = ring[np.append(True, np.any(np.diff(ring, axis=0) != 0, axis=1))]
        if len(ring) > 3:  # not an island of one vertex just at the level
            rings[pond[first]].append(ring)
    return tuple(tuple(of) for of in rings)


def _cut(flow: Flow, edge: np.ndarray, level: np.ndarray) -> np.ndarray:
    """Where half-edges pass through a level, (k, 2); the same from both sides of an edge."""
    vertices = flow.tin.triangles.ravel()
    a, b = vertices[edge], vertices[following(edge)]
    low, high = (flow.tin.vertices[np.where(flow.rank[a] < flow.rank[b], *pair)] for pair in ((a, b), (b, a)))
    share = (level - low[:, 2]) / (high[:, 2] - low[:, 2])
    place: np.ndarray = low[:, :2] + share[:, None] * (high - low)[:, :2]
    return place
