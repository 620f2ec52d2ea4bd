"""What a file looks like, from its first lines: delimiter, decimal mark, header."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass
from functools import cache
from typing import List, Optional, Pattern, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .angles import is_marked_angle, is_sexagesimal
from .columns import ColumnMap, coordinates_of, roles_of_header
from .layout import MOST_COLUMNS, TOO_MANY_COLUMNS, Header, Layout, Shape, places_of
from .source import TextSource

#: Delimiters in the order in which they are tried; a space stands for a run of spaces and tabs.
DELIMITERS = {"\t": "tab", ";": "semicolon", ",": "comma", " ": "spaces"}

#: How many data lines are looked at.
SAMPLE = 200
#: A header stands among the first lines or nowhere.
HEADER_WITHIN = 20
#: The coordinates of a line stand among its first fields.
_LOOKED_AT = 50
OTHER_COMMENTS = ("//", "%", "!", "--")
#: Degrees, minutes, seconds and a letter, and one more.
_ANGLE_WEIGHT = 5

NO_DATA = Text(
    "points.no_data",
    QT_TRANSLATE_NOOP(
        "core", "{file}: has no data lines, only {comments} comment and {blanks} blank lines; export the survey again."
    ),
)
BAD_DELIMITER = Text(
    "points.bad_delimiter",
    QT_TRANSLATE_NOOP(
        "core", "{file}: '{delimiter}' cannot be a delimiter; use comma, semicolon, tab, space or one sign such as '|'."
    ),
)
BAD_DECIMAL = Text(
    "points.bad_decimal",
    QT_TRANSLATE_NOOP("core", "{file}: '{decimal}' cannot be a decimal mark; use '.' or ','."),
)
SAME_MARK = Text(
    "points.same_mark",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: the comma cannot be delimiter and decimal mark both, unless fields are quoted; give "
        "another --delimiter or --decimal.",
    ),
)
WRONG_DELIMITER = Text(
    "points.wrong_delimiter",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: no three columns with delimiter {tried} ('{start}'); give --delimiter."
    ),
)
DECIMAL_COMMA = Text(
    "points.decimal_comma",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter "
        "and as decimal mark? Give --delimiter or --decimal, or name every column.",
    ),
)

_BLANKS = re.compile(r"[ \t]+")
_NUMBER = re.compile(r"[+-]?(?:[0-9]+(?:[.,][0-9]+|\.)?|[.,][0-9]+)(?:[eE][+-]?[0-9]+)?")
_NO_VALUE = re.compile(r"[+-]?(?:nan|inf|infinity|null|none|n/a|na)", re.IGNORECASE)


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


def find_comment(source: TextSource, given: Optional[str]) -> str:
    """The sign that starts a comment line; "" for none. ``given``: "auto" to find out.

    It is # unless no line among the first starts with it and some above the data start with another usual sign.
    """
    if given != "auto":
        return given or ""
    starts: List[str] = []
    for number, text in source.each_line():
        if text.strip() and number <= HEADER_WITHIN:
            starts.append(text.strip()[:2])
        if number > HEADER_WITHIN:
            break
    for mark in () if any(start.startswith("#") for start in starts) else OTHER_COMMENTS:
        count = next((i for i, start in enumerate(starts) if not start.startswith(mark)), len(starts))
        if 0 < count < len(starts):
            return mark
    return "#"


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
        return _split_quoted(text, delimiter)
    if delimiter == " ":
        return _BLANKS.split(text)
    return [field.strip(" \t") for field in text.split(delimiter)]


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


def settle_delimiter(file: str, given: Optional[str], sample: Sample) -> str:
    """The delimiter to use; the one with most lines of three numbers where none is given.

    Raises SurveyError when it cannot be a delimiter or leaves no line with three columns.
    """
    if given is not None:
        word = {name: sign for sign, name in DELIMITERS.items()}.get(given.lower(), given)
        word = {"space": " ", "\\t": "\t"}.get(word.lower(), word)
        if len(word) != 1 or not (word == "\t" or " " <= word <= "~") or word.isalnum() or word in "\"'.+-_":
            raise SurveyError(BAD_DELIMITER, file=file, delimiter=given)
        tried = [word]
    else:
        tried = list(DELIMITERS)
    best, best_score = "", (0, 0, 0)
    for delimiter in tried:
        rows = [split_line(line.text, delimiter) or [] for line in sample.lines]
        numbers = [sum(_weight(field) for field in row[:_LOOKED_AT]) for row in rows]
        wide = sum(len(row) >= 3 for row in rows)
        score = (sum(count >= 3 for count in numbers), sum(numbers) if wide else 0, wide)
        if wide and score > best_score:
            best, best_score = delimiter, score
    if not best:
        names = ", ".join(DELIMITERS.get(delimiter, delimiter) for delimiter in tried)
        line = sample.lines[0]
        raise SurveyError(WRONG_DELIMITER, file=file, line=line.line, tried=names, start=line.text.strip()[:40])
    return best


def _weight(field: str) -> int:
    """How many numbers a field counts for; an angle counts for more than its parts, which spaces may divide."""
    return 1 if _is_number(field) else _ANGLE_WEIGHT if is_marked_angle(field) else 0


def _is_number(field: str) -> bool:
    return len(field) < 40 and _NUMBER.fullmatch(field) is not None


def split_sample(sample: Sample, delimiter: str) -> Sample:
    """The sample with its fields, one more than ``MOST_COLUMNS`` at most."""

    def split(line: SampleLine) -> SampleLine:
        return SampleLine(line.line, line.text, tuple(split_line(line.text, delimiter) or ())[: MOST_COLUMNS + 1])

    return Sample(tuple(split(line) for line in sample.lines), split(sample.comment) if sample.comment else None)


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


def _lines_above_numbers(sample: Sample, columns: Optional[ColumnMap]) -> List[SampleLine]:
    above: List[SampleLine] = []
    for line in sample.lines[:HEADER_WITHIN]:
        if sum(_is_value(field) for field in line.fields) >= 2:
            break
        above.append(line)
    return above


def _is_value(field: str) -> bool:
    return _is_number(field) or _NO_VALUE.fullmatch(field) is not None or is_sexagesimal(field)


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
    return len(words) == 3 and all(re.search(r"[^\W\d_]", word) and not _NO_VALUE.fullmatch(word) for word in words)


def shape_of(sample: Sample, header: Optional[Header], delimiter: str, file: str) -> Shape:
    """How wide the data lines are. Raises SurveyError beyond ``MOST_COLUMNS``."""
    rows = [line.fields for line in sample.lines if header is None or line.line > header.line] or [()]
    counts = tuple(len(row) for row in rows)
    width = _most_common(counts)
    filled = _most_common([len(row) - _empty_at_end(row) for row in rows])
    widest = max(width, len(header.words) if header else 0)
    if widest > MOST_COLUMNS:
        raise SurveyError(
            TOO_MANY_COLUMNS, file=file, most=MOST_COLUMNS, delimiter=DELIMITERS.get(delimiter, delimiter)
        )
    return Shape(width, filled, counts, delimiter == " ", sample.lines[0].text.strip())


def _most_common(counts: Sequence[int]) -> int:
    """The most common count, the larger of two equally common."""
    tally = Counter(counts)
    return max(tally, key=lambda count: (tally[count], count))


def _empty_at_end(row: Sequence[str]) -> int:
    count = 0
    while count < len(row) and not row[-1 - count]:
        count += 1
    return count


def settle_decimal(
    file: str, given: Optional[str], delimiter: str, sample: Sample, header: Optional[Header], layout: Layout
) -> str:
    """The decimal mark of the coordinates.

    Raises SurveyError when it is the delimiter too, or when a comma may be either.
    """
    if given is not None and given not in (".", ","):
        raise SurveyError(BAD_DECIMAL, file=file, decimal=given)
    quoted = any('"' in line.text for line in sample.lines)
    if given == "," and delimiter == "," and not quoted:
        raise SurveyError(SAME_MARK, file=file)
    if given is not None:
        return given
    places = [layout.roles[role] for role in layout.coordinates]
    rows = [line for line in sample.lines if header is None or line.line > header.line]
    fields = [line.fields[place] for line in rows for place in places if place < len(line.fields)]
    numbers = [field for field in fields if _is_number(field)]
    commas, points = (sum(mark in number for number in numbers) for mark in ",.")
    if delimiter == "," and not layout.named and numbers and not points and not commas:
        raise SurveyError(DECIMAL_COMMA, file=file, line=rows[0].line, count=layout.width)
    return "," if commas > points else "."
