"""Volumes of a stockpile, pit or basin: between a surface and the base spanned by its toe or rim line."""

from __future__ import annotations

from enum import Enum
from typing import Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import make_points
from ..surface.along import lay_line
from ..surface.build import build_surface
from ..surface.line_cuts import SAME_PLACE
from ..surface.tin import Tin
from .plane import Plane

SHORT_RING = Text(
    "earthwork.short_ring",
    QT_TRANSLATE_NOOP("core", "The toe or rim line has {count} different corners; a ring needs three or more."),
)
RING_OFF_SURFACE = Text(
    "earthwork.ring_off_surface",
    QT_TRANSLATE_NOOP(
        "core",
        "The toe or rim line leaves the surface for {length:.2f} m, first near E {easting:.3f} N {northing:.3f}, "
        "and has no heights of its own there. Draw it on the surface or give it heights.",
    ),
)
RING_OFF_BASE = Text(
    "earthwork.ring_off_base",
    QT_TRANSLATE_NOOP(
        "core", "The toe or rim line itself lies from {low:.3f} m below to {high:.3f} m above the base taken."
    ),
)
RING_FROM_SURFACE = Text(
    "earthwork.ring_from_surface",
    QT_TRANSLATE_NOOP("core", "The toe or rim line has no heights; it was laid on the surface ({count} vertices)."),
)


class BaseKind(Enum):
    """What a toe or rim line spans: a ``SURFACE`` of triangles through it, the ``PLANE`` that fits it best, or a level
    at its ``LOWEST`` or ``HIGHEST`` vertex."""

    SURFACE = "surface"
    PLANE = "plane"
    LOWEST = "lowest"
    HIGHEST = "highest"


def ring_base(surface: Tin, ring: np.ndarray, kind: BaseKind = BaseKind.SURFACE) -> Tuple[Tin, Tuple[Message, ...]]:
    """The base surface that a closed line spans, and what is to be said of it.

    ``ring``: (k, 2) or (k, 3) metres in the CRS, the last corner joined to the first. A ring with heights keeps them;
    one without (or with a nan) is laid on the surface and gets a vertex at every edge it crosses. ``kind``
    SURFACE: the constrained triangulation of the ring alone, so it is one plane if the ring is. PLANE: fitted by least
    squares of heights, each vertex weighed by the length of line beside it. Raises SurveyError for a ring of fewer than
    three corners, or one without heights that leaves the surface.
    """
    ring = _opened(np.asarray(ring, float))
    said: Tuple[Message, ...] = ()
    if ring.shape[1] == 2 or np.any(np.isnan(ring[:, 2])):
        ring = _opened(_laid(surface, ring[:, :2]))
        said = (message(RING_FROM_SURFACE, count=len(ring)),)
    if kind is not BaseKind.SURFACE:
        plane = _plane(ring, kind)
        off = ring[:, 2] - plane.at(ring[:, :2])
        said = (*said, message(RING_OFF_BASE, low=-float(off.min()), high=float(off.max())))
        ring = np.column_stack([ring[:, :2], plane.at(ring[:, :2])])
    return ring_surface(ring, surface), said


def _plane(ring: np.ndarray, kind: BaseKind) -> Plane:
    if kind is BaseKind.LOWEST:
        return Plane(float(ring[:, 2].min()))
    if kind is BaseKind.HIGHEST:
        return Plane(float(ring[:, 2].max()))
    ahead = np.hypot(*(np.roll(ring, -1, axis=0) - ring)[:, :2].T)
    weight = np.sqrt((ahead + np.roll(ahead, 1)) / 2)
    middle = ring[:, :2].mean(axis=0)
    design = np.column_stack([np.ones(len(ring)), ring[:, :2] - middle])
    height, east, north = np.linalg.lstsq(design * weight[:, None], ring[:, 2] * weight, rcond=None)[0]
    return Plane(float(height), float(east), float(north), float(middle[0]), float(middle[1]))


def ring_surface(ring: np.ndarray, like: Tin) -> Tin:
    """The surface that a ring (k, 3) with heights spans, in the CRS of ``like``."""
    ring = _opened(np.asarray(ring, float))
    line = ConstraintLine(LineKind.BOUNDARY, ring, np.arange(len(ring)))
    return build_surface(make_points(*ring.T, crs=like.crs), Constraints((line,))).tin


def _opened(ring: np.ndarray) -> np.ndarray:
    """The ring without repeated corners."""
    if ring.ndim == 2 and len(ring):
        step = np.hypot(*(ring[:, :2] - np.roll(ring[:, :2], -1, axis=0)).T)
        ring = ring[step > SAME_PLACE]
    if len(ring) < 3:
        raise SurveyError(SHORT_RING, count=len(ring))
    return ring


def _laid(surface: Tin, ring: np.ndarray) -> np.ndarray:
    laid = lay_line(surface, np.vstack([ring, ring[:1]]))
    if laid.gaps:
        length = sum(gap.end - gap.start for gap in laid.gaps)
        easting, northing = laid.gaps[0].start_xy
        raise SurveyError(RING_OFF_SURFACE, length=length, easting=float(easting), northing=float(northing))
    return laid.part(0)
