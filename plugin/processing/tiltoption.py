"""Whether the rover compensates tilt, as the user says it."""

from __future__ import annotations

from typing import Any, Dict, Optional

from qgis.core import QgsProcessingContext, QgsProcessingParameterEnum
from qgis.PyQt.QtCore import QCoreApplication

from .algorithm import HummockAlgorithm

translate = QCoreApplication.translate

TILT = "TILT_COMPENSATED"
_SAID: Dict[int, Optional[bool]] = {0: None, 1: True, 2: False}


def add_tilt_choice(algorithm: HummockAlgorithm) -> None:
    algorithm.add(
        QgsProcessingParameterEnum(
            TILT,
            translate("hummock", "The rover compensates tilt"),
            [
                translate("hummock", "find out from the heights"),
                translate("hummock", "yes: tilt is no fault"),
                translate("hummock", "no: points beyond the limit are rejected"),
            ],
            defaultValue=0,
        ),
        translate(
            "hummock",
            "Said by whoever set up the rover. On the command line --tilt-compensated. Where the heights do not tell, "
            "tilted points are flagged if they are many, and you are asked.",
        ),
    )


def tilt_compensated(
    algorithm: HummockAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[bool]:
    """What the user says; None where the heights shall tell."""
    return _SAID[algorithm.parameterAsEnum(parameters, TILT, context)]
