"""Decisions by hand on found lines, replayed where the lines are found anew."""

from __future__ import annotations

from dataclasses import replace
from typing import Dict, List, Sequence, Set, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from .ground_lines import GroundLine, share_near, with_status

NOT_AGAIN = Text(
    "found_lines.not_again",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} lines that were decided by hand are not found again where they were; they stay as they were given.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "One line that was decided by hand is not found again where it was; it stays as it was given.",
    ),
)

#: A line is the same if it lies so near (m) to the earlier course over more than half of its length.
SAME_REACH = 0.5


def replay(
    found: Sequence[GroundLine], given: Sequence[GroundLine]
) -> Tuple[Tuple[GroundLine, ...], Tuple[Message, ...]]:
    """``found`` with the decisions among ``given``, lines of an earlier run.

    A decision belongs to the found lines of its kind that share most of their course with what it was taken on; of
    several the one that shares most, then the later. A course that was drawn by hand takes the place of these lines. A
    decision whose line is not found again stays with the course that it brings.
    """
    decisions = [line for line in given if line.by_hand]
    owner = [_owner(line, decisions) for line in found]
    lines: List[GroundLine] = []
    replaced: Set[int] = set()
    for line, number in zip(found, owner):
        if number < 0:
            lines.append(line)
            continue
        decision = decisions[number]
        if not decision.reshaped:
            lines.append(with_status(line, decision.status))
        elif number not in replaced:
            replaced.add(number)
            drawn = replace(line, parts=decision.parts, found_as=decision.found_as)
            lines.append(with_status(drawn, decision.status))
    lost = [decision for number, decision in enumerate(decisions) if number not in owner]
    return (*lines, *lost), (message(NOT_AGAIN, count=len(lost)),) if lost else ()


def _owner(line: GroundLine, decisions: Sequence[GroundLine]) -> int:
    """Number of the decision that was taken on ``line``, -1 for none."""
    shares: Dict[int, float] = {}
    for number, decision in enumerate(decisions):
        if decision.kind is line.kind:
            shares[number] = share_near(line.parts, decision.found_as or decision.parts, SAME_REACH)
    best = max(shares, key=lambda number: (shares[number], number), default=-1)
    return best if best >= 0 and shares[best] > 0.5 else -1
