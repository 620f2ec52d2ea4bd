"""Before going out: how far apart to walk, where, and how long it takes.

The spacing of the passes follows from the height error wanted: error² = 2/3 sigma² + (c D² / (2 √30))², with the
standard deviation sigma of one height, the second derivative c of the ground and the spacing D; see :mod:`.interval`,
which also says that a contour interval wants an error of a third of it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..confidence import NORMAL_95
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, part, silent
from .interval import NOISE_SHARE, interval_of, rmse_of, spacing_for, surface_error
from .walk_area import Chords, WalkArea, path_length
from .walk_order import to_and_fro

BAD_OPTION = Text(
    "plan.bad_option", QT_TRANSLATE_NOOP("core", "{option} of the walking plan is {value}; give a number in its range.")
)
NOTHING_WANTED = Text(
    "plan.nothing_wanted",
    QT_TRANSLATE_NOOP("core", "Give one of: the contour interval, the height error or the pass spacing wanted."),
)
TOO_FINE = Text(
    "plan.too_fine",
    QT_TRANSLATE_NOOP(
        "core",
        "A height error of {error:.3f} m cannot be had with heights good to {sigma:.3f} m: their noise alone gives "
        "{least:.3f} m. Ask for less, or observe each point longer.",
    ),
)
TOO_MANY = Text(
    "plan.too_many",
    QT_TRANSLATE_NOOP(
        "core", "Passes {spacing:.2f} m apart would be {count} on this area; ask for less or plan parts of it."
    ),
)
FROM_ERROR = Text(
    "plan.from_error",
    QT_TRANSLATE_NOOP(
        "core",
        "For a height error of {error:.3f} m with heights good to {sigma:.3f} m on ground that bends {curvature:.4f} "
        "1/m, passes may be {spacing:.1f} m apart: error² = 2/3 sigma² + (bend × spacing² / (2 √30))² (reasoned here, "
        "no standard).",
    ),
)
FROM_INTERVAL = Text(
    "plan.from_interval",
    QT_TRANSLATE_NOOP(
        "core",
        "A contour interval of {interval:g} m asks for a height error of a third of it (ASPRS Positional Accuracy "
        "Standards, 2014, annex B).",
    ),
)
CAPPED = Text(
    "plan.capped",
    QT_TRANSLATE_NOOP(
        "core",
        "The spacing is held at {spacing:.1f} m: {widest:.1f} m by the formula would miss forms a surveyor is "
        "expected to show.",
    ),
)
FORMS = Text(
    "plan.forms",
    QT_TRANSLATE_NOOP(
        "core",
        "Forms narrower than {narrow:.1f} m (kerbs, ditches, banks) fall between passes: walk their edges as coded "
        "lines, or cross them squarely every 3 m, from which they are found without codes.",
    ),
)
REPEATS = Text(
    "plan.repeats",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} crossings of passes will tell the noise of the survey to about {percent:.0f} % (95 %, independent "
        "differences).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "One crossing of passes tells next to nothing of the noise of the survey; plan more passes across."
    ),
)
ONLY_PERIMETER = Text(
    "plan.only_perimeter",
    QT_TRANSLATE_NOOP(
        "core", "The area is too small for a pass: its perimeter is all there is to walk, and no place is far from it."
    ),
)
TOO_SMALL = Text(
    "plan.too_small",
    QT_TRANSLATE_NOOP(
        "core",
        "No pass fits into the area: none would be {step:g} m long, the distance at which points are stored. Have the "
        "perimeter walked too, or give a larger area.",
    ),
)

#: So many independent differences tell a standard deviation to 15 % at 95 %: (1.96 / 0.15)² / 2.
_CROSSINGS_WANTED = 85
_MOST_CROSS_PASSES = 5
_MOST_PASSES = 20_000
_MOST_CHORDS = 100_000  # pieces of passes
_SHARP = 45.0  # degrees: a corner of the perimeter beyond this is a turn


class Terrain(Enum):
    """How the ground bends; ``value`` is its second derivative, 1/m, root mean square. Our own choice, no standard."""

    EVEN = 0.003
    ROLLING = 0.01
    BROKEN = 0.03


class LineUse(Enum):
    """What a line of the plan is walked for."""

    PERIMETER = "perimeter"
    PASS = "pass"  # nosec B105
    CROSS = "cross"
    LINK = "link"


@dataclass(frozen=True)
class WalkOptions:
    """What is wanted; metres, seconds, degrees. One of ``interval`` (contours), ``error`` (RMSE of heights) and
    ``spacing`` (of the passes) is needed.

    ``sigma``: standard deviation of one height of the rover. ``curvature``: second derivative of the ground, 1/m,
    see :class:`Terrain`, or :func:`.curvature.ground_curvature` of an earlier survey. ``smallest_form``: width of the
    smallest form to be shown without coded lines; passes are at most half of it apart. ``widest``: the spacing is never
    more. ``step``: recording distance. ``direction``: grid bearing of the passes, None for along the longest side.
    ``perimeter``: walk the outline and the holes too. ``cross_passes``: None for as many as tell the noise to 15 %, at
    most five. ``speed``: m/s (1.2 walking). ``turn_time``: for each turn. ``start``: where the walk begins.
    """

    interval: Optional[float] = None
    error: Optional[float] = None
    spacing: Optional[float] = None
    sigma: float = 0.02
    curvature: float = Terrain.ROLLING.value
    smallest_form: Optional[float] = None
    widest: float = 20.0
    step: float = 0.5
    direction: Optional[float] = None
    perimeter: bool = True
    cross_passes: Optional[int] = None
    speed: float = 1.2
    turn_time: float = 3.0
    start: Optional[Tuple[float, float]] = None

    def check(self) -> None:
        """Raise SurveyError when nothing or two things are wanted, or a number is out of its range."""
        if sum(each is not None for each in (self.interval, self.error, self.spacing)) != 1:
            raise SurveyError(NOTHING_WANTED)
        above = ("interval", "error", "spacing", "smallest_form", "widest", "step", "speed", "curvature")
        for option in (*above, "sigma", "turn_time", "cross_passes"):
            value = getattr(self, option)
            in_range = value is None or (math.isfinite(value) and (value > 0 or (value == 0 and option not in above)))
            if not in_range:
                raise SurveyError(BAD_OPTION, option=option, value=value)
        if self.direction is not None and not math.isfinite(self.direction):
            raise SurveyError(BAD_OPTION, option="direction", value=self.direction)


@dataclass(frozen=True)
class WalkLine:
    """One line of the plan. ``xy``: (k, 2) metres in the CRS, in walking order; ``name``: empty for links."""

    use: LineUse
    name: str
    xy: np.ndarray

    @property
    def length(self) -> float:
        """Metres."""
        return path_length(self.xy)


@dataclass(frozen=True)
class WalkPlan:
    """Where to walk, in order. Metres, seconds.

    ``spacing``: of the passes, evened out over the width, so at most the one asked for; ``direction``: their grid
    bearing. ``error``, ``interval``: what a surface from such passes should be good for. ``crossings``: of cross
    passes with passes. ``points``: stored at every step, on links too. ``turns``: at ends of lines and sharp corners.
    """

    lines: Tuple[WalkLine, ...]
    spacing: float
    direction: float
    error: float
    interval: float
    area: float
    crossings: int
    points: int
    turns: int
    seconds: float
    messages: Tuple[Message, ...]

    @property
    def distance(self) -> float:
        """Length of the whole walk, metres."""
        return sum(line.length for line in self.lines)

    def length_of(self, use: LineUse) -> float:
        """Length of the lines of one use, metres."""
        return sum(line.length for line in self.lines if line.use is use)

    def count_of(self, use: LineUse) -> int:
        return sum(line.use is use for line in self.lines)


def plan_walk(rings: Sequence[np.ndarray], options: WalkOptions, progress: Progress = silent) -> WalkPlan:
    """A walk over the polygon or polygons ``rings`` (each (k, 2), metres in the CRS; even-odd, so holes are rings too).

    With the perimeter, no place of the area is farther than half the spacing from a pass or the perimeter. Raises
    SurveyError for an area that is none or too small to walk, options out of range, and an error no rover can give.
    """
    options.check()
    area = WalkArea(rings)
    widest, said = wanted_spacing(options)
    direction = (area.longest_side() if options.direction is None else options.direction) % 180.0
    _, _, low, high = area.extent(direction)
    count = max(1, math.ceil((high - low) / widest - 1e-9))
    if count > _MOST_PASSES:
        raise SurveyError(TOO_MANY, spacing=widest, count=count)
    spacing = (high - low) / count
    across = low + spacing * (np.arange(1, count) if options.perimeter else np.arange(count) + 0.5)
    passes = area.chords(direction, across).shortened(options.step / 2, options.step)
    cross = _cross_passes(area, direction, passes, options)
    crossings = _crossings(passes, cross)
    if len(passes) > _MOST_CHORDS:
        raise SurveyError(TOO_MANY, spacing=widest, count=len(passes))
    lines = _walk(area, direction, passes, cross, options, progress)
    if not lines:
        raise SurveyError(TOO_SMALL, step=options.step)
    turns = _turns(lines)
    distance = sum(line.length for line in lines)
    error = surface_error(options.sigma, options.curvature, spacing)
    said += [message(FORMS, narrow=2 * spacing) if len(passes) else message(ONLY_PERIMETER)]
    if crossings:
        said.append(message(REPEATS, count=crossings, percent=100 * NORMAL_95 / math.sqrt(2 * crossings)))
    return WalkPlan(
        tuple(lines), spacing, direction, error, interval_of(error), area.area, crossings,
        _points(lines, options.step), turns, distance / options.speed + turns * options.turn_time, tuple(said),
    )  # fmt: skip


def wanted_spacing(options: WalkOptions) -> Tuple[float, List[Message]]:
    """The widest spacing of the passes (m) that gives what is wanted, and how it came about.

    Raises SurveyError where noise alone exceeds the error wanted.
    """
    said: List[Message] = []
    if options.spacing is not None:
        return options.spacing, said
    if options.interval is not None:
        error = rmse_of(options.interval)
        said.append(message(FROM_INTERVAL, interval=options.interval))
    else:
        assert options.error is not None
        error = options.error
    found = spacing_for(error, options.sigma, options.curvature)
    if math.isnan(found) or found == 0:
        least = math.sqrt(NOISE_SHARE) * options.sigma
        raise SurveyError(TOO_FINE, error=error, sigma=options.sigma, least=least)
    values = {"error": error, "sigma": options.sigma, "curvature": options.curvature}
    said.append(message(FROM_ERROR, spacing=found, **values))
    most = options.widest if options.smallest_form is None else min(options.widest, options.smallest_form / 2)
    if found > most:
        said.append(message(CAPPED, spacing=most, widest=found))
    return min(found, most), said


def _cross_passes(area: WalkArea, direction: float, passes: Chords, options: WalkOptions) -> Chords:
    """Chords at right angles to the passes, evenly spread."""
    turned = direction + 90.0
    _, _, low, high = area.extent(turned)
    count = options.cross_passes
    if count is None:
        lines = max(1, len(np.unique(passes.line)))
        fits = int((high - low) / max(2 * options.step, 1e-9))
        count = min(math.ceil(_CROSSINGS_WANTED / lines), _MOST_CROSS_PASSES, fits) if len(passes) else 0
    across = low + (high - low) * (np.arange(count) + 0.5) / max(1, count)
    return area.chords(turned, across).shortened(options.step / 2, options.step)


def _crossings(passes: Chords, cross: Chords) -> int:
    """How often cross passes cross passes. Turned by 90°, along is minus across, and across is along."""
    along, across = cross.across[:, None], passes.across[None]
    meets = (passes.start <= along) & (along <= passes.end)
    meets &= (cross.start[:, None] <= -across) & (-across <= cross.end[:, None])
    return int(np.count_nonzero(meets))


def _walk(
    area: WalkArea, direction: float, passes: Chords, cross: Chords, options: WalkOptions, progress: Progress
) -> List[WalkLine]:
    """All lines in walking order, with links between them, in the CRS."""
    if options.start is None:
        place = area.rings[0][np.lexsort((area.rings[0][:, 1], area.rings[0][:, 0]))[0]]
    else:
        place = np.array(options.start, float) - area.origin
    walk: List[WalkLine] = []
    if options.perimeter:
        place = _add(area, walk, place, _perimeters(area, place), progress)
    stretches = _stretches(area, direction, passes, place, LineUse.PASS, "P", part(progress, 0.0, 0.4))
    place = _add(area, walk, place, stretches, part(progress, 0.4, 0.8))
    across = _stretches(area, direction + 90.0, cross, place, LineUse.CROSS, "X", part(progress, 0.8, 0.9))
    _add(area, walk, place, across, part(progress, 0.9, 1.0))
    return [WalkLine(line.use, line.name, line.xy + area.origin) for line in walk]


def _add(
    area: WalkArea, walk: List[WalkLine], place: np.ndarray, lines: Sequence[WalkLine], progress: Progress
) -> np.ndarray:
    """Append ``lines`` to ``walk`` with links to them; where the walk has got to."""
    for number, line in enumerate(lines):
        progress(number / len(lines), "plan")
        if walk and np.hypot(*(line.xy[0] - place)) > 1e-6:
            walk.append(WalkLine(LineUse.LINK, "", area.way(place, line.xy[0])))
        walk.append(line)
        place = line.xy[-1]
    return place


def _perimeters(area: WalkArea, place: np.ndarray) -> List[WalkLine]:
    """Every ring from its corner nearest to where the one before ended, the nearest ring first."""
    left = list(area.rings)
    lines: List[WalkLine] = []
    while left:
        gap = [np.hypot(*(ring - place).T) for ring in left]
        nearest = min(range(len(left)), key=lambda k: float(gap[k].min()))
        ring = np.roll(left.pop(nearest), -int(np.argmin(gap[nearest])), axis=0)
        place = ring[0]
        lines.append(WalkLine(LineUse.PERIMETER, f"B{len(lines) + 1:02d}", np.vstack([ring, ring[:1]])))
    return lines


def _stretches(
    area: WalkArea, direction: float, chords: Chords, place: np.ndarray, use: LineUse, letter: str, progress: Progress
) -> List[WalkLine]:
    """The chords as lines in walking order from the local ``place``."""
    along, across = area.to_frame(place, direction).tolist()
    digits = max(2, len(str(len(chords))))
    lines = []
    for number, stretch in enumerate(to_and_fro(chords, (along, across), progress), 1):
        ends = np.array([chords.start[stretch.chord], chords.end[stretch.chord]])
        uv = np.column_stack([ends[::-1] if stretch.reverse else ends, np.full(2, chords.across[stretch.chord])])
        lines.append(WalkLine(use, f"{letter}{number:0{digits}d}", area.from_frame(uv, direction)))
    return lines


def _points(lines: Sequence[WalkLine], step: float) -> int:
    """Records of a receiver that stores at the start of each line and then every ``step`` metres, on links too."""
    return sum(int(line.length / step + 1e-9) + (line.use is not LineUse.LINK) for line in lines)


def _turns(lines: Sequence[WalkLine]) -> int:
    """One from each line to the next (a link is part of the turn), and each sharp corner of the perimeter."""
    walked = [line for line in lines if line.use is not LineUse.LINK]
    corners = 0
    for line in walked:
        if line.use is LineUse.PERIMETER:
            step = np.diff(line.xy, axis=0)
            bearing = np.degrees(np.arctan2(step[:, 0], step[:, 1]))
            turn = np.abs((np.diff(bearing) + 180) % 360 - 180)
            corners += int(np.count_nonzero(turn > _SHARP))
    return max(0, len(walked) - 1) + corners
