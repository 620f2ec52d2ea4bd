"""The report's map of the lines that the points show (see :mod:`.drawing`)."""

from __future__ import annotations

from typing import Any, Dict, Sequence, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.collections import LineCollection
from matplotlib.patheffects import withStroke

from ..features.found import FoundKind
from ..features.ground_lines import GroundLine, LineStatus
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import PointSet
from ..surface.tin import Tin
from ..units import LengthUnit
from .drawing import BROWN, GREY, INK, ORANGE, PURPLE, STYLE, TEAL, Picture, finish_map, map_axes, png
from .found_words import KIND_NAMES, STATUS_NAMES
from .labels import Words
from .room import Room

_COLOURS = {
    FoundKind.STEP: PURPLE,
    FoundKind.TOP: BROWN,
    FoundKind.TOE: ORANGE,
    FoundKind.VALLEY: TEAL,
    FoundKind.RIDGE: INK,
}
#: Width and dashes by status.
_STROKES: Dict[LineStatus, Tuple[float, Any]] = {
    LineStatus.USED: (1.8, "-"),
    LineStatus.PROPOSED: (1.2, (0, (4, 2))),
    LineStatus.REJECTED: (0.9, (0, (1, 2))),
}
_TEXT = 7.0  # points
_NAMED = 80


def found_lines_map(tin: Tin, points: PointSet, lines: Sequence[GroundLine], words: Words) -> Picture:
    """The lines by kind and status over the used points, with their numbers where there is room; PNG."""
    unit = plan_unit(tin.crs)
    used = points.used & ~points.alone
    place = np.column_stack([points.easting[used], points.northing[used]]) / unit.metres
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words)
        label = words(QT_TRANSLATE_NOOP("core", "used point"))
        axes.scatter(*place.T, marker=".", s=3, c=GREY, linewidths=0, zorder=2, label=label)
        for kind, colour in _COLOURS.items():
            for status, stroke in _STROKES.items():
                own = [line for line in lines if line.kind is kind and line.status is status]
                _draw(axes, own, unit, colour, stroke, words)
        _write_numbers(axes, lines, unit)
        finish_map(axes, unit, words)
        return Picture(png(figure))


def _draw(
    axes: Any, lines: Sequence[GroundLine], unit: LengthUnit, colour: str, stroke: Tuple[float, Any], words: Words
) -> None:
    if not lines:
        return
    label = f"{words(KIND_NAMES[lines[0].kind])}, {words(STATUS_NAMES[lines[0].status])}"
    courses = [part[:, :2] / unit.metres for line in lines for part in line.parts]
    width, dashes = stroke
    axes.add_collection(
        LineCollection(courses, colors=colour, linewidths=width, linestyles=[dashes], label=label, zorder=3),
        autolim=False,
    )


def _write_numbers(axes: Any, lines: Sequence[GroundLine], unit: LengthUnit) -> None:
    room = Room(axes)
    for number, line in enumerate(lines[:_NAMED], start=1):
        xy = line.parts[0][len(line.parts[0]) // 2, :2] / unit.metres
        text = str(number)
        offset = room.beside(xy, 0.68 * _TEXT * len(text), _TEXT)
        if offset is not None:
            axes.annotate(
                text, xy, xytext=offset, textcoords="offset points", ha="center", va="center", fontsize=_TEXT,
                color=INK, zorder=6, annotation_clip=False, path_effects=[withStroke(linewidth=2.0, foreground="w")],
            )  # fmt: skip
