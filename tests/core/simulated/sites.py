"""Sites of simulated surveys: the ground and the walk over it."""

from __future__ import annotations

from dataclasses import dataclass
from dataclasses import field as field_of
from typing import Callable, List, Tuple

import numpy as np

from tests.core.survey_simulator import Walk

from .ground import Axis, Ground, Piece, heap_of
from .survey import EAST, NORTH, Line, Mound
from .walks import Leg, Way, to_and_fro


@dataclass(frozen=True)
class Site:
    """``walk``: true places and times; ``section``: (n,) int64, number of each point's section.

    ``code``: of walked points. ``spacing``, ``passes``: m. ``what``: words. Others as in :class:`.survey.Survey`.
    """

    ground: Ground
    walk: Walk
    section: np.ndarray
    spacing: float
    passes: float
    what: str
    lines: Tuple[Line, ...] = ()
    mounds: Tuple[Mound, ...] = ()
    code: str = ""
    rough: float = 0.0


@dataclass
class Things:
    """What is on a field: ``pieces`` of its ground, ``legs`` walked along them after the passes, true ``lines``.

    The lines by kind, places across and along: (kind, x, y).
    """

    pieces: List[Piece] = field_of(default_factory=list)
    legs: List[Leg] = field_of(default_factory=list)
    lines: List[Tuple[str, np.ndarray, np.ndarray]] = field_of(default_factory=list)


#: Makes things for a field of that size (m) and pass distance (m).
Maker = Callable[[np.random.Generator, Tuple[float, float], float], Things]


def site_of(way: Way, ground: Ground, spacing: float, passes: float, what: str, lines: Tuple[Line, ...] = (),
            mounds: Tuple[Mound, ...] = (), code: str = "") -> Site:  # fmt: skip
    walk = way.done()
    return Site(ground, walk, np.array(way.section), spacing, passes, what, lines, mounds, code)


def true_line(kind: str, ground: Ground, x: np.ndarray, y: np.ndarray) -> Line:
    return Line(kind, np.column_stack([EAST + x, NORTH + y, ground(x, y)]))


def rows_over(random: np.random.Generator, width: float, between: float) -> np.ndarray:
    """Places of passes about ``between`` (m) apart over ``width`` (m)."""
    rows = np.arange(0.4, width, between)
    return rows + random.uniform(-0.08, 0.08, len(rows)) * between


def open_field(
    random: np.random.Generator, points: float, spacing: float, between: float, shape: Tuple[float, float] = (1.0, 1.8)
) -> Tuple[float, float]:
    """Length and width (m) of a field that passes ``between`` apart cover with about ``points`` points."""
    area, ratio = points * spacing * 1.06 * between, random.uniform(*shape)
    return float(np.sqrt(area * ratio)), float(np.sqrt(area / ratio))


def walk_field(
    way: Way, random: np.random.Generator, size: Tuple[float, float], spacing: float, between: float,
    wobble: float = 0.12,
) -> None:  # fmt: skip
    """To and fro over a field, and three to five cross passes after (or, in a third of the surveys, before)."""
    length, width = size
    rows = to_and_fro(rows_over(random, width, between), 0.0, length)
    cross = np.linspace(0.08, 0.92, int(random.integers(3, 6))) * length + random.uniform(-1, 1)
    parts = [rows, to_and_fro(cross, 0.0, width, across=True)]
    for legs in parts if random.random() < 2 / 3 else parts[::-1]:
        way.go(legs, spacing, wobble=wobble)


def field(
    random: np.random.Generator, things: Maker, what: str, between: Tuple[float, float] = (2.0, 4.5),
    points: Tuple[float, float] = (1000, 2200), even: float = 1.0,
) -> Site:  # fmt: skip
    """A field with ``things`` on it, walked to and fro."""
    spacing, apart = random.uniform(0.45, 0.75), random.uniform(*between)
    size = open_field(random, random.uniform(*points), spacing, apart)
    ground, made = Ground(random, even), things(random, size, apart)
    ground.pieces.extend(made.pieces)
    way = Way(random)
    walk_field(way, random, size, spacing, apart)
    if made.legs:
        way.go(made.legs, spacing)
    lines = tuple(true_line(kind, ground, x, y) for kind, x, y in made.lines)
    return site_of(way, ground, spacing, apart, what, lines)


def plain(random: np.random.Generator) -> Site:
    """A field with nothing on it."""
    return field(random, lambda *_: Things(), "field")


def vehicle(random: np.random.Generator) -> Site:
    """A yard driven over at 5 m/s, a point each 1 to 2 m: passes to and fro, then three to five across."""
    spacing, apart = random.uniform(1.0, 2.0), random.uniform(2.0, 4.5)
    size = open_field(random, random.uniform(900, 1800), spacing, apart)
    way = Way(random, speed=5.0)
    walk_field(way, random, size, spacing, apart, wobble=0.05)
    return site_of(way, Ground(random, 2.0, 0.06), spacing, apart, "yard driven over")


def heaps(random: np.random.Generator) -> Site:
    """Two to four heaps and pits of 50 to 500 m³, each wide enough for three passes, on a field."""
    spacing = random.uniform(0.45, 0.75)
    volumes = np.exp(random.uniform(np.log(50), np.log(500), int(random.integers(2, 5))))
    made = [heap_of(random, float(v), (0.0, 0.0)) for v in volumes]
    narrow = min(2 * heap.foot for heap in made)
    between = random.uniform(2.0, min(4.5, max(2.1, narrow / 3.1)))
    ground, mounds = Ground(random), []
    room = [2 * heap.foot * heap.stretch + 3 for heap in made]
    columns, rows = 2, -(-len(made) // 2)
    cell = max(max(room), float(np.sqrt(1000 * spacing * 1.06 * between / (columns * rows))))
    size = (cell * columns, cell * rows)
    for k, heap in enumerate(made):
        free = (cell - room[k]) / 2
        place = (
            (k % columns + 0.5) * cell + random.uniform(-free, free),
            (k // columns + 0.5) * cell + random.uniform(-free, free),
        )
        there = type(heap)(Axis(place, heap.axis.angle), heap.height, heap.top, heap.run, heap.stretch)
        ground.pieces.append(there)
        reach = there.foot * there.stretch
        mounds.append(Mound((EAST + place[0], NORTH + place[1]), reach, float(np.sign(there.height)) * there.volume))
    way = Way(random)
    walk_field(way, random, size, spacing, between)
    return site_of(way, ground, spacing, between, f"{len(made)} heaps", mounds=tuple(mounds))
