"""Indications for a street: does the crossfall lead to the kerb, does water stand in the gutter, how far does one see.

None of these is a proof; each result carries its cautions.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import List, Optional, Sequence, Tuple

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

    ``depth``: metres below the lower of the two sills beside it, which is at distance ``sill``; ``sigma`` of that.
    """

    begin: float
    end: float
    at: float
    sill: float
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
) -> Gutter:
    """Low points and flat stretches along the parallel of ``line`` at ``offset`` (m, right positive).

    Low points shallower than ``least_sigmas`` of their own standard deviations are noise and left out.
    ``least_grade``: ratio below which a gutter is flat. Errors as :func:`.profile.make_profile` and
    :func:`.grades.grades`.
    """
    profile = make_profile(line, [("", tin)], offset).surfaces[0]
    slopes = grades(line, tin, sigma, min(window, line.length), offset=offset)
    found = low_points(line, tin, sigma, profile, offset, least_sigmas)
    verdict = judge(np.abs(slopes.value), slopes.sigma, least_grade, True)
    return Gutter(offset, found, slopes, verdict, (message(GUTTER_CAUTION), message(WINDOW_CAUTION)))


def low_points(
    line: Alignment, tin: Tin, sigma: Sigma, profile: HeightLine, offset: float, least_sigmas: float
) -> Tuple[LowPoint, ...]:
    """Hollows of each part of ``profile``: what fills up before it runs over one of the sills beside it.

    Beyond a part's ends water is free to run off.
    """
    found: List[Tuple[float, float, float, float, float]] = []
    for distance, height in profile.parts():
        found.extend(_hollows(distance, height))
    if not found:
        return ()
    row = np.array(found)
    places = [_on_parallel(line, row[:, k], offset) for k in (3, 2)]
    sill, low = (height_forms(tin, xy) for xy in places)
    whole = sill.covered * low.covered
    doubt = LinearForms(csr_matrix(sill.weights - low.weights), whole).sigmas(sigma)
    return tuple(
        LowPoint(begin, end, at, over, depth, float(own))
        for (begin, end, at, over, depth), own in zip(found, doubt)
        if depth > least_sigmas * own
    )


def _on_parallel(line: Alignment, distance: np.ndarray, offset: float) -> np.ndarray:
    """Places (q, 2) of the mitred parallel, as :meth:`.line.Alignment.between` makes it."""
    path = line.between(0.0, line.length, offset)
    return np.column_stack([np.interp(distance, line.at, path[:, k]) for k in (0, 1)])


def _hollows(distance: np.ndarray, height: np.ndarray) -> List[Tuple[float, float, float, float, float]]:
    """(begin, end, deepest, sill, depth) of each hollow of heights straight between places."""
    left, right = np.maximum.accumulate(height), np.maximum.accumulate(height[::-1])[::-1]
    level = np.minimum(left, right)
    wet = level > height
    first = np.flatnonzero(wet & ~np.append(False, wet[:-1]))
    last = np.flatnonzero(wet & ~np.append(wet[1:], False))
    found = []
    for i, j in zip(first, last):
        # the sills are the dry places beside it, which exist as the ends are never wet; the lower one is the level
        deepest = i + int(np.argmin(height[i : j + 1]))
        fill = level[deepest]
        sill = i - 1 if left[deepest] <= right[deepest] else j + 1
        begin = np.interp(fill, [height[i], height[i - 1]], [distance[i], distance[i - 1]])
        end = np.interp(fill, [height[j], height[j + 1]], [distance[j], distance[j + 1]])
        one = (begin, end, distance[deepest], distance[sill], fill - height[deepest])
        found.append((float(one[0]), float(one[1]), float(one[2]), float(one[3]), float(one[4])))
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
