"""The check of the walk: levels along time, lines of the ground, stretches off the ground, and how heights repeat.

In this order: long parts on another level are told from all places visited twice; lines that the ground shows are found
on heights brought to one level; what stands off its surroundings is sought with these lines in the ground, and decided
by meetings, lines and steps; how heights repeat is measured on what is left.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Optional, Tuple

import numpy as np

from ..features.find import Profile, find_features, profile_of
from ..features.found import Features
from ..features.ground_lines import ground_lines
from ..features.jumps import jumps_at_gates
from ..features.passes import make_passes, noise_at
from ..features.segments import cut_into_segments
from ..linework.constraints import Constraints
from ..points.pointset import PointSet, make_points
from ..progress import Progress, named, part, silent
from ..surface.giving_way import found_breaklines
from .beside import Beside, look_beside
from .crossings import Track, breaks, find_level_meetings, find_meetings
from .excursions import find_edges
from .ground import ground_net, pass_distance
from .left_out import left_out
from .levels import Level, Levels, find_levels
from .noise import usual_noise
from .repeatability import Repeatability, RunRepeatability, by_run, repeatability
from .stretches import Fixed
from .suspects import Suspects, find_suspects, scale_of
from .verdicts import decide
from .walk import Walk, walking_time

_ALONG = 0.5  # of the points of a stretch: it was walked along a line of the ground
_PASSES = 3  # that share a line which explains what departs
_REACH = 3  # points on either side of a crossing that a line explains
_MUCH = 1000  # one point of so many in doubt is little: without it the rest tells as much


@dataclass(frozen=True)
class WalkCheck:
    """What is said of a walk of q points.

    ``passes``: distance of the passes (m). ``levels``: parts on another level. ``suspects``: points off the ground or
    in doubt, heights brought to one level. ``found``: the lines of the ground. ``noise``, ``runs``: how heights repeat.
    ``left_out``: (q,) bool, points in doubt that :mod:`.left_out` keeps out of the surface.
    """

    passes: float
    levels: Levels
    suspects: Suspects
    found: Features
    noise: Repeatability
    runs: Tuple[RunRepeatability, ...]
    left_out: np.ndarray


def check_walk(points: PointSet, walk: Walk, fixed: Fixed, run: np.ndarray, progress: Progress) -> Optional[WalkCheck]:
    """Check ``walk`` of ``points``; None where it is too short.

    ``fixed``: coded points and lines. ``run``: (n,) number of each point's run.
    """
    if len(walk) < 20 or not np.isfinite(walk.spacing):
        return None
    passes = pass_distance(walk.x, walk.y, np.arange(len(walk)), 30)
    track = Track(walk)
    levels = _levels(points, walk, track, fixed, part(progress, 0.0, 0.05))
    walk = replace(walk, z=walk.z - levels.offset)
    progress(0.05, "quality")
    levelled = _levelled(points, walk)
    profile = profile_of(levelled, named("quality", part(progress, 0.05, 0.1)))
    progress(0.1, "quality")
    found = find_features(levelled, progress=part(progress, 0.1, 0.22), profile=profile)
    shared = shared_lines(found)
    levels = replace(levels, parts=_but_along(levels.parts, walk, shared))
    whole = with_found(fixed, shared, walk, points, part(progress, 0.22, 0.25))
    suspects = find_suspects(walk, whole, passes, part(progress, 0.25, 0.8))
    own = profile if _all_walked(levelled, walk) else None
    suspects = _decided(walk, suspects, track, passes, shared, levels.parts, own, part(progress, 0.8, 0.95))
    progress(0.95, "quality")
    noise, runs = _measured(points, walk, ~suspects.marked, whole, run, part(progress, 0.95, 0.98))
    if not np.isfinite(noise.total) and _MUCH * np.count_nonzero(suspects.doubtful) > len(walk):
        # Where much is in doubt, most of it is good: better heights to be looked at than nothing said.
        noise, runs = _measured(points, walk, ~suspects.off, whole, run, part(progress, 0.98, 1.0))
    scale = scale_of(walk.take(~suspects.off), passes) if suspects.doubtful.any() else None
    out = np.zeros(len(walk), bool) if scale is None else left_out(walk, suspects, scale, track)
    return WalkCheck(passes, levels, suspects, found, noise, runs, out)


def _levels(points: PointSet, walk: Walk, track: Track, fixed: Fixed, progress: Progress) -> Levels:
    """Parts of the walk on another level than the rest."""
    noise = usual_noise(walk)
    broken = breaks(walk, fixed.xyz[fixed.lines][:, :, :2], noise)
    time = walking_time(walk, points.time[walk.index])
    progress(0.2, "quality")
    meetings, slack = find_level_meetings(walk, broken, noise, track, part(progress, 0.2, 0.4))
    progress(0.4, "quality")

    def beside() -> Beside:
        return look_beside(walk, ground_net(walk, fixed.xyz, fixed.lines, part(progress, 0.5, 1.0)), fixed.xyz)

    return find_levels(walk, time, meetings, slack, noise, beside)


def _levelled(points: PointSet, walk: Walk) -> PointSet:
    """The points with the heights of the walk."""
    height = points.height.copy()
    height[walk.index] = walk.z
    return replace(points, height=height)


def shared_lines(found: Features) -> Features:
    """The lines but for those that one or two passes alone show: a pass on another level looks like one."""
    few = np.array([line.passes < _PASSES for line in found.lines] + [False])
    lines = tuple(replace(line, strong=line.strong and line.passes >= _PASSES) for line in found.lines)
    alone = few[found.on_line]
    return replace(found, lines=lines, on_line=np.where(alone, -1, found.on_line), explained=found.explained & ~alone)


def _but_along(parts: Tuple[Level, ...], walk: Walk, found: Features) -> Tuple[Level, ...]:
    """The parts but for those that are not sure and were walked along a line of the ground."""
    along = found.on_line[walk.index] >= 0
    return tuple(each for each in parts if each.sure or np.mean(along[each.first : each.last]) < _ALONG)


def with_found(fixed: Fixed, found: Features, walk: Walk, points: PointSet, progress: Progress = silent) -> Fixed:
    """The coded points and lines, and the strong lines that were found without codes."""
    origin = np.array([points.easting[walk.index[0]] - walk.x[0], points.northing[walk.index[0]] - walk.y[0], 0.0])
    xyz, pairs, start = [fixed.xyz], [fixed.lines], len(fixed.xyz)
    held = found_breaklines(
        ground_lines(found), Constraints(), make_points([], [], []), named("quality", part(progress, 0.0, 0.9))
    )
    for line in held.breaklines.lines:
        xyz.append(line.xyz - origin)
        steps = np.arange(start, start + len(line.xyz) - 1)
        pairs.append(np.column_stack([steps, steps + 1]))
        start += len(line.xyz)
    return Fixed(np.vstack(xyz), np.vstack(pairs))


def _decided(
    walk: Walk, suspects: Suspects, track: Track, passes: float, found: Features, levels: Tuple[Level, ...],
    profile: Optional[Profile], progress: Progress,
) -> Suspects:  # fmt: skip
    scale = scale_of(walk.take(~suspects.off), passes)
    progress(0.0, "quality")
    if scale is None or suspects.net is None or suspects.beside is None:
        return suspects
    explained = _explained(found, walk)
    own = _along(walk, profile)
    progress(0.0, "quality")
    edges = find_edges(own.passes, own.jumps, own.noise, scale.total, explained)
    progress(0.0, "quality")
    return decide(walk, suspects, edges, scale, explained, suspects.net, suspects.beside, track, levels, progress)


def _all_walked(points: PointSet, walk: Walk) -> bool:
    """Whether the points that features look at are those of the walk."""
    placed = np.isfinite(points.easting + points.northing + points.height)
    return bool(np.array_equal(np.flatnonzero(points.used & placed), walk.index))


def _along(walk: Walk, profile: Optional[Profile]) -> Profile:
    """The profile along the walk, whose ``index`` counts its points; ``profile``: that of the same points in a set."""
    if profile is not None:
        place = np.full(int(max(walk.index[-1], profile.passes.index[-1])) + 1, -1)
        place[walk.index] = np.arange(len(walk))
        return replace(profile, passes=replace(profile.passes, index=place[profile.passes.index]))
    passes = make_passes(make_points(walk.x, walk.y, walk.z))
    usual, noise = noise_at(passes)
    segments = cut_into_segments(passes, noise)
    return Profile(passes, usual, noise, segments, jumps_at_gates(passes, noise, segments))


def _explained(found: Features, walk: Walk) -> np.ndarray:
    """How far (m) a found line makes each point (q,) of the walk depart from its surroundings."""
    size = np.array([line.step if np.isfinite(line.step) else line.bend * walk.spacing for line in found.lines])
    line = found.on_line[walk.index]
    by = np.zeros(len(walk))
    by[line >= 0] = np.abs(size)[line[line >= 0]]
    near = found.explained[walk.index]
    for shift in range(1, _REACH + 1):
        by[shift:] = np.maximum(by[shift:], by[:-shift] * near[shift:])
        by[:-shift] = np.maximum(by[:-shift], by[shift:] * near[:-shift])
    return np.where(near, by, 0.0)


def _measured(
    points: PointSet, walk: Walk, good: np.ndarray, fixed: Fixed, run: np.ndarray, progress: Progress
) -> Tuple[Repeatability, Tuple[RunRepeatability, ...]]:
    rest = walk.take(good)
    index = rest.index
    noise = usual_noise(rest)
    progress(0.1, "quality")
    broken = breaks(rest, fixed.xyz[fixed.lines][:, :, :2], noise)
    progress(0.3, "quality")
    meetings = find_meetings(rest, broken, noise, progress=part(progress, 0.3, 0.6))
    progress(0.6, "quality")
    whole = repeatability(rest, meetings, broken, walking_time(rest, points.time[index]), part(progress, 0.6, 1.0))
    return whole, by_run(meetings, run[index], points.sigma_v[index], whole)


@dataclass(frozen=True)
class LevelChange:
    """From the point ``index`` on, line ``first_line``, heights are ``offset`` (m, give or take ``sigma``) higher.

    ``time``: seconds since 1970, nan unknown; ``meetings``: places visited twice that say so. ``settled``: the part off
    lies between two that agree, and was rejected; else nobody knows which part is right.
    """

    index: int
    first_line: int
    time: float
    offset: float
    sigma: float
    meetings: int
    settled: bool


def settled(level: Level, walk: Walk) -> bool:
    """Whether the rest of the walk says that the part is off: it lies between two that agree, and is the smaller."""
    return level.returned and 2 * (level.last - level.first) < len(walk)


def level_changes(points: PointSet, walk: Walk, levels: Levels) -> Tuple[LevelChange, ...]:
    """Where the level of the walk changes for sure, in order."""
    changes: List[LevelChange] = []
    sure = [each for each in levels.parts if each.sure]
    for edge in sorted({each.first for each in sure} | {each.last for each in sure}):
        if not 0 < edge < len(walk):
            continue
        before = [each for each in sure if each.last == edge]
        after = [each for each in sure if each.first == edge]
        both = before + after
        offset = sum(each.offset for each in after) - sum(each.offset for each in before)
        index = int(walk.index[edge])
        changes.append(
            LevelChange(
                index,
                int(points.source_line[index]),
                float(points.time[index]),
                float(offset),
                float(np.sqrt(sum(each.sigma**2 for each in both))),
                min(each.meetings for each in both),
                all(settled(each, walk) for each in both),
            )
        )
    return tuple(changes)
