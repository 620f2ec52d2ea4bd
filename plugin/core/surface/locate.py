"""Which triangle is under a place, and how high is the surface there."""

from __future__ import annotations

import numpy as np

from .cells import candidate_pairs
from .tin import Tin


def locate(tin: Tin, xy: np.ndarray) -> np.ndarray:
    """Triangle (q,) int64 under each place ``xy`` (q, 2) in metres of the CRS; -1 outside the surface.

    A place on an edge belongs to the triangle of lowest number; nan places are outside.
    """
    local = np.asarray(xy, float) - tin.origin
    found = np.full(len(local), len(tin.triangles), np.int64)
    shape = tin.vertices[tin.triangles]
    low = tin.vertices[:, :2].min(axis=0)
    high = tin.vertices[:, :2].max(axis=0)
    inside = np.flatnonzero(np.all((local >= low) & (local <= high), axis=1))
    corner = shape[:, :, :2] - low
    place = local[inside] - low
    cell = max(1e-3, float(np.sqrt(np.prod(high - low) / max(1, min(len(corner), len(place)) / 2))))
    for i, t in candidate_pairs(place[:, :1], place[:, 1:], corner[:, :, 0], corner[:, :, 1], cell):
        weight = _weights(corner[t], place[i])
        within = np.all(weight >= -1e-9, axis=1)
        np.minimum.at(found, inside[i[within]], t[within])
    found[found == len(tin.triangles)] = -1
    return found


def heights_at(tin: Tin, xy: np.ndarray) -> np.ndarray:
    """Height (q,) of the surface at each place ``xy`` (q, 2) in metres of the CRS; nan outside."""
    triangle = locate(tin, xy)
    height = np.full(len(triangle), np.nan)
    on = np.flatnonzero(triangle >= 0)
    corner = tin.vertices[tin.triangles[triangle[on]]]
    weight = _weights(corner[:, :, :2], np.asarray(xy, float)[on] - tin.origin)
    height[on] = np.sum(weight * corner[:, :, 2], axis=1)
    return height


def _weights(corner: np.ndarray, place: np.ndarray) -> np.ndarray:
    """Barycentric coordinates (k, 3) of places (k, 2) in triangles (k, 3, 2)."""
    a, b, c = (corner[:, i] - place for i in range(3))
    weight = np.column_stack([_cross(b, c), _cross(c, a), _cross(a, b)])
    result: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
    return result


def _cross(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    result: np.ndarray = a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]
    return result
