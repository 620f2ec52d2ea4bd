"""A LandXML file as meshes and layers."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, Dict, List, Optional, Set, Tuple

import numpy as np
from qgis.core import (
    QgsFields,
    QgsGeometry,
    QgsLineString,
    QgsPoint,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputMapLayer,
    QgsProcessingOutputMultipleLayers,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterFeatureSink,
    QgsProcessingParameterFile,
    QgsProcessingParameterFolderDestination,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.alignment.stations import format_station
from ..core.handover.landxml_geometry import profile_heights, to_alignment
from ..core.handover.landxml_model import LandAlignment, LandXml
from ..core.handover.landxml_read import read_landxml
from ..core.handover.mesh import write_2dm
from ..core.handover.projection import write_prj
from ..core.progress import part
from ..core.units import heights_to_crs_units, to_crs_units
from .algorithm import HummockAlgorithm, progress_of, report
from .exchangeinput import handover_group
from .layers import kind_word
from .parameters import chosen_unit, core_crs, qgis_crs, unit_choice
from .pointlayer import point_fields, write_points
from .sinks import add_feature, fields_of
from .styles import LINES, POINTS, dress_vector, load_mesh
from .versions import LINE_SOURCE, LINE_Z, ONE_FILE, POINT_SOURCE, POINT_Z

translate = QCoreApplication.translate


class ReadLandXml(HummockAlgorithm):
    """``hummock:readlandxml``"""

    NAME = "readlandxml"
    ICON = "readlandxml.svg"
    GROUP_ID = "handover"

    def title(self) -> str:
        return translate("hummock", "Read LandXML")

    def group(self) -> str:
        return handover_group()

    def summary(self) -> str:
        return translate("hummock", "Reads surfaces, points, lines and alignments of a LandXML file.")

    def words(self) -> str:
        return translate("hummock", "landxml,xml,tin,surface,import,design,alignment,breaklines,points")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Reads the open standard LandXML 1.2 (and 1.0, 1.1): each surface becomes a 2DM mesh that all tools for "
            "surfaces take; points, source lines and alignments become layers. Units and CRS are those the file says; "
            "what you choose here wins.</p>"
            "<p><b>It assumes</b> surfaces of triangles. Faces marked invisible are holes. Curves of alignments become "
            "chords that lie within 1 mm of them; heights of their lines are those of the first profile.</p>"
            "<p><b>What can go wrong:</b> a file that is damaged, cut short, without units, with a corner that is "
            "missing or faces that overlap is refused, with the line and the reason: nothing of it is loaded. Files "
            "that declare entities or a document type are refused too: LandXML needs none. Faces without area in plan "
            "(walls) and spirals other than clothoids are left out and said. A file in one kind of feet with a CRS in "
            "the other is told: ask which is meant.</p>"
            "<p><b>Caution:</b> a design from elsewhere is no better than its source: compare it with the ground and "
            "with its drawings before you set out from it.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add(
            QgsProcessingParameterFile(
                "INPUT", translate("hummock", "LandXML file"), behavior=ONE_FILE,
                fileFilter=translate("hummock", "LandXML files (*.xml *.landxml);;All files (*)"),
            ),
            translate("hummock", "Files of any size; those in a zip are to be unpacked first."),
        )  # fmt: skip
        self.add(
            QgsProcessingParameterCrs("CRS", translate("hummock", "CRS (empty: as the file says)"), optional=True),
            translate("hummock", "What the coordinates are in, whatever the file says. Nothing is transformed."),
        )
        self.add(
            unit_choice("UNIT", translate("hummock", "Unit (empty: as the file says)"), None, optional=True),
            translate("hummock", "Of coordinates and heights."),
            advanced=True,
        )
        self.add(
            unit_choice("HEIGHT_UNIT", translate("hummock", "Unit of heights, if another"), None, optional=True),
            translate("hummock", "For files that say one unit for lengths and another for elevations."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("LOAD", translate("hummock", "Add the surfaces to the map when done"), True),
            translate("hummock", "Switch it off for a step inside a model."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterFolderDestination("FOLDER", translate("hummock", "Folder for the surfaces")),
            translate("hummock", "A mesh (2DM) for each surface, named after it, with its CRS beside it as .prj."),
        )
        for name, label, kind in (
            ("POINTS", translate("hummock", "Points"), POINT_SOURCE),
            ("LINES", translate("hummock", "Breaklines and boundaries"), LINE_SOURCE),
            ("ALIGNMENTS", translate("hummock", "Alignments"), LINE_SOURCE),
        ):
            self.add(
                QgsProcessingParameterFeatureSink(name, label, kind, optional=True, createByDefault=False),
                translate("hummock", "Made only when asked for."),
            )
        self.addOutput(QgsProcessingOutputMapLayer("SURFACE", translate("hummock", "First surface, for the next step")))
        self.addOutput(QgsProcessingOutputMultipleLayers("SURFACES", translate("hummock", "Surfaces")))
        self.add_numbers(
            ("SURFACE_COUNT", translate("hummock", "Surfaces read")),
            ("POINT_COUNT", translate("hummock", "Points read")),
            ("LINE_COUNT", translate("hummock", "Breaklines and boundaries read")),
            ("ALIGNMENT_COUNT", translate("hummock", "Alignments read")),
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        path = self.parameterAsFile(parameters, "INPUT", context)
        given = self.parameterAsCrs(parameters, "CRS", context)
        contents = read_landxml(
            path,
            core_crs(given, path) if given.isValid() else None,
            chosen_unit(self, parameters, "UNIT", context),
            chosen_unit(self, parameters, "HEIGHT_UNIT", context),
            part(progress, 0.0, 0.7),
        )
        report(contents.messages, feedback)
        if contents.crs is None:
            text = translate("hummock", "{file}: the file does not say its CRS; ask for it and choose it.")
            raise QgsProcessingException(text.format(file=path))
        meshes = self._write_meshes(contents, parameters, context)
        progress(0.8, "layers")
        results: Dict[str, Any] = {"SURFACES": meshes, "SURFACE_COUNT": len(meshes)}
        if meshes:
            results["SURFACE"] = meshes[0]
        results.update(self._write_points(contents, parameters, context, feedback))
        results.update(self._write_lines(contents, parameters, context))
        results.update(self._write_alignments(contents, parameters, context))
        feedback.pushInfo(
            translate(
                "hummock", "Surfaces: {surfaces}, points: {points}, breaklines and boundaries: {lines}, alignments: "
                "{alignments}. Unit of the file: {unit}; CRS: {crs}."
            ).format(
                surfaces=len(meshes), points=results["POINT_COUNT"], lines=results["LINE_COUNT"],
                alignments=len(contents.alignments), unit=contents.unit, crs=contents.crs.name,
            )
        )  # fmt: skip
        progress(1.0, "layers")
        return results

    def _write_meshes(self, contents: LandXml, parameters: Dict[str, Any], context: QgsProcessingContext) -> List[str]:
        folder = Path(self.parameterAsString(parameters, "FOLDER", context))
        surfaces = [(surface.name, surface.tin) for surface in contents.surfaces if surface.tin is not None]
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise QgsProcessingException(
                translate("hummock", "{folder}: the folder cannot be made ({reason}); choose another.").format(
                    folder=folder, reason=error.strerror or str(error)
                )
            ) from None
        load, paths = self.parameterAsBool(parameters, "LOAD", context), []
        taken: Set[str] = set()
        for name, tin in surfaces:
            path = folder / f"{file_name(name, taken)}.2dm"
            write_2dm(tin, path)
            write_prj(path, contents.crs)
            if load:
                load_mesh(context, str(path), "SURFACES", name, qgis_crs(contents.crs))
            paths.append(str(path))
        return paths

    def _write_points(
        self,
        contents: LandXml,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
    ) -> Dict[str, Any]:
        points = contents.points
        results: Dict[str, Any] = {"POINT_COUNT": 0 if points is None else len(points)}
        if points is None:
            return results
        sink, place = self.parameterAsSink(
            parameters, "POINTS", context, point_fields(points), POINT_Z, qgis_crs(contents.crs)
        )
        if sink is not None:
            write_points(points, sink, progress_of(feedback))
            dress_vector(context, place, POINTS)
            results["POINTS"] = place
        return results

    def _write_lines(
        self, contents: LandXml, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        rows = [(surface.name, line) for surface in contents.surfaces for line in surface.lines if len(line.xyz) > 1]
        results: Dict[str, Any] = {"LINE_COUNT": len(rows)}
        if not rows:
            return results
        crs = qgis_crs(contents.crs)
        sink, place = self.parameterAsSink(parameters, "LINES", context, source_line_fields(), LINE_Z, crs)
        if sink is None:
            return results
        for name, line in rows:
            attributes = [kind_word(line.kind), line.label, len(line.xyz), name]
            add_feature(sink, line_geometry(line.xyz, contents.crs), attributes)
        dress_vector(context, place, LINES)
        return {**results, "LINES": place}

    def _write_alignments(
        self, contents: LandXml, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Dict[str, Any]:
        results: Dict[str, Any] = {"ALIGNMENT_COUNT": len(contents.alignments)}
        if not contents.alignments:
            return results
        crs = qgis_crs(contents.crs)
        sink, place = self.parameterAsSink(parameters, "ALIGNMENTS", context, alignment_fields(), LINE_Z, crs)
        if sink is None:
            return results
        for line in contents.alignments:
            xyz, attributes = alignment_row(line)
            add_feature(sink, line_geometry(xyz, contents.crs), attributes)
        return {**results, "ALIGNMENTS": place}


def source_line_fields() -> QgsFields:
    return fields_of((("kind", "text"), ("label", "text"), ("points", "whole"), ("surface", "text")))


def alignment_fields() -> QgsFields:
    columns = ("name", "text"), ("start", "text"), ("end", "text"), ("length_m", "real"), ("equations", "text")
    return fields_of((*columns, ("profiles", "text"), ("heights", "text"), ("description", "text")))


def alignment_row(line: LandAlignment) -> Tuple[np.ndarray, List[Any]]:
    """The line (k, 3) as chords with the heights of its first profile, nan without one, and its attributes."""
    made = to_alignment(line)
    profile = line.profiles[0] if line.profiles else None
    heights = np.full(len(made.at), np.nan) if profile is None else profile_heights(profile, made.at)
    equations = "; ".join(
        f"{format_station(back, line.unit)} = {format_station(ahead, line.unit)}" for back, ahead in line.equations
    )
    names = ", ".join(each.name for each in line.profiles)
    shown = "" if profile is None else profile.name
    ends = made.label(0.0), made.label(made.length)
    return np.column_stack([made.xy, heights]), [
        line.name, *ends, made.length, equations, names, shown, line.description,
    ]  # fmt: skip


def line_geometry(xyz: np.ndarray, crs: Any) -> QgsGeometry:
    """Places (k, 3) in metres as a line in the units of the CRS."""
    places = np.column_stack([to_crs_units(xyz[:, :2], crs), heights_to_crs_units(xyz[:, 2], crs)])
    return QgsGeometry(QgsLineString([QgsPoint(*place) for place in places.tolist()]))


def file_name(name: str, taken: Set[str]) -> str:
    """A name for a file after a surface, unlike those ``taken``, to which it is added."""
    plain = re.sub(r"[^\w .-]", "_", name).strip(" .")[:60] or "surface"
    unique, count = plain, 1
    while unique.lower() in taken:
        count += 1
        unique = f"{plain} {count}"
    taken.add(unique.lower())
    return unique
