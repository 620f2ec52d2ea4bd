"""Streets without field codes: kerbs and a ditch that were walked along and crossed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from .ground import Axis, Ground
from .sites import Site, rows_over, site_of, true_line
from .walks import Leg, Way, straight, to_and_fro


@dataclass(frozen=True)
class Street:
    """A street ``half`` (m) wide to either side of ``axis``, kerbs ``rise`` high, lowered at ``drives`` (side, place).

    ``ditch``: middle of the ditch across (m), depth, run of its sides (1 : run), half width of its floor.
    """

    axis: Axis
    half: float
    rise: float
    face: float
    crossfall: float
    drives: Tuple[Tuple[int, float], ...]
    ditch: Tuple[float, float, float, float]

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        u, v = self.axis.frame(x, y)
        rise = np.full(len(x), self.rise)
        for side, at in self.drives:
            lowered = np.clip((np.abs(u - at) - 2) / 1.0, 0, 1)
            rise = np.where(np.sign(v) == side, np.minimum(rise, 0.03 + (self.rise - 0.03) * lowered), rise)
        away = np.abs(v)
        street = self.crossfall * (self.half - np.minimum(away, self.half)) - rise
        z = np.where(away <= self.half, street, -rise * np.clip(1 - (away - self.half) / self.face, 0, 1))
        middle, depth, run, floor = self.ditch
        return z - np.clip(depth - (np.abs(v - middle) - floor) / run, 0, depth)

    @property
    def lines(self) -> List[Tuple[str, float]]:
        """Kind and place across (m) of what is walked along."""
        foot, top = self.half - 0.08, self.half + self.face + 0.08
        return [
            ("kerb foot", foot), ("kerb foot", -foot), ("kerb top", top), ("kerb top", -top),
            ("ditch bottom", self.ditch[0]),
        ]  # fmt: skip

    @property
    def ditch_reach(self) -> float:
        """Half the width of the ditch at the top (m)."""
        return self.ditch[3] + self.ditch[1] * self.ditch[2]


def street_of(random: np.random.Generator, length: float) -> Street:
    half, rise = random.uniform(2.5, 4.0), random.uniform(0.06, 0.15)
    bend = random.choice([-1, 1]) / np.exp(random.uniform(np.log(60), np.log(600))) if random.random() < 0.7 else 0.0
    drives = [(int(random.choice([-1, 1])), float(u)) for u in random.uniform(-0.45, 0.45, int(random.integers(0, 4)))]
    depth, run, floor = random.uniform(0.3, 0.9), random.uniform(1.2, 2.5), random.choice([0.0, 0.15, 0.3])
    middle = half + random.uniform(1.2, 3.0) + floor + depth * run
    return Street(
        Axis((0.0, 0.0), random.uniform(0, 2 * np.pi), float(bend)), half, rise, random.uniform(0.03, 0.1),
        random.uniform(0.015, 0.03), tuple((side, u * length) for side, u in drives),
        (float(random.choice([-1, 1]) * middle), depth, run, float(floor)),
    )  # fmt: skip


def street(random: np.random.Generator) -> Site:
    """A street whose kerb feet, kerb tops and ditch bottom were walked along, without codes.

    The rest is walked across at every pass (two thirds of the surveys), or along with three to six cross passes.
    """
    spacing, between = random.uniform(0.45, 0.75), random.uniform(2.0, 4.5)
    crossed = random.random() < 2 / 3
    length = random.uniform(55, 95)
    made = street_of(random, length)
    ground = Ground(random, 5.0, 0.08)
    ground.pieces.append(made)
    side = np.sign(made.ditch[0])
    far = abs(made.ditch[0]) + made.ditch_reach + random.uniform(1, 3)
    near = made.half + random.uniform(2, 5)
    low, high = (-near, far) if side > 0 else (-far, near)
    walked = made.lines if random.random() < 0.7 else [line for line in made.lines if random.random() < 0.75]
    along = _along(random, walked, length)
    if crossed:
        rows = rows_over(random, length, between) - length / 2
        rest = to_and_fro(rows, low, high, across=True)
    else:
        rows = rows_over(random, high - low, between) + low
        rest = to_and_fro(rows, -length / 2, length / 2)
    cross = np.linspace(-0.42, 0.42, int(random.integers(3, 7))) * length + random.uniform(-1, 1)
    parts = [rest] if crossed else [rest, to_and_fro(cross, low, high, across=True)]
    parts.insert(int(random.integers(len(parts) + 1)), along)
    way = Way(random, made.axis.place)
    for legs in parts:
        if legs:
            way.go(legs, spacing)
    u = np.linspace(-length / 2, length / 2, 40)
    lines = tuple(true_line(kind, ground, *made.axis.place(u, np.full(len(u), v))) for kind, v in walked)
    what = f"street {'crossed' if crossed else 'along'}, walked lines {len(walked)}, bend {made.axis.bend:.4f}"
    return site_of(way, ground, spacing, between, what, lines)


def _along(random: np.random.Generator, walked: List[Tuple[str, float]], length: float) -> List[Leg]:
    """To and fro along the lines, from one side to the other or in the order of their kinds."""
    order = sorted(walked, key=lambda line: line[1]) if random.random() < 0.5 else walked
    legs = []
    for k, (kind, v) in enumerate(order):
        u = (length / 2 - random.uniform(0, 1.5)) * (1 if k % 2 else -1)
        legs.append(straight(u, v, -u, v, 0.3 if kind == "ditch bottom" else 0.15))
    return legs


_CODES = {"kerb foot": "KF", "kerb top": "KT", "ditch bottom": "DB"}


def coded_street(random: np.random.Generator) -> Site:
    """The same street with its kerbs and its ditch coded as lines, a point each 2 to 4 m or as the walk stores them.

    It is crossed at every pass and walked along in three to six more.
    """
    spacing, between, length = random.uniform(0.45, 0.75), random.uniform(2.0, 4.5), random.uniform(50, 85)
    made = street_of(random, length)
    ground = Ground(random, 5.0, 0.08)
    ground.pieces.append(made)
    way = Way(random, made.axis.place)
    apart = spacing if random.random() < 0.3 else random.uniform(2.0, 4.0)
    lines = []
    for number, (kind, v) in enumerate(made.lines):
        u = np.arange(-length / 2 + random.uniform(0, 1), length / 2, apart)
        u = u[:: -1 if number % 2 else 1]
        x, y = made.axis.place(u, np.full(len(u), v))
        word = f"{_CODES[kind]} {number}"
        way.put(x, y, 1.2 * apart * np.arange(len(u)), [word + " BEGIN", *[word] * (len(u) - 2), word + " END"])
        lines.append(true_line(kind, ground, x, y))
    far = abs(made.ditch[0]) + made.ditch_reach + random.uniform(1, 3)
    low, high = (-made.half - 3, far) if made.ditch[0] > 0 else (-far, made.half + 3)
    way.go(to_and_fro(rows_over(random, length, between) - length / 2, low, high, across=True), spacing)
    along = np.sort(random.uniform(low, high, int(random.integers(3, 7))))
    way.go(to_and_fro(along, -length / 2, length / 2), spacing)
    what = f"street coded, a point each {apart:.1f} m"
    return site_of(way, ground, spacing, between, what, tuple(lines), code="GR")
