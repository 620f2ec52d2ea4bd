"""Any file a rover writes: delimited text or a receiver log."""

from __future__ import annotations

from typing import Any, Optional, Union

from ..files import PathLike
from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..progress import Progress, silent
from ..units import LengthUnit
from .columns import ColumnMap
from .delimited import read_source
from .geographic import HeightKind
from .given import Given
from .nmea import is_log, read_log
from .pointfile import PointFile
from .source import load_text

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
    columns: Optional[Union[str, ColumnMap]] = None,
    delimiter: Optional[str] = None,
    decimal: Optional[str] = None,
    encoding: Optional[str] = None,
    unit: Optional[LengthUnit] = None,
    height_unit: Optional[LengthUnit] = None,
    crs: Optional[Any] = None,
    comment: Optional[str] = "auto",
    header: Optional[bool] = None,
    layer: str = "",
    progress: Progress = silent,
    **values: Any,
) -> PointFile:
    """Read a file by :func:`.nmea.read_nmea` where its first lines are NMEA sentences, else by
    :func:`.delimited.read_points`, which tells what the arguments mean. The file is read once, so a pipe will do.

    ``heights``: which heights to take from a log. ``geographic``: whether the caller takes positions in degrees; an
    error otherwise. Raises as the two.
    """
    given = Given(unit, height_unit, **values)
    source = load_text(path, encoding, layer)
    if source.table is not None or not is_log(source.data):
        return read_source(
            source, columns, delimiter, decimal, crs, comment, header, geographic, given, progress
        )  # fmt: skip
    if not geographic:
        raise SurveyError(GEOGRAPHIC, file=str(path))
    return read_log(source, heights, given, progress)
