"""What the core says to people: a code, a text that can be translated, and the data that fill it.

Each stage defines its own :class:`Text` constants beside the code that uses them. The core never
joins sentences: the plugin translates ``Text.english`` (context ``core``) and fills the values in;
the command line fills the English.
"""

from __future__ import annotations

import numbers
import string
from dataclasses import dataclass, field
from typing import Any, Callable, Dict, Iterable, List, Mapping, Sequence

from .said_in_units import Figure, in_units
from .units import METRIC, SiteUnits


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:
    """Mark ``text`` for Qt's string extraction; returns it unchanged."""
    return text


_OF_WATER = ("water.", "job.water", "job.basin")
#: Gives a number, or a :class:`Figure`, in the format asked for, its text.
NumberFormat = Callable[[Any, str], str]


@dataclass(frozen=True)
class Text:
    """A translatable sentence: ``code`` is stable and for programs, ``english`` has {named} gaps.

    ``one``: the sentence where ``count`` is one; empty where the other serves for one too. ``weight``: how bad it is
    where it is told as a remark: 0 to know, 1 to look at, 2 a doubt of results, 3 results are likely wrong.

    Lengths in it are metres (m, mm, km, m², m³ after a gap) and are said in the units of the site, volumes in cubic
    feet where it is about water, else in cubic yards; ``metric``: they stay metres, as options of the user are.
    """

    code: str
    english: str
    one: str = ""
    weight: int = 0
    metric: bool = False

    @property
    def of_water(self) -> bool:
        return self.code.startswith(_OF_WATER)

    def said_of(self, count: Any) -> str:
        """The English for so many."""
        return self.one if self.one and count == 1 else self.english


@dataclass(frozen=True)
class Message:
    """One thing to tell the user: a text and the values of its gaps.

    A value may itself be a :class:`Text` or a message; it is said in the same language.
    """

    text: Text
    values: Mapping[str, Any] = field(default_factory=dict)

    def say(
        self, translate: Callable[[str], str] = str, number: NumberFormat = format, units: SiteUnits = METRIC
    ) -> str:
        """The sentence, in the language of ``translate`` (English by default), its numbers as ``number`` has them.

        Lengths are told in ``units``.
        """
        english = self.text.said_of(self.values.get("count"))
        values = {key: _said(value, translate, number, units) for key, value in self.values.items()}
        return fill(translate(english), values, number, METRIC if self.text.metric else units, self.text.of_water)

    def __str__(self) -> str:
        return self.say()


def fill(
    text: str,
    values: Mapping[str, Any],
    number: NumberFormat = format,
    units: SiteUnits = METRIC,
    water: bool = False,
) -> str:
    """``text`` with its {named} gaps filled as :meth:`str.format` does, numbers by ``number``, lengths in ``units``."""
    if not units.metric:
        text, values = in_units(text, values, units, water)
    return text.format(**values) if number is format else _Filler(number).vformat(text, (), values)


class _Filler(string.Formatter):
    def __init__(self, number: NumberFormat) -> None:
        self._number = number

    def format_field(self, value: Any, format_spec: str) -> Any:
        plain = isinstance(value, numbers.Integral) and not format_spec  # a line, a count: no decimals, no groups
        shown = isinstance(value, (numbers.Real, Figure)) and not plain
        return self._number(value, format_spec) if shown else format(value, format_spec)

    def get_value(self, key: Any, args: Sequence[Any], kwargs: Mapping[str, Any]) -> Any:
        return kwargs[str(key)]


def _said(value: Any, translate: Callable[[str], str], number: NumberFormat, units: SiteUnits) -> Any:
    if isinstance(value, Text):
        return translate(value.english)
    return value.say(translate, number, units) if isinstance(value, Message) else value


def worst_first(messages: Iterable[Message]) -> List[Message]:
    """The messages by the weight of their texts, the worst first, else in their order."""
    return sorted(messages, key=lambda one: -one.text.weight)


def message(text: Text, **values: Any) -> Message:
    """Short for ``Message(text, values)``."""
    return Message(text, values)


class SurveyError(Exception):
    """Input or settings the user must mend: one line that names file, line and what to do."""

    def __init__(self, text: Text, **values: Any) -> None:
        self.message = Message(text, values)
        super().__init__(self.message.say())

    @property
    def code(self) -> str:
        return self.message.text.code

    @property
    def values(self) -> Dict[str, Any]:
        return dict(self.message.values)
