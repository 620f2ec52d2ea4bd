"""Depths of cut and fill as a grid."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from ..progress import Progress, part, silent
from ..surface.raster import GridFrame, centres, grid_over, sample_grid
from .comparison import Comparison
from .partition import make_partition
from .plane import Plane


@dataclass(frozen=True)
class DepthGrid:
    """``depth``: (rows, columns) metres at the cell middles, north row first: fill above 0, cut below, nan where
    nothing is compared."""

    frame: GridFrame
    depth: np.ndarray

    @property
    def cut(self) -> float:
        """Cubic metres, each cell counted by the depth at its middle."""
        return float(-self.depth[self.depth < 0].sum()) * self.frame.cell**2

    @property
    def fill(self) -> float:
        return float(self.depth[self.depth > 0].sum()) * self.frame.cell**2

    @property
    def area(self) -> float:
        """Square metres of the cells compared."""
        return float(np.count_nonzero(np.isfinite(self.depth))) * self.frame.cell**2


def depth_grid(comparison: Comparison, cell: float, progress: Progress = silent) -> DepthGrid:
    """Depths at the middles of square cells (m) whose edges stand at whole multiples of ``cell`` in the CRS.

    Raises SurveyError for a cell size that is not above 0 or makes too many cells.
    """
    west, south, east, north = comparison.bounds
    if comparison.within:
        bounds = np.array([region.bounds for region in comparison.within])
        west, south = np.maximum((west, south), bounds[:, :2].min(axis=0))
        east, north = np.minimum((east, north), bounds[:, 2:].max(axis=0))
    frame = grid_over(np.array([west, south]), np.array([east, north]), cell)
    existing = sample_grid(comparison.existing, *frame, progress=part(progress, 0.0, 0.4))
    if isinstance(comparison.design, Plane):
        design = comparison.design.at(np.stack(np.meshgrid(*centres(frame)), -1))
    else:
        design = sample_grid(comparison.design, *frame, progress=part(progress, 0.4, 0.8))
        if comparison.missing_level is not None:
            alone = np.isnan(existing) != np.isnan(design)
            existing[alone & np.isnan(existing)] = comparison.missing_level
            design[alone & np.isnan(design)] = comparison.missing_level
    depth = design - existing
    if comparison.within:
        depth[np.isnan(_inside(comparison, frame))] = np.nan
    progress(1.0, "earthwork")
    return DepthGrid(frame, depth)


def _inside(comparison: Comparison, frame: GridFrame) -> np.ndarray:
    """Numbers where a cell's middle is inside a region, nan elsewhere."""
    partition = make_partition(comparison.within, comparison.bounds, comparison.existing.crs)
    return sample_grid(partition.tin.part(partition.inside.any(axis=0)), *frame)
