"""What the values of each column look like, from a few hundred lines of a file."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Dict, FrozenSet, List, Optional, Sequence, Tuple

import numpy as np

from .angles import is_sexagesimal, letter_of, parse_angle
from .detect import split_line
from .source import TextSource

_PLAIN = re.compile(r"[+-]?(?:[0-9]+(?:\.([0-9]*))?|\.([0-9]+))(?:[eE][+-]?[0-9]{1,3})?")
_TIME = re.compile(r"(?:\d{4}-\d{2}-\d{2}|\d{2}\.\d{2}\.\d{4}|\d{2}/\d{2}/\d{4})?[T ]?(?:\d{2}:\d{2}(?::\d{2}.*)?)?Z?")
#: Columns beyond are kept and not looked at.
MOST_LOOKED_AT = 40
#: Share of the fields of a column that must be numbers for it to be one of numbers.
MOST = 0.8
#: Places of a file from which lines are taken beside its start, and how many from each.
CHUNKS, CHUNK_LINES = 4, 50


@dataclass(frozen=True)
class Rows:
    """Fields of some data lines; ``part``: (n,) which run of consecutive lines each belongs to."""

    fields: Tuple[Tuple[str, ...], ...]
    part: np.ndarray

    def __len__(self) -> int:
        return len(self.fields)


@dataclass(frozen=True)
class Column:
    """One column. ``values``: (n,) float64, nan where a field is no number (or angle, in degrees).

    ``numeric``, ``sexagesimal``, ``clock``: shares of the fields that are not empty; ``letters``: those
    beside angles; ``decimals``: most common number of decimals; ``distinct``: share of different fields;
    ``filled``: share of fields that are not empty; ``whole``: only whole numbers.
    """

    place: int
    values: np.ndarray
    filled: float
    numeric: float
    sexagesimal: float
    clock: float
    letters: FrozenSet[str]
    decimals: int
    distinct: float
    whole: bool

    @property
    def is_number(self) -> bool:
        return self.filled >= 0.5 and self.numeric >= MOST

    @property
    def is_angle(self) -> bool:
        """Written with minutes, a degree sign or a letter."""
        return self.filled >= 0.5 and self.sexagesimal >= MOST

    @property
    def is_text(self) -> bool:
        return self.filled > 0 and self.numeric < 0.5 and self.sexagesimal < 0.5 and self.clock < MOST

    @property
    def good(self) -> np.ndarray:
        """The values that are numbers."""
        return np.asarray(self.values[np.isfinite(self.values)])

    @property
    def counts(self) -> bool:
        """Whole numbers that only grow: numbers of points or lines."""
        good = self.good
        return self.is_number and self.whole and len(good) > 2 and bool((np.diff(good) > 0).mean() > 0.9)

    @property
    def span(self) -> float:
        """Range without the outermost 2 % at either end."""
        good = self.good
        return float(np.diff(np.percentile(good, [2, 98]))[0]) if len(good) else 0.0


def gather_rows(
    source: TextSource, first: Sequence[Tuple[str, ...]], delimiter: str, comment: str, skip: int = 0
) -> Rows:
    """Data lines from the start (``first``, split already) and from :data:`CHUNKS` other places of the file."""
    fields: List[Tuple[str, ...]] = list(first)
    part = [0] * len(fields)
    data = source.data
    for i in range(1, CHUNKS + 1) if len(data) > (1 << 16) else ():
        at = data.index(b"\n", len(data) * i // (CHUNKS + 1)) + 1
        for line in data[at : at + (1 << 14)].split(b"\n")[:CHUNK_LINES]:
            text = line.decode("utf-8", "ignore")
            if text.strip() and not (comment and text.lstrip(" \t").startswith(comment)):
                fields.append(tuple(split_line(text, delimiter) or ())[:MOST_LOOKED_AT])
                part.append(i)
    return Rows(tuple(fields), np.array(part, np.int64))


def usual_decimal(rows: Sequence[Sequence[str]]) -> str:
    """The decimal mark of most numbers with one mark."""
    marks = {".": 0, ",": 0}
    for row in rows:
        for field in row[:MOST_LOOKED_AT]:
            match = re.fullmatch(r"[+-]?[0-9]+([.,])[0-9]*(?:[eE][+-]?[0-9]+)?", field) if len(field) < 40 else None
            if match:
                marks[match.group(1)] += 1
    return "," if marks[","] > marks["."] else "."


def look_at_columns(rows: Rows, width: int, decimal: str) -> List[Column]:
    """The columns of ``rows``, :data:`MOST_LOOKED_AT` at most."""
    return [_column(rows, place, decimal) for place in range(min(width, MOST_LOOKED_AT))]


def _column(rows: Rows, place: int, decimal: str) -> Column:
    fields = [row[place] if place < len(row) else "" for row in rows.fields]
    values = np.full(len(fields), np.nan)
    tally = dict.fromkeys(("filled", "numeric", "sexagesimal", "clock"), 0)
    decimals: Dict[int, int] = {}
    letters = set()
    for i, field in enumerate(fields):
        tally["filled"] += field != ""
        number = _number(field, decimal)
        if number is not None:
            values[i], places = number
            tally["numeric"] += 1
            decimals[places] = decimals.get(places, 0) + 1
        elif is_sexagesimal(field):
            letter = letter_of(field)
            letters |= {letter} - {""}
            tally["sexagesimal"] += 1
            values[i] = parse_angle(field, "", "E" if letter == "O" else "") or 0.0
        elif field and len(field) < 40 and _TIME.fullmatch(field):
            tally["clock"] += 1
    filled = max(tally["filled"], 1)
    return Column(
        place, values, tally["filled"] / max(len(fields), 1), tally["numeric"] / filled, tally["sexagesimal"] / filled,
        tally["clock"] / filled, frozenset(letters), max(decimals, key=lambda d: (decimals[d], d), default=0),
        len({field for field in fields if field}) / filled, set(decimals) == {0},
    )  # fmt: skip


def _number(field: str, decimal: str) -> Optional[Tuple[float, int]]:
    """Value and number of decimals."""
    if not field or len(field) > 40:
        return None
    if decimal == ",":
        if "." in field:
            return None
        field = field.replace(",", ".")
    match = _PLAIN.fullmatch(field)
    if match is None or not math.isfinite(float(field)):
        return None
    return float(field), len(match.group(1) or match.group(2) or "")


def usual_step(first: np.ndarray, second: np.ndarray, part: np.ndarray) -> Tuple[float, float]:
    """Median distance of points that follow each other, and the share of those within 20 % of it; nan, 0 for none."""
    steps = np.hypot(np.diff(first), np.diff(second))[np.diff(part) == 0]
    steps = steps[np.isfinite(steps) & (steps > 0)]
    if len(steps) < 5:
        return np.nan, 0.0
    middle = float(np.median(steps))
    return middle, float((np.abs(steps - middle) <= 0.2 * middle).mean())
