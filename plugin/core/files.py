"""Writing files so that a reader never meets half of one."""

from __future__ import annotations

import contextlib
import os
import secrets
from pathlib import Path
from typing import Iterator, Union

from .messages import QT_TRANSLATE_NOOP, SurveyError, Text

PathLike = Union[str, "os.PathLike[str]"]

CANNOT_WRITE = Text(
    "files.cannot_write",
    QT_TRANSLATE_NOOP(
        "core", "{file}: cannot be written ({reason}); check the folder, its permissions and the space left."
    ),
)


@contextlib.contextmanager
def replace_file(path: PathLike) -> Iterator[Path]:
    """Give a temporary path beside ``path``; when the block ends well it takes the place of ``path``.

    The temporary path has the same suffix, for libraries that look at it. When the block raises, the
    temporary file goes and ``path`` stays as it was. Raises SurveyError when the system refuses to write.
    """
    target = Path(path)
    temporary = target.with_name(f".{target.stem}-{secrets.token_hex(4)}{target.suffix}")
    try:
        yield temporary
        os.replace(temporary, target)
    except OSError as error:
        _remove(temporary)
        raise SurveyError(CANNOT_WRITE, file=str(path), reason=error.strerror or str(error)) from error
    except BaseException:
        _remove(temporary)
        raise


def _remove(path: Path) -> None:
    with contextlib.suppress(OSError):  # it was never made, or its folder is gone
        path.unlink()
