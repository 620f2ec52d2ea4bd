"""Check points of a layer or a file, for the tools that test a surface."""

from __future__ import annotations

from typing import Any, Dict, Optional

import numpy as np
from qgis.core import (
    QgsFeatureSource,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
    QgsProcessingParameterFile,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress
from ..core.quality.check_points import CheckPoints, checks_from_points, read_check_points
from ..core.surface.tin import Tin
from .algorithm import HummockAlgorithm
from .parameters import given_file, optional_source, tables
from .pointlayer import PointColumns, read_points_layer
from .surfaceinput import same_crs
from .versions import ANY_FIELD, NUMERIC_FIELD, POINT_SOURCE

translate = QCoreApplication.translate


def add_check_parameters(algorithm: HummockAlgorithm, file_help: str, cover: bool = False) -> None:
    """CHECKS, HEIGHT_FIELD and CHECKS_FILE, whose help is ``file_help``; with ``cover`` COVER_FIELD too."""
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "CHECKS", translate("hummock", "Check points (layer)"), [POINT_SOURCE], optional=True
        ),
        translate("hummock", "Points with Z or with a height field, in the CRS of the surface."),
    )
    algorithm.add(
        QgsProcessingParameterField(
            "HEIGHT_FIELD",
            translate("hummock", "Height field (empty: Z)"),
            parentLayerParameterName="CHECKS",
            type=NUMERIC_FIELD,
            optional=True,
        ),
        translate("hummock", "In the unit of the heights of the CRS."),
    )
    if cover:
        algorithm.add(
            QgsProcessingParameterField(
                "COVER_FIELD",
                translate("hummock", "Cover field (empty: the field cover, if there is one)"),
                parentLayerParameterName="CHECKS",
                type=ANY_FIELD,
                optional=True,
            ),
            translate("hummock", "What grows at the point, such as hard, short grass, tall grass."),
        )
    algorithm.add(checks_file(), file_help)


def checks_file() -> QgsProcessingParameterFile:
    """CHECKS_FILE."""
    return given_file("CHECKS_FILE", translate("hummock", "Check points (CSV file)"), tables())


def chosen_checks(
    algorithm: HummockAlgorithm,
    tin: Tin,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> Optional[CheckPoints]:
    """The check points that the parameters of :func:`add_check_parameters` name; None where they name none.

    Raises SurveyError, and QgsProcessingException for a layer and a file at once or a layer in another CRS.
    """
    source = optional_source(algorithm, parameters, "CHECKS", context)
    path = algorithm.parameterAsFile(parameters, "CHECKS_FILE", context)
    if source is not None and path:
        raise QgsProcessingException(translate("hummock", "Give check points as a layer or as a file, not as both."))
    if path:
        return read_check_points(path, crs=tin.crs)
    if source is None:
        return None
    height = algorithm.parameterAsString(parameters, "HEIGHT_FIELD", context)
    cover = ""
    if algorithm.parameterDefinition("COVER_FIELD") is not None:
        cover = algorithm.parameterAsString(parameters, "COVER_FIELD", context)
    return _of_layer(source, tin, PointColumns(height=height), cover or "cover", feedback, progress)


def _of_layer(
    source: QgsFeatureSource,
    tin: Tin,
    columns: PointColumns,
    cover: str,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> CheckPoints:
    """The points of a layer, what grows there from the field ``cover`` where it has one."""
    label = source.sourceName() or "CHECKS"
    same_crs(source, tin, label)
    read = read_points_layer(source, columns, label, feedback, progress)
    column = next((name for name in read.extra if name.lower() == cover.lower()), None)
    words = np.full(len(read), "", object) if column is None else read.extra[column]
    return checks_from_points(read, [str(word) for word in words])
