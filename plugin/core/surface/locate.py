"""Which triangle is under a place, and how high is the surface there."""

from __future__ import annotations

import numpy as np

from .cells import candidate_pairs
from .tin import GRID, Tin

#: A place this far (m) beside the rim counts as on it: vertices are rounded to the plan grid, coordinates to floats.
RIM = GRID


def locate(tin: Tin, xy: np.ndarray) -> np.ndarray:
    """Triangle (q,) int64 under each place ``xy`` (q, 2) in metres of the CRS; -1 outside the surface.

    A place on an edge belongs to the triangle of lowest number; one up to ``RIM`` outside the rim to the rim's
    triangle; nan places are outside.
    """
    local = np.asarray(xy, float) - tin.origin
    found = np.full(len(local), len(tin.triangles), np.int64)
    low, high = tin.vertices[:, :2].min(axis=0), tin.vertices[:, :2].max(axis=0)
    near = np.flatnonzero(np.all((local >= low - RIM) & (local <= high + RIM), axis=1))
    corner = tin.vertices[tin.triangles][:, :, :2] - low
    place = np.maximum(local[near] - low, 0.0)
    cell = _cell(corner, float(np.prod(high - low)), len(place))
    for i, t in candidate_pairs(place[:, :1], place[:, 1:], corner[:, :, 0], corner[:, :, 1], cell):
        weight = barycentric(corner[t], place[i])
        within = np.all(weight >= -1e-9, axis=1)
        np.minimum.at(found, near[i[within]], t[within])
    lost = near[found[near] == len(tin.triangles)]
    found[lost] = _beside_rim(tin, local[lost])
    found[found == len(tin.triangles)] = -1
    return found


def _cell(corner: np.ndarray, whole: float, places: int) -> float:
    """A side of cells that suits the triangles (m, 3, 2) and how many places are asked for over ``whole`` m²: few far
    vertices must not make cells into which everything else falls.
    """
    if not len(corner):
        return 1.0
    even = float(np.sqrt(whole / max(1, min(len(corner), places) / 2)))
    typical = float(np.median(np.ptp(corner, axis=1).max(axis=1))) / 2
    return max(1e-3, min(even, typical))


def _beside_rim(tin: Tin, place: np.ndarray) -> np.ndarray:
    """The triangle of lowest number whose rim edge is within ``RIM`` of each local ``place`` (q, 2), or m."""
    found = np.full(len(place), len(tin.triangles), np.int64)
    triangle, edge = np.nonzero(tin.neighbours < 0)
    low = tin.vertices[:, :2].min(axis=0) - 3 * RIM
    a = tin.vertices[tin.triangles[triangle, edge], :2] - low
    b = tin.vertices[tin.triangles[triangle, (edge + 1) % 3], :2] - low
    place = place - low
    if len(place) == 0 or len(triangle) == 0:
        return found
    around = place[:, None] + RIM * np.array([[-2.0, -1.0], [2.0, -1.0], [0.0, 3.0]])  # holds the circle of radius RIM
    cell = max(1e-3, float(np.median(np.hypot(*(b - a).T))))
    ends = np.stack([a, b], axis=1)
    for i, k in candidate_pairs(around[:, :, 0], around[:, :, 1], ends[:, :, 0], ends[:, :, 1], cell):
        along, from_a = b[k] - a[k], place[i] - a[k]
        t = np.clip(np.sum(along * from_a, axis=1) / np.sum(along * along, axis=1), 0.0, 1.0)
        close = np.hypot(*(from_a - t[:, None] * along).T) <= RIM
        np.minimum.at(found, i[close], triangle[k[close]])
    return found


def heights_at(tin: Tin, xy: np.ndarray) -> np.ndarray:
    """Height (q,) of the surface at each place ``xy`` (q, 2) in metres of the CRS; nan outside."""
    triangle = locate(tin, xy)
    height = np.full(len(triangle), np.nan)
    on = np.flatnonzero(triangle >= 0)
    height[on] = heights_in(tin, triangle[on], np.asarray(xy, float)[on] - tin.origin)
    return height


def heights_in(tin: Tin, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    """Heights (k,) at places ``local`` (k, 2), metres from the TIN's origin, each in its ``triangle`` (k,).

    A place a little outside (``RIM``) gets a height of the triangle's near side, not one beyond it.
    """
    corner = tin.vertices[tin.triangles[triangle]]
    weight = barycentric(corner[:, :, :2], local).clip(0.0)
    height: np.ndarray = np.sum(weight * corner[:, :, 2], axis=1) / weight.sum(axis=1)
    return height


def barycentric(corner: np.ndarray, place: np.ndarray) -> np.ndarray:
    """Barycentric coordinates (k, 3) of places (k, 2) in triangles with corners (k, 3, 2)."""
    a, b, c = (corner[:, i] - place for i in range(3))
    weight = np.column_stack([p[:, 0] * q[:, 1] - p[:, 1] * q[:, 0] for p, q in ((b, c), (c, a), (a, b))])
    result: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
    return result
