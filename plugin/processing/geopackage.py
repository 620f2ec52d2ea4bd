"""Layers in one GeoPackage, each with its style inside, so that it looks the same wherever it is opened."""

from __future__ import annotations

import contextlib
import os
import re
import sqlite3
import uuid
import xml.etree.ElementTree as ElementTree  # nosec B405
from pathlib import Path
from typing import Any, List, NamedTuple, Sequence, Set

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsFields,
    QgsProcessingContext,
    QgsProcessingException,
    QgsVectorFileWriter,
    QgsVectorLayer,
    QgsWkbTypes,
)
from qgis.PyQt.QtCore import QCoreApplication
from qgis.PyQt.QtXml import QDomDocument

from ..core.files import replace_file
from ..core.progress import Progress
from .versions import member

translate = QCoreApplication.translate

_NEW_FILE = member(QgsVectorFileWriter, "ActionOnExistingFile", "CreateOrOverwriteFile")
_NEW_LAYER = member(QgsVectorFileWriter, "ActionOnExistingFile", "CreateOrOverwriteLayer")
_IDENTIFIER = re.compile(r"\{[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}\}")
#: Elements that have an identifier, and its attribute.
_IDENTIFIED = {"rules": "key", "rule": "key", "layer": "id", "category": "uuid", "range": "uuid", "actionsetting": "id"}
_NO_ERROR = member(QgsVectorFileWriter, "WriterError", "NoError")


class PackedLayer(NamedTuple):
    """The name of a table in the GeoPackage, and the layer that goes into it; its name is that of the style.
    ``description``: of the table, for :func:`description_of`."""

    name: str
    layer: QgsVectorLayer
    description: str = ""


def table_name(name: str, taken: Set[str]) -> str:
    """A name for a table, of letters, digits and ``_``, unlike those ``taken``, to which it is added."""
    plain = re.sub(r"\W+", "_", name.strip()).strip("_").lower()[:60] or "layer"
    unique, count = plain, 1
    while unique in taken:
        count += 1
        unique = f"{plain}_{count}"
    taken.add(unique)
    return unique


def empty_layer(name: str, kind: Any, crs: QgsCoordinateReferenceSystem, fields: QgsFields) -> QgsVectorLayer:
    """A layer in memory, to be filled, dressed and packed."""
    layer = QgsVectorLayer(QgsWkbTypes.displayString(kind), name, "memory")
    layer.setCrs(crs)
    layer.dataProvider().addAttributes(fields.toList())
    layer.updateFields()
    return layer


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
        for beside in ("-wal", "-shm"):  # what SQLite left of a file of this name must not be read into the new one
            with contextlib.suppress(OSError):
                os.remove(path + beside)
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
    if packed.description:
        options.layerOptions = [f"DESCRIPTION={packed.description}"]
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
    # the name stands for the description too: for an empty one QGIS puts the time
    parts = (packed.layer.name(), packed.layer.name(), True, "")
    if hasattr(saved, "saveStyleToDatabaseV2"):  # the other is deprecated from QGIS 3.44 on
        _, reason = saved.saveStyleToDatabaseV2(*parts)
    else:
        reason = saved.saveStyleToDatabase(*parts)
    if reason:
        raise _failed(path, packed, str(reason))


def description_of(file: Path, table: str) -> str:
    """The description of a table in a GeoPackage; "" where there is none, or no such file."""
    if not file.is_file():
        return ""
    try:
        with contextlib.closing(sqlite3.connect(f"{file.absolute().as_uri()}?mode=ro", uri=True)) as base:
            row = base.execute("SELECT description FROM gpkg_contents WHERE table_name = ?", (table,)).fetchone()
    except sqlite3.Error:
        return ""
    return str(row[0] or "") if row else ""


def _settle_styles(file: str) -> None:
    """Write the styles so that the same style is the same text."""
    base = sqlite3.connect(file)
    try:
        rows = base.execute("SELECT id, f_table_name, styleQML, styleSLD FROM layer_styles").fetchall()
        for number, name, qml, sld in rows:
            settled = (settled_style(qml, name), ElementTree.canonicalize(sld) if sld else sld, number)
            base.execute("UPDATE layer_styles SET styleQML = ?, styleSLD = ? WHERE id = ?", settled)
        base.commit()
    finally:
        base.close()


def settled_style(text: str, name: str) -> str:
    """The style ``text`` (QML), its attributes in order and its identifiers counted instead of drawn by lot.

    QGIS makes up identifiers of rules, symbol layers and categories whenever it reads a style without them, and Qt
    orders attributes by chance. An identifier is replaced wherever it stands, so that what refers to it still does;
    other text of the same form, such as a value in a filter, stays.
    """
    found: List[str] = []
    ordered = _in_order(text, found)
    own = {
        identifier: f"{{{uuid.uuid5(uuid.NAMESPACE_URL, f'{name} {number}')}}}"
        for number, identifier in enumerate(dict.fromkeys(found))
    }
    return _IDENTIFIER.sub(lambda hit: own.get(hit.group(), hit.group()), ordered)


def _in_order(text: str, identifiers: List[str]) -> str:
    """The XML with the attributes of each element in order; its identifiers are added to ``identifiers``.

    A symbol in an attribute, as callouts of labels have one, is XML itself.
    """
    root = ElementTree.fromstring(text)  # nosec B314  QGIS has just written it
    for element in root.iter():
        identifiers += filter(_IDENTIFIER.fullmatch, [element.get(_IDENTIFIED.get(element.tag, ""), "")])
        for attribute, value in element.items():
            if value.startswith("<symbol "):
                element.set(attribute, _in_order(value, identifiers))
    return ElementTree.canonicalize(ElementTree.tostring(root, encoding="unicode"))


def _failed(path: str, packed: PackedLayer, reason: str) -> QgsProcessingException:
    text = translate("hummock", "{file}: the layer {layer} cannot be written ({reason}).")
    plain = " ".join(reason.replace(path, "").split()) or translate("hummock", "no reason given")
    return QgsProcessingException(text.format(file=path, layer=packed.layer.name(), reason=plain))
