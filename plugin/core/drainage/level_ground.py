"""Ground flatter than a limit."""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.ask import triangle_gradients
from ..surface.dissolve import LabelledPolygon, dissolve
from ..surface.tin import Tin

BAD_FLAT_LIMIT = Text(
    "bad_flat_limit",
    QT_TRANSLATE_NOOP(
        "core",
        "{name} is {value}: the slope limit and the window for flat areas must be finite and not negative. Correct it.",
    ),
)


def flat_areas(tin: Tin, limit: float, window: float = 0.0, min_area: float = 0.0) -> Tuple[LabelledPolygon, ...]:
    """Connected areas whose slope (fall over run) is below ``limit``, those of at least ``min_area`` m², largest first.

    Single triangles of a survey with points every half metre are as steep as its noise, some percent. With ``window``
    metres the slope is that of the mean gradient around each triangle, see ``mean_gradients``.
    Raises SurveyError for a limit or window that is negative or not finite.
    """
    for name, value in (("limit", limit), ("window", window)):
        if not 0 <= value < np.inf:
            raise SurveyError(BAD_FLAT_LIMIT, name=name, value=value)
    flat = mean_slopes(tin, window) < limit
    return tuple(area for area in dissolve(tin, flat.astype(np.int64)) if area.label and area.plan_area >= min_area)


def mean_slopes(tin: Tin, window: float) -> np.ndarray:
    """Slope (m,) of the mean gradient around each triangle, see ``mean_gradients``."""
    return np.hypot(*mean_gradients(tin, window).T)


def mean_gradients(tin: Tin, window: float) -> np.ndarray:
    """Mean gradient (m, 2), by area, of the triangles around each triangle; its own for ``window`` 0.

    Around: with their centroids in the nine squares, each a third of ``window`` metres wide, about its own
    centroid's. The squares lie along the axes of the CRS.
    """
    gradient = triangle_gradients(tin)
    if window == 0 or len(gradient) == 0:
        return gradient
    corner = tin.corners()
    u, v = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area = (u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]) / 2
    cell = np.floor(corner[:, :, :2].mean(axis=1) / (window / 3)).astype(np.int64)
    cell -= cell.min(axis=0) - 1
    width = int(cell[:, 0].max()) + 2
    names, number = np.unique(cell[:, 1] * width + cell[:, 0], return_inverse=True)
    own = np.stack([np.bincount(number.ravel(), weight) for weight in (area, *(gradient * area[:, None]).T)], axis=1)
    total = np.zeros_like(own)
    for step in (dy * width + dx for dy in (-1, 0, 1) for dx in (-1, 0, 1)):
        place = np.searchsorted(names, names + step).clip(max=len(names) - 1)
        there = names[place] == names + step
        total[there] += own[place[there]]
    mean = total[:, 1:] / total[:, :1]
    result: np.ndarray = mean[number.ravel()]
    return result
