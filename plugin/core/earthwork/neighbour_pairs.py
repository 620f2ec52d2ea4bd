"""Which triangles of two surfaces meet, found from neighbour to neighbour: for slivers, whose boxes say little.

Fans and long strings make triangles that all meet in their boxes though each meets but a few. One begins all along the
rims of both surfaces, where every part of their common area has a beginning (and, to be there soon, at some triangles
in between), and goes on across each edge that runs through a triangle of the other surface, or along an edge of it,
until nothing new is found. So the work grows with what is found.
"""

from __future__ import annotations

from typing import Iterator, List, Tuple

import numpy as np

from ..surface.boxes import box_pairs
from ..surface.locate import triangles_at
from ..surface.tin import Tin
from .polygons import across, rows
from .triangles import Triangles, not_apart, side_of

_MANY = 50.0  # pairs of boxes expected for each triangle above which it is worth a look
_VAIN = 20.0  # pairs of boxes for each pair that meets above which they are not gone through
_SAMPLE = 64  # triangles looked at
_BEGIN = 2000  # triangles to begin at
_NEAR = 1e-8  # metres that are but rounding: an edge so near to another runs along it


def boxes_say_little(first: Tin, second: Tin, a: Triangles, b: Triangles) -> bool:
    """Whether going through the pairs of upright boxes would be nearly all in vain, and the way from neighbour to
    neighbour is open: both are surfaces with few edges at their rims."""
    if min(len(first.triangles), len(second.triangles)) < _SAMPLE:
        return False
    if any(np.count_nonzero(tin.neighbours < 0) > len(tin.triangles) for tin in (first, second)):
        return False
    size_a, size_b = ((each.high - each.low).max(axis=1) for each in (a, b))
    expected = len(size_b) * size_a @ size_a + len(size_a) * size_b @ size_b + 2 * size_a.sum() * size_b.sum()
    if expected <= _MANY * (len(size_a) + len(size_b)) * max(first.plan_area, second.plan_area):
        return False
    boxes = met = 0
    for j in np.linspace(0, len(size_b) - 1, _SAMPLE).astype(np.int64):
        near = np.flatnonzero(np.all((a.low <= b.high[j]) & (a.high >= b.low[j]), axis=1))
        boxes += len(near)
        met += len(not_apart(a, b, near, np.full(len(near), j))[0])
    return boxes > _VAIN * (met + _SAMPLE)


def neighbour_pairs(
    first: Tin, second: Tin, a: Triangles, b: Triangles, part: int
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (i, j) of triangles of two surfaces that meet, and some that touch: each once, in parts of up to ``part``.

    Memory is a small multiple of the surfaces and of the pairs that are so many steps from the first.
    """
    count = len(second.triangles)
    layer = np.unique(np.concatenate(_beginnings(first, second)))
    before = layer[:0]
    while len(layer):
        for start in range(0, len(layer), part):
            yield np.divmod(layer[start : start + part], count)
        found = [layer[:0]]
        for start in range(0, len(layer), part):
            i, j = np.divmod(layer[start : start + part], count)
            found += [i * count + j for i, j in _steps(first, a, b, i, j)]
            found += [i * count + j for j, i in _steps(second, b, a, j, i)]
        new = np.unique(np.concatenate(found))
        before, layer = layer, new[~(_in_sorted(new, layer) | _in_sorted(new, before))]


def _in_sorted(value: np.ndarray, known: np.ndarray) -> np.ndarray:
    """Mask (k,) of values that are among ``known`` (m,), which rise."""
    if len(known) == 0:
        return np.zeros(len(value), bool)
    mask: np.ndarray = known[np.searchsorted(known, value).clip(max=len(known) - 1)] == value
    return mask


def _steps(
    tin: Tin, own: Triangles, other: Triangles, i: np.ndarray, j: np.ndarray
) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """From pairs of triangle ``i`` (k,) of a surface and ``j`` (k,) of the other: those of a neighbour of i with j,
    across an edge that runs through or along j."""
    for edge in range(3):
        beyond = tin.neighbours[i, edge].astype(np.int64)
        on = np.flatnonzero(beyond >= 0)
        on = on[_runs_through(own, i[on], edge, other, j[on])]
        yield beyond[on], j[on]


def _runs_through(own: Triangles, i: np.ndarray, edge: int, other: Triangles, j: np.ndarray) -> np.ndarray:
    """Mask (k,) of the pairs in which an edge of triangle ``i`` runs through triangle ``j`` or along an edge of it; not
    those that only touch in a point."""
    ends = [edge, (edge + 1) % 3]
    x, y = (rows(column, i)[:, ends] for column in (own.x, own.y))
    near = _NEAR * np.hypot(x[:, 1] - x[:, 0], y[:, 1] - y[:, 0])
    side = side_of(own, i, edge, rows(other.x, j), rows(other.y, j))
    on_line = across(np.add, (np.abs(side) <= near[:, None]).astype(np.int64)) >= 2
    mask: np.ndarray = on_line | ((across(np.maximum, side) > near) & (across(np.minimum, side) < -near))
    for k in range(3):
        after = (k + 1) % 3
        near = _NEAR * np.hypot(other.x[j, after] - other.x[j, k], other.y[j, after] - other.y[j, k])
        side = side_of(other, j, k, x, y)
        mask &= (across(np.maximum, side) > near) | (across(np.minimum, side) >= -near)
    return mask


def _beginnings(first: Tin, second: Tin) -> List[np.ndarray]:
    """Numbers i * m + j of pairs of triangles: at vertices of the rims, where rims cross, at some of their middles."""
    count = len(second.triangles)
    found, rims = [], []
    for tin, other, own, its in ((first, second, count, 1), (second, first, 1, count)):
        some = np.arange(0, len(tin.triangles), len(tin.triangles) // _BEGIN + 1)
        middle, under = triangles_at(other, tin.vertices[tin.triangles[some], :2].mean(axis=1) + tin.origin)
        found.append(some[middle] * own + under * its)
        triangle, side = np.nonzero(tin.neighbours < 0)
        ends = [tin.vertices[tin.triangles[triangle, k], :2] + tin.origin for k in (side, (side + 1) % 3)]
        for place in ends:
            edge, under = triangles_at(other, place)
            found.append(triangle[edge] * own + under * its)
        rims.append((triangle, np.minimum(*ends) - _NEAR, np.maximum(*ends) + _NEAR))
    (i, low_a, high_a), (j, low_b, high_b) = rims
    return found + [i[p] * count + j[q] for p, q in box_pairs(low_a, high_a, low_b, high_b)]
