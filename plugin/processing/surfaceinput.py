"""What the algorithms share whose input is a surface."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, Iterator, Optional, Tuple

from qgis.core import (
    QgsFeatureSource,
    QgsMeshLayer,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingParameterCrs,
    QgsProcessingParameterMeshLayer,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingUtils,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.handover.projection import read_prj
from ..core.handover.recent_meshes import recent_2dm
from ..core.messages import SurveyError
from ..core.surface.tin import Tin
from .algorithm import HummockAlgorithm, tell
from .localnumbers import use_units
from .parameters import core_crs, qgis_crs

translate = QCoreApplication.translate


class SurfaceAlgorithm(HummockAlgorithm):
    """An algorithm with surfaces in 2DM meshes, INPUT or others by name; CRS says theirs where nothing else does."""

    def add_surface(self, name: str = "INPUT", label: str = "", help_text: str = "", optional: bool = False) -> None:
        self.add(
            QgsProcessingParameterMeshLayer(
                name, label or translate("hummock", "Surface (2DM mesh)"), optional=optional
            ),
            help_text or translate("hummock", "A mesh layer or a mesh file, as “Build the surface” writes it."),
        )

    def add_surface_crs(self) -> None:
        self.add(
            QgsProcessingParameterCrs(
                "CRS", translate("hummock", "CRS of the surface (empty: as stored with it)"), optional=True
            ),
            translate(
                "hummock",
                "A 2DM file cannot hold its CRS. Without one given here it is read from the .prj file beside the mesh, "
                "or taken from the mesh layer.",
            ),
            advanced=True,
        )

    def checkParameterValues(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Tuple[bool, str]:
        """As QGIS does it, but a mesh file that cannot be used is refused with the reason."""
        try:
            for path in self._unread_meshes(parameters, context):
                recent_2dm(path)
        except SurveyError as error:
            return False, tell(error.message)
        return super().checkParameterValues(parameters, context)

    def _unread_meshes(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Iterator[str]:
        """Given as meshes, but QGIS cannot load them."""
        meshes = (QgsProcessingParameterMeshLayer, QgsProcessingParameterMultipleLayers)
        for parameter in self.parameterDefinitions():
            given = parameters.get(parameter.name()) if isinstance(parameter, meshes) else None
            for value in given if isinstance(given, (list, tuple)) else [given]:
                if isinstance(value, str) and value and QgsProcessingUtils.mapLayerFromString(value, context) is None:
                    yield value

    def has_surface(self, parameters: Dict[str, Any], context: QgsProcessingContext, name: str) -> bool:
        """Whether an optional surface was given."""
        given = self.parameterAsMeshLayer(parameters, name, context) is not None
        return given or bool(self.parameterAsString(parameters, name, context))

    def surface_name(self, parameters: Dict[str, Any], context: QgsProcessingContext, name: str = "INPUT") -> str:
        """What drawings and reports call the surface: its layer's name, else its file's."""
        layer = self.parameterAsMeshLayer(parameters, name, context)
        if layer is not None and layer.name():
            return str(layer.name())
        return Path(self.parameterAsString(parameters, name, context)).stem

    def mesh_path(self, parameters: Dict[str, Any], context: QgsProcessingContext, name: str = "INPUT") -> str:
        """The file of the mesh ``name``."""
        layer = self.parameterAsMeshLayer(parameters, name, context)
        return str(layer.source()) if layer is not None else self.parameterAsString(parameters, name, context)

    def read_surface(self, parameters: Dict[str, Any], context: QgsProcessingContext, name: str = "INPUT") -> Tin:
        """The surface of the mesh layer or file ``name``, with its CRS. Raises SurveyError."""
        layer = self.parameterAsMeshLayer(parameters, name, context)
        return self.read_mesh(layer, self.mesh_path(parameters, context, name), parameters, context)

    def read_mesh(
        self, layer: Optional[QgsMeshLayer], path: str, parameters: Dict[str, Any], context: QgsProcessingContext
    ) -> Tin:
        """The surface in the file ``path``, loaded as ``layer`` or not. Raises SurveyError."""
        given = self.parameterAsCrs(parameters, "CRS", context)
        crs = None if given.isValid() else read_prj(path)
        if crs is None:
            crs = core_crs(given if given.isValid() or layer is None else layer.crs(), path)
        use_units(crs)
        return recent_2dm(Path(path), crs)


def same_crs(source: QgsFeatureSource, tin: Tin, label: str) -> None:
    """Refuse (QgsProcessingException) a layer that is not in the CRS of the surface."""
    if source.sourceCrs() != qgis_crs(tin.crs):
        raise QgsProcessingException(
            translate(
                "hummock", "{layer}: its CRS is {crs}, that of the surface {other}; reproject the layer first."
            ).format(layer=label, crs=source.sourceCrs().authid() or "?", other=qgis_crs(tin.crs).authid() or "?")
        )
