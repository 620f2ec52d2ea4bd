"""Inlets: places and lines that take all water that reaches them."""

from __future__ import annotations

from typing import Sequence

import numpy as np

from ..surface.cells import candidate_pairs
from ..surface.tin import Tin
from .paths import along_lines


def inlet_triangles(tin: Tin, xy: np.ndarray, reach: float = 0.0) -> np.ndarray:
    """The inlet (m,) int32 that takes the water of each triangle, -1 none.

    An inlet at ``xy`` (k, 2), metres of the CRS, takes all water that comes to a triangle no farther than ``reach``
    metres (0: those it is in or touches). A triangle near several inlets goes to
    the nearest, of equally near ones to the first. So the resolution is a triangle: put points where an
    inlet is, or give its size as ``reach``.
    """
    reach = reach + 1e-6
    corner = tin.vertices[tin.triangles][:, :, :2]
    low = corner.reshape(-1, 2).min(axis=0) - 3 * reach
    place = np.asarray(xy, float).reshape(-1, 2) - tin.origin - low
    inside = np.all((place > 0) & (place < corner.reshape(-1, 2).max(axis=0) - low + 3 * reach), axis=1)
    names = np.flatnonzero(inside)
    inlet = np.full(len(corner), -1, np.int32)
    if len(names) == 0:
        return inlet
    box = place[names][:, None] + 2 * reach * np.array([[-1.0, -1.0], [2.0, -1.0], [-1.0, 2.0]])
    corner = corner - low
    cell = max(4 * reach, float(np.sqrt(np.prod(np.ptp(corner.reshape(-1, 2), axis=0)) / max(1, len(names)))) / 4, 1e-2)
    found = [(i, t) for i, t in candidate_pairs(box[:, :, 0], box[:, :, 1], corner[:, :, 0], corner[:, :, 1], cell)]
    i, t = (np.concatenate([pair[k] for pair in found] or [np.empty(0, np.int64)]) for k in (0, 1))
    distance = _distance(corner[t], place[names[i]])
    near = np.flatnonzero(distance <= reach)
    near = near[np.lexsort((-i[near], -distance[near]))]  # the nearest is written last
    inlet[t[near]] = names[i[near]]
    return inlet


def line_triangles(tin: Tin, line: np.ndarray, spacing: float, reach: float = 0.0) -> np.ndarray:
    """As ``inlet_triangles``, for the stretches of a ``line`` (q, 2) of ``spacing`` metres each.

    Stretch i reaches from i - 1/2 to i + 1/2 spacings from the beginning of the line, that is around its station i.
    """
    step = min(spacing / 8, max(reach, 0.05))
    fine = along_lines([line], step)
    steps = np.append(0.0, np.cumsum(np.hypot(*np.diff(fine, axis=0).T)))
    taken = inlet_triangles(tin, fine, max(reach, step))
    stretch = np.floor(steps / spacing + 0.5).astype(np.int32)
    return np.where(taken >= 0, stretch[np.maximum(taken, 0)], -1).astype(np.int32)


def joined(parts: Sequence[np.ndarray]) -> np.ndarray:
    """One array of triangles (m,) from several; numbers go on from part to part, the first that takes one keeps it."""
    result, first = np.full(len(parts[0]), -1, np.int32), 0
    for part in parts:
        free = (result < 0) & (part >= 0)
        result[free] = part[free] + first
        first += int(part.max(initial=-1)) + 1
    return result


def _distance(corner: np.ndarray, place: np.ndarray) -> np.ndarray:
    """Plan distance (k,) of places (k, 2) to triangles (k, 3, 2), 0 inside."""
    result, inside = np.full(len(place), np.inf), np.ones(len(place), bool)
    for i in range(3):
        a, b = corner[:, i], corner[:, (i + 1) % 3]
        along, to = b - a, place - a
        share = np.clip(np.sum(along * to, axis=1) / np.sum(along * along, axis=1), 0, 1)
        result = np.minimum(result, np.hypot(*(to - share[:, None] * along).T))
        inside &= along[:, 0] * to[:, 1] - along[:, 1] * to[:, 0] >= 0
    return np.where(inside, 0.0, result)
