"""The line of a file whose words name its columns, and these words put together."""

from __future__ import annotations

import re
from collections import Counter
from typing import List, Optional, Sequence

from .below import lines_below
from .columns import ColumnMap, coordinates_of, roles_of_header
from .layout import MOST_COLUMNS, Header, places_of
from .lines_of_text import HEADER_WITHIN, Sample, SampleLine, counts_columns, is_value, split_line
from .number_marks import is_no_value
from .source import TextSource
from .times import has_date, is_time
from .words import read_word

#: So many lines are looked at for a date and a time.
_TRIED = 20


def find_header(given: Optional[bool], columns: Optional[ColumnMap], sample: Sample) -> Optional[Header]:
    """The header line; ``given`` says whether there is one.

    Otherwise, of the lines above the first with numbers, the one with most words that name a role or
    are named in the mapping; or the last of them when each coordinate's column has a word there. Failing
    that, a comment line right above the data whose words name all coordinates.
    """
    if given is True:
        return Header(sample.lines[0].line, sample.lines[0].fields)
    if given is False:
        return None
    above = _lines_above_numbers(sample, columns)
    best = max(reversed(above), key=lambda line: _known_words(line, columns), default=None)
    if best is not None and _known_words(best, columns) >= 3:
        return Header(best.line, best.fields)
    line = sample.comment
    if line is not None and (columns is None or _names_words(columns)) and _known_words(line, columns) >= 3:
        return Header(line.line, line.fields, comment=True)
    if above and len(above) < len(sample.lines) and _has_words(above[-1], columns):
        return Header(above[-1].line, above[-1].fields)
    return None


def header_below(source: TextSource, mark: str, delimiter: str, columns: Optional[ColumnMap]) -> Optional[Header]:
    """A line behind the points whose words name all coordinates."""
    for number, text in lines_below(source, mark):
        bare = text.strip(" \t")
        bare = bare[len(mark) :].strip(" \t") if mark and bare.startswith(mark) else bare
        line = SampleLine(number, text, tuple(split_line(bare, delimiter) or ()))
        if len(line.fields) <= MOST_COLUMNS and _known_words(line, columns) >= 3:
            return Header(0, line.fields, comment=True)
    return None


def _lines_above_numbers(sample: Sample, columns: Optional[ColumnMap]) -> List[SampleLine]:
    above: List[SampleLine] = []
    for line in sample.lines[:HEADER_WITHIN]:
        if sum(is_value(field) for field in line.fields) >= 2 and not counts_columns(line.fields):
            break
        above.append(line)
    return above


def _names_words(columns: Optional[ColumnMap]) -> bool:
    return columns is not None and any(isinstance(column, str) for _, column in columns.chosen)


def _known_words(line: SampleLine, columns: Optional[ColumnMap]) -> int:
    wanted = [column for _, column in columns.chosen if isinstance(column, str)] if columns is not None else []
    if wanted:
        return 3 * sum(bool(places_of(word, line.fields)) for word in wanted)
    roles = roles_of_header(line.fields)
    return sum(role in roles for role in coordinates_of(roles)) if columns is not None or len(roles) >= 3 else 0


def _has_words(line: SampleLine, columns: Optional[ColumnMap]) -> bool:
    """Whether words stand where the numbers should be."""
    if columns is not None and columns.ordered is not None:
        places = [columns.ordered.index(role) for role in coordinates_of(columns.ordered)]
    else:
        places = list(range(min(len(line.fields), 3)))
    words = [line.fields[place] for place in places if place < len(line.fields)]
    return len(words) == 3 and all(re.search(r"[^\W\d_]", word) and not is_no_value(word) for word in words)


def words_joined(header: Header, sample: Sample, delimiter: str) -> Header:
    """A header whose words of several parts, such as Point Name, blanks took apart where they part the columns."""
    counts = [len(line.fields) for line in sample.lines if line.line > header.line]
    usual = most_common(counts) if counts else 0
    words = header.words
    if delimiter != " " or not 3 <= usual < len(words) <= 60:
        return header
    # best[i][k]: the best score of the first i words in k columns, and where the last of these begins.
    best = {(0, 0): (0.0, 0)}
    for i in range(1, len(words) + 1):
        for k in range(1, min(i, usual) + 1):
            tried = [
                (best[i - size, k - 1][0] + _fits(words[i - size : i]), i - size)
                for size in range(1, min(4, i) + 1)
                if (i - size, k - 1) in best
            ]
            if tried:
                best[i, k] = max(tried)
    if (len(words), usual) not in best:
        return header
    joined: List[str] = []
    i = len(words)
    for k in range(usual, 0, -1):
        begin = best[i, k][1]
        joined.insert(0, " ".join(words[begin:i]))
        i = begin
    return Header(header.line, tuple(joined), header.comment)


def with_date_and_time(header: Header, sample: Sample, delimiter: str) -> Header:
    """A header with one word for a date and a time that a blank parts, as it parts the columns, has two there."""
    rows = [line.fields for line in sample.lines if line.line > header.line][:_TRIED]
    if delimiter != " " or not rows or any(len(row) != len(header.words) + 1 for row in rows[:-1]):
        return header
    for place in range(len(header.words)):
        cells = [row[place : place + 2] for row in rows if len(row) > place + 1]
        if all(has_date(day) and ":" not in day and is_time(clock) for day, clock in cells):
            words = (*header.words[:place], "date", "time", *header.words[place + 1 :])
            return Header(header.line, words, header.comment)
    return header


def _fits(words: Sequence[str]) -> float:
    """How well words make one header word."""
    if words[0].startswith(("(", "[")):
        return -5.0
    said = read_word(" ".join(words))
    return (1.0 if said.role else 0.8 if said.doubtful else 0.0) - 0.1 * (len(words) - 1)


def most_common(counts: Sequence[int]) -> int:
    """The most common count, the larger of two equally common."""
    tally = Counter(counts)
    return max(tally, key=lambda count: (tally[count], count))
