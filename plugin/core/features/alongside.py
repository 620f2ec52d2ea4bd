"""Runs that are walked along a line: foot and top of a step side by side, the bottom of a ditch, a crest."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.special import erfc

from .beside import Beside
from .candidates import CONCAVE, CONVEX, STEP
from .groups import group_median
from .passes import Passes

#: Passes so near (m) may be foot and top of a step.
NEAR = 1.0
#: Least cosine between two passes that follow the same line.
PARALLEL = 0.85
#: Decades that one place of a run counts at most: those of one run do not tell independently.
MOST_DECADES = 0.8
#: Standard deviation of the difference of two passes' levels, drift between them included, in those of a height.
LEVEL_SIGMA = 1.1
#: A place of a run stands out at least so far; many in a row tell.
LEAST_RUN_T = 1.6
#: So many places make a run; so many others may lie between two of them, and such a share of all must be of it.
LEAST_RUN, MOST_MISSED, LEAST_SHARE = 4, 3, 0.45
#: A slope that goes on beyond the neighbouring pass so much (share) is no edge of a ditch.
GOES_ON = 0.6
#: Points by which a run is drawn on beyond its last place; a bottom is where so many before the last few of them lead.
_FURTHER, _BEFORE, _LAST = 60, 12, 4
#: Doubt (m) that a walker stays on the line.
ON_LINE = 0.1


@dataclass(frozen=True)
class Runs:
    """n places of r runs, one run after another, each of one pass along a line.

    ``counts``: (r,) places of each. ``kind``: (n,); ``point``: (n,) points of the walk; ``other``: (n,) the point of
    the other pass of a step, the same point for a bend; ``size``: (n,) height of the step, or depth; ``decades``: (n,)
    how unlikely this is on even ground.
    """

    counts: np.ndarray
    kind: np.ndarray
    point: np.ndarray
    other: np.ndarray
    size: np.ndarray
    decades: np.ndarray


def find_runs(passes: Passes, noise: np.ndarray, beside: Beside, least_step: float) -> Runs:
    """All runs along steps, ditches and crests."""
    parts = []
    further = _further_along(passes, beside)
    for side in (0, 1):
        size, t = _steps_beside(passes, noise, beside, side, further, least_step)
        # Each pair of passes is seen from both: from the lower one it counts.
        parts.append(
            _table(beside, STEP, _runs(passes, beside, np.where(size > 0, t, 0.0)), beside.near[:, side], size, t)
        )
    depth, t = _depths(passes, noise, beside, further, least_step)
    for kind, sign in ((CONCAVE, 1), (CONVEX, -1)):
        found = _runs(passes, beside, np.where(sign * depth > 0, t, 0.0))
        parts.append(_table(beside, kind, found, beside.at, np.abs(depth), t))
    return _to_the_ends(passes, Runs(*(np.concatenate(column) for column in zip(*parts))))


def _table(
    beside: Beside, kind: int, runs: List[np.ndarray], other: np.ndarray, size: np.ndarray, t: np.ndarray
) -> Tuple[np.ndarray, ...]:
    number = np.concatenate(runs) if runs else np.empty(0, np.int64)
    counts = np.array([len(run) for run in runs], np.int64)
    unlikely = -np.log10(np.maximum(0.5 * erfc(t[number] / np.sqrt(2)), 1e-9))
    kinds = np.full(len(number), kind)
    return counts, kinds, beside.at[number], other[number], size[number], np.minimum(unlikely, MOST_DECADES)


def _to_the_ends(passes: Passes, runs: Runs) -> Runs:
    """The runs drawn on beyond their ends, point by point, as far as the pass does the same."""
    many = len(runs.counts)
    if not many:
        return runs
    of = np.repeat(np.arange(many), runs.counts)
    usual = group_median(runs.size, of, many)
    end = np.cumsum(runs.counts)
    new: List[np.ndarray] = []
    for row, way in ((end - runs.counts, -1), (end - 1, 1)):
        i, j = runs.point[row], runs.other[row]
        bend = runs.kind[row] != STEP
        same = passes.ex[i] * passes.ex[j] + passes.ey[i] * passes.ey[j] > 0
        turn = np.where(bend | same, way, -way)
        ok = np.ones(many, bool)
        span = np.abs(i - runs.point[row - way * (LEAST_RUN - 1)])
        before = np.minimum(span, _BEFORE)
        last, missed = np.zeros(many, np.int64), np.zeros(many, np.int64)
        for k in range(1, _FURTHER + 1):
            a, b = i + way * k, j + turn * k
            ok &= (a >= passes.first[i]) & (a < passes.last[i]) & (b >= passes.first[j]) & (b < passes.last[j])
            a, b = np.where(ok, a, i), np.where(ok, b, j)
            base = np.where(ok, i + way * max(k - _LAST, 0), i)
            fall = (passes.z[base] - passes.z[base - way * before]) / before
            alike = np.abs(passes.z[a] - passes.z[base] - fall * np.abs(a - base)) <= 0.35 * usual
            step = np.abs(_level(passes, b) - _level(passes, a) - usual) <= 0.5 * usual
            step &= np.hypot(passes.x[a] - passes.x[b], passes.y[a] - passes.y[b]) <= NEAR
            like = np.where(bend, alike, step)
            missed = np.where(like, 0, missed + 1)
            ok &= missed <= MOST_MISSED
            last[ok & like] = k
        more = np.flatnonzero(last)
        new.append(
            np.column_stack([row[more] + 0.4 * way, i[more] + way * last[more], (j + turn * last)[more], row[more]])
        )
    place = np.concatenate([np.arange(len(of)), new[0][:, 0], new[1][:, 0]])
    extra = np.concatenate([new[0][:, 1:], new[1][:, 1:]]).astype(np.int64)
    order = np.argsort(place, kind="stable")
    like = np.append(np.arange(len(of)), extra[:, 2])[order]
    added = order >= len(of)
    return Runs(
        counts=np.bincount(of[like], minlength=many), kind=runs.kind[like],
        point=np.append(runs.point, extra[:, 0])[order], other=np.append(runs.other, extra[:, 1])[order],
        size=runs.size[like], decades=np.where(added, 0.0, runs.decades[like]),
    )  # fmt: skip


def _slope(
    passes: Passes, a: np.ndarray, beside: Beside, column: int, number: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """Rise (m/m) from the places ``number`` of ``beside`` to their neighbours in ``column``, nan without one."""
    near, away = beside.near[number, column], beside.away[number, column]
    rise = np.where(near >= 0, (passes.z[np.maximum(near, 0)] - passes.z[a]) / np.maximum(away, 0.05), np.nan)
    return rise, away


def _further_along(passes: Passes, beside: Beside) -> np.ndarray:
    """Height (h, 2) by which the walk at ``beside.at`` rises as far along it as the points beside lie further on.

    Without it a steep walk whose neighbours all lie a little behind would look like a crest.
    """
    at, near = beside.at[:, None], np.maximum(beside.near, 0)
    before, after = np.maximum(at - 2, passes.first[at]), np.minimum(at + 2, passes.last[at] - 1)
    rise = (passes.z[after] - passes.z[before]) / np.maximum(passes.s[after] - passes.s[before], 0.05)
    along = (passes.x[near] - passes.x[at]) * passes.ex[at] + (passes.y[near] - passes.y[at]) * passes.ey[at]
    result: np.ndarray = np.where(beside.near >= 0, rise * along, 0.0)
    return result


def _level(passes: Passes, at: np.ndarray) -> np.ndarray:
    """Height at points (k,): the mean of the point and the two before and after on its leg."""
    total = passes.z[at].copy()
    for shift in (1, 2):
        before, after = at - shift, at + shift
        whole = (before >= passes.first[at]) & (after < passes.last[at])  # both or none, or slopes tell
        total += np.where(whole, passes.z[np.maximum(before, 0)], passes.z[at])
        total += np.where(whole, passes.z[np.minimum(after, len(passes) - 1)], passes.z[at])
    result: np.ndarray = total / 5
    return result


def _steps_beside(
    passes: Passes, noise: np.ndarray, beside: Beside, side: int, further: np.ndarray, least_step: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Height (h,) of the step to the pass beside, and how far it stands out from noise and slopes; 0 for none."""
    near, away = beside.near[:, side], beside.away[:, side]
    pair = (near >= 0) & (away <= NEAR) & (beside.parallel[:, side] > PARALLEL)
    safe = np.maximum(near, 0)
    rise = np.where(pair, _level(passes, safe) - further[:, side] - _level(passes, beside.at), 0.0)
    # Slope away from the step on this pass's other side, and of the walk itself.
    outer, far = _slope(passes, beside.at, beside, 1 - side, np.arange(len(near)))
    outer = np.where((far > 0.5), np.abs(outer), np.nan)
    slope = np.where(np.isfinite(outer), np.abs(outer), 0.15)
    left = np.abs(rise) - slope * np.where(pair, away, 0.0)
    sigma = LEVEL_SIGMA * noise[beside.at]
    t = np.where(pair & (np.abs(rise) >= least_step) & (left > 0.5 * np.abs(rise)), left / sigma, 0.0)
    return rise, t


def _depths(
    passes: Passes, noise: np.ndarray, beside: Beside, further: np.ndarray, least_step: float
) -> Tuple[np.ndarray, np.ndarray]:
    """How far (h,) the walk lies below (positive) or above the line between its neighbours; and t."""
    both = (beside.near >= 0).all(axis=1)
    level = _level(passes, beside.at)
    safe = np.maximum(beside.near, 0)
    height = passes.z[safe] - further
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
    way = (inner * np.sign(depth)[:, None] > 0.02).all(axis=1)
    bend = np.abs(inner.sum(axis=1))
    sharp = way & ends.all(axis=1) & (bend > 0.08)
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
    has = np.flatnonzero(t > LEAST_RUN_T)
    if not len(has):
        return []
    apart = (np.diff(has) > MOST_MISSED + 1) | (np.diff(passes.leg[beside.at[has]]) != 0)
    parts = np.split(has, np.flatnonzero(apart) + 1)
    return [part for part in parts if len(part) >= LEAST_RUN and len(part) >= LEAST_SHARE * (part[-1] - part[0] + 1)]
