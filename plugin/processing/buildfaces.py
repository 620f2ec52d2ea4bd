"""The vertical faces of “Build the surface”: kerbs and walls from one line and the height of the face."""

from __future__ import annotations

from typing import Any, Dict, List, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.linework.constraints import ConstraintLine, Constraints, LineKind
from ..core.linework.drawn import DrawnRow, constraints_from_rows
from ..core.linework.faces import FaceSide, vertical_faces
from ..core.progress import Progress
from .algorithm import HummockAlgorithm, report
from .drawnsource import drawn_parts
from .parameters import number, optional_number, optional_source
from .versions import LINE_SOURCE, NUMERIC_FIELD, is_null

translate = QCoreApplication.translate

#: In the order of the choices of FACE_SIDE.
SIDES = (FaceSide.LEFT, FaceSide.RIGHT)


def add_face_parameters(algorithm: HummockAlgorithm) -> None:
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            "FACES", translate("hummock", "Kerbs and walls (lines with heights)"), [LINE_SOURCE], optional=True
        ),
        translate("hummock", "Each line becomes two breaklines a small offset apart, a vertical face between them."),
    )
    algorithm.add(
        number("FACE_HEIGHT", translate("hummock", "Height of the faces (m; below 0: the second line is lower)")),
        translate("hummock", "From the drawn line to the second one, such as 0.12 for a kerb drawn at its foot."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterField(
            "FACE_FIELD",
            translate("hummock", "Field with the height of the face (m; empty: as above)"),
            parentLayerParameterName="FACES",
            type=NUMERIC_FIELD,
            optional=True,
        ),
        translate("hummock", "Where lines differ. A line whose field is empty takes the height above."),
        advanced=True,
    )
    algorithm.add(
        number("FACE_OFFSET", translate("hummock", "Offset of the second line in plan (m)"), 0.02, 0.0),
        translate("hummock", "A surface has one height at a place, so faces lean by this much."),
        advanced=True,
    )
    sides = [translate("hummock", "left of the line"), translate("hummock", "right of the line")]
    algorithm.add(
        QgsProcessingParameterEnum("FACE_SIDE", translate("hummock", "Second line"), sides, defaultValue=0),
        translate("hummock", "As you look along the line from its first vertex."),
        advanced=True,
    )


def read_faces(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    crs: Any,
    progress: Progress,
) -> Constraints:
    """Both lines of each face, metres in ``crs``. Raises SurveyError, QgsProcessingException."""
    source = optional_source(algorithm, parameters, "FACES", context)
    if source is None:
        return Constraints()
    usual = optional_number(algorithm, parameters, "FACE_HEIGHT", context)
    field = algorithm.parameterAsString(parameters, "FACE_FIELD", context)
    offset = algorithm.parameterAsDouble(parameters, "FACE_OFFSET", context)
    side = SIDES[algorithm.parameterAsEnum(parameters, "FACE_SIDE", context)]
    lines: List[ConstraintLine] = []
    for feature, parts in drawn_parts(source, crs, context, feedback, progress):
        label = f"{source.sourceName()} {feature.id()}"
        height = _height(feature[field] if field else None, usual, label)
        drawn = constraints_from_rows([DrawnRow(LineKind.BREAKLINE, parts, label)])
        report(drawn.messages, feedback)
        for line in drawn.constraints.lines:
            faces = vertical_faces(line, height, offset, side)
            report(faces.messages, feedback)
            lines += faces.lines
    return Constraints(tuple(lines))


def _height(value: Any, usual: Optional[float], label: str) -> float:
    """The face's own height, or else the usual one."""
    if not is_null(value):
        try:
            return float(value)
        except (TypeError, ValueError):
            pass
    elif usual is not None:
        return usual
    raise QgsProcessingException(
        translate("hummock", "{label}: the height of its face is not known; give one, or fill the field.").format(
            label=label
        )
    )
