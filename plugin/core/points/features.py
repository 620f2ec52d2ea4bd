"""What the values of each column look like, from a few hundred lines of a file."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Dict, FrozenSet, List, Optional, Sequence, Tuple

import numpy as np

from .angles import is_sexagesimal, letter_of, parse_angle
from .lines_of_text import split_line
from .number_marks import Marks, is_grouped, is_no_value, ungrouped, without_unit
from .source import TextSource
from .times import has_date, is_time

_PLAIN = re.compile(r"[+-]?(?:[0-9]+(?:\.([0-9]*))?|\.([0-9]+))(?:[eEdD][+-]?[0-9]{1,3})?")
#: Columns beyond are kept and not looked at.
MOST_LOOKED_AT = 40
#: Share of the fields of a column that must be numbers for it to be one of numbers.
MOST = 0.8
#: So many numbers with another mark are no slips.
_SEVERAL = 3
#: Metres; no ground is higher.
_HIGHEST = 9_000.0
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

    ``numeric``, ``sexagesimal``, ``clock``: shares of the fields that hold something; ``letters``: those
    beside angles; ``decimals``: most common number of decimals; ``distinct``: share of different fields;
    ``filled``: share of fields that hold something, more than a word for no value; ``whole``: whole numbers, but for
    one in twenty; ``only_dates``: share of the clocks and dates that are dates
    alone; ``suffix``: the unit right behind most of the numbers; ``mark``: the decimal mark of most
    numbers; ``either``: whether several have the other.
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
    only_dates: float = 0.0
    suffix: str = ""
    mark: str = "."
    either: bool = False

    @property
    def is_number(self) -> bool:
        return self.filled >= 0.5 and self.numeric >= MOST

    @property
    def is_angle(self) -> bool:
        """Written with minutes, a degree sign or a letter."""
        return self.filled >= 0.5 and self.sexagesimal >= MOST

    @property
    def is_date(self) -> bool:
        """Dates without a time of day."""
        return self.clock >= MOST and self.only_dates >= MOST

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
    def middle(self) -> float:
        """The median of the values, nan where there are none."""
        good = self.good
        return float(np.median(good)) if len(good) else np.nan

    def beyond(self, limit: float) -> bool:
        """Whether more than one value in twenty is larger than ``limit`` in size."""
        good = self.good
        return len(good) > 0 and bool((np.abs(good) > limit).mean() > 0.05)

    @property
    def span(self) -> float:
        """Range without the outermost tenth at either end, made as long as that of all would be."""
        good = self.good
        return float(np.diff(np.percentile(good, [10, 90]))[0]) / 0.8 if len(good) else 0.0


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


def look_at_columns(
    rows: Rows, width: int, marks: Marks, no_value: Sequence[str] = (), other: Optional[Marks] = None
) -> List[Column]:
    """The columns of ``rows``, :data:`MOST_LOOKED_AT` at most; ``no_value``: words that stand for none. ``other``:
    marks of single numbers, or columns, that cannot be read by ``marks``.
    """
    places = range(min(width, MOST_LOOKED_AT))
    columns = [_column(rows, place, marks, no_value, False, other) for place in places]
    angles = [column for column in columns if column.is_angle]
    # Where one column is of angles with colons, another that may be clocks is too: 51:33:22 and 9:41:24.
    if len(angles) == 1:
        columns = [_column(rows, place, marks, no_value, columns[place].clock >= MOST, other) for place in places]
        if sum(column.is_angle for column in columns) != 2:
            columns = [_column(rows, place, marks, no_value, False, other) for place in places]
    return columns


def _column(
    rows: Rows, place: int, marks: Marks, no_value: Sequence[str], angles: bool, other: Optional[Marks]
) -> Column:
    fields = [row[place] if place < len(row) else "" for row in rows.fields]
    values = np.full(len(fields), np.nan)
    fields = ["" if is_no_value(field) or field in no_value else field for field in fields]
    tally = dict.fromkeys(("filled", "numeric", "sexagesimal", "clock", "dates", "other"), 0)
    decimals: Dict[int, int] = {}
    letters = set()
    suffixes: Dict[str, int] = {}
    for i, field in enumerate(fields):
        tally["filled"] += field != ""
        field, suffix = without_unit(field)
        suffixes[suffix] = suffixes.get(suffix, 0) + 1
        number = _number(field, marks)
        if number is None and other is not None and field.count(other.decimal) == 1 and not _thousands(field):
            number = _number(field, other)
            tally["other"] += number is not None
        if number is not None:
            values[i], places = number
            tally["numeric"] += 1
            decimals[places] = decimals.get(places, 0) + 1
        elif is_time(field) and not (angles and is_sexagesimal(field)) and not _fine_seconds(field):
            tally["clock"] += 1
            tally["dates"] += has_date(field) and ":" not in field
        elif is_sexagesimal(field):
            letter = letter_of(field)
            letters |= {letter} - {""}
            tally["sexagesimal"] += 1
            values[i] = parse_angle(field, "", "E" if letter == "O" else "") or 0.0
    filled = max(tally["filled"], 1)
    return Column(
        place, values, tally["filled"] / max(len(fields), 1), tally["numeric"] / filled, tally["sexagesimal"] / filled,
        tally["clock"] / filled, frozenset(letters), max(decimals, key=lambda d: (decimals[d], d), default=0),
        len({field for field in fields if field}) / filled, _whole(decimals),
        tally["dates"] / max(tally["clock"], 1), max(suffixes, key=lambda suffix: suffixes[suffix], default=""),
        other.decimal if other is not None and tally["other"] * 2 > tally["numeric"] else marks.decimal,
        _SEVERAL <= tally["other"] < tally["numeric"],
    )  # fmt: skip


def _thousands(field: str) -> bool:
    """Whether a number with the other mark may be one of thousands: 1,234 where others have points, and no 548,240."""
    return is_grouped(field) and float(re.sub(r"\D", "", field)) < _HIGHEST


def _whole(decimals: Dict[int, int]) -> bool:
    """Whether all numbers but one in twenty are whole; ``decimals``: how many have so many decimals."""
    return decimals.get(0, 0) >= 0.95 * max(sum(decimals.values()), 1)


def _fine_seconds(field: str) -> bool:
    """Whether seconds have more decimals than a clock's."""
    return re.search(r"[.,][0-9]{4,}$", field) is not None and ":" in field


def _number(field: str, marks: Marks) -> Optional[Tuple[float, int]]:
    """Value and number of decimals."""
    if not field or len(field) > 40:
        return None
    if marks.thousands:
        field = ungrouped(field, marks) or field
    if marks.decimal == ",":
        if "." in field:
            return None
        field = field.replace(",", ".")
    match = _PLAIN.fullmatch(field)
    field = re.sub("[dD]", "e", field) if match is not None else field
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
