"""The sections of the report about the surface: how it was made, what is to be looked at, slopes, edits."""

from __future__ import annotations

import math
from pathlib import PurePath
from typing import List, Tuple

from ..georeference.crs import plan_unit
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP
from ..surface.build import SurfaceOptions
from ..surface.crossings import CrossingRule
from ..surface.edits import kind_of
from ..surface.findings import Finding
from ..surface.slopes import slope_map
from ..surface.tin import GRID
from . import figures, markup
from .labels import Words, number, plain
from .markup import Section
from .measures import claimed_sigma, slopes, weighted_median
from .remarks import messages_list, say_message
from .results import JobResult
from .surface_maps import FINDING_NAMES, class_name, findings_map, slope_picture

_DUPLICATES_SHOWN = 20
_FINDINGS_SHOWN = 50
_CROSSING_RULES = {
    CrossingRule.REFUSE: QT_TRANSLATE_NOOP(
        "core", "Rule: the mean of the two heights; a larger difference than the tolerance would have been refused."
    ),
    CrossingRule.MEAN: QT_TRANSLATE_NOOP("core", "Rule: the mean of the two heights, however much they differ."),
    CrossingRule.FIRST: QT_TRANSLATE_NOOP("core", "Rule: the height of the line that comes first."),
}
_EDIT_NAMES = {
    "swap_edge": QT_TRANSLATE_NOOP("core", "edge swapped"),
    "remove_triangle": QT_TRANSLATE_NOOP("core", "triangle removed"),
    "add_triangle": QT_TRANSLATE_NOOP("core", "triangle added"),
    "move_point": QT_TRANSLATE_NOOP("core", "height of a point changed"),
    "add_point": QT_TRANSLATE_NOOP("core", "point added"),
    "force_edge": QT_TRANSLATE_NOOP("core", "edges forced"),
    "drop_triangles": QT_TRANSLATE_NOOP("core", "triangles in a polygon dropped"),
}


def findings_section(result: JobResult, words: Words) -> Section:
    say, findings, title = words, result.findings, words(QT_TRANSLATE_NOOP("core", "Places to look at"))
    if not findings:
        text = QT_TRANSLATE_NOOP(
            "core",
            "The surface was searched for level spots, gaps in lines, ground where nothing was recorded, spikes, and "
            "points beside lines at another height: none were found.",
        )
        return "findings", title, markup.paragraph(say(text))
    text = QT_TRANSLATE_NOOP(
        "core",
        "What a surveyor would look at again before handing this surface on. Each may be right: the ground decides, "
        "and nothing was changed.",
    )
    shown = findings[:_FINDINGS_SHOWN]
    picture = findings_map(result.surface.tin, findings, len(shown), say)
    alt = QT_TRANSLATE_NOOP("core", "Map of the {count} places to look at over the shaded surface, by kind and number.")
    caption = QT_TRANSLATE_NOOP("core", "Places to look at, numbered as in the table.")
    body = markup.paragraph(say(text))
    body += markup.figure(picture.uri, say(alt, count=number(len(findings))), say(caption))
    unit = plan_unit(result.crs)
    rows = [
        (
            str(k),
            say(FINDING_NAMES[f.kind]),
            number(f.easting / unit.metres, 2),
            number(f.northing / unit.metres, 2),
            _value(f, say),
            say_message(f.message, say),
        )
        for k, f in enumerate(shown, 1)
    ]
    head = [
        say(QT_TRANSLATE_NOOP("core", "No.")),
        say(QT_TRANSLATE_NOOP("core", "What")),
        say(QT_TRANSLATE_NOOP("core", "Easting ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Northing ({unit})"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Value")),
        say(QT_TRANSLATE_NOOP("core", "In words")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Findings by kind, the greatest value first: {shown} of {count}")
    name = say(caption, shown=number(len(shown)), count=number(len(findings)))
    return "findings", title, body + markup.table(name, head, rows, "hwnnnw")


def _value(finding: Finding, say: Words) -> str:
    value, unit = say.units.told(finding.value, finding.unit)
    return f"{number(value, 2)} {unit}"


def surface_section(result: JobResult, words: Words) -> Section:
    say, tin, report = words, result.surface.tin, result.surface.report
    unit, height = plan_unit(result.crs), result.shown_height_unit
    slope = slopes(tin)
    middle = weighted_median(slope, tin.plan_areas())
    square = f"{unit.symbol}²"
    rows = [
        (say(QT_TRANSLATE_NOOP("core", "points that shape it")), number(report.points_used)),
        (say(QT_TRANSLATE_NOOP("core", "points kept out")), number(report.points_rejected)),
        (say(QT_TRANSLATE_NOOP("core", "vertices")), number(report.vertices)),
        (say(QT_TRANSLATE_NOOP("core", "triangles")), number(report.triangles)),
        (say(QT_TRANSLATE_NOOP("core", "triangles outside the boundary or in voids")), number(report.outside)),
        (say(QT_TRANSLATE_NOOP("core", "triangles taken off the rim")), number(report.trimmed)),
        *_rim_limits(result.options, say),
        (say(QT_TRANSLATE_NOOP("core", "edges held by breaklines")), number(report.edges.get(LineKind.BREAKLINE, 0))),
        (say(QT_TRANSLATE_NOOP("core", "edges held by boundaries")), number(report.edges.get(LineKind.BOUNDARY, 0))),
        (say(QT_TRANSLATE_NOOP("core", "edges held by voids")), number(report.edges.get(LineKind.VOID, 0))),
        (say(QT_TRANSLATE_NOOP("core", "area in plan")), f"{number(tin.plan_area / unit.metres**2, 1)} {square}"),
        (say(QT_TRANSLATE_NOOP("core", "median slope, by area")), f"{number(100 * middle, 1)} %"),
    ]
    body = markup.facts(say(QT_TRANSLATE_NOOP("core", "The surface (TIN)")), rows)
    body += _duplicates(result, say) + _conflicts(result, say) + _surface_doubt(result, say)
    body += _slopes(result, say) + _edits(result, say) + _thinning(result, say)
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
        "Places recorded more than once (equal to {grid} in plan): {count}. Rule: the surface takes the mean height.",
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
    grid = f"{say.small_plan.plain(GRID)} {say.small_plan.symbol}"
    lead = markup.paragraph(say(text, count=shown["count"], grid=grid))
    return lead + markup.table(say(caption, **shown), head, rows, "nnnnnw")


def _conflicts(result: JobResult, say: Words) -> str:
    """Places where lines cross or meet."""
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
    caption = QT_TRANSLATE_NOOP("core", "Where lines cross or meet and were joined; {shown} of {count}")
    text = say(caption, shown=number(len(rows)), count=number(len(conflicts)))
    return markup.table(text, head, rows, "nnwnwn") + markup.paragraph(say(_CROSSING_RULES[result.options.crossing]))


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
    return markup.paragraph(say(text, sigma=say.small.said(sigma), middle=say.small.said(sigma / math.sqrt(3.0))))


def _rim_limits(options: SurfaceOptions, say: Words) -> List[Tuple[str, str]]:
    """The limits of the rim that were given."""
    limits = (
        (QT_TRANSLATE_NOOP("core", "rim: longest edge allowed"), options.max_rim_edge, say.given),
        (QT_TRANSLATE_NOOP("core", "rim: widest circumcircle allowed (radius)"), options.max_rim_radius, say.given),
        (QT_TRANSLATE_NOOP("core", "rim: the same in distances of the passes"), options.max_rim_passes, plain),
        (
            QT_TRANSLATE_NOOP("core", "rim: widest angle allowed opposite an outer edge"),
            options.max_rim_angle,
            lambda value: f"{plain(value)} °",
        ),
    )
    return [(say(name), told(value)) for name, value, told in limits if value is not None]


def _slopes(result: JobResult, say: Words) -> str:
    """Map and table of the classes of slope."""
    tin, unit = result.surface.tin, plan_unit(result.crs)
    classes = slope_map(tin)
    square, whole = unit.metres**2, float(classes.plan_area.sum())
    rows = [
        (
            class_name(classes, i, say),
            number(classes.plan_area[i] / square, 1),
            number(classes.slope_area[i] / square, 1),
            number(100 * classes.plan_area[i] / whole, 1),
        )
        for i in range(len(classes.plan_area))
    ]
    total = say(QT_TRANSLATE_NOOP("core", "together"))
    rows.append((total, number(whole / square, 1), number(float(classes.slope_area.sum()) / square, 1), number(100, 1)))
    head = [
        say(QT_TRANSLATE_NOOP("core", "Slope")),
        say(QT_TRANSLATE_NOOP("core", "Area in plan ({unit}²)"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Area on the slope ({unit}²)"), unit=unit.symbol),
        say(QT_TRANSLATE_NOOP("core", "Share of the plan (%)")),
    ]
    table = markup.table(say(QT_TRANSLATE_NOOP("core", "Classes of slope")), head, rows, "hnnn")
    picture = slope_picture(tin, classes, say)
    alt = QT_TRANSLATE_NOOP(
        "core", "Map of the slopes in {count} classes, the steeper the darker, with rim and breaklines."
    )
    caption = QT_TRANSLATE_NOOP("core", "Slope of the triangles; a slope on a limit belongs to the flatter class.")
    return markup.figure(picture.uri, say(alt, count=number(len(classes.plan_area))), say(caption)) + table


def _edits(result: JobResult, say: Words) -> str:
    """The edits by hand and what became of them."""
    if not result.edits:
        return ""
    told = {message.values.get("number"): say_message(message, say) for message in result.edited.messages}
    applied = set(result.edited.applied)
    yes, no = say(QT_TRANSLATE_NOOP("core", "applied")), say(QT_TRANSLATE_NOOP("core", "not applied"))
    rows = [
        (str(k), say(_EDIT_NAMES[kind_of(edit)]), edit.note, yes if k in applied else no, told.get(k, ""))
        for k, edit in enumerate(result.edits, 1)
    ]
    head = [
        say(QT_TRANSLATE_NOOP("core", "No.")),
        say(QT_TRANSLATE_NOOP("core", "Edit")),
        say(QT_TRANSLATE_NOOP("core", "Note")),
        say(QT_TRANSLATE_NOOP("core", "Outcome")),
        say(QT_TRANSLATE_NOOP("core", "Remark")),
    ]
    caption = QT_TRANSLATE_NOOP("core", "Edits by hand from {file}: {applied} of {count} applied")
    said = {"applied": number(len(applied)), "count": number(len(rows)), "file": PurePath(result.edits_file).name}
    return markup.table(say(caption, **said), head, rows, "hwwww")


def _thinning(result: JobResult, say: Words) -> str:
    thinned = result.thinned
    if thinned is None:
        return ""
    unit = plan_unit(result.crs)
    place = QT_TRANSLATE_NOOP("core", "{off}, at E {easting} N {northing}")
    worst = say(
        place,
        off=say.small.said(thinned.largest_difference),
        easting=number(thinned.easting / unit.metres, 3),
        northing=number(thinned.northing / unit.metres, 3),
    )
    rows = [
        (say(QT_TRANSLATE_NOOP("core", "vertices kept")), number(len(thinned.tin.vertices))),
        (say(QT_TRANSLATE_NOOP("core", "triangles")), number(len(thinned.tin.triangles))),
        (say(QT_TRANSLATE_NOOP("core", "tolerance in height")), say.small.said(thinned.tolerance)),
        (say(QT_TRANSLATE_NOOP("core", "largest difference found")), worst),
        (say(QT_TRANSLATE_NOOP("core", "root mean square of all differences")), say.small.said(thinned.rms_difference)),
    ]
    text = QT_TRANSLATE_NOOP(
        "core",
        "Differences are those at all {count} vertices of the full surface, checked on the finished one. Rim and "
        "breaklines are kept as they are.",
    )
    body = markup.facts(say(QT_TRANSLATE_NOOP("core", "The thinned surface")), rows)
    return body + markup.paragraph(say(text, count=number(result.surface.report.vertices)))
