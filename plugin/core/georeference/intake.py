"""Survey files as the rover wrote them, read, brought into one CRS, and made one survey.

For each file: read, recognised, checked against the area of use, transformed, heights changed if wanted; then all
files merged. What was done is kept as records whose statements go into the report.
"""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from pathlib import Path
from typing import Any, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..gate.file import joined, part_file
from ..gate.gate import Gate
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.delimited import PointFile
from ..points.geographic import HeightKind
from ..points.given import Given
from ..points.merge import Merged, merge_files
from ..points.pointset import Reason
from ..points.questions import QuestionError
from ..points.survey import read_survey
from ..progress import Progress, part, silent
from .answer_places import places_of_answers
from .area import AreaCheck, check_area
from .axes import axes_said
from .crs_doubt import doubts, project_doubt
from .crs_said import ask_which_crs, said_in_file
from .intake_area import MANY_SWAPPED, area_said, checked_file, corrected_file, swapped_aside
from .intake_heights import check_kinds, kind_of_heights, with_heights
from .intake_options import IntakeOptions
from .intake_place import placed, transformed
from .level_shift import shift_levels
from .not_obeyed import told_beside
from .position import Kind, Landmark, landmark_of, place_said, site_of
from .record import Georeference, Step, crs_name
from .upright import check_upright
from .west_doubt import ask_of_west

NOTHING = Text("intake.nothing", QT_TRANSLATE_NOOP("core", "There is no survey to read; give at least one file."))
OTHER_CRS = Text(
    "intake.other_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: says itself that its coordinates are in {own}, but {given} is given as --source-crs; leave "
        "--source-crs out, or save the file with the right CRS.",
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
NOTHING_TO_CORRECT = Text(
    "intake.nothing_to_correct",
    QT_TRANSLATE_NOOP(
        "core", "No point lies outside the area of use of its CRS, so '{name}' is not applied; leave --correct out."
    ),
)
ONE_FILE = Text(
    "intake.one_file",
    QT_TRANSLATE_NOOP(
        "core", "Heights are shifted from a line of one file on; read that file by itself, then the others with it."
    ),
)
WHERE = Text("intake.where", QT_TRANSLATE_NOOP("core", "The site: {place}."))
IN_FILE = Text("intake.in_file", QT_TRANSLATE_NOOP("core", "{file}: {said}"))


@dataclass(frozen=True)
class Intake:
    """What came in.

    ``survey``: all points in the CRS wanted, rejects and the account of all lines; of several files the merged
    ones. ``files``: each file as read, before its coordinates were changed. ``records``: what was done to
    coordinates, in order. ``areas``: the checks against areas of use, one a file; ``areas_read``: the same before any
    correction. ``merged``: None for one file. ``where``: where the survey lies, in words. ``messages``: what to tell
    the user, beside the statements of ``records`` and what is ``aside``. ``gates``: what was put aside before all else,
    one a file; the checks against areas of use and the records are about the other points.
    """

    survey: PointFile
    files: Tuple[PointFile, ...]
    records: Tuple[Georeference, ...]
    areas: Tuple[AreaCheck, ...]
    merged: Optional[Merged]
    messages: Tuple[Message, ...]
    gates: Tuple[Gate, ...]
    areas_read: Tuple[AreaCheck, ...]
    where: Message

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
    area_read: AreaCheck
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
    they carry); for them ``options.columns`` to ``units_from`` and ``source_crs`` are not used. They come after the
    files. Raises SurveyError for what the user must mend or decide, naming the file.
    """
    if not paths and not layers:
        raise SurveyError(NOTHING)
    check_upright(options.crs, str(paths[0]) if paths else layers[0][0].points.source)
    if options.level_shifts and len(paths) + len(layers) > 1:
        raise SurveyError(ONE_FILE)
    each = []
    for i, path in enumerate(paths):
        share = part(progress, i / len(paths), (i + 1) / len(paths))
        try:
            each.append(_take_file(path, options, share))
        except QuestionError as error:
            raise (places_of_answers(error, path, options, where_it_lies) if options.ask else error) from None
    each += [_take_one(read, False, replace(options, source_crs=crs)) for read, crs in layers]
    return _together(each, options)


# One file


def _take_file(path: PathLike, options: IntakeOptions, progress: Progress) -> _One:
    """A file read and brought to where it belongs."""
    read = _read(path, options, progress)
    own = read.own_crs
    if own is not None:
        if options.source_crs not in (None, own):
            raise SurveyError(OTHER_CRS, file=str(path), own=crs_name(own), given=crs_name(options.source_crs))
        options = replace(options, source_crs=own)
    question = (ask_which_crs(read, options) or ask_of_west(read, options)) if options.ask else None
    if question is not None:
        raise question
    one = _take_one(read, read.log, options)
    return one if options.level_shifts else one._replace(notes=(*one.notes, *told_beside(read)))


def where_it_lies(path: PathLike, options: IntakeOptions) -> Message:
    """Where a file lies, in words. Raises SurveyError."""
    place: Message = take_in([path], options).where.values["place"]
    return place


def _read(path: PathLike, options: IntakeOptions, progress: Progress) -> PointFile:
    source = options.source_crs
    plan = options.crs if source is None or source.is_geographic else source
    said = {each.name: getattr(options.given, each.name) for each in fields(Given)}
    return read_survey(
        path, heights=_sent(options), geographic=True, columns=options.columns, delimiter=options.delimiter,
        decimal=options.decimal, encoding=options.encoding, crs=plan, comment=options.comment, header=options.header,
        layer=options.layer, progress=progress, **said,
    )  # fmt: skip


def _sent(options: IntakeOptions) -> HeightKind:
    """Which heights to take from a receiver log. Its own separation is undone before another one is used."""
    if options.separation is None:
        return options.wanted or HeightKind.ORTHOMETRIC
    return HeightKind.ELLIPSOIDAL if options.wanted is HeightKind.ORTHOMETRIC else HeightKind.ORTHOMETRIC


def _take_one(read: PointFile, log: bool, options: IntakeOptions) -> _One:
    """A file corrected on the user's word, then behind the gate: what is put aside tells nothing of where the others
    lie."""
    shifted = shift_levels(read.points, options.level_shifts) if options.level_shifts else None
    if shifted is not None:
        read = replace(read, points=shifted.points)
    mended = corrected_file(read, options)
    parted = part_file(read if mended is None else replace(read, points=mended[1].points))
    one = _bring(parted.kept, log, options)
    now = joined(one.now, parted, lambda aside: _bring(aside, log, replace(options, ask=False)).now)
    area = _of_all(one.area, parted.stays)
    before, records, notes = area, one.records, one.notes
    if mended is not None:
        before, done = mended
        # What it was is told, and how it is after the gate; how it was in between is not.
        told = {str(said) for said in done.area.messages}
        notes = (*(said for said in done.messages if str(said) not in told), *notes)
        records = (*done.records, *records)
    elif sum(len(one.indices) for one in parted.gate.found if one.reason is Reason.SWAPPED) >= MANY_SWAPPED:
        notes = (*notes, *swapped_aside(read))
    if shifted is not None:
        records = (shifted.record, *records)
    return one._replace(
        now=now, read=read, area=area, area_read=before, gate=parted.gate, records=records, notes=notes,
        corrected=one.corrected or mended is not None,
    )  # fmt: skip


def _of_all(area: AreaCheck, stays: np.ndarray) -> AreaCheck:
    """``area`` of the points of mask ``stays`` (n,) as that of all n."""
    outside = np.zeros(len(stays), bool)
    outside[stays] = area.outside
    return replace(area, outside=outside)


def _bring(read: PointFile, log: bool, options: IntakeOptions) -> _One:
    """A file brought to the CRS and the heights wanted."""
    kind, notes = kind_of_heights(read, log, options)
    source, file = options.source_crs, read.points.source
    records: List[Georeference] = []
    if read.ground is not None:
        records.append(Georeference(Step.HEIGHTS, None, None, None, (read.ground,)))
    area = AreaCheck(None, "", np.zeros(len(read.points), bool), np.nan, (), ())
    now, corrected = read, False
    if read.geographic is None:
        if source is not None and source.is_geographic:
            raise SurveyError(NOT_DEGREES, file=file, crs=crs_name(source))
        area = check_area(read.points, read.format.unit, options.near)
        corrected, said = checked_file(read, area, options)
        now = transformed(now, options, records)
    else:
        if source is not None and not source.is_geographic:
            raise SurveyError(NOT_LENGTHS, file=file, crs=crs_name(source))
        now, kind = placed(read, kind, log, options, records)
        area = check_area(now.points)
        said = area_said(area)
    now, kind = with_heights(now, kind, log, options, records)
    gate = Gate(read.points, (), ())
    return _One(now, read, kind, tuple(records), area, area, (*notes, *said), corrected, gate)


# All files


def _together(each: Sequence[_One], options: IntakeOptions) -> Intake:
    if options.correct and not any(one.corrected for one in each):
        raise SurveyError(NOTHING_TO_CORRECT, name=options.correct)
    check_kinds([(one.read.points.source, one.kind) for one in each], options)
    merged = merge_files([one.now for one in each]) if len(each) > 1 else None
    survey = each[0].now
    if merged is not None:
        survey = PointFile(merged.points, merged.rejects, merged.account, survey.format, merged.messages)
    axes = () if options.crs is None else axes_said(options.crs)
    notes = [*axes, *_doubted(each, options), *(note for one in each for note in one.notes)]
    points = survey.points.select(survey.points.used)
    return Intake(
        survey, tuple(one.read for one in each), tuple(record for one in each for record in one.records),
        tuple(one.area for one in each), merged, tuple(notes), tuple(one.gate for one in each),
        tuple(one.area_read for one in each),
        message(WHERE, place=place_said(points.crs, points.easting, points.northing, options.landmarks)),
    )  # fmt: skip


def _doubted(each: Sequence[_One], options: IntakeOptions) -> List[Message]:
    """What speaks against the CRS of a file: the other files, what is known beside them, the words of the file. Raises
    QuestionError where the others say that longitudes without a sign count to the west.
    """
    said: List[Message] = []
    sites = [_landmark(one) for one in each] if len(each) > 1 else []
    for i, one in enumerate(each):
        if one.read.geographic is not None or one.read.points.crs is None:
            rest = [site for k, site in enumerate(sites) if k != i and site]
            asked = ask_of_west(one.read, options, rest) if options.ask else None
            if asked is not None:
                raise asked
            continue
        points = one.read.points if not one.corrected else one.now.points
        points = points.select(one.now.points.used)
        logs = [site for k, site in enumerate(sites) if k != i and site is not None]
        # Of two files in plan coordinates neither says which of them is wrong; degrees do.
        firm = [site for k, site in enumerate(sites) if k != i and site and each[k].read.geographic is not None]
        marks = (*options.landmarks, *(firm or logs))
        doubt = doubts(points.crs, points.easting, points.northing, marks)
        said += doubt or (() if options.source_crs is not None else said_in_file(one.read, points.crs))
        if not doubt and not options.landmarks:
            said += project_doubt(site_of(points.crs, points.easting, points.northing), options.project)
    return said


def _landmark(one: _One) -> Optional[Landmark]:
    """Where a file of the survey lies, for the others."""
    points = one.now.points.select(one.now.points.used)
    return landmark_of(Path(points.source).name, Kind.FILE, points.crs, points.easting, points.northing)
