"""Files of several parts, each under a header of its own.

A line within the file that names all coordinates, and other columns, units or delimiters than the header above it,
begins a part that is read by itself; lines keep their numbers.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import reduce
from itertools import chain
from typing import Any, Callable, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text, message
from .columns import ColumnMap, coordinates_of, roles_of_header
from .comments import find_comment, units_of_line
from .delimiters import DELIMITERS
from .lines_of_text import counts_columns, split_line
from .number_marks import is_number
from .pointfile import PointFile
from .pointset import COLUMNS
from .rejects import LineAccount, Rejects
from .said_units import said_by
from .source import TextSource
from .stack import stack_extra, stack_geographic
from .words import Word, fold, read_word

ANOTHER_HEADER = Text(
    "sections.another_header",
    QT_TRANSLATE_NOOP(
        "core", "{file}: from line {line} on other columns or units are said; the lines behind it are read so."
    ),
    weight=1,
)
OTHER_KIND = Text(
    "sections.other_kind",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: from here on the file holds positions of another kind, degrees or lengths; save its "
        "parts as files of their own and give both.",
    ),
)
#: Share of digits in a line of words, and how long it is at most.
_MOST_DIGITS, _LONGEST = 0.35, 4000
_SIGNS = (*DELIMITERS, "|")


class _Head(NamedTuple):
    """A line that names all coordinates, or says a unit: its number and text, what its words mean, and whether it is
    a header.
    """

    line: int
    text: str
    meaning: Tuple[Any, ...]
    header: bool


class _Start(NamedTuple):
    """The first line of a part, and the header above it that counts on, "" where it has its own."""

    line: int
    header: str = ""


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
    ends = [*(start.line - 1 for start in starts), source.lines]
    parts = [read(_part(source, _Start(1), ends[0]), mapping)]
    later = mapping if mapping is not None and (parts[0].format.header is None or _against_header(parts[0])) else None
    for start, end in zip(starts, ends[1:]):
        part = read(_part(source, start, end), mapping if start.header else later)
        parts.append(_with_account(part, start))
    return _together(source, parts, starts)


def _against_header(part: PointFile) -> bool:
    """Whether coordinates were read from other columns than the header says."""
    used = part.format.columns
    said = roles_of_header(part.format.header.words) if part.format.header is not None else {}
    return any(said.get(role, [used[role] - 1])[0] + 1 != used[role] for role in coordinates_of(used) if role in used)


def _starts(source: TextSource, comment: Optional[str]) -> List[_Start]:
    """Where each part but the first begins."""
    if source.table is not None and source.table.crs:
        return []
    found = list(_heads(source, comment))
    starts: List[_Start] = []
    header: Optional[_Head] = None
    for i, head in enumerate(found):
        above = source.lines if i == 0 else found[i - 1].line
        begun = starts[-1].line if starts else 0
        end = next((other.line for other in found[i + 1 :]), source.lines + 1)
        changed = header is None or head.meaning != header.meaning if head.header else True
        inside = _numbers_between(source, 0 if header is None else begun, head.line, above)
        if changed and inside and (_numbers_between(source, head.line, end) or not head.header):
            starts.append(
                _Start(_with_lines_above(source, head.line), "" if head.header or header is None else header.text)
            )
        header = head if head.header else header
    return starts


def _heads(source: TextSource, comment: Optional[str]) -> Iterator[_Head]:
    mark = None
    for line, text in _lines_of_words(source):
        if mark is None:
            mark = find_comment(source, comment).mark
        bare = text.strip()
        bare = bare[len(mark) :] if mark and bare.startswith(mark) else bare
        meaning = _meaning(bare)
        unit = units_of_line(bare) if meaning is None else (Word(), Word())
        if meaning is not None or unit != (Word(), Word()):
            yield _Head(line, text, unit if meaning is None else meaning, meaning is not None)


def _lines_of_words(source: TextSource) -> Iterator[Tuple[int, str]]:
    """Number and text of the lines that begin with words and have few digits, as headers do."""
    text = np.frombuffer(source.data, np.uint8)
    line = 1
    for start, end in source.blocks():
        block = text[start:end]
        ends = np.flatnonzero(block == 10)
        begins = np.concatenate([[0], ends[:-1] + 1])
        digit = ((block - np.uint8(48)) < 10).view(np.uint8)
        few = np.add.reduceat(digit, begins, dtype=np.int32) <= _MOST_DIGITS * (ends - begins)
        few &= ends - begins > 4
        for i in range(4):
            few &= digit.take(begins + i, mode="clip") == 0
        for i in np.flatnonzero(few).tolist():
            words = block[begins[i] : ends[i]].tobytes().decode()
            if len(words) < _LONGEST:
                yield line + i, words
        line += len(ends)


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


def _numbers_between(source: TextSource, after: int, before: int, above: int = 0) -> bool:
    """Whether a line with numbers stands between two lines, among those right behind ``after`` or ``above``."""
    near = [*range(after + 1, min(before, after + 200)), *range(above + 1, min(before, above + 200))]
    return any(_has_numbers(text) for text in source.texts(near))


def _has_numbers(text: str) -> bool:
    for sign in _SIGNS:
        fields = (split_line(text, sign) or [])[:50]
        if sum(map(is_number, fields)) >= 2:
            return not counts_columns(fields)
    return False


def _with_lines_above(source: TextSource, line: int) -> int:
    """The first of the lines without numbers right above a header: they may say something of the part."""
    above = source.texts(range(max(1, line - 20), line))
    for text in reversed(above):
        if _has_numbers(text):
            break
        line -= 1
    return line


def _part(source: TextSource, start: _Start, end: int) -> TextSource:
    """The lines from where a part begins to ``end``, with blank ones before them so that they keep their numbers, and
    the header that counts on in the last of these.
    """
    begin = start.line

    def cut(data: bytes) -> bytes:
        ends = np.flatnonzero(np.frombuffer(data, np.uint8) == 10)
        at = int(ends[begin - 2]) + 1 if begin > 1 else 0
        blank = b"\n" * (begin - 1)
        if start.header:
            blank = b"\n" * (begin - 2) + _without_units(start.header).encode() + b"\n"
        return blank + data[at : int(ends[end - 1]) + 1]

    return replace(
        source, data=cut(source.data), stood=cut(source.stood) if source.stood else b"", lines=end,
        cut_off=source.cut_off and end == source.lines, messages=source.messages if begin == 1 else (),
    )  # fmt: skip


def _without_units(header: str) -> str:
    """A header line without its units in brackets: what is said below it counts in their place."""
    return re.sub(
        r"[(\[]([^)\]]*)[)\]]",
        lambda match: "" if said_by(fold(match[1]).split(), True).unit is not None else match[0],
        header,
    )


def _with_account(part: PointFile, start: _Start) -> PointFile:
    """A part whose account is of its own lines alone."""
    one = part.account
    comment = bool(start.header) and part.format.header is not None and part.format.header.comment
    headed = int(bool(start.header))
    account = replace(
        one, lines=one.lines - start.line + 1, blanks=one.blanks - (start.line - 1 - headed),
        comments=one.comments - comment, header=one.header - (headed - comment),
    )  # fmt: skip
    return replace(part, account=account)


def _together(source: TextSource, parts: Sequence[PointFile], starts: Sequence[_Start]) -> PointFile:
    first = parts[0]
    for part, start in zip(parts[1:], starts):
        if (part.geographic is None) != (first.geographic is None):
            raise SurveyError(OTHER_KIND, file=source.file, line=start.line)
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
    account = reduce(lambda total, part: total + part.account, parts, LineAccount(0, 0, 0, 0, 0, 0))
    notes = [message(ANOTHER_HEADER, file=source.file, line=start.line) for start in starts]
    return replace(
        first, points=points, rejects=rejects, account=account, geographic=stack_geographic(parts),
        messages=tuple({str(one): one for one in [*notes, *chain(*(part.messages for part in parts))]}.values()),
    )  # fmt: skip
