"""Whether a fit to control points may be used, and if not, which reading of survey and control fits.

A similarity in plan takes any scale and any turn, so a mirrored survey, exchanged names or another unit give a fit
too, only a bad one. Here scale and residuals are judged, and the readings of :mod:`.fit_readings` are compared with
the points as read. The limits below are for surveys by satellite receiver; common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import combinations
from typing import Any, Dict, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import Proj
from pyproj.exceptions import ProjError

from ..units import LengthUnit
from .axes import flat, to_lonlat
from .control import ControlMatch, ControlPoints
from .fit_names import PlanFit, as_complex, name_orders, plan_fit
from .fit_readings import FitReading, TooOften, Unit, mirrored_plan
from .similarity import HeightFit
from .whereabouts import in_area

#: Standard deviations (m) of a coordinate and of a height, survey and control together, where none are given.
USUAL_PLAN, USUAL_HEIGHT = 0.02, 0.03
#: The largest residual that a fit may have (m), and what is added for each metre of the control's reach.
MOST_PLAN, MOST_HEIGHT = 0.3, 0.3
PLAN_BENDS, HEIGHT_BENDS = 5e-5, 1e-4
#: How far the scale may be from that of the projection.
SCALE_OFF = 0.003
#: Heights of control that differ by less say nothing about their unit (m).
RISE_NEEDED = 0.15
#: Metres: what is a foot of some kind.
FOOT = (0.3, 0.31)
#: With so few points of known height, and a shift over that (m), equal mean heights betray the unit.
SHIFT_TELLS, SAME_LEVEL = 20.0, 5e-4
MOST_ANSWERS = 4


class Places(NamedTuple):
    """What is fitted: ``survey`` (n, 3), the control point ``order`` (n,) of each, all ``control`` (m, 3)."""

    names: Tuple[str, ...]
    survey: np.ndarray
    order: np.ndarray
    control: np.ndarray
    known: Tuple[str, ...]

    @property
    def matched(self) -> np.ndarray:
        return np.asarray(self.control[self.order])


class Terms(NamedTuple):
    """What it is judged by: the expected scale, units as read (survey, survey heights, control), standard deviations,
    what is done with heights, and the CRS of the control."""

    scale: float
    unit: Unit
    height_unit: Unit
    metres: Tuple[float, float]
    sigma_plan: float
    sigma_height: float
    heights: HeightFit
    crs: Optional[Any]


@dataclass(frozen=True)
class Judged:
    """How a reading fits. ``plan_ok``: scale and residuals in plan; ``height_ok``: heights. ``limit``: of residuals in
    plan, metres; ``height_off``: the largest of heights after a shift, nan for none. ``misfit``: sum of squares over
    their variances."""

    reading: FitReading
    fit: PlanFit
    plan_ok: bool
    height_ok: bool
    limit: float
    height_off: float
    misfit: float

    @property
    def fits(self) -> bool:
        return self.plan_ok and self.height_ok


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


def expected_scale(crs: Optional[Any], easting: float, northing: float, height: float) -> float:
    """Grid distance over ground distance at a place (metres): the scale of the projection, reduced to the ellipsoid on
    a sphere; 1 where it cannot be worked out."""
    if crs is None:
        return 1.0
    try:
        lon, lat = to_lonlat(crs, [easting], [northing])
        factors = Proj(flat(crs)).get_factors(float(lon[0]), float(lat[0]))
        scale = math.sqrt(abs(float(factors.areal_scale)))
    except (ProjError, ValueError):
        return 1.0
    up = height if math.isfinite(height) else 0.0
    return scale * (1.0 - up / 6.371e6) if math.isfinite(scale) and 0.1 < scale < 10 else 1.0


def places_of(match: ControlMatch, control: ControlPoints, used: np.ndarray) -> Places:
    """What is judged of a match: its ``used`` (n,) points, and all of ``control``."""
    at = {str(name): i for i, name in enumerate(control.name)}
    names = tuple(name for name, use in zip(match.names, used) if use)
    everything = np.column_stack((control.easting, control.northing, control.height))
    return Places(
        names, match.survey[used], np.array([at[name] for name in names], int), everything,
        tuple(str(name) for name in control.name),
    )  # fmt: skip


def judge_fit(places: Places, terms: Terms, space: bool = False) -> FitJudgement:
    """How the points fit as read, and what fits better. At least two points, not all in one place. ``space``: the
    survey may be tilted too, as a fit in space takes it."""
    as_read = _judged(_levelled(places) if space else places, terms, FitReading())
    every = [one for one in _other_readings(places, terms) if one.fits and one.reading != FitReading()]
    if not as_read.fits:
        return FitJudgement(as_read, _best(every, places, terms), _left_out(places, terms), ())
    sure = [one for one in every if _far_better(as_read, one)]
    level = None if sure else _level_tells(places, terms)
    if level is not None:
        sure = [level]
    alike = [one for one in every if one.misfit < 4.0 * as_read.misfit + 10.0 and one not in sure]
    undecided = tuple(one.reading for one in _best(alike, places, terms))
    return FitJudgement(as_read, _best(sure, places, terms), (), () if sure else undecided)


# One reading


def _judged(places: Places, terms: Terms, reading: FitReading) -> Judged:
    p, q = _read_so(places, terms, reading)
    fit = plan_fit(as_complex(p), as_complex(q))
    limit = plan_limit(terms, fit.reach)
    plan_ok = fit.largest <= limit and any(
        abs(fit.scale / scale - 1.0) <= _scale_slack(terms, fit, len(p)) for scale in (terms.scale, 1.0)
    )
    off, ok = _heights_fit(p, q, terms)
    misfit = fit.squares / _plan_variance(terms, fit)
    squares = None if terms.heights is HeightFit.KEEP else _height_squares(places, terms, reading)
    if squares is not None:
        misfit += squares[0] / _height_variance(terms, fit)
    return Judged(reading, fit, plan_ok, ok, limit, off, misfit)


def _levelled(places: Places) -> Places:
    """The survey turned level, as a fit in space would, unless that tilts it by more than 60 degrees."""
    known = np.isfinite(places.survey[:, 2]) & np.isfinite(places.matched[:, 2])
    p, q = places.survey[known], places.matched[known]
    if len(p) < 3:
        return places
    left, _, right = np.linalg.svd((q - q.mean(axis=0)).T @ (p - p.mean(axis=0)))
    rotation = left @ np.diag([1.0, 1.0, np.sign(np.linalg.det(left @ right))]) @ right
    if rotation[2, 2] < 0.5:
        return places
    middle = p.mean(axis=0)
    level = np.where(np.isfinite(places.survey[:, 2:]), places.survey[:, 2:], middle[2])
    turned = middle + (np.hstack((places.survey[:, :2], level)) - middle) @ rotation.T
    turned[~np.isfinite(places.survey[:, 2]), 2] = np.nan
    return places._replace(survey=turned)


def _read_so(places: Places, terms: Terms, reading: FitReading) -> Tuple[np.ndarray, np.ndarray]:
    """Survey and control (n, 3) as ``reading`` takes them, in metres."""
    order = places.order
    if reading.names:
        at = {name: i for i, name in enumerate(places.known)}
        renamed = dict(reading.names)
        order = np.array([at[renamed.get(name, name)] for name in places.names], int)
    plan, rise = reading.survey_factors(terms.unit, terms.height_unit)
    p = places.survey * [plan, plan, rise]
    plan, rise = reading.control_factors(terms.metres)
    q = places.control[order] * [plan, plan, rise]
    return (mirrored_plan(p) if reading.mirrored else p), (mirrored_plan(q) if reading.exchanged else q)


def plan_limit(terms: Terms, reach: float) -> float:
    """The largest residual in plan that a fit may have, metres; less on sites of a few metres."""
    most = min(MOST_PLAN, max(3 * terms.sigma_plan, 0.05 * reach))
    return max(most, 5 * terms.sigma_plan) + PLAN_BENDS * reach


def _scale_slack(terms: Terms, fit: PlanFit, count: int) -> float:
    return SCALE_OFF + 4.0 * terms.sigma_plan / max(fit.reach * math.sqrt(count), 1e-9)


def _heights_fit(p: np.ndarray, q: np.ndarray, terms: Terms) -> Tuple[float, bool]:
    """The largest residual of heights after a shift (metres, nan for none), and whether it will do."""
    known = np.isfinite(p[:, 2]) & np.isfinite(q[:, 2])
    if known.sum() < 2 or terms.heights is HeightFit.KEEP:
        return np.nan, True
    off = q[known, 2] - p[known, 2]
    off = off - off.mean()
    reach = float(np.sqrt((abs(as_complex(q) - as_complex(q).mean()) ** 2).mean()))
    largest = float(np.abs(off).max())
    limit = max(MOST_HEIGHT, 5 * terms.sigma_height) + HEIGHT_BENDS * reach
    return largest, largest <= limit or terms.heights is HeightFit.PLANE


def _plan_variance(terms: Terms, fit: PlanFit) -> float:
    """Variance of a coordinate that is not held against a fit."""
    return terms.sigma_plan**2 + (0.2 * PLAN_BENDS * fit.reach) ** 2


def _height_variance(terms: Terms, fit: PlanFit) -> float:
    return terms.sigma_height**2 + (0.3 * HEIGHT_BENDS * fit.reach) ** 2


def _far_better(as_read: Judged, other: Judged) -> bool:
    """Whether ``other`` fits and the points as read do not, beyond what chance makes."""
    return other.misfit + 30.0 < as_read.misfit and as_read.misfit > 9.0 * other.misfit


# Others


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
                plan_limit(terms, reach),
            ):  # fmt: skip
                if not (order == places.order).all():
                    orders.append(order)
        for order in orders:
            names = tuple((places.names[i], places.known[k]) for i, k in enumerate(order) if k != places.order[i])
            yield from _with_units(places, terms, FitReading(mirrored=mirrored, names=names))


def _with_units(places: Places, terms: Terms, reading: FitReading) -> Iterator[Judged]:
    p, q = _read_so(places, terms, reading)
    scale = plan_fit(as_complex(p), as_complex(q)).scale
    units: List[FitReading] = [reading]
    for unit, ratio in _unit_ratios(terms):
        if min(abs(scale / ratio / one - 1.0) for one in (terms.scale, 1.0)) < 0.02:
            units += [replace(reading, **unit)]
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
    first = _judged(places, terms, reading)
    follow = _height_squares(places, terms, reading)
    if not first.plan_ok or terms.heights is HeightFit.KEEP or follow is None:
        return [first]
    others = []
    for other in _other_heights(terms, reading):
        one, squares = _judged(places, terms, other), _height_squares(places, terms, other)
        tells = squares is not None and (squares[1] >= RISE_NEEDED or not first.height_ok)
        if one.fits and tells and _far_better(first, one):
            others.append(one)
    if others or not (reading.survey or reading.control) or follow[1] >= RISE_NEEDED:
        return others or [first]
    # Level control: nothing tells whether heights share the other unit.
    side = "survey_heights" if reading.survey else "control_heights"
    own: Optional[Unit] = terms.height_unit if reading.survey else _unit_of(terms.metres[1])
    if own is None:
        return [first]
    both = [first, _judged(places, terms, replace(reading, **{side: own}))]  # type: ignore[arg-type]
    return [one for one in both if _same_level(places, terms, one.reading)] or both


def _unit_of(metres: float) -> Optional[LengthUnit]:
    return next((unit for unit in LengthUnit if abs(unit.metres / metres - 1.0) < 1e-7), None)


def _other_heights(terms: Terms, reading: FitReading) -> Iterator[FitReading]:
    own = {"survey_heights": terms.height_unit.metres, "control_heights": terms.metres[1]}
    for side, now in (("survey_heights", reading.survey), ("control_heights", reading.control)):
        for unit in _units_like(terms.metres[1], [own[side] if now is None else now.metres]):
            yield replace(reading, **{side: unit})  # type: ignore[arg-type]


def _height_squares(places: Places, terms: Terms, reading: FitReading) -> Optional[Tuple[float, float, int]]:
    """Sum of squares after a shift, how far the control's heights differ, and how many there are."""
    p, q = _read_so(places, terms, reading)
    known = np.isfinite(p[:, 2]) & np.isfinite(q[:, 2])
    if known.sum() < 2:
        return None
    off = q[known, 2] - p[known, 2]
    return float(((off - off.mean()) ** 2).sum()), float(np.ptp(q[known, 2])), int(known.sum())


def _level_tells(places: Places, terms: Terms) -> Optional[Judged]:
    """Control whose heights are those of the survey but for a unit, though too level for residuals to show it."""
    if terms.heights is HeightFit.KEEP or abs(_apart(places, terms, FitReading())[0]) <= SHIFT_TELLS:
        return None
    for reading in _other_heights(terms, FitReading()):
        if _same_level(places, terms, reading):
            judged = _judged(places, terms, reading)
            if judged.fits:
                return judged
    return None


def _same_level(places: Places, terms: Terms, reading: FitReading) -> bool:
    """Whether survey and control have the same mean height, not near zero."""
    shift, level = _apart(places, terms, reading)
    return abs(shift) < SAME_LEVEL * level and level > SHIFT_TELLS


def _apart(places: Places, terms: Terms, reading: FitReading) -> Tuple[float, float]:
    """Mean of survey minus control in height, and the size of the control's mean height; nan for none."""
    p, q = _read_so(places, terms, reading)
    known = np.isfinite(p[:, 2]) & np.isfinite(q[:, 2])
    if not known.any():
        return np.nan, np.nan
    return float((p[known, 2] - q[known, 2]).mean()), abs(float(q[known, 2].mean()))


def _best(found: Sequence[Judged], places: Places, terms: Terms) -> Tuple[Judged, ...]:
    """Those that put the control into the area of use of its CRS, with the fewest changes, the best first."""
    every = [both for one in found for both in _either_exchanged(one)]
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


def _at_home(places: Places, terms: Terms, reading: FitReading) -> bool:
    """Whether the control lies in the area of use of its CRS; so where that is not known."""
    area = None if terms.crs is None else flat(terms.crs).area_of_use
    if area is None:
        return True
    _, q = _read_so(places, terms, reading)
    try:
        lon, lat = to_lonlat(terms.crs, q[:, 0], q[:, 1])
    except ProjError:
        return False
    return bool(in_area((area.west, area.south, area.east, area.north), lon, lat, 0.5).mean() > 0.5)


def _left_out(places: Places, terms: Terms) -> Tuple[Tuple[str, ...], ...]:
    """One point, or two, without which the rest fits; three must stay."""
    n = len(places.survey)
    for count in (1, 2):
        if n - count < 3 + (count == 2) or n > 40:
            return ()
        found = []
        for out in combinations(range(n), count):
            rest = np.array([i for i in range(n) if i not in out])
            fewer = places._replace(
                names=tuple(places.names[i] for i in rest), survey=places.survey[rest], order=places.order[rest]
            )
            judged = _judged(fewer, terms, FitReading())
            if judged.fits:
                found.append((judged.fit.squares, tuple(places.names[i] for i in out)))
        if found:
            return tuple(names for _, names in sorted(found)[:MOST_ANSWERS])
    return ()
