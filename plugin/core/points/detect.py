"""What a file looks like, from its first lines: delimiter, comments, header, decimal mark."""

from __future__ import annotations

import re
from collections import Counter
from dataclasses import dataclass
from typing import List, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .bracketed import without_brackets
from .columns import ColumnMap, coordinates_of, roles_of_header
from .comments import CommentSign, find_comment
from .delimiters import DELIMITERS, FIXED, settle_delimiter
from .fixed_width import find_cuts, with_tabs
from .keyed import without_keys
from .layout import MOST_COLUMNS, TOO_MANY_COLUMNS, Header, Layout, Shape, places_of
from .lines_of_text import HEADER_WITHIN, Sample, SampleLine, counts_columns, is_value, split_sample, take_sample
from .number_marks import Marks, is_no_value, is_number, usual_marks
from .parted_degrees import joined_parts, joined_words, runs_of_parts
from .plain_lines import made_plain
from .questions import Answer, Question, QuestionError, Topic
from .said_units import said_by
from .source import TextSource
from .times import has_date, is_time
from .words import fold, read_word

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
DECIMAL_COMMA = Text(
    "points.decimal_comma",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: {count} columns and no decimal point in a coordinate: comma as delimiter "
        "and as decimal mark? Give --delimiter or --decimal, or name every column.",
    ),
)

COMMENTED_OUT = Text(
    "points.commented_out",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} of the first lines hold numbers as points do but begin with # and are left out as comments; "
        "give --comment none to read them.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: one of the first lines holds numbers as a point does but begins with # and is left out as a comment; "
        "give --comment none to read it.",
    ),
)
WHICH_COMMENT = Text(
    "points.comment_open",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} of its first lines hold numbers as points do but begin with #, which may belong to their names or "
        "leave them out",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "one of its first lines holds numbers as a point does but begins with #, which may belong to its name or leave "
        "it out",
    ),
)
ARE_NAMES = Text("points.comment_none", QT_TRANSLATE_NOOP("core", "names that begin with #, all points"))
ARE_COMMENTS = Text("points.comment_sign", QT_TRANSLATE_NOOP("core", "lines that are left out"))
FIXED_PLACES = Text(
    "points.fixed_places",
    QT_TRANSLATE_NOOP("core", "{file}: its columns stand at fixed places and begin at the characters {places}."),
)
NOT_FIXED = Text(
    "points.not_fixed",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: no characters are blank in every line, so its columns do not stand at fixed places; give "
        "another --delimiter.",
    ),
)


#: So many lines are looked at for a date and a time.
_TRIED = 20


@dataclass(frozen=True)
class Form:
    """How the text of a file comes apart. ``source``: its text, with tabs in it where columns stand at fixed places;
    ``notes``: what to tell of it.
    """

    source: TextSource
    sample: Sample
    delimiter: str
    comment: str
    header: Optional[Header]
    shape: Shape
    notes: Tuple[Message, ...] = ()


def settle_form(
    source: TextSource, delimiter: Optional[str], comment: Optional[str], header: Optional[bool],
    columns: Optional[ColumnMap] = None,
) -> Form:  # fmt: skip
    """Delimiter, comment sign and header of a file, as the user said or found out. Raises SurveyError."""
    if source.table is not None:
        delimiter, comment = "\t", ""
        header = True if source.table.headed else header
    sign_of_comments = find_comment(source, comment)
    mark, commented = sign_of_comments.mark, sign_of_comments.points
    if sign_of_comments.names:
        raise QuestionError(source.file, [_names_or_comments(sign_of_comments)])
    if source.table is None and delimiter is None:
        source = made_plain(source, mark)
    keyed = without_keys(source, mark) if source.table is None and delimiter is None else None
    if keyed is None and source.table is None and delimiter is None:
        source = without_brackets(source, mark)
    if keyed is not None:
        source, delimiter = keyed.source, "\t"
    sample = take_sample(source, mark)
    notes = [message(COMMENTED_OUT, file=source.file, count=commented)] if commented else []
    wanted = delimiter is not None and delimiter.strip().lower() == FIXED
    sign = "\t" if wanted else _delimiter(source.file, delimiter, sample)
    cuts = find_cuts(sample, wanted) if wanted or (delimiter is None and sign in ("", " ")) else None
    if cuts:
        source = with_tabs(source, cuts)
        sample, sign = take_sample(source, mark), "\t"
        places = ", ".join(str(begin + 1) for begin in cuts.begins)
        notes.append(message(FIXED_PLACES, file=source.file, places=f"1, {places}"))
    elif wanted:
        raise SurveyError(NOT_FIXED, file=source.file)
    sign = sign or settle_delimiter(source.file, delimiter, sample)
    sample = split_sample(sample, sign)
    head = Header(0, keyed.keys, comment=True) if keyed is not None else find_header(header, columns, sample)
    if head is not None:
        head = _with_date_and_time(head, sample, sign)
        head = _with_units_below(_words_joined(head, sample, sign), sample)
        runs = runs_of_parts(head.words) if sign != " " else []
        if runs:
            source = joined_parts(source, sign, runs)
            head = Header(head.line, joined_words(head.words, runs), head.comment)
            sample = split_sample(take_sample(source, mark), sign)
    return Form(source, sample, sign, mark, head, shape_of(sample, head, sign, source.file), tuple(notes))


def _names_or_comments(found: CommentSign) -> Question:
    """Whether # begins names or lines that are left out."""
    answers = (
        Answer("--comment", "none", message(ARE_NAMES)),
        Answer("--comment", found.mark, message(ARE_COMMENTS)),
    )
    return Question(Topic.COMMENT, message(WHICH_COMMENT, count=found.names), answers)


def _delimiter(file: str, given: Optional[str], sample: Sample) -> str:
    """As :func:`settle_delimiter`, "" where nothing was given and nothing fits."""
    try:
        return settle_delimiter(file, given, sample)
    except SurveyError:
        if given is not None:
            raise
        return ""


def _words_joined(header: Header, sample: Sample, delimiter: str) -> Header:
    """A header whose words of several parts, such as Point Name, blanks took apart where they part the columns."""
    counts = [len(line.fields) for line in sample.lines if line.line > header.line]
    usual = _most_common(counts) if counts else 0
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


def _with_date_and_time(header: Header, sample: Sample, delimiter: str) -> Header:
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


def _with_units_below(header: Header, sample: Sample) -> Header:
    """The header with the units that the line below it says of the columns, in brackets."""
    below = next((line for line in sample.lines if line.line > header.line), None)
    if below is None or header.comment or sum(is_value(field) and field != "-" for field in below.fields):
        return header
    said = [said_by(fold(field.strip("()[]{}")).split(), bracketed=True) for field in below.fields]
    known = sum(not one.nothing for one in said)
    if known < 2 or any(one.nothing and field.strip("-[]() ") for one, field in zip(said, below.fields)):
        return header
    words = list(header.words)
    for i, one in enumerate(said[: len(words)]):
        if not one.nothing:
            words[i] = f"{words[i]} ({below.fields[i].strip('()[]{}')})"
    return Header(header.line, tuple(words), header.comment)


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


def settle_marks(
    file: str, given: Optional[str], delimiter: str, sample: Sample, header: Optional[Header], layout: Layout
) -> Marks:
    """The decimal mark of the coordinates, and what parts their thousands.

    Raises SurveyError when the decimal mark is the delimiter too, or when a comma may be either.
    """
    if given is not None and given not in (".", ","):
        raise SurveyError(BAD_DECIMAL, file=file, decimal=given)
    quoted = any('"' in line.text for line in sample.lines)
    if given == "," and delimiter == "," and not quoted:
        raise SurveyError(SAME_MARK, file=file)
    places = [layout.roles[role] for role in layout.coordinates]
    rows = [line for line in sample.lines if header is None or line.line > header.line]
    fields = [[line.fields[place] for place in places if place < len(line.fields)] for line in rows]
    marks = usual_marks(fields, len(places), given)
    numbers = [field for row in fields for field in row if is_number(field)]
    marked = any(mark in number for number in numbers for mark in ",.")
    if given is None and delimiter == "," and not layout.named and numbers and not marked:
        raise SurveyError(DECIMAL_COMMA, file=file, line=rows[0].line, count=layout.width)
    return marks
