"""Points that lie together in plan, and those that lie alone: through occupied cells, whatever the extent."""

from __future__ import annotations

from typing import Tuple

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

#: Cells of a row are numbered within this; farther columns and rows count as the last ones.
_ROW = 1 << 31
_LAST = float(1 << 29)
#: Cells are told apart by a table with room for so many for each place, those of no number for more, and so many more.
_TABLE, _SPARSE, _SMALL = 4, 16, 1 << 16


def parts_of(xy: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Number (n,) of the part of each place (n, 2), and how many places each part has (p,).

    Places of one part are joined by occupied square cells of side ``cell`` that touch: what lies nearer than ``cell``
    is of one part, what lies farther than 2 √2 ``cell`` from all others is not. Time and memory go with n alone.
    """
    key, head = _keys(xy, cell)
    cells, number = _kinds(key[head])
    cell_of = number[np.cumsum(head) - 1]
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
    key = key[head]
    at, size = _in_rectangle(key)
    if size > _SPARSE * len(key) + _SMALL:
        return len(np.unique(key))
    table = np.zeros(size, bool)
    table[at] = True
    return int(np.count_nonzero(table))


def _kinds(key: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The different cells (c,) among those of ``key`` (k,), in order, and which of them each is (k,).

    By a table of the rectangle around them where that is small, else by sorting.
    """
    at, size = _in_rectangle(key)
    if size > _TABLE * len(key) + _SMALL:
        cells, number = np.unique(key, return_inverse=True)
        return cells, number.reshape(-1)
    table = np.full(size, -1, np.int32)
    table[at] = 0
    full = np.flatnonzero(table == 0)
    table[full] = np.arange(len(full), dtype=np.int32)
    cells = np.empty(len(full), np.int64)
    cells[table[at]] = key
    return cells, table[at]


def _in_rectangle(key: np.ndarray) -> Tuple[np.ndarray, int]:
    """Number (k,) of cells within the rectangle around them all, column by column, and how many cells that has."""
    column = (key + (_ROW >> 1)) >> 31
    row = key - (column << 31)
    column -= column.min()
    row -= row.min()
    high = int(row.max()) + 1
    return column * high + row, (int(column.max()) + 1) * high


def _keys(xy: np.ndarray, cell: float) -> Tuple[np.ndarray, np.ndarray]:
    """Number of the cell of each place (n,), and a mask of those not in the cell of the place before."""
    column, row = np.clip(np.floor(xy.T / cell), -_LAST, _LAST).astype(np.int64)
    key = column * _ROW + row
    return key, np.append(True, key[1:] != key[:-1])  # places that follow each other mostly share a cell
