"""The plan in the project and on paper: layers and layout put there, those of an earlier run taken away, the PDF."""

from __future__ import annotations

from pathlib import Path
from typing import Optional, Sequence

from qgis.core import (
    QgsLayoutExporter,
    QgsMapLayer,
    QgsPrintLayout,
    QgsProcessingException,
    QgsProcessingFeedback,
    QgsProject,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.files import replace_file
from ..core.handover.pdf_order import settle_pdf
from ..core.progress import Cancelled
from .planlayers import PlanLayers
from .planlayout import MADE_FOR
from .versions import TEXT_AS_TEXT, member

translate = QCoreApplication.translate


def take_away_former(project: Optional[QgsProject], pdf: str) -> None:
    """Layers and layout that an earlier run made for the same PDF make room for the new ones."""
    if project is None:
        return
    own = [key for key, layer in project.mapLayers().items() if layer.customProperty(MADE_FOR) == pdf]
    project.removeMapLayers(own)
    root = project.layerTreeRoot()
    for group in root.findGroups():
        if group.customProperty(MADE_FOR) == pdf and not group.children():
            root.removeChildNode(group)
    for layout in project.layoutManager().layouts():
        if layout.customProperty(MADE_FOR) == pdf:
            project.layoutManager().removeLayout(layout)


def free_name(project: QgsProject, title: str) -> str:
    """A name no layout of the project has."""
    taken = {layout.name() for layout in project.layoutManager().layouts()}
    name, count = title, 2
    while name in taken:
        name, count = f"{title} {count}", count + 1
    return name


def add_group(project: QgsProject, title: str, layers: PlanLayers, shown: Sequence[QgsMapLayer], pdf: str) -> None:
    """The plan's own layers in a group on top, the frames switched off."""
    group = project.layerTreeRoot().insertGroup(0, title)
    group.setCustomProperty(MADE_FOR, pdf)
    for layer in [*shown, layers.frames]:
        layer.setCustomProperty(MADE_FOR, pdf)
        project.addMapLayer(layer, False)
        group.addLayer(layer)
    group.findLayer(layers.frames.id()).setItemVisibilityChecked(False)


def export_pdf(layout: QgsPrintLayout, path: str, feedback: QgsProcessingFeedback) -> None:
    """Write the layout, every page of its atlas, as vectors; the file appears when it is whole."""
    settings = QgsLayoutExporter.PdfExportSettings()
    settings.forceVectorOutput = True
    settings.rasterizeWholeImage = False
    settings.appendGeoreference = True
    settings.exportMetadata = True
    settings.textRenderFormat = TEXT_AS_TEXT
    with replace_file(path) as name:
        if layout.atlas().enabled():
            done, reason = QgsLayoutExporter.exportToPdf(layout.atlas(), str(name), settings, feedback)
        else:
            done, reason = QgsLayoutExporter(layout).exportToPdf(str(name), settings), ""
        if feedback.isCanceled():
            raise Cancelled
        if done != member(QgsLayoutExporter, "ExportResult", "Success"):
            raise QgsProcessingException(
                translate("hummock", "{file}: the plan cannot be written {reason}").format(
                    file=Path(path).name, reason=reason
                )
            )
        settle_pdf(name)
