"""What a file looks like, from its first lines: delimiter, comments, header, decimal mark."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .bracketed import without_brackets
from .columns import ColumnMap
from .comments import CommentSign, find_comment
from .delimiters import DELIMITERS, FIXED, settle_delimiter
from .divided_numbers import made_whole
from .fixed_places import ask_of_glued
from .fixed_width import find_cuts, with_tabs
from .header_line import find_header, header_below, most_common, with_date_and_time, words_joined
from .keyed import without_keys
from .layout import MOST_COLUMNS, TOO_MANY_COLUMNS, Header, Layout, Shape
from .level_words import without_levels
from .lines_of_text import (
    Sample,
    split_sample,
    take_sample,
)
from .number_marks import Marks, is_number, usual_marks
from .parted_degrees import joined_parts, joined_words, runs_by_values, runs_of_parts
from .plain_lines import made_plain
from .questions import Answer, Question, QuestionError, Topic
from .source import TextSource
from .thousands_apart import with_whole_groups
from .unit_rows import with_rows_of_units, with_units_below

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
    notes = [message(COMMENTED_OUT, file=source.file, count=commented)] if commented else []
    keyed = None
    if source.table is not None or delimiter is not None:
        source = without_levels(source, mark) or source
    else:
        source = made_plain(source, mark)
        keyed = without_keys(source, mark)
        if keyed is None:
            source, told = made_whole(without_brackets(with_whole_groups(source, mark), mark), mark)
            notes += told
    if keyed is not None:
        source, delimiter = keyed.source, "\t"
    sample = take_sample(source, mark)
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
    elif delimiter is None and sign in ("", " "):
        ask_of_glued(source.file, sample)
    sign = sign or settle_delimiter(source.file, delimiter, sample)
    sample = split_sample(sample, sign)
    head = Header(0, keyed.keys, comment=True) if keyed is not None else find_header(header, columns, sample)
    if head is None and header is None:
        head = header_below(source, mark, sign, columns)
    if head is not None:
        head = with_date_and_time(head, sample, sign)
        head = with_units_below(words_joined(head, sample, sign), sample)
        source = with_rows_of_units(source, head, sample, mark, sign)
        runs = runs_of_parts(head.words) if sign != " " else []
        if runs:
            source = joined_parts(source, sign, runs)
            head = Header(head.line, joined_words(head.words, runs), head.comment)
            sample = split_sample(take_sample(source, mark), sign)
    elif not cuts:
        runs = runs_by_values([line.fields for line in sample.lines])
        if runs:
            source = joined_parts(source, sign, runs)
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


def shape_of(sample: Sample, header: Optional[Header], delimiter: str, file: str) -> Shape:
    """How wide the data lines are. Raises SurveyError beyond ``MOST_COLUMNS``."""
    rows = [line.fields for line in sample.lines if header is None or line.line > header.line] or [()]
    counts = tuple(len(row) for row in rows)
    width = most_common(counts)
    filled = most_common([len(row) - _empty_at_end(row) for row in rows])
    widest = max(width, len(header.words) if header else 0)
    if widest > MOST_COLUMNS:
        raise SurveyError(
            TOO_MANY_COLUMNS, file=file, most=MOST_COLUMNS, delimiter=DELIMITERS.get(delimiter, delimiter)
        )
    prose = header is not None and _goes_on(rows, [line.text for line in sample.lines], len(header.words), delimiter)
    return Shape(width, filled, counts, delimiter == " ", sample.lines[0].text.strip(), prose)


def _goes_on(rows: Sequence[Sequence[str]], texts: Sequence[str], width: int, delimiter: str) -> bool:
    """Whether the text in the last of ``width`` columns has the delimiter in it, as a note without quotes: lines are
    of different lengths or a blank follows where it goes on, and what stands there is words.
    """
    longer = [row for row in rows if len(row) > width > 3]
    if not longer or delimiter == " " or any(len(row) < width - 1 for row in rows):
        return False
    words = [bool(row[width - 1]) and not is_number(row[width - 1]) for row in longer]
    more = [field for row in longer for field in row[width:]]
    if not all(words) or sum(map(is_number, more)) > 0.2 * len(more):
        return False
    blanks = sum(text.count(delimiter + " ") >= 1 for text in texts) >= 0.9 * len(longer)
    tight = all(text.count(delimiter + " ") < width - 1 for text in texts)
    return len({len(row) for row in rows}) > 1 or (blanks and tight)


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
