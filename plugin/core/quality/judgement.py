"""What is to be said of the quality of a survey and its surface, in one place."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Sequence

from ..features.ground_lines import GroundLine
from ..linework.constraints import Constraints
from ..messages import SurveyError
from ..points.pointset import PointSet
from ..progress import Progress, silent
from ..surface.tin import Tin
from ..units import LengthUnit
from .accuracy import AccuracyStatement, accuracy_statement
from .check import SurveyCheck
from .check_points import NO_CHECK_SHOTS, CheckPoints, check_shots, pair_by_name
from .claims import Claims, state_claims
from .coverage import Coverage, CoverageOptions, coverage
from .curvature import ground_curvature
from .interval import SupportedInterval, claimed_sigma, supported_interval


@dataclass(frozen=True)
class Judgement:
    """``interval``: the smallest contour interval the data support, None where no error is known. ``accuracy``: against
    check points, None where there are none on the surface. Both are None where ``claims`` has something against them.
    """

    coverage: Coverage
    interval: Optional[SupportedInterval]
    accuracy: Optional[AccuracyStatement]
    claims: Claims


def judge(
    tin: Tin,
    points: PointSet,
    *,
    check: Optional[SurveyCheck] = None,
    checks: Optional[CheckPoints] = None,
    wanted_cm: Optional[float] = None,
    limits: CoverageOptions = CoverageOptions(),  # noqa: B008  frozen
    repeat_sigma: Optional[float] = None,
    unit: LengthUnit = LengthUnit.METRE,
    progress: Progress = silent,
    constraints: Constraints = Constraints(),  # noqa: B008  frozen
    found: Sequence[GroundLine] = (),
) -> Judgement:
    """Judge the surface ``tin`` made from ``points``, which has their indices as sources.

    ``check``: what the automatic checks said of them. ``checks``: independent check points; where None the survey's own
    check shots, if it has any, for an internal check. ``wanted_cm``: vertical class to be met. ``repeat_sigma``:
    standard deviation of one height from repeats, m. ``unit``: of the contour interval. ``constraints``: the lines of
    the surface; ``found``: the lines that the points show. Raises SurveyError for limits out of range and for
    independent check points of which none is on the surface.
    """
    covered = coverage(tin, points, limits, progress, constraints, found)
    claims = state_claims(points, check, checks)
    if claims.against:
        return Judgement(covered, None, None, claims)
    accuracy = _accuracy(tin, points, checks, wanted_cm)
    tested = accuracy is not None and accuracy.comparison.checks.independent and accuracy.non_vegetated is not None
    interval = supported_interval(
        covered.across,
        ground_curvature(points, covered.across),
        checked_rmse=accuracy.rmse_v if tested and accuracy is not None else None,
        repeat_sigma=repeat_sigma,
        claimed=claimed_sigma(points),
        unit=unit,
    )
    return Judgement(covered, interval, accuracy, claims)


def _accuracy(
    tin: Tin, points: PointSet, checks: Optional[CheckPoints], wanted_cm: Optional[float]
) -> Optional[AccuracyStatement]:
    if checks is not None:
        return accuracy_statement(tin, checks, wanted_cm=wanted_cm, pairs=pair_by_name(points, checks))
    try:
        own = check_shots(points)
    except SurveyError as error:
        if error.code != NO_CHECK_SHOTS.code:
            raise
        return None
    try:
        return accuracy_statement(tin, own, wanted_cm=wanted_cm)
    except SurveyError:  # shots beside the surface: on a survey mark, say
        return None
