"""Which hollows fill to one pond, as water rises: the tree of joins.

Every vertex without a lower neighbour is a pit with a ground, the vertices from which one comes to it by always
going to the lowest neighbour. As water rises, the ponds of two grounds join at the lowest vertex with neighbours in
both. The ground beyond the rim and in inlets is lower than everything: a pond that comes there rises no more.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List

import numpy as np

from ..surface.basins import climb, highest_neighbour, joins
from ..surface.mesh import following
from .flow import Flow


@dataclass(frozen=True)
class Filling:
    """The tree of c nodes: g grounds, then one for each saddle where some join, from low to high.

    ``pit``: (g,) vertex of each ground; ``ground``: (n,) number of the ground of each vertex.
    ``parent``: (c,) the node of which it becomes a part, -1 for the last. ``saddle``: (c,) the vertex at which
    that happens. ``open``: (c,) bool, of the outside or joined with it;
    ``over``: (c,) vertex at which water goes on that spills out of the node, -1 where it leaves the surface.
    The last ground is the outside, with pit n.
    """

    pit: np.ndarray
    ground: np.ndarray
    parent: np.ndarray
    saddle: np.ndarray
    open: np.ndarray
    over: np.ndarray

    @property
    def grounds(self) -> int:
        return len(self.pit)


def fill_ground(flow: Flow) -> Filling:
    """Let water rise on ``flow.tin``."""
    n = len(flow.rank)
    # Turned over, pits are summits; the outside is one more place, the highest then, beside all open vertices.
    vertex = flow.tin.triangles.ravel().astype(np.int64)
    once = np.flatnonzero(flow.twin < np.arange(len(flow.twin)))
    one, other = vertex[once], vertex[following(once)]
    rising = flow.rank[one] < flow.rank[other]
    leaves = np.flatnonzero(flow.used & (flow.on_rim | (flow.vertex_sink >= 0)))
    low = np.concatenate([np.where(rising, other, one), leaves])
    high = np.concatenate([np.where(rising, one, other), np.full(len(leaves), n)])
    turned = np.append(n - 1 - flow.rank, n)
    summit = climb(turned, low, high)
    found = joins(turned, summit, low, high)
    # A rim vertex's highest neighbour is the outside itself: water that comes to it leaves there.
    below = highest_neighbour(turned, low, high)
    names = np.append(np.setdiff1d(np.unique(summit[np.append(flow.used, True)]), [n]), n)
    number = np.full(n + 1, -1, np.int64)
    number[names] = np.arange(len(names))
    return _grown(names, number[summit[:n]], number, found, below)


def _grown(names, ground, number, found, below) -> Filling:  # type: ignore[no-untyped-def]
    """The tree, grown join by join. All that meet at one saddle become one node."""
    grounds = len(names)
    tree = _Tree([-1] * grounds, [-1] * grounds, [-1] * grounds, [False] * grounds)
    tree.open[-1] = True
    top = list(range(grounds))  # the node that the root ground of each group is in by now
    group = list(range(grounds))
    outside, last = len(below) - 1, -1
    rows = zip(
        number[found.one].tolist(), number[found.other].tolist(), number[found.saddle_summit].tolist(),
        found.saddle.tolist(), found.beyond.tolist(), below[found.saddle].tolist(),
    )  # fmt: skip
    for one, other, own, vertex, beyond, under in rows:
        far = other if own == one else one
        a, b = _root(group, own), _root(group, far)
        # Out of the saddle's own ground water goes to the vertex beyond; out of the other to the saddle's lower side.
        if vertex != last:
            child, top[a], last = top[a], tree.add(), vertex
            tree.join(child, top[a], vertex, -1 if beyond == outside else beyond)
        tree.join(top[b], top[a], vertex, -1 if under == outside else under)
        group[b] = a
    return Filling(
        names, ground, np.array(tree.parent), np.array(tree.saddle), np.array(tree.open), np.array(tree.over)
    )


@dataclass(frozen=True)
class _Tree:
    """A ``Filling`` in the making, as lists."""

    parent: List[int]
    saddle: List[int]
    over: List[int]
    open: List[bool]

    def add(self) -> int:
        """A new node's number."""
        for values in (self.parent, self.saddle, self.over):
            values.append(-1)
        self.open.append(False)
        return len(self.parent) - 1

    def join(self, child: int, node: int, saddle: int, over: int) -> None:
        self.parent[child], self.saddle[child], self.over[child] = node, saddle, over
        self.open[node] = self.open[node] or self.open[child]


def _root(group: List[int], member: int) -> int:
    while group[member] != member:
        group[member] = group[group[member]]
        member = group[member]
    return member
