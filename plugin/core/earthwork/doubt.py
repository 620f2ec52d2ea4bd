"""How sure a volume is: noise of the points, heights of the surveys, and ground between the points.

Three parts, each a standard deviation of cut, fill and net, taken as independent of each other:

* *random*: noise of each point's height, independent from point to point. A volume is a linear function of the
  heights wherever the line of no cut nor fill does not move, and that line moves earth of no depth; so the derivative
  by a vertex's height is the integral of that vertex's share in the surface over the cut (or fill) area, and
  variances add by its square (law of propagation of uncertainty, JCGM 100:2008, section 5.1).
* *systematic*: one unknown offset between the heights of both surveys, times the area.
* *model*: the ground departs from straight lines between points. Over a triangle a parabolic ground departs from its
  plane by the mean of the departures at the middles of its three edges (integral of the quadratic error of linear
  interpolation). These means are taken as random between patches of ground and alike within one; a patch is as
  wide as ``correlation_length``.

All three are for small doubts: where depths are no larger than the noise, cut and fill come out too large by about
``noise_excess`` each, since noise makes both where there is neither.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, Dict, Iterable, List, Optional, Tuple, Union

import numpy as np
from scipy.special import ndtr

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin
from .overlay import Pieces, Triangles, common_pieces
from .polygons import areas, moments, positive_parts
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

Sigma = Union[float, np.ndarray]
#: Departure of the ground from a straight line (m, one standard deviation) at half-widths (m).
Departure = Callable[[np.ndarray], np.ndarray]


@dataclass(frozen=True)
class SurfaceDoubt:
    """What is unsure about one surface.

    ``sigma``: standard deviation of heights, metres, one or for each vertex (n,); 0 for a design.
    ``departure``: how far the ground departs from the surface between points; None leaves it out.
    ``correlation_length``: metres over which departures are alike; None: twice the median edge.
    """

    sigma: Sigma = 0.0
    departure: Optional[Departure] = None
    correlation_length: Optional[float] = None


@dataclass(frozen=True)
class Doubt:
    """Standard deviations (m³) of one ``value`` (m³) by cause."""

    value: float
    random: float
    systematic: float
    model: float

    @property
    def total(self) -> float:
        return float(np.sqrt(self.random**2 + self.systematic**2 + self.model**2))

    @property
    def interval_95(self) -> Tuple[float, float]:
        """Where the true value is with 95 %, if errors are normal."""
        return self.value - NORMAL_95 * self.total, self.value + NORMAL_95 * self.total


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


def vertex_sigma(tin: Tin, point_sigma: np.ndarray, otherwise: float = float("nan")) -> np.ndarray:
    """Standard deviation (n,) of the height of each vertex.

    ``point_sigma``: (p,) of the survey's points, nan where unknown (``PointSet.sigma_v``); ``otherwise``: where it
    is unknown and for vertices that lines gave. Raises SurveyError where nothing is known.
    """
    sigma = np.full(len(tin.vertices), otherwise)
    of_point = np.flatnonzero(tin.vertex_source >= 0)
    own = np.asarray(point_sigma, float)[tin.vertex_source[of_point]]
    known = np.isfinite(own)
    sigma[of_point[known]] = own[known]
    return _checked(sigma, len(tin.vertices))


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
) -> VolumeDoubt:
    """As :func:`volume_doubt`, of pieces; ``design`` is None for a level or plane, which is exact."""
    pieces = list(pieces)
    volume = sum_volumes(pieces, 0.0, 0.0)
    surfaces = [(existing, existing_doubt, derivatives(pieces, existing, True))]
    if design is not None:
        surfaces.append((design, design_doubt, derivatives(pieces, design, False)))
    random, model = np.zeros((2, 3)), np.zeros((2, 3))
    for row, (tin, doubt, by) in enumerate(surfaces):
        sigma = _checked(doubt.sigma, len(tin.vertices))
        random[row] = [np.sum((slope * sigma) ** 2) for slope in (by.cut, by.fill, by.fill - by.cut)]
        model[row] = _model_variances(tin, doubt, by)
    areas = (volume.cut_area, volume.fill_area, volume.cut_area + volume.fill_area)
    columns = zip((volume.cut, volume.fill, volume.net), random.sum(axis=0), areas, model.sum(axis=0))
    cut, fill, net = (
        Doubt(float(value), float(np.sqrt(r)), float(offset_sigma * area), float(np.sqrt(m)))
        for value, r, area, m in columns
    )
    total = float(random[:, 2].sum())
    share = float(random[0, 2] / total) if total > 0 else float("nan")
    return VolumeDoubt(cut, fill, net, _noise_excess(pieces, surfaces), share)


def derivatives(pieces: Iterable[Pieces], tin: Tin, is_existing: bool) -> Derivatives:
    """Derivatives of cut and fill by the heights of one of the two surfaces, exact where no depth is 0."""
    n, m = len(tin.vertices), len(tin.triangles)
    slope: Dict[float, np.ndarray] = {-1.0: np.zeros(n), 1.0: np.zeros(n)}
    area: Dict[float, np.ndarray] = {-1.0: np.zeros(m), 1.0: np.zeros(m)}
    for part in pieces:
        triangles = Triangles(tin, part.origin)
        triangle = part.first if is_existing else part.second
        depth = part.second_height - part.first_height
        for sign in (-1.0, 1.0):
            for which, _, (x, y) in positive_parts(sign * depth, part.x, part.y):
                t = triangle[which]
                own, weights = _shares(triangles, t, x, y)
                area[sign] += np.bincount(t, own, m)
                for corner in range(3):
                    slope[sign] += np.bincount(tin.triangles[t, corner], weights[:, corner], n)
    rising = -1.0 if is_existing else 1.0  # ground that rises makes more cut and less fill
    return Derivatives(-rising * slope[-1.0], rising * slope[1.0], area[-1.0], area[1.0])


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


def _model_variances(tin: Tin, doubt: SurfaceDoubt, by: Derivatives) -> np.ndarray:
    """Variances (m⁶) of cut, fill and net through the ground between points."""
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


def _noise_excess(pieces: List[Pieces], surfaces: List[Tuple[Tin, SurfaceDoubt, Derivatives]]) -> float:
    """The integral of E max(0, d + e) - max(0, d), e normal with the noise at each place.

    By the rule of the three edges' middles in the triangles of each piece, where depths are not far beyond the noise.
    """
    sigmas = [_checked(doubt.sigma, len(tin.vertices)) for tin, doubt, _ in surfaces]
    most = float(np.sqrt(sum(sigma.max() ** 2 for sigma in sigmas)))
    total = 0.0
    for part in pieces:
        depth = part.second_height - part.first_height
        part = part.take(np.flatnonzero(np.abs(depth).min(axis=1) < 6 * most))
        depth = part.second_height - part.first_height
        fans = [np.stack([v[:, :-2] * 0 + v[:, :1], v[:, 1:-1], v[:, 2:]], axis=2) for v in (part.x, part.y, depth)]
        row = np.repeat(np.arange(len(part)), fans[0].shape[1])
        corner = np.stack([fan.reshape(-1, 3) for fan in fans], axis=2)
        area = areas(corner[:, :, 0], corner[:, :, 1])
        corner, row, area = corner[area > 0], row[area > 0], area[area > 0]
        for k in range(3):
            middle = (corner[:, k] + corner[:, k - 1]) / 2
            total += float(np.sum(area / 3 * _excess_at(part, row, middle, surfaces, sigmas)))
    return total


def _excess_at(
    part: Pieces,
    row: np.ndarray,
    place: np.ndarray,
    surfaces: List[Tuple[Tin, SurfaceDoubt, Derivatives]],
    sigmas: List[np.ndarray],
) -> np.ndarray:
    """E max(0, d + e) - max(0, d) in metres at places (q, 3: x, y, depth d) of the pieces in ``row``."""
    variance = np.zeros(len(row))
    for k, (tin, _, _) in enumerate(surfaces):
        t = (part.second if k else part.first)[row]
        share = _weights_at(Triangles(tin, part.origin), t, place[:, 0], place[:, 1])
        variance += np.sum((share * sigmas[k][tin.triangles[t]]) ** 2, axis=1)
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


def ground_departure(tin: Tin, sigma: float = 0.0) -> Departure:
    """Departure of the ground from straight lines, judged from the surface itself.

    At each inner vertex the height is compared with the plane through its neighbours (least squares), which lies as
    far off as a straight line of the neighbours' distance would. The spread of these differences, less the part that
    noise ``sigma`` (m) of the heights makes, is the departure at the median distance; it is taken to grow with the
    square of the half-width below that distance and in proportion above it. Where a survey offers repeated
    walks or check points, departures found from those are better.
    """
    residual, reach, gain = _neighbour_residuals(tin)
    if len(residual) == 0:
        return lambda half_width: np.zeros(np.shape(half_width))
    spread = np.sqrt(max(0.0, float(np.mean(residual**2 - gain * sigma**2))))
    middle = float(np.median(reach))

    def departure(half_width: np.ndarray) -> np.ndarray:
        ratio = np.asarray(half_width, float) / middle
        result: np.ndarray = spread * np.where(ratio < 1, ratio**2, ratio)
        return result

    return departure


def _neighbour_residuals(tin: Tin) -> Tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Of each inner vertex: height less the plane of its neighbours, their mean distance, and the gain of noise."""
    n = len(tin.vertices)
    a = tin.triangles.ravel()
    b = np.roll(tin.triangles, -1, axis=1).ravel()  # around an inner vertex every edge out of it occurs once
    rim = np.zeros(n, bool)
    triangle, side = np.nonzero(tin.neighbours < 0)
    rim[tin.triangles[triangle, side]] = rim[tin.triangles[triangle, (side + 1) % 3]] = True
    delta = tin.vertices[b] - tin.vertices[a]
    design = np.column_stack([np.ones(len(a)), delta[:, :2]])
    normal, right = np.zeros((n, 3, 3)), np.zeros((n, 3))
    for i in range(3):
        right[:, i] = np.bincount(a, design[:, i] * delta[:, 2], n)
        for j in range(3):
            normal[:, i, j] = np.bincount(a, design[:, i] * design[:, j], n)
    count = np.bincount(a, minlength=n)
    use = np.flatnonzero(~rim & (count >= 4))
    use = use[np.linalg.cond(normal[use]) < 1e10] if len(use) else use
    inverse = np.linalg.inv(normal[use])
    residual = -np.einsum("ij,ij->i", inverse[:, 0], right[use])
    reach = np.bincount(a, np.hypot(delta[:, 0], delta[:, 1]), n)[use] / count[use]
    return residual, reach, 1 + inverse[:, 0, 0]
