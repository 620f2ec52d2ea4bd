"""How the lines of a survey are drawn on its plan: a table from what a line is called to colour, width and dashes.

The table that ships with the program is a start for one's own: a CSV file with the same columns. Lines that no row
names are drawn by its last row, so that none is left out.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path
from typing import Dict, List, Optional, Sequence, Tuple

from ..files import PathLike, read_table
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

#: The table that ships with the program.
DEFAULT_SYMBOLS = Path(__file__).with_name("plan_symbols.csv")
COLUMNS = ("words", "kind", "name", "colour", "width_mm", "dashes", "mark", "every_mm")
MARKS = ("tick", "cross", "dot")
_KINDS = {"breakline": LineKind.BREAKLINE, "boundary": LineKind.BOUNDARY, "void": LineKind.VOID}

CANNOT_READ = Text(
    "plan_symbols.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the table of line symbols cannot be read ({reason}). Check the path."),
)
NOT_TEXT = Text(
    "plan_symbols.not_text",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is not a text table. Save it as CSV."),
)
WRONG_COLUMNS = Text(
    "plan_symbols.wrong_columns",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: the header must be {columns}."),
)
WRONG_CELL = Text(
    "plan_symbols.wrong_cell",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: {column} cannot be “{value}”. It must be {must}."),
)
NO_LAST_ROW = Text(
    "plan_symbols.no_last_row",
    QT_TRANSLATE_NOOP(
        "core", "{file}: the last row must have neither words nor kind, so that every line is drawn. Add one."
    ),
)
#: Names of the table that ships with the program, for their translation.
NAMES = (
    QT_TRANSLATE_NOOP("core", "Boundary of the survey"),
    QT_TRANSLATE_NOOP("core", "Not surveyed"),
    QT_TRANSLATE_NOOP("core", "Kerb or step (top)"),
    QT_TRANSLATE_NOOP("core", "Kerb or step (foot)"),
    QT_TRANSLATE_NOOP("core", "Kerb or step"),
    QT_TRANSLATE_NOOP("core", "Edge of paving"),
    QT_TRANSLATE_NOOP("core", "Bottom of a ditch, gutter"),
    QT_TRANSLATE_NOOP("core", "Edge of a ditch"),
    QT_TRANSLATE_NOOP("core", "Top of a bank"),
    QT_TRANSLATE_NOOP("core", "Top of a slope"),
    QT_TRANSLATE_NOOP("core", "Toe of a slope"),
    QT_TRANSLATE_NOOP("core", "Crown, ridge"),
    QT_TRANSLATE_NOOP("core", "Rim (top)"),
    QT_TRANSLATE_NOOP("core", "Rim (bottom)"),
    QT_TRANSLATE_NOOP("core", "Fence"),
    QT_TRANSLATE_NOOP("core", "Wall"),
    QT_TRANSLATE_NOOP("core", "Hedge"),
    QT_TRANSLATE_NOOP("core", "Building"),
    QT_TRANSLATE_NOOP("core", "Other line"),
)


@dataclass(frozen=True)
class LineSymbol:
    """A row of the table: for lines of ``kind`` (None: any) whose label begins with one of ``words`` (none: any).

    ``name``: in the legend. ``colour``: #rrggbb. ``width``: mm. ``dashes``: mm drawn and left out in turn. ``mark``:
    one of ``MARKS`` or empty, every ``every`` mm.
    """

    words: Tuple[str, ...]
    kind: Optional[LineKind]
    name: str
    colour: str
    width: float
    dashes: Tuple[float, ...]
    mark: str
    every: float

    def fits(self, label: str, kind: LineKind) -> bool:
        """Whether a line is drawn so. Words end where a blank, a number or the label ends."""
        if self.kind not in (None, kind):
            return False
        named = label.casefold()
        return not self.words or any(re.match(rf"{re.escape(word)}(?![^\W\d_])", named) for word in self.words)


def read_symbols(path: Optional[PathLike] = None) -> Tuple[LineSymbol, ...]:
    """The rows of a table, by default that of the program. Raises SurveyError for what cannot be drawn."""
    file = str(path or DEFAULT_SYMBOLS)
    found: List[LineSymbol] = []
    header: Optional[Sequence[str]] = None
    for line, cells in read_table(path or DEFAULT_SYMBOLS, CANNOT_READ, NOT_TEXT):
        if header is None:
            header = tuple(cell.casefold() for cell in cells)
            if header != COLUMNS:
                raise SurveyError(WRONG_COLUMNS, file=file, line=line, columns=",".join(COLUMNS))
            continue
        row = dict(zip(COLUMNS, cells + [""] * len(COLUMNS)))
        symbol = _symbol(row, file, line)
        if symbol.name in {one.name for one in found}:  # lines are told apart by it
            raise SurveyError(WRONG_CELL, file=file, line=line, column="name", value=symbol.name, must="≠")
        found.append(symbol)
    if not found or found[-1].words or found[-1].kind is not None:
        raise SurveyError(NO_LAST_ROW, file=file)
    return tuple(found)


def symbol_of(symbols: Sequence[LineSymbol], label: str, kind: LineKind) -> int:
    """The number of the first row that a line fits."""
    return next(number for number, symbol in enumerate(symbols) if symbol.fits(label, kind))


def _symbol(row: Dict[str, str], file: str, line: int) -> LineSymbol:
    def wrong(column: str, must: str) -> SurveyError:
        return SurveyError(WRONG_CELL, file=file, line=line, column=column, value=row[column], must=must)

    if not re.fullmatch(r"#[0-9a-fA-F]{6}", row["colour"]):
        raise wrong("colour", "#rrggbb")
    if row["kind"] and row["kind"] not in _KINDS:
        raise wrong("kind", "breakline, boundary, void")
    if row["mark"] and row["mark"] not in MARKS:
        raise wrong("mark", ", ".join(MARKS))
    if not row["name"]:
        raise wrong("name", "ABC")
    dashes = _numbers(row["dashes"])
    if dashes is None or len(dashes) % 2:
        raise wrong("dashes", "2 1 (mm)")
    width = _numbers(row["width_mm"])
    if width is None or len(width) != 1:
        raise wrong("width_mm", "> 0 (mm)")
    every = _numbers(row["every_mm"])
    if every is None or (row["mark"] and len(every) != 1):
        raise wrong("every_mm", "> 0 (mm)")
    return LineSymbol(
        tuple(word.strip().casefold() for word in row["words"].split("|") if word.strip()),
        _KINDS.get(row["kind"]),
        row["name"],
        row["colour"],
        width[0],
        dashes,
        row["mark"],
        every[0] if every else 0.0,
    )


def _numbers(text: str) -> Optional[Tuple[float, ...]]:
    """Numbers over 0 with blanks between; None if one is none."""
    try:
        found = tuple(float(word) for word in text.split())
    except ValueError:
        return None
    return found if all(0 < number < 1000 for number in found) else None
