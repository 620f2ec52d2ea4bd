"""Rows of units: below the header of a table, above it, and below its points."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Optional, Sequence, Tuple

from ..units import LengthUnit
from .below import lines_below
from .columns import roles_of_header
from .layout import Header
from .lines_of_text import Sample, is_value, split_line
from .said_units import said_by
from .source import TextSource
from .words import fold


def with_units_below(header: Header, sample: Sample) -> Header:
    """The header with the units that the line below it says of the columns, in brackets."""
    below = next((line for line in sample.lines if line.line > header.line), None)
    if below is None or header.comment or sum(is_value(field) and field != "-" for field in below.fields):
        return header
    said = [said_by(fold(field.strip("()[]{}")).split(), bracketed=True) for field in below.fields]
    known = sum(not one.nothing for one in said)
    if known < 2 or any(one.nothing and field.strip("-[]() ") for one, field in zip(said[1:], below.fields[1:])):
        return header
    words = list(header.words)
    for i, one in enumerate(said[: len(words)]):
        if not one.nothing:
            words[i] = f"{words[i]} ({below.fields[i].strip('()[]{}')})"
    return Header(header.line, tuple(words), header.comment)


def with_rows_of_units(source: TextSource, header: Header, sample: Sample, mark: str, delimiter: str) -> TextSource:
    """The file with what rows of units above its header or below its points say of the columns, in words."""
    above = [*(line.text for line in sample.lines if line.line < header.line), *source.said]
    below = [*source.below, *(line.text for line in lines_below(source, mark))]
    said, said_below = (
        tuple(word for text in texts for word in _row_of_units(text, header, mark, delimiter))
        for texts in (above, below)
    )
    return replace(source, said=(*source.said, *said), below=(*source.below, *said_below))


def _row_of_units(text: str, header: Header, mark: str, delimiter: str) -> List[str]:
    """What a line of units says of the columns, such as "height ft"; nothing for other lines."""
    bare = text.strip(" \t")
    fields = split_line(bare[len(mark) :] if mark and bare.startswith(mark) else text, delimiter) or []
    said = units_in_row(fields)
    if not said or len(fields) > len(header.words):
        return []
    places = roles_of_header(header.words)
    found: List[str] = []
    for roles, what in ((("height", "ellipsoidal_height"), "height"), (("easting", "northing"), "plan")):
        units = [fields[i] for role in roles for i in places.get(role, []) if i < len(said) and said[i] is not None]
        found += [f"{what} {unit.strip('()[]{}')}" for unit in units[:1]]
    return found


def units_in_row(fields: Optional[Sequence[str]]) -> Tuple[Optional[LengthUnit], ...]:
    """The units of a row of at least two and, but for its first field, nothing else; () for other rows."""
    said = tuple(said_by(fold(field.strip("()[]{}")).split(), bracketed=True).unit for field in (fields or ())[:200])
    others = [field for one, field in zip(said[1:], (fields or ())[1:]) if one is None and field.strip("-[]() ")]
    return () if others or sum(one is not None for one in said) < 2 else said
