"""What is done to the whole survey once it is read: fitted to control, or moved between ground and grid."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import Any, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from ..units import LengthUnit
from .control import ControlMatch, ControlPoints, match_control
from .control_crs import two_systems
from .control_fit import apply_control_fit, fit_plan, fit_space
from .fit_judgement import FitJudgement, judge_fit
from .fit_measure import USUAL_HEIGHT, USUAL_PLAN, Terms, expected_scale, places_of
from .fit_question import READ_SO, judged_said, question
from .fit_readings import FitReading, Unit, parse_reading
from .ground_grid import GroundGrid, grid_to_ground, ground_to_grid, site_ground_grid
from .position import Landmark, place_said
from .record import Georeference
from .similarity import ControlFit, HeightFit

NO_CRS = Text(
    "site.no_crs",
    QT_TRANSLATE_NOOP("core", "Ground and grid need the CRS of the grid; give it as --crs, not a local grid."),
)
NO_ORIGIN = Text(
    "site.no_origin",
    QT_TRANSLATE_NOOP(
        "core",
        "Ground coordinates need the origin about which they were made; give its easting and northing as "
        "--ground-origin.",
    ),
)
BAD_ORIGIN = Text(
    "site.bad_origin",
    QT_TRANSLATE_NOOP("core", "{option} must be two numbers such as 500000,5700000, not '{value}'."),
)


class GroundWay(Enum):
    """Between which coordinates."""

    TO_GRID = "to-grid"
    TO_GROUND = "to-ground"


@dataclass(frozen=True)
class ControlOptions:
    """A fit to control. ``seven``: in space, with seven parameters, else four in plan and ``heights``. ``shift``: no
    fit, the survey is in the CRS of the control already and is shifted as a whole (:mod:`.base_shift`).
    ``sigma_plan``, ``sigma_height``: metres, None where not known. ``leave_out``: names of control points that are
    not used. ``reading``: how the user says that survey and control are to be read, see
    :func:`.fit_readings.parse_reading`; "" to have the fit judged as they were read, and refused where it does not
    fit.
    """

    seven: bool = False
    shift: bool = False
    heights: HeightFit = HeightFit.SHIFT
    sigma_plan: Optional[float] = None
    sigma_height: Optional[float] = None
    leave_out: Tuple[str, ...] = ()
    reading: str = ""


@dataclass(frozen=True)
class GroundOptions:
    """Between ground and grid. ``origin``, ``shift``: metres, see :class:`.ground_grid.GroundGrid`; ``origin`` None:
    the middle of the points, only to ground. ``factor``: combined factor, None to compute it at the origin from the
    projection, the mean height of the points and ``separation`` (geoid separation, metres), or from
    ``ellipsoidal_height`` (metres).
    """

    way: GroundWay
    origin: Optional[Tuple[float, float]] = None
    factor: Optional[float] = None
    separation: Optional[float] = None
    ellipsoidal_height: Optional[float] = None
    shift: Tuple[float, float] = (0.0, 0.0)


class Fitted(NamedTuple):
    """Points in the coordinates of the control, the record, the fit with what it was matched from, how it was judged,
    and what stands against the systems said."""

    points: PointSet
    record: Georeference
    fit: ControlFit
    match: ControlMatch
    judgement: Optional[FitJudgement] = None
    doubts: Tuple[Message, ...] = ()


def fit_to_control(
    points: PointSet, options: ControlOptions, crs: Optional[Any], control: ControlPoints,
    units: Tuple[LengthUnit, LengthUnit] = (LengthUnit.METRE, LengthUnit.METRE), landmarks: Sequence[Landmark] = (),
) -> Fitted:  # fmt: skip
    """``points`` of a local or assumed system in the coordinates of ``control``, whose CRS is ``crs``.

    ``units``: in which plan and heights of the survey were read. The fit is judged before it is used. Raises
    SurveyError as matching and fitting do, and QuestionError for a fit that does not fit, with the readings that do;
    the place of each is told with its distance to ``landmarks``.
    """
    wanted = parse_reading(options.reading)
    reading = wanted or FitReading()
    read = reading.of_points(points, *units)
    known = reading.of_control(control)
    match = match_control(read, known, dict(reading.names))
    if options.seven:
        fit = fit_space(match, options.sigma_plan, options.sigma_height, options.leave_out)
    else:
        fit = fit_plan(match, options.heights, options.sigma_plan, options.sigma_height, options.leave_out)
    places = places_of(match, known, fit.used)
    terms = _terms(
        options, crs, known, (reading.survey or units[0], reading.survey_heights or reading.survey or units[1])
    )
    judgement = judge_fit(places, terms, options.seven)
    if not judgement.good and wanted != FitReading():
        raise question(judgement, control.source or points.source, terms.scale, _placer(known, crs, landmarks), reading)
    said: Tuple[Message, ...] = judged_said(judgement, terms.scale)
    if reading != FitReading():
        said = (message(READ_SO, reading=reading.told), *said)
    done = apply_control_fit(read, fit, crs)
    record = replace(
        done.record,
        statements=(*said[: reading != FitReading()], *done.record.statements, *said[reading != FitReading() :]),
    )
    return Fitted(done.points, record, fit, match, judgement, two_systems(match, crs))


def _terms(options: ControlOptions, crs: Optional[Any], control: ControlPoints, units: Tuple[Unit, Unit]) -> Terms:
    middle = [float(np.nanmedian(values)) if np.isfinite(values).any() else 0.0
              for values in (control.easting, control.northing, control.height)]  # fmt: skip
    return Terms(
        expected_scale(crs, *middle), *units, control.metres, max(options.sigma_plan or 0.0, USUAL_PLAN),
        max(options.sigma_height or 0.0, USUAL_HEIGHT), HeightFit.PLANE if options.seven else options.heights, crs,
    )  # fmt: skip


def _placer(control: ControlPoints, crs: Optional[Any], landmarks: Sequence[Landmark]) -> Any:
    """Where the site is under a reading."""

    def place(reading: FitReading) -> Optional[Message]:
        read = reading.of_control(control)
        return None if crs is None else place_said(crs, read.easting, read.northing, landmarks)

    return place


class Grounded(NamedTuple):
    """Points on the other side, the record, and how ground and grid hang together."""

    points: PointSet
    record: Georeference
    ground_grid: GroundGrid


def between_ground_and_grid(points: PointSet, options: GroundOptions, crs: Optional[Any]) -> Grounded:
    """``points`` brought from ground to the grid of ``crs``, or from that grid to the ground.

    Raises SurveyError without a CRS, and for ground coordinates without an origin.
    """
    if crs is None:
        raise SurveyError(NO_CRS)
    to_grid = options.way is GroundWay.TO_GRID
    if to_grid and options.origin is None:
        raise SurveyError(NO_ORIGIN)
    how = site_ground_grid(
        replace(points, crs=crs), options.origin, options.ellipsoidal_height, options.separation, options.shift
    )
    if options.factor is not None:
        how = GroundGrid(
            crs, how.origin_easting, how.origin_northing, options.factor, how.shift_easting, how.shift_northing
        )
    change = ground_to_grid if to_grid else grid_to_ground
    done = change(points, how)
    return Grounded(done.points, done.record, how)


def parse_place(text: str, option: str) -> Tuple[float, float]:
    """Two numbers with a comma between them. Raises SurveyError that names ``option``."""
    try:
        first, second = (float(word) for word in text.split(","))
        if abs(first) < 1e12 and abs(second) < 1e12:
            return first, second
    except ValueError:
        pass
    raise SurveyError(BAD_ORIGIN, option=option, value=text)
