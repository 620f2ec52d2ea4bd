"""Layers that an algorithm writes into files appear under their names only when the algorithm has ended well.

QGIS's sinks write straight into the file that the user chose, so a run that is cancelled or fails leaves a part of it
there, and what was there before is lost. Here a sink writes into a folder of its own beside that file, and what is in
it takes its place at the end.
"""

from __future__ import annotations

import contextlib
import errno
import os
import secrets
import shutil
import struct
from pathlib import Path
from typing import Any, Callable, Dict, List, Optional, Tuple

from osgeo import gdal
from qgis.core import (
    QgsFeature,
    QgsFeatureSink,
    QgsProcessingContext,
    QgsProcessingOutputLayerDefinition,
    QgsProcessingParameterDefinition,
)

from ..core.files import CANNOT_WRITE
from ..core.messages import SurveyError
from .versions import VECTOR_HINT

#: Beginnings of destinations that are no plain file.
_NO_FILES = ("memory:", "ogr:", "postgis:", "postgres:", "mssql:", "TEMPORARY_OUTPUT")


#: Formats whose writers do not tell that the disk is full, and whether a line break is the last that is written.
_SILENT = {".csv": True, ".geojson": True, ".gpkg": False, ".shp": False}


class WholeFileSink:
    """A sink that is closed when it is told to, whoever still holds it."""

    def __init__(self, sink: QgsFeatureSink) -> None:
        self._sink: Optional[QgsFeatureSink] = sink
        self.count = 0

    def addFeature(self, feature: QgsFeature, flags: Any) -> bool:
        added = bool(self._sink is not None and self._sink.addFeature(feature, flags))
        self.count += added
        return added

    def lastError(self) -> str:
        return str(self._sink.lastError()) if self._sink is not None and hasattr(self._sink, "lastError") else ""

    def close(self) -> None:
        self._sink = None  # the last reference: QGIS writes what it holds and closes the file


class WholeFiles:
    """The sinks of one run. :meth:`keep` at its end, :meth:`drop` otherwise."""

    def __init__(self, context: QgsProcessingContext) -> None:
        self._open: List[Tuple[WholeFileSink, Path, str]] = []
        self._context = context
        self._waiting = set(context.layersToLoadOnCompletion())

    def sink(
        self,
        make: Callable[..., Tuple[Optional[QgsFeatureSink], str]],
        definition: QgsProcessingParameterDefinition,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        *more: Any,
    ) -> Tuple[Any, str]:
        """As ``make``, which is QGIS's ``parameterAsSink``; a sink into a file is one of ours."""
        name = definition.name()
        value = parameters.get(name)
        layer = value if isinstance(value, QgsProcessingOutputLayerDefinition) else None
        target = target_file(value if layer is None else layer.sink.staticValue())
        folder = None if target is None else _folder_beside(target)
        if target is None or folder is None:
            return make(parameters, name, context, *more)
        inside = QgsProcessingOutputLayerDefinition(str(folder / target.name))
        if layer is not None:
            inside.createOptions = layer.createOptions
            if layer.useRemapping():
                inside.setRemappingDefinition(layer.remappingDefinition())
        try:
            made, place = make({**parameters, name: inside}, name, context, *more)
        except BaseException:
            shutil.rmtree(folder, ignore_errors=True)
            raise
        if made is None:
            shutil.rmtree(folder, ignore_errors=True)
            return None, place
        final = str(target.parent / Path(place).name)
        ours = WholeFileSink(made)
        del made
        self._open.append((ours, folder, final))
        if layer is not None and layer.destinationProject is not None:
            title = layer.destinationName or definition.description()
            details = QgsProcessingContext.LayerDetails(title, layer.destinationProject, name, VECTOR_HINT)
            context.addLayerToLoadOnCompletion(final, details)
        return ours, final

    def keep(self) -> None:
        """Put all files in their places. Raises SurveyError when the system refuses."""
        for ours, folder, final in self._open:
            path = folder / Path(final).name
            reasons = _closed(ours) if path.suffix.lower() in _SILENT else []
            ours.close()
            if reasons or not _has_all(path, ours.count):
                reason = " ".join(reasons[0].split()) if reasons else os.strerror(errno.EIO)
                raise SurveyError(CANNOT_WRITE, file=final, reason=reason)
        while self._open:
            _, folder, final = self._open.pop(0)
            target = Path(final)
            try:
                # Of files that belong together the one that is named comes last.
                for path in sorted(folder.iterdir(), key=lambda path: path.name == target.name):
                    os.replace(path, target.parent / path.name)
            except OSError as error:
                reason = error.strerror or str(error)
                raise SurveyError(CANNOT_WRITE, file=final, reason=reason) from None
            finally:
                shutil.rmtree(folder, ignore_errors=True)

    def drop(self) -> None:
        """Remove what was written; what was there before stays. QGIS is to load nothing of this run."""
        for ours, folder, _ in self._open:
            ours.close()
            shutil.rmtree(folder, ignore_errors=True)
        self._open.clear()
        waiting = self._context.layersToLoadOnCompletion()
        before = {place: details for place, details in waiting.items() if place in self._waiting}
        if len(before) < len(waiting):
            self._context.setLayersToLoadOnCompletion(before)


def _closed(sink: WholeFileSink) -> List[str]:
    """Close the sink; what GDAL had to say against it, which QGIS does not pass on."""
    reasons: List[str] = []

    def keep(level: int, _: int, text: str) -> None:
        if level >= gdal.CE_Failure:
            reasons.append(text)

    gdal.PushErrorHandler(keep)
    try:
        sink.close()
    finally:
        gdal.PopErrorHandler()
    return reasons


def _has_all(path: Path, count: int) -> bool:
    """Whether so many features can be read again; asked of formats whose writers do not tell when the disk is full."""
    if count == 0 or path.suffix.lower() not in _SILENT:
        return True
    try:
        opened = gdal.OpenEx(str(path), gdal.OF_VECTOR)
        found = opened.GetLayer(0).GetFeatureCount() if opened is not None and opened.GetLayerCount() else 0
    except RuntimeError:  # where another plugin has switched on GDAL's exceptions
        return False
    return found >= count and _ends_well(path)


def _ends_well(path: Path) -> bool:
    if _SILENT[path.suffix.lower()]:
        with open(path, "rb") as file:
            file.seek(-1, os.SEEK_END)
            return file.read(1) == b"\n"
    table = path.with_suffix(".dbf")
    if not table.exists():
        return True
    # dBASE III: number of records, length of the head, length of a record; the table of a shapefile
    with open(table, "rb") as file:
        head = file.read(12)
    records, before, each = struct.unpack_from("<IHH", head, 4) if len(head) == 12 else (1, 0, 1 << 16)
    return table.stat().st_size >= before + records * each


def target_file(value: Any) -> Optional[Path]:
    """The file that a destination means, None where it is none."""
    text = value.strip() if isinstance(value, str) else ""
    if not text or text.startswith(_NO_FILES) or "|" in text or "://" in text:
        return None
    path = Path(text)
    return path if path.suffix and path.parent.is_dir() and not path.is_dir() else None


def _folder_beside(target: Path) -> Optional[Path]:
    """A new folder on the same disk, None where the system refuses: QGIS then says why."""
    folder = target.parent / f".{target.stem}-{secrets.token_hex(4)}"
    with contextlib.suppress(OSError):
        folder.mkdir()
        return folder
    return None
