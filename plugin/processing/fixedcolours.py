"""Fixed colours where QGIS would pick them at random, so that the same layer looks the same in every run."""

from __future__ import annotations

from qgis.core import (
    QgsProcessingContext,
    QgsRenderContext,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsVectorLayer,
)
from qgis.PyQt.QtGui import QColor

INK = "#252525"

_DARKER = 140  # per cent; what QGIS itself takes for the outline of its symbols in profiles


def has_own_look(layer: QgsVectorLayer, context: QgsProcessingContext) -> bool:
    """Whether the look of the layer was chosen: it is one of the project, or a style is saved with its data.

    Such a style is applied to the layer.
    """
    project = context.project()
    if project is not None and project.mapLayer(layer.id()) is not None:
        return True
    _, found = layer.loadDefaultStyle()
    return bool(found)


def has_chance_look(layer: QgsVectorLayer, context: QgsProcessingContext) -> bool:
    """Whether Processing loaded the layer from a file without a style, so that QGIS picked its colours."""
    return context.temporaryLayerStore().mapLayer(layer.id()) is not None and not has_own_look(layer, context)


def dress_plainly(layer: QgsVectorLayer) -> None:
    """QGIS's plain symbol for the geometry of the layer, in ink."""
    symbol = QgsSymbol.defaultSymbol(layer.geometryType())
    if symbol is not None:  # a table has none
        symbol.setColor(QColor(INK))
        layer.setRenderer(QgsSingleSymbolRenderer(symbol))
    fix_profile(layer)


def fix_profile(layer: QgsVectorLayer) -> None:
    """Draw the layer in elevation profiles in the colour of its first symbol; QGIS before 3.26 has no such symbols."""
    elevation = layer.elevationProperties()
    if not hasattr(elevation, "setProfileLineSymbol"):
        return
    renderer = layer.renderer()
    symbols = renderer.symbols(QgsRenderContext()) if renderer is not None else []
    colour = symbols[0].color() if symbols else QColor(INK)
    line, fill, marker = (
        symbol.clone()
        for symbol in (elevation.profileLineSymbol(), elevation.profileFillSymbol(), elevation.profileMarkerSymbol())
    )
    for symbol in (line, fill, marker):
        symbol.setColor(colour)
    for symbol in (fill, marker):
        symbol.symbolLayer(0).setStrokeColor(colour.darker(_DARKER))
    elevation.setProfileLineSymbol(line)
    elevation.setProfileFillSymbol(fill)
    elevation.setProfileMarkerSymbol(marker)
