"""Grade a platform into the ground: slopes of cut and of fill from its rim to daylight."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..surface.along import lay_lines
from ..surface.ask import triangle_boxes, triangle_gradients
from ..surface.dissolve import dissolve
from ..surface.locate import heights_at
from ..surface.parts import connected_parts
from ..surface.tin import Tin
from .creases import over_rim
from .grading_partition import Side, grading_partition
from .partition import Partition
from .polygons import FLAT
from .rim import Rim, check_changes, most_slopes
from .side_slopes import Facets, SideSlopes, make_facets, of_one_plane, reach_needed, refuse_slopes
from .volume import Volume, volume_between

NO_DAYLIGHT = Text(
    "earthwork.no_daylight",
    QT_TRANSLATE_NOOP(
        "core",
        "The slopes do not meet the ground along {length:.1f} m, since the surface ends there, first near "
        "E {easting:.3f} N {northing:.3f}. Volumes stop at its rim; survey farther out or use steeper slopes.",
    ),
)
OFF_GROUND = Text(
    "earthwork.platform_off_ground",
    QT_TRANSLATE_NOOP(
        "core", "{area:.1f} m² of the platform are outside the existing surface; no volume is counted there."
    ),
)
NO_GROUND = Text(
    "earthwork.platform_without_ground",
    QT_TRANSLATE_NOOP("core", "The platform is wholly outside the existing surface. Check its place and the CRS."),
)

SLOPES_CROSS = Text(
    "earthwork.slopes_cross",
    QT_TRANSLATE_NOOP(
        "core",
        "Slopes of cut run under slopes of fill over {area:.1f} m², by up to {height:.2f} m, most near E {easting:.3f} "
        "N {northing:.3f}: there is no room for both. The cut counts there, and its upper edge is steeper than asked "
        "for. Give steeper side slopes, or bring these parts of the platform farther apart or nearer in height.",
    ),
    weight=2,
)

_LEAST_CROSSING = 1e-3  # metres by which a slope of cut must be under one of fill to be told; below, it is rounding
_FLAT = 1e-6  # gradients that differ less make no breakline
PLATFORM, CUT_SLOPE, FILL_SLOPE = 1, 2, 3


@dataclass(frozen=True)
class Platform:
    """What is graded: its surface ``tin`` and its ``rims``, the outline first, then its holes."""

    tin: Tin
    rims: Tuple[Rim, ...]

    @property
    def outline(self) -> np.ndarray:
        """The outer ring (k, 3)."""
        return self.rims[0].ring


@dataclass(frozen=True)
class Grading:
    """A graded design.

    ``design``: the platform and its slopes to daylight, breaklines marked; ``zone``: (m,) of each triangle:
    ``PLATFORM``, ``CUT_SLOPE`` or ``FILL_SLOPE``. ``daylight``: closed lines (k, 3) where the design ends, in the CRS.
    ``volume``: exact, existing to design.
    """

    design: Tin
    zone: np.ndarray
    daylight: Tuple[np.ndarray, ...]
    volume: Volume
    messages: Tuple[Message, ...]


def grade(existing: Tin, platform: Platform, slopes: SideSlopes) -> Grading:
    """Grade ``platform`` into ``existing`` ground.

    Beyond the rim, ground above the slope of cut is cut down to it and ground below the slope of fill is filled
    up to it, as far as this goes on without a break from the platform. Ground that is on a slope already stays as it
    is: the design ends there. Vertices stand on the 0.1 mm grid.
    Raises SurveyError for a platform that is outside the existing surface.
    """
    ground, sides = _near(existing, platform, slopes)
    partition = grading_partition(ground, platform.tin, platform.rims, sides)
    zone, heights, crossing = _zones(ground, platform, sides, partition)
    zone[~_reached(partition.tin, zone)] = 0
    crossing[zone == 0] = 0.0
    design = _design(partition.tin, platform, zone, heights, existing)
    kept = zone[zone > 0]
    volume = volume_between(ground, design)
    if volume.common_area <= 0:
        raise SurveyError(NO_GROUND)
    volume = replace(volume, existing_only=existing.plan_area - volume.common_area)
    outline = dissolve(design, np.zeros(len(design.triangles), np.int64))
    rings = [_with_heights(design, ring) for polygon in outline for ring in polygon.rings]
    said = (*_said_of_crossing(partition.tin, crossing), *_messages(ground, design, kept, volume))
    return Grading(design, kept, tuple(rings), volume, said)


def _near(existing: Tin, platform: Platform, slopes: SideSlopes) -> Tuple[Tin, Tuple[Side, ...]]:
    """The ground as far as slopes may go, and the slopes. Those around a corner may go farther than those square to an
    edge, and so to other ground."""
    corners = np.vstack([_local(rim.ring, existing) for rim in platform.rims])
    boxes = triangle_boxes(existing)
    most, farther = most_slopes(platform.rims, slopes), 1.0
    while True:
        reach = reach_needed(corners, most, boxes, farther)
        ground = _crop(existing, boxes, platform.outline, reach * farther)
        if len(ground.triangles) == 0:
            raise SurveyError(NO_GROUND)
        sides = _sides(platform, ground, slopes, reach)
        carried = max((side.facets.carried / reach for side in sides), default=1.0)
        if carried <= farther * (1 + 1e-9):
            return ground, sides
        farther = carried


def _sides(platform: Platform, ground: Tin, slopes: SideSlopes, reach: float) -> Tuple[Side, ...]:
    found = []
    for number, rim in enumerate(platform.rims):
        check_changes(rim, slopes, reach)
        runs, ring = rim.edge_runs(slopes), _local(rim.ring, ground)
        for column, sign in enumerate((1.0, -1.0)):
            if np.max(sign * ground.vertices[:, 2]) <= np.min(sign * ring[:, 2]):
                continue  # all of the ground is lower than what would be cut, or higher than what would be filled
            origin = np.append(ground.origin, 0.0)
            facets = make_facets(ring, rim.sloped, runs[:, column], sign, reach, slopes.corner, origin)
            if len(facets):
                _check_rim(facets, ring, rim.sloped, runs[:, column], ground)
                found.append(Side(facets, number))
    return tuple(found)


def _check_rim(facets: Facets, ring: np.ndarray, sloped: np.ndarray, runs: np.ndarray, ground: Tin) -> None:
    """Refuse slopes that run under an edge of their own platform in ground that they cut, or over one as they fill."""
    stretches, facet = over_rim(facets, ring, sloped)
    if len(stretches) == 0:
        return
    laid = lay_lines(ground, list(stretches + ground.origin))
    of = np.repeat(facet[laid.line], np.diff(laid.start))
    x, y = (laid.xyz[:, :2] - ground.origin).T
    bad = facets.sign * (laid.xyz[:, 2] - facets.height(of, x, y)) > FLAT
    if np.any(bad):
        refuse_slopes(laid.xyz[np.argmax(bad)], float(runs.max()), of_one_plane(ring))


def _local(ring: np.ndarray, tin: Tin) -> np.ndarray:
    result: np.ndarray = ring - np.append(tin.origin, 0.0)
    return result


def _crop(tin: Tin, boxes: Tuple[np.ndarray, np.ndarray], ring: np.ndarray, reach: float) -> Tin:
    """The triangles of a surface near a ring; neighbours left out count as none."""
    xy = ring[:, :2] - tin.origin
    low, high = xy.min(axis=0) - reach - 1, xy.max(axis=0) + reach + 1
    least, greatest = boxes
    return tin.part(np.all((greatest[:, :2] >= low) & (least[:, :2] <= high), axis=1))


def _zones(
    ground: Tin, platform: Platform, sides: Sequence[Side], partition: Partition
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """What each triangle would be, its heights (m, 3) at the corners, and by how much (m,) a slope of fill that would
    be there too is above the one of cut that counts."""
    cells = partition.tin
    corner = cells.vertices[cells.triangles][:, :, :2] + (cells.origin - ground.origin)
    middle = corner.mean(axis=1)
    zone, heights = np.zeros(len(corner), np.int64), np.full(corner.shape[:2], np.nan)
    inside = partition.inside[0]
    zone[inside] = PLATFORM
    flat = corner[inside].reshape(-1, 2) + ground.origin
    heights[inside] = heights_at(platform.tin, flat).reshape(-1, 3)
    outside = np.flatnonzero(~inside)
    level, crossing = np.full(len(corner), np.nan), np.zeros(len(corner))
    counts = level.copy()
    level[outside] = heights_at(ground, middle[outside] + ground.origin)
    for side in sides:
        facets = side.facets
        free = outside[side.beyond(partition)[outside]]
        facet, height = facets.nearest(middle[free])
        graded = np.flatnonzero((facet >= 0) & (facets.sign * (level[free] - height) > FLAT))
        twice = graded[zone[free[graded]] > 0]
        crossing[free[twice]] = height[twice] - counts[free[twice]]
        graded = graded[zone[free[graded]] == 0]
        counts[free[graded]] = height[graded]
        zone[free[graded]] = CUT_SLOPE if facets.sign > 0 else FILL_SLOPE
        at = corner[free[graded]]
        heights[free[graded]] = facets.height(facet[graded], at[:, :, 0], at[:, :, 1])
    return zone, heights, crossing


def _reached(tin: Tin, zone: np.ndarray) -> np.ndarray:
    """Mask (m,) of the triangles that hang together with the platform through triangles with a zone."""
    triangle, edge = np.nonzero(tin.neighbours >= 0)
    other = tin.neighbours[triangle, edge]
    both = (zone[triangle] > 0) & (zone[other] > 0)
    part = connected_parts(len(zone), triangle[both], other[both])
    result: np.ndarray = np.isin(part, part[zone == PLATFORM])
    return result


def _design(tin: Tin, platform: Platform, zone: np.ndarray, heights: np.ndarray, existing: Tin) -> Tin:
    """The triangles with a zone as a surface; corners take the platform's height, else the mean of their slopes'."""
    keep = np.flatnonzero(zone > 0)
    used, corner = np.unique(tin.triangles[keep], return_inverse=True)
    corner = corner.reshape(-1, 3)
    z = np.full(len(used), np.nan)
    for of_platform in (False, True):
        rows = np.flatnonzero((zone[keep] == PLATFORM) == of_platform)
        known = np.isfinite(heights[keep][rows])
        at, value = corner[rows][known], heights[keep][rows][known]
        count, total = np.bincount(at, minlength=len(used)), np.bincount(at, value, len(used))
        z[count > 0] = total[count > 0] / count[count > 0]
    number = np.full(len(tin.triangles) + 1, -1, np.int32)
    number[keep] = np.arange(len(keep), dtype=np.int32)
    design = Tin(
        vertices=np.column_stack([tin.vertices[used, :2], z]),
        triangles=corner.astype(np.int32),
        neighbours=number[tin.neighbours[keep]],
        edge_kind=tin.edge_kind[keep],
        grid=tin.grid[used],
        origin=tin.origin,
        vertex_source=np.full(len(used), -1, np.int64),
        crs=existing.crs,
    )
    return replace(design, edge_kind=_breaks(design))


def _breaks(tin: Tin) -> np.ndarray:
    """Marks (m, 3) of the edges where the slope changes, and of the rim."""
    gradient = triangle_gradients(tin)
    change = np.abs(gradient[:, None, :] - gradient[tin.neighbours]).max(axis=2)
    # between slivers of the 0.1 mm grid gradients are rounded more than between ordinary triangles
    rounding = 1e-4 / np.maximum(tin.edge_lengths().min(axis=1), 1e-4)
    rounding = np.maximum(rounding[:, None], rounding[tin.neighbours])
    marks: np.ndarray = (tin.neighbours < 0) | ((tin.edge_kind > 0) & (change > np.maximum(_FLAT, rounding)))
    return marks.astype(np.uint8)


def _with_heights(tin: Tin, ring: np.ndarray) -> np.ndarray:
    key = {
        tuple(place): z for place, z in zip(np.round(tin.vertices[:, :2] + tin.origin, 5).tolist(), tin.vertices[:, 2])
    }
    z = [key[tuple(place)] for place in np.round(ring, 5).tolist()]
    return np.column_stack([ring, z])


def _said_of_crossing(cells: Tin, crossing: np.ndarray) -> Tuple[Message, ...]:
    """What is to be told of triangles (m,) in which slopes of fill are so much above those of cut."""
    area = float(cells.plan_areas()[crossing > _LEAST_CROSSING].sum())
    if area < _LEAST_CROSSING:
        return ()
    worst = int(np.argmax(crossing))
    easting, northing = (cells.corners()[worst, :, :2].mean(axis=0) + cells.origin).tolist()
    values = {"area": area, "height": float(crossing[worst]), "easting": easting, "northing": northing}
    return (message(SLOPES_CROSS, **values),)


def _messages(ground: Tin, design: Tin, zone: np.ndarray, volume: Volume) -> Tuple[Message, ...]:
    said: List[Message] = []
    triangle, side = np.nonzero((design.neighbours < 0) & (zone > PLATFORM)[:, None])
    ends = [design.triangles[triangle, side], design.triangles[triangle, (side + 1) % 3]]
    middle = design.vertices[ends].mean(axis=0)
    level = heights_at(ground, middle[:, :2] + design.origin)
    length = np.hypot(*(design.vertices[ends[1]] - design.vertices[ends[0]])[:, :2].T)
    # slopes that end beside the ground end at its rim, or at an end of the platform without slopes
    off = (np.isnan(level) | _on_rim(ground, middle[:, :2] + design.origin)) & (np.abs(level - middle[:, 2]) > 1e-3)
    if np.any(off):
        first = middle[off][0, :2] + design.origin
        where = {"easting": float(first[0]), "northing": float(first[1])}
        said.append(message(NO_DAYLIGHT, length=float(length[off].sum()), **where))
    if volume.design_only > 0.01:
        said.append(message(OFF_GROUND, area=volume.design_only))
    return tuple(said)


def _on_rim(tin: Tin, xy: np.ndarray) -> np.ndarray:
    """Mask of the places (q, 2) at the rim of a surface: some place 1 mm beside them is off it."""
    shifts = 1e-3 * np.array([[1, 0], [-1, 0], [0, 1], [0, -1], [0.7, 0.7], [0.7, -0.7], [-0.7, 0.7], [-0.7, -0.7]])
    off = [np.isnan(heights_at(tin, xy + shift)) for shift in shifts]
    result: np.ndarray = np.any(off, axis=0)
    return result
