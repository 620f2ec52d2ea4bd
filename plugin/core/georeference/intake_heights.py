"""The heights of a file of the survey: what they are, and what becomes of them."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, List, Sequence, Tuple

import numpy as np

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.delimited import PointFile
from ..points.geographic import HeightKind
from ..points.questions import Answer, Question, QuestionError, Topic
from .heights import ReceiverSeparation, ellipsoidal_heights, orthometric_heights
from .intake_options import IntakeOptions
from .record import Georeference, Step, crs_name

ALREADY = Text(
    "intake.already",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: its heights are {heights} already, so the geoid separation would be counted twice; leave --geoid out, "
        "or say with --heights-are what they are.",
    ),
)
LACKS_SEPARATION = Text(
    "intake.lacks_separation",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: {wanted} heights are wanted and those of the file are {heights}; give the geoid separation as "
        "--geoid.",
    ),
)
NOT_KNOWN = Text("intake.heights_not_known", QT_TRANSLATE_NOOP("core", "of a kind that nothing says"))
ORTHOMETRIC = Text("intake.orthometric", QT_TRANSLATE_NOOP("core", "orthometric"))
ELLIPSOIDAL = Text("intake.ellipsoidal", QT_TRANSLATE_NOOP("core", "ellipsoidal"))
TAKEN_AS = Text("intake.taken_as", QT_TRANSLATE_NOOP("core", "{file}: its heights are taken as {heights}, as said."))
AGAINST_HEADER = Text(
    "intake.against_header",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its heights are taken as {heights}, as said, though the file itself says {found}."
    ),
)

WHICH_DATUM = Text(
    "intake.which_datum",
    QT_TRANSLATE_NOOP(
        "core", "nothing says whether its heights are ellipsoidal or above a geoid, and {crs} has a level"
    ),
)
AS_LEVELS = Text("intake.as_levels", QT_TRANSLATE_NOOP("core", "heights of {crs} already, taken as they are"))
FROM_ELLIPSOID = Text(
    "intake.from_ellipsoid", QT_TRANSLATE_NOOP("core", "heights above the ellipsoid, brought to those of {crs}")
)

OTHER_KINDS = Text(
    "intake.other_kinds",
    QT_TRANSLATE_NOOP(
        "core",
        "its heights are ellipsoidal and those of {other} are {heights}; bring the heights of one file to the other "
        "kind first, or say what all are",
    ),
)
ALL_ORTHOMETRIC = Text("intake.all_orthometric", QT_TRANSLATE_NOOP("core", "all heights above one geoid"))
ALL_ELLIPSOIDAL = Text("intake.all_ellipsoidal", QT_TRANSLATE_NOOP("core", "all heights above one ellipsoid"))

_KINDS = {HeightKind.ORTHOMETRIC: ORTHOMETRIC, HeightKind.ELLIPSOIDAL: ELLIPSOIDAL, HeightKind.UNKNOWN: NOT_KNOWN}


def kind_of_heights(read: PointFile, log: bool, options: IntakeOptions) -> Tuple[HeightKind, Tuple[Message, ...]]:
    """What the heights of a file are, and what to say of it."""
    found = HeightKind.UNKNOWN
    if read.recognition is not None:
        found = read.recognition.heights
    if found is HeightKind.UNKNOWN and read.geographic is not None:
        found = read.geographic.heights
    said = options.heights_are
    if log or said is None:
        return found, ()
    where = {"file": read.points.source, "heights": _KINDS[said]}
    if found not in (said, HeightKind.UNKNOWN):
        return said, (message(AGAINST_HEADER, found=_KINDS[found], **where),)
    return said, (message(TAKEN_AS, **where),)


def check_kinds(files: Sequence[Tuple[str, HeightKind]], options: IntakeOptions) -> None:
    """Raises QuestionError where some of several ``files`` have ellipsoidal heights, and others not."""
    high = [file for file, kind in files if kind is HeightKind.ELLIPSOIDAL]
    rest = [(file, kind) for file, kind in files if kind is not HeightKind.ELLIPSOIDAL]
    if not high or not rest:
        return
    answers = (
        Answer("--heights-are", HeightKind.ORTHOMETRIC.value, message(ALL_ORTHOMETRIC)),
        Answer("--heights-are", HeightKind.ELLIPSOIDAL.value, message(ALL_ELLIPSOIDAL)),
    )
    text = message(OTHER_KINDS, other=rest[0][0], heights=_KINDS[rest[0][1]])
    raise QuestionError(high[0], [Question(Topic.HEIGHT_KIND, text, () if options.heights_are else answers)])


def sent_separations(read: PointFile) -> Georeference:
    """What the receiver's own separations were."""
    separation = np.asarray(read.points.extra["geoid_separation"], float)
    source = ReceiverSeparation(separation)
    return Georeference(Step.HEIGHTS, None, None, source, (source.statement(separation),))


def with_heights(
    read: PointFile, kind: HeightKind, log: bool, options: IntakeOptions, records: List[Georeference]
) -> Tuple[PointFile, HeightKind]:
    """The heights wanted, from those of the file and the separation given."""
    wanted, separation = options.wanted, options.separation
    if wanted is None or (wanted is kind and separation is None):
        return read, kind
    where = {"file": read.points.source, "heights": _KINDS[kind]}
    if separation is None:
        # The heights of a log are taken as wanted when it is read; those left are of text.
        raise SurveyError(LACKS_SEPARATION, wanted=_KINDS[wanted], **where)
    if wanted is kind:
        raise SurveyError(ALREADY, **where)
    change = orthometric_heights if wanted is HeightKind.ORTHOMETRIC else ellipsoidal_heights
    done = change(read.points, separation)
    records.append(done.record)
    return replace(read, points=done.points), wanted


def which_datum(crs: Any) -> Question:
    """What heights beside degrees are of, where the CRS wanted counts heights from a level of its own."""
    name = crs_name(crs)
    answers = (
        Answer("--heights-are", HeightKind.ORTHOMETRIC.value, message(AS_LEVELS, crs=name)),
        Answer("--heights-are", HeightKind.ELLIPSOIDAL.value, message(FROM_ELLIPSOID, crs=name)),
    )
    return Question(Topic.HEIGHT_KIND, message(WHICH_DATUM, crs=name), answers)
