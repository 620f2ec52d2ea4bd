"""All about the water of one surface, and what a change of the surface does to it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Optional, Tuple

import numpy as np

from ..progress import Progress, part, silent
from ..surface.locate import heights_in, locate, weights_in
from ..surface.tin import Tin
from .boundaries import strip_at
from .catchments import Catchments, Outlet, find_catchments
from .destinations import Destination, destinations
from .fates import Fates, find_fates
from .flow import Flow, build_flow
from .paths import in_polygons
from .ponds import PondOptions, Ponds, find_ponds, members

_SAME_DEPTH = 1e-6  # metres


@dataclass(frozen=True)
class Drainage:
    """The way of water, ponds and catchments of one surface."""

    flow: Flow
    ponds: Ponds
    fates: Fates
    catchments: Catchments


def analyse(
    tin: Tin,
    inlets: Optional[np.ndarray] = None,
    options: PondOptions = PondOptions(),  # noqa: B008  frozen
    overflow: bool = False,
    progress: Progress = silent,
) -> Drainage:
    """Ponds and catchments of ``tin``; ``inlets``: (m,) inlet of each triangle, -1 none (:mod:`.inlets`).

    ``overflow``: ponds are full and pass their water on, see ``find_catchments``.
    """
    flow = build_flow(tin, inlets)
    ponds = find_ponds(flow, options, part(progress, 0.1, 0.3))
    fates = find_fates(flow, part(progress, 0.3, 1.0))
    return Drainage(flow, ponds, fates, find_catchments(fates, ponds, overflow))


def catchment_at(catchments: Catchments, xy: np.ndarray) -> np.ndarray:
    """Catchment (q,) to which each place ``xy`` (q, 2), metres of the CRS, drains; -1 off the surface."""
    flow = catchments.fates.flow
    triangle = locate(flow.tin, xy)
    on = np.flatnonzero(triangle >= 0)
    weight = weights_in(flow.tin, triangle[on], np.asarray(xy, float)[on] - flow.tin.origin)
    stream = np.sum(weight * flow.stream[triangle[on]], axis=1)
    result = np.full(len(triangle), -1, np.int64)
    result[on] = catchments.of_strip[strip_at(catchments.fates, triangle[on], stream)]
    return result


def water_at(flow: Flow, ponds: Ponds, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """The outermost pond (q,) under which each place ``xy`` (q, 2), metres of the CRS, lies when all are full, -1 none,
    and the depth of water there (q,), metres, 0 where it is dry."""
    m = len(flow.level)
    held = np.full(m, -1, np.int64)
    part_of = members(flow, ponds)
    top = np.where(ponds.parent < 0, np.arange(len(ponds)), -1)
    for _ in range(len(ponds)):
        open_ones = np.flatnonzero(top < 0)
        if len(open_ones) == 0:
            break
        top[open_ones] = top[ponds.parent[open_ones]]
    pond = top[part_of.pond] if len(ponds) else part_of.pond
    order = np.argsort(ponds.level[pond]) if len(pond) else pond
    held[part_of.triangle[order]] = pond[order]
    triangle = locate(flow.tin, xy)
    on = np.flatnonzero(triangle >= 0)
    on = on[held[triangle[on]] >= 0]
    result, depth = np.full(len(triangle), -1, np.int64), np.zeros(len(triangle))
    height = heights_in(flow.tin, triangle[on], np.asarray(xy, float)[on] - flow.tin.origin)
    under = ponds.level[held[triangle[on]]] - height
    wet = on[under > 0]
    result[wet], depth[wet] = held[triangle[wet]], under[under > 0]
    return result, depth


@dataclass(frozen=True)
class PondChange:
    """A pond ``before`` and ``after`` (numbers, -1 for none): what changes in depth (m), area (m²) and volume (m³)."""

    before: int
    after: int
    depth: float
    area: float
    volume: float

    @property
    def word(self) -> str:
        """new, gone, deeper, shallower or unchanged."""
        if self.before < 0:
            return "new"
        if self.after < 0:
            return "gone"
        if abs(self.depth) <= _SAME_DEPTH:
            return "unchanged"
        return "deeper" if self.depth > 0 else "shallower"


@dataclass(frozen=True)
class Moved:
    """Ground whose water goes elsewhere: kind and number of the old and the new outlet, and ``area`` m².

    Inlets have their numbers, -1 stands for all of the rim (RIM) and for all hollows (POND).
    """

    before: Destination
    after: Destination
    area: float


@dataclass(frozen=True)
class AreaChange:
    """Ground (m²) that drains to an inlet, the rim or hollows, ``before`` and ``after``, of each whole surface."""

    destination: Destination
    before: float
    after: float


@dataclass(frozen=True)
class DrainageChange:
    """What a change of the surface does.

    ``ponds``: outermost ponds, by size of the change in volume. ``moved``: by area, found at places ``spacing``
    metres apart on the ground both surfaces cover, so in steps of ``spacing`` squared. ``common_area``: m², so counted.
    ``standing_before``, ``standing_after``: m³ in full ponds where both surfaces reach, ``elsewhere``: how many ponds
    do not lie there and are not compared. ``kept_before``, ``kept_after``: m² of each whole surface that drain nowhere.
    ``areas``: by destination, inlets first.
    """

    ponds: Tuple[PondChange, ...]
    moved: Tuple[Moved, ...]
    spacing: float
    common_area: float
    standing_before: float
    standing_after: float
    kept_before: float
    kept_after: float
    elsewhere: int = 0
    areas: Tuple[AreaChange, ...] = ()


def compare(before: Drainage, after: Drainage, spacing: float) -> DrainageChange:
    """The difference of two results, as of the ground and a design. Inlets keep their numbers."""
    ours, theirs = _on_both(before, after), _on_both(after, before)
    standing = [float(d.ponds.volume[which].sum()) for d, which in ((before, ours), (after, theirs))]
    elsewhere = len(before.ponds.outermost) - len(ours) + len(after.ponds.outermost) - len(theirs)
    kept = [float(d.catchments.area[d.catchments.drains_nowhere].sum()) for d in (before, after)]
    places, ends = _common_ends(before, after, spacing)
    moved = _moved(ends, spacing)
    return DrainageChange(
        _pond_changes(before, after, ours, theirs), moved, spacing, len(places) * spacing**2, standing[0], standing[1],
        kept[0], kept[1], elsewhere, _area_changes(before, after),
    )  # fmt: skip


def _area_changes(before: Drainage, after: Drainage) -> Tuple[AreaChange, ...]:
    sums: List[Dict[Destination, float]] = []
    for drainage in (before, after):
        total: Dict[Destination, float] = {}
        rows = zip(destinations(drainage.catchments).tolist(), drainage.catchments.area.tolist())
        for (kind, number), area in rows:
            total[Outlet(kind), number] = total.get((Outlet(kind), number), 0.0) + area
        sums.append(total)
    every = sorted({*sums[0], *sums[1]}, key=lambda end: (end[0] is not Outlet.INLET, end))
    return tuple(AreaChange(end, sums[0].get(end, 0.0), sums[1].get(end, 0.0)) for end in every)


def moved_places(before: Drainage, after: Drainage, spacing: float) -> np.ndarray:
    """Places (k, 2) of a square grid, metres of the CRS, whose water goes elsewhere after the change."""
    places, ends = _common_ends(before, after, spacing)
    moved: np.ndarray = places[np.any(ends[0] != ends[1], axis=1)]
    return moved


def _common_ends(before: Drainage, after: Drainage, spacing: float) -> Tuple[np.ndarray, List[np.ndarray]]:
    """Places (k, 2) of a square grid on both surfaces, and their destination (k, 2) on each."""
    west, south, east, north = before.flow.tin.bounds
    ring = np.array([[west, south], [east, south], [east, north], [west, north]])
    places = in_polygons([[ring]], spacing)
    where = [catchment_at(d.catchments, places) for d in (before, after)]
    common = np.flatnonzero((where[0] >= 0) & (where[1] >= 0))
    return places[common], [destinations(d.catchments)[w[common]] for d, w in zip((before, after), where)]


def _moved(outlets: list, spacing: float) -> Tuple[Moved, ...]:
    pairs = np.column_stack(outlets)
    pairs = pairs[np.any(outlets[0] != outlets[1], axis=1)]
    if len(pairs) == 0:
        return ()
    kinds, count = np.unique(pairs, axis=0, return_counts=True)
    return tuple(
        Moved((Outlet(kinds[i, 0]), int(kinds[i, 1])), (Outlet(kinds[i, 2]), int(kinds[i, 3])), count[i] * spacing**2)
        for i in np.argsort(-count, kind="stable")
    )


def _on_both(own: Drainage, other: Drainage) -> np.ndarray:
    """The outermost ponds of ``own`` whose pit lies on the other surface too."""
    outer = own.ponds.outermost
    place = own.ponds.pit_xyz[outer, :2] + own.ponds.origin
    there: np.ndarray = outer[locate(other.flow.tin, place) >= 0]
    return there


def _pond_changes(before: Drainage, after: Drainage, ours: np.ndarray, theirs: np.ndarray) -> Tuple[PondChange, ...]:
    """Ponds matched where the pit of one lies under the other's water; the rest are gone or new."""
    one, two = before.ponds, after.ponds
    origin = before.flow.tin.origin
    under_two = water_at(after.flow, two, one.pit_xyz[ours, :2] + origin)[0]
    under_one = water_at(before.flow, one, two.pit_xyz[theirs, :2] + after.flow.tin.origin)[0]
    pairs = [(int(a), int(b)) for a, b in zip(ours, under_two) if b >= 0]
    pairs += [(int(a), int(b)) for a, b in zip(under_one, theirs) if a >= 0]
    match_one, match_two = {}, {}
    for a, b in pairs:
        if a not in match_one and b not in match_two:
            match_one[a], match_two[b] = b, a
    rows = [(int(a), match_one.get(int(a), -1)) for a in ours] + [
        (-1, int(b)) for b in theirs if int(b) not in match_two
    ]
    changes = [
        PondChange(a, b, *(_less(one, two, a, b, name) for name in ("depth", "area", "volume"))) for a, b in rows
    ]
    return tuple(sorted(changes, key=lambda change: -abs(change.volume)))


def _less(one: Ponds, two: Ponds, a: int, b: int, name: str) -> float:
    old = float(getattr(one, name)[a]) if a >= 0 else 0.0
    new = float(getattr(two, name)[b]) if b >= 0 else 0.0
    return new - old
