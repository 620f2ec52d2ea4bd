"""The layers of a topographic plan in one GeoPackage, each with its style saved inside."""

from __future__ import annotations

from typing import Any, Callable, NamedTuple, Optional, Sequence, Tuple

import numpy as np
from qgis.core import (
    Qgis,
    QgsFields,
    QgsFillSymbol,
    QgsGeometry,
    QgsLineString,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsPoint,
    QgsPolygon,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProperty,
    QgsSingleSymbolRenderer,
    QgsTextFormat,
    QgsUnitTypes,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QColor

from ..core.contours.sheet import Sheet
from ..core.contours.spots import SpotKind
from ..core.handover.frames import SheetFrames
from ..core.handover.plan_symbols import LineSymbol
from ..core.progress import silent
from ..core.surface.tin import Tin
from ..core.units import LengthUnit, heights_to_crs_units, to_crs_units
from .fixedcolours import INK, fix_profile
from .geopackage import PackedLayer, empty_layer, write_geopackage
from .layers import contour_fields, write_contours
from .parameters import qgis_crs
from .planlines import PlanLine, dress_lines, line_fields, write_plan_lines
from .sheetlayers import label_fields, write_labels
from .sinks import add_feature, fields_of
from .styles import CONTOURS, LABELS, apply_qml
from .versions import LINE_Z, MULTILINE, MULTIPOLYGON, POINT, POINT_Z, POLYGON, POLYGON_GEOMETRY, member

translate = QCoreApplication.translate

#: Names in the GeoPackage, in the order of :class:`PlanLayers`.
_TABLES = ("contours", "contour_labels", "spot_heights", "sheets", "lines", "parcels")
_IF_ANY = ("lines", "parcels")

_OVER_POINT = member(QgsPalLayerSettings, "Placement", "OrderedPositionsAroundPoint")
_ROTATION = member(QgsPalLayerSettings, "Property", "LabelRotation")
#: Clockwise degrees of a label along its contour, on a map that may be turned, so that it never stands on its head.
_UPRIGHT = '(450 + "rotation" + @map_rotation) % 180 - 90'
_Z_INDEX = member(QgsPalLayerSettings, "Property", "ZIndex")
_MILLIMETRES = member(QgsUnitTypes, "RenderUnit", "RenderMillimeters")


class PlanLayers(NamedTuple):
    """The layers that the plan is made of, opened from their GeoPackage; None for lines and parcels where are none."""

    contours: QgsVectorLayer
    labels: QgsVectorLayer
    spots: QgsVectorLayer
    frames: QgsVectorLayer
    lines: Optional[QgsVectorLayer]
    parcels: Optional[QgsVectorLayer]


class PlanContent(NamedTuple):
    """What is drawn: contours, labels, spot heights, more heights at ``spread`` (vertices), frames, lines with their
    ``symbols``, and ``parcels`` with their names."""

    tin: Tin
    sheet: Sheet
    spread: np.ndarray
    frames: SheetFrames
    unit: LengthUnit
    decimals: int
    lines: Sequence[PlanLine]
    symbols: Sequence[LineSymbol]
    parcels: Sequence[Tuple[QgsGeometry, str]]


def write_plan_layers(content: PlanContent, path: str, context: QgsProcessingContext) -> PlanLayers:
    """Write the layers to the GeoPackage ``path``, which appears when it is whole, and open them from there.

    Raises QgsProcessingException when it cannot be written.
    """
    crs, sheet = qgis_crs(content.tin.crs), content.sheet

    def made(
        title: str, kind: Any, fields: QgsFields, write: Callable[[Any], Any], dress: Callable[[QgsVectorLayer], None]
    ) -> QgsVectorLayer:
        layer = empty_layer(title, kind, crs, fields)
        write(layer.dataProvider())
        layer.updateExtents()
        dress(layer)
        return layer

    layers = (
        made(
            translate("hummock", "Contours"), LINE_Z, contour_fields(),
            lambda sink: write_contours(sheet.contours, sink, silent), _dress_contours,
        ),
        made(
            translate("hummock", "Contour labels"), POINT, label_fields(),
            lambda sink: write_labels(sheet.labels, sheet.contours, sink), _dress_labels,
        ),
        made(
            translate("hummock", "Spot heights"), POINT_Z, _spot_fields(),
            lambda sink: _write_spots(content, sink), _dress_spots,
        ),
        made(
            translate("hummock", "Sheets"), POLYGON, _frame_fields(),
            lambda sink: _write_frames(content, sink), dress_frames,
        ),
        made(
            translate("hummock", "Lines"), LINE_Z, line_fields(),
            lambda sink: write_plan_lines(content.lines, content.symbols, sink),
            lambda layer: dress_lines(layer, content.lines, content.symbols),
        ),
        made(
            translate("hummock", "Parcels"), _parcel_type(content), fields_of((("name", "text"),)),
            lambda sink: _write_parcels(content, sink), _dress_parcels,
        ),
    )  # fmt: skip
    packed = [PackedLayer(table, layer) for table, layer in zip(_TABLES, layers)]
    there = [one for one in packed if one.name not in _IF_ANY or one.layer.featureCount()]
    write_geopackage(there, path, context, silent)
    return PlanLayers(*(_opened(path, one) if one in there else None for one in packed))


def _opened(path: str, packed: PackedLayer) -> QgsVectorLayer:
    """A table of the GeoPackage, which QGIS opens with the style inside."""
    layer = QgsVectorLayer(f"{path}|layername={packed.name}", packed.layer.name(), "ogr")
    if not layer.isValid():
        raise QgsProcessingException(translate("hummock", "{file}: cannot be opened again.").format(file=path))
    return layer


# Rows


def _spot_fields() -> QgsFields:
    return fields_of((("kind", "text"), ("text", "text"), ("height", "real"), ("unit", "text"), ("rank", "whole")))


def _write_spots(content: PlanContent, sink: Any) -> None:
    """Summits, pits and saddles first (rank 0), then the heights spread between them (rank 1)."""
    tin, spots, unit = content.tin, content.sheet.spots, content.unit
    xyz = np.concatenate([spots.xyz, tin.vertices[content.spread]])
    kinds = [SpotKind(kind).name.lower() for kind in spots.kind.tolist()] + ["ground"] * len(content.spread)
    plan = to_crs_units(xyz[:, :2] + tin.origin, tin.crs)
    places = np.column_stack([plan, heights_to_crs_units(xyz[:, 2], tin.crs)]).tolist()
    for place, kind, height in zip(places, kinds, (xyz[:, 2] / unit.metres).tolist()):
        text = f"{height:.{content.decimals}f}"
        add_feature(sink, QgsGeometry(QgsPoint(*place)), [kind, text, height, unit.value, int(kind == "ground")])


def _parcel_type(content: PlanContent) -> Any:
    lines = any(outline.type() != POLYGON_GEOMETRY for outline, _ in content.parcels)
    return MULTILINE if lines else MULTIPOLYGON


def _write_parcels(content: PlanContent, sink: Any) -> None:
    for outline, name in content.parcels:
        add_feature(sink, outline, [name])


def _frame_fields() -> QgsFields:
    return fields_of((("sheet", "whole"), ("row", "whole"), ("column", "whole"), ("turn", "real")))


def _write_frames(content: PlanContent, sink: Any) -> None:
    """``turn``: degrees by which the map is turned clockwise on the sheet."""
    frames, crs = content.frames, content.tin.crs
    corners = to_crs_units(frames.corners() + frames.origin, crs)
    rows = zip(corners.tolist(), frames.row.tolist(), frames.column.tolist(), frames.turn.tolist())
    for number, (ring, row, column, turn) in enumerate(rows, 1):
        x, y = zip(*ring, ring[0])
        outline = QgsPolygon(QgsLineString(list(x), list(y)))
        add_feature(sink, QgsGeometry(outline), [number, row + 1, column + 1, turn])


# Looks


def _dress_contours(layer: QgsVectorLayer) -> None:
    apply_qml(layer, CONTOURS)
    layer.setLabelsEnabled(False)


def _dress_labels(layer: QgsVectorLayer) -> None:
    apply_qml(layer, LABELS)
    settings = layer.labeling().settings()
    _draw_by_row(settings, 2)
    settings.dataDefinedProperties().setProperty(_ROTATION, QgsProperty.fromExpression(_UPRIGHT))
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))


def _dress_spots(layer: QgsVectorLayer) -> None:
    """A dot with its height, which gives way to contour labels and to higher ranks."""
    dot = QgsMarkerSymbol.createSimple({"name": "circle", "color": INK, "outline_style": "no", "size": "0.8"})
    layer.setRenderer(QgsSingleSymbolRenderer(dot))
    settings = QgsPalLayerSettings()
    settings.fieldName = "text"
    settings.placement = _OVER_POINT
    settings.dist, settings.distUnits = 0.6, _MILLIMETRES
    settings.priority = 4
    settings.setFormat(text_format(1.9))
    _draw_by_row(settings, 1)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    fix_profile(layer)


def dress_frames(layer: QgsVectorLayer) -> None:
    """Outlines with the number of the sheet, for the key map."""
    outline = QgsFillSymbol.createSimple({"style": "no", "outline_color": INK, "outline_width": "0.2"})
    layer.setRenderer(QgsSingleSymbolRenderer(outline))
    settings = QgsPalLayerSettings()
    settings.fieldName = "sheet"
    settings.placement = member(QgsPalLayerSettings, "Placement", "OverPoint")
    settings.setFormat(text_format(2.6, bold=True))
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    fix_profile(layer)


def _dress_parcels(layer: QgsVectorLayer) -> None:
    """Thin grey outlines with the number or name of each parcel, nothing filled."""
    outline = {"style": "no", "outline_color": "#636363", "outline_width": "0.25", "outline_style": "dash"}
    if layer.geometryType() == POLYGON_GEOMETRY:
        symbol = QgsFillSymbol.createSimple(outline)
    else:
        symbol = QgsLineSymbol.createSimple({"color": "#636363", "width": "0.25", "line_style": "dash"})
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))
    settings = QgsPalLayerSettings()
    settings.fieldName = "name"
    settings.priority = 1
    _always(settings)
    made = text_format(2.2)
    made.setColor(QColor("#636363"))
    settings.setFormat(made)
    _draw_by_row(settings, -1)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)
    fix_profile(layer)


def _always(settings: QgsPalLayerSettings) -> None:
    """The number of a narrow parcel stands over what is in it rather than nowhere."""
    if hasattr(settings, "placementSettings"):
        place = settings.placementSettings()
        place.setOverlapHandling(Qgis.LabelOverlapHandling.AllowOverlapIfRequired)
        settings.setPlacementSettings(place)
    else:  # before QGIS 3.26
        settings.displayAll = True


def _draw_by_row(settings: QgsPalLayerSettings, rank: int) -> None:
    """Draw the labels of higher ranks over those of lower ones, and those of a layer in the order of its rows.

    QGIS draws labels of the same width in an order that differs from run to run once three layers have labels. Layers
    with labels of their own have rank 0.
    """
    order = QgsProperty.fromExpression(f"{rank} - $id / 1e9")
    settings.dataDefinedProperties().setProperty(_Z_INDEX, order)


def text_format(size: float, bold: bool = False) -> QgsTextFormat:
    """Text of ``size`` mm on paper with a white halo."""
    made = QgsTextFormat()
    font = made.font()
    font.setBold(bold)
    made.setFont(font)
    made.setSize(size)
    made.setSizeUnit(_MILLIMETRES)
    made.setColor(QColor(INK))
    halo = made.buffer()
    halo.setEnabled(True)
    halo.setSize(0.4)
    halo.setSizeUnit(_MILLIMETRES)
    halo.setColor(QColor("white"))
    made.setBuffer(halo)
    return made
