"""A map that shows where points would land."""

from __future__ import annotations

from typing import List, Optional

import numpy as np
from qgis.core import (
    QgsCategorizedSymbolRenderer,
    QgsCoordinateReferenceSystem,
    QgsFeature,
    QgsGeometry,
    QgsMarkerSymbol,
    QgsPointXY,
    QgsProject,
    QgsRectangle,
    QgsRendererCategory,
    QgsVectorLayer,
)
from qgis.gui import QgsMapCanvas, QgsMapToolPan
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtGui import QColor
from qgis.PyQt.QtWidgets import QWidget

from ..core.points.pointset import PointSet
from ..core.units import to_crs_units
from ..processing.parameters import qgis_crs

translate = QCoreApplication.translate

#: More points than this are drawn in part.
MOST_DRAWN = 20_000
# ColorBrewer, RdYlBu in four classes, as the layers of points are drawn.
COLOURS = {"inside": "#2c7bb6", "outside": "#d7191c"}


class LandingMap(QgsMapCanvas):
    """The points over the layers of the project, in the CRS that they would have."""

    def __init__(self, parent: Optional[QWidget] = None) -> None:
        super().__init__(parent)
        self.setCanvasColor(QColor("white"))
        self.setMinimumSize(280, 240)
        self.setAccessibleName(translate("hummock", "Where the points would land"))
        self.hand = QgsMapToolPan(self)
        self.setMapTool(self.hand)
        self.shown: Optional[QgsVectorLayer] = None

    def show_points(self, points: Optional[PointSet], outside: Optional[np.ndarray] = None) -> None:
        """Draw ``points``, those of the mask ``outside`` in another colour; nothing for None."""
        if points is None or not len(points):
            self.shown = None
            self.setLayers([])
            self.refresh()
            return
        crs = qgis_crs(points.crs)
        away = np.zeros(len(points), bool) if outside is None or len(outside) != len(points) else outside
        self.shown = _layer(points, away, crs)
        self.setDestinationCrs(crs)
        self.setLayers([self.shown, *_project_layers(crs)])
        self.setExtent(_around(self.shown.extent()))
        self.refresh()

    def drawn(self) -> int:
        """How many points are drawn."""
        return 0 if self.shown is None else int(self.shown.featureCount())


def _layer(points: PointSet, outside: np.ndarray, crs: QgsCoordinateReferenceSystem) -> QgsVectorLayer:
    layer = QgsVectorLayer("Point?field=where:string", translate("hummock", "Survey points"), "memory")
    layer.setCrs(crs)
    east, north = (to_crs_units(values, points.crs) for values in (points.easting, points.northing))
    some = np.flatnonzero(np.isfinite(east) & np.isfinite(north))
    some = some[:: max(1, -(-len(some) // MOST_DRAWN))]
    features = []
    for x, y, away in zip(east[some].tolist(), north[some].tolist(), outside[some].tolist()):
        feature = QgsFeature()
        feature.setGeometry(QgsGeometry.fromPointXY(QgsPointXY(x, y)))
        feature.setAttributes(["outside" if away else "inside"])
        features.append(feature)
    layer.dataProvider().addFeatures(features)
    layer.updateExtents()
    layer.setRenderer(
        QgsCategorizedSymbolRenderer(
            "where",
            [
                QgsRendererCategory(
                    word,
                    QgsMarkerSymbol.createSimple(
                        {"name": "circle", "size": "1.2", "color": colour, "outline_style": "no"}
                    ),
                    word,
                )
                for word, colour in COLOURS.items()
            ],
        )
    )
    return layer


def _project_layers(crs: QgsCoordinateReferenceSystem) -> List[object]:
    """The layers of the project that are switched on; none for a local grid, which they do not match."""
    return list(QgsProject.instance().layerTreeRoot().checkedLayers()) if crs.isValid() else []


def _around(extent: QgsRectangle) -> QgsRectangle:
    """A little more than the points fill, and never nothing."""
    wider = QgsRectangle(extent)
    wider.grow(max(extent.width(), extent.height(), 1.0) * 0.08)
    return wider
