"""Positions from one CRS to another, by one operation of PROJ that is named and whose accuracy is stated."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from pyproj import proj_version_str

from ..messages import QT_TRANSLATE_NOOP, Message, SurveyError, Text, message
from ..points.geographic import HeightKind
from ..points.pointset import PointSet
from ..units import metres_per_height_unit, metres_per_unit
from .axes import check_axes, computed, flat, from_degrees, has_heights, solid
from .operations import Choice, choose_operation, operation_said
from .record import Georeference, Georeferenced, Step, crs_name
from .whereabouts import Whereabouts, of_degrees, of_plan

NOT_TRANSFORMED = Text(
    "transform.not_transformed",
    QT_TRANSLATE_NOOP(
        "core",
        "{file} line {line}: {count} positions cannot be transformed from {source} to {target}; check the CRS "
        "and the coordinates.",
    ),
    one=QT_TRANSLATE_NOOP(
        "core",
        "{file} line {line}: this position cannot be transformed from {source} to {target}; check the CRS and"
        " the coordinates.",
    ),
)
NOT_COMPUTED = Text(
    "transform.not_computed",
    QT_TRANSLATE_NOOP("core", "PROJ {version} cannot compute {crs}; choose another CRS, or use a later PROJ."),
)
NO_SOURCE_CRS = Text(
    "transform.no_source_crs",
    QT_TRANSLATE_NOOP(
        "core", "Points on a local grid cannot be transformed; say their CRS, or fit them to control points."
    ),
)
HEIGHTS_KEPT = Text(
    "transform.heights_kept",
    QT_TRANSLATE_NOOP("core", "Heights are taken over as they are; only positions in plan are transformed."),
)
ELLIPSOIDAL_KEPT = Text(
    "transform.ellipsoidal_kept",
    QT_TRANSLATE_NOOP(
        "core",
        "Heights are ellipsoidal and are taken over so; a geoid separation makes heights above the geoid of them.",
    ),
)
ORTHOMETRIC_KEPT = Text(
    "transform.orthometric_kept",
    QT_TRANSLATE_NOOP("core", "Heights are orthometric as sent and are taken over so."),
)
HEIGHTS_TOO = Text(
    "transform.heights_too",
    QT_TRANSLATE_NOOP("core", "Heights are transformed too, by the same operation."),
)
BEYOND_AREA = Text(
    "transform.beyond_area",
    QT_TRANSLATE_NOOP("core", "{count} of {total} points lie outside the area the operation is made for ({area})."),
    one=QT_TRANSLATE_NOOP("core", "One of {total} points lies outside the area the operation is made for ({area})."),
)

_KEPT = {
    HeightKind.ELLIPSOIDAL: ELLIPSOIDAL_KEPT,
    HeightKind.ORTHOMETRIC: ORTHOMETRIC_KEPT,
    HeightKind.UNKNOWN: HEIGHTS_KEPT,
}


class Transformed(NamedTuple):
    """Plan coordinates and heights (n,), metres, in the target CRS, and what was done."""

    easting: np.ndarray
    northing: np.ndarray
    height: np.ndarray
    record: Georeference


def transform_points(points: PointSet, target: Any, accept: Sequence[str] = ()) -> Georeferenced:
    """``points`` in the projected (or compound) CRS ``target``.

    Heights are transformed where both CRSs say what their heights are, otherwise taken over. ``accept`` as in
    :func:`choose_operation`, whose errors it raises; SurveyError too where a position has no counterpart.
    """
    if points.crs is None:
        raise SurveyError(NO_SOURCE_CRS)
    source = points.crs
    _check_computed(source, target)
    metres, metres_up = metres_per_unit(source), metres_per_height_unit(source)
    done = _transform(
        points.easting / metres, points.northing / metres, points.height / metres_up, source, target,
        of_plan(source, points.easting, points.northing, points.source, points.source_line), HeightKind.UNKNOWN, accept,
        metres_up,
    )  # fmt: skip
    moved = replace(points, easting=done.easting, northing=done.northing, height=done.height, crs=target)
    return Georeferenced(moved, done.record)


def transform_geographic(
    longitude: Any,
    latitude: Any,
    height: Any,
    source: Any,
    target: Any,
    heights: HeightKind = HeightKind.UNKNOWN,
    accept: Sequence[str] = (),
    file: str = "",
    lines: Optional[np.ndarray] = None,
) -> Transformed:
    """Longitude and latitude (n,), degrees from the prime meridian of the geographic CRS ``source``, and
    heights in metres to the projected (or compound) CRS ``target``.

    Heights said to be ellipsoidal are transformed where ``target`` says what its heights are; all others are
    taken over. ``file`` and ``lines`` (n,) name the place in errors. Raises as :func:`transform_points`.
    """
    _check_computed(target)
    lon, lat = np.asarray(longitude, float), np.asarray(latitude, float)
    x, y = from_degrees(flat(source), lon, lat, from_greenwich=False)
    use = solid(flat(source)) if heights is HeightKind.ELLIPSOIDAL else flat(source)
    lines = np.zeros(len(lon), np.int64) if lines is None else np.asarray(lines)
    place = of_degrees(lon, lat, file, lines)
    return _transform(x, y, np.asarray(height, float), use, target, place, heights, accept, 1.0)


def _check_computed(*wanted: Any) -> None:
    for crs in wanted:
        if not computed(crs):
            raise SurveyError(NOT_COMPUTED, crs=crs_name(crs), version=proj_version_str)


def _transform(
    x: np.ndarray, y: np.ndarray, z: np.ndarray, source: Any, target: Any, place: Whereabouts, kind: HeightKind,
    accept: Sequence[str], metres_up: float,
) -> Transformed:  # fmt: skip
    """``x``, ``y``, ``z`` in the units of ``source``, x before y."""
    box = place.box
    notes = () if box is None else check_axes(target, box[0], (box[1] + box[3]) / 2.0)
    with_heights = has_heights(source) and has_heights(target)
    ends = (source, target) if with_heights else (flat(source), flat(target))
    choice = choose_operation(ends[0], ends[1], box, accept)
    if with_heights:
        east, north, up = choice.operation.run_with_heights(x, y, z)
        height = up * metres_per_height_unit(target)
    else:
        east, north = choice.operation.run(x, y)
        height = z * metres_up
    metres = metres_per_unit(target)
    _check_finite(east, north, height if with_heights else None, z, place, source, target)
    record = Georeference(
        Step.TRANSFORMED, source, target, choice.operation,
        _statements(choice, source, target, place, kind, with_heights) + notes,
    )  # fmt: skip
    return Transformed(east * metres, north * metres, height, record)


def _check_finite(
    east: np.ndarray, north: np.ndarray, height: Optional[np.ndarray], z: np.ndarray, place: Whereabouts, source: Any,
    target: Any,
) -> None:  # fmt: skip
    bad = ~(np.isfinite(east) & np.isfinite(north))
    if height is not None:
        bad |= np.isfinite(z) & ~np.isfinite(height)
    if bad.any():
        line = int(place.lines[np.argmax(bad)])
        raise SurveyError(
            NOT_TRANSFORMED, file=place.file, line=line, count=int(bad.sum()), source=crs_name(source),
            target=crs_name(target),
        )  # fmt: skip


def _statements(
    choice: Choice, source: Any, target: Any, place: Whereabouts, kind: HeightKind, with_heights: bool
) -> Tuple[Message, ...]:
    operation = choice.operation
    said = [*operation_said(choice, source, target)]
    said.append(message(HEIGHTS_TOO if with_heights else _KEPT[kind]))
    if operation.area is not None:
        outside = place.outside(operation.area)
        if outside:
            said.append(message(BEYOND_AREA, count=outside, total=len(place), area=operation.area_name))
    return tuple(said)
