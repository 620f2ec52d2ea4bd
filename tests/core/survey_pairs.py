"""Pairs of surveys of one ground, walked apart from each other, with noise whose kind and size are known."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Tuple

import numpy as np
from scipy.signal import lfilter

from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.study import Certainty, Study, StudyOptions, study
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import SurfaceOptions, build_surface

SPEED = 1.2  # m/s
PIT = (19.0, 17.0, 1.0)  # metres: square at the top, at the bottom, depth
HEAP = (20.0, 50.0)  # cubic metres


@dataclass(frozen=True)
class Pairs:
    """What the pairs are like, in metres and seconds.

    ``ground``: flat, rolling or steep; ``gaps``, ``steps``: between passes and between points, of each survey;
    ``white``, ``drift``: of each; ``slow``: drift is a sum of waves of 1 to 3 minutes, not a Gauss-Markov process;
    ``offset``: of the later survey; ``known``: whether it is given; ``timed``: whether the points' times are; ``pit``:
    whether one is dug in between; ``heap``: least and most height of a round heap of 20 to 50 m³ that is put up.
    """

    ground: str = "rolling"
    size: float = 60.0
    gaps: Tuple[float, float] = (4.0, 3.0)
    steps: Tuple[float, float] = (1.0, 0.8)
    white: float = 0.012
    drift: float = 0.0
    slow: bool = False
    offset: float = 0.02
    known: bool = False
    timed: bool = True
    pit: bool = False
    heap: Tuple[float, float] = (0.0, 0.0)

    def study(self, seed: int) -> Study:
        random = np.random.default_rng(seed)
        middle = random.uniform(0.35 * self.size, 0.65 * self.size, 2)
        height = random.uniform(*self.heap) if self.heap[1] else 0.0
        tins, sides = [], []
        for later in (0, 1):
            x, y, time = _walk(random, self.size, self.gaps[later], self.steps[later])
            if later:
                x, y = y, x
            z = self._height(x, y) + later * self.offset + random.normal(0, self.white, len(x))
            if self.drift:
                z = z + self.drift * (_waves(random, time) if self.slow else _gauss_markov(random, time))
            if later and self.pit:
                z = z - _depth(np.maximum(np.abs(x - middle[0]), np.abs(y - middle[1])))
            if later and self.heap[1]:
                reach = np.sqrt(2 * self.heap_volume(seed) / (np.pi * height))  # a paraboloid
                z = z + height * np.maximum(0.0, 1 - np.hypot(x - middle[0], y - middle[1]) ** 2 / reach**2)
            rim = SurfaceOptions(max_rim_edge=1.6 * max(self.gaps))
            tins.append(build_surface(make_points(x, y, z), options=rim).tin)
            sides.append(Certainty(self.white, self.drift, ground=True, time=time if self.timed else None))
        known = self.offset if self.known else None
        options = StudyOptions(existing=sides[0], design=sides[1], offset=known, drawn=False)
        return study(Comparison(tins[0], tins[1], names=("earlier", "later")), options)

    def heap_volume(self, seed: int) -> float:
        """Of the heap of a pair (m³), 0 where there is none."""
        low, high = HEAP
        return low + (high - low) * (seed * 0.618034 % 1.0) if self.heap[1] else 0.0

    def truth(self, seed: int) -> np.ndarray:
        """Cut, fill and net (m³)."""
        top, bottom, depth = PIT if self.pit else (0.0, 0.0, 0.0)
        cut, fill = depth / 3 * (top**2 + top * bottom + bottom**2), self.heap_volume(seed)
        return np.array([cut, fill, fill - cut])

    def _height(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        if self.ground == "steep":
            return 100 + 0.5 * x + 0.2 * y
        if self.ground == "rolling":
            return 100 + 0.02 * x + 0.5 * np.sin(x / 9) + 0.4 * np.cos(y / 11 + x / 20)
        return 100 + 0.01 * x


@dataclass(frozen=True)
class Score:
    """Of n pairs: ``errors`` (n, 3) of cut, fill and net, their stated standard deviations ``sigmas`` (n, 3), m³, and
    ``measured`` (n, 3): what the triangles say, less the truth."""

    errors: np.ndarray
    sigmas: np.ndarray
    measured: np.ndarray

    @property
    def inside(self) -> np.ndarray:
        """Share (3,) of results whose 95 % interval holds the truth."""
        return np.mean(np.abs(self.errors) < 1.959964 * self.sigmas, axis=0)

    @property
    def width(self) -> np.ndarray:
        """How many times as wide (3,) as the spread of the results the interval usually is."""
        return np.median(self.sigmas, axis=0) / self.errors.std(axis=0, ddof=1)

    def with_more(self, other: Score) -> Score:
        return Score(
            np.vstack([self.errors, other.errors]),
            np.vstack([self.sigmas, other.sigmas]),
            np.vstack([self.measured, other.measured]),
        )


def score(pairs: Pairs, count: int, first: int = 0) -> Score:
    errors, sigmas, measured = [], [], []
    for seed in range(first, first + count):
        found = pairs.study(seed)
        told = (found.doubt.cut, found.doubt.fill, found.doubt.net)
        errors.append([each.value for each in told] - pairs.truth(seed))
        sigmas.append([each.total for each in told])
        measured.append([found.measured.cut, found.measured.fill, found.measured.net] - pairs.truth(seed))
    return Score(np.array(errors), np.array(sigmas), np.array(measured))


def _walk(
    random: np.random.Generator, size: float, gap: float, step: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places and seconds of a walk to and fro."""
    along = np.arange(0, size + 0.01, step)
    rows = np.arange(0, size + 0.01, gap)
    x = np.concatenate([along if k % 2 == 0 else along[::-1] for k in range(len(rows))])
    x = x + random.normal(0, 0.1 * step, len(x))
    y = np.repeat(rows, len(along)) + random.normal(0, 0.15, len(x))
    time = np.append(0.0, np.cumsum(np.hypot(np.diff(x), np.diff(y)))) / SPEED
    return x, y, time


def _gauss_markov(random: np.random.Generator, time: np.ndarray) -> np.ndarray:
    """Correlation time 60 to 150 s, standard deviation 1."""
    even = np.arange(time[0], time[-1] + 1, 0.5)
    keep = np.exp(-0.5 / random.uniform(60, 150))
    new = random.normal(0, np.sqrt(1 - keep**2), len(even))
    new[0] = random.normal()
    return np.interp(time, even, lfilter([1.0], [1.0, -keep], new))


def _waves(random: np.random.Generator, time: np.ndarray) -> np.ndarray:
    """Four waves of 1 to 3 minutes, mean square 1."""
    period, phase = random.uniform(60, 180, 4), random.uniform(0, 2 * np.pi, 4)
    size = random.rayleigh(1, 4)
    size = size / np.sqrt(np.sum(size**2) / 2)
    return np.sum(size * np.cos(2 * np.pi * time[:, None] / period + phase), axis=1)


def _depth(from_middle: np.ndarray) -> np.ndarray:
    top, bottom, depth = PIT
    return depth * np.clip((top / 2 - from_middle) / ((top - bottom) / 2), 0, 1)
