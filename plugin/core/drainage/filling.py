"""Hollows that fill under the flow of water: their brims, and the ways out of those that let water pass."""

from __future__ import annotations

from typing import Callable

import numpy as np

from ..surface.basins import ranked_edges
from ..surface.filling import Filling, fill_surface, last_while, lowest_vertices
from .flow import Flow, Passages


def fill_ground(flow: Flow) -> Filling:
    """Let water rise on ``flow.tin``; it leaves at the rim and in inlets."""
    return fill_surface(flow.tin, flow.rank, flow.on_rim | (flow.vertex_sink >= 0))


def last_as_deep_node(flow: Flow, filling: Filling) -> np.ndarray:
    """The last node (c,) that each is a part of, shut and with the same lowest vertex: the hollow of its pit alone."""
    lowest = lowest_vertices(flow.rank, filling)
    shut = (filling.parent >= 0) & ~filling.open[filling.parent]
    return last_while(filling, (lowest[filling.parent] == lowest) & shut)


def brim_counts(flow: Flow, filling: Filling, window: np.ndarray) -> np.ndarray:
    """How many vertices (c,) of the brim of each hollow are at most ``window`` (n,) metres higher than its level.

    A vertex counts for the hollows it parts from the ground of its lowest neighbour in another ground than its own.
    """
    n, c = len(flow.rank), len(filling.parent)
    edges = ranked_edges(flow.tin, flow.rank)
    low, high = edges.low, edges.high
    apart = filling.ground[low] != filling.ground[high]
    low, high = low[apart], high[apart]
    order = np.lexsort((flow.rank[low], high))
    first = order[np.append(True, np.diff(high[order]) != 0)[: len(order)]]
    vertex, one, other = high[first], filling.ground[high[first]], filling.ground[low[first]]
    z = np.append(flow.tin.vertices[:, 2], np.inf)
    level = z[np.where(filling.saddle < 0, n, filling.saddle)]
    tree = _Ancestors(filling.parent)
    change = np.zeros(c + 1)
    for near, far in ((one, other), (other, one)):
        begin = tree.first(near, lambda node: level[node] >= (z[vertex] - window[vertex]))
        apart_last = tree.first(near, lambda node: tree.contains(node, far))  # noqa: B023
        some = tree.depth[begin] > tree.depth[apart_last]
        change[:c] += np.bincount(begin[some], minlength=c) - np.bincount(apart_last[some], minlength=c)
    total = change.tolist()
    for child, node in enumerate(filling.parent.tolist()):
        if node >= 0:
            total[node] += total[child]
    return np.array(total[:c])


class _Ancestors:
    """Questions about the ancestors of nodes of a tree, by jumps of powers of two."""

    def __init__(self, parent: np.ndarray) -> None:
        c = len(parent)
        self.jumps = [np.where(parent < 0, c - 1, parent)]
        while np.any(self.jumps[-1] != c - 1):
            self.jumps.append(self.jumps[-1][self.jumps[-1]])
        size, depth = [1] * c, [0] * c
        up = parent.tolist()
        for child, node in enumerate(up):
            if node >= 0:
                size[node] += size[child]
        begin, free = [0] * c, [1] * c  # where the numbers of a node begin, and the next free one below it
        for child in range(c - 1, -1, -1):
            node = up[child]
            if node >= 0:
                depth[child] = depth[node] + 1
                begin[child] = free[node]
                free[node] += size[child]
            free[child] = begin[child] + 1
        self.depth, self.begin, self.size = np.array(depth), np.array(begin), np.array(size)

    def contains(self, node: np.ndarray, other: np.ndarray) -> np.ndarray:
        """Whether each ``node`` (k,) is ``other`` (k,) or above it."""
        inside: np.ndarray = (self.begin[node] <= self.begin[other]) & (
            self.begin[other] < self.begin[node] + self.size[node]
        )
        return inside

    def first(self, node: np.ndarray, holds: Callable[[np.ndarray], np.ndarray]) -> np.ndarray:
        """The first (k,) of each ``node``, its parent and so on that ``holds``, which then holds of all above."""
        at = node.copy()
        for jump in reversed(self.jumps):
            further = jump[at]
            at = np.where(holds(further) | holds(at), at, further)
        return np.where(holds(at), at, self.jumps[0][at])


def passages_over(flow: Flow, filling: Filling, pits: np.ndarray) -> Passages:
    """Let the water of ``pits`` (k,) go on over the brims of their own hollows, be they full."""
    n = len(flow.rank)
    saddle, to = np.full(n, -1, np.int64), np.full(n, -1, np.int64)
    node = last_as_deep_node(flow, filling)[filling.ground[pits]]
    saddle[pits] = filling.saddle[node]
    to[pits] = np.where(filling.over[node] >= 0, filling.over[node], filling.saddle[node])
    return Passages(saddle, to)
