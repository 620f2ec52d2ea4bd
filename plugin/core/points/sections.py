"""Files of several parts, each under a header of its own.

A line within the file that names all coordinates, and other columns, units or delimiters than the header above it,
begins a part that is read by itself; lines keep their numbers.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache, reduce
from itertools import chain
from typing import Any, Callable, Dict, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text, message
from .below import SIGNS, Line, has_numbers, lines_below
from .columns import ColumnMap, coordinates_of, roles_of_header
from .comments import find_comment
from .level_words import levels_of
from .lines_of_text import split_line
from .number_marks import is_number
from .parts_alike import ask_of_headers, check_levels
from .pointfile import PointFile
from .pointset import COLUMNS
from .rejects import LineAccount, Rejects
from .said_above import HEIGHT_WORDS, Units, heights_of_line, pole_of_line, units_of_line
from .said_units import said_by
from .source import TextSource
from .stack import stack_extra, stack_geographic
from .unit_rows import units_in_row
from .words import fold, read_word

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
#: So many bytes are looked at for codes in each point.
_HEAD = 1 << 18
_SRID = re.compile(rb"SRID=\d{4,6}")
#: So few digits do not make a point.
_FEW_DIGITS = 6
#: So many different lines behind the first point are kept.
_MOST_BEHIND = 200


class _Head(NamedTuple):
    """A line that names all coordinates, or says a unit, a pole or what heights are of: its number and text, what its
    words mean, and whether it is a header.
    """

    line: int
    text: str
    meaning: Tuple[Any, ...]
    header: bool


class _Start(NamedTuple):
    """The first line of a part, the header above it that counts on, "" where it has its own, and the lines above it
    that count on.
    """

    line: int
    header: str = ""
    said: Tuple[str, ...] = ()


def read_parts(
    source: TextSource, comment: Optional[str], mapping: Optional[ColumnMap],
    read: Callable[[TextSource, Optional[ColumnMap]], PointFile],
) -> PointFile:  # fmt: skip
    """What ``read`` makes of a file and the user's mapping, of each of its parts where it has several.

    The mapping counts in the first part, and in the others only where it goes against the header of the first.
    """
    if source.table is not None and source.table.crs:
        return read(source, mapping)
    words = list(_lines_of_words(source))
    mark = find_comment(source, comment).mark if words else ""
    foot = lines_below(source, mark) if words else []
    last = foot[0].number if foot else source.lines + 1
    words = [line for line in words if line.number < last]
    heads = list(_heads(mark, words))
    starts = _starts(source, heads)
    behind = _behind_points(source, mark, [*words, *foot])
    known = {head.line for head in heads if head.header}
    if not starts:
        whole = read(source, mapping)
        if mapping is None:
            ask_of_headers(source, mark, words, known, [whole])
        return replace(whole, behind=behind)
    ends = [*(start.line - 1 for start in starts), source.lines]
    below = tuple(line.text for line in foot)
    parts = [read(replace(_part(source, _Start(1), ends[0]), below=below), mapping)]
    later = mapping if mapping is not None and (parts[0].format.header is None or _against_header(parts[0])) else None
    for start, end in zip(starts, ends[1:]):
        text = _part(source, start, end)
        text = text if end == source.lines else replace(text, below=below)
        part = read(text, mapping if start.header else later)
        parts.append(_with_account(part, start))
    check_levels(source.file, parts, [start.line for start in starts])
    if mapping is None:
        ask_of_headers(source, mark, words, known, parts)
    return replace(_together(source, parts, starts), behind=behind)


def _behind_points(source: TextSource, mark: str, words: Sequence[Line]) -> Tuple[Line, ...]:
    """The different lines of words behind the first point."""
    found = {line.text: line for line in reversed(words) if not has_numbers(line.text)}
    first = next((number for number, text in source.each_line() if _is_point(text, mark)), 0) if found else 0
    behind = [line for line in reversed(list(found.values())) if line.number > first > 0]
    return (*_systems_of_points(source), *behind)[:_MOST_BEHIND]


def _systems_of_points(source: TextSource) -> List[Line]:
    """What points among the first say of their CRS, as in SRID=25833;POINT(1 2)."""
    first = source.data[:_HEAD]
    found = {match[0]: first.count(b"\n", 0, match.start()) + 1 for match in reversed(list(_SRID.finditer(first)))}
    return [Line(number, text.decode()) for text, number in reversed(list(found.items()))]


def _is_point(text: str, mark: str) -> bool:
    return has_numbers(text) and not (mark and text.lstrip().startswith(mark))


def _against_header(part: PointFile) -> bool:
    """Whether coordinates were read from other columns than the header says."""
    used = part.format.columns
    said = roles_of_header(part.format.header.words) if part.format.header is not None else {}
    return any(said.get(role, [used[role] - 1])[0] + 1 != used[role] for role in coordinates_of(used) if role in used)


def _starts(source: TextSource, found: Sequence[_Head]) -> List[_Start]:
    """Where each part but the first begins."""
    starts: List[_Start] = []
    header: Optional[_Head] = None
    said: Dict[str, _Head] = {}
    for i, head in enumerate(found):
        above = source.lines if i == 0 else found[i - 1].line
        begun = starts[-1].line if starts else 0
        end = next((other.line for other in found[i + 1 :]), source.lines + 1)
        if head.header:
            changed = header is None or head.meaning != header.meaning
        else:
            changed = any(name not in said or said[name].meaning != head.meaning for name in _kinds(head))
        inside = _numbers_between(source, 0 if header is None else begun, head.line, above)
        if changed and inside and (_numbers_between(source, head.line, end) or not head.header):
            new = {"row"} if head.header else set(_kinds(head))  # a row is of the columns above it
            kept = tuple(one.text for name, one in said.items() if name not in new)
            own = head.header or header is None
            above_it = "" if own or header is None else header.text
            if above_it and {"units", "row"} & set(_kinds(head)):
                above_it = _without_units(above_it)
            starts.append(_Start(_with_lines_above(source, head.line), above_it, tuple(dict.fromkeys(kept))))
        if head.header:
            header = head
        else:
            said.update(dict.fromkeys(_kinds(head), head))
    return starts


def _kinds(head: _Head) -> Tuple[str, ...]:
    """What a line that is no header says: "units", "pole", "of" what heights are, a "row" of units, or a "level"."""
    return tuple(name for name, what in zip(("units", "pole", "of", "row", "level"), head.meaning) if what)


def _heads(mark: str, words: Sequence[Line]) -> Iterator[_Head]:
    for line, text in words:
        bare = text.strip()
        bare = bare[len(mark) :] if mark and bare.startswith(mark) else bare
        meaning = _meaning(bare)
        if meaning is not None:
            yield _Head(line, text, meaning, True)
            continue
        said = _said_by_line(bare)
        if any(said):
            yield _Head(line, text, said, False)


@lru_cache(maxsize=4096)
def _said_by_line(text: str) -> Tuple[Any, ...]:
    """What a line that is no header says, see :func:`_kinds`."""
    unit, pole = units_of_line(text), pole_of_line(text)
    rows = (units_in_row(split_line(text, sign)) for sign in SIGNS)
    level = levels_of(text) if HEIGHT_WORDS & set(fold(text).split()) else ()
    said = (None if unit == Units() else unit, None if pole is None else (str(pole),), heights_of_line(text))
    return (*said, next(filter(None, rows), ()), level)


def _lines_of_words(source: TextSource) -> Iterator[Line]:
    """The lines that begin with words and have few digits, as headers do."""
    text = np.frombuffer(source.data, np.uint8)
    line = 1
    for start, end in source.blocks():
        block = text[start:end]
        ends = np.flatnonzero(block == 10)
        begins = np.concatenate([[0], ends[:-1] + 1])
        at = np.flatnonzero(ends - begins > 4)
        for i in range(4):
            at = at[(block.take(begins[at] + i, mode="clip") - np.uint8(48)) >= 10]
        size = ends[at] - begins[at]
        if len(at):
            digits = np.concatenate([[0], np.cumsum((block - np.uint8(48)) < 10, dtype=np.int32)])
            count = digits[ends[at]] - digits[begins[at]]
            at = at[(count <= _MOST_DIGITS * size) | (count <= _FEW_DIGITS)]
        for i in at.tolist():
            words = block[begins[i] : ends[i]].tobytes().decode()
            if len(words) < _LONGEST:
                yield Line(line + i, words)
        line += len(ends)


@lru_cache(maxsize=4096)
def _meaning(text: str) -> Optional[Tuple[Any, ...]]:
    """What the words of a header mean, None for a line that names not all coordinates."""
    for sign in SIGNS:
        words = split_line(text, sign) or []
        if len(words) < 3 or sum(map(is_number, words[:50])) > 1:
            continue
        roles = roles_of_header(words[:200])
        if len(roles) >= 3 and all(role in roles for role in coordinates_of(roles)):
            read = [read_word(word) for word in words]
            level = frozenset(chain(*(levels_of(words[place]) for place in roles.get(coordinates_of(roles)[2], ()))))
            return (sign, level, *((one.role or one.doubtful, one.unit, one.vague, one.angle, one.of) for one in read))
    return None


def _numbers_between(source: TextSource, after: int, before: int, above: int = 0) -> bool:
    """Whether a line with numbers stands between two lines, among those right behind ``after`` or ``above``."""
    near = [*range(after + 1, min(before, after + 200)), *range(above + 1, min(before, above + 200))]
    return any(has_numbers(text) for text in source.texts(near))


def _with_lines_above(source: TextSource, line: int) -> int:
    """The first of the lines without numbers right above a header: they may say something of the part."""
    above = source.texts(range(max(1, line - 20), line))
    for text in reversed(above):
        if has_numbers(text):
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
            blank = b"\n" * (begin - 2) + start.header.encode() + b"\n"
        return blank + data[at : int(ends[end - 1]) + 1]

    return replace(
        source, data=cut(source.data), stood=cut(source.stood) if source.stood else b"", lines=end,
        said=start.said, cut_off=source.cut_off and end == source.lines, messages=source.messages if begin == 1 else (),
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
        above=tuple(dict.fromkeys(chain(*(part.above for part in parts)))),
        messages=tuple({str(one): one for one in [*notes, *chain(*(part.messages for part in parts))]}.values()),
    )  # fmt: skip
