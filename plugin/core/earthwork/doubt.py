"""How sure a volume is: noise of the points, heights of the surveys, and ground between the points.

Four parts, each a standard deviation of cut, fill and net, taken as independent of each other:

* *random*: noise of each point's height, independent from point to point. A volume is a linear function of the
  heights wherever the line of no cut nor fill does not move, and that line moves earth of no depth; so the derivative
  by a vertex's height is the integral of that vertex's share in the surface over the cut (or fill) area, and
  variances add by its square (law of propagation of uncertainty, JCGM 100:2008, section 5.1).
* *drift*: what neighbouring points have in common (the receiver's slow errors). It is taken as one offset within a
  square of ``drift_length`` and as independent from square to square, so the derivatives by its points' heights
  add up before they are squared.
* *systematic*: one unknown offset between the heights of both surveys, times the area.
* *model*: the ground departs from straight lines between points. Over a triangle a parabolic ground departs from its
  plane by the mean of the departures at the middles of its three edges (integral of the quadratic error of linear
  interpolation). These means are taken as random between patches of ground and alike within one; a patch is as
  wide as ``correlation_length``.

All four are for small doubts: where depths are no larger than the noise, cut and fill come out too large by about
``noise_excess`` each, since noise makes both where there is neither.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import chain
from typing import Dict, Iterable, List, Optional, Tuple, Union

import numpy as np
from scipy.special import ndtr

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin
from .overlay import Pieces, Triangles, common_pieces
from .polygons import areas, moments, positive_parts
from .roughness import Departure
from .volume import sum_volumes

NORMAL_95 = 1.959963984540054  # two-sided 95 % of the normal distribution

NO_SIGMA = Text(
    "earthwork.no_sigma",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} vertices of the surface have no standard deviation of height (or one below 0), and no value "
        "stands in. Give the standard deviation of a height of this survey.",
    ),
)

BAD_DRIFT = Text(
    "earthwork.drift",
    QT_TRANSLATE_NOOP("core", "The drift of heights is {value} m; give a standard deviation of 0 or more."),
)
BAD_DRIFT_LENGTH = Text(
    "earthwork.drift_length",
    QT_TRANSLATE_NOOP("core", "Drift over {value} m cannot be; give the metres within which points share it."),
)
BAD_OFFSET = Text(
    "earthwork.offset_sigma",
    QT_TRANSLATE_NOOP(
        "core", "The height offset between both surfaces has {value} m; give a standard deviation of 0 or more."
    ),
)

Sigma = Union[float, np.ndarray]


@dataclass(frozen=True)
class SurfaceDoubt:
    """What is unsure about one surface.

    ``sigma``: standard deviation of heights, metres, one or for each vertex (n,); 0 for a design.
    ``drift``: that of what points within ``drift_length`` (m) of each other have in common, metres.
    ``departure``: how far the ground departs from the surface between points; None leaves it out.
    ``correlation_length``: metres over which departures are alike; None: twice the median edge.
    """

    sigma: Sigma = 0.0
    departure: Optional[Departure] = None
    correlation_length: Optional[float] = None
    drift: float = 0.0
    drift_length: float = 30.0

    def __post_init__(self) -> None:
        if not (np.isfinite(self.drift) and self.drift >= 0):
            raise SurveyError(BAD_DRIFT, value=self.drift)
        if not (np.isfinite(self.drift_length) and self.drift_length > 0):
            raise SurveyError(BAD_DRIFT_LENGTH, value=self.drift_length)


@dataclass(frozen=True)
class Doubt:
    """Standard deviations (m³) of one ``value`` (m³) by cause."""

    value: float
    random: float
    systematic: float
    model: float
    drift: float = 0.0

    @property
    def total(self) -> float:
        return float(np.sqrt(self.random**2 + self.systematic**2 + self.model**2 + self.drift**2))

    @property
    def half_95(self) -> float:
        """Half the width of :attr:`interval_95`, cubic metres."""
        return NORMAL_95 * self.total

    @property
    def interval_95(self) -> Tuple[float, float]:
        """Where the true value is with 95 %, if errors are normal."""
        return self.value - self.half_95, self.value + self.half_95


@dataclass(frozen=True)
class VolumeDoubt:
    """Doubts of ``cut``, ``fill`` and ``net`` (fill less cut). ``noise_excess``: m³ by which noise makes cut and fill
    each too large, on average; ``point_share``: part of the random variance of net that the existing surface has."""

    cut: Doubt
    fill: Doubt
    net: Doubt
    noise_excess: float
    point_share: float


@dataclass(frozen=True)
class Derivatives:
    """How volumes follow heights: m³ for each metre that a vertex rises, and areas by triangle.

    ``cut``, ``fill``: (n,) by vertex of one surface; ``cut_area``, ``fill_area``: (m,) square metres by triangle.
    """

    cut: np.ndarray
    fill: np.ndarray
    cut_area: np.ndarray
    fill_area: np.ndarray


def volume_doubt(
    existing: Tin,
    design: Tin,
    existing_doubt: SurfaceDoubt,
    design_doubt: SurfaceDoubt = SurfaceDoubt(),
    offset_sigma: float = 0.0,
) -> VolumeDoubt:
    """The doubts of the exact volume between two surfaces.

    ``offset_sigma``: standard deviation of the height offset between both, metres. Points that both surfaces
    share are taken as independent. Raises SurveyError for a standard deviation that is missing.
    """
    return doubt_of_pieces(
        list(common_pieces(existing, design)), existing, design, existing_doubt, design_doubt, offset_sigma
    )


def doubt_of_pieces(
    pieces: Iterable[Pieces],
    existing: Tin,
    design: Optional[Tin],
    existing_doubt: SurfaceDoubt,
    design_doubt: SurfaceDoubt = SurfaceDoubt(),
    offset_sigma: float = 0.0,
    existing_only: Iterable[Pieces] = (),
    design_only: Iterable[Pieces] = (),
) -> VolumeDoubt:
    """As :func:`volume_doubt`, of pieces; ``design`` is None for a level or plane, which is exact.

    ``existing_only``, ``design_only``: pieces of one surface against a level (the other's triangles mean nothing).
    They are gone through several times; an iterator is kept in memory.
    """
    if not (np.isfinite(offset_sigma) and offset_sigma >= 0):
        raise SurveyError(BAD_OFFSET, value=offset_sigma)
    groups = [list(group) if iter(group) is group else group for group in (pieces, existing_only, design_only)]
    volume = sum_volumes(chain(*groups), 0.0, 0.0)
    surfaces = [_Side(existing, existing_doubt, True, (groups[0], groups[1]))]
    if design is not None:
        surfaces.append(_Side(design, design_doubt, False, (groups[0], groups[2])))
    random, drift, model = (np.array([part(side) for side in surfaces]) for part in _PARTS)
    areas = (volume.cut_area, volume.fill_area, volume.cut_area + volume.fill_area)
    columns = zip((volume.cut, volume.fill, volume.net), areas, *(v.sum(axis=0) for v in (random, drift, model)))
    cut, fill, net = (
        Doubt(float(value), float(np.sqrt(r)), float(offset_sigma * area), float(np.sqrt(m)), float(np.sqrt(d)))
        for value, area, r, d, m in columns
    )
    total = float(random[:, 2].sum())
    share = float(random[0, 2] / total) if total > 0 else float("nan")
    excess = _noise_excess(groups[0], surfaces)
    excess += sum(_noise_excess(group, [side]) for group, side in zip(groups[1:], surfaces))
    return VolumeDoubt(cut, fill, net, excess, share)


class _Side:
    """One surface, what is unsure about it, and how volumes follow its heights."""

    def __init__(
        self, tin: Tin, doubt: SurfaceDoubt, is_existing: bool, groups: Tuple[Iterable[Pieces], Iterable[Pieces]]
    ) -> None:
        self.tin, self.doubt, self.is_existing = tin, doubt, is_existing
        self.sigma = _checked(doubt.sigma, len(tin.vertices))
        self._triangles: Optional[Triangles] = None
        self.by = derivatives(chain(*groups), tin, is_existing)

    def triangles(self, origin: np.ndarray) -> Triangles:
        """The triangles in metres from the origin of pieces, which seldom changes."""
        if self._triangles is None or not np.array_equal(self._triangles.base, origin):
            self._triangles = Triangles(self.tin, origin)
        return self._triangles

    def slopes(self) -> Tuple[np.ndarray, ...]:
        """Derivatives (n,) of cut, fill and net."""
        return self.by.cut, self.by.fill, self.by.fill - self.by.cut


def _random_variances(side: _Side) -> np.ndarray:
    """Variances (3,) of cut, fill and net through independent noise of the points."""
    return np.array([np.sum((slope * side.sigma) ** 2) for slope in side.slopes()])


def _drift_variances(side: _Side) -> np.ndarray:
    """Variances (3,) through what the points of each square of ground have in common."""
    if side.doubt.drift == 0:
        return np.zeros(3)
    square = np.floor((side.tin.vertices[:, :2] + side.tin.origin) / side.doubt.drift_length).astype(np.int64)
    patch = np.unique(square, axis=0, return_inverse=True)[1].ravel()
    return np.array([np.sum((side.doubt.drift * np.bincount(patch, slope)) ** 2) for slope in side.slopes()])


def derivatives(pieces: Iterable[Pieces], tin: Tin, is_existing: bool) -> Derivatives:
    """Derivatives of cut and fill by the heights of one of the two surfaces, exact where no depth is 0."""
    n, m = len(tin.vertices), len(tin.triangles)
    slope: Dict[float, _Sums] = {-1.0: _Sums(n), 1.0: _Sums(n)}
    area: Dict[float, _Sums] = {-1.0: _Sums(m), 1.0: _Sums(m)}
    triangles: Optional[Triangles] = None
    for part in pieces:
        if triangles is None or not np.array_equal(triangles.base, part.origin):
            triangles = Triangles(tin, part.origin)
        triangle = part.first if is_existing else part.second
        depth = part.second_height - part.first_height
        for sign in (-1.0, 1.0):
            for which, _, (x, y) in positive_parts(sign * depth, part.x, part.y):
                t = triangle[which]
                own, weights = _shares(triangles, t, x, y)
                area[sign].add(t, own)
                slope[sign].add(tin.triangles[t].ravel(), weights.ravel())
    rising = -1.0 if is_existing else 1.0  # ground that rises makes more cut and less fill
    return Derivatives(
        -rising * slope[-1.0].total(), rising * slope[1.0].total(), area[-1.0].total(), area[1.0].total()
    )


class _Sums:
    """Sums by number (0 to count), of what comes in small parts; added up when there is enough of it."""

    def __init__(self, count: int) -> None:
        self._sums = np.zeros(count)
        self._waiting: List[Tuple[np.ndarray, np.ndarray]] = []
        self._rows = 0

    def add(self, number: np.ndarray, value: np.ndarray) -> None:
        self._waiting.append((number, value))
        self._rows += len(number)
        if self._rows > 2 * len(self._sums) + 100_000:
            self.total()

    def total(self) -> np.ndarray:
        if self._waiting:
            numbers, values = (np.concatenate(column) for column in zip(*self._waiting))
            self._sums += np.bincount(numbers, values, len(self._sums))
            self._waiting, self._rows = [], 0
        return self._sums


def _shares(triangles: Triangles, t: np.ndarray, x: np.ndarray, y: np.ndarray) -> Tuple[np.ndarray, np.ndarray]:
    """Areas (k,) of polygons in triangles ``t`` and the integrals (k, 3) of the three corners' shares over them."""
    area, by_x, by_y = moments(x, y)
    tx, ty = triangles.x[t], triangles.y[t]
    double = (tx[:, 1] - tx[:, 0]) * (ty[:, 2] - ty[:, 0]) - (tx[:, 2] - tx[:, 0]) * (ty[:, 1] - ty[:, 0])
    weights = np.empty((len(t), 3))
    for corner in range(3):
        a, b = (corner + 1) % 3, (corner + 2) % 3
        dx, dy = tx[:, b] - tx[:, a], ty[:, b] - ty[:, a]
        at_first = dx * (y[:, 0] - ty[:, a]) - dy * (x[:, 0] - tx[:, a])
        weights[:, corner] = (area * at_first + dx * by_y - dy * by_x) / double
    return area, weights


def _model_variances(side: _Side) -> np.ndarray:
    """Variances (m⁶) of cut, fill and net through the ground between points."""
    tin, doubt, by = side.tin, side.doubt, side.by
    if doubt.departure is None:
        return np.zeros(3)
    corner = tin.corners()[:, :, :2]
    edge = np.hypot(*np.moveaxis(np.roll(corner, -1, axis=1) - corner, 2, 0))
    mean_departure = np.asarray(doubt.departure(edge / 2)).mean(axis=1)
    length = 2 * float(np.median(edge)) if doubt.correlation_length is None else doubt.correlation_length
    found: List[float] = []
    for area in (by.cut_area, by.fill_area, by.cut_area + by.fill_area):
        found.append(float(np.sum(area * mean_departure**2 * np.maximum(area, np.minimum(length**2, area.sum())))))
    return np.array(found)


_PARTS = (_random_variances, _drift_variances, _model_variances)


def _noise_excess(pieces: Iterable[Pieces], sides: List[_Side]) -> float:
    """The integral of E max(0, d + e) - max(0, d), e normal with the noise at each place.

    By the rule of the three edges' middles in the triangles of each piece, where depths are not far beyond the noise.
    """
    most = float(np.sqrt(sum(side.sigma.max() ** 2 for side in sides)))
    total = 0.0
    for part in pieces if most > 0 else ():
        depth = part.second_height - part.first_height
        part = part.take(np.flatnonzero(np.abs(depth).min(axis=1) < 6 * most))
        if len(part) == 0:
            continue
        depth = part.second_height - part.first_height
        fans = [np.stack([v[:, :-2] * 0 + v[:, :1], v[:, 1:-1], v[:, 2:]], axis=2) for v in (part.x, part.y, depth)]
        row = np.repeat(np.arange(len(part)), fans[0].shape[1])
        corner = np.stack([fan.reshape(-1, 3) for fan in fans], axis=2)
        area = areas(corner[:, :, 0], corner[:, :, 1])
        corner, row, area = corner[area > 0], row[area > 0], area[area > 0]
        triangles = [side.triangles(part.origin) for side in sides]
        for k in range(3):
            middle = (corner[:, k] + corner[:, k - 1]) / 2
            total += float(np.sum(area / 3 * _excess_at(part, row, middle, sides, triangles)))
    return total


def _excess_at(
    part: Pieces, row: np.ndarray, place: np.ndarray, sides: List[_Side], triangles: List[Triangles]
) -> np.ndarray:
    """E max(0, d + e) - max(0, d) in metres at places (q, 3: x, y, depth d) of the pieces in ``row``."""
    variance = np.zeros(len(row))
    for side, own in zip(sides, triangles):
        t = (part.first if side.is_existing else part.second)[row]
        share = _weights_at(own, t, place[:, 0], place[:, 1])
        variance += np.sum((share * side.sigma[side.tin.triangles[t]]) ** 2, axis=1)
    sd = np.sqrt(np.maximum(variance, 1e-300))
    ratio = np.abs(place[:, 2]) / sd
    excess: np.ndarray = sd * (np.exp(-(ratio**2) / 2) / np.sqrt(2 * np.pi) - ratio * ndtr(-ratio))
    return excess


def _weights_at(triangles: Triangles, t: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    """The corners' shares (k, 3) at places in triangles ``t``."""
    tx, ty = triangles.x[t] - x[:, None], triangles.y[t] - y[:, None]
    after, before = [1, 2, 0], [2, 0, 1]
    weight = tx[:, after] * ty[:, before] - tx[:, before] * ty[:, after]
    result: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
    return result


def _checked(sigma: Sigma, n: int) -> np.ndarray:
    values = np.broadcast_to(np.asarray(sigma, float), (n,))
    bad = ~(np.isfinite(values) & (values >= 0))
    if np.any(bad):
        raise SurveyError(NO_SIGMA, count=int(np.count_nonzero(bad)))
    return values
