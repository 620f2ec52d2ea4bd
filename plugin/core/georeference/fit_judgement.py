"""Whether a fit to control points may be used, and if not, which reading of survey and control fits.

A similarity in plan takes any scale and any turn, so a mirrored survey, exchanged names or another unit give a fit
too, only a bad one. The readings of :mod:`.fit_readings` are compared with the points as read.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import combinations
from typing import Any, Dict, Iterator, List, Optional, Sequence, Tuple

import numpy as np
from pyproj.exceptions import ProjError

from ..units import LengthUnit
from .axes import flat, to_lonlat
from .fit_measure import (
    SHIFT_TELLS,
    Judged,
    Places,
    Terms,
    apart,
    far_better,
    height_squares,
    judge_reading,
    levelled,
    plan_limit,
    read_so,
    same_level,
)
from .fit_names import agreeing, as_complex, name_orders, plan_fit
from .fit_readings import FitReading, TooOften, Unit, mirrored_plan
from .similarity import HeightFit
from .whereabouts import in_area

#: Heights of control that differ by less say nothing about their unit (m).
RISE_NEEDED = 0.15
#: Metres: what is a foot of some kind.
FOOT = (0.3, 0.31)
MOST_ANSWERS = 4
#: Of so many points each pair is left out in turn.
MOST_TRIED = 40


@dataclass(frozen=True)
class FitJudgement:
    """``as_read``: how the points fit as read. ``better``: readings that fit where those as read do not, or that fit
    far better. ``left_out``: names without which the rest fits. ``undecided``: readings that fit as well, so that
    nothing tells them from the points as read."""

    as_read: Judged
    better: Tuple[Judged, ...]
    left_out: Tuple[Tuple[str, ...], ...]
    undecided: Tuple[FitReading, ...]

    @property
    def good(self) -> bool:
        return self.as_read.fits and not self.better


def judge_fit(places: Places, terms: Terms, space: bool = False) -> FitJudgement:
    """How the points fit as read, and what fits better. At least two points, not all in one place. ``space``: the
    survey may be tilted too, as a fit in space takes it."""
    as_read = judge_reading(levelled(places) if space else places, terms, FitReading())
    every = [one for one in _other_readings(places, terms) if one.fits and one.reading != FitReading()]
    if not as_read.fits:
        better = _best(every, places, terms)
        # What explains all points goes before what explains some; a scale that is wrong throughout is of none of them.
        off = as_read.fit.largest > as_read.limit or not as_read.height_ok
        return FitJudgement(as_read, better, () if better or not off else _left_out(places, terms), ())
    sure = [one for one in every if far_better(as_read, one)]
    level = None if sure else _level_tells(places, terms)
    if level is not None:
        sure = [level]
    alike = [one for one in every if one.misfit < 4.0 * as_read.misfit + 10.0 and one not in sure]
    undecided = tuple(one.reading for one in _best(alike, places, terms))
    return FitJudgement(as_read, _best(sure, places, terms), (), () if sure else undecided)


# Other readings


def _other_readings(places: Places, terms: Terms) -> Iterator[Judged]:
    """Readings that fit in plan and scale, with the heights that fit them."""
    base = as_complex(places.matched)
    reach = float(np.sqrt((abs(base - base.mean()) ** 2).mean()))
    scales = sorted({one for _, one in _unit_ratios(terms)} | {1.0})
    for mirrored in (False, True):
        survey = mirrored_plan(places.survey) if mirrored else places.survey
        orders = [places.order]
        if len(places.survey) == 2:
            orders.append(places.order[::-1])
        else:
            for order in name_orders(
                as_complex(survey), as_complex(places.control), [one * terms.scale for one in scales],
                plan_limit(terms, reach), places.order,
            ):  # fmt: skip
                if not (order == places.order).all():
                    orders.append(order)
        for order in orders:
            names = tuple((places.names[i], places.known[k]) for i, k in enumerate(order) if k != places.order[i])
            yield from _with_units(places, terms, FitReading(mirrored=mirrored, names=names))


def _with_units(places: Places, terms: Terms, reading: FitReading) -> Iterator[Judged]:
    p, q = read_so(places, terms, reading)
    scale = plan_fit(as_complex(p), as_complex(q)).scale
    units: List[FitReading] = [reading]
    for unit, ratio in _unit_ratios(terms):
        if min(abs(scale / ratio / one - 1.0) for one in (terms.scale, 1.0)) < 0.02:
            change: Any = unit
            units.append(replace(reading, **change))
    for one in units:
        yield from _with_heights(places, terms, one)


def _unit_ratios(terms: Terms) -> List[Tuple[Dict[str, Unit], float]]:
    """Other units of survey or control, and the scale that the fit has when they are overlooked. Two feet that cannot
    be told apart count once: that of the CRS. A foot may also have been made metres once too often."""
    found: List[Tuple[Dict[str, Unit], float]] = []
    for side, metres in (("survey", terms.unit.metres), ("control", terms.metres[0])):
        for unit in _units_like(terms.metres[0], [metres]):
            found.append(({side: unit}, _overlooked(side, unit.metres / metres)))
            if FOOT[0] < unit.metres < FOOT[1]:
                over = TooOften(unit)
                found.append(({side: over}, _overlooked(side, over.metres / metres)))
    return found


def _overlooked(side: str, ratio: float) -> float:
    return ratio if side == "survey" else 1.0 / ratio


def _units_like(metres: float, but: Sequence[float]) -> List[LengthUnit]:
    """All units but those of ``but`` metres, of two that cannot be told apart the one of ``metres``."""
    seen, found = list(but), []
    for unit in sorted(LengthUnit, key=lambda unit: abs(unit.metres / metres - 1.0) > 1e-7):
        if all(abs(unit.metres / one - 1.0) > 1e-4 for one in seen):
            seen.append(unit.metres)
            found.append(unit)
    return found


def _with_heights(places: Places, terms: Terms, reading: FitReading) -> List[Judged]:
    """``reading`` with heights that follow the plan, and where others fit far better, those."""
    first = judge_reading(places, terms, reading)
    follow = height_squares(places, terms, reading)
    if not first.plan_ok or terms.heights is HeightFit.KEEP or follow is None:
        return [first]
    others = []
    for other in _other_heights(terms, reading):
        one, squares = judge_reading(places, terms, other), height_squares(places, terms, other)
        tells = squares is not None and (squares[1] >= RISE_NEEDED or not first.height_ok)
        if one.fits and tells and far_better(first, one):
            others.append(one)
    if others or not (reading.survey or reading.control):
        return others or [first]
    # Level control: its residuals do not tell whether heights share the other unit, its level may.
    side = "survey_heights" if reading.survey else "control_heights"
    own: Optional[Unit] = terms.height_unit if reading.survey else _unit_of(terms.metres[1])
    if own is None:
        return [first]
    change: Any = {side: own}
    both = [first, judge_reading(places, terms, replace(reading, **change))]
    level = [one for one in both if one.fits and same_level(places, terms, one.reading)]
    return level or (both if follow[1] < RISE_NEEDED else [first])


def _unit_of(metres: float) -> Optional[LengthUnit]:
    return next((unit for unit in LengthUnit if abs(unit.metres / metres - 1.0) < 1e-7), None)


def _other_heights(terms: Terms, reading: FitReading) -> Iterator[FitReading]:
    own = {"survey_heights": terms.height_unit.metres, "control_heights": terms.metres[1]}
    for side, now in (("survey_heights", reading.survey), ("control_heights", reading.control)):
        for unit in _units_like(terms.metres[1], [own[side] if now is None else now.metres]):
            yield replace(reading, **{side: unit})  # type: ignore[arg-type]
    yield replace(reading, sunk=True)


def _level_tells(places: Places, terms: Terms) -> Optional[Judged]:
    """Control whose heights are those of the survey but for a unit, though too level for residuals to show it."""
    if terms.heights is HeightFit.KEEP or abs(apart(places, terms, FitReading())[0]) <= SHIFT_TELLS:
        return None
    for reading in _other_heights(terms, FitReading()):
        if same_level(places, terms, reading):
            judged = judge_reading(places, terms, reading)
            if judged.fits:
                return judged
    return None


def _best(found: Sequence[Judged], places: Places, terms: Terms) -> Tuple[Judged, ...]:
    """Those that put the control into the area of use of its CRS, with the fewest changes, the best first."""
    every = [each for one in found for both in _either_exchanged(one) for each in _either_foot(both, terms)]
    at_home = [one for one in every if _at_home(places, terms, one.reading)]
    every = at_home or every
    fewest = min((one.reading.changes for one in every), default=0)
    level = [one for one in every if one.reading.changes <= fewest + bool(one.reading.survey or one.reading.control)]
    level.sort(key=lambda one: (one.reading.changes, _heights_touched(one.reading, terms), one.misfit))
    return tuple(level[:MOST_ANSWERS])


def _heights_touched(reading: FitReading, terms: Terms) -> int:
    """Whose heights are read otherwise; those of the control weigh more."""
    survey = reading.survey_factors(terms.unit, terms.height_unit)[1]
    control = reading.control_factors(terms.metres)[1]
    return (abs(survey - 1.0) > 1e-9) + 2 * (abs(control - 1.0) > 1e-9)


def _either_exchanged(one: Judged) -> Tuple[Judged, ...]:
    """A mirrored survey fits as well as control whose easting and northing are exchanged."""
    if not one.reading.mirrored:
        return (one,)
    return one, replace(one, reading=replace(one.reading, mirrored=False, exchanged=True))


def _either_foot(one: Judged, terms: Terms) -> Tuple[Judged, ...]:
    """Control in the one foot fits as well as in the other, some metres away, unless the CRS counts in one of them."""
    feet = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
    if one.reading.control not in feet or any(abs(terms.metres[0] / foot.metres - 1.0) < 1e-7 for foot in feet):
        return (one,)
    return tuple(replace(one, reading=replace(one.reading, control=foot)) for foot in feet)


def _at_home(places: Places, terms: Terms, reading: FitReading) -> bool:
    """Whether the control lies in the area of use of its CRS; so where that is not known."""
    area = None if terms.crs is None else flat(terms.crs).area_of_use
    if area is None:
        return True
    _, q = read_so(places, terms, reading)
    try:
        lon, lat = to_lonlat(terms.crs, q[:, 0], q[:, 1])
    except ProjError:
        return False
    return bool(in_area((area.west, area.south, area.east, area.north), lon, lat, 0.5).mean() > 0.5)


def _left_out(places: Places, terms: Terms) -> Tuple[Tuple[str, ...], ...]:
    """One point, or two, without which the rest fits; three must stay. Of many points those that do not agree with
    most."""
    n = len(places.survey)
    for count in (1, 2) if n <= MOST_TRIED else ():
        if n - count < 3 + (count == 2):
            return ()
        found = []
        for out in combinations(range(n), count):
            judged = _without(places, terms, out)
            if judged.fits:
                found.append((judged.misfit, tuple(places.names[i] for i in out)))
        if found:
            # Where one of them stands out, the others fit no better without any other point.
            best = min(found)[0]
            return tuple(names for misfit, names in sorted(found)[:MOST_ANSWERS] if misfit < 4.0 * best + 10.0)
    p, q = as_complex(places.survey), as_complex(places.matched)
    stay = agreeing(p, q, plan_limit(terms, plan_fit(p, q).reach))
    off = np.flatnonzero(~stay).tolist()
    if 3 * len(off) <= n and n - len(off) >= 4 and _without(places, terms, off).fits:
        return (tuple(places.names[i] for i in off),)
    return ()


def _without(places: Places, terms: Terms, out: Sequence[int]) -> Judged:
    rest = np.array([i for i in range(len(places.survey)) if i not in out])
    names = tuple(places.names[i] for i in rest)
    fewer = places._replace(names=names, survey=places.survey[rest], order=places.order[rest])
    return judge_reading(fewer, terms, FitReading())
