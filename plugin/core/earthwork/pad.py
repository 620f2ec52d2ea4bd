"""Pads: a polygon at a level or on a plane."""

from __future__ import annotations

from typing import Union

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin
from .grading import Grading, Platform, grade
from .plane import Plane
from .ring import ring_surface
from .side_slopes import SideSlopes

BAD_PAD = Text(
    "earthwork.pad_ring",
    QT_TRANSLATE_NOOP(
        "core", "The outline of the pad crosses or touches itself; draw it as one ring without holes or loops."
    ),
)


def pad(outline: np.ndarray, level: Union[float, Plane], like: Tin) -> Platform:
    """A platform from a polygon ``outline`` (k, 2), metres in the CRS of ``like``, at a level (m) or on a plane.

    Raises SurveyError for a polygon of fewer than three corners or one that crosses itself.
    """
    xy = np.asarray(outline, float)[:, :2]
    plane = level if isinstance(level, Plane) else Plane(float(level))
    if len(xy) and np.allclose(xy[0], xy[-1], atol=1e-6, rtol=0):
        xy = xy[:-1]
    xy = np.round(xy - like.origin, 4) + like.origin  # on the grid of the surfaces
    base = ring_surface(np.column_stack([xy, plane.at(xy)]), like)
    local = xy - like.origin
    after = np.roll(local, -1, axis=0)
    area = 0.5 * float(np.sum(local[:, 0] * after[:, 1] - local[:, 1] * after[:, 0]))
    if abs(base.plan_area - abs(area)) > 1e-6 * abs(area) + 1e-3 or len(base.vertices) != len(xy):
        raise SurveyError(BAD_PAD)
    ring = np.column_stack([xy, plane.at(xy)])[:: 1 if area > 0 else -1]
    return Platform(base, ring, np.ones(len(ring), bool))


def grade_pad(
    existing: Tin,
    outline: np.ndarray,
    level: Union[float, Plane],
    slopes: SideSlopes = SideSlopes(),  # noqa: B008  frozen
) -> Grading:
    """Grade a pad into the ground; see :func:`pad` and :func:`.grading.grade`."""
    return grade(existing, pad(outline, level, existing), slopes)
