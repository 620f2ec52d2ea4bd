"""Control points: read from a file, matched with surveyed points by name."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any, Dict, List, Mapping, NamedTuple, Optional, Sequence, Tuple, Union

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from ..points.angles import parse_angle, unpacked
from ..points.detect import Form, settle_form
from ..points.given import Given
from ..points.length_units import STRANGE_UNIT
from ..points.lines_of_text import split_line
from ..points.number_marks import Marks, is_no_value, ungrouped, usual_marks, without_unit
from ..points.pointset import PointSet
from ..points.questions import Topic
from ..points.recognise import look_at, recognise_look
from ..points.recognition import Recognition
from ..points.source import decoded
from ..points.words import read_word, roles_by_words
from ..units import LengthUnit, axis_unit, metres_per_height_unit, metres_per_unit
from .axes import flat, from_lonlat
from .record import crs_name

UNREADABLE = Text(
    "control.unreadable",
    QT_TRANSLATE_NOOP("core", "{file}: the control file cannot be read ({reason}); check path and permissions."),
)
NOT_CERTAIN = Text(
    "control.not_certain",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {question}; head the columns of control points name, easting, northing and height, with the unit in "
        "brackets.",
    ),
)
NO_PLACE_FOR_DEGREES = Text(
    "control.no_place_for_degrees",
    QT_TRANSLATE_NOOP("core", "{file}: its positions are in degrees; give a projected CRS as --crs to bring them to."),
)
DEGREES_OF = Text(
    "control.degrees_of",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: latitudes and longitudes of control points are taken as those of {datum}, the datum of the CRS.",
    ),
    weight=1,
)
ALL_ZERO = Text(
    "control.all_zero",
    QT_TRANSLATE_NOOP("core", "{file}: the heights of all control points are 0, and count as not known."),
    weight=1,
)
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

    ``metres``: to a unit of plan and of height, as they were read; ``messages``: what to tell of that.
    """

    name: np.ndarray
    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    source_line: np.ndarray
    source: str = ""
    metres: Tuple[float, float] = (1.0, 1.0)
    messages: Tuple[Message, ...] = ()

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
    """Control points of a file whose header names the columns name, easting, northing and, where known, height.

    Read as survey files are: header words in many languages, units that the header says, any usual delimiter and
    encoding, latitude and longitude in place of easting and northing (then on the datum of ``crs``). A height may be
    empty; heights that are all 0 count as not known. ``unit``: of all coordinates; None for those that the header
    says, else those of the axes of ``crs``, metres without one. Raises SurveyError naming the line of what cannot be
    read.
    """
    file = str(path)
    try:
        raw = Path(path).read_bytes()
    except OSError as error:
        raise SurveyError(UNREADABLE, file=file, reason=error.strerror) from error
    if not raw.strip():
        raise SurveyError(NO_POINTS, file=file)
    source = decoded(file, raw)
    form = settle_form(source, None, "auto", None)
    if form.header is None and _names_columns(form.sample.lines[0].fields):
        form = settle_form(source, None, "auto", True)  # above lines without numbers
    given = _given(unit, crs)
    found = recognise_look(look_at(form, None, crs if crs is not None and crs.is_projected else None, given))
    roles = _roles(file, form, found)
    metres = _metres(found, given, crs)
    numbers = _read_lines(file, form, found, roles)
    return _in_metres(file, numbers, metres, crs, "longitude" in roles)


#: What may be open about columns of control, by header words and without.
_OPEN = (Topic.ANGLES, Topic.UNIT, Topic.HEIGHT_UNIT, Topic.LETTER, Topic.TWICE)
_OPEN_PLAN = (Topic.AXES, Topic.DEGREES)


def _names_columns(words: Sequence[str]) -> bool:
    found = roles_by_words([read_word(word) for word in words])[0]
    return {"easting", "northing"} <= set(found) or {"latitude", "longitude"} <= set(found)


def _given(unit: Optional[LengthUnit], crs: Optional[Any]) -> Given:
    """The units that count where the header says none; on the user's word they count whatever it says."""
    if unit is not None:
        return Given(unit, unit, units_from="options")
    axes = [] if crs is None else crs.axis_info
    plan = (axis_unit(axes[0]) if axes else None) or LengthUnit.METRE
    rise = axis_unit(axes[2]) if len(axes) > 2 else plan
    return Given(plan, rise or LengthUnit.METRE, units_from="header")


def _roles(file: str, form: Form, found: Recognition) -> Dict[str, int]:
    """Role to place of a column. Raises SurveyError for a column that is missing, and for what is not certain."""
    if form.header is None:
        raise SurveyError(NO_HEADER, file=file, line=form.sample.lines[0].line, column="name")
    words = [read_word(word) for word in form.header.words]
    named = {role: places[0] for role, places in roles_by_words(words)[0].items()}
    degrees = {"longitude", "latitude"} <= set(named) and not {"easting", "northing"} & set(named)
    plan = ("longitude", "latitude") if degrees else ("easting", "northing")
    best = found.guesses[0].columns if found.guesses else {}
    by_words = set(plan) <= set(named)
    if not by_words and {"easting", "northing"} <= set(best):
        named.update({role: best[role] - 1 for role in plan})
    for role in ("name", *plan):
        if role not in named:
            raise SurveyError(NO_HEADER, file=file, line=form.header.line, column=role)
    for one in found.questions:
        if one.stops and (one.topic in _OPEN or (one.topic in _OPEN_PLAN and not by_words)):
            raise SurveyError(NOT_CERTAIN, file=file, question=one.text)
    roles = {role: named[role] for role in ("name", *plan, "height", "ellipsoidal_height") if role in named}
    for role, place in roles.items():
        if role != "name" and place < len(words) and words[place].strange:
            text = message(STRANGE_UNIT, column=place + 1, word=form.header.words[place])
            raise SurveyError(NOT_CERTAIN, file=file, question=text)
    return roles


def _metres(found: Recognition, given: Given, crs: Optional[Any]) -> Tuple[float, float]:
    """Metres in a unit of plan and of heights: of a CRS whose unit is none of ours where the header says none."""
    metres = []
    for role, own in (("easting", metres_per_unit(crs)), ("height", metres_per_height_unit(crs))):
        unit = found.units.get(role, given.unit or LengthUnit.METRE)
        odd = unit is LengthUnit.METRE and given.units_from == "header"
        metres.append(own if odd and not any(abs(own / one.metres - 1.0) < 1e-7 for one in LengthUnit) else unit.metres)
    return metres[0], metres[1]


class _Numbers(NamedTuple):
    """Name to line, and coordinates (n, 3) along east, along north, up (nan where not known) as they stand."""

    lines: Dict[str, int]
    values: np.ndarray


def _read_lines(file: str, form: Form, found: Recognition, roles: Dict[str, int]) -> _Numbers:
    marks = Marks(found.decimal, usual_marks((line.fields for line in form.sample.lines), 50, found.decimal).thousands)
    order = ("longitude", "latitude") if "longitude" in roles else ("easting", "northing")
    high = next((role for role in ("height", "ellipsoidal_height") if role in roles), "height")
    lines: Dict[str, int] = {}
    values = []
    head = 0 if form.header is None else form.header.line
    for number, text in form.source.each_line():
        bare = text.strip()
        if number <= head or not bare or (form.comment and bare.startswith(form.comment)):
            continue
        fields = split_line(text, form.delimiter) or []
        cell = {role: fields[place].strip() if place < len(fields) else "" for role, place in roles.items()}
        if not cell["name"]:
            raise SurveyError(NO_NAME, file=file, line=number)
        if cell["name"] in lines:
            raise SurveyError(TWICE, file=file, line=number, name=cell["name"], first=lines[cell["name"]])
        lines[cell["name"]] = number
        plan = [_value(file, number, role, cell[role], marks, found) for role in order]
        up = cell.get(high, "")
        rise = np.nan if not up or is_no_value(up) else _value(file, number, high, up, marks, found)
        values.append([*plan, rise])
    if not values:
        raise SurveyError(NO_POINTS, file=file)
    return _Numbers(lines, np.array(values, float))


def _value(file: str, line: int, role: str, field: str, marks: Marks, found: Recognition) -> float:
    bare = without_unit(field)[0]
    bare = ungrouped(bare, marks) or bare
    try:
        value = float(bare.replace(marks.decimal, "."))
        if role in ("latitude", "longitude"):
            value = float(unpacked(np.array([value]), found.angles)[0])
    except ValueError:
        angle = parse_angle(field, role, found.o_means) if role in ("latitude", "longitude") else None
        value = np.nan if angle is None else angle
    if not np.isfinite(value):
        raise SurveyError(BAD_NUMBER, file=file, line=line, column=role, found=field)
    return value


def _in_metres(
    file: str, numbers: _Numbers, metres: Tuple[float, float], crs: Optional[Any], degrees: bool
) -> ControlPoints:
    first, second, up = numbers.values.T
    notes: List[Message] = []
    if degrees:
        if crs is None:
            raise SurveyError(NO_PLACE_FOR_DEGREES, file=file)
        east, north = from_lonlat(crs, first, second)
        notes.append(message(DEGREES_OF, file=file, datum=crs_name(flat(crs).geodetic_crs)))
        metres = (metres_per_unit(crs), metres[1])
    else:
        east, north = first * metres[0], second * metres[0]
    if len(up) > 1 and (up == 0.0).all():
        up = np.full(len(up), np.nan)
        notes.append(message(ALL_ZERO, file=file))
    return ControlPoints(
        np.array(list(numbers.lines), dtype=object), east, north, up * metres[1],
        np.array(list(numbers.lines.values()), np.int64), file, metres, tuple(notes),
    )  # fmt: skip


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
    said = list(control.messages)
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
