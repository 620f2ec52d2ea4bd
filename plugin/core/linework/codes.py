"""The code table: what each field code means for the surface."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum
from pathlib import Path
from typing import Dict, Iterable, List, Mapping, Optional, Sequence, Tuple

from ..files import PathLike, read_table
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .constraints import LineKind

#: The table that ships with the program; a good start for one's own.
DEFAULT_CODES = Path(__file__).with_name("default_codes.csv")

CANNOT_READ = Text(
    "codes.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: the code table cannot be read ({reason}). Check the path and the file."),
)
NOT_TEXT = Text(
    "codes.not_text",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: this is not a text table. Save the code table as CSV."),
)
NO_ROWS = Text(
    "codes.no_rows",
    QT_TRANSLATE_NOOP("core", "{file}: the code table has no codes. Give a header code,kind,layer,close and rows."),
)
MISSING_COLUMN = Text(
    "codes.missing_column",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: column {column} is missing. The header needs code, kind and layer; close is optional.",
    ),
)
STRANGE_COLUMN = Text(
    "codes.strange_column",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: column {column} is unknown or twice. The columns are code, kind, layer and close."
    ),
)
ROW_TOO_LONG = Text(
    "codes.row_too_long",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: more cells than columns. Put quotes around text that contains the separator."
    ),
)
NO_CODE = Text(
    "codes.no_code", QT_TRANSLATE_NOOP("core", "{file}, line {line}: the code is empty. Fill it in or remove the row.")
)
TWICE = Text(
    "codes.twice",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: code {code} already stands in line {first}. Keep one of them (case does not matter).",
    ),
)
STRANGE_KIND = Text(
    "codes.strange_kind",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: kind {kind} of code {code} is unknown. Use one of {kinds}."),
)
STRANGE_CLOSE = Text(
    "codes.strange_close",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: close is {close} for code {code}. Write yes, no or nothing."),
)
CLOSE_WITHOUT_LINE = Text(
    "codes.close_without_line",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: code {code} makes no line, so it cannot close. Leave close empty or change the kind.",
    ),
)
ALWAYS_CLOSED = Text(
    "codes.always_closed",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: code {code} is a {kind} and always closes. Leave close empty or write yes."
    ),
)


class CodeKind(Enum):
    """What a code makes of its points; ``value`` is the word in the table."""

    GROUND = "ground"
    BREAKLINE = "breakline"
    BOUNDARY = "boundary"
    VOID = "void"
    NOT_GROUND = "not_ground"
    CHECK = "check"

    @property
    def line(self) -> LineKind:
        """The kind of line that points of the code form; ``LineKind.NONE`` for single points."""
        return _LINE_KINDS.get(self, LineKind.NONE)


_LINE_KINDS = {
    CodeKind.BREAKLINE: LineKind.BREAKLINE,
    CodeKind.BOUNDARY: LineKind.BOUNDARY,
    CodeKind.VOID: LineKind.VOID,
}


@dataclass(frozen=True)
class CodeRow:
    """One code: its ``kind``, the ``layer`` it is filed under, and whether its lines always ``close``."""

    code: str
    kind: CodeKind
    layer: str = ""
    close: bool = False

    @property
    def closes(self) -> bool:
        """Whether a line of this code runs back to its first point without being told."""
        return self.close or self.kind in (CodeKind.BOUNDARY, CodeKind.VOID)


@dataclass(frozen=True)
class CodeTable:
    """The codes of a survey. Case does not matter; ``source`` is the file they came from.

    Raises ValueError when a code stands twice.
    """

    rows: Tuple[CodeRow, ...]
    source: str = ""
    _by_code: Mapping[str, CodeRow] = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        by_code = {row.code.casefold(): row for row in self.rows}
        if len(by_code) != len(self.rows):
            raise ValueError("a code stands twice in the table")
        object.__setattr__(self, "_by_code", by_code)

    def find(self, code: str) -> Optional[CodeRow]:
        """The row of ``code``, or None when it is not in the table."""
        return self._by_code.get(code.casefold())

    def __len__(self) -> int:
        return len(self.rows)


def default_code_table() -> CodeTable:
    """The code table that ships with the program (:data:`DEFAULT_CODES`)."""
    return read_code_table(DEFAULT_CODES)


def read_code_table(path: PathLike) -> CodeTable:
    """Read a code table: CSV with a header ``code,kind,layer,close`` in any order, ``close`` optional.

    Separated by commas, semicolons or tabs; UTF-8 (with or without BOM) or Latin-1; blank lines and
    lines that start with ``#`` are comments. Raises :class:`SurveyError` naming file and line.
    """
    reader = _Reader(str(path))
    records = read_table(path, CANNOT_READ, NOT_TEXT)
    if not records:
        raise SurveyError(NO_ROWS, file=reader.file)
    columns = reader.header(*records[0])
    rows = reader.rows(columns, records[1:])
    if not rows:
        raise SurveyError(NO_ROWS, file=reader.file)
    return CodeTable(rows, reader.file)


class _Reader:
    """Turns the lines of one table into rows, with the file's name at hand for errors."""

    def __init__(self, file: str) -> None:
        self.file = file

    def header(self, line: int, cells: Sequence[str]) -> Dict[str, int]:
        """Place of each column by name."""
        columns: Dict[str, int] = {}
        for place, name in enumerate(cell.casefold() for cell in cells):
            if name in columns or name not in ("code", "kind", "layer", "close"):
                raise SurveyError(STRANGE_COLUMN, file=self.file, line=line, column=cells[place] or "?")
            columns[name] = place
        for name in ("code", "kind", "layer"):
            if name not in columns:
                raise SurveyError(MISSING_COLUMN, file=self.file, line=line, column=name)
        return columns

    def rows(self, columns: Mapping[str, int], records: Iterable[Tuple[int, List[str]]]) -> Tuple[CodeRow, ...]:
        rows: List[CodeRow] = []
        seen: Dict[str, int] = {}
        for line, cells in records:
            if any(cells[len(columns) :]):
                raise SurveyError(ROW_TOO_LONG, file=self.file, line=line)
            cells = cells + [""] * (len(columns) - len(cells))
            row = self.row(line, {name: cells[place] for name, place in columns.items()})
            first = seen.setdefault(row.code.casefold(), line)
            if first != line:
                raise SurveyError(TWICE, file=self.file, line=line, code=row.code, first=first)
            rows.append(row)
        return tuple(rows)

    def row(self, line: int, cells: Mapping[str, str]) -> CodeRow:
        code = cells["code"]
        if not code:
            raise SurveyError(NO_CODE, file=self.file, line=line)
        kind = self.kind(line, code, cells["kind"])
        close = cells.get("close", "").casefold()
        if close not in ("", "yes", "no"):
            raise SurveyError(STRANGE_CLOSE, file=self.file, line=line, code=code, close=cells["close"])
        if close == "yes" and not kind.line:
            raise SurveyError(CLOSE_WITHOUT_LINE, file=self.file, line=line, code=code)
        if close == "no" and kind in (CodeKind.BOUNDARY, CodeKind.VOID):
            raise SurveyError(ALWAYS_CLOSED, file=self.file, line=line, code=code, kind=kind.value)
        return CodeRow(code, kind, cells["layer"], close == "yes")

    def kind(self, line: int, code: str, word: str) -> CodeKind:
        plain = word.casefold().replace(" ", "_").replace("-", "_")
        try:
            return CodeKind(plain)
        except ValueError:
            kinds = ", ".join(kind.value for kind in CodeKind)
            raise SurveyError(
                STRANGE_KIND, file=self.file, line=line, code=code, kind=word or "(empty)", kinds=kinds
            ) from None
