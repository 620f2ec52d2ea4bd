"""Runs of points of a line that stand off the rest of it: found one by one, the clearest first."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Optional, Tuple

import numpy as np

_WINDOW = 5  # points on either side of a run that tell where the line goes
_LONGEST = 80  # points of a run
_MOST = 30  # runs of one line
_CLEAR = 4.5  # standard deviations
_APART = 5.0  # m along the line at which the ground's errors are independent
_STEP = 2  # points on either side of an end that tell how it steps
_STEEP = 0.5  # of the offset: a step
_AROUND, _FAR, _NEAR = 8, 4, 2  # points: that tell the line's slope; an end may move outwards, inwards
_OWN_STEP = 0.4  # of the offset: a step of the line's own heights
_BETTER = 1.5  # times the step at which an end was found
_SURE = 3.0  # standard deviations of a step


@dataclass(frozen=True)
class Heights:
    """What a line is searched in: ``station`` (k,) m along it, ``height`` (k,) m over what it is held to.

    ``doubt``: (k,) standard deviation of what it is held to, m, shared by points beside each other. ``white``: noise of
    one point, m. ``drift``: how far, m, the heights wander; ``slope``: and how steeply.
    """

    station: np.ndarray
    height: np.ndarray
    doubt: np.ndarray
    white: float
    drift: float
    slope: float


@dataclass(frozen=True)
class Run:
    """Points [start, end) of a line, ``offset`` m off it, with its standard deviation ``sigma``.

    ``steps``: whether it steps at its start and at its end; None at an end of the line.
    """

    start: int
    end: int
    offset: float
    sigma: float
    steps: Tuple[object, object]

    @property
    def steep(self) -> int:
        """How many ends step."""
        return sum(step is True for step in self.steps)

    @property
    def inner(self) -> int:
        """How many ends are not ends of the line."""
        return sum(step is not None for step in self.steps)


def find_runs(heights: Heights, least: float) -> List[Run]:
    """Runs of at most half of the points that are off by ``least`` (m) or more and step at one end at least."""
    k = len(heights.height)
    z, free = heights.height.copy(), np.ones(k, bool)
    start, end = _candidates(k)
    found: List[Run] = []
    for _ in range(_MOST):
        taken = np.append(0, np.cumsum(~free))
        open_ = taken[end] == taken[start]
        offset, sigma, gain = _offsets(heights, z, start[open_], end[open_])
        gain[(np.abs(offset) < least) | (np.abs(offset) < _CLEAR * sigma)] = -np.inf
        if not len(gain) or gain.max() == -np.inf:
            break
        best = int(np.argmax(gain))
        a, b, by = int(start[open_][best]), int(end[open_][best]), float(offset[best])
        steps = _steps(heights, z, a, b, by)
        if any(step is True for step in steps):
            found.append(Run(a, b, by, float(sigma[best]), steps))
            z[a:b] -= by
        free[a:b] = False
    return sorted(found, key=lambda run: run.start)


def settle(run: Run, station: np.ndarray, z: np.ndarray) -> Optional[Run]:
    """The run with its ends where the line's own heights ``z`` (k,) step the most; None where they step nowhere.

    A drive or a fault of the ground beside makes a run too, but the line goes on there as before.
    """
    k, way = len(z), np.sign(run.offset)
    low, high = max(run.start - _AROUND, 0), min(run.end + _AROUND, k)
    length = np.maximum(np.diff(station), 1e-9)
    rise = np.diff(z)
    slope = float(np.median(rise[low : high - 1] / length[low : high - 1]))
    step = np.append(0.0, way * (rise - slope * length))  # onto each point from the one before
    ends, clear = [], []
    for at, back, ahead, sign in ((run.start, _FAR, _NEAR, 1), (run.end, _NEAR, _FAR, -1)):
        if at in (0, k):
            ends.append(at)
            continue
        places = np.arange(max(at - back, 1), min(at + ahead, k - 1) + 1)
        best = int(places[np.argmax(sign * step[places])])
        best = best if sign * step[best] > _BETTER * sign * step[at] else at
        stepped = sign * step[best] > _OWN_STEP * abs(run.offset)
        ends.append(best if stepped else at)
        clear.append(bool(stepped))
    if not any(clear) or ends[0] >= ends[1]:
        return None
    return replace(run, start=ends[0], end=ends[1])


def _candidates(k: int) -> Tuple[np.ndarray, np.ndarray]:
    longest = min(k // 2, _LONGEST)
    size = np.arange(1, longest + 1)
    start = np.concatenate([np.arange(k - n + 1) for n in size.tolist()])
    return start, start + np.repeat(size, k - size + 1)


def _offsets(
    heights: Heights, z: np.ndarray, start: np.ndarray, end: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Offset (c,) of each run from a straight line through it and the points beside it, and its standard deviation.

    And what it makes better: the sum of squares it takes away, less what is left beyond the noise.
    """
    k, u = len(z), heights.station
    columns = np.column_stack([np.ones(k), u, z, u * u, u * z, z * z])
    sums = np.vstack([np.zeros(6), np.cumsum(columns, axis=0)])
    low, high = np.maximum(start - _WINDOW, 0), np.minimum(end + _WINDOW, k)
    middle = (u[start] + u[end - 1]) / 2

    def moments(a: np.ndarray, b: np.ndarray) -> np.ndarray:
        n, su, sz, suu, suz, szz = (sums[b] - sums[a]).T
        shifted: np.ndarray = np.stack(
            [n, su - middle * n, sz, suu - 2 * middle * su + middle**2 * n, suz - middle * sz, szz]
        )
        return shifted

    n, su, sz, suu, suz, szz = moments(low, high)
    ni, sui, szi = moments(start, end)[:3]
    variance = heights.white**2
    normal = np.empty((len(start), 3, 3))
    normal[:, 0, 0], normal[:, 0, 1], normal[:, 1, 1] = n, su, suu
    normal[:, 0, 2], normal[:, 1, 2], normal[:, 2, 2] = ni, sui, ni
    normal[:, 1, 0], normal[:, 2, 0], normal[:, 2, 1] = su, ni, sui
    normal[:, 0, 0] += variance / heights.drift**2
    normal[:, 1, 1] += variance / heights.slope**2
    normal[:, 2, 2] += 1e-9
    inverse = np.linalg.inv(normal)
    right = np.stack([sz, suz, szi], axis=1)
    solved = np.einsum("cij,cj->ci", inverse, right)
    offset = solved[:, 2]
    left = np.maximum((szz - np.sum(solved * right, axis=1)) / variance - n, 0.0)
    gain = offset**2 / (variance * inverse[:, 2, 2]) - left
    doubt = np.append(0.0, np.cumsum(heights.doubt**2))
    length = u[end - 1] - u[start]
    shared = (doubt[end] - doubt[start]) / (end - start) / (1 + length / _APART)
    return offset, np.sqrt(variance * inverse[:, 2, 2] + shared), gain


def _steps(heights: Heights, z: np.ndarray, a: int, b: int, offset: float) -> Tuple[object, object]:
    k = len(z)
    inside = min(_STEP, b - a)
    result: List[object] = []
    for out, into in (((a - _STEP, a), (a, a + inside)), ((b, b + _STEP), (b - inside, b))):
        one, two = max(out[0], 0), min(out[1], k)
        if two <= one:
            result.append(None)
            continue
        step = float(z[into[0] : into[1]].mean() - z[one:two].mean())
        sigma = heights.white * np.sqrt(1 / inside + 1 / (two - one))
        result.append(bool(step * offset > 0 and abs(step) > _STEEP * abs(offset) and abs(step) > _SURE * sigma))
    return result[0], result[1]
