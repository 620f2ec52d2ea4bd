"""The coordinate system that a survey is said to be in.

The coordinates of a survey file are in the unit of its CRS unless the user says otherwise. Inside the
core they are metres: CRS units times :func:`metres_per_unit`. Writers divide by it again.
"""

from __future__ import annotations

import re
from typing import Any, Optional

from pyproj import CRS
from pyproj.exceptions import CRSError

from ..messages import QT_TRANSLATE_NOOP, SurveyError, Text
from ..units import LengthUnit, axis_unit, heights_to_crs_units, metres_per_unit, to_crs_units

__all__ = [
    "LOCAL",
    "geographic_crs",
    "height_datum",
    "height_unit",
    "heights_to_crs_units",
    "local_grid",
    "metres_per_unit",
    "plan_unit",
    "projected_crs",
    "read_crs",
    "source_crs",
    "to_crs_units",
]

#: What the user writes for a local grid without a CRS.
LOCAL = "local"

NOT_SAID = Text(
    "crs.not_said",
    QT_TRANSLATE_NOOP("core", "No CRS is given; use --crs with an EPSG code such as EPSG:25832, or 'local' for none."),
)
NOT_UNDERSTOOD = Text(
    "crs.not_understood",
    QT_TRANSLATE_NOOP("core", "'{crs}' is not understood as a CRS; give an EPSG code such as EPSG:25832, or WKT."),
)
GEOGRAPHIC = Text(
    "crs.geographic",
    QT_TRANSLATE_NOOP(
        "core",
        "'{crs}' ({name}) is in degrees; the surface needs a projected CRS in metres or feet, such as EPSG:25832.",
    ),
)
NOT_PROJECTED = Text(
    "crs.not_projected",
    QT_TRANSLATE_NOOP("core", "'{crs}' ({name}) is no projected CRS; the surface needs one in metres or feet."),
)
NOT_GEOGRAPHIC = Text(
    "crs.not_geographic",
    QT_TRANSLATE_NOOP(
        "core", "'{crs}' ({name}) is not in degrees; positions in degrees need a geographic CRS, such as EPSG:4326."
    ),
)
OTHER_UNIT = Text(
    "crs.other_unit",
    QT_TRANSLATE_NOOP(
        "core", "'{crs}' is in {unit}; only metres, feet and US survey feet are read. Choose another CRS."
    ),
)
_SHOWN = 60


def projected_crs(text: str) -> CRS:
    """The CRS of an EPSG code (``EPSG:25832`` or ``25832``), a compound of two (``25832+7837``) or WKT.

    Raises SurveyError when it is not understood, in degrees, no projection, or in a unit that is none
    of :class:`LengthUnit`.
    """
    word = text.strip()
    shown = word if len(word) <= _SHOWN else word[:_SHOWN] + "..."
    if not word:
        raise SurveyError(NOT_SAID)
    try:
        crs = CRS.from_user_input(f"EPSG:{word}" if re.fullmatch(r"[0-9]+(\+[0-9]+)?", word) else word)
    except CRSError as error:
        raise SurveyError(NOT_UNDERSTOOD, crs=shown) from error
    if crs.is_geographic:
        raise SurveyError(GEOGRAPHIC, crs=shown, name=crs.name)
    if not crs.is_projected or len(crs.axis_info) < 2:
        raise SurveyError(NOT_PROJECTED, crs=shown, name=crs.name)
    plan_unit(crs)
    height_unit(crs)
    return crs


def geographic_crs(text: Optional[str]) -> Optional[CRS]:
    """The geographic CRS of the user's word for positions in degrees, None for none.

    Raises SurveyError when it is not understood, or not in degrees.
    """
    word = (text or "").strip()
    if not word:
        return None
    shown = word if len(word) <= _SHOWN else word[:_SHOWN] + "..."
    try:
        crs = CRS.from_user_input(f"EPSG:{word}" if word.isascii() and word.isdecimal() else word)
    except CRSError as error:
        raise SurveyError(NOT_UNDERSTOOD, crs=shown) from error
    if not crs.is_geographic:
        raise SurveyError(NOT_GEOGRAPHIC, crs=shown, name=crs.name)
    return crs


def source_crs(text: Optional[str]) -> Optional[CRS]:
    """The CRS that coordinates are said to be in before they are transformed, geographic or projected; None for none.

    Raises SurveyError when it is not understood, or as :func:`projected_crs` where it is not in degrees.
    """
    word = (text or "").strip()
    if not word:
        return None
    try:
        return geographic_crs(word)
    except SurveyError as error:
        if error.code != NOT_GEOGRAPHIC.code:
            raise
    return projected_crs(word)


def local_grid(text: Optional[str]) -> bool:
    """Whether the user's word asks for a local grid, whose CRS is None."""
    return text is not None and text.strip().lower() == LOCAL


def read_crs(text: Optional[str]) -> Optional[CRS]:
    """The CRS of the user's word: None for ``local``, else as :func:`projected_crs`, whose errors it raises."""
    return None if local_grid(text) else projected_crs(text or "")


def plan_unit(crs: Optional[Any]) -> LengthUnit:
    """Unit of easting and northing in ``crs``; metre for None. Raises SurveyError for a unit that is none of ours."""
    return LengthUnit.METRE if crs is None else _unit(crs, 0)


def height_unit(crs: Optional[Any]) -> LengthUnit:
    """Unit of the heights of ``crs``: of its height axis where it has one, else of its plan axes."""
    return LengthUnit.METRE if crs is None else _unit(crs, 2 if len(crs.axis_info) > 2 else 0)


def height_datum(crs: Optional[Any]) -> Optional[str]:
    """The name of what heights of a compound ``crs`` are counted from, None where nothing tells."""
    return next((str(part.name) for part in ([] if crs is None else crs.sub_crs_list) if part.is_vertical), None)


def _unit(crs: Any, axis: int) -> LengthUnit:
    unit = axis_unit(crs.axis_info[axis])
    if unit is None:
        raise SurveyError(OTHER_UNIT, crs=crs.name, unit=crs.axis_info[axis].unit_name)
    return unit
