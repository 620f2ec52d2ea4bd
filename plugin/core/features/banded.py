"""Many chains of unknowns, each tied to its two neighbours on either side: means and variances, side by side."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

#: Longer chains are solved in parts of this many unknowns that overlap, so that no loop is longer.
PART, OVERLAP = 160, 20


@dataclass(frozen=True)
class Layout:
    """Where the unknowns (n,) of all chains stand in a table of rows by columns.

    A column holds a chain, or a part of a long one. ``place``: (k,) places, row by row; ``of``: (k,) the unknown
    there; ``answer``: (n,) the place whose answer counts for each unknown.
    """

    rows: int
    columns: int
    place: np.ndarray
    of: np.ndarray
    answer: np.ndarray

    def table(self, values: np.ndarray, fill: float) -> np.ndarray:
        """The values (n,) of the unknowns as a table, ``fill`` where there is none."""
        result = np.full(self.rows * self.columns, fill)
        result[self.place] = values[self.of]
        return result.reshape(self.rows, self.columns)

    def answers(self, table: np.ndarray) -> np.ndarray:
        """The values (n,) back from a table."""
        result: np.ndarray = table.ravel()[self.answer]
        return result


def make_layout(counts: np.ndarray) -> Layout:
    """The layout of chains of ``counts`` unknowns, which are numbered one chain after another."""
    first = np.cumsum(counts) - counts
    short = np.flatnonzero(counts <= PART)
    column = np.repeat(np.arange(len(short)), counts[short])
    row = np.arange(len(column)) - np.repeat(np.cumsum(counts[short]) - counts[short], counts[short])
    parts = [(row, column, np.repeat(first[short], counts[short]) + row, np.ones(len(row), bool))]
    columns = len(short)
    for chain in np.flatnonzero(counts > PART).tolist():
        count = int(counts[chain])
        for a in range(0, count - 2 * OVERLAP, PART - 2 * OVERLAP):
            b = min(a + PART, count)
            place = np.arange(a, b)
            counted = (place >= (a + OVERLAP if a else 0)) & (place < (b - OVERLAP if b < count else b))
            parts.append((place - a, np.full(len(place), columns), first[chain] + place, counted))
            columns += 1
    row, column, of, counts_here = (np.concatenate(part) for part in zip(*parts))
    place = row * columns + column
    answer = np.empty(int(counts.sum()), np.int64)
    answer[of[counts_here]] = place[counts_here]
    return Layout(int(row.max()) + 1, columns, place, of, answer)


def solve(a: np.ndarray, b1: np.ndarray, b2: np.ndarray, rhs: np.ndarray) -> Tuple[np.ndarray, ...]:
    """Means and (co)variances for precision matrices with two side diagonals, one in each column.

    ``a``: (r, c) diagonals; ``b1, b2``: (r, c) entries (i, i - 1) and (i, i - 2) in row i; ``rhs``: (r, c). Gives the
    means, variances, and covariances of i with i + 1 and with i + 2, each (r, c). By factors L D Lᵀ, the inverse
    only where the matrix is not zero (Takahashi, Fagan and Chen 1973, from memory).
    """
    r, c = a.shape
    d = np.ones((r + 2, c))
    l1, l2 = np.zeros((r + 4, c)), np.zeros((r + 4, c))
    y = np.zeros((r + 2, c))
    for i in range(r):  # row i is at i + 2
        k = i + 2
        l2[k] = b2[i] / d[k - 2]
        l1[k] = (b1[i] - l2[k] * l1[k - 1] * d[k - 2]) / d[k - 1]
        d[k] = a[i] - l1[k] ** 2 * d[k - 1] - l2[k] ** 2 * d[k - 2]
        y[k] = rhs[i] - l1[k] * y[k - 1] - l2[k] * y[k - 2]
    x = np.zeros((r + 4, c))
    z0, z1, z2 = np.zeros((r + 4, c)), np.zeros((r + 4, c)), np.zeros((r + 4, c))
    for i in range(r - 1, -1, -1):
        k = i + 2
        x[k] = y[k] / d[k] - l1[k + 1] * x[k + 1] - l2[k + 2] * x[k + 2]
        z1[k] = -l1[k + 1] * z0[k + 1] - l2[k + 2] * z1[k + 1]
        z2[k] = -l1[k + 1] * z1[k + 1] - l2[k + 2] * z0[k + 2]
        z0[k] = 1 / d[k] - l1[k + 1] * z1[k] - l2[k + 2] * z2[k]
    return x[2 : r + 2], z0[2 : r + 2], z1[2 : r + 2], z2[2 : r + 2]
