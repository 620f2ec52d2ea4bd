"""What a surveyor would warn of in a surface: kinds, limits, and the findings themselves.

The limits are this project's own choice, made on surveys walked with a point every half metre; they
come from no standard. Each is an option.
"""

from __future__ import annotations

from dataclasses import dataclass, fields
from enum import Enum
from typing import Any, Iterable, List, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from .mesh import following
from .tin import GRID, Tin

BAD_OPTION = Text(
    "findings.bad_option",
    QT_TRANSLATE_NOOP("core", "The limit {option} is {value}; give a number above 0."),
)


class FindingKind(Enum):
    """What is wrong, perhaps, at a place."""

    FLAT = "flat"
    GAP = "gap"
    LONG = "long"
    SPIKE = "spike"
    BESIDE_LINE = "beside_line"


@dataclass(frozen=True)
class Finding:
    """One warning.

    ``easting``, ``northing``, ``height``: the place, metres in the CRS, the height on the surface.
    ``value`` in ``unit`` ("m" or "m²"): area of a flat spot, width of a gap, longest edge, signed height of a point
    over the plane of its neighbours or over a line. ``vertices``, ``triangles``: numbers in the TIN.
    ``source_lines``: lines of the survey file behind ``vertices``, where known.
    """

    kind: FindingKind
    easting: float
    northing: float
    height: float
    value: float
    unit: str
    vertices: Tuple[int, ...]
    triangles: Tuple[int, ...]
    source_lines: Tuple[int, ...]
    message: Message


@dataclass(frozen=True)
class FindingOptions:
    """When to warn; lengths in metres.

    ``flat_run``: so many vertices of equal height in a row make a line level like a contour; ``flat_tolerance``:
    up to this difference heights are equal.
    ``gap_distance``, ``gap_factor``: a line that ends goes on in another of its code if that begins at most
    ``gap_distance`` away and at most ``gap_factor`` times the longer of the two last segments; ``gap_turn``:
    degrees that the gap may turn off either line.
    ``long_factor``: edges longer than so many times the distance of the passes are long.
    ``spike_ratio``, ``spike_height``: a spike is off its neighbours by more than so many times their scatter, and
    by more than that height.
    ``beside_distance``, ``beside_height``: a point so near in plan to a breakline may differ so much in height from it.
    """

    flat_run: int = 4
    flat_tolerance: float = 0.0005
    gap_distance: float = 10.0
    gap_factor: float = 2.0
    gap_turn: float = 60.0
    long_factor: float = 1.9
    spike_ratio: float = 6.0
    spike_height: float = 0.10
    beside_distance: float = 0.10
    beside_height: float = 0.10

    def check(self) -> None:
        """Raise SurveyError when a limit is not above 0."""
        for each in fields(self):
            value = getattr(self, each.name)
            if not value > 0:
                raise SurveyError(BAD_OPTION, option=each.name, value=value)


class Facts:
    """What several searches need to know about a TIN, worked out once. Half-edge 3 t + i is edge i of triangle t."""

    def __init__(self, tin: Tin, points: PointSet) -> None:
        self.tin, self.points = tin, points
        half_edges = np.arange(tin.triangles.size)
        self.start = tin.triangles.ravel().astype(np.int64)
        self.end = self.start[following(half_edges)]
        self.kind = tin.edge_kind.ravel()
        self.beyond = tin.neighbours.ravel()
        step = tin.vertices[self.end, :2] - tin.vertices[self.start, :2]
        self.length = np.hypot(step[:, 0], step[:, 1])
        # Each edge once, whichever of its sides has the lower triangle.
        self.once = (self.beyond < 0) | (self.beyond > half_edges // 3)
        key = (tin.grid[:, 0] << 31) | tin.grid[:, 1]
        self._order = np.argsort(key)
        self._key = key[self._order]

    def vertices_at(self, xy: np.ndarray) -> np.ndarray:
        """Vertex (q,) int64 at each place (q, 2) in metres of the CRS, -1 where there is none."""
        grid = np.rint((xy - self.tin.origin) / GRID)
        known = np.all(np.isfinite(grid) & (grid >= 0) & (grid < 1 << 30), axis=1)
        found = np.full(len(xy), -1, np.int64)
        whole = grid[known].astype(np.int64)
        key = (whole[:, 0] << 31) | whole[:, 1]
        place = np.minimum(np.searchsorted(self._key, key), len(self._key) - 1)
        found[known] = np.where(self._key[place] == key, self._order[place], -1)
        return found

    def triangles_around(self, vertices: np.ndarray) -> List[np.ndarray]:
        """The triangles at each of some distinct vertices (k,)."""
        number = np.full(len(self.tin.vertices), -1, np.int64)
        number[vertices] = np.arange(len(vertices))
        side = np.flatnonzero(number[self.start] >= 0)
        of = number[self.start[side]]
        order = np.argsort(of, kind="stable")
        stops = np.cumsum(np.bincount(of, minlength=len(vertices)))[:-1]
        return np.split(side[order] // 3, stops)

    def finding(
        self,
        kind: FindingKind,
        place: Iterable[float],
        value: float,
        unit: str,
        vertices: np.ndarray,
        triangles: np.ndarray,
        text: Text,
        **values: Any,
    ) -> Finding:
        """A finding at ``place`` (local x, y and height); the text is given place and value too."""
        x, y, height = (float(each) for each in place)
        east, north = x + float(self.tin.origin[0]), y + float(self.tin.origin[1])
        vertices = np.unique(vertices)
        source = self.tin.vertex_source[vertices]
        source = source[(source >= 0) & (source < len(self.points))]
        lines = np.unique(self.points.source_line[source])
        told = message(text, easting=east, northing=north, height=height, value=value, **values)
        return Finding(
            kind, east, north, height, value, unit,
            tuple(vertices.tolist()), tuple(np.unique(triangles).tolist()), tuple(lines[lines > 0].tolist()), told,
        )  # fmt: skip
