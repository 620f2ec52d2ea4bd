"""Decisions that someone took on points by hand, kept beside the survey.

A point is named by its line in the survey file; in a survey of several files also by its file, as that stands in the
column ``source`` of merged points. Where its name is told too, the point of that line must have it.
"""

from __future__ import annotations

import csv
import os
from dataclasses import dataclass
from functools import lru_cache
from typing import Dict, List, NamedTuple, Optional, Sequence, Set, Tuple

import numpy as np

from ..files import PathLike
from ..messages import Message, SurveyError, message
from .decisions_said import (
    BAD_LINE,
    BAD_QUOTES,
    BAD_REASON,
    BAD_STATUS,
    DECIDED_TWICE,
    NO_COLUMN,
    NO_FILE,
    NO_POINT,
    NO_POINT_OF,
    WHICH_FILE,
    WHICH_POINT,
    WHICH_SOURCE,
    WITHOUT_FILE,
)
from .named import ANY, NO_SUCH_FILE, by_names
from .pointset import MARKS, SOURCE, PointSet, Reason, Status
from .source import load_text

_FILES_SHOWN = 6

#: Columns of checked points: what the checks said before a hand changed status or reason.
CHECK_STATUS = "check_status"
CHECK_REASON = "check_reason"
NAME = "name"
_DELIMITERS = ",;\t"
#: What the code of a point says after the checks; no hand.
BY_CODE = {"check_shot", "not_ground"}

STATUS_WORDS: Dict[str, Status] = {status.name.lower(): status for status in Status}
WORD_OF_STATUS: Dict[int, str] = {int(status): word for word, status in STATUS_WORDS.items()}
#: Single reasons by their word; :func:`words_of_reasons` and :func:`reasons_of_words` go between both.
REASON_WORDS: Dict[str, Reason] = {str(reason.name).lower(): reason for reason in Reason if reason}


@dataclass(frozen=True)
class Decisions:
    """What was decided, d entries in file order. ``line``: (d,) int64 line of the survey file; ``status``: (d,)
    uint8; ``reasons``: (d,) uint32 bits; ``at``: (d,) int64 line of the file of decisions. ``file``: (d,) object, name
    of the survey file, "" where none is named; None where no decision names one. ``name``: (d,) object, name of the
    point, "" where it is not told; None where no decision tells it.
    """

    line: np.ndarray
    status: np.ndarray
    reasons: np.ndarray
    at: np.ndarray
    source: str = ""
    file: Optional[np.ndarray] = None
    name: Optional[np.ndarray] = None

    def __len__(self) -> int:
        return len(self.line)


class Located(NamedTuple):
    """``point``: (d,) index of the point of each decision, -1 for none. ``messages``: what to tell of it."""

    point: np.ndarray
    messages: Tuple[Message, ...]


def read_decisions(path: PathLike) -> Decisions:
    """Read a CSV with the columns line, status and reason, source where there are several survey files, and name
    where there is one (other columns are left alone; # starts a comment).

    Commas, semicolons or tabs part the columns. An empty reason counts as by hand. A table of points that was written
    with its statuses is such a file too; where it has the column check_status, only rows that differ from what the
    checks said are decisions, and a reason that is still theirs counts as by hand. Raises SurveyError for unknown
    words, lines decided twice, and all that
    :func:`.source.load_text` raises.
    """
    source = load_text(path)
    file = os.fspath(path)
    places: Dict[str, int] = {}
    delimiter = ","
    entries: List[Tuple[int, Status, Reason, int]] = []
    named: List[str] = []
    names: List[str] = []
    seen: Dict[Tuple[str, int], int] = {}
    for number, text in source.each_line():
        if not text.strip() or text.lstrip().startswith("#"):
            continue
        if not places:
            delimiter = _delimiter(text)
            places = _places(file, number, _split(file, number, text, delimiter))
            continue
        fields = _split(file, number, text, delimiter)
        cells = {column: fields[place] if place < len(fields) else "" for column, place in places.items()}
        cells["reason"] = _without_marks(cells["reason"])
        if CHECK_STATUS in cells and not _by_hand(cells):
            continue
        word, of = cells["line"], cells.get(SOURCE, "")
        if not (word.isascii() and word.isdecimal() and 0 < int(word) < 1 << 62):
            raise SurveyError(BAD_LINE, file=file, line=number, word=word)
        line = int(word)
        if (of, line) in seen:
            raise SurveyError(DECIDED_TWICE, file=file, line=number, survey_line=line, before=seen[of, line])
        seen[of, line] = number
        named.append(of)
        names.append(cells.get(NAME, ""))
        entries.append((line, _status(file, number, cells["status"]), _reasons(file, number, cells["reason"]), number))
    if not places:
        raise SurveyError(NO_COLUMN, file=file, line=1, column="line")
    table = np.array([tuple(map(int, entry)) for entry in entries], np.int64).reshape(-1, 4)
    return Decisions(
        table[:, 0], table[:, 1].astype(np.uint8), table[:, 2].astype(np.uint32), table[:, 3], file,
        np.array(named, object) if any(named) else None, np.array(names, object) if any(names) else None,
    )  # fmt: skip


def _delimiter(header: str) -> str:
    """What parts the columns: what most stands in the header, of equals the comma."""
    return max(_DELIMITERS, key=header.count)


def _without_marks(words: str) -> str:
    """Reasons but for the marks that each surface sets anew."""
    parts = words.split("+")
    return "+".join(word for word in parts if not REASON_WORDS.get(word.strip().lower(), Reason.NONE) & MARKS)


def _by_hand(cells: Dict[str, str]) -> bool:
    """Whether a row of checked points differs from what the checks said; a reason that is theirs becomes empty.

    Neither what the code of a point says nor an empty status is a decision.
    """
    if not cells["status"] or set(cells["reason"].lower().split("+")) <= BY_CODE:
        return False
    same = cells["status"].lower() == (cells[CHECK_STATUS].lower() or "used")
    theirs = cells["reason"].lower() == cells.get(CHECK_REASON, "").lower()
    if theirs:
        cells["reason"] = ""
    return not same or not (theirs or not cells["reason"])


def _split(file: str, number: int, text: str, delimiter: str) -> List[str]:
    try:
        rows = list(csv.reader([text], skipinitialspace=True, strict=True, delimiter=delimiter))
    except csv.Error as error:
        raise SurveyError(BAD_QUOTES, file=file, line=number) from error
    return [field.strip() for field in rows[0]] if rows else []


def _places(file: str, number: int, header: List[str]) -> Dict[str, int]:
    words = [word.lower() for word in header]
    for column in ("line", "status", "reason"):
        if column not in words:
            raise SurveyError(NO_COLUMN, file=file, line=number, column=column)
    known = ("line", "status", "reason", SOURCE, NAME, CHECK_STATUS, CHECK_REASON)
    return {column: words.index(column) for column in known if column in words}


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

    Also the messages of :func:`locate_decisions`, whose errors it raises.
    """
    point, messages = locate_decisions(points, decisions)
    found = point >= 0
    status, reasons = points.status.copy(), points.reasons.copy()
    at = point[found]
    status[at], reasons[at] = decisions.status[found], decisions.reasons[found]
    return points.with_status(status, reasons), messages


def locate_decisions(points: PointSet, decisions: Decisions) -> Located:
    """The point that each decision means.

    A message for each decision whose line holds no point, or whose file is not of this survey; a decision that tells
    the name of its point is found by that where the point of its line has another name. Raises SurveyError
    where several points may be meant, and where two decisions mean the same point.
    """
    names, of_point = _sources(points)
    of_decision = _wanted(points, decisions, names)
    any_file = of_decision == ANY
    # One key a line and file; lines beyond all of the survey hold no point, whatever they are.
    count = len(names)
    last = int(points.source_line.max()) + 1 if len(points) else 1
    line = np.minimum(decisions.line, last) * count
    keys = points.source_line * count + of_point
    order = np.argsort(keys, kind="stable")
    left = np.searchsorted(keys[order], line + np.where(any_file, 0, of_decision), "left")
    right = np.searchsorted(keys[order], line + np.where(any_file, count, of_decision + 1), "left")
    hits = np.where(of_decision == NO_SUCH_FILE, 0, right - left)
    for i in np.flatnonzero(hits > 1)[:1].tolist():
        _refuse_several(decisions, i, [names[of_point[k]] for k in order[left[i] : right[i]]])
    point = np.full(len(decisions), -1)
    point[hits == 1] = order[left[hits == 1]]
    point, said, done = by_names(points, decisions, point, of_decision, of_point)
    _refuse_twice(decisions, point)
    said += _unplaced(decisions, point, of_decision, names, done)
    return Located(point, (*said, *_nameless(points, decisions, any_file)))


def _sources(points: PointSet) -> Tuple[List[str], np.ndarray]:
    """Names of the files of a survey, and the number of that of each point (n,)."""
    if SOURCE not in points.extra:
        return [os.path.basename(points.source)], np.zeros(len(points), np.int64)
    numbers: Dict[str, int] = {}
    of_point = [numbers.setdefault(str(name), len(numbers)) for name in points.extra[SOURCE].tolist()]
    return list(numbers) or [""], np.array(of_point, np.int64)


def _wanted(points: PointSet, decisions: Decisions, names: Sequence[str]) -> np.ndarray:
    """Number of the file that each decision (d,) names."""
    if decisions.file is None:
        return np.full(len(decisions), ANY)
    known: Dict[str, int] = {"": ANY}
    if " + " not in points.source:  # one file, whose own columns may say otherwise
        known.update({points.source: ANY, os.path.basename(points.source): ANY})
    known.update((name, number) for number, name in enumerate(names) if name)
    for i, word in enumerate(decisions.file.tolist()):
        if word not in known:
            known[word] = _named_so(decisions, i, word, names)
    return np.array([known[word] for word in decisions.file.tolist()], np.int64)


def _named_so(decisions: Decisions, i: int, word: str, names: Sequence[str]) -> int:
    """The only file that ``word`` may mean, whichever of both has its folders."""
    tail = _tail(word)
    fitting = [number for number, name in enumerate(names) if _tail(name) == tail and (name == tail or word == tail)]
    if len(fitting) > 1:
        listed = _listed([names[number] for number in fitting])
        raise SurveyError(
            WHICH_SOURCE, file=decisions.source, line=int(decisions.at[i]), source=word, sources=listed
        )  # fmt: skip
    return fitting[0] if fitting else NO_SUCH_FILE


def _tail(path: str) -> str:
    return path.replace("\\", "/").rsplit("/", 1)[-1]


def _listed(names: Sequence[str]) -> str:
    shown = list(dict.fromkeys(names))
    return ", ".join(shown[:_FILES_SHOWN]) + (", ..." if len(shown) > _FILES_SHOWN else "")


def _refuse_several(decisions: Decisions, i: int, files: Sequence[str]) -> None:
    where = {"file": decisions.source, "line": int(decisions.at[i]), "survey_line": int(decisions.line[i])}
    if len(set(files)) == len(files):
        raise SurveyError(WHICH_FILE, sources=_listed(files), **where)
    raise SurveyError(WHICH_POINT, count=len(files), **where)


def _refuse_twice(decisions: Decisions, point: np.ndarray) -> None:
    found = np.flatnonzero(point >= 0)
    order = found[np.argsort(point[found], kind="stable")]
    again = np.flatnonzero(np.diff(point[order]) == 0)
    if len(again):
        first, second = order[again[0]], order[again[0] + 1]
        raise SurveyError(
            DECIDED_TWICE, file=decisions.source, line=int(decisions.at[second]),
            survey_line=int(decisions.line[second]), before=int(decisions.at[first]),
        )  # fmt: skip


def _unplaced(
    decisions: Decisions, point: np.ndarray, of_decision: np.ndarray, names: Sequence[str], done: Set[int]
) -> List[Message]:
    """A message for each decision without a point, but for those that are ``done``."""
    said = []
    for i in sorted(set(np.flatnonzero(point < 0).tolist()) - done):
        where = {"file": decisions.source, "line": int(decisions.at[i])}
        line, of = int(decisions.line[i]), int(of_decision[i])
        if of == NO_SUCH_FILE and decisions.file is not None:
            said.append(message(NO_FILE, source=decisions.file[i], sources=_listed(names), **where))
        elif of >= 0:
            said.append(message(NO_POINT_OF, survey_line=line, source=names[of], **where))
        else:
            said.append(message(NO_POINT, survey_line=line, **where))
    return said


def _nameless(points: PointSet, decisions: Decisions, any_file: np.ndarray) -> Tuple[Message, ...]:
    """Whether decisions without a file were taken for lines of files that share line numbers."""
    lines = points.source_line
    if not any_file.any() or SOURCE not in points.extra or len(np.unique(lines)) == len(lines):
        return ()
    first = int(decisions.at[np.argmax(any_file)])
    return (message(WITHOUT_FILE, file=decisions.source, count=int(any_file.sum()), line=first),)
