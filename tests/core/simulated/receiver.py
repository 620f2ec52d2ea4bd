"""The columns a receiver stores on the walks of the families, and how they are spoiled."""

from __future__ import annotations

from typing import List, Optional, Tuple

import numpy as np

from plugin.core.points.pointset import make_points
from tests.core.survey_simulator import Record, slow_noise

from .ground import Piece
from .sites import Site
from .survey import EAST, NORTH, Level, Survey
from .walks import crossings_of, meetings_of


def slow_sums(time: np.ndarray, sigma: float, random: np.random.Generator) -> np.ndarray:
    """Multipath: five waves of periods of 1 to 3 minutes, together of standard deviation ``sigma`` (m) in the mean."""
    period, phase = random.uniform(60, 180, 5), random.uniform(0, 2 * np.pi, 5)
    share = random.uniform(0.3, 1, 5)
    share *= sigma * np.sqrt(2 / np.sum(share**2))
    waves: np.ndarray = np.sin(np.multiply.outer(time - time[0], 2 * np.pi / period) + phase) @ share
    return waves


class FieldRecord(Record):
    """Records of a site. ``multipath``: wandering by slow sums, so many times (from, to) as much as usual."""

    def __init__(
        self, site: Site, random: np.random.Generator, multipath: Optional[Tuple[float, float]] = None
    ) -> None:
        self.multipath = multipath
        super().__init__(site.walk, site.ground, random)
        self.site = site
        self.levels: List[Level] = []
        self.bare = False

    def drift(self) -> np.ndarray:
        """By slow sums in half of the surveys, by first-order Gauss-Markov noise in the others."""
        if self.multipath is not None:
            self.slow *= self.random.uniform(*self.multipath)
            self.sigma = float(np.hypot(self.white, self.slow))
            return slow_sums(self.walk.time, self.slow, self.random)
        if self.random.random() < 0.5:
            return slow_sums(self.walk.time, self.slow, self.random)
        return slow_noise(self.walk.time, self.slow, self.random.uniform(60, 150), self.random)

    def lift_lines(self) -> None:
        """Lifts on coded lines, one to four of one to eight points, and some beside the lines."""
        random = self.random
        coded = np.flatnonzero(self.walk.code != "GR")
        self.free[coded] = True
        sections = np.split(coded, np.flatnonzero(np.diff(self.site.section[coded])) + 1)
        for _ in range(int(random.integers(1, 5))):
            line = sections[int(random.integers(len(sections)))]
            count = min(int(random.integers(1, 9)), len(line) // 2)
            start = int(random.integers(0, len(line) - count + 1))
            run = line[start : start + count]
            if self.free[run].all() and count:
                self.z[run] += self.size(max(0.06, 4 * self.sigma), 1.0) * (1 + 0.1 * random.normal(0, 1, count))
                self.note(run, "lift")
                self.free[line] = False  # one to a line
        self.free[coded] = False
        for _ in range(int(random.integers(0, 3))):
            self.lift()

    def slip(self) -> None:
        """One to five lines of the file at zero, with easting and northing swapped, or 300 m to 1,000 km away."""
        random = self.random
        for index in random.choice(self.n, int(random.integers(1, 6)), replace=False):
            kind = str(random.choice(["stray", "stray", "swapped", "zero"]))
            east, north = EAST + self.x[index], NORTH + self.y[index]
            if kind == "swapped":
                east, north = north, east
            elif kind == "zero":
                east, north = 0.0, 0.0
                self.z[index] *= random.choice([0, 1])
            else:
                far = float(random.choice([304.8, 3048.0, self.size(300, 1e6)]))
                towards = random.uniform(0, 2 * np.pi)
                east, north = east + far * np.cos(towards), north + far * np.sin(towards)
            self.x[index], self.y[index] = east - EAST, north - NORTH
            self.note(np.array([index]), kind)

    # --- tilt ---------------------------------------------------------------------------------------

    def lean(self) -> None:
        """A rover that compensates tilt: 5 to 45 degrees, heights right, the noise growing by up to a third."""
        lean, more = self._leaning(), self.random.uniform(0.1, 0.5)
        self.tilt = lean
        grow = more * np.sin(np.radians(lean))
        self.z += self.random.normal(0, 1, self.n) * self.white * np.sqrt((1 + grow) ** 2 - 1)
        self.sigma_v *= 1 + grow
        self.sigma_h *= 1 + grow

    def lean_wrong(self) -> None:
        """Leaning without compensation: heights wrong by 1 - cos and places by sin of the tilt, pole 2 m.

        In stretches of 5 to 60 points, together up to a third of the file, or (a third of the surveys) all the way;
        wrong is where that makes a sigma or more of the height, there or above the wrong place.
        """
        lean = self._leaning()
        if self.random.random() < 1 / 3:
            self._lean_over(np.arange(self.n), lean)
            return
        share, done = self.random.uniform(0.05, 0.33), 0
        while done < share * self.n:
            run = self.stretch(int(self.random.integers(5, 60)))
            if not len(run):
                break
            self._lean_over(run, lean[run])
            self.free[run] = False
            done += len(run)

    def _lean_over(self, run: np.ndarray, lean: np.ndarray) -> None:
        angle, first = np.radians(lean), self.random.uniform(0, 2 * np.pi)
        aside = first + np.cumsum(self.random.normal(0, 0.1, len(run)))
        low = 2.0 * (1 - np.cos(angle))
        dx, dy = 2.0 * np.sin(angle) * np.cos(aside), 2.0 * np.sin(angle) * np.sin(aside)
        self.x[run] += dx
        self.y[run] += dy
        self.z[run] -= low
        self.tilt[run] = lean
        x, y, ground = self.walk.x[run], self.walk.y[run], self.site.ground
        off = np.abs(ground(x, y) - low - ground(x + dx, y + dy))
        wrong = run[np.maximum(low, off) >= self.sigma]
        if len(wrong):
            self.note(wrong, "tilt")

    def _leaning(self) -> np.ndarray:
        """Tilt (n,) of a rover held as it comes, degrees."""
        usual, spread = self.random.uniform(7, 22), self.random.uniform(4, 9)
        wander = slow_noise(self.walk.time, spread, self.random.uniform(4, 30), self.random)
        return np.clip(usual + wander + self.random.normal(0, 1, self.n), 5, 45)

    # --- levels -------------------------------------------------------------------------------------

    def change_level(self, low: float = 0.1, high: float = 2.0, to_end: float = 0.6, plan: float = 0.25) -> None:
        """Heights of another level for the rest of the file (share ``to_end``) or for a long stretch.

        At least 10 crossings join both parts, and both have 15 % of the points. In the share ``plan`` of the surveys
        the places are off by 5 to 15 cm too: an ambiguity fixed wrongly for long.
        """
        random, n = self.random, self.n
        for _ in range(200):
            first = int(random.integers(0.15 * n, 0.85 * n))
            rest = random.random() < to_end
            end = n if rest else min(n, first + int(random.uniform(0.2, 0.5) * n))
            if random.random() < 0.3:  # between two sections, as most are
                starts = np.flatnonzero(np.diff(self.site.section)) + 1
                first = int(starts[np.argmin(np.abs(starts - first))]) if len(starts) else first
            late = (np.arange(n) >= first) & (np.arange(n) < end)
            if not 0.15 * n <= np.count_nonzero(late) <= 0.85 * n:
                continue
            if crossings_of(self.walk.x, self.walk.y, late) >= 10:
                break
        else:
            raise ValueError("no place for a change of level with 10 crossings")
        size = self.size(low, high) * random.choice([-1, 1])
        self.z[late] += size
        if random.random() < plan:
            aside, off = random.uniform(0, 2 * np.pi), random.uniform(0.05, 0.15)
            dx, dy = off * np.cos(aside), off * np.sin(aside)
            self.x[late] += dx
            self.y[late] += dy
            x, y, ground = self.walk.x[late], self.walk.y[late], self.site.ground
            size += float(np.median(ground(x, y) - ground(x + dx, y + dy)))  # what a slope makes of the shift
        for at, offset in ((first, size), (end, -size)):
            if at == n:
                continue
            stop = bool(random.random() < 0.5)
            if stop:
                self.walk.time[at:] += random.uniform(60, 900)
            self.levels.append(Level(at, float(offset), stop))
        self.note(np.flatnonzero(late & (self.fault == "")), "level")

    # --- the survey ---------------------------------------------------------------------------------

    def survey(self, family: str) -> Survey:
        """The survey as stored; some have no time, no sigma, no tilt, and ``bare`` ones no column of the receiver."""
        random, walk, ground, n = self.random, self.walk, self.site.ground, self.n
        nothing = np.full(n, np.nan)
        if random.random() < 0.4:  # a pause at any place
            walk.time[int(random.integers(n)) :] += random.uniform(120, 1500)
        plain = (random.random(3) < 0.12) | self.bare
        points = make_points(
            EAST + self.x, NORTH + self.y, self.z, code=np.where(walk.code == "GR", self.site.code, walk.code),
            time=nothing if plain[0] else walk.time, sigma_h=nothing if plain[1] else self.sigma_h,
            sigma_v=nothing if plain[1] else self.sigma_v, tilt=nothing if plain[2] else self.tilt,
            source_line=np.arange(2, n + 2), source="simulated.csv",
            **({} if self.bare else {"fix": self.fix, "extra": {"pdop": self.pdop}}),
        )  # fmt: skip
        error = self.z - ground(self.x, self.y)
        coded = walk.code != "GR"
        return Survey(
            points, self.fault, self.event, error, coded | ground.broken(self.x, self.y), self.sigma, self.white,
            f"{family}: {self.site.what}", truth=_from_origin(ground), base=_from_origin(ground.base),
            walked=~coded, wrong=self.fault != "", meetings=self._meetings(), levels=tuple(self.levels),
            lines=self.site.lines, mounds=self.site.mounds, passes=self.site.passes,
            rough=self.site.rough,
        )  # fmt: skip

    def _meetings(self) -> np.ndarray:
        count, good = np.full(self.n, -1, np.int64), self.fault == ""
        for event in np.unique(self.event[(self.event >= 0) & (self.fault != "level")]):
            run = np.flatnonzero(self.event == event)
            count[run] = meetings_of(self.walk.x, self.walk.y, run, good, 0.75 * self.site.spacing)
        return count


def _from_origin(ground: Piece) -> Piece:
    """The same function of easting and northing."""

    def truth(easting: np.ndarray, northing: np.ndarray) -> np.ndarray:
        heights: np.ndarray = ground(easting - EAST, northing - NORTH)
        return heights

    return truth
