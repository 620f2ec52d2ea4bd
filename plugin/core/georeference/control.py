"""Control points: read from a file, matched with surveyed points by name."""

from __future__ import annotations

import csv
import io
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Dict, List, Mapping, Optional, Tuple, Union

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from ..units import LengthUnit, metres_per_height_unit, metres_per_unit

UNREADABLE = Text(
    "control.unreadable",
    QT_TRANSLATE_NOOP("core", "{file}: the control file cannot be read ({reason}); check path and encoding (UTF-8)."),
)
NOT_UTF8 = Text("control.not_utf8", QT_TRANSLATE_NOOP("core", "not UTF-8"))
NO_HEADER = Text(
    "control.no_header",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} line {line}: the column '{column}' is missing; the first line of a control file names the columns "
        "name, easting, northing and, where known, height.",
    ),
)
BAD_NUMBER = Text(
    "control.bad_number",
    QT_TRANSLATE_NOOP("core", "{file} line {line}: {column} '{found}' is no number; mend it."),
)
NO_NAME = Text("control.no_name", QT_TRANSLATE_NOOP("core", "{file} line {line}: the point has no name; give it one."))
TWICE = Text(
    "control.twice",
    QT_TRANSLATE_NOOP("core", "{file} line {line}: control point '{name}' stands in line {first} already; keep one."),
)
NO_POINTS = Text("control.no_points", QT_TRANSLATE_NOOP("core", "{file}: there is no control point in this file."))
NO_MATCH = Text(
    "control.no_match",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: no surveyed point has the name of a control point (such as '{name}'); names must be written alike.",
    ),
)
UNMATCHED = Text(
    "control.unmatched",
    QT_TRANSLATE_NOOP("core", "{count} control points were not surveyed, and are not used: {names}."),
    one=QT_TRANSLATE_NOOP("core", "A control point was not surveyed, and is not used: {names}."),
)
MEASURED_OFTEN = Text(
    "control.measured_often",
    QT_TRANSLATE_NOOP(
        "core",
        "Control point '{name}' was surveyed {count} times; the mean is used, the farthest in plan is {plan_mm} mm "
        "from it, in height {height_mm} mm.",
    ),
)


@dataclass(frozen=True)
class ControlPoints:
    """Known points: ``name`` (object), ``easting``, ``northing``, ``height`` (m, nan where unknown), (n,) each.

    ``metres``: to a unit of plan and of height, as they were read.
    """

    name: np.ndarray
    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    source_line: np.ndarray
    source: str = ""
    metres: Tuple[float, float] = (1.0, 1.0)

    def __len__(self) -> int:
        return len(self.name)


@dataclass(frozen=True)
class ControlMatch:
    """``names`` (n,), ``survey`` and ``control`` (n, 3): easting, northing, height in metres, height nan where
    not known. ``times`` (n,): how often each was surveyed."""

    names: Tuple[str, ...]
    survey: np.ndarray
    control: np.ndarray
    times: np.ndarray
    messages: Tuple[Message, ...]


def read_control(path: Union[str, Path], unit: Optional[LengthUnit] = None, crs: Optional[Any] = None) -> ControlPoints:
    """Control points of a text file whose first line names the columns name, easting, northing, height.

    Separated by comma, semicolon (then a decimal comma is understood) or tab; UTF-8. Empty lines and lines
    that begin with # are passed over, further columns too. ``unit``: of all coordinates; None for those of the
    axes of ``crs``, metres without one. Raises SurveyError naming the line of what cannot be read.
    """
    file = str(path)
    try:
        text = Path(path).read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        reason = error.strerror if isinstance(error, OSError) else NOT_UTF8
        raise SurveyError(UNREADABLE, file=file, reason=reason) from error
    rows = _rows(text, file)
    plan = metres_per_unit(crs) if unit is None else unit.metres
    rise = metres_per_height_unit(crs) if unit is None else unit.metres
    return _points(rows, file, (plan, rise))


def _rows(text: str, file: str) -> List[Tuple[int, Dict[str, str]]]:
    """Line number and cells by column name."""
    lines = [
        (number, line)
        for number, line in enumerate(text.splitlines(), 1)
        if line.strip() and not line.lstrip().startswith("#")
    ]
    if not lines:
        raise SurveyError(NO_POINTS, file=file)
    first, header = lines[0]
    delimiter = max(",;\t", key=header.count)
    columns = [cell.strip().lower() for cell in _cells(header, delimiter)]
    for column in ("name", "easting", "northing"):
        if column not in columns:
            raise SurveyError(NO_HEADER, file=file, line=first, column=column)
    rows = []
    for number, line in lines[1:]:
        cells = [cell.strip() for cell in _cells(line, delimiter)]
        if delimiter == ";":
            cells = [cell if column == "name" else cell.replace(",", ".") for column, cell in zip(columns, cells)]
        rows.append((number, dict(zip(columns, cells))))
    return rows


def _cells(line: str, delimiter: str) -> List[str]:
    return next(csv.reader(io.StringIO(line), delimiter=delimiter))


def _points(rows: List[Tuple[int, Dict[str, str]]], file: str, metres: Tuple[float, float]) -> ControlPoints:
    seen: Dict[str, int] = {}
    coordinates = []
    for number, row in rows:
        name = row.get("name", "")
        if not name:
            raise SurveyError(NO_NAME, file=file, line=number)
        if name in seen:
            raise SurveyError(TWICE, file=file, line=number, name=name, first=seen[name])
        seen[name] = number
        coordinates.append([_number(row, column, file, number) for column in ("easting", "northing", "height")])
    if not coordinates:
        raise SurveyError(NO_POINTS, file=file)
    east, north, up = (np.array(coordinates) * [metres[0], metres[0], metres[1]]).T
    return ControlPoints(
        np.array(list(seen), dtype=object), east, north, up, np.array(list(seen.values()), np.int64), file, metres
    )


def _number(row: Dict[str, str], column: str, file: str, line: int) -> float:
    text = row.get(column, "")
    if column == "height" and not text:
        return np.nan
    try:
        value = float(text)
    except ValueError:
        value = np.nan
    if not np.isfinite(value):
        raise SurveyError(BAD_NUMBER, file=file, line=line, column=column, found=text)
    return value


def match_control(points: PointSet, control: ControlPoints, names: Optional[Mapping[str, str]] = None) -> ControlMatch:
    """Surveyed and known coordinates of the points that carry the same name.

    ``names``: names in the survey that stand for other control points. Rejected points are not used; several of one
    name are averaged, and it is said how far apart they lie. Raises SurveyError when no name matches.
    """
    by_name: Dict[str, List[int]] = {}
    for i in np.flatnonzero(points.used & np.isfinite(points.easting) & np.isfinite(points.northing)):
        name = str(points.name[i]).strip()
        by_name.setdefault((names or {}).get(name, name), []).append(int(i))
    found = [i for i in range(len(control)) if str(control.name[i]) in by_name]
    if not found:
        raise SurveyError(NO_MATCH, file=control.source or points.source, name=control.name[0] if len(control) else "")
    measured = np.column_stack((points.easting, points.northing, points.height))
    said = []
    survey = []
    for i in found:
        rows = measured[by_name[str(control.name[i])]]
        mean = rows[0] + (rows - rows[0]).mean(axis=0)
        survey.append(mean)
        if len(rows) > 1:
            said.append(_often(str(control.name[i]), rows - mean))
    lacking = [str(control.name[i]) for i in range(len(control)) if i not in set(found)]
    if lacking:
        said.append(message(UNMATCHED, count=len(lacking), names=", ".join(lacking)))
    known = np.column_stack((control.easting, control.northing, control.height))[found]
    times = np.array([len(by_name[str(control.name[i])]) for i in found])
    return ControlMatch(tuple(str(control.name[i]) for i in found), np.array(survey), known, times, tuple(said))


def _often(name: str, apart: np.ndarray) -> Message:
    plan = 1000 * float(np.hypot(apart[:, 0], apart[:, 1]).max())
    up = 1000 * float(np.abs(apart[:, 2]).max())
    return message(
        MEASURED_OFTEN, name=name, count=len(apart), plan_mm=Figure(f"{plan:.1f}"),
        height_mm=Figure(f"{up:.1f}") if np.isfinite(up) else "?",
    )  # fmt: skip
