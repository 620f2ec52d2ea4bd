"""Surfaces of a LandXML file: its elements, and what they make (LandXML 1.2 schema, from memory).

``Surface`` holds ``SourceData`` (``Boundaries``, ``Breaklines``, ``DataPoints``: what it was made from) and
``Definition`` (``Pnts`` of ``P``, ``Faces`` of ``F``). A ``P`` is northing, easting and elevation under a number; an
``F`` the numbers of its corners; ``i="1"`` makes it invisible: a hole. Lists of places are ``PntList2D`` (northing,
easting, ...) or ``PntList3D`` (with elevations).
"""

from __future__ import annotations

from array import array
from typing import Any, Dict, List, Optional, Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, LineKind, make_line
from ..messages import Message, SurveyError, message
from ..surface.mesh import twins_of
from ..surface.network import local_origin, to_grid
from ..surface.predicates import LIMIT, orientation
from ..surface.tin import GRID, Tin
from .edges import mark_edges
from .landxml_model import LandSurface
from .landxml_parser import Node, Place, plain_floats
from .landxml_texts import (
    BAD_ATTRIBUTE,
    BAD_NUMBERS,
    FLAT_FACES,
    ID_TWICE,
    INVISIBLE,
    LINES_OFF_EDGES,
    NO_FACES,
    NOT_TRIANGLE,
    OVERLAP,
    TOO_LARGE,
    TOO_WIDE,
    UNKNOWN_POINT,
)
from .landxml_units import Scale
from .numbering import places_of, used_of

#: Farther from zero (m) than any place on Earth in any projection.
_FARTHEST = 1e9
_MOST = 2**62  # numbers of points
#: Numbers a place in each kind of list.
LIST_SIZE = {"PntList2D": 2, "PntList3D": 3}
_SEEN = {"": True, "0": True, "false": True, "1": False, "true": False}
_BOUNDARIES = {"outer": LineKind.BOUNDARY, "island": LineKind.BOUNDARY, "void": LineKind.VOID}


class RawSurface:
    """A surface as the file has it: numbers in its unit, and the line of each point and face."""

    def __init__(self, name: str, description: str, line: int) -> None:
        self.name, self.description, self.line = name, description, line
        self.number, self.point_line = array("q"), array("q")
        self.coordinates = array("d")  # northing, easting, elevation
        self.corners, self.face_line = array("q"), array("q")
        self.invisible = 0
        self.lines: List[Tuple[LineKind, str, array, int, int]] = []  # kind, name, values, how many each, line
        self.data_points: List[Tuple[array, int]] = []


# Elements


class SurfaceNode(Node):
    """``Surface``."""

    def __init__(self, raw: RawSurface, place: Place) -> None:
        self.raw, self.place = raw, place

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if name in ("Definition", "SourceData", "Boundaries", "Breaklines"):
            return self
        if name == "Pnts":
            return _PointsNode(self.raw, self.place)
        if name == "Faces":
            return _FacesNode(self.raw, self.place)
        if name == "Boundary":
            word = self.place.needed(name, attributes, "bndType")
            if word not in _BOUNDARIES:
                raise self.place.error(BAD_ATTRIBUTE, element=name, attribute="bndType", found=word[:40])
            return _LineNode(self.raw, self.place, _BOUNDARIES[word], attributes)
        if name == "Breakline":
            return _LineNode(self.raw, self.place, LineKind.BREAKLINE, attributes)
        return _DataPointsNode(self.raw, self.place) if name == "DataPoints" else None


class _PointsNode(Node):
    def __init__(self, raw: RawSurface, place: Place) -> None:
        self.point = _PointNode(raw, place)

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if name != "P":
            return None
        self.point.attributes = attributes
        return self.point


class _PointNode(Node):
    """One node for all ``P``: there are millions of them."""

    wants_text = True

    def __init__(self, raw: RawSurface, place: Place) -> None:
        self.raw, self.place = raw, place
        self.attributes: Dict[str, str] = {}

    def close(self, text: str) -> None:
        raw = self.raw
        word = (self.attributes.get("id") or self.place.needed("P", self.attributes, "id")).strip()
        number = int(word) if word.isdigit() and word.isascii() else -1
        if not 0 <= number < _MOST:
            raise self.place.error(BAD_ATTRIBUTE, element="P", attribute="id", found=word[:40])
        try:
            values = plain_floats(text)
        except ValueError:
            values = []
        if len(values) != 3:
            self.place.numbers("P", text, 3)  # says what is wrong
        raw.number.append(number)
        raw.point_line.append(self.place.parser.CurrentLineNumber)
        raw.coordinates.extend(values)


class _FacesNode(Node):
    def __init__(self, raw: RawSurface, place: Place) -> None:
        self.face = _FaceNode(raw, place)

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        if name != "F":
            return None
        self.face.attributes = attributes
        return self.face


class _FaceNode(Node):
    """One node for all ``F``."""

    wants_text = True

    def __init__(self, raw: RawSurface, place: Place) -> None:
        self.raw, self.place = raw, place
        self.attributes: Dict[str, str] = {}

    def close(self, text: str) -> None:
        raw, words = self.raw, text.split()
        if not text.isascii() or len(words) < 3 or not all(map(str.isdigit, words)):
            raise self.place.error(BAD_NUMBERS, element="F", needed=3, found=text.strip()[:40])
        if len(words) > 3:
            raise self.place.error(NOT_TRIANGLE, name=raw.name, count=len(words))
        if "i" in self.attributes and not self._visible():
            raw.invisible += 1
            return
        try:
            raw.corners.extend(map(int, words))
        except OverflowError:  # beyond 64 bits
            raise self.place.error(UNKNOWN_POINT, name=raw.name, number=max(map(int, words))) from None
        raw.face_line.append(self.place.parser.CurrentLineNumber)

    def _visible(self) -> bool:
        word = self.attributes["i"].strip()
        if word not in _SEEN:
            raise self.place.error(BAD_ATTRIBUTE, element="F", attribute="i", found=word[:40])
        return _SEEN[word]


class _LineNode(Node):
    """``Breakline`` or ``Boundary`` with its lists of places."""

    def __init__(self, raw: RawSurface, place: Place, kind: LineKind, attributes: Dict[str, str]) -> None:
        self.raw, self.place, self.kind = raw, place, kind
        self.name = attributes.get("name", "").strip()

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        return ListNode(name, self, self.place) if name in LIST_SIZE else None

    def take(self, values: array, size: int) -> None:
        self.raw.lines.append((self.kind, self.name, values, size, self.place.line))


class _DataPointsNode(Node):
    def __init__(self, raw: RawSurface, place: Place) -> None:
        self.raw, self.place = raw, place

    def child(self, name: str, attributes: Dict[str, str]) -> Optional[Node]:
        return ListNode(name, self, self.place) if name == "PntList3D" else None

    def take(self, values: array, size: int) -> None:
        self.raw.data_points.append((values, self.place.line))


class ListNode(Node):
    """``PntList2D`` or ``PntList3D``; hands its numbers to ``taker.take(values, numbers a place)``."""

    wants_text = True

    def __init__(self, name: str, taker: Any, place: Place) -> None:
        self.name, self.taker, self.place = name, taker, place

    def close(self, text: str) -> None:
        size = LIST_SIZE[self.name]
        try:
            values = array("d", plain_floats(text))
        except ValueError:
            values = array("d")
        if len(values) % size or (len(values) == 0 and text.strip()):
            raise self.place.error(
                BAD_NUMBERS, element=self.name, needed=f"{size} × n", found=" ".join(text[:200].split())[:40]
            )
        self.taker.take(values, size)


# What they make


def make_surface(raw: RawSurface, scale: Scale, crs: Optional[Any], file: str) -> Tuple[LandSurface, List[Message]]:
    """The surface in metres, and what is to be said about it. Raises SurveyError."""
    notes: List[Message] = []
    lines = tuple(
        make_line(kind, _places(values, size, scale, file, line, "PntList"), name)
        for kind, name, values, size, line in raw.lines
    )
    given = [_places(values, 3, scale, file, line, "PntList3D") for values, line in raw.data_points]
    points = np.concatenate([*given, np.empty((0, 3))])
    if raw.invisible:
        notes.append(message(INVISIBLE, name=raw.name, count=raw.invisible))
    xyz = _own_points(raw, scale, file)
    tin = _make_tin(raw, xyz, crs, file, notes) if len(raw.face_line) else None
    if tin is None:
        points = points if len(points) else xyz
        notes.append(message(NO_FACES, name=raw.name, points=len(points), lines=len(lines)))
        return LandSurface(raw.name, None, lines, points, raw.description), notes
    tin = _with_lines(tin, lines, raw.name, notes)
    return LandSurface(raw.name, tin, lines, points, raw.description), notes


def _own_points(raw: RawSurface, scale: Scale, file: str) -> np.ndarray:
    """Easting, northing, height (n, 3) of the points, metres."""
    values = np.frombuffer(raw.coordinates, float).reshape(-1, 3)
    bad = ~(np.abs(values).max(axis=1, initial=0.0) * max(scale.plan, scale.height) < _FARTHEST)
    if bad.any():
        raise SurveyError(TOO_LARGE, file=file, line=int(raw.point_line[int(np.argmax(bad))]), element="P")
    return values[:, [1, 0, 2]] * [scale.plan, scale.plan, scale.height]


def _places(values: array, size: int, scale: Scale, file: str, line: int, element: str) -> np.ndarray:
    """Easting, northing and height (k, 3) of a list, metres; height nan where it has none."""
    return in_metres(np.array(values).reshape(-1, size), scale, file, line, element)


def in_metres(values: np.ndarray, scale: Scale, file: str, line: int, element: str) -> np.ndarray:
    """Easting, northing and height (k, 3) in metres of northing, easting and perhaps elevation (k, 2 or 3)."""
    if not (np.abs(values) * max(scale.plan, scale.height) < _FARTHEST).all():
        raise SurveyError(TOO_LARGE, file=file, line=line, element=element)
    height = values[:, 2] * scale.height if values.shape[1] > 2 else np.full(len(values), np.nan)
    return np.column_stack([values[:, [1, 0]] * scale.plan, height])


def _make_tin(raw: RawSurface, xyz: np.ndarray, crs: Optional[Any], file: str, notes: List[Message]) -> Optional[Tin]:
    """The visible faces that have an area in plan; None where there is none."""
    number, face_line = np.frombuffer(raw.number, np.int64), np.frombuffer(raw.face_line, np.int64)
    order = np.argsort(number, kind="stable")
    rising = number[order]
    twice = order[1:][rising[1:] == rising[:-1]]
    if len(twice):
        first = int(twice.min())
        raise SurveyError(
            ID_TWICE, file=file, line=int(raw.point_line[first]), name=raw.name, number=int(number[first])
        )
    corners = np.frombuffer(raw.corners, np.int64).reshape(-1, 3)
    place = places_of(rising, corners)
    if (place < 0).any():
        row, corner = np.argwhere(place < 0)[0]
        raise SurveyError(
            UNKNOWN_POINT, file=file, line=int(face_line[row]), name=raw.name, number=int(corners[row, corner])
        )
    used, triangles = used_of(order[place], len(xyz))
    xyz = xyz[used]
    origin = local_origin(xyz[:, :2])
    width = float((xyz[:, :2] - origin).max())
    if width >= LIMIT * GRID:
        raise SurveyError(TOO_WIDE, file=file, line=raw.line, name=raw.name, width=width / 1000)
    grid = to_grid(xyz[:, :2], origin)
    triangles, grid, height = _join_same(triangles, grid, xyz[:, 2])
    area = orientation(grid[:, 0], grid[:, 1], *triangles.T)
    flat = area == 0
    if flat.any():
        notes.append(
            message(FLAT_FACES, name=raw.name, count=int(flat.sum()), line=int(face_line[int(np.argmax(flat))]))
        )
        triangles, area, face_line = triangles[~flat], area[~flat], face_line[~flat]
        used, triangles = used_of(triangles, len(grid))
        grid, height = grid[used], height[used]
    if len(triangles) == 0:
        return None
    triangles[area < 0] = triangles[area < 0][:, [0, 2, 1]]
    try:
        twin = twins_of(triangles.ravel())
    except ValueError:
        raise _overlap(triangles, face_line, raw.name, file) from None
    return Tin(
        vertices=np.column_stack([grid * GRID, height]),
        triangles=triangles,
        neighbours=np.where(twin >= 0, twin // 3, -1).reshape(-1, 3).astype(np.int32),
        edge_kind=np.zeros(triangles.shape, np.uint8),
        grid=grid,
        origin=origin,
        vertex_source=np.full(len(grid), -1, np.int64),
        crs=crs,
    )


def _join_same(
    triangles: np.ndarray, grid: np.ndarray, height: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """One vertex for points of one place and height: some write each corner of each face anew."""
    order = np.lexsort((height, grid[:, 1], grid[:, 0]))
    new = np.append(True, (np.diff(grid[order], axis=0) != 0).any(axis=1) | (np.diff(height[order]) != 0))
    if new.all():
        return triangles, grid, height
    first = np.empty(len(grid), np.int64)  # the first of each group, as the sort is stable
    first[order] = order[new][np.cumsum(new) - 1]
    used, joined = used_of(first[triangles], len(grid))
    return joined, grid[used], height[used]


def _overlap(triangles: np.ndarray, face_line: np.ndarray, name: str, file: str) -> SurveyError:
    """Names the first face that has an edge in the same direction as an earlier one."""
    key = triangles.astype(np.int64) * (int(triangles.max()) + 1) + np.roll(triangles, -1, axis=1)
    _, first = np.unique(key, return_index=True)
    again = np.setdiff1d(np.arange(key.size), first)
    return SurveyError(OVERLAP, file=file, line=int(face_line[again[0] // 3]), name=name)


def _with_lines(tin: Tin, lines: Tuple[ConstraintLine, ...], name: str, notes: List[Message]) -> Tin:
    """``tin`` with the edges marked along which ``lines`` run."""
    starts, ends, kinds = [np.empty((0, 2))], [np.empty((0, 2))], [np.empty(0, np.uint8)]
    for line in lines:
        xy = line.xyz[:, :2]
        if line.closed and len(xy):
            xy = np.vstack([xy, xy[:1]])
        starts.append(xy[:-1])
        ends.append(xy[1:])
        kinds.append(np.full(len(xy[1:]), int(line.kind), np.uint8))
    a, b = (to_grid(np.concatenate(each), tin.origin) for each in (starts, ends))
    step = (a != b).any(axis=1)
    a, b, kind = a[step], b[step], np.concatenate(kinds)[step]
    if len(a) == 0:
        return tin
    pairs = np.stack([_vertex_at(tin, a), _vertex_at(tin, b)], axis=1)
    known = (pairs >= 0).all(axis=1)
    edge_kind, found = mark_edges(tin.triangles, len(tin.vertices), pairs[known], kind[known])
    lost = len(a) - int(np.count_nonzero(found))
    if lost:
        notes.append(message(LINES_OFF_EDGES, name=name, count=lost, total=len(a)))
    return Tin(**{**vars(tin), "edge_kind": edge_kind})


def _vertex_at(tin: Tin, grid: np.ndarray) -> np.ndarray:
    """The vertex (k,) at places (k, 2) of the plan grid, -1 where there is none."""
    inside = ((grid >= 0) & (grid < LIMIT)).all(axis=1)
    key = tin.grid[:, 0] << 31 | tin.grid[:, 1]
    order = np.argsort(key, kind="stable")
    rising, wanted = key[order], grid[inside, 0] << 31 | grid[inside, 1]
    place = np.minimum(np.searchsorted(rising, wanted), len(rising) - 1)
    result = np.full(len(grid), -1, np.int64)
    result[inside] = np.where(rising[place] == wanted, order[place], -1)
    return result
