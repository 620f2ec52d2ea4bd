"""What single points are held to, and what of it is held back until it has been said.

A limit that nobody asked for and that would reject more than a tenth of the file is more likely wrong for this file
than the file is wrong: its points are flagged, and the user is told which limit, how many points and how to apply or to
change it. A set that the user named, or gave as a file, is applied as it stands. Two limits are not left to that:

- Tilt is no fault of a rover that compensates it: by the user's word, else as the heights tell (:mod:`.tilt`).
- Points without a fix that the file itself shows to be worse than the others are rejected, however many.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import List, Optional, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.decisions import words_of_reasons
from ..points.pointset import FIX_UNKNOWN, PointSet, Reason, Status
from .noise import robust_sigma, white_residuals
from .tilt import TiltEvidence, tilt_evidence
from .tolerances import TOPOGRAPHIC, ToleranceSet, judge, status_of
from .walk import make_walk

HELD_BACK = Text(
    "quality.held_back",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points, {share:.0f} % of the file, are beyond a limit of the usual set '{set}' ({reasons}). So many "
        "are not rejected unasked: they are flagged and still used. To reject them choose the set by its name "
        "(--check {set}); to change the limit give a set of your own (--tolerances FILE).",
    ),
)
ASK_TILT = Text(
    "quality.ask_tilt",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points, {share:.0f} % of the file, are tilted by more than {limit:g}°, and the heights do not tell "
        "whether the rover compensates tilt. They are flagged and still used. Say it (--tilt-compensated, in QGIS “The "
        "rover compensates tilt”): yes, and they are good; no, and they are rejected.",
    ),
)
COMPENSATES = Text(
    "quality.tilt_compensates",
    QT_TRANSLATE_NOOP(
        "core",
        "The rover compensates tilt: a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), not "
        "by the length of the pole. So {count} points tilted by more than {limit:g}° are not held to this limit. If "
        "the rover does not compensate, say --tilt-compensated no.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The rover compensates tilt: a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), not "
        "by the length of the pole. So one point tilted by more than {limit:g}° is not held to this limit. If the "
        "rover does not compensate, say --tilt-compensated no.",
    ),
)
LEANS = Text(
    "quality.tilt_leans",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points, {share:.0f} % of the file, are tilted by more than {limit:g}° and rejected: the rover does "
        "not compensate tilt, a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), about the "
        "length of a pole. If it does compensate, say --tilt-compensated yes.",
    ),
)
SAID_YES = Text(
    "quality.tilt_said_yes",
    QT_TRANSLATE_NOOP(
        "core",
        "As you said, the rover compensates tilt: {count} points tilted by more than {limit:g}° are not held to this "
        "limit.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "As you said, the rover compensates tilt: one point tilted by more than {limit:g}° is not held to this limit.",
    ),
)
DENIED_YES = Text(
    "quality.tilt_denied_yes",
    QT_TRANSLATE_NOOP(
        "core",
        "You said that the rover compensates tilt, but a height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 "
        "- cos(tilt), about the length of a pole. Points tilted by more than {limit:g}° and still used: {count}. Test "
        "the rover: an upright and a leaning pole on one mark must give one height.",
    ),
)
DENIED_NO = Text(
    "quality.tilt_denied_no",
    QT_TRANSLATE_NOOP(
        "core",
        "Points rejected for a tilt of more than {limit:g}°, as you asked: {count}, {share:.0f} % of the file. But a "
        "height falls by {fall:.2f} ± {sigma:.2f} m for each unit of 1 - cos(tilt), not by the length of the pole: the "
        "rover seems to compensate tilt. If it does, say --tilt-compensated yes.",
    ),
)
AS_ASKED = Text(
    "quality.limit_as_asked",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points, {share:.0f} % of the file, are beyond a limit of the set '{set}' ({reasons}) and rejected, as "
        "you asked.",
    ),
)
WORSE = Text(
    "quality.no_fix_worse",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} points, {share:.0f} % of the file, have no fix that the set '{set}' accepts and are rejected: the "
        "file itself tells that their heights are {times:.1f} times as uncertain as the others. To use them all the "
        "same, give a set of your own (--tolerances FILE).",
    ),
)

APART = Text(
    "quality.tilt_apart",
    QT_TRANSLATE_NOOP(
        "core",
        "From line {line} to {last}, or in parts of that, heights say the opposite of the others about tilt: another "
        "rover, or its compensation was lost there. Hold these points against what crosses them.",
    ),
)

SHARE = 0.1  # of the file: what a limit may reject unasked
_FEW = 5  # points of a short file that it may reject all the same
_TIMES = 3.0  # as uncertain as fixed points: no fix
_TELLING = 20  # points of each kind that tell it

_REJECTING = (Reason.TILT, Reason.NO_FIX, Reason.SIGMA_HORIZONTAL, Reason.SIGMA_VERTICAL)


@dataclass(frozen=True)
class Judged:
    """What the tolerances make of n points: ``reasons`` (n,) uint32, ``status`` (n,) uint8.

    ``tolerances``: the set that was applied, without a limit of tilt where the rover compensates it. ``many``: the
    limits that concern more than a tenth of the file. ``messages``: what the user must know of it before all else.
    """

    reasons: np.ndarray
    status: np.ndarray
    tolerances: ToleranceSet
    many: Reason
    messages: Tuple[Message, ...]


def judge_points(
    points: PointSet, standing: np.ndarray, asked: Optional[ToleranceSet], tilt_compensated: Optional[bool]
) -> Judged:
    """Hold the points of the mask ``standing`` (n,) to the tolerances.

    ``asked``: the set that the user chose, None where nobody chose one. ``tilt_compensated``: whether the rover
    compensates tilt, None where nobody said.
    """
    limits = TOPOGRAPHIC if asked is None else asked
    reasons = np.where(standing, judge(points, limits), 0).astype(np.uint32)
    count = {each: _count(reasons, each) for each in _REJECTING}
    many = [each for each in _REJECTING if count[each] > max(SHARE * len(points), _FEW)]
    held: List[Reason] = []
    messages: List[Message] = []

    def told(text: Text, reason: Reason, **values: object) -> Message:
        share = 100 * count[reason] / len(points)
        words = words_of_reasons(int(reason))
        return message(text, count=count[reason], share=share, set=limits.name, reasons=words, **values)

    if count[Reason.TILT]:
        usable = standing & (reasons & np.uint32(Reason.NO_FIX) == 0)
        evidence = tilt_evidence(points, usable)
        text, applied = _about_tilt(evidence, tilt_compensated, asked is not None, Reason.TILT in many)
        if text is not None:
            of = {"limit": limits.tilt, "fall": evidence.fall, "sigma": evidence.sigma}
            messages.append(told(text, Reason.TILT, **of))
        if evidence.apart is not None and text is not None:
            line, last = (int(points.source_line[each]) for each in evidence.apart)
            messages.append(message(APART, line=line, last=last))
        if text is ASK_TILT:
            held.append(Reason.TILT)
        elif not applied:
            limits, many = replace(limits, tilt=None), [each for each in many if each != Reason.TILT]
            reasons &= ~np.uint32(Reason.TILT)
    for each in many:
        if each == Reason.TILT:
            continue
        times = worse_without_fix(points, standing, reasons) if each == Reason.NO_FIX else 1.0
        if asked is not None:
            messages.append(told(AS_ASKED, each))
        elif times >= _TIMES:
            messages.append(told(WORSE, each, times=times))
        else:
            held.append(each)
            messages.append(told(HELD_BACK, each))
    bits = np.uint32(sum(int(each) for each in held))
    status = np.maximum(status_of(reasons & ~bits), np.where(reasons & bits != 0, Status.FLAGGED, Status.USED))
    every = Reason(sum(int(each) for each in many))
    return Judged(reasons, status.astype(np.uint8), limits, every, tuple(messages))


def _count(reasons: np.ndarray, reason: Reason) -> int:
    return int(np.count_nonzero(reasons & np.uint32(reason)))


def _about_tilt(evidence: TiltEvidence, said: Optional[bool], chosen: bool, many: bool) -> Tuple[Optional[Text], bool]:
    """What to say of points beyond the limit of tilt, and whether the limit holds."""
    found = evidence.compensated
    if said:
        return (DENIED_YES if found is False else SAID_YES), False
    if said is None and not chosen:
        if found:
            return COMPENSATES, False
        return ((LEANS if found is False else ASK_TILT) if many else None), True
    return ((DENIED_NO if found else AS_ASKED) if many else None), True


def worse_without_fix(points: PointSet, standing: np.ndarray, reasons: np.ndarray) -> float:
    """How many times as uncertain as the others the heights of points without an accepted fix are: by what the receiver
    states, or by their noise along the walk. 1 where nothing tells.
    """
    without = reasons & np.uint32(Reason.NO_FIX) != 0
    good = standing & ~without & (points.fix != FIX_UNKNOWN)
    times = 1.0
    stated = [points.sigma_v[mask & (points.sigma_v > 0)] for mask in (without, good)]
    if min(map(len, stated)) >= _TELLING:
        times = max(times, float(np.median(stated[0]) / np.median(stated[1])))
    index = np.flatnonzero(standing & np.isfinite(points.easting + points.northing + points.height))
    if len(index):
        x, y = (column[index] - np.median(column[index]) for column in (points.easting, points.northing))
        residual = white_residuals(make_walk(index, x, y, points.height[index]))
        seen = [residual[mask[index] & np.isfinite(residual)] for mask in (without, good)]
        if min(map(len, seen)) >= _TELLING and robust_sigma(seen[1]) > 0:
            times = max(times, robust_sigma(seen[0]) / robust_sigma(seen[1]))
    return times
