"""Lines that did not become points, and the account of all lines."""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text

FEW_COLUMNS = Text(
    "reject.few_columns", QT_TRANSLATE_NOOP("core", "the line has {count} columns; {role} is column {column}")
)
CUT_OFF = Text(
    "reject.cut_off", QT_TRANSLATE_NOOP("core", "the file ends within the line, in column {count} of {width}")
)
COLUMN_COUNT = Text("reject.column_count", QT_TRANSLATE_NOOP("core", "the line has {count} columns instead of {width}"))
EMPTY = Text("reject.empty", QT_TRANSLATE_NOOP("core", "{role} (column {column}) is empty"))
NOT_A_NUMBER = Text(
    "reject.not_a_number", QT_TRANSLATE_NOOP("core", "{role} (column {column}) is not a number: '{value}'")
)
NOT_AN_ANGLE = Text(
    "reject.not_an_angle", QT_TRANSLATE_NOOP("core", "{role} (column {column}) is no angle in degrees: '{value}'")
)
NO_VALUE = Text("reject.no_value", QT_TRANSLATE_NOOP("core", "{role} (column {column}) has no value: '{value}'"))
NOT_FINITE = Text(
    "reject.not_finite", QT_TRANSLATE_NOOP("core", "{role} (column {column}) is no finite number: '{value}'")
)
TOO_LARGE = Text(
    "reject.too_large", QT_TRANSLATE_NOOP("core", "{role} (column {column}) is too large for a coordinate: '{value}'")
)
TOTALS = Text("reject.totals", QT_TRANSLATE_NOOP("core", "a line below the points that gives their {word}"))
SUMS_UP = Text(
    "reject.sums_up",
    QT_TRANSLATE_NOOP(
        "core", "a row at the end whose coordinates are means, sums or limits of those of the points above it"
    ),
)
COUNTS_COLUMNS = Text("reject.counts_columns", QT_TRANSLATE_NOOP("core", "the line counts the columns"))
BAD_QUOTES = Text(
    "reject.bad_quotes", QT_TRANSLATE_NOOP("core", "a quote is opened and not closed, or closed too early")
)


@dataclass(frozen=True)
class Rejects:
    """Lines that are no points, in file order: ``line`` (r,) int64 numbers from 1, ``text`` (r,) object
    array of the lines as they stood, ``reason`` one Message each. ``source``: (r,) object array of the files, where
    there are several.
    """

    line: np.ndarray
    text: np.ndarray
    reason: Tuple[Message, ...]
    source: Optional[np.ndarray] = None

    def __len__(self) -> int:
        return len(self.line)


@dataclass(frozen=True)
class LineAccount:
    """Where the lines of a file went. ``header`` counts the header line (0 or 1) on its own; a header in a
    comment line counts with ``comments``. ``other``: lines that belong to the file and need not be points, such as
    the sentences of a receiver log that tell of time and accuracy.
    """

    lines: int
    points: int
    rejects: int
    comments: int
    blanks: int
    header: int
    other: int = 0

    def __post_init__(self) -> None:
        """Raises RuntimeError when a line is missing or counted twice: that is a fault of the program."""
        told = self.points + self.rejects + self.comments + self.blanks + self.header + self.other
        if told != self.lines:
            raise RuntimeError(f"{self.lines} lines were read but {told} are accounted for: {self}")

    def __add__(self, more: LineAccount) -> LineAccount:
        """The account of the lines of two files."""
        return LineAccount(*(getattr(self, part.name) + getattr(more, part.name) for part in fields(self)))


def make_rejects(refused: Sequence[Tuple[int, str, Message]]) -> Rejects:
    """Rejects from line, text and reason of each, in file order."""
    text = np.empty(len(refused), object)
    text[:] = [item[1] for item in refused]
    return Rejects(np.array([item[0] for item in refused], np.int64), text, tuple(item[2] for item in refused))
