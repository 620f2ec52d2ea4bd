"""What recognition works on: a look at a file, what was found in it, and the readings of its columns."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Dict, List, Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import WORKING_UNITS, LengthUnit, axis_unit
from .features import Column, Rows
from .given import Given
from .landing import Landing
from .layout import Header
from .number_marks import Marks
from .said_above import Above
from .source import TextSource
from .words import Word

BY_WORD = Text("recognise.by_word", QT_TRANSLATE_NOOP("core", "column {column} is {role}: its header word is '{word}'"))
#: Share of steps near the usual one that makes it a rule.
EVEN = 0.6
#: Metres from point to point of a rover that stores one every half metre.
WALK = (0.47, 0.58)
PLAN, DEGREES = ("easting", "northing"), ("longitude", "latitude")


@dataclass(frozen=True)
class Look:
    """What recognition looks at: the file's form, its header, and a few hundred lines. ``mapped``: role to place of
    the columns where the user named them. ``above``: what lines above the data say. ``other``: marks that single
    numbers or columns may have beside ``marks``, None for none.
    """

    source: TextSource
    delimiter: str
    marks: Marks
    comment: str
    header: Optional[Header]
    rows: Rows
    width: int
    crs: Optional[Any]
    given: Given
    mapped: Optional[Dict[str, int]] = None
    above: Above = field(default_factory=Above)
    other: Optional[Marks] = None


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
        """Units the coordinates may be in: the user's, the header's, that of the CRS first where it is not said."""
        look = self.look
        own, said, given = self.own_unit, self.said_units, look.given.unit
        if given is not None and (not said or given in said or look.given.units_from == "options"):
            return (given,)
        if look.given.units_from == "options":
            return (own or LengthUnit.METRE,)
        if said and (look.given.units_from == "header" or own is None):
            return said
        every = (own or LengthUnit.METRE, *said, *(() if said else WORKING_UNITS))
        return tuple(dict.fromkeys(every))

    @property
    def own_unit(self) -> Optional[LengthUnit]:
        """The unit of the CRS, None where there is no CRS or it is none of ours."""
        return None if self.look.crs is None else axis_unit(self.look.crs.axis_info[0])

    @property
    def said_units(self) -> Tuple[LengthUnit, ...]:
        """Units that the header words of easting and northing may mean; a foot is that of the CRS, or either."""
        places = [place for role in PLAN for place in self.named.get(role, [])[:1]] + list(self.xy)
        found = []
        words = [self.words[place] if place < len(self.words) else Word() for place in places]
        if not any(word.unit is not None for word in words):
            words = [self.look.above.plan]
        for word in words:
            feet = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
            meant = (() if word.unit is None else (word.unit,)) if not word.vague else (
                (self.own_unit,) if self.own_unit in feet else feet
            )  # fmt: skip
            found += [unit for unit in meant if unit is not None]
        return tuple(dict.fromkeys(found))


def is_value(column: Column) -> bool:
    """Whether a column holds numbers or angles."""
    return column.is_number or column.is_angle


def by_word(case: Case, role: str, place: int) -> Message:
    """The reason that a header word is."""
    return message(BY_WORD, column=place + 1, role=role, word=word_of(case, place))


def word_of(case: Case, place: int) -> str:
    """The header word of a column, "" for none."""
    header = case.look.header
    return header.words[place].strip() if header and place < len(header.words) else ""
