"""Points from delimited text, with every line accounted for.

The text is worked on in blocks of whole lines as arrays of bytes; fields and numbers of all lines of
a block are found at once. Only lines with quotes and fields in unusual forms are looked at singly.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
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
    find_header,
    settle_decimal,
    settle_delimiter,
    shape_of,
    split_sample,
    take_sample,
)
from .layout import NO_SUCH_COLUMN, Header, doubts, lay_out, new_name
from .pointset import PointSet, make_points
from .rejects import LineAccount, Rejects
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
)
UNREADABLE_VALUES = Text(
    "points.unreadable_values",
    QT_TRANSLATE_NOOP(
        "core", "{file}: {count} values of {role} cannot be read and count as unknown, the first in line {line}."
    ),
)
SHORT_LINES = Text(
    "points.short_lines",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} points have fewer columns than the rest, the first in line {line}; what is "
        "missing counts as unknown.",
    ),
)


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
    """A survey file that was read: its points, the lines that are none, and the account of all lines."""

    points: PointSet
    rejects: Rejects
    account: LineAccount
    format: FileFormat
    messages: Tuple[Message, ...]


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
    comment: Optional[str] = "#",
    header: Optional[bool] = None,
    progress: Progress = silent,
) -> PointFile:
    """Read survey points from delimited text.

    ``columns``: see :func:`.columns.parse_columns`; without it the header's words must name easting,
    northing and height. ``delimiter``, ``decimal``, ``encoding``, ``header``: None to find out.
    ``unit``: of easting, northing and sigma_h, None for that of ``crs`` (metre without one);
    ``height_unit``: of height and sigma_v, None for that of the height axis of ``crs``, else ``unit``.
    ``comment``: lines that start with it are comments, None or "" for no such lines.

    A line without a finite easting, northing and height becomes a reject. An optional value that
    cannot be read becomes unknown and is counted in a message. Points + rejects + comments + blanks +
    header = lines, checked on each run. Raises SurveyError when no point can be read at all.
    """
    mapping = parse_columns(columns) if isinstance(columns, str) else columns
    source = load_text(path, encoding)
    sample = take_sample(source, comment or "")
    sign = settle_delimiter(source.file, delimiter, sample)
    sample = split_sample(sample, sign)
    head = find_header(header, mapping, sample)
    shape = shape_of(sample, head, sign, source.file)
    layout = lay_out(source.file, mapping, head, shape)
    mark = settle_decimal(source.file, decimal, sign, sample, head, layout)
    units = _units(unit, height_unit, crs)
    plan = Plan(
        layout, sign, mark, comment or "", shape.width,
        head.line if head is not None and not head.comment else 0,
        source.lines if source.cut_off else 0,
        {role: each.metres for role, each in units.items()},
    )  # fmt: skip
    blocks = _read_blocks(source, plan, progress)
    _check_columns(source.file, blocks, plan, mapping)
    used = FileFormat(
        sign, mark, source.encoding, head, {role: place + 1 for role, place in layout.roles.items()},
        units["easting"], units["height"],
    )  # fmt: skip
    notes = [*source.messages, *doubts(source.file, layout, head, units), *_notes(source.file, blocks)]
    return _gather(source, blocks, used, notes, crs)


def _units(unit: Optional[LengthUnit], height_unit: Optional[LengthUnit], crs: Optional[Any]) -> Dict[str, LengthUnit]:
    """The unit of each coordinate and sigma: as said, else as the axes of the CRS."""
    axes = [] if crs is None else crs.axis_info
    plan = unit or (axis_unit(axes[0]) if axes else None) or LengthUnit.METRE
    rise = height_unit or (axis_unit(axes[2]) if len(axes) > 2 else None) or plan
    return {"easting": plan, "northing": plan, "sigma_h": plan, "height": rise, "sigma_v": rise}


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
    source: TextSource, blocks: List[Block], used: FileFormat, notes: List[Message], crs: Optional[Any]
) -> PointFile:
    parts = [block.points for block in blocks]
    columns = {role: np.concatenate([part.columns[role] for part in parts]) for role in parts[0].columns}
    extra: Dict[str, np.ndarray] = {role: columns.pop(role) for role in ("satellites", "pdop") if role in columns}
    for name in parts[0].extra:
        values = np.concatenate([part.extra[name] for part in parts])
        if name.startswith("column_") and used.header is None and not any(values):
            continue  # delimiters at the ends of all lines
        extra[new_name(name, list(extra))] = values
    line = np.concatenate([part.line for part in parts])
    points = make_points(**columns, source_line=line, extra=extra, crs=crs, source=source.file)
    refused = [item for block in blocks for item in block.rejects]
    text = np.empty(len(refused), object)
    text[:] = [item[1] for item in refused]
    rejects = Rejects(np.array([item[0] for item in refused], np.int64), text, tuple(item[2] for item in refused))
    account = LineAccount(
        source.lines, len(points), len(rejects),
        *(sum(getattr(block, what) for block in blocks) for what in ("comments", "blanks", "header")),
    )  # fmt: skip
    return PointFile(points, rejects, account, used, tuple(notes))
