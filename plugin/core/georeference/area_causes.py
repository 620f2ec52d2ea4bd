"""What may have happened to coordinates that lie outside the area of use of their CRS: each mistake is tried."""

from __future__ import annotations

import warnings
from dataclasses import dataclass, replace
from enum import Enum
from typing import Any, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import Proj, proj_version_str
from pyproj.exceptions import ProjError

from ..messages import Message, message
from ..units import WORKING_UNITS, LengthUnit, metres_per_unit
from .causes_said import (
    BEYOND_BORDER,
    DEGREES,
    DEGREES_SWAPPED,
    FALSE_ORIGIN,
    HEMISPHERE_ADD,
    HEMISPHERE_CRS,
    HEMISPHERE_TAKE,
    OTHER_SYSTEM,
    PREFIX_CRS,
    PREFIX_EXTRA,
    PREFIX_MISSING,
    REDUCED,
    SWAPPED,
    UNIT,
    ZONE,
)
from .neighbours import (
    alike,
    area_box,
    datum_and_projection,
    degrees_apart,
    false_origin,
    family,
    opened,
    registered,
    stem_of,
    zone_number,
)
from .record import crs_name
from .whereabouts import Box, in_area

#: Boxes of the register are given to 0.01 degrees.
MARGIN_DEGREES = 0.01
#: Share of the points outside that a suggestion must bring inside; the others stay as they are.
ENOUGH = 0.5
MOST = 8
NEAR_BORDER_KM = 100.0
BORDER_KM = 300.0
#: PROJ 7 takes half a minute to open the hundreds of CRSs of a region, later ones a second.
QUICK_PROJ = 8
SOUTHERN = 10_000_000.0
PREFIX = 1_000_000.0


class Cause(Enum):
    """Why points may fall outside the area of use; the likelier first."""

    REDUCED = "reduced"
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


class Case(NamedTuple):
    """What the tries need: the CRS, its box, coordinates in metres of a sample outside, unit as read; ``near``: boxes
    of what is known to lie near the site.
    """

    crs: Any
    box: Box
    easting: np.ndarray
    northing: np.ndarray
    unit: LengthUnit
    near: Tuple[Box, ...] = ()


class _Try(NamedTuple):
    causes: Tuple[Cause, ...]
    messages: Tuple[Message, ...]
    reading: Reading


def landing(
    crs: Any, box: Sequence[float], easting: np.ndarray, northing: np.ndarray, margin: float = MARGIN_DEGREES
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Mask of the points inside ``box``, their longitudes and latitudes; nan where there is none.

    Far from where a projection holds, PROJ may return a place that does not project back: that is none.
    """
    metres = metres_per_unit(crs)
    try:
        # Good to a millimetre, and ten times quicker to make than a Transformer where PROJ is old.
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # that a CRS has no PROJ string; it is told otherwise
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


def suggest(case: Case, farthest: float) -> Tuple[Suggestion, ...]:
    found = _as_degrees(case) + _beyond_border(case, farthest)
    neighbours = list(family(case.crs, case.box))
    singles = list(_same_crs(case)) + list(_other_zones(case, neighbours))
    found += _that_fit(case, singles)
    if not found:
        found += _that_fit(case, _twice(case, neighbours))
    if not found:
        found += _other_systems(case)
    ranked = sorted(found, key=lambda one: _rank(case, one, farthest))
    return tuple(one for i, one in enumerate(ranked) if not any(_same(one, other) for other in ranked[:i]))[:MOST]


def _same(one: Suggestion, other: Suggestion) -> bool:
    """Whether two suggestions bring the coordinates to the same place."""
    return one.reading is not None and other.reading is not None and one.reading == other.reading


def _rank(case: Case, one: Suggestion, farthest: float) -> Tuple[Any, ...]:
    likely = max(_LIKELY[cause] for cause in one.causes)
    if one.causes == (Cause.BEYOND_BORDER,) and farthest < NEAR_BORDER_KM:
        likely = -1
    stem = 0 if stem_of(one.crs.name) == stem_of(case.crs.name) else 1
    other_number = zone_number(one.crs.name) != zone_number(case.crs.name)
    apart = degrees_apart(case.crs, one.crs)
    return (one.share < 0.99, len(one.causes), likely, stem, other_number, apart, len(one.crs.name), one.crs.name)


def _that_fit(case: Case, tries: Sequence[_Try]) -> List[Suggestion]:
    fitting = []
    for one in tries:
        box = area_box(one.reading.crs)
        if box is None:
            continue
        share = float(landing(one.reading.crs, box, *one.reading.of(case.easting, case.northing))[0].mean())
        if share >= ENOUGH:
            fitting.append(Suggestion(one.causes, one.messages, share, one.reading.crs, one.reading))
    return fitting


def _as_degrees(case: Case) -> List[Suggestion]:
    first, second = case.easting / case.unit.metres, case.northing / case.unit.metres
    found = []
    for lon, lat, text in ((first, second, DEGREES), (second, first, DEGREES_SWAPPED)):
        if np.abs(lon).max() > 180.0 or np.abs(lat).max() > 90.0:
            continue
        share = float(in_area(case.box, lon, lat, MARGIN_DEGREES).mean())
        if share >= ENOUGH:
            found.append(Suggestion((Cause.DEGREES,), (message(text),), share, case.crs.geodetic_crs, None))
    return found


def _same_crs(case: Case) -> Iterator[_Try]:
    """Mistakes that leave the CRS as it is."""
    crs = case.crs
    yield _Try((Cause.SWAPPED,), (message(SWAPPED),), Reading(crs, swap=True))
    for unit in WORKING_UNITS:
        if abs(unit.metres / case.unit.metres - 1.0) > 1e-3:
            said = message(UNIT, unit=unit.symbol, assumed=case.unit.symbol)
            yield _Try((Cause.UNIT,), (said,), Reading(crs, factor=unit.metres / case.unit.metres))
    yield from _shifts(case, crs)
    if case.near:
        yield from _reduced(case, case.near[0])


def _reduced(case: Case, near: Box) -> Iterator[_Try]:
    """Coordinates without their leading digits: those with which they lie closest to what is known."""
    metres = metres_per_unit(case.crs)
    lon = near[0] + (near[2] - near[0]) % 360.0 / 2.0
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            there = Proj(case.crs)(lon, (near[1] + near[3]) / 2.0)
    except ProjError:
        return
    add = []
    for values, target in ((case.easting, there[0]), (case.northing, there[1])):
        size = 10.0 ** np.ceil(np.log10(max(float(np.abs(values).max()) / metres, 100.0)))
        away = target - float(np.median(values)) / metres
        add.append(float(np.round(away / size)) * size * metres + 0.0 if np.isfinite(away) else 0.0)
    if any(add):
        said = message(REDUCED, easting=f"{add[0] + 0.0:.0f}", northing=f"{add[1] + 0.0:.0f}")
        yield _Try((Cause.REDUCED,), (said,), Reading(case.crs, add_easting=add[0], add_northing=add[1]))


def _shifts(case: Case, crs: Any, swap: bool = False) -> Iterator[_Try]:
    for add, text in ((SOUTHERN, HEMISPHERE_ADD), (-SOUTHERN, HEMISPHERE_TAKE)):
        yield _Try((Cause.HEMISPHERE,), (message(text),), Reading(crs, swap, add_northing=add))
    false_e, false_n = false_origin(crs)
    has, needs = _prefix(case.northing if swap else case.easting), int(false_e // PREFIX)
    if needs > 0 and has == 0:
        said = message(PREFIX_MISSING, prefix=needs)
        yield _Try((Cause.PREFIX,), (said,), Reading(crs, swap, add_easting=needs * PREFIX))
    if needs == 0 and has > 0 and zone_number(crs.name) in (has, None):
        said = message(PREFIX_EXTRA, prefix=has)
        yield _Try((Cause.PREFIX,), (said,), Reading(crs, swap, add_easting=-has * PREFIX))
    for e, n in dict.fromkeys(((false_e, 0.0), (0.0, false_n), (false_e, false_n))):
        if (e or n) and (e, n) != (0.0, SOUTHERN):
            said = message(FALSE_ORIGIN, easting=f"{e:.0f}", northing=f"{n:.0f}")
            yield _Try((Cause.FALSE_ORIGIN,), (said,), Reading(crs, swap, add_easting=e, add_northing=n))


def _prefix(easting: np.ndarray) -> int:
    middle = float(np.median(easting[np.isfinite(easting)])) if np.isfinite(easting).any() else 0.0
    return int(middle // PREFIX) if middle > 0 else 0


def _other_zones(case: Case, neighbours: Sequence[Any], swap: bool = False) -> Iterator[_Try]:
    """Mistakes of the zone: the same numbers, in a CRS of the same family."""
    own = false_origin(case.crs)
    has = _prefix(case.northing if swap else case.easting)
    for crs in neighbours:
        false_e, false_n = false_origin(crs)
        cause, text = Cause.ZONE, ZONE
        if abs(abs(false_n - own[1]) - SOUTHERN) < 1.0:
            cause, text = Cause.HEMISPHERE, HEMISPHERE_CRS
        elif zone_number(crs.name) == zone_number(case.crs.name) is not None and false_e != own[0]:
            cause, text = Cause.PREFIX, PREFIX_CRS
        said = message(text, crs=crs_name(crs))
        yield _Try((cause,), (said,), Reading(crs, swap))
        if false_e < PREFIX and has > 0 and zone_number(crs.name) == has:
            both = (said, message(PREFIX_EXTRA, prefix=has))
            yield _Try((cause, Cause.PREFIX), both, Reading(crs, swap, add_easting=-has * PREFIX))


def _twice(case: Case, neighbours: Sequence[Any]) -> List[_Try]:
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


def _beyond_border(case: Case, farthest: float) -> List[Suggestion]:
    if not farthest < BORDER_KM:
        return []
    _, lon, lat = landing(case.crs, case.box, case.easting, case.northing)
    found = []
    for crs in family(case.crs, case.box):
        box = area_box(crs)
        share = float(in_area(box, lon, lat, MARGIN_DEGREES).mean()) if box else 0.0
        if share >= ENOUGH:
            said = (message(BEYOND_BORDER, crs=crs_name(crs)),)
            found.append(Suggestion((Cause.BEYOND_BORDER,), said, share, crs, None))
    return found


def _other_systems(case: Case) -> List[Suggestion]:
    """CRSs of the same region and unit in which the numbers land in the area of the CRS that was chosen."""
    if int(proj_version_str.split(".")[0]) < QUICK_PROJ:
        return []
    found = []
    seen = {datum_and_projection(case.crs)}
    for info in registered(case.box, 0.0):
        crs, box, kind, metres = opened(info.auth_name, info.code)
        if not alike(metres, metres_per_unit(case.crs)) or kind in seen:
            continue
        seen.add(kind)
        if box is None:
            continue
        inside, lon, lat = landing(crs, box, case.easting, case.northing)
        share = float((inside & in_area(case.box, lon, lat, MARGIN_DEGREES)).mean())
        if share >= ENOUGH:
            said = (message(OTHER_SYSTEM, crs=crs_name(crs)),)
            found.append(Suggestion((Cause.OTHER_SYSTEM,), said, share, crs, Reading(crs)))
    return found
