"""Numbers in the user's locale, for what is shown on the screen. Files keep the decimal point."""

from __future__ import annotations

from typing import Any

from qgis.PyQt.QtCore import QLocale

from ..core.messages import fill


def local_number(value: Any, form: str = "") -> str:
    """``value`` as :func:`format` has it, with the decimal mark and the mark of groups of the user's locale."""
    locale = QLocale()
    marks = {ord("."): locale.decimalPoint(), ord(","): locale.groupSeparator()}
    return format(value, form).translate(marks)


def shown(text: str, **values: Any) -> str:
    """``text`` with its gaps filled as :meth:`str.format` does, numbers as the user's locale has them."""
    return fill(text, values, local_number)
