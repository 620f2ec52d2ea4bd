"""Other ways to read a survey and its control points: mirrored, in another unit, under other names.

A reading has a word, by which the user asks for it. Nothing is read otherwise without that word.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from typing import Any, Dict, List, Optional, Tuple, Union
from urllib.parse import quote, unquote

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from ..units import LengthUnit
from .control import ControlPoints

#: The word for: as read, on the user's word.
AS_READ = "as-read"

BAD_READING = Text(
    "fit_reading.bad",
    QT_TRANSLATE_NOOP(
        "core",
        "'{word}' is no way to read control; such are as-read, mirrored, control-exchanged, control-prefix, "
        "survey:ft, survey-heights:m, survey-depths, control:ft, control-heights:m, names:A=B, several with + between "
        "them.",
    ),
)
MIRRORED = Text(
    "fit_reading.mirrored", QT_TRANSLATE_NOOP("core", "the survey is mirrored: its easting and northing are exchanged")
)
EXCHANGED = Text(
    "fit_reading.exchanged", QT_TRANSLATE_NOOP("core", "easting and northing of the control points are exchanged")
)
PREFIXED = Text(
    "fit_reading.prefixed",
    QT_TRANSLATE_NOOP("core", "the eastings of the control points have the number of a zone before them"),
)
SUNK = Text(
    "fit_reading.sunk",
    QT_TRANSLATE_NOOP("core", "the heights of the survey count down: each is 0 less what stands there"),
)
NAMES = Text("fit_reading.names", QT_TRANSLATE_NOOP("core", "the points have other names: {names}"))
SURVEY_UNIT = Text("fit_reading.survey", QT_TRANSLATE_NOOP("core", "the survey is in {unit}, heights too"))
SURVEY_PLAN = Text("fit_reading.survey_plan", QT_TRANSLATE_NOOP("core", "the survey is in {unit} in plan"))
SURVEY_HEIGHTS = Text(
    "fit_reading.survey_heights", QT_TRANSLATE_NOOP("core", "the heights of the survey are in {unit}")
)
CONTROL_UNIT = Text("fit_reading.control", QT_TRANSLATE_NOOP("core", "the control points are in {unit}, heights too"))
CONTROL_PLAN = Text("fit_reading.control_plan", QT_TRANSLATE_NOOP("core", "the control points are in {unit} in plan"))
CONTROL_HEIGHTS = Text(
    "fit_reading.control_heights", QT_TRANSLATE_NOOP("core", "the heights of the control points are in {unit}")
)
AS_IT_IS = Text("fit_reading.as_read", QT_TRANSLATE_NOOP("core", "as it was read, though it does not fit"))
AND = Text("fit_reading.and", QT_TRANSLATE_NOOP("core", "{one}, and {more}"))
TOO_OFTEN = Text(
    "fit_reading.too_often", QT_TRANSLATE_NOOP("core", "lengths that were converted from {unit} once too often")
)
IS_REALLY = Text("fit_reading.is_really", QT_TRANSLATE_NOOP("core", "{surveyed} in the survey is {known}"))

_FLAGS = ("mirrored", "exchanged", "prefixed", "sunk")
_UNITS = ("survey", "survey_heights", "control", "control_heights")
_WORDS = {
    "exchanged": "control-exchanged", "prefixed": "control-prefix", "sunk": "survey-depths",
    "survey_heights": "survey-heights", "control_heights": "control-heights",
}  # fmt: skip


@dataclass(frozen=True)
class TooOften:
    """As a unit: lengths that were converted from ``unit`` to metres once too often."""

    unit: LengthUnit

    @property
    def metres(self) -> float:
        return 1.0 / self.unit.metres

    @property
    def value(self) -> str:
        return f"1/{self.unit.value}"

    @property
    def symbol(self) -> Message:
        return message(TOO_OFTEN, unit=self.unit.symbol)


Unit = Union[LengthUnit, TooOften]


@dataclass(frozen=True)
class FitReading:
    """How survey and control are read.

    ``mirrored``: easting and northing of the survey exchanged, ``exchanged``: those of the control. ``prefixed``:
    eastings of the control have the number of a zone before them; ``sunk``: heights of the survey count down.
    ``survey`` and ``control``: their unit, None for the one they were read in; heights follow plan unless
    ``survey_heights`` or ``control_heights`` says otherwise. ``names``: pairs of a name in the survey and that of the
    control point it is.
    """

    mirrored: bool = False
    exchanged: bool = False
    prefixed: bool = False
    sunk: bool = False
    survey: Optional[Unit] = None
    survey_heights: Optional[Unit] = None
    control: Optional[Unit] = None
    control_heights: Optional[Unit] = None
    names: Tuple[Tuple[str, str], ...] = ()

    @property
    def word(self) -> str:
        """By which it is asked for."""
        words = [_WORDS.get(flag, flag) for flag in _FLAGS if getattr(self, flag)]
        for name in _UNITS:
            unit = getattr(self, name)
            if unit is not None:
                words.append(f"{_WORDS.get(name, name)}:{unit.value}")
        if self.names:
            words.append("names:" + ",".join(f"{_coded(one)}={_coded(other)}" for one, other in self.names))
        return "+".join(words) or AS_READ

    @property
    def changes(self) -> int:
        """How many mistakes it takes to explain it."""
        flags = sum(bool(getattr(self, flag)) for flag in _FLAGS)
        units = sum(getattr(self, name) is not None for name in _UNITS)
        return flags + units + (1 + (len(self.names) > 2) if self.names else 0)

    @property
    def told(self) -> Message:
        """What is done."""
        said: List[Message] = []
        if self.mirrored:
            said.append(message(MIRRORED))
        if self.exchanged:
            said.append(message(EXCHANGED))
        if self.prefixed:
            said.append(message(PREFIXED))
        if self.sunk:
            said.append(message(SUNK))
        for plan, heights, texts in (
            ("survey", "survey_heights", (SURVEY_UNIT, SURVEY_PLAN, SURVEY_HEIGHTS)),
            ("control", "control_heights", (CONTROL_UNIT, CONTROL_PLAN, CONTROL_HEIGHTS)),
        ):
            unit, rise = getattr(self, plan), getattr(self, heights)
            if unit is not None:
                said.append(message(texts[0] if rise is None else texts[1], unit=unit.symbol))
            if rise is not None:
                said.append(message(texts[2], unit=rise.symbol))
        if self.names:
            pairs = [message(IS_REALLY, surveyed=one, known=other) for one, other in self.names]
            said.append(message(NAMES, names=_joined(pairs)))
        return _joined(said) if said else message(AS_IT_IS)

    def after(self, before: FitReading) -> FitReading:
        """The reading that does at once what ``before`` and then this one do."""
        names = dict(before.names)
        if self.names:
            mine = dict(self.names)
            names = {one: mine.get(other, other) for one, other in before.names}
            names.update({one: other for one, other in self.names if one not in dict(before.names).values()})
            names = {one: other for one, other in names.items() if one != other}
        units = {name: getattr(self, name) or getattr(before, name) for name in _UNITS}
        for plan in ("survey", "control"):  # heights follow the plan again
            if getattr(self, plan) is not None and getattr(self, f"{plan}_heights") is None:
                units[f"{plan}_heights"] = None
        return FitReading(
            names=tuple(names.items()),
            **{flag: getattr(self, flag) != getattr(before, flag) for flag in _FLAGS},
            **units,
        )

    def survey_factors(self, unit: Unit, height_unit: Unit) -> Tuple[float, float]:
        """What plan and heights of the survey, read in these units, are multiplied by."""
        plan, rise = _factors(self.survey, self.survey_heights, unit.metres, height_unit.metres)
        return plan, -rise if self.sunk else rise

    def control_factors(self, metres: Tuple[float, float]) -> Tuple[float, float]:
        """The same for control, read with so many metres to a unit of plan and of height."""
        return _factors(self.control, self.control_heights, *metres)

    def of_points(self, points: PointSet, unit: LengthUnit, height_unit: LengthUnit) -> PointSet:
        """The survey, read in these units, as this reading takes it."""
        plan, rise = self.survey_factors(unit, height_unit)
        east, north = (points.northing, points.easting) if self.mirrored else (points.easting, points.northing)
        return replace(
            points, easting=east * plan, northing=north * plan, height=points.height * rise,
            sigma_h=points.sigma_h * plan, sigma_v=points.sigma_v * abs(rise),
        )  # fmt: skip

    def of_control(self, control: ControlPoints) -> ControlPoints:
        """The control points as this reading takes them."""
        plan, rise = self.control_factors(control.metres)
        east, north = control.easting, control.northing
        if self.exchanged:
            east, north = north, east
        if self.prefixed:
            east = np.mod(east, 1e6)
        return replace(
            control, easting=east * plan, northing=north * plan, height=control.height * rise,
            metres=(control.metres[0] * plan, control.metres[1] * rise),
        )  # fmt: skip


def parse_reading(word: str) -> Optional[FitReading]:
    """The reading of the user's word; None for an empty one. Raises SurveyError for one that is not understood."""
    if not word.strip():
        return None
    said: Dict[str, Any] = {}
    backward = {_WORDS.get(field.name, field.name): field.name for field in fields(FitReading)}
    for part in word.strip().split("+"):
        head, _, value = part.strip().partition(":")
        name = backward.get(head)
        if head == AS_READ and not value:
            continue
        try:
            if name in _FLAGS and not value:
                said[name] = True
            elif name in _UNITS:
                over = value.startswith("1/")
                said[name] = TooOften(LengthUnit(value[2:])) if over else LengthUnit(value)
            elif name == "names":
                pairs = [pair.split("=") for pair in value.split(",")]
                said[name] = tuple((unquote(one.strip()), unquote(other.strip())) for one, other in pairs)
            else:
                raise ValueError(part)
        except ValueError as error:
            raise SurveyError(BAD_READING, word=part.strip()) from error
    return FitReading(**said)


def _factors(plan: Optional[Unit], heights: Optional[Unit], metres: float, metres_up: float) -> Tuple[float, float]:
    if plan is None:
        return 1.0, 1.0 if heights is None else heights.metres / metres_up
    return plan.metres / metres, (plan if heights is None else heights).metres / metres_up


def _coded(name: str) -> str:
    """A name without the signs that part names."""
    return quote(name, safe=" !#$&'()*-./:;<>?@[]^_`{|}~" + "".join(sorted({sign for sign in name if ord(sign) > 127})))


def _joined(said: List[Message]) -> Message:
    return said[0] if len(said) == 1 else message(AND, one=said[0], more=_joined(said[1:]))


def mirrored_plan(places: np.ndarray) -> np.ndarray:
    """Places (n, 2 or 3) with easting and northing exchanged."""
    return places[:, [1, 0, *range(2, places.shape[1])]]
