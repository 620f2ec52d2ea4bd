"""The main job: from a survey file to surface, contours, mesh and report."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Callable, Optional, Tuple

from ..contours.sheet import draw_sheet
from ..contours.trace import trace_contours
from ..features.ground_lines import GroundLines
from ..handover.grid import large_grid
from ..linework.codes import CodeTable, default_code_table, read_code_table
from ..linework.constraints import Constraints
from ..linework.drawn import merge_constraints
from ..linework.join import Linework, join_lines
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text
from ..points.decisions import apply_decisions, read_decisions
from ..points.pointset import PointSet
from ..progress import Progress, named, part, silent
from ..quality.check import SurveyCheck, check_survey
from ..quality.check_points import CheckPoints, read_check_points
from ..quality.coverage import CoverageOptions
from ..quality.judgement import judge
from ..quality.overrides import NO_DECISIONS, OverrideReport, with_overrides
from ..report.results import JobResult
from ..surface.edited import build_surface_with_edits
from ..surface.edits import read_edits
from ..surface.inspection import inspect_surface
from ..surface.raster import grid_for
from ..surface.thin import thin_surface
from ..units import LengthUnit
from .lines import look_for_lines
from .place import place_survey
from .settings import JobSettings
from .write import write_files

NO_CRS = Text(
    "job.no_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local "
        "for a local grid in metres.",
    ),
)


def run_job(
    settings: JobSettings, progress: Progress = silent, translate: Callable[[str], str] = str, language: str = "en"
) -> JobResult:
    """Compute everything and write the files; the result names them in ``files``.

    Each file appears only when it is whole. Raises SurveyError for input or settings the user must mend, and
    whatever ``progress`` raises to stop the work.
    """
    result = compute(settings, part(progress, 0.0, 0.8))
    return write_files(result, settings.out, part(progress, 0.8, 1.0), translate, language)


def compute(settings: JobSettings, progress: Progress = silent) -> JobResult:
    """All results of ``settings``, nothing written."""
    if not (settings.crs or "").strip():
        raise SurveyError(NO_CRS, file=str(settings.survey))
    edits = () if settings.edits is None else read_edits(settings.edits)
    placed = place_survey(settings, part(progress, 0.0, 0.15))
    checks = _check_points(settings, placed.points.crs)
    check = _check(placed.points, settings, named("check", part(progress, 0.15, 0.3)))
    points, remarks, overrides = _decide(placed.points if check is None else check.points, check, settings)
    linework = _join(points, settings)
    points = points if linework is None else linework.points
    points, found = look_for_lines(points, linework, edits, settings, part(progress, 0.3, 0.35))
    constraints = _constraints(linework, found)
    progress(0.35, "surface")
    surface, edited = build_surface_with_edits(points, constraints, settings.surface, edits, part(progress, 0.35, 0.65))
    progress(0.65, "quality")
    quality = judge(
        surface.tin,
        edited.points,
        check=check,
        checks=checks,
        wanted_cm=settings.accuracy_class,
        limits=CoverageOptions(max_radius=settings.max_gap),
        repeat_sigma=None if check is None or check.noise is None else check.noise.total,
        unit=settings.contours.unit,
        progress=part(progress, 0.65, 0.7),
        constraints=edited.constraints,
        found=() if found is None else found.lines,
    )
    contours = trace_contours(surface.tin, settings.contours, part(progress, 0.7, 0.75))
    result = JobResult(
        survey=placed.intake.survey,
        sources=placed.intake.files,
        merged=placed.intake.merged,
        georeference=placed.records,
        fitted=placed.fitted,
        aside=placed.intake.aside,
        place_messages=placed.messages,
        where=placed.where,
        accept=settings.accept,
        points=points,
        linework=linework,
        ground_lines=found,
        surface=surface,
        contours=contours,
        decisions_file="" if settings.decisions is None else str(settings.decisions),
        messages=remarks,
        edits=edits,
        edits_file="" if settings.edits is None else str(settings.edits),
        edited=edited,
        options=settings.surface,
        quality=quality,
        check=check,
        overrides=overrides,
        others=settings.others,
    )
    result = _finish(result, settings, part(progress, 0.75, 0.85))
    return _answer(result, settings, part(progress, 0.85, 1.0))


def _check_points(settings: JobSettings, crs: Optional[Any]) -> Optional[CheckPoints]:
    """The independent check points, in ``crs``; on a local grid in the unit of the survey."""
    if settings.check_points is None:
        return None
    if crs is not None:
        return read_check_points(settings.check_points, crs=crs)
    unit = settings.unit or LengthUnit.METRE
    return read_check_points(settings.check_points, unit=unit, height_unit=settings.height_unit or unit)


def _constraints(linework: Optional[Linework], found: Optional[GroundLines]) -> Constraints:
    """The lines of the field codes, which go first, and those that the points show."""
    coded = Constraints() if linework is None else linework.constraints
    return coded if found is None else merge_constraints(coded, found.breaklines)


def _finish(result: JobResult, settings: JobSettings, progress: Progress) -> JobResult:
    """What is made from the ready surface beside its contours."""
    tin, edited = result.surface.tin, result.edited
    dem = None if settings.dem is None else grid_for(tin, settings.dem)
    progress(0.0, "findings")
    findings = inspect_surface(
        tin, edited.points, edited.constraints, progress=named("findings", part(progress, 0, 0.3))
    )
    sheet = None
    if settings.sheet is not None:
        sheet = draw_sheet(tin, settings.contours, settings.sheet, named("sheet", part(progress, 0.3, 0.6)))
    thinned = None if settings.thin is None else thin_surface(tin, settings.thin, part(progress, 0.6, 1.0))
    return replace(
        result,
        findings=findings,
        sheet=sheet,
        thinned=thinned,
        dem=dem,
        file_messages=() if dem is None else large_grid(dem),
    )


def _answer(result: JobResult, settings: JobSettings, progress: Progress) -> JobResult:
    """``result`` with an answer to each question, in their order."""
    count = len(settings.questions)
    for i, question in enumerate(settings.questions):
        progress(i / count, question.stage)
        answer = question.answer(result, named(question.stage, part(progress, i / count, (i + 1) / count)))
        result = replace(result, answers=(*result.answers, answer))
    return result


def _check(points: PointSet, settings: JobSettings, progress: Progress) -> Optional[SurveyCheck]:
    """The automatic checks, None where they are switched off."""
    if not settings.check:
        return None
    progress(0.0, "check")
    return check_survey(
        points,
        _code_table(settings),
        settings.tolerances,
        convention=settings.convention,
        progress=progress,
        tilt_compensated=settings.tilt_compensated,
        keep_flagged=settings.keep_flagged,
    )


def _decide(
    points: PointSet, check: Optional[SurveyCheck], settings: JobSettings
) -> Tuple[PointSet, Tuple[Message, ...], Optional[OverrideReport]]:
    """Decisions by hand on points; where they were checked, both words are kept and what the hand overrules is told."""
    if settings.decisions is None:
        return (points if check is None else with_overrides(points, NO_DECISIONS)[0]), (), None
    decisions = read_decisions(settings.decisions)
    if check is None:
        decided, missed = apply_decisions(points, decisions)
        return decided, missed, None
    decided, overrides = with_overrides(points, decisions)
    return decided, overrides.messages, overrides


def _code_table(settings: JobSettings) -> Optional[CodeTable]:
    if not settings.use_codes:
        return None
    return default_code_table() if settings.codes is None else read_code_table(settings.codes)


def _join(points: PointSet, settings: JobSettings) -> Optional[Linework]:
    table = _code_table(settings)
    return None if table is None else join_lines(points, table, settings.convention)
