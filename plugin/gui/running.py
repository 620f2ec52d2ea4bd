"""A step of the desk run in QGIS: the layers of its last run make room, its products are loaded, decisions are kept."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsMapLayer,
    QgsMeshLayer,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProject,
    QgsRasterLayer,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.messages import SurveyError
from ..core.quality.overrides import CHECK_REASON, CHECK_STATUS, changed_by_hand, write_decisions
from ..processing.algorithm import tell
from .jobbook import JobBook
from .steps import DECISIONS

translate = QCoreApplication.translate

#: Steps that start from the survey file and so need the decisions taken on checked points.
_FROM_FILE = ("points", "report")


class StepFailed(Exception):
    """A step that gave no result; its text says why."""


def run_step(book: JobBook, key: str, feedback: QgsProcessingFeedback) -> None:
    """Run the step with its parameters, load what it makes and write it down. Raises StepFailed."""
    parameters = book.parameters(key)
    try:
        if key in _FROM_FILE:
            parameters.update(_decisions(book))
        Path(book.settings["folder"]).mkdir(parents=True, exist_ok=True)
        results = _run(book, key, parameters, feedback)
    except (QgsProcessingException, SurveyError, OSError) as error:
        said = tell(error.message) if isinstance(error, SurveyError) else str(error)
        book.record_failure(key, said)
        raise StepFailed(said) from None
    if not results:
        raise StepFailed(translate("hummock", "Cancelled."))
    book.record(key, book.entries[key].options, results)


def _run(book: JobBook, key: str, parameters: Dict[str, Any], feedback: QgsProcessingFeedback) -> Dict[str, Any]:
    import processing  # QGIS's Processing plugin, which may load after this one

    project = QgsProject.instance()
    own = {_file_of(book.product(key, name)) for name in book.steps[key].products}
    project.removeMapLayers([one.id() for one in project.mapLayers().values() if _file_of(one.source()) in own])
    before = set(project.mapLayers())
    results = processing.runAndLoadResults(f"hummock:{book.steps[key].algorithm}", parameters, feedback=feedback)
    _put_below([layer for layer in project.mapLayers().values() if layer.id() not in before])
    return dict(results)


def _put_below(layers: List[QgsMapLayer]) -> None:
    """Surfaces go below everything else, so that they hide nothing."""
    root = QgsProject.instance().layerTreeRoot()
    for layer in layers:
        node = root.findLayer(layer.id())
        if node is not None and isinstance(layer, (QgsMeshLayer, QgsRasterLayer)):
            root.addChildNode(node.clone())
            node.parent().removeChildNode(node)


def _file_of(source: str) -> Path:
    return Path(source.split("|")[0])


# Decisions taken in the layer of checked points


def _decisions(book: JobBook) -> Dict[str, str]:
    """The parameter that brings them, in a file of the job; nothing where none were taken."""
    layer = checked_layer(book)
    if layer is None:
        return {}
    names = layer.fields().names()
    if "line" not in names or CHECK_STATUS not in names:
        return {}
    wanted = [name for name in ("line", "status", "reason", CHECK_STATUS, CHECK_REASON, "source") if name in names]
    columns: Dict[str, List[Any]] = {name: [] for name in wanted}
    for feature in layer.getFeatures():
        for name in wanted:
            columns[name].append(feature[name])
    taken = changed_by_hand(columns, layer.name())
    if len(taken) == 0:
        return {}
    path = Path(book.settings["folder"]) / DECISIONS
    write_decisions(taken, path)
    return {"DECISIONS": str(path)}


def checked_layer(book: JobBook) -> Optional[QgsVectorLayer]:
    """The layer of checked points: as it is in the project, or from its file."""
    path = book.product("check")
    if not book.entries["check"].run or not _file_of(path).exists():
        return None
    for layer in QgsProject.instance().mapLayers().values():
        if isinstance(layer, QgsVectorLayer) and _file_of(layer.source()) == _file_of(path):
            return layer
    layer = QgsVectorLayer(path, "checked", "ogr")
    return layer if layer.isValid() else None
