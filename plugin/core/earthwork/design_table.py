"""Small tables that describe a design: CSV with named columns."""

from __future__ import annotations

import math
from typing import Dict, List, Optional, Sequence, Tuple

from ..files import PathLike, read_table
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

CANNOT_READ = Text(
    "earthwork.table_cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the table cannot be read ({reason}). Check the path and the file."),
)
NOT_TEXT = Text(
    "earthwork.table_not_text",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is not a text table. Save it as CSV."),
)
NO_ROWS = Text(
    "earthwork.table_empty",
    QT_TRANSLATE_NOOP("core", "{file}: the table has no rows. Give a header with the columns {columns}, and rows."),
)
BAD_COLUMN = Text(
    "earthwork.table_column",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: column {column} is unknown, missing or twice. The columns are {columns}."
    ),
)
TOO_LONG = Text(
    "earthwork.table_row",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: more cells than columns. Use one separator all through."),
)
BAD_NUMBER = Text(
    "earthwork.table_number",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: {column} is “{value}”, which is no number here. Mend the cell."),
)


def read_rows(path: PathLike, columns: Sequence[str], needed: Sequence[str]) -> List[Tuple[int, Dict[str, str]]]:
    """Line number and cells by column of each row of a table. Raises SurveyError naming file and line."""
    file, said = str(path), ", ".join(columns)
    records = read_table(path, CANNOT_READ, NOT_TEXT)
    if len(records) < 2:
        raise SurveyError(NO_ROWS, file=file, columns=said)
    line, head = records[0]
    place: Dict[str, int] = {}
    for number, name in enumerate(cell.casefold() for cell in head):
        if name in place or name not in columns:
            raise SurveyError(BAD_COLUMN, file=file, line=line, column=head[number] or "?", columns=said)
        place[name] = number
    for name in needed:
        if name not in place:
            raise SurveyError(BAD_COLUMN, file=file, line=line, column=name, columns=said)
    found = []
    for line, cells in records[1:]:
        if any(cells[len(place) :]):
            raise SurveyError(TOO_LONG, file=file, line=line)
        cells = cells + [""] * (len(place) - len(cells))
        found.append((line, {name: cells[place[name]] if name in place else "" for name in columns}))
    return found


def read_value(file: str, line: int, column: str, cells: Dict[str, str], empty: Optional[float] = None) -> float:
    """The number in a cell; ``empty`` where it is. Raises SurveyError."""
    text = cells[column]
    if not text and empty is not None:
        return empty
    try:
        value = float(text)
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise SurveyError(BAD_NUMBER, file=file, line=line, column=column, value=text)
    return value
