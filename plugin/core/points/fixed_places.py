"""Columns at fixed places that the user says, and numbers that stand side by side without a blank."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections import Counter
from dataclasses import replace
from typing import List, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Text, message
from .columns import ColumnMap
from .fixed_width import Cuts, with_tabs
from .lines_of_text import Sample
from .questions import Answer, Question, QuestionError, Topic
from .source import TextSource

GLUED = Text(
    "points.glued",
    QT_TRANSLATE_NOOP("core", "its numbers stand side by side without a blank, and nothing says where columns begin"),
)
BEGINS = Text("points.glued_begins", QT_TRANSLATE_NOOP("core", "line {line}: {shown}"))
#: Two numbers with decimals in one run, and no date.
_RUN = re.compile(r"[0-9][.][0-9]{4,}[.][0-9]")
#: Characters from one to another, or on to the end of the line.
_SPAN = re.compile(r"([0-9]{1,4})-([0-9]{1,4})?")
_FEWEST, _MOST, _MOST_WAYS = 4, 0.9, 2
#: How many digits eastings and northings have before the mark, the likelier first.
_DIGITS = (6, 7, 5, 4, 8)


def cut_at_places(source: TextSource, mapping: Optional[ColumnMap]) -> Tuple[TextSource, Optional[ColumnMap]]:
    """The file with tabs where the columns of a mapping such as ``easting=7-16,northing=17-27,height=28-`` begin and
    end, characters counted from 1, and the mapping by the numbers of these columns; both as they are for any other.
    """
    spans = [_SPAN.fullmatch(str(column)) for _, column in mapping.chosen] if mapping is not None else []
    if mapping is None or not spans or None in spans:
        return source, mapping
    begins = [int(span[1]) - 1 for span in spans if span]
    ends = [int(span[2]) for span in spans if span and span[2]]
    cuts = sorted({*begins, *ends} - {0, -1})
    plain = replace(source, data=source.data.replace(b"\t", b" "), stood=source.stood or source.data)
    numbers = {role: bisect_right(cuts, begin) + 1 for (role, _), begin in zip(mapping.chosen, begins)}
    return with_tabs(plain, Cuts((), tuple(cuts))), ColumnMap(chosen=tuple(numbers.items()))


def ask_of_glued(file: str, sample: Sample) -> None:
    """Raises QuestionError where in most lines two numbers stand side by side, their decimal points at the same
    places: where columns begin is asked, as only the number of decimals of the last tells how many the others have.
    """
    texts = [line.text.rstrip() for line in sample.lines]
    rows = [text for text in texts if _RUN.search(text)]
    if len(rows) < _FEWEST or len(rows) < _MOST * (len(texts) - 1):
        return
    places = [tuple(match.start() for match in re.finditer(r"[.]", text)) for text in rows]
    points, share = Counter(places).most_common(1)[0]
    if share < _MOST * len(rows) or len(points) < 3:
        return
    rows = [text for text, at in zip(rows, places) if at == points]
    line = next(one for one in sample.lines if one.text.rstrip() == rows[0])
    answers = []
    for begins in _ways(rows, points)[:_MOST_WAYS]:
        fields = [rows[0][a:b].strip() for a, b in zip((0, *begins), (*begins, len(rows[0])))]
        shown = message(BEGINS, line=line.line, shown=" | ".join(fields))
        answers += [Answer("--columns", value, shown) for value in _mappings(begins, points[0])]
    if answers:
        raise QuestionError(file, [Question(Topic.AXES, message(GLUED), tuple(answers))])


def _mappings(begins: Sequence[int], point: int) -> List[str]:
    """Columns from ``begins`` on as --columns takes them, easting first and northing first; what stands before the
    first decimal ``point`` in a column of its own is the name, what stands behind the heights the code.
    """
    starts = [0, *begins]
    first = sum(start < point for start in starts) - 1
    spans = [f"{a + 1}-{b}" for a, b in zip(starts, begins)] + [f"{starts[-1] + 1}-"]
    found = []
    for plan in (("easting", "northing"), ("northing", "easting")):
        roles = [*(["name"] if first else []), *plan, "height", "code"]
        spans_of = spans[max(first - 1, 0) :]
        found.append(",".join(f"{role}={span}" for role, span in zip(roles, spans_of)))
    return found


def _ways(rows: Sequence[str], points: Sequence[int]) -> List[Tuple[int, ...]]:
    """Where columns may begin, the likeliest first: behind as many decimals as the last number has, and the first
    number with so many digits before its point.
    """
    behind = re.match(r"[0-9]+", rows[0][points[-1] + 1 :])
    places = len(behind[0]) if behind else 0
    ends = [point + 1 + places for point in points]
    if not places or any(end >= nxt for end, nxt in zip(ends, points[1:])):
        return []
    inner = [end for end, nxt in zip(ends, points[1:]) if all(text[end:nxt].strip().isdigit() for text in rows)]
    if len(inner) < len(points) - 1:
        return []
    last = [ends[-1]] if any(text[ends[-1] :].strip() for text in rows) else []
    found = []
    for first in _first_begins(rows, points[0]):
        found.append(tuple(([first] if first else []) + inner + last))
    return found


def _first_begins(rows: Sequence[str], point: int) -> List[int]:
    """Where the first number may begin, 0 for the start of the line: behind a blank; else where what stands before it
    differs from line to line and itself begins alike, then by its digits.
    """
    before = rows[0][:point]
    if " " in before.strip():
        begins = {text[:point].rstrip().rfind(" ") + 1 for text in rows}
        return [min(begins)]
    tried = [point - digits for digits in _DIGITS if point - digits > 0]
    named = [at for at in tried if _differs(rows, at) and len({text[at] for text in rows}) <= 2]
    return [*named, *(at for at in tried if at not in named), 0]


def _differs(rows: Sequence[str], at: int) -> bool:
    return len({text[:at] for text in rows}) > 0.9 * len(rows)
