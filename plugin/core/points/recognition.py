"""What a survey file was recognised as, how sure that is, and what only the user can say."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Mapping, Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text
from ..units import LengthUnit
from .geographic import HeightKind
from .layout import Header


class Question(Enum):
    """What can be open about a file."""

    COLUMNS = "columns"
    AXES = "axes"
    DEGREES = "degrees"
    UNIT = "unit"
    HEIGHT = "height"
    HEIGHT_KIND = "height-kind"
    LETTER = "letter"


NOT_SAID = Text(
    "points.columns_not_said",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: nothing says for sure which columns are easting, northing and height (first line: {words}); "
        "give --columns, such as {options}.",
    ),
)
OPEN = Text("points.ambiguous", QT_TRANSLATE_NOOP("core", "{file}: {question}; type one of: {options}."))
NO_OPTIONS = Text("points.ambiguous_file", QT_TRANSLATE_NOOP("core", "{file}: {question}."))
EXAMPLE = "name,easting,northing,height,code"


@dataclass(frozen=True)
class Alternative:
    """One answer to a question. ``option``: what to type for it; ``reasons``: what speaks for or against it."""

    option: str
    reasons: Tuple[Message, ...] = ()


@dataclass(frozen=True)
class Ambiguity:
    """A question that the file does not answer, its answers, the likeliest first.

    ``stops``: whether reading goes on without an answer; where it does, ``text`` says what is assumed.
    """

    question: Question
    text: Message
    alternatives: Tuple[Alternative, ...]
    stops: bool = True


@dataclass(frozen=True)
class Guess:
    """One way to read the file. ``columns``: role to column number from 1. ``unit``: of plan, None for degrees;
    ``height_unit``: of heights. ``likelihood``: 0 to 1, of all guesses together 1; it ranks and is no probability.
    """

    columns: Mapping[str, int]
    unit: Optional[LengthUnit]
    height_unit: LengthUnit
    likelihood: float
    reasons: Tuple[Message, ...]

    @property
    def option(self) -> str:
        """What to type for these columns."""
        return "--columns " + ",".join(f"{role}={column}" for role, column in self.columns.items())


@dataclass(frozen=True)
class ColumnGuess:
    """What a column (number from 1) may hold, with the reason; ``likelihood`` 0 to 1."""

    column: int
    role: str
    likelihood: float
    reason: Message


@dataclass(frozen=True)
class Recognition:
    """What was recognised.

    ``delimiter``, ``decimal``, ``encoding``, ``header``, ``comment``: as in :class:`.delimited.FileFormat`.
    ``guesses``: ranked; the first is taken where nothing stops. ``columns``: for each column its possible
    roles, ranked. ``heights``: what the heights are, where the header says it. ``o_means``: E or W for a letter O.
    ``explicit``: whether the header names each coordinate with a word that leaves no doubt.
    """

    file: str
    delimiter: str
    decimal: str
    encoding: str
    comment: str
    header: Optional[Header]
    guesses: Tuple[Guess, ...]
    ambiguous: Tuple[Ambiguity, ...]
    columns: Tuple[Tuple[ColumnGuess, ...], ...]
    heights: HeightKind = HeightKind.UNKNOWN
    o_means: str = ""
    explicit: bool = False
    messages: Tuple[Message, ...] = ()

    @property
    def decided(self) -> bool:
        """Whether the file can be read without asking."""
        return bool(self.guesses) and not any(one.stops for one in self.ambiguous)

    def error(self, first: str) -> SurveyError:
        """The error that asks the user; ``first``: the first line of the file, to show."""
        for one in self.ambiguous:
            if not one.stops:
                continue
            options = " | ".join(each.option for each in one.alternatives)
            if one.question is Question.COLUMNS or not one.alternatives:
                if not one.alternatives and one.question is not Question.COLUMNS:
                    return SurveyError(NO_OPTIONS, file=self.file, question=one.text)
                return SurveyError(NOT_SAID, file=self.file, words=first[:60], options=options or EXAMPLE)
            return SurveyError(OPEN, file=self.file, question=one.text, options=options)
        return SurveyError(NOT_SAID, file=self.file, words=first[:60], options=EXAMPLE)
