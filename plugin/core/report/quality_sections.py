"""The sections of the report about what the survey is worth: doubtful points, accuracy, coverage."""

from __future__ import annotations

from pathlib import PurePath
from typing import List, Tuple

import numpy as np

from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP, message
from ..points.pointset import Status
from ..quality.interval import NO_BASIS
from . import markup
from .accuracy_page import accuracy_body
from .labels import Words, number
from .markup import Section
from .pass_figures import Place, most_telling, passes_figure, places_along
from .quality_maps import coverage_map
from .remarks import REASONS, say_message
from .results import JobResult

_PLACES_SHOWN = 50
_PASSES_SHOWN = 10
_FAULTS_SHOWN = 50


def doubts_section(result: JobResult, words: Words) -> Section:
    """Where points were flagged or rejected, seen along the walk."""
    say, points = words, result.points.select(~result.points.off_site)
    title = say(QT_TRANSLATE_NOOP("core", "Doubtful points along the walk"))
    places = places_along(points)
    if not places:
        text = QT_TRANSLATE_NOOP("core", "No point was flagged or rejected for anything but its code.")
        return "doubts", title, markup.paragraph(say(text))
    text = QT_TRANSLATE_NOOP(
        "core",
        "Nothing was deleted: every point is in points.csv with its status and reasons. Where you know better, decide "
        "by hand with --decisions.",
    )
    chosen = most_telling(places, _PASSES_SHOWN)
    picture = passes_figure(points, result.surface.tin, chosen, say)
    alt = QT_TRANSLATE_NOOP(
        "core", "Height over distance along the pass at {shown} places, with used, flagged and rejected points."
    )
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Height over distance along the pass: {shown} of {count} places with flagged or rejected points, each kind "
        "before a second of its kind, the longest first.",
    )
    count = {"shown": number(len(chosen)), "count": number(len(places))}
    body = markup.paragraph(say(text)) + markup.figure(picture.uri, say(alt, **count), say(caption, **count))
    return "doubts", title, body + _doubts_table(result, places, say)


def _doubts_table(result: JobResult, places: List[Place], say: Words) -> str:
    points = result.points
    rows = []
    for place in places[:_FAULTS_SHOWN]:
        lines, status = points.source_line[place.faults], points.status[place.faults]
        rows.append(
            (
                f"{lines[0]}" if len(lines) == 1 else f"{lines[0]}\u2013{lines[-1]}",
                number(int(np.count_nonzero(status == Status.FLAGGED))),
                number(int(np.count_nonzero(status == Status.REJECTED))),
                "; ".join(say(text) for reason, text in REASONS.items() if place.reasons & int(reason)),
            )
        )
    head = [
        say(QT_TRANSLATE_NOOP("core", "Lines of the file")),
        say(QT_TRANSLATE_NOOP("core", "Flagged")),
        say(QT_TRANSLATE_NOOP("core", "Rejected")),
        say(QT_TRANSLATE_NOOP("core", "Reasons")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Places with flagged or rejected points: {shown} of {count}")
    name = say(caption, shown=number(len(rows)), count=number(len(places)))
    return markup.table(name, head, rows, "hnnw")


def accuracy_section(result: JobResult, words: Words) -> Section:
    title, found = words(QT_TRANSLATE_NOOP("core", "Accuracy")), result.quality.accuracy
    if result.quality.claims.against:
        return "accuracy", title, _withheld(result, words)
    if found is None:
        text = QT_TRANSLATE_NOOP(
            "core",
            "There are no check points on the surface, so nothing here tests it. Measure at least 30 points with an "
            "independent, better method and give them with --check-points.",
        )
        return "accuracy", title, markup.paragraph(words(text))
    text = QT_TRANSLATE_NOOP("core", "The surface against the check points of {file}.")
    if not found.comparison.checks.independent:
        text = QT_TRANSLATE_NOOP("core", "The surface against the check shots in {file}, which did not shape it.")
    body = markup.paragraph(words(text, file=PurePath(found.comparison.checks.source).name))
    return "accuracy", title, body + accuracy_body(found, result.surface.tin, words)


def _withheld(result: JobResult, words: Words) -> str:
    """Why no accuracy is told."""
    text = QT_TRANSLATE_NOOP("core", "No accuracy and no contour interval is vouched for while this stands:")
    return markup.paragraph(words(text)) + markup.bullets(
        say_message(one, words) for one in result.quality.claims.against
    )


def coverage_section(result: JobResult, words: Words) -> Section:
    say, found, tin = words, result.quality.coverage, result.surface.tin
    body = markup.bullets(say_message(said, say) for said in found.messages)
    interval = result.quality.interval
    told = (message(NO_BASIS),) if interval is None else interval.messages
    body += markup.bullets(say_message(said, say) for said in told)
    picture = coverage_map(tin, result.edited.points, found, say)
    alt = QT_TRANSLATE_NOOP(
        "core", "Map of the used points with {circles} empty circles and {places} places to walk again."
    )
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Where the ground was measured, and where not. Circles hold no measured point and are wider than {limit} in "
        "radius; triangles are marked from an edge of {edge}.",
    )
    count = {"circles": number(len(found.circles)), "places": number(len(found.walk_again))}
    limits = {"limit": say.length(found.max_radius), "edge": say.length(found.max_edge)}
    body += markup.figure(picture.uri, say(alt, **count), say(caption, **limits))
    body += markup.facts(say(QT_TRANSLATE_NOOP("core", "Spacing and gaps")), _spacing(result, say))
    return "coverage", say(QT_TRANSLATE_NOOP("core", "Coverage")), body + _places(result, say)


def _spacing(result: JobResult, say: Words) -> List[Tuple[str, str]]:
    found, unit = result.quality.coverage, plan_unit(result.crs)

    def length(metres: float, decimals: int = 2) -> str:
        return f"{number(metres / unit.metres, decimals)} {unit.symbol}"

    share = number(100 * found.long_share, 1)
    widest = length(float(found.circles.radius[0])) if len(found.circles) else say(_NONE)
    return [
        (say(QT_TRANSLATE_NOOP("core", "from record to record, median")), length(found.along)),
        (say(QT_TRANSLATE_NOOP("core", "95 in 100 records are nearer than")), length(found.along_95)),
        (say(QT_TRANSLATE_NOOP("core", "from pass to pass")), length(found.across)),
        (say(QT_TRANSLATE_NOOP("core", "share of the site in triangles with a long edge")), f"{share} %"),
        (say(QT_TRANSLATE_NOOP("core", "radius of the widest empty circle")), widest),
    ]


_NONE = QT_TRANSLATE_NOOP("core", "none over the limit")


def _places(result: JobResult, say: Words) -> str:
    places = result.quality.coverage.walk_again
    if not len(places):
        return markup.paragraph(say(QT_TRANSLATE_NOOP("core", "No place needs to be walked again.")))
    plan, rise = plan_unit(result.crs), height_unit(result.crs)
    shown = min(len(places), _PLACES_SHOWN)
    rows = [
        (
            str(places.name[i]),
            number(places.easting[i] / plan.metres, 3),
            number(places.northing[i] / plan.metres, 3),
            number(places.height[i] / rise.metres, 2),
            number(places.extra["radius"][i] / plan.metres, 1),
            str(places.extra["line"][i]),
        )
        for i in range(shown)
    ]
    head = [
        say(QT_TRANSLATE_NOOP("core", "Name")),
        say(QT_TRANSLATE_NOOP("core", "Easting ({unit})"), unit=plan.symbol),
        say(QT_TRANSLATE_NOOP("core", "Northing ({unit})"), unit=plan.symbol),
        say(QT_TRANSLATE_NOOP("core", "Height guessed ({unit})"), unit=rise.symbol),
        say(QT_TRANSLATE_NOOP("core", "Nothing measured within ({unit})"), unit=plan.symbol),
        say(QT_TRANSLATE_NOOP("core", "Line")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Places to walk again, in walking order: {shown} of {count}")
    name = say(caption, shown=number(shown), count=number(len(places)))
    return markup.table(name, head, rows, "hnnnnt")
