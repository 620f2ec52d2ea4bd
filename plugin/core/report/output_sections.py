"""The sections of the report about what was made: contours, surface, files, and what they are worth."""

from __future__ import annotations

import math
import re
from typing import List, Optional

import numpy as np

from ..contours.sheet import Sheet
from ..contours.spots import find_spots
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP, message
from ..progress import Progress, part, silent
from ..quality.interval import NO_BASIS
from . import figures, markup
from .labels import Words, level_decimals, number, plain, significant
from .markup import Section
from .measures import claimed_sigma, plan_length, slopes, weighted_median
from .remarks import messages_list, say_message
from .results import JobResult

_LEVELS_SHOWN = 80
#: What the files of a job hold, by their names; * stands for what a volume is taken against, or for a visit.
FILES = {
    "contours.geojson": QT_TRANSLATE_NOOP("core", "contour lines with level, index and depression; exact"),
    "contours_sheet.geojson": QT_TRANSLATE_NOOP("core", "the same finished for the sheet; for drawing only"),
    "labels.geojson": QT_TRANSLATE_NOOP("core", "labels of the index contours, for a sheet at 1 : {scale}"),
    "spots.geojson": QT_TRANSLATE_NOOP("core", "spot heights at summits, pits and saddles"),
    "surface.2dm": QT_TRANSLATE_NOOP("core", "the surface as a mesh"),
    "surface.prj": QT_TRANSLATE_NOOP("core", "the coordinate system of the mesh"),
    "surface.noise.json": QT_TRANSLATE_NOOP("core", "how well the heights of the mesh repeat, for tools that read it"),
    "surface_thin.2dm": QT_TRANSLATE_NOOP("core", "the thinned surface as a mesh"),
    "surface_thin.noise.json": QT_TRANSLATE_NOOP("core", "how well its heights repeat"),
    "surface_thin.prj": QT_TRANSLATE_NOOP("core", "its coordinate system"),
    "dem.asc": QT_TRANSLATE_NOOP("core", "heights of the surface on a grid (DEM) of {columns} x {rows} cells"),
    "dem.prj": QT_TRANSLATE_NOOP("core", "its coordinate system"),
    "surface.xml": QT_TRANSLATE_NOOP("core", "surface, its lines and the points used, in LandXML 1.2"),
    "surface.dxf": QT_TRANSLATE_NOOP("core", "a drawing of faces, lines, contours and points (DXF)"),
    "points.csv": QT_TRANSLATE_NOOP("core", "every point with its status and reasons"),
    "tolerances.json": QT_TRANSLATE_NOOP("core", "the tolerances of single points; edit them for --tolerances"),
    "survey_findings.csv": QT_TRANSLATE_NOOP("core", "what the checks found: points, size, reasons, place"),
    "rejects.csv": QT_TRANSLATE_NOOP("core", "rejected lines with their reasons"),
    "places_to_walk.csv": QT_TRANSLATE_NOOP("core", "places to walk again, for the data collector"),
    "pad.2dm": QT_TRANSLATE_NOOP("core", "the graded pads with their slopes as a mesh"),
    "pad.prj": QT_TRANSLATE_NOOP("core", "its coordinate system"),
    "pad_finished.2dm": QT_TRANSLATE_NOOP("core", "all of the ground with the pads in it as a mesh"),
    "pad_finished.prj": QT_TRANSLATE_NOOP("core", "its coordinate system"),
    "daylight.geojson": QT_TRANSLATE_NOOP("core", "lines where the slopes of the pads meet the ground"),
    "pad_lines.geojson": QT_TRANSLATE_NOOP("core", "edges and breaks of the pads and their slopes, by kind"),
    "findings.csv": QT_TRANSLATE_NOOP("core", "places of the surface to look at"),
    "flow_paths.geojson": QT_TRANSLATE_NOOP("core", "paths of the water and its channels"),
    "ponds.geojson": QT_TRANSLATE_NOOP("core", "ponds with depth, volume and where they spill to"),
    "catchments.geojson": QT_TRANSLATE_NOOP("core", "catchments with their areas"),
    "surface_visit_*.2dm": QT_TRANSLATE_NOOP("core", "the surface of one visit alone, to be compared"),
    "surface_visit_*.prj": QT_TRANSLATE_NOOP("core", "its coordinate system"),
    "surface_visit_*.noise.json": QT_TRANSLATE_NOOP("core", "how well its heights repeat"),
    "points_visit_*.csv": QT_TRANSLATE_NOOP("core", "every point of a later visit with its status and reasons"),
    "rejects_visit_*.csv": QT_TRANSLATE_NOOP("core", "its rejected lines with their reasons"),
    "survey_findings_visit_*.csv": QT_TRANSLATE_NOOP("core", "what the checks found in it"),
    "volumes_*.csv": QT_TRANSLATE_NOOP("core", "cut, fill and net with their doubt"),
    "depths_*.geojson": QT_TRANSLATE_NOOP("core", "ground by depth of cut and fill"),
    "zero_line_*.geojson": QT_TRANSLATE_NOOP("core", "lines along which there is no cut and no fill"),
    "storage.csv": QT_TRANSLATE_NOOP("core", "area and volume of the basin by level"),
    "heights_differ.csv": QT_TRANSLATE_NOOP("core", "same places of several files whose heights differ"),
    "names_twice.csv": QT_TRANSLATE_NOOP("core", "names that stand in more than one file"),
    "residuals.csv": QT_TRANSLATE_NOOP("core", "residuals at the control points"),
    "profile.csv": QT_TRANSLATE_NOOP("core", "heights, grades and crossfalls at the stations of the road"),
    "sections.csv": QT_TRANSLATE_NOOP("core", "offsets and heights of its cross-sections"),
    "checks.csv": QT_TRANSLATE_NOOP("core", "its stretches against the limits, with verdicts"),
    "profile.pdf": QT_TRANSLATE_NOOP("core", "its profile to scale"),
    "sections.pdf": QT_TRANSLATE_NOOP("core", "its cross-sections to scale"),
}


# Contours


def contours_section(result: JobResult, words: Words, progress: Progress = silent) -> Section:
    say, contours = words, result.contours
    unit, height = plan_unit(result.crs), result.shown_height_unit
    options = contours.options
    sheet, tin = result.sheet, result.surface.tin
    drawn = contours if sheet is None else sheet.contours
    least = options.interval * height.metres
    spots = find_spots(tin, least, part(progress, 0.0, 0.5)) if sheet is None else sheet.spots
    picture = figures.site_map(tin, drawn, spots, say, part(progress, 0.5, 1.0))
    alt = QT_TRANSLATE_NOOP(
        "core",
        "Map of {count} contour lines every {interval} {unit} over the shaded surface, with their heights, spot "
        "heights, rim and breaklines.",
    )
    caption = QT_TRANSLATE_NOOP(
        "core", "Contours every {interval} {unit}, index contours every {index} {unit}. "
        "Relief shaded from the north-west, heights exaggerated {times} times for the shading only."
    )  # fmt: skip
    interval = plain(options.interval)
    body = markup.figure(
        picture.uri,
        say(alt, count=number(len(drawn)), interval=interval, unit=height.symbol),
        say(
            caption,
            interval=interval,
            index=plain(options.interval * options.index_every),
            unit=height.symbol,
            times=number(picture.exaggeration),
        ),
    )
    body += _sheet_shift(sheet, say) + _contour_doubt(result, say) + _interval_doubt(result, say)
    body += _levels_table(result, say, unit.symbol, unit.metres)
    return "contours", say(QT_TRANSLATE_NOOP("core", "Contours")), body


def _sheet_shift(sheet: Optional[Sheet], say: Words) -> str:
    """How far the drawn contours are off the exact ones."""
    if sheet is None:
        text = QT_TRANSLATE_NOOP("core", "The map shows the exact contours, which are not smoothed.")
        return markup.paragraph(say(text))
    text = QT_TRANSLATE_NOOP(
        "core",
        "The map shows the contours of the sheet: heights were moved by at most {moved} (allowed: {calm}) and then "
        "lines by at most {shifted} in plan (allowed: {smooth}). No line crosses another or a breakline. They are "
        "for drawing only; lengths, areas and the table below are of the exact contours.",
    )
    options = sheet.options
    said = {"moved": say.small.said(sheet.moved), "calm": say.small.said(options.calm or 0.0)}
    said.update(shifted=say.length(sheet.shifted, 3), smooth=say.given(options.smooth))
    return markup.paragraph(say(text, **said))


def _contour_doubt(result: JobResult, say: Words) -> str:
    """How far noise moves a contour."""
    sigma, tin = claimed_sigma(result), result.surface.tin
    if not math.isfinite(sigma):
        return ""
    unit = plan_unit(result.crs)
    slope = weighted_median(slopes(tin), tin.plan_areas())
    html = ""
    if slope > 0:
        text = QT_TRANSLATE_NOOP(
            "core",
            "Noise moves a contour sideways by the noise of the height over the slope: at the median slope of "
            "{slope} % a standard deviation of {shift} {unit}; on flatter ground more.",
        )
        shift = significant(sigma / slope / unit.metres)
        html = markup.paragraph(say(text, slope=number(100 * slope, 1), shift=shift, unit=unit.symbol))
    return html


def _interval_doubt(result: JobResult, say: Words) -> str:
    """Whether the interval drawn is one that the survey supports."""
    supported = result.quality.interval
    if supported is None:
        return markup.paragraph(say_message(message(NO_BASIS), say))
    height, interval = result.shown_height_unit, result.contours.options.interval
    html = "".join(markup.paragraph(say_message(said, say)) for said in supported.messages[:1])
    if interval * height.metres >= supported.interval:
        text = QT_TRANSLATE_NOOP("core", "By that rule the survey supports the interval of {interval} {unit}.")
    else:
        text = QT_TRANSLATE_NOOP(
            "core", "The interval of {interval} {unit} is finer than the survey can support. Choose a larger one."
        )
    return html + markup.paragraph(say(text, interval=plain(interval), unit=height.symbol))


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


def kind_of_file(name: str) -> str:
    """The name of a file as :data:`FILES` has it."""
    return re.sub(r"_(against|since|level|visit)(_\d+)?(?=\.)", lambda found: "_visit_*" if found[2] else "_*", name)


def files_section(result: JobResult, words: Words) -> Section:
    said = {}
    if result.sheet is not None:
        said["scale"] = plain(result.sheet.options.scale)
    if result.dem is not None:
        said.update(columns=number(result.dem.columns), rows=number(result.dem.rows))
    rows = [
        (
            one.path.name,
            words(FILES.get(kind_of_file(one.path.name), ""), **said),
            number(one.size),
            one.sha256,
        )
        for one in result.handed_over
    ]
    head = [
        words(QT_TRANSLATE_NOOP("core", "File")),
        words(QT_TRANSLATE_NOOP("core", "Holds")),
        words(QT_TRANSLATE_NOOP("core", "Size (bytes)")),
        "SHA-256",
    ]
    body = ""
    if rows:
        text = QT_TRANSLATE_NOOP(
            "core",
            "A file with another SHA-256 than here was changed afterwards; checksums.sha256 is the same list for "
            "programs that check it.",
        )
        body += markup.paragraph(words(text))
        body += markup.table(words(QT_TRANSLATE_NOOP("core", "Files handed over")), head, rows, "hwnt")
    body += messages_list(result.file_messages, words)
    return "files", words(QT_TRANSLATE_NOOP("core", "Files")), body


def method_section(result: JobResult, words: Words) -> Section:
    texts = [
        QT_TRANSLATE_NOOP(
            "core",
            "Plan coordinates are whole tenths of a millimetre; which points form triangles is decided on these whole "
            "numbers exactly. Heights are never rounded. Where rounding could decide, bounds of J. R. Shewchuk (1997, "
            "“Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates”) tell when whole "
            "numbers must.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "The surface is the Delaunay triangulation of the used points; lines that it must hold to are edges of it "
            "(constrained Delaunay triangulation), with no points added along them but where lines cross. Tiles of "
            "points are triangulated by Qhull, joined, and corrected by Lawson's flips until every edge is right. "
            "Between points the surface is plane.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "Spikes: points off the plane through their neighbours by several times the scatter of the survey, "
            "estimated from the median of absolute residuals (Rousseeuw and Croux 1993). The limits of all findings "
            "are this program's own choice, from no standard.",
        ),
        QT_TRANSLATE_NOOP("core", "Contours are exact on that surface. Ground exactly at a level counts as above it."),
        QT_TRANSLATE_NOOP(
            "core",
            "Spot heights: summits, pits and saddles by T. Banchoff (1967, “Critical points and curvature for embedded "
            "polyhedra”); shown is what stands out by an interval or more.",
        ),
        QT_TRANSLATE_NOOP(
            "core",
            "Accuracy: FGDC-STD-007.3-1998 (NSSDA) and ASPRS Positional Accuracy Standards, edition 2 (2023). Empty "
            "circles: G. Toussaint (1983, “Computing largest empty circles with location constraints”).",
        ),
        *_optional_methods(result),
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


def _optional_methods(result: JobResult) -> List[str]:
    """Methods that were used only because the user asked for what they make."""
    texts = []
    if result.check is not None:
        texts.append(
            QT_TRANSLATE_NOOP(
                "core",
                "Automatic checks: noise from the scatter about cubics through neighbouring points; offsets of "
                "stretches of the walk by iteratively reweighted least squares over all places where passes meet or "
                "run side by side; intervals of sigmas by chi-square. Limits are this program's own choice.",
            )
        )
    if result.options.max_rim_radius is not None:
        texts.append(
            QT_TRANSLATE_NOOP(
                "core",
                "Hollow outline: what is left is the alpha shape of Edelsbrunner, Kirkpatrick and Seidel (1983).",
            )
        )
    if result.sheet is not None:
        texts.append(
            QT_TRANSLATE_NOOP(
                "core",
                "Contours of the sheet: low-pass filter of G. Taubin (1995, “A signal processing approach to fair "
                "surface design”), for heights with the weights of U. Pinkall and K. Polthier (1993); lines are then "
                "drawn as Bézier curves inside corridors that do not meet.",
            )
        )
    if result.thinned is not None:
        texts.append(
            QT_TRANSLATE_NOOP(
                "core",
                "Thinning: greedy insertion by M. Garland and P. S. Heckbert (1995, “Fast Polygonal Approximation of "
                "Terrains and Height Fields”), many points a round.",
            )
        )
    if result.dem is not None:
        texts.append(QT_TRANSLATE_NOOP("core", "DEM: the plane of the triangle under each cell's centre."))
    return texts


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
