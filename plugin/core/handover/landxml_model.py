"""What a LandXML file holds, as objects of the core. Lengths are metres unless a name says otherwise."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Optional, Tuple, Union

import numpy as np

from ..linework.constraints import ConstraintLine
from ..messages import Message
from ..points.pointset import PointSet
from ..surface.tin import Tin
from ..units import LengthUnit

#: Decimals written, in the unit of the file. In metres the plan grid of a surface is kept exactly.
PLAN_DECIMALS = 4
HEIGHT_DECIMALS = 6

NAMESPACE = "http://www.landxml.org/schema/LandXML-1.2"


def _no_points() -> np.ndarray:
    return np.empty((0, 3))


@dataclass(frozen=True)
class LandSurface:
    """A surface: its faces as a TIN, None where the file has none, and what it was made from.

    ``lines``: breaklines, boundaries and voids. ``points``: (n, 3) easting, northing, height it was made from.
    """

    name: str
    tin: Optional[Tin]
    lines: Tuple[ConstraintLine, ...] = ()
    points: np.ndarray = field(default_factory=_no_points)
    description: str = ""


@dataclass(frozen=True)
class Straight:
    """Straight segments through ``xy`` (k, 2)."""

    xy: np.ndarray


@dataclass(frozen=True)
class Arc:
    """A circular arc from ``start`` to ``end`` about ``centre``, (2,) each."""

    start: np.ndarray
    centre: np.ndarray
    end: np.ndarray
    clockwise: bool


@dataclass(frozen=True)
class Clothoid:
    """A spiral whose curvature grows evenly along its ``length``; radius inf for a straight end.

    ``start``, ``pi`` (where the tangents of both ends meet), ``end``: (2,).
    """

    start: np.ndarray
    pi: np.ndarray
    end: np.ndarray
    length: float
    radius_start: float
    radius_end: float
    clockwise: bool


Element = Union[Straight, Arc, Clothoid]


@dataclass(frozen=True)
class LandProfile:
    """Heights along an alignment.

    ``distance``, ``height``: (k,) from the alignment's beginning. ``curve``: (k,) length of the parabola at each
    meeting point of grades, 0 for none; None for the profile of a ground, straight from place to place.
    """

    name: str
    distance: np.ndarray
    height: np.ndarray
    curve: Optional[np.ndarray] = None


@dataclass(frozen=True)
class LandAlignment:
    """A line with stations: elements that follow each other.

    ``start``: station of its beginning, ``equations``: pairs (back, ahead), both in ``unit``.
    """

    name: str
    elements: Tuple[Element, ...]
    start: float = 0.0
    equations: Tuple[Tuple[float, float], ...] = ()
    unit: LengthUnit = LengthUnit.METRE
    profiles: Tuple[LandProfile, ...] = ()
    description: str = ""


@dataclass(frozen=True)
class LandXml:
    """What a file holds. ``crs``: pyproj CRS or None. ``unit``: the file's word for it. ``messages``: of reading."""

    crs: Optional[Any]
    surfaces: Tuple[LandSurface, ...] = ()
    points: Optional[PointSet] = None
    alignments: Tuple[LandAlignment, ...] = ()
    project: str = ""
    unit: str = ""
    messages: Tuple[Message, ...] = ()
