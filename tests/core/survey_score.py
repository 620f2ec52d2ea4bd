"""What the automatic check makes of simulated surveys, counted against their truth.

The bars this project set itself: of the points off by 4 standard deviations of a height or more 98 % found (flagged or
rejected), at most 0.5 % of the good points rejected, at most 1 % of those at kerbs, ditches, banks and walls; the
standard deviation of a height estimated to 15 % in 95 % of the surveys.

The true standard deviation is that of the survey at hand (:attr:`.Survey.spread`), not a parameter of the noise it was
drawn from: a walk of twenty minutes holds ten correlation times of what wanders, whose mean square differs from the
parameter's by a third, and nobody can tell a parameter from it any better.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Iterable, List

import numpy as np

from plugin.core.linework.codes import default_code_table
from plugin.core.points.pointset import Status
from plugin.core.quality.check import check_survey
from tests.core.survey_simulator import simulate

FOUND, LOST, FEATURE_LOST, SIGMA_OFF, SIGMA_SHARE = 0.98, 0.005, 0.01, 0.15, 0.95


@dataclass
class Score:
    """Counts over surveys: points at fault, of these found and rejected, by kind; good points and those at features,
    and how many of these were rejected. ``ratio``: estimated over true standard deviation of each survey (nan where
    none was given); ``white``: the same for the noise new at every point; ``inside``: whether the truth lay in the 95 %
    interval.
    """

    faults: Counter = field(default_factory=Counter)
    found: Counter = field(default_factory=Counter)
    rejected: Counter = field(default_factory=Counter)
    good: int = 0
    lost: int = 0
    feature: int = 0
    feature_lost: int = 0
    ratio: List[float] = field(default_factory=list)
    white: List[float] = field(default_factory=list)
    inside: List[bool] = field(default_factory=list)

    @property
    def found_share(self) -> float:
        return sum(self.found.values()) / max(sum(self.faults.values()), 1)

    @property
    def rejected_share(self) -> float:
        return sum(self.rejected.values()) / max(sum(self.faults.values()), 1)

    @property
    def lost_share(self) -> float:
        return self.lost / max(self.good, 1)

    @property
    def feature_lost_share(self) -> float:
        return self.feature_lost / max(self.feature, 1)

    @property
    def close_share(self) -> float:
        """Surveys whose standard deviation was estimated to 15 %; none given counts as missed."""
        return float(np.mean(np.abs(np.array(self.ratio) - 1) < SIGMA_OFF))

    @property
    def white_share(self) -> float:
        return float(np.mean(np.abs(np.array(self.white) - 1) < SIGMA_OFF))

    @property
    def inside_share(self) -> float:
        return float(np.mean(self.inside))


def score(seeds: Iterable[int]) -> Score:
    """Simulate and check the surveys of ``seeds``."""
    table, total = default_code_table(), Score()
    for seed in seeds:
        survey = simulate(seed)
        check = check_survey(survey.points, table)
        status, good = check.points.status, survey.fault == ""
        faulty, feature = ~good & (np.abs(survey.error) >= 4 * survey.sigma), good & survey.at_feature
        total.faults.update(survey.fault[faulty])
        total.found.update(survey.fault[faulty & (status != Status.USED)])
        total.rejected.update(survey.fault[faulty & (status == Status.REJECTED)])
        total.good += int(np.count_nonzero(good))
        total.lost += int(np.count_nonzero(good & (status == Status.REJECTED)))
        total.feature += int(np.count_nonzero(feature))
        total.feature_lost += int(np.count_nonzero(feature & (status == Status.REJECTED)))
        noise = check.noise
        assert noise is not None, seed
        total.ratio.append(noise.total / survey.spread)
        total.white.append(noise.white / survey.white)
        total.inside.append(bool(noise.low <= survey.spread <= noise.high))
    return total
