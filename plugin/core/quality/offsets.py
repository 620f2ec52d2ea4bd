"""Long stretches of the walk that lie off the others: a pole of another height, ambiguities fixed wrongly.

Each long segment gets an unknown offset. Where the walk goes on from one to the next, where passes cross, and where
they run side by side, the difference of two offsets is observed. The fewest offsets that explain the observations are
sought by iteratively reweighted least squares with redescending weights: on the observations, since some
are spoiled (a kerb between two segments is no offset), and on the offsets, since most are nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence, Tuple

import numpy as np
from scipy.sparse import coo_matrix, diags
from scipy.sparse.csgraph import connected_components
from scipy.sparse.linalg import splu

_CAP = 3.2  # standard deviations where an observation begins to lose its say
_PRICE = 5.0  # what an offset costs, in half squares of standardised departures
_ROUNDS = 34
_PRUNINGS = 4
_WHOLE = 40  # points of a group that is put back as a whole or not at all


@dataclass(frozen=True)
class Relations:
    """r observations (``difference``, m, give or take ``sigma``) of sums of offsets.

    ``node``: (r, 3) numbers of segments, negative for none or known ground; ``factor``: (r, 3) what each is
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


def solve(relations: Relations, count: int, length: np.ndarray, sigma: float) -> Tuple[np.ndarray, np.ndarray]:
    """Offset (m) of each of ``count`` nodes and its standard deviation (inf where nothing was observed).

    ``length``: (count,) points of each node, the longer the less likely off. ``sigma``: metres below which an
    offset is none.
    """
    row, column = np.nonzero(relations.node >= 0)
    design = coo_matrix(
        (relations.factor[row, column], (row, relations.node[row, column])), shape=(len(relations.node), count)
    ).tocsc()
    offset = np.zeros(count)
    price = _PRICE * (1 + np.minimum(length, 400) / 100.0)
    heavy = np.clip(length / 8.0, 1.0, 6.0)
    weight = 1 / relations.sigma**2
    for turn in range(_ROUNDS):
        residual = (relations.difference - design @ offset) / relations.sigma
        if turn < 12:  # convex first: absolute values on both
            say = 1 / np.maximum(np.abs(residual) / 1.5, 1.0)
            prior = (
                price * heavy / (16 * sigma) / np.maximum(np.abs(offset), 0.25 * sigma)
                if turn > 2
                else np.full(count, 4.0)
            )
        else:
            cap = _CAP * max(1.0, 8 * 0.7 ** (turn - 11))
            say = 1 / (1 + (residual / cap) ** 2) ** 2
            scale = 2 * sigma
            prior = 2 * price * scale**2 / (offset**2 + scale**2) ** 2
        normal = (design.T @ diags(weight * say) @ design + diags(prior)).tocsc()
        factor = splu(normal)
        fresh = factor.solve(design.T @ (weight * say * relations.difference))
        done = np.max(np.abs(fresh - offset), initial=0.0) < 1e-5
        offset = fresh
        if done and turn > 20:
            break
    seen = np.asarray(design.power(2).T @ (weight * say)).ravel()
    spread = np.full(count, np.inf)
    spread[seen > 0] = 1 / np.sqrt(seen[seen > 0])
    for _ in range(_PRUNINGS):
        gone = _needless(relations, offset, price, length, sigma)
        if not gone.any():
            break
        offset = np.where(gone, 0.0, offset)
    return offset, spread


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
    padded = np.append(offset, 0.0)
    residual = relations.difference - np.sum(relations.factor * padded[relations.node], axis=1)
    before, after = residual[at] / relations.sigma[at], (residual[at] + gain) / relations.sigma[at]
    worse = np.bincount(which, _cost(after) - _cost(before), count)
    held = price * offset**2 / (offset**2 + 4 * sigma**2)
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
    first, second = relations.node[:, 0], relations.node
    pairs = [np.column_stack([first, second[:, k]]) for k in range(1, second.shape[1])]
    a, b = np.concatenate(pairs).T
    fits = (a >= 0) & (b >= 0) & (a != b)
    a, b = a[fits], b[fits]
    alike = off[a] & off[b] & (np.abs(offset[a] - offset[b]) < 3 * sigma)
    graph = coo_matrix((np.ones(alike.sum(), bool), (a[alike], b[alike])), shape=(len(offset), len(offset)))
    result: np.ndarray = connected_components(graph, directed=False)[1]
    return result
