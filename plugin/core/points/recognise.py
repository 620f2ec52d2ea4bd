"""Which column of a file holds what, from header words, from the values, and from where they would land.

Nothing is settled on likelihood alone. Columns are taken when the header names them, or when of all readings
of the values only one lands in the area of use of the CRS; otherwise the question is put to the user, with
the readings ranked.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any, Dict, List, Mapping, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import LengthUnit
from .angle_forms import counts_east, find_sides, settle_angles, turned_sides
from .column_sets import WHICH_SET, which_of_several
from .columns import ROLES, Kind, plain_word
from .detect import Form, settle_form
from .features import MOST, MOST_LOOKED_AT, Column, gather_rows, look_at_columns
from .geographic import HeightKind
from .given import Given
from .height_columns import height_kind, settle_height
from .landing import Landing
from .length_units import settle_unit, unit_of_heights, units_by_role
from .no_value import find_markers, given_markers
from .number_marks import is_number, other_marks, usual_marks
from .other_columns import column_guesses, other_roles
from .plan_columns import settle_letter, settle_pair
from .pole_columns import find_poles
from .questions import Question, Topic
from .reading import DEGREES, PLAN, Case, Look, Pair
from .recognition import Guess, Recognition
from .said_above import said_above
from .said_units import AngleForm
from .source import load_text
from .times import is_month_first
from .unit_columns import with_units_of_values
from .values import Written
from .vocabulary import each
from .words import code_rank, fold, name_rank, read_word, roles_by_words

DAY_FIRST = Text(
    "recognise.day_first",
    QT_TRANSLATE_NOOP("core", "{file}: dates such as 03/04/2025 are read with the day first; nothing says so."),
)
GEOCENTRIC = Text(
    "recognise.geocentric",
    QT_TRANSLATE_NOOP(
        "core",
        "its coordinates are geocentric (X, Y and Z from the middle of the Earth); export eastings, northings and "
        "heights, or latitudes and longitudes",
    ),
)
SEVERAL_ZONES = Text(
    "recognise.several_zones",
    QT_TRANSLATE_NOOP("core", "column {column} says zones {zones}; save the lines of each zone as a file of its own"),
)
#: Metres from the middle of the Earth that ground has.
EARTH = (6.33e6, 6.41e6)
ZONE_WORDS = frozenset(each("zone utmzone gridzone fuseau huso streifen zona zonenr"))
_ZONE = re.compile(r"\s*([0-9]{1,2})(?![0-9.])")
#: Columns that a table of checked points has, whose heights are of the ground.
_OWN_TABLE = {"line", "status", "reason"}
HEADER_FIRST = Text(
    "recognise.two_headed",
    QT_TRANSLATE_NOOP(
        "core",
        "columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside",
    ),
)
KIND_OPEN = Text(
    "recognise.kind_open",
    QT_TRANSLATE_NOOP(
        "core", "nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are"
    ),
)


def recognise(
    path: PathLike,
    *,
    delimiter: Optional[str] = None,
    decimal: Optional[str] = None,
    encoding: Optional[str] = None,
    header: Optional[bool] = None,
    comment: Optional[str] = "auto",
    crs: Optional[Any] = None,
    given: Optional[Given] = None,
) -> Recognition:
    """What the file at ``path`` holds, without reading it whole into points.

    ``crs``: a candidate (projected pyproj CRS), whose area of use decides what header and values leave open. The
    other arguments are what the user knows already, as in :func:`.delimited.read_points`. Raises SurveyError
    where there is no text with three columns.
    """
    form = settle_form(load_text(path, encoding), delimiter, comment, header)
    return recognise_look(look_at(form, decimal, crs, given or Given()))


def look_at(
    form: Form, decimal: Optional[str], crs: Optional[Any], given: Given, mapped: Optional[Dict[str, int]] = None
) -> Look:
    """The look at a file whose form is settled already."""
    head = form.header
    first = [line.fields for line in form.sample.lines if head is None or line.line > head.line]
    rows = gather_rows(form.source, first, form.delimiter, form.comment)
    width = max(form.shape.width, len(head.words) if head else 0)
    marks = usual_marks(rows.fields, MOST_LOOKED_AT, decimal)
    lines = (0 if head is None else head.line, _first_data(form))
    return Look(
        form.source,
        form.delimiter,
        marks,
        form.comment,
        head,
        rows,
        width,
        crs,
        given,
        mapped,
        said_above(form.source, form.comment, *lines),
        other_marks(marks, form.delimiter) if decimal is None else None,
    )


def _first_data(form: Form) -> int:
    """The first line with numbers behind the header."""
    head = 0 if form.header is None else form.header.line
    lines = [line for line in form.sample.lines if line.line > head]
    return next((line.line for line in lines if sum(map(is_number, line.fields)) >= 2), head)


def recognise_look(look: Look) -> Recognition:
    """What the lines of ``look`` hold."""
    case = _case(look)
    pairs, questions = settle_pair(case)
    pair = pairs[0] if pairs else None
    heights, height_reasons, open_height = settle_height(case, pair)
    questions += open_height
    others, other_reasons = other_roles(case, pair, heights)
    letter, open_letter = settle_letter(case, pair)
    questions += open_letter
    unit = settle_unit(case, pair)
    angles = settle_angles(case, pair)
    rise = unit_of_heights(case, heights[0] if heights else {}, unit.unit)
    questions = _systems(case, pair, heights) or questions
    if not any(one.stops for one in questions) or not pairs:
        questions += [*unit.questions, *angles.questions, *rise.questions]
    kind = height_kind(case, heights)
    if pair and pair.degrees and kind is HeightKind.UNKNOWN:
        questions.append(Question(Topic.HEIGHT_KIND, message(KIND_OPEN), (), stops=False))
    reasons = (*height_reasons, *other_reasons, *unit.reasons)
    guesses = _guesses(case, pairs, heights, others, unit.unit, reasons)
    several = which_of_several(case, pairs, heights, others, guesses)
    if any(one.text.text == WHICH_SET for one in several):
        questions = [one for one in questions if one.topic not in (Topic.COLUMNS, Topic.AXES, Topic.HEIGHT)]
    questions = several + questions
    columns = guesses[0].columns if guesses else {}
    month_first, notes = _dates(case, columns)
    return Recognition(
        look.source.file, look.delimiter, look.marks.decimal, look.source.encoding, look.comment, look.header,
        guesses, tuple(_typed(questions, guesses)), tuple(column_guesses(case, place) for place in range(look.width)),
        kind, letter, _explicit(case), (*_notes(case), *notes),
        units_by_role(case, {role: column - 1 for role, column in columns.items()}, unit.unit, rise.unit or METRE),
        angles.form, find_sides(case, pair), month_first, _heights_of(case, heights),
        {role: _written(case.columns[column - 1]) for role, column in columns.items() if column <= len(case.columns)},
        turned_sides(case, pair), angles.form is AngleForm.DEGREES and counts_east(case, pair),
    )  # fmt: skip


METRE = LengthUnit.METRE


def _written(column: Column) -> Written:
    """How the numbers of a column stand."""
    return Written(column.suffix, column.mark, column.decimals if column.either else 0)


def _systems(case: Case, pair: Optional[Pair], heights: Sequence[Dict[str, int]]) -> List[Question]:
    """What stops where the coordinates are of no plane system, or of several."""
    found = []
    places = list(heights[0].values()) if heights else []
    if pair is not None and not pair.degrees and places and places[0] < len(case.columns):
        with np.errstate(over="ignore"):
            radius = np.sqrt(pair.first.values**2 + pair.second.values**2 + case.columns[places[0]].values ** 2)
        radius = radius[np.isfinite(radius)]
        if len(radius) and EARTH[0] < radius.min() and radius.max() < EARTH[1]:
            found.append(Question(Topic.CRS, message(GEOCENTRIC), ()))
    if case.look.mapped is None:
        for place, word in enumerate(case.look.header.words if case.look.header else ()):
            if set(fold(word).split()) & ZONE_WORDS and place < len(case.columns):
                fields = {row[place] for row in case.look.rows.fields if place < len(row)}
                zones = sorted({match[1] for match in map(_ZONE.match, fields) if match is not None})
                if len(zones) > 1:
                    text = message(SEVERAL_ZONES, column=place + 1, zones=", ".join(zones))
                    found.append(Question(Topic.CRS, text, ()))
    return found


def _case(look: Look) -> Case:
    words = [read_word(word) for word in look.header.words] if look.header else []
    named, xy = roles_by_words(words)
    plain = [plain_word(word) for word in look.header.words] if look.header else []
    for role, places in named.items():
        own = [place for place in places if plain[place] == role]
        if own and ROLES[role] not in (Kind.COORDINATE, Kind.ANGLE, Kind.TIME):
            named[role] = own
        elif role in ("code", "name") and len(places) > 1:
            rank = code_rank if role == "code" else name_rank
            named[role] = sorted(places, key=lambda place: rank(look.header.words[place]))  # type: ignore[union-attr]
    if look.mapped is not None:
        named, xy = {role: [place] for role, place in look.mapped.items()}, ()
    no_value = look.given.no_value or ()
    columns = look_at_columns(look.rows, look.width, look.marks, no_value, look.other)
    columns = [_without_markers(column, look.given) for column in columns]
    if look.mapped is None:
        _part_date_and_time(named, columns)
        _without_empty(named, columns)
        find_poles(named, words, look.header.words if look.header else (), columns)
    crs = look.crs if look.crs is not None and look.crs.is_projected else None
    return Case(
        look,
        columns,
        with_units_of_values(words, look.header.words if look.header else (), columns, look.rows),
        named,
        xy,
        Landing(crs),
    )


def _without_markers(column: Column, given: Given) -> Column:
    """The column without numbers that stand for no value, so that they shape no statistic."""
    if not column.is_number:
        return column
    found = find_markers(column.values) if given.no_value is None else given_markers(column.values, given.no_value)
    if not found:
        return column
    values = column.values.copy()
    for marker in found:
        values[marker.where] = np.nan
    return replace(column, values=values) if np.isfinite(values).any() else column


def _without_empty(named: Dict[str, List[int]], columns: Sequence[Column]) -> None:
    """Columns of coordinates that hold nothing lose their role, where others of that kind hold something."""

    def filled(role: str) -> List[int]:
        return [place for place in named.get(role, []) if place < len(columns) and columns[place].filled > 0.0]

    for kind in (("height", "ellipsoidal_height"), (*PLAN, *DEGREES)):
        if not any(filled(role) for role in kind):
            continue
        for role in kind:
            if role in named and len(filled(role)) < len(named[role]):
                named[role] = filled(role)
                if not named[role]:
                    del named[role]


def _part_date_and_time(named: Dict[str, List[int]], columns: Sequence[Column]) -> None:
    """Of two columns headed as times the one of dates alone becomes the date."""
    places = [place for place in named.get("time", []) if place < len(columns)]
    dates = [place for place in places if columns[place].is_date]
    clocks = [place for place in places if place not in dates and columns[place].clock >= MOST]
    if dates and clocks:
        named["date"], named["time"] = dates[:1], clocks


def _dates(case: Case, columns: Mapping[str, int]) -> Tuple[bool, Tuple[Message, ...]]:
    """Whether dates begin with the month, and a note where only custom says so."""
    places = [columns[role] - 1 for role in ("time", "date") if role in columns]
    fields = [row[place] for row in case.look.rows.fields for place in places if place < len(row)]
    first, sure = is_month_first(fields)
    return first, () if sure else (message(DAY_FIRST, file=case.look.source.file),)


def _heights_of(case: Case, heights: Sequence[Dict[str, int]]) -> str:
    """What the header says that heights are of: "antenna", "ground" or ""."""
    header = case.look.header
    if header is not None and {word.strip().lower() for word in header.words} >= _OWN_TABLE:
        return "ground"
    place = next(iter(heights[0].values()), len(case.words)) if heights else len(case.words)
    of = case.words[place].of if place < len(case.words) else ""
    beside = any(word.of == "depth" for word in case.words)  # what a title calls depths may be those
    return of or ("" if beside and case.look.above.of == "depth" else case.look.above.of)


def _notes(case: Case) -> Tuple[Message, ...]:
    file = case.look.source.file
    return tuple(
        message(HEADER_FIRST, file=file, first=places[0] + 1, second=places[1] + 1, role=role)
        for role, places in case.named.items()
        if len(places) > 1 and ROLES[role] not in (Kind.COORDINATE, Kind.ANGLE)
    )


def _guesses(
    case: Case, pairs: Sequence[Pair], heights: Sequence[Dict[str, int]], others: Dict[str, int],
    unit: Optional[LengthUnit], reasons: Tuple[Message, ...],
) -> Tuple[Guess, ...]:  # fmt: skip
    made = []
    for pair in pairs[:6]:
        free = heights if heights else [{}]
        for rank, height in enumerate(one for one in free if not set(one.values()) & set(pair.places.values())):
            roles = {**others, **pair.places, **height}
            order = sorted(roles, key=lambda role: roles[role])
            columns = {role: roles[role] + 1 for role in order if role in ROLES}
            plan = None if pair.degrees else unit
            made.append(
                (
                    pair.score - rank,
                    columns,
                    plan,
                    unit_of_heights(case, height, unit).unit or METRE,
                    (*pair.reasons, *reasons),
                )
            )
    weights = np.exp([min(one[0], 50.0) for one in made]) if made else np.zeros(0)
    return tuple(
        Guess(columns, plan, rise, round(float(weight / weights.sum()), 4), why)
        for weight, (_, columns, plan, rise, why) in zip(weights, made)
    )


def _typed(questions: Sequence[Question], guesses: Sequence[Guess]) -> List[Question]:
    """Questions about columns with the guesses as answers."""
    whole = [guess for guess in guesses if {"height", "ellipsoidal_height"} & set(guess.columns)]
    typed = []
    for one in questions:
        fitting = whole
        if one.topic is Topic.HEIGHT and guesses:
            fitting = [guess for guess in whole if _plan_of(guess) == _plan_of(guesses[0])]
        answers = tuple(guess.answer for guess in fitting[:4])
        asks = one.topic in (Topic.COLUMNS, Topic.AXES, Topic.DEGREES, Topic.HEIGHT)
        typed.append(replace(one, answers=answers) if asks and not one.answers else one)
    return typed


def _plan_of(guess: Guess) -> Tuple[Optional[int], ...]:
    return tuple(guess.columns.get(role) for role in (*PLAN, *DEGREES))


def _explicit(case: Case) -> bool:
    """Whether the header alone names all three coordinates."""
    plan = any(all(role in case.named for role in roles) for roles in (PLAN, DEGREES))
    return plan and ("height" in case.named or "ellipsoidal_height" in case.named)
