"""What the job knows of its site beside the survey: check points, drawn lines, other surfaces, the user's word."""

from __future__ import annotations

import re
from dataclasses import fields, is_dataclass
from pathlib import Path
from typing import Any, Iterator, List, Optional, Tuple

import numpy as np
from pyproj import CRS
from pyproj.exceptions import CRSError

from ..georeference.base_shift import parse_position
from ..georeference.position import Kind, Landmark, landmark_of
from ..linework.geojson_file import DEGREES, parsed
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.angles import letter_of, parse_angle
from ..points.survey import read_survey
from ..quality.check_points import read_check_points
from ..units import metres_per_unit
from .settings import JobSettings

NEAR = Text("landmarks.near", QT_TRANSLATE_NOOP("core", "the place given as near"))
NOT_A_PLACE = Text(
    "landmarks.not_a_place",
    QT_TRANSLATE_NOOP(
        "core",
        "--near must be a place such as 51.45N,9.0E, an easting and northing in --crs, or a file of points or GeoJSON "
        "whose coordinates can be understood; not '{value}'.",
    ),
)
_LAYERS = (".geojson", ".json")
MOST_NODES = 2000


def landmarks_of(settings: JobSettings, crs: Optional[Any]) -> Tuple[Landmark, ...]:
    """What lies where the survey should, as far as it can be read. Raises SurveyError for a --near that is no place."""
    found: List[Optional[Landmark]] = [_near(word, crs) for word in settings.near]
    if crs is not None and settings.check_points is not None:
        found.append(_check_points(settings.check_points, crs))
    for question in settings.questions:
        for path in _paths(question):
            found.append(_of_file(path, crs))
    return tuple(one for one in found if one is not None)


def _near(word: str, crs: Optional[Any]) -> Landmark:
    path = Path(word)
    if path.is_file() or path.suffix.lower() in _LAYERS:
        layer = layer_landmark(path) if path.suffix.lower() in _LAYERS else _of_points(path, crs)
        if layer is not None:
            return layer
        raise SurveyError(NOT_A_PLACE, value=word)
    place = place_of_words(word)
    if place is not None:
        return Landmark(NEAR, Kind.LAYER, place[0], place[1], place[0], place[1])
    try:
        plan = None if crs is None else parse_position(word, "--near", crs)
    except SurveyError:
        plan = None
    found = None if plan is None else landmark_of(NEAR, Kind.LAYER, crs, [plan.first], [plan.second])
    if found is None:
        raise SurveyError(NOT_A_PLACE, value=word)
    return found


def place_of_words(text: str) -> Optional[Tuple[float, float]]:
    """Longitude and latitude of a place as people write it: 51.45N,9.0E, 51°27'N 9°E, 9.0E 51.45N, or latitude and
    longitude as plain degrees; None for anything else.
    """
    letters = re.findall(r"[NSEWO]", text.upper())
    parts = [part.strip(",;") for part in text.split()]
    if len(parts) != 2:
        parts = [part for part in re.split(r"[,;]\s*|\s*/\s*", text.strip()) if part.strip()]
    if len(parts) != 2:
        split = (
            r"(?<=[NSEWOnsewo])\s+(?=\S)"
            if len(letters) == 2 and text.strip()[-1].isalpha()
            else r"\s+(?=[NSEWOnsewo+-]|[0-9.]+$)"
        )
        parts = re.split(split, text.strip())
    if len(parts) != 2:
        return None
    sides = [letter_of(part.strip()) for part in parts]
    if not any(sides):
        values = [parse_angle(part.strip(), role) for part, role in zip(parts, ("latitude", "longitude"))]
        return None if None in values else (values[1], values[0])  # type: ignore[return-value]
    roles = ["latitude" if side in ("N", "S") else "longitude" if side else "" for side in sides]
    if set(roles) != {"latitude", "longitude"}:
        return None
    found = {role: parse_angle(part.strip(), role, "E") for part, role in zip(parts, roles)}
    return None if None in found.values() else (found["longitude"], found["latitude"])  # type: ignore[return-value]


def _of_points(path: Path, crs: Optional[Any]) -> Optional[Landmark]:
    """A file of points, whatever its form, as a landmark; None for one that cannot be read without asking."""
    try:
        read = read_survey(path, crs=crs, geographic=True, heights_of="ground")
    except SurveyError:
        return None
    if read.geographic is not None:
        lon, lat = read.geographic.longitude, read.geographic.latitude
        return Landmark(path.name, Kind.LAYER, lon.min(), lat.min(), lon.max(), lat.max())
    points = read.points
    return landmark_of(path.name, Kind.LAYER, read.own_crs or crs, points.easting, points.northing)


def _check_points(path: Path, crs: Any) -> Optional[Landmark]:
    try:
        points = read_check_points(path, crs=crs)
    except SurveyError:
        return None  # told when they are used
    return landmark_of(path.name, Kind.CONTROL, crs, points.easting, points.northing)


def _paths(question: Any) -> Iterator[Path]:
    """The files that a question names."""
    if is_dataclass(question):
        for field in fields(question):
            value = getattr(question, field.name)
            for one in value if isinstance(value, tuple) else (value,):
                if isinstance(one, Path):
                    yield one


def _of_file(path: Path, crs: Optional[Any]) -> Optional[Landmark]:
    if path.suffix.lower() in _LAYERS:
        return layer_landmark(path)
    return _mesh(path, crs) if path.suffix.lower() == ".2dm" and crs is not None else None


def layer_landmark(path: Path) -> Optional[Landmark]:
    """A GeoJSON file as a landmark; None where its coordinates cannot be understood."""
    try:
        data = parsed(path)
        places = np.array(list(_positions(data)), float)
        named = (data.get("crs") or {}).get("properties", {}).get("name", DEGREES)
        crs = CRS.from_user_input(DEGREES if "CRS84" in named else named)
    except (SurveyError, CRSError, AttributeError, TypeError, ValueError):
        return None
    if not len(places) or places.ndim != 2:
        return None
    if crs.is_geographic:
        lon, lat = places[:, 0], places[:, 1]
        if np.abs(lon).max() > 360 or np.abs(lat).max() > 90:
            return None
        return Landmark(path.name, Kind.LAYER, lon.min(), lat.min(), lon.max(), lat.max())
    metres = metres_per_unit(crs)
    return landmark_of(path.name, Kind.LAYER, crs, places[:, 0] * metres, places[:, 1] * metres)


def _positions(data: Any) -> Iterator[Tuple[float, float]]:
    """Every position in a GeoJSON object."""
    pending = [data]
    while pending:
        one = pending.pop()
        if isinstance(one, dict):
            pending += [one[key] for key in ("features", "geometry", "geometries", "coordinates") if one.get(key)]
        elif isinstance(one, list) and one and isinstance(one[0], (int, float)):
            yield float(one[0]), float(one[1])
        elif isinstance(one, list):
            pending += one


def _mesh(path: Path, crs: Any) -> Optional[Landmark]:
    """The first nodes of a mesh in 2DM, in ``crs``."""
    nodes = []
    try:
        with open(path, encoding="utf-8", errors="replace") as stream:
            for line in stream:
                words = line.split()
                if words[:1] == ["ND"] and len(words) > 3:
                    nodes.append((float(words[2]), float(words[3])))
                if len(nodes) >= MOST_NODES:
                    break
    except (OSError, ValueError):
        return None
    if not nodes:
        return None
    east, north = np.array(nodes).T * metres_per_unit(crs)
    return landmark_of(path.name, Kind.LAYER, crs, east, north)
