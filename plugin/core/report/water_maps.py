"""The report's maps of water: its ways, ponds, catchments, and what a change moves (see :mod:`.drawing`).

Colours: ColorBrewer's Blues for water and Set2 for catchments, which have their names written in, so that nobody
needs to tell the colours apart; ponds by depth are darker the deeper; ground that drains nowhere is hatched.
"""

from __future__ import annotations

from typing import Any, List, Sequence, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.collections import LineCollection, PathCollection, PolyCollection
from matplotlib.path import Path
from matplotlib.patheffects import withStroke

from ..drainage.analysis import Drainage, DrainageChange, moved_places
from ..drainage.flow import Flow
from ..drainage.inlet_list import Inlet
from ..drainage.paths import flow_arrows
from ..drainage.ponds import Ponds
from ..drainage.rings import Polygon, inside, polygons_of
from ..drainage.shares import pond_name
from ..drainage.spills import spill_paths
from ..drainage.steps import PathEnd
from ..drainage.study import WaterStudy, suiting_spacing
from ..georeference.crs import plan_unit
from ..messages import QT_TRANSLATE_NOOP
from ..surface.tin import Tin
from ..units import LengthUnit
from .drawing import (
    BROWN,
    INK,
    ORANGE,
    PURPLE,
    STYLE,
    Picture,
    draw_edges,
    draw_relief,
    finish_map,
    map_axes,
    png,
)
from .labels import Words, number
from .room import Room

PALE_BLUE, BLUE, DARK_BLUE = "#9ecae1", "#3182bd", "#08519c"  # Blues
BLUES = ("#deebf7", "#9ecae1", "#6baed6", "#3182bd", "#08519c")
SET2 = ("#66c2a5", "#fc8d62", "#8da0cb", "#ffd92f", "#e5c494", "#b3b3b3")
_DEPTHS, _DEPTHS_IN_FEET = (0.0, 0.05, 0.1, 0.2, 0.5), (0.0, 0.2, 0.5, 1.0, 2.0)  # where the classes of depth begin
ARROW_WINDOW = 3.0  # m over which the arrows' gradient is averaged

FLOW = QT_TRANSLATE_NOOP("core", "way down, longer where steeper")
WAY = QT_TRANSLATE_NOOP("core", "path of water")
CHANNEL = QT_TRANSLATE_NOOP("core", "channel")
RIDGE = QT_TRANSLATE_NOOP("core", "ridge")
POND = QT_TRANSLATE_NOOP("core", "pond")
INLET = QT_TRANSLATE_NOOP("core", "inlet")
PIT = QT_TRANSLATE_NOOP("core", "pit")
SPILL = QT_TRANSLATE_NOOP("core", "spill point and way of the overflow")
NOWHERE = QT_TRANSLATE_NOOP("core", "drains nowhere until full")
FLAT = QT_TRANSLATE_NOOP("core", "flatter than {limit} %")
MOVED = QT_TRANSLATE_NOOP("core", "water goes elsewhere")
GONE = QT_TRANSLATE_NOOP("core", "pond gone")
STAYS = QT_TRANSLATE_NOOP("core", "pond after the change")

_TEXT = 7.0  # points
_MOST_PATHS = 1500


def flow_map(study: WaterStudy, words: Words) -> Picture:
    """Paths, arrows of the way down, channels, ponds, flat ground and inlets over the shaded surface; PNG."""
    tin, unit = study.tin, plan_unit(study.tin.crs)
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        exaggeration = draw_relief(axes, tin, unit)
        _fill(axes, [area.rings for area in study.flat], unit, "#fee391", "#cc4c02", 0.55, zorder=2.0)
        draw_edges(axes, tin, unit, words)
        _fill(axes, _all_ponds(study.ponds, study.shores), unit, PALE_BLUE, DARK_BLUE, 0.9, zorder=2.6)
        going = [i for i in range(len(study.paths)) if study.paths.end[i] != PathEnd.OUTSIDE]
        step = max(1, len(going) // _MOST_PATHS)
        lines = [study.paths.path(i)[:, :2] / unit.metres for i in going[::step]]
        _lines(axes, lines, BLUE, 0.5, words(WAY), zorder=2.7)
        _channels(axes, study, unit, words)
        _arrows(axes, tin, unit, words)
        _inlets(axes, study.inlets, unit, words)
        limit = number(100 * study.options.flat_limit, 1)
        _name_fill(axes, len(study.ponds) > 0, PALE_BLUE, DARK_BLUE, words(POND))
        _name_fill(axes, len(study.flat) > 0, "#fee391", "#cc4c02", words(FLAT, limit=limit))
        finish_map(axes, unit, words)
        return Picture(png(figure), exaggeration)


def ponds_map(
    flow: Flow, ponds: Ponds, shores: Sequence[Sequence[np.ndarray]], inlets: Sequence[Inlet], words: Words
) -> Picture:
    """Ponds by depth, with their names, pits, spill points and the ways of the overflow; PNG."""
    tin, unit = flow.tin, plan_unit(flow.tin.crs)
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        draw_relief(axes, tin, unit)
        draw_edges(axes, tin, unit, words)
        order = np.argsort(-ponds.level, kind="stable").tolist()  # parents first
        for i in order:
            colour = BLUES[int(np.searchsorted(_depths(unit), ponds.depth[i], "right")) - 1]
            _fill(axes, polygons_of(shores[i]), unit, colour, DARK_BLUE, 1.0, zorder=2.6)
        spill = (ponds.spill_xyz[:, :2] + ponds.origin) / unit.metres
        pit = (ponds.pit_xyz[:, :2] + ponds.origin) / unit.metres
        _lines(axes, [w[:, :2] / unit.metres for w in spill_paths(flow, ponds)], ORANGE, 1.1, "", (0, (4, 2)), 3.0)
        if len(ponds):
            axes.scatter(
                *pit.T, marker="v", s=26, c="white", edgecolors=INK, linewidths=1.0, zorder=4, label=words(PIT)
            )
            axes.scatter(*spill.T, marker="D", s=20, c=ORANGE, linewidths=0, zorder=4, label=words(SPILL))
        _inlets(axes, inlets, unit, words)
        room = Room(axes)
        room.take(np.concatenate([pit, spill]), 4.0)
        for i in range(min(len(ponds), 60)):
            _write_beside(axes, room, pit[i], pond_name(i))
        _name_depths(axes, ponds, unit)
        finish_map(axes, unit, words)
        return Picture(png(figure))


def catchments_map(study: WaterStudy, words: Words) -> Picture:
    """Catchments with their names, channels, ridges and inlets; what drains nowhere is hatched; PNG."""
    tin, unit, shares = study.tin, plan_unit(study.tin.crs), study.shares
    with rc_context(STYLE):
        figure, axes = map_axes(tin.bounds, unit, words, crs=tin.crs)
        draw_relief(axes, tin, unit)
        colours, polygons = shares.colours(), shares.polygons()
        for i, parts in enumerate(polygons):
            _fill(axes, parts, unit, SET2[int(colours[i]) % len(SET2)], INK, 0.55, zorder=2.2)
            if shares.nowhere[i] > 0.5 * shares.area[i]:
                _fill(axes, parts, unit, "none", DARK_BLUE, 1.0, zorder=2.3, hatch="////")
        ridges = [study.ridges.line(i)[:, :2] / unit.metres for i in range(len(study.ridges))]
        _lines(axes, ridges, BROWN, 0.8, words(RIDGE), (0, (6, 2, 1, 2)), zorder=2.5)
        _channels(axes, study, unit, words)
        _inlets(axes, study.inlets, unit, words, names=False)
        room = Room(axes)
        for i, parts in enumerate(polygons):
            if shares.name[i] and parts:
                _write_inside(axes, room, parts[0], unit, shares.name[i])
        held = bool(np.any(shares.nowhere > 0.5 * shares.area))
        _name_fill(axes, held, "none", DARK_BLUE, words(NOWHERE), "////")
        finish_map(axes, unit, words)
        return Picture(png(figure))


def change_map(
    before: Drainage, after: Drainage, change: DrainageChange, shores: Sequence[Any], words: Words
) -> Picture:
    """Ponds that are gone hatched, ponds after the change filled, and ground whose water goes elsewhere, in cells, over
    the shaded changed surface; PNG.

    ``shores``: of the ponds before and after.
    """
    tin, unit = after.flow.tin, plan_unit(after.flow.tin.crs)
    with rc_context(STYLE):
        figure, axes = map_axes(before.flow.tin.bounds, unit, words, crs=before.flow.tin.crs)
        draw_relief(axes, tin, unit)
        draw_edges(axes, tin, unit, words)
        spacing = suiting_spacing(tin, 60)
        moved = moved_places(before, after, spacing) / unit.metres
        if len(moved):
            half = spacing / unit.metres / 2
            corner = half * np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]])
            cells = PolyCollection(moved[:, None] + corner, facecolors="#b2abd2", linewidths=0, alpha=0.7, zorder=2.2)
            axes.add_collection(cells, autolim=False)
            _name_fill(axes, True, "#b2abd2", "none", words(MOVED))
        gone = [pond.before for pond in change.ponds if pond.after < 0]
        stays = [pond.after for pond in change.ponds if pond.after >= 0]
        for numbers, rings, face, edge, hatch in (
            (stays, shores[1], PALE_BLUE, DARK_BLUE, ""), (gone, shores[0], "none", ORANGE, "////")
        ):  # fmt: skip
            for i in numbers:
                _fill(axes, polygons_of(rings[i]), unit, face, edge, 0.9, zorder=2.7, hatch=hatch)
        _arrows(axes, tin, unit, words)
        room = Room(axes)
        for pond in change.ponds:
            drainage, i = (after, pond.after) if pond.after >= 0 else (before, pond.before)
            place = (drainage.ponds.pit_xyz[i, :2] + drainage.ponds.origin) / unit.metres
            _write_beside(axes, room, place, pond_name(i))
        _name_fill(axes, len(stays) > 0, PALE_BLUE, DARK_BLUE, words(STAYS))
        _name_fill(axes, len(gone) > 0, "none", ORANGE, words(GONE), "////")
        finish_map(axes, unit, words)
        return Picture(png(figure))


# ------------------------------------------------------------------------------------------- pieces


def _all_ponds(ponds: Ponds, shores: Sequence[Sequence[np.ndarray]]) -> List[Polygon]:
    return [polygon for i in ponds.outermost for polygon in polygons_of(shores[i])]


def _fill(
    axes: Any, polygons: Sequence[Polygon], unit: LengthUnit, face: str, edge: str, alpha: float, zorder: float,
    hatch: str = "",
) -> None:  # fmt: skip
    """Polygons of rings in metres of the CRS; holes stay open as their rings run the other way."""
    paths = [
        Path.make_compound_path(*(Path(ring / unit.metres, closed=True) for ring in polygon))
        for polygon in polygons
    ]  # fmt: skip
    if paths:
        style = {"facecolors": face, "edgecolors": edge, "linewidths": 0.6, "alpha": alpha, "zorder": zorder}
        axes.add_collection(PathCollection(paths, hatch=hatch or None, **style), autolim=False)


def _lines(
    axes: Any, lines: Sequence[np.ndarray], colour: str, width: Any, label: str, style: Any = "-", zorder: float = 3.0
) -> None:
    lines = [line for line in lines if len(line) > 1]
    if lines:
        collection = LineCollection(
            lines, colors=colour, linewidths=width, linestyles=[style], label=label or None, zorder=zorder
        )
        axes.add_collection(collection, autolim=False)


def _channels(axes: Any, study: WaterStudy, unit: LengthUnit, words: Words) -> None:
    """Wider the more ground drains through them."""
    lines = [study.channels.line(i)[:, :2] / unit.metres for i in range(len(study.channels))]
    share = np.sqrt(study.channels.area / study.tin.plan_area)
    _lines(axes, lines, DARK_BLUE, (0.8 + 2.2 * share).tolist(), words(CHANNEL), zorder=3.0)


def _arrows(axes: Any, tin: Tin, unit: LengthUnit, words: Words) -> None:
    spacing = suiting_spacing(tin)
    arrows = flow_arrows(tin, spacing, ARROW_WINDOW)
    if not len(arrows.xy):
        return
    turn = np.radians(arrows.direction)
    usual = max(float(np.percentile(arrows.slope, 90)), 1e-9)
    size = (0.35 + 0.55 * np.minimum(arrows.slope / usual, 1.0)) * spacing / unit.metres
    axes.quiver(
        *(arrows.xy / unit.metres).T, size * np.sin(turn), size * np.cos(turn), angles="xy", scale_units="xy", scale=1,
        pivot="middle", color=INK, width=0.0016, headwidth=4.5, headlength=5, zorder=3.2,
    )  # fmt: skip
    axes.scatter([], [], marker="$\\rightarrow$", s=60, c=INK, label=words(FLOW))


def _inlets(axes: Any, inlets: Sequence[Inlet], unit: LengthUnit, words: Words, names: bool = True) -> None:
    if not inlets:
        return
    places = np.array([np.concatenate(inlet.parts).mean(axis=0) for inlet in inlets]) / unit.metres
    lines = [part / unit.metres for inlet in inlets for part in inlet.parts if len(part) > 1]
    _lines(axes, lines, PURPLE, 2.0, "", zorder=4.0)
    axes.scatter(
        *places.T, marker="s", s=26, c=PURPLE, edgecolors="white", linewidths=0.8, zorder=4.1, label=words(INLET)
    )
    if names:
        room = Room(axes)
        room.take(places, 3.5)
        for place, inlet in zip(places, inlets):
            _write_beside(axes, room, place, inlet.name)


def _write_beside(axes: Any, room: Room, xy: np.ndarray, text: str) -> None:
    offset = room.beside(xy, 0.68 * _TEXT * len(text), _TEXT)
    if offset is not None:
        _write(axes, xy, offset, text)


def _write_inside(axes: Any, room: Room, polygon: Polygon, unit: LengthUnit, text: str) -> None:
    """In the widest place of a polygon, as far as one can see from a grid of places in it."""
    ring = polygon[0] / unit.metres
    low, high = ring.min(axis=0), ring.max(axis=0)
    grid = np.stack(np.meshgrid(*(np.linspace(a, b, 23)[1:-1] for a, b in zip(low, high))), -1).reshape(-1, 2)
    grid = grid[inside(grid, [r / unit.metres for r in polygon])]
    if not len(grid):
        return
    rim = np.concatenate([r[:-1] / unit.metres for r in polygon])
    distance = np.min(np.hypot(*(grid[:, None] - rim[None]).transpose(2, 0, 1)), axis=1)
    width, height = 0.68 * _TEXT * len(text), _TEXT
    for k in np.argsort(-distance, kind="stable")[:12]:
        if room.free(grid[k : k + 1], 0.45 * width)[0]:
            room.take_text(grid[k], width, height, 0.0)
            _write(axes, grid[k], (0.0, 0.0), text)
            return


def _write(axes: Any, xy: np.ndarray, offset: Tuple[float, float], text: str) -> None:
    axes.annotate(
        text, xy, xytext=offset, textcoords="offset points", ha="center", va="center", fontsize=_TEXT, color=INK,
        zorder=6, annotation_clip=False, path_effects=[withStroke(linewidth=2.0, foreground="w")],
    )  # fmt: skip


def _name_fill(axes: Any, there: bool, face: str, edge: str, label: str, hatch: str = "") -> None:
    """A line of the legend for areas, where there are some."""
    if there:
        named = PolyCollection([], facecolors=face, edgecolors=edge, hatch=hatch or None, label=label)
        axes.add_collection(named, autolim=False)


def _depths(unit: LengthUnit) -> Tuple[float, ...]:
    """Metres at which the classes of depth begin, round in ``unit``."""
    return _DEPTHS if unit is LengthUnit.METRE else tuple(depth * unit.metres for depth in _DEPTHS_IN_FEET)


def _name_depths(axes: Any, ponds: Ponds, unit: LengthUnit) -> None:
    """The classes of depth that occur."""
    depths = _depths(unit)
    limits = [number(depth / unit.metres, 2) for depth in depths]
    for k in np.unique(np.searchsorted(depths, ponds.depth, "right") - 1).tolist():
        text = f"> {limits[k]}" if k + 1 == len(limits) else f"{limits[k]} – {limits[k + 1]}"
        _name_fill(axes, True, BLUES[k], DARK_BLUE, f"{text} {unit.symbol}")
