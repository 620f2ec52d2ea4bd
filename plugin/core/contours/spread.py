"""Spot heights spread over a sheet between the summits, pits and saddles."""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree

from ..surface.tin import Tin


def spread_spots(tin: Tin, spacing: float, taken: np.ndarray) -> np.ndarray:
    """Vertices (k,) of ``tin`` about ``spacing`` metres apart, none within half of that of another or of ``taken``.

    ``taken``: (n, 2) places that have a spot height, metres from the TIN's origin. The plan is cut into squares of
    ``spacing``; each offers its vertex nearest to the middle, ties to the west, then the south, so the choice does not
    depend on the order of points. The heights are those measured: nothing is interpolated.
    """
    vertices = np.unique(tin.triangles)
    if len(vertices) == 0:
        return vertices
    xy = tin.vertices[vertices, :2]
    cell = np.floor(xy / spacing)
    off = np.hypot(*(xy - (cell + 0.5) * spacing).T)
    order = np.lexsort((xy[:, 1], xy[:, 0], off, cell[:, 0], cell[:, 1]))
    first = np.ones(len(order), bool)
    first[1:] = np.any(cell[order][1:] != cell[order][:-1], axis=1)
    offered = order[first]
    offered = offered[_far_from(xy[offered], taken, spacing / 2)]
    return np.sort(vertices[offered[_thinned(xy[offered], spacing / 2)]])


def _far_from(xy: np.ndarray, taken: np.ndarray, least: float) -> np.ndarray:
    if len(taken) == 0:
        return np.ones(len(xy), bool)
    return cKDTree(taken).query(xy)[0] >= least


def _thinned(xy: np.ndarray, least: float) -> np.ndarray:
    """Mask: of two closer than ``least`` the earlier stays."""
    keep = np.ones(len(xy), bool)
    pairs = cKDTree(xy).query_pairs(least, output_type="ndarray")
    for i, j in pairs[np.lexsort((pairs[:, 1], pairs[:, 0]))].tolist():
        if keep[i]:
            keep[j] = False
    return keep
