"""The units of a file's lengths, as far as the user, the header, area of use and steps tell them."""

from __future__ import annotations

from dataclasses import replace
from typing import Dict, Mapping, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from ..units import WORKING_UNITS, LengthUnit, axis_unit
from .features import usual_step
from .questions import Answer, Question, Topic
from .reading import EVEN, PLAN, WALK, Case, Pair, word_of
from .words import Word, read_word

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
SAID_AND_GIVEN = Text(
    "recognise.unit_said_and_given",
    QT_TRANSLATE_NOOP("core", "column {column} is headed '{word}', but {unit} is given as its unit"),
)
SAID_AND_CRS = Text(
    "recognise.unit_said_and_crs",
    QT_TRANSLATE_NOOP("core", "column {column} is headed '{word}', but the CRS is in {unit}"),
)
STRANGE_UNIT = Text(
    "recognise.unit_strange",
    QT_TRANSLATE_NOOP(
        "core", "column {column} is headed '{word}', a unit that is not read; give the lengths in another"
    ),
)
HEIGHTS_OPEN = Text(
    "recognise.height_unit_open",
    QT_TRANSLATE_NOOP("core", "eastings and northings are in {unit}, and nothing says whether heights are too"),
)
TWO_SAID = Text(
    "recognise.two_units_said",
    QT_TRANSLATE_NOOP("core", "column {column} is headed '{word}', and another line says {unit}"),
)
BESIDE_AND_CRS = Text(
    "recognise.unit_beside_and_crs",
    QT_TRANSLATE_NOOP(
        "core", "the unit beside the values is {said}, but eastings and northings fit the CRS in {unit} alone"
    ),
)
TWO_LINES = Text(
    "recognise.two_lines_say",
    QT_TRANSLATE_NOOP("core", "a line above the points says {above}, and a line below them says {below}"),
)
TOO_HIGH = Text(
    "recognise.too_high",
    QT_TRANSLATE_NOOP("core", "the heights of column {column} would be about {height} m, and no ground is so high"),
)
READ_IN = Text("recognise.read_in", QT_TRANSLATE_NOOP("core", "coordinates in {unit}"))
HEIGHTS_IN = Text("recognise.heights_in", QT_TRANSLATE_NOOP("core", "heights in {unit}"))
AS_HEADED = Text("recognise.as_headed", QT_TRANSLATE_NOOP("core", "as the header says"))
AS_GIVEN = Text("recognise.as_given", QT_TRANSLATE_NOOP("core", "in {unit}, whatever the header says"))
#: Metres; higher than any ground.
_HIGHEST = 9_000.0
_FEET = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)


class Settled(NamedTuple):
    """The unit found, reasons, and what is open."""

    unit: Optional[LengthUnit]
    reasons: Tuple[Message, ...] = ()
    questions: Tuple[Question, ...] = ()


def settle_unit(case: Case, pair: Optional[Pair]) -> Settled:
    """The unit of the position in plan; None for degrees."""
    if pair is None or pair.degrees:
        return Settled(None)
    given = case.look.given
    strange = _strange(case, [pair.first.place, pair.second.place])
    if strange is not None and given.unit is None:
        return Settled(LengthUnit.METRE, (), (strange,))
    said = case.said_units
    rivals = case.look.above.rivals[0]
    if rivals and given.unit is None and not given.units_from:
        return Settled(rivals[0], (), (replace(_which_unit(rivals), text=two_lines(rivals)),))
    if said and given.units_from != "options":
        return _of_header(case, pair, said)
    if given.unit is not None:
        return Settled(given.unit)
    if given.units_from == "options":
        return Settled(case.own_unit or LengthUnit.METRE)
    return _of_values(case, pair)


def _strange(case: Case, places: Sequence[int]) -> Optional[Question]:
    """The question which of our units lengths are in whose header says another."""
    for place in places:
        if place < len(case.words) and case.words[place].strange:
            text = message(STRANGE_UNIT, column=place + 1, word=word_of(case, place))
            return Question(Topic.UNIT, text, tuple(unit_answer(unit) for unit in WORKING_UNITS))
    return None


def _of_header(case: Case, pair: Pair, said: Tuple[LengthUnit, ...]) -> Settled:
    """The unit that the header says, unless the user or the CRS says another."""
    given, own = case.look.given, case.own_unit
    places = (pair.first.place, pair.second.place)
    place = next((each for each in places if each < len(case.words) and case.words[each].unit is not None), places[0])
    where = {"column": place + 1, "word": word_of(case, place) or said[0].symbol}
    if given.unit is not None and given.unit in said:
        return Settled(given.unit)
    if _of_heights_alone(case, pair, said):
        if given.height_unit in said and given.unit is None:
            return Settled(own)
        text = message(BESIDE_AND_CRS, said=", ".join(unit.symbol for unit in said), unit=own.symbol)  # type: ignore[union-attr]
        answers = (*map(height_unit_answer, said), *map(unit_answer, said))
        if given.height_unit is None and given.unit is None and not given.units_from:
            return Settled(own, (), (Question(Topic.HEIGHT_UNIT, text, answers),))
    if len(set(said) - set(_FEET)) and len(said) > 1:  # two units for two columns
        return Settled(said[0], (), (_which_unit(said),))
    if given.unit is not None and given.units_from != "header":
        text = message(SAID_AND_GIVEN, unit=given.unit.symbol, **where)
        return Settled(given.unit, (), (_header_or_options(text, given.unit),))
    if len(said) > 1:
        return Settled(said[0], (), (_which_unit(said),))
    unit = said[0]
    reasons = (message(UNIT_SAID, unit=unit.symbol),)
    if own not in (None, unit) and given.units_from != "header":
        lands = set(pair.units)
        if case.landing.known and own in lands:
            text = message(SAID_AND_CRS, unit=own.symbol, **where)  # type: ignore[union-attr]
            return Settled(unit, (), (_header_or_options(text, own),))  # type: ignore[arg-type]
    vague = any(
        word.vague for word in (*(case.words[each] for each in places if each < len(case.words)), case.look.above.plan)
    )
    return Settled(unit, reasons, _feet_alike(unit) if vague else ())


def _of_heights_alone(case: Case, pair: Pair, said: Tuple[LengthUnit, ...]) -> bool:
    """Whether a unit stands beside the values, not in the header of the plan, and the plan lands in that of the CRS
    and not in it.
    """
    words = [word_of(case, place) for place in (pair.first.place, pair.second.place)]
    lands = case.landing.known and case.own_unit in pair.units and not set(said) & set(pair.units)
    above = case.look.above.plan.unit
    return lands and above is None and all(read_word(word).unit is None for word in words)


def _header_or_options(text: Message, unit: LengthUnit, topic: Topic = Topic.UNIT) -> Question:
    answers = (
        Answer("--units-from", "header", message(AS_HEADED)),
        Answer("--units-from", "options", message(AS_GIVEN, unit=unit.symbol)),
    )
    return Question(topic, text, answers)


def _of_values(case: Case, pair: Pair) -> Settled:
    """The unit where nobody says it, from where points land and from their steps."""
    units = case.units
    own = units[0]
    other = [unit for unit in units if abs(unit.metres / own.metres - 1.0) > 1e-3]
    step, even = usual_step(pair.first.values, pair.second.values, case.look.rows.part)
    walked = [unit for unit in WORKING_UNITS if even >= EVEN and WALK[0] < step * unit.metres < WALK[1]]
    by_steps = (message(UNIT_STEPS, unit=own.symbol, step=Figure(f"{step:.2f} {own.symbol}")),)
    if case.landing.known and pair.near:
        if pair.units == (own,) or (own in pair.units and not any(unit in pair.units for unit in other)):
            return Settled(own, (message(UNIT_LANDS, unit=own.symbol),), _feet_alike(own))
        if own in pair.units and own in walked:
            return Settled(own, by_steps, _feet_alike(own))
        return Settled(own, (), (_which_unit(_ranked(pair.units, walked)),))
    if walked and own not in walked:
        return Settled(own, (), (_which_unit(_ranked((own, *other), walked)),))
    if walked:
        return Settled(own, by_steps, _feet_alike(own))
    text = UNIT_OF_CRS if case.landing.known else UNIT_ASSUMED
    return Settled(own, (), (replace(_which_unit(units), text=message(text, unit=own.symbol), stops=False),))


def _feet_alike(own: LengthUnit) -> Tuple[Question, ...]:
    """The header or the CRS says feet, and a file in the other foot would look the same."""
    if own not in _FEET:
        return ()
    other = LengthUnit.FOOT if own is LengthUnit.US_SURVEY_FOOT else LengthUnit.US_SURVEY_FOOT
    return (replace(_which_unit((own, other)), text=message(FEET_ALIKE, unit=own.symbol), stops=False),)


def _ranked(units: Sequence[LengthUnit], walked: Sequence[LengthUnit]) -> Tuple[LengthUnit, ...]:
    return tuple(sorted(units, key=lambda unit: unit not in walked))


def _which_unit(units: Sequence[LengthUnit]) -> Question:
    text = message(WHICH_UNIT, units=", ".join(unit.symbol for unit in units))
    return Question(Topic.UNIT, text, tuple(unit_answer(unit) for unit in units))


def two_lines(units: Sequence[LengthUnit]) -> Message:
    """That a line above the points and one below say two units."""
    return message(TWO_LINES, above=units[0].symbol, below=units[1].symbol)


def unit_answer(unit: LengthUnit) -> Answer:
    """To read the coordinates in ``unit``."""
    return Answer("--unit", unit.value, message(READ_IN, unit=unit.symbol))


def height_unit_answer(unit: LengthUnit) -> Answer:
    """To read the heights in ``unit``."""
    return Answer("--height-unit", unit.value, message(HEIGHTS_IN, unit=unit.symbol))


def unit_of_heights(case: Case, heights: Mapping[str, int], unit: Optional[LengthUnit]) -> Settled:
    """As said by the user, the header, the CRS; else that of the plan, ``unit`` (None for degrees)."""
    given = case.look.given
    place = next(iter(heights.values()), len(case.words))
    word = case.words[place] if place < len(case.words) else Word()
    above = case.look.above.heights
    differ = None not in (above.unit, word.unit) and above.unit is not word.unit
    rivals = case.look.above.rivals[1]
    if rivals and given.height_unit is None and not given.units_from:
        return Settled(
            rivals[0], (), (Question(Topic.HEIGHT_UNIT, two_lines(rivals), tuple(map(height_unit_answer, rivals))),)
        )
    if differ and given.height_unit is None and not given.units_from and not (word.vague and above.unit in _FEET):
        units = [one for one in (above.unit, word.unit) if one is not None]
        twice = message(TWO_SAID, column=place + 1, word=word_of(case, place), unit=units[0].symbol)
        return Settled(word.unit, (), (Question(Topic.HEIGHT_UNIT, twice, tuple(map(height_unit_answer, units))),))
    word = word if word.unit is not None or word.strange else above
    axes = [] if case.look.crs is None or unit is None else case.look.crs.axis_info
    of_crs = axis_unit(axes[2]) if len(axes) > 2 else None
    said = _foot_of(word, given.height_unit or of_crs or unit)
    if said is None or given.units_from == "options":
        return _unsaid_height_unit(case, place, of_crs, unit)
    other = given.height_unit or of_crs
    if other in (None, said) or given.units_from == "header":
        return Settled(said)
    text = SAID_AND_GIVEN if given.height_unit is not None else SAID_AND_CRS
    told = message(text, column=place + 1, word=word_of(case, place), unit=other.symbol)  # type: ignore[union-attr]
    return Settled(other, (), (_header_or_options(told, other, Topic.HEIGHT_UNIT),))  # type: ignore[arg-type]


def _foot_of(word: Word, near: Optional[LengthUnit]) -> Optional[LengthUnit]:
    """The unit a word says; a foot is that of the lengths beside, as both differ by less than a height's error."""
    return near if word.vague and near in _FEET else word.unit


def _unsaid_height_unit(case: Case, place: int, of_crs: Optional[LengthUnit], unit: Optional[LengthUnit]) -> Settled:
    given = case.look.given
    own = given.height_unit or given.unit or of_crs
    strange = _strange(case, [place])
    if strange is not None and given.height_unit is None:
        answers = tuple(height_unit_answer(each) for each in WORKING_UNITS)
        return Settled(LengthUnit.METRE, (), (replace(strange, topic=Topic.HEIGHT_UNIT, answers=answers),))
    if own is None and unit is not None and unit not in WORKING_UNITS:
        answers = tuple(height_unit_answer(each) for each in (LengthUnit.METRE, unit))
        return Settled(unit, (), (Question(Topic.HEIGHT_UNIT, message(HEIGHTS_OPEN, unit=unit.symbol), answers),))
    found = own or unit or LengthUnit.METRE
    middle = case.columns[place].middle if place < len(case.columns) else np.nan
    if given.height_unit is None and not given.units_from and abs(middle * found.metres) > _HIGHEST:
        likely = [one for one in LengthUnit if abs(middle * one.metres) <= _HIGHEST and one is not LengthUnit.KILOMETRE]
        text = message(TOO_HIGH, height=Figure(f"{middle * found.metres:.0f}"), column=place + 1)
        ranked = sorted(likely, key=lambda one: one.metres not in (0.001, 0.01, 0.1))
        answers = tuple(height_unit_answer(one) for one in (*ranked, found))
        return Settled(found, (), (Question(Topic.HEIGHT_UNIT, text, answers),))
    return Settled(found)


def units_by_role(
    case: Case, roles: Mapping[str, int], plan: Optional[LengthUnit], rise: LengthUnit
) -> Dict[str, LengthUnit]:
    """The unit of each length: deviations and pole heights as their own header says, else as plan and heights."""
    flat = plan if plan in WORKING_UNITS else LengthUnit.METRE
    up = rise if rise in WORKING_UNITS else LengthUnit.METRE
    found = {
        **dict.fromkeys(PLAN, plan or LengthUnit.METRE), **dict.fromkeys(("height", "ellipsoidal_height"), rise),
        **dict.fromkeys(("sigma_h", "sigma_e", "sigma_n"), flat), **dict.fromkeys(("sigma_v", "pole_height"), up),
    }  # fmt: skip
    for role in ("sigma_h", "sigma_e", "sigma_n", "sigma_v", "pole_height"):
        place = roles.get(role, len(case.words))
        word = case.words[place] if place < len(case.words) else Word()
        said = _foot_of(word, found[role])
        found[role] = found[role] if said is None else said
    return found
