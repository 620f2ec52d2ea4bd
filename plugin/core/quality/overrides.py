"""Decisions by hand over those of the checks: they win, they are told, and what the checks said is kept.

The points that come out carry both: ``status`` and ``reasons`` are what counts from here on (so all that follows is
computed anew from them), and the extra columns ``check_status`` and ``check_reason`` are what the checks said. A layer
or table with all four columns tells which rows somebody changed, see :func:`changed_by_hand`.
"""

from __future__ import annotations

import csv
from dataclasses import dataclass, replace
from typing import Any, Dict, List, Mapping, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.decisions import (
    CHECK_REASON,
    CHECK_STATUS,
    REASON_WORDS,
    STATUS_WORDS,
    WORD_OF_STATUS,
    Decisions,
    apply_decisions,
    locate_decisions,
    words_of_reasons,
)
from ..points.pointset import SOURCE, PointSet, Reason, Status

_BY_HAND = np.uint32(Reason.BY_HAND)

RESTORED = Text(
    "overrides.restored",
    QT_TRANSLATE_NOOP(
        "core",
        "By hand {count} points are in the surface that the checks rejected, the first in line {line} ({reasons}).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "By hand the point of line {line} is in the surface, which the checks rejected ({reasons})."
    ),
)
WITHDRAWN = Text(
    "overrides.withdrawn",
    QT_TRANSLATE_NOOP(
        "core", "By hand {count} points are out of the surface that the checks let pass, the first in line {line}."
    ),
    one=QT_TRANSLATE_NOOP("core", "By hand the point of line {line} is out of the surface, which the checks let pass."),
)
FLAG_CHANGED = Text(
    "overrides.flag_changed",
    QT_TRANSLATE_NOOP("core", "By hand {count} points are flagged or no longer flagged, the first in line {line}."),
    one=QT_TRANSLATE_NOOP("core", "By hand the point of line {line} is flagged or no longer flagged."),
)
BAD_CELL = Text(
    "overrides.bad_cell",
    QT_TRANSLATE_NOOP(
        "core", "{source}: the point of line {line} has '{word}' in column {column}; use one of {words}."
    ),
)
NO_LINE = Text(
    "overrides.no_line",
    QT_TRANSLATE_NOOP(
        "core",
        "{source}: row {row} was changed by hand but has no line of the survey file; import the points again, so that "
        "the decision can be kept.",
    ),
)
TWO_ROWS = Text(
    "overrides.two_rows",
    QT_TRANSLATE_NOOP(
        "core",
        "{source}: the point of line {line} was changed in two rows (the second is row {row}); keep one of them.",
    ),
)


#: For points on which no hand decided: the words of the checks are kept all the same, so that one may decide later.
NO_DECISIONS = Decisions(np.empty(0, np.int64), np.empty(0, np.uint8), np.empty(0, np.uint32), np.empty(0, np.int64))


@dataclass(frozen=True)
class OverrideReport:
    """Where the hand overrules the checks: k points in the order of the survey.

    ``point``: (k,) index in the point set; ``line``: (k,) line of the survey file; ``decided_at``: (k,) line of the
    file of decisions. ``automatic``, ``by_hand``: (k,) uint8 statuses; ``automatic_reasons``, ``hand_reasons``: (k,)
    uint32 bits. ``confirmed``: decisions that say what the checks say. ``missed``: a message for each decision
    whose line holds no point. ``source``: (k,) names of survey files, None where there is one.
    """

    point: np.ndarray
    line: np.ndarray
    decided_at: np.ndarray
    automatic: np.ndarray
    by_hand: np.ndarray
    automatic_reasons: np.ndarray
    hand_reasons: np.ndarray
    confirmed: int
    missed: Tuple[Message, ...]
    messages: Tuple[Message, ...]
    source: Optional[np.ndarray] = None

    def __len__(self) -> int:
        return len(self.point)

    def count(self, automatic: Status, by_hand: Status) -> int:
        """How many points the hand took from one status to another."""
        return int(np.count_nonzero((self.automatic == automatic) & (self.by_hand == by_hand)))

    def rows(self) -> List[Dict[str, Any]]:
        """One row a point, for a table: line, check_status, check_reason, status, reason, decided_at, and source where
        there are several files.
        """
        sources = [{}] * len(self) if self.source is None else [{SOURCE: str(name)} for name in self.source]
        columns = (
            self.line, self.automatic, self.automatic_reasons, self.by_hand, self.hand_reasons, self.decided_at
        )  # fmt: skip
        return [
            {
                "line": line,
                CHECK_STATUS: WORD_OF_STATUS[automatic],
                CHECK_REASON: words_of_reasons(said),
                "status": WORD_OF_STATUS[by_hand],
                "reason": words_of_reasons(reasons),
                "decided_at": at,
                **source,
            }
            for source, line, automatic, said, by_hand, reasons, at in zip(
                sources, *(column.tolist() for column in columns)
            )
        ]


def with_overrides(checked: PointSet, decisions: Decisions) -> Tuple[PointSet, OverrideReport]:
    """The points with the decisions in place of what the checks said, which is kept; none is taken away.

    Where a decision changes the status, its reasons count, with ``BY_HAND``. Where it says what the checks say, their
    reasons stay, and any of its own are added, with ``BY_HAND`` too. The extra columns ``check_status`` and
    ``check_reason`` hold the words of the checks; points that bring them along (a second round) keep what they say for
    those points that were changed then.
    """
    automatic, said = _automatic(checked)
    before = checked.with_status(automatic, said)
    decided, missed = apply_decisions(before, decisions)
    at = _decided_at(before, decisions)
    touched = at > 0
    changed = touched & (decided.status != automatic)
    agreed = touched & ~changed
    added = agreed & ((decided.reasons & ~said & ~_BY_HAND) != 0)
    reasons = said.copy()
    reasons[changed] = decided.reasons[changed] | _BY_HAND
    reasons[added] |= decided.reasons[added] | _BY_HAND
    extra = {**checked.extra, CHECK_STATUS: _status_words(automatic), CHECK_REASON: _reason_words(said)}
    result = replace(decided.with_status(decided.status, reasons), extra=extra)
    point = np.flatnonzero(changed)
    report = OverrideReport(
        point=point,
        line=checked.source_line[point],
        decided_at=at[point],
        automatic=automatic[point],
        by_hand=decided.status[point],
        automatic_reasons=said[point],
        hand_reasons=reasons[point],
        confirmed=int(np.count_nonzero(agreed)),
        missed=missed,
        messages=(),
        source=checked.extra[SOURCE][point] if SOURCE in checked.extra else None,
    )
    return result, replace(report, messages=tuple(_told(report)) + missed)


def changed_by_hand(columns: Mapping[str, Sequence[Any]], source: str) -> Decisions:
    """The decisions in a layer or table of checked points: rows whose status is not what the checks said.

    ``columns``: ``line``, ``status``, ``reason``, ``check_status`` and ``check_reason`` (rows,), words as in
    :mod:`..points.decisions`. An empty status means no decision. Without ``check_status`` the points were never
    checked, and every row that is not plainly used is a decision. A reason that is still that of the checks, or none,
    becomes by hand. ``at`` is the row, from 1. A column ``source`` names the file of each line. Raises SurveyError for
    unknown words and rows without a line.
    """
    status = [_text(word).lower() for word in columns["status"]]
    said = [_text(word).lower() or "used" for word in columns.get(CHECK_STATUS, ["used"] * len(status))]
    reason, old = (
        [_text(word).lower() for word in columns.get(name, [""] * len(status))] for name in ("reason", CHECK_REASON)
    )
    rows = [i for i, (now, then) in enumerate(zip(status, said)) if now and now != then]
    files = [_text(name) for name in columns.get(SOURCE, [""] * len(status))]
    entries = []
    seen = set()
    for i in rows:
        line = _line(columns["line"][i], i + 1, source)
        if (files[i], line) in seen:
            raise SurveyError(TWO_ROWS, source=source, line=line, row=i + 1)
        seen.add((files[i], line))
        if status[i] not in STATUS_WORDS:
            _refuse(source, line, status[i], "status", list(STATUS_WORDS))
        reasons = Reason.BY_HAND if not reason[i] or reason[i] == old[i] else _reasons(reason[i], line, source)
        entries.append((line, int(STATUS_WORDS[status[i]]), int(reasons), i + 1))
    table = np.array(entries, np.int64).reshape(-1, 4)
    file = np.array([files[i] for i in rows], object) if any(files[i] for i in rows) else None
    return Decisions(
        table[:, 0], table[:, 1].astype(np.uint8), table[:, 2].astype(np.uint32), table[:, 3], source, file
    )


def write_decisions(decisions: Decisions, path: PathLike) -> None:
    """Write line, status and reason, and the survey file where decisions name it, as
    :func:`..points.decisions.read_decisions` reads them.

    Raises SurveyError when the file can't be written.
    """
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="") as stream:
        writer = csv.writer(stream, lineterminator="\n")
        columns = {
            "line": decisions.line.tolist(),
            "status": [WORD_OF_STATUS[status] for status in decisions.status.tolist()],
            "reason": [words_of_reasons(reasons) for reasons in decisions.reasons.tolist()],
        }
        if decisions.file is not None:
            columns[SOURCE] = decisions.file.tolist()
        writer.writerow(columns)
        writer.writerows(zip(*columns.values()))


def _automatic(points: PointSet) -> Tuple[np.ndarray, np.ndarray]:
    """Status and reasons by the checks: those of the points, but where a hand has changed one, what was kept of it."""
    status, reasons = points.status.copy(), points.reasons.astype(np.uint32)
    if CHECK_STATUS not in points.extra or CHECK_REASON not in points.extra:
        return status, reasons
    by_hand = np.flatnonzero((reasons & _BY_HAND) != 0)
    for i in by_hand.tolist():
        word = _text(points.extra[CHECK_STATUS][i]).lower()
        if word in STATUS_WORDS:
            line = int(points.source_line[i])
            status[i] = int(STATUS_WORDS[word])
            reasons[i] = int(_reasons(_text(points.extra[CHECK_REASON][i]).lower(), line, points.source))
    return status, reasons


def _decided_at(points: PointSet, decisions: Decisions) -> np.ndarray:
    """Line of the decision on each point (n,), 0 where there is none."""
    at = np.zeros(len(points), np.int64)
    point = locate_decisions(points, decisions).point
    at[point[point >= 0]] = decisions.at[point >= 0]
    return at


def _told(report: OverrideReport) -> List[Message]:
    """What to tell of a report."""
    out, back = report.by_hand == Status.REJECTED, report.automatic == Status.REJECTED
    said = []
    for text, mask in ((RESTORED, back & ~out), (WITHDRAWN, out & ~back), (FLAG_CHANGED, ~out & ~back)):
        if np.any(mask):
            first = int(np.flatnonzero(mask)[0])
            reasons = words_of_reasons(int(report.automatic_reasons[first])) or "-"
            line, count = int(report.line[first]), int(np.count_nonzero(mask))
            said.append(message(text, count=count, line=line, reasons=reasons))
    return said


def _status_words(status: np.ndarray) -> np.ndarray:
    words = np.array([WORD_OF_STATUS[number] for number in range(len(WORD_OF_STATUS))], object)
    return words[status]


def _reason_words(reasons: np.ndarray) -> np.ndarray:
    kinds, number = np.unique(reasons, return_inverse=True)
    return np.array([words_of_reasons(int(kind)) for kind in kinds], object)[number]


def _reasons(words: str, line: int, source: str) -> Reason:
    found = Reason.NONE
    for word in words.split("+") if words else []:
        if word.strip() not in REASON_WORDS:
            _refuse(source, line, word.strip(), "reason", list(REASON_WORDS))
        found |= REASON_WORDS[word.strip()]
    return found


def _refuse(source: str, line: int, word: str, column: str, words: List[str]) -> None:
    raise SurveyError(BAD_CELL, source=source, line=line, word=word, column=column, words=", ".join(words))


def _line(value: Any, row: int, source: str) -> int:
    try:
        line = int(value)
    except (TypeError, ValueError):
        line = 0
    if line < 1:
        raise SurveyError(NO_LINE, source=source, row=row)
    return line


def _text(value: Any) -> str:
    """A cell as text; None and not-a-number are empty."""
    return "" if value is None or value != value else str(value).strip()
