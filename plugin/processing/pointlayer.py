"""Points between a QGIS layer and the core's PointSet.

Coordinates of a layer, heights included, are in the unit of its CRS; those of the core are in metres.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timezone
from math import isfinite
from typing import Any, Callable, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from qgis.core import (
    QgsFeatureSink,
    QgsFeatureSource,
    QgsFields,
    QgsGeometry,
    QgsPoint,
    QgsProcessingException,
    QgsProcessingFeedback,
)
from qgis.PyQt.QtCore import QCoreApplication, QDateTime, Qt

from ..core.georeference.crs import height_unit as core_height_unit
from ..core.georeference.crs import plan_unit
from ..core.messages import QT_TRANSLATE_NOOP, Text, message
from ..core.points.decisions import CHECK_STATUS, REASON_WORDS, STATUS_WORDS, words_of_reasons
from ..core.points.delimited import FileFormat, PointFile
from ..core.points.geographic import GeographicPoints
from ..core.points.layout import new_name
from ..core.points.pointset import FIX_UNKNOWN, MARKS, PointSet, Status, make_points
from ..core.points.rejects import LineAccount, Rejects, make_rejects
from ..core.progress import Progress
from ..core.units import LengthUnit, heights_to_crs_units, metres_per_height_unit, metres_per_unit, to_crs_units
from .localnumbers import use_units
from .parameters import core_crs
from .sinks import add_feature, counted, fields_of
from .versions import is_null

translate = QCoreApplication.translate

#: The columns of a point layer, named as in the core's table of points; lengths are in the unit of the CRS.
POINT_FIELDS: Tuple[Tuple[str, str], ...] = (
    ("line", "whole"),
    ("name", "text"),
    ("easting", "real"),
    ("northing", "real"),
    ("height", "real"),
    ("code", "text"),
    ("sigma_h", "real"),
    ("sigma_v", "real"),
    ("fix", "whole"),
    ("tilt", "real"),
    ("time", "moment"),
    ("status", "text"),
    ("reason", "text"),
)
_OWN = {name for name, _ in POINT_FIELDS}
#: The number of a row in a GeoPackage, which says nothing of the point and is given anew with each file.
_ROW = "fid"

NO_PLACE_OR_HEIGHT = Text(
    "layer.no_place_or_height", QT_TRANSLATE_NOOP("core", "the feature has no place or no height")
)


def point_fields(points: PointSet) -> QgsFields:
    """The fields of a point layer of ``points``, their extra columns last."""
    columns = list(POINT_FIELDS)
    taken = [name for name, _ in columns] + ["fid"]
    for column, values in points.extra.items():
        name = new_name(column, taken)
        taken.append(name)
        columns.append((name, "real" if values.dtype.kind == "f" else "text"))
    return fields_of(columns)


def write_points(points: PointSet, sink: QgsFeatureSink, progress: Progress) -> None:
    """Put ``points`` into ``sink``, whose fields are those of :func:`point_fields`."""
    plan = {name: to_crs_units(getattr(points, name), points.crs) for name in ("easting", "northing", "sigma_h")}
    rise = {name: heights_to_crs_units(getattr(points, name), points.crs) for name in ("height", "sigma_v")}
    places = np.column_stack([plan["easting"], plan["northing"], rise["height"]]).tolist()
    columns = [
        points.source_line.tolist(),
        points.name.tolist(),
        _or_null(plan["easting"]),
        _or_null(plan["northing"]),
        _or_null(rise["height"]),
        points.code.tolist(),
        _or_null(plan["sigma_h"]),
        _or_null(rise["sigma_v"]),
        [None if value == FIX_UNKNOWN else value for value in points.fix.tolist()],
        _or_null(points.tilt),
        _moments(points.time),
        [Status(value).name.lower() for value in points.status.tolist()],
        [words_of_reasons(value) for value in points.reasons.tolist()],
        *(_or_null(values) if values.dtype.kind == "f" else values.tolist() for values in points.extra.values()),
    ]
    for place, row in zip(counted(places, len(points), progress), zip(*columns)):
        nowhere = place[0] != place[0] or place[1] != place[1]
        add_feature(sink, QgsGeometry() if nowhere else QgsGeometry(QgsPoint(*place)), list(row))


def _or_null(values: np.ndarray) -> List[Optional[float]]:
    return [None if value != value else value for value in values.tolist()]


def _moments(times: np.ndarray) -> List[Optional[QDateTime]]:
    utc = Qt.TimeSpec.UTC
    return [
        None if value != value else QDateTime.fromMSecsSinceEpoch(round(value * 1000.0), utc)
        for value in times.tolist()
    ]


class PointColumns(NamedTuple):
    """Which fields of a layer hold the columns; "" for none, for the name the field "name" where there is one."""

    height: str = ""
    code: str = ""
    name: str = ""


def read_points_layer(
    source: QgsFeatureSource,
    columns: PointColumns,
    label: str,
    feedback: QgsProcessingFeedback,
    progress: Progress,
    height_unit: Optional[LengthUnit] = None,
    local_unit: Optional[LengthUnit] = None,
    keep_without_height: bool = False,
) -> PointSet:
    """The points of a layer in the order of its features; a multipoint counts as its points.

    Heights come from ``columns.height`` or else from the geometry, in ``height_unit`` or else the unit of the CRS.
    ``local_unit``: the coordinates are of a local grid in that unit, whatever CRS the layer says. Points without
    geometry or height are left out and counted aloud, those without height only unless ``keep_without_height``.
    Raises SurveyError for a CRS without lengths, QgsProcessingException when a given field is missing or no point
    has a height.
    """
    crs = core_crs(source.sourceCrs(), label) if local_unit is None else None
    use_units(crs)
    plan = metres_per_unit(crs) if local_unit is None else local_unit.metres
    rise = metres_per_height_unit(crs) if local_unit is None else local_unit.metres
    if height_unit is not None:
        rise = height_unit.metres
    points, refused = _read_layer(source, columns, label, feedback, progress, (plan, rise), keep_without_height)
    if refused:
        feedback.pushWarning(
            translate("hummock", "{layer}: features without a place or a height left out: {count}.").format(
                layer=label, count=len(refused)
            )
        )
    return replace(points, crs=crs)


def read_survey_layer(
    source: QgsFeatureSource,
    columns: PointColumns,
    label: str,
    feedback: QgsProcessingFeedback,
    progress: Progress,
    height_unit: Optional[LengthUnit] = None,
    local_unit: Optional[LengthUnit] = None,
) -> PointFile:
    """A layer as a survey file: features without a place or height are its rejects, their ids its lines.

    Other arguments as of :func:`read_points_layer`. A layer in degrees gives geographic positions with heights in
    metres unless ``height_unit`` says otherwise; easting and northing are nan then.
    """
    degrees = local_unit is None and source.sourceCrs().isGeographic()
    crs = None if degrees or local_unit is not None else core_crs(source.sourceCrs(), label)
    plan = local_unit or plan_unit(crs)
    rise = height_unit or local_unit or core_height_unit(crs)
    factors = (1.0 if degrees else plan.metres, rise.metres)
    points, refused = _read_layer(source, columns, label, feedback, progress, factors)
    rejects = make_rejects([(line, text, message(NO_PLACE_OR_HEIGHT)) for line, text in refused])
    account = LineAccount(len(points) + len(rejects), len(points), len(rejects), 0, 0, 0)
    read = PointFile(
        replace(points, crs=crs), rejects, account, FileFormat(",", ".", "utf-8", None, {}, plan, rise), ()
    )
    if not degrees:
        return read
    positions = GeographicPoints(points.easting, points.northing, points.height)
    nowhere = np.full(len(points), np.nan)
    return replace(
        read, points=replace(points, easting=nowhere, northing=nowhere), geographic=positions, messages=read.messages
    )


def _read_layer(
    source: QgsFeatureSource,
    columns: PointColumns,
    label: str,
    feedback: QgsProcessingFeedback,
    progress: Progress,
    factors: Tuple[float, float],
    keep_without_height: bool = False,
) -> Tuple[PointSet, List[Tuple[int, str]]]:
    """Points with coordinates times ``factors`` (plan, height), and id and attributes of the features left out."""
    names = [item.name() for item in source.fields()]
    for column in columns:
        if column and column not in names:
            raise QgsProcessingException(
                translate("hummock", "{layer}: there is no field {field}; choose one of {fields}.").format(
                    layer=label, field=column, fields=", ".join(names) or "-"
                )
            )
    places, rows, refused = _collect_points(source, columns.height, keep_without_height, progress)
    if refused and not rows:
        raise QgsProcessingException(
            translate(
                "hummock", "{layer}: no point has a height; give points with Z values or choose the height field."
            ).format(layer=label)
        )
    plan, rise = factors
    xyz = np.array(places, float).reshape(-1, 3) * [plan, plan, rise]
    table = {name: [row[i] for row in rows] for i, name in enumerate(names)}
    known = _known_columns(table, columns, label, feedback)
    for name, unit in (("sigma_h", plan), ("sigma_v", rise)):
        if name in known:
            known[name] = known[name] * unit
    return make_points(*xyz.T, source=label, **known), refused


def _collect_points(
    source: QgsFeatureSource, height: str, keep_without_height: bool, progress: Progress
) -> Tuple[List[Tuple[float, float, float]], List[List[Any]], List[Tuple[int, str]]]:
    """Coordinates and attributes of each point, and id and attributes of the features that give none."""
    place = source.fields().indexFromName(height) if height else -1
    places, rows, refused = [], [], []
    for feature in counted(source.getFeatures(), source.featureCount(), progress):
        attributes = feature.attributes()
        found = 0
        for vertex in feature.geometry().vertices():
            z = _number(attributes[place]) if height else vertex.z()
            x, y = vertex.x(), vertex.y()
            if isfinite(x) and isfinite(y) and (keep_without_height or isfinite(z)):
                places.append((x, y, z))
                rows.append(attributes)
                found += 1
        if not found:
            refused.append((int(feature.id()), ",".join(_texts(attributes).tolist())))
    return places, rows, refused


def _known_columns(
    table: Dict[str, List[Any]], columns: PointColumns, label: str, feedback: QgsProcessingFeedback
) -> Dict[str, Any]:
    """The columns of a PointSet that a layer's attributes give."""
    own = {name: values for name, values in table.items() if name in _OWN}
    known: Dict[str, Any] = {}
    name = columns.name or ("name" if "name" in own else "")
    if name:
        known["name"] = _texts(table[name])
    if columns.code:
        known["code"] = _texts(table[columns.code])
    for name in ("sigma_h", "sigma_v", "tilt"):
        if name in own:
            known[name] = np.array([_number(value) for value in own[name]], float)
    if "fix" in own:
        known["fix"] = np.array([_whole(value, FIX_UNKNOWN, 127) for value in own["fix"]], np.int8)
    if "line" in own:
        known["source_line"] = np.array([_whole(value, 0, 2**53) for value in own["line"]], np.int64)
    if "time" in own:
        known["time"] = np.array([_seconds(value) for value in own["time"]], float)
    if "status" in own:
        known["status"] = _statuses(own["status"], _checked(table), label, feedback)
    if "reason" in own:
        known["reasons"] = np.array([_reasons(value) for value in own["reason"]], np.uint32)
    known["extra"] = {name: _texts(values) for name, values in table.items() if name not in _OWN and name != _ROW}
    return known


def _texts(values: Sequence[Any]) -> np.ndarray:
    texts = np.empty(len(values), dtype=object)
    texts[:] = ["" if is_null(value) else str(value) for value in values]
    return texts


def _number(value: Any) -> float:
    try:
        return np.nan if is_null(value) else float(value)
    except (TypeError, ValueError):
        return np.nan


def _whole(value: Any, empty: int, most: int) -> int:
    """A whole number up to ``most`` either way; ``empty`` for what is none."""
    number = _number(value)
    return int(number) if abs(number) <= most else empty


def _seconds(value: Any) -> float:
    """Seconds since 1970 UTC of a date and time, or of one written as text."""
    if is_null(value):
        return np.nan
    if isinstance(value, QDateTime):
        return value.toMSecsSinceEpoch() / 1000.0 if value.isValid() else np.nan
    try:
        moment = datetime.fromisoformat(str(value).replace("Z", "+00:00"))
    except ValueError:
        return np.nan
    return (moment if moment.tzinfo else moment.replace(tzinfo=timezone.utc)).timestamp()


def _checked(table: Dict[str, List[Any]]) -> List[str]:
    """What the checks said of each point, in small letters; nothing where no check has seen the layer."""
    return [word.strip().lower() for word in _texts(table.get(CHECK_STATUS, [])).tolist()]


def _statuses(values: Sequence[Any], checked: Sequence[str], label: str, feedback: QgsProcessingFeedback) -> np.ndarray:
    """Statuses from words; other words are counted aloud.

    Of points that were ``checked`` an empty or unknown word leaves what the checks said: a slip of the keys must not
    bring a rejected point into the surface. Without checks such a point counts as used.
    """
    texts = [word.strip().lower() for word in _texts(values).tolist()]
    strange = sum(word not in STATUS_WORDS and word != "" for word in texts)
    if checked:
        if strange:
            feedback.pushWarning(
                translate(
                    "hummock",
                    "{layer}: points whose status is none of used, flagged, rejected, left as checked: {count}.",
                ).format(layer=label, count=strange)
            )
        texts = [word if word in STATUS_WORDS else said for word, said in zip(texts, checked)]
    elif strange:
        feedback.pushWarning(
            translate(
                "hummock",
                "{layer}: points whose status is none of used, flagged, rejected, taken as used: {count}.",
            ).format(layer=label, count=strange)
        )
    return np.array([int(STATUS_WORDS.get(word, Status.USED)) for word in texts], np.uint8)


def _reasons(value: Any) -> int:
    words = set() if is_null(value) else {word.strip().lower() for word in str(value).split("+")}
    return sum(int(reason) for word, reason in REASON_WORDS.items() if word in words and not reason & MARKS)


# Rejected lines


def reject_fields(rejects: Rejects) -> QgsFields:
    """The fields of the table of rejected lines; the file too where there are several."""
    columns = [("line", "whole"), ("reason", "text"), ("text", "text")]
    return fields_of(columns if rejects.source is None else [*columns, ("source", "text")])


def write_rejects(rejects: Rejects, say_reason: Callable[[Any], str], sink: QgsFeatureSink) -> None:
    """Put the rejected lines into ``sink``, a row each; ``say_reason`` makes a text of a reason."""
    sources = [[]] * len(rejects) if rejects.source is None else [[str(name)] for name in rejects.source]
    for line, text, reason, source in zip(rejects.line, rejects.text, rejects.reason, sources):
        add_feature(sink, QgsGeometry(), [int(line), say_reason(reason), str(text), *source])
