"""Files of several parts, each under a header of its own.

A line within the file that names all coordinates, and other columns, units or delimiters than the header above it,
begins a part that is read by itself; lines keep their numbers.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import reduce
from typing import Any, Callable, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text, message
from .columns import ColumnMap, coordinates_of, roles_of_header
from .comments import find_comment
from .delimiters import DELIMITERS
from .lines_of_text import split_line
from .number_marks import is_number
from .pointfile import PointFile
from .pointset import COLUMNS
from .rejects import LineAccount, Rejects
from .source import TextSource
from .stack import stack_extra, stack_geographic
from .words import read_word

ANOTHER_HEADER = Text(
    "sections.another_header",
    QT_TRANSLATE_NOOP(
        "core", "{file}: line {line} is a header of other columns or units; the lines behind it are read by that."
    ),
    weight=1,
)
OTHER_KIND = Text(
    "sections.other_kind",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: from here on the file holds positions of another kind, degrees or lengths; save its parts "
        "as files of their own and give both.",
    ),
)
#: Lines that begin with words and have few digits, as headers do.
_LIKE_A_HEADER = re.compile(rb"(?:^|\n)(?=[^\n0-9]{4})[^\n0-9]*(?:[0-9]{1,5}[^\n0-9]+){0,8}[0-9]{0,5}(?=\n)")
_SIGNS = (*DELIMITERS, "|")


class _Head(NamedTuple):
    """A line that names all coordinates: its number, and what its words mean."""

    line: int
    meaning: Tuple[Any, ...]


def read_parts(
    source: TextSource, comment: Optional[str], mapping: Optional[ColumnMap],
    read: Callable[[TextSource, Optional[ColumnMap]], PointFile],
) -> PointFile:  # fmt: skip
    """What ``read`` makes of a file and the user's mapping, of each of its parts where it has several.

    The mapping counts in the first part, and in the others only where it goes against the header of the first.
    """
    starts = _starts(source, comment)
    if not starts:
        return read(source, mapping)
    ends = [*(start - 1 for start in starts), source.lines]
    begins = [1, *starts]
    parts = [read(_part(source, 1, ends[0]), mapping)]
    later = mapping if mapping is not None and _against_header(parts[0]) else None
    parts += [read(_part(source, begin, end), later) for begin, end in zip(begins[1:], ends[1:])]
    return _together(source, parts, begins)


def _against_header(part: PointFile) -> bool:
    """Whether coordinates were read from other columns than the header says."""
    used = part.format.columns
    said = roles_of_header(part.format.header.words) if part.format.header is not None else {}
    return any(said.get(role, [used[role] - 1])[0] + 1 != used[role] for role in coordinates_of(used) if role in used)


def _starts(source: TextSource, comment: Optional[str]) -> List[int]:
    """The first line of each part but the first."""
    if source.table is not None and source.table.crs:
        return []
    heads = list(_heads(source, comment))
    changed = [one for before, one in zip(heads, heads[1:]) if one.meaning != before.meaning]
    if heads and not _is_first(source, heads[0]):
        changed.insert(0, heads[0])
    starts: List[int] = []
    for head in changed:
        end = next((other.line for other in heads if other.line > head.line), source.lines + 1)
        if _numbers_between(source, head.line, end):
            starts.append(_with_lines_above(source, head.line))
    return starts


def _heads(source: TextSource, comment: Optional[str]) -> Iterator[_Head]:
    mark = None
    line, at = 1, 0
    for match in _LIKE_A_HEADER.finditer(source.data):
        start = match.start() + (match.group(0)[:1] == b"\n")
        text = match.group(0).strip(b"\n").decode()
        if sum(sign in text for sign in _SIGNS) == 0:
            continue
        if mark is None:
            mark = find_comment(source, comment).mark
        bare = text.strip()
        meaning = _meaning(bare[len(mark) :] if mark and bare.startswith(mark) else bare)
        if meaning is not None:
            line += source.data.count(b"\n", at, start)
            at = start
            yield _Head(line, meaning)


def _meaning(text: str) -> Optional[Tuple[Any, ...]]:
    """What the words of a header mean, None for a line that names not all coordinates."""
    for sign in _SIGNS:
        words = split_line(text, sign) or []
        if len(words) < 3 or sum(map(is_number, words[:50])) > 1:
            continue
        roles = roles_of_header(words[:200])
        if len(roles) >= 3 and all(role in roles for role in coordinates_of(roles)):
            read = [read_word(word) for word in words]
            return (sign, *((one.role or one.doubtful, one.unit, one.vague, one.angle, one.of) for one in read))
    return None


def _is_first(source: TextSource, head: _Head) -> bool:
    """Whether no line with numbers stands above the first header."""
    return not _numbers_between(source, 0, head.line)


def _numbers_between(source: TextSource, after: int, before: int) -> bool:
    """Whether a line with numbers stands between two lines."""
    return any(_has_numbers(text) for text in source.texts(range(after + 1, min(before, after + 200))))


def _has_numbers(text: str) -> bool:
    return any(sum(map(is_number, (split_line(text, sign) or [])[:50])) >= 2 for sign in _SIGNS)


def _with_lines_above(source: TextSource, line: int) -> int:
    """The first of the lines without numbers right above a header: they may say something of the part."""
    above = source.texts(range(max(1, line - 20), line))
    for text in reversed(above):
        if _has_numbers(text):
            break
        line -= 1
    return line


def _part(source: TextSource, begin: int, end: int) -> TextSource:
    """The lines from ``begin`` to ``end``, with blank ones before them so that they keep their numbers."""

    def cut(data: bytes) -> bytes:
        ends = np.flatnonzero(np.frombuffer(data, np.uint8) == 10)
        start = int(ends[begin - 2]) + 1 if begin > 1 else 0
        return b"\n" * (begin - 1) + data[start : int(ends[end - 1]) + 1]

    last = end == source.lines
    return replace(
        source, data=cut(source.data), stood=cut(source.stood) if source.stood else b"", lines=end,
        cut_off=source.cut_off and last, messages=source.messages if begin == 1 else (),
    )  # fmt: skip


def _together(source: TextSource, parts: Sequence[PointFile], begins: Sequence[int]) -> PointFile:
    first = parts[0]
    for part, begin in zip(parts, begins):
        if (part.geographic is None) != (first.geographic is None):
            raise SurveyError(OTHER_KIND, file=source.file, line=begin)
    sets = [part.points for part in parts]
    names = dict.fromkeys(name for one in sets for name in one.extra)
    points = replace(
        first.points, extra={name: stack_extra(sets, name) for name in names},
        **{key: np.concatenate([getattr(one, key) for one in sets]) for key in COLUMNS},
    )  # fmt: skip
    rejects = Rejects(
        np.concatenate([part.rejects.line for part in parts]), np.concatenate([part.rejects.text for part in parts]),
        tuple(reason for part in parts for reason in part.rejects.reason),
    )  # fmt: skip
    account = reduce(
        lambda total, one: total + one,
        [
            replace(part.account, lines=part.account.lines - begin + 1, blanks=part.account.blanks - begin + 1)
            for part, begin in zip(parts, begins)
        ],
        LineAccount(0, 0, 0, 0, 0, 0),
    )
    notes = [message(ANOTHER_HEADER, file=source.file, line=begin) for begin in begins[1:]]
    return replace(
        first, points=points, rejects=rejects, account=account, geographic=stack_geographic(parts),
        messages=tuple({str(one): one for one in (*notes, *(said for part in parts for said in part.messages))}.values()),
    )  # fmt: skip
