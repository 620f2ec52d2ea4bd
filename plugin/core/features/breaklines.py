"""Found lines as breaklines of the surface, none of which crosses another."""

from __future__ import annotations

from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..linework.constraints import ConstraintLine, Constraints, LineKind, make_line
from .found import Features, FoundLine

#: Segments are looked for by places so far apart on them, metres.
_EVERY = 2.0


def breaklines(features: Features) -> Constraints:
    """The strong lines as breaklines with heights: foot and top of a step, the line itself of another kind.

    Where two cross, the segment of the one with less evidence is left out; the top counts after its foot.
    """
    lines: List[np.ndarray] = []
    labels: List[str] = []
    for number, line in enumerate(features.lines):
        if not line.strong:
            continue
        for xyz in _parts(line):
            lines.append(xyz)
            labels.append(f"{line.kind.value} {number + 1}")
    if not lines:
        return Constraints()
    return Constraints(tuple(_free_lines(lines, labels)))


def _parts(line: FoundLine) -> List[np.ndarray]:
    return [line.foot, line.top] if len(line.top) else [line.foot]


def _free_lines(lines: List[np.ndarray], labels: List[str]) -> List[ConstraintLine]:
    counts = np.array([len(xyz) - 1 for xyz in lines])
    every = np.concatenate(lines)
    start = np.delete(np.arange(len(every)), np.cumsum(counts + 1) - 1)
    line = np.repeat(np.arange(len(lines)), counts)
    low = every[:, :2].min(axis=0)
    a, b = every[start, :2] - low, every[start + 1, :2] - low
    crossed = np.zeros(len(start), bool)
    for first, second in _crossings(a, b, line).tolist():
        if not crossed[first]:
            crossed[second] = True
    result = []
    for number, (xyz, label) in enumerate(zip(lines, labels)):
        cut = np.flatnonzero(crossed[line == number]) if crossed.any() else np.empty(0, np.int64)
        for part in np.split(xyz, cut + 1):
            if len(part) > 1:
                result.append(make_line(LineKind.BREAKLINE, part, label))
    return result


def _crossings(a: np.ndarray, b: np.ndarray, line: np.ndarray) -> np.ndarray:
    """Pairs (c, 2) of segments from ``a`` to ``b`` (s, 2) that cross, in the order of the first, then of the second."""
    segment, place = _places(a, b)
    pairs = cKDTree(place).query_pairs(_EVERY, output_type="ndarray")
    pairs = np.sort(segment[pairs], axis=1)
    i, j = pairs.T
    # Segments that follow each other on a line meet at its vertex.
    pairs = pairs[(i != j) & ~((line[i] == line[j]) & (j - i == 1))]
    if not len(pairs):
        return pairs
    pairs = np.unique(pairs, axis=0)
    i, j = pairs.T
    one = _side(a[i], b[i], a[j]) * _side(a[i], b[i], b[j]) < 0
    other = _side(a[j], b[j], a[i]) * _side(a[j], b[j], b[i]) < 0
    return pairs[one & other]


def _side(a: np.ndarray, b: np.ndarray, c: np.ndarray) -> np.ndarray:
    """Positive where ``c`` lies left of ``a`` to ``b``, negative to the right; each (n, 2)."""
    u, v = b - a, c - a
    return np.sign(u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0])


def _places(a: np.ndarray, b: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Places along segments so close that crossing ones have two within ``_EVERY``; and the segment of each."""
    long = np.hypot(*(b - a).T)
    count = np.maximum(np.ceil(long / (0.7 * _EVERY)).astype(np.int64), 1)
    segment = np.repeat(np.arange(len(a)), count)
    number = np.arange(len(segment)) - np.repeat(np.cumsum(count) - count, count)
    share = (number + 0.5) / count[segment]
    return segment, a[segment] + share[:, None] * (b - a)[segment]
