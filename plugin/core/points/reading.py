"""What recognition works on: a look at a file, what was found in it, and the readings of its columns."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, List, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import WORKING_UNITS, LengthUnit, axis_unit
from .features import Column, Rows
from .landing import Landing
from .layout import Header
from .source import TextSource
from .words import Word

BY_WORD = Text("recognise.by_word", QT_TRANSLATE_NOOP("core", "column {column} is {role}: its header word is '{word}'"))
#: Share of steps near the usual one that makes it a rule.
EVEN = 0.6
PLAN, DEGREES = ("easting", "northing"), ("longitude", "latitude")


@dataclass(frozen=True)
class Look:
    """What recognition looks at: the file's form, its header, and a few hundred lines."""

    source: TextSource
    delimiter: str
    decimal: str
    comment: str
    header: Optional[Header]
    rows: Rows
    width: int
    crs: Optional[Any]
    unit: Optional[LengthUnit]
    height_unit: Optional[LengthUnit]


@dataclass(frozen=True)
class Pair:
    """A reading of two columns as plan position. ``near``: lands in the area of use with one of ``units``; ``far``:
    lands at least not far from it with one of the units.
    """

    first: Column
    second: Column
    degrees: bool
    units: Tuple[LengthUnit, ...] = ()
    near: bool = False
    far: bool = False
    score: float = 0.0
    reasons: Tuple[Message, ...] = ()

    @property
    def roles(self) -> Tuple[str, str]:
        return DEGREES if self.degrees else PLAN

    @property
    def places(self) -> Dict[str, int]:
        return dict(zip(self.roles, (self.first.place, self.second.place)))


@dataclass(frozen=True)
class Case:
    """A look and what was found in it. ``words``: meaning of each header word; ``named``: role to the columns whose
    word says so; ``xy``: the columns X and Y where only these name the plan; ``landing``: the area of use.
    """

    look: Look
    columns: List[Column]
    words: List[Word]
    named: Dict[str, List[int]]
    xy: Tuple[int, ...]
    landing: Landing

    def column(self, role: str) -> Optional[Column]:
        """The first column that the header names so."""
        places = self.named.get(role, [])
        return self.columns[places[0]] if places and places[0] < len(self.columns) else None

    @property
    def units(self) -> Tuple[LengthUnit, ...]:
        """Units the coordinates may be in: the user's, the header's, else that of the CRS first."""
        look = self.look
        if look.unit is not None:
            return (look.unit,)
        own = None if look.crs is None else axis_unit(look.crs.axis_info[0])
        said = said_unit(self.words, self.named, self.xy)
        if said is LengthUnit.FOOT:
            feet = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
            return (own,) if own in feet else feet
        if said is not None:
            return (said,)
        every = (own or LengthUnit.METRE, *WORKING_UNITS)
        return tuple(dict.fromkeys(every))


def is_value(column: Column) -> bool:
    """Whether a column holds numbers or angles."""
    return column.is_number or column.is_angle


def by_word(case: Case, role: str, place: int) -> Message:
    """The reason that a header word is."""
    word = case.look.header.words[place].strip() if case.look.header else ""
    return message(BY_WORD, column=place + 1, role=role, word=word)


def word_of(case: Case, place: int) -> str:
    """The header word of a column, "" for none."""
    header = case.look.header
    return header.words[place].strip() if header and place < len(header.words) else ""


def said_unit(words: Sequence[Word], named: Dict[str, List[int]], xy: Tuple[int, ...]) -> Optional[LengthUnit]:
    """The unit that the header words of easting and northing state, None where they state none or two."""
    places = [place for role in PLAN for place in named.get(role, [])] + list(xy)
    said = {words[place].unit for place in places} - {None}
    return said.pop() if len(said) == 1 else None
