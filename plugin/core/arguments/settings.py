"""What the options of the command line ask of the main job."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any, Dict, Optional, Tuple

from ..contours.lines import ContourOptions
from ..contours.sheet import SheetOptions
from ..earthwork.materials import EarthFactors
from ..earthwork.side_slopes import Corner, SideSlopes
from ..georeference.crs import metres_per_unit, read_crs
from ..georeference.level_shift import parse_level_shifts
from ..georeference.similarity import HeightFit
from ..georeference.site import ControlOptions, GroundOptions, GroundWay, parse_place
from ..job.exchange import ExchangeQuestion
from ..job.grading import GradingQuestion
from ..job.settings import JobSettings, Question
from ..linework.convention import FieldConvention, four_words
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.geographic import HeightKind
from ..points.given import parse_length, parse_no_value
from ..points.said_units import AngleForm
from ..quality.tolerances import SHIPPED, ToleranceSet, find_tolerances, read_tolerances
from ..surface.build import SurfaceOptions
from ..surface.crossings import CrossingRule
from ..units import LengthUnit
from . import road, volumes, water
from .parser import PAD_RUN, SHEET_SCALE
from .units import units_asked

NEEDS_SMOOTH = Text(
    "job.needs_smooth",
    QT_TRANSLATE_NOOP(
        "core", "{option} is for the sheet, which is made with --smooth; give that too, 0 to smooth nothing."
    ),
)
NEEDS_PAD = Text(
    "job.needs_pad", QT_TRANSLATE_NOOP("core", "{option} is for grading; give the polygon with --pad too.")
)


def job_settings(options: argparse.Namespace) -> JobSettings:
    """The settings of the job; raises SurveyError where options do not fit together."""

    if options.smooth is None:
        for name in ("calm", "scale"):
            if getattr(options, name) is not None:
                raise SurveyError(NEEDS_SMOOTH, option=f"--{name}")
        sheet = None
    else:
        sheet = SheetOptions(options.smooth, options.calm, options.scale or SHEET_SCALE)
    unit = units_asked(options).height
    return JobSettings(
        survey=options.survey[0], out=options.out, crs=options.crs, columns=options.columns,
        contours=ContourOptions(options.interval, options.base, unit, options.index_every),
        delimiter=options.delimiter, decimal=options.decimal, encoding=options.encoding,
        unit=LengthUnit(options.unit) if options.unit else None,
        height_unit=LengthUnit(options.height_unit) if options.height_unit else None,
        comment=options.comment, layer=options.layer,
        angles=AngleForm(options.angles) if options.angles else None,
        no_value=None if options.no_value is None else parse_no_value(options.no_value),
        pole_height=_length(options.pole_height, "--pole-height", 0.0),
        antenna_offset=_length(options.antenna_offset, "--antenna-offset", -1.0),
        heights_of=options.heights_of or "", units_from=options.units_from or "",
        decisions=options.decisions, codes=options.codes, use_codes=not options.no_codes,
        convention=_convention(options),
        surface=SurfaceOptions(
            options.rim_edge, options.rim_radius, options.rim_angle, CrossingRule(options.crossings),
            options.crossing_tolerance, options.rim_passes,
        ),
        edits=options.edits, breaklines=options.breaklines, soft_lines=options.soft_lines, boundary=options.boundary,
        voids=options.voids, sheet=sheet, dem=options.dem, thin=options.thin, source_crs=options.source_crs,
        heights=HeightKind(options.heights) if options.heights else None, accept=tuple(options.accept),
        more=tuple(options.survey[1:]), correct=options.correct.strip(),
        level_shifts=parse_level_shifts(options.shift_heights), geoid=options.geoid, control=options.control,
        heights_are=HeightKind(options.heights_are) if options.heights_are else None,
        fit=ControlOptions(
            options.control_fit == "space", options.control_fit == "shift", HeightFit(options.control_heights),
            leave_out=tuple(options.leave_out), reading=options.control_as,
        ),
        base_was=options.base_was, base_is=options.base_is, near=tuple(options.near),
        ground=_ground(options), check_points=options.check_points, accuracy_class=options.accuracy_class,
        max_gap=options.max_gap, check=not options.no_check, tolerances=_tolerances(options),
        find_lines=options.found_lines != "no",
        found_lines=None if options.found_lines in (None, "no") else Path(options.found_lines),
        tilt_compensated={"yes": True, "no": False}.get(options.tilt_compensated), keep_flagged=options.keep_flagged,
        questions=(*_questions(options), *_exchange(options)),
    )  # fmt: skip


def _length(text: Optional[str], option: str, least: float) -> Optional[float]:
    return None if text is None else parse_length(text, option, least)


def _questions(options: argparse.Namespace) -> Tuple[Question, ...]:
    """What is asked of the finished surface; raises SurveyError for options of a question that is not asked."""
    asked = (water.question(options), road.question(options))
    return (*(one for one in asked if one is not None), *_grading(options), *volumes.questions(options))


def _grading(options: argparse.Namespace) -> Tuple[Question, ...]:
    """Pads to be graded."""
    if options.pad is None:
        for name in ("pad_level", "pad_fall", "pad_towards", "cut_slope", "fill_slope", "corners", "surplus"):
            if getattr(options, name) is not None:
                raise SurveyError(NEEDS_PAD, option="--" + name.replace("_", "-"))
        return ()
    unit, level = units_asked(options).height, options.pad_level
    return (
        GradingQuestion(
            options.pad,
            level=None if level in (None, "balance") else level * unit.metres,
            balance=level == "balance",
            fall=options.pad_fall or 0.0,
            towards=options.pad_towards or 0.0,
            slopes=SideSlopes(
                options.cut_slope or PAD_RUN, options.fill_slope or PAD_RUN, Corner(options.corners or "round")
            ),
            factors=EarthFactors(compacted=options.earth_factor or 1.0),
            surplus=options.surplus or 0.0,
            unit=unit,
        ),
    )


def _convention(options: argparse.Namespace) -> FieldConvention:
    """How the field writes codes; the usual way where nothing is said."""
    said: Dict[str, Any] = {
        "separator": None if options.code_separator is None else options.code_separator.strip(),
        "pattern": options.code_pattern,
        "line_column": options.line_column,
        "word_column": options.word_column,
        "arc_tolerance": options.arc_tolerance,
    }
    if options.code_words is not None:
        said.update(four_words(options.code_words))
    return FieldConvention(**{name: value for name, value in said.items() if value is not None})


def _exchange(options: argparse.Namespace) -> Tuple[Question, ...]:
    """Files for other programs."""
    asked = options.landxml or options.dxf
    return (ExchangeQuestion(options.landxml, options.dxf),) if asked else ()


def _ground(options: argparse.Namespace) -> Optional[GroundOptions]:
    """Ground and grid as the options ask for them; lengths there are in the unit of the CRS."""

    if not (options.ground_to_grid or options.grid_to_ground):
        return None
    metres = metres_per_unit(read_crs(options.crs)) if options.crs else 1.0
    east, north = parse_place(options.ground_shift, "--ground-shift")
    origin = None
    if options.ground_origin is not None:
        origin = parse_place(options.ground_origin, "--ground-origin")
        origin = (origin[0] * metres, origin[1] * metres)
    return GroundOptions(
        GroundWay.TO_GRID if options.ground_to_grid else GroundWay.TO_GROUND, origin, options.ground_factor,
        shift=(east * metres, north * metres),
    )  # fmt: skip


def _tolerances(options: argparse.Namespace) -> Optional[ToleranceSet]:
    """The set by its name: of the file given, or of those shipped; None where none was chosen."""

    if options.tolerances is None:
        return None if options.check is None else find_tolerances(SHIPPED, options.check or SHIPPED[0].name, "--check")
    sets = read_tolerances(options.tolerances)
    return find_tolerances(sets, options.check or "", str(options.tolerances))
