"""Grounds of summits or pits, and where they join as water falls or rises.

What holds for summits out of falling water holds for pits under rising water with the order of heights turned.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import minimum_spanning_tree

from .tin import Tin


@dataclass(frozen=True)
class RankedEdges:
    """Each edge once: ``low``, ``high`` (e,) its ends in the order of heights; ``rim`` (e,) bool."""

    low: np.ndarray
    high: np.ndarray
    rim: np.ndarray


@dataclass(frozen=True)
class Joins:
    """Where islands join as water falls, j of them, the highest saddle first, then the highest vertex beyond it.

    ``one``, ``other``: (j,) the summits of the two grounds that meet. ``saddle``: (j,) the vertex that falls dry, in
    the ground of ``saddle_summit`` (j,), and ``beyond``: (j,) its dry neighbour in the ground of the other summit.
    """

    one: np.ndarray
    other: np.ndarray
    saddle: np.ndarray
    saddle_summit: np.ndarray
    beyond: np.ndarray


def height_order(tin: Tin) -> np.ndarray:
    """Place of each vertex, (n,) int64, by height, then easting, then northing."""
    rank = np.empty(len(tin.vertices), dtype=np.int64)
    rank[np.lexsort((tin.grid[:, 1], tin.grid[:, 0], tin.vertices[:, 2]))] = np.arange(len(rank))
    return rank


def ranked_edges(tin: Tin, rank: np.ndarray) -> RankedEdges:
    """The edges of ``tin`` with their ends in the order of ``rank`` (n,)."""
    neighbours = tin.neighbours
    once = neighbours < np.arange(len(neighbours))[:, None]  # the rim's -1 included
    one, other = tin.triangles[once].astype(np.int64), np.roll(tin.triangles, -1, axis=1)[once].astype(np.int64)
    rising = rank[one] < rank[other]
    return RankedEdges(np.where(rising, one, other), np.where(rising, other, one), neighbours[once] < 0)


def climb(rank: np.ndarray, low: np.ndarray, high: np.ndarray) -> np.ndarray:
    """The summit (n,) to which each vertex comes by always going to its highest neighbour.

    ``low``, ``high``: (e,) ends of the edges in the order of ``rank``.
    """
    goal = highest_neighbour(rank, low, high)
    while True:
        farther = goal[goal]
        if np.array_equal(farther, goal):
            return goal
        goal = farther


def highest_neighbour(rank: np.ndarray, low: np.ndarray, high: np.ndarray) -> np.ndarray:
    """The highest neighbour (n,) of each vertex; a summit itself."""
    best = rank.copy()
    np.maximum.at(best, low, rank[high])
    at_rank = np.empty(len(rank), dtype=np.int64)
    at_rank[rank] = np.arange(len(rank))
    result: np.ndarray = at_rank[best]
    return result


def joins(rank: np.ndarray, summit: np.ndarray, low: np.ndarray, high: np.ndarray) -> Joins:
    """The joins that matter: those that make one island of two.

    A vertex belongs to its ``summit``'s (n,) island as soon as it is dry, so islands first join at the highest lower
    end of an edge between the grounds of two summits. The joins that matter are the edges of a spanning tree
    of the summits, the highest joins first.
    """
    between = np.flatnonzero(summit[low] != summit[high])
    low, high = low[between], high[between]
    names, number = np.unique(np.concatenate([summit[low], summit[high]]), return_inverse=True)
    first, second = np.sort(number.reshape(2, -1), axis=0)
    order = np.lexsort((-rank[high], -rank[low], second, first))
    first, second, low, high = first[order], second[order], low[order], high[order]
    best = np.ones(len(order), dtype=bool)
    best[1:] = (first[1:] != first[:-1]) | (second[1:] != second[:-1])
    found = np.flatnonzero(best)
    found = found[np.lexsort((-rank[high[found]], -rank[low[found]]))]
    first, second, low, high = first[found], second[found], low[found], high[found]
    # The tree of least weight; a weight of 0 would be no edge. Weights differ, so there is but one tree.
    weight = np.arange(1.0, len(first) + 1)
    tree = minimum_spanning_tree(coo_matrix((weight, (first, second)), shape=(len(names),) * 2))
    chosen = np.sort(tree.data).astype(np.int64) - 1
    one, other, saddle, beyond = first[chosen], second[chosen], low[chosen], high[chosen]
    return Joins(names[one], names[other], saddle, summit[saddle], beyond)
