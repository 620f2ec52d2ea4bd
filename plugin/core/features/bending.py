"""Chains of places that may move, each along a direction of its own, and how much a chain then turns."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from .banded import Layout, make_layout, solve
from .groups import neighbours

#: The turnings of so many vertices on either side are alike in a curve.
NEAR = 6
#: Freedom of the turnings: the smaller, the more a corner is left to itself.
FREEDOM = 2.0


@dataclass(frozen=True)
class Bending:
    """The turning at each inner vertex of chains as a sum over the offsets of it and its neighbours.

    Turning i is ``before[i] * offset[i - 1] + here[i] * offset[i] + after[i] * offset[i + 1] + level[i]``, radian.
    ``inner``: (n,) bool; ``reach``: (n,) metres of line that each stands for; ``line``: (n,) number of its chain.
    """

    counts: np.ndarray
    line: np.ndarray
    inner: np.ndarray
    before: np.ndarray
    here: np.ndarray
    after: np.ndarray
    level: np.ndarray
    reach: np.ndarray
    layout: Layout

    def turning(self, offset: np.ndarray) -> np.ndarray:
        """Turning (n,) at the inner vertices for these offsets (n,), 0 at ends."""
        i = np.flatnonzero(self.inner)
        result = np.zeros(len(offset))
        result[i] = self.before[i] * offset[i - 1] + self.here[i] * offset[i] + self.after[i] * offset[i + 1]
        result[i] += self.level[i]
        return result


def normals(counts: np.ndarray, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Unit vectors (n,) to the left of chains of vertices."""
    before, after = neighbours(counts)
    dx, dy = x[after] - x[before], y[after] - y[before]
    long = np.maximum(np.hypot(dx, dy), 1e-9)
    return -dy / long, dx / long


def make_bending(
    counts: np.ndarray, xy: Tuple[np.ndarray, np.ndarray], free: Tuple[np.ndarray, np.ndarray],
    at: Tuple[np.ndarray, np.ndarray],
) -> Bending:  # fmt: skip
    """Turnings of chains of places ``xy`` that move along unit vectors ``free``; normals are taken ``at`` places."""
    x, y = at
    n = len(x)
    number = np.arange(n)
    before, after = neighbours(counts)
    inner = (before != number) & (after != number)
    nx, ny = normals(counts, x, y)
    l1 = np.maximum(np.hypot(x - x[before], y - y[before]), 0.05)
    l2 = np.maximum(np.hypot(x[after] - x, y[after] - y), 0.05)
    across = [free[0][k] * nx + free[1][k] * ny for k in (before, number, after)]
    level = [xy[0][k] * nx + xy[1][k] * ny for k in (before, number, after)]
    both = 1 / l1 + 1 / l2
    return Bending(
        counts=counts, line=np.repeat(np.arange(len(counts)), counts), inner=inner,
        before=np.where(inner, across[0] / l1, 0.0), here=np.where(inner, -across[1] * both, 0.0),
        after=np.where(inner, across[2] / l2, 0.0),
        level=np.where(inner, level[0] / l1 - level[1] * both + level[2] / l2, 0.0),
        reach=(l1 + l2) / 2, layout=make_layout(counts),
    )  # fmt: skip


def solve_offsets(
    bending: Bending, stiff: np.ndarray, usual: np.ndarray, precision: np.ndarray, pull: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Means (n,) and variances of the offsets, and the expected squared departure of each turning from ``usual`` (n,).

    ``stiff``: (n,) precision of the turnings; ``precision, pull``: (n,) what is known of each offset by itself:
    precision, and precision times mean.
    """
    n = len(stiff)
    ca, cb, cc = bending.before, bending.here, bending.after
    level = bending.level - usual
    a = precision + stiff * cb**2
    a[:-1] += (stiff * ca**2)[1:]
    a[1:] += (stiff * cc**2)[:-1]
    rhs = pull - stiff * cb * level
    rhs[:-1] -= (stiff * ca * level)[1:]
    rhs[1:] -= (stiff * cc * level)[:-1]
    b1, b2 = np.zeros(n), np.zeros(n)
    b1[1:] = (stiff * ca * cb)[1:] + (stiff * cb * cc)[:-1]
    b2[2:] = (stiff * ca * cc)[1:-1]
    layout = bending.layout
    tables = [layout.table(values, fill) for values, fill in ((a, 1.0), (b1, 0.0), (b2, 0.0), (rhs, 0.0))]
    tables[1][0] = 0.0
    tables[2][:2] = 0.0
    mean, var, one, two = (layout.answers(table) for table in solve(*tables))
    square = np.zeros(n)
    i = np.flatnonzero(bending.inner)
    ca, cb, cc = ca[i], cb[i], cc[i]
    turned = ca * mean[i - 1] + cb * mean[i] + cc * mean[i + 1] + level[i]
    square[i] = turned**2 + ca**2 * var[i - 1] + cb**2 * var[i] + cc**2 * var[i + 1]
    square[i] += 2 * (ca * cb * one[i - 1] + cb * cc * one[i] + ca * cc * two[i - 1])
    return mean, np.maximum(var, 1e-12), np.maximum(square, 0)


def corner_weights(bending: Bending, square: np.ndarray, turning: np.ndarray) -> np.ndarray:
    """How little a sharp turn counts (n,): Student's distribution by reweighting. ``turning``: (n,) as squared, a m."""
    return (FREEDOM + 1) / (FREEDOM + np.where(bending.inner, square / bending.reach, 0.0) / turning)


def shared_turning(bending: Bending, offset: np.ndarray) -> np.ndarray:
    """The turning (n,) that a vertex shares with those near it: what a curve has and noise does not."""
    n = len(offset)
    own = bending.turning(offset) / bending.reach
    end = np.cumsum(bending.counts)
    first, last = (end - bending.counts)[bending.line], (end - 1)[bending.line]
    total, squares, count = np.zeros(n), np.zeros(n), np.zeros(n)
    number = np.arange(n)
    for shift in range(-NEAR, NEAR + 1):
        at = number + shift
        good = ((at > first) & (at < last)).astype(float)
        value = own[np.clip(at, 0, n - 1)] * good
        total += value
        squares += value**2
        count += good
    middle = total / np.maximum(count, 1)
    spread = np.maximum(squares - count * middle**2, 0) / np.maximum(count - 1, 1) / np.maximum(count, 1)
    # As much of it as stands out from its own spread.
    kept = middle * middle**2 / np.maximum(middle**2 + 2 * spread, 1e-18)
    return np.where(count >= 3, kept, 0.0) * bending.reach
