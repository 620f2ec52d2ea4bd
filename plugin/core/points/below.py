"""The lines of words below the points of a file, and those between them."""

from __future__ import annotations

import re
from typing import List, NamedTuple, Sequence

from .delimiters import DELIMITERS
from .lines_of_text import counts_columns, split_line
from .number_marks import is_number
from .source import TextSource

SIGNS = (*DELIMITERS, "|")
#: So many lines at the end are looked at, and how long one is at most.
_BELOW, _LONGEST = 60, 4000
_WORD = re.compile(r"[^\W\d_]{2,}")


class Line(NamedTuple):
    """A line of a file: its number from 1, and its text."""

    number: int
    text: str


def has_numbers(text: str) -> bool:
    """Whether a line holds numbers as points do."""
    for sign in SIGNS:
        fields = (split_line(text, sign) or [])[:50]
        numbers = sum(map(is_number, fields))
        if numbers >= 3 or (numbers == 2 and len(fields) < 5 and not _counts(fields)):
            return not counts_columns(fields)
    return False


def _counts(fields: Sequence[str]) -> bool:
    """Whether a line says small whole numbers in words, as Page 1 of 3 does."""
    bare = [field.strip(" \t,;") for field in fields]
    return any(map(_WORD.match, bare)) and all(len(one) < 4 and one.isdigit() for one in bare if is_number(one))


def lines_below(source: TextSource, mark: str = "#") -> List[Line]:
    """The lines behind the last one with numbers that is no comment, but blank ones; none where no line has numbers.

    ``mark``: what begins comments.
    """
    found: List[Line] = []
    number, end = source.lines, len(source.data) - 1
    while end > 0 and len(found) <= _BELOW:
        begin = source.data.rfind(b"\n", 0, end) + 1
        text = source.data[begin:end][:_LONGEST].decode(errors="ignore")
        comment = bool(mark) and text.lstrip().startswith(mark)
        if not comment and has_numbers(text):
            return found[::-1]
        if text.strip():
            found.append(Line(number, text))
        number, end = number - 1, begin - 1
    return []
