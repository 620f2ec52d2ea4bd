"""The sections of the report about what was made: contours, surface, files, and what they are worth."""

from __future__ import annotations

import math

import numpy as np

from ..georeference.crs import plan_unit
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP
from . import figures, markup
from .input_sections import Section, messages_list
from .labels import Words, level_decimals, millimetres, number, plain, significant
from .measures import claimed_sigma, plan_areas, plan_length, slopes, weighted_median
from .results import JobResult

_LEVELS_SHOWN = 80
_DUPLICATES_SHOWN = 20
#: ASPRS Positional Accuracy Standards, edition 1 (2014), annex B: RMSEz = contour interval / 3.
_INTERVAL_OVER_RMSE = 3.0


# Surface


def surface_section(result: JobResult, words: Words) -> Section:
    say, tin, report = words, result.surface.tin, result.surface.report
    unit, height = plan_unit(result.crs), result.shown_height_unit
    slope = slopes(tin)
    middle = weighted_median(slope, plan_areas(tin))
    square = f"{unit.symbol}²"
    rows = [
        (say(QT_TRANSLATE_NOOP("core", "points that shape it")), number(report.points_used)),
        (say(QT_TRANSLATE_NOOP("core", "points kept out")), number(report.points_rejected)),
        (say(QT_TRANSLATE_NOOP("core", "vertices")), number(report.vertices)),
        (say(QT_TRANSLATE_NOOP("core", "triangles")), number(report.triangles)),
        (say(QT_TRANSLATE_NOOP("core", "triangles outside the boundary or in voids")), number(report.outside)),
        (say(QT_TRANSLATE_NOOP("core", "long triangles taken off the rim")), number(report.trimmed)),
        (say(QT_TRANSLATE_NOOP("core", "edges held by breaklines")), number(report.edges.get(LineKind.BREAKLINE, 0))),
        (say(QT_TRANSLATE_NOOP("core", "edges held by boundaries")), number(report.edges.get(LineKind.BOUNDARY, 0))),
        (say(QT_TRANSLATE_NOOP("core", "edges held by voids")), number(report.edges.get(LineKind.VOID, 0))),
        (say(QT_TRANSLATE_NOOP("core", "area in plan")), f"{number(tin.plan_area / unit.metres**2, 1)} {square}"),
        (say(QT_TRANSLATE_NOOP("core", "median slope, by area")), f"{number(100 * middle, 1)} %"),
    ]
    body = markup.facts(say(QT_TRANSLATE_NOOP("core", "The surface (TIN)")), rows)
    body += _duplicates(result, say) + _conflicts(result, say) + _surface_doubt(result, say)
    heights = result.points.height[result.points.used]
    picture = figures.height_histogram(heights, height, say)
    alt = QT_TRANSLATE_NOOP("core", "Histogram of the heights of the used points, from {low} to {high} {unit}.")
    low, high = number(heights.min() / height.metres, 2), number(heights.max() / height.metres, 2)
    caption = QT_TRANSLATE_NOOP("core", "Heights of the used points.")
    body += markup.figure(picture.uri, say(alt, low=low, high=high, unit=height.symbol), say(caption))
    return "surface", say(QT_TRANSLATE_NOOP("core", "Surface")), body + messages_list(report.messages, say)


def _duplicates(result: JobResult, say: Words) -> str:
    """Places recorded several times, those that disagree most first."""
    duplicates = result.surface.report.duplicates
    if not duplicates:
        return markup.paragraph(say(QT_TRANSLATE_NOOP("core", "No two used points have the same place.")))
    unit, height = plan_unit(result.crs), result.shown_height_unit
    worst = sorted(duplicates, key=lambda d: (d.lowest - d.highest, d.easting, d.northing))[:_DUPLICATES_SHOWN]
    rows = [
        (
            number(d.easting / unit.metres, 3),
            number(d.northing / unit.metres, 3),
            number(d.lowest / height.metres, 3),
            number(d.highest / height.metres, 3),
            number(d.height / height.metres, 3),
            ", ".join(str(line) for line in d.source_lines),
        )
        for d in worst
    ]
    text = QT_TRANSLATE_NOOP(
        "core",
        "Places recorded more than once (equal to 0.1 mm in plan): {count}. Rule: the surface takes the mean height.",
    )
    head = [
        say(QT_TRANSLATE_NOOP("core", "Easting ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Northing ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Lowest ({unit})"), unit=height.symbol),
        say(QT_TRANSLATE_NOOP("core", "Highest ({unit})"), unit=height.symbol),
        say(QT_TRANSLATE_NOOP("core", "Mean, used ({unit})"), unit=height.symbol),
        say(QT_TRANSLATE_NOOP("core", "Lines of the file")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Places recorded more than once, largest differences first: {shown} of {count}")
    shown = {"shown": number(len(rows)), "count": number(len(duplicates))}
    return markup.paragraph(say(text, count=shown["count"])) + markup.table(say(caption, **shown), head, rows, "nnnnnw")


def _conflicts(result: JobResult, say: Words) -> str:
    """Places where lines cross."""
    conflicts = result.surface.report.conflicts
    if not conflicts:
        return ""
    unit, height = plan_unit(result.crs), result.shown_height_unit
    rows = [
        (
            number(c.easting / unit.metres, 3),
            number(c.northing / unit.metres, 3),
            c.first,
            number(c.first_height / height.metres, 3),
            c.second,
            number(c.second_height / height.metres, 3),
        )
        for c in conflicts[:_DUPLICATES_SHOWN]
    ]
    head = [
        say(QT_TRANSLATE_NOOP("core", "Easting ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Northing ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "First line")),
        say(QT_TRANSLATE_NOOP("core", "Its height ({unit})"), unit=height.symbol),
        say(QT_TRANSLATE_NOOP("core", "Second line")),
        say(QT_TRANSLATE_NOOP("core", "Its height ({unit})"), unit=height.symbol),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Where lines cross and were joined; {shown} of {count}")
    text = say(caption, shown=number(len(rows)), count=number(len(conflicts)))
    return markup.table(text, head, rows, "nnwnwn")


def _surface_doubt(result: JobResult, say: Words) -> str:
    sigma = claimed_sigma(result)
    if not math.isfinite(sigma):
        return ""
    text = QT_TRANSLATE_NOOP(
        "core",
        "With the claimed noise of {sigma} (median standard deviation of a height), the height in the middle of a "
        "triangle has a standard deviation of {middle} from noise alone. "
        "What the ground does between points comes on top.",
    )
    return markup.paragraph(say(text, sigma=millimetres(sigma), middle=millimetres(sigma / math.sqrt(3.0))))


# Contours


def contours_section(result: JobResult, words: Words) -> Section:
    say, contours = words, result.contours
    unit, height = plan_unit(result.crs), result.shown_height_unit
    options = contours.options
    picture = figures.site_map(result.surface.tin, contours, say)
    alt = QT_TRANSLATE_NOOP(
        "core", "Map of {count} contour lines every {interval} {unit} over the shaded surface, with rim and breaklines."
    )
    caption = QT_TRANSLATE_NOOP(
        "core", "Contours every {interval} {unit}, index contours every {index} {unit}. "
        "Relief shaded from the north-west, heights exaggerated {times} times for the shading only."
    )  # fmt: skip
    interval = plain(options.interval)
    body = markup.figure(
        picture.uri,
        say(alt, count=number(len(contours)), interval=interval, unit=height.symbol),
        say(
            caption,
            interval=interval,
            index=plain(options.interval * options.index_every),
            unit=height.symbol,
            times=number(picture.exaggeration),
        ),
    )
    body += _contour_doubt(result, say) + _levels_table(result, say, unit.symbol, unit.metres)
    return "contours", say(QT_TRANSLATE_NOOP("core", "Contours")), body


def _contour_doubt(result: JobResult, say: Words) -> str:
    """How far noise moves a contour, and which interval the claimed noise carries."""
    sigma, tin = claimed_sigma(result), result.surface.tin
    if not math.isfinite(sigma):
        return ""
    unit, height = plan_unit(result.crs), result.shown_height_unit
    slope = weighted_median(slopes(tin), plan_areas(tin))
    html = ""
    if slope > 0:
        text = QT_TRANSLATE_NOOP(
            "core",
            "Noise moves a contour sideways by the noise of the height over the slope: at the median slope of "
            "{slope} % a standard deviation of {shift} {unit}; on flatter ground more.",
        )
        shift = significant(sigma / slope / unit.metres)
        html = markup.paragraph(say(text, slope=number(100 * slope, 1), shift=shift, unit=unit.symbol))
    least = _INTERVAL_OVER_RMSE * sigma / height.metres
    interval = result.contours.options.interval
    if interval >= least:
        text = QT_TRANSLATE_NOOP(
            "core",
            "By the rule that the RMSE of heights is at most a third of the interval (ASPRS 2014, annex B), the "
            "claimed noise carries intervals from {least} {unit}; the interval of {interval} {unit} is not "
            "finer than that. Check shots must confirm it.",
        )
    else:
        text = QT_TRANSLATE_NOOP(
            "core",
            "By the rule that the RMSE of heights is at most a third of the interval (ASPRS 2014, annex B), the "
            "claimed noise carries intervals from {least} {unit}; the interval of {interval} {unit} is finer "
            "than the survey can support. Choose a larger one.",
        )
    return html + markup.paragraph(say(text, least=significant(least), interval=plain(interval), unit=height.symbol))


def _levels_table(result: JobResult, say: Words, symbol: str, metres: float) -> str:
    contours = result.contours
    if len(contours) == 0:
        text = QT_TRANSLATE_NOOP("core", "No level meets the surface; choose a smaller interval or another base.")
        return markup.paragraph(say(text))
    lengths = np.array([plan_length(line, False) for line in contours]) / metres
    steps, first, place = np.unique(contours.step, return_index=True, return_inverse=True)
    index_only = len(steps) > _LEVELS_SHOWN
    decimals = level_decimals(contours.options.interval, contours.options.base)
    rows = []
    for k, i in enumerate(first):
        if index_only and not contours.index[i]:
            continue
        own = place == k
        rows.append(
            (
                number(contours.level_in_unit[i], decimals),
                say(QT_TRANSLATE_NOOP("core", "yes")) if contours.index[i] else "",
                number(int(own.sum())),
                number(int((own & contours.closed).sum())),
                number(int((own & contours.depression).sum())),
                number(float(lengths[own].sum()), 1),
            )
        )
    caption = QT_TRANSLATE_NOOP("core", "Contours by level")
    if index_only:
        caption = QT_TRANSLATE_NOOP("core", "Contours by level; index contours only, as there are many levels")
    html = markup.table(
        say(caption),
        [
            say(QT_TRANSLATE_NOOP("core", "Level ({unit})"), unit=result.shown_height_unit.symbol),
            say(QT_TRANSLATE_NOOP("core", "Index")),
            say(QT_TRANSLATE_NOOP("core", "Lines")),
            say(QT_TRANSLATE_NOOP("core", "Closed")),
            say(QT_TRANSLATE_NOOP("core", "Depressions")),
            say(QT_TRANSLATE_NOOP("core", "Length in plan ({unit})"), unit=symbol),
        ],
        rows,
        "nwnnnn",
    )
    total = QT_TRANSLATE_NOOP("core", "All together: {lines} lines on {levels} levels, {length} {unit} long.")
    return html + markup.paragraph(
        say(
            total,
            lines=number(len(contours)),
            levels=number(len(steps)),
            length=number(float(lengths.sum()), 1),
            unit=symbol,
        )
    )


# The rest


def files_section(result: JobResult, words: Words) -> Section:
    what = {
        "contours.geojson": QT_TRANSLATE_NOOP("core", "contour lines with level, index and depression"),
        "surface.2dm": QT_TRANSLATE_NOOP("core", "the surface as a mesh"),
        "surface.prj": QT_TRANSLATE_NOOP("core", "the coordinate system of the mesh"),
        "points.csv": QT_TRANSLATE_NOOP("core", "every point with its status and reasons"),
        "rejects.csv": QT_TRANSLATE_NOOP("core", "rejected lines with their reasons"),
    }
    rows = [(path.name, words(what[path.name]) if path.name in what else "") for path in result.files]
    head = [words(QT_TRANSLATE_NOOP("core", "File")), words(QT_TRANSLATE_NOOP("core", "Holds"))]
    body = markup.table(words(QT_TRANSLATE_NOOP("core", "Files beside this report")), head, rows, "hw") if rows else ""
    return "files", words(QT_TRANSLATE_NOOP("core", "Files")), body


def method_section(result: JobResult, words: Words) -> Section:
    texts = [
        QT_TRANSLATE_NOOP(
            "core",
            "Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole "
            "numbers exactly. Heights are never rounded.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it "
            "(constrained Delaunay triangulation), with no points added along them. Between points it is plane.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "Contours are exact on that surface and not smoothed. Ground exactly at a level counts as above it.",
        ),
        QT_TRANSLATE_NOOP("core", "Feet: 0.3048 m (international) and 1200/3937 m (US survey), NIST SP 811."),
        QT_TRANSLATE_NOOP(
            "core",
            "Interval and noise: ASPRS Positional Accuracy Standards for Digital Geospatial Data, edition 1 (2014), "
            "annex B, RMSE of heights = interval / 3.",
        ),
        QT_TRANSLATE_NOOP("core", "Colours: ColorBrewer 2.0, schemes safe for colour-blind readers."),
    ]
    title = words(QT_TRANSLATE_NOOP("core", "Method and sources"))
    return "method", title, markup.bullets(words(text) for text in texts)


def cautions_section(result: JobResult, words: Words) -> Section:
    texts = [
        QT_TRANSLATE_NOOP("core", "Not for construction or setting out without independent checks on the ground."),
        QT_TRANSLATE_NOOP(
            "core",
            "The contours are no better than the survey: where nobody walked, the surface is a straight guess between "
            "the points around.",
        ),
        QT_TRANSLATE_NOOP("core", "Boundaries here are the limits of the surface, not legal boundaries of land."),
        QT_TRANSLATE_NOOP("core", "Buried services are not shown."),
        QT_TRANSLATE_NOOP(
            "core", "Local codes, the contract and a licensed professional decide; this report does not."
        ),
    ]
    return "cautions", words(QT_TRANSLATE_NOOP("core", "Limits and cautions")), markup.caution(words(t) for t in texts)
