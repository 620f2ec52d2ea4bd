"""Points from delimited text, with every line accounted for.

The text is worked on in blocks of whole lines as arrays of bytes; fields and numbers of all lines of
a block are found at once. Only lines with quotes and fields in unusual forms are looked at singly.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from typing import Any, Dict, List, Mapping, Optional, Sequence, Tuple, Union

import numpy as np
from pyproj import CRS

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, silent
from ..units import LengthUnit
from . import rejects as reject
from .assemble import gather
from .blocks import Block, read_block
from .changed_signs import with_one_sign
from .columns import ROLES, ColumnMap, parse_columns
from .comments import find_comment
from .convert import Plan, Tally
from .delimiters import DELIMITERS
from .detect import settle_form, settle_marks
from .fixed_places import cut_at_places
from .given import Given
from .layout import NO_SUCH_COLUMN, Header, Layout, Shape, doubts, lay_out, roles_of_map
from .plan_columns import SUPPORTING
from .pointfile import FileFormat, PointFile
from .questions import QuestionError, Topic
from .recognise import look_at, recognise_look
from .recognition import Recognition
from .said_units import DEGREES_IN, AngleForm
from .sections import read_parts
from .source import TextSource, load_text
from .words import read_word

ONLY_HEADER = Text(
    "points.only_header",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: there is a header but no data line; export the survey again."),
)
NO_POINTS = Text(
    "points.no_points",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: none of the {count} data lines is a point with delimiter {delimiter} and "
        "decimal mark '{decimal}' (here: {reason}); check --columns, --delimiter and --decimal.",
    ),
)
TEXT_IN_EVERY_LINE = Text(
    "points.text_in_every_line",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: column {column}, read as {role}, holds no number in any line (here "
        "'{value}'); check --columns and --decimal (read with delimiter {delimiter}, decimal mark "
        "'{decimal}').",
    ),
)
NO_VALUE_IN_ANY_LINE = Text(
    "points.no_value_in_any_line",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: column {column}, read as {role}, cannot be read in any line; check --columns."
    ),
)
TOO_FEW_EVERYWHERE = Text(
    "points.too_few_everywhere",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: {role} is column {column}, but the lines have {count} columns with "
        "delimiter {delimiter}; check --delimiter and --columns.",
    ),
)
REJECTED = Text(
    "points.rejected",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} lines are no points, the first is line {line}; the rejects give each line with its reason.",
    ),
    one=QT_TRANSLATE_NOOP("core", "{file}: line {line} is no point; the rejects give its reason."),
)
UNREADABLE_VALUES = Text(
    "points.unreadable_values",
    QT_TRANSLATE_NOOP(
        "core", "{file}: {count} values of {role} cannot be read and count as unknown, the first in line {line}."
    ),
    one=QT_TRANSLATE_NOOP("core", "{file}: the value of {role} in line {line} cannot be read and counts as unknown."),
)
SHORT_LINES = Text(
    "points.short_lines",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} points have fewer columns than the rest, the first in line {line}; what is "
        "missing counts as unknown.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "{file}: the point of line {line} has fewer columns than the rest; what is missing counts as unknown."
    ),
)
GEOGRAPHIC = Text(
    "points.geographic",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: columns {first} and {second} are longitude and latitude in degrees, but plan coordinates are needed "
        "here; transform them to a projected CRS first.",
    ),
)
TOOK = Text("points.took", QT_TRANSLATE_NOOP("core", "{file}: read as {columns} with delimiter {delimiter}."))
NOTE = Text("points.note", QT_TRANSLATE_NOOP("core", "{file}: {note}."))


def read_points(
    path: PathLike,
    *,
    columns: Optional[Union[str, ColumnMap]] = None,
    delimiter: Optional[str] = None,
    decimal: Optional[str] = None,
    encoding: Optional[str] = None,
    unit: Optional[LengthUnit] = None,
    height_unit: Optional[LengthUnit] = None,
    crs: Optional[Any] = None,
    comment: Optional[str] = "auto",
    header: Optional[bool] = None,
    layer: str = "",
    geographic: bool = False,
    progress: Progress = silent,
    **values: Any,
) -> PointFile:
    """Read survey points from delimited text.

    ``columns``: see :func:`.columns.parse_columns`; without it they are recognised (:mod:`.recognise`), and what
    header, values and ``crs`` leave open is an error that carries the questions and their answers.
    ``delimiter``, ``decimal``, ``encoding``, ``header``: None to find out.
    ``unit``: of easting, northing and sigma_h, None for what the header says, else that of ``crs`` (metre without
    one); ``height_unit``: of height and sigma_v, None for what the header says, else that of the height axis of
    ``crs``, else ``unit``. ``values``: what else the user says of the values, see :class:`.given.Given`.
    ``comment``: lines that start with it are comments, None or "" for no such lines, "auto" to find out.
    ``layer``: of a file of several layers, the one to read. ``geographic``: whether the caller takes a file in
    degrees, see :class:`PointFile`; an error otherwise.

    A line without a finite easting, northing and height becomes a reject. An optional value that
    cannot be read becomes unknown and is counted in a message. Points + rejects + comments + blanks +
    header = lines, checked on each run. Raises SurveyError when no point can be read at all.
    """
    given = Given(unit, height_unit, **values)
    source = load_text(path, encoding, layer)
    return read_source(
        source, columns, delimiter, decimal, crs, comment, header, geographic, given, progress
    )  # fmt: skip


def read_source(
    source: TextSource, columns: Optional[Union[str, ColumnMap]], delimiter: Optional[str], decimal: Optional[str],
    crs: Optional[Any], comment: Optional[str], header: Optional[bool], geographic: bool, given: Given,
    progress: Progress,
) -> PointFile:  # fmt: skip
    """As :func:`read_points`, from text that was loaded already; a file of several parts part by part."""
    mapping = parse_columns(columns) if isinstance(columns, str) else columns
    source, placed = cut_at_places(source, mapping)
    if placed is not mapping:
        mapping, delimiter = placed, "\t"
    elif source.table is None and delimiter is None:
        source, changed = with_one_sign(source, find_comment(source, comment).mark)
        source = replace(source, messages=(*source.messages, *changed))

    def read(part: TextSource, columns: Optional[ColumnMap]) -> PointFile:
        return _read_part(part, columns, delimiter, decimal, crs, comment, header, geographic, given, progress)

    return read_parts(source, comment, mapping, read)


def _read_part(
    source: TextSource, mapping: Optional[ColumnMap], delimiter: Optional[str], decimal: Optional[str],
    crs: Optional[Any], comment: Optional[str], header: Optional[bool], geographic: bool, given: Given,
    progress: Progress,
) -> PointFile:  # fmt: skip
    own = crs_of_table(source)
    crs = crs if own is None or own.is_geographic else own
    form = settle_form(source, delimiter, comment, header, mapping)
    mapped = None if mapping is None else roles_of_map(source.file, mapping, form.header)
    look = look_at(form, decimal, crs, given, mapped)
    found = recognise_look(look)
    _ask(found, form.shape, mapping is not None)
    layout = lay_out(source.file, mapping, form.header, form.shape, _places(found) if mapping is None else None)
    marks = settle_marks(source.file, decimal, form.delimiter, form.sample, form.header, layout)
    degrees = "longitude" in layout.coordinates
    if degrees and not geographic:
        first, second = (layout.roles[role] + 1 for role in layout.coordinates[:2])
        raise SurveyError(GEOGRAPHIC, file=source.file, first=first, second=second)
    units = found.units
    plan = Plan(
        layout, form.delimiter, marks.decimal, form.comment, form.shape.width,
        form.header.line if form.header is not None and not form.header.comment else 0,
        source.lines if source.cut_off else 0, _factors(units, form.header, layout, found.turned), found.o_means,
        marks.thousands,
        given.no_value or (), found.angles, found.sides, found.month_first, found.written,
    )  # fmt: skip
    blocks = _read_blocks(form.source, plan, progress)
    _check_columns(source.file, blocks, plan, mapping)
    used = FileFormat(
        form.delimiter, marks.decimal, source.encoding, form.header,
        {role: place + 1 for role, place in layout.roles.items()}, units["easting"], units["height"],
    )  # fmt: skip
    read = gather(form.source, blocks, used, crs, plan, given, found.heights_of, look.above)
    notes = [
        *source.messages,
        *form.notes,
        *(_told(found) if mapping is None else found.messages),
        *doubts(source.file, layout, form.header, units, mapping is not None),
        *_notes(source.file, blocks, len(read.rejects), read.rejects.line),
        *read.messages,
    ]
    return replace(
        read, messages=tuple(notes), recognition=found if mapping is None else None, own_crs=own,
        unsigned=degrees and found.unsigned,
    )  # fmt: skip


def crs_of_table(source: TextSource) -> Optional[Any]:
    """The pyproj CRS that a table of geometries says it is in, None for none."""
    if source.table is None or not source.table.crs:
        return None
    crs = CRS.from_user_input(source.table.crs)
    return crs if crs.is_geographic or crs.is_projected else None


def _ask(found: Recognition, shape: Shape, mapped: bool) -> None:
    """Raise SurveyError where only the user can say what the columns are, or how their values are written."""
    if mapped:
        asked = [one for one in found.questions if one.stops and one.topic in _OF_VALUES]
        if asked:
            raise QuestionError(found.file, asked, shape.first)
        return
    if not found.decided or len(set(found.guesses[0].columns)) < 3:
        raise found.error(shape.first)


#: What is asked though the user named the columns.
_OF_VALUES = (Topic.UNIT, Topic.HEIGHT_UNIT, Topic.ANGLES, Topic.LETTER, Topic.CRS)


def _places(found: Recognition) -> Dict[str, int]:
    return {role: column - 1 for role, column in found.guesses[0].columns.items()}


def _factors(
    units: Mapping[str, LengthUnit], header: Optional[Header], layout: Layout, turned: Sequence[str]
) -> Dict[str, float]:
    """Metres in the unit of each length, degrees in that of the tilt; -1 for angles that count west or south."""
    factors = {**{role: each.metres for role, each in units.items()}, **dict.fromkeys(turned, -1.0)}
    place = layout.roles.get("tilt", -1)
    if header is not None and 0 <= place < len(header.words):
        factors["tilt"] = DEGREES_IN.get(read_word(header.words[place]).angle or AngleForm.DEGREES, 1.0)
    return factors


def _told(found: Recognition) -> List[Message]:
    """What was taken for what, unless the header says all of it."""
    notes: List[Message] = []
    guess = found.guesses[0]
    if not found.explicit:
        notes.append(message(TOOK, file=found.file, columns=guess.mapping, delimiter=_spoken(found.delimiter)))
        reasons = [reason for reason in guess.reasons if reason.text not in SUPPORTING]
        notes += [message(NOTE, file=found.file, note=reason) for reason in reasons]
    notes += [message(NOTE, file=found.file, note=one.text) for one in found.questions if not one.stops]
    return [*notes, *found.messages]


def _read_blocks(source: TextSource, plan: Plan, progress: Progress) -> List[Block]:
    text = np.frombuffer(source.data, np.uint8)
    blocks: List[Block] = []
    line = 1
    for start, end in source.blocks():
        progress(start / len(text), "points")
        blocks.append(read_block(text[start:end], line, plan))
        line += blocks[-1].lines
    progress(1.0, "points")
    return blocks


def _check_columns(file: str, blocks: List[Block], plan: Plan, mapping: Optional[ColumnMap]) -> None:
    """Raise SurveyError when no line is a point, or a column of the mapping is missing or text throughout."""
    count = sum(len(block.points.line) for block in blocks)
    if not any(block.lines - block.comments - block.blanks - block.header for block in blocks):
        raise SurveyError(ONLY_HEADER, file=file, line=plan.header_line)
    if not count:
        raise _nothing_read(file, [item for block in blocks for item in block.rejects], plan)
    if mapping is None:
        return
    widest = max(block.points.widest for block in blocks)
    for role, place in plan.layout.roles.items():
        if place >= widest:
            raise SurveyError(NO_SUCH_COLUMN, file=file, column=place + 1, role=role, count=widest)
        tally = _sum_tally(blocks, role)
        if tally.count == count:
            raise SurveyError(NO_VALUE_IN_ANY_LINE, file=file, line=tally.first, column=place + 1, role=role)


def _sum_tally(blocks: List[Block], role: str) -> Tally:
    return sum((block.points.unreadable.get(role, Tally()) for block in blocks), Tally())


def _nothing_read(file: str, refused: List[Tuple[int, Message]], plan: Plan) -> SurveyError:
    """Why nothing was read, by the most common reason."""
    common, _ = Counter(reason.text.code for _, reason in refused).most_common(1)[0]
    line, reason = next(item for item in refused if item[1].text.code == common)
    where = {"file": file, "line": line, "delimiter": _spoken(plan.delimiter)}
    if common == reject.FEW_COLUMNS.code:
        return SurveyError(TOO_FEW_EVERYWHERE, **where, **reason.values)
    if common == reject.NOT_A_NUMBER.code:
        return SurveyError(TEXT_IN_EVERY_LINE, **where, **reason.values, decimal=plan.decimal)
    return SurveyError(NO_POINTS, **where, count=len(refused), decimal=plan.decimal, reason=reason)


def _spoken(delimiter: str) -> str:
    return DELIMITERS.get(delimiter, f"'{delimiter}'")


def _notes(file: str, blocks: List[Block], rejected: int, lines: np.ndarray) -> List[Message]:
    """What the reader met that the user should know."""
    notes = []
    if rejected:
        notes.append(message(REJECTED, file=file, count=rejected, line=int(lines[0])))
    for role in ROLES:
        tally = _sum_tally(blocks, role)
        if tally.count:
            notes.append(message(UNREADABLE_VALUES, file=file, count=tally.count, role=role, line=tally.first))
    short = sum((block.points.short for block in blocks), Tally())
    if short.count:
        notes.append(message(SHORT_LINES, file=file, count=short.count, line=short.first))
    return notes
