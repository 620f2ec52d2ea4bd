"""Records that say the same again: lines stored twice, and points stored while standing still."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Tuple

import numpy as np

from ..points.pointset import PointSet
from .walk import STILL_SHARE

_LEAST = 3  # records that make a stop
_GRID = 1e-4
_MIX = np.uint64(0x9E3779B97F4A7C15)  # odd: multiplying by it loses nothing


@dataclass(frozen=True)
class Stop:
    """Points stored in one place: ``indices`` (k,) in order, the first speaks for all. ``mean``: (3,) easting,
    northing,
    height, weighted by the stated sigmas; ``spread``: (3,) standard deviations of a record (m); ``sigma``: (3,)
    those of the mean as the spread gives it (neighbouring records are not independent: it is a lower bound).
    """

    indices: np.ndarray
    mean: np.ndarray
    spread: np.ndarray
    sigma: np.ndarray


def repeated_records(points: PointSet, mask: np.ndarray) -> np.ndarray:
    """Mask (n,) of the points of ``mask`` with position, height and time of an earlier one."""
    index = np.flatnonzero(mask & np.isfinite(points.easting + points.northing + points.height))
    if not len(index):
        return np.zeros(len(points), bool)
    time = np.where(np.isfinite(points.time[index]), points.time[index], -1.0)
    columns = [np.rint(c[index] / _GRID) for c in (points.easting, points.northing, points.height)]
    columns.append(np.rint(time * 1000))
    # Only those that share a number mixed from all four columns can be the same.
    mixed = np.zeros(len(index), np.uint64)
    for column in columns:
        mixed = (mixed ^ column.astype(np.int64).view(np.uint64)) * _MIX
    ordered = np.sort(mixed)
    twice = ordered[1:][ordered[1:] == ordered[:-1]]
    if not len(twice):
        return np.zeros(len(points), bool)
    some = np.flatnonzero(np.isin(mixed, twice))
    index, columns = index[some], [column[some] for column in columns]
    order = np.lexsort([index, *columns])
    same = np.ones(len(order) - 1, bool)
    for column in columns:
        same &= np.diff(column[order]) == 0
    repeated = np.zeros(len(points), bool)
    repeated[index[order[1:][same]]] = True
    return repeated


def find_stops(points: PointSet, index: np.ndarray, spacing: float) -> List[Stop]:
    """Stops among the auto-recorded points ``index`` (q,), in order of recording.

    A stop is three records or more that follow each other within 0.3 of ``spacing`` (m) of the first of them.
    """
    if len(index) < _LEAST or not np.isfinite(spacing):
        return []
    x, y = points.easting[index], points.northing[index]
    reach = STILL_SHARE * spacing
    small = np.hypot(np.diff(x), np.diff(y)) < reach
    start = np.flatnonzero(small & ~np.append(False, small[:-1]))
    end = np.flatnonzero(small & ~np.append(small[1:], False)) + 2
    stops = []
    for first, last in zip(start.tolist(), end.tolist()):
        while last - first >= _LEAST:
            near = np.hypot(x[first:last] - x[first], y[first:last] - y[first]) < reach
            stop = first + (int(np.argmin(near)) if not near.all() else last - first)
            if stop - first >= _LEAST:
                stops.append(_stop(points, index[first:stop]))
            first = max(stop, first + 1)
    return stops


def _stop(points: PointSet, indices: np.ndarray) -> Stop:
    xyz = np.column_stack([points.easting[indices], points.northing[indices], points.height[indices]])
    middle = np.median(xyz, axis=0)
    away = np.abs(xyz - middle)
    usual = 1.4826 * np.median(away, axis=0)
    good = np.all(away <= np.maximum(4 * usual, 0.002), axis=1)  # the pole may be lifted before walking on
    if not good.any():  # each is the odd one of some axis: none of them is better than the others
        good[:] = True
    sigma_h, sigma_v = points.sigma_h[indices], points.sigma_v[indices]
    mean, spread, error = np.empty(3), np.empty(3), np.empty(3)
    for k, sigma in enumerate((sigma_h, sigma_h, sigma_v)):
        stated = np.isfinite(sigma).all() and (sigma > 0).all()
        weight = good / sigma**2 if stated else good.astype(float)
        mean[k] = np.sum(weight * xyz[:, k]) / weight.sum()
        spread[k] = xyz[good, k].std(ddof=1) if good.sum() > 1 else np.nan
        error[k] = spread[k] * np.sqrt(np.sum(weight**2)) / weight.sum()
    return Stop(indices, mean, spread, error)


def with_means(points: PointSet, stops: List[Stop]) -> Tuple[PointSet, np.ndarray]:
    """The points with each stop's first record moved to the mean, and a mask of the other records.

    What was recorded stays in the extra columns easting_recorded, northing_recorded and height_recorded (nan for
    points that were not moved).
    """
    others = np.zeros(len(points), bool)
    if not stops:
        return points, others
    moved = [points.easting.copy(), points.northing.copy(), points.height.copy()]
    kept = [np.full(len(points), np.nan) for _ in range(3)]
    for stop in stops:
        first = stop.indices[0]
        for k in range(3):
            kept[k][first] = moved[k][first]
            moved[k][first] = stop.mean[k]
        others[stop.indices[1:]] = True
    extra = dict(points.extra)
    extra.update(zip(("easting_recorded", "northing_recorded", "height_recorded"), kept))
    return replace(points, easting=moved[0], northing=moved[1], height=moved[2], extra=extra), others
