"""Places of a single pass where the ground steps or bends: what several passes must share to make a line."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .jumps import Jumps
from .passes import Passes
from .segments import Segments

STEP, CONVEX, CONCAVE = 0, 1, 2
#: A step stands out from its noise so many times before it is looked at; so does a bend.
LEAST_T, LEAST_BEND_T = 2.5, 3.5
#: A bend may be so far outside its gate (share of the spacing).
OUTSIDE = 0.3
#: A bend is one-sided where the slopes differ in steepness by this share of the bend.
ONE_SIDED = 0.4
#: How far a single low or high point counts to stand out; more where both sides tell its place.
EXTREME_T = 3.0
#: Sides of a ditch or dam are at least so steep.
STEEP_SIDE = 0.25
#: Higher steps (m) could as well be steep sides of a ditch or bank.
STEEP_STEP = 0.16
#: How far the ends of high steps count to stand out as bends.
END_T = 1.9
#: Where a single low or high point of a pass tells of a bend, its place is as doubtful as this share of the gates.
POINT_SHARE = 0.25


@dataclass(frozen=True)
class Candidates:
    """m places on the walk, by the order of the walk.

    ``kind``: (m,) ``STEP``, ``CONVEX`` or ``CONCAVE``. ``gate``: (m,) the place is between walk points gate and
    gate + 1, or near. ``x, y``: (m,) local metres. ``ex, ey``: (m,) direction of walking. ``size``: (m,) height of the
    step in metres, or change of slope; of a step positive where the ground rises ahead. ``t``: (m,) size over its
    standard deviation, unsigned. ``sigma``: (m,) doubt of the place along the pass, metres. ``behind, ahead``: (m,)
    slopes along the walk on both sides.
    """

    kind: np.ndarray
    gate: np.ndarray
    x: np.ndarray
    y: np.ndarray
    ex: np.ndarray
    ey: np.ndarray
    size: np.ndarray
    t: np.ndarray
    sigma: np.ndarray
    behind: np.ndarray
    ahead: np.ndarray

    def __len__(self) -> int:
        return len(self.kind)

    @property
    def side(self) -> np.ndarray:
        """(m,) 1 where the ground rises to a step, or is steeper at a bend, ahead; -1 behind; 0 on both sides alike."""
        steeper = np.abs(self.ahead) - np.abs(self.behind)
        bend = np.where(np.abs(steeper) > ONE_SIDED * self.size, np.sign(steeper), 0)
        return np.where(self.kind == STEP, np.sign(self.size), bend)

    def take(self, which: np.ndarray) -> Candidates:
        """Some of them, by a mask or numbers."""
        return Candidates(*(column[which] for column in self.columns()))

    def columns(self) -> List[np.ndarray]:
        """All columns, in the order of the fields."""
        return [self.kind, self.gate, self.x, self.y, self.ex, self.ey, self.size, self.t, self.sigma, self.behind,
                self.ahead]  # fmt: skip


@dataclass(frozen=True)
class Nearest:
    """The nearest candidates of its kind to each, itself first: their numbers and distances (m, c), inf for none."""

    number: np.ndarray
    away: np.ndarray


def nearest_of_kind(found: Candidates, count: int) -> Nearest:
    """The ``count`` nearest candidates of its kind to each of ``found``, fewer where there are not so many."""
    number, away = np.zeros((len(found), count), np.int64), np.full((len(found), count), np.inf)
    for kind in np.unique(found.kind):
        which = np.flatnonzero(found.kind == kind)
        xy = np.column_stack([found.x[which], found.y[which]])
        tree = cKDTree(xy, compact_nodes=False, balanced_tree=False)
        far, near = tree.query(xy, k=np.arange(1, min(count, len(which)) + 1))
        number[which, : near.shape[1]], away[which, : near.shape[1]] = which[near], far
    return Nearest(number, away)


def find_candidates(
    passes: Passes, noise: np.ndarray, segments: Segments, jumps: Jumps, least_step: float, least_bend: float
) -> Candidates:
    """Steps of at least ``least_step`` metres and bends of at least ``least_bend`` on all passes."""
    steps = _steps(passes, jumps, least_step)
    bends = _bends(passes, noise, segments, least_bend)
    extremes = _extremes(passes, noise, least_step)
    sure = extremes.t > EXTREME_T  # both sides tell where they meet
    bends = together([bends.take(~_doubled(bends, extremes.take(sure))), extremes.take(sure)])
    others = together([_edges(passes, noise, segments, least_step), extremes.take(~sure)])
    others = others.take(~_doubled(others, bends))
    ends = _ends_of_steps(steps)
    ends = ends.take(~_doubled(ends, together([bends, others])))
    every = together([steps, bends, others, ends])
    return every.take(np.argsort(every.gate, kind="stable"))


def together(parts: List[Candidates]) -> Candidates:
    """All candidates of several lists."""
    return Candidates(*(np.concatenate(column) for column in zip(*(part.columns() for part in parts))))


def _doubled(rough: Candidates, fine: Candidates) -> np.ndarray:
    """Mask of the ``rough`` candidates that have a ``fine`` one of their kind within two gates on the same pass."""
    result = np.zeros(len(rough), bool)
    for kind in (CONVEX, CONCAVE):
        gates = np.append(np.sort(fine.gate[fine.kind == kind]), 1 << 60)
        own = rough.kind == kind
        result |= own & (gates[np.searchsorted(gates, rough.gate - 2)] <= rough.gate + 2)
    return result


def _placed(
    passes: Passes, kind: np.ndarray, gate: np.ndarray, s: np.ndarray, size: np.ndarray, t: np.ndarray,
    sigma: np.ndarray, behind: np.ndarray, ahead: np.ndarray,
) -> Candidates:  # fmt: skip
    """Candidates at walked places ``s`` (m,) in or near their gates."""
    after = np.minimum(gate + 1, len(passes) - 1)
    long = np.maximum(passes.s[after] - passes.s[gate], 1e-9)
    share = (s - passes.s[gate]) / long
    dx, dy = passes.x[after] - passes.x[gate], passes.y[after] - passes.y[gate]
    x, y = passes.x[gate] + share * dx, passes.y[gate] + share * dy
    return Candidates(kind, gate, x, y, passes.ex[gate], passes.ey[gate], size, t, sigma, behind, ahead)


def _steps(passes: Passes, jumps: Jumps, least_step: float) -> Candidates:
    size = np.nan_to_num(jumps.size)
    strength = np.abs(jumps.t)
    # Of neighbouring gates with a step the same way the clearest counts.
    same_before = np.append(False, (size[1:] > 0) == (size[:-1] > 0))
    before = np.where(same_before, np.append(0.0, strength[:-1]), 0.0)
    same_after = np.append(same_before[1:], False)
    after = np.where(same_after, np.append(strength[1:], 0.0), 0.0)
    gate = np.flatnonzero(
        jumps.told & (strength >= LEAST_T) & (np.abs(size) >= least_step) & (strength >= before) & (strength > after)
    )
    s = (passes.s[gate] + passes.s[gate + 1]) / 2
    sigma = (passes.s[gate + 1] - passes.s[gate]) / np.sqrt(12)
    zero = np.zeros(len(gate))
    return _placed(passes, np.full(len(gate), STEP), gate, s, size[gate], strength[gate], sigma, zero, zero)


def _bends(passes: Passes, noise: np.ndarray, segments: Segments, least_bend: float) -> Candidates:
    b = np.flatnonzero(segments.breaks[1:] & (segments.count[1:] > 1) & (segments.count[:-1] > 1)) + 1
    a = b - 1
    b, a = (
        b[passes.leg[segments.start[b]] == passes.leg[segments.start[a]]],
        a[passes.leg[segments.start[b]] == passes.leg[segments.start[a]]],
    )
    gate = segments.start[b] - 1
    sigma = noise[gate]
    bend = segments.slope[b] - segments.slope[a]
    with np.errstate(divide="ignore", invalid="ignore"):
        level = segments.z[a] - segments.slope[a] * segments.s[a] - segments.z[b] + segments.slope[b] * segments.s[b]
        meet = level / bend
        var = sum(1 / segments.count[k] + (meet - segments.s[k]) ** 2 / segments.spread[k] for k in (a, b))
        doubt = sigma * np.sqrt(var) / np.abs(bend)
        t = np.abs(bend) / (sigma * np.sqrt(1 / segments.spread[a] + 1 / segments.spread[b]))
        room = OUTSIDE * passes.spacing + 2 * doubt
        good = (meet > passes.s[gate] - room) & (meet < passes.s[gate + 1] + room)
        good &= (np.abs(bend) >= least_bend) & (t >= LEAST_BEND_T) & (doubt < passes.spacing)
    kind = np.where(bend > 0, CONCAVE, CONVEX)
    meet = np.clip(meet, passes.s[gate] - OUTSIDE * passes.spacing, passes.s[gate + 1] + OUTSIDE * passes.spacing)
    every = _placed(
        passes, kind, gate, meet, np.abs(bend), t, np.maximum(doubt, 0.05 * passes.spacing),
        segments.slope[a], segments.slope[b],
    )  # fmt: skip
    return every.take(good)


def _edges(passes: Passes, noise: np.ndarray, segments: Segments, least_step: float) -> Candidates:
    """Where flat ground ends and few points lie on the steep side after it.

    The line through the first two points on the side leads back to the edge. Where they tell nothing, the edge is
    the height of the first point times the run of the side away, and runs of ditches and banks are 0.7 to 2.5 (common
    practice, no source).
    """
    q = len(passes)
    parts = []
    for step in (1, -1):
        flat = np.arange(len(segments.start))
        flat = flat[(flat + step >= 0) & (flat + step < len(segments.start))]
        last = segments.start[flat] + (segments.count[flat] - 1 if step > 0 else 0)
        broken = segments.breaks[np.maximum(flat, flat + step)] & (segments.count[flat] >= 3)
        broken &= passes.leg[np.clip(last + step, 0, q - 1)] == passes.leg[last]
        flat, last = flat[broken], last[broken]
        point = last + step
        level = segments.z[flat] + segments.slope[flat] * (passes.s[point] - segments.s[flat])
        high = passes.z[point] - level
        size = np.abs(high)
        room = np.abs(passes.s[point] - passes.s[last])
        beyond = np.clip(point + step, 0, q - 1)
        apart = np.maximum(np.abs(passes.s[beyond] - passes.s[point]), 0.05)
        rise = (passes.z[beyond] - passes.z[point]) / apart - step * segments.slope[flat]
        led = (passes.leg[beyond] == passes.leg[point]) & (rise * np.sign(high) > np.maximum(size / room, 1 / _RUNS[1]))
        near, far = np.minimum(_RUNS[0] * size, room), np.minimum(_RUNS[1] * size, room)
        back = np.where(led, size / np.maximum(np.abs(rise), 0.1), (near + far) / 2)
        sigma = np.where(led, 0.12 * passes.spacing, np.maximum((far - near) / np.sqrt(12), 0.1 * passes.spacing))
        bend = np.where(led, np.abs(rise), size / np.maximum(back, 0.05))
        t = np.where(led, np.minimum(np.abs(rise) * apart / (2 * noise[point]), 6.0), 2.0)
        slope = segments.slope[flat]
        steep = step * np.sign(high) * bend
        behind, ahead = (slope, slope + steep) if step > 0 else (slope + steep, slope)
        kind = np.where(high > 0, CONCAVE, CONVEX)
        every = _placed(
            passes, kind, np.minimum(last, point), passes.s[point] - step * back, bend, t, sigma, behind, ahead
        )
        clear = (size >= least_step) & (size >= 2.5 * noise[point]) & (led | (size >= 3 * least_step))
        parts.append(every.take(clear))
    return together(parts)


def _ends_of_steps(steps: Candidates) -> Candidates:
    """High steps could as well be steep sides: a convex and a concave bend within the gate."""
    high = steps.take(np.abs(steps.size) >= STEEP_STEP)
    parts = []
    for kind in (CONVEX, CONCAVE):
        columns = high.columns()
        columns[0] = np.full(len(high), kind)
        columns[6] = np.full(len(high), 1.0)
        columns[7] = np.full(len(high), END_T)
        steep = high.size / (np.sqrt(12) * high.sigma)
        first = (high.size > 0) == (kind == CONCAVE)  # is this end passed first
        columns[9] = np.where(first, 0.0, steep)
        columns[10] = np.where(first, steep, 0.0)
        parts.append(Candidates(*columns))
    return together(parts)


def _extremes(passes: Passes, noise: np.ndarray, least_step: float) -> Candidates:
    """Single points well below, or above, the points before and after: a narrow ditch or dam.

    Its middle is that of the depths below (heights above) the line from three points before to three points after.
    """
    at = np.arange(1, len(passes) - 1)
    at = at[(passes.leg[at - 1] == passes.leg[at]) & (passes.leg[at + 1] == passes.leg[at])]
    before, after = passes.z[at - 1] - passes.z[at], passes.z[at + 1] - passes.z[at]
    down, up = np.minimum(before, after), -np.maximum(before, after)
    depth = np.maximum(down, up)
    good = depth >= np.maximum(2 * least_step, LEAST_BEND_T * 1.4 * noise[at])
    at, before, after, depth, down = at[good], before[good], after[good], depth[good], down[good]
    sign = np.where(down > 0, 1.0, -1.0)
    a, b = np.maximum(at - 3, passes.first[at]), np.minimum(at + 3, passes.last[at] - 1)
    slope = (passes.z[b] - passes.z[a]) / np.maximum(passes.s[b] - passes.s[a], 0.1)
    weight, moment, most = np.zeros(len(at)), np.zeros(len(at)), np.zeros(len(at))
    for shift in range(-2, 3):
        j = np.clip(at + shift, a, b)
        deep = np.maximum(sign * (passes.z[a] + slope * (passes.s[j] - passes.s[a]) - passes.z[j]), 0)
        weight += deep
        moment += deep * (passes.s[j] - passes.s[at])
        most = np.maximum(most, deep)
    back, fore = passes.s[at] - passes.s[at - 1], passes.s[at + 1] - passes.s[at]
    off = np.clip(moment / np.maximum(weight, 1e-6), -back, fore)
    size = np.abs(before) / back + np.abs(after) / fore
    kind = np.where(down > 0, CONCAVE, CONVEX)
    sigma = POINT_SHARE * (back + fore) / 2
    meet, doubt = _sides_meet(passes, noise, at, sign)
    sure = np.isfinite(meet) & (np.abs(meet) < 1.3 * np.maximum(back, fore)) & (doubt < sigma)
    off, sigma = np.where(sure, meet, off), np.where(sure, np.maximum(doubt, 0.1 * passes.spacing), sigma)
    t = np.where(sure, 2 * EXTREME_T, EXTREME_T)
    return _placed(passes, kind, at, passes.s[at] + off, size, t, sigma, -before / back, after / fore)


def _sides_meet(passes: Passes, noise: np.ndarray, at: np.ndarray, sign: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Where (k,), metres from points ``at``, the lines through the two points before and after meet, and the doubt.

    nan where these are not steep both, which they must be to be the sides of a ditch (``sign`` 1) or dam (-1).
    """
    far_back, far_fore = np.maximum(at - 2, passes.first[at]), np.minimum(at + 2, passes.last[at] - 1)
    with np.errstate(divide="ignore", invalid="ignore"):
        fall = sign * (passes.z[far_back] - passes.z[at - 1]) / (passes.s[at - 1] - passes.s[far_back])
        rise = sign * (passes.z[far_fore] - passes.z[at + 1]) / (passes.s[far_fore] - passes.s[at + 1])
        left, right = passes.s[at - 1] - passes.s[at], passes.s[at + 1] - passes.s[at]
        level = sign * (passes.z[at - 1] - passes.z[at + 1]) + fall * left + rise * right
        meet = level / (fall + rise)
        doubt = 2.5 * noise[at] / (fall + rise)
    steep = (fall > STEEP_SIDE) & (rise > STEEP_SIDE)
    return np.where(steep, meet, np.nan), np.where(steep, doubt, np.inf)


_RUNS = (0.7, 2.5)
