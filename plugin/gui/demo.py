"""The demo survey that comes with the plugin, to try the desk on: an invented site."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import Optional, Tuple

from ..core.files import CANNOT_WRITE, make_folder
from ..core.messages import SurveyError

CRS = "EPSG:25832"
FOLDER = "hummock_demo"
SURVEY, CHECKS = "survey.csv", "check_points.csv"


def demo_files() -> Optional[Path]:
    """The folder of the demo's files, in the installed plugin or in its sources; None where there is none."""
    plugin = Path(__file__).resolve().parent.parent
    for folder in (plugin / "demo", plugin.parent / "test_data" / "demo"):
        if (folder / SURVEY).is_file():
            return folder
    return None


def copy_demo(to: Path) -> Tuple[Path, Path]:
    """The demo's survey and its check points as copies in a folder of their own within ``to``.

    Files that are there stay as they are. Raises SurveyError where the folder cannot be written.
    """
    source, folder = demo_files(), Path(to) / FOLDER
    assert source is not None
    make_folder(folder)
    for name in (SURVEY, CHECKS):
        if not (folder / name).exists():
            try:
                shutil.copyfile(source / name, folder / name)
            except OSError as error:
                reason = error.strerror or str(error)
                raise SurveyError(CANNOT_WRITE, file=str(folder / name), reason=reason) from error
    return folder / SURVEY, folder / CHECKS
