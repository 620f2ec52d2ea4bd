"""From the points of a walk to the lines that the ground shows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from ..points.pointset import PointSet
from ..progress import Progress, part, silent
from .alongside import find_runs
from .beside import look_beside
from .candidates import find_candidates, nearest_of_kind
from .chains import NEIGHBOURS, chain
from .courses import Course, bridge_courses, close_courses, listed, merge_courses, sides_of, without_tails
from .ditches import fit_ditches
from .drawn import draw_courses
from .evidence import CROWD, crowds, evidence_of
from .found import FEWEST, Features, nothing_found
from .gaps import cut_gaps, off_steps
from .gates import gate_chances
from .handed_on import hand_on
from .islands import with_islands
from .jumps import Jumps, jumps_at_gates
from .mouths import cut_mouths
from .nodes import Nodes, join_nodes, nodes_of_candidates, nodes_of_runs
from .parallel import parallel_evidence
from .passes import Passes, in_order, make_passes, noise_at
from .readings import blocks_of, read_courses
from .rings import close_rounds
from .rivals import doubtful
from .segments import Segments, cut_into_segments
from .street_mouths import open_mouths
from .verdict import regular, shadows

#: Courses that have so few decades less than it takes are looked at more closely.
READ_MORE = 4.0
#: Decades that a strong line has for each pass that crosses it; chance finds less order in more passes.
EACH_PASS = 0.55


@dataclass(frozen=True)
class FeatureOptions:
    """What counts as a line.

    ``least_step``: metres; lower steps are not looked for. ``least_bend``: change of slope, metres a metre, that is
    looked for; ``strong_bend``: that a breakline needs (a bank of 1:3 has 0.33). ``strong``: evidence (see
    ``FoundLine``) from which a line is a breakline; ``proposed``: from which it is told at all. ``least_passes``: so
    many passes must share a line.
    """

    least_step: float = 0.03
    least_bend: float = 0.15
    strong_bend: float = 0.25
    strong: float = 6.0
    proposed: float = 2.0
    least_passes: int = 4


@dataclass(frozen=True)
class Profile:
    """The profile along the legs of a walk: ``passes``, the ``usual`` noise of a height (m) and that about each point
    ``noise`` (q,), straight pieces, and jumps between points.
    """

    passes: Passes
    usual: float
    noise: np.ndarray
    segments: Segments
    jumps: Jumps


def profile_of(points: PointSet, progress: Progress = silent) -> Optional[Profile]:
    """The profile along the points that are not rejected, in the order of recording; None where they are too few to
    tell, or do not follow each other as on a walk.
    """
    passes = make_passes(points)
    if len(passes) < FEWEST:
        return None
    progress(0.1, "features")
    usual, noise = noise_at(passes)
    if not np.isfinite(usual) or not in_order(passes):
        return None
    segments = cut_into_segments(passes, noise)
    progress(0.3, "features")
    return Profile(passes, usual, noise, segments, jumps_at_gates(passes, noise, segments))


def find_features(
    points: PointSet,
    options: FeatureOptions = FeatureOptions(),
    progress: Progress = silent,
    profile: Optional[Profile] = None,
) -> Features:
    """The lines that the points show which are not rejected, taken in the order of recording.

    No code and no time is asked for. Nothing is found, and no noise told, where the points are too few to tell, or do
    not follow each other as on a walk. ``profile``: of these points, where it is known.
    """
    profile = profile_of(points, progress) if profile is None else profile
    if profile is None:
        return nothing_found(len(points))
    passes, usual, noise, segments, jumps = (
        profile.passes, profile.usual, profile.noise, profile.segments, profile.jumps
    )  # fmt: skip
    found = find_candidates(passes, noise, segments, jumps, options.least_step, options.least_bend)
    progress(0.35, "features")
    nearest = nearest_of_kind(found, max(CROWD, NEIGHBOURS) + 1)
    progress(0.4, "features")
    edges, chance = gate_chances(passes, noise, jumps, found)
    parts = [nodes_of_candidates(passes, found, edges, chance)]
    progress(0.45, "features")
    courses = [Course(k) for k in chain(found, nearest, float(passes.s[-1]))]
    progress(0.5, "features")
    runs = find_runs(passes, noise, look_beside(passes), options.least_step)
    parts.append(nodes_of_runs(passes, runs))
    end = len(found) + np.cumsum(runs.counts)
    courses += [Course(np.arange(a, b)) for a, b in zip((end - runs.counts).tolist(), end.tolist())]
    nodes = join_nodes(parts)
    progress(0.6, "features")
    blocks = blocks_of(passes)
    nodes, courses, told = with_islands(passes, noise, blocks, found, nodes, _settle(nodes, courses))
    if not courses:
        return nothing_found(len(points), usual)
    progress(0.61, "features")
    crowd = np.append(crowds(found, nearest), np.full(len(nodes) - len(found), np.nan))
    evidence = np.maximum(evidence_of(nodes, crowd, courses), told)
    courses, evidence = _kept(courses, evidence, evidence >= options.proposed - READ_MORE)
    if not courses:
        return nothing_found(len(points), usual)
    nodes, courses, bridging, evidence = read_courses(passes, blocks, noise, jumps, nodes, courses, evidence)
    courses, evidence = cut_gaps(nodes, crowd, courses, bridging, evidence)
    courses, evidence = open_mouths(nodes, crowd, courses, bridging, evidence)
    kept = (evidence >= options.proposed) & _shared(nodes, courses, bridging, options.least_passes)
    courses, evidence = _kept(courses, evidence, kept)
    if not courses:
        return nothing_found(len(points), usual)
    progress(0.63, "features")
    needed = np.maximum(options.strong, EACH_PASS * _crossed(nodes, courses, bridging))
    steady = regular(passes, segments, nodes, courses, bridging, options.strong_bend, evidence >= needed)
    evidence = parallel_evidence(nodes, crowd, courses, evidence, needed, steady)
    enough = evidence >= needed
    steady &= ~doubtful(passes, noise, blocks, nodes, courses, steady & enough)
    progress(0.64, "features")
    nodes, courses, bridging, evidence, strong = fit_ditches(
        passes,
        noise,
        blocks,
        nodes,
        courses,
        bridging,
        evidence,
        steady & enough,
        enough,
        options.strong_bend,
        part(progress, 0.64, 0.7),
    )
    alone = ~shadows(nodes, courses, evidence)
    courses = [course for course, keep in zip(courses, alone) if keep]
    courses, evidence, strong = off_steps(nodes, courses, evidence[alone], strong[alone])
    courses, evidence, strong = cut_mouths(nodes, courses, evidence, strong)
    progress(0.7, "features")
    drawn = draw_courses(passes, noise, jumps, segments, nodes, courses, bridging, part(progress, 0.7, 0.95))
    progress(0.95, "features")
    result = hand_on(points, passes, nodes, courses, bridging, drawn, evidence, strong, usual)
    progress(1.0, "features")
    return result


def _settle(nodes: Nodes, courses: List[Course]) -> List[Course]:
    """Courses that are parts of one line made one, rings closed, the higher ground on the left."""
    courses = bridge_courses(nodes, merge_courses(nodes, courses))
    courses = close_courses(nodes, [course for course in courses if len(course.nodes) >= 3], 3.0)
    courses = without_tails(nodes, close_rounds(nodes, courses))
    up = sides_of(nodes, courses)
    return [Course(c.nodes[::-1], c.closed) if side < 0 else c for c, side in zip(courses, up)]


def _kept(courses: List[Course], evidence: np.ndarray, keep: np.ndarray) -> Tuple[List[Course], np.ndarray]:
    return [course for course, kept in zip(courses, keep) if kept], evidence[keep]


def _shared(nodes: Nodes, courses: List[Course], bridging: np.ndarray, least: int) -> np.ndarray:
    """Mask of the courses that so many passes show, or that one walks along."""
    every = listed(courses)
    k, of = every.k[~bridging[every.k]], every.of[~bridging[every.k]]
    pairs = np.unique(np.column_stack([of, nodes.leg[k]]), axis=0)
    along = np.bincount(of, weights=nodes.along[k], minlength=len(courses)) > 0
    result: np.ndarray = (np.bincount(pairs[:, 0], minlength=len(courses)) >= least) | along
    return result


def _crossed(nodes: Nodes, courses: List[Course], bridging: np.ndarray) -> np.ndarray:
    """Candidates of crossing passes in each course, that no outline gives."""
    every = listed(courses)
    across = ~bridging[every.k] & ~nodes.along[every.k] & np.isnan(nodes.height[every.k])
    return np.bincount(every.of[across], minlength=len(courses))
