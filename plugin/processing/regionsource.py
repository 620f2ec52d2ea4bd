"""Regions out of polygon layers."""

from __future__ import annotations

from typing import Any, Dict, List, Tuple

from qgis.core import (
    QgsFeature,
    QgsFeatureSource,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.earthwork.partition import Region
from ..core.units import metres_per_unit
from .algorithm import HummockAlgorithm
from .drawnsource import parts_of, request_in
from .parameters import optional_source, qgis_crs
from .versions import is_null

translate = QCoreApplication.translate


def chosen_regions(
    algorithm: HummockAlgorithm,
    crs: Any,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
) -> List[Region]:
    """The regions of the optional layer REGIONS, named by their numbers. Raises as :func:`read_regions`."""
    source = optional_source(algorithm, parameters, "REGIONS", context)
    return [] if source is None else read_regions(source, crs, "", context, feedback)[0]


def read_regions(
    source: QgsFeatureSource, crs: Any, name_field: str, context: QgsProcessingContext, feedback: QgsProcessingFeedback
) -> Tuple[List[Region], List[QgsFeature]]:
    """Polygons as regions in metres of the CRS ``crs``, and their features, brought into it.

    Names come from ``name_field``, or are numbers from 1; names that come again get one behind them. Features without
    geometry are refused (QgsProcessingException), and so is a layer without features.
    """
    request = request_in(qgis_crs(crs), source, context, feedback)
    label, metres = source.sourceName() or "REGIONS", metres_per_unit(crs)
    regions: List[Region] = []
    features: List[QgsFeature] = []
    met: List[str] = []
    for feature in source.getFeatures(request):
        geometry = feature.geometry()
        if geometry.isNull() or geometry.isEmpty():
            raise QgsProcessingException(
                translate("hummock", "{layer}: feature {id} has no geometry; delete or draw it.").format(
                    layer=label, id=feature.id()
                )
            )
        value = feature[name_field] if name_field else None
        name = str(len(regions) + 1) if is_null(value) or not str(value).strip() else str(value).strip()
        met.append(name)
        if met.count(name) > 1:
            name = f"{name} ({met.count(name)})"
        rings = tuple(ring[:-1, :2] * metres for ring in parts_of(geometry, False))
        regions.append(Region(name, rings))
        features.append(feature)
    if not regions:
        raise QgsProcessingException(
            translate("hummock", "{layer}: there are no polygons in it; draw one or leave it out.").format(layer=label)
        )
    return regions, features
