"""Layers of drawn lines as files of a job: in its CRS, beside its other files, with a word on what they were made from.

A job works without QGIS, so it takes lines drawn on the map from files; when their layer changes, the file is written
anew.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, List, Optional

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsJsonExporter,
    QgsMapLayer,
    QgsProcessingContext,
    QgsProcessingFeatureSource,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
    QgsWkbTypes,
)
from qgis.PyQt.QtGui import QTransform

from ..core.contours.geojson import crs_member
from ..core.files import make_folder, replace_file
from ..core.job.settings import EVERYWHERE, JobSettings
from ..core.units import metres_per_height_unit
from .drawnsource import metres_per_z, request_in
from .parameters import core_crs

#: The member of a file that names the source of the layer it was made from.
MADE_FROM = "made_from"
FIELDS = ("boundary", "breaklines", "soft_lines", "voids")
_PLAIN = (".geojson", ".json")
_DECIMALS = 6


def file_of_layer(chosen: Any, settings: JobSettings, field: str) -> Optional[Path]:
    """The file for what was chosen in a dialog: a layer of the project, the source of one, or nothing.

    A file of GeoJSON is taken itself; of any other layer its lines are written into the folder of the job. Raises
    SurveyError where that cannot be written.
    """
    layer = _layer_of(chosen)
    if layer is None:
        return None
    file = Path(layer.source().split("|")[0])
    if file.suffix.lower() in _PLAIN and file.is_file() and not layer.subsetString():
        return file
    path = Path(settings.out) / f"{field}.geojson"
    _write(layer, QgsCoordinateReferenceSystem(settings.crs), path)
    return path


def layer_shown(file: Optional[Path]) -> str:
    """What a dialog shows for a file: the layer it was made from, or itself; "" for none."""
    return "" if file is None else made_from(file) or str(file)


def made_from(file: Path) -> str:
    """The source of the layer that a file was made from; "" for a file of the user's own."""
    try:
        told = json.loads(file.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return ""
    return str(told.get(MADE_FROM, "")) if isinstance(told, dict) else ""


def write_anew(settings: JobSettings, layer: Optional[QgsMapLayer] = None) -> List[Path]:
    """Write the files anew whose layers may have changed, or those of one ``layer``; the files that changed by it.

    A layer that is gone leaves its file as it is. Raises SurveyError where a file cannot be written.
    """
    changed = []
    areas = [Path(visit.new_ground) for visit in settings.visits if visit.new_ground not in ("", EVERYWHERE)]
    for file in (*(getattr(settings, field) for field in FIELDS), *areas):
        source = "" if file is None else made_from(file)
        if not source or (layer is not None and layer.source() != source):
            continue
        found = _layer_of(source)
        before = file.read_bytes()
        if found is not None:
            _write(found, QgsCoordinateReferenceSystem(settings.crs), file)
        if file.read_bytes() != before:
            changed.append(file)
    return changed


def _layer_of(chosen: Any) -> Optional[QgsVectorLayer]:
    """The layer that is meant by a layer, its id or its source."""
    text = getattr(chosen, "source", chosen)  # a definition of a source with its choice of features
    text = text() if callable(text) else text
    text = getattr(text, "staticValue", lambda: text)()
    if not text:
        return None
    project = QgsProject.instance()
    known = project.mapLayer(str(text)) or next(
        (one for one in project.mapLayers().values() if one.source() == text), None
    )
    if known is not None:
        return known if isinstance(known, QgsVectorLayer) else None
    layer = QgsVectorLayer(str(text), Path(str(text).split("|")[0]).stem, "ogr")
    return layer if layer.isValid() else None


def _write(layer: QgsVectorLayer, crs: QgsCoordinateReferenceSystem, path: Path) -> None:
    context = QgsProcessingContext()
    context.setTransformContext(QgsProject.instance().transformContext())
    source = QgsProcessingFeatureSource(layer, context)
    told = geojson_of(source, layer.name(), crs, context, QgsProcessingFeedback())
    write_drawn({**told, MADE_FROM: layer.source()}, path)


def geojson_of(
    source: Any,
    label: str,
    crs: QgsCoordinateReferenceSystem,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> Any:
    """The features of ``source`` as GeoJSON in ``crs``, which it names, as a job reads them."""
    exporter = QgsJsonExporter()
    exporter.setTransformGeometries(False)
    exporter.setPrecision(_DECIMALS)
    request = request_in(crs, source, context, feedback)
    features = list(source.getFeatures(request))
    if crs.isValid():
        known = core_crs(crs, label)
        _scale_z(features, metres_per_z(source, known) / metres_per_height_unit(known))
    told = json.loads(exporter.exportFeatures(features))
    if crs.isValid():
        told["crs"] = crs_member(known)
    return told


def _scale_z(features: List[QgsFeature], factor: float) -> None:
    """Bring the heights of geometries into another unit."""
    for feature in features if factor != 1.0 else ():
        shape = feature.geometry()
        if not shape.isNull() and QgsWkbTypes.hasZ(shape.wkbType()):
            shape.get().transform(QTransform(), 0.0, factor)
            feature.setGeometry(shape)


def write_drawn(told: Any, path: Path) -> Path:
    """Write GeoJSON as a file of a job, as a whole. Raises SurveyError where that is not possible."""
    make_folder(path.parent)
    with replace_file(path) as temporary, open(temporary, "w", encoding="utf-8") as stream:
        json.dump(told, stream)
    return path
