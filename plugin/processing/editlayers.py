"""Edits of a surface that the user drew into layers, and what became of edits.

A layer may have the columns ``edit`` (the kind, as in the file of edits), ``height``, ``difference`` and ``note``.
Without a kind a point is one to add, a line an edge to force, and a polygon drops triangles.
"""

from __future__ import annotations

from math import isfinite
from typing import Any, Callable, Dict, List, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from qgis.core import (
    QgsFeature,
    QgsFeatureSink,
    QgsFeatureSource,
    QgsFields,
    QgsGeometry,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress
from ..core.surface.edited import EditReport
from ..core.surface.edits import (
    AddPoint,
    AddTriangle,
    DropTriangles,
    Edit,
    ForceEdge,
    MovePoint,
    Place,
    RemoveTriangle,
    SwapEdge,
    kind_of,
)
from ..core.units import metres_per_height_unit, metres_per_unit, to_crs_units
from .algorithm import say
from .drawnsource import metres_per_z, parts_of, request_in
from .parameters import qgis_crs
from .sinks import add_feature, counted, fields_of
from .versions import POINT_GEOMETRY, is_null

translate = QCoreApplication.translate


class Drawn(NamedTuple):
    """A part of a feature: where it is, metres in the points' CRS, and what its columns say, metres."""

    xy: Tuple[Place, ...]
    middle: Place
    height: Optional[float]
    difference: Optional[float]
    note: str
    where: str


def _add(drawn: Drawn) -> Edit:
    return AddPoint(drawn.xy[0], _needed(drawn), drawn.note)


def _move(drawn: Drawn) -> Edit:
    if drawn.difference is not None:
        return MovePoint(drawn.xy[0], difference=drawn.difference, note=drawn.note)
    return MovePoint(drawn.xy[0], height=_needed(drawn), note=drawn.note)


def _needed(drawn: Drawn) -> float:
    if drawn.height is None:
        raise QgsProcessingException(
            translate("hummock", "{where}: the edit needs a height; give a Z or fill the column height.").format(
                where=drawn.where
            )
        )
    return drawn.height


def _corners(drawn: Drawn) -> Edit:
    ring = drawn.xy[:-1] if drawn.xy[0] == drawn.xy[-1] else drawn.xy
    if len(ring) != 3:
        return AddTriangle(drawn.middle, note=drawn.note)
    return AddTriangle(corners=(ring[0], ring[1], ring[2]), note=drawn.note)


#: What may be drawn in a layer of points, lines and polygons; the first is meant where the column says nothing.
POINT_EDITS: Dict[str, Callable[[Drawn], Edit]] = {
    "add_point": _add,
    "move_point": _move,
    "remove_triangle": lambda drawn: RemoveTriangle(drawn.xy[0], drawn.note),
    "add_triangle": lambda drawn: AddTriangle(drawn.xy[0], note=drawn.note),
    "swap_edge": lambda drawn: SwapEdge(drawn.xy[0], note=drawn.note),
}
LINE_EDITS: Dict[str, Callable[[Drawn], Edit]] = {
    "force_edge": lambda drawn: ForceEdge(drawn.xy, drawn.note),
    "swap_edge": lambda drawn: SwapEdge(ends=(drawn.xy[0], drawn.xy[-1]), note=drawn.note),
}
POLYGON_EDITS: Dict[str, Callable[[Drawn], Edit]] = {
    "drop_triangles": lambda drawn: DropTriangles(drawn.xy, drawn.note),
    "remove_triangle": lambda drawn: RemoveTriangle(drawn.middle, drawn.note),
    "add_triangle": _corners,
}


def read_edit_layer(
    source: QgsFeatureSource,
    label: str,
    known: Dict[str, Callable[[Drawn], Edit]],
    crs: Any,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> List[Edit]:
    """The edits drawn in a layer, in the order of its features, brought into the CRS ``crs``, in metres.

    Heights in columns are in the unit of ``crs``, those of points in that of their layer. Raises
    QgsProcessingException for a kind that is not ``known`` or a missing height.
    """
    request = request_in(qgis_crs(crs), source, context, feedback)
    edits: List[Edit] = []
    for feature in counted(source.getFeatures(request), source.featureCount(), progress):
        columns = _Columns(feature, source.fields().names(), f"{label} {feature.id()}")
        kind = columns.text("edit").strip().lower() or next(iter(known))
        if kind not in known:
            raise QgsProcessingException(
                translate("hummock", "{where}: the edit “{kind}” is none of {known}; correct the column edit.").format(
                    where=columns.where, kind=kind, known=", ".join(known)
                )
            )
        edits += [known[kind](drawn) for drawn in _drawn(feature.geometry(), columns, crs, metres_per_z(source, crs))]
    return edits


class _Columns:
    """The columns of a feature by name; what is not there is empty."""

    def __init__(self, feature: QgsFeature, names: Sequence[str], where: str) -> None:
        self.feature, self.names, self.where = feature, names, where

    def text(self, name: str) -> str:
        value = self.feature[name] if name in self.names else None
        return "" if is_null(value) else str(value)

    def number(self, name: str, metres: float) -> Optional[float]:
        text = self.text(name).strip()
        try:
            value = float(text) if text else None
        except ValueError:
            value = float("nan")
        if value is not None and not isfinite(value):
            raise QgsProcessingException(
                translate("hummock", "{where}: {value} in the column {name} is no number; correct it.").format(
                    where=self.where, value=text, name=name
                )
            )
        return None if value is None else value * metres


def _drawn(geometry: QgsGeometry, columns: _Columns, crs: Any, per_z: float) -> List[Drawn]:
    if geometry.isNull():
        return []
    plan, rise = metres_per_unit(crs), metres_per_height_unit(crs)
    inside = geometry.pointOnSurface().asPoint()
    height, difference = columns.number("height", rise), columns.number("difference", rise)
    is_point = QgsWkbTypes.geometryType(geometry.wkbType()) == POINT_GEOMETRY
    parts = [np.array([[v.x(), v.y(), v.z()]]) for v in geometry.vertices()] if is_point else parts_of(geometry, True)
    found = []
    for xyz in parts:
        if not len(xyz) or not np.isfinite(xyz[:, :2]).all():
            continue
        places = tuple((float(x), float(y)) for x, y in (xyz[:, :2] * plan).tolist())
        z = float(xyz[0, 2]) * per_z
        own = height if height is not None else (z if is_point and isfinite(z) else None)
        middle = (inside.x() * plan, inside.y() * plan)
        found.append(Drawn(places, middle, own, difference, columns.text("note"), columns.where))
    return found


# What became of them


def edit_fields() -> QgsFields:
    return fields_of(
        (("number", "whole"), ("edit", "text"), ("applied", "truth"), ("text", "text"), ("note", "text"))
    )  # fmt: skip


def write_edit_report(edits: Sequence[Edit], told: EditReport, crs: Any, sink: QgsFeatureSink) -> None:
    """Put a point for each edit into ``sink``: its number, kind, whether it applied, and what is to say about it."""
    texts = {message.values["number"]: say(message) for message in told.messages}
    applied = set(told.applied)
    for number, edit in enumerate(edits, start=1):
        x, y = to_crs_units(np.array(_place_of(edit)), crs).tolist()
        attributes = [number, kind_of(edit), number in applied, texts.get(number, ""), edit.note]
        add_feature(sink, QgsGeometry(QgsPoint(x, y)), attributes)


def _place_of(edit: Edit) -> Place:
    """A place by which an edit is found on the map."""
    place: Optional[Place] = getattr(edit, "place", None)
    if place is not None:
        return place
    places = next(getattr(edit, name) for name in ("ends", "corners", "line", "polygon") if getattr(edit, name, None))
    middle = np.mean(np.array(places), axis=0)
    return float(middle[0]), float(middle[1])
