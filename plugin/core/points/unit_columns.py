"""Units that a file says beside its numbers: right behind each of them, or in a column of their own."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Optional, Sequence, Set

from ..units import LengthUnit
from .features import Column, Rows
from .number_marks import is_no_value
from .said_units import Said, said_by
from .vocabulary import each
from .words import Word, fold, read_word, roles_by_words

_UNIT_WORDS = frozenset(
    each("""unit units uom einheit einheiten unite unites unidad unidades unita unidade eenheid enhet enhed jednotka
    jednotki yksikko""")
)
_LENGTHS = ("easting", "northing", "height", "ellipsoidal_height")


def with_units_of_values(words: List[Word], head: Sequence[str], columns: Sequence[Column], rows: Rows) -> List[Word]:
    """What the header ``head`` says (nothing for a file without one), its ``words`` read, with the units beside values.

    A column of units alone says that of the columns its header word names, of all lengths where it names none, and
    without a header of the column before it.
    """
    found = [*words, *([Word()] * (len(columns) - len(words)))]
    for column in columns:
        behind = said_by(fold(column.suffix).split())
        if column.is_number and behind.unit is not None:
            found[column.place] = _with(found[column.place], behind)
    for column in columns:
        said = _said(column, rows)
        if said is not None:
            for place in _meant(column, columns, words, head):
                found[place] = _with(found[place], said)
    return found if any(word != Word() for word in found) else words


def _said(column: Column, rows: Rows) -> Optional[Said]:
    """What a column of units says, None for any other."""
    if not column.is_text or column.filled < 0.5:
        return None
    fields = {row[column.place].strip() for row in rows.fields if column.place < len(row)}
    fields = {field for field in fields if field and not is_no_value(field)}
    each_said = [said_by(fold(field).split(), True) for field in fields]
    if not fields or any(said.unit is None for said in each_said):
        return None
    units: Set[Optional[LengthUnit]] = {said.unit for said in each_said}
    return each_said[0] if len(units) == 1 else Said(strange=", ".join(sorted(fields)))


def _meant(column: Column, columns: Sequence[Column], words: Sequence[Word], head: Sequence[str]) -> List[int]:
    """The places whose unit a column says."""
    named, pair = roles_by_words(list(words))
    lengths = {role: places for role, places in named.items() if role in _LENGTHS}
    tokens = fold(head[column.place]).split() if column.place < len(head) else []
    if _UNIT_WORDS & set(tokens):
        own = read_word(" ".join(token for token in tokens if token not in _UNIT_WORDS))
        role = own.role or {"h": "height", "z": "height", "e": "easting", "n": "northing"}.get(own.doubtful, "")
        if role or own.doubtful:
            return lengths.get(role, [])
        return [place for places in lengths.values() for place in places] + list(pair)
    before = column.place - 1
    return [before] if before >= 0 and columns[before].is_number else []


def _with(word: Word, said: Said) -> Word:
    """A header word with a unit of the values; one that says another is of a unit that cannot be read."""
    if word.unit not in (None, said.unit) and not word.vague:
        return replace(
            word, unit=None, strange=f"{word.unit.symbol}, {said.unit.symbol if said.unit else said.strange}"
        )  # type: ignore[union-attr]
    return replace(word, unit=said.unit, vague=said.vague, strange=said.strange)
