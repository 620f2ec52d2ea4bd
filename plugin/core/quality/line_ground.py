"""The ground to the left and right of a line, as the points of other visits beside it give it.

On either side the ground is taken as a profile along the line plus a section across it, the same all along: heights
of a kerb, a ditch's sides or a crossfall are in the section, hills and hollows in the profile. Both are piecewise
linear and fitted together by least squares with weights that leave outliers little say (iteratively reweighted,
Huber 1964); the profile's second derivative and the section's breaks are held to what ground does, a drive's few
bends costing no more than others. The line's own heights play no part.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.spatial import cKDTree

from .noise import robust_sigma

_KNOT = 1.5  # m between the knots of the profile
_BEND = 0.008  # 1/m: what the profile's second derivative usually stays below
_ACROSS = np.array([0.0, 0.2, 0.4, 0.6, 0.9, 1.3, 1.8, 2.5, 3.3, 4.2])  # m: knots of the section
_BREAK = 0.7  # usual change of its slope at a knot
_BANDS = np.array([0.25, 0.5, 1.0, 1.8, 3.0])  # m: points of one band across the line scatter alike
_BEYOND = 3.0  # m before and behind the line
_NEAR = 0.7  # m: right beside the line
_PASSING, _BY = 1.5, 0.6  # m across and along: a pass beside a vertex
_FEWEST = 6  # points on a side
_HUBER = 2.5  # standard deviations from which a point says less
_KINK = 0.8  # usual bends from which one costs less
_ASIDE = 0.03  # of the distance to the line, m: what the ground there does otherwise than at the line
_ROUNDS = 8
_UNKNOWN = 1e3  # m


@dataclass(frozen=True)
class Side:
    """Height (k,) of the ground at a line's vertices, carried on from one side of it, and its standard deviation (m).

    inf where nothing is known. Only differences along the line are meant: the section takes up any constant. ``rise``:
    how high (m) the line usually lies over what is right beside it there, nan where nothing is. ``seen``: (k,) bool, a
    pass has points right beside the vertex.
    """

    height: np.ndarray
    sigma: np.ndarray
    rise: float
    seen: np.ndarray


@dataclass(frozen=True)
class Around:
    """g points beside lines. ``xyz``: (g, 3) local metres. ``line``: (g,) number of the line they are on, -1 for the
    walk.
    """

    xyz: np.ndarray
    line: np.ndarray
    tree: cKDTree


def stations_of(xy: np.ndarray) -> np.ndarray:
    """Distance (k,) along the line to each of its vertices (k, 2), m."""
    return np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))


def sides_of(xyz: np.ndarray, around: Around, line: int, reach: float, noise: float) -> Tuple[Side, Side]:
    """The ground to the left and to the right of line number ``line`` through ``xyz`` (k, 3).

    ``reach``: m to either side; ``noise``: standard deviation of a height, m.
    """
    xy, station = xyz[:, :2], stations_of(xyz[:, :2])
    along, aside, z, walked = _beside(xy, station, around, line, reach)
    own = np.interp(along, station, xyz[:, 2]) - z
    sides = []
    for way in (1, -1):
        some = way * aside > 0
        near = own[some & (way * aside < _NEAR)]
        height, sigma = _fit(along[some], way * aside[some], z[some], station, noise)
        rise = float(np.median(near)) if len(near) >= _FEWEST else float("nan")
        passing = np.sort(along[some & walked & (way * aside < _PASSING)])
        sides.append(Side(height, sigma, rise, _near(station, passing)))
    return sides[0], sides[1]


def _near(station: np.ndarray, passing: np.ndarray) -> np.ndarray:
    """Mask (k,) of the vertices near one of the sorted distances ``passing`` along the line."""
    at = np.searchsorted(passing, station)
    around = np.concatenate([[-np.inf], passing, [np.inf]])
    mask: np.ndarray = np.minimum(station - around[at], around[at + 1] - station) < _BY
    return mask


def _beside(
    xy: np.ndarray, station: np.ndarray, around: Around, line: int, reach: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Distance along the line, distance to its left, and height of the points of other visits beside it, and whether
    they are of the walk.
    """
    places, segment = _spread(xy, station, max(0.5, reach / 4))
    near = around.tree.query_ball_point(places, reach + 0.5)
    found = np.unique(np.concatenate([np.asarray(each, np.int64) for each in near]))
    found = found[around.line[found] != line]
    if not len(found):
        return np.empty(0), np.empty(0), np.empty(0), np.empty(0, bool)
    point = around.xyz[found]
    _, nearest = cKDTree(places).query(point[:, :2], k=min(3, len(places)))
    best = np.full(len(found), np.inf)
    along, aside = np.zeros(len(found)), np.zeros(len(found))
    for column in np.unique(segment[nearest.reshape(len(found), -1)], axis=1).T:
        u, v, away = _project(xy, station, column, point)
        better = away < best
        best[better], along[better], aside[better] = away[better], u[better], v[better]
    fits = (np.abs(aside) <= reach) & (along >= -_BEYOND) & (along <= station[-1] + _BEYOND) & (aside != 0)
    return along[fits], aside[fits], point[fits, 2], around.line[found[fits]] < 0


def _spread(xy: np.ndarray, station: np.ndarray, apart: float) -> Tuple[np.ndarray, np.ndarray]:
    """Places (m, 2) on the line, at most ``apart`` (m) from each other, and the segment of each."""
    count = np.maximum(np.ceil(np.diff(station) / apart).astype(np.int64), 1)
    segment = np.repeat(np.arange(len(count)), count)
    share = (np.arange(len(segment)) - np.repeat(np.cumsum(count) - count, count) + 0.5) / count[segment]
    return xy[segment] + share[:, None] * (xy[segment + 1] - xy[segment]), segment


def _project(
    xy: np.ndarray, station: np.ndarray, segment: np.ndarray, point: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Along and to the left of the line, and how far from ``segment`` (g,) each point lies."""
    a, b = xy[segment], xy[segment + 1]
    length = np.maximum(np.hypot(*(b - a).T), 1e-9)
    ahead = (b - a) / length[:, None]
    off = point[:, :2] - a
    u = off[:, 0] * ahead[:, 0] + off[:, 1] * ahead[:, 1]
    v = off[:, 1] * ahead[:, 0] - off[:, 0] * ahead[:, 1]
    first, last = segment == 0, segment == len(xy) - 2
    inside = np.clip(u, np.where(first, -np.inf, 0.0), np.where(last, np.inf, length))
    away = np.hypot(u - inside, v)
    return station[segment] + inside, np.sign(v) * away, away


def _fit(
    along: np.ndarray, aside: np.ndarray, z: np.ndarray, station: np.ndarray, noise: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Height and standard deviation of the profile at ``station`` (k,) from points ``along`` and ``aside`` (n,)."""
    if len(z) < _FEWEST:
        return np.zeros(len(station)), np.full(len(station), np.inf)
    low = min(float(along.min()), 0.0)
    count = max(int(np.ceil((max(float(along.max()), station[-1]) - low) / _KNOT)), 2) + 1
    across = _ACROSS[: int(np.searchsorted(_ACROSS, aside.max())) + 1]
    level = float(np.median(z))
    design = np.hstack([_hats((along - low) / _KNOT, count), _section(aside, across)])
    bends, section = _bends(count), _section_prior(count, across)
    band = np.searchsorted(_BANDS, aside)
    spread = np.full(len(_BANDS) + 1, noise)
    other = (_ASIDE * aside) ** 2
    weight, even = np.ones(len(z)), np.ones(len(bends))
    for _ in range(_ROUNDS):
        own = weight / (spread[band] ** 2 + other)
        normal = design.T @ (own[:, None] * design) + section
        normal[:count, :count] += bends.T @ (even[:, None] * bends)
        solved = np.linalg.solve(normal, design.T @ (own * (z - level)))
        residual = z - level - design @ solved
        for k in range(len(spread)):
            some = residual[band == k]
            spread[k] = max(noise, robust_sigma(some)) if len(some) >= _FEWEST else 3 * noise
        weight = 1 / np.maximum(1.0, np.abs(residual) / (_HUBER * np.sqrt(spread[band] ** 2 + other)))
        even = 1 / np.maximum(1.0, np.abs(bends @ solved[:count]) / _KINK)
    # What the whole side is up or down by is taken off with the line's usual difference to it.
    asked = np.hstack([_hats((station - low) / _KNOT, count), np.zeros((len(station), design.shape[1] - count))])
    height = level + asked @ solved
    asked[:, :count] -= asked[:, :count].mean(axis=0)
    variance = np.einsum("ij,ij->i", asked, np.linalg.solve(normal, asked.T).T)
    return height, np.sqrt(variance)


def _hats(place: np.ndarray, count: int) -> np.ndarray:
    """Weights (n, count) of the knots 0, 1, … around each place."""
    knot = np.clip(np.floor(place).astype(np.int64), 0, count - 2)
    share = place - knot
    result = np.zeros((len(place), count))
    row = np.arange(len(place))
    result[row, knot], result[row, knot + 1] = 1 - share, share
    return result


def _section(aside: np.ndarray, across: np.ndarray) -> np.ndarray:
    """Weights (n, s - 1) of the section's knots but the first, which is 0."""
    knot = np.clip(np.searchsorted(across, aside) - 1, 0, max(len(across) - 2, 0))
    result = np.zeros((len(aside), len(across)))
    if len(across) > 1:
        share = (aside - across[knot]) / (across[knot + 1] - across[knot])
        row = np.arange(len(aside))
        result[row, knot], result[row, knot + 1] = 1 - share, share
    return result[:, 1:]


def _bends(count: int) -> np.ndarray:
    """Second differences (count - 2, count) of the profile, in what they usually are."""
    rows = np.zeros((count - 2, count))
    at = np.arange(count - 2)
    rows[at, at], rows[at, at + 1], rows[at, at + 2] = 1, -2, 1
    return rows / (_BEND * _KNOT**2)


def _section_prior(count: int, across: np.ndarray) -> np.ndarray:
    """What is known of the section before: its slopes change by 1 or so at most."""
    slope = np.diff(np.eye(len(across)), axis=0) / np.diff(across)[:, None]
    section = (np.vstack([slope[:1], np.diff(slope, axis=0)]) / _BREAK)[:, 1:]
    result = np.zeros((count + len(across) - 1,) * 2)
    result[:count, :count] = np.eye(count) / _UNKNOWN**2
    result[count:, count:] = section.T @ section
    return result
