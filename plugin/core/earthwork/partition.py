"""The plane cut into triangles along the rings of regions, to say which regions each place is in."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence, Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import make_points
from ..surface.build import SurfaceOptions, build_surface
from ..surface.crossings import CrossingRule
from ..surface.parts import connected_parts
from ..surface.region import even_odd
from ..surface.tin import GRID, Tin

EMPTY_REGION = Text(
    "earthwork.empty_region",
    QT_TRANSLATE_NOOP("core", "Region {name} has a ring of {count} corners with coordinates; a ring needs three."),
)

Bounds = Tuple[float, float, float, float]


@dataclass(frozen=True)
class Region:
    """A polygon: its closed ``rings``, each (k, 2) metres in the CRS, by the even-odd rule (holes, several parts)."""

    name: str
    rings: Tuple[np.ndarray, ...]

    @property
    def bounds(self) -> Bounds:
        xy = np.vstack([ring[:, :2] for ring in self.rings])
        return (*xy.min(axis=0).tolist(), *xy.max(axis=0).tolist())  # type: ignore[return-value]


@dataclass(frozen=True)
class Partition:
    """``tin``: triangles that cover the regions and what lies around, heights 0; no ring runs through one.

    ``inside``: (r, m) bool, whether triangle m is in region r. Rings stand on the 0.1 mm grid of the surfaces.
    """

    tin: Tin
    inside: np.ndarray


def make_partition(
    regions: Sequence[Region], bounds: Bounds, crs: object = None, lines: Sequence[np.ndarray] = ()
) -> Partition:
    """Triangulate the rings, further ``lines`` (k, 2) that only cut, and a frame around them and ``bounds``.

    Where rings cross each other a vertex is set; overlapping regions are allowed.
    Raises SurveyError for a ring of fewer than three corners.
    """
    rings = [(r, _finite(ring, region.name)) for r, region in enumerate(regions) for ring in region.rings]
    constraint = [_line(np.vstack([ring, ring[:1]])) for _, ring in rings]
    constraint += [_line(np.asarray(line, float)[:, :2]) for line in lines]
    all_xy = np.vstack([np.reshape(bounds, (2, 2)), *(line.xyz[:, :2] for line in constraint)])
    (west, south), (east, north) = np.floor(all_xy.min(axis=0)) - 1, np.ceil(all_xy.max(axis=0)) + 1
    frame = make_points([west, east, east, west], [south, south, north, north], np.zeros(4), crs=crs)
    tin = build_surface(frame, Constraints(tuple(constraint)), SurfaceOptions(crossing=CrossingRule.MEAN)).tin
    part, place = _parts(tin)
    of_part = np.zeros((len(regions), len(place)), bool)
    for r in range(len(regions)):
        own = [np.rint((ring - tin.origin) / GRID) * GRID for s, ring in rings if s == r]
        low, high = np.vstack(own).min(axis=0), np.vstack(own).max(axis=0)
        near = np.flatnonzero(np.all((place >= low) & (place <= high), axis=1))
        of_part[r, near] = even_odd(place[near], own)
    return Partition(tin, of_part[:, part])


def _line(xy: np.ndarray) -> ConstraintLine:
    xyz = np.column_stack([xy, np.zeros(len(xy))])
    return ConstraintLine(LineKind.BREAKLINE, xyz, np.full(len(xy), -1, np.int64))


def _finite(ring: np.ndarray, name: str) -> np.ndarray:
    xy = np.asarray(ring, float)[:, :2]
    xy = xy[np.all(np.isfinite(xy), axis=1)]
    if len(np.unique(xy, axis=0)) < 3:
        raise SurveyError(EMPTY_REGION, name=name, count=len(np.unique(xy, axis=0)))
    return xy


def _parts(tin: Tin) -> Tuple[np.ndarray, np.ndarray]:
    """Number (m,) of the part between lines each triangle is in, and a place (p, 2) well inside each part."""
    triangle, edge = np.nonzero((tin.neighbours >= 0) & (tin.edge_kind == 0))
    part = connected_parts(len(tin.triangles), triangle, tin.neighbours[triangle, edge])
    corner = tin.vertices[tin.triangles][:, :, :2]
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    order = np.lexsort((one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0], part))
    largest = order[np.append(part[order][1:] != part[order][:-1], True)]
    return part, corner[largest].mean(axis=1)


def joined_bounds(tins: Sequence[Tin]) -> Bounds:
    """West, south, east, north of several surfaces."""
    each: List[Bounds] = [tin.bounds for tin in tins]
    low, high = np.min(np.array(each)[:, :2], axis=0), np.max(np.array(each)[:, 2:], axis=0)
    return (*low.tolist(), *high.tolist())  # type: ignore[return-value]
