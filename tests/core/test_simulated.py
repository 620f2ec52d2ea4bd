"""The families of simulated surveys hold what they say, and the measuring of the check counts right."""

from __future__ import annotations

import signal
import time
from types import SimpleNamespace
from typing import Any, cast

import numpy as np
import pytest

from plugin.core.points.pointset import FIX_UNKNOWN
from tests.core.simulated import FAMILIES, Level, Survey, simulate
from tests.core.simulated.ground import Axis
from tests.core.simulated.measure import Measured, OutOfTimeError, _levels, _timed, longest_run, measure
from tests.core.simulated.receiver import slow_sums
from tests.core.simulated.score import figures, line
from tests.core.simulated.walks import crossings_of, meetings_of

SEEDS = (0, 1, 2)
CLEAN = [name for name in FAMILIES if not name.endswith(("-faults", "-lifts", "-wrong", "-changed"))]
CLEAN = [name for name in CLEAN if name not in ("levels", "strays", "mixed", "mixed-bare")]


def even(survey: Survey) -> np.ndarray:
    return survey.error[~survey.wrong & ~survey.at_feature]


@pytest.mark.parametrize("family", FAMILIES)
def test_a_seed_makes_one_survey(family: str) -> None:
    first, again, other = simulate(family, 5), simulate(family, 5), simulate(family, 6)
    for column in ("easting", "northing", "height", "time", "tilt", "code"):
        np.testing.assert_array_equal(getattr(first.points, column), getattr(again.points, column))
    np.testing.assert_array_equal(first.fault, again.fault)
    assert len(first.points) != len(other.points) or not np.array_equal(first.points.height, other.points.height)


@pytest.mark.parametrize("family", FAMILIES)
def test_heights_stand_about_the_truth(family: str) -> None:
    for seed in SEEDS:
        survey = simulate(family, seed)
        points = survey.points
        assert 600 <= len(points) <= 4500
        np.testing.assert_allclose(
            points.height - survey.truth(points.easting, points.northing), survey.error, atol=1e-6
        )
        assert np.array_equal(survey.wrong, survey.fault != "")
        assert np.array_equal(survey.event >= 0, survey.wrong)
        if len(even(survey)) > 150:
            assert 0.6 * survey.sigma < np.std(even(survey)) < 1.6 * survey.sigma


@pytest.mark.parametrize("family", CLEAN)
def test_clean_families_have_no_fault(family: str) -> None:
    for seed in SEEDS:
        survey = simulate(family, seed)
        assert not survey.wrong.any()
        assert not survey.levels


@pytest.mark.parametrize("family", [name for name in FAMILIES if name not in CLEAN])
def test_the_others_have_faults_and_good_points(family: str) -> None:
    for seed in SEEDS:
        assert 0 < np.count_nonzero(simulate(family, seed).wrong) < len(simulate(family, seed).points)


def test_lines_of_a_street_are_walked_along_and_crossed() -> None:
    kinds, bends = set(), 0
    for seed in range(8):
        survey = simulate("street", seed)
        plan = np.column_stack([survey.points.easting, survey.points.northing])
        for each in survey.lines:
            kinds.add(each.kind)
            away = np.hypot(*(plan[:, None] - each.xyz[None, 2:-2, :2]).transpose(2, 0, 1)).min(axis=0)
            assert np.all(away < 0.6)  # a stored point beside each vertex
        ends, middle = survey.lines[0].xyz[[0, -1], :2], survey.lines[0].xyz[20, :2]
        chord, off = ends[1] - ends[0], middle - ends[0]
        bends += abs(chord[0] * off[1] - chord[1] * off[0]) / np.hypot(*chord) > 0.2
        ditch = [each for each in survey.lines if each.kind == "ditch bottom"]
        if ditch:
            depth = survey.base(*ditch[0].xyz.T[:2]) - ditch[0].xyz[:, 2]
            assert 0.29 < np.median(depth) < 0.91
    assert kinds == {"kerb foot", "kerb top", "ditch bottom"}
    assert 2 <= bends <= 7
    assert all(code == "" for code in survey.points.code)


def test_heaps_have_their_volumes_and_passes() -> None:
    for seed in range(6):
        survey = simulate("heaps", seed)
        x, y = survey.points.easting, survey.points.northing
        assert 2 <= len(survey.mounds) <= 4
        for mound in survey.mounds:
            assert 50 <= abs(mound.volume) <= 500
            step = np.arange(-mound.reach - 0.1, mound.reach + 0.1, 0.05)
            e, n = (each.ravel() for each in np.meshgrid(mound.place[0] + step, mound.place[1] + step))
            near = np.hypot(e - mound.place[0], n - mound.place[1]) < mound.reach + 0.05
            raised = (survey.truth(e, n) - survey.base(e, n))[near]
            assert raised.sum() * 0.05**2 == pytest.approx(mound.volume, rel=0.01)
            on = np.abs(survey.truth(x, y) - survey.base(x, y)) > 0.05
            on &= np.hypot(x - mound.place[0], y - mound.place[1]) < mound.reach
            assert np.count_nonzero(np.diff(np.flatnonzero(on)) > 1) + 1 >= 3


def test_levels_change_where_they_say() -> None:
    stops, rest = set(), set()
    for family, most in (("levels", 2.0), ("vehicle-changed", 0.6)):
        for seed in range(12):
            survey = simulate(family, seed)
            level = np.zeros(len(survey.points))
            for each in survey.levels:
                level[each.first :] += each.offset
                stops.add(each.stop)
                time = survey.points.time
                if each.stop and np.isfinite(time).all():
                    assert time[each.first] - time[each.first - 1] > 59
            rest.add(len(survey.levels))
            size = abs(survey.levels[0].offset)
            assert 0.1 <= size <= most
            np.testing.assert_array_equal(level != 0, survey.wrong)
            assert np.std((survey.error - level)[~survey.at_feature]) < 1.7 * survey.sigma + 0.02  # places may be off
            crossings = crossings_of(survey.points.easting, survey.points.northing, survey.wrong)
            assert crossings >= 8  # 10 of the true track
    assert stops == {True, False}
    assert rest == {1, 2}


def test_tilt_is_compensated_or_not() -> None:
    survey = simulate("tilt", 0)
    lean = simulate("tilt", 1).points.tilt
    assert np.nanmin(lean) >= 5
    assert np.nanmax(lean) <= 45
    assert np.mean(lean > 8) > 0.1
    assert np.std(even(survey)) < 1.5 * survey.sigma
    shares = []
    for seed in range(6):
        survey = simulate("tilt-wrong", seed)
        shares.append(np.mean(survey.wrong))
        tilted = survey.wrong & np.isfinite(survey.points.tilt)
        if "field" not in survey.what:
            continue  # a shift over a kerb makes more than the tilt does
        low = 2 * (1 - np.cos(np.radians(survey.points.tilt[tilted])))
        slope = 2 * np.sin(np.radians(survey.points.tilt[tilted])) * 0.25  # what the place adds on a slope
        assert np.all(np.abs(survey.error[tilted] + low) < slope + 6 * survey.sigma)
    assert min(shares) < 0.4


def test_strays_are_far_away() -> None:
    kinds = set()
    for seed in range(10):
        survey = simulate("strays", seed)
        kinds |= set(survey.fault[survey.wrong])
        x, y = survey.points.easting, survey.points.northing
        away = np.hypot(x - np.median(x), y - np.median(y))
        assert 1 <= np.count_nonzero(survey.wrong) <= 5
        assert np.all(away[survey.wrong] > 150)
        assert np.all(away[~survey.wrong] < 150)
        swapped = survey.fault == "swapped"
        assert np.all(x[swapped] > y[swapped])
    assert kinds == {"stray", "swapped", "zero"}


def test_bare_surveys_have_no_column_of_the_receiver() -> None:
    points = simulate("mixed-bare", 3).points
    for name in ("time", "sigma_h", "sigma_v", "tilt"):
        assert np.isnan(getattr(points, name)).all()
    assert np.all(points.fix == FIX_UNKNOWN)
    assert not points.extra
    assert np.any(simulate("mixed", 3).points.fix != FIX_UNKNOWN)


def test_coded_lines_are_lifted() -> None:
    lifted = 0
    for seed in SEEDS:
        survey = simulate("coded-lifts", seed)
        lifted += np.count_nonzero(survey.wrong & ~survey.walked)
        assert np.all(survey.error[survey.wrong & ~survey.walked] > 0.03)
    assert lifted > 3


def test_slow_sums_have_periods_of_one_to_three_minutes() -> None:
    time = np.arange(0, 7200.0, 2.0)
    for seed in SEEDS:
        waves = slow_sums(time, 0.01, np.random.default_rng(seed))
        assert np.std(waves) == pytest.approx(0.01, rel=0.1)
        power = np.abs(np.fft.rfft(waves * np.hanning(len(time)))) ** 2
        period = 1 / np.maximum(np.fft.rfftfreq(len(time), 2.0), 1e-9)
        assert power[(period > 55) & (period < 190)].sum() > 0.99 * power.sum()


def test_an_axis_leads_there_and_back() -> None:
    u, v = np.array([-30.0, 0.0, 12.0]), np.array([4.0, -3.0, 8.0])
    for bend in (0.0, 1 / 60, -1 / 80):
        axis = Axis((5.0, -2.0), 0.7, bend)
        np.testing.assert_allclose(axis.frame(*axis.place(u, v)), (u, v), atol=1e-9)
    x, y = Axis((0.0, 0.0), 0.0, 1 / 50).place(np.array([25 * np.pi]), np.array([0.0]))
    np.testing.assert_allclose((x[0], y[0]), (50.0, 50.0), atol=1e-9)  # a quarter of a circle of 50 m to the left


def test_meetings_are_other_visits() -> None:
    """One pass along x, then two across it; a third one 3 m beside its middle."""
    x = np.concatenate([np.arange(80) * 0.5, np.full(40, 10.1), np.full(40, 20.1), np.arange(80) * 0.5])
    y = np.concatenate([np.zeros(80), np.linspace(-10, 10, 40), np.linspace(10, -10, 40), np.full(80, 3.02)])
    good, run = np.ones(len(x), bool), np.arange(15, 45)
    good[run] = False
    assert meetings_of(x, y, run, good, 0.4) == 2
    assert meetings_of(x, y, run, good, 3.1) == 2 + 2  # 15 m beside it count for two
    late = np.zeros(len(x), bool)
    late[160:] = True
    assert crossings_of(x, y, late) == 2


def test_the_longest_run_is_counted() -> None:
    assert longest_run(np.array([1, 1, 0, 1, 1, 1, 0], bool)) == 3
    assert longest_run(np.ones(4, bool)) == 4
    assert longest_run(np.zeros(4, bool)) == 0


def test_levels_are_matched_by_place_and_size() -> None:
    truth = SimpleNamespace(
        points=SimpleNamespace(source_line=np.arange(2, 1002)), levels=(Level(300, 0.2, True), Level(700, -0.2, False))
    )
    told = [(310, 0.207, 0.006), (705, 0.2, 0.006), (20, -0.2, 0.006)]  # the second has the wrong sign
    check = SimpleNamespace(levels=[SimpleNamespace(first_line=a, offset=b, sigma=c) for a, b, c in told])
    found, false = _levels(cast(Any, check), cast(Any, truth))
    assert found == ((pytest.approx(0.007), 0.006),)
    assert false == 2
    assert _levels(cast(Any, SimpleNamespace()), cast(Any, truth)) == ((), 0)


def test_figures_beyond_their_bars_are_named() -> None:
    fine = Measured(1, "a", 1000, good=1000, good_rejected=2, good_flagged=20, run=2, rmse=0.01, rmse_without=0.01)
    bad = Measured(2, "b", 1000, good=1000, good_rejected=40, good_flagged=20, run=40, rmse=0.02, rmse_without=0.01)
    assert "MISSED" not in line("street", [fine])
    missed = {each.name for each in figures("street", [fine, bad]) if not each.held}
    assert missed == {"good rejected", "no good run > 5 rejected in", "RMSE ≤ 1.05 of that without in"}
    assert "did not end 1 (none MISSED)" in line("street", [fine, Measured(3, "c", 1000, failed="out of time")])


def test_a_survey_is_measured() -> None:
    each = measure("field", 1)
    assert not each.failed
    assert each.good == each.points
    assert each.faults == 0
    assert 0.002 < each.rmse_without < 0.05
    assert each.rmse == pytest.approx(each.rmse_without, rel=0.05)
    assert measure("field", 1, limit=0.001).failed == "out of time"


def spin(seconds: float) -> None:
    end = time.process_time() + seconds
    while time.process_time() < end:
        pass


def test_work_that_swallows_what_stops_it_is_stopped_again() -> None:
    handler, begin = signal.getsignal(signal.SIGPROF), time.process_time()

    def deaf() -> None:
        for _ in range(5):
            try:
                spin(2.0)
            except OutOfTimeError:  # as in a callback or a __del__
                continue

    with pytest.raises(OutOfTimeError):
        _timed(deaf, 0.02)
    assert time.process_time() - begin < 1.5
    assert signal.getsignal(signal.SIGPROF) == handler
    assert signal.getitimer(signal.ITIMER_PROF)[0] == 0.0


def test_work_that_ends_late_or_with_another_error_was_out_of_time() -> None:
    def other() -> None:
        try:
            spin(2.0)
        except OutOfTimeError as error:
            raise ValueError from error

    with pytest.raises(OutOfTimeError):
        _timed(other, 0.02)
    with pytest.raises(ZeroDivisionError):
        _timed(lambda: 1 / 0, 5.0)
    assert _timed(lambda: 7, 5.0)[0] == 7
