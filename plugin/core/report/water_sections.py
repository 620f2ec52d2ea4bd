"""Water for people: ways, ponds, catchments and peak flows as HTML, for the report and for pages of their own."""

from __future__ import annotations

from typing import List, Sequence, Tuple

import numpy as np

from ..drainage.catchments import Outlet
from ..drainage.flow import Flow
from ..drainage.inlet_list import Inlet
from ..drainage.ponds import PondOptions, Ponds
from ..drainage.rational import PeakFlows
from ..drainage.shares import pond_name
from ..drainage.steps import PathEnd
from ..drainage.study import Hollows, WaterStudy
from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.tin import Tin
from ..units import LengthUnit
from . import markup
from .labels import NOT_KNOWN, Words, number, significant
from .water_maps import catchments_map, flow_map, ponds_map

CAUTIONS = (
    QT_TRANSLATE_NOOP(
        "core",
        "This shows where water runs on the surface as surveyed. It is no drainage design: pipes, infiltration, ground "
        "beyond the survey and what was not measured are not in it.",
    ),
    QT_TRANSLATE_NOOP(
        "core",
        "Local codes and licensed practice decide on drainage, and on where water may be led: turning it onto a "
        "neighbour's ground is a legal matter in most places.",
    ),
)
METHOD = (
    QT_TRANSLATE_NOOP(
        "core",
        "Water takes the steepest way down on the triangles themselves, not on a grid: along the gradient across a "
        "triangle, along an edge into which both its triangles fall, and on level ground the shortest way along edges "
        "to where it goes down (after S. Yu, M. van Kreveld and J. Snoeyink, “Drainage queries in TINs: from local to "
        "global and back again”, 1996).",
    ),
    QT_TRANSLATE_NOOP(
        "core",
        "Catchments are bounded by lines of steepest descent and found exactly, so their areas add up to that of the "
        "surface. Areas and volumes of ponds are exact on the triangles.",
    ),
    QT_TRANSLATE_NOOP(
        "core",
        "A hollow counts as a pond when the noise of the heights, with a standard deviation of {sigma}, makes one "
        "like it anywhere in the survey with a probability below {chance} %, and it is at least {depth} deep. This "
        "takes errors as independent; what neighbours share, as one bad fix over a minute, can make a wider hollow.",
    ),
)
RATIONAL = QT_TRANSLATE_NOOP(
    "core",
    "Peak flows by the rational method, Q = C i A (E. Kuichling, “The relation between the rainfall and the discharge "
    "of sewers in populous districts”, Transactions of the American Society of Civil Engineers 20, 1889), with an "
    "intensity of {intensity} {unit}. They hold as far as the coefficients, the intensity and its duration do, which "
    "were given, not found here; they are an indication.",
)
TO_WHAT = {
    Outlet.PIT: QT_TRANSLATE_NOOP("core", "a single pit"),
    Outlet.POND: QT_TRANSLATE_NOOP("core", "a pond"),
    Outlet.INLET: QT_TRANSLATE_NOOP("core", "an inlet"),
    Outlet.RIM_VERTEX: QT_TRANSLATE_NOOP("core", "an outlet on the rim"),
    Outlet.RIM: QT_TRANSLATE_NOOP("core", "the rest of the rim"),
    Outlet.UNDECIDED: QT_TRANSLATE_NOOP("core", "undecided"),
}
HOLLOW_RULES = {
    Hollows.PONDS_KEEP: QT_TRANSLATE_NOOP(
        "core", "Here ponds keep their water, and hollows that noise explains let it pass as if they were full."
    ),
    Hollows.ALL_FULL: QT_TRANSLATE_NOOP(
        "core", "Here all ponds are full: water runs on over them to the rim or an inlet."
    ),
    Hollows.PITS_KEEP: QT_TRANSLATE_NOOP("core", "Here water stays in every pit, those of noise too."),
}
ROWS_SHOWN = 60


def water_body(study: WaterStudy, words: Words) -> str:
    """All about the water of a site: ways, ponds, catchments, flat ground, peak flows, method and cautions."""
    words = words.on(study.tin.crs)
    html = markup.caution([words(text) for text in CAUTIONS])
    html += _ways(study, words)
    html += ponds_body(study.flow, study.ponds, study.shores, study.inlets, words)
    html += _catchments(study, words) + _flat(study, words)
    return html + method_body(study.options.ponds, study.tin, words, study.peaks)


def _ways(study: WaterStudy, words: Words) -> str:
    unit = plan_unit(study.tin.crs)
    picture = flow_map(study, words)
    alt = QT_TRANSLATE_NOOP(
        "core", "Map of {paths} paths of water, channels, ponds and inlets over the shaded surface."
    )
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Ways of water from places {spacing} {unit} apart; channels where more than {channel} {unit}² drain. Relief "
        "shaded from the north-west, heights exaggerated {times} times for the shading only.",
    )
    said = {
        "spacing": significant(study.spacing / unit.metres),
        "channel": number(study.options.channel / unit.metres**2),
        "unit": unit.symbol,
        "times": number(picture.exaggeration),
    }
    ends = study.paths.end
    on = int(np.count_nonzero(ends != PathEnd.OUTSIDE))
    text = QT_TRANSLATE_NOOP(
        "core",
        "Of {count} places on the surface the water of {rim} leaves over the rim, of {inlets} comes to an inlet, and "
        "of {stay} stays in a pond or pit.",
    )
    counts = {
        "count": number(on),
        "rim": number(int(np.count_nonzero(ends == PathEnd.RIM))),
        "inlets": number(int(np.count_nonzero(ends == PathEnd.INLET))),
        "stay": number(int(np.count_nonzero(ends == PathEnd.PIT))),
    }
    html = markup.paragraph(f"{words(text, **counts)} {words(HOLLOW_RULES[study.options.hollows])}")
    return html + markup.figure(picture.uri, words(alt, paths=number(on)), words(caption, **said))


def ponds_body(
    flow: Flow, ponds: Ponds, shores: Sequence[Sequence[np.ndarray]], inlets: Sequence[Inlet], words: Words
) -> str:
    """The ponds as HTML: a sentence, a map, a table with depths, volumes and how sure they are."""
    pits = number(len(flow.pits))
    if not len(ponds):
        text = QT_TRANSLATE_NOOP(
            "core", "There is no pond: noise explains every one of the {pits} pits, or they are shallower than asked."
        )
        return markup.paragraph(words(text, pits=pits))
    words = words.on(flow.tin.crs)
    unit, rise = plan_unit(flow.tin.crs), height_unit(flow.tin.crs)
    text = QT_TRANSLATE_NOOP(
        "core",
        "Ponds that noise does not explain: {count}, of {pits} pits. Full, they hold {volume} {unit}³ under {area} "
        "{unit}² of water.",
    )
    outer = ponds.outermost
    said = {
        "pits": pits,
        "count": number(len(ponds)),
        "volume": volume_text(float(ponds.volume[outer].sum()), unit),
        "area": number(float(ponds.area[outer].sum()) / unit.metres**2, 1),
        "unit": unit.symbol,
    }
    picture = ponds_map(flow, ponds, shores, inlets, words)
    alt = QT_TRANSLATE_NOOP("core", "Map of {count} ponds by depth with pits, spill points and where they spill to.")
    caption = QT_TRANSLATE_NOOP("core", "Ponds when full, by depth, with the way of the overflow.")
    html = markup.paragraph(words(text, **said))
    html += markup.figure(picture.uri, words(alt, count=number(len(ponds))), words(caption))
    rows = []
    for i in range(min(len(ponds), ROWS_SHOWN)):
        parent = int(ponds.parent[i])
        rows.append(
            (
                pond_name(i),
                pond_name(parent) if parent >= 0 else NOT_KNOWN,
                f"{number(ponds.depth[i] / rise.metres, 3)} ± {number(ponds.depth_sigma[i] / rise.metres, 3)}",
                _chance(float(ponds.chance[i])),
                number(ponds.area[i] / unit.metres**2, 1),
                volume_text(ponds.volume[i], unit),
                number(ponds.level[i] / rise.metres, 2),
                _spills_to(ponds, i, inlets, words),
            )
        )
    head = [
        words(QT_TRANSLATE_NOOP("core", "Pond")),
        words(QT_TRANSLATE_NOOP("core", "Part of")),
        words(QT_TRANSLATE_NOOP("core", "Depth ± 1 sigma ({unit})"), unit=rise.symbol),
        words(QT_TRANSLATE_NOOP("core", "Chance of noise (%)")),
        words(QT_TRANSLATE_NOOP("core", "Area ({unit}²)"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Volume ({unit}³)"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Level ({unit})"), unit=rise.symbol),
        words(QT_TRANSLATE_NOOP("core", "Spills to")),
    ]
    name = QT_TRANSLATE_NOOP("core", "Ponds, the deepest first: {shown} of {count}")
    title = words(name, shown=number(len(rows)), count=number(len(ponds)))
    return html + markup.table(title, head, rows, "hwnnnnnw")


def volume_text(cubic_metres: float, unit: LengthUnit) -> str:
    """In the unit of the plan; two decimals of a cubic metre, one of a cubic foot."""
    return number(cubic_metres / unit.metres**3, 2 if unit is LengthUnit.METRE else 1)


def _chance(chance: float) -> str:
    return "< 0.01" if chance < 1e-4 else significant(100 * chance)


def _spills_to(ponds: Ponds, i: int, inlets: Sequence[Inlet], words: Words) -> str:
    if ponds.spills_to[i] >= 0:
        return pond_name(int(ponds.spills_to[i]))
    if ponds.spill_end[i] == PathEnd.INLET:
        return inlets[ponds.inlet[i]].name
    return words(QT_TRANSLATE_NOOP("core", "the rim"))


def _catchments(study: WaterStudy, words: Words) -> str:
    tin, shares = study.tin, study.shares
    unit = plan_unit(tin.crs)
    square = unit.metres**2
    picture = catchments_map(study, words)
    alt = QT_TRANSLATE_NOOP("core", "Map of {count} catchments with channels and ridges.")
    caption = QT_TRANSLATE_NOOP(
        "core",
        "Catchments; {merged} outlets on the rim that drain less than {least} {unit}² each are counted with the rest "
        "of the rim, which has no name here.",
    )
    said = {"merged": number(shares.merged), "least": number(study.options.min_outlet / square), "unit": unit.symbol}
    html = markup.figure(picture.uri, words(alt, count=number(len(shares))), words(caption, **said))
    nowhere = QT_TRANSLATE_NOOP(
        "core",
        "{area} {unit}², {share} % of the site, drain nowhere: their water stays in a pond or pit until that is full.",
    )
    if study.nowhere <= 0:
        nowhere = QT_TRANSLATE_NOOP("core", "No ground drains nowhere: all water comes to the rim or to an inlet.")
    share = number(100 * study.nowhere / tin.plan_area, 1)
    html += markup.paragraph(words(nowhere, area=number(study.nowhere / square, 1), share=share, unit=unit.symbol))
    return html + _catchment_table(study, words)


def _catchment_table(study: WaterStudy, words: Words) -> str:
    """Rows that add up to the site; all of them, the smallest together where there are very many."""
    tin, shares, peaks = study.tin, study.shares, study.peaks
    unit = plan_unit(tin.crs)
    square = unit.metres**2
    shown = min(len(shares), ROWS_SHOWN)

    def row(name: str, what: str, area: float, nowhere: float, more: Tuple[str, ...]) -> Tuple[str, ...]:
        return (
            name, what, number(area / square, 1), number(100 * area / tin.plan_area, 2), number(nowhere / square, 1),
            *more,
        )  # fmt: skip

    rows: List[Tuple[str, ...]] = [
        row(
            shares.name[i] or NOT_KNOWN, words(TO_WHAT[Outlet(int(shares.outlet[i]))]), float(shares.area[i]),
            float(shares.nowhere[i]), _peak_cells(peaks, i),
        )
        for i in range(shown)
    ]  # fmt: skip
    blank = ("", "") if peaks is not None else ()
    if shown < len(shares):
        text = QT_TRANSLATE_NOOP("core", "{count} smaller ones")
        rest = float(shares.area[shown:].sum()), float(shares.nowhere[shown:].sum())
        rows.append(row(words(text, count=number(len(shares) - shown)), "", *rest, blank))
    total = words(QT_TRANSLATE_NOOP("core", "whole site"))
    rows.append(row(total, "", float(shares.area.sum()), study.nowhere, blank))
    head = [
        words(QT_TRANSLATE_NOOP("core", "Catchment")),
        words(QT_TRANSLATE_NOOP("core", "Drains to")),
        words(QT_TRANSLATE_NOOP("core", "Area ({unit}²)"), unit=unit.symbol),
        words(QT_TRANSLATE_NOOP("core", "Share of the site (%)")),
        words(QT_TRANSLATE_NOOP("core", "Of it drains nowhere ({unit}²)"), unit=unit.symbol),
    ]
    if peaks is not None:
        head.append(words(QT_TRANSLATE_NOOP("core", "Runoff coefficient")))
        head.append(words(QT_TRANSLATE_NOOP("core", "Peak flow ({unit})"), unit=peaks.units.flow))
    title = words(QT_TRANSLATE_NOOP("core", "Catchments, the largest first"))
    return markup.table(title, head, rows, "hwnnn" + ("nn" if peaks is not None else ""))


def _peak_cells(peaks: object, i: int) -> Tuple[str, ...]:
    if not isinstance(peaks, PeakFlows):
        return ()
    return number(peaks.coefficient[i], 2), significant(peaks.flow[i])


def _flat(study: WaterStudy, words: Words) -> str:
    unit, options = plan_unit(study.tin.crs), study.options
    total = sum(area.plan_area for area in study.flat)
    text = QT_TRANSLATE_NOOP(
        "core",
        "{count} areas of at least {least} {unit}², together {area} {unit}², fall less than {limit} % in the mean over "
        "{window} {unit}.",
    )
    said = {
        "count": number(len(study.flat)),
        "least": number(options.flat_area / unit.metres**2),
        "area": number(total / unit.metres**2, 1),
        "limit": number(100 * options.flat_limit, 1),
        "window": number(options.flat_window / unit.metres, 1),
        "unit": unit.symbol,
    }
    return markup.paragraph(words(text, **said))


def method_body(options: PondOptions, tin: Tin, words: Words, peaks: object = None) -> str:
    """How it was found, and after whom."""
    rise, words = height_unit(tin.crs), words.on(tin.crs)
    sigma = np.asarray(options.sigma, float)
    known = sigma[np.isfinite(sigma)]
    said = {
        "sigma": words.small.said(float(np.median(known))) if known.size else NOT_KNOWN,
        "chance": number(100 * options.max_chance, 1),
        "depth": f"{number(options.min_depth / rise.metres, 3)} {rise.symbol}",
    }
    told = [words(text, **said) for text in METHOD]
    if isinstance(peaks, PeakFlows):
        told.append(words(RATIONAL, intensity=significant(peaks.intensity, 3), unit=peaks.units.intensity))
    return markup.paragraph(words(QT_TRANSLATE_NOOP("core", "How this was found:"))) + markup.bullets(told)
