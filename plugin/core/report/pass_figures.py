"""Height over distance along the pass, where points were flagged or rejected (see :mod:`.drawing`)."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, List, Sequence

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.figure import Figure

from ..georeference.crs import height_unit, plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import PointSet, Reason, Status
from ..surface.locate import heights_at
from ..surface.tin import Tin
from .drawing import ORANGE, PURPLE, STYLE, TEAL, Picture, png
from .labels import Words
from .remarks import REASONS

ALONG = QT_TRANSLATE_NOOP("core", "Distance along the pass ({unit})")
HEIGHT = QT_TRANSLATE_NOOP("core", "Height ({unit})")
LINES = QT_TRANSLATE_NOOP("core", "Lines {first} to {last}: {reason}")
LINE = QT_TRANSLATE_NOOP("core", "Line {first}: {reason}")
AND_MORE = QT_TRANSLATE_NOOP("core", "{reason}, and more")
SURFACE = QT_TRANSLATE_NOOP("core", "surface from the used points")
CLASSES = (
    (Status.USED, QT_TRANSLATE_NOOP("core", "used"), {"marker": "o", "s": 9, "c": "#737373", "linewidths": 0}),
    (Status.FLAGGED, QT_TRANSLATE_NOOP("core", "flagged, still used"), {"marker": "^", "s": 26, "c": ORANGE}),
    (Status.REJECTED, QT_TRANSLATE_NOOP("core", "rejected"), {"marker": "x", "s": 24, "c": PURPLE}),
)

_JOINED = 12  # records between two faults that still are one place
_AROUND = 30  # records shown before and after
_LEAST_SHOWN = 6
_BREAK = 8.0  # steps as long as so many usual ones end a pass
_NO_FAULT = np.uint32(Reason.CHECK_SHOT | Reason.NOT_GROUND)  # known by the code, nothing went wrong


@dataclass(frozen=True)
class Place:
    """A stretch of the walk with flagged or rejected points: ``faults`` their indices, ``shown`` those around them too,
    ``reasons`` all of theirs together.
    """

    shown: np.ndarray
    faults: np.ndarray
    reasons: int


def places_along(points: PointSet) -> List[Place]:
    """Stretches around flagged and rejected points, in the order of recording; check shots and the like make none."""
    doubted = (points.status != Status.USED) & ((points.reasons.astype(np.uint32) & ~_NO_FAULT) != 0)
    at = np.flatnonzero(doubted)
    if not len(at):
        return []
    step = np.hypot(np.diff(points.easting), np.diff(points.northing))
    usual = float(np.median(step[step > 0.02])) if np.any(step > 0.02) else 1.0
    walk = np.append(0, np.cumsum(step > _BREAK * usual))  # number of the unbroken walk of each point
    parted = (np.diff(at) > _JOINED) | (np.diff(walk[at]) != 0)
    places = []
    for faults in np.split(at, np.flatnonzero(parted) + 1):
        low, high = max(0, int(faults[0]) - _AROUND), min(len(points), int(faults[-1]) + _AROUND + 1)
        shown = np.arange(low, high)
        shown = shown[walk[shown] == walk[faults[0]]]
        reasons = int(np.bitwise_or.reduce(points.reasons[faults]))
        places.append(Place(shown, faults, reasons))
    return places


def most_telling(places: Sequence[Place], count: int) -> List[Place]:
    """At most ``count`` places: of each combination of reasons the longest first, then the longest of all.

    Single points, such as those of lines, come last: there is no pass to be seen around them.
    """
    alone = [len(place.shown) < _LEAST_SHOWN for place in places]
    order = sorted(range(len(places)), key=lambda i: (alone[i], -len(places[i].faults)))
    first = {places[i].reasons: i for i in reversed(order)}
    chosen = sorted(first.values(), key=order.index)
    chosen += [i for i in order if i not in set(chosen)]
    return [places[i] for i in sorted(chosen[:count])]


def passes_figure(points: PointSet, tin: Tin, places: Sequence[Place], words: Words) -> Picture:
    """One panel a place: its points by status, and the surface made without the rejected ones; PNG."""
    rows = (len(places) + 1) // 2
    with rc_context(STYLE):
        figure = Figure(figsize=(8.0, 2.15 * rows + 0.75))
        FigureCanvasAgg(figure)
        grid = figure.add_gridspec(rows, 2, hspace=0.45, wspace=0.22)
        axes = [figure.add_subplot(grid[k // 2, k % 2]) for k in range(len(places))]
        for one, place in zip(axes, places):
            _draw_place(one, points, tin, place, words)
        _finish(figure, axes, points, words)
        return Picture(png(figure))


def _draw_place(axes: Any, points: PointSet, tin: Tin, place: Place, words: Words) -> None:
    shown, plan, rise = place.shown, plan_unit(points.crs).metres, height_unit(points.crs).metres
    east, north = points.easting[shown], points.northing[shown]
    along = np.append(0.0, np.cumsum(np.hypot(np.diff(east), np.diff(north)))) / plan
    surface = heights_at(tin, np.column_stack([east, north])) / rise
    axes.plot(along, surface, color=TEAL, linewidth=1.1, zorder=2, label=words(SURFACE))
    for status, name, style in CLASSES:
        own = points.status[shown] == status
        axes.scatter(along[own], points.height[shown][own] / rise, zorder=3, label=words(name), **style)
    lines = points.source_line[place.faults]
    text = LINE if len(lines) == 1 else LINES
    said = words(text, first=int(lines[0]), last=int(lines[-1]), reason=_reason(points, place, words))
    axes.set_title(said, loc="left", fontsize=7.5)
    axes.margins(x=0.02, y=0.12)
    low, high = axes.get_ylim()
    if high - low < 0.2 / rise:  # noise must not look like faults
        middle = (low + high) / 2
        axes.set_ylim(middle - 0.1 / rise, middle + 0.1 / rise)
    axes.ticklabel_format(useOffset=False)
    axes.tick_params(labelsize=7.5)
    axes.grid(color="#e0e0e0", linewidth=0.5)
    axes.set_axisbelow(True)
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)


def _reason(points: PointSet, place: Place, words: Words) -> str:
    """The reason that most points of a place have, in words."""
    held = [
        (int(np.count_nonzero(points.reasons[place.faults] & np.uint32(reason))), text)
        for reason, text in REASONS.items()
        if place.reasons & int(reason)
    ]
    if not held:
        return ""
    text = words(max(held, key=lambda each: each[0])[1])
    return text if len(held) == 1 else words(AND_MORE, reason=text)


def _finish(figure: Figure, axes: Sequence[Any], points: PointSet, words: Words) -> None:
    for one in axes[-2:]:
        one.set_xlabel(words(ALONG, unit=plan_unit(points.crs).symbol), fontsize=8)
    for one in axes[::2]:
        one.set_ylabel(words(HEIGHT, unit=height_unit(points.crs).symbol), fontsize=8)
    handles, labels = axes[0].get_legend_handles_labels()
    tall = figure.get_size_inches()[1]
    figure.legend(handles, labels, loc="upper center", ncol=4, frameon=False, fontsize=8)
    figure.subplots_adjust(left=0.09, right=0.985, top=1 - 0.62 / tall, bottom=0.48 / tall)
