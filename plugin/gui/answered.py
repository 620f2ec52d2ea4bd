"""The parameter of the import that gives an answer to a question."""

from __future__ import annotations

from typing import Any, Callable, Dict, Tuple

from ..core.points.given import HEIGHTS_OF, UNITS_FROM
from ..core.points.questions import Answer
from ..core.points.said_units import AngleForm
from ..processing.importoptions import ANGLES, DECIMALS, DELIMITERS
from ..processing.parameters import UNITS

_UNIT_WORDS = [unit.value for unit in UNITS]
#: Option of the command line to the parameter and how its value is read.
_PARAMETERS: Dict[str, Tuple[str, Callable[[str], Any]]] = {
    "--angles": ("ANGLES", lambda value: ANGLES.index(AngleForm(value))),
    "--antenna-offset": ("ANTENNA_OFFSET", float),
    "--columns": ("COLUMNS", str),
    "--comment": ("COMMENT", str),
    "--correct": ("CORRECT", str),
    "--decimal": ("DECIMAL", DECIMALS.index),
    "--delimiter": ("DELIMITER", DELIMITERS.index),
    "--height-unit": ("HEIGHT_UNIT", _UNIT_WORDS.index),
    "--heights-are": ("HEIGHTS_ARE", ["", "orthometric", "ellipsoidal"].index),
    "--heights-of": ("HEIGHTS_OF", ["", *HEIGHTS_OF].index),
    "--layer": ("FILE_LAYER", str),
    "--no-value": ("NO_VALUE", str),
    "--pole-height": ("POLE_HEIGHT", lambda value: float(value.replace(",", "."))),
    "--source-crs": ("SOURCE_CRS", str),
    "--unit": ("UNIT", _UNIT_WORDS.index),
    "--units-from": ("UNITS_FROM", ["", *UNITS_FROM].index),
}


def has_parameter(answer: Answer) -> bool:
    """Whether a parameter gives it."""
    return answer.option in _PARAMETERS


def parameter_of(answer: Answer) -> Tuple[str, Any]:
    """The parameter that gives it, and the value; ("", None) for none."""
    if answer.option not in _PARAMETERS:
        return "", None
    name, read = _PARAMETERS[answer.option]
    return name, read(answer.value)
