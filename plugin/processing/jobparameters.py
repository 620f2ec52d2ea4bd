"""The choices of a job as parameters of one algorithm, and a new job's choices in QGIS."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict

from qgis.core import QgsProcessingAlgorithm, QgsProcessingContext, QgsProcessingParameterDefinition

from ..core.contours.lines import ContourOptions
from ..core.contours.sheet import SheetOptions
from ..core.job.settings import JobSettings
from ..core.surface.build import SurfaceOptions
from .jobchoices import SMOOTH, all_choices, new_algorithm

RIM_EDGE = 10.0  # m; about twice the distance of passes


def usual_settings(survey: Path, folder: Path, contours: ContourOptions, scale: float = 500.0) -> JobSettings:
    """The choices of a new job in QGIS."""
    sheet = SheetOptions(SMOOTH, None, scale)
    return JobSettings(survey, folder, contours, sheet=sheet, surface=SurfaceOptions(max_rim_edge=RIM_EDGE))


def add_choices(algorithm: Any, usual: JobSettings) -> None:
    """All choices of a job as advanced parameters of ``algorithm``, but for those that it has already."""
    made: Dict[str, QgsProcessingAlgorithm] = {}
    for choice in all_choices():
        if algorithm.parameterDefinition(choice.name) is not None or choice.algorithm == algorithm.NAME:
            continue
        made.setdefault(choice.algorithm, new_algorithm(choice.algorithm))
        definition = choice.as_in(made[choice.algorithm])
        definition.setMetadata({})  # no button for a preview of other parameters
        definition.setDefaultValue(choice.shown(usual))
        algorithm.add(definition, definition.help(), advanced=True)


def read_choices(
    algorithm: QgsProcessingAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    settings: JobSettings,
) -> JobSettings:
    """``settings`` with what the parameters of ``algorithm`` say. Layers of lines are not read here.

    Raises SurveyError for words that are not understood.
    """
    for choice in all_choices():
        definition = algorithm.parameterDefinition(choice.name)
        if definition is not None and definition.type() != "source":
            settings = choice.chosen(settings, _value(algorithm, definition, parameters, context))
    return settings


def _value(
    algorithm: QgsProcessingAlgorithm,
    definition: QgsProcessingParameterDefinition,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
) -> Any:
    name, kind = definition.name(), definition.type()
    if parameters.get(name, definition.defaultValue()) in (None, ""):
        return None
    read = {
        "enum": algorithm.parameterAsEnum,
        "boolean": algorithm.parameterAsBool,
        "number": algorithm.parameterAsDouble,
        "distance": algorithm.parameterAsDouble,
        "crs": algorithm.parameterAsCrs,
    }
    return read.get(kind, algorithm.parameterAsString)(parameters, name, context)
