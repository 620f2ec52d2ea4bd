"""Every step of the walk held against the passes to its left and right."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.spatial import cKDTree

from .ground import GroundNet
from .medians import CHUNK, running_median
from .noise import Roughness, robust_sigma
from .walk import Walk

_AROUND = 48  # steps asked about the ground around
_FEW = 8
_SAMPLE = 20_000  # scores that tell how large they usually are
_OTHER = 20  # points apart in the walk from which on a neighbour belongs to another pass


@dataclass(frozen=True)
class Beside:
    """b steps from point ``at`` to the next one, with a neighbour on either side.

    ``left, right``: (b,) number of the neighbour: a point of the walk, or at or above its length a coded point.
    ``share``: (b,) weight of the left one. ``away``: (b,) height of the step's middle over the line between the two
    (m). ``reach``: (b,) how far they are (m, geometric mean).
    """

    at: np.ndarray
    left: np.ndarray
    right: np.ndarray
    share: np.ndarray
    away: np.ndarray
    reach: np.ndarray

    def take(self, which: np.ndarray) -> Beside:
        return Beside(*(getattr(self, c)[which] for c in ("at", "left", "right", "share", "away", "reach")))


def look_beside(walk: Walk, net: GroundNet, coded: np.ndarray) -> Beside:
    """The neighbours of every step: the corners opposite to it in the triangulation ``net`` of all points.

    ``coded``: (c, 3) the coded points, local metres.
    """
    xyz = np.vstack([np.column_stack([walk.x, walk.y, walk.z]), coded])
    step, at = _half_edges(walk, net)
    mesh, first = net.mesh, net.first
    left, right = first[mesh.apex(step)], first[mesh.apex(mesh.twin[step])]
    n = len(walk)
    other = ((left >= n) | (np.abs(left - at) > _OTHER)) & ((right >= n) | (np.abs(right - at) > _OTHER))
    at, left, right = at[other], left[other], right[other]
    place = np.full(n, -1)
    place[at] = np.arange(len(at))
    order = place[place >= 0]
    at, left, right = at[order], left[order], right[order]
    slope = _slopes(walk)
    measured = [
        _measure(xyz, at[some], left[some], right[some], slope)
        for some in (slice(start, start + CHUNK) for start in range(0, max(len(at), 1), CHUNK))
    ]
    return Beside(at, left, right, *(np.concatenate(column) for column in zip(*measured)))


def _half_edges(walk: Walk, net: GroundNet) -> Tuple[np.ndarray, np.ndarray]:
    """Inner half-edges (k,) of the net that run from a point of the walk to the next one, and these points."""
    n, mesh = len(walk), net.mesh
    point = net.first.astype(np.int32)[mesh.vertex].reshape(-1, 3)
    found = []
    for slot in range(3):
        here, there = point[:, slot], point[:, (slot + 1) % 3]
        found.append(3 * np.flatnonzero((there == here + 1) & (there < n)) + slot)
    step = np.concatenate(found)
    at = point.ravel()[step].astype(np.int64)
    inner = (mesh.twin[step] >= 0) & (walk.piece[at] == walk.piece[at + 1])
    return step[inner], at[inner]


def _slopes(walk: Walk) -> np.ndarray:
    """Rise over run of each step (q,), the median of five, so that a fault at one point does not tell."""
    n = len(walk)
    run = np.hypot(np.diff(walk.x), np.diff(walk.y))
    rise = np.append(np.diff(walk.z) / np.maximum(run, 0.5 * walk.spacing), 0.0)
    if n < 6:
        return np.full(n, float(np.median(rise)) if n else 0.0)
    result = np.empty(n)
    result[2:-2] = running_median(rise, 5)
    result[:2], result[-2:] = result[2], result[-3]
    return result


def _measure(
    xyz: np.ndarray, at: np.ndarray, left: np.ndarray, right: np.ndarray, slope: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """``share``, ``away`` and ``reach`` of :class:`Beside`."""
    a, b = xyz[at].T, xyz[at + 1].T
    ahead_x, ahead_y = b[0] - a[0], b[1] - a[1]
    length = np.maximum(np.hypot(ahead_x, ahead_y), 1e-9)
    ahead_x, ahead_y = ahead_x / length, ahead_y / length
    middle = (a + b) / 2

    def frame(p: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        dx, dy = p[0] - middle[0], p[1] - middle[1]
        return dx * ahead_x + dy * ahead_y, dy * ahead_x - dx * ahead_y

    one, other = xyz[left].T, xyz[right].T
    (along_l, aside_l), (along_r, aside_r) = frame(one), frame(other)
    width = np.maximum(aside_l - aside_r, 1e-9)
    share = np.clip(-aside_r / width, 0, 1)
    # Where the line between the neighbours meets the track, up to half a step ahead or behind.
    station = share * along_l + (1 - share) * along_r
    own = middle[2] + slope[at] * np.clip(station, -length / 2, length / 2)
    away = own - share * one[2] - (1 - share) * other[2]
    return share, away, np.sqrt(np.maximum(aside_l, 0) * np.maximum(-aside_r, 0))


@dataclass(frozen=True)
class Aside:
    """Heights over the neighbouring passes as running sums along the walk, to compare windows of it.

    ``count, total, rough``: (q + 1,) running number, sum of ``away`` and sum of the ground's variance (m²).
    """

    count: np.ndarray
    total: np.ndarray
    rough: np.ndarray

    def steps(self, low: np.ndarray, at: np.ndarray, high: np.ndarray, noise: float) -> Tuple[np.ndarray, np.ndarray]:
        """Step (m) of the height over the neighbours from points [low, at) to [at, high) and its standard deviation.

        inf where fewer than two of either side have neighbours. The walk's own slope plays no part in it.
        """
        before, after = np.maximum(at - 1, low), np.maximum(high - 1, at)  # the step across ``at`` counts for neither
        n = [self.count[before] - self.count[low], self.count[after] - self.count[at]]
        known = (n[0] >= 2) & (n[1] >= 2)
        a, b = np.maximum(n[0], 1), np.maximum(n[1], 1)
        step = (self.total[after] - self.total[at]) / b - (self.total[before] - self.total[low]) / a
        ground = (self.rough[after] - self.rough[at]) / b + (self.rough[before] - self.rough[low]) / a
        variance = noise**2 * (1 / (a + 0.5) + 1 / (b + 0.5)) + 0.1 * ground
        return np.where(known, step, 0.0), np.where(known, np.sqrt(variance), np.inf)


def aside_of(walk: Walk, beside: Beside, rough: Roughness) -> Aside:
    """Running sums over all steps of the walk that have neighbours."""
    each = np.ones(len(beside.at)), beside.away, rough.at(beside.reach) ** 2
    return Aside(*(running(walk, beside, values) for values in each))


def running(walk: Walk, beside: Beside, values: np.ndarray) -> np.ndarray:
    """Running sums (q + 1,) along the walk of ``values`` (b,) of its steps, from 0."""
    column = np.zeros(len(walk) + 1)
    column[beside.at + 1] = values
    result: np.ndarray = np.cumsum(column)
    return result


def cuts_beside(walk: Walk, aside: Aside, noise: float, limit: float) -> np.ndarray:
    """Points (k,) before which the height over the neighbouring passes steps by more than ``limit`` usual
    deviations.
    """
    at = np.arange(len(walk))
    found = np.zeros(len(walk))
    for reach in (4, 8):
        score = np.zeros(len(walk))
        for start in range(0, len(walk), CHUNK):
            some = slice(start, start + CHUNK)
            low, high = np.maximum(at[some] - reach, walk.first[some]), np.minimum(at[some] + reach, walk.last[some])
            step, sigma = aside.steps(low, at[some], high, noise)
            score[some] = np.where(np.isfinite(sigma), step / sigma, np.nan)
        known = score[np.isfinite(score)]
        if len(known) > 20:
            usual = max(1.0, robust_sigma(known[:: -(-len(known) // _SAMPLE)]))
            found = np.fmax(found, np.abs(score) / usual)
    top = (found >= np.append(0.0, found[:-1])) & (found > np.append(found[1:], 0.0))
    for back in (2, 3):  # the highest within three points
        top[back:] &= found[back:] >= found[:-back]
        top[:-back] &= found[:-back] > found[back:]
    result: np.ndarray = np.flatnonzero(top & (found > limit) & (at > walk.first))
    return result


def within(xy: np.ndarray, places: np.ndarray, reach: float) -> np.ndarray:
    """Mask (n,) of points ``xy`` (n, 2) that may lie within ``reach`` (m) of one of ``places`` (k, 2), k at least 1.

    By cells of that size: none that does is left out, and few that do not are kept.
    """
    low, high = places.min(axis=0) - reach, places.max(axis=0) + reach
    cell = max(reach, float((high - low).max()) / 2000, 1e-6)
    size = np.ceil((high - low) / cell).astype(np.int32) + 5  # what lies outside goes to the outermost, which stay free

    def cells(xy: np.ndarray) -> np.ndarray:
        column, row = (
            np.clip((xy[:, k] - (low[k] - 2 * cell)) / cell, 0, size[k] - 1).astype(np.int32) for k in (0, 1)
        )
        return column * size[1] + row

    busy = np.zeros(size, bool)
    busy.ravel()[cells(places)] = True
    for axis in (0, 1):
        busy = busy | np.roll(busy, 1, axis) | np.roll(busy, -1, axis)
    mask: np.ndarray = busy.ravel()[cells(xy)]
    return mask


def unevenness(
    walk: Walk, beside: Beside, asked: np.ndarray, trusted: np.ndarray, reach: float, usual: float
) -> np.ndarray:
    """How far (m) the ground around points ``asked`` (k,) departs from straight lines between passes.

    From the steps of other passes within ``reach`` (m) whose points and neighbours are ``trusted`` (q,): what nine in
    ten of them stay within, less ``usual`` (m), which is noise. 0 where too few are near. A bank or a ditch
    that no code tells shows in all passes that cross it.
    """
    if not len(beside.at) or not len(asked) or not np.isfinite(reach):
        return np.zeros(len(asked))
    places = np.column_stack([walk.x, walk.y])
    beside = beside.take(np.flatnonzero(within(places[beside.at], places[asked], reach)))
    whole = np.append(trusted, np.ones(int(max(beside.left.max(initial=0), beside.right.max(initial=0))) + 1, bool))
    fine = whole[beside.at] & whole[beside.at + 1] & whole[beside.left] & whole[beside.right]
    at, over = beside.at[fine], beside.away[fine]
    if len(at) < _FEW:
        return np.zeros(len(asked))
    distance, found = cKDTree(places[at]).query(places[asked], k=min(_AROUND, len(at)), distance_upper_bound=reach)
    near = np.isfinite(distance)
    found = np.where(near, found, 0)
    near &= np.abs(at[found] - asked[:, None]) > _OTHER
    away = np.sort(np.where(near, np.abs(over[found]), np.inf), axis=1)
    count = near.sum(axis=1)
    high = away[np.arange(len(asked)), np.maximum((0.9 * count).astype(np.int64) - 1, 0)]
    high = np.where(count >= _FEW, high, 0.0)
    result: np.ndarray = np.sqrt(np.maximum(high**2 - (2.1 * usual) ** 2, 0.0))
    return result
