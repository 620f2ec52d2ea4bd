"""What is kept of the stages of a job, and so which of them are out of date."""

from __future__ import annotations

import secrets
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Callable, Dict, List, Optional, Sequence, Tuple

from ..files import make_folder
from ..handover.checksums import digest
from ..messages import Message
from ..progress import Progress, part
from ..report.labels import Words
from ..report.markup import Section
from ..report.results import Answer
from .exchange import ExchangeQuestion
from .fingerprint import FileDigests, fingerprint, of_value, told_apart
from .job_file import JobRecord, Made, has_job, read_job, write_job
from .kept import Keeper, NotKept
from .plain import is_file
from .settings import JobSettings, Question
from .stages import OF_QUESTIONS, Stage, stages_of

#: Folder in that of the job with the results of stages.
STAGES_FOLDER = "stages"
#: The last step: the files of the job and its report.
FILES = "files"


@dataclass(frozen=True)
class KeptAnswer:
    """An answer as it was told and written: ``files`` are named from the folder of the job, with their SHA-256."""

    messages: Tuple[Message, ...]
    lines: Tuple[Message, ...]
    told: Tuple[Section, ...]
    files: Tuple[Tuple[str, str], ...]

    def sections(self, words: Words) -> Sequence[Section]:
        return self.told

    def write(self, folder: Path, translate: Callable[[str], str]) -> Sequence[Path]:
        """They are there already."""
        return [folder / name for name, _ in self.files]

    def is_there(self, folder: Path) -> bool:
        """Whether its files are as they were written."""
        return all(is_file(folder / name) and digest(folder / name).sha256 == sha for name, sha in self.files)


def keep_answer(answer: Answer, written: Sequence[Path], folder: Path, words: Words) -> KeptAnswer:
    """What is kept of an answer whose files are ``written``."""
    files = tuple((path.relative_to(folder).as_posix(), digest(path).sha256) for path in written)
    return KeptAnswer(answer.messages, answer.lines, tuple(answer.sections(words)), files)


class Keeping:
    """The stages of one run of a job whose file says ``record``: taken up where they still hold, else made and kept.

    Nothing is read or written with ``folder`` None.
    """

    def __init__(self, record: JobRecord, folder: Optional[Path], quick: bool = False) -> None:
        self.record, self.folder = record, folder
        self.digests: Dict[str, str] = {}  # of results of this run
        self.files = FileDigests(quick)
        self._keeper = Keeper()
        self._in_file: Optional[JobSettings] = None  # the choices in the file, as this run knows them
        self._choices: Optional[JobSettings] = None  # those that somebody else has written since

    def begin_with(self, before: Optional[JobRecord]) -> None:
        """What the file of the job says at the beginning of a run, None where there is none."""
        self._in_file = None if before is None else before.settings

    @property
    def settings(self) -> JobSettings:
        return self.record.settings

    def made_from(self, stage: Stage) -> str:
        return fingerprint(self.settings, stage.choices, [self.digests[name] for name in stage.takes], self.files)

    def question_from(self, question: Question) -> str:
        choices = [str(self.settings.accept), self.settings.contours.unit.value, self.record.language]
        return of_value(question, [*choices, *(self.digests[name] for name in takes_of(question))], self.files)

    def take(self, name: str, of: str) -> Any:
        """The result that is kept of a stage. Raises NotKept where there is none, or where it no longer holds."""
        made = self.record.stages.get(name)
        if self.folder is None or made is None or made.of != of:
            raise NotKept(name)
        value = self._keeper.read(name, self._path(name), made.gives)
        self.digests[name] = made.gives
        return value

    def keep(self, name: str, of: str, value: Any) -> None:
        """Keep the result of a stage, and write down that it was done. Raises SurveyError where it can't be written.

        A result of a kind that is never kept is made anew in every run.
        """
        if self.folder is None:
            return
        make_folder(self.folder / STAGES_FOLDER)
        try:
            gives = self._keeper.write(name, value, self._path(name))
        except TypeError:
            self.digests[name] = secrets.token_hex()
            return
        self.digests[name] = gives
        self.note(replace(self.record, stages={**self.record.stages, name: Made(of, gives)}))

    def note(self, record: JobRecord) -> None:
        """Write the file of the job. What somebody has decided since the run began stays in it."""
        self.record = record
        if self.folder is None:
            return
        now = read_job(self.folder).settings if has_job(self.folder) else self._in_file
        if now != self._in_file:
            self._choices = now
        choices = self._choices or record.settings
        write_job(replace(record, settings=choices), self.folder)
        self._in_file = read_job(self.folder).settings

    def _path(self, name: str) -> Path:
        assert self.folder is not None
        return self.folder / STAGES_FOLDER / f"{name.replace(' ', '_')}.npz"


def work_through(keeping: Keeping, progress: Progress) -> Dict[str, Any]:
    """The results of all stages by their names. Raises SurveyError, and whatever ``progress`` raises."""
    done: Dict[str, Any] = {}
    stages = stages_of(keeping.settings)
    start, whole = 0.0, sum(stage.share for stage in stages)
    for stage in stages:
        end = start + stage.share / whole
        done[stage.name] = _one_stage(keeping, stage, done, part(progress, start, end))
        start = end
    return done


def _one_stage(keeping: Keeping, stage: Stage, done: Dict[str, Any], progress: Progress) -> Any:
    if keeping.folder is None:
        return stage.work(keeping.settings, done, progress)
    of = keeping.made_from(stage)
    try:
        return keeping.take(stage.name, of)
    except NotKept:
        value = stage.work(keeping.settings, done, progress)
        keeping.keep(stage.name, of, value)
        return value


def out_of_date(record: JobRecord, folder: Path) -> List[str]:
    """Names of the stages, questions and of the files that a run would make anew, as far as can be told before it.

    What follows a stage that is out of date counts as such too, though it may turn out to be the same. Files whose size
    and time are as they were seen count as the same here; a run itself looks into them.
    """
    keeping, found = Keeping(record, folder, quick=True), []
    for stage in stages_of(record.settings):
        made = record.stages.get(stage.name)
        if any(name in found for name in stage.takes) or made is None or made.of != keeping.made_from(stage):
            found.append(stage.name)
        else:
            keeping.digests[stage.name] = made.gives
    for number, question in enumerate(record.settings.questions, 1):
        name = question_name(number)
        made = record.stages.get(name)
        if (
            any(one in found for one in takes_of(question))
            or made is None
            or made.of != keeping.question_from(question)
        ):
            found.append(name)
        else:
            keeping.digests[name] = made.gives
    if found or not files_hold(keeping):
        found.append(FILES)
    return found


def takes_of(question: Question) -> Tuple[str, ...]:
    """The stages that a question looks at; files for other programs hold the contours too."""
    return (*OF_QUESTIONS, "contours") if isinstance(question, ExchangeQuestion) else OF_QUESTIONS


def question_name(number: int) -> str:
    """What the question of this number, from 1, is called among the stages."""
    return f"question {number}"


def files_hold(keeping: Keeping) -> bool:
    """Whether the files of the job are those of its results, and as they were written."""
    record, folder = keeping.record, keeping.folder
    made = record.stages.get(FILES)
    if folder is None or made is None or made.of != of_files(keeping):
        return False
    there = ((folder / name, sha) for name, sha in record.products.items())
    return all(is_file(path) and keeping.files.own(path) == sha for path, sha in there)


def of_files(keeping: Keeping) -> str:
    """What the files of the job, its report among them, are made from."""
    others = [(str(path), keeping.files.of(path)) for path in keeping.settings.others]
    return told_apart([sorted(keeping.digests.items()), keeping.record.language, others])
