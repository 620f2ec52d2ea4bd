"""The bars, and what the check reaches of them over many surveys of a family."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Callable, List, Sequence

import numpy as np

from .measure import Measured

CLEAN_REJECTED, CLEAN_FLAGGED = 0.003, 0.03  # of the good points of surveys without a fault
GOOD_REJECTED, GOOD_FLAGGED = 0.005, 0.05  # of those of surveys with faults
LEFT_OUT = 0.001  # of the good points, by the rule for flagged stretches
LEAN_REJECTED = 0.01  # of a clean survey with a rover that compensates tilt
RUN, RUN_SHARE = 5, 0.95  # longest run of good points rejected, in that share of the surveys
RMSE, RMSE_SHARE = 1.05, 0.95
VOLUME, VOLUME_SHARE = 0.015, 0.95
MISSED, MISSED_BARE, MET_REJECTED = 0.005, 0.015, 0.85
LEVELS_TOLD, LEVEL_SIGMA, LEVELS_WITHIN, NO_LEVELS = 0.95, 0.015, 0.93, 0.98
SLIPPED_SHARE = 1.3


@dataclass(frozen=True)
class Figure:
    """One figure of a family, its bar in words ("" for none) and whether it is held."""

    name: str
    value: float
    shown: str
    bar: str = ""
    held: bool = True

    def __str__(self) -> str:
        return f"{self.name} {self.shown}" + (f" ({self.bar}{'' if self.held else ' MISSED'})" if self.bar else "")


def _share(name: str, part: float, whole: float, most: float = np.nan, least: float = np.nan) -> Figure:
    value = part / whole if whole else float("nan")
    shown = f"{value:.2%}" if whole else "-"
    if whole and most == most:
        return Figure(name, value, shown, f"≤ {most:.1%}", value <= most)
    if whole and least == least:
        return Figure(name, value, shown, f"≥ {least:.0%}", value >= least)
    return Figure(name, value, shown)


def figures(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    """The figures of one family that its surveys have."""
    done = [each for each in surveys if not each.failed]
    failed = len(surveys) - len(done)
    result = [Figure("did not end", failed, str(failed), "none", failed == 0)] if failed else []
    if done:
        for part in (_good, _surface, _volumes, _faults, _levels, _slipped):
            result += part(family, done)
        seconds = np.array([each.seconds for each in done])
        shown = f"{np.mean(seconds):.2f} s, worst {seconds.max():.2f}"
        result.append(Figure("time", float(np.mean(seconds)), shown))
    return result


def line(family: str, surveys: Sequence[Measured]) -> str:
    """One line that tells a family's figures."""
    points = sum(each.points for each in surveys)
    return f"{family}: {len(surveys)} surveys, {points} points; " + "; ".join(map(str, figures(family, surveys)))


def _clean(surveys: Sequence[Measured]) -> bool:
    return not any(each.faults or each.level_points or each.slipped for each in surveys)


def _total(surveys: Sequence[Measured], value: Callable[[Measured], int]) -> int:
    return sum(value(each) for each in surveys)


def _good(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    good = _total(surveys, lambda each: each.good)
    clean = _clean(surveys)
    rejected, flagged = (CLEAN_REJECTED, CLEAN_FLAGGED) if clean else (GOOD_REJECTED, GOOD_FLAGGED)
    if clean and family == "tilt":
        rejected = LEAN_REJECTED
    runs = np.array([each.run for each in surveys])
    free = _share(
        f"no good run > {RUN} rejected in",
        np.count_nonzero(runs <= RUN),
        len(runs),
        least=RUN_SHARE if clean else np.nan,
    )
    left_out = _total(surveys, lambda each: each.left_out)
    return [
        _share(
            f"{left_out} points left out, good", _total(surveys, lambda each: each.good_left_out), good, most=LEFT_OUT
        ),
        _share("good rejected", _total(surveys, lambda each: each.good_rejected), good, most=rejected),
        _share("flagged", _total(surveys, lambda each: each.good_flagged), good, most=flagged),
        Figure(free.name, free.value, f"{free.shown}, worst {runs.max()}", free.bar, free.held),
    ]


def _surface(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    ratio = np.array([each.rmse / each.rmse_without for each in surveys])
    ratio = ratio[~np.isnan(ratio)]
    if not len(ratio):
        return []
    spread = f"median {np.median(ratio):.2f}, worst {ratio.max():.2f}"
    kept = np.array([each.rmse / each.rmse_kept for each in surveys])
    if np.any(kept != 1):
        spread += f", over that with all flagged stretches {np.nanmin(kept):.3f} to {np.nanmax(kept):.3f}"
    if not _clean(surveys):
        return [Figure("RMSE with/without", float(np.median(ratio)), spread)]
    share = _share(f"RMSE ≤ {RMSE} of that without in", np.count_nonzero(ratio <= RMSE), len(ratio), least=RMSE_SHARE)
    return [Figure(share.name, share.value, f"{share.shown}, {spread}", share.bar, share.held)]


def _volumes(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    change = np.abs([value for each in surveys for value in each.volumes])
    if not len(change):
        return []
    bar = VOLUME_SHARE if _clean(surveys) else np.nan  # with faults, the check must change them
    share = _share(f"volumes within {VOLUME:.1%} in", np.count_nonzero(change <= VOLUME), len(change), least=bar)
    spread = f"spread {np.sqrt(np.mean(change**2)):.2%}, worst {change.max():.1%}"
    return [Figure(share.name, share.value, f"{share.shown}, {spread}", share.bar, share.held)]


def _faults(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    faults, met = _total(surveys, lambda each: each.faults), _total(surveys, lambda each: each.met)
    if not faults:
        return []
    most = MISSED_BARE if family.endswith("-bare") else MISSED
    return [
        _share(f"{faults} faults missed", _total(surveys, lambda each: each.faults_missed), faults, most=most),
        _share("rejected", _total(surveys, lambda each: each.faults_rejected), faults),
        _share(f"{met} of three meetings missed", _total(surveys, lambda each: each.met_missed), met),
        _share("rejected", _total(surveys, lambda each: each.met_rejected), met, least=MET_REJECTED),
    ]


def _levels(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    levels, points = _total(surveys, lambda each: each.levels), _total(surveys, lambda each: each.level_points)
    known, free = any(each.levels_known for each in surveys), sum(not each.false_levels for each in surveys)
    result = [_share("surveys without a false level", free, len(surveys), least=NO_LEVELS)] if known else []
    if not levels:
        return result
    lost = _total(surveys, lambda each: each.good_rejected)
    hit = sum(each.good_rejected > 0 for each in surveys)
    kept = _total(surveys, lambda each: each.level_kept)
    result += [
        Figure("right part rejected", lost, f"{lost} points, in {hit} surveys", "none", lost == 0),
        _share(f"{points} points of the wrong level not marked", kept, points),
    ]
    if not known:
        return [
            *result,
            Figure("levels told", 0.0, f"none of {levels}, nothing tells them", f"≥ {LEVELS_TOLD:.0%}", False),
        ]
    told = np.array([each for survey in surveys for each in survey.told]).reshape(-1, 2)
    off, sigma = np.abs(told[:, 0]), told[:, 1]
    result += [
        _share(f"{levels} levels told with sigma ≤ {1e3 * LEVEL_SIGMA:.0f} mm",
               np.count_nonzero(sigma <= LEVEL_SIGMA), levels, least=LEVELS_TOLD),
        _share("told at all", len(told), levels),
        _share("size within 2 sigma", np.count_nonzero(off <= 2 * sigma), len(told), least=LEVELS_WITHIN),
    ]  # fmt: skip
    if len(told):
        result.append(Figure("median sigma", float(np.median(sigma)), f"{1e3 * np.median(sigma):.1f} mm"))
    return result


def _slipped(family: str, surveys: Sequence[Measured]) -> List[Figure]:
    slipped = _total(surveys, lambda each: each.slipped)
    if not slipped:
        return []
    shares = np.array([each.share for each in surveys if each.slipped])
    result = [_share(f"{slipped} slipped lines found", _total(surveys, lambda each: each.slipped_found), slipped,
                     least=1.0)]  # fmt: skip
    for name, column in (("time", shares[:, 0]), ("memory", shares[:, 1])):
        worst = float(np.median(column))
        shown = f"median {worst:.2f}, worst {column.max():.2f}"
        result.append(Figure(f"{name} over clean", worst, shown, f"≤ {SLIPPED_SHARE}", worst <= SLIPPED_SHARE))
    return result
