"""Long stretches of the walk that lie off the others: a pole of another height, ambiguities fixed wrongly.

Each long segment gets an unknown offset. Where the walk goes on from one to the next, where passes cross, and where
they run side by side, the difference of two offsets is observed. The fewest offsets that explain the observations are
sought by iteratively reweighted least squares with redescending weights: on the observations, since some
are spoiled (a kerb between two segments is no offset), and on the offsets, since most are nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, Sequence, Tuple

import numpy as np
from scipy.sparse import csc_matrix, csr_matrix, diags
from scipy.sparse.linalg import splu

from ..progress import Progress, silent
from ..surface.parts import connected_parts
from .meanwhile import Meanwhile

_CAP = 3.2  # standard deviations where an observation begins to lose its say
_PRICE = 4.0  # what an offset costs, in half squares of standardised departures
_ROUNDS = 34
# Few nodes share their neighbours: SuperLU's panels of columns would cost more than they spare.
_SYMMETRIC: Dict[str, Any] = {"options": {"SymmetricMode": True}, "diag_pivot_thresh": 0.0, "relax": 1, "panel_size": 1}
_AGREED = 3  # differences that have to agree on an offset
_PRUNINGS = 4
_WHOLE = 40  # points of a group that is put back as a whole or not at all


@dataclass(frozen=True)
class Relations:
    """r observations (``difference``, m, give or take ``sigma``) of sums of offsets.

    ``node``: (r, 4) numbers of segments, negative for none or known ground; ``factor``: (r, 4) what each is
    multiplied by.
    """

    node: np.ndarray
    factor: np.ndarray
    difference: np.ndarray
    sigma: np.ndarray


def joined(parts: Sequence[Relations]) -> Relations:
    """All observations of several kinds."""
    return Relations(
        *(np.concatenate([getattr(p, c) for p in parts]) for c in ("node", "factor", "difference", "sigma"))
    )


def solve(
    relations: Relations, count: int, length: np.ndarray, sigma: float, progress: Progress = silent
) -> Tuple[np.ndarray, np.ndarray]:
    """Offset (m) of each of ``count`` nodes and its standard deviation (inf where nothing was observed).

    ``length``: (count,) points of each node, the longer the less likely off. ``sigma``: metres below which an
    offset is none. Reweighting finds a local optimum; so it starts from two sides, and what differs is decided
    group by group by the cost of either; further proposals are tried likewise.
    """
    normal = _Normal(relations, count)
    price = _PRICE * (1 + np.minimum(length, 400) / 100.0)
    progress(0.3, "quality")
    with Meanwhile(2) as pool:  # factors are found without Python's lock
        sides = np.clip(length / 8.0, 1.0, 6.0), np.ones(count)
        started = [pool.start(_reweighted, relations, normal, price, heavy, sigma) for heavy in sides]
        (offset, seen), (other, _) = (pool.await_(one, progress, 0.4) for one in started)
    progress(0.8, "quality")
    offset = _fused(relations, offset, other, price, sigma)
    offset = _fused(relations, offset, _from_steps(relations, offset, sigma), price, sigma)
    for _ in range(_PRUNINGS):
        gone = _needless(relations, offset, price, length, sigma)
        if not gone.any():
            break
        offset = np.where(gone, 0.0, offset)
    spread = np.full(count, np.inf)
    spread[seen > 0] = 1 / np.sqrt(seen[seen > 0])
    return offset, spread


class _Normal:
    """Normal equations of the observations, whose pattern stays while the weights change."""

    def __init__(self, relations: Relations, count: int) -> None:
        row, column = np.nonzero(relations.node >= 0)
        node, factor = relations.node[row, column], relations.factor[row, column]
        self._count = count
        self.design = csr_matrix((factor, (row, node)), shape=(len(relations.node), count))
        self._squares = self.design.power(2)
        # Every pair of nodes of one observation is a place in the matrix; the diagonal is one always.
        every = range(relations.node.shape[1])
        known, product, ends = [], [], []
        for i, j in ((i, j) for i in every for j in every):
            both = np.flatnonzero((relations.node[:, i] >= 0) & (relations.node[:, j] >= 0))
            known.append(both)
            product.append(relations.factor[both, i] * relations.factor[both, j])
            ends.append(relations.node[both][:, [i, j]])
        own = np.arange(count)
        of = np.concatenate([*known, len(relations.node) + own])
        share = np.concatenate([*product, np.ones(count)])
        a, b = np.concatenate([*ends, np.column_stack([own, own])]).T
        self._order = _fill_in_order(a, b, count)
        place = np.empty(count, np.int64)
        place[self._order] = own
        key, entry = np.unique(place[b] * count + place[a], return_inverse=True)
        # From the weights of observations and offsets, one after the other, to the entries of the matrix.
        entry = entry.ravel()
        by_entry, entries = np.argsort(entry, kind="stable"), np.append(0, np.cumsum(np.bincount(entry)))
        self._gather = csr_matrix(
            (share[by_entry], of[by_entry], entries), shape=(len(key), len(relations.node) + count)
        )
        self._rows = (key % count).astype(np.int32)
        self._starts = np.searchsorted(key, np.arange(count + 1) * count).astype(np.int32)

    def solve(self, weight: np.ndarray, prior: np.ndarray, difference: np.ndarray) -> np.ndarray:
        """Offsets (count,) for weights (r,) of the observations and of the offsets being nothing (count,)."""
        entries = self._gather @ np.concatenate([weight, prior])
        matrix = csc_matrix((entries, self._rows, self._starts), shape=(self._count, self._count))
        right = self.design.T @ (weight * difference)
        result = np.empty(self._count)
        try:
            factors = splu(matrix, permc_spec="NATURAL", **_SYMMETRIC)
        except RuntimeError:  # singular: what nothing speaks of is held at nothing
            held = matrix + diags(np.full(self._count, 1e-9 * max(float(matrix.diagonal().max()), 1.0)), format="csc")
            factors = splu(held, permc_spec="NATURAL", **_SYMMETRIC)
        result[self._order] = factors.solve(right[self._order])
        return result

    def seen(self, weight: np.ndarray) -> np.ndarray:
        """Weight (count,) of the observations of each offset."""
        result: np.ndarray = self._squares.T @ weight
        return result


def _fill_in_order(a: np.ndarray, b: np.ndarray, count: int) -> np.ndarray:
    """Order (count,) of the nodes in which elimination fills few places of a symmetric matrix with places (a, b)."""
    pattern = csc_matrix((np.ones(len(a)), (a, b)), shape=(count, count))
    pattern.data[:] = 1.0
    dominant = pattern + diags(np.asarray(pattern.sum(axis=0)).ravel(), format="csc")
    found = splu(dominant, permc_spec="MMD_AT_PLUS_A", **_SYMMETRIC)
    order: np.ndarray = np.argsort(found.perm_c)
    return order


def _reweighted(
    relations: Relations, normal: _Normal, price: np.ndarray, heavy: np.ndarray, sigma: float, progress: Progress
) -> Tuple[np.ndarray, np.ndarray]:
    """Offsets by reweighted least squares, and the weight of the observations of each.

    ``heavy``: how much the convex beginning, which takes absolute values, holds each offset back.
    """
    count = len(price)
    offset = np.zeros(count)
    weight = 1 / relations.sigma**2
    for turn in range(_ROUNDS):
        progress(turn / _ROUNDS, "quality")
        residual = (relations.difference - normal.design @ offset) / relations.sigma
        if turn < 12:
            say = 1 / np.maximum(np.abs(residual) / 1.5, 1.0)
            prior = price * heavy / (16 * sigma) / np.maximum(np.abs(offset), 0.25 * sigma)
            prior = prior if turn > 2 else np.full(count, 4.0)
        else:
            cap = _CAP * max(1.0, 8 * 0.7 ** (turn - 11))
            say = 1 / (1 + (residual / cap) ** 2) ** 2
            scale = 2 * sigma
            prior = 2 * price * scale**2 / (offset**2 + scale**2) ** 2
        fresh = normal.solve(weight * say, prior, relations.difference)
        done = np.max(np.abs(fresh - offset), initial=0.0) < 1e-5
        offset = fresh
        if done and turn > 20:
            break
    return offset, normal.seen(weight * say)


def _fused(
    relations: Relations, current: np.ndarray, proposal: np.ndarray, price: np.ndarray, sigma: float
) -> np.ndarray:
    """The cheaper of two sets of offsets, chosen for each group of nodes that differ and are observed together."""
    count = len(current)
    differs = np.abs(current - proposal) > 0.25 * sigma
    if not differs.any():
        return current
    a, b = _pairs(relations)
    both = differs[a] & differs[b]
    group = connected_parts(count, a[both], b[both])
    row, column = np.nonzero(relations.node >= 0)
    node = relations.node[row, column]
    touched = differs[node]
    pair = np.unique(row[touched] * count + group[node[touched]])
    at, which = pair // count, pair % count
    mixed = np.where(differs, proposal, current)
    gain = _cost(_residuals(relations, mixed)[at]) - _cost(_residuals(relations, current)[at])
    held = _held(mixed, price, sigma) - _held(current, price, sigma)
    change = np.bincount(which, gain, count) + np.bincount(group[differs], held[differs], count)
    return np.where(differs & (change < 0)[group], proposal, current)


def _from_steps(relations: Relations, current: np.ndarray, sigma: float) -> np.ndarray:
    """Offsets as most of a node's differences to single others agree on when those others lie right.

    A long stretch that is off and a few short ones across it that are off the other way look much alike.
    """
    count = len(current)
    two = np.all(relations.node[:, 2:] < 0, axis=1) & (relations.node[:, 0] >= 0) & (relations.node[:, 1] >= 0)
    a, b, d = relations.node[two, 0], relations.node[two, 1], relations.difference[two]
    node, value = np.concatenate([a, b]), np.concatenate([-d, d])
    order = np.lexsort((value, node))
    node, value, spread = node[order], value[order], np.tile(relations.sigma[two], 2)[order]
    number = np.bincount(node, minlength=count)
    start = np.cumsum(number) - number
    some = number >= _AGREED
    middle = np.zeros(count)
    middle[some] = (value[(start + (number - 1) // 2)[some]] + value[(start + number // 2)[some]]) / 2
    agree = np.bincount(node, np.abs(value - middle[node]) < 2.5 * spread, count)
    moved = some & (np.abs(current) < sigma) & (np.abs(middle) > 2.5 * sigma) & (agree > 0.6 * number)
    cleared = np.zeros(count, bool)
    cleared[b[moved[a]]] = True
    cleared[a[moved[b]]] = True
    return np.where(moved, middle, np.where(cleared, 0.0, current))


def _residuals(relations: Relations, offset: np.ndarray) -> np.ndarray:
    """Residuals (r,) in standard deviations."""
    padded = np.append(offset, 0.0)  # the last answers for no node
    told = np.sum(relations.factor * padded[relations.node], axis=1)
    result: np.ndarray = (relations.difference - told) / relations.sigma
    return result


def _held(offset: np.ndarray, price: np.ndarray, sigma: float) -> np.ndarray:
    result: np.ndarray = price * offset**2 / (offset**2 + 4 * sigma**2)
    return result


def _pairs(relations: Relations) -> Tuple[np.ndarray, np.ndarray]:
    """Nodes that one observation holds together, each pair of different ones."""
    width = relations.node.shape[1]
    pairs = [relations.node[:, [j, k]] for j in range(width) for k in range(j + 1, width)]
    a, b = np.concatenate(pairs).T
    fits = (a >= 0) & (b >= 0) & (a != b)
    return a[fits], b[fits]


def _needless(
    relations: Relations, offset: np.ndarray, price: np.ndarray, length: np.ndarray, sigma: float
) -> np.ndarray:
    """Mask of the offsets that cost more than they explain, taken by groups that lie off together.

    Reweighting can end in a state that moves half a survey up to agree with one side of a kerb; put back as a
    whole, such a group shows that it explains little.
    """
    count = len(offset)
    off = np.abs(offset) > sigma
    row, column = np.nonzero(relations.node >= 0)
    node, factor = relations.node[row, column], relations.factor[row, column]
    group = _groups(relations, offset, off, sigma)
    touched = off[node]
    row, node, factor = row[touched], node[touched], factor[touched]
    pair, of_pair = np.unique(row * count + group[node], return_inverse=True)
    gain = np.bincount(of_pair, factor * offset[node], len(pair))
    at, which = pair // count, pair % count
    before = _residuals(relations, offset)[at]
    after = before + gain / relations.sigma[at]
    worse = np.bincount(which, _cost(after) - _cost(before), count)
    held = _held(offset, price, sigma)
    saved = 0.3 * np.bincount(group[off], held[off], count)  # what lies off together costs less than each by itself
    np.maximum.at(saved, group[off], held[off])
    whole = np.bincount(group[off], length[off], count) >= _WHOLE
    mask: np.ndarray = off & (whole & (worse < saved))[np.where(off, group, 0)]
    return mask


def _cost(score: np.ndarray) -> np.ndarray:
    result: np.ndarray = 0.5 * score**2 / (1 + (score / _CAP) ** 2)
    return result


def _groups(relations: Relations, offset: np.ndarray, off: np.ndarray, sigma: float) -> np.ndarray:
    """A group number (count,) for offsets: those observed together and about as large are one group."""
    a, b = _pairs(relations)
    alike = off[a] & off[b] & (np.abs(offset[a] - offset[b]) < 3 * sigma)
    return connected_parts(len(offset), a[alike], b[alike])
