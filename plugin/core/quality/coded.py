"""Coded lines held to what passes them: runs of points that stand off their line and off the ground beside it.

A line is not ground like any other: a kerb's foot lies off the ground on one side by the kerb, a wall's top on
both. So each line is held to the ground to its left and to its right (:mod:`.line_ground`), less the difference it
usually has to either. Other lines beside it, a kerb's top beside its foot, count as that ground. A lift moves a run
of points against both sides and steps at its ends; a dropped kerb or a drive moves it against one side only, a ramp
does not step.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from ..linework.constraints import ConstraintLine, Constraints, LineKind
from .line_ground import Around, Side, sides_of, stations_of
from .line_runs import Heights, Run, find_runs, settle
from .noise import robust_sigma
from .walk import plain_tree

#: Standard deviations of a height from which a run counts.
COUNTS = 4.0
_FEWEST = 5  # points of a line
_KNOWN = 0.06  # m: ground of which more is in doubt says nothing of a point
_SHARE = 0.5  # of a line's points over known ground: it is held to the ground, else to itself
_OFF = 0.6  # of the offset: a side says off
_CLEAR, _BOTH, _ALIKE = 2.5, 1.8, 2.0  # standard deviations: of one side, of each of both, between the two
_NOT = 0.4  # of the offset: a side says ground
_APART = 0.4  # of the larger: what two sides may differ by
_FREE = 0.15  # m: a line this high over both sides is no ground, but a wall's top, which may step as it likes
_GAP = 1.3  # of the height of a kerb: what lowering it may make, at most
_DRIVE = 8.0  # m: no drive is wider (common practice, no source)
_GROSS = 0.25  # m; no kerb stone or gully makes such a spike at one point of a line
_OWN_SLOPE = 0.3  # usual slope of a line
_NARROW, _WIDE = 2.0, 4.0  # m: how far beside a line the ground is asked
_LONG = 300.0  # m: longer lines are held to the ground in parts


@dataclass(frozen=True)
class LineFault:
    """A run of points of a coded line off it: ``index`` (k,) into the points, ``offset`` and its ``sigma`` (m).

    ``sure``: to be rejected; else to be looked at.
    """

    index: np.ndarray
    offset: float
    sigma: float
    sure: bool


@dataclass(frozen=True)
class _Held:
    """A line's points held to one side: ``off`` (k,) over the ground less what is usual, ``sigma`` (k,) of it.

    ``drift``: how it scatters, m. ``rise``: the line's usual height over what is right beside it, m.
    ``seen``: (k,) bool, a pass has points right beside.
    """

    off: np.ndarray
    sigma: np.ndarray
    drift: float
    rise: float
    seen: np.ndarray

    def lowers(self, offset: float) -> bool:
        """Whether a run off by ``offset`` may be a kerb that is lowered there."""
        return offset * self.rise < 0 and abs(offset) < _GAP * abs(self.rise)


def find_line_faults(
    constraints: Constraints, ground: np.ndarray, noise: float, total: float, passes: float
) -> List[LineFault]:
    """Runs off their breakline. A boundary runs over kerbs and ditches, so its points are left alone.

    ``ground``: (g, 3) trusted points of the walk, m. ``noise``: standard deviation of a height from point to point,
    ``total``: of all of it. ``passes``: distance of the passes, m; nan for unknown.
    """
    lines = [each for each in constraints.lines if each.kind & LineKind.BREAKLINE and np.isfinite(each.xyz).all()]
    if not lines:
        return []
    around = _around(lines, ground)
    reach = float(np.clip(np.nan_to_num(passes, nan=_NARROW), _NARROW, _WIDE))
    found: List[LineFault] = []
    for number, line in enumerate(lines):
        measured = np.flatnonzero(line.points >= 0)
        if len(measured) > 1 and line.points[measured[0]] == line.points[measured[-1]]:
            measured = measured[:-1]  # a closed line's first point again
        for part in _parts(line.xyz[measured, :2]):
            some = measured[part]
            if len(some) >= _FEWEST:
                found += _faults_of(line.xyz[some], line.points[some], around, number, reach, noise, total)
    return _worst(found)


def _worst(found: List[LineFault]) -> List[LineFault]:
    """Without those whose points others tell of already: a point may be on several lines."""
    taken: set = set()
    result = []
    for fault in sorted(found, key=lambda each: (not each.sure, -abs(each.offset) / each.sigma)):
        fresh = np.array([k for k in fault.index.tolist() if k not in taken], np.int64)
        taken.update(fresh.tolist())
        if len(fresh):
            result.append(LineFault(fresh, fault.offset, fault.sigma, fault.sure))
    return result


def _around(lines: List[ConstraintLine], ground: np.ndarray) -> Around:
    own = [line.xyz[line.points >= 0] for line in lines]
    xyz = np.vstack([ground, *own])
    number = np.append(np.full(len(ground), -1), np.repeat(np.arange(len(lines)), [len(each) for each in own]))
    return Around(xyz, number, plain_tree(xyz[:, :2]))


def _parts(xy: np.ndarray) -> List[np.ndarray]:
    """Indices of the vertices of each part of a line, parts being of about the same length."""
    station = stations_of(xy)
    count = max(int(np.ceil(station[-1] / _LONG)), 1) if len(station) else 1
    part = np.minimum((station / max(station[-1], 1e-9) * count).astype(np.int64), count - 1)
    return [np.flatnonzero(part == k) for k in range(count)]


def _faults_of(
    xyz: np.ndarray, points: np.ndarray, around: Around, number: int, reach: float, noise: float, total: float
) -> List[LineFault]:
    sides = [_hold(xyz[:, 2], side) for side in sides_of(xyz, around, number, reach, noise)]
    known = [each for each in sides if each is not None]
    station = stations_of(xyz[:, :2])
    if known:
        heights = _over_ground(station, known, noise)
        judged = [(run, _judge(run, known, heights)) for run in _runs(heights, xyz[:, 2], total)]
    else:
        heights = _over_itself(station, xyz[:, 2], noise)
        judged = [(run, _alone(run)) for run in _runs(heights, xyz[:, 2], total)]
    return [
        LineFault(points[run.start : run.end], run.offset, run.sigma, sure) for run, sure in judged if sure is not None
    ]


def _runs(heights: Heights, z: np.ndarray, total: float) -> List[Run]:
    found = (settle(run, heights.station, z) for run in find_runs(heights, COUNTS * total))
    return [run for run in found if run is not None]


def _hold(z: np.ndarray, side: Side) -> Optional[_Held]:
    """The line's heights ``z`` (k,) over one side, None where too little is known of it."""
    known = side.sigma < _KNOWN
    if np.count_nonzero(known) < max(_FEWEST, _SHARE * len(z)):
        return None
    off = z - side.height
    usual, drift = _usual(off[known])
    return _Held(off - usual, side.sigma, drift, side.rise if np.isfinite(side.rise) else usual, side.seen)


def _usual(values: np.ndarray) -> Tuple[float, float]:
    """Middle of the shortest interval that holds half of the values, made better by those near it, and their scatter.

    The shortest half (Grübel 1988) stays with the good ones while up to half of them are off.
    """
    ordered = np.sort(values)
    half = len(ordered) // 2 + 1
    width = ordered[half - 1 :] - ordered[: len(ordered) - half + 1]
    at = int(np.argmin(width))
    middle = float((ordered[at] + ordered[at + half - 1]) / 2)
    sigma = max(float(width[at]) / 2 / 0.6745, 1e-4)
    near = values[np.abs(values - middle) < 3 * sigma]
    return float(near.mean()), max(float(robust_sigma(near)), 1e-4) if len(near) > 2 else sigma


def _over_ground(station: np.ndarray, sides: List[_Held], noise: float) -> Heights:
    """Both sides in one: their mean where they agree, else what is nearer to the usual."""
    if len(sides) == 1:
        off, doubt = sides[0].off, sides[0].sigma
    else:
        a, b = sides
        va, vb = a.sigma**2 + a.drift**2, b.sigma**2 + b.drift**2
        mean = np.where(np.isfinite(va), a.off / va, 0) + np.where(np.isfinite(vb), b.off / vb, 0)
        mean = mean / (1 / va + 1 / vb)
        agree = np.abs(a.off - b.off) < _CLEAR * np.sqrt(va + vb)
        nearer = np.where(a.off * b.off <= 0, 0.0, np.where(np.abs(a.off) < np.abs(b.off), a.off, b.off))
        off = np.where(agree | ~np.isfinite(va + vb), mean, nearer)
        doubt = np.minimum(a.sigma, b.sigma)
    drift = max(noise, min(each.drift for each in sides))
    white = max(noise, min(robust_sigma(np.diff(off)) / np.sqrt(2), drift))
    return Heights(station, off, np.minimum(doubt, 10.0), white, drift, 0.01)


def _over_itself(station: np.ndarray, z: np.ndarray, noise: float) -> Heights:
    """A line without ground beside it: against its own slope, the noise being how it bends from point to point."""
    bend = _bends(station, z)
    white = max(noise, robust_sigma(bend) / np.sqrt(1.5))
    return Heights(station, z - float(np.median(z)), np.zeros(len(z)), white, 100.0, _OWN_SLOPE)


def _bends(station: np.ndarray, z: np.ndarray) -> np.ndarray:
    """Height (k - 2,) of each inner point over the straight line between its neighbours."""
    width = np.maximum(station[2:] - station[:-2], 1e-9)
    share = (station[1:-1] - station[:-2]) / width
    result: np.ndarray = z[1:-1] - (1 - share) * z[:-2] - share * z[2:]
    return result


def _judge(run: Run, sides: List[_Held], heights: Heights) -> Optional[bool]:
    """True: off for sure. False: to be looked at. None: let be."""
    some, size = slice(run.start, run.end), abs(run.offset)
    says = np.array([float(np.median(side.off[some])) for side in sides])
    sigma = np.array([_doubt(side, some, heights.white) for side in sides])
    if np.any((np.abs(says) < _NOT * size) & (sigma < _NOT * size)):
        return None
    off = (says * run.offset > 0) & (
        np.abs(says) > np.maximum(_OFF * size, (_CLEAR if len(sides) == 1 else _BOTH) * sigma)
    )
    spread = float(np.ptp(says))
    agree = spread < max(_APART * np.abs(says).max(), _ALIKE * float(np.hypot(*sigma)) if len(sides) > 1 else 0.0)
    lowered = any(side.lowers(float(said)) for side, said in zip(sides, says))
    if off.all() and agree and not all(side.rise > _FREE for side in sides):
        # What may be a kerb that is lowered is off only where it is longer than a drive and passes went by.
        long = heights.station[run.end - 1] - heights.station[run.start] > _DRIVE
        told = long and len(sides) == 2 and all(side.seen[some].any() for side in sides)
        return told if lowered else len(sides) == 2 or run.steep == run.inner
    if lowered:
        return None
    return False if off.any() or run.steep == run.inner else None


def _doubt(side: _Held, some: slice, white: float) -> float:
    own = white**2 / (some.stop - some.start)
    return float(np.sqrt(np.median(side.sigma[some]) ** 2 + own + side.drift**2))


def _alone(run: Run) -> Optional[bool]:
    """As :func:`_judge` where nothing is known of the ground."""
    if run.steep < run.inner:
        return None
    return bool(run.end - run.start == 1 and run.inner == 2 and abs(run.offset) > _GROSS)
