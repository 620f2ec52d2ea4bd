"""What the report of a survey is asked of the finished surface: water, volumes, a road, pads."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, Iterator, Mapping, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterMeshLayer,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.arguments.numbers import number_or_word
from ..core.job.grading import GradingQuestion
from ..core.job.road import RoadQuestion
from ..core.job.settings import Question
from ..core.job.volumes import VolumeQuestion
from ..core.job.water import WaterQuestion
from ..core.units import LengthUnit
from .algorithm import HummockAlgorithm
from .parameters import given_file, tables
from .versions import LINE_SOURCE, POINT_SOURCE, POLYGON_SOURCE

translate = QCoreApplication.translate

#: Layers that questions are about, as files of the job.
LAYERS = ("road", "pad", "inlets", "regions")


def add_questions(algorithm: HummockAlgorithm) -> None:
    """What else the report shall tell of the surface."""
    algorithm.add(
        QgsProcessingParameterBoolean("WATER", translate("hummock", "Tell where the water runs"), False),
        translate("hummock", "Paths, ponds and catchments."),
    )
    algorithm.add(
        QgsProcessingParameterFeatureSource("INLETS", translate("hummock", "Inlets"), [POINT_SOURCE], optional=True),
        translate("hummock", "Gullies and the like, where water leaves the surface."),
    )
    for name, label, help_text in (
        (
            "AGAINST",
            translate("hummock", "Design surface (2DM mesh)"),
            translate("hummock", "Cut and fill from the survey to it."),
        ),
        (
            "SINCE",
            translate("hummock", "Earlier surface (2DM mesh)"),
            translate("hummock", "Cut and fill from it to the survey. Give a design or an earlier surface."),
        ),
    ):
        algorithm.add(QgsProcessingParameterMeshLayer(name, label, optional=True), help_text)
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "REGIONS", translate("hummock", "Regions of the volumes"), [POLYGON_SOURCE], optional=True
        ),
        translate("hummock", "Parcels or phases whose volumes are told apart; the field name names them."),
    )
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "ROAD", translate("hummock", "Line of a road"), [LINE_SOURCE], optional=True
        ),
        translate("hummock", "Profile, sections and grades along it, checked against limits."),
    )
    algorithm.add(
        given_file(
            "RULES",
            translate("hummock", "Limits of the road (CSV; empty: those that come with Hummock)"),
            tables(),
        ),
        translate("hummock", "As in the check of a road against limits."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "PAD", translate("hummock", "Pads to be graded"), [POLYGON_SOURCE], optional=True
        ),
        translate("hummock", "Cut and fill of level pads, with slopes to the ground."),
    )
    algorithm.add(
        QgsProcessingParameterString(
            "PAD_LEVEL", translate("hummock", "Height of the pads (a number, or balance)"), optional=True
        ),
        translate("hummock", "balance: the height where cut makes up for fill."),
    )


def read_questions(
    algorithm: HummockAlgorithm,
    lines: Mapping[str, Optional[Path]],
    unit: LengthUnit,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
) -> Iterator[Question]:
    """What else the report shall tell. Raises for a choice about something that is not asked."""
    meshes = {name: algorithm.parameterAsMeshLayer(parameters, name.upper(), context) for name in ("against", "since")}
    water = algorithm.parameterAsBool(parameters, "WATER", context)
    level = algorithm.parameterAsString(parameters, "PAD_LEVEL", context).strip()
    rules = algorithm.parameterAsFile(parameters, "RULES", context)
    for name, given, of, asked in (
        ("INLETS", lines["inlets"], "WATER", water),
        ("RULES", rules, "ROAD", lines["road"]),
        ("PAD_LEVEL", level, "PAD", lines["pad"]),
        ("REGIONS", lines["regions"], "AGAINST", any(mesh is not None for mesh in meshes.values())),
    ):
        if given and not asked:
            label, other = (algorithm.parameterDefinition(one).description() for one in (name, of))
            raise QgsProcessingException(
                translate("hummock", "“{name}” counts for nothing without “{other}”: give that too.").format(
                    name=label, other=other
                )
            )
    if water:
        yield WaterQuestion(lines["inlets"])
    if lines["road"] is not None:
        yield RoadQuestion(lines["road"], Path(rules) if rules else None)
    if lines["pad"] is not None:
        height = number_or_word("--pad-level", "balance")(level) if level else None
        fixed = height * unit.metres if isinstance(height, float) else None
        yield GradingQuestion(lines["pad"], fixed, height == "balance", unit=unit)
    for name, mesh in meshes.items():
        if mesh is not None:
            compared: Dict[str, Any] = {name: Path(mesh.source())}
            yield VolumeQuestion(**compared, regions=lines["regions"], unit=unit)
