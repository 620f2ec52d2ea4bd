"""A file of the survey brought into the CRS that is wanted."""

from __future__ import annotations

from dataclasses import replace
from typing import List, Tuple

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..points.delimited import PointFile
from ..points.geographic import HeightKind
from ..points.questions import QuestionError
from .axes import flat, has_heights
from .intake_heights import sent_separations, which_datum
from .intake_options import IntakeOptions
from .place import place_survey
from .record import Georeference, crs_name
from .transform import transform_points

NO_TARGET = Text(
    "intake.no_target",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its coordinates cannot be transformed to a local grid; give a projected CRS as --crs."
    ),
)
AGAINST_CRS = Text(
    "intake.against_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "Ellipsoidal heights are wanted, but {crs} counts heights from another level; give a CRS without heights.",
    ),
)


def transformed(read: PointFile, options: IntakeOptions, records: List[Georeference]) -> PointFile:
    """Plan coordinates in the CRS wanted. A correction by the user's word may have changed the CRS of the file."""
    points = read.points
    if points.crs is None or (options.source_crs is None and options.crs is None) or points.crs == options.crs:
        return read
    if options.crs is None:
        raise SurveyError(NO_TARGET, file=points.source)
    done = transform_points(points, options.crs, options.accept)
    records.append(done.record)
    return replace(read, points=done.points)


def placed(
    read: PointFile, kind: HeightKind, log: bool, options: IntakeOptions, records: List[Georeference]
) -> Tuple[PointFile, HeightKind]:
    """Degrees in the CRS wanted, and the kind of their heights then."""
    assert read.geographic is not None
    levelled = options.crs is not None and has_heights(options.crs)
    by_proj = kind is HeightKind.ELLIPSOIDAL and levelled and options.separation is None
    above = levelled and len(options.crs.sub_crs_list) > 1  # type: ignore[union-attr]
    if above and options.wanted is HeightKind.ELLIPSOIDAL:
        raise SurveyError(AGAINST_CRS, crs=crs_name(options.crs))
    if above and kind is HeightKind.UNKNOWN and options.separation is None and not log:
        raise QuestionError(read.points.source, [which_datum(options.crs)])
    # Those that a separation of the user's is for must not be changed by PROJ as well.
    told = HeightKind.UNKNOWN if levelled and not by_proj else kind
    positions = replace(read.geographic, heights=told)
    ready = replace(read, geographic=positions, messages=read.messages)
    source = None if options.source_crs is None else flat(options.source_crs)
    now, record = place_survey(ready, options.crs, source, options.accept)
    assert record is not None
    if log and kind is HeightKind.ELLIPSOIDAL:
        records.append(sent_separations(read))
    records.append(record)
    said = {str(one) for one in record.statements}
    messages = tuple(one for one in now.messages if str(one) not in said)
    after = HeightKind.ORTHOMETRIC if by_proj and above else kind
    return replace(now, messages=messages), after
