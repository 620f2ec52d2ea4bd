"""What tells files apart: their SHA-256 (FIPS 180-4), in the report and in a list that ``sha256sum -c`` checks."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from pathlib import Path
from typing import Optional, Sequence, Tuple

from ..files import PathLike, replace_file
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text

CANNOT_READ = Text(
    "checksums.cannot_read",
    QT_TRANSLATE_NOOP("core", "{file}: cannot be read ({reason}), so it cannot be listed among the files handed over."),
)

_BLOCK = 1 << 20


@dataclass(frozen=True)
class FileDigest:
    """A file as it was handed over: ``size`` in bytes, ``sha256`` in 64 hexadecimal digits."""

    path: Path
    size: int
    sha256: str


def digest(path: PathLike) -> FileDigest:
    """The digest of a file. Raises SurveyError when it cannot be read."""
    found, size = hashlib.sha256(), 0
    try:
        with open(path, "rb") as file:
            for block in iter(lambda: file.read(_BLOCK), b""):
                found.update(block)
                size += len(block)
    except OSError as error:
        raise SurveyError(CANNOT_READ, file=str(path), reason=error.strerror or str(error)) from None
    return FileDigest(Path(path), size, found.hexdigest())


def digests(paths: Sequence[PathLike]) -> Tuple[FileDigest, ...]:
    """The digest of each file, in order."""
    return tuple(digest(path) for path in paths)


def write_checksums(files: Sequence[FileDigest], path: PathLike, folder: Optional[PathLike] = None) -> None:
    """Write the list of ``files``, each named as seen from the folder of ``path``, or from the ``folder`` in which the
    list will lie.
    """
    home = (Path(path).parent if folder is None else Path(folder)).resolve()
    with replace_file(path) as name, open(name, "w", encoding="utf-8", newline="\n") as file:
        for one in files:
            file.write(f"{one.sha256}  {_seen_from(home, one.path)}\n")


def _seen_from(folder: Path, path: Path) -> str:
    full = path.resolve()
    return full.relative_to(folder).as_posix() if folder in full.parents else full.as_posix()
