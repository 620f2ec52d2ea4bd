"""The accuracy statement: a surface tested against independent check points.

By FGDC-STD-007.3-1998 (NSSDA) and the ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 2
(2023). What is said of edition 2 here, its wording included, was put down from memory and secondary sources: 30
check points at least; their own error added in quadrature; check points at least twice as good as the class asked for;
a mean error above a quarter of the RMSE to be looked into; vegetated ground reported as found.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import List, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..georeference.crs import height_unit
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..surface.tin import Tin
from ..units import LengthUnit
from .check_points import CheckPoints, Comparison, Cover, PlanPairs, compare
from .statistics import HeightStatistics, PlanStatistics, height_statistics, plan_statistics

#: Check points asked for: NSSDA 3.2.2 (1998); ASPRS edition 2 (2023).
NSSDA_POINTS = 20
ASPRS_POINTS = 30
#: ASPRS: a mean error beyond this share of the RMSE is to be looked into.
_BIAS_SHARE = 0.25
#: ASPRS edition 2: check points are to be this many times better than the class.
_BETTER = 2.0
#: NSSDA 3.2.2: at least this share of the points in each quadrant, and this share of the diagonal between points.
_QUADRANT_SHARE = 0.20
_DIAGONAL_SHARE = 0.10

NONE_ON_SURFACE = Text(
    "accuracy.none_on_surface",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: none of the {count} check points lies on the surface (the first is line {line}); check their "
        "coordinate system, units and the order of easting and northing.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: the check point of line {line} does not lie on the surface; check its coordinate system, "
        "units and the order of easting and northing.",
    ),
)
BAD_CLASS = Text(
    "accuracy.bad_class",
    QT_TRANSLATE_NOOP("core", "The vertical class wanted is {value} cm; give a number above 0."),
)
NSSDA_TESTED = Text(
    "accuracy.nssda_tested",
    QT_TRANSLATE_NOOP(
        "core",
        "Tested {accuracy:.3f} {unit} vertical accuracy at 95 % confidence level (FGDC-STD-007.3-1998; {count} check "
        "points, RMSEz {rmse:.3f} {symbol}).",
    ),
)
UNIT_WORDS = {
    LengthUnit.METRE: Text("accuracy.metres", QT_TRANSLATE_NOOP("core", "metres")),
    LengthUnit.FOOT: Text("accuracy.feet", QT_TRANSLATE_NOOP("core", "feet")),
    LengthUnit.US_SURVEY_FOOT: Text("accuracy.survey_feet", QT_TRANSLATE_NOOP("core", "U.S. survey feet")),
}
NSSDA_TOO_FEW = Text(
    "accuracy.nssda_too_few",
    QT_TRANSLATE_NOOP(
        "core",
        "Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there are {count}. What they show is "
        "1.9600 × RMSEz = {accuracy:.3f} {symbol}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Not tested by FGDC-STD-007.3-1998: it asks for {needed} check points and there is one. What it shows is "
        "1.9600 × RMSEz = {accuracy:.3f} {symbol}.",
    ),
)
INTERNAL = Text(
    "accuracy.internal",
    QT_TRANSLATE_NOOP(
        "core",
        "Internal check, no test by a standard: against {count} check shots of the same receiver RMSEz {rmse:.3f} m, "
        "mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Internal check, no test by a standard: against one check shot of the same receiver RMSEz {rmse:.3f} "
        "m, mean {mean:+.3f} m, 1.9600 × RMSEz {accuracy:.3f} m.",
    ),
)
ASPRS_TESTED = Text(
    "accuracy.asprs_tested",
    QT_TRANSLATE_NOOP(
        "core",
        "This data set was tested to meet ASPRS Positional Accuracy Standards for Digital Geospatial Data, Edition 2 "
        "(2023) for a {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class. Actual NVA accuracy was found to be "
        "RMSEV = {rmse_cm:.1f} cm.",
    ),
)
ASPRS_FAILED = Text(
    "accuracy.asprs_failed",
    QT_TRANSLATE_NOOP(
        "core",
        "This data set was tested and does not meet the {class_cm:g}-cm RMSEV Vertical Positional Accuracy Class of "
        "the ASPRS Positional Accuracy Standards, Edition 2 (2023). Actual NVA accuracy was found to be RMSEV = "
        "{rmse_cm:.1f} cm.",
    ),
)
ASPRS_TOO_FEW = Text(
    "accuracy.asprs_too_few",
    QT_TRANSLATE_NOOP(
        "core",
        "Although the Standards call for a minimum of {needed} checkpoints, this test was performed using only "
        "{count} checkpoints in non-vegetated ground.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Although the Standards call for a minimum of {needed} checkpoints, this test was performed using "
        "only one checkpoint in non-vegetated ground.",
    ),
)
ASPRS_VEGETATED = Text(
    "accuracy.asprs_vegetated",
    QT_TRANSLATE_NOOP(
        "core",
        "Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm ({count} checkpoints, 95th percentile "
        "{percentile_cm:.1f} cm).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Actual VVA accuracy was found to be RMSEV = {rmse_cm:.1f} cm (one checkpoint, 95th percentile "
        "{percentile_cm:.1f} cm).",
    ),
)
ASPRS_HORIZONTAL = Text(
    "accuracy.asprs_horizontal",
    QT_TRANSLATE_NOOP(
        "core",
        "Horizontal positional accuracy of {count} marks found in both: RMSEH = {rmse_cm:.1f} cm (check points' own "
        "error included).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "Horizontal positional accuracy of the one mark found in both: RMSEH = {rmse_cm:.1f} cm (the check "
        "point's own error included).",
    ),
)
WORDING = Text(
    "accuracy.wording",
    QT_TRANSLATE_NOOP(
        "core",
        "The sentences follow the standards in meaning; compare their wording with your copy before you sign them.",
    ),
)
OUTSIDE = Text(
    "accuracy.outside",
    QT_TRANSLATE_NOOP("core", "{count} of {all} check points lie outside the surface and were not used: {names}."),
    one=QT_TRANSLATE_NOOP("core", "One of {all} check points lies outside the surface and was not used: {names}."),
)
ONLY_VEGETATED = Text(
    "accuracy.only_vegetated",
    QT_TRANSLATE_NOOP(
        "core", "All check points on the surface are in vegetated ground; no class can be stated without open ground."
    ),
)
BIASED = Text(
    "accuracy.biased",
    QT_TRANSLATE_NOOP(
        "core",
        "The surface lies {mean:+.3f} m off the check points on average (p = {p:.2g}), {share:.0f} % of the RMSE. Look "
        "for the cause (pole height, geoid, base coordinates) before you use 1.9600 × RMSE.",
    ),
)
NO_SIGMA = Text(
    "accuracy.no_sigma",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} check points state no height error of their own; it counts as {sigma:.3f} m, as with the others.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "One check point states no height error of its own; it counts as {sigma:.3f} m, as with the others."
    ),
)
NO_SIGMA_AT_ALL = Text(
    "accuracy.no_sigma_at_all",
    QT_TRANSLATE_NOOP(
        "core",
        "No check point states its own height error, so none is added; edition 2 asks for it. Give a column sigma_v.",
    ),
)
CHECKS_TOO_WEAK = Text(
    "accuracy.checks_too_weak",
    QT_TRANSLATE_NOOP(
        "core",
        "The check points' own error is {sigma_cm:.1f} cm; for the {class_cm:g}-cm class they should be good to "
        "{needed_cm:.1f} cm.",
    ),
)
UNEVEN = Text(
    "accuracy.uneven",
    QT_TRANSLATE_NOOP(
        "core",
        "The check points are spread unevenly: the emptiest quarter of the site holds {least:.0f} % of them (NSSDA "
        "suggests 20 % or more). Nearer to another one than a tenth of the site's diagonal ({distance:.0f} m): {near}.",
    ),
)


@dataclass(frozen=True)
class Distribution:
    """How check points are spread. ``quadrants``: shares in the south-west, south-east, north-west and north-east
    quarter of the surface's extent. ``near``: points nearer to another than ``distance``, a tenth of its diagonal, m.
    """

    quadrants: Tuple[float, float, float, float]
    near: int
    distance: float

    @property
    def even(self) -> bool:
        """What NSSDA suggests for a rectangular site of even accuracy."""
        return min(self.quadrants) >= _QUADRANT_SHARE and self.near == 0


@dataclass(frozen=True)
class AccuracyStatement:
    """What check points say of a surface; lengths in metres, classes in centimetres.

    ``non_vegetated``, ``vegetated``, ``together``: statistics of surface less check, None for a group without points.
    ``check_error``: root mean square of the check points' own sigmas of the group, nan where none is stated.
    ``rmse_v``, ``rmse_v_vegetated``: RMSE with that error in quadrature (ASPRS edition 2), nan for an empty group.
    ``class_cm``: the finest class of whole centimetres that ``rmse_v`` meets, None without open ground.
    ``wanted_cm``, ``met``: the class asked for, and whether it is met.
    ``plan``: plan differences of marks found in both, ``rmse_h`` the same with the check points' error.
    ``statements``: sentences for the hand-over; ``remarks``: what their reader must know.
    """

    comparison: Comparison
    non_vegetated: Optional[HeightStatistics]
    vegetated: Optional[HeightStatistics]
    together: HeightStatistics
    check_error: float
    rmse_v: float
    rmse_v_vegetated: float
    class_cm: Optional[int]
    wanted_cm: Optional[float]
    met: Optional[bool]
    plan: Optional[PlanStatistics]
    rmse_h: float
    distribution: Distribution
    statements: Tuple[Message, ...]
    remarks: Tuple[Message, ...]

    @property
    def enough_for_nssda(self) -> bool:
        return self._open >= NSSDA_POINTS

    @property
    def enough_for_asprs(self) -> bool:
        return self._open >= ASPRS_POINTS

    @property
    def _open(self) -> int:
        return 0 if self.non_vegetated is None else self.non_vegetated.count


def accuracy_statement(
    tin: Tin, checks: CheckPoints, *, wanted_cm: Optional[float] = None, pairs: Optional[PlanPairs] = None
) -> AccuracyStatement:
    """Test ``tin`` against ``checks``.

    ``wanted_cm``: a vertical class to be met, centimetres of RMSEV. ``pairs``: from
    :func:`.check_points.pair_by_name`, for the accuracy in plan. Raises SurveyError when no check point is on the
    surface or the class is not above 0.
    """
    if wanted_cm is not None and not 0 < wanted_cm < math.inf:
        raise SurveyError(BAD_CLASS, value=wanted_cm)
    comparison = compare(tin, checks)
    on = comparison.inside
    if not np.any(on):
        line = int(checks.line[0]) if len(checks) else 0
        raise SurveyError(NONE_ON_SURFACE, file=checks.source, count=len(checks), line=line)
    sigma = _filled(checks.sigma_v, on)
    groups = [on & (checks.cover == cover) for cover in Cover]
    open_ground, vegetated = (height_statistics(comparison.difference[g]) if g.any() else None for g in groups)
    own = [_root_mean_square(sigma[g]) for g in groups]
    rmse_v, rmse_veg = (_with_own(s, e) for s, e in zip((open_ground, vegetated), own))
    plan = None if pairs is None or len(pairs) == 0 else plan_statistics(pairs.east, pairs.north)
    class_cm = None if open_ground is None else vertical_class(rmse_v)
    draft = AccuracyStatement(
        comparison=comparison,
        non_vegetated=open_ground,
        vegetated=vegetated,
        together=height_statistics(comparison.difference[on]),
        check_error=own[Cover.NON_VEGETATED],
        rmse_v=rmse_v,
        rmse_v_vegetated=rmse_veg,
        class_cm=class_cm,
        wanted_cm=wanted_cm,
        met=None if wanted_cm is None or open_ground is None else rmse_v * 100 <= wanted_cm * (1 + 1e-12),
        plan=plan,
        rmse_h=float("nan") if plan is None or pairs is None else _plan_rmse(plan, checks, pairs),
        distribution=distribution(tin, checks, on),
        statements=(),
        remarks=(),
    )
    return _with_words(draft, checks, height_unit(tin.crs))


def vertical_class(rmse: float) -> int:
    """The finest class of whole centimetres, 1 at least, that an RMSE of so many metres meets."""
    return max(1, math.ceil(rmse * 100 - 1e-9))


def distribution(tin: Tin, checks: CheckPoints, inside: np.ndarray) -> Distribution:
    """How the check points of mask ``inside`` are spread over the extent of the surface (NSSDA 3.2.2)."""
    west, south, east, north = tin.bounds
    x, y = checks.easting[inside], checks.northing[inside]
    number = (x > (west + east) / 2).astype(int) + 2 * (y > (south + north) / 2).astype(int)
    share = np.bincount(number, minlength=4) / len(x)
    distance = _DIAGONAL_SHARE * math.hypot(east - west, north - south)
    near = 0
    if len(x) > 1:
        gap = cKDTree(np.column_stack([x, y])).query(np.column_stack([x, y]), k=2)[0][:, 1]
        near = int(np.count_nonzero(gap < distance))
    sw, se, nw, ne = share.tolist()
    return Distribution((sw, se, nw, ne), near, distance)


def _filled(sigma: np.ndarray, on: np.ndarray) -> np.ndarray:
    """``sigma`` (n,) with unknown values as the root mean square of the known ones of mask ``on``."""
    known = sigma[on & np.isfinite(sigma)]
    return np.where(np.isfinite(sigma), sigma, _root_mean_square(known))


def _root_mean_square(values: np.ndarray) -> float:
    return float(np.sqrt(np.mean(values**2))) if len(values) else float("nan")


def _with_own(statistics: Optional[HeightStatistics], own: float) -> float:
    if statistics is None:
        return float("nan")
    return math.hypot(statistics.rmse, 0.0 if math.isnan(own) else own)


def _plan_rmse(plan: PlanStatistics, checks: CheckPoints, pairs: PlanPairs) -> float:
    own = checks.sigma_h[pairs.check]
    own_rms = _root_mean_square(own[np.isfinite(own)])
    return math.hypot(plan.rmse_h, 0.0 if math.isnan(own_rms) else own_rms)


def _with_words(draft: AccuracyStatement, checks: CheckPoints, unit: LengthUnit) -> AccuracyStatement:
    statements = [*_nssda(draft, unit), *_asprs(draft)]
    remarks = [*checks.messages, *_doubts_of_checks(draft), *_doubts_of_result(draft), message(WORDING)]
    return replace(draft, statements=tuple(statements), remarks=tuple(remarks))


def _nssda(draft: AccuracyStatement, unit: LengthUnit) -> List[Message]:
    tested = draft.non_vegetated
    if tested is None:
        return []
    found = {"count": tested.count, "accuracy": tested.accuracy_95}
    if not draft.comparison.checks.independent:
        return [message(INTERNAL, rmse=tested.rmse, mean=tested.mean, **found)]
    # In feet where the heights are (NSSDA 3.2.1, as we remember it: metric units for coordinates in metres, else feet).
    in_unit = {"accuracy": tested.accuracy_95 / unit.metres, "symbol": unit.symbol}
    if not draft.enough_for_nssda:
        return [message(NSSDA_TOO_FEW, needed=NSSDA_POINTS, count=tested.count, **in_unit)]
    rmse = tested.rmse / unit.metres
    return [message(NSSDA_TESTED, rmse=rmse, count=tested.count, unit=UNIT_WORDS[unit], **in_unit)]


def _asprs(draft: AccuracyStatement) -> List[Message]:
    said: List[Message] = []
    if draft.non_vegetated is not None and draft.comparison.checks.independent:
        class_cm = draft.class_cm if draft.wanted_cm is None else draft.wanted_cm
        text = ASPRS_FAILED if draft.met is False else ASPRS_TESTED
        said.append(message(text, class_cm=class_cm, rmse_cm=draft.rmse_v * 100))
        if not draft.enough_for_asprs:
            said.append(message(ASPRS_TOO_FEW, needed=ASPRS_POINTS, count=draft.non_vegetated.count))
    if draft.vegetated is not None:
        found = {"count": draft.vegetated.count, "percentile_cm": draft.vegetated.percentile_95 * 100}
        said.append(message(ASPRS_VEGETATED, rmse_cm=draft.rmse_v_vegetated * 100, **found))
    if draft.plan is not None:
        said.append(message(ASPRS_HORIZONTAL, count=draft.plan.count, rmse_cm=draft.rmse_h * 100))
    return said


def _doubts_of_checks(draft: AccuracyStatement) -> List[Message]:
    """Remarks on the check points themselves."""
    checks, on = draft.comparison.checks, draft.comparison.inside
    said: List[Message] = []
    if not np.all(on):
        said.append(message(OUTSIDE, count=int(np.count_nonzero(~on)), all=len(checks), names=_names(checks, ~on)))
    unknown = on & ~np.isfinite(checks.sigma_v)
    if np.array_equal(unknown, on):
        said.append(message(NO_SIGMA_AT_ALL))
    elif np.any(unknown):
        known = _root_mean_square(checks.sigma_v[on & ~unknown])
        said.append(message(NO_SIGMA, count=int(np.count_nonzero(unknown)), sigma=known))
    spread = draft.distribution
    if not spread.even:
        least = 100 * min(spread.quadrants)
        said.append(message(UNEVEN, least=least, near=spread.near, distance=spread.distance))
    return said


def _names(checks: CheckPoints, which: np.ndarray) -> str:
    """Names of the check points of a mask, or their lines in brackets; the first twenty."""
    pairs = zip(checks.name[which].tolist(), checks.line[which].tolist())
    words = [str(name) or f"({line})" for name, line in pairs]
    return ", ".join(words[:20] + ["..."] * (len(words) > 20))


def _doubts_of_result(draft: AccuracyStatement) -> List[Message]:
    """Remarks on what the numbers may be used for."""
    tested = draft.non_vegetated
    if tested is None:
        return [message(ONLY_VEGETATED)]
    said: List[Message] = []
    if tested.biased and abs(tested.mean) > _BIAS_SHARE * tested.rmse:
        share = 100 * abs(tested.mean) / tested.rmse
        said.append(message(BIASED, mean=tested.mean, p=tested.bias_p, share=share))
    class_cm = draft.class_cm if draft.wanted_cm is None else draft.wanted_cm
    if class_cm is not None and draft.check_error * 100 * _BETTER > class_cm:
        needed = class_cm / _BETTER
        said.append(message(CHECKS_TOO_WEAK, sigma_cm=draft.check_error * 100, class_cm=class_cm, needed_cm=needed))
    return said
