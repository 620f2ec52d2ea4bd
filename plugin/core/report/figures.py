"""The report's figures of points and contours: maps and histograms (see :mod:`.drawing`)."""

from __future__ import annotations

import math
from typing import Any, List, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.collections import LineCollection
from matplotlib.figure import Figure
from matplotlib.patheffects import withStroke

from ..contours.labels import Labels, place_labels
from ..contours.lines import Contours
from ..contours.spots import SpotKind, Spots
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import PointSet, Reason, Status
from ..progress import Progress, silent
from ..surface.tin import Tin
from ..units import LengthUnit
from .drawing import (
    BROWN,
    DARK_BROWN,
    GREY,
    INK,
    ORANGE,
    PURPLE,
    STYLE,
    TEAL,
    Picture,
    draw_edges,
    draw_relief,
    finish_map,
    map_axes,
    png,
    svg,
)
from .labels import MINUS, Words, nice_step, number, significant
from .room import Room

HEIGHT = QT_TRANSLATE_NOOP("core", "Height ({unit})")
POINTS_A_BAR = QT_TRANSLATE_NOOP("core", "Points a bar of {width} {unit}")
DISTANCE = QT_TRANSLATE_NOOP("core", "Distance to the point recorded before ({unit})")
STEPS_A_BAR = QT_TRANSLATE_NOOP("core", "Steps a bar of {width} {unit}")
CONTOUR = QT_TRANSLATE_NOOP("core", "contour")
INDEX_CONTOUR = QT_TRANSLATE_NOOP("core", "index contour")
USED = QT_TRANSLATE_NOOP("core", "used")
FLAGGED = QT_TRANSLATE_NOOP("core", "flagged, still used")
REJECTED = QT_TRANSLATE_NOOP("core", "rejected")
CHECK_SHOT = QT_TRANSLATE_NOOP("core", "check shot")
MEDIAN = QT_TRANSLATE_NOOP("core", "median {value} {unit}")
SPOT_NAMES = {
    SpotKind.SUMMIT: QT_TRANSLATE_NOOP("core", "summit"),
    SpotKind.PIT: QT_TRANSLATE_NOOP("core", "pit"),
    SpotKind.SADDLE: QT_TRANSLATE_NOOP("core", "saddle"),
}
_SPOT_MARKS = {SpotKind.SUMMIT: "^", SpotKind.PIT: "v", SpotKind.SADDLE: "x"}

_TEXT = 7.0  # points, size of the text on the map
_DIGIT = 0.64  # of it: width of a digit of the typeface
_LABEL_SPACING = 280.0  # points
_MARK = 3.0  # points, radius of a spot's mark
_MOST_SPOTS = 60


# Maps


def site_map(tin: Tin, contours: Contours, spots: Spots, words: Words, progress: Progress = silent) -> Picture:
    """Contours with labels and spot heights over shaded relief, with rim and breaklines; PNG.

    Labels are placed anew for the scale of this map. Of the ``spots`` those on the rim, where the surface ends
    and not the ground, are left out, and those for which there is no room.
    """
    unit = plan_unit(tin.crs)
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        progress(0.0, "report")
        exaggeration = draw_relief(axes, tin, unit)
        progress(0.2, "report")
        draw_edges(axes, tin, unit, words)
        _draw_contours(axes, contours, unit, words)
        room = Room(axes)
        progress(0.4, "report")
        _draw_labels(axes, contours, room, unit)
        progress(0.6, "report")
        _draw_spots(axes, spots, room, unit, contours.options.unit, words)
        finish_map(axes, unit, words)
        return Picture(png(figure), exaggeration)


def points_map(points: PointSet, words: Words) -> Picture:
    """Every point of the site by what became of it; PNG."""
    points = points.select(~points.off_site)
    unit = plan_unit(points.crs)
    place = np.column_stack([points.easting, points.northing]) / unit.metres
    (west, south), (east, north) = place.min(axis=0) * unit.metres, place.max(axis=0) * unit.metres
    check = (points.reasons & int(Reason.CHECK_SHOT)) != 0
    classes = [
        (points.status == Status.USED, USED, {"marker": ".", "s": 5, "c": "#737373", "linewidths": 0}),
        (points.status == Status.FLAGGED, FLAGGED, {"marker": "^", "s": 18, "c": ORANGE, "linewidths": 0}),
        (points.status == Status.REJECTED, REJECTED, {"marker": "x", "s": 16, "c": PURPLE, "linewidths": 0.9}),
    ]
    with rc_context(STYLE):
        figure, axes = map_axes((west, south, east, north), unit, words, crs=points.crs)
        for mask, name, style in classes:
            mask = mask & ~check
            if mask.any():
                label = f"{words(name)}: {number(int(mask.sum()))}"
                axes.scatter(*place[mask].T, label=label, zorder=3, **style)
        if check.any():
            label = f"{words(CHECK_SHOT)}: {number(int(check.sum()))}"
            style = {"marker": "s", "s": 26, "facecolors": "none", "edgecolors": TEAL, "linewidths": 1.3}
            axes.scatter(*place[check].T, label=label, zorder=4, **style)
        finish_map(axes, unit, words)
        return Picture(png(figure))


def _draw_contours(axes: Any, contours: Contours, unit: LengthUnit, words: Words) -> None:
    lines = [line / unit.metres for line in contours]
    for mask, name, color, width in (
        (~contours.index, CONTOUR, BROWN, 0.6),
        (contours.index, INDEX_CONTOUR, DARK_BROWN, 1.3),
    ):
        chosen = [lines[i] for i in np.flatnonzero(mask)]
        if chosen:
            collection = LineCollection(chosen, colors=color, linewidths=width, label=words(name), zorder=3)
            axes.add_collection(collection, autolim=False)


def _draw_labels(axes: Any, contours: Contours, room: Room, unit: LengthUnit) -> None:
    """Levels along index contours, reading uphill."""
    point = unit.metres / room.points_per_unit  # metres on the ground
    labels: Labels = place_labels(contours, _LABEL_SPACING * point, _TEXT * point)
    places = (labels.xy + labels.origin) / unit.metres
    for xy, text, rotation in zip(places, labels.text, labels.rotation.tolist()):
        _write(axes, xy, (0.0, 0.0), text.replace("-", MINUS), DARK_BROWN, rotation)
        room.take_text(xy, _width(text), _TEXT, rotation)


def _draw_spots(axes: Any, spots: Spots, room: Room, unit: LengthUnit, height_unit: LengthUnit, words: Words) -> None:
    """Marks and heights of the most prominent spots that have room, the most prominent first."""
    places = (spots.xyz[:, :2] + spots.origin) / unit.metres
    shown = np.flatnonzero(~spots.on_rim)[:_MOST_SPOTS]
    shown = shown[room.free(places[shown], _MARK)]
    room.take(places[shown], _MARK)
    drawn: List[int] = []
    for i in shown.tolist():
        text = number(float(spots.xyz[i, 2]) / height_unit.metres, 2)
        offset = room.beside(places[i], _width(text), _TEXT)
        if offset is not None:
            _write(axes, places[i], offset, text, INK, 0.0)
            drawn.append(i)
    for kind, name in SPOT_NAMES.items():
        own = [i for i in drawn if spots.kind[i] == kind]
        if own:
            axes.scatter(
                *places[own].T, marker=_SPOT_MARKS[kind], s=14, c=INK, linewidths=0.9, zorder=5, label=words(name)
            )


def _width(text: str) -> float:
    """Of a text on the map, points."""
    return len(text) * _DIGIT * _TEXT


def _write(axes: Any, xy: np.ndarray, offset: Tuple[float, float], text: str, color: str, rotation: float) -> None:
    """Text with its middle ``offset`` points from the map coordinates ``xy``."""
    axes.annotate(
        text, xy, xytext=offset, textcoords="offset points", rotation=rotation, rotation_mode="anchor", ha="center",
        va="center", fontsize=_TEXT, color=color, zorder=6, path_effects=[withStroke(linewidth=2.2, foreground="w")],
        annotation_clip=False,
    )  # fmt: skip


# Histograms


def height_histogram(heights_m: np.ndarray, unit: LengthUnit, words: Words) -> Picture:
    """Used points by height; SVG. ``heights_m``: (n,) metres, n > 0."""
    heights = heights_m / unit.metres
    low, high = float(heights.min()), float(heights.max())
    width = nice_step(max(high - low, 0.02) / 25)
    edges = np.arange(math.floor(low / width), math.floor(high / width) + 2) * width
    return _histogram(heights, edges, width, unit.symbol, HEIGHT, POINTS_A_BAR, words)


def spacing_histogram(steps_m: np.ndarray, unit: LengthUnit, words: Words) -> Picture:
    """Distances between points recorded one after another, (n,) metres, n > 0; SVG.

    The axis ends at three times the median, as :func:`longest_shown` says.
    """
    steps = steps_m / unit.metres
    end = max(longest_shown(steps_m) / unit.metres, 1e-3)
    width = nice_step(end / 50)
    edges = np.arange(0, math.ceil(end / width - 1e-9) + 1) * width
    return _histogram(steps[steps < edges[-1]], edges, width, unit.symbol, DISTANCE, STEPS_A_BAR, words)


def longest_shown(steps_m: np.ndarray) -> float:
    """The distance (m) at which the spacing histogram ends."""
    return 3.0 * float(np.median(steps_m))


def steps_along(points: PointSet) -> np.ndarray:
    """Plan distances (n - 1,) in metres from each point of the site to the next in the order of recording."""
    points = points.select(~points.off_site)
    return np.hypot(np.diff(points.easting), np.diff(points.northing))


def _histogram(
    values: np.ndarray, edges: np.ndarray, width: float, unit: str, across: str, up: str, words: Words
) -> Picture:
    with rc_context(STYLE):
        figure = Figure(figsize=(6.5, 2.9))
        FigureCanvasAgg(figure)
        axes = figure.add_axes([0.11, 0.17, 0.86, 0.78])
        axes.hist(values, bins=edges, color=GREY, edgecolor="white", linewidth=0.6)
        if len(values):
            middle = float(np.median(values))
            text = words(MEDIAN, value=number(middle, 3), unit=unit)
            axes.axvline(middle, color=PURPLE, linewidth=1.4, label=text)
            axes.legend(frameon=False, loc="upper right")
        axes.set_xlabel(words(across, unit=unit))
        axes.set_ylabel(words(up, width=significant(width, 1), unit=unit))
        for side in ("top", "right"):
            axes.spines[side].set_visible(False)
        axes.set_axisbelow(True)
        axes.grid(axis="y", color="#d9d9d9", linewidth=0.6)
        return Picture(svg(figure))
