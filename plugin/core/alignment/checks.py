"""A line on a surface against a table of limits: each stretch passes, fails or is too close to tell."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Dict, List, Optional, Sequence, Tuple

import numpy as np

from ..messages import Message, message
from ..progress import Progress, silent
from ..surface.tin import Tin
from .curves import FittedProfile, VerticalCurve
from .grades import WindowSlopes, crossfalls, grades, reach
from .line import Alignment
from .rules import Quantity, Rule
from .slopes import Sigma
from .texts import WINDOW_CAUTION
from .verdicts import Verdict, judge, only_where


@dataclass(frozen=True)
class Stretch:
    """Neighbouring windows (or a curve) with one verdict, from distance ``begin`` to ``end`` (m).

    ``value``, ``sigma``: of the window that comes nearest to the limit or goes farthest beyond it, at distance ``at``;
    a slope as the size of a ratio, K in metres a percent. nan where there is no surface.
    """

    rule: Rule
    verdict: Verdict
    begin: float
    end: float
    value: float
    sigma: float
    at: float

    @property
    def length(self) -> float:
        return self.end - self.begin


@dataclass(frozen=True)
class CheckResult:
    """``stretches`` of each rule along the whole line, in order of rules and distances; ``messages``: cautions."""

    line: Alignment
    stretches: Tuple[Stretch, ...]
    messages: Tuple[Message, ...]

    def of(self, rule: Rule) -> Tuple[Stretch, ...]:
        return tuple(each for each in self.stretches if each.rule == rule)

    def lengths(self, rule: Rule) -> Dict[Verdict, float]:
        """Metres of each verdict."""
        total = dict.fromkeys(Verdict, 0.0)
        for each in self.of(rule):
            total[each.verdict] += each.length
        return total


def check_line(
    line: Alignment,
    tin: Tin,
    sigma: Sigma,
    rules: Sequence[Rule],
    low: float,
    high: float,
    curves: Optional[FittedProfile] = None,
    progress: Progress = silent,
) -> CheckResult:
    """Check a line on a surface.

    Grades are those of the line itself; crossfalls reach from offset ``low`` to ``high`` (m, right positive). Windows
    follow each other without overlap, each of about the rule's window (the line's length where that is shorter), from
    where line and offsets come onto the surface to where they leave it.
    ``sigma``: noise of the vertices' heights (m). ``curves``: for rules about K, which without it say nothing.
    Raises SurveyError as :func:`.grades.grades` and :func:`.grades.crossfalls`.
    """
    within = reach(line, tin, (0.0, low, high))
    measured: Dict[Tuple[Quantity, float], WindowSlopes] = {}

    def slopes(quantity: Quantity, window: float) -> WindowSlopes:
        window = min(window, line.length)
        if (quantity, window) not in measured:
            measured[quantity, window] = (
                grades(line, tin, sigma, window, within=within)
                if quantity is Quantity.GRADE
                else crossfalls(line, tin, sigma, low, high, window, within=within)
            )
        return measured[quantity, window]

    found: List[Stretch] = []
    for number, rule in enumerate(rules):
        progress(number / len(rules), "alignment")
        if rule.quantity in (Quantity.CREST_K, Quantity.SAG_K):
            found.extend(_curve_stretches(rule, curves))
            continue
        own = slopes(rule.quantity, rule.window)
        size = np.abs(own.value)
        verdict = judge(size, own.sigma, rule.limit, rule.at_least)
        if rule.condition is not None:
            along = slopes(Quantity.GRADE, rule.window)
            applies = judge(np.abs(along.value), along.sigma, rule.condition.limit, rule.condition.above)
            verdict = only_where(verdict, applies)
        found.extend(_whole(line, merge_stretches(rule, verdict, own.stretch, size, own.sigma)))
    progress(1.0, "alignment")
    return CheckResult(line, tuple(found), (message(WINDOW_CAUTION),))


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
    rule, begin, end = stretches[0].rule, stretches[0].begin, stretches[-1].end
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
