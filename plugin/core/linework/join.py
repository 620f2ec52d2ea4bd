"""Lines from field codes: code plus line number, in recording order, across interleaved lines."""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from typing import Dict, List, Mapping, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text
from ..points.pointset import PointSet, Reason, Status
from .chain_lines import ChainLines
from .coded_chains import Chainer, OpenEnd, SurveyNotes, has_line
from .codes import CodeKind, CodeTable
from .constraints import Constraints
from .convention import DEFAULT_CONVENTION, Description, Descriptions, FieldConvention, Word, read_descriptions

UNKNOWN_CODE = Text(
    "linework.unknown_code",
    QT_TRANSLATE_NOOP(
        "core", "Code {code} is not in the code table; taken as ground. Points: {count}, first {point} (line {line})."
    ),
)
STRANGE_WORD = Text(
    "linework.strange_word",
    QT_TRANSLATE_NOOP(
        "core",
        "'{word}' beside a line code is no word of the field convention; ignored. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
WORD_WITHOUT_LINE = Text(
    "linework.word_without_line",
    QT_TRANSLATE_NOOP(
        "core",
        "The word for {word} stands on a point without a line code; ignored. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
COLUMN_MISMATCH = Text(
    "linework.column_mismatch",
    QT_TRANSLATE_NOOP(
        "core",
        "The columns for line number and words do not fit the number of codes; not joined. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
NOT_GROUND_POINTS = Text(
    "linework.not_ground",
    QT_TRANSLATE_NOOP(
        "core", "Points kept out of the surface because their code is not ground: {count}, first {point} (line {line})."
    ),
)
CHECK_SHOTS = Text(
    "linework.check_shots",
    QT_TRANSLATE_NOOP("core", "Check shots kept out of the surface: {count}, first {point} (line {line})."),
)


class PointRole(IntEnum):
    """What the linework makes of a point. Every ``NOT_JOINED`` point is named by a message; it stays ground."""

    GROUND = 0
    ON_LINE = 1
    NOT_GROUND = 2
    CHECK_SHOT = 3
    REJECTED = 4
    NOT_JOINED = 5


@dataclass(frozen=True)
class Linework:
    """Lines formed from the field codes of a survey.

    ``points``: the survey with points that are not ground rejected. ``constraints``: the lines in the order
    in which they were begun. ``line_layers``: layer of each line. ``point_layers``: (n,) object array of
    str, layer of each point's first known code, "" where none. ``roles``: (n,) uint8 of :class:`PointRole`.
    ``open_ends``: lines that were never ended. ``messages``: all that was noticed; a message's value
    ``indices`` is an int64 array of the points it speaks of. ``table`` and ``convention``: what made it.
    """

    points: PointSet
    constraints: Constraints
    messages: Tuple[Message, ...]
    open_ends: Tuple[OpenEnd, ...]
    line_layers: Tuple[str, ...]
    point_layers: np.ndarray
    roles: np.ndarray
    table: CodeTable
    convention: FieldConvention

    @property
    def counts(self) -> Mapping[PointRole, int]:
        """Number of points in each role; together all points."""
        return {role: int(np.count_nonzero(self.roles == role)) for role in PointRole}


def join_lines(points: PointSet, table: CodeTable, convention: FieldConvention = DEFAULT_CONVENTION) -> Linework:
    """Form breaklines, boundaries and voids from the codes of ``points``, in their order.

    Points of one code and line number form one line, whatever is recorded in between. A begin word starts
    a new line of that number, end and close words end it; boundaries, voids and codes marked so in the
    table run back to their first point. Rejected points are left out of lines, but their words still count
    (unless they are repeated records, ``Reason.DUPLICATE``). The arc word marks the middle point of an
    arc through the points before and after it on the line (see :mod:`.arcs`).
    A point with several codes joins every line it names; it is kept out of the surface when one of its
    codes is a check shot, or all of them are not ground. Unknown codes count as ground.
    Raises :class:`SurveyError` when the convention does not fit the table or the columns.
    """
    descriptions = read_descriptions(points, table, convention)
    report = SurveyNotes(points)
    _report_readings(descriptions, report)
    decided = _decide(points, descriptions, report)
    chains = Chainer(decided, report)
    chains.run(descriptions)
    lines = ChainLines(decided, convention, report)
    for chain in chains.chains:
        lines.finish(chain)
    open_ends = chains.open_ends()
    report.open_ends(open_ends)
    return Linework(
        points=decided,
        constraints=Constraints(tuple(lines.lines)),
        messages=tuple(report.messages),
        open_ends=open_ends,
        line_layers=tuple(lines.layers),
        point_layers=_layers(descriptions),
        roles=_roles(points, decided, descriptions, lines.joined),
        table=table,
        convention=convention,
    )


# What each point is


def _report_readings(descriptions: Descriptions, report: SurveyNotes) -> None:
    """Report unknown codes, words that mean nothing, and columns that do not fit."""
    by_code: Dict[str, List[int]] = {}
    strange: Dict[str, List[int]] = {}
    idle: Dict[Word, List[int]] = {}
    for place, description in enumerate(descriptions.distinct):
        for reading in description.readings:
            if reading.row is None and reading.code:
                by_code.setdefault(reading.code, []).append(place)
            if reading.row is not None and reading.row.kind.line:
                for word in reading.strange:
                    strange.setdefault(word, []).append(place)
            else:
                for meaning in reading.words:
                    idle.setdefault(meaning, []).append(place)
    for code, places in by_code.items():
        report.mask(UNKNOWN_CODE, _those(descriptions, places), code=code)
    for word, places in strange.items():
        report.mask(STRANGE_WORD, _those(descriptions, places), word=word)
    for meaning in Word:
        if meaning in idle:
            report.mask(WORD_WITHOUT_LINE, _those(descriptions, idle[meaning]), word=meaning.value)
    report.mask(COLUMN_MISMATCH, descriptions.mask([not each.fits for each in descriptions.distinct]))


def _those(descriptions: Descriptions, places: Sequence[int]) -> np.ndarray:
    chosen = np.zeros(len(descriptions.distinct), bool)
    chosen[list(places)] = True
    return chosen[descriptions.which]


def _is_check(description: Description) -> bool:
    return any(each.row is not None and each.row.kind is CodeKind.CHECK for each in description.readings)


def _is_off_ground(description: Description) -> bool:
    kinds = [each.row.kind if each.row else CodeKind.GROUND for each in description.readings]
    return bool(kinds) and all(kind is CodeKind.NOT_GROUND for kind in kinds)


def _decide(points: PointSet, descriptions: Descriptions, report: SurveyNotes) -> PointSet:
    """The points with check shots and points off the ground rejected, unless they were already."""
    check = points.used & descriptions.mask([_is_check(each) for each in descriptions.distinct])
    off = points.used & descriptions.mask([_is_off_ground(each) for each in descriptions.distinct])
    report.mask(CHECK_SHOTS, check)
    report.mask(NOT_GROUND_POINTS, off)
    reasons = points.reasons.astype(np.uint32)
    reasons[check] |= np.uint32(Reason.CHECK_SHOT)
    reasons[off] |= np.uint32(Reason.NOT_GROUND)
    return points.with_status(np.where(check | off, np.uint8(Status.REJECTED), points.status), reasons)


def _layers(descriptions: Descriptions) -> np.ndarray:
    """Layer of each point (n,): that of its first known code."""
    names = np.empty(len(descriptions.distinct), dtype=object)
    for place, description in enumerate(descriptions.distinct):
        names[place] = next((each.row.layer for each in description.readings if each.row), "")
    return names[descriptions.which]


def _roles(before: PointSet, after: PointSet, descriptions: Descriptions, joined: np.ndarray) -> np.ndarray:
    of_line = descriptions.mask([has_line(each) or not each.fits for each in descriptions.distinct])
    roles = np.where(of_line, PointRole.NOT_JOINED, PointRole.GROUND).astype(np.uint8)
    roles[joined] = PointRole.ON_LINE
    fresh = before.used & ~after.used
    check = (after.reasons & np.uint32(Reason.CHECK_SHOT)) != 0
    roles[fresh] = np.where(check[fresh], PointRole.CHECK_SHOT, PointRole.NOT_GROUND)
    roles[~before.used] = PointRole.REJECTED
    return roles


# --- lines --------------------------------------------------------------------------------------
