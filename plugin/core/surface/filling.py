"""Which hollows fill to one pond, as water rises: the tree of joins.

Every vertex without a lower neighbour is a pit with a ground, the vertices from which one comes to it by always
going to the lowest neighbour. As water rises, the ponds of two grounds join at the lowest vertex with neighbours in
both. The ground beyond the rim and in inlets is lower than everything: a pond that comes there rises no more.

All that meet at one level, directly or through others, join at once, whatever the order of their sills.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Dict, List, Tuple

import numpy as np

from .basins import climb, highest_neighbour, joins, ranked_edges
from .tin import Tin


@dataclass(frozen=True)
class Filling:
    """The tree of c nodes: g grounds, then one for each saddle where some join, from low to high.

    ``pit``: (g,) vertex of each ground; ``ground``: (n,) number of the ground of each vertex.
    ``parent``: (c,) the node of which it becomes a part, -1 for the last. ``saddle``: (c,) the vertex at which
    that happens. ``open``: (c,) bool, of the outside or joined with it;
    ``over``: (c,) vertex, past the brim, at which water goes on that spills, -1 where it leaves the surface.
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


def fill_surface(tin: Tin, rank: np.ndarray, leaves: np.ndarray) -> Filling:
    """Let water rise on ``tin``; ``rank``: (n,) order of heights, as :func:`.basins.height_order`; ``leaves``: (n,)
    mask of vertices at which water leaves."""
    n = len(rank)
    used = np.zeros(n, bool)
    used[tin.triangles] = True
    # Turned over, pits are summits; the outside is one more place, the highest then, beside all open vertices.
    edges, out = ranked_edges(tin, rank), np.flatnonzero(used & leaves)
    low = np.concatenate([edges.high, out])
    high = np.concatenate([edges.low, np.full(len(out), n)])
    turned = np.append(n - 1 - rank, n)
    summit = climb(turned, low, high)
    found = joins(turned, summit, low, high)
    # A rim vertex's highest neighbour is the outside itself: water that comes to it leaves there.
    below = highest_neighbour(turned, low, high)
    names = np.append(np.setdiff1d(np.unique(summit[np.append(used, True)]), [n]), n)
    number = np.full(n + 1, -1, np.int64)
    number[names] = np.arange(len(names))
    height = tin.vertices[:, 2]
    filling = _grown(names, number[summit[:n]], number, found, below, rank, height)
    return replace(filling, over=_past_level_ground(height, filling, below))


def lowest_vertices(rank: np.ndarray, filling: Filling) -> np.ndarray:
    """The lowest vertex (c,) of each node; n for the outside."""
    n = len(rank)
    least = [*np.append(rank, n)[filling.pit].tolist(), *([n] * (len(filling.parent) - filling.grounds))]
    for child, node in enumerate(filling.parent.tolist()):
        if node >= 0 and least[child] < least[node]:
            least[node] = least[child]
    at_rank = np.append(np.argsort(rank), n)
    lowest: np.ndarray = at_rank[np.array(least)]
    return lowest


def last_shut_node(filling: Filling) -> np.ndarray:
    """The last node (c,) that each is a part of before water finds a way off the surface; an open node itself."""
    return last_while(filling, (filling.parent >= 0) & ~filling.open[filling.parent])


def last_while(filling: Filling, on: np.ndarray) -> np.ndarray:
    """The node (c,) to which each comes by going to the parent, and on, as long as the mask ``on`` (c,) says so."""
    found = np.arange(len(filling.parent)).tolist()
    goes, parent = on.tolist(), filling.parent.tolist()
    for child in range(len(parent) - 1, -1, -1):
        if goes[child]:
            found[child] = found[parent[child]]
    return np.array(found, np.int64)


def _past_level_ground(z: np.ndarray, filling: Filling, below: np.ndarray) -> np.ndarray:
    """``filling.over`` led on to where the ground is lower than the brim, or to the rim or an inlet.

    A brim on level ground may have its shortest way down on the side the water comes from, so the vertex beyond the
    saddle isn't always past it. Level ground is left by the lowest neighbours in the order of rank.
    """
    height, outside = np.append(z, np.nan), len(z)
    over, brim = filling.over.copy(), height[filling.saddle]
    active = np.flatnonzero((over >= 0) & (height[over] == brim))
    while len(active):
        after = below[over[active]]
        on = np.flatnonzero((after != outside) & (after != over[active]))
        active = active[on]
        over[active] = after[on]
        active = active[height[over[active]] == brim[active]]
    return over


def _grown(names, ground, number, found, below, rank, height) -> Filling:  # type: ignore[no-untyped-def]
    """The tree, grown level by level. All that meet at one level, directly or through others, become one node."""
    grounds, outside = len(names), len(below) - 1
    open_, lowest = [False] * (grounds - 1) + [True], [*rank[names[:-1]].tolist(), -1]
    hollow = [*height[names[:-1]].tolist(), -np.inf]
    tree = _Tree([-1] * grounds, [-1] * grounds, [-1] * grounds, open_, lowest, hollow)
    top = list(range(grounds))  # the node that the root ground of each group is in by now
    group = list(range(grounds))
    rows = zip(
        number[found.one].tolist(), number[found.other].tolist(), number[found.saddle_summit].tolist(),
        found.saddle.tolist(), found.beyond.tolist(), below[found.saddle].tolist(), height[found.saddle].tolist(),
    )  # fmt: skip
    met: List[Tuple[int, int, _Saddle]] = []  # root grounds that meet at the level, and where
    level = -np.inf
    for one, other, own, vertex, beyond, under, now in rows:
        if now != level:
            _join_groups(tree, top, group, met, level)
            met, level = [], now
        a, b = _root(group, own), _root(group, other if own == one else one)
        ways = (-1 if under == outside else under, -1 if beyond == outside else beyond)
        met.append((a, b, (vertex, *ways)))
    _join_groups(tree, top, group, met, level)
    return Filling(
        names, ground, np.array(tree.parent), np.array(tree.saddle), np.array(tree.open), np.array(tree.over)
    )


_Saddle = Tuple[int, int, int]  # its vertex, and those at which water over it enters the one and the other ground


def _join_groups(
    tree: _Tree, top: List[int], group: List[int], met: List[Tuple[int, int, _Saddle]], level: float
) -> None:
    """Join the groups of grounds that ``met`` at one level: a node for all that hang together."""
    for a, b, _ in met:
        group[_root(group, b)] = _root(group, a)
    parts: Dict[int, _Meeting] = {}
    for a, b, (vertex, into_a, into_b) in met:
        meeting = parts.setdefault(_root(group, a), _Meeting({}, {}))
        for root, entry in ((a, into_a), (b, into_b)):
            meeting.saddles.setdefault(top[root], []).append(vertex)
            meeting.entries.setdefault(vertex, {})[top[root]] = entry
    for root, meeting in parts.items():
        top[root] = tree.join(meeting, level)


@dataclass(frozen=True)
class _Meeting:
    """Nodes that meet at one level: the ``saddles`` of each, and by saddle the vertex at which water over it enters
    each node there. Saddles and nodes make a tree."""

    saddles: Dict[int, List[int]]
    entries: Dict[int, Dict[int, int]]


@dataclass(frozen=True)
class _Tree:
    """A ``Filling`` in the making, as lists; ``lowest``: rank of the lowest vertex of each node, -1 when open;
    ``floor``: its height."""

    parent: List[int]
    saddle: List[int]
    over: List[int]
    open: List[bool]
    lowest: List[int]
    floor: List[float]

    def join(self, meeting: _Meeting, level: float) -> int:
        """Make nodes that meet at a ``level`` one, and return its number.

        All spill to the one where water leaves the surface or, if none does, to the deepest, which spills to the
        second; over the saddles on the way there. A node as high as the level holds nothing: it is passed by.
        """
        node = len(self.parent)
        first, second = sorted(meeting.saddles, key=lambda each: self.lowest[each])[:2]
        ways = self._ways(meeting, first, level)
        if not self.open[first]:
            ways[first] = self._ways(meeting, second, level)[first]
        for child in meeting.saddles:
            self.parent[child] = node
            self.saddle[child], self.over[child] = ways.get(child, (next(iter(meeting.entries)), -1))
        for values in (self.parent, self.saddle, self.over):
            values.append(-1)
        self.open.append(self.open[first])
        self.lowest.append(self.lowest[first])
        self.floor.append(self.floor[first])
        return node

    def _ways(self, meeting: _Meeting, goal: int, level: float) -> Dict[int, Tuple[int, int]]:
        """For each node but the ``goal`` its saddle on the way there, and the vertex where the water enters a node."""
        ways: Dict[int, Tuple[int, int]] = {}
        passed, todo = set(), [goal]
        for node in todo:
            for saddle in meeting.saddles[node]:
                if saddle in passed:
                    continue
                passed.add(saddle)
                entries = meeting.entries[saddle]
                entry = entries[node]
                if node != goal and self.floor[node] >= level:  # on with its water, be it off the surface at its saddle
                    entry = ways[node][1] if ways[node][1] >= 0 else ways[node][0]
                for other in entries:
                    if other != node:
                        ways[other] = (saddle, entry)
                        todo.append(other)
        return ways


def _root(group: List[int], member: int) -> int:
    while group[member] != member:
        group[member] = group[group[member]]
        member = group[member]
    return member
