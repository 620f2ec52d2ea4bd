"""Pass, fail, or too close to tell: a measured value against a limit, with its standard deviation.

A value passes (or fails) when the whole interval in which the true value lies with 95 % (value +- 1.96 sigma, normal
errors) is on that side of the limit; else it is too close to tell. So a true value that just keeps the limit fails,
and one that just breaks it passes, in at most 2.5 % of cases.
"""

from __future__ import annotations

from enum import Enum
from typing import Any

import numpy as np

from ..confidence import NORMAL_95


class Verdict(Enum):
    """``value`` is a word for programs."""

    PASS = "pass"  # nosec B105
    FAIL = "fail"
    TOO_CLOSE = "too_close"
    NO_SURFACE = "no_surface"
    NOT_APPLICABLE = "not_applicable"


def judge(value: Any, sigma: Any, limit: float, at_least: bool) -> np.ndarray:
    """Verdicts (q,) of values (q,) against ``limit``; nan values have no surface.

    ``at_least``: the limit is the lowest allowed value, else the highest.
    """
    value, sigma = (np.atleast_1d(np.asarray(each, float)) for each in (value, sigma))
    room = (value - limit) if at_least else (limit - value)
    found = np.full(value.shape, Verdict.TOO_CLOSE, object)
    with np.errstate(invalid="ignore"):
        found[room - NORMAL_95 * sigma >= 0] = Verdict.PASS
        found[room + NORMAL_95 * sigma < 0] = Verdict.FAIL
    found[~(np.isfinite(value) & np.isfinite(sigma))] = Verdict.NO_SURFACE
    return found


def only_where(verdict: np.ndarray, applies: np.ndarray) -> np.ndarray:
    """Verdicts of a rule with a condition, whose own verdicts are ``applies`` (pass: it holds).

    Where the condition does not hold the rule is not applicable; where that is too close to tell, a failure is too.
    """
    found = verdict.copy()
    found[applies == Verdict.FAIL] = Verdict.NOT_APPLICABLE
    found[applies == Verdict.NO_SURFACE] = Verdict.NO_SURFACE
    found[(applies == Verdict.TOO_CLOSE) & (verdict == Verdict.FAIL)] = Verdict.TOO_CLOSE
    return found
