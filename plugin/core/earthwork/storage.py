"""How much a basin holds: stage, area and volume from its pit to where it spills."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..surface.basins import height_order
from ..surface.filling import fill_surface, last_shut_node, lowest_vertices
from ..surface.locate import locate
from ..surface.parts import connected_parts
from ..surface.tin import Tin
from .polygons import areas, integrals, positive_parts

NO_PIT = Text(
    "earthwork.no_pit",
    QT_TRANSLATE_NOOP(
        "core", "The place of the basin, E {easting:.3f} N {northing:.3f}, is outside the surface. Give one inside."
    ),
)
HOLDS_NOTHING = Text(
    "earthwork.holds_nothing",
    QT_TRANSLATE_NOOP(
        "core",
        "From E {easting:.3f} N {northing:.3f} water runs off the surface at once: there is no basin. Give a place "
        "inside the basin, or a surface that takes in its whole rim.",
    ),
)
BAD_STAGES = Text(
    "earthwork.stages", QT_TRANSLATE_NOOP("core", "A curve of {count} steps cannot be made; give 1 to {most}.")
)
SPILLS_AT_RIM = Text(
    "earthwork.spills_at_rim",
    QT_TRANSLATE_NOOP(
        "core",
        "The basin spills at the edge of the surface (E {easting:.3f} N {northing:.3f}); its true brim may be "
        "elsewhere. Survey beyond it.",
    ),
)

_MOST_STEPS = 10_000


@dataclass(frozen=True)
class Stage:
    """Water at ``level`` (m): its ``area`` (m²) and ``volume`` (m³)."""

    level: float
    area: float
    volume: float


@dataclass(frozen=True)
class Storage:
    """``pit``: (3,) easting, northing and height of the lowest place; ``spill``: (3,) where water leaves; ``curve``:
    from the pit to the spill, in rising order."""

    pit: np.ndarray
    spill: np.ndarray
    curve: Tuple[Stage, ...]
    messages: Tuple[Message, ...]

    @property
    def capacity(self) -> float:
        """Volume at the spill level, cubic metres."""
        return self.curve[-1].volume


def basin_storage(tin: Tin, place: Optional[np.ndarray] = None, steps: int = 50) -> Storage:
    """Stage, area and volume of the basin around ``place`` (2,) in the CRS, or around the surface's lowest vertex.

    The basin is the outermost pond in which water ends that goes from the lowest corner of the triangle at ``place``
    always to the lowest neighbour. It spills at the lowest level at which water reaches the rim of the surface. Pits
    within the basin join as the water rises, and each level counts only what is joined to the lowest. Areas and volumes
    are exact at ``steps`` even stages. A void in the surface counts as its rim: water that reaches it leaves. Raises
    SurveyError where there is no basin.
    """
    if not 1 <= steps <= _MOST_STEPS:
        raise SurveyError(BAD_STAGES, count=steps, most=_MOST_STEPS)
    rank, on_rim = height_order(tin), np.zeros(len(tin.vertices), bool)
    triangle, side = np.nonzero(tin.neighbours < 0)
    on_rim[tin.triangles[triangle, side]] = on_rim[tin.triangles[triangle, (side + 1) % 3]] = True
    start = _start(tin, rank, on_rim, place)
    filling = fill_surface(tin, rank, on_rim)
    node = last_shut_node(filling)[filling.ground[start]]
    where = tin.vertices[start, :2] + tin.origin if place is None else np.asarray(place, float)
    pit, spill = int(lowest_vertices(rank, filling)[node]), int(filling.saddle[node])
    if filling.open[node] or tin.vertices[pit, 2] >= tin.vertices[spill, 2]:
        raise SurveyError(HOLDS_NOTHING, easting=float(where[0]), northing=float(where[1]))
    low, level = (float(tin.vertices[v, 2]) for v in (pit, spill))
    basin = _only(tin, wet_triangles(tin, level, pit))
    levels = low + (level - low) * np.arange(steps + 1) / steps
    levels[-1] = level
    curve = tuple(_stage(basin, float(z), pit) for z in levels)
    xyz = [np.append(basin.vertices[v, :2] + basin.origin, basin.vertices[v, 2]) for v in (pit, spill)]
    said: Tuple[Message, ...] = ()
    if on_rim[spill]:
        said = (message(SPILLS_AT_RIM, easting=float(xyz[1][0]), northing=float(xyz[1][1])),)
    return Storage(xyz[0], xyz[1], curve, said)


def water_at(tin: Tin, level: float, pit: int) -> Stage:
    """Water at ``level`` that is joined to vertex ``pit``."""
    return _stage(tin, level, pit)


def wet_triangles(tin: Tin, level: float, pit: int) -> np.ndarray:
    """Numbers of the triangles under or partly under water of ``level`` that is joined to vertex ``pit``.

    Water goes on over an edge of which some part is below the level.
    """
    z = tin.vertices[tin.triangles, 2]
    low = np.flatnonzero(z.min(axis=1) < level)
    number = np.full(len(z) + 1, -1, np.int64)
    number[low] = np.arange(len(low))
    over = np.minimum(z, np.roll(z, -1, axis=1))[low] < level
    row, edge = np.nonzero(over & (number[tin.neighbours[low]] >= 0))
    other = number[tin.neighbours[low[row], edge]]
    part = connected_parts(len(low), row, other)
    at_pit = np.unique(part[np.any(tin.triangles[low] == pit, axis=1)])
    result: np.ndarray = low[np.isin(part, at_pit)] if tin.vertices[pit, 2] < level else low[:0]
    return result


def _stage(tin: Tin, level: float, pit: int) -> Stage:
    corner = tin.corners()[wet_triangles(tin, level, pit)]
    area = volume = 0.0
    for _, depth, (x, y) in positive_parts(level - corner[:, :, 2], corner[:, :, 0], corner[:, :, 1]):
        area += float(areas(x, y).sum())
        volume += float(integrals(x, y, depth).sum())
    return Stage(level, area, volume)


def _start(tin: Tin, rank: np.ndarray, on_rim: np.ndarray, place: Optional[np.ndarray]) -> int:
    """The vertex to begin at: the lowest within the surface, or the lowest corner of the triangle at ``place``."""
    if place is None:
        used = np.unique(tin.triangles)
        inner = used[~on_rim[used]]
        choice = inner if len(inner) else used
    else:
        xy = np.asarray(place, float).reshape(1, 2)
        triangle = int(locate(tin, xy)[0])
        if triangle < 0:
            raise SurveyError(NO_PIT, easting=float(xy[0, 0]), northing=float(xy[0, 1]))
        choice = tin.triangles[triangle]
    return int(choice[np.argmin(rank[choice])])


def _only(tin: Tin, triangles: np.ndarray) -> Tin:
    number = np.full(len(tin.triangles) + 1, -1, np.int32)
    number[triangles] = np.arange(len(triangles), dtype=np.int32)
    return replace(
        tin,
        triangles=tin.triangles[triangles],
        neighbours=number[tin.neighbours[triangles]],
        edge_kind=tin.edge_kind[triangles],
    )
