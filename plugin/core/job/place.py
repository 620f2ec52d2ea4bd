"""The survey read and brought to where it belongs."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, NamedTuple, Optional, Tuple

import numpy as np

from ..georeference.area import check_area
from ..georeference.base_shift import correct_base, parse_base, shift_to_control
from ..georeference.control_file import read_control
from ..georeference.crs import height_unit, plan_unit, read_crs, source_crs
from ..georeference.crs_doubt import doubts
from ..georeference.fit_readings import AS_READ
from ..georeference.intake import WHERE, Intake, take_in
from ..georeference.intake_options import IntakeOptions, parse_separation
from ..georeference.position import place_said
from ..georeference.record import Georeference
from ..georeference.site import (
    Fitted,
    GroundOptions,
    GroundWay,
    between_ground_and_grid,
    fit_to_control,
)
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.columns import parse_columns
from ..points.geographic import HeightKind
from ..points.pointset import PointSet
from ..progress import Progress
from ..units import LengthUnit
from .landmarks import landmarks_of
from .settings import JobSettings

CONTROL_OR_BASE = Text(
    "job.control_or_base",
    QT_TRANSLATE_NOOP("core", "A survey is shifted by --base-was and --base-is, or by --control; give one of them."),
)


class Placed(NamedTuple):
    """The survey as read, its points where they belong, all that was done to get them there, what to say, and where it
    lies in words."""

    intake: Intake
    points: PointSet
    records: Tuple[Georeference, ...]
    fitted: Optional[Fitted]
    messages: Tuple[Message, ...]
    where: Message


def place_survey(settings: JobSettings, progress: Progress) -> Placed:
    """Read the files of the survey and bring their points into the CRS asked for; raises SurveyError."""
    crs = read_crs(settings.crs)
    progress(0.0, "points")
    base = parse_base(settings.base_was, settings.base_is, crs, _sure(settings))
    if base is not None and settings.control is not None:
        raise SurveyError(CONTROL_OR_BASE)
    landmarks = landmarks_of(settings, crs)
    options = replace(_intake_options(settings, crs), landmarks=landmarks)
    intake = take_in((settings.survey, *settings.more), options, progress)
    points, records, fitted = intake.survey.points, intake.records, None
    messages = intake.messages
    if base is not None:
        shifted = correct_base(points, base, landmarks)
        points, records = shifted.points, (*records, shifted.record)
    if settings.control is not None:
        control = read_control(settings.control, None, crs, settings.fit.reading)
        if settings.fit.shift:
            moved = shift_to_control(points, control, settings.fit.leave_out, _sure(settings), landmarks)
            points, records = moved.points, (*records, moved.record)
        else:
            fitted = fit_to_control(points, settings.fit, crs, control, _units(intake), landmarks)
            points, records = fitted.points, (*records, fitted.record)
            messages += fitted.doubts
    if settings.ground is not None:
        changed = between_ground_and_grid(points, _ground(points, settings, settings.ground, crs), crs)
        points, records = changed.points, (*records, changed.record)
    where = intake.where
    if _is_local(settings) and points.crs is not None:
        used = points.select(points.used)
        area = check_area(points).messages
        # Where survey and control are of two systems, the other causes are none.
        messages += area[:1] if fitted is not None and fitted.doubts else area
        messages += doubts(crs, used.easting, used.northing, landmarks)
        where = message(WHERE, place=place_said(crs, used.easting, used.northing, landmarks))
    return Placed(intake, points, records, fitted, messages, where)


def _sure(settings: JobSettings) -> bool:
    return settings.fit.reading.strip() == AS_READ


def _units(intake: Intake) -> Tuple[LengthUnit, LengthUnit]:
    """In which plan and heights of the first file were read."""
    shape = intake.survey.format
    return shape.unit, shape.height_unit


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
    fitted = settings.control is not None and not settings.fit.shift
    return fitted or (settings.ground is not None and settings.ground.way is GroundWay.TO_GRID)


def _intake_options(settings: JobSettings, crs: Optional[Any]) -> IntakeOptions:
    local = crs is None or _is_local(settings)
    # For ground and grid a geoid separation serves the height factor; it changes heights only when these are asked for.
    geoid = None if settings.ground is not None and settings.heights is None else settings.geoid
    unit, rise = settings.unit, settings.height_unit
    if local and settings.ground is not None and settings.control is None:
        unit, rise = unit or plan_unit(crs), rise or height_unit(crs)
    return IntakeOptions(
        crs=None if local else crs,
        source_crs=source_crs(settings.source_crs),
        columns=None if settings.columns is None else parse_columns(settings.columns),
        delimiter=settings.delimiter,
        decimal=settings.decimal,
        encoding=settings.encoding,
        unit=unit,
        height_unit=rise,
        comment=settings.comment,
        layer=settings.layer,
        angles=settings.angles,
        no_value=settings.no_value,
        pole_height=settings.pole_height,
        antenna_offset=settings.antenna_offset,
        heights_of=settings.heights_of,
        units_from=settings.units_from,
        heights_are=settings.heights_are,
        heights=settings.heights,
        separation=None if geoid is None else parse_separation(geoid),
        accept=settings.accept,
        correct=settings.correct,
        level_shifts=settings.level_shifts,
    )
