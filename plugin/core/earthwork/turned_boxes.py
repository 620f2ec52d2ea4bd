"""Boxes about the triangles of two surfaces that lie along and across their long edges, for slivers side by side.

Triangles of long strings and of strips run one way. Upright boxes about them overlap in their thousands if the strings
lie askew, and share the cells of a square grid if they do not. In a frame turned that way and pressed together along it
until they are about as long as wide, each box meets but those near it.
"""

from __future__ import annotations

from typing import List, Optional, Tuple

import numpy as np

from ..surface.tin import Tin
from .polygons import across
from .triangles import Triangles

_MANY = 50.0  # pairs of boxes expected for each triangle above which boxes say too little
_ROUNDING = 1e-8  # metres by which turned boxes are larger, so that rounding loses no pair

Boxes = Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]


def turned_boxes(first: Tin, second: Tin, a: Triangles, b: Triangles) -> Optional[Boxes]:
    """South-west and north-east corners (k, 2) of turned and pressed boxes of both surfaces; None if upright ones
    will do, or these would not.

    Whatever the frame, triangles that meet have boxes that meet.
    """
    if min(len(first.triangles), len(second.triangles)) == 0:
        return None
    area = max(first.plan_area, second.plan_area)
    if _expected((a.low, a.high, b.low, b.high), area) <= _MANY:
        return None
    angle = _direction(a, b)
    sides = [_turned(each, angle) for each in (a, b)]
    length, width = np.median(np.concatenate([high - low for low, high in sides]), axis=0).tolist()
    pressed = np.array([min(1.0, width / length), 1.0])
    boxes = sides[0][0] * pressed, sides[0][1] * pressed, sides[1][0] * pressed, sides[1][1] * pressed
    return boxes if _expected(boxes, area * pressed[0]) <= _MANY else None


def _expected(boxes: Boxes, area: float) -> float:
    """Pairs to look at for each triangle, were the boxes strewn evenly over the area and as high as wide."""
    a, b = ((high - low).max(axis=1) for low, high in (boxes[:2], boxes[2:]))
    pairs = len(b) * (a @ a) + len(a) * (b @ b) + 2 * a.sum() * b.sum()
    return float(pairs / ((len(a) + len(b)) * area))


def _direction(a: Triangles, b: Triangles) -> float:
    """The angle in which the edges run: twice the angles, weighted by the squares of the lengths, summed."""
    total = 0j
    for each in (a, b):
        for k in range(3):
            after = (k + 1) % 3
            edge = (each.x[:, after] - each.x[:, k]) + 1j * (each.y[:, after] - each.y[:, k])
            total += complex((edge * edge).sum())
    return float(np.angle(total)) / 2


def _turned(each: Triangles, angle: float) -> Tuple[np.ndarray, np.ndarray]:
    """The corners (m, 2) of boxes along and across a direction."""
    c, s = np.cos(angle), np.sin(angle)
    places = (c * each.x + s * each.y, c * each.y - s * each.x)
    sides: List[np.ndarray] = [
        np.column_stack([across(pick, value) for value in places]) for pick in (np.minimum, np.maximum)
    ]
    return sides[0] - _ROUNDING, sides[1] + _ROUNDING
