"""A line on a surface against a table of limits: each stretch passes, fails or is too close to tell."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..confidence import NORMAL_95
from ..messages import Message, message
from ..progress import Progress, silent
from ..surface.tin import Tin
from .crowns import Lane
from .curves import FittedProfile, VerticalCurve
from .grades import WindowSlopes, Within, grades
from .line import Alignment
from .parts import Part, PartSlopes, part_slopes
from .pooling import rows_of
from .rules import Quantity, Rule
from .slopes import Sigma
from .texts import WINDOW_CAUTION
from .verdicts import Verdict, judge, only_where


@dataclass(frozen=True)
class Stretch:
    """Neighbouring windows (or a curve) with one verdict, from distance ``begin`` to ``end`` (m).

    ``part``: of the lane, for a crossfall. ``value``, ``sigma``: of the window that comes nearest to the limit or goes
    farthest beyond it, at distance ``at``;
    a slope as the size of a ratio, K in metres a percent. nan where there is no surface.
    """

    rule: Rule
    verdict: Verdict
    begin: float
    end: float
    value: float
    sigma: float
    at: float
    part: Part = Part.LANE

    @property
    def length(self) -> float:
        return self.end - self.begin

    @property
    def times_the_points(self) -> float:
        """How many times as many points as good as these would settle the verdict, were the value right."""
        room = abs(self.value - self.rule.limit)
        return (NORMAL_95 * self.sigma / room) ** 2 if room > 0 else float("inf")


@dataclass(frozen=True)
class CheckResult:
    """``stretches`` of each rule along the whole line, in order of rules and distances; ``messages``: cautions."""

    line: Alignment
    stretches: Tuple[Stretch, ...]
    messages: Tuple[Message, ...]

    def of(self, rule: Rule) -> Tuple[Stretch, ...]:
        return tuple(each for each in self.stretches if each.rule == rule)

    def lengths(self, rule: Rule) -> Dict[Verdict, float]:
        """Metres of each verdict; each half of a lane counts for half of its length."""
        total = dict.fromkeys(Verdict, 0.0)
        for each in self.of(rule):
            total[each.verdict] += each.length if each.part is Part.LANE else each.length / 2
        return total


def check_line(
    line: Alignment,
    tin: Tin,
    sigma: Sigma,
    rules: Sequence[Rule],
    lane: Lane,
    within: Within = None,
    curves: Optional[FittedProfile] = None,
    progress: Progress = silent,
    measured: Optional[Tuple[float, WindowSlopes, PartSlopes]] = None,
) -> CheckResult:
    """Check a line on a surface.

    Grades are those of the line itself; crossfalls those of the ``lane``, of each half by itself where it has a crown
    (:func:`.crowns.find_lane`). Windows follow each other without overlap, each of about the rule's window (the line's
    length where that is shorter), between distances ``within`` (m); neighbouring windows help each other
    (:mod:`.pooling`). ``sigma``: noise of the vertices' heights (m). ``curves``: for rules about K, which without it
    say nothing. ``measured``: a window with its grades and crossfalls, where they are known. Raises SurveyError as
    :func:`.grades.grades`.
    """
    along = {} if measured is None else {measured[0]: measured[1]}
    across = {} if measured is None else {measured[0]: measured[2]}

    def grades_of(window: float) -> WindowSlopes:
        if window not in along:
            along[window] = grades(line, tin, sigma, min(window, line.length), within=within, together=True)
        return along[window]

    def parts_of(window: float) -> PartSlopes:
        if window not in across:
            own = min(window, line.length)
            across[window] = part_slopes(line, tin, sigma, lane, own, within=within, together=True)
        return across[window]

    found: List[Stretch] = []
    for number, rule in enumerate(rules):
        progress(number / len(rules), "alignment")
        if rule.quantity in (Quantity.CREST_K, Quantity.SAG_K):
            found.extend(_curve_stretches(rule, curves))
            continue
        applies = None if rule.condition is None else grades_of(rule.window)
        if rule.quantity is Quantity.GRADE:
            own = _stretches(rule, grades_of(rule.window), applies, Part.LANE, None)
        else:
            parts = parts_of(rule.window)
            own = [each for part in Part for each in _stretches(rule, parts.by[part], applies, part, parts.has(part))]
        found.extend(_whole(line, sorted(own, key=lambda each: each.begin)))
    progress(1.0, "alignment")
    return CheckResult(line, tuple(found), (message(WINDOW_CAUTION),))


def _stretches(
    rule: Rule, slopes: WindowSlopes, along: Optional[WindowSlopes], part: Part, some: Optional[np.ndarray]
) -> List[Stretch]:
    """The verdicts of one part in the windows that have it, a mask (w,), all for None; ``along``: grades, for a rule
    with a condition."""
    size = np.abs(slopes.value)
    verdict = judge(size, slopes.sigma, rule.limit, rule.at_least)
    if along is not None and rule.condition is not None:
        applies = judge(np.abs(along.value), along.sigma, rule.condition.limit, rule.condition.above)
        verdict = only_where(verdict, applies)
    found: List[Stretch] = []
    for first, last in rows_of(np.ones(len(slopes), bool) if some is None else some):
        own = slice(first, last)
        merged = merge_stretches(rule, verdict[own], slopes.stretch[own], size[own], slopes.sigma[own])
        found += [replace(each, part=part) for each in merged]
    return found


def merge_stretches(
    rule: Rule, verdict: np.ndarray, ends: np.ndarray, value: np.ndarray, sigma: np.ndarray
) -> List[Stretch]:
    """Neighbouring windows of one verdict as stretches; ``ends`` (w, 2), the others (w,)."""
    first = np.flatnonzero(np.append(True, verdict[1:] != verdict[:-1]))
    last = np.append(first[1:], len(verdict))
    found = []
    for i, j in zip(first, last):
        own = value[i:j] if not rule.at_least else -value[i:j]
        k = i + (int(np.nanargmax(own)) if np.any(np.isfinite(own)) else 0)
        at = float(ends[k].mean())
        found.append(
            Stretch(rule, verdict[i], float(ends[i, 0]), float(ends[j - 1, 1]), float(value[k]), float(sigma[k]), at)
        )
    return found


def _whole(line: Alignment, stretches: List[Stretch]) -> List[Stretch]:
    """The same with the ends of the line that no window reaches: there is no surface."""
    rule, begin, end = stretches[0].rule, stretches[0].begin, max(each.end for each in stretches)
    unknown = float("nan")

    def off(first: float, last: float) -> List[Stretch]:
        own = Stretch(rule, Verdict.NO_SURFACE, first, last, unknown, unknown, (first + last) / 2)
        return [own] if last - first > 1e-6 else []

    return off(0.0, begin) + stretches + off(end, line.length)


def _curve_stretches(rule: Rule, curves: Optional[FittedProfile]) -> List[Stretch]:
    crest = rule.quantity is Quantity.CREST_K
    own: List[VerticalCurve] = [c for c in (curves.curves if curves else ()) if c.crest == crest]
    verdict = judge([c.k for c in own], [c.k_sigma for c in own], rule.limit, rule.at_least)
    return [Stretch(rule, each, c.begin, c.end, c.k, c.k_sigma, (c.begin + c.end) / 2) for each, c in zip(verdict, own)]
