"""The section of the report about the points: what became of them and why, their spacing, the noise they claim."""

from __future__ import annotations

from pathlib import PurePath

import numpy as np

from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import Status
from ..quality.left_out import LONG
from . import figures, markup
from .labels import Words, number
from .markup import Section
from .remarks import REASONS, messages_list
from .results import JobResult

_LEFT_OUT = QT_TRANSLATE_NOOP(
    "core",
    "Of the flagged points {count} are left out of the surface: stretches of {length} or more that at least two passes "
    "meet, along at least half of them, which all say that they are off, by more than their doubt. All other flagged "
    "points are in the surface. Whoever knows the site puts these stretches back with --keep-flagged, or "
    "single points by the status used; else they are places to walk again.",
)


def points_section(result: JobResult, words: Words) -> Section:
    say, points = words, result.points
    lead = QT_TRANSLATE_NOOP("core", "Put aside, or asked about, before anything was computed from the others:")
    body = messages_list(result.aside, say, lead)
    body += markup.table(
        say(QT_TRANSLATE_NOOP("core", "What became of the points")),
        [say(QT_TRANSLATE_NOOP("core", "Status")), say(QT_TRANSLATE_NOOP("core", "Points"))],
        [
            (say(name), number(int(np.count_nonzero(points.status == status))))
            for status, name in (
                (Status.USED, figures.USED),
                (Status.FLAGGED, figures.FLAGGED),
                (Status.REJECTED, figures.REJECTED),
            )
        ],
        "hn",
    )
    out = int(np.count_nonzero(points.left_out))
    if out:
        body += markup.paragraph(say(_LEFT_OUT, count=number(out), length=say.length(LONG, 0)))
    body += _reasons_table(result, say)
    if result.decisions_file:
        text = QT_TRANSLATE_NOOP("core", "Decisions made by hand were read from {file}.")
        body += markup.paragraph(say(text, file=PurePath(result.decisions_file).name))
    else:
        text = QT_TRANSLATE_NOOP("core", "No decisions were made by hand.")
        body += markup.paragraph(say(text))
    body += messages_list(result.messages, say)
    body += _points_figure(result, say) + _spacing_figure(result, say) + _noise(result, say)
    return "points", say(QT_TRANSLATE_NOOP("core", "Points and decisions")), body


def _reasons_table(result: JobResult, say: Words) -> str:
    points = result.points
    rows = []
    for reason, name in REASONS.items():
        has = (points.reasons & int(reason)) != 0
        if has.any():
            out = int(np.count_nonzero(has & ~points.used))
            rows.append((say(name), number(int(np.count_nonzero(has)) - out), number(out)))
    if not rows:
        return ""
    return markup.table(
        say(QT_TRANSLATE_NOOP("core", "Reasons (a point can have several)")),
        [
            say(QT_TRANSLATE_NOOP("core", "Reason")),
            say(QT_TRANSLATE_NOOP("core", "Points still used")),
            say(QT_TRANSLATE_NOOP("core", "Points kept out of the surface")),
        ],
        rows,
        "hnn",
    )


def _points_figure(result: JobResult, say: Words) -> str:
    picture = figures.points_map(result.points, say)
    count = [number(int(np.count_nonzero(result.points.status == status))) for status in Status]
    alt = QT_TRANSLATE_NOOP(
        "core", "Map of the survey points: {used} used, {flagged} flagged and {rejected} rejected, each with its mark."
    )
    caption = QT_TRANSLATE_NOOP("core", "The survey points by what became of them.")
    return markup.figure(picture.uri, say(alt, used=count[0], flagged=count[1], rejected=count[2]), say(caption))


def _spacing_figure(result: JobResult, say: Words) -> str:
    unit = plan_unit(result.crs)
    steps = figures.steps_along(result.points)
    if len(steps) == 0 or float(np.median(steps)) == 0.0:
        return ""
    picture = figures.spacing_histogram(steps, unit, say)
    end = figures.longest_shown(steps)
    middle = number(float(np.median(steps)) / unit.metres, 3)
    alt = QT_TRANSLATE_NOOP(
        "core", "Histogram of the distance between points recorded one after another; median {middle} {unit}."
    )
    caption = QT_TRANSLATE_NOOP(
        "core", "Spacing along the passes. {count} longer steps, to {longest} {unit}, lie beyond the right end."
    )
    return markup.figure(
        picture.uri,
        say(alt, middle=middle, unit=unit.symbol),
        say(
            caption,
            count=number(int(np.count_nonzero(steps >= end))),
            longest=number(float(steps.max()) / unit.metres, 1),
            unit=unit.symbol,
        ),
    )


def _noise(result: JobResult, say: Words) -> str:
    """The doubt the receiver itself claims, over the used points."""
    used = result.points.used
    rows = []
    for name, values, small in (
        (QT_TRANSLATE_NOOP("core", "standard deviation of a height"), result.points.sigma_v[used], say.small),
        (QT_TRANSLATE_NOOP("core", "standard deviation in plan"), result.points.sigma_h[used], say.small_plan),
    ):
        values = values[np.isfinite(values)]
        if len(values):
            middle, high = np.percentile(values, [50, 95])
            rows.append((say(name), small.said(float(middle)), small.said(float(high)), number(len(values))))
    if not rows:
        text = QT_TRANSLATE_NOOP(
            "core",
            "The file gives no standard deviations, so this report cannot say how uncertain a single height is. "
            "Independent check shots can.",
        )
        return markup.paragraph(say(text))
    html = markup.table(
        say(QT_TRANSLATE_NOOP("core", "Noise of the used points as the receiver claims it")),
        [
            say(QT_TRANSLATE_NOOP("core", "Quantity")),
            say(QT_TRANSLATE_NOOP("core", "Median")),
            say(QT_TRANSLATE_NOOP("core", "95 in 100 are below")),
            say(QT_TRANSLATE_NOOP("core", "Points with a value")),
        ],
        rows,
        "hnnn",
    )
    text = QT_TRANSLATE_NOOP(
        "core",
        "These are claims, not tests: pole, tilt, datum and receiver offsets are not in them. "
        "Only independent check shots measure the accuracy of the surface.",
    )
    return html + markup.paragraph(say(text))
