"""Ground by where its water goes, in kinds that two surfaces have in common: an inlet, the rim, a hollow."""

from __future__ import annotations

from typing import Dict, Tuple

import numpy as np

from .boundaries import outlines
from .catchments import Catchments, Outlet
from .rings import Polygon, polygons_of

#: Kind of outlet, and number of the inlet or -1: all of the rim, all hollows.
Destination = Tuple[Outlet, int]


def destinations(catchments: Catchments) -> np.ndarray:
    """Kind and number (k, 2) of the destination of each catchment."""
    kind = catchments.outlet.astype(np.int64)
    kind[kind == Outlet.RIM_VERTEX] = Outlet.RIM
    kind[kind == Outlet.PIT] = Outlet.POND
    return np.column_stack([kind, np.where(kind == Outlet.INLET, catchments.number, -1)])


def destination_polygons(catchments: Catchments) -> Dict[Destination, Tuple[Polygon, ...]]:
    """The ground of each destination as polygons of rings (q, 2) in metres of the CRS, outer ring first."""
    names, label = np.unique(destinations(catchments), axis=0, return_inverse=True)
    fates = catchments.fates
    origin = fates.flow.tin.origin
    return {
        (Outlet(names[part.label, 0]), int(names[part.label, 1])): polygons_of([ring + origin for ring in part.rings])
        for part in outlines(fates, label.ravel()[catchments.of_strip])
    }
