"""What a lane is across: where a kerb within it ends it, and where a crown parts it in halves.

Every few metres along the line the mean section of a window is looked at, heights over offsets. A kerb is a place far
steeper than the rest: crossfall is taken up to it. Then a slope that changes at one place is fitted (a continuous
piecewise linear model by least squares, the place free, linearised about its best value as in any nonlinear least
squares). As the mean heights are sums of the surface's heights, so is the change of slope, and its standard deviation
follows from the noise of the points with its drift, as for every slope here (:mod:`.slopes`). Only a change that stands
far out of that is a crown; the places of neighbouring windows help each other.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Sequence, Tuple

import numpy as np
from scipy.sparse import csr_matrix

from ..surface.tin import Tin
from .grades import Within
from .line import Alignment
from .pooling import rows_of
from .slopes import LinearForms, Sigma, height_forms

#: Metres: between sections, between heights of a section; the window whose mean section is looked at, and its step.
_SECTIONS, _HEIGHTS, _WINDOW, _STEP = 1.0, 0.25, 20.0, 10.0
_MOST_HEIGHTS = 81
#: So far (m) from the lane's edges no crown is looked for, nor in a lane that is narrower than this.
_AT_EDGE, _NARROWEST = 0.75, 2.0
#: A crown's change of slope is at least so many standard deviations, and at least this (ratio).
_CLEAR, _LEAST = 4.0, 0.01
#: How far (m) a crown is taken to go on where no change of slope can be told; and what change (ratio) a lane of one
#: fall may have at most.
_CARRIED, _ONE_FALL = 40.0, 0.01
#: A kerb rises so much (m), is so steep and so many times as steep as half of the section (common practice, no source).
_KERB, _STEEP, _STEEPER = 0.05, 0.1, 3.0
_COVERED = 0.5  # of the sections of a window


@dataclass(frozen=True)
class Lane:
    """A lane at c places ``at`` (m) along a line.

    ``low``, ``high``: (c,) offsets (m, right positive) of its edges, at a kerb where one is within the lane asked for.
    ``crown``: (c,) offset (m) where the crossfall changes, nan where it does not; ``crown_sigma`` (c,) its standard
    deviation (m). ``kerbed``: (c,) bool, a kerb ends it at either side.
    """

    at: np.ndarray
    low: np.ndarray
    high: np.ndarray
    crown: np.ndarray
    crown_sigma: np.ndarray
    kerbed: np.ndarray

    def parts_at(self, distance: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
        """Edges, crown and its standard deviation (q,) at distances (q,): those of the nearest place."""
        near = np.abs(self.at[:, None] - np.atleast_1d(distance)).argmin(axis=0)
        return self.low[near], self.high[near], self.crown[near], self.crown_sigma[near]


def plain_lane(low: float, high: float) -> Lane:
    """A lane from offset ``low`` to ``high`` (m) of which nothing else is known."""
    nothing = np.full(1, np.nan)
    return Lane(np.zeros(1), np.full(1, low), np.full(1, high), nothing, nothing, np.zeros(1, bool))


def find_lane(line: Alignment, tin: Tin, sigma: Sigma, low: float, high: float, within: Within = None) -> Lane:
    """What the lane between offsets ``low`` and ``high`` (m, right positive) is along a line on a surface.

    ``sigma``: noise of the vertices' heights (m). ``within``: distances between which the lane is on the surface.
    """
    if within is None or not low < high:
        return plain_lane(low, high)
    first, last = within
    offsets = np.linspace(low, high, int(np.clip(np.ceil((high - low) / _HEIGHTS), 8, _MOST_HEIGHTS - 1)) + 1)
    at, means = _mean_sections(line, tin, offsets, first, last)
    z = means.values(tin).reshape(len(at), len(offsets))
    use, kerbed = _up_to_kerbs(z, offsets)
    edges = _edges(use, offsets)
    change, change_sigma, crown, crown_sigma = _bends(tin, sigma, means, z, use, offsets)
    clear = (np.abs(change) > np.maximum(_CLEAR * change_sigma, _LEAST)) & np.isfinite(crown)
    crown, crown_sigma = _carried(at, crown, crown_sigma, clear, np.abs(change) + 2 * change_sigma < _ONE_FALL)
    inside = (crown > edges[0] + _AT_EDGE / 2) & (crown < edges[1] - _AT_EDGE / 2)
    return Lane(at, *edges, np.where(inside, crown, np.nan), np.where(inside, crown_sigma, np.nan), kerbed)


def _mean_sections(
    line: Alignment, tin: Tin, offsets: np.ndarray, first: float, last: float
) -> Tuple[np.ndarray, LinearForms]:
    """Middles (c,) of windows along a line, and their mean heights at ``offsets`` (k,) as c k forms; those of which
    too few sections are on the surface are not covered."""
    count = max(1, round((last - first) / _SECTIONS))
    distance = first + (np.arange(count) + 0.5) * (last - first) / count
    places = line.places(np.repeat(distance, len(offsets)), np.tile(offsets, count))
    heights = height_forms(tin, places)
    windows = max(1, round((last - first) / _STEP))
    at = first + (np.arange(windows) + 0.5) * (last - first) / windows
    begin, end = np.searchsorted(distance, at - _WINDOW / 2), np.searchsorted(distance, at + _WINDOW / 2)
    end = np.maximum(end, begin + 1)
    size = end - begin
    section = np.repeat(begin, size) + np.arange(size.sum()) - np.repeat(np.cumsum(size) - size, size)
    window = np.repeat(np.arange(windows), size)
    k = np.arange(len(offsets))
    row, column = (np.add.outer(each * len(offsets), k).ravel() for each in (window, section))
    some = heights.whole[column]
    row, column = row[some], column[some]
    known = np.bincount(row, minlength=windows * len(offsets))
    gather = csr_matrix((1.0 / known[row], (row, column)), shape=(windows * len(offsets), len(heights.covered)))
    covered = known >= np.maximum(1, _COVERED * np.repeat(size, len(offsets)))
    return at, LinearForms(csr_matrix(gather @ heights.weights), covered.astype(float))


def _up_to_kerbs(z: np.ndarray, offsets: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Mask (c, k) of the heights between the kerbs nearest to the line, or to the middle of a lane that lies beside it;
    and which sections (c,) a kerb ends."""
    middle = 0.0 if offsets[0] < 0 < offsets[-1] else float(offsets.mean())
    inner = int(np.abs(offsets - middle).argmin())
    slope = np.diff(z, axis=1) / np.diff(offsets)
    with np.errstate(all="ignore"):
        usual = np.array([np.median(np.abs(row[np.isfinite(row)])) if np.isfinite(row).any() else 0.0 for row in slope])
    steep = np.abs(slope) > np.maximum(_STEEP, _STEEPER * usual)[:, None]
    steep &= _rises(np.diff(z, axis=1), steep) >= _KERB
    use = np.isfinite(z)
    kerbed = np.zeros(len(z), bool)
    for i in np.flatnonzero(steep.any(axis=1)).tolist():
        left, right = np.flatnonzero(steep[i, :inner]), np.flatnonzero(steep[i, inner:]) + inner
        if len(left):
            use[i, : left[-1] + 1] = False
        if len(right):
            use[i, right[0] + 1 :] = False
        kerbed[i] = True
    return use, kerbed


def _rises(rise: np.ndarray, steep: np.ndarray) -> np.ndarray:
    """How much (c, k) the run of steep pieces rises that each is of; 0 for the others."""
    total = np.zeros(rise.shape)
    for i in np.flatnonzero(steep.any(axis=1)).tolist():
        for a, b in rows_of(steep[i]):
            total[i, a:b] = abs(float(rise[i, a:b].sum()))
    return total


def _edges(use: np.ndarray, offsets: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Offsets (c,), (c,) of the outermost heights used; those of the lane where none is."""
    some = use.any(axis=1)
    first, last = use.argmax(axis=1), use.shape[1] - 1 - use[:, ::-1].argmax(axis=1)
    return np.where(some, offsets[first], offsets[0]), np.where(some, offsets[last], offsets[-1])


def _bends(
    tin: Tin, sigma: Sigma, means: LinearForms, z: np.ndarray, use: np.ndarray, offsets: np.ndarray
) -> Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]:
    """Change of slope, its standard deviation, its place (m) and the standard deviation of that, (c,) each; nan where
    the section is too narrow."""
    count, k = z.shape
    change, crown = np.full(count, np.nan), np.full(count, np.nan)
    weights = np.zeros((2, count, k))
    masks, which = np.unique(use, axis=0, return_inverse=True)
    for number, mask in enumerate(masks):
        rows = np.flatnonzero(which.reshape(-1) == number)
        own = offsets[mask]
        if len(own) < 6 or own[-1] - own[0] < _NARROWEST:
            continue
        crown[rows] = _best_places(z[np.ix_(rows, np.flatnonzero(mask))], own)
        for i in rows.tolist():
            weights[:, i, mask], change[i] = _bend_weights(z[i, mask], own, crown[i])
    sigmas = [_of_rows(means, weight).sigmas(sigma) for weight in weights]
    return change, sigmas[0], crown, sigmas[1]


def _best_places(z: np.ndarray, offsets: np.ndarray) -> np.ndarray:
    """Where (r,) a slope that changes once fits sections (r, k) best; between two places tried by a parabola."""
    step = offsets[1] - offsets[0]
    places = np.arange(offsets[0] + _AT_EDGE, offsets[-1] - _AT_EDGE + step / 2, step)
    left = np.empty((len(places), len(z)))
    for j, place in enumerate(places):
        model = _model(offsets, place)
        fit = np.linalg.pinv(model) @ z.T
        left[j] = np.sum((z.T - model @ fit) ** 2, axis=0)
    best = left.argmin(axis=0)
    inner = np.clip(best, 1, max(len(places) - 2, 1))
    found = places[best]
    if len(places) > 2:
        own = np.arange(len(z))
        a, b, c = left[inner - 1, own], left[inner, own], left[inner + 1, own]
        bend = a - 2 * b + c
        shift = np.where(bend > 0, 0.5 * (a - c) / np.where(bend > 0, bend, 1.0), 0.0)
        found = np.where(best == inner, places[inner] + step * np.clip(shift, -1, 1), found)
    return np.asarray(found)


def _model(offsets: np.ndarray, place: float) -> np.ndarray:
    return np.column_stack([np.ones(len(offsets)), offsets, np.maximum(offsets - place, 0.0)])


def _bend_weights(z: np.ndarray, offsets: np.ndarray, place: float) -> Tuple[np.ndarray, float]:
    """Weights (2, k) of the heights in the change of slope and in its place, and that change (ratio)."""
    model = _model(offsets, place)
    change = float((np.linalg.pinv(model) @ z)[2])
    if abs(change) < 1e-9:
        return np.zeros((2, len(z))), 0.0
    free = np.column_stack([model, -change * (offsets > place)])
    solved = np.linalg.pinv(free)
    return solved[2:4], change


def _of_rows(means: LinearForms, weight: np.ndarray) -> LinearForms:
    """Sums over the heights of each section by weights (c, k) as forms; not covered where all weights are 0."""
    count, k = weight.shape
    rows, columns = np.nonzero(weight)
    gather = csr_matrix((weight[rows, columns], (rows, rows * k + columns)), shape=(count, count * k))
    return LinearForms(csr_matrix(gather @ means.weights), weight.any(axis=1).astype(float))


def _carried(
    at: np.ndarray, crown: np.ndarray, sigma: np.ndarray, clear: np.ndarray, one_fall: np.ndarray
) -> Tuple[np.ndarray, np.ndarray]:
    """Places and their standard deviations (c,) of the crown: means of windows that share points, and carried on where
    it can be told neither that there is one nor that there is none; else nan.
    """
    place, doubt = np.full(len(at), np.nan), np.full(len(at), np.nan)
    seen = np.flatnonzero(clear)
    if not len(seen):
        return place, doubt
    found: List[float] = []
    for i in seen.tolist():
        near = seen[np.abs(at[seen] - at[i]) <= _WINDOW]
        share = 1.0 / np.maximum(sigma[near], 0.01) ** 2
        found.append(float(np.sum(share * crown[near]) / share.sum()))
        doubt[i] = float(sigma[near].min())
    place[seen] = found
    away = np.abs(at[:, None] - at[seen]).min(axis=1)
    more = ~clear & ~one_fall & (away <= _CARRIED)
    place[more] = np.interp(at[more], at[seen], found)
    doubt[more] = np.interp(at[more], at[seen], doubt[seen]) + 0.005 * away[more]
    return place, doubt


def kerbs_within(lane: Lane) -> Sequence[Tuple[float, float]]:
    """From where to where (m) along the line a kerb ends the lane that was asked for."""
    if not lane.kerbed.any():
        return ()
    between = np.append(np.append(lane.at[0], (lane.at[1:] + lane.at[:-1]) / 2), lane.at[-1])
    return tuple((float(between[a]), float(between[b])) for a, b in rows_of(lane.kerbed))
