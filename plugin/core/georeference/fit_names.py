"""Which surveyed point is which control point, by their distances alone: for names that were exchanged."""

from __future__ import annotations

from typing import List, NamedTuple, Sequence, Tuple

import numpy as np
from scipy.optimize import linear_sum_assignment

#: More control points than this are not laid on each other pair by pair.
MOST = 60
#: So many assignments are handed back at most.
MOST_FOUND = 6
#: Pairs of points that are tried for a similarity that most of many points agree on.
TRIES = 200


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


def name_orders(
    p: np.ndarray, q: np.ndarray, scales: Sequence[float], limit: float, order: np.ndarray
) -> List[np.ndarray]:
    """Assignments (n,) of complex surveyed places ``p`` (n,) to control places ``q`` (m,), m at least n, under which
    a similarity of one of ``scales`` (each to 1 %) leaves no residual over ``limit``; the best first.

    The two surveyed points farthest apart are laid on every pair of control points at a fitting distance. Of more than
    60 control points most must stand under their names, ``order`` (n,), already.
    """
    if not 2 <= len(p) <= len(q):
        return []
    if len(q) > MOST:
        return _few_renamed(p, q, order, limit)
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


def agreeing(p: np.ndarray, q: np.ndarray, limit: float) -> np.ndarray:
    """Mask (n,) of the most pairs of complex places ``p`` and ``q`` (n,) that one similarity fits within ``limit``, of
    those tried: by :data:`TRIES` pairs of points, the same ones each time."""
    draw = np.random.default_rng(len(p))
    best = np.zeros(len(p), bool)
    for _ in range(TRIES):
        i, j = draw.choice(len(p), 2, replace=False)
        if p[i] == p[j] or q[i] == q[j]:
            continue
        inside = abs((q[j] - q[i]) / (p[j] - p[i]) * (p - p[i]) + q[i] - q) <= 4 * limit
        if inside.sum() > best.sum():
            best = inside
    if best.sum() < 3:
        return best
    return np.asarray(abs(plan_fit(p[best], q[best]).apply(p) - q) <= limit)


def _few_renamed(p: np.ndarray, q: np.ndarray, order: np.ndarray, limit: float) -> List[np.ndarray]:
    """As :func:`name_orders`, those under the wrong name laid on the control points that are left."""
    stay = agreeing(p, q[order], limit)
    if 2 * stay.sum() < len(p) or stay.all():
        return []
    left = np.setdiff1d(np.arange(len(q)), order[stay])
    cost = abs(plan_fit(p[stay], q[order[stay]]).apply(p[~stay])[:, None] - q[left][None, :])
    found = order.copy()
    found[~stay] = left[linear_sum_assignment(cost)[1]]
    return [found] if plan_fit(p, q[found]).largest <= limit else []
