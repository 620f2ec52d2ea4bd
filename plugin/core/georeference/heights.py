"""Heights above the ellipsoid and above the geoid, and where the separation between them comes from.

The geoid separation N is the height of the geoid above the ellipsoid: ellipsoidal height = orthometric
height + N.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Tuple, Union

import numpy as np
from pyproj import Transformer
from pyproj.exceptions import ProjError

from ..messages import QT_TRANSLATE_NOOP, Figure, Message, SurveyError, Text, message
from ..points.pointset import PointSet
from .axes import to_lonlat
from .operations import without_network
from .record import Georeference, Georeferenced, Step

GRID_UNREADABLE = Text(
    "heights.grid_unreadable",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: PROJ cannot read this as a grid of geoid separations ({reason}); give a GTX or GeoTIFF grid, or a "
        "constant.",
    ),
)
NO_GRID = Text("heights.no_grid", QT_TRANSLATE_NOOP("core", "no grid of a kind it knows"))
GRID_NAME = Text(
    "heights.grid_name",
    QT_TRANSLATE_NOOP("core", "{file}: PROJ cannot open a grid whose path contains {sign}; move or rename the file."),
)
OFF_GRID = Text(
    "heights.off_grid",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} line {line}: {count} points lie outside the geoid grid {grid}, the first in this line; give a grid "
        "that covers the site, or a constant.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file} line {line}: this point lies outside the geoid grid {grid}; give a grid that covers the site,"
        " or a constant.",
    ),
)
NO_CRS = Text(
    "heights.no_crs",
    QT_TRANSLATE_NOOP("core", "A geoid grid needs to know where the points are; say their CRS, or give a constant."),
)
NOT_FINITE = Text(
    "heights.not_finite", QT_TRANSLATE_NOOP("core", "A geoid separation of '{value}' is no number; give metres.")
)
TO_ORTHOMETRIC = Text(
    "heights.to_orthometric",
    QT_TRANSLATE_NOOP("core", "Ellipsoidal heights changed to orthometric ones: height minus geoid separation."),
)
TO_ELLIPSOIDAL = Text(
    "heights.to_ellipsoidal",
    QT_TRANSLATE_NOOP("core", "Orthometric heights changed to ellipsoidal ones: height plus geoid separation."),
)
FROM_GRID = Text(
    "heights.from_grid",
    QT_TRANSLATE_NOOP(
        "core",
        "Geoid separation interpolated from the grid {grid}: {least_m} to {most_m} m, mean {mean_m} m, over the site. "
        "The accuracy of the grid is not known to PROJ.",
    ),
)
FROM_CONSTANT = Text(
    "heights.from_constant",
    QT_TRANSLATE_NOOP(
        "core", "Geoid separation {value_m} m for the whole site, a constant ({origin}); its slope is left out."
    ),
)
FROM_RECEIVER = Text(
    "heights.from_receiver",
    QT_TRANSLATE_NOOP(
        "core",
        "Geoid separation as the receiver sent it with each point: {least_m} to {most_m} m, mean {mean_m} m; from "
        "which model is not known.",
    ),
)


AS_GIVEN = Text("heights.as_given", QT_TRANSLATE_NOOP("core", "as given"))


@dataclass(frozen=True)
class ConstantSeparation:
    """One separation for the whole site, metres; ``origin`` says who gave it, in the user's words."""

    metres: float
    origin: Union[str, Text] = AS_GIVEN

    def at(self, points: PointSet) -> np.ndarray:
        """Separations (n,), metres."""
        if not np.isfinite(self.metres):
            raise SurveyError(NOT_FINITE, value=self.metres)
        return np.full(len(points), float(self.metres))

    def statement(self, separation: np.ndarray) -> Message:
        """Where the numbers come from."""
        return message(FROM_CONSTANT, value_m=Figure(f"{self.metres:.3f}"), origin=self.origin)


@dataclass(frozen=True)
class GridSeparation:
    """Separations interpolated by PROJ (``vgridshift``) from a grid file: GTX, GeoTIFF ..."""

    path: Path

    def at(self, points: PointSet) -> np.ndarray:
        """Separations (n,), metres. SurveyError where the grid cannot be read or does not cover a point."""
        if points.crs is None:
            raise SurveyError(NO_CRS)
        lon, lat = to_lonlat(points.crs, points.easting, points.northing)
        separation = separation_at(self.path, lon, lat)
        off = ~np.isfinite(separation)
        if off.any():
            line = int(points.source_line[np.argmax(off)])
            raise SurveyError(OFF_GRID, file=points.source, line=line, count=int(off.sum()), grid=Path(self.path).name)
        return separation

    def statement(self, separation: np.ndarray) -> Message:
        """Where the numbers come from."""
        return message(FROM_GRID, grid=Path(self.path).name, **_range(separation))


@dataclass(frozen=True)
class ReceiverSeparation:
    """Separations (n,) that the receiver sent with each point (NMEA GGA does), metres."""

    metres: np.ndarray

    def at(self, points: PointSet) -> np.ndarray:
        """Separations (n,), metres; nan where none was sent. ValueError where there are not as many as points."""
        if len(self.metres) != len(points):
            raise ValueError(f"{len(self.metres)} separations for {len(points)} points")
        return np.asarray(self.metres, float)

    def statement(self, separation: np.ndarray) -> Message:
        """Where the numbers come from."""
        return message(FROM_RECEIVER, **_range(separation))


Separation = Union[ConstantSeparation, GridSeparation, ReceiverSeparation]


@dataclass(frozen=True)
class SeparationUse:
    """The separations used, metres, and where they come from."""

    source: Separation
    least_m: float
    most_m: float
    mean_m: float


def separation_at(path: Union[str, Path], longitude: Any, latitude: Any) -> np.ndarray:
    """Geoid separation (n,), metres, at positions in degrees; inf off the grid.

    Raises SurveyError when PROJ cannot read the file.
    """
    pipeline = _pipeline(Path(path))
    lon, lat = np.atleast_1d(np.asarray(longitude, float)), np.atleast_1d(np.asarray(latitude, float))
    with without_network():
        try:
            there = Transformer.from_pipeline(pipeline)
            up = there.transform(lon, lat, np.zeros(len(lon)))[2]
        except ProjError as error:
            raise SurveyError(GRID_UNREADABLE, file=str(path), reason=NO_GRID) from error
    return np.asarray(up, float)


def _pipeline(path: Path) -> str:
    text = path.resolve().as_posix()
    sign = next((sign for sign in (",", '"', "@") if sign in text), None)
    if sign is not None:
        raise SurveyError(GRID_NAME, file=str(path), sign=sign)
    try:
        with open(path, "rb"):
            pass
    except OSError as error:
        raise SurveyError(GRID_UNREADABLE, file=str(path), reason=error.strerror or str(error)) from error
    turn = "proj=unitconvert xy_in=deg xy_out=rad"
    return f'proj=pipeline step {turn} step proj=vgridshift grids="{text}" multiplier=1 step inv {turn}'


def orthometric_heights(points: PointSet, separation: Separation) -> Georeferenced:
    """``points`` whose heights are ellipsoidal, with orthometric ones. Raises as ``separation.at``."""
    return _changed(points, separation, -1.0, TO_ORTHOMETRIC)


def ellipsoidal_heights(points: PointSet, separation: Separation) -> Georeferenced:
    """``points`` whose heights are orthometric, with ellipsoidal ones. Raises as ``separation.at``."""
    return _changed(points, separation, 1.0, TO_ELLIPSOIDAL)


def _changed(points: PointSet, separation: Separation, sign: float, text: Text) -> Georeferenced:
    values = separation.at(points)
    least, most, mean = _three(values)
    record = Georeference(
        Step.HEIGHTS, points.crs, points.crs, SeparationUse(separation, least, most, mean),
        (message(text), separation.statement(values)),
    )  # fmt: skip
    return Georeferenced(replace(points, height=points.height + sign * values), record)


def _three(values: np.ndarray) -> Tuple[float, float, float]:
    good = values[np.isfinite(values)]
    if not len(good):
        return np.nan, np.nan, np.nan
    return float(good.min()), float(good.max()), float(good.mean())


def _range(values: np.ndarray) -> Any:
    least, most, mean = _three(values)
    return {"least_m": Figure(f"{least:.3f}"), "most_m": Figure(f"{most:.3f}"), "mean_m": Figure(f"{mean:.3f}")}
