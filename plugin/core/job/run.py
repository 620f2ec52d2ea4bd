"""The main job: from a survey file to surface, contours, mesh and report."""

from __future__ import annotations

import contextlib
from dataclasses import fields, replace
from pathlib import Path
from typing import Callable, List, Mapping, Optional, Sequence, Tuple

from ..files import make_folder
from ..handover.checksums import digest
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..progress import Progress, named, part, silent
from ..report.labels import Words
from ..report.results import Answer, JobResult
from .at_work import alone, new_files, put_in_place, refuse_to_overwrite
from .decided import JOB_FILE
from .fingerprint import files_in
from .job_file import JobRecord, Made, as_kept, has_job, read_job
from .keeping import (
    FILES,
    STAGES_FOLDER,
    Keeping,
    KeptAnswer,
    files_hold,
    keep_answer,
    of_files,
    question_name,
    work_through,
)
from .kept import NotKept
from .plain import is_file
from .settings import JobSettings
from .stages import result_of
from .visits import VisitWords, with_visits
from .write import at_home, with_files, write_files

NO_CRS = Text(
    "job.no_crs",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: nothing says which coordinate system this is; give its code, as in --crs EPSG:25832, or --crs local "
        "for a local grid in metres.",
    ),
)
OTHER_GONE = Text(
    "job.other_gone",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} is to be handed over too, but it is not there; it is not listed. Make it again, or leave it out.",
    ),
    weight=1,
)
OTHER_OLD = Text(
    "job.other_old",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} is handed over as it was made before the surface or its contours changed; make it again if it shows "
        "them.",
    ),
    weight=1,
)
OTHER_SURVEY = Text(
    "job.other_survey",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} holds something else than when this job was last run; it is read anew. If that is not meant, as beside "
        "a copied folder, put the right file there.",
    ),
    weight=1,
)
DECISIONS_KEPT = Text(
    "job.decisions_kept",
    QT_TRANSLATE_NOOP(
        "core", "{count} decisions by hand that stand in {file} are used; remove them there if they are not meant."
    ),
    one=QT_TRANSLATE_NOOP(
        "core", "The decision by hand that stands in {file} is used; remove it there if it is not meant."
    ),
)


def run_job(
    settings: JobSettings, progress: Progress = silent, translate: Callable[[str], str] = str, language: str = "en"
) -> JobResult:
    """Compute everything and write the files; the result names them in ``files``.

    The folder ``settings.out`` becomes that of a job, or is one already: then results that still hold are taken from
    there, and decisions by hand and later visits that stand in it stay. Each file appears only when it is whole;
    stopped or killed, the job is as it was before the stage that was at work. Raises SurveyError for input or settings
    the user must mend, and whatever ``progress`` raises to stop the work.
    """
    _need_crs(settings)
    folder = Path(settings.out)
    make_folder(folder)
    with alone(folder / STAGES_FOLDER):
        return _run_alone(settings, folder, progress, translate, language)


def _run_alone(
    settings: JobSettings, folder: Path, progress: Progress, translate: Callable[[str], str], language: str
) -> JobResult:
    before = read_job(folder) if has_job(folder) else None
    own = () if before is None or settings.decided else before.settings.decided
    visits = () if before is None or settings.visits else before.settings.visits
    settings = replace(settings, decided=settings.decided or own, visits=settings.visits or visits)
    stages, products = ({}, {}) if before is None else (before.stages, before.products)
    keeping = Keeping(JobRecord(as_kept(settings), language, stages, products), folder)
    keeping.begin_with(before)
    result = _results(keeping, part(progress, 0.0, 0.8))
    result = replace(_with_others_there(result), of_run=_other_surveys(keeping, before))
    result = replace(result, messages=(*_old_others(keeping, result), *result.messages))
    if own:
        told = message(DECISIONS_KEPT, count=len(own), file=str(folder / JOB_FILE))
        result = replace(result, messages=(told, *result.messages))
    return _written(keeping, result, part(progress, 0.8, 1.0), translate, language)


def continue_job(
    folder: Path, progress: Progress = silent, translate: Callable[[str], str] = str, language: Optional[str] = None,
    visits: VisitWords = VisitWords(),  # noqa: B008  frozen
) -> JobResult:  # fmt: skip
    """The job of ``folder``, with what is out of date made anew. ``language``: of the report, None as before.
    ``visits``: what is said of later visits.

    Raises SurveyError where there is no job, and as :func:`run_job`.
    """
    record = read_job(folder)
    settings = with_visits(record.settings, visits)
    return run_job(settings, progress, translate, record.language if language is None else language)


def compute(settings: JobSettings, progress: Progress = silent) -> JobResult:
    """All results of ``settings``, nothing read from or written to a job."""
    _need_crs(settings)
    return _results(Keeping(JobRecord(settings), None), progress)


def _need_crs(settings: JobSettings) -> None:
    if not (settings.crs or "").strip():
        raise SurveyError(NO_CRS, file=str(settings.survey))


def _results(keeping: Keeping, progress: Progress) -> JobResult:
    """The results of all stages, with an answer to each question in their order."""
    done = work_through(keeping, part(progress, 0.0, 0.85))
    result = result_of(keeping.settings, done)
    questions = keeping.settings.questions
    for i, question in enumerate(questions):
        within = part(progress, 0.85 + 0.15 * i / len(questions), 0.85 + 0.15 * (i + 1) / len(questions))
        answer: Optional[Answer] = _kept_answer(keeping, i)
        if answer is None:
            within(0.0, question.stage)
            answer = question.answer(result, named(question.stage, within))
        result = replace(result, answers=(*result.answers, answer))
    return result


def _kept_answer(keeping: Keeping, i: int) -> Optional[KeptAnswer]:
    """The answer to question ``i``, where it still holds and its files are there."""
    if keeping.folder is None:
        return None
    try:
        answer = keeping.take(question_name(i + 1), keeping.question_from(keeping.settings.questions[i]))
    except NotKept:
        return None
    return answer if isinstance(answer, KeptAnswer) and answer.is_there(keeping.folder) else None


def _with_others_there(result: JobResult) -> JobResult:
    """Without files made elsewhere that are gone, each of which is told."""
    gone = [path for path in result.others if not is_file(path)]
    if not gone:
        return result
    told = tuple(message(OTHER_GONE, file=str(path)) for path in gone)
    there = tuple(path for path in result.others if path not in gone)
    return replace(result, others=there, messages=(*told, *result.messages))


def _other_surveys(keeping: Keeping, before: Optional[JobRecord]) -> Tuple[Message, ...]:
    """What to tell of files of points that are no longer what they were; each is noted as it is now."""
    settings, told = keeping.settings, []
    noted = {}
    paths = (settings.survey, *settings.more, *(visit.file for visit in settings.visits))
    for number, path in enumerate(paths, 1):  # two may have one name, in folders of their own
        name, sha = f"file {number} {Path(path).name}", keeping.files.of(path)
        was = None if before is None else before.stages.get(name)
        if was is not None and was.gives != sha:
            told.append(message(OTHER_SURVEY, file=str(path)))
        noted[name] = Made("", sha)
    keeping.record = replace(keeping.record, stages={**keeping.record.stages, **noted})
    return tuple(told)


def _old_others(keeping: Keeping, result: JobResult) -> Tuple[Message, ...]:
    """What to tell of files made elsewhere that were there before the surface or its contours were what they are."""
    now = " ".join(keeping.digests.get(name, "")[:16] for name in ("surface", "contours", "sheet"))
    noted, told = {}, []
    for number, path in enumerate(result.others, 1):
        name, sha = f"other {number} {Path(path).name}", keeping.files.of(path)
        was = keeping.record.stages.get(name)
        if was is None or was.gives != sha:
            noted[name] = Made(now, sha)
        elif was.of != now:
            told.append(message(OTHER_OLD, file=Path(path).name))
    keeping.record = replace(keeping.record, stages={**keeping.record.stages, **noted})
    return tuple(told)


def _written(
    keeping: Keeping, result: JobResult, progress: Progress, translate: Callable[[str], str], language: str
) -> JobResult:
    """The files of the job, written where they are not there already."""
    folder = Path(keeping.settings.out)
    if all(isinstance(answer, KeptAnswer) for answer in result.answers) and files_hold(keeping):
        files = [folder / name for name in keeping.record.products]
        return _with_job_file(with_files(result, files, folder, folder), folder)
    with new_files(folder / STAGES_FOLDER) as new:
        return _with_job_file(_written_anew(keeping, result, new, progress, translate, language), folder)


def _written_anew(
    keeping: Keeping,
    result: JobResult,
    new: Path,
    progress: Progress,
    translate: Callable[[str], str],
    language: str,
) -> JobResult:
    """All files written into the folder ``new``, then put in place together."""
    folder, words = Path(keeping.settings.out), Words(translate)

    def told(number: int, answer: Answer, files: Sequence[Path]) -> Answer:
        if isinstance(answer, KeptAnswer):
            return answer
        kept = keep_answer(answer, files, new, words)
        keeping.keep(question_name(number + 1), keeping.question_from(keeping.settings.questions[number]), kept)
        return kept

    before = keeping.record.products
    result = write_files(result, new, progress, translate, language, told, folder)
    fresh = [path.relative_to(new).as_posix() for path in result.files if new in path.parents]
    refuse_to_overwrite(fresh, folder, inputs_of(keeping.settings))
    files = tuple(at_home(path, new, folder) for path in result.files)
    products = {home.relative_to(folder).as_posix(): digest(path).sha256 for home, path in zip(files, result.files)}
    # before they are put in place, so that a run that is killed meanwhile leaves no file that the job does not know
    stages = {**keeping.record.stages, FILES: Made(of_files(keeping), "")}
    keeping.note(replace(keeping.record, stages=stages, products=products))
    put_in_place(new, fresh, folder)
    _remove(folder, {name: sha for name, sha in before.items() if name not in products})
    return replace(result, files=files)


def inputs_of(settings: JobSettings) -> List[Path]:
    """Files that the job reads and that no product may take the place of: all but those that products are given back
    in, with decisions taken in them.
    """
    given_back = ("decisions", "found_lines", "others", "out")
    values = [getattr(settings, each.name) for each in fields(settings) if each.name not in given_back]
    return [Path(path) for value in values for path in files_in(value)]


def _with_job_file(result: JobResult, folder: Path) -> JobResult:
    return replace(result, files=(*result.files, folder / JOB_FILE))


def _remove(folder: Path, products: Mapping[str, str]) -> None:
    """Take away products of an earlier run that are no longer asked for, where nobody has changed them since."""
    for name, sha in products.items():
        path = folder / name
        if is_file(path) and digest(path).sha256 == sha:
            with contextlib.suppress(OSError):  # open elsewhere: it stays
                path.unlink()
