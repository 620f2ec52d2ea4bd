"""The report's map of coverage (see :mod:`.drawing`)."""

from __future__ import annotations

from typing import Any

import numpy as np
from matplotlib import rc_context
from matplotlib.collections import PatchCollection, PolyCollection
from matplotlib.patches import Circle
from matplotlib.patheffects import withStroke

from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import PointSet
from ..quality.coverage import Coverage
from ..surface.tin import Tin
from .drawing import INK, ORANGE, PURPLE, STYLE, TEAL, Picture, draw_edges, finish_map, map_axes, png
from .labels import Words
from .room import Room

_TEXT = 7.0  # points
_NAMED = 80


def coverage_map(tin: Tin, points: PointSet, found: Coverage, words: Words) -> Picture:
    """Used points, long triangles, the widest empty circles and the places to walk again; PNG."""
    unit = plan_unit(tin.crs)
    used = points.used & ~points.alone
    place = np.column_stack([points.easting[used], points.northing[used]]) / unit.metres
    again = np.column_stack([found.walk_again.easting, found.walk_again.northing]) / unit.metres
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        corners = (tin.corners()[found.long][..., :2] + tin.origin) / unit.metres
        if len(corners):
            label = words(QT_TRANSLATE_NOOP("core", "long triangle"))
            axes.add_collection(
                PolyCollection(corners, facecolors=PURPLE, alpha=0.25, edgecolors=PURPLE, linewidths=0.2, label=label),
                autolim=False,
            )
        label = words(QT_TRANSLATE_NOOP("core", "used point"))
        axes.scatter(*place.T, marker=".", s=3, c="#737373", linewidths=0, zorder=2, label=label)
        draw_edges(axes, tin, unit, words)
        circles = found.circles
        rows = np.column_stack([circles.easting, circles.northing, circles.radius]) / unit.metres
        if len(rows):
            patches = [Circle((x, y), radius) for x, y, radius in rows.tolist()]
            style = {"facecolors": "none", "edgecolors": ORANGE, "linewidths": 1.1, "zorder": 3}
            axes.add_collection(PatchCollection(patches, **style), autolim=False)
            axes.scatter([], [], marker="o", s=34, facecolors="none", edgecolors=ORANGE, label=words(EMPTY_CIRCLE))
        if len(again):
            axes.scatter(*again.T, marker="D", s=14, c=TEAL, linewidths=0, zorder=4, label=words(WALK_AGAIN))
        _write_names(axes, again, found.walk_again)
        finish_map(axes, unit, words)
        return Picture(png(figure))


EMPTY_CIRCLE = QT_TRANSLATE_NOOP("core", "empty circle")
WALK_AGAIN = QT_TRANSLATE_NOOP("core", "walk again")


def _write_names(axes: Any, xy: np.ndarray, places: PointSet) -> None:
    room = Room(axes)
    room.take(xy, 3.0)
    for i, name in enumerate(places.name[:_NAMED].tolist()):
        offset = room.beside(xy[i], 0.68 * _TEXT * len(name), _TEXT)
        if offset is not None:
            axes.annotate(
                name, xy[i], xytext=offset, textcoords="offset points", ha="center", va="center", fontsize=_TEXT,
                color=INK, zorder=6, annotation_clip=False, path_effects=[withStroke(linewidth=2.0, foreground="w")],
            )  # fmt: skip
