"""The main job: from a survey file to surface, contours, mesh and report."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Callable, Optional, Tuple

from .contours.geojson import write_geojson
from .contours.lines import ContourOptions
from .contours.trace import trace_contours
from .georeference.crs import geographic_crs, read_crs
from .georeference.place import place_survey
from .handover.mesh import write_2dm
from .handover.projection import write_prj
from .linework.codes import default_code_table, read_code_table
from .linework.constraints import Constraints
from .linework.join import Linework, join_lines
from .messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text
from .points.columns import parse_columns
from .points.decisions import apply_decisions, read_decisions
from .points.delimited import PointFile
from .points.geographic import HeightKind
from .points.pointset import PointSet
from .points.survey import read_survey
from .points.table import write_points, write_rejects
from .progress import Progress, part, silent
from .report.html import write_report
from .report.results import JobResult
from .surface.build import SurfaceOptions, build_surface
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
    table, the one shipped where None; ``use_codes`` False reads no field codes. ``max_rim_edge``: metres;
    triangles with a longer edge on the rim are taken off it; None for no limit. For a survey in degrees:
    ``source_crs``: its geographic CRS, WGS 84 where None; ``heights``: which heights to take from a receiver log;
    ``accept``: names of coordinate operations that the user takes though better ones are known.
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
    max_rim_edge: Optional[float] = None
    source_crs: Optional[str] = None
    heights: HeightKind = HeightKind.ORTHOMETRIC
    accept: Tuple[str, ...] = ()


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
    survey = _read(settings, part(progress, 0.0, 0.25))
    points, remarks = _decide(survey, settings)
    linework = _join(points, settings)
    progress(0.3, "surface")
    surface = build_surface(
        points if linework is None else linework.points,
        Constraints() if linework is None else linework.constraints,
        SurfaceOptions(max_rim_edge=settings.max_rim_edge),
        part(progress, 0.3, 0.85),
    )
    progress(0.85, "contours")
    contours = trace_contours(surface.tin, settings.contours, part(progress, 0.85, 1.0))
    return JobResult(
        survey=survey,
        points=points if linework is None else linework.points,
        linework=linework,
        surface=surface,
        contours=contours,
        decisions_file="" if settings.decisions is None else str(settings.decisions),
        messages=remarks,
    )


def _read(settings: JobSettings, progress: Progress) -> PointFile:
    crs = read_crs(settings.crs)
    progress(0.0, "points")
    read = read_survey(
        settings.survey,
        heights=settings.heights,
        geographic=crs is not None,
        columns=None if settings.columns is None else parse_columns(settings.columns),
        delimiter=settings.delimiter,
        decimal=settings.decimal,
        encoding=settings.encoding,
        unit=settings.unit or (LengthUnit.METRE if crs is None else None),
        height_unit=settings.height_unit or settings.unit,
        crs=crs,
        progress=progress,
    )
    return place_survey(read, crs, source=geographic_crs(settings.source_crs), accept=settings.accept)[0]


def _decide(survey: PointFile, settings: JobSettings) -> Tuple[PointSet, Tuple[Message, ...]]:
    if settings.decisions is None:
        return survey.points, ()
    return apply_decisions(survey.points, read_decisions(settings.decisions))


def _join(points: PointSet, settings: JobSettings) -> Optional[Linework]:
    if not settings.use_codes:
        return None
    table = default_code_table() if settings.codes is None else read_code_table(settings.codes)
    return join_lines(points, table)


def write_files(
    result: JobResult,
    folder: Path,
    progress: Progress = silent,
    translate: Callable[[str], str] = str,
    language: str = "en",
) -> JobResult:
    """Write contours, mesh, points, rejects and report into ``folder``; the result with their paths."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise SurveyError(CANNOT_MAKE_FOLDER, file=str(folder), reason=error.strerror or str(error)) from error
    progress(0.0, "files")
    mesh = folder / "surface.2dm"
    write_geojson(result.contours, folder / "contours.geojson")
    progress(0.2, "files")
    write_2dm(result.surface.tin, mesh)
    projection = write_prj(mesh, result.crs)
    progress(0.4, "files")
    write_points(result.points, folder / "points.csv")
    write_rejects(result.survey.rejects, folder / "rejects.csv", translate)
    written: Tuple[Path, ...] = (folder / "contours.geojson", mesh)
    written += () if projection is None else (projection,)
    written += (folder / "points.csv", folder / "rejects.csv")
    progress(0.6, "report")
    result = replace(result, files=written)
    write_report(result, folder / "report.html", translate, language)
    progress(1.0, "report")
    return replace(result, files=(*written, folder / "report.html"))
