"""What is found: lines of the ground, and what each point has to do with them."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Tuple

import numpy as np

#: Fewer points tell of no line.
FEWEST = 60


class FoundKind(str, Enum):
    """What the ground does at a line.

    ``STEP``: it jumps (kerb, wall, edge of paving), from a foot to a top. ``TOP``: a slope falls from flatter ground
    (edge of a ditch, top of a bank). ``TOE``: a slope ends on flatter ground. ``VALLEY``: it rises to both sides
    (bottom of a ditch, gutter). ``RIDGE``: it falls to both sides (crown of a road, crest of a dam).
    """

    STEP = "step"
    TOP = "top"
    TOE = "toe"
    VALLEY = "valley"
    RIDGE = "ridge"


@dataclass(frozen=True)
class FoundLine:
    """One line of k vertices that several passes share.

    ``easting, northing, height``: (k,) float64, metres; of a step its foot. ``top``: (k, 3) easting, northing and
    height of the top of a step, vertex by vertex beside the foot; (0, 3) for other kinds. ``sigma_plan,
    sigma_height``: (k,) standard deviations, metres, of the place across the line and of the height. ``step,
    sigma_step``: the usual height of a step and its standard deviation, metres; nan for other kinds. ``bend``: the
    usual change of slope, metres a metre; nan for a step. ``passes``: how many passes share the line. ``evidence``:
    decimal logarithm of how many times less than once so orderly a line of such candidates is expected, had all
    candidates of the survey been strewn at random (an "a contrario" measure: Desolneux, Moisan and Morel 2008, From
    Gestalt Theory to Image Analysis). ``strong``: the evidence is enough for a breakline. ``bridged``: (k - 1,) bool,
    the stretch from vertex i to i + 1 crosses a gap or a lowered part where nothing was found. ``closed``: the last
    vertex repeats the first.
    """

    kind: FoundKind
    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    top: np.ndarray
    sigma_plan: np.ndarray
    sigma_height: np.ndarray
    step: float
    sigma_step: float
    bend: float
    passes: int
    evidence: float
    strong: bool
    bridged: np.ndarray
    closed: bool = False

    def __len__(self) -> int:
        return len(self.easting)

    @property
    def length(self) -> float:
        """Length in plan, metres, bridged stretches included."""
        return float(np.hypot(np.diff(self.easting), np.diff(self.northing)).sum())

    @property
    def bridged_length(self) -> float:
        """Length in plan of what is bridged, metres."""
        return float(np.hypot(np.diff(self.easting), np.diff(self.northing))[self.bridged].sum())

    @property
    def foot(self) -> np.ndarray:
        """Vertices (k, 3) of the line itself: easting, northing, height."""
        return np.column_stack([self.easting, self.northing, self.height])


@dataclass(frozen=True)
class Features:
    """The found lines, the strongest first, and what each of the n points has to do with them.

    ``on_line``: (n,) int64, the line that the point is walked along or beside, -1 for none. ``step_after``: (n,) bool,
    a strong step lies between this point and the next of the walk. ``explained``: (n,) bool, that the point lies
    higher or lower than its surroundings is what a strong line does: no sign of a fault. ``noise``: what the walk
    itself tells of the standard deviation of a height, metres, that is new at every point.
    """

    lines: Tuple[FoundLine, ...]
    on_line: np.ndarray
    step_after: np.ndarray
    explained: np.ndarray
    noise: float

    @property
    def strong(self) -> Tuple[FoundLine, ...]:
        """The lines whose evidence is enough for breaklines."""
        return tuple(line for line in self.lines if line.strong)


def nothing_found(n: int, noise: float = float("nan")) -> Features:
    """No line among ``n`` points."""
    none = np.zeros(n, bool)
    return Features((), np.full(n, -1, np.int64), none, none.copy(), noise)
