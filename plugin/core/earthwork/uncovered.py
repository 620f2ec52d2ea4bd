"""Where only one of two surfaces is, as polygons."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from ..surface.dissolve import LabelledPolygon, dissolve
from ..surface.tin import Tin
from .partition import Partition, Region, joined_bounds, make_partition

COMMON, EXISTING_ONLY, DESIGN_ONLY = 3, 1, 2


@dataclass(frozen=True)
class Coverage:
    """Polygons in the CRS where both surfaces are, and where only one of them is, largest first."""

    common: Tuple[LabelledPolygon, ...]
    existing_only: Tuple[LabelledPolygon, ...]
    design_only: Tuple[LabelledPolygon, ...]


def coverage(existing: Tin, design: Tin) -> Coverage:
    """Polygons of what two surfaces have in common and what only one covers (areas as in ``Volume``)."""
    regions = [outline(existing, "existing"), outline(design, "design")]
    partition = make_partition(regions, joined_bounds([existing, design]), existing.crs)
    found = dissolve(partition.tin, _labels(partition))
    return Coverage(*(tuple(p for p in found if p.label == label) for label in (COMMON, EXISTING_ONLY, DESIGN_ONLY)))


def _labels(partition: Partition) -> np.ndarray:
    label: np.ndarray = partition.inside[0] * EXISTING_ONLY + partition.inside[1] * DESIGN_ONLY
    return label


def outline(tin: Tin, name: str) -> Region:
    """The ground that a surface covers, with its holes."""
    polygons = dissolve(tin, np.zeros(len(tin.triangles), np.int64))
    return Region(name, tuple(ring[:-1] for polygon in polygons for ring in polygon.rings))
