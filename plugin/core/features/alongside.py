"""Runs that are walked along a line: foot and top of a step side by side, the bottom of a ditch, a crest."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.special import erfc

from .beside import Beside
from .candidates import CONCAVE, CONVEX, STEP
from .passes import Passes

#: Passes so near (m) may be foot and top of a step.
NEAR = 1.0
#: Least cosine between two passes that follow the same line.
PARALLEL = 0.85
#: Decades that one place of a run counts at most: those of one run do not tell independently.
MOST_DECADES = 0.8
#: So many places in a row make a run; so many others may lie between.
LEAST_RUN, MOST_MISSED = 4, 2
#: A slope that goes on beyond the neighbouring pass so much (share) is no edge of a ditch.
GOES_ON = 0.6
#: Points by which a run is drawn on beyond its last place.
_FURTHER = 8
#: Doubt (m) that a walker stays on the line.
ON_LINE = 0.1


@dataclass(frozen=True)
class Run:
    """k places of one pass along a line.

    ``kind``; ``point``: (k,) points of the walk; ``other``: (k,) the point of the other pass of a step, -1 for a bend;
    ``size``: (k,) height of the step (positive where the other pass is higher) or depth; ``decades``: (k,) how unlikely
    this is on even ground.
    """

    kind: int
    point: np.ndarray
    other: np.ndarray
    size: np.ndarray
    decades: np.ndarray


def find_runs(passes: Passes, noise: np.ndarray, beside: Beside, least_step: float) -> List[Run]:
    """All runs along steps, ditches and crests."""
    runs = []
    for side in (0, 1):
        size, t = _steps_beside(passes, noise, beside, side, least_step)
        # Each pair of passes is seen from both: from the lower one it counts.
        for number in _runs(passes, beside, np.where(size > 0, t, 0.0)):
            run = _run(beside, STEP, number, beside.near[number, side], size[number], t[number])
            runs.append(_to_the_end(passes, run))
    depth, t = _depths(passes, noise, beside, least_step)
    for kind, sign in ((CONCAVE, 1), (CONVEX, -1)):
        for number in _runs(passes, beside, np.where(sign * depth > 0, t, 0.0)):
            none = np.full(len(number), -1)
            run = _run(beside, kind, number, none, np.abs(depth[number]), t[number])
            runs.append(_to_the_end(passes, run))
    return runs


def _to_the_end(passes: Passes, run: Run) -> Run:
    """The run drawn on beyond its last places, point by point, as far as the pass does the same."""
    point, other, size = run.point, run.other, float(np.median(run.size))
    bend = run.kind != STEP
    more: List[Tuple[int, int, int]] = []
    for end in (0, -1):
        way = -1 if end == 0 else 1
        i, j = int(point[end]), int(other[end])
        turn = way * (1 if bend or passes.ex[i] * passes.ex[j] + passes.ey[i] * passes.ey[j] > 0 else -1)
        along = float(np.median(np.diff(_level(passes, point)) / np.maximum(np.diff(point), 1)))
        last = None
        for k in range(1, _FURTHER + 1):
            a, b = i + way * k, j + turn * k
            if not passes.first[i] <= a < passes.last[i] or not (bend or passes.first[j] <= b < passes.last[j]):
                break
            if bend and abs(passes.z[a] - passes.z[i] - along * way * k) > 0.35 * size:
                break
            if not bend and abs(passes.z[b] - passes.z[a] - size) > 0.5 * size:
                break
            if not bend and np.hypot(passes.x[a] - passes.x[b], passes.y[a] - passes.y[b]) > NEAR:
                break
            last = (a, b if not bend else -1, end)
        if last:
            more.append(last)
    for a, b, end in more:
        where = 0 if end == 0 else len(point)
        point, other = np.insert(point, where, a), np.insert(other, where, b)
        run = Run(run.kind, point, other, np.insert(run.size, where, run.size[end]), np.insert(run.decades, where, 0.0))
    return run


def _run(beside: Beside, kind: int, number: np.ndarray, other: np.ndarray, size: np.ndarray, t: np.ndarray) -> Run:
    decades = np.minimum(-np.log10(np.maximum(0.5 * erfc(t / np.sqrt(2)), 1e-9)), MOST_DECADES)
    return Run(kind, beside.at[number], other, size, decades)


def _slope(
    passes: Passes, a: np.ndarray, beside: Beside, column: int, number: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """Rise (m/m) from the places ``number`` of ``beside`` to their neighbours in ``column``, nan without one."""
    near, away = beside.near[number, column], beside.away[number, column]
    rise = np.where(near >= 0, (passes.z[np.maximum(near, 0)] - passes.z[a]) / np.maximum(away, 0.05), np.nan)
    return rise, away


def _level(passes: Passes, at: np.ndarray) -> np.ndarray:
    """Height at points (k,): the mean of the point and those before and after on its leg."""
    before = np.maximum(at - 1, passes.first[at])
    after = np.minimum(at + 1, passes.last[at] - 1)
    result: np.ndarray = (passes.z[before] + passes.z[at] + passes.z[after]) / 3
    return result


def _steps_beside(
    passes: Passes, noise: np.ndarray, beside: Beside, side: int, least_step: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Height (h,) of the step to the pass beside, and how far it stands out from noise and slopes; 0 for none."""
    near, away = beside.near[:, side], beside.away[:, side]
    pair = (near >= 0) & (away <= NEAR) & (beside.parallel[:, side] > PARALLEL)
    safe = np.maximum(near, 0)
    rise = np.where(pair, _level(passes, safe) - _level(passes, beside.at), 0.0)
    # Slope away from the step on this pass's other side, and of the walk itself.
    outer, far = _slope(passes, beside.at, beside, 1 - side, np.arange(len(near)))
    outer = np.where((far > 0.5), np.abs(outer), np.nan)
    slope = np.where(np.isfinite(outer), np.abs(outer), 0.15)
    left = np.abs(rise) - slope * away
    sigma = 1.2 * noise[beside.at]
    t = np.where(pair & (np.abs(rise) >= least_step) & (left > 0.5 * np.abs(rise)), left / sigma, 0.0)
    return rise, t


def _depths(passes: Passes, noise: np.ndarray, beside: Beside, least_step: float) -> Tuple[np.ndarray, np.ndarray]:
    """How far (h,) the walk lies below (positive) or above the line between its neighbours; and t."""
    both = (beside.near >= 0).all(axis=1)
    level = _level(passes, beside.at)
    safe = np.maximum(beside.near, 0)
    height = passes.z[safe]
    away = np.maximum(np.where(both[:, None], beside.away, 1.0), 0.05)
    share = away[:, 0] / away.sum(axis=1)
    depth = np.where(both, (1 - share) * height[:, 0] + share * height[:, 1] - level, 0.0)
    inner = np.where(both[:, None], (height - level[:, None]) / away, 0.0)
    # What goes on beyond the neighbours: a valley does, a ditch does not.
    stride = np.searchsorted(beside.at, safe)
    number = np.clip(stride, 0, len(beside.at) - 1)
    ends = np.zeros(inner.shape, bool)
    for side in (0, 1):
        k = number[:, side]
        same = passes.leg[beside.at[k]] == passes.leg[safe[:, side]]
        cosine = passes.ex[beside.at] * passes.ex[beside.at[k]] + passes.ey[beside.at] * passes.ey[beside.at[k]]
        outward = np.where(cosine > 0, side, 1 - side)
        near, away2 = beside.near[k, outward], beside.away[k, outward]
        rise = (passes.z[np.maximum(near, 0)] - passes.z[safe[:, side]]) / np.maximum(away2, 0.05)
        known = same & (near >= 0) & (np.abs(cosine) > 0.5)
        # A pass that comes across tells itself how it goes on.
        onward, far = _onward(passes, beside.at, safe[:, side])
        crossing = (np.abs(cosine) <= 0.5) & (far > 0.2)
        rise = np.where(crossing, (passes.z[onward] - passes.z[safe[:, side]]) / np.maximum(far, 0.2), rise)
        known |= crossing
        ends[:, side] = np.where(known, rise * np.sign(depth) < GOES_ON * np.abs(inner[:, side]), False)
    steep = (inner * np.sign(depth)[:, None] > 0.25).all(axis=1)
    way = (inner * np.sign(depth)[:, None] > 0.02).all(axis=1)
    bend = np.abs(inner.sum(axis=1))
    sharp = way & (steep | ends.all(axis=1)) & (bend > 0.08)
    sigma = 1.3 * noise[beside.at]
    t = np.where(sharp & (np.abs(depth) >= 3 * least_step), np.abs(depth) / sigma, 0.0)
    return depth, np.where(t > 4, t, 0.0)


def _onward(passes: Passes, at: np.ndarray, near: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The point three further on the pass of ``near`` (h,), away from ``at``, and its distance from ``near``."""
    away = (passes.x[near] - passes.x[at]) * passes.ex[near] + (passes.y[near] - passes.y[at]) * passes.ey[near]
    onward = np.clip(near + np.where(away > 0, 3, -3), passes.first[near], passes.last[near] - 1)
    return onward, np.hypot(passes.x[onward] - passes.x[near], passes.y[onward] - passes.y[near])


def _runs(passes: Passes, beside: Beside, t: np.ndarray) -> List[np.ndarray]:
    """Stretches of one leg whose places mostly have a ``t`` (h,): the numbers of those that have."""
    has = np.flatnonzero(t > 2.5)
    if not len(has):
        return []
    apart = (np.diff(has) > MOST_MISSED + 1) | (np.diff(passes.leg[beside.at[has]]) != 0)
    parts = np.split(has, np.flatnonzero(apart) + 1)
    return [part for part in parts if len(part) >= LEAST_RUN and len(part) >= 0.6 * (part[-1] - part[0] + 1)]
