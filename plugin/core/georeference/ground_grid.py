"""From distances on the ground to distances in the grid of a projection and back.

combined factor = grid distance / ground distance = projection scale factor x R / (R + h), with h the
ellipsoidal height and R the mean (Gaussian) radius of curvature sqrt(M N) there: one figure for all
directions. Textbook geometry (e.g. NOAA Manual NOS NGS 5, where the second factor is the elevation factor).
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any, Optional, Tuple

import numpy as np
from pyproj import Proj

from ..messages import Figure, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from .axes import flat, to_lonlat
from .ground_said import (
    APPLIED_TO_GRID,
    APPLIED_TO_GROUND,
    AS_GIVEN,
    BAD_FACTOR,
    FACTOR,
    GIVEN,
    MEAN_AND_SEPARATION,
    MEAN_HEIGHT,
    NO_CRS,
    NO_PLACE,
    NO_POINTS,
    NOT_CONFORMAL,
    ORTHOMETRIC_USED,
    SAMPLE,
    SPREAD,
)
from .record import Georeference, Georeferenced, Step, crs_name


@dataclass(frozen=True)
class ScaleFactors:
    """Scale at a place: ``easting``, ``northing`` (m) in ``crs``, ``longitude``, ``latitude`` (degrees).

    ``combined`` = ``projection`` x ``height``. ``along_meridian`` and ``along_parallel`` are equal for a
    conformal projection. ``ellipsoidal_height`` and ``radius`` (mean radius of curvature): metres.
    """

    crs: Any
    easting: float
    northing: float
    longitude: float
    latitude: float
    ellipsoidal_height: float
    radius: float
    projection: float
    height: float
    along_meridian: float
    along_parallel: float

    @property
    def combined(self) -> float:
        """Grid distance over ground distance."""
        return self.projection * self.height


@dataclass(frozen=True)
class GroundGrid:
    """How grid and ground coordinates hang together: a factor about an origin, and a shift.

    ``factor``: grid distance over ground distance. Origin in the grid, metres; the shift, metres, is added to
    ground coordinates so that nobody takes them for grid coordinates. ``computed``: where the factor comes
    from, None when the user gave it. ``height_origin``: where its height comes from.
    """

    crs: Any
    origin_easting: float
    origin_northing: float
    factor: float
    shift_easting: float = 0.0
    shift_northing: float = 0.0
    computed: Optional[ScaleFactors] = None
    height_origin: Text = AS_GIVEN

    def __post_init__(self) -> None:
        if not 0.9 < self.factor < 1.1:
            raise SurveyError(BAD_FACTOR, factor=self.factor)

    def to_ground(self, easting: Any, northing: Any) -> Tuple[np.ndarray, np.ndarray]:
        """Ground coordinates (n,), metres, of grid ones."""
        east = self.origin_easting + (np.asarray(easting, float) - self.origin_easting) / self.factor
        north = self.origin_northing + (np.asarray(northing, float) - self.origin_northing) / self.factor
        return east + self.shift_easting, north + self.shift_northing

    def to_grid(self, easting: Any, northing: Any) -> Tuple[np.ndarray, np.ndarray]:
        """Grid coordinates (n,), metres, of ground ones."""
        east = np.asarray(easting, float) - self.shift_easting - self.origin_easting
        north = np.asarray(northing, float) - self.shift_northing - self.origin_northing
        return self.origin_easting + east * self.factor, self.origin_northing + north * self.factor


@dataclass(frozen=True)
class SampleLine:
    """One line in the grid and on the ground, metres, between the points called ``start`` and ``end``."""

    start: str
    end: str
    grid: float
    ground: float

    @property
    def difference(self) -> float:
        """Ground minus grid, metres."""
        return self.ground - self.grid

    @property
    def ppm(self) -> float:
        """Difference in millionths of the ground distance."""
        return 1e6 * self.difference / self.ground if self.ground else 0.0


@dataclass(frozen=True)
class GroundGridUse:
    """What was applied, a line to see it by, and the least and greatest factor over the site (nan if given)."""

    ground_grid: GroundGrid
    sample: Optional[SampleLine]
    least_factor: float
    greatest_factor: float


def scale_factors(crs: Any, easting: Any, northing: Any, ellipsoidal_height: Any) -> Tuple[ScaleFactors, ...]:
    """Scale factors at places (n,) in ``crs``, metres. Raises SurveyError where there is no such place."""
    plan = flat(crs)
    east, north, up = (
        np.atleast_1d(np.asarray(values, float))
        for values in np.broadcast_arrays(easting, northing, ellipsoidal_height)
    )
    lon, lat = to_lonlat(plan, east, north)
    bad = ~(np.isfinite(lon) & np.isfinite(lat) & np.isfinite(up))
    if bad.any():
        i = int(np.argmax(bad))
        raise SurveyError(NO_PLACE, crs=plan.name, easting=east[i], northing=north[i])
    factors = Proj(plan).get_factors(lon, lat)
    along_meridian = np.atleast_1d(factors.meridional_scale)
    along_parallel = np.atleast_1d(factors.parallel_scale)
    projection = np.sqrt(np.atleast_1d(factors.areal_scale))
    radius = mean_radius(plan.ellipsoid, lat)
    height = radius / (radius + up)
    columns = (east, north, lon, lat, up, radius, projection, height, along_meridian, along_parallel)
    return tuple(ScaleFactors(plan, *(float(value) for value in row)) for row in zip(*columns))


def grid_convergence(crs: Any, easting: float, northing: float) -> float:
    """Meridian convergence at a place in ``crs`` (metres), degrees: grid north is so far east of true north.

    nan where the place has no latitude and longitude.
    """
    plan = flat(crs)
    lon, lat = to_lonlat(plan, np.array([easting]), np.array([northing]))
    if not (np.isfinite(lon).all() and np.isfinite(lat).all()):
        return float("nan")
    return float(np.atleast_1d(Proj(plan).get_factors(lon, lat).meridian_convergence)[0])


def mean_radius(ellipsoid: Any, latitude: Any) -> np.ndarray:
    """Gaussian mean radius of curvature sqrt(M N), metres, at latitudes in degrees."""
    a, b = ellipsoid.semi_major_metre, ellipsoid.semi_minor_metre
    e2 = 1.0 - (b / a) ** 2
    return np.asarray(a * np.sqrt(1.0 - e2) / (1.0 - e2 * np.sin(np.radians(latitude)) ** 2))


def site_ground_grid(
    points: PointSet,
    origin: Optional[Tuple[float, float]] = None,
    ellipsoidal_height: Optional[float] = None,
    separation: Optional[float] = None,
    shift: Tuple[float, float] = (0.0, 0.0),
) -> GroundGrid:
    """The combined factor at ``origin`` (easting, northing in metres; the middle of the points where None).

    Height: ``ellipsoidal_height`` where given, else the mean height of the points plus ``separation``
    (geoid separation, metres; 0 where None: heights taken as ellipsoidal). ``shift``: see :class:`GroundGrid`.
    Raises SurveyError for points on a local grid, and where no point is left.
    """
    if points.crs is None:
        raise SurveyError(NO_CRS)
    if origin is None or ellipsoidal_height is None:
        use = points.used & np.isfinite(points.height)
        if not use.any():
            raise SurveyError(NO_POINTS, file=points.source)
        if origin is None:
            # Whole metres: an origin is written on plans.
            origin = tuple(float(np.round(np.mean(v[use]))) for v in (points.easting, points.northing))  # type: ignore
        mean = float(points.height[use].mean())
    height_origin = AS_GIVEN
    if ellipsoidal_height is None:
        height_origin = MEAN_HEIGHT if separation is None else MEAN_AND_SEPARATION
        ellipsoidal_height = mean + (separation or 0.0)
    assert origin is not None
    at = scale_factors(points.crs, origin[0], origin[1], ellipsoidal_height)[0]
    return GroundGrid(
        points.crs, origin[0], origin[1], at.combined, shift[0], shift[1], computed=at, height_origin=height_origin
    )


def grid_to_ground(points: PointSet, ground_grid: GroundGrid) -> Georeferenced:
    """Grid coordinates on the ground: a local grid, whose CRS is None."""
    east, north = ground_grid.to_ground(points.easting, points.northing)
    moved = replace(points, easting=east, northing=north, crs=None)
    return _done(moved, ground_grid, Step.GRID_TO_GROUND, grid=points, ground=moved)


def ground_to_grid(points: PointSet, ground_grid: GroundGrid) -> Georeferenced:
    """Ground coordinates in the grid of ``ground_grid.crs``."""
    east, north = ground_grid.to_grid(points.easting, points.northing)
    moved = replace(points, easting=east, northing=north, crs=ground_grid.crs)
    return _done(moved, ground_grid, Step.GROUND_TO_GRID, grid=moved, ground=points)


def _done(moved: PointSet, how: GroundGrid, step: Step, grid: PointSet, ground: PointSet) -> Georeferenced:
    least, most = _spread(grid, how)
    use = GroundGridUse(how, sample_line(grid, how), least, most)
    text = APPLIED_TO_GROUND if step is Step.GRID_TO_GROUND else APPLIED_TO_GRID
    applied = message(
        text, easting=Figure(f"{how.origin_easting:.3f}"), northing=Figure(f"{how.origin_northing:.3f}"),
        shift_e=Figure(f"{how.shift_easting:.3f}"), shift_n=Figure(f"{how.shift_northing:.3f}"),
    )  # fmt: skip
    source = how.crs if step is Step.GRID_TO_GROUND else None
    target = None if step is Step.GRID_TO_GROUND else how.crs
    return Georeferenced(moved, Georeference(step, source, target, use, (*_factor_said(how), applied, *_use_said(use))))


def sample_line(grid: PointSet, how: GroundGrid) -> Optional[SampleLine]:
    """The line between the two points farthest apart in easting or northing, None for fewer than two points."""
    use = np.flatnonzero(grid.used & np.isfinite(grid.easting) & np.isfinite(grid.northing))
    if len(use) < 2:
        return None
    east, north = grid.easting[use], grid.northing[use]
    along = east if np.ptp(east) >= np.ptp(north) else north
    i, j = int(use[np.argmin(along)]), int(use[np.argmax(along)])
    return line_between(grid, i, j, how)


def line_between(grid: PointSet, i: int, j: int, how: GroundGrid) -> SampleLine:
    """Both distances between points ``i`` and ``j`` of ``grid``."""
    distance = float(np.hypot(grid.easting[j] - grid.easting[i], grid.northing[j] - grid.northing[i]))
    names = [str(grid.name[k]) or f"#{k + 1}" for k in (i, j)]
    return SampleLine(names[0], names[1], distance, distance / how.factor)


def _spread(grid: PointSet, how: GroundGrid) -> Tuple[float, float]:
    """Least and greatest combined factor over the corners of the site and its range of heights."""
    use = grid.used & np.isfinite(grid.easting) & np.isfinite(grid.northing) & np.isfinite(grid.height)
    if how.computed is None or not use.any():
        return np.nan, np.nan
    east, north, up = grid.easting[use], grid.northing[use], grid.height[use]
    # The separation, and whatever else the given height differs by, is the same all over a site.
    up = np.array([up.min(), up.max()]) + (how.computed.ellipsoidal_height - float(up.mean()))
    e, n, h = np.meshgrid([east.min(), east.mean(), east.max()], [north.min(), north.mean(), north.max()], up)
    factors = [at.combined for at in scale_factors(how.crs, e.ravel(), n.ravel(), h.ravel())]
    return min(factors), max(factors)


def _factor_said(how: GroundGrid) -> Tuple[Message, ...]:
    at = how.computed
    if at is None:
        return (message(GIVEN, combined=Figure(f"{how.factor:.9f}")),)
    said = [
        message(
            FACTOR, combined=Figure(f"{at.combined:.9f}"), easting=Figure(f"{at.easting:.3f}"),
            northing=Figure(f"{at.northing:.3f}"),
            projection=Figure(f"{at.projection:.9f}"), height=Figure(f"{at.height:.9f}"),
            h=Figure(f"{at.ellipsoidal_height:.2f}"),
            h_origin=how.height_origin, radius=f"{at.radius:.0f}",
        )
    ]  # fmt: skip
    if how.height_origin == MEAN_HEIGHT:
        said.append(message(ORTHOMETRIC_USED))
    if abs(at.along_meridian / at.along_parallel - 1.0) > 1e-7:
        said.append(
            message(
                NOT_CONFORMAL, crs=crs_name(at.crs), along_meridian=Figure(f"{at.along_meridian:.9f}"),
                along_parallel=Figure(f"{at.along_parallel:.9f}"),
            )
        )  # fmt: skip
    return tuple(said)


def _use_said(use: GroundGridUse) -> Tuple[Message, ...]:
    said = []
    line = use.sample
    if line is not None:
        said.append(
            message(
                SAMPLE, start=line.start, end=line.end, grid_m=Figure(f"{line.grid:.4f}"),
                ground_m=Figure(f"{line.ground:.4f}"),
                difference_mm=Figure(f"{1000 * line.difference:.1f}"), ppm=Figure(f"{line.ppm:.1f}"),
            )
        )  # fmt: skip
    if np.isfinite(use.least_factor):
        factor = use.ground_grid.factor
        worst = 1e5 * max(factor - use.least_factor, use.greatest_factor - factor)
        said.append(
            message(
                SPREAD,
                least=Figure(f"{use.least_factor:.9f}"),
                most=Figure(f"{use.greatest_factor:.9f}"),
                worst_mm=Figure(f"{worst:.2f}"),
            )
        )
    return tuple(said)
