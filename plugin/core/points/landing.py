"""Where coordinates would land in a CRS, against its area of use."""

from __future__ import annotations

from typing import Any, Optional, Tuple

import numpy as np
from pyproj import Transformer
from pyproj.exceptions import ProjError

#: Degrees around the area of use: a reading is taken for right only close to the area, and for wrong only far from it.
NEAR, FAR = 0.3, 1.0
#: Share of the points that must land there.
ENOUGH = 0.9
MOST_POINTS = 64


class Landing:
    """The area of use of a projected CRS; ``known`` is False where it has none, or PROJ cannot compute the CRS."""

    def __init__(self, crs: Optional[Any]) -> None:
        self.crs = crs
        self.name = ""
        self._box: Optional[Tuple[float, float, float, float]] = None
        self._unit = 1.0
        if crs is None:
            return
        plan = _plan(crs)
        area = crs.area_of_use or plan.area_of_use
        if area is None or not plan.is_projected or plan.geodetic_crs is None:
            return
        try:
            self._transformer = Transformer.from_crs(plan, plan.geodetic_crs, always_xy=True)
        except ProjError:
            return
        self._box = (area.west, area.south, area.east, area.north)
        self._unit = float(plan.axis_info[0].unit_conversion_factor)
        self._degree = float(np.degrees(plan.geodetic_crs.axis_info[0].unit_conversion_factor))
        meridian = plan.geodetic_crs.prime_meridian
        self._zero = meridian.longitude * np.degrees(meridian.unit_conversion_factor) if meridian else 0.0
        self.name = str(area.name or "").split(":")[0].split(" - ")[0].rstrip(".")

    @property
    def known(self) -> bool:
        return self._box is not None

    def of_plan(self, easting_m: np.ndarray, northing_m: np.ndarray) -> Tuple[bool, bool]:
        """Whether points in metres land near the area, and whether they land no farther than :data:`FAR`."""
        if self._box is None:
            return False, False
        east, north = _thin(easting_m), _thin(northing_m)
        try:
            lon, lat = self._transformer.transform(east / self._unit, north / self._unit)
            back_e, back_n = self._transformer.transform(lon, lat, direction="INVERSE")
        except ProjError:
            return False, False
        with np.errstate(invalid="ignore"):
            # Far from where a projection holds PROJ may give a place that does not project back.
            real = (np.abs(back_e * self._unit - east) < 1.0) & (np.abs(back_n * self._unit - north) < 1.0)
        return self._inside(np.where(real, lon * self._degree + self._zero, np.nan), lat * self._degree)

    def of_degrees(self, longitude: np.ndarray, latitude: np.ndarray) -> Tuple[bool, bool]:
        """The same for positions in degrees."""
        if self._box is None or not len(longitude) or np.nanmax(np.abs(latitude)) > 90:
            return False, False
        return self._inside(_thin(longitude), _thin(latitude))

    def distance(self, easting_m: float, northing_m: float, longitude: float, latitude: float) -> float:
        """Metres in plan between a point and a position in degrees, whatever its datum; inf where it has none."""
        try:
            east, north = self._transformer.transform(
                (longitude - self._zero) / self._degree, latitude / self._degree, direction="INVERSE"
            )
        except ProjError:
            return float("inf")
        away = float(np.hypot(east * self._unit - easting_m, north * self._unit - northing_m))
        return away if np.isfinite(away) else float("inf")

    def _inside(self, lon: np.ndarray, lat: np.ndarray) -> Tuple[bool, bool]:
        assert self._box is not None
        west, south, east, north = self._box
        width = (east - west) % 360.0 if east - west < 360.0 else 360.0
        found = []
        for margin in (NEAR, FAR):
            with np.errstate(invalid="ignore"):
                along = (lon - west + margin) % 360.0 <= width + 2 * margin
                inside = along & (lat >= south - margin) & (lat <= north + margin)
            found.append(bool(len(lon)) and float(inside.mean()) >= ENOUGH)
        return found[0], found[1]


def _plan(crs: Any) -> Any:
    if crs.is_bound and crs.source_crs is not None:
        return _plan(crs.source_crs)
    return _plan(crs.sub_crs_list[0]) if crs.sub_crs_list else crs


def _thin(values: np.ndarray) -> np.ndarray:
    return values[:: max(1, len(values) // MOST_POINTS)]
