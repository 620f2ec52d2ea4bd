"""All benchmarks, one line a ratio with its bar: ``python -m tests.benchmarks [POINTS] [--five-million] [--host]``.

Each module ``bench_*`` has ``run(n)``. They run one after the other in this process.
"""

from __future__ import annotations

import argparse
import importlib
import time
from pathlib import Path

from . import bench_surface


def main() -> None:
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks", description="Speed against outside references.")
    parser.add_argument("points", type=int, nargs="?", default=1_000_000)
    parser.add_argument("--five-million", action="store_true", help="5,000,000 points in the surface's scaling as well")
    parser.add_argument("--host", type=int, nargs="?", const=100_000, default=0, metavar="POINTS",
                        help="compare with native:tinmeshcreation of QGIS (100,000 points unless said)")  # fmt: skip
    given = parser.parse_args()
    begin = time.perf_counter()
    bench_surface.run(given.points, given.five_million, given.host)
    for path in sorted(Path(__file__).parent.glob("bench_*.py")):
        if path.stem != "bench_surface":
            importlib.import_module(f".{path.stem}", __package__).run(given.points)
    print(f"all benchmarks: {time.perf_counter() - begin:.0f} s")


if __name__ == "__main__":
    main()
