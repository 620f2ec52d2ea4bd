"""Found lines as breaklines that give way: to the lines that are known, and to stronger ones."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterator, List, Sequence, Tuple

import numpy as np

from ..features.found import FoundKind
from ..features.ground_lines import GroundLine, LineStatus, doubles, told_of_doubles
from ..linework.constraints import ConstraintLine, Constraints, LineKind, make_line
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import PointSet
from ..progress import Progress, silent
from .crossings import crossing_pairs
from .network import build_network

GAVE_WAY = Text(
    "found_lines.gave_way",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} stretches of found lines, {length:.1f} m together, cross other lines and are left out of the surface; "
        "the first near {easting:.3f}, {northing:.3f}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One stretch of a found line, {length:.1f} m long, crosses another line and is left out of the surface, near "
        "{easting:.3f}, {northing:.3f}.",
    ),
)


@dataclass(frozen=True)
class _Stretch:
    """From vertex ``at`` to the next of a part of a line."""

    line: int
    part: int
    at: int


@dataclass(frozen=True)
class Held:
    """``breaklines``: what a surface holds to of found lines. ``steps``: the courses (k, 3) among them that are foot or
    top of a step. ``messages``: what gave way.
    """

    breaklines: Constraints = Constraints()  # noqa: RUF009  frozen
    steps: Tuple[np.ndarray, ...] = ()
    messages: Tuple[Message, ...] = ()


def found_breaklines(
    lines: Sequence[GroundLine], known: Constraints, points: PointSet, progress: Progress = silent
) -> Held:
    """The used ones of ``lines`` as breaklines that cross neither ``known`` lines nor each other, and what gave way.

    The label of each is its kind and its number from 1. Those decided by hand go before the others, which keep their
    order. A line that runs beside known breaklines is left out. So is a stretch that crosses an earlier line, foot and
    top together; decided exactly, on the grid of the surface.
    """
    used = [number for number, line in enumerate(lines) if line.status is LineStatus.USED]
    twice = doubles([lines[number] for number in used], known)
    told = told_of_doubles(sum(twice))
    used = [number for number, double in zip(used, twice) if not double]
    used.sort(key=lambda number: not lines[number].by_hand)
    stretches = [each for number in used for each in _stretches(number, lines[number])]
    if not stretches:
        return Held(messages=told)
    progress(0.1, "features")
    own = [make_line(LineKind.BREAKLINE, lines[s.line].parts[s.part][s.at : s.at + 2]) for s in stretches]
    progress(0.3, "features")
    network, _ = build_network(points, Constraints((*known.lines, *own)))
    progress(0.7, "features")
    hard = network.part(~network.soft)
    dropped = _dropped(stretches, lines, hard.line - len(known), *crossing_pairs(hard))
    progress(0.9, "features")
    result: List[ConstraintLine] = []
    steps: List[np.ndarray] = []
    for number in used:
        label = f"{lines[number].kind.value} {number + 1}"
        for part, xyz in enumerate(lines[number].parts):
            held = np.array([_Stretch(number, part, at) not in dropped for at in range(len(xyz) - 1)], bool)
            courses = [xyz[a:b] for a, b in _runs(held)]
            result += [make_line(LineKind.BREAKLINE, course, label) for course in courses]
            steps += courses if lines[number].kind is FoundKind.STEP else []
    told = (*told, *_told([s for s in stretches if s in dropped], lines))
    return Held(Constraints(tuple(result)), tuple(steps), told)


def _stretches(number: int, line: GroundLine) -> Iterator[_Stretch]:
    for part, xyz in enumerate(line.parts):
        for at in range(len(xyz) - 1):
            yield _Stretch(number, part, at)


def _dropped(
    stretches: Sequence[_Stretch], lines: Sequence[GroundLine], of: np.ndarray, first: np.ndarray, second: np.ndarray
) -> set:
    """The stretches that give way; ``of`` (segments,): number of the stretch, negative for known lines.

    Segments are in the order of precedence, so the first of a pair wins unless it has given way itself.
    """
    dropped: set = set()
    for a, b in sorted(zip(of[first].tolist(), of[second].tolist())):
        if b < 0 or (a >= 0 and stretches[a] in dropped):
            continue
        loser = stretches[b]
        parts = lines[loser.line].parts
        alike = all(len(part) == len(parts[0]) for part in parts)
        dropped.update(_Stretch(loser.line, k, loser.at) for k in (range(len(parts)) if alike else [loser.part]))
    return dropped


def _runs(held: np.ndarray) -> List[Tuple[int, int]]:
    """Bounds [a, b) of the vertices of each run of stretches (k - 1,) that are held."""
    edge = np.flatnonzero(np.diff(np.concatenate([[False], held, [False]]).astype(np.int8)))
    return [(int(a), int(b) + 1) for a, b in zip(edge[::2], edge[1::2])]


def _told(dropped: Sequence[_Stretch], lines: Sequence[GroundLine]) -> Tuple[Message, ...]:
    """Foot and top count once."""
    once = [s for s in dropped if s.part == 0 or _Stretch(s.line, 0, s.at) not in dropped]
    if not once:
        return ()
    ends = np.array([lines[s.line].parts[s.part][s.at : s.at + 2, :2] for s in once])
    length = float(np.hypot(*(ends[:, 1] - ends[:, 0]).T).sum())
    x, y = ends[0].mean(axis=0)
    return (message(GAVE_WAY, count=len(once), length=length, easting=float(x), northing=float(y)),)
