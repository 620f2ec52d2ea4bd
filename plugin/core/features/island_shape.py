"""The outline of an island, a rounded rectangle or an oval, from the heights of all points on it and about it.

What lies inside is higher by the height of the kerb. So every point tells on which side of the outline it lies, those
of passes too that go by without a step. Six numbers of the outline are found by least squares, the heights within and
without eliminated for each (variable projection: Golub and Pereyra 1973); single wrong heights count less (weights of
Cauchy's distribution).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np
from scipy.optimize import least_squares

#: The step is taken as a ramp so wide (m), then narrower.
RAMPS = (0.8, 0.4)
#: Heights so many standard deviations off count half; slopes and bends of the ground that are expected (m/m, 1/m); the
#: ground falls towards a kerb, or away from it, within so many metres.
FAR, SLOPES, BENDS, FALLS = 3.0, 0.05, 0.01, 3.0
#: An outline fits if the median of the departures, in standard deviations, is no more; smallest sides (m).
FITS, SMALLEST = 1.5, 0.6
#: Vertices of an arc of a rounded corner, and how far apart (m) others are at most.
OF_ARC, APART = 3, 2.0
#: Least and most doubt (m) of a place.
SUREST, LOOSEST = 0.03, 0.4
#: Width (m) of the face of a kerb, blurred by the place of the pole.
FACE = 0.1
#: How much wider than what was found the next shapes are drawn.
WIDER = 1.5
_ROUNDS, _TRIES, _STEP, _DRAWINGS, _DRAWS = 3, 7, 0.02, 3, 100
_STEP_COLUMN = 8


@dataclass(frozen=True)
class Outline:
    """``shape``: (6,) middle, angle (radian), length, width (m), and radius of the corners (share of half the width, of
    an oval -1); ``cov``: (6, 6) of the first five and the radius. ``ground``: coefficients of the height about it and
    of the step; ``ground_cov``: theirs. ``off``: median departure in standard deviations.
    """

    shape: np.ndarray
    cov: np.ndarray
    ground: np.ndarray
    ground_cov: np.ndarray
    off: float

    @property
    def rise(self) -> float:
        """Height of the kerb at the middle, metres."""
        return float(self.ground[_STEP_COLUMN])

    def vertices(self) -> np.ndarray:
        """Places (v, 2) along the outline, counterclockwise, first not repeated: where it turns, and between."""
        corners = _oval(self.shape) if self.shape[5] < 0 else _rounded(self.shape)
        return _turned(self.shape, corners)

    def away(self, xy: np.ndarray) -> np.ndarray:
        """How far (n,) places lie inside the outline, metres, negative outside."""
        return _inside(self.shape, xy)

    def sigma(self, xy: np.ndarray) -> np.ndarray:
        """Doubt (n,) of the outline across it at places on it, metres."""
        slope = np.column_stack([(_inside(s, xy) - self.away(xy)) / _STEP for s in _moved(self.shape)])
        free = slope.shape[1]
        var = np.einsum("ni,ij,nj->n", slope, self.cov[:free, :free], slope)
        return np.clip(np.sqrt(np.maximum(var, 0)), SUREST, LOOSEST)

    def heights(self, xy: np.ndarray) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
        """Height of the foot (n,) at places, how much the kerb rises there, and the variance of the foot."""
        columns = _columns(xy - self.shape[:2], np.ones(len(xy)), np.zeros(len(xy)))
        foot = columns.copy()
        foot[:, _STEP_COLUMN:] = 0
        var = np.einsum("ni,ij,nj->n", foot, self.ground_cov, foot)
        return foot @ self.ground, (columns - foot) @ self.ground, var


def fit_outline(xy: np.ndarray, z: np.ndarray, noise: np.ndarray, ring: np.ndarray, rise: float) -> Optional[Outline]:
    """The outline that fits the heights ``z`` (n,) at ``xy`` (n, 2) best; None where none does.

    ``noise``: (n,) standard deviations, metres. ``ring``: (r, 2) places on the outline as first found; ``rise``: usual
    height of the kerb, metres.
    """
    heights = Heights(xy, z, noise, rise)
    found = []
    for starts in _starts(ring):
        for ramp in RAMPS:
            starts = [min((_fit(start, heights, ramp) for start in starts), key=lambda fit: fit[0])[1]]
        found += [_mean(shape, heights) for shape in starts]
    _, outline = max(found, key=lambda each: each[0])
    return outline if outline.off <= FITS else None


def _starts(ring: np.ndarray) -> List[List[np.ndarray]]:
    """The smallest rectangle about the ring with rounded corners, longer at both ends or not; and as an oval."""
    edges = np.roll(ring, -1, axis=0) - ring
    angles = np.unique(np.round(np.arctan2(edges[:, 1], edges[:, 0]) % (np.pi / 2), 3))
    boxes = []
    for angle in angles.tolist():
        axes = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])
        uv = ring @ axes.T
        low, high = uv.min(axis=0), uv.max(axis=0)
        long, wide = (high - low).tolist()
        middle = (low + high) / 2 @ axes
        turn = angle if long >= wide else angle + np.pi / 2
        boxes.append((long * wide, np.array([*middle, turn, max(long, wide), min(long, wide)])))
    box = min(boxes, key=lambda each: each[0])[1]
    longer = box + np.array([0, 0, 0, 1.2, 0])
    return [[np.append(box, 0.4), np.append(longer, 0.4)], [np.append(box * [1, 1, 1, 1.05, 1.1], -1.0)]]


def _fit(start: np.ndarray, heights: Heights, ramp: float) -> Tuple[float, np.ndarray]:
    """The sum of squares and the shape of the fit that begins at ``start``."""
    free, scale = _scale(start)
    low = np.array([-np.inf, -np.inf, -np.inf, SMALLEST, SMALLEST, 0.05])[:free]
    high = np.array([np.inf, np.inf, np.inf, np.inf, np.inf, 1.0])[:free]
    begin = np.clip(start[:free], low + 1e-3, high - 1e-3)

    def departures(numbers: np.ndarray) -> np.ndarray:
        result: np.ndarray = heights.fitted(_whole(numbers[None]), ramp).departures[0]
        return result

    def slopes(numbers: np.ndarray) -> np.ndarray:
        every = numbers + np.vstack([np.zeros(free), _STEP * np.eye(free)])
        off = heights.fitted(_whole(every), ramp).departures
        return (off[1:] - off[0]).T / _STEP

    fit = least_squares(departures, begin, jac=slopes, bounds=(low, high), x_scale=scale, max_nfev=_TRIES)
    return float(fit.cost), _whole(fit.x[None])[0]


def _scale(shape: np.ndarray) -> Tuple[int, np.ndarray]:
    """How many numbers of a shape are free, and how much each may be off."""
    free = 5 if shape[5] < 0 else 6
    return free, np.array([0.3, 0.3, 0.05, 0.5, 0.3, 0.3])[:free]


def _whole(numbers: np.ndarray) -> np.ndarray:
    """Shapes (m, 6) of the numbers (m, 5) of ovals, or of rounded rectangles (m, 6)."""
    return numbers if numbers.shape[1] == 6 else np.column_stack([numbers, np.full(len(numbers), -1.0)])


def _mean(shape: np.ndarray, heights: Heights) -> Tuple[float, Outline]:
    """The logarithm of how likely all shapes near ``shape`` are together, and their mean, each as likely as its
    departures say.

    By importance sampling, since a point tells its side only and the best shape is any of many alike.
    """
    free, scale = _scale(shape)
    random = np.random.default_rng(1)
    middle, cov = shape[:free], np.diag((0.5 * scale) ** 2)
    likely = -np.inf
    for _ in range(_DRAWINGS):
        root = np.linalg.cholesky(cov)
        unit = random.standard_normal((_DRAWS, free))
        drawn = middle + unit @ root.T
        log = heights.log_likely(_whole(drawn)) + 0.5 * (unit**2).sum(axis=1)
        weight = np.exp(log - log.max())
        likely = float(log.max() + np.log(weight.mean()) + np.log(np.diag(root)).sum())
        weight /= weight.sum()
        middle = weight @ drawn
        off = drawn - middle
        cov = WIDER * ((off * weight[:, None]).T @ off + np.diag((0.05 * scale) ** 2))
    whole = np.zeros((6, 6))
    whole[:free, :free] = cov / WIDER
    best = _whole(middle[None])
    fitted = heights.fitted(best, FACE)
    off_all = float(np.median(np.abs(fitted.off[0])))
    return likely, Outline(best[0], whole, fitted.ground[0], np.linalg.inv(fitted.normal[0]), off_all)


@dataclass(frozen=True)
class Fitted:
    """What heights say of m shapes: ``off, departures`` (m, n) in standard deviations, the latter with those far off
    drawn in; ``ground`` (m, c) coefficients and ``normal`` (m, c, c) their information."""

    off: np.ndarray
    departures: np.ndarray
    ground: np.ndarray
    normal: np.ndarray


@dataclass(frozen=True)
class Heights:
    """Heights ``z`` (n,) at ``xy`` (n, 2) with standard deviations ``noise`` (n,) about an island with a kerb of about
    ``rise``; metres."""

    xy: np.ndarray
    z: np.ndarray
    noise: np.ndarray
    rise: float

    def fitted(self, shapes: np.ndarray, ramp: float) -> Fitted:
        """The heights within and without the outlines of shapes (m, 6), whose kerbs are ramps ``ramp`` metres wide."""
        slight = 0.5 * SLOPES
        prior = np.array([10.0, SLOPES, SLOPES, BENDS, BENDS, BENDS, slight, slight, 0.5 * self.rise, slight, slight])
        number = np.arange(len(prior))
        expected = np.where(number == _STEP_COLUMN, self.rise, 0.0) / prior**2
        zero = float(np.median(self.z))
        z = (self.z - zero) / self.noise
        columns = np.array([self._columns(shape, ramp) for shape in shapes]) / self.noise[:, None]
        weight = np.ones(columns.shape[:2])
        for _ in range(_ROUNDS):
            weighted = (columns * weight[:, :, None]).transpose(0, 2, 1)
            normal = weighted @ columns
            normal[:, number, number] += prior**-2.0
            ground = np.linalg.solve(normal, (weighted @ z + expected)[:, :, None])
            off = z - (columns @ ground)[:, :, 0]
            weight = 1 / (1 + (off / FAR) ** 2)
        ground = ground[:, :, 0].copy()
        ground[:, 0] += zero
        departures = np.sign(off) * FAR * np.sqrt(np.log1p((off / FAR) ** 2))
        return Fitted(off, departures, ground, normal)

    def log_likely(self, shapes: np.ndarray) -> np.ndarray:
        """How likely (m,) shapes are, logarithm; none that are no shapes."""
        radius = shapes[:, 5]
        good = (shapes[:, 3:5].min(axis=1) >= SMALLEST) & ((radius == -1.0) | ((radius > 0) & (radius <= 1)))
        result = np.full(len(shapes), -1e6)
        result[good] = -0.5 * (self.fitted(shapes[good], FACE).departures ** 2).sum(axis=1) if good.any() else 0.0
        return result

    def _columns(self, shape: np.ndarray, ramp: float) -> np.ndarray:
        away = _inside(shape, self.xy)
        up = np.clip(away / ramp + 0.5, 0, 1)
        return _columns(self.xy - shape[:2], up * up * (3 - 2 * up), away)


def _columns(local: np.ndarray, up: np.ndarray, away: np.ndarray) -> np.ndarray:
    """What heights are made of: a plane and its bends, falls away from the kerb without and within, and the step with
    its slopes. ``up``: (n,) share of the step; ``away``: (n,) metres inside the outline."""
    x, y = local.T
    outside, inside = np.clip(-away, 0, FALLS), np.clip(away, 0, FALLS)
    return np.column_stack([np.ones(len(x)), x, y, x * x, x * y, y * y, outside, inside, up, up * x, up * y])


def _local(shape: np.ndarray, xy: np.ndarray) -> np.ndarray:
    c, s = np.cos(shape[2]), np.sin(shape[2])
    d = xy - shape[:2]
    return np.column_stack([c * d[:, 0] + s * d[:, 1], -s * d[:, 0] + c * d[:, 1]])


def _turned(shape: np.ndarray, uv: np.ndarray) -> np.ndarray:
    c, s = np.cos(shape[2]), np.sin(shape[2])
    return shape[:2] + np.column_stack([c * uv[:, 0] - s * uv[:, 1], s * uv[:, 0] + c * uv[:, 1]])


def _inside(shape: np.ndarray, xy: np.ndarray) -> np.ndarray:
    """Metres (n,) inside the outline."""
    uv = _local(shape, xy)
    half = np.maximum(shape[3:5], 0.1) / 2
    if shape[5] < 0:
        rho = np.maximum(np.hypot(*(uv / half).T), 1e-6)
        steep = np.maximum(np.hypot(*(uv / half**2).T) / rho, 1e-6)
        return np.asarray((1 - rho) / steep)
    radius = shape[5] * half.min()
    q = np.abs(uv) - (half - radius)
    out = np.hypot(*np.maximum(q, 0).T) + np.minimum(q.max(axis=1), 0)
    return np.asarray(radius - out)


def _moved(shape: np.ndarray) -> List[np.ndarray]:
    """The shape with each number a little larger."""
    free = 5 if shape[5] < 0 else 6
    return [shape + _STEP * (np.arange(6) == i) for i in range(free)]


def _oval(shape: np.ndarray) -> np.ndarray:
    turn = np.linspace(0, 2 * np.pi, 4 * OF_ARC + 4, endpoint=False)
    return np.column_stack([shape[3] / 2 * np.cos(turn), shape[4] / 2 * np.sin(turn)])


def _rounded(shape: np.ndarray) -> np.ndarray:
    half = shape[3:5] / 2
    radius = shape[5] * half.min()
    parts = []
    for number, (u, v) in enumerate(((1, 1), (-1, 1), (-1, -1), (1, -1))):
        turn = np.pi / 2 * (number + np.linspace(0, 1, OF_ARC))
        centre = np.array([u, v]) * (half - radius)
        parts.append(centre + radius * np.column_stack([np.cos(turn), np.sin(turn)]))
    corners = np.vstack(parts)
    onward = np.roll(corners, -1, axis=0)
    result = []
    for a, b in zip(corners, onward):
        many = max(1, int(np.ceil(np.hypot(*(b - a)) / APART)))
        result += [a + k / many * (b - a) for k in range(many)]
    return np.array(result)
