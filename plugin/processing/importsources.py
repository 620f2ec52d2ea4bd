"""What a survey is read from: files, and layers of points that are loaded already, merged into one survey."""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Dict, List, Optional, Tuple

from qgis.core import (
    QgsFeatureSource,
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterCrs,
    QgsProcessingParameterFile,
    QgsProcessingParameterMultipleLayers,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs import source_crs
from ..core.georeference.intake import Intake, take_in
from ..core.georeference.intake_options import IntakeOptions
from ..core.points.delimited import PointFile
from ..core.progress import Progress, part
from ..core.units import LengthUnit
from .algorithm import HummockAlgorithm
from .importoptions import chosen_files, chosen_options
from .parameters import crs_text, given_file, optional_source, survey_files, tables
from .pointlayer import PointColumns, read_survey_layer
from .pointsource import add_field_parameters, add_layer_parameter, chosen_columns
from .projectmarks import project_crs, project_landmarks
from .versions import FILE_SOURCE, has_z

translate = QCoreApplication.translate

#: A layer, what it is called, and which fields hold what.
_Layer = Tuple[QgsFeatureSource, str, PointColumns]


def add_survey_file(algorithm: HummockAlgorithm, help_text: str) -> None:
    """INPUT."""
    algorithm.add(given_file("INPUT", translate("hummock", "Survey file"), survey_files()), help_text)


def add_more_files(algorithm: HummockAlgorithm, help_text: str) -> None:
    """MORE."""
    label = translate("hummock", "More files of the same site")
    algorithm.add(QgsProcessingParameterMultipleLayers("MORE", label, FILE_SOURCE, optional=True), help_text)


def add_layer_of_points(algorithm: HummockAlgorithm) -> None:
    """LAYER and its fields."""
    add_layer_parameter(
        algorithm,
        "LAYER",
        translate("hummock", "Layer of points in place of the file"),
        translate("hummock", "Points with Z or with a height field. Its CRS is that of its coordinates."),
        optional=True,
    )
    add_field_parameters(algorithm, "LAYER")


def add_wanted_crs(algorithm: HummockAlgorithm, help_text: str, optional: bool = False) -> None:
    """CRS."""
    label = translate("hummock", "CRS of the points wanted")
    algorithm.add(QgsProcessingParameterCrs("CRS", label, optional=optional), help_text)


def decisions_file() -> QgsProcessingParameterFile:
    """DECISIONS."""
    return given_file("DECISIONS", translate("hummock", "Decisions on points (CSV)"), tables())


def take_in_chosen(
    algorithm: QgsProcessingAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> Intake:
    """All that INPUT, MORE, LAYER and MORE_LAYERS name, as one survey.

    Raises SurveyError, and QgsProcessingException where nothing is named, or INPUT and LAYER both.
    """
    first = algorithm.parameterAsFile(parameters, "INPUT", context)
    files = ([first] if first else []) + chosen_files(algorithm, parameters, "MORE", context)
    layers = _layers(algorithm, parameters, context)
    if (first and parameters.get("LAYER")) or not (files or layers):
        raise QgsProcessingException(
            translate("hummock", "Give a survey file, or a layer of points in its place (not both).")
        )
    options = chosen_options(algorithm, parameters, context, files[0] if files else layers[0][1])
    taken = tuple(layer.id() for layer in _map_layers(algorithm, parameters, context))
    options = replace(options, landmarks=project_landmarks(context, taken), project=project_crs(context))
    read = [
        _read(layer, options, feedback, part(progress, 0.5 * i / len(layers), 0.5 * (i + 1) / len(layers)))
        for i, layer in enumerate(layers)
    ]
    return take_in(files, options, part(progress, 0.5 if layers else 0.0, 1.0), read)


def _map_layers(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> List[Any]:
    """The layers that are read as part of the survey."""
    more = algorithm.parameterAsLayerList(parameters, "MORE_LAYERS", context) if parameters.get("MORE_LAYERS") else []
    one = algorithm.parameterAsVectorLayer(parameters, "LAYER", context) if parameters.get("LAYER") else None
    return [layer for layer in (one, *(more or [])) if layer is not None]


def _layers(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> List[_Layer]:
    found: List[_Layer] = []
    layer = optional_source(algorithm, parameters, "LAYER", context)
    if layer is not None:
        found.append((layer, layer.sourceName() or "LAYER", chosen_columns(algorithm, parameters, context, layer)))
    given = parameters.get("MORE_LAYERS") or []
    more = algorithm.parameterAsLayerList(parameters, "MORE_LAYERS", context) if given else []
    if given and len(more) < (1 if isinstance(given, str) else len(given)):
        raise QgsProcessingException(algorithm.invalidSourceError(parameters, "MORE_LAYERS"))
    seen = {layer.id() for layer in more}
    if len(seen) < len(more):
        raise QgsProcessingException(translate("hummock", "A layer is given twice; give each layer once."))
    names = [label for _, label, _ in found]
    for one in more:
        label = _free(one.name() or "MORE_LAYERS", names)
        names.append(label)
        found.append((one, label, _usual_columns(one)))
    return found


def _free(name: str, taken: List[str]) -> str:
    """``name``, with a number where another layer is called so."""
    number, free = 2, name
    while free in taken:
        number, free = number + 1, f"{name} ({number})"
    return free


def _usual_columns(layer: Any) -> PointColumns:
    """Heights from Z, or a field that is called so where there is none; the code from its field."""
    names = {item.name().lower(): item.name() for item in reversed(layer.fields().toList())}
    height = "" if has_z(layer.wkbType()) else names.get("height", "")
    return PointColumns(height, names.get("code", ""), names.get("name", ""))


def _read(
    layer: _Layer, options: IntakeOptions, feedback: QgsProcessingFeedback, progress: Progress
) -> Tuple[PointFile, Optional[Any]]:
    """The points of a layer, and the CRS of its degrees, None for plan coordinates."""
    source, label, columns = layer
    local = (options.unit or LengthUnit.METRE) if options.crs is None else None
    read = read_survey_layer(source, columns, label, feedback, progress, options.height_unit, local)
    return read, None if read.geographic is None else source_crs(crs_text(source.sourceCrs()))
