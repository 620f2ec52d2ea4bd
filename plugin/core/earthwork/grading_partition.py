"""The plane around a platform, cut so that in each piece one thing counts: platform, a facet of slopes, or ground."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Sequence, Tuple

import numpy as np

from ..surface.along import lay_lines
from ..surface.boxes import box_pairs
from ..surface.locate import heights_at
from ..surface.tin import Tin
from .creases import crease_lines
from .overlay import common_pieces
from .partition import Partition, Region, make_partition
from .polygons import FLAT
from .rim import Rim
from .segments import edge_segments, split_at
from .side_slopes import Facets
from .zero_line import ends_of_depth


@dataclass(frozen=True)
class Side:
    """Slopes of cut or of fill from one rim; they count where the rim's platform is not, beyond ring ``rim``."""

    facets: Facets
    rim: int

    def beyond(self, partition: Partition) -> np.ndarray:
        """Mask (m,) of a partition's triangles (of :func:`grading_partition`) on the rim's own side of the platform."""
        within = partition.inside[1 + self.rim]
        return within if self.rim else ~within


def grading_partition(ground: Tin, platform: Tin, rims: Sequence[Rim], sides: Sequence[Side]) -> Partition:
    """The plane cut along the edges of a ``platform`` with ``rims``, the creases of its slopes, where they meet the
    ground, and the ground's rim. Its regions are the platform, then what each rim encloses."""
    regions = _regions(rims)
    lines: List[np.ndarray] = []
    creases: List[np.ndarray] = []
    places: List[np.ndarray] = []
    rim = _rim_near(ground, sides)
    for side in sides:
        soup, segments = _slope_soup(side, regions, ground)
        segments = _on_ground(segments, rim, ground)
        daylight = ends_of_depth(common_pieces(ground, soup)) if len(soup.triangles) else []
        lines += daylight
        places += [*daylight, segments.reshape(-1, 2)]
        creases.append(segments)
    # every line gets a vertex where another ends on it: rounded to the grid, the end would miss it
    known = np.concatenate([np.empty((0, 2)), *places])
    regions = [_bent(region, known) for region in regions]
    for side, segments in zip(sides, creases):
        parts, _ = split_at(segments, known)
        lines += list(parts[_in_earth(parts, side.facets, ground)])
    lines += list(split_at(np.concatenate([edge_segments(platform)[0], rim]), known)[0])
    return make_partition(regions, regions[0].bounds, ground.crs, lines)


def _bent(region: Region, places: np.ndarray) -> Region:
    """A region whose rings have vertices at the places (q, 2) on them, so that they bend as the platform's edges do."""
    rings = []
    for ring in region.rings:
        parts, _ = split_at(np.stack([ring, np.roll(ring, -1, axis=0)], axis=1), places)
        rings.append(parts[:, 0])
    return Region(region.name, tuple(rings))


def _slope_soup(side: Side, regions: Sequence[Region], ground: Tin) -> Tuple[Tin, np.ndarray]:
    """The slopes outside the platform as loose triangles, and their creases (s, 2, 2) in the CRS."""
    facets = side.facets
    lines = [segment + ground.origin for segment in crease_lines(facets)]
    cells = make_partition(regions, regions[0].bounds, ground.crs, lines)
    tin, free = cells.tin, side.beyond(cells)
    corner = tin.vertices[tin.triangles][:, :, :2] + (tin.origin - ground.origin)
    facet, _ = facets.nearest(corner.mean(axis=1))
    use = np.flatnonzero((facet >= 0) & free)
    soup = _soup(corner[use], facets.height(facet[use], corner[use][:, :, 0], corner[use][:, :, 1]), ground)
    once = (tin.neighbours < 0) | (tin.neighbours > np.arange(len(tin.triangles))[:, None])
    outer = free[:, None] & ((tin.neighbours < 0) | free[tin.neighbours])
    triangle, edge = np.nonzero(once & outer & (tin.edge_kind > 0))
    ends = [tin.triangles[triangle, edge], tin.triangles[triangle, (edge + 1) % 3]]
    return soup, np.stack([tin.vertices[v, :2] for v in ends], axis=1) + tin.origin


def _on_ground(segments: np.ndarray, rim: np.ndarray, ground: Tin) -> np.ndarray:
    """What of segments (s, 2, 2) in the CRS that may cross the ``rim`` (r, 2, 2) of the ground is on the ground."""
    boxes = [each(axis=1) for lines in (segments, rim) for each in (lines.min, lines.max)]
    crossing = np.zeros(len(segments), bool)
    for i, _ in box_pairs(*boxes):
        crossing[i] = True
    laid = lay_lines(ground, list(segments[crossing]))
    parts = np.stack([laid.xyz[laid.start[:-1], :2], laid.xyz[laid.start[1:] - 1, :2]], axis=1)
    return np.concatenate([segments[~crossing], parts])


def _in_earth(segments: np.ndarray, side: Facets, ground: Tin) -> np.ndarray:
    """Mask of the segments (s, 2, 2) along which a slope is in the ground (of cut) or above it (of fill)."""
    middle = segments.mean(axis=1)
    _, height = side.nearest(middle - ground.origin)
    with np.errstate(invalid="ignore"):
        mask: np.ndarray = side.sign * (heights_at(ground, middle) - height) > FLAT
    return mask


def _soup(corner: np.ndarray, height: np.ndarray, like: Tin) -> Tin:
    k = len(corner)
    return replace(
        like,
        vertices=np.column_stack([corner.reshape(-1, 2), height.reshape(-1)]),
        triangles=np.arange(3 * k, dtype=np.int32).reshape(k, 3),
        neighbours=np.full((k, 3), -1, np.int32),
        edge_kind=np.zeros((k, 3), np.uint8),
        grid=np.zeros((3 * k, 2), np.int64),
        vertex_source=np.full(3 * k, -1, np.int64),
    )


def _rim_near(ground: Tin, sides: Sequence[Side]) -> np.ndarray:
    """Segments (s, 2, 2) in the CRS of the ground's rim near the slopes."""
    triangle, side = np.nonzero(ground.neighbours < 0)
    ends = [ground.triangles[triangle, side], ground.triangles[triangle, (side + 1) % 3]]
    segments = np.stack([ground.vertices[v, :2] for v in ends], axis=1)
    boxes = [side.facets.boxes() for side in sides]
    if not boxes:
        return np.empty((0, 2, 2))
    low, high = np.vstack([b[0] for b in boxes]).min(axis=0), np.vstack([b[1] for b in boxes]).max(axis=0)
    near = np.all((segments.max(axis=1) >= low) & (segments.min(axis=1) <= high), axis=1)
    result: np.ndarray = segments[near] + ground.origin
    return result


def _regions(rims: Sequence[Rim]) -> List[Region]:
    """The platform, then what each of its rings encloses."""
    rings = tuple(rim.ring[:, :2] for rim in rims)
    return [Region("platform", rings), *(Region("rim", (ring,)) for ring in rings)]
