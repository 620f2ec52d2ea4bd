"""Grounds of simulated surveys: even ground, and what stands on it or is dug into it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, List, Tuple

import numpy as np

#: Height (m) that something adds to the ground at places ``x``, ``y`` (local metres).
Piece = Callable[[np.ndarray, np.ndarray], np.ndarray]


class Ground:
    """A plane with three waves, radius of curvature of each 90 to 500 m times ``even``, and ``pieces`` added to it."""

    def __init__(self, random: np.random.Generator, even: float = 1.0, steepest: float = 0.14) -> None:
        steep, towards = random.uniform(0, steepest), random.uniform(0, 2 * np.pi)
        self.slope = steep * np.array([np.cos(towards), np.sin(towards)])
        self.waves: List[Tuple[np.ndarray, float, float]] = []
        for _ in range(3):
            length, angle = random.uniform(18, 70), random.uniform(0, 2 * np.pi)
            k = 2 * np.pi / length * np.array([np.cos(angle), np.sin(angle)])
            radius = even * np.exp(random.uniform(np.log(90), np.log(500)))
            self.waves.append((k, (length / (2 * np.pi)) ** 2 / radius, random.uniform(0, 2 * np.pi)))
        self.pieces: List[Piece] = []

    def base(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Height without the pieces."""
        z: np.ndarray = 100 + self.slope[0] * x + self.slope[1] * y
        for k, height, phase in self.waves:
            z = z + height * np.sin(k[0] * x + k[1] * y + phase)
        return z

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        z = self.base(x, y)
        for piece in self.pieces:
            z = z + piece(x, y)
        return z

    def broken(self, x: np.ndarray, y: np.ndarray, reach: float = 0.5, limit: float = 0.02) -> np.ndarray:
        """Mask of the places within ``reach`` (m) of which the ground leaves its tangent by more than ``limit`` (m)."""
        z, off = self(x, y), np.zeros(len(x))
        for share in (0.4, 1.0):
            for angle in np.arange(0, np.pi, np.pi / 4):
                dx, dy = share * reach * np.cos(angle), share * reach * np.sin(angle)
                off = np.maximum(off, np.abs(self(x + dx, y + dy) + self(x - dx, y - dy) - 2 * z) / 2)
        return off > limit


@dataclass(frozen=True)
class Axis:
    """A straight or circular line through ``centre`` (x, y), heading ``angle`` there, of curvature ``bend`` (1/m)."""

    centre: Tuple[float, float] = (0.0, 0.0)
    angle: float = 0.0
    bend: float = 0.0

    def frame(self, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Distance along the line, and to its left."""
        c, s = np.cos(self.angle), np.sin(self.angle)
        u, v = c * (x - self.centre[0]) + s * (y - self.centre[1]), -s * (x - self.centre[0]) + c * (y - self.centre[1])
        if self.bend == 0:
            return u, v
        radius = 1 / self.bend
        side = np.sign(radius)
        turn = np.arctan2(side * u, side * (radius - v))
        return radius * turn, radius - side * np.hypot(u, radius - v)

    def place(self, u: np.ndarray, v: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """The place ``u`` along the line and ``v`` to its left."""
        if self.bend != 0:
            radius = 1 / self.bend
            u, v = (radius - v) * np.sin(u / radius), radius - (radius - v) * np.cos(u / radius)
        c, s = np.cos(self.angle), np.sin(self.angle)
        return self.centre[0] + c * u - s * v, self.centre[1] + s * u + c * v


def face(inside: np.ndarray, width: float) -> np.ndarray:
    """0 outside, 1 inside of an edge whose face is ``width`` (m) wide; ``inside``: distance in from its middle (m)."""
    share: np.ndarray = np.clip(inside / width + 0.5, 0, 1)
    return share


@dataclass(frozen=True)
class Heap:
    """A heap (``height`` > 0) or pit (< 0): flat top of radius ``top``, sides 1 : ``run``, stretched along ``axis``."""

    axis: Axis
    height: float
    top: float
    run: float
    stretch: float

    @property
    def foot(self) -> float:
        """Radius of its foot across (m); along it is ``stretch`` times that."""
        return self.top + abs(self.height) * self.run

    @property
    def volume(self) -> float:
        """Cubic metres between it and the ground it stands on, of a frustum of a cone."""
        a, b = self.top, self.foot
        return float(np.pi * abs(self.height) / 3 * (a * a + a * b + b * b) * self.stretch)

    def across(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """Distance from the middle, in metres across: the foot lies at ``foot``."""
        u, v = self.axis.frame(x, y)
        return np.hypot(u / self.stretch, v)

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        rise = np.clip((self.foot - self.across(x, y)) / self.run, 0, abs(self.height))
        return np.sign(self.height) * rise


def heap_of(random: np.random.Generator, volume: float, centre: Tuple[float, float]) -> Heap:
    """A heap or pit of ``volume`` (m³) there; the flatter it must be, the wider its top."""
    run, stretch = random.uniform(1.4, 2.6), random.uniform(1.0, 1.6)
    tallest = (3 * volume / (np.pi * run**2 * stretch)) ** (1 / 3)  # that of a cone
    height = min(random.uniform(0.35, 0.85) * tallest, 3.5)
    # V = pi h stretch (3 a² + 3 a h run + (h run)²) / 3, solved for the radius a of the top.
    wide = height * run
    top = (-wide + np.sqrt(wide**2 - 4 * (wide**2 / 3 - volume / (np.pi * height * stretch)))) / 2
    sign = 1 if random.random() < 0.7 else -1
    return Heap(Axis(centre, random.uniform(0, np.pi)), sign * height, float(top), run, stretch)


# --- things -----------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Block:
    """A bed, wall or slab: a rectangle of ``length`` by ``width`` (m) about ``axis``, ``height`` above the ground."""

    axis: Axis
    length: float
    width: float
    height: float
    face: float = 0.06

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        u, v = self.axis.frame(x, y)
        return self.height * face(np.minimum(self.length / 2 - np.abs(u), self.width / 2 - np.abs(v)), self.face)


@dataclass(frozen=True)
class Boulder:
    """Half an ellipsoid of ``radius`` and ``height`` (m)."""

    centre: Tuple[float, float]
    radius: float
    height: float

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        away = np.hypot(x - self.centre[0], y - self.centre[1]) / self.radius
        return self.height * np.sqrt(np.clip(1 - away**2, 0, None))


@dataclass(frozen=True)
class Steps:
    """Steps up to the left of ``axis``: at each of ``places`` (m across) the ground rises by ``heights`` (m)."""

    axis: Axis
    places: Tuple[float, ...]
    heights: Tuple[float, ...]
    face: float

    def __call__(self, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        _, v = self.axis.frame(x, y)
        return sum((h * face(v - at, self.face) for at, h in zip(self.places, self.heights)), np.zeros(len(x)))


def rubble(random: np.random.Generator) -> Piece:
    """Rubble or grass tufts: 60 waves of 0.5 to 3 m length in all directions, 15 to 50 mm standard deviation."""
    count, sigma = 60, random.uniform(0.015, 0.05)
    length, angle = np.exp(random.uniform(np.log(0.5), np.log(3.0), count)), random.uniform(0, 2 * np.pi, count)
    kx, ky, phase = (2 * np.pi / length * np.cos(angle), 2 * np.pi / length * np.sin(angle),
                     random.uniform(0, 2 * np.pi, count))  # fmt: skip
    size = sigma * np.sqrt(2 / count)

    def piece(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        return size * np.sin(np.multiply.outer(x, kx) + np.multiply.outer(y, ky) + phase).sum(axis=-1)

    return piece


def furrows(random: np.random.Generator) -> Piece:
    """A ploughed field: ridges 0.3 to 0.9 m apart, 40 to 140 mm high, not quite straight, with clods on them."""
    apart, half, angle = random.uniform(0.3, 0.9), random.uniform(0.02, 0.07), random.uniform(0, np.pi)
    clods, sway = rubble(random), random.uniform(0, 2 * np.pi)

    def piece(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        u, v = np.cos(angle) * x + np.sin(angle) * y, -np.sin(angle) * x + np.cos(angle) * y
        return half * np.sin(2 * np.pi * (v + 0.1 * np.sin(u / 4 + sway)) / apart) + 0.4 * clods(x, y)

    return piece
