"""Points with line codes sorted into chains by code and line number, in recording order, across interleaved lines."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from typing import Any, Dict, List, Sequence, Set, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, Text
from ..points.pointset import VISIT, PointSet, Reason
from .codes import CodeRow
from .convention import Description, Descriptions, Reading, Word

DUPLICATES_SKIPPED = Text(
    "linework.duplicates_skipped",
    QT_TRANSLATE_NOOP(
        "core",
        "Repeated records with line codes, left out of the lines together with their words. Points: {count}, "
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


@dataclass(frozen=True)
class OpenEnd:
    """A line still running when the survey ended: ``label``, and indices of its ``first`` and ``last`` point."""

    label: str
    first: int
    last: int


class SurveyNotes:
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


def has_line(description: Description) -> bool:
    return any(each.row is not None and bool(each.row.kind.line) for each in description.readings)


#: Code, line number and visit.
_Key = Tuple[str, str, int]


@dataclass
class Chain:
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


class Chainer:
    """Runs through the survey once and sorts its points into chains by code and line number."""

    def __init__(self, points: PointSet, report: SurveyNotes) -> None:
        self.report = report
        self.used = points.used
        self.repeated = ~points.used & ((points.reasons & np.uint32(Reason.DUPLICATE)) != 0)
        self.placed = np.isfinite(points.easting) & np.isfinite(points.northing) & np.isfinite(points.height)
        self.chains: List[Chain] = []
        self.superseded = (points.reasons & np.uint32(Reason.SUPERSEDED)) != 0
        visit = points.extra.get(VISIT, np.zeros(len(points), np.int64))
        self.visit = np.unique(visit.astype(str), return_inverse=True)[1].ravel()
        self.running: Dict[_Key, Chain] = {}
        self.begun: Dict[Tuple[Any, ...], int] = Counter()  # by key, and by code and line number of all visits
        self.broken: Set[_Key] = set()  # by ground that is newer

    def run(self, descriptions: Descriptions) -> None:
        """Sort all points with line codes, in their order."""
        mask = descriptions.mask([each.fits and has_line(each) for each in descriptions.distinct])
        self.report.mask(DUPLICATES_SKIPPED, mask & self.repeated)
        indices = np.flatnonzero(mask & ~self.repeated)
        for index, which in zip(indices.tolist(), descriptions.which[indices].tolist()):
            for reading in descriptions.distinct[which].readings:
                if reading.row is not None and reading.row.kind.line:
                    self.add(index, reading, reading.row)

    def add(self, index: int, reading: Reading, row: CodeRow) -> None:
        """Put one point on the line its reading names, and do what its words say."""
        key = (row.code, reading.number, int(self.visit[index]))
        if Word.BEGIN in reading.words:
            self.cut(key, index)
            self.broken.discard(key)
        if self.superseded[index] and not row.closes:
            self.running.pop(key, None)  # it ends before newer ground, and begins anew behind it
            self.broken.add(key)
            return
        chain = self.running.get(key) or self.begin(key, index, row, Word.BEGIN in reading.words or key in self.broken)
        arc = Word.ARC in reading.words
        if not self.used[index] or not self.placed[index]:
            (chain.placeless if self.used[index] else chain.rejected).append(index)
            if arc:
                chain.lost_arcs.append(index)
        else:
            chain.points.append(index)
            chain.arcs.append(arc)
        if Word.CLOSE in reading.words or Word.END in reading.words:
            chain.closes |= Word.CLOSE in reading.words and key not in self.broken
            del self.running[key]

    def begin(self, key: _Key, index: int, row: CodeRow, told: bool) -> Chain:
        """A new running chain; later lines of one code and number are told apart by a count."""
        name = key[:2]
        for counted in (name, key):
            self.begun[counted] += 1
        label = " ".join(part for part in name if part)
        if self.begun[name] > 1:
            label = f"{label} ({self.begun[name]})"
            if not told and self.begun[key] > 1:
                self.report.add(REOPENED, [index], label=label)
        chain = Chain(row, label, index, closes=row.closes)
        self.chains.append(chain)
        self.running[key] = chain
        return chain

    def cut(self, key: _Key, index: int) -> None:
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

    def running_still(self, chain: Chain) -> bool:
        return any(chain is each for each in self.running.values())
