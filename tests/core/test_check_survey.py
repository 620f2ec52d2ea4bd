"""The automatic check against surveys whose faults are known.

The surveys are drawn anew from counted seeds (see survey_simulator for what they hold and what not). A fault counts as
found when its point is rejected or flagged for a person to look at; a good point counts as lost only when rejected.
"""

from __future__ import annotations

from typing import Dict

import numpy as np
import pytest
from survey_simulator import simulate

from plugin.core.linework.codes import default_code_table
from plugin.core.points.pointset import Reason, Status, make_points
from plugin.core.quality.check import check_survey

SEEDS = range(1000, 1100)


@pytest.fixture(scope="module")
def counts() -> Dict[str, float]:
    """Shares over all surveys together."""
    table = default_code_table()
    total = dict.fromkeys(("faults", "found", "good", "lost", "feature", "feature_lost", "surveys", "white"), 0)
    for seed in SEEDS:
        survey = simulate(seed)
        check = check_survey(survey.points, table)
        rejected = check.points.status == Status.REJECTED
        good, large = survey.fault == "", np.abs(survey.error) >= 4 * survey.sigma
        faulty, feature = ~good & large, good & survey.at_feature
        for key, mask in (
            ("faults", faulty),
            ("found", faulty & (check.points.status != Status.USED)),
            ("good", good),
            ("lost", good & rejected),
            ("feature", feature),
            ("feature_lost", feature & rejected),
        ):
            total[key] += int(np.count_nonzero(mask))
        assert check.noise is not None, seed
        total["surveys"] += 1
        total["white"] += abs(check.noise.white / survey.white - 1) < 0.15
    return {
        "found": total["found"] / total["faults"],
        "lost": total["lost"] / total["good"],
        "feature_lost": total["feature_lost"] / total["feature"],
        "white": total["white"] / total["surveys"],
    }


def test_faults_of_four_sigma_are_found(counts: Dict[str, float]) -> None:
    assert counts["found"] >= 0.965


def test_good_points_are_kept(counts: Dict[str, float]) -> None:
    assert counts["lost"] <= 0.005


def test_kerbs_ditches_and_walls_are_no_blunders(counts: Dict[str, float]) -> None:
    assert counts["feature_lost"] <= 0.01


def test_the_noise_along_the_walk_is_estimated(counts: Dict[str, float]) -> None:
    assert counts["white"] >= 0.95


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
