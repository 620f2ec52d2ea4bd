"""A layer of points as the input of an algorithm: which field holds what, and in which unit."""

from __future__ import annotations

from typing import Any, Dict

from qgis.core import (
    QgsFeatureSource,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
)
from qgis.PyQt.QtCore import QCoreApplication

from .algorithm import HummockAlgorithm
from .pointlayer import PointColumns
from .versions import ANY_FIELD, NUMERIC_FIELD, POINT_SOURCE

translate = QCoreApplication.translate


def add_layer_parameter(algorithm: HummockAlgorithm, name: str, label: str, help_text: str, optional: bool) -> None:
    """A layer of points."""
    algorithm.add(QgsProcessingParameterFeatureSource(name, label, [POINT_SOURCE], optional=optional), help_text)


def add_field_parameters(algorithm: HummockAlgorithm, layer: str, prefix: str = "", code: bool = True) -> None:
    """Fields of the parameter ``layer``: height, name and code, as ``<prefix>HEIGHT_FIELD`` and so on."""
    fields = [
        (
            "HEIGHT_FIELD",
            translate("hummock", "Height field (empty: the points' Z)"),
            NUMERIC_FIELD,
            translate("hummock", "For points whose geometry has no heights. In the unit of the heights."),
        ),
        (
            "NAME_FIELD",
            translate("hummock", "Name field (empty: “name” where there is one)"),
            ANY_FIELD,
            translate("hummock", "The field that names the points."),
        ),
    ]
    for name, label, kind, help_text in fields:
        algorithm.add(
            QgsProcessingParameterField(prefix + name, label, parentLayerParameterName=layer, type=kind, optional=True),
            help_text,
            advanced=True,
        )
    if code:
        add_code_field(algorithm, layer, prefix)


def add_height_field(algorithm: HummockAlgorithm) -> None:
    """HEIGHT_FIELD of the survey points INPUT, in the unit of their CRS."""
    algorithm.add(
        QgsProcessingParameterField(
            "HEIGHT_FIELD",
            translate("hummock", "Height field (in the unit of the CRS; empty: the points' Z)"),
            parentLayerParameterName="INPUT",
            type=NUMERIC_FIELD,
            optional=True,
        ),
        translate("hummock", "Only for points whose geometry has no heights."),
        advanced=True,
    )


def add_code_field(algorithm: HummockAlgorithm, layer: str = "INPUT", prefix: str = "") -> None:
    """The field with the codes of the parameter ``layer``, as ``<prefix>CODE_FIELD``."""
    algorithm.add(
        QgsProcessingParameterField(
            prefix + "CODE_FIELD",
            translate("hummock", "Code field (empty: “code” where there is one)"),
            parentLayerParameterName=layer,
            type=ANY_FIELD,
            optional=True,
        ),
        translate("hummock", "The field that holds what the surveyor typed beside the point."),
        advanced=True,
    )


def chosen_columns(
    algorithm: QgsProcessingAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    source: QgsFeatureSource,
    prefix: str = "",
    code: bool = True,
) -> PointColumns:
    """The fields chosen; the code from a field of that name where nothing is chosen."""
    height, name = (
        algorithm.parameterAsString(parameters, prefix + field, context) for field in ("HEIGHT_FIELD", "NAME_FIELD")
    )
    coded = ""
    if code:
        own = "code" if "code" in [item.name() for item in source.fields()] else ""
        coded = algorithm.parameterAsString(parameters, prefix + "CODE_FIELD", context) or own
    return PointColumns(height, coded, name)
