"""Straight pieces of lines in plan: the edges of a surface, and where other lines end on them."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..surface.boxes import box_pairs
from ..surface.tin import Tin

_ON_LINE = 2e-5  # a place so near to a line (m) is on it but for rounding


def _edges_once(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """Triangle (e,) and side (e,) of all edges, each once."""
    return np.nonzero((tin.neighbours < 0) | (tin.neighbours > np.arange(len(tin.triangles))[:, None]))  # type: ignore[return-value]


def rim_edges(tin: Tin) -> np.ndarray:
    """Mask (e,) of the edges, as in :func:`edge_segments`, that are at the rim."""
    triangle, side = _edges_once(tin)
    mask: np.ndarray = tin.neighbours[triangle, side] < 0
    return mask


def edge_segments(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """Segments (e, 2, 2) in the CRS of all edges, each once, and their kinds (e,)."""
    triangle, side = _edges_once(tin)
    ends = [tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]]
    segments: np.ndarray = np.stack([tin.vertices[v, :2] for v in ends], axis=1) + tin.origin
    return segments, tin.edge_kind[triangle, side]


def split_at(segments: np.ndarray, places: np.ndarray, within: float = _ON_LINE) -> Tuple[np.ndarray, np.ndarray]:
    """Segments (s, 2, 2) cut at the places (q, 2) that lie on them, ``within`` so many metres, and which each is of."""
    if len(segments) == 0 or len(places) == 0:
        return segments, np.arange(len(segments))
    low, high = segments.min(axis=1) - within, segments.max(axis=1) + within
    found = [(np.empty(0, np.int64), np.empty(0), np.empty(0, np.int64))]
    for i, j in box_pairs(low, high, places, places):
        a, step = segments[i, 0], segments[i, 1] - segments[i, 0]
        length = np.maximum(np.hypot(*step.T), 1e-300)
        to = places[j] - a
        along = np.sum(to * step, axis=1) / length
        on = np.abs(step[:, 0] * to[:, 1] - step[:, 1] * to[:, 0]) / length < within
        inner = on & (along > within) & (along < length - within)
        found.append((i[inner], along[inner], j[inner]))
    i, along, j = (np.concatenate(column) for column in zip(*found))
    order = np.lexsort((along, i))
    i, along, j = i[order], along[order], j[order]
    again = np.append(False, (np.diff(i) == 0) & (np.diff(along) < within)) if len(i) else np.zeros(0, bool)
    i, j = i[~again], j[~again]
    # each segment's first end, the places on it, its last end, in one list
    number = np.arange(len(segments))
    of = np.concatenate([number, i, number])
    rank = np.concatenate([np.zeros(len(segments)), np.arange(1, len(i) + 1), np.full(len(segments), len(i) + 1)])
    xy = np.concatenate([segments[:, 0], places[j], segments[:, 1]])
    order = np.lexsort((rank, of))
    of, xy = of[order], xy[order]
    same = of[:-1] == of[1:]
    return np.stack([xy[:-1][same], xy[1:][same]], axis=1), of[:-1][same]
