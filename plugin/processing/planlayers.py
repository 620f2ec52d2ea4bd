"""The layers of a topographic plan in one GeoPackage, each with its style saved inside."""

from __future__ import annotations

import contextlib
import os
from pathlib import Path
from typing import Any, Callable, Dict, NamedTuple, Sequence

import numpy as np
from qgis.core import (
    QgsCoordinateTransformContext,
    QgsFields,
    QgsFillSymbol,
    QgsGeometry,
    QgsLineString,
    QgsLineSymbol,
    QgsMarkerSymbol,
    QgsPalLayerSettings,
    QgsPoint,
    QgsPolygon,
    QgsProcessingException,
    QgsSingleSymbolRenderer,
    QgsTextFormat,
    QgsUnitTypes,
    QgsVectorFileWriter,
    QgsVectorLayer,
    QgsVectorLayerSimpleLabeling,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QColor

from ..core.contours.sheet import Sheet
from ..core.contours.spots import SpotKind
from ..core.files import replace_file
from ..core.handover.frames import SheetFrames
from ..core.progress import silent
from ..core.surface.tin import Tin
from ..core.units import LengthUnit, heights_to_crs_units, to_crs_units
from .layers import contour_fields, write_contours
from .parameters import qgis_crs
from .sheetlayers import label_fields, write_labels
from .sinks import add_feature, fields_of
from .styles import CONTOURS, LABELS, apply_qml
from .versions import LINE_Z, POINT, POINT_Z, POLYGON, POLYGON_GEOMETRY, member

translate = QCoreApplication.translate

INK = "#252525"

CONTOUR_TABLE, LABEL_TABLE, SPOT_TABLE, FRAME_TABLE = "contours", "contour_labels", "spot_heights", "sheets"

_OVER_POINT = member(QgsPalLayerSettings, "Placement", "OrderedPositionsAroundPoint")
_MILLIMETRES = member(QgsUnitTypes, "RenderUnit", "RenderMillimeters")
_NEW_LAYER = member(QgsVectorFileWriter, "ActionOnExistingFile", "CreateOrOverwriteLayer")
_NEW_FILE = member(QgsVectorFileWriter, "ActionOnExistingFile", "CreateOrOverwriteFile")


class PlanLayers(NamedTuple):
    """The layers that the plan is made of, opened from their GeoPackage."""

    contours: QgsVectorLayer
    labels: QgsVectorLayer
    spots: QgsVectorLayer
    frames: QgsVectorLayer


class PlanContent(NamedTuple):
    """What is drawn: contours, labels, spot heights, further heights at ``spread`` (vertices), and the frames."""

    tin: Tin
    sheet: Sheet
    spread: np.ndarray
    frames: SheetFrames
    unit: LengthUnit
    decimals: int


def write_plan_layers(content: PlanContent, path: str, transforms: QgsCoordinateTransformContext) -> PlanLayers:
    """Write the layers to the GeoPackage ``path``, which appears when it is whole, and open them from there.

    Raises QgsProcessingException when it cannot be written.
    """
    crs, sheet = qgis_crs(content.tin.crs), content.sheet
    made = [
        _filled(
            CONTOUR_TABLE, LINE_Z, crs, contour_fields(), lambda sink: write_contours(sheet.contours, sink, silent)
        ),
        _filled(LABEL_TABLE, POINT, crs, label_fields(), lambda sink: write_labels(sheet.labels, sheet.contours, sink)),
        _filled(SPOT_TABLE, POINT_Z, crs, _spot_fields(), lambda sink: _write_spots(content, sink)),
        _filled(FRAME_TABLE, POLYGON, crs, _frame_fields(), lambda sink: _write_frames(content, sink)),
    ]
    with replace_file(path) as name:
        for i, layer in enumerate(made):
            options = QgsVectorFileWriter.SaveVectorOptions()
            options.driverName = "GPKG"
            options.layerName = layer.name()
            options.actionOnExistingFile = _NEW_LAYER if i else _NEW_FILE
            error = QgsVectorFileWriter.writeAsVectorFormatV3(layer, str(name), transforms, options)
            if error[0] != member(QgsVectorFileWriter, "WriterError", "NoError"):
                raise QgsProcessingException(
                    translate("hummock", "{file}: cannot be written ({reason}).").format(
                        file=Path(path).name, reason=" ".join(error[1].split())
                    )
                )
        for layer in _opened(str(name), made):  # let go of before they are opened for good
            layer.saveStyleToDatabase(layer.name(), "", True, "")
        for beside in ("-wal", "-shm"):  # what SQLite left of a file of this name must not be read into the new one
            with contextlib.suppress(OSError):
                os.remove(path + beside)
    return _opened(path, made)


def _opened(path: str, made: Sequence[QgsVectorLayer]) -> PlanLayers:
    """The tables of the GeoPackage as dressed layers."""
    layers = PlanLayers(*(QgsVectorLayer(f"{path}|layername={one.name()}", one.name(), "ogr") for one in made))
    for layer, (title, dress) in zip(layers, _dresses().items()):
        if not layer.isValid():
            raise QgsProcessingException(translate("hummock", "{file}: cannot be opened again.").format(file=path))
        dress(layer)
        layer.setName(title)
    return layers


def _filled(name: str, kind: Any, crs: Any, fields: QgsFields, write: Callable[[Any], None]) -> QgsVectorLayer:
    """A layer in memory, filled by ``write``."""
    layer = QgsVectorLayer(QgsWkbTypes.displayString(kind), name, "memory")
    layer.setCrs(crs)
    provider = layer.dataProvider()
    provider.addAttributes(fields.toList())
    layer.updateFields()
    write(provider)
    layer.updateExtents()
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


def _frame_fields() -> QgsFields:
    return fields_of((("sheet", "whole"), ("row", "whole"), ("column", "whole")))


def _write_frames(content: PlanContent, sink: Any) -> None:
    frames, crs = content.frames, content.tin.crs
    for number, (low, high, row, column) in enumerate(
        zip(frames.low + frames.origin, frames.high + frames.origin, frames.row.tolist(), frames.column.tolist()), 1
    ):
        (west, south), (east, north) = to_crs_units(low, crs).tolist(), to_crs_units(high, crs).tolist()
        ring = QgsLineString([west, east, east, west, west], [south, south, north, north, south])
        add_feature(sink, QgsGeometry(QgsPolygon(ring)), [number, row + 1, column + 1])


# Looks


def _dresses() -> Dict[str, Callable[[QgsVectorLayer], None]]:
    """Titles of the layers and what dresses them, in the order of :class:`PlanLayers`."""
    return {
        translate("hummock", "Contours"): _dress_contours,
        translate("hummock", "Contour labels"): lambda layer: apply_qml(layer, LABELS),
        translate("hummock", "Spot heights"): _dress_spots,
        translate("hummock", "Sheets"): dress_frames,
    }


def _dress_contours(layer: QgsVectorLayer) -> None:
    apply_qml(layer, CONTOURS)
    layer.setLabelsEnabled(False)


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
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


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


def dress_parcels(layer: QgsVectorLayer) -> None:
    """Thin grey outlines with what the layer calls each parcel."""
    outline = {"style": "no", "outline_color": "#636363", "outline_width": "0.25", "outline_style": "dash"}
    if layer.geometryType() == POLYGON_GEOMETRY:
        symbol = QgsFillSymbol.createSimple(outline)
    else:
        symbol = QgsLineSymbol.createSimple({"color": "#636363", "width": "0.25", "line_style": "dash"})
    layer.setRenderer(QgsSingleSymbolRenderer(symbol))
    settings = QgsPalLayerSettings()
    settings.fieldName = layer.displayExpression()
    settings.isExpression = True
    settings.priority = 1
    made = text_format(2.2)
    made.setColor(QColor("#636363"))
    settings.setFormat(made)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(bool(settings.fieldName))


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
