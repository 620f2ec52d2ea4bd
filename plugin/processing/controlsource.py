"""Control points as the user gives them: a file, or a layer in its place."""

from __future__ import annotations

from typing import Any, Dict, Optional, Tuple

from pyproj import CRS
from qgis.core import QgsProcessingAlgorithm, QgsProcessingContext, QgsProcessingException, QgsProcessingFeedback
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.control import ControlPoints
from ..core.georeference.control_file import read_control
from ..core.georeference.similarity import HeightFit
from ..core.points.pointset import PointSet
from ..core.units import LengthUnit, metres_per_height_unit, metres_per_unit
from .algorithm import HummockAlgorithm
from .parameters import given_file, optional_source, tables
from .pointlayer import read_points_layer
from .pointsource import add_field_parameters, add_layer_parameter, chosen_columns

translate = QCoreApplication.translate

#: In the order of the choices of HEIGHTS.
HEIGHT_FITS = (HeightFit.SHIFT, HeightFit.PLANE, HeightFit.KEEP)


def add_control_parameters(algorithm: HummockAlgorithm) -> None:
    """CONTROL, CONTROL_LAYER and its fields."""
    algorithm.add(
        given_file("CONTROL", translate("hummock", "Control points (CSV)"), tables()),
        translate("hummock", "The first line names the columns name, easting, northing and, where known, height."),
    )
    add_layer_parameter(
        algorithm,
        "CONTROL_LAYER",
        translate("hummock", "Layer of control points in place of the file"),
        translate("hummock", "In the CRS wanted. Points without a height do not count in height."),
        optional=True,
    )
    add_field_parameters(algorithm, "CONTROL_LAYER", "CONTROL_", code=False)


def chosen_control(
    algorithm: QgsProcessingAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    wanted: Optional[CRS],
    unit: Optional[LengthUnit] = None,
    reading: str = "",
) -> Tuple[ControlPoints, Optional[CRS]]:
    """The control points and their CRS: ``wanted``, or that of the layer where None.

    ``unit``: of the file, that of the CRS where None; ``reading``: how the user says it is to be read. Raises
    SurveyError, and QgsProcessingException for a file and a layer both or none, and a layer in another CRS than wanted.
    """
    path = algorithm.parameterAsFile(parameters, "CONTROL", context)
    layer = optional_source(algorithm, parameters, "CONTROL_LAYER", context)
    if bool(path) == (layer is not None):
        raise QgsProcessingException(
            translate("hummock", "Give a file of control points, or a layer in its place (not both).")
        )
    if layer is None:
        return read_control(path, unit, wanted, reading), wanted
    label = layer.sourceName() or "CONTROL_LAYER"
    columns = chosen_columns(algorithm, parameters, context, layer, "CONTROL_", code=False)
    points = read_points_layer(layer, columns, label, feedback, lambda *_: None, keep_without_height=True)
    if wanted is not None and wanted != points.crs:
        raise QgsProcessingException(
            translate(
                "hummock",
                "{layer}: is in {crs}, not in the CRS chosen; leave the CRS empty or reproject the layer.",
            ).format(layer=label, crs=points.crs.name if points.crs is not None else "")
        )
    return _control_of(points, label), points.crs


def _control_of(points: PointSet, label: str) -> ControlPoints:
    """A layer of points as control. Names must differ."""
    seen: Dict[str, int] = {}
    for i, name in enumerate(points.name.tolist()):
        if not name or name in seen:
            reason = (
                translate(
                    "hummock", "{layer}: control point {number} has no name; give it one, or choose the name field."
                )
                if not name
                else translate("hummock", "{layer}: control point “{name}” occurs twice; keep one.")
            )
            raise QgsProcessingException(reason.format(layer=label, number=i + 1, name=name))
        seen[name] = i
    metres = (metres_per_unit(points.crs), metres_per_height_unit(points.crs))
    return ControlPoints(points.name, points.easting, points.northing, points.height, points.source_line, label, metres)
