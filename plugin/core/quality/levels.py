"""Levels along time: long parts of a survey whose heights lie higher or lower than the rest.

A pole of another height, another base or antenna, ambiguities fixed wrongly for long: from some point on all heights
are off by one amount, until something sets it right. Places visited twice observe it: the difference of the two heights
is that of the two levels, give or take noise and what wanders. All of them together are explained by one piecewise
constant offset over the walk, with as few changes as the differences ask for: the part of the walk that explains most
is sought first, then what is left. Sizes come from generalised least squares with the covariance of what wanders (a
first-order Gauss-Markov process), so that their standard deviations hold.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from typing import Callable, List, Tuple

import numpy as np
from scipy.linalg import solve_triangular

from .beside import Beside
from .encounters import Encounters
from .fits import Sums, offset_of
from .noise import robust_sigma
from .walk import Walk

#: Meetings with the rest that a part needs before its level is told.
FEWEST = 6
#: Of these on even ground: a pass along a kerb meets all others at the kerb. And their share, at least.
_FEWEST_EVEN, _EVEN = 4, 0.15
#: Fewer will do where the level is so many times what kerbs can make of a meeting.
_OVER_KERB = 4.0
#: Points of a part, at least.
SHORTEST = 40
#: Standard deviations of a change of level, at least; and metres.
CLEAR, LEAST = 6.0, 0.05
_PERHAPS = 4.0  # standard deviations of one that may be
_GRID = 56  # places of the walk between which parts are sought first
_BEST = 24  # parts looked at closely
_CAP = 3.0  # standard deviations beyond which a difference says no more
_MOST = 1200  # meetings looked at; of more, these are spread over all
_ROUNDS = 12
_TRIED = 44  # places at which a part may begin or end, tried in pairs
_AS_GOOD = 1.0  # half squares that do not matter
_GAIN = 12.0  # half squares of standard deviations that a part must explain, and for each end of it
_AGREE = 0.6  # of the meetings of a part that must say so
_WINDOW = 8  # points on either side that show the step where a level changes
_STEPPED = 12.0  # what the step can say, in half squares: ground and turns step too
_ALIKE = 4.0  # steps that follow each other and depart from their neighbours alike
_SLACK = 0.1  # of a change of level: how well the step shows it
_PAUSE = 20.0  # seconds without a record at which a level may have changed
_PAUSED = 4.0  # what a pause, a gap or a lost fix counts for, in half squares
_MOST_EXACT = 240  # meetings of the generalised least squares
#: Correlation times (s), and standard deviations of what wanders and of what is new at a place over the noise.
_TIMES = (30.0, 80.0, 200.0)
_SIZES, _PLACES = (0.15, 0.35, 0.6, 1.0), (0.0, 0.4, 0.9)
_SAME = 3.0  # standard deviations within which two parts have the same level


@dataclass(frozen=True)
class Level:
    """From point ``first`` of the walk to before ``last`` heights lie ``offset`` (m, give or take ``sigma``) over those
    of the longest part; ``meetings``: places visited twice that say so. ``returned``: before it and after it heights
    agree again. ``sure``: even ground tells it; else a pass along a kerb may look so.
    """

    first: int
    last: int
    offset: float
    sigma: float
    meetings: int
    returned: bool
    sure: bool


@dataclass(frozen=True)
class Levels:
    """Parts of a walk of q points that lie off the longest one, in order.

    ``offset``: (q,) metres, 0 but on those that are sure.
    """

    parts: Tuple[Level, ...]
    offset: np.ndarray


def find_levels(
    walk: Walk, time: np.ndarray, meetings: Encounters, slack: np.ndarray, noise: float, beside: Callable[[], Beside]
) -> Levels:
    """The levels of a walk from its ``meetings`` and their ``slack`` (e,), see :func:`.crossings.find_level_meetings`.

    ``time``: (q,) seconds; ``noise``: of one height (m). ``beside``: gives the neighbours of every step, asked only
    where levels change.
    """
    none = Levels((), np.zeros(len(walk)))
    if len(meetings) < FEWEST or not noise > 0:
        return none
    met = _Meetings(meetings, slack, noise).spread(_MOST)
    edges = _search(met, len(walk))
    if not len(edges):
        return none
    edges = _placed(walk, time, met, edges, beside())
    return _measured(walk, time, met, noise, edges)


class _Meetings:
    """Meetings as what they say of a difference of levels: that it is ``difference`` (e,), give or take ``slack`` (e,)
    for certain and a standard deviation ``sigma`` (e,).
    """

    def __init__(self, met: Encounters, slack: np.ndarray, noise: float) -> None:
        self.first, self.second, self.difference, self.variance = met.first, met.second, met.difference, met.variance
        self.slack, self._noise = slack, noise
        even = met.difference[slack == 0]
        usual = robust_sigma(even) if len(even) > 2 else noise
        self.sigma = np.sqrt(met.variance + float(np.clip(usual, 1.2 * noise, 4 * noise)) ** 2)

    def __len__(self) -> int:
        return len(self.first)

    def take(self, which: np.ndarray) -> _Meetings:
        met = Encounters(self.first[which], self.second[which], self.difference[which], self.variance[which])
        return _Meetings(met, self.slack[which], self._noise)

    def spread(self, most: int) -> _Meetings:
        """At most so many, spread over all."""
        if len(self) <= most:
            return self
        order = np.argsort(self.first, kind="stable")
        return self.take(order[np.linspace(0, len(order) - 1, most).astype(np.int64)])

    def cost(self, rest: np.ndarray) -> np.ndarray:
        """Half squares (…, e) of what is left of the differences, in standard deviations, as far as they count."""
        away = np.maximum(np.abs(rest) - self.slack, 0.0) / self.sigma
        result: np.ndarray = np.minimum(away, _CAP) ** 2 / 2
        return result


# --- which parts -----------------------------------------------------------------------------------


def _search(met: _Meetings, n: int) -> np.ndarray:
    """Places (k,) of the walk at which the level changes, rising, none at its ends."""
    level = np.zeros(0)
    edges = np.zeros(0, np.int64)
    rest = met.difference.copy()
    for _ in range(_ROUNDS):
        low, high, offset, gain = _best_part(met, rest, edges, n)
        ends = int(low > 0) + int(high < n)
        if gain < _GAIN * ends or abs(offset) < LEAST:
            break
        level = np.append(level, offset)
        edges = np.union1d(edges, [e for e in (low, high) if 0 < e < n])
        rest = met.difference - _difference(met, edges, _fitted(met, edges))
    return _needed(met, edges)


def _best_part(met: _Meetings, rest: np.ndarray, known: np.ndarray, n: int) -> Tuple[int, int, float, float]:
    """The part [low, high) of the walk whose own offset (m) explains most of ``rest`` (e,), and how much."""
    ends = np.sort(np.concatenate([met.first, met.second + 1]))
    grid = np.unique(np.concatenate([[0], ends[np.linspace(0, len(ends) - 1, _GRID).astype(np.int64)], known, [n]]))
    low, high = np.triu_indices(len(grid), 1)
    low, high = grid[low], grid[high]
    inner = (high - low >= SHORTEST) & ((low > 0) | (high < n)) & (n - (high - low) >= SHORTEST)
    low, high = low[inner], high[inner]
    if not len(low):
        return 0, n, 0.0, 0.0
    sign = _sign(met, low, high)
    clipped = np.sign(rest) * np.sqrt(2 * met.cost(rest))
    count = np.abs(sign).sum(axis=1)
    score = np.where(count >= FEWEST, np.abs(sign @ clipped) / np.sqrt(np.maximum(count, 1)), 0.0)
    best = np.argsort(-score, kind="stable")[:_BEST]
    _, gain = _gain(met, sign[best], rest)
    # Two ends are two decisions: a part that reaches to an end of the walk is the simpler one.
    price = _GAIN * ((low[best] > 0).astype(float) + (high[best] < n))
    top = int(np.argmax(gain - price))
    return _refined(met, rest, int(low[best][top]), int(high[best][top]), grid, n)


def _sign(met: _Meetings, low: np.ndarray, high: np.ndarray) -> np.ndarray:
    """What an offset of each part [low, high) (k,) does to each difference: (k, e) of -1, 0, 1."""
    low, high = low[:, None], high[:, None]
    inside = ((met.second >= low) & (met.second < high)).astype(float)
    inside -= (met.first >= low) & (met.first < high)
    return inside


def _gain(met: _Meetings, sign: np.ndarray, rest: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Offset (k,) of each part by a median, then by those that agree with it, and the half squares it explains."""
    own = np.where(sign != 0, sign * rest, np.nan)
    sure = np.where(met.slack == 0, own, np.nan)
    few = np.count_nonzero(np.isfinite(sure), axis=1) < 3
    sure[few] = own[few]
    sure[~np.isfinite(sure).any(axis=1)] = 0.0
    offset = np.nan_to_num(np.nanmedian(sure, axis=1)) if len(own) else np.zeros(0)
    for _ in range(3):
        near = (sign != 0) & (np.abs(own - offset[:, None]) < _CAP * met.sigma + met.slack)
        weight = np.where(near, 1 / (met.sigma**2 + met.slack**2), 0.0)
        total = weight.sum(axis=1)
        mean = np.nansum(np.where(near, own, 0.0) * weight, axis=1) / np.maximum(total, 1e-9)
        offset = np.where(total > 0, mean, offset)
    return offset, (met.cost(rest) - met.cost(rest - sign * offset[:, None])).sum(axis=1)


def _refined(
    met: _Meetings, rest: np.ndarray, low: int, high: int, grid: np.ndarray, n: int
) -> Tuple[int, int, float, float]:
    """The part with its ends moved to where they explain most, among all places between the grid's."""
    places = np.unique(np.concatenate([met.first, met.first + 1, met.second, met.second + 1]))
    offset = gain = 0.0
    for _ in range(2):
        for side in (0, 1):
            end = (low, high)[side]
            if end in (0, n):
                continue
            k = int(np.searchsorted(grid, end))
            near = places[(places > grid[max(k - 1, 0)]) & (places < grid[min(k + 1, len(grid) - 1)])]
            near = np.append(near, end)
            lows, highs = (near, np.full(len(near), high)) if side == 0 else (np.full(len(near), low), near)
            fits = highs - lows >= SHORTEST
            lows, highs = lows[fits], highs[fits]
            offsets, gains = _gain(met, _sign(met, lows, highs), rest)
            top = int(np.argmax(gains))
            low, high, offset, gain = int(lows[top]), int(highs[top]), float(offsets[top]), float(gains[top])
    if low > 0 and high < n:
        low, high, offset, gain = _shrunk(met, rest, places, low, high, offset, gain)
    return low, high, offset, gain


def _shrunk(
    met: _Meetings, rest: np.ndarray, places: np.ndarray, low: int, high: int, offset: float, gain: float
) -> Tuple[int, int, float, float]:
    """The shortest part within [low, high) that explains as much.

    Points before and behind a part that only meet each other agree whether they belong to it or not.
    """
    inside = places[(places >= low) & (places <= high)]
    some = inside[np.unique(np.linspace(0, len(inside) - 1, min(len(inside), _TRIED)).astype(np.int64))]
    a, b = np.triu_indices(len(some), 1)
    lows, highs = np.append(low, some[a]), np.append(high, some[b])
    fits = highs - lows >= SHORTEST
    lows, highs = lows[fits], highs[fits]
    if not len(lows):
        return low, high, offset, gain
    offsets, gains = _gain(met, _sign(met, lows, highs), rest)
    fine = np.flatnonzero(gains >= gains.max() - _AS_GOOD)
    best = int(fine[np.argmin((highs - lows)[fine])])
    return int(lows[best]), int(highs[best]), float(offsets[best]), float(gains[best])


def _fitted(met: _Meetings, edges: np.ndarray) -> np.ndarray:
    """Level (k + 1,) of each part between ``edges`` (k,) against the first, robustly."""
    design, level = _design(met, edges), np.zeros(len(edges))
    spread = np.sqrt(met.sigma**2 + met.slack**2)
    for turn in range(12):
        residual = (met.difference - design @ level) / spread
        say = 1 / np.maximum(np.abs(residual), 1.0) if turn < 6 else 1 / (1 + (residual / _CAP) ** 2)
        weight = np.sqrt(say) / spread
        level = np.linalg.lstsq(design * weight[:, None], met.difference * weight, rcond=None)[0]
    return np.append(0.0, level)


def _design(met: _Meetings, edges: np.ndarray) -> np.ndarray:
    """What the level of each part but the first does to each difference: (e, k)."""
    first, second = np.searchsorted(edges, met.first, side="right"), np.searchsorted(edges, met.second, side="right")
    own = np.arange(1, len(edges) + 1)
    result: np.ndarray = (second[:, None] == own).astype(float) - (first[:, None] == own)
    return result


def _difference(met: _Meetings, edges: np.ndarray, level: np.ndarray) -> np.ndarray:
    first, second = np.searchsorted(edges, met.first, side="right"), np.searchsorted(edges, met.second, side="right")
    result: np.ndarray = level[second] - level[first]
    return result


def _needed(met: _Meetings, edges: np.ndarray) -> np.ndarray:
    """The edges without those that explain little beside the others, the least first."""
    while len(edges):
        without = np.array([_cost(met, np.delete(edges, k)) for k in range(len(edges))]) - _cost(met, edges)
        weakest = int(np.argmin(without))
        if without[weakest] >= _GAIN:
            break
        edges = np.delete(edges, weakest)
    return edges


def _cost(met: _Meetings, edges: np.ndarray) -> float:
    told = _difference(met, edges, _fitted(met, edges)) if len(edges) else np.zeros(len(met))
    return float(met.cost(met.difference - told).sum())


# --- where exactly ---------------------------------------------------------------------------------


def _placed(walk: Walk, time: np.ndarray, met: _Meetings, edges: np.ndarray, beside: Beside) -> np.ndarray:
    """Each edge moved, as far as the meetings leave it open, to where the walk steps by it, where it paused, and where
    the heights over the neighbouring passes change.
    """
    level = _fitted(met, edges)
    sums = Sums(walk)
    pause = np.append(False, (np.diff(time) > _PAUSE) | (np.diff(walk.piece) != 0)) | walk.regained
    bounds = np.concatenate([[0], edges, [len(walk)]])
    spans = [_open(met, edges, level, k, int(bounds[k]), int(bounds[k + 2])) for k in range(len(edges))]
    offset = np.repeat(level, np.diff(bounds))
    for low, high in spans:
        offset[low:high] = np.nan
    result = []
    for k, (low, high) in enumerate(spans):
        at = np.arange(low, high + 1)
        score = step_score(walk, sums, at, level[k + 1] - level[k], float(np.median(met.sigma))) + _PAUSED * pause[at]
        score += beside_score(beside, offset, low, high, level[k], level[k + 1])
        result.append(int(at[np.argmax(score - 1e-6 * np.abs(at - edges[k]))]))
    return np.unique(np.array(result, np.int64))


def _open(met: _Meetings, edges: np.ndarray, level: np.ndarray, k: int, low: int, high: int) -> Tuple[int, int]:
    """The places [low, high] to which edge ``k`` may move at little cost by what the meetings say."""
    ends = np.unique(np.concatenate([met.first, met.second]))
    ends = ends[(ends >= low) & (ends < high)]
    places = np.unique(np.concatenate([[edges[k]], ends, ends + 1]))
    places = places[(places > low + 2) & (places < high - 2)]
    near = np.argsort(np.abs(places - edges[k]), kind="stable")[:80]
    places = np.sort(places[near])
    cost = np.empty(len(places))
    for j, place in enumerate(places.tolist()):
        moved = edges.copy()
        moved[k] = place
        cost[j] = met.cost(met.difference - _difference(met, moved, level)).sum()
    fine = cost <= cost.min() + 3.0
    at = int(np.argmin(cost))
    first = at - int(np.argmin(np.append(fine[:at][::-1], False)))
    last = at + int(np.argmin(np.append(fine[at + 1 :], False)))
    # Between two places asked the meetings say nothing.
    before = int(places[first - 1]) + 1 if first > 0 else int(places[0])
    after = int(places[last + 1]) - 1 if last + 1 < len(places) else int(places[-1])
    return before, max(after, before)


def step_score(walk: Walk, sums: Sums, at: np.ndarray, step: float, sigma: float) -> np.ndarray:
    """How much more likely (half squares) the walk steps by ``step`` (m) before each point ``at`` than not at all."""
    low, high = np.maximum(at - _WINDOW, walk.first[at]), np.minimum(at + _WINDOW, walk.last[at])
    middle = sums.before(at)
    size, variance = offset_of(sums.before(high) - middle, middle - sums.before(low), sigma, sums.trend(at))
    # Ground has steps too: that of the very size tells, not one that is merely large.
    ratio = (size**2 - (size - step) ** 2) / (2 * (variance + (_SLACK * step) ** 2))
    joined = (at > walk.first[at]) & (at < walk.last[at])
    result: np.ndarray = np.where(joined, _STEPPED * np.tanh(ratio / _STEPPED), 0.0)
    return result


def beside_score(beside: Beside, offset: np.ndarray, low: int, high: int, before: float, after: float) -> np.ndarray:
    """How likely (half squares) the level changes at each of the places [low, high] by the passes on either side.

    ``offset``: (q,) level of each point, nan where it is open.
    """
    n = len(offset)
    known = np.append(offset, np.zeros(int(max(beside.left.max(initial=0), beside.right.max(initial=0), n)) + 1 - n))
    ground = beside.share * known[beside.left] + (1 - beside.share) * known[beside.right]
    over = beside.away + ground  # level of each step as its neighbours have it
    whole = over - known[beside.at]
    usual = robust_sigma(whole[np.isfinite(whole)])
    here = (beside.at >= low) & (beside.at < high) & np.isfinite(over)
    score = np.zeros(high - low + 1)
    if not usual > 0 or not here.any():
        return score
    level = over[here]
    ratio = np.minimum(((level - after) / usual) ** 2, _CAP**2) - np.minimum(((level - before) / usual) ** 2, _CAP**2)
    # An end at place c leaves the steps before it on the level before.
    np.add.at(score, beside.at[here] - low + 1, ratio / (2 * _ALIKE))
    result: np.ndarray = np.cumsum(score)
    return result


# --- how large -------------------------------------------------------------------------------------


def _measured(walk: Walk, time: np.ndarray, met: _Meetings, noise: float, edges: np.ndarray) -> Levels:
    """Sizes and standard deviations of the levels between ``edges``, against the longest part."""
    residual = met.difference - _difference(met, edges, _fitted(met, edges))
    even = met.slack == 0
    usual = max(robust_sigma(residual[even]) if np.count_nonzero(even) > 2 else noise, 1e-4)
    fine = np.abs(residual) < 3.5 * np.sqrt(usual**2 + met.variance) + met.slack
    used = met.take(np.flatnonzero(fine)).spread(_MOST_EXACT)
    level, covariance = _generalised(used, time, edges, noise)
    return _told(walk, used, edges, level, covariance)


def _generalised(met: _Meetings, time: np.ndarray, edges: np.ndarray, noise: float) -> Tuple[np.ndarray, np.ndarray]:
    """Levels (k + 1,) against the first part and their covariance, for heights that wander.

    Mean over correlation times, standard deviations of what wanders and of what is new at every place, weighed by their
    likelihood (that of the residuals, restricted as in REML), as for :mod:`.drift`.
    """
    design = _design(met, edges)
    first, second = time[met.first], time[met.second]
    log, levels, around = [], [], []
    for seconds in _TIMES:
        cross = _alike(first, second, seconds)
        wander = _alike(first, first, seconds) + _alike(second, second, seconds) - cross - cross.T
        for size, place in itertools.product(_SIZES, _PLACES):
            own = met.variance + (place * noise) ** 2 + met.slack**2 / 3
            factor = np.linalg.cholesky((size * noise) ** 2 * wander + np.diag(own + 1e-8))
            white = solve_triangular(factor, np.column_stack([design, met.difference]), lower=True)
            normal = white[:, :-1].T @ white[:, :-1] + 1e-9 * np.eye(len(edges))
            level = np.linalg.solve(normal, white[:, :-1].T @ white[:, -1])
            residual = white[:, -1] - white[:, :-1] @ level
            log.append(
                -float(np.log(np.diag(factor)).sum())
                - 0.5 * float(residual @ residual)
                - 0.5 * float(np.linalg.slogdet(normal)[1])
                - size**2 / 2
            )
            levels.append(level)
            around.append(np.linalg.inv(normal))
    share = np.exp(np.array(log) - max(log))
    share /= share.sum()
    level = share @ np.array(levels)
    spread = np.array(levels) - level
    covariance = np.zeros((len(edges) + 1, len(edges) + 1))
    covariance[1:, 1:] = np.einsum("g,gij->ij", share, np.array(around)) + np.einsum(
        "g,gi,gj->ij", share, spread, spread
    )
    return np.append(0.0, level), covariance


def _alike(a: np.ndarray, b: np.ndarray, seconds: float) -> np.ndarray:
    result: np.ndarray = np.exp(-np.abs(a[:, None] - b) / seconds)
    return result


def _told(walk: Walk, met: _Meetings, edges: np.ndarray, level: np.ndarray, covariance: np.ndarray) -> Levels:
    bounds = np.concatenate([[0], edges, [len(walk)]])
    size = np.diff(bounds)
    alike = _classes(level, covariance)
    weight = np.bincount(alike, size)
    base = int(np.argmax(weight))
    ground = np.flatnonzero(alike == base)
    share = size[ground] / size[ground].sum()
    zero = float(share @ level[ground])
    part = np.searchsorted(edges, np.stack([met.first, met.second]), side="right")
    parts: List[Level] = []
    offset = np.zeros(len(walk))
    for k in np.flatnonzero(alike != base).tolist():
        mix = np.zeros(len(level))
        mix[k], mix[ground] = 1.0, mix[ground] - share
        sigma = float(np.sqrt(max(mix @ covariance @ mix, 0.0)))
        away = float(level[k] - zero)
        across = (part[0] == k) != (part[1] == k)
        kerb = float(np.median(met.slack[across])) if across.any() else 0.0
        even, across = int(np.count_nonzero(across & (met.slack == 0))), int(np.count_nonzero(across))
        told = even >= max(_FEWEST_EVEN, _EVEN * across) or abs(away) > _OVER_KERB * kerb
        if across < FEWEST or abs(away) < max(LEAST, _PERHAPS * sigma):
            continue
        sure = told and abs(away) > CLEAR * sigma
        returned = bool((ground < k).any() and (ground > k).any())
        parts.append(Level(int(bounds[k]), int(bounds[k + 1]), away, sigma, across, returned, sure))
        if sure:
            offset[bounds[k] : bounds[k + 1]] = away
    return Levels(tuple(parts), offset)


def _classes(level: np.ndarray, covariance: np.ndarray) -> np.ndarray:
    """Number (k,) of the class of each part: those within a few standard deviations of each other share one."""
    number = np.full(len(level), -1)
    for k in range(len(level)):
        for j in range(k):
            spread = np.sqrt(max(covariance[j, j] + covariance[k, k] - 2 * covariance[j, k], 0.0))
            if abs(level[j] - level[k]) < max(_SAME * spread, LEAST / 2):
                number[k] = number[j]
                break
        else:
            number[k] = number.max(initial=-1) + 1
    return number
