"""Length units of survey data and their exact factors."""

from __future__ import annotations

import math
from enum import Enum
from typing import Any, Optional

import numpy as np


class LengthUnit(Enum):
    """A length unit; ``value`` is the word used in files and on the command line.

    Factors: NIST SP 811 (international foot 0.3048 m, inch 0.0254 m, yard 0.9144 m exactly; U.S. survey foot
    1200/3937 m exactly). Survey files may be in any of them; results are in one of :data:`WORKING_UNITS`.
    """

    METRE = "m"
    FOOT = "ft"
    US_SURVEY_FOOT = "us-ft"
    MILLIMETRE = "mm"
    CENTIMETRE = "cm"
    DECIMETRE = "dm"
    KILOMETRE = "km"
    INCH = "in"
    YARD = "yd"

    @property
    def metres(self) -> float:
        """Length of one unit in metres."""
        return _METRES[self]

    @property
    def symbol(self) -> str:
        """Short form for labels."""
        return _SYMBOLS[self]


#: Those that a site is measured and its results are given in.
WORKING_UNITS = (LengthUnit.METRE, LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
_METRES = {
    LengthUnit.METRE: 1.0, LengthUnit.FOOT: 0.3048, LengthUnit.US_SURVEY_FOOT: 1200.0 / 3937.0,
    LengthUnit.MILLIMETRE: 0.001, LengthUnit.CENTIMETRE: 0.01, LengthUnit.DECIMETRE: 0.1,
    LengthUnit.KILOMETRE: 1000.0, LengthUnit.INCH: 0.0254, LengthUnit.YARD: 0.9144,
}  # fmt: skip
_SYMBOLS = {**{unit: unit.value for unit in LengthUnit}, LengthUnit.US_SURVEY_FOOT: "ftUS"}


def axis_unit(axis: Any) -> Optional[LengthUnit]:
    """The unit of an axis of a pyproj CRS, None where it is none of ours.

    By its length to 1e-7: files spell the U.S. survey foot with 8 to 16 digits, and the next of the
    many feet differs from it by 2e-6.
    """
    factor = float(axis.unit_conversion_factor)
    return next((unit for unit in WORKING_UNITS if abs(factor / unit.metres - 1.0) < 1e-7), None)


def metres_per_unit(crs: Optional[Any]) -> float:
    """Metres in one unit of the plan axes of a projected pyproj CRS; 1 for None, a local grid.

    Coordinates in the core are metres: those of the CRS times this factor. What is written in the CRS
    is divided by it, see :func:`to_crs_units`.
    """
    return 1.0 if crs is None else _axis_metres(crs.axis_info[0])


def metres_per_height_unit(crs: Optional[Any]) -> float:
    """Metres in one unit of the height axis of ``crs``; that of its plan axes where it has no height axis.

    So heights written beside plan coordinates in feet are in feet too, and slopes stay true.
    """
    axes = [] if crs is None else crs.axis_info
    return _axis_metres(axes[2]) if len(axes) > 2 else metres_per_unit(crs)


def to_crs_units(values_m: Any, crs: Optional[Any]) -> np.ndarray:
    """Plan coordinates or distances in metres, in the unit of ``crs``."""
    factor = metres_per_unit(crs)
    return np.asarray(values_m, float) if factor == 1.0 else np.asarray(values_m, float) / factor


def heights_to_crs_units(values_m: Any, crs: Optional[Any]) -> np.ndarray:
    """Heights in metres, in the unit that :func:`metres_per_height_unit` takes for ``crs``."""
    factor = metres_per_height_unit(crs)
    return np.asarray(values_m, float) if factor == 1.0 else np.asarray(values_m, float) / factor


def _axis_metres(axis: Any) -> float:
    unit = axis_unit(axis)
    return float(axis.unit_conversion_factor) if unit is None else unit.metres


def nice_step(length: float) -> float:
    """The largest of 1, 2, 5 times a power of ten that is not longer than ``length`` (> 0)."""
    power = 10.0 ** math.floor(math.log10(length))
    for factor in (5.0, 2.0):
        if factor * power <= length * (1 + 1e-9):
            return factor * power
    return power
