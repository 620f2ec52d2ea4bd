"""How Hummock's outputs look when QGIS loads them.

Vector styles are QML files in ``styles/``. Colours are colour-blind-safe schemes of ColorBrewer: RdYlBu for
the status of points, PuOr for lines, the brown of BrBG, which is that of contours on printed maps, for
contours, and the light end of YlGn, on which they stand out, for heights. YlOrBr is for slopes, Dark2 for findings,
spot heights and edits. Cut and fill: ``depthstyles.py``.
"""

from __future__ import annotations

from pathlib import Path
from typing import Callable, Dict, List, Mapping, Optional, Sequence

from pyproj import CRS
from pyproj.exceptions import CRSError
from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsColorRampShader,
    QgsCoordinateReferenceSystem,
    QgsEditorWidgetSetup,
    QgsFields,
    QgsFillSymbol,
    QgsGradientColorRamp,
    QgsGradientStop,
    QgsLayerTreeLayer,
    QgsMapLayer,
    QgsMapLayerLegendUtils,
    QgsMeshDatasetIndex,
    QgsMeshLayer,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingLayerPostProcessorInterface,
    QgsProject,
    QgsRasterLayer,
    QgsRasterShader,
    QgsRendererCategory,
    QgsRuleBasedRenderer,
    QgsSingleBandPseudoColorRenderer,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication, QTimer
from qgis.PyQt.QtGui import QColor

from ..core.messages import QT_TRANSLATE_NOOP
from .fixedcolours import fix_profile
from .localnumbers import undo_units, use_units
from .maptips import (
    LINE_STATUSES,
    STATUSES,
    check_point_tip,
    circle_tip,
    finding_tip,
    found_line_tip,
    long_triangle_tip,
    place_tip,
    point_tip,
    walk_tip,
)
from .parameters import crs_text
from .versions import EQUAL_INTERVAL, INTERPOLATED, MESH_HINT

FOLDER = Path(__file__).resolve().parent.parent / "styles"

POINTS = "points.qml"
CONTOURS = "contours.qml"
LINES = "lines.qml"
TRIANGLES = "triangles.qml"
DRAPED = "draped.qml"
EDITS = "edits.qml"
FINDINGS = "findings.qml"
LABELS = "labels.qml"
SPOTS = "spots.qml"
SURVEY_FINDINGS = "survey_findings.qml"
CIRCLES = "circles.qml"
LONG_TRIANGLES = "long_triangles.qml"
PLACES = "places.qml"
CHECK_POINTS = "check_points.qml"
WALK = "walk.qml"
SETOUT = "setout.qml"
ZERO_LINE = "zero_line.qml"
DESIGN_LINES = "design_lines.qml"
FOUND_LINES = "found_lines.qml"

#: Styles whose map tips speak QGIS's language; the QML files hold one for the other styles.
TIPS: Dict[str, Callable[[], str]] = {
    POINTS: point_tip,
    SURVEY_FINDINGS: finding_tip,
    CIRCLES: circle_tip,
    LONG_TRIANGLES: long_triangle_tip,
    PLACES: place_tip,
    CHECK_POINTS: check_point_tip,
    WALK: walk_tip,
    FOUND_LINES: found_line_tip,
}

#: The three light ones of ColorBrewer's YlGn in five classes, from low (green) to high (pale yellow).
HEIGHT_COLOURS = ("#78c679", "#c2e699", "#ffffcc")

#: ColorBrewer's YlOrBr in seven classes, from level to steep.
SLOPE_COLOURS = ("#ffffd4", "#fee391", "#fec44f", "#fe9929", "#ec7014", "#cc4c02", "#8c2d04")

#: The legend texts of the QML files, which QGIS itself does not translate.
LEGEND_TEXTS = (
    QT_TRANSLATE_NOOP("hummock", "Used"),
    QT_TRANSLATE_NOOP("hummock", "Flagged"),
    QT_TRANSLATE_NOOP("hummock", "Rejected (not in the surface)"),
    QT_TRANSLATE_NOOP("hummock", "Index contour"),
    QT_TRANSLATE_NOOP("hummock", "Contour"),
    QT_TRANSLATE_NOOP("hummock", "Index depression contour"),
    QT_TRANSLATE_NOOP("hummock", "Depression contour"),
    QT_TRANSLATE_NOOP("hummock", "Centreline"),
    QT_TRANSLATE_NOOP("hummock", "Platform edge"),
    QT_TRANSLATE_NOOP("hummock", "Platform break"),
    QT_TRANSLATE_NOOP("hummock", "Slope break"),
    QT_TRANSLATE_NOOP("hummock", "Top of cut"),
    QT_TRANSLATE_NOOP("hummock", "Toe of fill"),
    QT_TRANSLATE_NOOP("hummock", "Steep end"),
    QT_TRANSLATE_NOOP("hummock", "Step (kerb, wall)"),
    QT_TRANSLATE_NOOP("hummock", "Top of a slope"),
    QT_TRANSLATE_NOOP("hummock", "Toe of a slope"),
    QT_TRANSLATE_NOOP("hummock", "Bottom, gutter"),
    QT_TRANSLATE_NOOP("hummock", "Ridge, crown"),
    QT_TRANSLATE_NOOP("hummock", "Proposed (not in the surface)"),
    QT_TRANSLATE_NOOP("hummock", "Rejected (not in the surface)"),
    QT_TRANSLATE_NOOP("hummock", "Breakline"),
    QT_TRANSLATE_NOOP("hummock", "Boundary"),
    QT_TRANSLATE_NOOP("hummock", "Void"),
    QT_TRANSLATE_NOOP("hummock", "Level spot"),
    QT_TRANSLATE_NOOP("hummock", "Gap in a breakline"),
    QT_TRANSLATE_NOOP("hummock", "Long triangles"),
    QT_TRANSLATE_NOOP("hummock", "Spike"),
    QT_TRANSLATE_NOOP("hummock", "Point beside a line"),
    QT_TRANSLATE_NOOP("hummock", "Summit"),
    QT_TRANSLATE_NOOP("hummock", "Pit"),
    QT_TRANSLATE_NOOP("hummock", "Saddle"),
    QT_TRANSLATE_NOOP("hummock", "Surface above the check point"),
    QT_TRANSLATE_NOOP("hummock", "Surface below the check point"),
    QT_TRANSLATE_NOOP("hummock", "Outside the surface"),
    QT_TRANSLATE_NOOP("hummock", "Perimeter"),
    QT_TRANSLATE_NOOP("hummock", "Pass walked"),
    QT_TRANSLATE_NOOP("hummock", "Cross pass"),
    QT_TRANSLATE_NOOP("hummock", "Link"),
    QT_TRANSLATE_NOOP("hummock", "Applied"),
    QT_TRANSLATE_NOOP("hummock", "Not applied"),
    QT_TRANSLATE_NOOP("hummock", "No cut, no fill"),
    QT_TRANSLATE_NOOP("hummock", "Control point"),
    QT_TRANSLATE_NOOP("hummock", "Cut"),
    QT_TRANSLATE_NOOP("hummock", "Fill"),
    QT_TRANSLATE_NOOP("hummock", "Cut or fill not known"),
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


def dress_vector(
    context: QgsProcessingContext,
    destination: str,
    qml: str,
    name: Optional[str] = None,
    labels: bool = True,
    fields: Optional[QgsFields] = None,
) -> None:
    """Style the output ``destination`` by ``qml`` if QGIS is going to load it; without its labels if so wished.

    ``fields``: whose aliases the layer gets, as files and layers in memory lose them.
    """

    def dress(layer: QgsVectorLayer) -> None:
        apply_qml(layer, qml)
        if not labels:
            layer.setLabelsEnabled(False)
        for own in fields or ():
            index = layer.fields().indexFromName(own.name())
            if index >= 0:
                layer.setFieldAlias(index, own.alias())

    dress_layer(context, destination, dress, name)


def dress_heights(
    context: QgsProcessingContext, destination: str, low: float, high: float, name: Optional[str] = None
) -> None:
    """Colour the raster ``destination`` by its heights from ``low`` to ``high`` if QGIS is going to load it."""

    def dress(layer: QgsRasterLayer) -> None:
        renderer = QgsSingleBandPseudoColorRenderer(layer.dataProvider(), 1)
        renderer.setShader(QgsRasterShader())
        renderer.shader().setRasterShaderFunction(height_shader(low, high))
        renderer.setClassificationMin(low)
        renderer.setClassificationMax(high)
        layer.setRenderer(renderer)

    dress_layer(context, destination, dress, name)


def dress_slopes(context: QgsProcessingContext, destination: str, labels: Sequence[str]) -> None:
    """Colour the polygons of ``destination`` by their class, named by ``labels``, if QGIS is going to load it."""
    dress_layer(context, destination, lambda layer: layer.setRenderer(slope_renderer(labels)), None)


def slope_renderer(labels: Sequence[str]) -> QgsCategorizedSymbolRenderer:
    """A colour for each class of slope."""
    categories = []
    for number, label in enumerate(labels):
        colour = slope_colour(number, len(labels)).name()
        # the outline hides the hairlines between neighbours
        symbol = QgsFillSymbol.createSimple({"color": colour, "outline_color": colour, "outline_width": "0.1"})
        categories.append(QgsRendererCategory(number, symbol, label))
    return QgsCategorizedSymbolRenderer("class", categories)


def slope_colour(number: int, classes: int) -> QColor:
    """The colour of class ``number`` of so many: those of SLOPE_COLOURS, or between them."""
    place = number * (len(SLOPE_COLOURS) - 1) / max(classes - 1, 1)
    first = min(int(place), len(SLOPE_COLOURS) - 2)
    low, high, share = QColor(SLOPE_COLOURS[first]), QColor(SLOPE_COLOURS[first + 1]), place - first
    mixed = [round(a + share * (b - a)) for a, b in zip(low.getRgb()[:3], high.getRgb()[:3])]
    return QColor(*mixed)


def load_mesh(
    context: QgsProcessingContext, path: str, output: str, name: str, crs: QgsCoordinateReferenceSystem
) -> None:
    """Have QGIS load the mesh file ``path``, with its CRS and coloured by height."""

    def dress(layer: QgsMeshLayer) -> None:
        layer.setCrs(crs)
        colour_heights(layer)
        # Some versions of QGIS put it into the tree of layers only after this.
        number = layer.id()
        QTimer.singleShot(0, lambda: name_heights(QgsProject.instance().layerTreeRoot().findLayer(number)))

    details = QgsProcessingContext.LayerDetails(name, context.project(), output, MESH_HINT)
    context.addLayerToLoadOnCompletion(path, details)
    dress_layer(context, path, dress, name)


def dress_layer(
    context: QgsProcessingContext,
    destination: str,
    dress: Callable[[QgsMapLayer], None],
    name: Optional[str] = None,
) -> None:
    """Have ``dress`` called with the output ``destination`` once QGIS has loaded it, if it is going to."""
    _waiting[:] = [other for other in _waiting if not other.done]
    if context.willLoadLayerOnCompletion(destination):
        dressing = Dressing(dress, name)
        _waiting.append(dressing)
        context.layerToLoadOnCompletionDetails(destination).setPostProcessor(dressing)


def _offer_tip(layer: QgsVectorLayer, tip: Callable[[], str]) -> None:
    """A map tip whose lengths are in the units of the layer's CRS."""
    crs = layer.crs()
    try:
        units = use_units(CRS.from_user_input(crs_text(crs)) if crs.isValid() else None)
    except CRSError:  # one that only QGIS understands
        units = use_units(None)
    try:
        layer.setMapTipTemplate(tip())
    finally:
        undo_units(units)


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
    if qml in TIPS:
        _offer_tip(layer, TIPS[qml])
    if qml == POINTS:
        _offer_words(layer, "status", STATUSES)
    if qml == FOUND_LINES:
        _offer_words(layer, "status", LINE_STATUSES)
    fix_profile(layer)


def _offer_words(layer: QgsVectorLayer, field: str, texts: Mapping[str, str]) -> None:
    """A list to choose the value of a field from, so that nobody mistypes one."""
    words = [{translate("hummock", text): word} for word, text in texts.items()]
    index = layer.fields().indexFromName(field)
    if index >= 0:
        layer.setEditorWidgetSetup(index, QgsEditorWidgetSetup("ValueMap", {"map": words}))


def colour_heights(layer: QgsMeshLayer) -> None:
    """Colour the heights of a mesh layer from low to high."""
    index = QgsMeshDatasetIndex(0, 0)
    group = layer.datasetGroupMetadata(index)
    low, high = group.minimum(), group.maximum()
    shader = height_shader(low, high)
    low, high = shader.minimumValue(), shader.maximumValue()
    settings = layer.rendererSettings()
    scalar = settings.scalarSettings(0)
    scalar.setClassificationMinimumMaximum(low, high)
    scalar.setColorRampShader(shader)
    settings.setScalarSettings(0, scalar)
    settings.setActiveScalarDatasetGroup(0)
    layer.setRendererSettings(settings)


def name_heights(node: Optional[QgsLayerTreeLayer]) -> None:
    """Have a legend say what the colours of a surface are; of 2DM files QGIS itself speaks as of river beds."""
    layer = None if node is None else node.layer()
    if isinstance(layer, QgsMeshLayer) and layer.source().lower().endswith(".2dm"):
        QgsMapLayerLegendUtils.setLegendNodeUserLabel(node, 0, translate("hummock", "Height (unit of the CRS)"))
        layer.legendChanged.emit()  # what shows the legend reads it anew


def height_shader(low: float, high: float) -> QgsColorRampShader:
    """The colours of heights spread from ``low`` to ``high``."""
    if not low < high:  # level ground still needs a range to be drawn
        low, high = low - 0.5, high + 0.5
    shader = QgsColorRampShader(low, high, height_ramp(), INTERPOLATED)
    shader.setClassificationMode(EQUAL_INTERVAL)
    shader.classifyColorRamp(9)
    return shader


def height_ramp() -> QgsGradientColorRamp:
    """The colours of heights."""
    inner: List[QgsGradientStop] = [
        QgsGradientStop(i / (len(HEIGHT_COLOURS) - 1), QColor(colour))
        for i, colour in enumerate(HEIGHT_COLOURS[1:-1], start=1)
    ]
    return QgsGradientColorRamp(QColor(HEIGHT_COLOURS[0]), QColor(HEIGHT_COLOURS[-1]), False, inner)
