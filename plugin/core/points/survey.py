"""Any file a rover writes: delimited text or a receiver log."""

from __future__ import annotations

from typing import Any, Optional

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from .delimited import PointFile, read_points
from .geographic import HeightKind
from .nmea import is_nmea, read_nmea

GEOGRAPHIC = Text(
    "nmea.geographic",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: is a receiver log with latitudes and longitudes, but plan coordinates are needed here; transform them "
        "to a projected CRS first.",
    ),
)


def read_survey(
    path: PathLike,
    *,
    heights: HeightKind = HeightKind.ORTHOMETRIC,
    geographic: bool = False,
    encoding: Optional[str] = None,
    progress: Progress = silent,
    **options: Any,
) -> PointFile:
    """Read a file by :func:`.nmea.read_nmea` where its first lines are NMEA sentences, else by
    :func:`.delimited.read_points` with ``options``.

    ``heights``: which heights to take from a log. ``geographic``: whether the caller takes positions in degrees; an
    error otherwise. Raises as the two.
    """
    if not is_nmea(path):
        return read_points(path, geographic=geographic, encoding=encoding, progress=progress, **options)
    if not geographic:
        raise SurveyError(GEOGRAPHIC, file=str(path))
    return read_nmea(path, heights=heights, encoding=encoding, progress=progress)
