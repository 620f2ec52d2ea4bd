"""Blocks of a file put together: points, the lines that are none, and their account."""

from __future__ import annotations

from typing import Any, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import Message, message
from . import rejects as reject
from .antenna import BY_COLUMN, BY_LINE, PoleHeights, to_ground
from .blocks import Block
from .columns import ROLES, Kind
from .convert import Plan
from .geographic import GeographicPoints, HeightKind
from .given import Given
from .layout import new_name
from .no_value import Marker, all_zero, find_markers, given_markers, is_usual, marked, open_question, plain
from .pointfile import FileFormat, PointFile
from .pointset import COLUMNS, make_points
from .questions import Question, QuestionError
from .rejects import LineAccount, make_rejects
from .said_above import Above
from .source import TextSource
from .summary_rows import summary_rows
from .vocabulary import each
from .words import fold

#: Roles that have no column of their own in a PointSet.
_KEPT_BESIDE = tuple(
    role for role in ROLES if role not in {*COLUMNS, "easting", "northing", "height", "date", "sigma_e", "sigma_n"}
)
_DAY = 86400.0
#: Days from 1899-12-30 to 1970-01-01.
_SERIAL_1970 = 25_569.0
#: As many metres of ground as an angle of this many degrees, for what counts as flat.
_DEGREES_PER_METRE = 1e-5
_FLAT = 5.0
#: Metres from the origin within which coordinates may be of a local grid.
_LOCAL = 20_000.0


class _Columns(NamedTuple):
    """Values of all points (n,): ``line`` numbers, ``roles``, ``extra``."""

    line: np.ndarray
    roles: Dict[str, np.ndarray]
    extra: Dict[str, np.ndarray]

    def without(self, rows: np.ndarray) -> _Columns:
        keep = np.ones(len(self.line), bool)
        keep[rows] = False
        return _Columns(
            self.line[keep],
            {role: values[keep] for role, values in self.roles.items()},
            {name: values[keep] for name, values in self.extra.items()},
        )


def gather(
    source: TextSource, blocks: List[Block], used: FileFormat, crs: Optional[Any], plan: Plan, given: Given, of: str,
    above: Above,
) -> PointFile:  # fmt: skip
    """The points of ``blocks`` without the lines whose numbers stand for no value, and heights of the ground.

    ``of``: what the file says that heights are of; ``above``: what stands above its points. The messages of the result
    are those of this step. Raises
    :class:`.questions.QuestionError` where a number may stand for no value, or heights may be of the antenna.
    """
    every = _joined(blocks)
    coordinates = plan.layout.coordinates
    refused = [(line, reason) for block in blocks for line, reason in block.rejects]
    every, totals = _without_totals(every, coordinates, plan)
    every, more, notes = _without_markers(source.file, every, coordinates, plan, given)
    refused = sorted(refused + totals + more, key=lambda item: item[0])
    if not len(every.line):
        raise QuestionError(source.file, [all_zero(coordinates[2])])
    roles, extra = dict(every.roles), dict(every.extra)
    east, north, height = (roles.pop(role) for role in coordinates)
    pole = roles.get("pole_height")
    degrees = coordinates[0] == "longitude"
    named = used.columns.get("pole_height", 0)
    word = str(named) if used.header is None or named > len(used.header.words) else used.header.words[named - 1].strip()
    poles = None if pole is None or not (np.nan_to_num(pole) > 0).any() else PoleHeights(pole, BY_COLUMN, word)
    if poles is None and above.poles:
        only = above.poles[0] if len(above.poles) == 1 else np.nan
        poles = PoleHeights(np.full(len(every.line), only), BY_LINE)
    ground = to_ground(source.file, height, given, poles, of, False, None if degrees else (east, north))
    if ground.question is not None:
        raise QuestionError(source.file, [ground.question])
    if ground.lowered is not None and "ellipsoidal_height" in roles:
        roles["ellipsoidal_height"] = roles["ellipsoidal_height"] - ground.lowered
    across = [roles.pop(role) for role in ("sigma_e", "sigma_n") if role in roles]
    if len(across) == 2 and "sigma_h" not in roles:
        roles["sigma_h"] = np.hypot(*across)
    if "time" in roles:
        roles["time"] = _of_serial_days(roles["time"])
    if "date" in roles:
        roles["time"] = _moments(roles.pop("date"), roles.get("time"))
    beside: Dict[str, np.ndarray] = {role: roles.pop(role) for role in _KEPT_BESIDE if role in roles}
    for name, values in extra.items():
        if name.startswith("column_") and used.header is None and not any(values):
            continue  # delimiters at the ends of all lines
        beside[new_name(name, list(beside))] = values
    positions = None
    if degrees:
        kind = HeightKind.ELLIPSOIDAL if coordinates[2] == "ellipsoidal_height" else HeightKind.UNKNOWN
        positions = GeographicPoints(east, north, ground.height, kind)
        east = north = np.full(len(every.line), np.nan)
    points = make_points(
        east, north, ground.height, **roles, source_line=every.line, extra=beside, crs=crs, source=source.file
    )
    texts = source.texts([line for line, _ in refused])
    rejects = make_rejects([(line, text, reason) for (line, reason), text in zip(refused, texts)])
    account = LineAccount(
        source.lines, len(points), len(rejects),
        *(sum(getattr(block, what) for block in blocks) for what in ("comments", "blanks", "header")),
    )  # fmt: skip
    told = (*notes, *ground.notes, *(() if ground.statement is None else (ground.statement,)))
    return PointFile(points, rejects, account, used, told, positions, ground=ground.statement, above=above.lines)


def _joined(blocks: Sequence[Block]) -> _Columns:
    parts = [block.points for block in blocks]
    return _Columns(
        np.concatenate([part.line for part in parts]),
        {role: np.concatenate([part.columns[role] for part in parts]) for role in parts[0].columns},
        {name: np.concatenate([part.extra[name] for part in parts]) for name in parts[0].extra},
    )


def _of_serial_days(time: np.ndarray) -> np.ndarray:
    """Seconds of times that a spreadsheet wrote as days since 1899-12-30 (of the years 1990 to 2100, and closer to each
    other than any receiver stores points); others as they are.
    """
    known = time[np.isfinite(time)]
    if len(known) < 3 or known.min() < 32_874 or known.max() > 73_415:
        return time
    step = np.abs(np.diff(known))
    close = (step > 0).any() and float(np.median(step)) < 0.005 and (known != np.floor(known)).any()
    return (time - _SERIAL_1970) * _DAY if close else time


def _moments(date: np.ndarray, clock: Optional[np.ndarray]) -> np.ndarray:
    """Seconds of days and times of day in columns of their own."""
    if clock is None:
        return date
    day = np.floor(date / _DAY) * _DAY
    return np.where(np.isfinite(clock), day + np.mod(clock, _DAY), np.nan)


#: Words for what the lines below a table give of its columns.
_TOTALS = frozenset(
    each("""mean average avg median min minimum max maximum sum total totals range std stdev stddev count mittel
    mittelwert summe gesamt anzahl moyenne somme media promedio suma totale minimo maximo gemiddelde
    totaal srednia prumer""")
)


def _without_totals(
    every: _Columns, coordinates: Sequence[str], plan: Plan
) -> Tuple[_Columns, List[Tuple[int, Message]]]:
    """The points without lines at the end that give means, limits or sums, and without a first line that counts the
    columns; the refusal of each.
    """
    refused: Dict[int, Message] = {}
    words = [every.roles[role] for role in ("name", "code") if role in every.roles] + list(every.extra.values())
    for i in range(max(0, len(every.line) - 8), len(every.line)):
        said = [str(values[i]) for values in words if values.dtype.kind == "O"]
        if any(fold(word) in _TOTALS for word in said if word):
            refused[i] = message(reject.TOTALS, word=next(word for word in said if fold(word) in _TOTALS))
    end = min(refused, default=len(every.line))
    for i in summary_rows([_as_written(every, role, plan)[:end] for role in coordinates]):
        refused[i] = message(reject.SUMS_UP)
    first = [every.roles[role][0] for role in coordinates] if len(every.line) > 3 else []
    ordered = sorted(float(value) for value in first)
    if (
        first
        and ordered[2] <= 40
        and [ordered[1] - ordered[0], ordered[2] - ordered[1]] == [1.0, 1.0]
        and all(value == int(value) for value in ordered)
    ):
        refused[0] = message(reject.COUNTS_COLUMNS)
    if not refused:
        return every, []
    return every.without(np.array(sorted(refused))), [(int(every.line[i]), why) for i, why in refused.items()]


def _factor(role: str, plan: Plan) -> float:
    return plan.factors.get(role, 1.0) if ROLES[role] is not Kind.ANGLE else 1.0


def _as_written(every: _Columns, role: str, plan: Plan) -> np.ndarray:
    """Numbers (n,) of a column in the unit of the file."""
    factor = _factor(role, plan)
    return every.roles[role] if factor == 1.0 else np.round(every.roles[role] / factor, 9)


def _among(value: float, others: np.ndarray) -> bool:
    """Whether a value lies where most of ``others`` do: that of a line whose coordinates were exchanged."""
    low, high = (float(edge) for edge in np.percentile(others[:: max(1, len(others) // 4096)], [5.0, 95.0]))
    spread = max(high - low, 1.0)
    return low - spread <= value <= high + spread


def _one_place(every: _Columns, coordinates: Sequence[str], rows: np.ndarray) -> bool:
    """Whether several points are one place stored again, such as a base, to the last digit."""
    return len(rows) > 1 and all(np.ptp(every.roles[role][rows]) == 0.0 for role in coordinates)


def _without_markers(
    file: str, every: _Columns, coordinates: Sequence[str], plan: Plan, given: Given
) -> Tuple[_Columns, List[Tuple[int, Message]], List[Message]]:
    """The points without those whose coordinate stands for no value, the refusal of each, and what to tell."""
    sure: List[Tuple[str, Marker]] = []
    questions: List[Question] = []
    for role in coordinates:
        factor = _factor(role, plan)
        raw = _as_written(every, role, plan)
        if given.no_value is not None:
            sure += [(role, marker) for marker in given_markers(raw, given.no_value)]
            continue
        if role == coordinates[2] and len(raw) > 2 and raw[0] == 0.0 and not raw.any():
            questions.append(all_zero(role))
            continue
        flat = _FLAT * _DEGREES_PER_METRE if ROLES[role] is Kind.ANGLE else _FLAT / factor
        markers = find_markers(raw, flat)
        if markers and role != coordinates[2]:
            # In a local grid a line may well begin at 0.
            local = ROLES[role] is Kind.COORDINATE and abs(float(np.median(every.roles[role]))) < _LOCAL
            other = every.roles[coordinates[1 - coordinates.index(role)]] / factor
            markers = [
                one
                for one in markers
                if one.sure
                and not (local and one.value == 0.0)
                and (is_usual(one.value) or not _among(one.value, other))
            ]
        sure += [(role, marker) for marker in markers if marker.sure]
        doubtful = [one for one in markers if not one.sure and not _one_place(every, coordinates, one.where)]
        if doubtful:
            known = list(dict.fromkeys(marker.value for _, marker in sure))
            line = int(every.line[min(int(marker.where[0]) for marker in doubtful)])
            questions.append(open_question(role, doubtful, known, line))
    if questions:
        raise QuestionError(file, questions[:1])
    refused: Dict[int, Tuple[int, Message]] = {}
    notes: List[Message] = []
    for role, marker in sure:
        column = plan.layout.roles[role] + 1
        for i in marker.where.tolist():
            why = message(reject.NO_VALUE, role=role, column=column, value=plain(marker.value))
            refused.setdefault(i, (int(every.line[i]), why))
        if given.no_value is None:
            notes.append(marked(file, role, marker, int(every.line[marker.where[0]])))
    if not refused:
        return every, [], []
    return every.without(np.array(sorted(refused))), list(refused.values()), notes
