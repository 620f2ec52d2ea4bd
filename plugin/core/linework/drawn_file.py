"""Lines drawn by hand in GeoJSON files, whose coordinates are as :mod:`.geojson_file` says."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import Any, List, Optional, Sequence, Tuple

import numpy as np

from ..files import PathLike
from ..georeference.axes import same_plan
from ..georeference.crs import height_unit
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..units import LengthUnit
from .drawn import DrawnAs, DrawnLines, DrawnRow, constraints_from_rows, told_of_heights
from .geojson_file import bring_in, features_of, geometry_of, parsed, places_with_heights, system_of

NO_LINES = Text(
    "drawn_file.no_lines",
    QT_TRANSLATE_NOOP("core", "{file}: there are no lines or polygons in it; give a GeoJSON file of such."),
)
NOT_DRAWN = Text(
    "drawn_file.not_drawn",
    QT_TRANSLATE_NOOP(
        "core", "{file}, feature {number}: {kind} is no line or polygon of coordinates; mend or remove it."
    ),
)
OTHER_HEIGHTS = Text(
    "drawn_file.other_heights",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: heights of its coordinate system are in {own}, those of the survey in {unit}; write it anew in the "
        "CRS of the survey.",
    ),
)
HEIGHTS_STAY = Text(
    "drawn_file.heights_stay",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: its heights are taken as they stand, as heights of the survey; only plan coordinates are changed.",
    ),
)

#: How deep the places of a part lie in the coordinates of a geometry.
_DEPTHS = {"LineString": 0, "MultiLineString": 1, "Polygon": 1, "MultiPolygon": 2}


@dataclass(frozen=True)
class DrawnFile:
    """The lines of one ``file``, drawn as ``name`` of :data:`.drawn.DRAWN` says."""

    name: str
    file: str
    lines: DrawnLines


def read_drawn(path: PathLike, drawn_as: DrawnAs, crs: Optional[Any], accept: Sequence[str] = ()) -> DrawnFile:
    """The lines and polygons of a GeoJSON file in metres of ``crs`` (None: a local grid).

    Heights, where they count, are in the unit of the CRS. ``accept``: names of coordinate operations that the user
    takes. Raises SurveyError for a file without lines, for heights in another unit, and as :func:`.bring_in`.
    """
    file, data = str(path), parsed(path)
    given = [_parts(file, number, one) for number, one in enumerate(features_of(data), 1)]
    flat = [part for parts in given for part in parts]
    if not flat:
        raise SurveyError(NO_LINES, file=file)
    brought = bring_in(file, data, [part[:, :2] for part in flat], crs, accept)
    if not drawn_as.heights:
        flat = [np.column_stack([part[:, :2], np.full(len(part), np.nan)]) for part in flat]
    said = _told_of_unit(file, system_of(file, data, crs), crs, flat)
    rise = height_unit(crs).metres
    placed = iter([np.column_stack([xy, part[:, 2] * rise]) for xy, part in zip(brought.places, flat)])
    label = Path(path).stem
    rows = [
        DrawnRow(drawn_as.kind, [next(placed) for _ in parts], f"{label} {number}")
        for number, parts in enumerate(given, 1)
    ]
    made = constraints_from_rows(rows)
    messages = (*brought.statements, *said, *told_of_heights(rows, label), *made.messages)
    return DrawnFile(drawn_as.name, file, DrawnLines(made.constraints, made.row_numbers, messages))


def _parts(file: str, number: int, feature: Any) -> List[np.ndarray]:
    """Lines and rings (k, 3) of a feature as they stand in the file, height nan where there is none."""
    kind, coordinates = geometry_of(feature)
    if kind is None:
        return []
    try:
        parts = [coordinates]
        for _ in range(_DEPTHS[kind]):
            parts = [one for part in parts for one in part]
        if kind in ("Polygon", "MultiPolygon") and not all(parts):
            raise ValueError("a ring has no places")
        return [places_with_heights(part) for part in parts if part]
    except (KeyError, TypeError, ValueError):
        raise SurveyError(NOT_DRAWN, file=file, number=number, kind=kind) from None


def _told_of_unit(
    file: str, own: Optional[Any], crs: Optional[Any], parts: Sequence[np.ndarray]
) -> Tuple[Message, ...]:
    """That heights which come from another CRS stay as they are. Raises SurveyError where they can't."""
    if own is None or same_plan(own, crs) or not any(np.isfinite(part[:, 2]).any() for part in parts):
        return ()
    # A system of degrees has heights in metres: RFC 7946, 3.1.1.
    unit = LengthUnit.METRE if own.is_geographic else height_unit(own)
    if unit is not height_unit(crs):
        raise SurveyError(OTHER_HEIGHTS, file=file, own=unit.symbol, unit=height_unit(crs).symbol)
    return (message(HEIGHTS_STAY, file=file),)
