"""Tables of limits: read, written and shipped (``default_rules.csv``), and tables of speed and least K."""

from __future__ import annotations

import csv
import math
import re
from dataclasses import dataclass, replace
from enum import Enum
from pathlib import Path
from typing import Any, Dict, Iterable, List, Optional, Sequence, Tuple

from ..files import PathLike, read_table, replace_file
from ..messages import SurveyError
from .texts import (
    RULES_APPLIES,
    RULES_CANNOT_READ,
    RULES_CELL_EMPTY,
    RULES_COLUMN_MISSING,
    RULES_COLUMN_STRANGE,
    RULES_EMPTY,
    RULES_K_TABLE,
    RULES_NO_LIMIT,
    RULES_NOT_TEXT,
    RULES_NUMBER,
    RULES_QUANTITY,
    RULES_TOO_LONG,
    RULES_TWICE,
    RULES_WINDOW,
)

#: The table that ships with the program; every limit names its published source.
DEFAULT_RULES = Path(__file__).with_name("default_rules.csv")

_COLUMNS = ("rule", "quantity", "at_least", "at_most", "window", "applies", "source", "checked", "note")
_NEEDED = ("rule", "quantity", "at_least", "at_most", "source")
_K_COLUMNS = ("speed", "least_k")
_DEFAULT_WINDOW = 5.0
_RATIO = re.compile(r"\s*([0-9.]+)\s*:\s*([0-9.]+)\s*")
_APPLIES = re.compile(r"\s*grade\s*(<=|>)\s*(.+)", re.IGNORECASE)


class Quantity(Enum):
    """What a limit is about; ``value`` is the word in the table. Slopes count either way (their size)."""

    GRADE = "grade"
    CROSSFALL = "crossfall"
    CREST_K = "crest_k"
    SAG_K = "sag_k"


@dataclass(frozen=True)
class Condition:
    """A rule applies only where the size of the grade is ``above`` ``limit`` (a ratio), or not above it."""

    above: bool
    limit: float
    text: str


@dataclass(frozen=True)
class Rule:
    """One limit. ``limit``: a ratio, or metres a percent for K; ``limit_text``: as the table writes it.

    ``at_least``: the limit is the lowest allowed value, else the highest. ``window``: metres over which a slope is
    taken. ``condition``: None where it applies always. ``source``, ``checked``, ``note``: for people.
    """

    name: str
    quantity: Quantity
    limit: float
    limit_text: str
    at_least: bool
    window: float
    condition: Optional[Condition]
    source: str
    checked: str = ""
    note: str = ""


@dataclass(frozen=True)
class LeastK:
    """The least K (metres a percent) of a crest for a ``speed`` in the table's own unit."""

    speed: float
    least_k: float


def without_doubles(rules: Sequence[Rule]) -> Tuple[Rule, ...]:
    """The rules, those that ask the same of the same as one with all their names and sources."""
    found: Dict[Tuple[Any, ...], List[Rule]] = {}
    for rule in rules:
        asked = None if rule.condition is None else (rule.condition.above, rule.condition.limit)
        found.setdefault((rule.quantity, rule.limit, rule.at_least, rule.window, asked), []).append(rule)
    return tuple(_as_one(same) for same in found.values())


def _as_one(same: Sequence[Rule]) -> Rule:
    def joined(texts: Iterable[str]) -> str:
        return "; ".join(dict.fromkeys(text for text in texts if text))

    return replace(
        same[0],
        name=joined(rule.name for rule in same),
        source=joined(rule.source for rule in same),
        checked=joined(rule.checked for rule in same),
        note=joined(rule.note for rule in same),
    )


def default_rules() -> Tuple[Rule, ...]:
    """The rules that ship with the program."""
    return read_rules(DEFAULT_RULES)


def read_rules(path: PathLike) -> Tuple[Rule, ...]:
    """Read a table of limits: CSV with the columns rule, quantity, at_least, at_most, source, in any order.

    Besides, as one likes, window, applies, checked and note. Separated by commas, semicolons or tabs; lines that start
    with ``#`` are comments. Raises SurveyError naming file and line.
    """
    table = _Table(str(path), _COLUMNS, _NEEDED)
    return tuple(_rule(table.file, line, cells) for line, cells in table.rows("rule"))


def write_rules(rules: Sequence[Rule], path: PathLike) -> None:
    """Write ``rules`` so that :func:`read_rules` gives them back. Raises SurveyError when the file can't be written."""
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = csv.writer(stream, lineterminator="\n")
        writer.writerow(_COLUMNS)
        for rule in rules:
            limits = (rule.limit_text, "") if rule.at_least else ("", rule.limit_text)
            applies = rule.condition.text if rule.condition else "always"
            texts = (rule.source, rule.checked, rule.note)
            writer.writerow([rule.name, rule.quantity.value, *limits, f"{rule.window:g}", applies, *texts])


def read_least_k(path: PathLike) -> Tuple[LeastK, ...]:
    """Read the user's table of speed and least K of crests: CSV with the columns speed and least_k.

    K in metres for each percent of change. Raises SurveyError naming file and line.
    """
    table = _Table(str(path), _K_COLUMNS, _K_COLUMNS)
    found = []
    for line, cells in table.rows("speed"):
        values = []
        for column in _K_COLUMNS:
            value = _plain_number(cells[column])
            if value is None or value <= 0:
                raise SurveyError(
                    RULES_K_TABLE, file=table.file, line=line, column=column, value=cells[column] or "(empty)"
                )
            values.append(value)
        found.append(LeastK(*values))
    return tuple(sorted(found, key=lambda row: row.speed))


def read_ratio(text: str) -> Optional[float]:
    """The ratio of "1:20", "5%", "5 %" or "0.05"; None for anything else, and for what is negative."""
    ratio = _RATIO.fullmatch(text)
    if ratio:
        rise, run = (_plain_number(part) for part in ratio.groups())
        return None if rise is None or not run else rise / run
    percent = text.strip().endswith("%")
    value = _plain_number(text.strip().rstrip("%"))
    if value is None or value < 0:
        return None
    return value / 100 if percent else value


def _plain_number(text: str) -> Optional[float]:
    try:
        value = float(text)
    except ValueError:
        return None
    return value if math.isfinite(value) else None


def _rule(file: str, line: int, cells: Dict[str, str]) -> Rule:
    try:
        quantity = Quantity(cells["quantity"].casefold())
    except ValueError:
        known = ", ".join(each.value for each in Quantity)
        raise SurveyError(
            RULES_QUANTITY, file=file, line=line, value=cells["quantity"] or "(empty)", known=known
        ) from None
    if bool(cells["at_least"]) == bool(cells["at_most"]):
        raise SurveyError(RULES_NO_LIMIT, file=file, line=line)
    column = "at_least" if cells["at_least"] else "at_most"
    limit = read_ratio(cells[column])
    if limit is None:
        raise SurveyError(RULES_NUMBER, file=file, line=line, column=column, value=cells[column])
    window = _plain_number(cells["window"]) if cells["window"] else _DEFAULT_WINDOW
    if window is None or window <= 0:
        raise SurveyError(RULES_WINDOW, file=file, line=line, value=cells["window"])
    if not cells["source"]:
        raise SurveyError(RULES_CELL_EMPTY, file=file, line=line, column="source")
    return Rule(
        cells["rule"], quantity, limit, cells[column], column == "at_least", window,
        _condition(file, line, cells["applies"]), cells["source"], cells["checked"], cells["note"],
    )  # fmt: skip


def _condition(file: str, line: int, text: str) -> Optional[Condition]:
    if text.casefold() in ("", "always"):
        return None
    found = _APPLIES.fullmatch(text)
    limit = read_ratio(found.group(2)) if found else None
    if found is None or limit is None:
        raise SurveyError(RULES_APPLIES, file=file, line=line, value=text)
    return Condition(found.group(1) == ">", limit, text)


class _Table:
    """A CSV file with named columns; errors name file and line."""

    def __init__(self, file: str, columns: Sequence[str], needed: Sequence[str]) -> None:
        self.file, self.columns, self.needed = file, columns, needed

    def rows(self, key: str) -> List[Tuple[int, Dict[str, str]]]:
        """Line number and cells by column of each row; ``key`` may neither be empty nor come twice."""
        records = read_table(self.file, RULES_CANNOT_READ, RULES_NOT_TEXT)
        if len(records) < 2:
            raise SurveyError(RULES_EMPTY, file=self.file, columns=", ".join(self.columns))
        place = self._header(*records[0])
        found: List[Tuple[int, Dict[str, str]]] = []
        seen: Dict[str, int] = {}
        for line, cells in records[1:]:
            if any(cells[len(place) :]):
                raise SurveyError(RULES_TOO_LONG, file=self.file, line=line)
            cells = cells + [""] * (len(place) - len(cells))
            row = {name: cells[place[name]] if name in place else "" for name in self.columns}
            if not row[key]:
                raise SurveyError(RULES_CELL_EMPTY, file=self.file, line=line, column=key)
            first = seen.setdefault(row[key].casefold(), line)
            if first != line:
                raise SurveyError(RULES_TWICE, file=self.file, line=line, name=row[key], first=first)
            found.append((line, row))
        return found

    def _header(self, line: int, cells: Sequence[str]) -> Dict[str, int]:
        place: Dict[str, int] = {}
        said = ", ".join(self.columns)
        for number, name in enumerate(cell.casefold() for cell in cells):
            if name in place or name not in self.columns:
                raise SurveyError(
                    RULES_COLUMN_STRANGE, file=self.file, line=line, column=cells[number] or "?", columns=said
                )
            place[name] = number
        for name in self.needed:
            if name not in place:
                raise SurveyError(RULES_COLUMN_MISSING, file=self.file, line=line, column=name, columns=said)
        return place
