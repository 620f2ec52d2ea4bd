"""Strips along a centreline: a road, path or bank from a typical section at given heights."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import List, Optional, Sequence, Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.pointset import make_points
from ..progress import Progress, silent
from ..surface.build import SurfaceOptions, build_surface
from ..surface.crossings import CrossingRule
from ..surface.locate import heights_at
from ..surface.tin import Tin
from .balance import Balance, balance
from .centreline import Stations, make_stations
from .grading import Grading, Platform, grade
from .rim import Rim
from .side_slopes import Corner, SideSlopes
from .volume import Volume

BAD_SECTION = Text(
    "earthwork.section",
    QT_TRANSLATE_NOOP("core", "The typical section needs widths above 0 on both sides and a ditch of depth above 0."),
)
BAD_PROFILE = Text(
    "earthwork.profile",
    QT_TRANSLATE_NOOP(
        "core",
        "The profile must give heights at rising stations that cover the centreline from 0 to {length:.2f} m; it "
        "covers {low:.2f} to {high:.2f} m.",
    ),
)
FOLDS = Text(
    "earthwork.strip_folds",
    QT_TRANSLATE_NOOP(
        "core",
        "The strip covers some ground twice: parts of it that are apart along the centreline run over each other. "
        "Redraw the centreline, or narrow the section.",
    ),
)


@dataclass(frozen=True)
class Ditch:
    """A ditch outside the edge: ``depth`` below the edge, ``inner_run`` metres out for each metre down to its bottom,
    ``bottom`` metres wide. It is dug where the ground stands above the edge."""

    depth: float
    inner_run: float = 2.0
    bottom: float = 0.5


@dataclass(frozen=True)
class HalfSection:
    """One side of a typical section, from the centreline outward.

    ``lanes``: (width in metres, crossfall as rise per metre outward, so -0.025 falls away by 2.5 %) of each part;
    ``names``: what they are called, if anything.
    """

    lanes: Tuple[Tuple[float, float], ...]
    ditch: Optional[Ditch] = None
    names: Tuple[str, ...] = ()

    def __post_init__(self) -> None:
        ditch = self.ditch
        bad = ditch is not None and not (ditch.depth > 0 and ditch.inner_run >= 0 and ditch.bottom >= 0)
        if bad or not self.lanes or not all(width > 0 and np.isfinite(fall) for width, fall in self.lanes):
            raise SurveyError(BAD_SECTION)


@dataclass(frozen=True)
class TypicalSection:
    """What a strip looks like across, left and right of the centreline, and its slopes to the ground."""

    left: HalfSection
    right: HalfSection
    slopes: SideSlopes = field(default_factory=SideSlopes)


@dataclass(frozen=True)
class _Side:
    """Breaks of one side: offset (s, b) from the centreline, positive outward, and height (s, b) over the profile."""

    offset: np.ndarray
    rise: np.ndarray


def strip(
    centreline: np.ndarray,
    profile: np.ndarray,
    section: TypicalSection,
    existing: Tin,
    step: float = 5.0,
    sloped_ends: bool = False,
) -> Platform:
    """The platform of a strip: everything between the outer edges, without the slopes to the ground.

    ``centreline``: (k, 2) metres in the CRS. ``profile``: (p, 2) station and height at the centreline, straight between
    them. ``step``: metres between stations, which also stand at corners and where the profile breaks; bends are
    straight between stations. Inside bends edges run to where they meet; outer corners are rounded or mitred as those
    of the section's slopes, but see :mod:`.corners`. The strip's ends are left steep, unless ``sloped_ends``.
    Raises SurveyError for a profile
    that does not cover the line, a bend without the room, or a strip that runs over itself.
    """
    profile = np.asarray(profile, float).reshape(-1, 2)
    lines = _lines(centreline, profile, section, existing, step)
    return _platform(lines, existing, sloped_ends)


def _lines(
    centreline: np.ndarray, profile: np.ndarray, section: TypicalSection, existing: Tin, step: float
) -> List[np.ndarray]:
    """Lines (s, 3) along the strip, from the left edge over the centreline to the right edge."""
    room = (_width(section.left), _width(section.right))
    rounded = section.slopes.corner is Corner.ROUND
    stations = make_stations(centreline, step, profile[:, 0].tolist(), room, rounded)
    height = _profile_heights(profile, stations.station)
    sides = []
    for half, sign in ((section.left, -1.0), (section.right, 1.0)):
        sides.append(_side(half, sign, stations, height, existing))
    lines = _long_lines(stations, height, sides)
    return [_snapped(line, existing) for line in lines]


def _width(half: HalfSection) -> float:
    """Metres from the centreline to the outermost break."""
    lanes = sum(width for width, _ in half.lanes)
    return lanes + (half.ditch.inner_run * half.ditch.depth + half.ditch.bottom if half.ditch is not None else 0.0)


def _profile_heights(profile: np.ndarray, station: np.ndarray) -> np.ndarray:
    at = profile[:, 0]
    covered = len(profile) > 0 and at[0] <= 1e-6 and at[-1] >= station[-1] - 1e-6
    if not (covered and np.all(np.isfinite(profile)) and np.all(np.diff(at) > 0)):
        low, high = (float(at.min()), float(at.max())) if len(profile) else (float("nan"), float("nan"))
        raise SurveyError(BAD_PROFILE, length=float(station[-1]), low=low, high=high)
    return np.interp(station, at, profile[:, 1])


def _side(half: HalfSection, sign: float, stations: Stations, height: np.ndarray, existing: Tin) -> _Side:
    widths, falls = np.array(half.lanes).T
    offset, rise = np.cumsum(widths), np.cumsum(widths * falls)
    s = len(stations)
    meet = _heights_that_meet(stations.meet[:, int(sign > 0)], height) / _width(half)
    if half.ditch is None:
        return _met(_Side(np.tile(offset, (s, 1)), np.tile(rise, (s, 1))), meet)
    edge = stations.beside(np.full(s, sign * offset[-1]))
    ground = heights_at(existing, edge)
    dug = np.where(np.isfinite(ground) & (ground > height + rise[-1]), 1.0, 0.0)
    out, down, bottom = half.ditch.inner_run * half.ditch.depth, half.ditch.depth, half.ditch.bottom
    ditch_offset = offset[-1] + dug[:, None] * np.array([out, out + bottom])
    ditch_rise = rise[-1] - dug[:, None] * np.array([down, down])
    offset, rise = np.hstack([np.tile(offset, (s, 1)), ditch_offset]), np.hstack([np.tile(rise, (s, 1)), ditch_rise])
    return _met(_Side(offset, rise), meet)


def _heights_that_meet(group: np.ndarray, height: np.ndarray) -> np.ndarray:
    """What to add (s,) to the ``height`` (s,) of stations whose sections meet in one place: it has one height there."""
    meets = np.flatnonzero(group >= 0)
    more = np.zeros(len(height))
    count = np.bincount(group[meets]).clip(min=1)
    more[meets] = (np.bincount(group[meets], height[meets]) / count)[group[meets]] - height[meets]
    return more


def _met(side: _Side, meet: np.ndarray) -> _Side:
    """A side raised by ``meet`` (s,) for each metre from the centreline."""
    return _Side(side.offset, side.rise + side.offset * meet[:, None])


def _long_lines(stations: Stations, height: np.ndarray, sides: Sequence[_Side]) -> List[np.ndarray]:
    """Lines (s, 3) along the strip, from the left edge over the centreline to the right edge."""
    left, right = sides
    lines = []
    for k in range(left.offset.shape[1] - 1, -1, -1):
        lines.append(np.column_stack([stations.beside(-left.offset[:, k]), height + left.rise[:, k]]))
    lines.append(np.column_stack([stations.xy, height]))
    for k in range(right.offset.shape[1]):
        lines.append(np.column_stack([stations.beside(right.offset[:, k]), height + right.rise[:, k]]))
    return lines


def _snapped(line: np.ndarray, like: Tin) -> np.ndarray:
    xy = np.round(line[:, :2] - like.origin, 4) + like.origin
    return np.column_stack([xy, line[:, 2]])


def _platform(lines: List[np.ndarray], existing: Tin, sloped_ends: bool) -> Platform:
    right_edge, left_edge = lines[-1], lines[0][::-1]
    end, start = np.array([line[-1] for line in lines])[::-1], np.array([line[0] for line in lines])
    ring = np.vstack([right_edge, end[1:-1], left_edge, start[1:-1]])
    sides = [len(right_edge) - 1, len(end) - 1, len(left_edge) - 1, len(start) - 1]
    sloped = np.repeat([True, sloped_ends, True, sloped_ends], sides)
    own = np.hypot(*(np.roll(ring, -1, axis=0) - ring)[:, :2].T) > 1e-6
    ring, sloped = ring[own], sloped[own]
    across = [np.array(row) for row in zip(*(line for line in lines))]
    made = [_constraint(LineKind.BOUNDARY, ring)]
    made += [_constraint(LineKind.BREAKLINE, line) for line in [*lines, *across]]
    options = SurfaceOptions(crossing=CrossingRule.MEAN)
    points = make_points(*ring.T, crs=existing.crs)
    surface = build_surface(points, Constraints(tuple(made)), options)
    local = ring[:, :2] - existing.origin
    after = np.roll(local, -1, axis=0)
    area = 0.5 * float(np.sum(local[:, 0] * after[:, 1] - local[:, 1] * after[:, 0]))
    if surface.report.conflicts or abs(surface.tin.plan_area - area) > 1e-6 * abs(area) + 1e-3:
        raise SurveyError(FOLDS)
    return Platform(surface.tin, (Rim(ring, sloped),))


def _constraint(kind: LineKind, xyz: np.ndarray) -> ConstraintLine:
    return ConstraintLine(kind, xyz, np.full(len(xyz), -1, np.int64))


def grade_strip(
    existing: Tin,
    centreline: np.ndarray,
    profile: np.ndarray,
    section: TypicalSection,
    step: float = 5.0,
    sloped_ends: bool = False,
) -> Grading:
    """Grade a strip into the ground; see :func:`strip` and :func:`.grading.grade`."""
    return grade(existing, strip(centreline, profile, section, existing, step, sloped_ends), section.slopes)


@dataclass(frozen=True)
class StripLine:
    """A line (s, 3) along a strip. ``side``: -1 left, 0 the centreline, 1 right; ``part``: number of the part of the
    half section outside of which it runs, from 1; ``name``: that part's; ditches follow the parts."""

    side: int
    part: int
    name: str
    xyz: np.ndarray


def strip_lines(
    centreline: np.ndarray, profile: np.ndarray, section: TypicalSection, existing: Tin, step: float = 5.0
) -> Tuple[StripLine, ...]:
    """The lines that make a strip, from its left edge to its right; see :func:`strip`."""
    lines = _lines(centreline, np.asarray(profile, float).reshape(-1, 2), section, existing, step)
    places = [(-1, part) for part in range(_breaks_of(section.left), 0, -1)]
    places += [(0, 0)] + [(1, part) for part in range(1, _breaks_of(section.right) + 1)]
    found = []
    for (side, part), xyz in zip(places, lines):
        half = section.left if side < 0 else section.right
        named = side and part <= len(half.names)
        xyz = xyz[np.append(True, np.any(np.diff(xyz, axis=0) != 0, axis=1))]  # one of those at a place
        found.append(StripLine(side, part, half.names[part - 1] if named else "", xyz))
    return tuple(found)


def _breaks_of(half: HalfSection) -> int:
    return len(half.lanes) + (0 if half.ditch is None else 2)


def balance_strip(
    existing: Tin,
    centreline: np.ndarray,
    profile: np.ndarray,
    section: TypicalSection,
    step: float = 5.0,
    factor: float = 1.0,
    surplus: float = 0.0,
    progress: Progress = silent,
    sloped_ends: bool = False,
) -> Balance:
    """Shift of a strip's whole profile for which cut × factor = fill + surplus; see :func:`.balance.balance`.

    Ditches come and go with the shift, so volumes may jump a little.
    """
    profile = np.asarray(profile, float).reshape(-1, 2)
    tries = [0]

    def design(shift: float) -> Volume:
        tries[0] += 1
        progress(1 - 0.85 ** tries[0], "earthwork")
        return grade_strip(existing, centreline, profile + np.array([0.0, shift]), section, step, sloped_ends).volume

    return balance(design, factor, surplus)
