"""What the check does to families of simulated surveys, against the bars.

``python -m tests.benchmarks.bench_check_families --families street heaps --seeds 40 --start 1000``: one line a family,
with what is beyond its bar marked MISSED; ``--each`` a line for every survey too. What the surveys hold:
tests/core/simulated; the bars: tests/core/simulated/score.py.
"""

from __future__ import annotations

import argparse
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from typing import Iterator, List, Optional, Sequence

from tests.core.simulated import FAMILIES
from tests.core.simulated.measure import Measured, measure
from tests.core.simulated.score import line


def surveys(family: str, seeds: Sequence[int], limit: float, processes: int, surfaces: bool) -> Iterator[Measured]:
    """The surveys of a family, measured in the order of their seeds."""
    work = partial(measure, family, limit=limit, surfaces=surfaces)
    if processes == 1:
        yield from map(work, seeds)
        return
    with ProcessPoolExecutor(processes) as pool:
        yield from pool.map(work, seeds)


def run(words: Optional[List[str]] = None) -> None:
    """Measure and print what the command line ``words`` ask for."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--families", nargs="+", choices=list(FAMILIES), default=list(FAMILIES), metavar="FAMILY")
    parser.add_argument("--seeds", type=int, default=40, help="surveys of each family")
    parser.add_argument("--start", type=int, default=1000, help="first seed")
    parser.add_argument("--processes", type=int, choices=(1, 2), default=1)
    parser.add_argument("--limit", type=float, default=60.0, help="seconds of processor time a check may take")
    parser.add_argument("--each", action="store_true", help="a line for every survey too")
    parser.add_argument("--no-surfaces", action="store_true", help="statuses only, which is faster")
    asked = parser.parse_args(words)
    seeds = range(asked.start, asked.start + asked.seeds)
    for family in asked.families:
        done = []
        for each in surveys(family, seeds, asked.limit, asked.processes, not asked.no_surfaces):
            done.append(each)
            if asked.each:
                why = " ".join(filter(None, [each.failed, each.share_failed]))
                print(f"  seed {each.seed}, {each.what}, {why or 'ended'}: {line(family, [each])}", flush=True)
        print(line(family, done), flush=True)


if __name__ == "__main__":
    run()
