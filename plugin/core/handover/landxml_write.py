"""LandXML 1.2 written as a stream (order and attributes of the schema from memory).

Coordinates are northing before easting, in the unit of the CRS's plan (metres for a local grid), plan with 4 decimals
and heights with 6; heights are in the unit of the plan too, as a file has one ``linearUnit``. In metres the plan grid
of a surface is kept exactly. What the format has no place for: which survey point a vertex came from, and vertices
that no triangle uses. Names may hold anything: they are escaped, and letters that XML forbids become U+FFFD.
"""

from __future__ import annotations

import re
from datetime import datetime, timezone
from typing import BinaryIO, Dict, Iterable, List, Mapping, Optional
from xml.sax.saxutils import quoteattr  # nosec B406

import numpy as np

from ..files import PathLike, replace_file
from ..georeference.crs import plan_unit
from ..linework.constraints import ConstraintLine, LineKind
from ..points.pointset import PointSet
from ..progress import Progress, part, silent
from ..surface.tin import Tin
from ..units import LengthUnit
from .landxml_geometry import element_length
from .landxml_model import (
    HEIGHT_DECIMALS,
    NAMESPACE,
    PLAN_DECIMALS,
    Arc,
    Clothoid,
    Element,
    LandAlignment,
    LandProfile,
    LandSurface,
    LandXml,
    Straight,
)
from .landxml_units import crs_written, units_written
from .numbering import height_integers, plan_integers
from .text_rows import Column, plain_number, write_rows

APPLICATION = "Hummock"
_ROWS = 1 << 16  # rows formatted at a time; bounds the memory
_FORBIDDEN = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")


def write_landxml(
    contents: LandXml,
    path: PathLike,
    moment: Optional[datetime] = None,
    neighbours: bool = False,
    progress: Progress = silent,
) -> None:
    """Write ``contents`` to the LandXML file ``path``; surfaces are in the CRS of the contents.

    ``moment``: date and time that the file says, now if None. ``neighbours``: each face also names those across its
    edges. The file appears only when it is whole. Raises SurveyError when it cannot be written, ValueError for a
    height of a surface that is not finite; ``progress``, called with stage ``"files"``, may raise to stop.
    """
    moment = moment or datetime.now(timezone.utc)
    with replace_file(path) as temporary, open(temporary, "wb") as file:
        writer = _Writer(file, plan_unit(contents.crs))
        writer.text('<?xml version="1.0" encoding="UTF-8"?>')
        with_root = {
            "xmlns": NAMESPACE,
            "xmlns:xsi": "http://www.w3.org/2001/XMLSchema-instance",
            "xsi:schemaLocation": f"{NAMESPACE} {NAMESPACE}/LandXML-1.2.xsd",
            "version": "1.2",
            "date": moment.strftime("%Y-%m-%d"),
            "time": moment.strftime("%H:%M:%S"),
            "readOnly": "false",
            "language": "English",
        }
        writer.begin("LandXML", with_root)
        _write_head(writer, contents)
        _write_alignments(writer, contents.alignments)
        if contents.points is not None and len(contents.points):
            _write_points(writer, contents.points)
        if contents.surfaces:
            writer.begin("Surfaces", {})
            for number, surface in enumerate(contents.surfaces):
                share = part(progress, number / len(contents.surfaces), (number + 1) / len(contents.surfaces))
                _write_surface(writer, surface, neighbours, share)
            writer.end("Surfaces")
        writer.end("LandXML")
    progress(1.0, "files")


class _Writer:
    """Elements into a file; lengths in its unit."""

    def __init__(self, file: BinaryIO, unit: LengthUnit) -> None:
        self.file, self.unit, self.metres = file, unit, unit.metres
        self.deep = 0

    def text(self, line: str) -> None:
        self.file.write(f"{'  ' * self.deep}{line}\n".encode("utf-8", "replace"))

    def begin(self, name: str, attributes: Mapping[str, str]) -> None:
        self.text(f"<{name}{_said(attributes)}>")
        self.deep += 1

    def end(self, name: str) -> None:
        self.deep -= 1
        self.text(f"</{name}>")

    def leaf(self, name: str, attributes: Mapping[str, str], content: str = "") -> None:
        self.text(f"<{name}{_said(attributes)}>{content}</{name}>" if content else f"<{name}{_said(attributes)}/>")

    def length(self, metres: float) -> str:
        """A length or plan coordinate."""
        return plain_number(metres / self.metres, PLAN_DECIMALS)

    def height(self, metres: float) -> str:
        return plain_number(metres / self.metres, HEIGHT_DECIMALS)

    def place(self, easting: float, northing: float, height: float = float("nan")) -> str:
        """Northing, easting and, where it is known, the height."""
        plan = f"{self.length(northing)} {self.length(easting)}"
        return plan if height != height else f"{plan} {self.height(height)}"


def _said(attributes: Mapping[str, str]) -> str:
    return "".join(f" {name}={quoteattr(_FORBIDDEN.sub(chr(0xFFFD), value))}" for name, value in attributes.items())


def _given(**attributes: str) -> Dict[str, str]:
    """The attributes that are not empty."""
    return {name: value for name, value in attributes.items() if value}


# Head


def _write_head(writer: _Writer, contents: LandXml) -> None:
    system, attributes = units_written(writer.unit)
    writer.begin("Units", {})
    writer.leaf(system, attributes)
    writer.end("Units")
    if contents.crs is not None:
        writer.leaf("CoordinateSystem", crs_written(contents.crs))
    if contents.project:
        writer.leaf("Project", {"name": contents.project})
    writer.leaf("Application", {"name": APPLICATION})


# Points


def _write_points(writer: _Writer, points: PointSet) -> None:
    writer.begin("CgPoints", {})
    description = points.extra.get("description", np.full(len(points), "", object))
    columns = (points.name, points.code, description, points.easting, points.northing, points.height)
    for name, code, desc, easting, northing, height in zip(*(column.tolist() for column in columns)):
        attributes = _given(name=str(name), code=str(code), desc=str(desc))
        writer.leaf("CgPoint", attributes, writer.place(easting, northing, height))
    writer.end("CgPoints")


# Surfaces


def _write_surface(writer: _Writer, surface: LandSurface, neighbours: bool, progress: Progress) -> None:
    writer.begin("Surface", {"name": surface.name, **_given(desc=surface.description)})
    _write_source(writer, surface)
    if surface.tin is not None:
        _write_definition(writer, surface.tin, neighbours, progress)
    writer.end("Surface")


def _write_source(writer: _Writer, surface: LandSurface) -> None:
    breaklines = [line for line in surface.lines if line.kind & LineKind.BREAKLINE]
    rings = [line for line in surface.lines if line.closed]
    if not (breaklines or rings or len(surface.points)):
        return
    writer.begin("SourceData", {})
    if rings:
        writer.begin("Boundaries", {})
        for ring in rings:
            kind = "void" if ring.kind & LineKind.VOID else "outer"
            attributes = {"bndType": kind, "edgeTrim": "true", **_given(name=ring.label)}
            _write_line(writer, "Boundary", attributes, ring)
        writer.end("Boundaries")
    if breaklines:
        writer.begin("Breaklines", {})
        for line in breaklines:
            _write_line(writer, "Breakline", {"brkType": "standard", **_given(name=line.label)}, line)
        writer.end("Breaklines")
    if len(surface.points):
        writer.begin("DataPoints", {})
        writer.leaf("PntList3D", {}, _list(writer, surface.points))
        writer.end("DataPoints")
    writer.end("SourceData")


def _write_line(writer: _Writer, name: str, attributes: Mapping[str, str], line: ConstraintLine) -> None:
    xyz = line.xyz
    if line.closed and len(xyz) and not np.array_equal(xyz[0], xyz[-1], equal_nan=True):
        xyz = np.vstack([xyz, xyz[:1]])
    with_heights = bool(np.isfinite(xyz[:, 2]).all())
    writer.begin(name, attributes)
    if with_heights:
        writer.leaf("PntList3D", {}, _list(writer, xyz))
    else:
        writer.leaf("PntList2D", {}, " ".join(writer.place(*place) for place in xyz[:, :2].tolist()))
    writer.end(name)


def _list(writer: _Writer, xyz: np.ndarray) -> str:
    return " ".join(writer.place(*place) for place in xyz.tolist())


def _write_definition(writer: _Writer, tin: Tin, neighbours: bool, progress: Progress) -> None:
    used, triangles = np.unique(tin.triangles, return_inverse=True)
    triangles = triangles.reshape(-1, 3) + 1
    plan = plan_integers(tin, used, writer.metres, PLAN_DECIMALS)
    height = height_integers(tin, used, writer.metres, HEIGHT_DECIMALS)
    square = writer.metres**2
    low, high = tin.height_range
    attributes = {
        "surfType": "TIN",
        "area2DSurf": f"{tin.plan_area / square:.4f}",
        "area3DSurf": f"{_true_area(tin) / square:.4f}",
        "elevMax": writer.height(high),
        "elevMin": writer.height(low),
    }
    writer.begin("Definition", attributes)
    writer.begin("Pnts", {})
    for start in range(0, len(used), _ROWS):
        progress(0.5 * start / len(used), "files")
        rows = slice(start, start + _ROWS)
        number = np.arange(start + 1, start + 1 + len(plan[rows]))
        north, east = ((plan[rows, i], PLAN_DECIMALS) for i in (1, 0))
        up = (height[rows], HEIGHT_DECIMALS)
        write_rows(writer.file, [b'<P id="', (number, 0), b'">', north, b" ", east, b" ", up, b"</P>\n"])
    writer.end("Pnts")
    writer.begin("Faces", {})
    for start in range(0, len(triangles), _ROWS):
        progress(0.5 + 0.5 * start / len(triangles), "files")
        rows = slice(start, start + _ROWS)
        beside: List[Column] = []
        if neighbours:
            a, b, c = ((tin.neighbours[rows, i].astype(np.int64) + 1, 0) for i in range(3))
            beside = [b' n="', a, b" ", b, b" ", c, b'"']
        a, b, c = ((triangles[rows, i], 0) for i in range(3))
        write_rows(writer.file, [b"<F", *beside, b">", a, b" ", b, b" ", c, b"</F>\n"])
    writer.end("Faces")
    writer.end("Definition")


def _true_area(tin: Tin) -> float:
    """Area along the slope, square metres."""
    corner = tin.corners()
    normal = np.cross(corner[:, 1] - corner[:, 0], corner[:, 2] - corner[:, 0])
    return float(0.5 * np.sqrt((normal**2).sum(axis=1)).sum())


# Alignments


def _write_alignments(writer: _Writer, alignments: Iterable[LandAlignment]) -> None:
    alignments = tuple(alignments)
    if not alignments:
        return
    writer.begin("Alignments", {})
    for line in alignments:
        per_unit = line.unit.metres / writer.metres  # stations in the unit of the file
        total = sum(element_length(element) for element in line.elements)
        attributes = {
            "name": line.name,
            "length": writer.length(total),
            "staStart": writer.length(line.start * line.unit.metres),
            **_given(desc=line.description),
        }
        writer.begin("Alignment", attributes)
        writer.begin("CoordGeom", {})
        for element in line.elements:
            _write_element(writer, element)
        writer.end("CoordGeom")
        _write_equations(writer, line, per_unit)
        if line.profiles:
            writer.begin("Profile", {"name": line.name, "staStart": attributes["staStart"]})
            for profile in line.profiles:
                _write_profile(writer, profile, line.start * line.unit.metres)
            writer.end("Profile")
        writer.end("Alignment")
    writer.end("Alignments")


def _write_equations(writer: _Writer, line: LandAlignment, per_unit: float) -> None:
    internal, last = line.start, line.start
    for back, ahead in line.equations:
        internal += back - last
        last = ahead
        said = {"staAhead": ahead, "staBack": back, "staInternal": internal}
        attributes = {name: writer.length(value * per_unit * writer.metres) for name, value in said.items()}
        writer.leaf("StaEquation", {**attributes, "staIncrement": "increasing"})


def _write_element(writer: _Writer, element: Element) -> None:
    length = writer.length(element_length(element))
    if isinstance(element, Straight):
        name = "Line" if len(element.xy) == 2 else "IrregularLine"
        writer.begin(name, {"length": length} if name == "Line" else {})
        writer.leaf("Start", {}, writer.place(*element.xy[0].tolist()))
        writer.leaf("End", {}, writer.place(*element.xy[-1].tolist()))
        if name == "IrregularLine":
            writer.leaf("PntList2D", {}, " ".join(writer.place(*place) for place in element.xy.tolist()))
        writer.end(name)
        return
    attributes = {"rot": "cw" if element.clockwise else "ccw", "length": length}
    if isinstance(element, Arc):
        radius = float(np.hypot(*(element.start - element.centre)))
        name, middle, place = "Curve", "Center", element.centre
        attributes = {"rot": attributes["rot"], "crvType": "arc", "length": length, "radius": writer.length(radius)}
    else:
        name, middle, place = "Spiral", "PI", element.pi
        attributes.update(_spiral(writer, element))
    writer.begin(name, attributes)
    writer.leaf("Start", {}, writer.place(*element.start.tolist()))
    writer.leaf(middle, {}, writer.place(*place.tolist()))
    writer.leaf("End", {}, writer.place(*element.end.tolist()))
    writer.end(name)


def _spiral(writer: _Writer, spiral: Clothoid) -> Dict[str, str]:
    radii = {"radiusStart": spiral.radius_start, "radiusEnd": spiral.radius_end}
    said = {name: writer.length(radius) if np.isfinite(radius) else "INF" for name, radius in radii.items()}
    return {**said, "spiType": "clothoid"}


def _write_profile(writer: _Writer, profile: LandProfile, start: float) -> None:
    """``start``: station of the alignment's beginning, metres."""
    rows = zip(profile.distance.tolist(), profile.height.tolist())
    words = [f"{writer.length(start + distance)} {writer.height(height)}" for distance, height in rows]
    if profile.curve is None:
        words = [word for i, word in enumerate(words) if i == 0 or word != words[i - 1]]  # closer than the decimals
        writer.begin("ProfSurf", {"name": profile.name})
        writer.leaf("PntList2D", {}, " ".join(words))
        writer.end("ProfSurf")
        return
    writer.begin("ProfAlign", {"name": profile.name})
    for text, length in zip(words, profile.curve.tolist()):
        if length > 0:
            writer.leaf("ParaCurve", {"length": writer.length(length)}, text)
        else:
            writer.leaf("PVI", {}, text)
    writer.end("ProfAlign")
