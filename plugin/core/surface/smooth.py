"""A smooth surface through the vertices of a TIN: for drawing only, never for numbers.

The Clough-Tocher element (R. W. Clough and J. L. Tocher 1965; in Bernstein-Bezier form as in G. Farin,
"Triangular Bernstein-Bezier patches", 1986): each triangle is cut at its centroid into three cubics that
join smoothly; across an edge the slope varies linearly, so neighbours join smoothly as well.

The slope at a vertex is the mean of its triangles' slopes, weighted by their area in plan: of the weights
tried it swings least where points are close and noisy (weights that suit smooth ground better overshoot there by
many times the noise). At a vertex of a breakline, and where the mean makes no sense, each triangle keeps its
own slope: the surface stays sharp and straight along breaklines, and without gaps everywhere.
"""

from __future__ import annotations

from typing import Optional

import numpy as np

from .ask import triangle_gradients
from .locate import weights_in
from .tin import Tin


class CloughTocher:
    """The element over each triangle of a TIN; ``gradients`` (n, 2): slopes at the vertices, where they are known.

    ``sharp``: (n,) bool, vertices at which each triangle keeps its own slope.
    """

    def __init__(self, tin: Tin, gradients: Optional[np.ndarray] = None) -> None:
        self._tin = tin
        self._own = triangle_gradients(tin)
        self.sharp = np.zeros(len(tin.vertices), bool)
        if gradients is None:
            gradients = _vertex_gradients(tin, self._own)
            self.sharp = _wild(tin, gradients)
        self._mean = gradients
        triangle, side = np.nonzero(tin.edge_kind)
        self.sharp[tin.triangles[triangle, side]] = True
        self.sharp[tin.triangles[triangle, (side + 1) % 3]] = True

    def heights(self, triangle: np.ndarray, xy: np.ndarray) -> np.ndarray:
        """Heights (k,) at places ``xy`` (k, 2), metres from the TIN's origin, each in its ``triangle`` (k,)."""
        number = self._tin.triangles[triangle]
        corner = self._tin.vertices[number]
        gradient = np.where(self.sharp[number][:, :, None], self._own[triangle][:, None], self._mean[number])
        weight = weights_in(self._tin, triangle, xy)
        # The cubic opposite to corner k holds the places nearest to that edge; turn the triangle so that k is the last.
        turn = (np.argmin(weight, axis=1)[:, None] + np.array([1, 2, 0])) % 3
        weight = np.take_along_axis(weight, turn, 1)
        corner = np.take_along_axis(corner, turn[:, :, None], 1)
        gradient = np.take_along_axis(gradient, turn[:, :, None], 1)
        return _cubic(_ordinates(corner, gradient), weight)


def _vertex_gradients(tin: Tin, own: np.ndarray) -> np.ndarray:
    """Mean slope (n, 2) of the triangles around each vertex, weighted by area in plan."""
    x, y = (np.take(tin.vertices[:, axis], tin.triangles) for axis in (0, 1))
    area = (x[:, 1] - x[:, 0]) * (y[:, 2] - y[:, 0]) - (x[:, 2] - x[:, 0]) * (y[:, 1] - y[:, 0])
    vertex, n = tin.triangles.ravel(), len(tin.vertices)
    total = np.bincount(vertex, np.repeat(area, 3), n)
    total[total == 0] = 1.0  # a vertex without a triangle is never asked
    sums = [np.bincount(vertex, np.repeat(area * own[:, i], 3), n) for i in (0, 1)]
    return np.column_stack(sums) / total[:, None]


def _wild(tin: Tin, gradients: np.ndarray) -> np.ndarray:
    """Mask (n,) of vertices whose slope misses a neighbour by more than all the rise and fall around.

    That is so where there are nothing but slivers, as along a rim: a curve with such slopes would swing far out.
    """
    most, miss = np.zeros(len(gradients)), np.zeros(len(gradients))
    for side in range(3):
        ends = tin.triangles[:, side], tin.triangles[:, (side + 1) % 3]
        edge = tin.vertices[ends[1]] - tin.vertices[ends[0]]
        for vertex in ends:
            np.maximum.at(most, vertex, np.abs(edge[:, 2]))
            np.maximum.at(miss, vertex, np.abs(_dot(gradients[vertex], edge) - edge[:, 2]))
    wild: np.ndarray = miss > most
    return wild


def _ordinates(corner: np.ndarray, gradient: np.ndarray) -> np.ndarray:
    """Bezier ordinates (k, 10) of the cubic over corners 0, 1 and the centroid of triangles (k, 3, 3).

    In the order of the powers 300, 030, 210, 120, 201, 021, 111, 102, 012, 003.
    """
    plan, height = corner[:, :, :2], corner[:, :, 2]
    centre = plan.mean(axis=1)
    toward = [height[:, i] + _dot(gradient[:, i], centre - plan[:, i]) / 3 for i in range(3)]
    edges = [_edge(plan, height, gradient, toward, centre, i, (i + 1) % 3) for i in range(3)]
    middle = [edge[2] for edge in edges]
    # Next to the centroid: of corner i, whose two cubics lie on the edges i and i - 1.
    inner = [(toward[i] + middle[i] + middle[i - 1]) / 3 for i in range(3)]
    top = (inner[0] + inner[1] + inner[2]) / 3
    forth, back, _ = edges[0]
    return np.column_stack(
        [height[:, 0], height[:, 1], forth, back, toward[0], toward[1], middle[0], inner[0], inner[1], top]
    )


def _edge(plan, height, gradient, toward, centre, i, j):  # type: ignore[no-untyped-def]
    """The two ordinates on the edge from corner i to j, and the inner one of its cubic.

    The last makes the slope across the edge vary linearly from i to j.
    """
    along = plan[:, j] - plan[:, i]
    forth = height[:, i] + _dot(gradient[:, i], along) / 3
    back = height[:, j] - _dot(gradient[:, j], along) / 3
    foot = _dot(centre - plan[:, i], along) / _dot(along, along)  # of the centroid on the edge, 0..1
    at_i = (foot - 1) * height[:, i] - foot * forth + toward[i]
    at_j = (foot - 1) * back - foot * height[:, j] + toward[j]
    return forth, back, (at_i + at_j) / 2 - (foot - 1) * forth + foot * back


def _dot(a: np.ndarray, b: np.ndarray) -> np.ndarray:
    result: np.ndarray = a[:, 0] * b[:, 0] + a[:, 1] * b[:, 1]
    return result


def _cubic(ordinates: np.ndarray, weight: np.ndarray) -> np.ndarray:
    """Value (k,) of each cubic at the triangle's barycentric ``weight`` (k, 3), of which the last is the least."""
    w = 3 * weight[:, 2]
    u, v = weight[:, 0] - weight[:, 2], weight[:, 1] - weight[:, 2]
    terms = (u**3, v**3, 3 * u * u * v, 3 * u * v * v, 3 * u * u * w, 3 * v * v * w, 6 * u * v * w,
             3 * u * w * w, 3 * v * w * w, w**3)  # fmt: skip
    value: np.ndarray = np.sum(ordinates * np.column_stack(terms), axis=1)
    return value
