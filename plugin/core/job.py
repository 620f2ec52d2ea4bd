"""The main job: from a survey file to surface, contours, mesh and report."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Callable, List, NamedTuple, Optional, Tuple

import numpy as np

from .contours.geojson import write_geojson
from .contours.lines import ContourOptions
from .contours.sheet import SheetOptions, draw_sheet
from .contours.sheet_geojson import write_labels, write_spots
from .contours.trace import trace_contours
from .georeference.area import check_area
from .georeference.control import read_control
from .georeference.crs import height_unit, plan_unit, read_crs, source_crs
from .georeference.intake import Intake, IntakeOptions, parse_separation, take_in
from .georeference.record import Georeference
from .georeference.residuals import write_residuals
from .georeference.site import (
    ControlOptions,
    Fitted,
    GroundOptions,
    GroundWay,
    between_ground_and_grid,
    fit_to_control,
)
from .handover.grid import large_grid, write_asc
from .handover.mesh import write_2dm
from .handover.projection import write_prj
from .handover.tables import write_findings
from .linework.codes import CodeTable, default_code_table, read_code_table
from .linework.constraints import Constraints
from .linework.join import Linework, join_lines
from .messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text
from .points.columns import parse_columns
from .points.decisions import apply_decisions, read_decisions
from .points.geographic import HeightKind
from .points.merge_table import write_clashes, write_differences
from .points.pointset import PointSet
from .points.table import write_points, write_rejects
from .progress import Progress, part, silent
from .quality.check import SurveyCheck, check_survey
from .quality.check_points import CheckPoints, read_check_points
from .quality.coverage import CoverageOptions, write_places
from .quality.judgement import judge
from .quality.overrides import OverrideReport, with_overrides
from .quality.tolerances import TOPOGRAPHIC, ToleranceSet
from .report.html import write_report
from .report.results import JobResult
from .surface.build import Surface, SurfaceOptions
from .surface.edited import EditReport, build_surface_with_edits
from .surface.edits import Edit, read_edits
from .surface.inspection import inspect_surface
from .surface.raster import grid_for
from .surface.thin import thin_surface
from .units import LengthUnit

NO_CRS = Text(
    "job.no_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local "
        "for a local grid in metres.",
    ),
)
CANNOT_MAKE_FOLDER = Text(
    "job.cannot_make_folder",
    QT_TRANSLATE_NOOP("core", "{file}: the folder cannot be made ({reason}); choose another one for --out."),
)


@dataclass(frozen=True)
class JobSettings:
    """What the user asks for.

    ``survey``: the file. ``out``: folder of the results, made if missing. ``crs``: an authority code, WKT or
    the like, ``"local"`` for a local grid, None where the user said nothing (an error). ``columns``,
    ``delimiter``, ``decimal``, ``encoding``: as the reader takes them, None to find out.
    ``unit``: of the file, that of the CRS where None; ``height_unit``: of its heights, where None the same as
    ``unit`` if that is given, else that of the CRS. ``decisions``: file of decisions by hand. ``codes``: code
    table, the one shipped where None; ``use_codes`` False reads no field codes. ``surface``: rim and crossings.
    ``edits``: file of edits of the surface by hand. ``sheet``: how to finish contours for a sheet; ``dem``: cell of
    a grid of heights, metres; ``thin``: vertical tolerance of a thinned surface, metres; None makes none.

    What the survey is worth: ``check``: find and reject blunders before the surface is built, single points held to
    ``tolerances``. ``check_points``: file of independent check points in ``crs``; ``accuracy_class``:
    vertical class to be met, cm RMSE. ``max_gap``: no place should be farther from a measured point, metres, None for
    what the passes make usual.

    Where the survey lies: ``more``: further files of the site, merged with it. ``source_crs``: the CRS of the
    coordinates in the files, where it is not ``crs``; WGS 84 for degrees where None. ``heights_are``, ``heights``,
    ``accept``, ``correct``: see :class:`.georeference.intake.IntakeOptions`; ``geoid``: metres, or a file with a grid.
    ``control``: file of control points in ``crs``, to which the survey, then in local coordinates, is fitted as
    ``fit`` says. ``ground``: to or from distances on the ground.
    """

    survey: Path
    out: Path
    contours: ContourOptions
    crs: Optional[str] = None
    columns: Optional[str] = None
    delimiter: Optional[str] = None
    decimal: Optional[str] = None
    encoding: Optional[str] = None
    unit: Optional[LengthUnit] = None
    height_unit: Optional[LengthUnit] = None
    decisions: Optional[Path] = None
    codes: Optional[Path] = None
    use_codes: bool = True
    surface: SurfaceOptions = SurfaceOptions()  # noqa: RUF009  frozen
    edits: Optional[Path] = None
    sheet: Optional[SheetOptions] = None
    dem: Optional[float] = None
    thin: Optional[float] = None
    source_crs: Optional[str] = None
    heights: Optional[HeightKind] = None
    accept: Tuple[str, ...] = ()
    more: Tuple[Path, ...] = ()
    heights_are: Optional[HeightKind] = None
    geoid: Optional[str] = None
    correct: str = ""
    control: Optional[Path] = None
    fit: ControlOptions = ControlOptions()  # noqa: RUF009  frozen
    ground: Optional[GroundOptions] = None
    check: bool = True
    tolerances: ToleranceSet = TOPOGRAPHIC
    check_points: Optional[Path] = None
    accuracy_class: Optional[float] = None
    max_gap: Optional[float] = None


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
    placed = _read(settings, part(progress, 0.0, 0.15))
    checks = _check_points(settings, placed.points.crs)
    check = _check(placed.points, settings, _as("check", part(progress, 0.15, 0.3)))
    points, remarks, overrides = _decide(placed.points if check is None else check.points, check, settings)
    linework = _join(points, settings)
    points = points if linework is None else linework.points
    surface, edited = _build(points, linework, edits, settings, part(progress, 0.3, 0.65))
    progress(0.65, "quality")
    quality = judge(
        surface.tin,
        edited.points,
        checks=checks,
        wanted_cm=settings.accuracy_class,
        limits=CoverageOptions(max_radius=settings.max_gap),
        repeat_sigma=None if check is None or check.noise is None else check.noise.total,
        unit=settings.contours.unit,
    )
    contours = trace_contours(surface.tin, settings.contours, part(progress, 0.7, 0.75))
    result = JobResult(
        survey=placed.intake.survey,
        sources=placed.intake.files,
        merged=placed.intake.merged,
        georeference=placed.records,
        fitted=placed.fitted,
        place_messages=placed.messages,
        points=points,
        linework=linework,
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
    )
    return _finish(result, settings, part(progress, 0.75, 1.0))


def _check_points(settings: JobSettings, crs: Optional[Any]) -> Optional[CheckPoints]:
    """The independent check points, in ``crs``; on a local grid in the unit of the survey."""
    if settings.check_points is None:
        return None
    if crs is not None:
        return read_check_points(settings.check_points, crs=crs)
    unit = settings.unit or LengthUnit.METRE
    return read_check_points(settings.check_points, unit=unit, height_unit=settings.height_unit or unit)


def _build(
    points: PointSet,
    linework: Optional[Linework],
    edits: Tuple[Edit, ...],
    settings: JobSettings,
    progress: Progress,
) -> Tuple[Surface, EditReport]:
    progress(0.0, "surface")
    constraints = Constraints() if linework is None else linework.constraints
    return build_surface_with_edits(points, constraints, settings.surface, edits, progress)


def _finish(result: JobResult, settings: JobSettings, progress: Progress) -> JobResult:
    """What is made from the ready surface beside its contours."""
    tin, edited = result.surface.tin, result.edited
    dem = None if settings.dem is None else grid_for(tin, settings.dem)
    progress(0.0, "findings")
    findings = inspect_surface(tin, edited.points, edited.constraints, progress=_as("findings", part(progress, 0, 0.3)))
    sheet = None
    if settings.sheet is not None:
        sheet = draw_sheet(tin, settings.contours, settings.sheet, _as("sheet", part(progress, 0.3, 0.6)))
    thinned = None if settings.thin is None else thin_surface(tin, settings.thin, part(progress, 0.6, 1.0))
    return replace(
        result,
        findings=findings,
        sheet=sheet,
        thinned=thinned,
        dem=dem,
        file_messages=() if dem is None else large_grid(dem),
    )


def _as(stage: str, progress: Progress) -> Progress:
    """``progress`` told under the name of one ``stage``."""
    return lambda fraction, _: progress(fraction, stage)


class _Placed(NamedTuple):
    """The survey as read, its points where they belong, all that was done to get them there, and what to say."""

    intake: Intake
    points: PointSet
    records: Tuple[Georeference, ...]
    fitted: Optional[Fitted]
    messages: Tuple[Message, ...]


def _read(settings: JobSettings, progress: Progress) -> _Placed:
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
    return _Placed(intake, points, records, fitted, messages)


def _ground(points: PointSet, settings: JobSettings, ground: GroundOptions, crs: Optional[Any]) -> GroundOptions:
    """``ground`` with the geoid separation that makes ellipsoidal heights of those of the points."""
    if settings.geoid is None or settings.heights is HeightKind.ELLIPSOIDAL or crs is None:
        return ground
    east, north = points.easting, points.northing
    if ground.way is GroundWay.TO_GRID:
        east, north = east - ground.shift[0], north - ground.shift[1]
    values = parse_separation(settings.geoid).at(replace(points, easting=east, northing=north, crs=crs))
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


def _check(points: PointSet, settings: JobSettings, progress: Progress) -> Optional[SurveyCheck]:
    """The automatic checks, None where they are switched off."""
    if not settings.check:
        return None
    progress(0.0, "check")
    return check_survey(points, _code_table(settings), settings.tolerances, progress=progress)


def _decide(
    points: PointSet, check: Optional[SurveyCheck], settings: JobSettings
) -> Tuple[PointSet, Tuple[Message, ...], Optional[OverrideReport]]:
    """Decisions by hand on points; where they were checked, what the hand overrules is reported."""
    if settings.decisions is None:
        return points, (), None
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
    return None if table is None else join_lines(points, table)


def write_files(
    result: JobResult,
    folder: Path,
    progress: Progress = silent,
    translate: Callable[[str], str] = str,
    language: str = "en",
) -> JobResult:
    """Write all files of ``result`` into ``folder``; the result with their paths."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise SurveyError(CANNOT_MAKE_FOLDER, file=str(folder), reason=error.strerror or str(error)) from error
    progress(0.0, "files")
    written = _write_contours(result, folder)
    progress(0.1, "files")
    written += _write_surfaces(result, folder, part(progress, 0.1, 0.6))
    written += [folder / "points.csv", folder / "rejects.csv", folder / "findings.csv"]
    write_points(result.points, folder / "points.csv")
    write_rejects(result.survey.rejects, folder / "rejects.csv", translate)
    write_findings(result.findings, result.crs, folder / "findings.csv", translate)
    if len(result.quality.coverage.walk_again):
        written.append(folder / "places_to_walk.csv")
        write_places(result.quality.coverage.walk_again, written[-1])
    written += _write_place(result, folder)
    progress(0.7, "report")
    report = folder / "report.html"
    result = replace(result, files=tuple(written))
    write_report(result, report, translate, language)
    progress(1.0, "report")
    return replace(result, files=(*written, report))


def _write_place(result: JobResult, folder: Path) -> List[Path]:
    """What merging and the fit to control have to say in tables, where there is something."""
    written = []
    if result.fitted is not None:
        written.append(folder / "residuals.csv")
        write_residuals(result.fitted, written[-1])
    merged = result.merged
    if merged is not None and merged.clashes:
        written.append(folder / "names_twice.csv")
        write_clashes(merged, written[-1])
    if merged is not None and len(merged.height_differences):
        written.append(folder / "heights_differ.csv")
        write_differences(merged, written[-1])
    return written


def _write_contours(result: JobResult, folder: Path) -> List[Path]:
    written = [folder / "contours.geojson"]
    write_geojson(result.contours, written[0])
    sheet = result.sheet
    if sheet is not None:
        lines, labels, spots = (folder / f"{name}.geojson" for name in ("contours_sheet", "labels", "spots"))
        write_geojson(sheet.contours, lines)
        write_labels(sheet.labels, sheet.contours, labels)
        write_spots(sheet.spots, result.shown_height_unit, result.crs, spots)
        written += [lines, labels, spots]
    return written


def _write_surfaces(result: JobResult, folder: Path, progress: Progress) -> List[Path]:
    """Meshes and grid, each with its ``.prj`` where there is a CRS."""
    tin, written = result.surface.tin, [folder / "surface.2dm"]
    write_2dm(tin, written[0])
    if result.thinned is not None:
        written.append(folder / "surface_thin.2dm")
        write_2dm(result.thinned.tin, written[-1])
    if result.dem is not None:
        written.append(folder / "dem.asc")
        write_asc(tin, result.dem, written[-1], _as("files", progress))
    projections = [write_prj(path, result.crs) for path in written]
    both = zip(written, projections)
    return [path for pair in both for path in pair if path is not None]
