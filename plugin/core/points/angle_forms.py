"""How a file writes its degrees, and on which side of zero they are."""

from __future__ import annotations

from dataclasses import replace
from typing import Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .angles import LIMIT, side_signs, unpacked
from .features import Column, usual_step
from .questions import Answer, Question, Topic
from .reading import EVEN, WALK, Case, Pair, word_of
from .said_units import DEGREES_IN, RUNS, AngleForm
from .vocabulary import each
from .words import fold

PACKED_OR_NOT = Text(
    "recognise.angles_open",
    QT_TRANSLATE_NOOP("core", "nothing says for sure how the degrees of columns {first} and {second} are written"),
)
AGAINST_HEADER = Text(
    "recognise.angles_against_header",
    QT_TRANSLATE_NOOP(
        "core",
        "column {column} is headed '{word}', but its digits of minutes or seconds go beyond 59 or its degrees "
        "beyond their range",
    ),
)
WEST_OR_EAST = Text(
    "recognise.west_or_east",
    QT_TRANSLATE_NOOP(
        "core",
        "the longitudes of column {column} have no sign and no letter, and {why} speaks for the west",
    ),
)
AREA_IN_WEST = Text("recognise.area_in_west", QT_TRANSLATE_NOOP("core", "the area of use of the CRS"))
WORDS_OF_WEST = Text("recognise.words_of_west", QT_TRANSLATE_NOOP("core", "a line of words"))
COUNTED_WEST = Text("recognise.counted_west", QT_TRANSLATE_NOOP("core", "they count to the west: {shown}"))
COUNTED_EAST = Text("recognise.counted_east", QT_TRANSLATE_NOOP("core", "they count to the east: {shown}"))
_LABELS = {
    AngleForm.DEGREES: Text("recognise.angles_degrees", QT_TRANSLATE_NOOP("core", "decimal degrees: {shown}")),
    AngleForm.DMS: Text(
        "recognise.angles_dms", QT_TRANSLATE_NOOP("core", "degrees, then digits of minutes and seconds: {shown}")
    ),
    AngleForm.DDMM: Text("recognise.angles_ddmm", QT_TRANSLATE_NOOP("core", "degrees and minutes in one: {shown}")),
    AngleForm.DDMMSS: Text(
        "recognise.angles_ddmmss", QT_TRANSLATE_NOOP("core", "degrees, minutes and seconds in one: {shown}")
    ),
    AngleForm.GON: Text("recognise.angles_gon", QT_TRANSLATE_NOOP("core", "gon: {shown}")),
    AngleForm.RADIANS: Text("recognise.angles_radians", QT_TRANSLATE_NOOP("core", "radians: {shown}")),
    AngleForm.MINUTES: Text("recognise.angles_minutes", QT_TRANSLATE_NOOP("core", "minutes of arc: {shown}")),
    AngleForm.SECONDS: Text("recognise.angles_seconds", QT_TRANSLATE_NOOP("core", "seconds of arc: {shown}")),
    **dict.fromkeys(
        (AngleForm.MILLIONTHS, AngleForm.TEN_MILLIONTHS, AngleForm.BILLIONTHS),
        Text("recognise.angles_parts", QT_TRANSLATE_NOOP("core", "so many parts of a degree: {shown}")),
    ),
    **dict.fromkeys(
        RUNS,
        Text(
            "recognise.angles_run",
            QT_TRANSLATE_NOOP("core", "degrees, minutes, seconds and their decimals in one run of digits: {shown}"),
        ),
    ),
    AngleForm.AROUND: Text(
        "recognise.angles_around", QT_TRANSLATE_NOOP("core", "decimal degrees, longitudes from 0 to 360: {shown}")
    ),
}
#: Seconds of arc in one with degrees have so many decimals at least.
_PACKED_DECIMALS = 5
#: On a sphere, for the steps of a walk.
METRES_IN_DEGREE = 111_195.0
_WEST = frozenset(each("west western westlich ouest oeste ovest"))
_EAST = frozenset(each("east eastern ostlich est este"))
_LONGITUDES = frozenset(
    each("longitude longitudes lon long lons lange langen laenge laengen longitud longitudine longitudini")
)
_PACKED = (AngleForm.DMS, AngleForm.DDMM, AngleForm.DDMMSS)
#: Forms that are told by more than the size of their numbers.
_BY_MORE = (AngleForm.AROUND, AngleForm.WEST)


class SettledAngles(NamedTuple):
    """The form of the degrees, and what is open."""

    form: AngleForm
    questions: Tuple[Question, ...] = ()


def settle_angles(case: Case, pair: Optional[Pair]) -> SettledAngles:
    """As the user says, as the header says where the digits allow it, by digits that degrees cannot have."""
    given = case.look.given.angles
    if given is not None or pair is None or not pair.degrees:
        return SettledAngles(AngleForm.DEGREES if given in (None, AngleForm.WEST) else given)
    if pair.first.is_angle or pair.second.is_angle:
        return SettledAngles(AngleForm.DEGREES)
    raw = case.columns
    columns = {"longitude": raw[pair.first.place], "latitude": raw[pair.second.place]}
    able = [
        form
        for form in AngleForm
        if form not in _BY_MORE and all(_fits(column, role, form) for role, column in columns.items())
    ]
    said = _said(case, pair)
    if said in (None, AngleForm.DEGREES) and AngleForm.DEGREES not in able and _goes_around(columns):
        return _around(case, able, columns, pair)
    where = {"first": pair.first.place + 1, "second": pair.second.place + 1}
    if said is not None:
        forms = [form for form in _meant(said) if form in able]
        if said in _PACKED and len(forms) > 1:  # 4807.038 may be minutes, or minutes and seconds, by size alone
            forms = [form for form in forms if form is said] or forms
        if len(forms) == 1:
            return _with_west(case, forms[0], columns, pair)
        if forms and all(form in RUNS for form in forms):
            return _of_runs(case, forms, columns, where)
        place = pair.second.place
        text = message(AGAINST_HEADER, column=place + 1, word=word_of(case, place))
        return SettledAngles(said, (_question(text, able, columns),))
    if AngleForm.DEGREES in able:
        return (
            _packed_unsaid(case, columns, where)
            or _asked_of_west(case, columns, pair)
            or _by_landing(case, able, columns, where)
        )
    return _of_runs(case, able, columns, where) if able else SettledAngles(AngleForm.DEGREES)


def _of_runs(case: Case, able: Sequence[AngleForm], columns: Dict[str, Column], where: Dict[str, int]) -> SettledAngles:
    """Of forms that the digits allow the one that lands in the area of use, else the question which it is, those with
    the steps of a walk first.
    """
    near = [form for form in able if _lands(case, form, columns)[0]]
    if len(near) == 1 and case.landing.known:
        return SettledAngles(near[0])
    forms = sorted(near or able, key=lambda form: not _walks(case, form, columns))
    return SettledAngles(forms[0], (_question(message(PACKED_OR_NOT, **where), forms, columns),))


def _goes_around(columns: Dict[str, Column]) -> bool:
    """Whether longitudes go beyond 180 and up to 360 while latitudes are degrees."""
    lon = columns["longitude"].good
    around = ((lon >= 0.0) & (lon <= 360.0)).mean() if len(lon) else 0.0
    return bool(around >= 0.95) and _fits(columns["latitude"], "latitude", AngleForm.DEGREES)


def _around(case: Case, able: List[AngleForm], columns: Dict[str, Column], pair: Pair) -> SettledAngles:
    """Longitudes from 0 to 360, unless another form alone lands near the area of use."""
    near = [form for form in able if _lands(case, form, columns)[0]]
    if not case.landing.known or _lands(case, AngleForm.AROUND, columns)[1] or not near:
        return SettledAngles(AngleForm.AROUND)
    text = message(PACKED_OR_NOT, first=pair.first.place + 1, second=pair.second.place + 1)
    return SettledAngles(AngleForm.AROUND, (_question(text, [*near, AngleForm.AROUND], columns),))


def _with_west(case: Case, form: AngleForm, columns: Dict[str, Column], pair: Pair) -> SettledAngles:
    """A form that the header says, or the question of west for decimal degrees."""
    asked = _asked_of_west(case, columns, pair) if form is AngleForm.DEGREES else None
    return asked or SettledAngles(form)


def _asked_of_west(case: Case, columns: Dict[str, Column], pair: Pair) -> Optional[SettledAngles]:
    """The question whether longitudes without a sign count to the west, where the area of use of the CRS or a line of
    words says so; None where nothing does.
    """
    if not counts_east(case, pair):
        return None
    lon, lat = columns["longitude"].values, columns["latitude"].values
    both = np.isfinite(lon) & np.isfinite(lat)
    east, west = (case.landing.of_degrees(sign * lon[both], lat[both]) for sign in (1.0, -1.0))
    why = AREA_IN_WEST if west[0] and not east[1] else None
    for line in case.look.above.lines:
        words = set(fold(line).split())
        why = why or (WORDS_OF_WEST if words & _LONGITUDES and words & _WEST and not words & _EAST else None)
    if why is None:
        return None
    return SettledAngles(
        AngleForm.DEGREES, (west_question(pair.first.place + 1, message(why), float(np.median(lon[both]))),)
    )


def west_question(column: int, why: Message, longitude: float) -> Question:
    """Whether longitudes without a sign count to the west; ``why``: what speaks for it."""
    answers = tuple(
        Answer("--angles", form.value, message(text, shown=f"{longitude:.5f}° {side}"))
        for form, text, side in ((AngleForm.WEST, COUNTED_WEST, "W"), (AngleForm.DEGREES, COUNTED_EAST, "E"))
    )
    return Question(Topic.ANGLES, message(WEST_OR_EAST, column=column, why=why), answers)


def counts_east(case: Case, pair: Optional[Pair]) -> bool:
    """Whether longitudes are positive decimal degrees with no sign or letter of their side, and nobody has said which
    it is.
    """
    if pair is None or not pair.degrees or case.look.given.angles is not None or pair.first.is_angle:
        return False
    if "longitude" in (*find_sides(case, pair), *turned_sides(case, pair)):
        return False
    word = case.words[pair.first.place] if pair.first.place < len(case.words) else None
    good = case.columns[pair.first.place].good
    return len(good) > 0 and bool((good > 0.0).all()) and (word is None or word.side == "")


def _packed_unsaid(case: Case, columns: Dict[str, Column], where: Dict[str, int]) -> Optional[SettledAngles]:
    """The question whether numbers without a word are decimal degrees or degrees, minutes and seconds in one, where
    their digits allow both and the steps of a walk do not tell; None where they do.
    """
    if case.look.source.table is not None and case.look.source.table.crs:
        return None  # geometries are in decimal degrees
    for column in columns.values():
        packed = unpacked(column.good, AngleForm.DMS)
        if column.decimals < _PACKED_DECIMALS or np.isfinite(packed).mean() < 0.95:
            return None
    walked = [form for form in (AngleForm.DEGREES, AngleForm.DMS) if _walks(case, form, columns)]
    if walked == [AngleForm.DEGREES]:
        return None
    forms = [AngleForm.DMS, AngleForm.DEGREES] if walked else [AngleForm.DEGREES, AngleForm.DMS]
    lands = {form: _lands(case, form, columns) for form in forms}
    if case.landing.known and lands[AngleForm.DEGREES][0] and not lands[AngleForm.DMS][1]:
        return None
    return SettledAngles(AngleForm.DEGREES, (_question(message(PACKED_OR_NOT, **where), forms, columns),))


def _walks(case: Case, form: AngleForm, columns: Dict[str, Column]) -> bool:
    """Whether points follow each other as a rover on foot stores them, read so."""
    lon, lat = (unpacked(columns[role].values, form) for role in ("longitude", "latitude"))
    north = lat * METRES_IN_DEGREE
    east = lon * METRES_IN_DEGREE * np.cos(np.radians(np.nanmedian(lat)))
    step, even = usual_step(east, north, case.look.rows.part)
    return even >= EVEN and WALK[0] < step < WALK[1]


def _by_landing(case: Case, able: List[AngleForm], columns: Dict[str, Column], where: Dict[str, int]) -> SettledAngles:
    """Degrees, unless they land far from the area of use and another form near it."""
    lands = {form: _lands(case, form, columns) for form in able}
    if not case.landing.known or lands[AngleForm.DEGREES][1]:
        return SettledAngles(AngleForm.DEGREES)
    near = [form for form in able if lands[form][0]]
    if not near:
        return SettledAngles(AngleForm.DEGREES)
    text = message(PACKED_OR_NOT, **where)
    return SettledAngles(AngleForm.DEGREES, (_question(text, [*near, AngleForm.DEGREES], columns),))


def _lands(case: Case, form: AngleForm, columns: Dict[str, Column]) -> Tuple[bool, bool]:
    values = {role: unpacked(column.values, form) for role, column in columns.items()}
    both = np.isfinite(values["longitude"]) & np.isfinite(values["latitude"])
    return case.landing.of_degrees(values["longitude"][both], values["latitude"][both])


def _said(case: Case, pair: Pair) -> Optional[AngleForm]:
    places = [place for place in (pair.second.place, pair.first.place) if place < len(case.words)]
    return next((case.words[place].angle for place in places if case.words[place].angle is not None), None)


def _meant(said: AngleForm) -> Tuple[AngleForm, ...]:
    """The forms that a header may mean: packed ones differ by their size only."""
    if said is AngleForm.DMS:
        return AngleForm.DMS, AngleForm.DDMMSS, *RUNS
    if said is AngleForm.DDMM:
        return AngleForm.DDMM, AngleForm.DDMMSS
    return (said,)


def _fits(column: Column, role: str, form: AngleForm) -> bool:
    """Whether nineteen in twenty values are angles of this role, and in a range that the form has."""
    good = column.good
    if not len(good):
        return False
    if form in (AngleForm.DDMM, AngleForm.DDMMSS) and np.median(np.abs(good)) < (
        100.0 if form is AngleForm.DDMM else 1e4
    ):
        return False
    if form in RUNS and not (column.whole and np.median(np.abs(good)) >= 1e3 * 10.0 ** RUNS[form]):
        return False
    if form is AngleForm.RADIANS and np.abs(good).max() > 3.15:
        return False
    if DEGREES_IN.get(form, 1.0) < 0.5 and np.median(np.abs(good)) * DEGREES_IN[form] < 0.1:
        return False
    values = unpacked(good, form)
    with np.errstate(invalid="ignore"):
        return bool((np.abs(values) <= LIMIT[role]).mean() >= 0.95)


def _question(text: Message, forms: Sequence[AngleForm], columns: Dict[str, Column]) -> Question:
    shown = columns["latitude"].middle
    answers = []
    for form in forms:
        value = float(unpacked(np.array([shown]), form)[0])
        answers.append(Answer("--angles", form.value, message(_LABELS[form], shown=f"{value:.5f}°")))
    return Question(Topic.ANGLES, text, tuple(answers))


def turned_sides(case: Case, pair: Optional[Pair]) -> Tuple[str, ...]:
    """The roles whose header word says west or south while their values count up: they count that way."""
    if pair is None or not pair.degrees:
        return ()
    found = []
    for role, column in zip(pair.roles, (pair.first, pair.second)):
        side = case.words[column.place].side if column.place < len(case.words) else ""
        if role == "longitude" and case.look.given.angles is AngleForm.WEST:
            side = "W"
        if side in ("W", "S") and not column.letters and case.columns[column.place].middle > 0.0:
            found.append(role)
    return tuple(found)


def as_degrees(case: Case, pair: Pair) -> Pair:
    """A pair of columns in degrees with the values that its form and its letters of sides give."""
    form, sides = settle_angles(case, pair).form, find_sides(case, pair)
    columns = []
    for role, column in zip(pair.roles, (pair.first, pair.second)):
        values = unpacked(column.values, form)
        if role in sides:
            signs = side_signs(role)
            words = [row[sides[role]] if sides[role] < len(row) else "" for row in case.look.rows.fields]
            values = values * np.array([signs.get(word.strip().upper(), 1.0) for word in words])
        if role in turned_sides(case, pair):
            values = -values
        columns.append(replace(column, values=values))
    return replace(pair, first=columns[0], second=columns[1])


def find_sides(case: Case, pair: Optional[Pair]) -> Dict[str, int]:
    """Role to the place of a column that holds nothing but the letter of the side, right behind or before the angle."""
    if pair is None or not pair.degrees:
        return {}
    found = {}
    for role, column, letters in (("longitude", pair.first, "EWO"), ("latitude", pair.second, "NS")):
        if column.letters:
            continue
        for place in (column.place + 1, column.place - 1):
            fields = [row[place].strip().upper() for row in case.look.rows.fields if 0 <= place < len(row)]
            filled = [field for field in fields if field]
            if filled and len(filled) >= 0.9 * len(fields) and all(len(f) == 1 and f in letters for f in filled):
                found[role] = place
                break
    return found
