"""Where a site that does not fit on one sheet is cut."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, inf
from typing import Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin

NO_ROOM = Text(
    "frames.no_room",
    QT_TRANSLATE_NOOP(
        "core",
        "At 1 : {scale:g} a sheet shows {width:.1f} m by {height:.1f} m, of which {overlap:.1f} m overlap: too little "
        "to cover a site; choose a larger paper or another scale.",
    ),
)
TOO_MANY = Text(
    "frames.too_many",
    QT_TRANSLATE_NOOP(
        "core",
        "At 1 : {scale:g} the site would need {count} sheets; up to {most} are made. Choose a smaller scale or a "
        "larger paper.",
    ),
)

MOST_SHEETS = 200


@dataclass(frozen=True)
class SheetFrames:
    """k rectangles of one size, row by row from the north-west.

    ``low``, ``high``: (k, 2) south-west and north-east corners, metres from ``origin``. ``row``, ``column``: (k,)
    from 0, of the grid of frames that they are of.
    """

    low: np.ndarray
    high: np.ndarray
    row: np.ndarray
    column: np.ndarray
    origin: np.ndarray

    def __len__(self) -> int:
        return len(self.low)


def sheet_frames(tin: Tin, width: float, height: float, overlap: float, scale: float) -> SheetFrames:
    """Frames of ``width`` by ``height`` metres on the ground that show all of ``tin`` at 1 : ``scale``.

    Neighbours share ``overlap`` metres or more. The frames stand evenly about the middle of the site; those with no
    ground in them are left out. Raises SurveyError where the sheet is smaller than the overlap leaves sense in, or
    where more than ``MOST_SHEETS`` would be needed.
    """
    if not (width > 2 * overlap >= 0 and height > 2 * overlap and width < inf and height < inf):
        raise SurveyError(NO_ROOM, scale=scale, width=width, height=height, overlap=overlap)
    corners = tin.vertices[tin.triangles][:, :, :2]
    low, high = corners.min(axis=(0, 1)), corners.max(axis=(0, 1))
    size = np.array([width, height])
    count = np.array([_count(span, length, overlap) for span, length in zip(high - low, size)])
    if int(count.prod()) > MOST_SHEETS:
        raise SurveyError(TOO_MANY, scale=scale, count=int(count.prod()), most=MOST_SHEETS)
    step = np.where(count > 1, (high - low - size) / np.maximum(count - 1, 1), 0.0)
    first = np.where(count > 1, low, (low + high - size) / 2)
    rows, columns = (cells.ravel() for cells in np.mgrid[0 : count[1], 0 : count[0]])
    south_west = first + np.column_stack([columns, count[1] - 1 - rows]) * step
    holds = np.array([_shows_ground(corners, corner, corner + size) for corner in south_west])
    kept = south_west[holds]
    return SheetFrames(kept, kept + size, rows[holds], columns[holds], tin.origin)


def _count(span: float, length: float, overlap: float) -> int:
    """Frames of ``length`` that cover ``span`` where neighbours share ``overlap``."""
    return max(1, ceil((span - overlap) / (length - overlap) - 1e-9))


def _shows_ground(corners: np.ndarray, low: np.ndarray, high: np.ndarray) -> bool:
    """Whether a triangle (k, 3, 2) has area in common with the rectangle: no side of either parts them."""
    near = np.all((corners.max(axis=1) > low) & (corners.min(axis=1) < high), axis=1)
    corners = corners[near]
    box = np.array([low, [high[0], low[1]], high, [low[0], high[1]]])
    apart = np.zeros(len(corners), bool)
    for i in range(3):
        start, end = corners[:, i], corners[:, (i + 1) % 3]
        side = end - start
        # counter-clockwise: the rectangle is parted from the triangle where all of it is right of a side
        to_box = box[None, :, :] - start[:, None, :]
        apart |= np.all(side[:, None, 0] * to_box[:, :, 1] - side[:, None, 1] * to_box[:, :, 0] <= 0, axis=1)
    return bool(np.any(~apart))


def grid_spacing(scale: float, unit_metres: float, apart: float = 0.1) -> Tuple[float, int]:
    """Spacing of grid marks in units of ``unit_metres``, and the decimals to write it with.

    The largest of 1, 2, 5 × 10ⁿ that is at most ``apart`` metres on the paper at 1 : ``scale``.
    """
    most = scale * apart / unit_metres
    power = int(np.floor(np.log10(most)))
    digit = max(digit for digit in (1, 2, 5) if digit * 10.0**power <= most * (1 + 1e-9))
    return digit * 10.0**power, max(0, -power)
