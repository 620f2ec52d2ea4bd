"""Lines that the points show, as QGIS features and from layers in which decisions were taken."""

from __future__ import annotations

from math import isfinite
from pathlib import Path
from typing import Any, List, Optional, Sequence

from qgis.core import (
    QgsFeatureSink,
    QgsFeatureSource,
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsMultiLineString,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)

from ..core.features.ground_lines import GroundLine
from ..core.handover.found_lines import FIELDS, GivenLines, attributes_of, given_line, in_crs_units
from ..core.messages import Message
from .drawnsource import drawn_parts
from .sinks import add_feature, fields_of
from .versions import is_null


def found_fields() -> QgsFields:
    return fields_of(FIELDS)


def write_found(lines: Sequence[GroundLine], crs: Any, sink: QgsFeatureSink) -> None:
    """Put ``lines`` into ``sink``, foot and top of a step as the two parts of a feature."""
    for number, line in enumerate(lines, start=1):
        geometry = QgsMultiLineString()
        for part in line.parts:
            geometry.addGeometry(QgsLineString([QgsPoint(*place) for place in in_crs_units(part, crs).tolist()]))
        values = [_known(value) for value in attributes_of(number, line).values()]
        add_feature(sink, QgsGeometry(geometry), values)


def _known(value: Any) -> Any:
    return None if isinstance(value, float) and not isfinite(value) else value


def read_found(
    source: QgsFeatureSource, label: str, crs: Any, context: QgsProcessingContext, feedback: QgsProcessingFeedback
) -> GivenLines:
    """The lines of a layer in metres of ``crs``, with the decisions taken in it. Raises SurveyError for words that are
    none and for lines without heights.
    """
    names = [field.name() for field in source.fields()]
    lines: List[GroundLine] = []
    messages: List[Message] = []
    for number, (feature, parts) in enumerate(drawn_parts(source, crs, context, feedback), start=1):
        parts = [part for part in parts if len(part) > 1]
        if not parts:
            continue
        values = {name.lower(): None if is_null(feature[name]) else feature[name] for name in names}
        line, said = given_line(label, number, values, parts)
        lines.append(line)
        messages += said
    return GivenLines(tuple(lines), tuple(messages))


def layer_to_replace(path: Optional[Path]) -> Optional[QgsVectorLayer]:
    """The layer of found lines in a file that is about to be written anew, as the project has it; None for others."""
    if path is None or not path.exists():
        return None
    for layer in QgsProject.instance().mapLayers().values():
        if isinstance(layer, QgsVectorLayer) and Path(layer.source().split("|")[0]) == path:
            break
    else:
        layer = QgsVectorLayer(str(path), path.stem, "ogr")
    names = [field.name() for field in layer.fields()] if layer.isValid() else []
    return layer if {"kind", "status", "found_as"} <= set(names) else None
