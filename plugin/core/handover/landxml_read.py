"""LandXML read as a stream: points, surfaces and alignments with units and CRS.

What is read is the open standard LandXML 1.2 (1.0 and 1.1 have the same elements, as far as these are used; from
memory). Elements of other kinds, such as parcels and pipe networks, are passed over. Files with a document type or
entities are refused; see :mod:`.landxml_parser`. A file is read to its end before anything of it is handed over.
"""

from __future__ import annotations

import re
from typing import Any, Dict, List, Optional, Tuple

import numpy as np

from ..files import PathLike
from ..messages import Message, SurveyError, message
from ..points.pointset import PointSet, make_points
from ..progress import Progress, part, silent
from ..units import LengthUnit
from .landxml_alignments import AlignmentMaker, AlignmentNode, RawAlignment
from .landxml_model import LandSurface, LandXml
from .landxml_parser import Node, Place, parse
from .landxml_surfaces import RawSurface, SurfaceNode, in_metres, make_surface
from .landxml_texts import NAME_TWICE, NOT_LANDXML, NOTHING, OTHER_VERSION, UNKNOWN_REFERENCE
from .landxml_units import Scale, UnitsSaid, crs_of, feet_differ, scale_of

_ROOT = re.compile(r"(?:http://www\.landxml\.org/schema/LandXML-1\.[0-2] )?LandXML")
_VERSION = re.compile(r"1\.[0-2]")


class RawPoint:
    """A ``CgPoint``: northing, easting and perhaps elevation, or the name of another point."""

    def __init__(self, attributes: Dict[str, str], group: str, line: int) -> None:
        self.name = attributes.get("name", "").strip()
        self.code = attributes.get("code", "").strip()
        self.description = attributes.get("desc", "").strip()
        self.reference = attributes.get("pntRef", "").strip()
        self.group, self.line = group, line
        self.values: List[float] = []


class _Document(Node):
    """The whole file, and ``LandXML`` within it."""

    def __init__(self, place: Place) -> None:
        self.place = place
        self.units: List[UnitsSaid] = []
        self.crs: Dict[str, str] = {}
        self.crs_line = 0
        self.project = ""
        self.points: List[RawPoint] = []
        self.surfaces: List[RawSurface] = []
        self.alignments: List[RawAlignment] = []

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if not _ROOT.fullmatch(name):
            namespace, _, local = name.rpartition(" ")
            if local == "LandXML":
                raise self.place.error(OTHER_VERSION, found=namespace[-40:])
            raise self.place.error(NOT_LANDXML, found=local[:40])
        version = attributes.get("version", "1.2").strip()
        if not _VERSION.fullmatch(version):
            raise self.place.error(OTHER_VERSION, found=version[:40])
        return _Top(self)


class _Top(Node):
    """``LandXML`` and the elements that only group others."""

    def __init__(self, document: _Document) -> None:
        self.document, self.place = document, document.place

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        document, line = self.document, self.place.line
        if name in ("Units", "Surfaces", "Alignments"):
            return self
        if name in ("Metric", "Imperial"):
            linear = self.place.needed(name, attributes, "linearUnit")
            document.units.append(UnitsSaid(name, linear, attributes.get("elevationUnit", "").strip(), line))
        elif name == "CoordinateSystem":
            document.crs, document.crs_line = attributes, line
        elif name == "Project":
            document.project = attributes.get("name", "").strip()
        elif name == "CgPoints":
            return _PointsNode(document, attributes.get("name", "").strip())
        elif name == "Surface":
            title = self.place.needed(name, attributes, "name")
            document.surfaces.append(RawSurface(title, attributes.get("desc", "").strip(), line))
            return SurfaceNode(document.surfaces[-1], self.place)
        elif name == "Alignment":
            title = self.place.needed(name, attributes, "name")
            start = self.place.number(name, attributes, "staStart", 0.0)
            document.alignments.append(RawAlignment(title, attributes.get("desc", "").strip(), start, line))
            return AlignmentNode(document.alignments[-1], self.place)
        return None


class _PointsNode(Node):
    def __init__(self, document: _Document, group: str) -> None:
        self.document, self.group = document, group

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if name == "CgPoints":  # groups may hold groups
            return _PointsNode(self.document, attributes.get("name", "").strip() or self.group)
        if name != "CgPoint":
            return None
        point = RawPoint(attributes, self.group, self.document.place.line)
        self.document.points.append(point)
        return _PointNode(point, self.document.place)


class _PointNode(Node):
    wants_text = True

    def __init__(self, point: RawPoint, place: Place) -> None:
        self.point, self.place = point, place

    def close(self, text: str) -> None:
        if not (self.point.reference and not text.strip()):
            self.point.values = self.place.numbers("CgPoint", text, 2, 3)


def read_landxml(
    path: PathLike,
    crs: Optional[Any] = None,
    unit: Optional[LengthUnit] = None,
    height_unit: Optional[LengthUnit] = None,
    progress: Progress = silent,
) -> LandXml:
    """All surfaces, points and alignments of the LandXML file ``path``, in metres.

    ``crs``: pyproj CRS that the user says the coordinates are in, None for that of the file; ``unit``, ``height_unit``:
    as the user says, None for the file's. Raises SurveyError, naming file, line and reason, for a file that is not
    whole, has no unit, or holds what cannot be; ``progress`` may raise to stop.
    """
    file = str(path)
    place = Place(file)
    document = _Document(place)
    parse(path, document, place, part(progress, 0.0, 0.8))
    if not (document.points or document.surfaces or document.alignments):
        raise SurveyError(NOTHING, file=file)
    scale = scale_of(document.units, file, unit, height_unit)
    notes: List[Message] = []
    if crs is None:
        crs, said = crs_of(document.crs, document.crs_line, file)
        notes += said
    named = _by_name(document.points)
    points, said_of_points = _points(document.points, named, scale, crs, file)
    notes += said_of_points
    surfaces: List[LandSurface] = []
    for number, raw in enumerate(document.surfaces):
        progress(0.8 + 0.2 * number / len(document.surfaces), "points")
        surface, said_of_it = make_surface(raw, scale, crs, file)
        surfaces.append(surface)
        notes += said_of_it
    maker = AlignmentMaker(file, scale, lambda name, element, line: _find(named, name, element, line, file))
    made = [maker.make(raw) for raw in document.alignments]
    notes += maker.messages
    notes += feet_differ(scale, crs, _farthest(points, surfaces), file)
    alignments = tuple(alignment for alignment in made if alignment is not None)
    progress(1.0, "points")
    return LandXml(crs, tuple(surfaces), points, alignments, document.project, scale.said, tuple(notes))


def _by_name(points: List[RawPoint]) -> Dict[str, Optional[RawPoint]]:
    """Points by name; None where several have it."""
    named: Dict[str, Optional[RawPoint]] = {}
    for point in points:
        if point.name:
            named[point.name] = None if point.name in named else point
    return named


def _find(named: Dict[str, Optional[RawPoint]], name: str, element: str, line: int, file: str) -> List[float]:
    """Northing and easting of a named point, which must have coordinates of its own."""
    point = named.get(name)
    if point is None or not point.values:
        raise SurveyError(UNKNOWN_REFERENCE, file=file, line=line, element=element, found=name[:40])
    return point.values[:2]


def _points(
    raw: List[RawPoint], named: Dict[str, Optional[RawPoint]], scale: Scale, crs: Optional[Any], file: str
) -> Tuple[Optional[PointSet], List[Message]]:
    if not raw:
        return None, []
    rows = np.full((len(raw), 3), np.nan)
    for i, point in enumerate(raw):
        if point.values:
            rows[i, : len(point.values)] = point.values
        else:
            other = named.get(point.reference)
            _find(named, point.reference, "CgPoint", point.line, file)
            rows[i, : len(other.values)] = other.values  # type: ignore[union-attr]  # _find has looked
    bad = ~(np.abs(np.nan_to_num(rows)).max(axis=1) * max(scale.plan, scale.height) < 1e9)
    if bad.any():  # says which
        in_metres(rows[bad][:1], scale, file, raw[int(np.argmax(bad))].line, "CgPoint")
    columns = {
        key: np.array([getattr(point, key) for point in raw] + [""], object)[:-1]
        for key in ("name", "code", "description", "group")
    }
    extra = {key: columns[key] for key in ("description", "group") if any(columns[key])}
    points = make_points(
        rows[:, 1] * scale.plan, rows[:, 0] * scale.plan, rows[:, 2] * scale.height, crs=crs, source=file,
        name=columns["name"], code=columns["code"], extra=extra,
        source_line=np.array([point.line for point in raw], np.int64),
    )  # fmt: skip
    twice = [name for name, point in named.items() if point is None]
    said = [message(NAME_TWICE, count=sum(point.name in set(twice) for point in raw), name=twice[0])] if twice else []
    return points, said


def _farthest(points: Optional[PointSet], surfaces: List[LandSurface]) -> float:
    """The largest coordinate in plan, metres."""
    found = [0.0]
    if points is not None:
        found += [float(np.nanmax(np.abs(column), initial=0.0)) for column in (points.easting, points.northing)]
    for surface in surfaces:
        if surface.tin is not None:
            found += [abs(value) for value in surface.tin.bounds]
    return max(found)
