"""The edits of “Build the surface”: its parameters for them, and what it writes of them."""

from __future__ import annotations

from typing import Any, Dict, List

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterFileDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress
from ..core.surface.edit_log import REACH
from ..core.surface.edited import EditReport
from ..core.surface.edits import Edit, read_edits, write_edits
from .algorithm import HummockAlgorithm
from .editlayers import LINE_EDITS, POINT_EDITS, POLYGON_EDITS, edit_fields, read_edit_layer, write_edit_report
from .parameters import given_file, number, optional_source, qgis_crs
from .styles import EDITS, dress_vector
from .versions import LINE_SOURCE, POINT, POINT_SOURCE, POLYGON_SOURCE

translate = QCoreApplication.translate

#: The layers of edits: parameter, and what may be drawn there.
LAYERS = (("EDIT_POINTS", POINT_EDITS), ("EDIT_LINES", LINE_EDITS), ("EDIT_AREAS", POLYGON_EDITS))


def add_edit_parameters(algorithm: HummockAlgorithm) -> None:
    algorithm.add(
        given_file(
            "EDITS",
            translate("hummock", "Edits kept from before (JSON)"),
            translate("hummock", "Edits (*.json);;All files (*)"),
        ),
        translate("hummock", "A file of edits as this algorithm writes it; they come before those of the layers."),
        advanced=True,
    )
    for name, label, kind, help_text in (
        (
            "EDIT_POINTS",
            translate("hummock", "Edits: points to add or move"),
            POINT_SOURCE,
            translate(
                "hummock",
                "Points with heights are added. A column “edit” may say move_point (a new height, or a “difference”), "
                "swap_edge, remove_triangle or add_triangle instead; “height” goes before Z, in the CRS's unit.",
            ),
        ),
        (
            "EDIT_LINES",
            translate("hummock", "Edits: lines to force an edge"),
            LINE_SOURCE,
            translate(
                "hummock",
                "Drawn from point to point (snap to them); they become edges. A column “edit” may say swap_edge: the "
                "line then lies on the edge to be replaced by the other diagonal.",
            ),
        ),
        (
            "EDIT_AREAS",
            translate("hummock", "Edits: polygons to drop triangles"),
            POLYGON_SOURCE,
            translate(
                "hummock",
                "Triangles whose centre lies inside are left out. A column “edit” may say remove_triangle (the one "
                "inside) or add_triangle (take back one that boundary, void or rim left out) instead.",
            ),
        ),
    ):
        algorithm.add(QgsProcessingParameterFeatureSource(name, label, [kind], optional=True), help_text, advanced=True)
    algorithm.add(
        number("EDIT_REACH", translate("hummock", "Edits: a point is meant from up to (m)"), REACH, 0.0),
        translate("hummock", "Raise it where edits were drawn without snapping to the points."),
        advanced=True,
    )


def add_edit_outputs(algorithm: HummockAlgorithm) -> None:
    algorithm.add(
        QgsProcessingParameterFeatureSink(
            "EDIT_REPORT",
            translate("hummock", "What became of the edits"),
            POINT_SOURCE,
            optional=True,
            createByDefault=False,
        ),
        translate("hummock", "A point for each edit: whether it applied, and if not, why."),
    )
    algorithm.add(
        QgsProcessingParameterFileDestination(
            "EDITS_OUT",
            translate("hummock", "Edits to keep (JSON)"),
            translate("hummock", "Edits (*.json)"),
            optional=True,
            createByDefault=False,
        ),
        translate("hummock", "All edits of this run in their order, for the next one, those that did not apply too."),
    )


def collect_edits(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    crs: Any,
    progress: Progress,
) -> List[Edit]:
    """The edits of the file, then of the layers. Raises SurveyError, QgsProcessingException."""
    path = algorithm.parameterAsFile(parameters, "EDITS", context)
    edits: List[Edit] = list(read_edits(path)) if path else []
    for name, known in LAYERS:
        source = optional_source(algorithm, parameters, name, context)
        if source is not None:
            edits += read_edit_layer(source, source.sourceName() or name, known, crs, context, feedback, progress)
    return edits


def write_edit_outputs(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    edits: List[Edit],
    told: EditReport,
    crs: Any,
) -> Dict[str, Any]:
    results: Dict[str, Any] = {"EDITS_APPLIED": len(told.applied), "EDITS_MISSED": len(told.not_applied)}
    sink, place = algorithm.parameterAsSink(parameters, "EDIT_REPORT", context, edit_fields(), POINT, qgis_crs(crs))
    if sink is not None:
        write_edit_report(edits, told, crs, sink)
        dress_vector(context, place, EDITS)
        results["EDIT_REPORT"] = place
    path = algorithm.parameterAsFileOutput(parameters, "EDITS_OUT", context)
    if path:
        write_edits(edits, path)
        results["EDITS_OUT"] = path
    if edits:
        feedback.pushInfo(
            translate("hummock", "Edits applied: {applied}, not applied: {missed}.").format(
                applied=len(told.applied), missed=len(told.not_applied)
            )
        )
    return results
