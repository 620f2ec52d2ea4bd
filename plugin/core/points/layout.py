"""The columns of one file, settled: from the user's mapping, or from the header."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Mapping, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..units import LengthUnit
from .columns import ROLES, ColumnMap, Kind, coordinates_of, plain_word, roles_of_header
from .questions import Answer, Question, QuestionError, Topic
from .words import read_word

#: More columns than this and the delimiter is wrong.
MOST_COLUMNS = 1000
#: Share of lines with just the named columns from which these are taken to be all.
_ENOUGH = 0.25

NO_HEADER_WORD = Text(
    "points.no_header_word",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: no column is headed '{word}', which --columns names; the header has {words}."
    ),
)
NO_HEADER = Text(
    "points.no_header",
    QT_TRANSLATE_NOOP(
        "core", "{file}: has no header line, but --columns names the header word '{word}'; use column numbers."
    ),
)
NO_SUCH_COLUMN = Text(
    "points.no_such_column",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: --columns names column {column} ({role}), but no line has more than {count} columns; "
        "check --columns and --delimiter.",
    ),
)
TOO_MANY_COLUMNS = Text(
    "points.too_many_columns",
    QT_TRANSLATE_NOOP("core", "{file}: has over {most} columns with delimiter {delimiter}; check --delimiter."),
)
MORE_THAN_HEADER = Text(
    "points.more_than_header",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: the header has {header} columns but most lines have {count}; is the comma "
        "a decimal comma? Give --delimiter and --decimal, or mend the header.",
    ),
)
ONE_MORE = Text(
    "points.one_more_than_header",
    QT_TRANSLATE_NOOP("core", "line {line} heads {header} columns, but most lines have {count}"),
)
FIRST_HAS_NONE = Text("points.first_has_none", QT_TRANSLATE_NOOP("core", "the first column has no word"))
LAST_HAS_NONE = Text("points.last_has_none", QT_TRANSLATE_NOOP("core", "the last column has no word"))
HEADER_SAYS_OTHER = Text(
    "points.header_says_other",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: column {column} is headed '{word}' but is read as {role}, as --columns says."
    ),
)
HEADER_UNIT = Text(
    "points.header_unit",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: column {column} is headed '{word}' but is read in {unit}; check the unit."
    ),
)


@dataclass(frozen=True)
class Header:
    """The header line: its number (of a comment line, where ``comment``) and its words."""

    line: int
    words: Tuple[str, ...]
    comment: bool = False


@dataclass(frozen=True)
class Shape:
    """What the first lines look like.

    ``width``: how many fields most have; ``filled``: the same without empty fields at their ends;
    ``counts``: fields of each line; ``spaced``: fields are parted by runs of spaces; ``first``: the
    first line, to show; ``prose``: the text in the last column has the delimiter in it.
    """

    width: int
    filled: int
    counts: Tuple[int, ...]
    spaced: bool
    first: str
    prose: bool = False


@dataclass(frozen=True)
class Layout:
    """Where each thing stands in a line, counted from 0.

    ``roles``: role to position. ``extra``: name to position of the columns kept as they are.
    ``width``: how many columns a whole line has. ``named``: whether each of them was named by the
    header or the mapping.
    """

    roles: Dict[str, int]
    extra: Dict[str, int]
    width: int
    named: bool

    @property
    def coordinates(self) -> Tuple[str, str, str]:
        """The roles of the three coordinates: along east, along north, up."""
        return coordinates_of(self.roles)

    @property
    def last_is_text(self) -> bool:
        """Whether the last column takes free text, so that delimiters inside it can be meant."""
        last = self.width - 1
        return last in self.extra.values() or any(
            place == last and ROLES[role] is Kind.TEXT for role, place in self.roles.items()
        )


def lay_out(
    file: str,
    columns: Optional[ColumnMap],
    header: Optional[Header],
    shape: Shape,
    recognised: Optional[Dict[str, int]] = None,
) -> Layout:
    """Settle the columns of a file from the mapping, or as ``recognised`` (role to position from 0) without one.

    Raises SurveyError when the lines have more columns than the header, or the header lacks a word of the mapping.
    """
    if columns is None:
        assert recognised is not None, "without a mapping the columns have to be recognised first"
        roles = dict(recognised)
    else:
        roles = roles_of_map(file, columns, header)
    ordered = columns.ordered if columns is not None and columns.ordered is not None else ()
    named = max(len(header.words) if header else 0, len(ordered))
    width = max(named, max(roles.values()) + 1)
    # What stands behind the named columns is more columns, unless many lines end with the named ones or
    # the last of them is free text in a file parted by spaces, or has the delimiter in it: then each line is judged
    # by itself.
    open_end = (shape.spaced and width - 1 in (roles.get("code"), roles.get("name"))) or shape.prose
    if not open_end and shape.counts.count(named) < _ENOUGH * len(shape.counts):
        if header is not None and shape.filled > len(header.words):
            raise _more_than_header(file, header, shape)
        width = max(width, shape.width)
    taken = set(roles.values()) | {i for i, word in enumerate(ordered) if not word}
    names = _names_of_rest(header, ordered, width)
    return Layout(roles, {names[i]: i for i in range(width) if i not in taken}, width, named >= width)


def _more_than_header(file: str, header: Header, shape: Shape) -> SurveyError:
    """The refusal of lines with more columns than the header; of one more, whether that is the first or the last."""
    where = {"line": header.line, "header": len(header.words), "count": shape.filled}
    found = roles_of_header(header.words)
    roles = [next((role for role, places in found.items() if i in places), "-") for i in range(len(header.words))]
    if shape.filled != len(header.words) + 1 or not set(coordinates_of(found)) <= set(roles):
        return SurveyError(MORE_THAN_HEADER, file=file, **where)
    first = "-" if "name" in roles else "name"
    answers = (
        Answer("--columns", ",".join([first, *roles]), message(FIRST_HAS_NONE)),
        Answer("--columns", ",".join([*roles, "-"]), message(LAST_HAS_NONE)),
    )
    return QuestionError(file, [Question(Topic.COLUMNS, message(ONE_MORE, **where), answers)])


def roles_of_map(file: str, columns: ColumnMap, header: Optional[Header]) -> Dict[str, int]:
    """Role to place (from 0) as the user's mapping has them. Raises SurveyError for a column that is not there."""
    if columns.ordered is not None:
        return {word: i for i, word in enumerate(columns.ordered) if word in ROLES}
    return _from_chosen(file, columns, header)


def _from_chosen(file: str, columns: ColumnMap, header: Optional[Header]) -> Dict[str, int]:
    roles = {}
    for role, column in columns.chosen:
        if isinstance(column, int):
            if header is not None and column > len(header.words):
                raise SurveyError(NO_SUCH_COLUMN, file=file, column=column, role=role, count=len(header.words))
            roles[role] = column - 1
            continue
        if header is None:
            raise SurveyError(NO_HEADER, file=file, word=column)
        places = places_of(column, header.words)
        if not places:
            raise SurveyError(
                NO_HEADER_WORD, file=file, line=header.line, word=column, words=", ".join(header.words)[:200]
            )
        roles[role] = places[0]
    return roles


def places_of(word: str, words: Sequence[str]) -> List[int]:
    """Positions in the header ``words`` of the ``word`` of a mapping: as written, else in any case, without unit."""
    return [i for i, other in enumerate(words) if other.strip() == word] or [
        i for i, other in enumerate(words) if plain_word(other) == plain_word(word)
    ]


def _names_of_rest(header: Optional[Header], ordered: Sequence[str], width: int) -> List[str]:
    """A name of its own for each column: from the mapping, the header, or its number."""
    names: List[str] = []
    for i in range(width):
        word = header.words[i].strip() if header and i < len(header.words) else ""
        if i < len(ordered) and ordered[i].startswith("+"):
            word = ordered[i][1:]
        names.append(new_name(word or f"column_{i + 1}", names))
    return names


def new_name(name: str, taken: Sequence[str]) -> str:
    """``name``, or with the first number behind it that makes it differ from those ``taken``."""
    number, free = 2, name
    while free in taken:
        free, number = f"{name}_{number}", number + 1
    return free


def doubts(
    file: str, layout: Layout, header: Optional[Header], units: Mapping[str, LengthUnit], mapped: bool
) -> List[Message]:
    """Where the header says other than what is done. ``units``: the unit each coordinate is read in; ``mapped``:
    whether the user named the columns.
    """
    if header is None:
        return []
    notes = []
    meant = {place: role for role, places in roles_of_header(header.words).items() for place in places}
    for role, place in layout.roles.items():
        if place >= len(header.words):
            continue
        where = {"file": file, "line": header.line, "column": place + 1, "word": header.words[place].strip()}
        if mapped and meant.get(place, role) != role:
            notes.append(message(HEADER_SAYS_OTHER, role=role, **where))
        unit = read_word(header.words[place]).unit
        if role in units and unit is not None and unit is not units[role]:
            notes.append(message(HEADER_UNIT, unit=units[role].value, **where))
    return notes
