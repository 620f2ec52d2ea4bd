"""What the check makes of one survey of a family, measured against its truth."""

from __future__ import annotations

import signal
import time
import tracemalloc
from dataclasses import dataclass, replace
from types import FrameType
from typing import Any, Callable, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from plugin.core.linework.codes import default_code_table
from plugin.core.linework.join import join_lines
from plugin.core.points.pointset import PointSet, Reason, Status
from plugin.core.quality.check import SurveyCheck, check_survey
from plugin.core.quality.judgement import judge
from plugin.core.surface.ask import ask_surface
from plugin.core.surface.build import SurfaceOptions, build_surface
from plugin.core.surface.crossings import CrossingRule
from plugin.core.surface.tin import Tin

from . import simulate
from .survey import Level, Survey

MET = 3  # meetings that decide a fault
NEAR = 60  # points that a level may be told too early or too late
SEEN = 1.5  # m: how far from a point the surface is asked, at least
GRID = 0.5  # m between the places it is asked at
_AGAIN = 0.02  # s of processor time after which a check out of time is stopped once more
SLIPPED = ("stray", "swapped", "zero")  # faults of whole lines of the file


@dataclass(frozen=True)
class Measured:
    """Counts of points of one survey, and figures of its surfaces with and without the check.

    ``run``: longest run of good points rejected. ``faults``: off by 4 sigma or more, not by a level or a whole line;
    ``met``: of these the ones with three meetings. ``left_out``: points in flagged stretches left out of the surface.
    ``rmse``, ``rmse_without``: m; ``rmse_kept``: with the check, flagged stretches in the surface. ``volumes``: each
    mound's volume with the check over that without it, less 1. ``told``: offset less truth and sigma (m) of each level
    that was told; ``false_levels``: told where there is none. ``slipped``: stray, swapped and zero lines. ``share``:
    time and memory of check, surface and coverage over those of the file without these, inf where they fail,
    ``share_failed`` says why. ``seconds``: processor time of the check. ``failed``: what kept the check from ending.
    """

    seed: int
    what: str
    points: int
    good: int = 0
    good_rejected: int = 0
    good_flagged: int = 0
    good_left_out: int = 0
    left_out: int = 0
    run: int = 0
    faults: int = 0
    faults_missed: int = 0
    faults_rejected: int = 0
    met: int = 0
    met_missed: int = 0
    met_rejected: int = 0
    level_points: int = 0
    level_kept: int = 0
    levels: int = 0
    told: Tuple[Tuple[float, float], ...] = ()
    false_levels: int = 0
    levels_known: bool = False
    rmse: float = float("nan")
    rmse_without: float = float("nan")
    rmse_kept: float = float("nan")
    volumes: Tuple[float, ...] = ()
    slipped: int = 0
    slipped_found: int = 0
    share: Tuple[float, float] = (float("nan"), float("nan"))
    share_failed: str = ""
    seconds: float = float("nan")
    failed: str = ""


class OutOfTimeError(Exception):
    """The check took too long."""


def measure(family: str, seed: int, limit: float = 60.0, surfaces: bool = True) -> Measured:
    """Simulate, check and measure one survey; ``limit``: seconds of processor time for the check."""
    survey = simulate(family, seed)
    try:
        check, seconds = _timed(lambda: _check(survey.points), limit)
    except Exception as error:  # whatever ends a check is what is measured here
        return Measured(seed, survey.what, len(survey.points), failed=_name(error))
    status, good = check.points.status, ~survey.wrong
    rejected, missed = status == Status.REJECTED, status == Status.USED
    level, slipped = survey.fault == "level", np.isin(survey.fault, SLIPPED)
    fault = survey.wrong & ~level & ~slipped & survey.large
    met = fault & (survey.meetings >= MET)
    told, false = _levels(check, survey)
    asked = surfaces and not slipped.any()
    rmse, rmse_without, volumes = _surfaces(check, survey) if asked else (np.nan, np.nan, ())
    rmse_kept = _surfaces(_all_kept(check), survey)[0] if asked and check.points.left_out.any() else rmse
    share, why = _shares(survey, ~slipped, limit)

    def count(mask: np.ndarray) -> int:
        return int(np.count_nonzero(mask))

    return Measured(
        seed, survey.what, len(survey.points),
        good=count(good), good_rejected=count(good & rejected), good_flagged=count(good & (status == Status.FLAGGED)),
        good_left_out=count(good & check.points.left_out), left_out=count(check.points.left_out),
        run=longest_run(good & rejected),
        faults=count(fault), faults_missed=count(fault & missed), faults_rejected=count(fault & rejected),
        met=count(met), met_missed=count(met & missed), met_rejected=count(met & rejected),
        level_points=count(level), level_kept=count(level & missed), levels=len(survey.levels), told=told,
        false_levels=false, levels_known=hasattr(check, "levels"),
        rmse=rmse, rmse_without=rmse_without, rmse_kept=rmse_kept, volumes=volumes,
        slipped=count(slipped), slipped_found=count(slipped & ~missed),
        share=share, share_failed=why,
        seconds=seconds,
    )  # fmt: skip


def _all_kept(check: SurveyCheck) -> SurveyCheck:
    """The same check with its flagged stretches in the surface."""
    reasons = check.points.reasons & ~np.uint32(Reason.LEFT_OUT)
    return replace(check, points=check.points.with_status(check.points.status, reasons))


def _name(error: Exception) -> str:
    return "out of time" if isinstance(error, OutOfTimeError) else f"{type(error).__name__}: {error}"


def longest_run(mask: np.ndarray) -> int:
    """Length of the longest run of points of a mask."""
    ends = np.flatnonzero(np.diff(np.concatenate([[0], mask.astype(np.int8), [0]])))
    return int((ends[1::2] - ends[::2]).max()) if len(ends) else 0


def _check(points: PointSet) -> SurveyCheck:
    """As the main job checks."""
    return check_survey(points, default_code_table())


def _timed(work: Callable[[], Any], limit: float) -> Tuple[Any, float]:
    """Result and processor time; raises OutOfTimeError after ``limit`` seconds.

    What is raised within a callback or a ``__del__`` is lost there, so the timer fires again and again; and work that
    ends late all the same, or with another error for it, was out of time too.
    """
    running, stopped = [True], []

    def stop(number: int, frame: Optional[FrameType]) -> None:
        stopped.append(True)
        if running:
            raise OutOfTimeError

    before = signal.signal(signal.SIGPROF, stop)
    begin = time.process_time()
    signal.setitimer(signal.ITIMER_PROF, limit, _AGAIN)
    try:
        try:
            result = work()
        finally:  # a last signal may come before this is done; the next one is far off by then
            running.clear()
    except Exception as error:
        if stopped:
            raise OutOfTimeError from error
        raise
    finally:
        running.clear()
        signal.setitimer(signal.ITIMER_PROF, 0)
        signal.signal(signal.SIGPROF, before)
    if stopped:
        raise OutOfTimeError
    return result, time.process_time() - begin


# --- slipped lines ----------------------------------------------------------------------------------


def _job(points: PointSet) -> None:
    """Check, surface and coverage, as the main job has them one after the other."""
    checked = _check(points).points
    judge(_surface(checked), checked)


def _peak(points: PointSet, limit: float) -> float:
    """Most bytes that check, surface and coverage of ``points`` hold at once."""
    tracemalloc.start()
    try:
        _timed(lambda: _job(points), limit)
        return float(tracemalloc.get_traced_memory()[1])
    finally:
        tracemalloc.stop()


def _shares(survey: Survey, clean: np.ndarray, limit: float) -> Tuple[Tuple[float, float], str]:
    """Time and memory of check, surface and coverage over those without the slipped lines; inf and why they fail.

    The time is the less of two, since other work on the machine only adds to it.
    """
    if clean.all():
        return (float("nan"), float("nan")), ""
    points = survey.points.select(clean)
    usual = min(_timed(lambda: _job(points), limit)[1] for _ in range(2))
    try:
        seconds = min(_timed(lambda: _job(survey.points), limit)[1] for _ in range(2))
        return (seconds / usual, _peak(survey.points, limit) / _peak(points, limit)), ""
    except Exception as error:  # out of time or memory, or a fault that only such a line brings out
        return (float("inf"), float("inf")), _name(error)


# --- levels -----------------------------------------------------------------------------------------


def _levels(check: SurveyCheck, survey: Survey) -> Tuple[Tuple[Tuple[float, float], ...], int]:
    """Offset less truth and sigma of each change that was told, and how many were told that are none.

    The check's ``levels``, where it has any, are taken one by one: each has ``first_line``, the line of the file from
    which heights are ``offset`` (m) higher than before, with standard deviation ``sigma``.
    """
    said = [(int(np.searchsorted(survey.points.source_line, each.first_line)), float(each.offset), float(each.sigma))
            for each in getattr(check, "levels", ())]  # fmt: skip
    told = []
    for level in survey.levels:
        mates = [each for each in said if _same(level, each[0], each[1])]
        if mates:
            best = min(mates, key=lambda each: abs(each[1] - level.offset))
            said.remove(best)
            told.append((best[1] - level.offset, best[2]))
    return tuple(told), len(said)


def _same(level: Level, first: int, offset: float) -> bool:
    """Whether a change told at point ``first`` is ``level``: about there, and not of another kind altogether."""
    return abs(first - level.first) <= NEAR and 0.5 * abs(level.offset) <= offset * np.sign(level.offset) <= 2 * abs(
        level.offset
    )


# --- surfaces ---------------------------------------------------------------------------------------


def _surfaces(check: SurveyCheck, survey: Survey) -> Tuple[float, float, Tuple[float, ...]]:
    """RMSE of the surface with the check and without it, and how much each mound's volume is changed by it (share)."""
    plan = np.column_stack([survey.points.easting, survey.points.northing])
    if np.count_nonzero(check.points.used) < 10:
        return float("inf"), 1.0, tuple(-1.0 for _ in survey.mounds)  # nothing is left of it
    tins = [_surface(check.points), _surface(survey.points)]
    places = _places(plan, max(SEEN, 0.6 * survey.passes))
    truth = survey.truth(*places.T)
    with_check, without = (float(np.sqrt(np.mean((_heights(tin, places) - truth) ** 2))) for tin in tins)
    volumes = []
    for mound in survey.mounds:
        step = np.arange(-mound.reach - 0.5, mound.reach + 0.5, GRID / 2)
        square = np.column_stack([each.ravel() for each in np.meshgrid(step, step)])
        disc = square[np.hypot(*square.T) < mound.reach + 0.5] + mound.place
        ours, theirs = (float(np.sum(_heights(tin, disc) - survey.base(*disc.T))) for tin in tins)
        volumes.append(ours / theirs - 1)
    return with_check, without, tuple(volumes)


def _surface(points: PointSet) -> Tin:
    linework = join_lines(points, default_code_table())
    return build_surface(linework.points, linework.constraints, SurfaceOptions(crossing=CrossingRule.MEAN)).tin


def _places(plan: np.ndarray, reach: float) -> np.ndarray:
    """Places (k, 2) of a grid no farther than ``reach`` (m) from the points ``plan``."""
    low, high = plan.min(axis=0), plan.max(axis=0)
    grid = np.meshgrid(*(np.arange(low[k], high[k], GRID) for k in (0, 1)))
    places = np.column_stack([each.ravel() for each in grid])
    return places[cKDTree(plan).query(places, distance_upper_bound=reach)[0] <= reach]


def _heights(tin: Tin, places: np.ndarray) -> np.ndarray:
    """Heights (k,) of the surface, beside it those of the nearest vertex."""
    heights: np.ndarray = ask_surface(tin, places).height
    beside = np.flatnonzero(~np.isfinite(heights))
    nearest = cKDTree(tin.vertices[:, :2]).query(places[beside] - tin.origin)[1]
    heights[beside] = tin.vertices[nearest, 2]
    return heights
