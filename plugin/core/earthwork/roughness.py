"""How far the ground departs from the straight lines between points, judged from a surface itself."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Tuple

import numpy as np

from ..surface.tin import Tin

#: Departure of the ground from a straight line (m, one standard deviation) at half-widths (m).
Departure = Callable[[np.ndarray], np.ndarray]

MAD = 1.4826  # of a normal variable: standard deviation over the median of absolute values
_CALM = 3.0  # standard deviations up to which departures are usual ones
_STEP = 16.0  # times the usual square, from which vertices depart by themselves
_FAR = 4.0  # distances of neighbours over which bends go on, as they are looked for so far
#: About how many independent residuals a mean over so many rounds of neighbours holds (each round: itself and about
#: six); neighbouring residuals share heights and alternate, which only makes the mean calmer.
_MEANT = {1: 7.0, 4: 28.0}


def ground_departure(tin: Tin, sigma: float = 0.0) -> Departure:
    """Departure of the ground from straight lines, judged from the surface itself.

    At each inner vertex the height is compared with the plane through its neighbours (least squares), which lies as
    far off as a straight line of the neighbours' distance would. What neighbouring vertices depart by in common is how
    the ground bends there; the spread of the rest over the whole surface, less the part that noise ``sigma`` (m) of
    the heights makes, is its roughness; where vertices depart by far more than that (walls, steps, edges) their own
    departures count. All are taken to grow with the square of the half-width up to the median distance of neighbours,
    and bends up to four times that; beyond, in proportion. The half-widths asked for are those of the triangles' edges
    (m, 3), or any others, for which the surface's usual departure stands. Where a survey offers repeated walks or
    check points, departures found from those are better.
    """
    found = _neighbour_residuals(tin)
    if len(found.residual) == 0:
        return lambda half_width: np.zeros(np.shape(half_width))
    middle = float(np.median(found.reach))
    bend, rough, steep = _spreads(tin, found, sigma, middle)
    ends = tin.triangles, np.roll(tin.triangles, -1, axis=1)
    # an edge of the ground between two vertices shows in both, less in the farther one; a step between its top and its
    # foot goes up evenly
    both = np.minimum(np.abs(steep[ends[0]]), np.abs(steep[ends[1]])) * (steep[ends[0]] * steep[ends[1]] > 0)
    squares = ((bend[ends[0]] + bend[ends[1]]) / 2, np.maximum(rough, both**2))

    def departure(half_width: np.ndarray) -> np.ndarray:
        ratio = np.asarray(half_width, float) / middle
        of_edges = ratio.shape == squares[0].shape
        smooth, uneven = squares if of_edges else (np.mean(bend), np.mean(squares[1]))
        by_bend = np.where(ratio < _FAR, ratio**2, _FAR * ratio)
        by_rough = np.where(ratio < 1, ratio**2, ratio)
        result: np.ndarray = np.sqrt(smooth * by_bend**2 + uneven * by_rough**2)
        return result

    return departure


def _spreads(tin: Tin, found: _Residuals, sigma: float, middle: float) -> Tuple[np.ndarray, float, np.ndarray]:
    """What ground departs by at the distance ``middle`` (m), the median of the vertices' neighbours': mean square (n,)
    of its bends, mean square of being uneven, and departures (n,) that are far larger, 0 elsewhere."""
    long = np.maximum(1.0, found.reach / middle) ** 2  # what is seen from far says less of what is near
    residual, noise = found.residual / long, found.gain * (sigma / long) ** 2
    common, count = _about(tin, found.vertex, residual)
    bend = np.maximum(0.0, common**2 - _about(tin, found.vertex, noise)[0] / np.maximum(count, 1.0))
    rest = residual - common[found.vertex]
    calm = np.abs(rest) <= _CALM * MAD * np.median(np.abs(rest))
    usual = max(0.0, float(np.mean(rest[calm] ** 2 - noise[calm])))
    steep = np.zeros(len(bend))
    steep[found.vertex] = np.where(rest**2 > _STEP * (noise + usual), residual, 0.0)
    return bend, usual, steep


def _about(tin: Tin, vertex: np.ndarray, value: np.ndarray, rounds: int = 4) -> Tuple[np.ndarray, np.ndarray]:
    """Means (n,) of ``value`` (k,) at ``vertex`` (k,) over the neighbours' neighbours, and how many those are about."""
    n = len(tin.vertices)
    total, weight = np.zeros(n), np.zeros(n)
    total[vertex], weight[vertex] = value, 1.0
    a, b = tin.triangles.ravel(), np.roll(tin.triangles, -1, axis=1).ravel()
    degree = np.bincount(a, minlength=n) + 1.0
    for _ in range(rounds):
        total, weight = ((v + np.bincount(a, v[b], n)) / degree for v in (total, weight))
    mean = np.divide(total, weight, out=np.zeros(n), where=weight > 1e-9)
    return mean, _MEANT[rounds] * weight


@dataclass(frozen=True)
class _Residuals:
    """Of inner vertices (k,): the number, height less the plane of the neighbours, their mean distance, gain of
    noise.
    """

    vertex: np.ndarray
    residual: np.ndarray
    reach: np.ndarray
    gain: np.ndarray


def _neighbour_residuals(tin: Tin) -> _Residuals:
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
    return _Residuals(use, residual, reach, 1 + inverse[:, 0, 0])
