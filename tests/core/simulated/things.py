"""Real things on fields that look like faults: beds, walls, boulders, steps, terraces, rough ground."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Tuple

import numpy as np

from .ground import Axis, Block, Boulder, Steps, furrows, rubble
from .sites import Site, Things, field
from .walks import straight

Size = Tuple[float, float]


def beds(random: np.random.Generator) -> Site:
    """Three to eight raised beds, 0.2 to 0.6 m high, long enough across the passes for two of them."""
    return field(random, _beds, "beds", (1.6, 3.0))


def walls(random: np.random.Generator) -> Site:
    """One or two low walls walked on top and at the foot, and in half of the surveys a step walked along it."""
    return field(random, _walls, "walls")


def boulders(random: np.random.Generator) -> Site:
    """Four to ten boulders, 0.3 to 1.2 m high and 2.4 to 6 m wide, which is wide enough for two passes."""
    return field(random, _boulders, "boulders", (1.2, 2.2))


def terraces(random: np.random.Generator) -> Site:
    """Two to six terraces, 0.3 to 1.2 m each, straight or curved, in any direction to the passes."""
    return field(random, _terraces, "terraces")


def rough(random: np.random.Generator) -> Site:
    """Rubble or tufts (half of the surveys), or a ploughed field."""
    kind, made = ("rubble", rubble) if random.random() < 0.5 else ("ploughed", furrows)
    site = field(random, lambda draw, *_: Things([made(draw)]), kind)
    x, y = site.walk.x, site.walk.y
    return replace(site, rough=float(np.std(site.ground(x, y) - site.ground.base(x, y))))


def _spots(random: np.random.Generator, size: Size, count: int, room: float) -> List[Tuple[float, float]]:
    """Up to ``count`` places on a field with ``room`` (m) around each."""
    columns, rows = (max(1, int(each // (2 * room))) for each in size)
    chosen = random.permutation(columns * rows)[:count]
    spots = []
    for cell in chosen:
        corner = np.array([cell % columns, cell // columns])
        wide = np.array(size) / (columns, rows)
        free = np.maximum(wide / 2 - room, 0)
        x, y = (corner + 0.5) * wide + random.uniform(-1, 1, 2) * free
        spots.append((float(x), float(y)))
    return spots


def _beds(random: np.random.Generator, size: Size, between: float) -> Things:
    length = between * random.uniform(2.2, 3.2)
    spots = _spots(random, size, int(random.integers(3, 9)), length / 2 + 0.6)
    made = Things()
    for spot in spots:
        axis = Axis(spot, np.pi / 2 + random.uniform(-0.6, 0.6))
        made.pieces.append(Block(axis, length, random.uniform(1.2, 2.5), random.uniform(0.2, 0.6)))
    return made


def _walls(random: np.random.Generator, size: Size, between: float) -> Things:
    made = Things()
    long = min(20.0, 0.8 * min(size))
    for spot in _spots(random, size, int(random.integers(1, 3)), long / 2):
        axis, width = Axis(spot, random.uniform(0, np.pi)), random.uniform(0.3, 0.5)
        length = long * random.uniform(0.6, 1.0)
        made.pieces.append(Block(axis, length, width, random.uniform(0.25, 0.8), 0.04))
        for kind, v in (("wall foot", -width / 2 - 0.2), ("wall top", 0.0), ("wall foot", width / 2 + 0.2)):
            _walked(made, axis, kind, v, length / 2 - 0.3, random)
    if random.random() < 0.5:
        axis = Axis((size[0] * random.uniform(0.2, 0.8), size[1] / 2), np.pi / 2 + random.uniform(-0.5, 0.5))
        made.pieces.append(Steps(axis, (0.0,), (random.uniform(0.15, 0.6),), 0.06))
        for kind, v in (("step foot", -0.2), ("step top", 0.2)):
            _walked(made, axis, kind, v, 0.4 * size[1], random)
    return made


def _walked(made: Things, axis: Axis, kind: str, v: float, half: float, random: np.random.Generator) -> None:
    """A leg along an axis, ``v`` beside it, one way or the other."""
    u = np.array([-half, half]) * random.choice([-1, 1])
    x, y = axis.place(u, np.full(2, v))
    made.legs.append(straight(x[0], y[0], x[1], y[1], 0.15))
    made.lines.append((kind, x, y))


def _boulders(random: np.random.Generator, size: Size, between: float) -> Things:
    spots = _spots(random, size, int(random.integers(4, 11)), 1.4 * between)
    made = Things()
    for spot in spots:
        radius = between * random.uniform(1.0, 1.3)
        made.pieces.append(Boulder(spot, radius, min(radius, random.uniform(0.3, 1.2))))
    return made


def _terraces(random: np.random.Generator, size: Size, between: float) -> Things:
    count = int(random.integers(2, 7))
    bend = random.choice([-1, 1]) / random.uniform(60, 300) if random.random() < 0.6 else 0.0
    axis = Axis((size[0] / 2, size[1] / 2), random.uniform(0, np.pi), float(bend))
    places = (np.arange(count) - (count - 1) / 2) * random.uniform(3.5, 8.0) + random.uniform(-0.8, 0.8, count)
    return Things([Steps(axis, tuple(places), tuple(random.uniform(0.3, 1.2, count)), random.uniform(0.05, 1.0))])
