"""How far the ground departs from the straight lines between points, judged from a surface itself."""

from __future__ import annotations

from typing import Callable, Tuple

import numpy as np

from ..surface.tin import Tin

#: Departure of the ground from a straight line (m, one standard deviation) at half-widths (m).
Departure = Callable[[np.ndarray], np.ndarray]


def ground_departure(tin: Tin, sigma: float = 0.0) -> Departure:
    """Departure of the ground from straight lines, judged from the surface itself.

    At each inner vertex the height is compared with the plane through its neighbours (least squares), which lies as
    far off as a straight line of the neighbours' distance would. The spread of these differences, less the part that
    noise ``sigma`` (m) of the heights makes, is the departure at the median distance; it is taken to grow with the
    square of the half-width below that distance and in proportion above it. Where a survey offers repeated
    walks or check points, departures found from those are better.
    """
    residual, reach, gain = _neighbour_residuals(tin)
    if len(residual) == 0:
        return lambda half_width: np.zeros(np.shape(half_width))
    spread = np.sqrt(max(0.0, float(np.mean(residual**2 - gain * sigma**2))))
    middle = float(np.median(reach))

    def departure(half_width: np.ndarray) -> np.ndarray:
        ratio = np.asarray(half_width, float) / middle
        result: np.ndarray = spread * np.where(ratio < 1, ratio**2, ratio)
        return result

    return departure


def _neighbour_residuals(tin: Tin) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Of each inner vertex: height less the plane of its neighbours, their mean distance, and the gain of noise."""
    n = len(tin.vertices)
    a = tin.triangles.ravel()
    b = np.roll(tin.triangles, -1, axis=1).ravel()  # around an inner vertex every edge out of it occurs once
    rim = np.zeros(n, bool)
    triangle, side = np.nonzero(tin.neighbours < 0)
    rim[tin.triangles[triangle, side]] = rim[tin.triangles[triangle, (side + 1) % 3]] = True
    delta = tin.vertices[b] - tin.vertices[a]
    design = np.column_stack([np.ones(len(a)), delta[:, :2]])
    normal, right = np.zeros((n, 3, 3)), np.zeros((n, 3))
    for i in range(3):
        right[:, i] = np.bincount(a, design[:, i] * delta[:, 2], n)
        for j in range(3):
            normal[:, i, j] = np.bincount(a, design[:, i] * design[:, j], n)
    count = np.bincount(a, minlength=n)
    use = np.flatnonzero(~rim & (count >= 4))
    use = use[np.linalg.cond(normal[use]) < 1e10] if len(use) else use
    inverse = np.linalg.inv(normal[use])
    residual = -np.einsum("ij,ij->i", inverse[:, 0], right[use])
    reach = np.bincount(a, np.hypot(delta[:, 0], delta[:, 1]), n)[use] / count[use]
    return residual, reach, 1 + inverse[:, 0, 0]
