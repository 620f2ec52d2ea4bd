"""Walked sites without codes whose lines are known: streets with kerbs, ditches, banks, and ground without lines.

Every site is drawn at random from its family and a seed. RTK noise: a white part of 7 to 18 mm and a slow part
(first-order Gauss-Markov, 60 to 150 s, 0.3 to 0.7 of the white one); noise of the place half the height's. Points
every half metre along passes with a walker's sway, the short legs between the passes stored too. Sizes of kerbs,
ditches and banks: common practice, no source.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Callable, Dict, List, Optional, Tuple

import numpy as np
from matplotlib.cbook import get_sample_data
from matplotlib.path import Path
from scipy.ndimage import map_coordinates
from scipy.spatial import cKDTree

from plugin.core.features.found import Features, FoundLine
from plugin.core.points.pointset import PointSet, make_points

SPEED = 1.2  # m/s
ORIGIN = np.array([432_000.0, 5_765_000.0])
Ground = Callable[[np.ndarray, np.ndarray], np.ndarray]


@dataclass(frozen=True)
class TrueLine:
    """A line of the ground: ``xy`` (k, 2) dense vertices, ``step`` (k,) height of the step there (0 for a break).

    ``asked``: (k,) bool, the walk meets the line there, so that it can be found.
    """

    kind: str
    xy: np.ndarray
    step: np.ndarray
    asked: np.ndarray


@dataclass(frozen=True)
class Site:
    """A walked site: its points, the ground (of local coordinates), its lines (local), and metres walked."""

    points: PointSet
    ground: Ground
    lines: Tuple[TrueLine, ...]
    walked: float
    white: float
    what: str
    spike: np.ndarray = field(default_factory=lambda: np.zeros(0, bool))

    def points_xy(self) -> np.ndarray:
        """Local places (n, 2) of the points."""
        return np.column_stack([self.points.easting, self.points.northing]) - ORIGIN


# --- ground -----------------------------------------------------------------------------------------


def rolling(random: np.random.Generator, steep: float = 0.06, even: float = 4.0) -> Ground:
    """A plane with three long waves; ``even`` widens their radii of curvature."""
    slope, towards = random.uniform(0, steep), random.uniform(0, 2 * np.pi)
    gx, gy = slope * np.cos(towards), slope * np.sin(towards)
    waves = []
    for _ in range(3):
        length, angle = random.uniform(18, 70), random.uniform(0, 2 * np.pi)
        k = 2 * np.pi / length * np.array([np.cos(angle), np.sin(angle)])
        radius = even * np.exp(random.uniform(np.log(90), np.log(500)))
        waves.append((k, (length / (2 * np.pi)) ** 2 / radius, random.uniform(0, 2 * np.pi)))

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        z = 100 + gx * x + gy * y
        for k, height, phase in waves:
            z = z + height * np.sin(k[0] * x + k[1] * y + phase)
        return z

    return ground


def dense(xy: np.ndarray, every: float = 0.05) -> np.ndarray:
    """The same path with a vertex every few centimetres."""
    legs = np.hypot(*np.diff(xy, axis=0).T)
    marks = np.append(0.0, np.cumsum(legs))
    run = np.linspace(0, marks[-1], max(2, int(marks[-1] / every)))
    return np.column_stack([np.interp(run, marks, xy[:, 0]), np.interp(run, marks, xy[:, 1])])


def rounded(corners: np.ndarray, radius: float) -> np.ndarray:
    """A closed polygon with its corners rounded, first vertex repeated."""
    path: List[np.ndarray] = []
    n = len(corners)
    for i in range(n):
        a, b, c = corners[i - 1], corners[i], corners[(i + 1) % n]
        u, v = (a - b) / np.hypot(*(a - b)), (c - b) / np.hypot(*(c - b))
        half = np.arccos(np.clip(u @ v, -1, 1)) / 2
        back = min(radius / np.tan(half), 0.45 * np.hypot(*(a - b)), 0.45 * np.hypot(*(c - b)))
        centre = b + (u + v) / np.hypot(*(u + v)) * back / np.cos(half)
        start, end = b + back * u - centre, b + back * v - centre
        turn = np.arctan2(start[0] * end[1] - start[1] * end[0], start @ end)
        for share in np.linspace(0, 1, 24):
            co, si = np.cos(share * turn), np.sin(share * turn)
            path.append(centre + np.array([co * start[0] - si * start[1], si * start[0] + co * start[1]]))
    path.append(path[0])
    return np.array(path)


class Street:
    """A road inside kerbs. ``outlines``: closed paths of the kerbs' feet, ground rises outside."""

    def __init__(
        self, base: Ground, outlines: List[np.ndarray], height: float, face: float, random: np.random.Generator,
        lowered: int = 0, width: float = 3.5,
    ) -> None:  # fmt: skip
        self.base, self.face, self.width = base, face, width
        self.crossfall, self.walkfall = random.uniform(0.015, 0.03), random.uniform(0.0, 0.025)
        self.paths = [Path(outline) for outline in outlines]
        self.rings = [dense(outline, 0.02) for outline in outlines]
        self.line = np.vstack(self.rings)
        self.height = np.full(len(self.line), height)
        reach = np.hypot(*np.diff(self.line, axis=0, prepend=self.line[:1]).T)
        run = np.cumsum(np.where(reach > 1, 0, reach))
        for place in random.uniform(0, run[-1], lowered):
            half = random.uniform(1.5, 2.5)
            share = np.clip((np.abs(run - place) - half) / 0.8, 0, 1)
            self.height = np.minimum(self.height, 0.025 + (height - 0.025) * share)
        self.tree = cKDTree(self.line)

    def distance(self, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Signed distance from the foot (positive outside the carriageway), and height of the kerb there."""
        xy = np.column_stack([np.ravel(x), np.ravel(y)])
        away, at = self.tree.query(xy)
        inside = np.zeros(len(xy), bool)
        for path in self.paths:
            inside ^= path.contains_points(xy)
        return np.where(inside, -away, away).reshape(np.shape(x)), self.height[at].reshape(np.shape(x))

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        away, height = self.distance(x, y)
        road = self.crossfall * np.minimum(-away, self.width)
        walk = height * np.clip(away / self.face, 0, 1) + self.walkfall * np.clip(away - self.face, 0, 2.0)
        return self.base(x, y) + np.where(away < 0, road, walk)


def section_ground(base: Ground, frame: Callable, section: Callable) -> Ground:
    """``base`` with a section of heights over the distance across an axis."""

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        return base(x, y) + section(frame(x, y)[1])

    return ground


# --- walk -------------------------------------------------------------------------------------------


def path_points(corners: np.ndarray, spacing: float, random: np.random.Generator, sway: float = 1.0) -> np.ndarray:
    """Places (m, 2) stored by distance on a path, with a walker's sway."""
    legs = np.hypot(*np.diff(corners, axis=0).T)
    corners = corners[np.append(True, legs > 1e-9)]
    legs = legs[legs > 1e-9]
    marks = np.append(0.0, np.cumsum(legs))
    run = np.cumsum(spacing * (1 + random.uniform(0, 0.12, int(marks[-1] / spacing) + 1)))
    run = run[run < marks[-1]]
    leg = np.clip(np.searchsorted(marks, run, side="right") - 1, 0, len(legs) - 1)
    direction = (np.diff(corners, axis=0) / legs[:, None])[leg]
    phase = random.uniform(0, 2 * np.pi, 2)
    off = 0.14 * np.sin(run * 2 * np.pi / 21 + phase[0]) + 0.06 * np.sin(run * 2 * np.pi / 7.1 + phase[1])
    off = sway * off
    x = np.interp(run, marks, corners[:, 0]) - direction[:, 1] * off
    y = np.interp(run, marks, corners[:, 1]) + direction[:, 0] * off
    return np.column_stack([x, y])


def to_and_fro(
    rows: np.ndarray, start: float, end: float, angle: float = 0.0, centre: Tuple[float, float] = (0, 0)
) -> np.ndarray:
    """Corners of passes along v at each u of ``rows``; turned by ``angle`` about ``centre``."""
    corners = []
    for k, row in enumerate(rows):
        ends = [(row, start), (row, end)]
        corners += ends if k % 2 == 0 else ends[::-1]
    xy = np.array(corners) - centre
    c, s = np.cos(angle), np.sin(angle)
    return np.column_stack([c * xy[:, 0] - s * xy[:, 1], s * xy[:, 0] + c * xy[:, 1]]) + centre


def record(walks: List[np.ndarray], ground: Ground, random: np.random.Generator, lifts: int = 0,
           white: Optional[float] = None) -> Tuple[PointSet, float, float, np.ndarray]:  # fmt: skip
    """Points of the walks one after another, with noise; metres walked, the white noise, and the lifted points."""
    xy = np.vstack(walks)
    gap = np.cumsum([len(walk) for walk in walks])[:-1]
    step = np.hypot(*np.diff(xy, axis=0, prepend=xy[:1]).T)
    time = np.cumsum(step / SPEED + np.isin(np.arange(len(xy)), gap) * 30.0)
    white = random.uniform(0.007, 0.018) if white is None else white
    slow = white * random.uniform(0.3, 0.7)
    keep = np.exp(-np.diff(time, prepend=time[0]) / random.uniform(60, 150))
    draw = random.normal(0, slow, len(xy))
    drift = np.empty(len(xy))
    last = draw[0]
    for k in range(len(xy)):
        last = keep[k] * last + np.sqrt(1 - keep[k] ** 2) * draw[k]
        drift[k] = last
    z = ground(xy[:, 0], xy[:, 1]) + drift + random.normal(0, white, len(xy))
    lifted = np.zeros(len(xy), bool)
    for _ in range(lifts):
        count = int(np.exp(random.uniform(0, np.log(16))))
        at = int(random.integers(0, len(xy) - count))
        z[at : at + count] += random.uniform(0.06, 0.8) * (1 if random.random() < 0.8 else -1)
        lifted[at : at + count] = True
    plan = np.hypot(white, slow) / 2
    xy = xy + random.normal(0, plan, xy.shape)
    step[gap] = 0
    points = make_points(xy[:, 0] + ORIGIN[0], xy[:, 1] + ORIGIN[1], z, source_line=np.arange(len(xy)) + 1)
    return points, float(step.sum()), white, lifted


def asked_where(line: np.ndarray, walks: List[np.ndarray], reach: float) -> np.ndarray:
    """Mask of the dense vertices between crossings: a crossing within ``reach`` on both sides along the line."""
    tree = cKDTree(np.vstack(walks))
    near = tree.query(line)[0] < 0.3
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(line, axis=0).T)))
    at = run[near]
    if not len(at):
        return near
    ahead = np.searchsorted(at, run)
    before = run - at[np.clip(ahead - 1, 0, len(at) - 1)]
    after = at[np.clip(ahead, 0, len(at) - 1)] - run
    return (before >= 0) & (after >= 0) & (before <= reach) & (after <= reach)


# --- families ---------------------------------------------------------------------------------------


def _outline(
    random: np.random.Generator, curved: bool, length: float, half: float
) -> Tuple[List[np.ndarray], Callable]:
    """Kerb lines of a street about the x axis (closed far beyond its ends), and its frame: (along, across) to xy."""
    far = length / 2 + 25
    u = np.linspace(-far, far, 400)
    bend = random.choice([-1, 1]) / random.uniform(30, 90) if curved else 0.0

    def place(u: np.ndarray, v: np.ndarray) -> np.ndarray:
        u, v = np.broadcast_arrays(np.asarray(u, float), np.asarray(v, float))
        if bend == 0:
            return np.column_stack([u.ravel(), v.ravel()])
        radius = 1 / bend
        turn = u / radius
        return np.column_stack([((radius - v) * np.sin(turn)).ravel(), (radius - (radius - v) * np.cos(turn)).ravel()])

    ring = np.vstack([place(u, -half), place(u[::-1], half)])
    return [np.vstack([ring, ring[:1]])], place


def street(seed: int, between: Optional[float] = None, height: Optional[float] = None, curved: Optional[bool] = None,
           walk: str = "square", lowered: Optional[int] = None, spacing: float = 0.5, lifts: int = 0,
           length: float = 60.0) -> Site:  # fmt: skip
    """A street with kerbs. ``walk``: square, oblique (45 to 75 degrees), along (foot and top, and more), mixed."""
    random = np.random.default_rng([seed, 14])
    half = random.uniform(2.5, 4.5)
    between = random.uniform(2, 5) if between is None else between
    height = random.uniform(0.06, 0.15) if height is None else height
    curved = bool(random.random() < 0.5) if curved is None else curved
    lowered = int(random.integers(0, 3)) if lowered is None else lowered
    outlines, place = _outline(random, curved, length, half)
    base = rolling(random)
    ground = Street(base, outlines, height, random.uniform(0.02, 0.06), random, lowered, half)
    reach = half + random.uniform(3.5, 6)
    walks = []
    if walk in ("square", "oblique", "mixed"):
        rows = np.arange(-length / 2, length / 2, between)
        rows = rows + random.uniform(-0.15, 0.15, len(rows)) * between
        slant = 0.0 if walk == "square" else 1 / np.tan(np.radians(random.uniform(45, 75)))
        corners = []
        for k, row in enumerate(rows):
            ends = [place(row - slant * reach, -reach)[0], place(row + slant * reach, reach)[0]]
            if slant:  # a straight pass
                corners += ends if k % 2 == 0 else ends[::-1]
            else:
                corners += ends if k % 2 == 0 else ends[::-1]
        walks.append(path_points(np.array(corners), spacing, random))
    if walk in ("along", "mixed"):
        sides = [half - random.uniform(0.05, 0.15), half + ground.face + random.uniform(0.05, 0.15)]
        offsets = [-sides[1], -sides[0], sides[0], sides[1]]
        if walk == "mixed":
            offsets = offsets[: 2 if random.random() < 0.5 else 4]
        else:
            offsets += [0.0, half + 2.5, -half - 2.5]
        for k, v in enumerate(offsets):
            u = np.linspace(-length / 2, length / 2, 60)
            corners = place(u if k % 2 == 0 else u[::-1], v)
            walks.append(path_points(corners, spacing, random, 0.15 if abs(abs(v) - half) < 0.4 else 1.0))
    points, walked, white, spike = record(walks, ground, random, lifts)
    lines = []
    for v in (-1.0, 1.0):
        line = place(np.linspace(-length / 2 - 15, length / 2 + 15, 4000), v * (half + ground.face / 2))
        step = ground.height[ground.tree.query(line)[1]]
        lines.append(TrueLine("step", line, step, asked_where(line, walks, 3.5 if walk == "along" else 2.1 * between)))
    what = f"street {walk} {'curved' if curved else 'straight'}, {height * 1000:.0f} mm, every {between:.1f} m"
    return Site(points, ground, tuple(lines), walked, white, what, spike)


def junction(seed: int, between: Optional[float] = None, height: Optional[float] = None) -> Site:
    """A yard inside kerbs with rounded corners and an island, crossed to and fro: lines that turn and close."""
    random = np.random.default_rng([seed, 15])
    between = random.uniform(2, 4) if between is None else between
    height = random.uniform(0.08, 0.15) if height is None else height
    width, depth = random.uniform(24, 36), random.uniform(18, 26)
    box = np.array([[-width / 2, -depth / 2], [width / 2, -depth / 2], [width / 2, depth / 2], [-width / 2, depth / 2]])
    turn = np.linspace(0, 2 * np.pi, 200)
    island = np.column_stack([random.uniform(4, 6) * np.cos(turn), random.uniform(3, 5) * np.sin(turn)])
    island[-1] = island[0]
    outlines = [rounded(box, random.uniform(3, 7)), island]
    ground = Street(rolling(random), outlines, height, random.uniform(0.02, 0.06), random, 0, 4.0)
    reach_x, reach_y = width / 2 + 4, depth / 2 + 4
    walks = []
    rows = np.arange(-reach_x, reach_x, between)
    walks.append(path_points(to_and_fro(rows, -reach_y, reach_y), 0.5, random))
    rows = np.arange(-reach_y, reach_y, between)
    walks.append(path_points(to_and_fro(rows, -reach_x, reach_x)[:, ::-1], 0.5, random))
    points, walked, white, spike = record(walks, ground, random)
    lines = []
    for ring in ground.rings:
        mask = asked_where(ring, walks, 2.5 * between)
        lines.append(TrueLine("step", ring, np.full(len(ring), height), mask))
    return Site(
        points, ground, tuple(lines), walked, white, f"junction, {height * 1000:.0f} mm, every {between:.1f} m", spike
    )


def _bent_frame(random: np.random.Generator) -> Tuple[Callable, Callable]:
    bend, angle = random.uniform(-1, 1) / 150, random.uniform(-0.3, 0.3)
    c, s = np.cos(angle), np.sin(angle)

    def frame(x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        u, v = c * x + s * y, -s * x + c * y
        return u, (v - bend * u**2 / 2) / np.sqrt(1 + (bend * u) ** 2)

    def place(u: np.ndarray, v: np.ndarray) -> np.ndarray:
        u, v = np.broadcast_arrays(np.asarray(u, float), np.asarray(v, float))
        w = v * np.sqrt(1 + (bend * u) ** 2) + bend * u**2 / 2
        return np.column_stack([c * u - s * w, s * u + c * w])

    return frame, place


def ditch(seed: int, walk: str = "across", between: float = 5.0, spacing: float = 0.5) -> Site:
    """A ditch at least 0.3 m deep, sides 1:1.5 to 1:2.5, crossed; or its bottom walked too (``walk`` "bottom")."""
    random = np.random.default_rng([seed, 16])
    depth, run, floor = random.uniform(0.3, 0.9), random.uniform(1.5, 2.5), random.choice([0.0, 0.25])
    edge = floor + run * depth
    frame, place = _bent_frame(random)
    ground = section_ground(
        rolling(random, 0.06, 2.0), frame, lambda v: -np.clip(depth - (np.abs(v) - floor) / run, 0, depth)
    )
    length, reach = 60.0, edge + random.uniform(6, 9)
    rows = np.arange(-length / 2, length / 2, between) + random.uniform(-0.5, 0.5)
    walks = [path_points(to_and_fro(rows, -reach, reach), spacing, random)]
    u = np.linspace(-length / 2, length / 2, 60)
    if walk == "bottom":
        walks.append(path_points(place(u, 0.0), spacing, random, 0.3))
    elif walk == "along":
        walks = [path_points(place(u if k % 2 else u[::-1], v), spacing, random, 0.3)
                 for k, v in enumerate([0.0, edge, -edge, edge + 3, -edge - 3, edge + 6, -edge - 6])]  # fmt: skip
    points, walked, white, spike = record(walks, ground, random)
    lines = []
    u = np.linspace(-length, length, 4000)
    # Who walks along a narrow bottom walks its middle.
    middle = floor == 0 or walk != "across"
    offsets = [("top", edge), ("top", -edge)] + ([("valley", 0.0)] if middle else [("toe", floor), ("toe", -floor)])
    for kind, v in offsets:
        line = place(u, v)
        lines.append(TrueLine(kind, line, np.zeros(len(u)), asked_where(line, walks, 1.6 * between)))
    return Site(points, ground, tuple(lines), walked, white, f"ditch {walk} {depth:.2f} m deep 1:{run:.1f}", spike)


def bank(seed: int, between: float = 5.0, spacing: float = 0.5) -> Site:
    """A bank 1:1.5 to 1:3 and 0.6 to 3 m high, crossed."""
    random = np.random.default_rng([seed, 17])
    height, run = random.uniform(0.6, 3.0), random.uniform(1.5, 3.0)
    half = height * run / 2
    frame, place = _bent_frame(random)
    ground = section_ground(rolling(random, 0.06, 2.0), frame, lambda v: height * np.clip(v / (2 * half) + 0.5, 0, 1))
    length, reach = 60.0, half + random.uniform(6, 9)
    rows = np.arange(-length / 2, length / 2, between) + random.uniform(-0.5, 0.5)
    walks = [path_points(to_and_fro(rows, -reach, reach), spacing, random)]
    points, walked, white, spike = record(walks, ground, random)
    lines = []
    u = np.linspace(-length, length, 4000)
    for kind, v in (("top", half), ("toe", -half)):
        line = place(u, v)
        lines.append(TrueLine(kind, line, np.zeros(len(u)), asked_where(line, walks, 1.6 * between)))
    return Site(points, ground, tuple(lines), walked, white, f"bank {height:.1f} m 1:{run:.1f}", spike)


def _field(random: np.random.Generator, ground: Ground, what: str, lifts: int = 0, size: float = 70.0) -> Site:
    between = random.uniform(2, 5)
    turn = random.uniform(0, np.pi)
    rows = np.arange(-size / 2, size / 2, between)
    walks = [path_points(to_and_fro(rows, -size / 2, size / 2, turn), 0.5, random)]
    if random.random() < 0.5:
        rows = np.linspace(-size / 3, size / 3, 4)
        walks.append(path_points(to_and_fro(rows, -size / 2, size / 2, turn + np.pi / 2), 0.5, random))
    points, walked, white, spike = record(walks, ground, random, lifts)
    return Site(points, ground, (), walked, white, what, spike)


def _random_field(random: np.random.Generator, scale: float, size: float) -> Ground:
    """Smooth random ground of correlation length ``scale`` and standard deviation ``size``, by random waves."""
    k = random.normal(0, 1 / scale, (200, 2))
    phase = random.uniform(0, 2 * np.pi, 200)

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        x, y = np.asarray(x, float), np.asarray(y, float)
        z = np.zeros(x.shape)
        for (a, b), p in zip(k, phase):
            z += np.cos(a * x + b * y + p)
        return z * size * np.sqrt(2 / 200)

    return ground


def together(*parts: Ground) -> Ground:
    return lambda x, y: sum(part(x, y) for part in parts)  # type: ignore[return-value]


def rough_field(seed: int) -> Site:
    """Tussocks and hollows: random ground of several sizes."""
    random = np.random.default_rng([seed, 18])
    parts = [rolling(random, 0.14, 1.0)]
    parts += [_random_field(random, random.uniform(0.2, 0.5), random.uniform(0.01, 0.05))]
    parts += [_random_field(random, random.uniform(0.8, 2.0), random.uniform(0.02, 0.08))]
    return _field(random, together(*parts), "rough field")


def ploughed(seed: int) -> Site:
    """Furrows 0.3 to 0.9 m apart, 50 to 150 mm high, crossed at any angle."""
    random = np.random.default_rng([seed, 19])
    apart, high, angle = random.uniform(0.3, 0.9), random.uniform(0.05, 0.15), random.uniform(0, np.pi)
    wander = _random_field(random, 8.0, 0.15)
    size = _random_field(random, 1.5, 0.25)

    def furrows(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        v = np.cos(angle) * x + np.sin(angle) * y + wander(x, y)
        return 0.5 * high * np.sin(2 * np.pi * v / apart) * (1 + size(x, y))

    return _field(random, together(rolling(random, 0.1, 1.0), furrows, _random_field(random, 0.15, 0.015)), "ploughed")


def rubble(seed: int) -> Site:
    """Broken ground: lumps of 0.2 to 1 m everywhere, with sharp sides."""
    random = np.random.default_rng([seed, 20])
    lumps = 9000
    xy, r = random.uniform(-50, 50, (lumps, 2)), random.uniform(0.1, 0.5, lumps)
    high = random.uniform(0.03, 0.35, lumps)
    return _field(random, together(rolling(random, 0.1, 1.0), _lumps(xy, r, high)), "rubble")


def boulders(seed: int) -> Site:
    """An even field with single boulders of up to 1.5 m and lifted poles."""
    random = np.random.default_rng([seed, 21])
    count = int(random.integers(20, 120))
    xy, r = random.uniform(-40, 40, (count, 2)), random.uniform(0.2, 0.9, count)
    ground = together(rolling(random, 0.14, 1.0), _lumps(xy, r, random.uniform(0.1, 1.2, count)))
    return _field(random, ground, "boulders and lifts", lifts=int(random.integers(0, 25)))


def _lumps(xy: np.ndarray, r: np.ndarray, high: np.ndarray) -> Ground:
    tree = cKDTree(xy)

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        at = np.column_stack([np.ravel(x), np.ravel(y)])
        away, which = tree.query(at, k=6)
        top = np.where(away < r[which], high[which] * (1 - 0.6 * (away / r[which]) ** 2), 0).max(axis=1)
        return top.reshape(np.shape(x))

    return ground


def real_grid(seed: int, order: Optional[int] = None) -> Site:
    """The elevation grid of matplotlib's sample data (jacksboro_fault_dem.npz), sampled along passes.

    A cell is 2 to 30 m here and heights shrink with it, so that slopes stay those of the grid.
    """
    random = np.random.default_rng([seed, 22])
    with np.load(get_sample_data("jacksboro_fault_dem.npz", asfileobj=False)) as data:
        grid = data["elevation"].astype(float)
    cell = np.exp(random.uniform(np.log(2), np.log(30)))
    order = (3 if random.random() < 0.5 else 1) if order is None else order
    rows, columns = grid.shape
    reach = 80 / cell + 3
    row, column = random.uniform(reach, rows - reach), random.uniform(reach, columns - reach)

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        at = np.array([row + np.asarray(y) / cell, column + np.asarray(x) / cell])
        return map_coordinates(grid, at, order=order, mode="nearest") * cell / 30.0

    return _field(random, ground, f"real grid, cells of {cell:.1f} m, order {order}")


FAMILIES: Dict[str, Callable[[int], Site]] = {
    "square": lambda seed: street(seed),
    "oblique": lambda seed: street(seed, walk="oblique"),
    "mixed": lambda seed: street(seed, walk="mixed"),
    "along": lambda seed: street(seed, walk="along"),
    "junction": junction,
    "ditch": ditch,
    "ditch_bottom": lambda seed: ditch(seed, walk="bottom"),
    "ditch_along": lambda seed: ditch(seed, walk="along"),
    "bank": bank,
    "rough_field": rough_field,
    "ploughed": ploughed,
    "rubble": rubble,
    "boulders": boulders,
    "real_grid": real_grid,
}
NATURAL = ("rough_field", "ploughed", "rubble", "boulders", "real_grid")


# --- what was found against what is there -----------------------------------------------------------

REACH = 0.3  # m; farther from a true line nothing counts as found


@dataclass(frozen=True)
class Score:
    """Lengths in metres: asked for, found of it, strong lines, and of these the false part; walked.

    ``squares``: sum of squared distances from the true line over ``placed`` samples of what was found; ``step_squares``
    and ``steps``: of the errors of the step's height where the line is not bridged. ``doubt``: sum of squared stated
    doubts of the place.
    """

    asked: float
    found: float
    drawn: float
    false: float
    walked: float
    squares: float
    placed: int
    step_squares: float
    steps: int
    doubt: float

    def __add__(self, other: Score) -> Score:
        return Score(*(getattr(self, k) + getattr(other, k) for k in self.__dataclass_fields__))

    def told(self) -> str:
        root = lambda total, n: np.sqrt(total / n) if n else float("nan")  # noqa: E731
        found = self.found / self.asked if self.asked else float("nan")
        wrong = self.false / self.drawn if self.drawn else 0.0
        return (
            f"found {found:6.1%}  false {wrong:5.1%}  place {root(self.squares, self.placed):.3f}"
            f" (stated {root(self.doubt, self.placed):.3f})  step {root(self.step_squares, self.steps):.4f}"
            f"  strong a km {1000 * self.drawn / self.walked:7.1f}"
        )


def middle_of(line: FoundLine) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Dense local places along a found line (of a step its middle); step, doubt and whether it is bridged there."""
    foot = line.foot
    top = line.top if len(line.top) else foot
    run = np.append(0.0, np.cumsum(np.hypot(np.diff(foot[:, 0]), np.diff(foot[:, 1]))))
    at = np.linspace(0, run[-1], max(2, int(run[-1] / 0.1)))
    xyz = [np.interp(at, run, (foot[:, c] + top[:, c]) / 2) for c in (0, 1)]
    step, doubt = np.interp(at, run, top[:, 2] - foot[:, 2]), np.interp(at, run, line.sigma_plan)
    bridged = line.bridged[np.clip(np.searchsorted(run, at, side="right") - 1, 0, len(line.bridged) - 1)]
    return np.column_stack(xyz) - ORIGIN, step, doubt, bridged


def score(site: Site, features: Features, least: float = 0.055) -> Score:
    """The found lines of a site against its own; true steps lower than ``least`` are not asked for."""
    strong = [middle_of(line) for line in features.strong]
    strong_xy = np.vstack([m[0] for m in strong]) if strong else np.empty((0, 2))
    drawn = sum(float(np.hypot(*np.diff(m[0], axis=0).T).sum()) for m in strong)
    total = Score(0, 0, drawn, 0, site.walked, 0, 0, 0, 0, 0)
    if not site.lines:
        return replace(total, false=drawn)
    true = np.vstack([line.xy for line in site.lines])
    true_step = np.concatenate([line.step for line in site.lines])
    if not strong:
        asked = sum(_asked_length(line, least)[0].sum() for line in site.lines)
        return replace(total, asked=float(asked))
    away, at = cKDTree(true).query(strong_xy)
    share = drawn / max(len(strong_xy), 1)
    step, doubt = np.concatenate([m[1] for m in strong]), np.concatenate([m[2] for m in strong])
    good = away <= REACH
    low = good & (true_step[at] >= least) & ~np.concatenate([m[3] for m in strong])
    tree = cKDTree(strong_xy)
    asked = found = 0.0
    for line in site.lines:
        length, mask = _asked_length(line, least)
        near = tree.query(line.xy, distance_upper_bound=REACH)[0] <= REACH
        asked += float(length.sum())
        found += float(length[near & mask].sum())
    return replace(
        total, asked=asked, found=found, false=share * int(np.count_nonzero(~good)),
        squares=float((away[good] ** 2).sum()), placed=int(good.sum()), doubt=float((doubt[good] ** 2).sum()),
        step_squares=float(((step - true_step[at])[low] ** 2).sum()), steps=int(low.sum()),
    )  # fmt: skip


def _asked_length(line: TrueLine, least: float) -> Tuple[np.ndarray, np.ndarray]:
    """Length (k,) that each dense vertex of a line stands for where it is asked for, else 0; and that mask."""
    mask = line.asked & ((line.step >= least) | (line.kind != "step"))
    gap = np.hypot(*np.diff(line.xy, axis=0, append=line.xy[-1:]).T)
    return np.where(mask & (gap < 1), gap, 0.0), mask
