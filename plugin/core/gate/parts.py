"""Points that lie together in plan, and those that lie alone: through occupied cells, whatever the extent."""

from __future__ import annotations

from typing import Tuple

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

#: Cells of a row are numbered within this; farther columns and rows count as the last ones.
_ROW = 1 << 31
_LAST = float(1 << 29)


def parts_of(xy: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Number (n,) of the part of each place (n, 2), and how many places each part has (p,).

    Places of one part are joined by occupied square cells of side ``cell`` that touch: what lies nearer than ``cell``
    is of one part, what lies farther than 2 √2 ``cell`` from all others is not. Time and memory go with n alone.
    """
    key, head = _keys(xy, cell)
    cells, number = np.unique(key[head], return_inverse=True)
    cell_of = number.reshape(-1)[np.cumsum(head) - 1]
    pairs = []
    for step in (1, _ROW, _ROW + 1, _ROW - 1):
        at = np.minimum(np.searchsorted(cells, cells + step), len(cells) - 1)
        here = np.flatnonzero(cells[at] == cells + step)
        pairs.append(np.column_stack([here, at[here]]))
    a, b = np.concatenate(pairs).T
    graph = coo_matrix((np.ones(len(a), bool), (a, b)), shape=(len(cells), len(cells)))
    part = connected_components(graph, directed=False)[1][cell_of]
    return part, np.bincount(part)


def occupied_cells(xy: np.ndarray, cell: float) -> int:
    """How many square cells of side ``cell`` hold places (n, 2)."""
    key, head = _keys(xy, cell)
    return len(np.unique(key[head]))


def _keys(xy: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Number of the cell of each place (n,), and a mask of those not in the cell of the place before."""
    column, row = np.clip(np.floor(xy.T / cell), -_LAST, _LAST).astype(np.int64)
    key = column * _ROW + row
    return key, np.append(True, key[1:] != key[:-1])  # places that follow each other mostly share a cell
