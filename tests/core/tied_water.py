"""Ground of small whole numbers, where ties are common, and its ponds by plain search in whole numbers and fractions.

Nothing here is shared with the program: levels are tried one by one, hollows are found by walking from vertex to
vertex, water is summed triangle by triangle in fractions.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Dict, FrozenSet, List, Optional, Set, Tuple

import numpy as np

from plugin.core.surface.tin import GRID, Tin
from tests.core.surfaces import delaunay_tin


def tied_ground(seed: int) -> Tuple[Tin, Optional[np.ndarray]]:
    """A surface of up to 60 places on a grid of whole metres with heights of a few whole metres, some with a void, and
    for some the triangles that are inlets (m,), else None."""
    rng = np.random.default_rng(seed)
    side = int(rng.integers(3, 9))
    x, y = (v.ravel() for v in np.meshgrid(np.arange(side), np.arange(side)))
    some = rng.permutation(len(x))[: max(6, int(len(x) * rng.choice([0.6, 0.85, 1.0])))]
    xy = np.column_stack([x, y])[some].astype(float)
    z = rng.integers(0, int(rng.integers(2, 6)), len(xy)).astype(float)
    if rng.random() < 0.5:  # a rim that stands higher holds more
        z[np.any((xy == 0) | (xy == side - 1), axis=1)] += 2
    if np.linalg.matrix_rank(xy - xy[0]) < 2:
        return tied_ground(seed + 1_000_003)
    at = rng.uniform(0, side - 1, 2)
    keep = (lambda u, v: np.hypot(u - at[0], v - at[1]) > 0.7) if rng.random() < 0.2 else None
    tin = delaunay_tin(xy, z, keep=keep)
    sink = None
    if rng.random() < 0.3:
        sink = np.where(np.arange(len(tin.triangles)) == rng.integers(0, len(tin.triangles)), 0, -1)
    return tin, sink


@dataclass(frozen=True)
class Hollow:
    """Vertices below ``level`` that hang together and are shut in; ``open``: its brim lets water off the surface."""

    vertices: FrozenSet[int]
    level: int
    open: bool
    area: Fraction
    volume: Fraction


def neighbours_of(tin: Tin) -> Dict[int, Set[int]]:
    near: Dict[int, Set[int]] = {}
    for t in tin.triangles.tolist():
        for a in t:
            near.setdefault(a, set()).update(b for b in t if b != a)
    return near


def leaving(tin: Tin, sink: Optional[np.ndarray]) -> Set[int]:
    """Vertices at which water leaves: of edges with one triangle only, and of inlets."""
    times: Dict[FrozenSet[int], int] = {}
    for t in tin.triangles.tolist():
        for k in range(3):
            edge = frozenset((t[k], t[(k + 1) % 3]))
            times[edge] = times.get(edge, 0) + 1
    out = {v for edge, count in times.items() if count == 1 for v in edge}
    if sink is not None:
        out |= set(tin.triangles[sink >= 0].ravel().tolist())
    return out


def part_of(start: int, near: Dict[int, Set[int]], allowed: Set[int]) -> FrozenSet[int]:
    seen, todo = {start}, [start]
    while todo:
        for v in near[todo.pop()]:
            if v in allowed and v not in seen:
                seen.add(v)
                todo.append(v)
    return frozenset(seen)


def water(tin: Tin, vertices: FrozenSet[int], level: int) -> Tuple[Fraction, Fraction]:
    """Area and volume of water at ``level`` on the triangles of ``vertices``, which are all that it covers there."""
    metre = round(1 / GRID)
    area = volume = Fraction(0)
    for t in tin.triangles.tolist():
        if not vertices & set(t):
            continue
        (ax, ay), (bx, by), (cx, cy) = ((int(x) // metre, int(y) // metre) for x, y in tin.grid[t])
        plan = Fraction((bx - ax) * (cy - ay) - (cx - ax) * (by - ay), 2)
        low, mid, high = sorted(int(tin.vertices[v, 2]) for v in t)
        if level >= high:
            area += plan
            volume += plan * (3 * level - low - mid - high) / 3
        elif level <= mid:  # a corner is wet
            wet = plan * Fraction((level - low) ** 2, (mid - low) * (high - low))
            area += wet
            volume += wet * (level - low) / 3
        else:  # all but a corner: the whole prism, and the dry corner that it counts as negative put back
            dry = plan * Fraction((high - level) ** 2, (high - mid) * (high - low))
            area += plan - dry
            volume += plan * (3 * level - low - mid - high) / 3 + dry * (high - level) / 3
    return area, volume


def hollows(tin: Tin, sink: Optional[np.ndarray]) -> List[Hollow]:
    """All ponds: a hollow counts at the level at which it meets another one, or a way off the surface."""
    z = tin.vertices[:, 2].astype(int)
    near, out = neighbours_of(tin), leaving(tin, sink)
    found = []
    for level in sorted(set(z[list(near)].tolist())):
        below, upto = ({v for v in near if z[v] < level}, {v for v in near if z[v] <= level})
        parts = {part_of(v, near, below) for v in below}
        shut = [part for part in parts if not part & out]
        for part in shut:
            flooded = part_of(min(part), near, upto)
            others = [other for other in parts if other <= flooded and other != part]
            if others or flooded & out:
                found.append(Hollow(part, level, bool(flooded & out), *water(tin, part, level)))
    return found
