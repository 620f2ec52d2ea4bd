"""Lines of the ground as a surface uses them: what they are, how sure, and whether the surface holds to them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import List, Sequence, Tuple

import numpy as np
from scipy.spatial import cKDTree

from ..linework.constraints import Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .found import FEWEST, Features, FoundKind, FoundLine

DOUBLES = Text(
    "found_lines.doubles",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} lines that the points show run within {reach:.1f} m of lines that are known already; these go first.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One line that the points show runs within {reach:.1f} m of lines that are known already; these go first.",
    ),
)

NOT_A_WALK = Text(
    "found_lines.not_a_walk",
    QT_TRANSLATE_NOOP(
        "core",
        "No lines of the ground were looked for: the points do not follow each other as on a walk. They need the order "
        "in which they were recorded.",
    ),
)

#: A found line that runs so near (m) to a known one over more than half of its length is the same.
REACH = 0.3
#: Places along lines that are compared, metres apart.
APART = 0.1


class LineStatus(str, Enum):
    """``USED``: a breakline of the surface. ``PROPOSED``: too little evidence. ``REJECTED``: no line."""

    USED = "used"
    PROPOSED = "proposed"
    REJECTED = "rejected"


@dataclass(frozen=True)
class GroundLine:
    """One line that the points show, or that was drawn by hand beside such lines.

    ``parts``: foot and top of a step, or the one line of another kind, (k, 3) each: easting, northing, height in
    metres. ``found_as``: the parts as they were found, none of a line that was not. ``step``, ``sigma_step``: height of
    a step and its standard deviation; ``bend``: change of slope; ``sigma_plan``, ``sigma_height``: usual standard
    deviations along the line; ``bridged``: length where nothing was found; all in metres, nan where unknown.
    ``evidence``, ``passes``: as of :class:`.FoundLine`. ``automatic``: status by the evidence, ``status``: what counts;
    ``by_hand``: it was decided, or the parts were drawn, by hand. ``cross_at``: easting and northing of the place where
    one more pass across would tell most.
    """

    kind: FoundKind
    parts: Tuple[np.ndarray, ...]
    found_as: Tuple[np.ndarray, ...] = ()
    step: float = float("nan")
    sigma_step: float = float("nan")
    bend: float = float("nan")
    sigma_plan: float = float("nan")
    sigma_height: float = float("nan")
    bridged: float = float("nan")
    evidence: float = float("nan")
    passes: int = 0
    automatic: LineStatus = LineStatus.PROPOSED
    status: LineStatus = LineStatus.PROPOSED
    by_hand: bool = False
    cross_at: Tuple[float, float] = (float("nan"), float("nan"))

    @property
    def asks_for_a_pass(self) -> bool:
        """It is in doubt, and it is known where one more pass across would settle it."""
        return self.status is LineStatus.PROPOSED and bool(np.isfinite(self.cross_at).all())

    @property
    def length(self) -> float:
        """Length in plan of the first part, metres."""
        return float(np.hypot(*np.diff(self.parts[0][:, :2], axis=0).T).sum())

    @property
    def reshaped(self) -> bool:
        """The parts are not those that were found."""
        return not same_parts(self.parts, self.found_as)


@dataclass(frozen=True)
class GroundLines:
    """All lines of a survey, numbered from 1 in this order, and what was noticed.

    ``breaklines``: what the surface holds to of the used ones, labelled by kind and number.
    """

    lines: Tuple[GroundLine, ...]
    messages: Tuple[Message, ...] = ()
    breaklines: Constraints = Constraints()  # noqa: RUF009  frozen

    def of_status(self, status: LineStatus) -> Tuple[GroundLine, ...]:
        return tuple(line for line in self.lines if line.status is status)


def told_of_walk(features: Features) -> Tuple[Message, ...]:
    """Where enough points were given but not in the order of a walk, that no lines were looked for."""
    enough = len(features.on_line) >= FEWEST
    return () if np.isfinite(features.noise) or not enough else (message(NOT_A_WALK),)


def ground_lines(features: Features) -> Tuple[GroundLine, ...]:
    """The found lines in their order; those with strong evidence are used."""
    return tuple(_ground_line(line) for line in features.lines)


def _ground_line(line: FoundLine) -> GroundLine:
    status = LineStatus.USED if line.strong else LineStatus.PROPOSED
    parts = (line.foot, line.top) if len(line.top) else (line.foot,)
    return GroundLine(
        kind=line.kind,
        parts=parts,
        found_as=parts,
        step=line.step,
        sigma_step=line.sigma_step,
        bend=line.bend,
        sigma_plan=float(np.median(line.sigma_plan)),
        sigma_height=float(np.median(line.sigma_height)),
        bridged=line.bridged_length,
        evidence=line.evidence,
        passes=line.passes,
        automatic=status,
        status=status,
        cross_at=_least_known(line),
    )


def _least_known(line: FoundLine) -> Tuple[float, float]:
    """The middle of the longest stretch that is bridged, or the vertex whose place is in most doubt."""
    xy = np.column_stack([line.easting, line.northing])
    run = np.append(0.0, np.cumsum(np.hypot(*np.diff(xy, axis=0).T)))
    edge = np.flatnonzero(np.diff(np.concatenate([[False], line.bridged, [False]]).astype(np.int8)))
    if len(edge):
        first, last = edge[::2], edge[1::2]
        longest = int(np.argmax(run[last] - run[first]))
        at = (run[first[longest]] + run[last[longest]]) / 2
    else:
        at = run[int(np.argmax(line.sigma_plan))]
    return float(np.interp(at, run, xy[:, 0])), float(np.interp(at, run, xy[:, 1]))


def same_parts(a: Sequence[np.ndarray], b: Sequence[np.ndarray], within: float = 0.006) -> bool:
    """Whether the vertices agree but for rounding, ``within`` metres each way."""
    return len(a) == len(b) and all(
        len(one) == len(other) and bool(np.all(np.abs(one - other) <= within)) for one, other in zip(a, b)
    )


def places_along(parts: Sequence[np.ndarray]) -> np.ndarray:
    """Places (m, c) along lines (k, c), c 2 or 3, evenly ``APART`` or less, so that each tells the same length."""
    found = [np.empty((0, parts[0].shape[1] if len(parts) else 3))]
    for part in parts:
        run = np.append(0.0, np.cumsum(np.hypot(*np.diff(part[:, :2], axis=0).T)))
        at = np.linspace(0.0, run[-1], int(np.ceil(run[-1] / APART)) + 1)
        found.append(np.column_stack([np.interp(at, run, column) for column in part.T]))
    return np.vstack(found)


def share_near(parts: Sequence[np.ndarray], others: Sequence[np.ndarray], reach: float = REACH) -> float:
    """Share of the length of ``parts`` that lies within ``reach`` metres of the lines ``others``."""
    own, other = places_along(parts)[:, :2], places_along(others)[:, :2]
    if not len(own) or not len(other):
        return 0.0
    return float(np.isfinite(cKDTree(other).query(own, distance_upper_bound=reach)[0]).mean())


def without_doubles(
    lines: Sequence[GroundLine], known: Constraints
) -> Tuple[Tuple[GroundLine, ...], Tuple[Message, ...]]:
    """The lines but those that run beside breaklines with heights that are known already.

    Whatever kind of break: the known line was placed on purpose and holds the same heights.
    """
    double = doubles(lines, known)
    return tuple(line for line, twice in zip(lines, double) if not twice), told_of_doubles(sum(double))


def doubles(lines: Sequence[GroundLine], known: Constraints) -> List[bool]:
    """Whether each line runs beside breaklines with heights that are known already."""
    courses = [
        line.xyz
        for line in known.lines
        if line.kind & LineKind.BREAKLINE and len(line.xyz) > 1 and np.isfinite(line.xyz).all()
    ]
    if not courses:
        return [False] * len(lines)
    tree = cKDTree(places_along(courses)[:, :2])
    away = [tree.query(places_along(line.parts)[:, :2], distance_upper_bound=REACH)[0] for line in lines]
    return [bool(np.isfinite(one).mean() > 0.5) for one in away]


def told_of_doubles(count: int) -> Tuple[Message, ...]:
    return (message(DOUBLES, count=count, reach=REACH),) if count else ()


def with_status(line: GroundLine, status: LineStatus) -> GroundLine:
    """``line`` as the user decided."""
    return replace(line, status=status, by_hand=True)
