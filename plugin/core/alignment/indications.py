"""Indications for a street: does the crossfall lead to the kerb, does water stand in the gutter, how far does one see.

None of these is a proof; each result carries its cautions.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from scipy.sparse import csr_matrix

from ..confidence import NORMAL_95
from ..messages import Message, message
from ..surface.tin import Tin
from .curves import FittedProfile, VerticalCurve
from .grades import WindowSlopes, grades
from .line import Alignment
from .parts import Part, PartSlopes
from .profile import HeightLine, make_profile
from .rules import LeastK
from .slopes import LinearForms, Sigma, height_forms
from .standing import StandingWater
from .texts import GUTTER_CAUTION, SIGHT_CAUTION, WINDOW_CAUTION
from .verdicts import Verdict, judge


@dataclass(frozen=True)
class KerbFall:
    """Fall of the lane from its crown to the edge on one side, by window.

    ``slopes``: the fall as a ratio in its ``value`` (w,), positive where water runs to the kerb; ``verdict``: (w,)
    whether the fall is at least what was asked for.
    """

    slopes: WindowSlopes
    verdict: np.ndarray
    messages: Tuple[Message, ...]


def fall_to_kerb(crossfall: PartSlopes, part: Part, least: float = 0.0) -> KerbFall:
    """Whether a lane falls by at least ``least`` (ratio) to its left or right edge (``part``): from its crown, or over
    all of it where it has one fall.
    """
    edge = crossfall.at_edge(part)
    slopes = replace(edge, value=edge.value if part is Part.LEFT else -edge.value)
    return KerbFall(slopes, judge(slopes.value, slopes.sigma, least, True), (message(WINDOW_CAUTION),))


class KerbFlow(Enum):
    """Where the crossfall of a lane leads water; ``value`` is a word for programs.

    ``NEITHER``: neither half falls as much as it should, so water stays on the lane or runs along it.
    """

    BOTH = "both"
    LEFT = "left"
    RIGHT = "right"
    NEITHER = "neither"
    UNSURE = "unsure"
    NO_SURFACE = "no_surface"


@dataclass(frozen=True)
class KerbFlows:
    """``flow``: (w,) of :class:`KerbFlow` for the windows of both halves of a lane, which are the same."""

    left: KerbFall
    right: KerbFall
    flow: np.ndarray
    messages: Tuple[Message, ...]


_FLOWS = {
    (Verdict.PASS, Verdict.PASS): KerbFlow.BOTH,
    (Verdict.PASS, Verdict.FAIL): KerbFlow.LEFT,
    (Verdict.FAIL, Verdict.PASS): KerbFlow.RIGHT,
    (Verdict.FAIL, Verdict.FAIL): KerbFlow.NEITHER,
}


def flow_to_kerbs(crossfall: PartSlopes, least: float = 0.005) -> KerbFlows:
    """To which edge a lane falls, by at least ``least`` (ratio).

    Each half, from the crown to its edge, is judged by itself: a lane that falls to one side passes on that side only.
    """
    left, right = (fall_to_kerb(crossfall, part, least) for part in (Part.LEFT, Part.RIGHT))
    both = list(zip(left.verdict, right.verdict))
    found = [KerbFlow.NO_SURFACE if Verdict.NO_SURFACE in pair else _FLOWS.get(pair, KerbFlow.UNSURE) for pair in both]
    flow = np.empty(len(found), object)
    flow[:] = found
    return KerbFlows(left, right, flow, left.messages)


@dataclass(frozen=True)
class LowPoint:
    """Where water stands along a line: between distances ``begin`` and ``end`` (m), deepest at ``at``.

    ``depth``: metres below the sill over which the water runs off, which is beside distance ``sill`` (m) of the line at
    offset ``sill_offset`` (m, right positive); ``sigma`` of the depth.
    """

    begin: float
    end: float
    at: float
    sill: float
    sill_offset: float
    depth: float
    sigma: float


@dataclass(frozen=True)
class Gutter:
    """The gutter at ``offset``: its low points, and windows judged for a least grade (``verdict``: (w,))."""

    offset: float
    low_points: Tuple[LowPoint, ...]
    slopes: WindowSlopes
    verdict: np.ndarray
    messages: Tuple[Message, ...]


def check_gutter(
    line: Alignment,
    tin: Tin,
    sigma: Sigma,
    offset: float,
    least_grade: float = 0.005,
    window: float = 5.0,
    least_sigmas: float = NORMAL_95,
    water: Optional[StandingWater] = None,
) -> Gutter:
    """Low points and flat stretches along the parallel of ``line`` at ``offset`` (m, right positive).

    Low points shallower than ``least_sigmas`` of their own standard deviations are noise and left out.
    ``least_grade``: ratio below which a gutter is flat. ``water``: what stands on the surface, worked out where None.
    Errors as :func:`.profile.make_profile` and :func:`.grades.grades`.
    """
    profile = make_profile(line, [("", tin)], offset).surfaces[0]
    slopes = grades(line, tin, sigma, min(window, line.length), offset=offset)
    found = low_points(line, tin, sigma, profile, offset, least_sigmas, water)
    verdict = judge(np.abs(slopes.value), slopes.sigma, least_grade, True)
    return Gutter(offset, found, slopes, verdict, (message(GUTTER_CAUTION), message(WINDOW_CAUTION)))


def low_points(
    line: Alignment, tin: Tin, sigma: Sigma, profile: HeightLine, offset: float, least_sigmas: float,
    water: Optional[StandingWater] = None,
) -> Tuple[LowPoint, ...]:  # fmt: skip
    """Hollows of each part of ``profile``, as deep as water stands in them on the surface.

    Water runs off over the lowest sill around, along the gutter, over the kerb or over the crown, beyond the rim of the
    surface, and into inlets. Beyond a part's ends water is free to run off.
    """
    hollows = [hollow for distance, height in profile.parts() for hollow in _hollows(distance, height)]
    if not hollows:
        return ()
    water = StandingWater(tin) if water is None else water
    at = np.array([hollow.at for hollow in hollows])
    places = _on_parallel(line, at, offset)
    level, sill = water.at(places)
    low = height_forms(tin, places)
    depth = level - low.values(tin)
    brim = height_forms(tin, tin.vertices[np.maximum(sill, 0), :2] + tin.origin)
    doubt = LinearForms(csr_matrix(brim.weights - low.weights), brim.covered * low.covered).sigmas(sigma)
    beside = line.locate(tin.vertices[np.maximum(sill, 0), :2] + tin.origin)
    return tuple(
        LowPoint(*hollow.reach(level[k]), hollow.at, float(beside[0][k]), float(beside[1][k]), float(depth[k]),
                 float(doubt[k]))
        for k, hollow in enumerate(hollows)
        if sill[k] >= 0 and depth[k] > least_sigmas * doubt[k]
    )  # fmt: skip


def _on_parallel(line: Alignment, distance: np.ndarray, offset: float) -> np.ndarray:
    """Places (q, 2) of the mitred parallel, as :meth:`.line.Alignment.between` makes it."""
    path = line.between(0.0, line.length, offset)
    return np.column_stack([np.interp(distance, line.at, path[:, k]) for k in (0, 1)])


class _Hollow(NamedTuple):
    """A hollow of a profile, ``distance`` and ``height`` (k,) from sill to sill, deepest ``at``."""

    distance: np.ndarray
    height: np.ndarray
    at: float

    def reach(self, level: float) -> Tuple[float, float]:
        """From where to where water stands whose surface is at ``level``, about the deepest place."""
        low = int(self.height.argmin())
        left = np.flatnonzero(self.height[: low + 1] >= level)
        right = np.flatnonzero(self.height[low:] >= level) + low
        begin, end = self.distance[0], self.distance[-1]
        if len(left):
            i = int(left[-1])
            begin = np.interp(level, self.height[[i + 1, i]], self.distance[[i + 1, i]])
        if len(right):
            i = int(right[0])
            end = np.interp(level, self.height[[i - 1, i]], self.distance[[i - 1, i]])
        return float(begin), float(end)


def _hollows(distance: np.ndarray, height: np.ndarray) -> List[_Hollow]:
    """The hollows of heights straight between places, to the sills beside them."""
    left, right = np.maximum.accumulate(height), np.maximum.accumulate(height[::-1])[::-1]
    wet = np.minimum(left, right) > height
    first = np.flatnonzero(wet & ~np.append(False, wet[:-1]))
    last = np.flatnonzero(wet & ~np.append(wet[1:], False))
    found = []
    for i, j in zip(first.tolist(), last.tolist()):
        # the sills are the dry places beside it, which exist as the ends are never wet
        own = slice(i - 1, j + 2)
        found.append(_Hollow(distance[own], height[own], float(distance[i + int(np.argmin(height[i : j + 1]))])))
    return found


@dataclass(frozen=True)
class CrestSight:
    """``speed``: the highest of the user's table whose K the crest reaches for sure (None for not even the lowest).

    ``doubtful``: the highest whose K it reaches or may reach within the doubt. ``verdicts``: for each row of the table.
    """

    curve: VerticalCurve
    speed: Optional[float]
    doubtful: Optional[float]
    verdicts: Tuple[Verdict, ...]


@dataclass(frozen=True)
class Sight:
    crests: Tuple[CrestSight, ...]
    messages: Tuple[Message, ...]


def sight_on_crests(fit: FittedProfile, table: Sequence[LeastK]) -> Sight:
    """Each fitted crest against a table of speeds and least K (see :func:`.rules.read_least_k`)."""
    found = []
    for curve in fit.curves:
        if not curve.crest:
            continue
        verdicts = tuple(judge(curve.k, curve.k_sigma, row.least_k, True)[0] for row in table)
        sure = [row.speed for row, verdict in zip(table, verdicts) if verdict is Verdict.PASS]
        perhaps = [row.speed for row, verdict in zip(table, verdicts) if verdict is not Verdict.FAIL]
        found.append(CrestSight(curve, max(sure, default=None), max(perhaps, default=None), verdicts))
    return Sight(tuple(found), (message(SIGHT_CAUTION),))
