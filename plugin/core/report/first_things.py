"""What a user must know before all else: the first lines of the summary and of the report."""

from __future__ import annotations

from typing import List

import numpy as np

from ..messages import QT_TRANSLATE_NOOP
from ..points.pointset import Reason
from .labels import Words, number
from .remarks import REASONS, say_message
from .results import JobResult

_SHOWN = 5

KEPT_OUT = QT_TRANSLATE_NOOP("core", "Kept out of the surface: {count} of {all} points ({share} %).")
OF_THESE = QT_TRANSLATE_NOOP("core", "{count}: {reason}")
MORE = QT_TRANSLATE_NOOP("core", "and {count} more like it")
NO_CLAIM = QT_TRANSLATE_NOOP("core", "No accuracy class and no contour interval is vouched for, for the reasons above.")
CLAIM = QT_TRANSLATE_NOOP("core", "Nothing that the checks found stands against stating how accurate the survey is.")
UNCHECKED = QT_TRANSLATE_NOOP("core", "The points were not checked: what the receiver got wrong is in the surface.")


def first_things(result: JobResult, words: Words) -> List[str]:
    """Sentences, the most important first."""
    later = () if result.visits is None else result.visits.later
    lines = [say_message(one.first, words) for one in later]
    lines += [say_message(one, words) for one in result.aside]
    check = result.check
    if check is not None:
        lines += [say_message(one, words) for one in check.first]
    claims = result.quality.claims
    against = [say_message(one, words) for one in claims.against]
    lines += against[:_SHOWN]
    if len(against) > _SHOWN:
        lines.append(words(MORE, count=number(len(against) - _SHOWN)))
    lines += _kept_out(result, words)
    if against:
        lines.append(words(NO_CLAIM))
    else:
        lines.append(words(CLAIM if check is not None else UNCHECKED))
    return lines


def _kept_out(result: JobResult, words: Words) -> List[str]:
    """How many points are kept out of the surface, and the commonest reasons."""
    points = result.points
    out = ~points.used
    count = int(np.count_nonzero(out))
    if not count:
        return []
    share = number(100 * count / len(points), 1)
    told = [words(KEPT_OUT, count=number(count), all=number(len(points)), share=share)]
    reasons = points.reasons[out]
    each = {reason: int(np.count_nonzero(reasons & int(reason))) for reason in REASONS if reason != Reason.BY_HAND}
    common = sorted((reason for reason in each if each[reason]), key=lambda reason: -each[reason])[:_SHOWN]
    told += [words(OF_THESE, count=number(each[reason]), reason=words(REASONS[reason])) for reason in common]
    return told
