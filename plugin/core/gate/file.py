"""The gate for a file that was read: what is put aside takes no part in finding out where the file lies."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Callable, Dict, NamedTuple, Optional

import numpy as np

from ..messages import SurveyError
from ..points.delimited import PointFile
from ..points.pointset import COLUMNS, PointSet
from .gate import Gate, pass_gate

#: So many points that are put aside are placed one by one.
_SINGLY = 100


class Parted(NamedTuple):
    """A file behind the gate: what goes on, what is put aside (None for nothing), the mask (n,) of what stays, and what
    the gate said.
    """

    kept: PointFile
    aside: Optional[PointFile]
    stays: np.ndarray
    gate: Gate


def part_file(read: PointFile) -> Parted:
    """``read`` parted by the gate. The account of lines goes with both parts; they belong together again."""
    gate = pass_gate(read.points, read.geographic)
    whole = replace(read, points=gate.points)
    stays = gate.points.used | ~read.points.used
    if stays.all():
        return Parted(whole, None, stays, gate)
    return Parted(_some(whole, stays), _some(whole, ~stays), stays, gate)


def joined(kept: PointFile, parted: Parted, placed: Callable[[PointFile], PointFile]) -> PointFile:
    """``kept``, as it has become, and what was put aside, as ``placed`` places it, in file order.

    What cannot be placed has no plan position any more: its line still leads back to it.
    """
    if parted.aside is None:
        return kept
    return replace(kept, points=_woven(kept.points, _placed(parted.aside, placed), parted.stays))


def _placed(aside: PointFile, placed: Callable[[PointFile], PointFile]) -> PointSet:
    """The points of ``aside`` as ``placed`` places them: together, or, where one of them stops that, one by one."""
    points = aside.points
    try:
        return placed(aside).points
    except SurveyError:
        pass
    place = np.column_stack([np.full((len(points), 2), np.nan), points.height])
    for i in range(min(len(points), _SINGLY)):
        try:
            one = placed(_some(aside, np.array([i]))).points
        except SurveyError:
            continue
        place[i] = one.easting[0], one.northing[0], one.height[0]
    easting, northing, height = place.T
    return replace(points, easting=easting, northing=northing, height=height)


def _some(file: PointFile, which: np.ndarray) -> PointFile:
    geographic = None if file.geographic is None else file.geographic.select(which)
    return replace(file, points=file.points.select(which), geographic=geographic)


def _woven(kept: PointSet, aside: PointSet, stays: np.ndarray) -> PointSet:
    """Both together, those of mask ``stays`` (n,) from ``kept``."""

    def column(one: np.ndarray, other: np.ndarray) -> np.ndarray:
        result = np.empty(len(stays), one.dtype)
        result[stays], result[~stays] = one, other
        return result

    columns: Dict[str, Any] = {key: column(getattr(kept, key), getattr(aside, key)) for key in COLUMNS}
    extra = {
        key: column(values, aside.extra.get(key, _empty(values, len(aside)))) for key, values in kept.extra.items()
    }
    return replace(kept, extra=extra, **columns)


def _empty(values: np.ndarray, count: int) -> np.ndarray:
    return np.full(count, np.nan if values.dtype.kind == "f" else "", values.dtype)
