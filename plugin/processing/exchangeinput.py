"""What the algorithms share that hand files over: surfaces, lines and alignments from layers."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsFeatureSource,
    QgsMeshLayer,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.line import Alignment, make_alignment
from ..core.georeference.crs import plan_unit
from ..core.linework.constraints import ConstraintLine, LineKind
from ..core.linework.drawn import constraints_from_rows
from ..core.points.pointset import PointSet
from ..core.progress import Progress
from ..core.surface.tin import Tin
from ..core.units import metres_per_unit
from .algorithm import HummockAlgorithm, report
from .drawnsource import parts_of, read_kept_lines
from .parameters import optional_source, qgis_crs
from .pointlayer import read_points_layer
from .pointsource import chosen_columns
from .sinks import counted
from .surfaceinput import SurfaceAlgorithm, same_crs
from .versions import is_null

translate = QCoreApplication.translate


class HandoverAlgorithm(SurfaceAlgorithm):
    """An algorithm of the group of files that are handed over."""

    GROUP_ID = "handover"

    def group(self) -> str:
        return handover_group()


def handover_group() -> str:
    return translate("hummock", "Hand-over")


def surface_title(algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext) -> str:
    """What to call the surface INPUT: the name of its file."""
    layer = algorithm.parameterAsMeshLayer(parameters, "INPUT", context)
    path = layer.source() if layer is not None else algorithm.parameterAsString(parameters, "INPUT", context)
    return Path(path).stem


def more_surfaces(
    algorithm: SurfaceAlgorithm, parameters: Dict[str, Any], name: str, tin: Tin, context: QgsProcessingContext
) -> List[Tuple[str, Tin]]:
    """The mesh layers of a list, by name; in the CRS of ``tin``. Raises SurveyError and QgsProcessingException."""
    found = []
    for layer in algorithm.parameterAsLayerList(parameters, name, context) or []:
        if not isinstance(layer, QgsMeshLayer):
            continue
        made = algorithm.read_mesh(layer, layer.source(), parameters, context)
        if qgis_crs(made.crs) != qgis_crs(tin.crs):
            said = translate("hummock", "{layer}: its CRS is {crs}, that of the first surface {other}.")
            own, first = (qgis_crs(each.crs).authid() or "?" for each in (made, tin))
            raise QgsProcessingException(said.format(layer=layer.name(), crs=own, other=first))
        found.append((Path(layer.source()).stem, made))
    return found


def points_to_hand_over(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    tin: Tin,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> Optional[PointSet]:
    """The points of the layer POINTS that are not rejected, None where none is given."""
    source = optional_source(algorithm, parameters, "POINTS", context)
    if source is None:
        return None
    label = source.sourceName() or "POINTS"
    same_crs(source, tin, label)
    columns = chosen_columns(algorithm, parameters, context, source)
    points = read_points_layer(source, columns, label, feedback, progress, keep_without_height=True)
    rejected = len(points) - int(points.used.sum())
    if rejected:
        said = translate("hummock", "{layer}: rejected points that are not handed over: {count}.")
        feedback.pushInfo(said.format(layer=label, count=rejected))
    return points.select(points.used)


def drawn_lines(
    source: QgsFeatureSource,
    kind: LineKind,
    tin: Tin,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> Tuple[ConstraintLine, ...]:
    """The lines of a layer that are of ``kind``: all, unless a column says otherwise. In the CRS of ``tin``."""
    rows = read_kept_lines(source, kind, tin.crs, context, feedback, progress)
    own = [row for row in rows if row.kind == kind]
    if len(own) < len(rows):
        text = translate("hummock", "{layer}: lines of another kind left out: {count}")
        feedback.pushWarning(text.format(layer=source.sourceName(), count=len(rows) - len(own)))
    drawn = constraints_from_rows(own)
    report(drawn.messages, feedback)
    return drawn.constraints.lines


def lines_with_stations(
    source: QgsFeatureSource, tin: Tin, start: float, feedback: QgsProcessingFeedback, progress: Progress
) -> List[Alignment]:
    """The lines of a layer in the CRS of ``tin`` as alignments, each part one; stations in the unit of the CRS.

    A field “name” names them. Raises SurveyError for a line without length or one that doubles back.
    """
    label = source.sourceName() or translate("hummock", "line")
    same_crs(source, tin, label)
    metres, found = metres_per_unit(tin.crs), []
    named = "name" in [field.name() for field in source.fields()]
    for feature in counted(source.getFeatures(), source.featureCount(), progress):
        own = feature["name"] if named else None
        name = f"{label} {feature.id()}" if own is None or is_null(own) else str(own)
        parts = [] if feature.geometry().isNull() else parts_of(feature.geometry(), False)
        for number, xyz in enumerate(parts):
            title = name if number == 0 else f"{name} ({number + 1})"
            line = make_alignment(np.asarray(xyz)[:, :2] * metres, title, start, (), plan_unit(tin.crs))
            report(line.messages, feedback)
            found.append(line)
    return found
