"""Check a survey: every point used, flagged or rejected with its reasons, and what was found on the way."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import List, Optional, Tuple

import numpy as np

from ..features.found import Features
from ..gate.gate import Gate, pass_gate
from ..linework.codes import CodeTable
from ..linework.constraints import Constraints, LineKind
from ..linework.convention import DEFAULT_CONVENTION, FieldConvention
from ..linework.join import PointRole, join_lines
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.decisions import Decisions, apply_decisions, words_of_reasons
from ..points.pointset import PointSet, Reason, Status
from ..progress import Progress, part, silent
from ..surface.network import check_extent
from .coded import find_line_faults
from .held_back import Judged, judge_points
from .levels import Levels
from .noise import USUAL_SIGMA
from .repeatability import Repeatability, RunRepeatability
from .repeats import Stop, find_stops, repeated_records, with_means
from .stretches import Fixed
from .suspects import Suspects
from .tolerances import ToleranceSet
from .walk import Walk, make_walk, median_step
from .walk_check import LevelChange, WalkCheck, check_walk, level_changes, settled

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
OFF_LEVEL = Text(
    "quality.off_level",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points from line {line} to {last} lie {size:+.3f} m off those before and after them, which agree: "
        "pole height or fix wrong for a while.",
    ),
)
LEVEL_HIGHER = Text(
    "quality.level_higher",
    QT_TRANSLATE_NOOP(
        "core",
        "From line {first} on heights are {size:.3f} m ± {sigma:.3f} m higher than before, as {met} places visited "
        "twice say: pole height, antenna, base or fix changed. Nothing in the file says which part is right.",
    ),
)
LEVEL_LOWER = Text(
    "quality.level_lower",
    QT_TRANSLATE_NOOP(
        "core",
        "From line {first} on heights are {size:.3f} m ± {sigma:.3f} m lower than before, as {met} places visited "
        "twice say: pole height, antenna, base or fix changed. Nothing in the file says which part is right.",
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
LEFT_OUT = Text(
    "quality.left_out",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points from line {line} to {last} seem to lie {size:+.3f} m off, as passes say that meet them: "
        "flagged and, as a stretch of {length:.0f} m, left out of the surface. Look at it and decide by hand, walk it "
        "again, or keep all flagged stretches in the surface (--keep-flagged).",
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

    ``points``: with statuses and reasons; a stop's first record is moved to the stop's mean. ``findings``: those of the
    gate, then the others in order of recording. ``noise``: how heights repeat over all; ``runs``: the same run by run.
    ``run``: (n,) int64 number of each point's run, -1 outside the walk. ``spacing``, ``passes``: median step and
    distance of the passes (m). ``stops``: where the walker stood. ``automatic``: (n,) uint8 status before decisions by
    hand. ``messages``: what the gate could not tell, overrides, and decisions that name no point. ``tolerances``: what
    the single points were held to. ``first``: what a user must know before all else of limits that concern much of the
    file, and of tilt. ``levels``: where the level of all heights changes. ``found``: lines that the ground shows, None
    without a walk.
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
    first: Tuple[Message, ...]
    levels: Tuple[LevelChange, ...] = ()
    found: Optional[Features] = None


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
    tolerances: Optional[ToleranceSet] = None,
    decisions: Optional[Decisions] = None,
    convention: FieldConvention = DEFAULT_CONVENTION,
    progress: Progress = silent,
    tilt_compensated: Optional[bool] = None,
    keep_flagged: bool = False,
) -> SurveyCheck:
    """Find what auto-recorded points get wrong. Nothing is taken away; points rejected before stay so.

    ``table``: the codes that make lines (None: every point counts as auto-recorded ground). ``decisions``: statuses set
    by hand; they win, and what they change is said. ``tolerances``: the set that the user chose, applied as it stands;
    where None the usual one, whose limits do not reject more than a tenth of the file unasked
    (:mod:`.held_back`). ``tilt_compensated``: whether the rover compensates tilt; where None the file tells, or is
    said not to. ``keep_flagged``: leave no flagged stretch out of the surface (:mod:`.left_out`). Raises SurveyError as
    :func:`.join_lines` does.
    """
    gate = pass_gate(points)
    points, marks, judged = _single_points(gate.points, tolerances, tilt_compensated)
    auto, constraints = _auto_recorded(marks, table, convention)
    spacing = median_step(points.easting[auto], points.northing[auto])
    stops = find_stops(points, auto, spacing)
    points, others = with_means(points, stops)
    marks.points = points
    walk, origin = _walk(marks, auto[~others[auto]])
    marks.run[walk.index] = _runs(points, walk)
    _put_stops(marks, stops)
    progress(0.1, "quality")
    said = check_walk(marks.now(), walk, _fixed(points, constraints, origin), marks.run, part(progress, 0.1, 0.95))
    changes: Tuple[LevelChange, ...] = ()
    if said is not None:
        changes = level_changes(points, walk, said.levels)
        _put_walk(marks, walk, said, keep_flagged)
        _put_level_changes(marks, changes, walk, said.levels)
    noise = None if said is None else said.noise
    passes = float("nan") if said is None else said.passes
    _put_lines(marks, walk, origin, constraints, noise, passes)
    marks.findings.sort(key=lambda each: int(each.indices[0]))
    done, messages = _decided(marks, decisions)
    progress(1.0, "quality")
    return SurveyCheck(
        done, (*_at_gate(gate), *marks.findings), noise, () if said is None else said.runs, marks.run, spacing,
        passes, tuple(stops), marks.status.copy(), (*gate.notes, *messages),
        judged.tolerances, judged.messages, changes, None if said is None else said.found,
    )  # fmt: skip


def _at_gate(gate: Gate) -> List[Finding]:
    """What the gate put aside, now or as the points were read: the first things to be told."""
    none = float("nan")
    return [Finding(one.reason, one.status, one.indices, -1, none, none, one.message) for one in gate.found]


# --- single points -------------------------------------------------------------------------------


def _single_points(
    points: PointSet, tolerances: Optional[ToleranceSet], tilt_compensated: Optional[bool]
) -> Tuple[PointSet, _Marks, Judged]:
    marks = _Marks(points, points.status.copy(), points.reasons.astype(np.uint32), np.full(len(points), -1, np.int64))
    repeated = repeated_records(points, points.used)
    for block in _blocks(repeated):
        marks.put(block, Reason.DUPLICATE, Status.REJECTED, REPEATED)
    judged = judge_points(points, marks.status != Status.REJECTED, tolerances, tilt_compensated)
    for bits in np.unique(judged.reasons[judged.reasons != 0]).tolist():
        failing = judged.reasons == bits
        # What concerns much of the file is told once, not in hundreds of findings.
        for block in [np.flatnonzero(failing)] if bits & judged.many else _blocks(failing):
            reason, words = Reason(bits), words_of_reasons(bits)
            status = Status(int(judged.status[block[0]]))
            marks.put(block, reason, status, BEYOND, set=judged.tolerances.name, reasons=words)
    return points, marks, judged


def _blocks(mask: np.ndarray) -> List[np.ndarray]:
    """Indices of the points of a mask, split where they do not follow each other."""
    index = np.flatnonzero(mask)
    return np.split(index, np.flatnonzero(np.diff(index) > 1) + 1) if len(index) else []


def _auto_recorded(
    marks: _Marks, table: Optional[CodeTable], convention: FieldConvention
) -> Tuple[np.ndarray, Constraints]:
    """Indices of the points that are used and on no line, and the lines."""
    now = marks.now()
    placed = np.isfinite(now.easting + now.northing + now.height) & ~now.alone
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
    plan = np.column_stack([points.easting, points.northing])[points.used & ~points.alone]
    plan = plan[np.isfinite(plan).all(axis=1)]
    check_extent(np.vstack([plan, plan.min(axis=0) - 1]), points.source)
    origin = np.floor(plan.min(axis=0)) - 1
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


def _put_walk(marks: _Marks, walk: Walk, said: WalkCheck, keep_flagged: bool) -> None:
    """Mark what the check of the walk says: parts on another level, points off the ground and in doubt."""
    for each in said.levels.parts:
        index = walk.index[each.first : each.last]
        score = abs(each.offset) / each.sigma
        if not each.sure:
            marks.put(index, Reason.DOUBTFUL_HEIGHT, Status.FLAGGED, DOUBTFUL, each.offset, score)
        elif settled(each, walk):
            marks.put(index, Reason.LEVEL, Status.REJECTED, OFF_LEVEL, each.offset, score)
    left_out = said.left_out & (not keep_flagged)
    _put_suspects(marks, walk, said.suspects, left_out)
    _put_left_out(marks, walk, said.suspects, left_out)


def _put_level_changes(marks: _Marks, changes: Tuple[LevelChange, ...], walk: Walk, levels: Levels) -> None:
    """Tell of changes after which nobody knows which part is right; the shorter part is flagged, none rejected."""
    for change in changes:
        if change.settled:
            continue
        text = LEVEL_HIGHER if change.offset > 0 else LEVEL_LOWER
        index = np.concatenate(
            [
                walk.index[each.first : each.last]
                for each in levels.parts
                if each.sure and change.index in (walk.index[each.first], walk.index[min(each.last, len(walk) - 1)])
            ]
        )
        said = {"first": change.first_line, "sigma": change.sigma, "met": change.meetings}
        score = abs(change.offset) / change.sigma
        marks.put(np.sort(index), Reason.LEVEL, Status.FLAGGED, text, abs(change.offset), score, **said)


def _put_left_out(marks: _Marks, walk: Walk, suspects: Suspects, left_out: np.ndarray) -> None:
    """Mark the stretches in doubt that are left out of the surface."""
    some = np.flatnonzero(left_out)
    reason = Reason.DOUBTFUL_HEIGHT | Reason.LEFT_OUT
    for group in np.split(some, np.flatnonzero(np.diff(suspects.group[some])) + 1) if len(some) else []:
        size = float(np.median(suspects.level[group]))
        score = float(abs(size) / np.median(suspects.sigma[group]))
        length = float(np.hypot(np.diff(walk.x[group]), np.diff(walk.y[group])).sum())
        marks.put(walk.index[group], reason, Status.FLAGGED, LEFT_OUT, size, score, length=length)


def _put_suspects(marks: _Marks, walk: Walk, suspects: Suspects, left_out: np.ndarray) -> None:
    """Mark the groups of points off the ground and those in doubt, but for those ``left_out`` (q,)."""
    lost = walk.regained | np.append(walk.regained[1:], False)
    for mask, sure in ((suspects.off, True), (suspects.doubtful & ~left_out, False)):
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
    white = noise.white if noise is not None and np.isfinite(noise.white) else USUAL_SIGMA
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
