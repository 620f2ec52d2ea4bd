"""Rounded corners: between two straight stretches a kerb turns in an arc that touches both.

Where a placed line turns so, five numbers (two straight lines and a radius) say where it lies, and all its gates
together tell them better than each tells its own place.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Optional, Tuple

import numpy as np
from scipy.optimize import least_squares

from .nodes import Nodes
from .placing import Placed

#: A line turns at a corner by so much (radian) between what lies this far (m) before and after; corners are apart (m).
TURN, ASIDE, APART = 0.5, 5.0, 7.0
#: The straight stretches are looked at from so far (m) beside the corner to so far; vertices that tell, and of each.
STRAIGHT, FARTHEST, LEAST, LEAST_STRAIGHT = 3.5, 16.0, 7, 1
#: Radii (m) of corners, and how well it must fit (squares for each that is free).
SMALLEST, LARGEST, FITS = 1.0, 20.0, 1.9
#: The last so many metres on either side go over into the line as it was, or as the next corner has it.
BLEND = 3.0
_SLIGHT = 0.2
_STEP = 1e-4


@dataclass(frozen=True)
class Tells:
    """Where the vertices of one line may lie: ``x, y`` (n,), along ``ex, ey``, with standard deviations ``sigma``."""

    x: np.ndarray
    y: np.ndarray
    ex: np.ndarray
    ey: np.ndarray
    sigma: np.ndarray

    def take(self, which: np.ndarray) -> Tells:
        """Some of them."""
        return Tells(self.x[which], self.y[which], self.ex[which], self.ey[which], self.sigma[which])


def round_corners(counts: np.ndarray, step: np.ndarray, own: Nodes, placed: Placed) -> Placed:
    """``placed`` vertices of lines (``counts`` of each) with rounded corners of steps (``step``: (lines,) bool) so."""
    x, y, sigma, corner = placed.x.copy(), placed.y.copy(), placed.sigma.copy(), placed.corner.copy()
    tells = _tells(own)
    end = np.cumsum(counts)
    for a, b in zip((end - counts)[step].tolist(), end[step].tolist()):
        xy = np.column_stack([x[a:b], y[a:b]])
        run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
        places = [-np.inf, *_corners(xy, run), np.inf]
        for before, at, after in zip(places[:-2], places[1:-1], places[2:]):
            some = np.flatnonzero(
                (run >= max(at - FARTHEST, before + STRAIGHT)) & (run <= min(at + FARTHEST, after - STRAIGHT))
            )
            found = _rounded(tells.take(a + some), placed, a + some, run[some] - at)
            if found is None:
                continue
            new, doubt = found
            low, high = max(at - FARTHEST, (at + before) / 2), min(at + FARTHEST, (at + after) / 2)
            from_low = run[some] - low if low > 0 else np.inf
            to_high = high - run[some] if high < run[-1] else np.inf
            share = np.clip(np.minimum(from_low, to_high) / BLEND, 0, 1) * np.ones(len(some))
            x[a + some] += share * (new[:, 0] - x[a + some])
            y[a + some] += share * (new[:, 1] - y[a + some])
            sigma[a + some] += share * (doubt - sigma[a + some])
            corner[a + some[share == 1]] = False
    return replace(placed, x=x, y=y, sigma=sigma, corner=corner)


def _tells(own: Nodes) -> Tells:
    """Mean and spread of the gates, or the place and its doubt."""
    low, high = own.edges[:, :-1], own.edges[:, 1:]
    total = own.chance.sum(axis=1)
    safe = np.where(total > 0, total, 1.0)
    mean = (own.chance * (low + high) / 2).sum(axis=1) / safe
    square = (own.chance * (low**2 + low * high + high**2) / 3).sum(axis=1) / safe
    sigma = np.where(total > 0, np.sqrt(np.maximum(square - mean**2, 1e-4)), own.sigma)
    return Tells(own.x + mean * own.ex, own.y + mean * own.ey, own.ex, own.ey, sigma)


def _corners(xy: np.ndarray, run: np.ndarray) -> List[float]:
    """Metres along a line at which it turns most within ``ASIDE``."""
    at = np.arange(ASIDE, run[-1] - ASIDE, 0.5)
    if not len(at):
        return []
    before, here, after = (
        np.column_stack([np.interp(at + off, run, column) for column in xy.T]) for off in (-ASIDE, 0.0, ASIDE)
    )
    a, b = here - before, after - here
    turn = np.abs(np.arctan2(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0], (a * b).sum(axis=1)))
    result: List[float] = []
    for k in np.argsort(-turn, kind="stable").tolist():
        if turn[k] < TURN:
            break
        if all(abs(at[k] - other) > APART for other in result):
            result.append(float(at[k]))
    return sorted(result)


def _rounded(tells: Tells, placed: Placed, of: np.ndarray, run: np.ndarray) -> Optional[Tuple[np.ndarray, np.ndarray]]:
    """Places (n, 2) on two straight lines and an arc between, and doubts (n,); None where they do not fit.

    ``of``: the vertices' numbers; ``run``: metres from the corner.
    """
    before, after = run < -STRAIGHT, run > STRAIGHT
    if len(of) < LEAST or min(before.sum(), after.sum()) < LEAST_STRAIGHT:
        return None
    q = np.column_stack([tells.x, tells.y])
    start = _begin(np.column_stack([placed.x[of], placed.y[of]]), before, after)
    if start is None:
        return None
    left, shape = start
    across = np.maximum(np.abs(tells.ex * placed.nx[of] + tells.ey * placed.ny[of]), _SLIGHT)
    doubt = tells.sigma * across
    fit = least_squares(lambda p: _away(p, left, q) / doubt, shape, loss="soft_l1", x_scale=[0.05, 0.3, 0.05, 0.3, 1.0])
    free = len(of) - len(shape)
    if not (SMALLEST <= fit.x[4] <= LARGEST) or 2 * fit.cost > FITS * free:
        return None
    covariance = np.linalg.pinv(fit.jac.T @ fit.jac)
    sigma = np.sqrt(np.einsum("ni,ij,nj->n", fit.jac, covariance, fit.jac)) * doubt
    e = np.column_stack([tells.ex, tells.ey])
    place = q
    for _ in range(3):
        off = _away(fit.x, left, place)
        slope = (_away(fit.x, left, place + _STEP * e) - off) / _STEP
        slope = np.where(np.abs(slope) < _SLIGHT, np.copysign(_SLIGHT, slope), slope)
        place = place - np.clip(off / slope, -0.5, 0.5)[:, None] * e
    return place, sigma


def _begin(xy: np.ndarray, before: np.ndarray, after: np.ndarray) -> Optional[Tuple[float, np.ndarray]]:
    """Whether the line turns to the left (1) or right (-1), and its straight lines and radius as they look at first.

    A straight line is the angle of its normal, towards the inside of the corner, and its distance from the origin.
    """
    ways = []
    for some in (before, after):
        part = xy[some]
        way = part[-1] - part[0]
        ways.append((part.mean(axis=0), way / max(float(np.hypot(*way)), 1e-9)))
    (p, u), (q, v) = ways
    sine = u[0] * v[1] - u[1] * v[0]
    if abs(sine) < 0.3:
        return None
    left = float(np.sign(sine))
    gap = q - p
    meet = p + (gap[0] * v[1] - gap[1] * v[0]) / sine * u
    turn = np.arctan2(abs(sine), float(u @ v))
    nearest = float(np.hypot(*(xy - meet).T).min())
    radius = np.clip(nearest / max(1 / np.cos(turn / 2) - 1, 0.05), 2 * SMALLEST, LARGEST / 2)
    shape = []
    for place, way in ways:
        normal = left * np.array([-way[1], way[0]])
        shape += [np.arctan2(normal[1], normal[0]), normal @ place]
    return left, np.append(shape, radius)


def _away(shape: np.ndarray, left: float, q: np.ndarray) -> np.ndarray:
    """How far (n,) places ``q`` lie inside (positive) of the two straight lines and the arc that touches both."""
    angle, off, radius = shape[[0, 2]], shape[[1, 3]], shape[4]
    normal = np.column_stack([np.cos(angle), np.sin(angle)])
    middle = np.linalg.solve(normal, off + radius)
    way = left * np.column_stack([normal[:, 1], -normal[:, 0]])
    from_middle = q - middle
    inside = from_middle @ normal.T + radius
    along = from_middle @ way.T
    arc = radius - np.hypot(from_middle[:, 0], from_middle[:, 1])
    return np.where(along[:, 0] <= 0, inside[:, 0], np.where(along[:, 1] >= 0, inside[:, 1], arc))
