"""The units of a file's coordinates, as far as header, area of use and steps tell them."""

from __future__ import annotations

from dataclasses import replace
from typing import Dict, List, Optional, Sequence, Tuple

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from ..units import WORKING_UNITS, LengthUnit, axis_unit
from .features import usual_step
from .questions import Answer, Question, Topic
from .reading import EVEN, Case, Pair, said_unit

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
READ_IN = Text("recognise.read_in", QT_TRANSLATE_NOOP("core", "coordinates in {unit}"))
_WALK = (0.47, 0.58)  # metres: a rover that stores a point every half metre


def settle_unit(case: Case, pair: Optional[Pair]) -> Tuple[Optional[LengthUnit], Tuple[Message, ...], List[Question]]:
    """The unit of the position in plan, reasons, and what is open."""
    if pair is None or pair.degrees:
        return None, (), []
    units = case.units
    if len(units) == 1:
        if case.look.unit is not None:
            return units[0], (), []
        vague = said_unit(case.words, case.named, case.xy) is LengthUnit.FOOT
        return units[0], (message(UNIT_SAID, unit=units[0].symbol),), _feet_alike(units[0]) if vague else []
    if len(units) == 2:  # the header says feet and not which
        return units[0], (), [_which_unit(units)]
    own = units[0]
    other = [unit for unit in units if abs(unit.metres / own.metres - 1.0) > 1e-3]
    step, even = usual_step(pair.first.values, pair.second.values, case.look.rows.part)
    walked = [unit for unit in WORKING_UNITS if even >= EVEN and _WALK[0] < step * unit.metres < _WALK[1]]
    if case.landing.known and pair.near:
        if pair.units == (own,) or (own in pair.units and not any(unit in pair.units for unit in other)):
            return own, (message(UNIT_LANDS, unit=own.symbol),), _feet_alike(own)
        if own in pair.units and own in walked:
            return (
                own,
                (message(UNIT_STEPS, unit=own.symbol, step=Figure(f"{step:.2f} {own.symbol}")),),
                _feet_alike(own),
            )
        return own, (), [_which_unit(_ranked(pair.units, walked))]
    if walked and own not in walked:
        return own, (), [_which_unit(_ranked((own, *other), walked))]
    if walked:
        return own, (message(UNIT_STEPS, unit=own.symbol, step=Figure(f"{step:.2f} {own.symbol}")),), _feet_alike(own)
    text = UNIT_OF_CRS if case.landing.known else UNIT_ASSUMED
    return own, (), [replace(_which_unit(units), text=message(text, unit=own.symbol), stops=False)]


def _feet_alike(own: LengthUnit) -> List[Question]:
    """The header or the CRS says feet, and a file in the other foot would look the same."""
    if own is LengthUnit.METRE:
        return []
    other = LengthUnit.FOOT if own is LengthUnit.US_SURVEY_FOOT else LengthUnit.US_SURVEY_FOOT
    return [replace(_which_unit((own, other)), text=message(FEET_ALIKE, unit=own.symbol), stops=False)]


def _ranked(units: Sequence[LengthUnit], walked: Sequence[LengthUnit]) -> Tuple[LengthUnit, ...]:
    return tuple(sorted(units, key=lambda unit: unit not in walked))


def _which_unit(units: Sequence[LengthUnit]) -> Question:
    text = message(WHICH_UNIT, units=", ".join(unit.symbol for unit in units))
    return Question(Topic.UNIT, text, tuple(unit_answer(unit) for unit in units))


def unit_answer(unit: LengthUnit) -> Answer:
    """To read the coordinates in ``unit``."""
    return Answer("--unit", unit.value, message(READ_IN, unit=unit.symbol))


def unit_of_heights(case: Case, heights: Dict[str, int], unit: Optional[LengthUnit]) -> LengthUnit:
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
