"""Walked RTK surveys with known faults, drawn at random from a seed.

What a survey holds, so that nobody reads more into the bars than was tried:

- Ground: a plane (up to 1:7) with waves (three, radius of curvature of each 90 to 500 m, along streets five
  times that) and one or two long features, straight
  or gently bent: street with kerbs (some lowered at a drive), ditch (sides 1:1.5 to 1:2.5), bank (1:2 to 1:3),
  low wall. Each is coded as lines or not coded at all.
- Walk: to and fro with the short legs between the passes stored too, spacing and distance of the passes varied,
  then three to five cross passes. Features cross the passes obliquely, or (street surveys) run along them.
- Noise: white part, slow part (first-order Gauss-Markov, 60 to 150 s), plan noise of half the height's. The stated
  sigma is wrong by up to a third; some surveys have no sigma, no tilt, or no time.
- Faults, each with its own rate in each survey: pole lifted or dropped (1 to 30 points), tilted, of wrong height for a
  stretch, fix lost (float, decimetres, drifting), regained with wrong ambiguities for a stretch, standing
  still, lines stored twice, and pauses and gaps (no faults, but they break the passes).

Not in it: tall grass and other rough cover, faults on coded line points, multipath without a change of the fix.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, List, Tuple

import numpy as np

from plugin.core.points.pointset import PointSet, make_points

SPEED = 1.2  # m/s
Section = Callable[[np.ndarray, np.ndarray], np.ndarray]


@dataclass(frozen=True)
class Survey:
    """A simulated survey of n points and its truth.

    ``fault``: (n,) object array, "" where there is none; ``event``: (n,) int64 number of the fault, -1 for none.
    ``error``: (n,) recorded height less the ground at the recorded place. ``at_feature``: (n,) bool, on a coded
    line or within 0.6 m of a feature's slopes. ``sigma``: standard deviation of a good height (m) in the process it was
    drawn from; ``white``: of the part new at every point.
    """

    points: PointSet
    fault: np.ndarray
    event: np.ndarray
    error: np.ndarray
    at_feature: np.ndarray
    sigma: float
    white: float
    what: str

    @property
    def spread(self) -> float:
        """Standard deviation (m) that the good heights of this survey do have about their mean error.

        On even ground: at a kerb or ditch the error of the place makes most of that of the height.
        """
        return float(np.std(self.error[(self.fault == "") & ~self.at_feature]))


@dataclass(frozen=True)
class _Feature:
    """A long feature: place and direction of its axis, bend (1/m), height section over (along, across), lines."""

    kind: str
    centre: np.ndarray
    angle: float
    bend: float
    section: Section
    half_width: float
    lines: Tuple[Tuple[str, float], ...]

    def frame(self, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Along and across the axis."""
        c, s = np.cos(self.angle), np.sin(self.angle)
        u, v = c * (x - self.centre[0]) + s * (y - self.centre[1]), -s * (x - self.centre[0]) + c * (y - self.centre[1])
        return u, v - self.bend * u**2 / 2

    def place(self, u: np.ndarray, v: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        c, s = np.cos(self.angle), np.sin(self.angle)
        w = v + self.bend * u**2 / 2
        return self.centre[0] + c * u - s * w, self.centre[1] + s * u + c * w


class _Ground:
    def __init__(self, random: np.random.Generator, features: List[_Feature], even: float) -> None:
        steep, towards = random.uniform(0, 0.14), random.uniform(0, 2 * np.pi)
        self.slope = steep * np.array([np.cos(towards), np.sin(towards)])
        self.waves = []
        for _ in range(3):
            length, angle = random.uniform(18, 70), random.uniform(0, 2 * np.pi)
            k = 2 * np.pi / length * np.array([np.cos(angle), np.sin(angle)])
            radius = even * np.exp(random.uniform(np.log(90), np.log(500)))
            self.waves.append((k, (length / (2 * np.pi)) ** 2 / radius, random.uniform(0, 2 * np.pi)))
        self.features = features

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        z = 100 + self.slope[0] * x + self.slope[1] * y
        for k, height, phase in self.waves:
            z = z + height * np.sin(k[0] * x + k[1] * y + phase)
        for feature in self.features:
            z = z + feature.section(*feature.frame(x, y))
        return z

    def at_feature(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        mask = np.zeros(len(x), bool)
        for feature in self.features:
            _, v = feature.frame(x, y)
            if feature.kind == "street":
                mask |= np.abs(np.abs(v) - feature.half_width) < 0.7
            else:
                mask |= np.abs(v) < feature.half_width + 0.6
        return mask


def _street(random: np.random.Generator) -> Tuple[str, Section, float, Tuple[Tuple[str, float], ...]]:
    half, face, crossfall = random.uniform(2.5, 4.0), random.uniform(0.08, 0.15), random.uniform(0.015, 0.03)
    drive = random.uniform(-20, 20)

    def section(u: np.ndarray, v: np.ndarray) -> np.ndarray:
        lowered = np.where(v > 0, np.clip((np.abs(u - drive) - 2) / 1.0, 0, 1), 1.0)
        rise = 0.03 + (face - 0.03) * lowered
        away = np.abs(v)
        street = crossfall * (half - np.minimum(away, half)) - rise
        return np.where(away <= half, street, -rise * np.clip(1 - (away - half) / 0.1, 0, 1))

    top = half + 0.1
    return "street", section, half + 0.05, (("KT 1", top), ("KF 1", half), ("KF 2", -half), ("KT 2", -top))


def _ditch(random: np.random.Generator) -> Tuple[str, Section, float, Tuple[Tuple[str, float], ...]]:
    depth, run, floor = random.uniform(0.3, 0.9), random.uniform(1.5, 2.5), random.choice([0.0, 0.25])

    def section(u: np.ndarray, v: np.ndarray) -> np.ndarray:
        return -np.clip(depth - (np.abs(v) - floor) / run, 0, depth)

    edge = floor + run * depth
    bottom = (("DB 1", 0.0),) if floor == 0 else (("DB 1", floor), ("DB 2", -floor))
    return "ditch", section, edge, (("DT 1", edge), *bottom, ("DT 2", -edge))


def _bank(random: np.random.Generator) -> Tuple[str, Section, float, Tuple[Tuple[str, float], ...]]:
    height, run = random.uniform(1.0, 3.0), random.uniform(2.0, 3.0)
    half = height * run / 2
    return "bank", lambda u, v: height * np.clip(v / (2 * half) + 0.5, 0, 1), half, (("BL 1", half), ("BL 2", -half))


def _wall(random: np.random.Generator) -> Tuple[str, Section, float, Tuple[Tuple[str, float], ...]]:
    height = random.uniform(0.25, 0.6)
    return "wall", lambda u, v: height * np.clip(v / 0.06 + 0.5, 0, 1), 0.03, (("BL 1", 0.03), ("BL 2", -0.03))


# --- the walk ---------------------------------------------------------------------------------------


@dataclass
class Walk:
    x: np.ndarray
    y: np.ndarray
    time: np.ndarray
    code: np.ndarray


def _along(
    corners: np.ndarray, spacing: float, random: np.random.Generator
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places stored by distance on a path, with a walker's sway; and the distance walked."""
    legs = np.hypot(*np.diff(corners, axis=0).T)
    marks = np.append(0.0, np.cumsum(legs))
    run = np.cumsum(spacing * (1 + random.uniform(0, 0.12, int(marks[-1] / spacing))))
    run = run[run < marks[-1]]
    leg = np.clip(np.searchsorted(marks, run, side="right") - 1, 0, len(legs) - 1)
    direction = (np.diff(corners, axis=0) / legs[:, None])[leg]
    phase = random.uniform(0, 2 * np.pi, 2)
    sway = 0.14 * np.sin(run * 2 * np.pi / 21 + phase[0]) + 0.06 * np.sin(run * 2 * np.pi / 7.1 + phase[1])
    sway *= np.minimum(1, np.abs(run[:, None] - marks).min(axis=1) / 2)
    x = np.interp(run, marks, corners[:, 0]) - direction[:, 1] * sway
    y = np.interp(run, marks, corners[:, 1]) + direction[:, 0] * sway
    return x, y, run


def _passes(rows: np.ndarray, length: float, across: bool = False) -> np.ndarray:
    corners = []
    for k, row in enumerate(rows):
        ends = [(0.0, row), (length, row)]
        corners += ends if k % 2 == 0 else ends[::-1]
    xy = np.array(corners)
    return xy[:, ::-1] if across else xy


def _walk(random: np.random.Generator, layout: str, features: List[_Feature], size: Tuple[float, float],
          rows: np.ndarray, spacing: float) -> Walk:  # fmt: skip
    length, width = size
    x, y, time, code = [], [], [], []
    clock = 1.75e9

    def store(px: np.ndarray, py: np.ndarray, seconds: np.ndarray, names: List[str]) -> None:
        nonlocal clock
        x.append(px)
        y.append(py)
        time.append(clock + seconds)
        code.extend(names)
        clock += float(seconds[-1]) + random.uniform(5, 40)

    for number, feature in enumerate(features):
        if not feature.lines:
            continue
        for name, v in feature.lines:
            u = np.arange(-80.0, 80.0, random.uniform(2.0, 4.0)) + random.uniform(0, 1)
            px, py = feature.place(u, np.full(len(u), v))
            inside = (px > 0.2) & (px < length - 0.2) & (py > 0.2) & (py < width - 0.2)
            if np.count_nonzero(inside) < 3:
                continue
            px, py = px[inside], py[inside]
            word, count = f"{name}{number}", len(px)
            names = [word + " BEGIN", *[word] * (count - 2), word + " END"]
            store(px, py, 4.0 * np.arange(count), names)
    cross = np.linspace(0.08, 0.92, int(random.integers(3, 6))) * length + random.uniform(-1, 1)
    for corners in (_passes(rows, length), _passes(cross, width, across=True)):
        px, py, run = _along(corners, spacing, random)
        store(px, py, run / SPEED, ["GR"] * len(px))
    return Walk(np.concatenate(x), np.concatenate(y), np.concatenate(time), np.array(code, object))


def _layout(random: np.random.Generator) -> Tuple[str, List[_Feature], Tuple[float, float], np.ndarray, float]:
    spacing = random.uniform(0.45, 0.75)
    makers = [_street, _ditch, _bank, _wall]
    coded = random.random() < 0.5
    bend = random.uniform(-1, 1) / 300
    if random.random() < 0.35:  # along the street
        length, width = random.uniform(70, 100), random.uniform(16, 22)
        middle = width / 2
        kind, section, half, lines = _street(random)
        street = _Feature(kind, np.array([length / 2, middle]), 0.0, 0.0, section, half, lines if coded else ())
        beside = np.array([-half - 0.45, -half + 0.45, -half / 2, 0, half / 2, half - 0.45, half + 0.45])
        rest = np.arange(half + 2.0, middle, random.uniform(1.5, 2.5))
        rows = np.sort(np.concatenate([beside, rest, -rest])) + middle
        return "street", [street], (length, width), rows, spacing
    between = random.uniform(2.0, 4.5)
    length = random.uniform(45, 70)
    width = float(np.clip(2300 * spacing * between / length, 20, 60))
    rows = np.arange(0.5, width, between) + random.uniform(-0.08, 0.08, len(np.arange(0.5, width, between))) * between
    angle = random.uniform(np.radians(40), np.radians(140))
    features = []
    places = [0.3, 0.75] if random.random() < 0.5 else [0.5]
    for share in places:
        kind, section, half, lines = makers[int(random.integers(4))](random)
        if features and half + features[0].half_width > 0.3 * length * np.sin(angle):
            continue
        centre = np.array([share * length, width / 2])
        features.append(_Feature(kind, centre, angle, bend, section, half, lines if coded else ()))
    return "field", features, (length, width), rows, spacing


# --- the receiver and what went wrong ---------------------------------------------------------------


def slow_noise(time: np.ndarray, sigma: float, seconds: float, random: np.random.Generator) -> np.ndarray:
    """First-order Gauss-Markov noise at times that never fall."""
    keep = np.exp(-np.maximum(np.diff(time, prepend=time[0]), 0) / seconds)
    draw = random.normal(0, sigma, len(time))
    value = np.empty(len(time))
    last = draw[0]
    for k in range(len(time)):
        last = keep[k] * last + np.sqrt(1 - keep[k] ** 2) * draw[k]
        value[k] = last
    return value


class Record:
    """The columns a receiver stores, being spoiled fault by fault."""

    def __init__(self, walk: Walk, ground: _Ground, random: np.random.Generator) -> None:
        n = len(walk.x)
        self.random, self.walk, self.n = random, walk, n
        self.white, slow = random.uniform(0.007, 0.018), random.uniform(0.3, 0.7)
        self.slow = self.white * slow
        self.sigma = float(np.hypot(self.white, self.slow))
        plan = self.sigma / 2
        self.x = walk.x + random.normal(0, plan, n)
        self.y = walk.y + random.normal(0, plan, n)
        drift = self.drift()
        self.z = ground(walk.x, walk.y) + random.normal(0, self.white, n) + drift
        claim = self.sigma * np.exp(random.uniform(-0.35, 0.25))
        self.sigma_v = claim * random.uniform(0.85, 1.15, n)
        self.sigma_h = 0.6 * self.sigma_v
        self.fix = np.full(n, 4, np.int8)
        self.tilt = np.abs(random.normal(0, 1.5, n))
        self.pdop = random.uniform(1.2, 2.2, n)
        self.fault = np.full(n, "", object)
        self.event = np.full(n, -1, np.int64)
        self.free = walk.code == "GR"
        self.events = 0

    def drift(self) -> np.ndarray:
        """Error (n,) of the heights that wanders (m)."""
        return slow_noise(self.walk.time, self.slow, self.random.uniform(60, 150), self.random)

    def stretch(self, count: int, gap: int = 8) -> np.ndarray:
        """Indices of ``count`` consecutive auto-recorded points no fault has touched yet, nor any near them."""
        for _ in range(60):
            start = int(self.random.integers(2, max(3, self.n - count - 2)))
            run = np.arange(start, min(self.n, start + count))
            wide = slice(max(0, start - gap), start + count + gap)
            if self.free[wide].all():
                return run
        return np.empty(0, np.int64)

    def note(self, run: np.ndarray, fault: str) -> None:
        self.fault[run] = fault
        self.event[run] = self.events
        self.events += 1
        self.free[run] = False

    def size(self, low: float, high: float) -> float:
        return float(np.exp(self.random.uniform(np.log(low), np.log(high))))

    def lift(self) -> None:
        count = int(np.exp(self.random.uniform(0, np.log(30.99))))
        run = self.stretch(count)
        if not len(run):
            return
        size = self.size(max(0.06, 2.5 * self.sigma), 1.5) * (1 if self.random.random() < 0.8 else -1)
        if size < -0.5:
            size /= 3
        wobble = 1 + 0.1 * self.random.normal(0, 1, count)
        if count >= 4 and self.random.random() < 0.3:
            wobble[[0, -1]] *= 0.5
        self.z[run] += size * wobble
        self.note(run, "lift")

    def tilted(self) -> None:
        run = self.stretch(int(self.random.integers(3, 16)))
        if not len(run):
            return
        angle, aside = self.random.uniform(12, 30), self.random.uniform(0, 2 * np.pi)
        shift = 2.0 * np.sin(np.radians(angle))
        self.x[run] += shift * np.cos(aside)
        self.y[run] += shift * np.sin(aside)
        self.z[run] -= 2.0 * (1 - np.cos(np.radians(angle)))
        self.tilt[run] = angle + self.random.normal(0, 1, len(run))
        self.note(run, "tilt")

    def pole_height(self) -> None:
        run = self.stretch(int(self.random.integers(60, 300)))
        if not len(run):
            return
        self.z[run] += self.size(max(0.05, 4 * self.sigma), 0.5) * self.random.choice([-1, 1])
        self.note(run, "pole_height")

    def fix_loss(self, wrong_after: bool) -> None:
        lost, wrong = int(self.random.integers(6, 40)), int(self.random.integers(20, 120)) if wrong_after else 0
        run = self.stretch(lost + wrong)
        if not len(run):
            return
        float_run, wrong_run = run[:lost], run[lost:]
        wander = [slow_noise(self.walk.time[float_run], 0.2, 30.0, self.random) for _ in range(3)]
        self.x[float_run] += wander[0] + self.random.normal(0, 0.05, lost)
        self.y[float_run] += wander[1] + self.random.normal(0, 0.05, lost)
        self.z[float_run] += 1.5 * wander[2] + self.random.normal(0, 0.08, lost)
        self.fix[float_run] = 5
        self.sigma_v[float_run] = self.random.uniform(0.15, 0.5, lost)
        self.sigma_h[float_run] = 0.6 * self.sigma_v[float_run]
        self.pdop[float_run] += 2
        self.note(float_run, "fix_loss")
        if wrong:
            aside = self.random.uniform(0, 2 * np.pi)
            self.x[wrong_run] += 0.15 * np.cos(aside)
            self.y[wrong_run] += 0.15 * np.sin(aside)
            self.z[wrong_run] += self.random.uniform(0.2, 0.6) * self.random.choice([-1, 1])
            self.note(wrong_run, "wrong_fix")


def _stand_and_repeat(record: Record, ground: _Ground) -> np.ndarray:
    """Order of records with clusters and repeated blocks put in: (index, kind) rows; kind 1 still, 2 repeated."""
    random, order = record.random, np.column_stack([np.arange(record.n), np.zeros(record.n, np.int64)])
    for kind, chance in ((1, 0.7), (1, 0.4), (2, 0.5)):
        if random.random() > chance:
            continue
        count = int(random.integers(8, 60))
        run = record.stretch(1 if kind == 1 else count)
        if not len(run):
            continue
        block = np.column_stack([np.full(count, run[0]) if kind == 1 else run, np.full(count, kind)])
        after = int(run[-1]) + (0 if kind == 1 else int(random.integers(0, 200)))
        at = min(len(order), int(np.flatnonzero(order[:, 0] == min(after, record.n - 1))[0]) + 1)
        order = np.vstack([order[:at], block, order[at:]])
        record.free[run] = False
    return order


def simulate(seed: int) -> Survey:
    """The survey of a seed: everything in it is drawn from that seed alone."""
    random = np.random.default_rng(seed)
    layout, features, size, rows, spacing = _layout(random)
    ground = _Ground(random, features, 5.0 if layout == "street" else 1.0)  # streets are built evenly
    walk = _walk(random, layout, features, size, rows, spacing)
    record = Record(walk, ground, random)
    for _ in range(int(random.poisson(record.n * random.uniform(0.0005, 0.004)))):
        record.lift()
    for chance, spoil in ((0.5, record.tilted), (0.4, record.pole_height), (0.5, lambda: record.fix_loss(False)),
                          (0.4, lambda: record.fix_loss(True))):  # fmt: skip
        if random.random() < chance:
            spoil()
    order = _stand_and_repeat(record, ground)
    gaps = np.ones(len(order), bool)
    if random.random() < 0.5:  # a piece of a pass that was not stored
        run = record.stretch(int(random.integers(6, 25)))
        gaps &= ~np.isin(order[:, 0], run)
    return _survey(record, ground, order[gaps], layout, features)


def _survey(record: Record, ground: _Ground, order: np.ndarray, layout: str, features: List[_Feature]) -> Survey:
    random, (k, kind) = record.random, order.T
    still, repeated = kind == 1, kind == 2
    count = len(order)
    time = record.walk.time[k].copy()
    waiting = np.cumsum(still) * 1.0  # standing takes time: a record a second
    x, y, z = record.x[k].copy(), record.y[k].copy(), record.z[k].copy()
    x[still] = record.walk.x[k[still]] + random.normal(0, record.sigma / 3, still.sum())
    y[still] = record.walk.y[k[still]] + random.normal(0, record.sigma / 3, still.sum())
    z[still] += random.normal(0, record.white, still.sum()) - random.normal(0, record.white / 10, still.sum())
    first = np.full(record.n, -1)
    place = np.flatnonzero(~repeated)
    first[k[place][::-1]] = place[::-1]
    time += np.where(repeated, waiting[first[k]], waiting)
    if random.random() < 0.5:
        time[int(random.integers(count)) :] += random.uniform(120, 1500)  # a pause
        time[repeated] = time[first[k[repeated]]]
    fault = record.fault[k].copy()
    fault[still], fault[repeated] = "still", "repeated"
    event = record.event[k].copy()
    event[still] = record.events + k[still]
    event[repeated] = record.events + record.n
    nothing = np.full(count, np.nan)
    plain = random.random(3) < 0.12
    east, north = 500_000.0 + x, 5_700_000.0 + y
    points = make_points(
        east, north, z, code=record.walk.code[k], time=nothing if plain[0] else time, fix=record.fix[k],
        sigma_h=nothing if plain[1] else record.sigma_h[k], sigma_v=nothing if plain[1] else record.sigma_v[k],
        tilt=nothing if plain[2] else record.tilt[k], source_line=np.arange(2, count + 2),
        extra={"pdop": record.pdop[k]}, source="simulated.csv",
    )  # fmt: skip
    coded = record.walk.code[k] != "GR"
    kinds = "+".join(f"{f.kind}{' coded' if f.lines else ''}" for f in features)
    return Survey(
        points, fault, event, z - ground(x, y), coded | ground.at_feature(x, y), record.sigma, record.white,
        f"{layout}: {kinds}",
    )  # fmt: skip
