"""Survey files in degrees (receiver logs, tables of latitude and longitude) brought to the CRS of the job."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Optional, Sequence, Tuple

from pyproj import CRS

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.delimited import PointFile
from .record import Georeference, crs_name
from .transform import transform_geographic

NO_TARGET = Text(
    "place.no_target",
    QT_TRANSLATE_NOOP(
        "core", "{file}: its positions are in degrees; give the projected CRS they are wanted in, not a local grid."
    ),
)
ASSUMED = Text(
    "place.assumed",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: its positions are taken as {source}, as receivers send them; a correction service may work in another "
        "datum, which the file does not tell.",
    ),
)

#: What receivers work in by themselves.
USUAL_SOURCE = "EPSG:4326"


def place_survey(
    read: PointFile, target: Optional[Any], source: Optional[Any] = None, accept: Sequence[str] = ()
) -> Tuple[PointFile, Optional[Georeference]]:
    """``read`` with plan coordinates in the projected CRS ``target``, and what was done; files that have plan
    coordinates come back as they are, with None.

    ``source``: the geographic CRS of the positions, WGS 84 where None, which is said. ``accept``: as in
    :func:`.operations.choose_operation`. Raises SurveyError without a target, and as
    :func:`.transform.transform_geographic`.
    """
    positions = read.geographic
    if positions is None:
        return read, None
    file = read.points.source
    if target is None:
        raise SurveyError(NO_TARGET, file=file)
    degrees = CRS.from_user_input(USUAL_SOURCE) if source is None else source
    done = transform_geographic(
        positions.longitude, positions.latitude, positions.height, degrees, target, positions.heights, accept, file,
        read.points.source_line,
    )  # fmt: skip
    points = replace(read.points, easting=done.easting, northing=done.northing, height=done.height, crs=target)
    notes: Tuple[Message, ...] = () if source is not None else (message(ASSUMED, file=file, source=crs_name(degrees)),)
    said = (*read.messages, *notes, *done.record.statements)
    return replace(read, points=points, geographic=None, messages=said), done.record
