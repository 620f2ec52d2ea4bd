"""The report's maps of the surface itself: places to look at, and slopes (see :mod:`.drawing`)."""

from __future__ import annotations

from typing import Sequence

import numpy as np
from matplotlib import rc_context
from matplotlib.colors import BoundaryNorm, ListedColormap
from matplotlib.patches import Rectangle
from matplotlib.patheffects import withStroke

from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.findings import Finding, FindingKind
from ..surface.slopes import SlopeMap
from ..surface.tin import Tin
from .drawing import (
    INK,
    ORANGE,
    PURPLE,
    STEEPER,
    STYLE,
    TEAL,
    Picture,
    draw_edges,
    draw_relief,
    draw_triangles,
    finish_map,
    map_axes,
    png,
)
from .labels import Words, plain_percent
from .room import Room

FINDING_NAMES = {
    FindingKind.FLAT: QT_TRANSLATE_NOOP("core", "level spot"),
    FindingKind.GAP: QT_TRANSLATE_NOOP("core", "gap in a line"),
    FindingKind.LONG: QT_TRANSLATE_NOOP("core", "nothing recorded"),
    FindingKind.SPIKE: QT_TRANSLATE_NOOP("core", "spike"),
    FindingKind.BESIDE_LINE: QT_TRANSLATE_NOOP("core", "point beside a line"),
}
_MARKS = {
    FindingKind.FLAT: ("s", TEAL),
    FindingKind.GAP: ("D", PURPLE),
    FindingKind.LONG: ("o", ORANGE),
    FindingKind.SPIKE: ("^", PURPLE),
    FindingKind.BESIDE_LINE: ("P", TEAL),
}
SLOPE_CLASS = QT_TRANSLATE_NOOP("core", "{low} to {high} %")
STEEPEST_CLASS = QT_TRANSLATE_NOOP("core", "over {low} %")

_TEXT = 8.0  # points


def findings_map(tin: Tin, findings: Sequence[Finding], numbered: int, words: Words) -> Picture:
    """Every finding by its kind, the first ``numbered`` with their number from 1 where there is room; PNG."""
    unit = plan_unit(tin.crs)
    places = np.array([(f.easting, f.northing) for f in findings]) / unit.metres
    kinds = np.array([f.kind.value for f in findings])
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        draw_relief(axes, tin, unit)
        draw_edges(axes, tin, unit, words)
        for kind, (mark, color) in _MARKS.items():
            own = kinds == kind.value
            if own.any():
                label = words(FINDING_NAMES[kind])
                axes.scatter(
                    *places[own].T, marker=mark, s=42, facecolors="none", edgecolors=color, linewidths=1.6, zorder=4,
                    label=label,
                )  # fmt: skip
        room = Room(axes)
        room.take(places, 4.0)
        for i in range(min(numbered, len(findings))):
            text = str(i + 1)
            offset = room.beside(places[i], 0.64 * _TEXT * len(text), _TEXT)
            if offset is not None:
                axes.annotate(
                    text, places[i], xytext=offset, textcoords="offset points", ha="center", va="center",
                    fontsize=_TEXT, fontweight="bold", color=INK, zorder=6, annotation_clip=False,
                    path_effects=[withStroke(linewidth=2.2, foreground="w")],
                )  # fmt: skip
        finish_map(axes, unit, words)
        return Picture(png(figure))


def slope_picture(tin: Tin, slopes: SlopeMap, words: Words) -> Picture:
    """Triangles coloured by their class of slope, the steeper the darker; PNG."""
    unit = plan_unit(tin.crs)
    count = len(slopes.plan_area)
    colours = ListedColormap([STEEPER[round(i * (len(STEEPER) - 1) / max(count - 1, 1))] for i in range(count)])
    norm = BoundaryNorm(np.arange(count + 1) - 0.5, count)
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        draw_triangles(axes, tin, unit, slopes.triangle_class.astype(float), colours, norm)
        draw_edges(axes, tin, unit, words)
        for i in range(count):
            label = class_name(slopes, i, words)
            axes.add_patch(Rectangle((0, 0), 0, 0, facecolor=colours(i), edgecolor=INK, linewidth=0.5, label=label))
        finish_map(axes, unit, words)
        return Picture(png(figure))


def class_name(slopes: SlopeMap, number: int, words: Words) -> str:
    """A class of slopes in words."""
    low, high = slopes.range_percent(number)
    if np.isinf(high):
        return words(STEEPEST_CLASS, low=plain_percent(low))
    return words(SLOPE_CLASS, low=plain_percent(low), high=plain_percent(high))
