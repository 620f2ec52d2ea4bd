"""What found lines do to the surface of a simulated street: heights near kerbs, small closed contours, contours beside
kerbs, against no lines and against the true ones."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Dict, List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from plugin.core.contours.lines import ContourOptions, Contours
from plugin.core.contours.trace import trace_contours
from plugin.core.features.found import Features
from plugin.core.features.ground_lines import ground_lines
from plugin.core.linework.constraints import Constraints, LineKind, make_line
from plugin.core.surface.build import SurfaceOptions, build_surface
from plugin.core.surface.crossings import CrossingRule
from plugin.core.surface.giving_way import found_breaklines
from plugin.core.surface.locate import heights_at
from plugin.core.surface.standing import stand_in
from plugin.core.surface.tin import Tin
from tests.core.simulated_lines import ORIGIN, Site

BESIDE = 1.0  # m from a kerb
SMALL = 3.0  # m, length of a small closed contour
NEAR = 0.2  # m
INTERVAL = 0.1  # m


@dataclass(frozen=True)
class SurfaceScore:
    """What lines do beside kerbs.

    ``none, found, true``: sums of squared height errors without lines, with found and with true ones, over ``samples``;
    ``loops_none, loops_found``: small closed contours; ``contour, contour_near``: places of true contours on the faces
    of kerbs, and how many of them have a drawn one near.
    """

    none: float
    found: float
    true: float
    samples: int
    loops_none: int
    loops_found: int
    contour: float
    contour_near: float

    def __add__(self, other: SurfaceScore) -> SurfaceScore:
        return SurfaceScore(*(getattr(self, k) + getattr(other, k) for k in self.__dataclass_fields__))

    @property
    def excess(self) -> float:
        """Share of the excess of squared error over that with the true lines which the found lines leave."""
        return (self.found - self.true) / (self.none - self.true)

    def told(self) -> str:
        rms = [1000 * np.sqrt(value / self.samples) for value in (self.none, self.found, self.true)]
        return (
            f"rms mm none {rms[0]:.1f} found {rms[1]:.1f} true {rms[2]:.1f}  excess left {self.excess:.2f}  small loops"
            f" {self.loops_none} -> {self.loops_found}  contours near {self.contour_near / max(self.contour, 1e-9):.1%}"
        )


def true_lines(site: Site) -> Constraints:
    """Foot and top of the true kerbs with their true heights."""
    lines = []
    for line in site.lines:
        xy = line.xy[::10]
        step = np.gradient(xy, axis=0)
        normal = np.column_stack([-step[:, 1], step[:, 0]]) / np.hypot(*step.T)[:, None]
        half = (site.ground.face / 2 + 0.005) * normal
        walked = cKDTree(site.points_xy()).query(xy)[0] < 8
        for side in (xy - half, xy + half):
            z = site.ground(side[:, 0], side[:, 1])
            whole = np.column_stack([side + ORIGIN, z])[walked]
            lines.append(make_line(LineKind.BREAKLINE, whole))
    return Constraints(tuple(lines))


def surface_with(site: Site, lines: Constraints) -> Tin:
    options = SurfaceOptions(crossing=CrossingRule.MEAN)
    return build_surface(site.points, lines, options).tin


def score_surface(site: Site, features: Features) -> SurfaceScore:
    """Surfaces of a street without lines, with found ones (which stand for the points in them), and with true ones."""
    place = np.vstack([_beside(line.xy[line.asked]) for line in site.lines])
    height = site.ground(place[:, 0], place[:, 1])
    held = found_breaklines(ground_lines(features), Constraints(), site.points)
    marked = replace(site, points=stand_in(site.points, held.steps)[0])
    tins = [
        surface_with(site, Constraints()),
        surface_with(marked, held.breaklines),
        surface_with(site, true_lines(site)),
    ]
    found = [heights_at(tin, place + ORIGIN) for tin in tins]
    inside = np.isfinite(found).all(axis=0)
    errors = [float(((z - height)[inside] ** 2).sum()) for z in found]
    contours = [trace_contours(tin, ContourOptions(interval=INTERVAL)) for tin in tins[:2]]
    loops = [_small_loops(site, lines) for lines in contours]
    whole, near = _near_true(site, contours[1])
    return SurfaceScore(*errors, int(inside.sum()), *loops, whole, near)


def _beside(line: np.ndarray) -> np.ndarray:
    """Places within a metre of a dense line, on both sides."""
    at = line[:: max(1, int(0.25 / max(np.hypot(*(line[1] - line[0])), 1e-3)))]
    step = np.gradient(at, axis=0)
    normal = np.column_stack([-step[:, 1], step[:, 0]]) / np.maximum(np.hypot(*step.T), 1e-9)[:, None]
    off = np.linspace(-BESIDE, BESIDE, 41)
    return (at[:, None] + off[:, None] * normal[:, None]).reshape(-1, 2)


def _small_loops(site: Site, contours: Contours) -> int:
    """Small closed contours that come within a metre of a kerb."""
    tree = cKDTree(np.vstack([line.xy for line in site.lines]))
    count = 0
    for i in np.flatnonzero(contours.closed):
        xy = contours.line(i) - ORIGIN
        small = np.hypot(*np.diff(xy, axis=0).T).sum() < SMALL
        count += bool(small and tree.query(xy)[0].min() < BESIDE)
    return count


def _near_true(site: Site, contours: Contours) -> Tuple[float, float]:
    """Places of true contours on the faces of asked kerbs, and how many have a contour of that level ``NEAR``."""
    kerbs = np.vstack([line.xy[line.asked] for line in site.lines])
    tree = cKDTree(kerbs)
    drawn: Dict[int, List[np.ndarray]] = {}
    for i, line in enumerate(contours):
        xy = line - ORIGIN
        run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
        at = np.arange(0, run[-1], 0.02)
        place = np.column_stack([np.interp(at, run, xy[:, 0]), np.interp(at, run, xy[:, 1])])
        drawn.setdefault(round(float(contours.level[i]) / INTERVAL), []).append(place)
    whole = near = 0
    for level, places in _true_contours(site, kerbs).items():
        on_face = places[tree.query(places)[0] <= site.ground.face / 2 + 0.02]
        whole += len(on_face)
        if level in drawn and len(on_face):
            near += int(np.count_nonzero(cKDTree(np.vstack(drawn[level])).query(on_face)[0] <= NEAR))
    return whole, near


def _true_contours(site: Site, kerbs: np.ndarray) -> Dict[int, np.ndarray]:
    """Places of the true contours near kerbs, by level number: from a grid of 4 cm."""
    low, high = kerbs.min(axis=0) - 2, kerbs.max(axis=0) + 2
    x, y = np.arange(low[0], high[0], 0.04), np.arange(low[1], high[1], 0.04)
    gx, gy = np.meshgrid(x, y)
    far = cKDTree(kerbs).query(np.column_stack([gx.ravel(), gy.ravel()]), distance_upper_bound=1.5)[0]
    keep = np.isfinite(far).reshape(gx.shape)
    z = np.full(gx.shape, np.nan)
    z[keep] = site.ground(gx[keep], gy[keep])
    result: Dict[int, List[np.ndarray]] = {}
    for axis in (0, 1):
        a = np.floor(z / INTERVAL)
        first, second = (a[:-1], a[1:]) if axis == 0 else (a[:, :-1], a[:, 1:])
        crossed = np.isfinite(first) & np.isfinite(second) & (first != second)
        px, py = (gx[:-1], gy[:-1]) if axis == 0 else (gx[:, :-1], gy[:, :-1])
        low_level, high_level = np.minimum(first, second)[crossed] + 1, np.maximum(first, second)[crossed]
        for level in range(int(low_level.min(initial=0)), int(high_level.max(initial=-1)) + 1):
            own = (low_level <= level) & (high_level >= level)
            if own.any():
                place = np.column_stack([px[crossed][own], py[crossed][own]])
                place[:, 1 - axis] += 0.02
                result.setdefault(level, []).append(place)
    return {level: np.vstack(parts) for level, parts in result.items()}
