"""The choices of a job as parameters: those of the algorithms that do the same step by hand, and where each is kept.

So a choice has one name, one help text and one meaning, whether it is made for one step in the toolbox or for a job.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any, Callable, Dict, Iterator, List, NamedTuple, Optional, Sequence, Tuple

from qgis.core import (
    QgsCoordinateReferenceSystem,
    QgsProcessingAlgorithm,
    QgsProcessingParameterDefinition,
    QgsProcessingParameterEnum,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.level_shift import parse_level_shifts
from ..core.job.settings import JobSettings
from ..core.linework.convention import four_words
from ..core.points.given import HEIGHTS_OF, UNITS_FROM, parse_no_value
from ..core.quality.tolerances import SHIPPED
from ..core.surface.crossings import CrossingRule
from . import jobvisits
from .controlsource import HEIGHT_FITS
from .drawnfiles import FIELDS, file_of_layer, layer_shown
from .importoptions import ANGLES, DECIMALS, DELIMITERS, HEIGHT_KINDS, OPERATIONS_APART
from .parameters import UNITS, crs_text
from .versions import ADVANCED

translate = QCoreApplication.translate

SMOOTH = 0.25  # m, for the lines of the plan


class Choice(NamedTuple):
    """A choice of a job. ``algorithm``, ``parameter``: where it is made by hand; ``name``: among the choices of a job;
    ``shown``: its value for some settings; ``chosen``: these settings with another value of it."""

    algorithm: str
    parameter: str
    shown: Callable[[JobSettings], Any]
    chosen: Callable[[JobSettings, Any], JobSettings]

    @property
    def name(self) -> str:
        return _NAMES.get((self.algorithm, self.parameter), self.parameter)

    def definition(self) -> QgsProcessingParameterDefinition:
        """A parameter of its own, as the algorithm has it."""
        return self.as_in(new_algorithm(self.algorithm))

    def as_in(self, algorithm: QgsProcessingAlgorithm) -> QgsProcessingParameterDefinition:
        """As ``algorithm``, an object of the class above, has it."""
        if self.name == _FIT:
            return _fit_parameter()
        found: QgsProcessingParameterDefinition = algorithm.parameterDefinition(self.parameter).clone()
        found.setName(self.name)
        if self.algorithm in ("fitcontrol", "correctbase"):
            found.setFlags(found.flags() | ADVANCED)
        return found


#: Choices whose parameters are called as others of the job are.
_FIT = "CONTROL_FIT"
_NAMES = {
    ("importpoints", "UNIT"): "FILE_UNIT",
    ("fitcontrol", "FIT"): _FIT,
    ("fitcontrol", "HEIGHTS"): "CONTROL_HEIGHTS",
}


def new_algorithm(name: str) -> QgsProcessingAlgorithm:
    """An algorithm of its own with its parameters."""
    from .provider import ALGORITHMS

    made = next(kind for kind in ALGORITHMS if name == kind.NAME)()
    made.initAlgorithm({})
    return made


def _fit_parameter() -> QgsProcessingParameterDefinition:
    """A job also shifts a survey that is in the CRS already, which by hand is a tool of its own."""
    ways = [
        translate("hummock", "four parameters in plan, heights by themselves"),
        translate("hummock", "seven parameters in space"),
        translate("hummock", "no fit: shifted as a whole (base corrected later)"),
    ]
    label = translate("hummock", "How the survey is fitted to control")
    made = QgsProcessingParameterEnum(_FIT, label, ways, defaultValue=0)
    made.setHelp(
        translate("hummock", "Of a survey to the control points above. Seven parameters also tilt the survey.")
    )
    made.setFlags(made.flags() | ADVANCED)
    return made


def all_choices() -> Iterator[Choice]:
    """Those of all steps of one visit."""
    for step, choices in _CHOICES.items():
        yield from choices if step != "visits" else ()


def choices_of(step: str) -> Tuple[Choice, ...]:
    """The choices of a step of the desk."""
    return _CHOICES.get(step, ())


def change(settings: JobSettings, values: Dict[str, Any], step: str) -> JobSettings:
    """``settings`` with ``values`` of the parameters of a step, by their names. Raises SurveyError for words that are
    not understood."""
    for choice in choices_of(step):
        if choice.name in values:
            settings = choice.chosen(settings, values[choice.name])
    return settings


# How a value is kept


def _get(settings: Any, path: str) -> Any:
    for part in path.split("."):
        settings = getattr(settings, part)
    return settings


def _set(settings: Any, path: str, value: Any) -> Any:
    first, _, rest = path.partition(".")
    return replace(settings, **{first: _set(getattr(settings, first), rest, value) if rest else value})


def _choice(
    algorithm: str,
    name: str,
    path: str,
    shown: Callable[[Any], Any] = lambda value: value,
    chosen: Callable[[Any], Any] = lambda value: value,
) -> Choice:
    return Choice(
        algorithm, name, lambda one: shown(_get(one, path)), lambda one, value: _set(one, path, chosen(value))
    )


def _text(algorithm: str, name: str, path: str, empty: Optional[str] = "") -> Choice:
    return _choice(algorithm, name, path, lambda value: value or "", lambda value: str(value or "").strip() or empty)


def _number(algorithm: str, name: str, path: str) -> Choice:
    return _choice(algorithm, name, path, chosen=_real)


def _real(value: Any) -> Optional[float]:
    return None if value in (None, "") else float(value)


def _one_of(algorithm: str, name: str, path: str, values: Sequence[Any]) -> Choice:
    """One of a list, in the order of the parameter's own list."""
    found = list(values)
    return _choice(
        algorithm,
        name,
        path,
        lambda value: found.index(value) if value in found else 0,
        lambda at: found[int(at or 0)],
    )


def _unit(algorithm: str, name: str, path: str) -> Choice:
    """A unit, or none for what the file or the CRS says."""
    return _choice(
        algorithm,
        name,
        path,
        lambda unit: None if unit is None else UNITS.index(unit),
        lambda at: None if at in (None, "") else UNITS[int(at)],
    )


def _file(algorithm: str, name: str, path: str) -> Choice:
    return _choice(algorithm, name, path, lambda file: str(file or ""), lambda text: Path(text) if text else None)


def _drawn(field: str) -> Choice:
    """Lines drawn on the map, as a file of the job."""
    return Choice(
        "buildsurface",
        field.upper(),
        lambda one: layer_shown(getattr(one, field)),
        lambda one, chosen: _set(one, field, file_of_layer(chosen, one, field)),
    )


def _crs(algorithm: str, name: str, path: str) -> Choice:
    def chosen(value: Any) -> Optional[str]:
        crs = value if isinstance(value, QgsCoordinateReferenceSystem) else QgsCoordinateReferenceSystem(value or "")
        return crs_text(crs) if crs.isValid() else None

    return _choice(algorithm, name, path, lambda text: text or "", chosen)


# A geoid separation is one choice, but two parameters: a constant or a grid.


def _is_number(text: Optional[str]) -> bool:
    try:
        return text is not None and float(text) == float(text)
    except ValueError:
        return False


def _geoid_constant(settings: JobSettings, value: Any) -> JobSettings:
    if value not in (None, ""):
        return replace(settings, geoid=f"{float(value):.12g}")
    return replace(settings, geoid=None) if _is_number(settings.geoid) else settings


def _geoid_grid(settings: JobSettings, value: Any) -> JobSettings:
    if value:
        return replace(settings, geoid=str(value))
    return settings if _is_number(settings.geoid) else replace(settings, geoid=None)


def _words_chosen(settings: JobSettings, value: Any) -> JobSettings:
    words: Dict[str, Any] = dict(four_words(str(value or ",,,")))
    return replace(settings, convention=replace(settings.convention, **words))


def _words_shown(settings: JobSettings) -> str:
    used = settings.convention
    return ",".join((used.begin, used.end, used.close, used.arc))


def _fit_chosen(settings: JobSettings, at: Any) -> JobSettings:
    way = int(at or 0)
    return replace(settings, fit=replace(settings.fit, seven=way == 1, shift=way == 2))


def _shifts_shown(settings: JobSettings) -> str:
    return ",".join(f"{one.line}:{one.metres:+g}" for one in settings.level_shifts)


_IMPORT: List[Choice] = [
    _text("importpoints", "COLUMNS", "columns", None),
    _crs("importpoints", "SOURCE_CRS", "source_crs"),
    _unit("importpoints", "UNIT", "unit"),
    _unit("importpoints", "HEIGHT_UNIT", "height_unit"),
    _one_of("importpoints", "UNITS_FROM", "units_from", ("", *UNITS_FROM)),
    _one_of("importpoints", "HEIGHTS_OF", "heights_of", ("", *HEIGHTS_OF)),
    _number("importpoints", "POLE_HEIGHT", "pole_height"),
    _number("importpoints", "ANTENNA_OFFSET", "antenna_offset"),
    _one_of("importpoints", "HEIGHTS_ARE", "heights_are", HEIGHT_KINDS),
    _one_of("importpoints", "HEIGHTS", "heights", HEIGHT_KINDS),
    Choice(
        "importpoints", "GEOID", lambda one: _real(one.geoid) if _is_number(one.geoid) else None, _geoid_constant
    ),
    Choice(
        "importpoints", "GEOID_GRID", lambda one: "" if _is_number(one.geoid) else one.geoid or "", _geoid_grid
    ),
    _choice(
        "importpoints", "ACCEPT", "accept", OPERATIONS_APART.join,
        lambda text: tuple(one.strip() for one in str(text or "").split(OPERATIONS_APART) if one.strip()),
    ),
    _text("importpoints", "CORRECT", "correct"),
    Choice(
        "importpoints", "SHIFT_HEIGHTS", _shifts_shown,
        lambda one, text: replace(one, level_shifts=parse_level_shifts(str(text or ""))),
    ),
    _choice(
        "importpoints", "NO_VALUE", "no_value", lambda words: "" if words is None else ",".join(words) or "none",
        lambda text: parse_no_value(str(text)) if str(text or "").strip() else None,
    ),
    _one_of("importpoints", "ANGLES", "angles", ANGLES),
    _text("importpoints", "FILE_LAYER", "layer"),
    _one_of("importpoints", "DELIMITER", "delimiter", DELIMITERS),
    _one_of("importpoints", "DECIMAL", "decimal", DECIMALS),
    _text("importpoints", "ENCODING", "encoding", None),
    _text("importpoints", "COMMENT", "comment", "auto"),
    _file("importpoints", "DECISIONS", "decisions"),
]  # fmt: skip

_CODES: List[Choice] = [
    _choice("checksurvey", "USE_CODES", "use_codes", chosen=bool),
    _file("checksurvey", "CODES", "codes"),
    Choice("checksurvey", "CODE_WORDS", _words_shown, _words_chosen),
    _text("checksurvey", "CODE_SEPARATOR", "convention.separator"),
    _text("checksurvey", "CODE_PATTERN", "convention.pattern", None),
    _number("checksurvey", "ARC_TOLERANCE", "convention.arc_tolerance"),
]

_CONTROL: List[Choice] = [
    _file("fitcontrol", "CONTROL", "control"),
    Choice("fitcontrol", "FIT", lambda one: 1 if one.fit.seven else 2 if one.fit.shift else 0, _fit_chosen),
    _one_of("fitcontrol", "HEIGHTS", "fit.heights", HEIGHT_FITS),
    _choice(
        "fitcontrol", "LEAVE_OUT", "fit.leave_out", ",".join,
        lambda text: tuple(one.strip() for one in str(text or "").split(",") if one.strip()),
    ),
    _text("fitcontrol", "READ_AS", "fit.reading"),
    _text("correctbase", "BASE_WAS", "base_was"),
    _text("correctbase", "BASE_IS", "base_is"),
]  # fmt: skip

_CHOICES: Dict[str, Tuple[Choice, ...]] = {
    "points": (*_IMPORT, *_CONTROL),
    "check": (
        _choice("surveyreport", "CHECK", "check", chosen=bool),
        _one_of("checksurvey", "TOLERANCES", "tolerances", (*SHIPPED, None)),
        _one_of("checksurvey", "TILT_COMPENSATED", "tilt_compensated", (None, True, False)),
        _choice("checksurvey", "KEEP_FLAGGED", "keep_flagged", chosen=bool),
    ),
    "visits": (
        Choice("surveyreport", jobvisits.COUNTS, jobvisits.counts_shown, jobvisits.counts_chosen),
        Choice("surveyreport", jobvisits.AREA, jobvisits.area_shown, jobvisits.area_chosen),
        Choice("surveyreport", jobvisits.OFFSET, jobvisits.offset_shown, jobvisits.offset_chosen),
    ),
    "lines": (_choice("surveyreport", "FIND_LINES", "find_lines", chosen=bool), *_CODES),
    "surface": (
        *(_drawn(name) for name in FIELDS),
        _number("buildsurface", "MAX_RIM_EDGE", "surface.max_rim_edge"),
        _number("buildsurface", "MAX_RIM_RADIUS", "surface.max_rim_radius"),
        _number("buildsurface", "MAX_RIM_PASSES", "surface.max_rim_passes"),
        _number("buildsurface", "MAX_RIM_ANGLE", "surface.max_rim_angle"),
        _one_of("buildsurface", "CROSSINGS", "surface.crossing", tuple(CrossingRule)),
        _number("buildsurface", "CROSSING_TOLERANCE", "surface.crossing_tolerance"),
        _file("buildsurface", "EDITS", "edits"),
    ),
    "quality": (
        _number("accuracystatement", "WANTED", "accuracy_class"),
        _number("coverage", "MAX_RADIUS", "max_gap"),
    ),
    "contours": (
        _choice("contoursheet", "BASE", "contours.base", chosen=lambda value: float(value or 0.0)),
        _choice("contoursheet", "INDEX_EVERY", "contours.index_every", chosen=int),
        _choice("contoursheet", "SMOOTH", "sheet.smooth", chosen=lambda value: float(value or 0.0)),
        _number("contoursheet", "CALM", "sheet.calm"),
    ),
}
