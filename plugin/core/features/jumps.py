"""How far the profile jumps between two points that follow each other, against the slopes before and behind."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from .passes import CHUNK, Passes
from .segments import Segments

#: Slopes of the ground are of this size (m/m) before any point tells; matters beside one or two points only.
SLOPE_SIGMA = 0.15
#: Points on one side of a gate that its slope may rest on: as many as agree with the nearest.
REACHES = (3, 4, 6, 8)
#: A line through more points agrees with one through fewer if they differ by so many standard deviations at most.
AGREE = 1.8
#: Where the lines before and behind come so near to meeting within a gate (share of the jump) it is a bend.
MEET = 0.15


@dataclass(frozen=True)
class Side:
    """The line through the points on one side of g gates, at a place: its height, slope, the variance of both (in units
    of the variance of a height), their covariance, and the number of points."""

    height: np.ndarray
    slope: np.ndarray
    height_var: np.ndarray
    slope_var: np.ndarray
    cov: np.ndarray
    count: np.ndarray

    def at(self, ds: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Height and its variance ``ds`` (g,) metres further on."""
        return self.height + self.slope * ds, self.height_var + 2 * ds * self.cov + ds * ds * self.slope_var


@dataclass(frozen=True)
class Jumps:
    """The jump at each gate (q,), between point i and i + 1 of the walk.

    ``size``: metres, positive where the ground rises ahead; nan where a leg ends. ``t``: size over its standard
    deviation; 0 where the lines before and behind meet within the gate, which is a bend and no jump. ``sigma``: metres.
    ``low, high``: (q,) bounds [low, high) of the points that may tell about the gate without a break between.
    """

    size: np.ndarray
    t: np.ndarray
    sigma: np.ndarray
    low: np.ndarray
    high: np.ndarray

    @property
    def told(self) -> np.ndarray:
        """Mask (q,) of the gates with at least two points on either side that tell."""
        at = np.arange(len(self.low))
        return (at - self.low >= 1) & (self.high - at >= 3)


def side_line(
    passes: Passes, noise: np.ndarray, at: np.ndarray, start: np.ndarray, end: np.ndarray, ahead: bool
) -> Side:
    """Lines at walked places ``at`` (g,) through points [start, end) (g,): the nearest that agree.

    ``ahead``: the points lie ahead, from ``start`` on; else behind, up to ``end``. ``noise``: (g,) of a height, metres.
    A slope of size ``SLOPE_SIGMA`` is expected beforehand. More points are taken as long as their line agrees with
    that of fewer (Lepski's way to choose a window; Goldenshluger and Nemirovski 1997, from memory).
    """
    q = len(passes)
    sums = np.zeros((5, len(at)))
    zero = passes.z[np.clip(start if ahead else end - 1, 0, q - 1)]
    given = (noise / SLOPE_SIGMA) ** 2
    best = np.zeros((6, len(at)))
    open_ = np.ones(len(at), bool)
    for k in range(REACHES[-1]):
        j = np.clip(start + k if ahead else end - 1 - k, 0, q - 1)
        w = (k < end - start).astype(float)
        s, z = passes.s[j] - at, passes.z[j] - zero
        ws = w * s
        sums += (w, ws, w * z, ws * s, ws * z)
        if k + 1 not in REACHES:
            continue
        line = _fit(sums, given)
        if k + 1 > REACHES[0]:
            spread = np.sqrt(np.maximum(best[2] - line[2], 0)) * noise
            open_ &= np.abs(line[0] - best[0]) <= AGREE * spread + 1e-9
            line = np.where(open_, line, best)
        best = line
    height, slope, height_var, slope_var, cov, n = best
    return Side(zero + height, slope, height_var, slope_var, cov, n)


def _fit(sums: np.ndarray, given: np.ndarray) -> np.ndarray:
    """Height and slope at the gate, their variances and covariance, and the number (6, g) from sums of points."""
    n, fs, fz, fss, fsz = sums
    safe = np.maximum(n, 1)
    s, z = fs / safe, fz / safe
    slope_var = 1 / (fss - fs * s + given)
    slope = (fsz - fs * z) * slope_var
    height_var = np.where(n > 0, 1 / safe + s * s * slope_var, 1e6)
    return np.array([z - slope * s, slope, height_var, slope_var, -s * slope_var, n])


def jumps_at_gates(passes: Passes, noise: np.ndarray, segments: Segments) -> Jumps:
    """The jump at every gate; its standard deviation is at least what the ranks of all jumps tell."""
    q = len(passes)
    low, high = _windows(passes, segments)
    size, t, sigma = (np.full(q, np.nan) for _ in range(3))
    for a in range(0, q - 1, CHUNK):
        some = np.arange(a, min(a + CHUNK, q - 1))
        size[some], t[some], sigma[some] = _jump(passes, noise, some, low, high)
    known = np.isfinite(size)
    relative = np.abs(size[known]) / sigma[known]
    scale = max(1.0, float(np.median(relative)) / 0.6745) if known.any() else 1.0
    return Jumps(size, np.nan_to_num(t) / scale, sigma * scale, low, high)


def _windows(passes: Passes, segments: Segments) -> Tuple[np.ndarray, np.ndarray]:
    """For the gate after each point: the first point behind and the end of those ahead, no break between."""
    q = len(passes)
    number = np.cumsum(segments.breaks) - 1
    starts = segments.start[segments.breaks]
    ends = np.append(starts[1:], q)
    run = number[segments.of_point]
    ahead = np.minimum(np.arange(q) + 1, q - 1)
    return starts[run], ends[run[ahead]]


def jump_across(
    passes: Passes, noise: np.ndarray, jumps: Jumps, gates: np.ndarray, skip: int
) -> Tuple[np.ndarray, np.ndarray]:
    """The jump from points ``gates`` to those ``skip`` + 1 further on: size (g,) and size over standard deviation (g,).

    The points between tell nothing. nan where the leg ends.
    """
    size, t, _ = _jump(passes, noise, gates, jumps.low, jumps.high, skip)
    return size, t


def _jump(
    passes: Passes, noise: np.ndarray, gates: np.ndarray, low: np.ndarray, high: np.ndarray, skip: int = 0
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    beyond = gates + 1 + skip
    middle = (passes.s[gates] + passes.s[beyond]) / 2
    half = (passes.s[beyond] - passes.s[gates]) / 2
    sigma = noise[gates]
    behind = side_line(passes, sigma, middle, low[gates], gates + 1, ahead=False)
    ahead = side_line(passes, sigma, middle, beyond, high[gates + skip], ahead=True)
    size = ahead.height - behind.height
    bend = ahead.slope - behind.slope
    sd = sigma * np.sqrt(ahead.height_var + behind.height_var)
    least = np.abs(size) - np.abs(bend) * half
    whole = passes.leg[gates] == passes.leg[beyond]
    t = np.where(least > MEET * np.abs(size), size / sd, 0.0)
    return np.where(whole, size, np.nan), np.where(whole, t, np.nan), sd
