"""Slope map: the surface by classes of slope."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .ask import triangle_slopes
from .dissolve import LabelledPolygon, dissolve
from .tin import Tin

#: Limits between the classes, percent: our own choice for streets and open ground, no published scheme. 2 is near
#: the usual cross fall, 5 (1 in 20) the running slope of an outdoor access route (U.S. Access Board, Summary of
#: Accessibility Standards for Federal Outdoor Developed Areas, 1016.7.1), 8.33 is 1 in 12, 50 is 1 in 2.
DEFAULT_LIMITS_PERCENT = (1.0, 2.0, 5.0, 100.0 / 12.0, 20.0, 50.0)

#: A slope this little (rise over run) above a limit is on it: the rounding of heights in a computer.
_ON_LIMIT = 1e-9

BAD_LIMITS = Text(
    "slopes.limits",
    QT_TRANSLATE_NOOP("core", "The slope limits {limits} (percent) must rise and be 0 or more; mend their list."),
)


@dataclass(frozen=True)
class SlopeMap:
    """The triangles of a surface in k classes of slope.

    ``limits_percent``: (k - 1,) between the classes; class i is over limit i - 1 and up to and including limit i.
    ``triangle_class``: (m,) int64, 0 the flattest. ``plan_area``, ``slope_area``: (k,) float64 square metres of each
    class in plan and on the slope.
    """

    limits_percent: Tuple[float, ...]
    triangle_class: np.ndarray
    plan_area: np.ndarray
    slope_area: np.ndarray

    def range_percent(self, number: int) -> Tuple[float, float]:
        """Slopes of class ``number``: over the first (from 0 in class 0), up to the second (infinite in the last)."""
        return class_range(self.limits_percent, number)


def checked_limits(limits_percent: Sequence[float]) -> Tuple[float, ...]:
    """The limits between classes as numbers; raises SurveyError where they don't rise."""
    limits = tuple(float(limit) for limit in limits_percent)
    if not np.all(np.isfinite(limits)) or any(low >= high for low, high in zip((-1e-300, *limits), limits)):
        raise SurveyError(BAD_LIMITS, limits=", ".join(f"{limit:g}" for limit in limits))
    return limits


def slope_classes(slope: np.ndarray, limits_percent: Sequence[float]) -> np.ndarray:
    """Number (q,) int64 of the class of each slope (q,), rise over run; a slope equal to a limit is within it."""
    found: np.ndarray = np.searchsorted(np.array(limits_percent) / 100 + _ON_LIMIT, slope, "left")
    return found


def class_range(limits_percent: Sequence[float], number: int) -> Tuple[float, float]:
    """Slopes (percent) of class ``number``: over the first, up to the second, which is infinite for the last."""
    ends = (0.0, *limits_percent, float("inf"))
    return ends[number], ends[number + 1]


def slope_map(tin: Tin, limits_percent: Sequence[float] = DEFAULT_LIMITS_PERCENT) -> SlopeMap:
    """Class the triangles by slope; a slope equal to a limit is within it.

    Raises SurveyError for limits that don't rise.
    """
    limits = checked_limits(limits_percent)
    slope = triangle_slopes(tin)[0]
    number = slope_classes(slope, limits)
    x, y = (np.take(tin.vertices[:, axis], tin.triangles) for axis in (0, 1))
    plan = 0.5 * ((x[:, 1] - x[:, 0]) * (y[:, 2] - y[:, 0]) - (x[:, 2] - x[:, 0]) * (y[:, 1] - y[:, 0]))
    count = len(limits) + 1
    areas = (np.bincount(number, weight, count) for weight in (plan, plan * np.sqrt(1 + slope**2)))
    return SlopeMap(limits, number, *areas)


def slope_polygons(tin: Tin, classes: SlopeMap) -> Tuple[LabelledPolygon, ...]:
    """Polygons of the connected areas of each class, labelled by the class's number, largest first."""
    return dissolve(tin, classes.triangle_class)
