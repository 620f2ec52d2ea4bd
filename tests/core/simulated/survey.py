"""What a simulated survey holds beside its points."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Callable, Tuple

import numpy as np

from tests.core import survey_simulator

FAULT = 4.0  # standard deviations of a height that make a fault which must be found
#: Local metres are counted from here.
EAST, NORTH = 500_000.0, 5_700_000.0


@dataclass(frozen=True)
class Line:
    """A line of the ground: its ``kind`` in words and vertices (k, 3), easting, northing and true height."""

    kind: str
    xyz: np.ndarray


@dataclass(frozen=True)
class Level:
    """From point ``first`` (index) on, heights are ``offset`` (m) higher above the recorded places than before.

    ``stop``: whether the rover paused there.
    """

    first: int
    offset: float
    stop: bool


@dataclass(frozen=True)
class Mound:
    """A heap (``volume`` > 0, m³) or pit (< 0); its foot lies within ``reach`` (m) of ``place`` (easting, northing)."""

    place: Tuple[float, float]
    reach: float
    volume: float


@dataclass(frozen=True)
class Survey(survey_simulator.Survey):
    """A survey of a family, and its truth.

    ``truth``, ``base``: height of the ground, and of that without heaps and other things, at eastings and northings.
    ``walked``: (n,) bool, auto-recorded. ``wrong``: (n,) bool, recorded by a fault or on a wrong level. ``meetings``:
    (n,) int64, how often good points of other visits meet the fault of each point; -1 where there is none.
    ``levels``: where the level changes, in order. ``lines``: true lines that were walked or coded. ``passes``: distance
    of the passes (m). ``rough``: standard deviation (m) of clods and stones, which a fault must stand out of.
    """

    truth: Callable[[np.ndarray, np.ndarray], np.ndarray] = lambda x, y: np.zeros(len(x))
    base: Callable[[np.ndarray, np.ndarray], np.ndarray] = lambda x, y: np.zeros(len(x))
    walked: np.ndarray = field(default_factory=lambda: np.empty(0, bool))
    wrong: np.ndarray = field(default_factory=lambda: np.empty(0, bool))
    meetings: np.ndarray = field(default_factory=lambda: np.empty(0, np.int64))
    levels: Tuple[Level, ...] = ()
    lines: Tuple[Line, ...] = ()
    mounds: Tuple[Mound, ...] = ()
    passes: float = float("nan")
    rough: float = 0.0

    @property
    def large(self) -> np.ndarray:
        """Mask (n,): off by 4 standard deviations of a good height or more."""
        return np.abs(self.error) >= FAULT * np.hypot(self.sigma, self.rough)
