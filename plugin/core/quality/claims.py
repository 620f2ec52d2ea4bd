"""Whether a survey's accuracy can be claimed at all, and if not, why not.

No accuracy class and no contour interval is told while heights change their level and nobody knows which part is right,
while long stretches were kept out that neither the receiver nor a repeated record explains, or while much is in doubt.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import List, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import GATE_REASONS, PointSet, Reason, Status
from .check import SurveyCheck
from .check_points import CheckPoints
from .walk import plain_tree
from .walk_check import LevelChange

#: A stretch of the walk that the checks alone kept out is long from so many metres; a survey is in doubt from this
#: share of its points.
LONG, MUCH = 20.0, 0.05
_BESIDE = 1.0  # m: how near a point of the survey must be to a check point
_FEWEST = 3  # check points that tell which part is right
_GAP = 4.0  # median steps between two points of one stretch
_RECEIVER = (
    Reason.NO_FIX
    | Reason.SIGMA_HORIZONTAL
    | Reason.SIGMA_VERTICAL
    | Reason.TILT
    | Reason.PDOP
    | Reason.CORRECTION_AGE
    | Reason.FEW_EPOCHS
)
_EXPLAINED = np.uint32(
    _RECEIVER | Reason.DUPLICATE | Reason.STANDING_STILL | Reason.BY_HAND | Reason.CHECK_SHOT | Reason.NOT_GROUND
    | GATE_REASONS
)  # fmt: skip

LEVEL_OPEN = Text(
    "claims.level_open",
    QT_TRANSLATE_NOOP(
        "core",
        "Heights change their level by {size:+.3f} m ± {sigma:.3f} m at line {line} and nothing says which part is "
        "right. Where the part before is right, shift the heights from there on ({back}); else those before it, or "
        "measure a known point again.",
    ),
)
LEVEL_TOLD = Text(
    "claims.level_told",
    QT_TRANSLATE_NOOP(
        "core",
        "Heights change their level by {size:+.3f} m ± {sigma:.3f} m at line {line}. Check points say that the part "
        "before it is right: shift the heights from there on ({back}).",
    ),
)
LEVEL_TOLD_AFTER = Text(
    "claims.level_told_after",
    QT_TRANSLATE_NOOP(
        "core",
        "Heights change their level by {size:+.3f} m ± {sigma:.3f} m at line {line}. Check points say that the part "
        "behind it is right: shift the heights before it ({back}).",
    ),
)
LONG_RUN = Text(
    "claims.long_run",
    QT_TRANSLATE_NOOP(
        "core",
        "The checks alone keep out {length:.0f} m of the walk, lines {line} to {last}: look at it, and decide by hand "
        "or walk it again.",
    ),
)
MUCH_DOUBT = Text(
    "claims.much_doubt",
    QT_TRANSLATE_NOOP("core", "{share:.0f} % of the points are flagged: look at them and decide by hand."),
)


@dataclass(frozen=True)
class RejectedRun:
    """Points from ``first_line`` to ``last_line`` that the checks alone keep out: ``length`` metres of the walk."""

    first_line: int
    last_line: int
    length: float


@dataclass(frozen=True)
class Claims:
    """What stands against claiming an accuracy: ``changes`` of level that are open, long ``runs`` kept out, the longest
    first, the share ``in_doubt`` of the points that are flagged; and all of it as messages, ``against``.
    """

    changes: Tuple[LevelChange, ...]
    runs: Tuple[RejectedRun, ...]
    in_doubt: float
    against: Tuple[Message, ...]


def state_claims(points: PointSet, check: Optional[SurveyCheck], checks: Optional[CheckPoints] = None) -> Claims:
    """What stands against claims for ``points``, decisions by hand in them, as ``check`` left them.

    ``checks``: independent check points, which may say which part of the survey has the right heights.
    """
    changes = () if check is None else tuple(each for each in check.levels if _open(points, each))
    runs = rejected_runs(points)
    by_hand = (points.reasons & np.uint32(Reason.BY_HAND)) != 0
    flagged = (points.status == Status.FLAGGED) & ~by_hand
    in_doubt = float(np.count_nonzero(flagged)) / max(len(points), 1)
    against: List[Message] = [_said(points, each, checks) for each in changes]
    against += [message(LONG_RUN, length=each.length, line=each.first_line, last=each.last_line) for each in runs]
    if in_doubt > MUCH:
        against.append(message(MUCH_DOUBT, share=100 * in_doubt))
    return Claims(changes, runs, in_doubt, tuple(against))


def _open(points: PointSet, change: LevelChange) -> bool:
    """Whether nobody has decided on a change of level: the points right behind it, or right before it, are all kept."""
    if change.settled:
        return False
    near = 20
    before = points.used[max(change.index - near, 0) : change.index]
    after = points.used[change.index : change.index + near]
    return bool(before.mean() > 0.5 and after.mean() > 0.5)


def _said(points: PointSet, change: LevelChange, checks: Optional[CheckPoints]) -> Message:
    """What to tell of a change of level, and of how to shift heights: "line:metres" as the options take it."""
    first = int(points.source_line.min())
    text, back = LEVEL_OPEN, f"{change.first_line}:{-change.offset:+.3f}"
    before, after = _off_checks(points, change, checks)
    limit = max(0.3 * abs(change.offset), 2 * change.sigma)
    if abs(before) < limit < abs(after):
        text = LEVEL_TOLD
    elif abs(after) < limit < abs(before):
        text, back = LEVEL_TOLD_AFTER, f"{first}:{change.offset:+.3f},{change.first_line}:{-change.offset:+.3f}"
    return message(text, size=change.offset, sigma=change.sigma, line=change.first_line, back=back)


def _off_checks(points: PointSet, change: LevelChange, checks: Optional[CheckPoints]) -> Tuple[float, float]:
    """Median of the heights before and after the change less those of check points near them (m), nan for fewer than
    three.
    """
    if checks is None or not checks.independent or not len(checks):
        return float("nan"), float("nan")
    said = []
    for part in (slice(0, change.index), slice(change.index, len(points))):
        some = points.select(np.flatnonzero(points.used[part]) + (part.start or 0))
        if not len(some):
            said.append(float("nan"))
            continue
        tree = plain_tree(np.column_stack([some.easting, some.northing]))
        away, near = tree.query(np.column_stack([checks.easting, checks.northing]))
        close = away < _BESIDE
        off = some.height[near[close]] - checks.height[close]
        said.append(float(np.median(off)) if len(off) >= _FEWEST else float("nan"))
    return said[0], said[1]


def rejected_runs(points: PointSet) -> Tuple[RejectedRun, ...]:
    """Stretches of more than 20 m that neither the receiver's columns, a repeated record nor a hand explains."""
    alone = ~points.used & ((points.reasons.astype(np.uint32) & _EXPLAINED) == 0)
    index = np.flatnonzero(alone)
    if len(index) < 2:
        return ()
    step = np.hypot(np.diff(points.easting), np.diff(points.northing))
    usual = float(np.nanmedian(step)) if len(step) else 0.0
    between = np.diff(index)
    away = np.hypot(np.diff(points.easting[index]), np.diff(points.northing[index]))
    apart = (between > 1) | ~(away <= _GAP * max(usual, 1e-9))
    starts, ends = np.append(0, np.flatnonzero(apart) + 1), np.append(np.flatnonzero(apart), len(index) - 1)
    walked = np.append(0.0, np.cumsum(np.where(apart, 0.0, away)))
    lines = points.source_line
    found = [
        RejectedRun(int(lines[index[a]]), int(lines[index[b]]), float(walked[b] - walked[a]))
        for a, b in zip(starts.tolist(), ends.tolist())
        if walked[b] - walked[a] > LONG
    ]
    return tuple(sorted(found, key=lambda each: -each.length))
