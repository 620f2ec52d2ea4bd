"""How the points of a file follow each other, and where they leave the way and come back as no walk could have."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from .kinds import number_order
from .parts import occupied_cells

#: So many points that lie apart may be strays; more of them are a part of the site.
FEW = 5
#: Steps up to this many medians are those of a walk; so large a share of all must be; where it is larger than the
#: other, no other order is looked for.
_USUAL, _SHARE, _CLEARLY = 4.0, 0.7, 0.98
_LEAST_STEPS = 20
#: Of more steps every second, third and so on tells what is usual.
_MANY_STEPS = 100_000
#: More points than so many in a square of a median step a side are in no order of a walk.
_CROWD = 10.0
#: A step longer than both is no step of a walk: usual steps, metres.
_LEAP_STEPS, _LEAP = 40.0, 20.0
#: Nobody goes faster (m/s) within so many seconds, and after them; nor than so many times what nine in ten steps of the
#: file stay below.
_SPEED, _BRIEFLY, _DRIVEN = 10.0, 5.0, 40.0
_FASTER = 3.0
#: Seconds by which times may be rounded.
_ROUNDED = 1.0
#: More places where a file leaves the way and comes back, also as a share of the points, are its own order.
_MOST, _MOST_SHARE = 10, 0.01
_STILL = 0.02


@dataclass(frozen=True)
class Order:
    """q points as they were recorded.

    ``index``: (q,) the points in that order; ``xy``: (q, 2) metres; ``time``: (q,) seconds, None where the file does
    not tell; ``usual``: median step (m), nan without steps; ``walk``: whether they are a walk, each near the last;
    ``speed``: what nobody exceeds by the usual steps (m/s), nan without times.
    """

    index: np.ndarray
    xy: np.ndarray
    time: Optional[np.ndarray]
    usual: float
    walk: bool
    speed: float

    def leaps(self, a: np.ndarray, b: np.ndarray) -> np.ndarray:
        """Mask (k,) of the ways from places ``a`` to ``b`` of the order that could not have been gone."""
        apart = np.hypot(*(self.xy[b] - self.xy[a]).T)
        if self.time is None:
            return np.asarray(apart > max(_LEAP, _LEAP_STEPS * self.usual))
        seconds = np.abs(self.time[b] - self.time[a])
        speed = np.where(seconds <= _BRIEFLY, max(self.speed, _SPEED), max(self.speed, _DRIVEN))
        return np.asarray((apart > _LEAP) & (apart > speed * (seconds + _ROUNDED)))


@dataclass(frozen=True)
class Excursion:
    """Points away from the way: ``first`` to ``last`` (excluded) of the order; ``before``, ``after``: the points of the
    way around them, -1 where it begins or ends there. ``back``: whether the way goes on where it was left.
    """

    first: int
    last: int
    before: int
    after: int
    back: bool


def order_of(xy: np.ndarray, time: np.ndarray, name: np.ndarray) -> Order:
    """The order in which places (n, 2), metres, were recorded: that of the file, or of ``time`` (n,) seconds or of the
    numbers in ``name`` (n,) where these make more of a walk of them.
    """
    index = np.arange(len(xy))
    known = _times(time)
    usual, share = _steps(xy)
    if share < _CLEARLY:
        by_number = number_order(name)
        others = [] if known is None else [np.argsort(known, kind="stable")]
        for other in others + ([] if by_number is None else [by_number]):
            there = _steps(xy[other])
            if there[1] > share:
                index, (usual, share) = other, there
    xy, known = xy[index], None if known is None else known[index]
    speed = np.nan if known is None else _top_speed(xy, known)
    return Order(index, xy, known, usual, share >= _SHARE, speed)


def excursions(order: Order) -> List[Excursion]:
    """Where few points lie away from the way, by the speed it would take or, without times, by the usual step.

    Empty where the points have no order of their own: then it tells nothing.
    """
    n = len(order.xy)
    if n < 2 or not (order.walk or order.time is not None):
        return []
    at = np.arange(n - 1)
    cuts = np.flatnonzero(order.leaps(at, at + 1)) + 1
    if not len(cuts) or len(cuts) > n / 10:
        return []
    start, end = np.append(0, cuts), np.append(cuts, n)
    on_way = _on_way(order, start, end)
    found = _away(order, start, end, on_way)
    return found if len(found) <= max(_MOST, _MOST_SHARE * n) else []


def _times(time: np.ndarray) -> Optional[np.ndarray]:
    """Times that tell the order; few missing ones are those of the point before. None where they do not."""
    known = np.isfinite(time)
    if np.count_nonzero(known) < max(2, 0.9 * len(time)):
        return None
    before = np.maximum.accumulate(np.where(known, np.arange(len(time)), 0))
    filled: np.ndarray = np.where(known, time, time[before])
    filled = np.where(np.isfinite(filled), filled, time[known][0])
    distinct = np.count_nonzero(np.diff(filled) != 0) + 1
    return filled if 4 * distinct >= len(time) else None


def _steps(xy: np.ndarray) -> Tuple[float, float]:
    """Median step (m) of places in order, nan for none, and which share of them are near it; 0 for what is no walk."""
    some = _some_steps(len(xy))
    step = np.hypot(*(xy[some + 1] - xy[some]).T)
    step = step[step > _STILL]
    if not len(step):
        return np.nan, 0.0
    usual = float(np.median(step))
    if len(step) < _LEAST_STEPS:
        return usual, 0.0
    after = some[some < len(xy) - 2]
    if float(np.median(np.hypot(*(xy[after + 2] - xy[after]).T))) < usual / 2:
        return usual, 0.0  # the next but one is the nearer one: several rovers take turns
    if _crowded(xy, usual):
        return usual, 0.0
    return usual, float(np.mean(step <= _USUAL * usual))


def _some_steps(n: int) -> np.ndarray:
    """The first points of all steps between ``n`` points, of very many of some spread evenly."""
    return np.arange(0, n - 1, max(1, n // _MANY_STEPS))


def _crowded(xy: np.ndarray, usual: float) -> bool:
    """Whether there are far more points than steps of that length need: they do not follow each other."""
    extent = np.array([column.max() - column.min() for column in xy.T])  # far faster than along axis 0
    if len(xy) > _CROWD * float(np.prod(np.floor(extent / usual) + 2.0)):
        return True
    return len(xy) > _CROWD * occupied_cells(xy, usual)


def _top_speed(xy: np.ndarray, time: np.ndarray) -> float:
    some = _some_steps(len(xy))
    seconds = np.abs(time[some + 1] - time[some])
    going = some[seconds > 0]
    if not len(going):
        return np.nan
    speed = np.hypot(*(xy[going + 1] - xy[going]).T) / seconds[seconds > 0]
    return max(_SPEED, _FASTER * float(np.percentile(speed, 90)))


def _on_way(order: Order, start: np.ndarray, end: np.ndarray) -> np.ndarray:
    """Mask of the stretches between leaps that are of the way: long ones, and those that follow on from it."""
    on_way = np.asarray(end - start > FEW)
    if not on_way.any():
        return on_way
    one = int(np.argmax(on_way))
    at = int(end[one]) - 1
    for k in range(one + 1, len(start)):
        if on_way[k] or not order.leaps(np.array([at]), start[k : k + 1])[0]:
            on_way[k], at = True, int(end[k]) - 1
    at = -1
    for k in range(len(start) - 1, -1, -1):
        if on_way[k] or (at >= 0 and not order.leaps(end[k : k + 1] - 1, np.array([at]))[0]):
            on_way[k], at = True, int(start[k])
    return on_way


def _away(order: Order, start: np.ndarray, end: np.ndarray, on_way: np.ndarray) -> List[Excursion]:
    found: List[Excursion] = []
    if not on_way.any():
        return found
    k = 0
    while k < len(start):
        if on_way[k]:
            k += 1
            continue
        first = k
        while k < len(start) and not on_way[k]:
            k += 1
        before = int(start[first]) - 1
        after = int(start[k]) if k < len(start) else -1
        back = before >= 0 and after >= 0 and not order.leaps(np.array([before]), np.array([after]))[0]
        found += [Excursion(int(start[i]), int(end[i]), before, after, back) for i in range(first, k)]
    return found
