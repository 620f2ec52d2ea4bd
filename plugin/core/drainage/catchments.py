"""Catchments: which ground drains to each pit, pond, inlet or place of the rim, exactly divided.

The area of all catchments adds up to that of the surface. They are bounded by lines of steepest descent on the TIN,
so their resolution is the surface's: how near those lines are to the true watershed depends on the points alone.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Optional, Tuple

import numpy as np

from ..surface.filling import Filling, last_shut_node
from .fates import Fates
from .ponds import Ponds


class Outlet(IntEnum):
    """What a catchment drains to."""

    PIT = 1  #: a hollow without a pond that counts
    POND = 2
    INLET = 3
    RIM_VERTEX = 4  #: a vertex of the rim, where water comes along a channel, or the last one before it
    RIM = 5  #: over the edges of the rim, spread out
    UNDECIDED = 6  #: not decided for rounding


@dataclass(frozen=True)
class Catchments:
    """k catchments, the largest first.

    ``outlet``: (k,) int8 ``Outlet``. ``number``: (k,) vertex (PIT, RIM_VERTEX), pond or inlet; -1 for others.
    ``xyz``: (k, 3) place of the outlet, metres from the TIN's origin, and height; nan for the rim and inlets.
    ``area``: (k,) m² in plan. ``of_strip``: (p,) catchment of each strip of ``fates``; ``of_vertex``: (n,) catchment to
    which water at each vertex goes, -1 for vertices without a triangle.
    """

    fates: Fates
    outlet: np.ndarray
    number: np.ndarray
    xyz: np.ndarray
    area: np.ndarray
    of_strip: np.ndarray
    of_vertex: np.ndarray

    def __len__(self) -> int:
        return len(self.outlet)

    @property
    def drains_nowhere(self) -> np.ndarray:
        """Mask (k,) of catchments whose water stays on the site."""
        return np.isin(self.outlet, (Outlet.PIT, Outlet.POND))


def find_catchments(fates: Fates, ponds: Optional[Ponds] = None, overflow: bool = False) -> Catchments:
    """The catchments of all outlets of ``fates``.

    Without ``ponds`` every pit keeps its water. With them (of the same flow), hollows that do not count as ponds let
    water pass as if full, and pits in a pond belong to the outermost pond around them; with ``overflow`` ponds
    let it pass too, as when they are full: all water goes to an inlet or the rim.
    """
    goes = np.arange(fates.count)
    pond = np.full(fates.count, -1, np.int64)
    if ponds is not None:
        goes, pond = _passed_on(fates, ponds, overflow)
    end = goes[fates.end]
    label = np.where(pond[end] >= 0, fates.count + pond[end], end)
    names, number = np.unique(label, return_inverse=True)
    area = np.bincount(number.ravel(), fates.area, len(names))
    order = np.lexsort((names, -area))
    place = np.argsort(order)
    outlet, what, xyz = _described(fates, names[order], ponds)
    at_vertex = goes[fates.vertex]
    at_vertex = np.where(pond[at_vertex] >= 0, fates.count + pond[at_vertex], at_vertex)
    found = np.searchsorted(names, at_vertex).clip(max=max(0, len(names) - 1))
    known = names[found] == at_vertex if len(names) else np.zeros(len(at_vertex), bool)
    of_vertex = np.where(known, place[found] if len(names) else -1, -1)
    return Catchments(fates, outlet, what, xyz, area[order], place[number.ravel()], of_vertex)


def _passed_on(fates: Fates, ponds: Ponds, overflow: bool) -> Tuple[np.ndarray, np.ndarray]:
    """The end (q,) to which water at each end goes on, and the pond (q,) in which it stays, -1 none."""
    filling: Filling = ponds.filling
    goes, pond = np.arange(fates.count), np.full(fates.count, -1, np.int64)
    pits = fates.flow.pits
    ground = filling.ground[pits]
    outermost = _outermost(ponds)[ground]
    passes = np.ones(len(pits), bool) if overflow else outermost < 0
    pond[pits[~passes]] = outermost[~passes]
    node = last_shut_node(filling)[ground[passes]]
    over, saddle = filling.over[node], filling.saddle[node]
    # Off the rim or into an inlet at the saddle itself; else down from the vertex beyond it.
    goes[pits[passes]] = fates.vertex[np.where(over >= 0, over, saddle)]
    while True:
        farther = goes[goes]
        if np.array_equal(farther, goes):
            break
        goes = farther
    return goes, pond


def _outermost(ponds: Ponds) -> np.ndarray:
    """The outermost pond (c,) that each node of the filling is a part of, -1 none."""
    top = np.arange(len(ponds))
    for _ in range(len(ponds)):
        farther = np.where(ponds.parent[top] >= 0, ponds.parent[top], top)
        if np.array_equal(farther, top):
            break
        top = farther
    smallest = ponds.pond_of_nodes()
    return np.where(smallest >= 0, np.append(top, -1)[smallest], -1)


def _described(fates: Fates, names: np.ndarray, ponds: Optional[Ponds]) -> Tuple[np.ndarray, ...]:
    n, flow = len(fates.vertex), fates.flow
    vertex = np.flatnonzero(names < n)
    outlet = np.full(len(names), int(Outlet.INLET), np.int8)
    outlet[vertex] = np.where(np.isin(names[vertex], flow.pits), Outlet.PIT, Outlet.RIM_VERTEX)
    outlet[names == fates.rim] = Outlet.RIM
    outlet[names == fates.nowhere] = Outlet.UNDECIDED
    of_pond = names >= fates.count
    outlet[of_pond] = Outlet.POND
    number = np.where(outlet == Outlet.INLET, names - fates.first_inlet, -1)
    number[vertex] = names[vertex]
    number[of_pond] = names[of_pond] - fates.count
    xyz = np.full((len(names), 3), np.nan)
    xyz[vertex] = flow.tin.vertices[names[vertex]]
    if ponds is not None:
        xyz[of_pond] = ponds.pit_xyz[number[of_pond]]
    return outlet, number, xyz
