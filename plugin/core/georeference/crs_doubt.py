"""Whether the CRS of a survey is the right one, by what is known beside it: layers, control, logs, the file's words.

Coordinates of a neighbouring zone, or of another system that looks alike, lie within the area of use of the wrong CRS
too. What else is known of the site tells them apart.
"""

from __future__ import annotations

from typing import Any, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import Geod, Transformer
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..units import metres_per_unit
from .axes import flat, same_plan, to_lonlat
from .neighbours import area_box, family, opened, registered
from .position import QUOTED, Kind, Landmark, Nearness, Site, distance_text, site_of
from .record import crs_name
from .whereabouts import Box

FAR_OTHER = Text(
    "crs_doubt.far_other",
    QT_TRANSLATE_NOOP(
        "core",
        "The CRS is doubtful: in {crs} the points lie {distance} from {name}; in {other} the same coordinates lie "
        "{there}. Check which of them the coordinates are in.",
    ),
    weight=3,
)
FAR = Text(
    "crs_doubt.far",
    QT_TRANSLATE_NOOP(
        "core",
        "The CRS is doubtful: in {crs} the points lie {distance} from {name}. Check the CRS and the coordinates.",
    ),
    weight=3,
)
PROJECT = Text(
    "crs_doubt.project",
    QT_TRANSLATE_NOOP(
        "core",
        "The CRS is doubtful: in {crs} the points lie {distance} outside the area of use of {other}, the CRS of the "
        "project. Check which of them the coordinates are in.",
    ),
    weight=2,
)
LOOK_ALIKE = Text(
    "crs_doubt.look_alike",
    QT_TRANSLATE_NOOP(
        "core",
        "The CRS is doubtful: in {crs} the points lie {distance} beside {name}; in {other} the same coordinates lie "
        "upon it. Check which of them the coordinates are in.",
    ),
    weight=3,
)
UPON_IT = Text("crs_doubt.upon", QT_TRANSLATE_NOOP("core", "upon it"))
FROM_IT = Text("crs_doubt.from_it", QT_TRANSLATE_NOOP("core", "{distance} from it"))

#: From so many metres on a landmark of the same site, or a layer, is far enough to look for another CRS; and to be told
#: though no other CRS is found. Common practice, no source.
LOOK = {True: 300.0, False: 5_000.0}
TELL = {True: 3_000.0, False: 50_000.0}
#: Another CRS explains it where it leaves less than this share of the distance.
CLOSER = 0.1
#: Boxes that share less of their area lie beside each other, and more upon each other; both are larger than so many
#: degrees, and another datum moves them by no more.
BESIDE, UPON, LEAST, NEAR_DEGREES = 0.5, 0.8, 2e-4, 0.03
_EARTH = Geod(ellps="WGS84")


class Found(NamedTuple):
    """Another CRS in which the same numbers lie close to a landmark."""

    crs: Any
    near: Nearness


def doubts(
    crs: Optional[Any], easting: np.ndarray, northing: np.ndarray, landmarks: Sequence[Landmark]
) -> Tuple[Message, ...]:
    """What to say of the CRS of plan coordinates (n,), metres, beside ``landmarks``."""
    site = site_of(crs, easting, northing)
    if site is None:
        return ()
    said: List[Message] = []
    for same in (True, False):
        near = site.beside([one for one in landmarks if one.kind.same_site is same])
        if not near or near[0].metres < LOOK[same]:
            continue
        if said:
            break  # once is enough
        nearest = near[0]
        name: Any = nearest.landmark.name
        name = message(QUOTED, name=name) if isinstance(name, str) else name
        values = {"crs": crs_name(crs), "distance": distance_text(nearest.metres), "name": name}
        found = another_crs(crs, easting, northing, [one.landmark for one in near], nearest.metres)
        if found is not None:
            there = (
                message(UPON_IT)
                if found.near.metres == 0.0
                else message(FROM_IT, distance=distance_text(found.near.metres))
            )
            said.append(message(FAR_OTHER, other=crs_name(found.crs), there=there, **values))
        elif nearest.metres >= TELL[same]:
            said.append(message(FAR, **values))
    return tuple(said) or _look_alike(site, easting, northing, landmarks)


def _look_alike(
    site: Site, easting: np.ndarray, northing: np.ndarray, landmarks: Sequence[Landmark]
) -> Tuple[Message, ...]:
    """What to say where the points lie beside a landmark as large as the site, and in another CRS upon it: that of
    another datum, some hundred metres away.
    """
    alike = [one for one in landmarks if _as_large(site, one)]
    if not alike:
        return ()
    good = np.isfinite(easting) & np.isfinite(northing)
    few = np.flatnonzero(good)[:: max(1, int(good.sum()) // 200)]
    here = _on_wgs84(flat(site.crs), easting[few], northing[few])
    if here is None or any(_shared(here, one) > BESIDE for one in landmarks):
        return ()
    best: Optional[Tuple[float, Any, Landmark]] = None
    for other in _registered(flat(site.crs), alike):
        if not _lies_at(other, easting[few[0]], northing[few[0]], site):
            continue
        there = _on_wgs84(other, easting[few], northing[few])
        for one in alike:
            share = 0.0 if there is None else _shared(there, one)
            if share > UPON and (best is None or share > best[0]):
                best = (share, other, one)
    if best is None:
        return ()
    _, other, one = best
    name: Any = message(QUOTED, name=one.name) if isinstance(one.name, str) else one.name
    middle = ((here[0] + here[2]) / 2.0, (here[1] + here[3]) / 2.0)
    away = _EARTH.inv(*middle, (one.west + one.east) / 2.0, (one.south + one.north) / 2.0)[2]
    return (
        message(LOOK_ALIKE, crs=crs_name(site.crs), distance=distance_text(away), name=name, other=crs_name(other)),
    )


def _on_wgs84(crs: Any, easting: np.ndarray, northing: np.ndarray) -> Optional[Box]:
    """West, south, east, north around plan coordinates (n,), metres, on the datum of logs and most layers."""
    try:
        to_world = Transformer.from_crs(crs, "EPSG:4326", always_xy=True)
        lon, lat = to_world.transform(easting / metres_per_unit(crs), northing / metres_per_unit(crs))
    except ProjError:
        return None
    if not (np.isfinite(lon).all() and np.isfinite(lat).all()):
        return None
    edges = [np.quantile(values, [0.02, 0.98]) for values in (lon, lat)]
    return float(edges[0][0]), float(edges[1][0]), float(edges[0][1]), float(edges[1][1])


def _as_large(site: Site, one: Landmark) -> bool:
    """Whether a landmark is about as large as the site in both directions."""
    mine = (site.box[2] - site.box[0], site.box[3] - site.box[1])
    theirs = ((one.east - one.west) % 360.0, one.north - one.south)
    return all(a > LEAST and b > LEAST and 0.5 < a / b < 2.0 for a, b in zip(mine, theirs))


def _shared(box: Box, one: Landmark) -> float:
    """Area that the boxes share over that of both together."""
    west, south, east, north = box
    wide = min(east, one.east) - max(west, one.west)
    high = min(north, one.north) - max(south, one.south)
    if wide <= 0.0 or high <= 0.0:
        return 0.0
    both = (east - west) * (north - south) + (one.east - one.west) * (one.north - one.south)
    return wide * high / (both - wide * high)


def _lies_at(crs: Any, easting: float, northing: float, site: Site) -> bool:
    """Whether a point of ``crs`` lies within some kilometres of the site."""
    try:
        lon, lat = (float(values[0]) for values in to_lonlat(crs, [easting], [northing]))
    except ProjError:
        return False
    return abs(lon - site.lon) * np.cos(np.radians(site.lat)) < NEAR_DEGREES and abs(lat - site.lat) < NEAR_DEGREES


def another_crs(
    crs: Any, easting: np.ndarray, northing: np.ndarray, landmarks: Sequence[Landmark], metres: float
) -> Optional[Found]:
    """The CRS in which the same numbers lie closest to one of ``landmarks``, much closer than ``metres``: a zone of the
    same family, and only where there is none any other."""
    good = np.isfinite(easting) & np.isfinite(northing)
    few = np.flatnonzero(good)[:: max(1, int(good.sum()) // 200)]
    plan = flat(crs)
    for candidates in (_zones(plan), _registered(plan, landmarks)):
        best: Optional[Found] = None
        for other in candidates:
            site = site_of(other, easting[few], northing[few])
            if site is None or not _within(site, other):
                continue
            near = site.beside(landmarks)[0]
            if near.metres < CLOSER * metres and (best is None or near.metres < best.near.metres):
                best = Found(other, near)
        if best is not None:
            return best
    return None


def _zones(plan: Any) -> Iterator[Any]:
    """Zones of the same family."""
    box = area_box(plan)
    if box is not None and plan.coordinate_operation is not None:
        yield from family(plan, box)


def _registered(plan: Any, landmarks: Sequence[Landmark]) -> Iterator[Any]:
    """Whatever is registered where the landmarks are, in the same unit."""
    metres = plan.axis_info[0].unit_conversion_factor
    seen = set()
    for one in landmarks[:3]:
        for info in registered((one.west, one.south, one.east, one.north), 0.0):
            if (info.auth_name, info.code) in seen:
                continue
            seen.add((info.auth_name, info.code))
            other = opened(info.auth_name, info.code)
            if abs(other.metres / metres - 1.0) < 1e-4 and not same_plan(other.crs, plan):
                yield other.crs


def _within(site: Site, crs: Any) -> bool:
    box = area_box(crs)
    if box is None:
        return True
    west, south, east, north = box
    along = (site.lon - west + 1.0) % 360.0
    return along <= (east - west) % 360.0 + 2.0 and south - 1.0 <= site.lat <= north + 1.0


def project_box(project: Optional[Any]) -> Optional[Box]:
    """The area of use of the projected CRS of a project, None where it says nothing of where a site lies."""
    box = None if project is None or not project.is_projected else area_box(flat(project))
    # Worldwide ones tell nothing.
    return box if box is not None and 0.0 < (box[2] - box[0]) % 360.0 <= 90.0 else None


def project_doubt(site: Optional[Site], project: Optional[Any]) -> Tuple[Message, ...]:
    """What to say where a site lies outside the area of use of the projected CRS of the project."""
    box = project_box(project)
    if site is None or project is None or box is None:
        return ()
    near = site.beside([Landmark("", Kind.LAYER, *box)])[0]
    if near.metres < TELL[False]:
        return ()
    return (message(PROJECT, crs=crs_name(site.crs), distance=distance_text(near.metres), other=crs_name(project)),)
