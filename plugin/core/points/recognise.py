"""Which column of a file holds what, from header words, from the values, and from where they would land.

Nothing is settled on likelihood alone. Columns are taken when the header names them, or when of all readings
of the values only one lands in the area of use of the CRS; otherwise the question is put to the user, with
the readings ranked.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import permutations
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import LengthUnit, axis_unit
from .columns import ROLES, Kind, plain_word
from .detect import Sample, find_comment, find_header, settle_delimiter, shape_of, split_sample, take_sample
from .features import Column, Rows, gather_rows, look_at_columns, usual_decimal, usual_step
from .geographic import HeightKind
from .landing import Landing
from .layout import TWO_COLUMNS, Header, Shape
from .recognition import Alternative, Ambiguity, ColumnGuess, Guess, Question, Recognition
from .source import TextSource, load_text
from .words import Word, language_of_o, read_word, roles_by_words

BY_WORD = Text("recognise.by_word", QT_TRANSLATE_NOOP("core", "column {column} is {role}: its header word is '{word}'"))
BY_AREA = Text(
    "recognise.by_area",
    QT_TRANSLATE_NOOP(
        "core",
        "columns {first} and {second} are {first_role} and {second_role}: no other reading lands in the area of use "
        "of the CRS ({area})",
    ),
)
LANDS = Text("recognise.lands", QT_TRANSLATE_NOOP("core", "lands in the area of use of the CRS ({area})"))
LANDS_OUTSIDE = Text(
    "recognise.lands_outside", QT_TRANSLATE_NOOP("core", "lands outside the area of use of the CRS ({area})")
)
COMPACT = Text("recognise.compact", QT_TRANSLATE_NOOP("core", "columns {first} and {second} make a compact cloud"))
STEPS = Text(
    "recognise.steps", QT_TRANSLATE_NOOP("core", "points follow each other at {step} in columns {first} and {second}")
)
SIZES = Text(
    "recognise.sizes",
    QT_TRANSLATE_NOOP("core", "six digits before the mark, then seven, as eastings and northings often"),
)
IN_ORDER = Text("recognise.in_order", QT_TRANSLATE_NOOP("core", "the easting is usually written first"))
BY_LETTERS = Text(
    "recognise.by_letters",
    QT_TRANSLATE_NOOP("core", "column {column} is {role}: its angles have the letters {letters}"),
)
ONLY_HEIGHT = Text(
    "recognise.only_height", QT_TRANSLATE_NOOP("core", "column {column} is the height: no other column can be")
)
COUNTS_UP = Text(
    "recognise.counts_up", QT_TRANSLATE_NOOP("core", "column {column} is the name: whole numbers that only grow")
)
ALL_DIFFER = Text("recognise.all_differ", QT_TRANSLATE_NOOP("core", "column {column} is the name: all texts differ"))
REPEATS = Text("recognise.repeats", QT_TRANSLATE_NOOP("core", "column {column} is the code: a few texts repeat"))
LOOKS_LIKE = Text(
    "recognise.looks_like", QT_TRANSLATE_NOOP("core", "the values of column {column} are such as {role} has")
)
UNIT_SAID = Text("recognise.unit_said", QT_TRANSLATE_NOOP("core", "the header says that coordinates are in {unit}"))
UNIT_LANDS = Text(
    "recognise.unit_lands",
    QT_TRANSLATE_NOOP("core", "coordinates are in {unit}: read so they land in the area of use of the CRS, else not"),
)
UNIT_STEPS = Text(
    "recognise.unit_steps",
    QT_TRANSLATE_NOOP(
        "core", "coordinates are in {unit}: points follow each other at {step}, as a rover on foot stores them"
    ),
)
HEADER_FIRST = Text(
    "recognise.two_headed",
    QT_TRANSLATE_NOOP(
        "core",
        "columns {first} and {second} are both headed {role}; the first is read as that, the other is kept beside",
    ),
)
#: What speaks for a reading and does not settle it.
SUPPORTING = (LANDS, LANDS_OUTSIDE, COMPACT, STEPS, SIZES, IN_ORDER)
# Questions
WHICH_COLUMNS = Text(
    "recognise.which_columns", QT_TRANSLATE_NOOP("core", "nothing says for sure which columns are which")
)
WHICH_AXIS = Text(
    "recognise.which_axis",
    QT_TRANSLATE_NOOP("core", "columns {first} and {second} may be easting and northing or the other way round"),
)
HEADER_AGAINST_AREA = Text(
    "recognise.header_against_area",
    QT_TRANSLATE_NOOP(
        "core",
        "the header names columns {first} and {second} as {first_role} and {second_role}, but read so the points lie "
        "outside the area of use of the CRS ({area}), and exchanged or otherwise read inside it",
    ),
)
DEGREES_OR_LENGTHS = Text(
    "recognise.degrees_or_lengths",
    QT_TRANSLATE_NOOP("core", "columns {first} and {second} look like degrees but may be lengths"),
)
WHICH_UNIT = Text(
    "recognise.which_unit", QT_TRANSLATE_NOOP("core", "nothing says for sure whether coordinates are in {units}")
)
UNIT_ASSUMED = Text(
    "recognise.unit_assumed",
    QT_TRANSLATE_NOOP(
        "core", "nothing says in which unit the coordinates are; they are read in {unit}, as a local grid is"
    ),
)
UNIT_OF_CRS = Text(
    "recognise.unit_of_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "the points lie outside the area of use of the CRS in any unit; they are read in {unit}, the unit of the CRS",
    ),
)
FEET_ALIKE = Text(
    "recognise.feet_alike",
    QT_TRANSLATE_NOOP(
        "core",
        "international and U.S. survey foot cannot be told apart by the values, they differ by 2 mm in a kilometre; "
        "coordinates are read in {unit}, the unit of the CRS",
    ),
)
PLACES_DIFFER = Text(
    "recognise.places_differ",
    QT_TRANSLATE_NOOP(
        "core",
        "easting and northing do not lie where longitude and latitude do in this CRS, but {distance_km} km away, so "
        "they are of another CRS or exchanged",
    ),
)
WHICH_HEIGHT = Text("recognise.which_height", QT_TRANSLATE_NOOP("core", "several columns may be the height: {columns}"))
HEIGHT_BY_WORD = Text(
    "recognise.height_by_word",
    QT_TRANSLATE_NOOP("core", "column {columns} may be the height, but its header word '{word}' is not known"),
)
NO_HEIGHT = Text("recognise.no_height", QT_TRANSLATE_NOOP("core", "no column can be the height"))
KIND_OPEN = Text(
    "recognise.kind_open",
    QT_TRANSLATE_NOOP(
        "core", "nothing says whether the heights are ellipsoidal or above a geoid; they are taken as they are"
    ),
)
O_OPEN = Text(
    "recognise.letter_o",
    QT_TRANSLATE_NOOP(
        "core", "the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place"
    ),
)

_WALK = (0.47, 0.58)  # metres: a rover that stores a point every half metre
_EVEN = 0.6  # share of steps near the usual one that makes it a rule
_DEGREE_DECIMALS = 5
_PLAN_PAIRS, _DEGREE_PAIRS = ("easting", "northing"), ("longitude", "latitude")
#: Eight columns may be coordinates; more pairs are not tried.
_MOST_CANDIDATES = 8


@dataclass(frozen=True)
class Look:
    """What recognition looks at: the file's form, its header, and a few hundred lines."""

    source: TextSource
    delimiter: str
    decimal: str
    comment: str
    header: Optional[Header]
    rows: Rows
    width: int
    crs: Optional[Any]
    unit: Optional[LengthUnit]
    height_unit: Optional[LengthUnit]


@dataclass(frozen=True)
class _Pair:
    """A reading of two columns as plan position. ``near``: lands in the area of use with one of ``units``; ``far``:
    lands at least not far from it with one of the units.
    """

    first: Column
    second: Column
    degrees: bool
    units: Tuple[LengthUnit, ...] = ()
    near: bool = False
    far: bool = False
    score: float = 0.0
    reasons: Tuple[Message, ...] = ()

    @property
    def roles(self) -> Tuple[str, str]:
        return _DEGREE_PAIRS if self.degrees else _PLAN_PAIRS

    @property
    def places(self) -> Dict[str, int]:
        return dict(zip(self.roles, (self.first.place, self.second.place)))


@dataclass(frozen=True)
class _Case:
    """A look and what was found in it."""

    look: Look
    columns: List[Column]
    words: List[Word]
    named: Dict[str, List[int]]
    xy: Tuple[int, ...]
    landing: Landing

    def column(self, role: str) -> Optional[Column]:
        places = self.named.get(role, [])
        return self.columns[places[0]] if places and places[0] < len(self.columns) else None

    @property
    def units(self) -> Tuple[LengthUnit, ...]:
        """Units the coordinates may be in: the user's, the header's, else that of the CRS first."""
        look = self.look
        if look.unit is not None:
            return (look.unit,)
        own = None if look.crs is None else axis_unit(look.crs.axis_info[0])
        said = _said_unit(self.words, self.named, self.xy)
        if said is LengthUnit.FOOT:
            feet = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
            return (own,) if own in feet else feet
        if said is not None:
            return (said,)
        every = (own or LengthUnit.METRE, *LengthUnit)
        return tuple(dict.fromkeys(every))


def recognise(
    path: PathLike,
    *,
    delimiter: Optional[str] = None,
    decimal: Optional[str] = None,
    encoding: Optional[str] = None,
    header: Optional[bool] = None,
    comment: Optional[str] = "auto",
    crs: Optional[Any] = None,
    unit: Optional[LengthUnit] = None,
    height_unit: Optional[LengthUnit] = None,
) -> Recognition:
    """What the file at ``path`` holds, without reading it whole into points.

    ``crs``: a candidate (projected pyproj CRS), whose area of use decides what header and values leave open. The
    other arguments are what the user knows already, as in :func:`.delimited.read_points`. Raises SurveyError
    where there is no text with three columns.
    """
    source = load_text(path, encoding)
    mark = find_comment(source, comment)
    sample = take_sample(source, mark)
    sign = settle_delimiter(source.file, delimiter, sample)
    sample = split_sample(sample, sign)
    head = find_header(header, None, sample)
    shape = shape_of(sample, head, sign, source.file)
    return recognise_look(look_at(source, sample, sign, decimal, mark, head, shape, crs, unit, height_unit))


def look_at(
    source: TextSource, sample: Sample, delimiter: str, decimal: Optional[str], comment: str, header: Optional[Header],
    shape: Shape, crs: Optional[Any], unit: Optional[LengthUnit], height_unit: Optional[LengthUnit],
) -> Look:  # fmt: skip
    """The look at a file whose form is settled already."""
    first = [line.fields for line in sample.lines if header is None or line.line > header.line]
    rows = gather_rows(source, first, delimiter, comment)
    width = max(shape.width, len(header.words) if header else 0)
    mark = decimal if decimal in (".", ",") else usual_decimal(rows.fields)
    return Look(source, delimiter, str(mark), comment, header, rows, width, crs, unit, height_unit)


def recognise_look(look: Look) -> Recognition:
    """What the lines of ``look`` hold."""
    case = _case(look)
    ambiguous = _two_headed(case)
    pairs, open_pair = _settle_pair(case)
    ambiguous += open_pair
    heights, height_reasons, open_height = _settle_height(case, pairs[0] if pairs else None)
    ambiguous += open_height
    others, other_reasons = _other_roles(case, pairs[0] if pairs else None, heights)
    letter, open_letter = _settle_letter(case, pairs[0] if pairs else None)
    ambiguous += open_letter
    unit, unit_reasons, open_unit = _settle_unit(case, pairs[0] if pairs else None)
    if not any(one.stops for one in ambiguous) or not pairs:
        ambiguous += open_unit
    kind = _height_kind(case, heights)
    if pairs and pairs[0].degrees and kind is HeightKind.UNKNOWN:
        ambiguous.append(Ambiguity(Question.HEIGHT_KIND, message(KIND_OPEN), (), stops=False))
    reasons = (*height_reasons, *other_reasons, *unit_reasons)
    guesses = _guesses(case, pairs, heights, others, unit, reasons)
    return Recognition(
        look.source.file, look.delimiter, look.decimal, look.source.encoding, look.comment, look.header,
        guesses, tuple(_typed(ambiguous, guesses)), tuple(_column_guesses(case, place) for place in range(look.width)),
        kind, letter, _explicit(case), _notes(case),
    )  # fmt: skip


def _case(look: Look) -> _Case:
    words = [read_word(word) for word in look.header.words] if look.header else []
    named, xy = roles_by_words(words)
    plain = [plain_word(word) for word in look.header.words] if look.header else []
    for role, places in named.items():
        own = [place for place in places if plain[place] == role]
        if own and ROLES[role] not in (Kind.COORDINATE, Kind.ANGLE):
            named[role] = own
    columns = look_at_columns(look.rows, look.width, look.decimal)
    crs = look.crs if look.crs is not None and look.crs.is_projected else None
    return _Case(look, columns, words, named, xy, Landing(crs))


def _two_headed(case: _Case) -> List[Ambiguity]:
    """Coordinates whose word stands over several columns."""
    look = case.look
    found = []
    for role, places in case.named.items():
        if len(places) > 1 and ROLES[role] in (Kind.COORDINATE, Kind.ANGLE) and look.header:
            text = message(
                TWO_COLUMNS, file=look.source.file, line=look.header.line, first=places[0] + 1, second=places[1] + 1,
                role=role,
            )  # fmt: skip
            options = tuple(Alternative(f"{role}={place + 1}") for place in places)
            found.append(Ambiguity(Question.COLUMNS, text, options))
    return found


def _notes(case: _Case) -> Tuple[Message, ...]:
    file = case.look.source.file
    return tuple(
        message(HEADER_FIRST, file=file, first=places[0] + 1, second=places[1] + 1, role=role)
        for role, places in case.named.items()
        if len(places) > 1 and ROLES[role] not in (Kind.COORDINATE, Kind.ANGLE)
    )


# The pair of columns that holds the position in plan


def _settle_pair(case: _Case) -> Tuple[List[_Pair], List[Ambiguity]]:
    """Readings of the position in plan, ranked, and whether the first cannot be taken without asking."""
    said = _said_pair(case)
    if said is not None:
        return _check_said(case, said)
    if case.xy:
        first, second = (case.columns[place] if place < len(case.columns) else None for place in case.xy)
        if first is None or second is None or not (_is_value(first) and _is_value(second)):
            return [], [Ambiguity(Question.COLUMNS, message(WHICH_COLUMNS), ())]
        pairs = _readings(case, [first, second])
    else:
        pairs = _readings(case, _candidates(case))
    return _only_one(case, pairs)


def _is_value(column: Column) -> bool:
    return column.is_number or column.is_angle


def _said_pair(case: _Case) -> Optional[_Pair]:
    """The pair that the header names."""
    for roles, degrees in ((_PLAN_PAIRS, False), (_DEGREE_PAIRS, True)):
        first, second = case.column(roles[0]), case.column(roles[1])
        if first is not None and second is not None:
            return _landed(case, _Pair(first, second, degrees))
    return None


def _check_said(case: _Case, said: _Pair) -> Tuple[List[_Pair], List[Ambiguity]]:
    """The header's word stands unless the values speak against it and for another reading."""
    others = [
        pair
        for pair in _readings(case, [said.first, said.second])
        if (pair.places, pair.degrees) != (said.places, said.degrees)
    ]
    reasons = tuple(_by_word(case, role, place) for role, place in said.places.items())
    said = replace(said, score=said.score + 6.0, reasons=(*reasons, *said.reasons))
    pairs = [said, *others]
    apart = _places_differ(case, said)
    if apart is not None:
        lon, lat = case.column("longitude"), case.column("latitude")
        degrees = [] if lon is None or lat is None else [_Pair(lon, lat, True)]
        return [said, *degrees, *others], [Ambiguity(Question.DEGREES, apart, ())]
    where = {"first": said.first.place + 1, "second": said.second.place + 1}
    if case.landing.known and not said.far and any(pair.near for pair in others):
        pairs = sorted(pairs, key=lambda pair: not pair.near)
        text = message(
            HEADER_AGAINST_AREA, first_role=said.roles[0], second_role=said.roles[1], area=case.landing.name, **where
        )
        return pairs, [Ambiguity(Question.AXES, text, ())]
    if said.degrees and _beyond(said.second, 90.0):
        text = message(HEADER_AGAINST_AREA, first_role=said.roles[0], second_role=said.roles[1], area="", **where)
        exchanged = [pair for pair in others if pair.degrees]
        if exchanged:
            return [*exchanged, said], [Ambiguity(Question.AXES, text, ())]
    if not said.degrees and not case.landing.known and (_like_degrees(said.first, said.second)):
        return pairs, [Ambiguity(Question.DEGREES, message(DEGREES_OR_LENGTHS, **where), ())]
    return pairs, []


def _places_differ(case: _Case, said: _Pair) -> Optional[Message]:
    """Where a file has positions of both kinds: that they are of different places in the CRS, by over 1 km."""
    lon, lat = case.column("longitude"), case.column("latitude")
    if said.degrees or lon is None or lat is None or not case.landing.known:
        return None
    columns = (said.first, said.second, lon, lat)
    whole = np.all([np.isfinite(column.values) for column in columns], axis=0)
    if not whole.any():
        return None
    east, north, lons, lats = (float(np.median(column.values[whole])) for column in columns)
    away = min(case.landing.distance(east * unit.metres, north * unit.metres, lons, lats) for unit in case.units)
    if away < 1000.0:
        return None
    return message(PLACES_DIFFER, distance_km=f"{away / 1000.0:.0f}" if np.isfinite(away) else "?")


def _by_word(case: _Case, role: str, place: int) -> Message:
    word = case.look.header.words[place].strip() if case.look.header else ""
    return message(BY_WORD, column=place + 1, role=role, word=word)


def _beyond(column: Column, limit: float) -> bool:
    good = column.good
    return bool(len(good)) and bool((np.abs(good) > limit).mean() > 0.5)


def _candidates(case: _Case) -> List[Column]:
    """Columns that may hold a coordinate in plan."""
    taken = {place for role, places in case.named.items() for place in places if role not in ("easting", "northing")}
    free = [column for column in case.columns if column.place not in taken and _is_value(column)]
    fractions = any(not column.whole and not column.is_angle for column in free)
    found = [column for column in free if column.is_angle or not (column.whole and fractions)]
    if not fractions and len(found) > 3 and found[0].counts:
        found = found[1:]  # names
    return found[:_MOST_CANDIDATES]


def _readings(case: _Case, columns: Sequence[Column]) -> List[_Pair]:
    """All readings of two of ``columns`` as a position, ranked."""
    pairs = []
    for first, second in permutations(columns, 2):
        if first.is_angle != second.is_angle:
            continue
        if not first.is_angle:
            pairs.append(_Pair(first, second, False))
        if first.is_angle or _like_degrees(first, second):
            pairs.append(_Pair(first, second, True))
    landed = [_landed(case, pair) for pair in pairs if not pair.degrees or _letters_fit(pair)]
    return sorted(landed, key=lambda pair: -pair.score)


def _like_degrees(first: Column, second: Column) -> bool:
    """Whether numbers may be degrees: small, with many decimals, close together."""
    for column in (first, second):
        good = column.good
        if not len(good) or np.abs(good).max() > 180.0 or column.span > 2.0:
            return False
    return min(first.decimals, second.decimals) >= _DEGREE_DECIMALS and not (
        _beyond(first, 90.0) and _beyond(second, 90.0)
    )


def _letters_fit(pair: _Pair) -> bool:
    east_west, north_south = set("EWO"), set("NS")
    return not (pair.first.letters - east_west or pair.second.letters - north_south or _beyond(pair.second, 90.0))


def _landed(case: _Case, pair: _Pair) -> _Pair:
    """``pair`` with the units in which it lands in the area of use, and its score."""
    both = np.isfinite(pair.first.values) & np.isfinite(pair.second.values)
    first, second = pair.first.values[both], pair.second.values[both]
    near: List[LengthUnit] = []
    far = False
    if not len(first):
        return replace(pair, score=-9.0)
    if pair.degrees:
        is_near, far = case.landing.of_degrees(first, second)
        if "O" in pair.first.letters:
            west = case.landing.of_degrees(-first, second)
            is_near, far = is_near or west[0], far or west[1]
    else:
        for unit in case.units:
            lands = case.landing.of_plan(first * unit.metres, second * unit.metres)
            near += [unit] if lands[0] else []
            far |= lands[1]
        is_near = bool(near)
    score, reasons = _score(case, pair, is_near, far)
    return replace(pair, units=tuple(near), near=is_near, far=far, score=score, reasons=reasons)


def _score(case: _Case, pair: _Pair, near: bool, far: bool) -> Tuple[float, Tuple[Message, ...]]:
    """How much speaks for a reading; only the order counts."""
    where = {"first": pair.first.place + 1, "second": pair.second.place + 1}
    score, reasons = 0.0, []
    if case.landing.known:
        score += 5.0 if near else 0.0 if far else -5.0
        reasons.append(message(LANDS if near else LANDS_OUTSIDE, area=case.landing.name))
    spans = sorted((pair.first.span, pair.second.span))
    if spans[0] > 0 and spans[1] < 60.0 * spans[0] and spans[1] < (2.0 if pair.degrees else 60_000.0):
        score += 1.0
        reasons.append(message(COMPACT, **where))
    if abs(pair.first.place - pair.second.place) == 1:
        score += 0.5
    step, even = usual_step(pair.first.values, pair.second.values, case.look.rows.part)
    if even >= _EVEN and not pair.degrees:
        score += 2.0
        reasons.append(message(STEPS, step=f"{step:.2f}", **where))
    sizes = [float(np.median(np.abs(column.good))) if len(column.good) else 0.0 for column in (pair.first, pair.second)]
    if not pair.degrees and 1e5 <= sizes[0] < 1e6 <= sizes[1] < 1e7:
        score += 1.0
        reasons.append(message(SIZES))
    if pair.first.place < pair.second.place and not pair.degrees:
        score += 0.5
        reasons.append(message(IN_ORDER))
    if pair.degrees:
        # Lengths are seldom written to less than a micrometre.
        score += 2.0 if pair.first.is_angle else min(pair.first.decimals, pair.second.decimals) - 4.0
    score += min(sizes) > 1e4 or 0.0
    return score, tuple(reasons)


def _only_one(case: _Case, pairs: List[_Pair]) -> Tuple[List[_Pair], List[Ambiguity]]:
    """The reading that alone lands in the area of use, or the question which of them is meant."""
    if not pairs:
        return [], [Ambiguity(Question.COLUMNS, message(WHICH_COLUMNS), ())]
    near, far = [pair for pair in pairs if pair.near], [pair for pair in pairs if pair.far]
    where = {"first": pairs[0].first.place + 1, "second": pairs[0].second.place + 1}
    if case.landing.known and len(near) == 1 and len(far) == 1:
        one = near[0]
        where = {"first": one.first.place + 1, "second": one.second.place + 1}
        told = message(BY_AREA, first_role=one.roles[0], second_role=one.roles[1], area=case.landing.name, **where)
        rest = [pair for pair in pairs if pair is not one]
        return [replace(one, reasons=(told, *one.reasons[1:])), *rest], []
    lettered = [pair for pair in pairs if pair.degrees and pair.first.letters and pair.second.letters]
    if lettered and len(lettered) == len({tuple(pair.places.values()) for pair in pairs}) == 1:
        one = lettered[0]
        told_letters = tuple(
            message(BY_LETTERS, column=column.place + 1, role=role, letters=", ".join(sorted(column.letters)))
            for role, column in zip(one.roles, (one.first, one.second))
        )
        return [replace(one, reasons=(*told_letters, *one.reasons))], []
    if len({frozenset(pair.places.values()) for pair in pairs}) > 1 and not case.xy:
        return pairs, [Ambiguity(Question.COLUMNS, message(WHICH_COLUMNS), ())]
    if pairs[0].degrees and any(not pair.degrees for pair in pairs):
        return pairs, [Ambiguity(Question.DEGREES, message(DEGREES_OR_LENGTHS, **where), ())]
    question = Question.AXES if case.xy else Question.COLUMNS
    return pairs, [Ambiguity(question, message(WHICH_AXIS, **where), ())]


# Height


def _settle_height(
    case: _Case, pair: Optional[_Pair]
) -> Tuple[List[Dict[str, int]], Tuple[Message, ...], List[Ambiguity]]:
    """Readings of the height (role to position), the likeliest first; reasons; and what is open."""
    named = [role for role in ("height", "ellipsoidal_height") if case.named.get(role)]
    if named:
        places = {role: case.named[role][0] for role in named}
        return [places], tuple(_by_word(case, role, place) for role, place in places.items()), []
    if pair is None:
        return [], (), []
    found = _height_candidates(case, pair)
    readings = [{"height": column.place} for column in found]
    if not found:
        return [], (), [Ambiguity(Question.COLUMNS, message(NO_HEIGHT), ())]
    worded = any(_word_of(case, column.place) for column in found)
    if len(found) > 1 or worded:
        columns = ", ".join(str(column.place + 1) for column in found)
        text = message(WHICH_HEIGHT, columns=columns)
        if len(found) == 1:
            text = message(HEIGHT_BY_WORD, columns=columns, word=_word_of(case, found[0].place))
        return readings, (), [Ambiguity(Question.HEIGHT, text, ())]
    return readings, (message(ONLY_HEIGHT, column=found[0].place + 1),), []


def _word_of(case: _Case, place: int) -> str:
    header = case.look.header
    return header.words[place].strip() if header and place < len(header.words) else ""


def _height_candidates(case: _Case, pair: _Pair) -> List[Column]:
    """Columns of numbers that may be heights: those that look like quality figures only where nothing else is left."""
    taken = {place for places in case.named.values() for place in places} | set(pair.places.values())
    fractions = pair.degrees or not (pair.first.whole and pair.second.whole)
    before = min(pair.places.values())
    free = [
        column for column in case.columns
        if column.place not in taken and column.is_number and np.abs(column.good).max() < 35_000.0
        and not (column.counts and (fractions or column.place < before))
    ]  # fmt: skip
    likely = [column for column in free if not (column.whole and fractions)]
    likely = [column for column in likely if not _like_sigma(column)] or likely
    varied = [column for column in likely if column.span > 0.0]
    likely = varied if len(case.look.rows) >= 10 and varied else likely
    exact = [column for column in likely if column.decimals > 1]
    likely = exact or likely
    return sorted(likely or free, key=lambda column: abs(column.place - max(pair.places.values()) - 0.9))


def _like_sigma(column: Column) -> bool:
    good = column.good
    return len(good) > 0 and bool(good.min() >= 0.0) and float(np.percentile(good, 90)) < 0.5 and column.decimals >= 2


def _height_kind(case: _Case, heights: Sequence[Dict[str, int]]) -> HeightKind:
    if not heights or "height" in heights[0]:
        return HeightKind.UNKNOWN
    return HeightKind.ELLIPSOIDAL


# Name, code and what else a header names


def _other_roles(
    case: _Case, pair: Optional[_Pair], heights: Sequence[Dict[str, int]]
) -> Tuple[Dict[str, int], Tuple[Message, ...]]:
    """Role to position of all but the coordinates that are used."""
    taken = set(pair.places.values()) if pair else set()
    taken |= set(heights[0].values()) if heights else set()
    used = set(pair.roles if pair else ()) | set(heights[0] if heights else ())
    found = {role: places[0] for role, places in case.named.items() if role not in used and places[0] not in taken}
    if pair and pair.degrees:
        found = {role: place for role, place in found.items() if role not in _PLAN_PAIRS}
    if case.look.header is not None or pair is None:
        return found, ()
    reasons = []
    before, behind = min(taken), max(taken)
    free = [column for column in case.columns if column.place not in taken]
    for column in free:
        role, why = "", COUNTS_UP
        if column.place < before and column.counts:
            role = "name"
        elif column.is_text and column.distinct > 0.95 and column.place < before and len(case.look.rows) > 4:
            role, why = "name", ALL_DIFFER
        elif column.is_text and column.distinct < 0.5 and column.place > behind and len(case.look.rows) > 4:
            role, why = "code", REPEATS
        elif column.clock >= 0.8 and any(
            len(row) > column.place and ":" in row[column.place] for row in case.look.rows.fields
        ):
            role, why = "time", LOOKS_LIKE
        if role and role not in found:
            found[role] = column.place
            reasons.append(message(why, column=column.place + 1, role=role))
    return found, tuple(reasons)


# The letter O


def _settle_letter(case: _Case, pair: Optional[_Pair]) -> Tuple[str, List[Ambiguity]]:
    """E or W for the letter O behind longitudes, by the other letters, the area of use, or the header's language."""
    if pair is None or not pair.degrees or "O" not in pair.first.letters:
        return "", []
    others = pair.first.letters - {"O"}
    if len(others) == 1:
        return ("E" if "W" in others else "W"), []
    both = np.isfinite(pair.first.values) & np.isfinite(pair.second.values)
    lon, lat = np.abs(pair.first.values[both]), pair.second.values[both]
    east, west = case.landing.of_degrees(lon, lat), case.landing.of_degrees(-lon, lat)
    if east[0] != west[0] and east[1] != west[1]:
        return ("E" if east[0] else "W"), []
    said = language_of_o(case.look.header.words) if case.look.header else ""
    if said:
        return said, []
    return "", [Ambiguity(Question.LETTER, message(O_OPEN, column=pair.first.place + 1), ())]


# Unit


def _said_unit(words: Sequence[Word], named: Dict[str, List[int]], xy: Tuple[int, ...]) -> Optional[LengthUnit]:
    places = [place for role in _PLAN_PAIRS for place in named.get(role, [])] + list(xy)
    said = {words[place].unit for place in places} - {None}
    return said.pop() if len(said) == 1 else None


def _settle_unit(
    case: _Case, pair: Optional[_Pair]
) -> Tuple[Optional[LengthUnit], Tuple[Message, ...], List[Ambiguity]]:
    """The unit of the position in plan, reasons, and what is open."""
    if pair is None or pair.degrees:
        return None, (), []
    units = case.units
    if len(units) == 1:
        if case.look.unit is not None:
            return units[0], (), []
        vague = _said_unit(case.words, case.named, case.xy) is LengthUnit.FOOT
        return units[0], (message(UNIT_SAID, unit=units[0].symbol),), _feet_alike(units[0]) if vague else []
    if len(units) == 2:  # the header says feet and not which
        return units[0], (), [_which_unit(units)]
    own = units[0]
    other = [unit for unit in units if abs(unit.metres / own.metres - 1.0) > 1e-3]
    step, even = usual_step(pair.first.values, pair.second.values, case.look.rows.part)
    walked = [unit for unit in LengthUnit if even >= _EVEN and _WALK[0] < step * unit.metres < _WALK[1]]
    if case.landing.known and pair.near:
        if pair.units == (own,) or (own in pair.units and not any(unit in pair.units for unit in other)):
            return own, (message(UNIT_LANDS, unit=own.symbol),), _feet_alike(own)
        if own in pair.units and own in walked:
            return own, (message(UNIT_STEPS, unit=own.symbol, step=f"{step:.2f} {own.symbol}"),), _feet_alike(own)
        return own, (), [_which_unit(_ranked(pair.units, walked))]
    if walked and own not in walked:
        return own, (), [_which_unit(_ranked((own, *other), walked))]
    if walked:
        return own, (message(UNIT_STEPS, unit=own.symbol, step=f"{step:.2f} {own.symbol}"),), _feet_alike(own)
    text = UNIT_OF_CRS if case.landing.known else UNIT_ASSUMED
    return own, (), [replace(_which_unit(units), text=message(text, unit=own.symbol), stops=False)]


def _feet_alike(own: LengthUnit) -> List[Ambiguity]:
    """The header or the CRS says feet, and a file in the other foot would look the same."""
    if own is LengthUnit.METRE:
        return []
    other = LengthUnit.FOOT if own is LengthUnit.US_SURVEY_FOOT else LengthUnit.US_SURVEY_FOOT
    return [replace(_which_unit((own, other)), text=message(FEET_ALIKE, unit=own.symbol), stops=False)]


def _ranked(units: Sequence[LengthUnit], walked: Sequence[LengthUnit]) -> Tuple[LengthUnit, ...]:
    return tuple(sorted(units, key=lambda unit: unit not in walked))


def _which_unit(units: Sequence[LengthUnit]) -> Ambiguity:
    text = message(WHICH_UNIT, units=", ".join(unit.symbol for unit in units))
    return Ambiguity(Question.UNIT, text, tuple(Alternative(f"--unit {unit.value}") for unit in units))


def _height_unit(case: _Case, heights: Dict[str, int], unit: Optional[LengthUnit]) -> LengthUnit:
    """As said by the user, the header, the CRS; else that of the plan."""
    look = case.look
    if look.height_unit is not None:
        return look.height_unit
    place = next(iter(heights.values()), len(case.words))
    said = case.words[place].unit if place < len(case.words) else None
    axes = [] if look.crs is None else look.crs.axis_info
    own = (axis_unit(axes[2]) if unit is not None and len(axes) > 2 else None) or unit or look.unit or LengthUnit.METRE
    feet = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
    return own if said is None or (said in feet and own in feet) else said


# What comes out


def _guesses(
    case: _Case, pairs: Sequence[_Pair], heights: Sequence[Dict[str, int]], others: Dict[str, int],
    unit: Optional[LengthUnit], reasons: Tuple[Message, ...],
) -> Tuple[Guess, ...]:  # fmt: skip
    made = []
    for pair in pairs[:6]:
        free = heights if heights else [{}]
        for rank, height in enumerate(each for each in free if not set(each.values()) & set(pair.places.values())):
            roles = {**others, **pair.places, **height}
            order = sorted(roles, key=lambda role: roles[role])
            columns = {role: roles[role] + 1 for role in order if role in ROLES}
            plan = None if pair.degrees else unit
            made.append((pair.score - rank, columns, plan, _height_unit(case, height, unit), (*pair.reasons, *reasons)))
    weights = np.exp([min(one[0], 50.0) for one in made]) if made else np.zeros(0)
    return tuple(
        Guess(columns, plan, rise, round(float(weight / weights.sum()), 4), why)
        for weight, (_, columns, plan, rise, why) in zip(weights, made)
    )


def _typed(ambiguous: Sequence[Ambiguity], guesses: Sequence[Guess]) -> List[Ambiguity]:
    """Questions about columns with the guesses as answers."""
    whole = [guess for guess in guesses if {"height", "ellipsoidal_height"} & set(guess.columns)]
    typed = []
    for one in ambiguous:
        fitting = whole
        if one.question is Question.HEIGHT and guesses:
            fitting = [guess for guess in whole if _plan_of(guess) == _plan_of(guesses[0])]
        answers = tuple(Alternative(guess.option, guess.reasons) for guess in fitting[:4])
        asks = one.question in (Question.COLUMNS, Question.AXES, Question.DEGREES, Question.HEIGHT)
        typed.append(replace(one, alternatives=answers) if asks and not one.alternatives else one)
    return typed


def _plan_of(guess: Guess) -> Tuple[Optional[int], ...]:
    return tuple(guess.columns.get(role) for role in (*_PLAN_PAIRS, *_DEGREE_PAIRS))


def _explicit(case: _Case) -> bool:
    """Whether the header alone names all three coordinates."""
    plan = any(all(role in case.named for role in roles) for roles in (_PLAN_PAIRS, _DEGREE_PAIRS))
    return plan and ("height" in case.named or "ellipsoidal_height" in case.named)


def _column_guesses(case: _Case, place: int) -> Tuple[ColumnGuess, ...]:
    """What one column may hold, ranked."""
    worded = [role for role, places in case.named.items() if place in places]
    number = place + 1
    if worded:
        return tuple(ColumnGuess(number, role, 0.95, _by_word(case, role, place)) for role in worded)
    if place in case.xy:
        roles = _PLAN_PAIRS if place == case.xy[0] else _PLAN_PAIRS[::-1]
        return tuple(
            ColumnGuess(number, role, share, _by_word(case, role, place)) for role, share in zip(roles, (0.7, 0.3))
        )
    if place >= len(case.columns):
        return ()
    likely = _likely_roles(case.columns[place])
    told = [ColumnGuess(number, role, share, message(LOOKS_LIKE, column=number, role=role)) for role, share in likely]
    return tuple(sorted(told, key=lambda guess: -guess.likelihood))


def _likely_roles(column: Column) -> List[Tuple[str, float]]:
    """Roles whose usual values the column's are like, from the ranges a rover gives (common practice, no source)."""
    good = column.good
    if column.is_angle:
        north = bool(column.letters & set("NS"))
        return (
            [("latitude", 0.9)]
            if north
            else [("longitude", 0.9)]
            if column.letters
            else [("latitude", 0.5), ("longitude", 0.5)]
        )
    if column.clock >= 0.8:
        return [("time", 0.8)]
    if column.is_text:
        return [("code", 0.6), ("name", 0.3)] if column.distinct < 0.5 else [("name", 0.6), ("code", 0.3)]
    if not column.is_number or not len(good):
        return []
    least, most = float(good.min()), float(good.max())
    if column.whole:
        tries = [("name", column.counts), ("fix", least >= 0 and most <= 8), ("satellites", least >= 3 and most <= 60)]
        found = [(role, 0.6) for role, fits in tries if fits]
        return found or [("easting", 0.3), ("northing", 0.3), ("height", 0.2)]
    tries = [
        ("sigma_h", _like_sigma(column)), ("sigma_v", _like_sigma(column)), ("pdop", least >= 0.5 and most < 12),
        ("tilt", least >= 0 and most < 60 and column.decimals <= 2), ("pole_height", column.span == 0 and 1 < most < 5),
        ("height", least > -500 and most < 9000), ("easting", most > 1000 or column.span > 1),
        ("northing", most > 1000 or column.span > 1),
    ]  # fmt: skip
    fitting = [role for role, fits in tries if fits]
    return [(role, round(0.9 / len(fitting), 2)) for role in fitting]
