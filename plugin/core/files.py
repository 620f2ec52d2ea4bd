"""Small tables read by their lines, and files written so that a reader never meets half of one."""

from __future__ import annotations

import contextlib
import csv
import os
import re
import secrets
from io import StringIO
from pathlib import Path
from typing import Any, Iterable, Iterator, List, TextIO, Tuple, Union

from .messages import QT_TRANSLATE_NOOP, SurveyError, Text

PathLike = Union[str, "os.PathLike[str]"]
#: Metadata of fields that are made anew where they are needed, and never written with the rest of their object.
NOT_KEPT = {"kept": False}

CANNOT_WRITE = Text(
    "files.cannot_write",
    QT_TRANSLATE_NOOP(
        "core", "{file}: cannot be written ({reason}); check the folder, its permissions and the space left."
    ),
)

CANNOT_MAKE_FOLDER = Text(
    "job.cannot_make_folder",
    QT_TRANSLATE_NOOP("core", "{file}: the folder cannot be made ({reason}); choose another one for --out."),
)


def read_table(path: PathLike, cannot_read: Text, not_text: Text) -> List[Tuple[int, List[str]]]:
    """Line number and cells of every line of a small CSV file that is neither blank nor a comment (``#``).

    Separated by commas, semicolons or tabs, whichever the first line has most of; UTF-8 (with or without BOM) or
    Latin-1. Raises SurveyError with ``cannot_read`` (file, reason) or ``not_text`` (file, line).
    """
    text = _table_text(path, cannot_read, not_text)
    lines = [line if not line.lstrip().startswith("#") else "" for line in text.splitlines()]
    first = next((line for line in lines if line.strip()), "")
    reader = csv.reader(StringIO("\n".join(lines)), delimiter=max(",;\t", key=first.count), skipinitialspace=True)
    found: List[Tuple[int, List[str]]] = []
    try:
        for cells in reader:
            cells = [cell.strip() for cell in cells]
            if any(cells):
                found.append((reader.line_num, cells))
    except csv.Error:
        raise SurveyError(not_text, file=str(path), line=reader.line_num) from None
    return found


def _table_text(path: PathLike, cannot_read: Text, not_text: Text) -> str:
    try:
        data = Path(path).read_bytes()
    except (OSError, ValueError) as error:  # ValueError: a NUL in the path
        reason = getattr(error, "strerror", None) or str(error)
        raise SurveyError(cannot_read, file=str(path), reason=reason) from None
    if b"\0" in data:
        raise SurveyError(not_text, file=str(path), line=data[: data.index(b"\0")].count(b"\n") + 1)
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("latin-1")


#: What a spreadsheet would take for a formula, unless it is a number.
_FORMULA = re.compile(r"'*(?:[=@\t\r]|[+\-][^\s])")
_NUMBER = re.compile(r"[+-]?(?:[0-9]+[.,]?[0-9]*|[.,][0-9]+)(?:[eE][+-]?[0-9]+)?")
_FIRST = frozenset("=@\t\r+-'")


def text_cell(value: Any) -> Any:
    """A cell of a table, with an apostrophe before what a spreadsheet would run as a formula; numbers stay numbers.

    :func:`cell_text` takes it off again, and only that.
    """
    if not isinstance(value, str) or value[:1] not in _FIRST or not value:
        return value
    return f"'{value}" if _FORMULA.match(value) and not _NUMBER.fullmatch(value) else value


def cell_text(value: str) -> str:
    """The text of a cell that :func:`text_cell` wrote."""
    return value[1:] if value[:1] == "'" and _FORMULA.match(value) else value


class TableWriter:
    """Writes rows of a CSV table to ``stream``, their texts as :func:`text_cell` makes them."""

    def __init__(self, stream: TextIO) -> None:
        self._writer = csv.writer(stream, lineterminator="\n")

    def writerow(self, row: Iterable[Any]) -> None:
        """One row."""
        self._writer.writerow([text_cell(value) for value in row])

    def writerows(self, rows: Iterable[Iterable[Any]]) -> None:
        """Several rows."""
        for row in rows:
            self.writerow(row)


@contextlib.contextmanager
def replace_file(path: PathLike) -> Iterator[Path]:
    """Give a temporary path beside ``path``; when the block ends well it takes the place of ``path``.

    The temporary path has the same suffix, for libraries that look at it. When the block raises, the
    temporary file goes and ``path`` stays as it was. Raises SurveyError when the system refuses to write.
    """
    target = Path(path)
    temporary = target.with_name(f".{target.stem}-{secrets.token_hex(4)}{target.suffix}")
    try:
        yield temporary
        os.replace(temporary, target)
    except OSError as error:
        _remove(temporary)
        raise SurveyError(CANNOT_WRITE, file=str(path), reason=error.strerror or str(error)) from error
    except BaseException:
        _remove(temporary)
        raise


def make_folder(folder: PathLike) -> None:
    """Make ``folder`` and those around it where they are missing. Raises SurveyError where the system refuses."""
    try:
        Path(folder).mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise SurveyError(CANNOT_MAKE_FOLDER, file=str(folder), reason=error.strerror or str(error)) from error


def _remove(path: Path) -> None:
    with contextlib.suppress(OSError):  # it was never made, or its folder is gone
        path.unlink()
