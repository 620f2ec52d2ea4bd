"""Rows of fields to points, and the reason for each row that is none."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Dict, List, Mapping, Tuple

import numpy as np

from ..messages import Message, Text, message
from . import rejects
from .angles import parse_angles, side_signs
from .columns import ROLES, Kind
from .layout import Layout
from .rows import UNIT_SEPARATOR, Rows, bytes_of, trim
from .said_units import AngleForm
from .times import parse_times
from .values import NumberForm, State, Written, parse_fixes, parse_numbers, parse_texts, parse_words, read_numbers

#: Metres; no projected coordinate is larger (an easting that starts with its zone number is below 7e7).
LARGEST = 1e8
_SHOWN = 40

_REASONS: Dict[int, Text] = {
    State.EMPTY: rejects.EMPTY,
    State.NOT_A_NUMBER: rejects.NOT_A_NUMBER,
    State.NOT_FINITE: rejects.NOT_FINITE,
    State.NO_VALUE: rejects.NO_VALUE,
}
_TOO_LARGE, _WRONG_COUNT = 100, 101


@dataclass(frozen=True)
class Plan:
    """How the lines of a file are read.

    ``usual``: fields of most lines; ``header_line``, ``cut_off_line``: line numbers, 0 for none;
    ``factors``: metres in the unit of each coordinate and sigma. ``o_means``: E or W, what the letter O behind a
    longitude stands for, "" where that is not known. ``thousands``, ``no_value``: see :class:`.values.NumberForm`.
    ``angles``: how degrees are written; ``sides``: role of an angle to the place of its letter N, S, E or W, where
    that is a column of its own. ``month_first``: what dates such as 03/04/2025 are. ``written``: role to how its
    numbers stand.
    """

    layout: Layout
    delimiter: str
    decimal: str
    comment: str
    usual: int
    header_line: int
    cut_off_line: int
    factors: Mapping[str, float]
    o_means: str = ""
    thousands: str = ""
    no_value: Tuple[str, ...] = ()
    angles: AngleForm = AngleForm.DEGREES
    sides: Mapping[str, int] = field(default_factory=dict)
    month_first: bool = False
    written: Mapping[str, Written] = field(default_factory=dict)

    def numbers(self, role: str) -> NumberForm:
        """How the numbers of a role are read."""
        one = self.written.get(role, Written())
        mark = one.mark or self.decimal
        return NumberForm(
            mark, self.thousands if mark == self.decimal else "", self.no_value, one.suffix,
            one.decimals, self.factors.get(role, 0.0) if one.suffix else 0.0,
            role in ("easting", "northing"),
        )  # fmt: skip


@dataclass(frozen=True)
class Tally:
    """How many fields of a column could not be read, of how many not empty, and the line of the first."""

    count: int = 0
    of: int = 0
    first: int = 0

    def __add__(self, other: Tally) -> Tally:
        firsts = [first for first in (self.first, other.first) if first]
        return Tally(self.count + other.count, self.of + other.of, min(firsts, default=0))


@dataclass(frozen=True)
class Converted:
    """Points of some rows. ``line``: (k,); ``columns``: roles, ``extra``: further columns, (k,) each.

    ``refused``: line and reason of the rows that are no points; ``unreadable``: per optional role;
    ``short``: points whose row ends before a column of numbers; ``widest``: most fields of a row.
    """

    line: np.ndarray
    columns: Dict[str, np.ndarray]
    extra: Dict[str, np.ndarray]
    refused: List[Tuple[int, Message]]
    unreadable: Dict[str, Tally]
    short: Tally
    widest: int


def convert(rows: Rows, plan: Plan) -> Converted:
    """Read the fields of rows as ``plan`` says; nothing is dropped: each row is a point or refused."""
    layout = plan.layout
    state, at, joined = _check_count(rows, plan)
    columns: Dict[str, np.ndarray] = {}
    for role in sorted(layout.coordinates, key=lambda role: layout.roles[role]):
        numbers, found = _read_coordinate(rows, role, plan)
        found = np.where(np.abs(numbers) > LARGEST, _TOO_LARGE, found)
        new = (state == State.VALUE) & (found != State.VALUE)
        state[new], at[new] = found[new], layout.roles[role]
        columns[role] = numbers
    good = state == State.VALUE
    refused = [_refusal(rows, int(i), int(state[i]), int(at[i]), plan) for i in np.flatnonzero(~good)]
    kept, joined = rows.select(good), joined[good]
    columns = {role: values[good] for role, values in columns.items()}
    unreadable: Dict[str, Tally] = {}
    for role, place in layout.roles.items():
        if role not in columns:
            columns[role] = _read_column(kept, role, place, plan, joined, unreadable)
    extra = {name: _read_text(kept, place, plan, joined, False) for name, place in layout.extra.items()}
    short = kept.count <= max(place for role, place in layout.roles.items() if ROLES[role] is not Kind.TEXT)
    widest = int(rows.count.max()) if len(rows) else 0
    return Converted(kept.line, columns, extra, refused, unreadable, _tally(short, short, kept.line), widest)


def _read_coordinate(rows: Rows, role: str, plan: Plan) -> Tuple[np.ndarray, np.ndarray]:
    start, end = rows.column(plan.layout.roles[role])
    if ROLES[role] is Kind.ANGLE:
        return _read_angle(rows, role, start, end, plan)
    numbers, found = read_numbers(rows.text, start, end, plan.numbers(role))
    numbers *= plan.factors[role]
    return numbers, found


def _read_angle(rows: Rows, role: str, start: np.ndarray, end: np.ndarray, plan: Plan) -> Tuple[np.ndarray, np.ndarray]:
    """Degrees, on the side that a letter in a column of its own says."""
    mark = plan.numbers(role).decimal
    values, state = parse_angles(rows.text, start, end, mark, role, plan.o_means, plan.angles, plan.no_value)
    if role in plan.sides:
        words = parse_words(rows.text, *rows.column(plan.sides[role]))
        letters = np.array([str(word).strip().upper()[:1] for word in words], object)
        signs = side_signs(role, plan.o_means)
        sign = np.array([signs.get(letter, 0.0) for letter in letters.tolist()], float)
        lost = (sign == 0.0) & (state == State.VALUE)
        state[lost], values[lost] = State.NOT_A_NUMBER, np.nan
        values *= sign
    values *= plan.factors.get(role, 1.0) if role != "tilt" else 1.0
    return values, state


def interleave(first: Converted, second: Converted) -> Converted:
    """Both together, in order of line."""
    line = np.concatenate([first.line, second.line])
    order = np.argsort(line, kind="stable")

    def merge(left: Dict[str, np.ndarray], right: Dict[str, np.ndarray]) -> Dict[str, np.ndarray]:
        return {key: np.concatenate([left[key], right[key]])[order] for key in left}

    return Converted(
        line[order],
        merge(first.columns, second.columns),
        merge(first.extra, second.extra),
        sorted(first.refused + second.refused, key=lambda refusal: refusal[0]),
        {role: first.unreadable[role] + second.unreadable[role] for role in first.unreadable},
        first.short + second.short,
        max(first.widest, second.widest),
    )


def _check_count(rows: Rows, plan: Plan) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """State of each row by its number of fields, the place at fault, and the rows whose last text goes on."""
    layout, count = plan.layout, rows.count
    state, at = np.zeros(len(rows), np.int64), np.zeros(len(rows), np.int64)
    # Where spaces part the fields a missing one shifts the rest, so only a text at the end may be missing.
    least = layout.width - layout.last_is_text if plan.delimiter == " " else 0
    wrong = (count < least) | ((rows.line == plan.cut_off_line) & (count < plan.usual))
    if plan.cut_off_line and len(rows) and rows.line[-1] == plan.cut_off_line:
        wrong[-1] |= _ends_within_number(rows, plan)
    joined = np.zeros(len(rows), bool)
    surplus = np.flatnonzero(count > layout.width)
    if len(surplus):
        start, end = trim(rows.text, rows.field_start, rows.field_end)
        full = np.cumsum(end > start)
        last = rows.first + layout.width - 1
        more = surplus[full[(rows.first + count - 1)[surplus]] > full[last[surplus]]]
        if layout.last_is_text:
            # A number where the text should start means that the columns have shifted.
            _, found = parse_numbers(rows.text, start[last[more]], end[last[more]], plan.decimal, plan.thousands)
            joined[more[found == State.NOT_A_NUMBER]] = True
        wrong[more[~joined[more]]] = True
    state[wrong] = _WRONG_COUNT
    return state, at, joined


def _ends_within_number(rows: Rows, plan: Plan) -> bool:
    """Whether the last field of a file is a coordinate with fewer decimals than all others of its column have."""
    place = int(rows.count[-1]) - 1
    if place not in (plan.layout.roles[role] for role in plan.layout.coordinates) or len(rows) < 4:
        return False
    start, end = rows.column(place)
    fields = [bytes_of(rows.text, int(start[i]), int(end[i])) for i in range(max(0, len(rows) - 50), len(rows))]
    decimals = {len(field.rpartition(plan.decimal)[2]) for field in fields[:-1] if plan.decimal in field}
    last = fields[-1].rpartition(plan.decimal)[2] if plan.decimal in fields[-1] else ""
    return len(decimals) == 1 and len(last) < decimals.pop()


def _refusal(rows: Rows, i: int, state: int, place: int, plan: Plan) -> Tuple[int, Message]:
    line, count = int(rows.line[i]), int(rows.count[i])
    if state == _WRONG_COUNT:
        if line == plan.cut_off_line and count <= plan.usual:
            return line, message(rejects.CUT_OFF, count=count, width=plan.usual)
        return line, message(rejects.COLUMN_COUNT, count=count, width=plan.layout.width)
    role = next(role for role, where in plan.layout.roles.items() if where == place)
    if place >= count:
        return line, message(rejects.FEW_COLUMNS, count=count, role=role, column=place + 1)
    field_at = int(rows.first[i]) + place
    value = bytes_of(rows.text, int(rows.field_start[field_at]), int(rows.field_end[field_at])).strip()
    shown = value if len(value) <= _SHOWN else value[:_SHOWN] + "..."
    text = rejects.TOO_LARGE if state == _TOO_LARGE else _REASONS[state]
    if state == State.NOT_A_NUMBER and ROLES[role] is Kind.ANGLE:
        text = rejects.NOT_AN_ANGLE
    return line, message(text, role=role, column=place + 1, value=shown)


def _read_column(
    rows: Rows, role: str, place: int, plan: Plan, joined: np.ndarray, unreadable: Dict[str, Tally]
) -> np.ndarray:
    """Values of an optional column; adds to ``unreadable`` what is not empty and no value."""
    kind = ROLES[role]
    if kind is Kind.TEXT:
        return _read_text(rows, place, plan, joined, role == "name")
    start, end = rows.column(place)
    if kind is Kind.FIX:
        values, bad = parse_fixes(rows.text, start, end)
    elif kind is Kind.TIME:
        values, bad = parse_times(rows.text, start, end, plan.decimal, plan.month_first)
    elif kind is Kind.ANGLE:
        values, state = _read_angle(rows, role, start, end, plan)
        bad = (state == State.NOT_A_NUMBER) | (state == State.NOT_FINITE)
    else:
        values, state = read_numbers(rows.text, start, end, plan.numbers(role))
        values *= plan.factors.get(role, 1.0)
        negative = (values < 0) & (role not in ("tilt", "ellipsoidal_height"))
        bad = (state == State.NOT_A_NUMBER) | (state == State.NOT_FINITE) | negative
        values[bad] = np.nan
    unreadable[role] = _tally(bad, end > start, rows.line)
    return values


def _read_text(rows: Rows, place: int, plan: Plan, joined: np.ndarray, many: bool) -> np.ndarray:
    start, end = rows.column(place)
    last = place == plan.layout.width - 1 and joined.any()
    if last:
        end = rows.rest(place, joined, end)
    values = (parse_texts if many else parse_words)(rows.text, start, end)
    if last:  # fields that were taken out of quotes get their delimiter back
        for i in np.flatnonzero(joined):
            values[i] = values[i].replace(chr(UNIT_SEPARATOR), plan.delimiter).rstrip(" \t" + plan.delimiter)
    return values


def _tally(bad: np.ndarray, of: np.ndarray, line: np.ndarray) -> Tally:
    count = int(bad.sum())
    return Tally(count, int(of.sum()), int(line[int(np.argmax(bad))]) if count else 0)
