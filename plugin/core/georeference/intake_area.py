"""A file of the survey against the area of use of its CRS: corrected on the user's word, asked about, or told."""

from __future__ import annotations

from typing import Optional, Tuple

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.delimited import PointFile
from .area import AreaCheck, check_area, suggestion_names
from .area_causes import Cause
from .correction import AS_READ, Corrected, ask_where, correct_lines
from .correction_said import STAY_OUTSIDE
from .intake_options import IntakeOptions

NO_SUGGESTION = Text(
    "intake.no_suggestion",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: '{name}' is no cause that would explain where the points lie; the causes found are: {names}.",
    ),
)
NOT_APPLICABLE = Text(
    "intake.not_applicable",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: '{name}' needs the file to be read or transformed otherwise: name the columns latitude and longitude "
        "in --columns, or give the CRS of the file as --source-crs and the one wanted as --crs.",
    ),
)
#: So many lines put aside as swapped are worth a word on how they would be read.
MANY_SWAPPED = 10
READ_SWAPPED = Text(
    "intake.read_swapped",
    QT_TRANSLATE_NOOP(
        "core", "{file}: to have lines that were put aside as swapped read the other way round, use --correct {name}."
    ),
    weight=1,
)
TO_CORRECT = Text(
    "intake.to_correct",
    QT_TRANSLATE_NOOP("core", "To have it read so, repeat with --correct {name}."),
    weight=3,
)


def corrected_file(read: PointFile, options: IntakeOptions) -> Optional[Tuple[AreaCheck, Corrected]]:
    """The check against the area of use and what the correction made of it; None where none was asked for, or is not
    needed."""
    name, file = options.correct, read.points.source
    if name in ("", AS_READ) or read.geographic is not None:
        return None
    area = check_area(read.points, read.format.unit, options.near)
    if not area.outside.any():
        return None
    names = suggestion_names(area)
    if name not in names:
        raise SurveyError(NO_SUGGESTION, file=file, name=name, names=", ".join(names) or "-")
    if area.suggestions[names.index(name)].reading is None:
        raise SurveyError(NOT_APPLICABLE, file=file, name=name)
    follow = options.height_unit is None and read.format.height_unit is read.format.unit
    return area, correct_lines(read.points, area, name, options.accept, follow, options.landmarks)


def swapped_aside(read: PointFile) -> Tuple[Message, ...]:
    """That lines put aside as swapped can be read the other way round, where they can."""
    area = check_area(read.points, read.format.unit) if read.geographic is None else None
    names = () if area is None or not area.outside.any() else suggestion_names(area)
    swapped = Cause.SWAPPED.value
    return (message(READ_SWAPPED, file=read.points.source, name=swapped),) if swapped in names else ()


def checked_file(read: PointFile, area: AreaCheck, options: IntakeOptions) -> Tuple[bool, Tuple[Message, ...]]:
    """Whether the user has said what becomes of points outside the area of use, and what to say of them. Raises
    QuestionError where only the user can say what most of them are."""
    if not area.outside.any():
        return False, area.messages
    if options.correct == AS_READ:
        said = message(STAY_OUTSIDE, file=read.points.source, count=int(area.outside.sum()))
        return True, (said, *area.messages)
    if options.correct:
        return False, area.messages
    question = ask_where(read.points, area, options.landmarks) if options.ask else None
    if question is not None:
        raise question
    return False, area_said(area)


def area_said(area: AreaCheck) -> Tuple[Message, ...]:
    usable = [name for name, one in zip(suggestion_names(area), area.suggestions) if one.reading is not None]
    return (*area.messages, message(TO_CORRECT, name=" | ".join(usable))) if usable else area.messages
