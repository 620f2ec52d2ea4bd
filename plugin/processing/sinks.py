"""Features into sinks and out of sources, with an eye on the cancel button."""

from __future__ import annotations

from typing import Any, Iterable, Iterator, List, Sequence, Tuple

from qgis.core import QgsFeature, QgsFeatureSink, QgsFields, QgsGeometry, QgsProcessingException
from qgis.PyQt.QtCore import QCoreApplication

from ..core.progress import Progress
from .versions import FAST_INSERT, field

translate = QCoreApplication.translate

_EVERY = 2000  # features between two looks at the cancel button


def fields_of(columns: Sequence[Tuple[str, str]]) -> QgsFields:
    """Fields from pairs of a name and a kind (those of :func:`versions.field`)."""
    fields = QgsFields()
    for name, kind in columns:
        fields.append(field(name, kind))
    return fields


def add_feature(sink: QgsFeatureSink, geometry: QgsGeometry, attributes: List[Any]) -> None:
    """One feature into ``sink``. Raises QgsProcessingException when it cannot be written."""
    feature = QgsFeature()
    feature.setGeometry(geometry)
    feature.setAttributes(attributes)
    if not sink.addFeature(feature, FAST_INSERT):
        reason = " ".join(sink.lastError().split()) if hasattr(sink, "lastError") else ""
        raise QgsProcessingException(
            translate("hummock", "The output cannot be written ({reason}); choose another file.").format(
                reason=reason or translate("hummock", "no reason given")
            )
        )


def counted(items: Iterable[Any], total: int, progress: Progress) -> Iterator[Any]:
    """The same items, telling ``progress`` how many of ``total`` have passed; it may raise Cancelled."""
    for i, item in enumerate(items):
        if i % _EVERY == 0:
            progress(min(1.0, i / total) if total > 0 else 0.0, "layers")
        yield item
    progress(1.0, "layers")
