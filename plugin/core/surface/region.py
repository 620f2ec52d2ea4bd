"""Which triangles belong to the surface: inside the boundary, outside the voids, not spanning the rim."""

from __future__ import annotations

from typing import Dict, List, Optional

import numpy as np

from ..linework.constraints import LineKind, Rings
from .drape import RIM
from .mesh import Mesh, following
from .parts import connected_parts
from .tin import GRID

_EDGE_OF_REGION = int(LineKind.BOUNDARY | LineKind.VOID) | RIM


def triangles_by_region(mesh: Mesh) -> np.ndarray:
    """Number (m,) of the region of each triangle; regions are divided by marked boundary and void edges."""
    passable = np.flatnonzero((mesh.twin >= 0) & (mesh.kind & _EDGE_OF_REGION == 0))
    return connected_parts(mesh.triangle_count, passable // 3, mesh.twin[passable] // 3)


def inside_rings(mesh: Mesh, rings: Rings) -> np.ndarray:
    """Mask (m,) of the triangles inside the boundary rings of every source that has any, and outside all void rings.

    Several rings of a kind and source count by the even-odd rule: a ring in a ring is a hole, a ring in a hole an
    island.
    """
    label = triangles_by_region(mesh)
    place = _largest_centroids(mesh, label)
    keep = np.ones(len(place), bool)
    for kind in (LineKind.BOUNDARY, LineKind.VOID):
        of: Dict[int, List[np.ndarray]] = {}
        for its, source, ring in rings:
            if its & kind:
                of.setdefault(source, []).append(ring)
        for own in of.values():
            keep &= even_odd(place, own) == (kind == LineKind.BOUNDARY)
    mask: np.ndarray = keep[label]
    return mask


def beyond_rim(mesh: Mesh) -> np.ndarray:
    """Mask (m,) of the slivers outside the edges marked ``RIM``, if there are such edges.

    They lead around the end of a boundary on the rim, from its one side to the other.
    """
    if not np.any(mesh.kind & RIM):
        return np.zeros(mesh.triangle_count, bool)
    inner = np.flatnonzero((mesh.twin >= 0) & (mesh.kind & RIM == 0))
    label = connected_parts(mesh.triangle_count, inner // 3, mesh.twin[inner] // 3)
    outer = np.flatnonzero((mesh.twin < 0) & (mesh.kind & RIM == 0)) // 3
    mask: np.ndarray = np.isin(label, label[outer])
    return mask


def _largest_centroids(mesh: Mesh, label: np.ndarray) -> np.ndarray:
    """A place well inside each region: the centroid of its largest triangle, grid units."""
    order = np.lexsort((mesh.double_areas(), label))
    largest = order[np.append(label[order][1:] != label[order][:-1], True)]
    corner = mesh.vertex.reshape(-1, 3)[largest]
    return np.column_stack([mesh.x[corner].mean(axis=1), mesh.y[corner].mean(axis=1)])


def even_odd(place: np.ndarray, rings: List[np.ndarray]) -> np.ndarray:
    """Mask of the places (q, 2) that lie inside ``rings`` by the even-odd rule; same units, rings closed or not."""
    inside = np.zeros(len(place), bool)
    for ring in rings:
        x0, y0 = ring[:, 0].astype(float), ring[:, 1].astype(float)
        x1, y1 = np.roll(x0, -1), np.roll(y0, -1)
        for start in range(0, len(place), 4096):
            x, y = place[start : start + 4096, 0][:, None], place[start : start + 4096, 1][:, None]
            spans = (y0 <= y) != (y1 <= y)
            with np.errstate(divide="ignore", invalid="ignore"):
                east = x < x0 + (y - y0) * (x1 - x0) / (y1 - y0)
            inside[start : start + 4096] ^= np.sum(spans & east, axis=1) % 2 == 1
    return inside


def without_long_rim(mesh: Mesh, keep: np.ndarray, max_edge: Optional[float]) -> np.ndarray:
    """Peel triangles off the rim as long as their outer edge is longer than ``max_edge`` metres and not marked.

    ``keep``: mask (m,) of the triangles there are. Returns the mask of those that stay.
    """
    keep = keep.copy()
    if max_edge is None:
        return keep
    h = np.arange(len(mesh.vertex))
    end = mesh.vertex[following(h)]
    dx, dy = mesh.x[end] - mesh.x[mesh.vertex], mesh.y[end] - mesh.y[mesh.vertex]
    long = (np.hypot(dx, dy) * GRID > max_edge) & (mesh.kind == 0)
    outer = long & keep[h // 3] & ((mesh.twin < 0) | ~keep[mesh.twin // 3])
    rim = h[outer]
    while len(rim):
        gone = np.unique(rim // 3)
        keep[gone] = False
        beyond = mesh.twin[(3 * gone[:, None] + np.arange(3)).ravel()]
        beyond = beyond[beyond >= 0]
        rim = beyond[keep[beyond // 3] & long[beyond]]
    return keep
