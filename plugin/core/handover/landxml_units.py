"""Units and coordinate system as LandXML says them (LandXML 1.2 schema, from memory).

``Units`` holds one element ``Metric`` or ``Imperial`` whose ``linearUnit`` is the unit of all coordinates, heights
included; ``CoordinateSystem`` has the attributes ``epsgCode``, ``ogcWktCode``, ``name``, ``horizontalDatum`` and
``verticalDatum``.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Dict, List, Optional, Tuple

from pyproj import CRS
from pyproj.exceptions import CRSError

from ..georeference.axes import flat, horizontal
from ..georeference.crs import height_datum, plan_unit, projected_crs
from ..messages import Message, SurveyError, message
from ..units import WORKING_UNITS, LengthUnit, metres_per_unit
from .landxml_texts import (
    CRS_DIFFER,
    CRS_UNREADABLE,
    FEET_DIFFER,
    NO_UNITS,
    OTHER_HEIGHT_UNIT,
    UNITS_TWICE,
    UNKNOWN_UNIT,
)

#: Metres in each ``linearUnit``. The foot is the international one, 0.3048 m; the U.S. survey foot 1200/3937 m.
LINEAR_UNITS: Dict[str, Dict[str, float]] = {
    "Metric": {"meter": 1.0, "millimeter": 0.001, "centimeter": 0.01, "kilometer": 1000.0},
    "Imperial": {
        "foot": LengthUnit.FOOT.metres,
        "USSurveyFoot": LengthUnit.US_SURVEY_FOOT.metres,
        "inch": LengthUnit.FOOT.metres / 12,
        "mile": LengthUnit.FOOT.metres * 5280,
    },
}
_WRITTEN = {
    LengthUnit.METRE: ("Metric", "meter"),
    LengthUnit.FOOT: ("Imperial", "foot"),
    LengthUnit.US_SURVEY_FOOT: ("Imperial", "USSurveyFoot"),
}
_OTHER_UNITS = {
    "Metric": {
        "areaUnit": "squareMeter", "volumeUnit": "cubicMeter", "temperatureUnit": "celsius",
        "pressureUnit": "milliBars", "angularUnit": "decimal degrees", "directionUnit": "decimal degrees",
        "elevationUnit": "meter",
    },
    "Imperial": {
        "areaUnit": "squareFoot", "volumeUnit": "cubicYard", "temperatureUnit": "fahrenheit",
        "pressureUnit": "inHG", "angularUnit": "decimal degrees", "directionUnit": "decimal degrees",
        "elevationUnit": "feet",
    },
}  # fmt: skip
#: ``elevationUnit`` that is the ``linearUnit`` said again.
_SAME_HEIGHTS = {"meter": {"meter"}, "foot": {"feet"}, "USSurveyFoot": {"feet"}, "kilometer": {"kilometer"}}


def units_written(unit: LengthUnit) -> Tuple[str, Dict[str, str]]:
    """Element and attributes for a file in ``unit``."""
    system, word = _WRITTEN[unit]
    attributes = dict(_OTHER_UNITS[system], linearUnit=word)
    return system, dict(sorted(attributes.items()))


def crs_written(crs: Any) -> Dict[str, str]:
    """Attributes of ``CoordinateSystem``: codes where there are some, and always the whole WKT."""
    attributes = {"name": crs.name}
    plan = horizontal(crs)
    code = _epsg(crs) or _epsg(plan)
    if code:
        attributes["epsgCode"] = code
    attributes["ogcWktCode"] = crs.to_wkt()
    datum = plan.datum
    if datum is not None:
        attributes["horizontalDatum"] = datum.name
    vertical = height_datum(crs)
    if vertical is not None:
        attributes["verticalDatum"] = vertical
    return attributes


def _epsg(crs: Any) -> str:
    authority = crs.to_authority(min_confidence=100)
    return str(authority[1]) if authority and authority[0] == "EPSG" else ""


@dataclass(frozen=True)
class UnitsSaid:
    """What a file says: ``system`` (Metric or Imperial), ``linear`` and ``elevation`` unit, and where."""

    system: str
    linear: str
    elevation: str
    line: int


@dataclass(frozen=True)
class Scale:
    """Metres in a unit of plan and of height; ``unit``: as one of ours, metre where it is none; ``said``: its name."""

    plan: float
    height: float
    unit: LengthUnit
    said: str


def scale_of(
    said: List[UnitsSaid], file: str, unit: Optional[LengthUnit] = None, height_unit: Optional[LengthUnit] = None
) -> Scale:
    """The units of a file; ``unit`` and ``height_unit`` are the user's word and win.

    Raises SurveyError for a unit that is missing, unknown, said twice, or another for heights.
    """
    if unit is not None:
        return Scale(unit.metres, (height_unit or unit).metres, unit, unit.value)
    if not said:
        raise SurveyError(NO_UNITS, file=file)
    first = said[0]
    for other in said[1:]:
        if (other.system, other.linear) != (first.system, first.linear):
            raise SurveyError(UNITS_TWICE, file=file, line=other.line)
    known = LINEAR_UNITS[first.system]
    if first.linear not in known:
        raise SurveyError(
            UNKNOWN_UNIT, file=file, line=first.line, found=first.linear, system=first.system, known=", ".join(known)
        )
    metres = known[first.linear]
    ours = next((member for member in WORKING_UNITS if member.metres == metres), LengthUnit.METRE)
    if height_unit is None and first.elevation and first.elevation not in _SAME_HEIGHTS.get(first.linear, ()):
        raise SurveyError(OTHER_HEIGHT_UNIT, file=file, line=first.line, unit=first.linear, found=first.elevation)
    return Scale(metres, metres if height_unit is None else height_unit.metres, ours, first.linear)


def crs_of(said: Dict[str, str], line: int, file: str) -> Tuple[Optional[Any], Tuple[Message, ...]]:
    """The CRS of the attributes of ``CoordinateSystem``; None where they name none.

    The WKT is taken where it agrees with the EPSG code, as it can say the heights too. Raises SurveyError for a CRS
    that cannot be one of a surface.
    """
    code, wkt = said.get("epsgCode", "").strip(), said.get("ogcWktCode", "").strip()
    by_code = _read_crs(code.upper().replace("EPSG:", "").strip(), line, file) if code else None
    try:
        by_wkt = CRS.from_wkt(wkt) if wkt else None
    except CRSError:  # some write a name there
        by_wkt = None
        if by_code is None:
            raise SurveyError(CRS_UNREADABLE, file=file, line=line, found=wkt[:60]) from None
    if by_wkt is None:
        return by_code, ()
    if by_code is None:
        return _read_crs(wkt, line, file), ()
    if not flat(by_code).equals(flat(by_wkt), ignore_axis_order=True):
        return by_code, (message(CRS_DIFFER, file=file, epsg=by_code.name, wkt=by_wkt.name),)
    return (_read_crs(wkt, line, file) if len(by_wkt.axis_info) > len(by_code.axis_info) else by_code), ()


def _read_crs(text: str, line: int, file: str) -> Any:
    try:
        crs = projected_crs(text)
    except SurveyError:
        raise SurveyError(CRS_UNREADABLE, file=file, line=line, found=text[:60]) from None
    authority = crs.to_authority(min_confidence=100)
    return CRS.from_authority(*authority) if authority else crs


def feet_differ(scale: Scale, crs: Optional[Any], farthest: float, file: str) -> Tuple[Message, ...]:
    """A word where the file is in one kind of feet and its CRS in the other; ``farthest``: largest coordinate, m."""
    if crs is None:
        return ()
    theirs = plan_unit(crs)
    feet = (LengthUnit.FOOT, LengthUnit.US_SURVEY_FOOT)
    if scale.plan == theirs.metres or theirs not in feet or scale.unit not in feet:
        return ()
    shift = farthest * abs(1 - scale.plan / metres_per_unit(crs))
    return (message(FEET_DIFFER, file=file, unit=scale.said, crs=crs.name, other=theirs.value, shift=shift),)
