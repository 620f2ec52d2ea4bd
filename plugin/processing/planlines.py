"""The lines of a survey on its plan, each drawn as what it is."""

from __future__ import annotations

from typing import Any, List, NamedTuple, Sequence, Tuple

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsCoordinateReferenceSystem,
    QgsExpression,
    QgsExpressionContext,
    QgsExpressionContextUtils,
    QgsFields,
    QgsGeometry,
    QgsHashedLineSymbolLayer,
    QgsLineSymbol,
    QgsMarkerLineSymbolLayer,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsRendererCategory,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QColor

from ..core.features.found import FoundKind
from ..core.features.ground_lines import LineStatus
from ..core.handover.plan_symbols import LineSymbol, symbol_of
from ..core.linework.constraints import LineKind
from .drawnsource import LINE_KINDS, request_in
from .fixedcolours import fix_profile
from .sinks import add_feature, fields_of
from .versions import is_null

translate = QCoreApplication.translate

_FOUND = {kind.value for kind in FoundKind}
_TICK, _CROSS, _DOT = 1.2, 1.4, 0.8  # mm on paper


class PlanLine(NamedTuple):
    """A line in the CRS of the plan, its label, and the number of its symbol."""

    geometry: QgsGeometry
    label: str
    symbol: int


def gather_lines(
    layers: Sequence[QgsVectorLayer], crs: QgsCoordinateReferenceSystem, symbols: Sequence[LineSymbol],
    context: QgsProcessingContext, feedback: QgsProcessingFeedback,
) -> List[PlanLine]:  # fmt: skip
    """The lines of layers such as the surface's and those found without codes, of which the used ones are drawn."""
    result = []
    for layer in layers:
        names = set(layer.fields().names())
        for feature in layer.getFeatures(request_in(crs, layer, context, feedback)):
            word, status, label = (
                "" if name not in names or is_null(feature[name]) else str(feature[name])
                for name in ("kind", "status", "label")
            )
            if word in _FOUND:
                if status not in ("", LineStatus.USED.value):
                    continue
                label = word
            symbol = symbol_of(symbols, label, LINE_KINDS.get(word, LineKind.BREAKLINE))
            result += [PlanLine(part, label, symbol) for part in feature.geometry().asGeometryCollection()]
    return result


def gather_parcels(
    layer: QgsVectorLayer, crs: QgsCoordinateReferenceSystem, context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> List[Tuple[QgsGeometry, str]]:  # fmt: skip
    """Outlines in the CRS of the plan, and what the layer calls each."""
    named = QgsExpression(layer.displayExpression())
    around = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
    result = []
    for feature in layer.getFeatures(request_in(crs, layer, context, feedback)):
        geometry = QgsGeometry(feature.geometry())
        if not geometry.isEmpty():
            geometry.convertToMultiType()
            around.setFeature(feature)
            name = named.evaluate(around)
            result.append((geometry, "" if is_null(name) else str(name)))
    return result


def line_fields() -> QgsFields:
    return fields_of((("symbol", "text"), ("label", "text")))


def write_plan_lines(lines: Sequence[PlanLine], symbols: Sequence[LineSymbol], sink: Any) -> None:
    for line in lines:
        add_feature(sink, line.geometry, [symbols[line.symbol].name, line.label])


def dress_lines(layer: QgsVectorLayer, lines: Sequence[PlanLine], symbols: Sequence[LineSymbol]) -> None:
    """What is there in the order of the table; labels keep clear of it."""
    used = {line.symbol for line in lines}
    categories = [
        QgsRendererCategory(symbol.name, _drawn(symbol), translate("core", symbol.name))
        for number, symbol in enumerate(symbols)
        if number in used
    ]
    layer.setRenderer(QgsCategorizedSymbolRenderer("symbol", categories))
    settings = QgsPalLayerSettings()
    settings.drawLabels = False
    settings.fieldName = "label"
    around = settings.obstacleSettings()
    around.setIsObstacle(True)
    around.setFactor(0.5)
    settings.setObstacleSettings(around)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    fix_profile(layer)


def _drawn(symbol: LineSymbol) -> QgsLineSymbol:
    line: dict = {"color": symbol.colour, "width": f"{symbol.width:g}", "capstyle": "flat", "joinstyle": "round"}
    if symbol.dashes:
        line.update(use_custom_dash="1", customdash=";".join(f"{one:g}" for one in symbol.dashes))
    drawn = QgsLineSymbol.createSimple(line)
    if symbol.mark == "tick":
        drawn.appendSymbolLayer(_ticks(symbol))
    elif symbol.mark:
        drawn.appendSymbolLayer(_marks(symbol))
    return drawn


def _ticks(symbol: LineSymbol) -> QgsHashedLineSymbolLayer:
    """Short strokes to the right, where it falls from a line with the higher ground on its left."""
    ticks = QgsHashedLineSymbolLayer(True, symbol.every)
    ticks.setHashLength(_TICK)
    ticks.setOffset(_TICK / 2)
    stroke = QgsLineSymbol.createSimple({"color": symbol.colour, "width": f"{symbol.width:g}", "capstyle": "flat"})
    ticks.setSubSymbol(stroke)
    return ticks


def _marks(symbol: LineSymbol) -> QgsMarkerLineSymbolLayer:
    marks = QgsMarkerLineSymbolLayer(True, symbol.every)
    shape, size = ("cross2", _CROSS) if symbol.mark == "cross" else ("circle", _DOT)
    marker = QgsMarkerSymbol.createSimple(
        {"name": shape, "size": f"{size:g}", "color": symbol.colour, "outline_color": symbol.colour,
         "outline_width": f"{min(symbol.width, 0.2):g}"}
    )  # fmt: skip
    marker.setColor(QColor(symbol.colour))
    marks.setSubSymbol(marker)
    return marks
