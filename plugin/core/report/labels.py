"""How the report writes numbers, units and words."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any, Callable, Optional, Tuple

from ..units import METRIC, LengthUnit, SiteUnits, nice_step, site_units

__all__ = [
    "MINUS",
    "NOT_KNOWN",
    "THIN",
    "SmallLengths",
    "Words",
    "crs_name",
    "level_decimals",
    "nice_step",
    "number",
    "plain",
    "plain_percent",
    "significant",
]

THIN = "\u202f"  # narrow no-break space between groups of digits (SI Brochure, 9th edition, 5.4.4)
MINUS = "\u2212"
NOT_KNOWN = "\u2013"


@dataclass(frozen=True)
class Words:
    """Turns marked English into the reader's language and fills its gaps; ``units``: those that lengths are told in."""

    translate: Callable[[str], str] = str
    units: SiteUnits = METRIC

    def __call__(self, english: str, **values: Any) -> str:
        return self.translate(english).format(**values)

    def on(self, crs: Optional[Any]) -> Words:
        """The same for a surface in ``crs``, whatever units other parts of the report are told in."""
        return replace(self, units=site_units(crs))

    @property
    def small(self) -> SmallLengths:
        """How small differences of height are told."""
        return SmallLengths(self.units.height)

    @property
    def small_plan(self) -> SmallLengths:
        """How small distances are told."""
        return SmallLengths(self.units.plan)

    def length(self, metres: float, decimals: int = 1) -> str:
        """A distance with its unit."""
        return f"{number(metres / self.units.plan.metres, decimals)} {self.units.plan.symbol}"

    def given(self, metres: float) -> str:
        """A distance as it was given, to the thousandth of its unit, which it has with it."""
        return f"{plain(round(metres / self.units.plan.metres, 3))} {self.units.plan.symbol}"


@dataclass(frozen=True)
class SmallLengths:
    """Residuals, noise and the like: millimetres for a survey in metres, else its ``unit`` with three more decimals."""

    unit: LengthUnit

    @property
    def symbol(self) -> str:
        return "mm" if self.unit is LengthUnit.METRE else self.unit.symbol

    @property
    def factor(self) -> float:
        """Of metres."""
        return 1000.0 if self.unit is LengthUnit.METRE else 1.0 / self.unit.metres

    def figure(self, metres: float, decimals: int = 0) -> str:
        """The number, with so many decimals of a millimetre, without its unit."""
        return number(metres * self.factor, decimals if self.unit is LengthUnit.METRE else decimals + 3)

    def plain(self, metres: float, decimals: int = 3) -> str:
        """The number as it was given, with so many decimals of a millimetre at most (feet: four), without its unit."""
        return plain(round(metres * self.factor, decimals if self.unit is LengthUnit.METRE else 4))

    def significant(self, metres: float) -> str:
        """The number with two significant digits, without its unit."""
        return significant(metres * self.factor)

    def said(self, metres: float) -> str:
        """The number with two significant digits, and its unit."""
        return f"{self.significant(metres)} {self.symbol}"


def number(value: float, decimals: int = 0) -> str:
    """``value`` with groups of three digits, e.g. 12 345.68; an en dash when it is not a number."""
    if not math.isfinite(value):
        return NOT_KNOWN
    text = f"{value:,.{decimals}f}".replace(",", THIN)
    if not any(digit in text for digit in "123456789"):
        return text.lstrip("-")  # no minus zero
    return text.replace("-", MINUS)


def significant(value: float, digits: int = 2) -> str:
    """``value`` with so many significant digits and no power of ten."""
    if not math.isfinite(value) or value == 0:
        return number(value)
    power = int(f"{value:.{digits - 1}e}".split("e")[1])  # of the rounded value: 0.999 is 1.0
    return number(value, max(0, digits - 1 - power))


def crs_name(crs: Optional[Any]) -> Tuple[str, str]:
    """Name and authority code of ``crs``; empty texts where there is none."""
    if crs is None:
        return "", ""
    authority = crs.to_authority()
    return str(crs.name), ":".join(authority) if authority else ""


def level_decimals(*values: float) -> int:
    """How many decimals write all of ``values`` exactly (to six at most)."""
    return next((d for d in range(6) if all(abs(v - round(v, d)) < 1e-9 for v in values)), 6)


def plain(value: float) -> str:
    """A number as the user gave it, without trailing zeros."""
    return number(value, level_decimals(value))


def plain_percent(value: float) -> str:
    """A percentage with two decimals at most, and none that are zero."""
    return plain(round(value, 2))
