"""What the user says of a survey file, and what the answer to a question adds to it."""

from __future__ import annotations

import shlex
from dataclasses import dataclass
from typing import Any, Callable, Dict, List, Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import LengthUnit
from .columns import parse_columns
from .geographic import HeightKind
from .questions import Answer
from .said_units import AngleForm

#: What heights can be of (depths count down from the level of heights), and whose word on units counts.
HEIGHTS_OF = ("ground", "antenna", "depth")
UNITS_FROM = ("header", "options")
#: The word for no marker at all, and for no comments.
NONE = "none"

BAD_LENGTH = Text(
    "given.bad_length",
    QT_TRANSLATE_NOOP("core", "{option}: '{word}' is no length from {least} to {most} m; give metres, such as 2.000."),
)
BAD_ANSWER = Text(
    "given.bad_answer", QT_TRANSLATE_NOOP("core", "'{word}' answers no question of a file; options are {options}.")
)
#: Poles and antennas are no longer, metres.
_LONGEST = 50.0


@dataclass(frozen=True)
class Given:
    """What the user says of the values of a file; None and "" for nothing said.

    ``unit``, ``height_unit``: of plan and heights. ``angles``: how degrees are written. ``no_value``: what stands for
    no value, () for nothing. ``pole_height``, ``antenna_offset``: metres from the ground to the antenna's mount, and
    from there to the point that heights are of. ``heights_of``: one of :data:`HEIGHTS_OF`. ``units_from``: one of
    :data:`UNITS_FROM`, where the header says other units than the options or the CRS.
    """

    unit: Optional[LengthUnit] = None
    height_unit: Optional[LengthUnit] = None
    angles: Optional[AngleForm] = None
    no_value: Optional[Tuple[str, ...]] = None
    pole_height: Optional[float] = None
    antenna_offset: Optional[float] = None
    heights_of: str = ""
    units_from: str = ""


def parse_no_value(text: str) -> Tuple[str, ...]:
    """Read ``-9999,*`` or ``none``."""
    words = tuple(word.strip() for word in text.split(",") if word.strip())
    return () if words == (NONE,) else words


def parse_length(text: str, option: str, least: float = 0.0) -> float:
    """Metres of a pole or an antenna. Raises SurveyError."""
    try:
        value = float(text.replace(",", "."))
    except ValueError:
        value = float("nan")
    if not least <= value <= _LONGEST:
        raise SurveyError(BAD_LENGTH, option=option, word=text, least=f"{least:g}", most=f"{_LONGEST:g}")
    return value


#: Option of the command line to the argument of :func:`.survey.read_survey` and how its value is read.
_SETTINGS: Dict[str, Tuple[str, Callable[[str], Any]]] = {
    "--columns": ("columns", parse_columns),
    "--unit": ("unit", LengthUnit),
    "--height-unit": ("height_unit", LengthUnit),
    "--angles": ("angles", AngleForm),
    "--no-value": ("no_value", parse_no_value),
    "--pole-height": ("pole_height", lambda text: parse_length(text, "--pole-height")),
    "--antenna-offset": ("antenna_offset", lambda text: parse_length(text, "--antenna-offset", -1.0)),
    "--heights-of": ("heights_of", str),
    "--heights-are": ("heights_are", HeightKind),
    "--units-from": ("units_from", str),
    "--layer": ("layer", str),
    "--delimiter": ("delimiter", str),
    "--decimal": ("decimal", str),
    "--comment": ("comment", str),
}


def parse_answers(text: str) -> List[str]:
    """The words of a command line for options that answer questions, such as ``--pole-height 2.000``.

    Raises SurveyError for any other option.
    """
    try:
        words = shlex.split(text)
    except ValueError:
        words = [text]
    wrong = [word for word in words if word.startswith("--") and word.split("=")[0] not in _SETTINGS]
    if wrong or (words and not words[0].startswith("--")):
        raise SurveyError(BAD_ANSWER, word=(wrong or words)[0], options=", ".join(_SETTINGS))
    return words


def setting_of(answer: Answer) -> Tuple[str, Any]:
    """The argument of :func:`.survey.read_survey`, also a field of the options of the intake, that gives an answer of
    the ``points`` stage, and its value.
    """
    name, read = _SETTINGS[answer.option]
    return name, read(answer.value)
