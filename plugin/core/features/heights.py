"""Heights of foot and top, and of bends: from the points beside along their slopes, smoothed along the line."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from .bending import corner_weights, make_bending, solve_offsets
from .candidates import STEP
from .jumps import SLOPE_SIGMA, Jumps, side_line
from .nodes import Nodes
from .passes import Passes
from .placing import shares
from .segments import Segments

#: Standard deviation of what all heights of one pass share beside those of the next, in those of a height.
DRIFT = 0.5
#: Squared change of slope for each metre that heights along a line may have.
BENDINGS = np.array([1e-7, 3e-6, 1e-4, 3e-3])
#: Freedom of the heights' distribution, and rounds of reweighting.
HEIGHT_FREEDOM, ROUNDS = 6.0, 3
#: A height that is held counts so many times.
HOLD = 5.0


def measured(
    passes: Passes, noise: np.ndarray, jumps: Jumps, segments: Segments, nodes: Nodes, x: np.ndarray, y: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Heights (n,) of foot and of top of nodes placed at ``x, y`` (n,), and their variances; alike at a bend."""
    n = len(nodes)
    foot, top, foot_var, top_var = np.zeros(n), np.zeros(n), np.ones(n), np.ones(n)
    k = np.flatnonzero((nodes.kind == STEP) & ~nodes.along)
    if len(k):
        foot[k], top[k], foot_var[k], top_var[k] = _beside_gates(passes, noise, jumps, nodes, k, x[k], y[k])
        k = k[np.isfinite(nodes.height[k])]
        foot[k], top[k] = nodes.height[k], nodes.height[k] + nodes.rise[k]
        foot_var[k] = top_var[k] = nodes.height_var[k]
    k = np.flatnonzero((nodes.kind != STEP) & ~nodes.along)
    if len(k):
        foot[k], foot_var[k] = _at_bends(passes, noise, segments, nodes, k, x[k], y[k])
        given = np.isfinite(nodes.height[k])
        foot[k], foot_var[k] = (
            np.where(given, known, own)
            for known, own in ((nodes.height[k], foot[k]), (nodes.height_var[k], foot_var[k]))
        )
        top[k], top_var[k] = foot[k], foot_var[k]
    k = np.flatnonzero(nodes.along)
    for at, height, var in ((nodes.point[k], foot, foot_var), (nodes.other[k], top, top_var)):
        before, after = np.maximum(at - 1, passes.first[at]), np.minimum(at + 1, passes.last[at] - 1)
        height[k] = (passes.z[before] + passes.z[at] + passes.z[after]) / 3
        var[k] = noise[at] ** 2 / 3
    return foot, top, foot_var, top_var


def _walked(passes: Passes, point: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Metres walked (k,) abreast of places near walk points ``point`` (k,)."""
    dx, dy = x - passes.x[point], y - passes.y[point]
    result: np.ndarray = passes.s[point] + dx * passes.ex[point] + dy * passes.ey[point]
    return result


def _beside_gates(
    passes: Passes, noise: np.ndarray, jumps: Jumps, nodes: Nodes, k: np.ndarray, x: np.ndarray, y: np.ndarray
) -> Tuple[np.ndarray, ...]:
    g, q = nodes.point[k], len(passes)
    s = _walked(passes, g, x, y)
    # Points between the gate and the placed line are of neither side.
    end, start = g + 1, g + 1
    for j in (0, -1):
        end = np.where((passes.s[np.clip(g + j, 0, q - 1)] > s) & (end == g + 1 + j), g + j, end)
    for j in (1, 2):
        start = np.where((passes.s[np.clip(g + j, 0, q - 1)] <= s) & (start == g + j), g + j + 1, start)
    low, high = jumps.low[g], jumps.high[g]
    sigma = noise[g]
    behind = side_line(passes, sigma, s, low, np.maximum(end, low + 1), ahead=False)
    ahead = side_line(passes, sigma, s, np.minimum(start, high - 1), high, ahead=True)
    rises = nodes.ex[k] * passes.ex[g] + nodes.ey[k] * passes.ey[g] > 0
    b, a = behind.height_var * sigma**2, ahead.height_var * sigma**2
    return (
        np.where(rises, behind.height, ahead.height), np.where(rises, ahead.height, behind.height),
        np.where(rises, b, a), np.where(rises, a, b),
    )  # fmt: skip


def _at_bends(
    passes: Passes, noise: np.ndarray, segments: Segments, nodes: Nodes, k: np.ndarray, x: np.ndarray, y: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    s = _walked(passes, nodes.point[k], x, y)
    weight, total = np.zeros(len(k)), np.zeros(len(k))
    for point in (nodes.point[k], nodes.other[k]):
        part = segments.of_point[point]
        sigma = noise[point]
        given = (sigma / SLOPE_SIGMA) ** 2
        var = sigma**2 * (1 / segments.count[part] + (s - segments.s[part]) ** 2 / (segments.spread[part] + given))
        weight += 1 / var
        total += (segments.z[part] + segments.slope[part] * (s - segments.s[part])) / var
    return total / weight, 1 / weight


def smooth(
    counts: np.ndarray, run: np.ndarray, height: np.ndarray, var: np.ndarray, held: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """Heights (n,) along lines smoothed as their own scatter allows, and standard deviations.

    ``counts``: nodes of each line; ``run``: (n,) metres along them; ``held``: (n,) bool, not to be smoothed away: what
    a pass shows where a line is bridged. Each change of slope and each height has Student's
    distribution, so that a ramp, or a single wrong height, stays what it is.
    """
    many, n, lines = len(BENDINGS), len(run), len(counts)
    line = np.repeat(np.arange(lines), counts)
    start = height[np.cumsum(counts) - counts][line]
    zero = np.zeros(many * n)
    copies = np.tile(counts, many)
    known, doubt = np.tile(height - start, many), np.tile(var, many)
    at = (np.tile(run, many), zero)
    bending = make_bending(copies, at, (zero, zero + 1), at)
    turning = np.repeat(BENDINGS, n)
    held = np.tile(held, many)
    heavy, weight = np.ones(many * n), np.where(held, HOLD, 1.0)
    for _ in range(ROUNDS):
        stiff = np.where(bending.inner, heavy / (turning * bending.reach), 0.0)
        precision = weight / doubt
        mean, spread, square = solve_offsets(bending, stiff, zero, precision, precision * known)
        heavy = corner_weights(bending, square, turning)
        cavity = np.maximum(1 / spread - precision, 1e-6 / doubt)
        foretold = (mean / spread - precision * known) / cavity
        off = (known - foretold) ** 2 / (doubt + 1 / cavity)
        score = -0.5 * (HEIGHT_FREEDOM + 1) * np.log1p(off / HEIGHT_FREEDOM) - 0.5 * np.log(doubt + 1 / cavity)
        weight = (HEIGHT_FREEDOM + 1) / (HEIGHT_FREEDOM + (known - mean) ** 2 / doubt)
        weight[held] = HOLD
    share = shares(score, line, lines, many)
    mean, spread = mean.reshape(many, n), spread.reshape(many, n)
    middle = (share * mean).sum(axis=0)
    sigma = np.sqrt((share * (spread + (mean - middle) ** 2)).sum(axis=0))
    return middle + start, sigma
