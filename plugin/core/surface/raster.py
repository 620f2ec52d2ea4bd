"""The surface as a grid of heights (DEM)."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, Iterator, NamedTuple, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from .locate import RIM
from .scan import Spans, scan_triangles
from .smooth import CloughTocher
from .tin import GRID, Tin

#: More cells than this are a slip of the keyboard (a grid of them would take 3 GB).
MOST_CELLS = 400_000_000
_CELLS = 1 << 18  # cells handled at once

BAD_CELL = Text(
    "raster.cell",
    QT_TRANSLATE_NOOP("core", "The cell size is {cell} m; give a number above 0."),
)
TOO_MANY_CELLS = Text(
    "raster.too_many_cells",
    QT_TRANSLATE_NOOP(
        "core",
        "A cell size of {cell} m makes {columns} x {rows} cells on this surface, more than {most}; give a larger cell.",
    ),
)


class GridFrame(NamedTuple):
    """A north-up grid of square cells: its ``west`` and ``south`` edge in the CRS, the ``cell`` in metres, its size."""

    west: float
    south: float
    cell: float
    columns: int
    rows: int


@dataclass(frozen=True)
class SmoothGrid:
    """Heights of a smooth interpolant, for drawing only.

    ``heights``: (rows, columns), north row first, nan outside the surface. ``largest_difference``: greatest distance in
    height from the TIN at a cell centre, metres, met at ``easting``, ``northing`` (nan if there is no cell).
    """

    heights: np.ndarray
    largest_difference: float
    easting: float
    northing: float
    method: str = "clough-tocher"


def grid_for(tin: Tin, cell: float) -> GridFrame:
    """The smallest grid that holds the surface, its edges at whole multiples of ``cell`` (m) in the CRS.

    A vertex on such an edge but for the rounding to the plan grid (as in a CRS in feet) adds no row or column.
    Raises SurveyError for a cell that is not above 0 or makes more than ``MOST_CELLS`` cells.
    """
    corners = tin.vertices[np.unique(tin.triangles), :2]
    return grid_over(corners.min(axis=0) + tin.origin, corners.max(axis=0) + tin.origin, cell)


def grid_over(low: np.ndarray, high: np.ndarray, cell: float) -> GridFrame:
    """As :func:`grid_for`, over the ground from a south-west corner ``low`` (2,) to a north-east one ``high`` (2,)."""
    if not (math.isfinite(cell) and cell > 0):
        raise SurveyError(BAD_CELL, cell=cell)
    slack = min(GRID, 0.01 * cell)
    west, south = np.floor((np.asarray(low, float) + slack) / cell)
    east, north = np.ceil((np.asarray(high, float) - slack) / cell)
    columns, rows = max(1, int(east - west)), max(1, int(north - south))
    _check_size(cell, columns, rows)
    return GridFrame(float(west * cell), float(south * cell), float(cell), columns, rows)


def sample_grid(
    tin: Tin, west: float, south: float, cell: float, columns: int, rows: int,
    progress: Progress = silent, dtype: Any = np.float64,
) -> np.ndarray:  # fmt: skip
    """Heights (rows, columns) of the surface at the cell centres, north row first, nan outside; exactly linear.

    ``west, south``: the grid's edge in the CRS, ``cell`` its square cell, all metres; the same as ``GridFrame``.
    ``dtype``: float64 or float32. A centre on the rim, or as near to it as ``locate.RIM``, belongs to the surface.
    Raises SurveyError as ``grid_for``.
    """
    frame = _checked(west, south, cell, columns, rows)
    upward = np.full((frame.rows, frame.columns), np.nan, dtype)
    flat = upward.ravel()
    for cells in _cells_of(tin, frame, progress):
        number = cells.row.astype(np.int64) * frame.columns + cells.column
        if cells.beside:
            cells, number = cells.where(np.isnan(flat[number])), number[np.isnan(flat[number])]
        flat[number] = cells.height
    return upward[::-1]


def smooth_grid(
    tin: Tin, west: float, south: float, cell: float, columns: int, rows: int,
    progress: Progress = silent, dtype: Any = np.float64,
) -> SmoothGrid:  # fmt: skip
    """Like ``sample_grid``, but by a smooth interpolant through the vertices: for drawing, never for numbers.

    The interpolant is the Clough-Tocher element of ``smooth.CloughTocher``; breaklines stay sharp.
    """
    frame = _checked(west, south, cell, columns, rows)
    element = CloughTocher(tin)
    upward = np.full((frame.rows, frame.columns), np.nan, dtype)
    worst = _Worst()
    corner = np.array([frame.west, frame.south]) - tin.origin
    for cells in _cells_of(tin, frame, progress):
        if cells.beside:
            cells = cells.where(np.isnan(upward[cells.row, cells.column]))
        place = (np.column_stack([cells.column, cells.row]) + 0.5) * frame.cell + corner
        value = element.heights(cells.triangle, place)
        upward[cells.row, cells.column] = value
        worst.see(np.abs(value - cells.height), cells.row, cells.column)
    easting, northing = frame.west + (worst.column + 0.5) * cell, frame.south + (worst.row + 0.5) * cell
    return SmoothGrid(upward[::-1], worst.difference, easting, northing)


@dataclass
class _Worst:
    """The greatest difference met so far and its cell."""

    difference: float = 0.0
    row: float = math.nan
    column: float = math.nan

    def see(self, difference: np.ndarray, row: np.ndarray, column: np.ndarray) -> None:
        if len(difference) == 0:
            return
        i = int(np.argmax(difference))
        if math.isnan(self.row) or difference[i] > self.difference:
            self.difference, self.row, self.column = float(difference[i]), float(row[i]), float(column[i])


def _checked(west: float, south: float, cell: float, columns: int, rows: int) -> GridFrame:
    if not (math.isfinite(cell) and cell > 0):
        raise SurveyError(BAD_CELL, cell=cell)
    if columns < 1 or rows < 1:
        raise ValueError("a grid needs at least one row and one column")
    _check_size(cell, columns, rows)
    return GridFrame(float(west), float(south), float(cell), int(columns), int(rows))


def _check_size(cell: float, columns: int, rows: int) -> None:
    if columns * rows > MOST_CELLS:
        raise SurveyError(TOO_MANY_CELLS, cell=cell, columns=columns, rows=rows, most=MOST_CELLS)


def _in_cells(tin: Tin, frame: GridFrame) -> np.ndarray:
    """Vertices (n,) complex128 in cells: the centre of the south-west cell is 0, columns are real, rows imaginary."""
    place = np.empty(len(tin.vertices), np.complex128)
    # Offsets are subtracted before anything is divided: national-grid coordinates would cost digits.
    place.real = (tin.vertices[:, 0] - (frame.west - tin.origin[0])) / frame.cell - 0.5
    place.imag = (tin.vertices[:, 1] - (frame.south - tin.origin[1])) / frame.cell - 0.5
    return place


@dataclass(frozen=True)
class _Cells:
    """Cells whose centre is on the surface: triangle, row (upwards), column and the TIN's height, each (k,).

    ``beside``: they may lie a little outside their triangle; any value a cell has already is the right one.
    """

    triangle: np.ndarray
    row: np.ndarray
    column: np.ndarray
    height: np.ndarray
    beside: bool = False

    def where(self, mask: np.ndarray) -> _Cells:
        return _Cells(self.triangle[mask], self.row[mask], self.column[mask], self.height[mask], self.beside)


def _cells_of(tin: Tin, frame: GridFrame, progress: Progress) -> Iterator[_Cells]:
    """All cells on the surface, part by part; a cell on the rim may come twice."""
    place = _in_cells(tin, frame)
    height = np.ascontiguousarray(tin.vertices[:, 2])
    for done, spans in scan_triangles(place, height, tin.triangles, frame.columns, frame.rows):
        for part in spans.parts(_CELLS):
            of, column = part.cells()
            yield _Cells(part.triangle[of], part.row[of], column, _linear(part, of, column))
        progress(done / len(tin.triangles), "raster")
    yield _on_rim(tin, place, frame)
    progress(1.0, "raster")


def _linear(spans: Spans, of: np.ndarray, column: np.ndarray) -> np.ndarray:
    """Heights of cell centres between the two edges of their triangle."""
    rise = (spans.right_height - spans.left_height) / (spans.right - spans.left)
    value: np.ndarray = spans.left_height[of] + (column - spans.left[of]) * rise[of]
    return value


def _on_rim(tin: Tin, place: np.ndarray, frame: GridFrame) -> _Cells:
    """Cells whose centre is on the rim, which the half-open rule may leave out."""
    triangle, side = np.nonzero(tin.neighbours < 0)
    a, b = tin.triangles[triangle, side], tin.triangles[triangle, (side + 1) % 3]
    steep = np.abs(place[b].imag - place[a].imag) >= np.abs(place[b].real - place[a].real)
    found = []
    for some, turn in ((np.flatnonzero(steep), False), (np.flatnonzero(~steep), True)):
        ends = place[a[some]], place[b[some]]
        if turn:  # a flat edge is asked column by column
            ends = tuple(end.imag + 1j * end.real for end in ends)  # type: ignore[assignment]
        of, line, cross, share, off = _centres_on(*ends, RIM / frame.cell)
        row, column = (cross, line) if turn else (line, cross)
        inside = (row >= 0) & (row < frame.rows) & (column >= 0) & (column < frame.columns)
        edge = some[of]
        z0, z1 = tin.vertices[a[edge], 2], tin.vertices[b[edge], 2]
        found.append([v[inside] for v in (triangle[edge], row, column, z0 + share * (z1 - z0), off)])
    first, second = found
    triangle, row, column, height, off = (np.concatenate(both) for both in zip(first, second))
    order = np.lexsort((triangle, off, row * frame.columns + column))
    nearest = order[np.diff((row * frame.columns + column)[order], prepend=-1) != 0]
    return _Cells(triangle[nearest], row[nearest], column[nearest], height[nearest], beside=True)


def _centres_on(
    start: np.ndarray, end: np.ndarray, tolerance: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Centres within ``tolerance`` of edges that are longer upwards than across.

    Edge number, row, column, share of the edge's length at the nearest place, distance.
    """
    low, high = np.minimum(start.imag, end.imag), np.maximum(start.imag, end.imag)
    first = np.ceil(low - tolerance)
    count = np.maximum(np.floor(high + tolerance) - first + 1, 0).astype(np.int64)
    of = np.repeat(np.arange(len(start)), count)
    row = np.arange(len(of)) - (np.cumsum(count) - count)[of] + first[of]
    edge = end - start
    rise = ((row - start.imag[of]) / edge.imag[of]).clip(0, 1)
    column = np.rint(start.real[of] + rise * edge.real[of])
    to = column + 1j * row - start[of]
    share = ((to * edge[of].conj()).real / np.abs(edge[of]) ** 2).clip(0, 1)
    off = np.abs(to - share * edge[of])
    on = off <= tolerance
    return of[on], row[on].astype(np.int64), column[on].astype(np.int64), share[on], off[on]


def centres(frame: GridFrame) -> Tuple[np.ndarray, np.ndarray]:
    """Eastings (columns,) and northings (rows,), north first, of the cell centres in the CRS, metres."""
    east = frame.west + (np.arange(frame.columns) + 0.5) * frame.cell
    north = frame.south + (np.arange(frame.rows)[::-1] + 0.5) * frame.cell
    return east, north
