"""The exact volume between two large TINs, against scipy's time for one of them, the host's rasters, and the truth.

``python -m tests.benchmarks.bench_volume [POINTS] [--host] [--grids [POINTS]]``. Both surfaces are scattered points on
planes that cross, over a square that stands askew, so that the true cut and fill are known as fractions. ``--host``:
also QGIS's own way in the same run: both meshes made rasters of 0.25 m (native:meshrasterize), their difference summed.
``--grids``: from the points on, GDAL's linear grids of 0.25 m.
"""

from __future__ import annotations

import argparse
import os
import resource
import tempfile
import time
from fractions import Fraction
from pathlib import Path
from typing import Dict, List, Tuple

import numpy as np
from scipy.spatial import Delaunay

from plugin.core.earthwork.comparison import Comparison
from plugin.core.earthwork.depth_grid import depth_grid
from plugin.core.earthwork.volume import Volume, volume_between
from plugin.core.handover.mesh import write_2dm
from plugin.core.points.pointset import PointSet, make_points
from plugin.core.surface.build import build_surface
from plugin.core.surface.tin import GRID, Tin

BAR = 4.0  # times scipy's Delaunay of one of the surfaces
BAR_GIB = 8.0
BAR_CLOSER = 100.0
CELL = 0.25
SITE = np.array([432_000.0, 5_765_000.0])

#: Heights as whole numbers of 0.1 mm: x and y (in 0.1 mm) over these make both planes.
PLANES = ((Fraction(1, 16), Fraction(0)), (Fraction(0), Fraction(1, 32)))


def corners(n: int) -> List[Tuple[int, int]]:
    """A square of about n square metres that stands askew (3, 4, 5), in units of 0.1 mm."""
    a = int(np.sqrt(n) / GRID / 5)
    return [(3 * a, 0), (7 * a, 3 * a), (4 * a, 7 * a), (0, 4 * a)]


def survey(n: int, number: int) -> PointSet:
    """``n`` points scattered over the square, and its corners, on plane ``number``."""
    rng = np.random.default_rng(number)
    ring = np.array(corners(n), dtype=np.int64)
    share = rng.uniform(0, 1, (n, 2))
    inner = ring[0] + share[:, :1] * (ring[1] - ring[0]) + share[:, 1:] * (ring[3] - ring[0])
    grid = np.unique(np.vstack([ring, np.rint(inner).astype(np.int64)]), axis=0)
    east, north = (float(slope) for slope in PLANES[number])
    xy = grid * GRID
    height = 100 + east * xy[:, 0] + north * xy[:, 1] - number * float(lowering(n)) * GRID
    return make_points(xy[:, 0] + SITE[0], xy[:, 1] + SITE[1], height)


def lowering(n: int) -> Fraction:
    """By how much (0.1 mm) the second plane is lowered so that both cross a little beside the square's middle."""
    (x0, _), _, (x1, y1), _ = corners(n)
    east, north = (PLANES[1][k] - PLANES[0][k] for k in (0, 1))
    return east * Fraction(x0 + x1, 2) + north * Fraction(y1, 3)


def truth(n: int) -> Tuple[float, float]:
    """Cut and fill between the planes over the square, in fractions throughout."""
    east, north = (PLANES[1][k] - PLANES[0][k] for k in (0, 1))
    lower = lowering(n)

    def depth(x: Fraction, y: Fraction) -> Fraction:
        return east * x + north * y - lower

    found = []
    for sign in (-1, 1):
        ring = [(Fraction(x), Fraction(y)) for x, y in corners(n)]
        part: List[Tuple[Fraction, Fraction]] = []
        for (x0, y0), (x1, y1) in zip(ring, ring[1:] + ring[:1]):
            d0, d1 = sign * depth(x0, y0), sign * depth(x1, y1)
            if d0 >= 0:
                part.append((x0, y0))
            if (d0 >= 0) != (d1 >= 0):
                t = d0 / (d0 - d1)
                part.append((x0 + t * (x1 - x0), y0 + t * (y1 - y0)))
        total = Fraction(0)
        for (x1, y1), (x2, y2) in zip(part[1:], part[2:]):
            (x0, y0) = part[0]
            area = ((x1 - x0) * (y2 - y0) - (x2 - x0) * (y1 - y0)) / 2
            total += area * sign * (depth(x0, y0) + depth(x1, y1) + depth(x2, y2)) / 3
        found.append(float(total * Fraction(1, 10_000) ** 3))
    return found[0], found[1]


def error(volume: Volume, true: Tuple[float, float]) -> float:
    """The larger of the errors of cut and fill, relative."""
    return max(abs(volume.cut - true[0]) / true[0], abs(volume.fill - true[1]) / true[1])


def run(n: int = 1_000_000, host: bool = False) -> Dict[str, float]:
    """Seconds, their ratio to scipy's (and the host's), memory and errors; prints them."""
    points = [survey(n, number) for number in (0, 1)]
    existing, design = (build_surface(each).tin for each in points)
    begin = time.perf_counter()
    Delaunay(np.column_stack([points[0].easting, points[0].northing]) - SITE)
    scipy = time.perf_counter() - begin
    begin, worked = time.perf_counter(), time.process_time()
    ours = volume_between(existing, design)
    seconds, worked = time.perf_counter() - begin, time.process_time() - worked
    gib = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 2**20
    begin = time.perf_counter()
    gridded = depth_grid(Comparison(existing, design), CELL)
    grid_seconds = time.perf_counter() - begin
    true = truth(n)
    print(
        f"volume of 2 x {n:,} points: ours {seconds:.1f} s (processor {worked:.1f} s), scipy Delaunay of one "
        f"{scipy:.1f} s, ratio {seconds / scipy:.2f} (bar {BAR}); memory {gib:.2f} GiB (bar {BAR_GIB})\n"
        f"  error: exact {error(ours, true):.1e}, grid of {CELL} m {error(gridded, true):.1e} in {grid_seconds:.1f} s "
        f"(bar: {BAR_CLOSER:.0f} times closer)"
    )
    found = run_host(n, existing, design, seconds, worked, error(ours, true)) if host else {}
    return {
        **found,
        "ours": seconds,
        "reference": scipy,
        "ratio": seconds / scipy,
        "gib": gib,
        "error": error(ours, true),
        "grid_error": error(gridded, true),
    }


def run_host(n: int, existing: Tin, design: Tin, ours: float, worked: float, ours_error: float) -> Dict[str, float]:
    """The same by QGIS: its own rasters of both meshes, which it reads from files, and the sum of their difference."""
    from osgeo import gdal
    from qgis.analysis import QgsNativeAlgorithms
    from qgis.core import QgsApplication, QgsProcessingContext, QgsProcessingFeedback

    gdal.UseExceptions()
    application = QgsApplication.instance() or QgsApplication([], False)
    application.initQgis()
    registry = QgsApplication.processingRegistry()
    if registry.providerById("native") is None:
        registry.addProvider(QgsNativeAlgorithms(registry))
    algorithm = registry.algorithmById("native:meshrasterize")
    size = int(np.ceil(max(max(corner) for corner in corners(n)) * GRID / CELL))
    west, south = SITE
    extent = f"{west},{west + size * CELL},{south},{south + size * CELL} [EPSG:25832]"
    with tempfile.TemporaryDirectory() as folder:
        files = [Path(folder, f"{name}.2dm") for name in ("existing", "design")]
        for tin, file in zip((existing, design), files):
            write_2dm(tin, file)
        here = os.getcwd()
        os.chdir(folder)  # where the host leaves files of its own while it reads a mesh
        begin, host_worked = time.perf_counter(), time.process_time()
        grids = []
        for file in files:
            parameters = {
                "INPUT": str(file), "DATASET_GROUPS": [0], "DATASET_TIME": {"type": "static"}, "EXTENT": extent,
                "PIXEL_SIZE": CELL, "CRS_OUTPUT": "EPSG:25832", "OUTPUT": str(file.with_suffix(".tif")),
            }  # fmt: skip
            done, good = algorithm.run(parameters, QgsProcessingContext(), QgsProcessingFeedback())
            assert good
            grids.append(gdal.Open(done["OUTPUT"]).ReadAsArray())
        depth = grids[1] - grids[0]
        depth = depth[np.isfinite(depth)]
        gridded = Volume(-depth[depth < 0].sum() * CELL**2, depth[depth > 0].sum() * CELL**2, 0, 0, 0, 0, 0)
        host, host_worked = time.perf_counter() - begin, time.process_time() - host_worked
        os.chdir(here)
    host_error = error(gridded, truth(n))
    print(
        f"  QGIS rasters of {CELL} m: {host:.1f} s (processor {host_worked:.1f} s), error {host_error:.1e}; ours takes "
        f"{ours / host:.2f} of its time (processor {worked / host_worked:.2f}; bar 1), {host_error / ours_error:.0f} "
        f"times closer (bar {BAR_CLOSER:.0f})"
    )
    return {"host": host, "host_ratio": ours / host, "processor_ratio": worked / host_worked, "host_error": host_error}


def run_grids(n: int = 100_000) -> Dict[str, float]:
    """The same with the grids that GDAL (the host's own) makes from the points by linear interpolation; both begin with
    the points."""
    from osgeo import gdal, ogr

    gdal.UseExceptions()
    points = [survey(n, number) for number in (0, 1)]
    begin, worked = time.perf_counter(), time.process_time()
    ours = volume_between(*(build_surface(each).tin for each in points))
    seconds, worked = time.perf_counter() - begin, time.process_time() - worked
    size = int(np.ceil(max(max(corner) for corner in corners(n)) * GRID / CELL))
    sources = []
    for each in points:
        source = gdal.GetDriverByName("Memory").Create("", 0, 0, 0, gdal.GDT_Unknown)
        layer = source.CreateLayer("points", geom_type=ogr.wkbPoint25D)
        for x, y, z in np.column_stack([each.easting - SITE[0], each.northing - SITE[1], each.height]).tolist():
            feature, geometry = ogr.Feature(layer.GetLayerDefn()), ogr.Geometry(ogr.wkbPoint25D)
            geometry.AddPoint(x, y, z)
            feature.SetGeometry(geometry)
            layer.CreateFeature(feature)
        sources.append(source)
    begin, host_worked = time.perf_counter(), time.process_time()
    grids = []
    for source in sources:
        options = gdal.GridOptions(
            format="MEM", outputType=gdal.GDT_Float64, width=size, height=size,
            outputBounds=[0, 0, size * CELL, size * CELL], algorithm="linear:radius=0:nodata=-9999",
        )  # fmt: skip
        grids.append(gdal.Grid("", source, options=options).ReadAsArray())
    depth = (grids[1] - grids[0])[(grids[0] > -9000) & (grids[1] > -9000)]
    gridded = Volume(-depth[depth < 0].sum() * CELL**2, depth[depth > 0].sum() * CELL**2, 0, 0, 0, 0, 0)
    host, host_worked = time.perf_counter() - begin, time.process_time() - host_worked
    true = truth(n)
    closer = error(gridded, true) / error(ours, true)
    print(
        f"volume of 2 x {n:,} points, from the points on: ours {seconds:.1f} s (processor "
        f"{worked:.1f} s), error {error(ours, true):.1e}; GDAL grids of {CELL} m {host:.1f} s (processor "
        f"{host_worked:.1f} s), error {error(gridded, true):.1e}: {closer:.0f} times closer "
        f"(bar {BAR_CLOSER:.0f})"
    )
    return {"ours": seconds, "host": host, "closer": closer}


if __name__ == "__main__":
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks.bench_volume")
    parser.add_argument("points", type=int, nargs="?", default=1_000_000)
    parser.add_argument("--host", action="store_true", help="compare with rasters that QGIS makes of the same meshes")
    parser.add_argument("--grids", type=int, nargs="?", const=100_000, default=0)
    given = parser.parse_args()
    if given.grids:
        run_grids(given.grids)
    else:
        run(given.points, given.host)
