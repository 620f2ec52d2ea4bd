"""The outline of the surface: a hollow outline found from the points, and slivers taken off the rim.

Both are peeled: whether an outer edge lets its triangle go depends on that triangle alone, a triangle
that goes makes its other edges outer ones, and so on until none is left. So the outcome is the same in
whatever order triangles are looked at. Marked edges (breakline, boundary, void) are never peeled across.
"""

from __future__ import annotations

from typing import Optional

import numpy as np

from .mesh import Mesh, following, preceding
from .spacing import pass_spacing
from .tin import GRID


def without_hollow_rim(mesh: Mesh, keep: np.ndarray, max_radius: Optional[float]) -> np.ndarray:
    """Peel triangles off the rim while their circumscribed circle is wider than ``max_radius`` metres.

    ``keep``: mask (m,) of the triangles there are. Returns the mask of those that stay. What stays are the
    triangles of the alpha shape of that radius (Edelsbrunner, Kirkpatrick and Seidel 1983) and whatever they
    or marked lines shut in, so gaps inside the survey are never opened. None peels nothing.
    """
    if max_radius is None:
        return keep.copy()
    wide = circumradii(mesh) > max_radius
    return _peeled(mesh, keep, np.repeat(wide, 3))


def without_rim_slivers(mesh: Mesh, keep: np.ndarray, max_angle: Optional[float]) -> np.ndarray:
    """Peel triangles off the rim while the angle opposite their outer edge is wider than ``max_angle`` degrees.

    Such a sliver spans from a point of the outline to the next but one, past a point that lies inside by less
    than ``tan((180 - max_angle) / 2)`` of half that distance. The long thin triangles between two
    passes of a walk are no slivers by this rule: their wide angles are near 90 degrees.
    ``keep`` and the result as in :func:`without_hollow_rim`.
    """
    if max_angle is None:
        return keep.copy()
    h = np.arange(len(mesh.vertex))
    apex, start, end = mesh.vertex[preceding(h)], mesh.vertex, mesh.vertex[following(h)]
    ux, uy, vx, vy = (
        each.astype(float)
        for each in (mesh.x[start] - mesh.x[apex], mesh.y[start] - mesh.y[apex],
                     mesh.x[end] - mesh.x[apex], mesh.y[end] - mesh.y[apex])
    )  # fmt: skip
    angle = np.degrees(np.arctan2(ux * vy - uy * vx, ux * vx + uy * vy))
    return _peeled(mesh, keep, angle > max_angle)


def radius_in_passes(mesh: Mesh, keep: np.ndarray, passes: float = 1.5) -> float:
    """A radius for :func:`without_hollow_rim` in metres: ``passes`` times the distance from pass to pass.

    That distance is measured from the triangles ``keep`` themselves, see :func:`.spacing.pass_spacing`. Triangles
    between two passes have radii of about half of it; with 1.5, bays up to three passes wide are left filled.
    """
    return passes * pass_spacing(_lengths(mesh)[keep])


def circumradii(mesh: Mesh) -> np.ndarray:
    """Radius (m,) of the circle through the corners of each triangle, metres."""
    radius: np.ndarray = _lengths(mesh).prod(axis=1) / (2.0 * mesh.double_areas() * GRID * GRID)
    return radius


def _lengths(mesh: Mesh) -> np.ndarray:
    """Lengths of edges (m, 3), metres."""
    h = np.arange(len(mesh.vertex))
    end = mesh.vertex[following(h)]
    length = np.hypot(mesh.x[end] - mesh.x[mesh.vertex], mesh.y[end] - mesh.y[mesh.vertex]) * GRID
    return length.reshape(-1, 3)


def _peeled(mesh: Mesh, keep: np.ndarray, lets_go: np.ndarray) -> np.ndarray:
    """``keep`` without the triangles that have an outer half-edge of the mask ``lets_go`` (3 m,), again and again."""
    keep = keep.copy()
    h = np.arange(len(mesh.vertex))
    lets_go = lets_go & (mesh.kind == 0)
    rim = h[lets_go & keep[h // 3] & ((mesh.twin < 0) | ~keep[mesh.twin // 3])]
    while len(rim):
        gone = np.unique(rim // 3)
        keep[gone] = False
        beyond = mesh.twin[(3 * gone[:, None] + np.arange(3)).ravel()]
        beyond = beyond[beyond >= 0]
        rim = beyond[keep[beyond // 3] & lets_go[beyond]]
    return keep
