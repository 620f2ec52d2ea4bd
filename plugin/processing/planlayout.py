"""The print layout of a topographic plan: the map at its scale, and beside it all that makes it readable."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Sequence, Tuple

from qgis.core import (
    QgsLayoutItemMap,
    QgsLayoutItemMapGrid,
    QgsLayoutItemPage,
    QgsLayoutMeasurement,
    QgsLayoutObject,
    QgsLayoutSize,
    QgsMapLayer,
    QgsPrintLayout,
    QgsProject,
    QgsProperty,
)
from qgis.PyQt.QtCore import QCoreApplication, QRectF
from qgis.PyQt.QtGui import QColor

from ..core.papers import Paper
from .plancolumn import GAP, GREY, MM, Column, plain_text
from .planlayers import PlanLayers
from .versions import member

translate = QCoreApplication.translate

MADE_FOR = "hummock/made_for"
PAPERS = tuple(Paper)
_EDGE = 10.0  # mm of free paper
_COORDINATES = 7.0  # mm beside the map for the grid's figures


@dataclass(frozen=True)
class SheetPaper:
    """A sheet of paper with its parts, millimetres from its upper left corner."""

    width: float
    height: float

    @property
    def column(self) -> QRectF:
        """The column of notes at the right."""
        wide = 62.0 if min(self.width, self.height) < 300 else 84.0
        return QRectF(self.width - _EDGE - wide, _EDGE, wide, self.height - 2 * _EDGE)

    @property
    def map(self) -> QRectF:
        """The map itself, inside its figures."""
        right = self.column.left() - GAP - _COORDINATES
        left, top = _EDGE + _COORDINATES, _EDGE + _COORDINATES
        return QRectF(left, top, right - left, self.height - top - _EDGE - _COORDINATES)


def sheet_paper(paper: int, portrait: bool) -> SheetPaper:
    """The sheet by its place in :data:`PAPERS`."""
    long, short = PAPERS[paper].sides
    return SheetPaper(short, long) if portrait else SheetPaper(long, short)


@dataclass(frozen=True)
class PlanTexts:
    """What is written on the plan. ``notes``: a paragraph each. ``rows``: name and value in the title block."""

    title: str
    notes: Sequence[str]
    rows: Sequence[Tuple[str, str]]


@dataclass(frozen=True)
class PlanSettings:
    """How it is drawn: ``scale`` 500 for 1 : 500; ``grid`` and ``bar`` in the unit of the CRS, called ``unit``.

    ``made_for``: the PDF, by which a later run knows the layout as its own. ``south_up``: whether the axes of the CRS
    run west and south, so that the map has south at the top.
    """

    paper: SheetPaper
    scale: float
    grid: float
    grid_decimals: int
    bar: float
    unit: str
    made_for: str
    south_up: bool = False


def make_layout(
    project: QgsProject,
    name: str,
    layers: PlanLayers,
    shown: Sequence[QgsMapLayer],
    settings: PlanSettings,
    texts: PlanTexts,
) -> QgsPrintLayout:
    """The layout of the plan: one page, which an atlas turns over where there are several frames."""
    layout = QgsPrintLayout(project)
    layout.initializeDefaults()
    layout.setName(name)
    layout.setCustomProperty(MADE_FOR, settings.made_for)
    paper = settings.paper
    page: QgsLayoutItemPage = layout.pageCollection().page(0)
    page.setPageSize(QgsLayoutSize(paper.width, paper.height, MM))
    several = layers.frames.featureCount() > 1
    main = _add_map(layout, layers, shown, settings, several)
    column = Column(layout, paper.column)
    column.add_block(texts.rows, several)
    column.add_notes(texts.notes)
    column.add_title(texts.title)
    if several:
        column.add_key(layers, main, shown)
    column.add_arrow_and_bar(main, settings.bar, settings.unit, settings.south_up)
    column.add_legend(main, [layer for layer in shown if layer.id() != layers.labels.id()])
    layout.setReferenceMap(main)
    return layout


def _add_map(
    layout: QgsPrintLayout, layers: PlanLayers, shown: Sequence[QgsMapLayer], settings: PlanSettings, several: bool
) -> QgsLayoutItemMap:
    main = QgsLayoutItemMap(layout)
    main.setId(translate("hummock", "Plan"))
    layout.addLayoutItem(main)
    main.attemptSetSceneRect(settings.paper.map)
    main.setCrs(layers.contours.crs())
    main.setLayers(list(shown))
    main.setKeepLayerSet(True)
    main.setFrameEnabled(True)
    main.setFrameStrokeWidth(QgsLayoutMeasurement(0.35, MM))
    frame = next(layers.frames.getFeatures())
    main.setMapRotation(frame["turn"])
    main.zoomToExtent(frame.geometry().boundingBox())
    main.setScale(settings.scale)
    if several:
        atlas = layout.atlas()
        atlas.setEnabled(True)
        atlas.setCoverageLayer(layers.frames)
        atlas.setHideCoverage(True)
        atlas.setSortFeatures(True)
        atlas.setSortExpression('"sheet"')
        main.setAtlasDriven(True)
        turn = member(QgsLayoutObject, "DataDefinedProperty", "MapRotation")
        main.dataDefinedProperties().setProperty(turn, QgsProperty.fromField("turn"))
        main.setAtlasScalingMode(member(QgsLayoutItemMap, "AtlasScalingMode", "Fixed"))
    _add_grid(main, settings)
    return main


def _add_grid(main: QgsLayoutItemMap, settings: PlanSettings) -> None:
    """Crosses on the map, figures outside its frame."""
    grid = QgsLayoutItemMapGrid(translate("hummock", "Grid"), main)
    kind = QgsLayoutItemMapGrid
    grid.setUnits(member(kind, "GridUnit", "MapUnit"))
    grid.setIntervalX(settings.grid)
    grid.setIntervalY(settings.grid)
    grid.setStyle(member(kind, "GridStyle", "Cross"))
    grid.setCrossLength(2.0)
    grid.setGridLineColor(QColor(GREY))
    grid.setGridLineWidth(0.12)
    grid.setFrameStyle(member(kind, "FrameStyle", "InteriorTicks"))
    grid.setFrameWidth(2.0)
    grid.setFramePenColor(QColor(GREY))
    grid.setFramePenSize(0.15)
    grid.setAnnotationEnabled(True)
    grid.setAnnotationPrecision(settings.grid_decimals)
    grid.setAnnotationFrameDistance(1.0)
    grid.setAnnotationTextFormat(plain_text(1.9))
    outside = member(kind, "AnnotationPosition", "OutsideMapFrame")
    border = member(kind, "BorderSide", "Left").__class__
    for side in ("Left", "Right", "Top", "Bottom"):
        edge = getattr(border, side, getattr(kind, side, None))
        grid.setAnnotationPosition(outside, edge)
        # On a sheet that is turned, lines of both directions meet each edge.
        one = "LatitudeOnly" if side in ("Left", "Right") else "LongitudeOnly"
        grid.setAnnotationDisplay(member(kind, "DisplayMode", one), edge)
    for side in ("Left", "Right"):
        upright = member(kind, "AnnotationDirection", "Vertical")
        grid.setAnnotationDirection(upright, getattr(border, side, getattr(kind, side, None)))
    main.grids().addGrid(grid)
