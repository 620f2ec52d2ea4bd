"""Points to set out as a table for a data collector, with the control points and the usual cautions."""

from __future__ import annotations

import csv
import re
from dataclasses import dataclass
from typing import Any, Callable, Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike, replace_file
from ..georeference.control import ControlPoints
from ..georeference.record import crs_name
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..units import LengthUnit, SiteUnits
from .setout import ON_CONTROL, SetOut, lengths
from .text_rows import plain_number

#: Columns that a table may have, by the word for them.
COLUMNS = (
    "name", "easting", "northing", "design_height", "ground_height", "cut_fill", "cut", "fill", "sigma", "code",
    "station", "offset",
)  # fmt: skip
USUAL = ("name", "easting", "northing", "design_height", "code", "cut_fill", "sigma")

UNKNOWN_COLUMN = Text(
    "setout.unknown_column",
    QT_TRANSLATE_NOOP("core", "“{word}” is no column of a set-out table; choose among {known}."),
)
COLUMN_TWICE = Text("setout.column_twice", QT_TRANSLATE_NOOP("core", "The column “{word}” is asked for twice."))
COLUMN_NEEDED = Text(
    "setout.column_needed",
    QT_TRANSLATE_NOOP("core", "A set-out table needs the columns name, easting and northing; “{word}” is missing."),
)

WHAT = Text("setout.what", QT_TRANSLATE_NOOP("core", "Points to set out: {count}, control points: {control}."))
SYSTEM = Text(
    "setout.system",
    QT_TRANSLATE_NOOP(
        "core",
        "Coordinates in {crs}; lengths and heights in {unit} (1 {unit} = {metres} m); {decimals} decimals. Cut and "
        "fill are design less existing ground: above 0 fill, below 0 cut.",
    ),
)
GRID_LENGTHS = Text(
    "setout.grid_lengths",
    QT_TRANSLATE_NOOP(
        "core",
        "These are coordinates of the grid: a distance measured on the ground differs from theirs by the combined "
        "factor of the site.",
    ),
)
CAUTIONS = (
    Text(
        "setout.caution_control",
        QT_TRANSLATE_NOOP(
            "core",
            "Check on the control points before, during and after the work; set nothing out while they are off by more "
            "than the job's tolerance.",
        ),
    ),
    Text(
        "setout.caution_buried",
        QT_TRANSLATE_NOOP(
            "core", "Have buried services located before anything is dug or driven in; they are not in this table."
        ),
    ),
    Text(
        "setout.caution_boundary",
        QT_TRANSLATE_NOOP(
            "core",
            "This is no survey of boundaries. Marks of property, and set-out that others build on, are for a licensed "
            "professional under local rules, who also checks the design against the issued drawings.",
        ),
    ),
    Text(
        "setout.caution_machine",
        QT_TRANSLATE_NOOP(
            "core",
            "For machine guidance: load it, then check at several points of known height, by a person who is not "
            "on the machine's path.",
        ),
    ),
)


@dataclass(frozen=True)
class TableForm:
    """How a table is written: ``columns`` in their order, the ``unit`` of all lengths, ``decimals`` of coordinates.

    ``delimiter``: between cells. ``header``: a line of column names. ``comments``: lines with # at the head.
    """

    columns: Tuple[str, ...] = USUAL
    unit: LengthUnit = LengthUnit.METRE
    decimals: int = 3
    delimiter: str = ","
    header: bool = True
    comments: bool = True


def parse_columns(text: str) -> Tuple[str, ...]:
    """Column words parted by commas, semicolons or blanks, in their order. Raises SurveyError."""
    words = tuple(word.lower() for word in re.split(r"[,;\s]+", text.strip()) if word)
    for number, word in enumerate(words):
        if word not in COLUMNS:
            raise SurveyError(UNKNOWN_COLUMN, word=word, known=", ".join(COLUMNS))
        if word in words[:number]:
            raise SurveyError(COLUMN_TWICE, word=word)
    for word in ("name", "easting", "northing"):
        if word not in words:
            raise SurveyError(COLUMN_NEEDED, word=word)
    return words


def check_control(setout: SetOut, control: ControlPoints) -> None:
    """Raise SurveyError where a point to set out has the name of a control point."""
    known = {str(name).casefold() for name in control.name}
    for name in setout.name:
        if str(name).casefold() in known:
            raise SurveyError(ON_CONTROL, name=name)


def notes_of(setout: SetOut, control: Optional[ControlPoints], form: TableForm) -> Tuple[Message, ...]:
    """What is said with the points: what they are, their system, and the cautions."""
    system = message(
        SYSTEM,
        crs=crs_name(setout.crs),
        unit=form.unit.symbol,
        metres=f"{form.unit.metres:.12g}",
        decimals=form.decimals,
    )
    grid = () if setout.crs is None else (message(GRID_LENGTHS),)
    count = message(WHAT, count=len(setout), control=0 if control is None else len(control))
    return (count, system, *grid, *(message(text) for text in CAUTIONS))


def write_setout(
    setout: SetOut,
    path: PathLike,
    form: TableForm = TableForm(),
    control: Optional[ControlPoints] = None,
    translate: Callable[[str], str] = str,
) -> None:
    """Write the points, and after them the control points (code CONTROL), as delimited text in UTF-8.

    Unknown values are empty. The file appears only when it is whole. Raises SurveyError for clashing names and when it
    cannot be written.
    """
    if control is not None:
        check_control(setout, control)
    rows = _cells(setout, form)
    if control is not None:
        rows += _control_cells(control, form)
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        if form.comments:
            stream.writelines(
                f"# {note.say(translate, units=SiteUnits(form.unit, form.unit))}\n"
                for note in notes_of(setout, control, form)
            )
        writer = csv.writer(stream, delimiter=form.delimiter, lineterminator="\n")
        if form.header:
            writer.writerow(form.columns)
        writer.writerows(rows)


def write_notes(
    setout: SetOut,
    path: PathLike,
    form: TableForm,
    control: Optional[ControlPoints] = None,
    translate: Callable[[str], str] = str,
) -> None:
    """The same notes in a text of their own, for data collectors that take no comments."""
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        stream.writelines(
            f"{note.say(translate, units=SiteUnits(form.unit, form.unit))}\n"
            for note in notes_of(setout, control, form)
        )


def _cells(setout: SetOut, form: TableForm) -> List[List[str]]:
    difference = setout.cut_fill
    known: Dict[str, Any] = {
        "name": setout.name.tolist(),
        "code": [str(code) for code in setout.code.tolist()],
        "easting": _numbers(lengths(setout.easting, form.unit), form.decimals),
        "northing": _numbers(lengths(setout.northing, form.unit), form.decimals),
        "design_height": _numbers(lengths(setout.design, form.unit), form.decimals),
        "ground_height": _numbers(lengths(setout.ground, form.unit), form.decimals),
        "cut_fill": _numbers(lengths(difference, form.unit), form.decimals),
        "cut": _numbers(lengths(np.where(difference < 0, -difference, np.nan), form.unit), form.decimals),
        "fill": _numbers(lengths(np.where(difference > 0, difference, np.nan), form.unit), form.decimals),
        "sigma": _numbers(lengths(setout.sigma, form.unit), form.decimals),
        "station": _numbers(setout.station, form.decimals),
        "offset": _numbers(lengths(setout.offset, form.unit), form.decimals),
    }
    return [list(row) for row in zip(*(known[column] for column in form.columns))]


def _control_cells(control: ControlPoints, form: TableForm) -> List[List[str]]:
    """Their height stands where the design's does: it is the height that the pole is to show."""
    known: Dict[str, Sequence[str]] = {
        "name": [str(name) for name in control.name],
        "easting": _numbers(lengths(control.easting, form.unit), form.decimals),
        "northing": _numbers(lengths(control.northing, form.unit), form.decimals),
        "design_height": _numbers(lengths(control.height, form.unit), form.decimals),
        "code": ["CONTROL"] * len(control),
    }
    empty = [""] * len(control)
    return [list(row) for row in zip(*(known.get(column, empty) for column in form.columns))]


def _numbers(values: np.ndarray, decimals: int) -> List[str]:
    return ["" if value != value else plain_number(value, decimals) for value in np.asarray(values, float).tolist()]
