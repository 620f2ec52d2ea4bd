"""A drawing of surface, contours, lines and points as DXF, release 12 in ASCII (AC1009), from its open reference.

GDAL's and QGIS's writers know no 3DFACE, so this one is ours. What it holds: triangles as ``3DFACE``, lines as 3D
``POLYLINE``, points as ``POINT`` with ``TEXT`` for name and height, on layers of their own. The format has one unit and
no CRS: plan and heights are in the unit of the CRS's plan; comments at the head say unit and CRS. Layer names have
capitals, digits, ``-``, ``_`` and ``$`` only, 31 at most, as release 12 allows.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from typing import Any, BinaryIO, Dict, Iterable, List, Optional, Sequence, Tuple

import numpy as np

from ..contours.lines import Contours
from ..files import PathLike, replace_file
from ..georeference.crs import plan_unit
from ..georeference.record import crs_name
from ..linework.constraints import ConstraintLine, LineKind
from ..points.pointset import PointSet
from ..progress import Progress, silent
from ..surface.tin import Tin
from ..units import LengthUnit, heights_to_crs_units
from .numbering import height_integers, plan_integers
from .text_rows import plain_number, write_rows

DECIMALS = 4
FACES, POINTS, NAMES, HEIGHTS = "SURFACE_FACES", "POINTS", "POINT_NAMES", "POINT_HEIGHTS"
CONTOUR, INDEX = "CONTOUR", "CONTOUR_INDEX"
_KINDS = {LineKind.BREAKLINE: "BREAKLINE", LineKind.BOUNDARY: "BOUNDARY", LineKind.VOID: "VOID"}
#: Colour numbers of the first release: 1 red, 2 yellow, 3 green, 5 blue, 6 magenta, 7 black or white, 8 grey.
_COLOURS = {FACES: 8, INDEX: 30, CONTOUR: 32, "BREAKLINE": 5, "BOUNDARY": 6, "VOID": 6, NAMES: 7, HEIGHTS: 3, POINTS: 1}
_OTHER_COLOUR = 7
_POLYLINE_3D, _CLOSED, _VERTEX_3D = 8, 1, 32
_ROWS = 1 << 16
_LETTERS = 250  # of a text
_ENCODING, _CODE_PAGE = "cp1252", "ANSI_1252"


@dataclass(frozen=True)
class DxfLine:
    """A 3D line (k, 3) in metres on a ``layer``."""

    layer: str
    xyz: np.ndarray
    closed: bool = False


@dataclass(frozen=True)
class Drawing:
    """What is drawn. ``text_height``: of names and heights of points, metres; ``height_decimals``: of the latter."""

    crs: Optional[Any]
    tin: Optional[Tin] = None
    lines: Sequence[DxfLine] = field(default_factory=tuple)
    points: Optional[PointSet] = None
    text_height: float = 0.5
    height_decimals: int = 2


def contour_lines(contours: Contours, by_level: bool = False) -> List[DxfLine]:
    """Contours as lines at their heights; on the layers CONTOUR and CONTOUR_INDEX, or on one for each level."""
    found = []
    for i, line in enumerate(contours):
        level = float(contours.level[i])
        layer = level_layer(float(contours.level_in_unit[i])) if by_level else (INDEX if contours.index[i] else CONTOUR)
        found.append(DxfLine(layer, np.column_stack([line, np.full(len(line), level)])))
    return found


def level_layer(level: float) -> str:
    """The name of the layer of a level: 101.25 becomes CONTOUR_101_25, -2 CONTOUR_M2."""
    return layer_name(f"{CONTOUR}_{'M' if level < 0 else ''}{abs(round(level, 6)):g}")


def constraint_lines(lines: Iterable[ConstraintLine]) -> List[DxfLine]:
    """Breaklines, boundaries and voids as lines; those without heights are left out."""
    return [
        DxfLine(_KINDS[line.kind], line.xyz, line.closed)
        for line in lines
        if len(line.xyz) > 1 and np.isfinite(line.xyz).all()
    ]


def found_lines(lines: Iterable[ConstraintLine]) -> List[DxfLine]:
    """Breaklines whose label begins with what they are, each on the layer of its kind: BREAKLINE_STEP and so on."""
    return [DxfLine(layer_name(f"{_KINDS[line.kind]}_{line.label.split()[0]}"), line.xyz) for line in lines]


def layer_name(text: str) -> str:
    """``text`` as release 12 allows it for a layer."""
    return re.sub("[^A-Z0-9$_-]", "_", text.upper())[:31] or "0"


def write_dxf(drawing: Drawing, path: PathLike, progress: Progress = silent) -> None:
    """Write ``drawing``; the file appears only when it is whole.

    Raises SurveyError when it cannot be written; ``progress``, called with stage ``"files"``, may raise to stop.
    """
    unit = plan_unit(drawing.crs)
    writer = _Writer(unit.metres)
    with replace_file(path) as temporary, open(temporary, "wb") as file:
        _write_head(file, drawing, unit)
        _write_tables(file, drawing)
        file.write(_codes((0, "SECTION"), (2, "BLOCKS"), (0, "ENDSEC"), (0, "SECTION"), (2, "ENTITIES")))
        if drawing.tin is not None:
            _write_faces(file, drawing.tin, unit, progress)
        for number, line in enumerate(drawing.lines):
            if number % 1000 == 0:
                progress(0.5 + 0.4 * number / len(drawing.lines), "files")
            file.write(writer.polyline(line))
        if drawing.points is not None:
            _write_points(file, drawing, writer, unit)
        file.write(_codes((0, "ENDSEC"), (0, "EOF")))
    progress(1.0, "files")


def _codes(*pairs: Tuple[int, Any]) -> bytes:
    """Group codes and values, a line each."""
    return "".join(f"{code:3d}\n{value}\n" for code, value in pairs).encode(_ENCODING)


def _text(text: str) -> str:
    r"""A text as the format holds it: one line; letters that the code page lacks as ``\U+`` and their number."""
    plain = " ".join(text.split())[:_LETTERS].replace("^", "^ ").replace("%%", "%%%%%%")  # else %%d becomes a degree
    return "".join(_letter(letter) for letter in plain if letter >= " ")


def _letter(letter: str) -> str:
    try:
        letter.encode(_ENCODING)
    except UnicodeEncodeError:
        return f"\\U+{ord(letter):04X}" if ord(letter) <= 0xFFFF else "?"
    return letter


class _Writer:
    """Places in the unit of the drawing."""

    def __init__(self, metres: float) -> None:
        self.metres = metres

    def number(self, value_m: float) -> str:
        return plain_number(value_m / self.metres, DECIMALS)

    def place(self, easting: float, northing: float, height: float) -> Tuple[Tuple[int, str], ...]:
        return (10, self.number(easting)), (20, self.number(northing)), (30, self.number(height))

    def polyline(self, line: DxfLine) -> bytes:
        xyz = line.xyz
        if line.closed and len(xyz) > 1 and np.array_equal(xyz[0], xyz[-1]):
            xyz = xyz[:-1]
        flag = _POLYLINE_3D + (_CLOSED if line.closed else 0)
        head = _codes((0, "POLYLINE"), (8, line.layer), (66, 1), (10, 0.0), (20, 0.0), (30, 0.0), (70, flag))
        vertex = ((0, "VERTEX"), (8, line.layer))
        places = [_codes(*vertex, *self.place(*place), (70, _VERTEX_3D)) for place in xyz.tolist()]
        return b"".join([head, *places, _codes((0, "SEQEND"), (8, line.layer))])

    def text(self, layer: str, place: Tuple[float, float, float], size: float, text: str) -> bytes:
        return _codes((0, "TEXT"), (8, layer), *self.place(*place), (40, self.number(size)), (1, _text(text)))


def _write_head(file: BinaryIO, drawing: Drawing, unit: LengthUnit) -> None:
    low, high = _extent(drawing)
    names = {LengthUnit.METRE: "metres", LengthUnit.FOOT: "international feet (0.3048 m)",
             LengthUnit.US_SURVEY_FOOT: "US survey feet (1200/3937 m)"}  # fmt: skip
    comments = [f"Coordinates and heights in {names[unit]}", f"CRS: {crs_name(drawing.crs)}"]
    file.write(_codes(*((999, _text(comment)) for comment in comments), (0, "SECTION"), (2, "HEADER")))
    file.write(_codes((9, "$ACADVER"), (1, "AC1009"), (9, "$DWGCODEPAGE"), (3, _CODE_PAGE)))
    for name, corner in (("$EXTMIN", low), ("$EXTMAX", high)):
        file.write(_codes((9, name), *_Writer(unit.metres).place(*corner.tolist())))
    file.write(_codes((0, "ENDSEC")))


def _extent(drawing: Drawing) -> Tuple[np.ndarray, np.ndarray]:
    """Lowest and highest corner, metres."""
    all_places = [line.xyz for line in drawing.lines if len(line.xyz)]
    if drawing.tin is not None:
        all_places.append(drawing.tin.vertices[np.unique(drawing.tin.triangles)] + np.append(drawing.tin.origin, 0.0))
    if drawing.points is not None and len(drawing.points):
        own = drawing.points
        all_places.append(np.column_stack([own.easting, own.northing, np.nan_to_num(own.height)]))
    if not all_places:
        return np.zeros(3), np.zeros(3)
    return (
        np.min([places.min(axis=0) for places in all_places], axis=0),
        np.max([places.max(axis=0) for places in all_places], axis=0),
    )


def _write_tables(file: BinaryIO, drawing: Drawing) -> None:
    layers: Dict[str, int] = dict.fromkeys(sorted({line.layer for line in drawing.lines}), _OTHER_COLOUR)
    if drawing.tin is not None:
        layers[FACES] = 0
    if drawing.points is not None:
        layers.update(dict.fromkeys((POINTS, NAMES, HEIGHTS), 0))
    file.write(_codes((0, "SECTION"), (2, "TABLES"), (0, "TABLE"), (2, "LTYPE"), (70, 1)))
    solid = ((2, "CONTINUOUS"), (70, 64), (3, "Solid line"), (72, 65), (73, 0), (40, 0.0))
    file.write(_codes((0, "LTYPE"), *solid, (0, "ENDTAB"), (0, "TABLE"), (2, "LAYER"), (70, len(layers) + 1)))
    for name in ("0", *layers):
        colour = _COLOURS.get(name, _COLOURS[CONTOUR] if name.startswith(CONTOUR) else _OTHER_COLOUR)
        file.write(_codes((0, "LAYER"), (2, name), (70, 0), (62, colour), (6, "CONTINUOUS")))
    file.write(_codes((0, "ENDTAB"), (0, "TABLE"), (2, "STYLE"), (70, 1), (0, "STYLE"), (2, "STANDARD"), (70, 0)))
    file.write(_codes((40, 0.0), (41, 1.0), (50, 0.0), (71, 0), (42, 0.2), (3, "txt"), (4, "")))
    file.write(_codes((0, "ENDTAB"), (0, "ENDSEC")))


def _write_faces(file: BinaryIO, tin: Tin, unit: LengthUnit, progress: Progress) -> None:
    """Each triangle once; its fourth corner is its third, as the format wants it."""
    every = np.arange(len(tin.vertices))
    plan = plan_integers(tin, every, unit.metres, DECIMALS)
    height = height_integers(tin, every, unit.metres, DECIMALS)
    start_of_face = _codes((0, "3DFACE"), (8, FACES))
    for start in range(0, len(tin.triangles), _ROWS):
        progress(0.5 * start / len(tin.triangles), "files")
        corner = tin.triangles[start : start + _ROWS]
        columns: List[Any] = [start_of_face]
        for number, vertex in enumerate((corner[:, 0], corner[:, 1], corner[:, 2], corner[:, 2])):
            for axis, values in enumerate((plan[vertex, 0], plan[vertex, 1], height[vertex])):
                columns += [f"{10 * (axis + 1) + number:3d}\n".encode(), (values, DECIMALS), b"\n"]
        write_rows(file, columns)


def _write_points(file: BinaryIO, drawing: Drawing, writer: _Writer, unit: LengthUnit) -> None:
    """Points, their names to the upper right of them and their heights to the lower right."""
    points = drawing.points
    assert points is not None
    size = drawing.text_height
    shown = heights_to_crs_units(points.height, points.crs)
    rows = zip(points.name.tolist(), points.easting.tolist(), points.northing.tolist(), points.height.tolist())
    for (name, easting, northing, height), label in zip(rows, shown.tolist()):
        known = height == height
        level = height if known else 0.0
        file.write(_codes((0, "POINT"), (8, POINTS), *writer.place(easting, northing, level)))
        if str(name).strip():
            file.write(writer.text(NAMES, (easting + size / 2, northing + size / 4, level), size, str(name)))
        if known:
            place = (easting + size / 2, northing - 1.25 * size, level)
            file.write(writer.text(HEIGHTS, place, size, plain_number(label, drawing.height_decimals)))
