"""Spot heights spread over a sheet between the summits, pits and saddles."""

from __future__ import annotations

import numpy as np
from scipy.spatial import cKDTree

from ..surface.tin import Tin


def spread_spots(tin: Tin, spacing: float, taken: np.ndarray, clear: float = 0.0) -> np.ndarray:
    """Vertices (k,) of ``tin`` about ``spacing`` metres apart, none within half of that of another or of ``taken``.

    ``taken``: (n, 2) places that have a spot height, metres from the TIN's origin. The plan is cut into squares of
    ``spacing``; each offers its vertex nearest to the middle, ties to the west, then the south, so the choice does not
    depend on the order of points. The heights are those measured: nothing is interpolated. None is taken within
    ``clear`` metres of a line of the surface, which would strike its number through.
    """
    vertices = np.unique(tin.triangles)
    vertices = vertices[_far_from(tin.vertices[vertices, :2], _on_lines(tin, clear), clear)]
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


def _on_lines(tin: Tin, clear: float) -> np.ndarray:
    """Places (n, 2) on the lines of the surface, no farther apart than ``clear``; none for 0."""
    if clear <= 0:
        return np.empty((0, 2))
    row, edge = np.nonzero(tin.edge_kind)
    a, b = (tin.vertices[tin.triangles[row, (edge + k) % 3], :2] for k in (0, 1))
    many = np.ceil(np.hypot(*(b - a).T) / clear).astype(np.int64) + 1
    share = (np.arange(int(many.sum())) - np.repeat(np.cumsum(many) - many, many)) / np.repeat(
        np.maximum(many - 1, 1), many
    )
    result: np.ndarray = np.repeat(a, many, axis=0) + share[:, None] * np.repeat(b - a, many, axis=0)
    return result


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
