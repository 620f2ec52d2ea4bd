"""Length units of survey data and their exact factors."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import Any, Optional, Tuple

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


@dataclass(frozen=True)
class SiteUnits:
    """The units in which people read the lengths of a site: ``plan`` for distances, ``height`` for heights."""

    plan: LengthUnit = LengthUnit.METRE
    height: LengthUnit = LengthUnit.METRE

    @property
    def metric(self) -> bool:
        return self.plan is self.height is LengthUnit.METRE

    def instead_of(self, symbol: str, height: bool = False, water: bool = False) -> Tuple[float, str, int]:
        """Factor, symbol and further decimals for figures in m, mm, km, m² or m³.

        Volumes of earth are told in cubic yards, of ``water`` in cubic feet, far distances in miles of 5280 ft.
        """
        unit = self.height if height else self.plan
        if unit is LengthUnit.METRE:
            return 1.0, symbol, 0
        metres = unit.metres
        volume = (1.0 / metres**3, f"{unit.symbol}³", 0) if water else (1.0 / (3 * metres) ** 3, "yd³", 0)
        return {
            "m": (1.0 / metres, unit.symbol, 0), "mm": (0.001 / metres, unit.symbol, 3),
            "km": (1000.0 / (5280 * metres), "mi", 0), "m²": (1.0 / metres**2, f"{unit.symbol}²", 0), "m³": volume,
        }[symbol]  # fmt: skip

    def told(self, value: float, symbol: str) -> Tuple[float, str]:
        """A ``value`` in m, m² or another unit, and its unit, as people of the site read them."""
        if symbol not in ("m", "mm", "km", "m²", "m³"):
            return value, symbol
        factor, symbol, _ = self.instead_of(symbol)
        return value * factor, symbol


METRIC = SiteUnits()


def site_units(crs: Optional[Any], height: Optional[LengthUnit] = None) -> SiteUnits:
    """The units of a pyproj CRS, metres for a local grid; heights in ``height`` where that was chosen."""
    axes = [] if crs is None else crs.axis_info
    plan = (axis_unit(axes[0]) if axes else None) or LengthUnit.METRE
    return SiteUnits(plan, height or (axis_unit(axes[2]) if len(axes) > 2 else None) or plan)


def usual_contour_interval(unit: LengthUnit) -> float:
    """The contour interval that is offered where heights are in ``unit``, in that unit: 0.25 m, half a foot."""
    return 0.25 if unit is LengthUnit.METRE else 0.5


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


def nice_length(length: float, crs: Optional[Any]) -> float:
    """As :func:`nice_step`, in metres, but round in the unit of the plan axes of ``crs``."""
    metres = metres_per_unit(crs)
    return nice_step(length / metres) * metres


def nice_step(length: float) -> float:
    """The largest of 1, 2, 5 times a power of ten that is not longer than ``length`` (> 0)."""
    power = 10.0 ** math.floor(math.log10(length))
    for factor in (5.0, 2.0):
        if factor * power <= length * (1 + 1e-9):
            return factor * power
    return power
