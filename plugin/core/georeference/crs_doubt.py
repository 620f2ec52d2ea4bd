"""Whether the CRS of a survey is the right one, by what is known beside it: layers, control, logs, the file's words.

Coordinates of a neighbouring zone, or of another system that looks alike, lie within the area of use of the wrong CRS
too. What else is known of the site tells them apart.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Iterator, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import CRS
from pyproj.exceptions import CRSError

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .axes import flat, same_plan
from .neighbours import area_box, family, opened, registered, zone_number
from .position import QUOTED, Kind, Landmark, Nearness, Site, distance_text, site_of
from .record import crs_name

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
SAID = Text(
    "crs_doubt.said",
    QT_TRANSLATE_NOOP(
        "core", "The CRS is doubtful: {file} itself says “{words}”, and {crs} was chosen. Check which of them it is."
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
UPON_IT = Text("crs_doubt.upon", QT_TRANSLATE_NOOP("core", "upon it"))
FROM_IT = Text("crs_doubt.from_it", QT_TRANSLATE_NOOP("core", "{distance} from it"))

#: From so many metres on a landmark of the same site, or a layer, is far enough to look for another CRS; and to be told
#: though no other CRS is found. Common practice, no source.
LOOK = {True: 300.0, False: 5_000.0}
TELL = {True: 3_000.0, False: 50_000.0}
#: Another CRS explains it where it leaves less than this share of the distance.
CLOSER = 0.1
HEAD_BYTES = 65536
_ZONE = re.compile(
    r"\b(?:UTM|GK|MGA|zone|fuseau|Streifen|huso)\b[ _/:=-]*(?:zone[ _:=-]*)?(\d{1,2}) ?[NSU]?\b", re.IGNORECASE
)


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
    return tuple(said)


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


# What the file says itself


def said_in_file(path: str, crs: Optional[Any]) -> Tuple[Message, ...]:
    """What to say where the first lines of a file name another CRS, or a zone, than ``crs``."""
    if crs is None or not Path(path).is_file():
        return ()
    with open(path, "rb") as stream:
        head = stream.read(HEAD_BYTES)
    text = head.decode("utf-8", "replace").replace("\x00", "")
    for words, other in _named(text):
        if other is not None and not same_plan(other, crs):
            return (message(SAID, file=Path(path).name, words=words, crs=crs_name(crs)),)
        if other is None and zone_number(crs.name) not in (None, _number(words)):
            return (message(SAID, file=Path(path).name, words=words, crs=crs_name(crs)),)
    return ()


def _named(text: str) -> Iterator[Tuple[str, Optional[Any]]]:
    """Words of the first lines that name a CRS, with that CRS; None where only a zone is named."""
    lines = [line for line in text.splitlines()[:40] if re.search(r"[A-Za-z]{3}", line)]
    for line in lines:
        for found in re.finditer(r"\bEPSG\s*[:=]{0,2}\s*(\d{4,6})\b", line, re.IGNORECASE):
            try:
                other = CRS.from_epsg(int(found.group(1)))
            except CRSError:
                continue
            if other.is_projected:
                yield found.group(0), other
        zone = _ZONE.search(line)
        if zone and 1 <= int(zone.group(1)) <= 60:
            yield zone.group(0), None


def _number(words: str) -> int:
    found = re.search(r"\d+", words)
    return int(found.group(0)) if found else 0


def project_doubt(site: Optional[Site], project: Optional[Any]) -> Tuple[Message, ...]:
    """What to say where a site lies outside the area of use of the projected CRS of the project."""
    if site is None or project is None or not project.is_projected:
        return ()
    box = area_box(flat(project))
    if box is None or not 0.0 < (box[2] - box[0]) % 360.0 <= 90.0:  # worldwide ones tell nothing
        return ()
    near = site.beside([Landmark("", Kind.LAYER, *box)])[0]
    if near.metres < TELL[False]:
        return ()
    return (message(PROJECT, crs=crs_name(site.crs), distance=distance_text(near.metres), other=crs_name(project)),)
