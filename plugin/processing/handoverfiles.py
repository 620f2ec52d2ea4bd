"""One surface with its lines, contours and points in the files that others load."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, NamedTuple, Optional, Tuple

import numpy as np
from qgis.core import (
    QgsFeatureRequest,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProcessingOutputFile,
    QgsProcessingOutputFolder,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFolderDestination,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterString,
    QgsVectorLayer,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtXml import QDomDocument

from ..core.contours.lines import Contours
from ..core.contours.trace import trace_contours
from ..core.handover.checksums import digests, write_checksums
from ..core.handover.dxf import Drawing, constraint_lines, contour_lines, write_dxf
from ..core.handover.edges import bounded_lines, marked_lines
from ..core.handover.landxml_model import LandSurface, LandXml
from ..core.handover.landxml_write import write_landxml
from ..core.handover.mesh import write_2dm
from ..core.handover.mesh_noise import MeshNoise, write_mesh_noise
from ..core.handover.projection import write_prj
from ..core.linework.constraints import ConstraintLine, Constraints
from ..core.points.pointset import PointSet
from ..core.progress import Progress, part
from ..core.surface.raster import grid_for, sample_grid
from ..core.surface.tin import Tin
from ..core.units import metres_per_unit
from .algorithm import progress_of
from .contours import ContourAlgorithm
from .exchangeinput import handover_group, points_to_hand_over, surface_title
from .fixedcolours import dress_plainly, has_chance_look, has_own_look
from .geopackage import PackedLayer, empty_layer, table_name, write_geopackage
from .geotiff import raster_of, write_geotiff
from .layers import contour_fields, line_fields, triangle_fields, write_contours, write_lines, write_triangles
from .parameters import number, qgis_crs
from .pointsource import add_field_parameters, add_layer_parameter
from .readlandxml import file_name
from .styles import CONTOURS, LINES, POINTS, TRIANGLES, apply_qml
from .surfacenoise import told_noise
from .versions import LINE_Z, NO_THREADING, POLYGON_Z, VECTOR_SOURCE

translate = QCoreApplication.translate

#: In the order of the choices of FORMATS.
LANDXML, DXF, GEOPACKAGE, GEOTIFF, MESH = range(5)


class _Content(NamedTuple):
    """What goes into the files."""

    name: str
    tin: Tin
    lines: Tuple[ConstraintLine, ...]
    contours: Contours
    points: Optional[PointSet]
    noise: Optional[MeshNoise]


class HandOverFiles(ContourAlgorithm):
    """``hummock:handoverfiles``"""

    NAME = "handoverfiles"
    ICON = "handoverfiles.svg"
    GROUP_ID = "handover"

    def flags(self) -> Any:
        """Layers with their styles belong to the main thread."""
        return super().flags() | NO_THREADING

    def title(self) -> str:
        return translate("hummock", "Hand over files")

    def group(self) -> str:
        return handover_group()

    def summary(self) -> str:
        return translate("hummock", "Writes a surface as LandXML, DXF, GeoPackage, GeoTIFF and mesh into one folder.")

    def words(self) -> str:
        return translate("hummock", "export,dxf,cad,geopackage,gpkg,geotiff,dem,landxml,mesh,deliver,checksums")

    def help_text(self) -> str:
        return translate(
            "hummock",
            "<p>Writes one surface with its lines, contours and points into the files that others load, all from the "
            "same numbers, with a list of their SHA-256.</p><ul>"
            "<li><b>LandXML</b>: faces, breaklines, boundary, points; see “Surface to LandXML”.</li>"
            "<li><b>DXF</b> (release 12): 3D faces, contours and lines as 3D polylines, points with names and heights; "
            "layers by kind or by level. It has no CRS; unit and CRS stand in a comment.</li>"
            "<li><b>GeoPackage</b>: points (rejected ones too, marked), contours, lines, triangles and further "
            "layers, each with its style.</li>"
            "<li><b>GeoTIFF</b>: heights on a grid, compressed and tiled, with CRS, unit and no data outside.</li>"
            "<li><b>Mesh</b>: 2DM with its CRS in a .prj file.</li></ul>"
            "<p><b>It assumes</b> a 2DM mesh as “Build the surface” writes it, and points in its CRS. A surface "
            "without a boundary is given its rim as one in LandXML.</p>"
            "<p><b>What can go wrong:</b> a drawing read in another unit: millimetres are usual elsewhere. A grid "
            "cannot hold a kerb: volumes and levels come from faces. Files of the same names in the folder are "
            "replaced, each when it is whole; a run that is cancelled leaves the others as they were.</p>"
            "<p><b>Caution:</b> say with the files when they were made, from which survey, and how accurate they are. "
            "They are no licence to build or dig: that is for the responsible professional and local rules.</p>",
        )

    def initAlgorithm(self, configuration: Optional[Dict[str, Any]] = None) -> None:
        self.add_level_parameters()
        add_layer_parameter(
            self, "POINTS", translate("hummock", "Points"), translate("hummock", "Survey or control points."), True
        )
        add_field_parameters(self, "POINTS")
        self.add(
            QgsProcessingParameterMultipleLayers(
                "LAYERS", translate("hummock", "Further layers for the GeoPackage"), VECTOR_SOURCE, optional=True
            ),
            translate("hummock", "They go in as they are, with the style they have in the project."),
        )
        self._add_form()
        self.add(
            QgsProcessingParameterFolderDestination("FOLDER", translate("hummock", "Folder")),
            translate("hummock", "Made if missing."),
        )
        self.addOutput(QgsProcessingOutputFolder("FOLDER", translate("hummock", "Folder")))
        for name, label in (
            ("LANDXML", "LandXML"), ("DXF", "DXF"), ("GPKG", "GeoPackage"), ("DEM", "GeoTIFF"), ("MESH", "2DM"),
            ("CHECKSUMS", "SHA-256"),
        ):  # fmt: skip
            self.addOutput(QgsProcessingOutputFile(name, label))
        self.add_numbers(
            ("FILES", translate("hummock", "Files written")),
            ("CONTOURS", translate("hummock", "Number of contours")),
        )

    def _add_form(self) -> None:
        formats = ["LandXML", "DXF", "GeoPackage", "GeoTIFF", translate("hummock", "mesh (2DM)")]
        self.add(
            QgsProcessingParameterEnum(
                "FORMATS", translate("hummock", "Files"), formats, allowMultiple=True, defaultValue=[0, 1, 2, 3, 4]
            ),
            translate("hummock", "Which are made."),
        )
        self.add(
            QgsProcessingParameterString("NAME", translate("hummock", "Name of the files"), "", optional=True),
            translate("hummock", "That of the mesh where it is empty."),
        )
        self.add(
            number("CELL", translate("hummock", "Cells of the GeoTIFF (unit of the CRS)"), 0.5, 1e-6),
            translate("hummock", "About the spacing of the survey's points shows all that they know."),
        )
        self.add(
            QgsProcessingParameterBoolean("BY_LEVEL", translate("hummock", "In DXF a layer for each level"), False),
            translate("hummock", "Otherwise contours lie on CONTOUR and CONTOUR_INDEX."),
            advanced=True,
        )
        self.add(
            number("TEXT_HEIGHT", translate("hummock", "Height of texts in DXF (m)"), 0.5, 1e-3),
            translate("hummock", "0.5 m is 1 mm on paper at 1 : 500."),
            advanced=True,
        )
        self.add(
            QgsProcessingParameterBoolean("TRIANGLES", translate("hummock", "Triangles in the GeoPackage"), True),
            translate("hummock", "As polygons with slope and area; they make it large."),
            advanced=True,
        )

    def work(
        self, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> Dict[str, Any]:
        progress = progress_of(feedback)
        progress(0.0, "surface")
        wanted = set(self.parameterAsEnums(parameters, "FORMATS", context))
        folder = self._folder(parameters, context)
        content = self._content(parameters, context, feedback, part(progress, 0.0, 0.4))
        writers = (
            (LANDXML, "LANDXML", ".xml", self._landxml),
            (DXF, "DXF", ".dxf", self._dxf),
            (GEOPACKAGE, "GPKG", ".gpkg", self._geopackage),
            (GEOTIFF, "DEM", ".tif", self._geotiff),
            (MESH, "MESH", ".2dm", self._mesh),
        )
        chosen = [writer for writer in writers if writer[0] in wanted]
        results: Dict[str, Any] = {"FOLDER": str(folder)}
        files: List[Path] = []
        for number_, (_, output, suffix, write) in enumerate(chosen):
            path = folder / (content.name + suffix)
            share = part(progress, 0.4 + 0.5 * number_ / len(chosen), 0.4 + 0.5 * (number_ + 1) / len(chosen))
            files += write(content, path, parameters, context, share)
            results[output] = str(path)
            feedback.pushInfo(translate("hummock", "Written: {file}").format(file=path))
        progress(0.95, "files")
        sums = folder / f"{content.name}.sha256"
        write_checksums(digests(files), sums)
        progress(1.0, "files")
        return {**results, "CHECKSUMS": str(sums), "FILES": len(files), "CONTOURS": len(content.contours)}

    def _folder(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Path:
        folder = Path(self.parameterAsString(parameters, "FOLDER", context))
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            text = translate("hummock", "{folder}: the folder cannot be made ({reason}); choose another.")
            raise QgsProcessingException(text.format(folder=folder, reason=error.strerror or str(error))) from None
        return folder

    def _content(
        self,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> _Content:
        tin = self.read_surface(parameters, context)
        name = self.parameterAsString(parameters, "NAME", context).strip()
        name = file_name(name or surface_title(self, parameters, context), set())
        contours = trace_contours(tin, self.contour_options(tin, parameters, context), part(progress, 0.3, 0.8))
        points = points_to_hand_over(self, parameters, tin, context, feedback, part(progress, 0.8, 1.0))
        noise = told_noise(self, tin, parameters, context, feedback)
        return _Content(name, tin, marked_lines(tin), contours, points, noise)

    # One file each; they return the paths written

    def _landxml(
        self, content: _Content, path: Path, parameters: Dict[str, Any], context: QgsProcessingContext,
        progress: Progress,
    ) -> List[Path]:  # fmt: skip
        surface = LandSurface(content.name, content.tin, bounded_lines(content.tin))
        write_landxml(LandXml(content.tin.crs, (surface,), content.points), path, progress=progress)
        return [path]

    def _dxf(
        self, content: _Content, path: Path, parameters: Dict[str, Any], context: QgsProcessingContext,
        progress: Progress,
    ) -> List[Path]:  # fmt: skip
        by_level = self.parameterAsBool(parameters, "BY_LEVEL", context)
        lines = [*constraint_lines(content.lines), *contour_lines(content.contours, by_level)]
        size = self.parameterAsDouble(parameters, "TEXT_HEIGHT", context)
        write_dxf(Drawing(content.tin.crs, content.tin, lines, content.points, size), path, progress)
        return [path]

    def _geotiff(
        self, content: _Content, path: Path, parameters: Dict[str, Any], context: QgsProcessingContext,
        progress: Progress,
    ) -> List[Path]:  # fmt: skip
        tin, cell = content.tin, self.parameterAsDouble(parameters, "CELL", context)
        frame = grid_for(tin, cell * metres_per_unit(tin.crs))
        heights = sample_grid(tin, *frame, progress=part(progress, 0.0, 0.5), dtype=np.float32)
        raster = raster_of(frame, heights, tin.crs, cell, "exact, linear on the triangles", "height")
        write_geotiff(raster, str(path), part(progress, 0.5, 1.0))
        return [path]

    def _mesh(
        self, content: _Content, path: Path, parameters: Dict[str, Any], context: QgsProcessingContext,
        progress: Progress,
    ) -> List[Path]:  # fmt: skip
        progress(0.0, "files")
        write_2dm(content.tin, path)
        projection = write_prj(path, content.tin.crs)
        noise = write_mesh_noise(path, content.noise)
        return [path, *(beside for beside in (projection, noise) if beside is not None)]

    def _geopackage(
        self, content: _Content, path: Path, parameters: Dict[str, Any], context: QgsProcessingContext,
        progress: Progress,
    ) -> List[Path]:  # fmt: skip
        crs = qgis_crs(content.tin.crs)
        making = part(progress, 0.0, 0.4)
        taken = {"points", "contours", "lines", "triangles"}
        layers = self._point_layer(parameters, context)
        made = empty_layer(translate("hummock", "Contours"), LINE_Z, crs, contour_fields())
        apply_qml(made, CONTOURS)
        write_contours(content.contours, made.dataProvider(), making)
        layers.append(PackedLayer("contours", made))
        made = empty_layer(translate("hummock", "Lines"), LINE_Z, crs, line_fields())
        apply_qml(made, LINES)
        write_lines(Constraints(content.lines), content.tin.crs, made.dataProvider())
        layers.append(PackedLayer("lines", made))
        if self.parameterAsBool(parameters, "TRIANGLES", context):
            made = empty_layer(translate("hummock", "Triangles"), POLYGON_Z, crs, triangle_fields())
            apply_qml(made, TRIANGLES)
            write_triangles(content.tin, made.dataProvider(), making)
            layers.append(PackedLayer("triangles", made))
        for layer in self.parameterAsLayerList(parameters, "LAYERS", context) or []:
            if isinstance(layer, QgsVectorLayer):
                if has_chance_look(layer, context):
                    dress_plainly(layer)
                layers.append(PackedLayer(table_name(layer.name(), taken), layer))
        write_geopackage(layers, str(path), context, part(progress, 0.4, 1.0))
        return [path]

    def _point_layer(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> List[PackedLayer]:
        """The points as they were given, with the style of their layer, or with Hummock's where they are its own."""
        source = self.parameterAsSource(parameters, "POINTS", context)
        if source is None:
            return []
        made = source.materialize(QgsFeatureRequest())
        layer = self.parameterAsVectorLayer(parameters, "POINTS", context)
        made.setName(translate("hummock", "Points") if layer is None else layer.name())
        if layer is not None and has_own_look(layer, context):
            style = QDomDocument("qgis")
            layer.exportNamedStyle(style)
            made.importNamedStyle(style)
        elif "status" in [field.name() for field in made.fields()]:
            apply_qml(made, POINTS)
        else:
            dress_plainly(made)
        return [PackedLayer("points", made)]
