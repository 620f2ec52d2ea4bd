"""An invented village street with known truth: crowned, turning to one fall in a curve, kerbs, a sag, footways.

220 m: straight, a curve of 60 m radius to the right, straight. The crown of 2.5 % to either side turns, over 20 m, to
one fall of 2.5 % to the right within the curve, and back.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from plugin.core.alignment.line import Alignment, make_alignment
from plugin.core.points.pointset import PointSet, make_points
from plugin.core.units import LengthUnit

EAST, NORTH = 500_000.0, 5_700_000.0
LENGTH, RADIUS, CURVE = 220.0, 60.0, (90.0, 140.0)
HALF, KERB, FACE, FOOTWAY, VERGE = 3.25, 0.12, 0.05, 1.5, 2.0
FALL, TURN = 0.025, 20.0
_SAG = 110.0


def left_fall(s: np.ndarray) -> np.ndarray:
    """Rise (ratio) from the left edge to the crown at distances ``s``: negative where the left half falls to the
    right."""
    begin, end = CURVE
    share = np.clip(np.minimum((s - (begin - TURN)) / TURN, ((end + TURN) - s) / TURN), 0.0, 1.0)
    result: np.ndarray = FALL * (1.0 - 2.0 * share)
    return result


def grade_line(s: np.ndarray) -> np.ndarray:
    """Height of the crown: -3.2 % before and +1.4 % behind, with a curve of 60 m about the sag."""
    first, second, length = -0.032, 0.014, 60.0
    t = np.clip(s - (_SAG - length / 2), 0.0, length)
    result: np.ndarray = 100.0 + first * s + (second - first) / (2 * length) * t * t
    return result + (second - first) * np.maximum(s - (_SAG + length / 2), 0.0)


def height(s: np.ndarray, offset: np.ndarray) -> np.ndarray:
    """True height at distance and offset (right positive), metres."""
    inside = np.clip(offset, -HALF, HALF)
    z = grade_line(s) + np.where(inside < 0, inside * left_fall(s), -inside * FALL)
    beyond = np.abs(offset) - HALF
    step = KERB * np.clip(beyond / FACE, 0.0, 1.0)
    return np.asarray(z + step + 0.02 * np.clip(beyond - FACE, 0.0, FOOTWAY))


def centreline(step: float = 1.0) -> np.ndarray:
    """Places (k, 2) of the crown, the first at the origin."""
    s = np.arange(0.0, LENGTH + step / 2, step)
    turn = np.clip(s - CURVE[0], 0.0, CURVE[1] - CURVE[0]) / RADIUS
    middle = (turn[1:] + turn[:-1]) / 2
    way = np.cumsum(np.column_stack([np.cos(-middle), np.sin(-middle)]) * step, axis=0)
    return np.array([EAST, NORTH]) + np.vstack([np.zeros((1, 2)), way])


def alignment() -> Alignment:
    return make_alignment(centreline(), "street", 0.0, (), LengthUnit.METRE)


@dataclass(frozen=True)
class Walked:
    """``points`` of passes across; ``line`` of the street."""

    points: PointSet
    line: Alignment


def walk(
    seed: int, passes: float = 3.0, step: float = 0.5, white: float = 0.012, drift: float = 0.009,
    span: Tuple[float, float] = (-6.5, 6.5),
) -> Walked:  # fmt: skip
    """The street crossed every ``passes`` metres with a point each ``step``.

    Noise is new at every point, ``white``, and that of a receiver that drifts by ``drift`` (standard deviations, m;
    first-order Gauss-Markov, 90 s).
    """
    rng = np.random.default_rng(seed)
    line = alignment()
    rows = np.arange(1.0, line.length - 1.0, passes)
    across = np.arange(*span, step)
    s = np.repeat(rows, len(across)) + rng.normal(0, 0.1, len(rows) * len(across))
    o = np.tile(across, (len(rows), 1)) + rng.uniform(-step / 2, step / 2, (len(rows), 1))
    o[1::2] = o[1::2, ::-1].copy()
    o = o.ravel() + rng.normal(0, 0.03, o.size)
    time = np.cumsum(np.full(len(s), step / 1.2))
    keep = np.exp(-(step / 1.2) / 90.0)
    slow, kicks = np.empty(len(s)), rng.normal(0, drift, len(s))
    slow[0] = kicks[0]
    for i in range(1, len(s)):
        slow[i] = keep * slow[i - 1] + np.sqrt(1 - keep**2) * kicks[i]
    z = height(s, o) + slow + rng.normal(0, white, len(s))
    xy = line.places(s, o)
    points = make_points(xy[:, 0], xy[:, 1], z, time=1.7e9 + time)
    return Walked(points, line)
