"""Stretches of the walk between steps, what is known of how they lie to each other, and which lie off.

A stretch is a row of segments without a significant step. It gets one unknown offset; the walk from stretch to
stretch, the passes on either side, and places walked twice observe differences of offsets (:mod:`.offsets`).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Tuple

import numpy as np

from ..progress import Progress, part, silent
from .beside import Aside, Beside, aside_of, cuts_beside, look_beside
from .confirm import LEAST, Steps, seen_by_others
from .encounters import Encounters, find_encounters
from .fits import Sums
from .ground import GroundNet
from .joins import steps_between
from .noise import Roughness, robust_sigma
from .offsets import Relations, joined, solve
from .segments import Segments, with_cuts, without_cuts
from .walk import Walk, plain_tree

#: Steps below so many standard deviations do not part two stretches.
PARTED = 3.2
#: The same for the height over the neighbouring passes.
ASIDE = 3.8
_SOLID = 12  # points of a stretch over which no join need leap
_LEAPS = 7  # stretches a join may leap
_HOLE = 40  # points a join may leap
_NARROW = 3  # points of a spike
_SEEN_SHARE = 0.12  # how well the size of a step is known where others saw it


@dataclass(frozen=True)
class Fixed:
    """Coded points that stand by themselves: ``xyz`` (c, 3) local metres, ``lines`` (k, 2) pairs of them
    joined by a line.
    """

    xyz: np.ndarray
    lines: np.ndarray


@dataclass(frozen=True)
class Scale:
    """What to measure by, metres: ``noise`` new at every point, ``drift`` that differs between visits, ``passes`` their
    distance, and the roughness of the ground.
    """

    noise: float
    drift: float
    passes: float
    rough: Roughness

    @property
    def total(self) -> float:
        return float(np.hypot(self.noise, self.drift))


@dataclass(frozen=True)
class Stretches:
    """t stretches: points [start, end) of the walk (t,), the ``offset`` (m) of each and its standard deviation
    ``sigma``.

    ``of``: (q,) stretch of each point. ``step``: (t,) step (m) at the start of each, ``step_sigma`` its standard
    deviation (inf at the start of a piece). ``seen``: (t,) bool, other passes or a coded line have that step too.
    ``meetings``: places walked twice; ``beside``: neighbours of every step;
    ``net``: all points triangulated.
    """

    start: np.ndarray
    end: np.ndarray
    of: np.ndarray
    offset: np.ndarray
    sigma: np.ndarray
    step: np.ndarray
    step_sigma: np.ndarray
    seen: np.ndarray
    meetings: Encounters
    beside: Beside
    net: GroundNet

    def __len__(self) -> int:
        return len(self.start)


def lay_out(
    walk: Walk, sums: Sums, segments: Segments, fixed: Fixed, net: GroundNet, scale: Scale, progress: Progress = silent
) -> Stretches:
    """Part the walk into stretches and estimate their offsets."""
    beside = look_beside(walk, net, fixed.xyz)
    aside = aside_of(walk, beside, scale.rough)
    progress(0.15, "quality")
    segments = with_cuts(walk, segments, cuts_beside(walk, aside, scale.noise, ASIDE))
    segments = with_cuts(walk, segments, np.flatnonzero(walk.regained))
    segments, step, spread, score = _merged(walk, sums, segments, aside, scale, part(progress, 0.2, 0.5))
    head = ~segments.joined | (score > PARTED)
    told = _told(walk, segments, step, spread, scale)
    progress(0.6, "quality")
    at_line = _at_coded_line(walk, segments, fixed)
    seen = np.isfinite(told) | at_line
    first = np.flatnonzero(head)
    last = np.append(first[1:], len(segments)) - 1
    of = (np.cumsum(head) - 1)[segments.of]
    length = segments.end[last] - segments.start[first]
    progress(0.65, "quality")
    meetings = find_encounters(walk, segments, scale.noise, sums)
    progress(0.7, "quality")
    parts = [
        _joins(walk, sums, segments, first, last, length, told, at_line, scale),
        _meetings(meetings, of, scale),
        _neighbours(walk, beside, of, seen[first], len(fixed.xyz), scale),
    ]
    offset, sigma = solve(joined(parts), len(first), length, scale.total, part(progress, 0.8, 1.0))
    return Stretches(
        segments.start[first],
        segments.end[last],
        of,
        offset,
        sigma,
        step[first],
        spread[first],
        seen[first],
        meetings,
        beside,
        net,
    )


def _steps(walk: Walk, sums: Sums, segments: Segments, k: np.ndarray, scale: Scale) -> Tuple[np.ndarray, np.ndarray]:
    """Step (m) at the start of segments ``k``, which the walk goes on to, and its standard deviation."""
    step, variance = steps_between(walk, sums, segments, k - 1, k, scale.noise, scale.rough)
    return step, np.sqrt(variance)


def _merged(
    walk: Walk, sums: Sums, segments: Segments, aside: Aside, scale: Scale, progress: Progress
) -> Tuple[Segments, np.ndarray, np.ndarray, np.ndarray]:
    """Segments without the cuts that mean nothing, the weakest first: each cut that goes lets its neighbours be
    judged by more points. Also the step at the start of each, its standard deviation and how much it tells.
    """
    step, spread = np.zeros(len(segments)), np.full(len(segments), np.inf)
    fresh = segments.joined
    limits = (1.5, 2.0, 2.5, 2.8, 3.0, PARTED, PARTED, 0.0)
    for turn, least in enumerate(limits):
        progress(turn / len(limits), "quality")
        k = np.flatnonzero(fresh)
        if len(k):
            step[k], spread[k] = _steps(walk, sums, segments, k, scale)
        score = _scores(walk, segments, step, spread, aside, scale)
        lowest = (score <= np.append(np.inf, score[:-1])) & (score < np.append(score[1:], np.inf))
        weak = (score < least) & lowest
        stay = np.flatnonzero(~weak)
        # Only the steps beside a cut that goes are seen by more points than before.
        fresh = (np.append(False, weak[:-1]) | np.append(weak[1:], False))[stay] & segments.joined[stay]
        segments, step, spread = without_cuts(segments, weak), step[stay], spread[stay]
    return segments, step, spread, score


def _scores(
    walk: Walk, segments: Segments, step: np.ndarray, spread: np.ndarray, aside: Aside, scale: Scale
) -> np.ndarray:
    """Standard deviations of the step at the start of each segment, along the walk or against the neighbouring
    passes.
    """
    score = np.where(segments.joined, np.abs(step) / spread, np.inf)
    k = np.flatnonzero(segments.joined)
    at = segments.start[k]
    low, high = np.maximum(at - 8, segments.start[k - 1]), np.minimum(at + 8, segments.end[k])
    other, sigma = aside.steps(low, at, high, scale.noise)
    other = np.abs(other) / sigma
    some = np.isfinite(sigma)
    usual = robust_sigma(np.append(other[some], -other[some])) if np.count_nonzero(some) > 20 else 1.0
    score[k] = np.maximum(score[k], other * PARTED / ASIDE / max(1.0, usual))
    # Ambiguities fixed anew may be wrong ones, whatever the step says where the pass turned meanwhile.
    score[k[_near(walk.regained, at)]] = np.inf
    return score


def _near(mask: np.ndarray, at: np.ndarray) -> np.ndarray:
    """Mask (k,) of the points ``at`` within two of one of ``mask`` (q,)."""
    count = np.append(0, np.cumsum(mask))
    result: np.ndarray = count[np.minimum(at + 3, len(mask))] > count[np.maximum(at - 2, 0)]
    return result


def _told(walk: Walk, segments: Segments, step: np.ndarray, spread: np.ndarray, scale: Scale) -> np.ndarray:
    """Size that other passes gave the step at the start of each segment (m), nan where they saw none."""
    told = np.full(len(segments), np.nan)
    k = np.flatnonzero(np.isfinite(spread) & (np.abs(step) > LEAST * spread))
    if len(k):
        narrow = _narrow(segments, np.where(np.isfinite(spread), step, 0.0))[k]
        steps = steps_at(walk, segments.start[k], step[k], spread[k], narrow)
        told[k] = seen_by_others(steps, scale.passes, 0.6 + walk.spacing)
    return told


def _narrow(segments: Segments, step: np.ndarray) -> np.ndarray:
    """Mask of the steps that have a step back of like size within three points, before or after."""
    short = np.append(segments.end[:-1] - segments.start[:-1] <= _NARROW, False)
    back = np.append(step[1:], 0.0)
    large, small = np.maximum(np.abs(step), np.abs(back)), np.minimum(np.abs(step), np.abs(back))
    opens = short & (step * back < 0) & (small > 0.4 * large)
    return opens | np.append(False, opens[:-1])


def steps_at(walk: Walk, at: np.ndarray, size: np.ndarray, sigma: np.ndarray, narrow: np.ndarray) -> Steps:
    """Steps between points ``at - 1`` and ``at`` of the walk, with the direction of walking there."""
    low, high = np.maximum(at - 2, walk.first[at]), np.minimum(at + 1, walk.last[at] - 1)
    dx, dy = walk.x[high] - walk.x[low], walk.y[high] - walk.y[low]
    length = np.maximum(np.hypot(dx, dy), 1e-9)
    x, y = (walk.x[at] + walk.x[at - 1]) / 2, (walk.y[at] + walk.y[at - 1]) / 2
    return Steps(x, y, at, np.column_stack([dx, dy]) / length[:, None] * size[:, None], size, sigma, narrow)


def _at_coded_line(walk: Walk, segments: Segments, fixed: Fixed) -> np.ndarray:
    """Mask of segments that begin at a coded line: there the ground may step or bend."""
    mask = np.zeros(len(segments), bool)
    k = np.flatnonzero(segments.joined)
    if not len(fixed.lines) or not len(k):
        return mask
    a, b = fixed.xyz[fixed.lines[:, 0], :2], fixed.xyz[fixed.lines[:, 1], :2]
    apart = max(0.3 * walk.spacing, 0.1)
    count = np.maximum((np.hypot(*(b - a).T) / apart).astype(np.int64) + 2, 2)
    number = np.repeat(np.arange(len(a)), count)
    share = (np.arange(len(number)) - np.repeat(np.cumsum(count) - count, count)) / (count[number] - 1)
    tree = plain_tree(a[number] + share[:, None] * (b - a)[number])
    at = segments.start[k]
    middle = np.column_stack([(walk.x[at] + walk.x[at - 1]) / 2, (walk.y[at] + walk.y[at - 1]) / 2])
    reach = 0.8 * walk.spacing + 0.1
    mask[k] = tree.query(middle, distance_upper_bound=reach)[0] < reach
    return mask


def _joins(
    walk: Walk, sums: Sums, segments: Segments, first: np.ndarray, last: np.ndarray, length: np.ndarray,
    told: np.ndarray, at_line: np.ndarray, scale: Scale,
) -> Relations:  # fmt: skip
    """Steps from each stretch to the next one and, over short ones, to some more."""
    barred = np.append(0, np.cumsum(at_line))
    known = np.isfinite(told) & ~at_line
    seen, height = np.append(0, np.cumsum(known)), np.append(0.0, np.cumsum(np.where(known, told, 0.0)))
    piece = walk.piece[segments.start]
    opened = np.ones(len(first), bool)
    pairs: List[np.ndarray] = []
    for leap in range(1, min(_LEAPS, len(first) - 1) + 1):
        a, b = np.arange(len(first) - leap), np.arange(leap, len(first))
        fits = opened[: len(a)] & (piece[last[a]] == piece[first[b]])
        fits &= segments.start[first[b]] - segments.end[last[a]] <= _HOLE
        fits &= barred[first[b] + 1] == barred[last[a] + 1]
        pairs.append(np.column_stack([a, b])[fits])
        opened[: len(a)] &= length[b] < _SOLID
    a, b = (np.vstack(pairs) if pairs else np.empty((0, 2), np.int64)).T
    step, variance = steps_between(walk, sums, segments, last[a], first[b], scale.noise, scale.rough)
    ground = height[first[b] + 1] - height[last[a] + 1]
    some = seen[first[b] + 1] > seen[last[a] + 1]
    variance = variance + np.where(some, (_SEEN_SHARE * ground) ** 2 + scale.noise**2, 0.0)
    return _two(a, b, step - ground, np.sqrt(variance))


def _meetings(found: Encounters, of: np.ndarray, scale: Scale) -> Relations:
    a, b = of[found.first], of[found.second]
    apart = a != b
    sigma = np.sqrt(found.variance + 2 * scale.drift**2)
    return _two(a[apart], b[apart], found.difference[apart], sigma[apart])


def _two(a: np.ndarray, b: np.ndarray, difference: np.ndarray, sigma: np.ndarray) -> Relations:
    none = np.full(len(a), -1)
    one = np.ones(len(a))
    return Relations(
        np.column_stack([a, b, none, none]), np.column_stack([-one, one, 0 * one, 0 * one]), difference, sigma
    )


def _neighbours(walk: Walk, beside: Beside, of: np.ndarray, stepped: np.ndarray, coded: int, scale: Scale) -> Relations:
    """Mean height of each stretch over the line between its neighbours, for each pair of neighbours.

    ``stepped``: mask of stretches at whose start the ground itself steps: the step of the walk there tells nothing.
    """
    over = stepped[of[beside.at + 1]] & (of[beside.at] != of[beside.at + 1])
    beside = beside.take(~over)
    number = np.append(of, np.full(coded, -1))
    node = np.column_stack([number[v] for v in (beside.at, beside.at + 1, beside.left, beside.right)])
    size = int(of.max(initial=0)) + 2
    key = (((node[:, 0] * size) + node[:, 2] + 1) * size + node[:, 3] + 1) * 2 + (node[:, 0] != node[:, 1])
    _, kept, group, count = np.unique(key, return_index=True, return_inverse=True, return_counts=True)
    if not len(count):
        return Relations(np.empty((0, 4), np.int64), np.empty((0, 4)), np.empty(0), np.empty(0))

    def mean(values: np.ndarray) -> np.ndarray:
        return np.bincount(group, values) / count

    share, reach = mean(beside.share), mean(beside.reach)
    others = share**2 + (1 - share) ** 2
    independent = np.clip(count * walk.spacing / (2 * np.maximum(reach, walk.spacing)), 1, 2)
    variance = scale.noise**2 * (0.5 + others) / count + scale.drift**2 * (1 + others)
    variance += mean(scale.rough.at(beside.reach) ** 2) / independent
    difference, sigma = mean(beside.away), np.sqrt(variance)
    # Ground that bends across the passes shows in all of these: they say no more than they usually hold to.
    sigma = sigma * max(1.0, robust_sigma(difference / sigma) if len(sigma) > 2 else 1.0)
    # A pass along a kerb departs from its neighbours all the way: together they say as much as one or two.
    rows = np.bincount(node[kept, 0])[node[kept, 0]]
    sigma = sigma * np.sqrt(np.maximum(rows / 2, 1.0))
    half = np.full(len(count), 0.5)
    return Relations(node[kept], np.column_stack([half, half, -share, share - 1]), difference, sigma)
