"""The report's figures of cut and fill, and of what a basin holds (see :mod:`.drawing`)."""

from __future__ import annotations

import math
from typing import Any, List, Sequence, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.collections import LineCollection
from matplotlib.colors import BoundaryNorm, ListedColormap
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.patheffects import withStroke

from ..earthwork.storage import Storage
from ..earthwork.study import Study
from ..earthwork.uncovered import outline
from ..georeference.crs import height_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.tin import Tin
from .depth_colours import CUT, FILL, depth_colour
from .drawing import GREY, INK, PURPLE, STYLE, TEAL, Picture, finish_map, map_axes, png, svg
from .earth_units import EarthUnits
from .labels import Words, number, plain

CUT_CLASS = QT_TRANSLATE_NOOP("core", "cut {low} to {high} {unit}")
DEEPEST_CUT = QT_TRANSLATE_NOOP("core", "cut over {low} {unit}")
FILL_CLASS = QT_TRANSLATE_NOOP("core", "fill {low} to {high} {unit}")
DEEPEST_FILL = QT_TRANSLATE_NOOP("core", "fill over {low} {unit}")
ZERO_LINE = QT_TRANSLATE_NOOP("core", "no cut, no fill")
EXISTING_RIM = QT_TRANSLATE_NOOP("core", "rim of the existing surface")
DESIGN_RIM = QT_TRANSLATE_NOOP("core", "rim of the design")
REGION = QT_TRANSLATE_NOOP("core", "region")
CHECK_LINE = QT_TRANSLATE_NOOP("core", "line of the sections")
DEPTH = QT_TRANSLATE_NOOP("core", "Depth: cut below 0, fill above ({unit})")
AREA_A_BAR = QT_TRANSLATE_NOOP("core", "Area a bar of {width} {unit} ({area})")
LEVEL = QT_TRANSLATE_NOOP("core", "Water level ({unit})")
WATER_AREA = QT_TRANSLATE_NOOP("core", "Area ({unit})")
WATER_VOLUME = QT_TRANSLATE_NOOP("core", "Volume ({unit})")

_TEXT = 8.0  # points
_LEGEND_COLUMNS = 4
_MANY = 100  # lines


def class_label(label: int, limits: Sequence[float], units: EarthUnits, words: Words) -> str:
    """A depth class in words; ``label`` as in :func:`..earthwork.depth_polygons.depth_polygons`."""
    steps = [0.0, *limits]
    low = plain(round(steps[abs(label) - 1] / units.unit.metres, 4))
    if abs(label) == len(steps):
        return words(DEEPEST_FILL if label > 0 else DEEPEST_CUT, low=low, unit=units.length)
    high = plain(round(steps[abs(label)] / units.unit.metres, 4))
    return words(FILL_CLASS if label > 0 else CUT_CLASS, low=low, high=high, unit=units.length)


def class_labels(limits: Sequence[float]) -> List[int]:
    """Labels of the classes from the deepest cut to the deepest fill."""
    count = len(limits) + 1
    return [*range(-count, 0), *range(1, count + 1)]


def depth_map(study: Study, units: EarthUnits, words: Words) -> Picture:
    """Depth by classes, the line of no cut nor fill, rims, regions by name, and the line of the sections; PNG."""
    unit, grid = units.unit, study.grid
    classes = len(study.limits) + 1
    labels = class_labels(study.limits)
    colours = ListedColormap([depth_colour(label, classes) for label in labels])
    edges = [*(-limit for limit in reversed(study.limits)), 0.0, *study.limits]
    deepest = 1e6
    norm = BoundaryNorm([-deepest, *edges, deepest], len(labels))
    frame = grid.frame
    west, south = frame.west, frame.south
    east, north = west + frame.columns * frame.cell, south + frame.rows * frame.cell
    bounds = (west, south, east, north) if study.comparison.within else study.comparison.bounds
    with rc_context(STYLE):
        figure, axes = map_axes(
            bounds, unit, words, legend_rows=-(-(len(labels) + 5) // _LEGEND_COLUMNS), crs=study.comparison.existing.crs
        )
        extent = tuple(value / unit.metres for value in (west, east, south, north))
        axes.imshow(
            np.clip(grid.depth, -0.9 * deepest, 0.9 * deepest), extent=extent, cmap=colours, norm=norm,
            interpolation="nearest", aspect="equal", zorder=1,
        )  # fmt: skip
        _draw_rims(axes, study, units, words)
        if study.zero_lines:
            lines = [line[:, :2] / unit.metres for line in study.zero_lines]
            width = 1.0 if len(lines) < _MANY else 0.4  # noise on ground that did not change
            axes.add_collection(
                LineCollection(lines, colors=INK, linewidths=width, label=words(ZERO_LINE), zorder=3), autolim=False
            )
        _draw_regions(axes, study, units, words)
        if study.options.line is not None:
            xy = study.options.line[:, :2] / unit.metres
            axes.plot(*xy.T, color=INK, linewidth=1.2, linestyle=(0, (8, 3, 2, 3)), label=words(CHECK_LINE), zorder=3)
        for label, each in zip(labels, study.depths):
            if each.area > 0:
                axes.add_patch(
                    Rectangle(
                        (0, 0), 0, 0, facecolor=depth_colour(label, classes), edgecolor=INK, linewidth=0.5,
                        label=class_label(label, study.limits, units, words),
                    )
                )  # fmt: skip
        finish_map(axes, unit, words, _LEGEND_COLUMNS)
        return Picture(png(figure))


def _draw_rims(axes: Any, study: Study, units: EarthUnits, words: Words) -> None:
    tins: List[Tuple[Tin, str, str, Any]] = [(study.comparison.existing, EXISTING_RIM, "#737373", (0, (4, 2)))]
    if study.comparison.design_tin is not None:
        tins.append((study.comparison.design_tin, DESIGN_RIM, TEAL, (0, (1, 1.5))))
    for tin, label, colour, style in tins:
        rings = [np.vstack([ring, ring[:1]]) / units.unit.metres for ring in outline(tin, "").rings]
        axes.add_collection(
            LineCollection(rings, colors=colour, linewidths=1.0, linestyles=[style], label=words(label), zorder=2),
            autolim=False,
        )


def _draw_regions(axes: Any, study: Study, units: EarthUnits, words: Words) -> None:
    regions = study.regions_drawn
    rings = [np.vstack([r, r[:1]])[:, :2] / units.unit.metres for region in regions for r in region.rings]
    if rings:
        axes.add_collection(
            LineCollection(rings, colors=TEAL, linewidths=1.4, label=words(REGION), zorder=2.8), autolim=False
        )
    for region in regions:
        if region.name:
            axes.annotate(
                region.name, _inner_place(region.rings) / units.unit.metres, ha="center", va="center", fontsize=_TEXT,
                color=INK, zorder=6, annotation_clip=True, path_effects=[withStroke(linewidth=2.4, foreground="w")],
            )  # fmt: skip


def _inner_place(rings: Sequence[np.ndarray]) -> np.ndarray:
    """A place for a name: the centroid of the largest ring, or a place on the level through it that is inside."""
    ring = max(rings, key=lambda each: abs(_signed_area(each)))
    x, y = (ring[:, :2] - ring[0, :2]).T
    step = x * np.roll(y, -1) - np.roll(x, -1) * y
    if abs(step.sum()) < 1e-9:
        middle: np.ndarray = ring[:, :2].mean(axis=0)
        return middle
    height = float(np.sum((y + np.roll(y, -1)) * step) / (3 * step.sum()))
    ahead_x, ahead_y = np.roll(x, -1), np.roll(y, -1)
    crosses = (y <= height) != (ahead_y <= height)
    share = (height - y[crosses]) / (ahead_y[crosses] - y[crosses])
    at = np.sort(x[crosses] + share * (ahead_x[crosses] - x[crosses]))
    widest = int(np.argmax(np.diff(at)[::2])) * 2
    result: np.ndarray = np.array([(at[widest] + at[widest + 1]) / 2, height]) + ring[0, :2]
    return result


def _signed_area(ring: np.ndarray) -> float:
    x, y = (ring[:, :2] - ring[0, :2]).T
    return 0.5 * float(np.sum(x * np.roll(y, -1) - np.roll(x, -1) * y))


def depth_histogram(study: Study, units: EarthUnits, words: Words) -> Picture:
    """Area by depth, cut to the left, fill to the right, exact for each bar; SVG."""
    unit = units.unit.metres
    bars = [bar for bar in study.bars if math.isfinite(bar.low) and math.isfinite(bar.high)]
    width = min(bar.high - bar.low for bar in bars) / unit
    middle = [(bar.low + bar.high) / 2 / unit for bar in bars]
    area = [bar.area / unit**2 for bar in bars]
    with rc_context(STYLE):
        figure = Figure(figsize=(6.5, 2.9))
        FigureCanvasAgg(figure)
        axes = figure.add_axes([0.12, 0.17, 0.85, 0.78])
        colours = [CUT[2] if bar.low < 0 else FILL[2] for bar in bars]
        axes.bar(middle, area, width, color=colours, edgecolor="white", linewidth=0.6)
        axes.axvline(0.0, color=INK, linewidth=1.0)
        some = [at for at, size in zip(middle, area) if size > 0]
        if some:
            axes.set_xlim(min(*some, 0.0) - 1.5 * width, max(*some, 0.0) + 1.5 * width)
        axes.set_xlabel(words(DEPTH, unit=units.length))
        axes.set_ylabel(words(AREA_A_BAR, width=plain(round(width, 4)), unit=units.length, area=units.area))
        _plain_axes(axes)
        return Picture(svg(figure))


def storage_curve(storage: Storage, crs: Any, units: EarthUnits, words: Words) -> Picture:
    """Area and volume of the water by its level, side by side; SVG."""
    rise = height_unit(crs)
    level = [stage.level / rise.metres for stage in storage.curve]
    area = [stage.area / units.unit.metres**2 for stage in storage.curve]
    volume = [units.in_volume_unit(stage.volume) for stage in storage.curve]
    with rc_context(STYLE):
        figure = Figure(figsize=(6.5, 3.2))
        FigureCanvasAgg(figure)
        panels: Tuple[Any, Any] = (figure.add_axes([0.11, 0.16, 0.38, 0.78]), figure.add_axes([0.58, 0.16, 0.38, 0.78]))
        texts = (words(WATER_AREA, unit=units.area), words(WATER_VOLUME, unit=units.volume))
        for axes, values, text in zip(panels, (area, volume), texts):
            axes.fill_betweenx(level, 0, values, color="#d8daeb", linewidth=0)
            axes.plot(values, level, color=PURPLE, linewidth=1.6)
            axes.axhline(level[-1], color=GREY, linewidth=1.0, linestyle=(0, (4, 2)))
            axes.set_xlabel(text)
            axes.set_xlim(left=0)
            axes.set_ylim(level[0], level[-1] + 0.06 * (level[-1] - level[0]))
            axes.ticklabel_format(useOffset=False)
            _plain_axes(axes)
        panels[0].set_ylabel(words(LEVEL, unit=rise.symbol))
        spills = words(QT_TRANSLATE_NOOP("core", "spills at {level}"), level=number(level[-1], 3))
        panels[0].annotate(
            spills, (0.02, level[-1]), xycoords=("axes fraction", "data"), xytext=(0, 3), textcoords="offset points",
            fontsize=7.5, color=INK,
        )  # fmt: skip
        return Picture(svg(figure))


def _plain_axes(axes: Any) -> None:
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    axes.set_axisbelow(True)
    axes.grid(axis="y", color="#d9d9d9", linewidth=0.6)
