"""A survey file that was read."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, Optional, Tuple

from ..messages import Message
from ..units import LengthUnit
from .below import Line
from .geographic import GeographicPoints
from .layout import Header
from .pointset import PointSet
from .recognition import Recognition
from .rejects import LineAccount, Rejects


@dataclass(frozen=True)
class FileFormat:
    """How a file was read. ``delimiter``: one character, a space for runs of spaces and tabs. ``encoding``: Python's
    name. ``header``: the header line, None where there is none. ``columns``: role to column number from 1.
    """

    delimiter: str
    decimal: str
    encoding: str
    header: Optional[Header]
    columns: Dict[str, int]
    unit: LengthUnit
    height_unit: LengthUnit


@dataclass(frozen=True)
class PointFile:
    """A survey file that was read: its points, the lines that are none, and the account of all lines.

    ``geographic``: the positions of a file in degrees; easting and northing of its ``points`` are nan until they
    are transformed. ``recognition``: what was found out about the columns, None where the user named them.
    ``own_crs``: the CRS that the file itself says (pyproj), None where it says none. ``log``: whether it is a receiver
    log. ``ground``: what was done to bring heights down to the ground, None for nothing. ``above``: the lines above and
    below its points but the header; ``behind``: the different lines of words behind the first point. ``unsigned``:
    whether its longitudes, all of decimal degrees, have no sign or letter of their side.
    """

    points: PointSet
    rejects: Rejects
    account: LineAccount
    format: FileFormat
    messages: Tuple[Message, ...]
    geographic: Optional[GeographicPoints] = None
    recognition: Optional[Recognition] = None
    own_crs: Optional[Any] = None
    log: bool = False
    ground: Optional[Message] = None
    above: Tuple[str, ...] = ()
    behind: Tuple[Line, ...] = ()
    unsigned: bool = False
