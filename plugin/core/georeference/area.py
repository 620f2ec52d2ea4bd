"""Whether points lie where their CRS is meant to be used, and if not, what would bring them there.

Nothing is changed here: a :class:`Suggestion` is applied only by :func:`apply_suggestion`, when the user
asks for it. Areas of use are the boxes of the EPSG register, in longitude and latitude.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from enum import Enum
from functools import lru_cache
from typing import Any, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import CRS, Proj, proj_version_str
from pyproj.aoi import AreaOfInterest
from pyproj.crs import CompoundCRS
from pyproj.database import query_crs_info
from pyproj.enums import PJType
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import PointSet
from ..units import LengthUnit, axis_unit, metres_per_unit
from .axes import flat, horizontal
from .record import Georeference, Georeferenced, Step, crs_name
from .whereabouts import Box, in_area, net_over

OUTSIDE = Text(
    "area.outside",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} of {total} points lie outside the area of use of {crs} ({area}), the farthest by {distance_km} km; "
        "the first is in line {line}.",
    ),
)
NOWHERE = Text(
    "area.nowhere",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} of {total} points are nowhere on the Earth in {crs} (its area of use: {area}); the first is in "
        "line {line}.",
    ),
)
NO_AREA = Text(
    "area.unknown",
    QT_TRANSLATE_NOOP("core", "{crs} does not say where it may be used; whether the points lie there is not checked."),
)
LIKELY = Text("area.likely", QT_TRANSLATE_NOOP("core", "Likely cause: {cause}."))
LIKELY_BOTH = Text("area.likely_both", QT_TRANSLATE_NOOP("core", "Likely cause: {cause}, and {second}."))
POSSIBLE = Text("area.possible", QT_TRANSLATE_NOOP("core", "It could also be that {cause}."))
POSSIBLE_BOTH = Text("area.possible_both", QT_TRANSLATE_NOOP("core", "It could also be that {cause}, and {second}."))
NO_CAUSE = Text(
    "area.no_cause",
    QT_TRANSLATE_NOOP(
        "core", "Neither exchanged columns nor another unit, zone or false origin brings them there; check the CRS."
    ),
)
SWAPPED = Text("area.swapped", QT_TRANSLATE_NOOP("core", "easting and northing are exchanged"))
UNIT = Text("area.unit", QT_TRANSLATE_NOOP("core", "the coordinates are in {unit}, not in {assumed}"))
ZONE = Text("area.zone", QT_TRANSLATE_NOOP("core", "the coordinates are of another zone: {crs}"))
HEMISPHERE_CRS = Text(
    "area.hemisphere_crs", QT_TRANSLATE_NOOP("core", "the coordinates are of the other hemisphere: {crs}")
)
HEMISPHERE_ADD = Text(
    "area.hemisphere_add",
    QT_TRANSLATE_NOOP("core", "the northings lack the 10,000,000 m added in the southern hemisphere"),
)
HEMISPHERE_TAKE = Text(
    "area.hemisphere_take",
    QT_TRANSLATE_NOOP("core", "the northings contain the 10,000,000 m added in the southern hemisphere"),
)
PREFIX_MISSING = Text(
    "area.prefix_missing", QT_TRANSLATE_NOOP("core", "the zone number {prefix} before the eastings is missing")
)
PREFIX_EXTRA = Text(
    "area.prefix_extra", QT_TRANSLATE_NOOP("core", "the eastings have a zone number, {prefix}, before them")
)
PREFIX_CRS = Text(
    "area.prefix_crs",
    QT_TRANSLATE_NOOP("core", "the same zone is meant, with the eastings written as in {crs}"),
)
FALSE_ORIGIN = Text(
    "area.false_origin",
    QT_TRANSLATE_NOOP("core", "the false origin is left out of the coordinates (east {easting} m, north {northing} m)"),
)
DEGREES = Text(
    "area.degrees", QT_TRANSLATE_NOOP("core", "the values are longitude and latitude in degrees; read them as such")
)
DEGREES_SWAPPED = Text(
    "area.degrees_swapped",
    QT_TRANSLATE_NOOP("core", "the values are latitude and longitude in degrees; read them as such"),
)
BEYOND_BORDER = Text(
    "area.beyond_border",
    QT_TRANSLATE_NOOP(
        "core", "the survey is really beyond the border of the zone; transform it to {crs} if that is the one wanted"
    ),
)
OTHER_SYSTEM = Text("area.other_system", QT_TRANSLATE_NOOP("core", "the coordinates are of another system: {crs}"))
RELABELLED = Text(
    "area.relabelled",
    QT_TRANSLATE_NOOP("core", "On the user's word the coordinates were read otherwise: {cause}."),
)
HEIGHTS_AS_READ = Text(
    "area.heights_as_read", QT_TRANSLATE_NOOP("core", "The unit of the heights was left as it was read.")
)

#: Boxes of the register are given to 0.01 degrees.
MARGIN_DEGREES = 0.01
#: Share of the points outside that a suggestion must bring inside.
ENOUGH = 0.9
MOST = 8
NEAR_BORDER_KM = 100.0
BORDER_KM = 300.0
#: How far around the area of a CRS its neighbouring zones are looked for, degrees.
AROUND_DEGREES = 15.0
SAMPLE = 200
#: PROJ 7 takes half a minute to open the hundreds of CRSs of a region, later ones a second.
QUICK_PROJ = 8
SOUTHERN = 10_000_000.0
PREFIX = 1_000_000.0


class Cause(Enum):
    """Why points may fall outside the area of use; the likelier first."""

    SWAPPED = "swapped"
    DEGREES = "degrees"
    PREFIX = "prefix"
    UNIT = "unit"
    HEMISPHERE = "hemisphere"
    ZONE = "zone"
    FALSE_ORIGIN = "false-origin"
    BEYOND_BORDER = "beyond-border"
    OTHER_SYSTEM = "other-system"


_LIKELY = {cause: place for place, cause in enumerate(Cause)}


@dataclass(frozen=True)
class Reading:
    """How to read coordinates otherwise: exchange, then multiply, then add metres; then they are in ``crs``."""

    crs: Any
    swap: bool = False
    factor: float = 1.0
    add_easting: float = 0.0
    add_northing: float = 0.0

    def of(self, easting: np.ndarray, northing: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
        """Coordinates (n,), metres, read this way."""
        first, second = (northing, easting) if self.swap else (easting, northing)
        return first * self.factor + self.add_easting, second * self.factor + self.add_northing


@dataclass(frozen=True)
class Suggestion:
    """A likely cause.

    ``causes`` and ``messages``: one each, two where it takes two mistakes. ``share``: 0..1 of the points outside
    that would lie inside. ``reading``: what would have to be done to the coordinates, None where they must
    be read anew (degrees) or transformed (beyond the border). ``crs``: the CRS they would be in.
    """

    causes: Tuple[Cause, ...]
    messages: Tuple[Message, ...]
    share: float
    crs: Any
    reading: Optional[Reading]


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


class _Case(NamedTuple):
    """What the tries need: the CRS, its box, coordinates in metres of a sample outside, unit as read."""

    crs: Any
    box: Box
    easting: np.ndarray
    northing: np.ndarray
    unit: LengthUnit


class _Try(NamedTuple):
    causes: Tuple[Cause, ...]
    messages: Tuple[Message, ...]
    reading: Reading


def check_area(points: PointSet, unit: Optional[LengthUnit] = None) -> AreaCheck:
    """Whether ``points`` lie in the area of use of their CRS, with the likely causes where they do not.

    ``unit``: in which the coordinates of the file were taken to be, that of the CRS where None. A local grid
    has no area of use, and is never outside.
    """
    nothing = np.zeros(len(points), bool)
    if points.crs is None or not len(points):
        return AreaCheck(points.crs, "", nothing, np.nan, (), ())
    crs = flat(points.crs)
    area = crs.area_of_use
    if area is None:
        return AreaCheck(points.crs, "", nothing, np.nan, (message(NO_AREA, crs=crs_name(points.crs)),), ())
    box = (area.west, area.south, area.east, area.north)
    if _surely_inside(crs, box, points.easting, points.northing):
        return AreaCheck(points.crs, area.name, nothing, np.nan, (), ())
    inside, lon, lat = _landing(crs, box, points.easting, points.northing)
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
    suggestions = _suggest(_Case(crs, box, points.easting[some], points.northing[some], unit), farthest)
    said += tuple(_cause_said(one, first=i == 0) for i, one in enumerate(suggestions)) or (message(NO_CAUSE),)
    return AreaCheck(points.crs, area.name, ~inside, farthest, said, suggestions)


def apply_suggestion(points: PointSet, suggestion: Suggestion) -> Georeferenced:
    """``points`` read as ``suggestion`` says: only on the user's word. Heights stay as they are.

    Raises ValueError for a suggestion whose ``reading`` is None.
    """
    if suggestion.reading is None:
        raise ValueError("this suggestion asks for reading or transforming the points, not for another label")
    easting, northing = suggestion.reading.of(points.easting, points.northing)
    crs = points.crs if suggestion.crs == flat(points.crs) else _with_heights_of(points.crs, suggestion.crs)
    said = [message(RELABELLED, cause=cause) for cause in suggestion.messages]
    if suggestion.reading.factor != 1.0:
        said.append(message(HEIGHTS_AS_READ))
    record = Georeference(Step.RELABELLED, points.crs, crs, suggestion, tuple(said))
    return Georeferenced(replace(points, easting=easting, northing=northing, crs=crs), record)


def _with_heights_of(compound: Any, plan: Any) -> Any:
    """``plan`` with the vertical part of ``compound``, where that has one."""
    parts = compound.sub_crs_list
    return CompoundCRS(f"{plan.name} + {parts[1].name}", [plan, parts[1]]) if len(parts) > 1 else plan


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
    return message(OUTSIDE, distance_km=f"{farthest:.0f}" if farthest >= 10 else f"{farthest:.1f}", **values)


def _surely_inside(crs: Any, box: Sequence[float], easting: np.ndarray, northing: np.ndarray) -> bool:
    """Whether a net over the rectangle around all points lies inside: then so do the points.

    Saves the transformation of a million points in the usual case.
    """
    if not (np.isfinite(easting).all() and np.isfinite(northing).all()):
        return False
    return bool(_landing(crs, box, *net_over(easting, northing), margin=0.0)[0].all())


def _landing(
    crs: Any, box: Sequence[float], easting: np.ndarray, northing: np.ndarray, margin: float = MARGIN_DEGREES
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Mask of the points inside ``box``, their longitudes and latitudes; nan where there is none.

    Far from where a projection holds, PROJ may return a place that does not project back: that is none.
    """
    metres = metres_per_unit(crs)
    try:
        # Good to a millimetre, and ten times quicker to make than a Transformer where PROJ is old.
        projection = Proj(crs)
        lon, lat = projection(easting / metres, northing / metres, inverse=True)
        back_e, back_n = (np.asarray(values) * metres for values in projection(lon, lat))
    except ProjError:  # a CRS of the register that this PROJ cannot compute
        none = np.full(len(easting), np.nan)
        return np.zeros(len(easting), bool), none, none
    with np.errstate(invalid="ignore"):
        real = (np.abs(back_e - easting) < 1.0) & (np.abs(back_n - northing) < 1.0)
    lon, lat = np.where(real, lon, np.nan), np.where(real, lat, np.nan)
    return in_area(box, lon, lat, margin), lon, lat


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


def _suggest(case: _Case, farthest: float) -> Tuple[Suggestion, ...]:
    found = _as_degrees(case) + _beyond_border(case, farthest)
    neighbours = list(_family(case))
    singles = list(_same_crs(case)) + list(_other_zones(case, neighbours))
    found += _that_fit(case, singles)
    if not found:
        found += _that_fit(case, _twice(case, neighbours))
    if not found:
        found += _other_systems(case)
    return tuple(sorted(found, key=lambda one: _rank(case, one, farthest))[:MOST])


def _rank(case: _Case, one: Suggestion, farthest: float) -> Tuple[Any, ...]:
    likely = max(_LIKELY[cause] for cause in one.causes)
    if one.causes == (Cause.BEYOND_BORDER,) and farthest < NEAR_BORDER_KM:
        likely = -1
    stem = 0 if _stem(one.crs.name) == _stem(case.crs.name) else 1
    other_number = _zone_number(one.crs.name) != _zone_number(case.crs.name)
    apart = _apart(case.crs, one.crs)
    return (one.share < 0.99, len(one.causes), likely, stem, other_number, apart, len(one.crs.name), one.crs.name)


def _that_fit(case: _Case, tries: Sequence[_Try]) -> List[Suggestion]:
    fitting = []
    for one in tries:
        box = _box(one.reading.crs)
        if box is None:
            continue
        share = float(_landing(one.reading.crs, box, *one.reading.of(case.easting, case.northing))[0].mean())
        if share >= ENOUGH:
            fitting.append(Suggestion(one.causes, one.messages, share, one.reading.crs, one.reading))
    return fitting


def _box(crs: Any) -> Optional[Box]:
    area = crs.area_of_use
    return None if area is None else (area.west, area.south, area.east, area.north)


def _as_degrees(case: _Case) -> List[Suggestion]:
    first, second = case.easting / case.unit.metres, case.northing / case.unit.metres
    found = []
    for lon, lat, text in ((first, second, DEGREES), (second, first, DEGREES_SWAPPED)):
        if np.abs(lon).max() > 180.0 or np.abs(lat).max() > 90.0:
            continue
        share = float(in_area(case.box, lon, lat, MARGIN_DEGREES).mean())
        if share >= ENOUGH:
            found.append(Suggestion((Cause.DEGREES,), (message(text),), share, case.crs.geodetic_crs, None))
    return found


def _same_crs(case: _Case) -> Iterator[_Try]:
    """Mistakes that leave the CRS as it is."""
    crs = case.crs
    yield _Try((Cause.SWAPPED,), (message(SWAPPED),), Reading(crs, swap=True))
    for unit in LengthUnit:
        if abs(unit.metres / case.unit.metres - 1.0) > 1e-3:
            said = message(UNIT, unit=unit.symbol, assumed=case.unit.symbol)
            yield _Try((Cause.UNIT,), (said,), Reading(crs, factor=unit.metres / case.unit.metres))
    yield from _shifts(case, crs)


def _shifts(case: _Case, crs: Any, swap: bool = False) -> Iterator[_Try]:
    for add, text in ((SOUTHERN, HEMISPHERE_ADD), (-SOUTHERN, HEMISPHERE_TAKE)):
        yield _Try((Cause.HEMISPHERE,), (message(text),), Reading(crs, swap, add_northing=add))
    false_e, false_n = _false_origin(crs)
    has, needs = _prefix(case.northing if swap else case.easting), int(false_e // PREFIX)
    if needs > 0 and has == 0:
        said = message(PREFIX_MISSING, prefix=needs)
        yield _Try((Cause.PREFIX,), (said,), Reading(crs, swap, add_easting=needs * PREFIX))
    if needs == 0 and has > 0 and _zone_number(crs.name) in (has, None):
        said = message(PREFIX_EXTRA, prefix=has)
        yield _Try((Cause.PREFIX,), (said,), Reading(crs, swap, add_easting=-has * PREFIX))
    for e, n in ((false_e, 0.0), (0.0, false_n), (false_e, false_n)):
        if (e or n) and (e, n) != (0.0, SOUTHERN):
            said = message(FALSE_ORIGIN, easting=f"{e:.0f}", northing=f"{n:.0f}")
            yield _Try((Cause.FALSE_ORIGIN,), (said,), Reading(crs, swap, add_easting=e, add_northing=n))


def _prefix(easting: np.ndarray) -> int:
    middle = float(np.median(easting[np.isfinite(easting)])) if np.isfinite(easting).any() else 0.0
    return int(middle // PREFIX) if middle > 0 else 0


def _other_zones(case: _Case, neighbours: Sequence[Any], swap: bool = False) -> Iterator[_Try]:
    """Mistakes of the zone: the same numbers, in a CRS of the same family."""
    own = _false_origin(case.crs)
    has = _prefix(case.northing if swap else case.easting)
    for crs in neighbours:
        false_e, false_n = _false_origin(crs)
        cause, text = Cause.ZONE, ZONE
        if abs(abs(false_n - own[1]) - SOUTHERN) < 1.0:
            cause, text = Cause.HEMISPHERE, HEMISPHERE_CRS
        elif _zone_number(crs.name) == _zone_number(case.crs.name) is not None and false_e != own[0]:
            cause, text = Cause.PREFIX, PREFIX_CRS
        said = message(text, crs=crs_name(crs))
        yield _Try((cause,), (said,), Reading(crs, swap))
        if false_e < PREFIX and has > 0 and _zone_number(crs.name) == has:
            both = (said, message(PREFIX_EXTRA, prefix=has))
            yield _Try((cause, Cause.PREFIX), both, Reading(crs, swap, add_easting=-has * PREFIX))


def _twice(case: _Case, neighbours: Sequence[Any]) -> List[_Try]:
    """Exchanged columns, or another unit, on top of another mistake."""
    tries = []
    exchanged = message(SWAPPED)
    for one in list(_shifts(case, case.crs, swap=True)) + list(_other_zones(case, neighbours, swap=True)):
        tries.append(_Try((Cause.SWAPPED, *one.causes), (exchanged, *one.messages), one.reading))
    for unit in _same_crs(case):
        if unit.causes == (Cause.UNIT,):
            both = replace(unit.reading, swap=True)
            tries.append(_Try((Cause.SWAPPED, Cause.UNIT), (exchanged, *unit.messages), both))
            for crs in neighbours:
                said = (*unit.messages, message(ZONE, crs=crs_name(crs)))
                tries.append(_Try((Cause.UNIT, Cause.ZONE), said, replace(unit.reading, crs=crs)))
    return tries


def _beyond_border(case: _Case, farthest: float) -> List[Suggestion]:
    if not farthest < BORDER_KM:
        return []
    _, lon, lat = _landing(case.crs, case.box, case.easting, case.northing)
    found = []
    for crs in _family(case):
        box = _box(crs)
        share = float(in_area(box, lon, lat, MARGIN_DEGREES).mean()) if box else 0.0
        if share >= ENOUGH:
            said = (message(BEYOND_BORDER, crs=crs_name(crs)),)
            found.append(Suggestion((Cause.BEYOND_BORDER,), said, share, crs, None))
    return found


def _other_systems(case: _Case) -> List[Suggestion]:
    """CRSs of the same region and unit in which the numbers land in the area of the CRS that was chosen."""
    if int(proj_version_str.split(".")[0]) < QUICK_PROJ:
        return []
    found = []
    seen = {_datum_and_projection(case.crs)}
    for info in _registered(case.box, 0.0):
        crs, box, kind, metres = _opened(info.auth_name, info.code)
        if not _alike(metres, metres_per_unit(case.crs)) or kind in seen:
            continue
        seen.add(kind)
        if box is None:
            continue
        inside, lon, lat = _landing(crs, box, case.easting, case.northing)
        share = float((inside & in_area(case.box, lon, lat, MARGIN_DEGREES)).mean())
        if share >= ENOUGH:
            said = (message(OTHER_SYSTEM, crs=crs_name(crs)),)
            found.append(Suggestion((Cause.OTHER_SYSTEM,), said, share, crs, Reading(crs)))
    return found


class _Opened(NamedTuple):
    """A CRS of the register, its area of use, what is computed on which datum, and metres in its unit."""

    crs: Any
    box: Optional[Box]
    kind: Tuple[Any, ...]
    metres: float


@lru_cache(maxsize=2048)  # opening one takes PROJ milliseconds, and a region has hundreds
def _opened(authority: str, code: str) -> _Opened:
    crs = CRS.from_authority(authority, code)
    return _Opened(crs, _box(crs), _datum_and_projection(crs), metres_per_unit(crs))


@lru_cache(maxsize=32)
def _registered(box: Box, around: float) -> Tuple[Any, ...]:
    """Projected CRSs of the EPSG register that touch ``box`` widened by ``around`` degrees, plain names first: it
    lists variants of one CRS with other axes, and the plain name is the shortest.
    """
    west, south, east, north = box
    width = (east - west) % 360.0 + 2 * around
    if width >= 360.0:
        west, east = -180.0, 180.0
    else:
        west, east = _wrapped(west - around), _wrapped(east + around)
    wide = AreaOfInterest(west, max(south - around, -90.0), east, min(north + around, 90.0))
    found = query_crs_info(auth_name="EPSG", pj_types=PJType.PROJECTED_CRS, area_of_interest=wide)
    return tuple(sorted(found, key=lambda info: (len(info.name), info.name)))


def _wrapped(lon: float) -> float:
    return (lon + 180.0) % 360.0 - 180.0


def _family(case: _Case) -> Iterator[Any]:
    """CRSs around the one chosen with the same datum, method of projection or kind of name, and unit."""
    base = case.crs.name.split(" / ")[0]
    stem, method = _stem(case.crs.name), case.crs.coordinate_operation.method_name
    seen = {_projection(case.crs)}
    for info in _registered(case.box, AROUND_DEGREES):
        name = info.name
        if name == case.crs.name or name.split(" / ")[0] != base:
            continue
        if getattr(info, "projection_method_name", method) != method and _stem(name) != stem:
            continue
        crs, _, kind, metres = _opened(info.auth_name, info.code)
        if _alike(metres, metres_per_unit(case.crs)) and kind[1:] not in seen:
            seen.add(kind[1:])
            yield crs


def _projection(crs: Any) -> Tuple[Any, ...]:
    """What is computed, without the order of the axes."""
    operation = crs.coordinate_operation
    return (operation.method_name, *((parameter.name, parameter.value) for parameter in operation.params))


def _datum_and_projection(crs: Any) -> Tuple[Any, ...]:
    return (crs.geodetic_crs.name, *_projection(crs))


def _alike(metres: float, other: float) -> bool:
    return abs(metres / other - 1.0) < 1e-9


def _stem(name: str) -> str:
    """Name of a CRS without what tells its zones apart."""
    return re.sub(r"\b(zone\s+)?[A-Z]?\d+(\.\d+)?[A-Z]?\b", "#", name)


def _zone_number(name: str) -> Optional[int]:
    found = re.search(r"zone (\d+)", name)
    return int(found.group(1)) if found else None


def _false_origin(crs: Any) -> Tuple[float, float]:
    """False easting and northing of the projection, metres; 0 where it has none."""
    operation = horizontal(crs).coordinate_operation
    east = north = 0.0
    for parameter in operation.params if operation else ():
        name = parameter.name.lower()
        if name.startswith(("false easting", "easting at")):
            east = parameter.value * parameter.unit_conversion_factor
        elif name.startswith(("false northing", "northing at")):
            north = parameter.value * parameter.unit_conversion_factor
    return east, north


def _apart(one: Any, other: Any) -> float:
    """Degrees between the middles of two areas of use, to sort by."""
    first, second = _box(one), _box(other)
    if first is None or second is None:
        return 999.0
    (w1, s1, e1, n1), (w2, s2, e2, n2) = first, second
    lon = abs(_wrapped(w1 + ((e1 - w1) % 360.0) / 2 - w2 - ((e2 - w2) % 360.0) / 2))
    return round(float(np.hypot(lon, (s1 + n1 - s2 - n2) / 2)), 2)
