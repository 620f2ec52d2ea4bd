"""Control points of a file."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, Dict, List, NamedTuple, Optional, Sequence, Tuple, Union

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from ..points.angles import parse_angle, unpacked
from ..points.detect import Form, settle_form
from ..points.given import Given
from ..points.landing import Landing
from ..points.length_units import STRANGE_UNIT
from ..points.lines_of_text import is_value, split_line
from ..points.no_value import is_usual
from ..points.number_marks import Marks, is_no_value, ungrouped, usual_marks, without_unit
from ..points.questions import Answer, Question, QuestionError, Topic
from ..points.recognise import look_at, recognise_look
from ..points.recognition import Recognition
from ..points.source import decoded
from ..points.words import read_word, roles_by_words
from ..units import LengthUnit, axis_unit, metres_per_height_unit, metres_per_unit
from .axes import flat, from_lonlat
from .control import ControlPoints
from .crs_said import lines_of_columns, said_in_lines
from .fit_readings import FitReading, parse_reading
from .position import place_said
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
FEET_OPEN = Text(
    "control.feet_open",
    QT_TRANSLATE_NOOP("core", "its header says feet, and not whether international or U.S. survey feet"),
)
PREFIX_OPEN = Text(
    "control.prefix_open",
    QT_TRANSLATE_NOOP("core", "its eastings have a number, {number}, before them, and {crs} has none there"),
)
NO_LEVEL = Text(
    "control.no_level",
    QT_TRANSLATE_NOOP("core", "{file}: the height {value} of '{name}' stands for none, and counts as not known."),
    weight=1,
)


def read_control(
    path: Union[str, Path], unit: Optional[LengthUnit] = None, crs: Optional[Any] = None, word: str = ""
) -> ControlPoints:
    """Control points of a file of the columns name, easting, northing and, where known, height.

    Read as survey files are: header words in many languages, units that the header says, any usual delimiter and
    encoding, latitude and longitude in place of easting and northing (then on the datum of ``crs``). A height may be
    empty; heights that are all 0 count as not known. ``unit``: of all coordinates; None for those that the header
    says, else those of the axes of ``crs``, metres without one. ``word``: the user's reading of control
    (:func:`.fit_readings.parse_reading`), which settles what is asked of it here. Raises SurveyError naming the line of
    what cannot be read.
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
    look = look_at(form, None, crs if crs is not None and crs.is_projected else None, given)
    found = recognise_look(look)
    reading = parse_reading(word)
    roles = _roles(file, form, found, reading)
    metres = _metres(found, given, crs)
    numbers = _read_lines(file, form, found, roles)
    control = _in_metres(file, numbers, metres, crs, "longitude" in roles)
    if reading is None:
        _ask_of_prefix(control, crs)
    words = () if form.header is None else form.header.words
    columns = ((name, [row[i] for row in look.rows.fields if i < len(row)]) for i, name in enumerate(words))
    said = said_in_lines(Path(path).name, [*look.above.lines, *words, *lines_of_columns(columns)], crs)
    return replace(control, messages=(*said, *control.messages))


#: What may be open about columns of control, by header words and without.
_OPEN = (Topic.ANGLES, Topic.UNIT, Topic.HEIGHT_UNIT, Topic.HEIGHT, Topic.LETTER, Topic.TWICE)
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


def _roles(file: str, form: Form, found: Recognition, reading: Optional[FitReading]) -> Dict[str, int]:
    """Role to place of a column. Raises SurveyError for a column that is missing, and for what is not certain."""
    best = {role: column - 1 for role, column in found.guesses[0].columns.items()} if found.guesses else {}
    words = [] if form.header is None else [read_word(word) for word in form.header.words]
    named = {role: places[0] for role, places in roles_by_words(words)[0].items()} if words else dict(best)
    degrees = {"longitude", "latitude"} <= set(named) and not {"easting", "northing"} & set(named)
    plan = ("longitude", "latitude") if degrees else ("easting", "northing")
    by_words = bool(words) and set(plan) <= set(named)
    if not by_words and {"easting", "northing"} <= set(best):
        named.update({role: best[role] for role in plan})
    for role in ("name", *plan):
        if role not in named:
            raise SurveyError(NO_HEADER, file=file, line=form.sample.lines[0].line, column=role)
    for one in found.questions:
        open_plan = not by_words and (one.topic in _OPEN_PLAN or not words)
        if one.stops and (one.topic in _OPEN or open_plan):
            if one.topic is Topic.UNIT and _are_feet(one):
                if reading is not None and reading.control is not None:
                    continue
                raise QuestionError(file, [_which_feet()])
            raise SurveyError(NOT_CERTAIN, file=file, question=one.text)
    roles = {role: named[role] for role in ("name", *plan, "height", "ellipsoidal_height") if role in named}
    for role, place in roles.items():
        if role != "name" and place < len(words) and words[place].strange:
            text = message(STRANGE_UNIT, column=place + 1, word=form.header.words[place] if form.header else "")
            raise SurveyError(NOT_CERTAIN, file=file, question=text)
    return roles


def _are_feet(question: Question) -> bool:
    return {answer.value for answer in question.answers} == {LengthUnit.FOOT.value, LengthUnit.US_SURVEY_FOOT.value}


def _which_feet() -> Question:
    """Of control in feet: by --control-as, as its unit is no business of the survey."""
    readings = [FitReading(control=unit) for unit in (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)]
    answers = tuple(Answer("--control-as", one.word, one.told) for one in readings)
    return Question(Topic.CONTROL, message(FEET_OPEN), answers)


def _ask_of_prefix(control: ControlPoints, crs: Optional[Any]) -> None:
    """Raise the question whether eastings have the number of a zone before them, where with it they lie nowhere."""
    if crs is None or not crs.is_projected or not len(control):
        return
    numbers = set(np.floor(control.easting / 1e6).tolist())
    bare = FitReading(prefixed=True).of_control(control)
    landing = Landing(crs)
    if len(numbers) != 1 or not 1 <= min(numbers) <= 60 or landing.of_plan(control.easting, control.northing)[1]:
        return
    if landing.of_plan(bare.easting, bare.northing)[0]:
        text = message(PREFIX_OPEN, number=int(min(numbers)), crs=crs_name(crs))
        answers = tuple(
            Answer("--control-as", one.word, one.told, place=place_said(crs, read.easting, read.northing, ()))
            for one, read in ((FitReading(prefixed=True), bare), (FitReading(), control))
        )
        raise QuestionError(control.source, [Question(Topic.CONTROL, text, answers)])


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
    values: List[List[float]] = []
    head = 0 if form.header is None else form.header.line
    for number, text in form.source.each_line():
        bare = text.strip()
        if number <= head or not bare or (form.comment and bare.startswith(form.comment)):
            continue
        fields = split_line(text, form.delimiter) or []
        cell = {role: fields[place].strip() if place < len(fields) else "" for role, place in roles.items()}
        if not values and _says_units(fields, roles):
            continue
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


def _says_units(fields: Sequence[str], roles: Dict[str, int]) -> bool:
    """Whether a line below the header says units, and nothing else."""
    cells = [fields[place] for role, place in roles.items() if role != "name" and place < len(fields)]
    return bool(cells) and not any(is_value(cell) for cell in cells)


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
    names = list(numbers.lines)
    for i in np.flatnonzero(np.isfinite(up) & (np.abs(up * metres[1]) > 90.0)).tolist():
        # Of few points only what programs write for none, and no ground has, is none.
        others = np.delete(up, i)
        far = np.abs(others[np.isfinite(others)] - up[i]).min(initial=np.inf) * metres[1] > 500.0
        if is_usual(float(up[i])) and far:
            notes.append(message(NO_LEVEL, file=file, value=Figure(f"{up[i]:.12g}"), name=names[i]))
            up[i] = np.nan
    return ControlPoints(
        np.array(list(numbers.lines), dtype=object), east, north, up * metres[1],
        np.array(list(numbers.lines.values()), np.int64), file, metres, tuple(notes),
    )  # fmt: skip
