"""Numbers that the sign between columns divides: a comma for decimals too, or several numbers in one column."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Callable, List, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .columns import coordinates_of, roles_of_header
from .number_marks import is_number
from .source import TextSource

_LOOKED_AT, _MOST = 60, 0.95
_WHOLE, _DIGITS = re.compile(r"[+-]?[0-9]+"), re.compile(r"[0-9]{2,}")
#: Two or three numbers with a comma, blank or slash between.
_SEVERAL = re.compile(
    r"\s*([+-]?[0-9]+\.[0-9]+)\s*[,/ ]\s*([+-]?[0-9]+\.[0-9]+)(?:\s*[,/ ]\s*([+-]?[0-9]+\.[0-9]+))?\s*"
)
_SIGNS = (";", "\t", "|")


COMMAS_FOR_ALL = Text(
    "points.commas_for_all",
    QT_TRANSLATE_NOOP("core", "{file}: commas part its columns and stand before decimals too; numbers are read so."),
)


def made_whole(source: TextSource, comment: str) -> Tuple[TextSource, Tuple[Message, ...]]:
    """The file with a point in place of decimal commas where commas part the columns too, and a column for each number
    where one column holds several, as it is where most lines have no such; and what to tell.
    """
    some = source.first_lines(comment, _LOOKED_AT)
    words, rows = _header_and_rows(some)
    commas = _decimal_commas(words, rows)
    change = commas or _several_in_one(some)
    if change is None:
        return source, ()
    made = "".join(change(text) + "\n" for _, text in source.each_line()).encode()
    notes = () if commas is None else (message(COMMAS_FOR_ALL, file=source.file),)
    return replace(source, data=made, stood=source.stood or source.data), notes


def _header_and_rows(lines: Sequence[str]) -> Tuple[List[str], List[List[str]]]:
    rows = [[field.strip() for field in text.split(",")] for text in lines]
    head = bool(rows) and not any(map(_WHOLE.fullmatch, rows[0]))
    return (rows[0] if head else []), (rows[1:] if head else rows)


def _decimal_commas(words: Sequence[str], rows: Sequence[Sequence[str]]) -> Optional[Callable[[str], str]]:
    """What joins the halves of coordinates that a comma divides: whole numbers, and behind each as many digits in all
    lines. With a header all but the coordinates are one field each; without one they are the six fields behind a name,
    some of the digits with zeros before.
    """
    if len(rows) < 3 or any('"' in field for field in rows[0]):
        return None
    if words:
        roles = roles_of_header(words)
        places = sorted(roles[role][0] for role in coordinates_of(roles) if role in roles)
        width = len(words) + 3
    else:
        width = len(rows[0])
        places = [0, 1, 2] if width == 6 else [1, 2, 3] if width in (7, 8) else []
    if len(places) != 3:
        return None
    starts = [place + i for i, place in enumerate(places)]
    good = [row for row in rows if len(row) == width and _are_halves(row, starts)]
    if len(good) < _MOST * len(rows) or any(len({len(row[at + 1]) for row in good}) > 1 for at in starts):
        return None
    if not words and not any(row[at + 1].startswith("0") for row in good for at in starts):
        return None

    def join(text: str) -> str:
        fields = text.split(",")
        if len(fields) != width or not _are_halves([field.strip() for field in fields], starts):
            return text
        for at in reversed(starts):
            fields[at : at + 2] = [f"{fields[at].rstrip()}.{fields[at + 1].lstrip()}"]
        return ",".join(fields)

    return join


def _are_halves(row: Sequence[str], starts: Sequence[int]) -> bool:
    return all(_WHOLE.fullmatch(row[at]) and _DIGITS.fullmatch(row[at + 1]) for at in starts)


def _several_in_one(lines: Sequence[str]) -> Optional[Callable[[str], str]]:
    """What parts a column of two or three numbers in two or three, where fewer than three others hold numbers."""
    for sign in _SIGNS:
        rows = [text.split(sign) for text in lines]
        found = [
            {i for i, field in enumerate(row) if _SEVERAL.fullmatch(field) and not _parted_already(row)}
            for row in rows
            if sum(is_number(field.strip()) for field in row) < 3
        ]
        places = set.intersection(*filter(None, found)) if any(found) else set()
        if len(places) == 1 and len(rows) > 3 and sum(bool(one) for one in found) >= _MOST * (len(rows) - 1):
            place = places.pop()
            sample = next(match for row in rows[1:] for match in [_SEVERAL.fullmatch(row[place])] if match)
            return _parter(sign, place, 3 if sample[3] else 2)
    return None


def _parted_already(row: Sequence[str]) -> bool:
    """Whether a line is one column with nothing but commas or nothing but blanks between its numbers: they part it."""
    return len(row) == 1 and "/" not in row[0] and ("," not in row[0] or " " not in row[0].replace(", ", ","))


def _parter(sign: str, place: int, count: int) -> Callable[[str], str]:
    def part(text: str) -> str:
        fields = text.split(sign)
        match = _SEVERAL.fullmatch(fields[place]) if place < len(fields) else None
        if match is not None and bool(match[3]) == (count == 3):
            numbers = [match[i + 1] for i in range(count)]
        elif place < len(fields):
            words = [word for word in re.split(r"[,/ ]+", fields[place].strip()) if word]
            numbers = words if len(words) == count else [f"{fields[place].strip()} {i + 1}" for i in range(count)]
        else:
            return text
        return sign.join([*fields[:place], *numbers, *fields[place + 1 :]])

    return part
