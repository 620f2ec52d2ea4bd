"""Lines from field codes: code plus line number, in recording order, across interleaved lines."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from enum import IntEnum
from typing import Any, Dict, List, Mapping, Optional, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text
from ..points.pointset import PointSet, Reason, Status
from .arcs import ArcTrouble, shape_line
from .chains import count_places, first_of_places, is_flat_ring, same_place
from .codes import CodeKind, CodeRow, CodeTable
from .constraints import ConstraintLine, Constraints, LineKind
from .convention import DEFAULT_CONVENTION, Description, Descriptions, FieldConvention, Reading, Word, read_descriptions

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
DUPLICATES_SKIPPED = Text(
    "linework.duplicates_skipped",
    QT_TRANSLATE_NOOP(
        "core",
        "Repeated records with line codes, left out of the lines together with their words. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
REJECTED_SKIPPED = Text(
    "linework.rejected_skipped",
    QT_TRANSLATE_NOOP(
        "core", "{label}: rejected points left out of the line. Points: {count}, first {point} (line {line})."
    ),
)
NO_POSITION = Text(
    "linework.no_position",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: points without a full position left out of the line. Points: {count}, first {point} (line {line}).",
    ),
)
NOTHING_LEFT = Text(
    "linework.nothing_left",
    QT_TRANSLATE_NOOP("core", "{label}: no point of it can be used; no line. It began at {point} (line {line})."),
)
SINGLE_POINT = Text(
    "linework.single_point",
    QT_TRANSLATE_NOOP(
        "core", "{label}: only one place, {point} (line {line}); no line, the point stays a ground point."
    ),
)
SAME_PLACE_DROPPED = Text(
    "linework.same_place",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: points at the place of the one before them left out of the line. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
BEGAN_ANEW = Text(
    "linework.began_anew",
    QT_TRANSLATE_NOOP(
        "core",
        "{label} still ran when {point} (line {line}) began it anew; the old line ends at {last} (line {last_line}).",
    ),
)
REOPENED = Text(
    "linework.reopened",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: {point} (line {line}) starts a new line without a word for it, after the line of that "
        "number had ended.",
    ),
)
NO_END = Text(
    "linework.no_end",
    QT_TRANSLATE_NOOP(
        "core",
        "Lines that were never ended; they stop at their last point. Lines: {count}, first {label} at {point} "
        "(line {line}).",
    ),
)
RING_TOO_SHORT = Text(
    "linework.ring_too_short",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: a ring needs three places and has {places}; left out. Points: {count}, first {point} (line {line}).",
    ),
)
RING_FLAT = Text(
    "linework.ring_flat",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: all points of the ring lie on one straight line; left out. Points: {count}, "
        "first {point} (line {line}).",
    ),
)
CANNOT_CLOSE = Text(
    "linework.cannot_close",
    QT_TRANSLATE_NOOP("core", "{label}: fewer than three places, so it stays open. It ends at {point} (line {line})."),
)
ARC_AT_END = Text(
    "linework.arc_at_end",
    QT_TRANSLATE_NOOP(
        "core", "{label}: {point} (line {line}) is marked as the middle of an arc but is an end of the line; straight."
    ),
)
ARC_IMPOSSIBLE = Text(
    "linework.arc_impossible",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: no arc goes through {point} (line {line}) and the points beside it with at most half a "
        "circle between each two; straight.",
    ),
)
ARCS_DISAGREE = Text(
    "linework.arcs_disagree",
    QT_TRANSLATE_NOOP(
        "core",
        "{label}: the arc at {point} (line {line}) and a neighbouring arc differ between their points; "
        "the first one is used there.",
    ),
)
ARC_REJECTED = Text(
    "linework.arc_rejected",
    QT_TRANSLATE_NOOP("core", "{label}: the middle of an arc, {point} (line {line}), cannot be used; no arc there."),
)

_ARC_TEXTS = {
    ArcTrouble.AT_END: ARC_AT_END,
    ArcTrouble.IMPOSSIBLE: ARC_IMPOSSIBLE,
    ArcTrouble.DISAGREES: ARCS_DISAGREE,
}


class PointRole(IntEnum):
    """What the linework makes of a point. Every ``NOT_JOINED`` point is named by a message; it stays ground."""

    GROUND = 0
    ON_LINE = 1
    NOT_GROUND = 2
    CHECK_SHOT = 3
    REJECTED = 4
    NOT_JOINED = 5


@dataclass(frozen=True)
class OpenEnd:
    """A line still running when the survey ended: ``label``, and indices of its ``first`` and ``last`` point."""

    label: str
    first: int
    last: int


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
    report = _Report(points)
    _report_readings(descriptions, report)
    decided = _decide(points, descriptions, report)
    chains = _Chainer(decided, report)
    chains.run(descriptions)
    lines = _Lines(decided, convention, report)
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


class _Report:
    """Collects messages and fills in names and file lines of the points they speak of."""

    def __init__(self, points: PointSet) -> None:
        self.points = points
        self.messages: List[Message] = []

    def add(self, text: Text, indices: Sequence[int], **values: Any) -> None:
        """One message about ``indices`` (not empty); {point} and {line} are those of the first."""
        found = np.asarray(indices, np.int64)
        values.update(count=len(found), indices=found, point=self.name(found[0]), line=self.line(found[0]))
        self.messages.append(Message(text, values))

    def mask(self, text: Text, mask: np.ndarray, **values: Any) -> None:
        """One message about the points of ``mask``, if there are any."""
        if mask.any():
            self.add(text, np.flatnonzero(mask).tolist(), **values)

    def name(self, index: int) -> str:
        return str(self.points.name[index]) or "-"

    def line(self, index: int) -> int:
        return int(self.points.source_line[index])

    def open_ends(self, ends: Sequence[OpenEnd]) -> None:
        if ends:
            self.add(NO_END, [end.last for end in ends], label=ends[0].label)


# --- what each point is -------------------------------------------------------------------------


def _report_readings(descriptions: Descriptions, report: _Report) -> None:
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


def _has_line(description: Description) -> bool:
    return any(each.row is not None and bool(each.row.kind.line) for each in description.readings)


def _decide(points: PointSet, descriptions: Descriptions, report: _Report) -> PointSet:
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
    of_line = descriptions.mask([_has_line(each) or not each.fits for each in descriptions.distinct])
    roles = np.where(of_line, PointRole.NOT_JOINED, PointRole.GROUND).astype(np.uint8)
    roles[joined] = PointRole.ON_LINE
    fresh = before.used & ~after.used
    check = (after.reasons & np.uint32(Reason.CHECK_SHOT)) != 0
    roles[fresh] = np.where(check[fresh], PointRole.CHECK_SHOT, PointRole.NOT_GROUND)
    roles[~before.used] = PointRole.REJECTED
    return roles


# --- chains of points ---------------------------------------------------------------------------


@dataclass
class _Chain:
    """A line while it is being formed: indices of its points and which of them are middles of arcs."""

    row: CodeRow
    label: str
    start: int
    points: List[int] = field(default_factory=list)
    arcs: List[bool] = field(default_factory=list)
    rejected: List[int] = field(default_factory=list)
    placeless: List[int] = field(default_factory=list)
    lost_arcs: List[int] = field(default_factory=list)
    closes: bool = False


class _Chainer:
    """Runs through the survey once and sorts its points into chains by code and line number."""

    def __init__(self, points: PointSet, report: _Report) -> None:
        self.report = report
        self.used = points.used
        self.repeated = ~points.used & ((points.reasons & np.uint32(Reason.DUPLICATE)) != 0)
        self.placed = np.isfinite(points.easting) & np.isfinite(points.northing) & np.isfinite(points.height)
        self.chains: List[_Chain] = []
        self.running: Dict[Tuple[str, str], _Chain] = {}
        self.begun: Dict[Tuple[str, str], int] = Counter()

    def run(self, descriptions: Descriptions) -> None:
        """Sort all points with line codes, in their order."""
        mask = descriptions.mask([each.fits and _has_line(each) for each in descriptions.distinct])
        self.report.mask(DUPLICATES_SKIPPED, mask & self.repeated)
        indices = np.flatnonzero(mask & ~self.repeated)
        for index, which in zip(indices.tolist(), descriptions.which[indices].tolist()):
            for reading in descriptions.distinct[which].readings:
                if reading.row is not None and reading.row.kind.line:
                    self.add(index, reading, reading.row)

    def add(self, index: int, reading: Reading, row: CodeRow) -> None:
        """Put one point on the line its reading names, and do what its words say."""
        key = (row.code, reading.number)
        if Word.BEGIN in reading.words:
            self.cut(key, index)
        chain = self.running.get(key) or self.begin(key, index, row, Word.BEGIN in reading.words)
        arc = Word.ARC in reading.words
        if not self.used[index] or not self.placed[index]:
            (chain.placeless if self.used[index] else chain.rejected).append(index)
            if arc:
                chain.lost_arcs.append(index)
        else:
            chain.points.append(index)
            chain.arcs.append(arc)
        if Word.CLOSE in reading.words or Word.END in reading.words:
            chain.closes |= Word.CLOSE in reading.words
            del self.running[key]

    def begin(self, key: Tuple[str, str], index: int, row: CodeRow, told: bool) -> _Chain:
        """A new running chain; later lines of one code and number are told apart by a count."""
        self.begun[key] += 1
        label = " ".join(part for part in key if part)
        if self.begun[key] > 1:
            label = f"{label} ({self.begun[key]})"
            if not told:
                self.report.add(REOPENED, [index], label=label)
        chain = _Chain(row, label, index, closes=row.closes)
        self.chains.append(chain)
        self.running[key] = chain
        return chain

    def cut(self, key: Tuple[str, str], index: int) -> None:
        """End a chain that still runs when another of its number begins."""
        chain = self.running.pop(key, None)
        if chain is None:
            return
        last = max(chain.points or [chain.start])
        name, line = self.report.name(last), self.report.line(last)
        self.report.add(BEGAN_ANEW, [index], label=chain.label, last=name, last_line=line)

    def open_ends(self) -> Tuple[OpenEnd, ...]:
        """Lines that still ran at the end of the survey and do not close by themselves."""
        chains = [each for each in self.chains if self.running_still(each) and not each.closes and len(each.points) > 1]
        return tuple(OpenEnd(each.label, each.points[0], each.points[-1]) for each in chains)

    def running_still(self, chain: _Chain) -> bool:
        return any(chain is each for each in self.running.values())


# --- lines --------------------------------------------------------------------------------------


class _Lines:
    """Makes constraint lines of finished chains and reports what cannot be one."""

    def __init__(self, points: PointSet, convention: FieldConvention, report: _Report) -> None:
        self.xyz = np.column_stack([points.easting, points.northing, points.height])
        self.tolerance = convention.arc_tolerance
        self.report = report
        self.lines: List[ConstraintLine] = []
        self.layers: List[str] = []
        self.joined = np.zeros(len(points), bool)

    def finish(self, chain: _Chain) -> None:
        """Turn a chain into a line of the survey, if it can be one."""
        self.report_skipped(chain)
        indices, arcs = self.distinct(chain)
        if not len(indices):
            self.report.add(NOTHING_LEFT, [chain.start], label=chain.label)
        elif len(indices) == 1:
            self.report.add(SINGLE_POINT, indices.tolist(), label=chain.label)
        else:
            closed = self.can_close(chain, indices)
            if closed is not None:
                self.draw(chain, indices, arcs, closed)

    def report_skipped(self, chain: _Chain) -> None:
        for text, skipped in ((REJECTED_SKIPPED, chain.rejected), (NO_POSITION, chain.placeless)):
            if skipped:
                self.report.add(text, skipped, label=chain.label)
        for index in chain.lost_arcs:
            self.report.add(ARC_REJECTED, [index], label=chain.label)

    def distinct(self, chain: _Chain) -> Tuple[np.ndarray, np.ndarray]:
        """The chain's point indices and arc marks without repeated places; a mark moves to the point kept."""
        indices = np.array(chain.points, np.int64)
        xy = self.xyz[indices, :2]
        keep = first_of_places(xy)
        if chain.closes and np.count_nonzero(keep) > 1:
            last = int(np.flatnonzero(keep)[-1])
            keep[last:] = keep[last:] & (not same_place(xy[0], xy[last]))
        arcs = np.zeros(len(indices), bool)
        kept_before = np.maximum.accumulate(np.where(keep, np.arange(len(indices)), 0))
        np.logical_or.at(arcs, kept_before, np.array(chain.arcs, bool))
        if not keep.all():
            self.report.add(SAME_PLACE_DROPPED, indices[~keep].tolist(), label=chain.label)
        return indices[keep], arcs[keep]

    def can_close(self, chain: _Chain, indices: np.ndarray) -> Optional[bool]:
        """Whether the line runs back to its first point; None when it is a ring that cannot be one."""
        if not chain.closes:
            return False
        xy = self.xyz[indices, :2]
        places = count_places(xy)
        ring = chain.row.kind is not CodeKind.BREAKLINE
        if ring and places < 3:
            self.report.add(RING_TOO_SHORT, indices.tolist(), label=chain.label, places=places)
            return None
        if ring and is_flat_ring(xy):
            self.report.add(RING_FLAT, indices.tolist(), label=chain.label)
            return None
        if places < 3:
            self.report.add(CANNOT_CLOSE, [int(indices[-1])], label=chain.label)
        return places >= 3

    def draw(self, chain: _Chain, indices: np.ndarray, arcs: np.ndarray, closed: bool) -> None:
        """Add the line with its arcs chorded; a closed breakline repeats its first vertex at the end."""
        shaped = shape_line(self.xyz[indices], arcs, closed, self.tolerance)
        for vertex, trouble in shaped.troubles:
            self.report.add(_ARC_TEXTS[trouble], [int(indices[vertex])], label=chain.label)
        xyz, numbers = shaped.xyz, np.where(shaped.source < 0, -1, indices[shaped.source])
        kind: LineKind = chain.row.kind.line
        if closed and kind is LineKind.BREAKLINE:
            xyz, numbers = np.vstack([xyz, xyz[:1]]), np.append(numbers, numbers[0])
        self.lines.append(ConstraintLine(kind, xyz, numbers.astype(np.int64), chain.label))
        self.layers.append(chain.row.layer)
        self.joined[indices] = True
