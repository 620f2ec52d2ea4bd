"""Reading a large survey file, against numpy.loadtxt on its three numeric columns.

Ours also finds out delimiter, decimal mark, encoding and columns, reads names and codes and accounts
for every line: ``python -m tests.benchmarks.bench_points [LINES]``.
"""

from __future__ import annotations

import resource
import sys
import tempfile
import time
from pathlib import Path
from typing import Dict

import numpy as np

from plugin.core.points.delimited import read_points

BAR = 4.0


def write_survey(path: Path, n: int, seed: int = 1) -> None:
    """A survey of ``n`` points with name, easting, northing, height and code to the millimetre."""
    rng = np.random.default_rng(seed)
    columns = (rng.uniform(548_000, 551_000, n), rng.uniform(5_712_000, 5_715_000, n), rng.uniform(80, 120, n))
    codes = ("GR", "KB", "DT", "")
    with open(path, "w", encoding="utf-8") as stream:
        stream.write("name,easting,northing,height,code\n")
        for i, (easting, northing, height) in enumerate(zip(*(column.tolist() for column in columns))):
            stream.write(f"P{i},{easting:.3f},{northing:.3f},{height:.3f},{codes[i % 4]}\n")


def run(n: int = 1_000_000) -> Dict[str, float]:
    """Seconds of both (the better of two) and their ratio; prints them and the peak memory of the process."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "survey.csv"
        write_survey(path, n)
        ours, theirs = [], []
        for _ in range(2):
            begin = time.perf_counter()
            points = read_points(path).points
            ours.append(time.perf_counter() - begin)
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        for _ in range(2):
            begin = time.perf_counter()
            numbers = np.loadtxt(path, delimiter=",", skiprows=1, usecols=(1, 2, 3))
            theirs.append(time.perf_counter() - begin)
    assert np.array_equal(numbers, np.column_stack([points.easting, points.northing, points.height]))
    ratio = min(ours) / min(theirs)
    print(
        f"reading {n:,} lines: ours {min(ours):.3f} s, numpy.loadtxt {min(theirs):.3f} s, "
        f"ratio {ratio:.2f} (bar {BAR}), peak memory {peak:.0f} MiB"
    )
    return {"ours_s": min(ours), "loadtxt_s": min(theirs), "ratio": ratio, "peak_mib": peak}


if __name__ == "__main__":
    run(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000)
