"""What was done to coordinates, for the report."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Any, NamedTuple, Optional, Tuple

from ..messages import Message
from ..points.pointset import PointSet


class Step(Enum):
    """Kinds of change to coordinates."""

    RELABELLED = "relabelled"
    TRANSFORMED = "transformed"
    HEIGHTS = "heights"
    GRID_TO_GROUND = "grid-to-ground"
    GROUND_TO_GRID = "ground-to-grid"
    CONTROL_FIT = "control-fit"
    BASE_SHIFT = "base-shift"


@dataclass(frozen=True)
class Georeference:
    """One change to coordinates.

    ``source_crs``, ``target_crs``: pyproj CRS before and after, None for a local grid. ``details``: the
    object with the numbers (``Operation``, ``SeparationUse``, ``GroundGrid``, ``ControlFit`` ...).
    ``statements``: the sentences for the report.
    """

    step: Step
    source_crs: Optional[Any]
    target_crs: Optional[Any]
    details: Any
    statements: Tuple[Message, ...]


class Georeferenced(NamedTuple):
    """New points and what was done to get them."""

    points: PointSet
    record: Georeference


def crs_name(crs: Optional[Any]) -> str:
    """Name of ``crs`` with its code where it has one; ``"local"`` for None."""
    if crs is None:
        return "local"
    authority = crs.to_authority()
    return f"{crs.name} ({authority[0]}:{authority[1]})" if authority else str(crs.name)
