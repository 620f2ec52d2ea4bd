"""Lines that name each of their values, such as ``PT=1 E=548240.762 N=5712395.593``, as a table with a header."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import replace
from typing import Dict, List, NamedTuple, Optional, Sequence, Tuple

from .source import TextSource

_KEY = re.compile(r"\s*([^\W\d_][\w .()°/\[\]-]{0,40}?)\s*([=:])\s*")
_KEY_BETWEEN_BLANKS = re.compile(r"(?:^|(?<=\s))([^\W\d_][\w.()-]{0,40})\s*([=:])\s*")
#: A letter right before a number.
_LETTER = re.compile(r"([A-Za-z])([+-]?[0-9]+[.,][0-9]+)")
_LOOKED_AT = 40
_FEWEST_KEYS = 3
_MOST_LINES = 0.8
#: The word for what stands before the first key.
_BEFORE = "before"


class _Way(NamedTuple):
    """How lines come apart: the delimiter, a space for blanks; the sign behind a key."""

    delimiter: str
    equal: str


class Keyed(NamedTuple):
    """A file as a table: its lines with tabs between the values, and the keys in order."""

    source: TextSource
    keys: Tuple[str, ...]


def without_keys(source: TextSource, comment: str) -> Optional[Keyed]:
    """The file as a table, None where most lines do not name their values.

    A line that names none stays as it is; a value that a line lacks is empty.
    """
    some = source.first_lines(comment, _LOOKED_AT)
    way = next((way for way in _ways() if _is_keyed(some, way)), None)
    if way is None:
        return None
    rows: List[Optional[Dict[str, str]]] = []
    keys: Dict[str, None] = {}
    lines = [text for _, text in source.each_line()]
    for text in lines:
        row = None if comment and text.lstrip().startswith(comment) else _taken_apart(text, way)
        row = row if row is not None and len(row) >= _FEWEST_KEYS else None
        rows.append(row)
        keys.update(dict.fromkeys(row or ()))
    made = [
        text if row is None else "\t".join(row.get(key, "").replace("\t", " ") for key in keys)
        for text, row in zip(lines, rows)
    ]
    data = "".join(text + "\n" for text in made).encode()
    return Keyed(replace(source, data=data, stood=source.stood or source.data), tuple(keys))


def _ways() -> List[_Way]:
    return [_Way(delimiter, equal) for equal in ("=", ":", "") for delimiter in (";", "|", "\t", ",", " ")]


def _is_keyed(lines: Sequence[str], way: _Way) -> bool:
    rows = [_taken_apart(text, way) for text in lines]
    sets = Counter(frozenset(row) for row in rows if row is not None and len(row) >= _FEWEST_KEYS)
    if not sets:
        return False
    usual = sets.most_common(1)[0][0]
    return sum(count for keys, count in sets.items() if len(keys & usual) >= _FEWEST_KEYS) >= _MOST_LINES * len(lines)


def _taken_apart(text: str, way: _Way) -> Optional[Dict[str, str]]:
    """Key to value of a line, None where none stands in it, or one twice."""
    text = text.strip()
    found: Dict[str, str] = {}
    if not way.equal:
        fields = text.split() if way.delimiter == " " else [field.strip() for field in text.split(way.delimiter)]
        glued = [_LETTER.fullmatch(field) for field in fields]
        pairs = [(mark[1], mark[2]) for mark in glued if mark is not None]
        if len(pairs) != len(fields):
            return None
    elif way.delimiter == " ":
        marks = [mark for mark in _KEY_BETWEEN_BLANKS.finditer(text) if mark[2] == way.equal]
        if not marks:
            return None
        before = text[: marks[0].start()].strip()
        if before:
            found[_BEFORE] = before
        ends = [*(mark.start() for mark in marks[1:]), len(text)]
        pairs = [(mark[1], text[mark.end() : end].strip(" ,;")) for mark, end in zip(marks, ends)]
    else:
        pairs = []
        for field in text.split(way.delimiter):
            mark = _KEY.match(field)
            if mark is not None and mark[2] == way.equal:
                pairs.append((mark[1], field[mark.end() :].strip()))
            elif not pairs:
                return None
            elif field.strip():
                pairs[-1] = (pairs[-1][0], f"{pairs[-1][1]}{way.delimiter}{field}".rstrip())
    for key, value in pairs:
        if key in found:
            return None
        found[key] = value.strip('"')
    return found
