"""Which triangle is under a place, and how high is the surface there.

Exact: a place is taken to 2**-16 of the plan grid (1.5 nm, about what coordinates of millions of metres are
themselves rounded by), and on which side of an edge it lies is decided in whole numbers. So a place in the surface
always has its triangle, and the shares of the three corners are never negative and right to the last digits, also
in slivers. Beside the surface the nearest place of the rim answers, up to ``RIM`` away; farther off nothing does.
"""

from __future__ import annotations

from typing import Iterator, NamedTuple, Optional, Tuple

import numpy as np

from .cells import candidate_pairs
from .tin import GRID, Tin

#: How far (m) beside the rim a place still has the height of the nearest place of the rim: vertices are rounded to
#: the plan grid, and so are places that a user has on the rim.
RIM = GRID

_BITS = 16  # a place is a whole number of 2**-16 of the plan grid
_FRACTION = (1 << _BITS) - 1
_FEW = 20  # triangles for each place from which only those around it are looked at
_STEPS = 60  # triangles that a place is followed through


class _Places(NamedTuple):
    """Places in units of the plan grid: whole numbers ``x, y`` and ``fx, fy`` of 2**-16 beyond them, all int64 (q,)."""

    x: np.ndarray
    y: np.ndarray
    fx: np.ndarray
    fy: np.ndarray

    def take(self, which: np.ndarray) -> _Places:
        return _Places(*(column[which] for column in self))


def locate(tin: Tin, xy: np.ndarray, start: Optional[np.ndarray] = None) -> np.ndarray:
    """Triangle (q,) int64 under each place ``xy`` (q, 2) in metres of the CRS; -1 outside the surface.

    A place on an edge or a vertex belongs to the triangle of lowest number; one up to ``RIM`` beside the rim to that
    of the nearest edge of the rim; nan places are outside. ``start``: a triangle (q,) near each place, -1 where none is
    known; finds the same, sooner.
    """
    local = np.asarray(xy, float) - tin.origin
    found = np.full(len(local), len(tin.triangles), np.int64)
    near = _about(tin, local)
    if start is not None:
        near = _followed(tin, local, near, start, found)
    for i, t in _holding(tin, local, near):
        np.minimum.at(found, i, t)
    lost = near[found[near] == len(tin.triangles)]
    found[lost] = _beside_rim(tin, local[lost])
    found[found == len(tin.triangles)] = -1
    return found


def triangles_at(tin: Tin, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Every triangle that has one of the places ``xy`` (q, 2), metres of the CRS, in it or on its edge: pairs (place,
    triangle), (k,) each; some pairs come more than once."""
    local = np.asarray(xy, float) - tin.origin
    pairs = [(np.empty(0, np.int64), np.empty(0, np.int64)), *_holding(tin, local, _about(tin, local))]
    place, triangle = (np.concatenate(column) for column in zip(*pairs))
    return place, triangle


def _about(tin: Tin, local: np.ndarray) -> np.ndarray:
    """Numbers of the local places (q, 2) that are not far from the surface."""
    low, high = tin.vertices[:, :2].min(axis=0), tin.vertices[:, :2].max(axis=0)
    return np.flatnonzero(np.all((local >= low - RIM) & (local <= high + RIM), axis=1))


def _followed(tin: Tin, local: np.ndarray, near: np.ndarray, start: np.ndarray, found: np.ndarray) -> np.ndarray:
    """Put into ``found`` (q,) the triangles of places with numbers ``near`` that lie right inside the one that a walk
    from ``start`` (q,) comes to; the numbers of the others.

    The walk goes on over the edge from which the place lies farthest out. Where lines hold edges it may go in a circle.
    """
    places, now, number = _whole(local[near]), start[near], np.arange(len(near))
    whole = np.ones(len(near), bool)
    for _ in range(_STEPS):
        number = number[now[number] >= 0]
        if not len(number):
            break
        sides = _sides(tin, now[number], places.take(number))
        inside = np.all([(side > 0) | ((side == 0) & (beyond > 0)) for side, beyond in sides], axis=0)
        here = number[inside]
        found[near[here]], whole[here] = now[here], False
        outer = np.argmin([side for side, _ in sides], axis=0)
        now[number] = np.where(inside, -1, tin.neighbours[now[number], outer])
    return near[whole]


def _holding(tin: Tin, local: np.ndarray, near: np.ndarray) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """Pairs (place, triangle) as of :func:`triangles_at`, of the places with numbers ``near``, in parts."""
    if not len(near):
        return
    low, high = tin.vertices[:, :2].min(axis=0), tin.vertices[:, :2].max(axis=0)
    some = np.arange(len(tin.triangles))
    if _FEW * len(near) < len(some):
        some = _boxes_around(tin, local[near])
    corner = tin.vertices[tin.triangles[some]][:, :, :2] - low
    place, whole = np.maximum(local[near] - low, 0.0), _whole(local[near])
    cell = _cell(corner, float(np.prod(high - low)), len(place))
    for i, k in candidate_pairs(place[:, :1], place[:, 1:], corner[:, :, 0], corner[:, :, 1], cell):
        t = some[k]
        within = np.all([side >= 0 for side, _ in _sides(tin, t, whole.take(i))], axis=0)
        yield near[i[within]], t[within]


def _boxes_around(tin: Tin, local: np.ndarray) -> np.ndarray:
    """Numbers of the triangles between whose least and greatest x, and y, lies that of one of few places (q, 2)."""
    mask = np.ones(len(tin.triangles), bool)
    for axis in (0, 1):
        value, corner = np.sort(local[:, axis]), tin.vertices[:, axis]
        before = np.searchsorted(value, corner - RIM)[tin.triangles].min(axis=1)
        mask &= np.searchsorted(value, corner + RIM)[tin.triangles].max(axis=1) > before
    return np.flatnonzero(mask)


def _cell(corner: np.ndarray, whole: float, places: int) -> float:
    """A side of cells that suits the triangles (m, 3, 2) and how many places are asked for over ``whole`` m²: few far
    vertices must not make cells into which everything else falls.
    """
    if not len(corner):
        return 1.0
    even = float(np.sqrt(whole / max(1, min(len(corner), places) / 2)))
    typical = float(np.median(np.ptp(corner, axis=1).max(axis=1))) / 2
    return max(1e-3, min(even, typical))


def heights_at(tin: Tin, xy: np.ndarray) -> np.ndarray:
    """Height (q,) of the surface at each place ``xy`` (q, 2) in metres of the CRS.

    Up to ``RIM`` beside the rim that of its nearest place; nan farther off.
    """
    triangle = locate(tin, xy)
    height = np.full(len(triangle), np.nan)
    on = np.flatnonzero(triangle >= 0)
    height[on] = heights_in(tin, triangle[on], np.asarray(xy, float)[on] - tin.origin)
    return height


def heights_in(tin: Tin, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    """Heights (k,) at places ``local`` (k, 2), metres from the TIN's origin, each in its ``triangle`` (k,).

    A place beside its triangle gets the height of the triangle's nearest place.
    """
    height: np.ndarray = np.sum(weights_in(tin, triangle, local) * tin.vertices[tin.triangles[triangle], 2], axis=1)
    return height


def weights_in(tin: Tin, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    """Shares (k, 3) of the corners at places as in :func:`heights_in`: never negative, of sum 1."""
    places = _whole(local)
    sides = _sides(tin, triangle, places)
    weight = np.column_stack([side + fraction / (_FRACTION + 1) for side, fraction in sides])[:, [1, 2, 0]]
    beside = np.flatnonzero(np.any([side < 0 for side, _ in sides], axis=0))
    weight[beside] = _nearest_weights(tin, triangle[beside], places.take(beside))
    result: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
    return result


def covers(tin: Tin, triangle: np.ndarray, local: np.ndarray) -> np.ndarray:
    """Mask (k,) of places ``local`` (k, 2), as in :func:`heights_in`, that lie in or on the edge of ``triangle``."""
    mask: np.ndarray = np.all([side >= 0 for side, _ in _sides(tin, triangle, _whole(local))], axis=0)
    return mask


def _whole(local: np.ndarray) -> _Places:
    fine = np.rint(local / GRID * (_FRACTION + 1)).astype(np.int64)
    return _Places(*(fine >> _BITS).T, *(fine & _FRACTION).T)


def _sides(tin: Tin, triangle: np.ndarray, places: _Places) -> Tuple[Tuple[np.ndarray, np.ndarray], ...]:
    """Twice the area between each edge of ``triangle`` (k,) and its place, exact, in units of the grid squared.

    For edges 0, 1, 2 a pair of int64 (k,): the whole part, rounded down (not negative: the place is on the edge or to
    its left), and 2**-16 beyond it.
    """
    corner = tin.triangles[triangle].T
    x, y = (np.take(column, corner) for column in (tin.grid[:, 0], tin.grid[:, 1]))
    result = []
    for i, j in ((0, 1), (1, 2), (2, 0)):
        ux, uy = x[j] - x[i], y[j] - y[i]
        beyond = ux * places.fy - uy * places.fx
        side = ux * (places.y - y[i]) - uy * (places.x - x[i]) + (beyond >> _BITS)
        result.append((side, beyond & _FRACTION))
    return tuple(result)


def _nearest_weights(tin: Tin, triangle: np.ndarray, places: _Places) -> np.ndarray:
    """Shares (k, 3) of the corners at the place of each triangle's edges that is nearest to its place."""
    best = np.full(len(triangle), np.inf)
    weight = np.zeros((len(triangle), 3))
    for i, j in ((0, 1), (1, 2), (2, 0)):
        along, distance = _nearest_on(tin, tin.triangles[triangle, i], tin.triangles[triangle, j], places)
        nearer = np.flatnonzero(distance < best)
        best[nearer] = distance[nearer]
        weight[nearer] = 0.0
        weight[nearer, i], weight[nearer, j] = 1.0 - along[nearer], along[nearer]
    return weight


def _nearest_on(tin: Tin, a: np.ndarray, b: np.ndarray, places: _Places) -> Tuple[np.ndarray, np.ndarray]:
    """The nearest place of edges from vertex ``a`` to ``b`` (k,): how far along, 0..1, and its distance, metres."""
    (ax, ay), (bx, by) = tin.grid[a].T, tin.grid[b].T
    px, py = places.x - ax + places.fx / (_FRACTION + 1), places.y - ay + places.fy / (_FRACTION + 1)
    ux, uy = (bx - ax).astype(float), (by - ay).astype(float)
    along = ((px * ux + py * uy) / (ux * ux + uy * uy)).clip(0.0, 1.0)
    between = np.abs(ux * py - uy * px) / np.hypot(ux, uy)
    to_end = np.where(along > 0, np.hypot(px - ux, py - uy), np.hypot(px, py))
    return along, np.where((along > 0) & (along < 1), between, to_end) * GRID


def _beside_rim(tin: Tin, place: np.ndarray) -> np.ndarray:
    """The triangle of the rim's edge that is nearest to each local ``place`` (q, 2), within ``RIM``, or m.

    Of several edges that are equally near, the triangle of lowest number.
    """
    found = np.full(len(place), len(tin.triangles), np.int64)
    triangle, edge = np.nonzero(tin.neighbours < 0)
    if len(place) == 0 or len(triangle) == 0:
        return found
    low = tin.vertices[:, :2].min(axis=0) - 3 * RIM
    a, b = tin.triangles[triangle, edge], tin.triangles[triangle, (edge + 1) % 3]
    ends = np.stack([tin.vertices[a, :2], tin.vertices[b, :2]], axis=1) - low
    # a triangle around each place that holds the circle of radius RIM
    around = (place - low)[:, None] + RIM * np.array([[-2.0, -1.0], [2.0, -1.0], [0.0, 3.0]])
    cell = max(1e-3, float(np.median(np.hypot(*(ends[:, 1] - ends[:, 0]).T))))
    whole = _whole(place)
    best = np.full(len(place), RIM)
    for i, k in candidate_pairs(around[:, :, 0], around[:, :, 1], ends[:, :, 0], ends[:, :, 1], cell):
        _, distance = _nearest_on(tin, a[k], b[k], whole.take(i))
        order = np.lexsort((triangle[k], distance, i))
        first = order[np.diff(i[order], prepend=-1) != 0]
        i, k, distance = i[first], k[first], distance[first]
        nearer = (distance < best[i]) | ((distance == best[i]) & (triangle[k] < found[i]))
        best[i[nearer]], found[i[nearer]] = distance[nearer], triangle[k[nearer]]
    return found
