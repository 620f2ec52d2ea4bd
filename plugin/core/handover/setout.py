"""Points to set out: where they are, how high they are to be, and how far that is from the ground.

A height is that of a design surface, or a given one; cut or fill is the design less the existing ground at the place:
above 0 fill, below 0 cut. Its doubt has two parts: the noise of the ground's vertices, carried through the triangle's
weights (law of propagation of uncertainty, JCGM 100:2008, 5.1.2), and the doubt of set-out in plan times the ground's
slope. The design counts as exact. What lies between the survey's points is not in it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..alignment.line import Alignment
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..surface.ask import ask_surface
from ..surface.region import even_odd
from ..surface.tin import Tin
from ..units import LengthUnit

MOST_POINTS = 200_000

TWICE = Text(
    "setout.twice",
    QT_TRANSLATE_NOOP(
        "core",
        "The name “{name}” would stand for {count} points ({names} names in all are used more than once); a data "
        "collector would mix them up. Choose another prefix or another name field.",
    ),
)
NO_NAME = Text(
    "setout.no_name",
    QT_TRANSLATE_NOOP("core", "{count} points have no name; choose another name field or number them."),
    one=QT_TRANSLATE_NOOP("core", "One point has no name; choose another name field or number the points."),
)
NO_POINTS = Text("setout.no_points", QT_TRANSLATE_NOOP("core", "There are no points to set out in what was given."))
TOO_MANY = Text(
    "setout.too_many",
    QT_TRANSLATE_NOOP("core", "That would be {count} points to set out, more than {most}; choose a wider spacing."),
)
BAD_SPACING = Text(
    "setout.bad_spacing", QT_TRANSLATE_NOOP("core", "The spacing must be above 0 m, not {spacing} m; mend it.")
)
OFF_DESIGN = Text(
    "setout.off_design",
    QT_TRANSLATE_NOOP("core", "{count} points are off the design surface: they have no design height."),
    one=QT_TRANSLATE_NOOP("core", "One point is off the design surface: it has no design height."),
)
OFF_GROUND = Text(
    "setout.off_ground",
    QT_TRANSLATE_NOOP("core", "{count} points are off the existing surface: cut and fill are not known there."),
    one=QT_TRANSLATE_NOOP("core", "One point is off the existing surface: cut and fill are not known there."),
)
ON_CONTROL = Text(
    "setout.on_control",
    QT_TRANSLATE_NOOP(
        "core", "The name “{name}” is that of a control point and of a point to set out; choose another prefix."
    ),
)


@dataclass(frozen=True)
class SetOut:
    """n points to set out; all columns (n,), lengths in metres.

    ``name``: object array of distinct names. ``design``: height they are to have, ``ground``: existing height, nan
    where not known. ``sigma``: standard deviation of ``cut_fill``, nan where not known. ``code``: of the point.
    ``station``, ``offset``: along and across an alignment, nan otherwise. ``messages``: what is off a surface.
    """

    name: np.ndarray
    easting: np.ndarray
    northing: np.ndarray
    design: np.ndarray
    ground: np.ndarray
    sigma: np.ndarray
    code: np.ndarray
    station: np.ndarray
    offset: np.ndarray
    crs: Optional[Any] = None
    messages: Tuple[Message, ...] = ()

    def __len__(self) -> int:
        return len(self.easting)

    @property
    def cut_fill(self) -> np.ndarray:
        """Design less ground (n,), metres: above 0 fill, below 0 cut."""
        difference: np.ndarray = self.design - self.ground
        return difference


# Places


def make_setout(
    xy: np.ndarray,
    names: Sequence[str],
    design: Optional[np.ndarray] = None,
    codes: Optional[Sequence[str]] = None,
    crs: Optional[Any] = None,
) -> SetOut:
    """Points at ``xy`` (n, 2) in metres; ``design`` (n,) heights, nan or None where not known.

    Raises SurveyError for none at all, more than ``MOST_POINTS``, a name that is empty or used twice.
    """
    xy = np.asarray(xy, float).reshape(-1, 2)
    if len(xy) == 0:
        raise SurveyError(NO_POINTS)
    if len(xy) > MOST_POINTS:
        raise SurveyError(TOO_MANY, count=len(xy), most=MOST_POINTS)
    plain = np.array([*(" ".join(str(name).split()) for name in names), ""], object)[:-1]
    check_names(plain)
    nan = np.full(len(xy), np.nan)
    words = np.full(len(xy), "", object) if codes is None else np.array([*codes, ""], object)[:-1]
    heights = nan.copy() if design is None else np.asarray(design, float)
    return SetOut(plain, xy[:, 0], xy[:, 1], heights, nan, nan, words, nan, nan, crs)


def check_names(names: np.ndarray) -> None:
    """Raise SurveyError where a name is empty, or two are the same but for capitals."""
    folded = [str(name).casefold() for name in names]
    empty = folded.count("")
    if empty:
        raise SurveyError(NO_NAME, count=empty)
    count: Dict[str, int] = {}
    for each in folded:
        count[each] = count.get(each, 0) + 1
    twice = [name for name, each in zip(names, folded) if count[each] > 1]
    if twice:
        kinds = sum(number > 1 for number in count.values())
        raise SurveyError(TWICE, name=twice[0], count=count[str(twice[0]).casefold()], names=kinds)


def numbered(prefix: str, count: int, first: int = 1) -> List[str]:
    """Names with leading zeros, so that they sort as they count: A01 ... A12."""
    width = len(str(first + count - 1))
    return [f"{prefix}{number:0{width}d}" for number in range(first, first + count)]


def corners(parts: Sequence[np.ndarray]) -> np.ndarray:
    """The corners (n, 2 or 3) of lines and rings, each place once, in the order they were drawn.

    A ring's last vertex is its first; corners that lines share are one point.
    """
    every = np.concatenate([np.asarray(part, float) for part in parts] or [np.empty((0, 3))])
    if len(every) == 0:
        return every
    grid = np.rint((every[:, :2] - every[0, :2]) * 1e4).astype(np.int64)
    _, first = np.unique(grid, axis=0, return_index=True)
    kept: np.ndarray = every[np.sort(first)]
    return kept


def grid_places(rings: Sequence[np.ndarray], spacing: float, bearing: float = 0.0) -> np.ndarray:
    """Places (n, 2) of a square grid within ``rings`` (metres; a ring in a ring is a hole), row by row from the south.

    Rows lie at whole multiples of ``spacing`` (m) of the coordinates, turned by ``bearing`` (degrees clockwise).
    Raises SurveyError for a spacing that is not above 0, or too many points.
    """
    if not spacing > 0 or not np.isfinite(spacing):
        raise SurveyError(BAD_SPACING, spacing=spacing)
    if not rings:
        return np.empty((0, 2))
    angle = np.radians(bearing)
    # Rows: the grid's east and north in the CRS; exactly so where it is not turned.
    turn = np.array([[np.cos(angle), -np.sin(angle)], [np.sin(angle), np.cos(angle)]]) if bearing else np.eye(2)
    turned = [np.asarray(ring, float)[:, :2] @ turn.T for ring in rings]
    every = np.concatenate(turned)
    low = np.ceil(every.min(axis=0) / spacing - 1e-9).astype(np.int64)
    high = np.floor(every.max(axis=0) / spacing + 1e-9).astype(np.int64)
    columns, rows = (high - low + 1).tolist()
    if columns * rows > 20 * MOST_POINTS:
        raise SurveyError(TOO_MANY, count=columns * rows, most=MOST_POINTS)
    if columns <= 0 or rows <= 0:
        return np.empty((0, 2))
    north, east = np.mgrid[low[1] : high[1] + 1, low[0] : high[0] + 1]
    places = np.column_stack([east.ravel(), north.ravel()]) * spacing
    # Rings about a place near by keep the digits of the even-odd rule.
    middle = every.mean(axis=0)
    inside = even_odd(places - middle, [ring - middle for ring in turned])
    found: np.ndarray = places[inside] @ turn
    return found


@dataclass(frozen=True)
class OffsetRows:
    """Places along a line: ``distance``, ``offset`` (n,) in metres and their coordinates ``xy`` (n, 2)."""

    distance: np.ndarray
    offset: np.ndarray
    xy: np.ndarray


def offset_places(line: Alignment, interval: float, offsets: Sequence[float], with_vertices: bool = True) -> OffsetRows:
    """Places at whole ``interval`` stations (unit of the line) of ``line``, its ends and vertices, at ``offsets`` (m).

    Raises SurveyError for an interval that is not above 0, or too many points.
    """
    if not interval > 0 or not np.isfinite(interval):
        raise SurveyError(BAD_SPACING, spacing=interval)
    count = line.length / (interval * line.unit.metres) * max(1, len(offsets))
    if count > MOST_POINTS:
        raise SurveyError(TOO_MANY, count=int(count), most=MOST_POINTS)
    at = [line.numbering.multiples(interval), np.array([0.0, line.length])]
    at += [line.at] if with_vertices else []
    every = np.sort(np.concatenate(at))
    every = every[np.append(True, np.diff(every) > 1e-4)]
    distance = np.repeat(every, len(offsets))
    offset = np.tile(np.asarray(offsets, float), len(every))
    return OffsetRows(distance, offset, line.places(distance, offset))


def offset_names(line: Alignment, rows: OffsetRows, prefix: str = "") -> List[str]:
    """Names such as 0+120.00L3.50: station, then C, L or R and the offset in the unit of the line."""
    names = []
    for distance, offset in zip(rows.distance.tolist(), rows.offset.tolist()):
        away = abs(offset) / line.unit.metres
        side = "C" if away < 5e-4 else f"{'L' if offset < 0 else 'R'}{away:.2f}"
        names.append(f"{prefix}{line.label(distance)}{side}")
    return names


def along(setout: SetOut, station: np.ndarray, offset: np.ndarray) -> SetOut:
    """``setout`` with station (unit of the line) and offset (m) of its points."""
    return replace(setout, station=np.asarray(station, float), offset=np.asarray(offset, float))


# Heights


def with_design(setout: SetOut, design: Tin) -> SetOut:
    """Design heights of the surface ``design`` where none are given; points off it are told."""
    asked = ask_surface(design, np.column_stack([setout.easting, setout.northing]))
    heights = np.where(np.isfinite(setout.design), setout.design, asked.height)
    off = int(np.count_nonzero(~np.isfinite(heights)))
    notes = (message(OFF_DESIGN, count=off),) if off else ()
    return replace(setout, design=heights, messages=(*setout.messages, *notes))


def with_ground(setout: SetOut, ground: Tin, sigma: float, plan_sigma: float = 0.0) -> SetOut:
    """Existing heights, and the doubt of cut and fill.

    ``sigma``: standard deviation of a height of the ground's vertices, metres; ``plan_sigma``: of set-out in plan.
    """
    asked = ask_surface(ground, np.column_stack([setout.easting, setout.northing]))
    on = np.flatnonzero(asked.triangle >= 0)
    doubt = np.full(len(setout), np.nan)
    corner = ground.vertices[ground.triangles[asked.triangle[on]], :2]
    place = np.column_stack([setout.easting, setout.northing])[on] - ground.origin
    weight = _weights(corner, place)
    doubt[on] = np.sqrt(sigma**2 * (weight**2).sum(axis=1) + (plan_sigma * asked.slope[on]) ** 2)
    off = len(setout) - len(on)
    notes = (message(OFF_GROUND, count=off),) if off else ()
    return replace(setout, ground=asked.height, sigma=doubt, messages=(*setout.messages, *notes))


def _weights(corner: np.ndarray, place: np.ndarray) -> np.ndarray:
    """Shares (n, 3) of the corners (n, 3, 2) in the height at ``place`` (n, 2)."""
    to = corner - place[:, None]
    after, before = [1, 2, 0], [2, 0, 1]
    weight = to[:, after, 0] * to[:, before, 1] - to[:, before, 0] * to[:, after, 1]
    shares: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
    return shares


def lengths(values: np.ndarray, unit: LengthUnit) -> np.ndarray:
    """Metres in ``unit``."""
    result: np.ndarray = np.asarray(values, float) / unit.metres
    return result
