"""Each leg as straight pieces of ground: where its profile breaks.

Optimal partitioning (Jackson et al. 2005, An algorithm for optimal partitioning of data on an interval): of all ways to
cut the profile into straight pieces the one with the least sum of squared residuals and a price for every piece. Many
blocks of the walk are done side by side.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from .passes import Passes

#: Price of a piece, in squared standard deviations of a height; of its slope beside it.
PRICE, SLOPE_PRICE = 10.0, 4.0
#: Most points of a piece; longer ones are cut where nothing breaks.
LONGEST = 12
_INNER, _LEAD = 144, 16
_BLOCKS = 96


@dataclass(frozen=True)
class Segments:
    """p straight pieces in the order of the walk.

    ``start, count``: (p,) first point and number of points. ``s, z, slope``: (p,) the line through them: its middle and
    its rise. ``spread``: (p,) sum of squared distances of the points from the middle along the walk, square metres.
    ``of_point``: (q,) the piece of each point. ``breaks``: (p,) bool, the profile breaks where this piece starts.
    """

    start: np.ndarray
    count: np.ndarray
    s: np.ndarray
    z: np.ndarray
    slope: np.ndarray
    spread: np.ndarray
    of_point: np.ndarray
    breaks: np.ndarray


def cut_into_segments(passes: Passes, noise: np.ndarray) -> Segments:
    """The straight pieces of all legs; ``noise`` (q,): standard deviation of each height, metres."""
    q = len(passes)
    new = passes.first == np.arange(q)
    blocks = np.arange(0, q, _INNER)
    for at in range(0, len(blocks), _BLOCKS):
        _cut_blocks(passes, noise, blocks[at : at + _BLOCKS], new)
    start = np.flatnonzero(new)
    of_point = np.cumsum(new) - 1
    count = np.diff(np.append(start, q))
    sums = _sums(passes, start, count, of_point)
    return _with_breaks(passes, noise, start, count, of_point, sums)


def _cut_blocks(passes: Passes, noise: np.ndarray, blocks: np.ndarray, new: np.ndarray) -> None:
    """Marks in ``new`` (q,) where pieces start in blocks that begin at points ``blocks`` (b,)."""
    q, rows = len(passes), _INNER + 2 * _LEAD
    raw = blocks - _LEAD + np.arange(rows)[:, None]
    at = np.clip(raw, 0, q - 1)
    inside = np.where(raw == at, np.minimum(raw - passes.first[at] + 1, np.arange(rows)[:, None] + 1), 1)
    s = passes.s[at] - passes.s[at[rows // 2]]
    z = passes.z[at] - passes.z[at[rows // 2]]
    weight = noise[at] ** -2.0
    sums = [np.cumsum(np.vstack([np.zeros(len(blocks)), v]), axis=0) for v in (s, z, s * s, s * z, z * z)]
    best = np.zeros((rows + 1, len(blocks)))
    length = np.ones((rows, len(blocks)), np.int8)
    cost = np.full((LONGEST, rows, len(blocks)), np.inf)
    cost[0] = PRICE
    for k in range(2, LONGEST + 1):
        fs, fz, fss, fsz, fzz = (v[k:] - v[:-k] for v in sums)
        sss = np.maximum(fss - fs * fs / k, 1e-9)
        residual = fzz - fz * fz / k - (fsz - fs * fz / k) ** 2 / sss
        here = np.maximum(residual, 0) * weight[k - 1 :] + (PRICE + SLOPE_PRICE)
        cost[k - 1, k - 1 :] = np.where(inside[k - 1 :] >= k, here, np.inf)
    for t in range(rows):
        k = min(LONGEST, t + 1)
        ways = best[t - k + 1 : t + 1][::-1] + cost[:k, t]
        which = ways.argmin(axis=0)
        length[t] = which + 1
        best[t + 1] = ways[which, np.arange(len(blocks))]
    column = np.arange(len(blocks))
    end = np.full(len(blocks), rows - 1)
    while len(end):
        begin = end - length[end, column] + 1
        at = raw[begin, column]
        new[at[(begin >= _LEAD) & (begin < _LEAD + _INNER) & (at < q)]] = True
        end = begin - 1
        keep = end >= _LEAD
        end, column = end[keep], column[keep]


def _sums(passes: Passes, start: np.ndarray, count: np.ndarray, of_point: np.ndarray) -> np.ndarray:
    """Sums (6, p) of each piece from its first point: s, z, s², s z, z² and the number."""
    s, z = passes.s - passes.s[start][of_point], passes.z - passes.z[start][of_point]
    columns = [s, z, s * s, s * z, z * z]
    return np.vstack([np.add.reduceat(column, start) for column in columns] + [count.astype(float)])


def _line(sums: np.ndarray) -> tuple:
    """Middle, height there, slope, spread and squared residuals of points with these sums."""
    fs, fz, fss, fsz, fzz, n = sums
    spread = np.maximum(fss - fs * fs / n, 0)
    cross = fsz - fs * fz / n
    slope = np.where(spread > 1e-9, cross / np.maximum(spread, 1e-9), 0.0)
    return fs / n, fz / n, slope, spread, np.maximum(fzz - fz * fz / n - slope * cross, 0)


def _with_breaks(
    passes: Passes, noise: np.ndarray, start: np.ndarray, count: np.ndarray, of_point: np.ndarray, sums: np.ndarray
) -> Segments:
    s, z, slope, spread, residual = _line(sums)
    # The sums of the piece before, counted from this one's first point.
    ds, dz = passes.s[start[:-1]] - passes.s[start[1:]], passes.z[start[:-1]] - passes.z[start[1:]]
    a = sums[:, :-1]
    n = a[5]
    moved = np.vstack([
        a[0] + n * ds, a[1] + n * dz, a[2] + 2 * ds * a[0] + n * ds**2,
        a[3] + ds * a[1] + dz * a[0] + n * ds * dz, a[4] + 2 * dz * a[1] + n * dz**2, n,
    ])  # fmt: skip
    joined = _line(moved + sums[:, 1:])[4]
    excess = (joined - residual[:-1] - residual[1:]) / noise[start[1:]] ** 2
    breaks = np.append(True, (excess > PRICE) | (passes.leg[start[1:]] != passes.leg[start[:-1]]))
    return Segments(start, count, passes.s[start] + s, passes.z[start] + z, slope, spread, of_point, breaks)
