"""Short stretches of the walk that step off the ground and back by about the same amount.

A pole that is lifted or set down again does so within a step or two of the walk: the profile jumps, where ground bends.
Jumps are those between the lines through the points before and behind, as for lines of the ground
(:mod:`..features.jumps`).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from ..features.jumps import Jumps, jump_across
from ..features.passes import Passes
from .walk import Walk

_CLEAR = 2.5  # standard deviations of a jump
_PAIR = 5.5  # of two jumps together: root of the sum of squares
_LEAST = 2.0  # standard deviations of a height that a jump comes to
_LONGEST = 34  # points of an excursion
_PARTNERS = 8  # jumps looked at for the way back
_MORE = 1.3  # times what a line explains, at most
_ALIKE = 0.45  # of the larger jump: how well both agree


@dataclass(frozen=True)
class Edges:
    """j jumps: from the point ``before`` to the point ``after`` of the walk (j,), ``size`` (m) and ``clear``, that over
    its standard deviation."""

    before: np.ndarray
    after: np.ndarray
    size: np.ndarray
    clear: np.ndarray

    def take(self, which: np.ndarray) -> Edges:
        return Edges(self.before[which], self.after[which], self.size[which], self.clear[which])


@dataclass(frozen=True)
class Excursions:
    """x excursions: points [start, end) of the walk (x,), their ``level`` (x,), metres, and how good the two jumps go
    together (x,)."""

    start: np.ndarray
    end: np.ndarray
    level: np.ndarray
    worth: np.ndarray

    def __len__(self) -> int:
        return len(self.start)

    def take(self, which: np.ndarray) -> Excursions:
        return Excursions(self.start[which], self.end[which], self.level[which], self.worth[which])


def find_edges(passes: Passes, jumps: Jumps, noise: np.ndarray, sigma: float, explained: np.ndarray) -> Edges:
    """Jumps of the profile that no line of the ground explains.

    ``passes``, ``jumps``, ``noise``: of the same points (see :mod:`..features`), whose ``index`` counts points of the
    walk. ``sigma``: standard deviation of one height (m). ``explained``: (q,) how far (m) lines of the ground make each
    point of the walk depart: jumps of that size at them are the ground's.
    """
    edges = _clear_edges(passes, jumps, noise, sigma)
    by = np.maximum(explained[edges.before], explained[edges.after])
    return edges.take(np.flatnonzero((by == 0) | (np.abs(edges.size) > _MORE * by + 2 * sigma)))


def find_excursions(walk: Walk, edges: Edges, sigma: float) -> Excursions:
    """All pairs of jumps off the ground and back, the best first; they overlap. ``sigma``: standard deviation of one
    height (m)."""
    found = []
    least = _LEAST * sigma
    # Within a large excursion the pole wobbles: small jumps between must not hide the way back.
    while np.any(np.abs(edges.size) > least):
        found.append(_pairs(walk, edges.take(np.flatnonzero(np.abs(edges.size) > least)), sigma))
        least *= 2.5
    table = np.unique(np.vstack(found), axis=0) if found else np.zeros((0, 4))
    start, end, level, worth = table[np.lexsort((table[:, 1], table[:, 0], -table[:, 3]))].T
    return Excursions(start.astype(np.int64), end.astype(np.int64), level, worth)


def _pairs(walk: Walk, edges: Edges, sigma: float) -> np.ndarray:
    """First point, end, level (m) and worth (x, 4) of pairs of edges off the ground and back."""
    a, b = off_and_back(edges, _PARTNERS, _ALIKE, 2.5 * sigma)
    up, down = edges.size[a], edges.size[b]
    start, end = edges.before[a] + 1, edges.after[b]
    fits = (end > start) & (end - start <= _LONGEST) & (edges.after[a] <= edges.before[b])
    fits &= walk.piece[edges.before[a]] == walk.piece[edges.after[b]]
    together = np.hypot(edges.clear[a], edges.clear[b])
    fits &= together > _PAIR
    worth = together * (1 - np.abs(up + down) / (2 * np.maximum(np.abs(up), np.abs(down))))
    return np.column_stack([start, end, (up - down) / 2, worth])[fits]


def off_and_back(edges: Edges, partners: int, alike: float, slack: float) -> Tuple[np.ndarray, np.ndarray]:
    """Pairs ``a < b`` (x,) of edges, at most ``partners`` places apart: one up and one down, of one size.

    ``alike``: of the larger one, and ``slack`` (m): by how much both together may differ.
    """
    size, found = edges.size, [np.empty((0, 2), np.int64)]
    for k in range(1, min(partners + 1, len(size))):
        up, down = size[:-k], size[k:]
        near = np.abs(up + down) <= alike * np.maximum(np.abs(up), np.abs(down)) + slack
        a = np.flatnonzero((up * down < 0) & near)
        found.append(np.column_stack([a, a + k]))
    a, b = np.vstack(found).T
    return a, b


def best_apart(excursions: Excursions, taken: np.ndarray) -> Excursions:
    """The best of those that overlap, in order along the walk. ``taken``: (q,) points that none may have."""
    taken, kept = np.append(taken, False), []
    for k, (start, end) in enumerate(zip(excursions.start.tolist(), excursions.end.tolist())):
        if not taken[start:end].any():
            taken[start:end] = True
            kept.append(k)
    which = np.array(kept, np.int64)
    return excursions.take(which[np.argsort(excursions.start[which], kind="stable")])


def _clear_edges(passes: Passes, jumps: Jumps, noise: np.ndarray, sigma: float) -> Edges:
    """Clear jumps within one step of the walk, and those that take two, where no single step has them."""
    size, clear = np.nan_to_num(jumps.size), np.nan_to_num(jumps.t)
    one = np.flatnonzero((np.abs(clear) > _CLEAR) & (np.abs(size) > _LEAST * sigma))
    gates = np.arange(max(len(passes) - 2, 0))
    wide, wide_clear = jump_across(passes, noise, jumps, gates, 1)
    wide, wide_clear = np.nan_to_num(wide), np.nan_to_num(wide_clear)
    better = (np.abs(wide_clear) > _CLEAR) & (np.abs(wide) > _LEAST * sigma)
    for shift in (0, 1):  # one of its steps alone would do
        other = np.abs(clear[gates + shift]) > 0.7 * np.abs(wide_clear)
        better &= ~(other & (np.abs(size[gates + shift]) > 0.75 * np.abs(wide)))
    two = gates[better]
    index = passes.index
    before = np.concatenate([index[one], index[two]])
    after = np.concatenate([index[np.minimum(one + 1, len(index) - 1)], index[two + 2]])
    order = np.lexsort((after, before))
    sizes, clears = np.concatenate([size[one], wide[two]]), np.concatenate([clear[one], wide_clear[two]])
    return Edges(before[order], after[order], sizes[order], np.abs(clears)[order])
