"""A large surface into LandXML and back: ``python -m tests.benchmarks.bench_landxml [POINTS]``.

Bars, of a million points (two million faces): written in 30 s, read in 60 s, 3 GiB at most. Beside it, in the same run,
what Python's own ``xml.etree`` needs to go through the file without keeping anything.
"""

from __future__ import annotations

import resource
import sys
import tempfile
import time
import xml.etree.ElementTree as ElementTree
from pathlib import Path
from typing import Dict

import numpy as np

from plugin.core.handover.landxml_model import LandSurface, LandXml
from plugin.core.handover.landxml_read import read_landxml
from plugin.core.handover.landxml_write import write_landxml
from plugin.core.points.pointset import make_points
from plugin.core.surface.build import build_surface
from plugin.core.surface.tin import Tin

WRITE_BAR_S, READ_BAR_S, MEMORY_BAR_MIB = 30.0, 60.0, 3072.0


def _surface(n: int) -> Tin:
    rng = np.random.default_rng(4)
    side = np.sqrt(n)
    east, north = rng.uniform(0, side, (2, n)).round(3)
    height = 100 + 5 * np.sin(east / 30) * np.cos(north / 40) + rng.normal(0, 0.02, n)
    return build_surface(make_points(east + 432_000, north + 5_765_000, height)).tin


def run(n: int = 1_000_000) -> Dict[str, float]:
    """Seconds and peak memory; prints them. Asserts that the surface came back exactly."""
    tin = _surface(n)
    before = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "surface.xml"
        begin, worked = time.perf_counter(), time.process_time()
        write_landxml(LandXml(None, (LandSurface("bench", tin),)), path)
        written, wrote = time.perf_counter() - begin, time.process_time() - worked
        size = path.stat().st_size / 1e6
        begin, worked = time.perf_counter(), time.process_time()
        back = read_landxml(path).surfaces[0].tin
        read, took = time.perf_counter() - begin, time.process_time() - worked
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        begin = time.perf_counter()
        for _, element in ElementTree.iterparse(path):
            element.clear()
        theirs = time.perf_counter() - begin
    assert back is not None
    assert np.array_equal(back.triangles, tin.triangles)
    assert np.array_equal(back.grid - back.grid[0], tin.grid - tin.grid[0])
    print(
        f"LandXML, {n:,} points, {len(tin.triangles):,} faces, {size:.0f} MB: written {written:.1f} s (bar "
        f"{WRITE_BAR_S:.0f}; {wrote:.1f} s of processor), read {read:.1f} s (bar {READ_BAR_S:.0f}; {took:.1f} s of "
        f"processor), {read / theirs:.2f} of xml.etree's pass; "
        f"peak memory {peak:.0f} MiB (bar {MEMORY_BAR_MIB:.0f}; {before:.0f} after building the surface)"
    )
    return {
        "write_s": written,
        "read_s": read,
        "write_cpu_s": wrote,
        "read_cpu_s": took,
        "etree_ratio": read / theirs,
        "peak_mib": peak,
    }


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
