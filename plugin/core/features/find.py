"""From the points of a walk to the lines that the ground shows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List

import numpy as np

from ..points.pointset import PointSet
from ..progress import Progress, silent
from .alongside import find_runs
from .beside import look_beside
from .candidates import find_candidates
from .chains import chain
from .courses import Course, bridge_courses, close_courses, merge_courses, side_of
from .drawn import draw_courses
from .evidence import crowds, evidence_of
from .found import Features, nothing_found
from .gates import gate_chances
from .handed_on import hand_on
from .jumps import jumps_at_gates
from .nodes import Nodes, join_nodes, nodes_of_candidates, nodes_of_run
from .passes import make_passes, noise_at
from .readings import read_gaps
from .segments import cut_into_segments
from .verdict import regular, shadows

#: Fewer points tell of no line.
FEWEST = 60


@dataclass(frozen=True)
class FeatureOptions:
    """What counts as a line.

    ``least_step``: metres; lower steps are not looked for. ``least_bend``: change of slope, metres a metre, that is
    looked for; ``strong_bend``: that a breakline needs (a bank of 1:3 has 0.33). ``strong``: evidence (see
    ``FoundLine``) from which a line is a breakline; ``proposed``: from which it is told at all. ``least_passes``: so many
    passes must share a line.
    """

    least_step: float = 0.03
    least_bend: float = 0.15
    strong_bend: float = 0.25
    strong: float = 6.0
    proposed: float = 2.0
    least_passes: int = 4


def find_features(
    points: PointSet, options: FeatureOptions = FeatureOptions(), progress: Progress = silent
) -> Features:
    """The lines that the points show which are not rejected, taken in the order of recording.

    No code and no time is asked for. Nothing is found where the points are too few to tell.
    """
    passes = make_passes(points)
    if len(passes) < FEWEST:
        return nothing_found(len(points))
    progress(0.1, "features")
    usual, noise = noise_at(passes)
    if not np.isfinite(usual):
        return nothing_found(len(points))
    segments = cut_into_segments(passes, noise)
    progress(0.3, "features")
    jumps = jumps_at_gates(passes, noise, segments)
    found = find_candidates(passes, noise, segments, jumps, options.least_step, options.least_bend)
    edges, chance = gate_chances(passes, noise, jumps, found)
    parts = [nodes_of_candidates(passes, found, edges, chance)]
    courses = [Course(k) for k in chain(found, float(passes.s[-1]))]
    progress(0.5, "features")
    for run in find_runs(passes, noise, look_beside(passes), options.least_step):
        start = sum(len(part) for part in parts)
        parts.append(nodes_of_run(passes, run))
        courses.append(Course(np.arange(start, start + len(run.point))))
    nodes = join_nodes(parts)
    progress(0.6, "features")
    courses = _settle(nodes, courses)
    if not courses:
        return nothing_found(len(points), usual)
    evidence = evidence_of(nodes, crowds(nodes), courses)
    kept = evidence >= options.proposed
    kept &= np.array(
        [len(np.unique(nodes.leg[c.nodes])) >= options.least_passes or nodes.along[c.nodes].any() for c in courses]
    )
    courses = [course for course, keep in zip(courses, kept) if keep]
    evidence = evidence[kept]
    if not courses:
        return nothing_found(len(points), usual)
    nodes, courses, read = read_gaps(passes, jumps, nodes, courses)
    alone = ~shadows(nodes, courses, evidence)
    strong = (evidence >= options.strong) & regular(passes, segments, nodes, courses, read, options.strong_bend)
    courses = [course for course, keep in zip(courses, alone) if keep]
    evidence, strong = evidence[alone], strong[alone]
    progress(0.7, "features")
    drawn = draw_courses(passes, noise, jumps, segments, nodes, courses)
    progress(0.95, "features")
    result = hand_on(points, passes, nodes, courses, read, drawn, evidence, strong, usual)
    progress(1.0, "features")
    return result


def _settle(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Courses that are parts of one line made one, rings closed, the higher ground on the left."""
    courses = bridge_courses(nodes, merge_courses(nodes, courses))
    courses = close_courses(nodes, courses, 3.0)
    return [Course(c.nodes[::-1], c.closed) if side_of(nodes, c) < 0 else c for c in courses]
