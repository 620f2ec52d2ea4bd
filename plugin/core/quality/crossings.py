"""Places where the track of a walk crosses itself, and the two heights it has there."""

from __future__ import annotations

from typing import Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree
from scipy.stats import chi2

from ..inverses import inverses
from ..progress import Progress, part, silent
from .beside import within
from .encounters import APART, Encounters, find_encounters
from .noise import robust_sigma
from .scan import Hypothesis, scores_of
from .segments import whole_pieces, with_cuts
from .walk import Walk, plain_tree

_ENOUGH = 12
_CLEAR = 0.6  # of the noise: standard deviation of a difference between two whole windows
#: What :meth:`Track.crossings` gives.
Crossed = Tuple[np.ndarray, np.ndarray, np.ndarray, np.ndarray]
_MOST = 150_000  # steps of the walk looked at for crossings; in larger surveys these are spread over all of it
_NEAREST = 10  # steps near one that may cross it
_SIDE = 5  # points on either side of a crossing that speak for a pass
_SIDES = (5, 3, 2)
_STRAIGHT = 0.8  # cosine of the turn where a pass ends
_SLOPE, _BEND = 0.5, 0.05  # what slope and half second derivative (1/m) of the ground usually stay below
_FITS = 0.97  # windows less likely than this are over broken ground
_EVEN = 5.0  # standard deviations of a height that these may differ by
_STEP = 3.4  # standard deviations of a step of the ground
_REACHES = (3, 5, 8)
_BLOCK = 20_000  # steps looked at together, after which Cancel is asked for
_SCORES = 20_000  # that tell how large they usually are


class Track:
    """The steps of a walk in plan, to be asked where they cross: what was found once stays known."""

    def __init__(self, walk: Walk) -> None:
        at = np.arange(len(walk))
        #: (s,) points from which the walk goes on in the same piece.
        self.step = np.flatnonzero(at + 1 < walk.last)
        self._xy, self._spacing = np.column_stack([walk.x, walk.y]), walk.spacing
        self._middle = (self._xy[self.step] + self._xy[self.step + 1]) / 2
        self._tree: Optional[cKDTree] = None
        self._all: Optional[Crossed] = None

    def crossings(self, inside: Optional[np.ndarray] = None, progress: Progress = silent) -> Crossed:
        """Steps ``a < b`` (e,) that cross, and at which share of each.

        ``inside``: mask (q,) of the points one of whose steps must be one of the two; all points where None. In very
        large surveys a sample of the steps is looked at.
        """
        if len(self._xy) <= APART or not np.isfinite(self._spacing) or len(self.step) < 2:
            return np.empty(0, np.int64), np.empty(0, np.int64), np.empty(0), np.empty(0)
        asked = np.arange(len(self.step)) if inside is None else np.flatnonzero(inside[self.step])
        if len(asked) == len(self.step):
            self._all = self._cross(asked, progress) if self._all is None else self._all
            return self._all
        return self._cross(asked, progress)

    def _cross(self, asked: np.ndarray, progress: Progress) -> Crossed:
        """As :meth:`crossings`, of the steps with numbers ``asked``."""
        step, xy, middle = self.step, self._xy, self._middle
        if len(asked) > _MOST:
            asked = asked[np.linspace(0, len(asked) - 1, _MOST).astype(np.int64)]
        self._tree = plain_tree(middle) if self._tree is None else self._tree
        reach = 1.5 * self._spacing
        found = [np.empty(0, np.int64)]
        for start in range(0, len(asked), _BLOCK):
            progress(start / len(asked), "quality")
            own = asked[start : start + _BLOCK]
            distance, mate = self._tree.query(middle[own], k=min(_NEAREST, len(step)), distance_upper_bound=reach)
            row, column = np.nonzero(np.isfinite(distance))
            here, there = step[own[row]], step[mate[row, column]]
            a, b = np.minimum(here, there), np.maximum(here, there)
            found.append((a * len(xy) + b)[b - a > APART])
        a, b = np.divmod(np.unique(np.concatenate(found)), len(xy))
        share_a, share_b = _cross(xy[a], xy[a + 1], xy[b], xy[b + 1])
        inside = (share_a >= 0) & (share_a < 1) & (share_b >= 0) & (share_b < 1)
        return a[inside], b[inside], share_a[inside], share_b[inside]


def find_meetings(
    walk: Walk, broken: np.ndarray, sigma: float, track: Optional[Track] = None, progress: Progress = silent
) -> Encounters:
    """Places visited twice: where the track crosses itself and, if these are few, where it comes close to itself.

    Arguments as for :func:`find_crossings`.
    """
    crossings = find_crossings(walk, broken, sigma, track, progress)
    if len(crossings) >= _ENOUGH or not sigma > 0:
        return crossings
    near = find_encounters(walk, with_cuts(walk, whole_pieces(walk), np.flatnonzero(broken)), sigma)
    # Side by side, the slope between the two is known only as far as their tracks bend.
    near = near.take(near.variance < (_CLEAR * sigma) ** 2)
    here, there = (np.column_stack([m.first, m.second]).astype(float) for m in (crossings, near))
    if len(here) and len(there):
        near = near.take(cKDTree(here).query(there, p=np.inf)[0] > 2 * _SIDE)
    return joined_encounters(crossings, near)


def find_crossings(
    walk: Walk, broken: np.ndarray, sigma: float, track: Optional[Track] = None, progress: Progress = silent
) -> Encounters:
    """Every place where two visits cross, with the height of the second less that of the first (m).

    ``broken``: (q,) from :func:`breaks`; ``sigma``: noise of one point (m); ``track``: of the walk, where it is known.
    Each height comes from a parabola along its
    own pass, through up to five points on either side; windows end where the pass turns or the ground breaks, and
    shrink where a parabola does not fit. In very large surveys a sample of the walk is looked at.
    """
    a, b, share_a, share_b = (Track(walk) if track is None else track).crossings(None, part(progress, 0.0, 0.6))
    height, variance, fits = [], [], np.ones(len(a), bool)
    for at, share, ahead in ((a, share_a, 0.6), (b, share_b, 0.8)):
        progress(ahead, "quality")
        z, spread, fine = _height_at(walk, broken, at, share, sigma)
        height.append(z)
        variance.append(spread)
        fits &= fine
    first, second = (at + (share > 0.5) for at, share in ((a, share_a), (b, share_b)))
    return Encounters(first, second, height[1] - height[0], variance[0] + variance[1]).take(fits)


def find_level_meetings(
    walk: Walk, broken: np.ndarray, sigma: float, track: Optional[Track] = None, progress: Progress = silent
) -> Tuple[Encounters, np.ndarray]:
    """Every place where two visits cross, that at kerbs too, and how far (e,) its difference may be off for these (m).

    Where the heights before a crossing carried on agree with those behind it, on both passes, it is even ground: as for
    :func:`find_crossings`, and nothing is added. Elsewhere the middle of what each pass may have there, give or take
    half of the range.
    """
    track = Track(walk) if track is None else track
    a, b, share_a, share_b = track.crossings(None, part(progress, 0.0, 0.6))
    even, height, variance, slack = np.ones(len(a), bool), [], [], np.zeros(len(a))
    middle = []
    for at, share, ahead in ((a, share_a, 0.6), (b, share_b, 0.8)):
        progress(ahead, "quality")
        low, high = range_at(walk, at, share)
        z, spread, fine = _height_at(walk, broken, at, share, sigma)
        even &= fine & (high - low < _EVEN * sigma)
        height.append(z)
        variance.append(spread)
        middle.append((low + high) / 2)
        slack += (high - low) / 2
    difference = np.where(even, height[1] - height[0], middle[1] - middle[0])
    spread = np.where(even, variance[0] + variance[1], 2 * sigma**2)
    first, second = (at + (share > 0.5) for at, share in ((a, share_a), (b, share_b)))
    crossings, slack = Encounters(first, second, difference, spread), np.where(even, 0.0, slack)
    if len(crossings) >= _ENOUGH or not sigma > 0:
        return crossings, slack
    more = find_meetings(walk, broken, sigma, track)
    more = more.take(~np.isin(more.first * len(walk) + more.second, first * len(walk) + second))
    return joined_encounters(crossings, more), np.append(slack, np.zeros(len(more)))


def joined_encounters(one: Encounters, other: Encounters) -> Encounters:
    """Both, one after the other."""
    columns = ("first", "second", "difference", "variance")
    return Encounters(*(np.concatenate([getattr(one, c), getattr(other, c)]) for c in columns))


def breaks(walk: Walk, lines: np.ndarray, sigma: float) -> np.ndarray:
    """Mask (q,) of the points before which a piece begins, a coded line is crossed or the heights step.

    ``lines``: (k, 2, 2) coded lines (plan, local metres); ``sigma``: noise of one point (m).
    """
    broken = np.arange(len(walk)) == walk.first
    if len(lines):
        broken |= _over_lines(walk, lines)
    if not len(walk) or not sigma > 0:
        return broken
    score = np.zeros(len(walk))
    for own in np.abs(scores_of(walk, [Hypothesis(reach, reach, 0) for reach in _REACHES], sigma)):
        # Curved ground steps a little everywhere: that is no break.
        some = own[own > 0]
        some = some[:: -(-len(some) // _SCORES) or 1]
        usual = robust_sigma(np.append(some, -some)) if len(some) else 1.0
        score = np.maximum(score, own / max(1.0, usual))
    top = (score >= np.append(0.0, score[:-1])) & (score >= np.append(score[1:], 0.0))
    broken |= top & (score > _STEP)
    return broken


def _cross(a: np.ndarray, b: np.ndarray, c: np.ndarray, d: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Where the lines a-b and c-d (k, 2) cross, as shares of each; nan where they are parallel."""
    u, v, w = b - a, d - c, c - a
    area = u[:, 0] * v[:, 1] - u[:, 1] * v[:, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        return (
            (w[:, 0] * v[:, 1] - w[:, 1] * v[:, 0]) / np.where(area != 0, area, np.nan),
            (w[:, 0] * u[:, 1] - w[:, 1] * u[:, 0]) / np.where(area != 0, area, np.nan),
        )


def _over_lines(walk: Walk, lines: np.ndarray) -> np.ndarray:
    """Mask (q,) of the points before which the walk crosses a line."""
    mask = np.zeros(len(walk), bool)
    step = np.flatnonzero(np.arange(len(walk)) + 1 < walk.last)
    a, b = lines[:, 0], lines[:, 1]
    long = np.hypot(*(b - a).T)
    apart = max(walk.spacing, 0.1)
    count = np.ceil(long / apart).astype(np.int64) + 1
    number = np.repeat(np.arange(len(a)), count)
    share = (np.arange(len(number)) - np.repeat(np.cumsum(count) - count, count)) / np.maximum(count[number] - 1, 1)
    places = a[number] + share[:, None] * (b - a)[number]
    xy = np.column_stack([walk.x, walk.y])
    middle = (xy[step] + xy[step + 1]) / 2
    beside = np.flatnonzero(within(middle, places, 3 * apart))
    step, middle = step[beside], middle[beside]
    half = np.hypot(*(xy[step + 1] - xy[step]).T) / 2
    near, mate = plain_tree(places).query(middle, k=min(8, len(places)), distance_upper_bound=3 * apart)
    near, mate = near.reshape(len(step), -1), mate.reshape(len(step), -1)
    row, column = np.nonzero(near <= half[:, None] + apart)
    line = number[mate[row, column]]
    one, other = _cross(xy[step[row]], xy[step[row] + 1], a[line], b[line])
    over = (one >= 0) & (one <= 1) & (other >= 0) & (other <= 1)
    mask[step[row[over]] + 1] = True
    return mask


def _height_at(
    walk: Walk, broken: np.ndarray, at: np.ndarray, share: np.ndarray, sigma: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Height (e,) at share ``share`` of the steps ``at``, its variance, and whether a parabola fits."""
    back, ahead = _free(walk, broken, at)
    height, variance, fine = np.zeros(len(at)), np.full(len(at), np.inf), np.zeros(len(at), bool)
    for side in _SIDES:
        ask = np.flatnonzero(~fine)
        if not len(ask):
            break
        low, high = np.minimum(back[ask], side - 1), np.minimum(ahead[ask], side)
        z, spread, fits = _parabola(walk, at[ask], share[ask], low, high, sigma)
        height[ask], variance[ask] = z, spread
        fine[ask] = fits
    return height, variance, fine & ~broken[np.minimum(at + 1, len(walk) - 1)]


def _free(walk: Walk, broken: np.ndarray, at: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """How many points before ``at`` and after it the pass goes on straight and unbroken, up to five."""
    n = len(walk)
    dx, dy = walk.x[at + 1] - walk.x[at], walk.y[at + 1] - walk.y[at]
    length = np.maximum(np.hypot(dx, dy), 1e-9)
    result = []
    for sign in (-1, 1):
        free, going = np.zeros(len(at), np.int64), np.ones(len(at), bool)
        for k in range(1, _SIDE + 1):
            here = at + k if sign > 0 else at - k + 1  # the point before whose step the pass may end
            p = np.clip(here - 1, 0, n - 2)
            ux, uy = walk.x[p + 1] - walk.x[p], walk.y[p + 1] - walk.y[p]
            along = (ux * dx + uy * dy) > _STRAIGHT * length * np.hypot(ux, uy)
            going &= (here >= 1) & (here < n) & along & ~broken[np.clip(here, 0, n - 1)]
            free += going
        result.append(free)
    return result[0], result[1]


def _parabola(
    walk: Walk, at: np.ndarray, share: np.ndarray, low: np.ndarray, high: np.ndarray, sigma: float
) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Height at the crossing from points at - low to at + high, its variance, and whether the parabola fits."""
    index = at[:, None] + np.arange(-_SIDE, _SIDE + 1)
    inside = (index >= (at - low)[:, None]) & (index <= (at + high)[:, None])
    index = np.clip(index, 0, len(walk) - 1)
    x, y = (c[at] + share * (c[at + 1] - c[at]) for c in (walk.x, walk.y))
    dx, dy = walk.x[at + 1] - walk.x[at], walk.y[at + 1] - walk.y[at]
    length = np.maximum(np.hypot(dx, dy), 1e-9)[:, None]
    s = ((walk.x[index] - x[:, None]) * dx[:, None] + (walk.y[index] - y[:, None]) * dy[:, None]) / length
    level = (1 - share) * walk.z[at] + share * walk.z[at + 1]
    z = (walk.z[index] - level[:, None]) * inside
    design = np.stack([np.ones_like(s), s, s**2], axis=2) * inside[:, :, None]
    normal = design.transpose(0, 2, 1) @ design + np.diag([0.0, (sigma / _SLOPE) ** 2, (sigma / _BEND) ** 2])
    inverse = inverses(normal)
    solved = np.einsum("eij,ekj,ek->ei", inverse, design, z)
    residual = (z - np.einsum("eki,ei->ek", design, solved)) * inside
    count = inside.sum(axis=1)
    square = np.sum(residual**2, axis=1) / sigma**2
    limit = chi2.ppf(_FITS, np.maximum(np.arange(2 * _SIDE + 2) - 2, 1))
    fits = (count >= 2) & (square <= limit[count])
    return level + solved[:, 0], sigma**2 * inverse[:, 0, 0], fits


def range_at(
    walk: Walk, a: np.ndarray, share: np.ndarray, group: Optional[np.ndarray] = None
) -> Tuple[np.ndarray, np.ndarray]:
    """Lowest and highest that the pass may have the ground at ``share`` of its steps ``a`` (m,).

    The line through the two points, that of the two before carried on, and that of the two behind. On even ground the
    three agree; at a kerb they span it. ``group``: (q,) numbers; heights are carried on within one group only.
    """
    group = walk.piece if group is None else group
    between = _carried(walk, a, a + 1, share, group)
    before = _carried(walk, a - 1, a, 1 + share, group)
    behind = _carried(walk, a + 1, a + 2, share - 1, group)
    known = np.stack([between, before, behind])
    with np.errstate(invalid="ignore"):
        return np.fmin.reduce(known), np.fmax.reduce(known)


def _carried(walk: Walk, a: np.ndarray, b: np.ndarray, share: np.ndarray, group: np.ndarray) -> np.ndarray:
    """Height (m,) on the line through points ``a`` and ``b`` at ``share`` of it; nan where they are of two pieces."""
    inside = (a >= 0) & (b < len(walk))
    a, b = np.clip(a, 0, len(walk) - 1), np.clip(b, 0, len(walk) - 1)
    inside &= (walk.piece[a] == walk.piece[b]) & (group[a] == group[b])
    return np.where(inside, walk.z[a] + share * (walk.z[b] - walk.z[a]), np.nan)
