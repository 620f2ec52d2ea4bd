"""The layers of a job on the map: added once, refreshed in place, and the user's from then on.

A layer is known by its source, so it may be renamed, moved, dressed anew or taken away; what the user did stays.
"""

from __future__ import annotations

import contextlib
import os
from pathlib import Path
from typing import List, Optional, Sequence

from qgis.core import (
    QgsDataProvider,
    QgsLayerTreeGroup,
    QgsMapLayer,
    QgsMapLayerStyle,
    QgsMeshLayer,
    QgsProject,
    QgsVectorLayer,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication, QTimer

from ..core.report.results import JobResult
from ..processing.joblayers import GEOPACKAGE, MESH, NEXT, JobLayer, open_job_layer
from ..processing.parameters import qgis_crs
from ..processing.styles import colour_heights, name_heights

translate = QCoreApplication.translate

#: On the group of a job: its folder.
JOB = "hummock/job"


def source_file(layer: QgsMapLayer) -> Path:
    """The file of a layer."""
    return Path(layer.source().split("|")[0])


def same_source(layer: QgsMapLayer, source: str) -> bool:
    """Whether a layer is of that file and, in it, of that table."""
    own, other = layer.source().split("|"), source.split("|")
    return Path(own[0]) == Path(other[0]) and [part for part in own[1:] if part.startswith("layername=")] == other[1:]


def show_job(project: QgsProject, folder: Path, result: JobResult, layers: Sequence[JobLayer]) -> None:
    """Put the layers of a job into its group, or refresh them where they are."""
    _swap_in(project, folder)
    group = job_group(project, folder)
    fresh = group is None
    if group is None:
        group = project.layerTreeRoot().insertGroup(0, folder.name)
        group.setCustomProperty(JOB, str(folder))
    for place, one in enumerate(layers):
        if not _refreshed(project, open_source(folder, one)):
            _add(project, group, open_job_layer(folder, one), place, one.shown)
    mesh = str(folder / MESH)
    if not _refreshed(project, mesh):
        layer = QgsMeshLayer(mesh, translate("hummock", "Surface"), "mdal")
        layer.setCrs(qgis_crs(result.crs))
        colour_heights(layer)
        _add(project, group, layer, -1, True)
        number = layer.id()
        QTimer.singleShot(0, lambda: name_heights(project.layerTreeRoot().findLayer(number)))
    if fresh and result.crs is not None and len(project.mapLayers()) <= len(layers) + 1:
        project.setCrs(qgis_crs(result.crs))


def open_source(folder: Path, layer: JobLayer) -> str:
    """The source of a layer of a job."""
    return str(open_job_layer(folder, layer).source())


def job_group(project: QgsProject, folder: Path) -> Optional[QgsLayerTreeGroup]:
    """The group of a job, wherever it stands; None where there is none (any more)."""
    groups: List[QgsLayerTreeGroup] = project.layerTreeRoot().findGroups(True)
    return next((one for one in groups if one.customProperty(JOB) == str(folder)), None)


def _refreshed(project: QgsProject, source: str) -> bool:
    """Have the layers of this source show what it holds now; whether there are any."""
    found = [one for one in project.mapLayers().values() if same_source(one, source)]
    for layer in found:
        if isinstance(layer, QgsMeshLayer):
            layer.reload()
        layer.triggerRepaint()
    return bool(found)


def _swap_in(project: QgsProject, folder: Path) -> None:
    """Put the next GeoPackage in the place of the one before. Layers let go of that meanwhile, as some systems want it,
    and keep how they look.
    """
    following, file = folder / NEXT, folder / GEOPACKAGE
    if not following.is_file():
        return
    held = [one for one in project.mapLayers().values() if isinstance(one, QgsVectorLayer) and source_file(one) == file]
    options = QgsDataProvider.ProviderOptions()
    options.transformContext = project.transformContext()
    before = []
    for layer in held:
        look = QgsMapLayerStyle()
        look.readFromLayer(layer)
        before.append((layer, layer.source(), layer.name(), look))
        nothing = f"{QgsWkbTypes.displayString(layer.wkbType())}?crs={layer.crs().authid()}"
        layer.setDataSource(nothing, layer.name(), "memory", options)
    try:
        os.replace(following, file)
        for beside in ("-wal", "-shm"):
            with contextlib.suppress(OSError):
                os.remove(f"{file}{beside}")
    finally:
        for layer, source, name, look in before:
            layer.setDataSource(source, name, "ogr", options)
            look.writeToLayer(layer)


def _add(project: QgsProject, group: QgsLayerTreeGroup, layer: QgsMapLayer, place: int, shown: bool) -> None:
    project.addMapLayer(layer, False)
    node = group.insertLayer(place, layer)
    node.setItemVisibilityChecked(shown)
    node.setExpanded(False)


def unsaved_layer(folder: Path) -> str:
    """The name of a layer of the job of ``folder`` with edits that are not saved; "" for none."""
    for layer in QgsProject.instance().mapLayers().values():
        own = isinstance(layer, QgsVectorLayer) and source_file(layer) == folder / GEOPACKAGE
        if own and layer.isModified():
            return str(layer.name())
    return ""
