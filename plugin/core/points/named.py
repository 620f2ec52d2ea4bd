"""Decisions of a file that tell the names of their points: these count where a line holds another point now."""

from __future__ import annotations

from typing import TYPE_CHECKING, Dict, List, Set, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .pointset import PointSet

if TYPE_CHECKING:
    from .decisions import Decisions

BY_NAME = Text(
    "decisions.by_name",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {count} decisions are on points that stand in other lines of the survey now and were found by their "
        "names, the first, on {name}, in line {now} (it was line {survey_line}).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file}: the decision on {name} was found by its name in line {now} of the survey (it was line {survey_line}).",
    ),
)
OTHER_NAME = Text(
    "decisions.other_name",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}, line {line}: the point of survey line {survey_line} is not {name}, and no other point is {name} for "
        "sure; the decision has no effect.",
    ),
)
#: Of which file a decision is, where it names none, and where it names one that is not of the survey.
ANY, NO_SUCH_FILE = -1, -2


def by_names(
    points: PointSet, decisions: Decisions, point: np.ndarray, of_decision: np.ndarray, of_point: np.ndarray
) -> Tuple[np.ndarray, List[Message], Set[int]]:
    """The point of each decision (d,), by its name where the point of its line has another; what to tell; and which
    decisions without a point are told with it.
    """
    if decisions.name is None:
        return point, [], set()
    own = [str(name or "").strip() for name in points.name.tolist()]
    wanted = decisions.name.tolist()
    others = [
        i
        for i, (name, k) in enumerate(zip(wanted, point.tolist()))
        if name and of_decision[i] != NO_SUCH_FILE and (k < 0 or own[k] != name)
    ]
    if not others:
        return point, [], set()
    having: Dict[str, List[int]] = {}
    for k, name in enumerate(own):
        having.setdefault(name, []).append(k)
    point, found, said = point.copy(), [], []
    for i in others:
        same = [k for k in having.get(wanted[i], []) if of_decision[i] in (ANY, of_point[k])]
        point[i] = same[0] if len(same) == 1 else -1
        where = {"file": decisions.source, "name": wanted[i], "survey_line": int(decisions.line[i])}
        if point[i] >= 0:
            found.append({**where, "now": int(points.source_line[point[i]])})
        else:
            said.append(message(OTHER_NAME, line=int(decisions.at[i]), **where))
    told = [message(BY_NAME, count=len(found), **found[0])] if found else []
    return point, told + said, {i for i in others if point[i] < 0}
