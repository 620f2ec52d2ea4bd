"""Decisions that someone took on points by hand, kept beside the survey."""

from __future__ import annotations

import csv
import os
from dataclasses import dataclass
from functools import lru_cache
from typing import Dict, List, Tuple

import numpy as np

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .pointset import PointSet, Reason, Status
from .source import load_text

NO_COLUMN = Text(
    "decisions.no_column",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: the header lacks {column}; it needs line, status and reason."),
)
BAD_LINE = Text(
    "decisions.bad_line",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: '{word}' is no line number of a survey; use 1, 2, ..."),
)
BAD_STATUS = Text(
    "decisions.bad_status", QT_TRANSLATE_NOOP("core", "{file}, line {line}: '{word}' is no status; use {words}.")
)
BAD_REASON = Text(
    "decisions.bad_reason",
    QT_TRANSLATE_NOOP("core", "{file}, line {line}: '{word}' is no reason; use {words}, several joined by '+'."),
)
BAD_QUOTES = Text(
    "decisions.bad_quotes", QT_TRANSLATE_NOOP("core", "{file}, line {line}: a quote is not closed; mend the line.")
)
DECIDED_TWICE = Text(
    "decisions.decided_twice",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: survey line {survey_line} is decided in line {before} already; keep one."
    ),
)
NO_POINT = Text(
    "decisions.no_point",
    QT_TRANSLATE_NOOP(
        "core", "{file}, line {line}: survey line {survey_line} holds no point; the decision has no effect."
    ),
)

STATUS_WORDS: Dict[str, Status] = {status.name.lower(): status for status in Status}
#: Single reasons by their word; :func:`words_of_reasons` and :func:`reasons_of_words` go between both.
REASON_WORDS: Dict[str, Reason] = {str(reason.name).lower(): reason for reason in Reason if reason}


@dataclass(frozen=True)
class Decisions:
    """What was decided, d entries in file order. ``line``: (d,) int64 line of the survey file; ``status``: (d,)
    uint8; ``reasons``: (d,) uint32 bits; ``at``: (d,) int64 line of the file of decisions.
    """

    line: np.ndarray
    status: np.ndarray
    reasons: np.ndarray
    at: np.ndarray
    source: str = ""

    def __len__(self) -> int:
        return len(self.line)


def read_decisions(path: PathLike) -> Decisions:
    """Read a CSV with the columns line, status and reason (others are left alone; # starts a comment).

    An empty reason counts as by hand. A table of points that was written with its statuses is such a
    file too. Raises SurveyError for unknown words, lines decided twice, and all that
    :func:`.source.load_text` raises.
    """
    source = load_text(path)
    file = os.fspath(path)
    places: Dict[str, int] = {}
    entries: List[Tuple[int, Status, Reason, int]] = []
    seen: Dict[int, int] = {}
    for number, text in source.each_line():
        if not text.strip() or text.lstrip().startswith("#"):
            continue
        fields = _split(file, number, text)
        if not places:
            places = _places(file, number, fields)
            continue
        word, status, reason = (fields[place] if place < len(fields) else "" for place in places.values())
        if not (word.isascii() and word.isdecimal() and 0 < int(word) < 1 << 62):
            raise SurveyError(BAD_LINE, file=file, line=number, word=word)
        line = int(word)
        if line in seen:
            raise SurveyError(DECIDED_TWICE, file=file, line=number, survey_line=line, before=seen[line])
        seen[line] = number
        entries.append((line, _status(file, number, status), _reasons(file, number, reason), number))
    if not places:
        raise SurveyError(NO_COLUMN, file=file, line=1, column="line")
    table = np.array([tuple(map(int, entry)) for entry in entries], np.int64).reshape(-1, 4)
    return Decisions(table[:, 0], table[:, 1].astype(np.uint8), table[:, 2].astype(np.uint32), table[:, 3], file)


def _split(file: str, number: int, text: str) -> List[str]:
    try:
        rows = list(csv.reader([text], skipinitialspace=True, strict=True))
    except csv.Error as error:
        raise SurveyError(BAD_QUOTES, file=file, line=number) from error
    return [field.strip() for field in rows[0]] if rows else []


def _places(file: str, number: int, header: List[str]) -> Dict[str, int]:
    words = [word.lower() for word in header]
    for column in ("line", "status", "reason"):
        if column not in words:
            raise SurveyError(NO_COLUMN, file=file, line=number, column=column)
    return {column: words.index(column) for column in ("line", "status", "reason")}


def _status(file: str, number: int, word: str) -> Status:
    if word.lower() not in STATUS_WORDS:
        raise SurveyError(BAD_STATUS, file=file, line=number, word=word, words=", ".join(STATUS_WORDS))
    return STATUS_WORDS[word.lower()]


def _reasons(file: str, number: int, text: str) -> Reason:
    reasons = Reason.NONE
    for word in text.lower().split("+") if text else ["by_hand"]:
        if word.strip() not in REASON_WORDS:
            raise SurveyError(BAD_REASON, file=file, line=number, word=word.strip(), words=", ".join(REASON_WORDS))
        reasons |= REASON_WORDS[word.strip()]
    return reasons


@lru_cache(maxsize=4096)  # a survey has few different sets and many points
def words_of_reasons(reasons: int) -> str:
    """The words of a set of reasons, joined by ``+``; empty for none."""
    return "+".join(word for word, reason in REASON_WORDS.items() if reason & reasons)


def apply_decisions(points: PointSet, decisions: Decisions) -> Tuple[PointSet, Tuple[Message, ...]]:
    """The points with the decided statuses and reasons in place of their own; none is taken away.

    Also a message for each decision whose line of the survey holds no point.
    """
    order = np.argsort(points.source_line, kind="stable")
    lines = points.source_line[order]
    left = np.searchsorted(lines, decisions.line, "left")
    right = np.searchsorted(lines, decisions.line, "right")
    found = right > left
    status, reasons = points.status.copy(), points.reasons.copy()
    at = order[left[found]]
    status[at], reasons[at] = decisions.status[found], decisions.reasons[found]
    missed = tuple(
        message(NO_POINT, file=decisions.source, line=int(at), survey_line=int(line))
        for at, line in zip(decisions.at[~found], decisions.line[~found])
    )
    return points.with_status(status, reasons), missed
