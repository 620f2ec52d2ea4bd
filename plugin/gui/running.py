"""A tool of the desk run in QGIS: the layers of its last run make room, its products are loaded."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List

from qgis.core import (
    QgsLayerTreeGroup,
    QgsMapLayer,
    QgsMeshLayer,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProject,
    QgsRasterLayer,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtWidgets import QApplication, QProgressBar

from ..core.messages import SurveyError
from ..processing.algorithm import tell
from .jobmap import source_file
from .steps import PLAN
from .toolbook import ToolBook

translate = QCoreApplication.translate


class DeskFeedback(QgsProcessingFeedback):
    """Shows progress on the desk and keeps its window alive meanwhile."""

    def __init__(self, bar: QProgressBar) -> None:
        super().__init__(False)
        self.bar = bar
        self.progressChanged.connect(self._show)

    def _show(self, progress: float) -> None:
        self.bar.setValue(int(progress))
        QApplication.processEvents()


class StepFailed(Exception):
    """A step that gave no result; its text says why."""


def run_tool(book: ToolBook, key: str, feedback: QgsProcessingFeedback) -> None:
    """Run the tool with its parameters, load what it makes and write it down. Raises StepFailed."""
    try:
        results = _run(book, key, book.parameters(key), feedback)
    except (QgsProcessingException, SurveyError, OSError) as error:
        said = tell(error.message) if isinstance(error, SurveyError) else str(error)
        book.entries[key].failure = said
        raise StepFailed(said) from None
    if not results:
        raise StepFailed(translate("hummock", "Cancelled."))
    book.record(key, book.entries[key].options, results)


def _run(book: ToolBook, key: str, parameters: Dict[str, Any], feedback: QgsProcessingFeedback) -> Dict[str, Any]:
    import processing  # QGIS's Processing plugin, which may load after this one

    project = QgsProject.instance()
    own = {Path(book.product(key, name).split("|")[0]) for name in book.tools[key].products}
    project.removeMapLayers([one.id() for one in project.mapLayers().values() if source_file(one) in own])
    before = set(project.mapLayers())
    results = processing.runAndLoadResults(f"hummock:{book.tools[key].algorithm}", parameters, feedback=feedback)
    new = [layer for layer in project.mapLayers().values() if layer.id() not in before]
    _put_below(new)
    if key == PLAN:
        _keep_for_paper(new)
    return dict(results)


def _keep_for_paper(layers: List[QgsMapLayer]) -> None:
    """The plan's own layers are for its layout; on the map the job's layers show the same already."""
    root = QgsProject.instance().layerTreeRoot()
    for layer in layers:
        node = root.findLayer(layer.id())
        if node is not None and isinstance(node.parent(), QgsLayerTreeGroup) and node.parent() is not root:
            node.parent().setItemVisibilityChecked(False)
            node.parent().setExpanded(False)


def _put_below(layers: List[QgsMapLayer]) -> None:
    """Surfaces go below everything else, so that they hide nothing."""
    root = QgsProject.instance().layerTreeRoot()
    for layer in layers:
        node = root.findLayer(layer.id())
        if node is not None and isinstance(layer, (QgsMeshLayer, QgsRasterLayer)):
            root.addChildNode(node.clone())
            node.parent().removeChildNode(node)
