"""Later visits to the site: each read, checked and made a surface by itself, compared with the ground before it, and
taken into the surface of the job where the user says so."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Callable, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..earthwork.region_file import read_region_file
from ..earthwork.visits import Ground, Revisited
from ..georeference.intake import IN_FILE
from ..georeference.record import Georeference, Step
from ..handover.checksums import digest
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.decisions import CHECK_REASON, CHECK_STATUS, WORD_OF_STATUS, words_of_reasons
from ..points.pointset import COLUMNS, SOURCE, VISIT, PointSet, Reason, Status
from ..points.stack import stack_extra
from ..progress import Progress, named, part
from ..quality.check import SurveyCheck
from ..report.visits import LaterVisit, Visits, VisitSurface
from ..surface.region import even_odd
from ..surface.tin import Tin
from .decided import Decided, visit_names
from .noise import certainty_of, mesh_noise
from .place import Placed
from .settings import EVERYWHERE, JobSettings, Visit

SHIFTED = Text(
    "visits.shifted",
    QT_TRANSLATE_NOOP(
        "core", "{file}: {shift:+.4f} m added to the heights of {count} points, by which visit {number} meets the "
        "ground before it where nothing changed."
    ),
)  # fmt: skip
HAND_STAYS = Text(
    "visits.hand_stays",
    QT_TRANSLATE_NOOP(
        "core",
        "Lines drawn by hand and edits of the surface count also where the ground of a later visit does; take away "
        "those that it has overtaken.",
    ),
    weight=1,
)
NO_VISIT = Text(
    "visits.no_visit",
    QT_TRANSLATE_NOOP("core", "{option} is said of the last visit, but this job has only one; add a file with --add."),
)
TWICE = Text("visits.twice", QT_TRANSLATE_NOOP("core", "{file}: is part of the job already; add each file once."))
NO_FILE = Text("visits.no_file", QT_TRANSLATE_NOOP("core", "{file}: there is no such file; nothing was added."))
NO_AREA = Text(
    "visits.no_area",
    QT_TRANSLATE_NOOP(
        "core", "{file}: there is no such file; say all, none, or a GeoJSON file of polygons where new ground counts."
    ),
)
NOT_WALKED = Text(
    "visits.not_walked",
    QT_TRANSLATE_NOOP(
        "core",
        "{area}: visit {number}, {file}, has no point in these polygons; give polygons where it was walked, in the CRS "
        "that their file says, or none.",
    ),
)
AS_THE_FIRST = Text(
    "visits.as_the_first",
    QT_TRANSLATE_NOOP(
        "core",
        "{said} A later visit is read by the choices of its job: write its file with the columns, units and CRS of the "
        "first, or make a job of its own of it.",
    ),
)
NOWHERE = "none"


class VisitWords(NamedTuple):
    """What is said of visits: ``add``: files that are new ones, in their order; ``new_ground`` and ``offset``: of the
    last one, see :class:`.settings.Visit`, None to leave it."""

    add: Tuple[Path, ...] = ()
    new_ground: Optional[str] = None
    offset: Optional[float] = None


def with_visits(settings: JobSettings, words: VisitWords) -> JobSettings:
    """``settings`` with what was said of visits. Raises SurveyError where that cannot be."""
    known = {path.resolve() for path in (settings.survey, *settings.more, *(one.file for one in settings.visits))}
    contents = {digest(path).sha256 for path in known if path.is_file()} if words.add else set()
    visits = list(settings.visits)
    for file in words.add:
        if not file.is_file():
            raise SurveyError(NO_FILE, file=str(file))
        content = digest(file).sha256
        if file.resolve() in known or content in contents:
            raise SurveyError(TWICE, file=str(file))
        known.add(file.resolve())
        contents.add(content)
        visits.append(Visit(file))
    told = {"--new-ground": words.new_ground, "--visit-offset": words.offset}
    option = next((name for name, value in told.items() if value is not None), "")
    if option and not visits:
        raise SurveyError(NO_VISIT, option=option)
    if words.new_ground is not None:
        visits[-1] = replace(visits[-1], new_ground=_area_word(words.new_ground))
    if words.offset is not None:
        visits[-1] = replace(visits[-1], offset=words.offset)
    return replace(settings, visits=tuple(visits))


def _area_word(word: str) -> str:
    if word in (NOWHERE, ""):
        return ""
    if word != EVERYWHERE and not Path(word).is_file():
        raise SurveyError(NO_AREA, file=word)
    return word


class Alone(NamedTuple):
    """A survey worked through by itself: ``points`` and ``tin`` are what its surface was made from."""

    placed: Placed
    check: Optional[SurveyCheck]
    decided: Decided
    points: PointSet
    tin: Tin


#: The surface of points whose decisions are made, with the points that it was made from.
Build = Callable[[JobSettings, PointSet, Progress], Tuple[PointSet, Tin]]
#: A survey by itself, whose file has that name in decisions.
Take = Callable[[JobSettings, str, Progress], Alone]


def settings_alone(settings: JobSettings, visit: Visit) -> JobSettings:
    """A visit as a survey by itself. What was said of single lines, heights, the base or the surface of the first visit
    is none of it; codes, control, CRS and how files are read are the same."""
    return replace(
        settings, survey=visit.file, more=(), level_shifts=(), base_was="", base_is="", edits=None, found_lines=None,
        breaklines=None, soft_lines=None, fit=replace(settings.fit, shift=False),
        control=None if settings.fit.shift else settings.control,
    )  # fmt: skip


def take_visits(
    settings: JobSettings, points: PointSet, check: Optional[SurveyCheck], take: Take, build: Build, progress: Progress
) -> Visits:
    """All later visits. ``points``: of the first, decisions made, with their ``check``. Raises SurveyError."""
    share = part(progress, 0.0, 0.2)
    first = build(settings, points, share)
    so_far = _SoFar(settings, points, check, first, build)
    surfaces = [VisitSurface(first[1], mesh_noise(check, first[1], first[0]))]
    names, count = visit_names(settings), len(settings.visits)
    for k, (visit, name) in enumerate(zip(settings.visits, names)):
        share = part(progress, 0.2 + 0.8 * k / count, 0.2 + 0.8 * (k + 1) / count)
        try:
            alone = take(settings_alone(settings, visit), name, part(share, 0.0, 0.6))
        except SurveyError as error:
            raise SurveyError(AS_THE_FIRST, said=error.message) from error
        surfaces.append(VisitSurface(alone.tin, mesh_noise(alone.check, alone.tin, alone.points)))
        so_far.add(k + 2, name, visit, alone, part(share, 0.6, 1.0))
    return Visits(tuple(surfaces), tuple(so_far.later), so_far.combined, tuple(so_far.records))


@dataclass
class _SoFar:
    """The ground of the visits so far."""

    settings: JobSettings
    points: PointSet
    check: Optional[SurveyCheck]
    surface: Tuple[PointSet, Tin]
    build: Build

    def __post_init__(self) -> None:
        self.later: List[LaterVisit] = []
        self.records: List[Georeference] = []
        self.combined: Optional[PointSet] = None
        self.name = self.settings.survey.name

    def add(self, number: int, name: str, visit: Visit, alone: Alone, progress: Progress) -> None:
        """One more visit: compared with the ground so far, and a part of it where it counts."""
        before = Ground(self.surface[1], certainty_of(self.check, self.surface[1], self.surface[0]), self.name)
        after = Ground(alone.tin, certainty_of(alone.check, alone.tin, alone.points), name)
        both = Revisited(before, after, visit.offset, named("visits", part(progress, 0.0, 0.4)))
        taken = superseded = 0
        said = _said(name, alone)
        if visit.new_ground:
            rings, more = self._rings(visit)
            said += more
            taken, superseded = self._supersede(number, name, both, alone.decided.points, rings, visit.new_ground)
            self.surface = self.build(self.settings, self.points, part(progress, 0.4, 1.0))
            self.combined, self.name = self.points, f"{self.name} + {name}"
        area = None if not visit.new_ground else "" if visit.new_ground == EVERYWHERE else Path(visit.new_ground).name
        survey = alone.placed.intake.survey
        self.later.append(
            LaterVisit(
                number, name, alone.points, survey.rejects, survey.account, alone.check, both.change(), area, taken,
                superseded, said,
            )
        )  # fmt: skip

    def _rings(self, visit: Visit) -> Tuple[Optional[Sequence[Sequence[np.ndarray]]], Tuple[Message, ...]]:
        """The polygons where a visit counts, None for everywhere; what to tell."""
        by_hand = any(getattr(self.settings, name) for name in ("breaklines", "soft_lines", "edits"))
        said = (message(HAND_STAYS),) if by_hand else ()
        if visit.new_ground == EVERYWHERE:
            return None, said
        file = read_region_file(visit.new_ground, self.points.crs, self.settings.accept)
        return [region.rings for region in file.regions], (*said, *file.messages)

    def _supersede(
        self,
        number: int,
        name: str,
        both: Revisited,
        new: PointSet,
        polygons: Optional[Sequence[Sequence[np.ndarray]]],
        area: str,
    ) -> Tuple[int, int]:
        """Take in the points of a visit inside the polygons, keep out those before that differ; how many of each."""
        old = self.points if VISIT in self.points.extra else _of_visit(self.points, 1, self.settings.survey.name)
        new = _of_visit(new.select(np.flatnonzero(_inside(new, polygons))), number, name)
        if polygons is not None and not len(new):
            raise SurveyError(NOT_WALKED, area=area, number=number, file=name)
        by_hand = (old.reasons & np.uint32(Reason.BY_HAND)) != 0
        xyz = np.column_stack([old.easting, old.northing, old.height])
        asked = np.flatnonzero(old.used & ~by_hand & _inside(old, polygons) & np.isfinite(xyz).all(axis=1))
        walked = np.column_stack([new.easting, new.northing])[new.used]
        out = asked[both.differs(xyz[asked], walked)]
        if both.offset:
            new = replace(new, height=new.height - both.offset)
            said = message(SHIFTED, file=name, shift=-both.offset, count=len(new), number=number)
            self.records.append(Georeference(Step.HEIGHTS, new.crs, new.crs, both.offset, (said,)))
        self.points = _stacked(_kept_out(old, out), new, name)
        return int(np.count_nonzero(new.used)), len(out)


def _said(name: str, alone: Alone) -> Tuple[Message, ...]:
    """What a visit's file and points gave to say, with the name of its file."""
    intake = alone.placed.intake
    records = tuple(one for record in alone.placed.records for one in record.statements)
    first = () if alone.check is None else alone.check.first
    every = (
        *intake.aside, *first, *intake.survey.messages, *alone.placed.messages, *records, *alone.decided.messages
    )  # fmt: skip
    once = {str(one): one for one in every}.values()
    return tuple(one if "file" in one.values else message(IN_FILE, file=name, said=one) for one in once)


def _inside(points: PointSet, polygons: Optional[Sequence[Sequence[np.ndarray]]]) -> np.ndarray:
    """Mask (n,) of the points in any of the polygons; all of them where there are none."""
    if polygons is None:
        return np.ones(len(points), bool)
    place = np.column_stack([points.easting, points.northing])
    return np.any([even_odd(place, [ring[:, :2] for ring in rings]) for rings in polygons], axis=0)


def _of_visit(points: PointSet, number: int, name: str) -> PointSet:
    """The points with the columns that tell their file and visit."""
    column = np.full(len(points), name, object)
    extra = {**points.extra, SOURCE: points.extra.get(SOURCE, column), VISIT: np.full(len(points), str(number), object)}
    return replace(points, extra=extra)


def _kept_out(points: PointSet, which: np.ndarray) -> PointSet:
    """The points with those of ``which`` superseded, also by what the program says of them."""
    status, reasons = points.status.copy(), points.reasons.copy()
    status[which] = Status.REJECTED
    reasons[which] |= np.uint32(Reason.SUPERSEDED)
    extra = dict(points.extra)
    if CHECK_STATUS in extra:
        extra = {**extra, CHECK_STATUS: extra[CHECK_STATUS].copy(), CHECK_REASON: extra[CHECK_REASON].copy()}
        extra[CHECK_STATUS][which] = WORD_OF_STATUS[int(Status.REJECTED)]
        extra[CHECK_REASON][which] = [words_of_reasons(int(each)) for each in reasons[which]]
    return replace(points, extra=extra).with_status(status, reasons)


def _stacked(before: PointSet, after: PointSet, name: str) -> PointSet:
    """Both one behind the other."""
    both = (before, after)
    columns = {key: np.concatenate([getattr(one, key) for one in both]) for key in COLUMNS}
    extra = {key: stack_extra(both, key) for key in dict.fromkeys((*before.extra, *after.extra))}
    return replace(before, extra=extra, source=f"{before.source} + {name}", **columns)
