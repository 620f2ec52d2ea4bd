"""How well a reading of survey and control fits: scale, residuals in plan and in height.

The limits are for surveys by satellite receiver; common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, NamedTuple, Optional, Tuple

import numpy as np
from pyproj import Proj
from pyproj.exceptions import ProjError

from .axes import flat, to_lonlat
from .control import ControlMatch, ControlPoints
from .fit_names import PlanFit, as_complex, plan_fit
from .fit_readings import FitReading, Unit, mirrored_plan
from .similarity import HeightFit

#: Standard deviations (m) of a coordinate and of a height, survey and control together, where none are given.
USUAL_PLAN, USUAL_HEIGHT = 0.02, 0.03
#: The largest residual that a fit may have (m), and what is added for each metre of the control's reach.
MOST_PLAN, MOST_HEIGHT = 0.3, 0.15
PLAN_BENDS, HEIGHT_BENDS = 5e-5, 1e-4
#: How far the scale may be from that of the projection.
SCALE_OFF = 0.003
#: With a shift over that (m), equal mean heights betray the unit.
SHIFT_TELLS, SAME_LEVEL = 20.0, 5e-4


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


def judge_reading(places: Places, terms: Terms, reading: FitReading) -> Judged:
    p, q = read_so(places, terms, reading)
    fit = plan_fit(as_complex(p), as_complex(q))
    limit = plan_limit(terms, fit.reach)
    plan_ok = fit.largest <= limit and any(
        abs(fit.scale / scale - 1.0) <= _scale_slack(terms, fit, len(p)) for scale in (terms.scale, 1.0)
    )
    off, ok = _heights_fit(p, q, terms)
    misfit = fit.squares / _plan_variance(terms, fit)
    squares = None if terms.heights is HeightFit.KEEP else height_squares(places, terms, reading)
    if squares is not None:
        misfit += squares[0] / _height_variance(terms, fit)
    return Judged(reading, fit, plan_ok, ok, limit, off, misfit)


def levelled(places: Places) -> Places:
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


def read_so(places: Places, terms: Terms, reading: FitReading) -> Tuple[np.ndarray, np.ndarray]:
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


def far_better(as_read: Judged, other: Judged) -> bool:
    """Whether ``other`` fits and the points as read do not, beyond what chance makes."""
    return other.misfit + 30.0 < as_read.misfit and as_read.misfit > 9.0 * other.misfit


def height_squares(places: Places, terms: Terms, reading: FitReading) -> Optional[Tuple[float, float, int]]:
    """Sum of squares after a shift, how far the control's heights differ, and how many there are."""
    p, q = read_so(places, terms, reading)
    known = np.isfinite(p[:, 2]) & np.isfinite(q[:, 2])
    if known.sum() < 2:
        return None
    off = q[known, 2] - p[known, 2]
    return float(((off - off.mean()) ** 2).sum()), float(np.ptp(q[known, 2])), int(known.sum())


def apart(places: Places, terms: Terms, reading: FitReading) -> Tuple[float, float]:
    """Mean of survey minus control in height, and the size of the control's mean height; nan for none."""
    p, q = read_so(places, terms, reading)
    known = np.isfinite(p[:, 2]) & np.isfinite(q[:, 2])
    if not known.any():
        return np.nan, np.nan
    return float((p[known, 2] - q[known, 2]).mean()), abs(float(q[known, 2].mean()))


def same_level(places: Places, terms: Terms, reading: FitReading) -> bool:
    """Whether survey and control have the same mean height, not near zero."""
    shift, level = apart(places, terms, reading)
    return abs(shift) < SAME_LEVEL * level and level > SHIFT_TELLS
