"""Medians and other ranks over a few columns, row by row, without sorting each row by itself."""

from __future__ import annotations

from functools import cache
from typing import List, Sequence, Tuple

import numpy as np

#: Rows worked on at a time: their columns stay in the processor's cache.
CHUNK = 8192


@cache
def comparisons(count: int, rank: int) -> Tuple[Tuple[int, int, bool, bool], ...]:
    """Steps (i, j, low, high): put the lower of columns i and j in i and the higher in j, as far as asked for.

    After all of them column ``rank`` holds the value of that rank (0: the lowest) of ``count``. Merge exchange
    (Knuth, The Art of Computer Programming, volume 3, 5.2.2, algorithm M; from memory), less what the rank does
    not depend on.
    """
    pairs: List[Tuple[int, int]] = []
    top = 1
    while top < count:
        top *= 2
    p = top // 2
    while p > 0:
        q, r, d = top // 2, 0, p
        while True:
            pairs += [(i, i + d) for i in range(count - d) if i & p == r]
            if q == p:
                break
            d, q, r = q - p, q // 2, p
        p //= 2
    needed, kept = {rank}, []
    for i, j in reversed(pairs):
        if i in needed or j in needed:
            kept.append((i, j, i in needed, j in needed))
            needed |= {i, j}
    return tuple(reversed(kept))


def rank_of(columns: Sequence[np.ndarray], rank: int) -> np.ndarray:
    """The value of ``rank`` (0: the lowest) in each row of some columns (k,) of one length; nan where one is nan."""
    now = list(columns)
    for i, j, low, high in comparisons(len(now), rank):
        a, b = now[i], now[j]
        if low:
            now[i] = np.minimum(a, b)
        if high:
            now[j] = np.maximum(a, b)
    return now[rank]


def running_median(values: np.ndarray, width: int) -> np.ndarray:
    """Median of each ``width`` (odd) values that follow each other (n,): (n - width + 1,)."""
    result = np.empty(max(len(values) - width + 1, 0))
    for start in range(0, len(result), CHUNK):
        end = min(start + CHUNK, len(result))
        result[start:end] = rank_of([values[start + k : end + k] for k in range(width)], width // 2)
    return result
