"""One surface of a comparison, what is unsure about it, and the noise that this makes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Iterator, Optional, Sequence, Union

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..surface.tin import Tin
from .drift_field import DRIFT_TIME, DriftField, walked_times
from .roughness import Departure
from .triangles import Triangles

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

DRAWS = 160  # of noise
SEED = 20_130  # any; the same input gives the same numbers

_ALIKE = 4.0
#: How alike the bends are that two surfaces bridge: 1 along one direction, a third along two at right angles, which is
#: that of the second derivatives of an isotropic random field. Surveys are walked in any directions.
_SAME_WAY = 0.5
_BLOCKS = (20, 10, 5, 2)  # draws at once; each goes into DRAWS
_MOST_NUMBERS = 5_000_000  # drawn at once

Sigma = Union[float, np.ndarray]


@dataclass(frozen=True)
class SurfaceDoubt:
    """What is unsure about one surface.

    ``sigma``: standard deviation of heights, metres, one or for each vertex (n,), of what is new at every point; 0 for
    a design. ``drift``: that of what points recorded within minutes share, metres. ``time``: (n,) seconds of the
    vertices; None tells them from the order of the vertices, where that is a walk's. Without either, points within
    squares of ``drift_length`` (m) share drift.
    ``departure``: how far the ground departs from the surface between points; None leaves it out.
    ``correlation_length``: metres over which departures are alike; None: twice the median edge.
    """

    sigma: Sigma = 0.0
    departure: Optional[Departure] = None
    correlation_length: Optional[float] = None
    drift: float = 0.0
    drift_length: float = 30.0
    time: Optional[np.ndarray] = None
    drift_time: float = DRIFT_TIME

    def __post_init__(self) -> None:
        if not (np.isfinite(self.drift) and self.drift >= 0):
            raise SurveyError(BAD_DRIFT, value=self.drift)
        if not (np.isfinite(self.drift_length) and self.drift_length > 0):
            raise SurveyError(BAD_DRIFT_LENGTH, value=self.drift_length)


class Side:
    """One surface with its doubt.

    ``sign``: how it counts in depth, -1 for the existing surface, 1 for the design. ``departure``: (m, 3) metres at the
    middles of the edges; ``unit``: (m,) that of edges of 2 m, which tells smooth ground from rough.
    """

    def __init__(self, tin: Tin, doubt: SurfaceDoubt, is_existing: bool) -> None:
        self.tin, self.doubt, self.is_existing = tin, doubt, is_existing
        self.sign = -1.0 if is_existing else 1.0
        self.sigma = _checked(doubt.sigma, len(tin.vertices))
        time = doubt.time
        if time is None and doubt.drift > 0:
            time = walked_times(tin)
        self.drift = DriftField(tin, doubt.drift, doubt.drift_length, time, doubt.drift_time)
        edge = tin.edge_lengths()
        self.departure = np.zeros(edge.shape) if doubt.departure is None else np.asarray(doubt.departure(edge / 2))
        alike = np.ones(edge.shape)
        self.unit = np.zeros(len(edge)) if doubt.departure is None else np.asarray(doubt.departure(alike)).mean(axis=1)
        given = doubt.correlation_length
        self.patch_length = (2 * float(np.median(edge)) if len(edge) else 1.0) if given is None else given
        self._triangles: Optional[Triangles] = None

    @property
    def most(self) -> float:
        """The largest standard deviation of a height of the surface, metres."""
        ground = float(self.departure.max()) if self.departure.size else 0.0
        return float(np.sqrt(self.sigma.max() ** 2 + self.doubt.drift**2 + ground**2))

    def triangles(self, origin: np.ndarray) -> Triangles:
        """The triangles in metres from the origin of pieces, which seldom changes."""
        if self._triangles is None or not np.array_equal(self._triangles.base, origin):
            self._triangles = Triangles(self.tin, origin)
        return self._triangles

    def shares(self, triangle: np.ndarray, origin: np.ndarray, x: np.ndarray, y: np.ndarray) -> np.ndarray:
        """The corners' shares (q, 3) at places (q,) in triangles."""
        own = self.triangles(origin)
        tx, ty = own.x[triangle] - x[:, None], own.y[triangle] - y[:, None]
        after, before = [1, 2, 0], [2, 0, 1]
        weight = tx[:, after] * ty[:, before] - tx[:, before] * ty[:, after]
        result: np.ndarray = weight / weight.sum(axis=1, keepdims=True)
        return result

    def departures(self, triangle: np.ndarray, share: np.ndarray) -> np.ndarray:
        """How far (q,) ground that bends evenly departs from its triangle: as told at the edges' middles, less
        elsewhere."""
        across = share * np.roll(share, -1, axis=1)
        result: np.ndarray = 4 * np.sum(across * self.departure[triangle], axis=1)
        return result

    def variance_at(self, triangle: np.ndarray, share: np.ndarray) -> np.ndarray:
        """Variance (q,) that noise of the points makes in the surface's height at places."""
        white = np.sum((share * self.sigma[self.tin.triangles[triangle]]) ** 2, axis=1)
        result: np.ndarray = white + self.doubt.drift**2
        return result

    def draws(self, random: np.random.Generator, count: int) -> np.ndarray:
        """Noise (n, count) of the vertices, metres."""
        own = self.sigma[:, None] * random.standard_normal((len(self.sigma), count))
        result: np.ndarray = own + self.drift.draws(random, count)
        return result


class NoiseModel:
    """Noise of both surfaces of a comparison: of their vertices, and of the ground between these.

    Both bridge the same ground, so that where nothing changed the ground is no rougher than the smoother of both shows
    it, and what it departs by from the one surface goes in part (_SAME_WAY) the same way as from the other: by patches
    of ground. That is how ground bends, which reaches some times farther than its bumps: squares are _ALIKE times as
    wide as the longer of both surfaces' ``patch_length``.
    """

    def __init__(
        self, existing: Tin, design: Optional[Tin], existing_doubt: SurfaceDoubt, design_doubt: SurfaceDoubt
    ) -> None:
        sides = [Side(existing, existing_doubt, True)]
        if design is not None:
            sides.append(Side(design, design_doubt, False))
        self.sides = tuple(sides)
        self._length = _ALIKE * max(side.patch_length for side in sides)
        west, south, east, north = (f(side.tin.bounds[k] for side in sides) for k, f in enumerate((min, min, max, max)))
        self._low = np.floor(np.array([west, south]) / self._length)
        self._across = int(np.floor(east / self._length) - self._low[0]) + 1
        self.patches = self._across * (int(np.floor(north / self._length) - self._low[1]) + 1)

    def patch(self, xy: np.ndarray) -> np.ndarray:
        """Number (q,) of the patch of ground at places (q, 2) in the CRS."""
        cell = np.floor(xy / self._length) - self._low
        result: np.ndarray = np.clip((cell[:, 1] * self._across + cell[:, 0]).astype(np.int64), 0, self.patches - 1)
        return result

    def ground_at(
        self, triangles: Sequence[np.ndarray], shares: Sequence[np.ndarray], sides: Sequence[Side]
    ) -> np.ndarray:
        """What ground between the points makes of the depth (q,), metres, at places of some ``sides``."""
        rough = [
            (side, t, share) for side, t, share in zip(sides, triangles, shares) if side.doubt.departure is not None
        ]
        total, square = np.zeros(len(triangles[0])), np.zeros(len(triangles[0]))
        if not rough:
            return total
        least = np.minimum.reduce([side.unit[t] for side, t, _ in rough])
        for side, t, share in rough:
            own = side.unit[t]
            part = np.divide(least, own, out=np.zeros(len(own)), where=own > 0)
            departure = part * side.departures(t, share)
            total, square = total + side.sign * departure, square + departure**2
        result: np.ndarray = np.sqrt(_SAME_WAY * total**2 + (1 - _SAME_WAY) * square)
        return result

    def draws(self, random: np.random.Generator, count: int) -> np.ndarray:
        """Noise (columns, count): of all vertices, metres, and by patch of ground, in departures."""
        vertices = [side.draws(random, count) for side in self.sides]
        return np.vstack([*vertices, random.standard_normal((self.patches, count))])


def noise_draws(model: NoiseModel) -> Iterator[np.ndarray]:
    """Noise (columns, k), as often as makes DRAWS, a few at once; the same whenever it is asked for."""
    random = np.random.default_rng(SEED)
    vertices = sum(len(side.sigma) for side in model.sides) + model.patches
    block = next(size for size in _BLOCKS if size * vertices <= _MOST_NUMBERS or size == _BLOCKS[-1])
    for _ in range(DRAWS // block):
        yield model.draws(random, block)


def _checked(sigma: Sigma, n: int) -> np.ndarray:
    values = np.broadcast_to(np.asarray(sigma, float), (n,))
    bad = ~(np.isfinite(values) & (values >= 0))
    if np.any(bad):
        raise SurveyError(NO_SIGMA, count=int(np.count_nonzero(bad)))
    return values
