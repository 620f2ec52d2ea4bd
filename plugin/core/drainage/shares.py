"""The catchments of a site as people ask for them: inlets, ponds and the main outlets, the rest of the rim together."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence, Tuple

import numpy as np

from .boundaries import outlines, watersheds
from .catchments import Catchments, Outlet, find_catchments
from .fates import Fates
from .inlet_list import Inlet
from .ponds import Ponds
from .rings import Polygon, polygons_of


@dataclass(frozen=True)
class Shares:
    """k rows that divide the whole surface, the largest first.

    ``outlet``: (k,) int8 ``Outlet``; RIM stands for all of the rim but the outlets that have their own row.
    ``number``: (k,) vertex (PIT, RIM_VERTEX), pond or inlet; -1 for others. ``name``: the inlet's, or P1, P2 ... for
    ponds by depth, O1, O2 ... for outlets on the rim and H1, H2 ... for single pits by area; "" for the rest.
    ``xyz``: (k, 3) place of the outlet in metres of the CRS, and height, nan where it is none. ``area``: (k,) m² in
    plan. ``nowhere``: (k,) m² of it whose water stays in a pond or pit until that is full. ``of_strip``: (p,) row of
    each strip of ``fates``. ``merged``: outlets of the rim that are counted together.
    """

    fates: Fates
    outlet: np.ndarray
    number: np.ndarray
    name: Tuple[str, ...]
    xyz: np.ndarray
    area: np.ndarray
    nowhere: np.ndarray
    of_strip: np.ndarray
    merged: int

    def __len__(self) -> int:
        return len(self.outlet)

    def polygons(self) -> Tuple[Tuple[Polygon, ...], ...]:
        """Each row's ground as polygons of rings (q, 2) in metres of the CRS, outer ring first."""
        origin = self.fates.flow.tin.origin
        parts: List[Tuple[Polygon, ...]] = [()] * len(self)
        for outline in outlines(self.fates, self.of_strip):
            parts[outline.label] = polygons_of([ring + origin for ring in outline.rings])
        return tuple(parts)

    def colours(self) -> np.ndarray:
        """A small number (k,) for each row, different for neighbours: each takes the least that is free.

        -1 for the rest of the rim.
        """
        one, other, _ = watersheds(self.fates, self.of_strip)
        beside: List[set] = [set() for _ in range(len(self))]
        for a, b in np.unique(np.column_stack([one, other]), axis=0).tolist():
            beside[a].add(b)
            beside[b].add(a)
        colour = np.full(len(self), -1, np.int64)
        for row in np.flatnonzero(self.outlet != Outlet.RIM).tolist():
            taken = {int(colour[k]) for k in beside[row]}
            colour[row] = next(c for c in range(len(self) + 1) if c not in taken)
        return colour


def shared_out(catchments: Catchments, ponds: Ponds, inlets: Sequence[Inlet] = (), min_area: float = 0.0) -> Shares:
    """Rows of ``catchments``. Outlets on the rim that drain less than ``min_area`` m² become one with the rest of it.

    ``inlets``: those of the numbers that the flow knows; for their names.
    """
    outlet = catchments.outlet
    small = (outlet == Outlet.RIM_VERTEX) & (catchments.area < min_area)
    rest = small | (outlet == Outlet.RIM)
    row = np.where(rest, -1, np.arange(len(catchments)))
    kept = np.flatnonzero(~rest)
    groups = np.append(kept, -1) if np.any(rest) else kept
    area = np.append(catchments.area[kept], catchments.area[rest].sum()) if np.any(rest) else catchments.area[kept]
    order = np.argsort(-area, kind="stable")
    groups, area = groups[order], area[order]
    place = np.full(len(catchments) + 1, -1, np.int64)
    place[groups] = np.arange(len(groups))  # the rest of the rim at the end, for index -1
    of_strip = place[row][catchments.of_strip]
    own = np.maximum(groups, 0)
    kind = np.where(groups < 0, int(Outlet.RIM), outlet[own]).astype(np.int8)
    number = np.where(groups < 0, -1, catchments.number[own])
    xyz = np.where((groups < 0)[:, None], np.nan, catchments.xyz[own]) + np.append(catchments.fates.flow.tin.origin, 0)
    for i in np.flatnonzero(kind == Outlet.INLET):
        if number[i] < len(inlets):
            xyz[i, :2] = np.concatenate(inlets[number[i]].parts).mean(axis=0)
    stays = find_catchments(catchments.fates, ponds)
    held = stays.drains_nowhere[stays.of_strip] | catchments.drains_nowhere[catchments.of_strip]
    nowhere = np.bincount(of_strip, catchments.fates.area * held, len(groups))
    return Shares(
        catchments.fates, kind, number, _names(kind, number, inlets), xyz, area, nowhere, of_strip,
        int(np.count_nonzero(small)),
    )  # fmt: skip


def pond_name(number: int) -> str:
    return f"P{number + 1}"


def _names(kind: np.ndarray, number: np.ndarray, inlets: Sequence[Inlet]) -> Tuple[str, ...]:
    names, outlets, pits = [], 0, 0
    for what, which in zip(kind.tolist(), number.tolist()):
        if what == Outlet.INLET:
            names.append(inlets[which].name if which < len(inlets) else str(which + 1))
        elif what == Outlet.POND:
            names.append(pond_name(which))
        elif what == Outlet.RIM_VERTEX:
            outlets += 1
            names.append(f"O{outlets}")
        elif what == Outlet.PIT:
            pits += 1
            names.append(f"H{pits}")
        else:
            names.append("")
    return tuple(names)
