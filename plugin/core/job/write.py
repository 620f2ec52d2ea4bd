"""The files of the main job."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Callable, List

from ..contours.geojson import write_geojson
from ..contours.sheet_geojson import write_labels, write_spots
from ..georeference.residuals import write_residuals
from ..handover.check_findings import write_check_findings
from ..handover.checksums import digests, write_checksums
from ..handover.found_lines import write_found_lines
from ..handover.grid import write_asc
from ..handover.mesh import write_2dm
from ..handover.mesh_noise import write_mesh_noise
from ..handover.projection import write_prj
from ..handover.tables import write_findings
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.merge_table import write_clashes, write_differences
from ..points.table import write_points, write_rejects
from ..progress import Progress, named, part, silent
from ..quality.coverage import write_places
from ..quality.tolerances import write_tolerances
from ..report.html import write_report
from ..report.results import JobResult
from .noise import mesh_noise

CANNOT_MAKE_FOLDER = Text(
    "job.cannot_make_folder",
    QT_TRANSLATE_NOOP("core", "{file}: the folder cannot be made ({reason}); choose another one for --out."),
)


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
    if result.check is not None:
        written += [folder / "survey_findings.csv", folder / "tolerances.json"]
        write_check_findings(result.check, written[-2], translate)
        write_tolerances([result.check.tolerances], written[-1])
    if result.ground_lines is not None and result.ground_lines.lines:
        written.append(folder / "lines_found.geojson")
        write_found_lines(result.ground_lines.lines, result.crs, written[-1])
    if len(result.quality.coverage.walk_again):
        written.append(folder / "places_to_walk.csv")
        write_places(result.quality.coverage.walk_again, written[-1])
    written += _write_place(result, folder)
    for answer in result.answers:
        written += answer.write(folder, translate)
    progress(0.7, "report")
    report = folder / "report.html"
    result = replace(result, files=tuple(written), handed_over=digests((*written, *result.others)))
    sums = folder / "checksums.sha256"
    write_checksums(result.handed_over, sums)
    write_report(result, report, translate, language)
    progress(1.0, "report")
    return replace(result, files=(*written, sums, report))


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
    """Meshes and grid, each with its ``.prj`` where there is a CRS, and how the heights of the survey repeat."""
    tin, written = result.surface.tin, [folder / "surface.2dm"]
    write_2dm(tin, written[0])
    noise = write_mesh_noise(written[0], mesh_noise(result))
    if result.thinned is not None:
        written.append(folder / "surface_thin.2dm")
        write_2dm(result.thinned.tin, written[-1])
    if result.dem is not None:
        written.append(folder / "dem.asc")
        write_asc(tin, result.dem, written[-1], named("files", progress))
    projections = [write_prj(path, result.crs) for path in written]
    both = zip(written, projections)
    paths = [path for pair in both for path in pair if path is not None]
    return paths if noise is None else [*paths, noise]
