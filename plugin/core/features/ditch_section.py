"""The section that the passes across a ditch share: a floor, or none, between two sides.

A pass has few points in a narrow ditch, but all passes together have many. The section of the whole line and, for each
pass, its ground, depth and place are fitted to all heights at once by Gauss and Newton's method, the unknowns of each
pass eliminated first; heights far off count less (weights of Cauchy's distribution).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from ..inverses import inverses

#: Narrowest and widest side (m), and standard deviations of what passes of one ditch differ by: slope of the ground
#: beside it (m/m), depth (share of it), place beside that of the bottom first found (m), and width (share of it).
NARROWEST, WIDEST, SLOPES, DEPTHS, PLACES, WIDTHS = 0.25, 4.0, 0.06, 0.2, 0.4, 0.1
#: A floor is there where it makes the squares so much less and is so wide (m, half of it).
FLOOR, LEAST_FLOOR = 12.0, 0.1
#: What stands off so many standard deviations counts half.
_FAR = 3.0
_ROUNDS, _STEP, _TAKEN, _STILL = 25, 0.15, 0.8, 1e-3
_SHIFTS = np.linspace(-0.6, 0.6, 13)
_LEVEL_PRECISION = 1e-8


@dataclass(frozen=True)
class Heights:
    """Heights about the bottom on p passes: ``v, z, weight`` (p, m): metres left of the bottom, metres, and one over
    the variance of each (0 for none)."""

    v: np.ndarray
    z: np.ndarray
    weight: np.ndarray

    def take(self, which: np.ndarray) -> Heights:
        """Some of the passes."""
        return Heights(self.v[which], self.z[which], self.weight[which])


@dataclass(frozen=True)
class Section:
    """A section fitted to p passes.

    ``shape``: (3,) half the floor, and the run of the left and of the right side, metres; ``shape_var``: variances.
    ``own``: (p, 6) height of the ground over the middle of the bottom, its slopes left and right of it, depth, place
    left of the bottom first found, and how much wider than ``shape`` (share); ``cov``: (p, 6, 6) of these.
    ``squares``: weighted sum of squared departures; ``off``: (p,) departures in standard deviations, root of the mean
    square.
    """

    shape: np.ndarray
    shape_var: np.ndarray
    own: np.ndarray
    cov: np.ndarray
    squares: float
    off: np.ndarray

    @property
    def depth(self) -> float:
        """Usual depth, metres."""
        return float(np.median(self.own[:, 3]))

    def at(self, u: float) -> Tuple[np.ndarray, np.ndarray]:
        """Heights (p,) ``u`` metres left of the middle of the usual section, and their variances, the place given."""
        deep = float(depth_at(np.array(u), self.shape)[0])
        wide = u * (1 + self.own[:, 5])
        column = np.column_stack([np.ones_like(wide), np.maximum(wide, 0), np.minimum(wide, 0), -deep + 0 * wide])
        height = (self.own[:, :4] * column).sum(axis=1)
        return height, np.einsum("pi,pij,pj->p", column, self.cov[:, :4, :4], column)

    def place(self, u: float) -> Tuple[np.ndarray, np.ndarray]:
        """Metres (p,) left of the bottom first found, and variances, of what is ``u`` left of the usual middle."""
        column = np.array([1.0, u])
        var = np.einsum("i,pij,j->p", column, self.cov[:, 4:, 4:], column)
        return self.own[:, 4] + u * (1 + self.own[:, 5]), var


def fit_section(heights: Heights, edges: np.ndarray) -> Section:
    """The section with a floor where that fits clearly better, else without. ``edges``: (2,) metres to both edges."""
    sharp = _fitted(heights, np.append(0.0, np.maximum(edges, NARROWEST)), False)
    sides = np.maximum(sharp.shape[1:] - 2 * LEAST_FLOOR, NARROWEST)
    floor = _fitted(heights, np.append(2 * LEAST_FLOOR, sides), True)
    return floor if sharp.squares - floor.squares > FLOOR and floor.shape[0] >= LEAST_FLOOR else sharp


def _fitted(heights: Heights, shape: np.ndarray, with_floor: bool) -> Section:
    own = _begin(heights, shape)
    free = np.array([with_floor, True, True])
    weight = heights.weight
    for number in range(_ROUNDS + 1):
        model, to_own, to_shape = _model(heights.v, own, shape)
        off = heights.z - model
        if number > 1:
            weight = heights.weight / (1 + off**2 * heights.weight / _FAR**2)
        inverse, cov, change, moved = _change(own, off, weight, to_own, to_shape[:, :, free])
        if number == _ROUNDS or (number > 2 and max(np.abs(change).max(), np.abs(moved[:, 3:]).max()) < _STILL):
            break
        shape = shape.copy()
        shape[free] += _TAKEN * np.clip(change, -_STEP, _STEP)
        shape = np.clip(shape, [0.0, NARROWEST, NARROWEST], WIDEST)
        moved[:, 4:] = np.clip(moved[:, 4:], -_STEP, _STEP)
        own = own + _TAKEN * moved
    each = np.minimum(off**2 * heights.weight, _FAR**2).sum(axis=1)
    count = np.maximum((heights.weight > 0).sum(axis=1), 1)
    shape_var = np.zeros(3)
    shape_var[free] = np.diag(cov)
    return Section(shape, shape_var, own, inverse, float(each.sum()), np.sqrt(each / count))


def _change(
    own: np.ndarray, off: np.ndarray, weight: np.ndarray, to_own: np.ndarray, to_shape: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """One step: covariances of each pass's own unknowns and of the shape, and the changes of the shape and of these."""
    usual = own[:, 1:4].mean(axis=0)
    spread = np.array([SLOPES, SLOPES, max(DEPTHS * usual[2], 0.02), PLACES, WIDTHS])
    known = np.append(_LEVEL_PRECISION, spread**-2.0)
    away = np.column_stack([np.zeros(len(own)), usual - own[:, 1:4], -own[:, 4:]])
    weighted = to_own * weight[:, :, None]
    turned = weighted.transpose(0, 2, 1)
    inverse = inverses(turned @ to_own + np.diag(known))
    cross = turned @ to_shape
    pull = np.einsum("pmi,pm->pi", weighted, off) + away * known
    eliminated = np.einsum("pij,pik->pjk", inverse, cross)
    normal = np.einsum("pmi,pmj,pm->ij", to_shape, to_shape, weight) - np.einsum("pij,pik->jk", cross, eliminated)
    target = np.einsum("pmi,pm,pm->i", to_shape, weight, off) - np.einsum("pij,pi->j", eliminated, pull)
    cov = inverses(normal[None] + 1e-3 * np.eye(len(normal)))[0]
    change = cov @ target
    moved = np.einsum("pij,pj->pi", inverse, pull - cross @ np.clip(change, -_STEP, _STEP))
    return inverse, cov, change, moved


def _begin(heights: Heights, shape: np.ndarray) -> np.ndarray:
    """Each pass's own unknowns (p, 6): of some shifts that at which it fits the section best by least squares."""
    best, own = np.full(len(heights.v), np.inf), np.zeros((len(heights.v), 6))
    for shift in _SHIFTS:
        u = heights.v - shift
        columns = np.stack([np.ones_like(u), np.maximum(u, 0), np.minimum(u, 0), -depth_at(u, shape)[0]], axis=2)
        weighted = columns * heights.weight[:, :, None]
        normal = weighted.transpose(0, 2, 1) @ columns
        normal += np.diag([_LEVEL_PRECISION, SLOPES**-2.0, SLOPES**-2.0, 1.0])
        target = np.einsum("pmi,pm->pi", weighted, heights.z)
        fit = np.linalg.solve(normal, target[:, :, None])[:, :, 0]
        squares = (shift / PLACES) ** 2 - (target * fit).sum(axis=1)
        better = (squares < best) & (fit[:, 3] > 0)
        best = np.where(better, squares, best)
        own[better, :4], own[better, 4] = fit[better], shift
    return own


def depth_at(u: np.ndarray, shape: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Depth, as a share, ``u`` metres left of the middle; and 1 on the left side, -1 on the right one, else 0."""
    floor, left_run, right_run = shape
    deep = np.minimum((floor + left_run - u) / left_run, (floor + right_run + u) / right_run)
    side = np.where((deep > 0) & (deep < 1), np.where(u > 0, 1.0, -1.0), 0.0)
    return np.clip(deep, 0.0, 1.0), side


def _model(v: np.ndarray, own: np.ndarray, shape: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Heights (p, m), and how they change with each pass's own unknowns (p, m, 6) and with the shape (p, m, 3)."""
    floor, left_run, right_run = shape
    level, to_left, to_right, depth, place, wide = (column[:, None] for column in own.T)
    u, usual = v - place, (v - place) / (1 + wide)
    deep, side = depth_at(usual, shape)
    slope = np.where(u > 0, to_left, to_right)
    model = level + slope * u - depth * deep
    run = np.where(u > 0, left_run, right_run)
    steep = np.abs(side) / run
    shift = depth * side * steep / (1 + wide)
    columns = [np.ones_like(u), np.maximum(u, 0), np.minimum(u, 0), -deep, -shift - slope, -shift * usual]
    to_own = np.stack(columns, axis=2)
    wider = steep * (np.abs(usual) - floor) / run
    to_shape = -depth[:, :, None] * np.stack([steep, wider * (side > 0), wider * (side < 0)], axis=2)
    return model, to_own, to_shape
