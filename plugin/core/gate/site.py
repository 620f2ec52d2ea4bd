"""What a file says of its own site: how near its points lie, in which order, which parts it has."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np

from ..points.pointset import PointSet
from .nearest import usual_distance
from .order import FEW, Order, order_of
from .parts import parts_of
from .places import Places

#: Points farther from all others than both lie alone: metres, usual distances of points.
_APART, _APART_STEPS = 100.0, 20.0


@dataclass(frozen=True)
class Site:
    """q points ``index`` of a set, at ``xy`` (q, 2), metres. ``order``: how they follow each other. ``usual``: distance
    of a point to the next (m); ``apart``: from which distance to all others on a point lies alone. ``part``: (q,)
    number of the part of each; ``main``: (p,) which parts are of the site for sure.
    """

    index: np.ndarray
    xy: np.ndarray
    order: Order
    usual: float
    apart: float
    part: np.ndarray
    main: np.ndarray

    @property
    def most_lone(self) -> int:
        """More groups of points that lie alone, and nothing told of them, are the way the site was measured."""
        return FEW


def look_at(points: PointSet, places: Places, index: np.ndarray) -> Site:
    """The site of the points ``index`` (q,), all of them with a place."""
    xy = places.plan(places.first[index], places.second[index])
    order = order_of(xy, points.time[index], points.name[index])
    usual = order.usual if order.walk else usual_distance(xy)
    apart = max(_APART, _APART_STEPS * usual)
    part, main = _parts(xy, apart)
    return Site(index, xy, order, usual, apart, part, main)


def _parts(xy: np.ndarray, apart: float) -> Tuple[np.ndarray, np.ndarray]:
    """Parts and which of them are sure: those of many points; of a small file the one that holds most of them."""
    part, size = parts_of(xy, apart / 2)
    main = size > FEW
    if not main.any():
        main = 2 * size > max(len(xy), 4)
    return part, main
