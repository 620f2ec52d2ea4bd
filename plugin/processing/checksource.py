"""Check points of a layer, for the tools that test a surface."""

from __future__ import annotations

import numpy as np
from qgis.core import QgsFeatureSource, QgsProcessingFeedback

from ..core.progress import Progress
from ..core.quality.check_points import CheckPoints, checks_from_points
from ..core.surface.tin import Tin
from .pointlayer import PointColumns, read_points_layer
from .surfaceinput import same_crs


def checks_of_layer(
    source: QgsFeatureSource,
    tin: Tin,
    feedback: QgsProcessingFeedback,
    progress: Progress,
    height: str = "",
    cover: str = "",
) -> CheckPoints:
    """The points of a layer in the CRS of ``tin``: heights from the field ``height`` or else Z, what grows there from
    the field ``cover`` or else one of that name. Raises QgsProcessingException for a layer in another CRS."""
    label = source.sourceName() or "CHECKS"
    same_crs(source, tin, label)
    read = read_points_layer(source, PointColumns(height=height), label, feedback, progress)
    column = next((name for name in read.extra if name.lower() == (cover or "cover").lower()), None)
    words = np.full(len(read), "", object) if column is None else read.extra[column]
    return checks_from_points(read, [str(word) for word in words])
