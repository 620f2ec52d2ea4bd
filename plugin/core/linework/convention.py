"""How the field writes codes: code, line number and words in the description of a point."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace
from enum import Enum
from typing import Dict, FrozenSet, List, Mapping, Optional, Pattern, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import PointSet
from .codes import CodeRow, CodeTable

#: Plan positions closer than this (metres) are one place: the grid on which the surface is decided.
SAME_PLACE = 0.0001

WORD_TWICE = Text(
    "linework.word_twice",
    QT_TRANSLATE_NOOP("core", "The word {word} means both {first} and {second}. Give each its own word."),
)
WORD_BROKEN = Text(
    "linework.word_broken",
    QT_TRANSLATE_NOOP("core", "The word for {meaning} is '{word}'; it must be one word without spaces or separator."),
)
CODE_IS_WORD = Text(
    "linework.code_is_word",
    QT_TRANSLATE_NOOP("core", "{file}: code {code} is also the word for {meaning}. Change one of them."),
)
CODE_BROKEN = Text(
    "linework.code_broken",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: code {code} contains a space or the separator '{separator}', so it can never be found. Rename it.",
    ),
)
BAD_PATTERN = Text(
    "linework.bad_pattern",
    QT_TRANSLATE_NOOP(
        "core", "The pattern {pattern} cannot be used ({reason}). Write a regular expression with a group named code."
    ),
)
NO_CODE_GROUP = Text(
    "linework.no_code_group",
    QT_TRANSLATE_NOOP("core", "The pattern {pattern} has no group named code. Write (?P<code>...) around the code."),
)
BAD_TOLERANCE = Text(
    "linework.bad_tolerance",
    QT_TRANSLATE_NOOP("core", "The arc tolerance {value} m cannot be used. Give at least {least} m."),
)
NOT_FOUR_WORDS = Text(
    "linework.not_four_words",
    QT_TRANSLATE_NOOP(
        "core",
        "The words '{words}' must be four, with commas between: for begin, end, close and arc, in this order. "
        "Leave one empty where the field has none.",
    ),
)
NO_COLUMN = Text(
    "linework.no_column",
    QT_TRANSLATE_NOOP("core", "{file}: there is no column {column} for the linework. Columns kept: {columns}."),
)


class Word(Enum):
    """What a word beside a code can mean."""

    BEGIN = "begin"
    END = "end"
    CLOSE = "close"
    ARC = "arc"


@dataclass(frozen=True)
class FieldConvention:
    """How descriptions such as ``KT 1 BEGIN`` or ``KT1 / LE 2 END`` are written. Case never matters.

    Without ``pattern``: words of the convention may stand anywhere; of what is left the first piece is
    the code, or code and line number without a space (a code that stands in the table as it is comes
    first, so a code may end in a digit), then the line number. A line number may be left out.

    ``begin``, ``end``, ``close``, ``arc``: the words; "" where the field has none.
    ``separator``: between several codes on one point; "" where a point never has several.
    ``pattern``: regular expression with a group ``code`` and perhaps ``line`` and ``words``, matched at
    the start of each code's text; what follows the match is read as words too.
    ``line_column``, ``word_column``: columns of ``PointSet.extra`` with the line number and the words.
    A number there goes before one in the description; words there are added to its words. With several
    codes on a point such a cell holds one value for all, or as many as there are codes, separated alike.
    ``arc_tolerance``: metres, the most an arc may stand off its chords.
    Raises :class:`SurveyError` for words, pattern or tolerance that cannot work.
    """

    begin: str = "BEGIN"
    end: str = "END"
    close: str = "CLOSE"
    arc: str = "ARC"
    separator: str = "/"
    pattern: Optional[str] = None
    line_column: Optional[str] = None
    word_column: Optional[str] = None
    arc_tolerance: float = 0.01
    words: Mapping[str, Word] = field(init=False, repr=False, compare=False)
    compiled: Optional[Pattern[str]] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "words", self._check_words())
        object.__setattr__(self, "compiled", self._compile())
        if not SAME_PLACE <= self.arc_tolerance < np.inf:
            raise SurveyError(BAD_TOLERANCE, value=self.arc_tolerance, least=SAME_PLACE)

    def _check_words(self) -> Dict[str, Word]:
        found: Dict[str, Word] = {}
        for meaning in Word:
            word = getattr(self, meaning.value).strip()
            if not word:
                continue
            if len(word.split()) > 1 or (self.separator and self.separator in word):
                raise SurveyError(WORD_BROKEN, meaning=meaning.value, word=word)
            first = found.setdefault(word.casefold(), meaning)
            if first is not meaning:
                raise SurveyError(WORD_TWICE, word=word, first=first.value, second=meaning.value)
        return found

    def _compile(self) -> Optional[Pattern[str]]:
        if not self.pattern:
            return None
        try:
            compiled = re.compile(self.pattern, re.IGNORECASE)
        except re.error as error:
            raise SurveyError(BAD_PATTERN, pattern=self.pattern, reason=str(error)) from None
        if "code" not in compiled.groupindex:
            raise SurveyError(NO_CODE_GROUP, pattern=self.pattern)
        return compiled

    def check_table(self, table: CodeTable) -> None:
        """Raise :class:`SurveyError` when a code of ``table`` could never be told from a word."""
        for row in table.rows:
            meaning = self.words.get(row.code.casefold())
            if meaning:
                raise SurveyError(CODE_IS_WORD, file=table.source or "-", code=row.code, meaning=meaning.value)
            spaced = self.compiled is None and len(row.code.split()) > 1
            if spaced or (self.separator and self.separator in row.code):
                raise SurveyError(CODE_BROKEN, file=table.source or "-", code=row.code, separator=self.separator or " ")


DEFAULT_CONVENTION = FieldConvention()


def four_words(text: str) -> Dict[str, str]:
    """The arguments begin, end, close and arc of :class:`FieldConvention` from ``BEGIN,END,CLOSE,ARC``.

    Raises :class:`SurveyError` when they are not four.
    """
    words = [word.strip() for word in text.split(",")]
    if len(words) != len(Word):
        raise SurveyError(NOT_FOUR_WORDS, words=text)
    return {meaning.value: word for meaning, word in zip(Word, words)}


@dataclass(frozen=True)
class Reading:
    """One code on a point: its ``row`` of the table (None when unknown), number, words, and the rest."""

    code: str
    row: Optional[CodeRow]
    number: str = ""
    words: FrozenSet[Word] = frozenset()
    strange: Tuple[str, ...] = ()


@dataclass(frozen=True)
class Description:
    """All codes on a point. ``fits`` is False where the columns hold more or fewer values than there are codes.

    Numbers and words of such a point are unknown and left empty.
    """

    readings: Tuple[Reading, ...]
    fits: bool = True


@dataclass(frozen=True)
class Descriptions:
    """The ``distinct`` descriptions of n points, and ``which`` (n,) of them each point has."""

    distinct: Tuple[Description, ...]
    which: np.ndarray

    def mask(self, of_each: Sequence[bool]) -> np.ndarray:
        """Mask (n,) of the points whose description is True in ``of_each``."""
        return np.array(of_each, bool)[self.which] if len(of_each) else np.zeros(0, bool)


def read_descriptions(points: PointSet, table: CodeTable, convention: FieldConvention) -> Descriptions:
    """Read code, line number and words of every point; each distinct description is read once.

    Raises :class:`SurveyError` when a column of the convention is missing or a code can't be told apart.
    """
    convention.check_table(table)
    columns = [points.code, _column(points, convention.line_column), _column(points, convention.word_column)]
    numbers: Dict[Tuple[str, str, str], int] = {}
    rows = zip(*(column.tolist() for column in columns))
    which = np.fromiter((numbers.setdefault(row, len(numbers)) for row in rows), np.int64, len(points))
    return Descriptions(tuple(_read(row, table, convention) for row in numbers), which)


def _column(points: PointSet, name: Optional[str]) -> np.ndarray:
    if not name:
        return np.full(len(points), "", dtype=object)
    if name not in points.extra:
        columns = ", ".join(points.extra) or "-"
        raise SurveyError(NO_COLUMN, file=points.source or "-", column=name, columns=columns)
    return np.asarray(points.extra[name])


def _read(row: Tuple[str, str, str], table: CodeTable, convention: FieldConvention) -> Description:
    description, number_cell, word_cell = ("" if value is None else str(value).strip() for value in row)
    items = [item for item in _split(description, convention) if item]
    numbers = _spread(_split(number_cell, convention), len(items))
    words = _spread(_split(word_cell, convention), len(items))
    if numbers is None or words is None:
        readings = (_read_one(item, "", "", table, convention) for item in items)
        return Description(tuple(replace(each, number="", words=frozenset()) for each in readings), fits=False)
    return Description(tuple(_read_one(*cells, table, convention) for cells in zip(items, numbers, words)))


def _split(text: str, convention: FieldConvention) -> List[str]:
    pieces = text.split(convention.separator) if convention.separator else [text]
    return [piece.strip() for piece in pieces]


def _spread(values: List[str], count: int) -> Optional[List[str]]:
    """One value for each of ``count`` codes, or None when their numbers do not fit."""
    if len(values) == 1:
        return values * count if count or not values[0] else None
    return values if len(values) == count else None


def _read_one(item: str, number: str, word_cell: str, table: CodeTable, convention: FieldConvention) -> Reading:
    if convention.compiled:
        code, inner, rest = _by_pattern(item, convention.compiled)
        words, strange = _take_words(rest.split(), convention)
    else:
        words, strange = _take_words(item.split(), convention)
        code, inner, strange = _by_pieces(strange, table)
    more, more_strange = _take_words(word_cell.split(), convention)
    row = table.find(code)
    return Reading(
        row.code if row else code, row, plain_number(number or inner), words | more, tuple(strange + more_strange)
    )


def _take_words(pieces: Sequence[str], convention: FieldConvention) -> Tuple[FrozenSet[Word], List[str]]:
    """The words of the convention among ``pieces``, and the other pieces in their order."""
    words = frozenset(convention.words[p.casefold()] for p in pieces if p.casefold() in convention.words)
    return words, [p for p in pieces if p.casefold() not in convention.words]


def _by_pattern(item: str, pattern: Pattern[str]) -> Tuple[str, str, str]:
    match = pattern.match(item)
    if not match:
        return item, "", ""
    groups = match.groupdict()
    rest = (groups.get("words") or "") + " " + item[match.end() :]
    return (groups["code"] or "").strip(), (groups.get("line") or "").strip(), rest


def _by_pieces(pieces: List[str], table: CodeTable) -> Tuple[str, str, List[str]]:
    """Code, line number and what is left of a description without its words."""
    if not pieces:
        return "", "", []
    code, rest, number = pieces[0], pieces[1:], ""
    if table.find(code) is None:
        letters = code.rstrip("0123456789")
        if letters:
            code, number = letters, code[len(letters) :]
    if not number and rest and _digits(rest[0]):
        number, rest = rest[0], rest[1:]
    return code, number, rest


def _digits(text: str) -> bool:
    return text.isascii() and text.isdigit()


def plain_number(text: str) -> str:
    """A line number without leading zeros or an idle decimal part; any other text in capitals."""
    whole = re.fullmatch(r"0*([0-9]+)(?:\.0*)?", text.strip())
    return whole.group(1) if whole else text.strip().upper()
