"""The surface as the sheet draws it: heights moved by no more than their own doubt.

Two shots at the same place differ by some centimetres; contours on gentle slopes show that as
wriggles and specks that are not in the ground. Here every height moves, by at most a stated
tolerance, to where its neighbours would have it. Contours of the softened surface still never cross,
being contours of a surface, and the ground along them is within the tolerance of their level, because
heights are linear on each triangle. It is for drawing: volumes, grades and hand-over use the surface
as measured.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from scipy.sparse import csr_matrix

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from ..surface.tin import Tin

#: Rounds, each of a step to the neighbours' height and one back that keeps hills from sinking; the two
#: as shares of the way: G. Taubin, "A signal processing approach to fair surface design", SIGGRAPH 1995.
ROUNDS = 8
TOWARDS, BACK = 0.6, -0.63

BAD_TOLERANCE = Text(
    "contours.height_tolerance",
    QT_TRANSLATE_NOOP(
        "core", "The height tolerance for drawing contours is {tolerance} m; give a number of metres from 0 up."
    ),
)


@dataclass(frozen=True)
class SoftSurface:
    """``tin``: the same triangles with other heights. ``tolerance``: metres, as asked for.

    ``achieved``: metres, the largest change of a height. ``moved``: number of vertices whose height changed.
    """

    tin: Tin
    tolerance: float
    achieved: float
    moved: int


def soften_heights(tin: Tin, tolerance: float, progress: Progress = silent) -> SoftSurface:
    """``tin`` for drawing, no height moved by more than ``tolerance`` metres.

    Vertices on breaklines and on the rim stay. Evenly sloping ground does not change: each height goes
    to the mean of its neighbours weighted by the cotangents of the angles opposite to their edges, which
    on a plane is the height itself (U. Pinkall, K. Polthier, "Computing discrete minimal surfaces and their
    conjugates", Experimental Mathematics 2, 1993).

    Raises ``SurveyError`` for a tolerance that is not a finite number from 0 up; ``progress`` is called
    with stage ``"contours"``.
    """
    if not (math.isfinite(tolerance) and tolerance >= 0):
        raise SurveyError(BAD_TOLERANCE, tolerance=tolerance)
    measured = tin.vertices[:, 2]
    progress(0.0, "contours")
    moves = _free_vertices(tin)
    around = _neighbour_means(tin, moves)
    limit = np.where(moves, tolerance, 0.0)
    change = np.zeros(len(measured))
    for number in range(ROUNDS):
        progress((number + 1) / (ROUNDS + 1), "contours")
        for share in (TOWARDS, BACK):
            height = measured + change
            change = np.clip(change + share * np.where(moves, around @ height - height, 0.0), -limit, limit)
    height = measured + change
    # Rounding must not carry a height past the tolerance.
    over = np.abs(height - measured) > tolerance
    height[over] = np.nextafter(height[over], measured[over])
    vertices = np.column_stack([tin.vertices[:, :2], height])
    progress(1.0, "contours")
    return SoftSurface(
        tin=replace(tin, vertices=vertices),
        tolerance=float(tolerance),
        achieved=float(np.abs(height - measured).max(initial=0.0)),
        moved=int(np.count_nonzero(height != measured)),
    )


def _free_vertices(tin: Tin) -> np.ndarray:
    """Which vertices (n,) are used, not on the rim and not on a marked edge."""
    free = np.zeros(len(tin.vertices), dtype=bool)
    free[tin.triangles] = True
    held = (tin.edge_kind != 0) | (tin.neighbours < 0)
    free[tin.triangles[held]] = False
    free[np.roll(tin.triangles, -1, axis=1)[held]] = False
    return free


def _neighbour_means(tin: Tin, rows: np.ndarray) -> csr_matrix:
    """The matrix (n, n) that takes heights to the weighted means of their neighbours', for ``rows`` (n,) bool."""
    count = len(tin.vertices)
    begin, end, weight = [], [], []
    for edge in range(3):
        a, b, opposite = (tin.triangles[:, (edge + k) % 3] for k in range(3))
        one = tin.vertices[a, :2] - tin.vertices[opposite, :2]
        other = tin.vertices[b, :2] - tin.vertices[opposite, :2]
        twice_area = one[:, 0] * other[:, 1] - one[:, 1] * other[:, 0]
        cotangent = np.sum(one * other, axis=1) / twice_area
        begin += [a, b]
        end += [b, a]
        weight += [cotangent, cotangent]
    begin_of, end_of, weight_of = (np.concatenate(part) for part in (begin, end, weight))
    kept = rows[begin_of]
    matrix = csr_matrix((weight_of[kept], (begin_of[kept], end_of[kept])), shape=(count, count))
    # Both triangles of an edge are in its weight now. It is below 0 where a breakline keeps the edge from
    # being Delaunay; a mean takes no weights below 0.
    matrix.data = np.maximum(matrix.data, 0.0)
    total = np.asarray(matrix.sum(axis=1)).ravel()
    matrix.data /= np.repeat(np.where(total > 0, total, 1.0), np.diff(matrix.indptr))
    return matrix
