"""Later visits of a job: the parameters that name them and say where their ground counts."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, Callable, Dict, List, Optional

from qgis.core import (
    QgsProcessingContext,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterFeatureSource,
    QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterNumber,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.job.settings import EVERYWHERE, JobSettings, Visit
from ..core.job.visits import NOWHERE, VisitWords, with_visits
from .algorithm import HummockAlgorithm
from .drawnfiles import file_of_layer, layer_shown
from .importoptions import chosen_files
from .versions import FILE_SOURCE, POLYGON_SOURCE

translate = QCoreApplication.translate

FILES, COUNTS, AREA, OFFSET = "VISITS", "NEW_GROUND", "NEW_GROUND_AREA", "VISIT_OFFSET"
PARAMETERS = (FILES, COUNTS, AREA, OFFSET)


def add_visit_parameters(algorithm: HummockAlgorithm) -> None:
    """All of them."""
    label = translate("hummock", "Files of later visits")
    algorithm.add(
        QgsProcessingParameterMultipleLayers(FILES, label, FILE_SOURCE, optional=True),
        translate(
            "hummock",
            "Each is read, checked and made a surface by itself and compared with the ground before it. It is not in "
            "the surface of the job until you say so below.",
        ),
    )
    algorithm.add(
        QgsProcessingParameterBoolean(
            COUNTS, translate("hummock", "The last visit counts wherever it was walked"), False
        ),
        translate(
            "hummock",
            "Its points are taken in, and earlier points that differ from it by more than noise are kept out. Without "
            "it, and without polygons below, its ground counts nowhere.",
        ),
    )
    algorithm.add(
        QgsProcessingParameterFeatureSource(
            AREA, translate("hummock", "The last visit counts within these polygons"), [POLYGON_SOURCE], optional=True
        ),
        translate("hummock", "The same inside the polygons alone; elsewhere the ground before it stays."),
    )
    algorithm.add(
        QgsProcessingParameterNumber(
            OFFSET,
            translate("hummock", "Known height offset of the last visit (m)"),
            QgsProcessingParameterNumber.Type.Double,
            optional=True,
        ),
        translate(
            "hummock",
            "How much higher it lies where nothing changed; this is taken off. Empty: found from the ground that did "
            "not change.",
        ),
        advanced=True,
    )


def read_visit_words(
    algorithm: HummockAlgorithm,
    parameters: Dict[str, Any],
    context: QgsProcessingContext,
    settings: JobSettings,
    area_file: Callable[[str, str], Optional[Path]],
) -> VisitWords:
    """What the parameters say of visits of the job. ``area_file``: the file, of a name without its ending, of a
    parameter's polygons, None for none."""
    files = [Path(one) for one in chosen_files(algorithm, parameters, FILES, context)]
    known = {one.file.resolve() for one in settings.visits}
    everywhere = EVERYWHERE if algorithm.parameterAsBool(parameters, COUNTS, context) else None
    offset = None
    if parameters.get(OFFSET) not in (None, ""):
        offset = algorithm.parameterAsDouble(parameters, OFFSET, context)
    new = tuple(one for one in files if one.resolve() not in known)
    area = area_file(AREA, area_name(len(settings.visits) + len(new)))
    return VisitWords(new, everywhere if area is None else str(area), offset)


def area_name(later: int) -> str:
    """What the file of the polygons of the last of so many later visits is called, without its ending."""
    return f"new_ground_{later + 1}"


# As choices of the desk


def files_shown(settings: JobSettings) -> List[str]:
    return [str(one.file) for one in settings.visits]


def files_chosen(settings: JobSettings, value: Any) -> JobSettings:
    """Visits that stay keep what was said of them."""
    before = {str(one.file): one for one in settings.visits}
    chosen = [str(one) for one in (value if isinstance(value, (list, tuple)) else [value] if value else [])]
    kept = replace(settings, visits=tuple(before[name] for name in chosen if name in before))
    return with_visits(kept, VisitWords(tuple(Path(name) for name in chosen if name not in before)))


def counts_shown(settings: JobSettings) -> bool:
    return bool(settings.visits) and settings.visits[-1].new_ground == EVERYWHERE


def counts_chosen(settings: JobSettings, value: Any) -> JobSettings:
    if bool(value) == counts_shown(settings):
        return settings
    return with_visits(settings, VisitWords(new_ground=EVERYWHERE if value else NOWHERE))


def area_shown(settings: JobSettings) -> str:
    word = settings.visits[-1].new_ground if settings.visits else ""
    return "" if word in ("", EVERYWHERE) else layer_shown(Path(word))


def area_chosen(settings: JobSettings, value: Any) -> JobSettings:
    file = file_of_layer(value, settings, area_name(len(settings.visits)))
    if file is None and not area_shown(settings):
        return settings
    return with_visits(settings, VisitWords(new_ground=NOWHERE if file is None else str(file)))


def offset_shown(settings: JobSettings) -> Optional[float]:
    return settings.visits[-1].offset if settings.visits else None


def offset_chosen(settings: JobSettings, value: Any) -> JobSettings:
    if value not in (None, ""):
        return with_visits(settings, VisitWords(offset=float(value)))
    last: List[Visit] = [replace(one, offset=None) for one in settings.visits[-1:]]
    return replace(settings, visits=(*settings.visits[:-1], *last))
