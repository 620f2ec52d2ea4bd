"""Found lines as a GeoJSON file that can be edited and given back with the decisions taken in it."""

from __future__ import annotations

import json
import math
from typing import Any, Dict, Iterator, List, Mapping, NamedTuple, Optional, Sequence, Tuple

import numpy as np

from ..contours.geojson import DECIMALS, write_features
from ..features.found import FoundKind
from ..features.ground_lines import GroundLine, LineStatus, same_parts
from ..files import PathLike
from ..linework.geojson_file import bring_in, features_of, geometry_of, parsed, places_with_heights, properties_of
from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..site_columns import in_metres, in_site_units
from ..units import heights_to_crs_units, metres_per_height_unit, to_crs_units
from .found_courses import course_of, course_text, short_of, short_text

NOT_A_LINE = Text(
    "found_lines.not_a_line",
    QT_TRANSLATE_NOOP("core", "{file}: feature {number} is no line of two places or more; mend or remove it."),
)
WRONG_WORD = Text(
    "found_lines.wrong_word",
    QT_TRANSLATE_NOOP(
        "core", "{file}: feature {number} has '{word}' in the field {field}, which must be one of {words}."
    ),
)
NO_HEIGHTS = Text(
    "found_lines.no_heights",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: line {number} was drawn by hand and has no heights; give its vertices heights, or remove the line.",
    ),
)
HEIGHTS_BETWEEN = Text(
    "found_lines.heights_between",
    QT_TRANSLATE_NOOP(
        "core",
        "{file}: vertices of line {number} without a height, or with exactly 0: {count}; they take it from those "
        "before and after.",
    ),
)

#: Fields of the file and of a layer, and their kinds (whole, real, text, truth).
FIELDS: Tuple[Tuple[str, str], ...] = (
    ("number", "whole"),
    ("kind", "text"),
    ("status", "text"),
    ("found", "text"),
    ("by_hand", "truth"),
    ("step_m", "real"),
    ("step_doubt_m", "real"),
    ("bend", "real"),
    ("length_m", "real"),
    ("bridged_m", "real"),
    ("passes", "whole"),
    ("evidence", "real"),
    ("plan_doubt_m", "real"),
    ("height_doubt_m", "real"),
    ("cross_at", "text"),
    ("course", "text"),
    ("found_as", "text"),
)


#: Where the other heights are larger (m), a height of 0 is none.
_NEAR_ZERO = 1.0


class GivenLines(NamedTuple):
    """Lines read from a file or a layer, and what was noticed."""

    lines: Tuple[GroundLine, ...]
    messages: Tuple[Message, ...]


def write_found_lines(lines: Sequence[GroundLine], crs: Optional[Any], path: PathLike) -> None:
    """Write lines as MultiLineStrings with heights in the units of ``crs``, foot before top, with ``FIELDS``.

    Raises SurveyError when the file cannot be written.
    """
    write_features("lines_found", _features(lines, crs), len(lines), crs, path)


def _features(lines: Sequence[GroundLine], crs: Optional[Any]) -> Iterator[str]:
    for number, line in enumerate(lines, start=1):
        parts = [(np.round(in_crs_units(part, crs), DECIMALS) + 0.0).tolist() for part in line.parts]
        values = {name: _plain(value) for name, value in attributes_of(number, line).items()}
        geometry = {"type": "MultiLineString", "coordinates": parts}
        properties = in_site_units(values, crs)
        yield json.dumps({"type": "Feature", "properties": properties, "geometry": geometry})


def _plain(value: Any) -> Any:
    """As JSON can hold it."""
    if not isinstance(value, float):
        return value
    return None if math.isnan(value) else round(value, 4)


def in_crs_units(xyz: np.ndarray, crs: Optional[Any]) -> np.ndarray:
    """Places (k, 3) in metres, in the units of ``crs``."""
    return np.column_stack([to_crs_units(xyz[:, :2], crs), heights_to_crs_units(xyz[:, 2], crs)])


def attributes_of(number: int, line: GroundLine) -> Dict[str, Any]:
    """The values of ``FIELDS`` for the line of this number; lengths in metres, nan where unknown."""
    return dict(
        zip(
            (name for name, _ in FIELDS),
            (
                number, line.kind.value, line.status.value, line.automatic.value, line.by_hand, line.step,
                line.sigma_step, line.bend, line.length, line.bridged, line.passes, line.evidence, line.sigma_plan,
                line.sigma_height, _place_text(line.cross_at), short_text(line.found_as), course_text(line.found_as),
            ),
        )
    )  # fmt: skip


def read_found_lines(path: PathLike, crs: Optional[Any] = None, accept: Sequence[str] = ()) -> GivenLines:
    """Lines and decisions of a GeoJSON file in metres of ``crs``.

    Raises SurveyError for what cannot be read, and as :func:`..linework.geojson_file.bring_in`.
    """
    file, data = str(path), parsed(path)
    features = features_of(data)
    given = [_parts(file, number, feature) for number, feature in enumerate(features, start=1)]
    flat = [part for parts in given for part in parts]
    brought = bring_in(file, data, [part[:, :2] for part in flat], crs, accept)
    rise = metres_per_height_unit(crs)
    placed = iter([np.column_stack([xy, part[:, 2] * rise]) for xy, part in zip(brought.places, flat)])
    lines, messages = [], list(brought.statements)
    for number, (feature, parts) in enumerate(zip(features, given), start=1):
        line, said = given_line(file, number, _in_metres(feature, crs), [next(placed) for _ in parts])
        lines.append(line)
        messages += said
    return GivenLines(tuple(lines), tuple(messages))


def _in_metres(feature: Any, crs: Optional[Any]) -> Mapping[str, Any]:
    """What a feature says of its line, lengths in metres whatever unit their names end in."""
    return in_metres(properties_of(feature), (name for name, _ in FIELDS), crs)


def _parts(file: str, number: int, feature: Any) -> List[np.ndarray]:
    """Parts (k, 3) of a feature as they stand in the file, height nan where there is none."""
    kind, coordinates = geometry_of(feature)
    parts = [coordinates] if kind == "LineString" else coordinates if kind == "MultiLineString" else None
    try:
        if not parts:
            raise ValueError
        read = [places_with_heights(part) for part in parts]
        if any(len(part) < 2 for part in read):
            raise ValueError
    except (TypeError, ValueError):
        raise SurveyError(NOT_A_LINE, file=file, number=number) from None
    return read


def given_line(
    file: str, number: int, values: Mapping[str, Any], parts: Sequence[np.ndarray]
) -> Tuple[GroundLine, List[Message]]:
    """The line of one feature: its ``values`` by ``FIELDS``, its ``parts`` (k, 3) in metres.

    It is decided by hand where it says so, where its status is not the one it was found with, where its course is not
    the one found, and where it was not found at all. Raises SurveyError for words that are none and for lines without
    heights.
    """
    kind = FoundKind(_word(file, number, values, "kind", [one.value for one in FoundKind], ""))
    states = [one.value for one in LineStatus]
    status = LineStatus(_word(file, number, values, "status", states, LineStatus.USED.value))
    automatic = LineStatus(_word(file, number, values, "found", states, LineStatus.PROPOSED.value))
    told = str(values.get("found_as") or "")
    short = short_of(str(values.get("course") or ""))
    # A shapefile cuts the whole course off; the short one says how many vertices it had.
    found_as = course_of(told)
    if short is not None and sum(len(part) for part in found_as) != short.count:
        found_as = ()
    said: List[Message] = []
    if found_as and _same_plan(parts, found_as):
        parts = found_as
    else:
        parts, said = _with_heights(file, number, parts)
    if told and not found_as:
        found_as = tuple(parts) if short is None or short.is_of(parts) else (_upright(short.xy, parts),)
    reshaped = not same_parts(tuple(parts), found_as)
    line = GroundLine(
        kind=kind, parts=tuple(parts), found_as=found_as, step=_real(values, "step_m"),
        sigma_step=_real(values, "step_doubt_m"), bend=_real(values, "bend"), bridged=_real(values, "bridged_m"),
        evidence=_real(values, "evidence"), sigma_plan=_real(values, "plan_doubt_m"),
        sigma_height=_real(values, "height_doubt_m"), passes=int(np.nan_to_num(_real(values, "passes"))),
        automatic=automatic, status=status, cross_at=_place_of(str(values.get("cross_at") or "")),
        by_hand=reshaped or status is not automatic or values.get("by_hand") in (True, 1, "true", "1"),
    )  # fmt: skip
    return line, said


def _upright(xy: np.ndarray, parts: Sequence[np.ndarray]) -> np.ndarray:
    """A course (k, 3) of places (k, 2) at the usual height of ``parts``."""
    return np.column_stack([xy, np.full(len(xy), np.median(np.concatenate([part[:, 2] for part in parts])))])


def _place_text(place: Tuple[float, float]) -> str:
    return "{:.3f} {:.3f}".format(*place) if np.isfinite(place).all() else ""


def _place_of(text: str) -> Tuple[float, float]:
    """The place that :func:`_place_text` wrote; nan for what it did not."""
    try:
        easting, northing = (float(number) for number in text.split())
    except ValueError:
        return float("nan"), float("nan")
    return easting, northing


def _word(file: str, number: int, values: Mapping[str, Any], field: str, words: Sequence[str], usual: str) -> str:
    word = str(values.get(field) or usual).strip().lower()
    if word not in words:
        raise SurveyError(WRONG_WORD, file=file, number=number, word=word, field=field, words=", ".join(words))
    return word


def _real(values: Mapping[str, Any], field: str) -> float:
    try:
        return float(values.get(field))  # type: ignore[arg-type]
    except (TypeError, ValueError):
        return float("nan")


def _same_plan(parts: Sequence[np.ndarray], found_as: Sequence[np.ndarray]) -> bool:
    """Whether the parts are those found, with their heights or without any."""
    bare = [np.column_stack([part[:, :2], other[:, 2]]) if len(part) == len(other) and np.isnan(part[:, 2]).all()
            else part for part, other in zip(parts, found_as)]  # fmt: skip
    return len(parts) == len(found_as) and same_parts(bare, found_as)


def _with_heights(file: str, number: int, parts: Sequence[np.ndarray]) -> Tuple[List[np.ndarray], List[Message]]:
    """The parts with a height at every vertex; 0 is what drawing leaves where no height was given."""
    result, filled = [], 0
    for part in parts:
        height = part[:, 2]
        others = np.abs(height[np.isfinite(height) & (height != 0.0)])
        no_zero = not len(others) or np.median(others) > _NEAR_ZERO
        bare = ~np.isfinite(height) | ((height == 0.0) & no_zero)
        if bare.all():
            raise SurveyError(NO_HEIGHTS, file=file, number=number)
        run = np.append(0.0, np.cumsum(np.hypot(*np.diff(part[:, :2], axis=0).T)))
        height = np.where(bare, np.interp(run, run[~bare], height[~bare]), height)
        result.append(np.column_stack([part[:, :2], height]))
        filled += int(bare.sum())
    said = [message(HEIGHTS_BETWEEN, file=file, number=number, count=filled)] if filled else []
    return result, said
