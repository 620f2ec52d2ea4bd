"""Where a walker or a vehicle goes, and the places stored by distance on the way."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Callable, List, Sequence, Tuple

import numpy as np

from tests.core.survey_simulator import Walk

Place = Callable[[np.ndarray, np.ndarray], Tuple[np.ndarray, np.ndarray]]


@dataclass(frozen=True)
class Leg:
    """A way to go through ``corners`` (k, 2), swaying ``sway`` times as much as a walker over open ground does."""

    corners: np.ndarray
    sway: float = 1.0


def here(u: np.ndarray, v: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Places of legs that are drawn in local metres themselves."""
    return u, v


def straight(u0: float, v0: float, u1: float, v1: float, sway: float = 1.0) -> Leg:
    return Leg(np.array([[u0, v0], [u1, v1]]), sway)


def to_and_fro(rows: np.ndarray, start: float, end: float, across: bool = False) -> List[Leg]:
    """Passes along the first coordinate at ``rows`` of the second (or, ``across``, the other way round)."""
    legs = []
    for k, row in enumerate(rows):
        ends = np.array([[start, row], [end, row]])[:: 1 if k % 2 == 0 else -1]
        legs.append(Leg(ends[:, ::-1] if across else ends))
    return legs


def stored_on(
    legs: Sequence[Leg], spacing: float, random: np.random.Generator, wobble: float = 0.12
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Places (n, 2) stored on one way through all ``legs``, the distance gone, and the number of each point's leg.

    The ways between the legs belong to the leg before.
    """
    corners = np.vstack([leg.corners for leg in legs])
    owner = np.repeat(np.arange(len(legs)), [len(leg.corners) for leg in legs])
    step = np.diff(corners, axis=0)
    length = np.hypot(*step.T)
    marks = np.append(0.0, np.cumsum(length))
    run = np.cumsum(spacing * (1 + random.uniform(0, wobble, int(marks[-1] / spacing))))
    run = run[run < marks[-1]]
    at = np.clip(np.searchsorted(marks, run, side="right") - 1, 0, len(step) - 1)
    direction = step[at] / np.maximum(length[at], 1e-9)[:, None]
    phase = random.uniform(0, 2 * np.pi, 2)
    sway = 0.14 * np.sin(run * 2 * np.pi / 21 + phase[0]) + 0.06 * np.sin(run * 2 * np.pi / 7.1 + phase[1])
    sway *= np.array([leg.sway for leg in legs])[owner[at]]
    ends = marks[_turns(step, length)]
    sway *= np.minimum(1, np.abs(run[:, None] - ends).min(axis=1) / 2)
    places = np.column_stack([np.interp(run, marks, corners[:, k]) for k in (0, 1)])
    return places + np.column_stack([-direction[:, 1], direction[:, 0]]) * sway[:, None], run, owner[at]


def _turns(step: np.ndarray, length: np.ndarray) -> np.ndarray:
    """Mask of the corners at which the way turns sharply or ends."""
    unit = step / np.maximum(length, 1e-9)[:, None]
    sharp = np.sum(unit[1:] * unit[:-1], axis=1) < 0.8
    return np.concatenate([[True], sharp, [True]])


@dataclass
class Way:
    """Points stored one after the other, section by section; ``place`` brings the legs' coordinates to local ones."""

    random: np.random.Generator
    place: Place = here
    speed: float = 1.2
    x: List[np.ndarray] = field(default_factory=list)
    y: List[np.ndarray] = field(default_factory=list)
    time: List[np.ndarray] = field(default_factory=list)
    code: List[str] = field(default_factory=list)
    section: List[int] = field(default_factory=list)
    clock: float = 1.75e9

    def go(self, legs: Sequence[Leg], spacing: float, code: str = "GR", wobble: float = 0.12) -> None:
        """Store points along ``legs``; a pause of 5 to 40 s ends the section."""
        places, run, _ = stored_on(legs, spacing, self.random, wobble)
        self.put(*self.place(*places.T), run / self.speed, [code] * len(run))

    def put(self, x: np.ndarray, y: np.ndarray, seconds: np.ndarray, codes: List[str]) -> None:
        """Store points at local places, ``seconds`` after the section's start."""
        if not len(x):
            return
        self.section.extend([len(self.x)] * len(x))
        self.x.append(x)
        self.y.append(y)
        self.time.append(self.clock + seconds)
        self.code.extend(codes)
        self.clock += float(seconds[-1]) + self.random.uniform(5, 40)

    def done(self) -> Walk:
        return Walk(
            np.concatenate(self.x), np.concatenate(self.y), np.concatenate(self.time), np.array(self.code, object)
        )


def meetings_of(x: np.ndarray, y: np.ndarray, run: np.ndarray, other: np.ndarray, reach: float) -> int:
    """How often points ``run`` (indices) of a walk are met by those of the mask ``other`` within ``reach`` (m).

    A meeting is one other visit: points stored one after the other (five may be farther away in between), at most 10 m
    of them, at least 30 places before or after the point they meet.
    """
    mates = np.flatnonzero(other)
    mates = mates[(mates < run[0] - 30) | (mates > run[-1] + 30) | (len(run) > 30)]
    if not len(mates):
        return 0
    near = np.zeros(len(mates), bool)
    for each in run:  # fault runs are short
        close = np.hypot(x[mates] - x[each], y[mates] - y[each]) <= reach
        near |= close & (np.abs(mates - each) > 30)
    met = mates[near]
    if not len(met):
        return 0
    count = 0
    for visit in np.split(met, np.flatnonzero(np.diff(met) > 6) + 1):
        long = np.hypot(np.diff(x[visit]), np.diff(y[visit])).sum()
        count += 1 + int(long / 10)
    return count


def crossings_of(x: np.ndarray, y: np.ndarray, late: np.ndarray) -> int:
    """How often the steps of a walk that lie in the mask ``late`` (n,) cross those that do not."""
    step = np.flatnonzero(late[1:] == late[:-1])
    one, two = step[late[step]], step[~late[step]]
    count = 0
    for part in np.array_split(one, max(1, len(one) // 200)):
        ax, ay, bx, by = x[part, None], y[part, None], x[part + 1, None], y[part + 1, None]
        cx, cy, dx, dy = x[two], y[two], x[two + 1], y[two + 1]
        left = _side(ax, ay, bx, by, cx, cy) * _side(ax, ay, bx, by, dx, dy) < 0
        count += int(np.count_nonzero(left & (_side(cx, cy, dx, dy, ax, ay) * _side(cx, cy, dx, dy, bx, by) < 0)))
    return count


def _side(ax: np.ndarray, ay: np.ndarray, bx: np.ndarray, by: np.ndarray, px: np.ndarray, py: np.ndarray) -> np.ndarray:
    """1 where p lies to the left of the way from a to b, -1 to the right."""
    return np.sign((bx - ax) * (py - ay) - (by - ay) * (px - ax))
