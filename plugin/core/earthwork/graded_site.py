"""A graded design on its ground, whatever it was made from: what layers, meshes and reports need of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Optional, Tuple

import numpy as np

from ..messages import Message
from ..surface.ask import triangle_boxes
from ..surface.locate import locate
from ..surface.tin import Tin
from .combine import combine
from .design_lines import DesignLine, DesignLineKind, design_lines
from .edge_slopes import distances
from .grading import PLATFORM, Grading
from .overlay import common_pieces
from .pads import GradedPad, SiteGrading
from .polygons import positive_parts
from .strip import StripLine
from .volume import Volume

_MARGIN = 0.15  # of the design's size, around it


@dataclass(frozen=True)
class GradedSite:
    """``ground``: the existing surface around the design; ``nodes``: (n,) numbers that its vertices have in the whole.

    ``design``, with the ``zone`` (m,) of each triangle (see :mod:`.grading`); ``finished``: all of the ground as it
    will be; ``lines``: breaks and ends of the design.
    ``axis``: (k, 2) line along which sections stand. ``strip``: lines along a strip, from left to right, else none.
    ``pads``: each pad's own grading, none for a strip.
    """

    ground: Tin
    nodes: np.ndarray
    design: Tin
    zone: np.ndarray
    finished: Tin
    volume: Volume
    lines: Tuple[DesignLine, ...]
    axis: np.ndarray
    messages: Tuple[Message, ...]
    pads: Tuple[GradedPad, ...] = ()
    strip: Tuple[StripLine, ...] = ()

    @property
    def is_strip(self) -> bool:
        return bool(self.strip)

    @property
    def half_width(self) -> float:
        """Metres to each side of the axis within which all of the design is."""
        place = self.design.vertices[:, :2] + self.design.origin
        return float(np.ceil(distances(place, self.axis).max() + 0.5))


def site_of_pads(existing: Tin, graded: SiteGrading) -> GradedSite:
    """The site of one or several pads; its axis runs from fill to cut of the largest, or along its longest side."""
    gradings = [each.grading for each in graded.pads]
    if len(gradings) == 1:
        design, zone = gradings[0].design, gradings[0].zone
    else:
        design, zone = _joined(graded)
    ground, nodes = _around(existing, design)
    lines = design_lines(Grading(design, zone, (), graded.volume, ()))
    largest = max(gradings, key=lambda grading: grading.design.plan_area)
    axis = _axis(ground, largest, design)
    return GradedSite(
        ground, nodes, design, zone, graded.finished, graded.volume, lines, axis, graded.messages, graded.pads
    )


def site_of_strip(existing: Tin, grading: Grading, centreline: np.ndarray, strip: Tuple[StripLine, ...]) -> GradedSite:
    """The site of a strip; its axis is the centreline."""
    design = grading.design
    finished = combine(existing, design)
    xy = np.asarray(centreline, float)[:, :2]
    # the strip's own lines say where it breaks; those across it, from station to station, say nothing
    lines = tuple(line for line in design_lines(grading) if line.kind is not DesignLineKind.PLATFORM_BREAK)
    return GradedSite(
        *_around(existing, design), design, grading.zone, finished, grading.volume, lines, xy, grading.messages, (),
        strip,
    )  # fmt: skip


def _joined(graded: SiteGrading) -> Tuple[Tin, np.ndarray]:
    """All designs as one surface, and its zones: the later pad counts where several are."""
    finished = graded.finished
    middle = finished.corners()[:, :, :2].mean(axis=1) + finished.origin
    zone = np.zeros(len(middle), np.int64)
    for each in graded.pads:
        at = locate(each.grading.design, middle)
        zone = np.where(at >= 0, each.grading.zone[at], zone)
    return finished.part(zone > 0), zone[zone > 0]


def _around(existing: Tin, design: Tin) -> Tuple[Tin, np.ndarray]:
    """The existing surface around the design, and which of its vertices that has."""
    west, south, east, north = design.bounds
    margin = _MARGIN * max(east - west, north - south) + 2
    low, high = np.array([west, south]) - margin - existing.origin, np.array([east, north]) + margin - existing.origin
    least, greatest = triangle_boxes(existing)
    near = np.all((greatest[:, :2] >= low) & (least[:, :2] <= high), axis=1)
    return existing.part(near), np.unique(existing.triangles[near])


def _axis(ground: Tin, largest: Grading, whole: Tin) -> np.ndarray:
    """A line (2, 2) through the middle of the ``largest`` pad's platform, over the ``whole`` design."""
    platform = largest.design.part(largest.zone == PLATFORM)
    corner = platform.corners()[:, :, :2] + platform.origin
    one, two = corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0]
    area = one[:, 0] * two[:, 1] - one[:, 1] * two[:, 0]
    middle = (corner.mean(axis=1) * area[:, None]).sum(axis=0) / area.sum()
    direction = _fill_to_cut(ground, largest.design)
    if direction is None:
        edge = corner[:, [1, 2, 0]] - corner
        outer = platform.neighbours < 0
        longest = edge[outer][np.argmax(np.hypot(*edge[outer].T))]
        direction = longest / np.hypot(*longest)
    along = (whole.vertices[:, :2] + whole.origin - middle) @ direction
    reach = np.array([along.min(), along.max()]) + np.array([-1.0, 1.0]) * 0.05 * np.ptp(along)
    result: np.ndarray = np.round(middle + reach[:, None] * direction, 3)
    return result


def _fill_to_cut(ground: Tin, design: Tin) -> Optional[np.ndarray]:
    """The direction (2,) from where most is filled to where most is cut; None where only one of both is."""
    total, place = np.zeros(2), np.zeros((2, 2))
    for part in common_pieces(ground, design):
        depth = part.second_height - part.first_height
        for row, sign in enumerate((1.0, -1.0)):
            for _, over, (x, y) in positive_parts(sign * depth, part.x, part.y):
                volume, moment = _volume_moment(x, y, over)
                total[row] += volume
                place[row] += moment + volume * part.origin
    if total.min() <= 0.02 * total.max():
        return None
    way = place[1] / total[1] - place[0] / total[0]
    size = float(np.hypot(*way))
    return way / size if size > 1.0 else None


def _volume_moment(x: np.ndarray, y: np.ndarray, depth: np.ndarray) -> Tuple[float, np.ndarray]:
    """Volume over polygons of a linear depth, and the integrals (2,) of depth times x and times y.

    In each triangle of their fans the integral of x d is A (sum of x times sum of d plus sum of x d) / 12.
    """
    fans = [np.stack([v[:, :1] + 0 * v[:, 2:], v[:, 1:-1], v[:, 2:]]) for v in (x, y, depth)]
    fx, fy, fd = fans
    area = 0.5 * ((fx[1] - fx[0]) * (fy[2] - fy[0]) - (fx[2] - fx[0]) * (fy[1] - fy[0]))
    volume = float(np.sum(area * fd.sum(axis=0)) / 3)
    moment = [np.sum(area * (v.sum(axis=0) * fd.sum(axis=0) + (v * fd).sum(axis=0))) / 12 for v in (fx, fy)]
    return volume, np.array(moment)
