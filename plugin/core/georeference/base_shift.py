"""A survey whose base was put in a wrong place: shifted as a whole when the right one is known.

Rovers measure vectors from the base, so an error of the base's position moves every point by the same vector. That
vector is taken in geocentric coordinates, where it is the same all over the site; a shift in the grid would turn with
the convergence of meridians, centimetres at kilometres from the base.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import Any, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import CRS, Transformer

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from ..points.questions import Answer, Question, QuestionError, Topic
from ..units import metres_per_height_unit, metres_per_unit
from .axes import from_lonlat, to_lonlat
from .control import ControlMatch, ControlPoints, match_control
from .position import Landmark, distance_text, place_said
from .record import Georeference, Step, crs_name

BAD_POSITION = Text(
    "base.bad_position",
    QT_TRANSLATE_NOOP(
        "core",
        "{option} must be easting,northing or easting,northing,height in the unit of the CRS, or a latitude and a "
        "longitude in degrees with their letters such as 51.4512345N,9.0012345E,146.25; not '{value}'.",
    ),
)
BOTH_NEEDED = Text(
    "base.both_needed",
    QT_TRANSLATE_NOOP("core", "A base is corrected by two positions: give --base-was and --base-is."),
)
NO_DEGREES = Text(
    "base.no_degrees",
    QT_TRANSLATE_NOOP("core", "{option} is in degrees, and the survey is on a local grid; give easting,northing."),
)
ONE_HEIGHT = Text(
    "base.one_height",
    QT_TRANSLATE_NOOP("core", "--base-was and --base-is must both have a height, or neither."),
)
FAR_BASE = Text(
    "base.far_base",
    QT_TRANSLATE_NOOP(
        "core",
        "--base-was lies {distance} from the points, too far for a base of theirs; check its coordinates, their order "
        "and unit.",
    ),
)
LARGE = Text(
    "base.large",
    QT_TRANSLATE_NOOP(
        "core",
        "the survey would be shifted by {east} m east, {north} m north and {up} m up, more than a base is put wrong "
        "by; check both positions, their order and unit",
    ),
)
LARGE_TAKEN = Text("base.large_taken", QT_TRANSLATE_NOOP("core", "shift it so all the same"))
NOT_TOGETHER = Text(
    "base.not_together",
    QT_TRANSLATE_NOOP(
        "core",
        "the known points do not agree on one shift, they differ by {apart} m: a turn, another scale or a wrong name",
    ),
)
AGREE_OR_NOT = Text("base.agree_or_not", QT_TRANSLATE_NOOP("core", "their mean all the same"))
BY_PLAN = Text("base.by_plan", QT_TRANSLATE_NOOP("core", "a turn and a scale too"))
FROM_BASE = Text(
    "base.from_base",
    QT_TRANSLATE_NOOP(
        "core",
        "The position of the base was corrected afterwards: all points shifted by {east} m east, {north} m north and "
        "{up} m up at the base, the same vector in space at every point.",
    ),
)
FROM_POINTS = Text(
    "base.from_points",
    QT_TRANSLATE_NOOP(
        "core",
        "All points shifted by {east} m east, {north} m north and {up} m up, the mean of {count} known points "
        "({names}), the same vector in space at every point; the known points differ from it by {apart} m at most.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "All points shifted by {east} m east, {north} m north and {up} m up, so that the known point {names} lies "
        "where it is known; the same vector in space at every point.",
    ),
)
UP_KEPT = Text(
    "base.up_kept", QT_TRANSLATE_NOOP("core", "Heights are taken over as they are: no known height was given.")
)
CANNOT_TELL = Text(
    "base.cannot_tell",
    QT_TRANSLATE_NOOP(
        "core",
        "A shift cannot tell a rotation, a scale or a tilt, and an error of the position it rests on is in every "
        "point. A second known point, far from the first, would show them.",
    ),
)
DATUM = Text(
    "base.datum",
    QT_TRANSLATE_NOOP(
        "core",
        "Both positions of the base were taken to be in {crs}; one in another datum would put the difference of datums "
        "into all points.",
    ),
)

#: Metres: a base farther from its points, or a shift larger, is asked about; common practice, no source.
MOST_BASELINE, MOST_SHIFT = 100_000.0, 100.0
#: Metres that known points may differ from their mean shift.
MOST_APART = 0.5
_DEGREES = re.compile(r"\s*([0-9.]+)\s*°?\s*([NSEWnsew])\s*$")


class Position(NamedTuple):
    """A place: easting and northing in metres, or latitude and longitude in degrees; height in metres or nan."""

    first: float
    second: float
    height: float
    degrees: bool


@dataclass(frozen=True)
class BaseOptions:
    """How a survey is shifted. ``was`` and ``now``: positions of the base as it was used and as it is; None to take the
    shift from control points. ``sure``: shift by whatever comes of it.
    """

    was: Optional[Position] = None
    now: Optional[Position] = None
    sure: bool = False


@dataclass(frozen=True)
class Shift:
    """``vector`` (3,): metres, geocentric with a CRS, else east, north, up. ``local`` (3,): east, north, up at the base
    or the middle of the known points, in the grid. ``names``: of the known points. ``apart``: (n, 3) differences from
    the mean, metres. ``heights``: whether heights are shifted."""

    vector: np.ndarray
    local: np.ndarray
    names: Tuple[str, ...]
    apart: np.ndarray
    heights: bool


class Shifted(NamedTuple):
    """Points after the shift, what was done, the shift, and the known points it is from."""

    points: PointSet
    record: Georeference
    shift: Shift
    match: Optional[ControlMatch]


def parse_position(text: str, option: str, crs: Optional[Any]) -> Position:
    """A position from the user's word: in the unit of ``crs``, or in degrees with letters. Raises SurveyError."""
    words = [word.strip() for word in text.split(",")]
    try:
        if len(words) not in (2, 3):
            raise ValueError(text)
        height = float(words[2]) if len(words) == 3 else np.nan
        letters = [_DEGREES.match(word) for word in words[:2]]
        if all(letters):
            found = {one.group(2).upper(): float(one.group(1)) for one in letters if one is not None}
            lat = found["N"] if "N" in found else -found["S"]
            lon = found["E"] if "E" in found else -found["W"]
            if not (len(found) == 2 and abs(lat) <= 90 and abs(lon) <= 360):
                raise ValueError(text)
            if crs is None:
                raise SurveyError(NO_DEGREES, option=option)
            return Position(lat, lon, height, degrees=True)
        metres = metres_per_unit(crs)
        place = Position(
            float(words[0]) * metres, float(words[1]) * metres, height * metres_per_height_unit(crs), False
        )
    except (ValueError, KeyError) as error:
        raise SurveyError(BAD_POSITION, option=option, value=text) from error
    if not (abs(place.first) < 1e9 and abs(place.second) < 1e9 and (len(words) == 2 or abs(place.height) < 1e6)):
        raise SurveyError(BAD_POSITION, option=option, value=text)
    return place


def parse_base(was: str, now: str, crs: Optional[Any], sure: bool = False) -> Optional[BaseOptions]:
    """The correction of a base from the user's two words; None where both are empty. Raises SurveyError."""
    if not was.strip() and not now.strip():
        return None
    if not was.strip() or not now.strip():
        raise SurveyError(BOTH_NEEDED)
    one, other = parse_position(was, "--base-was", crs), parse_position(now, "--base-is", crs)
    if np.isfinite(one.height) != np.isfinite(other.height):
        raise SurveyError(ONE_HEIGHT)
    return BaseOptions(one, other, sure)


def correct_base(points: PointSet, options: BaseOptions, landmarks: Sequence[Landmark] = ()) -> Shifted:
    """``points`` moved by what the base was wrong by.

    Heights count as heights above the ellipsoid here: the undulation of the geoid turns the vector by micrometres.
    Raises SurveyError for a base far from the points, QuestionError for a shift of more than 100 m.
    """
    if options.was is None or options.now is None:
        raise SurveyError(BOTH_NEEDED)
    was, now = (_grid(one, points.crs) for one in (options.was, options.now))
    middle = np.array([np.nanmedian(points.easting), np.nanmedian(points.northing)])
    away = float(np.hypot(*(was[:2] - middle)))
    if not away <= MOST_BASELINE:
        raise SurveyError(FAR_BASE, distance=distance_text(away))
    shift = _shift(was[None], now[None], points.crs, ("",))
    _check_size(points, shift, options.sure, landmarks)
    said = [message(FROM_BASE, **_figures(shift.local))]
    if points.crs is not None:
        said.append(message(DATUM, crs=crs_name(points.crs)))
    return _apply(points, shift, tuple(said), None)


def shift_to_control(
    points: PointSet, control: ControlPoints, leave_out: Sequence[str] = (), sure: bool = False,
    landmarks: Sequence[Landmark] = (),
) -> Shifted:  # fmt: skip
    """``points`` moved so that those with the names of known points lie there, by the mean of their differences.

    One known point will do. ``control`` is in the CRS of the points. Raises SurveyError as :func:`match_control`, and
    QuestionError where the known points do not agree on a shift, or it is larger than 100 m.
    """
    match = match_control(points, control)
    used = [i for i, name in enumerate(match.names) if name not in leave_out]
    used = used or list(range(len(match.names)))
    shift = _shift(match.survey[used], match.control[used], points.crs, tuple(match.names[i] for i in used))
    apart = float(np.nanmax(np.abs(shift.apart)))
    if apart > MOST_APART and not sure:
        text = message(NOT_TOGETHER, apart=Figure(f"{apart:.3f}"))
        answers = (
            Answer("--control-fit", "plan", message(BY_PLAN)), Answer("--control-as", "as-read", message(AGREE_OR_NOT)),
        )  # fmt: skip
        raise QuestionError(control.source or points.source, [Question(Topic.CONTROL, text, answers)])
    _check_size(points, shift, sure, landmarks)
    said = message(
        FROM_POINTS,
        count=len(used),
        names=", ".join(shift.names),
        apart=Figure(f"{apart:.3f}"),
        **_figures(shift.local),
    )
    return _apply(points, shift, (*match.messages, said), match)


def _grid(one: Position, crs: Optional[Any]) -> np.ndarray:
    """Easting, northing, height in metres."""
    if not one.degrees:
        return np.array([one.first, one.second, one.height])
    easting, northing = from_lonlat(crs, [one.second], [one.first])
    return np.array([float(easting[0]), float(northing[0]), one.height])


def _shift(was: np.ndarray, now: np.ndarray, crs: Optional[Any], names: Tuple[str, ...]) -> Shift:
    """The mean shift between places (n, 3) before and after."""
    heights = bool((np.isfinite(was[:, 2]) & np.isfinite(now[:, 2])).any())
    local = now - was
    mean = np.array([local[:, 0].mean(), local[:, 1].mean(), np.nanmean(local[:, 2]) if heights else 0.0])
    middle = was[0] + np.append((was[:, :2] - was[0, :2]).mean(axis=0), 0.0)
    middle[2] = np.nanmean(was[:, 2]) if np.isfinite(was[:, 2]).any() else 0.0
    vector = mean
    if crs is not None:
        ends = _geocentric(crs, np.array([middle, middle + mean]))
        vector = ends[1] - ends[0]
    return Shift(vector, mean, names, local - mean, heights)


def _geocentric(crs: Any, places: np.ndarray) -> np.ndarray:
    """Geocentric coordinates (n, 3), metres, of plan places and heights (n, 3) in metres, on the datum of ``crs``."""
    lon, lat = to_lonlat(crs, places[:, 0], places[:, 1])
    return np.column_stack(_earth(crs).transform(lon, lat, places[:, 2]))


def _earth(crs: Any) -> Transformer:
    """Between degrees from Greenwich with ellipsoidal heights and geocentric coordinates, on ``crs``'s ellipsoid."""
    ellipsoid = crs.ellipsoid
    shape = f"+a={ellipsoid.semi_major_metre!r} +b={ellipsoid.semi_minor_metre!r}"
    return Transformer.from_crs(
        CRS.from_proj4(f"+proj=longlat {shape} +no_defs"), CRS.from_proj4(f"+proj=geocent {shape} +no_defs"),
        always_xy=True,
    )  # fmt: skip


def _check_size(points: PointSet, shift: Shift, sure: bool, landmarks: Sequence[Landmark]) -> None:
    if sure or np.abs(shift.local).max() <= MOST_SHIFT:
        return
    there = place_said(points.crs, points.easting + shift.local[0], points.northing + shift.local[1], landmarks)
    answers = (Answer("--control-as", "as-read", message(LARGE_TAKEN), place=there),)
    raise QuestionError(points.source, [Question(Topic.CONTROL, message(LARGE, **_figures(shift.local)), answers)])


def _apply(points: PointSet, shift: Shift, said: Tuple[Message, ...], match: Optional[ControlMatch]) -> Shifted:
    crs = points.crs
    if crs is None:
        east, north, up = (
            points.easting + shift.vector[0],
            points.northing + shift.vector[1],
            points.height + shift.vector[2],
        )
    else:
        # A point without a height is moved as one at the mean height.
        known = np.isfinite(points.height)
        level = np.where(known, points.height, points.height[known].mean() if known.any() else 0.0)
        moved = _geocentric(crs, np.column_stack((points.easting, points.northing, level))) + shift.vector
        lon, lat, high = _earth(crs).transform(moved[:, 0], moved[:, 1], moved[:, 2], direction="INVERSE")
        east, north = from_lonlat(crs, lon, lat)
        up = points.height + (np.asarray(high) - level)
    if not shift.heights:
        up = points.height
        said = (*said, message(UP_KEPT))
    record = Georeference(Step.BASE_SHIFT, crs, crs, shift, (*said, message(CANNOT_TELL)))
    return Shifted(replace(points, easting=east, northing=north, height=up), record, shift, match)


def _figures(local: np.ndarray) -> Any:
    return {name: Figure(f"{value:.4f}") for name, value in zip(("east", "north", "up"), local)}
