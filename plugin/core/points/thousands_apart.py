"""Numbers whose groups of three digits blanks part, in files whose columns blanks part too: groups are joined."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import List, Optional, Sequence

from .source import TextSource

_LOOKED_AT, _FEWEST, _MOST = 60, 4, 0.95
_DECIMAL = re.compile(r"[+-]?[0-9]{3}[.,][0-9]+")
_GROUP, _FIRST = re.compile(r"[0-9]{3}"), re.compile(r"[+-]?[0-9]{1,3}")
#: Of the first of several parts of the first number: more different ones are names.
_NAMES = 0.3
_COORDINATES = 3


def with_whole_groups(source: TextSource, comment: str) -> TextSource:
    """The file with 548241.171 for 548 241.171, where blanks alone part its columns and in most lines nothing but
    groups of three digits stands between the decimals of the first coordinate and those of the second.
    """
    some = source.first_lines(comment, _LOOKED_AT)
    rows = [row for row in map(_parts, some) if row]
    if len(rows) < _FEWEST or len(rows) < _MOST * (len(some) - 1):
        return source
    size = _size_of_first(rows)
    if size is None:
        return source
    made = [_joined(text, size) for text in source.data.decode().split("\n")]
    return replace(source, data="\n".join(made).encode(), stood=source.stood or source.data)


def _parts(text: str) -> Optional[List[List[str]]]:
    """The words of a line up to each of its first decimals, None where they are not parted by blanks or the second
    number has no groups.
    """
    if any(sign in text for sign in ";\t|") or ", " in text:
        return None
    found: List[List[str]] = [[]]
    for word in text.split():
        found[-1].append(word)
        if _DECIMAL.fullmatch(word) or (len(found) > 1 and re.fullmatch(r"[+-]?[0-9]+[.,][0-9]+", word)):
            if len(found) == _COORDINATES:
                break
            found.append([])
    if len(found) < 2 or not found[1] or _group_at_end(found[1]) != len(found[1]) or len(found[1]) < 2:
        return None
    return found


def _group_at_end(words: Sequence[str]) -> int:
    """How many of the last words may be one number in groups of three."""
    if not words or not _DECIMAL.fullmatch(words[-1]):
        return 1
    size = 1
    while size < len(words) and _GROUP.fullmatch(words[-1 - size]):
        size += 1
    return size + (size < len(words) and _FIRST.fullmatch(words[-1 - size]) is not None)


def _size_of_first(rows: Sequence[List[List[str]]]) -> Optional[int]:
    """Of how many words the first number is: as many as all lines allow whose first is no name, which changes from
    line to line; None where it is of one alone.
    """
    size = min(_group_at_end(row[0]) for row in rows)
    while size > 1:
        first = {row[0][-size] for row in rows}
        if len(first) <= max(2, _NAMES * len(rows)):
            return size
        size -= 1
    return None


def _joined(text: str, size: int) -> str:
    """A line with the groups of its first three numbers joined."""
    parts = _parts(text)
    if parts is None or len(parts[0]) < size:
        return text
    words = text.split()
    behind = words[sum(map(len, parts)) :]
    first = [*parts[0][:-size], "".join(parts[0][-size:])]
    others: List[str] = []
    for part in parts[1:]:
        whole = _group_at_end(part) == len(part)
        others += ["".join(part)] if whole else part
    return " ".join([*first, *others, *behind])
