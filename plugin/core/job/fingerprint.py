"""What a stage is made from, as a digest: choices, the files they name, the results before it, and the program."""

from __future__ import annotations

import hashlib
import json
import secrets
from functools import lru_cache
from pathlib import Path
from typing import Any, Dict, Iterator, Sequence, Tuple, Union

import numpy as np
import pyproj
import scipy

from ..handover.checksums import digest
from .plain import is_file, to_plain
from .questions import QUESTIONS
from .settings import JobSettings

#: Files beside one that is named, which belong to it: its CRS, how its heights repeat, parts of a shapefile.
_BESIDE = (".prj", ".noise.json", ".dbf", ".shx", ".cpg", ".qpj", ".gpkg-wal")
#: Longer texts name no file.
_LONGEST = 1024


#: Digests by path, size and time of change, for those who only want to show how a job stands.
_SEEN: Dict[Tuple[str, int, int], str] = {}


class FileDigests:
    """Digests of files, each file read once in a run; with ``quick`` only where its size or time is new."""

    def __init__(self, quick: bool = False) -> None:
        self._known: Dict[Path, str] = {}
        self._quick = quick

    def of(self, path: Union[str, Path]) -> str:
        """The digest of a file and of those that belong to it; "" where there is none. What can be read only once, such
        as a pipe, is never the same.
        """
        whole = Path(path).absolute()
        if whole not in self._known and not is_file(whole) and whole.exists() and not whole.is_dir():
            self._known[whole] = secrets.token_hex()
        if whole not in self._known:
            beside = (whole.parent / f"{whole.stem}{end}" for end in _BESIDE)
            there = [one for one in (whole, *beside) if is_file(whole) and is_file(one)]
            self._known[whole] = "+".join(self.own(one) for one in dict.fromkeys(there))
        return self._known[whole]

    def own(self, path: Path) -> str:
        """The digest of a file alone. Raises SurveyError where it cannot be read."""
        status = path.stat()
        key = (str(path), status.st_size, status.st_mtime_ns)
        if not self._quick or key not in _SEEN:
            _SEEN[key] = digest(path).sha256
        return _SEEN[key]


def fingerprint(settings: JobSettings, choices: Sequence[str], before: Sequence[str], files: FileDigests) -> str:
    """What a stage with these ``choices`` is made from, whose results ``before`` it have these digests.

    ``choices``: names of fields, or of a field in a field, parted by a dot. A file counts by its name and content,
    wherever it lies.
    """
    chosen = [_chosen(settings, name) for name in choices]
    return told_apart([_named(chosen), [files.of(path) for path in files_in(chosen)], list(before)])


def of_value(value: Any, before: Sequence[str], files: FileDigests) -> str:
    """The same for a choice that is no field, such as a question."""
    return told_apart([type(value).__name__, _named(value), [files.of(path) for path in files_in(value)], list(before)])


def told_apart(value: Any) -> str:
    """The digest of a plain value, and of the program that works on it."""
    return hashlib.sha256(json.dumps([_program(), value], sort_keys=True).encode()).hexdigest()


@lru_cache(maxsize=1)
def _program() -> str:
    """Another version of this program, or of a library that computes, may come to other results."""
    found = hashlib.sha256(" ".join((np.__version__, scipy.__version__, pyproj.proj_version_str)).encode())
    core = Path(__file__).parents[1]
    for path in sorted((*core.rglob("*.py"), *core.rglob("*.csv"))):
        found.update(path.relative_to(core).as_posix().encode() + b"\0" + path.read_bytes())
    return found.hexdigest()


def _chosen(settings: Any, name: str) -> Any:
    for part in name.split("."):
        settings = getattr(settings, part)
    return settings


def _named(value: Any) -> Any:
    """``value`` in plain terms, files by their names alone."""
    plain = to_plain(value, Path(), QUESTIONS)
    return _last_parts(plain, {Path(path).name for path in files_in(value)})


def _last_parts(plain: Any, names: set) -> Any:
    if isinstance(plain, dict):
        return {key: _last_parts(value, names) for key, value in plain.items()}
    if isinstance(plain, list):
        return [_last_parts(one, names) for one in plain]
    if isinstance(plain, str) and len(plain) < _LONGEST and Path(plain).name in names:
        return Path(plain).name
    return plain


def files_in(value: Any) -> Iterator[Union[str, Path]]:
    """Paths in a value, and texts that are paths of files."""
    if isinstance(value, Path):
        yield value
    elif isinstance(value, str):
        if value and len(value) < _LONGEST and is_file(value):
            yield value
    elif isinstance(value, (list, tuple)):
        for one in value:
            yield from files_in(one)
    elif hasattr(value, "__dataclass_fields__"):
        for name in value.__dataclass_fields__:
            yield from files_in(getattr(value, name))
