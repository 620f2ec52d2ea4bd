"""Whether the intervals of volumes between two surveys are right: many pairs of surveys whose truth is known.

``python -m tests.benchmarks.bench_survey_pairs [PAIRS] [CASE ...]``. Of each case: the mean error and spread of cut,
fill and net over the pairs, the share whose 95 % interval holds the truth (to be 95 ± 2 %), and how many times as wide
as the spread the interval is (1.5 at most, where nothing changed).
"""

from __future__ import annotations

import sys
import time

from tests.core.survey_pairs import Pairs, Score, score

PART = 100  # pairs, after which is told how they stand
CASES = {
    "white": Pairs("rolling", 36.0),
    "white, flat": Pairs("flat", 36.0),
    "white, offset given": Pairs("flat", 36.0, known=True),
    "correlated": Pairs("rolling", 36.0, drift=0.008),
    "correlated, offset given": Pairs("rolling", 36.0, drift=0.008, known=True),
    "correlated, steep": Pairs("steep", 36.0, drift=0.008),
    "correlated, no times": Pairs("rolling", 36.0, drift=0.008, timed=False),
    "slow waves": Pairs("rolling", 36.0, drift=0.008, slow=True),
    "passes 5 m apart": Pairs("rolling", 45.0, drift=0.008, gaps=(5.0, 4.0)),
    "passes 2 m apart": Pairs("rolling", 24.0, gaps=(2.0, 2.5), steps=(0.5, 0.6), drift=0.008),
    "larger site": Pairs("rolling", 100.0, drift=0.008),
    "pit": Pairs("rolling", pit=True),
    "pit, correlated": Pairs("rolling", drift=0.008, pit=True),
    "heap": Pairs("rolling", 71.0, drift=0.008, heap=(0.3, 1.2)),
    "low heap": Pairs("rolling", 71.0, drift=0.008, heap=(0.06, 0.3)),
}


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 1000
    for name in sys.argv[2:] or CASES:
        start = time.process_time()
        found = score(CASES[name], min(count, PART))
        tell(name, found, time.process_time() - start)
        for first in range(PART, count, PART):
            found = found.with_more(score(CASES[name], min(PART, count - first), first))
            tell(name, found, time.process_time() - start)


def tell(name: str, found: Score, seconds: float) -> None:
    count = len(found.errors)
    print(f"{name}: {count} pairs, {seconds / count:.2f} s of processor time each")
    for k, kind in enumerate(("cut", "fill", "net")):
        error = found.errors[:, k]
        print(
            f"  {kind:4}  triangles {found.measured[:, k].mean():+7.2f}  told {error.mean():+6.2f} m³  "
            f"spread {error.std(ddof=1):5.2f}  inside {100 * found.inside[k]:5.1f} %  width {found.width[k]:.2f}",
            flush=True,
        )


if __name__ == "__main__":
    main()
