"""How outputs along a line look: classes of slope, profiles in their plane, and the rest by QML files."""

from __future__ import annotations

from typing import Any, Callable, Optional, Sequence

from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsFields,
    QgsLineSymbol,
    QgsProcessingContext,
    QgsRendererCategory,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.messages import QT_TRANSLATE_NOOP
from ..core.surface.slopes import class_range
from .slopemap import range_label
from .styles import apply_qml, dress_layer, slope_colour

STATIONS = "stations.qml"
SECTIONS = "sections.qml"
SECTION_POINTS = "section_points.qml"
VERTICAL_CURVES = "vertical_curves.qml"
MEETINGS = "meetings.qml"
RESIDUALS = "residuals.qml"
LINE_CHECKS = "line_checks.qml"
KERB_FLOW = "kerb_flow.qml"
LOW_POINTS = "low_points.qml"

#: The legend texts of these QML files, which QGIS itself does not translate.
LEGEND_TEXTS = (
    QT_TRANSLATE_NOOP("hummock", "Pass"),
    QT_TRANSLATE_NOOP("hummock", "Fail"),
    QT_TRANSLATE_NOOP("hummock", "Too close to tell"),
    QT_TRANSLATE_NOOP("hummock", "No surface"),
    QT_TRANSLATE_NOOP("hummock", "Rule does not apply"),
    QT_TRANSLATE_NOOP("hummock", "Straight grade"),
    QT_TRANSLATE_NOOP("hummock", "Crest"),
    QT_TRANSLATE_NOOP("hummock", "Sag"),
    QT_TRANSLATE_NOOP("hummock", "To both edges"),
    QT_TRANSLATE_NOOP("hummock", "To the left edge"),
    QT_TRANSLATE_NOOP("hummock", "To the right edge"),
    QT_TRANSLATE_NOOP("hummock", "To neither edge"),
    QT_TRANSLATE_NOOP("hummock", "First surface"),
    QT_TRANSLATE_NOOP("hummock", "Second surface"),
    QT_TRANSLATE_NOOP("hummock", "Other surface"),
    QT_TRANSLATE_NOOP("hummock", "Surface above the fit"),
    QT_TRANSLATE_NOOP("hummock", "Surface below the fit"),
)

#: Colours and dashes (mm) of surfaces in a profile, as on the sheets.
SURFACES = (("#252525", ""), ("#e66101", "4;1.6"), ("#5e3c99", "1.6;1.2"), ("#01665e", "5;1.2;0.8;1.2"))

translate = QCoreApplication.translate


def dress_road(
    context: QgsProcessingContext,
    destination: str,
    fields: QgsFields,
    qml: str = "",
    renderer: Optional[Callable[[], Any]] = None,
) -> None:
    """Style an output by ``qml`` or by what ``renderer`` makes, and give its columns the aliases of ``fields``."""

    def dress(layer: QgsVectorLayer) -> None:
        if qml:
            apply_qml(layer, qml)
        if renderer is not None:
            layer.setRenderer(renderer())
        for own in fields:
            index = layer.fields().indexOf(own.name())
            if index >= 0 and own.alias():
                layer.setFieldAlias(index, own.alias())

    dress_layer(context, destination, dress)


def slope_line_renderer(limits: Sequence[float], offset: float) -> QgsCategorizedSymbolRenderer:
    """A colour and a width for each class of slope: steeper is darker and wider; ``offset``: mm to the right."""
    categories = []
    for number in range(len(limits) + 1):
        width = 1.2 + 1.2 * number / max(len(limits), 1)
        colour = slope_colour(number, len(limits) + 1).name()
        symbol = _cased(colour, width, offset)
        categories.append(QgsRendererCategory(number, symbol, range_label(*class_range(limits, number))))
    nothing = QgsLineSymbol.createSimple(
        {"line_color": "#969696", "line_width": "0.5", "line_style": "dot", "offset": f"{offset}"}
    )
    categories.append(QgsRendererCategory("", nothing, translate("hummock", "No surface")))
    return QgsCategorizedSymbolRenderer("class", categories)


def _cased(colour: str, width: float, offset: float) -> QgsLineSymbol:
    """A line with a thin dark casing, so that the palest class is seen on white."""
    own = {"capstyle": "flat", "joinstyle": "round", "offset": f"{offset}"}
    symbol = QgsLineSymbol.createSimple({"line_color": "#525252", "line_width": f"{width + 0.5}", **own})
    inner = QgsLineSymbol.createSimple({"line_color": colour, "line_width": f"{width}", **own})
    symbol.appendSymbolLayer(inner.symbolLayer(0).clone())
    return symbol


def surface_renderer(names: Sequence[str]) -> QgsCategorizedSymbolRenderer:
    """A colour and a dash for each surface of a profile."""
    categories = []
    for number, name in enumerate(names, 1):
        colour, dash = SURFACES[(number - 1) % len(SURFACES)]
        own = {"line_color": colour, "line_width": "0.5"}
        if dash:
            own.update(use_custom_dash="1", customdash=dash, capstyle="flat")
        categories.append(QgsRendererCategory(number, QgsLineSymbol.createSimple(own), name))
    return QgsCategorizedSymbolRenderer("number", categories)
