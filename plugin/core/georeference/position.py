"""Where a site is, in words: latitude, longitude, the area of its CRS, and how far what is known already lies from it.

Positions are degrees on whatever datum they came in; the hundreds of metres between datums are nothing here.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Any, List, NamedTuple, Optional, Sequence, Tuple, Union

import numpy as np
from pyproj import Geod
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, Text, message
from .axes import computed, flat, to_lonlat

Name = Union[str, Text]

AT = Text("position.at", QT_TRANSLATE_NOOP("core", "{lat}° {north}, {lon}° {east}"))
AT_IN = Text("position.at_in", QT_TRANSLATE_NOOP("core", "{lat}° {north}, {lon}° {east}, in {crs} (for: {area})"))
AT_OF = Text("position.at_of", QT_TRANSLATE_NOOP("core", "{lat}° {north}, {lon}° {east}, in {crs}"))
BESIDE = Text("position.beside", QT_TRANSLATE_NOOP("core", "{place}; {name} is {distance} away at {bearing}°"))
UPON = Text("position.upon", QT_TRANSLATE_NOOP("core", "{place}; it overlaps {name}"))
NOWHERE = Text("position.nowhere", QT_TRANSLATE_NOOP("core", "nowhere on the Earth in {crs}"))
NOT_KNOWN = Text("position.not_known", QT_TRANSLATE_NOOP("core", "in {crs}, which PROJ cannot compute here"))
LOCAL = Text("position.local", QT_TRANSLATE_NOOP("core", "a local grid: where it lies on the Earth is not known"))
NORTH = Text("position.n", QT_TRANSLATE_NOOP("core", "N"))
SOUTH = Text("position.s", QT_TRANSLATE_NOOP("core", "S"))
EAST = Text("position.e", QT_TRANSLATE_NOOP("core", "E"))
WEST = Text("position.w", QT_TRANSLATE_NOOP("core", "W"))
THE_CONTROL = Text("position.control", QT_TRANSLATE_NOOP("core", "the control"))
QUOTED = Text("position.quoted", QT_TRANSLATE_NOOP("core", "“{name}”"))

#: So many of what is known are told, the nearest first.
MOST_TOLD = 3
#: Of more points every second, third and so on tells where a site is.
_MANY = 100_000
_EARTH = Geod(ellps="WGS84")


class Kind(Enum):
    """What a landmark is. Control, logs and other files are of the same site, layers need not be."""

    CONTROL = "control"
    FILE = "file"
    LAYER = "layer"

    @property
    def same_site(self) -> bool:
        return self is not Kind.LAYER


@dataclass(frozen=True)
class Landmark:
    """Something whose place is known: a layer of the project, control, a receiver log.

    ``name``: to tell it by. ``west`` to ``north``: degrees around it.
    """

    name: Name
    kind: Kind
    west: float
    south: float
    east: float
    north: float


class Nearness(NamedTuple):
    """How a landmark lies from a site: metres between the two boxes (0 where they overlap), and the bearing from the
    middle of the one to that of the other, degrees from north."""

    landmark: Landmark
    metres: float
    bearing: float


@dataclass(frozen=True)
class Site:
    """Where points are. ``lon``, ``lat``: their middle (medians), degrees; ``box``: west, south, east, north around
    all but the outermost of them. ``crs``: in which they are."""

    lon: float
    lat: float
    box: Tuple[float, float, float, float]
    crs: Any

    def beside(self, landmarks: Sequence[Landmark]) -> List[Nearness]:
        """How the landmarks lie from it, the nearest first."""
        found = [_nearness(self, one) for one in landmarks]
        return sorted(found, key=lambda one: one.metres)

    def told(self, landmarks: Sequence[Landmark] = ()) -> Message:
        """Where it is, in words."""
        said = message(AT_IN if area_name(self.crs) else AT_OF, crs=self.crs.name, area=area_name(self.crs),
                       **lat_lon(self.lat, self.lon))  # fmt: skip
        return with_landmarks(said, self.beside(landmarks)[:MOST_TOLD])


def site_of(crs: Optional[Any], easting: np.ndarray, northing: np.ndarray) -> Optional[Site]:
    """The site of plan coordinates (n,) in metres; None on a local grid, and where there are none on the Earth."""
    good = np.flatnonzero(np.isfinite(easting) & np.isfinite(northing))
    if crs is None or not len(good):
        return None
    good = good[:: max(1, len(good) // _MANY)]
    east, north = easting[good], northing[good]
    corners = np.array([np.quantile(values, [0.02, 0.5, 0.98]) for values in (east, north)])
    # Medians of each coordinate, the middle, and the corners of what is around it.
    x = np.array([corners[0, 1], *corners[0, [0, 0, 2, 2]]])
    y = np.array([corners[1, 1], *corners[1, [0, 2, 0, 2]]])
    try:
        lon, lat = to_lonlat(crs, x, y)
    except ProjError:
        return None
    if not (np.isfinite(lon).all() and np.isfinite(lat).all()) or abs(lat).max() > 90.0:
        return None
    lon = lon[0] + (lon - lon[0] + 180.0) % 360.0 - 180.0
    box = (float(lon.min()), float(lat.min()), float(lon.max()), float(lat.max()))
    return Site(float(lon[0]), float(lat[0]), box, crs)


def landmark_of(name: Name, kind: Kind, crs: Optional[Any], easting: Any, northing: Any) -> Optional[Landmark]:
    """Plan coordinates (n,) in metres as a landmark; None where they are nowhere."""
    site = site_of(crs, np.asarray(easting, float), np.asarray(northing, float))
    return None if site is None else Landmark(name, kind, *site.box)


def place_said(crs: Optional[Any], easting: Any, northing: Any, landmarks: Sequence[Landmark] = ()) -> Message:
    """Where plan coordinates (n,) in metres put a site, in words."""
    if crs is None:
        return message(LOCAL)
    if not computed(crs):
        return message(NOT_KNOWN, crs=crs.name)
    site = site_of(crs, np.asarray(easting, float), np.asarray(northing, float))
    return message(NOWHERE, crs=crs.name) if site is None else site.told(landmarks)


def degrees_said(lon: float, lat: float, landmarks: Sequence[Landmark] = ()) -> Message:
    """The same for a position in degrees, without a CRS."""
    site = Site(lon, lat, (lon, lat, lon, lat), None)
    return with_landmarks(message(AT, **lat_lon(lat, lon)), site.beside(landmarks)[:MOST_TOLD])


def with_landmarks(said: Message, near: Sequence[Nearness]) -> Message:
    for one in near:
        name = message(QUOTED, name=one.landmark.name) if isinstance(one.landmark.name, str) else one.landmark.name
        if one.metres == 0.0:
            said = message(UPON, place=said, name=name)
        else:
            said = message(
                BESIDE, place=said, name=name, distance=distance_text(one.metres),
                bearing=Figure(f"{one.bearing % 360.0:.0f}"),
            )  # fmt: skip
    return said


def distance_text(metres: float) -> Figure:
    """Metres or kilometres, to about three digits."""
    if metres < 995.0:
        return Figure(f"{metres:.0f} m")
    kilometres = metres / 1000.0
    return Figure(f"{kilometres:.1f} km" if kilometres < 100 else f"{kilometres:.0f} km")


def lat_lon(lat: float, lon: float) -> Any:
    """The gaps of a sentence with a position."""
    lon = (lon + 180.0) % 360.0 - 180.0
    return {
        "lat": Figure(f"{abs(lat):.5f}"), "north": NORTH if lat >= 0 else SOUTH,
        "lon": Figure(f"{abs(lon):.5f}"), "east": EAST if lon >= 0 else WEST,
    }  # fmt: skip


def area_name(crs: Optional[Any]) -> str:
    """What the register calls the area of use of ``crs``, in short; "" for none."""
    area = None if crs is None else (crs.area_of_use or flat(crs).area_of_use)
    if area is None:
        return ""
    name = str(area.name or "").split(":")[0].split(" - ")[0].split(". ")[0].rstrip(". ")
    return name if len(name) <= 70 else name[:69].rstrip() + "…"


def _nearness(site: Site, one: Landmark) -> Nearness:
    """Between the two boxes on the ellipsoid, where each comes nearest to the other."""
    west, south, east, north = site.box
    middle = one.west + ((one.east - one.west) % 360.0) / 2.0
    turn = (middle - site.lon + 180.0) % 360.0 - 180.0 - (middle - site.lon)
    their_west, their_east = one.west + turn, one.west + turn + (one.east - one.west) % 360.0
    lon = _gap((west, east), (their_west, their_east))
    lat = _gap((south, north), (one.south, one.north))
    metres = 0.0
    if lon[0] != lon[1] or lat[0] != lat[1]:
        metres = abs(float(_EARTH.inv(lon[0], lat[0], lon[1], lat[1])[2]))
    bearing = float(_EARTH.inv(site.lon, site.lat, middle, (one.south + one.north) / 2.0)[0])
    return Nearness(one, metres, bearing % 360.0)


def _gap(mine: Tuple[float, float], theirs: Tuple[float, float]) -> Tuple[float, float]:
    """Where two ranges come nearest: equal where they overlap."""
    if mine[1] < theirs[0]:
        return mine[1], theirs[0]
    if theirs[1] < mine[0]:
        return mine[0], theirs[1]
    both = (max(mine[0], theirs[0]) + min(mine[1], theirs[1])) / 2.0
    return both, both
