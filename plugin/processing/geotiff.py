"""A grid of heights or depths as a GeoTIFF, through GDAL."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Optional

import numpy as np
from osgeo import gdal, osr
from qgis.core import QgsProcessingException
from qgis.PyQt.QtCore import QCoreApplication

from ..core.files import replace_file
from ..core.progress import Progress
from ..core.surface.raster import GridFrame
from ..core.units import LengthUnit, heights_to_crs_units

translate = QCoreApplication.translate

NO_DATA = -9999.0
OPTIONS = ["TILED=YES", "COMPRESS=DEFLATE", "PREDICTOR=3", "BIGTIFF=IF_SAFER"]
_ROWS = 512  # written at a time: two rows of GDAL's tiles

#: The unit of a band as GDAL spells it (GDAL raster data model: "m" or "ft" where it is one of them).
BAND_UNITS = {LengthUnit.METRE: "m", LengthUnit.FOOT: "ft", LengthUnit.US_SURVEY_FOOT: "US survey foot"}


@dataclass(frozen=True)
class Raster:
    """Heights or depths (rows, columns) float32, north row first, nan for none, in the unit of ``crs``.

    ``west``, ``north``: the grid's corner, ``cell``: its square cell, all in the CRS. ``method``: how it was made.
    ``metres_per_height``: metres in one unit of the heights. ``what``: what the band holds. ``crs``: the core's, as old
    QGIS knows no compound systems.
    """

    heights: np.ndarray
    west: float
    north: float
    cell: float
    crs: Optional[Any]
    method: str
    metres_per_height: float
    what: str = "height"

    @property
    def unit(self) -> str:
        near = [unit for unit in BAND_UNITS if abs(self.metres_per_height / unit.metres - 1.0) < 1e-7]
        return BAND_UNITS[near[0]] if near else f"{self.metres_per_height!r} m"


def raster_of(frame: GridFrame, values_m: np.ndarray, crs: Any, cell: float, method: str, what: str) -> Raster:
    """Heights or depths (m) on a frame of the core, in the units of the CRS ``crs``; ``cell`` in its plan unit."""
    return Raster(
        heights_to_crs_units(values_m, crs).astype(np.float32, copy=False),
        # whole multiples of the cell, so no rounding of the way through metres is left
        west=round(frame.west / frame.cell) * cell,
        north=(round(frame.south / frame.cell) + frame.rows) * cell,
        cell=cell,
        crs=crs,
        method=method,
        metres_per_height=float(1.0 / heights_to_crs_units(1.0, crs)),
        what=what,
    )


def write_geotiff(raster: Raster, path: str, progress: Progress) -> None:
    """Write ``raster``; the file appears only when it is whole.

    Raises QgsProcessingException with GDAL's reason, SurveyError when the system refuses to write.
    """
    with replace_file(path) as temporary, gdal_errors_in_one_line(path):
        rows, columns = raster.heights.shape
        made = gdal.GetDriverByName("GTiff").Create(str(temporary), columns, rows, 1, gdal.GDT_Float32, OPTIONS)
        made.SetGeoTransform((raster.west, raster.cell, 0.0, raster.north, 0.0, -raster.cell))
        system = osr.SpatialReference()
        if raster.crs is not None:
            system.ImportFromWkt(raster.crs.to_wkt())
            made.SetProjection(system.ExportToWkt())
        band = made.GetRasterBand(1)
        band.SetNoDataValue(NO_DATA)
        band.SetUnitType(raster.unit)
        band.SetDescription(f"{raster.what} ({raster.unit}), {raster.method}")
        for first in range(0, rows, _ROWS):
            progress(first / rows, "layers")
            block = raster.heights[first : first + _ROWS]
            band.WriteArray(np.where(np.isfinite(block), block, np.float32(NO_DATA)), 0, first)
        band.FlushCache()
        made.FlushCache()
        del band, made
    progress(1.0, "layers")


class gdal_errors_in_one_line:  # noqa: N801  reads as a function
    """GDAL's errors as exceptions, as long as the block runs, and these as one line for the user."""

    def __init__(self, path: str) -> None:
        self.path = path

    def __enter__(self) -> None:
        self.before = gdal.GetUseExceptions()
        gdal.UseExceptions()

    def __exit__(self, kind: object, error: object, trace: object) -> None:
        if not self.before:
            gdal.DontUseExceptions()
        if isinstance(error, RuntimeError):
            raise QgsProcessingException(
                translate("hummock", "{file}: the raster cannot be written ({reason}); choose another file.").format(
                    file=self.path, reason=" ".join(str(error).split())
                )
            ) from None
