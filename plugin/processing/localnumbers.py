"""Numbers in the user's locale and lengths in the units of the site, for what is shown on the screen.

Files keep the decimal point. The units are those of the run: an algorithm that has read a survey or surface calls
:func:`use_units`, and what is said after that is in them.
"""

from __future__ import annotations

from contextlib import contextmanager
from contextvars import ContextVar, Token
from typing import Any, Iterator, Optional

from qgis.PyQt.QtCore import QLocale

from ..core.messages import fill
from ..core.units import METRIC, SiteUnits, site_units

_UNITS: ContextVar[SiteUnits] = ContextVar("units", default=METRIC)


def use_units(crs: Optional[Any]) -> Token:
    """From now on lengths are told in the units of ``crs`` (None: metres); the token undoes it."""
    return _UNITS.set(site_units(crs))


def undo_units(token: Token) -> None:
    _UNITS.reset(token)


@contextmanager
def units_of(crs: Optional[Any]) -> Iterator[None]:
    """Within it lengths are told in the units of ``crs`` (None: metres)."""
    token = use_units(crs)
    try:
        yield
    finally:
        undo_units(token)


def units_told() -> SiteUnits:
    """The units in which lengths are told."""
    return _UNITS.get()


def local_number(value: Any, form: str = "") -> str:
    """``value`` as :func:`format` has it, with the decimal mark and the mark of groups of the user's locale."""
    locale = QLocale()
    marks = {ord("."): locale.decimalPoint(), ord(","): locale.groupSeparator()}
    return format(value, form).translate(marks)


def shown(text: str, **values: Any) -> str:
    """``text`` with its gaps filled as :meth:`str.format` does, numbers as the user's locale has them.

    Lengths (m, mm, m², m³ after a gap) are metres and told in the units of the site.
    """
    return fill(text, values, local_number, units_told())


def shown_of_water(text: str, **values: Any) -> str:
    """As :func:`shown`, but volumes of a site in feet are cubic feet, not cubic yards."""
    return fill(text, values, local_number, units_told(), water=True)
