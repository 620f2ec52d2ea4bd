"""A surface as a raster of heights (DEM)."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterEnum,
    QgsProcessingParameterRasterDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress, part
from ..core.surface.raster import GridFrame, grid_for, sample_grid, smooth_grid
from ..core.surface.tin import Tin
from ..core.units import metres_per_unit
from .algorithm import progress_of
from .geotiff import raster_of, write_geotiff
from .localnumbers import shown
from .parameters import number
from .styles import dress_heights
from .surfaceinput import SurfaceAlgorithm

translate = QCoreApplication.translate

EXACT, SMOOTH = 0, 1


class SurfaceRaster(SurfaceAlgorithm):
    """``hummock:surfaceraster``"""

    NAME = "surfaceraster"
    ICON = "surfaceraster.svg"
    GROUP_ID = "surface"

    def title(self) -> str:
        return translate("hummock", "Surface as a raster (DEM)")

    def group(self) -> str:
        return translate("hummock", "Surface")

    def summary(self) -> str:
        return translate("hummock", "Writes the heights of a surface as a GeoTIFF, exact or smooth for drawing.")

    def words(self) -> str:
        return translate("hummock", "dem,dtm,raster,grid,heights,elevation,geotiff,interpolate,hillshade,clough-tocher")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Samples a surface at the centres of square cells, whose edges lie at whole multiples of the cell size. "
            "<b>Exact</b>: the height on the triangle. <b>Smooth</b>: a Clough-Tocher interpolant through the same "
            "vertices, sharp at breaklines: it is for drawing only, such as a hillshade, never for numbers; its "
            "largest difference from the surface is in the log.</p>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it. Cells without the surface under their "
            "centre have no data (-9999).</p>"
            "<p><b>The file</b> is a GeoTIFF of 32-bit numbers (rounded to 0.02 mm below 512 m, 0.3 mm below "
            "8192 m), compressed without loss and tiled, with the CRS; the band names method and unit of the heights, "
            "which is that of the CRS.</p>"
            "<p><b>What can go wrong:</b> a raster cannot hold a kerb: what is narrower than two cells is blurred. "
            "Take volumes and contours from the surface itself. Small cells make large files.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_surface()
        self.add(
            number("CELL", translate("hummock", "Cell size (in the unit of the surface's CRS)"), 0.5, 1e-6),
            translate("hummock", "About the spacing of the survey's points shows all that they know."),
        )
        methods = [
            translate("hummock", "exact: linear on the triangles"),
            translate("hummock", "smooth (Clough-Tocher): for drawing only"),
        ]
        self.add(
            QgsProcessingParameterEnum("METHOD", translate("hummock", "Heights between the points"), methods,
                                       defaultValue=EXACT),
            translate("hummock", "Exact for all work; smooth for hillshades and pictures."),
        )  # fmt: skip
        self.add_surface_crs()
        self.add(
            QgsProcessingParameterRasterDestination("OUTPUT", translate("hummock", "Heights (GeoTIFF)")),
            translate("hummock", "One band of heights in the unit of the CRS; the file's name ends in .tif."),
        )
        self.add_numbers(
            ("COLUMNS", translate("hummock", "Columns")),
            ("ROWS", translate("hummock", "Rows")),
            ("CELLS_ON_SURFACE", translate("hummock", "Cells on the surface")),
            ("LARGEST_DIFFERENCE", translate("hummock", "Largest difference from the surface (m)")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        path = self.parameterAsOutputLayer(parameters, "OUTPUT", context)
        if Path(path).suffix.lower() not in (".tif", ".tiff"):
            raise QgsProcessingException(
                translate("hummock", "{file}: this makes a GeoTIFF; choose a name that ends in .tif.").format(file=path)
            )
        tin = self.read_surface(parameters, context)
        cell = self.parameterAsDouble(parameters, "CELL", context)
        frame = grid_for(tin, cell * metres_per_unit(tin.crs))
        smooth = self.parameterAsEnum(parameters, "METHOD", context) == SMOOTH
        heights, difference = self._sample(tin, frame, smooth, feedback, part(progress, 0.2, 0.7))
        method = "smooth, Clough-Tocher, for drawing only" if smooth else "exact, linear on the triangles"
        raster = raster_of(frame, heights, tin.crs, cell, method, "height")
        write_geotiff(raster, path, part(progress, 0.7, 1.0))
        heights = raster.heights
        filled = int(np.count_nonzero(np.isfinite(heights)))
        if filled:
            low, high = float(np.nanmin(heights)), float(np.nanmax(heights))
            name = translate("hummock", "Heights, smooth (drawing only)") if smooth else None
            dress_heights(context, path, low, high, name)
        else:
            feedback.pushWarning(
                translate("hummock", "No cell centre lies on the surface: the raster is empty. Choose smaller cells.")
            )
        feedback.pushInfo(
            translate("hummock", "{columns} × {rows} cells, {filled} of them on the surface.").format(
                columns=frame.columns, rows=frame.rows, filled=filled
            )
        )
        return {
            "OUTPUT": path,
            "COLUMNS": frame.columns,
            "ROWS": frame.rows,
            "CELLS_ON_SURFACE": filled,
            "LARGEST_DIFFERENCE": difference,
        }

    def _sample(
        self, tin: Tin, frame: GridFrame, smooth: bool, feedback: QgsProcessingFeedback, progress: Progress
    ) -> Tuple[np.ndarray, float]:
        """Heights (m) and the largest difference from the triangles."""
        if not smooth:
            return sample_grid(tin, *frame, progress=progress, dtype=np.float32), 0.0
        grid = smooth_grid(tin, *frame, progress=progress, dtype=np.float32)
        feedback.pushWarning(
            shown(
                translate(
                    "hummock",
                    "Smooth heights are for drawing only: they are up to {largest:.3f} m off the surface, most at "
                    "E {easting:.3f} N {northing:.3f}.",
                ),
                largest=grid.largest_difference,
                easting=grid.easting,
                northing=grid.northing,
            )
        )
        return grid.heights, grid.largest_difference
