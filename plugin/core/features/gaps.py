"""Where lines end: at a gap beyond which nothing goes on as they came, and at the kerb that they come to.

A line as a whole has evidence enough for a gap in it, wherever it leads. What lies beyond must stand for itself.
"""

from __future__ import annotations

from typing import List, Tuple

import numpy as np
from scipy.spatial import cKDTree

from .candidates import STEP
from .courses import DIRECTION, OFF, OFF_SHARE, Course, listed
from .evidence import evidence_of
from .groups import group_median
from .nodes import Nodes
from .parallel import places_along
from .verdict import SHADOW

#: A link so many times as long as usual, or on which a pass shows nothing, and longer than so (m), is a gap.
LONG_LINK, LEAST_GAP = 2.2, 2.5
#: Parts go on in one another in a straight line or an arc, which turns (radian) at both ends of the gap alike.
MOST_TURN, UNLIKE = 1.0, 0.5
#: So few nodes beyond a gap lie straight ahead if no fewer passes show nothing in it, by so many decades against.
FEW, AGAINST = 2, -0.5


def cut_gaps(
    nodes: Nodes, crowd: np.ndarray, courses: List[Course], bridging: np.ndarray, evidence: np.ndarray
) -> Tuple[List[Course], np.ndarray]:
    """The courses cut at gaps that are none of a line, and their evidence (lines,); what is too short then is left out.

    ``crowd``: (m,) of the first m nodes, as of :func:`.evidence.crowds`; ``bridging``: (n,) bool, nodes that only read.
    """
    gaps = gaps_of(nodes, courses, bridging)
    pieces: List[Course] = []
    kept: List[Course] = []
    told: List[float] = []
    for number, course in enumerate(courses):
        some = gaps.get(number, [])
        cuts = [b for a, b, nothing in some if not _goes_on(nodes, course.nodes[~bridging[course.nodes]], a, nothing)]
        if course.closed or not cuts:
            kept.append(course)
            told.append(float(evidence[number]))
            continue
        for part in np.split(course.nodes, cuts):
            there = np.flatnonzero(~bridging[part])
            if len(there) >= 3:
                pieces.append(Course(part[there[0] : there[-1] + 1]))
    if not pieces:
        return kept, np.array(told)
    return kept + pieces, np.append(told, evidence_with_readings(nodes, crowd, pieces))


def evidence_with_readings(nodes: Nodes, crowd: np.ndarray, courses: List[Course]) -> np.ndarray:
    """Evidence (lines,) of courses by their nodes and by what passes between read; ``crowd`` as of :func:`cut_gaps`."""
    alone = [Course(course.nodes[course.nodes < len(crowd)], course.closed) for course in courses]
    every = listed(courses)
    read = np.where(every.k < len(crowd), 0.0, nodes.decades[every.k])
    return evidence_of(nodes, crowd, alone) + np.bincount(every.of, weights=read, minlength=len(courses))


def gaps_of(nodes: Nodes, courses: List[Course], bridging: np.ndarray) -> dict:
    """For each course with gaps the number of the node before each among those that do not only read, and the place in
    the course of the first one after it, and how many passes show nothing in the gap."""
    every = listed(courses)
    start = np.cumsum(every.counts) - every.counts
    row = np.flatnonzero(~bridging[every.k])
    k, of = every.k[row], every.of[row]
    long = np.hypot(np.diff(nodes.x[k]), np.diff(nodes.y[k]))
    against = np.cumsum(bridging[every.k] & (nodes.decades[every.k] <= AGAINST))[row]
    same = of[1:] == of[:-1]
    usual = group_median(long[same], of[1:][same], len(courses))[of[1:]]
    gap = same & (long > LEAST_GAP) & ((long > LONG_LINK * usual) | (np.diff(row) > 1))
    first = np.searchsorted(of, np.arange(len(courses)))
    result: dict = {}
    for at in np.flatnonzero(gap).tolist():
        number = int(of[at])
        nothing = int(against[at + 1] - against[at])
        result.setdefault(number, []).append((at - int(first[number]), int(row[at + 1] - start[number]), nothing))
    return result


def _goes_on(nodes: Nodes, k: np.ndarray, at: int, nothing: int) -> bool:
    """Whether a course of nodes ``k`` goes on beyond the gap after its node ``at``, where ``nothing`` passes show
    nothing, as it came."""
    xy = np.column_stack([nodes.x[k], nodes.y[k]])
    chord = xy[at + 1] - xy[at]
    before, after = xy[at] - xy[max(at - DIRECTION + 1, 0)], xy[min(at + DIRECTION, len(k) - 1)] - xy[at + 1]
    turns = [_turn(before, chord) if at > 0 else None, _turn(chord, after) if at < len(k) - 2 else None]
    known = [turn for turn in turns if turn is not None]
    few = min(at + 1, len(k) - at - 1) <= min(nothing, FEW)
    if len(known) < 2 or few:
        long = float(np.hypot(*chord))
        room = OFF if few else OFF + OFF_SHARE * long
        return all(abs(turn) < MOST_TURN and abs(np.sin(turn)) * long <= room for turn in known)
    first, last = known
    return max(abs(first), abs(last)) <= MOST_TURN and abs(first - last) <= UNLIKE


def _turn(one: np.ndarray, other: np.ndarray) -> float:
    return float(np.arctan2(one[0] * other[1] - one[1] * other[0], one @ other))


def off_steps(
    nodes: Nodes, courses: List[Course], evidence: np.ndarray, strong: np.ndarray
) -> Tuple[List[Course], np.ndarray, np.ndarray]:
    """Courses, evidence and which are strong, without those ends of bends that run along a strong step: a bank's toe
    does not go on as the foot of the kerb it comes to."""
    step = np.array([nodes.kind[course.nodes[0]] == STEP for course in courses], bool)
    if not (step & strong).any() or step.all():
        return courses, evidence, strong
    place, _ = places_along(nodes, [course for course, base in zip(courses, step & strong) if base])
    every = listed(courses)
    away = cKDTree(place).query(np.column_stack([nodes.x[every.k], nodes.y[every.k]]), distance_upper_bound=SHADOW)[0]
    beside = np.split(np.isfinite(away), np.cumsum(every.counts)[:-1])
    result, kept = [], []
    for number, (course, near) in enumerate(zip(courses, beside)):
        if not step[number] and not course.closed and near.any():
            free = np.flatnonzero(~near)
            if len(free) < 3:
                continue
            course = Course(course.nodes[free[0] : free[-1] + 1])
        result.append(course)
        kept.append(number)
    return result, evidence[kept], strong[kept]
