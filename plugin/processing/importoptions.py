"""The parameters that say how a survey is read and where it is brought, and what they mean to the core."""

from __future__ import annotations

from pathlib import Path
from typing import Any, Dict, List, Optional

from pyproj import CRS
from qgis.core import (
    QgsProcessingAlgorithm,
    QgsProcessingContext,
    QgsProcessingException,
    QgsProcessingParameterBoolean,
    QgsProcessingParameterCrs,
    QgsProcessingParameterEnum,
    QgsProcessingParameterString,
)
from qgis.PyQt.QtCore import QCoreApplication

from ..core.georeference.crs import source_crs
from ..core.georeference.heights import ConstantSeparation, GridSeparation, Separation
from ..core.georeference.intake_options import IntakeOptions
from ..core.georeference.level_shift import parse_level_shifts
from ..core.points.columns import parse_columns
from ..core.points.delimiters import FIXED
from ..core.points.geographic import HeightKind
from ..core.points.given import HEIGHTS_OF, UNITS_FROM, parse_no_value
from ..core.points.said_units import RUNS, AngleForm
from .algorithm import HummockAlgorithm
from .localnumbers import use_units
from .parameters import chosen_unit, core_crs, crs_text, given_file, number, optional_number

translate = QCoreApplication.translate

#: What the choices of the parameters below mean to the core; None lets it find out.
DELIMITERS = (None, ",", ";", "\t", " ", FIXED, "|")
DECIMALS = (None, ".", ",")
HEADERS = (None, True, False)
ANGLES = (None, *AngleForm)
HEIGHT_KINDS = (None, HeightKind.ORTHOMETRIC, HeightKind.ELLIPSOIDAL)
#: Parts the names of several coordinate operations, which may contain commas.
OPERATIONS_APART = "|"


def add_georeference_parameters(algorithm: HummockAlgorithm) -> None:
    """The CRS of the coordinates as they stand, heights, and what the user takes on his word."""
    algorithm.add(
        QgsProcessingParameterCrs(
            "SOURCE_CRS",
            translate("hummock", "CRS of the coordinates in the file, if another"),
            optional=True,
        ),
        translate(
            "hummock",
            "Empty: that of the points wanted, WGS 84 for degrees. A geographic CRS for latitudes and longitudes "
            "or a receiver log, a projected one for eastings and northings; the coordinates are then transformed.",
        ),
    )
    algorithm.add(
        QgsProcessingParameterBoolean(
            "LOCAL", translate("hummock", "The coordinates are local or assumed: no CRS"), False
        ),
        translate("hummock", "For a survey that is fitted to control points in a later step."),
        advanced=True,
    )
    _add_height_parameters(algorithm)
    algorithm.add(
        QgsProcessingParameterString(
            "ACCEPT", translate("hummock", "Coordinate operations accepted by name"), optional=True
        ),
        translate(
            "hummock",
            "PROJ may have only a ballpark operation, or lack the grid file of a better one. Such an operation is used "
            "only when its name, as the refusal shows it, is written here; several are parted by |.",
        ),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            "SHIFT_HEIGHTS", translate("hummock", "Heights shifted from a line on (line:metres)"), optional=True
        ),
        translate(
            "hummock",
            "Where the check tells that heights change their level at a line of the file and you know which part is "
            "right: the line and the metres to be added from there on, such as 1153:+0.234; several are parted by "
            "commas. It is recorded like every other change of coordinates.",
        ),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            "CORRECT", translate("hummock", "Read coordinates outside the area of use as"), optional=True
        ),
        translate(
            "hummock",
            "The name of a likely cause, such as swapped, as the question or warning shows it: the lines that it "
            "explains are then read so, the others stay. as-read leaves all of them where they are. Nothing is "
            "corrected without it.",
        ),
        advanced=True,
    )


def _add_height_parameters(algorithm: HummockAlgorithm) -> None:
    kinds = [translate("hummock", "orthometric (above a geoid)"), translate("hummock", "ellipsoidal")]
    algorithm.add(
        QgsProcessingParameterEnum(
            "HEIGHTS_ARE",
            translate("hummock", "Heights in the file are"),
            [translate("hummock", "as the file says"), *kinds],
            defaultValue=0,
        ),
        translate("hummock", "Only where the file does not say it and heights are to be changed."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterEnum(
            "HEIGHTS",
            translate("hummock", "Heights wanted"),
            [translate("hummock", "as in the file (with a geoid separation: orthometric)"), *kinds],
            defaultValue=0,
        ),
        translate("hummock", "A receiver log can give both; other files need a geoid separation to change them."),
        advanced=True,
    )
    algorithm.add(
        number("GEOID", translate("hummock", "Geoid separation, a constant (m)")),
        translate("hummock", "Height of the geoid above the ellipsoid: ellipsoidal height minus it is orthometric."),
        advanced=True,
    )
    algorithm.add(
        given_file(
            "GEOID_GRID",
            translate("hummock", "Geoid separation, a grid"),
            translate("hummock", "Grids that PROJ reads (*.gtx *.tif *.tiff *.gsb);;All files (*)"),
        ),
        translate("hummock", "A grid file of geoid separations; it must cover the whole site."),
        advanced=True,
    )


def add_format_parameters(algorithm: HummockAlgorithm) -> None:
    """How the text of the file is written, each found from the file where nothing is chosen."""
    found = translate("hummock", "found from the file")
    separators = [
        found,
        translate("hummock", "comma"),
        translate("hummock", "semicolon"),
        translate("hummock", "tab"),
        translate("hummock", "blanks"),
        translate("hummock", "none: columns at fixed places"),
        translate("hummock", "vertical bar"),
    ]
    decimals = [found, translate("hummock", "point"), translate("hummock", "comma")]
    headers = [found, translate("hummock", "yes"), translate("hummock", "no")]
    for name, label, choices, help_text in (
        ("DELIMITER", translate("hummock", "Separator"), separators, translate("hummock", "What parts the columns.")),
        ("DECIMAL", translate("hummock", "Decimal sign"), decimals, translate("hummock", "As in 1.5 or 1,5.")),
        (
            "HEADER",
            translate("hummock", "First line names the columns"),
            headers,
            translate("hummock", "Whether the first line that is no comment is a header."),
        ),
    ):
        algorithm.add(QgsProcessingParameterEnum(name, label, choices, defaultValue=0), help_text, advanced=True)
    algorithm.add(
        QgsProcessingParameterString("ENCODING", translate("hummock", "Text encoding (empty: found)"), optional=True),
        translate("hummock", "Such as utf-8 or latin-1."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            "COMMENT", translate("hummock", "Comment lines start with"), defaultValue="auto", optional=True
        ),
        translate("hummock", "Such lines are counted, not read. With auto the sign is found from the file."),
        advanced=True,
    )


def add_value_parameters(algorithm: HummockAlgorithm) -> None:
    """What the numbers in the file are of; each is asked for where it matters and the file does not say it."""
    said = translate("hummock", "as the file says")
    algorithm.add(
        QgsProcessingParameterEnum(
            "HEIGHTS_OF",
            translate("hummock", "Heights in the file are those of"),
            [
                said,
                translate("hummock", "the ground"),
                translate("hummock", "the antenna"),
                translate("hummock", "depths that count down"),
            ],
            defaultValue=0,
        ),
        translate(
            "hummock",
            "A receiver log has heights of the antenna: give the pole height below, or choose the antenna here to keep "
            "them. A table with a column of pole heights may have either.",
        ),
    )
    algorithm.add(
        number("POLE_HEIGHT", translate("hummock", "Pole height (m)"), None, 0.0, 50.0),
        translate(
            "hummock",
            "From the ground to the mount of the antenna. Heights of the antenna are lowered by it to the ground. "
            "Empty: as a column or the lines of a log say it.",
        ),
    )
    algorithm.add(
        number("ANTENNA_OFFSET", translate("hummock", "Antenna offset (m)"), None, -1.0, 50.0),
        translate("hummock", "From the mount to the antenna's phase centre, to which heights of a log belong."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString("NO_VALUE", translate("hummock", "What stands for no value"), optional=True),
        translate(
            "hummock",
            "Numbers and words, with commas between, such as -9999,*; none where every number is meant. Empty: words "
            "such as NULL, and numbers far from all others, such as -9999, are found and named; where it is not "
            "certain, it is asked.",
        ),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterEnum(
            "UNITS_FROM",
            translate("hummock", "Where header and options differ, the unit is"),
            [
                translate("hummock", "asked for"),
                translate("hummock", "that of the header"),
                translate("hummock", "that of the options or the CRS"),
            ],
            defaultValue=0,
        ),
        translate("hummock", "Units that a header says are obeyed, such as Height [cm]."),
        advanced=True,
    )
    forms = [
        translate("hummock", "decimal degrees, or with signs between degrees, minutes and seconds"),
        translate("hummock", "digits of minutes and seconds behind the mark (48.07021 is 48°07'02.1\")"),
        translate("hummock", "degrees and minutes in one (4807.035)"),
        translate("hummock", "degrees, minutes and seconds in one (480702.1)"),
        translate("hummock", "gon"),
        translate("hummock", "radians"),
        translate("hummock", "minutes of arc"),
        translate("hummock", "seconds of arc"),
        translate("hummock", "millionths of a degree"),
        translate("hummock", "ten-millionths of a degree"),
        translate("hummock", "billionths of a degree"),
        *(
            translate("hummock", "degrees, minutes and seconds in a run of digits, the last {count} decimals").format(
                count=count
            )
            for count in RUNS.values()
        ),
        translate("hummock", "decimal degrees, longitudes from 0 to 360"),
        translate("hummock", "decimal degrees, longitudes that count to the west"),
    ]
    algorithm.add(
        QgsProcessingParameterEnum(
            "ANGLES", translate("hummock", "Latitudes and longitudes are written as"), [said, *forms], defaultValue=0
        ),
        translate("hummock", "Found from header and digits; only where these leave it open."),
        advanced=True,
    )
    algorithm.add(
        QgsProcessingParameterString(
            "FILE_LAYER", translate("hummock", "Layer, sheet or file of an archive"), optional=True
        ),
        translate("hummock", "Of a file that holds several, the one with the points; * for all layers."),
        advanced=True,
    )


def chosen_options(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext, what: str
) -> IntakeOptions:
    """What the parameters ask of the core for the input called ``what``.

    Raises SurveyError and QgsProcessingException for a CRS or columns that cannot be used.
    """

    def text(name: str) -> str:
        return str(algorithm.parameterAsString(parameters, name, context)).strip()

    def choice(name: str, values: Any) -> Any:
        return values[algorithm.parameterAsEnum(parameters, name, context)]

    columns = text("COLUMNS")
    return IntakeOptions(
        crs=_target(algorithm, parameters, context, what),
        source_crs=_source(algorithm, parameters, context),
        columns=parse_columns(columns) if columns else None,
        delimiter=choice("DELIMITER", DELIMITERS),
        decimal=choice("DECIMAL", DECIMALS),
        encoding=text("ENCODING") or None,
        unit=chosen_unit(algorithm, parameters, "UNIT", context),
        layer=text("FILE_LAYER"),
        angles=choice("ANGLES", ANGLES),
        no_value=parse_no_value(text("NO_VALUE")) if text("NO_VALUE") else None,
        pole_height=optional_number(algorithm, parameters, "POLE_HEIGHT", context),
        antenna_offset=optional_number(algorithm, parameters, "ANTENNA_OFFSET", context),
        heights_of=choice("HEIGHTS_OF", ("", *HEIGHTS_OF)),
        units_from=choice("UNITS_FROM", ("", *UNITS_FROM)),
        height_unit=chosen_unit(algorithm, parameters, "HEIGHT_UNIT", context),
        comment=algorithm.parameterAsString(parameters, "COMMENT", context),
        header=choice("HEADER", HEADERS),
        heights_are=choice("HEIGHTS_ARE", HEIGHT_KINDS),
        heights=choice("HEIGHTS", HEIGHT_KINDS),
        separation=_separation(algorithm, parameters, context),
        accept=tuple(name.strip() for name in text("ACCEPT").split(OPERATIONS_APART) if name.strip()),
        correct=text("CORRECT"),
        level_shifts=parse_level_shifts(text("SHIFT_HEIGHTS")),
    )


def _target(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext, what: str
) -> Optional[CRS]:
    if algorithm.parameterAsBool(parameters, "LOCAL", context):
        return None
    crs = core_crs(algorithm.parameterAsCrs(parameters, "CRS", context), what)
    use_units(crs)
    return crs


def _source(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[CRS]:
    chosen = algorithm.parameterAsCrs(parameters, "SOURCE_CRS", context)
    return source_crs(crs_text(chosen)) if chosen.isValid() else None


def _separation(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], context: QgsProcessingContext
) -> Optional[Separation]:
    constant = optional_number(algorithm, parameters, "GEOID", context)
    grid = algorithm.parameterAsFile(parameters, "GEOID_GRID", context)
    if constant is not None and grid:
        raise QgsProcessingException(
            translate("hummock", "Two geoid separations are given, a constant and a grid; give one of them.")
        )
    if grid:
        return GridSeparation(Path(grid))
    return None if constant is None else ConstantSeparation(constant)


def chosen_files(
    algorithm: QgsProcessingAlgorithm, parameters: Dict[str, Any], name: str, context: QgsProcessingContext
) -> List[str]:
    """The paths of a parameter of several files."""
    if not parameters.get(name):
        return []
    return [str(path) for path in algorithm.parameterAsFileList(parameters, name, context) if str(path)]
