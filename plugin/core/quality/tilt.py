"""Whether the rover compensates the tilt of its pole, told by the heights themselves.

A pole of length L that leans by t carries the antenna L (1 - cos t) lower than an upright one. A rover that takes no
account of it stores heights that are too low by so much; one that compensates stores them right. So heights are held
against 1 - cos t, along the walk and at places visited twice: how many metres they fall with it is about the length of
the pole, 1.5 to 2.5 m, where tilt is not compensated, and about 0 where it is. A compensating rover with a pole
length wrong by some centimetres shows these centimetres.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from scipy.stats import t as student

from ..points.pointset import PointSet
from .crossings import breaks, find_level_meetings
from .noise import robust_sigma, usual_noise
from .walk import Walk, make_walk

#: Shorter than any pole (of 1.5 to 2.5 m: common practice, no source), half of a usual one, and more than the error
#: of a pole length that was entered wrongly, m.
LEAST_POLE, HALF_POLE, MOST_WRONG = 1.4, 1.0, 0.5
#: Probability from which on the file has told.
SURE = 0.99

_POLE = 2.0  # m
_UPRIGHT = 60.0  # degrees: nobody works with a pole that leans more
_LAGS = (3, 6)  # points on either side that a height is held against
_STRAIGHT = 0.95  # of the path: the distance of its ends
_SAMPLE = 60_000  # points of a large walk that tell
_MOST = 200_000  # points of a walk that is searched for places visited twice
_BLOCK = 1000  # of a sample follow each other
_STRONG = 5.0  # standard deviations: what an instrument must tell
_LONG = 5  # clusters that make a long one
_ASIDE = 0.2  # m: on ground of a slope of 1 : 2 a leaning pole makes 0.3 to 0.6, a rover that compensates nothing
_SIDES = 2  # to which a walker leans in a survey, taken as independent
_LEAST = 20  # observations that tell anything
_SURE_OF_PART = 0.998  # of which there are many
_PART = 150  # observations that must not say the opposite by themselves
_MOST_PARTS = 60
_FALLS = np.arange(-1.0, 5.01, 0.25)  # m, tried first
_CUT = 4.685  # of Tukey's biweight: 95 % efficient for normal errors (Huber and Ronchetti 2009; from memory)


@dataclass(frozen=True)
class TiltEvidence:
    """``fall``: how far heights fall for each unit of 1 - cos(tilt), m; nan where nothing tells. ``sigma``: its
    standard deviation, m, with ``freedom`` degrees of freedom. ``compensated``: None where the file does not tell.
    ``confidence``: as :func:`verdict` has it, of the whole. ``apart``: indices of the first
    and the last point of what by itself says the opposite of the rest, where there is such a part of the walk.
    """

    fall: float
    sigma: float
    freedom: float
    compensated: Optional[bool]
    confidence: float
    apart: Optional[Tuple[int, int]] = None


NO_EVIDENCE = TiltEvidence(float("nan"), float("inf"), 1.0, None, 0.5)


@dataclass(frozen=True)
class Slope:
    """A slope of a regression, its standard deviation and the degrees of freedom of that. ``aside``: how far (m)
    heights go with sin(tilt), up here and down there: what a slope of the ground makes of places that are off.
    """

    value: float
    sigma: float
    freedom: float
    aside: float = 0.0


@dataclass(frozen=True)
class _Observations:
    """What each of m filtered heights tells: itself, the same filter of 1 - cos(tilt), the same of the points beside
    (an instrument, whose errors are others), of sin(tilt), the point of the walk, and the cluster whose errors may hang
    together.
    """

    height: np.ndarray
    lean: np.ndarray
    beside: np.ndarray
    aside: np.ndarray
    point: np.ndarray
    cluster: np.ndarray

    def take(self, which: np.ndarray) -> _Observations:
        return _Observations(*(getattr(self, name)[which] for name in self.__dataclass_fields__))


def tilt_evidence(points: PointSet, usable: np.ndarray) -> TiltEvidence:
    """What the heights of ``points`` say of tilt; ``usable``: mask (n,) of those to ask, which are fixed and placed."""
    tilt = np.abs(points.tilt)
    with np.errstate(invalid="ignore"):
        known = usable & (tilt <= _UPRIGHT) & np.isfinite(points.easting + points.northing + points.height)
    index = np.flatnonzero(known)
    if len(index) < _LEAST:
        return NO_EVIDENCE
    x, y = (column[index] - np.median(column[index]) for column in (points.easting, points.northing))
    walk = make_walk(index, x, y, points.height[index])
    if not np.isfinite(walk.spacing):
        return NO_EVIDENCE
    return _judged(walk, np.radians(tilt[index]))


def _judged(walk: Walk, tilt: np.ndarray) -> TiltEvidence:
    along = [_along(walk, tilt, lag) for lag in _LAGS]
    steep = _steepness(walk)
    slopes = [fitted(each, steep) for each in along]
    best = int(np.argmin([slope.sigma for slope in slopes]))
    met = fitted(_at_meetings(walk, tilt), steep)
    slope = _together(slopes[best], met)
    if not np.isfinite(slope.sigma):
        return NO_EVIDENCE
    compensated, confidence = verdict(slope)
    if compensated and min(each.aside for each in slopes) > _ASIDE:
        compensated = None  # steep ground shows that places are off, as no compensating rover's are
    apart = None if compensated is None else _apart(along, steep, not compensated)
    if compensated is not None and (apart is not None or verdict(met)[0] is (not compensated)):
        compensated = None
    first_and_last = None if apart is None else (int(walk.index[apart[0]]), int(walk.index[apart[1]]))
    return TiltEvidence(slope.value, slope.sigma, slope.freedom, compensated, confidence, first_and_last)


def verdict(slope: Slope, sure: float = SURE) -> Tuple[Optional[bool], float]:
    """Whether a fall is that of a rover that compensates, None where it may be either's, and the probability that it
    is not the other's.
    """
    if not np.isfinite(slope.sigma):
        return None, 0.5
    small, large, rising = (
        float(student.cdf(over / slope.sigma, slope.freedom))
        for over in (LEAST_POLE - slope.value, slope.value - MOST_WRONG, -MOST_WRONG - slope.value)
    )
    if slope.value < MOST_WRONG:
        return (True if small >= sure > rising else None), small
    return (False if large >= sure and slope.value > HALF_POLE else None), large


def _apart(along: List[_Observations], steep: float, compensated: bool) -> Optional[Tuple[int, int]]:
    """First and last point of the walk among the parts that say ``compensated`` by themselves: another rover's, or its
    compensation was lost there. None where no part does.
    """
    found: List[int] = []
    for seen in along:
        parts, noise = min(max(len(seen.height) // _PART, 1), _MOST_PARTS), _noise(seen)
        for part in np.array_split(np.arange(len(seen.height)), parts):
            if verdict(fitted(seen.take(part), steep, noise), _SURE_OF_PART)[0] is compensated:
                found += [int(seen.point[part[0]]), int(seen.point[part[-1]])]
    return (min(found), max(found)) if found else None


def _together(one: Slope, other: Slope) -> Slope:
    """Weighted mean of two slopes; the freedom of the weaker is not counted for the stronger."""
    if not np.isfinite(one.sigma) or not np.isfinite(other.sigma):
        return one if np.isfinite(one.sigma) else other
    a, b = 1 / one.sigma**2, 1 / other.sigma**2
    # Welch and Satterthwaite, for a weighted mean (from memory).
    freedom = (a + b) ** 2 / (a**2 / one.freedom + b**2 / other.freedom)
    return Slope((a * one.value + b * other.value) / (a + b), float((a + b) ** -0.5), freedom)


# --- observations --------------------------------------------------------------------------------


def _along(walk: Walk, tilt: np.ndarray, lag: int) -> _Observations:
    """Heights less the line between the two ``lag`` points before and behind, on straight stretches."""
    at = np.arange(len(walk))
    every = -(-len(walk) // _SAMPLE) or 1
    i = at[(at // _BLOCK % every == 0) & (at - lag - 1 >= walk.first) & (at + lag + 1 < walk.last)]
    back, ahead, whole = (
        np.hypot(walk.x[b] - walk.x[a], walk.y[b] - walk.y[a])
        for a, b in ((i - lag, i), (i, i + lag), (i - lag, i + lag))
    )
    straight = (whole > _STRAIGHT * (back + ahead)) & (whole > lag * walk.spacing)
    i, share = i[straight], (back / np.maximum(back + ahead, 1e-9))[straight]

    def filtered(values: np.ndarray) -> np.ndarray:
        result: np.ndarray = values[i] - (1 - share) * values[i - lag] - share * values[i + lag]
        return result

    lean = 1 - np.cos(tilt)
    beside = np.append(lean[:1], np.append((lean[:-2] + lean[2:]) / 2, lean[-1:]))
    return _Observations(filtered(walk.z), filtered(lean), filtered(beside), filtered(np.sin(tilt)), i, i // (4 * lag))


def _at_meetings(walk: Walk, tilt: np.ndarray) -> _Observations:
    """Differences of two visits' heights at one place."""
    noise = usual_noise(walk)
    if len(walk) > _MOST or not noise > 0:
        nothing, none = np.empty(0), np.empty(0, np.int64)
        return _Observations(nothing, nothing, nothing, nothing, none, none)
    met, slack = find_level_meetings(walk, breaks(walk, np.empty((0, 2, 2)), noise), noise)
    met = met.take(slack == 0)

    def mean(values: np.ndarray, at: np.ndarray, *steps: int) -> np.ndarray:
        beside = np.clip(at[:, None] + np.array(steps), walk.first[at][:, None], walk.last[at][:, None] - 1)
        result: np.ndarray = values[beside].mean(axis=1)
        return result

    lean, sine = 1 - np.cos(tilt), np.sin(tilt)
    first, second = met.first, met.second
    return _Observations(
        met.difference,
        mean(lean, second, -2, 0, 2) - mean(lean, first, -2, 0, 2),
        mean(lean, second, -3, -1, 1, 3) - mean(lean, first, -3, -1, 1, 3),
        np.hypot(*(mean(sine, at, -1, 0, 1) for at in (first, second))),
        first,
        first // _LEAST,
    )


def _steepness(walk: Walk) -> float:
    """Root mean square slope along the walk."""
    lag = _LAGS[-1]
    i = np.arange(len(walk))
    i = i[(i - lag >= walk.first) & (i + lag < walk.last)]
    run = np.hypot(walk.x[i + lag] - walk.x[i - lag], walk.y[i + lag] - walk.y[i - lag])
    far = run > lag * walk.spacing
    if not far.any():
        return 0.0
    slope = np.clip((walk.z[i + lag] - walk.z[i - lag])[far] / run[far], -1, 1)
    return float(np.sqrt(np.mean(slope**2)))


# --- regression ----------------------------------------------------------------------------------


def fitted(seen: _Observations, steep: float, noise: Optional[float] = None) -> Slope:
    """How far heights fall with 1 - cos(tilt).

    Tukey's biweight finds what belongs together, so kerbs and lifts do not count; the slope itself rests on the points
    beside as an instrument, so noise of the tilt sensor does not pull it to 0 (Wald 1940; from memory). ``steep``:
    slope of the ground, on which a leaning rover is beside its place and so off in height; observations of much tilt
    weigh less there. ``noise``: of an observation (m), where it is known. The standard deviation is the largest of
    that by the noise and those by clusters, short ones and long ones: a walker leans to one side for long.
    """
    whole = np.isfinite(seen.height + seen.lean + seen.beside)
    if np.count_nonzero(whole) < _LEAST or not seen.beside[whole].any():
        return Slope(float("nan"), float("inf"), 1.0)
    seen = seen.take(whole)
    noise = _noise(seen) if noise is None else noise
    size = np.hypot(noise, _POLE * steep * seen.aside)
    if not noise > 0:
        return Slope(float("nan"), float("inf"), 1.0)
    height, lean, beside, aside = (each / size for each in (seen.height, seen.lean, seen.beside, seen.aside))
    fall = _FALLS[int(np.argmax([_weight(height + each * lean)[0] for each in _FALLS]))]
    for _ in range(6):
        weight = _weight(height + fall * lean)[1]
        known = float(np.sum(weight * beside * lean))
        if not known > 0:  # the tilt of the points beside tells nothing of a point's own
            return Slope(float("nan"), float("inf"), 1.0)
        fall = -float(np.sum(weight * beside * height)) / known
    if not _told_by(beside, lean, weight):
        return Slope(float("nan"), float("inf"), 1.0)
    off = height + fall * lean
    weight = _weight(off)[1]
    square, freedom = float(np.sum(weight * beside**2)), np.inf
    for long in (1, _LONG):
        number = np.unique(seen.cluster // long, return_inverse=True)[1].ravel()
        by_cluster, share = (np.bincount(number, each) for each in (weight * beside * off, weight * beside**2))
        counts = max(1.0, float(np.sum(share) ** 2 / np.sum(share**2)) - 1)  # clusters that count
        if long == 1 or np.sum(by_cluster**2) > square:
            square, freedom = max(square, float(np.sum(by_cluster**2))), counts
    # What the places beside the walker's own make of a slope looks like a fall where he leans to one side for long.
    known_aside, seen_aside = (np.bincount(number, weight * each) for each in (aside**2, aside * off))
    some = known_aside > 0
    pull = (seen_aside[some] / known_aside[some]) ** 2 - 1 / known_aside[some]
    lasting = max(0.0, float(np.average(pull, weights=known_aside[some]))) if some.any() else 0.0
    bias = lasting * float(np.sum(weight * beside * aside)) ** 2 / _SIDES
    return Slope(fall, (square + bias) ** 0.5 / known, freedom, lasting**0.5)


def _told_by(beside: np.ndarray, lean: np.ndarray, weight: np.ndarray) -> bool:
    """Whether the tilt of the points beside tells that of a point itself: else it is a weak instrument, whose slope and
    standard deviation mean nothing (F of 10 or more: Staiger and Stock 1997; from memory. Here more than that).
    """
    rest = lean - np.sum(weight * beside * lean) / np.sum(weight * beside**2) * beside
    return bool(np.sum(weight * beside * lean) > _STRONG * np.sqrt(np.sum(weight * (beside * rest) ** 2)))


def _noise(seen: _Observations) -> float:
    """Standard deviation of an observation (m), whatever the fall is."""
    return min(robust_sigma(seen.height + fall * seen.lean) for fall in _FALLS)


def _weight(off: np.ndarray) -> Tuple[float, np.ndarray]:
    """How well residuals ``off`` (in standard deviations) hang together, and the weight of each, after Tukey."""
    inside = 1 - np.minimum(np.abs(off) / _CUT, 1.0) ** 2
    return float(np.sum(inside**3)), inside**2
