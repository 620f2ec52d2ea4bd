"""Check a survey: every point used, flagged or rejected with its reasons, and what was found on the way."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import List, Optional, Tuple

import numpy as np

from ..features.find import find_features
from ..features.found import Features, breaklines
from ..features.jumps import jumps_at_gates
from ..features.passes import make_passes, noise_at
from ..features.segments import cut_into_segments
from ..linework.codes import CodeTable
from ..linework.constraints import Constraints, LineKind
from ..linework.convention import DEFAULT_CONVENTION, FieldConvention
from ..linework.join import PointRole, join_lines
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.decisions import Decisions, apply_decisions, words_of_reasons
from ..points.pointset import PointSet, Reason, Status, make_points
from ..progress import Progress, part, silent
from .beside import Beside, look_beside
from .coded import find_line_faults
from .crossings import breaks, find_level_meetings, find_meetings
from .excursions import Excursions, find_excursions
from .ground import ground_net, pass_distance
from .levels import Levels, find_levels
from .noise import usual_noise
from .repeatability import Repeatability, RunRepeatability, by_run, repeatability
from .repeats import Stop, find_stops, repeated_records, with_means
from .stretches import Fixed
from .suspects import Suspects, find_suspects, scale_of
from .tolerances import TOPOGRAPHIC, ToleranceSet, judge, status_of
from .verdicts import decide
from .walk import Walk, make_walk, median_step, walking_time

OFF_GROUND = Text(
    "quality.off_ground",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points from line {line} to {last} lie {size:+.3f} m off the ground around them: pole lifted or "
        "of another height.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {line} lies {size:+.3f} m off the ground around it: pole lifted or of another height.",
    ),
)
FIX_STEP = Text(
    "quality.fix_step",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points from line {line} to {last}, next to a loss of the fix, lie {size:+.3f} m off the ground "
        "around them: ambiguities fixed wrongly.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The point of line {line}, next to a loss of the fix, lies {size:+.3f} m off the ground around it: "
        "ambiguities fixed wrongly.",
    ),
)
DOUBTFUL = Text(
    "quality.doubtful",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points from line {line} to {last} may lie {size:+.3f} m off, or the ground steps there: look at it.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "The point of line {line} may lie {size:+.3f} m off, or the ground steps there: look at it."
    ),
)
STOOD = Text(
    "quality.stood",
    QT_TRANSLATE_NOOP(
        "core",
        "{stored} points from line {first} to {last} were stored in one place; the first now has their weighted mean, "
        "the others are kept out. Spread {plan:.3f} m in plan, {size:.3f} m in height.",
    ),
)
REPEATED = Text(
    "quality.repeated",
    QT_TRANSLATE_NOOP("core", "{count} points from line {line} to {last} repeat earlier ones."),
    one=QT_TRANSLATE_NOOP("core", "The point of line {line} repeats an earlier one."),
)
BEYOND = Text(
    "quality.beyond_tolerance",
    QT_TRANSLATE_NOOP(
        "core", "{count} points from line {line} to {last} are beyond the tolerances '{set}' ({reasons})."
    ),
    one=QT_TRANSLATE_NOOP("core", "The point of line {line} is beyond the tolerances '{set}' ({reasons})."),
)
OFF_LINE = Text(
    "quality.off_line",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} coded points from line {line} to {last} stand {size:+.3f} m off their line and the ground beside it.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "The coded point of line {line} stands {size:+.3f} m off its line and the ground beside it."
    ),
)
PERHAPS_OFF_LINE = Text(
    "quality.perhaps_off_line",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} coded points from line {line} to {last} may stand {size:+.3f} m off their line, or the line steps "
        "there: look at it.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The coded point of line {line} may stand {size:+.3f} m off its line, or the line steps there: look at it.",
    ),
)
OVERRIDDEN = Text(
    "quality.overridden",
    QT_TRANSLATE_NOOP(
        "core", "{count} statuses were set by hand against the automatic checks, the first in line {line}."
    ),
    one=QT_TRANSLATE_NOOP("core", "One status was set by hand against the automatic checks, in line {line}."),
)

_ALONG = 0.5  # of the points of a stretch: it was walked along a line of the ground
_USUAL_NOISE = 0.015  # m, where the survey does not tell
_PAUSE = 60.0  # seconds without a record that end a run


@dataclass(frozen=True)
class Finding:
    """One thing found: the ``reason`` it gives its points, the ``status`` it puts them in, ``indices`` (k,) of
    the points,
    their ``run`` (-1 outside the walk), ``size`` (m, nan where none), ``significance`` (size over its standard
    deviation, nan where none) and a message for people.
    """

    reason: Reason
    status: Status
    indices: np.ndarray
    run: int
    size: float
    significance: float
    message: Message


@dataclass(frozen=True)
class SurveyCheck:
    """Result of :func:`check_survey` for n points.

    ``points``: with statuses and reasons; a stop's first record is moved to the stop's mean. ``findings``: in order of
    recording. ``noise``: how heights repeat over all; ``runs``: the same run by run. ``run``: (n,) int64 number of each
    point's run, -1 outside the walk. ``spacing``, ``passes``: median step and distance of the passes (m). ``stops``:
    where the walker stood. ``automatic``: (n,) uint8 status before decisions by hand. ``messages``: overrides and
    decisions that name no point. ``tolerances``: what the single points were held to.
    """

    points: PointSet
    findings: Tuple[Finding, ...]
    noise: Optional[Repeatability]
    runs: Tuple[RunRepeatability, ...]
    run: np.ndarray
    spacing: float
    passes: float
    stops: Tuple[Stop, ...]
    automatic: np.ndarray
    messages: Tuple[Message, ...]
    tolerances: ToleranceSet


@dataclass
class _Marks:
    """Statuses and reasons being gathered."""

    points: PointSet
    status: np.ndarray
    reasons: np.ndarray
    run: np.ndarray
    findings: List[Finding] = field(default_factory=list)

    def put(
        self, indices: np.ndarray, reason: Reason, status: Status, text: Text, size: float = float("nan"),
        significance: float = float("nan"), **values: object,
    ) -> None:  # fmt: skip
        """Mark points; a status never gets milder."""
        self.status[indices] = np.maximum(self.status[indices], np.uint8(status))
        self.reasons[indices] |= np.uint32(reason)
        lines = self.points.source_line[indices]
        told = message(text, count=len(indices), line=int(lines[0]), last=int(lines[-1]), size=size, **values)
        run = int(self.run[indices[0]])
        self.findings.append(Finding(reason, status, indices, run, size, significance, told))

    def now(self) -> PointSet:
        return self.points.with_status(self.status, self.reasons)


def check_survey(
    points: PointSet,
    table: Optional[CodeTable] = None,
    tolerances: ToleranceSet = TOPOGRAPHIC,
    decisions: Optional[Decisions] = None,
    convention: FieldConvention = DEFAULT_CONVENTION,
    progress: Progress = silent,
) -> SurveyCheck:
    """Find what auto-recorded points get wrong. Nothing is taken away; points rejected before stay so.

    ``table``: the codes that make lines (None: every point counts as auto-recorded ground). ``decisions``: statuses set
    by hand; they win, and what they change is said. Raises SurveyError as :func:`.join_lines` does.
    """
    points, marks = _single_points(points, tolerances)
    auto, constraints = _auto_recorded(marks, table, convention)
    spacing = median_step(points.easting[auto], points.northing[auto])
    stops = find_stops(points, auto, spacing)
    points, others = with_means(points, stops)
    marks.points = points
    walk, origin = _walk(marks, auto[~others[auto]])
    marks.run[walk.index] = _runs(points, walk)
    _put_stops(marks, stops)
    progress(0.1, "quality")
    noise, runs, passes = _walked(marks, walk, _fixed(points, constraints, origin), part(progress, 0.1, 0.95))
    _put_lines(marks, walk, origin, constraints, noise, passes)
    marks.findings.sort(key=lambda each: int(each.indices[0]))
    done, messages = _decided(marks, decisions)
    progress(1.0, "quality")
    return SurveyCheck(
        done, tuple(marks.findings), noise, runs, marks.run, spacing, passes, tuple(stops), marks.status.copy(),
        messages, tolerances,
    )  # fmt: skip


# --- single points -------------------------------------------------------------------------------


def _single_points(points: PointSet, tolerances: ToleranceSet) -> Tuple[PointSet, _Marks]:
    marks = _Marks(points, points.status.copy(), points.reasons.astype(np.uint32), np.full(len(points), -1, np.int64))
    repeated = repeated_records(points, points.used)
    for block in _blocks(repeated):
        marks.put(block, Reason.DUPLICATE, Status.REJECTED, REPEATED)
    failing = np.where(marks.status == Status.REJECTED, 0, judge(points, tolerances))
    status = status_of(failing)
    for bits in np.unique(failing[failing != 0]).tolist():
        for block in _blocks(failing == bits):
            reason, words = Reason(bits), words_of_reasons(bits)
            marks.put(block, reason, Status(int(status[block[0]])), BEYOND, set=tolerances.name, reasons=words)
    return points, marks


def _blocks(mask: np.ndarray) -> List[np.ndarray]:
    """Indices of the points of a mask, split where they do not follow each other."""
    index = np.flatnonzero(mask)
    return np.split(index, np.flatnonzero(np.diff(index) > 1) + 1) if len(index) else []


def _auto_recorded(
    marks: _Marks, table: Optional[CodeTable], convention: FieldConvention
) -> Tuple[np.ndarray, Constraints]:
    """Indices of the points that are used and on no line, and the lines."""
    now = marks.now()
    placed = np.isfinite(now.easting + now.northing + now.height)
    if table is None:
        return np.flatnonzero(now.used & placed), Constraints()
    linework = join_lines(now, table, convention)
    return np.flatnonzero((linework.roles == PointRole.GROUND) & placed), linework.constraints


def _put_stops(marks: _Marks, stops: List[Stop]) -> None:
    for stop in stops:
        size, plan = float(stop.spread[2]), float(np.hypot(*stop.spread[:2]))
        said = {"stored": len(stop.indices), "first": int(marks.points.source_line[stop.indices[0]]), "plan": plan}
        marks.put(stop.indices[1:], Reason.STANDING_STILL, Status.REJECTED, STOOD, size, **said)


# --- the walk ------------------------------------------------------------------------------------


def _walk(marks: _Marks, index: np.ndarray) -> Tuple[Walk, np.ndarray]:
    points = marks.points
    if not len(index):
        nothing = np.empty(0)
        return make_walk(np.empty(0, np.int64), nothing, nothing, nothing), np.zeros(2)
    plan = np.column_stack([points.easting, points.northing])[points.used]
    origin = np.floor(np.nanmin(plan, axis=0)) - 1
    x, y = points.easting[index] - origin[0], points.northing[index] - origin[1]
    lost = np.cumsum((marks.reasons & np.uint32(Reason.NO_FIX)) != 0)[index]
    return make_walk(index, x, y, points.height[index], np.diff(lost, prepend=0) > 0), origin


def _runs(points: PointSet, walk: Walk) -> np.ndarray:
    """Run (q,) of each point of the walk: new after a gap, a pause, or another kind of fix."""
    if not len(walk):
        return np.empty(0, np.int64)
    time, fix = points.time[walk.index], points.fix[walk.index]
    with np.errstate(invalid="ignore"):
        new = (np.diff(walk.piece) != 0) | (np.diff(time) > _PAUSE) | (np.diff(fix) != 0)
    runs: np.ndarray = np.append(0, np.cumsum(new))
    return runs


def _fixed(points: PointSet, constraints: Constraints, origin: np.ndarray) -> Fixed:
    """Coded points with heights, and the breaklines between them."""
    xyz, pairs, start = [np.empty((0, 3))], [np.empty((0, 2), np.int64)], 0
    for line in constraints.lines:
        if line.kind & LineKind.VOID or not np.isfinite(line.xyz).all():
            continue
        xyz.append(line.xyz - np.append(origin, 0.0))
        if line.kind & LineKind.BREAKLINE:
            steps = np.arange(start, start + len(line.xyz) - 1)
            pairs.append(np.column_stack([steps, steps + 1]))
        start += len(line.xyz)
    return Fixed(np.vstack(xyz), np.vstack(pairs))


def _walked(
    marks: _Marks, walk: Walk, fixed: Fixed, progress: Progress
) -> Tuple[Optional[Repeatability], Tuple[RunRepeatability, ...], float]:
    """Search the walk, mark what is off, and measure how the rest repeats."""
    if len(walk) < 20 or not np.isfinite(walk.spacing):
        return None, (), float("nan")
    passes = pass_distance(walk.x, walk.y, np.arange(len(walk)), 30)
    levels = _levels(marks.points, walk, fixed)
    walk = replace(walk, z=walk.z - levels.offset)
    found = find_features(_levelled(marks.now(), walk, levels))
    fixed = _with_found(fixed, found, walk, marks.points)
    suspects = find_suspects(walk, fixed, passes, part(progress, 0.0, 0.9))
    scale = scale_of(walk.take(~suspects.off), passes)
    if scale is not None and suspects.net is not None and suspects.beside is not None:
        explained = _explained(found, walk)
        excursions = _excursions(walk, scale.total, explained)
        suspects = decide(walk, suspects, excursions, scale, explained, suspects.net, suspects.beside)
    _put_levels(marks, walk, levels, found)
    _put_suspects(marks, walk, suspects)
    noise, runs = _measured(marks, walk, ~suspects.marked, fixed)
    if not np.isfinite(noise.total) and suspects.doubtful.any():
        # Where much is in doubt, most of it is good: better heights to be looked at than nothing said.
        noise, runs = _measured(marks, walk, ~suspects.off, fixed)
    return noise, runs, passes


def _levels(points: PointSet, walk: Walk, fixed: Fixed) -> Levels:
    """Parts of the walk on another level than the rest."""
    noise = usual_noise(walk)
    broken = breaks(walk, fixed.xyz[fixed.lines][:, :, :2], noise)
    time = walking_time(walk, points.time[walk.index])
    meetings, slack = find_level_meetings(walk, broken, noise)

    def beside() -> Beside:
        return look_beside(walk, ground_net(walk, fixed.xyz, fixed.lines), fixed.xyz)

    return find_levels(walk, time, meetings, slack, noise, beside)


def _excursions(walk: Walk, sigma: float, explained: np.ndarray) -> Excursions:
    passes = make_passes(make_points(walk.x, walk.y, walk.z))
    _, noise = noise_at(passes)
    jumps = jumps_at_gates(passes, noise, cut_into_segments(passes, noise))
    return find_excursions(walk, passes, jumps, noise, sigma, explained)


def _explained(found: Features, walk: Walk) -> np.ndarray:
    """How far (m) a found line makes each point (q,) of the walk depart from its surroundings."""
    size = np.array([line.step if np.isfinite(line.step) else line.bend * walk.spacing for line in found.lines])
    line = found.on_line[walk.index]
    by = np.zeros(len(walk))
    by[line >= 0] = np.abs(size)[line[line >= 0]]
    near = found.explained[walk.index]
    for shift in (1, 2, 3):
        by[shift:] = np.maximum(by[shift:], by[:-shift] * near[shift:])
        by[:-shift] = np.maximum(by[:-shift], by[shift:] * near[:-shift])
    return np.where(near, by, 0.0)


def _levelled(points: PointSet, walk: Walk, levels: Levels) -> PointSet:
    """The points with the walk's heights brought to one level."""
    height = points.height.copy()
    height[walk.index] -= levels.offset
    return replace(points, height=height)


def _with_found(fixed: Fixed, found: Features, walk: Walk, points: PointSet) -> Fixed:
    """The coded points and lines, and the strong lines that were found without codes."""
    origin = np.array([points.easting[walk.index[0]] - walk.x[0], points.northing[walk.index[0]] - walk.y[0], 0.0])
    xyz, pairs, start = [fixed.xyz], [fixed.lines], len(fixed.xyz)
    for line in breaklines(found).lines:
        xyz.append(line.xyz - origin)
        steps = np.arange(start, start + len(line.xyz) - 1)
        pairs.append(np.column_stack([steps, steps + 1]))
        start += len(line.xyz)
    return Fixed(np.vstack(xyz), np.vstack(pairs))


def _put_levels(marks: _Marks, walk: Walk, levels: Levels, found: Features) -> None:
    """Reject what is off between two parts that agree; tell of the rest, whose parts may each be right."""
    along = found.on_line[walk.index] >= 0
    for part in levels.parts:
        index = walk.index[part.first : part.last]
        score = abs(part.offset) / part.sigma
        if not part.sure:
            if np.mean(along[part.first : part.last]) < _ALONG:
                marks.put(index, Reason.DOUBTFUL_HEIGHT, Status.FLAGGED, DOUBTFUL, part.offset, score)
        elif part.returned and 2 * len(index) < len(walk):
            marks.put(index, Reason.POLE_HEIGHT, Status.REJECTED, OFF_GROUND, part.offset, score)
        else:
            marks.put(index, Reason.POLE_HEIGHT, Status.FLAGGED, OFF_GROUND, part.offset, score)


def _measured(
    marks: _Marks, walk: Walk, good: np.ndarray, fixed: Fixed
) -> Tuple[Repeatability, Tuple[RunRepeatability, ...]]:
    rest = walk.take(good)
    index = rest.index
    noise = usual_noise(rest)
    broken = breaks(rest, fixed.xyz[fixed.lines][:, :, :2], noise)
    meetings = find_meetings(rest, broken, noise)
    whole = repeatability(rest, meetings, broken, walking_time(rest, marks.points.time[index]))
    return whole, by_run(meetings, marks.run[index], marks.points.sigma_v[index], whole)


def _put_suspects(marks: _Marks, walk: Walk, suspects: Suspects) -> None:
    """Mark the groups of points off the ground and those in doubt."""
    lost = walk.regained | np.append(walk.regained[1:], False)
    for mask, sure in ((suspects.off, True), (suspects.doubtful, False)):
        some = np.flatnonzero(mask)
        for group in np.split(some, np.flatnonzero(np.diff(suspects.group[some])) + 1) if len(some) else []:
            size = float(np.median(suspects.level[group]))
            score = float(abs(size) / np.median(suspects.sigma[group]))
            if not sure:
                marks.put(walk.index[group], Reason.DOUBTFUL_HEIGHT, Status.FLAGGED, DOUBTFUL, size, score)
            elif lost[group].any():
                marks.put(walk.index[group], Reason.FIX_JUMP, Status.REJECTED, FIX_STEP, size, score)
            else:
                marks.put(walk.index[group], Reason.POLE_HEIGHT, Status.REJECTED, OFF_GROUND, size, score)


def _put_lines(
    marks: _Marks, walk: Walk, origin: np.ndarray, constraints: Constraints, noise: Optional[Repeatability],
    passes: float,
) -> None:  # fmt: skip
    """Mark the runs of points off their coded line."""
    white = noise.white if noise is not None and np.isfinite(noise.white) else _USUAL_NOISE
    total = noise.total if noise is not None and np.isfinite(noise.total) else 1.2 * white
    good = marks.status[walk.index] == Status.USED
    ground = np.column_stack([walk.x, walk.y, walk.z])[good] + np.append(origin, 0.0)
    for fault in find_line_faults(constraints, ground, white, total, passes):
        status, text = (Status.REJECTED, OFF_LINE) if fault.sure else (Status.FLAGGED, PERHAPS_OFF_LINE)
        marks.put(fault.index, Reason.OFF_LINE, status, text, fault.offset, abs(fault.offset) / fault.sigma)


def _decided(marks: _Marks, decisions: Optional[Decisions]) -> Tuple[PointSet, Tuple[Message, ...]]:
    done = marks.now()
    if decisions is None:
        return done, ()
    decided, messages = apply_decisions(done, decisions)
    changed = np.flatnonzero(decided.status != done.status)
    if len(changed):
        line = int(done.source_line[changed[0]])
        messages = (*messages, message(OVERRIDDEN, count=len(changed), line=line, indices=changed))
    return decided, messages
