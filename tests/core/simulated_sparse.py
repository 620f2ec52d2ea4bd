"""Walks that show little of their lines: points far apart, shallow ditches, kerbs walked along only.

The walk is straight but for a hand's breadth. Heights of kerbs and depths of ditches: common practice, no
source.
"""

from __future__ import annotations

from typing import List, Optional, Sequence, Tuple

import numpy as np

from .simulated_lines import Ground, Site, TrueLine, asked_where, dense, record, to_and_fro
from .simulated_places import Kerbs, waved

LENGTH = 80.0  # m of street or ditch that is walked
FAR = 60.0  # m to which kerbs go on from the middle


def stored(corners: np.ndarray, spacing: float, random: np.random.Generator) -> np.ndarray:
    """Places (m, 2) every ``spacing`` metres along a path."""
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(corners, axis=0).T)))
    at = np.arange(random.uniform(0, spacing), run[-1], spacing)
    at = at + random.normal(0, 0.04 * spacing, len(at))
    places = np.column_stack([np.interp(at, run, column) for column in corners.T])
    return places + random.normal(0, 0.03, places.shape)


def walked(random: np.random.Generator, paths: Sequence[np.ndarray], ground: Ground, lines: Sequence[TrueLine],
           what: str, spacing: float = 0.5) -> Site:  # fmt: skip
    """The site as it is stored along ``paths`` one after another, with noise of 10 to 15 mm."""
    walks = [stored(path, spacing, random) for path in paths]
    points, length, white, spike = record(walks, ground, random, white=random.uniform(0.010, 0.015))
    return Site(points, ground, tuple(lines), length, white, what, spike)


def line_of(kind: str, xy: np.ndarray, paths: Sequence[np.ndarray], reach: float, step: float = 0.0) -> TrueLine:
    """A line that is asked for between places ``reach`` metres apart where ``paths`` meet it."""
    xy = dense(xy)
    return TrueLine(kind, xy, np.full(len(xy), step), asked_where(xy, [dense(path) for path in paths], reach))


def _street(random: np.random.Generator, height: float) -> Tuple[Kerbs, float]:
    half = random.uniform(2.75, 4.0)
    outline = np.array([[-FAR, half], [FAR, half], [FAR, -half], [-FAR, -half], [-FAR, half]])
    return Kerbs(outline, height, [], waved(random)), half


def slanted(seed: int, spacing: float = 1.0, height: float = 0.08, between: float = 4.0, off: float = 22.0) -> Site:
    """A street with a crown, whose passes are ``off`` degrees off square and ``between`` metres apart along it.

    They end 3 to 5 m beyond the kerbs, so that few points lie there.
    """
    random = np.random.default_rng([seed, 81])
    half, base = random.uniform(2.75, 4.0), waved(random)

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        away = np.abs(y) - half
        return base(x, y) + np.where(away < 0, -0.025 * away, height + 0.02 * away)

    reach, slant = half + random.uniform(3, 5), float(np.tan(np.radians(off)))
    path = to_and_fro(np.arange(-LENGTH / 2, LENGTH / 2, between), -reach, reach)
    path[:, 0] += slant * path[:, 1]
    lines = [line_of("step", np.array([[-FAR, y], [FAR, y]]), [path], 1.3 * between, height) for y in (half, -half)]
    what = f"street {height * 1000:.0f} mm, {off:.0f} degrees off square, points every {spacing:.1f} m"
    return walked(random, [path], ground, lines, what, spacing)


def shallow(seed: int, depth: float = 0.4, run: Optional[float] = None, floor: float = 0.0) -> Site:
    """A straight ditch, sides 1:1.5 to 1:3, crossed every 5 m."""
    random = np.random.default_rng([seed, 82])
    base, run, between = waved(random), random.uniform(1.5, 3.0) if run is None else run, 5.0
    edge = floor + run * depth

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        return base(x, y) - np.clip(depth - (np.abs(y) - floor) / run, 0, depth)

    reach = edge + random.uniform(6, 9)
    path = to_and_fro(np.arange(-LENGTH / 2, LENGTH / 2, between), -reach, reach)
    middle = [("toe", floor), ("toe", -floor)] if floor else [("valley", 0.0)]
    lines = [line_of(kind, np.array([[-FAR, y], [FAR, y]]), [path], 1.3 * between)
             for kind, y in [("top", edge), ("top", -edge), *middle]]  # fmt: skip
    return walked(random, [path], ground, lines, f"ditch {depth:.2f} m deep 1:{run:.1f}")


def along_only(seed: int, height: float = 0.12) -> Site:
    """A street whose kerbs are walked along, foot and top, and no pass crosses."""
    random = np.random.default_rng([seed, 84])
    ground, half = _street(random, height)
    u = LENGTH / 2
    beside: List[float] = []
    for side in (1, -1):
        beside += [side * (half - random.uniform(0.05, 0.12)), side * (half + 0.03 + random.uniform(0.05, 0.12))]
    paths = [np.array([[-u, v], [u, v]])[:: -1 if k % 2 else 1] for k, v in enumerate(beside)]
    lines = [line_of("step", np.array([[-u, y], [u, y]]), [np.array([[-u, y], [u, y]])], 1.0, height)
             for y in (half + 0.015, -half - 0.015)]  # fmt: skip
    return walked(random, paths, ground, lines, f"kerbs of {height * 1000:.0f} mm walked along")
