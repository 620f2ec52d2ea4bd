"""Survey files as the rover wrote them, read, brought into one CRS, and made one survey.

For each file: read, recognised, checked against the area of use, transformed, heights changed if wanted; then all
files merged. What was done is kept as records whose statements go into the report.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..gate.file import joined, part_file
from ..gate.gate import Gate
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.columns import ColumnMap
from ..points.delimited import PointFile
from ..points.geographic import HeightKind
from ..points.merge import Merged, merge_files
from ..points.nmea import is_nmea
from ..points.survey import read_survey
from ..progress import Progress, part, silent
from ..units import LengthUnit
from .area import AreaCheck, apply_suggestion, check_area, suggestion_names
from .axes import flat, has_heights
from .heights import (
    ConstantSeparation,
    GridSeparation,
    ReceiverSeparation,
    Separation,
    ellipsoidal_heights,
    orthometric_heights,
)
from .place import place_survey
from .record import Georeference, Step, crs_name
from .transform import transform_points

NOTHING = Text("intake.nothing", QT_TRANSLATE_NOOP("core", "There is no survey to read; give at least one file."))
NO_TARGET = Text(
    "intake.no_target",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its coordinates cannot be transformed to a local grid; give a projected CRS as --crs."
    ),
)
NOT_DEGREES = Text(
    "intake.not_degrees",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: its columns hold eastings and northings, but {crs}, given as --source-crs, is in degrees; give the "
        "projected CRS they are in, or name the columns latitude and longitude in --columns.",
    ),
)
NOT_LENGTHS = Text(
    "intake.not_lengths",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: its positions are in degrees, but {crs}, given as --source-crs, is projected; give a geographic CRS, "
        "such as EPSG:4326.",
    ),
)
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
AGAINST_CRS = Text(
    "intake.against_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "Ellipsoidal heights are wanted, but {crs} counts heights from another level; give a CRS without heights.",
    ),
)
TAKEN_AS = Text("intake.taken_as", QT_TRANSLATE_NOOP("core", "{file}: its heights are taken as {heights}, as said."))
AGAINST_HEADER = Text(
    "intake.against_header",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its heights are taken as {heights}, as said, though the file itself says {found}."
    ),
)
NO_SUGGESTION = Text(
    "intake.no_suggestion",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: '{name}' is no cause that would explain where the points lie; the causes found are: {names}.",
    ),
)
NOTHING_TO_CORRECT = Text(
    "intake.nothing_to_correct",
    QT_TRANSLATE_NOOP(
        "core", "No point lies outside the area of use of its CRS, so '{name}' is not applied; leave --correct out."
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
TO_CORRECT = Text("intake.to_correct", QT_TRANSLATE_NOOP("core", "To have it read so, repeat with --correct {name}."))
NOT_A_SEPARATION = Text(
    "intake.not_a_separation",
    QT_TRANSLATE_NOOP("core", "--geoid is empty; give metres, or a file with a grid of geoid separations."),
)

IN_FILE = Text("intake.in_file", QT_TRANSLATE_NOOP("core", "{file}: {said}"))

_KINDS = {HeightKind.ORTHOMETRIC: ORTHOMETRIC, HeightKind.ELLIPSOIDAL: ELLIPSOIDAL, HeightKind.UNKNOWN: NOT_KNOWN}


@dataclass(frozen=True)
class IntakeOptions:
    """How to read survey files, and what to make of them.

    ``crs``: the CRS wanted, projected or compound; None for a local grid. ``source_crs``: the CRS of the
    coordinates in the files, projected or geographic; None: the same for plan coordinates, WGS 84 for degrees.
    ``columns`` to ``header``: as :func:`.points.delimited.read_points` takes them. ``heights_are``: what the heights
    of text files are, None for what the file says. ``heights``: which are wanted; None for orthometric where a
    ``separation`` is given, else as they are. ``accept``: names of coordinate operations taken though better ones
    are known. ``correct``: name of the suggestion (:func:`suggestion_names`) to apply to files whose points lie
    outside the area of use.
    """

    crs: Optional[Any] = None
    source_crs: Optional[Any] = None
    columns: Optional[ColumnMap] = None
    delimiter: Optional[str] = None
    decimal: Optional[str] = None
    encoding: Optional[str] = None
    unit: Optional[LengthUnit] = None
    height_unit: Optional[LengthUnit] = None
    comment: Optional[str] = "auto"
    header: Optional[bool] = None
    heights_are: Optional[HeightKind] = None
    heights: Optional[HeightKind] = None
    separation: Optional[Separation] = None
    accept: Tuple[str, ...] = ()
    correct: str = ""

    @property
    def wanted(self) -> Optional[HeightKind]:
        """The kind of height asked for, in words or by giving a geoid separation."""
        return self.heights or (HeightKind.ORTHOMETRIC if self.separation is not None else None)


@dataclass(frozen=True)
class Intake:
    """What came in.

    ``survey``: all points in the CRS wanted, rejects and the account of all lines; of several files the merged
    ones. ``files``: each file as read, before its coordinates were changed. ``records``: what was done to
    coordinates, in order. ``areas``: the checks against areas of use, one a file. ``merged``: None for one file.
    ``messages``: what to tell the user, beside the statements of ``records`` and what is ``aside``. ``gates``: what was
    put aside before all else, one a file; the checks against areas of use and the records are about the other points.
    """

    survey: PointFile
    files: Tuple[PointFile, ...]
    records: Tuple[Georeference, ...]
    areas: Tuple[AreaCheck, ...]
    merged: Optional[Merged]
    messages: Tuple[Message, ...]
    gates: Tuple[Gate, ...] = ()

    @property
    def aside(self) -> Tuple[Message, ...]:
        """What was put aside before all else, and what was kept though it lies far from the others."""
        told = [(file.points.source, said) for file, gate in zip(self.files, self.gates) for said in gate.messages]
        if len(self.files) == 1:
            return tuple(said for _, said in told)
        return tuple(message(IN_FILE, file=file, said=said) for file, said in told)

    @property
    def statements(self) -> Tuple[Message, ...]:
        """The sentences of all records, each once."""
        said = {str(one): one for record in self.records for one in record.statements}
        return tuple(said.values())


class _One(NamedTuple):
    """A file on its way: as it is now, what it was, its heights, what was done, what the gate put aside."""

    now: PointFile
    read: PointFile
    kind: HeightKind
    records: Tuple[Georeference, ...]
    area: AreaCheck
    notes: Tuple[Message, ...]
    corrected: bool
    gate: Gate


def take_in(
    paths: Sequence[PathLike],
    options: IntakeOptions,
    progress: Progress = silent,
    layers: Sequence[Tuple[PointFile, Optional[Any]]] = (),
) -> Intake:
    """Read ``paths``, bring each into ``options.crs``, and merge them.

    ``layers``: points that were read already, each with the CRS of its degrees, None for plan coordinates (whose CRS
    they carry); for them ``options.columns`` to ``header`` and ``source_crs`` are not used. They come after the files.
    Raises SurveyError for what the user must mend or decide, naming the file.
    """
    if not paths and not layers:
        raise SurveyError(NOTHING)
    each = []
    for i, path in enumerate(paths):
        share = part(progress, i / len(paths), (i + 1) / len(paths))
        each.append(_take_one(_read(path, options, share), is_nmea(path), options))
    each += [_take_one(read, False, replace(options, source_crs=crs)) for read, crs in layers]
    return _together(each, options)


def parse_separation(text: str) -> Separation:
    """A geoid separation from the user's word: metres, or the path of a grid. Raises SurveyError for none."""
    word = text.strip()
    if not word:
        raise SurveyError(NOT_A_SEPARATION)
    try:
        return ConstantSeparation(float(word))
    except ValueError:
        return GridSeparation(Path(word))


# One file


def _read(path: PathLike, options: IntakeOptions, progress: Progress) -> PointFile:
    source = options.source_crs
    plan = options.crs if source is None or source.is_geographic else source
    return read_survey(
        path, heights=_sent(options), geographic=True, columns=options.columns, delimiter=options.delimiter,
        decimal=options.decimal, encoding=options.encoding, unit=options.unit,
        height_unit=options.height_unit or options.unit, crs=plan, comment=options.comment, header=options.header,
        progress=progress,
    )  # fmt: skip


def _sent(options: IntakeOptions) -> HeightKind:
    """Which heights to take from a receiver log. Its own separation is undone before another one is used."""
    if options.separation is None:
        return options.wanted or HeightKind.ORTHOMETRIC
    return HeightKind.ELLIPSOIDAL if options.wanted is HeightKind.ORTHOMETRIC else HeightKind.ORTHOMETRIC


def _take_one(read: PointFile, log: bool, options: IntakeOptions) -> _One:
    """A file behind the gate: what is put aside tells nothing of where the others lie."""
    parted = part_file(read)
    one = _bring(parted.kept, log, options)
    now = joined(one.now, parted, lambda aside: _bring(aside, log, options).now)
    outside = np.zeros(len(parted.stays), bool)
    outside[parted.stays] = one.area.outside
    return one._replace(now=now, read=read, area=replace(one.area, outside=outside), gate=parted.gate)


def _bring(read: PointFile, log: bool, options: IntakeOptions) -> _One:
    """A file brought to the CRS and the heights wanted."""
    kind, notes = _kind(read, log, options)
    source, file = options.source_crs, read.points.source
    records: List[Georeference] = []
    area = AreaCheck(None, "", np.zeros(len(read.points), bool), np.nan, (), ())
    now, corrected = read, False
    if read.geographic is None:
        if source is not None and source.is_geographic:
            raise SurveyError(NOT_DEGREES, file=file, crs=crs_name(source))
        now, area, corrected = _checked(read, options, records)
        now = _transformed(now, options, records)
    else:
        if source is not None and not source.is_geographic:
            raise SurveyError(NOT_LENGTHS, file=file, crs=crs_name(source))
        now, kind = _placed(read, kind, log, options, records)
        area = check_area(now.points)
    now, kind = _with_heights(now, kind, log, options, records)
    said = _area_said(area, corrected)
    return _One(now, read, kind, tuple(records), area, (*notes, *said), corrected, Gate(read.points, (), ()))


def _kind(read: PointFile, log: bool, options: IntakeOptions) -> Tuple[HeightKind, Tuple[Message, ...]]:
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


def _checked(read: PointFile, options: IntakeOptions, records: List[Georeference]) -> Tuple[PointFile, AreaCheck, bool]:
    """The file after the check against the area of use, corrected where the user asked for it."""
    area = check_area(read.points, read.format.unit)
    if not options.correct or not area.outside.any():
        return read, area, False
    names = suggestion_names(area)
    where = {"file": read.points.source, "name": options.correct}
    if options.correct not in names:
        raise SurveyError(NO_SUGGESTION, names=", ".join(names) or "-", **where)
    suggestion = area.suggestions[names.index(options.correct)]
    if suggestion.reading is None:
        raise SurveyError(NOT_APPLICABLE, **where)
    done = apply_suggestion(read.points, suggestion)
    records.append(done.record)
    return replace(read, points=done.points), area, True


def _area_said(area: AreaCheck, corrected: bool) -> Tuple[Message, ...]:
    usable = [name for name, one in zip(suggestion_names(area), area.suggestions) if one.reading is not None]
    if corrected or not usable:
        return area.messages
    return (*area.messages, message(TO_CORRECT, name=" | ".join(usable)))


def _transformed(read: PointFile, options: IntakeOptions, records: List[Georeference]) -> PointFile:
    """Plan coordinates in the CRS wanted. A correction by the user's word may have changed the CRS of the file."""
    points = read.points
    if points.crs is None or (options.source_crs is None and options.crs is None) or points.crs == options.crs:
        return read
    if options.crs is None:
        raise SurveyError(NO_TARGET, file=points.source)
    done = transform_points(points, options.crs, options.accept)
    records.append(done.record)
    return replace(read, points=done.points)


def _placed(
    read: PointFile, kind: HeightKind, log: bool, options: IntakeOptions, records: List[Georeference]
) -> Tuple[PointFile, HeightKind]:
    """Degrees in the CRS wanted, and the kind of their heights then."""
    assert read.geographic is not None
    levelled = options.crs is not None and has_heights(options.crs)
    by_proj = kind is HeightKind.ELLIPSOIDAL and levelled and options.separation is None
    above = levelled and len(options.crs.sub_crs_list) > 1  # type: ignore[union-attr]
    if above and options.wanted is HeightKind.ELLIPSOIDAL:
        raise SurveyError(AGAINST_CRS, crs=crs_name(options.crs))
    # Those that a separation of the user's is for must not be changed by PROJ as well.
    told = HeightKind.UNKNOWN if levelled and not by_proj else kind
    positions = replace(read.geographic, heights=told)
    ready = replace(read, geographic=positions, messages=read.messages)
    source = None if options.source_crs is None else flat(options.source_crs)
    placed, record = place_survey(ready, options.crs, source, options.accept)
    assert record is not None
    if log and kind is HeightKind.ELLIPSOIDAL:
        records.append(_sent_record(read))
    records.append(record)
    said = {str(one) for one in record.statements}
    messages = tuple(one for one in placed.messages if str(one) not in said)
    after = HeightKind.ORTHOMETRIC if by_proj and above else kind
    return replace(placed, messages=messages), after


def _sent_record(read: PointFile) -> Georeference:
    """What the receiver's own separations were."""
    separation = np.asarray(read.points.extra["geoid_separation"], float)
    source = ReceiverSeparation(separation)
    return Georeference(Step.HEIGHTS, None, None, source, (source.statement(separation),))


def _with_heights(
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


# All files


def _together(each: Sequence[_One], options: IntakeOptions) -> Intake:
    if options.correct and not any(one.corrected for one in each):
        raise SurveyError(NOTHING_TO_CORRECT, name=options.correct)
    merged = merge_files([one.now for one in each]) if len(each) > 1 else None
    survey = each[0].now
    if merged is not None:
        survey = PointFile(merged.points, merged.rejects, merged.account, survey.format, merged.messages)
    return Intake(
        survey, tuple(one.read for one in each), tuple(record for one in each for record in one.records),
        tuple(one.area for one in each), merged, tuple(note for one in each for note in one.notes),
        tuple(one.gate for one in each),
    )  # fmt: skip
