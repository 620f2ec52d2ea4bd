"""Whether points lie where their CRS is meant to be used, and if not, what would bring them there.

Nothing is changed here: a :class:`Suggestion` is applied only by :func:`.correction.correct_lines`, when the user
asks for it. Areas of use are the boxes of the EPSG register, in longitude and latitude.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from ..points.pointset import PointSet
from ..units import LengthUnit, axis_unit
from .area_causes import Case, Suggestion, landing, suggest
from .axes import computed, flat
from .record import crs_name
from .whereabouts import Box, net_over

OUTSIDE = Text(
    "area.outside",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} of {total} points lie outside the area of use of {crs} ({area}), the farthest by {distance_km} km; "
        "the first is in line {line}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {line}, one of {total}, lies outside the area of use of {crs} ({area}), by "
        "{distance_km} km.",
    ),
    weight=3,
)
NOWHERE = Text(
    "area.nowhere",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} of {total} points are nowhere on the Earth in {crs} (its area of use: {area}); the first is in "
        "line {line}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "The point of line {line}, one of {total}, is nowhere on the Earth in {crs} (its area of use: {area})."
    ),
    weight=3,
)
NO_AREA = Text(
    "area.unknown",
    QT_TRANSLATE_NOOP("core", "{crs} does not say where it may be used; whether the points lie there is not checked."),
)
LIKELY = Text("area.likely", QT_TRANSLATE_NOOP("core", "Likely cause: {cause}."), weight=3)
LIKELY_BOTH = Text("area.likely_both", QT_TRANSLATE_NOOP("core", "Likely cause: {cause}, and {second}."), weight=3)
POSSIBLE = Text("area.possible", QT_TRANSLATE_NOOP("core", "It could also be that {cause}."), weight=3)
POSSIBLE_BOTH = Text(
    "area.possible_both", QT_TRANSLATE_NOOP("core", "It could also be that {cause}, and {second}."), weight=3
)
NO_CAUSE = Text(
    "area.no_cause",
    QT_TRANSLATE_NOOP(
        "core", "Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS."
    ),
    weight=3,
)
SAMPLE = 200


@dataclass(frozen=True)
class AreaCheck:
    """``outside``: mask (n,) of points outside the area of use of ``crs``. ``farthest_km``: nan where they are
    nowhere or none. ``messages``: for the user. ``suggestions``: likelier first; several that fit mean that
    the cause is not certain."""

    crs: Optional[Any]
    area_name: str
    outside: np.ndarray
    farthest_km: float
    messages: Tuple[Message, ...]
    suggestions: Tuple[Suggestion, ...]


def check_area(points: PointSet, unit: Optional[LengthUnit] = None, near: Sequence[Box] = ()) -> AreaCheck:
    """Whether ``points`` lie in the area of use of their CRS, with the likely causes where they do not.

    ``unit``: in which the coordinates of the file were taken to be, that of the CRS where None. A local grid
    has no area of use, and is never outside; nor is a rejected point, which is not asked. ``near``: boxes (west, south,
    east, north) of what is known to lie near, the closest word first.
    """
    nothing = np.zeros(len(points), bool)
    if not points.used.all():
        some = check_area(points.select(points.used), unit, near)
        outside = nothing.copy()
        outside[points.used] = some.outside
        return replace(some, outside=outside)
    if points.crs is None or not len(points):
        return AreaCheck(points.crs, "", nothing, np.nan, (), ())
    crs = flat(points.crs)
    if not computed(crs):  # which is told with its axes
        return AreaCheck(points.crs, "", nothing, np.nan, (), ())
    area = crs.area_of_use
    if area is None:
        return AreaCheck(points.crs, "", nothing, np.nan, (message(NO_AREA, crs=crs_name(points.crs)),), ())
    box = (area.west, area.south, area.east, area.north)
    if _surely_inside(crs, box, points.easting, points.northing):
        return AreaCheck(points.crs, area.name, nothing, np.nan, (), ())
    inside, lon, lat = landing(crs, box, points.easting, points.northing)
    if inside.all():
        return AreaCheck(points.crs, area.name, nothing, np.nan, (), ())
    away = _distance_km(box, lon[~inside], lat[~inside])
    farthest = float(np.nanmax(away)) if np.isfinite(away).any() else np.nan
    unit = unit or axis_unit(crs.axis_info[0]) or LengthUnit.METRE
    which = np.flatnonzero(~inside & np.isfinite(points.easting) & np.isfinite(points.northing))
    said: Tuple[Message, ...] = (_outside_message(points, inside, area.name, farthest),)
    if not len(which):
        return AreaCheck(points.crs, area.name, ~inside, farthest, (*said, message(NO_CAUSE)), ())
    some = which[np.unique(np.linspace(0, len(which) - 1, SAMPLE).astype(int))]
    suggestions = suggest(Case(crs, box, points.easting[some], points.northing[some], unit, tuple(near)), farthest)
    said += tuple(_cause_said(one, first=i == 0) for i, one in enumerate(suggestions)) or (message(NO_CAUSE),)
    return AreaCheck(points.crs, area.name, ~inside, farthest, said, suggestions)


def suggestion_names(check: AreaCheck) -> Tuple[str, ...]:
    """A word for each suggestion, by which the user asks for it: its causes, and what tells it from the others."""
    bare = ["+".join(cause.value for cause in one.causes) for one in check.suggestions]
    names: List[str] = []
    for one, word in zip(check.suggestions, bare):
        name = word
        if bare.count(word) > 1:
            name = f"{word}:{_detail(one)}"
        number = 2
        while name in names:
            name, number = f"{word}:{_detail(one)}:{number}", number + 1
        names.append(name)
    return tuple(names)


def _detail(suggestion: Suggestion) -> str:
    units = [str(said.values["unit"]) for said in suggestion.messages if "unit" in said.values]
    authority = suggestion.crs.to_authority() if suggestion.crs is not None else None
    return ":".join(units + ([":".join(authority)] if authority and not units else []))


def _cause_said(suggestion: Suggestion, first: bool) -> Message:
    if len(suggestion.messages) == 1:
        return message(LIKELY if first else POSSIBLE, cause=suggestion.messages[0])
    cause, second = suggestion.messages
    return message(LIKELY_BOTH if first else POSSIBLE_BOTH, cause=cause, second=second)


def _outside_message(points: PointSet, inside: np.ndarray, area: str, farthest: float) -> Message:
    values = {
        "count": int((~inside).sum()), "total": len(points), "crs": crs_name(points.crs), "area": area,
        "line": int(points.source_line[np.argmax(~inside)]),
    }  # fmt: skip
    if np.isnan(farthest):
        return message(NOWHERE, **values)
    return message(OUTSIDE, distance_km=f"{farthest:.0f}" if farthest >= 10 else Figure(f"{farthest:.1f}"), **values)


def _surely_inside(crs: Any, box: Sequence[float], easting: np.ndarray, northing: np.ndarray) -> bool:
    """Whether a net over the rectangle around all points lies inside: then so do the points.

    Saves the transformation of a million points in the usual case.
    """
    if not (np.isfinite(easting).all() and np.isfinite(northing).all()):
        return False
    return bool(landing(crs, box, *net_over(easting, northing), margin=0.0)[0].all())


def _distance_km(box: Sequence[float], lon: np.ndarray, lat: np.ndarray) -> np.ndarray:
    """Distances to ``box`` on a sphere, nan where a position is none."""
    west, south, east, north = box
    width = (east - west) % 360.0
    along = (lon - west) % 360.0
    beyond = np.where(along <= width, 0.0, np.minimum(along - width, 360.0 - along))
    near_lat = np.clip(lat, south, north)
    half = np.sin(np.radians(lat - near_lat) / 2) ** 2
    half += np.cos(np.radians(lat)) * np.cos(np.radians(near_lat)) * np.sin(np.radians(beyond) / 2) ** 2
    return np.asarray(2 * 6371.0 * np.arcsin(np.sqrt(np.minimum(half, 1.0))))
