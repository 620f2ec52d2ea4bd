"""Where a street joins another: the kerb does not go on across its mouth, it turns into it on both sides.

A kerb that lies in line on both sides of a mouth looks like one with a lowered part between. It is none where the kerbs
of another street come up to the gap from the higher ground, one on each side.
"""

from __future__ import annotations

from typing import Dict, Iterable, List, NamedTuple, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP
from .courses import Course, ends_of, listed
from .gaps import evidence_with_readings, gaps_of
from .groups import group_median
from .nodes import Nodes

#: Width (m) of a gap in a kerb that may be a mouth; the kerbs of a mouth are so far apart (m), begin no farther than so
#: (m) from the gap's ends, and stand in it, give or take so much (m).
NARROWEST, WIDEST, LEAST_APART, FARTHEST, BESIDE = 4.0, 40.0, 2.5, 16.0, 1.5
#: They leave at such an angle (cosine between it and the kerb), and are so much alike in height (ratio).
MOST_COSINE, ALIKE = 0.77, 2.0
#: A kerb goes on beyond a mouth in the same direction (cosine).
IN_LINE = 0.94


_Key = Tuple[int, int]


class _Ends(NamedTuple):
    """Beginnings and endings (e,) of open courses of steps: place, way in from there, size, and the course."""

    at: np.ndarray
    way: np.ndarray
    size: np.ndarray
    course: np.ndarray


class _Gap(NamedTuple):
    """A gap after the node at place ``last`` of course ``before``, and before that at place ``first`` of ``after``."""

    before: int
    last: int
    after: int
    first: int


def open_mouths(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], bridging: np.ndarray, evidence: np.ndarray
) -> Tuple[List[Course], np.ndarray]:
    """The courses with kerbs that turn into mouths, and their evidence (lines,); arguments as of :func:`.cut_gaps`."""
    step = np.array([nodes.kind[c.nodes[0]] == STEP and not c.closed and len(c.nodes) > 2 for c in courses], bool)
    if np.count_nonzero(step) < 3:
        return courses, evidence
    every = listed(courses)
    size = group_median(nodes.size[every.k], every.of, len(courses))
    tips, some = ends_of(nodes, courses), np.flatnonzero(step)
    starts, ends = (_Ends(tips.at[2 * some + k], -tips.out[2 * some + k], size[some], some) for k in (0, 1))
    turns: List[Tuple[_Gap, int, int]] = []
    begun: set = set()
    ended: set = set()
    for gap in _inner_gaps(nodes, courses, step, bridging) + _facing(courses, starts, ends):
        found = _mouth(nodes, courses, gap, size, starts, ends)
        if found is None:
            continue
        # Within one course a gap has ends of its own; between two it takes theirs.
        new_begun = {found[0]} if gap.before == gap.after else {found[0], gap.after}
        new_ended = {found[1]} if gap.before == gap.after else {found[1], gap.before}
        if begun & new_begun or ended & new_ended:
            continue
        turns.append((gap, *found))
        begun |= new_begun
        ended |= new_ended
    if not turns:
        return courses, evidence
    return _joined(nodes, crowd, courses, evidence, turns)


def _inner_gaps(nodes: Nodes, courses: List[Course], step: np.ndarray, bridging: np.ndarray) -> List[_Gap]:
    """Gaps within one course in which a pass shows nothing."""
    result = []
    for number, gaps in sorted(gaps_of(nodes, courses, bridging).items()):
        told = np.flatnonzero(~bridging[courses[number].nodes])
        result += [_Gap(number, int(told[a]), number, b) for a, b, nothing in gaps if step[number] and nothing]
    return result


def _facing(courses: List[Course], starts: _Ends, ends: _Ends) -> List[_Gap]:
    """Gaps between the end of one course and the beginning of another that goes on in the same direction."""
    result = []
    for i, j in _pairs(ends, starts):
        chord = starts.at[j] - ends.at[i]
        chord = chord / max(float(np.hypot(*chord)), 1e-9)
        if ends.course[i] != starts.course[j] and min(-ends.way[i] @ chord, starts.way[j] @ chord) >= IN_LINE:
            one, other = int(ends.course[i]), int(starts.course[j])
            result.append(_Gap(one, len(courses[one].nodes) - 1, other, 0))
    return result


def _pairs(ends: _Ends, starts: _Ends) -> List[Tuple[int, int]]:
    near = cKDTree(ends.at).query_ball_tree(cKDTree(starts.at), WIDEST)
    return [(i, j) for i, some in enumerate(near) for j in sorted(some)]


def _places(nodes: Nodes, k: np.ndarray) -> np.ndarray:
    return np.stack([nodes.x[k], nodes.y[k]], axis=-1)


def _mouth(
    nodes: Nodes, courses: List[Course], gap: _Gap, size: np.ndarray, starts: _Ends, ends: _Ends
) -> Optional[Tuple[int, int]]:
    """The courses that begin and end at a gap and lead away from it to the higher side, None unless both are there."""
    a = _places(nodes, courses[gap.before].nodes[gap.last])
    b = _places(nodes, courses[gap.after].nodes[gap.first])
    long = float(np.hypot(*(b - a)))
    if not NARROWEST <= long <= WIDEST:
        return None
    way = (b - a) / long
    own = (gap.before, gap.after)
    first, place = _beside(starts, a, way, long, a, size, own)
    second, other = _beside(ends, a, way, long, b, size, own)
    apart = other[None, :] - place[:, None]
    apart = np.where((apart >= LEAST_APART) & (first[:, None] != second[None, :]), apart, -np.inf)
    if not np.isfinite(apart).any():
        return None
    i, j = np.unravel_index(int(np.argmax(apart)), apart.shape)
    return int(first[i]), int(second[j])


def _beside(
    tips: _Ends, a: np.ndarray, way: np.ndarray, long: float, corner: np.ndarray, size: np.ndarray, own: Tuple[int, int]
) -> Tuple[np.ndarray, np.ndarray]:
    """Courses whose tips lie on the higher side of the gap and lead away from it, and how far along the gap (m)."""
    along = (tips.at - a) @ way
    left = way[0] * (tips.at - a)[:, 1] - way[1] * (tips.at - a)[:, 0]
    away = way[0] * tips.way[:, 1] - way[1] * tips.way[:, 0] > 0
    fit = ~np.isin(tips.course, own) & (along > -BESIDE) & (along < long + BESIDE) & (left > -BESIDE) & away
    fit &= np.abs(tips.way @ way) <= MOST_COSINE
    fit &= np.hypot(*(tips.at - corner).T) <= FARTHEST
    low, high = size[list(own)].min() / ALIKE, size[list(own)].max() * ALIKE
    fit &= (tips.size >= low) & (tips.size <= high)
    return tips.course[fit], along[fit]


def _joined(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], evidence: np.ndarray, turns: List[Tuple[_Gap, int, int]],
) -> Tuple[List[Course], np.ndarray]:  # fmt: skip
    """The courses cut at the gaps and joined with the kerbs that they turn into, and the evidence of all."""
    bounds: Dict[int, List[int]] = {}
    for gap, first, second in turns:
        for number in (gap.before, gap.after, first, second):
            bounds.setdefault(number, [])
        if gap.before == gap.after:
            bounds[gap.before] += [gap.last + 1, gap.first]
    # Pieces by the place in their course where they begin, and where they end.
    pieces: Dict[_Key, np.ndarray] = {}
    ending: Dict[_Key, _Key] = {}
    for number, inner in bounds.items():
        cuts = [0, *sorted(inner), len(courses[number].nodes)]
        for low, high in zip(cuts[::2], cuts[1::2]):
            pieces[number, low] = courses[number].nodes[low:high]
            ending[number, high] = (number, low)
    onward: Dict[_Key, _Key] = {}
    for gap, first, second in turns:
        onward[ending[gap.before, gap.last + 1]] = (first, 0)
        onward[ending[second, len(courses[second].nodes)]] = (gap.after, gap.first)
    new = [Course(np.concatenate([pieces[key] for key in keys]), ring) for keys, ring in _chains(pieces, onward)]
    kept = [i for i in range(len(courses)) if i not in bounds]
    told = evidence_with_readings(nodes, crowd, new)
    return [courses[i] for i in kept] + new, np.append(evidence[kept], told)


def _chains(pieces: Iterable[_Key], onward: Dict[_Key, _Key]) -> List[Tuple[List[_Key], bool]]:
    """The pieces in chains, each going on in the next, and whether a chain is a ring."""
    result = []
    left = dict.fromkeys(sorted(pieces))
    for key in [*sorted(set(left) - set(onward.values())), *sorted(left)]:
        some: List[_Key] = []
        at: Optional[_Key] = key
        while at is not None and at in left:
            del left[at]
            some.append(at)
            at = onward.get(at)
        if some:
            result.append((some, at == some[0]))
    return result
