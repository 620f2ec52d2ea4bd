"""Depths, areas and volumes as people of a place read them: metric, or feet, square feet and cubic yards."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Optional

from ..georeference.crs import plan_unit
from ..units import LengthUnit
from .labels import number, significant

_FEET_A_YARD = 3


@dataclass(frozen=True)
class EarthUnits:
    """Volumes in cubic metres, or cubic yards (27 cubic feet) where plan coordinates are in feet; of ``water`` in cubic
    feet.
    """

    unit: LengthUnit
    water: bool = False

    @property
    def _volume_edge(self) -> float:
        """Metres along the edge of the unit of volume."""
        return self.unit.metres if self.water or self.unit is LengthUnit.METRE else _FEET_A_YARD * self.unit.metres

    @property
    def length(self) -> str:
        return self.unit.symbol

    @property
    def area(self) -> str:
        return f"{self.unit.symbol}²"

    @property
    def volume(self) -> str:
        return f"{self.unit.symbol}³" if self.water or self.unit is LengthUnit.METRE else "yd³"

    def lengths(self, metres: float, decimals: int = 2) -> str:
        return number(metres / self.unit.metres, decimals)

    def areas(self, square_metres: float) -> str:
        value = square_metres / self.unit.metres**2
        return number(value, 1 if abs(value) < 10_000 else 0)

    def in_volume_unit(self, cubic_metres: float) -> float:
        return cubic_metres / self._volume_edge**3

    def volumes(self, cubic_metres: float, decimals: Optional[int] = None) -> str:
        """With one decimal below a thousand, none above."""
        value = self.in_volume_unit(cubic_metres)
        if decimals is None:
            decimals = 2 if abs(value) < 10 else 1 if abs(value) < 1000 else 0
        return number(value, decimals)

    def doubts(self, cubic_metres: float) -> str:
        """A standard deviation or half an interval, with two significant digits."""
        return significant(self.in_volume_unit(cubic_metres))


def earth_units(crs: Optional[Any], water: bool = False) -> EarthUnits:
    """Those of a CRS; metric for None, a local grid."""
    return EarthUnits(plan_unit(crs), water)
