"""The automatic check against surveys whose faults are known.

What is counted, and the bars: survey_score; what the surveys hold: survey_simulator. The surveys are drawn from seeds
that change whenever the checks do, so nothing can be tuned to them, and every run of one state of the code tries the
same. A score of surveys leaves chance in the shares: they are held to the bars less what chance allows in one case of a
thousand or so; ``python -m tests.benchmarks.bench_trust`` holds a hundred surveys to the bars themselves.
"""

from __future__ import annotations

import zlib
from pathlib import Path

import numpy as np
import pytest

from plugin.core.linework.codes import default_code_table
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.quality import check as checks
from plugin.core.quality.check import check_survey
from tests.core.survey_score import FEATURE_LOST, FOUND, LOST, SIGMA_SHARE, Score, score
from tests.core.survey_simulator import simulate

SURVEYS = 24


def first_seed() -> int:
    """A number that the sources of the checks give."""
    number = 0
    for path in sorted(Path(checks.__file__).parent.glob("*.py")):
        number = zlib.crc32(path.read_bytes(), number)
    return 10_000 + number % 1_000_000


@pytest.fixture(scope="module")
def total() -> Score:
    return score(range(first_seed(), first_seed() + SURVEYS))


def test_faults_of_four_sigma_are_found(total: Score) -> None:
    assert total.found_share >= FOUND - 0.03


def test_good_points_are_kept(total: Score) -> None:
    assert total.lost_share <= LOST + 0.003


def test_kerbs_ditches_and_walls_are_no_blunders(total: Score) -> None:
    assert total.feature_lost_share <= FEATURE_LOST + 0.015


def test_the_noise_is_estimated(total: Score) -> None:
    assert total.white_share >= SIGMA_SHARE - 0.1
    assert total.close_share >= SIGMA_SHARE - 0.15
    assert total.inside_share >= SIGMA_SHARE - 0.2


def test_a_survey_mostly_in_doubt_still_has_its_noise() -> None:
    """A street whose gutter passes are mostly in doubt: those that are not meet in too few places."""
    survey = simulate(71068)
    noise = check_survey(survey.points, default_code_table()).noise
    assert noise is not None
    assert noise.total == pytest.approx(survey.spread, rel=0.3)
    assert noise.encounters >= 3


def walk(height: np.ndarray):
    """To and fro over 20 m, passes 2 m apart, a point every half metre."""
    x, y = np.meshgrid(np.arange(0, 20.1, 0.5), np.arange(0, 20.1, 2.0))
    x[1::2] = x[1::2, ::-1]
    return make_points(500000 + x.ravel(), 5700000 + y.ravel(), height, source="walk.csv")


def test_heights_without_noise_are_left_alone() -> None:
    points = walk(np.zeros(41 * 11))
    level = check_survey(points)
    assert np.all(level.points.status == Status.USED)
    tilted = check_survey(walk(0.02 * (points.easting - 500000) + 0.05 * (points.northing - 5700000)))
    assert np.all(tilted.points.status == Status.USED)


def test_a_lifted_pole_is_named_and_nothing_is_taken_away() -> None:
    noise = np.random.default_rng(5).normal(0, 0.01, 41 * 11)
    noise[200:208] += 0.4
    points = walk(noise)
    check = check_survey(points)
    assert len(check.points) == len(points)
    rejected = np.flatnonzero(check.points.status == Status.REJECTED)
    assert set(range(200, 208)) <= set(rejected.tolist())
    assert len(rejected) <= 10
    assert np.all(check.points.reasons[200:208] & int(Reason.POLE_HEIGHT))
    assert any(set(range(200, 208)) & set(found.indices.tolist()) for found in check.findings)
