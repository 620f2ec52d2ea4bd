"""Pairs of surfaces of small whole numbers, where ties are common, and what lies between them in fractions.

Nothing here is shared with the program: triangles are cut by each other one by one, in fractions throughout.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from typing import Dict, List, Sequence, Tuple

import numpy as np

from plugin.core.surface.tin import GRID, Tin
from tests.core.surfaces import delaunay_tin

METRE = round(1 / GRID)
UNIT = 0.1  # metres: heights are whole numbers of it, which floats do not hold exactly

Corner = Tuple[Fraction, ...]  # x, y and linear functions


def tied_tin(rng: np.random.Generator, side: int, heights: int) -> Tin:
    """Up to 30 places on a grid of whole metres, heights of a few tenths."""
    x, y = (v.ravel() for v in np.meshgrid(np.arange(side), np.arange(side)))
    while True:
        some = rng.permutation(len(x))[: int(rng.integers(4, min(len(x), 30) + 1))]
        xy = np.column_stack([x, y])[some].astype(float)
        if np.linalg.matrix_rank(xy - xy[0]) == 2:
            return delaunay_tin(xy, rng.integers(0, heights, len(xy)) * UNIT)


def tied_pair(seed: int) -> Tuple[Tin, Tin]:
    """Two surfaces: unlike ones, the same one raised by an even layer, or one of them partly so."""
    rng = np.random.default_rng(seed)
    side, heights = int(rng.integers(3, 7)), int(rng.integers(1, 5))
    one = tied_tin(rng, side, heights)
    kind = rng.integers(4)
    if kind == 0:
        return one, tied_tin(rng, side, heights)
    raised = one.vertices.copy()
    lift = np.full(len(raised), rng.integers(-3, 4))
    if kind > 1:  # parts of it
        lift = np.where(rng.random(len(raised)) < 0.6, lift, rng.integers(-3, 4, len(raised)))
    whole = np.rint(raised[:, 2] / UNIT) + lift
    raised[:, 2] = whole * UNIT
    return one, Tin(**{**vars(one), "vertices": raised})


@dataclass
class Between:
    """In whole metres and ``UNIT``: volumes and areas by class, ``common`` area; ``crossing``: length of the lines
    between cut and fill."""

    volume: Dict[int, Fraction] = field(default_factory=dict)
    area: Dict[int, Fraction] = field(default_factory=dict)
    common: Fraction = Fraction(0)
    crossing: float = 0.0


def triangles_of(tin: Tin) -> List[List[Corner]]:
    found = []
    for t in tin.triangles.tolist():
        found.append(
            [
                (*(Fraction(int(c), METRE) for c in tin.grid[v]), Fraction(round(float(tin.vertices[v, 2]) / UNIT)))
                for v in t
            ]
        )
    return found


def side_of(a: Corner, b: Corner, p: Corner) -> Fraction:
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])


def cut_to(polygon: List[Corner], value) -> List[Corner]:  # type: ignore[no-untyped-def]
    """The part of a convex polygon where a linear function is not negative."""
    found: List[Corner] = []
    for a, b in zip(polygon, polygon[1:] + polygon[:1]):
        va, vb = value(a), value(b)
        if va >= 0:
            found.append(a)
        if (va < 0) != (vb < 0) and va != 0 and vb != 0:
            t = va / (va - vb)
            found.append(tuple(p + t * (q - p) for p, q in zip(a, b)))
    return found


def area_of(polygon: List[Corner]) -> Fraction:
    if len(polygon) < 3:
        return Fraction(0)
    return sum((side_of(polygon[0], b, c) for b, c in zip(polygon[1:], polygon[2:])), Fraction(0)) / 2


def integral_of(polygon: List[Corner], row: int) -> Fraction:
    total = Fraction(0)
    for b, c in zip(polygon[1:], polygon[2:]):
        total += side_of(polygon[0], b, c) * (polygon[0][row] + b[row] + c[row]) / 6
    return total


def plane_at(triangle: List[Corner], p: Corner) -> Fraction:
    a, b, c = triangle
    whole = side_of(a, b, c)
    return (side_of(b, c, p) * a[2] + side_of(c, a, p) * b[2] + side_of(a, b, p) * c[2]) / whole


def between(existing: Tin, design: Tin, limits: Sequence[int]) -> Between:
    """What lies between, by class: k from 1 for fill up to the k-th limit, deeper ones above, -k for cut."""
    found = Between()
    edges: Dict[Tuple[Corner, Corner], List[int]] = {}
    others = triangles_of(design)
    boxes = [(min(c[0] for c in t), max(c[0] for c in t), min(c[1] for c in t), max(c[1] for c in t)) for t in others]
    for one in triangles_of(existing):
        west, east = min(c[0] for c in one), max(c[0] for c in one)
        south, north = min(c[1] for c in one), max(c[1] for c in one)
        for other, box in zip(others, boxes):
            if box[0] >= east or box[1] <= west or box[2] >= north or box[3] <= south:
                continue
            polygon: List[Corner] = [c[:2] for c in one]
            for a, b in zip(other, other[1:] + other[:1]):
                polygon = cut_to(polygon, lambda p, a=a, b=b: side_of(a, b, p))
            if area_of(polygon) > 0:
                _add(found, edges, polygon, one, other, limits)
    for pair, signs in edges.items():
        if sorted(signs) == [-1, 1]:
            found.crossing += float(np.hypot(*(float(p - q) for p, q in zip(*pair))))
    return found


def _add(found: Between, edges, polygon, one, other, limits) -> None:  # type: ignore[no-untyped-def]
    polygon = [(*p, plane_at(other, p) - plane_at(one, p)) for p in polygon]
    found.common += area_of(polygon)
    steps = [0, *limits, 10**6]
    for sign in (1, -1):
        for k, (low, high) in enumerate(zip(steps[:-1], steps[1:]), 1):
            part = cut_to(
                cut_to(polygon, lambda p, s=sign, v=low: s * p[2] - v), lambda p, s=sign, v=high: v - s * p[2]
            )
            if area_of(part) == 0 or all(sign * p[2] == low for p in part):  # of just a limit: the shallower class
                continue
            found.volume[sign * k] = found.volume.get(sign * k, Fraction(0)) + sign * integral_of(part, 2)
            found.area[sign * k] = found.area.get(sign * k, Fraction(0)) + area_of(part)
    depths = [p[2] for p in polygon]
    if min(depths) < 0 < max(depths):
        ends = [p for p in cut_to(cut_to(polygon, lambda p: p[2]), lambda p: -p[2]) if p[2] == 0]
        found.crossing += float(
            max(np.hypot(*(float(v) for v in (p[0] - q[0], p[1] - q[1]))) for p in ends for q in ends)
        )
    elif min(depths) < max(depths):
        for a, b in zip(polygon, polygon[1:] + polygon[:1]):
            if a[2] == b[2] == 0 and a[:2] != b[:2]:
                edges.setdefault(tuple(sorted((a[:2], b[:2]))), []).append(1 if max(depths) > 0 else -1)  # type: ignore[arg-type]
