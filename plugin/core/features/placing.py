"""Where a chain of candidates runs: the least bent line through all gates and places at once.

Each candidate may move along its own pass. Gates say between which two points the line runs, and with what chance
rather one gate further; bends of the ground say where with what doubt. Between candidates the line keeps its
direction, or its curvature, but for a random turning, whose size each line's own candidates tell; a single sharp turn
is allowed its place (corners). The mean and spread of all such lines are found by expectation propagation (Minka 2001,
Expectation propagation for approximate Bayesian inference): a gate that is as likely everywhere inside and nowhere
outside is replaced by the normal distribution that has the same mean and spread, given all others.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.special import erf

from .bending import corner_weights, make_bending, normals, shared_turning, solve_offsets

#: Rounds of propagation, first with one readiness to turn, then with each; and the share of each round that is taken.
FIRST_ROUNDS, ROUNDS, SHARE = 3, 6, 0.8
#: From this round on a line may be curved.
CURVES_FROM = 2
#: Squared turning (radian²) for each metre, from kerbs as straight as a string to boulders in a row.
TURNINGS = np.array([1e-5, 1.5e-4, 2e-3, 3e-2])
_USUAL = 2
#: Chance that a place is no place of this line, and how far it may then be off (m).
STRAY, STRAY_SIGMA = 0.01, 0.6
#: A turn that counts less than this is a corner.
CORNER = 0.35


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
    """``x, y``: (n,) placed vertices; ``nx, ny``: (n,) unit vector to the left of the line; ``sigma``: (n,) doubt
    across the line, metres; ``corner``: (n,) bool, the line turns sharply here."""

    x: np.ndarray
    y: np.ndarray
    nx: np.ndarray
    ny: np.ndarray
    sigma: np.ndarray
    corner: np.ndarray


def place_lines(places: Places) -> Placed:
    """The placed vertices of all chains.

    Each is placed with every readiness to turn of ``TURNINGS``; each of these counts by how well the chain's other
    candidates foretell each of its gates and places (leave one out).
    """
    many, n, lines = len(TURNINGS), len(places.x), len(places.counts)
    line = np.repeat(np.arange(lines), places.counts)
    turning = np.full(n, TURNINGS[_USUAL])
    offset = _propagate(places, places.x, places.y, turning, FIRST_ROUNDS)[0]
    # The directions in which the line is looked at follow from where it lies.
    x, y = places.x + offset * places.ex, places.y + offset * places.ey
    copies = Places(*(np.concatenate([column] * many) for column in places.columns()))
    mean, spread, loose, foretold = _propagate(
        copies, np.tile(x, many), np.tile(y, many), np.repeat(TURNINGS, n), ROUNDS
    )
    mean, spread = mean.reshape(many, n), spread.reshape(many, n)
    share = shares(foretold, line, lines, many)
    offset = (share * mean).sum(axis=0)
    var = (share * (spread + (mean - offset) ** 2)).sum(axis=0)
    heavy = (share * loose.reshape(many, n)).sum(axis=0)
    x, y = places.x + offset * places.ex, places.y + offset * places.ey
    nx, ny = normals(places.counts, x, y)
    across = np.abs(places.ex * nx + places.ey * ny)
    return Placed(x, y, nx, ny, np.sqrt(var) * across, heavy < CORNER)


def shares(foretold: np.ndarray, line: np.ndarray, lines: int, many: int) -> np.ndarray:
    """What each of ``many`` models counts at each vertex (many, n), by the sum over its chain of ``foretold``."""
    score = np.array([np.bincount(line, weights=part, minlength=lines) for part in foretold.reshape(many, -1)])
    share = np.exp(score - score.max(axis=0))
    result: np.ndarray = (share / share.sum(axis=0))[:, line]
    return result


def _propagate(
    places: Places, x: np.ndarray, y: np.ndarray, turning: np.ndarray, rounds: int
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Offsets (n,), their variances, the weights of the turnings, and the logarithm of how well the others foretell.

    Normals are taken at ``x, y``; ``turning``: (n,) squared turning for each metre.
    """
    n = len(x)
    bending = make_bending(places.counts, (places.x, places.y), (places.ex, places.ey), (x, y))
    gates = places.chance.sum(axis=1) > 0
    wide = np.maximum(places.edges[:, -1] - places.edges[:, 0], 0.1)
    precision = np.where(gates, 12 / wide**2, places.sigma**-2.0)
    pull, usual, heavy = np.zeros(n), shared_turning(bending, np.zeros(n)), np.ones(n)
    mean, var, foretold = np.zeros(n), np.ones(n), np.zeros(n)
    for number in range(rounds):
        stiff = np.where(bending.inner, heavy / (turning * bending.reach), 0.0)
        mean, var, square = solve_offsets(bending, stiff, usual, precision, pull)
        if number >= CURVES_FROM:
            usual = shared_turning(bending, mean)
        heavy = corner_weights(bending, square, turning)
        cavity = np.maximum(1 / var - precision, 1e-4)
        cavity_mean = (mean / var - pull) / cavity
        fit_mean, fit_var, foretold = _moments(places, gates, cavity_mean, 1 / cavity)
        new = np.clip(1 / fit_var - cavity, 1e-4, 1e6)
        precision = precision + SHARE * (new - precision)
        pull = pull + SHARE * (fit_mean / fit_var - cavity * cavity_mean - pull)
    return mean, var, heavy, foretold


def _moments(
    places: Places, gates: np.ndarray, mean: np.ndarray, var: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Mean and variance (n,) of normal distributions seen through gates or beside places, and log masses."""
    result_mean, result_var, foretold = mean.copy(), var.copy(), np.zeros(len(mean))
    g = np.flatnonzero(gates)
    if len(g):
        result_mean[g], result_var[g], foretold[g] = _through_gates(places.edges[g], places.chance[g], mean[g], var[g])
    p = np.flatnonzero(~gates)
    if len(p):
        result_mean[p], result_var[p], foretold[p] = _beside_places(places.sigma[p], mean[p], var[p])
    return result_mean, result_var, foretold


def _through_gates(
    edges: np.ndarray, chance: np.ndarray, mean: np.ndarray, var: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    sd = np.sqrt(var)
    t = (edges - mean[:, None]) / sd[:, None]
    below = 0.5 * (1 + erf(t / np.sqrt(2)))
    height = np.exp(-0.5 * t**2) / np.sqrt(2 * np.pi)
    mass = np.maximum(np.diff(below, axis=1), 0)
    first = -np.diff(height, axis=1)
    second = mass - np.diff(t * height, axis=1)
    weight = chance / np.maximum(np.diff(edges, axis=1), 1e-3) * (1 - STRAY)
    # Outside all gates the place is a stray: as likely anywhere near.
    flat = STRAY / (np.maximum(edges[:, -1] - edges[:, 0], 0.1) + 2 * STRAY_SIGMA)
    total = (weight * mass).sum(axis=1) + flat
    m1 = (weight * first).sum(axis=1) / total
    m2 = ((weight * second).sum(axis=1) + flat) / total
    return mean + sd * m1, np.maximum(var * (m2 - m1**2), 1e-6), np.log(total)


def _beside_places(sigma: np.ndarray, mean: np.ndarray, var: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    parts: List[np.ndarray] = []
    for share, doubt in ((1 - STRAY, sigma**2), (STRAY, STRAY_SIGMA**2 + sigma**2)):
        both = var + doubt
        likely = share * np.exp(-0.5 * mean**2 / both) / np.sqrt(both)
        parts += [likely, mean * doubt / both, var * doubt / both]
    total = np.maximum(parts[0] + parts[3], 1e-300)
    weight = parts[0] / total
    middle = weight * parts[1] + (1 - weight) * parts[4]
    spread = weight * (parts[2] + parts[1] ** 2) + (1 - weight) * (parts[5] + parts[4] ** 2) - middle**2
    return middle, np.maximum(spread, 1e-6), np.log(total)
