"""The report of the main job: one HTML file that needs no other."""

from __future__ import annotations

from dataclasses import replace
from pathlib import PurePath
from typing import Callable, Sequence

import numpy as np

from ..files import PathLike, replace_file
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..progress import Progress, named, part, silent
from . import markup
from .check_sections import check_section, repeatability_section
from .first_things import first_things
from .found_sections import found_lines_section
from .input_sections import coordinates_section, linework_section, survey_section
from .labels import Words, number, plain
from .markup import Section
from .output_sections import cautions_section, contours_section, files_section, method_section
from .point_sections import points_section
from .quality_sections import accuracy_section, coverage_section, doubts_section
from .results import JobResult
from .surface_sections import findings_section, surface_section
from .visits import visit_sections

TITLE = QT_TRANSLATE_NOOP("core", "Survey report: {file}")
LEAD = QT_TRANSLATE_NOOP(
    "core",
    "From {points} points of {file}, {used} of them used, a surface of {triangles} triangles over {area} {unit}², and "
    "{lines} contour lines every {interval} {height_unit}.",
)
CAUTION = QT_TRANSLATE_NOOP(
    "core", "Not for construction or setting out without independent checks; see the limits and cautions at the end."
)
CONTENTS = QT_TRANSLATE_NOOP("core", "Contents")

#: Before the answers to what was asked of the surface, and after them.
RESULTS: Sequence[Callable[[JobResult, Words, Progress], Section]] = (contours_section,)
SECTIONS: Sequence[Callable[[JobResult, Words], Section]] = (
    accuracy_section,
    coverage_section,
    findings_section,
    survey_section,
    coordinates_section,
    points_section,
    check_section,
    doubts_section,
    repeatability_section,
    linework_section,
    found_lines_section,
    surface_section,
    files_section,
    method_section,
    cautions_section,
)


def write_report(
    result: JobResult, path: PathLike, translate: Callable[[str], str] = str, language: str = "en",
    progress: Progress = silent,
) -> None:  # fmt: skip
    """Write the report of ``result`` to ``path``, in the language of ``translate`` (its code: ``language``).

    The same results give the same file: it holds no time or path of the machine. Raises SurveyError when the
    file cannot be written.
    """
    text = report_html(result, Words(translate), language, progress)
    with replace_file(path) as name, open(name, "w", encoding="utf-8", newline="\n") as file:
        file.write(text)


def report_html(result: JobResult, words: Words, language: str = "en", progress: Progress = silent) -> str:
    """The report as text."""
    words = replace(words, units=result.units)
    file = PurePath(result.survey.points.source).name
    title = words(TITLE, file=file)
    many, sections = len(RESULTS) + len(result.answers) + len(SECTIONS), []
    for k, draw in enumerate(RESULTS):
        sections.append(draw(result, words, named("report", part(progress, k / many, (k + 1) / many))))
    sections += visit_sections(result, words)
    for answer in result.answers:
        progress(len(RESULTS) / many, "report")
        sections += answer.sections(words)
    for k, make in enumerate(SECTIONS, len(RESULTS) + len(result.answers)):
        progress(k / many, "report")
        sections.append(make(result, words))
    lead = markup.paragraph(_lead(result, file, words))
    lead += markup.bullets(first_things(result, words))
    lead += markup.caution([words(CAUTION)])
    lead += markup.contents(words(CONTENTS), [(anchor, name) for anchor, name, _ in sections])
    main = "".join(markup.section(*section) for section in sections)
    return markup.page(title, language, lead, main)


def _lead(result: JobResult, file: str, words: Words) -> str:
    unit, tin = plan_unit(result.crs), result.surface.tin
    return words(
        LEAD,
        points=number(len(result.points)),
        file=file,
        used=number(int(np.count_nonzero(result.points.used))),
        triangles=number(len(tin.triangles)),
        area=number(tin.plan_area / unit.metres**2, 0),
        unit=unit.symbol,
        lines=number(len(result.contours)),
        interval=plain(result.contours.options.interval),
        height_unit=result.shown_height_unit.symbol,
    )
