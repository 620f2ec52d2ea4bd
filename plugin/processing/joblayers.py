"""What a job has found as layers: one GeoPackage beside its mesh, each layer with its style inside."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any, Callable, Dict, List, NamedTuple, Sequence, Set

from qgis.core import QgsFields, QgsProcessingContext, QgsVectorLayer
from qgis.PyQt.QtCore import QCoreApplication

from ..core.job.job_file import JobRecord
from ..core.progress import Progress, silent
from ..core.report.results import JobResult
from .algorithm import say
from .checklayers import check_fields, write_check
from .foundlayers import found_fields, write_found
from .geopackage import PackedLayer, description_of, empty_layer, write_geopackage
from .inspectsurface import finding_fields, write_findings
from .layers import contour_fields, line_fields, write_contours, write_lines
from .localnumbers import units_of
from .parameters import qgis_crs
from .pointlayer import point_fields, reject_fields, write_points, write_rejects
from .sheetlayers import label_fields, spot_fields, write_labels, write_spots
from .styles import (
    CONTOURS,
    FINDINGS,
    FOUND_LINES,
    LABELS,
    LINES,
    PLACES,
    POINTS,
    SPOTS,
    SURVEY_FINDINGS,
    apply_qml,
)
from .trustlayers import place_fields, write_places
from .versions import LINE_Z, MULTILINE_Z, MULTIPOINT_Z, NO_GEOMETRY, POINT, POINT_Z

translate = QCoreApplication.translate

GEOPACKAGE = "job.gpkg"
#: The same while it waits for the layers on the map to let go of the former one.
NEXT = "job.next.gpkg"
MESH = "surface.2dm"
#: Tables of the GeoPackage.
POINT_TABLE, FOUND_TABLE, LINE_TABLE = "points", "lines_found", "surface_lines"


#: Stages of a job that its layers are made from.
LAYER_STAGES = ("read", "check", "decisions", "lines", "surface", "quality", "contours", "findings", "sheet")


class JobLayer(NamedTuple):
    """A layer of a job. ``table``: in the GeoPackage; ``title``: on the map, in QGIS's language; ``shown``: at
    first."""

    table: str
    title: str
    shown: bool


class _Made(NamedTuple):
    """How a layer is made."""

    table: str
    title: str
    shown: bool
    kind: Any
    fields: QgsFields
    write: Callable[[Any], Any]
    qml: str


def layers_old(record: JobRecord, folder: Path) -> Set[str]:
    """The stages of a job of which its layers show an earlier run; all where there are no layers."""
    try:
        told = json.loads(description_of(folder / GEOPACKAGE, POINT_TABLE) or "{}")
    except ValueError:
        told = {}
    made = _made_from(record)
    return {name for name, gives in made.items() if told.get(name) != gives}


#: Digits of a digest that tell one run from another.
_SHOWN = 16


def _made_from(record: JobRecord) -> Dict[str, str]:
    """Digests of the results of stages that the layers of a job are made from."""
    return {name: record.stages[name].gives[:_SHOWN] for name in LAYER_STAGES if name in record.stages}


def write_job_layers(
    result: JobResult, record: JobRecord, folder: Path, context: QgsProcessingContext, progress: Progress = silent
) -> List[JobLayer]:
    """Write the layers of a job into its next GeoPackage, which appears when it is whole; the topmost on the map first.

    The description of the points tells of which results of stages, see :func:`layers_old`. Raises
    QgsProcessingException where it cannot be written.
    """
    with units_of(result.crs):
        return _write(result, json.dumps(_made_from(record)), folder, context, progress)


def _write(
    result: JobResult, description: str, folder: Path, context: QgsProcessingContext, progress: Progress
) -> List[JobLayer]:
    crs = qgis_crs(result.crs)
    packed = []
    for one in _layers(result):
        layer = empty_layer(one.title, one.kind, crs, one.fields)
        one.write(layer.dataProvider())
        layer.updateExtents()
        if one.qml:
            apply_qml(layer, one.qml)
        if one.table == "contours" and result.sheet is not None:
            layer.setLabelsEnabled(False)  # they are points of their own, placed for the sheet
        packed.append(PackedLayer(one.table, layer, description if one.table == POINT_TABLE else ""))
    write_geopackage(packed, str(folder / NEXT), context, progress)
    return [JobLayer(one.table, one.title, one.shown) for one in _layers(result)]


def _layers(result: JobResult) -> Sequence[_Made]:
    sheet, check, found = result.sheet, result.check, result.ground_lines
    points, crs, unit = result.points, result.crs, result.shown_height_unit
    contours = result.contours if sheet is None else sheet.contours
    made: List[_Made] = []

    def add(
        table: str, title: str, shown: bool, kind: Any, fields: QgsFields, write: Callable[[Any], Any], qml: str
    ) -> None:
        made.append(_Made(table, title, shown, kind, fields, write, qml))

    if sheet is not None:
        labels, spots = sheet.labels, sheet.spots
        add("contour_labels", translate("hummock", "Contour labels"), True, POINT, label_fields(),
            lambda sink: write_labels(labels, contours, sink), LABELS)  # fmt: skip
        add("spot_heights", translate("hummock", "Spot heights"), True, POINT_Z, spot_fields(),
            lambda sink: write_spots(spots, crs, unit, 2, sink), SPOTS)  # fmt: skip
    add("places_to_walk", translate("hummock", "Places to walk again"), False, POINT_Z, place_fields(),
        lambda sink: write_places(result.quality.coverage.walk_again, sink), PLACES)  # fmt: skip
    if check is not None:
        add("check_findings", translate("hummock", "Findings of the checks"), False, MULTIPOINT_Z, check_fields(),
            lambda sink: write_check(check, sink), SURVEY_FINDINGS)  # fmt: skip
    add("surface_findings", translate("hummock", "Findings on the surface"), False, POINT_Z, finding_fields(),
        lambda sink: write_findings(result.findings, crs, sink, silent), FINDINGS)  # fmt: skip
    add(POINT_TABLE, translate("hummock", "Survey points"), False, POINT_Z, point_fields(points),
        lambda sink: write_points(points, sink, silent), POINTS)  # fmt: skip
    if found is not None:
        add(FOUND_TABLE, translate("hummock", "Lines of the ground"), True, MULTILINE_Z, found_fields(),
            lambda sink: write_found(found.lines, crs, sink), FOUND_LINES)  # fmt: skip
    add(LINE_TABLE, translate("hummock", "Lines of the surface"), True, LINE_Z, line_fields(),
        lambda sink: write_lines(result.edited.constraints, crs, sink), LINES)  # fmt: skip
    add("contours", translate("hummock", "Contours"), True, LINE_Z, contour_fields(),
        lambda sink: write_contours(contours, sink, silent), CONTOURS)  # fmt: skip
    add("rejected_lines", translate("hummock", "Rejected lines"), False, NO_GEOMETRY,
        reject_fields(result.survey.rejects),
        lambda sink: write_rejects(result.survey.rejects, say, sink), "")  # fmt: skip
    return made


def open_job_layer(folder: Path, layer: JobLayer) -> QgsVectorLayer:
    """A table of the job's GeoPackage, which QGIS opens with the style inside."""
    return QgsVectorLayer(f"{folder / GEOPACKAGE}|layername={layer.table}", layer.title, "ogr")
