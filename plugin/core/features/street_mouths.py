"""Where a street joins another: the kerb does not go on across its mouth, it turns into it on both sides.

A kerb that lies in line on both sides of a mouth looks like one with a lowered part between. It is none where the kerbs
of another street come up to the gap from the higher ground, one on each side.
"""

from __future__ import annotations

from typing import List, NamedTuple, Optional, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP
from .courses import DIRECTION, Course, listed
from .evidence import evidence_of
from .gaps import gaps_of
from .groups import group_median
from .nodes import Nodes

#: Width (m) of a gap in a kerb that may be a mouth; the kerbs of a mouth are so far apart (m), begin no farther from the
#: gap's ends than so (m), and stand in it, give or take so much (m).
NARROWEST, WIDEST, LEAST_APART, FARTHEST, BESIDE = 4.0, 40.0, 2.5, 16.0, 1.5
#: They leave at such an angle (cosine between it and the kerb), and are so much alike in height (ratio).
MOST_COSINE, ALIKE = 0.77, 2.0


class _Ends(NamedTuple):
    """Beginnings and endings (e,) of open courses of steps: place, way in from there, size, and the course."""

    at: np.ndarray
    way: np.ndarray
    size: np.ndarray
    course: np.ndarray


def open_mouths(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], bridging: np.ndarray, evidence: np.ndarray
) -> Tuple[List[Course], np.ndarray]:
    """The courses with kerbs that turn into mouths, and their evidence (lines,); arguments as of :func:`.cut_gaps`."""
    size = _sizes(nodes, courses)
    step = np.array([nodes.kind[c.nodes[0]] == STEP and not c.closed and len(c.nodes) > 2 for c in courses], bool)
    if np.count_nonzero(step) < 3 - 1:
        return courses, evidence
    starts, ends = (_ends(nodes, courses, step, size, last) for last in (False, True))
    pieces: dict = {}
    joins: List[Tuple[Tuple[int, int], Tuple[int, int]]] = []
    taken: set = set()
    for number, gaps in sorted(gaps_of(nodes, courses, bridging).items()):
        if not step[number]:
            continue
        own, cuts = courses[number].nodes, []
        told = own[~bridging[own]]
        for before, after, nothing in gaps:
            last = int(np.flatnonzero(own == told[before])[0])
            found = _mouth(nodes, own, last, after, size[number], starts, ends, number) if nothing else None
            if found is None or taken & {("start", found[0]), ("end", found[1])}:
                continue
            taken |= {("start", found[0]), ("end", found[1])}
            joins += [((number, len(cuts)), (found[0], 0)), ((found[1], -1), (number, len(cuts) + 1))]
            cuts.append((last + 1, after))
        if cuts:
            bounds = [0, *[place for cut in cuts for place in cut], len(own)]
            pieces[number] = [own[a:b] for a, b in zip(bounds[::2], bounds[1::2])]
    if not joins:
        return courses, evidence
    return _joined(nodes, crowd, courses, bridging, evidence, pieces, joins)


def _sizes(nodes: Nodes, courses: List[Course]) -> np.ndarray:
    every = listed(courses)
    return group_median(nodes.size[every.k], every.of, len(courses))


def _ends(nodes: Nodes, courses: List[Course], step: np.ndarray, size: np.ndarray, last: bool) -> _Ends:
    number = np.flatnonzero(step)
    tip, inner = [], []
    for i in number.tolist():
        own = courses[i].nodes[::-1] if last else courses[i].nodes
        tip.append(own[0])
        inner.append(own[min(DIRECTION, len(own) - 1)])
    at, to = _places(nodes, np.array(tip)), _places(nodes, np.array(inner))
    way = to - at
    return _Ends(at, way / np.maximum(np.hypot(*way.T), 1e-9)[:, None], size[number], number)


def _places(nodes: Nodes, k: np.ndarray) -> np.ndarray:
    return np.column_stack([nodes.x[k], nodes.y[k]])


def _mouth(
    nodes: Nodes, own: np.ndarray, last: int, after: int, size: float, starts: _Ends, ends: _Ends, number: int
) -> Optional[Tuple[int, int]]:
    """The courses that begin and end at the gap of course ``number`` (nodes ``own``) between two places in it."""
    a, b = _places(nodes, own[[last, after]])
    long = float(np.hypot(*(b - a)))
    if not NARROWEST <= long <= WIDEST:
        return None
    way = (b - a) / long
    first, place = _beside(starts, a, way, long, a, size, number)
    second, other = _beside(ends, a, way, long, b, size, number)
    apart = other[None, :] - place[:, None]
    # The nearest pair of kerbs of one street: two streets that join beside each other have a kerb between.
    apart = np.where((apart >= LEAST_APART) & (first[:, None] != second[None, :]), apart, -np.inf)
    if not np.isfinite(apart).any():
        return None
    i, j = np.unravel_index(int(np.argmax(apart)), apart.shape)
    return int(first[i]), int(second[j])


def _beside(
    tips: _Ends, a: np.ndarray, way: np.ndarray, long: float, corner: np.ndarray, size: float, number: int
) -> Tuple[np.ndarray, np.ndarray]:
    """Courses whose tips lie on the higher side of the gap and lead away from it, and how far along the gap (m)."""
    along = (tips.at - a) @ way
    left = way[0] * (tips.at - a)[:, 1] - way[1] * (tips.at - a)[:, 0]
    away = way[0] * tips.way[:, 1] - way[1] * tips.way[:, 0] > 0
    fit = (tips.course != number) & (along > -BESIDE) & (along < long + BESIDE) & (left > -BESIDE) & away
    fit &= np.abs(tips.way @ way) <= MOST_COSINE
    fit &= np.hypot(*(tips.at - corner).T) <= FARTHEST
    fit &= (tips.size <= ALIKE * size) & (size <= ALIKE * tips.size)
    return tips.course[fit], along[fit]


def _joined(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], bridging: np.ndarray, evidence: np.ndarray, pieces: dict,
    joins: List[Tuple[Tuple[int, int], Tuple[int, int]]],
) -> Tuple[List[Course], np.ndarray]:  # fmt: skip
    """The courses with ``pieces`` in place of those cut, each joined with what it goes on in."""
    parts = {(i, n): part for i, some in pieces.items() for n, part in enumerate(some)}
    onward = {}
    for one, other in joins:
        ahead = (one[0], len(pieces[one[0]]) - 1 if one[0] in pieces else 0) if one[1] < 0 else one
        onward[ahead] = other
    for key in [*onward, *onward.values()]:
        parts.setdefault(key, courses[key[0]].nodes)
    begun = set(onward.values())
    new = []
    for key in sorted(parts):
        if key in begun:
            continue
        chain, at = [parts[key]], key
        while at in onward:
            at = onward[at]
            chain.append(parts[at])
        new.append(Course(np.concatenate(chain)))
    new += _rings(parts, onward, new)
    gone = {key[0] for key in parts}
    kept = [i for i in range(len(courses)) if i not in gone]
    alone = [Course(c.nodes[c.nodes < len(crowd)], c.closed) for c in new]
    every = listed(new)
    read = np.where((every.k < len(crowd)) | bridging[every.k], 0.0, nodes.decades[every.k])
    told = evidence_of(nodes, crowd, alone) + np.bincount(every.of, weights=read, minlength=len(new))
    return [courses[i] for i in kept] + new, np.append(evidence[kept], told)


def _rings(parts: dict, onward: dict, done: List[Course]) -> List[Course]:
    """What is joined all around, as closed courses."""
    seen = {int(k) for course in done for k in course.nodes}
    result = []
    for key in sorted(parts):
        if int(parts[key][0]) in seen:
            continue
        chain, at = [], key
        while not chain or at != key:
            chain.append(parts[at])
            at = onward[at]
        result.append(Course(np.concatenate(chain), True))
        seen |= {int(k) for part in chain for k in part}
    return result
