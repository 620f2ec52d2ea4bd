"""``python -m tests.fuzz [COUNT] [SEED]``: mutated survey files through the readers, 100,000 unless said otherwise.

A file that breaks a rule is kept, with the seed that makes it again.
"""

from __future__ import annotations

import multiprocessing
import os
import sys
import tempfile
import time
import traceback
from collections import Counter
from pathlib import Path
from typing import Counter as Counts
from typing import List, Tuple

import numpy as np

from tests.fuzz.check import check, check_intake, options_of
from tests.fuzz.layouts import check_layout
from tests.fuzz.mutate import mutated, seeds

BATCH = 500
#: One file of so many is also taken in: transformed and held against the area of use.
TAKEN_IN = 50
#: Beside one of so many a file of known layout is damaged, and its points held against what its lines say.
OF_LAYOUT = 2


def run_batch(job: Tuple[int, int, str]) -> Tuple[Counts[str], List[str]]:
    """What became of ``count`` files made from ``seed``, and a report of each that broke a rule."""
    seed, count, folder = job
    rng = np.random.default_rng(seed)
    files = seeds(seed % 50)
    path = Path(folder) / f"fuzz-{os.getpid()}.txt"
    outcome: Counts[str] = Counter()
    broken = []
    for i in range(count):
        raw, options = mutated(files, rng), options_of(rng)
        try:
            outcome[check(path, raw, options)] += 1
            if i % TAKEN_IN == 0:
                outcome[check_intake(path, raw, options, rng)] += 1
            if i % OF_LAYOUT == 0:
                outcome[check_layout(path, rng)] += 1
        except Exception:  # of any kind: that is what is looked for
            kept = Path(folder) / f"broken-{seed}-{i}.txt"
            kept.write_bytes(path.read_bytes())
            outcome["broken"] += 1
            broken.append(f"{kept}\n{options}\n{traceback.format_exc()}")
    return outcome, broken


def main(count: int = 100_000, seed: int = 1) -> int:
    """Run all batches on all processors; 1 when a rule was broken."""
    folder = tempfile.mkdtemp(prefix="hummock-fuzz-")
    begin = time.perf_counter()
    jobs = [(seed * 1_000_000 + start, min(BATCH, count - start), folder) for start in range(0, count, BATCH)]
    outcome: Counts[str] = Counter()
    broken: List[str] = []
    done = 0
    with multiprocessing.Pool() as pool:
        for one, reports in pool.imap_unordered(run_batch, jobs):
            outcome += one
            broken += reports
            done += sum(number for code, number in one.items() if not code.startswith(("taken in", "layout")))
            if reports or done % 10_000 < BATCH:
                print(f"{done:,} files, {len(broken)} broke a rule", flush=True)
    for report in broken[:5]:
        print(report)
    for code, number in outcome.most_common():
        print(f"{number:>8,}  {code}")
    print(f"{done:,} mutated files in {time.perf_counter() - begin:.0f} s, {len(broken)} broken a rule")
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main(*(int(word.replace(",", "")) for word in sys.argv[1:3])))
