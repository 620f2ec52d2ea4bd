"""Where a chain of candidates runs: the least bent line through all gates and places at once.

Each candidate may move along its own pass. Gates say between which two points the line runs, and with what chance
rather one gate further; bends of the ground say where with what doubt. Between candidates the line keeps its
direction but for a random turning, whose size each line's own candidates tell; a single sharp turn is allowed its place
(corners). The mean and spread of all such lines are found by expectation propagation (Minka 2001, Expectation
propagation for approximate Bayesian inference): a gate that is as likely everywhere inside and nowhere outside is
replaced by the normal distribution that has the same mean and spread, given all others.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List

import numpy as np
from scipy.special import erf

from .banded import make_layout, solve

#: Rounds of propagation, and the share of each that is taken.
ROUNDS, SHARE = 10, 0.7
#: From this round on a line may be curved: the turnings of so many vertices on either side are alike.
CURVES_FROM, NEAR = 5, 3
#: Squared turning (radian²) for each metre, from kerbs as straight as a string to boulders in a row.
TURNINGS = np.array([1e-5, 1.5e-4, 2e-3, 3e-2])
#: Freedom of the turnings: the smaller, the more a corner is left to itself.
FREEDOM = 4.0
#: Chance that a place is no place of this line, and how far it may then be off (m).
STRAY, STRAY_SIGMA = 0.03, 0.6


@dataclass(frozen=True)
class Places:
    """What n candidates of all chains say, one chain after another (``counts``: candidates of each).

    ``x, y``: (n,) metres; ``ex, ey``: (n,) the direction in which each may move. ``edges``: (n, g + 1) offsets of the
    ends of its gates, ``chance``: (n, g) of each gate; of a place that is no gate all chances are 0 and ``sigma`` (n,)
    is its doubt, metres.
    """

    counts: np.ndarray
    x: np.ndarray
    y: np.ndarray
    ex: np.ndarray
    ey: np.ndarray
    edges: np.ndarray
    chance: np.ndarray
    sigma: np.ndarray

    def columns(self) -> List[np.ndarray]:
        """All columns, in the order of the fields."""
        return [self.counts, self.x, self.y, self.ex, self.ey, self.edges, self.chance, self.sigma]


@dataclass(frozen=True)
class Placed:
    """``x, y``: (n,) placed vertices; ``nx, ny``: (n,) unit vector to the left of the line; ``sigma``: (n,) doubt across
    the line, metres; ``corner``: (n,) bool, the line turns sharply here."""

    x: np.ndarray
    y: np.ndarray
    nx: np.ndarray
    ny: np.ndarray
    sigma: np.ndarray
    corner: np.ndarray


def place_lines(places: Places, turnings: np.ndarray = TURNINGS, stray_sigma: float = STRAY_SIGMA) -> Placed:
    """The placed vertices of all chains.

    Each is placed with every readiness to turn of ``turnings``; each of these counts by how well the chain's other
    candidates foretell each of its gates and places (leave one out).
    """
    many = len(turnings)
    n, lines = len(places.x), len(places.counts)
    copies = Places(*(np.concatenate([column] * many) for column in places.columns()))
    turning = np.repeat(turnings, lines)
    x, y = places.x.copy(), places.y.copy()
    offset, var, heavy = np.zeros(n), np.ones(n), np.ones(n)
    line = np.repeat(np.arange(lines), places.counts)
    for _ in range(2):  # the directions in which the line is looked at follow from where it lies
        mean, spread, loose, foretold = _propagate(copies, np.tile(x, many), np.tile(y, many), turning, stray_sigma)
        score = np.array([np.bincount(line, weights=part, minlength=lines) for part in foretold.reshape(many, n)])
        share = np.exp(score - score.max(axis=0))
        share = (share / share.sum(axis=0))[:, line]
        mean, spread = mean.reshape(many, n), spread.reshape(many, n)
        offset = (share * mean).sum(axis=0)
        var = (share * (spread + (mean - offset) ** 2)).sum(axis=0)
        heavy = (share * loose.reshape(many, n)).sum(axis=0)
        x, y = places.x + offset * places.ex, places.y + offset * places.ey
    nx, ny = _normals(places.counts, x, y)
    across = np.abs(places.ex * nx + places.ey * ny)
    return Placed(x, y, nx, ny, np.sqrt(var) * across, heavy < 0.35)


def _normals(counts: np.ndarray, x: np.ndarray, y: np.ndarray) -> tuple:
    before, after = neighbours(counts)
    dx, dy = x[after] - x[before], y[after] - y[before]
    long = np.maximum(np.hypot(dx, dy), 1e-9)
    return -dy / long, dx / long


def neighbours(counts: np.ndarray) -> tuple:
    """Numbers of the unknowns before and after each in its chain; at an end itself."""
    n = int(counts.sum())
    number = np.arange(n)
    end = np.cumsum(counts)
    first = np.repeat(end - counts, counts)
    last = np.repeat(end - 1, counts)
    return np.maximum(number - 1, first), np.minimum(number + 1, last)


def _propagate(places: Places, x: np.ndarray, y: np.ndarray, turning: np.ndarray, stray_sigma: float) -> tuple:
    """Offsets (n,), their variances, the weights of the turnings, and the logarithm of how well the others foretell.

    Normals are taken at ``x, y``; ``turning``: (lines,) readiness of each chain to turn.
    """
    n = len(x)
    before, after = neighbours(places.counts)
    inner = (before != np.arange(n)) & (after != np.arange(n))
    nx, ny = _normals(places.counts, x, y)
    l1 = np.maximum(np.hypot(x - x[before], y - y[before]), 0.05)
    l2 = np.maximum(np.hypot(x[after] - x, y[after] - y), 0.05)
    across = [places.ex[k] * nx + places.ey[k] * ny for k in (before, np.arange(n), after)]
    ca, cb, cc = across[0] / l1, -across[1] * (1 / l1 + 1 / l2), across[2] / l2
    level = [places.x[k] * nx + places.y[k] * ny for k in (before, np.arange(n), after)]
    zero = level[0] / l1 - level[1] * (1 / l1 + 1 / l2) + level[2] / l2
    reach = (l1 + l2) / 2
    layout = make_layout(places.counts)
    line = np.repeat(np.arange(len(places.counts)), places.counts)
    heavy = np.ones(n)
    gates = places.chance.sum(axis=1) > 0
    precision = np.where(gates, 12 / np.maximum(places.edges[:, -1] - places.edges[:, 0], 0.1) ** 2, places.sigma**-2.0)
    pull = np.zeros(n)
    mean, var = np.zeros(n), np.ones(n)
    bent = np.zeros(n)
    for number in range(ROUNDS):
        stiff = np.where(inner, heavy / (turning[line] * reach), 0.0)
        turn = (ca, cb, cc, zero - bent * reach)
        mean, var, square = _solve(layout, n, inner, turn, stiff, precision, pull)
        if number >= CURVES_FROM:
            bent = _usual_bend(places.counts, line, inner, (ca, cb, cc, zero), mean, reach)
        # Student's distribution by reweighting: the sharper a turn, the less it counts.
        heavy = (FREEDOM + 1) / (FREEDOM + np.where(inner, square / reach, 0.0) / turning[line])
        cavity = np.maximum(1 / var - precision, 1e-4)
        cavity_mean = (mean / var - pull) / cavity
        fit_mean, fit_var, foretold = _moments(places, gates, cavity_mean, 1 / cavity, stray_sigma)
        new = np.clip(1 / fit_var - cavity, 1e-4, 1e6)
        precision = precision + SHARE * (new - precision)
        new_pull = fit_mean / fit_var - cavity * cavity_mean
        pull = pull + SHARE * (new_pull - pull)
    return mean, var, heavy, foretold


def _solve(layout, n, inner, turn, stiff, precision, pull):  # type: ignore[no-untyped-def]
    """Means and variances of the offsets, and the expected squared turning at each."""
    ca, cb, cc, zero = turn
    a = precision + stiff * cb**2
    a[:-1] += (stiff * ca**2)[1:]
    a[1:] += (stiff * cc**2)[:-1]
    rhs = pull - stiff * cb * zero
    rhs[:-1] -= (stiff * ca * zero)[1:]
    rhs[1:] -= (stiff * cc * zero)[:-1]
    b1, b2 = np.zeros(n), np.zeros(n)
    b1[1:] = (stiff * ca * cb)[1:] + (stiff * cb * cc)[:-1]
    b2[2:] = (stiff * ca * cc)[1:-1]
    tables = [layout.table(values, fill) for values, fill in ((a, 1.0), (b1, 0.0), (b2, 0.0), (rhs, 0.0))]
    tables[1][0] = 0.0
    tables[2][:2] = 0.0
    mean, var, one, two = (layout.answers(table) for table in solve(*tables))
    square = np.zeros(n)
    i = np.flatnonzero(inner)
    turned = ca[i] * mean[i - 1] + cb[i] * mean[i] + cc[i] * mean[i + 1] + zero[i]
    square[i] = turned**2 + ca[i] ** 2 * var[i - 1] + cb[i] ** 2 * var[i] + cc[i] ** 2 * var[i + 1]
    square[i] += 2 * (ca[i] * cb[i] * one[i - 1] + cb[i] * cc[i] * one[i] + ca[i] * cc[i] * two[i - 1])
    return mean, np.maximum(var, 1e-8), np.maximum(square, 0)


def _usual_bend(counts, line, inner, turn, mean, reach):  # type: ignore[no-untyped-def]
    """The curvature (n,), 1/m, that a vertex shares with those near it: what a curve has and gates do not."""
    n = len(mean)
    ca, cb, cc, zero = turn
    own = np.zeros(n)
    i = np.flatnonzero(inner)
    own[i] = (ca[i] * mean[i - 1] + cb[i] * mean[i] + cc[i] * mean[i + 1] + zero[i]) / reach[i]
    end = np.cumsum(counts)
    first, last = (end - counts)[line], (end - 1)[line]
    columns, there = [], []
    for shift in range(-NEAR, NEAR + 1):
        at = np.arange(n) + shift
        good = (at > first) & (at < last)
        columns.append(np.where(good, own[np.clip(at, 0, n - 1)], 0.0))
        there.append(good)
    value, known = np.array(columns), np.array(there)
    count = known.sum(axis=0)
    middle = value.sum(axis=0) / np.maximum(count, 1)
    spread = (known * (value - middle) ** 2).sum(axis=0) / np.maximum(count - 1, 1) / np.maximum(count, 1)
    # As much of it as stands out from its own spread.
    return np.where(count >= 3, middle * middle**2 / np.maximum(middle**2 + 2 * spread, 1e-12), 0.0)


def _moments(places: Places, gates: np.ndarray, mean: np.ndarray, var: np.ndarray, stray_sigma: float) -> tuple:
    """Mean and variance (n,) of normal distributions seen through the gates, or beside the places."""
    result_mean, result_var, foretold = mean.copy(), var.copy(), np.zeros(len(mean))
    g = np.flatnonzero(gates)
    if len(g):
        result_mean[g], result_var[g], foretold[g] = _through_gates(places.edges[g], places.chance[g], mean[g], var[g])
    p = np.flatnonzero(~gates)
    if len(p):
        result_mean[p], result_var[p], foretold[p] = _beside_places(places.sigma[p], mean[p], var[p], stray_sigma)
    return result_mean, result_var, foretold


def _through_gates(edges: np.ndarray, chance: np.ndarray, mean: np.ndarray, var: np.ndarray) -> tuple:
    sd = np.sqrt(var)
    t = (edges - mean[:, None]) / sd[:, None]
    below = 0.5 * (1 + erf(t / np.sqrt(2)))
    height = np.exp(-0.5 * t**2) / np.sqrt(2 * np.pi)
    mass = np.maximum(np.diff(below, axis=1), 0)
    first = -np.diff(height, axis=1)
    second = mass - np.diff(t * height, axis=1)
    weight = np.column_stack([chance, np.zeros(len(mean))])[:, :-1]
    # Outside all gates the place is a stray: as likely anywhere near.
    wide = np.maximum(edges[:, -1:] - edges[:, :1], 0.1)
    long = np.maximum(np.diff(edges, axis=1), 1e-3)
    weight = weight / long * (1 - STRAY)
    flat = STRAY / (wide[:, 0] + 2 * STRAY_SIGMA)
    total = (weight * mass).sum(axis=1) + flat
    m1 = (weight * first).sum(axis=1) / total
    m2 = ((weight * second).sum(axis=1) + flat) / total
    return mean + sd * m1, np.maximum(var * (m2 - m1**2), 1e-6), np.log(total)


def _beside_places(sigma: np.ndarray, mean: np.ndarray, var: np.ndarray, stray_sigma: float) -> tuple:
    parts: List[np.ndarray] = []
    for share, doubt in ((1 - STRAY, sigma**2), (STRAY, stray_sigma**2 + sigma**2)):
        both = var + doubt
        likely = share * np.exp(-0.5 * mean**2 / both) / np.sqrt(both)
        parts += [likely, mean * doubt / both, var * doubt / both]
    weight = parts[0] / np.maximum(parts[0] + parts[3], 1e-300)
    middle = weight * parts[1] + (1 - weight) * parts[4]
    spread = weight * (parts[2] + parts[1] ** 2) + (1 - weight) * (parts[5] + parts[4] ** 2) - middle**2
    return middle, np.maximum(spread, 1e-6), np.log(np.maximum(parts[0] + parts[3], 1e-300))
