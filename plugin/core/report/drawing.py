"""What all maps of the report share: frame, relief, rim and breaklines, scale bar, grid north, output.

Drawn with matplotlib's objects (no pyplot, so no window and no global state). Colours: ColorBrewer 2.0 schemes
BrBG, PuOr, YlOrBr and Greys, which ColorBrewer marks as safe for colour-blind readers; every class also has its own
marker or line style. Relief: Lambert shading from the north-west at 45 degrees, the usual light of printed
maps (common practice, no source).
"""

from __future__ import annotations

import base64
import io
import math
from dataclasses import dataclass
from typing import Any, Optional, Tuple

import numpy as np
from matplotlib.backends.backend_agg import FigureCanvasAgg
from matplotlib.collections import LineCollection, PolyCollection
from matplotlib.colors import LinearSegmentedColormap, Normalize
from matplotlib.figure import Figure
from matplotlib.patches import Rectangle
from matplotlib.transforms import ScaledTranslation, blended_transform_factory
from scipy.ndimage import distance_transform_edt

from ..georeference.axes import turned
from ..linework.constraints import LineKind
from ..messages import QT_TRANSLATE_NOOP
from ..surface.chains import edge_chains
from ..surface.tin import Tin
from ..units import LengthUnit
from .labels import Words, nice_step, number

BROWN, DARK_BROWN, TEAL = "#8c510a", "#543005", "#01665e"  # BrBG
ORANGE, PURPLE, GREY, INK = "#e66101", "#5e3c99", "#969696", "#252525"  # PuOr, Greys
STEEPER = ("#ffffd4", "#fee391", "#fec44f", "#fe9929", "#ec7014", "#cc4c02", "#8c2d04")  # YlOrBr
_RELIEF = LinearSegmentedColormap.from_list("relief", ["#737373", "#d9d9d9", "#ffffff"])
_DRAWN_ONE_BY_ONE = 150_000  # triangles; more are averaged to cells first
_BELOW, _ABOVE = 1.0, 0.5  # inches of a map's figure below and above its frame
_LEGEND_ROW = 0.2  # inches
_NEAR_EDGE = 0.05  # share of a frame's width; a label there would leave the figure
STYLE = {
    "font.family": "DejaVu Sans",  # comes with matplotlib: the same picture everywhere
    "font.size": 9.0,
    "axes.edgecolor": INK,
    "axes.titlesize": 10.0,
    "svg.fonttype": "path",
    "svg.hashsalt": "hummock",
}

EASTING = QT_TRANSLATE_NOOP("core", "Easting ({unit})")
NORTHING = QT_TRANSLATE_NOOP("core", "Northing ({unit})")
WESTING = QT_TRANSLATE_NOOP("core", "Westing ({unit})")
SOUTHING = QT_TRANSLATE_NOOP("core", "Southing ({unit})")
GRID_NORTH = QT_TRANSLATE_NOOP("core", "grid north")
#: Marks a map whose axes run west and south.
_UPSIDE_DOWN = "south-up"
BREAKLINE = QT_TRANSLATE_NOOP("core", "breakline")
RIM = QT_TRANSLATE_NOOP("core", "rim of the surface")


@dataclass(frozen=True)
class Picture:
    """A drawn figure as a data URI, and what its caption needs to know."""

    uri: str
    exaggeration: float = 1.0


# Frame


def map_axes(
    bounds: Tuple[float, float, float, float],
    unit: LengthUnit,
    words: Words,
    legend_rows: int = 2,
    crs: Optional[Any] = None,
) -> Tuple[Figure, Any]:
    """A figure that fits ``bounds`` (west, south, east, north in metres of ``crs``) at equal scales."""
    below = _BELOW + _LEGEND_ROW * max(0, legend_rows - 2)
    west, south, east, north = (value / unit.metres for value in bounds)
    wide, tall = max(east - west, 1e-3), max(north - south, 1e-3)
    margin = 0.04 * max(wide, tall)
    wide, tall = wide + 2 * margin, tall + 2 * margin
    width = 8.0 if wide >= 0.6 * tall else 5.5
    height = min(max(width * 0.88 * tall / wide, 2.4), 9.0) + below + _ABOVE
    figure = Figure(figsize=(width, height))
    FigureCanvasAgg(figure)
    axes = figure.add_axes([0.1, below / height, 0.88, 1 - (below + _ABOVE) / height])
    axes.set_xlim(west - margin, east + margin)
    axes.set_ylim(south - margin, north + margin)
    axes.set_aspect("equal", adjustable="box")
    axes.set_gid(_UPSIDE_DOWN if turned(crs) else None)
    axes.set_xlabel(words(WESTING if turned(crs) else EASTING, unit=unit.symbol))
    axes.set_ylabel(words(SOUTHING if turned(crs) else NORTHING, unit=unit.symbol))
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
    west, east = axes.get_xlim()
    for tick, label in zip(axes.get_xticks(), axes.get_xticklabels()):
        if abs(east - tick) < _NEAR_EDGE * abs(east - west):  # the figure ends soon after the frame
            label.set_ha("right")
    axes.tick_params(labelsize=8, length=4)


# Surface


def draw_relief(axes: Any, tin: Tin, unit: LengthUnit) -> float:
    """Shade each triangle; returns by how much heights are exaggerated for it."""
    shade, exaggeration = hillshade(tin.corners())
    draw_triangles(axes, tin, unit, shade, _RELIEF, Normalize(0.0, 1.0))
    return exaggeration


def draw_triangles(axes: Any, tin: Tin, unit: LengthUnit, values: np.ndarray, colours: Any, norm: Any) -> None:
    """Colour each triangle by its value (m,)."""
    plan = (tin.corners()[..., :2] + tin.origin) / unit.metres
    large = np.ones(len(plan), bool)
    if len(plan) > _DRAWN_ONE_BY_ONE:
        cell = math.sqrt(tin.plan_area / (_DRAWN_ONE_BY_ONE * 2.0)) / unit.metres
        large = np.ptp(plan, axis=1).max(axis=1) > 4.0 * cell
        _draw_cells(axes, plan[~large].mean(axis=1), values[~large], cell, colours, norm)
    polygons = PolyCollection(
        plan[large], array=values[large], cmap=colours, norm=norm, edgecolors="face", linewidths=0.2, antialiaseds=False
    )
    axes.add_collection(polygons, autolim=False)


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


def _draw_cells(axes: Any, place: np.ndarray, values: np.ndarray, cell: float, colours: Any, norm: Any) -> None:
    """Mean value of the triangles in each square cell; single empty cells take their neighbour's."""
    low = place.min(axis=0)
    column, row = np.floor((place - low) / cell).astype(np.int64).T
    columns, rows = int(column.max()) + 1, int(row.max()) + 1
    index = row * columns + column
    count = np.bincount(index, minlength=rows * columns)
    total = np.bincount(index, weights=values, minlength=rows * columns)
    image = np.where(count > 0, total / np.maximum(count, 1), np.nan).reshape(rows, columns)
    distance, nearest = distance_transform_edt(np.isnan(image), return_indices=True)
    filled = image[tuple(nearest)]
    filled[distance > 2.0] = np.nan
    extent = (low[0], low[0] + columns * cell, low[1], low[1] + rows * cell)
    axes.imshow(filled, extent=extent, origin="lower", cmap=colours, norm=norm, interpolation="nearest", aspect="equal")


def draw_edges(axes: Any, tin: Tin, unit: LengthUnit, words: Words) -> None:
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
    chains = edge_chains(ends)
    plan = (tin.vertices[:, :2] + tin.origin) / unit.metres
    lines = [plan[chain] for chain in chains]
    collection = LineCollection(lines, colors=color, linewidths=width, linestyles=[style], label=label, zorder=2.5)
    axes.add_collection(collection, autolim=False)


# Around the frame


def finish_map(axes: Any, unit: LengthUnit, words: Words, columns: int = 5) -> None:
    """Scale bar and grid north above the frame, below it the legend in so many columns."""
    _scale_bar(axes, unit)
    above = _inches_from(axes, 1.0)
    arrow = {"arrowstyle": "-|>", "color": INK, "lw": 1.4, "shrinkA": 0, "shrinkB": 0}
    right = axes.get_xlim()[1] - 0.015 * (axes.get_xlim()[1] - axes.get_xlim()[0])
    tip, foot = (0.06, 0.45) if axes.get_gid() == _UPSIDE_DOWN else (0.45, 0.06)
    axes.annotate(
        "", xy=(right, tip), xytext=(right, foot), xycoords=above, textcoords=above, arrowprops=arrow,
        annotation_clip=False,
    )  # fmt: skip
    axes.text(right, 0.15, words(GRID_NORTH) + "    ", transform=above, ha="right", va="center", fontsize=8)
    if axes.get_legend_handles_labels()[0]:
        axes.legend(
            loc="upper center", bbox_to_anchor=(0.5, -0.5), bbox_transform=_inches_from(axes, 0.0, axes.transAxes),
            ncol=columns, frameon=False, fontsize=8, markerscale=1.6,
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


# Output


def png(figure: Figure, dpi: int = 160) -> str:
    out = io.BytesIO()
    figure.savefig(out, format="png", dpi=dpi, metadata={"Software": None})
    return "data:image/png;base64," + base64.b64encode(out.getvalue()).decode("ascii")


def svg(figure: Figure) -> str:
    out = io.BytesIO()
    said = dict.fromkeys(("Date", "Creator", "Format", "Type"))  # nothing that differs from run to run
    figure.savefig(out, format="svg", metadata=said)
    return "data:image/svg+xml;base64," + base64.b64encode(out.getvalue()).decode("ascii")
