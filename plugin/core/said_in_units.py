"""Texts whose lengths are in metres, said in the units of a site.

A gap of a text is a length by what follows it: ``{size:.3f} m``, ``{area:.0f} m²``, ``{spread:.0f} mm``. Of
``{cut:.1f} ± {half:.1f} m³`` and ``{low:.1f} of {high:.1f} m²`` the second says the unit of both. Coordinates have no
unit behind them and are known by their names. So texts, and their translations, stay as they are in every unit.
"""

from __future__ import annotations

import numbers
import re
import string
from typing import Any, Dict, List, Mapping, Optional, Tuple

from .units import SiteUnits

_UNIT = re.compile(r"^([ \u00a0\u202f])(mm|km|m³|m²|m)(?![\w/²³])")
_BETWEEN = re.compile(r"^ (±|[^\W\d]{1,3}) $")
_NUMBER = re.compile(r"^([+\-−]?)(\d+(?:\.(\d+))?)(?:([ \u00a0\u202f])(mm|km|m))?$")
_FORMAT = re.compile(r"^([+\-]?)(,?)(?:\.(\d+))?([fg])$")
_COORDINATES = frozenset(
    ("easting", "northing", "end_easting", "end_northing", "east", "north", "west", "south", "x", "y")
)
#: Gaps that hold heights, for sites whose heights are in another unit than distances; signed ones are heights too.
_HEIGHTS = frozenset(
    (
        "accuracy", "bend", "drift", "first_height", "half", "height", "height_m", "high", "highest", "largest",
        "least_m", "low", "lowest", "mean", "mean_m", "most_m", "moved", "off", "rms", "rmse", "second_height",
        "sigma", "size", "spread", "total", "up", "value_m", "worst",
    )
)  # fmt: skip


class Figure(str):
    """A number as text, perhaps with its unit: whoever shows it may give it the decimal mark of the reader."""

    __slots__ = ()


def in_units(text: str, values: Mapping[str, Any], units: SiteUnits, water: bool) -> Tuple[str, Dict[str, Any]]:
    """``text`` and ``values`` with lengths in ``units``; what is no number, or has no format, stays as it is."""
    pieces: List[List[Any]] = [list(piece) for piece in string.Formatter().parse(text)]
    pieces.append(["", None, None, None])
    found: Dict[str, Any] = {name: _figure_in(value, units) for name, value in values.items()}
    new: List[str] = []
    symbols: List[Optional[str]] = [_symbol(pieces, k) for k in range(len(pieces) - 1)]
    for k, (literal, name, form, conversion) in enumerate(pieces[:-1]):
        new.append(literal.replace("{", "{{").replace("}", "}}"))
        if name is None:
            continue
        symbol, value = symbols[k], values.get(name)
        height = name in _HEIGHTS or (form or "").startswith("+")
        told = None if symbol is None else _told(value, form or "", units.instead_of(symbol, height, water))
        if told is not None and symbol is not None:
            value, form, unit = told
            name = f"{name}_{k}"
            found[name] = value
            pieces[k + 1][0] = _UNIT.sub(rf"\g<1>{unit}", pieces[k + 1][0])
        elif name in _COORDINATES and symbol is None and (form or "").endswith("f") and value is not None:
            found[f"{name}_{k}"] = value / units.plan.metres
            name = f"{name}_{k}"
        new.append("{" + name + (f"!{conversion}" if conversion else "") + (f":{form}" if form else "") + "}")
    return "".join(new), found


def _symbol(pieces: List[List[Any]], k: int) -> Optional[str]:
    """The unit of the gap of piece ``k``, by what follows."""
    behind = pieces[k + 1][0]
    unit = _UNIT.match(behind)
    if unit is not None:
        return unit.group(2)
    return _symbol(pieces, k + 1) if _BETWEEN.match(behind) and _same_kind(pieces[k][2], pieces[k + 1][2]) else None


def _same_kind(form: Optional[str], after: Optional[str]) -> bool:
    return bool(form) and bool(after) and form[-1:] == "f" == after[-1:]  # type: ignore[index]


def _told(value: Any, form: str, instead: Tuple[float, str, int]) -> Optional[Tuple[Any, str, str]]:
    """Value, format and unit; None for what is no measured number."""
    factor, unit, more = instead
    shape = _FORMAT.match(form)
    if isinstance(value, Figure):
        number = _NUMBER.match(value)
        if number is None or number.group(5):
            return None
        decimals = len(number.group(3) or "") + more
        sign = "+" if number.group(1) == "+" else ""
        return Figure(f"{float(value.replace('−', '-')) * factor:{sign}.{decimals}f}"), form, unit
    if shape is None or not isinstance(value, numbers.Real):
        return None
    sign, group, decimals_, kind = shape.groups()
    if kind == "g":
        return value * factor, f"{sign}{group}.{decimals_ or 4}g", unit
    return value * factor, f"{sign}{group}.{int(decimals_ or 6) + more}f", unit


def _figure_in(value: Any, units: SiteUnits) -> Any:
    """A figure that has its unit with it."""
    number = _NUMBER.match(value) if isinstance(value, Figure) else None
    if number is None or not number.group(5):
        return value
    factor, unit, more = units.instead_of(number.group(5))
    decimals = len(number.group(3) or "") + more
    return Figure(f"{number.group(1)}{float(number.group(2)) * factor:.{decimals}f}{number.group(4)}{unit}")
