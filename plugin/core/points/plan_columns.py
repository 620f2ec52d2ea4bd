"""Which two columns hold the position in plan, in lengths or in degrees."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from ..units import LengthUnit
from .angle_forms import as_degrees
from .features import Column, usual_step
from .like_degrees import like_degrees, like_parts_of_degrees, mostly_beyond, numbered
from .questions import Question, Topic
from .reading import DEGREES, EVEN, PLAN, Case, Pair, by_word, is_value
from .recognition import WHICH_COLUMNS
from .words import language_of_o

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

#: What speaks for a reading and does not settle it.
SUPPORTING = (LANDS, LANDS_OUTSIDE, COMPACT, STEPS, SIZES, IN_ORDER)
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
PLACES_DIFFER = Text(
    "recognise.places_differ",
    QT_TRANSLATE_NOOP(
        "core",
        "easting and northing do not lie where longitude and latitude do in this CRS, but {distance_km} km away, so "
        "they are of another CRS or exchanged",
    ),
)
O_OPEN = Text(
    "recognise.letter_o",
    QT_TRANSLATE_NOOP(
        "core", "the letter O in column {column} may be east (Ost) or west (Ouest, Oeste); write E or W in its place"
    ),
)
#: Units that are tried where none of the usual ones lands in the area of use.
_SELDOM = (LengthUnit.MILLIMETRE, LengthUnit.CENTIMETRE, LengthUnit.DECIMETRE, LengthUnit.KILOMETRE)

#: Eight columns may be coordinates; more pairs are not tried.
_MOST_CANDIDATES = 8


def settle_pair(case: Case) -> Tuple[List[Pair], List[Question]]:
    """Readings of the position in plan, ranked, and whether the first cannot be taken without asking."""
    said = _said_pair(case)
    if said is not None:
        return ([said], []) if case.look.mapped is not None else _check_said(case, said)
    if case.xy:
        first, second = (case.columns[place] if place < len(case.columns) else None for place in case.xy)
        if first is None or second is None or not (is_value(first) and is_value(second)):
            return [], [Question(Topic.COLUMNS, message(WHICH_COLUMNS), ())]
        pairs = readings_of(case, [first, second])
    else:
        pairs = readings_of(case, _candidates(case))
    return _only_one(case, pairs)


def _said_pair(case: Case) -> Optional[Pair]:
    """The pair that the header names."""
    for roles, degrees in ((PLAN, False), (DEGREES, True)):
        first, second = case.column(roles[0]), case.column(roles[1])
        if first is not None and second is not None:
            pair = Pair(first, second, degrees)
            return _landed(case, as_degrees(case, pair) if degrees else pair)
    return None


def _check_said(case: Case, said: Pair) -> Tuple[List[Pair], List[Question]]:
    """The header's word stands unless the values speak against it and for another reading."""
    others = [
        pair
        for pair in readings_of(case, [said.first, said.second])
        if (pair.places, pair.degrees) != (said.places, said.degrees)
    ]
    reasons = tuple(by_word(case, role, place) for role, place in said.places.items())
    said = replace(said, score=said.score + 6.0, reasons=(*reasons, *said.reasons))
    pairs = [said, *others]
    apart = _places_differ(case, said)
    if apart is not None:
        lon, lat = case.column("longitude"), case.column("latitude")
        degrees = [] if lon is None or lat is None else [Pair(lon, lat, True)]
        return [said, *degrees, *others], [Question(Topic.DEGREES, apart, ())]
    where = {"first": said.first.place + 1, "second": said.second.place + 1}
    if case.landing.known and not said.far and any(pair.near for pair in others):
        pairs = sorted(pairs, key=lambda pair: not pair.near)
        text = message(
            HEADER_AGAINST_AREA, first_role=said.roles[0], second_role=said.roles[1], area=case.landing.name, **where
        )
        return pairs, [Question(Topic.AXES, text, ())]
    if said.degrees and mostly_beyond(said.second, 90.0):
        text = message(HEADER_AGAINST_AREA, first_role=said.roles[0], second_role=said.roles[1], area="", **where)
        exchanged = [pair for pair in others if pair.degrees]
        if exchanged:
            return [*exchanged, said], [Question(Topic.AXES, text, ())]
    if not said.degrees and not case.landing.known and (like_degrees(said.first, said.second)):
        return pairs, [Question(Topic.DEGREES, message(DEGREES_OR_LENGTHS, **where), ())]
    return pairs, []


def _places_differ(case: Case, said: Pair) -> Optional[Message]:
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


def _candidates(case: Case) -> List[Column]:
    """Columns that may hold a coordinate in plan."""
    taken = {place for role, places in case.named.items() for place in places if role not in ("easting", "northing")}
    free = [column for column in case.columns if column.place not in taken and is_value(column)]
    fractions = any(not column.whole and not column.is_angle for column in free)
    found = [
        column for column in free
        if column.is_angle or not (column.whole and fractions) or (abs(column.middle) > 1e6 and not numbered(column))
    ]  # fmt: skip
    if not fractions and len(found) > 3 and found[0].counts:
        found = found[1:]  # names
    return found[:_MOST_CANDIDATES]


def readings_of(case: Case, columns: Sequence[Column]) -> List[Pair]:
    """All readings of two of ``columns`` as a position, ranked."""
    pairs = []
    for first, second in permutations(columns, 2):
        if first.is_angle != second.is_angle:
            continue
        if not first.is_angle:
            pairs.append(Pair(first, second, False))
        if first.is_angle or like_degrees(first, second):
            pairs.append(Pair(first, second, True))
        elif like_parts_of_degrees(first, second):
            pairs.append(as_degrees(case, Pair(first, second, True)))
    landed = [_landed(case, pair) for pair in pairs if not pair.degrees or _letters_fit(pair)]
    return sorted(landed, key=lambda pair: -pair.score)


def _letters_fit(pair: Pair) -> bool:
    east_west, north_south = set("EWO"), set("NS")
    return not (pair.first.letters - east_west or pair.second.letters - north_south or mostly_beyond(pair.second, 90.0))


def _landed(case: Case, pair: Pair) -> Pair:
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
        if not near and not far and not case.said_units:
            with np.errstate(over="ignore"):
                near = [unit for unit in _SELDOM if case.landing.of_plan(first * unit.metres, second * unit.metres)[0]]
            far = bool(near)
        is_near = bool(near)
    score, reasons = _score(case, pair, is_near, far)
    return replace(pair, units=tuple(near), near=is_near, far=far, score=score, reasons=reasons)


def _score(case: Case, pair: Pair, near: bool, far: bool) -> Tuple[float, Tuple[Message, ...]]:
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
    if even >= EVEN and not pair.degrees:
        score += 2.0
        reasons.append(message(STEPS, step=Figure(f"{step:.2f}"), **where))
    sizes = [float(np.median(np.abs(column.good))) if len(column.good) else 0.0 for column in (pair.first, pair.second)]
    if not pair.degrees and 1e5 <= sizes[0] < 1e6 <= sizes[1] < 1e7:
        score += 1.0
        reasons.append(message(SIZES))
    if pair.first.place < pair.second.place and not pair.degrees:
        score += 0.5
        reasons.append(message(IN_ORDER))
    if pair.degrees:
        # Lengths are seldom written to less than a micrometre.
        decimals = min(pair.first.decimals, pair.second.decimals)
        score += 2.0 if pair.first.is_angle or not decimals else decimals - 4.0
    score += min(sizes) > 1e4 or 0.0
    return score, tuple(reasons)


def _only_one(case: Case, pairs: List[Pair]) -> Tuple[List[Pair], List[Question]]:
    """The reading that alone lands in the area of use, or the question which of them is meant."""
    if not pairs:
        return [], [Question(Topic.COLUMNS, message(WHICH_COLUMNS), ())]
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
        return pairs, [Question(Topic.COLUMNS, message(WHICH_COLUMNS), ())]
    if pairs[0].degrees and any(not pair.degrees for pair in pairs):
        return pairs, [Question(Topic.DEGREES, message(DEGREES_OR_LENGTHS, **where), ())]
    question = Topic.AXES if case.xy else Topic.COLUMNS
    return pairs, [Question(question, message(WHICH_AXIS, **where), ())]


def settle_letter(case: Case, pair: Optional[Pair]) -> Tuple[str, List[Question]]:
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
    return "", [Question(Topic.LETTER, message(O_OPEN, column=pair.first.place + 1), ())]
