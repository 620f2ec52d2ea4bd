"""What a fit to control points found: similarities in plan and space, a plane for heights, and how well they fit."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Any, Optional, Tuple, Union

import numpy as np

from ..messages import Message, Text
from .adjustment import Adjustment, PointTest


class HeightFit(Enum):
    """What is done to heights in a four-parameter fit."""

    KEEP = "keep"
    SHIFT = "shift"
    PLANE = "plane"


@dataclass(frozen=True)
class PlanSimilarity:
    """``to`` + [[a, -b], [b, a]] (p - ``origin``), metres; centroids of the control in survey and control
    coordinates."""

    a: float
    b: float
    origin: np.ndarray
    to: np.ndarray

    @property
    def scale(self) -> float:
        """Control distance over survey distance."""
        return float(np.hypot(self.a, self.b))

    @property
    def turn_degrees(self) -> float:
        """Turn from survey to control axes, counter-clockwise."""
        return float(np.degrees(np.arctan2(self.b, self.a)))

    @property
    def shift(self) -> np.ndarray:
        """Coordinates (2,) that the survey's own origin gets, metres."""
        x, y = self.origin
        return self.to - np.array([self.a * x - self.b * y, self.b * x + self.a * y])

    def apply(self, places: np.ndarray) -> np.ndarray:
        """Fitted plan coordinates (n, 2), metres."""
        x, y = (np.asarray(places, float) - self.origin).T
        return self.to + np.column_stack((self.a * x - self.b * y, self.b * x + self.a * y))


@dataclass(frozen=True)
class HeightPlane:
    """Added to heights: ``shift`` + ``east`` (E - ``origin`` E) + ``north`` (N - ``origin`` N), metres, at
    fitted plan coordinates."""

    shift: float
    east: float
    north: float
    origin: np.ndarray

    def apply(self, fitted: np.ndarray, height: np.ndarray) -> np.ndarray:
        """Heights (n,) at fitted plan coordinates (n, 2), metres."""
        x, y = (fitted - self.origin).T
        return np.asarray(height, float) + self.shift + self.east * x + self.north * y


@dataclass(frozen=True)
class SpaceSimilarity:
    """``to`` + scale R (p - ``origin``), metres, with the rotation matrix R (3, 3)."""

    scale: float
    rotation: np.ndarray
    origin: np.ndarray
    to: np.ndarray

    def apply(self, places: np.ndarray) -> np.ndarray:
        """Fitted coordinates (n, 3), metres."""
        return self.to + self.scale * (np.asarray(places, float) - self.origin) @ self.rotation.T


@dataclass(frozen=True)
class Part:
    """One adjustment: of plan, height or space. ``points``: row in the fit of each point of ``test``."""

    name: Text
    adjustment: Adjustment
    test: PointTest
    points: np.ndarray


@dataclass(frozen=True)
class ControlFit:
    """A fit to n control points.

    ``used`` (n,): mask. ``residuals`` (n, 3): fitted minus control in easting, northing, height, metres, also of
    points left out; nan where not fitted. ``redundancy`` and ``normalised`` (n, 3): redundancy numbers and
    residuals over their standard deviations, nan where not used. ``plan`` and ``height``, or ``space``: the
    parameters. ``parts``: the adjustments with their tests. ``statements``: for the report.
    """

    names: Tuple[str, ...]
    used: np.ndarray
    residuals: np.ndarray
    redundancy: np.ndarray
    normalised: np.ndarray
    plan: Optional[PlanSimilarity]
    height: Optional[HeightPlane]
    space: Optional[SpaceSimilarity]
    parts: Tuple[Part, ...]
    statements: Tuple[Message, ...]

    @property
    def scale(self) -> float:
        """Control distance over survey distance."""
        return self._similarity.scale

    @property
    def _similarity(self) -> Union[PlanSimilarity, SpaceSimilarity]:
        found = self.plan or self.space
        assert found is not None
        return found

    @property
    def suspects(self) -> Tuple[str, ...]:
        """Names of the points that do not fit, in any part."""
        found = [self.names[part.points[i]] for part in self.parts for i in part.test.suspects]
        return tuple(dict.fromkeys(found))

    def apply(self, easting: Any, northing: Any, height: Any) -> np.ndarray:
        """Fitted easting, northing, height (n, 3), metres."""
        places = np.column_stack((easting, northing, height)).astype(float)
        if self.space is not None:
            return self.space.apply(places)
        assert self.plan is not None
        fitted = self.plan.apply(places[:, :2])
        up = places[:, 2] if self.height is None else self.height.apply(fitted, places[:, 2])
        return np.column_stack((fitted, up))
