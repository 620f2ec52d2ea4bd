"""The column beside a plan: title, key map, north arrow, scale bar, legend, notes and title block."""

from __future__ import annotations

from typing import Any, Optional, Sequence, Tuple

from qgis.core import (
    QgsLayoutItemLabel,
    QgsLayoutItemLegend,
    QgsLayoutItemMap,
    QgsLayoutItemPicture,
    QgsLayoutItemScaleBar,
    QgsLayoutItemShape,
    QgsLayoutPoint,
    QgsLegendRenderer,
    QgsLegendStyle,
    QgsMapLayer,
    QgsPrintLayout,
    QgsRectangle,
    QgsUnitTypes,
)
from qgis.PyQt.QtCore import QCoreApplication, QRectF, Qt
from qgis.PyQt.QtGui import QColor, QFont

from .fixedcolours import INK
from .planlayers import PlanLayers, text_format
from .styles import name_heights
from .versions import member

translate = QCoreApplication.translate

MM = member(QgsUnitTypes, "LayoutUnit", "LayoutMillimeters")
GREY = "#636363"
GAP = 3.0  # mm between what stands in the column


def plain_text(size: float, bold: bool = False, colour: str = INK) -> Any:
    """Text of ``size`` mm on paper."""
    made = text_format(size, bold)
    halo = made.buffer()
    halo.setEnabled(False)
    made.setBuffer(halo)
    made.setColor(QColor(colour))
    return made


class Column:
    """Fills the column of notes from both ends: ``top`` and ``bottom`` are what is still free, mm."""

    def __init__(self, layout: QgsPrintLayout, place: QRectF) -> None:
        self.layout = layout
        self.place = place
        self.top = place.top()
        self.bottom = place.bottom()

    def add_title(self, title: str) -> None:
        """The title, over as many lines as it takes."""
        size = 4.2
        lines = max(1, -(-len(title) * size * 0.56 // self.place.width()))
        height = 1.3 * size * min(lines, 4)
        self._write(title, self.top, height, size, bold=True)
        self.top += height + GAP

    def add_block(self, rows: Sequence[Tuple[str, str]], several: bool) -> None:
        """The title block at the foot of the column."""
        row = 5.2 if self.place.height() > 220 else 4.4
        sheet = translate("hummock", "Sheet")
        pages = "[% @atlas_featurenumber %] / [% @atlas_totalfeatures %]" if several else "1 / 1"
        rows = [*rows, (sheet, pages)]
        top = self.bottom - row * len(rows)
        self._rule(top, row * len(rows))
        label = 0.36 * self.place.width()
        for i, (name, value) in enumerate(rows):
            at, middle = top + i * row, Qt.AlignmentFlag.AlignVCenter
            self._write(name, at, row, 2.0, colour=GREY, left=1.0, width=label - 1, upright=middle)
            self._write(value, at, row, 2.3, left=label, width=self.place.width() - label - 1, upright=middle)
        self.bottom = top - GAP

    def add_notes(self, notes: Sequence[str]) -> None:
        """Notes above the title block; their height is reckoned from their length."""
        size = 2.3 if self.place.height() > 220 else 1.9
        letters = self.place.width() / (0.56 * size)
        lines = sum(max(1, -(-len(note) // int(letters))) for note in notes)
        height = 1.32 * size * lines + 0.8 * len(notes)
        self._write("\n".join(notes), self.bottom - height, height, size, upright=Qt.AlignmentFlag.AlignBottom)
        self.bottom -= height + GAP

    def add_key(self, layers: PlanLayers, main: QgsLayoutItemMap, shown: Sequence[QgsMapLayer]) -> None:
        """All sheets with their numbers, the present one shaded."""
        height = min(0.22 * self.place.height(), 0.8 * self.place.width())
        key = QgsLayoutItemMap(self.layout)
        key.setId(translate("hummock", "Key map"))
        self.layout.addLayoutItem(key)
        key.attemptSetSceneRect(QRectF(self.place.left(), self.top, self.place.width(), height))
        key.setCrs(main.crs())
        key.setLayers([layers.frames, *(layer for layer in shown if layer.id() == layers.contours.id())])
        key.setKeepLayerSet(True)
        key.setFrameEnabled(True)
        extent = QgsRectangle(layers.frames.extent())
        extent.scale(1.08)
        key.zoomToExtent(extent)
        overview = key.overview()
        overview.setLinkedMap(main)
        self.top += height + GAP

    def add_arrow_and_bar(self, main: QgsLayoutItemMap, bar_unit: float, unit: str, south_up: bool) -> None:
        arrow = QgsLayoutItemPicture(self.layout)
        arrow.setId(translate("hummock", "Grid north"))
        self.layout.addLayoutItem(arrow)
        arrow.setPicturePath(":/images/north_arrows/layout_default_north_arrow.svg")
        size = 13.0
        arrow.attemptSetSceneRect(QRectF(self.place.left(), self.top, size, size))
        arrow.setLinkedMap(main)
        if south_up:
            arrow.setNorthOffset(180.0)
        bar = QgsLayoutItemScaleBar(self.layout)
        self.layout.addLayoutItem(bar)
        bar.setLinkedMap(main)
        bar.setStyle("Line Ticks Up")
        bar.setUnits(member(QgsUnitTypes, "DistanceUnit", "DistanceUnknownUnit"))
        bar.setUnits(main.crs().mapUnits())
        bar.setUnitLabel(unit)
        bar.setMapUnitsPerScaleBarUnit(1.0)
        bar.setUnitsPerSegment(bar_unit)
        bar.setNumberOfSegments(2)
        bar.setNumberOfSegmentsLeft(0)
        bar.setHeight(1.6)
        bar.setTextFormat(plain_text(2.3))
        bar.update()
        bar.attemptMove(QgsLayoutPoint(self.place.left() + size + GAP, self.top + 1.5, MM))
        self.top += size + GAP

    def add_legend(self, main: QgsLayoutItemMap, shown: Sequence[QgsMapLayer]) -> None:
        legend = QgsLayoutItemLegend(self.layout)
        legend.setId(translate("hummock", "Legend"))
        self.layout.addLayoutItem(legend)
        legend.setLinkedMap(main)
        legend.setLegendFilterByMapEnabled(True)  # what is there
        legend.setAutoUpdateModel(False)
        root = legend.model().rootGroup()
        root.clear()
        for layer in shown:
            name_heights(root.addLayer(layer))
        for style, size in (("Group", 2.3), ("Subgroup", 2.2), ("Symbol", 2.0), ("SymbolLabel", 2.0)):
            part = member(QgsLegendStyle, "Style", style)
            changed = QgsLegendStyle(legend.style(part))
            if hasattr(changed, "setTextFormat"):
                changed.setTextFormat(plain_text(size))
            else:
                changed.setFont(_font(size))
            changed.setMargin(member(QgsLegendStyle, "Side", "Top"), 1.0 if style.startswith("Symbol") else 1.8)
            legend.setStyle(part, changed)
        legend.setSymbolWidth(6.0)
        legend.setSymbolHeight(3.0)
        legend.setBoxSpace(0.0)
        legend.attemptMove(QgsLayoutPoint(self.place.left(), self.top, MM))
        size = QgsLegendRenderer(legend.model(), legend.legendSettings()).minimumSize()
        if size.height() > self.bottom - self.top:
            legend.setColumnCount(2)
            legend.setSplitLayer(True)
            legend.setColumnSpace(1.5)
        legend.adjustBoxSize()

    def _write(
        self,
        text: str,
        top: float,
        height: float,
        size: float,
        bold: bool = False,
        colour: str = INK,
        left: float = 0.0,
        width: Optional[float] = None,
        upright: Any = Qt.AlignmentFlag.AlignTop,
    ) -> None:
        label = QgsLayoutItemLabel(self.layout)
        self.layout.addLayoutItem(label)
        label.setText(text)
        if hasattr(label, "setTextFormat"):
            label.setTextFormat(plain_text(size, bold, colour))
        else:  # before QGIS 3.24
            label.setFont(_font(size, bold))
            label.setFontColor(QColor(colour))
        label.setMarginX(0.0)
        label.setMarginY(0.0)
        label.setHAlign(Qt.AlignmentFlag.AlignLeft)
        label.setVAlign(upright)
        wide = self.place.width() if width is None else width
        label.attemptSetSceneRect(QRectF(self.place.left() + left, top, wide, height))

    def _rule(self, top: float, height: float) -> None:
        """The frame of the title block."""
        box = QgsLayoutItemShape(self.layout)
        box.setShapeType(member(QgsLayoutItemShape, "Shape", "Rectangle"))
        self.layout.addLayoutItem(box)
        box.attemptSetSceneRect(QRectF(self.place.left(), top, self.place.width(), height))
        symbol = box.symbol().clone()
        symbol.symbolLayer(0).setStrokeWidth(0.25)
        symbol.setColor(QColor("white"))
        box.setSymbol(symbol)


def _font(size: float, bold: bool = False) -> QFont:
    """A font of ``size`` mm: QGIS's layouts take points."""
    font = QFont()
    font.setPointSizeF(size / 25.4 * 72)
    font.setBold(bold)
    return font
