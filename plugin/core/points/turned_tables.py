"""Tables that stand on their side: a key and a value a line, a blank line between points; a line for each column; or
several points in each line."""

from __future__ import annotations

import re
from typing import Dict, List, Optional, Sequence

from .columns import coordinates_of, roles_of_header
from .lines_of_text import split_line
from .markup_tables import MarkupTable
from .number_marks import is_number
from .source import TextSource

_KEY = re.compile(r"\s*([^\W\d_][\w .()\[\]/°-]{0,40}?)\s*[:=\t]\s*(\S.*?)\s*$")
_LOOKED_AT, _MOST = 60, 0.9
_MOST_COLUMNS = 40
#: A header stands among so many lines.
_ABOVE = 20


def turned(source: TextSource) -> Optional[MarkupTable]:
    """The table as one that stands upright, None for any other file."""
    first = [text for _, (_, text) in zip(range(_LOOKED_AT), source.each_line())]
    if sum(_KEY.match(text) is not None for text in first if text.strip()) >= _MOST * sum(
        bool(text.strip()) for text in first
    ):
        found = _of_keys(source)
        if found is not None:
            return found
    if source.lines <= _MOST_COLUMNS:
        return _of_columns(source) or _of_blocks(source)
    return _of_blocks(source)


def _of_keys(source: TextSource) -> Optional[MarkupTable]:
    """Points of a key and a value a line; one ends with a blank line, or where its first key comes again."""
    rows: List[Dict[str, str]] = [{}]
    for _, text in source.each_line():
        match = _KEY.match(text)
        if not text.strip() or (match is not None and match[1] in rows[-1]):
            rows += [{}] if rows[-1] else []
        if match is not None:
            rows[-1][match[1]] = match[2]
    keys = list(dict.fromkeys(key for row in rows for key in row))
    rows = [row for row in rows if row]
    if len(rows) < 3 or len(keys) > _MOST_COLUMNS or not _names_all(keys):
        return None
    return _upright([keys, *([row.get(key, "") for key in keys] for row in rows)])


def _of_columns(source: TextSource) -> Optional[MarkupTable]:
    """Lines that each begin with the word of a column, all with as many values behind."""
    for sign in ("\t", ";", ",", "|"):
        rows = [split_line(text, sign) or [""] for _, text in source.each_line() if text.strip()]
        words = [row[0] for row in rows]
        width = len(rows[0]) if rows else 0
        even = width > 3 and all(len(row) == width for row in rows) and not any(map(is_number, words))
        if even and _names_all(words) and sum(map(is_number, rows[-1][1:])) > 0.5 * (width - 1):
            return _upright([list(one) for one in zip(*rows)])
    return None


def _of_blocks(source: TextSource) -> Optional[MarkupTable]:
    """Points side by side: a header that repeats, and below each of its parts a point."""
    texts = [text for _, (_, text) in zip(range(_ABOVE), source.each_line())]
    for sign in ("\t", ";", ",", "|"):
        for at, text in enumerate(texts):
            words = split_line(text, sign) or [""]
            size = _part(words)
            if size and _names_all(words[:size]):
                lines = [one for _, one in source.each_line() if one.strip()][at + 1 :]
                rows = [split_line(one, sign) or [one] for one in lines]
                blocks = [row[i : i + size] for i in range(0, len(words), size) for row in rows]
                return _upright([words[:size], *(block for block in blocks if any(block))])
    return None


def _part(words: List[str]) -> int:
    """How many words a line repeats, 0 for none."""
    for size in range(3, min(_MOST_COLUMNS, len(words) // 2) + 1):
        if words[0] and words[0] == words[size] and words == words[:size] * (len(words) // size):
            return size
    return 0


def _names_all(words: Sequence[str]) -> bool:
    roles = roles_of_header(words)
    return all(role in roles for role in coordinates_of(roles))


def _upright(rows: Sequence[Sequence[str]]) -> MarkupTable:
    return MarkupTable("–", "".join("\t".join(cell.replace("\t", " ") for cell in row) + "\n" for row in rows), True)
