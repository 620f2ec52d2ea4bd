"""Points from delimited text, with every line accounted for.

The text is worked on in blocks of whole lines as arrays of bytes; fields and numbers of all lines of
a block are found at once. Only lines with quotes and fields in unusual forms are looked at singly.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from typing import Any, Dict, List, Optional, Tuple, Union

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, silent
from ..units import LengthUnit, axis_unit
from . import rejects as reject
from .blocks import Block, read_block
from .columns import ROLES, ColumnMap, parse_columns
from .convert import Plan, Tally
from .detect import (
    DELIMITERS,
    find_comment,
    find_header,
    settle_decimal,
    settle_delimiter,
    shape_of,
    split_sample,
    take_sample,
)
from .geographic import GeographicPoints, HeightKind
from .layout import NO_SUCH_COLUMN, TWO_COLUMNS, Header, Shape, doubts, lay_out, new_name
from .plan_columns import SUPPORTING
from .pointset import COLUMNS, PointSet, make_points
from .reading import Look
from .recognise import look_at, recognise_look
from .recognition import Recognition
from .rejects import LineAccount, Rejects, make_rejects
from .source import TextSource, load_text

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


@dataclass(frozen=True)
class FileFormat:
    """How a file was read. ``delimiter``: one character, a space for runs of spaces and tabs. ``encoding``: Python's
    name. ``header``: the header line, None where there is none. ``columns``: role to column number from 1.
    """

    delimiter: str
    decimal: str
    encoding: str
    header: Optional[Header]
    columns: Dict[str, int]
    unit: LengthUnit
    height_unit: LengthUnit


@dataclass(frozen=True)
class PointFile:
    """A survey file that was read: its points, the lines that are none, and the account of all lines.

    ``geographic``: the positions of a file in degrees; easting and northing of its ``points`` are nan until they
    are transformed. ``recognition``: what was found out about the columns, None where the user named them.
    """

    points: PointSet
    rejects: Rejects
    account: LineAccount
    format: FileFormat
    messages: Tuple[Message, ...]
    geographic: Optional[GeographicPoints] = None
    recognition: Optional[Recognition] = None


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
    geographic: bool = False,
    progress: Progress = silent,
) -> PointFile:
    """Read survey points from delimited text.

    ``columns``: see :func:`.columns.parse_columns`; without it they are recognised (:mod:`.recognise`), and what
    header, values and ``crs`` leave open is an error that lists the answers.
    ``delimiter``, ``decimal``, ``encoding``, ``header``: None to find out.
    ``unit``: of easting, northing and sigma_h, None for that of ``crs`` (metre without one);
    ``height_unit``: of height and sigma_v, None for that of the height axis of ``crs``, else ``unit``.
    ``comment``: lines that start with it are comments, None or "" for no such lines, "auto" to find out.
    ``geographic``: whether the caller takes a file in degrees, see :class:`PointFile`; an error otherwise.

    A line without a finite easting, northing and height becomes a reject. An optional value that
    cannot be read becomes unknown and is counted in a message. Points + rejects + comments + blanks +
    header = lines, checked on each run. Raises SurveyError when no point can be read at all.
    """
    mapping = parse_columns(columns) if isinstance(columns, str) else columns
    source = load_text(path, encoding)
    start = find_comment(source, comment)
    sample = take_sample(source, start)
    sign = settle_delimiter(source.file, delimiter, sample)
    sample = split_sample(sample, sign)
    head = find_header(header, mapping, sample)
    shape = shape_of(sample, head, sign, source.file)
    found = None
    if mapping is None:
        found = _recognised(look_at(source, sample, sign, decimal, start, head, shape, crs, unit, height_unit), shape)
    layout = lay_out(source.file, mapping, head, shape, _places(found))
    mark = settle_decimal(source.file, decimal, sign, sample, head, layout)
    degrees = "longitude" in layout.coordinates
    if degrees and not geographic:
        first, second = (layout.roles[role] + 1 for role in layout.coordinates[:2])
        raise SurveyError(GEOGRAPHIC, file=source.file, first=first, second=second)
    units = _units_found(found) if found is not None else _units(unit, height_unit, None if degrees else crs)
    plan = Plan(
        layout, sign, mark, start, shape.width,
        head.line if head is not None and not head.comment else 0,
        source.lines if source.cut_off else 0,
        {role: each.metres for role, each in units.items()}, found.o_means if found is not None else "",
    )  # fmt: skip
    blocks = _read_blocks(source, plan, progress)
    _check_columns(source.file, blocks, plan, mapping)
    used = FileFormat(
        sign, mark, source.encoding, head, {role: place + 1 for role, place in layout.roles.items()},
        units["easting"], units["height"],
    )  # fmt: skip
    notes = [
        *source.messages,
        *_told(found),
        *doubts(source.file, layout, head, units, mapping is not None),
        *_notes(source.file, blocks),
    ]
    return replace(_gather(source, blocks, used, notes, crs, layout.coordinates), recognition=found)


def _recognised(look: Look, shape: Shape) -> Recognition:
    """What the columns are. Raises SurveyError where only the user can say."""
    found = recognise_look(look)
    for one in found.questions:
        if one.text.text is TWO_COLUMNS:
            raise SurveyError(TWO_COLUMNS, **one.text.values)
    if not found.decided or len(set(found.guesses[0].columns)) < 3:
        raise found.error(shape.first)
    return found


def _places(found: Optional[Recognition]) -> Optional[Dict[str, int]]:
    return None if found is None else {role: column - 1 for role, column in found.guesses[0].columns.items()}


def _units_found(found: Recognition) -> Dict[str, LengthUnit]:
    guess = found.guesses[0]
    return _by_role(guess.unit or LengthUnit.METRE, guess.height_unit)


def _by_role(plan: LengthUnit, rise: LengthUnit) -> Dict[str, LengthUnit]:
    up = dict.fromkeys(("height", "ellipsoidal_height", "sigma_v", "pole_height"), rise)
    return {**dict.fromkeys(("easting", "northing", "sigma_h"), plan), **up}


def _told(found: Optional[Recognition]) -> List[Message]:
    """What was taken for what, unless the header says all of it."""
    if found is None:
        return []
    notes: List[Message] = []
    guess = found.guesses[0]
    if not found.explicit:
        columns = guess.mapping
        notes.append(message(TOOK, file=found.file, columns=columns, delimiter=_spoken(found.delimiter)))
        reasons = [reason for reason in guess.reasons if reason.text not in SUPPORTING]
        notes += [message(NOTE, file=found.file, note=reason) for reason in reasons]
    notes += [message(NOTE, file=found.file, note=one.text) for one in found.questions if not one.stops]
    return [*notes, *found.messages]


def _units(unit: Optional[LengthUnit], height_unit: Optional[LengthUnit], crs: Optional[Any]) -> Dict[str, LengthUnit]:
    """The unit of each coordinate and sigma: as said, else as the axes of the CRS."""
    axes = [] if crs is None else crs.axis_info
    plan = unit or (axis_unit(axes[0]) if axes else None) or LengthUnit.METRE
    rise = height_unit or (axis_unit(axes[2]) if len(axes) > 2 else None) or plan
    return _by_role(plan, rise)


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


def _nothing_read(file: str, refused: List[Tuple[int, str, Message]], plan: Plan) -> SurveyError:
    """Why nothing was read, by the most common reason."""
    common, _ = Counter(reason.text.code for _, _, reason in refused).most_common(1)[0]
    line, _, reason = next(item for item in refused if item[2].text.code == common)
    where = {"file": file, "line": line, "delimiter": _spoken(plan.delimiter)}
    if common == reject.FEW_COLUMNS.code:
        return SurveyError(TOO_FEW_EVERYWHERE, **where, **reason.values)
    if common == reject.NOT_A_NUMBER.code:
        return SurveyError(TEXT_IN_EVERY_LINE, **where, **reason.values, decimal=plan.decimal)
    return SurveyError(NO_POINTS, **where, count=len(refused), decimal=plan.decimal, reason=reason)


def _spoken(delimiter: str) -> str:
    return DELIMITERS.get(delimiter, f"'{delimiter}'")


def _notes(file: str, blocks: List[Block]) -> List[Message]:
    """What the reader met that the user should know."""
    notes = []
    count = sum(len(block.rejects) for block in blocks)
    if count:
        first = next(block.rejects[0][0] for block in blocks if block.rejects)
        notes.append(message(REJECTED, file=file, count=count, line=first))
    for role in ROLES:
        tally = _sum_tally(blocks, role)
        if tally.count:
            notes.append(message(UNREADABLE_VALUES, file=file, count=tally.count, role=role, line=tally.first))
    short = sum((block.points.short for block in blocks), Tally())
    if short.count:
        notes.append(message(SHORT_LINES, file=file, count=short.count, line=short.first))
    return notes


def _gather(
    source: TextSource, blocks: List[Block], used: FileFormat, notes: List[Message], crs: Optional[Any],
    coordinates: Tuple[str, str, str],
) -> PointFile:  # fmt: skip
    parts = [block.points for block in blocks]
    columns = {role: np.concatenate([part.columns[role] for part in parts]) for role in parts[0].columns}
    east, north, height = (columns.pop(role) for role in coordinates)
    extra: Dict[str, np.ndarray] = {role: columns.pop(role) for role in _KEPT_BESIDE if role in columns}
    for name in parts[0].extra:
        values = np.concatenate([part.extra[name] for part in parts])
        if name.startswith("column_") and used.header is None and not any(values):
            continue  # delimiters at the ends of all lines
        extra[new_name(name, list(extra))] = values
    line = np.concatenate([part.line for part in parts])
    positions = None
    if coordinates[0] == "longitude":
        kind = HeightKind.ELLIPSOIDAL if coordinates[2] == "ellipsoidal_height" else HeightKind.UNKNOWN
        positions = GeographicPoints(east, north, height, kind)
        east = north = np.full(len(line), np.nan)
    points = make_points(east, north, height, **columns, source_line=line, extra=extra, crs=crs, source=source.file)
    refused = [item for block in blocks for item in block.rejects]
    rejects = make_rejects(refused)
    account = LineAccount(
        source.lines, len(points), len(rejects),
        *(sum(getattr(block, what) for block in blocks) for what in ("comments", "blanks", "header")),
    )  # fmt: skip
    return PointFile(points, rejects, account, used, tuple(notes), positions)


#: Roles that have no column of their own in a PointSet.
_KEPT_BESIDE = tuple(role for role in ROLES if role not in {*COLUMNS, "easting", "northing", "height"})
