"""A correction on the user's word: judged first, applied only to the lines it explains, looked at again afterwards.

A cause of :mod:`.area_causes` says how coordinates outside the area of use may be read. Those that lie well as they
are stay; a reading that takes lines away from the others, or from what is known of the site, is refused.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj.crs import CompoundCRS

from ..messages import Figure, Message, message
from ..points.pointset import PointSet
from ..points.questions import Answer, Question, QuestionError, Topic
from .area import AreaCheck, check_area, suggestion_names
from .area_causes import Cause, Suggestion, landing
from .axes import flat, to_lonlat
from .correction_said import (
    AND,
    AS_THEY_ARE,
    AWAY,
    FARTHER,
    GIVE_NEAR,
    HEIGHTS_AS_READ,
    HEIGHTS_TOO,
    KEPT,
    NOT_EXPLAINED,
    RELABELLED,
    UNLIKE_A_WALK,
    WHICH,
)
from .neighbours import area_box
from .position import Landmark, area_name, distance_text, place_said, site_of
from .record import Georeference, Step, crs_name
from .transform import transform_points

#: The word for: as they are, though outside the area of use.
AS_READ = "as-read"


#: Causes that leave the numbers as they are.
_OF_ANOTHER_CRS = (Cause.ZONE, Cause.OTHER_SYSTEM)
#: Points are near a body of others within so many metres, or so many times its size.
NEAR_METRES, NEAR_TIMES = 2_000.0, 3.0
#: A walking rover stores points at such steps (metres); common practice, no source.
WALK = (0.4, 2.2)
#: Of two causes the one that is so many times farther from what is known is refused.
FARTHER_TIMES = 10.0
ASK_KM = 100.0
#: So many points far outside, and such a share of all, are asked about though most lie well.
ASK_COUNT, ASK_SHARE = 10, 0.05


class Corrected(NamedTuple):
    """Points with the lines of mask ``changed`` (n,) read otherwise; what was done; the area of use looked at again."""

    points: PointSet
    changed: np.ndarray
    records: Tuple[Georeference, ...]
    area: AreaCheck
    messages: Tuple[Message, ...]


@dataclass(frozen=True)
class _Body:
    """Where most points lie: their middle (degrees) and size (metres)."""

    lon: float
    lat: float
    size: float

    def metres_to(self, lon: np.ndarray, lat: np.ndarray) -> np.ndarray:
        """Metres to positions (n,) on a sphere; nan for none."""
        with np.errstate(invalid="ignore"):  # places at no end of the Earth
            half = np.sin(np.radians(lat - self.lat) / 2) ** 2
            half += np.cos(np.radians(lat)) * np.cos(np.radians(self.lat)) * np.sin(np.radians(lon - self.lon) / 2) ** 2
        return np.asarray(2 * 6.371e6 * np.arcsin(np.sqrt(np.clip(half, 0.0, 1.0))))

    def near(self, metres: np.ndarray) -> np.ndarray:
        with np.errstate(invalid="ignore"):
            return np.asarray(metres <= max(NEAR_METRES, NEAR_TIMES * self.size))


def correct_lines(
    points: PointSet, area: AreaCheck, name: str, accept: Sequence[str], heights_follow: bool,
    landmarks: Sequence[Landmark] = (),
) -> Corrected:  # fmt: skip
    """``points`` with the suggestion called ``name`` applied to the lines it explains.

    ``heights_follow``: whether heights are in the unit of plan. Raises QuestionError for a suggestion that does worse
    than another, and where what it explains would lie far from the other points.
    """
    names = suggestion_names(area)
    chosen = area.suggestions[names.index(name)]
    _judge(points, area, name, landmarks)
    mask, others, away = _explained(points, area.outside, chosen)
    if not mask.any():
        count = int(area.outside.sum())
        text = message(AWAY, name=name, count=count, others=others, distance=distance_text(away))
        better = [one for one in names if one != name and _explained(points, area.outside, _of(area, one))[0].any()]
        raise _question(points, area, text, better, landmarks)
    moved, records = apply_suggestion(points, mask, chosen, accept, heights_follow)
    left = area.outside & ~mask
    notes: List[Message] = []
    kept = int((~area.outside & ~mask & points.used).sum())
    if kept:
        notes.append(message(KEPT, count=kept))
    if left.any():
        line = int(points.source_line[np.argmax(left)])
        notes.append(message(NOT_EXPLAINED, count=int(left.sum()), line=line))
    again = check_area(moved)
    return Corrected(moved, mask, records, again, (*notes, *again.messages))


def ask_where(points: PointSet, area: AreaCheck, landmarks: Sequence[Landmark] = ()) -> Optional[QuestionError]:
    """The question what the coordinates are, where most points lie far outside the area of use, or a good part does and
    a cause explains where they belong; None where not."""
    used = points.used & np.isfinite(points.easting) & np.isfinite(points.northing)
    count, total = int((area.outside & used).sum()), int(used.sum())
    if count < max(ASK_COUNT, ASK_SHARE * total) and 2 * count <= total:
        return None
    if area.farthest_km < ASK_KM:
        return None
    text = message(WHICH, count=count, total=total, crs=crs_name(area.crs), area=area_name(area.crs))
    names = [one for one in suggestion_names(area) if _of(area, one).reading is not None]
    if 2 * count <= total and not any(_explained(points, area.outside, _of(area, one))[0].any() for one in names):
        return None
    question = _question(points, area, text, names, landmarks)
    if not landmarks and all(_of(area, name).causes[-1] in _OF_ANOTHER_CRS for name in names):
        place = Answer("--near", "51.45N,9.0E", message(GIVE_NEAR), fill_in=True)
        one = question.questions[0]
        return QuestionError(points.source, [replace(one, answers=(*one.answers, place))])
    return question


def _question(
    points: PointSet, area: AreaCheck, text: Message, names: Sequence[str], landmarks: Sequence[Landmark]
) -> QuestionError:
    answers = [_answer(points, area, name, landmarks) for name in names]
    here = place_said(points.crs, points.easting, points.northing, landmarks)
    answers.append(Answer("--correct", AS_READ, message(AS_THEY_ARE), place=here))
    return QuestionError(points.source, [Question(Topic.CORRECTION, text, tuple(answers))])


def _answer(points: PointSet, area: AreaCheck, name: str, landmarks: Sequence[Landmark]) -> Answer:
    one = _of(area, name)
    label = one.messages[0] if len(one.messages) == 1 else message(AND, one=one.messages[0], more=one.messages[1])
    return Answer("--correct", name, label, place=suggested_place(points, area, one, landmarks))


def suggested_place(
    points: PointSet, area: AreaCheck, one: Suggestion, landmarks: Sequence[Landmark] = ()
) -> Optional[Message]:
    """Where a suggestion puts the points outside, in words; None for one that only asks for reading them anew."""
    if one.reading is None:
        return None
    which = area.outside
    easting, northing = one.reading.of(points.easting[which], points.northing[which])
    return place_said(one.crs, easting, northing, landmarks)


def _of(area: AreaCheck, name: str) -> Suggestion:
    return area.suggestions[suggestion_names(area).index(name)]


# Which lines


def _explained(points: PointSet, outside: np.ndarray, one: Suggestion) -> Tuple[np.ndarray, int, float]:
    """Mask (n,) of the lines that ``one`` brings to where the survey is; how many lie well as they are, and how far
    from those (metres) it puts the lines outside."""
    nothing = np.zeros(len(points), bool)
    box = area_box(one.crs)
    if one.reading is None or box is None:
        return nothing, 0, np.nan
    good = np.isfinite(points.easting) & np.isfinite(points.northing)
    inside, lon, lat = landing(one.crs, box, *one.reading.of(points.easting, points.northing))
    reached = outside & inside
    well = good & ~outside
    raw_lon, raw_lat = to_lonlat(points.crs, points.easting, points.northing)
    if reached.sum() >= well.sum():  # the survey is what the reading brings home
        body = _body(lon[reached], lat[reached])
        metres = body.metres_to(lon, lat)
        as_read = body.metres_to(raw_lon, raw_lat)
        with np.errstate(invalid="ignore"):
            closer = well & inside & body.near(metres) & ~body.near(as_read) & (metres < 0.1 * as_read)
        return (reached & body.near(metres)) | closer, int(well.sum()), np.nan
    body = _body(raw_lon[well], raw_lat[well])
    metres = body.metres_to(lon, lat)
    away = float(np.nanmedian(metres[outside])) if np.isfinite(metres[outside]).any() else np.nan
    return reached & body.near(metres), int(well.sum()), away


def _body(lon: np.ndarray, lat: np.ndarray) -> _Body:
    middle = _Body(float(np.median(lon)), float(np.median(lat)), 0.0)
    return replace(middle, size=float(np.quantile(middle.metres_to(lon, lat), 0.9)))


# Whether it is the right one


def _judge(points: PointSet, area: AreaCheck, name: str, landmarks: Sequence[Landmark]) -> None:
    """Raises QuestionError where another suggestion lies far closer to what is known, or leaves a walk a walk."""
    chosen = _of(area, name)
    others = [one for one in suggestion_names(area) if one != name and _of(area, one).reading is not None]
    if chosen.reading is None or not others:
        return
    mine = _metres_off(points, area, chosen, landmarks)
    closer = [
        one
        for one in others
        if FARTHER_TIMES * max(_metres_off(points, area, _of(area, one), landmarks), 1000.0) < mine
    ]
    if closer:
        raise _question(points, area, message(FARTHER, name=name, distance=distance_text(mine)), closer, landmarks)
    step = usual_step(points, area.outside)
    after = step * chosen.reading.factor
    if WALK[0] <= step <= WALK[1] and not WALK[0] <= after <= WALK[1]:
        alike = [one for one in others if _reading_factor(area, one) == 1.0]
        if alike:
            text = message(UNLIKE_A_WALK, name=name, step=Figure(f"{step:.2f}"), after=Figure(f"{after:.2f}"))
            raise _question(points, area, text, alike, landmarks)


def _reading_factor(area: AreaCheck, name: str) -> float:
    reading = _of(area, name).reading
    return reading.factor if reading is not None else np.nan


def _metres_off(points: PointSet, area: AreaCheck, one: Suggestion, landmarks: Sequence[Landmark]) -> float:
    """Metres from what is known of the site, 0 where nothing is."""
    if one.reading is None or not landmarks:
        return 0.0
    easting, northing = one.reading.of(points.easting[area.outside], points.northing[area.outside])
    site = site_of(one.crs, easting, northing)
    return np.inf if site is None else site.beside(landmarks)[0].metres


def usual_step(points: PointSet, which: np.ndarray) -> float:
    """Median distance from point to point of mask ``which`` (n,) in file order, metres; nan for fewer than eight."""
    rows = np.flatnonzero(which & np.isfinite(points.easting) & np.isfinite(points.northing))
    if len(rows) < 8:
        return np.nan
    return float(np.median(np.hypot(np.diff(points.easting[rows]), np.diff(points.northing[rows]))))


# Applied


def apply_suggestion(
    points: PointSet, mask: np.ndarray, one: Suggestion, accept: Sequence[str] = (), heights_follow: bool = True
) -> Tuple[PointSet, Tuple[Georeference, ...]]:
    """``points`` with those of ``mask`` (n,) read as ``one`` says, and what was done; their CRS changes only where all
    of them are read so.

    ``heights_follow``: whether heights are in the unit of plan. Raises ValueError for a suggestion without a reading.
    """
    if one.reading is None:
        raise ValueError("this suggestion asks for reading or transforming the points, not for another label")
    some = points.select(mask)
    easting, northing = one.reading.of(some.easting, some.northing)
    factor = one.reading.factor
    rise = factor if heights_follow else 1.0
    crs = points.crs if one.crs == flat(points.crs) else _with_heights_of(points.crs, one.crs)
    read = replace(
        some, easting=easting, northing=northing, height=some.height * rise, sigma_h=some.sigma_h * factor,
        sigma_v=some.sigma_v * rise, crs=crs,
    )  # fmt: skip
    values = {"count": int(mask.sum()), "total": len(points)}
    said = [message(RELABELLED, cause=cause, **values) for cause in one.messages]
    if factor != 1.0:
        said.append(message(HEIGHTS_TOO if heights_follow else HEIGHTS_AS_READ))
    records = [Georeference(Step.RELABELLED, points.crs, crs, one, tuple(said))]
    if mask.all():
        return read, tuple(records)
    if crs != points.crs:
        done = transform_points(read, points.crs, accept)
        read = done.points
        records.append(done.record)
    columns = {}
    for key in ("easting", "northing", "height", "sigma_h", "sigma_v"):
        values_of = getattr(points, key).copy()
        values_of[mask] = getattr(read, key)
        columns[key] = values_of
    return replace(points, **columns), tuple(records)


def _with_heights_of(compound: Any, plan: Any) -> Any:
    """``plan`` with the vertical part of ``compound``, where that has one."""
    parts = compound.sub_crs_list
    return CompoundCRS(f"{plan.name} + {parts[1].name}", [plan, parts[1]]) if len(parts) > 1 else plan
