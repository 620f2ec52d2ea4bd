"""The first lines of a file, and how a line is split into its fields."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import List, Optional, Pattern, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .angles import is_sexagesimal
from .layout import MOST_COLUMNS
from .number_marks import is_no_value, is_number
from .source import TextSource

#: How many data lines are looked at.
SAMPLE = 200
#: A header stands among the first lines or nowhere.
HEADER_WITHIN = 20
_BLANKS = re.compile(r"[ \t]+")
_LONG = 10_000  # signs of a line that takes long to split

NO_DATA = Text(
    "points.no_data",
    QT_TRANSLATE_NOOP(
        "core", "{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again."
    ),
)


@dataclass(frozen=True)
class SampleLine:
    """A line that is neither blank nor comment: number, text, and its fields once the delimiter is known."""

    line: int
    text: str
    fields: Tuple[str, ...] = ()


@dataclass(frozen=True)
class Sample:
    """The first data lines, and the last comment line above them (None where there is none)."""

    lines: Tuple[SampleLine, ...]
    comment: Optional[SampleLine] = None


def take_sample(source: TextSource, comment: str) -> Sample:
    """The first data lines of a file. Raises SurveyError when there are none."""
    lines: List[SampleLine] = []
    above: Optional[SampleLine] = None
    comments = blanks = size = 0
    for number, text in source.each_line():
        bare = text.strip(" \t")
        if not bare:
            blanks += 1
        elif comment and bare.startswith(comment):
            comments += 1
            above = above if lines else SampleLine(number, bare[len(comment) :].strip(" \t"))
        else:
            lines.append(SampleLine(number, text))
            size += len(text)
            if len(lines) >= SAMPLE or size > 1 << 20:
                break
    if not lines:
        raise SurveyError(NO_DATA, file=source.file, comments=comments, blanks=blanks)
    return Sample(tuple(lines), above)


def split_line(text: str, delimiter: str) -> Optional[List[str]]:
    """Fields of one line without blanks around them, quotes taken off; None when the quotes do not pair."""
    text = text.strip(" " if delimiter == "\t" else " \t")
    if '"' in text:
        if len(text) < _LONG:
            return _split_quoted(text, delimiter)
        fields = _split_long(text, delimiter)
        return None if fields is None else list(fields)
    if delimiter == " ":
        return _BLANKS.split(text)
    return [field.strip(" \t") for field in text.split(delimiter)]


@lru_cache(maxsize=16)
def _split_long(text: str, delimiter: str) -> Optional[Tuple[str, ...]]:
    """The same, kept: a long line is asked for again and again while the form of its file is settled."""
    fields = _split_quoted(text, delimiter)
    return None if fields is None else tuple(fields)


def _split_quoted(text: str, delimiter: str) -> Optional[List[str]]:
    """As :func:`split_line`. A quote counts at the start of a field; inside quotes two stand for one."""
    field_at = _field_pattern(delimiter)
    fields: List[str] = []
    at, more = 0, True
    while more:
        match = field_at.match(text, at)
        if match is None:
            return None
        quoted, plain, end = match.groups()
        fields.append(plain.strip(" \t") if quoted is None else quoted.replace('""', '"'))
        at, more = match.end(), end != ""
    return fields


@cache
def _field_pattern(delimiter: str) -> Pattern[str]:
    """One field and what ends it: in quotes, or plain and not begun with a quote."""
    if delimiter == " ":
        return re.compile(r'(?:"([^"]*(?:""[^"]*)*)"|([^ \t"][^ \t]*))([ \t]+|$)')
    blank, sign = "[ ]*" if delimiter == "\t" else r"[ \t]*", re.escape(delimiter)
    return re.compile(rf'{blank}(?:"([^"]*(?:""[^"]*)*)"{blank}|((?:[^{sign}"][^{sign}]*)?))({sign}|$)')


def split_sample(sample: Sample, delimiter: str) -> Sample:
    """The sample with its fields, one more than ``MOST_COLUMNS`` at most."""

    def split(line: SampleLine) -> SampleLine:
        return SampleLine(line.line, line.text, tuple(split_line(line.text, delimiter) or ())[: MOST_COLUMNS + 1])

    return Sample(tuple(split(line) for line in sample.lines), split(sample.comment) if sample.comment else None)


def is_value(field: str) -> bool:
    """Whether a field is a number, an angle, or says that there is none."""
    return is_number(field) or is_no_value(field) or is_sexagesimal(field)


def counts_columns(fields: Sequence[str]) -> bool:
    """Whether a line gives the columns their numbers: 1, 2, 3 and so on."""
    return len(fields) > 3 and all(field == str(i + 1) for i, field in enumerate(fields))
