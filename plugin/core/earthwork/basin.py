"""A basin with all that is told of it: what it holds, how sure that is, and how deep the water stands where."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..surface.dissolve import LabelledPolygon
from ..surface.tin import Tin
from .comparison import Comparison
from .depth_polygons import depth_polygons
from .depths import DepthClass, usual_limits, volumes_in_depths
from .doubt import Doubt, doubt_of_pieces
from .plane import Plane
from .storage import Storage, basin_storage, wet_triangles
from .study import SURVEYED, Certainty


@dataclass(frozen=True)
class Basin:
    """``tin``: the surface; ``doubt``: of the capacity. ``limits``: depth limits (m) of the water at the spill level,
    ``depths`` and ``polygons`` its classes, labelled from 1, the shallowest."""

    tin: Tin
    storage: Storage
    doubt: Doubt
    limits: Tuple[float, ...]
    depths: Tuple[DepthClass, ...]
    polygons: Tuple[LabelledPolygon, ...]


def examine_basin(
    tin: Tin, place: Optional[np.ndarray] = None, steps: int = 50, certainty: Certainty = SURVEYED
) -> Basin:
    """What the basin around ``place`` (2,) holds, as :func:`.storage.basin_storage`, which says what is refused.

    The level at which it spills is the height of one vertex, so its noise counts as a height offset over the water.
    """
    storage = basin_storage(tin, place, steps)
    level = float(storage.spill[2])
    pit = int(np.argmin(np.sum((tin.vertices - (storage.pit - np.append(tin.origin, 0.0))) ** 2, axis=1)))
    wet = np.zeros(len(tin.triangles), bool)
    wet[wet_triangles(tin, level, pit)] = True
    water = Comparison(tin.part(wet), Plane(level))
    certainty = certainty.of_nodes(np.unique(tin.triangles[wet]))
    spill_sigma = float(np.hypot(certainty.sigma, certainty.drift))
    doubt = doubt_of_pieces(water.both, water.existing, None, certainty.of(water.existing), offset_sigma=spill_sigma)
    limits = usual_limits(water.both, tin.crs)
    polygons = tuple(polygon for polygon in depth_polygons(water, limits) if polygon.label > 0)
    depths = tuple(each for each in volumes_in_depths(water.both, limits) if not each.is_cut)
    return Basin(tin, storage, doubt.fill, limits, depths, polygons)
