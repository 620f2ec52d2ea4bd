"""The surface as a grid of heights in text, ``NAME.asc``, which QGIS and GDAL load (GDAL's driver AAIGrid).

Six lines of head (columns, rows, west and south edge, cell, the number that stands for no height), then the rows
from north to south. Coordinates are in the unit of the CRS, heights in its unit of height, with 4 decimals. The
format has no place for the CRS: it goes into the file ``NAME.prj`` beside it (see :mod:`.projection`).
"""

from __future__ import annotations

from typing import Tuple

import numpy as np

from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..progress import Progress, part, silent
from ..surface.raster import GridFrame, sample_grid
from ..surface.tin import Tin
from ..units import heights_to_crs_units, metres_per_unit
from .digits import to_digits

HEIGHT_DECIMALS = 4
NO_HEIGHT = -9999
_CELLS = 1 << 22  # cells sampled and written at a time; bounds the memory
_LETTERS = 9  # of a cell, about
_LARGE = 5_000_000  # cells

LARGE_GRID = Text(
    "grid.large",
    QT_TRANSLATE_NOOP(
        "core",
        "The DEM of {columns} x {rows} cells is a text of about {size:.0f} MB; a larger cell makes it smaller.",
    ),
)


def large_grid(frame: GridFrame) -> Tuple[Message, ...]:
    """A word about a grid that makes a large file; empty for others."""
    cells = frame.columns * frame.rows
    if cells <= _LARGE:
        return ()
    return (message(LARGE_GRID, columns=frame.columns, rows=frame.rows, size=cells * _LETTERS / 1e6),)


def write_asc(tin: Tin, frame: GridFrame, path: PathLike, progress: Progress = silent) -> None:
    """Write the heights of ``tin`` at the cell centres of ``frame``, exactly linear on its triangles.

    The file appears only when it is whole. Raises SurveyError when it cannot be written; ``progress`` is
    called with stage ``"raster"``.
    """
    unit = metres_per_unit(tin.crs)
    head = {
        "ncols": frame.columns,
        "nrows": frame.rows,
        "xllcorner": repr(frame.west / unit),
        "yllcorner": repr(frame.south / unit),
        "cellsize": repr(frame.cell / unit),
        "NODATA_value": NO_HEIGHT,
    }
    band = max(1, _CELLS // frame.columns)
    with replace_file(path) as temporary, open(temporary, "wb") as file:
        file.write("".join(f"{name} {value}\n" for name, value in head.items()).encode("ascii"))
        for top in range(frame.rows, 0, -band):
            low = max(0, top - band)
            share = part(progress, 1 - top / frame.rows, 1 - low / frame.rows)
            south = frame.south + low * frame.cell
            heights = sample_grid(tin, frame.west, south, frame.cell, frame.columns, top - low, share)
            file.write(_rows(heights_to_crs_units(heights, tin.crs)))
    progress(1.0, "raster")


def _rows(heights: np.ndarray) -> bytes:
    """Rows of text, nan as ``NO_HEIGHT``."""
    scaled = np.rint(np.where(np.isnan(heights), NO_HEIGHT, heights) * 10**HEIGHT_DECIMALS)
    rows = len(heights)
    text = to_digits(scaled.astype(np.int64).ravel(), HEIGHT_DECIMALS).reshape(rows, -1)
    return np.hstack([text, np.full((rows, 1), ord("\n"), np.uint8)]).tobytes()
