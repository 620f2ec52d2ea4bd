"""Polygons from loose rings: which hole belongs into which outer ring."""

from __future__ import annotations

from typing import List, Sequence, Tuple

import numpy as np

Polygon = Tuple[np.ndarray, ...]

_AT_ONCE = 1 << 20  # pairs of a place and a side


def ring_area(ring: np.ndarray) -> float:
    """Signed area of a closed ring (q, 2): positive counter-clockwise."""
    xy = ring - ring[0]
    return 0.5 * float(np.sum(xy[:-1, 0] * xy[1:, 1] - xy[1:, 0] * xy[:-1, 1]))


def polygons_of(rings: Sequence[np.ndarray]) -> Tuple[Polygon, ...]:
    """Polygons, each an outer ring and its holes, from closed rings (q, 2) in no order, the largest first.

    Counter-clockwise rings are outer ones, clockwise ones holes; rings do not cross and touch at points only. A hole
    belongs to the smallest outer ring around it.
    """
    areas = [ring_area(ring) for ring in rings]
    outer = sorted((i for i, area in enumerate(areas) if area > 0), key=lambda i: -areas[i])
    polygons: List[List[np.ndarray]] = [[rings[i]] for i in outer]
    boxes = [(rings[i].min(axis=0), rings[i].max(axis=0)) for i in outer]
    for i, area in enumerate(areas):
        if area >= 0:
            continue
        # The longest side's middle: a hole may touch its outer ring, but at points only.
        step = np.diff(rings[i], axis=0)
        side = int(np.argmax(np.hypot(*step.T)))
        place = rings[i][side] + step[side] / 2
        for k in range(len(outer) - 1, -1, -1):
            low, high = boxes[k]
            near = areas[outer[k]] >= -area and np.all((place >= low) & (place <= high))
            if near and inside(place[None], [rings[outer[k]]])[0]:
                polygons[k].append(rings[i])
                break
    return tuple(tuple(polygon) for polygon in polygons)


def inside(xy: np.ndarray, rings: Sequence[np.ndarray]) -> np.ndarray:
    """Which places (k, 2) are inside the rings (q, 2), closed or not, by the even-odd rule."""
    a = np.concatenate([np.asarray(ring, float)[:, :2] for ring in rings] or [np.empty((0, 2))])
    b = np.concatenate([np.roll(np.asarray(ring, float)[:, :2], -1, axis=0) for ring in rings] or [np.empty((0, 2))])
    result = np.zeros(len(xy), bool)
    many = max(1, _AT_ONCE // max(1, len(a)))
    for first in range(0, len(xy), many):
        x, y = xy[first : first + many, 0, None], xy[first : first + many, 1, None]
        spans = (a[:, 1] > y) != (b[:, 1] > y)
        with np.errstate(divide="ignore", invalid="ignore"):
            east = a[:, 0] + (y - a[:, 1]) / (b[:, 1] - a[:, 1]) * (b[:, 0] - a[:, 0])
        result[first : first + many] = np.count_nonzero(spans & (x < east), axis=1) % 2 == 1
    return result
