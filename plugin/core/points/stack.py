"""Columns of several sets of points one behind the other."""

from __future__ import annotations

from typing import List, Optional, Sequence

import numpy as np

from .geographic import GeographicPoints, HeightKind
from .pointfile import PointFile
from .pointset import PointSet


def stack_extra(parts: Sequence[PointSet], name: str) -> np.ndarray:
    """A further column; unknown where a file has none. Numbers stay numbers when all files have them as such."""
    given = [part.extra[name] for part in parts if name in part.extra]
    numbers = all(values.dtype.kind == "f" for values in given)
    stacked: List[np.ndarray] = []
    for part in parts:
        values = part.extra.get(name)
        if values is None:
            values = np.full(len(part), np.nan) if numbers else np.full(len(part), "", object)
        elif not numbers and values.dtype.kind == "f":
            values = np.array(["" if value != value else repr(float(value)) for value in values], object)
        stacked.append(values)
    return np.concatenate(stacked)


def stack_geographic(files: Sequence[PointFile]) -> Optional[GeographicPoints]:
    parts = [file.geographic for file in files if file.geographic is not None]
    if not parts:
        return None
    kinds = {part.heights for part in parts}
    return GeographicPoints(
        np.concatenate([part.longitude for part in parts]), np.concatenate([part.latitude for part in parts]),
        np.concatenate([part.height for part in parts]), kinds.pop() if len(kinds) == 1 else HeightKind.UNKNOWN,
    )  # fmt: skip
