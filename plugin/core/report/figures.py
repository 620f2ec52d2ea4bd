"""The report's figures, drawn with matplotlib's objects (no pyplot, so no window and no global state).

Colours: ColorBrewer 2.0 schemes BrBG, PuOr and Greys, which ColorBrewer marks as safe for colour-blind
readers; every class also has its own marker or line style. Relief: Lambert shading from the north-west
at 45 degrees, the usual light of printed maps (common practice, no source).
"""

from __future__ import annotations

import base64
import io
import math
from dataclasses import dataclass
from typing import Any, List, Optional, Tuple

import numpy as np
from matplotlib import rc_context
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.collections import LineCollection, PolyCollection
from matplotlib.colors import LinearSegmentedColormap
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.patheffects import withStroke
from matplotlib.transforms import ScaledTranslation, blended_transform_factory
from scipy.ndimage import distance_transform_edt

from ..contours.lines import Contours
from ..georeference.crs import plan_unit
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import PointSet, Reason, Status
from ..surface.tin import Tin
from ..units import LengthUnit
from .labels import Words, level_decimals, nice_step, number, significant

BROWN, DARK_BROWN, TEAL = "#8c510a", "#543005", "#01665e"  # BrBG
ORANGE, PURPLE, GREY, INK = "#e66101", "#5e3c99", "#969696", "#252525"  # PuOr, Greys
_RELIEF = LinearSegmentedColormap.from_list("relief", ["#737373", "#d9d9d9", "#ffffff"])
_DRAWN_ONE_BY_ONE = 150_000  # triangles; more are averaged to cells first
_BELOW, _ABOVE = 0.8, 0.5  # inches of a map's figure below and above its frame
_STYLE = {
    "font.family": "DejaVu Sans",  # comes with matplotlib: the same picture everywhere
    "font.size": 9.0,
    "axes.edgecolor": INK,
    "axes.titlesize": 10.0,
    "svg.fonttype": "path",
    "svg.hashsalt": "hummock",
}

EASTING = QT_TRANSLATE_NOOP("core", "Easting ({unit})")
NORTHING = QT_TRANSLATE_NOOP("core", "Northing ({unit})")
HEIGHT = QT_TRANSLATE_NOOP("core", "Height ({unit})")
POINTS_A_BAR = QT_TRANSLATE_NOOP("core", "Points a bar of {width} {unit}")
DISTANCE = QT_TRANSLATE_NOOP("core", "Distance to the point recorded before ({unit})")
STEPS_A_BAR = QT_TRANSLATE_NOOP("core", "Steps a bar of {width} {unit}")
GRID_NORTH = QT_TRANSLATE_NOOP("core", "grid north")
CONTOUR = QT_TRANSLATE_NOOP("core", "contour")
INDEX_CONTOUR = QT_TRANSLATE_NOOP("core", "index contour")
BREAKLINE = QT_TRANSLATE_NOOP("core", "breakline")
RIM = QT_TRANSLATE_NOOP("core", "rim of the surface")
USED = QT_TRANSLATE_NOOP("core", "used")
FLAGGED = QT_TRANSLATE_NOOP("core", "flagged, still used")
REJECTED = QT_TRANSLATE_NOOP("core", "rejected")
CHECK_SHOT = QT_TRANSLATE_NOOP("core", "check shot")
MEDIAN = QT_TRANSLATE_NOOP("core", "median {value} {unit}")


@dataclass(frozen=True)
class Picture:
    """A drawn figure as a data URI, and what its caption needs to know."""

    uri: str
    exaggeration: float = 1.0


# Maps


def site_map(tin: Tin, contours: Contours, words: Words) -> Picture:
    """Contours over shaded relief, with rim, breaklines, scale bar and grid north; PNG."""
    unit = plan_unit(tin.crs)
    with rc_context(_STYLE):
        figure, axes = _map_axes(tin.bounds, unit, words)
        exaggeration = _draw_relief(axes, tin, unit)
        _draw_edges(axes, tin, unit, words)
        _draw_contours(axes, contours, unit, words)
        _finish_map(axes, unit, words)
        return Picture(_png(figure), exaggeration)


def points_map(points: PointSet, words: Words) -> Picture:
    """Every point by what became of it; PNG."""
    unit = plan_unit(points.crs)
    place = np.column_stack([points.easting, points.northing]) / unit.metres
    (west, south), (east, north) = place.min(axis=0) * unit.metres, place.max(axis=0) * unit.metres
    check = (points.reasons & int(Reason.CHECK_SHOT)) != 0
    classes = [
        (points.status == Status.USED, USED, {"marker": ".", "s": 5, "c": "#737373", "linewidths": 0}),
        (points.status == Status.FLAGGED, FLAGGED, {"marker": "^", "s": 18, "c": ORANGE, "linewidths": 0}),
        (points.status == Status.REJECTED, REJECTED, {"marker": "x", "s": 16, "c": PURPLE, "linewidths": 0.9}),
    ]
    with rc_context(_STYLE):
        figure, axes = _map_axes((west, south, east, north), unit, words)
        for mask, name, style in classes:
            mask = mask & ~check
            if mask.any():
                label = f"{words(name)}: {number(int(mask.sum()))}"
                axes.scatter(*place[mask].T, label=label, zorder=3, **style)
        if check.any():
            label = f"{words(CHECK_SHOT)}: {number(int(check.sum()))}"
            style = {"marker": "s", "s": 26, "facecolors": "none", "edgecolors": TEAL, "linewidths": 1.3}
            axes.scatter(*place[check].T, label=label, zorder=4, **style)
        _finish_map(axes, unit, words)
        return Picture(_png(figure))


def _map_axes(bounds: Tuple[float, float, float, float], unit: LengthUnit, words: Words) -> Tuple[Figure, Any]:
    """A figure that fits ``bounds`` (west, south, east, north in metres) at equal scales."""
    west, south, east, north = (value / unit.metres for value in bounds)
    wide, tall = max(east - west, 1e-3), max(north - south, 1e-3)
    margin = 0.04 * max(wide, tall)
    wide, tall = wide + 2 * margin, tall + 2 * margin
    width = 8.0 if wide >= 0.6 * tall else 5.5
    height = min(max(width * 0.88 * tall / wide, 2.4), 9.0) + _BELOW + _ABOVE
    figure = Figure(figsize=(width, height))
    FigureCanvasAgg(figure)
    axes = figure.add_axes([0.1, _BELOW / height, 0.88, 1 - (_BELOW + _ABOVE) / height])
    axes.set_xlim(west - margin, east + margin)
    axes.set_ylim(south - margin, north + margin)
    axes.set_aspect("equal", adjustable="box")
    axes.set_xlabel(words(EASTING, unit=unit.symbol))
    axes.set_ylabel(words(NORTHING, unit=unit.symbol))
    _coordinate_ticks(axes)
    return figure, axes


def _coordinate_ticks(axes: Any) -> None:
    """Whole coordinates at round places, four to eight a side."""
    step = nice_step(max(axes.get_xlim()[1] - axes.get_xlim()[0], axes.get_ylim()[1] - axes.get_ylim()[0]) / 4.0)
    decimals = max(0, -math.floor(math.log10(step) + 1e-9))
    for axis, (low, high) in ((axes.xaxis, axes.get_xlim()), (axes.yaxis, axes.get_ylim())):
        ticks = np.arange(math.ceil(low / step), math.floor(high / step) + 1) * step
        axis.set_ticks(ticks)
        axis.set_ticklabels([number(tick, decimals) for tick in ticks])
    for label in axes.get_yticklabels():
        label.set(rotation=90, va="center")
    axes.tick_params(labelsize=8, length=4)


def _draw_relief(axes: Any, tin: Tin, unit: LengthUnit) -> float:
    """Shade each triangle; returns by how much heights are exaggerated for it."""
    corners = tin.corners()
    shade, exaggeration = hillshade(corners)
    plan = (corners[..., :2] + tin.origin) / unit.metres
    large = np.ones(len(plan), bool)
    if len(plan) > _DRAWN_ONE_BY_ONE:
        cell = math.sqrt(tin.plan_area / (_DRAWN_ONE_BY_ONE * 2.0)) / unit.metres
        large = np.ptp(plan, axis=1).max(axis=1) > 4.0 * cell
        _draw_cells(axes, plan[~large].mean(axis=1), shade[~large], cell)
    polygons = PolyCollection(
        plan[large], array=shade[large], cmap=_RELIEF, edgecolors="face", linewidths=0.2, antialiaseds=False
    )
    polygons.set_clim(0.0, 1.0)
    axes.add_collection(polygons, autolim=False)
    return exaggeration


def hillshade(corners: np.ndarray) -> Tuple[np.ndarray, float]:
    """Brightness 0..1 of each triangle (m,) and the exaggeration of heights used.

    ``corners``: (m, 3, 3). Cosine of the angle between the normal and the light (azimuth 315, height 45
    degrees), over that of flat ground halved, so flat ground is middling bright. Heights are exaggerated
    (a whole number from 1 to 20) until one triangle in ten is steeper than 1 in 2.
    """
    u, v = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    normal = np.cross(u, v)
    normal /= normal[:, 2:]
    slope = np.hypot(normal[:, 0], normal[:, 1])
    steep = float(np.percentile(slope, 90))
    exaggeration = float(np.clip(round(0.5 / steep), 1, 20)) if steep > 0 else 1.0
    east, north = normal[:, 0] * exaggeration, normal[:, 1] * exaggeration
    root = math.sqrt(0.5)
    cosine = (0.5 * (north - east) + root) / np.sqrt(east**2 + north**2 + 1.0)
    return np.clip(cosine / (2 * root), 0.0, 1.0), exaggeration


def _draw_cells(axes: Any, place: np.ndarray, shade: np.ndarray, cell: float) -> None:
    """Mean shade of the triangles in each square cell; single empty cells take their neighbour's."""
    low = place.min(axis=0)
    column, row = np.floor((place - low) / cell).astype(np.int64).T
    columns, rows = int(column.max()) + 1, int(row.max()) + 1
    index = row * columns + column
    count = np.bincount(index, minlength=rows * columns)
    total = np.bincount(index, weights=shade, minlength=rows * columns)
    image = np.where(count > 0, total / np.maximum(count, 1), np.nan).reshape(rows, columns)
    distance, nearest = distance_transform_edt(np.isnan(image), return_indices=True)
    filled = image[tuple(nearest)]
    filled[distance > 2.0] = np.nan
    extent = (low[0], low[0] + columns * cell, low[1], low[1] + rows * cell)
    axes.imshow(
        filled, extent=extent, origin="lower", cmap=_RELIEF, vmin=0.0, vmax=1.0, interpolation="nearest", aspect="equal"
    )


def _draw_edges(axes: Any, tin: Tin, unit: LengthUnit, words: Words) -> None:
    kind = tin.edge_kind
    _draw_sides(axes, tin, unit, (kind & int(LineKind.BREAKLINE)) != 0, words(BREAKLINE), TEAL, 1.0, "-")
    _draw_sides(axes, tin, unit, tin.neighbours < 0, words(RIM), INK, 0.9, (0, (4, 2)))


def _draw_sides(
    axes: Any, tin: Tin, unit: LengthUnit, sides: np.ndarray, label: str, color: str, width: float, style: Any
) -> None:
    triangle, side = np.nonzero(sides)
    if len(triangle) == 0:
        return
    ends = np.stack([tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]], axis=1)
    ends = np.unique(np.sort(ends, axis=1), axis=0)
    chains = _chains(ends)
    plan = (tin.vertices[:, :2] + tin.origin) / unit.metres
    lines = [plan[chain] for chain in chains]
    collection = LineCollection(lines, colors=color, linewidths=width, linestyles=[style], label=label, zorder=2.5)
    axes.add_collection(collection, autolim=False)


def _chains(ends: np.ndarray) -> List[List[int]]:
    """Join edges (k, 2) to chains of vertices, so that dashes run through; a loop over these few edges."""
    around: dict = {}
    for a, b in ends.tolist():
        around.setdefault(a, []).append(b)
        around.setdefault(b, []).append(a)
    chains = []
    starts = [vertex for vertex, others in around.items() if len(others) != 2]
    for start in starts + list(around):
        while around[start]:
            chain = [start]
            while around[chain[-1]]:
                last, following = chain[-1], around[chain[-1]].pop()
                around[following].remove(last)
                chain.append(following)
            chains.append(chain)
    return chains


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
    _label_index_contours(axes, contours, lines)


def _label_index_contours(axes: Any, contours: Contours, lines: List[np.ndarray]) -> None:
    """Write the level on the long index contours, longest first, where no other label is near."""
    size = max(axes.get_xlim()[1] - axes.get_xlim()[0], axes.get_ylim()[1] - axes.get_ylim()[0])
    lengths = np.array([np.hypot(*np.diff(line, axis=0).T).sum() for line in lines])
    decimals = level_decimals(contours.options.interval, contours.options.base)
    placed: List[np.ndarray] = []
    halo = [withStroke(linewidth=2.2, foreground="w")]
    for i in np.argsort(-lengths, kind="stable"):
        if lengths[i] < 0.12 * size:
            break
        if not contours.index[i]:
            continue
        tries = (_along(lines[i], share, 0.03 * size) for share in (0.5, 0.3, 0.7, 0.1, 0.9))
        free = (t for t in tries if all(np.hypot(*(t[0] - other)) > 0.09 * size for other in placed))
        place, angle = next(free, (None, 0.0))
        if place is None:
            continue
        placed.append(place)
        axes.text(
            *place, number(contours.level_in_unit[i], decimals), rotation=angle, rotation_mode="anchor", ha="center",
            va="center", fontsize=7, color=DARK_BROWN, zorder=5, path_effects=halo,
        )  # fmt: skip


def _along(line: np.ndarray, share: float, reach: float) -> Tuple[np.ndarray, float]:
    """The point at ``share`` of the length of ``line`` and its direction in degrees, turned to be read upright."""
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(line, axis=0).T))])
    here = along[-1] * share
    at = [np.array([np.interp(d, along, line[:, k]) for k in (0, 1)]) for d in (here - reach, here, here + reach)]
    angle = math.degrees(math.atan2(*(at[2] - at[0])[::-1]))
    if angle > 90 or angle <= -90:
        angle += -180 if angle > 0 else 180
    return at[1], angle


def _finish_map(axes: Any, unit: LengthUnit, words: Words) -> None:
    """Scale bar and grid north above the frame, legend below it."""
    _scale_bar(axes, unit)
    above = _inches_from(axes, 1.0)
    arrow = {"arrowstyle": "-|>", "color": INK, "lw": 1.4, "shrinkA": 0, "shrinkB": 0}
    right = axes.get_xlim()[1] - 0.015 * (axes.get_xlim()[1] - axes.get_xlim()[0])
    axes.annotate(
        "", xy=(right, 0.45), xytext=(right, 0.06), xycoords=above, textcoords=above, arrowprops=arrow,
        annotation_clip=False,
    )  # fmt: skip
    axes.text(right, 0.15, words(GRID_NORTH) + "    ", transform=above, ha="right", va="center", fontsize=8)
    if axes.get_legend_handles_labels()[0]:
        axes.legend(
            loc="upper center", bbox_to_anchor=(0.5, -0.5), bbox_transform=_inches_from(axes, 0.0, axes.transAxes),
            ncol=4, frameon=False, fontsize=8, markerscale=1.6,
        )  # fmt: skip


def _inches_from(axes: Any, height: float, across: Optional[Any] = None) -> Any:
    """A transform: data (or ``across``) in x, inches above the frame's relative ``height`` in y."""
    across = across or axes.transData
    up = axes.figure.dpi_scale_trans + ScaledTranslation(0.0, height, axes.transAxes)
    return blended_transform_factory(across, up)


def _scale_bar(axes: Any, unit: LengthUnit) -> None:
    """A bar in two halves above the frame, about a fifth of its width."""
    west, east = axes.get_xlim()
    length = nice_step((east - west) / 5)
    decimals = max(0, -math.floor(math.log10(length / 2) + 1e-9))
    above = _inches_from(axes, 1.0)
    for half, color in enumerate((INK, "white")):
        place = (west + half * length / 2, 0.09)
        axes.add_patch(
            Rectangle(
                place, length / 2, 0.07, transform=above, facecolor=color, edgecolor=INK, linewidth=0.8, clip_on=False
            )
        )
    for end in range(3):
        text = number(end * length / 2, decimals) + (f" {unit.symbol}" if end == 2 else "")
        axes.text(west + end * length / 2, 0.21, text, transform=above, ha="center" if end else "left", fontsize=7.5)


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
    """Plan distances (n - 1,) in metres from each point to the next in the order of recording."""
    return np.hypot(np.diff(points.easting), np.diff(points.northing))


def _histogram(
    values: np.ndarray, edges: np.ndarray, width: float, unit: str, across: str, up: str, words: Words
) -> Picture:
    with rc_context(_STYLE):
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
        return Picture(_svg(figure))


# Output


def _png(figure: Figure, dpi: int = 160) -> str:
    out = io.BytesIO()
    figure.savefig(out, format="png", dpi=dpi, metadata={"Software": None})
    return "data:image/png;base64," + base64.b64encode(out.getvalue()).decode("ascii")


def _svg(figure: Figure) -> str:
    out = io.BytesIO()
    said = dict.fromkeys(("Date", "Creator", "Format", "Type"))  # nothing that differs from run to run
    figure.savefig(out, format="svg", metadata=said)
    return "data:image/svg+xml;base64," + base64.b64encode(out.getvalue()).decode("ascii")
