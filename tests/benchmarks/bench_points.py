"""Reading a large survey file, against numpy.loadtxt on its three numeric columns.

Ours also finds out delimiter, decimal mark, encoding and columns, reads names and codes and accounts
for every line; without a header too, where the area of use of the CRS tells the columns:
``python -m tests.benchmarks.bench_points [LINES]``.
"""

from __future__ import annotations

import resource
import sys
import tempfile
import time
from pathlib import Path
from typing import Dict

import numpy as np
from pyproj import CRS

from plugin.core.points.delimited import read_points

BAR = 4.0


def write_survey(path: Path, n: int, seed: int = 1, header: bool = True) -> None:
    """A survey of ``n`` points with name, easting, northing, height and code to the millimetre."""
    rng = np.random.default_rng(seed)
    columns = (rng.uniform(548_000, 551_000, n), rng.uniform(5_712_000, 5_715_000, n), rng.uniform(80, 120, n))
    codes = ("GR", "KB", "DT", "")
    with open(path, "w", encoding="utf-8") as stream:
        stream.write("name,easting,northing,height,code\n" * header)
        for i, (easting, northing, height) in enumerate(zip(*(column.tolist() for column in columns))):
            stream.write(f"P{i},{easting:.3f},{northing:.3f},{height:.3f},{codes[i % 4]}\n")


def run(n: int = 1_000_000) -> Dict[str, float]:
    """Seconds of both (the better of two) and their ratio; prints them and the peak memory of the process."""
    with tempfile.TemporaryDirectory() as folder:
        path, bare = Path(folder) / "survey.csv", Path(folder) / "bare.csv"
        write_survey(path, n)
        write_survey(bare, n, header=False)
        crs = CRS.from_epsg(25832)
        ours, recognised, theirs = [], [], []
        for _ in range(2):
            begin = time.perf_counter()
            points = read_points(path, crs=crs).points
            ours.append(time.perf_counter() - begin)
            begin = time.perf_counter()
            again = read_points(bare, crs=crs).points
            recognised.append(time.perf_counter() - begin)
            assert np.array_equal(again.easting, points.easting)
            del again
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        for _ in range(2):
            begin = time.perf_counter()
            numbers = np.loadtxt(path, delimiter=",", skiprows=1, usecols=(1, 2, 3))
            theirs.append(time.perf_counter() - begin)
    assert np.array_equal(numbers, np.column_stack([points.easting, points.northing, points.height]))
    ratio = max(min(ours), min(recognised)) / min(theirs)
    print(
        f"reading {n:,} lines: ours {min(ours):.3f} s, without a header {min(recognised):.3f} s, numpy.loadtxt "
        f"{min(theirs):.3f} s, ratio {ratio:.2f} (bar {BAR}), peak memory {peak:.0f} MiB"
    )
    return {
        "ours_s": min(ours), "recognised_s": min(recognised), "loadtxt_s": min(theirs), "ratio": ratio,
        "peak_mib": peak,
    }  # fmt: skip


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
