"""Columns and properties whose names end in a metric unit (``_m``, ``_m2``, ``_m3``, ``_mm``), in those of the site.

In a survey in feet ``area_m2`` becomes ``area_ft2`` and ``volume_m3`` ``volume_yd3`` (of water ``volume_ft3``), so
that no file mixes units; in a survey in metres nothing changes.
"""

from __future__ import annotations

from typing import Any, Dict, Iterable, List, Mapping, Optional, Sequence, Tuple

from .units import SiteUnits, site_units

_ENDINGS = (("_m3", "m³"), ("_m2", "m²"), ("_m", "m"), ("_mm", "mm"))
#: What is a height by its name, where heights are in another unit than distances.
_HEIGHTS = frozenset(
    (
        "above_pit", "depth", "drop", "height", "height_doubt", "mean_depth", "rise", "sigma", "size", "step",
        "step_doubt",
    )
)  # fmt: skip
_DECIMALS = 4


def in_site_units(
    values: Mapping[str, Any], crs: Optional[Any], water: bool = False, heights: Sequence[str] = ()
) -> Dict[str, Any]:
    """``values`` by their names, in the units of ``crs``. ``water``: whether volumes are of water; ``heights``: further
    names of what is a height, without their endings."""
    units = site_units(crs)
    named = ((_named(name, units, water, heights), value) for name, value in values.items())
    return {name: _told(value, factor) for (name, factor), value in named}


def rows_in_site_units(
    head: Sequence[str], rows: Iterable[Sequence[Any]], crs: Optional[Any], water: bool = False
) -> List[List[Any]]:
    """The same for a table: its ``head``, then its rows."""
    columns = [_named(name, site_units(crs), water, ()) for name in head]
    factors = [factor for _, factor in columns]
    return [[name for name, _ in columns], *([_told(*pair) for pair in zip(row, factors)] for row in rows)]


def in_metres(values: Mapping[str, Any], names: Iterable[str], crs: Optional[Any]) -> Dict[str, Any]:
    """``values`` as :func:`in_site_units` made them, with those of ``names`` in metres again."""
    found = dict(values)
    for name in names:
        told, factor = _named(name, site_units(crs), False, ())
        if told != name and told in found:
            value = found.pop(told)
            found[name] = None if value is None else float(value) / factor
    return found


def _named(name: str, units: SiteUnits, water: bool, heights: Sequence[str]) -> Tuple[str, float]:
    """What a column is called, and what its values are multiplied by."""
    for ending, symbol in _ENDINGS:
        if name.endswith(ending):
            plain = name[: -len(ending)]
            factor, unit, _ = units.instead_of(symbol, plain in _HEIGHTS or plain in heights, water)
            return f"{plain}_{unit.replace('²', '2').replace('³', '3')}", factor
    return name, 1.0


def _told(value: Any, factor: float) -> Any:
    """A number, or one as text, times the factor; what is no number stays."""
    if factor == 1.0 or value is None or value == "" or isinstance(value, bool):
        return value
    if isinstance(value, str):
        decimals = len(value.partition(".")[2])
        return f"{float(value) * factor:.{decimals}f}" if decimals else f"{float(value) * factor:g}"
    return round(float(value) * factor, _DECIMALS)
