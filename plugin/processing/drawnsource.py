"""What is drawn in a layer, brought into the CRS of a surface, in metres.

Coordinates of a layer, heights included, are in the units of its CRS; those of the core are in metres.
"""

from __future__ import annotations

from typing import Any, Iterator, List, Tuple

import numpy as np
from pyproj import CRS
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsFeature,
    QgsFeatureRequest,
    QgsFeatureSource,
    QgsGeometry,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsVertexId,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.operations import DONE, OF_FILE, UNKNOWN_ACCURACY, plain_name
from ..core.linework.constraints import LineKind
from ..core.linework.drawn import DrawnRow, told_of_heights
from ..core.messages import message
from ..core.progress import Progress, silent
from ..core.units import metres_per_height_unit, metres_per_unit
from .algorithm import say, tell
from .layers import kind_word
from .parameters import crs_text, qgis_crs
from .sinks import counted
from .versions import is_null

translate = QCoreApplication.translate

LINE_KINDS = {kind_word(kind): kind for kind in (LineKind.BREAKLINE, LineKind.BOUNDARY, LineKind.VOID)}


def request_in(
    crs: QgsCoordinateReferenceSystem,
    source: QgsFeatureSource,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> QgsFeatureRequest:
    """Asks for the features of ``source`` in ``crs``; the log names the operation that brings them there."""
    transform = QgsCoordinateTransform(source.sourceCrs(), crs, context.transformContext())
    if transform.isValid() and not transform.isShortCircuited():
        operation = transform.instantiatedCoordinateOperationDetails()
        name = plain_name(operation.name) or operation.proj
        done = message(
            DONE,
            source=source.sourceCrs().userFriendlyIdentifier(),
            target=crs.userFriendlyIdentifier(),
            name=name,
            accuracy=f"{operation.accuracy:g} m" if operation.accuracy >= 0 else UNKNOWN_ACCURACY,
        )
        tell = feedback.pushWarning if "ballpark" in name.lower() else feedback.pushInfo
        tell(say(message(OF_FILE, file=source.sourceName(), said=done)))
    return QgsFeatureRequest().setDestinationCrs(crs, context.transformContext())


def metres_per_z(source: QgsFeatureSource, crs: Any) -> float:
    """Metres in one unit of the Z of ``source``: that of its own CRS, as QGIS brings only plan into another one.

    Metres of degrees; the unit of ``crs`` where the layer has no CRS.
    """
    own = source.sourceCrs()
    if not own.isValid():
        return metres_per_height_unit(crs)
    told = CRS.from_user_input(crs_text(own))
    return 1.0 if told.is_geographic and len(told.axis_info) < 3 else metres_per_height_unit(told)


def drawn_parts(
    source: QgsFeatureSource,
    crs: Any,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress = silent,
    heights: bool = True,
    check: bool = True,
) -> Iterator[Tuple[QgsFeature, List[np.ndarray]]]:
    """Each feature with its points, lines or rings (k, 3) in metres of ``crs``; none for one without geometry.

    Without ``heights``, or where the layer has none, heights are nan. ``check``: whether geometries that are not valid
    are treated as the user wants it in Processing, or taken as they are.
    """
    request = request_in(qgis_crs(crs), source, context, feedback)
    if not check:
        request.setInvalidGeometryCheck(QgsFeatureRequest.InvalidGeometryCheck.GeometryNoCheck)
    scale = [metres_per_unit(crs)] * 2 + [metres_per_z(source, crs)]
    for feature in counted(source.getFeatures(request), source.featureCount(), progress):
        parts = [] if feature.geometry().isNull() else parts_of(feature.geometry(), heights)
        yield feature, [part * scale for part in parts]


def read_drawn(
    source: QgsFeatureSource,
    kind: LineKind,
    label: str,
    crs: Any,
    heights: bool,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> List[DrawnRow]:
    """The features of a line or polygon layer, brought into the CRS ``crs``, in metres.

    Curves become chords. Without ``heights``, or where the layer has none, heights are nan: the surface
    around gives them.
    """
    rows = [
        DrawnRow(kind, parts, f"{label} {feature.id()}")
        for feature, parts in drawn_parts(source, crs, context, feedback, progress, heights)
    ]
    for said in told_of_heights(rows, label):
        feedback.pushWarning(tell(said))
    return rows


def read_kept_lines(
    source: QgsFeatureSource,
    kind: LineKind,
    crs: Any,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> List[DrawnRow]:
    """The features of a layer with the kind and label that its columns give, as the layer of a surface's lines has
    them; else as ``kind``, called after the layer. In the CRS ``crs``, in metres.
    """
    names, rows = source.fields().names(), []
    title = source.sourceName() or kind.name or ""
    for feature, parts in drawn_parts(source, crs, context, feedback, progress):
        word, label = (
            "" if name not in names or is_null(feature[name]) else str(feature[name]) for name in ("kind", "label")
        )
        own = LINE_KINDS.get(word.strip().lower(), kind)
        rows.append(DrawnRow(own, parts, label or f"{title} {feature.id()}"))
    for said in told_of_heights(rows, title):
        feedback.pushWarning(tell(said))
    return rows


def parts_of(geometry: QgsGeometry, heights: bool) -> List[np.ndarray]:
    """Each line, or ring of a polygon, as (k, 3), height nan where there is none."""
    flat = geometry.constGet().segmentize()
    with_z = heights and QgsWkbTypes.hasZ(flat.wkbType())
    parts = []
    for part in range(flat.partCount()):
        for ring in range(flat.ringCount(part)):
            places = [flat.vertexAt(QgsVertexId(part, ring, i)) for i in range(flat.vertexCount(part, ring))]
            xyz = [(place.x(), place.y(), place.z() if with_z else np.nan) for place in places]
            parts.append(np.array(xyz, float).reshape(-1, 3))
    return parts
