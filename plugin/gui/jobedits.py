"""What the user decides in the layers of a job goes into the file of the job, also while the desk is closed."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, Callable, List, Optional, Tuple

from qgis.core import (
    QgsMapLayer,
    QgsProcessingContext,
    QgsProcessingFeatureSource,
    QgsProcessingFeedback,
    QgsProject,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QObject

from ..core.georeference.crs import read_crs
from ..core.handover.found_lines import write_found_lines
from ..core.job.job_file import has_job, read_job, save_choices
from ..core.points.decided import PointRow, after_edit
from ..core.points.decisions import BY_CODE
from ..core.units import metres_per_unit
from ..processing.foundlayers import read_found
from ..processing.joblayers import FOUND_TABLE, GEOPACKAGE, POINT_TABLE
from ..processing.parameters import core_crs
from ..processing.versions import is_null
from .jobmap import source_file

#: Lines of the ground with the decisions taken on them, in the folder of the job.
DECIDED_LINES = "lines_decided.geojson"


class JobEdits(QObject):
    """Listens to the layers of a project. ``changed(folder)`` is called when a decision was written, ``drawn(layer)``
    when another layer was edited, which may be one of the lines of a job.
    """

    def __init__(self, changed: Callable[[Path], None], drawn: Callable[[QgsVectorLayer], None]) -> None:
        super().__init__()
        self.changed, self.drawn = changed, drawn
        project = QgsProject.instance()
        project.layersAdded.connect(self._watch)
        self._watch(list(project.mapLayers().values()))

    def stop(self) -> None:
        """Before the plugin goes."""
        QgsProject.instance().layersAdded.disconnect(self._watch)

    def _watch(self, layers: List[QgsMapLayer]) -> None:
        for layer in layers:
            if isinstance(layer, QgsVectorLayer):
                layer.afterCommitChanges.connect(self._edited)

    def _edited(self) -> None:
        layer = self.sender()
        if not isinstance(layer, QgsVectorLayer):
            return
        if table_of(layer) not in (POINT_TABLE, FOUND_TABLE):
            self.drawn(layer)
        elif take_up(layer, source_file(layer).parent):
            self.changed(source_file(layer).parent)


def table_of(layer: QgsMapLayer) -> str:
    """The table of a layer that belongs to a job; "" for all others."""
    file = source_file(layer)
    if file.name != GEOPACKAGE or not has_job(file.parent):
        return ""
    parts = [part for part in layer.source().split("|") if part.startswith("layername=")]
    return parts[0].partition("=")[2] if parts else ""


def take_up_all(folder: Path) -> bool:
    """Take up what was decided in the layers of a job by whatever program; whether there was anything new."""
    if not (folder / GEOPACKAGE).is_file():
        return False
    found = [
        QgsVectorLayer(f"{folder / GEOPACKAGE}|layername={name}", name, "ogr") for name in (POINT_TABLE, FOUND_TABLE)
    ]
    new = [take_up(layer, folder) for layer in found if layer.isValid()]
    return any(new)


def take_up(layer: QgsVectorLayer, folder: Path) -> bool:
    """Write the decisions of a layer into the file of the job; whether there was anything new."""
    settings = read_job(folder).settings
    if table_of(layer) == POINT_TABLE:
        now = after_edit(settings.decided, point_rows(layer))
        if now == settings.decided:
            return False
        save_choices(_with(settings, folder, decided=now))
        return True
    lines = decided_lines(layer, settings.crs)
    path = folder / DECIDED_LINES
    if lines is None or (not lines and settings.found_lines is None):
        return False
    before = path.read_bytes() if path.is_file() else b""
    write_found_lines(lines, read_crs(settings.crs), path)
    if path.read_bytes() == before:
        return False
    save_choices(_with(settings, folder, found_lines=path))
    return True


def _with(settings: Any, folder: Path, **changes: Any) -> Any:
    return replace(settings, out=folder, **changes)


def point_rows(layer: QgsVectorLayer) -> List[PointRow]:
    """The rows of a layer of points that say how the checks and the hand see them."""
    names = layer.fields().names()
    if not {"line", "status", "check_status"} <= set(names):
        return []

    def text(feature: Any, name: str) -> str:
        value = feature[name] if name in names else None
        return "" if is_null(value) else str(value).strip()

    metres = metres_per_unit(core_crs(layer.crs(), layer.name()) if layer.crs().isValid() else None)
    rows = []
    for feature in layer.getFeatures():
        if is_null(feature["line"]) or not text(feature, "status"):
            continue
        status, said = text(feature, "status").lower(), text(feature, "check_status").lower() or "used"
        reason, automatic = text(feature, "reason").lower(), text(feature, "check_reason").lower()
        if BY_CODE & (set(reason.split("+")) - set(automatic.split("+"))):
            continue  # its code says so, no hand
        own = "by_hand" if reason == automatic else reason
        name, file, place = text(feature, "name"), text(feature, "source"), _place(feature, metres)
        rows.append(PointRow(int(feature["line"]), name, file, status, own, said, *place))
    return rows


def _place(feature: Any, metres: float) -> Tuple[Optional[float], Optional[float]]:
    """Easting and northing of a point in metres, to the millimetre; ``metres`` in a unit of its layer."""
    if not feature.hasGeometry():
        return None, None
    point = feature.geometry().constGet()
    return round(point.x() * metres, 3), round(point.y() * metres, 3)


def decided_lines(layer: QgsVectorLayer, crs: Optional[str]) -> Any:
    """The lines of a layer that a hand has decided on; None where it has no lines."""
    if not layer.featureCount():
        return None
    context = QgsProcessingContext()
    source = QgsProcessingFeatureSource(layer, context)
    found = read_found(source, layer.name(), read_crs(crs), context, QgsProcessingFeedback())
    return [line for line in found.lines if line.by_hand]
