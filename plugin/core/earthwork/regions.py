"""Volumes by region: parcels, phases of work, or any polygons."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, Iterable, List, Sequence, Tuple

import numpy as np

from ..progress import Progress, silent
from ..surface.tin import Tin
from .overlay import Pieces, common_pieces, split_pieces
from .partition import Bounds, Partition, Region, joined_bounds, make_partition
from .volume import out_of_order, volumes_by_piece


@dataclass(frozen=True)
class PartVolume:
    """Earth in one part of the ground: ``cut``, ``fill`` (m³), ``cut_area``, ``fill_area``, ``common_area`` (m²),
    and ``area`` of the part itself, with or without surfaces (nan for what is outside all regions)."""

    name: str
    cut: float
    fill: float
    cut_area: float
    fill_area: float
    common_area: float
    area: float

    @property
    def net(self) -> float:
        """Fill less cut, cubic metres."""
        return self.fill - self.cut

    def reversed(self) -> PartVolume:
        """The same with existing and design exchanged."""
        return PartVolume(self.name, self.fill, self.cut, self.fill_area, self.cut_area, self.common_area, self.area)

    @property
    def mean_cut_depth(self) -> float:
        """Cut over its area, metres; nan where there is none."""
        return self.cut / self.cut_area if self.cut_area > 0 else float("nan")

    @property
    def mean_fill_depth(self) -> float:
        """Fill over its area, metres; nan where there is none."""
        return self.fill / self.fill_area if self.fill_area > 0 else float("nan")

    @property
    def uncovered_area(self) -> float:
        """Ground of the part without both surfaces, square metres."""
        return self.area - self.common_area


@dataclass(frozen=True)
class RegionVolumes:
    """``regions``: in the given order. ``outside``: compared ground in no region. ``overlaps``: ground in several
    regions at once, which each of them counts, named by them. ``total``: all of the compared ground once.

    Without overlaps, regions and outside add up to the total.
    """

    regions: Tuple[PartVolume, ...]
    outside: PartVolume
    overlaps: Tuple[PartVolume, ...]
    total: PartVolume

    def reversed(self) -> RegionVolumes:
        """The same with existing and design exchanged."""
        several = (tuple(part.reversed() for part in parts) for parts in (self.regions, self.overlaps))
        regions, overlaps = several
        return RegionVolumes(regions, self.outside.reversed(), overlaps, self.total.reversed())


def volumes_by_region(
    existing: Tin, design: Tin, regions: Sequence[Region], progress: Progress = silent
) -> RegionVolumes:
    """Exact volumes between two surfaces in each region.

    Regions stand on the 0.1 mm grid of the surfaces. Raises SurveyError for a ring of fewer than three corners.
    """
    if out_of_order(existing, design):
        return volumes_by_region(design, existing, regions, progress).reversed()
    bounds = joined_bounds([existing, design])
    return volumes_in_regions(common_pieces(existing, design, progress), regions, bounds, existing.crs)


def volumes_in_regions(
    pieces: Iterable[Pieces], regions: Sequence[Region], bounds: Bounds, crs: object = None
) -> RegionVolumes:
    """As :func:`volumes_by_region`, of pieces that lie within ``bounds``."""
    partition = make_partition(regions, bounds, crs)
    sums = np.zeros((5, len(partition.tin.triangles)))
    for part in pieces:
        for small, _, triangle in split_pieces(part, partition.tin):
            for row, values in enumerate(volumes_by_piece(small)):
                sums[row] += np.bincount(triangle, values, sums.shape[1])
    return _report(partition, sums, [region.name for region in regions])


def pieces_by_region(
    pieces: Iterable[Pieces], regions: Sequence[Region], bounds: Bounds, crs: object = None
) -> Tuple[Tuple[Pieces, ...], ...]:
    """For each region, the parts of pieces in it, for depth classes, layers or doubts of one region alone."""
    partition = make_partition(regions, bounds, crs)
    found: List[List[Pieces]] = [[] for _ in regions]
    for part in pieces:
        for small, _, triangle in split_pieces(part, partition.tin):
            for r, own in enumerate(found):
                inside = np.flatnonzero(partition.inside[r, triangle])
                if len(inside):
                    own.append(small.take(inside))
    return tuple(tuple(own) for own in found)


def _report(partition: Partition, sums: np.ndarray, names: List[str]) -> RegionVolumes:
    plan = _triangle_areas(partition.tin)
    inside = partition.inside

    def part(name: str, which: np.ndarray, area: bool = True) -> PartVolume:
        cut, fill, cut_area, fill_area, common = (float(v) for v in sums[:, which].sum(axis=1))
        own = float(plan[which].sum()) if area else float("nan")
        return PartVolume(name, cut, fill, cut_area, fill_area, common, own)

    several: Dict[bytes, np.ndarray] = {}
    for t in np.flatnonzero(inside.sum(axis=0) > 1):
        several.setdefault(inside[:, t].tobytes(), inside[:, t])
    overlaps = []
    for members in several.values():
        which = np.all(inside == members[:, None], axis=0)
        overlaps.append(part(" + ".join(names[r] for r in np.flatnonzero(members)), which))
    every = np.ones(inside.shape[1], bool)
    return RegionVolumes(
        tuple(part(name, inside[r]) for r, name in enumerate(names)),
        part("", ~inside.any(axis=0), area=False),
        tuple(sorted(overlaps, key=lambda overlap: -overlap.area)),
        part("", every, area=False),
    )


def _triangle_areas(tin: Tin) -> np.ndarray:
    corner = tin.corners()
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    result: np.ndarray = 0.5 * (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0])
    return result
