"""How far points in no order lie from each other."""

from __future__ import annotations

from typing import Tuple

import numpy as np
from scipy.spatial import cKDTree

_SAMPLE = 2000
#: Among so many nearest ones is one at another place.
_NEAREST = 4
#: Of larger sets only what lies about the sample is looked at: within this share of the sample's own usual distance.
_MANY, _ABOUT = 100_000, 1 / 12
#: Cells are told apart by so many bits of a product with odd numbers; others of the same bits do no harm.
_BITS, _ODD = 20, (73_856_093, 19_349_663)


def usual_distance(xy: np.ndarray) -> float:
    """Median distance (m) of places (n, 2) to the nearest other one at another place, from a sample; 0 for none."""
    places = np.unique(xy[:: max(1, len(xy) // _SAMPLE)], axis=0)
    if len(places) < 2:
        return 0.0
    if len(xy) > _MANY:
        reach = _ABOUT * float(np.median(_least(places, places, np.inf)))
        near = _least(xy[_about(xy, places, reach)], places, reach)
        near[np.isnan(near)] = np.inf  # farther than that, not known how far
        median = float(np.median(near))
        if np.isfinite(median):
            return median
    least = _least(xy, places, np.inf)
    least = least[np.isfinite(least)]
    return float(np.median(least)) if len(least) else 0.0


def _least(xy: np.ndarray, places: np.ndarray, reach: float) -> np.ndarray:
    """Distance of each of ``places`` (p, 2) to the nearest of ``xy`` (n, 2) at another place, as far as it is among
    the nearest ones; nan beyond ``reach``, inf where all nearest ones are at the same place.
    """
    tree = cKDTree(xy, compact_nodes=False, balanced_tree=False)
    near = tree.query(places, k=min(_NEAREST, len(xy)), distance_upper_bound=reach)[0].reshape(len(places), -1)
    beyond = np.isinf(near).any(axis=1)
    near[(near <= 0) | np.isinf(near)] = np.inf
    least = near.min(axis=1)
    least[np.isinf(least) & beyond] = np.nan
    return np.asarray(least)


def _about(xy: np.ndarray, places: np.ndarray, reach: float) -> np.ndarray:
    """Mask (n,) of what may lie within ``reach`` of one of ``places``, all of that among it."""
    table = np.zeros(1 << _BITS, bool)
    for east in (-1, 0, 1):
        for north in (-1, 0, 1):
            table[_cells(places, reach, (east, north))] = True
    return table[_cells(xy, reach, (0, 0))]


def _cells(xy: np.ndarray, cell: float, beside: Tuple[int, int]) -> np.ndarray:
    """Numbers (n,) of the cells that lie ``beside`` those of places."""
    column, row = (np.floor(xy.T / cell).astype(np.int64).T + beside).T
    return np.asarray((column * _ODD[0] ^ row * _ODD[1]) & ((1 << _BITS) - 1))
