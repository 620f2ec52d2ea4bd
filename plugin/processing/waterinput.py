"""What the algorithms of water share: inlets, the noise of heights, and what hollows do."""

from __future__ import annotations

from typing import Any, Dict, List, Tuple

import numpy as np
from qgis.core import (
    QgsFeature,
    QgsFeatureSource,
    QgsProcessingContext,
    QgsProcessingFeedback,
    QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterField,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.drainage.inlet_list import Inlet, in_stretches
from ..core.drainage.ponds import PondOptions
from ..core.drainage.study import Hollows, WaterOptions
from ..core.progress import Progress
from ..core.surface.tin import Tin
from .drawnsource import drawn_parts
from .parameters import number, optional_number, optional_source
from .surfaceinput import SurfaceAlgorithm
from .surfacenoise import add_noise, surface_noise
from .versions import ANY_FIELD, LINE_SOURCE, POINT_SOURCE, is_null

translate = QCoreApplication.translate

#: In the order of the choices of HOLLOWS.
HOLLOWS = (Hollows.PONDS_KEEP, Hollows.ALL_FULL, Hollows.PITS_KEEP)


class WaterAlgorithm(SurfaceAlgorithm):
    """An algorithm about the water of a surface."""

    GROUP_ID = "water"

    def group(self) -> str:
        return translate("hummock", "Water")

    def add_inlets(self) -> None:
        """INLETS with their names and how far they reach."""
        self.add(
            QgsProcessingParameterFeatureSource(
                "INLETS", translate("hummock", "Inlets and outlets"), [POINT_SOURCE, LINE_SOURCE], optional=True
            ),
            translate(
                "hummock",
                "Points (gullies, the end of a pipe, an outlet on the rim) or lines (a trench drain). Each takes all "
                "water that reaches a triangle near it. In another CRS they are brought into that of the surface.",
            ),
        )
        self.add(
            QgsProcessingParameterField(
                "INLET_NAME",
                translate("hummock", "Name of an inlet (empty: the field name, if there is one)"),
                parentLayerParameterName="INLETS",
                type=ANY_FIELD,
                optional=True,
            ),
            translate("hummock", "Inlets without a name are numbered."),
            advanced=True,
        )
        self.add(
            number("REACH", translate("hummock", "Inlets take water within (m)"), WaterOptions().reach, 0.0),
            translate(
                "hummock",
                "All water that comes to a triangle no farther than this from the inlet. 0: the triangles it is in or "
                "touches. Between points far apart a triangle is large.",
            ),
            advanced=True,
        )

    def add_noise(self) -> None:
        """SIGMA, MIN_DEPTH and CHANCE: which hollows count as ponds."""
        add_noise(self)
        self.add(
            number("MIN_DEPTH", translate("hummock", "Least depth of a pond (m)"), 0.0, 0.0),
            translate("hummock", "Shallower hollows do not count, however sure they are."),
        )
        self.add(
            number("CHANCE", translate("hummock", "Ponds: chance of noise at most (%)"), 5.0, 0.0, 100.0),
            translate(
                "hummock",
                "A hollow counts as a pond only where noise alone makes one like it anywhere in the survey with a "
                "smaller probability than this. 100: every hollow counts.",
            ),
            advanced=True,
        )

    def add_hollows(self) -> None:
        self.add(
            QgsProcessingParameterEnum(
                "HOLLOWS",
                translate("hummock", "Water in hollows"),
                [
                    translate("hummock", "stays in ponds and passes hollows that noise explains"),
                    translate("hummock", "runs on over full ponds, to the rim or an inlet"),
                    translate("hummock", "stays in every pit"),
                ],
                defaultValue=0,
            ),
            translate("hummock", "What becomes of water that comes to a place with nothing lower around it."),
        )

    def pond_options(
        self, tin: Tin, parameters: Dict[str, Any], context: QgsProcessingContext, feedback: QgsProcessingFeedback
    ) -> PondOptions:
        depth, chance = (self.parameterAsDouble(parameters, name, context) for name in ("MIN_DEPTH", "CHANCE"))
        return PondOptions(surface_noise(self, tin, parameters, context, feedback).total, depth, chance / 100)

    def hollows(self, parameters: Dict[str, Any], context: QgsProcessingContext) -> Hollows:
        return HOLLOWS[self.parameterAsEnum(parameters, "HOLLOWS", context)]

    def read_inlets(
        self,
        tin: Tin,
        parameters: Dict[str, Any],
        context: QgsProcessingContext,
        feedback: QgsProcessingFeedback,
        progress: Progress,
    ) -> Tuple[Inlet, ...]:
        """The inlets in the CRS of the surface, metres; none where no layer was given."""
        source = optional_source(self, parameters, "INLETS", context)
        if source is None:
            return ()
        name = self.parameterAsString(parameters, "INLET_NAME", context)
        name = name or next((field.name() for field in source.fields() if field.name().lower() == "name"), "")
        inlets: List[Inlet] = []
        empty = 0
        for feature, parts in features_on(source, tin, context, feedback, progress):
            empty += not parts
            if parts:
                told = "" if not name or is_null(feature[name]) else str(feature[name])
                inlets.append(Inlet(told or str(len(inlets) + 1), tuple(parts)))
        warn_empty(source, empty, feedback)
        stretch = optional_number(self, parameters, "STRETCH", context)
        return tuple(inlets) if stretch is None else in_stretches(inlets, stretch)


def features_on(
    source: QgsFeatureSource,
    tin: Tin,
    context: QgsProcessingContext,
    feedback: QgsProcessingFeedback,
    progress: Progress,
) -> List[Tuple[QgsFeature, List[np.ndarray]]]:
    """Each feature with its points, lines or rings (q, 2) in the CRS of ``tin``, metres; none for one without any."""
    found = []
    for feature, parts in drawn_parts(source, tin.crs, context, feedback, progress, heights=False, check=False):
        usable = [part[:, :2] for part in parts if len(part) and np.isfinite(part[:, :2]).all()]
        found.append((feature, usable))
    return found


def warn_empty(source: QgsFeatureSource, count: int, feedback: QgsProcessingFeedback) -> None:
    if count:
        feedback.pushWarning(
            translate("hummock", "{layer}: features without a usable geometry left out: {count}.").format(
                layer=source.sourceName(), count=count
            )
        )
