"""How much the automatic check of walked surveys can be trusted: simulated surveys with known faults against the bars.

``python -m tests.benchmarks.bench_trust [FIRST END]``: surveys of the seeds from FIRST to before END (1000 to 1100
unless said). What the numbers mean: tests/core/survey_score.py; what the surveys hold: tests/core/survey_simulator.py.
"""

from __future__ import annotations

import sys
import time
from typing import Dict

from tests.core.survey_score import FEATURE_LOST, FOUND, LOST, SIGMA_SHARE, score


def run(points: int = 0, first: int = 1000, end: int = 1020) -> Dict[str, float]:
    """Shares over all surveys together; prints them, and the faults by kind. ``points`` plays no part."""
    begin = time.perf_counter()
    total = score(range(first, end))
    print(f"trust, {end - first} surveys from seed {first}, {time.perf_counter() - begin:.0f} s:")
    shares = {
        "found": (total.found_share, f"faults of 4 sigma flagged or rejected, bar {FOUND:.1%}"),
        "rejected": (total.rejected_share, "of these rejected"),
        "lost": (total.lost_share, f"good points rejected, bar {LOST:.1%}"),
        "feature_lost": (total.feature_lost_share, f"the same at kerbs, ditches and walls, bar {FEATURE_LOST:.1%}"),
        "sigma": (total.close_share, f"surveys whose sigma was estimated to 15 %, bar {SIGMA_SHARE:.0%}"),
        "white": (total.white_share, "the same for the noise new at every point"),
        "inside": (total.inside_share, "surveys whose sigma lay in the 95 % interval given"),
    }  # fmt: skip
    for share, told in shares.values():
        print(f"  {share:8.2%}  {told}")
    for kind, count in sorted(total.faults.items()):
        found, rejected = total.found[kind] / count, total.rejected[kind] / count
        print(f"  {kind:12} {count:6d} points, found {found:.2%}, rejected {rejected:.2%}")
    return {name: share for name, (share, _) in shares.items()}


if __name__ == "__main__":
    run(0, *(int(word) for word in (sys.argv[1:3] or ("1000", "1100"))))
