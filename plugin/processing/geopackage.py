"""Layers in one GeoPackage, each with its style inside, so that it looks the same wherever it is opened."""

from __future__ import annotations

import re
import sqlite3
import uuid
import xml.etree.ElementTree as ElementTree  # nosec B405
from typing import Dict, List, NamedTuple, Optional, Sequence, Set

from qgis.core import QgsProcessingContext, QgsProcessingException, QgsVectorFileWriter, QgsVectorLayer
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtXml import QDomDocument

from ..core.files import replace_file
from ..core.progress import Progress
from .versions import member

translate = QCoreApplication.translate

_NEW_FILE = member(QgsVectorFileWriter, "ActionOnExistingFile", "CreateOrOverwriteFile")
_NEW_LAYER = member(QgsVectorFileWriter, "ActionOnExistingFile", "CreateOrOverwriteLayer")
_IDENTIFIER = re.compile(r"\{[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\}")
_NO_ERROR = member(QgsVectorFileWriter, "WriterError", "NoError")


class PackedLayer(NamedTuple):
    """A layer and its name in the GeoPackage."""

    name: str
    layer: QgsVectorLayer


def table_name(name: str, taken: Set[str]) -> str:
    """A name for a table, of letters, digits and ``_``, unlike those ``taken``, to which it is added."""
    plain = re.sub(r"\W+", "_", name.strip()).strip("_").lower()[:60] or "layer"
    unique, count = plain, 1
    while unique in taken:
        count += 1
        unique = f"{plain}_{count}"
    taken.add(unique)
    return unique


def write_geopackage(
    layers: Sequence[PackedLayer], path: str, context: QgsProcessingContext, progress: Progress
) -> None:
    """Write ``layers`` with their styles to the GeoPackage ``path``, which appears only when it is whole.

    The style becomes the table's default, which QGIS applies when the layer is opened. A field “fid” is numbered
    anew. Raises QgsProcessingException with the reason, SurveyError when the system refuses.
    """
    with replace_file(path) as temporary:
        for number, packed in enumerate(layers):
            progress(number / len(layers), "layers")
            _write_layer(packed, str(temporary), number == 0, path, context)
            _save_style(packed, str(temporary), path)
        _settle_styles(str(temporary))
    progress(1.0, "layers")


def _write_layer(packed: PackedLayer, temporary: str, first: bool, path: str, context: QgsProcessingContext) -> None:
    options = QgsVectorFileWriter.SaveVectorOptions()
    options.driverName = "GPKG"
    options.layerName = packed.name
    options.actionOnExistingFile = _NEW_FILE if first else _NEW_LAYER
    fields = packed.layer.fields()
    kept: List[int] = [i for i in range(len(fields)) if fields.at(i).name().lower() != "fid"]
    options.attributes = kept
    options.skipAttributeCreation = not kept
    code, reason, *_ = QgsVectorFileWriter.writeAsVectorFormatV3(
        packed.layer, temporary, context.transformContext(), options
    )
    if code != _NO_ERROR:
        raise _failed(path, packed, str(reason))


def _save_style(packed: PackedLayer, temporary: str, path: str) -> None:
    saved = QgsVectorLayer(f"{temporary}|layername={packed.name}", packed.name, "ogr")
    style = QDomDocument("qgis")
    packed.layer.exportNamedStyle(style)
    saved.importNamedStyle(style)
    reason = saved.saveStyleToDatabase(packed.name, packed.layer.name(), True, "")
    if reason:
        raise _failed(path, packed, str(reason))


def _settle_styles(file: str) -> None:
    """Write the styles so that the same style is the same text.

    QGIS makes up new identifiers of rules each time, and Qt orders attributes by chance.
    """
    base = sqlite3.connect(file)
    try:
        rows = base.execute("SELECT id, f_table_name, styleQML, styleSLD FROM layer_styles").fetchall()
        for number, name, *texts in rows:
            settled = [_settled(text, name) for text in texts]
            base.execute("UPDATE layer_styles SET styleQML = ?, styleSLD = ? WHERE id = ?", (*settled, number))
        base.commit()
    finally:
        base.close()


def _settled(text: Optional[str], name: str) -> Optional[str]:
    if not text:
        return text
    own: Dict[str, str] = {}
    for found in _IDENTIFIER.findall(text):
        own.setdefault(found, f"{{{uuid.uuid5(uuid.NAMESPACE_URL, f'{name} {len(own)}')}}}")
    return ElementTree.canonicalize(_IDENTIFIER.sub(lambda hit: own[hit.group()], text))


def _failed(path: str, packed: PackedLayer, reason: str) -> QgsProcessingException:
    text = translate("hummock", "{file}: the layer {layer} cannot be written ({reason}).")
    plain = " ".join(reason.replace(path, "").split()) or translate("hummock", "no reason given")
    return QgsProcessingException(text.format(file=path, layer=packed.layer.name(), reason=plain))
