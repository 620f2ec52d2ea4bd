"""The file of a job: all choices and decisions, and what its stages and products were made from.

``job.json`` in the job's folder, JSON in UTF-8, meant to be read by people too:

==========  ===========================================================================================
``format``  always "hummock job"; ``version``: 1
``choices`` what the user asks for, by the fields of :class:`.settings.JobSettings` that are not as usual; decisions by
            hand on points stand in ``decided``; paths as seen from the folder, where they lie near it
``language`` of the report
``stages``  of each stage that was done a digest of what it was made from, and one of what came of it
``products`` the files that were made, with their SHA-256
==========  ===========================================================================================
"""

from __future__ import annotations

import json
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any, Dict, List, Mapping, NamedTuple, Optional, Tuple

from ..files import make_folder, replace_file
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from .decided import JOB_FILE
from .plain import NotPlain, from_plain, to_plain
from .questions import QUESTIONS
from .settings import JobSettings

NO_JOB = Text(
    "job_file.no_job",
    QT_TRANSLATE_NOOP("core", "{file}: there is no such file, so {folder} is not the folder of a job."),
)
NOT_A_JOB = Text(
    "job_file.not_a_job",
    QT_TRANSLATE_NOOP(
        "core", "{file}: this is not the file of a job ({reason}); mend it, or move it away to begin anew."
    ),
)
NEWER = Text(
    "job_file.newer",
    QT_TRANSLATE_NOOP("core", "{file}: version {version} of the file is not known here (known: {known}). Update."),
)

FORMAT, VERSION = "hummock job", 1


class Made(NamedTuple):
    """Of a stage that was done: digests of what it was made from, and of what came of it."""

    of: str
    gives: str


@dataclass(frozen=True)
class JobRecord:
    """What the file of a job holds. ``products``: SHA-256 of each file that was made, by its name in the folder."""

    settings: JobSettings
    language: str = "en"
    stages: Mapping[str, Made] = field(default_factory=dict)
    products: Mapping[str, str] = field(default_factory=dict)


def has_job(folder: Path) -> bool:
    """Whether ``folder`` is that of a job."""
    return (Path(folder) / JOB_FILE).is_file()


def read_job(folder: Path) -> JobRecord:
    """The job of a folder. Raises SurveyError where there is none, or where its file is not understood."""
    path = Path(folder) / JOB_FILE
    try:
        told = json.loads(path.read_text(encoding="utf-8-sig"), object_pairs_hook=_once_each)
    except FileNotFoundError:
        raise SurveyError(NO_JOB, file=str(path), folder=str(folder)) from None
    except NotPlain as error:
        raise SurveyError(NOT_A_JOB, file=str(path), reason=str(error)) from None
    except (OSError, ValueError, RecursionError) as error:
        raise SurveyError(NOT_A_JOB, file=str(path), reason=getattr(error, "strerror", None) or str(error)) from None
    try:
        return _record(told, path)
    except (NotPlain, KeyError, TypeError, AttributeError) as error:
        raise SurveyError(NOT_A_JOB, file=str(path), reason=str(error)) from None


def _record(told: Any, path: Path) -> JobRecord:
    if not isinstance(told, dict) or told.get("format") != FORMAT:
        raise NotPlain(f'"format" must be "{FORMAT}"')
    version = told.get("version")
    if type(version) is int and version > VERSION:
        raise SurveyError(NEWER, file=str(path), version=version, known=VERSION)
    if version != VERSION:
        raise NotPlain(f'"version" must be {VERSION}')
    for name in ("stages", "products"):
        if not isinstance(told.get(name, {}), dict):
            raise NotPlain(f'"{name}" must be an object')
    if not all(isinstance(one, dict) for one in told.get("stages", {}).values()):
        raise NotPlain('each of "stages" must be an object with "from" and "gives"')
    settings: JobSettings = from_plain(JobSettings, {**told["choices"], "out": "."}, path.parent, QUESTIONS)
    stages = {str(name): Made(str(one["from"]), str(one["gives"])) for name, one in told.get("stages", {}).items()}
    products = {str(name): str(one) for name, one in told.get("products", {}).items()}
    return JobRecord(settings, str(told.get("language", "en")), stages, products)


def _once_each(pairs: List[Tuple[str, Any]]) -> Dict[str, Any]:
    """An object of JSON, each of whose names must stand once."""
    found = dict(pairs)
    if len(found) < len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for name in names if names.count(name) > 1)
        raise NotPlain(f'"{twice}" stands twice')
    return found


def write_job(record: JobRecord, folder: Path) -> None:
    """Write the file of the job in ``folder``; it is replaced as a whole. Raises SurveyError where it can't be."""
    choices: Dict[str, Any] = to_plain(record.settings, folder, QUESTIONS)
    choices.pop("out")
    told = {
        "format": FORMAT,
        "version": VERSION,
        "language": record.language,
        "choices": choices,
        "stages": {name: {"from": one.of, "gives": one.gives} for name, one in record.stages.items()},
        "products": dict(record.products),
    }
    path = Path(folder) / JOB_FILE
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8", newline="\n") as stream:
        json.dump(told, stream, indent=1, ensure_ascii=False)
        stream.write("\n")


def save_choices(settings: JobSettings, language: Optional[str] = None) -> JobRecord:
    """Write the choices of a job into its file, which is made where it is missing; what was made stays on record.

    ``language``: of the report, None as before. Raises SurveyError where the file is not understood or can't be
    written.
    """
    folder = Path(settings.out)
    record = read_job(folder) if has_job(folder) else JobRecord(settings)
    record = replace(record, settings=settings, language=record.language if language is None else language)
    make_folder(folder)
    write_job(record, folder)
    return record


def as_kept(settings: JobSettings) -> JobSettings:
    """The settings as they come back from the file, so that a run and a later one of the same job are alike."""
    told = to_plain(settings, settings.out, QUESTIONS)
    kept: JobSettings = from_plain(JobSettings, told, settings.out, QUESTIONS)
    return replace(kept, out=settings.out)
