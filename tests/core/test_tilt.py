"""Whether the rover compensates tilt, told by its heights; limits that would reject much of a file are said first.

The geometry is that of a leaning rod: its top is lower by its length times 1 - cos of the tilt, and beside its foot by
the length times sin. The regression is held against scipy.stats.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Callable, List, Optional

import numpy as np
import pytest
from scipy import stats

from plugin.core.points.pointset import PointSet, Reason, Status, make_points
from plugin.core.quality import tilt as tilt_module
from plugin.core.quality.check import SurveyCheck, check_survey
from plugin.core.quality.tilt import fitted, tilt_evidence, verdict
from plugin.core.quality.tolerances import CONTROL, TOPOGRAPHIC
from plugin.core.quality.walk import make_walk

POLE = 2.0
NOISE = 0.012


def gentle(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    return 0.02 * x + 0.3 * np.sin(x / 9) + 0.4 * np.cos(y / 13)


def track(cross: int = 3, passes: int = 12, length: float = 60.0) -> np.ndarray:
    """Passes to and fro, 3 m apart, and some across (n, 2)."""
    along, parts = np.arange(0, length, 0.6), []
    for k in range(passes):
        parts.append(np.column_stack([along if k % 2 == 0 else along[::-1], np.full(len(along), 3.0 * k)]))
    over = np.arange(0, 3.0 * passes, 0.6)
    for k in range(cross):
        parts.append(np.column_stack([np.full(len(over), (k + 1) * length / (cross + 1)), over]))
    return np.vstack(parts)


def leaning(random: np.random.Generator, n: int) -> np.ndarray:
    """Tilt (n,) of a rover held as it comes: about 15 degrees, changing within some seconds."""
    wander = np.zeros(n)
    for k in range(1, n):
        wander[k] = 0.9 * wander[k - 1] + 0.43 * random.normal()
    return np.clip(np.abs(15 + 6 * wander + random.normal(0, 1, n)), 0, 50)


def survey(
    seed: int,
    leans: Callable[[int], np.ndarray],
    *,
    tilt: Optional[np.ndarray] = None,
    ground: Callable[..., np.ndarray] = gentle,
    entered_wrong: float = 0.0,
    sensor: float = 0.0,
    **way: Any,
) -> PointSet:
    """A survey; ``leans(n)``: mask of the points whose tilt nothing compensates."""
    random = np.random.default_rng(seed)
    place = track(**way) + random.normal(0, 0.05, (len(track(**way)), 2))
    n = len(place)
    true = leaning(random, n) if tilt is None else tilt
    angle, aside = np.radians(true), random.uniform(0, 6.28) + np.cumsum(random.normal(0, 0.1, n))
    plain = leans(n)
    height = ground(*place.T) + random.normal(0, NOISE, n) + entered_wrong * np.cos(angle)
    height -= np.where(plain, POLE * (1 - np.cos(angle)), 0.0)
    shift = np.where(plain, POLE * np.sin(angle), 0.0)
    east, north = place[:, 0] + shift * np.cos(aside), place[:, 1] + shift * np.sin(aside)
    return make_points(
        500_000 + east, 5_700_000 + north, height, tilt=np.abs(true + random.normal(0, sensor, n)),
        fix=np.full(n, 4, np.int8), time=np.arange(n) * 0.6, source_line=np.arange(n) + 2,
    )  # fmt: skip


def all_of(n: int) -> np.ndarray:
    return np.ones(n, bool)


def none_of(n: int) -> np.ndarray:
    return np.zeros(n, bool)


def told(check: SurveyCheck) -> List[str]:
    return [said.text.code.split(".")[1] for said in check.first]


def evidence(points: PointSet) -> tilt_module.TiltEvidence:
    return tilt_evidence(points, np.ones(len(points), bool))


def rejected(check: SurveyCheck, reason: Reason = Reason.TILT) -> float:
    """Share of the points rejected for a reason."""
    status, reasons = check.points.status, check.points.reasons
    return float(np.mean((status == Status.REJECTED) & (reasons & np.uint32(reason) != 0)))


# --- the regression ------------------------------------------------------------------------------


def test_the_slope_is_that_of_a_regression() -> None:
    """Against scipy.stats.linregress and its standard error, where errors are normal and tilt is free of them."""
    random = np.random.default_rng(1)
    lean = random.normal(0, 0.02, 4000)
    height = -1.7 * lean + random.normal(0, NOISE, 4000)
    zero, at = np.zeros(4000), np.arange(4000)
    seen = tilt_module._Observations(height, lean, lean, zero, at, at)
    found, known = fitted(seen, 0.0), stats.linregress(lean, -height)
    assert found.value == pytest.approx(known.slope, abs=0.3 * known.stderr)
    assert found.sigma == pytest.approx(known.stderr, rel=0.15)


def test_noise_of_the_tilt_sensor_does_not_pull_the_slope_to_nothing() -> None:
    """Ordinary least squares (scipy.stats.linregress) loses much of it to the noise; the instrument does not."""
    points = survey(2, all_of, sensor=2.5)
    x, y = points.easting - points.easting.mean(), points.northing - points.northing.mean()
    walk = make_walk(np.arange(len(points)), x, y, points.height)
    seen = tilt_module._along(walk, np.radians(points.tilt), 6)
    assert -stats.linregress(seen.lean, seen.height).slope < 0.8 * POLE
    found = fitted(seen, 0.02)
    assert found.value == pytest.approx(POLE, abs=3 * found.sigma)
    assert found.sigma < 0.5


@pytest.mark.parametrize("seed", range(3))
def test_the_fall_is_the_length_of_the_pole_or_nothing(seed: int) -> None:
    plain, compensated = evidence(survey(seed, all_of)), evidence(survey(seed, none_of))
    assert (plain.compensated, compensated.compensated) == (False, True)
    assert plain.fall == pytest.approx(POLE, abs=0.25)
    assert compensated.fall == pytest.approx(0.0, abs=0.15)
    assert min(plain.confidence, compensated.confidence) > 0.99


def test_a_pole_length_entered_wrongly_is_no_lack_of_compensation() -> None:
    found = evidence(survey(3, none_of, entered_wrong=-0.3))
    assert found.compensated
    assert found.fall == pytest.approx(-0.3, abs=0.15)


@pytest.mark.parametrize(("compensated", "mask"), [(True, none_of), (False, all_of)])
def test_the_walk_tells_without_a_place_visited_twice(compensated: bool, mask: Any) -> None:
    assert evidence(survey(4, mask, cross=0)).compensated is compensated


def steep(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    return 0.5 * x + 0.2 * y + 0.8 * np.sin(x / 7)


def walls(x: np.ndarray, y: np.ndarray) -> np.ndarray:
    return 0.5 * ((x // 7) % 2)


@pytest.mark.parametrize("ground", [steep, walls])
@pytest.mark.parametrize(("compensated", "mask"), [(True, none_of), (False, all_of)])
def test_steep_and_stepped_ground_never_tells_the_opposite(ground: Any, compensated: bool, mask: Any) -> None:
    """A leaning pole is beside its place too; on a slope that can look like any fall, and then nothing is claimed."""
    found = [evidence(survey(seed, mask, ground=ground)).compensated for seed in range(5)]
    assert (not compensated) not in found
    assert ground is steep or found.count(compensated) >= 4


def test_what_does_not_change_tells_nothing() -> None:
    n = len(track())
    for seed in range(3):
        assert evidence(survey(seed, all_of, tilt=np.full(n, 15.0))).compensated is None
        assert evidence(survey(seed, all_of, tilt=np.full(n, 15.0), sensor=2.0)).compensated is not True
    assert evidence(survey(1, none_of, passes=1, length=10.0, cross=0)).compensated is None
    assert verdict(fitted(tilt_module._Observations(*[np.zeros(0)] * 4, *[np.zeros(0, int)] * 2), 0.0)) == (None, 0.5)


def test_a_part_of_the_walk_that_says_the_opposite_is_told() -> None:
    points = survey(5, lambda n: np.arange(n) >= 0.8 * n)
    found = evidence(points)
    assert found.compensated is None
    assert found.apart is not None
    first, last = found.apart
    assert 0.6 * len(points) < first < last < len(points)
    check = check_survey(points)
    assert told(check) == ["ask_tilt", "tilt_apart"]
    assert f"From line {points.source_line[first]} to {points.source_line[last]}" in str(check.first[1])


# --- what is done about it -----------------------------------------------------------------------


def test_a_rover_that_compensates_loses_no_point_to_its_tilt() -> None:
    points = survey(6, none_of)
    check = check_survey(points)
    beyond = np.count_nonzero(points.tilt > 8)
    assert beyond > 0.5 * len(points)
    assert told(check) == ["tilt_compensates"]
    assert f"{beyond} points tilted by more than 8°" in str(check.first[0])
    assert not (check.points.reasons & np.uint32(Reason.TILT)).any()
    assert check.tolerances == replace(TOPOGRAPHIC, tilt=None), "what is written and given back"
    assert np.mean(check.points.status == Status.REJECTED) < 0.01


def test_one_that_does_not_loses_them_and_that_is_said_first() -> None:
    points = survey(6, all_of)
    check = check_survey(points)
    assert told(check) == ["tilt_leans"]
    assert rejected(check) == pytest.approx(np.mean(points.tilt > 8))
    assert sum(bool(each.reason & Reason.TILT) for each in check.findings) == 1, "told once, not stretch by stretch"


def test_few_tilted_points_are_held_to_the_limit_as_ever() -> None:
    """A stretch of ten points leans, without compensation; the rest is upright."""
    n = len(track())
    run = (np.arange(n) >= 300) & (np.arange(n) < 310)
    tilt = np.where(run, 20.0, np.abs(np.random.default_rng(7).normal(0, 1.5, n)))
    check = check_survey(survey(7, lambda _: run, tilt=tilt))
    assert check.points.status[run].tolist() == [Status.REJECTED] * 10
    assert rejected(check) == pytest.approx(10 / n)
    assert check.first == ()


def test_where_the_file_does_not_tell_the_user_is_asked_and_his_word_counts() -> None:
    n = len(track())
    points = survey(8, all_of, tilt=np.full(n, 15.0))
    asked = check_survey(points)
    assert told(asked) == ["ask_tilt"]
    assert "--tilt-compensated" in str(asked.first[0])
    assert rejected(asked) == 0
    assert np.mean(asked.points.status == Status.FLAGGED) > 0.99
    yes, no = (check_survey(points, tilt_compensated=said) for said in (True, False))
    assert (told(yes), told(no)) == (["tilt_said_yes"], ["limit_as_asked"])
    assert not (yes.points.reasons & np.uint32(Reason.TILT)).any()
    assert rejected(no) > 0.99


def test_a_word_that_the_heights_deny_counts_but_is_warned_of() -> None:
    plain, compensated = survey(9, all_of), survey(9, none_of)
    yes, no = check_survey(plain, tilt_compensated=True), check_survey(compensated, tilt_compensated=False)
    assert (told(yes), told(no)) == (["tilt_denied_yes"], ["tilt_denied_no"])
    assert (rejected(yes), rejected(no) > 0.5) == (0, True)


def test_a_set_that_was_chosen_is_applied_as_it_stands() -> None:
    points = survey(10, none_of)
    check = check_survey(points, tolerances=TOPOGRAPHIC)
    assert told(check) == ["tilt_denied_no"]
    assert rejected(check) == pytest.approx(np.mean(points.tilt > 8))
    said = check_survey(points, tolerances=CONTROL, tilt_compensated=True)
    assert not (said.points.reasons & np.uint32(Reason.TILT)).any()


def test_a_column_of_zeros_and_one_with_holes() -> None:
    n = len(track())
    assert check_survey(survey(11, none_of, tilt=np.zeros(n))).first == ()
    points = survey(11, none_of)
    holes = replace(points, tilt=np.where(np.arange(n) % 500 < 300, points.tilt, np.nan))
    assert told(check_survey(holes)) == ["tilt_compensates"]
    upside = replace(points, tilt=90 - points.tilt)  # against the horizon: no tilt a rover can be used with
    check = check_survey(upside)
    assert told(check) == ["ask_tilt"]
    assert rejected(check) == 0


# --- other limits --------------------------------------------------------------------------------


def upright(seed: int) -> PointSet:
    return survey(seed, none_of, tilt=np.zeros(len(track())))


@pytest.mark.parametrize(("share", "held"), [(0.09, False), (0.12, True)])
def test_a_limit_that_would_reject_more_than_a_tenth_is_said_first(share: float, held: bool) -> None:
    points = upright(12)
    bad = np.arange(len(points)) < share * len(points)
    points = replace(points, sigma_v=np.where(bad, 0.09, 0.02))
    check, chosen = check_survey(points), check_survey(points, tolerances=TOPOGRAPHIC)
    assert told(check) == (["held_back"] if held else [])
    assert rejected(check, Reason.SIGMA_VERTICAL) == pytest.approx(0 if held else np.mean(bad))
    assert (check.points.status[bad] != Status.USED).all()
    assert rejected(chosen, Reason.SIGMA_VERTICAL) == pytest.approx(np.mean(bad))
    if held:
        assert f"{np.count_nonzero(bad)} points, 12 % of the file" in str(check.first[0])
        assert "sigma_vertical" in str(check.first[0])
        assert "--check topographic" in str(check.first[0])
        assert told(chosen) == ["limit_as_asked"]


def test_points_without_a_fix_are_rejected_where_the_file_shows_them_worse() -> None:
    points = upright(13)
    lost = (np.arange(len(points)) % 100 < 30) & (np.arange(len(points)) > 100)
    points = replace(points, fix=np.where(lost, 5, 4).astype(np.int8))
    same = check_survey(points)
    assert told(same) == ["held_back"]
    assert rejected(same, Reason.NO_FIX) == 0
    assert (same.points.status[lost] == Status.FLAGGED).sum() > 0.95 * lost.sum()
    stated = check_survey(replace(points, sigma_v=np.where(lost, 0.07, 0.015)))
    rough = points.height + np.where(lost, np.random.default_rng(13).normal(0, 0.1, len(points)), 0)
    seen = check_survey(replace(points, height=rough))
    for check in (stated, seen):
        assert told(check) == ["no_fix_worse"]
        assert rejected(check, Reason.NO_FIX) == pytest.approx(np.mean(lost))
    none_fixed = check_survey(replace(points, fix=np.full(len(points), 5, np.int8)))
    assert told(none_fixed) == ["held_back"]


def test_two_limits_at_one_point_each_count_for_themselves() -> None:
    """A point beyond a limit that is held back and beyond one that is not is rejected."""
    points = upright(14)
    bad = np.arange(len(points)) < 0.3 * len(points)
    both = np.arange(len(points)) < 20
    points = replace(points, sigma_v=np.where(bad, 0.09, 0.02), sigma_h=np.where(both, 0.2, 0.01))
    check = check_survey(points)
    assert (check.points.status[both] == Status.REJECTED).all()
    assert (check.points.reasons[both] & np.uint32(Reason.SIGMA_VERTICAL) != 0).all()
    assert np.mean(check.points.status[bad & ~both] == Status.REJECTED) < 0.05
