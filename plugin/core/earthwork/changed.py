"""Ground that changed by no more than noise at each place, told by the mean over many places.

A low heap over much ground lies within the noise of every single height, and still stands out in the mean of a square
of some ten points, whose noise is far smaller. Such squares are no unchanged ground, by which offset and noise are
judged; and where a square changed evenly, its mean tells what noise makes of cut and fill there better than single
depths do.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterator, Optional, Tuple

import numpy as np
from scipy.sparse import csr_matrix

from .places import Places
from .roughness import MAD
from .side import NoiseModel, noise_draws

_POINTS = 12.0  # of the survey that has fewer, in a square
_PLACES = 6  # in a square that tells
_SQUARES = 12  # that tell by how much means usually differ
_SURE = 4.0  # standard deviations of a mean from which a square changed
_GOES_ON = 2.2  # the same beside one that did, the same way
_EVEN = 2.0  # mean square of what depths depart from the mean, in that of noise, up to which a square changed evenly
_ROW = 1 << 32  # squares of a row are numbered within this
_STEPS = tuple(k * _ROW + m for k in (-1, 0, 1) for m in (-1, 0, 1) if (k, m) != (0, 0))


@dataclass(frozen=True)
class Changed:
    """Squares of ``side`` (m) that changed: their numbers ``key`` (c,), rising, and mean depth ``mean`` (c,), metres,
    without the offset; nan where depths differ within."""

    side: float
    key: np.ndarray
    mean: np.ndarray

    def wider(self) -> Changed:
        """These squares and all around them, which the rim of what changed may reach."""
        key = np.unique(np.concatenate([self.key, *(self.key + step for step in _STEPS)]))
        return Changed(self.side, key, np.full(len(key), np.nan))

    def holds(self, xy: np.ndarray) -> np.ndarray:
        """Mask (q,) of the places ``xy`` (q, 2), metres of the CRS, that lie in one of them."""
        return self._place(xy) >= 0

    def depth_at(self, xy: np.ndarray) -> np.ndarray:
        """Mean depth (q,) where places lie in squares that changed evenly, nan elsewhere."""
        result: np.ndarray = np.append(self.mean, np.nan)[self._place(xy)]
        return result

    def _place(self, xy: np.ndarray) -> np.ndarray:
        key = _keys(xy, self.side)
        place = np.minimum(np.searchsorted(self.key, key), len(self.key) - 1)
        return np.where(self.key[place] == key, place, -1)


def find_changed(places: Places, offset: float, scale: float, model: NoiseModel, calm: np.ndarray) -> Optional[Changed]:
    """The squares that changed; None where none did.

    ``offset``: of the later survey (m); ``scale``: of the noise over what is stated; ``calm``: mask (q,) of the places
    by which both were judged.
    """
    side = _side(places)
    key, of, count = np.unique(_keys(places.xy, side), return_inverse=True, return_counts=True)
    of, area = of.ravel(), np.bincount(of.ravel(), places.area)
    share, every = places.area / area[of], np.arange(len(places))
    depth = places.depth - offset
    mean = np.bincount(of, share * depth)
    noise = places.matrix(model)
    common = np.where(calm, places.area, 0.0)
    common /= common.sum()
    means = csr_matrix((share, (of, every)), (len(key), len(places))) @ noise
    whole = noise.T @ common
    tells = count >= _PLACES
    if np.count_nonzero(tells) < _SQUARES:
        return None
    drawn, usual = [], 0.0
    for each in noise_draws(model):
        drawn.append(means @ each)
        if not usual:  # of noise as stated: how far single depths depart from the mean of their square
            usual = float(np.median(_scatter(noise @ each, drawn[0], of, share)[tells]))
        drawn[-1] = drawn[-1] - whole @ each
    # What changed makes the surveys differ by more, but hardly so within a square.
    own = np.sqrt(float(np.median(_scatter(depth[:, None], mean[:, None], of, share)[tells])) / max(usual, 1e-18))
    score = mean / np.maximum(min(scale, own) * np.concatenate(drawn, axis=1).std(axis=1), 1e-9)
    score = np.where(tells, score / max(1.0, _calmer_half(score[tells])), 0.0)
    changed = _spread(key, score)
    if not changed.any():
        return None
    square = np.bincount(of, share * ((depth - mean[of]) / (scale * places.sd)) ** 2)
    known = np.where(changed & (square < _EVEN), mean, np.nan)
    return Changed(side, key[changed], known[changed])


def _scatter(depth: np.ndarray, mean: np.ndarray, of: np.ndarray, share: np.ndarray) -> np.ndarray:
    """Mean square (c, k) of what ``depth`` (q, k) departs by from the ``mean`` (c, k) of its square."""
    square = share[:, None] * (depth - mean[of]) ** 2
    result: np.ndarray = np.column_stack([np.bincount(of, column, len(mean)) for column in square.T])
    return result


def _calmer_half(score: np.ndarray) -> float:
    """Standard deviation of the scores (c,) about their median on the side where they differ less: heaps stand out to
    one side."""
    away = score - np.median(score)
    return MAD * min(float(np.median(np.abs(half))) for half in (away[away >= 0], away[away <= 0]))


def _side(places: Places) -> float:
    """Of squares that hold enough points."""
    fewest = min(len(np.unique(each.vertex)) for each in places.by_side)
    return float(np.sqrt(_POINTS * places.area.sum() / max(fewest, 1)))


def _keys(xy: np.ndarray, side: float) -> np.ndarray:
    column, row = np.floor(np.asarray(xy) / side).astype(np.int64).T
    key: np.ndarray = row * _ROW + column
    return key


def _spread(key: np.ndarray, score: np.ndarray) -> np.ndarray:
    """Mask (c,) of the squares that changed for sure, and of those that go on from them the same way."""
    changed = np.abs(score) > _SURE
    while True:
        fresh = np.zeros(len(key), bool)
        for place, there in _beside(key):
            fresh |= there & changed[place] & (score * score[place] > 0)
        fresh &= ~changed & (np.abs(score) > _GOES_ON)
        if not fresh.any():
            return changed
        changed |= fresh


def _beside(key: np.ndarray) -> Iterator[Tuple[np.ndarray, np.ndarray]]:
    """The square (c,) on each of eight sides of every square, and whether there is one."""
    for step in _STEPS:
        place = np.minimum(np.searchsorted(key, key + step), len(key) - 1)
        yield place, key[place] == key + step
