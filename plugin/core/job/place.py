"""The survey read and brought to where it belongs."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, NamedTuple, Optional, Tuple

import numpy as np

from ..georeference.area import check_area
from ..georeference.control import read_control
from ..georeference.crs import height_unit, plan_unit, read_crs, source_crs
from ..georeference.intake import Intake, IntakeOptions, parse_separation, take_in
from ..georeference.record import Georeference
from ..georeference.site import (
    Fitted,
    GroundOptions,
    GroundWay,
    between_ground_and_grid,
    fit_to_control,
)
from ..messages import Message
from ..points.columns import parse_columns
from ..points.geographic import HeightKind
from ..points.pointset import PointSet
from ..progress import Progress
from ..units import LengthUnit
from .settings import JobSettings


class Placed(NamedTuple):
    """The survey as read, its points where they belong, all that was done to get them there, and what to say."""

    intake: Intake
    points: PointSet
    records: Tuple[Georeference, ...]
    fitted: Optional[Fitted]
    messages: Tuple[Message, ...]


def place_survey(settings: JobSettings, progress: Progress) -> Placed:
    """Read the files of the survey and bring their points into the CRS asked for; raises SurveyError."""
    crs = read_crs(settings.crs)
    progress(0.0, "points")
    intake = take_in((settings.survey, *settings.more), _intake_options(settings, crs), progress)
    points, records, fitted = intake.survey.points, intake.records, None
    messages = intake.messages
    if settings.control is not None:
        fitted = fit_to_control(points, settings.fit, crs, read_control(settings.control, None, crs))
        points, records = fitted.points, (*records, fitted.record)
    if settings.ground is not None:
        changed = between_ground_and_grid(points, _ground(points, settings, settings.ground, crs), crs)
        points, records = changed.points, (*records, changed.record)
    if _is_local(settings) and points.crs is not None:
        messages += check_area(points).messages
    return Placed(intake, points, records, fitted, messages)


def _ground(points: PointSet, settings: JobSettings, ground: GroundOptions, crs: Optional[Any]) -> GroundOptions:
    """``ground`` with the geoid separation that makes ellipsoidal heights of those of the points."""
    if settings.geoid is None or settings.heights is HeightKind.ELLIPSOIDAL or crs is None:
        return ground
    east, north = points.easting, points.northing
    if ground.way is GroundWay.TO_GRID:
        east, north = east - ground.shift[0], north - ground.shift[1]
    moved = replace(points, easting=east, northing=north, crs=crs)
    values = parse_separation(settings.geoid).at(moved.select(moved.used))
    return replace(ground, separation=float(np.mean(values)))


def _is_local(settings: JobSettings) -> bool:
    """Whether the files hold coordinates that are not yet those of the CRS, and of no other one."""
    return settings.control is not None or (settings.ground is not None and settings.ground.way is GroundWay.TO_GRID)


def _intake_options(settings: JobSettings, crs: Optional[Any]) -> IntakeOptions:
    local = crs is None or _is_local(settings)
    # For ground and grid a geoid separation serves the height factor; it changes heights only when these are asked for.
    geoid = None if settings.ground is not None and settings.heights is None else settings.geoid
    unit, rise = settings.unit, settings.height_unit or settings.unit
    if local:
        on_ground = settings.ground is not None and settings.control is None
        unit, rise = unit or (plan_unit(crs) if on_ground else LengthUnit.METRE), rise
        rise = rise or (height_unit(crs) if on_ground else unit)
    return IntakeOptions(
        crs=None if local else crs,
        source_crs=source_crs(settings.source_crs),
        columns=None if settings.columns is None else parse_columns(settings.columns),
        delimiter=settings.delimiter,
        decimal=settings.decimal,
        encoding=settings.encoding,
        unit=unit,
        height_unit=rise,
        heights_are=settings.heights_are,
        heights=settings.heights,
        separation=None if geoid is None else parse_separation(geoid),
        accept=settings.accept,
        correct=settings.correct,
    )
