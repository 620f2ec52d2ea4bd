"""Ties by brute force: heights of few whole numbers, so that vertices, edges and flats lie at levels and on lines.

Contours and sections against rational arithmetic, triangle by triangle.
"""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from typing import List, Optional, Tuple

import numpy as np

from plugin.core.contours.lines import ContourOptions
from plugin.core.contours.trace import trace_contours
from plugin.core.surface.along import lay_lines
from plugin.core.surface.tin import GRID, Tin
from tests.core.surfaces import delaunay_tin
from tests.core.test_locate import exact, small_tin

Place = Tuple[Fraction, Fraction]


def level_tin(rng: np.random.Generator) -> Tin:
    """A few vertices at whole metres, heights in whole metres from 0 to 3, some triangles left out."""
    spread = rng.integers(2, 6, 2)
    xy = np.vstack([rng.integers(0, spread + 1, (rng.integers(4, 14), 2)), [[0, 0], [spread[0], 0], [0, spread[1]]]])
    xy = np.unique(xy, axis=0).astype(float)
    z = rng.integers(0, rng.integers(2, 5), len(xy)).astype(float)
    share = rng.choice([0.7, 1.0])
    return delaunay_tin(xy, z, keep=lambda x, y: (rng.random(len(x)) < share) | (np.arange(len(x)) == 0))


def crossing(tin: Tin, upper: int, lower: int, level: Fraction) -> Place:
    """Where the edge from a corner at or above the level to one below passes it, metres."""
    p, q = (tuple(Fraction(int(v), 10_000) for v in tin.grid[corner]) for corner in (upper, lower))
    top, low = (Fraction(float(tin.vertices[corner, 2])) for corner in (upper, lower))
    share = (top - level) / (top - low)
    return p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1])


def expected_segments(tin: Tin, level: Fraction) -> Counter[Tuple[Place, Place]]:
    """By the rule "a height equal to the level counts as above": one step through each triangle of both kinds."""
    found: Counter[Tuple[Place, Place]] = Counter()
    for corners in tin.triangles.tolist():
        above = [Fraction(float(tin.vertices[c, 2])) >= level for c in corners]
        ends: List[Optional[Place]] = [None, None]
        for i in range(3):
            a, b = corners[i], corners[(i + 1) % 3]
            if above[i] and not above[(i + 1) % 3]:
                ends[0] = crossing(tin, a, b, level)
            elif above[(i + 1) % 3] and not above[i]:
                ends[1] = crossing(tin, b, a, level)
        if ends[0] is not None and ends[1] is not None and ends[0] != ends[1]:
            found[ends[0], ends[1]] += 1
    return found


def rounded(place: Place) -> Tuple[int, int]:
    return round(place[0] * 10**7), round(place[1] * 10**7)


def check_contours(cases: int, seed: int) -> None:
    rng = np.random.default_rng(seed)
    for _ in range(cases):
        tin = level_tin(rng)
        interval = [0.5, 1.0, 2.0][rng.integers(3)]
        lines = trace_contours(tin, ContourOptions(interval=interval))
        low, high = tin.height_range
        met: Counter[Tuple[float, Tuple[int, int], Tuple[int, int]]] = Counter()
        for k in range(len(lines.level)):
            xy = lines.xy[lines.start[k] : lines.start[k + 1]]
            place = [tuple(p) for p in np.rint(xy * 1e7).astype(int).tolist()]
            assert len(place) > 1
            assert (place[0] == place[-1]) == bool(lines.closed[k])
            turn = sum(p[0] * q[1] - q[0] * p[1] for p, q in zip(place, place[1:]))
            assert lines.depression[k] == (bool(lines.closed[k]) and turn < 0)  # a bent ridge encloses nothing
            for p, q in zip(place, place[1:]):
                met[float(lines.level[k]), p, q] += 1
        wanted: Counter[Tuple[float, Tuple[int, int], Tuple[int, int]]] = Counter()
        for step in range(int(low / interval), int(high / interval) + 1):
            level = Fraction(step) * Fraction(interval)
            if level > low:
                for (p, q), count in expected_segments(tin, level).items():
                    wanted[float(level), rounded(p), rounded(q)] += count
        assert met == wanted
        check_ends(tin, lines)


def check_ends(tin: Tin, lines) -> None:  # type: ignore[no-untyped-def]
    """Open lines begin and end at the rim."""
    triangle, side = np.nonzero(tin.neighbours < 0)
    a, b = tin.grid[tin.triangles[triangle, side]] * GRID, tin.grid[tin.triangles[triangle, (side + 1) % 3]] * GRID
    for k in np.flatnonzero(~lines.closed):
        for end in (lines.xy[lines.start[k]], lines.xy[lines.start[k + 1] - 1]):
            cross = (b - a)[:, 0] * (end - a)[:, 1] - (b - a)[:, 1] * (end - a)[:, 0]
            along = np.sum((b - a) * (end - a), axis=1) / np.sum((b - a) ** 2, axis=1)
            assert np.any((np.abs(cross) < 1e-9) & (along > -1e-9) & (along < 1 + 1e-9))


def test_contours_at_the_heights_of_vertices_edges_and_flats() -> None:
    check_contours(500, 1)


def covered(tin: Tin, a: np.ndarray, b: np.ndarray) -> List[Tuple[Fraction, Fraction]]:
    """Parts of the way from ``a`` to ``b`` (grid units), 0..1, on the surface: what each triangle has of it, joined."""
    parts = []
    step = [int(b[i] - a[i]) for i in (0, 1)]
    for corners in tin.triangles.tolist():
        low, high = Fraction(0), Fraction(1)
        for i in range(3):
            p, q = tin.grid[corners[i]].tolist(), tin.grid[corners[(i + 1) % 3]].tolist()
            u = q[0] - p[0], q[1] - p[1]
            side = u[0] * (int(a[1]) - p[1]) - u[1] * (int(a[0]) - p[0])
            rise = u[0] * step[1] - u[1] * step[0]
            if rise == 0:
                if side < 0:
                    high = Fraction(-1)
            elif rise > 0:
                low = max(low, Fraction(-side, rise))
            else:
                high = min(high, Fraction(-side, rise))
        if low < high:
            parts.append((low, high))
    joined: List[Tuple[Fraction, Fraction]] = []
    for low, high in sorted(parts):
        if joined and low <= joined[-1][1]:
            joined[-1] = joined[-1][0], max(joined[-1][1], high)
        else:
            joined.append((low, high))
    return joined


def check_sections(cases: int, seed: int) -> None:
    """Lines over ground of few heights, through vertices, along edges and along rims: where and how high, exactly."""
    rng = np.random.default_rng(seed)
    done = 0
    while done < cases:
        tin = small_tin(rng) if rng.random() < 0.3 else level_tin(rng)
        unit = max(1, int(np.gcd.reduce(tin.grid.ravel())))
        if unit < 1000:
            continue  # lines over surfaces smaller than what counts as beside the rim: see test_locate
        low, high = tin.grid.min(axis=0) // unit - 1, tin.grid.max(axis=0) // unit + 2
        ends = rng.integers(low, high, (12, 2, 2)) * unit
        ends = ends[np.any(ends[:, 0] != ends[:, 1], axis=1)]
        laid = lay_lines(tin, [line * GRID + tin.origin for line in ends])
        for i, (a, b) in enumerate(ends):
            length = float(np.hypot(*(b - a)) * GRID)
            mine = np.flatnonzero(laid.line == i)
            span = [(laid.distance[laid.start[k]], laid.distance[laid.start[k + 1] - 1]) for k in mine]
            wanted = [(float(s) * length, float(t) * length) for s, t in covered(tin, a, b)]
            np.testing.assert_allclose(np.array(span).reshape(-1, 2), np.array(wanted).reshape(-1, 2), atol=1e-6)
            for k in mine:
                xyz = laid.part(k) - [*tin.origin, 0]
                for x, y, z in np.vstack([xyz, (xyz[1:] + xyz[:-1]) / 2]).tolist():
                    share = Fraction(np.hypot(x / GRID - a[0], y / GRID - a[1]) / np.hypot(*(b - a))).limit_denominator(
                        10**6
                    )
                    place = int(a[0]) + share * int(b[0] - a[0]), int(a[1]) + share * int(b[1] - a[1])
                    triangle, height = exact(tin, place)
                    if triangle >= 0:
                        assert abs(z - float(height)) < 1e-6
            done += 1


def test_sections_through_vertices_and_along_edges_and_rims() -> None:
    check_sections(1000, 2)
