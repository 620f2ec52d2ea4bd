"""How Hummock's outputs look when QGIS loads them.

Vector styles are QML files in ``styles/``. Colours are colour-blind-safe schemes of ColorBrewer: RdYlBu for
the status of points, PuOr for lines, the brown of BrBG, which is that of contours on printed maps, for
contours, and the light end of YlGn, on which they stand out, for heights.
"""

from __future__ import annotations

from pathlib import Path
from typing import Callable, List, Optional

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsColorRampShader,
    QgsCoordinateReferenceSystem,
    QgsGradientColorRamp,
    QgsGradientStop,
    QgsMapLayer,
    QgsMeshDatasetIndex,
    QgsMeshLayer,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingLayerPostProcessorInterface,
    QgsRuleBasedRenderer,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QColor

from ..core.messages import QT_TRANSLATE_NOOP
from .versions import EQUAL_INTERVAL, INTERPOLATED, MESH_HINT

FOLDER = Path(__file__).resolve().parent.parent / "styles"

POINTS = "points.qml"
CONTOURS = "contours.qml"
LINES = "lines.qml"
TRIANGLES = "triangles.qml"

#: The three light ones of ColorBrewer's YlGn in five classes, from low (green) to high (pale yellow).
HEIGHT_COLOURS = ("#78c679", "#c2e699", "#ffffcc")

#: The legend texts of the QML files, which QGIS itself does not translate.
LEGEND_TEXTS = (
    QT_TRANSLATE_NOOP("hummock", "Used"),
    QT_TRANSLATE_NOOP("hummock", "Flagged (used)"),
    QT_TRANSLATE_NOOP("hummock", "Rejected (not in the surface)"),
    QT_TRANSLATE_NOOP("hummock", "Index contour"),
    QT_TRANSLATE_NOOP("hummock", "Contour"),
    QT_TRANSLATE_NOOP("hummock", "Index depression contour"),
    QT_TRANSLATE_NOOP("hummock", "Depression contour"),
    QT_TRANSLATE_NOOP("hummock", "Breakline"),
    QT_TRANSLATE_NOOP("hummock", "Boundary"),
    QT_TRANSLATE_NOOP("hummock", "Void"),
)

translate = QCoreApplication.translate


class Dressing(QgsProcessingLayerPostProcessorInterface):
    """Runs ``dress(layer)`` once QGIS has loaded an output, and gives the layer its name."""

    def __init__(self, dress: Callable[[QgsMapLayer], None], name: Optional[str]) -> None:
        super().__init__()
        self.dress = dress
        self.name = name
        self.done = False

    def postProcessLayer(
        self, layer: QgsMapLayer, context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> None:
        if self.name:
            layer.setName(self.name)
        self.dress(layer)
        layer.triggerRepaint()
        self.done = True


#: QGIS keeps no reference to a Python object, so those that wait for their layer are kept here.
_waiting: List[Dressing] = []


def dress_vector(context: QgsProcessingContext, destination: str, qml: str, name: Optional[str] = None) -> None:
    """Style the output ``destination`` by ``qml`` if QGIS is going to load it."""
    _dress(context, destination, lambda layer: apply_qml(layer, qml), name)


def load_mesh(
    context: QgsProcessingContext, path: str, output: str, name: str, crs: QgsCoordinateReferenceSystem
) -> None:
    """Have QGIS load the mesh file ``path``, with its CRS and coloured by height."""

    def dress(layer: QgsMeshLayer) -> None:
        layer.setCrs(crs)
        colour_heights(layer)

    details = QgsProcessingContext.LayerDetails(name, context.project(), output, MESH_HINT)
    context.addLayerToLoadOnCompletion(path, details)
    _dress(context, path, dress, name)


def _dress(
    context: QgsProcessingContext, destination: str, dress: Callable[[QgsMapLayer], None], name: Optional[str]
) -> None:
    _waiting[:] = [other for other in _waiting if not other.done]
    if context.willLoadLayerOnCompletion(destination):
        dressing = Dressing(dress, name)
        _waiting.append(dressing)
        context.layerToLoadOnCompletionDetails(destination).setPostProcessor(dressing)


def apply_qml(layer: QgsVectorLayer, qml: str) -> None:
    """Give the layer the style of a file in ``styles/``, its legend in QGIS's language."""
    layer.loadNamedStyle(str(FOLDER / qml))
    renderer = layer.renderer()
    if isinstance(renderer, QgsCategorizedSymbolRenderer):
        for i, category in enumerate(renderer.categories()):
            renderer.updateCategoryLabel(i, translate("hummock", category.label()))
    elif isinstance(renderer, QgsRuleBasedRenderer):
        for rule in renderer.rootRule().children():
            rule.setLabel(translate("hummock", rule.label()))


def colour_heights(layer: QgsMeshLayer) -> None:
    """Colour the heights of a mesh layer from low to high."""
    index = QgsMeshDatasetIndex(0, 0)
    group = layer.datasetGroupMetadata(index)
    low, high = group.minimum(), group.maximum()
    if not low < high:  # level ground still needs a range to be drawn
        low, high = low - 0.5, high + 0.5
    shader = QgsColorRampShader(low, high, height_ramp(), INTERPOLATED)
    shader.setClassificationMode(EQUAL_INTERVAL)
    shader.classifyColorRamp(9)
    settings = layer.rendererSettings()
    scalar = settings.scalarSettings(0)
    scalar.setClassificationMinimumMaximum(low, high)
    scalar.setColorRampShader(shader)
    settings.setScalarSettings(0, scalar)
    settings.setActiveScalarDatasetGroup(0)
    layer.setRendererSettings(settings)


def height_ramp() -> QgsGradientColorRamp:
    """The colours of heights."""
    inner: List[QgsGradientStop] = [
        QgsGradientStop(i / (len(HEIGHT_COLOURS) - 1), QColor(colour))
        for i, colour in enumerate(HEIGHT_COLOURS[1:-1], start=1)
    ]
    return QgsGradientColorRamp(QColor(HEIGHT_COLOURS[0]), QColor(HEIGHT_COLOURS[-1]), False, inner)
