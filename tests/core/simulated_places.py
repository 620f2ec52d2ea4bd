"""Walked places of another kind than the sites of ``simulated_lines``: junctions, driveways, swales, walls, forks, a
car park with islands, and a lane between ditch and bank that meets a kerbed road.

Nothing of that module's ground, walk or noise is used here, so that what holds on its sites is tried on others. The
walker crosses to and fro without a string: headings, distances of the passes and pace change, and the course wanders.
The pole is not upright: the place is off by a few centimetres that change slowly. Sizes of kerbs, swales and walls:
common practice, no source.
"""

from __future__ import annotations

from typing import Callable, Dict, List, Sequence, Tuple

import numpy as np
from matplotlib.path import Path
from scipy.spatial import cKDTree

from plugin.core.points.pointset import make_points
from tests.core.simulated_lines import ORIGIN, Site, TrueLine

Ground = Callable[[np.ndarray, np.ndarray], np.ndarray]
EVERY = 0.05  # m, vertices of true lines


# --- the walker -------------------------------------------------------------------------------------


def slow(random: np.random.Generator, n: int, size: float, length: float) -> np.ndarray:
    """A value that changes slowly (first-order Gauss-Markov), with correlation over ``length`` points."""
    keep = np.exp(-1.0 / length)
    draw = random.normal(0, size, n)
    for k in range(1, n):
        draw[k] = keep * draw[k - 1] + np.sqrt(1 - keep * keep) * draw[k]
    return draw


def wander(random: np.random.Generator, places: np.ndarray, turn: float = 8.0, sway: float = 0.2) -> np.ndarray:
    """Points of a walk through ``places`` (k, 2) two by two: ends of passes, turned by some degrees, with a sway."""
    walk: List[np.ndarray] = []
    ends: List[np.ndarray] = []
    for a, b in zip(places[::2], places[1::2]):
        angle = np.radians(random.normal(0, turn))
        c, s = np.cos(angle), np.sin(angle)
        middle = (a + b) / 2
        ends += [middle + np.array([[c, -s], [s, c]]) @ (end - middle) for end in (a, b)]
    for k, (a, b) in enumerate(zip(ends[:-1], ends[1:])):
        long = float(np.hypot(*(b - a)))
        run = np.cumsum(random.uniform(0.42, 0.6, int(long / 0.42) + 1))
        run = run[run < long]
        if not len(run):
            continue
        along = (b - a) / long
        off = slow(random, len(run), sway if k % 2 == 0 else 0.05, 8.0) * np.clip(np.minimum(run, long - run), 0, 1)
        walk.append(a + run[:, None] * along + off[:, None] * np.array([-along[1], along[0]]))
    return np.vstack(walk)


def surveyed(random: np.random.Generator, walks: Sequence[np.ndarray], ground: Ground, lines: Sequence[TrueLine],
             what: str, lifts: int = 0) -> Site:  # fmt: skip
    """The site as a rover stores it: white and slow noise of the height, places off by the tilt of the pole, and a pole
    that is lifted ``lifts`` times for up to ten points."""
    xy = np.vstack(walks)
    white = random.uniform(0.008, 0.015)
    z = ground(xy[:, 0], xy[:, 1]) + random.normal(0, white, len(xy)) + slow(random, len(xy), 0.5 * white, 80.0)
    for _ in range(lifts):
        at, count = int(random.integers(0, len(xy) - 10)), int(random.choice([1, 1, 2, 3, 6, 10]))
        z[at : at + count] += random.uniform(0.08, 1.2)
    tilt = np.column_stack([slow(random, len(xy), 0.02, 15.0), slow(random, len(xy), 0.02, 15.0)])
    stored = xy + tilt + random.normal(0, 0.006, xy.shape)
    points = make_points(stored[:, 0] + ORIGIN[0], stored[:, 1] + ORIGIN[1], z, source_line=np.arange(len(xy)) + 1)
    walked = float(np.hypot(*np.diff(xy, axis=0).T).sum())
    return Site(points, ground, tuple(lines), walked, white, what)


def met(line: np.ndarray, walks: Sequence[np.ndarray], reach: float) -> np.ndarray:
    """Mask of the vertices of a line between two places where it is crossed, ``reach`` metres apart at most."""
    crossed = np.zeros(len(line), bool)
    tree = cKDTree(line)
    for walk in walks:
        a, b = walk[:-1], walk[1:]
        step = np.hypot(*(b - a).T)
        for share in np.linspace(0, 1, 12, endpoint=False):
            away, at = tree.query(a + share * (b - a))
            crossed[at[(away < 0.04) & (step < 1.0)]] = True
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(line, axis=0).T)))
    at = run[crossed]
    if len(at) < 2:
        return np.zeros(len(line), bool)
    number = np.clip(np.searchsorted(at, run), 1, len(at) - 1)
    result: np.ndarray = (run >= at[0]) & (run <= at[-1]) & (at[number] - at[number - 1] <= reach)
    return result


def along(xy: np.ndarray) -> np.ndarray:
    """The path with a vertex every few centimetres."""
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
    at = np.arange(0.0, run[-1], EVERY)
    return np.column_stack([np.interp(at, run, xy[:, 0]), np.interp(at, run, xy[:, 1])])


def true_line(kind: str, xy: np.ndarray, step: np.ndarray, walks: Sequence[np.ndarray], reach: float) -> TrueLine:
    return TrueLine(kind, xy, step, met(xy, walks, reach))


def waved(random: np.random.Generator) -> Ground:
    """A plane with two long waves."""
    gx, gy = random.normal(0, 0.02, 2)
    waves = [(random.uniform(40, 90), random.uniform(0, 2 * np.pi), random.uniform(0, 2 * np.pi)) for _ in range(2)]

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        z = 50.0 + gx * x + gy * y
        for length, angle, phase in waves:
            z = z + 0.15 * np.sin((np.cos(angle) * x + np.sin(angle) * y) * 2 * np.pi / length + phase)
        return z

    return ground


def arc(middle: Tuple[float, float], radius: float, start: float, end: float) -> np.ndarray:
    turn = np.radians(np.linspace(start, end, 60))
    return np.array(middle) + radius * np.column_stack([np.cos(turn), np.sin(turn)])


# --- places -----------------------------------------------------------------------------------------


class Kerbs:
    """Paved ground inside a closed outline, a kerb around it that is lowered at driveways; ``line`` is its foot."""

    def __init__(
        self, outline: np.ndarray, height: float, driveways: Sequence[Tuple[float, float]], base: Ground
    ) -> None:
        self.base, self.path = base, Path(outline)
        self.line = along(outline)
        self.tree = cKDTree(self.line)
        self.height = np.full(len(self.line), height)
        for place in driveways:
            away = np.hypot(*(self.line - np.array(place)).T)
            self.height = np.minimum(self.height, 0.025 + (height - 0.025) * np.clip((away - 1.6) / 0.7, 0, 1))

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        xy = np.column_stack([np.ravel(x), np.ravel(y)])
        away, at = self.tree.query(xy)
        inside = self.path.contains_points(xy)
        kerb = self.height[at] * np.clip(away / 0.03, 0, 1) + 0.02 * np.clip(away - 0.03, 0, 1.5)
        z = np.where(inside, -0.025 * np.minimum(away, 2.5) + 0.0625, 0.0625 + kerb)
        return self.base(x, y) + z.reshape(np.shape(x))


def tee(seed: int) -> Site:
    """A street that meets another: corners of radius 6 to 8 m, driveways with lowered kerbs, wandering passes."""
    random = np.random.default_rng([seed, 71])
    half, side, radius = random.uniform(2.75, 3.5), random.uniform(2.5, 3.0), random.uniform(6, 8)
    height = random.uniform(0.09, 0.14)
    driveways = [(x, half) for x in random.uniform(-25, 25, 2)] + [(-side, random.uniform(-30, -16))]
    ground = Kerbs(_tee_outline(half, side, radius), height, driveways, waved(random))
    between = random.uniform(2.2, 3.2)
    rows = np.arange(-28, 28, between) + random.normal(0, 0.3, len(np.arange(-28, 28, between)))
    up = np.column_stack([np.repeat(rows, 2), np.tile([-half - 4.0, half + 4.0], len(rows))])
    up[2::4], up[3::4] = up[3::4].copy(), up[2::4].copy()
    rows = np.arange(-half - 1, -32, -between)
    over = np.column_stack([np.tile([-side - 4.0, side + 4.0], len(rows)), np.repeat(rows, 2)])
    wide = np.maximum(0, radius - (-half - over[:, 1])) * np.sign(over[:, 0])
    over[:, 0] += wide * (over[:, 1] > -half - radius)
    over[2::4], over[3::4] = over[3::4].copy(), over[2::4].copy()
    walks = [wander(random, up), wander(random, over)]
    line = true_line("step", ground.line, ground.height, walks, 2.5 * between)
    return surveyed(random, walks, ground, [line], f"tee {height * 1000:.0f} mm, radius {radius:.1f} m")


def small_tee(seed: int, radius: float = 4.0, between: float = 3.0) -> Site:
    """A street that meets another with narrow corners; neither is walked within the mouth but by the passes across."""
    random = np.random.default_rng([seed, 171])
    half, side, height = random.uniform(2.75, 3.5), random.uniform(2.5, 3.0), random.uniform(0.1, 0.14)
    ground = Kerbs(_tee_outline(half, side, radius), height, [], waved(random))
    rows = np.arange(-28, 28, between)
    up = np.column_stack([np.repeat(rows, 2), np.tile([-half - 4.0, half + 4.0], len(rows))])
    up[2::4], up[3::4] = up[3::4].copy(), up[2::4].copy()
    rows = np.arange(-half - radius, -32, -between)
    over = np.column_stack([np.tile([-side - 4.0, side + 4.0], len(rows)), np.repeat(rows, 2)])
    over[2::4], over[3::4] = over[3::4].copy(), over[2::4].copy()
    walks = [wander(random, up), wander(random, over)]
    line = true_line("step", ground.line, ground.height, walks, 2.5 * between)
    return surveyed(random, walks, ground, [line], f"tee {height * 1000:.0f} mm, corners of {radius:.0f} m")


def _tee_outline(half: float, side: float, radius: float) -> np.ndarray:
    corner = side + radius
    return np.vstack([
        [[-60, half], [60, half], [60, -half]], arc((corner, -half - radius), radius, 90, 180),
        [[side, -60], [-side, -60]], arc((-corner, -half - radius), radius, 0, 90), [[-60, -half], [-60, half]],
    ])[::-1]  # fmt: skip


def lane(seed: int) -> Site:
    """A lane with a rounded swale on one side and a low wall on the other; only the wall has sharp lines."""
    random = np.random.default_rng([seed, 72])
    half, wide, deep = random.uniform(2.2, 3.0), random.uniform(1.2, 2.0), random.uniform(0.35, 0.6)
    middle, wall, thick, high = half + wide + 0.8, -half - 0.6, 0.3, random.uniform(0.35, 0.6)
    bend = random.uniform(-1, 1) / 120
    base = waved(random)

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        v = y - bend * x**2 / 2
        swale = -deep * np.where(np.abs(v - middle) < wide, np.cos((v - middle) / wide * np.pi / 2) ** 2, 0.0)
        stones = high * ((v < wall) & (v > wall - thick))
        return base(x, y) + swale + stones

    between = random.uniform(2.5, 4.0)
    rows = np.arange(-28, 28, between)
    passes = np.column_stack([np.repeat(rows, 2), np.tile([wall - 4.5, middle + wide + 4.5], len(rows))])
    passes[:, 1] += bend * passes[:, 0] ** 2 / 2
    passes[2::4], passes[3::4] = passes[3::4].copy(), passes[2::4].copy()
    walks = [wander(random, passes)]
    u = np.linspace(-35, 35, 1400)
    lines = [
        true_line("valley", np.column_stack([u, middle + bend * u**2 / 2]), np.zeros(len(u)), walks, 2.5 * between)
    ]
    return surveyed(random, walks, ground, lines, f"lane, swale {deep:.2f} m, wall {high:.2f} m")


def bay(seed: int) -> Site:
    """A kerb that splits: the road's kerb goes on, lower, in front of a parking bay whose own kerb leaves it."""
    random = np.random.default_rng([seed, 73])
    back, height, low = random.uniform(2.3, 3.0), random.uniform(0.14, 0.16), random.uniform(0.065, 0.075)
    front = np.array([[-30.0, 0.0], [30.0, 0.0]])
    slant = back / np.tan(np.radians(random.uniform(35, 60)))
    behind = np.array([[-12.0, 0.0], [-12 + slant, back], [14 - slant, back], [14.0, 0.0]])
    outline = np.vstack([[[-60, -60], [-60, 0]], behind, [[60, 0], [60, -60], [-60, -60]]])
    inner = Path(np.vstack([behind, behind[:1]]))
    path, base = Path(outline), waved(random)

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        xy = np.column_stack([np.ravel(x), np.ravel(y)])
        z = np.where(inner.contains_points(xy), low, np.where(path.contains_points(xy), 0.0, height))
        return base(x, y) + z.reshape(np.shape(x))

    between = random.uniform(2.0, 3.0)
    rows = np.arange(-26, 26, between)
    passes = np.column_stack([np.repeat(rows, 2), np.tile([-4.5, back + 4.5], len(rows))])
    passes[2::4], passes[3::4] = passes[3::4].copy(), passes[2::4].copy()
    cross = np.array([[-14.0, 0.9], [16, 0.9], [16, 1.8], [-14, 1.8]])
    walks = [wander(random, passes), wander(random, cross, 1.0)]
    front, behind = along(front), along(behind)
    within = (front[:, 0] > -12) & (front[:, 0] < 14)
    lines = [
        true_line("step", front, np.where(within, low, height), walks, 2.5 * between),
        true_line("step", behind, np.full(len(behind), height - low), walks, 2.5 * between),
    ]
    return surveyed(random, walks, ground, lines, f"bay {low * 1000:.0f} and {height * 1000:.0f} mm")


def confluence(seed: int) -> Site:
    """A ditch that joins another: depth and width of both change along them."""
    random = np.random.default_rng([seed, 74])
    depth, run, floor = random.uniform(0.45, 0.8), random.uniform(1.5, 2.0), random.uniform(0.0, 0.3)
    angle = np.radians(random.uniform(60, 90))
    away = np.array([np.cos(angle), np.sin(angle)])
    base, phase = waved(random), random.uniform(0, 2 * np.pi)

    def side_depth(u: np.ndarray) -> np.ndarray:
        result: np.ndarray = depth * (0.9 + 0.1 * np.sin(u / 7 + phase))
        return result

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        main = depth * (1 + 0.15 * np.sin(x / 11 + phase))
        u, v = away[0] * x + away[1] * y, -away[1] * x + away[0] * y
        side = side_depth(u)
        into = np.minimum((np.maximum(np.abs(v), -u * 4) - floor) / run - side, 0)
        return base(x, y) + np.minimum(np.maximum((np.abs(y) - floor) / run, 0) - main, np.maximum(into, -side)).clip(
            max=0
        )

    between, reach = random.uniform(2.5, 4.0), floor + run * depth + 4.5
    rows = np.arange(-26, 26, between)
    passes = np.column_stack([np.repeat(rows, 2), np.tile([-reach, reach], len(rows))])
    passes[2::4], passes[3::4] = passes[3::4].copy(), passes[2::4].copy()
    rows = np.arange(reach - 1.5, 26, between)
    across = np.vstack([[u * away + side * reach * np.array([-away[1], away[0]]) for side in (-1, 1)] for u in rows])
    across[2::4], across[3::4] = across[3::4].copy(), across[2::4].copy()
    walks = [wander(random, passes), wander(random, across)]
    x, u = np.arange(-30.0, 30.0, EVERY), np.arange(0.0, 25.0, EVERY)
    wide, narrow = floor + run * depth * (1 + 0.15 * np.sin(x / 11 + phase)), floor + run * side_depth(u)
    left = np.array([-away[1], away[0]])
    lines = []
    for kind, off in (("top", 1), ("toe", 0)):
        for sign in (-1, 1):
            main = np.column_stack([x, sign * (wide if off else np.full(len(x), floor))])
            beside = u[:, None] * away + (sign * (narrow if off else np.full(len(u), floor)))[:, None] * left
            open_ = (np.abs(main @ left) > floor + run * depth) | (main @ away < 0)  # not in the mouth
            for line, there in ((main, open_), (beside, beside[:, 1] > floor + run * depth)):
                asked = met(line, walks, 2.5 * between) & there
                lines.append(TrueLine(kind, line, np.zeros(len(line)), asked))
    return surveyed(random, walks, ground, lines, f"confluence {depth:.2f} m, floor {2 * floor:.2f} m")


class CarPark:
    """Even paving inside a kerb, with islands on it; ``islands``: closed outlines."""

    def __init__(self, kerbs: Kerbs, islands: Sequence[np.ndarray], height: float) -> None:
        self.kerbs, self.height, self.islands = kerbs, height, [along(island) for island in islands]
        self.paths, self.trees = [Path(island) for island in islands], [cKDTree(line) for line in self.islands]

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        xy = np.column_stack([np.ravel(x), np.ravel(y)])
        z = self.kerbs(x, y).ravel()
        for path, tree in zip(self.paths, self.trees):
            away = np.where(path.contains_points(xy), tree.query(xy)[0], 0.0)
            z = z + self.height * np.clip(away / 0.03, 0, 1)
        return z.reshape(np.shape(x))


def box(middle: Tuple[float, float], size: Tuple[float, float], turn: float, radius: float) -> np.ndarray:
    """The closed outline of a rectangle with rounded corners, counterclockwise."""
    half = np.array(size) / 2 - radius
    parts = [
        arc((u * half[0], v * half[1]), radius, 90 * k, 90 * k + 90)
        for k, (u, v) in enumerate(((1, 1), (-1, 1), (-1, -1), (1, -1)))
    ]
    ring = np.vstack([*parts, parts[0][:1]])
    c, s = np.cos(turn), np.sin(turn)
    return ring @ np.array([[c, s], [-s, c]]) + middle


def car_park(seed: int) -> Site:
    """A car park with four islands 8 to 12 m long and 1.8 to 3 m wide, walked in two directions, poles lifted."""
    random = np.random.default_rng([seed, 75])
    size, height = (random.uniform(36, 46), random.uniform(28, 34)), random.uniform(0.09, 0.13)
    islands = [
        box((x + random.uniform(-1, 1), y), (random.uniform(8, 12), random.uniform(1.8, 3.0)),
            random.uniform(-0.1, 0.1), random.uniform(0.6, 0.9))
        for x in (-size[0] / 4, size[0] / 4 - 1) for y in (-size[1] / 5, size[1] / 5)
    ]  # fmt: skip
    kerbs = Kerbs(box((0, 0), size, 0.0, random.uniform(2.5, 5)), random.uniform(0.1, 0.14), [], waved(random))
    ground = CarPark(kerbs, islands, height)
    between = random.uniform(2.0, 2.8)
    walks = []
    for flip in (False, True):
        reach, half = (size[1 - flip] / 2 + 4, size[flip] / 2 + 3)
        rows = np.arange(-half, half, between)
        passes = np.column_stack([np.repeat(rows, 2), np.tile([-reach, reach], len(rows))])
        passes[2::4], passes[3::4] = passes[3::4].copy(), passes[2::4].copy()
        walks.append(wander(random, passes[:, ::-1] if flip else passes, 3.0))
    lines = [true_line("step", kerbs.line, kerbs.height, walks, 2.5 * between)]
    lines += [true_line("step", line, np.full(len(line), height), walks, 2.5 * between) for line in ground.islands]
    return surveyed(random, walks, ground, lines, f"car park, islands {height * 1000:.0f} mm", lifts=20)


def meeting(seed: int) -> Site:
    """A lane with a ditch on its left and a bank on its right that both end before it meets a road with kerbs."""
    random = np.random.default_rng([seed, 76])
    half, radius, height = 2.5, random.uniform(5, 7), random.uniform(0.10, 0.13)
    deep, run, floor = random.uniform(0.45, 0.7), random.uniform(1.3, 2.0), random.uniform(0, 0.2)
    high, slope = random.uniform(0.9, 1.8), random.uniform(1.5, 2.3)
    middle, toe = half + 1.3 + floor + run * deep, half + 1.2
    corner = half + radius
    outline = np.vstack([
        [[-70, 0], [-70, -6.4], [70, -6.4], [70, 0]], arc((corner, radius), radius, 270, 180),
        [[half, 90], [-half, 90]], arc((-corner, radius), radius, 0, -90), [[-70, 0]],
    ])  # fmt: skip
    kerbs = Kerbs(outline, height, [], waved(random))
    kerbs.height = np.minimum(kerbs.height, height * np.clip((13 - kerbs.line[:, 1]) / 3, 0, 1))

    def ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        ditch = deep * np.clip((y - 14) / 2, 0, 1) - np.maximum(np.abs(x + middle) - floor, 0) / run
        bank = np.clip((x - toe) / slope, 0, high * np.clip((y - 13) / 8, 0, 1))
        return kerbs(x, y) - np.maximum(ditch, 0) + bank

    between = random.uniform(2.5, 3.5)
    rows = np.arange(-26, 26, between)
    down = np.column_stack([np.repeat(rows, 2), np.tile([-10.4, 5.0], len(rows))])
    rows = np.arange(5.5, 58, between)
    over = np.column_stack([np.tile([-middle - 5, toe + high * slope + 5], len(rows)), np.repeat(rows, 2)])
    for passes in (down, over):
        passes[2::4], passes[3::4] = passes[3::4].copy(), passes[2::4].copy()
    walks = [wander(random, down, 3.0), wander(random, over, 3.0)]
    lines = [true_line("step", kerbs.line, kerbs.height, walks, 2.5 * between)]
    y = np.arange(15.0, 58, EVERY)
    full = np.clip((y - 13) / 8, 0, 1)
    edge = floor + run * deep * np.clip((y - 14) / 2, 0, 1)
    for kind, x in (("valley", -middle + 0 * y), ("top", -middle - edge), ("top", -middle + edge), ("toe", toe + 0 * y),
                    ("top", toe + slope * high * full)):  # fmt: skip
        lines.append(true_line(kind, np.column_stack([x, y]), np.zeros(len(y)), walks, 2.5 * between))
    return surveyed(random, walks, ground, lines, f"lane, ditch {deep:.2f} m, bank {high:.1f} m", lifts=8)


PLACES: Dict[str, Callable[[int], Site]] = {
    "tee": tee, "lane": lane, "bay": bay, "confluence": confluence, "car park": car_park, "meeting": meeting,
}  # fmt: skip
