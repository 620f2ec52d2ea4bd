"""Decisions by hand on single points as a job keeps them: by what a point is, so that they outlast a new file.

A point is its line in the survey file, its name and its place. A file that was corrected or has grown may have the
point in another line, see :mod:`.meant`. A decision whose point is not found is told and kept; it has no effect until
the point is there again.
"""

from __future__ import annotations

import os
from dataclasses import dataclass
from typing import Dict, Iterator, List, Mapping, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from .decisions import REASON_WORDS, STATUS_WORDS, Decisions
from .meant import How, PointColumns, points_meant
from .pointset import SOURCE, PointSet, Reason

MOVED = Text(
    "decided.moved",
    QT_TRANSLATE_NOOP(
        "core",
        "The file of the survey has changed: {count} decisions by hand were found again by the names of their points, "
        "the first, on {name}, in line {line} (it was line {before}).",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The file of the survey has changed: the decision by hand on {name} was found again in line {line} (it was "
        "line {before}).",
    ),
)
AT_PLACE = Text(
    "decided.at_place",
    QT_TRANSLATE_NOOP(
        "core",
        "The file of the survey has changed: {count} decisions by hand were found again by the places of their points, "
        "the first, of line {before}, in line {line}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The file of the survey has changed: the decision by hand on the point of line {before} was found again by its "
        "place, in line {line}.",
    ),
)
SHIFTED = Text(
    "decided.shifted",
    QT_TRANSLATE_NOOP(
        "core",
        "The whole survey lies elsewhere than when {count} decisions by hand were taken; they are taken for the points "
        "of their lines, the first for that of line {line}. Look at them on the map.",
    ),
    weight=1,
)
CONTRADICT = Text(
    "decided.contradict",
    QT_TRANSLATE_NOOP(
        "core",
        "The job decides {count} points twice and not alike; the later decision counts, on the first, of line {line}: "
        "{status}.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The job decides the point of line {line} twice and not alike; the later decision counts: {status}.",
    ),
    weight=1,
)
NOT_THERE = Text(
    "decided.not_there",
    QT_TRANSLATE_NOOP(
        "core",
        "{count} decisions by hand no longer have a point in the survey and have no effect, the first is on {name} of "
        "line {line}. They stay in the job.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "The decision by hand on {name} of line {line} no longer has a point in the survey and has no effect. It stays "
        "in the job.",
    ),
    weight=1,
)
WRONG_WORD = Text(
    "decided.wrong_word",
    QT_TRANSLATE_NOOP("core", "The decision on line {line}: '{word}' is none of {words}; mend it in the job's file."),
)


@dataclass(frozen=True)
class PointDecision:
    """What was decided on the point of ``line`` in ``file`` (its name as in the column source, "" for the only file).

    ``name``: of the point, "" for none. ``status``: used, flagged or rejected; ``reason``: words joined by ``+``.
    ``easting``, ``northing``: where the point lay then, metres of the CRS of the job; None where unknown.
    """

    line: int
    status: str
    reason: str = "by_hand"
    name: str = ""
    file: str = ""
    easting: Optional[float] = None
    northing: Optional[float] = None


class PointRow(NamedTuple):
    """A row of a layer of checked points. ``check_status``: what the checks said; ``easting``, ``northing``: metres,
    None where the row has no place."""

    line: int
    name: str
    file: str
    status: str
    reason: str
    check_status: str
    easting: Optional[float] = None
    northing: Optional[float] = None


class Found(NamedTuple):
    """Decisions on points that are there, with the lines that these have now, and what is to be told."""

    decisions: Decisions
    messages: Tuple[Message, ...]


def find_decided(points: PointSet, decided: Sequence[PointDecision], source: str) -> Found:
    """The decisions on points of this survey; of two on the same point the later counts. ``source``: for messages.

    Raises SurveyError for words that are no status or reason.
    """
    placed: Dict[int, int] = {}
    twice: Dict[int, int] = {}
    by: Dict[How, List[Tuple[int, int]]] = {how: [] for how in How}
    for number, (k, how) in enumerate(points_meant(decided, _columns(points))):
        by[how].append((number, k))
        if k < 0:
            continue
        before = placed.pop(k, None)
        if before is not None and decided[before].status != decided[number].status:
            twice[k] = number
        placed[k] = number
    said = [*_told(points, decided, by), *_contradicting(points, decided, twice)]
    return Found(_decisions(points, decided, placed, source), tuple(said))


def after_edit(decided: Sequence[PointDecision], rows: Sequence[PointRow]) -> Tuple[PointDecision, ...]:
    """The decisions after ``rows`` of a layer of checked points were edited.

    A row that says what was decided leaves it as it is; one that says something else changes the decision, or takes it
    back where it says again what the checks said. Decisions on points that are not among the rows stay.
    """
    of_row: Dict[int, List[int]] = {}
    for number, meant in enumerate(points_meant(decided, _columns_of_rows(rows))):
        of_row.setdefault(meant.point, []).append(number)
    kept: List[Optional[PointDecision]] = list(decided)
    for k, row in enumerate(rows):
        known = of_row.get(k, [])
        if known and decided[known[-1]].status == row.status:
            continue
        own = row.status != row.check_status
        for number in known:
            kept[number] = None
        if own and known:
            kept[known[-1]] = _of_row(row)
        elif own:
            kept.append(_of_row(row))
    return tuple(one for one in kept if one is not None)


def _of_row(row: PointRow) -> PointDecision:
    return PointDecision(
        row.line, row.status, row.reason or "by_hand", row.name, row.file, row.easting, row.northing
    )  # fmt: skip


def _columns_of_rows(rows: Sequence[PointRow]) -> PointColumns:
    places = [(row.easting, row.northing) for row in rows]
    return PointColumns(
        [row.file for row in rows],
        [row.line for row in rows],
        [row.name for row in rows],
        np.array(places, float).reshape(-1, 2),
    )


def _columns(points: PointSet) -> PointColumns:
    files = _files(points)
    only = files[0] if len(set(files)) == 1 else ""
    return PointColumns(
        [""] * len(files) if only else files,
        points.source_line.tolist(),
        [_name(name) for name in points.name.tolist()],
        np.column_stack([points.easting, points.northing]),
        only,
    )


def _decisions(points: PointSet, decided: Sequence[PointDecision], placed: Dict[int, int], source: str) -> Decisions:
    at = np.array(list(placed), np.int64)
    chosen = [decided[number] for number in placed.values()]
    return Decisions(
        points.source_line[at].astype(np.int64),
        np.array([_status(one) for one in chosen], np.uint8),
        np.array([_reasons(one) for one in chosen], np.uint32),
        np.array(list(placed.values()), np.int64) + 1,
        source,
        points.extra[SOURCE][at] if SOURCE in points.extra else None,
    )


def _told(
    points: PointSet, decided: Sequence[PointDecision], by: Mapping[How, List[Tuple[int, int]]]
) -> Iterator[Message]:
    """How decisions found their points, where not simply by their lines."""
    for how, text in ((How.NAME, MOVED), (How.PLACE, AT_PLACE), (How.SHIFTED, SHIFTED), (How.NONE, NOT_THERE)):
        if by[how]:
            number, k = by[how][0]
            one = decided[number]
            line = one.line if k < 0 else int(points.source_line[k])
            yield message(text, count=len(by[how]), name=one.name or "–", line=line, before=one.line)


def _contradicting(points: PointSet, decided: Sequence[PointDecision], twice: Mapping[int, int]) -> Iterator[Message]:
    for k, number in list(twice.items())[:1]:
        line = int(points.source_line[k])
        yield message(CONTRADICT, count=len(twice), line=line, status=decided[number].status)


def _files(points: PointSet) -> List[str]:
    if SOURCE in points.extra:
        return [str(name) for name in points.extra[SOURCE].tolist()]
    return [os.path.basename(points.source)] * len(points)


def _name(name: object) -> str:
    return "" if name is None else str(name).strip()


def _status(one: PointDecision) -> int:
    if one.status not in STATUS_WORDS:
        raise SurveyError(WRONG_WORD, line=one.line, word=one.status, words=", ".join(STATUS_WORDS))
    return int(STATUS_WORDS[one.status])


def _reasons(one: PointDecision) -> int:
    found = Reason.NONE
    for word in one.reason.split("+") if one.reason else ["by_hand"]:
        if word not in REASON_WORDS:
            raise SurveyError(WRONG_WORD, line=one.line, word=word, words=", ".join(REASON_WORDS))
        found |= REASON_WORDS[word]
    return int(found)
