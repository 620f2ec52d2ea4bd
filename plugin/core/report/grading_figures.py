"""The report's figures of a graded design: plan, sections, mass diagram, volumes by height (see :mod:`.drawing`)."""

from __future__ import annotations

import math
from typing import Any, Dict, List, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.collections import LineCollection, PolyCollection
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.patheffects import withStroke

from ..confidence import NORMAL_95
from ..earthwork.design_lines import DESIGN_LINE_NAMES, DesignLineKind
from ..earthwork.graded_site import GradedSite
from ..earthwork.grading import CUT_SLOPE, FILL_SLOPE, PLATFORM
from ..earthwork.grading_study import BalanceStudy, DesignSection
from ..earthwork.haul import MassDiagram
from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.ask import triangle_gradients
from ..surface.chains import edge_chains
from ..surface.locate import locate
from ..surface.parts import connected_parts
from ..surface.tin import Tin
from ..units import LengthUnit
from .depth_colours import CUT, FILL
from .drawing import GREY, INK, ORANGE, PURPLE, STYLE, TEAL, Picture, draw_relief, finish_map, map_axes, png, svg
from .earth_units import EarthUnits
from .labels import Words, nice_step, number, plain
from .room import Room

PLATFORM_NAME = QT_TRANSLATE_NOOP("core", "platform")
CUT_NAME = QT_TRANSLATE_NOOP("core", "slope of cut")
FILL_NAME = QT_TRANSLATE_NOOP("core", "slope of fill")
SECTION_LINE = QT_TRANSLATE_NOOP("core", "section line")
RATIO = QT_TRANSLATE_NOOP("core", "1 : {run}")
LEVEL = QT_TRANSLATE_NOOP("core", "level")
DISTANCE = QT_TRANSLATE_NOOP("core", "Distance ({unit})")
OFFSET = QT_TRANSLATE_NOOP("core", "Offset, right of the line above 0 ({unit})")
HEIGHT = QT_TRANSLATE_NOOP("core", "Height ({unit})")
SHIFT = QT_TRANSLATE_NOOP("core", "Shift of the design ({unit})")
STATION = QT_TRANSLATE_NOOP("core", "Station ({unit})")
VOLUME = QT_TRANSLATE_NOOP("core", "Volume ({unit})")
GROUND = QT_TRANSLATE_NOOP("core", "existing ground")
DESIGN = QT_TRANSLATE_NOOP("core", "design")
CUT_WORD = QT_TRANSLATE_NOOP("core", "cut")
FILL_WORD = QT_TRANSLATE_NOOP("core", "fill")
REST = QT_TRANSLATE_NOOP("core", "left over: cut × factor less fill less surplus")
BALANCED = QT_TRANSLATE_NOOP("core", "balanced height ± 95 %")
MASS = QT_TRANSLATE_NOOP("core", "running balance: usable cut less fill")
EXAGGERATED = QT_TRANSLATE_NOOP("core", "{name}   (heights {times} times)")
BALANCE_POINT = QT_TRANSLATE_NOOP("core", "balance point")

_ZONES = {PLATFORM: ("#d9d9d9", PLATFORM_NAME), CUT_SLOPE: (CUT[1], CUT_NAME), FILL_SLOPE: (FILL[1], FILL_NAME)}
_LINES: Dict[DesignLineKind, Tuple[str, float, Any]] = {
    DesignLineKind.PLATFORM_EDGE: (INK, 1.6, "-"),
    DesignLineKind.PLATFORM_BREAK: (INK, 0.7, "-"),
    DesignLineKind.SLOPE_BREAK: (GREY, 0.5, "-"),
    DesignLineKind.TOP_OF_CUT: (ORANGE, 1.4, (0, (5, 1.5))),
    DesignLineKind.TOE_OF_FILL: (PURPLE, 1.4, (0, (5, 1.5))),
    DesignLineKind.STEEP_END: (TEAL, 1.4, (0, (1, 1))),
}
_TEXT = 7.5  # points
_TICK = 7.0  # points between the ticks that show which way slopes fall
_HALO = 2.2
_SEEN = 1e-3  # metres of depth from which a section shows cut or fill


# Plan


def design_map(site: GradedSite, words: Words) -> Picture:
    """The design over the shaded ground: platform, slopes with ticks downhill and their grades, its lines; PNG."""
    unit = plan_unit(site.design.crs)
    place = site.design.vertices[:, :2] + site.design.origin
    size = float(np.ptp(place, axis=0).max())
    low, high = place.min(axis=0) - 0.12 * size, place.max(axis=0) + 0.12 * size
    with rc_context(STYLE):
        figure, axes = map_axes((low[0], low[1], high[0], high[1]), unit, words, crs=site.design.crs)
        exaggeration = draw_relief(axes, site.ground, unit)
        _draw_zones(axes, site, unit, words)
        _draw_strip(axes, site, unit, words)
        _draw_lines(axes, site, unit, words)
        room = Room(axes)
        _draw_ticks(axes, site, unit, room)
        _draw_axis(axes, site, unit, words)
        _draw_grades(axes, site, unit, room, words)
        finish_map(axes, unit, words)
        return Picture(png(figure), exaggeration)


def _draw_zones(axes: Any, site: GradedSite, unit: LengthUnit, words: Words) -> None:
    corner = (site.design.corners()[:, :, :2] + site.design.origin) / unit.metres
    for zone, (colour, name) in _ZONES.items():
        own = site.zone == zone
        if own.any():
            axes.add_collection(
                PolyCollection(corner[own], facecolors=colour, edgecolors=colour, linewidths=0.2, alpha=0.82, zorder=2),
                autolim=False,
            )
            axes.add_patch(Rectangle((0, 0), 0, 0, facecolor=colour, edgecolor=INK, linewidth=0.5, label=words(name)))


def _draw_lines(axes: Any, site: GradedSite, unit: LengthUnit, words: Words) -> None:
    for kind, (colour, width, style) in _LINES.items():
        own = [line.xyz[:, :2] / unit.metres for line in site.lines if line.kind is kind]
        if own:
            axes.add_collection(
                LineCollection(
                    own, colors=colour, linewidths=width, linestyles=[style], zorder=3,
                    label=words(DESIGN_LINE_NAMES[kind]),
                ),
                autolim=False,
            )  # fmt: skip


def _draw_strip(axes: Any, site: GradedSite, unit: LengthUnit, words: Words) -> None:
    own = [line.xyz[:, :2] / unit.metres for line in site.strip]
    if own:
        colour, width, style = _LINES[DesignLineKind.PLATFORM_BREAK]
        label = words(DESIGN_LINE_NAMES[DesignLineKind.PLATFORM_BREAK])
        axes.add_collection(
            LineCollection(own, colors=colour, linewidths=width, linestyles=[style], label=label, zorder=2.95),
            autolim=False,
        )


def _draw_axis(axes: Any, site: GradedSite, unit: LengthUnit, words: Words) -> None:
    xy = site.axis / unit.metres
    axes.plot(*xy.T, color=TEAL, linewidth=1.1, linestyle=(0, (9, 3, 2, 3)), label=words(SECTION_LINE), zorder=3.5)


def _draw_ticks(axes: Any, site: GradedSite, unit: LengthUnit, room: Room) -> None:
    """Ticks from the upper edge of slopes downhill, long and short in turn (common practice, no source)."""
    tin = site.design
    gradient = triangle_gradients(tin)
    beyond = np.where(tin.neighbours >= 0, site.zone[tin.neighbours], 0)
    step = _TICK / room.points_per_unit * unit.metres
    begins, steps, zones = [np.empty((0, 2))], [np.empty((0, 2))], [np.empty(0, np.int64)]
    for zone, upper in ((CUT_SLOPE, beyond == 0), (FILL_SLOPE, beyond == PLATFORM)):
        triangle, side = np.nonzero(upper & (site.zone == zone)[:, None])
        begin, way = _along(tin, triangle, side, gradient, step)
        begins.append(begin)
        steps.append(way)
        zones.append(np.full(len(begin), zone))
    begin, way, own = np.concatenate(begins), np.concatenate(steps), np.concatenate(zones)
    share = np.zeros(len(begin))
    for part in (0.25, 0.5, 0.75, 1.0):  # no farther than the slope reaches
        at = locate(tin, begin + part * way)
        share = np.where((at >= 0) & (site.zone[at] == own) & (share == part - 0.25), part, share)
    lines = np.stack([begin, begin + share[:, None] * way], axis=1)[share > 0] / unit.metres
    axes.add_collection(LineCollection(list(lines), colors=INK, linewidths=0.5, zorder=2.9), autolim=False)


def _along(
    tin: Tin, triangle: np.ndarray, side: np.ndarray, gradient: np.ndarray, step: float
) -> Tuple[np.ndarray, np.ndarray]:
    """Places (q, 2) every ``step`` metres along edges of triangles, and the way (q, 2) downhill from each."""
    ends = np.stack([tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]], axis=1)
    of = {tuple(sorted(pair)): t for pair, t in zip(ends.tolist(), triangle.tolist())}
    begins: List[np.ndarray] = []
    ways: List[np.ndarray] = []
    for chain in edge_chains(ends):
        xy = tin.vertices[chain, :2] + tin.origin
        at = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
        for k, d in enumerate(np.arange(step / 2, at[-1], step).tolist()):
            i = min(int(np.searchsorted(at, d, "right")) - 1, len(chain) - 2)
            slope = gradient[of[tuple(sorted((chain[i], chain[i + 1])))]]
            steep = float(np.hypot(*slope))
            if steep > 1e-6:
                begins.append(xy[i] + (d - at[i]) / (at[i + 1] - at[i]) * (xy[i + 1] - xy[i]))
                ways.append(-slope / steep * step * (1.5 if k % 2 else 0.75))
    return np.array(begins).reshape(-1, 2), np.array(ways).reshape(-1, 2)


def _draw_grades(axes: Any, site: GradedSite, unit: LengthUnit, room: Room, words: Words) -> None:
    """An arrow downhill with the grade on each slope, and with the fall in per cent on each plane of the platform."""
    gradient = triangle_gradients(site.design)
    corner = site.design.corners()[:, :, :2]
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area = 0.5 * (one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0])
    part = _planes(site, gradient)
    total = np.bincount(part, area)
    for number_of in np.argsort(-total)[:24].tolist():
        own = np.flatnonzero(part == number_of)
        largest = own[np.argmax(area[own])]
        middle = (area[own, None] * corner[own].mean(axis=1)).sum(axis=0) / area[own].sum()
        if not _within(corner[own], middle):
            middle = corner[largest].mean(axis=0)
        xy = (middle + site.design.origin) / unit.metres
        slope = float(np.hypot(*gradient[largest]))
        text = _grade(slope, int(site.zone[largest]), words)
        radius = 0.32 * _TEXT * len(text)
        if total[number_of] / unit.metres**2 * room.points_per_unit**2 < 14 * radius * _TEXT:
            continue
        if not room.free(xy[None], radius)[0]:
            continue
        room.take(xy[None], radius)
        if slope > 1e-6:
            reach = gradient[largest] / slope * 14.0 / room.points_per_unit
            axes.annotate(
                "", xy - reach, xy + reach, zorder=5, annotation_clip=True,
                arrowprops={"arrowstyle": "-|>", "color": INK, "lw": 1.0, "shrinkA": 0, "shrinkB": 0},
            )  # fmt: skip
        axes.annotate(
            text, xy, xytext=(0, 8), textcoords="offset points", ha="center", va="center", fontsize=_TEXT, color=INK,
            zorder=6, annotation_clip=True, path_effects=[withStroke(linewidth=_HALO, foreground="w")],
        )  # fmt: skip


def _planes(site: GradedSite, gradient: np.ndarray) -> np.ndarray:
    """Number (m,) of the plane of one zone that each triangle is part of."""
    tin = site.design
    triangle, side = np.nonzero(tin.neighbours >= 0)
    other = tin.neighbours[triangle, side]
    same = (site.zone[triangle] == site.zone[other]) & (np.abs(gradient[triangle] - gradient[other]).max(axis=1) < 2e-3)
    return connected_parts(len(tin.triangles), triangle[same], other[same])


def _within(corner: np.ndarray, place: np.ndarray) -> bool:
    a, b = corner - place, np.roll(corner, -1, axis=1) - place
    return bool(np.any(np.all(a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0] >= 0, axis=1)))


def _grade(slope: float, zone: int, words: Words) -> str:
    if zone == PLATFORM:
        return words(LEVEL) if slope < 5e-5 else f"{number(100 * slope, 1)} %"
    return words(RATIO, run=plain(round(1 / slope, 2))) if slope > 1e-6 else ""


# Sections


def section_figure(section: DesignSection, tin: Tin, words: Words) -> Picture:
    """Ground and design in a vertical cut, cut and fill shaded between them; SVG."""
    unit, rise = plan_unit(tin.crs), height_unit(tin.crs)
    with rc_context(STYLE):
        figure = Figure(figsize=(8.0, 2.9))
        FigureCanvasAgg(figure)
        axes = figure.add_axes([0.09, 0.2, 0.89, 0.58])
        for s, z in section.design:
            for t, w in section.ground:
                _shade(axes, (s, z), (t, w), section.centre, unit, rise, words)
        for name, parts, colour, width, style in (
            (GROUND, section.ground, "#737373", 1.2, (0, (5, 2))),
            (DESIGN, section.design, INK, 1.6, "-"),
        ):
            for k, (s, z) in enumerate(parts):
                label = words(name) if k == 0 else None
                at = (s - section.centre) / unit.metres
                axes.plot(at, z / rise.metres, color=colour, linewidth=width, linestyle=style, label=label, zorder=3)
        axes.set_xlabel(words(OFFSET if section.centre else DISTANCE, unit=unit.symbol))
        axes.set_ylabel(words(HEIGHT, unit=rise.symbol))
        axes.margins(x=0.01, y=0.12)
        axes.grid(color="#e0e0e0", linewidth=0.6)
        axes.set_axisbelow(True)
        for side in ("top", "right"):
            axes.spines[side].set_visible(False)
        times = _exaggeration(figure, axes)
        name = section.name.say(words.translate)
        axes.set_title(words(EXAGGERATED, name=name, times=number(times, 1 if times < 10 else 0)), loc="left", pad=20)
        _legend(axes, 4)
        return Picture(svg(figure), times)


def _shade(
    axes: Any, design: Tuple[np.ndarray, np.ndarray], ground: Tuple[np.ndarray, np.ndarray], centre: float,
    unit: LengthUnit, rise: LengthUnit, words: Words,
) -> None:  # fmt: skip
    (s, z), (t, w) = design, ground
    low, high = max(s[0], t[0]), min(s[-1], t[-1])
    if low >= high:
        return
    at = np.unique(np.concatenate([s, t, [low, high]]))
    at = at[(at >= low) & (at <= high)]
    upper, lower = np.interp(at, s, z) / rise.metres, np.interp(at, t, w) / rise.metres
    for mask, colour, hatch, name in (
        (upper > lower, FILL[1], "", FILL_WORD),
        (upper < lower, CUT[1], "//", CUT_WORD),
    ):
        if np.any(mask & (np.abs(upper - lower) * rise.metres > _SEEN)):
            known = axes.get_legend_handles_labels()[1]
            label = None if words(name) in known else words(name)
            axes.fill_between(
                (at - centre) / unit.metres, lower, upper, where=mask, interpolate=True, facecolor=colour,
                edgecolor="#8c8c8c", hatch=hatch, linewidth=0.0, label=label, zorder=2,
            )  # fmt: skip


def _exaggeration(figure: Figure, axes: Any) -> float:
    box = axes.get_position()
    wide, tall = figure.get_size_inches()
    (x0, x1), (y0, y1) = axes.get_xlim(), axes.get_ylim()
    return float((box.height * tall / (y1 - y0)) / (box.width * wide / (x1 - x0)))


def _legend(axes: Any, columns: int) -> None:
    axes.legend(
        loc="lower right", bbox_to_anchor=(1.0, 1.0), ncol=columns, frameon=False, fontsize=8, borderaxespad=0.1
    )


# Haul


def mass_figure(haul: MassDiagram, units: EarthUnits, words: Words) -> Picture:
    """Cut and fill between stations, and below them the running balance with what is hauled; SVG."""
    station = haul.station / units.unit.metres
    middle, width = (station[:-1] + station[1:]) / 2, np.diff(station)
    with rc_context(STYLE):
        figure = Figure(figsize=(8.0, 4.4))
        FigureCanvasAgg(figure)
        above = figure.add_axes([0.11, 0.62, 0.87, 0.3])
        below = figure.add_axes([0.11, 0.12, 0.87, 0.4])
        cut, fill = (np.array([units.in_volume_unit(v) for v in values]) for values in (haul.cut, haul.fill))
        above.bar(middle, cut, width, color=CUT[1], edgecolor=INK, linewidth=0.4, label=words(CUT_WORD))
        above.bar(
            middle, -fill, width, color=FILL[1], edgecolor=INK, linewidth=0.4, hatch="\\\\", label=words(FILL_WORD)
        )
        above.axhline(0, color=INK, linewidth=0.8)
        mass = np.array([units.in_volume_unit(v) for v in haul.mass])
        below.plot(station, mass, color=INK, linewidth=1.5, label=words(MASS))
        below.axhline(0, color=INK, linewidth=0.8)
        for k, each in enumerate(haul.hauls):
            at = np.unique(np.concatenate([[each.start, each.end], haul.station]))
            at = at[(at >= each.start) & (at <= each.end)] / units.unit.metres
            below.fill_between(at, np.interp(at, station, mass), color=GREY, alpha=0.35, linewidth=0)
            label = words(BALANCE_POINT) if k == 0 else None
            ends = np.array([each.start, each.end]) / units.unit.metres
            below.plot(ends, [0, 0], "o", color=TEAL, markersize=5, label=label, zorder=4)
        for axes in (above, below):
            axes.set_xlim(station[0], station[-1])
            axes.set_ylabel(words(VOLUME, unit=units.volume))
            axes.grid(color="#e0e0e0", linewidth=0.6)
            axes.set_axisbelow(True)
            for side in ("top", "right"):
                axes.spines[side].set_visible(False)
            _legend(axes, 3)
        above.set_xticklabels([])
        below.set_xlabel(words(STATION, unit=units.length))
        return Picture(svg(figure))


# Balance


def balance_figure(found: BalanceStudy, units: EarthUnits, words: Words) -> Picture:
    """Cut, fill and what is left against the height of the design, the balanced height marked; SVG."""
    first = 0.0 if math.isnan(found.first) else found.first
    at = (found.curve.shift + first) / units.unit.metres
    with rc_context(STYLE):
        figure = Figure(figsize=(8.0, 3.4))
        FigureCanvasAgg(figure)
        axes = figure.add_axes([0.11, 0.15, 0.87, 0.68])
        for values, colour, style, name in (
            (found.curve.cut, ORANGE, "-", CUT_WORD),
            (found.curve.fill, PURPLE, (0, (5, 2)), FILL_WORD),
            (found.curve.rest, INK, (0, (1, 1)), REST),
        ):
            volumes = [units.in_volume_unit(value) for value in values]
            axes.plot(at, volumes, color=colour, linewidth=1.8, linestyle=style, label=words(name))
        height = found.height / units.unit.metres
        half = NORMAL_95 * found.sigma / units.unit.metres
        if math.isfinite(half) and half > 0:
            axes.axvspan(height - half, height + half, color=TEAL, alpha=0.25, linewidth=0)
        axes.axvline(height, color=TEAL, linewidth=1.3, label=words(BALANCED))
        axes.axhline(0, color=INK, linewidth=0.8)
        axes.set_xlim(at[0], at[-1])
        axes.set_xlabel(words(SHIFT if math.isnan(found.first) else HEIGHT, unit=units.length))
        axes.set_ylabel(words(VOLUME, unit=units.volume))
        step = nice_step(float(at[-1] - at[0]) / 5)
        axes.set_xticks(np.arange(math.ceil(at[0] / step), math.floor(at[-1] / step) + 1) * step)
        axes.grid(color="#e0e0e0", linewidth=0.6)
        for side in ("top", "right"):
            axes.spines[side].set_visible(False)
        _legend(axes, 4)
        return Picture(svg(figure))
