"""Decisions by hand of a job: those of a file, and over them those that the job keeps itself."""

from __future__ import annotations

from dataclasses import replace
from typing import NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..messages import Message
from ..points.decided import find_decided
from ..points.decisions import Decisions, apply_decisions, locate_decisions, read_decisions
from ..points.pointset import PointSet
from ..quality.check import SurveyCheck
from ..quality.overrides import NO_DECISIONS, OverrideReport, with_overrides
from .settings import JobSettings

#: The file of a job, which holds its decisions too.
JOB_FILE = "job.json"


class Decided(NamedTuple):
    """``points``: with all decisions made; ``overrides``: where these overrule the checks, None without either;
    ``messages``: what to tell; ``source``: where decisions came from, "" for none."""

    points: PointSet
    overrides: Optional[OverrideReport]
    messages: Tuple[Message, ...]
    source: str


def decide(points: PointSet, check: Optional[SurveyCheck], settings: JobSettings, visit: str = "") -> Decided:
    """Decisions on points; where they were checked, both words are kept and what the hand overrules is told.

    ``visit``: what the file of a later visit is called, "" for the survey itself; decisions must name such a file.
    """
    points = points if check is None else check.points
    decisions, messages = _all_decisions(points, settings, visit)
    if check is None:
        decided, missed = apply_decisions(points, decisions)
        return Decided(decided, None, (*messages, *missed), decisions.source)
    decided, overrides = with_overrides(points, decisions)
    messages = (*messages, *overrides.messages)
    return Decided(decided, overrides if decisions.source else None, messages, decisions.source)


def visit_names(settings: JobSettings) -> Tuple[str, ...]:
    """What the files of the later visits are called in the column source and in decisions, each by itself."""
    names = [settings.survey.name, *(path.name for path in settings.more)]
    for number, visit in enumerate(settings.visits, 2):
        names.append(visit.file.name if visit.file.name not in names else f"{visit.file.name} ({number})")
    return tuple(names[1 + len(settings.more) :])


def _all_decisions(points: PointSet, settings: JobSettings, visit: str) -> Tuple[Decisions, Tuple[Message, ...]]:
    """Those of the file, but where the job itself has a later word on the same point."""
    visits = visit_names(settings)

    def meant(file: str) -> bool:
        return file == visit if visit or file in visits else True

    given = NO_DECISIONS if settings.decisions is None else read_decisions(settings.decisions)
    if visits and len(given):
        files = [""] * len(given) if given.file is None else given.file.tolist()
        given = _selected(given, np.array([meant(str(file)) for file in files]), bool(visit))
    decided = tuple(one for one in settings.decided if meant(one.file))
    if visit:  # the only file of its visit
        decided = tuple(replace(one, file="") for one in decided)
    if not decided:
        return given, ()
    own, messages = find_decided(points, decided, JOB_FILE)
    taken = locate_decisions(points, own).point
    free = ~np.isin(locate_decisions(points, given).point, taken[taken >= 0])
    both = [(given, free), (own, np.ones(len(own), bool))]
    line, status, reasons, at = (
        np.concatenate([getattr(one, name)[kept] for one, kept in both]) for name in ("line", "status", "reasons", "at")
    )
    files, names = (_texts(name, both) for name in ("file", "name"))
    return Decisions(line, status, reasons, at, given.source or own.source, files, names), messages


def _selected(given: Decisions, those: np.ndarray, of_visit: bool) -> Decisions:
    """Some of the decisions; of a visit they need not name its file any more."""
    columns = {each: getattr(given, each)[those] for each in ("line", "status", "reasons", "at")}
    file, name = (None if each is None else each[those] for each in (given.file, given.name))
    return replace(given, **columns, file=None if of_visit else file, name=name)


def _texts(name: str, both: Sequence[Tuple[Decisions, np.ndarray]]) -> Optional[np.ndarray]:
    """Such a column of both kinds of decisions, None where neither has it."""
    columns = [(getattr(one, name), kept) for one, kept in both]
    if all(column is None for column, _ in columns):
        return None
    return np.concatenate([
        np.full(int(kept.sum()), "", object) if column is None else column[kept].astype(object)
        for column, kept in columns
    ])  # fmt: skip
