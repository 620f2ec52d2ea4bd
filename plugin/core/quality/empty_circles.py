"""The largest circles on a surface that hold no measured point: where the ground was guessed.

A circle with its centre on the surface is largest where the centre is a corner of the Voronoi diagram of the measured
points (the centre of a Delaunay triangle's circumscribed circle), or on the rim (Toussaint 1983, "Computing largest
empty circles with location constraints"). Vertices that only a drawn line gave are no measured points.
"""

from __future__ import annotations

import heapq
from dataclasses import dataclass
from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..progress import Progress, named, part, silent
from ..surface.delaunay import triangulate
from ..surface.locate import locate
from ..surface.mesh import Mesh
from ..surface.predicates import orientation
from ..surface.scan import scan_triangles
from ..surface.tin import GRID, Tin

#: The rim is looked at in steps of this share of the limit, the gaps in a lattice of the other.
_RIM_STEP = 0.25
_LATTICE_STEP = 0.25
_CELLS = 1 << 20
_TOGETHER = 1 << 17  # places asked at once
_ASK = 64  # places chosen between two looks at whether to go on
#: Places that are looked at: at least so many, and so many for each vertex.
_PLACES, _PLACES_PER_VERTEX = 50_000, 10


@dataclass(frozen=True)
class EmptyCircles:
    """k circles, widest first, that do not overlap. ``easting``, ``northing``, ``radius``: (k,), metres."""

    easting: np.ndarray
    northing: np.ndarray
    radius: np.ndarray

    def __len__(self) -> int:
        return len(self.radius)


class Openings:
    """What is needed to find the places on a surface that are ``least`` metres or more from every measured point.

    ``centre``: (k, 2) candidate places on the surface, metres from its origin, those farthest from measured points
    first; ``radius``: (k,) how far. Places inside are exact; on the rim they are found to an eighth of ``least``, or of
    the median edge there if that is longer. ``skipped``: square metres of the widest triangles that are not looked
    at, where few far points would make more places than there is ground measured. ``more``: (k, 2) measured
    places, metres in the CRS, that are no vertices of ``tin``.
    """

    def __init__(
        self, tin: Tin, least: float, progress: Progress = silent, more: np.ndarray = np.empty((0, 2))  # noqa: B008
    ) -> None:  # fmt: skip
        self.tin, self.least, self.progress = tin, least, part(progress, 0.5, 1.0)
        self.skipped = 0.0
        self.site = _measured(tin)
        if len(more):
            self.site = np.unique(np.vstack([self.site, np.rint((more - tin.origin) / GRID).astype(np.int64)]), axis=0)
        progress(0.0, "quality")
        centre, radius = _candidates(tin, self.site, least, named("quality", part(progress, 0.0, 0.4)))
        progress(0.4, "quality")
        inside = locate(tin, centre + tin.origin) >= 0 if len(centre) else np.empty(0, bool)
        self.centre, self.radius = centre[inside], radius[inside]

    def away(self, places: np.ndarray) -> np.ndarray:
        """Distance (k,) from places (k, 2), metres in the CRS, to the nearest measured point."""
        return np.asarray(cKDTree(self.site * GRID).query(places - self.tin.origin)[0]) if len(places) else np.empty(0)

    def circles(self, most: int = 50) -> EmptyCircles:
        """The ``most`` widest circles, each the widest that overlaps none before it."""
        at = np.array(_disjoint(self.centre, self.radius, most), np.int64)
        east, north = (self.centre[at] + self.tin.origin).T
        return EmptyCircles(east, north, self.radius[at])

    def cover(self) -> Tuple[np.ndarray, np.ndarray]:
        """Places (k, 2), metres in the CRS, that leave none farther than ``least`` from them or a measured point.

        Each is on the surface and, when its turn came, was the farthest from all measured points and the places
        before it: the second result (k,), metres (the greedy cover of Gonzalez 1985). Between the places that are
        looked at, a lattice of ``least / 4``, up to a fifth of ``least`` more may remain.
        """
        self.progress(0.0, "quality")
        rim = _rim_places(self.tin, self.least, _RIM_STEP * self.least)
        lattice, self.skipped = _lattice(self.tin, self.least, self.progress)
        place = np.concatenate([self.centre, rim, lattice])
        tree, distance = cKDTree(self.site * GRID), np.empty(len(place))
        for start in range(0, len(place), _TOGETHER):
            self.progress(0.3, "quality")
            distance[start : start + _TOGETHER] = tree.query(place[start : start + _TOGETHER])[0]
        self.progress(0.3, "quality")
        far = np.flatnonzero(distance > self.least)
        far = far[np.lexsort((place[far, 1], place[far, 0]))]
        chosen, reach = _farthest_first(place[far], distance[far], self.least, self.progress)
        return place[far[chosen]] + self.tin.origin, reach


def circumcircles(mesh: Mesh) -> Tuple[np.ndarray, np.ndarray]:
    """Centre (m, 2) and radius (m,) of the circle through the corners of each triangle, metres from the origin."""
    corner = mesh.vertex.reshape(-1, 3)
    a, b, c = corner.T
    ux, uy = (mesh.x[b] - mesh.x[a]).astype(float), (mesh.y[b] - mesh.y[a]).astype(float)
    vx, vy = (mesh.x[c] - mesh.x[a]).astype(float), (mesh.y[c] - mesh.y[a]).astype(float)
    area = 2.0 * orientation(mesh.x, mesh.y, a, b, c)
    u, v = ux * ux + uy * uy, vx * vx + vy * vy
    x, y = (vy * u - uy * v) / area, (ux * v - vx * u) / area
    return np.column_stack([mesh.x[a] + x, mesh.y[a] + y]) * GRID, np.hypot(x, y) * GRID


def _measured(tin: Tin) -> np.ndarray:
    """Plan places (k, 2) int64 in grid units of the measured vertices; of all where survey points are too few."""
    known = tin.vertex_source >= 0
    places: np.ndarray = tin.grid[known] if np.count_nonzero(known) > 2 else tin.grid
    return places


def _candidates(tin: Tin, site: np.ndarray, least: float, progress: Progress) -> Tuple[np.ndarray, np.ndarray]:
    """Candidate centres (k, 2), metres from the origin, and radii (k,) not below ``least``; widest first."""
    x, y = np.ascontiguousarray(site.T)
    centre, radius = circumcircles(triangulate(x, y, progress=progress))
    rim = _rim_places(tin, least, _RIM_STEP * max(least, _median_rim_edge(tin)))
    if len(rim):
        centre = np.concatenate([centre, rim])
        radius = np.concatenate([radius, cKDTree(site * GRID).query(rim)[0]])
    wide = radius >= least
    centre, radius = centre[wide], radius[wide]
    order = np.lexsort((centre[:, 1], centre[:, 0], -np.round(radius, 6)))
    return centre[order], radius[order]


def _rim_ends(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """The vertices (k,) at both ends of each rim edge."""
    triangle, edge = np.nonzero(tin.neighbours < 0)
    return tin.triangles[triangle, edge], tin.triangles[triangle, (edge + 1) % 3]


def _median_rim_edge(tin: Tin) -> float:
    """Plan length, metres; 0 where there is no rim."""
    a, b = (tin.vertices[end, :2] for end in _rim_ends(tin))
    return float(np.median(np.hypot(*(b - a).T))) if len(a) else 0.0


def _rim_places(tin: Tin, least: float, step: float) -> np.ndarray:
    """Places (k, 2), ``step`` (m) apart at most, along rim edges that can be farther than ``least`` from a measured
    point.
    """
    ends = _rim_ends(tin)
    a, b = (tin.vertices[end, :2] for end in ends)
    length = np.hypot(*(b - a).T)
    if len(length) == 0:
        return np.empty((0, 2))
    drawn = (tin.vertex_source[ends[0]] < 0) | (tin.vertex_source[ends[1]] < 0)
    some = np.flatnonzero(drawn | (length > 2 * least))
    parts = 2 * np.ceil(length[some] / (2 * step)).astype(np.int64)  # even: the middle is looked at
    few = within_budget(parts, _budget(tin) / 5)
    some, parts = some[few], parts[few]
    of = np.repeat(some, parts + 1)
    first = np.cumsum(parts + 1) - (parts + 1)
    share = (np.arange(len(of)) - np.repeat(first, parts + 1)) / np.repeat(parts, parts + 1)
    places: np.ndarray = a[of] + share[:, None] * (b[of] - a[of])
    return places


def _disjoint(centre: np.ndarray, radius: np.ndarray, most: int) -> List[int]:
    """Indices of up to ``most`` circles, in their order, each of which overlaps none taken before."""
    free = np.ones(len(radius), bool)
    taken: List[int] = []
    tree = cKDTree(centre) if len(centre) else None
    for i in range(len(radius)):
        if len(taken) >= most or tree is None:
            break
        if not free[i]:
            continue
        taken.append(i)
        near = np.array(tree.query_ball_point(centre[i], 2 * radius[i]), np.int64)
        gap = np.hypot(*(centre[near] - centre[i]).T)
        free[near[gap < radius[i] + radius[near]]] = False
    return taken


def _budget(tin: Tin) -> int:
    return max(_PLACES, _PLACES_PER_VERTEX * len(tin.vertices))


def within_budget(count: np.ndarray, budget: float) -> np.ndarray:
    """Indices, rising, of the least of ``count`` (k,) whose sum stays within ``budget``; of equals the first."""
    order = np.argsort(count, kind="stable")
    result: np.ndarray = np.sort(order[np.cumsum(count[order]) <= budget])
    return result


def _lattice(tin: Tin, limit: float, progress: Progress) -> Tuple[np.ndarray, float]:
    """Places (k, 2) of a square lattice in the triangles that can hold a place farther than ``limit`` from a corner.

    Of the widest triangles, that would hold too many, none; the second result is their area, square metres.
    """
    step = _LATTICE_STEP * limit
    corner = tin.vertices[tin.triangles][:, :, :2]
    longest = tin.edge_lengths().max(axis=1)
    drawn = np.any(tin.vertex_source[tin.triangles] < 0, axis=1)
    # The farthest place from the corners: the circle's centre if no angle is obtuse (then the radius is at most
    # longest / sqrt 3), else one on the longest side, at most half of it away.
    some = np.flatnonzero(drawn | (longest > 3**0.5 * limit))
    u, v = corner[some, 1] - corner[some, 0], corner[some, 2] - corner[some, 0]
    area = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2
    # A long thin triangle is crossed by many rows that hold nothing.
    rows_of = np.ptp(corner[some, :, 1], axis=1) / step
    few = within_budget(area / step**2 + rows_of, _budget(tin))
    skipped = float(area.sum() - area[few].sum())
    some = some[few]
    if len(some) == 0:
        return np.empty((0, 2)), skipped
    place = (tin.vertices[:, 0] + 1j * tin.vertices[:, 1]) / step
    columns, rows = (int(np.ceil(part.max())) + 1 for part in (place.real, place.imag))
    found = []
    for done, spans in scan_triangles(place, tin.vertices[:, 2], tin.triangles[some], columns, rows):
        progress(0.3 * done / len(some), "quality")
        for some_cells in spans.parts(_CELLS):
            of, column = some_cells.cells()
            found.append(np.column_stack([column, some_cells.row[of]]) * step)
    return np.concatenate(found) if found else np.empty((0, 2)), skipped


def _farthest_first(
    place: np.ndarray, distance: np.ndarray, limit: float, progress: Progress
) -> Tuple[np.ndarray, np.ndarray]:
    """Greedy cover: indices of the places taken, and how far each was from everything when it was taken."""
    distance = distance.copy()
    heap = [(-d, i) for i, d in enumerate(distance.tolist())]
    heapq.heapify(heap)
    tree = cKDTree(place) if len(place) else None
    chosen: List[int] = []
    reach: List[float] = []
    while heap and tree is not None:
        said, i = heapq.heappop(heap)
        now = float(distance[i])
        if now <= limit:
            continue
        if -said > now:  # a place taken since is nearer
            heapq.heappush(heap, (-now, i))
            continue
        if len(chosen) % _ASK == 0:
            progress(0.3 + 0.7 * (1 - len(heap) / len(place)), "quality")
        chosen.append(i)
        reach.append(now)
        near = np.array(tree.query_ball_point(place[i], now), np.int64)
        distance[near] = np.minimum(distance[near], np.hypot(*(place[near] - place[i]).T))
    return np.array(chosen, np.int64), np.array(reach, float)
