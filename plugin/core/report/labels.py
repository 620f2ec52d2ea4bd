"""How the report writes numbers, units and words."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, Callable, Optional, Tuple

from ..units import nice_step

__all__ = [
    "MINUS",
    "NOT_KNOWN",
    "THIN",
    "Words",
    "crs_name",
    "level_decimals",
    "millimetres",
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
    """Turns marked English into the reader's language and fills its gaps."""

    translate: Callable[[str], str] = str

    def __call__(self, english: str, **values: Any) -> str:
        return self.translate(english).format(**values)


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


def millimetres(metres: float) -> str:
    return f"{significant(metres * 1000)} mm"


def plain(value: float) -> str:
    """A number as the user gave it, without trailing zeros."""
    return number(value, level_decimals(value))


def plain_percent(value: float) -> str:
    """A percentage with two decimals at most, and none that are zero."""
    return plain(round(value, 2))
