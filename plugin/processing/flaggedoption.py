"""Whether flagged stretches stay in the surface, as the user says it."""

from __future__ import annotations

from qgis.core import QgsProcessingParameterBoolean
from qgis.PyQt.QtCore import QCoreApplication

from .algorithm import HummockAlgorithm

translate = QCoreApplication.translate

KEEP_FLAGGED = "KEEP_FLAGGED"


def add_flagged_choice(algorithm: HummockAlgorithm) -> None:
    algorithm.add(
        QgsProcessingParameterBoolean(
            KEEP_FLAGGED, translate("hummock", "Keep flagged stretches in the surface"), False
        ),
        translate(
            "hummock",
            "A flagged stretch of 5 m or more is left out of the surface where at least two passes meet it, along at "
            "least half of it, all of them say that it is off by its size, and the size is more than its doubt. "
            "Whoever knows the site puts all of them back here, on the command line with --keep-flagged, or single "
            "points by giving them the status used.",
        ),
    )
