"""The layers of the project as the core knows them: where each lies, to tell how far a survey is from it."""

from __future__ import annotations

from typing import Any, Dict, List, Optional, Tuple

from pyproj import CRS
from pyproj.exceptions import CRSError
from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsCoordinateTransform,
    QgsCsException,
    QgsMapLayer,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProject,
)

from ..core.georeference.position import Kind, Landmark
from .parameters import crs_text

#: Layers wider than this, degrees, are backgrounds and tell nothing.
MOST_DEGREES = 5.0
MOST_LAYERS = 50


def project_landmarks(context: QgsProcessingContext, but: Tuple[str, ...] = ()) -> Tuple[Landmark, ...]:
    """The layers of the context's project that lie somewhere, without those called as in ``but`` (ids)."""
    project = context.project() or QgsProject.instance()
    found: List[Landmark] = []
    for layer in project.mapLayers().values():
        if layer.id() not in but and len(found) < MOST_LAYERS:
            mark = layer_landmark(layer, project)
            found += [] if mark is None else [mark]
    return tuple(found)


def layer_landmark(layer: QgsMapLayer, project: QgsProject) -> Optional[Landmark]:
    """A layer as a landmark; None for one without a CRS or an extent, and for a background."""
    extent, crs = layer.extent(), layer.crs()
    if not layer.isValid() or not crs.isValid() or extent.isNull() or not extent.isFinite():
        return None
    if extent.width() == 0 and extent.height() == 0 and extent.xMinimum() == 0 and extent.yMinimum() == 0:
        return None
    there = QgsCoordinateTransform(crs, QgsCoordinateReferenceSystem("EPSG:4326"), project)
    there.setBallparkTransformsAreAppropriate(True)
    try:
        box = there.transformBoundingBox(extent)
    except QgsCsException:
        return None
    if not box.isFinite() or max(box.width(), box.height()) > MOST_DEGREES:
        return None
    return Landmark(
        str(layer.name()), Kind.LAYER, box.xMinimum(), box.yMinimum(), box.xMaximum(), box.yMaximum()
    )  # fmt: skip


def project_crs(context: QgsProcessingContext) -> Optional[Any]:
    """The CRS of the context's project as pyproj knows it, None where there is none."""
    project = context.project() or QgsProject.instance()
    crs = project.crs()
    if not crs.isValid():
        return None
    try:
        return CRS.from_user_input(crs_text(crs))
    except CRSError:
        return None


def layers_of(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext, *names: str
) -> Tuple[str, ...]:
    """The ids of the layers that parameters name."""
    layers = [algorithm.parameterAsVectorLayer(parameters, name, context) for name in names if parameters.get(name)]
    return tuple(str(layer.id()) for layer in layers if layer is not None)
