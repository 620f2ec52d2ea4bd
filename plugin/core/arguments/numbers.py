"""Numbers on the command line."""

from __future__ import annotations

import math
from typing import Callable, Union

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

NOT_A_NUMBER = Text("job.not_a_number", QT_TRANSLATE_NOOP("core", "{option} must be a number, not {value}."))
NOT_POSITIVE = Text("job.not_positive", QT_TRANSLATE_NOOP("core", "{option} must be a number above zero, not {value}."))
NEGATIVE = Text("job.negative", QT_TRANSLATE_NOOP("core", "{option} must be a number from zero up, not {value}."))


def number(option: str) -> Callable[[str], float]:
    def read(text: str) -> float:
        try:
            value = float(text)
        except ValueError:
            value = math.nan
        if not math.isfinite(value):
            raise SurveyError(NOT_A_NUMBER, option=option, value=text)
        return value

    return read


def positive(option: str, zero: bool = False) -> Callable[[str], float]:
    def read(text: str) -> float:
        value = number(option)(text)
        if value < 0 or (value == 0 and not zero):
            raise SurveyError(NEGATIVE if zero else NOT_POSITIVE, option=option, value=text)
        return value

    return read


def number_or_word(option: str, word: str) -> Callable[[str], Union[float, str]]:
    def read(text: str) -> Union[float, str]:
        return word if text.strip().casefold() == word else number(option)(text)

    return read
