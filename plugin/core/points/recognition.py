"""What a survey file was recognised as, how sure that is, and what only the user can say."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import List, Mapping, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import LengthUnit
from .columns import coordinates_of
from .geographic import HeightKind
from .layout import Header
from .questions import Answer, Question, QuestionError, Topic
from .said_units import AngleForm
from .values import Written

WHICH_COLUMNS = Text(
    "recognise.which_columns", QT_TRANSLATE_NOOP("core", "nothing says for sure which columns are which")
)
COLUMNS_SAID = Text("points.columns_said", QT_TRANSLATE_NOOP("core", "{one}, {more}"))
COLUMN_SAID = Text("points.column_said", QT_TRANSLATE_NOOP("core", "{role} in column {column}"))


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
    def mapping(self) -> str:
        """These columns as --columns takes them."""
        return ",".join(f"{role}={column}" for role, column in self.columns.items())

    @property
    def answer(self) -> Answer:
        """To read these columns so."""
        plan = [role for role in coordinates_of(self.columns) if role in self.columns]
        return Answer("--columns", self.mapping, _said([(role, self.columns[role]) for role in plan]), self.reasons)


def _said(columns: Sequence[Tuple[str, int]]) -> Message:
    role, column = columns[0]
    one = message(COLUMN_SAID, role=role, column=column)
    return one if len(columns) == 1 else message(COLUMNS_SAID, one=one, more=_said(columns[1:]))


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
    ``explicit``: whether the header names each coordinate with a word that leaves no doubt. ``units``: of each role
    that is a length; ``angles``: how degrees are written; ``sides``: role to the place (from 0) of its letter, where
    that is a column; ``month_first``: what dates begin with; ``heights_of``: "antenna", "ground" or "depth" where the
    header says it; ``written``: role to how its numbers stand; ``turned``: angles that count west or south;
    ``unsigned``: longitudes are positive decimal degrees without a letter.
    """

    file: str
    delimiter: str
    decimal: str
    encoding: str
    comment: str
    header: Optional[Header]
    guesses: Tuple[Guess, ...]
    questions: Tuple[Question, ...]
    columns: Tuple[Tuple[ColumnGuess, ...], ...]
    heights: HeightKind = HeightKind.UNKNOWN
    o_means: str = ""
    explicit: bool = False
    messages: Tuple[Message, ...] = ()
    units: Mapping[str, LengthUnit] = field(default_factory=dict)
    angles: AngleForm = AngleForm.DEGREES
    sides: Mapping[str, int] = field(default_factory=dict)
    month_first: bool = False
    heights_of: str = ""
    written: Mapping[str, Written] = field(default_factory=dict)
    turned: Tuple[str, ...] = ()
    unsigned: bool = False

    @property
    def decided(self) -> bool:
        """Whether the file can be read without asking."""
        return bool(self.guesses) and not any(one.stops for one in self.questions)

    def error(self, first: str) -> QuestionError:
        """The error that asks the user; ``first``: the first line of the file, to show."""
        stopping: List[Question] = []
        for one in self.questions:
            # Two questions that the same options answer are one.
            same = any([a.typed for a in one.answers] == [a.typed for a in other.answers] for other in stopping)
            if one.stops and not (same and one.answers):
                stopping.append(one)
        return QuestionError(self.file, stopping or [Question(Topic.COLUMNS, message(WHICH_COLUMNS))], first)
