"""One run at a time on a job, and its files put in place together."""

from __future__ import annotations

import contextlib
import os
import shutil
from pathlib import Path
from typing import Any, Iterator, List, Sequence, Tuple

from ..files import CANNOT_WRITE, make_folder
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

AT_WORK = Text(
    "job.at_work",
    QT_TRANSLATE_NOOP(
        "core", "{folder}: another run is at work on this job, in the desk or in another terminal; wait until it ends."
    ),
)
OVERWRITES = Text(
    "job.overwrites",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} is read for this job, and a product of this name would take its place; nothing was written. Rename it, "
        "or choose another folder.",
    ),
)
#: In the folder of results of stages.
_LOCK, _NEW = "at_work", "new"


@contextlib.contextmanager
def alone(folder: Path) -> Iterator[None]:
    """Hold the job whose results of stages are in ``folder``; a run that is killed lets go of it, and its files go.

    Raises SurveyError where another run holds it. Where the system has no such locks, none is held.
    """
    make_folder(folder)
    try:
        stream = open(folder / _LOCK, "a+b")  # noqa: SIM115  closed below
    except OSError as error:
        raise SurveyError(CANNOT_WRITE, file=str(folder / _LOCK), reason=error.strerror or str(error)) from error
    with stream:
        if not _locked(stream):
            raise SurveyError(AT_WORK, folder=str(folder.parent))
        shutil.rmtree(folder / _NEW, ignore_errors=True)  # of a run that was killed
        yield


def _locked(stream: Any) -> bool:
    """Whether the lock could be taken. It goes with the file when it is closed."""
    try:
        import fcntl
    except ImportError:  # Windows
        import msvcrt

        try:
            stream.seek(0)
            msvcrt.locking(stream.fileno(), msvcrt.LK_NBLCK, 1)  # type: ignore[attr-defined]
        except OSError:
            return False
        return True
    try:
        fcntl.flock(stream.fileno(), fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    except OSError:  # a file system without locks
        return True
    return True


@contextlib.contextmanager
def new_files(folder: Path) -> Iterator[Path]:
    """An empty folder within ``folder`` for the files of a run; it goes when the block ends, however that is."""
    made = folder / _NEW
    make_folder(made)
    try:
        yield made
    finally:
        shutil.rmtree(made, ignore_errors=True)


def put_in_place(new: Path, names: Sequence[str], folder: Path) -> None:
    """Move the files of these ``names`` from ``new`` into ``folder``. Raises SurveyError where the system refuses."""
    for name in names:
        try:
            (folder / name).parent.mkdir(parents=True, exist_ok=True)
            os.replace(new / name, folder / name)
        except OSError as error:
            raise SurveyError(CANNOT_WRITE, file=str(folder / name), reason=error.strerror or str(error)) from error


def refuse_to_overwrite(names: Sequence[str], folder: Path, inputs: Sequence[Path]) -> None:
    """Raises SurveyError where a product would take the place of a file that the job reads."""
    read: List[Tuple[Path, Path]] = [(path.resolve(), path) for path in inputs]
    for name in names:
        taken = (folder / name).resolve()
        for whole, path in read:
            if whole == taken:
                raise SurveyError(OVERWRITES, file=str(path))
