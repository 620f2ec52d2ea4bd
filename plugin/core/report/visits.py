"""Later visits to the site: what came of each, and the section of the report about them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Optional, Tuple

from ..earthwork.visits import GroundChange
from ..georeference.record import Georeference
from ..handover.mesh_noise import MeshNoise
from ..messages import QT_TRANSLATE_NOOP, Message, Text, message
from ..points.pointset import PointSet
from ..points.rejects import LineAccount, Rejects
from ..quality.check import SurveyCheck
from ..surface.tin import Tin
from . import markup
from .labels import NOT_KNOWN, Words, number
from .markup import Section
from .remarks import messages_list, say_message

if TYPE_CHECKING:
    from .results import JobResult

APART = Text(
    "visits.apart",
    QT_TRANSLATE_NOOP(
        "core",
        "Visit {number}, {file}, is not in this surface: over {changed:.0f} m² of the {common:.0f} m² that both cover "
        "it differs from the ground before it by more than noise. Say where its ground counts (--new-ground, or on the "
        "desk in “Compare later visits”); its own surface stands in surface_visit_{number}.2dm.",
    ),
)
COUNTS = Text(
    "visits.counts",
    QT_TRANSLATE_NOOP(
        "core",
        "Visit {number}, {file}, counts wherever it was walked, as said. Points taken in: {taken}; earlier points kept "
        "out, because they differ from it by more than noise: {superseded}.",
    ),
)
COUNTS_WITHIN = Text(
    "visits.counts_within",
    QT_TRANSLATE_NOOP(
        "core",
        "Visit {number}, {file}, counts within the polygons of {area}, as said. Points taken in: {taken}; earlier "
        "points kept out, because they differ from it by more than noise: {superseded}. Elsewhere this surface is the "
        "ground before it.",
    ),
)
NOTHING_SHARED = Text(
    "visits.nothing_shared",
    QT_TRANSLATE_NOOP(
        "core",
        "Visit {number}, {file}, has no ground in common with what was there before it: no offset can be told.",
    ),
    weight=1,
)
TITLE = QT_TRANSLATE_NOOP("core", "Later visits")


@dataclass(frozen=True)
class VisitSurface:
    """The surface of one visit alone, and how its heights repeat."""

    tin: Tin
    noise: Optional[MeshNoise]


@dataclass(frozen=True)
class LaterVisit:
    """A visit after the first. ``points``: all of its file, as measured; ``area``: where its ground counts, None
    nowhere, "" everywhere, else the name of the file of polygons; ``taken``: points of it in the surface of the job;
    ``superseded``: earlier points that these keep out. ``messages``: what its file and points gave to say.
    """

    number: int
    file: str
    points: PointSet
    rejects: Rejects
    account: LineAccount
    check: Optional[SurveyCheck]
    change: GroundChange
    area: Optional[str]
    taken: int
    superseded: int
    messages: Tuple[Message, ...]

    @property
    def nothing_shared(self) -> Message:
        return message(NOTHING_SHARED, number=self.number, file=self.file)

    @property
    def first(self) -> Message:
        """What must be known of it before all else."""
        said = {"number": self.number, "file": self.file}
        if self.area is None:
            return message(APART, changed=self.change.changed, common=self.change.common, **said)
        said.update(taken=self.taken, superseded=self.superseded)
        return message(COUNTS_WITHIN, area=self.area, **said) if self.area else message(COUNTS, **said)


@dataclass(frozen=True)
class Visits:
    """``surfaces``: of every visit alone, from the first on; ``later``: those after it; ``points``: of the first and of
    those whose ground counts, decisions made, None where no other counts; ``records``: what was done to heights."""

    surfaces: Tuple[VisitSurface, ...]
    later: Tuple[LaterVisit, ...]
    points: Optional[PointSet]
    records: Tuple[Georeference, ...]

    @property
    def messages(self) -> Tuple[Message, ...]:
        """What is to be said of all of them, beside what comes first."""
        apart = tuple(each.nothing_shared for each in self.later if each.area is None and not each.change.common > 0)
        return (*apart, *(said for each in self.later for said in (*each.change.messages, *each.messages)))

    @property
    def untied(self) -> Tuple[Message, ...]:
        """Of those whose ground counts and has nothing in common with what was before, so that their heights hang on
        nothing but their own base."""
        return tuple(
            each.nothing_shared
            for each in self.later
            if each.area is not None and not each.change.common > 0 and not each.change.offset
        )


def visit_sections(result: JobResult, words: Words) -> Tuple[Section, ...]:
    """A section where there are later visits."""
    if result.visits is None:
        return ()
    head = (
        QT_TRANSLATE_NOOP("core", "Visit"), QT_TRANSLATE_NOOP("core", "File"), QT_TRANSLATE_NOOP("core", "Points"),
        QT_TRANSLATE_NOOP("core", "Rejected lines"), QT_TRANSLATE_NOOP("core", "Higher than before by"),
        QT_TRANSLATE_NOOP("core", "± (95 %)"), QT_TRANSLATE_NOOP("core", "Common ground"),
        QT_TRANSLATE_NOOP("core", "Changed"), QT_TRANSLATE_NOOP("core", "Cut"), QT_TRANSLATE_NOOP("core", "Fill"),
    )  # fmt: skip
    rows = [_row(each, words) for each in result.visits.later]
    body = markup.bullets(say_message(each.first, words) for each in result.visits.later)
    body += markup.table(words(TITLE), [words(text) for text in head], rows, "ntnnnnnnnn")
    body += messages_list(result.visits.messages, words)
    return (("visits", words(TITLE), body),)


def _row(visit: LaterVisit, words: Words) -> Tuple[str, ...]:
    change = visit.change

    def told(value: float, symbol: str, decimals: int, height: bool = False) -> str:
        if not (change.common > 0 and value == value):
            return NOT_KNOWN
        factor, unit, _ = words.units.instead_of(symbol, height)
        return f"{number(value * factor, decimals)} {unit}"

    return (
        str(visit.number), visit.file, number(visit.account.points), number(visit.account.rejects),
        told(change.offset, "m", 3, True), told(change.half, "m", 3, True), told(change.common, "m²", 0),
        told(change.changed, "m²", 0), told(change.cut, "m³", 1), told(change.fill, "m³", 1),
    )  # fmt: skip
