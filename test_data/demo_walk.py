"""Where the surveyor of the demo went: true pole positions, codes and times, in site coordinates."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any, Callable, List, Sequence, Tuple

import numpy as np

from test_data import ground as g

Place = Callable[[np.ndarray, np.ndarray], Tuple[np.ndarray, np.ndarray]]
Keep = Callable[[np.ndarray, np.ndarray], np.ndarray]

SPEED = 1.2  # m/s
SPACING = 0.5  # m, recorded by distance
OVERRUN = 0.06  # m, the receiver notices the distance up to 0.05 s late
START_TIME = 1744182302.0  # 2025-04-09T07:05:02Z

#: Site coordinates of the piece of two passes that was not walked.
GAP = np.array([(37, 55.5), (59, 55.5), (59, 61.5), (37, 61.5)], float)
TREES = np.array(
    [(79, 30), (87, 31.5), (95, 34), (80, 55), (88, 57), (96, 59), (104, 60.5), (112, 46), (113, 56), (70, 73)], float
)
MANHOLES = np.array([(88.0, 79.7), (40.0, 13.2)])
SPOTS = np.array(
    [(103.6, 49.7), (100.9, 46.8), (100.0, 72.0), (96.5, 71.4), (103.8, 72.9), (82.4, 48.6), (90.6, 42.0),
     (15.0, 33.2), (42.2, 50.1), (68.7, 66.6), (30.3, 88.0), (110.6, 85.1), (120.0, 39.0), (3.1, 2.0), (115.2, 0.6)]
)  # fmt: skip


@dataclass
class Walk:
    """Records in the order they were stored; ``how`` is auto, shot, still or check."""

    random: np.random.RandomState
    x: List[float] = field(default_factory=list)
    y: List[float] = field(default_factory=list)
    code: List[str] = field(default_factory=list)
    how: List[str] = field(default_factory=list)
    time: List[float] = field(default_factory=list)
    clock: float = START_TIME

    def record(self, x: float, y: float, code: str, how: str) -> None:
        self.x.append(float(x))
        self.y.append(float(y))
        self.code.append(code)
        self.how.append(how)
        self.time.append(self.clock)

    def go(self, x: float, y: float, seconds: float) -> None:
        """Walk to a place and spend some time there."""
        far = float(np.hypot(x - self.x[-1], y - self.y[-1])) if self.x else 0.0
        self.clock += far / SPEED + seconds

    def shot(self, x: float, y: float, code: str, how: str = "shot", seconds: float = 3.0) -> None:
        self.go(x, y, seconds)
        self.record(x, y, code, how)

    def line(self, places: np.ndarray, code: str, last: str = "END") -> None:
        """Record a coded line point by point; ``last`` is the word on its last point."""
        for (x, y), words in zip(places, line_codes(code, len(places), last)):
            self.shot(x, y, words)

    def along(self, place: Place, length: float, keep: Keep) -> None:
        """Walk a path with the receiver storing by distance; points not kept were not stored."""
        steps = SPACING + self.random.uniform(0, OVERRUN, int(length / SPACING) + 2)
        phases = self.random.uniform(0, 2 * np.pi, 2)
        run = np.cumsum(steps) - SPACING
        run = run[run < length]
        sway = 0.16 * np.sin(2 * np.pi * run / 23 + phases[0]) + 0.06 * np.sin(2 * np.pi * run / 7.3 + phases[1])
        x, y = place(run, sway)
        self.go(x[0], y[0], 4.0)
        start = self.clock
        for k in np.flatnonzero(keep(x, y)):
            self.clock = start + run[k] / SPEED
            self.record(x[k], y[k], "GR", "auto")
        self.clock = start + length / SPEED

    def stand(self, seconds: int) -> None:
        """Stand at the last place with the receiver storing every second; the pole sways a little."""
        x, y = self.x[-1], self.y[-1]
        sway = np.clip(self.random.normal(0, 0.006, (seconds, 2)), -0.015, 0.015)
        for dx, dy in sway:
            self.clock += 1.0
            self.record(x + dx, y + dy, "GR", "still")


def line_codes(code: str, count: int, last: str = "END") -> List[str]:
    return [code + " BEGIN"] + [code] * (count - 2) + [code + " " + last]


def polyline(corners: Sequence[Tuple[float, float]]) -> Tuple[Place, float]:
    """A path of straight pieces; the walker is on the line at its corners."""
    xy = np.asarray(corners, float)
    legs = np.hypot(*np.diff(xy, axis=0).T)
    marks = np.concatenate([[0.0], np.cumsum(legs)])

    def place(run: np.ndarray, sway: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        leg = np.clip(np.searchsorted(marks, run, side="right") - 1, 0, len(legs) - 1)
        east, north = (np.diff(xy, axis=0) / legs[:, None])[leg].T
        to_corner = np.abs(run[:, None] - marks).min(axis=1)
        aside = sway * np.minimum(1, to_corner / 2)
        x, y = np.interp(run, marks, xy[:, 0]), np.interp(run, marks, xy[:, 1])
        return x - north * aside, y + east * aside

    return place, float(marks[-1])


# --- where points may be ---------------------------------------------------------------------------


def to_rim(x: Any, y: Any, ring: np.ndarray) -> np.ndarray:
    """Distance (metres) from places to the nearest edge of a ring (k, 2)."""
    best = np.full(np.shape(x), np.inf)
    for a, b in zip(ring, np.roll(ring, -1, axis=0)):
        leg = b - a
        share = np.clip(((x - a[0]) * leg[0] + (y - a[1]) * leg[1]) / (leg @ leg), 0, 1)
        best = np.minimum(best, np.hypot(x - a[0] - share * leg[0], y - a[1] - share * leg[1]))
    return best


def open_ground(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """Where the walker stores: inside, clear of the pump house, trees, the gap and the kerbs.

    Nothing is stored within 0.2 m of a kerb or 0.1 m of a ditch line: the pole would stand on the face.
    """
    house = g.pump_house()
    keep = g.inside(g.SITE, x, y) & (to_rim(x, y, g.SITE) > 0.5)
    keep &= ~g.inside(house, x, y) & (to_rim(x, y, house) > 0.4) & ~g.inside(GAP, x, y)
    keep &= np.hypot(x[:, None] - TREES[:, 0], y[:, None] - TREES[:, 1]).min(axis=1) > 0.5
    _, offset = g.lane_place(x, y)
    away = np.abs(offset)
    keep &= (np.abs(away - g.HALF_WIDTH - g.KERB_OFFSET / 2) > 0.25) & (np.abs(away - g.VERGE_BACK) > 0.1)
    aside = np.abs(y - g.ditch_line(x))
    at_ditch = (x > g.DITCH_START - 0.5) & (x < g.DITCH_END + 0.5)
    return keep & ~(at_ditch & ((aside < 0.1) | (np.abs(aside - g.DITCH_HALF_WIDTH) < 0.1)))


def off_lane(side: int) -> Keep:
    """Open ground on one side of the lane (1 left, -1 right), clear of the ditch."""

    def keep(x: np.ndarray, y: np.ndarray) -> np.ndarray:
        _, offset = g.lane_place(x, y)
        aside = np.abs(y - g.ditch_line(x))
        ditch = (x > g.DITCH_START - 1) & (x < g.DITCH_END + 1) & (aside < g.DITCH_HALF_WIDTH + 0.3)
        return open_ground(x, y) & (side * offset > g.VERGE_BACK + 0.25) & ~ditch

    return keep


# --- the lines ---------------------------------------------------------------------------------------


def lane_end(offset: float, far: bool) -> float:
    """Station where the lane's parallel at ``offset`` meets the boundary, by bisection."""
    within, beyond = (60.0, 160.0) if far else (60.0, -40.0)
    for _ in range(60):
        middle = (within + beyond) / 2
        if g.inside(g.SITE, *g.lane_xy(np.array([middle]), offset))[0]:
            within = middle
        else:
            beyond = middle
    return within


def boundary_places() -> np.ndarray:
    """(k, 2) points of the boundary about 8 m apart, with the lane's edges and the verges' backs."""
    lane = [
        np.column_stack(g.lane_xy(np.array([lane_end(offset, far)]), offset))[0]
        for far in (False, True)
        for offset in (-g.VERGE_BACK, -g.HALF_WIDTH, g.HALF_WIDTH, g.VERGE_BACK)
    ]
    places = []
    for a, b in zip(g.SITE, np.roll(g.SITE, -1, axis=0)):
        leg = b - a
        length = np.hypot(*leg)
        on_leg = [(p - a) @ leg / length for p in lane if to_rim(p[0], p[1], np.array([a, b])) < 1e-3]
        marks = [0.0, *list(np.linspace(0, length, int(length / 8) + 1)[1:-1])]
        marks = [m for m in marks if all(abs(m - other) > 2 for other in on_leg)] + on_leg
        places += [a + leg * m / length for m in sorted(marks)]
    return np.array(places)


def stations(first: float, last: float, spacing: float, also: Sequence[float] = ()) -> np.ndarray:
    """Stations about ``spacing`` apart, with those in ``also`` in place of their neighbours."""
    fixed = np.unique([first, last, *[s for s in also if first < s < last]])
    even = np.linspace(first, last, round((last - first) / spacing) + 1)
    even = even[np.abs(even[:, None] - fixed).min(axis=1) > 0.4 * spacing]
    return np.sort(np.concatenate([fixed, even]))


def lane_line(first: float, last: float, offset: float, spacing: float, also: Sequence[float] = ()) -> np.ndarray:
    return np.column_stack(g.lane_xy(stations(first, last, spacing, also), offset))


def ellipse_places(axes: Tuple[float, float], count: int) -> np.ndarray:
    angle = 2 * np.pi * np.arange(count) / count
    return np.array(g.BASIN_CENTRE) + np.column_stack([np.cos(angle), np.sin(angle)]) * axes


def walk_lane_lines(walk: Walk) -> None:
    """Kerbs, lane edges and verges; the left kerb's top and foot are stored in turn."""
    start, end = g.FACE_RIGHT[0][0], g.FACE_RIGHT[0][-1]
    top = lane_line(start, end, g.KERB_TOP, 3.0, g.FACE_LEFT[0])
    foot = lane_line(start, end, g.HALF_WIDTH, 3.0, g.FACE_LEFT[0])
    words = zip(line_codes("KT 1", len(top)), line_codes("KF 1", len(foot)))
    for k, (top_code, foot_code) in enumerate(words):
        pair = [(top[k], top_code), (foot[k], foot_code)]
        for (x, y), code in pair if k % 2 else pair[::-1]:
            walk.shot(x, y, code)
    walk.line(lane_line(end + 1, lane_end(g.HALF_WIDTH, True) - 0.6, g.HALF_WIDTH, 4.0), "LE 1")
    walk.line(lane_line(end + 1, lane_end(-g.HALF_WIDTH, True) - 0.6, -g.HALF_WIDTH, 4.0)[::-1], "LE 2")
    walk.line(lane_line(start, end, -g.HALF_WIDTH, 3.0, g.FACE_RIGHT[0])[::-1], "KF 2")
    walk.line(lane_line(start, end, -g.KERB_TOP, 3.0, g.FACE_RIGHT[0]), "KT 2")
    for number, offset in ((2, -g.VERGE_BACK), (1, g.VERGE_BACK)):
        back = lane_line(lane_end(offset, False) + 0.6, lane_end(offset, True) - 0.6, offset, 4.0)
        walk.line(back if number == 1 else back[::-1], f"BL {number}")


def walk_ditch(walk: Walk) -> None:
    x = stations(g.DITCH_START, g.DITCH_END, 2.5, g.DITCH_DEPTH[0])
    for code, aside, order in (
        ("DT 1", g.DITCH_HALF_WIDTH, 1),
        ("DB 1", 0.0, -1),
        ("DT 2", -g.DITCH_HALF_WIDTH, 1),
    ):
        walk.line(np.column_stack([x, g.ditch_line(x) + aside])[::order], code)
    walk.shot(MANHOLES[0][0], MANHOLES[0][1], "MH")


# --- the passes --------------------------------------------------------------------------------------


def walk_lane_passes(walk: Walk) -> None:
    first, last = -0.2, 121.0
    for k, offset in enumerate((-3.8, -1.6, 0.0, 1.6, 3.8)):
        ahead = k % 2 == 0

        def place(
            run: np.ndarray, sway: np.ndarray, ahead: bool = ahead, offset: float = offset
        ) -> Tuple[np.ndarray, np.ndarray]:
            return g.lane_xy(first + run if ahead else last - run, offset + sway)

        walk.along(place, last - first, open_ground)
        if offset == 0.0:
            walk.stand(45)


def back_and_forth(rows: np.ndarray, keep: Keep) -> List[Tuple[float, float]]:
    """Corners of passes along x at the given y, each as long as its ground is open."""
    x = np.arange(-4, 123, 0.1)
    corners: List[Tuple[float, float]] = []
    for k, y in enumerate(rows):
        free = x[keep(x, np.full(len(x), y))]
        if len(free):
            ends = [(free[0], y), (free[-1], y)]
            corners += ends if k % 2 == 0 else ends[::-1]
    return corners


def walk_passes(walk: Walk) -> None:
    """The field: passes along x on either side of the lane, then cross passes."""
    south = np.array([0.9, 4.6, 8.1, 12.4, 16.6, 21.0, 24.8])
    walk.along(*polyline(back_and_forth(south, off_lane(-1))), off_lane(-1))
    rows = np.arange(20.2, 90, 4.35) + walk.random.uniform(-0.25, 0.25, 17)
    half = 9
    walk.along(*polyline(back_and_forth(rows[:half], off_lane(1))), off_lane(1))
    walk.stand(38)
    walk.along(*polyline(back_and_forth(rows[half - 1 :], off_lane(1))[2:]), off_lane(1))
    for k, (low, high) in enumerate([(9.5, 11.5), (33.5, 35.0), (62.0, 61.0), (81.5, 76.5), (111.0, 112.5)]):
        ends = [(low, 0.0), (high, 89.0)]
        walk.along(*polyline(ends if k % 2 == 0 else ends[::-1]), open_ground)


def make_walk(random: np.random.RandomState) -> Walk:
    """The whole survey in the order it was stored."""
    walk = Walk(random)
    marks = np.column_stack(g.lane_xy(np.linspace(4, 112, 16), np.tile([1.1, -1.2, 0.4, -0.5], 4)))
    for x, y in marks[:8]:
        walk.shot(x, y, "CK", "check", 60.0)
    walk.line(boundary_places(), "BD 1", "CLOSE")
    walk_lane_lines(walk)
    walk.shot(MANHOLES[1][0], MANHOLES[1][1], "MH")
    walk_lane_passes(walk)
    walk_passes(walk)
    walk_ditch(walk)
    walk.line(ellipse_places(g.BASIN_TOE, 22), "RB 1", "CLOSE")
    walk.line(ellipse_places(g.BASIN_RIM, 32), "RT 1", "CLOSE")
    walk.line(g.pump_house(), "VD 1", "CLOSE")
    for places, code in ((TREES, "TR"), (SPOTS, "SP")):
        for x, y in places:
            walk.shot(x, y, code)
    for x, y in marks[8:]:
        walk.shot(x, y, "CK", "check", 60.0)
    return walk
