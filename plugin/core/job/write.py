"""The files of the main job."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Callable, List, Optional, Sequence

from ..contours.geojson import write_geojson
from ..contours.sheet_geojson import write_labels, write_spots
from ..files import make_folder
from ..georeference.residuals import write_residuals
from ..handover.check_findings import write_check_findings
from ..handover.checksums import digests, write_checksums
from ..handover.found_lines import write_found_lines
from ..handover.grid import write_asc
from ..handover.mesh import write_2dm
from ..handover.mesh_noise import write_mesh_noise
from ..handover.projection import write_prj
from ..handover.tables import write_findings
from ..points.merge_table import write_clashes, write_differences
from ..points.table import write_points, write_rejects
from ..progress import Progress, named, part, silent
from ..quality.coverage import write_places
from ..quality.tolerances import write_tolerances
from ..report.html import write_report
from ..report.results import Answer, JobResult
from .keeping import KeptAnswer
from .noise import mesh_noise, thinned_noise

#: Listed with the files, but of another kind: what tells of them, and so changes with them.
SUMS, REPORT = "checksums.sha256", "report.html"


def write_files(
    result: JobResult,
    folder: Path,
    progress: Progress = silent,
    translate: Callable[[str], str] = str,
    language: str = "en",
    told: Callable[[int, Answer, Sequence[Path]], Answer] = lambda number, answer, files: answer,
    home: Optional[Path] = None,
) -> JobResult:
    """Write all files of ``result`` into ``folder``; the result with their paths.

    ``told``: given each answer, by its number, when its files are written; gives the answer that the report tells.
    ``home``: the folder into which the files will be moved, from which they are named; None where they stay.
    """
    make_folder(folder)
    home = folder if home is None else home
    progress(0.0, "files")
    written = _write_contours(result, folder)
    progress(0.1, "files")
    written += _write_surfaces(result, folder, part(progress, 0.1, 0.6))
    written += _write_visits(result, folder, translate)
    written += [folder / "points.csv", folder / "rejects.csv", folder / "findings.csv"]
    write_points(result.points, folder / "points.csv", part(progress, 0.6, 0.65))
    write_rejects(result.survey.rejects, folder / "rejects.csv", translate)
    write_findings(result.findings, result.crs, folder / "findings.csv", translate)
    if result.check is not None:
        written += [folder / "survey_findings.csv", folder / "tolerances.json"]
        progress(0.65, "files")
        write_check_findings(result.check, written[-2], translate)
        write_tolerances([result.check.tolerances], written[-1])
    if result.ground_lines is not None:
        progress(0.66, "files")
        written.append(folder / "lines_found.geojson")
        write_found_lines(result.ground_lines.lines, result.crs, written[-1])
    if len(result.quality.coverage.walk_again):
        written.append(folder / "places_to_walk.csv")
        write_places(result.quality.coverage.walk_again, written[-1])
    written += _write_place(result, folder)
    progress(0.68, "files")
    answers = []
    for number, answer in enumerate(result.answers):
        files = list(answer.write(home if isinstance(answer, KeptAnswer) else folder, translate))
        written += files
        answers.append(told(number, answer, files))
    progress(0.7, "report")
    result = with_files(result, written, folder, home)
    write_checksums(result.handed_over, folder / SUMS, home)
    write_report(
        replace(result, answers=tuple(answers)), folder / REPORT, translate, language, part(progress, 0.7, 1.0)
    )
    progress(1.0, "report")
    return replace(result, files=(*written, folder / SUMS, folder / REPORT))


def with_files(result: JobResult, files: Sequence[Path], folder: Path, home: Path) -> JobResult:
    """``result`` with the files that were written of it into ``folder``, and what is handed over with them, named as
    they will be in ``home``.
    """
    own = [path for path in files if path.name not in (SUMS, REPORT)]
    handed = [replace(one, path=at_home(one.path, folder, home)) for one in digests((*own, *result.others))]
    return replace(result, files=tuple(files), handed_over=tuple(handed))


def at_home(path: Path, folder: Path, home: Path) -> Path:
    """Where a file of ``folder`` will be in ``home``; any other stays where it is."""
    return home / path.relative_to(folder) if folder in path.parents else path


def _write_visits(result: JobResult, folder: Path, translate: Callable[[str], str]) -> List[Path]:
    """The surface of each visit by itself, and of the later ones their points and what was rejected."""
    written: List[Path] = []
    for number, own in enumerate(() if result.visits is None else result.visits.surfaces, 1):
        mesh = folder / f"surface_visit_{number}.2dm"
        write_2dm(own.tin, mesh)
        beside = (write_prj(mesh, result.crs), write_mesh_noise(mesh, own.noise))
        written += [mesh, *(path for path in beside if path is not None)]
    for visit in () if result.visits is None else result.visits.later:
        points, rejects = (folder / f"{what}_visit_{visit.number}.csv" for what in ("points", "rejects"))
        write_points(visit.points, points)
        write_rejects(visit.rejects, rejects, translate)
        written += [points, rejects]
        if visit.check is not None:
            written.append(folder / f"survey_findings_visit_{visit.number}.csv")
            write_check_findings(visit.check, written[-1], translate)
    return written


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
    known = mesh_noise(result.check, tin, result.edited.points)
    noises = [write_mesh_noise(written[0], known)]
    if result.thinned is not None:
        written.append(folder / "surface_thin.2dm")
        write_2dm(result.thinned.tin, written[-1])
        noises.append(write_mesh_noise(written[-1], None if known is None else thinned_noise(known, result)))
    if result.dem is not None:
        written.append(folder / "dem.asc")
        write_asc(tin, result.dem, written[-1], named("files", progress))
    projections = [write_prj(path, result.crs) for path in written]
    both = zip(written, projections)
    paths = [path for pair in both for path in pair if path is not None]
    return [*paths, *(noise for noise in noises if noise is not None)]
