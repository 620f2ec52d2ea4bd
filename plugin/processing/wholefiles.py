"""Layers that an algorithm writes into files appear under their names only when the algorithm has ended well.

QGIS's sinks write straight into the file that the user chose, so a run that is cancelled or fails leaves a part of it
there, and what was there before is lost. Here a sink writes into a folder of its own beside that file, and what is in
it takes its place at the end.
"""

from __future__ import annotations

import contextlib
import os
import secrets
import shutil
from pathlib import Path
from typing import Any, Callable, Dict, List, Optional, Tuple

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


class WholeFileSink:
    """A sink that is closed when it is told to, whoever still holds it."""

    def __init__(self, sink: QgsFeatureSink) -> None:
        self._sink: Optional[QgsFeatureSink] = sink

    def addFeature(self, feature: QgsFeature, flags: Any) -> bool:
        return bool(self._sink is not None and self._sink.addFeature(feature, flags))

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
        target = _file(value if layer is None else layer.sink.staticValue())
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
        for ours, _, _ in self._open:
            ours.close()
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


def _file(value: Any) -> Optional[Path]:
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
