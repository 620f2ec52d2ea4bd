"""How depths of cut and fill, of water, and regions look when QGIS loads them.

Colours: ColorBrewer's diverging PuOr for cut and fill, its Blues for water, which it marks as safe for colour-blind
readers.
"""

from __future__ import annotations

from typing import Callable, Sequence, Tuple

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsColorRampShader,
    QgsFillSymbol,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProcessingContext,
    QgsRasterLayer,
    QgsRasterShader,
    QgsRendererCategory,
    QgsSingleBandPseudoColorRenderer,
    QgsSingleSymbolRenderer,
    QgsSymbol,
    QgsTextBufferSettings,
    QgsTextFormat,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QColor

from ..core.report.depth_colours import depth_colour, water_colour
from .localnumbers import units_told
from .styles import dress_layer
from .versions import DISCRETE

translate = QCoreApplication.translate


def dress_depths(
    context: QgsProcessingContext,
    destination: str,
    labels: Sequence[Tuple[int, str]],
    classes: int,
    water: bool = False,
) -> None:
    """Colour the polygons of ``destination`` by their class of depth if QGIS is going to load it.

    ``labels``: class number and its text. ``classes``: on each side of 0. ``water``: blues, for depths of water.
    """

    def dress(layer: QgsVectorLayer) -> None:
        categories = []
        for number, label in labels:
            colour = water_colour(number, classes) if water else depth_colour(number, classes)
            symbol = QgsFillSymbol.createSimple({"color": colour, "outline_color": colour, "outline_width": "0.1"})
            categories.append(QgsRendererCategory(number, symbol, label))
        layer.setRenderer(QgsCategorizedSymbolRenderer("class", categories))

    dress_layer(context, destination, dress, None)


def dress_depth_raster(
    context: QgsProcessingContext, destination: str, labels: Sequence[Tuple[float, str, int]], classes: int
) -> None:
    """Colour the raster ``destination`` by classes of depth if QGIS is going to load it.

    ``labels``: greatest depth of each class in the raster's unit, rising, its text and number.
    """

    def dress(layer: QgsRasterLayer) -> None:
        low, high = labels[0][0] - 1.0, labels[-1][0]
        shader = QgsColorRampShader(low, high, None, DISCRETE)
        shader.setColorRampItemList(
            [
                QgsColorRampShader.ColorRampItem(most, QColor(depth_colour(number, classes)), text)
                for most, text, number in labels
            ]
        )
        renderer = QgsSingleBandPseudoColorRenderer(layer.dataProvider(), 1)
        renderer.setShader(QgsRasterShader())
        renderer.shader().setRasterShaderFunction(shader)
        layer.setRenderer(renderer)

    dress_layer(context, destination, dress, translate("hummock", "Depth of cut and fill"))


def dress_regions(context: QgsProcessingContext, destination: str, expression: str) -> None:
    """Outlines of regions with a text if QGIS is going to load ``destination``.

    ``expression``: of volumes in m³, each with ``{factor}`` behind it, and ``{unit}``: that of the site.
    """
    factor, unit, _ = units_told().instead_of("m³")
    expression = expression.format(factor="" if factor == 1.0 else f" * {factor!r}", unit=unit)
    style = {"style": "no", "outline_color": "#01665e", "outline_width": "0.6"}
    _dress_with_text(context, destination, lambda: QgsFillSymbol.createSimple(style), expression)


def dress_places(context: QgsProcessingContext, destination: str, expression: str) -> None:
    """Marks of places with a text if QGIS is going to load ``destination``."""
    style = {"name": "triangle", "color": "#08519c", "outline_color": "#ffffff", "size": "3.2"}
    _dress_with_text(context, destination, lambda: QgsMarkerSymbol.createSimple(style), expression)


def _dress_with_text(
    context: QgsProcessingContext, destination: str, symbol: Callable[[], QgsSymbol], expression: str
) -> None:
    def dress(layer: QgsVectorLayer) -> None:
        layer.setRenderer(QgsSingleSymbolRenderer(symbol()))
        settings = QgsPalLayerSettings()
        settings.fieldName, settings.isExpression = expression, True
        text = QgsTextFormat()
        text.setSize(8)
        halo = QgsTextBufferSettings()
        halo.setEnabled(True)
        halo.setSize(0.8)
        text.setBuffer(halo)
        settings.setFormat(text)
        layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
        layer.setLabelsEnabled(True)

    dress_layer(context, destination, dress, None)
