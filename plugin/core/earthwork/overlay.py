"""The common refinement of two triangulations: convex pieces on which both surfaces are planes."""

from __future__ import annotations

from collections import deque
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from typing import Callable, Deque, Iterator, Optional, Tuple, TypeVar

import numpy as np

from ..progress import Progress, silent
from ..surface.boxes import box_pairs
from ..surface.tin import Tin
from .neighbour_pairs import boxes_say_little, neighbour_pairs
from .polygons import across, areas, clip, rows
from .triangles import Triangles, not_apart, side_of
from .turned_boxes import turned_boxes

_THREADS = 2  # numpy lets go of Python's lock in long steps; more threads gain little
_PART = 200_000  # candidate pairs handled at once: small enough for the processor's cache

_Result = TypeVar("_Result")


@dataclass(frozen=True)
class Pieces:
    """k convex pieces.

    ``x, y``: (k, m) corners, counter-clockwise, the last repeated where there are fewer; metres from ``origin``
    (2,), which is in metres of the CRS. ``first``, ``second``: (k,) triangle of each surface.
    ``first_height``, ``second_height``: (k, m) at the corners.
    """

    x: np.ndarray
    y: np.ndarray
    origin: np.ndarray
    first: np.ndarray
    second: np.ndarray
    first_height: np.ndarray
    second_height: np.ndarray

    def __len__(self) -> int:
        return len(self.first)

    def take(self, which: np.ndarray) -> Pieces:
        """The pieces of a mask or index array."""
        if which.dtype == bool:
            which = np.flatnonzero(which)
        columns = (self.x, self.y, self.first_height, self.second_height)
        x, y, first_height, second_height = (rows(column, which) for column in columns)
        return Pieces(x, y, self.origin, self.first[which], self.second[which], first_height, second_height)


def common_pieces(first: Tin, second: Tin, progress: Progress = silent) -> Iterator[Pieces]:
    """Cut the common area of two surfaces of one CRS into pieces, in parts of bounded size.

    Pieces of no area are left out. The pieces do not overlap and together cover where both surfaces exist.
    """
    for parts in map_pieces(first, second, list, progress):
        yield from parts


def map_pieces(
    first: Tin, second: Tin, work: Callable[[Iterator[Pieces]], _Result], progress: Progress = silent
) -> Iterator[_Result]:
    """What ``work`` makes of the pieces of each part, in their order, two parts at a time."""
    base = np.minimum(first.origin, second.origin)
    a, b = Triangles(first, base), Triangles(second, base)
    done = 0
    total = max(1, len(first.triangles))
    waiting: Deque[Future[_Result]] = deque()
    pool = ThreadPoolExecutor(_THREADS)
    try:
        for i, j in _near_pairs(first, second, a, b):
            waiting.append(pool.submit(lambda i, j: work(_pieces(a, b, i, j, base)), i, j))
            if len(waiting) > 2 * _THREADS:
                yield waiting.popleft().result()
            done += len(i)
            progress(min(0.99, done / (12.0 * total)), "earthwork")
        while waiting:
            yield waiting.popleft().result()
    finally:
        pool.shutdown(wait=True, cancel_futures=True)
    progress(1.0, "earthwork")


def split_pieces(
    pieces: Pieces, tin: Tin, progress: Optional[Progress] = None
) -> Iterator[Tuple[Pieces, np.ndarray, np.ndarray]]:
    """Cut pieces along the edges of a third triangulation of the same CRS, in parts.

    Yields the new pieces, the number (k,) of the piece each is part of and its triangle (k,) of ``tin``. What
    ``tin`` does not cover is left out.
    """
    if len(pieces) == 0 or len(tin.triangles) == 0:
        return
    cutter = Triangles(tin, pieces.origin)
    low = np.column_stack([across(np.minimum, value) for value in (pieces.x, pieces.y)])
    high = np.column_stack([across(np.maximum, value) for value in (pieces.x, pieces.y)])
    near = np.flatnonzero(np.all((cutter.low <= high.max(axis=0)) & (cutter.high >= low.min(axis=0)), axis=1))
    for i, j in box_pairs(low, high, cutter.low[near], cutter.high[near], _PART):
        yield from _cut_by(pieces, cutter, i, near[j])
        if progress is not None:
            progress(0.5, "earthwork")


def _cut_by(
    pieces: Pieces, cutter: Triangles, i: np.ndarray, j: np.ndarray
) -> Iterator[Tuple[Pieces, np.ndarray, np.ndarray]]:
    """Pieces ``i`` (k,) within triangles ``j`` (k,) of the cutter: first those wholly inside, then the parts."""
    whole = np.ones(len(i), bool)
    for edge in range(3):
        side = side_of(cutter, j, edge, rows(pieces.x, i), rows(pieces.y, i))
        meets = across(np.maximum, side) > 0
        i, j, whole = i[meets], j[meets], whole[meets] & (across(np.minimum, side[meets]) >= 0)
    if np.any(whole):
        yield pieces.take(i[whole]), i[whole], j[whole]
    i, j = i[~whole], j[~whole]
    some = pieces.take(i)
    columns: Tuple[np.ndarray, ...] = (some.x, some.y, some.first_height, some.second_height)
    for edge in range(3):
        columns = clip(side_of(cutter, j, edge, columns[0], columns[1]), *columns)
    left = areas(columns[0], columns[1]) > 0 if len(i) else np.zeros(0, bool)
    if np.any(left):
        x, y, first_height, second_height = (rows(column, left) for column in columns)
        first, second = some.first[left], some.second[left]
        yield Pieces(x, y, pieces.origin, first, second, first_height, second_height), i[left], j[left]


def _near_pairs(first: Tin, second: Tin, a: Triangles, b: Triangles) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs of triangles that may meet, each once, in parts."""
    turned = turned_boxes(first, second, a, b)
    if turned is not None:
        return box_pairs(*turned, _PART)
    if boxes_say_little(first, second, a, b):
        return neighbour_pairs(first, second, a, b, _PART)
    return box_pairs(a.low, a.high, b.low, b.high, _PART)


def _pieces(a: Triangles, b: Triangles, i: np.ndarray, j: np.ndarray, base: np.ndarray) -> Iterator[Pieces]:
    i, j = not_apart(a, b, i, j)
    x, y = rows(a.x, i), rows(a.y, i)
    for edge in range(3):
        x, y = clip(side_of(b, j, edge, x, y), x, y)
    some = np.flatnonzero(areas(x, y) > 0) if len(x) else np.zeros(0, np.int64)
    x, y, i, j = rows(x, some), rows(y, some), i[some], j[some]
    if len(i):
        yield Pieces(x, y, base, i, j, a.height(i, x, y), b.height(j, x, y))
