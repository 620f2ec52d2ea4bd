"""Which surveyed point is which control point, by their distances alone: for names that were exchanged."""

from __future__ import annotations

from typing import List, NamedTuple, Sequence, Tuple

import numpy as np
from scipy.optimize import linear_sum_assignment

#: More control points than this are not looked through.
MOST = 60
#: So many assignments are handed back at most.
MOST_FOUND = 6


class PlanFit(NamedTuple):
    """A similarity in the plane as complex numbers: ``factor`` (p - ``origin``) + ``to``. ``squares``: of residuals;
    ``largest``: residual, both in metres of the control. ``reach``: root mean square distance of the control from its
    middle."""

    factor: complex
    origin: complex
    to: complex
    squares: float
    largest: float
    reach: float

    @property
    def scale(self) -> float:
        return abs(self.factor)

    def apply(self, places: np.ndarray) -> np.ndarray:
        """Complex places (n,) as the control has them."""
        return np.asarray(self.factor * (places - self.origin) + self.to)


def as_complex(places: np.ndarray) -> np.ndarray:
    """Easting and northing (n, 2 or more) as complex numbers (n,)."""
    return np.asarray(places[:, 0] + 1j * places[:, 1])


def plan_fit(p: np.ndarray, q: np.ndarray) -> PlanFit:
    """The similarity that brings complex places ``p`` (n,) to ``q`` by least squares; n at least 2, ``p`` not all one
    place."""
    # About a point of the cloud first: national coordinates lose digits in their mean.
    origin = p[0] + (p - p[0]).mean()
    to = q[0] + (q - q[0]).mean()
    a, b = p - origin, q - to
    size = float((abs(a) ** 2).sum())
    factor = complex((a.conj() * b).sum() / size) if size > 0 else 0j
    off = abs(factor * a - b)
    reach = float(np.sqrt((abs(b) ** 2).mean()))
    return PlanFit(factor, complex(origin), complex(to), float((off**2).sum()), float(off.max()), reach)


def name_orders(p: np.ndarray, q: np.ndarray, scales: Sequence[float], limit: float) -> List[np.ndarray]:
    """Assignments (n,) of complex surveyed places ``p`` (n,) to control places ``q`` (m,), m at least n, under which
    a similarity of one of ``scales`` (each to 1 %) leaves no residual over ``limit``; the best first.

    The two surveyed points farthest apart are laid on every pair of control points at a fitting distance.
    """
    if not 2 <= len(p) <= len(q) <= MOST:
        return []
    apart = abs(p[:, None] - p[None, :])
    first, second = (int(i) for i in np.unravel_index(int(apart.argmax()), apart.shape))
    length = apart[first, second]
    if not length > 0:
        return []
    ratio = abs(q[:, None] - q[None, :]) / length
    slack = 0.01 + 2 * limit / max(length * min(scales, default=1.0), 1e-9)
    fitting = np.zeros(ratio.shape, bool)
    for scale in scales:
        fitting |= abs(ratio / scale - 1.0) < slack
    found: List[Tuple[float, Tuple[int, ...]]] = []
    for i, j in np.argwhere(fitting & (ratio > 0)).tolist():
        factor = (q[j] - q[i]) / (p[second] - p[first])
        cost = abs((factor * (p - p[first]) + q[i])[:, None] - q[None, :])
        if cost.min(axis=1).max() > 4 * limit:
            continue
        order = linear_sum_assignment(cost)[1]
        fit = plan_fit(p, q[order])
        if fit.largest <= limit and any(abs(fit.scale / scale - 1.0) < slack for scale in scales):
            found.append((fit.squares, tuple(order.tolist())))
    best = sorted({order: squares for squares, order in found}.items(), key=lambda item: (item[1], item[0]))
    return [np.array(order) for order, _ in best[:MOST_FOUND]]
